"""Fish in the order that people read them in: the best first."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.results.result import Result


def best_first(grades: Sequence[str], results: Sequence[Result]) -> list[Result]:
    """Results by grade, best first, then by score; what is not settled stands with the best grade it may get, after those.

    Fish that are placed nowhere come last.

    grades: their names, best first.
    """
    rank = {grade: i for i, grade in enumerate(grades)}

    def key(result: Result) -> tuple[object, ...]:
        return (
            bool(result.outside),
            rank[result.possible[0]],
            len(result.possible) > 1,
            -result.score_low,
            -result.score_high,
        )

    return sorted(results, key=key)
