"""What a standard is for, and which of several is the one for a fish."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.values import frozen
from koirules.vocabulary.spoken import Said


@frozen
class Purpose:
    """The varieties and the stage of a standard; no variety or None for any."""

    varieties: tuple[Said, ...]
    stage: str | None


@frozen
class Wanted:
    """The variety and the stage of a fish.

    None where it is not recorded; asked is then whether the batch has a column for it. Without a column nothing is asked.
    """

    variety: Said | None
    stage: str | None
    variety_asked: bool
    stage_asked: bool


def fitting(purposes: Sequence[Purpose], wanted: Wanted) -> list[int]:
    """The places of the standards that are for a fish: one, none, or several between which nothing decides.

    A standard for this variety comes before one for several, and that before one for any; a standard for this stage before
    one for any. What is not recorded of a fish fits only a standard for any.
    """
    found = [
        place
        for place, purpose in enumerate(purposes)
        if _fits(purpose.varieties, wanted.variety, asked=wanted.variety_asked)
        and _fits(() if purpose.stage is None else (purpose.stage,), wanted.stage, asked=wanted.stage_asked)
    ]

    def closeness(place: int) -> tuple[int, bool]:
        named = len(purposes[place].varieties)
        return 2 if named == 1 else min(named, 1), purposes[place].stage is not None

    closest = max(map(closeness, found), default=None)
    return [place for place in found if closeness(place) == closest]


def _fits(purposes: Sequence[object], wanted: object, *, asked: bool) -> bool:
    return not purposes or not asked or wanted in purposes
