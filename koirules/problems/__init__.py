"""What is wrong with somebody's text or data, as values: a place, what we saw, why it is wrong, what to try.

Every problem is made by a named function of this room, so that a message is written once and its code stays the same
for as long as the kind of problem lives. Nothing here imports anything of ours.
"""

from koirules.problems.problem import (
    Cell,
    Edit,
    EngineError,
    KoirulesError,
    Place,
    Problem,
    RecordError,
    RecordWarning,
    Site,
    StandardError,
    is_refused,
)

__all__ = [
    "Cell",
    "Edit",
    "EngineError",
    "KoirulesError",
    "Place",
    "Problem",
    "RecordError",
    "RecordWarning",
    "Site",
    "StandardError",
    "is_refused",
]
