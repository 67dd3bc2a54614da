"""Problems of standards that build on each other: the base, its edition and seal, and what a file changes in it."""

from __future__ import annotations

from collections.abc import Sequence

from attrs import evolve

from koirules.problems.problem import Edit, Place, Problem


def base_not_relative(place: Place, file: str) -> Problem:
    """The base is given by a whole path, or with the signs of another system."""
    return Problem(
        "base-path",
        place,
        f'"{file}" is not a path from the folder of this file.',
        'Put the base into this folder or below it, and write where it lies from here, with /: "club/open.koi".',
    )


def base_outside(place: Place, file: str) -> Problem:
    """The base lies outside the folder tree of the file that is loaded."""
    return Problem(
        "base-outside",
        place,
        f'"{file}" leads out of the folder of the file that is loaded.',
        "Copy the base into that folder or below it.",
    )


def base_without_folder(place: Place) -> Problem:
    """A text that came without a file has no folder to look in."""
    return Problem(
        "base-without-folder",
        place,
        "A base is looked for in the folder of the file, and this text has none.",
        "Save it as a file and load that, or say which folder its base lies in.",
    )


def no_base_file(place: Place, file: str, why: str) -> Problem:
    """The base cannot be opened."""
    return Problem(
        "no-base-file",
        place,
        f'The base "{file}" cannot be opened: {why}.',
        "Check the name and the folder: the path begins at the folder of this file.",
    )


def no_ruleset(place: Place, name: str, meant: str | None) -> Problem:
    """The base is given by a name that no installed rule set has."""
    return Problem(
        "no-base-file",
        place,
        f'No rule set "{name}" is installed, and this folder has no such file.',
        f'Did you mean "{meant}"?'
        if meant
        else f'Install the plugin that gives it (`koirules plugins` lists what is there), or write a path: "{name}.koi".',
        edit=Edit(place, f'"{meant}"') if meant else None,
    )


def base_circle(place: Place, links: Sequence[str]) -> Problem:
    """Standards that are based on one another."""
    return Problem(
        "base-circle",
        place,
        f"This goes round in a circle: {' is based on '.join(links)}.",
        "One of them must stand by itself.",
    )


def too_many_bases(place: Place, most: int) -> Problem:
    """A chain of bases that is too long."""
    return Problem(
        "too-many-bases",
        place,
        f"Here begins base number {most + 1} of one standard; there may be {most}.",
        "Write one page that holds what the older ones have in common (`koirules tidy --whole` prints it).",
    )


def too_many_together(place: Place, count: int, most: int) -> Problem:
    """A base and its changes have too many statements together."""
    return Problem(
        "too-many-together",
        place,
        f"With its base this standard has {count:,} statements; a standard has {most:,} at most.",
        "Drop what is not used.",
    )


def base_has_problems(place: Place, file: str, count: int) -> Problem:
    """The base does not hold by itself."""
    what = "a problem" if count == 1 else f"{count} problems"
    return Problem(
        "base-has-problems",
        place,
        f'The base "{file}" has {what} of its own.',
        "Each is shown with its line. Ask whoever keeps it for an edition that holds.",
    )


def other_edition(place: Place, file: str, written: str, found: str) -> Problem:
    """The base has another edition than the one that is asked for."""
    return Problem(
        "other-edition",
        place,
        f'"{file}" is edition {found}, not {written}.',
        f"Get edition {written}; or look at what changed, then write `edition {found}` and its new seal.",
    )


def edition_not_kept(place: Place, name: str, written: str, found: str, earlier: Sequence[str]) -> Problem:
    """The rule set is installed, but not in the edition that is asked for.

    found: the edition that it has now. earlier: the editions before it that are kept.
    """
    there = f"in edition {found}"
    if earlier:
        kept = f"{earlier[0]} is" if len(earlier) == 1 else f"{', '.join(earlier[:-1])} and {earlier[-1]} are"
        there += f", and {kept} kept beside it"
    return Problem(
        "other-edition",
        place,
        f'"{name}" is installed {there}; edition {written} is not there.',
        f"Install a version that has edition {written}; or look at what changed, then write `edition {found}` and its new seal.",
    )


def other_seal(place: Place, file: str, found: str) -> Problem:
    """The base is not the one that was sealed."""
    return Problem(
        "other-seal",
        place,
        f'The seal of "{file}" is {found}: it is not the text that this file was written for.',
        "Get the sealed text again from whoever publishes it; or look at what changed, then write the new seal.",
    )


def not_a_seal(place: Place, written: str) -> Problem:
    """What stands behind `seal` is none that this version makes."""
    return Problem(
        "not-a-seal",
        place,
        f'"{written}" is not a seal that this version of koirules makes.',
        "`koirules seal FILE` prints the seal of a rule file: a 1, 2 or 3, a hyphen and 64 digits and letters.",
    )


def unsealed_base(place: Place, seal: str) -> Problem:
    """Changes to a base that may change by itself."""
    end = Place(place.file, place.end_line, place.end_column, place.end_line, place.end_column)
    return Problem(
        "unsealed-base",
        place,
        "This file changes its base, but does not name the seal of that base.",
        f"Write the seal after the edition: seal {seal}",
        warning=True,
        edit=Edit(end, f"\n    seal {seal}"),
    )


def no_base(place: Place, word: str, until: Place | None = None) -> Problem:
    """`replace`, `drop` or `rename` in a standard that is based on nothing. until: the statement behind `replace`."""
    mend = "Delete it." if until is None else "Delete the word `replace`."
    edit = None if until is None else Edit(Place(place.file, place.line, place.column, until.line, until.column), "")
    return Problem(
        "no-base",
        place,
        f"`{word}` changes a standard that this one is based on, but it is based on none.",
        f'{mend} Or name the base in the header: `based on "club/open.koi" edition 2026-1`.',
        edit=edit,
    )


_CHECK_THE_NAME = "Check the name, or delete this line."


def not_in_base(place: Place, head: str, name: str, meant: str | None, other: str | None) -> Problem:
    """What is to be replaced or dropped is not there. other: the kind of statement that has the name."""
    mend = _CHECK_THE_NAME
    if meant is not None:
        mend = f'Did you mean "{meant}"?'
    elif other is not None:
        mend = f'There is a {other} "{name}": write `{other}` before the name.'
    edit = Edit(place, f'"{meant}"' if head in {"sample", "phrase"} else meant) if meant is not None else None
    return Problem("not-in-base", place, f'The base has no {head} "{name}".', mend, edit=edit)


def unguessed(problem: Problem) -> Problem:
    """What `not_in_base` tells, without the name that may have been meant."""
    return evolve(problem, mend=_CHECK_THE_NAME, edit=None)


def already_in_base(place: Place, head: str, name: str, kind: str, first: Place) -> Problem:
    """A name of the base is given again. head: the kind in the base; kind: of the new statement; place: of its head word."""
    cause = f'The base has {_with_article(head)} "{name}" already ({first.file}, line {first.line}).'
    beside = ((first, f'the {head} "{name}" of the base'),)
    if head != kind:
        mend = f"Choose another name, or write `drop {head} {name}` too."
        return Problem("already-in-base", place, cause, mend, beside=beside)
    return Problem(
        "already-in-base",
        place,
        cause,
        f"To change it write `replace {head}`; else choose another name.",
        edit=Edit(Place(place.file, place.line, place.column, place.line, place.column), "replace "),
        beside=beside,
    )


def renamed_to_taken(place: Place, name: str, first: Place) -> Problem:
    """A grade of the base is to have the name of another one. first: where that one is given."""
    return Problem(
        "already-in-base",
        place,
        f'A grade is called "{name}" already ({first.file}, line {first.line}).',
        "Choose another name, or rename that one too.",
        beside=((first, f'the grade "{name}"'),),
    )


def no_section_above(place: Place, head: str, name: str, known: Sequence[str]) -> Problem:
    """A new criterion that does not say which section it belongs to."""
    mend = "Move it below the `section` that it belongs to."
    if known:
        mend += f" To add to a section of the base, write its name alone above it: `section {known[0]}`."
    return Problem("outside-section", place, f'The {head} "{name}" stands above the first section of this file.', mend)


def changed_twice(place: Place, head: str, name: str, first: Place) -> Problem:
    """Something of the base is replaced or dropped twice."""
    return Problem(
        "changed-twice",
        place,
        f'The {head} "{name}" is changed or dropped in line {first.line} already.',
        "Keep one of the two.",
        beside=((first, "the first change"),),
    )


def replaced_header(place: Place) -> Problem:
    """`replace standard`."""
    return Problem(
        "replaced-header",
        place,
        "The head of the page is not replaced: each page has its own.",
        "Write what differs (edition, stage, dates, notes) into the `standard` statement of this file.",
    )


def other_variety(place: Place, written: str, found: str) -> Problem:
    """A standard for another variety than its base. written, found: as the two headers name their varieties."""
    one = found if found.startswith("(") else f"the variety {found}"
    mend = "Leave `variety` out, since the base says it; a page for another variety needs a base of its own."
    if found.startswith("("):
        mend = (
            "Name one or more of its varieties, or leave `variety` out; a page for another variety needs another base."
        )
    return Problem("other-variety", place, f"The base is for {one}, and this file says {written}.", mend)


def after_needed(place: Place, name: str, grades: Sequence[str]) -> Problem:
    """A new grade that does not say where it stands."""
    return Problem(
        "after-needed",
        place,
        f'The new grade "{name}" does not say where it stands among those of the base: {", ".join(grades)}.',
        f"Write `after` and the next better one after its condition, such as `after {grades[0]}`. To have it first, drop "
        "the grades of the base and write them all anew.",
    )


def after_with_replace(place: Place) -> Problem:
    """`replace grade … after G`."""
    return Problem(
        "after-with-replace",
        place,
        "A replacement stands where the original stood, so it cannot have `after`.",
        "Delete `after`; or drop the grade, and write it anew with `after`.",
    )


def dropped_by_name(place: Place, head: str, name: str) -> Problem:
    """A sample dropped by a name, or something else by a title."""
    if head in {"sample", "phrase"}:
        return Problem(
            "drop-by-name",
            place,
            f'A {head} is named by its {"title" if head == "sample" else "words"}, in quotes, and "{name}" has none.',
            f'Write `drop {head} "{name}"`.',
            edit=Edit(place, f'"{name}"'),
        )
    return Problem(
        "drop-by-name",
        place,
        f'A {head} is dropped by its name, and "{name}" is a text.',
        "Write the name, without quotes.",
    )


def after_changes(problem: Problem, file: str) -> Problem:
    """A problem in a base that held by itself, so that it comes from the changes of a file."""
    mend = f"The base holds by itself: this comes of what {file} changes in it. Change that, or replace this statement too."
    return evolve(problem, mend=mend, edit=None)


def _with_article(head: str) -> str:
    return head if head == "points" else f"an {head}" if head == "alert" else f"a {head}"
