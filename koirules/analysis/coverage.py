"""What the samples of a standard reach: outcomes, not lines, so that layout changes nothing.

An outcome is reached where some sample surely shows it: a fault or lift that bites, that does not, that `except` held back;
a bonus or penalty given and not; each step of a table and each piece of a curve; each grade as the settled one.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from koirules.engines.scalar.evaluator import Trace
from koirules.grading.sample_runs import record_of
from koirules.grading.single import Grader
from koirules.meaning.curves import Curve
from koirules.standard.parts import Limit, Points, Sample
from koirules.standard.reading_nodes import unit_shown
from koirules.standard.types import Numeric, Steps
from koirules.standard.wording import number_words


def unreached(grader: Grader) -> tuple[str, ...]:
    """The outcomes that no sample reaches, in words, in the order of the rules."""
    traces = [_trace(grader, sample) for sample in grader.rules.samples]
    return tuple(_missing(grader, traces))


def _trace(grader: Grader, sample: Sample) -> Trace:
    """What comes of the fish of a sample, with what silence means of it."""
    record = record_of(sample, grader.rules)
    return grader.evaluator.run_whole(grader.measured(record).readings)


def _missing(grader: Grader, traces: list[Trace]) -> Iterator[str]:
    rules = grader.rules
    for i, part in enumerate(rules.points):
        yield from _pieces(part, [trace.points[i] for trace in traces])
    for i, extra in enumerate(rules.extras):
        states = {trace.extras[i] for trace in traces}
        if (True, True) not in states:
            yield f"{extra.head} {extra.name} given"
        if (False, False) not in states:
            yield f"{extra.head} {extra.name} not given"
    for i, limit in enumerate(rules.limits):
        yield from _limit(limit, [trace.limits[i] for trace in traces])
    for i, grade in enumerate(rules.grades):
        if not any(trace.possible == 1 << i for trace in traces):
            yield f"grade {grade.name}"


def _limit(limit: Limit, states: list[tuple[bool, bool, bool, bool, bool, bool]]) -> Iterator[str]:
    if not any(state[4] for state in states):
        yield f"{limit.head} {limit.name} biting"
    if not any(not state[5] for state in states):
        yield f"{limit.head} {limit.name} not biting"
    if limit.exception is not None and not any(state[0] and state[2] for state in states):
        yield f"{limit.head} {limit.name} held back by its except"


def _pieces(part: Points, read: list[tuple[object, object, int, int]]) -> Iterator[str]:
    shape = part.shape
    if isinstance(shape, Curve):
        if not isinstance(part.by.type, Numeric):
            raise AssertionError("a curve over something that is no number")
        unit = unit_shown(part.by)
        knots = [number_words(x / 1_000_000, part.by.type, unit) for x in shape.at]
        values = [float(first) for first, second, *_ in read if isinstance(first, int | float) and first == second]
        for (x, y), (low, high) in zip(pairwise(shape.at), pairwise(knots), strict=True):
            if not any(x <= value * 1_000_000 <= y for value in values):
                yield f"points {part.name} between {low} and {high}"
        return
    words = part.by.type.words if isinstance(part.by.type, Steps) else ("no", "yes")
    for i, word in enumerate(words):
        if not any(_is_step(first, second, i) for first, second, *_ in read):
            yield f"points {part.name} at {word}"


def _is_step(first: object, second: object, step: int) -> bool:
    if isinstance(first, bool):
        return first is second and first is (step == 1)
    return first == 1 << step
