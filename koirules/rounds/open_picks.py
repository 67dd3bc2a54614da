"""The fish whose place in a pick a recording could still change."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Hashable, Sequence

from attrs import evolve

from koirules.results.course import Fate
from koirules.rounds.picking import Candidate, Key, Picked


def open_picks(
    picked: Picked,
    candidates: Sequence[Candidate],
    others: Sequence[Candidate],
    amount: int | None,
    quotas: Sequence[int],
    ties: str,
) -> set[int]:
    """The fish whose place in a pick a recording could still change.

    others: fish that are no candidates, but could be. A fish that is in is safe where fewer others could come to stand at
    or above it than there are places, in all and in each of its quotas; whose group is not sure may come to be in any. A
    fish that is out may come in where it may rise, and fewer of those that are in surely stand above the best that it may
    be than there are places; where its own group is not sure; where one that may come to stand above it could leave a place
    free, by being no candidate or in another group; and where one could push out two, by two quotas or since equal fish are
    all in. Whom a quota would keep out is not followed up, so that more may be marked than need be, never fewer.
    """
    every = [*candidates, *others]
    if amount == 0 or (not others and not any(one.doubtful or one.best != one.key for one in candidates)):
        return set()
    if ties == "first":
        every = [evolve(one, key=(*one.key, one.number), best=(*one.best, one.number)) for one in every]
        candidates = every[: len(candidates)]
    crowd = _Crowd(every, quotas, strictly=ties == "all")
    sure = sorted(one.key for one in candidates if picked.fates[one.number] is Fate.KEPT)
    freeing = [one.best for one in every if one.doubtful]
    if may_push_out_two(quotas, ties):
        freeing += [one.best for one in every if one.best < one.key]
    first = min(freeing, default=None)
    found: set[int] = set()
    for one in candidates:
        if picked.fates[one.number] is Fate.KEPT:
            if crowd.may_push_out(one, amount):
                found.add(one.number)
        elif (
            any(one.loose)
            or (first is not None and first <= one.key)
            or _may_rise(one, sure, amount, strictly=ties == "all")
        ):
            found.add(one.number)
    return found


def _may_rise(one: Candidate, sure: Sequence[Key], amount: int | None, *, strictly: bool) -> bool:
    """strictly: whether those that it comes to stand beside take no place from it, since they are all in."""
    above = bisect_left if strictly else bisect_right
    return one.best < one.key and (amount is None or above(sure, one.best) < amount)


def may_push_out_two(quotas: Sequence[int], ties: str) -> bool:
    """Whether one fish that rises may cost two others their places, and so make room for a third."""
    return len(quotas) > (0 if ties == "all" else 1)


class _Crowd:
    """The best that fish may turn out to be, in order: of all, and for each quota of those that may be in a group."""

    def __init__(self, every: Sequence[Candidate], quotas: Sequence[int], *, strictly: bool) -> None:
        self.strictly = strictly
        self.quotas = quotas
        self.hopes = sorted(one.best for one in every)
        self.in_groups: dict[tuple[int, Hashable], list[Key]] = {}
        for i in range(len(quotas)):
            loose = [one for one in every if one.loose[i]]
            groups: dict[Hashable, list[Key]] = {}
            for one in every:
                if one.groups[i] is not None and not one.loose[i]:
                    groups.setdefault(one.groups[i], []).append(one.best)
            for group in {*groups, *(one.groups[i] for one in loose)}:
                self.in_groups[i, group] = sorted([*groups.get(group, []), *(one.best for one in loose)])

    def may_push_out(self, one: Candidate, amount: int | None) -> bool:
        """Whether so many others may come to stand at or above a fish that its place, or a quota, is theirs."""
        if amount is not None and self._at_or_above(self.hopes, one) >= amount:
            return True
        for i, group in enumerate(one.groups):
            if group is not None:
                anywhere = one.loose[i] and group is not True
                others = self.hopes if anywhere else self.in_groups[i, group]
                if self._at_or_above(others, one) >= self.quotas[i]:
                    return True
        return False

    def _at_or_above(self, hopes: Sequence[Key], one: Candidate) -> int:
        """How many others may come to stand at or above a fish (strictly above it, where those beside it are all in)."""
        if self.strictly:
            return bisect_left(hopes, one.key) - (one.best < one.key)
        return bisect_right(hopes, one.key) - 1
