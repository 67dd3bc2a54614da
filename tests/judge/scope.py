"""What a statement that is being drawn may read: the names so far, their types, and what ranges alone decide."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from decimal import Decimal
from fractions import Fraction
from typing import Any, TypeVar

from attrs import define, evolve, field, frozen
from hypothesis import strategies as st

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge import values as v
from tests.judge.judge import look_without_a_fish
from tests.judge.look import HELD_IN, Look, exactly
from tests.judge.reckoning import worth

T = TypeVar("T")
Draw = Callable[[st.SearchStrategy[Any]], Any]

MILLION = 1_000_000
HIGHEST = MILLION * MILLION  # the largest number of the language, in millionths


@frozen
class NumberType:
    """A number or a count, by the unit it is held in; whole if it can only be a whole number."""

    dimension: str
    whole: bool


@frozen
class TruthType:
    pass


@frozen
class StepsType:
    order: tuple[str, ...]
    ordered: bool  # a scale, not a choice


@frozen
class PlacesType:
    places: tuple[str, ...]


@frozen
class LabelType:
    pass


Type = NumberType | TruthType | StepsType | PlacesType | LabelType


def type_of_kind(kind: m.Kind) -> Type:
    match kind:
        case m.NumberKind(unit):
            return NumberType(HELD_IN[unit][0], whole=False)
        case m.CountKind():
            return NumberType("", whole=True)
        case m.ScaleKind(steps):
            return StepsType(steps, ordered=True)
        case m.ChoiceKind(steps):
            return StepsType(steps, ordered=False)
        case m.YesNoKind():
            return TruthType()
        case m.PlacesKind(places):
            return PlacesType(places)
        case m.LabelKind():
            return LabelType()


@define
class Scope:
    """The standard so far, and the type of each of its names; `scored` once sections may be read.

    growing: whether traits may be asked for as they will be. comparing: whether figures of the batch and the look before
    may be read; alone: inside such a look, where nothing but what was recorded is read; about_nobody: in what may read
    nothing of one fish. graded: whether the grade may be read. rounds: the rounds so far. figures: those that may be
    read again, with their dimension.
    """

    draw: Draw
    standard: m.Standard
    types: dict[str, Type] = field(factory=dict)
    scored: bool = False
    growing: bool = False
    comparing: bool = False
    alone: bool = False
    about_nobody: bool = False
    graded: bool = False
    rounds: list[str] = field(factory=list)
    figures: list[tuple[str, e.Figure]] = field(factory=list)
    look: Look = field(init=False)

    def __attrs_post_init__(self) -> None:
        self.look = look_without_a_fish(self.standard)

    def one_of(self, options: list[T] | tuple[T, ...]) -> T:
        chosen: T = self.draw(st.sampled_from(options))
        return chosen

    def shuffled(self, options: tuple[T, ...]) -> list[T]:
        """A prime number of options in one of several orders: two draws, where a permutation takes one for each."""
        first, stride = self.draw(st.tuples(st.integers(0, len(options) - 1), st.integers(1, len(options) - 1)))
        return [options[(first + stride * place) % len(options)] for place in range(len(options))]

    def chance(self, percent: int) -> bool:
        return bool(self.draw(st.integers(1, 100)) > 100 - percent)  # shrinks to no

    def extend(self, **parts: tuple[Any, ...]) -> None:
        """Add statements to the standard so far."""
        now = {name: getattr(self.standard, name) + more for name, more in parts.items()}
        self.standard = evolve(self.standard, **now)
        self.look = look_without_a_fish(self.standard)

    @contextmanager
    def before(self) -> Iterator[None]:
        """Inside it, only traits and settings are read."""
        kept = (self.types, self.scored, self.graded, self.comparing, self.alone)
        recorded = {each.name for each in (*self.standard.traits, *self.standard.settings)}
        self.types = {name: its_type for name, its_type in self.types.items() if name in recorded}
        self.scored, self.graded, self.comparing, self.alone = False, False, False, True
        try:
            yield
        finally:
            self.types, self.scored, self.graded, self.comparing, self.alone = kept

    @contextmanager
    def about_one(self) -> Iterator[None]:
        """Inside it, a fish may be read: what a figure is of."""
        kept, self.about_nobody = self.about_nobody, False
        try:
            yield
        finally:
            self.about_nobody = kept

    def name(self, name: str, its_type: Type) -> None:
        self.types[name] = its_type

    def names(self, *types: type) -> list[str]:
        return [name for name, its_type in self.types.items() if isinstance(its_type, types)]

    def same_type(self, its_type: Type) -> list[str]:
        return [name for name, other in self.types.items() if other == its_type]

    def numbers(self, dimension: str) -> list[str]:
        return [n for n, t in self.types.items() if isinstance(t, NumberType) and t.dimension == dimension]

    def dimensions(self) -> list[str]:
        return sorted(
            {t.dimension for t in self.types.values() if isinstance(t, NumberType)}
            | ({"", "%"} if self.comparing else {""})
        )

    # ---- What ranges alone decide (section 3: always and never are judged by plain intervals) --------------------

    def ends(self, number: e.Expression) -> tuple[int, int]:
        """Lowest and highest millionths of a number over all ranges."""
        return v.as_order(worth(number, self.look))

    def is_open(self, condition: e.Expression) -> bool:
        return worth(condition, self.look) == v.OPEN

    def is_whole(self, number: e.Expression) -> bool:
        match number:
            case e.Literal(amount):
                return amount == amount.to_integral_value()
            case e.Name(name):
                return self.types[name] == NumberType("", whole=True)
            case e.CountOf() | e.CountPlaces():
                return True
            case e.Figure(kind, of):
                return kind in {"lowest", "highest"} and self.is_whole(of)
            case e.Earlier(of):
                return self.is_whole(of)
            case e.Arithmetic(sign, left, right):
                return sign != "/" and self.is_whole(left) and self.is_whole(right)
            case e.Lesser(of) | e.Greater(of):
                return all(self.is_whole(each) for each in of)
            case e.Median(of):
                return len(of) % 2 == 1 and all(self.is_whole(each) for each in of)
            case e.Either(then, _, otherwise):
                return self.is_whole(then) and self.is_whole(otherwise)
            case _:
                return False

    # ---- Amounts with their units --------------------------------------------------------------------------------

    def inside(self, low: int, high: int, *, whole: bool) -> int | None:
        """Some millionths strictly between two others, a round number more often than not; None if there are none."""
        grains = [grain for grain in (MILLION, 100_000, 1_000, 1) if low // grain < (high - 1) // grain]
        grains = [grain for grain in grains if grain == MILLION or not whole]
        if not grains:
            return None
        grain = grains[0] if self.chance(70) else self.one_of(grains)
        return grain * int(self.draw(st.integers(low // grain + 1, (high - 1) // grain)))

    def in_some_unit(self, millionths: int, dimension: str) -> tuple[Decimal, str]:
        """The same amount in a unit of its dimension, with six decimals at most and within a million."""
        ways = []
        for unit, (held_in, factor) in HELD_IN.items():
            amount = Fraction(millionths, MILLION) / factor
            if held_in == dimension and (amount * MILLION).denominator == 1 and abs(amount) <= MILLION:
                ways.append((decimal_of(amount), unit))
        ways.sort(key=lambda way: (way[1] != dimension, way[1]))  # shrinks to the unit it is held in
        return self.one_of(ways)


def decimal_of(amount: Fraction) -> Decimal:
    """An amount with a finite decimal, written out shortest."""
    written = (Decimal(amount.numerator) / Decimal(amount.denominator)).normalize()
    assert exactly(written) == amount, amount
    return Decimal(format(written, "f"))


def literal(amount: Decimal, unit: str) -> e.Expression:
    if amount < 0:
        return e.Negative(e.Literal(-amount, unit))
    return e.Literal(abs(amount), unit)
