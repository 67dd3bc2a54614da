"""koirules grades as the slow judge does: another reading of the same specification, in exact fractions."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from tests.judge.judge import Verdict, judge
from tests.judge.strategies import completions, layouts, records, standards, to_mapping
from tests.judge.text import to_text

# Finding the smallest failing standard takes minutes; the text that is noted says enough.
moderate = settings(
    max_examples=80,
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
        "faults": sorted(verdict.faults),
        "lifts": sorted(verdict.lifts),
        "points": {place: (thousandths(low), thousandths(high)) for place, (low, high) in verdict.points.items()},
    }


def by_koirules(result: koirules.Result) -> Answer:
    reasons = [reason for reason in result.reasons if reason.kind == "points"]
    return {
        "grade": result.grade,
        "possible": result.possible,
        "score": (result.score_low, result.score_high),
        "sections": {name: (each.low, each.high) for name, each in result.sections.items()},
        "faults": sorted(result.faults),
        "lifts": sorted(result.lifts),
        "points": {(reason.section, reason.name): (reason.points_low, reason.points_high) for reason in reasons},
    }


def hundredths(amount: int) -> Decimal:
    return Decimal(amount) / 100


def thousandths(amount: int) -> Decimal:
    return Decimal(amount) / 1000


# ---- Laws --------------------------------------------------------------------------------------------------------


@moderate
@given(st.data())
def test_koirules_and_the_judge_give_one_answer(data: st.DataObject) -> None:
    standard = data.draw(standards())
    text = to_text(standard, data.draw(layouts()))
    note(text)
    loaded = koirules.read_standard(text)
    for _ in range(4):
        record = data.draw(records(standard))
        mapping = to_mapping(standard, record)
        note(repr(mapping))
        assert by_koirules(loaded.grade(mapping)) == by_judge(judge(standard, record))


@moderate
@given(st.data())
def test_koirules_and_the_judge_give_one_answer_where_all_is_recorded(data: st.DataObject) -> None:
    standard = data.draw(standards())
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    for _ in range(4):
        record = data.draw(completions(standard, data.draw(records(standard))))
        mapping = to_mapping(standard, record)
        note(repr(mapping))
        assert by_koirules(loaded.grade(mapping)) == by_judge(judge(standard, record))


# ---- Found by the laws -------------------------------------------------------------------------------------------

HEADER = 'standard "Lantern Bay trial standard" edition 2026-1\n'
PLAIN = HEADER + "trait n as number from -10 to 10\n"


def test_a_criterion_with_a_knot_outside_the_range_still_counts() -> None:
    # Warnings change nothing: at 5 the line from 0 to 20 gives 5 of 20, a quarter of 8.
    text = (
        PLAIN
        + "section s worth 8\npoints p by n: 0 gives 0, 20 gives 20\ngrade keep if n above 0\ngrade cull otherwise\n"
    )
    assert koirules.read_standard(text).grade({"n": 5}).score == Decimal("2.00")


def test_a_quotient_beyond_a_million_is_not_recorded_where_the_divisor_may_be_nothing() -> None:
    # 10 / 0.000001 = 10,000,000 is any number at all, so it may lie below 0.
    text = PLAIN + "grade keep if 10 / n at least 0\ngrade cull otherwise\n"
    assert koirules.read_standard(text).grade({"n": 0.000001}).possible == ("keep", "cull")


@pytest.mark.parametrize("said", ["-5 to -2", "-5.5 to -2.25"])
def test_what_a_number_could_be_may_lie_below_nothing(said: str) -> None:
    text = PLAIN + "grade keep if n below -1\ngrade cull otherwise\n"
    assert koirules.read_standard(text).grade({"n": said}).grade == "keep"


def test_a_standard_is_read_from_a_file_as_from_its_text(tmp_path: Path) -> None:
    path = tmp_path / "trial.koi"
    path.write_text(PLAIN + "grade keep if n above 3\ngrade cull otherwise\n", encoding="utf-8")
    assert koirules.load_standard(path).grade({"n": 4}).grade == "keep"
