"""Which terms, faults and lifts can be worked out only after the score."""

from __future__ import annotations

from collections.abc import Iterable

from koirules.standard.parts import Limit, Rules, Term
from koirules.standard.tree import FaultRead, GradeRead, Node, ScoreRead, SectionRead, TermRead, walk


def late_parts(rules: Rules) -> frozenset[str]:
    """The keys of the terms, faults and lifts that need the score or a section."""
    late: set[str] = set()
    for part in rules.order:
        for root in (part.node,) if isinstance(part, Term) else part.roots:
            for node in walk(root, into_terms=False):
                match node:
                    case ScoreRead() | SectionRead():
                        late.add(order_key(part))
                    case TermRead(name=name) if f"term {name}" in late:
                        late.add(order_key(part))
                    case FaultRead(name=name) if f"fault {name}" in late:
                        late.add(order_key(part))
                    case _:
                        pass
    return frozenset(late)


def reading_grade(rules: Rules) -> frozenset[str]:
    """The keys of the terms that read the grade, which only alerts and rounds can ask for."""
    found: set[str] = set()
    for term in rules.terms.values():
        if any(isinstance(node, GradeRead) for node in walk(term.node)):
            found.add(order_key(term))
    return frozenset(found)


def needed_for(rules: Rules, roots: Iterable[Node]) -> frozenset[str]:
    """The keys of the terms, faults and lifts that expressions need; "score" where they need the sections."""
    limits = {limit.name: limit for limit in rules.limits if limit.head == "fault"}
    criteria = [root for part in rules.criteria for root in part.roots]
    needed: set[str] = set()
    waiting: list[Node] = list(roots)
    more: list[Node]
    while waiting:
        for node in walk(waiting.pop(), into_terms=False):
            match node:
                case TermRead(key=term, node=inner):
                    key, more = f"term {term}", [inner]
                case FaultRead(name=name):
                    key, more = f"fault {name}", list(limits[name].roots)
                case ScoreRead() | SectionRead():
                    key, more = "score", criteria
                case _:
                    continue
            if key not in needed:
                needed.add(key)
                waiting.extend(more)
    return frozenset(needed)


def order_of_grading(rules: Rules) -> tuple[Term | Limit, ...]:
    """The faults and lifts, and the terms that grading a fish needs, in order: alerts and rounds may have terms of their own."""
    needed = needed_for(rules, (root for part in rules.parts for root in part.roots))
    return tuple(part for part in rules.order if isinstance(part, Limit) or order_key(part) in needed)


def order_key(part: Term | Limit) -> str:
    """The key of a part in the order of working out: its head word and its name."""
    return f"term {part.name}" if isinstance(part, Term) else f"{part.head} {part.name}"
