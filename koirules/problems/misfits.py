"""Problems of words that do not fit where they stand in a statement, and of words that are not there."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Edit, Place, Problem


def value_missing(place: Place, after: str) -> Problem:
    """Nothing stands after a word that needs something."""
    what = "condition" if after in {"if", "and", "or", "not", "except", "with"} else "value"
    mend = (
        f'Write the {what} after "{after}", or delete "{after}".'
        if after in {"and", "or", "except"}
        else f'Write the {what} after "{after}".'
    )
    return Problem("missing-value", place, f'A {what} is missing after "{after}".', mend)


def fact_value_missing(place: Place, trait: str) -> Problem:
    """A sample names a trait without its value."""
    return Problem(
        "missing-value",
        place,
        f'A value is missing after "{trait}".',
        "Write the value of each trait after its name; several places stand in a bracket: `(dorsal, tail)`.",
    )


def left_side_missing(place: Place, word: str) -> Problem:
    """A comparison that does not say what is compared."""
    return Problem(
        "missing-value",
        place,
        f'What is compared is missing before "{word}".',
        "A comparison begins with what is compared: `length at least 12 cm`.",
    )


def title_missing(place: Place, head: str, before: str) -> Problem:
    """A standard or a sample has no title."""
    return Problem(
        "missing-title",
        place,
        f'The {head} has no title before "{before}".',
        f'Write its title in quotes after `{head}`: `{head} "Title"`.',
    )


def text_without_quotes(place: Place, text: str) -> Problem:
    """Words where a text in quotes must stand."""
    mended = f'"{text}"'
    return Problem(
        "missing-quotes",
        place,
        f"{text} stands where a text in quotes must stand."
        if " " not in text
        else f'"{text}" are words without quotes.',
        f"Write them in straight double quotes: {mended}" if " " in text else f"Write it in quotes: {mended}",
        edit=Edit(place, mended),
    )


def name_in_quotes(place: Place, text: str) -> Problem:
    """A name in quotes."""
    return Problem(
        "name-in-quotes",
        place,
        f"Here a name, a word or a number must stand, and these have no quotes: {text}.",
        f"Write it without quotes: {text[1:-1]}",
        edit=Edit(place, text[1:-1]),
    )


def name_in_parts(place: Place, was: str, name: str) -> Problem:
    """A name of two words, or with a hyphen."""
    return Problem(
        "name-in-parts",
        place,
        f'"{was}" cannot be a name: a name is one word of letters, digits and _.',
        f'Write "{name}".' if "-" in was else f'Write "{name}"; or, if the last word is a title, put it in quotes.',
        edit=Edit(place, name),
    )


def number_in_parts(place: Place, first: str, second: str) -> Problem:
    """A number with a space inside."""
    return Problem(
        "number-in-parts",
        place,
        f'"{first} {second}" are two numbers in a row.',
        f'If they are one number, write "{first}{second}".',
        edit=Edit(place, f"{first}{second}"),
    )


def rows_missing(place: Place) -> Problem:
    """A criterion ends with its colon."""
    return Problem(
        "missing-value",
        place,
        "The points are missing after the colon.",
        "Write how much each value gives, such as `thin gives 0, strong gives 6`; a further line is indented.",
    )


def row_turned(place: Place, value: str, points: str, whole: Place) -> Problem:
    """A row that begins with the points. whole: where it stands."""
    meant = f"{value} gives {points}"
    return Problem(
        "turned-round",
        place,
        f'"{value}" does not fit here: the points follow "gives".',
        f'Turn it round: "{meant}".',
        edit=Edit(whole, meant),
    )


def value_before_trait(place: Place, value: str, trait: str, fault: str | None) -> Problem:
    """`bent spine` in a condition. fault: the fault whose name the two words make."""
    meant = f"{trait} is {value}"
    also = f', or "{fault}" if you mean that fault' if fault else ""
    return Problem(
        "turned-round",
        place,
        f'"{value}" is a word of {trait}, and the trait comes first.',
        f'Write "{meant}"{also}.',
        edit=Edit(place, meant),
    )


def name_with_a_blank(place: Place, was: str, name: str) -> Problem:
    """The name of a trait, term, setting or fault with a blank in it."""
    return Problem("name-in-parts", place, f'"{was}" is one name.', f'Write "{name}".', edit=Edit(place, name))


def fact_turned(place: Place, value: str) -> Problem:
    """A fact of a sample that begins with the value."""
    return Problem(
        "turned-round",
        place,
        f'"{value}" does not fit here: a sample names the trait first, then its value.',
        "Turn it round: `length 12 cm`.",
    )


def joined_or_compared(place: Place, before: str, word: str) -> Problem:
    """Two words in a row in an expression: a comparison without `is`, or a name in two parts."""
    start = Place(place.file, place.line, place.column, place.line, place.column)
    return Problem(
        "missing-word",
        place,
        f'"is" is missing before "{word}".',
        f'Write "{before} is {word}", or "{before}_{word}" if it is one name.',
        edit=Edit(start, "is "),
    )


def not_needed(place: Place, word: str) -> Problem:
    """A word or sign without which the statement could be read."""
    return Problem(
        "not-needed",
        place,
        f'"{word}" does not fit here and is not needed.',
        "Delete it.",
        edit=Edit(place, ""),
    )


def trailing_comma(place: Place) -> Problem:
    """A comma at the end of a statement."""
    return Problem(
        "not-needed",
        place,
        "The statement ends with a comma.",
        "Delete it, or write what comes after it.",
        edit=Edit(place, ""),
    )


def misplaced(place: Place, word: str, belongs: str) -> Problem:
    """A part of a statement in the wrong place."""
    return Problem("misplaced", place, f'"{word}" stands in the wrong place.', f"Write it {belongs}.")


def own_line(place: Place, head: str) -> Problem:
    """A statement that begins on the line of another."""
    return Problem(
        "own-line",
        place,
        f'A new statement begins with "{head}", but not on a line of its own.',
        "Begin it on the next line, at the left edge.",
        edit=Edit(Place(place.file, place.line, place.column, place.line, place.column), "\n"),
    )


def part_of_a_share(place: Place, percent: str) -> Problem:
    """`20 % of length`."""
    return Problem(
        "part-of-a-share",
        place,
        '"of" does not fit here: % is a unit, and a share of something is a product.',
        f'Multiply by the part of one instead: "{percent} * …".',
    )


def one_of_several(place: Place, word: str) -> Problem:
    """Several values in a bracket after `is`."""
    meant = f"{word} one of"
    return Problem(
        "misspelt-word",
        place,
        f'"{word}" asks for one value, but several stand in the bracket.',
        f'Write "{meant} (…)".',
        edit=Edit(place, meant),
    )


def one_place_at_a_time(place: Place) -> Problem:
    """Several places in a bracket after `includes`."""
    return Problem(
        "one-place",
        place,
        "`includes` asks for one place, but several stand in the bracket.",
        "Ask for each: `P includes tail and P includes dorsal` (or with `or`).",
    )


def wrong_date(place: Place, word: str, meant: str | None) -> Problem:
    """A date that is not written year-month-day."""
    mend = f'Write "{meant}".' if meant else "Write year-month-day, such as 2026-09-30."
    cause = f'"{word}" is not a date of a rule file.'
    return Problem("no-such-date", place, cause, mend, edit=Edit(place, meant) if meant else None)


def wrong_steps(place: Place, was: str, steps: Sequence[str]) -> Problem:
    """The steps of a scale with other signs than `<` between them."""
    meant = " < ".join(steps)
    return Problem(
        "sign-for-word",
        place,
        f'The words of a scale are joined with "<", the lowest first, but here stands "{was}".',
        f'Write "{meant}".',
        edit=Edit(place, meant),
    )


def colours_compared(place: Place) -> Problem:
    """Colour readings compared with something."""
    return Problem(
        "colours-compared",
        place,
        "Colour readings have no value that could be compared; a rule can only ask whether they are recorded.",
        "Ask what is worked out from them, such as `hi_evenness`, `hi_hue` or `shiroji_lightness`.",
    )


def map_compared(place: Place) -> Problem:
    """A map of patches compared with something."""
    return Problem(
        "map-compared",
        place,
        "A map of patches has no value that could be compared; a rule can only ask whether it `is recorded`.",
        "Ask what is measured on it, such as `hi_cover`, `steps` or `odome`.",
    )
