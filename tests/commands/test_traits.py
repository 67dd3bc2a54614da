"""`koirules traits`: a short list, a search, one trait in full with its drawing."""

import json
from pathlib import Path
from xml.etree import ElementTree

import pytest
from click.testing import CliRunner

from koirules.commands import main
from koirules.plugins import load_registry, registry_with
from koirules.report.trait_drawing import has_drawing, trait_drawing
from koirules.vocabulary.kinds import Label, Scale
from koirules.vocabulary.traits import Trait, Vocabulary
from tests.plugins.invented import Gives

KOHAKU = load_registry().varieties["kohaku"].traits


def run(*words):
    result = CliRunner().invoke(main, ["traits", *words])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def test_the_list_begins_with_what_a_standard_reads_and_fits_a_terminal(tmp_path):
    lines = run("kohaku").output.splitlines()
    assert "153 traits" in lines[0]
    assert {"outline", "spine", "kiwa", "shiroji"} <= {line.split()[0] for line in lines[1:-1]} <= KOHAKU.keys()
    assert len(lines) < 24
    assert max(map(len, lines)) <= 90
    rules = tmp_path / "two.koi"
    rules.write_text(
        'standard "t" edition 1 variety kohaku\ngrade a if kiwa is razor\ngrade b otherwise', encoding="utf-8"
    )
    assert [line.split()[0] for line in run(str(rules)).output.splitlines()[1:-1]] == ["kiwa"]


def test_a_variety_of_a_plugin_lists_its_own_traits_beside_those_to_begin_with(monkeypatch):
    own = (Trait("shine_cover", "share that shines", Scale(("some", "all"))), Trait("maker", "maker", Label()))
    found = registry_with(Gives(Vocabulary("hill", "hill koi", own, ("shared",))))
    monkeypatch.setattr("koirules.commands.traits.registry", lambda: found)
    lines = run("hill").output.splitlines()
    begins = lines.index("Its own, which other varieties lack (1):")
    assert [line.split()[0] for line in lines[begins + 1 : -1]] == ["shine_cover"]
    assert "spine" in {line.split()[0] for line in lines[1:begins]}
    assert "Its own" not in run("kohaku").output


def test_the_list_of_names_has_every_name_once_and_fits_a_terminal():
    output = run("kohaku", "--names").output
    names = [name for line in output.splitlines() if line.startswith("  ") for name in line.replace(",", " ").split()]
    assert sorted(names) == sorted(KOHAKU)
    assert len(output.splitlines()) < 45
    assert max(map(len, output.splitlines())) <= 80


def test_a_search_finds_by_name_title_and_other_languages():
    assert [line.split()[0] for line in run("kohaku", "--search", "tsuya").output.splitlines()] == ["lustre"]
    assert "odome " in run("kohaku", "--search", "尾止め").output
    found = run("kohaku", "--search", "no such thing")
    assert found.exit_code == 2
    assert "lists all names" in found.output


def test_one_trait_is_told_in_full():
    output = run("kohaku", "--about", "odome").output
    for words in ("white before the tail", "from 0 to 100", "best in between", "hi_patches", "尾止め"):
        assert words in output
    wrong = run("kohaku", "--about", "odom")
    assert wrong.exit_code == 2
    assert 'Did you mean "odome"?' in wrong.output


def test_a_drawing_says_where_it_is(tmp_path):
    path = tmp_path / "odome.svg"
    assert run("kohaku", "--about", "odome", "--drawing", str(path)).exit_code == 0
    words = "".join(ElementTree.fromstring(path.read_text(encoding="utf-8")).itertext())  # noqa: S314
    assert "tail stop" in words


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("--drawing", "x.svg"), "--drawing needs --about TRAIT"),
        (("--about", "health", "--drawing", "x.svg"), "no drawing for health"),
        (("--about", "odome", "--drawing", "x.png"), "end in .svg"),
        (("--all", "--json"), "cannot go together"),
    ],
)
def test_what_cannot_be_is_said(words, told, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    result = run("kohaku", *words)
    assert result.exit_code == 2
    assert told in result.output
    assert not list(Path.cwd().iterdir())


def test_every_drawing_is_of_a_trait_and_stays_in_its_frame():
    drawn = [name for name in KOHAKU if has_drawing(name)]
    assert len(drawn) > 20
    for name in drawn:
        root = ElementTree.fromstring(trait_drawing([name], name))  # noqa: S314
        left, top, wide, tall = map(float, root.get("viewBox").split())
        for words in root.iter("{http://www.w3.org/2000/svg}text"):
            x, long = float(words.get("x")), 15 * len(words.text)
            if words.get("text-anchor") == "start":
                assert x + long <= left + wide, name
            elif words.get("text-anchor") == "end":
                assert x - long >= left, name
            assert top < float(words.get("y")) < top + tall


def test_where_a_trait_comes_from_is_told():
    practice = "Meaning: common practice, no source. Range and words: from memory."
    run = CliRunner().invoke
    assert practice in " ".join(run(main, ["traits", "kohaku", "--about", "kiwa"]).output.split())
    assert "CIEDE2000 (ISO/CIE 11664-6)" in run(main, ["traits", "kohaku", "--about", "hi_evenness"]).output
    told = json.loads(run(main, ["traits", "kohaku", "--json"]).output)
    assert all("common practice" in one["source"] or "from memory" in one["source"] for one in told)
    whole = " ".join(run(main, ["traits", "kohaku", "--all"]).output.split())
    assert f"{practice} (" in whole
    assert "Froese 2006" in whole
