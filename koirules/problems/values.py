"""Problems of expressions: values that do not go together."""

from __future__ import annotations

from koirules.problems.problem import Edit, Place, Problem


def not_a_condition(place: Place, is_a: str) -> Problem:
    """Something that is no yes-or-no stands where a condition must."""
    mend = "Compare it with something: `… at least 3`, `… is fair`, `… is recorded`."
    if is_a == "a set of places":
        mend = "Count it or ask for a place: `count of … at least 1`, `… includes PLACE`."
    elif is_a.startswith("a label"):
        mend = 'Compare it with texts in quotes: `… is "A"`, `… is one of ("A", "B")`.'
    return Problem(
        "not-a-condition",
        place,
        f"A condition must stand here, but this is {is_a}.",
        mend,
    )


def not_a_number_here(place: Place, is_a: str, word: str) -> Problem:
    """Something that is no number stands where a number must."""
    return Problem(
        "not-a-quantity",
        place,
        f"`{word}` needs numbers, but this is {is_a}.",
        "Use a number or a count; for a scale, compare with one of its words.",
    )


def different_dimensions(place: Place, left: str, right: str, word: str, edit: Edit | None) -> Problem:
    """Two numbers that measure different things."""
    mend = f'Write "{edit.text}".' if edit else "Give both sides in units of the same kind."
    cause = f"`{word}` cannot compare {left} with {right}."
    if word in {"+", "-", "lesser of", "greater of"}:
        cause = f"`{word}` cannot put {left} and {right} together."
    return Problem("different-dimensions", place, cause, mend, edit=edit)


def share_or_part(place: Place, left: str, right: str, word: str, share: str, part: str) -> Problem:
    """A share compared with a bare number below 1, which may be a part of one or a share of its own."""
    return Problem(
        "different-dimensions",
        place,
        f"`{word}` cannot compare {left} with {right}.",
        f'Write "{share}" if you mean that part of the whole, or "{part}" if you mean less than one of a hundred.',
    )


def median_of_so_many(place: Place, many: int, most: int) -> Problem:
    """A median of one value, which it is itself, or of more than there may be."""
    if many < 2:
        mend = "For the median of the whole batch write `batch median of …`; else write the value alone."
        return Problem("median-of-how-many", place, "A median of one value is that value.", mend)
    return Problem(
        "median-of-how-many",
        place,
        f"A median is of {most} values at most, and these are {many}.",
        "Take fewer; or make terms of some of them first.",
    )


def share_needs_unit(place: Place, name: str, share: str, part: str) -> Problem:
    """A bare number below 1 where a share must stand."""
    return Problem(
        "needs-unit",
        place,
        f"{name} is given in %.",
        f'Write "{share}" if you mean that part of the whole, or "{part}" if you mean less than one of a hundred.',
    )


def unit_behind_the_range(place: Place, unit: str, meant: str) -> Problem:
    """A house trait with a unit in its range, but no `in UNIT`."""
    return Problem(
        "needs-unit",
        place,
        f"The range is in {unit}, but the number is not.",
        f'Write "{meant}".',
        edit=Edit(place, meant),
    )


def product_of_units(place: Place, left: str, right: str) -> Problem:
    """A product of two numbers that both have units."""
    return Problem(
        "product-of-units",
        place,
        f"`*` needs a plain number on one side, but here are {left} and {right}.",
        "Leave the unit of one side out, or use another trait.",
    )


def quotient_of_units(place: Place, left: str, right: str) -> Problem:
    """A quotient of different dimensions."""
    return Problem(
        "quotient-of-units",
        place,
        f"`/` divides by a plain number or by a number of the same kind, but here {left} is divided by {right}.",
        "Give both sides in units of the same kind.",
    )


def cannot_compare(place: Place, left: str, right: str, word: str) -> Problem:
    """Two values of kinds that cannot be compared."""
    return Problem(
        "cannot-compare",
        place,
        f"`{word}` cannot compare {left} with {right}.",
        "Compare a number with a number, a scale or choice with one of its words, a label with a text in quotes.",
    )


def label_without_quotes(place: Place, text: str) -> Problem:
    """A label compared with a bare word."""
    mended = f'"{text}"'
    return Problem(
        "missing-quotes",
        place,
        f'No trait, term or setting is called "{text}", and a label is compared with a text in quotes.',
        f"Write it in straight double quotes: {mended}",
        edit=Edit(place, mended),
    )


def loose_step(place: Place, step: str, joint: str, edit: Edit) -> Problem:
    """A step, a place or a text after `or` or `and` without its trait."""
    shown = step if step.startswith('"') else f'"{step}"'
    return Problem(
        "loose-step",
        place,
        f"{shown} stands alone, but `{joint}` joins whole conditions.",
        f'Write "{edit.text}".',
        edit=edit,
    )


def no_order(place: Place, is_a: str, word: str) -> Problem:
    """An order comparison of something without order."""
    return Problem(
        "no-order",
        place,
        f"`{word}` needs an order, but {is_a} has none.",
        "Use `is` or `is one of (…)`.",
    )


def needs_a_number(place: Place, is_a: str, word: str, instead: str) -> Problem:
    """A comparison of numbers on something else."""
    return Problem("no-order", place, f"`{word}` needs a number, but this is {is_a}.", f"Use {instead}.")


def includes_needs_places(place: Place, is_a: str, word: str = "includes") -> Problem:
    """`includes` or `count of` on something that is no set of places."""
    return Problem(
        "includes-needs-places",
        place,
        f"`{word}` asks a set of places, but this is {is_a}.",
        "For a scale or choice use `is` or `is one of (…)`.",
    )


def places_compared(place: Place, name: str, meant: str | None = None) -> Problem:
    """A set of places compared with `is`. meant: the condition that `is yes` or `is no` stands for."""
    return Problem(
        "places-compared",
        place,
        "A set of places is asked with `includes`, or counted.",
        f"Write `{meant}`." if meant else f"Write `{name} includes PLACE`, or `count of {name} is 0` for none.",
        edit=Edit(place, meant) if meant else None,
    )


def places_have_no_order(place: Place, name: str, meant: str, edit: Edit) -> Problem:
    """A set of places compared with a number."""
    return Problem(
        "places-compared",
        place,
        f'"{name}" is a set of places, and only their number can be compared with a number.',
        f'Write "{meant}".',
        edit=edit,
    )


def includes_none(place: Place, name: str) -> Problem:
    """`includes none`."""
    meant = f"count of {name} is 0"
    return Problem(
        "places-compared",
        place,
        "`includes` asks for a place, and none is no place.",
        f'Write "{meant}".',
        edit=Edit(place, meant),
    )


def stretch_by_sign(place: Place, low: str, high: str, meant: str, negated: bool) -> Problem:
    """`is 88-100`, where a stretch from one number to another is meant."""
    cause = f"`{low}-{high}` is a difference, {low} less {high}, not a stretch from one to the other."
    if negated:
        return Problem("turned-round", place, cause, f'Put `not` before the whole comparison: "{meant}".')
    return Problem("misspelt-word", place, cause, f'Write "{meant}".', edit=Edit(place, meant))


def recorded_otherwise_said(place: Place, was: str, meant: str) -> Problem:
    """`is unknown` and the like."""
    return Problem(
        "misspelt-word",
        place,
        f'"{was}" does not fit here.',
        f'To ask whether it was recorded, write "{meant}".',
        edit=Edit(place, meant),
    )


def not_recordable(place: Place) -> Problem:
    """`is recorded` on something that nobody records."""
    return Problem(
        "not-recordable",
        place,
        "`is recorded` asks about one trait, or about a term for one trait.",
        "Write the name of one trait before `is recorded`.",
    )


def always_or_never(place: Place, always: bool, why: str) -> Problem:
    """A comparison that the range makes always true or always false."""
    word = "always" if always else "never"
    return Problem(
        f"{word}-true",
        place,
        f"This is {word} true: {why}.",
        "Check the value and its unit, or leave the comparison out.",
    )


def different_branches(place: Place, left: str, right: str) -> Problem:
    """The two values of an `if … otherwise` do not go together, or are of a kind that cannot be chosen."""
    if left == right:
        return Problem(
            "different-branches",
            place,
            f"`(A if C otherwise B)` chooses numbers, conditions or words of a scale or choice, but here is {left}.",
            "Write two statements, one with the condition and one with `not`.",
        )
    return Problem(
        "different-branches",
        place,
        f"Both values of `(A if C otherwise B)` must be of one kind, but here are {left} and {right}.",
        "Use two numbers with units of the same kind, two conditions, or two words of one scale.",
    )


def score_too_early(place: Place, through: str) -> Problem:
    """A criterion reads what is worked out from criteria."""
    return Problem(
        "score-too-early",
        place,
        f"A criterion cannot read {through}, because the score is worked out from the criteria.",
        "Put this into a fault, a lift or a grade.",
    )


def grade_read_early(place: Place) -> Problem:
    """`grade` read outside of rounds and alerts."""
    return Problem(
        "grade-too-early",
        place,
        "`grade` can only be read by alerts and rounds.",
        "Use `score`, `section NAME` or `fault NAME` here.",
    )


def not_exact(place: Place, written: str, most: int) -> Problem:
    """A number with more decimals than the language holds."""
    return Problem(
        "too-many-decimals",
        place,
        f"{written} has more than {most} decimals.",
        f"Round it to {most} decimals.",
    )


def range_not_held(place: Place, symbol: str, told: str, held: str) -> Problem:
    """A trait in a unit of a plugin that no decimal says in the held unit. held: the same, in that unit."""
    return Problem(
        "range-not-held",
        place,
        f"A range in {symbol} cannot be held exactly: 1 {symbol} is {told}, which no decimal says.",
        f"Declare it as `{held}`; records and rules may still say {symbol}.",
        edit=Edit(place, held),
    )


def ends_swapped(place: Place) -> Problem:
    """`between` with its higher end first."""
    return Problem(
        "never-true",
        place,
        "This is never true: the first end of `between` lies above the second.",
        "Write the lower end first.",
    )


def out_of_bounds(place: Place, what: str, low: str, high: str) -> Problem:
    """A number outside of what the language takes there."""
    return Problem("out-of-bounds", place, f"{what} must lie between {low} and {high}.", "Write a number in between.")


def below_zero(place: Place, head: str, amount: str) -> Problem:
    """A bonus or penalty with a minus."""
    if head == "penalty":
        mend = f'A penalty is taken away as it is: write "{amount}".'
        return Problem("out-of-bounds", place, "A penalty has no minus.", mend, edit=Edit(place, amount))
    return Problem("out-of-bounds", place, "A bonus has no minus.", f"Write a `penalty` of {amount} instead.")
