"""All that the plugins give, frozen."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path
from types import MappingProxyType

from attrs import field, frozen

from koirules import builtin
from koirules.plugins.asking import Gifts, ask, in_one_line
from koirules.plugins.finding import Found, find_box, find_given, find_installed
from koirules.plugins.settling import first_come, fitting, known_of
from koirules.problems import Problem, plugging
from koirules.vocabulary.joining import join
from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.traits import Vocabulary


@frozen
class Registry:
    """All that the plugins give, with what is wrong with those that were left out.

    varieties: by the word after `variety` in a rule file; `varieties.skins`: by the word after `with`. vocabularies: all of
    them, the shared ones too, by name. rulesets: the rule file of each rule set, by name. problems: warnings, one or more
    for each plugin left out. sources: who gives a variety or a skin, as distribution and version; ruleset_sources: who
    gives a rule set.
    """

    varieties: Varieties
    vocabularies: Mapping[str, Vocabulary] = field(hash=False)
    rulesets: Mapping[str, Path] = field(hash=False)
    problems: tuple[Problem, ...]
    sources: Mapping[str, str] = field(hash=False)
    ruleset_sources: Mapping[str, str] = field(hash=False)


@cache
def load_registry() -> Registry:
    """The registry of what ships in the box and of every installed plugin; made once in a process."""
    try:
        installed, unlisted = find_installed(), []
    except Exception as error:  # broken metadata of any distribution, not only of ours
        installed, unlisted = [], [plugging.plugins_unlisted(in_one_line(error))]
    return _registry([find_box(), *installed], unlisted)


def registry_with(*plugins: object) -> Registry:
    """The registry of what ships in the box and of the given plugins, modules or objects; nothing that is installed."""
    return _registry([find_box(), *(find_given(plugin) for plugin in plugins if plugin is not builtin)], [])


def _registry(found: Iterable[Found], problems: list[Problem]) -> Registry:
    asked = [ask(plugin) for plugin in found]
    kept, clashes = first_come(gifts for gifts in asked if isinstance(gifts, Gifts))
    kept, misfits = fitting(kept)
    known = known_of(kept)
    refused = [problem for gifts in asked if not isinstance(gifts, Gifts) for problem in gifts]
    varieties = {name: join(one, known) for name, one in known.items() if one.is_variety}
    skins = {name: join(one, known) for name, one in known.items() if one.is_skin}
    rulesets = {name: path for gifts in kept for name, path in gifts.rulesets.items()}
    sources = {one.name: gifts.plugin.source for gifts in kept for one in gifts.vocabularies if _is_spoken(one)}
    ruleset_sources = {name: gifts.plugin.source for gifts in kept for name in gifts.rulesets}
    return Registry(
        varieties=Varieties(MappingProxyType(varieties), MappingProxyType(skins)),
        vocabularies=MappingProxyType(known),
        rulesets=MappingProxyType(rulesets),
        problems=(*problems, *refused, *clashes, *misfits),
        sources=MappingProxyType(sources),
        ruleset_sources=MappingProxyType(ruleset_sources),
    )


def _is_spoken(vocabulary: Vocabulary) -> bool:
    return vocabulary.is_variety or vocabulary.is_skin
