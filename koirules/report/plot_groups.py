"""The fish of a batch in the groups that a plot sets side by side: between two groups a cut fell."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from koirules.records.about import About
from koirules.report.page_words import Wording, fate_word
from koirules.results.course import Fate
from koirules.results.ranking import best_first
from koirules.results.result import Result
from koirules.values import frozen

_ORDER = (Fate.KEPT, Fate.TIED)


@frozen
class Group:
    """Fish that came out alike, best first."""

    title: str
    fish: tuple[Result, ...]


def groups(results: Sequence[Result], about: About) -> tuple[Group, ...]:
    """By the last round that looked at a fish and its fate there, those first that came farthest; without rounds by grade.

    A fish whose grade is not settled stands behind those that have the best grade it could still get.
    """
    wording = Wording.of(results, about)
    ordered = best_first(tuple(wording.grades), results)
    if any(result.course for result in results):
        return _by_round(ordered, about)
    alike = sorted(ordered, key=lambda result: _alike(wording, result))
    return tuple(
        Group(title, tuple(fish)) for title, fish in groupby(alike, lambda result: _grade_title(wording, result))
    )


def _alike(wording: Wording, result: Result) -> tuple[int, bool, tuple[int, ...]]:
    """Brings fish together that got, or could get, the same grades; the sort keeps their order."""
    places = tuple(wording.place[name] for name in result.possible)
    return places[0], result.grade is None, places


def _grade_title(wording: Wording, result: Result) -> str:
    if result.grade is not None:
        return wording.grades[result.grade].title
    return f"not settled ({wording.graded(result)})"


def _by_round(ordered: Sequence[Result], about: About) -> tuple[Group, ...]:
    place = {one.name: number for number, one in enumerate(about.rounds)}

    def came(result: Result) -> tuple[int, int]:
        if not result.course:
            return (1, 0)
        last = result.course[-1]
        return (-place.get(last.round, 0), _ORDER.index(last.fate) if last.fate in _ORDER else len(_ORDER))

    def title(result: Result) -> str:
        if not result.course:
            return "in no round"
        return f"{fate_word(result.course[-1])}: {result.course[-1].title}"

    farthest = sorted(ordered, key=lambda result: (came(result), _place(result)))
    return tuple(Group(title(fish[0]), tuple(fish)) for _, run in groupby(farthest, came) if (fish := list(run)))


def _place(result: Result) -> int:
    """Its place in the order of the pick; what has none keeps its order behind those."""
    place = result.course[-1].place if result.course else None
    return place if place is not None else 1_000_000_000
