"""Lays the pieces of a statement on lines."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.language.format.pieces import ALWAYS, FIRST, NEVER, SECOND, WITHIN, Piece, joined

WIDTH = 100
"""A line is no longer than this, where its words let it."""

_CLAUSE, _FURTHER = "  ", "    "
"""Before a line that begins a part of a statement, and before one that goes on with it."""


def lines_of(pieces: Sequence[Piece], *, begins: bool = True) -> list[str]:
    """The lines of a statement, or of what follows a comment inside it (begins False)."""
    return [indent + joined(line) for indent, line in laid(pieces, begins=begins)]


def laid(pieces: Sequence[Piece], *, begins: bool = True) -> list[tuple[str, list[Piece]]]:
    """What stands before each line, and its pieces."""
    parts = _parted(pieces, ALWAYS)
    if any(not _fits(part, 0 if begins and i == 0 else len(_CLAUSE)) for i, part in enumerate(parts)):
        parts = _parted(pieces, FIRST)
    lines: list[tuple[str, list[Piece]]] = []
    for part in parts:
        whole = _fits(part, len(indent_of(part[0]) if lines or not begins else ""))
        for clause in [part] if whole else _parted(part, SECOND):
            indent = indent_of(clause[0]) if lines or not begins else ""
            first, *further = _filled(clause, WITHIN, len(indent))
            lines.append((indent, first))
            lines.extend((_FURTHER, more) for more in further)
    return lines


def indent_of(piece: Piece) -> str:
    """What stands before a line that begins with a piece."""
    return _CLAUSE if piece.level <= SECOND else _FURTHER


def _parted(pieces: Sequence[Piece], deepest: int) -> list[list[Piece]]:
    """The pieces, parted before each one at which a line may break."""
    parts: list[list[Piece]] = []
    for piece in pieces:
        if not parts or piece.level <= deepest:
            parts.append([piece])
        else:
            parts[-1].append(piece)
    return parts


def _filled(pieces: Sequence[Piece], level: int, indent: int) -> list[list[Piece]]:
    """The pieces of each line, as much on a line as there is room for, broken as far outside as that goes."""
    lines: list[list[Piece]] = []
    deepest = max((piece.level for piece in pieces[1:] if piece.level < NEVER), default=ALWAYS)
    for part in _parted(pieces, level):
        if lines and _fits([*lines[-1], *part], indent if len(lines) == 1 else len(_FURTHER)):
            lines[-1].extend(part)
        elif level < deepest and not _fits(part, len(_FURTHER) if lines else indent):
            lines.extend(_filled(part, level + 1, len(_FURTHER) if lines else indent))
        else:
            lines.append(list(part))
    return lines


def _fits(pieces: Sequence[Piece], indent: int) -> bool:
    return indent + len(joined(pieces)) <= WIDTH
