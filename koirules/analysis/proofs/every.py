"""Every statement about a standard, in one order."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from attrs import frozen

from koirules.analysis.proofs import parts
from koirules.analysis.proofs.better import better, ordered_traits
from koirules.analysis.proofs.open_answers import with_reason
from koirules.analysis.proofs.prover import Prover
from koirules.analysis.proofs.scores import scores
from koirules.analysis.proofs.statements import KINDS, Statement
from koirules.grading.single import Grader
from koirules.vocabulary.readings import Reading

ABOUT_PARTS = {
    "grade": parts.grades,
    "limit": parts.limits,
    "extra": parts.extras,
    "comparison": parts.conditions,
    "together": parts.together,
    "under": parts.under,
    "score": scores,
}


@frozen
class Proofs:
    """Every statement about a standard, and the ordinary fish that those which show something differ from."""

    ordinary: Mapping[str, Reading]
    statements: tuple[Statement, ...]


def proofs(grader: Grader, progress: Callable[[str], None] = lambda _: None) -> Proofs:
    """What holds for every fish, by a standard with its settings; progress is told which question is next."""
    progress("the fish")
    prover = Prover.of(grader)
    found: list[Statement] = []
    for kind, asked in ABOUT_PARTS.items():
        progress(KINDS[kind])
        found.extend(with_reason(prover, one) for one in asked(prover))
    progress(KINDS["better"])
    whole = Prover.of(grader, whole=True)
    for trait in ordered_traits(whole):
        progress(f"{KINDS['better']}: {trait.name}")
        found.append(with_reason(whole, better(whole, trait)))
    return Proofs(prover.ordinary, tuple(found))
