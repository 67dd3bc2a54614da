"""One plugin asked for what it gives, so that nothing it does can reach the others or the command."""

from __future__ import annotations

import sys
from collections.abc import Iterator, Mapping, Sequence
from contextlib import redirect_stdout
from pathlib import Path

import pluggy
from attrs import field, frozen

from koirules.hooks import API, OLDEST_API, Hooks
from koirules.plugins.finding import GROUP, Found
from koirules.problems import Problem, plugging
from koirules.problems.quoting import visible
from koirules.vocabulary.nearness import near
from koirules.vocabulary.traits import Vocabulary
from koirules.vocabulary.wellformed import check_vocabulary


@frozen
class Gifts:
    """What one plugin gives, each part well formed by itself."""

    plugin: Found
    vocabularies: tuple[Vocabulary, ...]
    rulesets: Mapping[str, Path] = field(hash=False)


def ask(plugin: Found) -> Gifts | list[Problem]:
    """Imports a plugin and calls its hooks. Gives its problems instead where anything at all is wrong with it.

    What it prints goes to standard error: standard output is the command's, and may be data.
    """
    with redirect_stdout(sys.stderr):
        return _ask(plugin)


def _ask(plugin: Found) -> Gifts | list[Problem]:
    when = "when it was imported"
    problems: list[Problem] = []
    vocabularies: list[Vocabulary] = []
    rulesets: dict[str, Path] = {}
    try:
        code = plugin.load()
        problems += _check_api(plugin.label, code)
        when = "when its hooks were read"
        callers = [] if problems else _hooks_of(code)
        problems += _check_hooks(plugin.label, callers) if not problems else ()
        for caller in () if problems else callers:
            when = f"in {caller.name}"
            # Called one by one and not through pluggy, whose call ends for all plugins at the first that raises.
            for answer in caller.get_hookimpls():
                given = answer.function()
                if caller.name == "koirules_vocabularies":
                    problems += _take_vocabularies(plugin.label, given, vocabularies)
                else:
                    problems += _take_rulesets(plugin.label, given, rulesets)
    except KeyboardInterrupt:  # somebody stops the command
        raise
    except BaseException as error:  # a stranger's code may raise anything, and extensions in Rust no Exception
        problems = [plugging.plugin_raises(plugin.label, when, in_one_line(error))]
    return problems or Gifts(plugin, tuple(vocabularies), rulesets)


def _check_api(plugin: str, code: object) -> Iterator[Problem]:
    written_for = getattr(code, "KOIRULES_API", None)
    if written_for is None:
        yield plugging.plugin_without_api(plugin, API)
    elif not isinstance(written_for, int) or isinstance(written_for, bool):
        yield plugging.plugin_wrong_type(plugin, "`KOIRULES_API`", "a whole number", _type(written_for))
    elif written_for > API:
        yield plugging.plugin_too_new(plugin, written_for, API)
    elif written_for < OLDEST_API:
        yield plugging.plugin_too_old(plugin, written_for, OLDEST_API)


def in_one_line(error: BaseException) -> str:
    """An error with its kind, for the inside of a sentence."""
    said = " ".join(str(error).split())
    return visible(f"{type(error).__name__}: {said}" if said else type(error).__name__)


def _hooks_of(code: object) -> list[pluggy.HookCaller]:
    # A manager for each plugin, so that nothing half-registered stays behind in one that others use.
    manager = pluggy.PluginManager(GROUP)
    manager.add_hookspecs(Hooks)
    manager.register(code)
    return [caller for caller in manager.get_hookcallers(code) or () if not _is_optional(caller)]


def _is_optional(caller: pluggy.HookCaller) -> bool:
    return not caller.has_spec() and all(answer.optionalhook for answer in caller.get_hookimpls())


def _check_hooks(plugin: str, callers: Sequence[pluggy.HookCaller]) -> Iterator[Problem]:
    if not callers:
        yield plugging.plugin_without_hooks(plugin)
    hooks = [name for name in vars(Hooks) if not name.startswith("_")]
    for caller in callers:
        if not caller.has_spec():
            yield plugging.plugin_unknown_hook(plugin, caller.name, near(caller.name, hooks))


def _take_vocabularies(plugin: str, given: object, taken: list[Vocabulary]) -> Iterator[Problem]:
    expected = "a list or tuple of Vocabulary"
    if not isinstance(given, Sequence):
        yield plugging.plugin_wrong_type(plugin, "what `koirules_vocabularies` gives", expected, _type(given))
        return
    for one in given:
        if isinstance(one, Vocabulary):
            yield from check_vocabulary(one, plugin)
            taken.append(one)
        else:
            yield plugging.plugin_wrong_type(
                plugin, "a part of what `koirules_vocabularies` gives", "a Vocabulary", _type(one)
            )


def _take_rulesets(plugin: str, given: object, taken: dict[str, Path]) -> Iterator[Problem]:
    if not isinstance(given, Mapping):
        yield plugging.plugin_wrong_type(
            plugin, "what `koirules_rulesets` gives", "a mapping of name to Path", _type(given)
        )
        return
    for name, path in given.items():
        if not isinstance(name, str) or not isinstance(path, Path):
            got = f"of types {type(name).__name__} and {type(path).__name__}"
            yield plugging.plugin_wrong_type(
                plugin, "a part of what `koirules_rulesets` gives", "a name to a Path", got
            )
        elif not name.strip() or name.endswith(".koi") or set(name) & {"/", "\\"}:
            # A command takes a name or a path, and has to know which of them it was given.
            yield plugging.plugin_ruleset_like_path(plugin, name)
        elif not path.is_file():
            yield plugging.plugin_no_such_file(plugin, name, str(path))
        else:
            taken[name] = path


def _type(value: object) -> str:
    return f"of type {type(value).__name__}"
