"""Records and results as OpenDocument spreadsheets.

The contents of the files that are read are written by hand after OpenDocument 1.3, part 3: OpenDocument Schema (OASIS
standard, 2021), sections 9.1 (tables) and 19.385 (value types). What is written is read again by calamine, a reader that
knows nothing of ours.
"""

from __future__ import annotations

import csv
from datetime import date
from decimal import Decimal
from importlib.metadata import entry_points
from pathlib import Path
from zipfile import ZIP_DEFLATED, ZipFile

import koirules_ods
import pytest
from click.testing import CliRunner, Result
from koirules_ods.reading import read_ods
from koirules_ods.writing import write_ods
from python_calamine import CalamineWorkbook

from koirules.hooks import CellError, Sheet, UnreadableError
from koirules.testing import check_plugin

_HEAD = """<?xml version="1.0" encoding="UTF-8"?>
<office:document-content office:version="1.3"
 xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0">
<office:body><office:spreadsheet>"""
_TAIL = "</office:spreadsheet></office:body></office:document-content>"
_TYPE = "application/vnd.oasis.opendocument.spreadsheet"


NOTED = (
    '<table:table-cell office:value-type="string"><office:annotation><text:p>a comment</text:p></office:annotation>'
    '<text:p>two <text:s text:c="2"/>words</text:p><text:p>and a line</text:p></table:table-cell>'
)
FAILED = (
    '<table:table-cell table:formula="of:=1/0" office:value-type="string" calcext:value-type="error">'
    "<text:p>#DIV/0!</text:p></table:table-cell>"
)


def text(value: str) -> str:
    return f'<table:table-cell office:value-type="string"><text:p>{value}</text:p></table:table-cell>'


def row(*cells: str) -> str:
    return f"<table:table-row>{''.join(cells)}</table:table-row>"


def table(*rows: str, name: str = "Sheet1") -> str:
    return f'<table:table table:name="{name}">{"".join(rows)}</table:table>'


def written(folder: Path, *tables: str, manifest: str = "") -> Path:
    path = folder / "lot.ods"
    entries = (
        f'<manifest:file-entry manifest:full-path="/" manifest:media-type="{_TYPE}">{manifest}</manifest:file-entry>'
    )
    content = '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>'
    spaces = 'xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"'
    with ZipFile(path, "w", ZIP_DEFLATED) as archive:
        archive.writestr("mimetype", _TYPE)
        archive.writestr("META-INF/manifest.xml", f"<manifest:manifest {spaces}>{entries}{content}</manifest:manifest>")
        archive.writestr("content.xml", _HEAD + "".join(tables) + _TAIL)
    return path


def test_every_type_of_cell_is_read_as_what_it_is(tmp_path: Path) -> None:
    cells = (
        '<table:table-cell office:value-type="float" office:value="12.50"><text:p>12.5</text:p></table:table-cell>',
        '<table:table-cell office:value-type="percentage" office:value="0.455"><text:p>46 %</text:p></table:table-cell>',
        '<table:table-cell office:value-type="boolean" office:boolean-value="true"><text:p>TRUE</text:p></table:table-cell>',
        '<table:table-cell office:value-type="date" office:date-value="2026-10-03"><text:p>3/10</text:p></table:table-cell>',
        NOTED,
        '<table:table-cell table:number-columns-repeated="2"/>',
        FAILED,
    )
    grid = read_ods(written(tmp_path, table(row(*cells))))
    expected = [Decimal("12.50"), "45.5 %", True, date(2026, 10, 3), "two   words\nand a line", None, None]
    assert list(grid.rows[0]) == [*expected, CellError("#DIV/0!")]


def test_repeated_rows_and_cells_are_there_as_often_as_they_are_told(tmp_path: Path) -> None:
    twice = '<table:table-row table:number-rows-repeated="2"><table:table-cell table:number-columns-repeated="2" \
office:value-type="string"><text:p>a</text:p></table:table-cell></table:table-row>'
    blank = '<table:table-row table:number-rows-repeated="3"><table:table-cell/></table:table-row>'
    million = '<table:table-row table:number-rows-repeated="1048000"><table:table-cell table:number-columns-repeated="16384"/>'
    grid = read_ods(written(tmp_path, table(twice, blank, row(text("b")), f"{million}</table:table-row>")))
    assert [list(cells) for cells in grid.rows] == [["a", "a"], ["a", "a"], [], [], [], ["b"]]


def test_a_far_repetition_is_refused_before_it_fills_the_memory(tmp_path: Path) -> None:
    far = '<table:table-row table:number-rows-repeated="100000000"><table:table-cell office:value-type="string">\
<text:p>a</text:p></table:table-cell></table:table-row>'
    with pytest.raises(UnreadableError, match="more than 40,000,000 cells"):
        read_ods(written(tmp_path, table(far)))


def test_the_sheet_called_records_is_read_where_there_is_one(tmp_path: Path) -> None:
    path = written(tmp_path, table(row(text("no"))), table(row(text("yes")), name="Records"))
    assert list(read_ods(path).rows[0]) == ["yes"]


@pytest.fixture
def graded(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    return tmp_path


def run(*words: str | Path) -> Result:
    (command,) = entry_points(group="console_scripts", name="koirules")
    main = command.load()
    return CliRunner().invoke(main, [str(word) for word in words])


def test_a_batch_is_graded_from_one_ods_into_another(graded: Path) -> None:
    head = row(*map(text, ("fish", "length", "spine")))
    number = '<table:table-cell office:value-type="float" office:value="14.5"><text:p>14.5</text:p></table:table-cell>'
    sheet = table(head, row(text("A1"), number, text("straight")), row(text("A2"), number, text("bent")))
    path = written(graded, sheet)
    told = run("grade", "tosai_kohaku", path, "--out", "results.ods", "--out", "results.csv")
    assert told.exit_code == 0, told.stderr
    book = CalamineWorkbook.from_path(graded / "results.ods")
    assert book.sheet_names == ["results", "standard"]
    headings, *rows = book.get_sheet_by_name("results").to_python()
    with (graded / "results.csv").open(encoding="utf-8", newline="") as file:
        plain_headings, *plain = csv.reader(file)
    assert headings == plain_headings
    assert [[f"{cell:.2f}" if isinstance(cell, float) else str(cell) for cell in cells] for cells in rows] == plain


def test_what_is_wrong_in_cells_is_told_with_its_place(graded: Path) -> None:
    path = written(
        graded, table(row(*map(text, ("fish", "length"))), row(text("A1"), FAILED), row(text("A2"), text("long")))
    )
    told = run("grade", "tosai_kohaku", path)
    assert told.exit_code == 2
    assert 'lot.ods, row 2, column "length"' in told.stderr
    assert "#DIV/0!" in told.stderr
    assert 'lot.ods, row 3, column "length"' in told.stderr


@pytest.mark.parametrize("kind", ["merged", "locked", "cut off", "text", "empty", "no sheet", "xml"])
def test_a_file_that_cannot_be_read_is_a_problem_and_no_crash(graded: Path, kind: str) -> None:
    merged = '<table:table-cell table:number-rows-spanned="2" office:value-type="string"><text:p>A1</text:p></table:table-cell>'
    good = table(row(text("fish")), row(text("A1")))
    path = written(
        graded, table(row(text("fish")), row(merged)) if kind == "merged" else "" if kind == "no sheet" else good
    )
    match kind:
        case "locked":
            path = written(graded, good, manifest="<manifest:encryption-data/>")
        case "cut off":
            path.write_bytes(path.read_bytes()[:-60])
        case "text":
            path.write_text("fish,length\n", encoding="utf-8")
        case "empty":
            path.write_bytes(b"")
        case "xml":
            path = written(graded, "<table:table>")
    told = run("grade", "tosai_kohaku", path)
    assert told.exit_code == 2
    assert isinstance(told.exception, SystemExit)
    words = {"merged": "A2:A3", "locked": "password", "no sheet": "no sheet", "xml": "no sound spreadsheet"}
    assert words.get(kind, "it is no OpenDocument spreadsheet") in told.stderr


def test_texts_stay_texts_and_letters_that_xml_cannot_hold_are_marked(tmp_path: Path) -> None:
    path = tmp_path / "out.ods"
    rows = [("=1+1", Decimal("2.50")), ("a\x00b\nc", None), ("緋盤", Decimal("-0.01")), ("<&>'\"", Decimal(0))]
    write_ods(path, [Sheet("results", ("fish", "score"), rows)])
    told = CalamineWorkbook.from_path(path).get_sheet_by_index(0).to_python()
    assert told == [["fish", "score"], ["=1+1", 2.5], ["a\ufffdb\nc", ""], ["緋盤", -0.01], ["<&>'\"", 0.0]]
    assert [list(cells) for cells in read_ods(path).rows][1:] == [
        ["=1+1", Decimal("2.50")],
        ["a\ufffdb\nc"],
        ["緋盤", Decimal("-0.01")],
        ["<&>'\"", Decimal(0)],
    ]


def test_a_folder_that_is_not_there_is_told_before_anything_is_written(graded: Path) -> None:
    path = written(graded, table(row(*map(text, ("fish", "length"))), row(text("A1"), text("14 cm"))))
    told = run("grade", "tosai_kohaku", path, "--out", "nowhere/results.ods")
    assert told.exit_code == 2
    assert "nowhere" in told.stderr


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_ods)
