"""`koirules compare` as its users run it."""

import csv
import json

import pytest
from click.testing import CliRunner

from koirules.commands import main

OLD = """standard "Two Ladders" edition 2026-1
trait edge as scale poor < fair < good, more is better
trait size as number in cm from 0 to 50, more is better
trait specks as count up to 9, less is better
setting bar = 70 from 50 to 90 "the bar"
fault many "many specks" if specks at least 3: no better than sell
section look "look" worth 100
points edge "edge" weight 2 by edge: poor gives 0, fair gives 5, good gives 10
points size "size" by size: 10 cm gives 0, 30 cm gives 10
grade keep "kept" if score at least bar
grade sell "sold" otherwise
"""


@pytest.fixture
def pages(tmp_path):
    def write(new, old=OLD):
        paths = []
        for name, text in (("old.koi", old), ("new.koi", new)):
            paths.append(tmp_path / name)
            paths[-1].write_text(text, "utf-8")
        return paths

    return write


def run(*words):
    result = CliRunner().invoke(main, ["compare", *(str(word) for word in words)])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


def test_a_change_and_the_fish_that_shows_it_are_told(pages):
    result = run(*pages(OLD.replace("2026-1", "2027-1").replace("specks at least 3", "specks at least 2")))
    assert result.exit_code == 0
    for told in (
        "fault many (old line 6, new line 6)\n      if specks at least 2, was specks at least 3\n",
        "edition 2027-1, was 2026-1",
        "Yes: this one, an ordinary item but for 2 traits (no item with fewer shows it).",
        "by the old edition  kept, 100",
        "by the new edition  sold, 100",
    ):
        assert " ".join(told.split()) in " ".join(result.output.split())


def test_pages_that_say_the_same_are_told_so(pages):
    result = run(*pages(OLD.replace("10 cm gives 0", "100 mm gives 0")), "--check")
    assert result.exit_code == 0
    assert "Nothing that can bear on a grade." in result.output
    assert "No: nothing that can bear on a grade was changed." in result.output


def test_with_check_editions_that_part_end_with_one(pages):
    assert run(*pages(OLD.replace("weight 2 by", "weight 3 by")), "--check").exit_code == 1
    proved = run(*pages(OLD.replace("at least bar", "at least bar and score above 1")), "--check")
    assert proved.exit_code == 0
    assert "No: proved of every item" in proved.output


def test_a_setting_is_changed_in_the_edition_that_has_it(pages):
    plain = OLD.replace('setting bar = 70 from 50 to 90 "the bar"\n', "").replace("least bar", "least 75")
    assert run(*pages(plain), "--check").exit_code == 1
    assert run(*pages(plain), "--check", "--set", "bar=75").exit_code == 0
    result = run(*pages(plain), "--set", "bat=75")
    assert result.exit_code == 2
    assert "bad-setting" in result.stderr


def test_without_the_solver_one_is_told_what_to_install_and_the_rest_still_works(pages, monkeypatch):
    monkeypatch.setattr("koirules.analysis.diff.comparison.has_solver", lambda: False)
    result = run(*pages(OLD.replace("at least bar", "at least bar and score above 1")))
    assert result.exit_code == 0
    assert "if score at least bar and score above 1, was score at least bar" in result.output
    assert '"koirules[proofs]"' in result.output
    found = run(*pages(OLD.replace("specks at least 3", "specks at least 2")))
    assert "by the new edition  sold, 100" in found.output
    assert '"koirules[proofs]"' in found.output


def test_another_variety_is_told_plainly(pages):
    old = OLD.replace("edition 2026-1", "edition 2026-1 variety kohaku")
    result = run(*pages(OLD, old))
    assert "The old edition is for kohaku, the new one for no variety." in result.output


def test_a_page_with_problems_is_refused(pages):
    result = run(*pages(OLD.replace("grade sell", "grad sell")))
    assert result.exit_code == 2
    assert "grad sell" in result.stderr


LOT = "fish,edge,size (cm),specks\n1,good,40,0\n2,good,40,2\n3,fair,35,0\n4,poor,20,\n"


@pytest.fixture
def lot(tmp_path):
    path = tmp_path / "lot.csv"
    path.write_text(LOT, "utf-8")
    return path


NEW = OLD.replace("specks at least 3", "specks at least 2").replace("= 70", "= 60")


def test_who_moves_is_told_with_the_change_that_did_it(pages, lot):
    result = run(*pages(NEW), "--records", lot)
    assert result.exit_code == 0
    told = result.output.split("Who moves, of 4 items\n")[1]
    assert [line.split() for line in told.splitlines() if line.startswith(("  2  ", "  3  "))] == [
        ["2", "kept,", "100", "sold,", "100", "fault", "many"],
        ["3", "sold,", "66.67", "kept,", "66.67", "setting", "bar"],
    ]
    assert "2 items keep their grade." in told
    assert run(*pages(NEW), "--records", lot, "--check").exit_code == 1


def test_a_lot_that_nobody_moves_in_is_told_so(pages, lot):
    result = run(*pages(OLD.replace("clean", "clear")), "--records", lot)
    assert "Nobody: 4 items keep their grade." in result.output
    rescored = run(*pages(OLD.replace("fair gives 5", "fair gives 5.1")), "--records", lot)
    assert "Nobody: 4 items keep their grade, 1 of them with another score." in rescored.output


def test_the_comparison_is_written_whole_as_json(pages, lot, tmp_path):
    out = tmp_path / "comparison.json"
    assert run(*pages(NEW), "--records", lot, "--out", out).exit_code == 0
    made = json.loads(out.read_text("utf-8"))
    assert [change["words"] for change in made["changes"] if change["bears_on_grades"]] == [
        "setting bar: value 60, was 70",
        "fault many: if specks at least 2, was specks at least 3",
    ]
    assert made["graded_differently"]["verdict"] == "some fish is graded differently"
    assert made["graded_differently"]["old"]["possible"] != made["graded_differently"]["new"]["possible"]
    assert made["old"]["seal"] != made["new"]["seal"]
    moves = {
        one["fish"]: (one["old"]["possible"], one["new"]["possible"], one["changes"]) for one in made["moves"]["fish"]
    }
    assert moves == {"2": (["keep"], ["sell"], ["fault many"]), "3": (["sell"], ["keep"], ["setting bar"])}
    assert sum(one["fish"] for one in made["moves"]["counts"]) == 4


def test_without_records_the_csv_has_the_changes(pages, tmp_path):
    out = tmp_path / "changes.csv"
    run(*pages(NEW), "--out", out)
    with out.open(encoding="utf-8", newline="") as file:
        rows = [(row["statement"], row["name"], row["what"], row["old"], row["new"]) for row in csv.DictReader(file)]
    assert rows == [
        ("setting", "bar", "value", "70", "60"),
        ("fault", "many", "if", "specks at least 3", "specks at least 2"),
    ]


def test_what_cannot_be_written_is_told_before_anything_is_worked_out(pages, lot, tmp_path):
    old, new = pages(NEW)
    result = run(old, new, "--out", tmp_path / "comparison.pdf")
    assert result.exit_code == 2
    assert "unknown-ending" in result.stderr
    same = run(old, new, "--records", lot, "--out", lot)
    assert same.exit_code == 2
    assert "would take its place" in same.stderr
    assert lot.read_text("utf-8") == LOT


def test_records_with_problems_are_refused_with_all_of_them(pages, lot):
    lot.write_text(LOT.replace("good,40,2", "god,40,2").replace("35,0", "350,0"), "utf-8")
    result = run(*pages(NEW), "--records", lot)
    assert result.exit_code == 2
    assert "2 problems" in result.stderr


def test_a_column_that_only_one_edition_knows_is_no_problem(pages, lot):
    more = NEW.replace("trait specks", "trait shine as yes or no\ntrait specks").replace(
        "fault many", "fault dull if not shine: no better than sell\nfault many"
    )
    lot.write_text("fish,edge,size (cm),specks,shine,tub\n1,good,40,0,no,7\n", "utf-8")
    assert run(*pages(more), "--records", lot).exit_code == 2
    result = run(*pages(more), "--records", lot, "--label", "tub")
    assert "fault dull" in result.output.split("Who moves")[1]


def test_rounds_that_keep_others_are_told(pages, lot):
    old = OLD + "round first keep those with grade at least keep\n"
    result = run(*pages(old.replace("specks at least 3", "specks at least 2"), old), "--records", lot)
    assert "round first, kept by the old edition alone: 2" in result.output


def test_two_changes_that_only_move_a_fish_together_are_named_together(pages, lot):
    old = OLD.replace("setting bar = 70", "setting bar = 90").replace("weight 2 by", "weight 1 by")
    lot.write_text("fish,edge,size (cm),specks\n1,fair,40,0\n", "utf-8")
    new = old.replace("fair gives 5", "fair gives 7").replace("setting bar = 90", "setting bar = 80")
    told = run(*pages(new, old), "--records", lot).output.split("Who moves")[1]
    assert "setting bar, points edge, together" in told


SILENT = """standard "Two Silences" edition 2026-1
trait edge as scale poor < fair < good
trait white as scale yellow < cream < pure
silence means white is pure
grade keep if edge at least good and white at least pure
grade hold if edge is fair
grade out otherwise
"""


def test_what_silence_means_otherwise_is_shown_by_a_fish_of_which_nobody_mentioned_it(pages, tmp_path):
    new = SILENT.replace("2026-1", "2026-2").replace("silence means white is pure", "silence means white is cream")
    both = pages(new, SILENT)
    result = run(*both, "--check", "--out", tmp_path / "compared.json")
    assert result.exit_code == 1
    shown = " ".join(result.output.split())
    assert "No: proved of every item of which both know each trait" in shown
    assert "Where nobody mentions white: yes, this one" in shown
    assert "white not mentioned" in shown
    (told,) = json.loads((tmp_path / "compared.json").read_text("utf-8"))["where_nobody_mentions"]
    assert "white" not in told["fish"]
    assert (told["old"]["possible"], told["new"]["possible"]) == (["keep"], ["out"])
    assert run(*pages(SILENT, SILENT), "--check").exit_code == 0


def test_a_trait_that_silence_no_longer_means_anything_of_leaves_such_a_fish_open(pages):
    new = SILENT.replace("2026-1", "2026-2").replace("silence means white is pure\n", "")
    shown = " ".join(run(*pages(new, SILENT)).output.split())
    assert "by the old edition keep" in shown
    assert "by the new edition keep or out" in shown


def test_records_of_another_variety_are_told(pages, tmp_path):
    old = OLD.replace("edition 2026-1", "edition 2026-1 variety kohaku")
    given = pages(old.replace("2026-1", "2027-1"), old)
    (tmp_path / "lot.csv").write_text("fish,variety\nA,kohaku\nB,sanke\n", "utf-8")
    shown = " ".join(run(*given, "--records", tmp_path / "lot.csv").output.split())
    assert "[fish-for-others]" in shown and '"sanke"' in shown
