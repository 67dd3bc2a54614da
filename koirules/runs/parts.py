"""Where a piece writes its results."""

from __future__ import annotations

import os
from contextlib import AbstractContextManager
from pathlib import Path

from koirules.api import Standard
from koirules.records.large_results import LargeResults, large_results
from koirules.runs.work import Job, Piece


def part_of(job: Job, piece: Piece) -> Path:
    """The file of results of a piece: parts are numbered in the order of the records."""
    return Path(job.folder) / f"part-{piece.number:06}{job.ending}"


def aside_of(job: Job, piece: int, number: int) -> Path:
    """The file in which a piece puts aside what rounds read of some of its fish, in the order of the records."""
    return Path(job.folder) / f"aside-{piece:06}-{number:06}.parquet"


def open_part(job: Job, piece: Piece, standard: Standard) -> AbstractContextManager[LargeResults]:
    """The file of results of a piece, open for writing; two workers on one piece do not disturb each other."""
    facts = {
        "koirules.standard": standard.title,
        "koirules.edition": standard.edition,
        "koirules.seal": standard.seal,
        **{f"koirules.setting.{name}": value for name, value in job.settings},
    }
    return large_results(part_of(job, piece), f"{os.getpid()}", facts)
