"""The page of results and the sheets for paper: what a house sees, what a customer sees, and what comes out of a printer."""

from __future__ import annotations

import csv
import json
import re
from decimal import Decimal
from importlib.resources import files
from itertools import pairwise
from pathlib import Path
from unicodedata import normalize

import pypdf
import pytest
from attrs import evolve
from click.testing import CliRunner, Result

from koirules.api import load_standard, read_standard
from koirules.commands import main
from koirules.commands.inputs import graded
from koirules.grading.sample_runs import run_samples
from koirules.report.appearance import appearance_of
from koirules.report.figures import in_tenths, parts_in_tenths
from koirules.report.fish_drawing import fish_drawing
from koirules.report.fish_words import told
from koirules.report.handbook import Subject, blocks_of
from koirules.report.handbook.as_html import html_of
from koirules.report.handbook.as_markdown import markdown_of
from koirules.report.page_scores import chart_of
from koirules.report.page_words import Wording
from tests.formats.browser import Page, running_browser

LOT = Path(__file__).parents[2] / "examples" / "01-autumn-lot" / "records.csv"


@pytest.fixture(scope="module")
def lot():
    standard = load_standard("tosai_kohaku")
    batch = graded(standard, str(LOT), (), None)
    about = batch.about(standard)
    return Wording.of(batch.results, about), {one.fish: one for one in batch.results}


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    return tmp_path_factory.mktemp("made")


@pytest.fixture(scope="module")
def browser():
    with running_browser() as running:
        yield running


def run(*words: object) -> Result:
    return CliRunner().invoke(main, [str(word) for word in words])


def grade(*words: object) -> Result:
    return run("grade", "tosai_kohaku", LOT, "--replace", *words)


@pytest.fixture(scope="module")
def page(made):
    done = grade("--out", made / "lot.html")
    assert done.exit_code == 0, done.output
    return (made / "lot.html").read_text(encoding="utf-8")


def test_a_page_of_72_fish_with_both_views_stays_small(page):
    assert page.count('class="fish') == 72
    assert page.count("grown to 60 cm, by a model</title>") > 30
    assert len(page.encode()) < 700_000


def test_views_on_a_page_share_what_they_have_in_common(page):
    (shared,) = re.findall(r'<svg class="unseen".*?</svg>', page, re.DOTALL)
    drawn = re.findall(r'<g transform="rotate\(-90\)">.*?</svg>|<g id="[^"]*-g">.*?</svg>', page, re.DOTALL)
    assert len(drawn) > 100
    assert (len(shared) + sum(map(len, drawn))) / len(drawn) < 4_500
    ids = re.findall(r'\bid="([^"]+)"', page)
    assert len(ids) == len(set(ids))
    assert set(re.findall(r'(?:href="|url\()#([^")]+)', page)) <= set(ids)


@pytest.mark.parametrize(
    ("low", "high", "words"),
    [
        ("99.78", None, "99.8"),
        ("99.97", None, "99.9"),  # it is not 100
        ("75.98", None, "75.9"),  # and this is below a line at 76
        ("100.00", None, "100"),
        ("71.25", None, "71.3"),
        ("80.00", "82.94", "80 to 82.9"),
    ],
)
def test_points_are_told_with_one_decimal_and_never_reach_what_they_do_not(low, high, words):
    assert in_tenths(Decimal(low), None if high is None else Decimal(high)) == words


def test_a_fish_is_told_in_a_sentence_with_gains_and_losses_apart(lot):
    wording, results = lot
    best = told(wording, results["L09"])
    assert (
        best.sentence
        == "Snow-white skin, three patches of thick, even red, excellent outline; hardly a point is missing."
    )
    assert [(one.points, one.title) for one in best.gains] == [
        ("+10.7", "outline from above"),
        ("+7.5", "white ground"),
        ("+7.5", "lustre"),
    ]
    assert best.losses[0].points == "−0.5"
    # A fault that bites and is no cause, and one that decides.
    assert told(wording, results["L23"]).sentence.startswith(
        "Film over an eye; otherwise many patches, strong tail stem"
    )
    assert "gill cover: no better than pond grade; " in told(wording, results["L17"]).sentence
    # What nobody mentioned is told as nothing, though points were given for it.
    assert told(wording, results["L04"]).sentence == "Bent spine: no better than out of the lot."
    still_open = told(wording, evolve(results["L25"], hangs_on=("health",)))
    assert still_open.sentence.startswith("Could be keep or hold; still to look at: health; ")
    # A trait has one name, its title, on a whole page.
    by_eyes = told(wording, evolve(results["L25"], hangs_on=("hi_on_eyes",)))
    assert "still to look at: red over the eyes; " in by_eyes.sentence
    # A bonus that was not given is no loss.
    bonuses = {one.title for result in results.values() for one in result.reasons if one.kind == "bonus"}
    assert not any(line.title in bonuses for one in results.values() for line in told(wording, one).losses)


def luminance(paint: str) -> float:
    """Relative luminance (WCAG 2.2, definition)."""
    parts = [int(paint[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return sum(weight * part for weight, part in zip((0.2126, 0.7152, 0.0722), linear, strict=True))


@pytest.mark.parametrize("sheet", ["page.css", "paper.css"])
def test_grades_are_told_apart_in_grey_and_their_names_are_read(sheet):
    style = files("koirules.report").joinpath("templates", sheet).read_text(encoding="utf-8")
    shades = [luminance(re.search(f"--shade-{i}: (#[0-9a-f]{{6}})", style)[1]) for i in range(5)]
    lightness = [116 * one ** (1 / 3) - 16 for one in shades]  # L* (CIE 15:2004)
    assert all(other - one > 8 for one, other in pairwise(lightness)), lightness
    inks = [luminance("#ffffff")] * 2 + [luminance("#10201d")] * 3
    for shade, ink in zip(shades, inks, strict=True):
        low, high = sorted((shade, ink))
        assert (high + 0.05) / (low + 0.05) >= 7  # WCAG 2.2, success criterion 1.4.6


def test_the_chart_shows_each_fish_by_its_grade_and_no_line_crosses_a_name(lot):
    wording, results = lot
    chart = chart_of(wording, list(results.values()))
    assert len(chart.dots) + chart.missing == 72
    settled = {one.fish for one in results.values() if one.grade is not None}
    assert all((dot.shade == "open") == (dot.name not in settled) for dot in chart.dots)
    ranges = [one.fish for one in results.values() if one.grade and one.score is None]
    assert any(dot.name in ranges and dot.shade != "open" for dot in chart.dots)
    for line in chart.lines:
        end = line.x + 4 + 7.6 * len(line.words)
        assert end <= chart.wide
        crossing = [other for other in chart.lines if line.x < other.x < end]
        # A line begins at its own name: those that would cross this one begin below it.
        assert all(other.y - 10 > line.y for other in crossing)
    held = {dot.name for dot in chart.dots if dot.held}
    assert "L17" in held and "L09" not in held  # 65.1 points and pond grade: a fault
    assert "held down by a fault" in (chart.held and "held down by a fault")
    assert ("open", "not settled") in chart.legend
    wide = evolve(wording.about, grades=tuple(evolve(one, title=one.title * 30) for one in wording.about.grades))
    assert chart_of(Wording(wide), list(results.values())).end > 250


def test_a_customer_sees_the_fish_on_offer_without_what_is_for_the_house(made):
    (made / "mark.svg").write_text('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>')
    words = ["--for", "customer", "--offer", "hold", "--offer", "sell", "--contact", "By <appointment>"]
    done = grade("--out", made / "offer.html", *words, "--title", "Autumn lot", "--mark", made / "mark.svg")
    assert done.exit_code == 0, done.output
    text = (made / "offer.html").read_text(encoding="utf-8")
    assert text.count('class="fish') == 37  # 15 hold and 22 sell
    assert "<h1>Autumn lot</h1>" in text and "By &lt;appointment&gt;" in text
    assert 'src="data:image/svg+xml;base64,' in text and "<script" not in text
    with LOT.open(encoding="utf-8", newline="") as file:
        notes = [row["note"] for row in csv.DictReader(file) if row["note"]]
    for internal in (*notes, "records.csv", "kill", "All reasons", "Put side by side", "not settled", "What was seen"):
        assert internal not in text, internal
    few = made / "few.csv"
    few.write_text("\n".join(LOT.read_text(encoding="utf-8").splitlines()[:2]), encoding="utf-8")  # L01, which is kept
    done = run("grade", "tosai_kohaku", few, "--out", made / "few.html", "--for", "customer", "--offer", "sell")
    assert "shows none" in done.stderr
    grade("--out", made / "all.html", "--for", "customer")
    everyone = (made / "all.html").read_text(encoding="utf-8")
    with LOT.with_name("expected.csv").open(encoding="utf-8", newline="") as file:
        rows = csv.DictReader(line for line in file if not line.startswith("#"))
        settled = [row["possible"] for row in rows if "|" not in row["possible"]]
    assert everyone.count('class="fish') == sum(grade != "cull" for grade in settled)  # not the last grade


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        (("--offer", "hodl", "--for", "customer"), 'Did you mean "hold"?'),
        (("--mark", "no.svg"), "cannot be shown"),
        (("--mark", str(LOT)), "[mark-unreadable]"),
    ],
)
def test_what_cannot_be_offered_or_shown_is_told(made, words, wanted):
    done = grade("--out", made / "none.html", *words)
    assert done.exit_code == 2
    assert wanted in " ".join(done.output.split())
    assert not (made / "none.html").exists()


def test_a_table_has_what_was_recorded_and_what_open_grades_hang_on(made):
    done = grade("--out", made / "whole.csv", "--out", made / "whole.xlsx", "--with-records")
    assert done.exit_code == 0, done.output
    with (made / "whole.csv").open(encoding="utf-8", newline="") as file:
        rows = {row["fish"]: row for row in csv.DictReader(file)}
    with LOT.open(encoding="utf-8", newline="") as file:
        given = {row["fish"]: row for row in csv.DictReader(file)}
    assert rows["L01"]["length (cm)"] == "16.3" and given["L01"]["length (mm)"] == "163"
    assert rows["L02"]["hi_cover (%)"] == "40 % to 50 %"
    words = ("blurred", "fair", "sharp", "razor")
    assert all(rows[fish]["kiwa"] == row["kiwa"] for fish, row in given.items() if row["kiwa"] in words)
    assert rows["L09"]["hi_patches"] == given["L09"]["hi_patches"]
    assert rows["L01"]["pond"] == "long pond" and "pond (label)" not in rows["L01"]
    assert all(bool(row["hangs_on"]) == (row["grade"] == "") for row in rows.values())
    assert rows["L25"]["hangs_on"] == "health"
    import openpyxl

    sheet = openpyxl.load_workbook(made / "whole.xlsx")["results"]
    head, first, *_ = list(sheet.iter_rows(values_only=True))
    assert first[head.index("length (cm)")] == 16.3


def sheet(made, what: str, *words: object) -> Path:
    path = made / f"{what}.html"
    done = run("print", what, "tosai_kohaku", LOT, "--replace", "--out", path, *words)
    assert done.exit_code == 0, done.output
    return path


@pytest.mark.parametrize(("paper", "size"), [("a5", (148, 210)), ("a4", (210, 297))])
def test_a_certificate_is_one_sheet(browser, made, paper, size):
    path = sheet(made, "certificate", "--fish", "L09", "--paper", paper, "--contact", "Cold Sluice, at the ponds")
    shown = Page(browser, 1000, 1400, script=False, touch=False).open(path)
    (only,) = pypdf.PdfReader(shown.printed(made / f"{paper}.pdf")).pages
    assert [float(one) / 72 * 25.4 for one in only.mediabox[2:]] == pytest.approx(size, abs=1)
    text = " ".join(normalize("NFKC", only.extract_text()).split())
    for words in (
        "Fish L09, first of its lot",
        "99.8",
        "15.8 cm",
        "old line",
        "25 of 25",
        "5 cm on the drawing",
        "ponds",
    ):
        assert words in text, words
    assert shown.told == [] and shown.requests == []


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        (("--fish", "L25"), "is not settled"),
        (("--fish", "L99"), "There is no fish"),
        ((), "name it with --fish"),
    ],
)
def test_a_certificate_is_of_a_fish_whose_grade_is_settled(made, words, wanted):
    done = run("print", "certificate", "tosai_kohaku", LOT, "--out", made / "no.html", *words)
    assert done.exit_code == 2
    assert wanted in done.output
    assert not (made / "no.html").exists()


def test_labels_and_lists_have_every_fish_once_where_it_goes(made):
    with LOT.open(encoding="utf-8", newline="") as file:
        ponds = {row["fish"]: row["pond"] for row in csv.DictReader(file)}
    labels = sheet(made, "labels").read_text(encoding="utf-8")
    found = dict(re.findall(r'<bdi>([^<]+)</bdi>.*?class="where">([^<]+)<', labels))
    assert found == ponds
    for what in ("lists", "ponds"):
        text = sheet(made, what).read_text(encoding="utf-8")
        parts = re.findall(r"<h2>(.*?) <span>(\d+) fish.*?(?=<h2>|</main>)", text, re.DOTALL)
        assert {name: int(count) for name, count in parts} == {
            name: list(ponds.values()).count(name) for name in set(ponds.values())
        }
        assert sorted(re.findall(r'scope="row"><bdi>([^<]+)', text)) == sorted(ponds)
    assert sheet(made, "lists", "--by", "bloodline").read_text(encoding="utf-8").count("<h2>") > 1


def test_a_page_for_each_pond_begins_on_a_sheet_of_its_own(browser, made):
    shown = Page(browser, 1000, 1400, script=False, touch=False).open(sheet(made, "ponds"))
    pages = pypdf.PdfReader(shown.printed(made / "ponds.pdf")).pages
    texts = ["".join(normalize("NFKC", one.extract_text()).split()) for one in pages]
    begins = [re.findall(r"(longpond|millpond|upperpond|Mill)\d+fish", text) for text in texts]
    assert [len(one) for one in begins if one] == [1, 1, 1], texts[0][:200]


@pytest.mark.parametrize("what", ["customer", "certificate", "labels", "lists", "ponds"])
def test_nothing_stands_in_the_way_of_a_screen_reader_or_weak_eyes(browser, made, what):
    # axe-core is a public checker of the Web Content Accessibility Guidelines, here with the contrast of level AAA.
    if what == "customer":
        path = made / "axe.html"
        assert grade("--out", path, "--for", "customer").exit_code == 0
    else:
        path = sheet(made, what, *(("--fish", "L09") if what == "certificate" else ()))
    page = Page(browser, 820, 1000, script=True, touch=False).open(path)
    page.run(files("axe_core_python").joinpath("axe.min.js").read_text(encoding="utf-8") + ";0")
    answer = page.run(
        "axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'best-practice']})"
        ".then((found) => JSON.stringify(found.violations.map((one) => [one.id, one.nodes[0].html.slice(0, 200)])))"
    )
    assert json.loads(answer) == []


NETTED = """standard "try" edition 1 variety kohaku
trait net_clarity "clearness of the net" as scale none < faint < clear < crisp
trait blue_tone "tone of the blue" as choice of (black_blue, dark, mid, light)
section net "net" worth 100
points clear by net_clarity: none gives 0, faint gives 3, clear gives 8, crisp gives 10
grade a if score at least 50
grade b otherwise
sample "a crisp net"
  with net_clarity crisp, blue_tone light
  comes out a
sample "nothing of the looks"
  with length 12 cm
  scores from 0 to 100
"""


def test_a_sample_that_can_be_seen_is_drawn_in_the_handbook():
    standard = read_standard(NETTED)
    blocks = blocks_of(Subject(standard.grader, run_samples(standard.grader), standard.seal, ()))
    (drawn,) = re.findall(r'<div class="portrait">(.*?)</div>', html_of(blocks), re.DOTALL)
    assert "a crisp net from above" in drawn and "#8fa9c0" in drawn
    assert drawn in fish_drawing(
        appearance_of(standard.traits, standard.rules.samples[0].record),
        title="a crisp net from above",
        key="example-1-fish",
    )
    assert "A koi seen from above." in markdown_of(blocks)


@pytest.mark.parametrize(
    ("parts", "words"),
    [
        (["29.36", "48.58"], ["29.3", "48.6"]),  # 77.94 is told as 77.9
        (["47.96"], ["47.9"]),
        (["24.98", "10.05"], ["24.9", "10.1"]),  # no part reaches a whole number where another can be raised
        (["32.00", "52.00"], ["32", "52"]),
    ],
)
def test_the_points_of_sections_are_told_so_that_they_add_up(parts, words):
    sure = [(Decimal(one), Decimal(one)) for one in parts]
    whole = sum(map(Decimal, parts))
    told_parts = parts_in_tenths(sure, (whole, whole))
    assert told_parts == words
    assert sum(map(Decimal, told_parts)) == Decimal(in_tenths(whole))


def test_every_card_adds_up(page):
    cards = re.findall(r'class="score"><b>([0-9.]+)</b>.*?<table class="sections">(.*?)</table>', page, re.DOTALL)
    assert len(cards) > 50
    for score, table in cards:
        points = re.findall(r"<td>([0-9.]+) of", table)
        if len(points) == 4:  # what is not sure has two ends
            assert sum(map(Decimal, points)) == Decimal(score), (score, points)
