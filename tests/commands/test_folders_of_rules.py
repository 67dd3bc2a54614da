"""`check` and `sheet --rules` take a folder of rule files, as `grade` does."""

import csv
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main

HEAD = 'standard "{title} (an invented house)" edition 1 variety kohaku\n'
GRADES = "grade keep if {reads}\ngrade cull otherwise\n"


@pytest.fixture
def folder(tmp_path):
    rooms = tmp_path / "house"
    (rooms / "nisai").mkdir(parents=True)
    (rooms / "tosai.koi").write_text(HEAD.format(title="A") + GRADES.format(reads="kiwa is sharp"))
    (rooms / "nisai" / "standard.koi").write_text(HEAD.format(title="B") + GRADES.format(reads="length at least 30 cm"))
    return rooms


def test_each_file_of_a_folder_is_checked(folder):
    told = CliRunner().invoke(main, ["check", str(folder)])
    assert told.exit_code == 0, told.output
    assert [line.split(":")[0] for line in told.stdout.splitlines()] == [
        str(folder / "nisai" / "standard.koi"),
        str(folder / "tosai.koi"),
    ]


def test_a_sheet_has_what_any_rule_file_of_a_folder_reads(folder, tmp_path):
    out = tmp_path / "sheet.csv"
    told = CliRunner().invoke(main, ["sheet", "--rules", str(folder), "--out", str(out)])
    assert told.exit_code == 0, told.output
    header = next(csv.reader(Path(out).read_text(encoding="utf-8-sig").splitlines()))
    assert {"fish", "kiwa", "length (cm)"} <= set(header) or {"fish", "kiwa", "length (mm)"} <= set(header)
    assert "shiroji" not in header


def test_a_folder_where_one_rule_file_is_needed_names_its_files(folder, tmp_path):
    out = str(tmp_path / "c.html")
    words = ["print", "certificate", str(folder), "fish.csv", "--fish", "1", "--out", out]
    done = CliRunner().invoke(main, words)
    assert done.exit_code == 2
    told = " ".join(done.output.split())
    assert "is a folder, and one rule file is needed here" in told
    assert all(one.name in told for one in folder.glob("*.koi"))


def test_rule_files_that_mean_different_things_by_one_name_are_told(folder, tmp_path):
    (folder / "odd.koi").write_text(
        HEAD.format(title="C").replace(" variety kohaku", "")
        + "trait kiwa as yes or no\n"
        + GRADES.format(reads="kiwa")
    )
    out = tmp_path / "sheet.csv"
    told = CliRunner().invoke(main, ["sheet", "--rules", str(folder), "--out", str(out)])
    assert told.exit_code == 2
    assert 'mean different things by "kiwa"' in told.stderr
    assert not out.exists()
