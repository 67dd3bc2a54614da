"""Problems of what looks at the batch: its figures, earlier looks, alerts and rounds."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Edit, Place, Problem


def figure_needs(place: Place, figure: str, is_a: str, needs: str) -> Problem:
    """A figure of something that it cannot be a figure of."""
    return Problem(
        "figure-of-what",
        place,
        f"`batch {figure} of` needs {needs}, but this is {is_a}.",
        "For how many of the batch something holds, write `batch share of (CONDITION)`.",
    )


def percentile_outside(place: Place, written: str) -> Problem:
    """A percentile that is no share of 100."""
    return Problem(
        "percentile-outside",
        place,
        f"There is no percentile {written}.",
        "Take one from 0 to 100: `batch percentile 10 of …` is where the lowest tenth ends.",
    )


def earlier_reads(place: Place, what: str) -> Problem:
    """`earlier` of something that only the look of today has."""
    return Problem(
        "earlier-of-what",
        place,
        f"`earlier` cannot read {what}: the look before this one is not graded again.",
        "Read traits, or terms made of traits: `earlier kiwa`, `earlier (width / length)`.",
    )


def kept_by_not_here(place: Place) -> Problem:
    """`among those kept by` outside of rounds."""
    return Problem(
        "kept-by-not-here",
        place,
        "`among those kept by` can only stand in a round, since no round has run before grading.",
        "Leave it out, or put this into a round.",
    )


def round_not_before(place: Place, name: str, before: Sequence[str], near: str | None) -> Problem:
    """A round that no round above this one is called."""
    listed = f"Above it there is: {', '.join(before)}." if before else "Above it there is no round."
    return Problem(
        "round-not-before",
        place,
        f'No round above this one is called "{name}".',
        f'Did you mean "{near}"? {listed}' if near else f"{listed} Rounds run in the order of the file.",
        edit=Edit(place, near) if near else None,
    )


def round_part_twice(place: Place, part: str) -> Problem:
    """A part of a round that stands twice."""
    return Problem(
        "round-part-twice", place, f"A round has at most one `{part}`.", "Make a second round of it, or join them."
    )


def round_part_late(place: Place, part: str, after: str) -> Problem:
    """A part of a round that stands behind what comes after it."""
    return Problem(
        "round-part-order",
        place,
        f"`{part}` stands after `{after}`, but belongs before it.",
        "The order is: from …, keep …, pick … with its quotas and ties, send to …, rescues ….",
    )


def only_with_pick(place: Place, part: str) -> Problem:
    """A quota or a rule for ties without a pick."""
    return Problem(
        "only-with-pick",
        place,
        f"`{part}` says how a pick goes, and this round picks none.",
        "Put `pick N by …`, or `pick all by …`, before it.",
    )


def not_an_amount(place: Place, written: str, why: str, near: str | None = None, *, or_share: bool = False) -> Problem:
    """A number of fish that is none. or_share: whether a share of them may stand there too."""
    what, mend = "A number of records", "Write a whole number, or the name of a setting that holds one."
    if or_share:
        what = "A number of records or a share of them"
        mend = "Write a whole number, a share such as `10 %`, or the name of a setting that holds one."
    return Problem(
        "not-an-amount",
        place,
        f"{what} must stand here, but {written} {why}.",
        f'Did you mean "{near}"?' if near else mend,
        edit=Edit(place, near) if near else None,
    )


def not_an_order(place: Place, word: str, is_a: str) -> Problem:
    """Something that fish cannot be put in order by."""
    return Problem(
        "not-an-order",
        place,
        f"`{word}` needs a number, a count or a scale, but this is {is_a}.",
        "For a condition, write `those with …`: those for which it holds come first.",
    )


def not_a_time(place: Place, written: str) -> Problem:
    """A time until the next look that is none."""
    return Problem(
        "not-a-time",
        place,
        f"`again in` needs a time of a day or more, but this is {written}.",
        "Write days, weeks, months or years: `again in 8 weeks`.",
    )


def alert_of_a_fish(place: Place, what: str) -> Problem:
    """An alert that reads something of one fish."""
    return Problem(
        "alert-of-a-fish",
        place,
        f"An alert is about the batch as a whole, and {what} differs from record to record.",
        "Read it through a figure: `batch share of (…) above 33 %`, `batch median of …`.",
    )
