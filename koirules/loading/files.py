"""From a path or a name to a checked standard."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from koirules.language.parse.cleaning import MOST_BYTES, decode
from koirules.language.parse.reader import read_bytes, read_header, read_text
from koirules.language.statements import Header
from koirules.loading.bases import Shelf, first_link
from koirules.loading.opening import bytes_of, without_collector
from koirules.problems import Problem, reading
from koirules.standard.check.checker import Checked
from koirules.vocabulary.nearness import near
from koirules.vocabulary.skins import Varieties


def load(name: str, varieties: Varieties, rulesets: Mapping[str, Path]) -> Checked:
    """The checked standard of a rule file, given by its path or by the name of a rule set; never raises for bad input."""
    path = find(name, rulesets)
    if isinstance(path, Problem):
        return Checked(None, (path,))
    data = bytes_of(path)
    if isinstance(data, Problem):
        return Checked(None, (data,))
    with without_collector():
        read = read_bytes(data, str(path))
        return Shelf.beside(path, varieties, rulesets).checked(read, path.parent, first_link(path))


def load_text(
    text: str, file: str, varieties: Varieties, rulesets: Mapping[str, Path], folder: Path | None = None
) -> Checked:
    """The checked standard of a text. folder: where bases given by a path are looked for, None where it may have none."""
    with without_collector():
        return Shelf.of(folder, varieties, rulesets).checked(read_text(text, file), folder)


def header_of(path: Path) -> Header | None:
    """The header of a rule file alone; None where the file or its header cannot be read."""
    data = bytes_of(path)
    text = data if isinstance(data, Problem) else decode(data[:MOST_BYTES], str(path))
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
