"""What is installed, from where, and what had to be left out."""

import json
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import inputs, main
from koirules.hooks import RecordReader, ResultWriter, Subcommand
from koirules.plugins import registry_with
from koirules.vocabulary.kinds import Count
from koirules.vocabulary.measures import Formula
from koirules.vocabulary.traits import Addition, Trait
from tests.plugins.invented import Gives, lace


@pytest.fixture
def plugins(tmp_path, monkeypatch):
    good, broken = tmp_path / "good.koi", tmp_path / "broken.koi"
    good.write_text(
        'standard "Lantern Bay, lace" edition 7 variety lace with glitter stage nisai\ngrade a otherwise\n'
        "what stands below the header is not read",
        encoding="utf-8",
    )
    broken.write_text("grade a otherwise\n", encoding="utf-8")
    skin = lace(Trait("rows", "rows", Count(9)), name="glitter", is_skin=True)
    gives = Gives(lace(), skin, rulesets={"lace_house": good, "lace_broken": broken}, name="invented-lace 1.2")
    registry = registry_with(gives, Gives("no vocabulary", name="bad"))
    monkeypatch.setattr(inputs, "load_registry", lambda: registry)
    return registry


def run(*words):
    result = CliRunner().invoke(main, words)
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


@pytest.mark.usefixtures("plugins")
def test_each_variety_skin_and_rule_set_is_listed_with_its_source():
    result = run("plugins")
    assert result.exit_code == 0
    lines = [line.split() for line in result.stdout.splitlines()]
    assert ["lace", "1", "trait", "invented-lace", "1.2"] in lines
    assert ["glitter", "1", "trait", "invented-lace", "1.2"] in lines
    row = "lace with glitter nisai lace_house Lantern Bay, lace, edition 7 invented-lace 1.2"
    assert row.split() in lines
    assert "`koirules check lace_broken` says why" in result.stdout
    assert "plugin-wrong-type" in result.stderr


def test_as_data_they_are_the_same(plugins):
    data = json.loads(run("plugins", "--json").stdout)
    assert [row["name"] for row in data["varieties"]] == list(plugins.varieties)
    assert [row["name"] for row in data["skins"]] == ["glitter"]
    by_name = {row["name"]: row for row in data["rule_sets"]}
    assert set(by_name) == set(plugins.rulesets)
    house = by_name["lace_house"]
    assert (house["variety"], house["stage"], house["edition"]) == ("lace with glitter", "nisai", "7")
    assert Path(house["file"]).name == "good.koi"
    assert by_name["lace_broken"]["variety"] == ""
    assert [(row["plugin"], row["code"]) for row in data["left_out"]] == [("plugin bad", "plugin-wrong-type")]


def test_a_rule_set_that_is_based_on_another_has_its_variety_and_stage(plugins, tmp_path):
    (tmp_path / "broken.koi").write_text(
        'standard "Tin Bucket, lace" edition 1\n  based on "good.koi" edition 7\n', encoding="utf-8"
    )
    (tmp_path / "good.koi").write_text(
        'standard "Lantern Bay, lace" edition 7 variety lace stage nisai\ngrade a otherwise\n', encoding="utf-8"
    )
    assert plugins.rulesets["lace_broken"] == tmp_path / "broken.koi"
    one = {row["name"]: row for row in json.loads(run("plugins", "--json").stdout)["rule_sets"]}["lace_broken"]
    assert (one["title"], one["variety"], one["stage"], one["edition"]) == ("Tin Bucket, lace", "lace", "nisai", "1")


def test_what_ships_in_the_box_is_listed_with_the_stage_of_its_rule_set():
    data = json.loads(run("plugins", "--json").stdout)
    box = {row["name"]: row for row in data["rule_sets"]}["tosai_kohaku"]
    assert (box["variety"], box["stage"]) == ("kohaku", "tosai")


def test_what_else_plugins_give_is_listed_too(monkeypatch):
    gives = Gives(
        subcommands=[
            Subcommand("ponds", "Count the ponds.", "ponds:command"),
            Subcommand("grade", "Ours.", "ponds:grade"),
        ],
        readers=[RecordReader(".dbf", "table of long ago", print)],
        writers=[ResultWriter(".dbf", "table of long ago", print)],
        additions=[Addition("shared", (Trait("tone", "tone", Count(9)),), phrases={"no tone": "tone is 0"})],
        name="invented-lace 1.2",
    )
    registry = registry_with(gives)
    monkeypatch.setattr(inputs, "load_registry", lambda: registry)
    lines = [line.split() for line in run("plugins").stdout.splitlines()]
    assert ["command", "ponds", "Count", "the", "ponds.", "invented-lace", "1.2"] in lines
    assert ["records", ".dbf", "table", "of", "long", "ago", "invented-lace", "1.2"] in lines
    assert ["results", ".dbf", "table", "of", "long", "ago", "invented-lace", "1.2"] in lines
    assert ["addition", "shared", "1", "trait,", "1", "phrase", "invented-lace", "1.2"] in lines
    data = json.loads(run("plugins", "--json").stdout)
    assert [one["name"] for one in data["others"]] == ["ponds", ".dbf", ".dbf", "shared"]
    assert [one["code"] for one in data["left_out"]] == ["plugin-name-taken"]


def test_formulas_that_say_nothing_or_do_not_hold_are_told(monkeypatch):
    rows, tone = Trait("rows", "rows", Count(9)), Trait("tone", "tone of the net", Count(9))
    idle = Gives(lace(rows, tone, measures=(Formula("tone", "1"),)), name="idle 1")
    odd = Gives(lace(rows, tone, name="mesh", measures=(Formula("tone", "rows / 2"),)), name="odd 2")
    added = Gives(
        additions=[Addition("mesh", (Trait("knots", "knots", Count(9)),), (Formula("knots", "2"),))], name="more 3"
    )
    monkeypatch.setattr(inputs, "load_registry", lambda: registry_with(idle, odd, added))
    told = run("plugins")
    assert told.exit_code == 0
    assert (
        'warning: plugin idle 1\n  The measure of "tone" was left out: its formula "1" names no trait.' in told.stderr
    )
    assert 'warning: plugin odd 2\n  The formula "rows / 2" does not give "tone"' in told.stderr
    monkeypatch.setattr(inputs, "load_registry", lambda: registry_with(Gives(lace(rows, tone, name="mesh")), added))
    left_out = json.loads(run("plugins", "--json").stdout)["left_out"]
    assert [(row["plugin"], row["code"]) for row in left_out] == [("plugin more 3", "formula-of-no-trait")]


def test_phrases_that_cannot_be_read_are_told(monkeypatch):
    odd = Gives(lace(phrases={"like a veil": "net is faintt"}), name="odd 2")
    monkeypatch.setattr(inputs, "load_registry", lambda: registry_with(odd))
    told = run("plugins")
    assert told.exit_code == 0
    assert 'warning: plugin odd 2\n  The phrase "like a veil" was left out' in told.stderr
    assert [one["code"] for one in json.loads(run("plugins", "--json").stdout)["left_out"]] == ["phrase-left-out"]
