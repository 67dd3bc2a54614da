"""An occasion and its prizes, as a committee writes them down."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from enum import Enum

from attrs import field

from koirules.classes.placing import GROUP, SIZE
from koirules.languages import to_say
from koirules.values import frozen

SCORE, VOTES, SECTION = "score", "votes", "section "
"""What fish are put in order by: the whole score, the votes of judges, or the points of a section (`section body`)."""

OUTSIDE = "outside"
"""How the key is called that lets a fish outside every class win."""

SHOWN_AS = {GROUP: "class group", SIZE: "class size"}
"""The two halves of a class as a person writes them."""


class Ties(Enum):
    """What becomes of fish that nothing tells apart: they share their place, or a person decides."""

    SHARE = "share"
    DECIDE = "decide"


class Fewer(Enum):
    """What is given where fewer fish than the fewest are in question."""

    NOTHING = to_say("no prize")
    FIRST = to_say("first place only")
    ALL = to_say("all places")


@frozen
class Winners:
    """The fish that an earlier prize places. places: up to which place; None for all that it gives."""

    prize: str
    places: int | None = None


@frozen
class Prize:
    """One prize.

    for_each: labels by which the fish are parted, each part with places of its own. among: winners of earlier prizes, of whom a
    fish must be one; empty for any fish. not_with: winners of earlier prizes, none of whom can win this one. sizes, groups,
    grades: names of which a fish must have one, empty for any; labels: the same for columns that are carried along. by: keys
    as written, the first decides. fewest: how many fish must be in question, 0 for no such rule. outside: whether fish outside
    every class can win it.
    """

    name: str
    title: str
    by: tuple[str, ...]
    places: int = 1
    for_each: tuple[str, ...] = ()
    among: tuple[Winners, ...] = ()
    not_with: tuple[Winners, ...] = ()
    sizes: tuple[str, ...] = ()
    groups: tuple[str, ...] = ()
    grades: tuple[str, ...] = ()
    labels: Mapping[str, tuple[str, ...]] = field(factory=dict, hash=False)
    fewest: int = 0
    if_fewer: Fewer = Fewer.NOTHING
    ties: Ties = Ties.DECIDE
    outside: bool = False

    @property
    def columns(self) -> tuple[str, ...]:
        """The labels that it reads, other than those of a class."""
        return tuple(dict.fromkeys(one for one in (*self.for_each, *self.labels) if one not in SHOWN_AS))

    @property
    def goes_by_votes(self) -> bool:
        """Whether votes are among what decides."""
        return VOTES in self.by


@frozen
class Occasion:
    """A show. day: the date as a day or in the committee's words. classes: the class table, "" for none."""

    title: str
    day: date | str
    classes: str
    prizes: tuple[Prize, ...]
    file: str
    notes: tuple[str, ...] = ()
    text: str = field(default="", repr=False)

    @property
    def told_day(self) -> str:
        """The date in words: `18 April 2026`."""
        return self.day if isinstance(self.day, str) else f"{self.day.day} {self.day:%B %Y}"

    @property
    def said(self) -> tuple[str, ...]:
        """Its texts, as far as people read them."""
        day = self.day if isinstance(self.day, str) else ""
        return tuple(filter(None, (self.title, day, *self.notes, *(prize.title for prize in self.prizes))))

    @property
    def columns(self) -> tuple[str, ...]:
        """The labels that its prizes read, other than those of a class."""
        return tuple(dict.fromkeys(column for prize in self.prizes for column in prize.columns))


def section_of(key: str) -> str:
    """The section of a key such as `section body`, "" for another key."""
    return key.removeprefix(SECTION) if key.startswith(SECTION) else ""
