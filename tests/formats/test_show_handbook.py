"""One handbook for a whole show: the common base once, each variety by what differs, classes, prizes, seals."""

from __future__ import annotations

import re
from pathlib import Path

import html5lib
import pypdf
import pytest
from click.testing import CliRunner

from koirules.commands import inputs, main
from tests.formats.browser import Page, running_browser
from tests.languages.test_pages import latin, read
from tests.rulesets.shipped import registry

SHOW = Path(__file__).parents[2] / "examples" / "14-a-show"
BASE = """standard "Tin Bucket, common page" edition 1
  any variety
setting bound = 50 from 40 to 60 "bound"
fault bent "bent spine" if spine is bent: no better than seen
fault thin "thin stem" if tail_stem is thin: no better than seen
section body "body" worth 60
points outline "outline" by outline: poor gives 0, excellent gives 10, anything else gives 5
section skin "skin" worth 40
points lustre "shine" by lustre: superb gives 10, anything else gives 0
grade placed "placed" if score at least bound
grade seen "seen" otherwise
"""
COUNTY = """standard "County, kohaku" edition 2
  variety kohaku
  based on "common/base.koi" edition 1
drop fault thin
section skin
points kiwa "edge" weight 3 by kiwa: razor gives 10, anything else gives 0
lift superb "a superb one" if lustre is superb and kiwa is razor: no worse than placed
sample "a razor" with spine straight, outline excellent, lustre superb, kiwa razor
  comes out placed
"""
CLUB = """standard "Club, kohaku" edition 3
  variety kohaku
  based on "county.koi" edition 2
replace fault bent "bent or doubtful spine" if spine is one of (bent, slight): no better than seen
"""
AS_IT_IS = (
    'standard "Plain, kohaku" edition 4\n  variety kohaku\n  stage nisai\n  based on "common/base.koi" edition 1\n'
)
CLASSES = """title = "Tin Bucket classes"
edition = "2026-2"
[sizes]
trait = "length"
unit = "cm"
closed = "lower"
rounding = "none"
sizes = [{ name = "s", title = "small", from = 5 }, { name = "l", title = "large", from = 20 }]
[[groups]]
name = "k"
title = "all kohaku"
varieties = ["kohaku"]
"""
DAY = """title = "Tin Bucket day"
date = 2026-05-02
classes = "classes.toml"
[[prize]]
name = "class"
title = "Place in its class"
for_each = ["class group", "class size"]
places = 3
by = ["score", "section body"]
fewest = 3
if_fewer = "no prize"
[[prize]]
name = "best"
title = "Best of the day"
among = { prize = "class", places = 2 }
where = { sizes = ["s", "l"], groups = ["k"], grades = ["placed"] }
by = "section body"
ties = "share"
[[prize]]
name = "friend"
title = "Friend of the day"
not_with = "best"
outside = true
by = "votes"
"""


@pytest.fixture(scope="module")
def browser():
    with running_browser() as running:
        yield running


@pytest.fixture
def run(tmp_path, monkeypatch):
    monkeypatch.setattr(inputs, "load_registry", registry)
    monkeypatch.chdir(tmp_path)

    def told(*words):
        result = CliRunner().invoke(main, ["handbook", *map(str, words)])
        assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
        return result

    return told


@pytest.fixture
def bucket(run):
    Path("rules/common").mkdir(parents=True)
    for name, text in (("common/base", BASE), ("county", COUNTY), ("club", CLUB), ("plain", AS_IT_IS)):
        Path(f"rules/{name}.koi").write_text(text, encoding="utf-8")
    Path("classes.toml").write_text(CLASSES, encoding="utf-8")
    Path("day.toml").write_text(DAY, encoding="utf-8")
    return run


def words(node):
    return " ".join("".join(node.itertext()).split())


def chapters(text):
    """Each part of a Markdown book by its heading."""
    found = re.split(r"^## (.*)$", text, flags=re.MULTILINE)
    return dict(zip(found[1::2], found[2::2], strict=True))


def criteria(path):
    """{name: most points} of the criteria of a rule file of the example, read with a pattern."""
    told = re.findall(r"^points (\w+)(?: \".*\")? by \w+: (.+)$", path.read_text(encoding="utf-8"), re.MULTILINE)
    return {name: max(map(int, re.findall(r"gives (\d+)", row))) for name, row in told}


def test_the_book_of_the_example_says_what_is_shared_once_and_what_each_variety_adds(run):
    result = run(SHOW / "rules", "--prizes", SHOW / "day.toml", "--out", "book.html")
    told = "Wrote book.html: 13 standards, 1 in full, 12 by what differs, 9 groups of classes, 5 prizes.\n"
    assert (result.exit_code, result.stderr, result.stdout) == (0, "", told)
    tree = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False).parse(Path("book.html").read_text("utf-8"))
    ids = [node.get("id") for node in tree.iter() if node.get("id")]
    assert len(ids) == len(set(ids))
    assert {node.get("href")[1:] for node in tree.iter("a")} <= set(ids)
    assert sum(node.get("class") == "caution" for node in tree.iter()) == 1
    # The criteria, from the rule files by a pattern: 20 of 40 points each where a page adds two.
    expected = [("s1-points-" + name) for name in criteria(SHOW / "rules" / "common" / "open.koi")]
    pages = sorted((SHOW / "rules").glob("*.koi"))
    for number, page in enumerate(pages, 2):
        expected += [f"s{number}-points-{name}" for name in criteria(page)]
    found = [node for node in tree.iter("div") if node.get("class") == "criterion"]
    assert [node.find("h5").get("id") for node in found] == expected
    assert {words(node.find("p/b")) for node in found[5:]} == {"Worth at most 20 of the score, with weight 1."}
    assert all(len(criteria(page)) == 2 for page in pages)
    # Each trait is explained once.
    rows = [one for one in ids if re.fullmatch(r"trait-\w+", one)]
    read = {name for page in [*pages, SHOW / "rules" / "common" / "open.koi"] for name in reads(page)}
    assert sorted(rows) == sorted(f"trait-{name}" for name in read)
    # Every standard with its seal; the base is the one that the pages themselves ask for.
    (table,) = [node for node in tree.iter("table") if node.get("class") == "seals"]
    sealed = [words(row.find("td[2]")) for row in table.find("tbody")]
    asked = re.search(r"seal (3-[0-9a-f]{64})", (SHOW / "rules" / "kohaku.koi").read_text(encoding="utf-8"))[1]
    assert (sealed[0], len(set(sealed))) == (asked, 13)


def reads(path):
    text = path.read_text(encoding="utf-8")
    return re.findall(r"\bby (\w+):", text) + re.findall(r"^fault \w+ \".*\" if (\w+) is", text, re.MULTILINE)


def test_a_page_is_told_by_what_differs_from_its_own_base_even_where_that_has_one(bucket):
    assert bucket("rules", "--out", "book.md").exit_code == 0
    book = chapters(Path("book.md").read_text(encoding="utf-8"))
    assert list(book)[1:5] == [
        "Tin Bucket, common page",
        "County, kohaku",
        "Club, kohaku",
        "Plain, kohaku",
    ]
    base, county, club, plain = (book[name] for name in list(book)[1:5])
    assert "thin stem" in base and "bound" in base and "### How a grade comes about" in base
    assert "- **left out**: thin stem" in county and "- **added**: *edge*, *a superb one*" in county
    # Weight 3 beside weight 1 in a section of 40 points: 30 and 10.
    assert "| *shine* | 1 | 10.00 |" in county and "| *edge* added here | 3 | 30.00 |" in county
    assert "outline" not in county.split("Worked examples")[0] and "A lift gives a fish no worse" in county
    assert "### Worked examples" in county and "a razor" in county
    assert "- **changed**: *bent or doubtful spine*" in club
    assert "left out" not in club and "Worked examples" not in club and "edge" not in club
    assert "The rest is as County, kohaku has it." in club
    assert "A fault leaves" in base and "A fault leaves" not in club  # said once
    assert "Nothing: all is as Tin Bucket, common page has it." in plain and "| " not in plain


def test_a_base_that_is_given_as_well_is_told_once(bucket):
    bucket("rules/county.koi", "rules/common/base.koi", "rules/./county.koi", "--out", "book.md")
    assert list(chapters(Path("book.md").read_text(encoding="utf-8")))[1:3] == [
        "Tin Bucket, common page",
        "County, kohaku",
    ]


def test_classes_and_prizes_stand_in_words(bucket):
    result = bucket("rules", "--prizes", "day.toml", "--classes", "classes.toml", "--out", "book.md")
    assert result.exit_code == 0, result.stderr
    text = Path("book.md").read_text(encoding="utf-8").replace("\\", "")
    assert text.startswith(
        "# Tin Bucket day\n\n- **date**: 2 May 2026\n- **classes**: Tin Bucket classes, edition 2026-2\n"
    )
    book = chapters(text)
    assert "| small | from 5 cm to below 20 cm |\n| large | 20 cm and more |" in book["The classes"]
    assert "By length, as measured." in book["The classes"] and "| all kohaku | kohaku |" in book["The classes"]
    first, best, friend = re.split(r"^### .*$", book["The prizes"], flags=re.MULTILINE)[1:]
    assert "- **places given**: 1 to 3, in each class group and class size by itself" in first
    assert "- **decided by**: score, then body\n- **with fewer than 3**: no prize" in first
    assert "“Place in its class”, places 1 to 2; of group all kohaku; of size small or large" in best
    assert "with the grade placed" in best and "tied share the place" in best
    assert "- **not together with**: “Best of the day”\n- **decided by**: votes" in friend
    assert "- **who can win**: every entry; also outside every class" in friend


def test_nothing_is_written_where_something_is_wrong(bucket):
    Path("other.toml").write_text(CLASSES, encoding="utf-8")
    result = bucket("rules", "--prizes", "day.toml", "--classes", "other.toml", "--out", "book.md")
    assert result.exit_code == 2 and "names another class table, classes.toml. Leave --classes out." in result.stderr
    Path("day.toml").write_text(DAY.replace("section body", "section bodi"), encoding="utf-8")
    result = bucket("rules", "--prizes", "day.toml", "--out", "book.md")
    assert result.exit_code == 2 and "bodi" in result.stderr and "day.toml, line 9" in result.stderr
    Path("rules/common/base.koi").unlink()
    assert bucket("rules", "--out", "book.md").exit_code == 2
    assert not Path("book.md").exists()


def test_a_sample_that_comes_out_otherwise_is_told(bucket):
    Path("rules/county.koi").write_text(COUNTY.replace("comes out placed", "comes out seen"), encoding="utf-8")
    Path("rules/club.koi").unlink()
    result = bucket("rules", "--out", "book.md")
    assert result.exit_code == 1 and 'sample "a razor" should come out seen' in result.stderr
    assert "Not as the standard says" in Path("book.md").read_text(encoding="utf-8")


def test_the_same_show_gives_the_same_bytes(bucket):
    for name in ("one", "two"):
        bucket("rules", "--prizes", "day.toml", "--out", f"{name}.html")
    assert Path("one.html").read_bytes() == Path("two.html").read_bytes()


@pytest.mark.parametrize("language", ["ja", "de"])
def test_the_book_speaks_the_language(run, language):
    result = run(SHOW / "rules", "--prizes", SHOW / "day.toml", "--out", "book.html", "--language", language)
    assert result.exit_code == 0
    page = read(Path("book.html"))
    assert page.language == language
    english = (
        "The prizes",
        "who can win",
        "rounded down",
        "decided by",
        "with the seals",
        "What is looked at",
        "place 1",
    )
    assert [text for text in page.texts for one in english if one in text] == []
    if language == "ja":
        # What the plugins of varieties say themselves is theirs to translate.
        traits = [trait for variety in registry().varieties.values() for trait in variety.traits.values()]
        said = [text for one in traits for text in (one.name, one.title, one.describe)]
        rules = "".join(path.read_text(encoding="utf-8") for path in (SHOW / "rules").glob("*.koi"))
        said += [word.replace("_", " ") for word in re.findall(r"(\w+) gives", rules)]
        said += ["More is better.", "Lantern Bay", "(an invented show)", "common/open.koi", "common page"]
        said += [path.stem.replace("_", " ") for path in (SHOW / "rules").glob("*.koi")]
        seals = re.findall(r"3-[0-9a-f]+", " ".join(page.texts))
        assert len(page.texts) > 500 and latin(page.texts, [*filter(None, said), *seals]) == []


def test_no_heading_stands_alone_at_the_foot_of_a_sheet(run, browser, tmp_path):
    run(SHOW / "rules", "--prizes", SHOW / "day.toml", "--out", "book.html")
    page = Page(browser, 390, 844, script=True, touch=True).open(tmp_path / "book.html")
    assert page.run("document.documentElement.scrollWidth <= document.documentElement.clientWidth")
    # A mark on each heading and one on the first text behind it tell on which sheet they come out.
    number = page.run(
        "(() => { const all = [...document.querySelectorAll('main h2, main h3, main h4, main h5, main p, main li,"
        " main td, main th, main dd')]; let i = 0, open = []; for (const one of all) {"
        " if (/^H/.test(one.tagName)) { one.append(` head${i}.`); open.push(i++); }"
        " else { one.append(...open.map((j) => ` next${j}.`)); open = []; } } return i; })()"
    )
    sheets = ["".join(one.extract_text().split()) for one in pypdf.PdfReader(page.printed(tmp_path / "b.pdf")).pages]

    def sheet(mark):
        return next(place for place, text in enumerate(sheets) if mark in text)

    assert number == 100 and len(sheets) > 5
    assert [i for i in range(number) if sheet(f"head{i}.") != sheet(f"next{i}.")] == []
