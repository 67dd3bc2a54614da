"""A run at a terminal that is cut off in the middle, and goes on with nothing lost."""

import csv
import re
import socket
import subprocess
import sys
from pathlib import Path
from random import Random

import pytest

import koirules

if sys.platform == "win32":
    pytest.skip("needs a terminal that a program can hold", allow_module_level=True)

from koirules.commands.asking import session_file
from koirules.commands.asking.session_file import Book
from koirules.records.asked_journal import Answered, journal_of, read_journal
from tests.commands.tub import Sorter

RULES = """standard "Trial (an invented house)" edition 1
trait spine "back" as scale bent < slight < straight
trait edge "rear edge" as scale blurred < fair < sharp
trait odome "white before the tail" as number in % from 0 to 10
trait marks "marks" as places of (tail, dorsal)
trait specks "black specks" as count up to 20
trait lips "red lips" as yes or no
trait bridge "thin bridge" as yes or no
fault bent if spine is bent: no better than cull
fault marked if count of marks at least 1 and specks at least 4: no better than sell
section body worth 100
points edge by edge: blurred gives 0, fair gives 5, sharp gives 10
points tail by odome: 0 % gives 0, 6 % gives 10
bonus lips 10 if lips is recorded and lips is yes
penalty bridge 5 if bridge is recorded and bridge is yes
grade keep if score at least 60
grade sell if score at least 20
grade cull otherwise
"""


def twenty_fish():
    random = Random(7)
    for number in range(1, 21):
        yield (
            f"F{number}",
            {
                "spine": random.choice(["bent", "slight", "straight", "straight", "straight"]),
                "edge": random.choice(["blurred", "fair", "sharp", "fair or sharp"]),
                "odome": f"{random.randrange(0, 100) / 10}",
                "marks": random.choice(["none", "tail", "tail dorsal"]),
                "specks": str(random.randrange(8)),
            }
            | ({"lips": "yes"} if random.random() < 0.3 else {})
            | ({"bridge": "yes"} if random.random() < 0.3 else {}),
        )


def rows_of(path):
    return {row["fish"]: row for row in csv.DictReader(Path(path).read_text(encoding="utf-8").splitlines())}


def cells_of(rows):
    return {(fish, name.partition(" ")[0]): text for fish, row in rows.items() for name, text in row.items() if text}


def test_twenty_fish_are_sorted_though_the_power_goes_twice(tmp_path):
    rules, out = tmp_path / "rules.koi", tmp_path / "lot.csv"
    rules.write_text(RULES, encoding="utf-8")
    standard = koirules.load_standard(rules)
    fish = dict(twenty_fish())
    titles = {trait.title: name for name, trait in standard.traits.items()}
    asked = []
    for questions in (25, 31, None):
        sorter = Sorter([rules, "--out", out], titles, fish, begun=rows_of(out) if out.exists() else ())
        while (questions is None or len(sorter.answered) < questions) and sorter.answer_next():
            pass
        if questions is None:
            assert sorter.status() == 0
            asked += sorter.answered
            continue
        # The last answer is on disk as soon as the next question is shown.
        sorter.shown()
        sorter.kill()
        held = cells_of(rows_of(out))
        asked += sorter.answered
        assert all((name, trait) in held for name, trait in asked if trait in fish[name])
        assert [line for line in sorter.screen.replace("\r\n", "\n").split("\n") if len(line) > 40] == []
        assert "\x1b" not in sorter.screen
    assert len(asked) == len(set(asked)), "something was asked twice"
    rows = rows_of(out)
    assert list(rows) == list(fish)
    for name, row in rows.items():
        told = {column.partition(" ")[0]: text for column, text in row.items() if column != "fish" and text}
        full = standard.grade(fish[name])
        assert standard.grade(told).possible == full.possible, name
        for trait, text in told.items():
            kind = standard.reader.read({trait: text}, "").readings
            assert kind == standard.reader.read({trait: fish[name][trait]}, "").readings


@pytest.fixture
def one_fish(tmp_path):
    rules = tmp_path / "rules.koi"
    rules.write_text(RULES, encoding="utf-8")
    sorter = Sorter([rules, "--out", tmp_path / "lot.csv"], {}, {})
    sorter.shown()
    sorter.type("\n")
    sorter.shown()
    return sorter


def test_one_key_is_an_answer_and_an_arrow_is_none(one_fish):
    one_fish.type("\x1b[A")
    assert "1 bent, 2 slight, 3 straight" in one_fish.shown()
    one_fish.type("1")
    assert "bent. 1: cull" in one_fish.shown()
    one_fish.type("q\n")
    assert one_fish.shown() is None
    assert one_fish.status() == 0


@pytest.mark.parametrize(("keys", "status"), [("\x03", 130), ("\x04", 0), ("q", 0)])
def test_interrupting_ends_in_order_with_what_was_answered_in_the_file(one_fish, tmp_path, keys, status):
    one_fish.type("2")
    one_fish.shown()
    one_fish.type("0\n")
    one_fish.shown()
    one_fish.type(keys)
    assert one_fish.shown() is None
    assert "lot.csv:1item,0settled." in "".join(one_fish.screen.split())  # a long path is broken over lines
    assert one_fish.status() == status
    assert rows_of(tmp_path / "lot.csv")["1"]["spine"] == "slight"


def test_a_terminal_that_is_closed_loses_nothing(one_fish, tmp_path):
    one_fish.type("2")
    one_fish.shown()
    one_fish.close()
    assert rows_of(tmp_path / "lot.csv")["1"]["spine"] == "slight"


def held_answers(path):
    """What the journal can still take back, by fish and trait."""
    steps = read_journal(journal_of(path))
    return [(step.fish, step.trait) for step in steps if isinstance(step, Answered)]


def test_a_second_session_on_one_file_is_refused_and_told_who_holds_it(tmp_path):
    rules, out = tmp_path / "rules.koi", tmp_path / "lot.csv"
    rules.write_text(RULES, encoding="utf-8")
    standard = koirules.load_standard(rules)
    fish = dict(twenty_fish())
    titles = {trait.title: name for name, trait in standard.traits.items()}
    sorter = Sorter([rules, "--out", out], titles, fish)
    for _ in range(4):
        assert sorter.answer_next()
    sorter.shown()
    before = out.read_bytes()
    second = subprocess.run(
        [sys.executable, "-m", "koirules", "ask", rules, "--out", out],
        input="F99\n",
        capture_output=True,
        text=True,
        check=False,
    )
    assert second.returncode == 2
    assert "[file-held]" in second.stderr
    assert re.search(
        rf"on {re.escape(socket.gethostname())}, process [0-9]+, since 20", " ".join(second.stderr.split())
    )
    assert out.read_bytes() == before
    sorter.kill()
    # The lock ends with the process, and nothing hidden is left once a session has ended well.
    third = Sorter([rules, "--out", out], titles, fish, begun=rows_of(out))
    while third.answer_next():
        pass
    assert third.status() == 0
    assert sorted(each.name for each in tmp_path.iterdir()) == ["lot.csv", "lot.csv.asked", "rules.koi"]


@pytest.mark.parametrize("cut", ["journal", "file"])
def test_a_kill_between_the_journal_and_the_file_leaves_every_answer_to_be_taken_back(tmp_path, monkeypatch, cut):
    rules, out = tmp_path / "rules.koi", tmp_path / "lot.csv"
    rules.write_text(RULES, encoding="utf-8")
    standard = koirules.load_standard(rules)
    spine, edge = (standard.traits[name] for name in ("spine", "edge"))
    book = Book.open(out, standard, None, ())
    book.begin("F1")
    book.answer("F1", spine, 0b100)

    class PowerCutError(Exception):
        pass

    def fail(*_):
        raise PowerCutError

    with monkeypatch.context() as patched:
        patched.setattr(session_file, {"journal": "add_to_journal", "file": "write_told"}[cut], fail)
        with pytest.raises(PowerCutError):
            book.answer("F1", edge, 0b010)
    Path(tmp_path / ".lot.99999999-0.csv").write_text("fish", encoding="utf-8")
    book.hold.release()
    again = Book.open(out, standard, None, ())
    assert not list(tmp_path.glob(".lot.99999999*"))
    answered = [key for key in cells_of(rows_of(out)) if key[1] != "fish"]
    assert len(held_answers(out)) == len(answered) == 1
    assert again.back() == "F1"
    assert [key for key in cells_of(rows_of(out)) if key[1] != "fish"] == []
    again.hold.release()
