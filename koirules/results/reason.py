"""Why a fish came out as it did: one reason for each criterion, fault, lift and grade."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from enum import Enum
from itertools import repeat
from operator import eq
from typing import NamedTuple, Protocol, overload

from koirules.languages import ENGLISH, Tongue
from koirules.values import frozen


class State(Enum):
    """What became of a condition."""

    YES = "yes"
    NO = "no"
    OPEN = "open"
    HELD_BACK = "held back"


@frozen
class Told:
    """What a reason is about, the same for every fish.

    kind: `points`, `bonus`, `penalty`, `fault`, `lift` or `grade`. name, title: as the rule file has them (title is the
    name where it has none). section: of a criterion, else "". outcome: the grade that a fault, lift or grade names, else ""
    (of a fault that lowers, too). line: where it stands in the rule file. points_most: what the curve or table gives at most,
    or what a bonus adds (0 for a penalty); score_most: the same as a share of the score, rounded half up to a hundredth. Both
    None for faults, lifts and grades. place: its position among the parts of its kind. file: the rule file that the line is of.
    """

    kind: str
    name: str
    title: str
    section: str
    outcome: str
    line: int
    points_most: Decimal | None = None
    score_most: Decimal | None = None
    place: int = 0
    file: str = ""


class Tale(Protocol):
    """Tells the reasons of one fish in words, when they are asked for."""

    def words(self, about: Told, state: State | None) -> str:
        """The sentence that a person reads."""

    def read(self, about: Told) -> str:
        """What was read, by names."""

    def seen(self, about: Told) -> str:
        """What was read, as a person reads it."""


class Given(NamedTuple):
    """What a reason says in numbers: the same for every fish of which it says so.

    about: the part of the standard. state: of the condition; None for `points`. points_low, points_high: what the curve or
    table gave, least and most (for a bonus or penalty: what it added or took; None for faults, lifts and grades).
    score_low, score_high: the same as a share of the score, rounded half up to a hundredth (a penalty's are below 0).
    """

    about: Told
    state: State | None = None
    points_low: Decimal | None = None
    points_high: Decimal | None = None
    score_low: Decimal | None = None
    score_high: Decimal | None = None


# A tuple of two, since as many reasons as rules are made for each fish: a frozen class would take five times as long.
class Reason(tuple[Given, Tale]):
    """Why: one criterion, fault, lift or grade, with what was read and what it gave (`Given`)."""

    __slots__ = ()

    def __repr__(self) -> str:
        return f"Reason({self.kind} {self.name!r}: {self.words!r})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Reason) and self[0] == other[0] and self.words == other.words

    def __hash__(self) -> int:
        return hash(self[0])

    @property
    def given(self) -> Given:
        """What it says in numbers."""
        return self[0]

    @property
    def about(self) -> Told:
        """The part of the standard."""
        return self[0].about

    @property
    def state(self) -> State | None:
        """What became of the condition; None for `points`."""
        return self[0].state

    @property
    def points_low(self) -> Decimal | None:
        """What it gave at least."""
        return self[0].points_low

    @property
    def points_high(self) -> Decimal | None:
        """What it gave at most."""
        return self[0].points_high

    @property
    def score_low(self) -> Decimal | None:
        """What it gave at least, as a share of the score."""
        return self[0].score_low

    @property
    def score_high(self) -> Decimal | None:
        """What it gave at most, as a share of the score."""
        return self[0].score_high

    @property
    def kind(self) -> str:
        """The head word of the part."""
        return self.about.kind

    @property
    def name(self) -> str:
        """The name of the part."""
        return self.about.name

    @property
    def title(self) -> str:
        """The label of the part."""
        return self.about.title

    @property
    def section(self) -> str:
        """The section of a criterion, else ""."""
        return self.about.section

    @property
    def outcome(self) -> str:
        """The grade that a fault, lift or grade names, else ""."""
        return self.about.outcome

    @property
    def line(self) -> int:
        """Where the part stands in the rule file."""
        return self.about.line

    @property
    def file(self) -> str:
        """The rule file that the part stands in: of a standard that is based on another one, either."""
        return self.about.file

    @property
    def points_most(self) -> Decimal | None:
        """What a criterion gives at most."""
        return self.about.points_most

    @property
    def score_most(self) -> Decimal | None:
        """What a criterion gives of the score at most."""
        return self.about.score_most

    @property
    def words(self) -> str:
        """The sentence that a person reads."""
        return self[1].words(self.about, self.state)

    @property
    def read(self) -> str:
        """What was read: `girth_ratio 0.24, spine straight`."""
        return self[1].read(self.about)

    @property
    def seen(self) -> str:
        """The same as a person reads it: `girth over length 0.24, spine straight`."""
        return self[1].seen(self.about)

    @property
    def left_on_table(self) -> Decimal:
        """How much of the score was surely missed: the most less the highest still possible (0 for what gives no points)."""
        if self.score_most is None or self.score_high is None:
            return Decimal(0)
        return self.score_most - self.score_high


@frozen
class Grounds:
    """Why a fish has the grade that it has, what decided apart from what weighed.

    faults: all that bite, also where the score alone gives that grade. forgiven: faults whose `except` held them back. lifts:
    those that decided. decided: those of the faults and lifts without which the grade would be another, by kind and name. others:
    what is open or missing. losses, gains: the criteria that cost most, and that gave most. assumed: the parts that read
    what nobody mentioned, by kind and name. tongue: the language that they are told in.
    """

    faults: tuple[Reason, ...] = ()
    forgiven: tuple[Reason, ...] = ()
    lifts: tuple[Reason, ...] = ()
    decided: frozenset[tuple[str, str]] = frozenset()
    others: tuple[Reason, ...] = ()
    losses: tuple[Reason, ...] = ()
    gains: tuple[Reason, ...] = ()
    gains_first: bool = False
    assumed: frozenset[tuple[str, str]] = frozenset()
    tongue: Tongue = ENGLISH

    @property
    def every(self) -> tuple[Reason, ...]:
        """All of them, what mattered most first; what was seen stands before what nobody mentioned."""
        weighed = (*self.gains, *self.losses) if self.gains_first else (*self.losses, *self.gains)
        found = [*self.faults, *self.forgiven, *self.lifts, *self.others, *weighed]
        return tuple(sorted(found, key=lambda reason: (reason.kind, reason.name) in self.assumed))

    @property
    def first(self) -> str:
        """In a few words: all faults that bite, else what mattered most; "" where nothing did."""
        return self._told(self.faults or self.every[:1])

    @property
    def words(self) -> str:
        """All of them as one line: what decided is marked, and losses and gains are told apart."""
        return self._told(self.every)

    def _told(self, reasons: Sequence[Reason]) -> str:
        lost, gained, decides = (self.tongue(text) for text in ("lost: ", "gained: ", " (decides)"))
        sides = dict.fromkeys(map(id, self.losses), lost) | dict.fromkeys(map(id, self.gains), gained)
        told: list[str] = []
        side = ""
        for reason in reasons:
            before, side = side, sides.get(id(reason), "")
            mark = decides if (reason.kind, reason.name) in self.decided else ""
            told.append(f"{side if side != before else ''}{reason.words}{mark}")
        return self.tongue.joined(told, "; ")


class Reasons(Sequence[Reason]):
    """The reasons of one fish in the order of the rule file: worked out, and each put together when it is looked at."""

    __slots__ = ("_given", "_tale")

    def __init__(self, given: Sequence[Given], tale: Tale) -> None:
        self._given = given
        self._tale = tale

    def __len__(self) -> int:
        return len(self._given)

    def __iter__(self) -> Iterator[Reason]:
        return map(Reason, zip(self._given, repeat(self._tale)))

    @overload
    def __getitem__(self, at: int) -> Reason: ...

    @overload
    def __getitem__(self, at: slice) -> Sequence[Reason]: ...

    def __getitem__(self, at: int | slice) -> Reason | Sequence[Reason]:
        if isinstance(at, slice):
            return Reasons(self._given[at], self._tale)
        return Reason((self._given[at], self._tale))

    def __repr__(self) -> str:
        return f"Reasons({len(self)} of {', '.join(dict.fromkeys(one.about.kind for one in self._given))})"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Reasons) and len(self) == len(other) and all(map(eq, self, other))

    def __hash__(self) -> int:
        return hash(tuple(self._given))
