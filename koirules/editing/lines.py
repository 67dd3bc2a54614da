"""Places of an editor's text: an editor counts bytes, halves of surrogate pairs or characters; we count composed characters."""

from __future__ import annotations

import re
from unicodedata import is_normalized, normalize

from koirules.language.parse.cleaning import as_counted

_LINE_END = re.compile(r"\r\n|\r|\n")
_MARK = "\ufeff"

ENCODINGS = ("utf-8", "utf-16", "utf-32")
"""The ways in which an editor may count the characters of a line."""


def units(text: str, encoding: str) -> int:
    """How long a text is as an editor counts it."""
    if encoding == "utf-32" or text.isascii():
        return len(text)
    if encoding == "utf-8":
        return len(text.encode("utf-8", "surrogatepass"))
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


class Lines:
    """A text as an editor has it, and how its places are those of the text as we read it.

    Of ours, lines and columns count from 1; of an editor's, from 0. counted: the lines as we count them; own: as they are,
    without their ends.
    """

    def __init__(self, text: str) -> None:
        self.text = text
        self.counted = as_counted(text).split("\n")
        self.own = _LINE_END.split(text)

    def to_editor(self, line: int, column: int, encoding: str) -> tuple[int, int]:
        """Our line and column as an editor counts them."""
        at = min(max(line, 1), len(self.own)) - 1
        own = self.own[at]
        return at, units(own[: self._own_length(at, column - 1)], encoding)

    def from_editor(self, line: int, character: int, encoding: str) -> tuple[int, int]:
        """An editor's line and character as we count them; what lies outside of the text is its nearest place."""
        if line >= len(self.own):
            return len(self.own), len(self.counted[-1]) + 1
        own = self.own[line]
        return line + 1, len(self._counted(line, _prefix(own, character, encoding))) + 1

    def _counted(self, at: int, part: str) -> str:
        return normalize("NFC", part.removeprefix(_MARK) if at == 0 else part)

    def _own_length(self, at: int, length: int) -> int:
        """How much of a line of the editor's makes up so many characters of ours."""
        own = self.own[at]
        skipped = 1 if at == 0 and own.startswith(_MARK) else 0
        if is_normalized("NFC", own):
            return min(length + skipped, len(own))
        for end in range(skipped, len(own) + 1):
            # A letter that is put together ends where the next one does not join it any more.
            joins = end < len(own) and len(self._counted(at, own[: end + 1])) <= length
            if len(self._counted(at, own[:end])) >= length and not joins:
                return end
        return len(own)


def _prefix(line: str, character: int, encoding: str) -> str:
    if encoding == "utf-32" or line.isascii():
        return line[:character]
    taken = 0
    for end, sign in enumerate(line):
        if taken >= character:
            return line[:end]
        taken += units(sign, encoding)
    return line
