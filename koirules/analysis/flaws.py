"""An ideal fish of a standard, and what becomes of it by one flaw alone.

In: a standard that grades. Out: the best fish that was found, and for a trait and a value the fish that differs in it.
A standard that takes a serious flaw for nothing shows it here at once. Serious flaws come from a CSV with the columns `trait`,
`value`, `stages`, `varieties` and `key` (the source of the flaw).
"""

from __future__ import annotations

import csv
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from itertools import pairwise
from pathlib import Path

from attrs import field

from koirules.candidates.ordinary import ordinary_fish, telling_values
from koirules.grading.sample_runs import run_samples
from koirules.grading.single import Grader
from koirules.results.mapping_record import RecordReader
from koirules.results.record import Record
from koirules.results.result import Result
from koirules.standard.cuts import Cuts, cuts_of
from koirules.standard.parts import Rules, Setting
from koirules.values import frozen
from koirules.vocabulary.kinds import Colours, Count, Label, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.readings import PlaceSet, Reading, Span, is_sure, show_reading
from koirules.vocabulary.traits import Better, Trait

_MOST_PASSES = 6
"""So many times every trait is improved in turn; a fish that gets no better before that is done earlier."""


@frozen
class Graded:
    """A fish and what it gets."""

    readings: Mapping[str, Reading]
    result: Result

    @property
    def grade(self) -> str:
        """The names of its grades, the best first."""
        return " or ".join(self.result.possible)

    @property
    def score(self) -> Decimal:
        """The least that it can score."""
        return self.result.score_low


@frozen
class Flaws:
    """A standard, its cuts by trait, and its ideal fish."""

    grader: Grader = field(repr=False)
    cuts: Mapping[str, Cuts] = field(repr=False)
    ideal: Graded

    @classmethod
    def of(cls, grader: Grader, settings: Mapping[str, Setting]) -> Flaws:
        """Look for the ideal fish: from the best of the samples, each trait in turn to the value that is best for the fish.

        Where a value makes no difference, the trait is as good as its vocabulary says it can be. What is found is no proof
        that no fish scores more.
        """
        rules = grader.rules
        read = grader.traits_read() - {name for name, trait in rules.traits.items() if _is_apart(trait)}
        cuts = {name: Cuts((), entangled=False) for name in rules.traits if name in read}
        cuts |= {name: cut for name, cut in cuts_of(rules, settings).items() if name in cuts}
        ordinary = ordinary_fish([rules], cuts)
        # What is neither better nor worse (a style, a buyer) stays unrecorded where it can: it may excuse a flaw.
        start = {name: value for name, value in ordinary.items() if rules.traits[name].better is not Better.NEITHER}
        runs = [run for run in run_samples(grader) if run.result.possible == (rules.grades[0].name,)]
        if runs:
            best = max(runs, key=lambda run: run.result.score_low)
            known = best.sample.record.items()
            start |= {name: reading for name, reading in known if is_sure(rules.traits[name].kind, reading)}
        found = _graded(grader, start)
        if len(found.result.possible) > 1:
            found = _graded(grader, {**ordinary, **start})
        for _ in range(_MOST_PASSES):
            before = found
            for name, cut in cuts.items():
                trait = rules.traits[name]
                if name not in found.readings:
                    continue
                tried = [_graded(grader, {**found.readings, name: value}) for value in telling_values(trait, cut)]
                found = max([found, *tried], key=lambda one: (_rank(grader, one), _goodness(trait, one.readings[name])))
            if found.readings == before.readings:
                break
        return cls(grader, cuts, found)

    def with_flaw(self, readings: Mapping[str, Reading]) -> Graded:
        """The ideal fish with other readings."""
        return _graded(self.grader, {**self.ideal.readings, **readings})

    def worst(self) -> Iterator[tuple[Trait, Reading, Graded]]:
        """For each trait that is read, the value that does the ideal fish most harm, where any does."""
        for name, cut in self.cuts.items():
            trait = self.grader.rules.traits[name]
            tried = [(value, self.with_flaw({name: value})) for value in telling_values(trait, cut)]
            value, fish = min(tried, key=lambda one: _rank(self.grader, one[1]), default=(None, self.ideal))
            if value is not None and _rank(self.grader, fish) < _rank(self.grader, self.ideal):
                yield trait, value, fish

    def walk(self, trait: Trait, fish: Mapping[str, Reading], steps: int = 100) -> Iterator[tuple[Graded, Graded]]:
        """Neighbouring pairs of a fish while one number goes from the lowest to the highest end of its range.

        Neighbours lie a `steps`-th of the range apart at most, and closer where a rule turns.
        """
        kind = trait.kind
        if not isinstance(kind, Number | Count):
            return
        low, high = _ends(kind)
        even = [low + (high - low) * step / steps for step in range(steps + 1)]
        if isinstance(kind, Count):
            even = [float(round(value)) for value in even]
        cut = self.cuts.get(trait.name, Cuts((), entangled=False))
        turning = [value.low for value in telling_values(trait, cut) if isinstance(value, Span)]
        values = sorted({value for value in (*even, *turning) if low <= value <= high})
        walked = [_graded(self.grader, {**fish, trait.name: Span(value, value)}) for value in values]
        yield from pairwise(walked)


def _ends(kind: Number | Count) -> tuple[float, float]:
    return (0.0, float(kind.high)) if isinstance(kind, Count) else (float(kind.held_low), float(kind.held_high))


def _is_apart(trait: Trait) -> bool:
    """Whether a trait is no quality of a fish that could be better or worse by itself."""
    return isinstance(trait.kind, Label | Patches | Colours)


def _graded(grader: Grader, readings: Mapping[str, Reading]) -> Graded:
    return Graded(readings, grader.grade(Record("", 0, readings)))


def _rank(grader: Grader, fish: Graded) -> tuple[int, int, Decimal, Decimal]:
    """What makes one fish better than another: its worst grade, then no fault, then its score."""
    names: Sequence[str] = [grade.name for grade in grader.rules.grades]
    worst = max(names.index(name) for name in fish.result.possible)
    return -worst, -len(fish.result.faults), fish.result.score_low, fish.result.score_high


def _goodness(trait: Trait, reading: Reading) -> float:
    """How good a value is by the vocabulary alone, where nothing else tells; 0 where that says nothing."""
    if trait.better not in {Better.MORE, Better.LESS}:
        return 0.0
    match trait.kind, reading:
        case (Number() | Count(), Span(low, _)):
            size = low
        case (Scale() | YesNo(), int(bits)):
            size = float(bits)
        case (Places(), PlaceSet(_, may)):
            size = float(may.bit_count())
        case _:
            return 0.0
    return size if trait.better is Better.MORE else -size


@frozen
class SeriousFlaw:
    """A value of a trait that is a serious flaw. key: its source. stages, varieties: where it is one; `all` of them."""

    trait: str
    value: str
    stages: frozenset[str]
    varieties: frozenset[str]
    key: str


def read_flaws(file: str | Path) -> tuple[SeriousFlaw, ...]:
    """The serious flaws of a CSV file, in its order.

    Raises:
        ValueError: the file is no CSV in UTF-8, or lacks a column.
    """
    columns = ("trait", "value", "stages", "varieties", "key")
    with Path(file).open(encoding="utf-8", newline="") as opened:
        try:
            reader = csv.DictReader(opened)
            missing = [name for name in columns if name not in (reader.fieldnames or ())]
            rows = [[row[name] or "" for name in columns] for row in reader] if not missing else []
        except csv.Error as error:
            raise ValueError(f"it is no CSV: {error}") from error
    if missing:
        raise ValueError(f"it has no column {', '.join(missing)}")
    return tuple(
        SeriousFlaw(trait, value, frozenset(stages.split()), frozenset(varieties.split()), key)
        for trait, value, stages, varieties, key in rows
    )


def flaws_for(rules: Rules, flaws: Sequence[SeriousFlaw]) -> tuple[SeriousFlaw, ...]:
    """Those that are serious for the stage of a standard and for its variety, or for a skin over it."""
    words = {word for name in rules.each_variety for word in name.replace("(", " ").replace(",", " ").split()} | {"all"}
    stages = {rules.stage, "all"}
    return tuple(
        flaw for flaw in flaws if flaw.stages & stages and flaw.varieties & words and flaw.trait in rules.traits
    )


def fish_with(flaws: Flaws, flaw: SeriousFlaw) -> tuple[Reading, Graded]:
    """What the flaw is as a reading, and the ideal fish with it. Raises ValueError where the trait cannot have the value."""
    reader = RecordReader.of(flaws.grader.rules.traits)
    made = reader.read({flaw.trait: flaw.value}, "")
    if not isinstance(made, Record):
        raise ValueError(str(made[0]))
    reading = made.readings[flaw.trait]
    return reading, flaws.with_flaw({flaw.trait: reading})


def flaw_table(flaws: Flaws, listed: Sequence[SeriousFlaw] | None = None) -> str:
    """The table, as Markdown: a row for each flaw, the grade and score of the ideal fish before and after it.

    listed: the flaws to show; None for the worst value of every trait that the standard reads.
    """
    lines = ["| trait | flaw | grade | score | source |", "| --- | --- | --- | --- | --- |"]
    ideal = flaws.ideal
    lines.append(f"| (an ideal {flaws.grader.rules.subject.one}) | none | {ideal.grade} | {ideal.score} | |")
    for title, value, fish, key in _rows(flaws, listed):
        lines.append(f"| {title} | {value} | {fish.grade} | {fish.score} | {key} |")
    if listed is None:
        lines = [line.rsplit("|", 2)[0] + "|" for line in lines]
    return "\n".join(lines) + "\n"


def _rows(flaws: Flaws, listed: Sequence[SeriousFlaw] | None) -> Iterator[tuple[str, str, Graded, str]]:
    traits = flaws.grader.rules.traits
    if listed is None:
        for trait, reading, fish in flaws.worst():
            yield trait.title, show_reading(trait.kind, reading), fish, ""
        return
    for flaw in listed:
        trait = traits[flaw.trait]
        reading, fish = fish_with(flaws, flaw)
        yield trait.title, show_reading(trait.kind, reading), fish, flaw.key
