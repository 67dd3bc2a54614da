"""Some expressions over the columns of a frame: what the batch asks of each row."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TYPE_CHECKING, Any, Literal, assert_never

from attrs import define, evolve, field

from koirules.engines.columnar.codes import spread
from koirules.engines.columnar.expressions import Expressions
from koirules.engines.columnar.held import Profile
from koirules.engines.columnar.plan import STREAMED, Plan, planned
from koirules.engines.columnar.values import Coded, Known, Pair, filled
from koirules.meaning import operators as ops
from koirules.program.evaluation_order import needed_for, order_key
from koirules.rounds.columnar.rows import Rows
from koirules.rounds.node_values import one_value
from koirules.standard.parts import Rules, Setting, Term
from koirules.standard.tree import Node, apply
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth

if TYPE_CHECKING:
    import polars as pl


_MOST_PLANS = 128


@define
class NodeColumns:
    """Expressions of a standard over one frame; columns are asked for, and then worked out together."""

    rows: Rows
    expressions: Expressions
    wanted: dict[str, Any] = field(factory=dict)
    numbers: dict[str, int] = field(factory=dict)

    @classmethod
    def of(
        cls, rules: Rules, settings: Mapping[str, Setting], rows: Rows, nodes: Sequence[Node], *, graded: bool
    ) -> NodeColumns:
        """Ready to be asked for these expressions. graded: whether the frame has the columns of its outcome."""
        needed = needed_for(rules, nodes)
        if not graded and any(not key.startswith("term ") for key in needed):
            return cls(rows, planned(rules, settings, rows.held).columns)
        expressions = Expressions(settings, rows.held)
        if graded:
            expressions.given_outcome(rules)
        for part in rules.order:
            if isinstance(part, Term) and order_key(part) in needed:
                expressions.term(part)
        return cls(rows, expressions)

    def ends(self, node: Node) -> Pair:
        """Both ends of an expression."""
        return spread(self.expressions.node(node), node.type)

    def code(self, node: Node) -> tuple[Any, tuple[Any, ...]]:
        """The code of a set of places in each row, and the reading that each code stands for."""
        import polars as pl

        value = self.expressions.node(node)
        match value:
            case Coded(column, readings):
                return column.column.cast(pl.UInt32).fill_null(len(readings) - 1), readings
            case Known(reading):
                return pl.lit(0, pl.UInt32), (reading,)
            case Pair():
                raise AssertionError("a set of places that is worked out")

    def ask(self, name: str, end: Any) -> str:
        """Ask for a column; gives its name."""
        import polars as pl

        made = filled(end)
        self.wanted[name] = made if isinstance(made, pl.Expr) else pl.lit(made)
        return name

    def one_value(self, name: str, node: Node) -> str:
        """Ask for what groups equal values together (node_values.one_value), null where a row could have several."""
        self.ask(name, self._one_value(node))
        return name

    def value_ends(self, node: Node) -> tuple[pl.Expr, pl.Expr]:
        """Between which ends a number, a truth or a step of a scale lies (node_values.value_ends)."""
        import polars as pl

        match node.type:
            case Numeric():
                pair = self.ends(apply(ops.MILLIONTHS, (node,), node.type, node.place))
                return _column(pair.first).cast(pl.Int64), _column(pair.second).cast(pl.Int64)
            case Steps():
                bits = _column(self.ends(node).first).cast(pl.Int64)
                low = bits.bitwise_trailing_zeros().cast(pl.Int64)
                return low, pl.lit(63, pl.Int64) - bits.bitwise_leading_zeros().cast(pl.Int64)
            case _:
                pair = self.ends(node)
                return _column(pair.first).cast(pl.Int64), _column(pair.second).cast(pl.Int64)

    def group(self, name: str, nodes: Sequence[Node]) -> None:
        """Ask for a number that rows of this frame with the same values have in common; not recorded is a value too."""
        import polars as pl

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

    def _numbered(self, node: Node, *, unknown: bool) -> tuple[Any, int]:
        """The number of a value in each row, and how many there are; the value itself, and 0, where they are not known."""
        import polars as pl

        value = self.expressions.node(node)
        if isinstance(value, Coded):
            found = [one_value(node.type, reading) for reading in value.readings]
            different = {each: i for i, each in enumerate(dict.fromkeys(each for each in found if each is not None))}
            last = len(different)
            codes = [different.get(each, last if unknown else None) for each in found]
            table = pl.lit(pl.Series(codes, dtype=pl.Int64))
            column = value.column.column.cast(pl.UInt32).fill_null(len(value.readings) - 1)
            return table.gather(column), last + 1
        made = self._one_value(node)
        return made if isinstance(made, pl.Expr) else pl.lit(made), 0

    def _one_value(self, node: Node) -> Any:
        import polars as pl

        match node.type:
            case Numeric():
                pair = self.ends(apply(ops.MILLIONTHS, (node,), node.type, node.place))
                return _where_same(pair, lambda end: end.cast(pl.Int64))
            case Truth():
                return _where_same(self.ends(node), lambda end: end.cast(pl.Int64))
            case PlaceWords():
                return _where_same(self.ends(node), lambda end: end.cast(pl.Int64))
            case Steps():
                bits = _column(self.ends(node).first)
                return pl.when(bits.bitwise_count_ones() == 1).then(bits.bitwise_trailing_zeros().cast(pl.Int64))
            case TextLabel() | PatternMap() | ColourList():
                return self.ends(node).first
            case _:
                assert_never(node.type)

    def without_rows(self) -> NodeColumns:
        """The same, for keeping: it holds no frame."""
        import polars as pl

        return evolve(self, rows=Rows(pl.DataFrame(), {}, 0))

    def collect(self) -> pl.DataFrame:
        """The columns that were asked for."""
        import polars as pl

        columns = self.rows.columns
        if not columns.width:
            columns = pl.DataFrame({"rows": pl.zeros(self.rows.height, pl.UInt8, eager=True)})
        same = {name: made for name, made in self.wanted.items() if not made.meta.root_names()}
        wanted = [made.alias(name) for name, made in self.wanted.items() if name not in same]
        lazy = (
            self.expressions.stages.collect(columns.lazy(), []).select(wanted) if wanted else columns.lazy().select([])
        )
        engine: Literal["streaming", "in-memory"] = "streaming" if self.rows.height > STREAMED else "in-memory"
        made = lazy.collect(engine=engine, optimizations=pl.QueryOptFlags(comm_subexpr_elim=False))
        constant = [
            pl.select(value.alias(name)).to_series().new_from_index(0, self.rows.height) for name, value in same.items()
        ]
        by_name = {column.name: column for column in (*made.get_columns(), *constant)}
        return pl.DataFrame([by_name[name] for name in self.wanted])


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


def _column(end: Any) -> pl.Expr:
    import polars as pl

    made = filled(end)
    return made if isinstance(made, pl.Expr) else pl.lit(made)


def _where_same(pair: Pair, cast: Any) -> Any:
    import polars as pl

    first = cast(_column(pair.first))
    if pair.sure:
        return first
    second = cast(_column(pair.second))
    return pl.when(first == second).then(first)


def outcome_columns(plan: Plan) -> dict[str, Any]:
    """What came of each row, by the names under which `Expressions.given_outcome` reads it."""
    found: dict[str, Any] = {"score low": plan.score.first, "score high": plan.score.second}
    for name, pair in plan.sections.items():
        found |= {f"section {name} low": pair.first, f"section {name} high": pair.second}
    for (head, name), pair in plan.limits.items():
        if head == "fault":
            found |= {f"fault {name} surely": pair.first, f"fault {name} possibly": pair.second}
    found["grade bits"] = _grade_bits(plan.possible)
    return found


def _grade_bits(planes: Sequence[Any]) -> Any:
    import polars as pl

    bits: Any = pl.lit(0, pl.Int64)
    for i, plane in enumerate(reversed(planes)):
        if isinstance(plane, bool):
            bits = bits + (1 << i if plane else 0)
        else:
            bits = bits + pl.when(plane).then(pl.lit(1 << i, pl.Int64)).otherwise(pl.lit(0, pl.Int64))
    return bits
