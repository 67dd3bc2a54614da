"""Which remarks of a rule file are about which statement: those before it, inside of it, or behind it on its last line."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Mapping

from koirules.language.statements import Drop, Rename, Replace, RuleFile, Section
from koirules.problems import Place

_RULE = "-=*~_#– —"
"""What a line is drawn with, round a title or alone."""


def remarks_of(file: RuleFile) -> Mapping[Place, tuple[str, ...]]:
    """The remarks on each statement of a file as it was read, by the place of the statement: paragraphs of plain text.

    Of `replace` it is the place of the statement behind it. Lines that follow each other are one paragraph. What stands before a
    section of the base that is opened again is about what follows it; what stands behind the last statement is about none.
    """
    statements = [one for one in file.statements if not (isinstance(one, Section) and one.worth is None)]
    ends = [one.place.end_line for one in statements]
    found: dict[int, list[tuple[int, str]]] = {}
    for comment in file.comments:
        about = bisect_left(ends, comment.place.line)
        if about < len(statements):
            found.setdefault(about, []).append((comment.place.line, comment.text[1:].strip()))
    return {
        (one.statement.place if isinstance(one, Replace) else one.place): paragraphs
        for i, one in enumerate(statements)
        if not isinstance(one, Drop | Rename) and (paragraphs := _paragraphs(found.get(i, [])))
    }


def _paragraphs(lines: list[tuple[int, str]]) -> tuple[str, ...]:
    """Lines put together; a title between drawn lines is a paragraph of its own."""
    found: list[str] = []
    before = -1
    for number, text in lines:
        plain = text.strip(_RULE)
        drawn = plain != text
        if plain:
            if found and number == before + 1:
                found[-1] = f"{found[-1]} {plain}"
            else:
                found.append(plain)
            before = -1 if drawn else number
    return tuple(found)
