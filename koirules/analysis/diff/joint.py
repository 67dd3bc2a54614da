"""One fish for two editions: the traits that a record of both can have, and what each edition reads of it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from attrs import evolve

from koirules.analysis.diff.common_traits import beneath, differing, joint_cuts, joint_traits, places_in
from koirules.analysis.diff.following import Follows
from koirules.analysis.diff.unlike import Unlike, same_values, settings_of
from koirules.candidates.ordinary import ordinary_fish
from koirules.engines.scalar.evaluator import Trace
from koirules.engines.symbolic.value_numbering import SameValues
from koirules.grading.single import Grader
from koirules.measures.grown_traits import Ahead
from koirules.results.parts_read import asked_whether_recorded
from koirules.standard.cuts import Cuts
from koirules.standard.parts import Rules
from koirules.standard.tree import Grown, Recorded, Supplied, walk
from koirules.values import frozen
from koirules.vocabulary.kinds import Kind
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
    hiding: whether the faults and lifts that are alike may bite. known: whether each edition knows of what both work out in
    their own way, written or following from others.
    """

    old: int
    new: int
    heights: tuple[int, ...]
    inner: tuple[Any, Any]
    hiding: tuple[bool, ...]
    known: bool = True

    @property
    def differ(self) -> bool:
        """Whether the editions grade it differently."""
        return self.known and self.old != self.new

    @property
    def differ_inside(self) -> bool:
        """Whether they differ in something that may show in the grade."""
        return self.known and bool(self.inner[0] != self.inner[1])


@frozen(eq=False)
class Joint:
    """Two editions, ready to grade one fish.

    grades: the names of the grades of both, best first. traits: those that a fish of both has, with what both can read of
    them. cuts: where either turns. ordinary: the ordinary fish of both. optional: the traits that may be left out.
    old_words, new_words: for traits whose words differ, the place of each word in the edition, by trait. beside: the values
    beside the record, by their key in a fish. apart: the traits that no one record can have for both. beneath: those that
    grades hang on only by what each edition has its own way of working out of them.
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
    beneath: Mapping[str, Cuts]
    follows: tuple[Follows, Follows]
    _old_bits: tuple[int, ...]
    _new_bits: tuple[int, ...]

    @classmethod
    def of(cls, old: Grader, new: Grader) -> Joint:
        """Two editions together; the older one in the names of the newer one."""
        cuts = joint_cuts(old, new)
        follows = (Follows.of(old), Follows.of(new))
        same = same_values(*follows)
        unread = beneath(follows, same.own, cuts)
        traits, apart = joint_traits(old.rules, new.rules, [*cuts, *unread])
        words = [
            {
                name: places_in(traits[name].kind, rules.traits[name].kind)
                for name in differing(old.rules, new.rules, traits)
            }
            for rules in (old.rules, new.rules)
        ]
        grades = tuple(dict.fromkeys([*new.grades, *old.grades]))
        ordinary = _ordinary(old.rules, new.rules, traits, cuts, words)
        optional = asked_whether_recorded(old.rules) | asked_whether_recorded(new.rules)
        for name in optional & ordinary.keys():
            if any(name in one.from_what(one.derived - {name}) for one in follows):
                # An ordinary fish does not say one thing by its map and another by its traits.
                del ordinary[name]
        return cls(
            old,
            new,
            grades,
            traits,
            cuts,
            ordinary,
            optional,
            words[0],
            words[1],
            _beside(old, new, same),
            same,
            tuple(name for name in apart if name in cuts),
            Unlike.of(old, new, same),
            {name: cut for name, cut in unread.items() if name not in apart},
            follows,
            *(tuple(1 << grades.index(name) for name in one.grades) for one in (old, new)),
        )

    def seen(self, record: Record) -> Seen:
        """What both editions make of a fish. Raises RecordError where a library for measuring is missing."""
        records = (self.old_record(record), self.new_record(record))
        old, new = self.old.trace(records[0]), self.new.trace(records[1])
        needed = self.own - self.optional
        return Seen(
            _bits(old.possible, self._old_bits),
            _bits(new.possible, self._new_bits),
            self.unlike.heights(new),
            (self.unlike.inner(old, 0), self.unlike.inner(new, 1)),
            self.unlike.hiding(new),
            all(needed <= one.keys() for one in records),
        )

    def traces(self, record: Record) -> tuple[Trace, Trace]:
        """What each edition works out of a fish, with what follows from its record and what it grows to."""
        return self.old.trace(self.old_record(record)), self.new.trace(self.new_record(record))

    def as_recorded(self, record: Record) -> tuple[Record, Record]:
        """A fish in the words of each edition, with nothing that follows."""
        return _converted(record, self.old_words), _converted(record, self.new_words)

    @property
    def own(self) -> frozenset[str]:
        """The traits that grades hang on and each edition works out in its own way, where nobody wrote them."""
        return self.same.own & self.cuts.keys()

    @property
    def aheads(self) -> tuple[Ahead, Ahead]:
        """What works out in each edition what a fish grows to."""
        return self.old.evaluator.ahead, self.new.evaluator.ahead

    def named(self, bits: int) -> tuple[str, ...]:
        """The names of grades."""
        return tuple(name for i, name in enumerate(self.grades) if bits >> i & 1)

    def old_record(self, record: Record) -> Record:
        """A fish as the older edition reads it, with what follows."""
        return self.follows[0].whole(_converted(record, self.old_words))

    def new_record(self, record: Record) -> Record:
        """A fish as the newer edition reads it, with what follows."""
        return self.follows[1].whole(self._with_its_own(_converted(record, self.new_words)))

    def _with_its_own(self, made: Record) -> Record:
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
        case PlaceSet(sure, possible, least, most):
            bits = [1 << i for i in places]
            return PlaceSet(_bits(sure, bits), _bits(possible, bits), least, most)
        case int(bits):
            return _bits(bits, [1 << i for i in places])
        case _:
            return reading


def _ordinary(
    old: Rules,
    new: Rules,
    traits: Mapping[str, Trait],
    cuts: Mapping[str, Cuts],
    words: Sequence[Mapping[str, tuple[int, ...]]],
) -> dict[str, Any]:
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
    """The values beside the record that either edition reads for a grade, by their key in a fish of both.

    What a fish grows to is none of them: it is worked out from its record.
    """
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
                if isinstance(of, Supplied) and not isinstance(of.source, Grown) and of.key not in seen:
                    seen.add(of.key)
                    yield of
