"""The course of a selection in words: why each fish left a round, who stood above it, and by how much."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import partial
from typing import Any

from attrs import field

from koirules.engines.scalar.evaluator import Trace
from koirules.engines.scalar.walking import worked_out
from koirules.explain.plain_words import PlainWords
from koirules.explain.shortfall import shortfalls
from koirules.languages import Tongue, to_say
from koirules.results.course import Fate, RoundCourse, Step, Tied
from koirules.results.decisions import Decision
from koirules.results.record import Record
from koirules.rounds.picking import Picked, Tie
from koirules.rounds.rounds_of_rows import RoundRun, number_of
from koirules.standard.parts import Rules, Setting
from koirules.standard.reading_nodes import trait_of
from koirules.standard.rounds import Key, Round, Share
from koirules.standard.saying import fill, names_in
from koirules.standard.tree import Node
from koirules.standard.types import Numeric, Steps
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest

_MOST_NAMED = 5

ByHand = Mapping[str, Mapping[int, Decision]]
"""By round and place of a fish, the decisions that keep it."""


def key_words(key: Key) -> str:
    """How a key of a pick is told, with `{value}` for its expression."""
    if not isinstance(key.by.type, Numeric | Steps):
        return to_say("those with {value}")
    return to_say("highest {value}") if key.highest else to_say("lowest {value}")


def _places(tongue: Tongue, number: int) -> str:
    return tongue.plural("{number} place", "{number} places", number)


def _mates(tie: Tie, number: int) -> list[int]:
    """Some of the fish that one is tied with: of thousands nobody reads them all."""
    return [mate for mate in tie.fish[: _MOST_NAMED + 1] if mate != number][:_MOST_NAMED]


@frozen
class CourseTeller:
    """Tells what rounds did to a batch. traces: with the grade that a person decided, where one did; at: those of each look."""

    rules: Rules
    settings: Mapping[str, Setting]
    plain: PlainWords
    records: Sequence[Record]
    traces: Sequence[Trace]
    day: datetime.date | None
    at: Mapping[int, Sequence[Trace]] = field(factory=dict)

    def courses(self, runs: Sequence[RoundRun], by_hand: ByHand) -> Iterator[tuple[Step, ...]]:
        """For each fish what became of it in each round that looked at it."""
        steps: list[list[Step]] = [[] for _ in self.records]
        for run in runs:
            picked = run.picked or Picked()
            ties = {number: tie for tie in picked.ties for number in tie.fish}
            ties |= {number: one.tie for one in picked.settled for number in one.tie.fish}
            decided = by_hand.get(run.round.name, {})
            for number in run.fish:
                steps[number].append(self._step(run, number, ties.get(number), decided.get(number)))
        return (tuple(each) for each in steps)

    def rounds(self, runs: Sequence[RoundRun], by_hand: ByHand) -> Iterator[RoundCourse]:
        """What each round did."""
        for run in runs:
            one = run.round
            ties = [Tied(self._named(tie.fish), tie.places) for tie in (run.picked.ties if run.picked else ())]
            tied = {number for number, fate in run.fates.items() if fate is Fate.TIED}
            kept = run.kept
            left = [number for number in run.fish if number not in tied and run.fates[number] is not Fate.KEPT]
            yield RoundCourse(
                one.name,
                self.plain.of(one.title),
                self.asks(one, run.places),
                self._named(run.fish),
                self._named(kept),
                self._named(left),
                tuple(ties),
                run.places,
                self._named(sorted(run.open)),
                tuple(each for n, each in by_hand.get(one.name, {}).items() if n in run.rescued or n in run.chosen),
                one.send,
                None if one.again is None or self.day is None else self._again(one, self.day),
            )

    def asks(self, one: Round, places: int | None) -> str:
        """What a round asks: `those with grade at least hold; the best 12 by score, then body`."""
        told = []
        tongue = self.plain.tongue
        if one.keep is not None:
            those = to_say("those possibly with {condition}") if one.possibly else to_say("those with {condition}")
            told.append(tongue(those, condition=self.plain.told(one.keep.place)))
        if one.ordered:
            keys = tongue.joined((self._key(key) for key in one.keys), ", then ")
            told.append(tongue("{which} by {keys}", which=self._how_many(one, places), keys=keys))
            told.extend(self.plain.told(quota.place) for quota in one.quotas)
        return tongue.joined(told, "; ") or tongue("all")

    def _how_many(self, one: Round, places: int | None) -> str:
        tongue = self.plain.tongue
        if one.amount is None:
            how_many = tongue("all in order")
        elif isinstance(one.amount, Share) and one.each:
            how_many = tongue("the first {number}", number=self._share(one.amount))
        elif isinstance(one.amount, Share):
            first = tongue("the first {number}", number=places)
            how_many = tongue("{which} ({share})", which=first, share=self._share(one.amount))
        else:
            how_many = tongue("the first {number}", number=number_of(one.amount, self.settings))
        if not one.each:
            return how_many
        group = tongue.listed([self.plain.told(node.place) for node in one.each])
        return tongue("{which} for each {group}", which=how_many, group=group)

    def _share(self, share: Share) -> str:
        percent = self.settings[share.of].value if isinstance(share.of, str) else share.of
        tongue = self.plain.tongue
        return tongue("{share} of those looked at, rounded up", share=tongue.quantity(f"{shortest(percent)} %"))

    def _key(self, key: Key) -> str:
        return self.plain.tongue(key_words(key), value=self.plain.told(key.by.place))

    def _named(self, numbers: Sequence[int]) -> tuple[str, ...]:
        return tuple(self.records[number].fish for number in numbers)

    def _again(self, one: Round, day: datetime.date) -> datetime.date:
        try:
            return day + datetime.timedelta(days=int(one.again or 0))
        except OverflowError:
            return datetime.date.max

    def _step(self, run: RoundRun, number: int, tie: Tie | None, decision: Decision | None) -> Step:
        one, fate, picked = run.round, run.fates[number], run.picked
        kept = fate is Fate.KEPT
        above: tuple[str, ...] = ()
        if tie is not None and fate is Fate.TIED:
            above = self._named(_mates(tie, number))
        elif not kept and picked is not None and number in picked.above:
            above = self._named([picked.above[number]])
        day = self.records[number].date or self.day
        return Step(
            one.name,
            self.plain.of(one.title),
            fate,
            picked.places.get(number) if picked and number not in run.rescued else None,
            above,
            number in run.open,
            decision,
            one.send if kept else "",
            self._again(one, day) if kept and one.again is not None and day is not None else None,
            self._why(run, number, tie, decision),
        )

    def _why(self, run: RoundRun, number: int, tie: Tie | None, decision: Decision | None) -> Callable[[], str]:
        if decision is not None:
            return partial(self._decided, run, number, tie, decision)
        if tie is not None and run.fates[number] is Fate.OVER:
            return partial(self._settled, run, number, tie)
        match run.fates[number]:
            case Fate.KEPT:
                return partial(self._kept, run, number)
            case Fate.LEFT:
                return partial(self._left, run, number)
            case Fate.OVER:
                return partial(self._over, run, number)
            case Fate.QUOTA:
                return partial(self._quota, run, number)
            case Fate.TIED:
                return partial(self._tied, run, tie, number)

    def _decided(self, run: RoundRun, number: int, tie: Tie | None, decision: Decision) -> str:
        tongue = self.plain.tongue
        said = tongue("kept by {judge}: {reason}", judge=decision.by, reason=decision.reason)
        if number in run.rescued:
            return said
        if tie is not None:
            mates, places = self._listed(tie, number), _places(tongue, tie.places)
            return tongue("{said} (tied with {fish} for {places})", said=said, fish=mates, places=places)
        return tongue("{kept}; the rules keep it too, so that no decision was needed", kept=self._kept(run, number))

    def _settled(self, run: RoundRun, number: int, tie: Tie) -> str:
        tongue = self.plain.tongue
        chosen = tongue.listed([self._called(self.records[n].fish) for n in tie.fish if n in run.chosen])
        places = _places(tongue, tie.places)
        return self._said(run, number) + tongue("tied for {places}; a person chose {fish}", places=places, fish=chosen)

    def _kept(self, run: RoundRun, number: int) -> str:
        place, tongue = run.picked.places.get(number) if run.picked else None, self.plain.tongue
        if place is None:
            return tongue("kept")
        if not run.round.each or run.picked is None:
            return tongue("stands {place}", place=tongue.ordinal(place))
        within = run.candidates[number].within
        many = sum(run.candidates[other].within == within for other in run.picked.places)
        group = self._group(run, number)
        return tongue(
            "stands {place} of {number} in {group}", place=tongue.ordinal(place), number=tongue.whole(many), group=group
        )

    def _group(self, run: RoundRun, number: int) -> str:
        """The group that a fish is picked in: its values, one after the other."""
        value_of, tongue = self._value_of(run, number), self.plain.tongue
        told: list[str] = []
        for node, one in zip(run.round.each, run.candidates[number].parts, strict=True):
            blank = one is None
            name = self.plain.told(node.place)
            told.append(
                tongue("{trait} not recorded", trait=name) if blank else self.plain.both_ends(node, value_of(node))
            )
        return " ".join(told)

    def _places_in(self, run: RoundRun, number: int, places: int) -> str:
        """So many places, and in which group where a round picks in groups."""
        tongue = self.plain.tongue
        told = _places(tongue, places)
        return tongue("{places} in {group}", places=told, group=self._group(run, number)) if run.round.each else told

    def _value_of(self, run: RoundRun, number: int) -> Callable[[Node], Any]:
        """What a node comes to for a fish, as the round saw it."""
        traces = self.traces if run.round.look is None else self.at.get(run.round.look, self.traces)
        record, trace = run.readings[number], traces[number]
        return partial(worked_out, rules=self.rules, settings=self.settings, record=record, trace=trace)

    def _said(self, run: RoundRun, number: int) -> str:
        """The words that the round has for those that leave, filled in; "" where it has none."""
        if run.round.say is None:
            return ""
        text = self.plain.of(run.round.say)
        values: dict[str, str] = {}
        for name in names_in(text):
            if name in self.rules.traits:
                values[name] = self.plain.recorded(self.rules.traits[name], run.readings[number])
            elif name in self.settings:
                values[name] = self.plain.setting(self.settings[name])
            elif name in self.rules.terms:
                node = self.rules.terms[name].node
                values[name] = self.plain.both_ends(node, self._value_of(run, number)(node))
        return fill(text, values) + self.plain.tongue.of(": ")

    def _left(self, run: RoundRun, number: int) -> str:
        keep = run.round.keep
        if keep is None:
            raise AssertionError("a fish that left a round which asks nothing")
        missing = [one.told for one in shortfalls(keep, self.plain, self._value_of(run, number))]
        return f"{self._said(run, number)}{self.plain.tongue.joined(missing, '; ')}"

    def _over(self, run: RoundRun, number: int) -> str:
        said, tongue = self._said(run, number), self.plain.tongue
        above, room = run.picked.above.get(number) if run.picked else None, run.room_of(number)
        if above is not None:
            return f"{said}{self._places_in(run, number, room)}{self._stood(run, above, number)}"
        if not room:
            return said + tongue("no places")
        places = self._places_in(run, number, room)
        return said + tongue("{places}, all of them held for those that are tied above it", places=places)

    def _stood(self, run: RoundRun, above: int, number: int) -> str:
        """Who stood above a fish, and by how much, as the end of a sentence."""
        return self.plain.tongue(
            "; {fish} stood above it{by}", fish=self._called(self.records[above].fish), by=self._by(run, above, number)
        )

    def _called(self, fish: str) -> str:
        """A fish by its name; by its noun too where the name is a number, which would read as a count."""
        tongue = self.plain.tongue
        return tongue("{noun} {name}", noun=tongue.of(self.rules.subject.one), name=fish) if fish.isdigit() else fish

    def _quota(self, run: RoundRun, number: int) -> str:
        if run.picked is None:
            raise AssertionError("a quota without a pick")
        words = self._said(run, number) + self.plain.told(run.round.quotas[run.picked.quota[number]].place)
        above = run.picked.above.get(number)
        return words if above is None else words + self._stood(run, above, number)

    def _tied(self, run: RoundRun, tie: Tie | None, number: int) -> str:
        if tie is None:
            raise AssertionError("a fish that is tied with none")
        listed, tongue = self._listed(tie, number), self.plain.tongue
        places = self._places_in(run, number, tie.places)
        if not listed:
            return tongue("for {places}; a person decides", places=places)
        return tongue("tied with {fish} for {places}; a person decides", fish=listed, places=places)

    def _listed(self, tie: Tie, number: int) -> str:
        """The fish that one is tied with, the first of them by name."""
        named = [self._called(fish) for fish in self._named(_mates(tie, number))]
        more = len(tie.fish) - 1 - len(named)
        tongue = self.plain.tongue
        listed = tongue.joined(named)
        return tongue("{fish} and {number} more", fish=listed, number=tongue.whole(more)) if more else listed

    def _by(self, run: RoundRun, above: int, number: int) -> str:
        """By how much one fish stands above another: by the first key in which they differ."""
        one, other = run.candidates[above].key, run.candidates[number].key
        tongue = self.plain.tongue
        for key, mine, theirs in zip(run.round.keys, other, one, strict=True):
            if mine == theirs:
                continue
            words, kind, trait = self.plain.told(key.by.place), key.by.type, trait_of(key.by)
            blank = [
                trait is not None and trait.name not in run.readings[fish] and self.plain.tongue("not recorded")
                for fish in (number, above)
            ]
            match kind:
                case Numeric():
                    sign = -1 if key.highest else 1
                    has, had = (self.plain.value(key.by, sign * n / 1e6, sign * n / 1e6) for n in (mine, theirs))
                case Steps(steps):
                    name = "" if trait is None else trait.name
                    has, had = (self.plain.word(steps[abs(n)], name) for n in (mine, theirs))
                case _:
                    return tongue(" by {key}", key=words)
            return tongue(" by {key}: {theirs} against {own}", key=words, theirs=blank[1] or had, own=blank[0] or has)
        return tongue(", recorded before it")
