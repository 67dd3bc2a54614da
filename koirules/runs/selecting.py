"""A run whose fish are compared: the passes that count its figures, and its rounds once all are graded."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from attrs import evolve

from koirules.problems import Problem, is_refused
from koirules.problems import runs as say
from koirules.records.large_results import facts_of, large_results
from koirules.results.course import AlertShown, Fate
from koirules.results.parts_read import traits_of_rounds
from koirules.rounds.course_words import CourseTeller
from koirules.runs.comparing import ALERTS, BEFORE, LATER
from koirules.runs.one import ready, standard_of
from koirules.runs.work import Job, Outcome, Piece
from koirules.values import frozen
from koirules.vocabulary.readings import Span

if TYPE_CHECKING:
    import polars as pl

Runner = Callable[[Job, Sequence[Piece]], Iterable[Outcome]]

_MOST_NAMED = 50


@frozen
class RoundTotals:
    """What a round did with the fish of a run; named: the first of those that it kept, in the order of the records."""

    title: str
    asks: str
    looked_at: int
    kept: int
    left: int
    tied: int
    open: int
    sent: str
    named: tuple[str, ...]


def what_cannot_be(job: Job) -> list[Problem]:
    """What a standard asks that whole files cannot answer."""
    standard = standard_of(job)
    found = [say.no_earlier_looks(job.file)] if any(standard.whole_batch.earlier) else []
    at_looks = standard.rules.carried or any(one.look is not None for one in standard.rules.rounds)
    return [*found, *([say.no_looks(job.file)] if at_looks else [])]


def counted_before(job: Job, pieces: Sequence[Piece], runner: Runner, *, leave_out: bool) -> tuple[Job, list[Outcome]]:
    """Count every figure that a standard asks for; gives the job with the tallies, and the outcomes that were refused."""
    batch = standard_of(job).whole_batch
    phases = [(BEFORE, level) for level in range(len(batch.asked.levels))]
    phases += [(ALERTS, level) for level in range(len(batch.asked_by_alerts.levels))]
    refused: dict[int, Outcome] = {}
    for phase, level in phases:
        bad = {outcome.piece.file for outcome in refused.values()}
        left = [piece for piece in pieces if piece.file not in bad]
        outcomes = list(runner(evolve(job, phase=phase, level=level), left))
        broken = [outcome for outcome in outcomes if is_refused(outcome.problems)]
        refused.update((outcome.piece.number, outcome) for outcome in broken)
        if broken and not leave_out:
            break
        bad = {outcome.piece.file for outcome in refused.values()}
        tallies = dict(job.tallies)
        known = frozenset(tallies)  # a figure that grades and alerts ask for is counted for the grades alone
        for outcome in outcomes:
            if outcome.piece.file not in bad:
                for key, tally in outcome.tallies.items():
                    if key not in known:
                        tallies[key] = tallies[key].merged(tally) if key in tallies else tally
        job = evolve(job, tallies=tallies)
    return job, list(refused.values())


def alerts_of(job: Job) -> tuple[AlertShown, ...]:
    """The alerts of a run whose figures were counted."""
    from koirules.runs.comparing import comparing

    standard, grader = ready(job)
    if not standard.rules.alerts:
        return ()
    tables = comparing(job, standard, grader).tables
    figures: dict[str, Span] = {}
    later: dict[str, Span] = {}
    for key, table in tables.items():
        everybody = (1,) * len(table.figure.enough)
        found = None if table.figure.same or table.figure.kind.own else table.millionths(everybody, None)
        if found is not None:
            ends = table.ends(everybody, None)
            figures[key] = Span(found / 1_000_000.0, found / 1_000_000.0)
            if ends is not None:
                later[key] = Span(ends[0] / 1_000_000.0, ends[1] / 1_000_000.0)
    return tuple(standard.whole_batch.alerts(figures, later))


def rounds_of(job: Job, pieces: Sequence[Piece]) -> tuple[tuple[RoundTotals, ...], pl.DataFrame]:
    """Run the rounds over what the pieces put aside; what each did, and its columns for all fish in order."""
    import polars as pl

    from koirules.grading.whole_frames import with_outcome
    from koirules.rounds.columnar.kept_rows import taken_up
    from koirules.rounds.columnar.picks import FATES
    from koirules.rounds.columnar.rows import hold_grade
    from koirules.rounds.rounds_of_rows import places_of

    standard, grader = ready(job)
    files = [file for piece in pieces for file in sorted(Path(job.folder).glob(f"aside-{piece.number:06}-*.parquet"))]
    parts = [pl.read_parquet(file) for file in files]
    if not parts:
        return (), pl.DataFrame()
    rows = taken_up(parts, traits_of_rounds(standard.rules))
    fish = rows.columns["fish"]
    made = [name for name in rows.columns.columns if name == "grade bits" or name.startswith(LATER)]
    given = rows.columns
    rows.columns = given.drop("fish", *made)
    wide = {name: name.removeprefix(LATER) for name in made if name.startswith(LATER)}
    later = with_outcome(rows, given.select(list(wide)).rename(wide)) if wide else None
    hold_grade(rows, given["grade bits"])
    runs, columns = grader.whole.rounds(rows, later)
    teller = CourseTeller(standard.rules, standard.settings, grader.grader.reasoner.teller.plain, (), (), None)
    kept, tied = FATES.index(Fate.KEPT), FATES.index(Fate.TIED)
    told = []
    for run in runs:
        one = run.round
        stay, open_end = run.of_fates(kept), run.of_fates(tied)
        places = places_of(one, standard.settings, len(run.rows))
        told.append(
            RoundTotals(
                teller.plain.of(one.title),
                teller.asks(one, places),
                len(run.rows),
                len(stay),
                len(run.rows) - len(stay) - len(open_end),
                len(open_end),
                int(run.open.sum()),
                one.send,
                tuple(fish.gather(stay.head(_MOST_NAMED))),
            )
        )
    return tuple(told), columns


def with_rounds(parts: Sequence[Path], columns: pl.DataFrame, target: Path) -> None:
    """Write parts of results with the columns of the rounds beside them: into one file, or each into its own again."""
    import polars as pl

    done = 0
    facts = facts_of(parts[0]) if parts else {}
    if not target.suffix:
        for part in parts:
            frame = pl.read_parquet(part)
            with large_results(part, "rounds", facts) as again:
                again.append(_beside(frame, columns, done))
                again.finish()
            done += frame.height
        return
    with large_results(target, "rounds", facts) as results:
        for part in parts:
            frame = pl.read_parquet(part)
            results.append(_beside(frame, columns, done))
            done += frame.height
        results.finish()


def _beside(frame: pl.DataFrame, columns: pl.DataFrame, done: int) -> pl.DataFrame:
    """Results with the columns of the rounds, before the labels that were carried along."""
    place = frame.columns.index("lifts") + 1
    extra = columns.slice(done, frame.height).get_columns()
    every = frame.get_columns()
    import polars as pl

    return pl.DataFrame([*every[:place], *extra, *every[place:]])
