"""Problems of rules that are written as one would say them: a word where the language puts it elsewhere."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Edit, Place, Problem


def sentence_for_a_rule(place: Place, sentence: str, rule: str) -> Problem:
    """A sentence where a statement must begin, and the line that most likely says so."""
    return Problem(
        "unknown-head",
        place,
        f'"{sentence}" is a sentence, and no rule.',
        f"As a rule it is most likely: `{rule}`.",
        edit=Edit(place, rule),
    )


def criterion_for(place: Place, words: str, criterion: str) -> Problem:
    """A criterion that does not say which trait it reads, and the whole of it."""
    return Problem(
        "missing-word",
        place,
        f'"{words}" is what the points are for, and not yet which trait they go `by`.',
        f"Write the whole of it: `{criterion}`.",
        edit=Edit(place, criterion),
    )


def rest_is_said(place: Place, sentence: str, grade: str) -> Problem:
    """A sentence about the rest of the fish, which the last grade of the file says."""
    return Problem(
        "unknown-head",
        place,
        f'"{sentence}" is a sentence, and no rule.',
        f"Delete it: the grade that ends with `otherwise` takes the rest, here `{grade}`.",
        edit=Edit(place, ""),
    )


def words_for_a_condition(place: Place, words: str, condition: str) -> Problem:
    """A condition in words of every day."""
    return Problem(
        "unknown-name",
        place,
        f'"{words}" is said in other words than a rule has.',
        f'Write "{condition}".',
        edit=Edit(place, condition),
    )


def not_inside(place: Place, was: str, name: str) -> Problem:
    """`not` inside of a comparison."""
    meant = f"not {name} includes"
    return Problem(
        "turned-round",
        place,
        f'"{was}" does not fit here: `not` stands before the whole comparison.',
        f'Write "{meant}".',
        edit=Edit(place, meant),
    )


def no_before_name(place: Place, name: str, meant: str | None = None) -> Problem:
    """`no` before the name of a trait. meant: what may stand instead, where the kind of the trait is known."""
    cause = f'"no" does not fit before "{name}".'
    if meant is not None and "…" in meant:
        return Problem("no-before-name", place, cause, f"Say which of its words you mean: `{meant}`.")
    if meant is not None:
        return Problem("no-before-name", place, cause, f'Write "{meant}".', edit=Edit(place, meant))
    return Problem(
        "no-before-name",
        place,
        cause,
        f'For a yes-or-no write "not {name}"; for a number or a count "{name} is 0"; for places "count of {name} is 0".',
    )


def in_other_words(place: Place, was: str, meant: str) -> Problem:
    """Words of a sentence, for which the language has its own."""
    return Problem("misspelt-word", place, f'"{was}" does not fit here.', f'Write "{meant}".', edit=Edit(place, meant))


def stands_twice(place: Place, word: str) -> Problem:
    """A word that stands twice in a row."""
    return Problem("not-needed", place, f'"{word}" stands here twice.', "Delete it once.", edit=Edit(place, ""))


def figure_of_several(place: Place, word: str, instead: str) -> Problem:
    """A mean or sum of several values of one fish."""
    cause = f'"{word} of (…)" does not fit here: a {word} of several values of one record is not in the language.'
    return Problem("figure-of-several", place, cause, f'Write "{instead}".', edit=Edit(place, instead))


def recorded_first(place: Place, name: str, *, negated: bool) -> Problem:
    """`recorded` before the name of what was recorded."""
    meant = f"{name} is not recorded" if negated else f"{name} is recorded"
    return Problem(
        "turned-round",
        place,
        f'"recorded" does not fit before "{name}".',
        f'Turn it round: "{meant}".',
        edit=Edit(place, meant),
    )


def name_of_words(place: Place, was: str, name: str) -> Problem:
    """A name of several words, or a number alone."""
    first = ", a letter first" if was[:1].isdigit() else ""
    return Problem(
        "name-in-parts",
        place,
        f'"{was}" cannot be a name: a name is one word of letters, digits and _{first}.',
        f'Write "{name}".',
        edit=Edit(place, name),
    )


def name_or_two(place: Place, first: str, second: str) -> Problem:
    """Two names in a row before a comparison."""
    return Problem(
        "name-in-parts",
        place,
        f'"{first} {second}" are two names in a row.',
        f'Write "{first}_{second}" if it is one name, or put `and` between two conditions.',
    )


def comma_before_outcome(place: Place, instead: str) -> Problem:
    """A comma before what must come of a sample."""
    return Problem(
        "not-needed",
        place,
        "A sample has no comma before its outcome.",
        "Delete the comma.",
        edit=Edit(place, instead),
    )


def places_without_bracket(place: Place, words: Sequence[str]) -> Problem:
    """Several places of a sample without their bracket."""
    meant = f"({', '.join(words)})"
    return Problem(
        "missing-word",
        place,
        f'"{" ".join(words)}" are several values in a row.',
        f'Places stand in a bracket: "{meant}". What a scale or choice could be is joined with `or`.',
        edit=Edit(place, meant),
    )


def names_without_bracket(place: Place, names: Sequence[str], what: str) -> Problem:
    """Several skins or varieties without their bracket. what: "skins" or "varieties"."""
    meant = f"({', '.join(names)})"
    return Problem(
        "missing-word",
        place,
        f"These are {len(names)} {what} in a row.",
        f'Several {what} stand in a bracket: "{meant}".',
        edit=Edit(place, meant),
    )


def no_unit_here(place: Place, word: str, plain: str) -> Problem:
    """A unit behind a number that has none."""
    return Problem(
        "not-needed", place, f'"{word}" does not fit here: {plain}.', f'Delete "{word}".', edit=Edit(place, "")
    )


def weight_behind(place: Place, was: str, number: str) -> Problem:
    """A weight behind what it weighs."""
    return Problem(
        "misplaced",
        place,
        f'"{was}" does not fit here.',
        f'For a weight, write "weight {number}" before `by`.',
    )


def edition_of_words(place: Place, joined: str) -> Problem:
    """An edition with a blank in it."""
    return Problem(
        "name-in-parts",
        place,
        "An edition is one word, of letters, digits, points and hyphens.",
        f'Write "{joined}".',
        edit=Edit(place, joined),
    )


def about_a_number(place: Place, word: str, number: str) -> Problem:
    """A number that is only about right."""
    return Problem(
        "misplaced",
        place,
        f'"{word} {number}" does not say how far off a value may be.',
        "Write both ends, both of them in: `between 45 % and 55 %`.",
    )
