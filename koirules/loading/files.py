"""From a path or a name to a checked standard."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from attrs import evolve

from koirules.language.diagnose.mending import edited
from koirules.language.parse.cleaning import MOST_BYTES, decode
from koirules.language.parse.reader import Read, read_bytes, read_header, read_text
from koirules.language.statements import Header
from koirules.loading.bases import Link, Shelf, first_link
from koirules.loading.opening import bytes_of, without_collector
from koirules.problems import Problem, reading
from koirules.standard.check.checker import Checked
from koirules.vocabulary.nearness import near
from koirules.vocabulary.skins import Varieties

MOST_TRIED = 12
"""Of so many statements that cannot be read, the guess at what was meant is tried before it is told."""


def load(name: str, varieties: Varieties, rulesets: Mapping[str, Path]) -> Checked:
    """The checked standard of a rule file, given by its path or by the name of a rule set; never raises for bad input."""
    path = find(name, rulesets)
    if isinstance(path, Problem):
        return Checked(None, (path,))
    data = bytes_of(path)
    if isinstance(data, Problem):
        return Checked(None, (data,))
    with without_collector():
        shelf = Shelf.beside(path, varieties, rulesets)
        return _tried(read_bytes(data, str(path)), shelf, path.parent, first_link(path))


def load_text(
    text: str,
    file: str,
    varieties: Varieties,
    rulesets: Mapping[str, Path],
    folder: Path | None = None,
    most_tried: int = MOST_TRIED,
) -> Checked:
    """The checked standard of a text.

    folder: where its bases are looked for, None where it may have none. most_tried: how many guesses at what was meant
    are tried before they are told.
    """
    with without_collector():
        return _tried(read_text(text, file), Shelf.of(folder, varieties, rulesets), folder, (), most_tried)


def _tried(
    read: Read, shelf: Shelf, folder: Path | None, chain: tuple[Link, ...], most_tried: int = MOST_TRIED
) -> Checked:
    """The checked standard of a text, without guesses at what was meant that leave more problems than they mend."""
    checked = shelf.checked(read, folder, chain)
    before = _refused(checked)
    worse: dict[Problem, Problem] = {}
    for problem, plain in list(read.guesses.items())[:most_tried]:
        if problem.edit is not None:
            mended = read_text(edited(read.rules.text, [problem.edit]), read.rules.file)
            if _refused(shelf.checked(mended, folder, chain)) > before:
                worse[problem] = plain
    if not worse:
        return checked
    return evolve(checked, problems=tuple(worse.get(problem, problem) for problem in checked.problems))


def _refused(checked: Checked) -> int:
    return sum(not problem.warning for problem in checked.problems)


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
