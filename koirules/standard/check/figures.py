"""Types what is worked out beside the record: figures of the batch, and the look before this one."""

from __future__ import annotations

from typing import assert_never

from koirules.language import syntax
from koirules.meaning.aggregates import AGGREGATES, Aggregate, Gives, Over
from koirules.meaning.operators import ANY_OF, MILLIONTHS, NUMBER_AT_LEAST
from koirules.problems import Place
from koirules.problems import batch as say
from koirules.standard.check.typer import Typing
from koirules.standard.reading_nodes import recorded, written_alone
from koirules.standard.tree import (
    Constant,
    Earlier,
    FaultRead,
    Figure,
    GradeRead,
    Grown,
    Node,
    ScoreRead,
    SectionRead,
    Supplied,
    Written,
    apply,
    meaning,
    walk,
)
from koirules.standard.types import Numeric, Steps, Truth, Type, type_words
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.readings import Span
from koirules.vocabulary.units import Dimension

_SHARE = Span(0.0, 100.0)


def figure_of(typer: Typing, expression: syntax.BatchFigure) -> Node | None:
    """The node of a figure of the batch."""
    kind, operand = AGGREGATES[expression.figure], expression.operand
    of = typer.condition(operand) if kind.over is Over.CONDITIONS else typer.node(operand)
    same = [in_common(typer, word) for word in expression.among_same]
    percent = expression.percent
    if percent is not None and not 0 <= percent <= 100:
        typer.problems.append(say.percentile_outside(expression.place, shortest(percent)))
        return None
    if of is None or any(node is None for node in same):
        return None
    if not _fits(kind, of.type):
        typer.problems.append(say.figure_needs(operand.place, kind.name, type_words(of.type), kind.over.value))
        return None
    kept_by = "" if expression.among_kept is None else expression.among_kept.text
    least = expression.recorded_at_least or 0
    among = tuple(node for node in same if node is not None)
    written = written_alone(of, typer.silent)
    enough = () if written is None or not least else (_enough(written, among, kept_by, least, expression.place),)
    source = Figure(kind, percent, of, among, kept_by, least, written, enough)
    return _supplied(source, expression.place)


def _supplied(figure: Figure, place: Place) -> Supplied:
    """A figure as what stands beside the record."""
    key = " ".join(
        [
            f"batch {figure.kind}",
            *([] if figure.percent is None else [shortest(figure.percent)]),
            f"of ({meaning(figure.of)})",
            *(f"same ({meaning(node)})" for node in figure.same),
            *([f"kept by {figure.kept_by}"] if figure.kept_by else []),
            *([f"least {figure.least}"] if figure.least else []),
        ]
    )
    return Supplied(key, figure, *_result(figure.kind, figure.of), place)


def _enough(written: Node, same: tuple[Node, ...], kept_by: str, least: int, place: Place) -> Node:
    """A condition that holds where so many fish have a value without what silence means, and is open where they have not.

    It is a figure over those alone: whether that is recorded, or else something that only its value could tell.
    """
    kind = AGGREGATES["share" if isinstance(written.type, Truth) else "lowest"]
    counted = _supplied(Figure(kind, None, written, same, kept_by, least), place)
    low, high = counted.range
    middle = Constant(counted.type, Span((low + high) / 2, (low + high) / 2), place)
    told = apply(NUMBER_AT_LEAST, (counted, middle), Truth(), place)
    return apply(ANY_OF, (recorded(counted, counted, place), told), Truth(), place)


def _fits(kind: Aggregate, of: Type) -> bool:
    """Whether a figure can be one of values of a type."""
    match kind.over:
        case Over.CONDITIONS:
            return isinstance(of, Truth)
        case Over.ORDERED:
            return isinstance(of, Numeric) or (isinstance(of, Steps) and of.ordered)
        case Over.NUMBERS:
            return isinstance(of, Numeric)
        case _:
            assert_never(kind.over)


def _result(kind: Aggregate, of: Node) -> tuple[Type, Span]:
    if kind.gives is Gives.SHARE or not isinstance(of.type, Numeric):
        return Numeric(Dimension.SHARE), _SHARE
    # A figure is a whole millionth, and so are the ends of its range.
    least, most = (MILLIONTHS.range_of((end, end))[0] for end in of.range)
    low, high = least / 1_000_000.0, most / 1_000_000.0
    match kind.gives:
        case Gives.ONE_VALUE:
            return Numeric(of.type.dimension, of.type.whole), Span(low, high)
        case Gives.NUMBER:
            return Numeric(of.type.dimension), Span(low, high)
        case Gives.DIFFERENCE:
            return Numeric(of.type.dimension), Span(0.0, (most - least + 1) // 2 / 1_000_000.0)
        case _:
            assert_never(kind.gives)


def in_common(typer: Typing, word: syntax.Word) -> Node | None:
    """The node of what fish have in common, behind `the same`: as it was written, whatever silence means."""
    if typer.kind_of_name(word.text) is None and word.text not in {"yes", "no"}:
        typer.unknown(word, common=True)
        return None
    node = typer.node(word)
    return None if node is None else written_alone(node, typer.silent) or node


def earlier_of(typer: Typing, expression: syntax.Earlier) -> Node | None:
    """The node of an expression in the look before this one."""
    of = typer.node(expression.operand)
    if of is None:
        return None
    for node in walk(of):
        what = _not_earlier(node)
        if what:
            typer.problems.append(say.earlier_reads(expression.place, what))
            return None
    reach = Span(*of.range) if isinstance(of.type, Numeric) else of.range
    return Supplied(f"earlier ({meaning(of)})", Earlier(of), of.type, reach, expression.place)


def _not_earlier(node: Node) -> str:
    """What a node reads that the look before this one has not; "" where it has."""
    match node:
        case ScoreRead():
            return "the score"
        case SectionRead(name=name):
            return f"section {name}"
        case FaultRead(name=name):
            return f"the fault {name}"
        case GradeRead():
            return "the grade"
        case Supplied(source=source):
            match source:
                case Figure():
                    return "a figure of the batch"
                case Earlier():
                    return "a look before the one before"
                case Grown() | Written():
                    return ""
                case _:
                    assert_never(source)
        case _:
            return ""
