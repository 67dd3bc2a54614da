"""Words of somebody's file, made safe and short enough to stand in a message."""

from __future__ import annotations

from collections.abc import Sequence

MOST_LETTERS = 60
"""How much of a text a message shows."""


def visible(text: str) -> str:
    """A text on one line, with every letter that is not printable written out, so that no terminal acts on it."""
    if text.isprintable():
        return text
    return "".join(letter if letter.isprintable() else _written_out(letter) for letter in text)


def quoted(text: str) -> str:
    """A text in quotation marks as a message shows it, cut where it is long."""
    short = text if len(text) <= MOST_LETTERS else text[: MOST_LETTERS - 1] + "…"
    return f'"{visible(short)}"'


def error_told(error: BaseException) -> str:
    """An error with its kind, on one line, for the inside of a sentence."""
    said = " ".join(str(error).split())
    return visible(f"{type(error).__name__}: {said}" if said else type(error).__name__)


def in_words(words: Sequence[str], last: str = "or") -> str:
    """Words as a list in a sentence: `blurred, fair or sharp`."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def _written_out(letter: str) -> str:
    return " " if letter.isspace() else f"\\u{ord(letter):04x}"
