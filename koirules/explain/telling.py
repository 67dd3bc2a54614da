"""What was read and what came of it, in words."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from functools import partial
from typing import Any

from attrs import evolve

from koirules.engines.scalar.evaluator import Trace
from koirules.engines.scalar.walking import worked_out
from koirules.explain.any_number import can_be_any, causes
from koirules.explain.plain_words import PlainWords
from koirules.explain.shortfall import fails_on_score, shortfalls
from koirules.languages import ENGLISH, to_say
from koirules.results.parts_read import points_in, supplied_in, supplied_looked_at, traits_in
from koirules.results.reason import State
from koirules.standard.growth_settings import length_grown_to
from koirules.standard.parts import Extra, Grade, Limit, Part, Points, Rules, Setting, part_key
from koirules.standard.reading_nodes import recordable_of, trait_of
from koirules.standard.saying import fill, names_in
from koirules.standard.tree import Figure, Grown, Node, Supplied, TermRead
from koirules.standard.types import Numeric
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.readings import Reading, is_sure, show_reading
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Dimension


@frozen
class Teller:
    """Tells the parts of a standard, in one language where its labels carry it."""

    rules: Rules
    settings: Mapping[str, Setting]
    said_terms: tuple[str, ...]
    plain: PlainWords
    _parts: Mapping[str, Part]
    _traits: Mapping[str, tuple[Trait, ...]]
    _points: Mapping[str, tuple[str, ...]]
    _supplied: Mapping[str, tuple[Supplied, ...]]
    _can_be_any: frozenset[str]

    @classmethod
    def of(
        cls,
        rules: Rules,
        settings: Mapping[str, Setting],
        said_terms: tuple[str, ...],
        language: str | None,
        exact: bool = False,
    ) -> Teller:
        """The teller of a standard. exact: whether numbers keep all of their digits."""
        parts = rules.parts
        return cls(
            rules,
            settings,
            said_terms,
            PlainWords(rules, settings, language, exact),
            {part_key(part): part for part in parts},
            {part_key(part): traits_in(part) for part in parts},
            {part_key(part): points_in(part) for part in parts},
            {part_key(part): supplied_in(part) for part in parts},
            frozenset(part_key(part) for part in parts if can_be_any(part.roots)),
        )

    def title(self, part: Part) -> str:
        """The label of a part."""
        return self.plain.of(part.title)

    def traits_of(self, key: str) -> tuple[Trait, ...]:
        """The traits that a part reads, in the order they stand."""
        return self._traits[key]

    def read(self, key: str, record: Mapping[str, Reading], trace: Trace) -> str:
        """The score, sections and traits that a part reads, with what each was, by their names in the rule file."""
        told = [self._points_read(name, trace) for name in self._points[key]]
        for trait in self._traits[key]:
            reading = record.get(trait.name)
            told.append(
                f"{trait.name} {'not recorded' if reading is None else show_reading(trait.kind, reading, exact=True)}"
            )
        for one in self._supplied[key]:
            words = one.key if isinstance(one.source, Grown) else self.rules.words_at(one.place)
            told.append(f"{words} {self._beside(one, record, evolve(self.plain, exact=True, language=None))}")
        return ", ".join(told)

    def seen(self, key: str, record: Mapping[str, Reading], trace: Trace) -> str:
        """The same as a person reads it: titles for names, numbers rounded."""
        told = [self._points_read(name, trace, titled=True) for name in self._points[key]]
        told += [
            self.say("{title} {value}", title=self.plain.trait(trait), value=self.plain.recorded(trait, record))
            for trait in self._traits[key]
        ]
        for one in self._supplied[key]:
            value = self._beside(one, record, self.plain)
            told.append(self.say("{title} {value}", title=self.plain.told(one.place), value=value))
        return self.plain.tongue.joined(told)

    def say(self, text: str, /, **values: object) -> str:
        """A text of the tool in the language of the teller, with what stands in its braces filled in."""
        return self.plain.tongue(text, **values)

    def ahead_of(self, key: str, record: Mapping[str, Reading], trace: Trace) -> str:
        """How long the fish will be that a part looked at, in words: `grown to 65 cm`; "" where it looked at it as it is."""
        if not any(isinstance(one.source, Grown) for one in self._supplied[key]):
            return ""
        value_of = partial(worked_out, rules=self.rules, settings=self.settings, record=record, trace=trace)
        sources = [one.source for one in supplied_looked_at(self._parts[key], value_of)]
        lengths = {length_grown_to(source, self.settings) for source in sources if isinstance(source, Grown)}
        words = [self.plain.number(length, Numeric(Dimension.LENGTH)) for length in sorted(lengths)]
        return self.say("grown to {length}", length=self.plain.tongue.listed(words)) if words else ""

    def counted_in(self, key: str, over: Mapping[str, tuple[int, int, int]]) -> str:
        """Over how many fish of how many the figures of the batch are that a part reads, and of how many it was assumed."""
        told = []
        for one in self._supplied[key]:
            if one.key in over and isinstance(one.source, Figure):
                counted, every, assumed = over[one.key]
                over_all, over_some = (
                    to_say("batch {figure} over all {every}"),
                    to_say("batch {figure} over {number} of {every}"),
                )
                tongue, subject = self.plain.tongue, self.rules.subject
                fish = tongue.counted(subject.one, subject.many, every)
                figure = tongue.of(str(one.source.kind), "figure of a batch")
                which = over_all if counted == every else over_some
                found = self.say(which, figure=figure, number=tongue.whole(counted), every=fish)
                if assumed:
                    found = self.say("{figure}, {number} of them assumed", figure=found, number=tongue.whole(assumed))
                told.append(found)
        return self.plain.tongue.joined(dict.fromkeys(told))

    def criterion(self, part: Points | Extra, place: int, trace: Trace, record: Mapping[str, Reading]) -> str:
        """What a criterion read and gave: `tail stem: fair, 6 of 10`, `red lips: +2`."""
        tongue = self.plain.tongue
        if isinstance(part, Points):
            first, second, low, high = trace.points[place]
            top = tongue.figure(shortest(Decimal(part.shape.most).scaleb(-3)))
            ends = [tongue.figure(_points(end)) for end in (low, high)]
            given = ends[0] if low == high else tongue.stretch(*ends)
            value = self._value(part, first, second, record)
            because = self._any_number(part, record, trace) if low < high else ""
            label, of = self._label(part, record, trace), self.say("{points} of {most}", points=given, most=top)
            return self._about(label, tongue.joined(filter(None, (value, of)))) + because
        surely, possibly = trace.extras[place]
        amount = tongue.figure(f"{'+' if part.sign > 0 else '-'}{shortest(Decimal(part.amount).scaleb(-2))}")
        if surely:
            return self._about(self._label(part, record, trace), amount)
        if possibly:
            perhaps = self.say("perhaps {value}", value=amount)
            return self._about(self.title(part), perhaps) + self._any_number(part, record, trace)
        missing = [self.plain.trait(trait) for trait in self._traits[part_key(part)] if trait.name not in record]
        if not missing:
            return self._about(self.title(part), self.say("no"))
        return self._about(self.title(part), self.say("no ({traits} not recorded)", traits=tongue.joined(missing)))

    def _about(self, title: str, words: str) -> str:
        """What is said of something: `spine: straight`."""
        return self.say("{title}: {words}", title=title, words=words)

    def limit(self, part: Limit, state: State, grade: Grade, trace: Trace, record: Mapping[str, Reading]) -> str:
        """What a fault or a lift did: `bent spine: no better than cull`."""
        bounds = to_say("no better than {grade}"), to_say("no worse than {grade}")
        bound = self.say(bounds[0 if part.head == "fault" else 1], grade=self.plain.of(grade.title))
        bound = self.plain.lowering(part.lowers) if part.lowers else bound
        match state:
            case State.YES:
                return self._about(self._label(part, record, trace), bound)
            case State.OPEN:
                because = self._any_number(part, record, trace)
                still = self._open(part, record, trace)
                return (
                    self._about(self.title(part), self.say("perhaps {bound}; {open}", bound=bound, open=still))
                    + because
                )
            case State.HELD_BACK:
                if part.exception is None:
                    return self._about(self.title(part), self.say("held back"))
                why = self._exception(part.exception)
                return self._about(self.title(part), self.say("held back, since {reason}", reason=why))
            case State.NO:
                return self._about(self.title(part), self.say("no"))

    def grade(self, place: int, state: State, trace: Trace, record: Mapping[str, Reading]) -> str:
        """Whether the condition of a grade holds, and what is missing where it does not."""
        part = self.rules.grades[place]
        label = self.plain.of(part.title)
        if part.condition is None:
            return self._about(label, self.say("otherwise"))
        if state is State.YES:
            told = self.plain.told(part.condition.place) if part.say is None else self._label(part, record, trace)
            return self._about(label, self.say("yes, {reason}", reason=told))
        value_of = partial(worked_out, rules=self.rules, settings=self.settings, record=record, trace=trace)
        missing = shortfalls(part.condition, self.plain, value_of)
        if state is State.OPEN:
            needs = self.plain.tongue.joined((one.words for one in missing), "; ")
            return self._about(
                label, self.say("not settled, asks for {condition}", condition=needs)
            ) + self._any_number(part, record, trace)
        found = self.plain.tongue.joined((one.told for one in missing), "; ")
        return self._about(label, self.say("no, {reason}", reason=found))

    def _beside(self, one: Supplied, record: Mapping[str, Any], plain: PlainWords) -> str:
        """What stands beside a record under a key, in words."""
        value = record.get(one.key)
        if value is None:
            return self.say("not known") if isinstance(one.source, Grown) else self.say("not recorded")
        return plain.both_ends(one, value)

    def _any_number(self, part: Part, record: Mapping[str, Reading], trace: Trace) -> str:
        """Why a part is open although all was recorded: a number in it is any number at all."""
        if part_key(part) not in self._can_be_any:
            return ""
        value_of = partial(worked_out, rules=self.rules, settings=self.settings, record=record, trace=trace)
        found = causes(part.roots, value_of)
        words = self.plain.tongue.joined(map(self.plain.tongue.of, found))
        return self.say(" (any number: {causes})", causes=words) if found else ""

    def _points_read(self, name: str, trace: Trace, *, titled: bool = False) -> str:
        names = [section.name for section in self.rules.sections]
        low, high = trace.sections[names.index(name)] if name else trace.score
        tongue = self.plain.tongue if titled else ENGLISH
        shown = [tongue.figure(shortest(Decimal(end).scaleb(-2))) for end in (low, high)]
        points = shown[0] if low == high else tongue.stretch(*shown)
        if not titled:
            return f"section {name} {points}" if name else f"score {points}"
        label = self.plain.of(self.rules.sections[names.index(name)].title) if name else self.say("score")
        return self.say("{title} {value}", title=label, value=points)

    def _open(self, part: Limit, record: Mapping[str, Reading], trace: Trace) -> str:
        """What keeps a fault or lift open: what was not recorded, or not surely, and the points it reads."""
        key = part_key(part)
        told = [self._points_read(name, trace, titled=True) for name in self._points[key]]
        missing = [self.plain.trait(trait) for trait in self._traits[key] if trait.name not in record]
        for trait in self._traits[key]:
            if trait.name in record and not is_sure(trait.kind, record[trait.name]):
                told.append(self._about(self.plain.trait(trait), self.plain.recorded(trait, record)))
        if missing == [self.title(part)]:
            told.append(self.say("not recorded"))
        elif missing:
            told.append(self.say("not recorded: {traits}", traits=self.plain.tongue.joined(missing)))
        return self.plain.tongue.joined(told, "; ") or self.seen(key, record, trace)

    def _exception(self, node: Node) -> str:
        if isinstance(node, TermRead):
            return self.plain.of(self.rules.terms[node.name].title)
        return self.plain.told(node.place)

    def _label(self, part: Part, record: Mapping[str, Reading], trace: Trace) -> str:
        """The words of a part's `say`, filled in, or its label."""
        if part.say is None:
            return self.title(part)
        text = self.plain.of(part.say)
        return fill(text, {name: self._named(name, record, trace) for name in names_in(text)})

    def _value(self, part: Points, first: object, second: object, record: Mapping[str, Reading]) -> str:
        trait, read = trait_of(part.by), recordable_of(part.by)
        if isinstance(read, Supplied) and isinstance(read.source, Grown) and read.key not in record:
            return self.say("not known")
        return self.plain.value(part.by, first, second) if trait is None else self.plain.recorded(trait, record)

    def _named(self, name: str, record: Mapping[str, Reading], trace: Trace) -> str:
        trait = self.rules.traits.get(name)
        if trait is not None:
            return self.plain.recorded(trait, record)
        setting = self.settings.get(name)
        if setting is not None:
            return self.plain.setting(setting)
        first, second = trace.terms[self.said_terms.index(name)]
        return self.plain.value(self.rules.terms[name].node, first, second)


def fails_on_score_of(teller: Teller, grade: int, trace: Trace, record: Mapping[str, Reading]) -> bool:
    """Whether a grade is missed, or could be, because of the score."""
    condition = teller.rules.grades[grade].condition
    if condition is None:
        return False
    value_of = partial(worked_out, rules=teller.rules, settings=teller.settings, record=record, trace=trace)
    return fails_on_score(condition, value_of)


def _points(thousandths: int) -> str:
    return shortest(Decimal((thousandths + 5) // 10).scaleb(-2))
