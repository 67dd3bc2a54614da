"""A Japanese judge reads a page without English on it: what stands there in Latin letters is data."""

import csv
import re
from html.parser import HTMLParser
from importlib.util import find_spec
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules import load_standard
from koirules.commands import main
from koirules.vocabulary.expected import MAP_EXAMPLE
from koirules.vocabulary.kinds import Label
from tests.repo.catalogues import ROOT

PLUGINS = ("showa", "taisho_sanke")
RECORDS = {"tosai_kohaku": ROOT / "examples" / "01-autumn-lot" / "records.csv"} | {
    f"tosai_{name}": ROOT / "plugins" / name / f"koirules_{name}" / "rulesets" / f"tosai_{name}" / "records.csv"
    for name in PLUGINS
}
RULES = [
    pytest.param(
        name,
        marks=pytest.mark.skipif(
            name != "tosai_kohaku" and find_spec(f"koirules_{name.removeprefix('tosai_')}") is None,
            reason="the plugin of the variety is not installed",
        ),
    )
    for name in RECORDS
]
UNITS = {"cm", "mm", "g", "kg"}
SYMBOLS = {"L", "a", "b", "w", "s", "W", "A", "P", "CIEDE", "U", "V"}
"""Letters of formulas and of colour measurement, and the letters that a pattern is named after (U字)."""
FIRST_PATCH = MAP_EXAMPLE.partition(";")[0]
SMALL = """
standard "house"
  edition 1
  variety kohaku

grade keep "keep" fr "garder" if spine is straight
grade sell "sell" otherwise
"""


class Page(HTMLParser):
    """The texts of a page that a person sees or hears."""

    def __init__(self):
        super().__init__()
        self.language = ""
        self.texts = []
        self.silent = 0

    def handle_starttag(self, tag, attributes):
        given = dict(attributes)
        self.silent += tag in {"style", "script"}
        if tag == "html":
            self.language = given["lang"]
        self.texts += [given[name] for name in ("title", "aria-label", "alt") if given.get(name)]
        if given.get("id") == "words":
            self.texts += [re.sub(r"\{\w+\}", "", text) for name, text in attributes if name.startswith("data-")]

    def handle_endtag(self, tag):
        self.silent -= tag in {"style", "script"}

    def handle_data(self, text):
        if not self.silent and text.strip():
            self.texts.append(text.strip())


def read(path: Path) -> Page:
    page = Page()
    page.feed(path.read_text(encoding="utf-8"))
    return page


def latin(texts: list[str], data: list[str]) -> list[str]:
    """The texts in which a Latin word stands that is no data. data: texts that are taken out first."""
    found = []
    for text in texts:
        rest = text
        for one in sorted(data, key=len, reverse=True):
            rest = rest.replace(one, " ")
        if set(re.findall(r"[A-Za-zÄÖÜäöüß]+", rest)) - UNITS - SYMBOLS:
            found.append(text)
    return found


def data_of(rules: str) -> list[str]:
    """What is data in any language: names of traits, settings and files, seals, and what a person wrote of a fish."""
    standard = load_standard(rules)
    with RECORDS[rules].open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    free = [name for name in rows[0] if name not in standard.traits or isinstance(standard.traits[name].kind, Label)]
    seals = re.findall(r"\b2-[0-9a-f]{64}\b", f"{standard.seal} {standard.rules.source.text}")
    names = [
        *standard.traits,
        *standard.settings,
        rules,
        "tosai_any_variety",
        "growth_white_share",
        "growth_white_sides",
    ]
    given = [row[name] for row in rows for name in free if re.search("[A-Za-z]", row[name] or "")]
    return [
        *names,
        *free,
        *given,
        *seals,
        *(seal[:14] for seal in seals),
        MAP_EXAMPLE,
        FIRST_PATCH,
        RECORDS[rules].name,
    ]


@pytest.mark.parametrize("rules", RULES)
def test_a_handbook_in_japanese_has_no_english_on_it(rules, tmp_path):
    path = tmp_path / "handbook.html"
    result = CliRunner().invoke(main, ["handbook", rules, "--out", str(path), "--language", "ja"])
    assert result.exit_code == 0, result.output
    page = read(path)
    assert page.language == "ja" and len(page.texts) > 1_000
    assert latin(page.texts, data_of(rules)) == []


@pytest.mark.parametrize("audience", ["house", "customer"])
@pytest.mark.parametrize("rules", RULES)
def test_a_page_of_results_in_japanese_has_no_english_on_it(rules, audience, tmp_path):
    path = tmp_path / "results.html"
    result = CliRunner().invoke(
        main, ["grade", rules, str(RECORDS[rules]), "--out", str(path), "--for", audience, "--language", "ja"]
    )
    assert result.exit_code in {0, 1}, result.output
    page = read(path)
    assert page.language == "ja" and len(page.texts) > 100
    assert latin(page.texts, data_of(rules)) == []


def test_a_handbook_in_markdown_speaks_it_too(tmp_path):
    path = tmp_path / "handbook.md"
    assert CliRunner().invoke(main, ["handbook", "tosai_kohaku", "--out", str(path), "--language", "ja"]).exit_code == 0
    assert latin(path.read_text(encoding="utf-8").replace("\\", "").splitlines(), data_of("tosai_kohaku")) == []


def test_without_a_catalogue_of_the_tool_the_page_stays_english(tmp_path):
    rules = tmp_path / "house.koi"
    rules.write_text(SMALL, encoding="utf-8")
    page = tmp_path / "page.html"
    assert CliRunner().invoke(main, ["handbook", str(rules), "--out", str(page), "--language", "fr"]).exit_code == 0
    written = page.read_text(encoding="utf-8")
    assert '<html lang="en">' in written and '<b lang="fr">garder</b>' in written and "Worked examples" not in written
