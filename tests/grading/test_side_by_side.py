"""Contributions of a score, and two fish side by side."""

from decimal import Decimal

import pytest

import koirules
from koirules.explain.side_by_side import side_by_side
from koirules.testing import registry_with

BOX = registry_with()
TEXT = """standard "Teal Yard small" edition 1 variety kohaku
fault bent "bent spine" if spine is bent: no better than cull
section look worth 40
points edge weight 1 by kiwa: blurred gives 0, fair gives 4, sharp gives 8, razor gives 10
points cover weight 2 by hi_cover: 20 % gives 0, 60 % gives 10, 90 % gives 0
bonus lips 6 if kuchibeni is yes
penalty windows 3 if windows at least 1
grade keep if score at least 30
grade cull otherwise
"""
STANDARD = koirules.read_standard(TEXT, registry=BOX)
BEST = {"spine": "straight", "kiwa": "razor", "hi_cover": "60 %", "kuchibeni": "yes", "windows": 0}
PLAIN = {"spine": "straight", "kiwa": "fair", "hi_cover": "33 %", "kuchibeni": "no", "windows": 2}


def lines(result):
    return {line.name or line.kind: line.points for line in result.contributions}


def test_what_a_section_loses_by_being_held_is_a_line_of_its_own():
    result = STANDARD.grade(BEST)
    assert result.score == 40
    assert lines(result)["held"] == -6
    assert sum(lines(result).values()) == 40


def test_rounding_is_a_line_of_its_own():
    result = STANDARD.grade(PLAIN)
    # 5.333 of edge, 8.667 of cover, 3 taken: 11 as a whole, 5.33 + 8.67 - 3 as shares.
    assert lines(result) == {
        "edge": Decimal("5.33"),
        "cover": Decimal("8.67"),
        "lips": 0,
        "windows": -3,
        "held": 0,
        "rounding": 0,
    }
    odd = STANDARD.grade(PLAIN | {"hi_cover": "60 %", "kiwa": "sharp", "windows": 0})
    assert sum(lines(odd).values()) == odd.score


def test_what_was_left_on_the_table_stands_most_first():
    left = [(reason.name, reason.left_on_table) for reason in STANDARD.grade(PLAIN).left_on_table]
    assert left == [("cover", Decimal("18.00")), ("edge", Decimal("8.00")), ("lips", 6), ("windows", 3)]
    assert STANDARD.grade(BEST).left_on_table == ()


def test_the_rows_of_two_fish_add_up_to_the_difference_of_their_scores():
    told = side_by_side(STANDARD.grade(BEST), STANDARD.grade(PLAIN))
    assert told.difference == 40 - 11
    assert sum(row.difference for row in told.rows) == told.difference
    assert [row.name or row.kind for row in told.rows][:2] == ["cover", "edge"]


def test_of_two_fish_the_faults_that_they_do_not_share_are_named():
    told = side_by_side(STANDARD.grade(BEST), STANDARD.grade(PLAIN | {"spine": "bent"}))
    assert [parting.other.words for parting in told.partings] == ["bent spine: no better than cull"]


def test_fish_that_are_not_settled_are_compared_at_their_low_ends():
    told = side_by_side(STANDARD.grade(BEST), STANDARD.grade({}))
    assert told.difference == 40
    assert sum(row.difference for row in told.rows) == 40


def test_results_of_different_standards_are_not_compared():
    other = koirules.read_standard(TEXT.replace("points edge", "points rim"), registry=BOX)
    with pytest.raises(ValueError, match="different standards"):
        side_by_side(STANDARD.grade(BEST), other.grade(BEST))
