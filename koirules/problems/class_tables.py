"""Problems of tables of classes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from koirules.problems.problem import Cell, Place, Problem
from koirules.problems.quoting import in_words, quoted, visible


def no_class_table(name: str, near: str | None, known: Sequence[str]) -> Problem:
    """There is neither a file nor a shipped table of that name."""
    mend = f"Did you mean {quoted(near)}?" if near else f"Name a .toml file, or one of: {', '.join(known)}."
    return Problem("no-class-table", Cell(name), "There is no such table of classes.", mend)


def class_table_unread(file: str, line: int, column: int, why: str) -> Problem:
    """A table is not TOML."""
    return Problem(
        "class-table-unread",
        Place(file, line, column, line, column + 1),
        f"The table cannot be read: {visible(why)}.",
        "A line of a table is `key = value`, with texts in quotes and lists in square brackets.",
    )


def class_key_unknown(file: str, where: str, key: str, near: str | None, known: Sequence[str]) -> Problem:
    """A table has a key that means nothing."""
    return Problem(
        "class-key-unknown",
        Cell(file),
        f"Nothing is called {quoted(key)} {where}.",
        f"Did you mean {quoted(near)}?" if near else f"There can be: {', '.join(known)}.",
    )


def class_key_missing(file: str, where: str, key: str, what: str) -> Problem:
    """A table lacks something that has to be said."""
    return Problem("class-key-missing", Cell(file), f"{quoted(key)} is missing {where}.", f"Write {what}.")


def class_value_wrong(file: str, where: str, key: str, got: str, expected: str) -> Problem:
    """A value of a table is of another kind than it should be."""
    return Problem(
        "class-value-wrong", Cell(file), f"{quoted(key)} {where} is {visible(got)}.", f"It must be {expected}."
    )


def class_named_twice(file: str, what: str, name: str) -> Problem:
    """Two sizes or groups have one name, or one variety is in two groups."""
    return Problem("class-named-twice", Cell(file), f"The {what} {quoted(name)} is there twice.", "Delete one of them.")


def class_said_twice(file: str, first: str, second: str, variety: str) -> Problem:
    """Two entries of a table are the same variety, in other words."""
    return Problem(
        "class-named-twice",
        Cell(file),
        f"{quoted(first)} and {quoted(second)} are the same variety, {quoted(variety)}.",
        "Delete one of them.",
    )


def class_varieties_unknown(file: str, words: Mapping[str, str | None]) -> list[Problem]:
    """A table names varieties or skins that are not installed; those that something near is meant by are told one by one.

    words: what the table has, with the word that is near.
    """
    told: list[tuple[tuple[str, ...], str]] = [
        ((word,), f"Did you mean {quoted(near)}?") for word, near in words.items() if near
    ]
    others = tuple(word for word, near in words.items() if not near)
    if others:
        told.append((others, "Only those that are recorded in just these words come into their groups."))
    return [
        Problem(
            "class-variety-unknown",
            Cell(file),
            f"No variety or skin that is installed is called {', '.join(map(quoted, listed))}.",
            mend,
            warning=True,
        )
        for listed, mend in told
    ]


def class_word_unknown(file: str, row: int, words: str, group: str, near: str | None) -> Problem:
    """Fish are recorded as a variety that neither is installed nor stands in the table."""
    guess = (
        f"Did you mean {quoted(near)}?" if near else "Check the spelling, or install the plugin that has the variety."
    )
    return Problem(
        "class-variety-unknown",
        Cell(file, row, "variety"),
        f"No variety that is installed is called {quoted(words)}, and the table does not name it: it goes into {quoted(group)}.",
        guess,
        warning=True,
    )


def class_name_unfit(file: str, where: str, name: str) -> Problem:
    """A size or group is called by nothing, or by the word for no class."""
    why = "which is what one without a class has" if name.strip() else "which is blank"
    return Problem(
        "class-value-wrong", Cell(file), f'"name" {where} is {quoted(name)}, {why}.', "Give it another name."
    )


def sizes_not_rising(file: str, first: str, second: str) -> Problem:
    """A size does not lie above the one before it."""
    return Problem(
        "sizes-not-rising",
        Cell(file),
        f"The size {quoted(second)} does not lie above {quoted(first)}.",
        "List the sizes from small to large; each begins where the one before it ends.",
    )


def size_upside_down(file: str, name: str) -> Problem:
    """The only end that a size has to itself lies on the wrong side of the other."""
    return Problem(
        "sizes-not-rising",
        Cell(file),
        f"The size {quoted(name)} holds nothing: its upper end does not lie above its lower one.",
        "Check both ends.",
    )


def no_sizes(file: str) -> Problem:
    """There is a list of sizes with nothing in it."""
    return Problem("class-key-missing", Cell(file), "[sizes] has no size.", "List one or more, or leave [sizes] out.")


def size_end_misplaced(file: str, name: str, key: str, only: str) -> Problem:
    """A size says an end that follows from the others."""
    return Problem(
        "size-end-misplaced",
        Cell(file),
        f"{quoted(key)} stands in the size {quoted(name)}, but only the {only} size can have it.",
        "Leave it out: each size begins where the one before it ends.",
    )


def step_without_rounding(file: str) -> Problem:
    """A step is given and nothing is rounded."""
    return Problem(
        "step-without-rounding",
        Cell(file),
        'A "step" is given, but "rounding" is "none".',
        f"Leave the step out, or round {in_words(('down', 'up', 'half up'))}.",
    )


def class_trait_wrong(file: str, trait: str, why: str, near: str | None = None) -> Problem:
    """What the sizes measure is no trait, or is not measured in that unit."""
    return Problem(
        "class-trait-wrong",
        Cell(file),
        f"The sizes go by {quoted(trait)}, which {why}.",
        f"Did you mean {quoted(near)}?"
        if near
        else "Name a trait that is a number, such as length, and a unit that it can be written in.",
    )


def classes_missing(file: str, names: Sequence[str]) -> Problem:
    """A standard reads classes, and no record has one."""
    return Problem(
        "classes-missing",
        Cell(file),
        f"The standard reads {in_words([f'`{name}`' for name in names], 'and')}, and no fish has a class.",
        "Give the table of classes with `--classes`, or add the column.",
        warning=True,
    )


def no_measured_column(file: str, row: int, trait: str, near: str | None) -> Problem:
    """Records lack the column that the sizes go by."""
    mend = (
        f"Did you mean it by {quoted(near)}?"
        if near
        else "Add it, with its unit in the heading, or leave the sizes out."
    )
    return Problem(
        "no-measured-column", Cell(file, row), f"There is no column {quoted(trait)}, by which the sizes go.", mend
    )
