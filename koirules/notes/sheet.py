"""Notes as a sheet of records: a row for each look at a fish, a column for each trait that was spoken of."""

from __future__ import annotations

from collections.abc import Mapping

from attrs import evolve

from koirules.notes.reader import NotedFish, Notes, cells
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wordings import COMPARISON, DETAIL, FORECAST, NOTE_COLUMNS, READ_BY, UNREAD, UNSURE, VERDICT

LOOK, LOOKED = "look", "looked"

_SEAL_SHOWN = 16


def headings_of(notes: Notes) -> tuple[str, ...]:
    """The headings of the sheet of some notes, the traits in the order of their vocabulary."""
    said = {name for one in (*notes.fish, *([notes.lot] if notes.lot else [])) for name in one.said}
    details = any(one.details for one in notes.fish)
    looks = [LOOK] if any(one.look > 1 for one in notes.fish) else []
    own = [name for name in (*looks, LOOKED) if name not in notes.traits]
    return (
        "fish",
        *own,
        *(name for name in notes.traits if name in said),
        *(name for name in NOTE_COLUMNS if name not in notes.traits and (name != DETAIL or details)),
    )


def latest(notes: Notes) -> tuple[NotedFish, ...]:
    """Each fish once, with what its later looks add to the earlier ones and correct in them."""
    found: dict[str, NotedFish] = {}
    for one in notes.fish:
        before = found.get(one.name)
        found[one.name] = one if before is None else _over(before, one)
    return tuple(found.values())


def _over(before: NotedFish, later: NotedFish) -> NotedFish:
    return evolve(
        later,
        line=before.line,
        said={**before.said, **later.said},
        verdict=later.verdict or before.verdict,
        unsure=tuple(name for name in before.unsure if name not in later.said) + later.unsure,
        forecasts=(*before.forecasts, *later.forecasts),
        comparisons=(*before.comparisons, *later.comparisons),
        details=(*before.details, *later.details),
        unread=(*before.unread, *later.unread),
        phrases={**before.phrases, **later.phrases},
    )


def row_of(fish: NotedFish, notes: Notes) -> dict[str, str]:
    """The row of a fish, by heading. A trait of a house that is named like a column of notes keeps its column."""
    told = {
        LOOK: str(max(fish.look, 1)),
        LOOKED: "yes" if was_looked_at(fish, notes.traits) else "no",
        VERDICT: fish.verdict,
        UNSURE: ", ".join(fish.unsure),
        FORECAST: "; ".join(fish.forecasts),
        COMPARISON: "; ".join(fish.comparisons),
        DETAIL: "; ".join(fish.details),
        UNREAD: "; ".join(fish.unread),
        READ_BY: notes.seal[:_SEAL_SHOWN],
    }
    return {"fish": fish.name, **told, **cells(fish, notes.traits, notes.lot)}


def was_looked_at(fish: NotedFish, traits: Mapping[str, Trait]) -> bool:
    """Whether somebody said anything of a fish that only who looks at it can say."""
    return any(traits[name].by_eye for name in fish.said)
