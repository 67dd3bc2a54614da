"""The values that two kinds of trait have in common."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.vocabulary.kinds import Choice, Count, Kind, Number, Places, Scale


def joint_kind(one: Kind, other: Kind) -> Kind | None:
    """The values that two kinds have in common, None where there are none."""
    match one, other:
        case (Count(a), Count(b)):
            return Count(min(a, b))
        case (Number() as a, Number() as b) if a.dimension == b.dimension:
            low, high = max(a.held_low, b.held_low), min(a.held_high, b.held_high)
            ends = (low, high) if a.unit is None else (a.unit.from_held(low), a.unit.from_held(high))
            return Number(a.unit, *ends) if low <= high else None
        case (Scale(a), Scale(b)):
            return Scale(shared) if (shared := _shared(a, b)) else None
        case (Choice(a), Choice(b)):
            return Choice(shared) if (shared := _shared(a, b)) else None
        case (Places(a), Places(b)):
            return Places(shared) if (shared := _shared(a, b)) else None
        case _:
            return one if one == other else None


def _shared(one: Sequence[str], other: Sequence[str]) -> tuple[str, ...]:
    return tuple(word for word in one if word in other)
