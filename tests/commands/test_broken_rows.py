"""One wrong cell does not keep the other fish from being graded, where the sorter says so; nothing is passed over in silence."""

import csv
import json
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main

RULES = """standard "Trial (an invented house)" edition 1
trait edge as scale blurred < fair < sharp
trait length as number in cm from 0 to 90
grade keep if edge at least fair and length above 10 cm
grade cull otherwise
"""
RECORDS = "fish,edge,length\nA1,sharp,14\nA2,sharpish,12\nA3,fair,12 kg\nA4,blurred,9\n"


@pytest.fixture(autouse=True)
def files(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules.koi").write_text(RULES, encoding="utf-8")
    Path("lot.csv").write_text(RECORDS, encoding="utf-8")


def grade(*words):
    result = CliRunner().invoke(main, ["grade", "rules.koi", "lot.csv", "--out", "out.csv", *words])
    assert isinstance(result.exception, SystemExit), result.exception
    return result


def grades():
    with Path("out.csv").open(encoding="utf-8", newline="") as file:
        return {row["fish"]: row["possible"] for row in csv.DictReader(file)}


def test_without_a_word_nothing_is_written_and_problems_name_the_fish():
    result = grade()
    assert result.exit_code == 2
    assert 'lot.csv, row 3, column "edge", fish A2' in result.stderr
    assert not Path("out.csv").exists()


def test_the_good_rows_are_graded_and_the_others_are_listed():
    result = grade("--leave-out-broken")
    assert result.exit_code == 1
    assert 'row 3, column "edge", fish A2' in result.stderr
    assert 'row 4, column "length", fish A3' in result.stderr
    assert "2 rows are left out." in result.stderr
    assert grades() == {"A1": "keep", "A4": "cull"}


def test_a_wrong_cell_can_be_taken_as_not_recorded_and_the_fish_says_so():
    result = grade("--broken-as-open", "--out", "out.json")
    assert result.exit_code == 1
    assert grades() == {"A1": "keep", "A2": "keep|cull", "A3": "keep|cull", "A4": "cull"}
    fish = json.loads(Path("out.json").read_text(encoding="utf-8"))["results"][1]
    assert fish["look_again"][0]["trait"] == "edge"
    assert fish["look_again"][0]["why"].endswith("It was taken as not recorded.")
    assert '"sharpish"' in result.output


@pytest.mark.parametrize("option", ["--leave-out-broken", "--broken-as-open"])
def test_what_is_wrong_with_the_whole_table_still_ends_it(option):
    Path("lot.csv").write_text("fish,edgy,length\nA1,sharp,14\n", encoding="utf-8")
    assert grade(option).exit_code == 2
    assert not Path("out.csv").exists()


def test_a_file_without_wrong_cells_ends_well():
    Path("lot.csv").write_text("fish,edge,length\nA1,sharp,14\n", encoding="utf-8")
    result = CliRunner().invoke(main, ["grade", "rules.koi", "lot.csv", "--leave-out-broken"])
    assert result.exit_code == 0


def test_whole_files_refuse_to_take_broken_cells_as_open():
    Path("more.csv").write_text(RECORDS, encoding="utf-8")
    result = CliRunner().invoke(main, ["grade", "rules.koi", "lot.csv", "more.csv", "--broken-as-open"])
    assert result.exit_code == 2
    assert "--leave-out-broken leaves the broken rows out" in result.stderr
