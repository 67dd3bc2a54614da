"""A page of a batch that two standards graded, in a real browser: filtered, ordered, set side by side, on a phone."""

from __future__ import annotations

import csv
from pathlib import Path
from unicodedata import normalize

import pypdf
import pytest
from click.testing import CliRunner

from koirules.commands import main
from tests.formats.browser import Page, running_browser

LOT = Path(__file__).resolve().parents[2] / "examples" / "01-autumn-lot" / "records.csv"
NISAI = """standard "Tin Bucket, second-year kohaku" edition 7 variety kohaku stage nisai
setting places = 3 from 1 to 10
section frame "frame" worth 60
points outline by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10
points cover "red when grown" by (hi_cover grown to 75 cm if hi_patches is recorded otherwise hi_cover):
  0 % gives 0, 40 % gives 10, 100 % gives 0
section skin "skin and colour" worth 60
points white "white" by shiroji: yellow gives 0, cream gives 4, white gives 8, snow gives 10
alert stems "thin tail stems" if batch share of (tail_stem is thin) above 0 %
grade keep "keep" if score at least 90
grade watch "look again" if score at least 60
grade sell "sell" otherwise
round last "places" pick places by highest score
"""
SHOWN = "[...document.querySelectorAll('.fish:not([hidden])')]"


@pytest.fixture(scope="module")
def browser():
    with running_browser() as running:
        yield running


@pytest.fixture(scope="module")
def mixed(tmp_path_factory):
    """The lot, every fourth fish of it taken for a year older, one for two, and one of an unknown variety."""
    folder = tmp_path_factory.mktemp("mixed")
    (folder / "nisai.koi").write_text(NISAI, encoding="utf-8")
    with LOT.open(encoding="utf-8", newline="") as file:
        heading, *rows = list(csv.reader(file))
    with (folder / "lot.csv").open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file)
        writer.writerow([*heading, "variety", "stage"])
        for number, row in enumerate(rows):
            variety = '<b onclick="x">' if number == 9 else "kohaku"
            writer.writerow([*row, variety, "sansai" if number == 7 else "tosai" if number % 4 else "nisai"])
    run = CliRunner().invoke(
        main,
        ["grade", "tosai_kohaku", str(folder / "nisai.koi"), str(folder / "lot.csv"), "--out", str(folder / "p.html")],
    )
    assert run.exit_code == 1, run.output
    return folder / "p.html"


@pytest.fixture
def desk(browser, mixed):
    return Page(browser, 1280, 900, script=True, touch=False).open(mixed)


def choose(page, name, value):
    page.run(
        f"document.getElementById('{name}').value = '{value}';"
        f"document.getElementById('{name}').dispatchEvent(new Event('input', {{ bubbles: true }}));"
        f"document.getElementById('{name}').dispatchEvent(new Event('change', {{ bubbles: true }}))"
    )


def standards(page):
    return page.run(f"{SHOWN}.map((card) => card.dataset.standard)")


def test_each_standard_has_its_part_with_totals_scores_cautions_and_rounds(desk):
    told = desk.run("[...document.querySelectorAll('.part')].map((part) => part.innerText)")
    cautions = desk.run("document.querySelector('footer .cautions').textContent")
    assert len(told) == 2
    assert "Cold Sluice, first-year kohaku" in told[0]
    assert "52 fish" in told[0]
    assert "grown to 60 cm" in cautions
    assert "Selection" not in told[0]
    assert "18 fish" in told[1]
    assert "grown to 75 cm" in cautions
    assert "thin tail stems" in told[1]
    assert "18 fish, 3 stay, 15 leave" in told[1].replace("\n", " ")
    charts = desk.run("[...document.querySelectorAll('.part .chart')].map((one) => one.getAttribute('aria-label'))")
    assert "keep from 76" in charts[0]
    assert "keep from 90" in charts[1]
    assert "A grade is a sorting result" in cautions
    left = desk.run("document.getElementById('left').innerText")
    assert '<b onclick="x">' in left
    assert "kohaku, sansai" in left
    ids = desk.run("[...document.querySelectorAll('[id]')].map((one) => one.id)")
    assert len(ids) == len(set(ids))
    named = "one.getAttribute('aria-labelledby').split(' ').every((id) => document.getElementById(id))"
    assert desk.run(f"[...document.querySelectorAll('[aria-labelledby]')].every((one) => {named})")
    assert (desk.told, desk.requests) == ([], [])


def test_fish_are_shown_by_standard_grade_and_round(desk):
    assert standards(desk) == ["0"] * 52 + ["1"] * 18
    choose(desk, "standard", "1")
    assert standards(desk) == ["1"] * 18
    assert desk.run("document.getElementById('shown').textContent") == "18 of 70 fish shown"
    assert desk.run("[...document.getElementById('round').options].map((one) => one.textContent)") == [
        "every fish",
        "Tin Bucket, second-year kohaku, places: stays",
        "Tin Bucket, second-year kohaku, places: leaves",
    ]
    choose(desk, "round", "0-stays")
    assert len(standards(desk)) == 3
    desk.run("document.querySelector('.controls').reset()")
    desk.run("new Promise((done) => setTimeout(done))")
    # A grade that both have is asked for once, one that only the second has alone.
    desk.run("[...document.querySelectorAll('.chip')].find((one) => one.textContent === 'keep').click()")
    assert set(standards(desk)) == {"0", "1"}
    desk.run("[...document.querySelectorAll('.chip')].find((one) => one.textContent === 'keep').click()")
    desk.run("[...document.querySelectorAll('.chip')].find((one) => one.textContent === 'look again').click()")
    assert set(standards(desk)) == {"1"}


def test_points_of_two_standards_are_never_put_in_one_table(desk):
    tables = desk.run(
        "[...document.querySelectorAll('.list')].map((table) => [...table.tBodies[0].rows]"
        ".map((row) => document.getElementById(row.dataset.fish).dataset.standard))"
    )
    assert [set(one) for one in tables] == [{"0"}, {"1"}]
    assert [len(one) for one in tables] == [52, 18]
    heads = desk.run("[...document.querySelectorAll('.list')].map((one) => one.tHead.innerText)")
    assert "frame" not in heads[0] and "frame" in heads[1]


def test_fish_of_two_standards_are_set_side_by_side_with_their_standards(desk):
    desk.run(
        "for (const one of ['0', '1']) document.querySelector(`.fish[data-standard='${one}'] .chosen`).click();"
        "document.getElementById('compare').click()"
    )
    told = desk.run("document.getElementById('side').innerText")
    assert "Cold Sluice, first-year kohaku, edition 2026-2" in told
    assert "Tin Bucket, second-year kohaku, edition 7" in told
    assert "frame" in told
    assert "growth and impression" in told


def test_the_page_fits_a_phone_and_prints_all_its_parts(browser, mixed, tmp_path):
    phone = Page(browser, 390, 844, script=True, touch=True).open(mixed)
    assert phone.run("document.documentElement.scrollWidth") == 390
    pages = pypdf.PdfReader(phone.printed(tmp_path / "page.pdf")).pages
    text = normalize("NFKC", "".join(one.extract_text() for one in pages))  # ligatures as letters
    for words in ("Cold Sluice, first-year kohaku", "Tin Bucket, second-year kohaku", "Not graded", "grown to 75 cm"):
        assert words in text
    assert "What to show" not in text
    plain = Page(browser, 390, 844, script=False, touch=True).open(mixed)
    assert plain.run("document.querySelectorAll('.fish').length") == 70
