"""Which remarks of a rule file are on which statement."""

from __future__ import annotations

from koirules import load_standard, read_standard
from koirules.language.statements import HouseTrait

BASE = """# The club's page.

# A second paragraph.
standard "Club (invented)" edition 1 variety kohaku
# ---- Faults ----
# Nothing mends it.
fault bent if spine is bent: no better than low
# Gone in the farm's page.
fault bald if head_hi is none: no better than low  # behind it
# The frame.
section body worth 100
points stem by tail_stem: thin gives 0,
  # inside of it
  fair gives 6, strong gives 10
# Best first.
grade high if score at least 60  # the line
grade low otherwise
# About nothing.
"""
FARM = """# Ours.
standard "Farm (invented)" edition 1 based on "club.koi" edition 1
# We mind less.
replace fault bent "bent" if spine is bent and length above 9 cm: no better than low
# Not ours.
drop fault bald
# More for shine.
section body
bonus shine 1 if lustre is superb
# Ours alone.
trait tag as yes or no
fault tagged if tag: no better than low
"""


def on(standard):
    """The remarks of a standard by what they are on."""
    remarks = standard.rules.source.remarks
    names = {}
    for statement in standard.rules.source.statements:
        name = getattr(getattr(statement, "name", None), "text", "head")
        if statement.place in remarks:
            names[name] = remarks[statement.place]
    return names


def test_a_remark_is_on_what_follows_it_or_what_it_stands_in():
    found = on(read_standard(BASE))
    assert found == {
        "head": ("The club's page.", "A second paragraph."),
        "bent": ("Faults", "Nothing mends it."),
        "bald": ("Gone in the farm's page. behind it",),
        "body": ("The frame.",),
        "stem": ("inside of it",),
        "high": ("Best first. the line",),
    }


def test_remarks_of_a_base_stay_on_its_statements_and_go_with_those_that_are_replaced(tmp_path):
    (tmp_path / "club.koi").write_text(BASE, encoding="utf-8")
    (tmp_path / "farm.koi").write_text(FARM, encoding="utf-8")
    standard = load_standard(tmp_path / "farm.koi")
    assert on(standard) == {
        "head": ("Ours.",),
        "bent": ("We mind less.",),
        "body": ("The frame.",),
        "stem": ("inside of it",),
        "high": ("Best first. the line",),
        "shine": ("More for shine.",),
        "tag": ("Ours alone.",),
    }
    assert [one for one in standard.rules.source.statements if isinstance(one, HouseTrait)]


def test_drawn_lines_alone_say_nothing():
    assert on(read_standard('# -----\n#\n# ====\nstandard "A" edition 1\n#\ngrade a otherwise\n')) == {}
