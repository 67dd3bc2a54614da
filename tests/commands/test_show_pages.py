"""Pages of a show: the occasion and its day, owners, and what the show commands say where something is in the way."""

from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main

BASE = """standard "Lantern Bay, kohaku" edition 2026-1 variety kohaku
fault bent "bent spine" if spine is bent: no better than plain
grade placed "placed" if length at least 10 cm
grade plain "plain" otherwise
"""
CLUB = """standard "Tin Bucket, kohaku" edition 2026-1 variety kohaku
  based on "base.koi" edition 2026-1
fault lips "red lips" if kuchibeni is yes: no better than plain
"""
SHEET = "fish,variety,owner,spine,length,kuchibeni\na,kohaku,K. Reed,straight,12,no\nb,kohaku,M. Alder,bent,14,no\n"


@pytest.fixture(autouse=True)
def folder(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules").mkdir()
    Path("rules/base.koi").write_text(BASE, encoding="utf-8")
    Path("rules/club.koi").write_text(CLUB, encoding="utf-8")
    Path("show.csv").write_text(SHEET, encoding="utf-8")


def run(*args):
    return CliRunner().invoke(main, list(args))


def page_of(*more):
    result = run("grade", "rules/club.koi", "show.csv", "--out", "page.html", "--replace", *more)
    assert result.exit_code == 0, result.output
    return Path("page.html").read_text(encoding="utf-8")


def test_a_page_names_the_occasion_and_its_day():
    page = page_of("--occasion", "Spring show (invented)", "--date", "2026-04-18")
    assert "2 fish · Spring show (invented) · 18 April 2026" in page
    assert "<title>Spring show (invented) by Tin Bucket, kohaku</title>" in page and "show.csv" not in page
    assert "show.csv" in page_of()


def test_the_page_of_several_standards_is_called_as_the_occasion():
    Path("rules/base.koi").unlink()
    for stage in ("tosai", "nisai"):
        text = BASE.replace("variety kohaku\n", f"variety kohaku stage {stage}\n", 1)
        Path(f"rules/{stage}.koi").write_text(text, encoding="utf-8")
    Path("rules/club.koi").unlink()
    Path("show.csv").write_text("fish,stage,spine,length\na,tosai,straight,12\nb,nisai,bent,14\n", encoding="utf-8")
    result = run(
        "grade", "rules", "show.csv", "--out", "page.html", "--occasion", "Spring show", "--date", "2026-04-18"
    )
    assert result.exit_code == 0, result.output
    page = Path("page.html").read_text(encoding="utf-8")
    assert "<h1>Spring show</h1>" in page and "show.csv" not in page


def test_a_day_that_is_none_is_refused():
    assert run("grade", "rules/club.koi", "show.csv", "--out", "page.html", "--date", "tomorrow").exit_code == 2


def test_owners_need_no_label_and_are_hidden_on_request():
    assert "K. Reed" in page_of()
    hidden = page_of("--no-owners")
    assert "K. Reed" not in hidden and "owner" not in hidden
    assert "K. Reed" not in page_of("--for", "customer")


def test_a_base_beside_its_page_is_told_with_what_to_do():
    result = run("grade", "rules", "show.csv")
    told = " ".join(result.output.split())
    assert result.exit_code == 1
    assert (
        "one is based on the other: give the rules without Lantern Bay, kohaku, edition 2026-1, or move its file "
        "into a folder of its own: a, b"
    ) in told
    Path("rules/common").mkdir()
    Path("rules/base.koi").rename("rules/common/base.koi")
    club = Path("rules/club.koi")
    club.write_text(CLUB.replace('"base.koi"', '"common/base.koi"'), encoding="utf-8")
    assert run("grade", "rules", "show.csv").exit_code == 0  # what it says to do
