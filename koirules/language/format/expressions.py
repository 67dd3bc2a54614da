"""Writes expressions: brackets where they are needed, and round an `and` inside an `or`, where a reader wants them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import assert_never

from koirules.language import syntax
from koirules.language.format.pieces import NEVER, WITHIN, Pen
from koirules.language.syntax import Expression, Quantity, Word
from koirules.meaning.expressions import BY_WORDS, Binding
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest

OR, AND, NOT, COMPARISON, SUM, PRODUCT, SIGN, GROWN, ATOM, PRIMARY = Binding


@frozen
class ExpressionWriter:
    """Writes expressions with a pen. bare: only the brackets that are needed."""

    pen: Pen
    bare: bool = False

    def write(self, node: Expression, least: int = OR, level: int = NEVER, depth: int = 0) -> None:
        """Write an expression, in brackets where it binds looser than `least`.

        level: of a break before it. depth: how many operators it lies inside of; the deeper, the later a line breaks there.
        """
        if _binds(node) < least:
            self.pen.opening(level)
            self._written(node, NEVER, depth + 1)
            self.pen.closing()
        else:
            self._written(node, level, depth)

    def _written(self, node: Expression, level: int, depth: int) -> None:
        pen, inner = self.pen, depth + 1
        match node:
            case syntax.AnyOf(parts, _):
                self._chain("or", parts, AND if self.bare else NOT, level, depth)
            case syntax.AllOf(parts, _):
                self._chain("and", parts, NOT, level, depth)
            case syntax.Negated(operand, place):
                pen.words("not", level, place)
                self.write(operand, NOT, NEVER, inner)
            case syntax.Comparison(left, tails, _):
                self.write(left, SUM, level, inner)
                for tail in tails:
                    self._tail(tail, inner)
            case syntax.Arithmetic(first, rest, _):
                self._arithmetic(first, rest, level, depth)
            case syntax.Negative(operand, place):
                pen.minus(level, place)
                self.write(operand, SIGN, NEVER, inner)
            case syntax.GrownTo(operand, target, _):
                self.write(operand, ATOM, level, inner)
                pen.words("grown to", WITHIN + inner)
                self.write(target, _least_of_target(target), NEVER, inner)
            case _:
                self._atom(node, level, inner)

    def _atom(self, node: Expression, level: int, inner: int) -> None:
        pen = self.pen
        match node:
            case Word(text, place):
                pen.words(text, level, place)
            case Quantity():
                pen.words(quantity_words(node), level, node.place)
            case syntax.Text(text, place):
                pen.words(f'"{text}"', level, place)
            case syntax.CountPlaces(operand, place):
                pen.words("count of", level, place)
                self.write(operand, ATOM, NEVER, inner)
            case syntax.CountConditions(items, place):
                pen.words("count of", level, place)
                self.items(items, OR, inner)
            case syntax.Extreme(operator, items, place):
                pen.words(f"{operator} of", level, place)
                self.items(items, OR, inner)
            case syntax.Conditional(value, condition, otherwise, _):
                pen.opening(level)
                self.write(value, OR, NEVER, inner)
                pen.words("if", WITHIN + inner)
                self.write(condition, OR, NEVER, inner)
                pen.words("otherwise", WITHIN + inner)
                self.write(otherwise, OR, NEVER, inner)
                pen.closing()
            case syntax.ScoreRead(place):
                pen.words("score", level, place)
            case syntax.GradeRead(place):
                pen.words("grade", level, place)
            case syntax.SectionRead(name, place):
                pen.words(f"section {name.text}", level, place)
            case syntax.FaultRead(name, place):
                pen.words(f"fault {name.text}", level, place)
            case syntax.Earlier(operand, place):
                pen.words("earlier", level, place)
                self.write(operand, PRIMARY, NEVER, inner)
            case syntax.BatchFigure():
                self._figure(node, level, inner)
            case (
                syntax.AnyOf()
                | syntax.AllOf()
                | syntax.Negated()
                | syntax.Comparison()
                | syntax.Arithmetic()
                | syntax.Negative()
                | syntax.GrownTo()
            ):
                raise AssertionError("an operator among the atoms")
            case _:
                assert_never(node)

    def _chain(self, word: str, parts: Sequence[Expression], least: int, level: int, depth: int) -> None:
        for i, part in enumerate(parts):
            if i:
                self.pen.words(word, WITHIN + depth)
            self.write(part, least, NEVER if i else level, depth + 1)

    def _arithmetic(self, first: Expression, rest: Sequence[tuple[str, Expression]], level: int, depth: int) -> None:
        is_sum = rest[0][0] in "+-"
        least = PRODUCT if is_sum else SIGN
        self.write(first, least, level, depth + 1)
        for sign, operand in rest:
            self.pen.words(sign, WITHIN + depth + (0 if is_sum else 1))
            self.write(operand, least, NEVER, depth + 1)

    def _tail(self, tail: syntax.Tail, depth: int) -> None:
        comparison = BY_WORDS[tail.operator]
        self.pen.words(comparison.spelled(negated=tail.negated), WITHIN + depth, tail.place)
        if comparison.value.joints is None:
            self.items(tail.operands, SUM, depth)
            return
        for joint, operand in zip(comparison.value.joints, tail.operands, strict=True):
            if joint:
                self.pen.words(joint)
            self.write(operand, SUM, NEVER, depth + 1)

    def _figure(self, node: syntax.BatchFigure, level: int, depth: int) -> None:
        pen = self.pen
        figure = node.figure if node.percent is None else f"{node.figure} {shortest(node.percent)}"
        pen.words(f"batch {figure} of", level, node.place)
        self.write(node.operand, PRIMARY, NEVER, depth)
        if node.among_same:
            pen.words("among the same", WITHIN + depth)
            names(pen, node.among_same)
        if node.among_kept is not None:
            pen.words("among those kept by", WITHIN + depth)
            pen.words(node.among_kept.text, at=node.among_kept.place)
        if node.recorded_at_least is not None:
            pen.words(f"with {node.recorded_at_least} or more recorded", WITHIN + depth)

    def items(self, items: Sequence[Expression], least: int, depth: int) -> None:
        """Write several expressions in a bracket."""
        self.pen.opening()
        for i, item in enumerate(items):
            if i:
                self.pen.comma()
            self.write(item, least, WITHIN + depth if i else NEVER, depth + 1)
        self.pen.closing()


def names(pen: Pen, words: Sequence[Word]) -> None:
    """Write one name, or several in a bracket."""
    if len(words) == 1:
        pen.words(words[0].text, at=words[0].place)
    else:
        pen.listed(words)


def quantity_words(quantity: Quantity) -> str:
    """A number in its shortest form, with its unit."""
    number = shortest(quantity.value)
    return number if quantity.unit is None else f"{number} {quantity.unit}"


def _least_of_target(target: Expression) -> int:
    # After `grown to` stands a name, a number with its unit, or a bracket.
    is_name = isinstance(target, Word) and _binds(target) == PRIMARY
    is_measure = isinstance(target, Quantity) and _binds(target) == ATOM
    return OR if is_name or is_measure or isinstance(target, syntax.Conditional) else PRIMARY + 1


def _binds(node: Expression) -> int:
    match node:
        case syntax.AnyOf():
            return OR
        case syntax.AllOf():
            return AND
        case syntax.Negated():
            return NOT
        case syntax.Comparison():
            return COMPARISON
        case syntax.Arithmetic(_, rest, _):
            return SUM if rest[0][0] in "+-" else PRODUCT
        case syntax.Negative():
            return SIGN
        case Quantity():
            return SIGN if shortest(node.value).startswith("-") else ATOM
        case syntax.GrownTo():
            return GROWN
        case Word(text, _):
            return ATOM if text in {"yes", "no"} else PRIMARY
        case syntax.ScoreRead() | syntax.SectionRead() | syntax.Conditional():
            return PRIMARY
        case _:
            return ATOM
