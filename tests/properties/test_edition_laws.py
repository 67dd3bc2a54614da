"""Two editions compared: what is said of every fish holds of drawn ones, what shows a difference shows it, moves are real.

The editions are a drawn standard and the same with a change that was drawn, or two standards that have nothing to do with
each other but their names.
"""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import z3
from attrs import evolve
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.analysis.diff.aligning import aligned
from koirules.analysis.diff.asking import Asker
from koirules.analysis.diff.changes import Kind
from koirules.analysis.diff.comparison import old_grader
from koirules.analysis.diff.following import settings_by_name
from koirules.analysis.diff.joint import Joint
from koirules.analysis.diff.mixing import Mixer, units_of
from koirules.analysis.diff.parting import Verdict
from koirules.analysis.diff.statements import changes_between
from koirules.engines.symbolic.meaning import TooManyReadings
from tests.judge import model as m
from tests.judge.growing import registry_that_grows
from tests.judge.strategies import completions, layouts, records, standards, standards_that_grow, to_mapping
from tests.judge.text import to_text
from tests.properties.test_solver_agreement import on_notches, that_fish

moderate = settings(
    max_examples=30,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)


BOX = registry_that_grows()


def some_standards() -> st.SearchStrategy[m.Standard]:
    """Half of them ask what traits will be when the fish is grown."""
    return st.booleans().flatmap(lambda growing: standards_that_grow() if growing else standards())


def put(parts: tuple[Any, ...], i: int, part: Any) -> tuple[Any, ...]:
    return (*parts[:i], part, *parts[i + 1 :])


def dropped(parts: tuple[Any, ...], i: int) -> tuple[Any, ...]:
    return (*parts[:i], *parts[i + 1 :])


def changed_criterion(draw: st.DrawFn, part: Any) -> Any:
    if not isinstance(part, m.Points):
        return evolve(part, amount=draw(st.sampled_from((Decimal(0), Decimal("1.5"), Decimal(7)))))
    if draw(st.booleans()):
        return evolve(part, weight=draw(st.sampled_from((Decimal("0.5"), Decimal(2), Decimal(4)))))
    more = draw(st.sampled_from((Decimal(1), Decimal("0.25"))))
    if isinstance(part.gives, m.Curve):
        knots = part.gives.knots
        i = draw(st.integers(0, len(knots) - 1))
        return evolve(part, gives=m.Curve(put(knots, i, evolve(knots[i], gives=knots[i].gives + more))))
    rows = part.gives.gives
    if not rows:
        return evolve(part, gives=evolve(part.gives, anything_else=Decimal("3.25")))
    i = draw(st.integers(0, len(rows) - 1))
    return evolve(part, gives=evolve(part.gives, gives=put(rows, i, (rows[i][0], rows[i][1] + more))))


def changed_growth(draw: st.DrawFn, given: tuple[m.Setting, ...]) -> tuple[m.Setting, ...]:
    """Settings with another coefficient of growth, or another length to grow to, or without the one or the other."""
    name, amounts, unit = draw(
        st.sampled_from((("growth_exponent", ("2.5", "3", "3.02"), ""), ("grown_length", ("50", "64.5"), "cm")))
    )
    low, high = (Decimal(2), Decimal(4)) if not unit else (Decimal(40), Decimal(90))
    rest = tuple(one for one in given if one.name != name)
    if draw(st.integers(0, 3)) == 0:
        return rest
    return (m.Setting(name, Decimal(draw(st.sampled_from(amounts))), unit, low, high), *rest)


@st.composite
def changes(draw: st.DrawFn, standard: m.Standard) -> m.Standard:
    """The same standard with one or two parts of it changed, dropped or moved."""
    for _ in range(draw(st.integers(1, 2))):
        which = draw(st.sampled_from(("criterion", "worth", "limit", "drop", "swap", "label", "growth")))
        if which == "growth":
            standard = evolve(standard, settings=changed_growth(draw, standard.settings))
        elif which in {"criterion", "worth"} and standard.sections:
            i = draw(st.integers(0, len(standard.sections) - 1))
            section = standard.sections[i]
            if which == "worth":
                section = evolve(section, worth=draw(st.sampled_from((Decimal(10), Decimal(40), Decimal("33.33")))))
            else:
                k = draw(st.integers(0, len(section.criteria) - 1))
                made = changed_criterion(draw, section.criteria[k])
                section = evolve(section, criteria=put(section.criteria, k, made))
            standard = evolve(standard, sections=put(standard.sections, i, section))
        elif which == "limit" and standard.faults:
            i = draw(st.integers(0, len(standard.faults) - 1))
            grade = draw(st.sampled_from([grade.name for grade in standard.grades]))
            standard = evolve(
                standard, faults=put(standard.faults, i, evolve(standard.faults[i], no_better_than=grade))
            )
        elif which == "drop" and standard.lifts:
            standard = evolve(standard, lifts=dropped(standard.lifts, draw(st.integers(0, len(standard.lifts) - 1))))
        elif which == "swap" and len(standard.faults) > 1:
            one, other, *rest = standard.faults
            made = evolve(one, condition=other.condition, excepted=None)
            standard = evolve(standard, faults=(made, other, *rest))
        else:
            standard = evolve(standard, grades=put(standard.grades, 0, evolve(standard.grades[0], label="another")))
    return standard


def read(standard: m.Standard, layout: int | None = None) -> koirules.Standard | None:
    """A standard; None where a change left something that cannot be read, such as a fault that reads itself."""
    text = to_text(standard, layout)
    note(text)
    try:
        return koirules.read_standard(text, registry=BOX)
    except koirules.StandardError:
        return None


@moderate
@given(st.data())
def test_what_is_said_of_two_editions_holds(data: st.DataObject) -> None:
    drawn = data.draw(some_standards())
    other = data.draw(changes(drawn))
    old, new = read(drawn), read(other)
    if old is None or new is None:
        return
    batch = [to_mapping(drawn, data.draw(records(drawn))) | {"fish": str(i)} for i in range(3)]
    found = old.compare(new, batch)
    parting = found.parting
    if parting.verdict is Verdict.NEVER:
        for _ in range(4):
            fish = to_mapping(drawn, data.draw(completions(drawn, data.draw(records(drawn)))))
            assert old.grade(fish).possible == new.grade(fish).possible, fish
    if parting.verdict is Verdict.DIFFER:
        assert parting.fish is not None
        graded = [set(one.grader.named(one.grader.trace(parting.fish).possible)) for one in (old, new)]
        assert graded[0] != graded[1]
    assert parting.verdict is not Verdict.NOT_ASKED
    assert found.moves is not None
    moved = {move.fish: (move.old.possible, move.new.possible) for move in found.moves.moves}
    for record in batch:
        told = old.grade(record).possible, new.grade(record).possible
        assert moved.get(record["fish"], (told[0], told[0])) == told
    if moved and not any(change.counts for change in found.changes):
        raise AssertionError("fish move and nothing that counts was changed")
    if parting.verdict is Verdict.NEVER and not found.counting:
        assert not moved


@moderate
@given(st.data())
def test_no_fish_is_ruled_out_and_whether_it_is_graded_differently_is_allowed(data: st.DataObject) -> None:
    drawn = data.draw(some_standards())
    old, new = read(drawn), read(data.draw(changes(drawn)))
    if old is None or new is None:
        return
    joint = Joint.of(old.grader, new.grader)
    try:
        asker = Asker.of(joint)
    except TooManyReadings:
        return
    for _ in range(3):
        mapping = to_mapping(drawn, data.draw(completions(drawn, data.draw(records(drawn)))))
        record = on_notches(asker, old.reader.read(mapping, "").readings)
        solver = z3.SimpleSolver(ctx=asker.universe.context)
        solver.add(*asker.universe.facts, *asker.order, *that_fish(asker, record))
        for standing, one in zip(asker.standings, (old, new), strict=True):
            solver.add(*that_fish(standing, one.grader.evaluator.ahead.whole(record)))
        solver.add(asker.differ == joint.seen(record).differ)
        assert solver.check() == z3.sat


@moderate
@given(st.data())
def test_a_standard_laid_out_otherwise_is_no_other_one(data: st.DataObject) -> None:
    drawn = data.draw(some_standards())
    old, new = read(drawn), read(drawn, data.draw(layouts()))
    assert old is not None
    assert new is not None
    found = old.compare(new)
    assert {change.kind for change in found.changes} <= {Kind.MOVED, Kind.REWORDED}
    assert not found.counting
    assert found.parting.verdict is Verdict.NEVER


@moderate
@given(st.data())
def test_all_changes_together_make_the_newer_edition_and_none_leave_the_older_one(data: st.DataObject) -> None:
    drawn = data.draw(some_standards())
    old, new = read(drawn), read(data.draw(changes(drawn)))
    if old is None or new is None:
        return
    both = aligned(old.rules, new.rules)
    units = units_of(changes_between(both), settings_by_name(both.old, both.new))
    mixer = Mixer(both, old_grader(both, old.grader), new.grader)
    none, all_of_them = mixer.mixed(()), mixer.mixed(units)
    assert none is not None
    assert all_of_them is not None
    for _ in range(4):
        readings = old.reader.read(to_mapping(drawn, data.draw(records(drawn))), "").readings
        for one, other in ((none, old), (all_of_them, new)):
            trace, expected = one.trace(readings), other.grader.trace(readings)
            assert (trace.possible, trace.score) == (expected.possible, expected.score)


@moderate
@given(st.data())
def test_standards_that_have_nothing_to_do_with_each_other_can_be_compared(data: st.DataObject) -> None:
    old, new = read(data.draw(some_standards())), read(data.draw(some_standards()))
    assert old is not None
    assert new is not None
    parting = old.compare(new).parting
    if parting.verdict is Verdict.DIFFER:
        both = aligned(old.rules, new.rules)
        joint = Joint.of(old_grader(both, old.grader), new.grader)
        assert parting.fish is not None
        seen = joint.seen(parting.fish)
        assert joint.named(seen.old) != joint.named(seen.new)
