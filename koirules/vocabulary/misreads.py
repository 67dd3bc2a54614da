"""What can be wrong with one value that somebody wrote: a code, a cause and a mend for each, in one place."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import evolve

from koirules.problems.quoting import in_words, quoted
from koirules.values import frozen
from koirules.vocabulary.expected import (
    choose,
    example_of,
    measure_of,
    noun_of,
    range_of,
    stretch_of,
    units_of,
    without_unit,
)
from koirules.vocabulary.kinds import Count, Kind, Number, Places, words_of

_LEAVE_BLANK = "leave the cell blank if it was not recorded"


@frozen
class Misread:
    """Why a value cannot be read.

    code: the stable name of what is wrong. cause: one sentence that says what was read. mend: what to try. offers: the
    values that the mend would have written in its place.
    """

    code: str
    cause: str
    mend: str
    offers: tuple[str, ...] = ()


def with_offers(misread: Misread, kind: Kind, kept: Sequence[str]) -> Misread:
    """A misread that offers only those of its values that can be read where they would stand."""
    if len(kept) == len(misread.offers):
        return misread
    mend = f'Write "{kept[0]}".' if kept else f"{example_of(kind)}, or {_LEAVE_BLANK}."
    return evolve(misread, mend=mend, offers=tuple(kept))


def not_a_number(was: str, kind: Number | Count) -> Misread:
    """A text stands where a number is expected."""
    return Misread("value-not-a-number", f"{quoted(was)} is not a number.", f"{example_of(kind)}, or {_LEAVE_BLANK}.")


def too_long(was: str, kind: Kind) -> Misread:
    """A text that is far longer than any value."""
    return Misread(
        "value-too-long",
        f"{quoted(was)} has {len(was):,} letters, which no value has.",
        f"{example_of(kind)}; a remark belongs in a column of its own.",
    )


def not_recorded_mark(was: str, kind: Kind) -> Misread:
    """A mark or word that may say that nothing is known, or that there is nothing."""
    match kind:
        case Count():
            nothing = ' If you looked and there was none, write "0".'
        case Places():
            nothing = ' If you looked and there was none, write "none"; if there was any, "at least 1 of them".'
        case _:
            nothing = ""
    return Misread(
        "value-mark-for-unknown",
        f"{quoted(was)} is no value.",
        f"If this was not recorded, empty the cell.{nothing}",
    )


def roughly(was: str, kind: Number | Count, better: str | None) -> Misread:
    """A number with a sign or word for about, more or less; better: what it could be, where that can be guessed."""
    return Misread(
        "value-roughly",
        f"{quoted(was)} is not one number, and gives no limits.",
        f'Write the lowest and the highest that it could be, such as "{better or stretch_of(kind)}".',
    )


def joined_by_sign(was: str, better: str) -> Misread:
    """Two values joined by a sign instead of a word."""
    return Misread(
        "value-joined-by-sign",
        f"{quoted(was)} has a sign between two values, and the sign has more than one meaning.",
        f'For what it could be, write "{better}".',
        (better,),
    )


def share_or_part(was: str, share: str, part: str) -> Misread:
    """A bare number of at most 1 where a share is given in %: share, part: the two that it may be."""
    return Misread(
        "value-share-or-part",
        f"{quoted(was)} stands for a share in %, and may be {share} or {part}.",
        f'Write "{share}" if it is that part of the whole, or "{part}" if it is less than one of a hundred.'
        if part != "1 %"
        else f'Write "{share}" if it is all of it, or "{part}" if it is one of a hundred.',
    )


def either_number(was: str, better: str) -> Misread:
    """Numbers joined by `or`."""
    return Misread(
        "value-either-number",
        f'{quoted(was)} joins numbers by "or".',
        f'Write the lowest and the highest that it could be: "{better}".',
        (better,),
    )


def comma_in_number(was: str, whole: str, part: str) -> Misread:
    """A comma before exactly three digits, which may mark thousands or decimals."""
    return Misread(
        "value-comma",
        f"The comma in {quoted(was)} has two meanings.",
        f'Write "{whole}.{part}" for a number with decimals, or "{whole}{part}" for a number in the thousands.',
        (f"{whole}.{part}", f"{whole}{part}"),
    )


def grouped_digits(was: str, better: str) -> Misread:
    """A number whose digits are set in groups."""
    return Misread(
        "value-grouped-digits",
        f"{quoted(was)} has its digits set in groups.",
        f'Write the digits without gaps, and decimals after a point: "{better}".',
        (better,),
    )


def too_many_digits(was: str) -> Misread:
    """A number that is too long for any measure."""
    return Misread(
        "value-too-many-digits",
        f"{quoted(was)} has more digits than a measure can have.",
        "Check the number; six digits after the point are enough.",
    )


def infinite() -> Misread:
    """A number that is infinite."""
    return Misread(
        "value-infinite", "The number is infinite.", f"Write the number that was measured, or {_LEAVE_BLANK}."
    )


def not_whole(was: str) -> Misread:
    """A count that is no whole number."""
    return Misread(
        "value-not-whole",
        f"{quoted(was)} is not a whole number, but this is counted.",
        'Write a whole number; for a count that is not sure, write what it could be, such as "2 to 3".',
    )


def out_of_range(was: str, means: str, kind: Number | Count, better: str | None) -> Misread:
    """A number below or above the range of its trait; means: what it is in the trait's own unit, where that differs."""
    is_what = f" {means}, which" if means else ""
    mend = f'; if it was measured in {better.rpartition(" ")[2]}, write "{better}"' if better else ""
    return Misread(
        "value-out-of-range",
        f"{quoted(was)}{is_what} lies outside the range from {range_of(kind)}.",
        f"Check the number{mend}.",
    )


def ends_swapped(was: str, better: str) -> Misread:
    """The low end stands above the high end."""
    return Misread("value-ends-swapped", f"{quoted(was)} has its higher end first.", f'Write "{better}".', (better,))


def unknown_unit(was: str, kind: Number) -> Misread:
    """A unit that koirules does not know."""
    return Misread(
        "value-unknown-unit",
        f"What follows the number in {quoted(was)} is not a unit that koirules knows.",
        f"Write the number in {in_words(units_of(kind))}.",
    )


def wrong_dimension(was: str, symbol: str, kind: Number) -> Misread:
    """A unit that measures something else."""
    return Misread(
        "value-wrong-unit",
        f"{quoted(was)} is in {symbol}, but this is a {measure_of(kind)}.",
        f"Write the number in {in_words(units_of(kind))}.",
    )


def unit_on_plain(was: str, better: str | None, kind: Number | Count) -> Misread:
    """Something stands behind a number that has no unit."""
    mend = f'Write the number alone: "{better}".' if better else f"Write the number alone, from {range_of(kind)}."
    return Misread(
        "value-unit-not-wanted",
        f"What follows the number in {quoted(was)} does not fit: {without_unit(kind)}.",
        mend,
        (better,) if better else (),
    )


def column_unit_on_plain(symbol: str, kind: Number | Count) -> Misread:
    """A column gives a unit to numbers that have none."""
    return Misread(
        "column-unit-not-wanted",
        f"The column gives its numbers in {symbol}, but {without_unit(kind)}.",
        "Take the unit out of the column's header.",
    )


def became_a_date(was: str, kind: Kind, seen: str | None = None) -> Misread:
    """A date or time, often made by a spreadsheet out of something like `3-4`; seen: what that may have been."""
    sure = next(iter(words_of(kind)), "3-4")
    hint = seen or (stretch_of(kind) if isinstance(kind, Number | Count) else sure)
    return Misread(
        "value-date",
        f"The cell holds the date or time {was}; spreadsheet programs make dates out of entries such as 3-4.",
        f'Set the cell to the format "Text", then write what was seen, such as "{hint}".',
    )


def truth_for_number(was: str, kind: Kind) -> Misread:
    """TRUE or FALSE where something else is expected."""
    return Misread("value-truth", f"The cell holds {was}, which is a yes or no.", f"{example_of(kind)}.")


def places_not_named(was: str, kind: Places) -> Misread:
    """`yes` for a set of places: that there are some, but not which."""
    offer = "at least 1 of them"
    return Misread(
        "value-places-not-named",
        f"{quoted(was)} does not say which places.",
        f'Write "{offer}" if that is all that is known. {choose(kind)}',
        (offer,),
    )


def number_for_word(was: str, kind: Kind) -> Misread:
    """A number where a word is expected."""
    how_many = ' If only their number is known, write it as in "1 of them".' if isinstance(kind, Places) else ""
    cause = f"{quoted(was)} is a number, but a word is expected here."
    return Misread("value-number-for-word", cause, choose(kind) + how_many)


def not_so_many_places(was: str, size: int, kind: Places) -> Misread:
    """A number of places that there cannot be; size: how many there are to choose from."""
    return Misread(
        "value-not-so-many-places",
        f"{quoted(was)} cannot be: there {'is 1 place' if size == 1 else f'are {size} places'} to choose from.",
        f"Write a number from 0 to {size}, the lower one of two first. {choose(kind)}",
    )


def unknown_word(word: str, was: str, kind: Kind, meant: str | None) -> Misread:
    """A step, choice or place that the trait lacks."""
    of = "" if word == was else f" in {quoted(was)}"
    guess = f'Did you mean "{meant}"? ' if meant else ""
    if word.casefold() == "none":
        guess = "It has no word for none: leave the cell blank where there is nothing to say. "
    return Misread("value-unknown-word", f"{quoted(word)}{of} is not {noun_of(kind)}.", guess + choose(kind))


def word_between_places(word: str, was: str, better: str, kind: Places) -> Misread:
    """A word or sign for `and` between places."""
    return Misread(
        "value-unknown-word",
        f"{quoted(word)} in {quoted(was)} is not {noun_of(kind)}.",
        f'Leave out "{word}": write "{better}".',
        (better,),
    )


def no_order(was: str, better: str) -> Misread:
    """A stretch from one choice to another, where choices have no order."""
    return Misread(
        "value-no-order",
        f"{quoted(was)} is a stretch, but these words have no order.",
        f'Write every word that it could be: "{better}".',
        (better,),
    )


def none_with_others(was: str) -> Misread:
    """`none` stands beside a place."""
    return Misread(
        "value-none-with-places",
        f'{quoted(was)} says "none" and names a place as well.',
        'Write "none" alone, or the places alone.',
    )


def list_for_one(kind: Kind) -> Misread:
    """A list where one value is expected."""
    unsure = '; join what it could be by "or"' if words_of(kind) else ""
    return Misread("value-list", "A list stands here, but one value is expected.", f"{example_of(kind)}{unsure}.")


def unknown_object(name: str, kind: Kind) -> Misread:
    """Something that no cell can hold."""
    what = "An object with keys" if name == "dict" else f"A value of the type {name}"
    return Misread("value-of-no-kind", f"{what} cannot be read here.", f"{example_of(kind)}.")
