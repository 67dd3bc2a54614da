"""A pick: fish in order, how many, quotas, and ties that are never broken in silence.

Fish with equal keys are one block. Walking down the order, a block that fits into the places and quotas that are left
is in; a fish whose quota is full is passed over; where a block does not fit, those of its fish that compete for what is
left are tied, and what they could take is held for them.
"""

from __future__ import annotations

from collections.abc import Collection, Hashable, Iterable, Iterator, Mapping, Sequence
from itertools import groupby

from attrs import field

from koirules.results.course import Fate
from koirules.values import define, frozen

Key = tuple[int, ...]


@frozen
class Candidate:
    """A fish in a pick; whatever comes first has the smaller key.

    number: its place in the batch. key: by what it is sure of. best: by the best that it may yet turn out to be. groups:
    for each quota the group in which it counts, None where it counts in none. loose: for each quota whether that is not
    sure. sure: whether it surely is a candidate. falls: whether it may yet stand behind where it stands now, since a figure
    of the batch moves; `key` is then by the worst that it may turn out to be. within: the group that it is picked in; adrift:
    where that is not sure, the parts of it that are, each of the others None.
    """

    number: int
    key: Key
    best: Key
    groups: tuple[Hashable, ...] = ()
    loose: tuple[bool, ...] = ()
    sure: bool = True
    falls: bool = False
    within: Hashable = ()
    adrift: tuple[Hashable, ...] | None = None

    @property
    def parts(self) -> tuple[Hashable, ...]:
        """The parts of its group."""
        return self.within if isinstance(self.within, tuple) else ()

    def may_come_into(self, group: Hashable) -> bool:
        """Whether it may turn out to belong to another group than its own."""
        return self.adrift is not None and self.within != group and may_be(self.adrift, group)

    @property
    def doubtful(self) -> bool:
        """Whether it may yet leave its place, or its share of a quota, to another."""
        return not self.sure or self.falls or any(self.loose)


def may_be(parts: tuple[Hashable, ...], group: Hashable) -> bool:
    """Whether a group of which only some parts are sure may be another one."""
    others = group if isinstance(group, tuple) else ()
    return all(one is None or other is None or one == other for one, other in zip(parts, others, strict=True))


@frozen
class Tie:
    """Fish that compete for fewer places than they are. quota: whose places they are, None for those of the pick."""

    fish: tuple[int, ...]
    places: int
    quota: int | None


@frozen
class Settled:
    """A tie that a person settled.

    tie: the fish and the places. chosen: those of them who took the places. beyond: further ones that the person keeps, for
    whom no place was left. short: for how many places nobody was chosen.
    """

    tie: Tie
    chosen: tuple[int, ...]
    beyond: tuple[int, ...]
    short: int


@define
class Picked:
    """What came of a pick: the fate of each fish, its place (from 1, equal fish share one), and who stood above it.

    above: for a fish that was passed over, the last fish above it that is in; for one over a quota the last fish that
    filled the quota. quota: which quota it was. ties: those that a person has to break. settled: those that a person broke.
    """

    fates: dict[int, Fate] = field(factory=dict)
    places: dict[int, int] = field(factory=dict)
    above: dict[int, int] = field(factory=dict)
    quota: dict[int, int] = field(factory=dict)
    ties: list[Tie] = field(factory=list)
    settled: list[Settled] = field(factory=list)

    def joined(self, other: Picked) -> None:
        """Add what came of the pick in another group."""
        for field_of in ("fates", "places", "above", "quota"):
            getattr(self, field_of).update(getattr(other, field_of))
        self.ties += other.ties
        self.settled += other.settled

    def kept(self) -> list[int]:
        """The fish that are in, in order."""
        return [number for number, fate in self.fates.items() if fate is Fate.KEPT]


@define
class Walk:
    """A walk down the order: the places left (None: no end of them), and for each group of a quota how many it has used.

    filled: the last fish that each of these groups took. chosen: fish that a person keeps: a tie that holds any is settled.
    """

    amount: int | None
    quotas: Sequence[int]
    chosen: Collection[int] = frozenset()
    picked: Picked = field(factory=Picked)
    last: int | None = None
    used: dict[tuple[int, Hashable], int] = field(factory=dict)
    filled: dict[tuple[int, Hashable], int] = field(factory=dict)

    def left_of(self, quota: int, group: Hashable) -> int:
        """How many a group of a quota may still take."""
        return self.quotas[quota] - self.used.get((quota, group), 0)

    def block(self, fish: Sequence[Candidate], place: int, *, all_in: bool) -> None:
        """Decide about fish with equal keys."""
        for one in fish:
            self.picked.places[one.number] = place
        if self.amount == 0:
            self._mark(fish, Fate.OVER)
            return
        open_ones = [one for one in fish if not self._is_full(one)]
        if all_in and open_ones:
            self._take(open_ones)
            return
        wanted = _wanted(open_ones)
        over = {key: left for key, count in wanted.items() if count > (left := self.left_of(*key))}
        tied = [one for one in open_ones if any((i, group) in over for i, group in enumerate(one.groups))]
        competing = {one.number for one in tied}
        free = [one for one in open_ones if one.number not in competing]
        most = _most_in(tied, over)
        if self.amount is not None and len(free) + most > self.amount:
            if not self._settle(open_ones, self.amount, None):
                self._tie(open_ones, self.amount, None)
                self.amount = 0
            return
        self._take(free)
        if tied and not self._settle(tied, most, next(iter(over))[0]):
            self._tie(tied, most, next(iter(over))[0])
            self.amount = None if self.amount is None else self.amount - most
            for key, inside in _by_group(tied).items():
                held = min(_most_in(inside, over), self.left_of(*key))
                self.used[key] = self.used.get(key, 0) + held

    def single(self, groups: Sequence[Hashable]) -> Fate:
        """The fate of a fish that no other is equal to; who stands where is not noted down."""
        if self.amount == 0:
            return Fate.OVER
        used, quotas = self.used, self.quotas
        counted = [key for key in enumerate(groups) if key[1] is not None]
        for key in counted:
            if used.get(key, 0) >= quotas[key[0]]:
                return Fate.QUOTA
        for key in counted:
            used[key] = used.get(key, 0) + 1
        if self.amount is not None:
            self.amount -= 1
        return Fate.KEPT

    def _is_full(self, one: Candidate) -> bool:
        for i, group in enumerate(one.groups):
            if group is not None and self.left_of(i, group) <= 0:
                self.picked.fates[one.number] = Fate.QUOTA
                self.picked.quota[one.number] = i
                if (i, group) in self.filled:
                    self.picked.above[one.number] = self.filled[i, group]
                return True
        return False

    def _take(self, fish: Sequence[Candidate]) -> None:
        for one in fish:
            self.picked.fates[one.number] = Fate.KEPT
            for i, group in enumerate(one.groups):
                if group is not None:
                    self.used[i, group] = self.used.get((i, group), 0) + 1
                    self.filled[i, group] = one.number
            self.last = one.number
        if self.amount is not None:
            self.amount = max(0, self.amount - len(fish))

    def _settle(self, fish: Sequence[Candidate], places: int, quota: int | None) -> bool:
        """Give the places of a tie to those whom a person chose among its fish; False where nobody was chosen.

        The first recorded of the chosen come first, where they are more than fit.
        """
        chosen = [one for one in fish if one.number in self.chosen]
        if not chosen:
            return False
        taken: list[Candidate] = []
        beyond: list[Candidate] = []
        for one in chosen:
            fits = self._fits(one)
            (taken if fits else beyond).append(one)
            if fits:
                self._take([one])
        others = [one for one in fish if one.number not in self.chosen]
        short = self._more_that_fit(others)
        self._mark([*beyond, *others], Fate.OVER)
        tie = Tie(_numbers(fish), places, quota)
        self.picked.settled.append(Settled(tie, _numbers(taken), _numbers(beyond), short))
        if short and self.amount is not None:
            self.amount -= short  # held, as those of a tie are
        return True

    def _fits(self, one: Candidate) -> bool:
        counted = [key for key in enumerate(one.groups) if key[1] is not None]
        return self.amount != 0 and all(self.left_of(*key) > 0 for key in counted)

    def _more_that_fit(self, fish: Sequence[Candidate]) -> int:
        """How many of these fish there is still room for, walked in their order."""
        trial = Walk(self.amount, self.quotas, used=dict(self.used))
        return sum(trial.single(one.groups) is Fate.KEPT for one in fish)

    def _tie(self, fish: Sequence[Candidate], places: int, quota: int | None) -> None:
        self._mark(fish, Fate.TIED)
        self.picked.ties.append(Tie(_numbers(fish), places, quota))

    def _mark(self, fish: Iterable[Candidate], fate: Fate) -> None:
        for one in fish:
            self.picked.fates[one.number] = fate
            if self.last is not None:
                self.picked.above[one.number] = self.last


def _numbers(fish: Sequence[Candidate]) -> tuple[int, ...]:
    return tuple(one.number for one in fish)


def _wanted(fish: Iterable[Candidate]) -> dict[tuple[int, Hashable], int]:
    wanted: dict[tuple[int, Hashable], int] = {}
    for one in fish:
        for i, group in enumerate(one.groups):
            if group is not None:
                wanted[i, group] = wanted.get((i, group), 0) + 1
    return wanted


def _by_group(fish: Iterable[Candidate]) -> dict[tuple[int, Hashable], list[Candidate]]:
    found: dict[tuple[int, Hashable], list[Candidate]] = {}
    for one in fish:
        for i, group in enumerate(one.groups):
            if group is not None:
                found.setdefault((i, group), []).append(one)
    return found


def _most_in(fish: Sequence[Candidate], over: Mapping[tuple[int, Hashable], int]) -> int:
    """No more of these fish can be in, whatever order they are taken in.

    over: what is left of quotas that are short; each of the fish counts in one of them at least.
    """
    short = {key: count for key, count in _wanted(fish).items() if key in over}
    bounds = [over[key] + len(fish) - count for key, count in short.items()]
    return min([len(fish), sum(over[key] for key in short), *bounds])


def pick(
    candidates: Iterable[Candidate],
    amount: int | None,
    quotas: Sequence[int],
    ties: str,
    chosen: Collection[int] = frozenset(),
) -> Picked:
    """Pick fish.

    amount: how many, None for all. quotas: how many each of them lets in. ties: "", "all" or "first". chosen: fish that a
    person keeps, who settles the ties that they are in.
    """
    walk = Walk(amount, quotas, chosen)
    ordered = sorted(candidates, key=lambda one: (one.key, one.number))
    place = 1
    for block in _blocks(ordered, one_by_one=ties == "first"):
        walk.block(block, place, all_in=ties == "all")
        place += len(block)
    return walk.picked


def _blocks(ordered: Sequence[Candidate], *, one_by_one: bool) -> Iterator[list[Candidate]]:
    for _, equal in groupby(ordered, key=lambda one: one.key):
        block = list(equal)
        if one_by_one:
            yield from ([one] for one in block)
        else:
            yield block
