"""A run over files: the pieces are done here or by a cluster, their totals merged, their results put in place."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from secrets import token_hex
from typing import TYPE_CHECKING

from attrs import evolve

from koirules.problems import Problem, is_refused
from koirules.problems import runs as say
from koirules.problems.saving import unwritable
from koirules.records.joining_results import joined
from koirules.records.large_files import open_large
from koirules.records.writing import check_folder, write_beside
from koirules.results.course import AlertShown
from koirules.runs.one import Advance, graded_piece, standard_of
from koirules.runs.parts import part_of
from koirules.runs.pieces import files_of, pieces_of
from koirules.runs.selecting import RoundTotals, alerts_of, counted_before, rounds_of, what_cannot_be, with_rounds
from koirules.runs.totals import Totals, merge
from koirules.runs.work import Job, Outcome, Piece
from koirules.values import frozen

if TYPE_CHECKING:
    import polars as pl

Runner = Callable[[Job, Sequence[Piece]], Iterable[Outcome]]
"""Does the pieces of a job, in whatever order; yields what became of each."""

_PIECE = 1_000_000
"""About so many rows a worker of a cluster does at once."""


@frozen
class Finished:
    """What became of a run: the totals, the problems of all pieces, the files that were left out, and what was written.

    alerts: words of warning about all fish. rounds: what each round of the selection did.
    """

    totals: Totals
    problems: tuple[Problem, ...]
    left_out: tuple[str, ...] = ()
    written: tuple[str, ...] = ()
    alerts: tuple[AlertShown, ...] = ()
    rounds: tuple[RoundTotals, ...] = ()

    @property
    def failed(self) -> bool:
        """Whether nothing came of it: a file was broken, and was not to be left out."""
        return is_refused(self.problems) and not self.left_out


def here(advance: Advance | None = None) -> Runner:
    """Does the pieces in this process, one after another. advance: told of the rows that were done."""

    def run(job: Job, pieces: Sequence[Piece]) -> Iterator[Outcome]:
        for piece in pieces:
            yield graded_piece(job, piece, advance)

    return run


def run_files(
    job: Job, given: Sequence[str], runner: Runner, out: str = "", *, leave_out: bool = False, parted: bool = False
) -> Finished:
    """Grade files. out: a file of results, or a folder for one file of results a piece (a name without an ending).

    leave_out: a file that cannot be graded is named and left out, where else nothing is written. parted: Parquet files are
    parted between row groups, for a cluster.
    """
    files, problems = files_of(given)
    pieces, broken = pieces_of(files, _PIECE if parted else 0)
    early = [*problems, *(() if leave_out else broken), *what_cannot_be(job)]
    target = Path(out) if out else None
    if target is not None:
        early += _unfit(target, given, files)
    if early:
        return Finished(Totals(), tuple(early))
    aside = bool(standard_of(job).rules.rounds)
    if target is None and not aside:
        return _run(job, pieces, broken, runner, None, leave_out=leave_out)
    # Where nothing is written but what rounds read, workers of a cluster are taken to share the folder of the run.
    name, parent = ("koirules", Path() if parted else None) if target is None else (target.stem[:50], target.parent)
    try:
        with _passing_folder(name, parent) as folder:
            job = evolve(job, folder=str(folder.resolve()), aside=aside)
            if target is not None:
                ending = ".parquet" if aside else target.suffix.lower() or ".parquet"
                job = evolve(job, ending=ending, carried=_carried(job, files))
            return _run(job, pieces, broken, runner, target, leave_out=leave_out)
    except OSError as error:
        # The readers tell of their own files; what is left is the folder for the results.
        return Finished(Totals(), (unwritable(out, str(parent or ""), error.strerror or str(error)),))


@contextmanager
def _passing_folder(name: str, parent: Path | None) -> Iterator[Path]:
    """A new folder in `parent` (that of the system for None) that is gone afterwards.

    Its name is chosen before it is made: wherever in between the run is ended, what was made is taken away.
    """
    folder = (Path(tempfile.gettempdir()) if parent is None else parent) / f".{name}.{token_hex(8)}"
    try:
        folder.mkdir(mode=0o700)
        yield folder
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _unfit(target: Path, given: Sequence[str], files: Sequence[str]) -> Iterator[Problem]:
    """What is wrong with the place for results, as far as that shows before anything is graded."""
    try:
        place = target.resolve()
        among = {Path(file).resolve() for file in files} | {
            Path(name).resolve() for name in given if Path(name).is_dir()
        }
        if place in among or place.parent in among:
            yield say.results_among_records(str(target))
        elif not target.suffix and target.exists():
            yield say.folder_is_there(str(target))
        elif (problem := check_folder(target)) is not None:
            yield problem
        elif not os.access(target.parent, os.W_OK | os.X_OK):
            yield unwritable(str(target), str(target.parent), "it is not allowed")
    except (OSError, RuntimeError, ValueError) as error:
        yield unwritable(str(target), str(target.parent), getattr(error, "strerror", None) or str(error))


def _carried(job: Job, files: Sequence[str]) -> tuple[str, ...]:
    """The labels that any of the files carries: all files of results have the same columns."""
    found: dict[str, None] = {}
    for file in files:
        opened, _ = open_large(Path(file), standard_of(job).traits, job.labels)
        if opened is not None:
            found |= {column.label: None for column in opened.columns.others if column.label is not None}
    return tuple(found)


def _run(
    job: Job,
    pieces: Sequence[Piece],
    broken: Sequence[Problem],
    runner: Runner,
    target: Path | None,
    *,
    leave_out: bool,
) -> Finished:
    job, refused = counted_before(job, pieces, runner, leave_out=leave_out)
    gone = {outcome.piece.file for outcome in refused}
    left = [] if refused and not leave_out else [piece for piece in pieces if piece.file not in gone]
    outcomes = sorted([*refused, *runner(job, left)], key=lambda outcome: outcome.piece.number)
    # A file that was parted is graded whole or not at all.
    bad = {outcome.piece.file for outcome in outcomes if is_refused(outcome.problems)}
    bad |= {problem.site.file for problem in broken}
    problems = (*broken, *(problem for outcome in outcomes for problem in outcome.problems))
    if bad and not leave_out:
        return Finished(Totals(), problems)
    good = [outcome for outcome in outcomes if outcome.piece.file not in bad]
    if bad and not good:
        return Finished(Totals(), (*problems, say.nothing_left()))
    totals = merge(outcome.totals for outcome in good)
    rounds, columns = rounds_of(job, [outcome.piece for outcome in good]) if job.aside else ((), None)
    finished = Finished(totals, problems, tuple(sorted(bad)), alerts=alerts_of(job), rounds=rounds)
    if target is None:
        return finished
    parts = [part_of(job, outcome.piece) for outcome in good if outcome.written]
    failed = _put(parts, [outcome.piece for outcome in outcomes if outcome.piece.file in bad], job, target, columns)
    if failed is not None:
        return Finished(Totals(), (*problems, failed))
    return evolve(finished, written=(str(target),))


def _put(
    parts: Sequence[Path], bad: Sequence[Piece], job: Job, target: Path, columns: pl.DataFrame | None
) -> Problem | None:
    """Put the parts in place: as they are into a folder, or joined into one file. columns: of the rounds."""
    if columns is None and target.suffix:
        return write_beside(target, lambda passing: joined(parts, passing))
    if columns is not None:
        selected = columns
        if target.suffix:
            return write_beside(target, lambda passing: with_rounds(parts, selected, passing))
        with_rounds(parts, selected, target)
    folder = Path(job.folder)
    for piece in bad:
        part_of(job, piece).unlink(missing_ok=True)
    made = folder.with_name(f"{folder.name}.whole")
    try:
        made.mkdir()
        for part in parts:
            part.replace(made / part.name)
        made.replace(target)
    except OSError as error:
        shutil.rmtree(made, ignore_errors=True)
        return unwritable(str(target), str(target.parent), error.strerror or str(error))
    return None
