"""Picks with quotas and ties against brute force: every order in which tied fish could be walked, one after another.

A fish that is in whatever the order is in; one that is in for none is out; whoever is in for some only is tied.
"""

from itertools import groupby, permutations, product

from hypothesis import given, settings
from hypothesis import strategies as st

from koirules.results.course import Fate
from koirules.rounds.picking import Candidate, pick


def walked(order, amount, quotas):
    """Who is in when fish are taken one by one from the first."""
    taken, counts = set(), {}
    for one in order:
        if amount is not None and len(taken) == amount:
            break
        keys = [(i, group) for i, group in enumerate(one.groups) if group is not None]
        if all(counts.get(key, 0) < quotas[key[0]] for key in keys):
            taken.add(one.number)
            for key in keys:
                counts[key] = counts.get(key, 0) + 1
    return taken


def every_outcome(candidates, amount, quotas):
    ordered = sorted(candidates, key=lambda one: one.key)
    blocks = [list(block) for _, block in groupby(ordered, key=lambda one: one.key)]
    for each in product(*(permutations(block) for block in blocks)):
        yield walked([one for block in each for one in block], amount, quotas)


def fates_by_force(candidates, amount, quotas):
    outcomes = list(every_outcome(candidates, amount, quotas))
    return {one.number: sum(one.number in outcome for outcome in outcomes) / len(outcomes) for one in candidates}


def batches(quotas):
    one = st.tuples(st.integers(0, 2), *(st.sampled_from([None, "a", "b"]) for _ in range(quotas)))
    return st.lists(one, max_size=6).map(
        lambda drawn: [Candidate(number, (key,), (key,), tuple(groups)) for number, (key, *groups) in enumerate(drawn)]
    )


@settings(max_examples=400, deadline=None)
@given(batches(1), st.none() | st.integers(0, 4), st.lists(st.integers(0, 3), min_size=1, max_size=1))
def test_with_one_quota_the_fates_are_those_of_every_order(candidates, amount, quotas):
    shares = fates_by_force(candidates, amount, quotas)
    fates = pick(candidates, amount, quotas, "").fates
    for number, share in shares.items():
        expected = {Fate.KEPT} if share == 1 else {Fate.OVER, Fate.QUOTA} if share == 0 else {Fate.TIED}
        assert fates[number] in expected, (number, share, fates)


@settings(max_examples=400, deadline=None)
@given(batches(2), st.none() | st.integers(0, 4), st.lists(st.integers(0, 3), min_size=2, max_size=2))
def test_with_two_quotas_nobody_is_in_who_could_be_out(candidates, amount, quotas):
    """As far as the first tie: behind it, what the tied fish could take is held for them, and no longer contested."""
    shares = fates_by_force(candidates, amount, quotas)
    fates = pick(candidates, amount, quotas, "").fates
    first_tie = min((one.key for one in candidates if fates[one.number] is Fate.TIED), default=(9,))
    for one in candidates:
        if one.key <= first_tie and fates[one.number] is Fate.KEPT:
            assert shares[one.number] == 1
        if one.key <= first_tie and fates[one.number] in {Fate.OVER, Fate.QUOTA}:
            assert shares[one.number] == 0


@settings(max_examples=300, deadline=None)
@given(batches(2), st.none() | st.integers(0, 4), st.lists(st.integers(0, 3), min_size=2, max_size=2))
def test_by_first_recorded_is_one_walk(candidates, amount, quotas):
    order = sorted(candidates, key=lambda one: (one.key, one.number))
    assert set(pick(candidates, amount, quotas, "first").kept()) == walked(order, amount, quotas)
