"""One piece of a run, in whatever process: its rows are read, graded, counted and written, some at a time."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import ExitStack
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING

from attrs import evolve

from koirules.api import Standard, read_standard
from koirules.engines.columnar.outputs import column_types
from koirules.engines.columnar.reading import FrameReader, ReadFrame, Source, read_looked
from koirules.grading.batch import BatchGrader
from koirules.grading.frames import unlikely_values
from koirules.problems import Problem, recording
from koirules.problems.judging import panel_of_whole_files
from koirules.problems.record_files import unreadable_file
from koirules.problems.runs import no_looks
from koirules.problems.saving import unwritable
from koirules.records.large_files import LargeFile, open_large
from koirules.records.large_results import LargeResults
from koirules.records.large_rows import RefusedError, Rows
from koirules.records.rows import LOT
from koirules.results.mapping_record import LOOKED
from koirules.runs.comparing import comparing
from koirules.runs.counting import counted
from koirules.runs.parts import open_part
from koirules.runs.totals import Totals
from koirules.runs.work import Job, Outcome, Piece
from koirules.vocabulary.cells import CannotTell, Misread, read_cell
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.readings import Reading

if TYPE_CHECKING:
    import polars as pl

_MOST_TOLD = 200
"""So many problems of one piece are told; the rest are of the same kind."""

Advance = Callable[[int], None]
"""Told of the rows that were done."""


def graded_piece(job: Job, piece: Piece, advance: Advance | None = None) -> Outcome:
    """Grade the rows of a piece. What is wrong with them, or with the file, is in the outcome; nothing is raised for it."""
    standard, grader = _ready(job.rules, job.file, job.settings)
    opened, problems = open_large(Path(piece.file), standard.traits, job.labels)
    if opened is None:
        return Outcome(piece, Totals(), problems)
    if opened.columns.look is not None:
        return Outcome(piece, Totals(), (*problems, no_looks(piece.file)))
    if opened.columns.judge is not None and standard.rules.panel is not None:
        return Outcome(piece, Totals(), (*problems, panel_of_whole_files(piece.file)))
    try:
        outcome = _graded(job, piece, standard, grader, opened, advance or (lambda _: None))
        return evolve(outcome, problems=(*problems, *outcome.problems))
    except RefusedError as refused:
        return Outcome(piece, Totals(), (refused.problem,))
    except Exception as error:
        if not _is_of_the_file(error):
            raise
        why = (str(error).splitlines() or [type(error).__name__])[0][:200]
        return Outcome(piece, Totals(), (unreadable_file(piece.file, why, "Make the file again, or leave it out."),))


def _is_of_the_file(error: Exception) -> bool:
    """Whether it is the file that is broken: readers have errors of their own for that."""
    return isinstance(error, OSError) or type(error).__module__.split(".")[0] in {"polars", "pyarrow"}


@lru_cache(maxsize=4)
def _ready(rules: str, file: str, settings: tuple[tuple[str, str], ...]) -> tuple[Standard, BatchGrader]:
    """The standard of a job, compiled once in each process."""
    standard = read_standard(rules, file).with_settings(dict(settings))
    return standard, standard.batch(faults=True)


def _graded(
    job: Job, piece: Piece, standard: Standard, grader: BatchGrader, opened: LargeFile, advance: Advance
) -> Outcome:
    import polars as pl

    columns = [column for column in opened.columns.others if column.trait is not None]
    reader = grader.reader(
        {column.trait.name: Source(str(column.index), column.unit) for column in columns if column.trait}
    )
    compare = comparing(job, standard, grader) if grader.compares else None
    headings = {str(column.index): column.heading for column in opened.columns.others}
    headings |= {str(opened.columns.looked): LOOKED}
    totals, problems, doubts = Totals(), list[Problem](), list[Problem]()
    row = opened.first_row + piece.before
    lot: dict[str, str] = {}
    with ExitStack() as closing:
        out = closing.enter_context(open_part(job, piece, standard)) if job.ending and not job.phase else None
        for rows, read, fish in _read(opened, piece, reader, lot, problems):
            if not rows.frame.height:
                row += rows.taken
                continue
            problems += [*_wrong(piece.file, rows, read, fish, headings, row), *read.failed]
            doubts += _doubtful(grader, piece.file, rows, read, row)
            named = {column.trait.name: column.heading for column in columns if column.trait}
            doubts += unlikely_values(grader.rules, read, piece.file, named, row + rows.place(0))
            if not problems:
                if job.phase and compare is not None:
                    compare.count(read, rows.frame.height)
                    advance(rows.frame.height)
                    continue
                results = (
                    grader.grade(read, rows.frame.height)
                    if compare is None
                    else compare.grade(read, rows.frame.height, fish, piece.number)
                )
                totals = totals.merged(counted(standard.grades, results, fish, piece.number, row, job.top))
                if out is not None:
                    _write(out, fish, results, _labels(opened, rows.frame, job.carried, lot))
            row += rows.taken
            advance(rows.frame.height)
            if len(problems) >= _MOST_TOLD:
                break
        if problems:
            return Outcome(piece, Totals(), tuple(problems[:_MOST_TOLD]))
        if out is not None and out.is_empty:
            none = pl.DataFrame(schema=column_types(standard.rules, sections=True, faults=True))
            nobody = pl.Series("fish", [], dtype=pl.String)
            _write(out, nobody, none, [pl.Series(label, [], dtype=pl.String) for label in job.carried])
        written = out.finish() if out is not None else ""
    # What is doubtful is told by the pass that grades, and not by those that only count before it.
    told = () if job.phase else tuple(doubts[:_MOST_TOLD])
    return Outcome(piece, totals, told, written, {} if compare is None else compare.tallies)


def _read(
    opened: LargeFile, piece: Piece, reader: FrameReader, lot: dict[str, str], problems: list[Problem]
) -> Iterator[tuple[Rows, ReadFrame, pl.Series]]:
    """The rows of a piece. lot: is given the labels that hold for every row; problems: those of the row that says so."""
    import polars as pl

    if opened.columns.fish is None:
        raise AssertionError("a file without a column of fish")
    fish_column = str(opened.columns.fish)
    if piece.before:
        # The row that holds for the lot is the first of the file, and its problems are told with the first piece.
        _take_lot(next(iter(opened.frames(0, 1))), fish_column, opened, reader, lot, [])
    first = not piece.before
    for rows in _ahead(opened.frames(piece.first, piece.last)):
        if first:
            rows = _take_lot(rows, fish_column, opened, reader, lot, problems)  # noqa: PLW2901 - without that row
            first = False
        given = rows.frame[fish_column]
        names = given.cast(pl.String)
        fish = (names if given.dtype.is_integer() else names.str.strip_chars()).fill_null("")
        read = reader.read(rows.frame)
        if opened.columns.looked is not None:
            looked, wrong = read_looked(rows.frame[str(opened.columns.looked)])
            if read.looked is not None:
                looked = looked.zip_with(looked.is_not_null(), read.looked)
            read = evolve(read, looked=looked, wrong=(*read.wrong, *wrong))
        yield rows, read, fish.alias("fish")


def _take_lot(
    rows: Rows, fish_column: str, opened: LargeFile, reader: FrameReader, lot: dict[str, str], problems: list[Problem]
) -> Rows:
    """The rows without a first one that holds for all of them, of which the reader is told."""
    import polars as pl

    if not rows.frame.height or folded(str(rows.frame[fish_column][0] or "")) != LOT:
        return rows
    told: dict[str, Reading | CannotTell] = {}
    for column in opened.columns.others:
        raw = rows.frame[str(column.index)][0]
        if column.trait is None:
            if column.label is not None and raw is not None and str(raw).strip():
                lot[column.label] = str(raw)
            continue
        reading = read_cell(column.trait.kind, raw, column.unit)
        if isinstance(reading, Misread):
            site = recording.cell(opened.file, opened.first_row + rows.place(0), column.heading)
            problems.append(recording.wrong_value(site, reading.code, reading.cause, reading.mend))
        elif reading is not None:
            told[column.trait.name] = reading
    reader.lot = told
    places = pl.Series(range(1, rows.frame.height)) if rows.places is None else rows.places[1:]
    return Rows(rows.frame[1:], rows.taken, places)


def _ahead(frames: Iterator[Rows]) -> Iterator[Rows]:
    """The same rows, each read while those before are graded."""
    with ThreadPoolExecutor(1) as reader:
        coming = reader.submit(next, frames, None)
        while (rows := coming.result()) is not None:
            coming = reader.submit(next, frames, None)
            yield rows


def _wrong(
    file: str, rows: Rows, read: ReadFrame, fish: pl.Series, headings: dict[str, str], first: int
) -> Iterator[Problem]:
    for cell in read.wrong[:_MOST_TOLD]:
        site = recording.cell(file, first + rows.place(cell.row), headings[cell.column])
        yield recording.wrong_value(site, cell.misread.code, cell.misread.cause, cell.misread.mend)
    named = fish != ""
    for row in (~named).arg_true()[:_MOST_TOLD]:
        yield recording.unnamed_fish(file, first + rows.place(row))
    # Twice within what is in memory at once; over the whole of a file larger than that nobody can tell cheaply.
    if fish.filter(named).n_unique() < named.sum():
        firsts: dict[str, int] = {}
        for row in named.arg_true():
            before = firsts.setdefault(fish[row], row)
            if before != row:
                yield recording.doubled_fish(file, first + rows.place(row), fish[row], first + rows.place(before))


def _doubtful(grader: BatchGrader, file: str, rows: Rows, read: ReadFrame, first: int) -> Iterator[Problem]:
    """The warnings about derived traits."""
    for doubt in read.doubts[:_MOST_TOLD]:
        yield grader.grader.measurer.problem(doubt, recording.cell(file, first + rows.place(doubt.fish), doubt.trait))


def _labels(opened: LargeFile, frame: pl.DataFrame, carried: Sequence[str], lot: Mapping[str, str]) -> list[pl.Series]:
    """A column for each label of the run, empty where this file has none. lot: what stands in the blank cells of some."""
    import polars as pl

    found = {column.label: str(column.index) for column in opened.columns.others}
    made = []
    for label in carried:
        if label not in found:
            made.append(pl.Series(label, [None] * frame.height, dtype=pl.String))
            continue
        cells = frame[found[label]].cast(pl.String).alias(label)
        blank = cells.fill_null("").str.strip_chars() == ""
        made.append(
            cells.zip_with(~blank, pl.Series([lot[label]]).new_from_index(0, len(cells))) if label in lot else cells
        )
    return made


def ready(job: Job) -> tuple[Standard, BatchGrader]:
    """The standard of a job and its grader, compiled once in each process."""
    return _ready(job.rules, job.file, job.settings)


def standard_of(job: Job) -> Standard:
    """The standard of a job, compiled once in each process."""
    return _ready(job.rules, job.file, job.settings)[0]


def _write(out: LargeResults, fish: pl.Series, results: pl.DataFrame, labels: Sequence[pl.Series]) -> None:
    try:
        out.write(fish, results, labels)
    except OSError as error:
        why = error.strerror or str(error)
        raise RefusedError(unwritable(str(out.path), str(out.path.parent), why)) from error
