from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main
from koirules.languages import said_by_the_tool

CATALOGUE = Path("house.ja.po")
HOUSE = """
standard "house" ja "当場"
  edition 1
  variety kohaku

# The back comes first.
fault bent "bent spine" ja "背曲がり" if spine is bent: no better than sell
  say "bent, {spine}"
grade keep "keep" if length above 1 cm
grade sell "sell" otherwise
"""


@pytest.fixture(autouse=True)
def house(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "house.koi").write_text(HOUSE, encoding="utf-8")
    (tmp_path / "fish.csv").write_text("fish,spine,length\nK1,bent,12\nK2,straight,12\n", encoding="utf-8")


def run(*args):
    return CliRunner().invoke(main, list(args))


def test_it_lists_what_a_rule_file_lacks():
    result = run("untranslated", "ja", "house.koi")
    assert result.exit_code == 1
    assert result.output.splitlines() == [
        "rule file, house.koi:7: bent, {spine}",
        "rule file, house.koi:9: keep",
        "rule file, house.koi:10: sell",
        f"3 of {_number(result.output)} texts have no translation into ja: 3 of the rule file.",
    ]


def _number(output):
    return output.splitlines()[-1].split()[2]


def test_remarks_are_listed_where_they_are_asked_for():
    listed = run("untranslated", "ja", "house.koi", "--remarks").output
    assert "remarks, house.koi:7: The back comes first." in listed and "1 of the remarks" in listed


def test_a_catalogue_that_is_filled_in_is_read_beside_the_file_and_leaves_the_seal():
    seal = run("seal", "house.koi").output
    assert run("untranslated", "ja", "house.koi", "--out", "house.ja.po").exit_code == 1
    text = CATALOGUE.read_text(encoding="utf-8")
    for english, japanese in (("bent, {spine}", "背骨が{spine}"), ("keep", "立て鯉")):
        text = text.replace(f'msgid "{english}"\nmsgstr ""', f'msgid "{english}"\nmsgstr "{japanese}"')
    CATALOGUE.write_text(text, encoding="utf-8")
    assert run("seal", "house.koi").output == seal
    graded = run("grade", "house.koi", "fish.csv", "--language", "ja", "--all")
    assert "立て鯉" in graded.output and "背骨が曲がり" in graded.output
    assert "1 of" in graded.stderr and "koirules untranslated ja house.koi" in graded.stderr
    again = run("untranslated", "ja", "house.koi", "--out", "house.ja.po")
    assert again.exit_code == 2 and "--replace" in again.output
    assert run("untranslated", "ja", "house.koi", "--out", "house.ja.po", "--replace").exit_code == 1
    kept = CATALOGUE.read_text(encoding="utf-8")
    assert 'msgid "keep"\nmsgstr "立て鯉"' in kept and 'msgid "sell"\nmsgstr ""' in kept


def test_the_title_of_a_panel_is_a_text_of_the_rule_file():
    Path("house.koi").write_text(HOUSE + '\npanel judges "our judges" by votes\n', encoding="utf-8")
    assert "our judges" in run("untranslated", "ja", "house.koi").output


def test_tables_of_classes_and_of_prizes_are_listed_and_their_catalogues_are_kept():
    Path("show.toml").write_text(
        'title = "Our show"\nedition = "1"\nnote = "Measured wet."\n[sizes]\ntrait = "length"\nunit = "cm"\n'
        'closed = "upper"\nrounding = "none"\nsizes = [{ name = "15", to = 15 }, { name = "above 15" }]\n',
        encoding="utf-8",
    )
    Path("day.toml").write_text(
        'title = "Club day"\ndate = "2 and 3 May"\nclasses = "show.toml"\n[[prize]]\nname = "best"\n'
        'title = "Best of all"\nby = "score"\n',
        encoding="utf-8",
    )
    classes = run("untranslated", "de", "show.toml", "--out", "show.de.po")
    assert classes.exit_code == 1 and "3 of 3 texts have no translation into de" in classes.output
    prizes = run("untranslated", "de", "day.toml").output.splitlines()
    assert prizes[:3] == [f"table, day.toml: {text}" for text in ("Club day", "2 and 3 May", "Best of all")]
    text = Path("show.de.po").read_text(encoding="utf-8")
    for english, german in (("Our show", "Unsere Schau"), ("above 15", "über 15")):
        text = text.replace(f'msgid "{english}"\nmsgstr ""', f'msgid "{english}"\nmsgstr "{german}"')
    Path("show.de.po").write_text(text, encoding="utf-8")
    assert "1 of 3 texts has no translation" in run("untranslated", "de", "show.toml").output
    done = run("grade", "house.koi", "fish.csv", "--classes", "show.toml", "--language", "de", "--out", "page.html")
    assert done.exit_code == 0, done.output
    page = Path("page.html").read_text(encoding="utf-8")
    assert "Unsere Schau, Ausgabe 1" in page and "Our show" not in page
    Path("fish.csv").write_text("fish,spine,length\nK1,bent,18\n", encoding="utf-8")
    run(
        "grade",
        "house.koi",
        "fish.csv",
        "--classes",
        "show.toml",
        "--language",
        "de",
        "--out",
        "page.html",
        "--replace",
    )
    assert "über 15" in Path("page.html").read_text(encoding="utf-8")
    broken = run("untranslated", "de", "no.toml")
    assert broken.exit_code == 2 and "no.toml" in broken.output


def test_the_tool_itself_is_listed_without_a_rule_file():
    assert run("untranslated", "ja").exit_code == 0
    lacking = run("untranslated", "fr")
    assert lacking.exit_code == 1 and "koirules: Worked examples" in lacking.output
    assert f"{len(said_by_the_tool()):,} of {len(said_by_the_tool()):,} texts" in lacking.output


def test_a_broken_catalogue_is_told_with_its_line():
    CATALOGUE.write_text('msgid "keep"\nmsgstr 立て鯉\n', encoding="utf-8")
    for args in (("grade", "house.koi", "fish.csv", "--language", "ja"), ("untranslated", "ja", "house.koi")):
        result = run(*args)
        assert result.exit_code == 2 and "house.ja.po:2: this is no line of a catalogue" in result.output, args


@pytest.mark.parametrize("args", [("japanese", "house.koi"), ("ja", "house.koi", "--out", "house.csv")])
def test_what_cannot_be_is_refused(args):
    assert run("untranslated", *args).exit_code == 2
