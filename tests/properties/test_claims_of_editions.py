"""What is said of two editions with grown traits, derived ones and maps holds of drawn records, graded as users grade."""

from __future__ import annotations

from functools import cache
from typing import Any

import pytest
import z3
from hypothesis import HealthCheck, Phase, assume, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.analysis.diff.aligning import aligned
from koirules.analysis.diff.asking import Asker
from koirules.analysis.diff.joint import BY_NEW, Joint
from koirules.analysis.diff.moves import Batch, Move, moves_of
from koirules.analysis.diff.parting import Parting, Verdict
from koirules.analysis.diff.statements import changes_between
from koirules.results.record import Record
from koirules.standard.cuts import cuts_of
from koirules.vocabulary.readings import is_sure
from tests.properties.test_claims_of_proofs import BOX, GRADES, HEAD, STANDARDS, written
from tests.properties.test_solver_agreement import on_notches, that_fish

GROWN, DERIVED, THROUGH = STANDARDS
COEFFICIENT = "setting growth_exponent = 3.02 from 2 to 4\n"
EDGE = "setting girth_of_length = 0.65 from 0.3 to 1.5\n"
ALIKE = GRADES.replace("least 30", "least 30 and (score at least 20 or score below 10)")

NEVER = {
    "the same": (GROWN, GROWN, GRADES),
    "the usual coefficient": (THROUGH, COEFFICIENT + THROUGH, GRADES),
    "a coefficient where nothing grows": (
        DERIVED.replace(" grown to 60 cm", ""),
        COEFFICIENT.replace("3.02", "2.5") + DERIVED.replace(" grown to 60 cm", ""),
        GRADES,
    ),
    "a length by a setting": (
        THROUGH,
        "setting full = 60 cm from 40 cm to 90 cm\n"
        + THROUGH.replace("length grown to 60 cm:", "length grown to full:"),
        GRADES,
    ),
    "a condition that always holds, of what grows": (GROWN, GROWN, ALIKE),
    "a condition that always holds, of what follows": (DERIVED, DERIVED, ALIKE),
    "another fault that never bites": (
        GROWN,
        GROWN + "fault nor if length grown to 50 cm above 70 cm and length below 70 cm: no better than cull\n",
        GRADES,
    ),
}

OTHERS = {
    "another length": (GROWN, GROWN.replace("grown to 65 cm: 0.3", "grown to 70 cm: 0.3"), GRADES),
    "another coefficient": (COEFFICIENT + THROUGH, COEFFICIENT.replace("3.02", "2.6") + THROUGH, GRADES),
    "a coefficient more": (GROWN, COEFFICIENT.replace("3.02", "3.5") + GROWN, GRADES),
    "another constant": (DERIVED, EDGE.replace("0.65", "0.9") + DERIVED, GRADES),
    "other points": (THROUGH, THROUGH.replace("fair gives 6", "fair gives 7"), GRADES),
    "a map that is asked for": (THROUGH, THROUGH.replace("bonus mapped 5", "bonus mapped 8"), GRADES),
    "what follows": (DERIVED, DERIVED.replace("condition below 0.8", "condition below 0.9"), GRADES),
}
PAIRS = NEVER | OTHERS


@cache
def editions(name: str) -> tuple[Any, Any]:
    old, new, grades = PAIRS[name]
    one, other = (koirules.read_standard(HEAD + text, registry=BOX) for text in (old + GRADES, new + grades))
    return one, other


@cache
def joint(name: str) -> Joint:
    old, new = editions(name)
    return Joint.of(old.grader, new.grader)


@cache
def asker(name: str) -> Asker:
    return Asker.of(joint(name))


@cache
def parting(name: str) -> Parting:
    old, new = editions(name)
    return old.compare(new).parting


def known(standard: Any, readings: Any, optional: frozenset[str]) -> bool:
    """Whether an edition knows every trait that it reads as one value, but for those that may be missing."""
    return all(
        is_sure(standard.rules.traits[trait].kind, readings[trait]) if trait in readings else trait in optional
        for trait in cuts_of(standard.rules, standard.settings)
    )


@pytest.mark.parametrize("name", NEVER)
def test_editions_that_grade_alike_are_proved_to(name: str) -> None:
    assert parting(name).verdict is Verdict.NEVER


@pytest.mark.parametrize("name", OTHERS)
def test_a_fish_that_is_told_of_is_graded_as_told_from_what_is_written_of_it(name: str) -> None:
    told = parting(name)
    assert told.verdict in {Verdict.DIFFER, Verdict.OPEN}
    assert bool(told.reasons) is (told.verdict is Verdict.OPEN)
    if told.fish is None:
        return
    assert not any("grown to" in trait or trait.endswith(BY_NEW) for trait in told.fish)
    results = [one.grader.grade(Record("K1", 0, told.fish)) for one in editions(name)]
    assert [one.possible for one in results] == [told.old and told.old.possible, told.new and told.new.possible]
    assert results[0].possible != results[1].possible


slowly = settings(
    max_examples=80,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)


@pytest.mark.parametrize("name", NEVER)
@slowly
@given(mapping=written())
def test_what_is_proved_of_two_editions_is_contradicted_by_no_record(name: str, mapping: dict[str, object]) -> None:
    pair = editions(name)
    readings = [one.grader.measured(one.reader.read(mapping, "K1")).readings for one in pair]
    assume(all(known(one, each, joint(name).optional) for one, each in zip(pair, readings, strict=True)))
    note(repr(readings))
    old, new = (one.grade(mapping) for one in pair)
    assert old.possible == new.possible


@pytest.mark.parametrize("name", PAIRS)
@settings(parent=slowly, max_examples=6)
@given(mapping=written())
def test_no_fish_is_ruled_out_whatever_it_grows_to_and_follows(name: str, mapping: dict[str, object]) -> None:
    asks, both, pair = asker(name), joint(name), editions(name)
    readings = [one.grader.measured(one.reader.read(mapping, "K1")).readings for one in pair]
    assume(all(known(one, each, both.optional) for one, each in zip(pair, readings, strict=True)))
    solver = z3.SimpleSolver(ctx=asks.universe.context)
    solver.add(*asks.universe.facts, *asks.order)
    graded = []
    for standing, one, each in zip(asks.standings, pair, readings, strict=True):
        record = on_notches(standing, each)
        note(repr(record))
        solver.add(*that_fish(standing, one.grader.evaluator.ahead.whole(record)))
        graded.append(one.grader.grade(Record("K1", 0, record)).possible)
    solver.add(asks.differ == (graded[0] != graded[1]))
    assert solver.check() == z3.sat


@pytest.mark.parametrize("name", PAIRS)
@settings(parent=slowly, max_examples=8)
@given(lot=st.lists(written(), min_size=1, max_size=4))
def test_fish_move_as_each_edition_grades_them(name: str, lot: list[dict[str, object]]) -> None:
    old, new = editions(name)
    records = [{**mapping, "fish": str(i)} for i, mapping in enumerate(lot)]
    moved = {
        record["fish"]: (one.possible, other.possible)
        for record in records
        if (one := old.grade(record)).possible != (other := new.grade(record)).possible
    }
    found = moves(old, new, records)
    assert {one.fish: (one.old.possible, one.new.possible) for one in found} == moved
    for one in found:
        assert one.by


def moves(old: Any, new: Any, records: list[dict[str, object]]) -> tuple[Move, ...]:
    """The moves of a batch, without the search for a fish."""
    both, graders = aligned(old.rules, new.rules), (old.grader, new.grader)
    batch = Batch(*(tuple(one.reader.read(record, "") for record in records) for one in (old, new)))
    measured = batch.measured(graders)
    return moves_of(both, graders, changes_between(both), batch, measured, lambda _: None).moves
