"""A table of records of several varieties: each row read by the traits of the standard that is for its fish."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence
from pathlib import Path
from unicodedata import normalize

from attrs import evolve, field

from koirules.grading.purposes import Purpose, Wanted, fitting
from koirules.languages import ENGLISH, Tongue, to_say
from koirules.problems import Problem, mixed, recording
from koirules.records.columns import STAGE, VARIETY, Columns, match_columns
from koirules.records.records import read_table
from koirules.records.rows import read_rows
from koirules.records.table import FISH, Row, Table, is_blank, text_of
from koirules.results.mapping_record import JUDGE
from koirules.results.record import Record
from koirules.rounds.looks import latest_looks
from koirules.values import frozen
from koirules.vocabulary.plain_text import folded
from koirules.vocabulary.spoken import Said, known
from koirules.vocabulary.traits import Trait


@frozen
class Reading:
    """A standard as far as records are read for it.

    title: its own, as its file has it, with its edition; bases: the same of each standard that it is based on.
    """

    purpose: Purpose
    traits: Mapping[str, Trait] = field(hash=False)
    name: str = ""
    title: tuple[str, str] = ("", "")
    bases: tuple[tuple[str, str], ...] = ()


@frozen
class LeftOver:
    """A fish that no standard is for, or more than one; fish is "" where the row does not name it.

    because: the reason, with names in braces; values: what stands for them.
    """

    fish: str
    row: int
    variety: str
    stage: str
    because: str
    values: Mapping[str, str] = field(factory=dict, hash=False)

    @property
    def why(self) -> str:
        """Why it is left over."""
        return self.told(ENGLISH)

    def told(self, tongue: Tongue) -> str:
        """The same in a language."""
        return tongue(self.because, **self.values)


@frozen
class MixedBatch:
    """The records of a file by the standards that are for them, in the order of these; with what was left over, and problems."""

    file: str
    records: tuple[tuple[Record, ...], ...]
    left: tuple[LeftOver, ...]
    problems: tuple[Problem, ...]


def read_mixed(
    path: Path,
    readings: Sequence[Reading],
    say: Callable[[str], Said | None],
    labels: Collection[str] = (),
    *,
    broken_as_open: bool = False,
) -> MixedBatch:
    """Read a file of records for several standards; never raises for what is wrong with it.

    say: reads the cell of a variety. labels: columns that are carried along; `variety` and `stage` are carried anyway.
    broken_as_open: what cannot be read is taken as not recorded (read_rows).
    """
    table = read_table(path)
    places = {folded(heading.text): place for place, heading in reversed(list(enumerate(table.headings)))}
    columns, problems = _columns(table, readings, labels)
    problems = [*table.problems, *problems]
    rows: list[list[Row]] = [[] for _ in readings]
    left: list[LeftOver] = []
    meant = _meant_by(table, places)
    for row in table.rows:
        found, told = _standards_for(row, places, readings, say, meant)
        if len(found) == 1:
            rows[found[0]].append(row)
        elif not (_judge_of(row, places) and any(_key(one.fish) == _key(told.fish) for one in left)):
            left.append(told)
    groups: list[tuple[Record, ...]] = []
    for reading, columns_of, mine in zip(readings, columns, rows, strict=True):
        part = evolve(table, rows=tuple(mine), problems=())
        records, of_rows = read_rows(part, columns_of, broken_as_open=broken_as_open)
        problems += [*of_rows, *_unread(part, columns_of, columns, reading)]
        groups.append(records)
    doubled = _in_two_groups(table.file, groups, left)
    problems += doubled
    again = {_row_of(problem) for problem in doubled}
    groups = [tuple(record for record in group if record.row not in again) for group in groups]
    left = [one for one in left if one.row not in again]
    groups = [latest_looks(group) for group in groups]
    return MixedBatch(table.file, tuple(groups), tuple(left), tuple(sorted(dict.fromkeys(problems), key=_row_of)))


def _columns(table: Table, readings: Sequence[Reading], labels: Collection[str]) -> tuple[list[Columns], list[Problem]]:
    """The columns as each standard reads them, and their problems; a column is unknown only where no standard knows it."""
    matched = [match_columns(table, reading.traits, labels) for reading in readings]
    unknown = [{str(p.site): p for p in found if p.code == "unknown-column"} for _, found in matched]
    nobody_knows = set.intersection(*map(set, unknown)) if unknown else set()
    problems = [
        problem
        for _, found in matched
        for problem in found
        if problem.code != "unknown-column" or str(problem.site) in nobody_knows
    ]
    first: dict[tuple[str, str], Problem] = {}
    for problem in problems:
        first.setdefault((problem.code, str(problem.site)), problem)
    return [columns for columns, _ in matched], list(first.values())


def _meant_by(table: Table, places: Mapping[str, int]) -> dict[tuple[str, str], str]:
    """The variety and stage that the first row of a fish gives: rows of its judges need not give them again."""
    found: dict[tuple[str, str], str] = {}
    for row in table.rows if JUDGE in places and FISH in places else ():
        for column in (VARIETY, STAGE):
            given = known(text_of(row.cells[places[column]])) if column in places else ""
            if given.strip():
                found.setdefault((column, _key(text_of(row.cells[places[FISH]]))), given)
    return found


def _judge_of(row: Row, places: Mapping[str, int]) -> str:
    return text_of(row.cells[places[JUDGE]]).strip() if JUDGE in places else ""


def _key(fish: str) -> str:
    return normalize("NFC", fish.strip())


def _standards_for(
    row: Row,
    places: Mapping[str, int],
    readings: Sequence[Reading],
    say: Callable[[str], Said | None],
    meant: Mapping[tuple[str, str], str],
) -> tuple[list[int], LeftOver]:
    fish, variety, stage = (
        text_of(row.cells[places[name]]) if name in places else "" for name in (FISH, VARIETY, STAGE)
    )
    variety, stage = known(variety), known(stage)
    if _judge_of(row, places):
        variety, stage = (
            given if given.strip() else meant.get((column, _key(fish)), "")
            for column, given in ((VARIETY, variety), (STAGE, stage))
        )
    spoken = say(variety) if variety.strip() else None
    wanted = Wanted(spoken, folded(stage) or None, VARIETY in places, STAGE in places)
    if variety.strip() and spoken is None:
        return [], LeftOver(fish, row.number, variety, stage, NO_STANDARD, {"what": variety})
    found = fitting([reading.purpose for reading in readings], wanted)
    return found, LeftOver(fish, row.number, variety, stage, *_why(found, wanted, readings))


NO_STANDARD = to_say("no standard for {what}")
_SEVERAL = to_say("more than one standard: {standards}")
_BUILT_ON = to_say(
    "more than one standard: {standards}; one is based on the other: give the rules without {base}, or move its file into a "
    "folder of its own"
)
_MENDS = {
    (VARIETY,): to_say("more than one standard: {standards}; a column variety would tell"),
    (STAGE,): to_say("more than one standard: {standards}; a column stage would tell"),
    (VARIETY, STAGE): to_say("more than one standard: {standards}; a column variety and a column stage would tell"),
}
_MISSING = {
    (VARIETY,): to_say("no variety recorded"),
    (STAGE,): to_say("no stage recorded"),
    (VARIETY, STAGE): to_say("no variety and no stage recorded"),
}


def _why(found: Sequence[int], wanted: Wanted, readings: Sequence[Reading]) -> tuple[str, Mapping[str, str]]:
    def standards_of(places: Sequence[int]) -> str:
        return ", ".join(readings[place].name for place in places)

    if found:
        purposes = [readings[place].purpose for place in found]
        apart = {
            VARIETY: len({each.varieties for each in purposes}) > 1,
            STAGE: len({each.stage for each in purposes}) > 1,
        }
        asked = {VARIETY: wanted.variety_asked, STAGE: wanted.stage_asked}
        under = [one for one in found if any(readings[one].title in readings[other].bases for other in found)]
        if under and len(found) - len(under) == 1:
            standards = {"standards": standards_of(found), "base": standards_of(under)}
            return _BUILT_ON, standards
        columns = tuple(name for name in (VARIETY, STAGE) if not asked[name] and apart[name])
        return _MENDS.get(columns, _SEVERAL), {"standards": standards_of(found)}
    missing = tuple(
        name
        for name, value, asked in (
            (VARIETY, wanted.variety, wanted.variety_asked),
            (STAGE, wanted.stage, wanted.stage_asked),
        )
        if asked and value is None
    )
    if missing:
        return _MISSING[missing], {}
    form = f" ({wanted.variety.form.replace('_', ' ')})" if wanted.variety and wanted.variety.form else ""
    words = [f"{wanted.variety.name}{form}" if wanted.variety else "", wanted.stage or ""]
    return NO_STANDARD, {"what": ", ".join(word for word in words if word)}


def _unread(part: Table, columns: Columns, all_columns: Sequence[Columns], reading: Reading) -> list[Problem]:
    """A warning for each column in which fish have something that their own standard does not know."""
    known = {column.index for column in columns.others}
    others = {column.index: column.heading for each in all_columns for column in each.others}
    found: list[Problem] = []
    for index, heading in others.items():
        if index not in known:
            filled = [row.number for row in part.rows if not is_blank(row.cells[index])]
            if filled:
                found.append(mixed.column_of_others(part.file, filled[0], heading, len(filled), reading.name))
    return found


def _in_two_groups(file: str, groups: Sequence[Sequence[Record]], left: Sequence[LeftOver]) -> list[Problem]:
    """The fish whose rows went to different standards: one of the rows names another fish's variety or stage."""
    first: dict[str, tuple[int, int]] = {}
    problems: list[Problem] = []
    seen = [(record.row, record.fish, place) for place, group in enumerate(groups) for record in group]
    seen += [(one.row, one.fish, -1) for one in left if one.fish.strip()]
    for row, fish, place in sorted(seen):
        before, its_place = first.setdefault(_key(fish), (row, place))
        if before != row and (its_place != place or place == -1):
            problems.append(recording.doubled_fish(file, row, fish, before))
    return problems


def _row_of(problem: Problem) -> int:
    return getattr(problem.site, "row", None) or 0
