"""What a standard is for, and which of several is the one for a fish."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import frozen

from koirules.vocabulary.spoken import Said


@frozen
class Purpose:
    """The variety and the stage of a standard; None for any."""

    variety: Said | None
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

    A standard for this variety comes before one for any, a standard for this stage before one for any. What is not recorded
    of a fish fits only a standard for any.
    """
    found = [
        place
        for place, purpose in enumerate(purposes)
        if _fits(purpose.variety, wanted.variety, asked=wanted.variety_asked)
        and _fits(purpose.stage, wanted.stage, asked=wanted.stage_asked)
    ]

    def closeness(place: int) -> tuple[bool, bool]:
        return purposes[place].variety is not None, purposes[place].stage is not None

    closest = max(map(closeness, found), default=None)
    return [place for place in found if closeness(place) == closest]


def _fits(purpose: object, wanted: object, *, asked: bool) -> bool:
    return purpose is None or not asked or purpose == wanted
