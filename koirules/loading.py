"""From a path or a name to a checked standard."""

from __future__ import annotations

import gc
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

from koirules.language.cleaning import MOST_BYTES, decode
from koirules.language.reader import Read, read_bytes, read_header, read_text
from koirules.language.statements import Header
from koirules.problems import Problem, is_refused, reading
from koirules.standard.checker import Checked, check
from koirules.vocabulary.nearness import near
from koirules.vocabulary.skins import Varieties


def load(name: str, varieties: Varieties, rulesets: Mapping[str, Path]) -> Checked:
    """The checked standard of a rule file, given by its path or by the name of a rule set; never raises for bad input."""
    path = find(name, rulesets)
    if isinstance(path, Problem):
        return Checked(None, (path,))
    try:
        with path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)  # no more than tells that it is too large
    except OSError as error:
        return Checked(None, (reading.unreadable_file(str(path), (error.strerror or "it cannot be read").lower()),))
    with _without_collector():
        return _checked(read_bytes(data, str(path)), varieties)


def load_text(text: str, file: str, varieties: Varieties) -> Checked:
    """The checked standard of a text."""
    with _without_collector():
        return _checked(read_text(text, file), varieties)


def header_of(path: Path) -> Header | None:
    """The header of a rule file alone; None where the file or its header cannot be read."""
    try:
        with path.open("rb") as file:
            data = file.read(MOST_BYTES)
    except OSError:
        return None
    text = decode(data, str(path))
    return None if isinstance(text, Problem) else read_header(text, str(path))


def find(name: str, rulesets: Mapping[str, Path]) -> Path | Problem:
    """The rule file that a path or a name means."""
    path = Path(name)
    for candidate in (path, path / "standard.koi"):
        try:
            if candidate.is_file():
                return candidate
        except (OSError, ValueError) as error:  # a name that is too long, or that no file can have
            return reading.unreadable_file(name, str(getattr(error, "strerror", None) or error).lower())
    if name in rulesets:
        return rulesets[name]
    return reading.no_such_file(name, near(name, rulesets))


def _checked(read: Read, varieties: Varieties) -> Checked:
    if not read.rules.text and is_refused(read.problems):
        return Checked(None, read.problems)  # a file that is no text has no header to miss
    return check(read.rules, varieties, read.problems)


@contextmanager
def _without_collector() -> Iterator[None]:
    # Reading makes many small objects that all stay; the collector would look at them again and again, at twice the cost.
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
