"""Problems of names: what is called twice, by a name it cannot have, or by a name that nothing has."""

from __future__ import annotations

from collections.abc import Sequence

from koirules.problems.problem import Edit, Place, Problem
from koirules.problems.quoting import in_words, quoted
from koirules.values import frozen

MOST_LINKS = 10


@frozen
class Elsewhere:
    """Who has a trait that is not to be read here.

    having: varieties that have it. lacking: of the several varieties of a standard those that lack it; none of them does
    where they have it with different kinds of values. any_variety: whether the standard is for any variety.
    """

    having: tuple[str, ...]
    lacking: tuple[str, ...] | None = None
    any_variety: bool = False

    @property
    def of_several(self) -> bool:
        """Whether it is the trait of a variety that the standard is for, which others of them lack."""
        return self.any_variety or self.lacking is not None


def unknown_name(
    place: Place,
    word: str,
    near: str | Sequence[tuple[str, str]] | None,
    elsewhere: Elsewhere | None,
    *,
    common: bool = False,
) -> Problem:
    """Nothing that can be read here has that name. near: what was meant, or several traits with their titles.

    common: whether it names what fish have in common, which is a label most often.
    """
    cause = f'No trait, term or setting is called "{word}".'
    if elsewhere is not None and (elsewhere.of_several or not near):
        return _trait_elsewhere(place, word, elsewhere)
    if isinstance(near, str):
        return Problem("unknown-name", place, cause, f'Did you mean "{near}"?', edit=Edit(place, near))
    if near:
        told = in_words([f"`{name}` ({title.removesuffix(f' ({name})')})" for name, title in near])
        return Problem("unknown-name", place, cause, f"Do you mean {told}?")
    if common:
        mend = f"Declare it above, if it is a column of your records: `trait {word} as label`."
        return Problem("unknown-name", place, cause, mend)
    return Problem(
        "unknown-name",
        place,
        cause,
        f"See what there is with `koirules traits VARIETY`, or declare it: `trait {word} as …` or `term {word} means …`.",
    )


def _trait_elsewhere(place: Place, word: str, elsewhere: Elsewhere) -> Problem:
    declare = f"declare it here: `trait {word} as …`"
    having = " and ".join(elsewhere.having)
    if elsewhere.any_variety:
        return Problem(
            "unknown-name",
            place,
            f'"{word}" is a trait of the variety {elsewhere.having[0]}; a standard for any variety reads only what all have.',
            f"Read it on a page for that variety which is based on this one, or {declare}.",
        )
    if elsewhere.lacking is not None:
        lack = " and ".join(elsewhere.lacking)
        why = (
            f"{lack} {'lacks' if len(elsewhere.lacking) == 1 else 'lack'} it" if lack else "its values are not the same"
        )
        return Problem(
            "unknown-name",
            place,
            f'"{word}" is a trait of {having}, but not one that all of these varieties have alike: {why}.',
            f"Read it on a page for one variety which is based on this one, or {declare}.",
        )
    return Problem(
        "unknown-name",
        place,
        f'"{word}" is a trait of the variety {having}, not of this one.',
        f"Write `variety {having}` in the header, or {declare}.",
    )


def unknown_part(place: Place, kind: str, word: str, near: str | None, known: Sequence[str]) -> Problem:
    """No section, fault, grade … has that name."""
    listed = ", ".join(known) if known else "none"
    return Problem(
        "unknown-part",
        place,
        f'There is no {kind} "{word}".',
        f'Did you mean "{near}"?' if near else f"This file has: {listed}.",
        edit=Edit(place, near) if near else None,
    )


def unknown_variety(place: Place, word: str, near: str | None, known: Sequence[str]) -> Problem:
    """No installed plugin gives that variety."""
    if word == "any":
        mend = "Write `any variety`, the other way round."
        return Problem("unknown-variety", place, f'No variety "{word}" is installed.', mend)
    return Problem(
        "unknown-variety",
        place,
        f'No variety "{word}" is installed.',
        f'Did you mean "{near}"?' if near else f"Installed: {', '.join(known)}. Further ones come with plugins.",
        edit=Edit(place, near) if near else None,
    )


def variety_twice(place: Place, word: str) -> Problem:
    """The same variety is named again."""
    return Problem("variety-twice", place, f'The variety "{word}" stands here twice.', "Delete one of them.")


def variety_unmeasured(place: Place, variety: str, problem: Problem) -> Problem:
    """A formula of a variety, from a plugin, does not hold."""
    return Problem(
        problem.code,
        place,
        f"The variety {variety} cannot be used: {problem.cause[:1].lower()}{problem.cause[1:]}",
        "Update the plugin that gives it, or tell its author.",
    )


def unknown_skin(place: Place, words: Sequence[str], near: str | None, known: Sequence[str]) -> Problem:
    """No installed plugin gives these skins."""
    listed = f"Installed: {', '.join(known)}." if known else "None is installed: skins come with plugins."
    return Problem(
        "unknown-skin",
        place,
        f"No skin {in_words([quoted(word) for word in words])} is installed.",
        f'Did you mean "{near}"?' if near else listed,
        edit=Edit(place, near) if near else None,
    )


def skin_alone(place: Place, word: str) -> Problem:
    """A skin stands in the place of the variety."""
    return Problem(
        "skin-alone",
        place,
        f'"{word}" is a skin, which lies over a variety.',
        f"Name the variety first: `variety VARIETY with {word}`.",
    )


def variety_as_skin(place: Place, word: str) -> Problem:
    """A variety stands in the place of a skin."""
    return Problem(
        "variety-as-skin",
        place,
        f'"{word}" is a variety and no skin, so it cannot lie over another one.',
        "Only a skin stands after `with`; `koirules plugins` lists both.",
    )


def skin_twice(place: Place, word: str) -> Problem:
    """The same skin is named again."""
    return Problem("skin-twice", place, f'The skin "{word}" stands here twice.', "Delete one of them.")


def skin_clash(place: Place, skin: str, under: str, why: str) -> Problem:
    """A skin and what it lies over use one name for two things."""
    return Problem(
        "skin-clash",
        place,
        f'The skin "{skin}" cannot lie over {under}: {why}.',
        "Leave the skin out, and tell the authors of the two plugins.",
    )


def unknown_step(place: Place, word: str, of: str, steps: Sequence[str], near: str | None) -> Problem:
    """A scale, choice or set of places lacks the word."""
    return Problem(
        "unknown-step",
        place,
        f'"{word}" is not one of the values of {of}.',
        f'Did you mean "{near}"?' if near else f"It has: {', '.join(steps)}.",
        edit=Edit(place, near) if near else None,
    )


def value_of_another_trait(place: Place, left: Place, name: str, word: str, owner: str) -> Problem:
    """A trait is compared with a word that another trait has. place: of the word; left: of the name."""
    return Problem(
        "unknown-step",
        place,
        f'"{word}" is not one of the values of "{name}", but one of "{owner}".',
        f'Did you mean "{owner} is {word}"?',
        edit=Edit(left, owner),
    )


def step_named_like(place: Place, word: str, of: str, kind: str) -> Problem:
    """A word is a step of what it is compared with and the name of something."""
    return Problem(
        "step-or-name",
        place,
        f'"{word}" is a value of {of} and also the name of a {kind}, so it has two meanings.',
        f"Give the {kind} another name.",
    )


def named_twice(place: Place, kind: str, word: str, first: Place) -> Problem:
    """Two things of one kind have the same name."""
    return Problem(
        "named-twice",
        place,
        f'There is already a {kind} "{word}" in line {first.line}.',
        "Give one of them another name, or delete it.",
        beside=((first, f'the first "{word}"'),),
    )


def named_like_trait(place: Place, word: str, variety: str) -> Problem:
    """A house trait, term or setting has the name of a trait of the variety."""
    return Problem(
        "named-like-trait",
        place,
        f'"{word}" is already a trait of the variety {variety}.',
        f'Use that trait, or choose another name, such as "house_{word}".',
    )


def reserved_step(place: Place, word: str) -> Problem:
    """A word that cannot be a step or a place."""
    return Problem(
        "reserved-step",
        place,
        f'"{word}" cannot be a value of a trait, because it has a meaning of its own in rules.',
        "Choose another word.",
    )


def repeated_step(place: Place, word: str) -> Problem:
    """A scale, choice or set of places lists a word twice."""
    return Problem("repeated-step", place, f'"{word}" stands here twice.', "Delete one of them.")


def too_few_steps(place: Place, kind: str) -> Problem:
    """A scale or choice with fewer than two words."""
    return Problem(
        "too-few-steps", place, f"A {kind} needs two values or more.", "Add the others, or use `as yes or no`."
    )


def too_many_steps(place: Place, kind: str, most: int) -> Problem:
    """A scale, choice or set of places with more words than a sheet can offer."""
    return Problem("too-many-steps", place, f"A {kind} has {most} values at most.", "Put some of them together.")


def circle(place: Place, links: Sequence[str]) -> Problem:
    """Terms or faults that need each other; of a long circle only the first links are shown, and where it closes."""
    shown = links if len(links) <= MOST_LINKS + 1 else [*links[:MOST_LINKS], "…", links[-1]]
    return Problem(
        "circle",
        place,
        f"These need each other, so none of them can be calculated first: {' -> '.join(shown)}.",
        "Remove one of the links.",
    )


def unknown_in_say(place: Place, word: str, near: str | None, *, precise: bool) -> Problem:
    """Braces in a `say` name nothing. precise: the place is that of the braces, not of the whole text."""
    return Problem(
        "unknown-in-say",
        place,
        f"The words in braces name no trait, term or setting: {{{word}}}.",
        f"Did you mean {{{near}}}?" if near else "Put the name of one trait, term or setting in the braces.",
        edit=Edit(place, f"{{{near}}}") if near and precise else None,
    )


def language_twice(place: Place, code: str) -> Problem:
    """A title gives one language twice."""
    return Problem("language-twice", place, f'The language "{code}" is given twice here.', "Delete one of the two.")


def braces_in_say(place: Place) -> Problem:
    """Braces in a `say` do not pair."""
    return Problem(
        "braces-in-say",
        place,
        "A brace in these words has no partner, or nothing stands between two.",
        "Write {name} with the name of a trait, term or setting; other braces cannot stand here.",
    )
