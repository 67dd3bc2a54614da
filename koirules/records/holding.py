"""A file held by one process: a second one that wants to write it is told who holds it.

The lock is that of the operating system on a hidden file beside it, so that it ends with the process however that ends.
"""

from __future__ import annotations

import atexit
import datetime
import getpass
import json
import os
import re
import socket
from contextlib import suppress
from pathlib import Path

from attrs import field
from filelock import FileLock, Timeout

from koirules.problems import Problem
from koirules.problems.saving import held_by_another, unwritable
from koirules.values import define


@define
class Hold:
    """A file that this process holds; `release` gives it up, and so does the end of the process."""

    path: Path
    _lock: FileLock
    _released: bool = field(default=False, init=False)

    def release(self) -> None:
        """Give the file up."""
        if not self._released:
            self._released = True
            with suppress(OSError):
                _holder(self.path).unlink(missing_ok=True)
            with suppress(OSError):
                self._lock.release()
                _hidden(self.path, "lock").unlink(missing_ok=True)


def hold(path: Path) -> Hold | Problem:
    """Hold a file for writing, until the process ends; a problem says who holds it, or why it cannot be held."""
    lock = FileLock(_hidden(path, "lock"), timeout=0)
    try:
        lock.acquire()
    except Timeout:
        return held_by_another(str(path), _who(path))
    except (OSError, ValueError, NotImplementedError) as error:
        return unwritable(str(path), str(path.parent), str(getattr(error, "strerror", None) or error))
    held = Hold(path, lock)
    atexit.register(held.release)
    with suppress(OSError):
        _holder(path).write_text(json.dumps(_self()), encoding="utf-8")
    return held


def clear_unfinished(path: Path) -> None:
    """Take away passing files that killed processes left beside a file (`write_beside` names them so)."""
    left = re.compile(rf"\.{re.escape(path.stem[:100])}\.([0-9]+)-[0-9]+{re.escape(path.suffix)}")
    with suppress(OSError):
        for other in list(path.parent.iterdir()):
            named = left.fullmatch(other.name)
            if named and (int(named[1]) == os.getpid() or not _is_running(int(named[1]))):
                with suppress(OSError):
                    other.unlink()


def _is_running(process: int) -> bool:
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except (OSError, OverflowError):
        return True
    return True


def _hidden(path: Path, ending: str) -> Path:
    return path.with_name(f".{path.name[:200]}.{ending}")


def _holder(path: Path) -> Path:
    return _hidden(path, "holder")


def _self() -> dict[str, str]:
    try:
        user = getpass.getuser()
    except (OSError, KeyError, ImportError):
        user = ""
    since = datetime.datetime.now().isoformat(" ", "minutes")
    return {"user": user, "host": socket.gethostname(), "process": str(os.getpid()), "since": since}


def _who(path: Path) -> str:
    """Who holds a file, in words, as far as its holder wrote it down: `rin on tub-2, process 4711, since 2026-11-25 09:14`."""
    try:
        told = json.loads(_holder(path).read_text(encoding="utf-8"))
        return f"{told['user'] or 'somebody'} on {told['host']}, process {told['process']}, since {told['since']}"
    except (OSError, ValueError, KeyError, TypeError):
        return "another process"
