"""What fish will be when grown: one by one, row by row, by columns and by the judge it comes to the same."""

from __future__ import annotations

from functools import cache

from hypothesis import given, note
from hypothesis import strategies as st

import koirules
from koirules.engines.columnar.reading import Source
from koirules.plugins import Registry
from tests.judge.growing import registry_that_grows
from tests.judge.judge import judge
from tests.judge.strategies import completions, layouts, records, standards_that_grow, to_mapping
from tests.judge.text import to_text
from tests.properties.test_agreement import by_judge, by_koirules, moderate
from tests.properties.test_batch_agreement import ROWS, as_frame, expected


@cache
def registry() -> Registry:
    made = registry_that_grows()
    assert not made.problems
    return made


@moderate
@given(st.data())
def test_koirules_and_the_judge_give_one_answer_about_grown_fish(data: st.DataObject) -> None:
    standard = data.draw(standards_that_grow())
    text = to_text(standard, data.draw(layouts()))
    note(text)
    loaded = koirules.read_standard(text, registry=registry())
    for _ in range(4):
        record = data.draw(records(standard))
        mapping = to_mapping(standard, record)
        note(repr(mapping))
        assert by_koirules(loaded.grade(mapping)) == by_judge(judge(standard, record))


@moderate
@given(st.data())
def test_columns_rows_machine_code_and_the_judge_give_one_answer_about_grown_fish(data: st.DataObject) -> None:
    standard = data.draw(standards_that_grow())
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text, registry=registry())
    drawn = [data.draw(records(standard)) for _ in range(ROWS)]
    mappings = [to_mapping(standard, record) for record in drawn]
    note(repr(mappings))
    frame = as_frame(mappings)
    grader = loaded.batch(faults=True)
    read = grader.reader({name: Source(name) for name in frame.columns}).read(frame)
    by_row = grader.by_row(read, ROWS)
    by_column = grader.by_column(read, ROWS)
    assert by_column.equals(by_row)
    assert grader.by_code(read, ROWS).equals(by_row)
    for record, mapping, row in zip(drawn, mappings, by_column.iter_rows(named=True), strict=True):
        assert row == expected(loaded.grade(mapping))
        assert row["possible"] == "|".join(judge(standard, record).possible)


@moderate
@given(st.data())
def test_whatever_the_true_values_turn_out_to_be_the_grown_fish_lies_inside(data: st.DataObject) -> None:
    standard = data.draw(standards_that_grow())
    loaded = koirules.read_standard(to_text(standard), registry=registry())
    record = data.draw(records(standard))
    outside = loaded.grade(to_mapping(standard, record))
    truth = data.draw(completions(standard, record))
    # `is recorded` is answered as the record stands, so only standards that do not ask are compared.
    if "recorded" in to_text(standard):
        return
    inside = loaded.grade(to_mapping(standard, truth))
    assert set(inside.possible) <= set(outside.possible)
    assert outside.score_low <= inside.score_low <= inside.score_high <= outside.score_high
