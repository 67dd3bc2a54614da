"""koirules grades as the slow judge does: another reading of the same specification, in exact fractions."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from tests.judge.judge import Verdict, judge
from tests.judge.strategies import completions, layouts, records, standards, to_mapping
from tests.judge.text import to_text

# Finding the smallest failing standard takes minutes; the text that is noted says enough.
moderate = settings(
    max_examples=100,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)

Answer = dict[str, object]


def by_judge(verdict: Verdict) -> Answer:
    return {
        "grade": verdict.grade,
        "possible": verdict.possible,
        "score": (hundredths(verdict.score_low), hundredths(verdict.score_high)),
        "sections": {name: (hundredths(low), hundredths(high)) for name, (low, high) in verdict.sections.items()},
        "faults": set(verdict.faults),
        "lifts": set(verdict.lifts),
    }


def by_koirules(result: koirules.Result) -> Answer:
    return {
        "grade": result.grade,
        "possible": result.possible,
        "score": (result.score_low, result.score_high),
        "sections": {name: (each.low, each.high) for name, each in result.sections.items()},
        "faults": set(result.faults),
        "lifts": set(result.lifts),
    }


def hundredths(amount: int) -> Decimal:
    return Decimal(amount) / 100


@moderate
@given(st.data())
def test_koirules_and_the_judge_give_one_answer(data: st.DataObject) -> None:
    standard = data.draw(standards())
    text = to_text(standard, data.draw(layouts()))
    note(text)
    loaded = koirules.read_standard(text)
    for _ in range(3):
        record = data.draw(records(standard))
        mapping = to_mapping(standard, record)
        note(repr(mapping))
        assert by_koirules(loaded.grade(mapping)) == by_judge(judge(standard, record))


@moderate
@given(st.data())
def test_a_record_without_holes_is_graded_as_by_the_judge(data: st.DataObject) -> None:
    standard = data.draw(standards())
    text = to_text(standard)
    note(text)
    record = data.draw(completions(standard, data.draw(records(standard))))
    mapping = to_mapping(standard, record)
    note(repr(mapping))
    assert by_koirules(koirules.read_standard(text).grade(mapping)) == by_judge(judge(standard, record))


def test_a_standard_of_a_file_is_that_of_its_text(tmp_path: pytest.TempPathFactory) -> None:
    pass
