"""The rounds of a selection, worked out record by record."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Hashable, Iterable, Mapping, Sequence
from decimal import Decimal
from types import MappingProxyType
from typing import Any

from attrs import evolve, field

from koirules.results.course import Fate
from koirules.rounds.evaluation_levels import asked_by
from koirules.rounds.figures_of_rows import FiguresOfRows, Readings, Seen
from koirules.rounds.node_values import NodeValues, compile_nodes, one_value, value_ends
from koirules.rounds.open_picks import open_picks
from koirules.rounds.picking import Candidate, Picked, pick
from koirules.standard import rounds as parts
from koirules.standard.numbers import millionths
from koirules.standard.parts import Rules, Setting
from koirules.values import define, frozen


@define
class RoundRun:
    """What a round did. All fish by their place in the batch.

    fish: those that it looked at. fates: of each. readings: of each, with the figures that the round saw. candidates: what
    the pick knows of each. picked: what came of its pick, None without one. places: how many the pick could take, in all; room:
    in each group. open: those in whose fate a recording could still change. strays: those of which the group is not sure.
    rescued: those that a person kept and the rules would not have.
    """

    round: parts.Round
    fish: list[int]
    readings: dict[int, Readings]
    places: int | None
    room: dict[Hashable, int | None] = field(factory=dict)
    fates: dict[int, Fate] = field(factory=dict)
    picked: Picked | None = None
    candidates: dict[int, Candidate] = field(factory=dict)
    open: set[int] = field(factory=set)
    strays: dict[int, Candidate] = field(factory=dict)
    rescued: set[int] = field(factory=set)

    @property
    def kept(self) -> list[int]:
        """Those that it kept, in the order of its pick; those that were rescued last."""
        rescued = [number for number in self.fates if number in self.rescued]
        order = self.fates if self.picked is None else self.picked.fates
        return [n for n in order if self.fates[n] is Fate.KEPT and n not in self.rescued] + rescued

    def stray(self, candidate: Candidate) -> None:
        """Note down a fish of which the group is not sure."""
        if candidate.adrift is not None:
            self.strays[candidate.number] = candidate

    def room_of(self, number: int) -> int:
        """How many places there were where a fish was passed over."""
        return self.room[self.candidates[number].within] or 0

    @property
    def chosen(self) -> frozenset[int]:
        """Those to whom a person gave the places of a tie."""
        settled = () if self.picked is None else self.picked.settled
        return frozenset(number for one in settled for number in one.chosen)


@frozen
class _Compiled:
    """A round with what reads its figures and its expressions."""

    round: parts.Round
    figures: FiguresOfRows
    values: NodeValues


@frozen
class RoundsOfRows:
    """The compiled rounds of a standard."""

    rules: Rules
    settings: Mapping[str, Setting]
    rounds: tuple[_Compiled, ...]

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting]) -> RoundsOfRows:
        """Compile the rounds."""
        made = []
        for one in rules.rounds:
            figures = FiguresOfRows.of(rules, settings, asked_by(rules, one.roots, graded=True), graded=True)
            made.append(_Compiled(one, figures, compile_nodes(rules, settings, one.roots, graded=True)))
        return cls(rules, settings, tuple(made))

    def run(
        self,
        fish: Sequence[Readings],
        by_hand: Mapping[str, Collection[int]],
        later: Sequence[Readings] | None = None,
        at: Mapping[int, Sequence[Readings]] = MappingProxyType({}),
        *,
        alone: bool = False,
        outside: Collection[int] = (),
    ) -> list[RoundRun]:
        """Run every round over a batch. fish: readings with outcomes. by_hand: by round those that a person keeps.

        later: the same, with outcomes as wide as figures of the batch may make them once more is recorded; None where they
        make no difference. at: by look the same as they stood then, for rounds that judge at a look. alone: a fish graded by
        itself, for which no figure of a batch is recorded. outside: fish that no round looks at, unless a person keeps them.
        """
        runs: list[RoundRun] = []
        tied: set[int] = set(outside)
        for each in self.rounds:
            # At a look before the last one what was known then is judged, which nothing that is recorded later changes.
            then = None if each.round.look is None else at.get(each.round.look)
            seen, wide = (fish, later) if then is None else (then, None)
            run = self._run(each, seen, wide, runs, tied, by_hand.get(each.round.name, ()), alone=alone)
            tied.update(number for number, fate in run.fates.items() if fate is Fate.TIED)
            tied -= run.rescued
            runs.append(run)
        return runs

    def _run(
        self,
        each: _Compiled,
        fish: Sequence[Readings],
        later: Sequence[Readings] | None,
        before: Sequence[RoundRun],
        tied: Collection[int],
        by_hand: Collection[int],
        *,
        alone: bool,
    ) -> RoundRun:
        one = each.round
        by_rules = {number for number in _pool(one, before, len(fish)) if number not in tied}
        pool = sorted({*by_rules, *by_hand})
        readings = {number: dict(fish[number]) for number in pool}
        wanted = () if alone else [run for run in before if run.round.name in each.figures.kept_by]
        kept = {run.round.name: {n: dict(fish[n]) for n in run.kept} for run in wanted}
        lacks = not alone and each.figures.supply(
            list(readings.values()), {name: list(own.values()) for name, own in kept.items()}
        )
        quotas = [number_of(quota.amount, self.settings) for quota in one.quotas]
        run = RoundRun(one, pool, readings, None)
        candidates: list[Candidate] = []
        others: list[Candidate] = []
        for number in pool:
            if number not in by_rules:
                run.fates[number] = Fate.LEFT
                continue
            surely, possibly, candidate = _candidate(each, number, readings[number])
            run.candidates[number] = candidate
            run.stray(candidate)
            stays = surely or (possibly and one.possibly)
            run.fates[number] = Fate.KEPT if stays else Fate.LEFT
            if stays:
                candidates.append(candidate)
            elif possibly:
                others.append(candidate)
            if surely != possibly:
                run.open.add(number)
        if one.ordered:
            run.room = self._room(one, run.candidates.values())
            run.places = None if one.amount is None else sum(many or 0 for many in run.room.values())
            run.picked = Picked()
            for group, some in _by_group(candidates).items():
                run.picked.joined(pick(some, run.room[group], quotas, one.ties, by_hand))
            run.fates.update(run.picked.fates)
        lacks = lacks or any(other.open for other in wanted)
        if lacks or later is not None:
            widened = _widened(each, fish if later is None else later, wanted, kept, run)
            candidates, others = _as_they_may_become(each, widened, run)
        if run.picked is not None:
            run.open |= self._open(run, candidates, others, quotas)
        run.rescued = {number for number in by_hand if run.fates[number] is not Fate.KEPT}
        run.fates.update(dict.fromkeys(sorted(run.rescued), Fate.KEPT))
        run.open -= {*run.rescued, *run.chosen}
        return run

    def _room(self, one: parts.Round, fish: Iterable[Candidate]) -> dict[Hashable, int | None]:
        """How many a round may pick in each group of those that it looks at."""
        sizes = Counter(each.within for each in fish) if one.each else {(): sum(1 for _ in fish)}
        return {group: places_of(one, self.settings, size) for group, size in sizes.items()}

    def _open(
        self, run: RoundRun, candidates: Sequence[Candidate], others: Sequence[Candidate], quotas: Sequence[int]
    ) -> set[int]:
        """The fish of a pick in whose fate a recording could still change.

        A fish of which the group is not sure may come to be in any of them, as one more that competes there, and makes a
        share of them larger.
        """
        one, picked = run.round, run.picked or Picked()
        if not one.each:
            return open_picks(picked, candidates, others, run.places, quotas, one.ties)
        found = {each.number for each in candidates if each.adrift and may_leave_out(one.amount, quotas)}
        sizes = Counter(each.within for each in run.candidates.values())
        beside = _by_group([each for each in others if each.adrift is None])
        for group, inside in _by_group(candidates).items():
            come = [evolve(each, sure=False) for each in (*candidates, *others) if each.may_come_into(group)]
            found |= open_picks(picked, inside, [*beside.get(group, []), *come], run.room[group], quotas, one.ties)
            more = sum(each.may_come_into(group) for each in run.strays.values())
            if more and places_of(one, self.settings, sizes[group] + more) != run.room[group]:
                found |= {each.number for each in inside if picked.fates[each.number] is not Fate.KEPT}
        return found


def _by_group(candidates: Iterable[Candidate]) -> dict[Hashable, list[Candidate]]:
    """Candidates by the group that they are picked in, in the order in which the groups come."""
    found: dict[Hashable, list[Candidate]] = {}
    for each in candidates:
        found.setdefault(each.within, []).append(each)
    return found


def may_leave_out(amount: parts.Amount | parts.Share | None, quotas: Sequence[int]) -> bool:
    """Whether a pick can leave out any fish, and take any."""
    return amount != 0 and (amount is not None or bool(quotas))


def _widened(
    each: _Compiled,
    later: Sequence[Readings],
    wanted: Sequence[RoundRun],
    kept: Mapping[str, Mapping[int, Readings]],
    run: RoundRun,
) -> dict[int, Readings]:
    """The readings of the fish of a round as wide as figures may yet make them.

    wanted: the rounds that figures are taken among the kept of; kept: these fish, with the figures of now.
    """
    seen = {number: Seen(run.readings[number], dict(later[number])) for number in run.fish}
    members = {}
    for one in wanted:
        own = kept[one.round.name]
        members[one.round.name] = [
            Seen(own.get(n, {}), dict(later[n]), n in own, n not in one.open) for n in sorted({*own, *one.open})
        ]
    each.figures.supply_ends(list(seen.values()), members)
    return {number: one.later for number, one in seen.items()}


def _as_they_may_become(
    each: _Compiled, widened: Mapping[int, Readings], run: RoundRun
) -> tuple[list[Candidate], list[Candidate]]:
    """The candidates of a round, and the others that could be some, with all that figures may still make of them.

    Marks as open those of whom it is not sure whether they are candidates.
    """
    candidates: list[Candidate] = []
    others: list[Candidate] = []
    in_it = () if run.picked is None else run.picked.fates
    for number, now in run.candidates.items():
        surely, possibly, candidate = _candidate(each, number, widened[number])
        adrift = candidate.adrift if candidate.within == now.within else candidate.parts
        candidate = evolve(candidate, falls=candidate.key != now.key, within=now.within, adrift=adrift)
        run.stray(candidate)
        if number in in_it:
            candidates.append(candidate)
        elif possibly:
            others.append(candidate)
        if surely != possibly:
            run.open.add(number)
    return candidates, others


def _pool(one: parts.Round, before: Sequence[RoundRun], fish: int) -> list[int]:
    runs = {run.round.name: run for run in before}
    match one.pool:
        case "all":
            return list(range(fish))
        case "kept":
            return runs[one.pool_of].kept
        case _:
            out = {Fate.LEFT, Fate.OVER, Fate.QUOTA}
            return [number for number, fate in runs[one.pool_of].fates.items() if fate in out]


def number_of(amount: parts.Amount, settings: Mapping[str, Setting]) -> int:
    """A number of fish, of a setting with the value of this run."""
    return amount if isinstance(amount, int) else int(settings[amount].value)


def places_of(one: parts.Round, settings: Mapping[str, Setting], looked_at: int) -> int | None:
    """How many a round may pick of so many that it looks at, None for all; a share of them is rounded up."""
    match one.amount:
        case None:
            return None
        case parts.Share(of=of):
            percent = settings[of].value if isinstance(of, str) else of
            return -(-looked_at * millionths(percent) // millionths(Decimal(100)))
        case amount:
            return number_of(amount, settings)


def _candidate(each: _Compiled, number: int, readings: Readings) -> tuple[bool, bool, Candidate]:
    """Whether a fish surely and possibly is a candidate of a round, and what the pick knows of it."""
    one, values = each.round, iter(each.values.run(readings))
    sure, perhaps = (True, True) if one.keep is None else next(values)
    ends = [key_ends(key, next(values)) for key in one.keys]
    groups: list[Hashable] = []
    loose: list[bool] = []
    for quota in one.quotas:
        if quota.condition is not None:
            surely, possibly = next(values)
            groups.append(True if possibly else None)
            loose.append(surely != possibly)
        else:
            group = tuple(one_value(node.type, next(values)) for node in quota.same)
            groups.append(group)
            loose.append(None in group)
    within = tuple(one_value(node.type, next(values)) for node in one.each)
    key, best = tuple(low for low, _ in ends), tuple(high for _, high in ends)
    adrift = within if None in within else None
    return sure, perhaps, Candidate(number, key, best, tuple(groups), tuple(loose), sure, within=within, adrift=adrift)


def key_ends(key: parts.Key, value: Any) -> tuple[int, int]:
    """Where a fish surely stands by a key, and where at best: smaller comes first."""
    low, high = value_ends(key.by.type, value)
    return (-low, -high) if key.highest else (high, low)
