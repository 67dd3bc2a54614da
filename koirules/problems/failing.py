"""How the error of a stranger's code is told: on one line with its place, and whole for those who ask for it."""

from __future__ import annotations

import os
import sys
from functools import partial

from koirules.problems.quoting import error_told, visible

TRACEBACK = "KOIRULES_TRACEBACK"
"""The environment variable with which the traceback of each error of a plugin is shown; `koirules --debug` sets it."""


def is_traceback_wanted() -> bool:
    """Whether the traceback of an error of a plugin is shown."""
    return bool(os.environ.get(TRACEBACK))


def failure_told(error: BaseException, code: object) -> str:
    """An error of a plugin: its kind, what it says, and the file and line in the plugin.

    code: the function that raised it, or the name of the module of the plugin.

    Shows the traceback on the error stream where it is wanted.
    """
    import traceback

    if is_traceback_wanted():
        traceback.print_exception(error, file=sys.stderr)
    place = _place(error, code)
    return error_told(error) if place is None else f"{error_told(error)}, in {visible(place)}"


def _place(error: BaseException, code: object) -> str | None:
    """The last line of the function's own package that the error went through; else where the function begins."""
    import traceback

    while isinstance(code, partial):
        code = code.func
    package = _package(code if isinstance(code, str) else getattr(code, "__module__", None))
    # The first is the code that called the plugin.
    frames = [*traceback.walk_tb(error.__traceback__)][1:]
    own = [(frame, line) for frame, line in frames if package and _package(frame.f_globals.get("__name__")) == package]
    if own:
        frame, line = own[-1]
        return f"{frame.f_code.co_filename}, line {line}"
    begins = getattr(code, "__code__", None)
    return None if begins is None else f"{begins.co_filename}, line {begins.co_firstlineno}"


def _package(module: object) -> str:
    return str(module or "").partition(".")[0]
