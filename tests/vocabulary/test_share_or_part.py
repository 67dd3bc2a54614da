"""0.45 where a share in % is expected may be 45 % or 0.45 %: it is refused with both mends, whatever way it comes in."""

import json

import polars as pl
import pytest

import koirules
from koirules.records.records import read_records
from koirules.vocabulary.cells import Misread, read_value
from koirules.vocabulary.readings import Span
from koirules.vocabulary.shorthand import share
from koirules.vocabulary.units import UNITS

CODE = "value-share-or-part"
STANDARD = koirules.read_standard(
    'standard "Tin Bucket" edition 1\n  variety kohaku\n'
    "section body worth 100\npoints red by hi_cover: 20 % gives 0, 45 % gives 10\n"
    "grade keep if score at least 50\ngrade sell otherwise\n"
)


@pytest.mark.parametrize("raw", ["0.45", "0,45", 0.45, "1", 1, 1.0, "0.4 to 0.5", "0 to 0.5", 1e-6])
def test_a_bare_number_of_at_most_one_is_refused_with_both_mends_that_then_read(raw):
    misread = read_value(share(), raw)
    assert isinstance(misread, Misread)
    assert misread.code == CODE
    whole, part = misread.mend.split('"')[1::2]
    low, high = read_value(share(), whole)
    assert read_value(share(), part) == pytest.approx((low / 100, high / 100))


@pytest.mark.parametrize("raw", [0, "0", "0.45 %", "45", 1.01, "0.5 to 3", "0.5 % to 1 %"])
def test_what_can_be_read_in_one_way_only_is_read(raw):
    assert isinstance(read_value(share(), raw), Span)


def test_a_number_that_could_not_be_so_large_a_share_is_taken_as_it_stands():
    assert read_value(share("0", "30"), "0.45") == Span(0.45, 0.45)
    assert read_value(share("0", "1"), "0.45") == Span(0.45, 0.45)


def test_a_header_with_the_unit_is_taken_at_its_word_unless_the_share_would_be_unusual():
    assert read_value(share(), "0.45", UNITS["%"]) == Span(0.45, 0.45)
    assert isinstance(read_value(share(usual=("5", "95")), "0.45", UNITS["%"]), Misread)
    assert read_value(share(usual=("0.2", "2")), "0.45", UNITS["%"]) == Span(0.45, 0.45)
    assert read_value(share(usual=("5", "95")), "0.45 %", UNITS["%"]) == Span(0.45, 0.45)


def written(path, name, value):
    match path.suffix:
        case ".csv":
            path.write_text(f"fish,{name}\na,{value}\n", encoding="utf-8")
        case ".json":
            path.write_text(json.dumps([{"fish": "a", name: value}]), encoding="utf-8")
        case ".xlsx":
            pl.DataFrame({"fish": ["a"], name: [value]}).write_excel(path)
    return path


@pytest.mark.parametrize("ending", [".csv", ".json", ".xlsx"])
@pytest.mark.parametrize("name", ["hi_cover", "hi_cover (%)"])
def test_it_is_refused_in_files_of_records(tmp_path, ending, name):
    batch = read_records(written(tmp_path / f"records{ending}", name, 0.45), STANDARD.traits)
    assert [problem.code for problem in batch.problems] == [CODE]
    assert batch.records == ()


@pytest.mark.parametrize("rows", [2, 600])  # row by row, and by columns
@pytest.mark.parametrize("name", ["hi_cover", "hi_cover (%)"])
def test_it_is_refused_in_frames(rows, name):
    frame = pl.DataFrame({"fish": [str(n) for n in range(rows)], name: [45.0] * (rows - 1) + [0.45]})
    with pytest.raises(koirules.RecordError) as caught:
        STANDARD.grade_frame(frame)
    assert [problem.code for problem in caught.value.problems] == [CODE]
    right = frame.with_columns(pl.col(name).replace(0.45, 45.0))
    assert STANDARD.grade_frame(right)["grade"].to_list() == ["keep"] * rows


def test_it_is_refused_where_a_program_grades_one_fish():
    with pytest.raises(koirules.RecordError, match=r"45 % or 0\.45 %"):
        STANDARD.grade({"hi_cover": 0.45})
    assert STANDARD.grade({"hi_cover": "0.45 %"}).grade == "sell"


def test_the_unit_behind_the_name_of_a_column_of_a_frame_is_that_of_its_numbers():
    standard = koirules.read_standard(
        'standard "Tin Bucket" edition 1\n  variety kohaku\ngrade keep if length above 12 cm\ngrade sell otherwise\n'
    )
    assert standard.grade_frame(pl.DataFrame({"length (mm)": [125.0, 115.0]}))["grade"].to_list() == ["keep", "sell"]
    with pytest.raises(koirules.RecordError):
        standard.grade_frame(pl.DataFrame({"length (mm)": [125.0], "length (cm)": [12.5]}))
