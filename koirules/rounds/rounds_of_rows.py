"""The rounds of a selection, worked out record by record."""

from __future__ import annotations

from collections.abc import Collection, Hashable, Iterator, Mapping, Sequence
from typing import Any

from attrs import define, field, frozen

from koirules.results.course import Fate
from koirules.rounds.evaluation_levels import asked_by
from koirules.rounds.figures_of_rows import FiguresOfRows, Readings
from koirules.rounds.node_values import NodeValues, compile_nodes, millionths_of, one_value
from koirules.rounds.open_picks import open_picks
from koirules.rounds.picking import Candidate, Key, Picked, pick
from koirules.standard import rounds as parts
from koirules.standard.parts import Rules, Setting
from koirules.standard.types import Numeric, Steps, Type


@define
class RoundRun:
    """What a round did. All fish by their place in the batch.

    fish: those that it looked at. fates: of each. readings: of each, with the figures that the round saw.
    candidates: what the pick knows of each. picked: what came
    of its pick, None without one. places: how many the pick could take. open: those in whose fate a recording could still
    change. rescued: those that a person kept and the rules would not have.
    """

    round: parts.Round
    fish: list[int]
    readings: dict[int, Readings]
    places: int | None
    fates: dict[int, Fate] = field(factory=dict)
    picked: Picked | None = None
    candidates: dict[int, Candidate] = field(factory=dict)
    open: set[int] = field(factory=set)
    rescued: set[int] = field(factory=set)

    @property
    def kept(self) -> list[int]:
        """Those that it kept, in the order of its pick; those that were rescued last."""
        rescued = [number for number in self.fates if number in self.rescued]
        order = self.fates if self.picked is None else self.picked.fates
        return [n for n in order if self.fates[n] is Fate.KEPT and n not in self.rescued] + rescued

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
        self, fish: Sequence[Readings], by_hand: Mapping[str, Collection[int]], *, alone: bool = False
    ) -> list[RoundRun]:
        """Run every round over a batch. fish: readings with outcomes. by_hand: by round those that a person keeps.

        alone: a fish graded by itself, for which no figure of a batch is recorded.
        """
        runs: list[RoundRun] = []
        tied: set[int] = set()
        for each in self.rounds:
            run = self._run(each, fish, runs, tied, by_hand.get(each.round.name, ()), alone=alone)
            tied.update(number for number, fate in run.fates.items() if fate is Fate.TIED)
            tied -= run.rescued
            runs.append(run)
        return runs

    def _run(
        self,
        each: _Compiled,
        fish: Sequence[Readings],
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
        if not alone:
            wanted = each.figures.kept_by
            kept = {run.round.name: [dict(fish[n]) for n in run.kept] for run in before if run.round.name in wanted}
            each.figures.supply([readings[number] for number in pool], kept)
        amount = None if one.amount is None else number_of(one.amount, self.settings)
        quotas = [number_of(quota.amount, self.settings) for quota in one.quotas]
        run = RoundRun(one, pool, readings, amount)
        candidates: list[Candidate] = []
        others: list[Candidate] = []
        for number in pool:
            if number not in by_rules:
                run.fates[number] = Fate.LEFT
                continue
            values = iter(each.values.run(readings[number]))
            surely, possibly = (True, True) if one.keep is None else next(values)
            candidate = run.candidates[number] = _candidate(one, number, values, sure=surely)
            if surely or (possibly and one.possibly):
                candidates.append(candidate)
                run.fates[number] = Fate.KEPT
            else:
                run.fates[number] = Fate.LEFT
                if possibly:
                    others.append(candidate)
            if surely != possibly:
                run.open.add(number)
        if one.ordered:
            run.picked = pick(candidates, amount, quotas, one.ties, by_hand)
            run.fates.update(run.picked.fates)
            run.open |= open_picks(run.picked, candidates, others, amount, quotas, one.ties)
        run.rescued = {number for number in by_hand if run.fates[number] is not Fate.KEPT}
        run.fates.update(dict.fromkeys(sorted(run.rescued), Fate.KEPT))
        run.open -= {*run.rescued, *run.chosen}
        return run


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


def _candidate(one: parts.Round, number: int, values: Iterator[Any], *, sure: bool) -> Candidate:
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
    key, best = tuple(low for low, _ in ends), tuple(high for _, high in ends)
    return Candidate(number, key, best, tuple(groups), tuple(loose), sure)


def key_ends(key: parts.Key, value: Any) -> tuple[int, int]:
    """Where a fish surely stands by a key, and where at best: smaller comes first."""
    low, high = _ends(key.by.type, value)
    return (-low, -high) if key.highest else (high, low)


def _ends(kind: Type, value: Any) -> Key:
    match kind:
        case Numeric():
            low, high = value
            return millionths_of(low), millionths_of(high)
        case Steps():
            return (value & -value).bit_length(), value.bit_length()
        case _:
            surely, possibly = value
            return int(surely), int(possibly)
