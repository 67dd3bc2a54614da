"""Small frames are graded row by row, until their rows would have paid for a plan of columns."""

import polars as pl
import pytest

import koirules
from koirules.grading import batch
from koirules.grading.batch import BatchGrader

RULES = """standard "Lantern Bay trial" edition 1
trait length "length" as number in cm from 0 to 90
grade keep if length at least 10 cm
grade sell otherwise
"""


@pytest.fixture
def ways(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """How each frame was graded."""
    found: list[str] = []
    for name in ("by_row", "by_column"):
        graded = getattr(BatchGrader, name)

        def told(self, *given, name=name, graded=graded):
            found.append(name)
            return graded(self, *given)

        monkeypatch.setattr(BatchGrader, name, told)
    return found


def frame(rows: int, *, holes: bool = False) -> pl.DataFrame:
    return pl.DataFrame({"length": [None if holes and not row else row % 20 + 0.5 for row in range(rows)]})


@pytest.mark.parametrize("holes", [False, True])
def test_a_plan_is_made_when_its_rows_have_paid_for_it_and_used_from_then_on(ways: list[str], holes: bool) -> None:
    few = batch._FEW_WITH_HOLES if holes else batch._FEW_COMPLETE
    standard = koirules.read_standard(RULES)
    rows, times = few.with_plan, 0
    results = []
    while "by_column" not in ways:
        results.append(standard.grade_frame(frame(rows, holes=holes)))
        times += 1
    assert times == -(-few.without // rows)
    assert all(one.equals(results[0]) for one in results)
    standard.grade_frame(frame(rows - 1, holes=holes))
    standard.grade_frame(frame(rows, holes=holes))
    assert ways == ["by_row"] * (times - 1) + ["by_column", "by_row", "by_column"]


def test_a_large_frame_gets_a_plan_at_once(ways: list[str]) -> None:
    koirules.read_standard(RULES).grade_frame(frame(batch._FEW_COMPLETE.without))
    assert ways == ["by_column"]


def test_rows_of_another_shape_do_not_pay_for_a_plan(ways: list[str]) -> None:
    standard = koirules.read_standard(RULES)
    standard.grade_frame(frame(batch._FEW_COMPLETE.without - 1))
    standard.grade_frame(frame(batch._FEW_WITH_HOLES.with_plan, holes=True))
    assert ways == ["by_row", "by_row"]


def test_a_frame_without_a_trait_that_is_read_is_graded_by_columns_as_by_rows() -> None:
    rounds = "round first keep those with grade is keep\n  pick 2 by highest length\n"
    grader = koirules.read_standard(RULES + rounds).batch(faults=True)
    read = grader.reader({}).read(pl.DataFrame())
    assert grader.by_column(read, 9).equals(grader.by_row(read, 9))
