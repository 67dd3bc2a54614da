"""Derives traits over whole columns of readings, for one fish as for many."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from attrs import field

from koirules.measures.formulas import Unrecorded, as_reading, worked_out
from koirules.problems import Problem, measuring
from koirules.problems.failing import failure_told
from koirules.problems.problem import Cell
from koirules.standard.derivations import TypedFormula, TypedMeasure, inputs_of
from koirules.standard.parts import Setting
from koirules.values import define, frozen
from koirules.vocabulary.expected import range_of
from koirules.vocabulary.kinds import Choice, Count, Kind, Number, Places, Scale, YesNo, words_of
from koirules.vocabulary.measures import Column, Computed, Given
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.readings import PlaceSet, Reading, Span, anything, show_reading
from koirules.vocabulary.traits import Trait

APART = 0.05
"""Numbers are told as different where they are farther apart than this part of the larger, since nobody writes every digit
down (from memory)."""


@frozen
class Doubt:
    """What is doubtful of one trait of one fish (counted from 0).

    written: what stands in the record, None where nothing does. derived: what comes out, in words.
    """

    fish: int
    trait: str
    written: Reading | None
    derived: str
    inputs: tuple[str, ...]


@frozen
class Wrong:
    """What about a reading shows only when it is measured: the fish (counted from 0), the trait, what is wrong."""

    fish: int
    trait: str
    misread: Misread


@define
class Derived:
    """What came of deriving. columns: of every trait that was derived or given, by name."""

    columns: dict[str, list[Reading | None]]
    doubts: list[Doubt] = field(factory=list)
    wrong: list[Wrong] = field(factory=list)
    failed: list[Problem] = field(factory=list)


@frozen
class Measurer:
    """The measures that a standard needs, ready to be carried out.

    measures: in order. traits: of the variety. constants: the values of this run. wanted: the derived traits that are read.
    """

    measures: tuple[TypedMeasure, ...]
    traits: Mapping[str, Trait] = field(repr=False, hash=False)
    constants: Mapping[str, Setting] = field(repr=False, hash=False)
    wanted: frozenset[str]

    @property
    def inputs(self) -> frozenset[str]:
        """All traits that any of the measures reads."""
        return frozenset(name for measure in self.measures for name in inputs_of(measure))

    @property
    def values(self) -> dict[str, float]:
        """The constants as numbers, in the held unit."""
        return {name: float(setting.value) for name, setting in self.constants.items()}

    def derive(self, columns: Mapping[str, Column], fish: int) -> Derived:
        """Derive all that is wanted. columns: what was recorded, by trait, of so many fish."""
        derived = Derived({name: list(column) for name, column in columns.items()})
        for measure in self.measures:
            self._derive(measure, derived, fish)
        return derived

    def derive_by(self, measure: TypedMeasure, columns: Mapping[str, Column], fish: int) -> Derived:
        """Derive what one of the measures gives."""
        derived = Derived({name: list(column) for name, column in columns.items()})
        self._derive(measure, derived, fish)
        return derived

    def _derive(self, measure: TypedMeasure, derived: Derived, fish: int) -> None:
        if isinstance(measure, TypedFormula):
            self._work_out(measure, derived, fish)
        else:
            self._compute(measure, derived)

    def outputs(self, measure: TypedMeasure) -> frozenset[str]:
        """The outputs of a measure that are read, by a rule or by another measure."""
        return frozenset(measure.outputs) & (self.wanted | self.inputs)

    def _work_out(self, formula: TypedFormula, derived: Derived, fish: int) -> None:
        columns = {name: derived.columns[name] for name in formula.inputs if name in derived.columns}
        made: list[Any] = [None] * fish
        if columns:
            for i in range(fish):
                readings = {name: value for name, column in columns.items() if (value := column[i]) is not None}
                if readings:
                    made[i] = worked_out(formula.node, readings, self.constants)
        self._settle(formula.trait, made, formula.inputs, derived, estimate=False)

    def _compute(self, measure: Computed, derived: Derived) -> None:
        if not all(name in derived.columns for name in measure.inputs):
            return
        names = [name for name in inputs_of(measure) if name in derived.columns]
        rows = list(zip(*(derived.columns[name] for name in names), strict=True))
        # The same map or the same measures twice are measured once.
        numbers: dict[tuple[Reading | None, ...], int] = {}
        at = [numbers.setdefault(row, len(numbers)) for row in rows]
        given = {name: [row[i] for row in numbers] for i, name in enumerate(names)}
        wanted = self.outputs(measure)
        try:
            found = measure.compute(Given(given, len(numbers), self.values, wanted))
            for name, column in found.readings.items():
                _check_column(self.traits[name], column, len(numbers))
        except ImportError as error:
            derived.failed.append(measuring.measuring_needs(Cell("record"), measure.name, error.name or str(error)))
            return
        except KeyboardInterrupt:
            raise
        except BaseException as error:  # a plugin's code may raise anything, and extensions in Rust no Exception
            said = failure_told(error, measure.compute)
            derived.failed.append(measuring.measure_failed(Cell("record"), measure.name, said, measure.plugin))
            return
        for name, misreads in found.wrong.items():
            derived.wrong += [Wrong(i, name, misreads[number]) for i, number in enumerate(at) if number in misreads]
        for name, column in found.readings.items():
            made = [column[number] for number in at]
            self._settle(self.traits[name], made, measure.inputs, derived, estimate=measure.estimate)

    def _settle(
        self, trait: Trait, made: Sequence[Any], inputs: tuple[str, ...], derived: Derived, *, estimate: bool
    ) -> None:
        """Put what came out into its column, where nothing was written."""
        column = derived.columns.setdefault(trait.name, [None] * len(made))
        reach = anything(trait.kind)
        for i, value in enumerate(made):
            written = column[i]
            if value is None:
                continue
            reading = as_reading(trait.kind, value, reach)
            if isinstance(reading, Unrecorded):
                if reading.shown and written is None:
                    derived.doubts.append(Doubt(i, trait.name, None, reading.shown, inputs))
            elif written is None:
                column[i] = reading
            elif not estimate and apart(written, reading):
                derived.doubts.append(Doubt(i, trait.name, written, show_reading(trait.kind, reading), inputs))

    def problem(self, doubt: Doubt, site: Cell) -> Problem:
        """The warning of a doubt. site: the cell of its trait."""
        kind = self.traits[doubt.trait].kind
        if doubt.written is not None:
            written = show_reading(kind, doubt.written)
            return measuring.derived_differs(site, doubt.trait, written, doubt.derived, doubt.inputs)
        within = range_of(kind) if isinstance(kind, Number | Count) else ", ".join(words_of(kind))
        return measuring.derived_outside(site, doubt.trait, doubt.derived, within, doubt.inputs)


_TYPES: Mapping[type[Kind], tuple[type, ...]] = {
    Number: (Span,),
    Count: (Span,),
    YesNo: (int, tuple),
    Scale: (int,),
    Choice: (int,),
    Places: (PlaceSet,),
}


def _check_column(trait: Trait, column: Column, fish: int) -> None:
    """Hold what the code of a measure gave to the form that a column of readings has; raises TypeError or ValueError."""
    if len(column) != fish:
        raise ValueError(f"{len(column)} readings of {trait.name} for {fish} fish")
    wanted = _TYPES.get(type(trait.kind), (object,))
    for kind in set(map(type, column)) - {type(None)}:
        if not issubclass(kind, wanted):
            raise TypeError(f"a reading of {trait.name} is a {kind.__name__} and not a {wanted[0].__name__}")


def apart(written: Reading, derived: Reading) -> bool:
    """Whether what is written and what was derived cannot both be true."""
    match written, derived:
        case Span(low, high), Span(least, most):
            gap = max(least - high, low - most)
            return gap > APART * max(abs(low), abs(high), abs(least), abs(most))
        case PlaceSet(), PlaceSet():
            return written.meet(derived) is None
        case int(bits), int(others):
            return not bits & others
        case _:
            return written != derived
