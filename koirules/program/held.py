"""How a frame holds what was recorded of each trait, after it has been read: the shape that a program is made for."""

from __future__ import annotations

from typing import Any

from koirules.values import frozen
from koirules.vocabulary.readings import Reading


@frozen
class CodeColumn:
    """A column of codes; `readings` says what each stands for, None for what is blank. Null is not recorded.

    truth: whether it is a column of true and false, whose codes are 0 (no) and 1 (yes). holes: whether it has nulls.
    """

    name: str
    readings: tuple[Reading | None, ...]
    holes: bool
    truth: bool = False


@frozen
class NumberColumn:
    """A column of doubles in the held unit; null is not recorded. holes: whether it has any.

    high: the column of the upper ends where some values are stretches, else "".
    """

    name: str
    holes: bool
    high: str = ""


@frozen
class NoColumn:
    """A trait that no row has."""


Held = CodeColumn | NumberColumn | NoColumn
Profile = tuple[tuple[str, Held], ...]
"""The traits by name, with how they are held: what a plan is made for."""


def readings_of(held: CodeColumn, anything: Any) -> tuple[Any, ...]:
    """The reading of each code, the last that of a null where there is any; what was not recorded is anything."""
    found = tuple(anything if reading is None else reading for reading in held.readings)
    return (*found, anything) if held.holes else found
