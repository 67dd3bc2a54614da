"""A pick whose equal fish compete for several quotas at once, beside every order in which they could be walked."""

from __future__ import annotations

from itertools import permutations

import polars as pl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import koirules
from koirules.results.course import Fate
from koirules.rounds.columnar.picks import FATES, open_columns
from koirules.rounds.picking import Candidate, pick

GROUPS = st.lists(st.tuples(*[st.sampled_from((None, "a", "b"))] * 2), min_size=1, max_size=5)


def walked(groups: list[tuple[str | None, ...]], order: tuple[int, ...], amount: int, quotas: list[int]) -> set[int]:
    """Who is in where the fish are walked one by one: whoever still has a place, in all and in its quotas."""
    found: set[int] = set()
    for fish in order:
        counted = [(i, group) for i, group in enumerate(groups[fish]) if group is not None]
        taken = [sum(groups[other][i] == group for other in found) for i, group in counted]
        if len(found) < amount and all(quotas[i] > used for (i, _), used in zip(counted, taken, strict=True)):
            found.add(fish)
    return found


@settings(max_examples=400, deadline=None)
@given(GROUPS, st.integers(0, 4), st.lists(st.integers(0, 3), min_size=2, max_size=2))
def test_who_is_in_without_a_tie_is_in_whatever_the_order_and_who_is_out_is_out(
    groups: list[tuple[str | None, ...]], amount: int, quotas: list[int]
) -> None:
    fish = [Candidate(number, (0,), (0,), each) for number, each in enumerate(groups)]
    ways = [walked(groups, order, amount, quotas) for order in permutations(range(len(fish)))]
    picked = pick(fish, amount, quotas, "")
    for number, fate in picked.fates.items():
        if fate is not Fate.TIED:
            assert {number in way for way in ways} == {fate is Fate.KEPT}
    # With one quota alone nobody is called tied who is in, or out, in every order.
    if all(quota_of_all is None for _, quota_of_all in groups):
        for number, fate in picked.fates.items():
            assert (fate is Fate.TIED) == (len({number in way for way in ways}) == 2)
    for tie in picked.ties:
        assert max(len(way.intersection(tie.fish)) for way in ways) <= tie.places


@pytest.mark.parametrize(
    ("share", "fish", "places"),
    [("10 %", 1, 1), ("10 %", 10, 1), ("10 %", 11, 2), ("33.333333 %", 3, 1), ("0 %", 9, 0), ("100 %", 7, 7)],
)
def test_a_share_of_those_that_a_round_looks_at_is_rounded_up(share: str, fish: int, places: int) -> None:
    """Places counted by hand. Those that leave by `keep` were looked at too."""
    text = f"""standard "Share (invented)" edition 1
setting part = {share} from 0 % to 100 %
trait n as count up to 99
grade all otherwise
round by_number keep those with n at least 1 pick {share} by highest n
round by_setting from all pick part by highest n
"""
    standard = koirules.read_standard(text)
    lot = [{"fish": str(n), "n": n} for n in range(fish)]
    for way in (standard.grade_batch(lot), standard.grade_batch(lot[::-1])):
        assert [one.places for one in way.rounds] == [places, places]
        assert [len(one.kept) for one in way.rounds] == [min(places, fish - 1), places]
        assert f"the first {places} ({share} of those looked at, rounded up)" in way.rounds[0].asks
    assert standard.seal.startswith("3-")
    assert standard.with_settings({"part": "100"}).grade_batch(lot).rounds[1].places == fish


TWO_QUOTAS = """standard "Lantern Bay trial standard" edition 1
trait length as number in cm from 0 to 90
trait beni as yes or no
trait sumi as yes or no
grade keep if length above 1 cm
grade sell otherwise
round best
  pick 2 by highest length
  no more than 1 with beni
  no more than 1 with sumi
"""


@pytest.mark.parametrize(("length", "kept"), [("10 cm", ("y", "z")), ("30 cm", ("x", "v"))])
def test_a_fish_that_rises_may_push_out_two_by_two_quotas_and_let_in_a_third(
    length: str, kept: tuple[str, ...]
) -> None:
    standard = koirules.read_standard(TWO_QUOTAS)
    fish = [
        {"fish": "y", "length": "20 cm", "beni": "yes", "sumi": "no"},
        {"fish": "z", "length": "19 cm", "beni": "no", "sumi": "yes"},
        {"fish": "v", "length": "18 cm", "beni": "no", "sumi": "no"},
        {"fish": "x", "length": "10 cm to 30 cm", "beni": "yes", "sumi": "yes"},
    ]
    (found,) = standard.grade_batch(fish).rounds
    assert found.open == ("y", "z", "v", "x")
    (settled,) = standard.grade_batch([*fish[:3], fish[3] | {"length": length}]).rounds
    assert (settled.kept, settled.open) == (kept, ())


def test_by_columns_who_may_rise_to_no_more_than_just_behind_the_places_is_over_for_sure():
    def still_open(best: int) -> list[bool]:
        frame = pl.DataFrame(
            {
                "fate": pl.Series([FATES.index(Fate.KEPT), FATES.index(Fate.OVER)], dtype=pl.UInt8),
                "candidate": [True, True],
                "k0": [-90, -50],
                "b0": [-90, best],
                "falls": [False, False],
                "sure": [True, True],
            }
        )
        return open_columns(frame, 1, 1, [], [], "first").to_list()

    assert still_open(-80) == [False, False]
    assert still_open(-95) == [True, True]
