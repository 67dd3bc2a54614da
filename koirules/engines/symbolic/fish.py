"""A fish that is not known yet: a variable for what each trait could be, and the record that a model of them gives.

Numbers are whole millionths of the unit that they are held in, as comparisons and curves read them; the solver may take what
lies between for more fish than there are. A trait that a rule asks about with `is recorded`, and a value that comes from
beside the record, may be missing; every other trait is recorded.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from decimal import Decimal
from fractions import Fraction
from itertools import pairwise
from math import ceil, floor
from typing import Any, assert_never

import z3
from attrs import evolve, field

from koirules.candidates.ordinary import other_text
from koirules.candidates.places_to_move import MILLION, range_in_notches
from koirules.engines.symbolic.grown import grown_slot, is_grown
from koirules.engines.symbolic.numbers import Num
from koirules.engines.symbolic.values import Bits, Cases, Logic
from koirules.meaning.algebra import Ends
from koirules.measures.growth import Grower
from koirules.standard.tree import Supplied, TraitRead
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, Type
from koirules.values import define
from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.readings import Span, anything
from koirules.vocabulary.traits import Trait

_UNIT = Fraction(1, 2**53)


@define(eq=False)
class Slot:
    """The variables of one trait, or of one value beside the record.

    value: what it is where it is recorded; read: the same, or anything where it is not. recorded: whether it is, True for
    what always is. names: of its variables. order: a term that grows with it, None for what has no order. notch: of
    numbers, how many make 1; between: whether they may lie between two notches. node: what is read.
    """

    type: Type
    value: Any
    read: Ends[Any]
    recorded: Any
    names: frozenset[str]
    order: Any = None
    notch: int = 1
    between: bool = False
    node: TraitRead | Supplied | None = None


@define(eq=False)
class Fish:
    """The variables of one fish, made as they are asked for.

    facts: what holds of them. exact: further facts, that numbers are whole notches. made: the place of each name that was
    made from others. optional: the traits that may be left out. texts: what each label is compared with. growers: what says
    how a figure follows the length, by the key of the grown one; worked_from: what each grown trait is worked out from;
    any_length: the range of the length. base: the fish that
    this one is the same as in all but what it reads under the keys `moved`. mark: what the names of its variables end in.
    """

    context: z3.Context
    facts: list[Any]
    exact: list[Any]
    made: dict[str, int]
    optional: Collection[str]
    texts: Mapping[str, tuple[str, ...]]
    growers: Mapping[str, Grower]
    worked_from: Mapping[str, frozenset[str]]
    any_length: Span
    base: Fish | None = None
    moved: Collection[str] = ()
    mark: str = ""
    slots: dict[str, Slot] = field(factory=dict)

    def given(self, node: TraitRead | Supplied) -> Ends[Any]:
        """What is read of a trait, or of a value beside the record."""
        return self.slot(node).read

    def recorded(self, of: TraitRead | Supplied) -> Ends[Any]:
        """Whether it is recorded."""
        there = self.slot(of).recorded
        return Ends(there, there)

    def slot(self, read: TraitRead | Supplied) -> Slot:
        """The variables of what is read."""
        if self.base is not None and read.key not in self.moved:
            return self.base.slot(read)
        known = self.slots.get(read.key)
        if known is None:
            grown = grown_slot(self, read) if isinstance(read, Supplied) and is_grown(read) else None
            known = self.slots[read.key] = self._made(read) if grown is None else grown
            known.node = read
        return known

    def moved_by(self, trait: str) -> frozenset[str]:
        """Under which keys a fish that differs in one trait differs: the trait, and what is grown from it."""
        return frozenset({trait, *(key for key, names in self.worked_from.items() if trait in names)})

    def millionths(self, read: Supplied, what: str) -> Any:
        """A variable for a number that is worked out from the fish, in millionths."""
        name = self._from_others(f"{read.key} {what}" if what else read.key)
        low, high = millionths_of(read)
        number = z3.Real(name, self.context)
        self.facts.extend([number >= low, number <= high])
        if _on_millionths(read):
            self.exact.append(z3.IsInt(number))
        return number

    def named_truth(self, read: Supplied, what: str) -> Any:
        """A variable for a truth that is worked out from the fish."""
        return z3.Bool(self._from_others(f"{read.key} {what}"), self.context)

    def _from_others(self, what: str) -> str:
        name = f"{what}{self.mark}"
        self.made[name] = len(self.made)
        return name

    def of_ends(self, read: Supplied, low: Any, high: Any, recorded: Any = True) -> Slot:
        """The slot of a number that is worked out from the fish, between two terms in millionths."""
        least, most = millionths_of(read)
        ends = (Fraction(least, MILLION), Fraction(most, MILLION))
        step = Fraction(1, MILLION) if _on_millionths(read) else Fraction(0)
        error = _UNIT * max(abs(ends[0]), abs(ends[1]))
        found = [Num(term * z3.Q(1, MILLION, self.context), *ends, step, Fraction(0), error) for term in (low, high)]
        if recorded is not True:
            found = [self._if_recorded(recorded, one, end) for one, end in zip(found, ends, strict=True)]
        sure = recorded is True and low is high
        pair = Ends(found[0], found[0]) if sure else Ends(*found)
        return Slot(read.type, low, pair, recorded, frozenset(), low, MILLION)

    def of_reading(self, read: Supplied, reading: Ends[Any]) -> Slot:
        """The slot of steps or places that are worked out from the fish."""
        return Slot(read.type, None, reading, True, frozenset())

    def at_nearest(self, read: TraitRead, value: float) -> Span:
        """The reading of a number or count that is nearest to a value."""
        low, high, notch = notches(read.trait)
        return at_notch(min(max(round(value * notch), low), high), notch)

    def _made(self, read: TraitRead | Supplied) -> Slot:
        recorded: Any = True
        if isinstance(read, Supplied) or read.key in self.optional:
            recorded = z3.Bool(f"recorded {read.key}{self.mark}", self.context)
        reach: Any = anything(read.trait.kind) if isinstance(read, TraitRead) else read.range
        match read.type:
            case Numeric() as kind:
                return self._number(read, kind, recorded)
            case Steps(words) as kind:
                return self._steps(read.key, kind, len(words), reach, recorded)
            case PlaceWords(words) as kind:
                return self._places(read.key, kind, words, recorded)
            case TextLabel() as kind:
                return self._label(read.key, kind, recorded)
            case Truth() as kind:
                return self._truth(read.key, kind, recorded)
            case PatternMap() | ColourList() as kind:
                # A rule can only ask whether it is there.
                return Slot(kind, None, Ends(None), recorded, self._named(read.key))
            case _:
                assert_never(read.type)

    def _number(self, read: TraitRead | Supplied, kind: Numeric, recorded: Any) -> Slot:
        key = read.key
        if isinstance(read, TraitRead):
            low, high, notch = notches(read.trait)
        else:
            (low, high), notch = millionths_of(read), MILLION
        name: Any = z3.Real(f"{key}{self.mark}", self.context)
        if notch == 1:
            name = z3.ToReal(z3.Int(f"{key}{self.mark}", self.context))
        self.facts.extend([name >= low, name <= high])
        if isinstance(read, TraitRead):
            self.exact.append(z3.IsInt(name))
        error = Fraction(0) if notch == 1 else _UNIT * max(abs(low), abs(high)) / notch
        least, most = Fraction(low, notch), Fraction(high, notch)
        # What is worked out beside the record may lie between two millionths.
        step = Fraction(1, notch) if isinstance(read, TraitRead) else Fraction(0)
        value = Num(name * z3.Q(1, notch, self.context), least, most, step, Fraction(0), error)
        pair = Ends(value, value)
        if recorded is not True:
            pair = Ends(*(self._if_recorded(recorded, value, end) for end in (least, most)))
        return Slot(kind, name, pair, recorded, self._named(key, ""), name, notch, not isinstance(read, TraitRead))

    def _if_recorded(self, recorded: Any, value: Num, end: Fraction) -> Num:
        exact = z3.Q(end.numerator, end.denominator, self.context)
        return evolve(value, term=z3.If(recorded, value.term, exact))

    def _named(self, key: str, *parts: str) -> frozenset[str]:
        names = {f"{key} {part}{self.mark}" if part else f"{key}{self.mark}" for part in parts}
        return frozenset(names | {f"recorded {key}{self.mark}"})

    def _chained(self, key: str, size: int) -> frozenset[str]:
        return self._named(key, *(str(i) for i in range(1, size)))

    def _chain(self, key: str, size: int) -> tuple[list[Any], Any]:
        """One of so many in a row: when it is each of them, and a term that grows along the row."""
        logic = Logic(self.context)
        at = [z3.Bool(f"{key} {i}{self.mark}", self.context) for i in range(1, size)]
        self.facts.extend(z3.Implies(later, sooner) for sooner, later in pairwise(at))
        reached = [True, *at, False]
        each = [logic.every([reached[i], logic.no(reached[i + 1])]) for i in range(size)]
        one, nothing = z3.RealVal(1, self.context), z3.RealVal(0, self.context)
        return each, z3.Sum([nothing, *(z3.If(part, one, nothing) for part in at)])

    def _steps(self, key: str, kind: Type, size: int, reach: int, recorded: Any) -> Slot:
        logic = Logic(self.context)
        each, order = self._chain(key, size)
        self.facts.extend(z3.Not(when) for i, when in enumerate(each) if not reach >> i & 1)
        cases = [(1 << i, logic.every([recorded, when])) for i, when in enumerate(each) if reach >> i & 1]
        if recorded is not True:
            cases.append((reach, logic.no(recorded)))
        return Slot(kind, tuple(each), Ends(Cases(tuple(cases))), recorded, self._chained(key, size), order)

    def _truth(self, key: str, kind: Type, recorded: Any) -> Slot:
        logic = Logic(self.context)
        name = z3.Bool(f"{key}{self.mark}", self.context)
        pair = Ends(logic.every([recorded, name]), logic.some([logic.no(recorded), name]))
        return Slot(kind, name, Ends(name, name) if recorded is True else pair, recorded, self._named(key, ""))

    def _places(self, key: str, kind: Type, places: tuple[str, ...], recorded: Any) -> Slot:
        logic = Logic(self.context)
        names = tuple(z3.Bool(f"{key} {place}{self.mark}", self.context) for place in places)
        sure = Bits(names)
        if recorded is True:
            return Slot(kind, names, Ends(sure, sure), recorded, self._named(key, *places))
        first = Bits(tuple(logic.every([recorded, name]) for name in names))
        second = Bits(tuple(logic.some([logic.no(recorded), name]) for name in names))
        return Slot(kind, names, Ends(first, second), recorded, self._named(key, *places))

    def _label(self, key: str, kind: Type, recorded: Any) -> Slot:
        logic = Logic(self.context)
        named = self.texts.get(key, ())
        texts = (*named, other_text(named))
        each, _ = self._chain(key, len(texts))
        told = tuple(zip(texts, each, strict=True))
        cases: list[tuple[Any, Any]] = [(text, logic.every([recorded, when])) for text, when in told]
        if recorded is not True:
            cases.append((None, logic.no(recorded)))
        return Slot(kind, told, Ends(Cases(tuple(cases))), recorded, self._chained(key, len(texts)))


def notches(trait: Trait) -> tuple[int, int, int]:
    """The lowest and the highest value of a number or count in notches, and how many notches make 1."""
    if isinstance(trait.kind, Number | Count):
        return range_in_notches(trait.kind)
    raise AssertionError("notches of a trait that is no number")


def millionths_of(read: Supplied) -> tuple[int, int]:
    """The range of a number from beside the record, in millionths."""
    low, high = (Fraction(Decimal(repr(float(end)))) * MILLION for end in read.range)
    return floor(low), ceil(high)


def _on_millionths(read: Supplied) -> bool:
    """Whether the ends of a range are whole millionths: what is held at one of them is one then."""
    return all((Fraction(repr(float(end))) * MILLION).denominator == 1 for end in read.range)


def at_notch(number: int, notch: int) -> Span:
    """The reading of a number of notches."""
    value = float(Decimal(number) / notch)
    return Span(value, value)
