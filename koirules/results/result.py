"""What comes of a fish: grade, score, sections, faults, lifts and reasons."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from decimal import Decimal
from functools import cached_property
from types import MappingProxyType
from typing import TYPE_CHECKING, Protocol

from attrs import field

from koirules.results.course import Fate, Step
from koirules.results.decisions import Decision
from koirules.results.look_again import LookAgain
from koirules.results.reason import Grounds, Reason
from koirules.values import frozen
from koirules.vocabulary.wordings import UNREAD

if TYPE_CHECKING:
    from koirules.candidates.changes import NearestChanges


@frozen
class SectionResult:
    """The points of a section, lowest and highest still possible, in hundredths as decimals, of `worth`."""

    name: str
    title: str
    worth: Decimal
    low: Decimal
    high: Decimal


@frozen
class LookResult:
    """What came of a fish at one look of its sorting, by what was known then.

    number: the look, from 1. changes: what it told otherwise than the looks before it, in words.
    """

    number: int
    possible: tuple[str, ...]
    score_low: Decimal
    score_high: Decimal
    changes: tuple[str, ...] = ()

    @property
    def grade(self) -> str | None:
        """The grade, where only one is possible."""
        return self.possible[0] if len(self.possible) == 1 else None


@frozen
class JudgeResult:
    """What came of the record that one judge made of a fish, graded by itself."""

    judge: str
    result: Result


@frozen
class PanelResult:
    """How a panel came to its result. missing: how many judges it lacks. split: traits on which its judges are tied.

    words: in a line: `5 judges; 4 say keep, 1 says hold`.
    """

    judges: tuple[JudgeResult, ...]
    missing: int
    split: tuple[str, ...]
    words: str


class Behind(Protocol):
    """What a result is a view of: works out, when it is asked for, what most callers do not want."""

    def reasons(self) -> Sequence[Reason]:
        """Every reason, in the order of the rule file."""

    def grounds(self, reasons: Sequence[Reason]) -> Grounds:
        """Those that decided and that weighed most."""

    def nearest_changes(self) -> NearestChanges:
        """The smallest changes that would have given another grade."""

    def contributions(self, result: Result) -> tuple[Contribution, ...]:
        """What each criterion gave."""


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


def _unchanging_sections(sections: Mapping[str, SectionResult]) -> Mapping[str, SectionResult]:
    return MappingProxyType(sections)


def _unchanging_labels(labels: Mapping[str, str]) -> Mapping[str, str]:
    return MappingProxyType(labels)


@frozen(slots=False, repr=False)
class Result:
    """The result of one fish.

    possible: the grades still possible, best first. score_low, score_high: decimals with two places. faults, lifts: the
    names of those that surely bite. labels: the columns that were carried along. decision: a person's word about the grade,
    which then is the only one possible; by_rules: the grades still possible by the rules alone. course: what each round that
    looked at the fish made of it. assumed: the traits that the page read as silence means them, outside
    rounds; rests_on_silence: whether two grades or more would be possible without those. outside: why it is placed nowhere,
    "" where it is placed like any other. look_again: what was recorded of it and is unlikely; it changes nothing. looks: each
    look of a sorting that has several. carried: the traits that an earlier look told and the last one did not mention. panel:
    what its judges came to, None where no panel put it together.
    """

    fish: str
    possible: tuple[str, ...]
    score_low: Decimal
    score_high: Decimal
    sections: Mapping[str, SectionResult] = field(hash=False, converter=_unchanging_sections)
    faults: tuple[str, ...]
    lifts: tuple[str, ...]
    labels: Mapping[str, str] = field(factory=dict, hash=False, converter=_unchanging_labels)
    hangs_on: tuple[str, ...] = ()
    decision: Decision | None = None
    by_rules: tuple[str, ...] = ()
    course: tuple[Step, ...] = ()
    assumed: tuple[str, ...] = ()
    rests_on_silence: bool = False
    looks: tuple[LookResult, ...] = ()
    carried: tuple[str, ...] = ()
    panel: PanelResult | None = None
    _behind: Behind | None = field(default=None, repr=False, eq=False)
    outside: str = ""
    look_again: tuple[LookAgain, ...] = ()
    _reasons: Sequence[Reason] | None = field(default=None, init=False, repr=False, eq=False)

    def __repr__(self) -> str:
        low, high = self.score_low, self.score_high
        score = f"{low}" if low == high else f"{low} to {high}"
        return f"Result({self.fish!r}, {' or '.join(self.possible)!r}, score={score})"

    @property
    def grade(self) -> str | None:
        """The grade, where only one is possible."""
        return self.possible[0] if len(self.possible) == 1 else None

    @property
    def unread(self) -> str:
        """What was said of it and nobody understood; "" where nothing was. Its grade is to be read again."""
        return self.labels.get(UNREAD, "")

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
        """The round in which it is tied, for a person to decide; None once a person has kept it in a later one."""
        last = next((step for step in reversed(self.course) if step.kept or step.fate is Fate.TIED), None)
        return None if last is None or last.kept else last.round

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
        known = self._reasons
        if known is None:
            known = () if self._behind is None else self._behind.reasons()
            self.__dict__["_reasons"] = known
        return known

    @cached_property
    def grounds(self) -> Grounds:
        """What decided, and what weighed most, apart from each other."""
        return Grounds() if self._behind is None else self._behind.grounds(self.reasons)

    @property
    def main_reasons(self) -> tuple[Reason, ...]:
        """All faults that bite and that were forgiven, then the two or three other reasons that mattered most, most first."""
        return self.grounds.every

    @property
    def why(self) -> str:
        """The main reasons as one line, of a panel behind what its judges say: what decided is marked, losses and gains apart."""
        words = self.grounds.words
        unread = f"not understood: “{self.unread}”" if self.unread else ""
        outside = f"placed nowhere: {self.outside}" if self.outside else ""
        panel = "" if self.panel is None else self.panel.words
        return "; ".join(part for part in (outside, unread, panel, words) if part)

    def nearest_changes(self) -> NearestChanges:
        """The smallest changes that would have given the next better grade, or lost the best one (nearest_changes.py)."""
        return self._nearest

    @cached_property
    def _nearest(self) -> NearestChanges:
        from koirules.candidates.changes import NearestChanges

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
