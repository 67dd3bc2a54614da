"""Who moves from which grade to which between two editions, and which change did it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from enum import Enum

from attrs import evolve, field

from koirules.analysis.diff.aligning import Aligned
from koirules.analysis.diff.changes import Change
from koirules.analysis.diff.following import settings_by_name
from koirules.analysis.diff.mixing import Mixer, Unit, units_of
from koirules.analysis.diff.parting import Outcome
from koirules.engines.scalar.evaluator import Trace
from koirules.grading.measuring import all_measured, measured_records
from koirules.grading.single import Grader
from koirules.grading.whole_batch import WholeBatch
from koirules.problems import RecordError
from koirules.results.mapping_record import RecordReader
from koirules.results.record import Record
from koirules.rounds.looks import read_looks
from koirules.values import define, frozen
from koirules.vocabulary.readings import Reading
from koirules.vocabulary.traits import Trait

MOST_TRIED = 100
"""Of more changes than these none is tried by itself."""


class Because(Enum):
    """How the changes that are named moved a fish."""

    ALONE = "alone"
    EACH = "each alone"
    TOGETHER = "together"


@frozen
class Move:
    """A fish with other possible grades in the newer edition.

    old, new: what each edition makes of it, in the names of the newer one. by: the changes that did it, by what they are
    about. ALONE: this one, made to the older edition, gives the newer grade. EACH: each of these does. TOGETHER: none does, and
    these did it or had a part in it; where `by` is empty, no change by itself had one, or there are too many to be tried.
    """

    fish: str
    old: Outcome
    new: Outcome
    because: Because
    by: tuple[str, ...]


@frozen
class RoundMoves:
    """A round of both editions, and the fish that only one of them keeps in it, in the order of the records."""

    round: str
    only_old: tuple[str, ...]
    only_new: tuple[str, ...]


@frozen
class Moves:
    """What a batch comes to in two editions.

    graded: how many fish. moves: of those with other grades, in the order of the records. counts: how many went from which
    possible grades to which, those that stayed too. rescored: how many keep their grade with another score.
    """

    graded: int
    moves: tuple[Move, ...]
    counts: Mapping[tuple[tuple[str, ...], tuple[str, ...]], int]
    rescored: int
    rounds: tuple[RoundMoves, ...] = ()


@frozen
class Batch:
    """Records as both editions read them, fish by fish, as they are written. file: where they stand, for problems."""

    old: tuple[Record, ...]
    new: tuple[Record, ...]
    file: str = "records"

    @classmethod
    def read(cls, old: Mapping[str, Trait], new: Mapping[str, Trait], records: Sequence[Mapping[str, object]]) -> Batch:
        """Read records by the traits of both editions. Raises RecordError with every problem, by the traits of either."""
        each = [read_looks(RecordReader.of(traits), records) for traits in ({**new, **old}, {**old, **new})]
        told = tuple(dict.fromkeys(problem for _, problems in each for problem in problems))
        if told:
            raise RecordError(told)
        return cls(tuple(each[0][0]), tuple(each[1][0]))

    def measured(self, graders: tuple[Grader, Grader]) -> tuple[Sequence[Record], Sequence[Record]]:
        """The records with what follows from them in each edition. Raises RecordError with all that is wrong in them."""
        made = [
            measured_records(grader.measurer, records, self.file, grader.silence, grader.rules)
            for grader, records in zip(graders, (self.old, self.new), strict=True)
        ]
        wrong = [problem for one in made for problem in one.problems if not problem.warning]
        if wrong:
            raise RecordError(tuple(dict.fromkeys(wrong)))
        return made[0].records, made[1].records

    def as_read_by(self, grader: Grader, mixer: Mixer) -> tuple[Record, ...]:
        """The records as an edition between the two reads them: each trait in the kind that it has there."""
        traits = grader.rules.traits
        from_old = {name for name in traits if traits[name] == mixer.old.rules.traits.get(name)}
        made = []
        for one, other in zip(self.old, self.new, strict=True):
            seats = tuple(_record_of_either(*each, from_old) for each in zip(one.seats, other.seats, strict=True))
            made.append(evolve(_record_of_either(one, other, from_old), seats=seats))
        return tuple(made)


def _record_of_either(old: Record, new: Record, from_old: set[str]) -> Record:
    before = None
    if old.before is not None and new.before is not None:
        before = _of_either(old.before, new.before, from_old)
    return evolve(new, readings=_of_either(old.readings, new.readings, from_old), before=before)


def _of_either(old: Mapping[str, Reading], new: Mapping[str, Reading], from_old: set[str]) -> dict[str, Reading]:
    kept = {name: reading for name, reading in new.items() if name not in from_old}
    return kept | {name: reading for name, reading in old.items() if name in from_old}


def moves_of(
    both: Aligned,
    graders: tuple[Grader, Grader],
    changes: Sequence[Change],
    batch: Batch,
    measured: tuple[Sequence[Record], Sequence[Record]],
    progress: Callable[[str], None],
) -> Moves:
    """The moves of a batch.

    graders: of the older edition in the names of the newer one, and of the newer one. measured: the records of the batch
    with what follows from them in each.
    """
    progress("grading the records by both")
    old, new = WholeBatch(graders[0]), WholeBatch(graders[1])
    (_, old_traces, old_runs), (_, new_traces, new_runs) = old.worked_out(measured[0]), new.worked_out(measured[1])
    outcomes = [_outcomes(grader, traces) for grader, traces in zip(graders, (old_traces, new_traces), strict=True)]
    pairs = list(zip(*outcomes, strict=True))
    moved = [i for i, (one, other) in enumerate(pairs) if set(one.possible) != set(other.possible)]
    units = units_of(changes, settings_by_name(both.old, both.new))
    reasons = _reasons(Mixer(both, *graders), units, batch, pairs, moved, progress)
    moves = tuple(Move(batch.new[i].fish, pairs[i][0], pairs[i][1], reasons[i][0], reasons[i][1]) for i in moved)
    counts = Counter((one.possible, other.possible) for one, other in pairs)
    kept = [{run.round.name: set(run.kept) for run in runs} for runs in (old_runs, new_runs)]
    rounds = tuple(
        RoundMoves(name, *(tuple(batch.new[i].fish for i in sorted(fish)) for fish in (ours - theirs, theirs - ours)))
        for name, theirs in kept[1].items()
        if (ours := kept[0].get(name)) is not None and ours != theirs
    )
    rescored = sum(set(one.possible) == set(other.possible) and one.score != other.score for one, other in pairs)
    return Moves(len(pairs), moves, counts, rescored, rounds)


def _outcomes(grader: Grader, traces: Sequence[Trace]) -> list[Outcome]:
    return [Outcome(grader.named(trace.possible), trace.score) for trace in traces]


def _reasons(
    mixer: Mixer,
    units: Sequence[Unit],
    batch: Batch,
    pairs: Sequence[tuple[Outcome, Outcome]],
    moved: Sequence[int],
    progress: Callable[[str], None],
) -> dict[int, tuple[Because, tuple[str, ...]]]:
    """By which changes each fish that moved did so."""
    if len(units) == 1:
        return dict.fromkeys(moved, (Because.ALONE, (units[0].about,)))
    if not moved or len(units) > MOST_TRIED:
        return dict.fromkeys(moved, (Because.TOGETHER, ()))
    tried: dict[int, _Tried] = {i: _Tried() for i in moved}
    for number, unit in enumerate(units, 1):
        progress(f"trying the changes one at a time: {number} of {len(units)}")
        few = mixer.with_needed(unit, units)
        with_it = _grades(mixer, few, batch, moved)
        needed = None if len(few) == 1 else _grades(mixer, few[1:], batch, moved)
        without_it = _grades(mixer, [other for other in units if other is not unit], batch, moved)
        for i in moved:
            old, new = (set(outcome.possible) for outcome in pairs[i])
            before = old if needed is None else needed[i]
            if with_it is not None and with_it[i] == new:
                (tried[i].alone if len(few) == 1 else tried[i].few).append(tuple(one.about for one in few))
            if (with_it is not None and with_it[i] != before) or (without_it is not None and without_it[i] != new):
                tried[i].part.append(unit.about)
    return {i: tried[i].because() for i in moved}


@define
class _Tried:
    """What the changes came to that were made one at a time.

    alone: those that gave the newer grade. few: those that did so with what they need. part: those that had any part in it.
    """

    alone: list[tuple[str, ...]] = field(factory=list)
    few: list[tuple[str, ...]] = field(factory=list)
    part: list[str] = field(factory=list)

    def because(self) -> tuple[Because, tuple[str, ...]]:
        """The changes that did it."""
        names = tuple(name for one in self.alone for name in one)
        if names:
            return (Because.ALONE if len(names) == 1 else Because.EACH), names
        return Because.TOGETHER, self.few[0] if self.few else tuple(self.part)


def _grades(mixer: Mixer, units: Sequence[Unit], batch: Batch, moved: Sequence[int]) -> dict[int, set[str]] | None:
    """The possible grades of the fish that moved by the older edition with some changes; None where there is no such one."""
    grader = mixer.mixed(units)
    if grader is None:
        return None
    records = all_measured(grader.measurer, batch.as_read_by(grader, mixer), grader.silence, grader.rules)
    whole = WholeBatch(grader)
    if whole.asked.nothing and not any(record.seats for record in records):
        grader.evaluator.ahead.prepare([records[i].readings for i in moved])
        return {i: set(grader.named(grader.trace(records[i].readings).possible)) for i in moved}
    _, traces, _ = whole.worked_out(records)
    return {i: set(grader.named(traces[i].possible)) for i in moved}
