"""`koirules prizes`: from the entry sheet to the list of prizes, over two varieties."""

import csv
import json
import re
from pathlib import Path

import html5lib
import openpyxl
import pytest
from click.testing import CliRunner

from koirules.commands import grade_mixed, inputs, main
from koirules.plugins import registry_with
from koirules.vocabulary.kinds import Scale
from koirules.vocabulary.traits import Trait
from tests.plugins.invented import Gives, lace

RULES = """standard "Duck Pond, {variety}" edition 2026-1 variety {variety}
section body worth 40
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
section own worth 60
{points}
grade good if score at least 50
grade plain otherwise
"""
CLASSES = """title = "Duck Pond classes (invented)"
edition = "3"
[sizes]
trait = "length"
unit = "cm"
closed = "upper"
rounding = "none"
sizes = [{ name = "15", to = 15 }, { name = "25", title = "up to 25", to = 25 }]
[[groups]]
name = "red"
title = "red and white"
varieties = ["kohaku"]
[[groups]]
name = "others"
others = true
"""
DAY = """title = "Duck Pond, club day (invented)"
date = 2026-05-02
classes = "classes.toml"
[[prize]]
name = "class"
title = "Place in its class"
for_each = ["class group", "class size"]
places = 2
by = ["section body", "score"]
[[prize]]
name = "size"
title = "Best of its size"
for_each = "class size"
among = { prize = "class", places = 1 }
by = ["votes"]
[[prize]]
name = "show"
title = "Best of the show"
among = "size"
by = "section body"
ties = "share"
"""
RECORDS = """fish,variety,Owner,length (cm),tail_stem,outline,net
a,kohaku,=A. Rill,12,strong,good,
b,kohaku,B. Weir,14,strong,good,
c,kohaku,C. Ford,15,fair,fair,
d,lace,D. Sluice,15,strong,,clear
e,lace,A. Rill,15.1,fair,,clear
f,lace,B. Weir,26,fair,,clear
g,kohaku,C. Ford,,fair,good,
h,chagoi,D. Sluice,20,,,
i,lace,A. Rill,14 to 16,fair,,faint
"""
VOTES = "judge,fish,prize\nK,a,size\nL,d,size\nM,d,size\nK,e,size\n"
DECIDED = "prize,fish,by,reason\nclass,a,M. Reed,steadier in the bowl\n"


@pytest.fixture(autouse=True)
def show(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules").mkdir()
    points = "points outline by outline: poor gives 0, fair gives 4, good gives 8, excellent gives 10"
    Path("rules/kohaku.koi").write_text(RULES.format(variety="kohaku", points=points), encoding="utf-8")
    points = "points net by net: faint gives 0, clear gives 10"
    Path("rules/lace.koi").write_text(RULES.format(variety="lace", points=points), encoding="utf-8")
    for name, text in {"classes.toml": CLASSES, "day.toml": DAY, "lot.csv": RECORDS, "votes.csv": VOTES}.items():
        Path(name).write_text(text, encoding="utf-8")
    Path("decided.csv").write_text(DECIDED, encoding="utf-8")
    registry = registry_with(Gives(lace(Trait("net", "net", Scale(("faint", "clear"))), includes=("shared",))))
    assert not registry.problems
    for module in (inputs, grade_mixed):
        monkeypatch.setattr(module, "load_registry", lambda: registry)


def run(*words, day="day.toml"):
    words = ["prizes", day, "lot.csv", "--rules", "rules", "--votes", "votes.csv", *words]
    result = CliRunner().invoke(main, words)
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def test_fish_in_no_class_come_first_and_a_tie_waits_with_what_hangs_on_it():
    told = run().stdout
    assert told.index("its length is not recorded: g") < told.index("Place in its class")
    assert "its size could be 15 or 25: measure it again: i" in told
    assert "no size for its length: f" in told
    assert "not graded: no standard for chagoi: h" in told
    assert "these are tied (body 40.00, score 88.00). Fish: a, b." in " ".join(told.split())
    assert "Places 1 to 2 wait for a decision" in " ".join(told.split())
    waits = " ".join(told[told.index("to settle\n") :].split())
    assert (
        "Best of its size, size 15: Place 1 waits for what is not settled" not in waits
    )  # d has the votes of two judges


def test_a_fish_of_the_last_grade_that_is_placed_is_warned_of_until_the_prize_names_grades():
    lowered = Path("rules/kohaku.koi").read_text(encoding="utf-8").replace("score at least 50", "score at least 99")
    Path("rules/kohaku.koi").write_text(lowered, encoding="utf-8")
    told = " ".join(run("--decisions", "decided.csv").stderr.split())
    assert 'have the last grade of the rules and a place in the prize "class": a, b' in told
    assert (
        "[prize-to-lowest-grade]" in told and told.count("[prize-to-lowest-grade]") == 1
    )  # others are among its winners
    mend = re.search(r"where = \{ grades = \[[^]]*\] \}", told)[0]
    Path("named.toml").write_text(DAY.replace("places = 2\n", f"places = 2\n{mend}\n", 1), encoding="utf-8")
    again = run(day="named.toml")
    assert "prize-to-lowest-grade" not in again.stderr and "Place in its class\n  red" not in again.stdout


def test_a_tie_names_the_prize_as_a_decision_has_it_and_a_pdf_says_how_it_comes_about():
    assert "write the name of the prize: class." in run().stdout
    told = run("--certificates", "c.pdf").output
    assert "saves it as PDF" in told and not Path("c.pdf").exists()


def test_the_points_of_standards_are_compared_only_where_their_fish_meet():
    richer = Path("rules/lace.koi").read_text(encoding="utf-8").replace("own worth 60", "own worth 70")
    Path("rules/lace.koi").write_text(richer, encoding="utf-8")
    assert "prize-points-unlike" not in run().stderr  # in each class group there is one standard
    Path("one.toml").write_text(DAY.replace('["class group", "class size"]', '"class size"'), encoding="utf-8")
    told = " ".join(run(day="one.toml").stderr.split())
    assert "prize-points-unlike" in told and "100 points in Duck Pond, kohaku" in told and "110 points in" in told


def test_all_that_is_decided_gives_the_whole_list():
    result = run(
        "--decisions", "decided.csv", "--out", "p.json", "--out", "p.csv", "--out", "p.xlsx", "--out", "p.html"
    )
    assert result.exit_code == 1  # a fish was not graded
    read = json.loads(Path("p.json").read_text(encoding="utf-8"))
    assert (read["title"], read["date"]) == ("Duck Pond, club day (invented)", "2026-05-02")
    assert read["class_table"] == {"title": "Duck Pond classes (invented)", "edition": "3"}
    places = {
        (one["name"], *part["of"].values()): [(each["place"], each["fish"]) for each in part["places"]]
        for one in read["prizes"]
        for part in one["parts"]
    }
    assert places == {
        ("class", "red", "15"): [(1, "a"), (2, "b")],
        ("class", "others", "15"): [(1, "d")],
        ("class", "others", "25"): [(1, "e")],
        ("size", "15"): [(1, "d")],
        ("size", "25"): [(1, "e")],
        ("show",): [(1, "d")],
    }
    assert [(one["fish"], one["why"]) for one in read["no_class"]][-1] == ("h", "not graded: no standard for chagoi")
    assert read["prizes"][0]["no_fish_in"] == [{"class_group": "red", "class_size": "25"}]
    with Path("p.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert [(row["prize"], row["place"], row["fish"]) for row in rows] == [
        (name, str(place), fish) for (name, *_), told in places.items() for place, fish in told
    ]
    assert rows[0]["owner"] == "'=A. Rill"
    # a: 40 of 40 for the body, 8 of 10 of 60 for the outline.
    assert [rows[0][name] for name in ("grade", "score", "among")] == ["good", "88.00", "3"]
    assert (rows[3]["grade"], rows[3]["score"]) == ("good", "84.00")
    assert [read["prizes"][0]["parts"][0]["places"][0][name] for name in ("grade", "score")] == ["good", "88.00"]
    assert rows[0]["reason"] == "steadier in the bowl"
    assert rows[0]["class table"] == "Duck Pond classes (invented), edition 3"
    sheets = openpyxl.load_workbook("p.xlsx")
    assert sheets.sheetnames == ["prizes", "no class", "occasion"]
    told = [[cell.value for cell in row] for row in sheets["prizes"].iter_rows(min_row=2)]
    assert [(row[0], row[4], row[5]) for row in told] == [
        (row["prize"], int(row["place"]), row["fish"]) for row in rows
    ]
    assert told[0][7] == "=A. Rill"
    assert sheets["prizes"]["H2"].data_type == "s"
    page = Path("p.html").read_text(encoding="utf-8")
    html5lib.HTMLParser(strict=True).parse(page)
    for words in ("Duck Pond, club day (invented)", "2 May 2026", "edition 3", "decided by M. Reed", "quarantine"):
        assert words in page
    assert "<small>3 fish</small>" in page and '<td class="grade">good</td>' in page
    assert '<td class="score">84.00</td>' in page  # where the score decides nothing


def test_a_place_that_follows_from_what_was_decided_says_about_which_fish_and_why():
    assert "decided by M. Reed: steadier in the bowl" in " ".join(run("--decisions", "decided.csv").stdout.split())
    told = " ".join(run("--decisions", "decided.csv", "--out", "p.html", "--out", "p.csv").stdout.split())
    assert "decided by M. Reed with a: steadier in the bowl" in told
    assert "decided by M. Reed with a: steadier in the bowl" in Path("p.html").read_text(encoding="utf-8")
    with Path("p.csv").open(encoding="utf-8", newline="") as file:
        reasons = {row["fish"]: row["reason"] for row in csv.DictReader(file) if row["prize"] == "class"}
    assert (reasons["a"], reasons["b"]) == ("steadier in the bowl", "")


def test_rule_files_without_titles_in_a_language_are_named_once():
    told = run("--language", "fr").stderr
    assert told.count("No title in") == 1
    assert 'No title in rules/kohaku.koi or rules/lace.koi is given in the language "fr"' in told.replace("\\", "/")


def test_a_customer_and_the_public_see_no_owner():
    for reader, seen in (("house", True), ("customer", False)):
        names = [f"{reader}.{ending}" for ending in ("html", "csv", "xlsx", "json")]
        outs = [word for name in names for word in ("--out", name)]
        told = run("--decisions", "decided.csv", *outs, "--certificates", f"{reader}-c.html", "--for", reader).stdout
        assert ("D. Sluice" in told) == seen
        for name in (*names, f"{reader}-c.html"):
            if name.endswith("xlsx"):
                cells = [cell.value for sheet in openpyxl.load_workbook(name) for row in sheet for cell in row]
                assert ("D. Sluice" in cells) == seen
            else:
                assert ("D. Sluice" in Path(name).read_text(encoding="utf-8")) == seen


@pytest.mark.parametrize("paper", ["a4", "a5"])
def test_each_place_has_a_certificate(paper):
    run("--decisions", "decided.csv", "--certificates", "c.html", "--paper", paper, "--mark", "mark.svg")
    assert not Path("c.html").exists()  # there is no mark.svg
    run("--decisions", "decided.csv", "--certificates", "c.html", "--paper", paper)
    page = Path("c.html").read_text(encoding="utf-8")
    html5lib.HTMLParser(strict=True).parse(page)
    assert page.count("<main>") == 7
    assert f"size: {paper.upper()}" in page
    assert "First place, red and white, size 15" in page
    assert "Duck Pond, kohaku, edition 2026-1" in page


def test_what_is_wrong_is_told_at_once_and_nothing_is_written():
    Path("votes.csv").write_text("judge,koi\nK,a\n", encoding="utf-8")
    Path("decided.csv").write_text("prize,fish,by,reason\nclass,a,M. Reed,\n,b,M. Reed,why\n", encoding="utf-8")
    result = run("--decisions", "decided.csv", "--out", "p.csv")
    assert result.exit_code == 2
    assert result.stderr.count("[prize-columns]") == 2
    assert result.stderr.count("[prize-cell-blank]") == 2
    assert not Path("p.csv").exists()


@pytest.mark.parametrize(
    ("change", "code"),
    [
        (('by = ["votes"]', 'by = ["section bodi"]'), "prize-name-unknown"),
        (('"classes.toml"', '"clases.toml"'), "no-class-table"),
        (('for_each = "class size"', 'for_each = "pond name"'), "prize-name-unknown"),
        (("[[prize]]", "[[price]]"), "prize-key-unknown"),
    ],
)
def test_a_wrong_table_ends_with_its_problem(change, code):
    Path("day.toml").write_text(DAY.replace(*change), encoding="utf-8")
    result = run("--out", "p.csv")
    assert result.exit_code == 2
    assert f"[{code}]" in result.stderr
    assert not Path("p.csv").exists()


def test_what_was_given_is_never_written_over():
    for out in ("day.toml", "lot.csv", "rules/kohaku.koi"):
        before = Path(out).read_bytes()
        result = run("--certificates", out) if not out.endswith(".csv") else run("--out", out, "--replace")
        assert result.exit_code == 2
        assert Path(out).read_bytes() == before
    assert run("--out", "p.pdf").exit_code == 2
    assert "class-table" not in run(day="nothing.toml").stderr
    assert run(day="nothing.toml").exit_code == 2


def test_a_prize_for_each_owner_cannot_be_shown_without_owners():
    Path("day.toml").write_text(DAY.replace('for_each = "class size"', 'for_each = "owner"'), encoding="utf-8")
    assert "owner" in run("--for", "customer").stderr
    assert run("--for", "customer").exit_code == 2


BEST = """
title = "Show"
date = 2027-04-10

[[prize]]
name = "best"
places = 2
by = ["score"]
"""


def test_a_fish_that_a_fault_bars_wins_nothing_and_is_named_first(tmp_path):
    rules = tmp_path / "rules.koi"
    rules.write_text(
        'standard "Show" edition 1 variety kohaku\nfault bent "bent spine" if spine is bent: no better than out\n'
        "section body worth 100\npoints o by outline: poor gives 0, fair gives 4, good gives 8, excellent gives 10\n"
        "grade first if score at least 50\ngrade out otherwise\n",
        encoding="utf-8",
    )
    occasion = tmp_path / "day.toml"
    occasion.write_text(
        'title = "Show"\ndate = 2027-04-10\n\n[[prize]]\nname = "best"\nplaces = 2\nby = ["score"]\n', encoding="utf-8"
    )
    records = tmp_path / "records.csv"
    records.write_text("fish,outline,spine\nA,excellent,bent\nB,good,straight\nC,poor,straight\n", encoding="utf-8")
    done = CliRunner().invoke(
        main, ["prizes", str(occasion), str(records), "--rules", str(rules), "--out", str(tmp_path / "p.csv")]
    )
    assert "kept from prizes by a fault: bent spine: A" in done.output, done.output
    with (tmp_path / "p.csv").open(encoding="utf-8-sig") as file:
        winners = [row["fish"] for row in csv.DictReader(line for line in file if not line.startswith("#"))]
    assert winners[:1] == ["B"]
    assert "A" not in winners
