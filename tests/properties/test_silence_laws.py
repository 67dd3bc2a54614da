"""What silence means, drawn: koirules, its frames and the judge give one answer, and the law of soundness holds with silence."""

from __future__ import annotations

import polars as pl
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.engines.columnar.reading import Source
from koirules.grading.batch import BatchGrader
from koirules.vocabulary.kinds import Label
from tests.judge.judge import judge
from tests.judge.silence import filled, is_by_eye, judge_said
from tests.judge.strategies import completions, records, standards_with_silence, to_mapping
from tests.judge.text import to_text
from tests.properties.test_agreement import by_judge, by_koirules
from tests.properties.test_batch_agreement import as_frame

moderate = settings(
    max_examples=30,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)
ROWS = 5


@moderate
@given(st.data())
def test_koirules_and_the_judge_give_one_answer_of_what_was_said(data: st.DataObject) -> None:
    standard = data.draw(standards_with_silence())
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    for _ in range(4):
        record = data.draw(records(standard))
        looked = data.draw(st.sampled_from((None, None, True, False)))
        blank = [trait.name for trait in standard.traits if trait.name not in record]
        untold = data.draw(st.frozensets(st.sampled_from(blank))) if blank else frozenset()
        untold = frozenset(name for name in untold if not isinstance(loaded.traits[name].kind, Label))
        mapping = to_mapping(standard, record) | dict.fromkeys(untold, "?")
        mapping |= {} if looked is None else {"looked": looked}
        note(repr(mapping))
        result = loaded.grade(mapping)
        assert by_koirules(result) == by_judge(judge_said(standard, record, looked=looked, cannot_tell=untold))
        # Without what silence means, the result would be that of the record as it was written.
        assert result.rests_on_silence == (bool(result.assumed) and len(judge(standard, record).possible) > 1)
        silent = filled(standard, record, looked=looked, cannot_tell=untold).keys() - record.keys()
        assert set(result.assumed) <= silent


@moderate
@given(st.data())
def test_the_truth_lies_inside_where_silent_traits_are_as_the_page_says(data: st.DataObject) -> None:
    standard = data.draw(standards_with_silence())
    note(to_text(standard))
    loaded = koirules.read_standard(to_text(standard))
    for _ in range(3):
        record = data.draw(records(standard))
        said = loaded.grade(to_mapping(standard, record))
        truth = data.draw(completions(standard, filled(standard, record)))
        note(f"{record!r} {truth!r}")
        # `is recorded` is answered as the record stands.
        true = judge(standard, truth, recorded=frozenset(record))
        assert set(true.possible) <= set(said.possible)
        assert said.score_low * 100 <= true.score_low <= true.score_high <= said.score_high * 100


@moderate
@given(st.data())
def test_silence_never_narrows_what_was_recorded(data: st.DataObject) -> None:
    standard = data.draw(standards_with_silence())
    record = data.draw(records(standard))
    loaded = koirules.read_standard(to_text(standard))
    mapping = to_mapping(standard, record)
    before = loaded.reader.read(mapping, "")
    assert isinstance(before, koirules.results.record.Record)
    after = loaded.grader.measured(before)
    assert {name: after.readings[name] for name in before.readings} == dict(before.readings)


@moderate
@given(st.data())
def test_columns_and_rows_give_one_answer_of_what_was_said(data: st.DataObject) -> None:
    standard = data.draw(standards_with_silence())
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    drawn = [data.draw(records(standard)) for _ in range(ROWS)]
    mappings = [to_mapping(standard, record) for record in drawn]
    note(repr(mappings))
    if not any(mappings):
        return
    names = sorted({name for mapping in mappings for name in mapping})
    frame = as_frame(mappings, frozenset(names))
    marked = {name for name in names if data.draw(st.booleans())}
    blank = [name for name in marked if not isinstance(loaded.traits[name].kind, Label)]
    frame = frame.with_columns(pl.col(name).fill_null("?") for name in blank)
    grader = BatchGrader(loaded.rules, loaded.settings, loaded.grader)
    read = grader.filled(grader.reader({name: Source(name) for name in frame.columns}).read(frame), ROWS)
    assert not read.wrong
    by_row = grader.by_row(read, ROWS)
    assert grader.by_column(read, ROWS).equals(by_row)
    assert grader.by_code(read, ROWS).equals(by_row)
    made = loaded.grade_frame(frame)
    for record, row in zip(drawn, made.iter_rows(named=True), strict=True):
        untold = frozenset(name for name in blank if name not in record)
        verdict = judge_said(standard, record, cannot_tell=untold)
        assert row["possible"] == "|".join(verdict.possible)
        assert (row["score_low"], row["score_high"]) == (verdict.score_low / 100, verdict.score_high / 100)
        if not loaded.rules.silence:
            continue
        result = loaded.grade(to_mapping(standard, record) | dict.fromkeys(untold, "?"))
        assert (row["assumed"], row["rests_on_silence"]) == ("|".join(result.assumed), result.rests_on_silence)


def test_drawn_standards_say_what_silence_means_of_every_kind() -> None:
    kinds = set()

    # The same examples in every run: which kinds they show must not be left to chance.
    @settings(max_examples=200, deadline=None, database=None, derandomize=True, suppress_health_check=list(HealthCheck))
    @given(standards_with_silence())
    def look(standard: object) -> None:
        by_name = {trait.name: trait for trait in standard.traits}  # type: ignore[attr-defined]
        kinds.update(type(by_name[one.trait].kind).__name__ for one in standard.silence)  # type: ignore[attr-defined]
        assert all(is_by_eye(by_name[one.trait]) for one in standard.silence)  # type: ignore[attr-defined]

    look()
    assert kinds == {"NumberKind", "CountKind", "ScaleKind", "ChoiceKind", "YesNoKind", "PlacesKind"}
