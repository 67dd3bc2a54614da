"""Workbooks that want to harm: markup in texts, cells outside of any sheet, values beyond any calendar."""

import os
import zipfile
from decimal import Decimal

import openpyxl
import pytest
import xlsxwriter

from koirules.problems import is_refused
from koirules.records.records import read_records
from koirules.report.result_files import About, write_results
from koirules.results.result import Result
from koirules.vocabulary.readings import Span

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


@pytest.mark.parametrize(
    "cell",
    [
        b'<c x=">" r="ZZZZZZ2">',
        b'<c x="<" r="ZZZZZZ2">',
        b'<c x="1"r="ZZZZZZ2">',
        b"""<c x=' r="A1"' r="ZZZZZZ2">""",
        b'<c r="B0">',
        b'<c r="B2"><v>1</v></c></row><row r="999999999"><c>',
        b"<c/>" * 30_000 + b'<c/></row><row r="1048576"><c>',
        b'<c/><!-- <row r="1"/> --><c>',
        b"<c/><c x='<row/>'>",
        b"<c x='&gt;'>",
    ],
)
def test_no_trick_hides_how_far_a_sheet_reaches(book, cell, traits):
    batch = read_records(changed(book, b'<c r="B2">', cell), traits)
    assert is_refused(batch.problems)
    assert batch.records == ()


def test_cells_that_leave_out_their_places_are_read_one_after_the_other(book, traits):
    (record,) = read_records(changed(book, b'<c r="B2">', b"<c>"), traits).records
    assert record.readings == {"length": Span(12, 12)}


def test_a_text_that_looks_like_a_place_is_only_a_text(tmp_path, traits):
    path = tmp_path / "lot.xlsx"
    with xlsxwriter.Workbook(path, {"constant_memory": True}) as workbook:
        sheet = workbook.add_worksheet("records")
        sheet.write_row(0, 0, ["fish", "bloodline"])
        sheet.write_row(1, 0, ["A", 'colour="red or white" r="A7" <c x='])
    (record,) = read_records(path, traits).records
    assert record.labels == {"bloodline": 'colour="red or white" r="A7" <c x='}


class PanicException(BaseException):
    """What stands for a panic inside of the library that reads workbooks."""


@pytest.mark.parametrize("error", [PanicException("x"), OverflowError("x"), ValueError("x"), TypeError("x")])
def test_whatever_the_reader_of_values_raises_is_told(book, error, traits, monkeypatch):
    def fail(_path):
        raise error

    monkeypatch.setattr("python_calamine.CalamineWorkbook.from_path", fail)
    (problem,) = read_records(book, traits).problems
    assert problem.code == "unreadable-file"


def test_a_person_who_stops_the_reading_is_heard(book, traits, monkeypatch):
    def stop(_path):
        raise KeyboardInterrupt

    monkeypatch.setattr("python_calamine.CalamineWorkbook.from_path", stop)
    with pytest.raises(KeyboardInterrupt):
        read_records(book, traits)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no pipes with a name here")
@pytest.mark.parametrize("name", ["lot.xlsx", "lot.csv", "lot.json"])
def test_a_pipe_is_told_and_not_waited_for(tmp_path, name, traits):
    os.mkfifo(tmp_path / name)
    (problem,) = read_records(tmp_path / name, traits).problems
    assert problem.code == "unreadable-file"


def test_a_time_beyond_any_calendar_is_refused(tmp_path, traits):
    path = tmp_path / "times.xlsx"
    with xlsxwriter.Workbook(path) as workbook:
        sheet = workbook.add_worksheet("records")
        sheet.write_row(0, 0, ["fish", "length"])
        sheet.write_string(1, 0, "A")
        sheet.write_number(1, 1, 1e15, workbook.add_format({"num_format": "[h]:mm:ss"}))
    assert is_refused(read_records(path, traits).problems)


def test_a_workbook_that_unpacks_to_too_much_is_refused_before_it_is(book, traits, monkeypatch):
    monkeypatch.setattr("koirules.records.xlsx_parts._MOST_BYTES", 100)
    (problem,) = read_records(book, traits).problems
    assert "unpacks to more" in problem.cause
