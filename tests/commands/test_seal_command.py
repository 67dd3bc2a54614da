"""`koirules seal`, `koirules tidy --whole`, and where results name the seal."""

import csv
import json
from hashlib import sha256
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main

CLUB = """standard "Thornwick Open (invented)" edition 2026-1 variety kohaku
fault bent "bent spine" if spine is bent: no better than cull
section body worth 100
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
grade keep if score at least 75
grade cull otherwise
"""
FARM = """standard "Reed Pool (invented)" edition 7 based on "club/open.koi" edition 2026-1
replace fault bent "bent spine" if spine at most slight: no better than cull
drop grade keep
grade show if score at least 90 after cull
"""
GOOD = FARM.replace("drop grade keep\ngrade show if score at least 90 after cull\n", "")
RECORDS = "fish,spine,tail_stem\n1,straight,strong\n2,slight,strong\n3,,fair\n"


@pytest.fixture(autouse=True)
def farm(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("club").mkdir()
    Path("club/open.koi").write_text(CLUB, encoding="utf-8")
    Path("farm.koi").write_text(GOOD, encoding="utf-8")
    Path("lot.csv").write_text(RECORDS, encoding="utf-8")


def run(*words):
    result = CliRunner().invoke(main, list(words))
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def test_the_seal_is_the_digest_of_the_text_that_is_printed():
    text = run("seal", "farm.koi", "--text").stdout_bytes
    assert text.startswith(b"koirules canonical form 1\n")
    assert run("seal", "farm.koi").stdout == f"1-{sha256(text).hexdigest()}\n"
    assert run("seal", "farm.koi").stdout.strip() == koirules.load_standard("farm.koi").seal


def test_a_standard_with_problems_has_no_seal_and_the_lines_of_its_base_are_shown():
    Path("club/open.koi").write_text(CLUB.replace("is bent:", "is bentt:"), encoding="utf-8")
    result = run("seal", "farm.koi")
    assert (result.exit_code, result.stdout) == (2, "")
    assert "club/open.koi, line 2, column " in result.stderr
    assert 'fault bent "bent spine" if spine is bentt: no better than cull' in result.stderr


def test_the_whole_names_where_each_line_is_from_and_reads_as_the_same_standard():
    result = run("tidy", "--whole", "farm.koi")
    assert result.exit_code == 0
    lines = [[part.strip() for part in line.split("  # ")] for line in result.stdout.splitlines() if line]
    assert ["grade keep if score at least 75", "club/open.koi:5"] in lines
    assert [
        'fault bent "bent spine" if spine at most slight: no better than cull',
        "farm.koi:2, in place of club/open.koi:2",
    ] in lines
    assert ["variety kohaku", "club/open.koi:1"] in lines
    assert koirules.read_standard(result.stdout).seal == koirules.load_standard("farm.koi").seal


def test_every_result_names_the_seal():
    seal = koirules.load_standard("farm.koi").seal
    result = run("grade", "farm.koi", "lot.csv", "--out", "out.json", "--out", "out.xlsx")
    assert f"by Reed Pool (invented), edition 7 (seal {seal[:14]}, the fingerprint of its rules)" in result.stdout
    whole = json.loads(Path("out.json").read_text(encoding="utf-8"))
    assert whole["standard"]["seal"] == seal
    files = {(reason["kind"], reason["file"], reason["line"]) for reason in whole["results"][0]["reasons"]}
    assert {("fault", "farm.koi", 2), ("grade", "club/open.koi", 5)} <= files
    sheet = openpyxl.load_workbook("out.xlsx")["standard"]
    assert dict(sheet.iter_rows(values_only=True))["seal"] == seal
    assert seal[:14] in run("why", "farm.koi", "lot.csv", "3").stdout


def test_whole_files_are_graded_with_the_base_and_a_parquet_file_names_the_seal():
    parquet = pytest.importorskip("pyarrow.parquet")
    assert run("grade", "farm.koi", "lot.csv", "lot.csv", "--out", "all.parquet", "--set", "x=1").exit_code == 2
    Path("two.csv").write_text(
        RECORDS.replace("\n1,", "\n4,").replace("\n2,", "\n5,").replace("\n3,", "\n6,"), encoding="utf-8"
    )
    assert run("grade", "farm.koi", "lot.csv", "two.csv", "--out", "all.parquet").exit_code == 0
    facts = parquet.read_schema("all.parquet").metadata
    assert facts[b"koirules.seal"].decode() == koirules.load_standard("farm.koi").seal
    assert parquet.read_table("all.parquet").column("possible").to_pylist()[:3] == ["keep", "cull", "cull"]
    run("grade", "farm.koi", "lot.csv", "two.csv", "--out", "all.csv")
    with Path("all.csv").open(encoding="utf-8") as file:
        assert [row["possible"] for row in csv.DictReader(file)] == ["keep", "cull", "cull"] * 2


def test_files_of_results_with_rounds_name_the_seal_too():
    parquet = pytest.importorskip("pyarrow.parquet")
    Path("farm.koi").write_text(GOOD + "round last pick 1 by highest score\n", encoding="utf-8")
    Path("two.csv").write_text(RECORDS.replace("\n", "\n1"), encoding="utf-8")
    seal = koirules.load_standard("farm.koi").seal
    for out, written in (("all.parquet", "all.parquet"), ("parts", "parts/part-000000.parquet")):
        result = run("grade", "farm.koi", "lot.csv", "two.csv", "--out", out)
        assert result.exit_code == 0, result.output
        assert parquet.read_schema(written).metadata[b"koirules.seal"].decode() == seal
        assert "kept_by" in parquet.read_schema(written).names


def test_what_a_file_breaks_in_its_base_is_shown_in_the_base():
    Path("farm.koi").write_text(FARM, encoding="utf-8")
    result = run("check", "farm.koi")
    assert result.exit_code == 2
    assert "club/open.koi, line 6" in result.stderr
    assert "grade cull otherwise" in result.stderr
    assert "this comes of what farm.koi changes in it" in result.stderr
