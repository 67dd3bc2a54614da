"""Types `(A if C otherwise B)`."""

from __future__ import annotations

from koirules.language import syntax
from koirules.language.syntax import Expression, Word
from koirules.meaning import operators as ops
from koirules.problems import values
from koirules.standard.check.typer import Typing
from koirules.standard.tree import Node, apply
from koirules.standard.types import Numeric, Steps, Truth, type_words


def conditional(typer: Typing, expression: syntax.Conditional, expected: Steps | None) -> Node | None:
    """The node of one value or another; `expected`: steps that a bare word in a branch may be."""
    condition = typer.condition(expression.condition)
    if _may_be_step(typer, expression.value):
        # Only the other branch can tell of which scale or choice the word is a step.
        otherwise = typer.node(expression.otherwise, expected)
        value = typer.node(expression.value, expected or _steps_of(otherwise))
    else:
        value = typer.node(expression.value, expected)
        otherwise = typer.node(expression.otherwise, expected or _steps_of(value))
    if value is None or condition is None or otherwise is None:
        return None
    operands = (value, condition, otherwise)
    match value.type, otherwise.type:
        case Numeric(one, whole), Numeric(other, also_whole) if one == other:
            kind = Numeric(one, whole and also_whole)
            return apply(ops.CHOOSE_NUMBER, operands, kind, expression.place)
        case Truth(), Truth():
            return apply(ops.CHOOSE_TRUTH, operands, Truth(), expression.place)
        case Steps() as one_steps, other_steps if one_steps == other_steps:
            return apply(ops.CHOOSE_STEPS, operands, one_steps, expression.place)
    branches = type_words(value.type), type_words(otherwise.type)
    typer.problems.append(values.different_branches(expression.place, *branches))
    return None


def _may_be_step(typer: Typing, expression: Expression) -> bool:
    """Whether an expression is a word that names nothing by itself."""
    return isinstance(expression, Word) and expression.text not in {"yes", "no", *typer.names()}


def _steps_of(node: Node | None) -> Steps | None:
    return node.type if node is not None and isinstance(node.type, Steps) else None
