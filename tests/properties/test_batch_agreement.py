"""A frame gives what its rows give one by one, to the bit: by columns, row by row, and in every kind of frame."""

from __future__ import annotations

from typing import Any

import polars as pl
import pytest
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.engines.columnar.reading import Source
from koirules.grading.batch import BatchGrader
from tests.judge.judge import judge
from tests.judge.strategies import completions, records, standards, to_mapping
from tests.judge.text import to_text

moderate = settings(
    max_examples=120,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)
ROWS = 6


def as_series(name: str, values: list[Any], *, as_text: bool) -> pl.Series:
    """A column as a program may hold it: of one type where the values have one, or of texts."""
    kinds = {type(value) for value in values if value is not None}
    if not as_text and len(kinds) == 1:
        return pl.Series(name, values)
    if not as_text and kinds == {float, int}:
        return pl.Series(name, [None if value is None else float(value) for value in values])
    return pl.Series(name, [None if value is None else written(value) for value in values], dtype=pl.String)


def written(value: object) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    return value if isinstance(value, str) else repr(value)


def as_frame(mappings: list[dict[str, object]], texts: frozenset[str] = frozenset()) -> pl.DataFrame:
    names = list(dict.fromkeys(name for mapping in mappings for name in mapping))
    columns = [as_series(name, [each.get(name) for each in mappings], as_text=name in texts) for name in names]
    return pl.DataFrame(columns)


def expected(result: koirules.Result) -> dict[str, object]:
    row: dict[str, object] = {
        "grade": result.grade,
        "possible": "|".join(result.possible),
        "score": None if result.score is None else float(result.score),
        "score_low": float(result.score_low),
        "score_high": float(result.score_high),
    }
    for name, section in result.sections.items():
        row |= {f"{name}_low": float(section.low), f"{name}_high": float(section.high)}
    limits = [reason for reason in result.reasons if reason.kind in {"fault", "lift"}]
    states = {koirules.State.YES: True, koirules.State.OPEN: None}
    return row | {f"{each.kind} {each.name}": states.get(each.state, False) for each in limits}


@moderate
@given(st.data())
def test_columns_rows_machine_code_and_the_judge_give_one_answer(data: st.DataObject) -> None:
    standard = data.draw(standards())
    text = to_text(standard, None)
    note(text)
    loaded = koirules.read_standard(text)
    drawn = [data.draw(records(standard)) for _ in range(ROWS)]
    if data.draw(st.booleans()):
        drawn = [data.draw(completions(standard, record)) for record in drawn]
    mappings = [to_mapping(standard, record) for record in drawn]
    note(repr(mappings))
    names = sorted({name for mapping in mappings for name in mapping})
    frame = as_frame(mappings, data.draw(st.frozensets(st.sampled_from(names))) if names else frozenset())
    grader = BatchGrader(loaded.rules, loaded.settings, loaded.grader, faults=True)
    read = grader.reader({name: Source(name) for name in frame.columns}).read(frame)
    assert not read.wrong
    by_row = grader.by_row(read, ROWS)
    by_column = grader.by_column(read, ROWS)
    assert list(by_column.schema.items()) == list(by_row.schema.items())
    assert by_column.equals(by_row)
    by_code = grader.by_code(read, ROWS)
    assert list(by_code.schema.items()) == list(by_row.schema.items())
    assert by_code.equals(by_row)
    faults = [limit.name for limit in loaded.rules.limits if limit.head == "fault"]
    for record, mapping, row in zip(drawn, mappings, by_column.iter_rows(named=True), strict=True):
        assert row == expected(loaded.grade(mapping))
        verdict = judge(standard, record)
        assert (row["score_low"], row["score_high"]) == (verdict.score_low / 100, verdict.score_high / 100)
        assert row["possible"] == "|".join(verdict.possible)
        assert {name for name in faults if row[f"fault {name}"]} == set(verdict.faults)


RULES = """standard "Lantern Bay trial" edition 1
trait length "length" as number in cm from 0 to 90
trait size "size of a speck" as number in mm from 0 to 20
trait specks "specks" as count up to 9
trait edge "edge" as scale blurred < fair < sharp
trait lips "lips" as yes or no
trait fins "fins" as places of (left, right, tail)
trait pond "pond" as label
fault specked "specked" if specks at least 3 and size above 0.5 mm: no better than sell
section body worth 100
points long weight 2 by length: 10 cm gives 0, 20 cm gives 10
points clean by edge: blurred gives 0, fair gives 5, sharp gives 10
bonus red 2 if lips is yes
penalty finned 3 if count of fins at least 2
penalty far 1 if pond is "far"
grade keep if score at least 50
grade sell otherwise
"""


@pytest.fixture(scope="module")
def standard() -> koirules.Standard:
    return koirules.read_standard(RULES)


MADE = {
    "fish": ["a", "b", "c"],
    "length": [12.5, None, 18.0],
    "size": [0.3, 12.7, 0.55],
    "specks": [4, 0, 3],
    "edge": ["sharp", "fair or sharp", None],
    "lips": [True, None, False],
    "fins": ["left tail", "none", None],
    "pond": ["far", "near", None],
    "weighed_by": ["x", "y", "z"],
}


def test_every_kind_of_frame_comes_back_with_its_own_columns_first(standard: koirules.Standard) -> None:
    import duckdb
    import pandas as pd
    import pyarrow as pa

    frame = pl.DataFrame(MADE)
    wanted = standard.grade_frame(frame)
    assert wanted.columns[: len(MADE)] == list(MADE)
    assert wanted.select(list(MADE)).equals(frame)
    results = wanted.drop(list(MADE))
    assert standard.grade_frame(frame.lazy()).collect().equals(wanted)
    table = standard.grade_frame(pa.table(MADE))
    assert isinstance(table, pa.Table)
    assert pl.DataFrame(table).drop(list(MADE)).rows() == results.rows()
    pandas = pd.DataFrame(MADE, index=[7, 3, 5])
    graded = standard.grade_frame(pandas)
    assert list(graded.index) == [7, 3, 5]
    pd.testing.assert_frame_equal(graded[list(MADE)], pandas)
    assert pl.from_pandas(graded.reset_index(drop=True)).drop(list(MADE)).rows() == results.rows()
    arrow = pa.table(MADE)
    relation = duckdb.from_arrow(arrow)
    assert pl.DataFrame(standard.grade_frame(relation).to_arrow_table()).drop(list(MADE)).rows() == results.rows()


def test_a_frame_without_rows_or_traits_is_graded(standard: koirules.Standard) -> None:
    empty = standard.grade_frame(pl.DataFrame({"length": pl.Series([], dtype=pl.Float64)}))
    assert empty.height == 0
    assert "grade" in empty.columns
    bare = standard.grade_frame(pl.DataFrame({"fish": [str(i) for i in range(5_000)]}))
    assert bare["possible"].unique().to_list() == ["keep|sell"]


def test_wrong_cells_are_told_with_their_rows_and_all_at_once(standard: koirules.Standard) -> None:
    frame = pl.DataFrame(
        {"length": [12.0, 120.0, float("nan")], "edge": ["sharp", "sharpp", "fair"], "specks": [1.5, 2.0, 3.0]}
    )
    with pytest.raises(koirules.RecordError) as caught:
        standard.grade_frame(frame)
    told = {(problem.site.column, problem.site.row, problem.code) for problem in caught.value.problems}
    assert told == {
        ("length", 2, "value-out-of-range"),
        ("edge", 2, "value-unknown-word"),
        ("specks", 1, "value-not-whole"),
    }


def test_a_column_spelt_nearly_like_a_trait_and_one_called_like_a_result_are_told(standard: koirules.Standard) -> None:
    with pytest.raises(koirules.RecordError) as caught:
        standard.grade_frame(pl.DataFrame({"lenght": [12.0], "grade": ["x"]}))
    assert {problem.code for problem in caught.value.problems} == {"unknown-column", "column-taken"}


def test_what_is_no_frame_is_told(standard: koirules.Standard) -> None:
    with pytest.raises(TypeError, match="no frame"):
        standard.grade_frame({"length": [1.0]})


@pytest.mark.parametrize("rows", [1, 50, 3_000, 30_000])
def test_small_and_large_frames_give_the_same_answers(standard: koirules.Standard, rows: int) -> None:
    frame = pl.DataFrame(
        {
            "length": [(i % 901) / 10 if i % 7 else None for i in range(rows)],
            "size": [(i % 201) / 10 for i in range(rows)],
            "specks": [i % 10 for i in range(rows)],
            "edge": [("blurred", "fair", "sharp", None)[i % 4] for i in range(rows)],
        }
    )
    graded = standard.grade_frame(frame)
    for i in {0, rows // 2, rows - 1}:
        row = {name: value for name, value in frame.row(i, named=True).items() if value is not None}
        result = standard.grade(row)
        assert graded.row(i, named=True)["possible"] == "|".join(result.possible)
        assert graded.row(i, named=True)["score_low"] == float(result.score_low)
        assert graded.row(i, named=True)["score_high"] == float(result.score_high)


def test_a_curve_with_a_flat_piece_in_its_middle_gives_a_hole_everything() -> None:
    rules = koirules.read_standard(
        'standard "x" edition 1\ntrait n "n" as number from -1 to 4\nsection s worth 10\n'
        "points a by n: -1 gives 10, 0 gives 5, 2 gives 5, 4 gives 10\n"
        "points b by n: -1 gives 0, 0 gives 5, 2 gives 5, 4 gives 0\ngrade k otherwise\n"
    )
    frame = pl.DataFrame({"n": [None, 1.0, 3.0]})
    grader = rules.batch()
    by_column = grader.by_column(grader.reader({"n": Source("n")}).read(frame), 3)
    assert by_column["score_low"].to_list() == [3.33, 6.67, 6.67]
    assert by_column["score_high"].to_list() == [10.0, 6.67, 6.67]


def test_values_of_any_kind_are_told_or_read_and_never_raise(standard: koirules.Standard) -> None:
    import pandas as pd

    made = [
        pd.DataFrame({"length": pd.Series([1, pd.NA, "15 cm"], dtype=object)}),
        pd.DataFrame({"edge": pd.Series(["fair", {"a": 1}, {"b"}], dtype=object)}),
        pl.DataFrame({"length": [{"a": 1}, {"a": 2}]}),
        pl.DataFrame({"edge": [["fair"], ["sharp", "fair"]]}),
        pl.DataFrame({"fins": [["left", "tail"], []]}),
        pd.DataFrame({0: [1], "edge": ["fair"]}),
        pd.DataFrame({"length": pd.period_range("2020", periods=2, freq="M")}),
    ]
    for frame in made:
        rows = frame.to_dicts() if isinstance(frame, pl.DataFrame) else frame.to_dict("records")
        wanted: list[object] = []
        for row in rows:
            try:
                given = {name: value for name, value in row.items() if name != 0 and value is not pd.NA}
                wanted.append("|".join(standard.grade(given).possible))
            except koirules.RecordError as error:
                wanted.append(error.problems[0].code)
        try:
            graded = standard.grade_frame(frame)
            found: list[object] = list(graded["possible"])
        except koirules.RecordError as error:
            codes = {problem.site.row: problem.code for problem in error.problems}
            found = [codes.get(row + 1, wanted[row]) for row in range(len(rows))]
        assert found == wanted
    with pytest.raises(koirules.RecordError) as caught:
        standard.grade_frame(pd.DataFrame([[1, 2]], columns=["length", "length"]))
    assert [problem.code for problem in caught.value.problems] == ["doubled-column"]


def test_a_column_that_polars_cannot_hold_is_read_value_by_value(standard: koirules.Standard) -> None:
    import pandas as pd
    import pyarrow as pa

    union = pa.UnionArray.from_sparse(pa.array([0, 1], pa.int8()), [pa.array([12, 13]), pa.array(["x", "14 cm"])])
    made = [
        (pd.DataFrame({"length": pd.Series([2**80, 15], dtype=object)}), [1]),
        (pd.DataFrame({"edge": pd.Series(["\ud800", "fair"], dtype=object)}), [1]),
        (pd.DataFrame({"length": pd.Series([1 + 2j, 15], dtype=object)}), [1]),
        (pa.table({"length": union}), []),
    ]
    for frame, wrong in made:
        try:
            standard.grade_frame(frame)
            found = []
        except koirules.RecordError as error:
            found = [problem.site.row for problem in error.problems]
        assert found == wrong, frame


@pytest.mark.parametrize("error", [TypeError, ValueError, OSError, pl.exceptions.ColumnNotFoundError])
def test_a_mistake_of_ours_over_a_column_is_not_taken_for_one_in_its_values(
    standard: koirules.Standard, monkeypatch: pytest.MonkeyPatch, error: type[Exception]
) -> None:
    import narwhals.stable.v2 as nw
    import pandas as pd

    def fails(_series: object) -> None:
        raise error("a mistake of ours")

    monkeypatch.setattr(nw.Series, "to_polars", fails)
    with pytest.raises(error, match="a mistake of ours"):
        standard.grade_frame(pd.DataFrame({"length": [1.0, 2.0]}))


def test_a_hole_is_not_taken_for_a_first_step_that_is_open_itself() -> None:
    rules = koirules.read_standard(
        'standard "x" edition 1\ntrait k "k" as scale a < b\ntrait m "m" as scale a < b\n'
        "setting far = 45 cm from 0 cm to 90 cm\nterm open_one means greater of (far / 0.000001, 10 cm)\n"
        "section s worth 10\npoints p by m: a gives 0, b gives 10\n"
        "penalty q 2 if (far is open_one if k is a otherwise k is b)\ngrade g otherwise\n"
    )
    frame = pl.DataFrame({"k": [None, "a", "b"], "m": ["b", "b", "b"]})
    grader = rules.batch()
    read = grader.reader({"k": Source("k"), "m": Source("m")}).read(frame)
    assert grader.by_column(read, 3).equals(grader.by_row(read, 3))
