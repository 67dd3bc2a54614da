"""Workbooks that want to harm: markup in texts, cells outside of any sheet, values that no calendar holds."""

import zipfile
from decimal import Decimal

import openpyxl
import pytest
import xlsxwriter

from koirules.formats.records import read_records
from koirules.formats.results import About, write_results
from koirules.grading.results import Result
from koirules.problems import is_refused

MARKUP = (
    '<r><t>x</t></r></is></c><c r="N2"><f>HYPERLINK("http://evil.example","ok")</f><v>0</v></c>'
    '<c r="O2" t="inlineStr"><is><r><t>y</t></r>'
)


def test_no_text_of_a_result_becomes_markup_or_a_formula(tmp_path):
    result = Result(MARKUP, ("keep",), Decimal(1), Decimal(1), {}, (), (), {"note": MARKUP})
    path = tmp_path / "out.xlsx"
    assert write_results(path, [result], About("t", "1", None, "r.koi")) is None
    cells = [cell for row in openpyxl.load_workbook(path).worksheets[0].iter_rows() for cell in row]
    assert all(cell.data_type != "f" for cell in cells)
    assert [cell.value.strip() for cell in cells if isinstance(cell.value, str)].count(MARKUP) == 2


def changed(path, old, new):
    """A workbook with a change in its first sheet."""
    made = path.with_name("changed.xlsx")
    with zipfile.ZipFile(path) as parts, zipfile.ZipFile(made, "w") as out:
        for name in parts.namelist():
            content = parts.read(name)
            if name == "xl/worksheets/sheet1.xml":
                assert old in content
                content = content.replace(old, new)
            out.writestr(name, content)
    return made


@pytest.fixture
def book(tmp_path):
    path = tmp_path / "lot.xlsx"
    with xlsxwriter.Workbook(path) as workbook:
        sheet = workbook.add_worksheet("records")
        sheet.write_row(0, 0, ["fish", "length"])
        sheet.write_row(1, 0, ["A", 12])
    return path


@pytest.mark.parametrize("reference", [b"DinlineStr6", b"ZZZZZZ2", b"FA10485774", b"XFE2", b"B1048577"])
def test_a_cell_outside_of_any_sheet_is_refused_and_never_reached(book, reference, traits):
    batch = read_records(changed(book, b'r="B2"', b'r="' + reference + b'"'), traits)
    assert is_refused(batch.problems)
    assert batch.records == ()


def test_a_time_beyond_any_calendar_is_refused(tmp_path, traits):
    path = tmp_path / "times.xlsx"
    with xlsxwriter.Workbook(path) as workbook:
        sheet = workbook.add_worksheet("records")
        sheet.write_row(0, 0, ["fish", "length"])
        sheet.write_string(1, 0, "A")
        sheet.write_number(1, 1, 1e15, workbook.add_format({"num_format": "[h]:mm:ss"}))
    assert is_refused(read_records(path, traits).problems)


def test_a_workbook_that_unpacks_to_too_much_is_refused_before_it_is(book, traits, monkeypatch):
    monkeypatch.setattr("koirules.formats.xlsx_parts._MOST_BYTES", 100)
    (problem,) = read_records(book, traits).problems
    assert "unpacks to more" in problem.cause
