"""Near names: what somebody may have meant."""

from __future__ import annotations

from collections.abc import Iterable


def distance(one: str, other: str, limit: int) -> int:
    """Edit distance with neighbouring letters swapped counted as one (optimal string alignment), cut off above limit."""
    if abs(len(one) - len(other)) > limit:
        return limit + 1
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        current = [i]
        for j, against in enumerate(other, 1):
            cost = 0 if letter == against else 1
            best = min(row[j] + 1, current[j - 1] + 1, row[j - 1] + cost)
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == against:
                best = min(best, before[j - 2] + 1)
            current.append(best)
        before, row = row, current
        if min(row) > limit:
            return limit + 1
    return row[-1]


def near(word: str, known: Iterable[str]) -> str | None:
    """The known name that is nearest to a word, or None where none is near; the first of equals."""
    low = word.casefold()
    best: str | None = None
    best_key = (10_000, 1)
    for name in known:
        other = name.casefold()
        limit = max(1, min(3, max(len(low), len(other)) // 3))
        key = (distance(low, other, limit), 0 if low[:1] == other[:1] else 1)
        if low != other and len(low) >= 4 and other.replace("_", "").find(low.replace("_", "")) >= 0:
            key = min(key, (limit, 1))
        if key[0] <= limit and key < best_key:
            best, best_key = name, key
    return best
