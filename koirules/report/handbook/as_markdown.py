"""A page as Markdown, with tables as common Markdown readers know them; a curve is told by the table of its knots."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import assert_never

from koirules.languages import ENGLISH, Tongue
from koirules.records.safe_text import without_controls
from koirules.report.handbook.blocks import (
    Block,
    Drawing,
    Facts,
    Group,
    Heading,
    Line,
    Listed,
    Paragraph,
    Piece,
    Portrait,
    Table,
)

_ACTS = re.compile(r"([\\`*_{}\[\]<>#|~&!])")
"""Signs that Markdown, or HTML in it, could take for more than themselves."""

_BEGINS = re.compile(r"^(\s*)([-+=:]|\d+(?=[.)]))")
"""What would begin a list, a rule or a heading at the beginning of a line."""

_TURNS = dict.fromkeys([*range(0x202A, 0x202F), *range(0x2066, 0x206A), 0xFFFE, 0xFFFF])


def markdown_of(blocks: Sequence[Block], tongue: Tongue = ENGLISH, foot: str = "") -> str:  # noqa: ARG001 - no sheets here
    """The whole text of the file, in a language."""
    return "\n\n".join(_written(blocks, tongue)) + "\n"


def _written(blocks: Sequence[Block], tongue: Tongue) -> Iterator[str]:
    for block in blocks:
        match block:
            case Heading(level, line, _):
                yield f"{'#' * level} {_line(line)}"
            case Paragraph(line, _):
                yield _begun(_line(line))
            case Listed(items, numbered):
                yield "\n".join(
                    f"{f'{number}.' if numbered else '-'} {_begun(_line(item))}" for number, item in enumerate(items, 1)
                )
            case Facts(pairs):
                yield "\n".join(f"- **{escaped(word)}**: {_line(line)}" for word, line in pairs)
            case Table():
                yield "\n".join(_table(block, tongue))
            case Drawing():
                yield tongue("A curve, by its knots: straight lines in between, flat beyond.")
            case Portrait(_, _, view, _):
                yield escaped(view.told(tongue))
            case Group(_, inner):
                yield from _written(inner, tongue)
            case _:
                assert_never(block)


def _table(table: Table, tongue: Tongue) -> Iterator[str]:
    yield _row([escaped(column.title) for column in table.columns])
    yield _row(["---:" if column.number else "---" for column in table.columns])
    for row in table.rows:
        *cells, last = (_line(cell) for cell in row.cells)
        yield _row([*cells, "; ".join([last, *(escaped(tongue("remark: {text}", text=text)) for text in row.remarks)])])


def _row(cells: Sequence[str]) -> str:
    return f"| {' | '.join(cells)} |"


def _line(line: Line) -> str:
    return "".join(_piece(piece) for piece in line)


def _piece(piece: Piece) -> str:
    sign = "**" if piece.strong else "*" if piece.named else ""
    text = escaped(piece.text)
    inner = text.strip()
    if not sign or not inner:
        return text
    # A sign beside a blank would be taken for itself.
    return text.replace(inner, f"{sign}{inner}{sign}", 1)


def escaped(text: str) -> str:
    """A text that Markdown shows as it is, on one line."""
    plain = " ".join(without_controls(text).translate(_TURNS).split("\n"))
    return _ACTS.sub(r"\\\1", " ".join(plain.split("\r")).replace("\t", " "))


def _begun(text: str) -> str:
    """A text at the beginning of a line, where it would begin a list or a rule."""
    return _BEGINS.sub(lambda found: f"{found[1]}{_kept(found[2])}", text)


def _kept(sign: str) -> str:
    return f"{sign}\\" if sign.isdigit() else f"\\{sign}"
