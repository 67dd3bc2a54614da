"""Whether a plugin is sound: all that koirules expects of one, tried out, and what is wrong told in words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from tempfile import TemporaryDirectory

from koirules.api import read_standard
from koirules.plugins import Registry, registry_with
from koirules.report.plugged_drawings import PluggedDrawing
from koirules.testing import wording
from koirules.testing.gradings import of_ruleset, of_whole_rules
from koirules.testing.importing import of_import
from koirules.testing.made_records import made_records
from koirules.testing.measuring import of_measures
from koirules.testing.pages import of_drawing
from koirules.testing.sheets import of_sheets
from koirules.testing.speaking import of_health, of_phrases, of_silence
from koirules.testing.whole_rules import whole_rules
from koirules.vocabulary.skins import clashes, lay_over, name_with
from koirules.vocabulary.traits import Variety
from koirules.vocabulary.units import Dimension, Unit

_MOST_SHOWN = 40


_NO_REASONS: Mapping[str, str] = {}


def check_plugin(
    plugin: object,
    *beside: object,
    fish: int = 100,
    without_silence: Mapping[str, str] = _NO_REASONS,
    without_phrases: Mapping[str, str] = _NO_REASONS,
    may_be_silent: Mapping[str, str] = _NO_REASONS,
) -> None:
    """Raise AssertionError, with everything that is wrong in words, where a plugin is not sound.

    plugin: the module that its entry point names. beside: other plugins that it builds on, by whose vocabularies or under
    whose skins it is tried too. fish: how many invented records to grade by each rule set. without_silence, without_phrases,
    may_be_silent: by trait, why no rule set says what silence means of it, why it has no phrases, and why silence may take it
    for granted though it speaks of health.
    """
    found = findings(
        plugin,
        *beside,
        fish=fish,
        without_silence=without_silence,
        without_phrases=without_phrases,
        may_be_silent=may_be_silent,
    )
    if found:
        more = [f"… and {len(found) - _MOST_SHOWN} more"] if len(found) > _MOST_SHOWN else []
        raise AssertionError("\n  - ".join(["this plugin is not sound:", *found[:_MOST_SHOWN], *more]))


def findings(
    plugin: object,
    *beside: object,
    fish: int = 100,
    without_silence: Mapping[str, str] = _NO_REASONS,
    without_phrases: Mapping[str, str] = _NO_REASONS,
    may_be_silent: Mapping[str, str] = _NO_REASONS,
) -> tuple[str, ...]:
    """Everything that is wrong with a plugin, a sentence each; empty where it is sound. As `check_plugin`.

    Looked at: that it can be loaded, beside what ships in the box; the words of its vocabularies; a rule file that names
    every trait, step and place; measures where something is missing or not sure; blank sheets with their drop-downs, filled in
    and read again; its rule sets with their samples; invented records graded alone and, where Polars is there, as a frame,
    with one answer; the pages of results and for judges; its units; its drawings, of the varieties whose subject names them;
    traits by eye of which its rule sets do not say what silence means, that have no phrases, or that speak of health and may be
    silent; what its import loads.
    """
    registry = registry_with(*beside, plugin)
    if registry.problems:
        return tuple(f"{problem.site}: {problem.cause} {problem.mend}" for problem in registry.problems)
    found = _findings(plugin, registry, registry_with(*beside), fish, without_silence, without_phrases, may_be_silent)
    return tuple(dict.fromkeys(found))


def _findings(
    plugin: object,
    registry: Registry,
    without: Registry,
    fish: int,
    without_silence: Mapping[str, str] = _NO_REASONS,
    without_phrases: Mapping[str, str] = _NO_REASONS,
    may_be_silent: Mapping[str, str] = _NO_REASONS,
) -> Iterator[str]:
    for name, vocabulary in registry.vocabularies.items():
        if name not in without.vocabularies:
            yield from wording.of_vocabulary(vocabulary)
    own = [*registry.varieties.values(), *registry.varieties.skins.values()]
    for variety in own:
        if variety.name not in without.vocabularies:
            yield from wording.of_other_words(variety, registry.varieties)
    for variety in _to_try(registry, without):
        yield from wording.of_variety(variety)
        records = made_records(variety.traits.values(), fish)
        yield from of_whole_rules(variety, records, registry)
        yield from of_measures(variety, registry, min(fish, 40))
        with TemporaryDirectory() as folder:
            yield from (f"{variety.name}: {told}" for told in of_sheets(variety, records, Path(folder)))
    for name, drawing in registry.drawings.items():
        if name not in without.drawings:
            yield from _of_drawing(PluggedDrawing(drawing.what, drawing.plugin), registry, fish)
    for name, unit in registry.units.items():
        if name not in without.units:
            yield from _of_unit(unit.what, registry)
    rulesets = [name for name in registry.rulesets if name not in without.rulesets]
    for name in rulesets:
        yield from of_ruleset(name, registry, fish)
    added = [one for name, one in registry.vocabularies.items() if name not in without.vocabularies]
    yield from of_silence(added, rulesets, registry, without_silence)
    yield from of_phrases(added, registry, without_phrases)
    yield from of_health(added, may_be_silent)
    yield from of_import(plugin)


def _of_drawing(found: PluggedDrawing, registry: Registry, fish: int) -> Iterator[str]:
    """Whether a drawing draws the invented records of each variety whose subject names it."""
    varieties = [one for one in registry.varieties.values() if one.subject.drawing == found.drawing.name]
    if not varieties:
        yield f'no subject names the drawing "{found.drawing.name}", so nothing shows it: write it into `Subject.drawing`'
    for variety in varieties:
        standard = read_standard(whole_rules(variety).text, "everything.koi", registry)
        yield from of_drawing(standard, made_records(variety.traits.values(), fish), found)


def _of_unit(unit: Unit, registry: Registry) -> Iterator[str]:
    """Whether rule files and records read a unit as they read those of koirules, in each way in which people write it."""
    held = unit.dimension.value
    most = "100" if unit.dimension is Dimension.SHARE else "1000000"
    kind = f"number in {held} from 0 to {most}"
    if unit.exact > int(most):
        yield f"1 {unit.symbol} is {unit.told}, more than any number of the rule language"
        return
    text = (
        f'standard "a unit" edition 1\ntrait measured as {kind}\n'
        f"grade all if measured between 1 {unit.symbol} and 1 {unit.symbol}\ngrade none_of_it otherwise\n"
    )
    standard = read_standard(text, "a_unit.koi", registry)
    for word in (unit.symbol, *unit.written):
        if standard.grade({"measured": f"1 {word}"}).grade != "all":
            yield f'"1 {word}" in a record is not 1 {unit.symbol} of a rule file'


def _to_try(registry: Registry, without: Registry) -> Iterable[Variety]:
    """The varieties that the plugin gives, and its skins over every variety over which they can lie."""
    varieties = registry.varieties
    for name, variety in varieties.items():
        if name not in without.varieties:
            yield variety
    for name, skin in varieties.skins.items():
        if name not in without.varieties.skins:
            for under in varieties.values():
                if not any(clashes(under, skin)):
                    yield lay_over(under, skin, name_with(under.name, (name,)))
