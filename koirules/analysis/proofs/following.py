"""What follows from what is written of a fish, and which values of its traits are tried.

A derived trait may be written or follow: what is written counts. So a fish with every trait written that the rules read is one
that somebody can write, whatever would follow; where one is left out, it may be known all the same.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

from koirules.candidates.maps_to_try import MAPS, maps_of_samples
from koirules.candidates.ordinary import SOME_MAP, telling_values
from koirules.candidates.places_to_move import range_in_notches
from koirules.engines.symbolic.fish import Fish, at_notch
from koirules.engines.symbolic.grown import is_grown, read_by
from koirules.grading.measuring import measured_records
from koirules.grading.single import Grader
from koirules.problems import RecordError
from koirules.results.record import Record
from koirules.standard.cuts import Cuts
from koirules.standard.derivations import inputs_of
from koirules.standard.tree import Supplied
from koirules.values import frozen
from koirules.vocabulary.kinds import Number, Patches
from koirules.vocabulary.readings import Reading


@frozen
class Following:
    """Works out what follows for the rules of one grader. derived: what can, of the traits that the rules read."""

    grader: Grader
    derived: frozenset[str]

    @classmethod
    def of(cls, grader: Grader, read: Collection[str]) -> Following:
        """What can follow of the traits that are read."""
        outputs = {name for one in grader.measurer.measures for name in one.outputs}
        return cls(grader, frozenset(outputs & set(read)))

    def whole(self, records: Sequence[Mapping[str, Reading]]) -> list[Mapping[str, Reading]]:
        """Records with what follows from them. Raises RecordError where a library for measuring is missing."""
        found = list(records)
        # What is written counts, so that nothing changes where all is.
        short = [i for i, record in enumerate(records) if not self.derived <= record.keys()]
        if short:
            batch = measured_records(self.grader.measurer, [Record("", 0, records[i]) for i in short], "record")
            wrong = tuple(problem for problem in batch.problems if not problem.warning)
            if wrong:
                raise RecordError(wrong)
            for i, record in zip(short, batch.records, strict=True):
                found[i] = record.readings
        return found

    def from_trait(self, name: str) -> tuple[str, ...]:
        """The traits that the rules read and that can follow from another one, directly or by way of others."""
        reached = {name}
        for measure in self.grader.measurer.measures:  # in their order
            if reached.intersection(inputs_of(measure)):
                reached.update(measure.outputs)
        return tuple(sorted((reached - {name}) & self.derived))

    def doubts(self, record: Mapping[str, Reading]) -> tuple[str, ...]:
        """The traits that are written otherwise than they follow from the others."""
        if not self.derived & record.keys():
            return ()
        doubts = self.grader.measurer.derive({name: [reading] for name, reading in record.items()}, 1).doubts
        return tuple(doubt.trait for doubt in doubts if doubt.written is not None)


def values_to_try(grader: Grader, cuts: Mapping[str, Cuts], fish: Fish) -> dict[str, Sequence[Reading]]:
    """The values of each trait at which something turns; where the rules ask what grows, the lengths too at which it stops."""
    grown = [slot.node for slot in fish.slots.values() if isinstance(slot.node, Supplied) and is_grown(slot.node)]
    measured = {one.key for node in grown if node.key not in fish.growers for one in read_by(fish, node)}
    targets = {grower.target for grower in fish.growers.values()}
    targets |= {one.target for one in grader.evaluator.ahead.derived}
    lengths = {read_by(fish, node)[-1].key for node in grown}
    found: dict[str, Sequence[Reading]] = {}
    for name, cut in cuts.items():
        trait = grader.rules.traits[name]
        values: list[Reading] = list(telling_values(trait, cut))
        if isinstance(trait.kind, Patches) and name in measured:
            values = list(dict.fromkeys([SOME_MAP, *MAPS, *maps_of_samples(grader.rules, name)]))
        elif isinstance(trait.kind, Number) and name in lengths:
            low, high, notch = range_in_notches(trait.kind)
            ends = (round(target * notch) - off for target in targets for off in (0, notch))
            values += [made for end in ends if low <= end <= high and (made := at_notch(end, notch)) not in values]
        found[name] = tuple(values)
    return found
