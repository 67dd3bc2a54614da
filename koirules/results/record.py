"""The record of one fish, as graders take it."""

from __future__ import annotations

import datetime
from collections.abc import Mapping

from attrs import field

from koirules.problems import Problem
from koirules.values import frozen
from koirules.vocabulary.readings import Reading


@frozen
class Look:
    """What was known of a fish at a look of a sorting, with all that the looks before it had seen: as it was recorded.

    looked, cannot_tell: as those of a record.
    """

    number: int
    readings: Mapping[str, Reading] = field(hash=False)
    date: datetime.date | None = None
    looked: bool | None = None
    cannot_tell: frozenset[str] = frozenset()


@frozen
class Record:
    """What was recorded of one fish.

    fish: its name. row: where it stands in its file, as a spreadsheet counts rows (0 where it comes from no file).
    readings: by trait name; a trait that was not recorded has none. labels: the columns that are carried into the
    result, by name, as text. date: of this look at the fish, where the file gives it. before: the readings of the look
    before this one, None where there is none. measured: whether the derived traits have been worked out already, and silence
    filled in. doubts: what is doubtful about derived traits, as warnings. looked: whether somebody looked at the fish; None
    where nobody said so, and one trait that is judged by eye says it. cannot_tell: the traits that the sorter could not tell.
    earlier: the readings of every sorting before this one as they were recorded, the first one first. look: which look of its
    sorting a row is, None where it does not say. looks: every look of this sorting, the first one first. carried: the traits
    that an earlier look told and this one did not mention. over: by the key of a
    figure of the batch among the readings, how many fish it counts, of how many. judge: whose record it is, "" where no judge is
    named. seats: of a fish that judges looked at the record of each, with what holds for all of them; its own readings are then
    those of the row without a judge, and once it is measured what the panel says trait by trait (grading/judges.py). A seat
    without a judge stands for one who is missing. own: of a seat, the traits that its judge recorded.
    """

    fish: str
    row: int
    readings: Mapping[str, Reading] = field(hash=False)
    labels: Mapping[str, str] = field(factory=dict, hash=False)
    date: datetime.date | None = None
    before: Mapping[str, Reading] | None = field(default=None, hash=False)
    measured: bool = False
    doubts: tuple[Problem, ...] = ()
    over: Mapping[str, tuple[int, int, int]] = field(factory=dict, hash=False)
    outside: str = ""
    unreadable: tuple[tuple[str, str], ...] = ()
    looked: bool | None = None
    cannot_tell: frozenset[str] = frozenset()
    earlier: tuple[Mapping[str, Reading], ...] = field(default=(), hash=False)
    look: int | None = None
    looks: tuple[Look, ...] = field(default=(), hash=False)
    carried: frozenset[str] = frozenset()
    judge: str = ""
    seats: tuple[Record, ...] = field(default=(), hash=False)
    own: frozenset[str] = frozenset()
