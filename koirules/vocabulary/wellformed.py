"""Whether a vocabulary from somebody's plugin is one that rule files can use.

Types are checked too: a vocabulary is data from a stranger, and a wrong type would only show much later, in a place
that has nothing to do with it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from decimal import Decimal

from koirules.problems.plugging import (
    plugin_bad_name,
    plugin_bad_range,
    plugin_bad_steps,
    plugin_bad_subject,
    plugin_levels_not_named,
    plugin_reserved_word,
    plugin_skin_or_variety,
    plugin_wrong_type,
)
from koirules.problems.problem import Problem
from koirules.problems.quoting import quoted
from koirules.vocabulary.kinds import Choice, Colours, Count, Kind, Label, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.measures import Computed, Constant, Formula
from koirules.vocabulary.phrases import Spoken, SpokenTogether
from koirules.vocabulary.subject import OCCASIONS, Cautions, Subject
from koirules.vocabulary.traits import Allometry, Better, Growth, Trait, Vocabulary
from koirules.vocabulary.units import UNITS
from koirules.vocabulary.words import NOT_PLACES, NOT_STEPS, NOT_TRAITS, RESERVED, is_name

LARGEST = 1_000_000
"""How far from 0 a number of the rule language may lie."""

_FINEST = -6  # the exponent of the last decimal that the rule language keeps

_TYPES_OF_VOCABULARY: Mapping[str, type] = {
    "name": str,
    "title": str,
    "traits": tuple,
    "includes": tuple,
    "describe": str,
    "is_skin": bool,
    "is_variety": bool,
    "measures": tuple,
    "constants": tuple,
    "also": tuple,
    "forms": tuple,
    "phrases": Mapping,
    "sayings": tuple,
}
_TYPES_OF_SPOKEN: Mapping[str, type] = {
    "trait": str,
    "nouns": str,
    "beside": str,
    "levels": Mapping,
    "alone": Mapping,
    "implies": str,
    "of_parts": str,
    "apart": bool,
    "after": tuple,
}
_TYPES_OF_TRAIT: Mapping[str, type] = {
    "name": str,
    "title": str,
    "better": Better,
    "growth": Growth,
    "describe": str,
    "source": str,
    "titles": Mapping,
    "usual": Mapping,
}


def check_vocabulary(vocabulary: Vocabulary, plugin: str) -> list[Problem]:
    """What is wrong with a vocabulary taken by itself; an empty list where nothing is."""
    what = f"the vocabulary {quoted(str(vocabulary.name))}"
    problems = [*_check_types(vocabulary, _TYPES_OF_VOCABULARY, what, plugin)]
    if problems:
        return problems
    if vocabulary.is_skin and vocabulary.is_variety:
        problems.append(plugin_skin_or_variety(plugin, what))
    problems += _check_name(vocabulary.name, RESERVED, what, plugin)
    if vocabulary.subject is not None:
        problems += _check_subject(vocabulary.subject, f"the subject of {what}", plugin)
    for include in vocabulary.includes:
        problems += _check_type(include, str, f"an include of {what}", plugin)
    for word in (*vocabulary.also, *vocabulary.forms):
        problems += _check_type(word, str, f"another word for {what}", plugin)
    for said, means in vocabulary.phrases.items():
        problems += _check_type(said, str, f"a phrase of {what}", plugin)
        problems += _check_type(means, str, f"the meaning of a phrase of {what}", plugin)
    for saying in vocabulary.sayings:
        problems += _check_saying(saying, what, plugin)
    for trait in vocabulary.traits:
        problems += _check_type(trait, Trait, f"a trait of {what}", plugin) or check_trait(trait, plugin)
    for measure in vocabulary.measures:
        problems += _check_measure(measure, f"a measure of {what}", plugin)
    for constant in vocabulary.constants:
        problems += _check_type(constant, Constant, f"a constant of {what}", plugin) or _check_constant(
            constant, plugin
        )
    return problems


def _check_saying(saying: object, of: str, plugin: str) -> list[Problem]:
    if isinstance(saying, SpokenTogether):
        what = f"a SpokenTogether of {of}"
        return [*_check_types(saying, {"wordings": str, "means": str}, what, plugin)]
    if not isinstance(saying, Spoken):
        return [plugin_wrong_type(plugin, f"a saying of {of}", "a Spoken or a SpokenTogether", _type(saying))]
    what = f"a Spoken of {of}"
    if isinstance(saying.trait, str):
        what = f"the Spoken for {quoted(saying.trait)} of {of}"
    problems = [*_check_types(saying, _TYPES_OF_SPOKEN, what, plugin)]
    if any(isinstance(value, Mapping) for value in (saying.nouns, saying.beside, saying.implies)):
        problems.append(plugin_levels_not_named(plugin, what))
    if problems:
        return problems
    for name in ("levels", "alone"):
        for said, wordings in getattr(saying, name).items():
            problems += _check_type(said, str, f"a key in `{name}` of {what}", plugin)
            problems += _check_type(wordings, str, f"what is said in `{name}` of {what}", plugin)
    for trait in saying.after:
        problems += _check_type(trait, str, f"a trait in `after` of {what}", plugin)
    return problems


_WORDS_OF_SUBJECT = ("one", "many", "in_hand", "at_work", "on_paper", "place", "places", "grows_by", "drawing")
_LONGEST_ON_PAPER = 250
"""A spreadsheet holds no more letters at the foot of a page."""


def _check_subject(subject: object, what: str, plugin: str) -> list[Problem]:
    if not isinstance(subject, Subject):
        return [plugin_wrong_type(plugin, what, "a Subject", _type(subject))]
    types: dict[str, type] = {**dict.fromkeys(_WORDS_OF_SUBJECT, str), "cautions": Mapping}
    problems = [*_check_types(subject, types, what, plugin)]
    if problems:
        return problems
    for name in _WORDS_OF_SUBJECT:
        words = str(getattr(subject, name))
        needed = name in {"one", "many", "place", "places"}
        if (needed and not words.strip()) or not words.isprintable():
            problems.append(plugin_bad_subject(plugin, what, f"its {name} is no line of text"))
    if len(subject.on_paper) > _LONGEST_ON_PAPER:
        problems.append(plugin_bad_subject(plugin, what, f"its on_paper has more than {_LONGEST_ON_PAPER} letters"))
    if not is_name(subject.grows_by):
        problems.append(plugin_bad_subject(plugin, what, "its grows_by is no name of a trait"))
    for occasion, cautions in subject.cautions.items():
        if occasion not in OCCASIONS:
            problems.append(plugin_bad_subject(plugin, what, f"there is no occasion {quoted(str(occasion))}"))
        problems += _check_cautions(cautions, f"the cautions of {what}", plugin)
    return problems


def _check_cautions(cautions: object, what: str, plugin: str) -> list[Problem]:
    if not isinstance(cautions, Cautions):
        return [plugin_wrong_type(plugin, what, "Cautions", _type(cautions))]
    paragraphs = {"deciding": tuple, "handling": tuple, "moving": tuple}
    problems = [*_check_types(cautions, {**paragraphs, "short": str}, what, plugin)]
    if not problems and any(type(each) is not str or not each.strip() for each in cautions.all):
        problems.append(plugin_wrong_type(plugin, what, "paragraphs of text", "something else"))
    return problems


def _check_usual(trait: Trait, what: str, plugin: str) -> Iterator[Problem]:
    """Whether the usual values of a trait go from a lower to a higher number, by stage."""
    given: Mapping[object, object] = trait.usual  # type: ignore[assignment]
    for stage, ends in given.items():
        pair = isinstance(ends, tuple) and len(ends) == 2 and all(isinstance(end, Decimal) for end in ends)
        if not isinstance(stage, str) or not pair:
            yield plugin_wrong_type(plugin, f"what is usual of {what}", "two Decimals by stage", "something else")
        elif isinstance(ends, tuple) and not ends[0] < ends[1]:
            yield plugin_bad_range(plugin, f"what is usual of {what}", "has ends that are swapped or alike")


def _check_measure(measure: object, what: str, plugin: str) -> list[Problem]:
    if isinstance(measure, Formula):
        return [*_check_types(measure, {"trait": str, "expression": str}, what, plugin)]
    if not isinstance(measure, Computed):
        return [plugin_wrong_type(plugin, what, "a Formula or Computed", _type(measure))]
    lists = {"name": str, "inputs": tuple, "outputs": tuple, "helped_by": tuple}
    problems = [*_check_types(measure, lists, what, plugin)]
    if problems:
        return problems
    for name in (*measure.inputs, *measure.helped_by, *measure.outputs):
        problems += _check_type(name, str, f"a trait in {what}", plugin)
    if not callable(measure.compute):
        problems.append(plugin_wrong_type(plugin, f"`compute` of {what}", "a function", _type(measure.compute)))
    if not measure.inputs or not measure.outputs:
        problems.append(plugin_wrong_type(plugin, what, "one with inputs and outputs", "one without"))
    return problems


def _check_constant(constant: Constant, plugin: str) -> list[Problem]:
    what = f"the constant {quoted(str(constant.name))}"
    kinds = {"name": str, "title": str, "kind": Number, "value": Decimal}
    problems = [*_check_types(constant, kinds, what, plugin)]
    if not problems:
        problems += [*_check_name(constant.name, NOT_TRAITS, what, plugin)]
        problems += [*_check_number(constant.kind, what, plugin)]
    if not problems and not constant.kind.low <= constant.value <= constant.kind.high:
        problems.append(plugin_bad_range(plugin, what, f"is {constant.value}, outside its own range"))
    return problems


def check_trait(trait: Trait, plugin: str) -> list[Problem]:
    """What is wrong with a trait taken by itself; an empty list where nothing is."""
    what = f"the trait {quoted(str(trait.name))}"
    problems = [*_check_types(trait, _TYPES_OF_TRAIT, what, plugin)]
    if not isinstance(trait.kind, Kind):
        problems += [
            plugin_wrong_type(plugin, f"the kind of {what}", "a kind of koirules.vocabulary", _type(trait.kind))
        ]
    elif not all(isinstance(text, str) for pair in trait.titles.items() for text in pair):
        problems.append(plugin_wrong_type(plugin, f"a title of {what}", "a text by its language", "something else"))
    if problems:
        return problems
    return [
        *_check_name(trait.name, NOT_TRAITS, what, plugin),
        *_check_kind(trait.kind, what, plugin),
        *_check_allometry(trait, what, plugin),
        *_check_white(trait, what, plugin),
        *_check_usual(trait, what, plugin),
    ]


def _check_allometry(trait: Trait, what: str, plugin: str) -> Iterator[Problem]:
    match trait.allometry, trait.kind:
        case None, _:
            pass
        case Allometry(), Count():
            pass
        case Allometry(), Number(low=Decimal() as low):
            if low < 0:
                yield plugin_bad_range(plugin, what, f"follows the length, but can be {low}, which is below 0")
        case Allometry(), _:
            which = f"the kind of {what}, which follows the length,"
            yield plugin_wrong_type(plugin, which, "a Number or Count", _type(trait.kind))
        case other, _:
            yield plugin_wrong_type(plugin, f"`allometry` of {what}", "of type Allometry", _type(other))


def _check_white(trait: Trait, what: str, plugin: str) -> Iterator[Problem]:
    kind = trait.kind
    is_share = isinstance(kind, Number) and kind.unit is UNITS["%"] and kind.low == 0
    if trait.white_from_sides and not is_share:
        which = f"the kind of {what}, which becomes less as white grows in from the sides,"
        yield plugin_wrong_type(plugin, which, "a Number in % from 0", _type(kind))


def _check_kind(kind: Kind, what: str, plugin: str) -> Iterator[Problem]:
    match kind:
        case Number():
            yield from _check_number(kind, what, plugin)
        case Count():
            yield from _check_count(kind.high, what, plugin)
        case Scale(words) | Choice(words):
            yield from _check_words(words, 2, NOT_STEPS, what, plugin)
        case Places(words):
            yield from _check_words(words, 1, NOT_PLACES, what, plugin)
        case YesNo() | Label() | Patches() | Colours():
            pass


def _check_number(kind: Number, what: str, plugin: str) -> Iterator[Problem]:
    if kind.unit is not None and kind.unit not in UNITS.values():
        yield plugin_wrong_type(
            plugin, f"the unit of {what}", "one of koirules.vocabulary.units.UNITS", repr(kind.unit)
        )
        return
    for end in (kind.low, kind.high):
        if not isinstance(end, Decimal):
            yield plugin_wrong_type(plugin, f"an end of the range of {what}", "a Decimal", _type(end))
            return
        if not end.is_finite():
            yield plugin_bad_range(plugin, what, f"has the end {end}")
            return
    if kind.low >= kind.high:
        yield plugin_bad_range(plugin, what, f"goes from {kind.low} to {kind.high}")
    if max(abs(end) for end in (kind.low, kind.high, kind.held_low, kind.held_high)) > LARGEST:
        yield plugin_bad_range(plugin, what, f"goes from {kind.low} to {kind.high}, beyond 1,000,000")
    if any(int(end.normalize().as_tuple().exponent) < _FINEST for end in (kind.low, kind.high)):
        yield plugin_bad_range(plugin, what, f"goes from {kind.low} to {kind.high}, with more than six decimals")


def _check_count(high: object, what: str, plugin: str) -> Iterator[Problem]:
    if not isinstance(high, int) or isinstance(high, bool):
        yield plugin_wrong_type(plugin, f"the highest count of {what}", "a whole number", _type(high))
    elif not 1 <= high <= LARGEST:
        yield plugin_bad_range(plugin, what, f"goes up to {high}")


def _check_words(words: object, least: int, kept: Collection[str], what: str, plugin: str) -> Iterator[Problem]:
    if not isinstance(words, tuple) or not all(isinstance(word, str) for word in words):
        yield plugin_wrong_type(plugin, f"the list of words of {what}", "a tuple of texts", _type(words))
        return
    if len(words) < least:
        yield plugin_bad_steps(plugin, what, f"has {len(words)}")
    if len(set(words)) < len(words):
        repeated = next(word for i, word in enumerate(words) if word in words[:i])
        yield plugin_bad_steps(plugin, what, f"has {quoted(repeated)} more than once")
    for word in words:
        yield from _check_name(word, kept, f"a word of {what}", plugin)


def _check_name(name: str, kept: Collection[str], what: str, plugin: str) -> Iterator[Problem]:
    if not is_name(name):
        yield plugin_bad_name(plugin, what, name)
    elif name in kept:
        yield plugin_reserved_word(plugin, what, name)


def _check_types(thing: object, types: Mapping[str, type], what: str, plugin: str) -> Iterator[Problem]:
    for attribute, expected in types.items():
        yield from _check_type(getattr(thing, attribute), expected, f"`{attribute}` of {what}", plugin)


def _check_type(value: object, expected: type, what: str, plugin: str) -> list[Problem]:
    if isinstance(value, expected):
        return []
    return [plugin_wrong_type(plugin, what, f"of type {expected.__name__}", _type(value))]


def _type(value: object) -> str:
    return f"of type {type(value).__name__}"
