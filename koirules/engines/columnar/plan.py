"""The expressions of one standard over one shape of frame: a program of the frame, lowered."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Literal

import polars as pl

from koirules.engines.columnar.lowering import Lowering
from koirules.meaning.algebra import Ends
from koirules.program.bounds import Bounds
from koirules.program.evaluation import Expressions
from koirules.program.frames import FrameEvaluation, FrameInputs
from koirules.program.graph import Tracer, Value
from koirules.program.held import Held
from koirules.program.holes import HoleTracer
from koirules.program.sums import Sums
from koirules.standard.parts import Setting
from koirules.standard.tree import Node
from koirules.values import frozen

STREAMED = 20_000
"""Frames with more rows than this go through in pieces: the columns in between then stay in the cache of the processor."""


@frozen(eq=False)
class Columns:
    """What is evaluated over one shape of frame, as columns."""

    expressions: Expressions[Value]
    sums: Sums
    lowering: Lowering

    @classmethod
    def of(
        cls, expressions: Expressions[Value], tracer: Tracer, outputs: Iterable[Value], bounds: Bounds | None = None
    ) -> Columns:
        """Ready to lower some outputs, and what else may be asked for. tracer: of the expressions. bounds: of numbers."""
        wanted, known = list(outputs), bounds or Bounds()
        sums = Sums.of(tracer, known, wanted)
        return cls(expressions, sums, Lowering.of(map(sums.rewritten, wanted), known))

    @classmethod
    def of_formula(cls, node: Node, constants: Mapping[str, Setting], held: Mapping[str, Held]) -> Columns:
        """Ready to lower a formula over a frame that holds its traits so."""
        tracer = HoleTracer()
        expressions = Expressions(constants, tracer, FrameInputs(tracer, held))
        return cls.of(expressions, tracer, [end for end in expressions.node(node) if end is not None])

    @classmethod
    def of_nodes(cls, evaluation: FrameEvaluation, nodes: Iterable[Node], outputs: Iterable[Value] = ()) -> Columns:
        """Ready to lower some expressions, and some outputs."""
        ends = [end for node in nodes for end in evaluation.node(node) if end is not None]
        return cls.of(evaluation, evaluation.tracer, [*outputs, *ends], evaluation.bounds)

    def ends(self, node: Node) -> Ends[Value]:
        """Both ends of an expression."""
        return self.expressions.node(node)

    def column(self, value: Value) -> pl.Expr:
        """The expression of a value; of a constant a literal, which is one row long."""
        return self.lowering.column(self.sums.rewritten(value))

    def collect(self, frame: pl.DataFrame, rows: int, results: Iterable[pl.Expr]) -> pl.DataFrame:
        """Results over a frame of so many rows, each as long as the frame."""
        wanted = list(results)
        same = {one.meta.output_name(): one for one in wanted if not one.meta.root_names()}
        # A column that is there under another name already is worked out and copied once.
        there = {one.meta.output_name(): _column_in(one) for one in wanted}
        new = [one for one in wanted if (name := one.meta.output_name()) not in same and not there[name]]
        names = list(dict.fromkeys(there[name] or name for name in there if name not in same))
        engine: Literal["streaming", "in-memory"] = "streaming" if rows > STREAMED else "in-memory"
        made = pl.DataFrame()
        if names:
            lazy = self.lowering.collect(frame.lazy(), new).select(names)
            # What expressions have in common is named by the plan.
            made = lazy.collect(engine=engine, optimizations=pl.QueryOptFlags(comm_subexpr_elim=False))
        found = {name: pl.select(one).to_series().new_from_index(0, rows) for name, one in same.items()}
        return pl.DataFrame([found[name] if name in found else made[there[name] or name].alias(name) for name in there])


def _column_in(result: pl.Expr) -> str:
    """The column that a result is, under its own name; "" where it is to be worked out."""
    inner = result.meta.undo_aliases()
    return inner.meta.output_name() if inner.meta.is_column() else ""
