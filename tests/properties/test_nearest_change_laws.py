"""The nearest changes do what they say, by the slow judge, and nothing nearer does."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction
from itertools import combinations, product

import pytest
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.candidates.changes import Change, NearestChanges
from koirules.candidates.places_to_move import Marks
from koirules.explain.side_by_side import side_by_side
from koirules.results.record import Record
from koirules.vocabulary.kinds import Count
from koirules.vocabulary.readings import PlaceSet, Reading, Span, is_sure, words_in
from tests.judge import model as m
from tests.judge.drawn_expressions import TEXTS
from tests.judge.drawn_records import amounts
from tests.judge.judge import judge
from tests.judge.look import HELD_IN, exactly
from tests.judge.strategies import completions, records, standards, to_mapping
from tests.judge.text import to_text

moderate = settings(
    max_examples=60,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)
MILLION = 1_000_000
NEARLY = 1 + 1e-9


class Fish:
    """A drawn standard and record, the nearest changes of it, and the judge's word on changed ones."""

    def __init__(self, data: st.DataObject, *, whole: bool) -> None:
        self.standard = data.draw(standards())
        drawn = data.draw(records(self.standard))
        self.record = data.draw(completions(self.standard, drawn)) if whole else drawn
        note(to_text(self.standard))
        note(repr(self.record))
        loaded = koirules.read_standard(to_text(self.standard))
        made = loaded.reader.read(to_mapping(self.standard, self.record), "")
        assert isinstance(made, Record)
        self.readings = made.readings
        self.kinds = {name: trait.kind for name, trait in loaded.traits.items()}
        self.grades = loaded.grades
        self.before = loaded.grade(to_mapping(self.standard, self.record))
        self.found: NearestChanges = self.before.nearest_changes()
        note(repr(self.found))

    def meets(self, changed: dict[str, object]) -> bool:
        possible = {self.grades.index(name) for name in self.possible(changed)}
        target = self.grades.index(self.found.grade)
        return max(possible) > target if self.found.loses else min(possible) <= target

    def possible(self, changed: dict[str, object]) -> tuple[str, ...]:
        return judge(self.standard, self.record | changed, frozenset(self.record)).possible

    def said(self, name: str, reading: Reading) -> object:
        """A reading as the judge's records have it."""
        (trait,) = (trait for trait in self.standard.traits if trait.name == name)
        match trait.kind, reading:
            case m.NumberKind(unit), Span(low, _):
                return str(
                    Decimal(round(low * MILLION)).scaleb(-6)
                    / Decimal(HELD_IN[unit][1].numerator)
                    * HELD_IN[unit][1].denominator
                )
            case m.CountKind(), Span(low, _):
                return int(low)
            case m.YesNoKind(), bits:
                return bits == 2
            case m.PlacesKind(), PlaceSet(sure, _):
                return frozenset(words_in(self.kinds[name], sure))
            case m.LabelKind(), str(text):
                return text
            case _, int(bits):
                return words_in(self.kinds[name], bits)[0]
        raise AssertionError(reading)

    def told(self, change: Change) -> dict[str, object]:
        return {move.trait.name: self.said(move.trait.name, move.becomes) for move in change.moves}

    def movable(self) -> list[m.Trait]:
        return [
            trait
            for trait in self.standard.traits
            if trait.name in self.readings and is_sure(self.kinds[trait.name], self.readings[trait.name])
        ]

    def numbers(self, trait: m.Trait, kind: m.NumberKind, value: float) -> Iterator[tuple[Reading, float]]:
        """Whole millionths at which something may turn, those beside them, and those beside the value."""
        low, high, factor = exactly(kind.low), exactly(kind.high), HELD_IN[kind.unit][1]
        width = float((high - low) * factor)
        notches = {int(amount * factor * MILLION) for amount in amounts(self.standard, trait, kind)}
        notches |= {notch + step for notch in notches for step in (-1, 1)}
        notches |= {round(value * MILLION) + step for step in range(-3, 4)}
        for notch in sorted(notches):
            inside = low * factor <= Fraction(notch, MILLION) <= high * factor
            if inside and notch / MILLION != value:
                yield Span(notch / MILLION, notch / MILLION), abs(notch / MILLION - value) / width

    def others(self, trait: m.Trait) -> Iterator[tuple[Reading, float]]:
        """Other values of a trait, with the size of the change: all of them, or of a number those where something may turn."""
        now = self.readings[trait.name]
        match trait.kind, now:
            case m.NumberKind() as kind, Span(value, _):
                yield from self.numbers(trait, kind, value)
            case m.CountKind(up_to), Span(value, _):
                for count in range(min(up_to, 40) + 1):
                    if count != value:
                        yield Span(float(count), float(count)), abs(count - value) / up_to
            case m.ScaleKind(steps), int(bits):
                for i in range(len(steps)):
                    if 1 << i != bits:
                        yield 1 << i, abs(i - bits.bit_length() + 1) / (len(steps) - 1)
            case m.PlacesKind(places), PlaceSet(sure, _):
                for one in range(1 << len(places)):
                    if one != sure:
                        yield PlaceSet(one, one), (one ^ sure).bit_count() / len(places)
            case m.LabelKind(), _:
                for text in (*TEXTS, "some other"):
                    if text != now:
                        yield text, 1.0
            case _, int(bits):
                for i in range(2 if isinstance(trait.kind, m.YesNoKind) else len(trait.kind.steps)):  # type: ignore[union-attr]
                    if 1 << i != bits:
                        yield 1 << i, 1.0


def assert_done(fish: Fish, change: Change) -> None:
    changed = fish.told(change)
    assert fish.meets(changed), changed
    assert fish.possible(changed) == change.possible
    for move in change.moves:
        rest = {name: said for name, said in changed.items() if name != move.trait.name}
        name = move.trait.name
        # Neither is needless, and a notch less is not enough.
        assert not fish.meets(rest) if rest else True
        if isinstance(move.becomes, Span):
            notch = 1 if isinstance(fish.kinds[name], Count) else MILLION
            back = (round(move.becomes.low * notch) - move.direction) / notch
            value = move.was.low  # type: ignore[union-attr]
            if len(change.moves) == 1 and (back - value) * move.direction > 0:
                assert not fish.meets(rest | {name: fish.said(name, Span(back, back))})
        if move.until is not None:
            assert fish.meets(rest | {name: fish.said(name, move.until)})


@moderate
@given(st.data(), st.booleans())
def test_each_change_does_what_it_says_and_a_notch_less_does_not(data: st.DataObject, whole: bool) -> None:
    fish = Fish(data, whole=whole)
    for change in (*fish.found.single, *fish.found.double):
        assert_done(fish, change)


@moderate
@given(st.data(), st.booleans())
def test_no_value_nearer_than_the_one_named_does_it(data: st.DataObject, whole: bool) -> None:
    fish = Fish(data, whole=whole)
    if not fish.found.grade or not fish.found.searched_through:
        return
    sizes = {change.moves[0].trait.name: change.size for change in fish.found.single}
    for trait in fish.movable():
        for reading, size in fish.others(trait):
            if size * NEARLY < sizes.get(trait.name, 2.0):
                assert not fish.meets({trait.name: fish.said(trait.name, reading)}), (trait.name, reading)


@moderate
@given(st.data())
def test_no_smaller_change_of_two_traits_does_it_where_one_stands_at_a_step_or_an_end(data: st.DataObject) -> None:
    fish = Fish(data, whole=True)
    if not fish.found.grade or not fish.found.searched_through:
        return
    least = min((change.size for change in fish.found.single), default=4.0)
    limit = min((change.size for change in fish.found.double), default=least / 2)
    for one, other in combinations(fish.movable(), 2):
        listed = {trait.name: list(fish.others(trait)) for trait in (one, other)}
        ends = {
            trait.name: listed[trait.name]
            if not isinstance(trait.kind, m.NumberKind | m.PlacesKind | m.CountKind)
            else [listed[trait.name][0], listed[trait.name][-1]]
            if isinstance(trait.kind, m.NumberKind) and listed[trait.name]
            else []
            for trait in (one, other)
        }
        for first, second in ((one, other), (other, one)):
            for (a, size), (b, more) in product(ends[first.name], listed[second.name]):
                if (size + more) * NEARLY < limit:
                    changed = {first.name: fish.said(first.name, a), second.name: fish.said(second.name, b)}
                    assert not fish.meets(changed), changed


@moderate
@given(st.data())
def test_what_two_fish_were_given_adds_up_to_the_difference_of_their_scores(data: st.DataObject) -> None:
    standard = data.draw(standards())
    loaded = koirules.read_standard(to_text(standard))
    one, other = (loaded.grade(to_mapping(standard, data.draw(records(standard)))) for _ in range(2))
    for result in (one, other):
        assert sum(line.points for line in result.contributions) == result.score_low
    told = side_by_side(one, other)
    assert sum(row.difference for row in told.rows) == told.difference == one.score_low - other.score_low


# ---- Pairs, all of them, where traits are small enough -----------------------------------------------------------

NOTCHES = 24
gives = st.lists(st.integers(0, 10), min_size=3, max_size=3).filter(any)


@st.composite
def small_standards(draw: st.DrawFn) -> tuple[str, dict[str, list[int]]]:
    """Two numbers of a few millionths and a scale, with curves, a table and perhaps a fault; and where something turns."""
    knots = {name: sorted(draw(st.sets(st.integers(0, NOTCHES), min_size=3, max_size=3))) for name in "ab"}
    lines = ['standard "Teal Yard tiny" edition 1']
    for name in "ab":
        lines.append(f"trait {name} as number from 0 to 0.{NOTCHES:06}")
    lines += ["trait c as scale thin < fair < strong", "section all worth 100"]
    for name in "ab":
        curve = ", ".join(f"0.{at:06} gives {p}" for at, p in zip(knots[name], draw(gives), strict=True))
        lines.append(f"points p{name} by {name}: {curve}")
    table = ", ".join(f"{step} gives {p}" for step, p in zip(("thin", "fair", "strong"), draw(gives), strict=True))
    lines.append(f"points pc by c: {table}")
    low, high, other = (draw(st.integers(1, NOTCHES - 1)) for _ in range(3))
    fault, edges = draw(
        st.sampled_from(
            [
                ("", {"a": [], "b": []}),
                (f"a below 0.{low:06} and c is not strong", {"a": [low - 1, low], "b": []}),
                (
                    f"a above 0.{high:06} or (a above 0.{low:06} and b above 0.{other:06})",
                    {"a": [low, low + 1, high, high + 1], "b": [other, other + 1]},
                ),
            ]
        )
    )
    if fault:
        lines.append(f"fault odd if {fault}: no better than cull")
    lines += [f"grade keep if score at least {draw(st.integers(20, 95))}", "grade cull otherwise"]
    turns = {
        name: sorted({0, NOTCHES, *(at + d for at in knots[name] for d in (-1, 0)), *edges[name]}) for name in "ab"
    }
    return "\n".join(lines), turns


@settings(max_examples=200, deadline=None, suppress_health_check=list(HealthCheck))
@given(small_standards(), st.integers(0, NOTCHES), st.integers(0, NOTCHES), st.integers(0, 2))
def test_pairs_are_the_smallest_of_all(drawn: tuple[str, dict[str, list[int]]], a: int, b: int, c: int) -> None:
    text, turns = drawn
    note(text)
    standard = koirules.read_standard(text)
    now = {"a": a, "b": b, "c": c}
    last = {"a": NOTCHES, "b": NOTCHES, "c": 2}

    def grade(**moved: int) -> str | None:
        at = now | moved
        readings = {"a": Span(at["a"] / MILLION, at["a"] / MILLION), "b": Span(at["b"] / MILLION, at["b"] / MILLION)}
        return standard.grade_record(Record("1", 0, {**readings, "c": 1 << at["c"]})).grade

    def size(**moved: int) -> float:
        return sum(abs(at - now[name]) / last[name] for name, at in moved.items())

    before = grade()
    record = {"a": a / MILLION, "b": b / MILLION, "c": ("thin", "fair", "strong")[c]}
    found = standard.grade(record).nearest_changes()
    single = [size(**{n: at}) for n in now for at in range(last[n] + 1) if at != now[n] and grade(**{n: at}) != before]
    assert [round(change.size, 9) for change in found.single[:1]] == [round(one, 9) for one in sorted(single)[:1]]
    limit = min(single, default=9.0) / 2 * NEARLY
    least: dict[frozenset[str], float] = {}
    for one, other in (("a", "b"), ("b", "a"), ("c", "a"), ("c", "b")):
        telling = [*turns[one], now[one] - 1, now[one] + 1] if one in turns else range(3)
        for x, y in product(telling, range(last[other] + 1)):
            moved = {one: x, other: y}
            if x != now[one] and 0 <= x <= last[one] and y != now[other] and grade(**moved) != before:
                key = frozenset(moved)
                least[key] = min(least.get(key, 9.0), size(**moved))
    wanted = sorted(round(one, 9) for one in least.values() if one <= limit)[:3]
    assert [round(change.size, 9) for change in found.double] == wanted


@pytest.mark.parametrize("now", range(8))
def test_a_change_of_places_is_never_to_the_places_that_the_fish_has(now):
    waiting, sets = [Marks(now, now, 0, 3)], []
    while waiting:
        box = waiting.pop()
        assert box.nearest != PlaceSet(now, now)
        assert box.size == (box.nearest.sure ^ now).bit_count() / 3
        waiting += box.split()
        if box.decided == box.count:
            sets.append(box.marked)
    assert sorted(sets) == [each for each in range(8) if each != now]
