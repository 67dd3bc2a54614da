"""Formats of plugins: used by their ending, and named where they fail."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from koirules.commands import main
from koirules.hooks import Grid, RecordReader, ResultWriter, Sheet
from koirules.plugins import registry_with
from koirules.records.exchange import MOST_CELLS
from koirules.records.notes_records import ENDING as NOTES
from koirules.records.plugged_formats import TABLES
from koirules.records.records import READERS
from tests.plugins.installing import Install, installer
from tests.plugins.invented import Gives, assert_left_out, lace, only_problem

install = pytest.fixture(installer, name="install")

PLUGIN = """
from decimal import Decimal
from koirules.hooks import Grid, RecordReader, ResultWriter, UnreadableError, hookimpl

KOIRULES_API = 2


def read(path):
    text = path.read_text(encoding="utf-8")
    if text.startswith("locked"):
        raise UnreadableError("it is locked", "Unlock it.")
    if text.startswith("odd"):
        return text
    return Grid([line.split("/") for line in text.splitlines()] if text[0] != "!" else text / 2)


def write(path, sheets):
    with path.open("w", encoding="utf-8") as file:
        for sheet in sheets:
            for row in sheet.rows:
                if "breaks" in row:
                    raise KeyError("no such letter")
                print(sheet.name, *row, sep="/", file=file)


@hookimpl
def koirules_record_readers():
    return [RecordReader(".slash", "slashed table", read), RecordReader(".csv", "our own csv", read)]


@hookimpl
def koirules_result_writers():
    return [ResultWriter(".slash", "slashed table", write, 3)]
"""


@pytest.fixture
def folder(install: Install, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    install("invented-koi", PLUGIN)
    place = tmp_path / "lots"
    place.mkdir()
    monkeypatch.chdir(place)
    return place


def grade(folder: Path, text: str, *words: str) -> Result:
    (folder / "lot.slash").write_text(text, encoding="utf-8")
    return CliRunner().invoke(main, ["grade", "tosai_kohaku", "lot.slash", *words])


def test_records_come_from_a_plugin_and_results_go_to_it(folder: Path) -> None:
    told = grade(folder, "fish/length/spine\nA1/14 cm/bent\n", "--out", "out.slash")
    assert told.exit_code == 0, told.stderr
    first = (folder / "out.slash").read_text(encoding="utf-8").splitlines()[0]
    assert first.startswith("results/A1/")


def test_what_is_wrong_in_a_cell_is_found_as_in_any_format(folder: Path) -> None:
    told = grade(folder, "fish/length\nA1/long\n")
    assert told.exit_code == 2
    assert 'lot.slash, row 2, column "length"' in told.stderr


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("locked", "The file cannot be read: it is locked.\n  Unlock it."),
        ("odd", "lace of invented-koi 1.2 failed (it gave a str, and no Grid)"),
        ("!", "lace of invented-koi 1.2 failed (TypeError"),
    ],
)
def test_a_reader_that_fails_is_a_problem_of_the_file(folder: Path, text: str, told: str) -> None:
    result = grade(folder, text)
    assert result.exit_code == 2
    assert told in result.stderr
    assert ("[unreadable-file]" if text == "locked" else "[plugin-reader-failed]") in result.stderr


def test_a_writer_that_fails_leaves_nothing_behind(folder: Path) -> None:
    told = grade(folder, "fish/length/pond\nA1/14 cm/breaks\n", "--label", "pond", "--out", "out.slash")
    assert told.exit_code == 2
    assert "lace of invented-koi 1.2 failed (KeyError" in told.stderr
    assert "[plugin-writer-failed]" in told.stderr
    assert [path.name for path in folder.iterdir()] == ["lot.slash"]


def test_a_writer_says_how_many_rows_it_takes(folder: Path) -> None:
    told = grade(folder, "fish/length\nA1/14 cm\nA2/14 cm\nA3/14 cm\n", "--out", "out.slash")
    assert told.exit_code == 2
    assert "[too-many-rows]" in told.stderr


def test_an_ending_of_koirules_stays_with_koirules(folder: Path) -> None:
    (folder / "lot.csv").write_text("fish,length\nA1,14 cm\n", encoding="utf-8")
    told = CliRunner().invoke(main, ["grade", "tosai_kohaku", "lot.csv"])
    assert told.exit_code == 0
    assert 'The reader of ".csv" was left out. That name is already there, from koirules.' in told.stderr


def test_an_ending_that_nobody_reads_names_those_of_plugins_too(folder: Path) -> None:
    (folder / "lot.dbf").write_text("fish", encoding="utf-8")
    told = CliRunner().invoke(main, ["grade", "tosai_kohaku", "lot.dbf"])
    assert ".slash (slashed table)" in told.stderr


def test_a_grid_that_reaches_too_far_is_refused(tmp_path: Path) -> None:
    from koirules.records.plugged_formats import read_plugged

    class Far(Sequence[Sequence[object]]):
        def __len__(self) -> int:
            return MOST_CELLS

        def __getitem__(self, index: Any) -> Any:
            if index >= 2:
                raise IndexError
            return ("fish", "length")

    file = tmp_path / "far.slash"
    file.write_text("x", encoding="utf-8")
    table = read_plugged(file, RecordReader(".slash", "slashed", lambda _: Grid(Far())), "far")
    assert [problem.code for problem in table.problems] == ["too-large"]


def nothing(path: Path, sheets: Sequence[Sheet]) -> None:
    """Write nothing."""


@pytest.mark.parametrize(
    ("given", "code"),
    [
        ({"writers": [ResultWriter("slash", "slashed", nothing)]}, "plugin-bad-ending"),
        ({"writers": [ResultWriter(".Slash", "slashed", nothing)]}, "plugin-bad-ending"),
        ({"writers": [ResultWriter(".slash", "slashed", "write")]}, "plugin-wrong-type"),  # type: ignore[arg-type]
        ({"readers": [ResultWriter(".slash", "slashed", nothing)]}, "plugin-wrong-type"),
        ({"readers": None}, "plugin-wrong-type"),
    ],
)
def test_a_format_that_could_not_be_used_takes_its_plugin_out(given: dict[str, Any], code: str) -> None:
    registry = registry_with(Gives(lace(), **given))
    assert_left_out(registry)
    assert only_problem(registry).code == code


def test_our_own_endings_are_those_of_our_own_readers() -> None:
    assert (*READERS, NOTES) == TABLES
