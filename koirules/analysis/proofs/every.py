"""Every statement about a standard, in one order."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from time import process_time

from koirules.analysis.proofs import parts
from koirules.analysis.proofs.better import better, ordered_traits
from koirules.analysis.proofs.open_answers import with_reason
from koirules.analysis.proofs.prover import OutOfTimeError, Prover
from koirules.analysis.proofs.rounds import rounds
from koirules.analysis.proofs.scores import scores
from koirules.analysis.proofs.statements import KINDS, Statement
from koirules.grading.single import Grader
from koirules.values import frozen
from koirules.vocabulary.readings import Reading

ABOUT_PARTS = {
    "grade": parts.grades,
    "limit": parts.limits,
    "extra": parts.extras,
    "comparison": parts.conditions,
    "together": parts.together,
    "under": parts.under,
    "score": scores,
    "round": rounds,
}


@frozen
class Proofs:
    """Every statement about a standard, and the ordinary fish that those which show something differ from.

    unreached: the questions that no time was left for.
    """

    ordinary: Mapping[str, Reading]
    statements: tuple[Statement, ...]
    unreached: tuple[str, ...] = ()


def proofs(
    grader: Grader,
    progress: Callable[[str], None] = lambda _: None,
    seconds: float | None = None,
    told: Callable[[str, Proofs], None] = lambda _, __: None,
) -> Proofs:
    """What holds for every fish, by a standard with its settings.

    progress: is told which question is next. seconds: of processor time, after which what is left is named and not asked.
    told: is given each kind of question as soon as it is answered, with its statements.
    """
    until = None if seconds is None else process_time() + seconds
    progress(f"the {grader.rules.subject.many}")
    prover = Prover.of(grader, until=until)
    found: list[Statement] = []
    unreached: list[str] = []
    for kind, asked in ABOUT_PARTS.items():
        progress(KINDS[kind])
        answers: list[Statement] = []
        if _is_over(until) or not _answered(prover, asked(prover), answers):
            unreached.append(f"{KINDS[kind]}, in part" if answers else KINDS[kind])
        found.extend(answers)
        told(kind, Proofs(prover.ordinary, tuple(answers)))
    answers = []
    if not _is_over(until):
        progress(KINDS["better"])
        whole = Prover.of(grader, whole=True, until=until)
        traits = ordered_traits(whole)
        for place, trait in enumerate(traits):
            progress(f"{KINDS['better']}: {trait.name}, {place + 1} of {len(traits)}")
            if not _answered(whole, (better(whole, one) for one in [trait]), answers):
                unreached.append(f"{KINDS['better']}, of {', '.join(one.name for one in traits[place:])}")
                break
    else:
        unreached.append(KINDS["better"])
    told("better", Proofs(prover.ordinary, tuple(answers)))
    return Proofs(prover.ordinary, (*found, *answers), tuple(unreached))


def _is_over(until: float | None) -> bool:
    return until is not None and process_time() >= until


def _answered(prover: Prover, asked: Iterable[Statement], answers: list[Statement]) -> bool:
    """Put the statements into a list; False where the time was over before the last."""
    try:
        for one in asked:
            answers.append(with_reason(prover, one))
    except OutOfTimeError:
        return False
    return True
