"""Figures, looks before and ties where one reads or meets another; found by the judge (test_whole_batch_agreement.py)."""

from __future__ import annotations

import polars as pl
import pytest

import koirules
from koirules import Decision
from koirules.engines.columnar.reading import Source
from koirules.rounds.columnar.figures import _with_order

HEADER = """standard "Lantern Bay trial standard" edition 1
trait length as number in cm from 0 to 90
trait red as yes or no
trait kiwa as scale thin < fair < strong
"""
FISH = [{"fish": name, "length": length} for name, length in zip("abcdef", (1, 2, 3, 4, 5, 6), strict=True)]


def both_ways(standard: koirules.Standard) -> tuple[list[tuple[str, ...]], list[str]]:
    """The rounds that kept each fish: one by one, and by columns."""
    single = [result.kept_by for result in standard.grade_batch(FISH).results]
    grader = standard.batch()
    read = grader.reader({"length": Source("length")}).read(pl.DataFrame(FISH))
    return single, grader.by_column(read, len(FISH))["kept_by"].to_list()


def test_a_figure_that_too_few_are_left_for_is_not_recorded_in_the_round() -> None:
    # Six fish were enough when they were graded; the second round looks at three.
    standard = koirules.read_standard(
        HEADER + "term many means batch median of length with 5 or more recorded is recorded\n"
        "fault counted if many: no better than sell\ngrade keep if red\ngrade sell otherwise\n"
        "round first pick 3 by highest length\nround second keep those with many\n"
    )
    kept = [(), (), (), ("first",), ("first",), ("first",)]
    assert both_ways(standard) == (kept, ["|".join(each) for each in kept])


def test_a_figure_among_those_kept_by_a_round_may_be_of_what_reads_another_figure() -> None:
    # Kept by first are 4, 5 and 6, whose mean is 5: one of the three is above it, 33.3 %.
    standard = koirules.read_standard(
        HEADER + "grade all otherwise\nround first pick 3 by highest length\n"
        "round second from all keep those with\n"
        "  batch share of (length above batch mean of length among those kept by first) among those kept by first\n"
        "    between 33.3 % and 33.4 %\n"
    )
    kept = [("second",)] * 3 + [("first", "second")] * 3
    assert both_ways(standard) == (kept, ["|".join(each) for each in kept])


def test_a_figure_of_all_and_the_same_of_those_left_stand_side_by_side_in_columns() -> None:
    # The mean of 1 to 6 is 3.5, and that of the three above it is 5.
    standard = koirules.read_standard(
        HEADER + "fault short if length below batch mean of length: no better than sell\n"
        "grade keep if length above 0 cm\ngrade sell otherwise\n"
        "round first keep those with grade is keep\nround second keep those with length at least batch mean of length\n"
    )
    kept = [(), (), (), ("first",), ("first", "second"), ("first", "second")]
    assert both_ways(standard) == (kept, ["|".join(each) for each in kept])


@pytest.mark.parametrize(
    ("trait", "said"), [("red", "yes or no"), ("kiwa", "thin to strong"), ("length", "0 cm to 90 cm")]
)
def test_what_was_written_down_at_the_last_look_was_recorded_however_little_it_says(trait: str, said: str) -> None:
    standard = koirules.read_standard(
        HEADER + f"term before means earlier {trait}\ngrade asked if before is recorded\ngrade never otherwise\n"
    )
    looks = [
        {"fish": "a", "date": "2026-10-01", trait: said},
        {"fish": "a", "date": "2026-11-01"},
        {"fish": "b", "date": "2026-10-01"},
        {"fish": "b", "date": "2026-11-01", trait: said},
    ]
    assert [result.grade for result in standard.grade_batch(looks).results] == ["asked", "never"]
    frame = pl.DataFrame(looks, schema={"fish": pl.String, "date": pl.String, trait: pl.String})
    assert standard.grade_frame(frame)["grade"].to_list() == [None, "asked", None, "never"]


def test_a_fish_that_a_person_kept_after_a_tie_goes_on() -> None:
    standard = koirules.read_standard(
        HEADER + "grade all otherwise\nround first pick 1 by highest kiwa\n"
        "round second from all rescues 1\nround third\n"
    )
    fish = [{"fish": "a", "kiwa": "strong"}, {"fish": "b", "kiwa": "strong"}]
    a, b = standard.grade_batch(fish, [Decision("a", "", "second", "Y.", "the better back")]).results
    assert (a.kept_by, a.tied_in) == (("second", "third"), None)
    assert (b.kept_by, b.tied_in) == ((), "first")


def test_a_choice_of_two_may_stand_wherever_a_bracket_may() -> None:
    text = HEADER + (
        "setting far = 20 cm from 10 cm to 30 cm\n"
        "grade keep if batch mean of (length if red otherwise 2 cm) at least 3 cm\n"
        "grade sell if earlier (length if red otherwise far) at least 3 cm\n"
        "grade cull otherwise\n"
    )
    tidied = koirules.tidy(text)
    assert "batch mean of (length if red otherwise 2 cm)" in tidied
    assert "earlier (length if red otherwise far)" in tidied
    # (4 + 2) / 2 = 3.
    batch = [{"fish": "a", "length": 4, "red": "yes"}, {"fish": "b", "red": "no"}]
    for one in (text, tidied):
        assert [each.grade for each in koirules.read_standard(one).grade_batch(batch).results] == ["keep", "keep"]


def test_an_alert_may_ask_whether_a_figure_is_recorded() -> None:
    standard = koirules.read_standard(
        HEADER + "grade all otherwise\n"
        'alert unmeasured "nobody measured" if batch median of length is not recorded\n'
        'alert measured "somebody measured" if batch median of length is recorded\n'
    )
    assert [alert.name for alert in standard.grade_batch(FISH).alerts] == ["measured"]
    assert [alert.name for alert in standard.grade_batch([{"fish": "a"}]).alerts] == ["unmeasured"]


def test_a_term_behind_among_the_same_may_be_written_further_down() -> None:
    # Of 4, 5 and 6, which are long, the mean is 5; of 1, 2 and 3 it is 2.
    standard = koirules.read_standard(
        HEADER + "term above_its_kind means length above batch mean of length among the same long\n"
        "term long means length above 3 cm\ngrade keep if above_its_kind\ngrade sell otherwise\n"
    )
    grades = [result.grade for result in standard.grade_batch(FISH).results]
    assert grades == ["sell", "sell", "keep", "sell", "sell", "keep"]


def test_a_circle_through_among_the_same_is_told() -> None:
    with pytest.raises(koirules.StandardError) as caught:
        koirules.read_standard(
            HEADER + "term high means batch mean of length among the same kind above 3 cm\nterm kind means high\n"
            "grade keep if high\ngrade sell otherwise\n"
        )
    assert [problem.code for problem in caught.value.problems] == ["circle"]


def test_a_reason_that_reads_a_figure_says_over_how_many_of_how_many_fish_it_is() -> None:
    standard = koirules.read_standard(
        HEADER
        + "trait pond as label\n"
        + 'fault slim "slim for this batch" if length below batch mean of length among the same pond: '
        "no better than sell\ngrade keep if length above 0 cm\ngrade sell otherwise\n"
    )
    fish = [("a", 4, "1"), ("b", 9, "1"), ("c", None, "1"), ("d", 5, "2"), ("e", 7, "2")]
    results = standard.grade_batch([{"fish": name, "length": n, "pond": pond} for name, n, pond in fish]).results
    assert results[0].why == ("slim for this batch: no better than sell (batch mean over 2 of 3 items) (decides)")
    assert results[3].why.endswith("(batch mean over all 2 items) (decides)")


@pytest.mark.parametrize(
    ("figure", "may_yet", "never"),
    [
        ("highest of length at least 20 cm", "10 cm to 20 cm", "10 cm to 19.999999 cm"),
        ("lowest of length at most 10 cm", "10 cm to 20 cm", "10.000001 cm to 20 cm"),
    ],
)
def test_how_far_a_figure_may_yet_go_is_known_to_the_millionth(figure: str, may_yet: str, never: str) -> None:
    standard = koirules.read_standard(
        f"{HEADER}grade keep if red\ngrade sell otherwise\nround first keep those with batch {figure}\n"
    )

    def is_open(length: str) -> bool:
        found = standard.grade_batch([{"fish": "a", "length": "12 cm"}, {"fish": "b", "length": length}])
        assert found.rounds[0].left == ("a", "b")
        return found.rounds[0].open == ("a", "b")

    assert is_open(may_yet)
    assert not is_open(never)


def test_a_standing_by_columns_is_rounded_half_up_as_it_is_by_rows():
    page = (
        'standard "Tin Bucket" edition 1 variety kohaku\n'
        "grade keep if batch standing of length at least 16.666667 %\ngrade sell otherwise\n"
    )
    standard = koirules.read_standard(page)
    rows = [{"fish": str(number), "length": f"{number} cm"} for number in (10, 11, 12)]
    assert [result.grade for result in standard.grade_batch(rows).results] == ["keep"] * 3
    grader = standard.batch()
    read = grader.reader({"length": Source("length")}).read(pl.DataFrame(rows))
    assert grader.by_column(read, len(rows))["grade"].to_list() == ["keep"] * 3


def test_keys_too_large_for_one_number_are_put_in_order_without_those_that_are_not_there():
    asks = pl.Series([3, None, 1, 2], dtype=pl.Int64)
    for most in (4, 10**18):
        keys, rows = _with_order(asks, most)
        assert (keys.to_list(), rows.to_list()) == ([1, 2, 3], [2, 3, 0])


@pytest.mark.parametrize(
    ("said", "grade"), [("50 cm to 90 cm", "asked"), ("0 cm to 30 cm", "never"), ("45 cm", "asked")]
)
def test_what_was_worked_out_at_the_last_look_counts_unless_it_may_be_anything(said: str, grade: str) -> None:
    standard = koirules.read_standard(
        HEADER + "grade asked if earlier (length * 1) at least 40 cm\ngrade never otherwise\n"
    )
    looks = [
        {"fish": "a", "date": "2026-10-01", "red": "yes", "length": said},
        {"fish": "a", "date": "2026-11-01", "red": None, "length": None},
    ]
    assert [result.grade for result in standard.grade_batch(looks).results] == [grade]
    frame = pl.DataFrame(looks, schema=dict.fromkeys(looks[0], pl.String))
    assert standard.grade_frame(frame)["grade"].to_list() == [None, grade]
