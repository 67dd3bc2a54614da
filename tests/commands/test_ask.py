"""`koirules ask` without a terminal: what is asked, what is written, how it ends and goes on."""

import csv
import json
import os
from pathlib import Path

import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.commands.asking.forms import Order, Unread, form_of
from koirules.records.records import read_records
from koirules.vocabulary.kinds import Choice, Scale
from koirules.vocabulary.readings import PlaceSet

RULES = """standard "Trial (an invented house)" edition 1 variety kohaku
fault bent "bent spine" if spine is bent: no better than cull
fault marked "red on the fins" if count of hi_on_fins at least 2: no better than sell
section body "body" worth 100
points stem "tail stem" weight 2 by tail_stem: thin gives 0, fair gives 6, strong gives 10
points tail "white before the tail" by odome: 0 % gives 0, 5 % gives 10
bonus lips 5 if kuchibeni is recorded and kuchibeni is yes
bonus patch 5 if maruten is recorded and maruten is yes
grade keep if score at least 60
grade sell if score at least 20
grade cull otherwise
"""


@pytest.fixture(autouse=True)
def farm(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules.koi").write_text(RULES, encoding="utf-8")


def ask(typed, *words, status=0):
    result = CliRunner().invoke(main, ["ask", "rules.koi", "--out", "lot.csv", *words], input=typed)
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    assert result.exit_code == status, result.output
    return " ".join(result.output.split())


def rows(path="lot.csv"):
    return {row["fish"]: row for row in csv.DictReader(Path(path).read_text(encoding="utf-8").splitlines())}


def test_a_fish_is_asked_about_until_it_is_settled_and_the_reason_is_told_in_one_line():
    told = ask("\n1\nq\n")
    assert "1: spine? 1 bent, 2 slight, 3 straight > bent." in told
    assert "1: cull, score 0 to 100; bent spine: no better than cull (decides). 1 question." in told
    assert "Next fish: name, or Enter for 2" in told
    assert "lot.csv: 1 fish, 1 settled." in told
    assert "not an instruction to kill" in told and "wet hands" in told


def test_what_is_written_is_an_ordinary_record_file_with_the_header_of_a_blank_sheet():
    ask("K1\n3\n0\n3\n4.5\n0\nq\n")
    assert CliRunner().invoke(main, ["sheet", "--rules", "rules.koi", "--maps", "--out", "blank.csv"]).exit_code == 0
    assert Path("lot.csv").read_text().splitlines()[0] == Path("blank.csv").read_text().splitlines()[0]
    assert rows()["K1"]["spine"] == "straight"
    graded = CliRunner().invoke(main, ["grade", "rules.koi", "lot.csv", "--out", "graded.csv"])
    assert graded.exit_code == 0
    assert rows("graded.csv")["K1"]["grade"] == "keep"


def test_each_question_is_two_short_lines_and_the_question_mark_explains_it():
    told = ask("\n?\nq\n")
    trait = koirules.load_standard("rules.koi").traits["spine"]
    assert trait.describe in told
    result = CliRunner().invoke(
        main, ["ask", "rules.koi", "--out", "other.csv"], input="\n3\n0\n", env={"COLUMNS": "40"}
    )
    assert max(len(line) for line in result.output.splitlines()) <= 40
    assert "\x1b" not in result.output


def test_what_cannot_be_told_is_not_asked_again_even_after_it_is_taken_up_again():
    told = ask("\n3\n0\n-\n")
    assert told.count("tail stem (ozutsu)?") == 1
    again = ask("q\n")
    assert "tail stem (ozutsu)?" not in again
    assert "1: " in again, "the same fish goes on"
    assert rows()["1"]["tail_stem"] == "?"


def test_u_goes_back_over_questions_fish_and_sessions():
    ask("\n3\n0\n2\nu\n3\n")
    assert rows()["1"]["tail_stem"] == "strong"
    told = ask("")
    again = ask("u\n1\n")
    assert "One back. 1: tail stem (ozutsu)?" in again, told
    assert rows()["1"]["tail_stem"] == "thin"
    over = ask("u\nu\nu\n1\nB\nu\n3\n")
    assert "1: cull" in over and rows()["1"]["spine"] == "straight"
    assert list(rows()) == ["1", "B"]


def test_the_first_question_has_nothing_before_it():
    assert "This is the first question." in ask("\nu\n")


def test_what_was_not_sure_is_asked_within_what_it_could_be_and_comes_back_when_taken_back():
    Path("half.csv").write_text(
        "fish,spine,tail_stem,odome,hi_on_fins\nA,straight,fair or strong,2,none\n", encoding="utf-8"
    )
    told = ask("0\n3\nu\n", "--records", "half.csv")
    assert "So far: fair or strong" in told
    assert rows()["A"]["tail_stem"] == "fair or strong"


def test_only_fish_of_the_file_that_are_open_are_asked_about_and_all_are_kept():
    Path("half.csv").write_text(
        "fish,note,spine,tail_stem,odome (%),hi_on_fins,length (mm),bucket\n"
        'A,"seen, twice",straight,strong,5,none,163,red\nB,,bent,,,,,\nC,,straight,,,,,blue\n',
        encoding="utf-8",
    )
    told = ask("0\n1\n0\n", "--records", "half.csv", "--label", "bucket")
    assert "C: " in told and "A: " not in told and "B: " not in told
    held = rows()
    assert list(held) == ["A", "B", "C"]
    assert held["A"]["note"] == "seen, twice" and held["A"]["bucket"] == "red" and held["A"]["length (cm)"] == "16.3"
    again = ask("", "--records", "half.csv", "--label", "bucket")
    assert "C: " not in again and "3 fish" in again


def test_a_fish_that_is_set_aside_keeps_its_answers_and_comes_back_by_name():
    told = ask("A\n3\ns\nB\n1\nA\n0\n1\n5\nq\n")
    assert "A is set aside" in told
    assert told.rindex("A: anything else to note?") > told.index("B: cull")


def test_a_name_that_is_there_is_not_taken_twice():
    told = ask("A\n1\nA\n=1\n\n")
    assert told.count("A: cull") == 2
    assert '"=1" cannot be the name of a fish here.' in told
    assert list(rows()) == ["A", "1"]


def test_what_cannot_be_read_is_said_and_asked_again():
    told = ask("\n9\nbnet\n3\n0\n2\n500\n5,5\nthreeish\n4\n", "--thorough")
    assert '"9"' in told and '"bnet" is not one of its words. Type one of the keys.' in told
    assert "500" in told and "Write a number from 0 % to 100 %" in told


def test_the_answer_can_be_written_as_in_a_sheet():
    ask("\nw\nslight or straight\n0\n")
    assert rows()["1"]["spine"] == "slight or straight"


def test_noted_traits_are_asked_for_and_others_are_not():
    told = ask("\n3\n?\n2 7\n2\nq\n", "--thorough")
    assert "anything else to note" not in told
    Path("lot.csv").unlink()
    Path("lot.csv.asked").unlink()
    told = ask("\n3\n?\n7\n1\n2\n2\n4\n0\n")
    assert "1 red lips" in told or "2 red lips" in told or "red lips" in told
    assert "Type 0, or numbers from 1 to 2" in told
    assert "To note: " in told


@pytest.mark.parametrize("typed", ["", "\n", "\n3\n", "\n3\n0\n"])
def test_the_end_of_input_is_no_error(typed):
    ask(typed)
    assert Path("lot.csv").exists()


def test_a_power_cut_within_a_line_of_the_journal_loses_nothing_else():
    ask("\n3\n0\n-\n")
    with Path("lot.csv.asked").open("ab") as file:
        file.write(b'{"what": "cannot te')
    assert "tail stem (ozutsu)?" not in ask("")
    assert Path("lot.csv.asked").read_bytes().endswith(b"}\n")


def test_an_answer_that_is_in_the_file_but_not_in_the_journal_counts():
    ask("\n3\n0\n2\n")
    journal = Path("lot.csv.asked")
    journal.write_bytes(b"".join(journal.read_bytes().splitlines(keepends=True)[:-1]))
    assert "tail stem (ozutsu)?" not in ask("")


def test_every_answer_is_forced_to_the_disk_before_the_next_question(monkeypatch):
    forced, renamed = [], []
    force, replace = os.fsync, Path.replace

    def watched(handle):
        forced.append((os.fstat(handle).st_ino, os.fstat(handle).st_size))
        force(handle)

    def put(self, target):
        if Path(target).name.startswith("lot.csv"):
            renamed.append((self.stat().st_ino, self.stat().st_size))
            assert renamed[-1] in forced, "a file that takes the place of another was forced to the disk as it stands"
        return replace(self, target)

    monkeypatch.setattr(os, "fsync", watched)
    monkeypatch.setattr(Path, "replace", put)
    ask("\n3\n0\n2\n4\n")
    journal = Path("lot.csv.asked")
    lines = journal.read_bytes().splitlines(keepends=True)
    assert [json.loads(line)["what"] for line in lines].count("answered") == 3
    assert len(renamed) >= 4, "the file as it begins, and after each answer"
    sizes = [size for number, size in forced if number == journal.stat().st_ino]
    assert {sum(map(len, lines[:count])) for count in range(1, len(lines) + 1)} <= set(sizes)
    assert any(number == Path.cwd().stat().st_ino for number, _ in forced), "the name in its folder too"


def test_a_value_that_has_no_end_in_its_own_unit_reads_back_as_it_was_told():
    rules = (
        'standard "Trial (an invented house)" edition 1\ntrait fed "colour feed" as number in weeks from 0 to 60\n'
        "grade keep if fed at least 10 days\ngrade cull otherwise\n"
    )
    Path("rules.koi").write_text(rules, encoding="utf-8")
    assert "A: keep" in ask("A\n10 days\n")
    standard = koirules.load_standard("rules.koi")
    (record,) = read_records(Path("lot.csv"), standard.traits).records
    assert standard.grade_record(record).grade == "keep"
    assert "1 item, 1 settled" in ask("")


def test_a_fish_that_was_begun_and_not_answered_is_asked_about_when_the_run_goes_on():
    rules = (
        'standard "Trial (an invented house)" edition 1\ntrait spine as scale bent < straight\n'
        "grade cull if spine is recorded and spine is bent\ngrade keep otherwise\n"
    )
    Path("rules.koi").write_text(rules, encoding="utf-8")
    assert "1 item, 0 settled" in ask("A\n", "--thorough")
    assert "A: spine?" in ask("1\n", "--thorough")
    assert rows()["A"]["spine"] == "bent"


def test_what_is_taken_back_is_the_last_answer_of_a_fish_that_is_still_there():
    ask("A\n-\nq\n")
    ask("s\nB\n-\nq\n")
    kept = [line for line in Path("lot.csv").read_text().splitlines() if not line.startswith("B")]
    Path("lot.csv").write_text("\n".join(kept) + "\n", encoding="utf-8")
    ask("u\nq\n")
    assert "A: spine?" in ask("q\n"), "that it cannot be told was taken back for good"


def test_files_that_asking_cannot_go_on_with_are_problems():
    assert "[ask-not-csv]" in refused("--out", "lot.xlsx")
    Path("lot.csv").write_text("fish,spine\nA,bent\n", encoding="utf-8")
    assert "[ask-not-begun-here]" in refused()
    assert Path("lot.csv").read_text(encoding="utf-8") == "fish,spine\nA,bent\n"
    Path("lot.csv.asked").write_text("{}\n", encoding="utf-8")
    assert "[ask-broken-journal]" in refused()
    Path("lot.csv").unlink()
    assert "[ask-lost-records]" in refused()
    Path("lot.csv.asked").unlink()
    Path("half.csv").write_text("fish,odome (%)\nA,1.23456789\n", encoding="utf-8")
    assert "[ask-value-not-kept]" in refused("--records", "half.csv")
    assert not Path("lot.csv").exists()


def refused(*words):
    return ask("", *words, status=2)


def test_keys_are_given_to_every_option_and_none_of_them_is_an_order():
    form = form_of(Choice(tuple(f"word_{n}" for n in range(20))))
    assert form.single and len(form.options) == 20
    assert not {order.value for order in Order} & form.options.keys()
    assert form.read(list(form.options)[12]) == 1 << 12
    many = form_of(Scale(tuple(f"word_{n}" for n in range(40))))
    assert not many.single and many.read("40") == 1 << 39


def test_places_are_chosen_by_number_or_word():
    form = form_of(koirules.load_standard("rules.koi").traits["hi_on_fins"].kind)
    assert form.read("0") == PlaceSet(0, 0)
    assert form.read("1 3") == PlaceSet(5, 5) == form.read("1,3")
    assert isinstance(form.read("0 1"), Unread)
    assert form.read("dorsal") is not None and not isinstance(form.read("dorsal"), Unread)


def test_a_number_is_no_answer_to_yes_or_no():
    # 1 is the first word of other questions, so that a hand that types ahead must not say yes by it.
    form = form_of(koirules.load_standard("rules.koi").traits["kuchibeni"].kind)
    assert isinstance(form.read("1"), Unread) and isinstance(form.read("0"), Unread)
    assert form.read("y") == form.written("yes")


def test_what_cannot_be_told_and_one_back_are_the_same_keys_where_a_value_is_written():
    form = form_of(koirules.load_standard("rules.koi").traits["odome"].kind)
    assert (form.sheet("-"), form.sheet("u"), form.sheet("U")) == (Order.CANNOT_TELL, Order.BACK, Order.BACK)
    assert form.sheet("3 %") == form.read("3")


def test_what_was_marked_as_noted_is_asked_and_stored_though_it_changes_nothing():
    # Two red fins settle the grade at once; the lips were marked before, and are asked for all the same.
    told = ask("K1\n3\n1\n3\n5\n1 2\ny\nq\n")
    assert "K1: red lips" in told
    assert rows()["K1"]["kuchibeni"] == "yes"


def test_a_finished_fish_can_be_opened_again():
    told = ask("K1\n1\nagain K1\n1\n3\n0\n3\n4.5\n0\nq\n")
    assert "1 spine: bent" in told
    assert rows()["K1"]["spine"] == "straight"
    assert "K1: keep" in told


def test_where_a_round_picks_by_score_a_fish_is_asked_until_its_place_is_settled():
    picking = RULES.replace("grade keep if score at least 60", "grade keep if spine is straight") + (
        'round heated "heated house" keep those with grade is keep pick 1 by highest score\n'
    )
    Path("rules.koi").write_text(picking, encoding="utf-8")
    told = ask("K1\n3\n0\n0\n3\n4.5\nK2\n1\nq\n")
    assert "K1: white before the tail" in told  # its grade was settled by the spine
    assert "K1: keep, score 96.67;" in told
    assert "K2: tail stem" not in told  # it leaves before the round picks
