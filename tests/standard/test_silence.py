"""`silence means` as a statement: what it is read as, bases that change it, its seal, names like its head word."""

from pathlib import Path

import pytest

import koirules
from koirules.editing import Desk, offers_at
from koirules.testing import registry_with
from koirules.vocabulary.readings import PlaceSet, Span

BOX = registry_with()
HEAD = 'standard "Stillwater (invented)" edition 1 variety kohaku\n'
BODY = """fault spots if shimi_count at least 3 and shimi_count is recorded: no better than sell
section body worth 100
points outline by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10
grade keep if score at least 75
grade sell otherwise
"""


def page(silence, body=BODY, head=HEAD):
    return koirules.read_standard(head + silence + body, registry=BOX)


@pytest.mark.parametrize(
    ("said", "reading"),
    [
        ("outline is fair", 0b0010),
        ("outline is fair or good", 0b0110),
        ("outline is fair to excellent", 0b1110),
        ("outline at least good", 0b1100),
        ("outline above good", 0b1000),
        ("outline at most fair", 0b0011),
        ("outline below fair", 0b0001),
        ("kuchibeni is no", 0b01),
        ("steps is nidan or sandan", 0b110000),
        ("hi_on_eyes is none", PlaceSet(0, 0)),
        ("hi_on_eyes is (left_eye)", PlaceSet(1, 1)),
        ("odome is 1 % to 3 %", Span(1.0, 3.0)),
        ("odome is 2 %", Span(2.0, 2.0)),
        ("odome below 1 %", Span(0.0, 0.999999)),
        ("odome above 99 %", Span(99.000001, 100.0)),
        ("odome at most 1 %", Span(0.0, 1.0)),
        ("shimi_count at least 2", Span(2.0, 200.0)),
        ("shimi_count above 2", Span(3.0, 200.0)),
        ("shimi_count below 2", Span(0.0, 1.0)),
    ],
)
def test_what_is_said_becomes_a_reading(said, reading):
    (found,) = page(f"silence means {said}\n").rules.silence.values()
    assert (found.reading, found.unless) == (reading, None)


def test_several_statements_share_the_traits_out():
    rules = page(
        "silence means kiwa is fair, odome is 2 % unless steps is tancho\nsilence means outline is fair\n"
    ).rules
    assert list(rules.silence) == ["kiwa", "odome", "outline"]
    assert [one.unless is not None for one in rules.silence.values()] == [False, True, False]


def test_the_head_word_still_names_a_trait_or_a_term():
    made = page("trait silence as scale low < high\n", BODY.replace("score at least 75", "silence is high"))
    assert made.grade({"silence": "high"}).grade == "keep"
    made = page("term silence means outline is good\n", BODY.replace("score at least 75", "silence"))
    assert made.grade({"outline": "good"}).grade == "keep"


CLUB = HEAD + "silence means outline is fair, kiwa is fair, odome is 2 % unless steps is tancho\n" + BODY
FARM = 'standard "Farm (invented)" edition 2 based on "club.koi" edition 1\n'


@pytest.fixture
def club(tmp_path):
    def load(changes):
        (tmp_path / "club.koi").write_text(CLUB, encoding="utf-8")
        (tmp_path / "farm.koi").write_text(FARM + changes, encoding="utf-8")
        return koirules.load_standard(tmp_path / "farm.koi", BOX)

    return load


def test_a_page_changes_what_silence_means_of_one_trait_of_its_base(club):
    made = club("replace silence means outline is good\ndrop silence kiwa\nsilence means shiroji is white\n")
    told = {name: (one.reading, one.unless is not None) for name, one in made.rules.silence.items()}
    assert told == {"outline": (0b0100, False), "odome": (Span(2.0, 2.0), True), "shiroji": (0b0100, False)}
    again = koirules.read_standard(made.whole_text, registry=BOX)
    assert (again.rules.silence.keys(), again.seal) == (made.rules.silence.keys(), made.seal)


@pytest.mark.parametrize(
    ("changes", "code"),
    [
        ("silence means outline is good\n", "already-in-base"),
        ("replace silence means shiroji is white\n", "not-in-base"),
        ("drop silence shiroji\n", "not-in-base"),
        ("drop silence outline\nreplace silence means outline is good\n", "changed-twice"),
    ],
)
def test_what_a_page_cannot_change_in_its_base(club, changes, code):
    with pytest.raises(koirules.StandardError) as found:
        club(changes)
    assert [problem.code for problem in found.value.problems if not problem.warning] == [code]


def test_a_page_has_the_second_form_only_where_it_says_what_silence_means():
    plain, silent = page(""), page("silence means outline is fair, hi_cover is 30 %\n")
    assert plain.seal[:2] == "1-"
    assert silent.seal[:2] == "2-"
    added = [line for line in silent.canonical_text.split("\n") if line not in plain.canonical_text.split("\n")]
    assert added == [
        "koirules canonical form 2",
        "silence means hi_cover is 30 %",
        "silence means outline is fair",
        "reads hi_cover as number in % from 0 to 100",
    ]


SAME = [
    ("silence means outline is fair\nsilence means kiwa is fair\n", "silence  means kiwa is fair,\n outline is fair\n"),
    (
        "silence means outline is fair unless (steps is tancho)\n",
        "silence means outline is fair unless steps is tancho\n",
    ),
]
OTHER = [
    ("silence means outline is fair\n", "silence means outline is good\n"),
    ("silence means outline is fair\n", "silence means outline is fair unless steps is tancho\n"),
    ("silence means outline is fair\n", "silence means outline at least fair\n"),
]


def test_the_seal_is_of_what_silence_means_and_not_of_its_looks():
    for one, other in SAME:
        assert page(one).seal == page(other).seal
    for one, other in OTHER:
        assert page(one).seal != page(other).seal


@pytest.mark.parametrize(
    ("line", "offered", "not_offered"),
    [
        ("silence means ", {"outline", "odome"}, {"keep", "fair"}),
        ("silence means outline ", {"is", "at least", "above"}, {"includes"}),
        ("silence means outline is ", {"fair", "good"}, {"outline", "nidan"}),
        ("silence means hi_on_eyes is (", {"left_eye"}, {"tail"}),
        ("silence means outline is fair ", {"unless", "or"}, {"except"}),
        ("silence means outline is fair, ", {"odome"}, {"outline"}),
        ("silence means outline is fair unless steps is ", {"tancho"}, {"fair"}),
        ("drop silence ", set(), {"keep"}),
    ],
)
def test_what_an_editor_offers(line, offered, not_offered):
    desk = Desk(BOX)
    desk.open("page", Path("page.koi"), HEAD + line + "\n" + BODY)
    desk.look("page")
    found = {offer.text for offer in offers_at(desk, "page", 2, len(line) + 1).offers}
    assert offered <= found
    assert not not_offered & found
