"""Fills in what silence means, once the derived traits are there and before anything is graded.

Every evaluator then reads a silent trait as if it had been written. What was written of it stands beside the record under a key
of its own (`written_key`), which `is recorded`, `unless` and `among the same` read: so a trait is silent where its reading is not
what stands under that key.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from typing import Any

from attrs import evolve

from koirules.measures.deriving import apart
from koirules.results.parts_read import is_assumed, traits_beneath, traits_of_parts
from koirules.results.record import Record
from koirules.rounds.node_values import NodeValues, compile_nodes
from koirules.standard.derivations import TypedFormula, TypedMeasure
from koirules.standard.growth_settings import grown_in
from koirules.standard.parts import Rules, Setting
from koirules.standard.reading_nodes import written_key
from koirules.values import frozen
from koirules.vocabulary.readings import PlaceSet, Reading, Span


@frozen
class SilenceFiller:
    """Fills silent traits of records in, for one standard with the settings of one run.

    needed: the traits that the standard reads anywhere, and told: those that its criteria, faults, lifts and grades read.
    measured_by: what derives each trait. conditions: those behind `unless`, in the order of the file. grown: the keys of what
    grows.
    """

    rules: Rules
    settings: Mapping[str, Setting]
    by_eye: frozenset[str]
    needed: frozenset[str]
    told: frozenset[str]
    measured_by: Mapping[str, TypedMeasure]
    conditions: NodeValues
    grown: frozenset[str]

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting]) -> SilenceFiller:
        """The filler of a standard."""
        by_eye = frozenset(name for name, trait in rules.traits.items() if trait.by_eye)
        measured_by = {name: one for one in rules.measures for name in one.outputs}
        nodes = [one.unless for one in rules.silence.values() if one.unless is not None]
        return cls(
            rules,
            settings,
            by_eye,
            traits_beneath(rules) | (rules.said_names & rules.traits.keys()),
            traits_of_parts(rules),
            measured_by,
            compile_nodes(rules, settings, nodes, graded=False),
            frozenset(grown_in(rules)),
        )

    def filled(self, record: Record, recorded: Record) -> Record:
        """A record that was measured, with its silent traits. recorded: the same as it was recorded, with nothing derived."""
        if not self.rules.silence:
            return record
        own = recorded.readings.keys()
        of_this_sorting = own if not record.looks else record.looks[-1].readings.keys()
        before = None if record.before is None else self.with_written(record.before)
        readings = self.with_written(record.readings)
        looked = not self.by_eye.isdisjoint(of_this_sorting) if record.looked is None else record.looked
        if looked:
            readings |= self._silent(record, own, readings)
        return evolve(record, readings=readings, before=before)

    def with_written(self, readings: Mapping[str, Reading]) -> dict[str, Any]:
        """Readings with what was written of each trait of which silence means something under its key."""
        there = (name for name in self.rules.silence if name in readings)
        return {**readings, **{written_key(name): readings[name] for name in there}}

    def assumed(self, readings: Mapping[str, Any]) -> tuple[str, ...]:
        """The traits of a record that silence filled in and that the page read outside rounds, in the order of the file."""
        return tuple(
            name for name in self.rules.silence if name in self.told and is_assumed(self.rules, name, readings)
        )

    def as_written(self, readings: Mapping[str, Any]) -> dict[str, Any]:
        """A record as it was written, without what silence filled in and what grew from that."""
        found = {key: reading for key, reading in readings.items() if key not in self.grown}
        for name in self.rules.silence:
            if is_assumed(self.rules, name, readings):
                written = readings.get(written_key(name))
                if written is None:
                    del found[name]
                else:
                    found[name] = written
        return found

    def _silent(self, record: Record, own: Collection[str], readings: Mapping[str, Reading]) -> dict[str, Reading]:
        states = iter(self.conditions.run(readings))
        found: dict[str, Reading] = {}
        for name, one in self.rules.silence.items():
            if one.unless is not None and next(states)[0]:
                continue
            if name in record.cannot_tell or self._is_known(name, own, readings):
                continue
            derived = readings.get(name)
            contradicted = derived is not None and apart(derived, one.reading)
            said_otherwise = any(name in look and not within(look[name], one.reading) for look in record.earlier)
            if not contradicted and not said_otherwise:
                found[name] = one.reading
        return found

    def _is_known(self, name: str, own: Collection[str], readings: Mapping[str, Reading]) -> bool:
        """Whether a trait was recorded, or follows from traits that were all recorded."""
        if name in own:
            return True
        measure = self.measured_by.get(name)
        if measure is None or name not in readings:
            return name in readings
        # A function gives nothing where an input is missing; a formula makes the best of what is there.
        needed = measure.inputs if isinstance(measure, TypedFormula) else ()
        return all(self._is_known(each, own, readings) for each in needed)


def within(reading: Reading, other: Reading) -> bool:
    """Whether a reading leaves nothing open that another one does not."""
    match reading, other:
        case Span(low, high), Span(least, most):
            return low >= least and high <= most
        case PlaceSet(), PlaceSet():
            return other.holds(reading)
        case int(bits), int(others):
            return not bits & ~others
        case _:
            return reading == other


def carried_forward(rules: Rules, record: Record) -> Record:
    """A record with what the page carries forward from the sorting before, of traits that this one does not mention."""
    if record.measured or not record.earlier:
        return record
    missing = [name for name in rules.carried if name not in record.readings and name not in record.cannot_tell]
    found = {
        name: next(look[name] for look in reversed(record.earlier) if name in look)
        for name in missing
        if any(name in look for look in record.earlier)
    }
    if not found:
        return record
    return evolve(record, readings={**found, **record.readings}, carried=record.carried | found.keys())
