"""From Lark's trees to our own nodes; the one place that knows how Lark lays children out.

`Reading` carries the file's name and the line at which the statement begins, since each statement is parsed on its own.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import Decimal
from typing import Any

from lark import Token, Tree

from koirules.language import syntax
from koirules.language.syntax import Expression, Quantity, Title, Word
from koirules.meaning.expressions import BY_RULE
from koirules.problems import Place
from koirules.values import frozen

Node = Any
"""A Lark tree, a token, or None for an optional part that is not there: Lark does not type its children."""


@frozen
class Builder:
    """Builds the nodes of one statement of a file that begins on the line `offset` + 1."""

    file: str
    offset: int

    def place(self, node: Node) -> Place:
        """The place of a tree or a token in the file."""
        at = node if isinstance(node, Token) else node.meta
        line, end_line = int(at.line or 1), int(at.end_line or 1)
        return Place(
            self.file, line + self.offset, int(at.column or 1), end_line + self.offset, int(at.end_column or 1)
        )

    def word(self, node: Node) -> Word:
        """A name token, or a tree `word` around one."""
        token = node.children[0] if isinstance(node, Tree) else node
        return Word(str(token), self.place(token))

    def maybe_word(self, node: Node) -> Word | None:
        """A word where there is one."""
        return None if node is None else self.word(node)

    def title(self, node: Node) -> Title | None:
        """A title with its further languages."""
        if node is None:
            return None
        first, *rest = node.children
        others: dict[str, str] = {}
        repeated: Word | None = None
        for code, text in zip(rest[::2], rest[1::2], strict=True):
            if str(code) in others:
                repeated = self.word(code)
            others[str(code)] = str(text)[1:-1]
        return Title(str(first)[1:-1], others, self.place(node), repeated)

    def say(self, node: Node) -> Title | None:
        """The words of a `say`."""
        return None if node is None else self.title(node.children[0])

    def quantity(self, node: Node) -> Quantity:
        """`quantity`, `signed` or `measure`: a sign, a number, a unit, some of them missing."""
        sign, number, unit = None, None, None
        for child in node.children:
            if child is None:
                continue
            if isinstance(child, Tree):
                unit = str(child.children[0])
            elif child.type == "SUM_SIGN":
                sign = str(child)
            else:
                number = Decimal(str(child))
        if number is None:
            raise AssertionError(f"the grammar gives a quantity without a number: {node}")
        # `-number` would round to the digits of the context.
        return Quantity(number.copy_negate() if sign == "-" else number, unit, self.place(node))

    def maybe_quantity(self, node: Node) -> Quantity | None:
        """A quantity where there is one."""
        return None if node is None else self.quantity(node)

    def expression(self, node: Node) -> Expression:
        """Any expression."""
        return _BUILD[node.data](self, node)

    def expressions(self, nodes: list[Node]) -> tuple[Expression, ...]:
        """Several expressions."""
        return tuple(self.expression(node) for node in nodes)


def _tail(build: Builder, node: Node) -> syntax.Tail:
    comparison = BY_RULE[node.data]
    negated, operands = False, node.children
    if comparison.value.negated:
        negated, operands = operands[0] is not None, operands[1:]
    return syntax.Tail(comparison.value.words, negated, build.expressions(operands), build.place(node))


def _chain(build: Builder, node: Node) -> Expression:
    first, *rest = node.children
    pairs = zip(rest[::2], rest[1::2], strict=True)
    steps = tuple((str(sign), build.expression(operand)) for sign, operand in pairs)
    return syntax.Arithmetic(build.expression(first), steps, build.place(node))


def _signed(build: Builder, node: Node) -> Expression:
    sign, operand = node.children
    inner = build.expression(operand)
    if sign == "+":
        return inner
    if isinstance(inner, Quantity):
        return Quantity(inner.value.copy_negate(), inner.unit, build.place(node))
    return syntax.Negative(inner, build.place(node))


def _compared(build: Builder, node: Node) -> Expression:
    left, *tails = node.children
    return syntax.Comparison(build.expression(left), tuple(_tail(build, t) for t in tails), build.place(node))


def _conditional(build: Builder, node: Node) -> Expression:
    value, condition, otherwise = build.expressions(node.children)
    return syntax.Conditional(value, condition, otherwise, build.place(node))


def _batch(build: Builder, node: Node) -> Expression:
    figure, operand, same, kept, least = node.children
    percent = Decimal(str(figure.children[1])) if len(figure.children) > 1 else None
    among_same = () if same is None else tuple(build.word(name) for name in same.children[0].children)
    return syntax.BatchFigure(
        str(figure.children[0]),
        percent,
        build.expression(operand),
        among_same,
        None if kept is None else build.word(kept.children[0]),
        None if least is None else int(Decimal(str(least.children[0]))),
        build.place(node),
    )


_BUILD: Mapping[str, Callable[[Builder, Node], Expression]] = {
    "name": lambda b, n: b.word(n.children[0]),
    "yes_or_no": lambda b, n: b.word(n.children[0]),
    "measure": lambda b, n: b.quantity(n),
    "text": lambda b, n: syntax.Text(str(n.children[0])[1:-1], b.place(n)),
    "bracket": lambda b, n: b.expression(n.children[0]),
    "any_of": lambda b, n: syntax.AnyOf(b.expressions(n.children), b.place(n)),
    "all_of": lambda b, n: syntax.AllOf(b.expressions(n.children), b.place(n)),
    "negated": lambda b, n: syntax.Negated(b.expression(n.children[0]), b.place(n)),
    "compared": _compared,
    "added": _chain,
    "multiplied": _chain,
    "signed_value": _signed,
    "grown_to": lambda b, n: syntax.GrownTo(b.expression(n.children[0]), b.expression(n.children[1]), b.place(n)),
    "count_places": lambda b, n: syntax.CountPlaces(b.word(n.children[0]), b.place(n)),
    "count_conditions": lambda b, n: syntax.CountConditions(b.expressions(n.children), b.place(n)),
    "count_earlier": lambda b, n: syntax.CountPlaces(
        syntax.Earlier(b.expression(n.children[0]), b.place(n)), b.place(n)
    ),
    "lesser": lambda b, n: syntax.Extreme("lesser", b.expressions(n.children), b.place(n)),
    "median": lambda b, n: syntax.Extreme("median", b.expressions(n.children), b.place(n)),
    "greater": lambda b, n: syntax.Extreme("greater", b.expressions(n.children), b.place(n)),
    "conditional": _conditional,
    "score_read": lambda b, n: syntax.ScoreRead(b.place(n)),
    "grade_read": lambda b, n: syntax.GradeRead(b.place(n)),
    "section_read": lambda b, n: syntax.SectionRead(b.word(n.children[0]), b.place(n)),
    "fault_read": lambda b, n: syntax.FaultRead(b.word(n.children[0]), b.place(n)),
    "earlier": lambda b, n: syntax.Earlier(b.expression(n.children[0]), b.place(n)),
    "batch": _batch,
}
