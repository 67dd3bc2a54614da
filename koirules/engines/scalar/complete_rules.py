"""The rules as lines over a complete record: everything that they read has one value, so one end is worked out.

They are written by the writer of the function for any record (evaluator.py), from the same table of operations; curves are
spelt out as comparisons of whole millionths, and what depends on one scale alone is added up when it is compiled.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from attrs import frozen

from koirules.engines.scalar.emitter import Constants
from koirules.engines.scalar.evaluator import RuleWriter, summed, tupled
from koirules.engines.scalar.inlining import inlined, needed_by
from koirules.engines.scalar.late_parts import needed_for, order_key
from koirules.engines.scalar.sure_emitter import Coded, SureEmitter
from koirules.standard.check.curves import Curve, Piece, Table
from koirules.standard.operations import Ends
from koirules.standard.parts import Limit, Points, Rules, Setting, Term


@frozen
class Key:
    """The source of what a reason is told by; where `values` are given, of a code or a truth by which one of them is meant."""

    source: str
    values: tuple[Any, ...] = ()

    def told(self, said: Mapping[Any, Any], constants: Constants) -> str:
        """The source of what the reason says. said: by its key."""
        if not self.values:
            return f"{constants.named(said)}[{self.source}]"
        known = [said[value] for value in self.values]
        if len(known) == len((False, True)):
            return f"({constants.named(known[1])} if {self.source} else {constants.named(known[0])})"
        return f"{constants.named(tuple(known))}[{self.source}]"


@frozen
class Written:
    """The lines over a complete record, and what its reasons are told by.

    body: the lines, of which the last gives what came of the record (`Sure`), with what was worked out and is needed again,
    by the names `worked`. again: the lines that follow from these. keys: what each reason is told by, criteria section by
    section, then limits, then grades: thousandths, a pair of truths, bits (1 where the condition of a limit holds, 2 where its
    exception does, 4 where it bites), a truth.
    """

    body: Sequence[str]
    worked: Sequence[str]
    again: Sequence[str]
    keys: Sequence[Key]


class CompleteWriter(RuleWriter):
    """Writes the rules out for records in which everything has one value. Raises OpenToEveryFishError where none can."""

    emit: SureEmitter

    def __init__(self, rules: Rules, settings: Mapping[str, Setting]) -> None:
        super().__init__(rules, SureEmitter(settings))
        self.needed = needed_for(rules, [root for part in rules.parts for root in part.roots])

    def written(self) -> Written:
        """The rules, written out."""
        self.emit.lines.append("F = 0")
        score, sections, grades = self.outcome()
        keys: list[Key] = []
        for section in sections:
            keys += [self._points_key(ends) for ends, _ in section.points]
            keys += [Key(ends.first, ((False, False), (True, True))) for ends in section.extras]
        keys += [self._limit_key(limit) for limit in self.rules.limits]
        keys += [Key(ends.first, (False, True)) for ends in grades]
        again, worked = needed_by(tupled(key.source for key in keys), self.emit.lines, self.emit.dear)
        outcome = f"G, {score.first}, {tupled(one.ends.first for one in sections)}, F, {tupled(worked)}"
        return Written(inlined([*self.emit.lines, f"return ({outcome})"]), worked, again, keys)

    def _points_key(self, ends: Ends) -> Key:
        if isinstance(ends, Coded):
            return Key(ends.code, tuple(points for points, _ in ends.readings))
        return Key(ends.first)

    def _limit_key(self, limit: Limit) -> Key:
        condition, exception, bites = (ends.first for ends in self.limits[limit.head, limit.name])
        if limit.exception is None:
            return Key(condition, (0, 1 + 4))
        return Key(f"{condition} + 2 * {exception} + 4 * {bites}")

    def work_out(self, parts: Iterable[Term | Limit]) -> None:
        """Work out limits, and of the terms those that they or the criteria need: another one may be open."""
        super().work_out(part for part in parts if isinstance(part, Limit) or order_key(part) in self.needed)

    def given(self, part: Points) -> tuple[Ends, str]:
        """What a criterion gives, and the source of that."""
        read, shape = self.emit.node(part.reads), part.shape
        if read in self.emit.fixed:
            ends = self.emit.literal(_span(shape, self.emit.fixed[read]))
        elif isinstance(read, Coded):
            ends = self.emit.coded(read.code, [_span(shape, reading) for reading in read.readings])
        elif isinstance(shape, Curve):
            ends = self.emit.kept(curve_source(shape.pieces, shape.at, read.first))
        else:
            # What is several steps is no key of the table.
            table = self.emit.constant({1 << i: gives for i, gives in enumerate(shape.gives)})
            ends = self.emit.kept(f"{table}[{read.first}]")
        return ends, ends.first

    def weighted(self, given: Sequence[tuple[int, Ends]]) -> tuple[str, str]:
        """The sum of the points that criteria give, each with its weight; what depends on one code as one table."""
        known, parts = 0, []
        tables: dict[str, list[int]] = {}
        for weight, ends in given:
            if ends in self.emit.fixed:
                known += weight * self.emit.fixed[ends][0]
            elif isinstance(ends, Coded):
                adds = [weight * points for points, _ in ends.readings]
                before = tables.get(ends.code, [0] * len(adds))
                tables[ends.code] = [one + other for one, other in zip(before, adds, strict=True)]
            else:
                parts.append(f"{weight} * {ends.first}")
        parts += [self.emit.coded(code, [(each, each) for each in table]).first for code, table in tables.items()]
        source = summed([*parts, *([str(known)] if known else [])])
        return source, source

    def bitten(self, number: int) -> str:
        """Remember that a limit bites."""
        return f"; F |= {1 << number}"


def _span(shape: Curve | Table, reading: Any) -> tuple[int, int]:
    return shape.span(*reading) if isinstance(shape, Curve) else shape.span(reading)


def curve_source(pieces: Sequence[Piece], knots: Sequence[int], x: str) -> str:
    """The source of a curve at x: the piece before the first knot that is above x, found by halves."""
    if len(pieces) == 1:
        (piece,) = pieces
        return f"({piece.slope} * {x} + {piece.start}) // {piece.over}" if piece.slope else f"{piece.point(0)}"
    half = len(pieces) // 2
    knot = knots[half - 1]
    left = curve_source(pieces[:half], knots[: half - 1], x)
    right = curve_source(pieces[half:], knots[half:], x)
    return f"({left} if {x} < {knot} else {right})"
