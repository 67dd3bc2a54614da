"""Figures of pattern maps, kept in the cache folder between two commands.

To measure a map takes NumPy and Shapely, and these take longer to import than a batch of a farm to be graded. Who grades a file
of records asks for the same maps with every change to the rules, with each page and each plot. What was found is kept under a
name made of all that it follows from: the maps with the other readings, the constants, the outline, the figures that are wanted,
and the code that measures, ours and that of the two libraries.

Only who grades a whole file asks for it (`keeping_figures`): whoever tries thousands of maps would fill the folder with them.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from hashlib import sha256
from importlib.util import find_spec
from pathlib import Path
from typing import Any

from koirules.cache import code_stamps, keep, read_kept, stamp
from koirules.vocabulary.kinds import Choice, Count, Kind, Number, Places, Scale, words_of
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.measures import Column, Found, Given
from koirules.vocabulary.outlines import Outline
from koirules.vocabulary.readings import PlaceSet, Span

_KIND, _FORM = "figures", "1"
_LIBRARIES = ("numpy", "shapely")
_MOST_FISH = 2_000
"""Of so many fish they are kept at once (a bound of computing)."""
_MOST_BYTES = 300_000
"""How large an entry may be (a bound of computing)."""
_MOST_ENTRIES = 8
"""So many are written for one file of records (a bound of computing)."""

_room: ContextVar[int] = ContextVar("how many entries may still be written", default=-1)

Outputs = Mapping[str, tuple[str, Kind]]
"""By trait, the figure that is read into it, and its kind."""


@contextmanager
def keeping_figures() -> Iterator[None]:
    """Within it the figures of maps are taken from the cache, and kept in it."""
    before = _room.set(_MOST_ENTRIES)
    try:
        yield
    finally:
        _room.reset(before)


def found_or_kept(maps: str, outputs: Outputs, outline: Outline, given: Given, measure: Callable[[], Found]) -> Found:
    """What is found on maps, from the cache where it is there. maps: their trait. measure: finds it."""
    wanted = {name: one for name, one in outputs.items() if name in given.wanted}
    name = _name(maps, wanted, outline, given) if _room.get() >= 0 and given.fish <= _MOST_FISH else ""
    readings = _read(name, wanted, given.fish) if name else None
    if readings is not None:
        return Found(readings)
    found = measure()
    if name and _room.get() and not any(found.wrong.values()):
        _keep(name, wanted, found.readings, given.fish)
    return found


def _name(maps: str, wanted: Outputs, outline: Outline, given: Given) -> str:
    """Under what the figures are kept; "" where they are not."""
    try:
        libraries = [spec.origin for one in _LIBRARIES if (spec := find_spec(one)) is not None and spec.origin]
        if len(libraries) < len(_LIBRARIES):
            return ""
        told = [
            *(_FORM, sys.version, maps, outline.knots, outline.stoutness, given.fish),
            *(code_stamps(), [_stamps(Path(one)) for one in libraries]),
            {name: (figure, type(kind).__name__, _words(kind)) for name, (figure, kind) in sorted(wanted.items())},
            *(dict(sorted(one.items())) for one in (given.constants, given.readings)),
        ]
        return sha256(json.dumps(told, default=_plain).encode("utf-8", "surrogateescape")).hexdigest()
    except (TypeError, ValueError, OSError):  # a reading or a file of another form than we know
        return ""


def _stamps(package: Path) -> list[str]:
    """What changes with every installation of a library."""
    return [stamp(str(path), path.stat()) for path in (package, package.parent, package.parent.parent)]


def _words(kind: Kind) -> tuple[str, ...]:
    return tuple(words_of(kind)) if isinstance(kind, Scale | Choice | Places) else ()


def _plain(one: object) -> Any:
    if isinstance(one, PatchMap):
        return [(patch.outline, patch.windows, patch.sashi, patch.thin) for patch in one.patches]
    raise TypeError(f"{one!r} is no reading that a map is measured with")


def _read(name: str, wanted: Outputs, fish: int) -> Mapping[str, Column] | None:
    data = read_kept(_KIND, name)
    try:
        return None if data is None else _columns(json.loads(data), wanted, fish)
    except (ValueError, KeyError, TypeError):  # cut off
        return None


def _columns(told: Any, wanted: Outputs, fish: int) -> Mapping[str, Column]:
    made: dict[str, Column] = {}
    for name, (_, kind) in wanted.items():
        of: Any = Span if isinstance(kind, Number | Count) else PlaceSet if isinstance(kind, Places) else None
        column = [one if one is None or of is None else of(*one) for one in told[name]]
        if len(column) != fish:
            raise ValueError(f"{len(column)} readings for {fish} fish")
        made[name] = column
    return made


def _keep(name: str, wanted: Outputs, readings: Mapping[str, Column], fish: int) -> None:
    try:
        written = json.dumps({key: list(column) for key, column in readings.items()})
        same = _columns(json.loads(written), wanted, fish) == readings
    except (ValueError, KeyError, TypeError):
        return
    if same and len(written) <= _MOST_BYTES:
        _room.set(_room.get() - 1)
        keep(_KIND, name, written.encode())
