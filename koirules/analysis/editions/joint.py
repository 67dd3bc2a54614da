"""One fish for two editions: the traits that a record of both can have, and what each edition reads of it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from attrs import evolve, frozen

from koirules.analysis.editions.common_kinds import joint_kind
from koirules.analysis.editions.unlike import Unlike, same_values, settings_of
from koirules.grading.ordinary import ordinary_fish
from koirules.grading.parts_read import asked_whether_recorded
from koirules.grading.same_values import SameValues
from koirules.grading.single import Grader
from koirules.standard.cuts import Cuts, cuts_of
from koirules.standard.parts import Rules
from koirules.standard.tree import Recorded, Supplied, walk
from koirules.vocabulary.kinds import Kind, words_of
from koirules.vocabulary.readings import PlaceSet, Reading, Span, anything
from koirules.vocabulary.traits import Trait

BY_NEW = ", by the new edition"
"""Behind the key of a value beside the record that the newer edition works out otherwise."""

Record = Mapping[str, Any]


@frozen
class Seen:
    """What both editions make of a fish.

    old, new: the possible grades as bits of `Joint.grades`. heights: what its way up or down can go by, in hundredths: the score,
    then the sections that are asked for by themselves. inner: what each edition makes of the parts that are not alike in both.
    hiding: whether the faults and lifts that are alike may bite.
    """

    old: int
    new: int
    heights: tuple[int, ...]
    inner: tuple[Any, Any]
    hiding: tuple[bool, ...]

    @property
    def differ(self) -> bool:
        """Whether the editions grade it differently."""
        return self.old != self.new

    @property
    def differ_inside(self) -> bool:
        """Whether they differ in something that may show in the grade."""
        return bool(self.inner[0] != self.inner[1])


@frozen(eq=False)
class Joint:
    """Two editions, ready to grade one fish.

    grades: the names of the grades of both, best first. traits: those that a fish of both has, with what both can read of
    them. cuts: where either turns. ordinary: the ordinary fish of both. optional: the traits that may be left out.
    old_words, new_words: for traits whose words differ, the place of each word in the edition, by trait. beside: the values
    beside the record, by their key in a fish. apart: the traits that no one record can have for both.
    """

    old: Grader
    new: Grader
    grades: tuple[str, ...]
    traits: Mapping[str, Trait]
    cuts: Mapping[str, Cuts]
    ordinary: Record
    optional: frozenset[str]
    old_words: Mapping[str, tuple[int, ...]]
    new_words: Mapping[str, tuple[int, ...]]
    beside: Mapping[str, Supplied]
    same: SameValues
    apart: tuple[str, ...]
    unlike: Unlike
    _old_bits: tuple[int, ...]
    _new_bits: tuple[int, ...]

    @classmethod
    def of(cls, old: Grader, new: Grader) -> Joint:
        """Two editions together; the older one in the names of the newer one."""
        cuts = _cuts(old, new)
        traits, apart = _traits(old.rules, new.rules, cuts)
        words = [
            {
                name: _places_in(trait.kind, rules.traits[name].kind)
                for name, trait in traits.items()
                if name in differing
            }
            for rules in (old.rules, new.rules)
            for differing in [_differing(old.rules, new.rules, traits)]
        ]
        grades = tuple(dict.fromkeys([*new.grades, *old.grades]))
        same = same_values(old, new)
        return cls(
            old,
            new,
            grades,
            traits,
            cuts,
            _ordinary(old.rules, new.rules, traits, cuts, words),
            asked_whether_recorded(old.rules) | asked_whether_recorded(new.rules),
            words[0],
            words[1],
            _beside(old, new, same),
            same,
            apart,
            Unlike.of(old, new, same),
            *(tuple(1 << grades.index(name) for name in one.grades) for one in (old, new)),
        )

    def seen(self, record: Record) -> Seen:
        """What both editions make of a fish."""
        old, new = self.old.trace(self.old_record(record)), self.new.trace(self.new_record(record))
        return Seen(
            _bits(old.possible, self._old_bits),
            _bits(new.possible, self._new_bits),
            self.unlike.heights(new),
            (self.unlike.inner(old, 0), self.unlike.inner(new, 1)),
            self.unlike.hiding(new),
        )

    def named(self, bits: int) -> tuple[str, ...]:
        """The names of grades."""
        return tuple(name for i, name in enumerate(self.grades) if bits >> i & 1)

    def old_record(self, record: Record) -> Record:
        """A fish as the older edition reads it."""
        return _converted(record, self.old_words)

    def new_record(self, record: Record) -> Record:
        """A fish as the newer edition reads it."""
        made = _converted(record, self.new_words)
        if not any(key.endswith(BY_NEW) for key in self.beside):
            return made
        beside = {key.removesuffix(BY_NEW): made[key] for key in made if key.endswith(BY_NEW)}
        twice = {key.removesuffix(BY_NEW) for key in self.beside if key.endswith(BY_NEW)}
        return {key: value for key, value in made.items() if key not in twice} | beside


def _bits(possible: int, places: Sequence[int]) -> int:
    return sum(place for i, place in enumerate(places) if possible >> i & 1)


def _converted(record: Record, words: Mapping[str, tuple[int, ...]]) -> Record:
    if not words:
        return record
    made = dict(record)
    for name, places in words.items():
        if name in made:
            made[name] = _moved(made[name], places)
    return made


def _moved(reading: Reading, places: Sequence[int]) -> Reading:
    match reading:
        case PlaceSet(sure, possible):
            return PlaceSet(_bits(sure, [1 << i for i in places]), _bits(possible, [1 << i for i in places]))
        case int(bits):
            return _bits(bits, [1 << i for i in places])
        case _:
            return reading


def _cuts(old: Grader, new: Grader) -> dict[str, Cuts]:
    """Where either edition turns, of every trait that either reads."""
    each = [cuts_of(one.rules, settings_of(one)) for one in (old, new)]
    found: dict[str, Cuts] = {}
    for name in dict.fromkeys([*each[0], *each[1]]):
        cuts = [one[name] for one in each if name in one]
        found[name] = Cuts(
            tuple(sorted({at for cut in cuts for at in cut.at})),
            any(cut.entangled for cut in cuts),
            tuple(sorted({text for cut in cuts for text in cut.texts})),
        )
    return found


def _traits(old: Rules, new: Rules, names: Mapping[str, Cuts]) -> tuple[dict[str, Trait], tuple[str, ...]]:
    traits: dict[str, Trait] = {}
    apart: list[str] = []
    for name in names:
        one, other = old.traits.get(name), new.traits.get(name)
        trait = other if one is None else one
        if trait is None:
            raise AssertionError("a trait that is read and not known")
        if one is not None and other is not None and one.kind != other.kind:
            kind = joint_kind(one.kind, other.kind)
            if kind is None:
                apart.append(name)
            else:
                trait = evolve(trait, kind=kind)
        traits[name] = trait
    return traits, tuple(apart)


def _differing(old: Rules, new: Rules, traits: Mapping[str, Trait]) -> set[str]:
    """The traits whose words are others in the two editions."""
    return {
        name
        for name in traits
        if name in old.traits
        and name in new.traits
        and words_of(old.traits[name].kind) != words_of(new.traits[name].kind)
    }


def _places_in(joint: Kind, own: Kind) -> tuple[int, ...]:
    known = words_of(own)
    return tuple(known.index(word) for word in words_of(joint) if word in known)


def _ordinary(
    old: Rules,
    new: Rules,
    traits: Mapping[str, Trait],
    cuts: Mapping[str, Cuts],
    words: Sequence[Mapping[str, tuple[int, ...]]],
) -> Record:
    sides = []
    for rules, places in zip((old, new), words, strict=True):
        samples = [evolve(one, record=in_common(one.record, traits, places)) for one in rules.samples]
        sides.append(evolve(rules, samples=tuple(samples), traits={**rules.traits, **traits}))
    return ordinary_fish(sides, cuts)


def in_common(
    record: Mapping[str, Reading], traits: Mapping[str, Trait], words: Mapping[str, tuple[int, ...]]
) -> dict[str, Reading]:
    """What a record of one edition says of a fish of both: without what the other one cannot read."""
    found: dict[str, Reading] = {}
    for name, reading in record.items():
        made = _back(reading, words[name]) if name in words else reading
        if made is not None and name in traits and _is_within(made, traits[name].kind):
            found[name] = made
    return found


def _is_within(reading: Reading, kind: Kind) -> bool:
    """Whether a number lies in a range."""
    reach = anything(kind)
    if not isinstance(reading, Span) or not isinstance(reach, Span):
        return True
    return reach.low <= reading.low and reading.high <= reach.high


def _back(reading: Reading, places: Sequence[int]) -> Reading | None:
    """A reading of one edition in the words of both; None where it is not one of these."""
    match reading:
        case PlaceSet(sure, possible) if sure == possible:
            bits = sum(1 << i for i, place in enumerate(places) if sure >> place & 1)
            return PlaceSet(bits, bits)
        case int(step):
            return sum(1 << i for i, place in enumerate(places) if step >> place & 1) or None
        case _:
            return None


def _beside(old: Grader, new: Grader, same: SameValues) -> dict[str, Supplied]:
    """The values beside the record that either edition reads for a grade, by their key in a fish of both."""
    found = {one.key: one for one in _supplied(old.rules)}
    for one in _supplied(new.rules):
        other = found.get(one.key)
        if other is None or same.number(other, settings_of(old), "old") == same.number(one, settings_of(new), "new"):
            found.setdefault(one.key, one)
        else:
            found[f"{one.key}{BY_NEW}"] = evolve(one, key=f"{one.key}{BY_NEW}")
    return found


def _supplied(rules: Rules) -> Iterator[Supplied]:
    seen: set[str] = set()
    for part in rules.parts:
        for root in part.roots:
            for node in walk(root):
                of = node.of if isinstance(node, Recorded) else node
                if isinstance(of, Supplied) and of.key not in seen:
                    seen.add(of.key)
                    yield of
