"""The judge over the rounds of a batch: who is kept, passed over and tied (batches.md)."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from itertools import groupby, product
from math import ceil

from attrs import define, field, frozen

from tests.judge import model as m
from tests.judge import values as v
from tests.judge.look import Look
from tests.judge.reckoning import named, truth, worth

Compared = Callable[[Sequence[int], Mapping[str, Sequence[int]]], list[Look]]
"""Looks that compare themselves with some fish, and with those kept by each round so far."""
Group = tuple[object, ...]


@frozen
class RoundVerdict:
    """Of the fish that a round looked at, by their places in the batch; those it left or passed over are in neither."""

    looked_at: frozenset[int]
    kept: frozenset[int]
    tied: frozenset[int]
    places: dict[int, int]  # in the order of its pick, from 1, equal fish sharing one

    @property
    def passed_over(self) -> frozenset[int]:
        return self.looked_at - self.kept - self.tied


def run_rounds(
    standard: m.Standard, compared: Compared, kept_by_hand: Mapping[str, frozenset[int]]
) -> tuple[RoundVerdict, ...]:
    """The rounds in order; a person's choice settles ties, and what else a person keeps comes on top.

    Raises RefusedError where the rounds were run and a person settled a tie by half, or rescued more than a round allows.
    """
    done: dict[str, RoundVerdict] = {}
    refused: list[str] = []
    for each in standard.rounds:
        by_hand = kept_by_hand.get(each.name, frozenset())
        by_rules = pool_of(each, done, len(compared((), {})))
        pool = by_rules | by_hand
        looks = compared(sorted(pool), {name: sorted(one.kept) for name, one in done.items()})
        staying = [fish for fish in sorted(by_rules) if stays(each, looks[fish])]
        if each.keys:
            picks = []
            for together in grouped(each, looks, sorted(by_rules)):
                pick = Pick(each, looks, amount(each, standard, len(together)), by_hand)
                pick.walk([fish for fish in together if fish in staying])
                refused += ["half"] * pick.half_settled
                picks.append(pick)
            kept = frozenset(fish for pick in picks for fish in pick.kept)
            tied = frozenset(fish for pick in picks for fish in pick.tied)
            places = {fish: place for pick in picks for fish, place in pick.places.items()}
        else:
            kept, tied, places = frozenset(staying), frozenset[int](), {}
        rescued = by_hand - kept
        refused += ["rescues"] * (len(rescued) > each.rescues)
        places = {fish: place for fish, place in places.items() if fish not in rescued}
        done[each.name] = RoundVerdict(pool, kept | by_hand, tied, places)
    if refused:
        raise RefusedError
    return tuple(done.values())


def pool_of(of: m.Round, done: Mapping[str, RoundVerdict], count: int) -> frozenset[int]:
    """Whom a round looks at; a fish that is tied is in no later round, unless a person kept it after that."""
    waiting: set[int] = set()
    for each in done.values():
        waiting = (waiting | each.tied) - each.kept
    match of.pool:
        case "kept by":
            pool = done[of.pool_of].kept
        case "passed over by":
            pool = done[of.pool_of].passed_over
        case "" if done:
            pool = list(done.values())[-1].kept
        case _:
            pool = frozenset(range(count))
    return pool - waiting


def grouped(of: m.Round, looks: list[Look], fish: list[int]) -> list[list[int]]:
    """Fish with the same values of what stands behind `for each` are picked among themselves; unrecorded is one group."""
    groups: dict[Group, list[int]] = {}
    for one in fish:
        groups.setdefault(tuple(v.one_value(named(name, looks[one].as_told())) for name in of.each), []).append(one)
    return list(groups.values())


def stays(of: m.Round, look: Look) -> bool:
    """A sure yes; with `possibly`, whatever is no sure no."""
    if of.keep is None:
        return True
    holds = truth(of.keep, look)
    return holds.possibly if of.possibly else holds.surely


def amount(of: m.Round, standard: m.Standard, looked_at: int) -> int | None:
    """How many places there are; a setting stands at its own amount here, and a share is rounded up."""
    many, unit = of.many, "%" if isinstance(of.many, Decimal) else ""
    if isinstance(many, str):
        many, unit = next((each.amount, each.unit) for each in standard.settings if each.name == many)
    if many is None or not unit:
        return None if many is None else int(many)
    return ceil(Fraction(many) / 100 * looked_at)


class RefusedError(Exception):
    """What a person decided does not fit: a tie with places left over, or more rescues than a round allows."""


class EntangledError(Exception):
    """Equal fish compete for several quotas at once: who is tied then is for the pick to say (test_picks.py)."""


# ---- A pick ------------------------------------------------------------------------------------------------------


@define
class Pick:
    """A walk down the order, block by block of equal fish, with the places and quotas that are left."""

    round: m.Round
    looks: list[Look]
    left: int | None  # None: no end of places
    chosen: frozenset[int] = frozenset()  # by a person
    used: dict[tuple[int, Group], int] = field(factory=dict)
    kept: list[int] = field(factory=list)
    tied: list[int] = field(factory=list)
    places: dict[int, int] = field(factory=dict)
    half_settled: bool = False

    def walk(self, fish: list[int]) -> None:
        """Equal fish are one block, unless who was recorded first parts them."""
        keys = {each: (*order_key(self.round, self.looks[each]), self.turn(each)) for each in fish}
        place = 1
        for _, block in groupby(sorted(fish, key=lambda each: (keys[each], each)), key=lambda each: keys[each]):
            together = list(block)
            self.places |= dict.fromkeys(together, place)
            place += len(together)
            self.take(together)

    def turn(self, fish: int) -> int:
        return fish if self.round.ties == "by first recorded" else 0

    def take(self, block: list[int]) -> None:
        """Take a block as it would come out in whatever order its fish were walked.

        A fish that is in whatever the order is kept, one that is in for some orders only is tied. Walked one after
        the other, fish are taken until none fits any more; so the ways to come out are those to which no fish can be
        added. Fish that count in the same quotas are alike.
        """
        alike: dict[tuple[tuple[int, Group], ...], list[int]] = {}
        for each in block:
            alike.setdefault(tuple(self.counts_in(each)), []).append(each)
        kinds = list(alike)
        sizes = [len(alike[kind]) for kind in kinds]
        self.refuse_entangled(kinds, sizes)
        ways = [way for way in product(*(range(size + 1) for size in sizes)) if self.fits(kinds, way)]
        full = [way for way in ways if not any(self.fits(kinds, more) for more in one_more(way, sizes))]
        tied: list[int] = []
        for place, kind in enumerate(kinds):
            if all(way[place] == sizes[place] for way in full):
                self.kept += alike[kind]
            elif any(way[place] for way in full):
                (self.kept if self.round.ties == "all in" else tied).extend(alike[kind])
        chosen = sorted(self.chosen.intersection(tied))
        if chosen:
            kept = [fish for fish in block if fish in self.kept]
            taken = self.settled(kinds, alike, kept, chosen)
            full = [tuple(len(set(alike[kind]) & {*kept, *taken}) for kind in kinds)]
            self.half_settled |= any(self.fits(kinds, more) for more in one_more(full[0], sizes))
            self.kept += taken
        else:
            self.tied += tied
        self.hold(kinds, sizes, full)

    def settled(
        self,
        kinds: list[tuple[tuple[int, Group], ...]],
        alike: Mapping[tuple[tuple[int, Group], ...], list[int]],
        kept: list[int],
        chosen: list[int],
    ) -> list[int]:
        """The chosen take the places of a tie; where they are more than fit, those recorded first do."""
        taken: list[int] = []
        for fish in chosen:
            way = tuple(len(set(alike[kind]) & {*kept, *taken, fish}) for kind in kinds)
            if self.fits(kinds, way):
                taken.append(fish)
        return taken

    def refuse_entangled(self, kinds: list[tuple[tuple[int, Group], ...]], sizes: list[int]) -> None:
        def left_of(counter: tuple[int, Group]) -> int:
            return self.round.quotas[counter[0]].amount - self.used.get(counter, 0)

        still_in = [n for n, kind in enumerate(kinds) if all(left_of(counter) > 0 for counter in kind)]
        asking = self.taken([kinds[n] for n in still_in], tuple(sizes[n] for n in still_in))
        short = {counter for counter, count in asking.items() if count > left_of(counter)}
        if self.round.ties != "all in" and any(len(short.intersection(kinds[n])) > 1 for n in still_in):
            raise EntangledError

    def counts_in(self, fish: int) -> Iterator[tuple[int, Group]]:
        """The quotas that a fish counts in: every one of which it is not a sure no; what is not sure is one group."""
        for place, quota in enumerate(self.round.quotas):
            if quota.condition is None:
                yield place, tuple(v.one_value(named(name, self.looks[fish].as_told())) for name in quota.same)
            elif truth(quota.condition, self.looks[fish]).possibly:
                yield place, ()

    def fits(self, kinds: list[tuple[tuple[int, Group], ...]], way: tuple[int, ...]) -> bool:
        if self.left is not None and sum(way) > max(self.left, 0):
            return False
        for counter, taken in self.taken(kinds, way).items():
            if taken and self.used.get(counter, 0) + taken > self.round.quotas[counter[0]].amount:
                return False
        return True

    def taken(self, kinds: list[tuple[tuple[int, Group], ...]], way: tuple[int, ...]) -> dict[tuple[int, Group], int]:
        found: dict[tuple[int, Group], int] = {}
        for kind, count in zip(kinds, way, strict=True):
            for counter in kind:
                found[counter] = found.get(counter, 0) + count
        return found

    def hold(self, kinds: list[tuple[tuple[int, Group], ...]], sizes: list[int], full: list[tuple[int, ...]]) -> None:
        """What the block takes at the most is gone for those below it, whoever of the tied gets it."""
        if self.round.ties == "all in":
            full = [tuple(size if any(way[n] for way in full) else 0 for n, size in enumerate(sizes))]
        if self.left is not None:
            self.left -= max(sum(way) for way in full)
        most: dict[tuple[int, Group], int] = {}
        for way in full:
            for counter, count in self.taken(kinds, way).items():
                most[counter] = max(most.get(counter, 0), count)
        for counter, count in most.items():
            self.used[counter] = self.used.get(counter, 0) + count


def one_more(way: tuple[int, ...], sizes: list[int]) -> Iterator[tuple[int, ...]]:
    for place, size in enumerate(sizes):
        if way[place] < size:
            yield (*way[:place], way[place] + 1, *way[place + 1 :])


def order_key(of: m.Round, look: Look) -> tuple[int, ...]:
    """Smaller comes first. E counts by its lowest under `highest` and by its highest under `lowest`."""
    key = []
    for each in of.keys:
        if each.word == "those with":
            key.append(0 if truth(each.of, look).surely else 1)
        else:
            low, high = v.as_order(worth(each.of, look))
            key.append(-low if each.word == "highest" else high)
    return tuple(key)
