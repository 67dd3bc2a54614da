"""Records with their derived traits: one by one, or a whole batch at once."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from attrs import evolve

from koirules.grading.judges import record_together, seats_of
from koirules.grading.silence import SilenceFiller, carried_forward
from koirules.measures.deriving import Derived, Measurer
from koirules.problems import Cell, Problem, RecordError, recording
from koirules.problems.judging import no_panel
from koirules.results.record import Record
from koirules.standard.derivations import TypedFormula, inputs_of
from koirules.standard.parts import Rules
from koirules.values import frozen
from koirules.vocabulary.readings import Reading


@frozen
class MeasuredBatch:
    """Records with their derived traits, and what was found on the way: warnings, and what is wrong with maps."""

    records: tuple[Record, ...]
    problems: tuple[Problem, ...] = ()


def measured_record(
    measurer: Measurer, record: Record, file: str = "record", silence: SilenceFiller | None = None
) -> Record:
    """A record with its derived traits, and with what silence means. Raises RecordError for a map that cannot be measured."""
    if record.measured:
        return record
    if silence is None and not any(
        name in readings for name in measurer.inputs for readings in (record.readings, record.before or {})
    ):
        return evolve(record, measured=True)
    batch = measured_records(measurer, (record,), file, silence)
    wrong = tuple(problem for problem in batch.problems if not problem.warning)
    if wrong:
        raise RecordError(wrong)
    return batch.records[0]


def leaves_as_it_is(measurer: Measurer, recorded: Callable[[str], bool]) -> bool:
    """Whether measuring surely adds nothing to a record and finds nothing wrong with it: at the most a doubt.

    recorded: whether the record has a trait.
    """
    columns: set[str] = set()
    for measure in measurer.measures:
        if isinstance(measure, TypedFormula):
            if not recorded(measure.trait.name) and any(map(recorded, measure.inputs)):
                return False
            columns.add(measure.trait.name)
        elif all(name in columns or recorded(name) for name in measure.inputs):
            # A function may refuse what it is given, or fail.
            return False
    return True


def all_measured(
    measurer: Measurer, records: Sequence[Record], silence: SilenceFiller | None = None, rules: Rules | None = None
) -> tuple[Record, ...]:
    """Records with their derived traits, and with what silence means; those that were measured stay.

    Raises RecordError like the other.
    """
    if all(record.measured for record in records):
        return tuple(records)
    batch = measured_records(measurer, records, "records", silence, rules)
    wrong = tuple(problem for problem in batch.problems if not problem.warning)
    if wrong:
        raise RecordError(wrong)
    return tuple(old if old.measured else new for old, new in zip(records, batch.records, strict=True))


def measured_records(
    measurer: Measurer,
    records: Sequence[Record],
    file: str,
    silence: SilenceFiller | None = None,
    rules: Rules | None = None,
) -> MeasuredBatch:
    """Records with their derived traits, worked out over whole columns, and with what silence means.

    file: the name that problems show. The look before is measured too; what is doubtful about it was told when it was the
    latest. silence: None where none is to be filled in. rules: those by which judges of one fish are put together.
    """
    if rules is not None and any(record.seats and not record.measured for record in records):
        return _of_judges(measurer, records, file, silence, rules)
    if silence is None:
        return _measured(measurer, records, file)
    records = [carried_forward(silence.rules, record) for record in records]
    batch = _measured(measurer, records, file)
    both = zip(batch.records, records, strict=True)
    return evolve(batch, records=tuple(silence.filled(made, record) for made, record in both))


def _of_judges(
    measurer: Measurer, records: Sequence[Record], file: str, silence: SilenceFiller | None, rules: Rules
) -> MeasuredBatch:
    """The same where several judges may have looked at a fish: the record of each is measured by itself."""
    panel = rules.panel
    groups: list[tuple[Record, ...]] = []
    problems: list[Problem] = []
    for record in records:
        if panel is None and len(record.seats) > 1:
            names = [seat.judge for seat in record.seats]
            problems.append(no_panel(file, record.seats[1].row or None, record.fish, names, rules.file))
        groups.append(record.seats if record.seats and panel is None else (record,))
        if panel is not None and record.seats and not record.measured:
            groups[-1] = seats_of(panel, record)
    batch = measured_records(measurer, [one for group in groups for one in group], file, silence)
    measured = iter(batch.records)
    made: list[Record] = []
    for record, group in zip(records, groups, strict=True):
        seats = [next(measured) for _ in group]
        if panel is not None and record.seats and not record.measured:
            made.append(record_together(rules, panel, record, seats))
        else:
            made.append(evolve(seats[0], labels=record.labels, unreadable=record.unreadable))
    return MeasuredBatch(tuple(made), (*batch.problems, *problems))


def _measured(measurer: Measurer, records: Sequence[Record], file: str) -> MeasuredBatch:
    if not measurer.measures:
        return MeasuredBatch(tuple(evolve(record, measured=True) for record in records))
    derived = _derived(measurer, [record.readings for record in records])
    doubts: list[list[Problem]] = [[] for _ in records]
    for doubt in derived.doubts:
        site = recording.cell(file, records[doubt.fish].row or None, doubt.trait)
        doubts[doubt.fish].append(measurer.problem(doubt, site))
    looked = [i for i, record in enumerate(records) if record.before is not None]
    earlier = _derived(measurer, [records[i].before or {} for i in looked])
    before = {i: _with(records[i].before or {}, earlier, number) for number, i in enumerate(looked)}
    made = tuple(
        evolve(
            record,
            readings=_with(record.readings, derived, i),
            before=before.get(i),
            measured=True,
            doubts=tuple(doubts[i]),
        )
        for i, record in enumerate(records)
    )
    problems = [problem for told in doubts for problem in told]
    wrong = [(w, records[w.fish].row or None) for w in derived.wrong]
    # Nobody knows here in which row the look before stands.
    wrong += [(w, None) for w in earlier.wrong]
    for one, row in wrong:
        site = recording.cell(file, row, one.trait)
        problems.append(recording.wrong_value(site, one.misread.code, one.misread.cause, one.misread.mend))
    problems += [evolve(problem, site=Cell(file)) for problem in derived.failed or earlier.failed]
    return MeasuredBatch(made, tuple(problems))


def _derived(measurer: Measurer, rows: Sequence[Mapping[str, Reading]]) -> Derived:
    names = {name for measure in measurer.measures for name in (*inputs_of(measure), *measurer.outputs(measure))}
    columns = {
        name: [readings.get(name) for readings in rows]
        for name in sorted(names)
        if any(name in readings for readings in rows)
    }
    return measurer.derive(columns, len(rows))


def _with(given: Mapping[str, Reading], derived: Derived, number: int) -> dict[str, Reading]:
    readings = dict(given)
    for name, column in derived.columns.items():
        reading = column[number]
        if reading is not None:
            readings[name] = reading
    return readings
