"""Laws of the judge over drawn standards, and of the text that they are printed as."""

from __future__ import annotations

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.judge.judge import judge
from tests.judge.strategies import completions, layouts, records, standards, to_mapping
from tests.judge.text import to_text

HEADS = {"standard", "setting", "trait", "term", "section", "points", "bonus", "penalty", "fault", "lift", "grade"}

many = settings(max_examples=150, deadline=None, suppress_health_check=list(HealthCheck))


@many
@given(st.data())
def test_whatever_the_true_values_turn_out_to_be_the_truth_lies_inside(data: st.DataObject) -> None:
    standard = data.draw(standards())
    record = data.draw(records(standard))
    outside = judge(standard, record)
    inside = judge(standard, data.draw(completions(standard, record)), recorded=frozenset(record))
    assert set(inside.possible) <= set(outside.possible)
    assert outside.score_low <= inside.score_low <= inside.score_high <= outside.score_high
    for name, (low, high) in inside.sections.items():
        assert outside.sections[name][0] <= low <= high <= outside.sections[name][1]
    for place, (low, high) in inside.points.items():
        assert outside.points[place][0] <= low <= high <= outside.points[place][1]
    for sure, possible, other, other_possible in (
        (outside.faults, outside.open_faults, inside.faults, inside.open_faults),
        (outside.lifts, outside.open_lifts, inside.lifts, inside.open_lifts),
    ):
        assert set(sure) <= set(other)
        assert {*other, *other_possible} <= {*sure, *possible}


@many
@given(st.data())
def test_printed_text_has_each_statement_at_the_left_edge(data: st.DataObject) -> None:
    standard = data.draw(standards())
    text = to_text(standard, data.draw(layouts()))
    left = [line.split()[0] for line in text.splitlines() if line and not line[0].isspace() and line[0] != "#"]
    assert set(left) <= HEADS
    criteria = [each for section in standard.sections for each in section.criteria]
    parts = (standard.traits, standard.settings, standard.terms, standard.sections, standard.faults)
    assert len(left) == 1 + sum(map(len, (*parts, standard.lifts, standard.grades, criteria)))
    assert left[0] == "standard"


@many
@given(st.data())
def test_a_drawn_standard_is_decided_by_its_records_not_by_its_ranges(data: st.DataObject) -> None:
    standard = data.draw(standards())
    record = data.draw(records(standard))
    assert set(to_mapping(standard, record)) == set(record)
    verdict = judge(standard, record)
    assert verdict.possible
    assert 0 <= verdict.score_low <= verdict.score_high


def test_brackets_stand_exactly_where_they_are_needed() -> None:
    from tests.judge import expressions as e
    from tests.judge.layout import tidy
    from tests.judge.written import written

    a, b, c = (e.Name(name) for name in "abc")
    for expression, text in (
        (e.And((e.Or((a, b)), c)), "(a or b) and c"),
        (e.Or((e.And((a, b)), c)), "a and b or c"),
        (e.Not(e.And((a, b))), "not (a and b)"),
        (e.Not(e.Compare("at least", a, b)), "not a at least b"),
        (e.Arithmetic("-", a, e.Arithmetic("-", b, c)), "a - (b - c)"),
        (e.Arithmetic("-", e.Arithmetic("-", a, b), c), "a - b - c"),
        (e.Arithmetic("*", e.Arithmetic("+", a, b), c), "(a + b) * c"),
        (e.Negative(e.Arithmetic("*", a, b)), "-(a * b)"),
        (e.Arithmetic("*", e.Negative(a), b), "-a * b"),
        (e.Compare("is", e.Either(a, b, c), e.YesNo(yes=True)), "(a if b otherwise c) is yes"),
        (e.CountOf((e.Or((a, b)), c)), "count of (a or b, c)"),
    ):
        assert tidy(written(expression)) == text
