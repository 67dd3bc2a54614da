"""A reading as the condition that a rule has for it, the one of what is worse, and the one of what falls short of it."""

from decimal import Decimal

import pytest

from koirules.vocabulary.conditions import condition_of, opposite_of
from koirules.vocabulary.kinds import Choice, Count, Number, Places, Scale, YesNo
from koirules.vocabulary.readings import NO, NO_OR_YES, YES, PlaceSet, Span
from koirules.vocabulary.traits import Better, Trait
from koirules.vocabulary.units import UNITS

LENGTH = Number(UNITS["cm"], Decimal(0), Decimal(90))
SPECKS = Count(50)
FOUR = Scale(("a", "b", "c", "d"))
FIVE = Scale(("a", "b", "c", "d", "e"))
COLOUR = Choice(("red", "black", "white"))
FINS = Places(("left", "right", "dorsal", "tail"))
ANY, NONE = PlaceSet(0, 0b1111), PlaceSet(0, 0)


def trait(kind, better=Better.NEITHER):
    return Trait("t", "T", kind, better)


@pytest.mark.parametrize(
    ("kind", "reading", "condition"),
    [
        (FOUR, 0b0001, "t is a"),
        (FOUR, 0b0010, "t is b"),
        (FOUR, 0b1000, "t is d"),
        (FOUR, 0b0011, "t at most b"),
        (FOUR, 0b0111, "t at most c"),
        (FOUR, 0b1100, "t at least c"),
        (FOUR, 0b1110, "t at least b"),
        (FOUR, 0b0110, "t is one of (b, c)"),
        (FOUR, 0b1001, "t is one of (a, d)"),
        (FOUR, 0b1111, None),
        (YesNo(), YES, "t is yes"),
        (YesNo(), NO, "t is no"),
        (YesNo(), NO_OR_YES, None),
        (COLOUR, 0b010, "t is black"),
        (COLOUR, 0b101, "t is one of (red, white)"),
        (LENGTH, Span(40.0, 40.0), "t is 40 cm"),
        (LENGTH, Span(0.0, 40.0), "t at most 40 cm"),
        (LENGTH, Span(0.0, 39.999999), "t below 40 cm"),
        (LENGTH, Span(0.0, 39.999998), "t at most 39.999998 cm"),
        (LENGTH, Span(20.0, 90.0), "t at least 20 cm"),
        (LENGTH, Span(20.000001, 90.0), "t above 20 cm"),
        (LENGTH, Span(20.0, 40.0), "t between 20 cm and 40 cm"),
        (LENGTH, Span(0.0, 90.0), None),
        (SPECKS, Span(3.0, 3.0), "t is 3"),
        (SPECKS, Span(0.0, 3.0), "t at most 3"),
        (SPECKS, Span(3.0, 50.0), "t at least 3"),
        (SPECKS, Span(3.0, 5.0), "t between 3 and 5"),
        (FINS, NONE, "count of t is 0"),
        (FINS, PlaceSet(0b0001, 0b0001), "t includes left"),
        (FINS, PlaceSet(0b1000, 0b1111), "t includes tail"),
        (FINS, PlaceSet(0b1000, 0b1100), None),
        (FINS, PlaceSet(0b0011, 0b0011), None),
        (FINS, PlaceSet(0b0011, 0b1111), None),
        (FINS, PlaceSet(0, 0b1111, 1, 4), "count of t at least 1"),
        (FINS, PlaceSet(0, 0b1111, 3, 4), "count of t at least 3"),
        (FINS, PlaceSet(0, 0b1111, 2, 2), "count of t is 2"),
        (FINS, PlaceSet(0, 0b1111, 1, 2), None),
        (FINS, PlaceSet(0, 0b0111, 1, 1), None),
        (FINS, PlaceSet(0, 0b0111, 1, 3), None),
        (FINS, ANY, None),
    ],
)
def test_a_reading_is_the_condition_that_holds_of_it_alone(kind, reading, condition):
    assert condition_of(trait(kind, Better.MORE), reading) == condition


@pytest.mark.parametrize(
    ("kind", "better", "reading", "condition"),
    [
        (FOUR, Better.MORE, 0b0001, "t is a"),
        (FOUR, Better.MORE, 0b0010, "t at most b"),
        (FOUR, Better.MORE, 0b0100, "t at most c"),
        (FOUR, Better.MORE, 0b0110, "t at most c"),
        (FOUR, Better.MORE, 0b1000, "t is d"),
        (FOUR, Better.LESS, 0b0001, "t is a"),
        (FOUR, Better.LESS, 0b0010, "t at least b"),
        (FOUR, Better.LESS, 0b0100, "t at least c"),
        (FOUR, Better.LESS, 0b0110, "t at least b"),
        (FOUR, Better.LESS, 0b1000, "t is d"),
        (FOUR, Better.TARGET, 0b0001, "t is a"),
        (FOUR, Better.TARGET, 0b0010, "t at most b"),
        (FOUR, Better.TARGET, 0b0100, "t at least c"),
        (FOUR, Better.TARGET, 0b1000, "t is d"),
        (FOUR, Better.TARGET, 0b0110, "t is one of (b, c)"),
        (FIVE, Better.TARGET, 0b00001, "t is a"),
        (FIVE, Better.TARGET, 0b00010, "t at most b"),
        (FIVE, Better.TARGET, 0b00100, "t is c"),
        (FIVE, Better.TARGET, 0b01000, "t at least d"),
        (FIVE, Better.TARGET, 0b10000, "t is e"),
        (FOUR, Better.NEITHER, 0b0010, "t is b"),
    ],
)
def test_a_widened_condition_takes_in_the_steps_that_are_worse(kind, better, reading, condition):
    assert condition_of(trait(kind, better), reading, widened=True) == condition


@pytest.mark.parametrize(
    ("kind", "better", "reading", "condition"),
    [
        (FOUR, Better.MORE, 0b0010, "t is a"),
        (FOUR, Better.MORE, 0b0100, "t at most b"),
        (FOUR, Better.MORE, 0b1000, "t at most c"),
        (FOUR, Better.MORE, 0b0001, None),
        (FOUR, Better.LESS, 0b0100, "t is d"),
        (FOUR, Better.LESS, 0b0010, "t at least c"),
        (FOUR, Better.LESS, 0b0001, "t at least b"),
        (FOUR, Better.LESS, 0b1000, None),
        (FOUR, Better.TARGET, 0b0110, "t is one of (a, d)"),
        (FOUR, Better.NEITHER, 0b0001, "t at least b"),
        (YesNo(), Better.NEITHER, YES, "t is no"),
        (YesNo(), Better.NEITHER, NO, "t is yes"),
        (YesNo(), Better.NEITHER, NO_OR_YES, None),
        (COLOUR, Better.NEITHER, 0b010, "t is not black"),
        (COLOUR, Better.NEITHER, 0b101, "t is not one of (red, white)"),
        (LENGTH, Better.NEITHER, Span(0.0, 40.0), "t above 40 cm"),
        (LENGTH, Better.NEITHER, Span(0.0, 39.999999), "t at least 40 cm"),
        (LENGTH, Better.NEITHER, Span(20.0, 90.0), "t below 20 cm"),
        (LENGTH, Better.NEITHER, Span(20.000001, 90.0), "t at most 20 cm"),
        (LENGTH, Better.NEITHER, Span(20.0, 40.0), None),
        (SPECKS, Better.NEITHER, Span(0.0, 3.0), "t above 3"),
        (SPECKS, Better.NEITHER, Span(3.0, 50.0), "t below 3"),
        (FINS, Better.NEITHER, NONE, "count of t at least 1"),
        (FINS, Better.NEITHER, PlaceSet(0, 0b0111), "t includes tail"),
        (FINS, Better.NEITHER, PlaceSet(0, 0b1110), "t includes left"),
        (FINS, Better.NEITHER, PlaceSet(0b0001, 0b0111), None),
        (FINS, Better.NEITHER, PlaceSet(0, 0b0011), None),
        (FINS, Better.NEITHER, PlaceSet(0b0001, 0b1111), "not t includes left"),
        (FINS, Better.NEITHER, PlaceSet(0, 0b1111, 2, 2), "not count of t is 2"),
        (FINS, Better.NEITHER, ANY, None),
    ],
)
def test_the_opposite_of_a_reading_holds_of_a_fish_that_falls_short_of_it(kind, better, reading, condition):
    assert opposite_of(trait(kind, better), reading) == condition
