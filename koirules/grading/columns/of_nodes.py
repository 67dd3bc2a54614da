"""Some expressions over the columns of a frame: what the batch asks of each row."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import TYPE_CHECKING, Any, assert_never

from attrs import define, evolve, field

from koirules.grading.columns.codes import spread
from koirules.grading.columns.expressions import Expressions
from koirules.grading.columns.held import CodeColumn, Held, NumberColumn, Profile
from koirules.grading.columns.plan import Plan, planned
from koirules.grading.columns.values import Coded, Pair, filled
from koirules.grading.late_parts import needed_for, order_key
from koirules.grading.node_values import one_value
from koirules.standard import operations as ops
from koirules.standard.parts import Rules, Setting, Term
from koirules.standard.tree import Node, apply
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth

if TYPE_CHECKING:
    import polars as pl


_MOST_PLANS = 128


@define
class Rows:
    """A frame that was read: its columns, how each trait (or value beside the record) is held, and how many rows it has."""

    columns: pl.DataFrame
    held: dict[str, Held]
    height: int

    def with_numbers(self, key: str, low: pl.Series, high: pl.Series | None = None) -> None:
        """Add a value beside the record: doubles, null where it is not recorded."""
        name = f"beside {len(self.columns.columns)}"
        added = [low.alias(name)] if high is None else [low.alias(name), high.alias(f"{name} high")]
        self.columns = self.columns.with_columns(added)
        self.held[key] = NumberColumn(name, low.null_count() > 0, "" if high is None else f"{name} high")

    def with_codes(self, key: str, codes: pl.Series, readings: Sequence[Any]) -> None:
        """Add a value beside the record: codes of readings, null where it is not recorded."""
        name = f"beside {len(self.columns.columns)}"
        self.columns = self.columns.with_columns(codes.alias(name))
        self.held[key] = CodeColumn(name, tuple(readings), codes.null_count() > 0)

    def chosen(self, rows: pl.Series) -> Rows:
        """The rows of these numbers."""
        return Rows(self.columns[rows], dict(self.held), len(rows))

    @property
    def profile(self) -> Profile:
        """How everything is held: what expressions are made for."""
        return tuple(sorted(self.held.items(), key=lambda pair: pair[0]))


@define
class NodeColumns:
    """Expressions of a standard over one frame; columns are asked for, and then worked out together."""

    rows: Rows
    expressions: Expressions
    wanted: dict[str, Any] = field(factory=dict)
    _numbers: dict[str, tuple[int, int]] = field(factory=dict)

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

    def group(self, name: str, nodes: Sequence[Node], *, unknown: bool = False) -> None:
        """Ask for a number that rows with the same values have in common.

        Null where a value is not recorded, or, with unknown, a number of its own.
        """
        import polars as pl

        code: Any = pl.lit(0, pl.Int64)
        numbers, ranked = 1, 0
        for node in nodes:
            column, many = self._numbered(node, unknown=unknown)
            # Where values are many, they are numbered by their rank: as many as there are rows, and one for the unknown.
            code = code * (many or pl.len() + 1) + column
            numbers, ranked = numbers * (many or 1), ranked + (not many)
        self._numbers[name] = numbers, ranked
        self.ask(name, code)

    def numbers(self, name: str) -> int:
        """How many different numbers of a group there can be."""
        numbers, ranked = self._numbers[name]
        return numbers * int((self.rows.height + 1) ** ranked)

    def _numbered(self, node: Node, *, unknown: bool) -> tuple[Any, int]:
        """The number of a value in each row, and how many there are (0: as many as rows, and one more)."""
        import polars as pl

        value = self.expressions.node(node)
        if isinstance(value, Coded):
            # Of a column of codes the readings are few, and known.
            found = [one_value(node.type, reading) for reading in value.readings]
            different = {each: i for i, each in enumerate(dict.fromkeys(each for each in found if each is not None))}
            last = len(different)
            codes = [different.get(each, last if unknown else None) for each in found]
            table = pl.lit(pl.Series(codes, dtype=pl.Int64))
            column = value.column.column.cast(pl.UInt32).fill_null(len(value.readings) - 1)
            return table.gather(column), last + 1
        made = self._one_value(node)
        whole = made if isinstance(made, pl.Expr) else pl.lit(made)
        ranked = whole.rank("dense").cast(pl.Int64) - 1
        return ranked.fill_null(pl.len()) if unknown else ranked, 0

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
        made = lazy.collect(optimizations=pl.QueryOptFlags(comm_subexpr_elim=False))
        constant = [
            pl.select(value.alias(name)).to_series().new_from_index(0, self.rows.height) for name, value in same.items()
        ]
        return pl.DataFrame([*made.get_columns(), *constant]).select(list(self.wanted))


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


def hold_grade(rows: Rows, bits: pl.Series) -> None:
    """Hold the grades still possible, given as bits with the worst first, as what `grade` reads."""
    import polars as pl

    different = bits.unique().sort()
    codes = bits.replace_strict(different, pl.Series(range(len(different)), dtype=pl.UInt32), return_dtype=pl.UInt32)
    rows.with_codes("grade", codes, different.to_list())


__all__ = ["NodeColumns", "Rows", "hold_grade", "outcome_columns"]
