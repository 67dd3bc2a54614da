"""A plugin about glazed pots: nothing that koirules says of them is about fish. Pots, maker and numbers are invented."""

import re
import zipfile

import pytest
from click.testing import CliRunner

from koirules.commands import main
from koirules.problems.pages import pages
from tests.plugins.installing import installer

CODE = """
from decimal import Decimal

from koirules.hooks import hookimpl
from koirules.vocabulary.kinds import Count, Number, Scale
from koirules.vocabulary.subject import SHOW, SORTING, Cautions, Subject
from koirules.vocabulary.traits import AS_LENGTH, Better, Growth, Trait, Vocabulary
from koirules.vocabulary.units import UNITS

GLOSS = Trait("gloss", "gloss", Scale(("dull", "soft", "bright")), Better.MORE)
CM = UNITS["cm"]
KOIRULES_API = 2
POT = Subject(
    "pot",
    "pots",
    {
        SORTING: Cautions(("A second is sold as a second.",), ("Lift each by its foot.",), (), "Lift by the foot."),
        SHOW: Cautions(("A prize is one opinion.",), ("Wear gloves.",), (), "Wear gloves."),
    },
    in_hand="Before you lift one",
    at_work="What is said at the kiln",
    place="shelf",
    places="Shelves",
    grows_by="height",
)


@hookimpl
def koirules_vocabularies():
    return [
        Vocabulary(
            "clayware",
            "clayware",
            (
                Trait("height", "height", Number(CM, Decimal(1), Decimal(90)), allometry=AS_LENGTH, growth=Growth.RISES),
                Trait("rim", "rim", Number(CM, Decimal(1), Decimal(90)), allometry=AS_LENGTH, growth=Growth.RISES),
                Trait("crawl", "crawling", Count(9), Better.LESS, describe="Bare spots."),
            ),
            is_variety=False,
            subject=POT,
        ),
        Vocabulary("glazed", "glazed pots", (GLOSS,), ("clayware",)),
    ]
"""
STANDARD = """standard "Alder Kiln" edition 1 variety glazed {occasion}
setting enough = 60 from 50 to 70 "points for the front shelf"
term wide "a wide rim" means rim grown to 40 cm at least 20 cm
section glaze "glaze" worth 100
points gloss "gloss" by gloss: dull gives 0, soft gives 6, bright gives 10
penalty crawled 20 if crawl at least 2
fault bald "bare" if crawl at least 5: no better than second
lift huge if height above 60 cm: no worse than second
grade front if score at least enough and wide
grade second if score at least 20
grade shards otherwise
alert bare if batch share of (crawl at least 3) above 50 %
round shelf "front shelf" from all keep those possibly with grade at least second pick 2 by highest score send to "front"
phrase "shiny" means gloss is bright
silence means crawl is 0
sample "a good one" with height 20 cm, rim 12 cm, crawl 0, gloss bright comes out front
"""
RECORDS = """fish,looked,height,rim,crawl,gloss
P1,yes,20 cm,12 cm,0,bright
P2,yes,30 cm,9 cm,3,soft
P3,yes,25 cm,14 cm,6,bright
P4,,25 cm,14 cm,,
P5,yes,300 mm,9 cm,1,dull
"""
WORD = re.compile(
    r"\b(fish\w*|koi|ponds?|tubs?|nets?|culls?|culling|kill\w*|water|aerated|fins?|gills?|vet|swim\w*|spawn\w*|patches|net)\b",
    re.IGNORECASE,
)

COMMANDS = (
    ("check", "RULES"),
    ("grade", "RULES", "RECORDS"),
    ("grade", "RULES", "RECORDS", "--all", "--out", "results.html", "--out", "results.csv", "--out", "plot.json"),
    ("grade", "RULES", "RECORDS", "--plot", "plot.svg"),
    ("grade", "RULES", "RECORDS", "--for", "customer", "--out", "customer.html"),
    ("why", "RULES", "RECORDS", "P2"),
    ("why", "RULES", "RECORDS", "P4"),
    ("why", "RULES", "RECORDS", "P1", "P3"),
    ("sheet", "glazed", "--out", "sheet.csv"),
    ("sheet", "--rules", "RULES", "--out", "sheet.xlsx"),
    ("handbook", "RULES", "--out", "handbook.html"),
    ("handbook", "RULES", "--out", "handbook.md"),
    ("traits", "glazed"),
    ("seal", "RULES"),
    ("print", "lists", "RULES", "RECORDS", "--out", "lists.html"),
    ("print", "labels", "RULES", "RECORDS", "--out", "labels.html"),
    ("print", "certificate", "RULES", "RECORDS", "--fish", "P1", "--out", "certificate.html"),
    ("check", "RULES", "--reach", "--changes"),
    ("prove", "RULES", "--seconds", "20"),
    ("compare", "RULES", "NEWER"),
    ("compare", "RULES", "NEWER", "--records", "RECORDS", "--out", "compared.csv"),
    ("compare", "RULES", "RULES"),
    ("agree", "RULES", "VERDICTS"),
    ("agree", "RULES", "VERDICTS", "--with", "VERDICTS"),
    ("growth", "RULES", "LOOKS"),
    ("flaws", "RULES", "--ideal"),
    ("flaws", "RULES"),
    ("classes", "SIZES", "RECORDS", "--variety", "glazed"),
    ("grade", "RULES", "RECORDS", "--classes", "SIZES"),
    ("prizes", "PRIZES", "RECORDS", "--rules", "RULES", "--out", "prizes.html"),
    ("prizes", "PRIZES", "RECORDS", "--rules", "RULES", "--certificates", "honours.html"),
    ("note", "RULES", "NOTES", "--out", "noted.csv"),
    ("note", "RULES", "--phrases"),
    ("tidy", "RULES", "--check"),
    ("seal", "RULES", "--text"),
    ("traits", "glazed", "--about", "gloss"),
    ("traits", "RULES", "--all"),
    ("new", "house.koi", "--variety", "glazed"),
    # Problems of records and of rules.
    ("grade", "RULES", "WRONG"),
    ("check", "BROKEN"),
    ("why", "RULES", "RECORDS", "P9"),
)

SIZES = """title = "Alder Kiln, sizes (invented)"
edition = "1"

[sizes]
trait = "height"
unit = "cm"
closed = "upper"
rounding = "none"
sizes = [{ name = "small", to = 22 }, { name = "tall", to = 40 }]

[[groups]]
name = "glazed"
varieties = ["glazed"]
"""
PRIZES = """title = "Alder Kiln (invented)"
date = 2026-04-18
classes = "sizes.toml"

[[prize]]
name = "class"
title = "Place in its class"
for_each = ["class size"]
places = 2
by = ["score"]
"""
LOOKS = "fish,date,height,rim\n" + "".join(
    f"P{number},2026-0{month}-01,{10 + number + 3 * month} cm,{5 + number + 2 * month} cm\n"
    for number in range(1, 7)
    for month in range(1, 7)
)
NOTES = "P1: shiny, 20 cm\n2: frilly\nP3 gloss soft, crawl 2\n"
BROKEN = 'standard "Alder Kiln" edition 1 variety glazed\ngrade front if gloss grown to 40 cm is dull and rim grown to 5 is 3\n'


def sentences(text: str) -> str:
    """What a person reads of an output: no style, no script, no tags but what they say aloud, no key `fish`."""
    text = re.sub(r"<(style|script)\b.*?</\1>", " ", text, flags=re.DOTALL)
    aloud = " ".join(re.findall(r'(?:aria-label|title|alt|placeholder)="([^"]*)"', text))
    text = re.sub(r"<[^>]*>", " ", text) + aloud
    return re.sub(
        r', fish P1$|"fish":?|^fish,|`fish`|--fish|koirules|\S+\.koi\b|\[[a-z-]+\]$', " ", text, flags=re.MULTILINE
    )


@pytest.fixture
def kiln(tmp_path, monkeypatch):
    made = installer(tmp_path, monkeypatch)
    next(made)("alder-pots", CODE, "pots", "1.0")
    for occasion, name in (("", "standard"), ("for show", "standardshow")):
        (tmp_path / f"{name}.koi").write_text(STANDARD.format(occasion=occasion), encoding="utf-8")
    (tmp_path / "records.csv").write_text(RECORDS, encoding="utf-8")
    (tmp_path / "wrong.csv").write_text(RECORDS + "P1,yes,20 kg,x,-1,bright\n,yes,20 cm,,,\n", encoding="utf-8")
    (tmp_path / "newer.koi").write_text(
        STANDARD.format(occasion="").replace("edition 1", "edition 2").replace("soft gives 6", "soft gives 3"),
        encoding="utf-8",
    )
    verdicts = (
        RECORDS.replace("gloss\n", "gloss,verdict\n")
        .replace("bright\n", "bright,front\n")
        .replace("soft\n", "soft,shards\n")
    )
    (tmp_path / "verdicts.csv").write_text(
        verdicts.replace("dull\n", "dull,second\n").replace(",,\n", ",,,\n"), encoding="utf-8"
    )
    for name, text in (("sizes.toml", SIZES), ("prizes.toml", PRIZES), ("looks.csv", LOOKS), ("notes.txt", NOTES)):
        (tmp_path / name).write_text(text, encoding="utf-8")
    (tmp_path / "broken.koi").write_text(BROKEN, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    yield tmp_path
    next(made, None)


def run(*words):
    found = {
        "RULES": "standard.koi",
        "RECORDS": "records.csv",
        "WRONG": "wrong.csv",
        "BROKEN": "broken.koi",
        "NEWER": "newer.koi",
    }
    found |= {
        "VERDICTS": "verdicts.csv",
        "LOOKS": "looks.csv",
        "NOTES": "notes.txt",
        "SIZES": "sizes.toml",
        "PRIZES": "prizes.toml",
    }
    done = CliRunner().invoke(main, [found.get(word, word) for word in words])
    assert done.exception is None or isinstance(done.exception, SystemExit), words
    return done.output


def test_nothing_that_is_said_of_pots_is_about_fish(kiln):
    before = {path.name for path in kiln.iterdir()}
    said = {" ".join(words): run(*words) for words in COMMANDS}
    told = {name: sentences(text) for name, text in said.items()}
    made = {path for path in kiln.iterdir() if path.name not in before and path.is_file()}
    assert len(made) >= 11, said
    for path in made:
        if path.suffix == ".xlsx":
            with zipfile.ZipFile(path) as book:
                told[path.name] = " ".join(sentences(book.read(name).decode()) for name in book.namelist())
                told[path.name] = re.sub(r"\bfish\b", " ", told[path.name], count=1)  # the heading of the column
        else:
            told[path.name] = sentences(path.read_text(encoding="utf-8"))
    fishy = {name: sorted({one.group() for one in WORD.finditer(text)}) for name, text in told.items()}
    assert not {name: (words, context(told[name])) for name, words in fishy.items() if words}


def test_the_pages_about_problems_are_about_any_subject():
    """All but their codes and examples, which are rules and records for koi; patches are a kind of trait."""
    told = {"the list": re.sub(r"^  [a-z0-9-]+", "", run("explain"), flags=re.MULTILINE)}
    for page in pages().values():
        told[page.code] = f"{page.means} {page.mend} {page.when}"
    plain = {code: re.sub(r'`[^`]*`|"[^"]*"|\S*\.koi\b|\bkoirules\w*', " ", text) for code, text in told.items()}
    fishy = {code: {one.group() for one in WORD.finditer(text)} - {"patches"} for code, text in plain.items()}
    assert not {code: words for code, words in fishy.items() if words}


def context(text):
    return [text[max(0, one.start() - 60) : one.end() + 40] for one in WORD.finditer(text)][:6]


def test_pots_have_their_words_cautions_and_growth(kiln):
    told = run("grade", "RULES", "RECORDS", "--all")
    assert "5 pots" in told
    assert "Lift each by its foot." in told
    assert "grown to 40 cm" in told
    why = run("why", "RULES", "RECORDS", "P1")
    assert why.startswith("Pot P1: front")
    show = CliRunner().invoke(main, ["grade", "standardshow.koi", "records.csv"]).output
    assert "Wear gloves." in show
    assert "foot" not in show
    run("handbook", "RULES", "--out", "book.md")
    book = (kiln / "book.md").read_text(encoding="utf-8")
    assert "## Before you lift one" in book
    assert "What is said at the kiln" in book
    run("grade", "RULES", "RECORDS", "--out", "pots.html")
    page = (kiln / "pots.html").read_text(encoding="utf-8")
    assert "All pots in a table" in page
    assert "Drawings show" not in page
