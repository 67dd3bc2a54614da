"""The rounds of a checked standard: steps of the selection over a batch."""

from __future__ import annotations

from decimal import Decimal

from koirules.problems import Place
from koirules.standard.titles import Titled
from koirules.standard.tree import Node
from koirules.values import frozen

Amount = int | str
"""A number of fish, or the name of the setting that holds it."""


@frozen
class Share:
    """A share of the fish that a round looks at, in %, or the name of the setting that holds it."""

    of: Decimal | str


@frozen
class Key:
    """One key of a pick.

    highest: whether more comes first, of a number or of the steps of a scale; a condition has those first that surely
    hold, and highest is True.
    """

    by: Node
    highest: bool
    place: Place


@frozen
class Quota:
    """No more than so many: with a condition, or, where it is None, of those that have all of `same` in common."""

    amount: Amount
    condition: Node | None
    same: tuple[Node, ...]
    place: Place


@frozen
class Round:
    """A step of the selection.

    pool: whose fish it looks at: "all", or those "kept" or "passed" over by the round `pool_of`. keep: the condition of
    those that stay (None: all), surely, or possibly. ordered: whether it picks at all; amount: how many, or which share of
    those that it looks at, rounded up (None: all). keys: of the pick. send: where those that are kept go, "" for nowhere in
    particular; again: the days until the next look. rescues: how many a person may keep by hand. ties: "" for left open,
    "all" in, or by the "first" recorded. look: at which look it judges a fish, None for everything known. each: what the fish
    have in common among which it picks, each time anew; none where it picks among all.
    """

    name: str
    title: Titled
    pool: str
    pool_of: str
    possibly: bool
    keep: Node | None
    ordered: bool
    amount: Amount | Share | None
    keys: tuple[Key, ...]
    quotas: tuple[Quota, ...]
    send: str
    again: Decimal | None
    rescues: Amount
    ties: str
    say: Titled | None
    place: Place
    look: int | None = None
    each: tuple[Node, ...] = ()

    @property
    def roots(self) -> tuple[Node, ...]:
        """The expressions that it reads."""
        found = [] if self.keep is None else [self.keep]
        found.extend(key.by for key in self.keys)
        for quota in self.quotas:
            found.extend(quota.same if quota.condition is None else (quota.condition,))
        return (*found, *self.each)

    @property
    def amounts(self) -> tuple[Amount, ...]:
        """Every number of fish that it names."""
        first = () if self.amount is None or isinstance(self.amount, Share) else (self.amount,)
        return (*first, *(quota.amount for quota in self.quotas), self.rescues)
