"""`koirules why` on what would have changed a grade, and on two fish side by side."""

from decimal import Decimal
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main

ROOT = Path(__file__).parents[2]
RULES = """standard "Trial (an invented house)" edition 2026-1 variety kohaku
fault gap "no tail gap" if odome below 3 %: no better than sell
section look "look" worth 60
points edge "edge" by kiwa: blurred gives 0, fair gives 4, sharp gives 8, razor gives 10
points white "white" by shiroji: yellow gives 0, cream gives 4, white gives 8, snow gives 10
points stem "stem" by tail_stem: thin gives 0, fair gives 6, strong gives 10
bonus lips "red lips" 8 if kuchibeni is yes
grade keep "the best" if score at least 45
grade sell if score at least 20
grade cull otherwise
"""
RECORDS = """fish,odome (%),kiwa,shiroji,tail_stem,kuchibeni
1,5,razor,snow,strong,yes
2,1.2,sharp,white,strong,no
3,5,blurred,yellow,fair,no
4,1.2,,white,strong,no
5,5,blurred,yellow,thin,no
"""


@pytest.fixture(autouse=True)
def farm(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules.koi").write_text(RULES, encoding="utf-8")
    Path("lot.csv").write_text(RECORDS, encoding="utf-8")


def why(*fish):
    result = CliRunner().invoke(main, ["why", "rules.koi", "lot.csv", *fish])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def flat(text):
    return " ".join(text.split())


def test_why_names_the_smallest_change_with_its_value_and_whether_it_can_come():
    output = flat(why("2").output)
    assert "What would have made it the best, the smallest change first" in output
    assert "white before the tail (odome): 3 % or more instead of 1.2 % the best can still come" in output


def test_why_of_a_kept_fish_names_what_would_have_lost_it():
    output = flat(why("1").output)
    assert "What would have cost it the best" in output
    assert "white before the tail (odome): below 3 % instead of 5 % sell" in output


def test_why_says_so_where_one_trait_is_not_enough():
    output = flat(why("5").output)
    assert "no change of one trait" not in output
    lone = RECORDS + "6,5,blurred,yellow,thin,no\n"
    Path("lot.csv").write_text(lone, encoding="utf-8")
    Path("rules.koi").write_text(RULES.replace("if score at least 20", "if score at least 38"), encoding="utf-8")
    output = flat(why("6").output)
    assert "no change of one trait two traits together:" in output
    assert "and white ground (shiroji): snow instead of yellow" in output


def test_why_of_a_fish_with_holes_names_every_grade_that_a_change_would_leave():
    assert "3 % or more instead of 1.2 % the best or sell can still come" in flat(why("4").output)


def test_why_of_a_fish_that_is_not_settled_says_that_a_better_grade_would_be_possible():
    Path("lot.csv").write_text(RECORDS + "7,1.2,,yellow,thin,no\n", encoding="utf-8")
    assert "What would have left the best possible, the smallest change first" in why("7").output


def test_why_shows_what_was_left_on_the_table():
    output = flat(why("3").output)
    assert "Points left on the table, most first edge 20.00; white 20.00; stem 8.00; red lips 8.00" in output


def test_two_fish_stand_side_by_side_the_better_one_first_and_add_up():
    result = why("3", "1")
    assert result.exit_code == 0
    lines = result.output.splitlines()
    assert lines[0] == "Fish 1: the best, score 60"
    assert lines[1] == "Fish 3: cull, score 12" or lines[1].startswith("Fish 3:")
    assert "1 stands above 3 by its grade." in lines
    apart = [
        Decimal(line.split()[-1]) for line in lines if line.strip() and line.split()[-1][:1] in "+-" and "─" not in line
    ]
    *rows, total = apart
    assert len(rows) >= 4
    assert sum(rows) == total == 48
    assert "look: a section gives at most 60" in result.output


def test_two_fish_name_the_faults_that_they_do_not_share():
    assert "2: no tail gap: no better than sell" in why("1", "2").output


def test_two_fish_with_holes_say_that_the_least_stands_there():
    output = why("4", "2").output
    assert "Where points are not settled, the least that they can be stands here." in output


def test_a_second_fish_that_is_not_there_is_a_problem():
    result = why("1", "22")
    assert result.exit_code == 2
    assert 'Did you mean "2"?' in result.stderr


def test_the_same_fish_twice_stands_level():
    assert "1 and 1 stand level." in why("1", "1").output


@pytest.mark.parametrize("fish", ["L01", "L04", "M06"])
def test_the_example_lot_is_searched_through(fish):
    rules, lot = ROOT / "rulesets/tosai_kohaku/standard.koi", ROOT / "examples/01-autumn-lot/records.csv"
    result = CliRunner().invoke(main, ["why", str(rules), str(lot), fish])
    assert result.exit_code == 0
    assert "the smallest change first" in result.output
    assert "ended early" not in result.output
