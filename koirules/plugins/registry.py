"""All that the plugins give, frozen."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path
from types import MappingProxyType

from attrs import evolve, field

from koirules import builtin
from koirules.hooks import Subcommand
from koirules.plugins.adding import with_additions
from koirules.plugins.calling import Manager
from koirules.plugins.code_key import code_key
from koirules.plugins.contributions import Contributions
from koirules.plugins.finding import Found, find_box, find_given, find_installed
from koirules.plugins.settling import Plugged, drawn_by, first_come, first_named, fitting, free_units, known_of
from koirules.problems import Problem, plugging
from koirules.problems.quoting import error_told
from koirules.records.exchange import RecordReader, ResultWriter
from koirules.records.plugged_formats import ENDINGS_READ, ENDINGS_WRITTEN, Formats, use_formats
from koirules.report.plugged_drawings import PluggedDrawing, use_drawings
from koirules.values import frozen
from koirules.vocabulary.drawings import Drawing
from koirules.vocabulary.joining import join
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.subject import FISH_FROM_ABOVE
from koirules.vocabulary.traits import Addition, Vocabulary
from koirules.vocabulary.units import Unit, added_units, use_units


@frozen
class Registry:
    """All that the plugins give, with what is wrong with those that were left out.

    varieties: by the word after `variety` in a rule file; `varieties.skins`: by the word after `with`. vocabularies: all of
    them, the shared ones too, by name. rulesets: the rule file of each rule set, by name. problems: warnings, one or more
    for each plugin left out. sources: who gives a variety or a skin, as distribution and version; ruleset_sources: who
    gives a rule set. subcommands: the commands of plugins, by name; readers, writers: their formats, by ending. additions: what
    they add to vocabularies of others. drawings: theirs, by name; units: theirs, by symbol. modules: the module of each
    plugin that was looked at. key: it changes whenever the code or the version of koirules or of a plugin does; "" for plugins
    that are not installed.
    """

    varieties: Varieties
    vocabularies: Mapping[str, Vocabulary] = field(hash=False)
    rulesets: Mapping[str, Path] = field(hash=False)
    problems: tuple[Problem, ...]
    sources: Mapping[str, str] = field(hash=False)
    ruleset_sources: Mapping[str, str] = field(hash=False)
    subcommands: Mapping[str, Plugged[Subcommand]] = field(hash=False)
    readers: Mapping[str, Plugged[RecordReader]] = field(hash=False)
    writers: Mapping[str, Plugged[ResultWriter]] = field(hash=False)
    additions: tuple[Plugged[Addition], ...] = field(hash=False)
    drawings: Mapping[str, Plugged[Drawing]] = field(hash=False)
    units: Mapping[str, Plugged[Unit]] = field(hash=False)
    modules: tuple[str, ...] = field(eq=False)
    key: str = field(default="", eq=False)


@cache
def load_registry() -> Registry:
    """The registry of what ships in the box and of every installed plugin; made once in a process."""
    try:
        installed, unlisted = find_installed(), []
    except Exception as error:  # broken metadata of any distribution, not only of ours
        installed, unlisted = [], [plugging.plugins_unlisted(error_told(error))]
    found = [find_box(), *installed]
    registry = _registry(found, unlisted)
    return evolve(registry, key=code_key([plugin.source for plugin in found], registry.modules))


def registry_with(*plugins: object) -> Registry:
    """The registry of what ships in the box and of the given plugins, modules or objects; nothing that is installed."""
    return _registry([find_box(), *(find_given(plugin) for plugin in plugins if plugin is not builtin)], [])


def _registry(found: Iterable[Found], problems: list[Problem]) -> Registry:
    manager = Manager()
    plugins = list(found)
    asked = [manager.contributions(plugin) for plugin in plugins]
    kept, clashes = first_come(given for given in asked if isinstance(given, Contributions))
    kept, misfits = fitting(kept)
    units, unused = free_units(kept)
    if units:
        use_units(
            {
                **{unit.symbol: unit for unit in added_units()},
                **{name: one.what for name, one in units.items()},
            }.values()
        )
    drawings, doubled = first_named(
        kept, "drawing", lambda given: ((one.name, one) for one in given.drawings), (FISH_FROM_ABOVE,)
    )
    known, undrawn = drawn_by(known_of(kept), kept, (*drawings, FISH_FROM_ABOVE))
    refused = [problem for given in asked if not isinstance(given, Contributions) for problem in given]
    known, additions, unfit = with_additions(known, kept)
    subcommands, late = first_named(kept, "command", lambda given: ((one.name, one) for one in given.subcommands))
    readers, later = first_named(
        kept, "reader of", lambda given: ((one.ending, one) for one in given.readers), ENDINGS_READ
    )
    writers, last = first_named(
        kept, "writer of", lambda given: ((one.ending, one) for one in given.writers), ENDINGS_WRITTEN
    )
    varieties = {name: join(one, known) for name, one in known.items() if one.is_variety}
    skins = {name: join(one, known) for name, one in known.items() if one.is_skin}
    rulesets = {name: path for given in kept for name, path in given.rulesets.items()}
    sources = {one.name: given.plugin.source for given in kept for one in given.vocabularies if _is_spoken(one)}
    ruleset_sources = {name: given.plugin.source for given in kept for name in given.rulesets}
    return Registry(
        varieties=Varieties(MappingProxyType(varieties), MappingProxyType(skins), join(builtin.SHARED, known)),
        vocabularies=MappingProxyType(known),
        rulesets=MappingProxyType(rulesets),
        problems=(*problems, *refused, *clashes, *misfits, *unfit, *late, *later, *last, *doubled, *undrawn, *unused),
        sources=MappingProxyType(sources),
        ruleset_sources=MappingProxyType(ruleset_sources),
        subcommands=MappingProxyType(subcommands),
        additions=additions,
        drawings=MappingProxyType(drawings),
        units=MappingProxyType(units),
        readers=MappingProxyType(readers),
        writers=MappingProxyType(writers),
        modules=tuple(plugin.module for plugin in plugins if plugin.module),
    )


def _is_spoken(vocabulary: Vocabulary) -> bool:
    return vocabulary.is_variety or vocabulary.is_skin


def _formats() -> Formats:
    registry = load_registry()
    return Formats(
        {ending: (one.what, one.plugin) for ending, one in registry.readers.items()},
        {ending: (one.what, one.plugin) for ending, one in registry.writers.items()},
    )


def _drawings() -> Mapping[str, PluggedDrawing]:
    return {name: PluggedDrawing(one.what, one.plugin) for name, one in load_registry().drawings.items()}


use_formats(_formats)
use_drawings(_drawings)
