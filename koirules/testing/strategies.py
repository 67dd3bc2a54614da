"""Hypothesis strategies for records of any vocabulary; needs hypothesis, which nothing else here does."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from decimal import Decimal
from typing import assert_never

from hypothesis import strategies as st

from koirules.vocabulary.kinds import (
    Choice,
    Colours,
    Count,
    Kind,
    Label,
    Number,
    Patches,
    Places,
    Scale,
    YesNo,
    shortest,
)
from koirules.vocabulary.quantities import may_be_part_of_one
from koirules.vocabulary.traits import Trait


def records(
    traits: Mapping[str, Trait] | Iterable[Trait], *, holes: bool = True, unsure: bool = True
) -> st.SearchStrategy[dict[str, str]]:
    """Records as `Standard.grade` takes them: trait to what a sheet's cell has, numbers in the trait's own unit.

    traits: of a variety (`registry.varieties["kohaku"].traits`) or a standard (`standard.traits`). holes: any trait may be
    missing. unsure: a value may be what it could be, `fair or sharp`, `40 to 50`.
    """
    listed = list(traits.values()) if isinstance(traits, Mapping) else list(traits)
    cells = {trait.name: values(trait.kind, unsure=unsure) for trait in listed}
    return st.fixed_dictionaries({}, optional=cells) if holes else st.fixed_dictionaries(cells)


def values(kind: Kind, *, unsure: bool = True) -> st.SearchStrategy[str]:
    """Cells of one kind of value."""
    match kind:
        case YesNo():
            return _words(("no", "yes"), unsure)
        case Scale(words) | Choice(words):
            return _words(words, unsure)
        case Places(places):
            some = st.lists(st.sampled_from(places), unique=True)
            return some.map(lambda chosen: " ".join(chosen) or "none")
        case Count(high):
            return _between(st.integers(0, high).map(Decimal), unsure)
        case Number(_, low, high):
            found = _between(st.decimals(low, high, places=_places(kind), allow_nan=False), unsure)
            # A bare share of at most 1 could be a part of one, and is refused.
            return found.map(lambda text: f"{text} %") if may_be_part_of_one(kind) else found
        case Label():
            return st.sampled_from(("mill pond", "line A", "7"))
        case Colours():
            one = st.tuples(st.integers(0, 100), st.integers(-80, 80), st.integers(-80, 80))
            return st.lists(one.map(lambda lab: " ".join(map(str, lab))), min_size=1, max_size=4).map("; ".join)
        case Patches():
            return st.lists(_patches(), max_size=4).map(lambda patches: "; ".join(patches) or "none")
        case _:
            assert_never(kind)


def _words(words: tuple[str, ...], unsure: bool) -> st.SearchStrategy[str]:
    most = len(words) if unsure else 1
    return st.lists(st.sampled_from(words), unique=True, min_size=1, max_size=most).map(" or ".join)


def _between(numbers: st.SearchStrategy[Decimal], unsure: bool) -> st.SearchStrategy[str]:
    one = numbers.map(shortest)
    if not unsure:
        return one
    two = st.tuples(numbers, numbers).map(lambda ends: " to ".join(shortest(end) for end in sorted(ends)))
    return one | two


@st.composite
def _patches(draw: st.DrawFn) -> str:
    """A patch in the short form."""
    front = draw(st.integers(0, 95))
    rear = draw(st.integers(front + 1, 100))
    left, right = draw(st.integers(0, 200)), draw(st.integers(1, 200))
    return f"{front} to {rear} " + (f"left {left} right {right}" if left else f"right {right}")


def _places(kind: Number) -> int:
    """The decimals of the range, and two more, as far as the language keeps them."""
    finest = max(-int(end.as_tuple().exponent) for end in (kind.low, kind.high))
    return min(6, max(0, finest) + 2)
