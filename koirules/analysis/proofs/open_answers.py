"""Why a question was not decided, where that is known: what it reads follows from other things by more than the solver has."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence

from attrs import evolve

from koirules.analysis.proofs.prover import Prover
from koirules.analysis.proofs.statements import Outcome, Statement
from koirules.engines.symbolic.grown import is_grown
from koirules.measures.growth import Grower
from koirules.problems.quoting import in_words
from koirules.standard.parts import part_key
from koirules.standard.tree import Node, Recorded, Supplied, walk

_MOST_NAMED = 3
_OF_ONE_PART = {"limit", "extra", "comparison"}


def with_reason(prover: Prover, statement: Statement) -> Statement:
    """A statement; one that was not decided with what it hangs on."""
    if statement.outcome is not Outcome.OPEN:
        return statement
    rules = prover.rules
    roots = [root for part in rules.parts if part_key(part) == statement.about for root in part.roots]
    roots += [term.node for name, term in rules.terms.items() if statement.about == f"term {name}"]
    if statement.kind not in _OF_ONE_PART or not roots:
        roots = [root for part in rules.parts for root in part.roots]
    fish = prover.standing.fish
    reasons = reasons_in(roots, fish.growers, prover.following.derived.intersection(fish.optional))
    return evolve(statement, words=f"{statement.words} ({'; '.join(reasons)})") if reasons else statement


def reasons_in(roots: Iterable[Node], growers: Mapping[str, Grower], may_follow: Collection[str]) -> list[str]:
    """What a question about some expressions hangs on that is more than the solver has, in words.

    growers: what says how figures follow the length, by the key of the grown one. may_follow: traits that may be missing, and
    can follow from others.
    """
    bounded: dict[str, None] = {}
    unknown: dict[str, None] = {}
    recorded: dict[str, None] = {}
    for node in (node for root in roots for node in walk(root)):
        if isinstance(node, Supplied) and is_grown(node):
            grower = growers.get(node.key)
            if grower is None or not grower.is_length:
                (unknown if grower is None else bounded)[node.key] = None
        elif isinstance(node, Recorded) and node.key in may_follow:
            recorded[node.key] = None
    told = (
        (bounded, "of {} the proof knows bounds and not the value", "grown traits"),
        (unknown, "of {} the proof knows nothing, since a map or the like grows first", "grown traits"),
        (recorded, "whether {} is recorded can follow from other traits", "traits"),
    )
    return [words.format(named(tuple(names), many)) for names, words, many in told if names]


def named(names: Sequence[str], many: str) -> str:
    """A few names, or how many of what there are."""
    return in_words(names, "and") if len(names) <= _MOST_NAMED else f"{len(names)} {many}"
