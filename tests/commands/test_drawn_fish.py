"""`koirules why --drawing` draws the fish, `koirules traits` says what follows from what."""

from __future__ import annotations

import json
from pathlib import Path
from xml.etree import ElementTree

import pytest
from click.testing import CliRunner, Result

from koirules.commands import main

RULES = """standard "try" edition 1 variety kohaku
fault bare "hardly any red" if hi_cover below 5 %: no better than b
grade a if length at least 10 cm
grade b otherwise
"""


@pytest.fixture(autouse=True)
def tub(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    Path("rules.koi").write_text(RULES, encoding="utf-8")
    Path("tub.csv").write_text("fish,length,hi_patches\n<K1>,14,8 to 26 both 60\nK2,14,\n", encoding="utf-8")


def run(*words: str) -> Result:
    return CliRunner().invoke(main, list(words))


def test_a_fish_is_drawn_into_a_file() -> None:
    done = run("why", "rules.koi", "tub.csv", "<K1>", "--drawing", "k1.svg")
    assert done.exit_code == 0, done.output
    assert "Wrote k1.svg." in done.output
    svg = ElementTree.fromstring(Path("k1.svg").read_text(encoding="utf-8"))  # noqa: S314
    assert svg.findtext("{http://www.w3.org/2000/svg}title") == "<K1>"


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("K2", "--drawing", "k2.svg"), "No map of the patches of K2 was recorded"),
        (("<K1>", "--drawing", "k1.png"), "let k1.png end in .svg"),
        (("<K1>", "K2", "--drawing", "k1.svg"), "shows one fish"),
        (("<K1>", "--drawing", "nowhere/k1.svg"), "nowhere"),
    ],
)
def test_what_cannot_be_drawn_is_told(words: tuple[str, ...], told: str) -> None:
    done = run("why", "rules.koi", "tub.csv", *words)
    assert done.exit_code == 2
    assert told in done.output
    assert not list(Path().glob("*.svg"))


def test_the_list_of_traits_says_what_follows_from_what() -> None:
    shown = " ".join(run("traits", "kohaku").output.split())
    assert "`girth / length`" in shown
    assert "gill_edge" in shown
    data = {one["name"]: one["follows_from"] for one in json.loads(run("traits", "kohaku", "--json").output)}
    assert data["hi_cover"] == "hi_patches"
    assert data["girth_ratio"] == "`girth / length`"
    assert data["length"] is None
    of_rules = {one["name"]: one["follows_from"] for one in json.loads(run("traits", "rules.koi", "--json").output)}
    assert of_rules == data


def test_a_sheet_has_a_column_for_what_others_follow_from() -> None:
    assert run("sheet", "--rules", "rules.koi", "--out", "sheet.csv").exit_code == 0
    assert Path("sheet.csv").read_text(encoding="utf-8").split() == ["fish,length", "(cm),hi_patches,hi_cover", "(%)"]
