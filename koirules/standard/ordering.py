"""The order in which terms and faults can be worked out, and the circles that prevent one."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from types import MappingProxyType

from koirules.language import syntax
from koirules.language.syntax import Expression, Word


def parts_of(expression: Expression) -> Iterator[Expression]:
    """Every expression in an expression, itself included; without recursion."""
    waiting = [expression]
    while waiting:
        current = waiting.pop()
        yield current
        match current:
            case syntax.Negative(operand, _) | syntax.Negated(operand, _) | syntax.CountPlaces(operand, _):
                waiting.append(operand)
            case syntax.Earlier(operand, _):
                waiting.append(operand)
            case syntax.BatchFigure():
                waiting.append(current.operand)
            case syntax.GrownTo(operand, target, _):
                waiting.extend((operand, target))
            case syntax.Arithmetic(first, rest, _):
                waiting.append(first)
                waiting.extend(operand for _, operand in rest)
            case syntax.AllOf(parts, _) | syntax.AnyOf(parts, _) | syntax.CountConditions(parts, _):
                waiting.extend(parts)
            case syntax.Extreme(_, items, _):
                waiting.extend(items)
            case syntax.Comparison(left, tails, _):
                waiting.append(left)
                waiting.extend(operand for tail in tails for operand in tail.operands)
            case syntax.Conditional(value, condition, otherwise, _):
                waiting.extend((value, condition, otherwise))
            case _:
                pass


def needs_of(
    expression: Expression, terms: Mapping[str, object], steps: Mapping[str, Collection[str]] = MappingProxyType({})
) -> list[str]:
    """What an expression needs worked out before it: `term NAME` and `fault NAME`, in the order they stand.

    steps: the words of each trait; right of a comparison with a trait, a word is one of them and no term.
    """
    found: dict[str, None] = {}
    words: set[int] = set()
    for part in parts_of(expression):
        match part:
            case syntax.Comparison(Word(left), tails, _) if left in steps:
                words.update(
                    id(operand)
                    for tail in tails
                    for operand in tail.operands
                    if isinstance(operand, Word) and operand.text in steps[left]
                )
            case Word(text) if text in terms and id(part) not in words:
                found[f"term {text}"] = None
            case syntax.FaultRead(name, _):
                found[f"fault {name.text}"] = None
            case _:
                pass
    return list(found)


def in_order(needs: Mapping[str, Sequence[str]]) -> tuple[list[str], list[list[str]]]:
    """Keys such that each comes after all that it needs, and the circles among the rest; names without a key are ignored.

    Depth first without recursion; the keys keep their own order where nothing speaks against it.
    """
    order: list[str] = []
    circles: list[list[str]] = []
    state: dict[str, int] = {}
    for start in needs:
        if state.get(start):
            continue
        path: list[str] = [start]
        waiting = [iter(needs[start])]
        state[start] = 1
        while path:
            following = next(waiting[-1], None)
            if following is None:
                waiting.pop()
                done = path.pop()
                state[done] = 2
                order.append(done)
            elif following in needs:
                seen = state.get(following)
                if seen == 1:
                    circles.append([*path[path.index(following) :], following])
                elif seen is None:
                    state[following] = 1
                    path.append(following)
                    waiting.append(iter(needs[following]))
    return order, circles
