"""Between which ends a figure of a batch lies while some of its fish may yet be recorded, or leave it.

Each value of a figure lies between two ends, in whole millionths; some values surely count, others may. A figure rises with
every value, so its lowest end takes each value at its lowest end. Which of the others it then takes in is up to them: of any
number of these the smallest make it lowest.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property

from koirules.meaning.aggregates import Bounds
from koirules.standard.tree import Figure
from koirules.values import define

Ends = tuple[int, int]
"""The lowest and the highest value, in millionths."""


@define(slots=False)
class Members:
    """The values of one group: how many surely count between each pair of ends, and how many may."""

    sure: Mapping[Ends, int]
    more: Mapping[Ends, int]

    @cached_property
    def number(self) -> int:
        """How many surely count."""
        return sum(self.sure.values())

    def ends(self, figure: Figure, own: int | None) -> Ends:
        """The ends of a figure over one fish or more that surely count. own: of a standing, the value of the fish."""
        return figure.kind.ends(self._bounds, figure.percent, own)

    @cached_property
    def _bounds(self) -> Bounds:
        fixed = [low for (low, high), times in self.sure.items() if low == high for _ in range(times)]
        return Bounds(_listed(self.sure, 0), _listed(self.sure, 1), _listed(self.more, 0), _listed(self.more, 1), fixed)


def _listed(counts: Mapping[Ends, int], end: int) -> list[int]:
    return sorted(ends[end] for ends, times in counts.items() for _ in range(times))
