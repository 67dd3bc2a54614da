"""What lies on an edge: the last value that is in, the first that is out, and what holds where nothing is said."""

from decimal import Decimal

import polars as pl
import pytest

import koirules
from koirules.meaning import aggregates
from koirules.meaning.aggregates import Bounds
from koirules.rounds.columnar import picks
from koirules.rounds.figure_ends import Members
from koirules.rounds.rounds_of_rows import places_of
from koirules.rounds.tallies import Counts
from koirules.vocabulary.cells import read_cell
from koirules.vocabulary.colour_readings import MOST_CHROMA, ColourSpace, _within
from koirules.vocabulary.expected import _decimals
from koirules.vocabulary.kinds import Choice, Number, Scale
from koirules.vocabulary.map_text import read_map
from koirules.vocabulary.maps import Patch
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.nearness import near
from koirules.vocabulary.outlines import TORPEDO
from koirules.vocabulary.plain_text import folded, positions
from koirules.vocabulary.quantities import Quantity, _stretch, _too_long
from koirules.vocabulary.readings import NO, NO_OR_YES, YES, Span, show_number, show_reading, write_number
from koirules.vocabulary.rounding import apart
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import UNITS, Dimension, Unit
from koirules.vocabulary.wordings import tokens_of

TENTHS = Number(None, Decimal(0), Decimal(10))


def test_a_yes_or_no_is_the_first_bit_the_second_or_both():
    assert (NO, YES, NO_OR_YES) == (0b01, 0b10, 0b11)


def test_a_number_is_written_to_a_millionth_and_no_further():
    assert write_number(0.12345678, TENTHS) == "0.123457"
    assert show_number(1234567.1234567, Number(None, Decimal(0), Decimal(10_000_000))) == "1234567"
    length = Number(UNITS["cm"], Decimal(0), Decimal(10))
    assert write_number(1.23456789, length) == "1.234568 cm"


def test_a_reading_is_shown_rounded_unless_it_is_asked_for_exactly():
    assert show_reading(TENTHS, Span(1.23456, 1.23456)) == "1.23"
    assert show_reading(TENTHS, Span(1.23456, 1.23456), exact=True) == "1.23456"


def test_numbers_are_told_apart_with_as_few_digits_as_will_do():
    assert apart(Decimal("65.034"), Decimal(65)) == "65.03"


def test_where_nothing_is_said_of_a_trait_silence_may_speak_of_it_and_white_does_not_grow_on_it():
    trait = Trait("kiwa", "edge", Scale(("blurred", "sharp")))
    assert (trait.never_silent, trait.white_from_sides) == (False, False)
    assert trait == Trait("kiwa", "edge", Scale(("blurred", "sharp")), source="another book")


def test_units_are_the_same_wherever_their_factor_is_from_and_however_they_are_written():
    foot = Unit("ft", Dimension.LENGTH, Decimal("30.48"))
    assert foot == Unit("ft", Dimension.LENGTH, Decimal("30.48"), ("feet",), source="NIST SP 811, from memory")


def test_a_patch_is_thick_without_holes_and_without_sashi_unless_it_is_said():
    patch = Patch(((0.0, 0.0), (10.0, 0.0), (10.0, 10.0)))
    assert (patch.windows, patch.sashi, patch.thin) == ((), 0.0, False)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("POLYGON ((10 10, 10 10))", "encloses nothing"),
        ("POLYGON ((10 10, 20 10))", "does not end where it begins"),
        ("POLYGON ((10 10, abcdefghijklmnopqrstuvwxyz, 10 10))", '"abcdefghijklmnopqrst"'),
        ("MULTIPOLYGON (((10 10, 20 10, 20 20, 10 10)), ((30 10, 40 10)))", "2"),
    ],
)
def test_an_outline_that_cannot_be_read_says_which_and_why(text, told):
    found = read_map(text)
    assert isinstance(found, Misread)
    assert told in f"{found.cause} {found.mend}"


def test_a_word_that_is_not_known_at_either_end_of_a_stretch_is_told():
    kind = Scale(("blurred", "fair", "sharp"))
    for text in ("crips to sharp", "blurred to crips"):
        found = read_cell(kind, text)
        assert isinstance(found, Misread)
        assert "crips" in f"{found.cause} {found.mend}"


def test_a_stretch_has_the_unit_that_one_of_its_ends_has():
    bare, measured = (Quantity(f"1{unit}", Decimal(1), "1", unit) for unit in ("", "cm"))
    assert _stretch(bare, measured) == "1 to 1 cm"
    assert _stretch(measured, bare) == "1 to 1 cm"


def test_a_number_may_be_as_far_from_1_as_thirty_digits():
    assert not _too_long(Decimal("1e30"))
    assert not _too_long(Decimal("1e-30"))
    assert _too_long(Decimal("1e31"))


def test_the_ends_of_colour_numbers_are_in():
    assert _within("", (0.0, MOST_CHROMA, 0.0), ColourSpace.LAB) == (0.0, MOST_CHROMA, 0.0)
    assert _within("", (100.0, 0.0, 0.0), ColourSpace.LAB) == (100.0, 0.0, 0.0)
    assert _within("", (0.0, 255.0, 0.0), ColourSpace.SRGB) == (0.0, 255.0, 0.0)
    of_a_photograph = _within("", (0.0, 255.0, 0.0), ColourSpace.LAB)
    assert of_a_photograph != _within("", (0.0, 256.0, 0.0), ColourSpace.LAB)


def test_an_example_of_a_wide_range_has_no_decimals():
    assert [_decimals(Decimal(width)) for width in ("10", "9.9", "0.2", "0.19")] == [0, 2, 2, 6]


def test_a_name_that_four_slips_part_is_not_near():
    assert near("imprssiveness", ["impressiveness"]) == "impressiveness"
    assert near("imprxxxxeness", ["impressiveness"]) is None


def test_a_word_is_found_by_its_folded_form_where_no_other_has_it():
    found = positions(Choice(("Straße", "Masse")))
    assert found[folded("Straße")] == 0
    assert found["Masse"] == 1


def test_contractions_keep_whose_they_are():
    assert tokens_of("they've") == ("they", "have")
    assert tokens_of("I've") == ("i", "have")


def test_the_outline_of_a_koi_is_as_it_was_drawn():
    assert [TORPEDO.width(u) for u in (36, 48, 60)] == [1, 0.965, 0.86]


PICKS = """standard "Tin Bucket, a share (invented)" edition 1 variety kohaku
grade all otherwise
round first "first" pick {} % by highest score
"""


def share(percent):
    """A round that picks a share of the fish."""
    (one,) = koirules.read_standard(PICKS.format(percent)).rules.rounds
    return one


def test_a_share_of_the_fish_is_rounded_up_and_all_of_them_are_all():
    for looked_at, places in ((0, 0), (1, 1), (3, 2), (200, 100)):
        assert places_of(share(50), {}, looked_at) == places
    assert places_of(share(100), {}, 200) == 200


def test_counts_of_nothing_are_none_and_of_something_so_many():
    assert Counts([], []).number == 0
    assert Counts.of({3: 2, 1: 1}).number == 3


def test_a_percentile_over_many_that_may_count_is_no_higher_than_it_may_come_to(monkeypatch):
    monkeypatch.setattr(aggregates, "_MOST_TRIED", 3)
    low = (10, 20, 30, 40, 50)
    tried = Bounds(low, low, (5, 6, 7), (5, 6, 7), low)
    assert aggregates._lowest_percentile(tried, Decimal(50)) == 15
    many = Bounds(low, low, (4, 5, 6, 7), (4, 5, 6, 7), low)
    assert aggregates._lowest_percentile(many, Decimal(50)) == 6


def test_which_figures_ask_for_a_percentage_and_which_for_the_value_of_the_fish():
    asking = {name: (one.percent, one.own) for name, one in aggregates.AGGREGATES.items()}
    assert {name for name, (percent, _) in asking.items() if percent} == {"percentile"}
    assert "spread" not in {name for name, (_, own) in asking.items() if own}


def test_values_that_surely_count_and_are_one_number_are_fixed():
    of = Members({(1, 1): 2, (1, 3): 1}, {(4, 4): 1})._bounds
    assert (list(of.fixed), list(of.lows), list(of.highs)) == ([1, 1], [1, 1, 1], [1, 1, 3])


def test_walks_in_pieces_pick_as_one_walk_does(monkeypatch):
    rows = pl.DataFrame({"candidate": [True] * 9, "k0": [1, 2, 2, 3, 4, 4, 5, 6, 7]})
    whole = [picks.picked_columns(rows, 1, 5, [], ties) for ties in ("first", "all", "none")]
    monkeypatch.setattr(picks, "_AT_ONCE", 2)
    again = [picks.picked_columns(rows, 1, 5, [], ties) for ties in ("first", "all", "none")]
    assert [one.to_list() for one in again] == [one.to_list() for one in whole]
    assert {len(set(one)) for one in again} != {1}
