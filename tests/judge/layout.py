"""Lays the words of a statement out: tidy, or with blanks, line breaks and comments where they may stand."""

from __future__ import annotations

from itertools import pairwise
from random import Random


def closed_up(before: str, after: str) -> bool:
    """No blank stands inside brackets and before commas and colons."""
    return before.endswith("(") or after in {")", ",", ":"}


def tidy(words: list[str]) -> str:
    line = words[0]
    for before, after in pairwise(words):
        line += after if closed_up(before, after) else " " + after
    return line


COMMENTS = (
    "# a comment",
    "#",
    "# fault if above: no better than",
    '# "half a string',
    "# 錦鯉, e.g. 12 cm",
    "## score # 3",
)


def loose(words: list[str], random: Random) -> str:
    line = words[0]
    breaks = random.choice((0.0, 0.1, 0.3))
    for before, after in pairwise(words):
        if random.random() < breaks:
            line += line_break(random) + after
        elif closed_up(before, after):
            line += random.choice(("", "", "", " ")) + after
        else:
            line += random.choice((" ", " ", " ", "  ", "   ")) + after
    return line + random.choice(("\n", "\n", "  \n", f" {random.choice(COMMENTS)}\n"))


def line_break(random: Random) -> str:
    comment = random.choice(("", "", f" {random.choice(COMMENTS)}", f"\n  {random.choice(COMMENTS)}"))
    return comment + "\n" + " " * random.randint(1, 6)


def comment_or_blank(random: Random) -> str:
    return random.choice(("", "", "", "\n", f"{random.choice(COMMENTS)}\n", f"\n  {random.choice(COMMENTS)}\n"))
