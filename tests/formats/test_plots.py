"""The plot of a batch: its bars are the points, its lines those of the grades, and no text in it acts."""

import importlib.util
import re
from decimal import Decimal
from itertools import pairwise
from pathlib import Path
from xml.etree import ElementTree

import pytest
from attrs import evolve
from click.testing import CliRunner
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PIL import Image

from koirules import load_standard
from koirules.commands import main
from koirules.explain.score_lines import GradeLine
from koirules.records.records import read_records
from koirules.report import plot_png
from koirules.report.page_words import is_held
from koirules.report.plot import PAINTS
from koirules.report.plot_groups import groups
from koirules.report.plots import MOST_FISH, write_plot
from tests.formats.browser import Page, running_browser
from tests.formats.test_html_results import ACTING, WHOLE, everywhere, scored
from tests.formats.test_page_in_browser import LOT, ROUNDS, TUB
from tests.formats.test_results import OPEN, SETTLED, result

SVG = "{http://www.w3.org/2000/svg}"


def read(path):
    return ElementTree.parse(path).getroot()  # noqa: S314 - our own file


def plotted(tmp_path, results=(SETTLED, OPEN), about=WHOLE):
    path = tmp_path / "plot.svg"
    assert write_plot(path, list(results), about) is None
    return read(path)


def paths(root):
    """Each area by what it shows."""
    found = {}
    for path in root.iter(f"{SVG}path"):
        title = path.find(f"{SVG}title")
        if title is not None:
            found[title.text] = [tuple(map(float, one.split())) for one in re.split("[ML]", path.get("d")[:-1])[1:]]
    return found


def words(root):
    return [text.text for text in root.iter(f"{SVG}text")]


def scale(root):
    """From how high it is drawn to a score, by the numbers at the side."""
    ticks = {
        int(one.text): float(one.get("y"))
        for one in root.iter(f"{SVG}text")
        if re.fullmatch(r"\d+", one.text) and one.get("text-anchor") == "end" and one.get("transform") is None
    }
    return lambda y: (ticks[0] - y) / (ticks[0] - ticks[100]) * 100


@pytest.fixture(scope="module")
def lot():
    standard = load_standard("tosai_kohaku")
    return standard, [standard.grade_record(record) for record in read_records(LOT, standard.traits).records]


def test_the_bars_are_the_points_of_each_fish_section_by_section(tmp_path, lot):
    standard, results = lot
    root = plotted(tmp_path, results, evolve(WHOLE, grades=standard.grade_lines))
    score_at = scale(root)
    areas = paths(root)
    for group in groups(results, evolve(WHOLE, grades=standard.grade_lines)):
        under = [Decimal(0)] * len(group.fish)
        for name, section in results[0].sections.items():
            over = [low + fish.sections[name].low for low, fish in zip(under, group.fish, strict=True)]
            drawn = areas[f"{section.title}: {group.title}"]
            upper, lower = drawn[: len(drawn) // 2 : 2], drawn[len(drawn) // 2 :: 2][::-1]
            assert [score_at(y) for _, y in upper] == pytest.approx([float(one) for one in over], abs=0.01)
            assert [score_at(y) for _, y in lower] == pytest.approx([float(one) for one in under], abs=0.01)
            under = over


def test_fish_stand_best_first_in_groups_with_a_cut_between_them(tmp_path, lot):
    standard, results = lot
    about = evolve(WHOLE, grades=standard.grade_lines)
    found = groups(results, about)
    assert [(group.title, len(group.fish)) for group in found] == [
        ("keep", 10),
        ("not settled (keep or hold)", 2),
        ("not settled (keep or pond grade)", 1),
        ("hold", 15),
        ("not settled (hold or sell)", 2),
        ("not settled (hold or sell or pond grade)", 3),
        ("not settled (hold or pond grade)", 1),
        ("sell", 22),
        ("pond grade", 11),
        ("out of the lot", 5),
    ]
    root = plotted(tmp_path, results, about)
    assert [f"{group.title}, {len(group.fish)}" for group in found] == [word for word in words(root) if ", " in word][
        -len(found) :
    ]
    upright = [one.text for one in root.iter(f"{SVG}text") if one.get("transform")]
    assert upright == [fish.fish for group in found for fish in group.fish]
    heavy = [one for one in root.iter(f"{SVG}line") if one.get("stroke-width") == "2"]
    assert len(heavy) == len(found) - 1


def test_a_fish_that_a_fault_holds_down_has_a_bar_over_it(tmp_path, lot):
    standard, results = lot
    about = evolve(WHOLE, grades=standard.grade_lines)
    root = plotted(tmp_path, results, about)
    held = [one for one in results if is_held(one)]
    # Told from its lines alone: the score can reach the line of a better grade, and the fish has another one.
    lines = [(line.name, line.score) for line in standard.grade_lines if line.score is not None]
    reached = {one.fish: next((name for name, score in lines if one.score_high >= score), one.grade) for one in results}
    assert {one.fish for one in held} <= {one.fish for one in results if one.grade and reached[one.fish] != one.grade}
    assert "L17" in {one.fish for one in held}
    bars = [one for one in root.iter(f"{SVG}line") if one.get("stroke-width") == "3"]
    assert len(bars) == len(held)
    assert any("a bar over a fish: held down by a fault" in word for word in words(root))


def test_the_lines_of_the_grades_stand_at_their_scores(tmp_path, lot):
    standard, results = lot
    root = plotted(tmp_path, results, evolve(WHOLE, grades=standard.grade_lines))
    score_at = scale(root)
    broken = [one for one in root.iter(f"{SVG}line") if one.get("stroke-dasharray")]
    assert sorted(round(score_at(float(one.get("y1"))), 2) for one in broken) == [35, 49, 66, 76]
    assert {"keep 76", "hold 66", "sell 49", "pond grade 35"} <= set(words(root))


def test_lines_that_lie_close_have_names_that_do_not(tmp_path):
    grades = tuple(GradeLine(f"g{n}", f"g{n}", Decimal(50 - n)) for n in range(6))
    root = plotted(tmp_path, [scored("40", grade="g0")], evolve(WHOLE, grades=grades))
    places = sorted(float(one.get("y")) for one in root.iter(f"{SVG}text") if re.fullmatch(r"g\d \d+", one.text))
    assert all(below - above >= 17 for above, below in pairwise(places))


def test_what_may_still_come_of_a_fish_stands_on_top(tmp_path):
    root = plotted(tmp_path, [scored("30", "45"), scored("60")])
    score_at = scale(root)
    (name,) = [name for name in paths(root) if name.startswith("what may still")]
    assert sorted({round(score_at(y)) for _, y in paths(root)[name]}) == [30, 45, 60]


def test_rounds_make_the_cut(tmp_path):
    for name, text in (("rules.koi", ROUNDS), ("tub.csv", TUB)):
        (tmp_path / name).write_text(text, encoding="utf-8")
    run = CliRunner().invoke(
        main, ["grade", str(tmp_path / "rules.koi"), str(tmp_path / "tub.csv"), "--plot", str(tmp_path / "plot.svg")]
    )
    assert run.exit_code == 0, run.output
    told = words(read(tmp_path / "plot.svg"))
    assert told[-3:] == ["stays: places in the house, 1", "leaves: places in the house, 1", "leaves: first look, 2"]


def test_a_plot_says_in_words_what_it_shows_and_which_settings_were_changed(tmp_path):
    root = plotted(tmp_path)
    assert root.find(f"{SVG}title").text == "lot.csv by Lantern Bay house standard, edition 2026-1"
    told = root.find(f"{SVG}desc").text
    assert told == (
        "Points of 2 fish by section. 1 not settled (keep or hold); 1 hold. Grade lines: keep from 75; hold from 60."
    )
    assert any("changed for this run: grown_length = 70 cm" in word for word in words(root))


@given(text=st.text(min_size=1) | st.sampled_from(ACTING))
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
def test_any_text_stays_a_text(tmp_path, text):
    def shape(root):
        return [(one.tag, sorted(one.keys())) for one in root.iter()]

    assert shape(plotted(tmp_path, *everywhere(text))) == shape(plotted(tmp_path, *everywhere("x")))


@pytest.mark.parametrize("number", [1, 2, 150, 2_000])
def test_one_fish_or_thousands_fit(tmp_path, number):
    results = [evolve(scored(str(n % 100), str(n % 100 + 1)), fish=f"K{n:04}") for n in range(number)]
    root = plotted(tmp_path, results)
    xs = [x for outline in paths(root).values() for x, _ in outline]
    assert 64 <= min(xs) < max(xs) <= 1050
    assert float(root.get("width")) == 1200
    # Bars that are narrower than the lines between them have none, which would cover them.
    assert len(list(root.iter(f"{SVG}line"))) < 1_000
    assert (tmp_path / "plot.svg").stat().st_size < 200_000


def test_a_png_shows_what_a_browser_makes_of_the_svg(tmp_path, lot):
    standard, results = lot
    about = evolve(WHOLE, grades=standard.grade_lines)
    root = plotted(tmp_path, results, about)
    assert write_plot(tmp_path / "plot.png", results, about) is None
    wide, high = (int(float(root.get(side))) for side in ("width", "height"))
    with running_browser() as browser:
        page = Page(browser, wide, high, script=True, touch=False).open(tmp_path / "plot.svg")
        page.picture(tmp_path / "browser.png", whole=False)
        assert (page.told, page.requests) == ([], [])
    ours = Image.open(tmp_path / "plot.png")
    assert ours.size == (2 * wide, 2 * high)
    theirs = Image.open(tmp_path / "browser.png").convert("RGB")
    paints = {tuple(bytes.fromhex(paint[1:])) for paint in PAINTS}
    seen = set()
    for outline in paths(root).values():
        for (x1, y), (x2, _), (_, low) in zip(outline[::2], outline[1::2], reversed(outline[::2]), strict=False):
            middle = (x1 + x2) / 2, (y + low) / 2
            pixel = theirs.getpixel(tuple(int(one) for one in middle))
            if pixel in paints and low - y > 4:
                assert ours.getpixel(tuple(round(2 * one) for one in middle)) == pixel
                seen.add(pixel)
    assert len(seen) == 4


def lightness(colour):
    import colour as science

    return science.XYZ_to_Lab(science.sRGB_to_XYZ(colour))


@pytest.mark.filterwarnings("ignore:.*tritanomaly")
def test_neighbouring_colours_can_be_told_apart_by_weak_eyes_and_in_grey():
    # Machado, Oliveira and Fernandes (2009) say how colours look to those who lack a kind of cone; colour-science has
    # their matrices. 2.3 is taken as a just noticeable difference; neighbours are to be far beyond it.
    import colour as science
    import numpy as np

    paints = [np.array([int(paint[i : i + 2], 16) / 255 for i in (1, 3, 5)]) for paint in PAINTS]
    for kind in ("Protanomaly", "Deuteranomaly", "Tritanomaly"):
        matrix = science.matrix_cvd_Machado2009(kind, 1.0)
        looks = [lightness(np.clip(science.cctf_encoding(matrix @ science.cctf_decoding(one)), 0, 1)) for one in paints]
        apart = [float(science.delta_E(one, other)) for one, other in pairwise(looks)]
        assert min(apart) > 30, (kind, apart)
    grey = [lightness(one)[0] for one in paints]
    assert all(abs(one - other) > 20 for one, other in pairwise(grey)), grey


@pytest.mark.parametrize(
    ("name", "code"), [("plot.pdf", "unknown-ending"), ("plot", "unknown-ending"), ("none/plot.svg", "no-such-folder")]
)
def test_a_path_that_cannot_be_is_said_before_anything_is_graded(tmp_path, name, code):
    run = CliRunner().invoke(main, ["grade", "no_such.koi", str(LOT), "--plot", str(tmp_path / name)])
    assert run.exit_code == 2
    assert f"[{code}]" in run.stderr
    assert list(tmp_path.iterdir()) == []


def test_what_cannot_be_plotted_is_said(tmp_path):
    path = tmp_path / "plot.svg"
    assert write_plot(path, [result(sections={})], WHOLE).code == "nothing-to-plot"
    assert "There is no record" in write_plot(path, [], WHOLE).cause
    assert write_plot(path, [SETTLED] * (MOST_FISH + 1), WHOLE).code == "too-many-fish"
    assert list(tmp_path.iterdir()) == []


def test_a_png_without_the_library_says_what_to_install(tmp_path, monkeypatch):
    monkeypatch.setattr(importlib.util, "find_spec", lambda _: None)
    problem = write_plot(tmp_path / "plot.png", [SETTLED], WHOLE)
    assert (problem.code, problem.warning) == ("extra-missing", False)
    assert write_plot(tmp_path / "plot.svg", [SETTLED], WHOLE) is None


def test_letters_that_no_font_has_are_named_and_the_plot_is_written(tmp_path, monkeypatch):
    monkeypatch.setattr(plot_png, "_FONTS", ())
    plot_png._font.cache_clear()
    run = CliRunner().invoke(
        main, ["grade", "tosai_kohaku", str(LOT), "--plot", str(tmp_path / "plot.png"), "--language", "ja"]
    )
    plot_png._font.cache_clear()
    assert run.exit_code == 0, run.output
    assert "[letters-not-drawn]" in run.stderr and "立" in run.stderr
    assert "Wrote" in run.output and (tmp_path / "plot.png").exists()


def test_whole_files_are_not_plotted(tmp_path):
    run = CliRunner().invoke(main, ["grade", "tosai_kohaku", str(LOT), str(LOT), "--plot", str(tmp_path / "plot.svg")])
    assert run.exit_code == 2
    assert "[not-of-whole-files]" in run.stderr


def test_a_plot_never_takes_the_place_of_what_was_given(tmp_path):
    (tmp_path / "rules.svg").write_text(Path("rulesets/tosai_kohaku/standard.koi").read_text(encoding="utf-8"))
    run = CliRunner().invoke(
        main, ["grade", str(tmp_path / "rules.svg"), str(LOT), "--plot", str(tmp_path / "rules.svg")]
    )
    assert run.exit_code == 2
    assert "is what was given" in run.stderr
