"""Typed expressions over columns: what reads one column of codes is tabled, numbers and the rest are worked out.

For each code the table holds what the operations table gives for its reading, so nothing is said here twice.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, assert_never

from koirules.engines.columnar.codes import spread
from koirules.engines.columnar.held import CodeColumn, Held, NoColumn, NumberColumn, readings_of
from koirules.engines.columnar.meaning import applied
from koirules.engines.columnar.missing import Missing
from koirules.engines.columnar.stages import Stages
from koirules.engines.columnar.values import Coded, Hundredths, Known, Millionths, Pair, Raw, Value
from koirules.meaning import operators as ops
from koirules.standard.parts import Limit, Rules, Setting, Term
from koirules.standard.tree import (
    Apply,
    Constant,
    FaultRead,
    GradeRead,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    SettingRead,
    Supplied,
    TermRead,
    TraitRead,
    post_order,
)
from koirules.standard.types import TextLabel
from koirules.vocabulary.readings import Span, anything


class Expressions:
    """Turns the expressions of one standard into columns of one shape of frame.

    held: how the frame holds each trait that is read.
    """

    def __init__(self, settings: Mapping[str, Setting], held: Mapping[str, Held]) -> None:
        self.settings = settings
        self.held = held
        self.stages = Stages()
        holed = [column.name for column in held.values() if not isinstance(column, NoColumn) and column.holes]
        self.missing = Missing(self.stages, tuple(holed))
        self._read: dict[str, Value] = {}
        self._terms: dict[str, Value] = {}
        self._faults: dict[str, Pair] = {}
        self._points: dict[str, Pair] = {}
        self._known: dict[tuple[Any, ...], Value] = {}

    def term(self, term: Term) -> None:
        """Work out a term; what it needs has been worked out before."""
        value = self.node(term.node)
        self._terms[term.name] = self.kept(value) if isinstance(value, Pair) else value

    def kept(self, pair: Pair) -> Pair:
        """The same, worked out once however often it is read."""
        first = self.stages.keep(pair.first)
        return Pair(first, first if pair.sure else self.stages.keep(pair.second))

    def fault(self, limit: Limit, bites: Pair) -> None:
        """Say where a fault bites."""
        self._faults[limit.name] = bites

    def points(self, name: str, hundredths: Pair, most: int) -> None:
        """Say what the hundredths of a section, or of the score (name ""), are."""
        low = _hundredths(hundredths.first, most)
        self._points[name] = Pair(low, low if hundredths.sure else _hundredths(hundredths.second, most))

    def given_outcome(self, rules: Rules) -> None:
        """Read the outcome of each row from columns of its own (`outcome_columns`), instead of working it out."""
        import polars as pl

        scores = {"": sum(one.worth for one in rules.sections)} | {one.name: one.worth for one in rules.sections}
        for name, most in scores.items():
            key = f"section {name}" if name else "score"
            self.points(name, Pair(pl.col(f"{key} low"), pl.col(f"{key} high")), most)
        for limit in rules.limits:
            if limit.head == "fault":
                key = f"fault {limit.name}"
                self.fault(limit, Pair(pl.col(f"{key} surely"), pl.col(f"{key} possibly")))

    def condition(self, node: Node) -> Pair:
        """Where a condition surely and possibly holds."""
        return spread(self.node(node), node.type)

    def node(self, root: Node) -> Value:
        """What an expression is over columns; without recursion, since sums can be long."""
        done: dict[int, Value] = {}
        for node in post_order(root):
            done[id(node)] = self._one(node, done)
        return done[id(root)]

    def _one(self, node: Node, done: Mapping[int, Value]) -> Value:
        match node:
            case Constant(type=kind, range=reading):
                # Without its type, yes would be the same constant as 1.
                return self._remembered(("constant", kind, reading), Known(reading))
            case SettingRead(name=name):
                value = float(self.settings[name].value)
                return self._remembered(("setting", name), Known(Span(value, value)))
            case TraitRead(trait=trait):
                return self._given(trait.name, anything(trait.kind))
            case Supplied(key=key, range=reach):
                return self._given(key, None if isinstance(node.type, TextLabel) else reach)
            case Recorded(of=of):
                return self._remembered(("recorded", of.key), self._recorded(of.key))
            case TermRead(name=name):
                return self._terms[name]
            case FaultRead(name=name):
                return self._faults[name]
            case GradeRead(range=reach):
                return self._given("grade", reach)
            case SectionRead(name=name):
                return self._points[name]
            case ScoreRead():
                return self._points[""]
            case Apply():
                operands = [done[id(operand)] for operand in node.operands]
                made_of = (node.operation.name, *(id(operand) for operand in operands))
                found = self._known.get(made_of)
                return self._remembered(made_of, self._apply(node, operands)) if found is None else found
            case _:
                assert_never(node)

    def _remembered(self, key: tuple[Any, ...], value: Value) -> Value:
        return self._known.setdefault(key, value)

    def _apply(self, node: Apply, operands: list[Value]) -> Value:
        columns = {id(operand.column): operand.column for operand in operands if isinstance(operand, Coded)}
        if len(columns) == 1 and not any(isinstance(operand, Pair) for operand in operands):
            (column,) = columns.values()
            size = len(column.readings) + 1
            each = [
                operand.readings if isinstance(operand, Coded) else (_reading(operand),) * size for operand in operands
            ]
            return Coded(column, tuple(node.operation.range_of(*readings) for readings in zip(*each, strict=True)))
        if all(isinstance(operand, Known) for operand in operands):
            return Known(node.operation.range_of(*(_reading(operand) for operand in operands)))
        if node.operation is ops.MILLIONTHS and isinstance(operands[0], Pair):
            return self._millionths(operands[0])
        pairs = [spread(value, operand.type) for value, operand in zip(operands, node.operands, strict=True)]
        return applied(node.operation, pairs, [operand.range for operand in node.operands])

    def _millionths(self, pair: Pair) -> Pair:
        first = self._scaled(pair.first)
        return Pair(first, first if pair.sure else self._scaled(pair.second))

    def _scaled(self, end: Any) -> Any:
        if isinstance(end, Raw | Hundredths):
            return Millionths(end, self.stages)
        if isinstance(end, int | float):
            return ops.MILLIONTHS.range_of((end, end))[0]
        return self.stages.once("millionths", end, (end * 1_000_000.0 + 0.5).floor)

    def _given(self, key: str, reach: Any) -> Value:
        known = self._read.get(key)
        if known is None:
            known = self._read[key] = self._column(key, reach)
        return known

    def _column(self, key: str, reach: Any) -> Value:
        import polars as pl

        held = self.held.get(key, NoColumn())
        match held:
            case NoColumn():
                return Known(reach)
            case CodeColumn():
                return Coded(held, readings_of(held, reach))
            case NumberColumn(name=name, holes=holes, high=high):
                if not isinstance(reach, Span):
                    raise AssertionError("numbers of a trait that has none")
                column = pl.col(name)
                low = Raw(column, reach.low if holes else None)
                if not holes and not high:
                    return Pair(low, low)
                return Pair(low, Raw(pl.col(high) if high else column, reach.high if holes else None))
            case _:
                assert_never(held)

    def _recorded(self, key: str) -> Value:
        import polars as pl

        held = self.held.get(key, NoColumn())
        match held:
            case NoColumn():
                return Known((False, False))
            case CodeColumn(readings=readings):
                states = tuple((reading is not None,) * 2 for reading in readings)
                return Coded(held, (*states, (False, False)))
            case NumberColumn(name=name, holes=holes):
                if not holes:
                    return Known((True, True))
                there = pl.col(name).is_not_null()
                return Pair(there, there)
            case _:
                assert_never(held)


def _reading(value: Value) -> Any:
    if not isinstance(value, Known):
        raise AssertionError("a value that differs by row")
    return value.reading


def _hundredths(end: Any, most: int) -> Any:
    return end / 100.0 if isinstance(end, int | float) else Hundredths(end, most)
