"""What is to be done: a job for all pieces, and the pieces; plain data, so that they can travel."""

from __future__ import annotations

from collections.abc import Mapping

from attrs import field

from koirules.problems import Problem
from koirules.rounds.tallies import Tally
from koirules.runs.totals import Totals
from koirules.values import frozen


@frozen
class Job:
    """What is the same for every piece of a run.

    rules, file: the text of the rule file and its name. settings: those that were changed, by name, as they were written.
    labels: columns that are carried along where no trait claims them. top: how many of the best fish are kept. ending: of
    the files of results (`.csv` or `.parquet`), "" where none are written. folder: where the workers write them. carried:
    the labels of all files of results, in order. phase: what is done: "" grades; "before" counts the figures of one level
    that have to be known before the fish are graded, "alerts" those of alerts. tallies: what was counted so far, by the key
    of the figure. aside: whether what rounds read is put aside in the folder.
    """

    rules: str = field(repr=False)
    file: str
    settings: tuple[tuple[str, str], ...] = ()
    labels: tuple[str, ...] = ()
    top: int = 10
    ending: str = ""
    folder: str = ""
    carried: tuple[str, ...] = ()
    phase: str = ""
    level: int = 0
    tallies: Mapping[str, Tally] = field(factory=dict, hash=False, repr=False)
    aside: bool = False


@frozen
class Piece:
    """A file, or some row groups of it.

    number: its place among all pieces, from 0. first, last: the row groups, the last one not in (None: the whole file).
    before: rows of the file that come before this piece. rows: how many it has, as far as that is known (0: not known).
    """

    number: int
    file: str
    first: int | None = None
    last: int | None = None
    before: int = 0
    rows: int = 0


@frozen
class Outcome:
    """What became of a piece: its totals, or its problems; written: the file of results, "" where there is none.

    tallies: what it counted, by the key of the figure.
    """

    piece: Piece
    totals: Totals
    problems: tuple[Problem, ...] = ()
    written: str = ""
    tallies: Mapping[str, Tally] = field(factory=dict, hash=False)
