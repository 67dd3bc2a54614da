"""A name that is changed is changed everywhere: the standard says the same with it, and back again is as it was."""

import re
from pathlib import Path

import pytest

import koirules
from koirules.editing import Desk, places_of, renamed
from koirules.language.diagnose.mending import edited
from koirules.testing import registry_with

ROOT = Path(__file__).parents[2]
BOX = registry_with()
FILES = sorted([*ROOT.glob("rulesets/*/standard.koi"), *ROOT.glob("examples/*/*.koi")])
ALONE = [path for path in FILES if "based on" not in path.read_text(encoding="utf-8")]


def names_of(desk):
    """One use of each name that the page gives, by group and name."""
    return {(use.group, use.name): use for use in desk.pages["page"].uses if use.gives}


@pytest.mark.parametrize("path", ALONE, ids=lambda path: str(path.relative_to(ROOT)))
def test_every_name_of_a_file_can_be_changed_and_changed_back(path):
    text = path.read_text(encoding="utf-8")
    desk = Desk(BOX)
    page = desk.open("page", None, text)
    rules = desk.look("page").checked.rules
    assert rules is not None
    for (group, name), use in names_of(desk).items():
        place = use.place
        changes = renamed(desk, "page", place.line, place.column, "qq_new")
        assert not isinstance(changes, str), (group, name, changes)
        (change,) = changes
        page.put(edited(page.read.rules.text, change.edits))
        look = desk.look("page")
        assert look.checked.rules is not None, (group, name, look.checked.problems)
        assert not re.search(rf"^{group} {name}\b", page.text, re.MULTILINE)
        back = renamed(desk, "page", place.line, place.column, name)
        assert not isinstance(back, str), (group, name, back)
        (back,) = back
        assert edited(page.read.rules.text, back.edits) == text
        assert (
            len(back.edits) == len(change.edits) == len(places_of(desk, "page", place.line, place.column, given=False))
        )
        page.put(text)
        desk.look("page")


def test_what_a_standard_says_is_the_same_under_other_names():
    path = ROOT / "tests" / "cases" / "frozen" / "tosai_kohaku" / "page.koi"  # a page whose names are all its own
    text = path.read_text(encoding="utf-8")
    before = koirules.read_standard(text, registry=BOX)
    desk = Desk(BOX)
    page = desk.open("page", None, text)
    desk.look("page")
    for number, (key, use) in enumerate(names_of(desk).items()):
        now = names_of(desk)[key].place
        (change,) = renamed(desk, "page", now.line, now.column, f"qq_{number}")
        assert use.name == key[1]
        page.put(edited(page.read.rules.text, change.edits))
        desk.look("page")
    after = koirules.read_standard(page.text, registry=BOX)
    record = {"length": "14 cm", "spine": "straight", "kiwa": "fair or sharp", "hi_cover": "45 %"}
    one, other = before.grade(record), after.grade(record)
    assert (one.score_low, one.score_high) == (other.score_low, other.score_high)
    assert [before.grades.index(grade) for grade in one.possible] == [
        after.grades.index(grade) for grade in other.possible
    ]
