"""Carries out the mends of a text that are only a matter of spelling: words for signs, straight quotes, half-width letters."""

from __future__ import annotations

from collections.abc import Iterable

from koirules.language.parse.reader import Read, read_text
from koirules.problems import Edit, Problem

SPELLINGS = frozenset({"sign-for-word", "wrong-quotes", "full-width"})
"""The codes of problems that are mended without asking: what was meant cannot be in doubt."""

_MOST_ROUNDS = 100
"""Of a statement that cannot be read one problem is found at a time, so a line of signs takes several readings."""


def mended_signs(read: Read) -> tuple[Read, int]:
    """A text read again with words for its signs, and how many places were mended.

    As it was, with 0, where it has other problems too: then a person must look at it anyway.
    """
    current, mended = read, 0
    for _ in range(_MOST_ROUNDS):
        edits = [problem.edit for problem in current.problems if _is_spelling(problem) and problem.edit is not None]
        if len(edits) < len(current.problems):
            return read, 0
        if not edits:
            return current, mended
        mended += len(edits)
        current = read_text(edited(current.rules.text, edits), read.rules.file)
    return read, 0


def edited(text: str, edits: Iterable[Edit]) -> str:
    """A text with edits carried out, none of which lies inside another. Places are those of the text as it was read."""
    starts = [0]
    for line in text.split("\n"):
        starts.append(starts[-1] + len(line) + 1)
    for edit in sorted(edits, key=lambda edit: (edit.place.line, edit.place.column), reverse=True):
        place = edit.place
        begin, end = starts[place.line - 1] + place.column - 1, starts[place.end_line - 1] + place.end_column - 1
        text = text[:begin] + edit.text + text[end:]
    return text


def _is_spelling(problem: Problem) -> bool:
    return problem.code in SPELLINGS and problem.edit is not None
