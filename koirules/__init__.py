"""koirules: readable rule files for grading koi, and evaluators that give every grade its reasons.

>>> import koirules
>>> standard = koirules.load_standard("my_standard.koi")  # doctest: +SKIP
>>> standard.grade({"length": 14, "spine": "straight"}).possible  # doctest: +SKIP
('keep', 'hold')
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from koirules.api import Standard, load_standard, read_standard, tidy
    from koirules.grading.course import AlertShown, RoundCourse, Step
    from koirules.grading.decisions import Decision
    from koirules.grading.reason import Reason, State
    from koirules.grading.results import Result, SectionResult
    from koirules.grading.whole_batch import BatchResult
    from koirules.hooks import hookimpl
    from koirules.problems import Cell, KoirulesError, Place, Problem, RecordError, StandardError

__all__ = [
    "AlertShown",
    "BatchResult",
    "Cell",
    "Decision",
    "KoirulesError",
    "Place",
    "Problem",
    "Reason",
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
    "koirules.grading.course": ("AlertShown", "RoundCourse", "Step"),
    "koirules.grading.decisions": ("Decision",),
    "koirules.grading.whole_batch": ("BatchResult",),
    "koirules.grading.reason": ("Reason", "State"),
    "koirules.grading.results": ("Result", "SectionResult"),
    "koirules.hooks": ("hookimpl",),
    "koirules.problems": ("Cell", "KoirulesError", "Place", "Problem", "RecordError", "StandardError"),
}


def __getattr__(name: str) -> Any:
    # The public names are fetched when they are first asked for: `koirules --help` needs none of them.
    from importlib import import_module

    for room, names in _ROOMS.items():
        if name in names:
            return getattr(import_module(room), name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
