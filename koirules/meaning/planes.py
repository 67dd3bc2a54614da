"""Sets as a truth for each member: for algebras whose values are truths of every row, or of every fish, at once."""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, Protocol, TypeVar

from koirules.values import frozen

V = TypeVar("V")
Planes = tuple[V, ...]


class Truths(Protocol[V]):
    """An algebra of truths."""

    def constant(self, value: object) -> V:
        """A truth that is the same everywhere."""

    def every(self, *parts: V) -> V:
        """Whether all hold."""

    def some(self, *parts: V) -> V:
        """Whether any holds."""

    def no(self, part: V) -> V:
        """Whether it does not hold."""

    def known(self, value: V) -> bool | None:
        """Whether it holds, where that is the same everywhere."""


@frozen
class PlaneSets(Generic[V]):
    """The sets of a value algebra, of so many members at the most, over an algebra of truths.

    keep: what is done with each truth of a set that was chosen, so that it is worked out once.
    """

    truths: Truths[V]
    members: int
    keep: Callable[[V], V] = lambda truth: truth

    def bits(self, value: int) -> Planes[V]:
        """A set that is the same everywhere."""
        return tuple(self.truths.constant(bool(value >> member & 1)) for member in range(self.members))

    def every(self, *parts: V) -> V:
        """Whether all of some truths hold."""
        return self.truths.every(*parts)

    def no(self, part: V) -> V:
        """Whether a truth does not hold."""
        return self.truths.no(part)

    def common(self, a: Planes[V], b: Planes[V]) -> Planes[V]:
        """The members that two sets share."""
        return tuple(self.truths.every(one, other) for one, other in zip(a, b, strict=True))

    def either(self, a: Planes[V], b: Planes[V]) -> Planes[V]:
        """The members of two sets together."""
        return tuple(self.truths.some(one, other) for one, other in zip(a, b, strict=True))

    def meets(self, a: Planes[V], b: Planes[V]) -> V:
        """Whether two sets share a member."""
        return self.truths.some(*self.common(a, b))

    def where(self, test: V, one: Planes[V], other: Planes[V]) -> Planes[V]:
        """One set where a truth holds, else the other."""
        return tuple(self.keep(self._chosen(test, a, b)) for a, b in zip(one, other, strict=True))

    def _chosen(self, test: V, one: V, other: V) -> V:
        if one is other:
            return one
        truths = self.truths
        if truths.known(one) is not None:
            return truths.some(test, other) if truths.known(one) else truths.every(truths.no(test), other)
        if truths.known(other) is not None:
            return truths.some(truths.no(test), one) if truths.known(other) else truths.every(test, one)
        return truths.some(truths.every(test, one), truths.every(truths.no(test), other))
