"""What is told of rule files in which nothing is wrong and whose samples hold, kept in the cache folder between two checks.

An entry belongs to the checked standard that is kept of the file (`koirules/loading/kept.py`), and so follows from all that this
follows from: koirules and the plugins, the bytes of the file, those of its bases. What the calendar says of a file is told anew.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import date
from hashlib import sha256
from pathlib import Path

from koirules.cache import keep, read_kept
from koirules.loading.files import find
from koirules.loading.kept import digest_of_kept, name_of
from koirules.loading.opening import bytes_of
from koirules.problems import Problem
from koirules.values import frozen

_KIND, _FORM = "checks", "1"


@frozen
class SoundPage:
    """A rule file without a problem.

    file: its name in problems. told: what is said of it. valid_from, valid_until: as its header has them.
    """

    file: str
    told: str
    valid_from: date | None
    valid_until: date | None


def kept_page(name: str, rulesets: Mapping[str, Path], key: str) -> SoundPage | None:
    """What is kept of a rule file, given by its path or by the name of a rule set; None where nothing is that still holds."""
    path = find(name, rulesets)
    data = path if isinstance(path, Problem) else bytes_of(path)
    if isinstance(path, Problem) or isinstance(data, Problem):
        return None
    kept_as = name_of(key, path, data)
    digest = digest_of_kept(kept_as, rulesets)
    read = read_kept(_KIND, _entry(kept_as, digest)) if digest else None
    if read is None:
        return None
    try:
        told = json.loads(read)
        first, last = (None if one is None else date.fromisoformat(one) for one in told["valid"])
        return SoundPage(str(told["file"]), str(told["told"]), first, last)
    except (ValueError, KeyError, TypeError):  # cut off
        return None


def keep_page(kept_as: str, page: SoundPage) -> None:
    """Keep what is told of a rule file. kept_as: what its standard was kept as (`Checked.kept_as`), "" where it was not."""
    name, _, digest = kept_as.partition(".")
    if digest:
        valid = [None if one is None else one.isoformat() for one in (page.valid_from, page.valid_until)]
        told = {"file": page.file, "told": page.told, "valid": valid}
        keep(_KIND, _entry(name, digest), json.dumps(told).encode())


def _entry(name: str, digest: str) -> str:
    return sha256(f"{_FORM} {name} {digest}".encode()).hexdigest()
