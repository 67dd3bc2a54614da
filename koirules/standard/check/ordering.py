"""The order in which terms and faults can be worked out, and the circles that prevent one."""

from __future__ import annotations

from collections import deque
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
                waiting.extend((current.operand, *current.among_same))
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


def names_read(expression: Expression) -> Iterator[str]:
    """Every name that an expression may read: its words, steps among them, and those of `among the same`."""
    return (part.text for part in parts_of(expression) if isinstance(part, Word))


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
    """Keys such that each comes after all that it needs, and one circle of each set of keys that need one another.

    Depth first without recursion (Tarjan's strongly connected components); names without a key are ignored, and the
    keys keep their own order where nothing speaks against it.
    """
    order: list[str] = []
    circles: list[list[str]] = []
    number: dict[str, int] = {}
    lowest: dict[str, int] = {}
    unsettled: dict[str, None] = {}
    for start in needs:
        path = [] if start in number else [start]
        waiting: list[Iterator[str]] = []
        while path:
            here = path[-1]
            if here not in number:
                number[here] = lowest[here] = len(number)
                unsettled[here] = None
                waiting.append(iter(needs[here]))
            following = next(waiting[-1], None)
            if following is None:
                waiting.pop()
                path.pop()
                order.append(here)
                if path:
                    lowest[path[-1]] = min(lowest[path[-1]], lowest[here])
                if lowest[here] == number[here]:
                    circles.extend(_circle(here, _settled(here, unsettled), needs))
            elif following in needs and following not in number:
                path.append(following)
            elif following in unsettled:
                lowest[here] = min(lowest[here], number[following])
    return order, circles


def _settled(root: str, unsettled: dict[str, None]) -> set[str]:
    """Take out the keys that were found since a root, itself included: each needs every other."""
    group: set[str] = set()
    while root not in group:
        group.add(unsettled.popitem()[0])
    return group


def _circle(root: str, group: Collection[str], needs: Mapping[str, Sequence[str]]) -> Iterator[list[str]]:
    """The shortest circle within a group that goes through its root, where there is one."""
    before: dict[str, str] = {}
    waiting = deque([root])
    while waiting:
        here = waiting.popleft()
        for following in needs[here]:
            if following == root:
                links = [root]
                while here != root:
                    links.append(here)
                    here = before[here]
                yield [root, *reversed(links)]
                return
            if following in group and following not in before:
                before[following] = here
                waiting.append(following)
