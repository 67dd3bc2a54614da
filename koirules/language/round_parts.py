"""The parts of a round, as syntax: whom it looks at, whom it keeps, whom it picks, and where they go."""

from __future__ import annotations

from typing import assert_never

from koirules.language.syntax import Expression, Quantity, Title, Word
from koirules.problems import Place
from koirules.values import frozen

Amount = Quantity | Word
"""A number of fish: written, or the name of a setting."""


@frozen
class Pool:
    """`from all`, `from those kept by ROUND`, `from those passed over by ROUND`; word is all, kept or passed."""

    word: str
    round: Word | None
    place: Place


@frozen
class Keep:
    """`keep those [possibly] with C`."""

    possibly: bool
    condition: Expression
    place: Place


@frozen
class Order:
    """One key of a pick; word is highest, lowest or those (those with a condition first)."""

    word: str
    by: Expression
    place: Place


@frozen
class Pick:
    """`pick N by …`; amount None is `pick all by …`, one with a unit a share of those that the round looks at.

    each: of `for each (a, b)`, in whose groups it picks.
    """

    amount: Amount | None
    orders: tuple[Order, ...]
    place: Place
    each: tuple[Word, ...] = ()


@frozen
class Quota:
    """`no more than K with C`, or, with condition None, `no more than K of the same (a, b)`."""

    amount: Amount
    condition: Expression | None
    same: tuple[Word, ...]
    place: Place


@frozen
class Send:
    """`send to "…" [again in 8 weeks]`."""

    to: str
    again: Quantity | None
    place: Place


@frozen
class Rescues:
    """`rescues N`."""

    amount: Amount
    place: Place


@frozen
class Ties:
    """`ties all in` or `ties by first recorded`; word is all or first."""

    word: str
    place: Place


@frozen
class Saying:
    """`say "…"` inside a round."""

    words: Title
    place: Place


RoundPart = Pool | Keep | Pick | Quota | Send | Rescues | Ties | Saying


def expressions_in(part: RoundPart) -> list[Expression]:
    """The expressions of a part."""
    match part:
        case Keep(condition=condition):
            return [condition]
        case Pick(orders=orders, each=each):
            return [*each, *(order.by for order in orders)]
        case Quota(condition=condition, same=same):
            return list(same) if condition is None else [condition]
        case Pool() | Send() | Rescues() | Ties() | Saying():
            return []
        case _:
            assert_never(part)
