"""Frames of other libraries: in and out through Arrow, by narwhals; what they hold besides traits is never touched.

No engine but Polars is handed anything to work out: engines disagree about rounding, casts, nulls and comparisons.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from itertools import groupby
from math import isnan
from traceback import walk_tb
from typing import TYPE_CHECKING, Any
from warnings import warn

from attrs import evolve

from koirules.engines.columnar.reading import ReadFrame, Source, WrongCell, read_looked
from koirules.grading.batch import BatchGrader
from koirules.measures.deriving import Doubt
from koirules.problems import Problem, RecordError, RecordWarning, frames, judging, recording
from koirules.program.held import NumberColumn
from koirules.results.look_again import unlikely
from koirules.results.mapping_record import JUDGE, LOOK, LOOKED
from koirules.results.record import Record
from koirules.rounds.columnar.earlier import LooksOfRows
from koirules.rounds.looks import DATE, LOOK_DATE, day_of
from koirules.standard.parts import Rules
from koirules.vocabulary.cells import CannotTell, Misread, read_cell
from koirules.vocabulary.headings import by_heading, headed
from koirules.vocabulary.kinds import Number
from koirules.vocabulary.nearness import near
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.traits import Trait

if TYPE_CHECKING:
    import polars as pl

_MOST_TOLD = 1_000
FISH = "fish"
CANNOT_TELL = "cannot_tell"
"""The column that lists what the sorter of a fish could not tell, where no trait is called so."""

_NO_TRAITS = frozenset({FISH, LOOKED, CANNOT_TELL, JUDGE, DATE})
"""Columns that say something else than a trait, where no trait is called so."""

_NAMES = re.compile(r"[^\W\d]\w*")


def graded_frame(grader: BatchGrader, frame: Any, lot: Mapping[str, object] | None = None) -> Any:
    """A frame of the caller's own kind with the columns of the results after its own. lot: what holds for every row.

    Raises RecordError for columns and cells that cannot be read, TypeError for what is no frame.
    """
    import narwhals.stable.v2 as nw

    doubled = _doubled(frame)
    if doubled:
        raise RecordError(tuple(frames.doubled_column(name) for name in doubled))
    try:
        wrapped = nw.from_native(frame)
    except TypeError as error:
        raise TypeError(f"{type(frame).__name__} is no frame that narwhals knows") from error
    lazy = isinstance(wrapped, nw.LazyFrame)
    if lazy and wrapped.implementation not in {nw.Implementation.POLARS, nw.Implementation.DUCKDB}:
        raise TypeError(
            f"{type(frame).__name__} stays where its rows are: give the files to a cluster, or collect it first"
        )
    eager: Any = wrapped.collect(backend="polars") if isinstance(wrapped, nw.LazyFrame) else wrapped
    if LOOK in eager.columns and LOOK not in grader.rules.traits:
        raise RecordError((frames.looks_in_frame(),))
    # pandas takes names that are no text.
    sources = matched([name for name in eager.columns if isinstance(name, str)], grader)
    traits = _as_polars(eager, [source.column for source in sources.values()])
    reader = evolve(grader.reader(sources), lot=_read_lot(lot or {}, grader.rules.traits))
    read = _looked_at(eager, grader, reader.read(traits, _untold_in(eager, grader)))
    stop_at(read.wrong, "frame", 1)
    if read.failed:
        raise RecordError(read.failed)
    _warn(grader, read.doubts, sources)
    for problem in unlikely_values(grader.rules, read, "frame", {name: one.column for name, one in sources.items()}):
        warn(str(problem), RecordWarning, stacklevel=3)
    judged = _judged(eager, grader, read)
    if judged is not None:
        return _joined(eager, grader.whole.of_judges(read, judged), wrapped.implementation.name if lazy else "")
    results = grader.grade(read, len(eager), _looks(eager, grader) if grader.compares or grader.rules.silence else None)
    return _joined(eager, results, wrapped.implementation.name if lazy else "")


def _read_lot(lot: Mapping[str, object], traits: Mapping[str, Trait]) -> dict[str, Reading | CannotTell]:
    """The readings of what holds for the lot. Raises RecordError with every problem."""
    found: dict[str, Reading | CannotTell] = {}
    problems: list[Problem] = []
    for name, raw in lot.items():
        reading = read_cell(traits[name].kind, raw) if name in traits else None
        if name not in traits:
            problems.append(recording.unknown_trait(name, near(str(name), traits)))
        elif isinstance(reading, Misread):
            site = recording.cell("lot", None, name)
            problems.append(recording.wrong_value(site, reading.code, reading.cause, reading.mend))
        elif reading is not None:
            found[name] = reading
    if problems:
        raise RecordError(tuple(problems))
    return found


def _looked_at(eager: Any, grader: BatchGrader, read: ReadFrame) -> ReadFrame:
    """What a frame says of its looks: whether there was one (`looked`)."""
    if LOOKED not in eager.columns or LOOKED in grader.rules.traits:
        return read
    looked, wrong = read_looked(_as_polars(eager, [LOOKED])[LOOKED])
    if read.looked is not None:
        looked = looked.zip_with(looked.is_not_null(), read.looked)
    made: ReadFrame = evolve(read, looked=looked, wrong=(*read.wrong, *wrong))
    return made


def _untold_in(eager: Any, grader: BatchGrader) -> dict[str, pl.Series]:
    """By trait the rows whose sorter could not tell it (`cannot_tell`). Raises RecordError for a name that no trait has."""
    traits = grader.rules.traits
    if CANNOT_TELL not in eager.columns or CANNOT_TELL in traits:
        return {}
    import polars as pl

    given = _as_polars(eager, [CANNOT_TELL])[CANNOT_TELL]
    named = [names if isinstance(names, list) else _NAMES.findall(str(names or "")) for names in given.to_list()]
    unknown = [
        recording.unknown_trait(name, near(str(name), traits))
        for name in dict.fromkeys(name for names in named for name in names)
        if name not in traits
    ]
    if unknown:
        raise RecordError(tuple(unknown))
    return {
        name: pl.Series([name in names for names in named], dtype=pl.Boolean)
        for name in {name for names in named for name in names}
    }


def _judged(eager: Any, grader: BatchGrader, read: ReadFrame) -> list[Record] | None:
    """What every row says of its fish, judge, day and look, where a standard with a panel grades a frame that names judges.

    Raises RecordError for a frame without a column of fish, and for a judge who has two rows of one fish on one day.
    """
    if grader.rules.panel is None or JUDGE not in eager.columns or JUDGE in grader.rules.traits:
        return None
    if FISH not in eager.columns:
        raise RecordError((judging.judges_without_fish(),))
    given = _as_polars(eager, [FISH, JUDGE])
    fish = [str(name) for name in given[FISH].to_list()]
    judges = ["" if name is None else str(name).strip() for name in given[JUDGE].to_list()]
    days = _days(eager, grader)
    looked = [None] * len(fish) if read.looked is None else read.looked.to_list()
    untold = [frozenset(name for name, rows in read.cannot_tell.items() if rows[row]) for row in range(len(fish))]
    first: dict[tuple[str, str, date | None], int] = {}
    problems: list[Problem] = []
    for row, key in enumerate(zip(fish, map(folded, judges), days, strict=True), 1):
        before = first.setdefault(key, row)
        if before != row and judges[row - 1]:
            problems.append(recording.doubled_judge("frame", row, fish[row - 1], judges[row - 1], before))
        elif before != row:
            problems.append(recording.doubled_fish("frame", row, fish[row - 1], before))
    if problems:
        raise RecordError(tuple(problems[:_MOST_TOLD]))
    return [
        Record(name, row, {}, date=day, looked=said, cannot_tell=cannot_tell, judge=judge)
        for row, (name, judge, day, said, cannot_tell) in enumerate(
            zip(fish, judges, days, looked, untold, strict=True), 1
        )
    ]


def _looks(eager: Any, grader: BatchGrader) -> LooksOfRows | None:
    """Which rows are looks at the same fish, where a frame has the columns of its name and of the day."""
    import polars as pl

    if FISH not in eager.columns or _dated(eager, grader) is None:
        return None
    fish, days = _as_polars(eager, [FISH])[FISH].cast(pl.String), _days(eager, grader)
    problems = list(_of_looks(fish, days))
    if problems:
        raise RecordError(tuple(problems))
    return LooksOfRows.of(fish, days)


def _dated(eager: Any, grader: BatchGrader) -> str | None:
    """The column that has the day of each look; None where a frame has none."""
    traits = grader.rules.traits
    dated = DATE if DATE in eager.columns and DATE not in traits else LOOK_DATE
    return dated if dated in eager.columns and (dated == DATE or LOOK_DATE in traits) else None


def _days(eager: Any, grader: BatchGrader) -> pl.Series:
    """The day of each row, null where it gives none. Raises RecordError for what is no day."""
    import polars as pl

    dated = _dated(eager, grader)
    if dated is None:
        return pl.Series([None] * len(eager), dtype=pl.Date)
    raw = _as_polars(eager, [dated])[dated]
    if raw.dtype == pl.Date:
        return raw
    if raw.dtype == pl.Datetime:
        return raw.dt.date()
    read = {text: day_of(text) for text in raw.unique().to_list()}
    days = pl.Series([read[text] for text in raw.to_list()], dtype=pl.Date)
    wrong = (days.is_null() & raw.is_not_null()).arg_true()
    if len(wrong) and dated == DATE:
        raise RecordError(
            tuple(recording.not_a_day("frame", row + 1, str(raw[row])[:30]) for row in wrong[:_MOST_TOLD])
        )
    return days


def _of_looks(fish: pl.Series, days: pl.Series) -> Iterator[Problem]:
    """The problem of each look that cannot be put into its place among those of its fish."""
    import polars as pl

    frame = pl.DataFrame({"fish": fish, "day": days}).with_row_index("row", 1)
    several = frame.filter(pl.len().over("fish") > 1)
    if not several.height:
        return
    first: dict[tuple[str, Any], int] = {}
    for row, name, day in several.head(_MOST_TOLD * 100).iter_rows():
        before = first.setdefault((name, day), row)
        if before != row and day is not None:
            yield recording.doubled_look("frame", row, name, day.isoformat(), before)
        elif day is None:
            other = next(r for r, n, _ in several.filter(pl.col("fish") == name).iter_rows() if r != row)
            yield recording.undated_look("frame", row, name, other)


def _doubled(frame: Any) -> list[str]:
    """The names that several columns have, where the library of a frame allows it."""
    library = type(frame).__module__.partition(".")[0]
    given = frame.columns if library == "pandas" else frame.column_names if library == "pyarrow" else ()
    names = [name for name in given if isinstance(name, str)]
    return sorted({name for name in names if names.count(name) > 1}) if len(set(names)) < len(names) else []


def matched(names: list[str], grader: BatchGrader) -> dict[str, Source]:
    """Where each trait stands among columns of these names: `length`, its title, or `length (mm)` with the unit of its numbers.

    Raises RecordError where a name is nearly one, or is taken.
    """
    traits = grader.rules.traits
    known = by_heading(traits.values())
    apart = {*traits, *_NO_TRAITS, *grader.result_names}
    united = {
        name: (found[0].name, found[1])
        for name in names
        if name not in apart and (found := headed(name, known)) is not None
    }
    united = {name: found for name, found in united.items() if found[0] not in names}
    problems: list[Problem] = [frames.column_of_results(name) for name in names if name in grader.result_names]
    problems += _nearly([name for name in names if name not in united], traits, grader.needed)
    problems += [
        frames.doubled_column(trait)
        for trait, times in Counter(trait for trait, _ in united.values()).items()
        if times > 1
    ]
    if problems:
        raise RecordError(tuple(problems))
    return {
        **{name: Source(name) for name in names if name in traits},
        **{trait: Source(name, unit) for name, (trait, unit) in united.items()},
    }


def _nearly(names: list[str], traits: Mapping[str, Trait], needed: frozenset[str]) -> list[Problem]:
    """Columns that no trait claims, but that are spelt nearly like one which the rules read and no column has."""
    absent = needed - set(names)
    found = []
    for name in names:
        known = name in traits or name in _NO_TRAITS
        meant = None if known else near(name, absent)
        if meant is not None:
            found.append(frames.nearly_a_trait(name, meant))
    return found


def unlikely_values(
    rules: Rules, read: ReadFrame, file: str, columns: Mapping[str, str], first_row: int = 1
) -> Iterator[Problem]:
    """A warning for each trait with numbers that are unlikely for the stage: the first of them, and how many there are.

    columns: the heading of each trait. first_row: the number of the first row.
    """
    for name, held in read.held.items():
        trait = rules.traits.get(name)
        usual = None if trait is None else trait.usual_at(rules.stage)
        if trait is None or usual is None or not isinstance(held, NumberColumn) or name not in columns:
            continue
        kind = trait.kind
        unit = kind.unit if isinstance(kind, Number) else None
        low, high = (float(end if unit is None else unit.to_held(end)) for end in usual)
        values = read.columns[held.name]
        rows = ((values < low) | (values > high)).fill_null(value=False).arg_true()
        if len(rows):
            found = unlikely(trait, values[int(rows[0])], rules.stage)
            site = recording.cell(file, first_row + int(rows[0]), columns[name])
            yield recording.value_unlikely(site, found.value, found.why, len(rows) - 1)


def _warn(grader: BatchGrader, doubts: Sequence[Doubt], sources: Mapping[str, Source]) -> None:
    """Warn of what is doubtful in a frame: the first of each trait in full, the others by their number."""
    for trait, told in groupby(sorted(doubts, key=lambda doubt: doubt.trait), key=lambda doubt: doubt.trait):
        first, *others = told
        column = sources[trait].column if trait in sources else trait
        problem = grader.grader.measurer.problem(first, recording.cell("frame", first.fish + 1, column))
        more = f" ({len(others)} more of {trait})" if others else ""
        warn(f"{problem}{more}", RecordWarning, stacklevel=4)


def stop_at(wrong: tuple[WrongCell, ...], file: str, first_row: int) -> None:
    """Raise RecordError with the problem of each cell that cannot be read."""
    if wrong:
        told = recording.told_once(problem_of(cell, file, first_row) for cell in wrong)
        raise RecordError(tuple(told[:_MOST_TOLD]))


def problem_of(cell: WrongCell, file: str, first_row: int) -> Problem:
    """The problem of a cell; first_row: how the first row of the frame is counted."""
    site = recording.cell(file, cell.row + first_row, cell.column)
    return recording.wrong_value(site, cell.misread.code, cell.misread.cause, cell.misread.mend)


def _as_polars(frame: Any, names: list[str]) -> pl.DataFrame:
    import polars as pl

    columns: list[pl.Series] = []
    for name in names:
        series = frame[name]
        if str(getattr(series.to_native(), "dtype", "")).startswith("period"):
            # Arrow makes numbers of them.
            columns.append(pl.Series(name, series.to_list(), dtype=pl.Object))
            continue
        try:
            made = series.to_polars()
        except Exception as error:
            if not _is_of_values(error):
                raise
            made = pl.Series(name, [_plain(value) for value in series.to_list()], dtype=pl.Object)
        columns.append(made.rename(name))
    return pl.DataFrame(columns)


def _is_of_values(error: Exception) -> bool:
    """Whether an error says that a column has values of several types, as a spreadsheet leaves them, or of one Polars lacks.

    Arrow has errors of its own for that, which are known only where it is installed. A whole number may be too large for either,
    and a text may have half of a pair of surrogates. Polars raises TypeError where it makes a series of values.
    """
    import polars as pl

    if type(error).__module__.split(".")[0] == "pyarrow":
        return True
    if isinstance(error, TypeError):
        *_, (frame, _) = walk_tb(error.__traceback__)
        return str(frame.f_globals.get("__name__")).startswith("polars._utils.construction")
    return isinstance(error, OverflowError | UnicodeEncodeError | pl.exceptions.ComputeError)


def _plain(value: Any) -> Any:
    """A value with None in place of what says that nothing is there: no number, no time, and what pandas calls NA."""
    if type(value).__name__ in {"NAType", "NaTType"}:
        return None
    return None if isinstance(value, float) and isnan(value) else value


def _joined(frame: Any, results: pl.DataFrame, lazy: str) -> Any:
    import narwhals.stable.v2 as nw

    native = frame.to_native()
    match frame.implementation:
        case nw.Implementation.POLARS:
            whole = native.hstack(results)
            if lazy == "DUCKDB":
                import duckdb

                return duckdb.from_arrow(whole.to_arrow())
            return whole.lazy() if lazy else whole
        case nw.Implementation.PANDAS:
            import pandas as pd

            made = results.to_pandas()
            made.index = native.index
            return pd.concat([native, made], axis=1)
        case nw.Implementation.PYARROW:
            table = results.to_arrow()
            for name in table.column_names:
                native = native.append_column(name, table[name])
            return native
        case other:
            made = nw.from_dict(results.to_dict(as_series=False), backend=other)
            return nw.concat([frame, made], how="horizontal").to_native()
