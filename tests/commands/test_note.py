"""`koirules note`: lines taken at the tub, kept whatever happens, and files of notes made into records."""

import re
from pathlib import Path
from random import Random

import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from tests.commands.noting import PAGE, acknowledged_until_killed, fish_in, said_in, started


@pytest.fixture(autouse=True)
def tub(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("page.koi").write_text(PAGE, encoding="utf-8")


def noted(*lines, out="lot.csv", status=0):
    result = CliRunner().invoke(main, ["note", "page.koi", "--out", out], input="".join(f"{line}\n" for line in lines))
    assert result.exit_code == status, result.output
    return result.output


def test_a_line_is_answered_with_what_was_understood_and_what_not():
    output = noted("7: sandan, sharp kiwa, quite otherworldly", "8: kiwa fair", status=1)
    assert '7: steps sandan, kiwa sharp | not understood: "quite otherworldly" | keep\n' in output
    assert "8: kiwa fair | sell\n" in output
    assert "read again 7: quite otherworldly" in output
    rows = fish_in(Path("lot.csv"))
    assert (rows["7"]["steps"], rows["7"]["unread"], rows["8"]["kiwa"]) == ("sandan", "quite otherworldly", "fair")


def test_what_is_not_understood_of_the_whole_lot_is_told_as_it_is_of_one_fish():
    output = noted("all: healthy, quite otherworldly", "all: lovely", "7: kiwa sharp", status=1)
    assert 'all: health well | not understood: "quite otherworldly"\n' in output
    assert "all: nothing to record\n" in output
    assert "  read again all: quite otherworldly\n" in output
    Path("notes.txt").write_text("all: healthy, quite otherworldly\n7: kiwa sharp\n", encoding="utf-8")
    result = CliRunner().invoke(main, ["note", "page.koi", "notes.txt", "--out", "read.csv"])
    assert result.exit_code == 1
    assert "1 fish, 2 of 3 remarks understood." in result.output
    assert 'phrase "quite otherworldly" means' in result.output


def test_no_before_the_worst_of_a_trait_leaves_the_others():
    output = noted("all: no bent backs, no cloudy eyes, no crooked mouths")
    assert "all: spine slight or straight, eye clarity fair or clear, mouth slight or good\n" in output


def test_a_word_that_lacks_its_trait_is_told_with_one_that_the_rules_read():
    output = noted("7: sharp", "8: not sharp", status=1)
    assert '7: not understood: "sharp" (near "kiwa sharp"?)' in output
    assert '8: not understood: "not sharp" (near "kiwa not sharp"?)' in output
    again = noted("7: kiwa sharp", "8: kiwa not sharp", out="again.csv")
    assert "not understood" not in again


@pytest.mark.parametrize(
    ("word", "meant"),
    [
        ("kuchibemi", "kuchibeni"),
        ("blury", "kiwa blurry"),
        ("sashy", "sashi"),
        ("kiwa shapr", "kiwa sharp"),
        ("left pectorl white", "left pectoral white"),
        ("kiwa is very nice and shapr", "kiwa is very nice and sharp"),
        ("wite is milkey", "white is milky"),
    ],
)
def test_a_slip_is_told_with_what_was_meant(word, meant):
    assert f'not understood: "{word}" (near "{meant}"?)' in noted(f"7: {word}", status=1)


@pytest.mark.parametrize("word", ["bewitching", "hit", "splendiferous"])
def test_a_word_that_only_ends_or_begins_like_another_is_no_slip(word):
    assert f'7: not understood: "{word}" |' in noted(f"7: {word}", status=1)  # no `itching`


def test_a_session_goes_on_where_it_was_left_and_everything_can_be_taken_back():
    noted("7: sandan", "8: kiwa fair")
    output = noted("again 7: kiwa sharp", "back", "back", "back", "back", "9: nidan")
    assert "goes on behind fish 8" in output
    assert "taken back: 7: sandan" in output
    assert "Nothing is left to take back." in output
    assert list(fish_in(Path("lot.csv"))) == ["9"]


def test_a_question_mark_says_what_the_fish_hangs_on():
    output = noted("?", "7: sandan", "?", "again 7: kiwa blurred", "?")
    assert "No fish was named yet." in output
    assert "rear and side edge of the red (kiwa): blurred / fair / sharp / razor" in output
    assert "7 is settled: cull." in output


def test_a_line_with_a_problem_is_told_and_not_taken():
    output = noted("sandan", "7: sandan", "7: nidan", "again 7: kiwa fair")
    assert "No name stands before" in output
    assert "was noted in line 1 already" in output
    rows = fish_in(Path("lot.csv"))
    assert (rows["7"]["steps"], rows["7"]["kiwa"]) == ("sandan", "fair")


def test_a_sheet_that_notes_did_not_make_or_somebody_changed_is_left_alone():
    Path("own.csv").write_text("fish\na\n", encoding="utf-8")
    assert "not-noted" in noted(out="own.csv", status=2)
    noted("7: sandan")
    text = Path("lot.csv").read_text(encoding="utf-8").replace("sandan", "nidan")
    Path("lot.csv").write_text(text, encoding="utf-8")
    assert "changed-since" in noted("8: nidan", status=2)
    assert Path("lot.csv").read_text(encoding="utf-8") == text


def test_two_sessions_at_once_are_refused(tmp_path):
    first = started(tmp_path, "lot.csv")
    first.stdin.write("7: sandan\n")
    first.stdin.flush()
    while not first.stdout.readline().removeprefix("> ").startswith("7:"):
        pass
    assert "file-held" in noted(out="lot.csv", status=2)
    first.communicate("done\n")
    assert first.returncode == 0
    noted("8: nidan")
    assert list(fish_in(Path("lot.csv"))) == ["7", "8"]


def test_no_answered_line_is_lost_when_the_session_is_killed(tmp_path):
    """A twentieth of tests/benchmarks/noted_kills.py."""
    random, known = Random(3), []
    for _ in range(3):
        done = acknowledged_until_killed(tmp_path, "lot.csv", len(known) + 1, random.uniform(0, 0.3))
        known += [f"{number}: sandan, kiwa sharp" for number in done]
        lines = said_in(tmp_path, "lot.csv")
        assert lines[: len(known)] == known
        assert len(lines) <= len(known) + 1
        assert {line.split(":")[0] for line in known} <= fish_in(tmp_path / "lot.csv").keys()
        known = lines


def test_a_file_of_notes_becomes_records_with_what_was_not_understood():
    Path("notes.txt").write_text("1: sandan, sharp kiwa, in\n2: kiwa soft, quite otherworldly, out\n", encoding="utf-8")
    result = CliRunner().invoke(main, ["note", "page.koi", "notes.txt", "--out", "lot.csv"])
    assert result.exit_code == 1
    assert "5 of 6 remarks understood" in result.output
    assert 'phrase "quite otherworldly" means …' in result.output
    rows = fish_in(Path("lot.csv"))
    assert [(row["kiwa"], row["verdict"], row["unread"]) for row in rows.values()] == [
        ("sharp", "in", ""),
        ("blurred", "out", "quite otherworldly"),
    ]
    graded = CliRunner().invoke(main, ["grade", "page.koi", "lot.csv"])
    assert graded.exit_code == 1
    assert "Read again 1 fish, not understood: 2: quite otherworldly" in graded.output
    direct = CliRunner().invoke(main, ["grade", "page.koi", "notes.txt"])
    assert direct.output == graded.output


def test_the_crib_sheet_and_the_share_understood():
    Path("notes.txt").write_text("1: sandan, sharp kiwa, in\n2: kiwa soft, quite otherworldly, out\n", encoding="utf-8")
    result = CliRunner().invoke(main, ["note", "page.koi", "notes.txt", "--understood"])
    assert "5 of 6 remarks understood (83.3 %), on 2 fish." in result.output
    every = CliRunner().invoke(main, ["note", "page.koi", "--phrases", "--all"]).output
    assert not re.search(r"\([^()]*\|", every)  # a pattern is shown by one of its wordings
    assert "    at most fair: could be better" in every
    assert "    sharp: sharp, crisp, clean" in every


def test_the_crib_sheet_has_a_line_for_each_trait_that_the_rules_read():
    standard = koirules.load_standard("page.koi")
    crib = CliRunner().invoke(main, ["note", "page.koi", "--phrases"]).output.splitlines()
    assert [line.partition(" ")[0] for line in crib] == [
        name for name in standard.traits if name in standard.grader.traits_to_record()
    ]
    assert any(line.startswith("kiwa (") and "| sharp: crisp, clean |" in line for line in crib)
    alone = CliRunner().invoke(main, ["note", "page.koi", "--all"])
    assert (alone.exit_code, "add --phrases" in alone.output) == (2, True)


@pytest.mark.parametrize("arguments", [["fish 11 sandan"], ["fish 11 sandan", "--out", "lot.csv"], []])
def test_who_gives_notes_as_an_argument_is_told_where_they_are_typed(arguments):
    result = CliRunner().invoke(main, ["note", "page.koi", *arguments])
    assert result.exit_code == 2
    example = re.search(r"such as `([^`]*)`", result.output)[1]
    assert "koirules note RULES --out FILE.csv" in result.output
    assert noted(example).count("not understood") == 0
    assert fish_in(Path("lot.csv"))["11"]["length"] == "14 cm"


def test_a_phrase_may_stand_in_a_cell_of_its_trait():
    page = f'{PAGE}phrase "cut by a barber" means kiwa is razor\nphrase "two things" means kiwa is fair and steps is nidan\n'
    Path("page.koi").write_text(page, encoding="utf-8")
    Path("lot.csv").write_text("fish,kiwa,steps\na,crisp,three patches\nb,cut by a barber,\n", encoding="utf-8")
    result = CliRunner().invoke(main, ["grade", "page.koi", "lot.csv", "--as-recorded"])
    assert [line.split()[:2] for line in result.output.splitlines()[3:5]] == [["a", "keep"], ["b", "keep"]] or (
        "keep" in result.output
    )
    Path("lot.csv").write_text("fish,kiwa\na,two things\n", encoding="utf-8")
    assert "value-unknown-word" in CliRunner().invoke(main, ["grade", "page.koi", "lot.csv"]).output
