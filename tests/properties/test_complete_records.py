"""The function for complete records gives what the one for any record gives, by every way in, and is really reached."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.engines.scalar.evaluator import Trace
from koirules.meaning.operators import HELD_WITHIN
from koirules.results.record import Record
from koirules.standard.parts import Rules
from koirules.standard.tree import Apply, walk
from tests.judge.judge import judge
from tests.judge.strategies import completions, records, standards, to_mapping
from tests.judge.text import to_text

moderate = settings(
    max_examples=150,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)


Outcome = tuple[int, int, tuple[int, ...], int]


def as_sure(trace: Trace) -> Outcome | None:
    """What came of a fish, where all of it is one value."""
    ends = [trace.score, *trace.sections, *(states[4:] for states in trace.limits)]
    if trace.possible.bit_count() != 1 or any(low != high for low, high in ends):
        return None
    bites = sum(1 << number for number, states in enumerate(trace.limits) if states[4])
    return trace.possible, trace.score[0], tuple(low for low, _ in trace.sections), bites


def may_open(rules: Rules) -> bool:
    """Whether some value of the rules may be open although all was recorded: a quotient, what leaves a million."""
    nodes = (node for root in rules.roots for node in walk(root))
    return any(
        isinstance(node, Apply)
        and (node.operation is HELD_WITHIN or node.operation.opens(*(operand.range for operand in node.operands)))
        for node in nodes
    )


def read(standard: koirules.Standard, mapping: dict[str, object]) -> Record:
    record = standard.reader.read(mapping, "")
    assert isinstance(record, Record)
    return record


@moderate
@given(st.data())
def test_a_complete_record_gets_one_answer_by_every_way_in(data: st.DataObject) -> None:
    standard = data.draw(standards())
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    complete = loaded.grader.complete
    reached = 0
    for _ in range(6):
        record = data.draw(completions(standard, data.draw(records(standard))))
        mapping = to_mapping(standard, record)
        note(repr(mapping))
        readings = read(loaded, mapping).readings
        wanted = as_sure(loaded.grader.trace(readings))
        found = complete.run(readings)
        if found is None:
            assert may_open(loaded.rules)
            continue
        reached += 1
        assert loaded.grader.needed == {one.key for one in complete.inputs}
        assert found[:4] == wanted
        values = [one.value(readings[one.key]) for one in complete.inputs]
        assert complete.run_values([*values, *(key in readings for key in complete.asked)]) == found
        glanced = {name: loaded.reader.glances[name](value) for name, value in mapping.items()}
        at_once = loaded._at_once.grade(mapping, "")
        assert (at_once is None) == (None in glanced.values())
        verdict = judge(standard, record)
        assert (found[1], found[0]) == (verdict.score_low, 1 << loaded.grades.index(verdict.possible[0]))
        assert {limit.name for i, limit in enumerate(loaded.rules.limits) if found[3] >> i & 1} == {
            *verdict.faults,
            *verdict.lifts,
        }
        result = loaded.grade(mapping)
        other = loaded.grader.result(read(loaded, mapping), loaded.grader.trace(readings))
        assert result == other
        assert [one.given for one in result.reasons] == [one.given for one in other.reasons]
    assert reached or may_open(loaded.rules)


@moderate
@given(st.data())
def test_a_record_with_holes_or_doubts_is_left_to_the_other_function(data: st.DataObject) -> None:
    standard = data.draw(standards())
    note(to_text(standard))
    loaded = koirules.read_standard(to_text(standard))
    for _ in range(6):
        mapping = to_mapping(standard, data.draw(records(standard)))
        note(repr(mapping))
        record = read(loaded, mapping)
        trace = loaded.grader.trace(record.readings)
        found = loaded.grader.complete.run(record.readings)
        assert found is None or found[:4] == as_sure(trace)
        assert loaded.grade(mapping) == loaded.grade_record(record) == loaded.grader.result(record, trace)


RULES = """standard "Lantern Bay trial" edition 1
trait length "length" as number in cm from 0 to 90
trait size "size of a speck" as number in mm from 0 to 20
trait warmth "warmth" as number in degC from -5 to 40
trait specks "specks" as count up to 9
trait edge "edge" as scale blurred < fair < sharp
trait lips "lips" as yes or no
trait fins "fins" as places of (left, right, tail)
trait pond "pond" as label
trait scar "scar" as yes or no
trait weight "weight" as number in g from 0 to 900
fault specked "specked" if specks at least 3 and size above 0.5 mm: no better than sell
fault scarred if scar is recorded and lips is yes: no better than sell
fault cold if warmth below -1 degC: no better than sell
section body worth 100
points long weight 2 by length: 10 cm gives 0, 20 cm gives 10
points clean by edge: blurred gives 0, fair gives 5, sharp gives 10
bonus red 2 if lips is yes
penalty finned 3 if count of fins at least 2
penalty far 1 if pond is "far"
grade keep if score at least 50
grade sell otherwise
"""
WHOLE: dict[str, object] = {
    "length": 18.5,
    "size": 0.3,
    "warmth": 21.0,
    "specks": 4,
    "edge": "sharp",
    "lips": True,
    "fins": "tail",
    "pond": "near",
}


@pytest.fixture(scope="module")
def standard() -> koirules.Standard:
    return koirules.read_standard(RULES)


@pytest.mark.parametrize(
    "change",
    [
        {},
        {"fish": "a"},
        {"fish": None},
        {"length": 18},
        {"length": 0.0},
        {"length": -0.0},
        {"warmth": -3.5},
        {"warmth": 0},
        {"specks": 3.0},
        {"lips": "yes"},
        {"lips": "no"},
        {"fins": "none"},
        {"pond": "  far "},
        {"scar": "yes"},
        {"scar": None},
        {"scar": True},
        {"weight": 120.0},
    ],
)
def test_what_a_program_gives_is_graded_at_once(standard: koirules.Standard, change: dict[str, object]) -> None:
    mapping = WHOLE | change
    at_once = standard._at_once.grade(mapping, "")
    assert at_once is not None
    assert at_once == standard.grade_record(read(standard, mapping))
    assert [(one.words, one.read) for one in at_once.reasons] == [
        (one.words, one.read) for one in standard.grade_record(read(standard, mapping)).reasons
    ]


@pytest.mark.parametrize(
    "change",
    [
        {"length": None},
        {"length": "18 cm"},
        {"length": float("nan")},
        {"length": True},
        {"length": 18.5j},
        {"length": 91.0},
        {"length": 1e-30},
        {"specks": True},
        {"specks": 2.5},
        {"specks": 10},
        {"edge": "Sharp"},
        {"edge": "fair or sharp"},
        {"edge": ["sharp"]},
        {"edge": None},
        {"lips": 1},
        {"lips": 0.0},
        {"fins": ["tail"]},
        {"fins": "left tail"},
        {"pond": " "},
        {"pond": 7},
        {"scar": "perhaps"},
        {"weight": "heavy"},
        {"wieght": 120.0},
    ],
)
def test_what_takes_a_second_look_is_left_to_the_reader(standard: koirules.Standard, change: dict[str, object]) -> None:
    mapping = WHOLE | change
    assert standard._at_once.grade(mapping, "") is None
    made = standard.reader.read(mapping, "")
    if isinstance(made, Record):
        assert standard.grade(mapping) == standard.grade_record(made)
    else:
        with pytest.raises(koirules.RecordError) as caught:
            standard.grade(mapping)
        assert caught.value.problems == made


def test_a_mapping_that_is_changed_afterwards_changes_no_result(standard: koirules.Standard) -> None:
    mapping = dict(WHOLE)
    result = standard.grade(mapping)
    mapping["length"] = 11.0
    assert "18.5 cm" in result.reasons[3].words


def test_a_standard_with_a_value_that_is_always_open_has_no_function_for_complete_records() -> None:
    rules = (
        'standard "x" edition 1\ntrait n as number from 1 to 9\nsetting none = 0 from 0 to 1\n'
        "grade a if n / none above 3\ngrade b otherwise\n"
    )
    loaded = koirules.read_standard(rules)
    assert loaded.grade({"n": 4.0}).possible == ("a", "b")
    assert loaded.grader.complete.run(read(loaded, {"n": 4.0}).readings) is None
