"""Plugins called one by one, so that nothing one does can reach the others or the command."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import redirect_stdout
from threading import Event, Thread

import pluggy
from attrs import field

from koirules.hooks import API, OLDEST_API, Hooks
from koirules.plugins.contributions import Contributions, take
from koirules.plugins.finding import GROUP, Found
from koirules.problems import Problem, plugging
from koirules.problems.failing import failure_told
from koirules.values import define
from koirules.vocabulary.nearness import near

PATIENCE = 5.0
"""So many seconds may a plugin take to be imported, and again for each of its hooks."""

SUBJECT_SINCE = 2
"""The version of the hooks since which a vocabulary says what it is about."""

HOOKS = tuple(name for name in vars(Hooks) if not name.startswith("_"))
"""The names of the hooks, in the order in which they are called."""


@define(slots=False)
class Manager:
    """One `pluggy.PluginManager` for all plugins of a registry; a plugin that fails is unregistered, and so leaves nothing."""

    _pluggy: pluggy.PluginManager = field(factory=lambda: pluggy.PluginManager(GROUP), init=False)

    def __attrs_post_init__(self) -> None:
        self._pluggy.add_hookspecs(Hooks)

    def contributions(self, plugin: Found, patience: float = PATIENCE) -> Contributions | list[Problem]:
        """Imports a plugin and calls its hooks. Gives its problems instead where anything at all is wrong with it.

        What it prints goes to standard error: standard output is the command's, and may be data. One that has not answered
        after `patience` seconds is left behind on its thread.
        """
        call = _Call(plugin, "when it was imported")
        with redirect_stdout(sys.stderr):
            if plugin.is_box:
                self._run(call)
            elif not _in_time(lambda: self._guarded(call), call, patience):
                call.left_behind = True
                call.problems = [plugging.plugin_hangs(plugin.label, call.when, patience)]
        if call.problems or call.given is None:
            if call.code is not None and self._pluggy.is_registered(call.code):
                self._pluggy.unregister(call.code)
            return call.problems
        return call.given

    def _guarded(self, call: _Call) -> None:
        try:
            self._run(call)
        except BaseException as error:  # a stranger's code may raise anything, and extensions in Rust no Exception
            call.problems = [
                plugging.plugin_raises(call.plugin.label, call.when, failure_told(error, call.plugin.module))
            ]

    def _run(self, call: _Call) -> None:
        code = call.plugin.load()
        call.problems += _check_api(call.plugin.label, code)
        if call.problems or call.left_behind:
            return
        call.begin("when its hooks were read")
        self._register(code, call)
        if not call.problems:
            self._ask(code, call)

    def _register(self, code: object, call: _Call) -> None:
        label = call.plugin.label
        # Labels may be equal, the names of pluggy may not.
        self._pluggy.register(code, f"{label} ({len(self._pluggy.get_plugins())})")
        call.code = code
        callers = self._pluggy.get_hookcallers(code) or ()
        answered = [caller for caller in callers if not _is_optional(caller, code)]
        if not answered:
            call.problems.append(plugging.plugin_without_hooks(label))
        for caller in answered:
            if not caller.has_spec():
                call.problems.append(plugging.plugin_unknown_hook(label, caller.name, near(caller.name, HOOKS)))

    def _ask(self, code: object, call: _Call) -> None:
        others = [one for one in self._pluggy.get_plugins() if one is not code]
        answers: dict[str, list[object]] = {}
        for name in HOOKS:
            call.begin(f"in {name}")
            caller = self._pluggy.subset_hook_caller(name, others)
            given = caller()
            # pluggy leaves out answers that are None, which none of these hooks may give.
            own = [answer for answer in caller.get_hookimpls() if answer.plugin is code]
            answers[name] = [*given, *[None] * (len(own) - len(given))]
        call.begin("when what its hooks gave was read")
        call.given = take(call.plugin, answers, call.problems)
        old = getattr(code, "KOIRULES_API", API) < SUBJECT_SINCE
        if old and any(one.subject is not None for one in call.given.vocabularies):
            call.problems.append(plugging.plugin_since(call.plugin.label, "the subject of a vocabulary", SUBJECT_SINCE))


@define
class _Call:
    """A plugin at work. when: what it is doing, for the inside of a sentence. begun: how many things it began."""

    plugin: Found
    when: str
    begun: int = 0
    code: object = None
    problems: list[Problem] = field(factory=list)
    given: Contributions | None = None
    left_behind: bool = False

    def begin(self, when: str) -> None:
        self.when = when
        self.begun += 1


def _in_time(work: Callable[[], None], call: _Call, patience: float) -> bool:
    """Whether the work came to an end with no part of it taking longer than `patience` seconds."""
    done = Event()

    def run() -> None:
        try:
            work()
        finally:
            done.set()

    # A thread cannot be stopped; as a daemon it does not keep the process alive either.
    Thread(target=run, name=f"plugin {call.plugin.label}", daemon=True).start()
    begun = -1
    while begun != call.begun:
        begun = call.begun
        if done.wait(patience):
            return True
    return False


def _is_optional(caller: pluggy.HookCaller, code: object) -> bool:
    own = [answer for answer in caller.get_hookimpls() if answer.plugin is code]
    return not caller.has_spec() and all(answer.optionalhook for answer in own)


def _check_api(plugin: str, code: object) -> Iterator[Problem]:
    written_for = getattr(code, "KOIRULES_API", None)
    if written_for is None:
        yield plugging.plugin_without_api(plugin, API)
    elif not isinstance(written_for, int) or isinstance(written_for, bool):
        got = f"of type {type(written_for).__name__}"
        yield plugging.plugin_wrong_type(plugin, "`KOIRULES_API`", "a whole number", got)
    elif written_for > API:
        yield plugging.plugin_too_new(plugin, written_for, API)
    elif written_for < OLDEST_API:
        yield plugging.plugin_too_old(plugin, written_for, OLDEST_API)
