"""What one plugin gives, each part well formed by itself."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import TypeVar

from attrs import evolve, field

from koirules.hooks import Subcommand
from koirules.plugins.finding import Found
from koirules.problems import Problem, plugging
from koirules.problems.quoting import quoted
from koirules.records.exchange import RecordReader, ResultWriter
from koirules.values import frozen
from koirules.vocabulary.drawings import Drawing
from koirules.vocabulary.measures import Computed, Measure
from koirules.vocabulary.traits import Addition, Vocabulary
from koirules.vocabulary.units import Dimension, Unit
from koirules.vocabulary.wellformed import check_vocabulary
from koirules.vocabulary.words import NOT_STEPS, NOT_TRAITS, RESERVED, is_name

_T = TypeVar("_T")

_COMMAND = re.compile(r"[a-z][a-z0-9]*(-[a-z0-9]+)*")
_MOST_DIGITS = 12
"""So many digits may each part of the factor of a unit have, so that what is worked out with it rounds once."""
_ENDING = re.compile(r"\.[a-z0-9]{1,12}")
_TARGET = re.compile(r"[^\W\d]\w*(\.[^\W\d]\w*)*:[^\W\d]\w*", re.ASCII)


@frozen
class Contributions:
    """What one plugin gives."""

    plugin: Found
    vocabularies: tuple[Vocabulary, ...]
    rulesets: Mapping[str, Path] = field(hash=False)
    subcommands: tuple[Subcommand, ...]
    readers: tuple[RecordReader, ...]
    writers: tuple[ResultWriter, ...]
    additions: tuple[Addition, ...]
    drawings: tuple[Drawing, ...]
    units: tuple[Unit, ...]


def take(plugin: Found, given: Mapping[str, Sequence[object]], problems: list[Problem]) -> Contributions:
    """The contributions of a plugin, without what cannot be used.

    given: the answers to each hook by the hook's name. problems: where all that is wrong with them is put.
    """

    def listed(hook: str, type_: type[_T], check: Callable[[_T, str], Iterable[Problem]]) -> tuple[_T, ...]:
        taken: list[_T] = []
        for answer in given[hook]:
            for one in _members(plugin.label, hook, answer, type_, problems):
                problems.extend(check(one, plugin.label))
                taken.append(one)
        return tuple(taken)

    # What ships in the box is looked through by the tests: it takes a while, and every command would begin with it.
    look_through = _as_tested if plugin.is_box else check_vocabulary
    vocabularies = listed("koirules_vocabularies", Vocabulary, look_through)
    additions = listed("koirules_additions", Addition, _check_addition)
    if not problems and not plugin.is_box:
        vocabularies = tuple(evolve(one, measures=_signed(one.measures, plugin.label)) for one in vocabularies)
        additions = tuple(evolve(one, measures=_signed(one.measures, plugin.label)) for one in additions)
    return Contributions(
        plugin,
        vocabularies=vocabularies,
        rulesets=_rulesets(plugin.label, given["koirules_rulesets"], problems),
        subcommands=listed("koirules_subcommands", Subcommand, _check_subcommand),
        readers=listed("koirules_record_readers", RecordReader, _check_format),
        writers=listed("koirules_result_writers", ResultWriter, _check_format),
        additions=additions,
        drawings=listed("koirules_drawings", Drawing, _check_drawing),
        units=listed("koirules_units", Unit, _check_unit),
    )


def _as_tested(_vocabulary: Vocabulary, _plugin: str) -> tuple[Problem, ...]:
    return ()


def _signed(measures: tuple[Measure, ...], plugin: str) -> tuple[Measure, ...]:
    """Measures that say whose they are, so that one that fails can be told with its plugin."""
    return tuple(evolve(one, plugin=plugin) if isinstance(one, Computed) else one for one in measures)


def _members(plugin: str, hook: str, answer: object, type_: type[_T], problems: list[Problem]) -> Iterator[_T]:
    name = type_.__name__
    if not isinstance(answer, Sequence) or isinstance(answer, str):
        expected = f"a list or tuple of {name}"
        problems.append(plugging.plugin_wrong_type(plugin, f"what `{hook}` gives", expected, type_of(answer)))
        return
    for one in answer:
        if isinstance(one, type_):
            yield one
        else:
            expected = f"{'an' if name[0] in 'AEIOU' else 'a'} {name}"
            problems.append(
                plugging.plugin_wrong_type(plugin, f"a part of what `{hook}` gives", expected, type_of(one))
            )


def _rulesets(plugin: str, answers: Sequence[object], problems: list[Problem]) -> Mapping[str, Path]:
    taken: dict[str, Path] = {}
    for given in answers:
        if not isinstance(given, Mapping):
            expected = "a mapping of name to Path"
            what = "what `koirules_rulesets` gives"
            problems.append(plugging.plugin_wrong_type(plugin, what, expected, type_of(given)))
            continue
        for name, path in given.items():
            wrong = _wrong_ruleset(plugin, name, path)
            if wrong is None:
                taken[name] = path
            else:
                problems.append(wrong)
    return taken


def _wrong_ruleset(plugin: str, name: object, path: object) -> Problem | None:
    if not isinstance(name, str) or not isinstance(path, Path):
        got = f"of types {type(name).__name__} and {type(path).__name__}"
        return plugging.plugin_wrong_type(plugin, "a part of what `koirules_rulesets` gives", "a name to a Path", got)
    if not name.strip() or name.endswith(".koi") or set(name) & {"/", "\\"}:
        # A command takes a name or a path, and has to know which of them it was given.
        return plugging.plugin_ruleset_like_path(plugin, name)
    if not path.is_file():
        return plugging.plugin_no_such_file(plugin, name, str(path))
    return None


def _check_subcommand(command: Subcommand, plugin: str) -> Iterator[Problem]:
    for name, value in (("name", command.name), ("help", command.help), ("target", command.target)):
        if not isinstance(value, str):
            yield plugging.plugin_wrong_type(plugin, f"the {name} of a Subcommand", "a text", type_of(value))
            return
    if not _COMMAND.fullmatch(command.name):
        yield plugging.plugin_bad_command(plugin, command.name)
    if not command.help.strip() or not command.help.isprintable():
        yield plugging.plugin_command_help(plugin, command.name)
    if not _TARGET.fullmatch(command.target):
        yield plugging.plugin_command_target(plugin, command.name, command.target)


def _check_format(format_: RecordReader | ResultWriter, plugin: str) -> Iterator[Problem]:
    what = type(format_).__name__
    for name, value in (("ending", format_.ending), ("title", format_.title)):
        if not isinstance(value, str):
            yield plugging.plugin_wrong_type(plugin, f"the {name} of a {what}", "a text", type_of(value))
            return
    work = format_.read if isinstance(format_, RecordReader) else format_.write
    if not callable(work):
        yield plugging.plugin_wrong_type(plugin, f"the function of a {what}", "a function", type_of(work))
    if not _ENDING.fullmatch(format_.ending):
        yield plugging.plugin_bad_ending(plugin, format_.ending)


def _check_drawing(drawing: Drawing, plugin: str) -> Iterator[Problem]:
    name: object = drawing.name
    if not isinstance(name, str) or not name.strip() or not name.isprintable():
        yield plugging.plugin_wrong_type(plugin, "the name of a Drawing", "a line of text", type_of(name))
    if not callable(drawing.draw):
        yield plugging.plugin_wrong_type(plugin, "`draw` of a Drawing", "a function", type_of(drawing.draw))


_LEAST, _MOST = Fraction(1, 1_000_000), Fraction(1_000_000)
"""How much of the held unit a unit may be."""


def _check_unit(unit: Unit, plugin: str) -> Iterator[Problem]:
    types = {"symbol": str, "dimension": Dimension, "factor": Decimal, "written": tuple, "per": int, "source": str}
    for name, expected in types.items():
        value = getattr(unit, name)
        if not isinstance(value, expected) or isinstance(value, bool):
            what = f"the {name} of a Unit"
            yield plugging.plugin_wrong_type(plugin, what, f"of type {expected.__name__}", type_of(value))
            return
    if not all(isinstance(word, str) for word in unit.written):
        yield plugging.plugin_wrong_type(plugin, "a spelling of a Unit", "a text", "something else")
        return
    for why in _unusable(unit):
        yield plugging.plugin_bad_unit(plugin, unit.symbol, why)


def _unusable(unit: Unit) -> Iterator[str]:
    """What keeps a unit from being used, each as the end of a sentence."""
    # The words of the grammar are looked up only where a plugin gives units.
    from koirules.language.parse.tables import words_of_grammar

    if not is_name(unit.symbol) or not unit.symbol.isalpha():
        yield "its symbol is not one word of letters"
    if unit.symbol in words_of_grammar() | RESERVED | NOT_STEPS | NOT_TRAITS:
        yield "its symbol is a word of the rule language"
    for word in unit.written:
        if not word.strip() or any(sign.isspace() or sign.isdigit() or sign in ".,;:-+/()" for sign in word):
            yield f"people cannot write {quoted(word)} for it: that is no word without digits and marks"
    if not unit.factor.is_finite() or unit.per < 1 or not _LEAST <= unit.exact <= _MOST:
        yield f"{unit.factor}/{unit.per} {unit.dimension.value} lies outside of a millionth and a million"
    elif len(unit.factor.as_tuple().digits) > _MOST_DIGITS or unit.per > 10**_MOST_DIGITS:
        yield f"its factor has more than {_MOST_DIGITS} digits"
    if unit.dimension is Dimension.TEMPERATURE:
        yield "temperatures do not begin at the same nought, and a factor does not say that"
    if not unit.source.strip():
        yield "it does not say where its factor is from"


def _check_addition(addition: Addition, plugin: str) -> Iterator[Problem]:
    """An addition is well formed where a vocabulary of it would be."""
    if not isinstance(addition.to, str):
        yield plugging.plugin_wrong_type(plugin, "the `to` of an Addition", "a text", type_of(addition.to))
        return
    parts: tuple[object, ...] = (addition.traits, addition.measures, addition.constants)
    if not all(isinstance(part, tuple) for part in parts):
        wrong = next(part for part in parts if not isinstance(part, tuple))
        yield plugging.plugin_wrong_type(plugin, "a part of an Addition", "a tuple", type_of(wrong))
        return
    name = addition.to if is_name(addition.to) else "addition"
    whole = Vocabulary(
        name,
        name,
        addition.traits,
        measures=addition.measures,
        constants=addition.constants,
        phrases=addition.phrases,
        sayings=addition.sayings,
    )
    yield from check_vocabulary(whole, plugin)


def type_of(value: object) -> str:
    """The type of a value, for the inside of a sentence."""
    return f"of type {type(value).__name__}"
