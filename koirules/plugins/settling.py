"""Plugins fitted to each other: who keeps a name, and whose vocabularies can be put together."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from typing import Generic, TypeVar

from attrs import evolve

from koirules.plugins.contributions import Contributions
from koirules.problems import Problem, plugging
from koirules.problems.quoting import quoted
from koirules.values import frozen
from koirules.vocabulary.joining import doubled_traits, includes_itself, join, steps_like_traits
from koirules.vocabulary.measure_names import misnamed
from koirules.vocabulary.nearness import near
from koirules.vocabulary.traits import Vocabulary
from koirules.vocabulary.units import OWN_UNITS, Unit

_T = TypeVar("_T")


@frozen
class Plugged(Generic[_T]):
    """One thing that a plugin gives. plugin: the plugin as problems name it. source: its distribution with its version."""

    what: _T
    plugin: str
    source: str


def first_come(asked: Iterable[Contributions]) -> tuple[list[Contributions], list[Problem]]:
    """The plugins whose names were all free when their turn came, and the clashes of the others."""
    owners: dict[str, str] = {}
    kept: list[Contributions] = []
    problems: list[Problem] = []
    for given in asked:
        label = given.plugin.label
        own: dict[str, str] = {}
        clashes: list[Problem] = []
        for name in _names(given):
            if name in owners or name in own:
                clashes.append(plugging.plugin_clash(label, name, owners.get(name, label)))
            own[name] = label
        problems += clashes
        if not clashes:
            owners |= own
            kept.append(given)
    return kept, problems


def fitting(asked: Sequence[Contributions]) -> tuple[list[Contributions], list[Problem]]:
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
        kept = [given for given, misfits in zip(kept, found, strict=True) if not misfits]


def known_of(kept: Iterable[Contributions]) -> dict[str, Vocabulary]:
    """Every vocabulary by its name."""
    return {vocabulary.name: vocabulary for given in kept for vocabulary in given.vocabularies}


def drawn_by(
    known: Mapping[str, Vocabulary], kept: Iterable[Contributions], drawings: Collection[str]
) -> tuple[dict[str, Vocabulary], list[Problem]]:
    """The vocabularies, each with a drawing that there is or none, and a problem for each whose drawing nobody brings."""
    found = dict(known)
    problems: list[Problem] = []
    for given in kept:
        for one in given.vocabularies:
            if one.subject is not None and one.subject.drawing and one.subject.drawing not in drawings:
                name = one.subject.drawing
                problems.append(plugging.no_drawing(given.plugin.label, one.name, name, near(name, drawings)))
                found[one.name] = evolve(one, subject=evolve(one.subject, drawing=""))
    return found, problems


def free_units(kept: Iterable[Contributions]) -> tuple[dict[str, Plugged[Unit]], list[Problem]]:
    """The units of plugins by symbol, and a problem for each whose symbol, or a spelling of it, somebody else has."""
    owners = dict.fromkeys((word for own in OWN_UNITS.values() for word in (own.symbol, *own.written)), "koirules")
    taken: dict[str, Plugged[Unit]] = {}
    problems: list[Problem] = []
    for given in kept:
        label = given.plugin.label
        for unit in given.units:
            words = (unit.symbol, *unit.written)
            clash = next((word for word in words if word in owners), None)
            if clash is None:
                owners |= dict.fromkeys(words, label)
                taken[unit.symbol] = Plugged(unit, label, given.plugin.source)
            else:
                what = f"the unit {quoted(unit.symbol)}" + (
                    f", written {quoted(clash)}" if clash != unit.symbol else ""
                )
                problems.append(plugging.plugin_name_taken(label, what, owners[clash]))
    return taken, problems


def first_named(
    kept: Iterable[Contributions],
    what: str,
    named: Callable[[Contributions], Iterable[tuple[str, _T]]],
    own: Collection[str] = (),
) -> tuple[dict[str, Plugged[_T]], list[Problem]]:
    """What plugins give by name, each name from the first that gives it, and a problem for each that comes too late.

    what: what it is, for the inside of a sentence. named: the names and things of one plugin. own: the names that koirules
    keeps for itself.
    """
    taken: dict[str, Plugged[_T]] = {}
    problems: list[Problem] = []
    for given in kept:
        label, source = given.plugin.label, given.plugin.source
        for name, one in named(given):
            if name in own or name in taken:
                first = "koirules" if name in own else taken[name].plugin
                problems.append(plugging.plugin_name_taken(label, f"the {what} {quoted(name)}", first))
            else:
                taken[name] = Plugged(one, label, source)
    return taken, problems


def _names(given: Contributions) -> Iterator[str]:
    for vocabulary in given.vocabularies:
        yield f"the vocabulary {quoted(vocabulary.name)}"
    for ruleset in given.rulesets:
        yield f"the rule set {quoted(ruleset)}"


def _first_misfits(kept: Sequence[Contributions]) -> list[list[Problem]]:
    # In this order, because each check takes for granted what the one before it found.
    known = known_of(kept)
    found: list[list[Problem]] = []
    for check in (_unknown_includes, _circles, _doubled, _mistakable, _unmeasurable):
        found = [[*check(given, known)] for given in kept]
        if any(found):
            break
    return found


def _unknown_includes(given: Contributions, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in given.vocabularies:
        for include in one.includes:
            if include not in known:
                yield plugging.plugin_unknown_include(given.plugin.label, one.name, include, near(include, known))


def _circles(given: Contributions, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in given.vocabularies:
        if includes_itself(one, known):
            yield plugging.plugin_include_circle(given.plugin.label, one.name)


def _doubled(given: Contributions, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in given.vocabularies:
        for trait, first in doubled_traits(one, known):
            what = f"the trait {quoted(trait.name)} of {quoted(one.name)}"
            yield plugging.plugin_clash(given.plugin.label, what, f"the vocabulary {quoted(first.name)}")


def _mistakable(given: Contributions, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in given.vocabularies:
        for trait, word in steps_like_traits(join(one, known)):
            yield plugging.plugin_step_like_trait(given.plugin.label, f"the trait {quoted(trait.name)}", word)


def _unmeasurable(given: Contributions, known: Mapping[str, Vocabulary]) -> Iterator[Problem]:
    for one in given.vocabularies:
        whole = join(one, known)
        # What formulas say is read with the first rule file: the grammar takes longer than all plugins together.
        for problem in misnamed(whole.measures, whole.traits, whole.constants):
            yield plugging.plugin_measure(given.plugin.label, one.name, problem)
