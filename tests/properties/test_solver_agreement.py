"""What the solver's terms allow holds whatever the evaluator says: for drawn standards, of drawn records without doubts."""

from __future__ import annotations

from typing import Any

import z3
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.engines.symbolic.fish import at_notch
from koirules.engines.symbolic.grown import in_order
from koirules.engines.symbolic.meaning import TooManyReadings
from koirules.engines.symbolic.relevant import Relevant
from koirules.engines.symbolic.standing import Standing
from koirules.engines.symbolic.universe import Universe, fish_of, twin_of
from koirules.plugins import Registry
from koirules.standard.parts import part_key
from koirules.standard.types import Numeric, PlaceWords, TextLabel
from koirules.vocabulary.readings import Span
from tests.judge.growing import registry_that_grows
from tests.judge.strategies import completions, records, standards, standards_that_grow, to_mapping
from tests.judge.text import to_text

moderate = settings(
    max_examples=40,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)


def on_notches(standing: Standing, record: Any) -> Any:
    """A record with numbers in whole millionths, as the fish of the solver have them."""
    slots = standing.fish.slots
    return {
        key: at_notch(round(reading.low * slots[key].notch), slots[key].notch)
        if key in slots and isinstance(reading, Span)
        else reading
        for key, reading in record.items()
    }


def that_fish(standing: Standing, record: Any) -> list[Any]:
    """The facts that a fish is one that was recorded; of texts that no rule names, any, and of maps, that they are there."""
    said = []
    for key, slot in standing.fish.slots.items():
        if slot.recorded is not True:
            said.append(slot.recorded == (key in record))
        if key not in record or slot.value is None:
            continue
        reading = record[key]
        if isinstance(slot.type, Numeric):
            said.append(slot.value == round(reading.low * slot.notch))
        elif isinstance(slot.type, PlaceWords):
            said.extend(name == bool(reading.sure >> i & 1) for i, name in enumerate(slot.value))
        elif isinstance(slot.type, TextLabel):
            texts = [text for text, _ in slot.value]
            at = texts.index(reading) if reading in texts else len(texts) - 1
            said.append(slot.value[at][1])
        else:
            said.append(slot.value[reading.bit_length() - 1])
    return said


def as_graded(standing: Standing, trace: Any) -> list[tuple[str, Any]]:
    """What the evaluator says, as terms."""
    logic = standing.universe.logic
    said: list[tuple[str, Any]] = []
    for part, (_, _, low, high) in zip(standing.rules.points, trace.points, strict=True):
        pair = standing.points[part_key(part)]
        said.append((part_key(part), z3.And(pair.first == low, pair.second == high)))
    for section, (low, high) in zip(standing.rules.sections, trace.sections, strict=True):
        pair = standing.sections[section.name]
        said.append((section.name, z3.And(pair.first == low, pair.second == high)))
    pairs = [
        (part_key(one), standing.extras[part_key(one)], ends)
        for one, ends in zip(standing.rules.extras, trace.extras, strict=True)
    ]
    for limit, states in zip(standing.rules.limits, trace.limits, strict=True):
        pairs.append((part_key(limit), standing.bites[limit.head, limit.name], states[4:]))
    for key, pair, (first, second) in pairs:
        said.append((key, z3.And(logic.truth(pair.first) == first, logic.truth(pair.second) == second)))
    for i, possible in enumerate(standing.possible):
        said.append((f"grade {i}", logic.truth(possible) == bool(trace.possible >> i & 1)))
    return said


def nothing_is_ruled_out(data: st.DataObject, drawn: Any, registry: Registry | None) -> None:
    """Draw records of a standard, and see that the solver's terms allow what the evaluator makes of each."""
    text = to_text(drawn)
    note(text)
    loaded = koirules.read_standard(text, registry=registry)
    universe = Universe.made()
    try:
        standing = Standing.of(
            loaded.rules, loaded.settings, universe, fish_of(loaded.rules, loaded.settings, universe)
        )
    except TooManyReadings:
        return
    for _ in range(3):
        mapping = to_mapping(drawn, data.draw(completions(drawn, data.draw(records(drawn)))))
        note(repr(mapping))
        record = on_notches(standing, loaded.reader.read(mapping, "").readings)
        readings = loaded.grader.evaluator.ahead.whole(record)
        solver = z3.SimpleSolver(ctx=universe.context)
        solver.add(*universe.facts, *universe.giving.exact, *that_fish(standing, readings))
        assert solver.check() == z3.sat
        for key, said in as_graded(standing, loaded.grader.trace(record)):
            assert solver.check(said) == z3.sat, key
        solver.add(*(said for _, said in as_graded(standing, loaded.grader.trace(record))))
        assert solver.check() == z3.sat


@moderate
@given(st.data())
def test_no_fish_that_was_graded_is_ruled_out(data: st.DataObject) -> None:
    nothing_is_ruled_out(data, data.draw(standards()), None)


@moderate
@given(st.data())
def test_no_fish_that_was_graded_when_grown_is_ruled_out(data: st.DataObject) -> None:
    nothing_is_ruled_out(data, data.draw(standards_that_grow()), registry_that_grows())


@moderate
@given(st.data())
def test_no_two_fish_that_differ_in_one_trait_are_ruled_out(data: st.DataObject) -> None:
    drawn = data.draw(standards_that_grow())
    text = to_text(drawn)
    note(text)
    loaded = koirules.read_standard(text, registry=registry_that_grows())
    universe = Universe.made()
    fish = fish_of(loaded.rules, loaded.settings, universe, whole=True)
    try:
        standing = Standing.of(loaded.rules, loaded.settings, universe, fish)
        name = data.draw(st.sampled_from(sorted(fish.slots.keys() & loaded.rules.traits.keys())))
        twin = Standing.of(loaded.rules, loaded.settings, universe, twin_of(fish, name), standing)
    except TooManyReadings:
        return
    universe.facts.extend(in_order(fish, twin.fish, name))
    everything = [{**data.draw(completions(drawn, data.draw(records(drawn))))} for _ in range(4)]
    full = {key: value for record in everything for key, value in record.items()}
    one = loaded.reader.read(to_mapping(drawn, full), "").readings
    other = loaded.reader.read(to_mapping(drawn, everything[0]), "").readings
    note(f"{name}: {one} or {other}")
    if not fish.slots.keys() & loaded.rules.traits.keys() <= one.keys():
        return
    solver = z3.SimpleSolver(ctx=universe.context)
    solver.add(*universe.facts, *universe.giving.exact)
    for place, record in ((standing, one), (twin, {**one, name: other.get(name, one[name])})):
        readings = loaded.grader.evaluator.ahead.whole(on_notches(standing, record))
        solver.add(*that_fish(place, readings))
        solver.add(*(said for _, said in as_graded(place, loaded.grader.trace(readings))))
    assert solver.check() == z3.sat


def test_facts_that_a_question_needs_are_found_through_the_names_in_them() -> None:
    a, b, c, d = (z3.Int(name) for name in "abcd")
    relevant = Relevant([a >= 0, c == b + a + d, b == a + 1, d == 7], {"b": 0, "c": 1})
    assert relevant.to(b > 3) == [a >= 0, b == a + 1]
    assert relevant.to(a > 3) == [a >= 0]
    assert relevant.to(c > 3) == [a >= 0, c == b + a + d, b == a + 1, d == 7]
