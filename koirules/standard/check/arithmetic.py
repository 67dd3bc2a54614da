"""Types sums, products, signs and the lesser, greater or median of several numbers."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.language import syntax
from koirules.meaning import operators as ops
from koirules.problems import Edit, Place, Problem, values
from koirules.standard.check.guesses import hyphened
from koirules.standard.check.typer import Typing
from koirules.standard.numbers import share_meant, written
from koirules.standard.tree import Constant, Node, apply
from koirules.standard.types import Numeric, type_words
from koirules.vocabulary.units import Dimension

_NAMES = {"lesser": ops.LESSER, "greater": ops.GREATER, "median": ops.MEDIAN}
MOST_IN_MEDIAN = 9


def calculated(typer: Typing, expression: syntax.Negative | syntax.Arithmetic | syntax.Extreme) -> Node | None:
    """The node of a sum, product, sign, or of `lesser of`, `greater of` and `median of`."""
    match expression:
        case syntax.Negative(operand, place):
            node = typer.number(operand, "-")
            if node is None or not isinstance(node.type, Numeric):
                return None
            return held_within(apply(ops.NEGATE, (node,), Numeric(node.type.dimension), place))
        case syntax.Arithmetic(first, rest):
            split = hyphened(first, rest[0][1], typer.names()) if rest[0][0] == "-" else None
            if split is not None:
                typer.problems.append(split)
                return None
            result = typer.number(first, rest[0][0])
            for sign, operand in rest:
                right = typer.number(operand, sign)
                if result is None or right is None:
                    result = None
                    continue
                result = _combined(typer, sign, result, right, operand)
            return result
        case syntax.Extreme(operator, items, place):
            nodes = [typer.number(item, f"{operator} of") for item in items]
            return _extreme(typer, operator, nodes, items, place)


def _combined(typer: Typing, sign: str, left: Node, right: Node, written_right: syntax.Expression) -> Node | None:
    if not isinstance(left.type, Numeric) or not isinstance(right.type, Numeric):
        raise AssertionError("arithmetic over something that is no number")
    place = left.place.to(right.place)
    one, other = left.type.dimension, right.type.dimension
    if sign in {"+", "-"}:
        if one != other:
            typer.problems.append(mismatch(left, right, sign, written_right))
            return None
        kind = Numeric(one)
    elif sign == "*":
        if one is not None and other is not None:
            typer.problems.append(values.product_of_units(place, type_words(left.type), type_words(right.type)))
            return None
        kind = Numeric(one or other)
    else:
        if other is not None and one != other:
            typer.problems.append(values.quotient_of_units(place, type_words(left.type), type_words(right.type)))
            return None
        kind = Numeric(None if one == other else one)
    operation = {"+": ops.ADD, "-": ops.SUBTRACT, "*": ops.MULTIPLY, "/": ops.DIVIDE}[sign]
    node = apply(operation, (left, right), kind, place)
    if sign != "/" and left.type.whole and right.type.whole and node.range[0] >= 0:
        node = apply(operation, (left, right), Numeric(None, whole=True), place)
    low, high = right.range
    # By a divisor that could be 0 the range is everything, but the quotient by one that is nearly 0 still leaves it.
    return held_within(node, surely=sign == "/" and low <= 0 <= high)


def held_within(node: Node, *, surely: bool = False) -> Node:
    """The node, and where its range leaves the limit, the operation that makes such a value any number at all."""
    low, high = node.range
    if not surely and low >= -ops.LIMIT and high <= ops.LIMIT:
        return node
    return apply(ops.HELD_WITHIN, (node,), node.type, node.place)


def _extreme(
    typer: Typing, operator: str, nodes: Sequence[Node | None], items: Sequence[syntax.Expression], place: Place
) -> Node | None:
    good = [node for node in nodes if node is not None]
    if len(good) != len(nodes):
        return None
    first = good[0]
    for node, item in zip(good[1:], items[1:], strict=True):
        if _dimension(node) != _dimension(first):
            typer.problems.append(mismatch(first, node, f"{operator} of", item))
            return None
    whole = all(isinstance(node.type, Numeric) and node.type.whole for node in good)
    if operator == "median":
        if not 2 <= len(good) <= MOST_IN_MEDIAN:
            typer.problems.append(values.median_of_so_many(place, len(good), MOST_IN_MEDIAN))
            return None
        whole = whole and len(good) % 2 == 1
    if len(good) == 1:
        return first
    return apply(_NAMES[operator], tuple(good), Numeric(_dimension(first), whole), place)


def _dimension(node: Node) -> Dimension | None:
    return node.type.dimension if isinstance(node.type, Numeric) else None


def type_shown(node: Node) -> str:
    """What a node is, as a part of a sentence."""
    # A bare number in a rule is a plain number, even where it is whole.
    bare = isinstance(node, Constant) and _dimension(node) is None
    return "a plain number" if bare else type_words(node.type)


def mismatch(left: Node, right: Node, word: str, written_right: syntax.Expression) -> Problem:
    """The problem of two numbers of different dimensions, with the unit to write where one side is a bare number."""
    edit: Edit | None = None
    dimension = _dimension(left)
    if isinstance(right, Constant) and isinstance(written_right, syntax.Quantity) and written_right.unit is None:
        if dimension is Dimension.SHARE and (both := share_meant(written_right)):
            place = left.place.to(right.place)
            return values.share_or_part(place, type_shown(left), type_shown(right), word, *both)
        if dimension is not None:
            edit = Edit(written_right.place, f"{written(written_right)} {dimension.value}")
    elif isinstance(right, Constant) and isinstance(written_right, syntax.Quantity) and dimension is None:
        bare = syntax.Quantity(written_right.value, None, written_right.place)
        edit = Edit(written_right.place, written(bare))
    return values.different_dimensions(left.place.to(right.place), type_shown(left), type_shown(right), word, edit)
