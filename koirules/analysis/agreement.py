"""How far two judgements of the same fish agree: a table of both, the share that agrees, and Cohen's kappa.

The share has the score interval of Wilson (Probable inference, the law of succession, and statistical inference, Journal of the
American Statistical Association 22, 1927). Kappa is that of Cohen (A coefficient of agreement for nominal scales, Educational
and Psychological Measurement 20, 1960): (p_o - p_e) / (1 - p_e), where p_o is the share that agrees and p_e the share that would
agree if both judged by chance, each with their own shares of the categories. Both from memory; the tests hold them to statsmodels
and scikit-learn.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import sqrt

from koirules.results.result import Result
from koirules.values import frozen

IN, OUT, UNSURE = "in", "out", "unsure"
"""What a sorter says who does not name a grade."""

OPEN = "not settled"
"""What a page says of a fish that two grades or more are possible for."""

_Z = 1.959963984540054
"""The 97.5 % point of the normal distribution."""


@frozen
class Pair:
    """Two judgements of a fish, each one of the categories."""

    fish: str
    first: str
    second: str


@frozen
class Agreement:
    """How far two judgements agree. categories: in order. pairs: every fish that both judged."""

    categories: tuple[str, ...]
    pairs: tuple[Pair, ...]

    @property
    def table(self) -> tuple[tuple[int, ...], ...]:
        """How many fish have each category of the first judgement (rows) and of the second (columns)."""
        counted: dict[tuple[str, str], int] = {}
        for pair in self.pairs:
            key = (pair.first, pair.second)
            counted[key] = counted.get(key, 0) + 1
        return tuple(tuple(counted.get((row, column), 0) for column in self.categories) for row in self.categories)

    @property
    def agreed(self) -> int:
        """How many fish both judge alike."""
        return sum(pair.first == pair.second for pair in self.pairs)

    @property
    def differing(self) -> tuple[Pair, ...]:
        """The fish that they judge differently."""
        return tuple(pair for pair in self.pairs if pair.first != pair.second)

    @property
    def share(self) -> float:
        """The share that agrees, from 0 to 1; 0 without a fish."""
        return self.agreed / len(self.pairs) if self.pairs else 0.0

    @property
    def interval(self) -> tuple[float, float]:
        """The 95 % interval of that share."""
        return wilson(self.agreed, len(self.pairs))

    @property
    def kappa(self) -> float | None:
        """Cohen's kappa; None where both know one category only."""
        return kappa(self.table)


def wilson(agreed: int, number: int) -> tuple[float, float]:
    """The 95 % score interval of a share; 0 to 1 without any."""
    if number == 0:
        return 0.0, 1.0
    share, z2 = agreed / number, _Z * _Z
    middle = (share + z2 / (2 * number)) / (1 + z2 / number)
    half = _Z / (1 + z2 / number) * sqrt(share * (1 - share) / number + z2 / (4 * number * number))
    # At the ends the interval touches 0 and 1 exactly.
    return (0.0 if agreed == 0 else middle - half), (1.0 if agreed == number else middle + half)


def kappa(table: Sequence[Sequence[int]]) -> float | None:
    """Cohen's kappa of a square table; None where chance alone would agree on everything."""
    number = sum(map(sum, table))
    rows = [sum(row) for row in table]
    columns = [sum(column) for column in zip(*table, strict=True)]
    by_chance: int = sum(row * column for row, column in zip(rows, columns, strict=True))
    if by_chance == number * number:
        return None
    agreed: int = sum(table[i][i] for i in range(len(table)))
    return (agreed * number - by_chance) / (number * number - by_chance)


@frozen
class Judging:
    """The categories that judgements are put into.

    grades: of the standard, best first. kept: those that count as in. by_grade: whether verdicts name grades; else both
    are in, out or unsure.
    """

    grades: tuple[str, ...]
    kept: tuple[str, ...]
    by_grade: bool

    @classmethod
    def of(cls, verdicts: Sequence[str], grades: tuple[str, ...], kept: tuple[str, ...] = ()) -> Judging:
        """What verdicts can be compared by: grades where every one names one or is unsure. kept: by default the best grade."""
        named = all(verdict in grades or verdict == UNSURE for verdict in verdicts)
        return cls(grades, kept or grades[:1], named and any(verdict in grades for verdict in verdicts))

    @property
    def categories(self) -> tuple[str, ...]:
        """The categories, best first; what is not settled in the middle of in and out, last of grades."""
        return (*self.grades, OPEN) if self.by_grade else (IN, OPEN, OUT)

    def of_verdict(self, verdict: str) -> str:
        """The category of what a sorter said."""
        if verdict == UNSURE:
            return OPEN
        if self.by_grade or verdict not in self.grades:
            return verdict
        return IN if verdict in self.kept else OUT

    def of_result(self, result: Result) -> str:
        """The category of what the rules say, whatever a person decided."""
        possible = result.by_rules or result.possible
        if self.by_grade:
            return possible[0] if len(possible) == 1 else OPEN
        kept = {grade in self.kept for grade in possible}
        return OPEN if len(kept) > 1 else IN if True in kept else OUT

    def agreement(self, first: Mapping[str, str], second: Mapping[str, str]) -> Agreement:
        """The agreement of two judgements, by the name of the fish, over the fish that both judged."""
        pairs = tuple(Pair(fish, first[fish], second[fish]) for fish in first if fish in second)
        return Agreement(self.categories, pairs)
