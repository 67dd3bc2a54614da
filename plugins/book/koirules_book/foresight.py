"""Did a standard foresee what became of the fish? Grades and scores of then beside an outcome of later.

An outcome is a number (a price) or a yes or no (sold, died, kept again, a grade reached). Only fish with an outcome can
speak; what that leaves unknown is said with each figure.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

import numpy as np
from attrs import field, frozen

from koirules_book.parts_of_score import Parts, parts_of
from koirules_book.statistics import (
    Estimate,
    Share,
    area_under_curve,
    bootstrapped,
    holm,
    p_of_extra_logistic,
    p_of_extra_ranks,
    rank_correlation,
    share,
)

if TYPE_CHECKING:
    from koirules import Result, Standard

FEWEST = 20
"""With fewer fish that have an outcome nothing is said of criteria, and figures carry a warning."""

LEVEL = 0.05
"""A criterion is called telling below this p-value, after Holm's correction for all that were asked."""


@frozen
class OfGrade:
    """One grade: how many fish had it, how many of these have an outcome, and what came.

    happened: the share to which it happened, for a yes or no. median, low, high: of a number, the middle and the quartiles.
    """

    grade: str
    title: str
    fish: int
    known: int
    happened: Share | None = None
    median: float | None = None
    low: float | None = None
    high: float | None = None


@frozen
class OfPart:
    """Whether a criterion or fault told anything beyond the rest.

    p: after Holm's correction. better: whether more of it went with more of the outcome. fish: those to which it gave
    something other than to most.
    """

    kind: str
    name: str
    title: str
    p: float
    better: bool
    fish: int

    @property
    def tells(self) -> bool:
        """Whether it is called telling."""
        return self.p < LEVEL


@frozen
class Foresight:
    """What came of an outcome. correlation: Spearman's, of score and outcome. area: under the curve, for a yes or no."""

    outcome: str
    is_yes_or_no: bool
    fish: int
    known: int
    grades: tuple[OfGrade, ...]
    correlation: Estimate | None
    area: Estimate | None
    parts: tuple[OfPart, ...]
    cautions: tuple[str, ...] = field(factory=tuple)


def foresight(
    standard: Standard,
    results: Sequence[Result],
    outcomes: Mapping[str, float],
    outcome: str,
    *,
    rounds: int = 1000,
    seed: int = 0,
) -> Foresight:
    """How grades and scores of then went with an outcome.

    results: of the looks of then, each fish once, by this standard. outcomes: by fish; 0 and 1 only make a yes or no.
    rounds: of the bootstrap. The same input gives the same figures.
    """
    known = [i for i, result in enumerate(results) if result.fish in outcomes]
    values = np.array([outcomes[results[i].fish] for i in known], dtype=float)
    binary = bool(np.isin(values, (0.0, 1.0)).all())
    parts = parts_of(standard, results)
    scores = parts.scores[known]
    rng = np.random.default_rng(seed)
    correlation = area = None
    if len(known) >= 3:
        correlation = bootstrapped(lambda at: rank_correlation(scores[at], values[at]), len(known), rounds, rng)
        if binary:
            area = bootstrapped(lambda at: area_under_curve(scores[at], values[at]), len(known), rounds, rng)
    of_parts = _parts(parts, known, values, binary=binary) if len(known) >= FEWEST else ()
    return Foresight(
        outcome,
        binary,
        len(results),
        len(known),
        tuple(_grades(standard, results, outcomes, binary=binary)),
        correlation,
        area,
        of_parts,
        tuple(_cautions(standard, results, known, len(of_parts))),
    )


def _grades(
    standard: Standard, results: Sequence[Result], outcomes: Mapping[str, float], *, binary: bool
) -> list[OfGrade]:
    found = []
    titles = standard.grade_titles
    for name in (*standard.grades, None):
        fish = [result.fish for result in results if result.grade == name]
        values = np.array([outcomes[one] for one in fish if one in outcomes])
        if name is None and not fish:
            continue
        told = OfGrade(name or "", titles[name] if name else "not settled", len(fish), len(values))
        if binary:
            found.append(OfGrade(told.grade, told.title, told.fish, told.known, share(int(values.sum()), len(values))))
        elif len(values):
            low, median, high = np.quantile(values, [0.25, 0.5, 0.75])
            found.append(
                OfGrade(told.grade, told.title, told.fish, told.known, None, float(median), float(low), float(high))
            )
        else:
            found.append(told)
    return found


def _parts(parts: Parts, known: Sequence[int], values: np.ndarray, *, binary: bool) -> tuple[OfPart, ...]:
    columns = [
        ("points", name, title, parts.shares[known, i])
        for i, (name, title) in enumerate(zip(parts.criteria, parts.titles, strict=True))
    ]
    columns += [
        ("fault", name, title, parts.bites[known, i].astype(float))
        for i, (name, title) in enumerate(zip(parts.faults, parts.fault_titles, strict=True))
    ]
    varied = [(kind, name, title, column) for kind, name, title, column in columns if np.ptp(column) > 0]
    if not varied:
        return ()
    matrix = np.column_stack([(column - column.mean()) / column.std() for *_, column in varied])
    ones = np.ones((len(values), 1))
    ask = p_of_extra_logistic if binary else p_of_extra_ranks
    asked = [ask(np.hstack([ones, np.delete(matrix, i, axis=1)]), matrix[:, i], values) for i in range(len(varied))]
    adjusted = holm([p for p, _ in asked])
    return tuple(
        OfPart(kind, name, title, p, slope > 0, _unusual(column))
        for (kind, name, title, column), (_, slope), p in zip(varied, asked, adjusted, strict=True)
    )


def _unusual(column: np.ndarray) -> int:
    _, counts = np.unique(column, return_counts=True)
    return int(len(column) - counts.max())


def _cautions(standard: Standard, results: Sequence[Result], known: Sequence[int], asked: int) -> list[str]:
    told = []
    without = len(results) - len(known)
    if without:
        told.append(
            f"{without} of {len(results)} fish have no such outcome. The shares speak of the others alone. Fish that were not "
            "kept are missing here, so a good figure among kept fish does not show that the others were rightly passed over."
        )
        told.append(
            "Among fish that were chosen by score the scores lie closer together: the correlation and the area are then "
            "smaller than they would be among all fish."
        )
    if len(known) < FEWEST:
        told.append(f"{len(known)} fish are too few to say what a criterion tells; {FEWEST} or more are needed.")
    worst = [name for name in standard.grades if sum(results[i].grade == name for i in known) == 0]
    if worst and known:
        titles = standard.grade_titles
        names = ", ".join(titles[name] for name in worst)
        told.append(f"No fish graded {names} has an outcome: nothing is known of what they would have become.")
    if asked > 1:
        told.append(
            f"{asked} criteria and faults were asked about at once. The p-values are made larger for that (Holm 1979); "
            "asking about further outcomes in the same fish makes a chance find more likely again."
        )
    return told
