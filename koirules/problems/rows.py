"""Problems of rows of a criterion that are written as one would say them."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Edit, Place, Problem


def rest_of_table(place: Place, was: str) -> Problem:
    """`everything else gives 3`, in other words than the language has."""
    return Problem(
        "misspelt-word",
        place,
        f'"{was}" does not fit here: the row for every other value begins with `anything else`.',
        'Write "anything else".',
        edit=Edit(place, "anything else"),
    )


def row_for_unknown(place: Place, was: str, *, alone: bool = True) -> Problem:
    """`not recorded gives 4`: points for what nobody recorded. alone: the place is that of the row with its comma."""
    return Problem(
        "row-for-unknown",
        place,
        f'"{was}" cannot have a row: a trait that was not recorded may still have any of its values.',
        "Delete the row; what can still be scored is shown as a range.",
        edit=Edit(place, "") if alone else None,
    )


def word_and_beyond(place: Place, was: str, word: str, points: str) -> Problem:
    """`sharp or better gives 10`."""
    return Problem(
        "several-keys",
        place,
        f'"{was}" stands for several words, and each word has a row of its own.',
        f"Write a row for each of them: `{word} gives {points}, … gives {points}`.",
    )


def open_end_of_curve(place: Place, was: str, value: str) -> Problem:
    """`10 cm or less gives 0`: a curve is flat beyond its ends anyway."""
    return Problem(
        "several-keys",
        place,
        f'"{was}" does not fit here: a curve gives the same points before its first value, and after its last.',
        f'Write "{value}".',
        edit=Edit(place, value),
    )


def several_keys(place: Place, was: str, rows: Sequence[str], shape: str) -> Problem:
    """`nidan or sandan gives 8`, `20-45 % gives 8`: one row for two values."""
    meant = ", ".join(rows)
    each = "each word has a row of its own" if shape == "table" else "a curve has a row for each end"
    return Problem(
        "several-keys",
        place,
        f'"{was}" stands for several values: {each}.',
        f'Write "{meant}".',
        edit=Edit(place, meant),
    )
