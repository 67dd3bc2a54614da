"""What the columns of a table hold: the fish, a trait with its unit, a label that is carried along."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence

from koirules.problems import Problem, recording
from koirules.records.table import FISH, Heading, Table, Told, is_blank, letters_of, text_of
from koirules.results.mapping_record import JUDGE, LOOK, LOOKED
from koirules.rounds.looks import DATE, LOOK_DATE
from koirules.values import frozen
from koirules.vocabulary.expected import units_of
from koirules.vocabulary.headings import IN_BRACKETS, by_heading
from koirules.vocabulary.kinds import Count, Label, Number
from koirules.vocabulary.nearness import near
from koirules.vocabulary.plain_text import folded, plain
from koirules.vocabulary.quantities import unit_named
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import Unit
from koirules.vocabulary.wordings import NOTE_COLUMNS

VARIETY, STAGE = "variety", "stage"
"""The columns that say by which of several standards a fish is graded; carried along where there is one standard."""

OWNER = "owner"
"""The column that says whose a fish is: shown to the house, and to nobody else."""
_CARRIED = {VARIETY, STAGE, OWNER, *NOTE_COLUMNS}
_MOST_MEANT = 3
_NAMES_OF_FISH = ("id", "fish_id", "name", "tag", "number", "no", "nr", "koi", "koi_id", "fish_no", "fish_name")


MOST_COLUMNS = 16_384
"""So many columns a spreadsheet can have."""


@frozen
class Column:
    """A column that holds a trait, a label, or both; `index` counts from 0.

    told: whether its unit was told as wrong, so that nobody knows what its cells mean and none of them is looked at.
    """

    index: int
    heading: str
    trait: Trait | None
    unit: Unit | None
    label: str | None
    told: bool = False


@frozen
class Columns:
    """The columns of a table; `fish` is the index of the one that names the fish, `date` of the one that dates the look.

    looked: of the one that says whether there was a look; look: of the one that says which; judge: of the one that says whose
    record it is. noted: whether that of the day is
    that of the trait, in which something else than a day may stand.
    """

    fish: int | None
    others: tuple[Column, ...]
    date: int | None = None
    noted: bool = False
    looked: int | None = None
    look: int | None = None
    judge: int | None = None


def match_columns(
    table: Table,
    traits: Mapping[str, Trait],
    labels: Collection[str],
    called: Callable[[str], Sequence[str]] = lambda _: (),
) -> tuple[Columns, tuple[Problem, ...]]:
    """Find what each column holds: headings are trait names or titles, with a unit in brackets if there is one.

    called: the traits that people call so, for a heading that names none.
    """
    if len(table.headings) > MOST_COLUMNS:
        told = recording.too_many_columns(table.file, table.headings[0].row, len(table.headings), MOST_COLUMNS)
        return Columns(None, ()), (told,)
    known = by_heading(traits.values())
    declared = {folded(label): label for label in labels}
    problems: list[Problem] = []
    columns: list[Column] = []
    taken: dict[str, str] = {}
    fish: int | None = None
    date: int | None = None
    looked: int | None = None
    look: int | None = None
    judge: int | None = None
    dated = DATE not in known and DATE not in declared
    instead = _instead_of_fish(table, known)
    for index, heading in enumerate(table.headings):
        if not heading.text:
            problems += _unnamed(table, index, heading)
        elif folded(heading.text) == FISH:
            problems += _doubled(table.file, heading, taken, FISH, FISH)
            fish = index if fish is None else fish
        elif dated and folded(heading.text) == DATE:
            problems += _doubled(table.file, heading, taken, DATE, DATE)
            date = index if date is None else date
        elif folded(heading.text) == LOOKED and LOOKED not in known and LOOKED not in declared:
            problems += _doubled(table.file, heading, taken, LOOKED, LOOKED)
            looked = index if looked is None else looked
        elif folded(heading.text) == LOOK and LOOK not in known and LOOK not in declared:
            problems += _doubled(table.file, heading, taken, LOOK, LOOK)
            look = index if look is None else look
        elif folded(heading.text) == JUDGE and JUDGE not in known and JUDGE not in declared:
            problems += _doubled(table.file, heading, taken, JUDGE, JUDGE)
            judge = index if judge is None else judge
        elif heading.text != instead or folded(instead) in declared:
            column, found = _match(table.file, index, heading, known, declared, called)
            if column is not None:
                name = column.trait.name if column.trait else column.label or ""
                found += _doubled(table.file, heading, taken, f"{bool(column.trait)} {name}", name)
                columns.append(column)
            problems += found
    if fish is None and table.headings:
        problems.insert(0, recording.no_fish_column(table.file, table.headings[0].row, instead, None))
    problems += _missing(table, labels)
    noted = next((one.index for one in columns if one.trait is not None and one.trait.name == LOOK_DATE), None)
    by_trait = date is None and noted is not None
    day = noted if by_trait else date
    return Columns(fish, tuple(columns), day, by_trait, looked, look, judge), tuple(problems)


def _match(
    file: str,
    index: int,
    heading: Heading,
    known: Mapping[str, Trait],
    declared: Mapping[str, str],
    called: Callable[[str], Sequence[str]],
) -> tuple[Column | None, list[Problem]]:
    text = plain(heading.text)
    trait = known.get(folded(text))
    label = declared.get(folded(text)) or (folded(text) if trait is None and folded(text) in _CARRIED else None)
    if trait is None and label is None and (bracketed := IN_BRACKETS.fullmatch(text)):
        name, word = bracketed.groups()
        trait = known.get(folded(name))
        if trait is not None:
            unit, problem = _unit(file, heading, trait, word)
            told = problem is not None and isinstance(trait.kind, Number | Count)
            return Column(index, heading.text, trait, unit, _label_of(trait), told), [problem] if problem else []
    if trait is None and label is None:
        return None, [_unknown(file, heading, text, known, called)]
    return Column(index, heading.text, trait, None, label or _label_of(trait)), []


def _label_of(trait: Trait | None) -> str | None:
    return trait.name if trait is not None and isinstance(trait.kind, Label) else None


def _unit(file: str, heading: Heading, trait: Trait, word: str) -> tuple[Unit | None, Problem | None]:
    kind = trait.kind
    if not isinstance(kind, Number) or kind.unit is None:
        return None, recording.column_unit_not_wanted(file, heading.row, heading.text, word, trait.name)
    unit = unit_named(word)
    units = units_of(kind)
    if unit is None:
        return None, recording.unknown_column_unit(file, heading.row, heading.text, word, units)
    if unit.dimension is not kind.dimension:
        measure = kind.unit.dimension.word
        site = recording.cell(file, heading.row, heading.text)
        return None, recording.wrong_column_unit(site, unit.symbol, measure, units)
    return unit, None


def _unknown(
    file: str,
    heading: Heading,
    text: str,
    known: Mapping[str, Trait],
    called: Callable[[str], Sequence[str]],
) -> Problem:
    """The problem of an unknown header, with what is called so, the name that is near, or the brackets of a unit."""
    start, _, word = text.replace("_", " ").rpartition(" ")
    trait = known.get(folded(start.rstrip(",:")))
    if trait is not None and unit_named(word) is not None:
        return recording.unknown_column(file, heading.row, heading.text, f"{trait.name} ({word})")
    bracketed = IN_BRACKETS.fullmatch(text)
    name = folded(bracketed[1] if bracketed else text)
    several = called(name)
    if len(several) > 1:
        return recording.unknown_column(file, heading.row, heading.text, *several[:_MOST_MEANT])
    meant = several[0] if several else near(name, known)
    if meant is None:
        return recording.unknown_column(file, heading.row, heading.text)
    fits = bracketed is not None and _unit(file, heading, known[folded(meant)], bracketed[2])[1] is None
    better = f"{known[folded(meant)].name} ({bracketed[2]})" if bracketed and fits else known[folded(meant)].name
    return recording.unknown_column(file, heading.row, heading.text, better)


def _unnamed(table: Table, index: int, heading: Heading) -> list[Problem]:
    first = next(
        (row for row in table.rows if not is_blank(row.cells[index]) and row.cells[index] is not Told.TOLD), None
    )
    if first is None:
        return []
    what = f'"{text_of(first.cells[index])[:20]}" in row {first.number}'
    return [recording.unnamed_column(table.file, heading.row, letters_of(index), what)]


def _doubled(file: str, heading: Heading, taken: dict[str, str], key: str, name: str) -> list[Problem]:
    if key not in taken:
        taken[key] = heading.text
        return []
    return [recording.doubled_column(file, heading.row, heading.text, taken[key], name)]


def _instead_of_fish(table: Table, known: Mapping[str, Trait]) -> str | None:
    """The header that may have been meant to name the fish, where none does."""
    headings = {folded(heading.text): heading.text for heading in table.headings if folded(heading.text) not in known}
    if FISH in headings:
        return None
    meant = near(FISH, headings) or next((name for name in _NAMES_OF_FISH if name in headings), None)
    return headings[meant] if meant else None


def _missing(table: Table, labels: Collection[str]) -> list[Problem]:
    headings = {folded(heading.text): heading.text for heading in table.headings}
    if not headings:
        return []
    gone = [label for label in labels if folded(label) not in headings]
    return [recording.missing_label(table.file, label, near(label, headings.values())) for label in gone]
