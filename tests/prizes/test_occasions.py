"""Tables of prizes: read with every problem at once, each at its line."""

from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from koirules.classes.reading import read_table
from koirules.prizes.occasion import Fewer, Ties, Winners
from koirules.prizes.reading import _KEYS, Entered, check_names, read_occasion, read_occasion_text, votes_wanted
from koirules.problems import Place

TOP = 'title = "Duck Pond (invented)"\ndate = 2026-05-02\n'
PRIZE = '[[prize]]\nname = "best"\nby = "score"\n'


def found(text):
    read = read_occasion_text(text, "day.toml")
    return [(one.code, getattr(one.site, "line", None)) for one in read] if isinstance(read, tuple) else read


def test_everything_that_a_committee_can_say_is_read():
    read = found(
        TOP
        + """classes = "lantern_bay_young"
note = "In bags."
[[prize]]
name = "class"
title = "Place in its class"
for_each = ["class group", "Class size"]
places = 3
by = ["section body", "votes", "score"]
fewest = 2
if_fewer = "first place only"
ties = "share"
[[prize]]
name = "best"
by = "votes"
among = [{ prize = "class", places = 1 }]
not_with = "class"
outside = true
[prize.where]
sizes = ["12"]
groups = "kohaku"
grades = ["keep"]
spawning = ["A", "B"]
"""
    )
    first, second = read.prizes
    assert (read.day, read.told_day, read.classes, read.notes) == (
        date(2026, 5, 2),
        "2 May 2026",
        "lantern_bay_young",
        ("In bags.",),
    )
    assert first.for_each == ("class_group", "class_size")
    assert (first.places, first.fewest, first.if_fewer, first.ties) == (3, 2, Fewer.FIRST, Ties.SHARE)
    assert second.among == (Winners("class", 1),)
    assert second.not_with == (Winners("class"),)
    assert (second.sizes, second.groups, second.grades) == (("12",), ("kohaku",), ("keep",))
    assert second.labels == {"spawning": ("A", "B")}
    assert read.columns == ("spawning",)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("", [("prize-key-missing", None)] * 3),
        (
            "title = 3\ndate = 4\nprize = 5\n",
            [("prize-value-wrong", 1), ("prize-value-wrong", 2), ("prize-value-wrong", 3)],
        ),
        (TOP + "prizes = 1\n" + PRIZE, [("prize-key-unknown", 3)]),
        (TOP + "[[prize]]\n", [("prize-key-missing", 3)] * 2),
        (TOP + PRIZE + 'ties = "draw lots"\nplaces = 0\n', [("prize-value-wrong", 7), ("prize-value-wrong", 6)]),
        (TOP + PRIZE + "fewest = 2\n", [("prize-key-missing", 3)]),
        (TOP + PRIZE + 'if_fewer = "no prize"\n', [("prize-key-missing", 6)]),
        (TOP + PRIZE + PRIZE, [("prize-named-twice", 7)]),
        (
            TOP + PRIZE + 'among = "worst"\nnot_with = { prize = "x", upto = 1 }\n',
            [("prize-name-unknown", 6), ("prize-key-unknown", 7), ("prize-name-unknown", 7)],
        ),
        (TOP + PRIZE + 'among = "best"\n', [("prize-name-unknown", 6)]),
        (
            TOP + PRIZE + 'for_each = ["pond", "pond"]\nwhere = { sizes = [3] }\n',
            [("prize-value-wrong", 6), ("prize-value-wrong", 7)],
        ),
        (TOP + '[[prize]]\nname = "best"\nby = ["points"]\n', [("prize-name-unknown", 5)]),
        (TOP + '[[prize]]\nname = "best"\nby = []\n', [("prize-value-wrong", 5)]),
        (TOP + "[[prize]\n", [("prize-table-unread", 3)]),
    ],
)
def test_every_problem_is_told_at_its_line(text, told):
    assert sorted(found(text), key=str) == sorted(told, key=str)


def checked(text, standards, columns=("fish", "variety"), classes=None):
    read = read_occasion_text(TOP + text, "day.toml")
    table = None if classes is None else read_table(classes)
    return [(one.code, one.site.line) for one in check_names(read, table, standards, columns, "lot.csv")]


def entered(name, **sections):
    return Entered(name, ("keep", "cull"), {key: Decimal(worth) for key, worth in sections.items()})


KOHAKU, SHOWA = entered("kohaku", body=40, skin=60), entered("showa", body=40, black=80)


@pytest.mark.parametrize(
    ("lines", "told"),
    [
        ('by = "section body"', []),
        ('by = "section skin"', [("prize-name-unknown", 5)]),
        ('by = "score"', [("prize-points-unlike", 5)]),
        ('by = "votes"\nfor_each = "class size"', [("prize-name-unknown", 6)]),
        ('by = "votes"\nfor_each = "spawning"', [("prize-name-unknown", 6)]),
        ('by = "votes"\nwhere = { sizes = "12", grades = ["kept"] }', [("prize-name-unknown", 6)] * 2),
    ],
)
def test_what_a_prize_names_must_be_there(lines, told):
    assert checked(f'[[prize]]\nname = "best"\n{lines}\n', [KOHAKU, SHOWA]) == told


def test_sizes_and_groups_must_be_those_of_the_class_table():
    lines = '[[prize]]\nname = "best"\nby = "votes"\nwhere = { sizes = ["12", "13"], groups = ["kohaku", "goshiki"] }\n'
    assert checked(lines, [KOHAKU], classes="lantern_bay_young") == [("prize-name-unknown", 6)] * 2


def test_a_section_that_is_not_worth_the_same_everywhere_is_a_warning():
    lines = '[[prize]]\nname = "best"\nby = ["section body"]\n'
    assert checked(lines, [KOHAKU, entered("showa", body=50)]) == [("prize-points-unlike", 5)]


def test_votes_are_asked_for_where_they_decide():
    read = read_occasion_text(TOP + '[[prize]]\nname = "best"\nby = ["score", "votes"]\n', "day.toml")
    (problem,) = votes_wanted(read)
    assert problem.code == "prize-votes-missing"
    assert isinstance(problem.site, Place)


def test_a_file_that_is_not_there_is_told_with_the_one_that_was_meant(tmp_path):
    (tmp_path / "spring.toml").write_text(TOP + PRIZE, encoding="utf-8")
    (problem,) = read_occasion(tmp_path / "sprnig.toml")
    assert problem.code == "no-such-file"
    assert "spring.toml" in problem.mend
    (problem,) = read_occasion(tmp_path / ("x" * 300))
    assert problem.code in {"no-such-file", "unreadable-file"}
    assert read_occasion(Path(tmp_path / "spring.toml")).prizes


def test_the_table_of_the_reference_holds():
    reference = (Path(__file__).parents[2] / "examples" / "guide" / "reference" / "prizes.md").read_text(
        encoding="utf-8"
    )
    block = reference.split("```toml\n")[1].split("```")[0]
    read = read_occasion_text(block, "day.toml")
    assert not check_names(read, read_table(read.classes), [entered("one", body=40)], ("fish", "variety"), "lot.csv")
    keys = reference.split("| key | what it says |")[1].split("\n\n")[0]
    for key in _KEYS:
        assert f"`{key}`" in keys
