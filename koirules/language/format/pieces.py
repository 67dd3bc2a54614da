"""What a written statement is made of: its words with their spaces, where a line may break, and where they were read."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.language.syntax import Title, Word
from koirules.problems import Place
from koirules.values import frozen

ALWAYS, FIRST, SECOND, WITHIN = 0, 1, 2, 3
"""When a line breaks before a piece: always; as soon as the statement is too long for a line; where that is not enough;
and from here on, the looser the earlier, only to fill lines."""

NEVER = 1_000


@frozen
class Piece:
    """A word or sign. at: where it was read, None for words of the language. level: when a line breaks before it.

    tight: no space before it. open: no space behind it. back: it belongs to what stands before it, as a comma does.
    """

    text: str
    at: Place | None = None
    level: int = NEVER
    tight: bool = False
    open: bool = False
    back: bool = False


def joined(pieces: Sequence[Piece]) -> str:
    """Pieces as one line."""
    line = ""
    for before, piece in zip((None, *pieces), pieces, strict=False):
        line += piece.text if before is None or before.open or piece.tight else f" {piece.text}"
    return line


class Pen:
    """Writes pieces one after another."""

    def __init__(self) -> None:
        self.pieces: list[Piece] = []

    def words(self, text: str, level: int = NEVER, at: Place | None = None) -> None:
        """Words of the language, or a name, a text, a number."""
        self.pieces.append(Piece(text, at, level))

    def back(self, text: str) -> None:
        """Words that belong to what stands before them."""
        self.pieces.append(Piece(text, back=True))

    def comma(self) -> None:
        """A comma."""
        self.pieces.append(Piece(",", tight=True, back=True))

    def opening(self, level: int = NEVER) -> None:
        """An opening bracket."""
        self.pieces.append(Piece("(", level=level, open=True))

    def closing(self) -> None:
        """A closing bracket."""
        self.pieces.append(Piece(")", tight=True, back=True))

    def minus(self, level: int, at: Place) -> None:
        """A minus before a value."""
        self.pieces.append(Piece("-", at, level, open=True))

    def title(self, title: Title, level: int = NEVER) -> None:
        """A text in quotes, then its further languages in the order of their letters."""
        self.words(f'"{title.text}"', level, title.place)
        for code, text in sorted(title.others.items()):
            self.pieces.append(Piece(code, level=WITHIN, back=True))
            self.back(f'"{text}"')

    def listed(self, words: Sequence[Word], level: int = WITHIN) -> None:
        """Words in a bracket."""
        self.opening()
        for i, word in enumerate(words):
            if i:
                self.comma()
            self.words(word.text, level if i else NEVER, word.place)
        self.closing()

    def colon(self, level: int = NEVER) -> None:
        """A colon; with a level, a line may begin with it."""
        self.pieces.append(Piece(":", level=level, tight=True, back=level == NEVER))
