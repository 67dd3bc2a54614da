"""Rows of a large file, some at a time."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from koirules.problems import Problem
from koirules.values import frozen

if TYPE_CHECKING:
    import polars as pl


class RefusedError(Exception):
    """A file that cannot be read or written further, with the problem that says why."""

    def __init__(self, problem: Problem) -> None:
        super().__init__(problem.cause)
        self.problem = problem

    def __reduce__(self) -> tuple[type[RefusedError], tuple[Problem]]:
        return type(self), (self.problem,)


@frozen
class Rows:
    """Some rows of a file. taken: how many there were with those that are blank; places: where among them these stood."""

    frame: pl.DataFrame
    taken: int
    places: pl.Series | None = None

    def place(self, row: int) -> int:
        """Where a row of the frame stood among those that were taken."""
        return row if self.places is None else int(self.places[row])


Frames = Callable[[int | None, int | None], Iterator[Rows]]
"""Gives the rows of some row groups, or of the whole file (None, None), in order; may raise RefusedError."""
