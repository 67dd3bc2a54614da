"""Some expressions over the columns of a frame: what the batch asks of each row."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from operator import add
from typing import Any, assert_never

import polars as pl
from attrs import evolve, field

from koirules.engines.columnar.codes import looked_up
from koirules.engines.columnar.doubles import balanced
from koirules.engines.columnar.plan import Columns
from koirules.meaning import operators as ops
from koirules.meaning.algebra import Ends
from koirules.program.evaluation import reading
from koirules.program.frames import FrameEvaluation, FrameProgram
from koirules.program.graph import Op, Value
from koirules.program.held import Profile
from koirules.rounds.columnar.rows import Rows
from koirules.rounds.node_values import one_value
from koirules.standard.parts import Rules, Setting
from koirules.standard.tree import Node, apply
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth
from koirules.values import define

_MOST_PLANS = 128


@define
class NodeColumns:
    """Expressions of a standard over one frame; columns are asked for, and then worked out together."""

    rows: Rows
    columns: Columns
    wanted: dict[str, pl.Expr] = field(factory=dict)
    numbers: dict[str, int] = field(factory=dict)

    @classmethod
    def of(
        cls, rules: Rules, settings: Mapping[str, Setting], rows: Rows, nodes: Sequence[Node], *, graded: bool
    ) -> NodeColumns:
        """Ready to be asked for these expressions. graded: whether the frame has the columns of its outcome."""
        evaluation = FrameEvaluation.of(rules, settings, rows.held)
        if graded:
            evaluation.given_outcome()
        evaluation.evaluate_needed(nodes, graded=graded)
        return cls(rows, Columns.of_nodes(evaluation, nodes))

    def ends(self, node: Node) -> Ends[Value]:
        """Both ends of an expression."""
        return self.columns.ends(node)

    def code(self, node: Node) -> tuple[pl.Expr, list[Any]]:
        """The code of a set of places in each row, and the reading that each code stands for."""
        coded = self._by_code(node)
        if coded is None:
            known = [None if end is None else end.data for end in self.ends(node) if end is None or end.constant]
            if len(known) < len(self.ends(node)):
                raise AssertionError("a set of places that is worked out")
            return pl.lit(0, pl.UInt32), [reading(Ends(*known), node.type)]
        code, readings = coded
        return looked_up(code, self.column(code), range(len(readings)), pl.UInt32), readings

    def column(self, end: Value | None) -> pl.Expr:
        """An end of an expression as a column."""
        if end is None:
            raise AssertionError("a value with one end")
        return self.columns.column(end)

    def ask(self, name: str, column: pl.Expr) -> None:
        """Ask for a column."""
        self.wanted[name] = column.alias(name)

    def one_value(self, name: str, node: Node) -> None:
        """Ask for what groups equal values together (node_values.one_value), null where a row could have several."""
        self.ask(name, self._one_value(node))

    def value_ends(self, node: Node) -> tuple[pl.Expr, pl.Expr]:
        """Between which ends a number, a truth or a step of a scale lies (node_values.value_ends)."""
        if isinstance(node.type, Steps):
            bits = self.column(self.ends(node).first).cast(pl.Int64)
            low = bits.bitwise_trailing_zeros().cast(pl.Int64)
            return low, -bits.bitwise_leading_zeros().cast(pl.Int64) + 63
        ends = self._whole_ends(node)
        return self.column(ends.first).cast(pl.Int64), self.column(ends.last).cast(pl.Int64)

    def _whole_ends(self, node: Node) -> Ends[Value]:
        """Both ends of a truth or of places, and the millionths of a number."""
        if isinstance(node.type, Numeric):
            return self.ends(apply(ops.MILLIONTHS, (node,), node.type, node.place))
        return self.ends(node)

    def group(self, name: str, nodes: Sequence[Node]) -> None:
        """Ask for a number that rows of this frame with the same values have in common; not recorded is a value too."""
        each = [self._numbered(node, unknown=True) for node in nodes]
        if len(each) == 1 and each[0][1]:
            self.ask(name, each[0][0])
        else:
            fields = [column.alias(str(i)) for i, (column, _) in enumerate(each)]
            self.ask(name, pl.struct(fields).rank("dense").cast(pl.Int64))

    def numbered(self, name: str, node: Node) -> None:
        """Ask for a number of a value, which frames with the same codes have in common, or for the value itself.

        `numbers` then has how many there can be, 0 for values. Null is not recorded.
        """
        column, self.numbers[name] = self._numbered(node, unknown=False)
        self.ask(name, column)

    def _numbered(self, node: Node, *, unknown: bool) -> tuple[pl.Expr, int]:
        """The number of a value in each row, and how many there are; the value itself, and 0, where they are not known."""
        coded = self._by_code(node)
        if coded is None:
            return self._one_value(node), 0
        code, readings = coded
        found = [one_value(node.type, reading) for reading in readings]
        different = {each: i for i, each in enumerate(dict.fromkeys(each for each in found if each is not None))}
        last = len(different)
        codes = [different.get(each, last if unknown else None) for each in found]
        return looked_up(code, self.column(code), codes, pl.Int64), last + 1

    def _by_code(self, node: Node) -> tuple[Value, list[Any]] | None:
        """The code that an expression depends on alone, and its reading for each; None where it reads more, or none."""
        ends = self.ends(node)
        codes = {end.operands[0] for end in ends if end is not None and end.op is Op.TABLE}
        if len(codes) != 1 or not all(end is None or end.op in {Op.TABLE, Op.CONSTANT} for end in ends):
            return None
        (code,) = codes
        size = next(len(end.data) for end in ends if end is not None and end.op is Op.TABLE)
        each = [None if end is None else end.data if end.op is Op.TABLE else (end.data,) * size for end in ends]
        return code, [reading(Ends(*(None if one is None else one[i] for one in each)), node.type) for i in range(size)]

    def _one_value(self, node: Node) -> pl.Expr:
        match node.type:
            case Numeric() | Truth() | PlaceWords():
                ends = self._whole_ends(node)
                first = self.column(ends.first).cast(pl.Int64)
                if ends.sure:
                    return first
                return pl.when(first == self.column(ends.last).cast(pl.Int64)).then(first)
            case Steps():
                bits = self.column(self.ends(node).first)
                return pl.when(bits.bitwise_count_ones() == 1).then(bits.bitwise_trailing_zeros().cast(pl.Int64))
            case TextLabel() | PatternMap() | ColourList():
                return self.column(self.ends(node).first)
            case _:
                assert_never(node.type)

    def without_rows(self) -> NodeColumns:
        """The same, for keeping: it holds no frame."""
        return evolve(self, rows=Rows(pl.DataFrame(), {}, 0))

    def collect(self) -> pl.DataFrame:
        """The columns that were asked for."""
        return self.columns.collect(self.rows.columns, self.rows.height, self.wanted.values())


@define
class NodePlans:
    """Expressions that were made for frames of one shape, kept for the next frame of the same shape."""

    rules: Rules
    settings: Mapping[str, Setting]
    _made: dict[tuple[str, Profile], NodeColumns] = field(factory=dict)

    def get(
        self, name: str, rows: Rows, nodes: Sequence[Node], ask: Callable[[NodeColumns], None], *, graded: bool
    ) -> NodeColumns:
        """What `ask` asks for, made once for each shape of frame; name: what tells it from all else that is asked."""
        key = (f"{name} {graded}", rows.profile)
        known = self._made.get(key)
        if known is None:
            if len(self._made) >= _MOST_PLANS:
                self._made.clear()
            known = NodeColumns.of(self.rules, self.settings, rows, nodes, graded=graded)
            ask(known)
            self._made[key] = known.without_rows()
        return evolve(known, rows=rows)


def outcome_columns(program: FrameProgram, columns: Columns) -> dict[str, pl.Expr]:
    """What came of each row, by the names under which it is read (`FrameEvaluation.given_outcome`)."""
    outputs = program.outputs
    heads = ("score", "section", "fault")
    found = {name: columns.column(value) for name, value in outputs.items() if name.partition(" ")[0] in heads}
    bits = [
        pl.when(columns.column(plane)).then(pl.lit(1 << i, pl.Int64)).otherwise(pl.lit(0, pl.Int64))
        for i, plane in enumerate(reversed(program.possible))
    ]
    # A grade that is possible for every fish, or for none, is a literal: these come last.
    bits.sort(key=lambda one: not one.meta.root_names())
    return found | {"grade bits": balanced(bits, add)}
