"""The course of a selection: what each round did, and what became of each fish in it."""

from __future__ import annotations

import datetime
from collections.abc import Callable
from enum import Enum
from functools import cached_property

from attrs import field

from koirules.results.decisions import Decision
from koirules.values import frozen


@frozen(slots=False)
class Step:
    """What became of a fish in a round that looked at it.

    round, title: of the round. fate: kept, left (its condition does not hold), passed over, over a quota, tied. place: in
    the order of its pick, from 1, equal fish sharing one (None without a pick). above: of a fish that was passed over, the
    fish that stood above it at the cut; of one that is tied, some of those that it is tied with. open: whether a recording
    could still change its fate, as long as the round looks at the same fish. by_hand: the decision that kept it. sent: where
    it goes, "" for nowhere in particular. again: the day of the next look.
    """

    round: str
    title: str
    fate: Fate
    place: int | None = None
    above: tuple[str, ...] = ()
    open: bool = False
    by_hand: Decision | None = None
    sent: str = ""
    again: datetime.date | None = None
    _tell: Callable[[], str] = field(default=str, repr=False, eq=False)

    def __getstate__(self) -> dict[str, object]:
        """A step is copied and pickled with its words, and not with what tells them."""
        return {**self.__dict__, "why": self.why, "_tell": str}

    @property
    def kept(self) -> bool:
        """Whether the round kept it."""
        return self.fate is Fate.KEPT

    @cached_property
    def why(self) -> str:
        """Why, in words."""
        return self._tell()


class Fate(Enum):
    """What became of a fish in a round."""

    KEPT = "kept"
    LEFT = "left"
    OVER = "passed over"
    QUOTA = "over a quota"
    TIED = "tied"


@frozen
class Tied:
    """Fish that are tied for fewer places than they are, for a person to choose among."""

    fish: tuple[str, ...]
    places: int


@frozen
class RoundCourse:
    """What a round did: the fish that it looked at, kept (in the order of its pick), and left, by name.

    asks: what the round asks, in the words of the rule file. places: how many a pick could take, None where there was no
    end of them. open: those in whose fate a recording could still change. by_hand: those that a person kept.
    """

    name: str
    title: str
    asks: str
    looked_at: tuple[str, ...]
    kept: tuple[str, ...]
    left: tuple[str, ...]
    ties: tuple[Tied, ...]
    places: int | None
    open: tuple[str, ...]
    by_hand: tuple[Decision, ...]
    sent: str
    again: datetime.date | None


@frozen
class AlertShown:
    """A word of warning about the batch.

    surely: False where it may be otherwise, by what was not recorded. so_far: whether it holds of what was recorded, None where
    that leaves it open.
    """

    name: str
    words: str
    surely: bool
    so_far: bool | None = None
