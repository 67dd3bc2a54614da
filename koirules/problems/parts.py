"""Problems of the parts of a standard, and the warnings about what holds but is likely a slip."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Cell, Edit, Place, Problem, Site
from koirules.problems.quoting import in_words


def header_first(place: Place) -> Problem:
    """The file does not begin with its standard statement."""
    return Problem(
        "header-first",
        place,
        "A rule file begins with its `standard` statement.",
        'Put it first: `standard "title" edition 2026-1 variety kohaku`.',
    )


def header_once(place: Place) -> Problem:
    """A second standard statement."""
    return Problem(
        "header-once",
        place,
        "There is a second `standard` in this file.",
        "Delete it, or move what belongs to it into another file.",
    )


def header_twice(place: Place, what: str) -> Problem:
    """A part of the header stands twice."""
    return Problem("header-part-twice", place, f"`{what}` stands twice in the header.", "Delete one of them.")


def no_edition(place: Place) -> Problem:
    """The header has no edition."""
    return Problem(
        "no-edition",
        place,
        "The standard has no edition.",
        "Add a line such as `edition 2026-1` under the title, two spaces in.",
    )


def no_such_occasion(place: Place, said: str, guess: str | None) -> Problem:
    """The header names a kind of occasion that there is not."""
    edit = Edit(place, guess) if guess else None
    mend = (
        f"Write `for {guess}`."
        if guess
        else "Write `for sorting` or `for show`; what a standard is about follows `variety`."
    )
    return Problem("no-such-occasion", place, f'There is no occasion called "{said}".', mend, edit=edit)


def valid_backwards(place: Place) -> Problem:
    """The validity ends before it begins."""
    return Problem("valid-backwards", place, "The standard would end before it begins.", "Swap the two dates.")


def outside_section(place: Place, head: str, name: str) -> Problem:
    """A criterion above the first section."""
    return Problem(
        "outside-section",
        place,
        f'The {head} "{name}" stands above the first section.',
        "Move it below the `section` that it belongs to.",
    )


def no_worth(place: Place, name: str) -> Problem:
    """A section without its worth."""
    return Problem(
        "no-worth", place, f'The section "{name}" does not say what it is worth.', "Add `worth` and a number."
    )


def empty_section(place: Place, name: str) -> Problem:
    """A section that can give no points."""
    return Problem(
        "empty-section",
        place,
        f'The section "{name}" has no `points` with a weight and a `gives` above 0.',
        "Add one below it, or delete the section.",
    )


def section_too_large(place: Place, name: str) -> Problem:
    """A section whose sums would not be exact."""
    return Problem(
        "section-too-large",
        place,
        f'In the section "{name}", worth x the sum of weight x largest points is above 100,000,000.',
        "Use smaller weights or points: only their ratios count.",
    )


def curve_needs_knots(place: Place) -> Problem:
    """A curve with fewer than two knots."""
    return Problem(
        "too-few-knots",
        place,
        "A curve needs two values or more.",
        "Add another: `0.18 gives 0, 0.24 gives 10`.",
    )


def knots_not_rising(place: Place, before: str, after: str) -> Problem:
    """Knots out of order."""
    return Problem(
        "knots-not-rising",
        place,
        f"The values of a curve must rise, but {after} follows {before}.",
        "Put them in order, the smallest first, each once.",
    )


def number_key(place: Place, key: str, is_a: str, steps: Sequence[str]) -> Problem:
    """A number as the key of a table of words, or a word as the key of a curve."""
    itself = "the number itself, with its unit" if " in " in is_a else "the number itself"
    needs = f"one of: {', '.join(steps)}." if steps else f"{itself}: a name cannot stand before `gives`."
    return Problem("wrong-key", place, f'"{key}" does not fit: this criterion reads {is_a}.', f"Write {needs}")


def anything_else_on_curve(place: Place) -> Problem:
    """`anything else` on a curve."""
    return Problem(
        "anything-else",
        place,
        "`anything else` is for words; a curve is flat before its first and after its last value.",
        "Delete it, or write further values.",
    )


def anything_else_not_last(place: Place) -> Problem:
    """`anything else` stands before another row."""
    return Problem("anything-else", place, "`anything else` must be the last row, once.", "Move it to the end.")


def nothing_else_left(place: Place) -> Problem:
    """`anything else` with no step left for it."""
    return Problem(
        "anything-else", place, "Every value has its own row, so `anything else` is never used.", "Delete it."
    )


def key_twice(place: Place, key: str) -> Problem:
    """A step with two rows."""
    return Problem("key-twice", place, f'"{key}" has two rows.', "Delete one of them.")


def keys_missing(place: Place, missing: Sequence[str]) -> Problem:
    """A table without a row for every step."""
    return Problem(
        "keys-missing",
        place,
        f"There is no row for: {', '.join(missing)}.",
        "Add a row for each, or end with `anything else gives 0`.",
    )


def not_scorable(place: Place, is_a: str) -> Problem:
    """A criterion reads what has neither a curve nor a table."""
    return Problem(
        "not-scorable",
        place,
        f"A criterion reads a number, a count, a scale, a choice or a yes-or-no, but this is {is_a}.",
        "For places use `count of NAME`; for a label use a bonus or a penalty.",
    )


def no_otherwise(place: Place) -> Problem:
    """No `grade … otherwise`."""
    return Problem(
        "no-otherwise",
        place,
        "No grade is left for what meets no other grade's condition.",
        "End the grades with one such as `grade last otherwise`.",
    )


def otherwise_not_last(place: Place) -> Problem:
    """`otherwise` is not on the last grade, or on more than one."""
    return Problem(
        "otherwise-not-last",
        place,
        "`otherwise` belongs to one grade only, the last.",
        "Write the grades best first, the one with `otherwise` at the end.",
    )


def unreachable_grade(place: Place, name: str) -> Problem:
    """A grade whose condition nothing can meet."""
    return Problem(
        "unreachable-grade",
        place,
        f'Nothing can reach the grade "{name}" by its own condition.',
        "Check the numbers against what the sections are worth.",
    )


def after_without_base(place: Place) -> Problem:
    """`after` on a grade of a standard that is based on nothing."""
    return Problem("after-without-base", place, "`after` puts a grade into the grades of a base.", "Delete it.")


def range_backwards(place: Place, low: str, high: str) -> Problem:
    """A range whose low end is not below its high end."""
    return Problem(
        "range-backwards", place, f"The range from {low} to {high} is empty or runs backwards.", "Swap the ends."
    )


def outside_range(place: Place, what: str, low: str, high: str) -> Problem:
    """A value outside the range of its trait or setting."""
    return Problem("outside-range", place, f"{what} lies outside its range, {low} to {high}.", "Check it and its unit.")


def needs_unit(place: Place, name: str, unit: str, edit: Edit | None) -> Problem:
    """A value without the unit, or with the wrong kind of unit, of its trait."""
    what = name if " " in name else f'"{name}"'
    given = f"as {unit}" if " " in unit else f"in {unit}"
    mend = f'Write "{edit.text}".' if edit else f"Give it {given}."
    return Problem("needs-unit", place, f"{what[0].upper()}{what[1:]} is given {given}.", mend, edit=edit)


def wrong_fact(place: Place, name: str, needs: str) -> Problem:
    """A value of a sample that its trait cannot have."""
    return Problem("wrong-fact", place, f'This is not a value of "{name}".', f"It takes {needs}.")


def fact_twice(place: Place, name: str) -> Problem:
    """A sample gives a trait twice."""
    return Problem("fact-twice", place, f'The sample gives "{name}" twice.', "Delete one of them.")


def wrong_outcome(place: Place) -> Problem:
    """`scores from … to …` runs backwards or lies out of bounds."""
    return Problem("wrong-outcome", place, "The lower end must come first.", "Swap the two numbers.")


def lowers_by_so_many(place: Place, written: str, most: int) -> Problem:
    """A fault that lowers by no grade, by parts of one, or by more than there are."""
    return Problem(
        "lowers-by-how-many",
        place,
        f"A fault lowers by 1 to {most} of these grades, and {written} is no such number.",
        "Write how many grades it lowers by, such as `lowers by 1 grade`; for a cap, `no better than` and a grade.",
    )


def bad_setting(name: str, why: str, mend: str) -> Problem:
    """A change of a setting that cannot be made."""
    return Problem("bad-setting", Cell(f"{name}=…"), f'The setting "{name}" cannot be changed like this: {why}.', mend)


# Warnings


def unused(place: Place, kind: str, name: str) -> Problem:
    """A term, setting or house trait that nothing reads."""
    return Problem("unused", place, f'Nothing reads the {kind} "{name}".', "Delete it, or use it.", warning=True)


def unused_section(place: Place) -> Problem:
    """Sections that no grade reads."""
    return Problem(
        "score-unread", place, "No grade, fault or lift reads the score or a section.", "Use `score` in a grade.", True
    )


def knot_outside(place: Place, key: str, low: str, high: str) -> Problem:
    """A knot outside of what can be read."""
    return Problem(
        "knot-outside",
        place,
        f"{key} lies outside of what can be read here, {low} to {high}.",
        "Check the value and its unit.",
        warning=True,
    )


def flat_curve(place: Place, name: str) -> Problem:
    """A criterion that always gives the same."""
    return Problem(
        "flat", place, f'The criterion "{name}" gives the same whatever is recorded.', "Delete it, or mend a row.", True
    )


def steps_left_out(place: Place, trait: str, step: str, left: Sequence[str], *, better: bool, above: bool) -> Problem:
    """`is` with a step of a scale, where the steps beyond it count no less. left: these. above: whether they stand higher."""
    meant = f"{trait} {'at least' if above else 'at most'} {step}"
    return Problem(
        "steps-left-out",
        place,
        f'"{trait} is {step}" leaves out what is {"better" if better else "worse"}: {in_words(left, "and")}.',
        f'Write "{meant}" if that counts too.',
        warning=True,
        edit=Edit(place, meant),
    )


def picks_the_faulty(place: Place, last: str, fault: str, keeping: str) -> Problem:
    """A round that picks and asks nothing of the grade, where a fault puts fish into the last one. keeping: what asks it."""
    first = Place(place.file, place.line, place.column, place.line, place.column)
    return Problem(
        "picks-the-faulty",
        place,
        f'This round also picks fish that "{fault}" puts to {last}: it asks nothing of the grade.',
        f'Put "{keeping}" before "pick" to leave them out.',
        warning=True,
        edit=Edit(first, f"{keeping}\n  "),
    )


def worths_not_100(place: Place, total: str) -> Problem:
    """Worths that do not add up to 100."""
    return Problem(
        "worths-not-100",
        place,
        f"The sections are worth {total} together, not 100.",
        "That is allowed; check that it is meant.",
        warning=True,
    )


def not_valid_today(place: Site, when: str) -> Problem:
    """The standard is used outside the dates that it is valid for."""
    return Problem("not-valid-today", place, f"This edition is {when}.", "Check that it is the right edition.", True)
