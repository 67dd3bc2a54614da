"""What nobody says, and what somebody does: traits by eye without silence in a plugin's rule sets, or without phrases."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Iterator, Mapping

from koirules.api import load_standard
from koirules.plugins import Registry
from koirules.problems import StandardError
from koirules.vocabulary.kinds import Scale
from koirules.vocabulary.measures import outputs_of
from koirules.vocabulary.phrases import Spoken
from koirules.vocabulary.traits import Better, Trait, Vocabulary

_WORD = re.compile(r"\w+")
_HEALTH = re.compile(
    r"\b(health|sick|sickly|ill|disease[sd]?|injur(?:y|ies|ed)|wounds?|wounded|scars?|scratch(?:es|ed)?|sores?|ulcers?|"
    r"parasites?|deformed|deformit(?:y|ies)|malformed|malformations?|crippled|blind|bent spine|fin rot|swollen)\b"
)
_PARTS = re.compile(r"\b(mouth|gills?|gill covers?)\b")


def of_silence(
    own: Iterable[Vocabulary], rulesets: Iterable[str], registry: Registry, reasons: Mapping[str, str]
) -> Iterator[str]:
    """The traits that leave every fish open of which nobody says what is ordinary, a sentence each.

    Looked at: the traits by eye of a plugin's own vocabularies that one of its rule sets reads and that have something
    ordinary, which nobody calls out at the tub: the steps of a scale, and a flaw (less of it is better), of which most
    fish have none. Not looked at: what may never be silent, what a measure gives, and what says which kind of fish it is.
    reasons: by trait, why no rule set says what silence means of it.
    """
    read: dict[str, str] = {}
    silent: set[str] = set()
    for name in rulesets:
        try:
            standard = load_standard(name, registry)
        except StandardError:
            continue  # told where the rule set is tried out
        silent |= standard.rules.silence.keys()
        read = dict.fromkeys(standard.grader.traits_to_record(), name) | read
    missing = [trait.name for trait in _by_eye(own) if trait.name in read and _has_ordinary(trait)]
    missing = [name for name in missing if name not in silent]
    for name in missing:
        if name not in reasons:
            yield (
                f'the rule set "{read[name]}" reads {name}, and no rule set of the plugin says what silence means of it: write '
                f"`silence means {name} is …`, mark the trait `never_silent`, or give the reason: "
                f'`without_silence={{"{name}": "…"}}`'
            )
    yield from _idle(reasons, missing, "without_silence", "silence")


def of_health(own: Iterable[Vocabulary], reasons: Mapping[str, str]) -> Iterator[str]:
    """The traits by eye that speak of health, injuries or deformities and may be silent, a sentence each.

    Only English is looked at, and only words that hardly mean anything else. reasons: by trait, why it may be silent.
    """
    told = {trait.name: found for trait in _by_eye(own) if not trait.never_silent and (found := _health_in(trait))}
    for name, word in told.items():
        if name not in reasons:
            yield (
                f'the trait {name} speaks of health, injuries or deformities ("{word}"), and silence could take it for granted: '
                f'mark it `never_silent=True`, or give the reason: `may_be_silent={{"{name}": "…"}}`'
            )
    for name, reason in reasons.items():
        if name not in told:
            yield f"`may_be_silent` names {name}, which is not held to be about health: delete it there"
        elif not reason.strip():
            yield f"`may_be_silent` gives no reason for {name}"


def _health_in(trait: Trait) -> str:
    """The word by which a trait speaks of health; "" where it does not. Of mouth and gill covers a scale alone does."""
    named = f"{trait.name} {trait.title}".replace("_", " ").casefold()
    strong = _HEALTH.search(f"{named} {trait.describe.casefold()}")
    part = _PARTS.search(named) if isinstance(trait.kind, Scale) and trait.better is Better.MORE else None
    found = strong or part
    return found[0] if found else ""


def of_phrases(own: Iterable[Vocabulary], registry: Registry, reasons: Mapping[str, str]) -> Iterator[str]:
    """The traits by eye of a plugin's own vocabularies that notes can only name, a sentence each.

    reasons: by trait, why it has no phrases.
    """
    spoken: set[str] = set()
    for vocabulary in registry.vocabularies.values():
        for saying in vocabulary.sayings:
            spoken |= {saying.trait} if isinstance(saying, Spoken) else {*_WORD.findall(saying.means)}
        for means in vocabulary.phrases.values():
            spoken |= {*_WORD.findall(means)}
    missing = [trait.name for trait in _by_eye(own) if trait.name not in spoken]
    for name in missing:
        if name not in reasons:
            yield (
                f"the trait {name} has no phrases, so that notes read it by its name and title alone: add "
                f'`Spoken("{name}", …)` to the `sayings` of its vocabulary, or give the reason: '
                f'`without_phrases={{"{name}": "…"}}`'
            )
    yield from _idle(reasons, missing, "without_phrases", "phrases")


def _by_eye(own: Iterable[Vocabulary]) -> Iterator[Trait]:
    """The traits that somebody judges by eye and no measure gives."""
    for vocabulary in own:
        given = {name for measure in vocabulary.measures for name in outputs_of(measure)}
        yield from (trait for trait in vocabulary.traits if trait.by_eye and trait.name not in given)


def _has_ordinary(trait: Trait) -> bool:
    return not trait.never_silent and (isinstance(trait.kind, Scale) or trait.better is Better.LESS)


def _idle(reasons: Mapping[str, str], missing: Collection[str], where: str, what: str) -> Iterator[str]:
    for name, reason in reasons.items():
        if name not in missing:
            yield f"`{where}` names {name}, which does not lack {what}: delete it there"
        elif not reason.strip():
            yield f"`{where}` gives no reason for {name}"
