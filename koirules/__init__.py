"""koirules: readable rule files for grading koi, and evaluators that give every grade its reasons.

>>> import koirules
>>> standard = koirules.load_standard("my_standard.koi")  # doctest: +SKIP
>>> standard.grade({"length": 14, "spine": "straight"}).possible  # doctest: +SKIP
('keep', 'hold')
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import koirules.read_only  # noqa: F401 - says how what cannot be changed is copied and pickled

if TYPE_CHECKING:
    from koirules.api import Standard, load_standard, read_standard, tidy
    from koirules.grading.whole_batch import BatchResult
    from koirules.hooks import hookimpl
    from koirules.problems import Cell, EngineError, KoirulesError, Place, Problem, RecordError, StandardError
    from koirules.report.audience import Audience
    from koirules.report.paper import Paper
    from koirules.results.course import AlertShown, RoundCourse, Step
    from koirules.results.decisions import Decision
    from koirules.results.reason import Reason, State
    from koirules.results.record import Record
    from koirules.results.result import Result, SectionResult

__all__ = [
    "AlertShown",
    "Audience",
    "BatchResult",
    "Cell",
    "Decision",
    "EngineError",
    "KoirulesError",
    "Paper",
    "Place",
    "Problem",
    "Reason",
    "Record",
    "RecordError",
    "Result",
    "RoundCourse",
    "SectionResult",
    "Standard",
    "StandardError",
    "State",
    "Step",
    "hookimpl",
    "load_standard",
    "read_standard",
    "tidy",
]

_ROOMS = {
    "koirules.api": ("Standard", "load_standard", "read_standard", "tidy"),
    "koirules.results.course": ("AlertShown", "RoundCourse", "Step"),
    "koirules.results.decisions": ("Decision",),
    "koirules.grading.whole_batch": ("BatchResult",),
    "koirules.results.reason": ("Reason", "State"),
    "koirules.results.record": ("Record",),
    "koirules.results.result": ("Result", "SectionResult"),
    "koirules.hooks": ("hookimpl",),
    "koirules.report.audience": ("Audience",),
    "koirules.report.paper": ("Paper",),
    "koirules.problems": ("Cell", "EngineError", "KoirulesError", "Place", "Problem", "RecordError", "StandardError"),
}


def __dir__() -> list[str]:
    return sorted([*__all__, "__version__"])


def __getattr__(name: str) -> Any:
    if name == "__version__":
        from importlib.metadata import PackageNotFoundError, version

        try:
            return version("koirules")
        except PackageNotFoundError:  # run from a checkout that was never installed
            return "0"
    # The public names are fetched when they are first asked for: `koirules --help` needs none of them.
    from importlib import import_module

    for room, names in _ROOMS.items():
        if name in names:
            return getattr(import_module(room), name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
