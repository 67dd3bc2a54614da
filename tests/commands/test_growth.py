"""`koirules growth`: how fish grow, from looks at the same fish."""

import json
import re

import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main

RULES = """standard "Lantern Bay, grown" edition 1 variety kohaku
SETTINGS
grade keep if girth_ratio grown to 65 cm at least 0.2
grade cull otherwise
"""


@pytest.fixture
def rules(tmp_path):
    path = tmp_path / "grown.koi"
    path.write_text(RULES.replace("SETTINGS\n", ""), encoding="utf-8")
    return path


def run(*words):
    return CliRunner().invoke(main, ["growth", *map(str, words)])


def looks(tmp_path, fish, b=3.1, girth_b=3.1):
    """Invented fish that grow by W = a L^b exactly, each stout or slim in its own way."""
    rows = ["fish,date,length,weight,girth"]
    for number in range(fish):
        stout, first, second = 0.9 + number / 50, 14 + number, 30 + 3 * number
        for day, length in (("2026-06-01", first), ("2027-06-01", second)):
            weight = stout * 0.015 * first**3 * (length / first) ** b
            girth = stout * 0.5 * first * (length / first) ** ((girth_b - 1) / 2)
            rows.append(f"F{number},{day},{length},{weight:.6f},{girth:.6f}")
    path = tmp_path / "looks.csv"
    path.write_text("\n".join(rows) + "\n", encoding="utf-8")
    return path


def test_it_finds_what_fish_grow_by_and_gives_the_line_to_paste(rules, tmp_path):
    told = run(rules, looks(tmp_path, 24))
    assert told.exit_code == 0
    assert told.output.startswith("24 pairs of looks at 24 fish.\n")
    assert re.search(r"by weight +3\.100, standard error 0\.000, from 24 pairs", told.output)
    (line,) = [line for line in told.output.splitlines() if line.startswith("setting ")]
    assert line.startswith("setting growth_exponent = 3.1 ")
    standard = koirules.read_standard(RULES.replace("SETTINGS", line))
    assert "growth_exponent = 3.1;" in standard.growth_note
    assert "are few" not in told.output


def test_the_same_comes_as_data(rules, tmp_path):
    told = run(rules, looks(tmp_path, 5), "--json")
    data = json.loads(told.output)
    assert data["pairs"] == data["fish"] == 5
    assert data["growth_exponent_by_weight"]["value"] == pytest.approx(3.1, abs=1e-6)
    assert data["growth_exponent_by_weight"]["low"] < 3.1 < data["growth_exponent_by_weight"]["high"]
    assert data["growth_white_share_by_pattern"] is None
    assert len(data["settings"]) == 1
    assert any("5 pairs are few" in caution for caution in data["cautions"])


def test_maps_of_fish_that_grew_stouter_say_what_share_of_new_skin_is_white(rules, tmp_path):
    rows = ["fish,date,length,girth,hi_patches"]
    for number in range(6):
        first, second, b, s = 14 + number, 45 + 3 * number, 3.4, 0.8
        q = (second / first) ** ((b - 3) / 2)
        for day, length, times in (("2026-06-01", first, 1.0), ("2027-06-01", second, q**-s)):
            girth = 0.5 * first * (length / first) ** ((b - 1) / 2)
            reach = f"left {60 * times:.3f} right {50 * times:.3f}"
            sashi = " sashi 2" if length == first else ""
            front = 10 if length == first else 12
            rows.append(f"F{number},{day},{length},{girth:.6f},{front} to 40 {reach}{sashi}; 50 to 70 {reach}")
    path = tmp_path / "maps.csv"
    path.write_text("\n".join(rows) + "\n", encoding="utf-8")
    told = run(rules, path)
    assert re.search(r"by pattern +0\.800, standard error 0\.000, from 6 pairs", told.output), told.output
    line = next(line for line in told.output.splitlines() if line.startswith("setting growth_white_share"))
    assert line.startswith("setting growth_white_share = 0.8 ")
    assert "s: growth_white_share = 0.8)" in koirules.read_standard(RULES.replace("SETTINGS", line)).growth_note
    path.write_text(path.read_text(encoding="utf-8").replace("sashi 2", "sashi 2 thin"), encoding="utf-8")
    assert "Nothing is said of the new skin" in " ".join(run(rules, path).output.split())


def test_maps_alone_say_by_how_much_white_grows_in_from_the_sides(rules, tmp_path):
    rows = ["fish,date,length,hi_patches,hi_cover"]
    for number in range(6):
        first, second, w = 12 + number, 45 + 3 * number, 0.16
        for day, length, cover in (("2026-06-01", first, 30), ("2027-06-01", second, 10)):
            reach = f"left {60 * (length / first) ** -w:.3f} right {50 * (length / first) ** -w:.3f}"
            rows.append(f"F{number},{day},{length},10 to 40 {reach}; 50 to 70 {reach},{cover} %")
    path = tmp_path / "maps.csv"
    path.write_text("\n".join(rows) + "\n", encoding="utf-8")
    data = json.loads(run(rules, path, "--json").output)
    assert data["growth_white_sides_by_pattern"]["value"] == pytest.approx(0.16, abs=1e-4)
    assert data["growth_white_sides_by_eye"] is data["growth_exponent_by_weight"] is None
    assert data["settings_by_share"] == []
    told = run(rules, path)
    assert told.exit_code == 0
    line = next(line for line in told.output.splitlines() if line.startswith("setting"))
    assert line.startswith("setting growth_white_sides = 0.16 ")
    assert "w: growth_white_sides = 0.16)" in koirules.read_standard(RULES.replace("SETTINGS", line)).growth_note


def test_maps_and_red_by_eye_that_do_not_agree_are_told(rules, tmp_path):
    rows = ["fish,date,length,hi_patches,hi_cover"]
    for number in range(8):
        first, second = 12 + number, 45 + 3 * number
        for day, length in (("2026-06-01", first), ("2027-06-01", second)):
            reach, eye = 60 * (length / first) ** -0.1, 40 * (length / first) ** -0.3
            rows.append(
                f"F{number},{day},{length},10 to 40 left {reach:.3f} right {reach:.3f},"
                if number % 2
                else f"F{number},{day},{length},,{eye:.4f} %"
            )
    path = tmp_path / "looks.csv"
    path.write_text("\n".join(rows) + "\n", encoding="utf-8")
    told = run(rules, path).output
    assert "Maps and the red that was judged by eye do not agree on w" in " ".join(told.split())
    assert "setting growth_white_sides = 0.1 " in told


def test_too_few_pairs_are_told_and_nothing_is_fitted(rules, tmp_path):
    told = run(rules, looks(tmp_path, 2))
    assert told.exit_code == 2
    assert "There are 2 pairs of looks" in told.output
    assert "[too-few-looks]" in told.output
    once = tmp_path / "once.csv"
    once.write_text("fish,length,weight\na,20,100\nb,30,400\n", encoding="utf-8")
    assert "There is no pair of looks" in run(rules, once).output


def test_fish_that_are_no_longer_are_left_out_and_said(rules, tmp_path):
    path = looks(tmp_path, 4)
    with path.open("a", encoding="utf-8") as file:
        file.write("G,2026-06-01,20,100,10\nG,2027-06-01,20,110,10.2\n")
    assert "4 pairs of looks at 5 fish; 1 pair left out, the fish being no longer." in run(rules, path).output


def test_weight_and_girth_that_do_not_agree_are_told(rules, tmp_path):
    told = run(rules, looks(tmp_path, 6, b=3.4, girth_b=2.9)).output
    assert "Weight and girth do not agree on b" in told
    assert "setting growth_exponent = 3.4 " in told


def test_a_coefficient_that_no_fish_grows_by_gives_no_setting(rules, tmp_path):
    told = run(rules, looks(tmp_path, 6, b=5, girth_b=5))
    assert "beyond what it can be (2 to 4)" in told.output
    assert "setting growth_exponent" not in told.output


def test_a_file_that_cannot_be_read_is_told_as_everywhere(rules, tmp_path):
    path = looks(tmp_path, 3)
    path.write_text(path.read_text(encoding="utf-8").replace("2026-06-01", "yesterday"), encoding="utf-8")
    told = run(rules, path)
    assert told.exit_code == 2
    assert "not-a-day" in told.output


def test_red_by_eye_without_maps_says_by_how_much_white_grows_in_from_the_sides(rules, tmp_path):
    path = looks(tmp_path, 6)
    head, *rows = path.read_text(encoding="utf-8").splitlines()
    covered = [f"{row},{40 * float(row.split(',')[2]) ** -0.18:.6f}" for row in rows]
    path.write_text("\n".join([f"{head},hi_cover", *covered]) + "\n", encoding="utf-8")
    data = json.loads(run(rules, path, "--json").output)
    assert data["growth_white_sides_by_eye"]["value"] == pytest.approx(0.18, abs=1e-5)
    assert data["growth_white_sides_by_eye"]["pairs"] == 6
    told = run(rules, path).output
    assert "setting growth_white_sides = 0.18 " in told
    koirules.read_standard(RULES.replace("SETTINGS", next(x for x in told.splitlines() if "growth_white_sides =" in x)))
