"""The record of one fish, as graders take it."""

from __future__ import annotations

import datetime
from collections.abc import Mapping

from attrs import field, frozen

from koirules.problems import Problem
from koirules.vocabulary.readings import Reading


@frozen
class Record:
    """What was recorded of one fish.

    fish: its name. row: where it stands in its file, as a spreadsheet counts rows (0 where it comes from no file).
    readings: by trait name; a trait that was not recorded has none. labels: the columns that are carried into the
    result, by name, as text. date: of this look at the fish, where the file gives it. before: the readings of the look
    before this one, None where there is none. measured: whether the derived traits have been worked out already, and silence
    filled in. doubts: what is doubtful about derived traits, as warnings. looked: whether somebody looked at the fish; None
    where nobody said so, and one trait that is judged by eye says it. cannot_tell: the traits that the sorter could not tell.
    earlier: the readings of every look before this one as they were recorded, the first look first. over: by the key of a
    figure of the batch among the readings, how many fish it counts, of how many.
    """

    fish: str
    row: int
    readings: Mapping[str, Reading] = field(hash=False)
    labels: Mapping[str, str] = field(factory=dict, hash=False)
    date: datetime.date | None = None
    before: Mapping[str, Reading] | None = field(default=None, hash=False)
    measured: bool = False
    doubts: tuple[Problem, ...] = ()
    over: Mapping[str, tuple[int, int]] = field(factory=dict, hash=False)
    outside: str = ""
    looked: bool | None = None
    cannot_tell: frozenset[str] = frozenset()
    earlier: tuple[Mapping[str, Reading], ...] = field(default=(), hash=False)
