"""What stands in another place: the fewest of a row that were taken out and put in elsewhere."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Hashable, Sequence
from typing import TypeVar

_T = TypeVar("_T", bound=Hashable)


def moved(old: Sequence[_T], new: Sequence[_T]) -> list[_T]:
    """The fewest of what both rows have whose moves make one order of the other (a longest rising row stays)."""
    at = {one: i for i, one in enumerate(old)}
    here = [one for one in new if one in at]
    ends: list[int] = []
    last: list[int] = []
    before: list[int | None] = []
    for i, one in enumerate(here):
        place = bisect_left(ends, at[one])
        before.append(last[place - 1] if place else None)
        if place == len(ends):
            ends.append(at[one])
            last.append(i)
        else:
            ends[place], last[place] = at[one], i
    stays: set[int] = set()
    link = last[-1] if last else None
    while link is not None:
        stays.add(link)
        link = before[link]
    return [one for i, one in enumerate(here) if i not in stays]


def stands(one: _T, row: Sequence[_T], words: Sequence[str]) -> str:
    """Where something stands in a row: `first`, or behind what; words: of each of the row."""
    place = list(row).index(one)
    return f"after {words[place - 1]}" if place else "first"
