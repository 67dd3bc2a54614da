"""Which terms, faults and lifts can be worked out only after the score."""

from __future__ import annotations

from koirules.standard.parts import Limit, Rules, Term
from koirules.standard.tree import FaultRead, ScoreRead, SectionRead, TermRead, walk


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


def order_key(part: Term | Limit) -> str:
    """The key of a part in the order of working out: its head word and its name."""
    return f"term {part.name}" if isinstance(part, Term) else f"{part.head} {part.name}"
