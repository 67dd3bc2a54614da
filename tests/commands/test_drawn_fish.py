"""`koirules why --drawing` draws the fish, now and grown, `koirules traits` says what follows from what."""

from __future__ import annotations

import json
from pathlib import Path
from xml.etree import ElementTree

import pytest
from click.testing import CliRunner, Result

from koirules.api import load_standard
from koirules.commands import main
from koirules.report.appearance import Appearance
from koirules.report.drawer import Drawer

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


GROWN = """standard "try" edition 1 variety kohaku
setting growth_exponent = 3.2 from 3 to 3.4
setting long = 60 cm from 20 cm to 80 cm
fault bare "hardly any red when grown" if hi_cover grown to long below 5 %: no better than b
fault slim "slim when grown" if girth_ratio grown to 80 cm below 0.3: no better than b
grade a if length at least 10 cm
grade b otherwise
"""
SVG = "{http://www.w3.org/2000/svg}"


def drawn(record: str, *words: str) -> ElementTree.Element:
    Path("grown.koi").write_text(GROWN, encoding="utf-8")
    Path("tub.csv").write_text(f"fish,length,hi_patches\n{record}\n", encoding="utf-8")
    done = run("why", "grown.koi", "tub.csv", "K1", "--drawing", "k1.svg", *words)
    assert done.exit_code == 0, done.output
    assert "an estimate, not a promise" in " ".join(done.output.split())
    return ElementTree.fromstring(Path("k1.svg").read_text(encoding="utf-8"))  # noqa: S314


def test_a_fish_whose_pattern_is_asked_for_when_grown_is_drawn_now_and_then() -> None:
    picture = drawn("K1,15,8 to 26 both 60; 40 to 70 left 90 sashi 5; 80 to 90 both 40 thin")
    inner = [one for one in picture.iter(f"{SVG}svg") if one is not picture]
    # The fish is shown large, and then both to one scale.
    assert [one.findtext(f"{SVG}title") for one in inner] == [
        "K1, now, 15 cm",
        "K1, now, 15 cm",
        "K1, grown to 60 cm, by a model",
    ]
    large, now, grown = (float(one.get("width") or "") for one in inner)
    assert now / grown == pytest.approx(15 / 60, abs=0.001)
    assert large == grown
    told = " ".join(one.text or "" for one in picture.iter(f"{SVG}text"))
    assert told.startswith(
        "now, 15 cm; pale: under white scales; broken edge: thin, may go; 4 times as large as below now, 15 cm "
        "grown to 60 cm, by a model; broken edge: thin, may go 0 5 10"
    )
    assert told.endswith("60 cm")
    told = [one.text for one in picture.iter(f"{SVG}desc")]
    assert "at 8 to 26 %, 40 to 70 %, 80 to 90 % (thin)" in (told[0] or "")
    assert "at 8 to 26 %, 45 to 70 %, 80 to 90 % (thin)" in (told[2] or "")
    ids = [one.get("id") for one in picture.iter() if one.get("id")]
    assert len(ids) == len(set(ids))


def test_a_grown_fish_is_stouter_by_the_model():
    look = Appearance(length=15, breadth=0.2)
    # Girth over length goes as the length to the power of (b - 3) / 2 = 0.1 (trade: W = a L^b with W as L G^2).
    assert look.grown(60, 4**0.1, {}).breadth == pytest.approx(0.2 * 4**0.1)
    Path("grown.koi").write_text(GROWN, encoding="utf-8")
    standard = load_standard("grown.koi")
    record = standard.reader.read({"fish": "K1", "length": "15", "hi_patches": "8 to 26 both 60"}, "K1")
    now, grown = Drawer(standard.rules, standard.settings).views_of(record.readings, "K1")
    assert grown.look.breadth / now.look.breadth == pytest.approx(4**0.1)


@pytest.mark.parametrize(
    ("record", "words", "title"),
    [
        ("K1,60,8 to 26 both 60", (), "K1"),  # as long already
        ("K1,14 to 15,8 to 26 both 60", (), "K1"),  # how far it has to grow is not known
        ("K1,,8 to 26 both 60", (), "K1"),
        ("K1,25,8 to 26 both 60", ("--set", "long=20"), "K1"),
    ],
)
def test_where_nothing_is_known_of_the_grown_fish_it_is_drawn_as_it_is(
    record: str, words: tuple[str, ...], title: str
) -> None:
    picture = drawn(record, *words)
    assert picture.findtext(f"{SVG}title") == title
    assert len(list(picture.iter(f"{SVG}svg"))) == 1


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
    shown = " ".join(run("traits", "kohaku", "--all").output.split())
    assert "`girth / length`" in shown
    assert "gill_edge" in shown
    data = {one["name"]: one["follows_from"] for one in json.loads(run("traits", "kohaku", "--json").output)}
    assert data["hi_cover"] == "hi_patches"
    assert data["girth_ratio"] == "`girth / length`"
    assert data["length"] is None
    of_rules = {one["name"]: one["follows_from"] for one in json.loads(run("traits", "rules.koi", "--json").output)}
    assert of_rules == data


def test_a_sheet_has_a_column_for_what_others_follow_from() -> None:
    assert run("sheet", "--rules", "rules.koi", "--maps", "--out", "sheet.csv").exit_code == 0
    assert Path("sheet.csv").read_text(encoding="utf-8").split() == ["fish,length", "(cm),hi_patches,hi_cover", "(%)"]
    assert run("sheet", "--rules", "rules.koi", "--out", "by_hand.csv").exit_code == 0
    assert Path("by_hand.csv").read_text(encoding="utf-8").split() == ["fish,length", "(cm),hi_cover", "(%)"]


def test_why_says_that_a_thin_patch_may_go_where_the_grade_hangs_on_it() -> None:
    Path("grown.koi").write_text(GROWN.replace("fault slim", "# fault slim"), encoding="utf-8")
    Path("tub.csv").write_text("fish,length,hi_patches\nK1,14,8 to 26 both 60 thin\n", encoding="utf-8")
    done = run("why", "grown.koi", "tub.csv", "K1")
    assert "Fish K1: a or b" in done.output
    assert "map of the red (hi): whether what is thin stays as the fish grows; nobody can tell today" in done.output
