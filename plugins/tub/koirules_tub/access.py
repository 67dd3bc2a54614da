"""Who gets in: a random key in the address, exchanged for a cookie; and how often one may ask."""

from __future__ import annotations

import hashlib
import hmac
import os
import secrets
import socket
import time
from collections import OrderedDict
from pathlib import Path

from attrs import define, field

COOKIE = "tub"
WEEKS = 60 * 60 * 24 * 400
"""How long a cookie lasts: the longest that browsers allow."""


def key_of(path: Path, *, new: bool = False) -> str:
    """The key of a file of the tub: kept beside it, for its owner alone (mode 0600); made where it is not there, or anew."""
    file = path.with_name(f"{path.name}.key")
    if file.exists() and not new:
        kept = file.read_text(encoding="ascii").strip()
        if kept:
            file.chmod(0o600)
            return kept
    key = secrets.token_urlsafe(18)
    passing = file.with_name(f".{file.name}.part")
    passing.unlink(missing_ok=True)
    made = os.open(passing, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(made, "w", encoding="ascii") as out:
        out.write(f"{key}\n")
    passing.replace(file)
    return key


def cookie_of(key: str) -> str:
    """What the cookie holds: another word than the key, so that neither gives the other away."""
    return hmac.new(key.encode(), b"cookie of the tub", hashlib.sha256).hexdigest()


def is_same(one: str, other: str) -> bool:
    """Whether two secrets are the same, in a time that does not tell where they part."""
    return hmac.compare_digest(one.encode(), other.encode())


def private_address() -> str:
    """The address of this machine in its own network; the loopback address where it has none. Sends nothing."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asking:
        try:
            asking.connect(
                ("192.0.2.1", 9)
            )  # a documentation address (RFC 5737): connecting a datagram socket sends nothing
            return str(asking.getsockname()[0])
        except OSError:
            return "127.0.0.1"


@define
class Rate:
    """How often each address may ask: `burst` at once, `each_second` after that. Forgets those that were quiet longest."""

    each_second: float
    burst: float
    most: int = 2000
    _left: OrderedDict[str, tuple[float, float]] = field(factory=OrderedDict, init=False)

    def allows(self, address: str, now: float | None = None) -> bool:
        """Whether one more is allowed, which then counts."""
        now = time.monotonic() if now is None else now
        left, then = self._left.pop(address, (self.burst, now))
        left = min(self.burst, left + (now - then) * self.each_second)
        self._left[address] = (left - 1 if left >= 1 else left, now)
        while len(self._left) > self.most:
            self._left.popitem(last=False)
        return left >= 1
