"""A run over files: the pieces are done here or by a cluster, their totals merged, their results put in place."""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Callable, Iterable, Iterator, Sequence
from pathlib import Path

from attrs import evolve, frozen

from koirules.formats.joining_results import joined
from koirules.formats.writing import check_folder, write_beside
from koirules.problems import Problem, is_refused
from koirules.problems import runs as say
from koirules.runs.one import Advance, graded_piece
from koirules.runs.parts import part_of
from koirules.runs.pieces import files_of, pieces_of
from koirules.runs.totals import Totals, merge
from koirules.runs.work import Job, Outcome, Piece

Runner = Callable[[Job, Sequence[Piece]], Iterable[Outcome]]
"""Does the pieces of a job, in whatever order; yields what became of each."""

_PIECE = 1_000_000
"""About so many rows a worker of a cluster does at once."""


@frozen
class Finished:
    """What became of a run: the totals, the problems of all pieces, the files that were left out, and what was written."""

    totals: Totals
    problems: tuple[Problem, ...]
    left_out: tuple[str, ...] = ()
    written: tuple[str, ...] = ()

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
    early = (*problems, *(() if leave_out else broken))
    target = Path(out) if out else None
    as_folder = target is not None and not target.suffix
    if target is not None and as_folder and target.exists():
        early = (*early, say.folder_is_there(out))
    elif target is not None and (unwritable := check_folder(target)) is not None:
        early = (*early, unwritable)
    if early or target is None:
        return Finished(Totals(), early) if early else _run(job, pieces, broken, runner, None, leave_out=leave_out)
    with tempfile.TemporaryDirectory(
        prefix=f".{target.stem[:50]}.", dir=target.parent, ignore_cleanup_errors=True
    ) as folder:
        ending = target.suffix.lower() or ".parquet"
        job = evolve(job, ending=ending, folder=folder)
        return _run(job, pieces, broken, runner, target, leave_out=leave_out)


def _run(
    job: Job,
    pieces: Sequence[Piece],
    broken: Sequence[Problem],
    runner: Runner,
    target: Path | None,
    *,
    leave_out: bool,
) -> Finished:
    outcomes = sorted(runner(job, pieces), key=lambda outcome: outcome.piece.number)
    # A file that was parted is graded whole or not at all.
    bad = {outcome.piece.file for outcome in outcomes if is_refused(outcome.problems)}
    bad |= {problem.site.file for problem in broken}
    problems = (*broken, *(problem for outcome in outcomes for problem in outcome.problems))
    if bad and not leave_out:
        return Finished(Totals(), problems)
    good = [outcome for outcome in outcomes if outcome.piece.file not in bad]
    totals = merge(outcome.totals for outcome in good)
    left_out = tuple(sorted(bad))
    if target is None:
        return Finished(totals, problems, left_out)
    parts = [part_of(job, outcome.piece) for outcome in good if outcome.written]
    failed = _put(
        Path(job.folder), parts, [outcome.piece for outcome in outcomes if outcome.piece.file in bad], job, target
    )
    if failed is not None:
        return Finished(totals, (*problems, failed), left_out)
    return Finished(totals, problems, left_out, (str(target),))


def _put(folder: Path, parts: Sequence[Path], bad: Sequence[Piece], job: Job, target: Path) -> Problem | None:
    """Put the parts in place: as they are into a folder, or joined into one file."""
    if target.suffix:
        return write_beside(target, lambda passing: joined(parts, passing))
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
        from koirules.problems.saving import unwritable

        return unwritable(str(target), str(target.parent), error.strerror or str(error))
    return None
