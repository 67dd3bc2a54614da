"""Problems of the text of a rule file: what cannot be read, before anybody asks what it means."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import evolve

from koirules.problems.problem import Cell, Edit, Place, Problem
from koirules.problems.quoting import in_words


def no_such_file(file: str, near: str | None) -> Problem:
    """There is no rule file or rule set of that name."""
    mend = f'Did you mean "{near}"?' if near else "Check the name and the folder, or give the name of a rule set."
    return Problem("no-such-file", Cell(file), f'There is no rule file or rule set "{file}".', mend)


def folder_of_rules(folder: str, files: Sequence[str]) -> Problem:
    """A folder was given where one rule file is needed."""
    return Problem(
        "no-such-file",
        Cell(folder),
        f'"{folder}" is a folder, and one rule file is needed here.',
        f"Give one of its files: {', '.join(files[:6])}{' …' if len(files) > 6 else ''}.",
    )


def unreadable_file(file: str, why: str) -> Problem:
    """The system does not let us read the file."""
    return Problem(
        "unreadable-file", Cell(file), f"The file cannot be opened: {why}.", "Check that it is yours to read."
    )


def not_utf8(place: Place, looks_like: str) -> Problem:
    """The bytes are not UTF-8."""
    return Problem(
        "not-utf8",
        place,
        f"The file is not UTF-8 text here; it looks like {looks_like}.",
        'Open it in a text editor and save it again with the encoding "UTF-8".',
    )


def too_large(file: str, size: int, most: int) -> Problem:
    """The file is larger than a rule file may be."""
    return Problem(
        "too-large",
        Cell(file),
        f"The file has {size:,} bytes; a rule file has {most:,} at most.",
        "Check that this is a rule file and not a table of records.",
    )


def too_many_statements(place: Place, most: int) -> Problem:
    """There are more statements than a rule file may have."""
    return Problem(
        "too-many-statements",
        place,
        f"Here begins statement {most + 1:,}; a rule file has {most:,} at most.",
        "Split the standard, or drop what is not used.",
    )


def nested_too_deep(place: Place, most: int) -> Problem:
    """Brackets, `not` or signs are nested deeper than anybody can read."""
    return Problem(
        "nested-too-deep",
        place,
        f"This is nested more than {most} levels deep.",
        "Give the inner part a name with `term NAME means …` and use the name here.",
    )


def stray_character(place: Place, name: str) -> Problem:
    """A character that cannot be seen or has no meaning here."""
    return Problem(
        "stray-character",
        place,
        f"There is a character here that a rule file cannot hold ({name}).",
        "Delete it; it often comes along when text is copied from another program.",
        edit=Edit(place, ""),
    )


def wrong_quotes(place: Place, was: str, text: str) -> Problem:
    """Quotes of a word processor, or single quotes."""
    return Problem(
        "wrong-quotes",
        place,
        f"The text {was} stands in quotes that a rule file does not use.",
        f"Write it in straight double quotes: {text}",
        edit=Edit(place, text),
    )


def full_width(place: Place, was: str, text: str) -> Problem:
    """Full-width letters, digits or signs outside of a text."""
    return Problem(
        "full-width",
        place,
        f'"{was}" is written in full-width characters.',
        f'Write it in half-width characters: "{text}"',
        edit=Edit(place, text),
    )


def decimal_comma(place: Place, was: str) -> Problem:
    """A comma between two digits."""
    whole, part = was.split(",", 1)
    cause = f'"{was}" has a comma between two digits, which has two meanings.'
    if len(part) == 3 and whole.strip("0"):
        mend = f'If it parts the thousands, write "{whole}{part}"; if it is a decimal comma, "{whole}.{part}".'
        return Problem("decimal-comma", place, cause, mend)
    mend = f'For one number write "{whole}.{part}"; for two numbers put a space after the comma: "{whole}, {part}".'
    return Problem("decimal-comma", place, cause, mend, edit=Edit(place, f"{whole}.{part}"))


def unclosed_text(place: Place) -> Problem:
    """A text in quotes that does not end on its line."""
    return Problem(
        "unclosed-text",
        place,
        "This text in quotes does not end on its line.",
        'Close it with " on the same line; a longer text goes on one long line.',
    )


def indented_start(place: Place) -> Problem:
    """The first statement is indented."""
    return Problem(
        "indented-start",
        place,
        "This line is indented, but there is no statement above that it could belong to.",
        "Begin it at the left edge.",
    )


def indented_statement(place: Place, word: str) -> Problem:
    """A statement is indented under another one."""
    return Problem(
        "indented-start",
        place,
        f'"{word}" begins a statement, but this line is indented.',
        "Begin it at the left edge, also below its section: only the further lines of a statement are indented.",
        edit=Edit(Place(place.file, place.line, 1, place.line, place.column), ""),
    )


def unknown_head(place: Place, word: str, near: str | None) -> Problem:
    """A line at the left edge begins with a word that begins no statement."""
    if near:
        return Problem(
            "unknown-head",
            place,
            f'"{word}" does not begin a statement.',
            f'Did you mean "{near}"?',
            edit=Edit(place, near),
        )
    return Problem(
        "unknown-head",
        place,
        f'"{word}" does not begin a statement.',
        "A remark begins with #."
        if word.startswith(("//", "/*", "--", ";"))
        else "A statement begins with one of: standard, setting, trait, term, section, points, bonus, penalty, fault, "
        "lift, grade, alert, round, sample, replace, drop. A line that goes on with the statement above is indented, and a "
        "remark begins with #. `koirules new` writes a first rule file.",
    )


def names_head_words(problem: Problem) -> bool:
    """Whether a problem names every word that begins a statement."""
    return problem.code == "unknown-head" and problem.mend.startswith("A statement begins with one of")


_ANOTHER = "Begin it with one of the words that are named above, or with # as a remark."


def another_unknown_head(problem: Problem) -> Problem:
    """One more line that begins no statement, once the words that do were named."""
    return evolve(problem, mend=_ANOTHER)


def is_another_unknown_head(problem: Problem) -> bool:
    """Whether a problem leans on one before it that names the words that begin a statement."""
    return problem.mend == _ANOTHER


def header_line_missing(place: Place, word: str) -> Problem:
    """A line of the header without the line that the header begins with."""
    start = Place(place.file, place.line, 1, place.line, 1)
    return Problem(
        "header-first",
        place,
        f'"{word}" belongs to the header, but no `standard` line stands above it.',
        'Put this line above it: `standard "Title"`.',
        edit=Edit(start, 'standard "Title"\n' if place.column > 1 else 'standard "Title"\n  '),
    )


def not_indented(place: Place, word: str) -> Problem:
    """A further line of a statement stands at the left edge."""
    return Problem(
        "not-indented",
        place,
        f'"{word}" goes on with the statement above, but stands at the left edge.',
        "Put two spaces before it.",
        edit=Edit(Place(place.file, place.line, 1, place.line, 1), "  "),
    )


def sign_for_word(place: Place, sign: str, words: str) -> Problem:
    """A sign where the language has words."""
    return Problem(
        "sign-for-word",
        place,
        f'The sign "{sign}" is not used here.',
        f'Write "{words}".',
        edit=Edit(place, words),
    )


def head_alone(place: Place, head: str, whole: str) -> Problem:
    """A statement of nothing but its first word."""
    return Problem(
        "ends-too-early", place, f'"{head}" stands alone in its line.', f"Write the whole of it, such as `{whole}`."
    )


def ends_too_early(place: Place, after: str, expected: Sequence[str]) -> Problem:
    """A statement ends in the middle."""
    behind = f'after "{after}"' if after else "here"
    return Problem("ends-too-early", place, f"The statement ends {behind}, but is not complete.", _expect(expected))


def misspelt_word(place: Place, word: str, meant: str) -> Problem:
    """A word that is nearly one that fits here."""
    return Problem(
        "misspelt-word",
        place,
        f'"{word}" does not fit here.',
        f'Did you mean "{meant}"?',
        edit=Edit(place, meant),
    )


def missing_word(place: Place, before: str, missing: str, last: Place | None = None) -> Problem:
    """Something is missing before a word. last: the place of the word in front of the gap, which a sign is put behind."""
    start = Place(place.file, place.line, place.column, place.line, place.column)
    is_sign = missing in {",", ":", "(", ")", "<"}
    if is_sign and missing != "(" and last is not None:
        start = Place(last.file, last.end_line, last.end_column, last.end_line, last.end_column)
    mend = f'Put "{missing}" before "{before}".' if is_sign else f'Write "{missing} {before}".'
    if missing == "(":
        mend = f'Put "(" before "{before}" and ")" after the last.'
    cause = f'"{missing}" is missing before "{before}".'
    return Problem("missing-word", place, cause, mend, edit=Edit(start, missing if is_sign else f"{missing} "))


def comparison_missing(place: Place, before: str, number: str) -> Problem:
    """A number right behind what it should be compared with: `score 88`."""
    start = Place(place.file, place.line, place.column, place.line, place.column)
    return Problem(
        "missing-word",
        place,
        f'Nothing says how "{before}" is compared with {number}.',
        f'Write "at least {number}"; the others are `at most`, `above`, `below` and `is`.',
        edit=Edit(start, "at least "),
    )


def missing_name(place: Place, head: str, before: str) -> Problem:
    """A statement has no name."""
    return Problem(
        "missing-name",
        place,
        f'"{head}" has no name before {before}.',
        f"Write a short name after `{head}`: letters, digits and _, a letter first.",
    )


def reserved_as_name(place: Place, word: str) -> Problem:
    """A word of the language is used as a name."""
    return Problem(
        "reserved-name",
        place,
        f'"{word}" is a word of the rule language and cannot be a name.',
        f'Choose another name, such as "{word}_1" or "my_{word}".',
    )


def unknown_unit(place: Place, word: str, meant: str | None, known: Sequence[str]) -> Problem:
    """A unit that koirules does not know."""
    mend = f'Write "{meant}".' if meant else f"The units are {in_words(list(known), 'and')}; a count has none."
    return Problem(
        "unknown-unit",
        place,
        f'"{word}" is not a unit of the rule language.',
        mend,
        edit=Edit(place, meant) if meant else None,
    )


def unexpected_word(place: Place, word: str, expected: Sequence[str]) -> Problem:
    """Something stands where something else must stand."""
    shown = word if word.startswith('"') else f'"{word}"'
    return Problem("unexpected-word", place, f"{shown} does not fit here.", _expect(expected))


def not_a_number(place: Place, word: str) -> Problem:
    """Digits and letters run together."""
    return Problem(
        "not-a-number",
        place,
        f'"{word}" is neither a number nor a name.',
        "A number is written with digits and one point, with a space before its unit; a name begins with a letter.",
    )


def no_such_date(place: Place, written: str) -> Problem:
    """A date that no calendar has."""
    return Problem(
        "no-such-date",
        place,
        f"There is no day {written} in the calendar.",
        "Write year-month-day, such as 2026-09-30.",
    )


def chained_comparison(place: Place) -> Problem:
    """Two comparisons in a row."""
    return Problem(
        "chained-comparison",
        place,
        "Two comparisons stand in a row.",
        "Write `B between A and C` for a value between two ends (both ends in), or join two comparisons with `and`.",
    )


def mixed_scripts(place: Place, word: str, scripts: Sequence[str]) -> Problem:
    """A name mixes letters of scripts that look alike."""
    return Problem(
        "mixed-scripts",
        place,
        f'"{word}" mixes letters of {" and ".join(scripts)}, which can look the same.',
        "Type the name again in one script.",
    )


def _expect(expected: Sequence[str]) -> str:
    if not expected:
        return "Nothing more can follow here."
    if len(expected) == 1:
        return f"Here {expected[0]} must stand."
    return f"Here one of these must stand: {'; '.join(expected)}."
