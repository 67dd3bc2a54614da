"""The lines of a standard's grades: from which score on each can be reached by points."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from decimal import Decimal

from koirules.engines.scalar.evaluator import Trace
from koirules.engines.scalar.walking import worked_out
from koirules.meaning.operators import Nature
from koirules.standard.cuts import known_millionths
from koirules.standard.parts import Grade, Rules, Setting
from koirules.standard.reading_nodes import unrounded
from koirules.standard.titles import Titled
from koirules.standard.tree import Apply, Node, ScoreRead, walk
from koirules.values import frozen


@frozen
class GradeLine:
    """A grade with its title, and the lowest score at which its condition can hold.

    score: None where no score is asked for, or none would do.
    """

    name: str
    title: str
    score: Decimal | None


def grade_lines(
    rules: Rules, settings: Mapping[str, Setting], told: Callable[[Titled], str] = lambda title: title.text
) -> tuple[GradeLine, ...]:
    """The line of each grade, best first. told: says a title.

    A condition can hold at a score where it is not a sure no with all else unknown: a grade that asks for a score of 75 and
    for a sound body has its line at 75.
    """
    return tuple(GradeLine(grade.name, told(grade.title), _line(grade, rules, settings)) for grade in rules.grades)


def _line(grade: Grade, rules: Rules, settings: Mapping[str, Setting]) -> Decimal | None:
    condition = grade.condition
    if condition is None or _can_hold(condition, 0, rules, settings):
        return None
    most = sum(section.worth for section in rules.sections)
    tried = sorted({score for score in _cuts(condition, settings) if 0 < score < most} | {most})
    below = 0
    for score in tried:
        if _can_hold(condition, score, rules, settings):
            return Decimal(_first(condition, below, score, rules, settings)).scaleb(-2)
        below = score
    return None


def _first(condition: Node, below: int, score: int, rules: Rules, settings: Mapping[str, Setting]) -> int:
    """The first score that holds, between one that does not and one that does."""
    while score - below > 1:
        middle = (below + score) // 2
        if _can_hold(condition, middle, rules, settings):
            score = middle
        else:
            below = middle
    return score


def _cuts(condition: Node, settings: Mapping[str, Setting]) -> Iterator[int]:
    """The scores, in hundredths, at which a comparison of the score with a known number changes."""
    for node in walk(condition):
        if isinstance(node, Apply) and Nature.COMPARES_NUMBERS in node.operation.nature:
            operands = [unrounded(operand) for operand in node.operands]
            if any(isinstance(operand, ScoreRead) for operand in operands):
                known = [known_millionths(operand, settings) for operand in operands]
                yield from (-(-one // 10_000) + more for one in known if one is not None for more in (0, 1))


def _can_hold(condition: Node, score: int, rules: Rules, settings: Mapping[str, Setting]) -> bool:
    unknown = Trace(
        possible=0,
        by_points=0,
        score=(score, score),
        sections=tuple((0, section.worth) for section in rules.sections),
        points=(),
        extras=(),
        limits=((False, True, False, True, False, True),) * len(rules.limits),
        grades=(),
        terms=(),
    )
    return bool(worked_out(condition, rules, settings, {}, unknown)[1])
