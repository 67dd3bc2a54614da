"""Fish put into the classes of a show, as a table, as data, and beside their grades."""

import csv
import json
from pathlib import Path

import openpyxl
import pytest
from click.testing import CliRunner

from koirules.commands import classes, grade_mixed, inputs, main
from koirules.plugins import registry_with
from koirules.vocabulary.kinds import Count
from koirules.vocabulary.traits import Trait
from tests.plugins.invented import Gives, lace

RULES = """standard "Trial (an invented house)" edition 1 variety kohaku
section body worth 100
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
grade keep if score at least 50
grade cull otherwise
"""
RECORDS = """fish,variety,length (mm),tail_stem,colour of bucket
1,Kohaku,530,strong,red
2,glitter kohaku,480 to 490,fair,
3,chagoi,1240,,
4,kohaku,,thin,
5,,120,,
"""


@pytest.fixture(autouse=True)
def show(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules.koi").write_text(RULES, encoding="utf-8")
    Path("lot.csv").write_text(RECORDS, encoding="utf-8")
    skin = lace(Trait("rows", "rows", Count(9)), name="glitter", is_skin=True)
    registry = registry_with(Gives(lace(includes=("shared",)), skin))
    for module in (inputs, grade_mixed):
        monkeypatch.setattr(module, "load_registry", lambda: registry)
    assert classes


def run(*words):
    result = CliRunner().invoke(main, [str(word) for word in words])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def rows(name):
    with Path(name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_a_table_is_shown_with_its_closed_side_and_rounding():
    result = run("classes", "lantern_bay_young")
    assert result.exit_code == 0
    assert "over 48 cm up to 53 cm" in result.output
    assert "rounded down to 0.5 cm" in result.output
    assert "any other with ginrin" in result.output
    assert "whatever no group names" in result.output


def test_each_fish_is_put_into_its_class():
    result = run("classes", "lantern_bay_young", "lot.csv", "--out", "out.csv")
    assert result.exit_code == 0
    assert [tuple(row.values()) for row in rows("out.csv")] == [
        ("1", "kohaku", "53", "kohaku", "53"),
        ("2", "kohaku with glitter", "48 cm to 49 cm", "others", "48 or 53"),
        ("3", "chagoi", "124", "others", "none"),
        ("4", "kohaku", "", "kohaku", ""),
        ("5", "", "12", "", "12"),
    ]
    lines = [" ".join(line.split()) for line in result.output.splitlines()]
    assert "1 kohaku, size 53" in lines
    assert "1 kohaku, not measured" in lines
    assert "1 group not known, size 12" in lines


def test_a_misspelt_variety_is_told_before_it_goes_with_the_others():
    Path("lot.csv").write_text("fish,variety,length\n1,kohakku,20\n2,kohakku,21\n", encoding="utf-8")
    result = run("classes", "lantern_bay_young", "lot.csv")
    assert result.exit_code == 0
    assert result.stderr.count('"kohakku"') == 1 and 'Did you mean "kohaku"?' in result.stderr
    assert '"others"' in result.stderr


def test_a_mark_for_what_is_not_known_is_no_variety():
    Path("lot.csv").write_text("fish,variety,length\n1,?,20\n2,n/a,21\n", encoding="utf-8")
    result = run("classes", "lantern_bay_young", "lot.csv", "--out", "out.csv")
    assert "No variety that is installed" not in result.stderr
    assert [row["class_group"] for row in rows("out.csv")] == ["", ""]


def test_classes_as_data():
    data = json.loads(run("classes", "tin_bucket_club", "lot.csv", "--json", "--out", "out.json").stdout)
    assert data == json.loads(Path("out.json").read_text(encoding="utf-8"))
    assert data["edition"] == "2026-1"
    by_fish = {row["fish"]: row for row in data["fish"]}
    assert by_fish["1"] == {
        "fish": "1",
        "variety": "kohaku",
        "measured": "53",
        "class_group": "patterned",
        "class_sizes": ["5"],
    }
    assert by_fish["3"]["class_sizes"] == ["8"]
    assert by_fish["4"]["class_sizes"] == []
    assert by_fish["5"]["class_group"] is None


def test_records_without_a_column_of_varieties_take_one_for_all():
    Path("lot.csv").write_text("fish,length\n1,20\n", encoding="utf-8")
    run("classes", "lantern_bay_young", "lot.csv", "--variety", "kohaku with glitter", "--out", "out.csv")
    assert rows("out.csv")[0]["variety"] == "kohaku with glitter"
    run("classes", "lantern_bay_young", "lot.csv", "--variety", "Glitter Kohaku", "--out", "said.csv")
    assert rows("said.csv") == rows("out.csv")
    assert run("classes", "lantern_bay_young", "lot.csv", "--variety", "kohakku").exit_code == 2


def test_results_carry_the_class():
    result = run("grade", "rules.koi", "graded.csv", "--classes", "lantern_bay_young")
    assert result.exit_code == 2
    Path("graded.csv").write_text("fish,length,tail_stem\n1,53,strong\n2,,fair\n", encoding="utf-8")
    result = run("grade", "rules.koi", "graded.csv", "--classes", "lantern_bay_young", "--out", "out.csv")
    assert result.exit_code == 0
    assert [(row["fish"], row["class_group"], row["class_size"]) for row in rows("out.csv")] == [
        ("1", "kohaku", "53"),
        ("2", "kohaku", ""),
    ]
    lines = [line.split() for line in result.output.splitlines()]
    assert ["1", "keep", "100", "kohaku", "53"] in [line[:5] for line in lines]
    assert ["2", "keep", "60", "kohaku", "?"] in [line[:5] for line in lines]


SHOW = RULES + "round first pick 2 by highest section body\n"
ENTERED = "fish,length,tail_stem\n1,68.1,strong\n2,53,fair\n3,48,thin\n"


def test_a_fish_outside_of_the_classes_is_told_first_and_placed_nowhere():
    Path("show.koi").write_text(SHOW, encoding="utf-8")
    Path("entered.csv").write_text(ENTERED, encoding="utf-8")
    words = ("grade", "show.koi", "entered.csv", "--classes", "lantern_bay_young")
    result = run(*words, "--out", "out.csv", "--out", "out.json")
    assert result.exit_code == 0
    told = "! 1 fish is placed nowhere. 1: the class table has no size for 68.1 cm"
    lines = [line.strip() for line in result.output.splitlines()]
    assert told in lines
    assert lines.index(told) < next(n for n, line in enumerate(lines) if line.startswith("fish"))
    assert "2 fish, 2 stay, 0 leave" in lines
    by_fish = {row["fish"]: row for row in rows("out.csv")}
    assert [by_fish[fish]["kept_by"] for fish in "123"] == ["", "first", "first"]
    assert by_fish["1"]["grade"] == "keep"
    assert by_fish["1"]["why"].startswith("placed nowhere: the class table has no size for 68.1 cm; ")
    fish = json.loads(Path("out.json").read_text(encoding="utf-8"))["results"]
    assert [one["outside"] for one in fish] == ["the class table has no size for 68.1 cm", None, None]


def test_a_standard_that_has_a_trait_of_the_class_says_itself_what_becomes_of_those_without():
    said = "trait class_size as label\n" + SHOW.partition("\n")[2]
    Path("show.koi").write_text(SHOW.partition("\n")[0] + "\n" + said, encoding="utf-8")
    Path("entered.csv").write_text(ENTERED, encoding="utf-8")
    result = run("grade", "show.koi", "entered.csv", "--classes", "lantern_bay_young", "--out", "out.csv")
    assert "placed nowhere" not in result.output
    assert [row["kept_by"] for row in rows("out.csv")] == ["first", "first", ""]


EACH = (
    RULES
    + """fault late "behind" if class_size is "53": lowers by 1 grade
round first pick 1 for each (class_group, class_size) by highest score
"""
)


def test_rules_figures_and_rounds_read_the_class_without_declaring_it():
    Path("show.koi").write_text(EACH, encoding="utf-8")
    entered = "fish,length,tail_stem\n1,53,strong\n2,52,fair\n3,48,thin\n4,47 to 50,fair\n5,68.1,strong\n"
    Path("entered.csv").write_text(entered, encoding="utf-8")
    result = run("grade", "show.koi", "entered.csv", "--classes", "lantern_bay_young", "--out", "out.json")
    assert result.exit_code == 0, result.output
    told = {one["fish"]: one for one in json.loads(Path("out.json").read_text(encoding="utf-8"))["results"]}
    assert {fish: one["possible"] for fish, one in told.items()} == {
        "1": ["cull"],
        "2": ["cull"],
        "3": ["cull"],
        "4": ["keep", "cull"],  # of two sizes, one of which lowers
        "5": ["keep"],
    }
    steps = {fish: one["course"][0] for fish, one in told.items() if one["course"]}
    assert {fish: (step["fate"], step["open"]) for fish, step in steps.items()} == {
        "1": ("kept", False),
        "2": ("passed over", True),  # more is marked than need be: 4 could come into its class
        "3": ("kept", True),
        "4": ("kept", True),
    }
    assert steps["1"]["why"] == "stands 1st of 2 in kohaku 53"
    assert steps["2"]["why"].startswith("1 place in kohaku 53; fish 1 stood above it by score")
    assert told["5"]["outside"] == "the class table has no size for 68.1 cm"


def test_a_page_that_reads_classes_warns_where_there_are_none_and_asks_for_none_on_its_sheet():
    Path("show.koi").write_text(EACH, encoding="utf-8")
    Path("entered.csv").write_text("fish,length,tail_stem\n1,53,strong\n", encoding="utf-8")
    result = run("grade", "show.koi", "entered.csv")
    assert result.exit_code == 0
    assert "[classes-missing]" in result.output
    assert run("sheet", "show.koi", "--out", "sheet.csv").exit_code == 0
    assert Path("sheet.csv").read_text(encoding="utf-8").splitlines()[0].split(",")[:2] == ["fish", "tail_stem"]
    Path("named.csv").write_text("fish,class_group,class_size,tail_stem\n1,kohaku,48,strong\n", encoding="utf-8")
    result = run("grade", "show.koi", "named.csv", "--out", "named.json")
    assert "[classes-missing]" not in result.output
    (fish,) = json.loads(Path("named.json").read_text(encoding="utf-8"))["results"]
    assert fish["course"][0]["why"] == "stands 1st of 1 in kohaku 48"


def test_results_of_a_mixed_batch_carry_the_class():
    lace_rules = RULES.replace("variety kohaku", "variety lace").replace("Trial", "Lace")
    Path("lace.koi").write_text(lace_rules, encoding="utf-8")
    records = "fish,variety,length,tail_stem\n1,lace,9,strong\n2,kohaku,10,strong\n"
    Path("lot.csv").write_text(records, encoding="utf-8")
    words = ("rules.koi", "lace.koi", "lot.csv", "--classes", "tin_bucket_club", "--out", "out.csv")
    assert run("grade", *words).exit_code == 0
    came = {row["fish"]: (row["class_group"], row["class_size"]) for row in rows("out.csv")}
    assert came == {"1": ("open", "none"), "2": ("patterned", "1")}


@pytest.mark.parametrize("rules", [("rules.koi",), ("rules.koi", "lace.koi")])
def test_what_is_written_names_the_class_table_with_its_edition(rules):
    lace_rules = RULES.replace("variety kohaku", "variety lace").replace("Trial", "Lace")
    Path("lace.koi").write_text(lace_rules, encoding="utf-8")
    Path("lot.csv").write_text("fish,variety,length,tail_stem\n2,kohaku,10,strong\n", encoding="utf-8")
    outs = [word for ending in ("html", "xlsx", "json") for word in ("--out", f"out.{ending}")]
    assert run("grade", *rules, "lot.csv", "--classes", "tin_bucket_club", *outs).exit_code == 0
    words = "Tin Bucket, club day (an invented club), edition 2026-1"
    assert words in Path("out.html").read_text(encoding="utf-8")
    assert json.loads(Path("out.json").read_text(encoding="utf-8"))["class_table"] == words
    sheet = openpyxl.load_workbook("out.xlsx")["standard"]
    assert ("class table", words) in [tuple(cell.value for cell in row) for row in sheet]


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("classes", "lantern_bay_yung", "lot.csv"), "no-class-table"),
        (("classes", "ours.toml", "lot.csv"), "ours.toml, line 2"),
        (("classes", "lantern_bay_young", "lot.csv", "--out", "out.xlsx"), "unknown-ending"),
        (("classes", "lantern_bay_young", "--out", "out.csv"), "Name a file of records"),
        (("classes", "lantern_bay_young", "nothing.csv"), "no-such-file"),
        (("classes", "lantern_bay_young", "lot.csv", "lot.csv"), "Give one at a time"),
        (("classes", "lantern_bay_young", "*.csv"), "Give one at a time"),
        (("classes", "lantern_bay_young", "."), "Give one at a time"),
        (("classes", "lantern_bay_young", "lot.parquet"), "Give one at a time"),
        (("classes", "lantern_bay_young", "unmeasured.csv"), "no-measured-column"),
        (("classes", "weight.toml", "lot.csv"), "class-trait-wrong"),
        (("grade", "rules.koi", "lot.csv", "--classes", "weight.toml"), "class-trait-wrong"),
        (("grade", "rules.koi", "lot.csv", "lot.csv", "--classes", "tin_bucket_club"), "give one file at a time"),
    ],
)
def test_what_cannot_be_is_answered_and_nothing_is_written(words, told):
    Path("ours.toml").write_text('title = "a"\nedition = = 2\n', encoding="utf-8")
    Path("unmeasured.csv").write_text("fish,lenght\n1,20\n", encoding="utf-8")
    sizes = 'trait = "length"\nunit = "kg"\nclosed = "upper"\nrounding = "none"\nsizes = [{name = "a", to = 2}]'
    Path("weight.toml").write_text(f'title = "a"\nedition = "2"\n[sizes]\n{sizes}', encoding="utf-8")
    Path("lot.csv").write_text("fish,length,tail_stem\n1,53,strong\n", encoding="utf-8")
    result = run(*words)
    assert result.exit_code == 2
    assert told in result.output, result.output
    assert not list(Path().glob("out.*"))
