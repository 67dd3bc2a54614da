"""What comes of a fish: grade, score, sections, faults, lifts and reasons."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from decimal import Decimal
from enum import Enum
from functools import cached_property
from itertools import repeat
from typing import NamedTuple, Protocol, overload

from attrs import define, field, frozen

from koirules.grading.changes import NearestChanges
from koirules.grading.course import Step
from koirules.grading.decisions import Decision
from koirules.grading.picking import Fate


class State(Enum):
    """What became of a condition."""

    YES = "yes"
    NO = "no"
    OPEN = "open"
    HELD_BACK = "held back"


@frozen
class SectionResult:
    """The points of a section, lowest and highest still possible, in hundredths as decimals, of `worth`."""

    name: str
    title: str
    worth: Decimal
    low: Decimal
    high: Decimal


@frozen
class Told:
    """What a reason is about, the same for every fish.

    kind: `points`, `bonus`, `penalty`, `fault`, `lift` or `grade`. name, title: as the rule file has them (title is the
    name where it has none). section: of a criterion, else "". outcome: the grade that a fault, lift or grade names, else "".
    line: where it stands in the rule file. points_most: what the curve or table gives at most, or what a bonus adds (0 for a
    penalty); score_most: the same as a share of the score, rounded half up to a hundredth. Both None for faults, lifts and
    grades. place: its position among the parts of its kind. file: the rule file that the line is of.
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


class Behind(Protocol):
    """What a result is a view of: works out, when it is asked for, what most callers do not want."""

    def reasons(self) -> Sequence[Reason]:
        """Every reason, in the order of the rule file."""

    def main_reasons(self, reasons: Sequence[Reason]) -> tuple[Reason, ...]:
        """The two or three that mattered most, most first."""

    def nearest_changes(self) -> NearestChanges:
        """The smallest changes that would have given another grade."""

    def contributions(self, result: Result) -> tuple[Contribution, ...]:
        """What each criterion gave."""


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
    def left_on_table(self) -> Decimal:
        """How much of the score was surely missed: the most less the highest still possible (0 for what gives no points)."""
        if self.score_most is None or self.score_high is None:
            return Decimal(0)
        return self.score_most - self.score_high


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
        return f"Reasons({list(self._given)!r})"


@frozen
class Contribution:
    """One line of a score: what a criterion gave of it, at the low end, as a share of the score in hundredths.

    kind: that of the criterion, or `held` and `rounding` of a section (contributions.py). reason: of the criterion, else None.
    """

    section: str
    kind: str
    name: str
    title: str
    points: Decimal
    reason: Reason | None


@define(slots=False)
class Result:
    """The result of one fish.

    possible: the grades still possible, best first. score_low, score_high: decimals with two places. faults, lifts: the
    names of those that surely bite. labels: the columns that were carried along. decision: a person's word about the grade,
    which then is the only one possible; by_rules: the grades still possible by the rules alone. course: what each round that
    looked at the fish made of it.
    """

    fish: str
    possible: tuple[str, ...]
    score_low: Decimal
    score_high: Decimal
    sections: Mapping[str, SectionResult]
    faults: tuple[str, ...]
    lifts: tuple[str, ...]
    labels: Mapping[str, str] = field(factory=dict)
    hangs_on: tuple[str, ...] = ()
    decision: Decision | None = None
    by_rules: tuple[str, ...] = ()
    course: tuple[Step, ...] = ()
    _behind: Behind | None = field(default=None, repr=False, eq=False)
    _reasons: Sequence[Reason] | None = field(default=None, init=False, repr=False, eq=False)

    @property
    def grade(self) -> str | None:
        """The grade, where only one is possible."""
        return self.possible[0] if len(self.possible) == 1 else None

    @property
    def score(self) -> Decimal | None:
        """The score, where only one is possible."""
        return self.score_low if self.score_low == self.score_high else None

    @property
    def kept_by(self) -> tuple[str, ...]:
        """The rounds that kept it."""
        return tuple(step.round for step in self.course if step.kept)

    @property
    def left_in(self) -> str | None:
        """The round in which it left: the last that looked at it, where that did not keep it."""
        last = self.course[-1] if self.course else None
        return None if last is None or last.kept or last.fate is Fate.TIED else last.round

    @property
    def tied_in(self) -> str | None:
        """The round in which it is tied, for a person to decide."""
        return next((step.round for step in self.course if step.fate is Fate.TIED), None)

    @property
    def open_in(self) -> tuple[str, ...]:
        """The rounds in which a recording could still change what became of it."""
        return tuple(step.round for step in self.course if step.open)

    @property
    def sent_to(self) -> str:
        """Where the last round that kept it and sends its fish somewhere sends it; "" for nowhere in particular."""
        return next((step.sent for step in reversed(self.course) if step.sent), "")

    @property
    def next_look(self) -> date | None:
        """The day of the next look, where a round that kept it named one."""
        return next((step.again for step in reversed(self.course) if step.again), None)

    @property
    def reasons(self) -> Sequence[Reason]:
        """Every reason, in the order of the rule file."""
        # A cached property would take a lock, longer than the reasons take themselves.
        if self._reasons is None:
            self._reasons = () if self._behind is None else self._behind.reasons()
        return self._reasons

    @cached_property
    def main_reasons(self) -> tuple[Reason, ...]:
        """The two or three reasons that mattered most, most first."""
        return () if self._behind is None else self._behind.main_reasons(self.reasons)

    @property
    def why(self) -> str:
        """The main reasons as one line."""
        return "; ".join(reason.words for reason in self.main_reasons)

    def nearest_changes(self) -> NearestChanges:
        """The smallest changes that would have given the next better grade, or lost the best one (nearest_changes.py)."""
        return self._nearest

    @cached_property
    def _nearest(self) -> NearestChanges:
        return NearestChanges() if self._behind is None else self._behind.nearest_changes()

    @cached_property
    def contributions(self) -> tuple[Contribution, ...]:
        """What each criterion gave, section by section; the points add up exactly to `score_low`."""
        return () if self._behind is None else self._behind.contributions(self)

    @property
    def left_on_table(self) -> tuple[Reason, ...]:
        """The criteria that surely missed points, or that surely took some, the most first.

        A section that is held at its worth would not have given more for all of them.
        """
        missed = [reason for reason in self.reasons if reason.left_on_table > 0]
        return tuple(sorted(missed, key=lambda reason: -reason.left_on_table))
