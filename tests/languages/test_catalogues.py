"""Catalogues: the format that GNU gettext describes, held to the reader of Babel; and what the tool says, in each language."""

import re
from pathlib import Path

import pytest
from babel.messages.pofile import read_po

from koirules.languages import CatalogueError, beside, languages_known, read_catalogue, tongue_of, written_catalogue
from koirules.languages.tongue import Tongue
from tests.repo.catalogues import ROOT, TEMPLATE, said, template

CATALOGUES = sorted(
    path
    for folder in ("koirules", "rulesets", "plugins", "examples")
    for path in (ROOT / folder).rglob("*.po")
    if ".venv" not in path.parts
)
BY_NAME = {str(path.relative_to(ROOT)): path for path in CATALOGUES}


@pytest.mark.parametrize("name", list(BY_NAME))
def test_a_catalogue_reads_as_babel_reads_it(name):
    with BY_NAME[name].open("rb") as file:
        expected = {
            (message.context or "", message.id): (message.string,)
            for message in read_po(file)
            if message.id and message.string and not isinstance(message.id, tuple)
        }
    read = read_catalogue(BY_NAME[name]).texts
    assert {key: forms for key, forms in read.items() if len(forms) == 1} == expected


@pytest.mark.parametrize("name", list(BY_NAME))
def test_a_translation_asks_for_nothing_that_is_not_there(name):
    for (_, text), forms in read_catalogue(BY_NAME[name]).texts.items():
        for form in forms:
            assert set(re.findall(r"\{\w+\}", form)) <= set(re.findall(r"\{\w+\}", text)) | {"{number}"}, text


@pytest.mark.parametrize("language", languages_known())
def test_a_language_has_all_that_the_tool_says(language):
    texts = read_catalogue(ROOT / "koirules" / "languages" / f"{language}.po").texts
    assert [text for context, text in said() if (context, text) not in texts and ("", text) not in texts] == []


def test_the_template_has_what_the_source_says():
    assert TEMPLATE.read_text(encoding="utf-8") == template(), "python -m tests.repo.catalogues"


def test_the_source_is_gathered_at_all():
    found = {text for _, text in said()}
    assert {"Worked examples", "{number} lost scale, place not recorded", "held down by a fault", "; "} <= found


def test_plurals_escapes_and_long_texts_are_read(tmp_path):
    path = tmp_path / "de.po"
    path.write_text(
        'msgid ""\nmsgstr ""\n"Language: de\\n"\n\n'
        '#: page.html:3\nmsgid "{number} place"\nmsgid_plural "{number} places"\n'
        'msgstr[0] "{number} Platz"\nmsgstr[1] "{number} Plätze"\n\n'
        'msgctxt "kiwa"\nmsgid "sharp"\nmsgstr ""\n"sch"\n"arf"\n\n'
        '#, fuzzy\nmsgid "edge"\nmsgstr "Ecke"\n\nmsgid "tail"\nmsgstr ""\n\n'
        'msgid "say \\"yes\\"\\n\\\\"\nmsgstr "\\"ja\\"\\n\\\\"\n',
        encoding="utf-8",
    )
    catalogue = read_catalogue(path)
    assert catalogue.texts == {
        ("", "{number} place"): ("{number} Platz", "{number} Plätze"),
        ("kiwa", "sharp"): ("scharf",),
        ("", 'say "yes"\n\\'): ('"ja"\n\\',),
    }
    tongue = Tongue("de", True, catalogue)
    assert [tongue.plural("{number} place", "{number} places", number) for number in (1, 2)] == ["1 Platz", "2 Plätze"]
    assert (tongue.of("sharp"), tongue.of("sharp", "kiwa"), tongue.of("edge")) == ("sharp", "scharf", "edge")


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ('msgid "a"\nmsgstr b\n', 2),
        ('"a"\n', 1),
        ('msgid "a"\nmsgstr "b"\nmsgstr "c"\n', 3),
        ('msgid "a"\nmsgstr "b" "c"\n', 2),
    ],
)
def test_what_is_no_catalogue_is_refused_with_its_line(tmp_path, text, line):
    path = tmp_path / "house.ja.po"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(CatalogueError) as refused:
        read_catalogue(path)
    assert refused.value.line == line


def test_a_catalogue_that_is_written_reads_as_it_was(tmp_path):
    path = tmp_path / "house.ja.po"
    rows = [("house.koi:3", "", 'a "b"\nc\\', "甲"), ("", "kiwa", "sharp", "鋭い"), ("", "", "tail", "")]
    path.write_text(written_catalogue("ja", rows), encoding="utf-8")
    assert read_catalogue(path).texts == {("", 'a "b"\nc\\'): ("甲",), ("kiwa", "sharp"): ("鋭い",)}


@pytest.mark.parametrize("code", ["../../etc", "ja.po", "xx-9", "JAPANESE", ""])
def test_what_is_no_code_of_a_language_reaches_no_file(code):
    assert not tongue_of(code).speaks


@pytest.mark.parametrize("language", ["a/b", "..", "\x00", "", "deu-at"])
def test_what_is_no_code_of_a_language_has_no_catalogue(language):
    assert beside(["rules/standard.koi"], language) == []
    assert beside(["rules/standard.koi", ""], "ja") == [Path("rules/standard.ja.po")]
