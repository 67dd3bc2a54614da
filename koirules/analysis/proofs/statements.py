"""The form of a statement about all fish."""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum

from koirules.values import frozen
from koirules.vocabulary.readings import Reading


class Outcome(Enum):
    """What became of a statement."""

    PROVED = "proved"
    FOUND = "found"
    OPEN = "not decided"


@frozen
class Shown:
    """A fish that shows something: its record, and the grades and the score (lowest and highest hundredths) that it gets.

    doubts: the traits that are written in it otherwise than they follow from the others; what is written counts.
    """

    record: Mapping[str, Reading]
    possible: tuple[str, ...]
    score: tuple[int, int]
    doubts: tuple[str, ...] = ()


@frozen
class Statement:
    """One statement.

    kind: which question it answers (KINDS). about: the parts of the standard or the trait that it is about. words: the
    answer as a sentence. outcome: how it was come by. slip: whether it surely is a mistake in the rules. fish: what shows
    it: one, or two that are set against each other. line: of the rule file, 0 for the whole. held: of a trait, those that
    follow from it and are the same in both fish.
    """

    kind: str
    about: str
    words: str
    outcome: Outcome
    slip: bool = False
    fish: tuple[Shown, ...] = ()
    line: int = 0
    held: tuple[str, ...] = ()


KINDS: Mapping[str, str] = {
    "grade": "Which grades can be reached",
    "limit": "Faults and lifts that can never, or always, bite, or that change no grade",
    "extra": "Bonuses and penalties that can never, or always, hold",
    "comparison": "Conditions that can never, or always, hold",
    "together": "Faults that always bite together",
    "under": "Lifts that a fault always hides",
    "score": "The lowest and the highest score",
    "round": "Rounds that none, or all, pass",
    "better": "Better never scores worse",
}
