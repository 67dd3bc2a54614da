"""Sorters: where two of them looked at the same fish, how alike they read it, over time; and exercises for those who learn."""

from __future__ import annotations

import json
import random
from collections import defaultdict
from collections.abc import Callable, Mapping, Sequence

from attrs import frozen

from koirules_book.book import Book, Look, now
from koirules_book.statistics import Share, share


@frozen
class Agreement:
    """How often two looks at one fish on one day give a trait the same value. sorter: against all others."""

    sorter: str
    trait: str
    year: int
    same: Share


@frozen
class Drift:
    """A trait that a sorter reads less like the others than before: shares of two years whose intervals do not overlap."""

    sorter: str
    trait: str
    before: Agreement
    after: Agreement


def agreements(book: Book, traits: Sequence[str] = ()) -> tuple[Agreement, ...]:
    """The share of alike values, by sorter, trait and year, from days on which several sorters looked at one fish."""
    counts: dict[tuple[str, str, int], list[int]] = defaultdict(lambda: [0, 0])
    pairs = book.db.execute(
        "SELECT a.day, a.sorter, a.record, b.sorter, b.record FROM looks a JOIN looks b"
        " ON a.fish = b.fish AND a.day = b.day AND a.sorter < b.sorter AND a.sorter <> ''"
    )
    for day, one, first, other, second in pairs:
        left, right = json.loads(first), json.loads(second)
        for trait in sorted(left.keys() & right.keys()):
            if trait in _NOT_JUDGED or (traits and trait not in traits):
                continue
            for sorter in (one, other):
                count = counts[sorter, trait, int(day[:4])]
                count[0] += left[trait] == right[trait]
                count[1] += 1
    return tuple(
        Agreement(sorter, trait, year, share(*count)) for (sorter, trait, year), count in sorted(counts.items())
    )


_NOT_JUDGED = frozenset(
    {"batch_name", "pond", "spawning", "bloodline", "sorter", "look_date", "look_number", "note", "photo"}
)


def drifts(found: Sequence[Agreement]) -> tuple[Drift, ...]:
    """Where a sorter agrees less with the others than in the year before: the 95 % intervals lie apart."""
    by_trait: dict[tuple[str, str], dict[int, Agreement]] = defaultdict(dict)
    for one in found:
        by_trait[one.sorter, one.trait][one.year] = one
    drifted = []
    for (sorter, trait), years in sorted(by_trait.items()):
        for before, after in zip(sorted(years), sorted(years)[1:], strict=False):
            if years[after].same.high < years[before].same.low:
                drifted.append(Drift(sorter, trait, years[before], years[after]))
    return tuple(drifted)


def need_training(found: Sequence[Agreement], fewest: int = 10) -> tuple[tuple[str, Share], ...]:
    """The traits in which sorters differ most, the worst first, over all years; those with too few pairs are left out."""
    counts: dict[str, list[int]] = defaultdict(lambda: [0, 0])
    for one in found:
        counts[one.trait][0] += one.same.part
        counts[one.trait][1] += one.same.whole
    shares = [(trait, share(same // 2, whole // 2)) for trait, (same, whole) in counts.items() if whole // 2 >= fewest]
    return tuple(sorted(shares, key=lambda item: (item[1].value, item[0])))


@frozen
class Task:
    """A fish of an exercise. seen: what the record says. settled: the grade that it has."""

    look: Look
    fish: str
    settled: str


def exercise(book: Book, seal: str, count: int, seed: int) -> tuple[Task, ...]:
    """Fish with a settled grade by a standard, as even over the grades as can be, in a drawn order."""
    rows = book.db.execute(
        "SELECT l.id, f.name, g.possible FROM grades g JOIN standards s ON s.id = g.standard"
        " JOIN looks l ON l.id = g.look JOIN fish f ON f.id = l.fish"
        " WHERE s.seal = ? AND json_array_length(g.possible) = 1 ORDER BY l.id",
        (seal,),
    ).fetchall()
    by_grade: dict[str, list[tuple[int, str]]] = defaultdict(list)
    for look, fish, possible in rows:
        by_grade[json.loads(possible)[0]].append((look, fish))
    # Not for secrets: the same seed draws the same fish.
    drawn = random.Random(seed)  # noqa: S311
    for fish in by_grade.values():
        drawn.shuffle(fish)
    chosen: list[tuple[int, str, str]] = []
    while len(chosen) < count and any(by_grade.values()):
        for grade in sorted(by_grade):
            if by_grade[grade] and len(chosen) < count:
                chosen.append((*by_grade[grade].pop(), grade))
    drawn.shuffle(chosen)
    looks = {look.id: look for look in map(_one_look(book), (number for number, _, _ in chosen))}
    return tuple(Task(looks[number], fish, grade) for number, fish, grade in chosen)


def _one_look(book: Book) -> Callable[[int], Look]:
    def found(number: int) -> Look:
        (fish,) = book.db.execute("SELECT fish FROM looks WHERE id = ?", (number,)).fetchone()
        return next(look for look in book.looks(fish) if look.id == number)

    return found


def keep_answers(book: Book, seal: str, sorter: str, answers: Mapping[int, tuple[str, str]]) -> Share:
    """Keep what a sorter answered, by look: the answer and the settled grade. The share that was alike."""
    with book.change() as db:
        (standard,) = db.execute("SELECT id FROM standards WHERE seal = ?", (seal,)).fetchone()
        db.executemany(
            "INSERT INTO exercises (sorter, day, standard, look, answer, settled) VALUES (?, ?, ?, ?, ?, ?)",
            [(sorter, now()[:10], standard, look, answer, settled) for look, (answer, settled) in answers.items()],
        )
    return share(sum(answer == settled for answer, settled in answers.values()), len(answers))
