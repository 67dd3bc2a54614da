"""From the text of a rule file to a checked standard."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from attrs import evolve

from koirules.language import MOST_BYTES
from koirules.language.diagnose.mending import edited
from koirules.language.parse.cleaning import decode
from koirules.language.parse.reader import Read, read_bytes, read_header, read_text
from koirules.language.statements import Header
from koirules.loading.bases import Link, Shelf, first_link
from koirules.loading.kept import Base
from koirules.loading.opening import bytes_of, without_collector
from koirules.problems import Problem
from koirules.problems.sharing import unguessed
from koirules.standard.checked import Checked
from koirules.vocabulary.skins import Varieties

MOST_TRIED = 12
"""Of so many statements that cannot be read, the guess at what was meant is tried before it is told."""


def checked_file(
    path: Path, data: bytes, varieties: Varieties, rulesets: Mapping[str, Path]
) -> tuple[Checked, Sequence[Base]]:
    """The checked standard of the bytes of a file, and the bases that were found for it."""
    shelf = Shelf.beside(path, varieties, rulesets)
    return _tried(read_bytes(data, str(path)), shelf, path.parent, first_link(path)), shelf.used


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
    # A grade that was meant to be dropped may be one that the rest of the base still names.
    names = {one: unguessed(one) for one in checked.problems if one.code == "not-in-base" and one.edit is not None}
    for problem, plain in list({**read.guesses, **names}.items())[:most_tried]:
        if problem.edit is not None:
            mended = read_text(edited(read.rules.text, [problem.edit]), read.rules.file)
            if _refused(shelf.checked(mended, folder, chain)) > before:
                worse[problem] = plain
    if worse:
        checked = evolve(checked, problems=tuple(worse.get(problem, problem) for problem in checked.problems))
    if most_tried and before:
        # What reads notes is large, and needed for sentences alone.
        from koirules.loading.plain_sentences import with_rules_meant

        return with_rules_meant(read, shelf, folder, chain, checked)
    return checked


def _refused(checked: Checked) -> int:
    return sum(not problem.warning for problem in checked.problems)


def header_of(path: Path) -> Header | None:
    """The header of a rule file alone; None where the file or its header cannot be read."""
    data = bytes_of(path)
    text = data if isinstance(data, Problem) else decode(data[:MOST_BYTES], str(path))
    return None if isinstance(text, Problem) else read_header(text, str(path))
