"""A Japanese judge reads a page without English on it: what stands there in Latin letters is data."""

import csv
import re
from html.parser import HTMLParser
from importlib.metadata import EntryPoint
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules import load_standard
from koirules.commands import inputs, main
from koirules.languages import tongue, written_catalogue
from koirules.vocabulary.expected import MAP_EXAMPLE
from koirules.vocabulary.kinds import Label
from tests.repo.catalogues import ROOT
from tests.rulesets import shipped
from tests.rulesets.shipped import registry

PLUGINS = ("showa", "taisho_sanke")
RECORDS = {"tosai_kohaku": ROOT / "examples" / "01-autumn-lot" / "records.csv"} | {
    f"tosai_{name}": ROOT / "plugins" / name / f"koirules_{name}" / "rulesets" / f"tosai_{name}" / "records.csv"
    for name in PLUGINS
}
RULES = list(RECORDS)
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


@pytest.fixture(autouse=True)
def shipped_plugins(monkeypatch):
    """Every variety that ships with its catalogues, whatever is installed here."""
    monkeypatch.setattr(inputs, "load_registry", registry)
    registry()
    entries = [EntryPoint(package.name, package.name, "koirules") for package in shipped.PLUGINS]
    monkeypatch.setattr(tongue, "entry_points", lambda **_: entries)
    tongue.tongue_of.cache_clear()
    yield
    tongue.tongue_of.cache_clear()


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
    standard = load_standard(rules, registry())
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


DAY = """
title = "Lantern Bay, an invented show"
date = 2026-04-18
classes = "classes.toml"
note = "An invented show."

[[prize]]
name = "class"
title = "Place in its class"
for_each = ["class group", "class size"]
places = 3
by = ["score", "section body"]
fewest = 3
if_fewer = "first place only"

[[prize]]
name = "best"
title = "Best of the show"
by = ["votes", "section body"]
ties = "decide"
"""
CLASSES = """
title = "Lantern Bay classes"
edition = "2026"

[sizes]
trait = "length"
unit = "cm"
closed = "upper"
rounding = "none"
sizes = [{ name = "10", to = 10 }, { name = "15", to = 15 }, { name = "20", to = 20 }]

[[groups]]
name = "kohaku"
title = "Kohaku"
varieties = ["kohaku"]
"""
JAPANESE = {
    "day.ja.po": {
        "Lantern Bay, an invented show": "灯りの湾の品評会（架空）",
        "An invented show.": "架空の品評会。",
        "Place in its class": "部別の順位",
        "Best of the show": "総合優勝",
    },
    "classes.ja.po": {"Lantern Bay classes": "灯りの湾の部の表", "Kohaku": "紅白"},
}


def a_show(folder: Path) -> list[str]:
    (folder / "day.toml").write_text(DAY, encoding="utf-8")
    (folder / "classes.toml").write_text(CLASSES, encoding="utf-8")
    for name, texts in JAPANESE.items():
        rows = [("", "", text, translated) for text, translated in texts.items()]
        (folder / name).write_text(written_catalogue("ja", rows), encoding="utf-8")
    votes = folder / "votes.csv"
    votes.write_text("judge,fish\nA,L09\nB,M17\nC,M17\n", encoding="utf-8")
    return [str(folder / "day.toml"), str(RECORDS["tosai_kohaku"]), "--rules", "tosai_kohaku", "--votes", str(votes)]


def test_prizes_and_their_certificates_in_japanese_have_no_english_on_them(tmp_path):
    page, sheets = tmp_path / "prizes.html", tmp_path / "certificates.html"
    result = CliRunner().invoke(
        main, ["prizes", *a_show(tmp_path), "--out", str(page), "--certificates", str(sheets), "--language", "ja"]
    )
    assert result.exit_code in {0, 1}, result.output
    data = [*data_of("tosai_kohaku"), "2026", *"ABC"]
    for path in (page, sheets):
        read_page = read(path)
        assert read_page.language == "ja" and latin(read_page.texts, data) == []
    told = page.read_text(encoding="utf-8")
    assert "総合優勝" in told and "紅白、15部" in told and "2026年4月18日" in told


@pytest.mark.parametrize("what", [("certificate", "--fish", "L09"), ("labels",), ("lists",), ("ponds",)])
def test_a_printed_sheet_in_japanese_has_no_english_on_it(what, tmp_path):
    path = tmp_path / "sheet.html"
    kind, *more = what
    asked = ["print", kind, "tosai_kohaku", str(RECORDS["tosai_kohaku"]), *more, "--out", str(path), "--language", "ja"]
    result = CliRunner().invoke(main, asked)
    assert result.exit_code == 0, result.output
    page = read(path)
    assert page.language == "ja" and latin(page.texts, data_of("tosai_kohaku")) == []


@pytest.mark.parametrize("language", ["de", "ja"])
@pytest.mark.parametrize("rules", RULES)
def test_nothing_that_a_rule_set_says_is_untranslated(rules, language):
    result = CliRunner().invoke(main, ["untranslated", language, rules])
    assert result.exit_code == 0 and result.output.startswith("0 of "), result.output


TERMINAL = {"koirules", "why", "all"}
"""Latin words of a terminal that a reader types."""


# In short, names of fish are cut where the line ends; those of kohaku are short.
@pytest.mark.parametrize(("rules", "words"), [("tosai_kohaku", ()), *((rules, ("--all",)) for rules in RULES)])
def test_a_terminal_in_japanese_has_no_english_on_it(rules, words):
    told = CliRunner().invoke(main, ["grade", rules, str(RECORDS[rules]), "--language", "ja", *words])
    assert told.exception is None or isinstance(told.exception, SystemExit), told.output
    lines = [re.sub("|".join(TERMINAL), "", line) for line in told.stdout.splitlines()]
    assert latin(lines, data_of(rules)) == []


def test_a_table_of_agreement_is_told_in_the_language_that_is_asked_for(tmp_path):
    page, lot = tmp_path / "house.koi", tmp_path / "lot.csv"
    page.write_text(SMALL.replace('"keep" fr "garder"', '"behalten"'), encoding="utf-8")
    rows = ["A,x,straight", "A,y,bent", "B,x,straight", "B,y,straight", "C,x,straight", "C,y,bent"]
    lot.write_text("judge,fish,spine\n" + "\n".join(rows) + "\n", encoding="utf-8")
    told = CliRunner().invoke(main, ["agree", str(page), str(lot), "--language", "de"]).stdout
    for words in ("3 Richter, 2 Koi von zweien oder mehr beurteilt", "95-%-Intervall", "Am meisten uneins bei"):
        assert words in told, told
    lot.write_text("fish,spine,verdict\nx,straight,in\ny,bent,in\n", encoding="utf-8")
    told = CliRunner().invoke(main, ["agree", str(page), str(lot), "--language", "ja"]).stdout
    assert "2尾のうち一致 1：50.0 %" in told, told
    assert "コーエンのκ" in told


@pytest.mark.parametrize(
    ("language", "sentence"),
    [
        ("en", "Snow-white skin, three patches of thick, even red, strong tail stem."),
        ("de", "Schneeweiße Haut, drei Flecken (Rot dick, gleichmäßig), Schwanzstiel (stark)."),
        ("ja", "雪のような白地、三段（緋は厚い、均一）、尾筒（強い）。"),
    ],
)
def test_a_fish_is_told_in_one_sentence_as_richly_in_each_language(language, sentence, tmp_path):
    out = tmp_path / "page.html"
    words = ["grade", "tosai_kohaku", str(RECORDS["tosai_kohaku"]), "--out", str(out), "--language", language]
    CliRunner().invoke(main, words)
    assert sentence in read(out).texts
