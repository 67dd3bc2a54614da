"""Records from workbooks, written for the tests by openpyxl and xlsxwriter, two libraries that know nothing of us."""

import datetime
import zipfile

import openpyxl
import pytest
import xlsxwriter

from koirules.records.records import read_records
from koirules.vocabulary.readings import PlaceSet, Span


@pytest.fixture
def path(tmp_path):
    return tmp_path / "records.xlsx"


def write(path, rows, **changes):
    book = openpyxl.Workbook()
    sheet = book.active
    for row in rows:
        sheet.append(row)
    for cell, number_format in changes.items():
        sheet[cell].number_format = number_format
    book.save(path)


def codes(batch):
    return [(problem.site.row, problem.site.column, problem.code) for problem in batch.problems]


def test_numbers_words_and_truths_are_read_as_a_spreadsheet_holds_them(path, traits):
    write(
        path,
        [
            ["fish", "length (mm)", "kiwa", "kuchibeni", "shimi_count", "hi_on_fins"],
            [1, 125, "fair", True, 2, "tail"],
            [],
            ["# measured on a cold day"],
            ["K02", "12 cm to 13 cm", "fair or sharp", "no", None, "none"],
        ],
    )
    batch = read_records(path, traits)
    assert batch.problems == ()
    one, other = batch.records
    assert (one.fish, one.row) == ("1", 2)
    assert one.readings == {
        "length": Span(12.5, 12.5),
        "kiwa": 2,
        "kuchibeni": 2,
        "shimi_count": Span(2, 2),
        "hi_on_fins": PlaceSet(8, 8),
    }
    assert (other.fish, other.row) == ("K02", 5)
    assert other.readings == {"length": Span(12, 13), "kiwa": 6, "kuchibeni": 1, "hi_on_fins": PlaceSet(0, 0)}


def test_what_a_sheet_shows_in_per_cent_is_read_in_per_cent(path, traits):
    # A spreadsheet program keeps a typed 45% as 0.45 with a format.
    write(path, [["fish", "hi_cover (%)"], ["K01", 0.45], ["K02", 0.29], ["K03", 45]], B2="0%", B3="0.0%")
    batch = read_records(path, traits)
    assert batch.problems == ()
    assert [record.readings["hi_cover"] for record in batch.records] == [Span(45, 45), Span(29, 29), Span(45, 45)]


def test_a_percent_sign_that_is_only_text_of_a_format_changes_nothing(path, traits):
    write(path, [["fish", "hi_cover (%)"], ["K01", 45]], B2='General" %"')
    assert read_records(path, traits).records[0].readings == {"hi_cover": Span(45, 45)}


def test_dates_where_numbers_and_names_belong_are_told(path, traits):
    day = datetime.date(2026, 4, 3)
    write(path, [["fish", "shimi_count", "bloodline"], ["K01", day, day], [day, 3, "x"]])
    batch = read_records(path, traits)
    assert codes(batch) == [(2, "shimi_count", "value-date"), (3, "fish", "value-date")]


def test_errors_of_formulas_and_formulas_without_value_are_told(path, traits):
    with xlsxwriter.Workbook(path) as book:
        sheet = book.add_worksheet()
        sheet.write_row(0, 0, ["fish", "length", "kiwa", "bloodline"])
        sheet.write_formula(1, 1, "=1/0", None, "#DIV/0!")
        sheet.write_string(1, 0, "K01")
        sheet.write_string(1, 2, "#N/A")
        sheet.write_row(2, 0, ["K02"])
        sheet.write_formula(2, 1, "=6*2", None, 12)
        sheet.write_formula(3, 0, "=A9", None, "#REF!")
    batch = read_records(path, traits)
    assert codes(batch) == [
        (2, "length", "formula-error"),
        (2, "kiwa", "formula-error"),
        (4, "fish", "formula-error"),
    ]
    assert [(record.fish, record.readings) for record in batch.records] == [("K02", {"length": Span(12, 12)})]


def test_a_formula_that_was_never_worked_out_is_told(path, traits):
    write(path, [["fish", "length"], ["K01", "=6*2"]])
    assert codes(read_records(path, traits)) == [(2, "length", "formula-without-value")]


def test_merged_cells_are_refused(path, traits):
    book = openpyxl.Workbook()
    book.active.append(["fish", "length"])
    book.active.append(["K01", 12])
    book.active.merge_cells("B2:B4")
    book.save(path)
    (problem,) = read_records(path, traits).problems
    assert (problem.code, problem.site.row, "B2:B4" in problem.cause) == ("merged-cells", 2, True)


def test_the_sheet_of_records_is_read_or_else_the_first(path, traits):
    book = openpyxl.Workbook()
    book.active.append(["fish"])
    book.active.append(["K01"])
    book.create_sheet("Notes").append(["anything"])
    book.save(path)
    assert [record.fish for record in read_records(path, traits).records] == ["K01"]
    records = book.create_sheet("Records")
    records.append(["fish"])
    records.append(["K02"])
    book.save(path)
    assert [record.fish for record in read_records(path, traits).records] == ["K02"]


def test_a_column_without_a_header_is_told_once(path, traits):
    write(path, [["fish", "length"], ["K01", 12, "why"], ["K02", 13, "not"]])
    assert codes(read_records(path, traits)) == [(1, "C", "unnamed-column")]


def test_a_title_above_the_table_is_told_with_the_row_of_the_header(path, traits):
    write(path, [["Autumn sort"], [], ["fish", "length"], ["K01", 12]])
    (problem,) = read_records(path, traits).problems
    assert (problem.code, "Row 3" in problem.mend) == ("no-fish-column", True)


def test_a_cell_far_away_is_told_before_it_eats_the_memory(path, traits):
    with xlsxwriter.Workbook(path) as book:
        sheet = book.add_worksheet()
        sheet.write_string(0, 0, "fish")
        sheet.write_string(1_048_575, 16_383, "x")
    (problem,) = read_records(path, traits).problems
    assert (problem.code, problem.site.row, problem.site.column) == ("too-large", 1_048_576, "XFD")


@pytest.mark.parametrize(
    "content",
    [b"", b"fish,length\n", b"PK\x03\x04 and no more", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + b"\0" * 600],
)
def test_what_is_no_workbook_is_told_as_unreadable(path, traits, content):
    path.write_bytes(content)
    assert codes(read_records(path, traits)) == [(None, None, "unreadable-file")]


def test_a_workbook_without_its_parts_is_told_as_unreadable(path, tmp_path, traits):
    write(tmp_path / "whole.xlsx", [["fish"], ["K01"]])
    with zipfile.ZipFile(tmp_path / "whole.xlsx") as whole, zipfile.ZipFile(path, "w") as torn:
        for name in whole.namelist():
            if "sheet1" not in name:
                torn.writestr(name, whole.read(name))
    assert codes(read_records(path, traits)) == [(None, None, "unreadable-file")]
