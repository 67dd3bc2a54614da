"""Draws records of a standard: holes, spans, ends of ranges, knots, thresholds and exact ties."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise
from typing import Any

from hypothesis import strategies as st

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.drawn_expressions import TEXTS
from tests.judge.look import HELD_IN, Record, exactly, sets_of
from tests.judge.scope import MILLION, Draw, decimal_of
from tests.judge.written import plain

# How far from a threshold a value may stand: nowhere, and around half a millionth, where rounding decides.
NUDGES = ("0", "0", "0.0000005", "-0.0000005", "0.0000005", "-0.0000005", "0.000001", "-0.0000006", "0.0000004")


@st.composite
def drawn_record(draw: Draw, standard: m.Standard) -> dict[str, object]:
    holes = draw(st.sampled_from((20, 0, 50, 100)))
    record: dict[str, object] = {}
    for trait in standard.traits:
        if draw(st.integers(0, 99)) >= holes:
            record[trait.name] = draw(said(standard, trait))
    return record


def said(standard: m.Standard, trait: m.Trait) -> st.SearchStrategy[object]:
    match trait.kind:
        case m.NumberKind() as kind:
            one = number_said(amounts(standard, trait, kind), kind)
            return st.one_of(one, one, spans(st.sampled_from(amounts(standard, trait, kind)), decimal_of))
        case m.CountKind(up_to):
            counts = st.integers(0, up_to) | st.integers(0, min(up_to, 4))
            return st.one_of(counts, counts.map(str), spans(counts, int))
        case m.ScaleKind(steps) | m.ChoiceKind(steps):
            several = st.frozensets(st.sampled_from(steps), min_size=2)
            return st.one_of(st.sampled_from(steps), st.sampled_from(steps), several)
        case m.YesNoKind():
            return st.sampled_from((False, True, False, True, "unsure"))
        case m.PlacesKind(places):
            exactly_these = st.frozensets(st.sampled_from(places))
            return st.one_of(exactly_these, some_places(places))
        case m.LabelKind():
            return st.sampled_from((*TEXTS, "some other"))
    raise AssertionError(trait)


@st.composite
def some_places(draw: Draw, places: tuple[str, ...]) -> object:
    """Places that are in, with from so many to so many of others: `tail, 1 to 2 of (dorsal, anal)`."""
    mixed = draw(st.permutations(places))
    inside = draw(st.integers(0, len(places) - 1))
    among = draw(st.integers(1, len(places) - inside))
    least, most = sorted((draw(st.integers(0, among)), draw(st.integers(0, among))))
    return ("some", frozenset(mixed[:inside]), frozenset(mixed[inside : inside + among]), least, most)


def spans(ends: st.SearchStrategy[Any], written: Any) -> st.SearchStrategy[object]:
    def span(pair: list[Any]) -> object:
        low, high = sorted(pair)
        return ("span", plain(written(low)), plain(written(high)))

    return st.lists(ends, min_size=2, max_size=2).map(span)


def number_said(found: list[Fraction], kind: m.NumberKind) -> st.SearchStrategy[object]:
    on_purpose = st.sampled_from(found).map(decimal_of)
    return st.one_of(on_purpose.map(float), on_purpose.map(plain), any_double(kind.low, kind.high))


def any_double(low: Decimal, high: Decimal) -> st.SearchStrategy[float]:
    """Any double that a person could have typed: not so small that nobody would write its noughts."""
    inside = st.floats(float(low), float(high)).map(lambda x: x if abs(x) > 1e-12 else 0.0)
    return inside.filter(lambda x: exactly(low) <= exactly(x) <= exactly(high))


# ---- Telling values ----------------------------------------------------------------------------------------------


def amounts(standard: m.Standard, trait: m.Trait, kind: m.NumberKind) -> list[Fraction]:
    """Amounts in the trait's own unit where something may turn: never outside its range."""
    held_in, factor = HELD_IN[kind.unit]
    found = [exactly(kind.low), exactly(kind.high), (exactly(kind.low) + exactly(kind.high)) / 2]
    for at in [*thresholds(standard, held_in), *ties(standard, trait.name)]:
        found += [(at + Fraction(nudge)) / factor for nudge in NUDGES]
    return [each for each in found if exactly(kind.low) <= each <= exactly(kind.high) and is_short(each)]


def is_short(amount: Fraction) -> bool:
    return (amount * 1000 * MILLION).denominator == 1


def thresholds(standard: m.Standard, held_in: str) -> list[Fraction]:
    """Every literal, knot and setting of this dimension."""
    found = set()
    for part in parts(standard):
        if isinstance(part, e.Literal | m.Setting):
            amount, unit = part.amount, part.unit
        elif isinstance(part, m.Knot):
            amount, unit = part.at, part.unit
        else:
            continue
        if HELD_IN[unit][0] == held_in:
            found |= {exactly(amount) * HELD_IN[unit][1], -exactly(amount) * HELD_IN[unit][1]}
    return sorted(found)


def parts(of: object) -> Iterator[object]:
    """Everything a standard is made of."""
    yield of
    if isinstance(of, tuple):
        for each in of:
            yield from parts(each)
    for name in getattr(of, "__match_args__", ()):
        yield from parts(getattr(of, name))


def ties(standard: m.Standard, name: str) -> list[Fraction]:
    """Where a curve over this trait alone gives exactly half a thousandth."""
    found = []
    for part in parts(standard):
        if isinstance(part, m.Points) and part.by == e.Name(name) and isinstance(part.gives, m.Curve):
            knots = [(exactly(k.at) * HELD_IN[k.unit][1], exactly(k.gives)) for k in part.gives.knots]
            for (x0, y0), (x1, y1) in pairwise(knots):
                if y0 == y1:
                    continue
                for step in (Fraction(1, 2), Fraction(3, 7), Fraction(1, 10)):
                    near = int((y0 + (y1 - y0) * step) * 1000) * Fraction(1, 1000) + Fraction(1, 2000)
                    found.append(x0 + (near - y0) * (x1 - x0) / (y1 - y0))
    return found


# ---- Completions -------------------------------------------------------------------------------------------------


@st.composite
def drawn_completion(draw: Draw, standard: m.Standard, record: Record) -> dict[str, object]:
    return {trait.name: draw(certain(trait, record.get(trait.name))) for trait in standard.traits}


def certain(trait: m.Trait, said_so_far: object) -> st.SearchStrategy[object]:
    """One value among those that were said, or of the whole range if nothing was."""
    match trait.kind:
        case m.NumberKind(_, low, high):
            if isinstance(said_so_far, tuple):
                low, high = Decimal(said_so_far[1]), Decimal(said_so_far[2])
            elif said_so_far is not None:
                return st.just(said_so_far)
            return st.one_of(st.sampled_from((plain(low), plain(high))), any_double(low, high))
        case m.CountKind(up_to):
            if isinstance(said_so_far, tuple):
                return st.integers(int(said_so_far[1]), int(said_so_far[2]))
            return st.integers(0, up_to) if said_so_far is None else st.just(said_so_far)
        case m.ScaleKind(steps) | m.ChoiceKind(steps):
            if isinstance(said_so_far, str):
                return st.just(said_so_far)
            return st.sampled_from(steps if said_so_far is None else sorted(said_so_far))  # type: ignore[call-overload]
        case m.YesNoKind():
            return st.booleans() if said_so_far in {None, "unsure"} else st.just(said_so_far)
        case m.PlacesKind(places):
            if isinstance(said_so_far, tuple):
                return st.sampled_from(sets_of(said_so_far))
            return st.frozensets(st.sampled_from(places)) if said_so_far is None else st.just(said_so_far)
        case m.LabelKind():
            return st.sampled_from((*TEXTS, "some other")) if said_so_far is None else st.just(said_so_far)
    raise AssertionError(trait)
