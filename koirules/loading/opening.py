"""Opens rule files: the only room that does, and no more of them than asked for."""

from __future__ import annotations

import gc
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

from koirules.language import MOST_BYTES
from koirules.problems import Problem, reading


def bytes_of(path: Path) -> bytes | Problem:
    """What a rule file holds, or why it cannot be read."""
    try:
        with path.open("rb") as file:
            return file.read(MOST_BYTES + 1)  # no more than tells that it is too large
    except (OSError, ValueError) as error:
        return reading.unreadable_file(str(path), why_not(error))


def why_not(error: Exception) -> str:
    """Why the system does not let us read."""
    return (getattr(error, "strerror", None) or str(error) or "it cannot be read").lower()


@contextmanager
def without_collector() -> Iterator[None]:
    """Switch the collector of garbage off for a while.

    Reading makes many small objects that all stay; the collector would look at them again and again, at twice the cost.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


EARLIER = "earlier"
"""The folder beside the rule file of an installed rule set that keeps its earlier editions, each as `NAME-EDITION.koi`."""


def installed_base(name: str, edition: str, folder: Path | None, rulesets: Mapping[str, Path]) -> Path | None:
    """The rule file of the installed rule set that `based on` names; None where it gives a path, which goes before.

    An edition that is kept beside it as an earlier one is meant wherever it is asked for; the rule file itself otherwise.
    """
    if folder is not None and _is_file(folder / name):
        return None
    return earlier_edition(name, edition, rulesets) or rulesets.get(name)


def earlier_edition(name: str, edition: str, rulesets: Mapping[str, Path]) -> Path | None:
    """The rule file of an earlier edition of an installed rule set; None where it is not kept."""
    if name not in rulesets:
        return None
    kept = rulesets[name].parent / EARLIER / f"{name}-{edition}.koi"
    return kept if _is_file(kept) else None


def earlier_editions(name: str, rulesets: Mapping[str, Path]) -> tuple[str, ...]:
    """The earlier editions of an installed rule set that are kept, by their names."""
    if name not in rulesets:
        return ()
    found = (rulesets[name].parent / EARLIER).glob(f"{name}-*.koi")
    return tuple(sorted(path.stem.removeprefix(f"{name}-") for path in found))


def _is_file(path: Path) -> bool:
    try:
        return path.is_file()
    except (OSError, ValueError):
        return False
