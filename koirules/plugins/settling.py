"""Plugins fitted to each other: who keeps a name, and whose vocabularies can be put together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from koirules.plugins.asking import Gifts
from koirules.problems import Problem, plugging
from koirules.problems.quoting import quoted
from koirules.vocabulary.joining import doubled_traits, includes_itself, join, steps_like_traits
from koirules.vocabulary.measure_names import misnamed
from koirules.vocabulary.nearness import near
from koirules.vocabulary.traits import Vocabulary


def first_come(asked: Iterable[Gifts]) -> tuple[list[Gifts], list[Problem]]:
    """The plugins whose names were all free when their turn came, and the clashes of the others."""
    owners: dict[str, str] = {}
    kept: list[Gifts] = []
    problems: list[Problem] = []
    for gifts in asked:
        label = gifts.plugin.label
        own: dict[str, str] = {}
        clashes: list[Problem] = []
        for name in _names(gifts):
            if name in owners or name in own:
                clashes.append(plugging.plugin_clash(label, name, owners.get(name, label)))
            own[name] = label
        problems += clashes
        if not clashes:
            owners |= own
            kept.append(gifts)
    return kept, problems


def fitting(asked: Sequence[Gifts]) -> tuple[list[Gifts], list[Problem]]:
    """The plugins whose vocabularies can be put together, and what is wrong with the others.

    One that is left out may take others along that include what it gave; so the checks begin anew each time.
    """
    kept = list(asked)
    problems: list[Problem] = []
    while True:
        found = _first_misfits(kept)
        if not any(found):
            return kept, problems
        problems += [problem for misfits in found for problem in misfits]
        kept = [gifts for gifts, misfits in zip(kept, found, strict=True) if not misfits]


def known_of(kept: Iterable[Gifts]) -> dict[str, Vocabulary]:
    """Every vocabulary by its name."""
    return {vocabulary.name: vocabulary for gifts in kept for vocabulary in gifts.vocabularies}


def _names(gifts: Gifts) -> Iterator[str]:
    for vocabulary in gifts.vocabularies:
        yield f"the vocabulary {quoted(vocabulary.name)}"
    for ruleset in gifts.rulesets:
        yield f"the rule set {quoted(ruleset)}"


def _first_misfits(kept: Sequence[Gifts]) -> list[list[Problem]]:
    # In this order, because each check takes for granted what the one before it found.
    known = known_of(kept)
    found: list[list[Problem]] = []
    for check in (_unknown_includes, _circles, _doubled, _mistakable, _unmeasurable):
        found = [[*check(gifts, known)] for gifts in kept]
        if any(found):
            break
    return found


def _unknown_includes(gifts: Gifts, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in gifts.vocabularies:
        for include in one.includes:
            if include not in known:
                yield plugging.plugin_unknown_include(gifts.plugin.label, one.name, include, near(include, known))


def _circles(gifts: Gifts, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in gifts.vocabularies:
        if includes_itself(one, known):
            yield plugging.plugin_include_circle(gifts.plugin.label, one.name)


def _doubled(gifts: Gifts, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in gifts.vocabularies:
        for trait, first in doubled_traits(one, known):
            what = f"the trait {quoted(trait.name)} of {quoted(one.name)}"
            yield plugging.plugin_clash(gifts.plugin.label, what, f"the vocabulary {quoted(first.name)}")


def _mistakable(gifts: Gifts, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in gifts.vocabularies:
        for trait, word in steps_like_traits(join(one, known)):
            yield plugging.plugin_step_like_trait(gifts.plugin.label, f"the trait {quoted(trait.name)}", word)


def _unmeasurable(gifts: Gifts, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in gifts.vocabularies:
        whole = join(one, known)
        # What formulas say is read with the first rule file: the grammar takes longer than all plugins together.
        for problem in misnamed(whole.measures, whole.traits, whole.constants):
            yield plugging.plugin_measure(gifts.plugin.label, one.name, problem)
