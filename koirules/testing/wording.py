"""What a vocabulary says to people: titles, descriptions, directions."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import chain

from koirules.problems import Cell
from koirules.standard.check.phrasing import phrases_left_out, sayings_left_out
from koirules.vocabulary.kinds import Choice, Label, Number, YesNo, words_of
from koirules.vocabulary.phrases import brackets_match, said_in
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.spoken import said, skin_said
from koirules.vocabulary.subject import SORTING
from koirules.vocabulary.traits import Better, Trait, Variety, Vocabulary
from koirules.vocabulary.units import Dimension
from koirules.vocabulary.words import OPERATOR_WORDS

_LONGEST_TITLE = 60
_SHORTEST_TELLING = 20
_LONGEST_TELLING = 250  # a note of a sheet, and a line of the questions at the tub


def of_vocabulary(vocabulary: Vocabulary) -> Iterator[str]:
    """What is wrong with the words of a vocabulary, a sentence each."""
    what = f'the vocabulary "{vocabulary.name}"'
    if not vocabulary.title.strip():
        yield f"{what} has no title"
    if not vocabulary.describe.strip() and (vocabulary.is_variety or vocabulary.is_skin):
        yield f"{what} has no describe: say in one line what such a fish looks like"
    if not vocabulary.traits and not vocabulary.includes:
        yield f"{what} has no trait and includes none"
    for trait in vocabulary.traits:
        yield from _of_trait(trait)
        for word in () if isinstance(trait.kind, YesNo) else words_of(trait.kind):
            if word in OPERATOR_WORDS:
                yield f'"{word}", a word of the trait "{trait.name}", is an operator of the rule language: choose another'


def of_variety(variety: Variety) -> Iterator[str]:
    """What is wrong with the words of a variety once all its vocabularies are together, a sentence each."""
    titles: dict[str, str] = {}
    for trait in variety.traits.values():
        first = titles.setdefault(trait.title.casefold(), trait.name)
        if first != trait.name:
            yield f'in "{variety.name}" the traits {first} and {trait.name} have one title, "{trait.title}"'
    yield from _of_subject(variety)
    site = Cell(f"vocabulary {variety.name}")
    for problem in chain(
        phrases_left_out(site, variety.phrases, variety.traits), sayings_left_out(site, variety.sayings, variety.traits)
    ):
        yield f"{problem.cause} {problem.mend}"
    for saying in variety.sayings:
        for wording in said_in(saying):
            if not brackets_match(wording):
                yield f'in "{variety.name}" the brackets of the wording "{wording}" do not match'


def _of_subject(variety: Variety) -> Iterator[str]:
    """What a subject says that does not go with the traits, or leaves unsaid."""
    subject = variety.subject
    grown = [name for name, trait in variety.traits.items() if trait.allometry is not None]
    kind = variety.traits[subject.grows_by].kind if subject.grows_by in variety.traits else None
    is_length = isinstance(kind, Number) and kind.dimension is Dimension.LENGTH
    if grown and not is_length:
        yield f'in "{variety.name}" {grown[0]} grows with {subject.grows_by}, which is no trait with a length'
    if SORTING not in subject.cautions:
        yield f'the subject of "{variety.name}" has no cautions for sorting: say what to bear in mind with {subject.one} in hand'


def of_other_words(variety: Variety, varieties: Varieties) -> Iterator[str]:
    """What of `also` and `forms` of a variety or a skin is not read as it, a sentence each."""
    for words in (*variety.also, *variety.forms):
        if variety.name in varieties:
            read = said(words, varieties)
            right = read is not None and read.variety == variety.name
        else:
            right = skin_said(words, varieties) == variety.name
        if not right:
            yield f'"{words}", another word for {variety.name}, is not read as it: something else is called so too'


def _of_trait(trait: Trait) -> Iterator[str]:
    what = f"the trait {trait.name}"
    title, telling = trait.title.strip(), trait.describe.strip()
    if not title:
        yield f"{what} has no title"
    elif len(title) > _LONGEST_TITLE:
        yield f"{what} has a title of {len(title)} letters; results and sheets have room for {_LONGEST_TITLE}"
    if len(telling) < _SHORTEST_TELLING:
        yield f"{what} lacks a describe that tells a new helper where to look and what to write"
    elif len(telling) > _LONGEST_TELLING or "\n" in telling:
        yield f"{what} has a describe of more than one line of {_LONGEST_TELLING} letters"
    if isinstance(trait.kind, Label | Choice) and trait.better in {Better.MORE, Better.LESS}:
        yield f"{what} cannot be {trait.better.value!r}: its values have no order"
    if isinstance(trait.kind, Number) and trait.kind.dimension is Dimension.SHARE and trait.kind.low < 0:
        yield f"{what} is a share that may fall below 0 %"
    for code in trait.titles:
        if len(code) != 2 or not code.isalpha() or not code.islower():
            yield f'{what} has a title in "{code}", which is no two-letter code of a language'
