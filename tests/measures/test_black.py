"""Black is measured as red is: its share and spread from a map, and how alike both fins are from what was seen on each."""

from __future__ import annotations

import pytest

import koirules
from koirules import hookimpl
from koirules.plugins import registry_with
from koirules.results.record import Record
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import Vocabulary


class BlackKoi:
    """A variety of nothing but what is shared and black."""

    KOIRULES_API = 1

    @staticmethod
    @hookimpl
    def koirules_vocabularies():
        return [
            Vocabulary("black_koi", "black koi", (), ("shared", "black", "black_bands"), "Invented, for this test.")
        ]


REGISTRY = registry_with(BlackKoi)


def derived(trait, **record):
    rules = f'fault seen if length is not recorded: no better than a say "{{{trait}}}"\ngrade a otherwise'
    made = koirules.read_standard(f'standard "try" edition 1 variety black_koi\n{rules}', registry=REGISTRY)
    read = made.reader.read(record, "")
    assert isinstance(read, Record), read
    return made.grader.measured(read).readings.get(trait)


@pytest.mark.parametrize(
    ("left", "right", "likeness"),
    [(40, 40, 1), (30, 40, 0.75), (40, 30, 0.75), (0, 40, 0), ("20 to 30", 40, (0.5, 0.75))],
)
def test_both_fins_are_as_alike_as_the_lesser_is_to_the_greater(left, right, likeness):
    low, high = likeness if isinstance(likeness, tuple) else (likeness, likeness)
    assert derived("motoguro_evenness", motoguro_left=left, motoguro_right=right) == Span(low, high)


@pytest.mark.parametrize(
    ("left", "front", "spread"), [(50, 50, 1), (100, 50, 0), (50, 0, 0), (40, 75, 0.5), (30, 50, 0.6), (70, 50, 0.6)]
)
def test_black_is_spread_as_well_as_the_worse_of_its_balances(left, front, spread):
    assert derived("sumi_balance", sumi_left_share=left, sumi_front_share=front) == Span(spread, spread)


def test_a_map_of_the_black_gives_its_share_and_its_sides():
    right_alone = {"sumi_patches": "60 to 90 right 80"}
    assert derived("sumi_left_share", **right_alone) == Span(0, 0)
    assert derived("sumi_front_share", **right_alone) == Span(0, 0)
    assert derived("sumi_balance", **right_alone) == Span(0, 0)
    cover = derived("sumi_cover", **right_alone)
    assert isinstance(cover, Span) and 0 < cover.low == cover.high < 20


def test_a_map_and_its_mirror_cover_the_same():
    left, right = (derived("sumi_cover", sumi_patches=f"20 to 45 {side} 70") for side in ("left", "right"))
    assert left == right
