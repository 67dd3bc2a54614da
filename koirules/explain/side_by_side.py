"""Two results of one standard side by side: what put one above the other, adding up to the difference of their scores."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from koirules.results.reason import Reason
from koirules.results.result import Contribution, Result
from koirules.values import frozen


@frozen
class Row:
    """One line of a comparison: what a criterion, or the holding and rounding of a section, gave the one and the other."""

    section: str
    kind: str
    name: str
    title: str
    one: Decimal
    other: Decimal
    one_reason: Reason | None
    other_reason: Reason | None

    @property
    def difference(self) -> Decimal:
        """How much more it gave the one."""
        return self.one - self.other


@frozen
class Parting:
    """A fault or a lift that is not the same for both, with its reason for each."""

    one: Reason
    other: Reason


@frozen
class SideBySide:
    """Two results of one standard.

    rows: every criterion and what the sections were held and rounded by, the largest difference first; their differences add
    up exactly to `difference`. Where a score is not settled its low end stands, in rows and in `difference`. partings: the
    faults and lifts that are not the same for both, in the order of the file.
    """

    one: Result
    other: Result
    rows: tuple[Row, ...]
    partings: tuple[Parting, ...]

    @property
    def difference(self) -> Decimal:
        """How much higher the score of the one is, at the low ends."""
        return self.one.score_low - self.other.score_low


def side_by_side(one: Result, other: Result) -> SideBySide:
    """Compare two results of the same standard with the same settings; raises ValueError for those of different ones."""
    first, second = _by_part(one), _by_part(other)
    limits, others = _limits(one), _limits(other)
    if first.keys() != second.keys() or limits.keys() != others.keys():
        raise ValueError("results of different standards cannot be set side by side")
    rows = [
        Row(line.section, line.kind, line.name, line.title, line.points, beside.points, line.reason, beside.reason)
        for key, line in first.items()
        for beside in (second[key],)
    ]
    partings = [Parting(reason, others[key]) for key, reason in limits.items() if reason.state != others[key].state]
    return SideBySide(one, other, tuple(sorted(rows, key=lambda row: -abs(row.difference))), tuple(partings))


def _by_part(result: Result) -> Mapping[tuple[str, str, str], Contribution]:
    return {(line.section, line.kind, line.name): line for line in result.contributions}


def _limits(result: Result) -> Mapping[tuple[str, str], Reason]:
    return {(reason.kind, reason.name): reason for reason in result.reasons if reason.kind in {"fault", "lift"}}
