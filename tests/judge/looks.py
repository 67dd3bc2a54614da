"""Several looks at one fish (said.md, sections 1 and 6): what is known of it at the last, from the specification alone."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import field, frozen

from tests.judge import model as m
from tests.judge import values as v
from tests.judge.judge import Verdict, judge
from tests.judge.look import Record, look_at, trait_worth
from tests.judge.reckoning import truth
from tests.judge.silence import is_by_eye


@frozen
class Row:
    """A row of one fish: its look, None where it does not say; what was recorded, and what the sorter could not tell."""

    look: int | None
    record: Record
    untold: frozenset[str] = frozenset()


@frozen
class Sorting:
    """What was known of a fish at the end of a sorting."""

    record: dict[str, object] = field(factory=dict)
    untold: frozenset[str] = frozenset()

    def with_look(self, row: Row) -> Sorting:
        """A later look adds and corrects, trait by trait; what it leaves blank stays, and `?` takes it away."""
        kept = {name: said for name, said in self.record.items() if name not in row.untold}
        return Sorting({**kept, **row.record}, (self.untold | row.untold) - row.record.keys())


def sortings(rows: Sequence[Row]) -> list[Sorting]:
    """The sortings of a fish, from its rows in order: a look above 1 goes on with the one before."""
    found: list[Sorting] = []
    for row in rows:
        goes_on = row.look is not None and row.look > 1 and bool(found)
        before = found.pop() if goes_on else Sorting()
        found.append(before.with_look(row))
    return found


def judge_rows(standard: m.Standard, rows: Sequence[Row], carry: Sequence[str] = ()) -> Verdict:
    """Grade a fish by all of its rows. carry: what `carry forward` names: known from the latest sorting that knew it."""
    *earlier, last = sortings(rows)
    carried = {
        name: next(one.record[name] for one in reversed(earlier) if name in one.record)
        for name in carry
        if name not in last.record and name not in last.untold and any(name in one.record for one in earlier)
    }
    record = {**carried, **last.record}
    by_eye = {trait.name for trait in standard.traits if is_by_eye(trait)}
    whole = dict(record)
    if not by_eye.isdisjoint(last.record):
        look = look_at(standard, record, None)
        for one in standard.silence:
            excepted = one.unless is not None and truth(one.unless, look).surely
            if one.trait in record or one.trait in last.untold or excepted:
                continue
            if not any(said_otherwise(standard, one, each.record) for each in earlier):
                whole[one.trait] = one.means
    return judge(standard, whole, recorded=frozenset(record))


def said_otherwise(standard: m.Standard, silent: m.Silent, record: Record) -> bool:
    """Whether an earlier sorting recorded a trait outside of what silence means."""
    trait = next(one for one in standard.traits if one.name == silent.trait)
    return silent.trait in record and not inside(
        trait_worth(trait, record), trait_worth(trait, {silent.trait: silent.means})
    )


def inside(one: v.Worth, other: v.Worth) -> bool:
    """Whether all that a value could be, the other could be too."""
    match one, other:
        case v.Span(low, high), v.Span(least, most):
            return least <= low and high <= most
        case v.Truth(), v.Truth():
            return v.as_set(one) <= v.as_set(other)  # type: ignore[operator]
        case v.Steps(_, some), v.Steps(_, others):
            return some <= others
        case v.PlaceSet(surely, possibly, least, most), v.PlaceSet(sure, could, fewest, most_of_all):
            return sure <= surely and possibly <= could and fewest <= least and most <= most_of_all
        case _:
            raise AssertionError((one, other))
