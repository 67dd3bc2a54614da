"""What plugins add to the vocabularies of others."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from attrs import evolve

from koirules.plugins.contributions import Contributions
from koirules.plugins.settling import Plugged
from koirules.problems import Problem, plugging
from koirules.problems.quoting import quoted
from koirules.vocabulary.joining import doubled_traits, join, line_up, steps_like_traits
from koirules.vocabulary.measure_names import misnamed
from koirules.vocabulary.measures import outputs_of
from koirules.vocabulary.nearness import near
from koirules.vocabulary.traits import Addition, Vocabulary


def with_additions(
    known: Mapping[str, Vocabulary], kept: Iterable[Contributions]
) -> tuple[dict[str, Vocabulary], tuple[Plugged[Addition], ...], list[Problem]]:
    """The vocabularies with what plugins add to them, the additions, and a problem for each that does not fit."""
    grown = dict(known)
    taken: list[Plugged[Addition]] = []
    problems: list[Problem] = []
    for given in kept:
        for addition in given.additions:
            wrong = next(_misfits(addition, given.plugin.label, grown), None)
            if wrong is None:
                grown[addition.to] = _added(grown[addition.to], addition)
                taken.append(Plugged(addition, given.plugin.label, given.plugin.source))
            else:
                problems.append(wrong)
    return grown, tuple(taken), problems


def _added(vocabulary: Vocabulary, addition: Addition) -> Vocabulary:
    return evolve(
        vocabulary,
        traits=(*vocabulary.traits, *addition.traits),
        measures=(*vocabulary.measures, *addition.measures),
        constants=(*vocabulary.constants, *addition.constants),
        phrases={**vocabulary.phrases, **addition.phrases},
        sayings=(*vocabulary.sayings, *addition.sayings),
    )


def _misfits(addition: Addition, plugin: str, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    """What keeps an addition out: checked in every vocabulary that would have it."""
    if addition.to not in known:
        yield plugging.plugin_addition_nowhere(plugin, addition.to, near(addition.to, known))
        return
    grown = {**known, addition.to: _added(known[addition.to], addition)}
    for name, vocabulary in grown.items():
        line = line_up(vocabulary, grown)
        if not any(one.name == addition.to for one in line):
            continue
        for why in _clashes(addition, vocabulary, grown):
            yield plugging.plugin_addition(plugin, addition.to, f"In {quoted(name)} {why}.")
        whole = join(vocabulary, grown)
        for problem in misnamed(whole.measures, whole.traits, whole.constants):
            yield plugging.plugin_addition(plugin, addition.to, problem.cause)


def _clashes(addition: Addition, vocabulary: Vocabulary, known: Mapping[str, Vocabulary]) -> Iterator[str]:
    """The clashes of an addition within one vocabulary that has it, each as the end of a sentence."""
    added = {trait.name for trait in addition.traits}
    for trait, _ in doubled_traits(vocabulary, known):
        if trait.name in added:
            yield f"the trait {quoted(trait.name)} is there already"
    whole = join(vocabulary, known)
    for trait, word in steps_like_traits(whole):
        if trait.name in added or word in added:
            yield f"{quoted(word)} is a word of the trait {quoted(trait.name)} and also the name of a trait"
    measured = [name for measure in whole.measures for name in outputs_of(measure)]
    for measure in addition.measures:
        for name in outputs_of(measure):
            if measured.count(name) > 1:
                yield f"something else gives the trait {quoted(name)}"
    constants = [constant.name for constant in whole.constants]
    for constant in addition.constants:
        if constants.count(constant.name) > 1:
            yield f"the constant {quoted(constant.name)} is there already"
    before = [said for one in line_up(vocabulary, known) for said in one.phrases]
    for said in addition.phrases:
        if before.count(said) > 1:
            yield f"the phrase {quoted(said)} is there already"
