"""Vocabularies put together: what one includes, and the variety that comes of it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from koirules.later import later
from koirules.vocabulary.kinds import YesNo, words_of
from koirules.vocabulary.subject import ITEM
from koirules.vocabulary.traits import Trait, Variety, Vocabulary


def line_up(vocabulary: Vocabulary, known: Mapping[str, Vocabulary]) -> tuple[Vocabulary, ...]:
    """A vocabulary with all that it includes, what is included first, each once.

    Includes that are not known are left out and a circle is cut, so that this can be asked of any vocabulary.
    """
    line: list[Vocabulary] = []
    seen: set[str] = set()

    def visit(one: Vocabulary) -> None:
        if one.name in seen:
            return
        seen.add(one.name)
        for include in one.includes:
            if include in known:
                visit(known[include])
        line.append(one)

    visit(vocabulary)
    return tuple(line)


def includes_itself(vocabulary: Vocabulary, known: Mapping[str, Vocabulary]) -> bool:
    """Whether a vocabulary is among what it includes, directly or by way of others."""
    included = (line_up(known[include], known) for include in vocabulary.includes if include in known)
    return any(one.name == vocabulary.name for line in included for one in line)


def doubled_traits(vocabulary: Vocabulary, known: Mapping[str, Vocabulary]) -> Iterator[tuple[Trait, Vocabulary]]:
    """Each trait whose name is there before, in what is included or in the vocabulary itself, with who has it first."""
    first: dict[str, Vocabulary] = {}
    for one in line_up(vocabulary, known):
        for trait in one.traits:
            if trait.name in first:
                yield trait, first[trait.name]
            first.setdefault(trait.name, one)


def steps_like_traits(variety: Variety) -> Iterator[tuple[Trait, str]]:
    """Each step, option or place that is spelled like a trait of the same variety, with the trait that has it."""
    for trait in variety.traits.values():
        if not isinstance(trait.kind, YesNo):
            for word in words_of(trait.kind):
                if word in variety.traits:
                    yield trait, word


def join(vocabulary: Vocabulary, known: Mapping[str, Vocabulary]) -> Variety:
    """A vocabulary with the traits, measures and constants of all that it includes, included ones first."""
    line = line_up(vocabulary, known)
    traits = {trait.name: trait for one in line for trait in one.traits}
    measures = tuple(measure for one in line for measure in one.measures)
    constants = tuple(constant for one in line for constant in one.constants)
    sayings = later(lambda: tuple(saying for one in line for saying in one.sayings))
    also, forms = vocabulary.also, vocabulary.forms
    phrases = {said: means for one in line for said, means in one.phrases.items()}
    return Variety(
        name=vocabulary.name,
        title=vocabulary.title,
        traits=traits,
        describe=vocabulary.describe,
        measures=measures,
        constants=constants,
        also=also,
        forms=forms,
        phrases=phrases,
        sayings=sayings,
        subject=next((one.subject for one in reversed(line) if one.subject is not None), ITEM),
    )
