"""A batch of mixed varieties: each fish by the standard of its variety and stage, ranked within it."""

import csv
import json
import re
from pathlib import Path
from xml.etree import ElementTree

import openpyxl
import pytest
from click.testing import CliRunner

from koirules.commands import grade_mixed, inputs, main
from koirules.plugins import registry_with
from koirules.vocabulary.kinds import Count, Scale, YesNo
from koirules.vocabulary.traits import Trait
from tests.plugins.invented import Gives, lace

KOHAKU = """standard "Lantern Bay, kohaku" edition 1 variety kohaku stage tosai
setting line = 50 from 40 to 60
section body worth 100
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
bonus edge 1 if maruten is yes
grade keep if score at least line
grade cull otherwise
"""
LACE = """standard "Tin Bucket, lace" edition 7 variety lace
section net worth 60
points net by net: faint gives 0, clear gives 10
section all worth 40
points marks by maruten: 0 gives 0, 4 gives 10
grade best if score at least 90
grade keep if score at least 50
grade cull otherwise
"""
RECORDS = """fish,Variety,stage,tail_stem,net,maruten,pond
a,kohaku,tosai,fair,,no,mill
b,lace,nisai,,clear,4,
c,kohaku,tosai,strong,,yes,
d,Lace,,,clear,1,
e,kohaku,nisai,strong,,,
f,,tosai,strong,,,
g,chagoi,tosai,,,,
h,kohakku,tosai,,,,
"""


@pytest.fixture(autouse=True)
def farm(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules").mkdir()
    Path("rules/kohaku.koi").write_text(KOHAKU, encoding="utf-8")
    Path("rules/lace.koi").write_text(LACE, encoding="utf-8")
    Path("lot.csv").write_text(RECORDS, encoding="utf-8")
    # `maruten` is yes or no for a kohaku, and a number here: one column serves both.
    net = Trait("net", "net", Scale(("faint", "clear")))
    of_lace = lace(net, Trait("maruten", "marks", Count(9)), also=("open work",), forms=("fine lace",))
    skin = lace(Trait("rows", "rows", YesNo()), name="glitter", is_skin=True)
    registry = registry_with(Gives(of_lace, skin, rulesets={"lace_house": Path("rules/lace.koi").resolve()}))
    assert not registry.problems
    for module in (inputs, grade_mixed):
        monkeypatch.setattr(module, "load_registry", lambda: registry)


def run(*words):
    result = CliRunner().invoke(main, ["grade", *(str(word) for word in words)])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def rows(name):
    with Path(name).open(encoding="utf-8", newline="") as file:
        return {row["fish"]: row for row in csv.DictReader(file)}


WAYS = [
    ("rules/kohaku.koi", "rules/lace.koi"),
    ("rules/kohaku.koi", "lace_house"),
    ("lace_house", "rules/kohaku.koi"),
    ("rules",),
]


@pytest.mark.parametrize("rules", WAYS)
def test_each_fish_is_graded_by_the_standard_of_its_variety_and_stage(rules):
    result = run(*rules, "lot.csv", "--out", "out.csv")
    assert result.exit_code == 1
    came = {fish: (row["grade"], row["score"], row["standard"]) for fish, row in rows("out.csv").items()}
    assert came == {
        "a": ("keep", "60.00", "Lantern Bay, kohaku, edition 1"),
        "c": ("keep", "100.00", "Lantern Bay, kohaku, edition 1"),
        "b": ("best", "100.00", "Tin Bucket, lace, edition 7"),
        "d": ("keep", "70.00", "Tin Bucket, lace, edition 7"),
        "e": ("", "", ""),
        "f": ("", "", ""),
        "g": ("", "", ""),
        "h": ("", "", ""),
    }


def test_fish_are_ranked_within_their_standard_and_what_was_not_graded_is_said():
    result = run(*WAYS[0], "lot.csv")
    lines = [line.split() for line in result.stdout.splitlines()]
    order = [line[0] for line in lines if line[1:2] in (["keep"], ["best"], ["cull"]) and len(line) > 3]
    assert order == ["c", "a", "b", "d"]
    told = " ".join(result.stdout.split())
    assert "2 fish by Lantern Bay, kohaku, edition 1" in told
    assert "2 items by Tin Bucket, lace, edition 7" in told
    assert "Not graded: 4 items" in told
    assert "no standard for kohaku, nisai: e" in told
    assert "no variety recorded: f" in told
    assert "no standard for chagoi: g" in told
    assert 'no standard for kohakku (did you mean "kohaku"?): h' in told


def test_as_recorded_keeps_the_order_of_the_records():
    lines = [line.split() for line in run(*WAYS[0], "lot.csv", "--as-recorded").stdout.splitlines()]
    assert [line[0] for line in lines if line[1:3] in (["keep", "60"], ["keep", "100"])] == ["a", "c"]


def test_a_batch_in_which_all_are_graded_ends_well():
    Path("lot.csv").write_text("fish,variety,stage,net\nb,lace,nisai,clear\nd,lace,,faint\n", encoding="utf-8")
    assert run(*WAYS[0], "lot.csv").exit_code == 0


def test_two_standards_for_the_same_fish_are_named():
    Path("other.koi").write_text(LACE.replace("Tin Bucket, lace", "Tin Bucket, nets"), encoding="utf-8")
    Path("lot.csv").write_text("fish,variety,net\nb,lace,clear\nd,lace,\n", encoding="utf-8")
    result = run("rules/lace.koi", "other.koi", "lot.csv")
    told = " ".join(result.stdout.split())
    assert "more than one standard: Tin Bucket, lace, edition 7, Tin Bucket, nets, edition 7: b, d" in told


def test_without_a_column_the_stage_is_not_asked_and_what_would_tell_is_said():
    Path("old.koi").write_text(KOHAKU.replace("stage tosai", "stage nisai"), encoding="utf-8")
    Path("lot.csv").write_text("fish,variety,tail_stem\na,kohaku,fair\n", encoding="utf-8")
    assert run("rules/kohaku.koi", "rules/lace.koi", "lot.csv").exit_code == 0
    result = run("rules/kohaku.koi", "old.koi", "lot.csv")
    assert result.exit_code == 1
    assert "a column stage would tell: a" in " ".join(result.stdout.split())


def test_a_standard_with_a_skin_is_for_fish_with_that_skin_alone():
    dull = "fault dull if rows is no: no better than cull\n"
    text = LACE.replace("variety lace", "variety lace with glitter") + dull
    Path("skin.koi").write_text(text, encoding="utf-8")
    Path("lot.csv").write_text("fish,variety,net,rows\nb,glitter lace,clear,no\nd,lace,clear,\n", encoding="utf-8")
    result = run("skin.koi", "rules/kohaku.koi", "lot.csv", "--out", "out.csv")
    assert result.exit_code == 1
    came = rows("out.csv")
    assert came["b"]["grade"] == "cull"
    assert came["d"]["why"] == "not graded: no standard for lace"


def test_every_format_carries_the_standard_of_each_fish():
    run(*WAYS[0], "lot.csv", "--out", "out.json", "--out", "out.xlsx")
    data = json.loads(Path("out.json").read_text(encoding="utf-8"))
    assert data["standard"] is None
    assert [(one["title"], one["edition"], one["stage"]) for one in data["standards"]] == [
        ("Lantern Bay, kohaku", "1", "tosai"),
        ("Tin Bucket, lace", "7", None),
    ]
    by_fish = {row["fish"]: row for row in data["results"]}
    assert by_fish["b"]["labels"]["standard"] == "Tin Bucket, lace, edition 7"
    assert by_fish["e"]["why"] == "not graded: no standard for kohaku, nisai"
    assert by_fish["e"]["grade"] is None and by_fish["e"]["score_low"] is None
    assert by_fish["b"]["labels"]["seal"] == data["standards"][1]["seal"]
    book = openpyxl.load_workbook("out.xlsx")
    heads, *cells = book["results"].iter_rows(values_only=True)
    assert {row[0]: row[heads.index("standard")] for row in cells}["c"] == "Lantern Bay, kohaku, edition 1"
    about = [row[1] for row in book["standard"].iter_rows(values_only=True)]
    assert "Lantern Bay, kohaku" in about and "Tin Bucket, lace" in about


def test_a_setting_changes_the_standards_that_have_it():
    result = run(*WAYS[0], "lot.csv", "--set", "line=60")
    assert "; line = 60" in next(
        line for line in result.stdout.splitlines() if "by Lantern Bay, kohaku, edition 1" in line
    )
    result = run(*WAYS[0], "lot.csv", "--set", "lime=60")
    assert result.exit_code == 2
    assert 'Did you mean "line"?' in result.output
    assert run(*WAYS[0], "lot.csv", "--set", "line=99").exit_code == 2


def test_decisions_go_to_the_standard_of_their_fish():
    Path("said.csv").write_text("fish,grade,by,reason\nb,cull,I,dull skin\n", encoding="utf-8")
    assert "b: cull, by the rules best; I: dull skin" in run(*WAYS[0], "lot.csv", "--decisions", "said.csv").stdout
    Path("said.csv").write_text("fish,grade,by,reason\nz,cull,I,dull skin\n", encoding="utf-8")
    result = run(*WAYS[0], "lot.csv", "--decisions", "said.csv")
    assert result.exit_code == 2
    assert result.output.count("decision-of-nobody") == 1


@pytest.mark.parametrize(
    ("records", "code"),
    [
        ("fish,variety,nett\na,lace,clear\n", "unknown-column"),
        ("fish,variety,net\na,lace,crisp\n", "value-unknown-word"),
        ("fish,variety,maruten\na,kohaku,4\n", "value-number-for-word"),
        ("fish,variety,net\na,lace,clear\na,kohaku,\n", "doubled-fish"),
        ("fish,variety,net\na,lace,clear\na,chagoi,\n", "doubled-fish"),
        ("variety,net\nlace,clear\n", "no-fish-column"),
    ],
)
def test_what_is_wrong_with_the_records_is_told_once_and_nothing_is_written(records, code):
    Path("lot.csv").write_text(records, encoding="utf-8")
    result = run("rules/lace.koi", "rules/kohaku.koi", "lot.csv", "--out", "out.csv")
    assert result.exit_code == 2
    assert "1 problem;" in result.output, result.output
    assert code in result.output
    assert not Path("out.csv").exists()


def test_derived_traits_are_worked_out_and_what_is_doubtful_is_told_once():
    rules = KOHAKU.replace("bonus edge 1 if maruten is yes", "fault slim if fineness above 5: no better than cull")
    Path("slim.koi").write_text(rules, encoding="utf-8")
    records = (
        "fish,variety,length,depth,fineness,tail_stem\na,kohaku,60,10,,strong\nb,kohaku,30,10,8,strong\nc,lace,,,,\n"
    )
    Path("lot.csv").write_text(records, encoding="utf-8")
    result = run("slim.koi", "rules/lace.koi", "lot.csv", "--out", "out.csv")
    assert result.exit_code == 0
    came = rows("out.csv")
    assert (came["a"]["grade"], came["b"]["grade"]) == ("cull", "cull")
    assert result.stderr.count("warning:") == 1


def test_what_a_fish_has_in_a_column_of_others_is_a_warning():
    Path("lot.csv").write_text("fish,variety,net,kiwa\na,lace,clear,sharp\nb,lace,,sharp\n", encoding="utf-8")
    result = run(*WAYS[0], "lot.csv")
    assert result.exit_code == 0
    assert "column-of-others" in result.stderr
    assert "2 records have a value here" in result.stderr


def test_what_cannot_be_is_answered():
    assert "The records come behind the rules" in run("rules/kohaku.koi", "rules/lace.koi").output
    assert "grade whole files by one standard" in run(*WAYS[0], "lot.csv", "lot.csv").output
    assert run(*WAYS[0], "lot.csv", "--out", "rules/lace.koi").exit_code == 2
    assert "nothing was written" in run("rules/kohaku.koi", "rules/lice.koi", "lot.csv").output
    misspelt = run("rules/kohaku.koi", "tosai_kohakku", "lot.csv")
    assert misspelt.exit_code == 2 and "no-rules-or-records" in misspelt.stderr
    assert 'Did you mean "tosai_kohaku"?' in misspelt.stderr
    twice = run("rules/kohaku.koi", "rules/lace.koi", "rules/../rules/kohaku.koi", "lot.csv")
    assert twice.exit_code == 2 and "standard-named-twice" in twice.stderr
    Path("empty.csv").write_text("fish,variety\n", encoding="utf-8")
    assert "There is no record" in run(*WAYS[0], "empty.csv").stderr


def test_one_rule_file_is_what_it_was_and_a_folder_with_one_is_for_its_fish_alone():
    Path("lot.csv").write_text("fish,tail_stem\na,fair\n", encoding="utf-8")
    assert "1 fish by Lantern Bay, kohaku, edition 1" in run("rules/kohaku.koi", "lot.csv").output
    Path("one").mkdir()
    Path("one/kohaku.koi").write_text(KOHAKU, encoding="utf-8")
    Path("lots.csv").write_text("fish,variety,tail_stem\na,kohaku,fair\nb,lace,\n", encoding="utf-8")
    result = run("one", "lots.csv")
    assert "no standard for lace: b" in result.output
    Path("one/standard.koi").write_text(KOHAKU, encoding="utf-8")
    assert "1 fish by Lantern Bay, kohaku, edition 1" in run("one", "lot.csv").output


def test_one_standard_carries_variety_and_stage_along_and_tells_who_is_of_others():
    fish = ("a,Kohaku,Tosai", "b,lace,tosai", "c,,nisai", "d,lace,")
    text = "".join(f"{one},fair\n" for one in fish)
    Path("lot.csv").write_text(f"fish,variety,stage,tail_stem\n{text}", encoding="utf-8")
    result = run("rules/kohaku.koi", "lot.csv", "--out", "out.csv")
    assert result.exit_code == 0
    assert result.stderr.count("fish-for-others") == 2
    assert '2 records are recorded as "lace", but this standard is for "kohaku"' in result.stderr
    assert 'One record is recorded as "nisai", but this standard is for "tosai"' in result.stderr
    assert {fish: (row["variety"], row["stage"]) for fish, row in rows("out.csv").items()}["b"] == ("lace", "tosai")


def test_a_mark_for_what_is_not_known_is_neither_variety_nor_stage():
    Path("lot.csv").write_text("fish,variety,stage,tail_stem\na,?,-,fair\n", encoding="utf-8")
    assert "no variety and no stage recorded: a" in run(*WAYS[0], "lot.csv").output
    assert "fish-for-others" not in run(WAYS[0][0], "lot.csv").stderr


def test_a_fish_is_picked_for_by_what_people_call_it():
    Path("lot.csv").write_text("fish,variety,net\na,Open-Work,clear\nb,Fine Lace,clear\n", encoding="utf-8")
    result = run(*WAYS[0], "lot.csv")
    assert result.exit_code == 0 and "2 items by Tin Bucket, lace" in result.output
    Path("lot.csv").write_text("fish,variety,tail_stem\na,kohaku,fair\nb,Fine Lace,\n", encoding="utf-8")
    Path("one").mkdir()
    Path("one/kohaku.koi").write_text(KOHAKU, encoding="utf-8")
    assert "no standard for lace (fine lace): b" in run("one", "lot.csv").output


def test_a_page_has_a_part_for_each_standard_and_the_fish_that_none_was_for():
    result = run(*WAYS[0], "lot.csv", "--set", "line=55", "--out", "page.html", "--plot", "plot.svg")
    assert result.exit_code == 1
    page = Path("page.html").read_text(encoding="utf-8")
    for part, title in enumerate(("Lantern Bay, kohaku", "Tin Bucket, lace")):
        assert f'<h2 id="part-title-{part}">{title}</h2>' in page
    assert "Changed for this run: <b>line = 55</b>" in page
    assert page.count("A grade is a sorting result") == 1  # what both say stands once
    assert re.findall(r"<bdi>(\w)</bdi></th><td>(\w*)</td><td>(\w*)</td><td>([^<]*)<", page) == [
        ("e", "kohaku", "nisai", "no standard for kohaku, nisai"),
        ("f", "", "tosai", "no variety recorded"),
        ("g", "chagoi", "tosai", "no standard for chagoi"),
        ("h", "kohakku", "tosai", "no standard for kohakku"),
    ]
    names = re.findall(r'<h4 class="name" id="fish-\d+-name"><bdi>(\w)</bdi>', page)
    assert names == ["c", "a", "b", "d"]  # best first within each standard


def test_a_plot_has_a_row_for_each_standard():
    run(*WAYS[0], "lot.csv", "--plot", "plot.svg", "--plot", "plot.png")
    svg = ElementTree.fromstring(Path("plot.svg").read_text(encoding="utf-8"))  # noqa: S314
    words = [one.text for one in svg.iter("{http://www.w3.org/2000/svg}text")]
    heights = {one.text: float(one.get("y")) for one in svg.iter("{http://www.w3.org/2000/svg}text")}
    assert "Lantern Bay, kohaku, edition 1" in words
    assert heights["c"] < heights["Tin Bucket, lace, edition 7"] < heights["b"] < heights["Not graded: 4 items"]
    assert heights["Not graded: 4 items"] < float(svg.get("height"))
    assert svg.findtext("{http://www.w3.org/2000/svg}title") == "lot.csv by 2 standards"
    assert Path("plot.png").read_bytes().startswith(b"\x89PNG")


def test_a_standard_that_gives_no_points_has_its_row_and_says_so():
    Path("rules/lace.koi").write_text(
        'standard "Tin Bucket, lace" edition 7 variety lace\ngrade all otherwise\n', encoding="utf-8"
    )
    run(*WAYS[0], "lot.csv", "--plot", "plot.svg", "--out", "page.html")
    assert "No section of this standard gives points." in Path("plot.svg").read_text(encoding="utf-8")
    assert Path("page.html").exists()
    Path("rules/kohaku.koi").write_text(
        'standard "Lantern Bay, kohaku" edition 1 variety kohaku stage tosai\ngrade all otherwise\n', encoding="utf-8"
    )
    result = run(*WAYS[0], "lot.csv", "--plot", "none.svg")
    assert result.exit_code == 2
    assert "nothing-to-plot" in result.output
    assert not Path("none.svg").exists()


def test_a_page_of_fish_that_no_standard_is_for_names_them():
    Path("lot.csv").write_text("fish,variety\ng,chagoi\n", encoding="utf-8")
    assert run(*WAYS[0], "lot.csv", "--out", "page.html").exit_code == 1
    page = Path("page.html").read_text(encoding="utf-8")
    assert "that were not graded" in page
    assert 'class="name"' not in page
    assert "no standard for chagoi" in page


def test_a_word_that_is_neither_rules_nor_records_is_told_with_what_is_near():
    result = run("rules/kohaku.koi", "lace_huose", "lot.csv")
    assert result.exit_code == 2
    assert "no-rules-or-records" in result.output
    assert "lace_house" in result.output


BROKEN = RECORDS + "i,kohaku,tosai,stronger,,no,\nj,lace,,,clear,40,\na,lace,,,clear,1,\n"


def test_broken_rows_of_a_mixed_batch_are_left_out_where_that_is_asked():
    Path("lot.csv").write_text(BROKEN, encoding="utf-8")
    assert run("rules", "lot.csv", "--out", "all.csv").exit_code == 2
    assert not Path("all.csv").exists()
    told = run("rules", "lot.csv", "--out", "all.csv", "--leave-out-broken")
    assert told.exit_code == 1
    assert "3 rows are left out." in told.stderr
    assert "stronger" in told.stderr
    assert sorted(rows("all.csv")) == ["a", "b", "c", "d", "e", "f", "g", "h"]


def test_a_broken_cell_of_a_mixed_batch_is_taken_as_open_where_that_is_asked():
    Path("lot.csv").write_text(BROKEN.replace("\na,lace", "\nk,lace"), encoding="utf-8")
    told = run("rules", "lot.csv", "--out", "all.json", "--broken-as-open")
    assert told.exit_code == 1
    results = {one["fish"]: one for one in json.loads(Path("all.json").read_text(encoding="utf-8"))["results"]}
    for fish, trait in (("i", "tail_stem"), ("j", "maruten")):
        (again,) = results[fish]["look_again"]
        assert again["trait"] == trait
        assert again["why"].endswith("It was taken as not recorded.")


def test_a_batch_whose_only_fault_is_a_broken_cell_does_not_end_well():
    lines = BROKEN.splitlines()
    Path("lot.csv").write_text("\n".join([lines[0], lines[1], lines[9]]) + "\n", encoding="utf-8")
    assert run("rules", "lot.csv", "--broken-as-open").exit_code == 1
    assert run("rules", "lot.csv", "--leave-out-broken").exit_code == 1
    Path("lot.csv").write_text("\n".join(lines[:2]) + "\n", encoding="utf-8")
    assert run("rules", "lot.csv", "--broken-as-open", "--leave-out-broken").exit_code == 0
