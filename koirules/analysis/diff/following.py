"""By what an edition works out what nobody wrote: traits that follow from others, and what traits will be when grown."""

from __future__ import annotations

from collections.abc import Collection, Hashable, Iterable, Mapping

from koirules.grading.measuring import measured_record
from koirules.grading.single import Grader
from koirules.measures.grown_traits import model_of
from koirules.measures.growth import Grower
from koirules.results.record import Record
from koirules.standard.check.growing import COEFFICIENTS, follows_length
from koirules.standard.cuts import cuts_of
from koirules.standard.derivations import TypedFormula, TypedMeasure, inputs_of
from koirules.standard.measured import constant_settings, needed_for
from koirules.standard.parts import Rules
from koirules.standard.tree import SettingRead, walk
from koirules.values import frozen
from koirules.vocabulary.kinds import Count, Number, Patches
from koirules.vocabulary.readings import Reading


@frozen(eq=False)
class Follows:
    """What follows from a record by one edition. read: the traits that grades hang on. derived: those that can follow."""

    grader: Grader
    read: frozenset[str]
    derived: frozenset[str]

    @classmethod
    def of(cls, grader: Grader) -> Follows:
        """That of a grader."""
        read = frozenset(cuts_of(grader.rules, grader.settings)) | grader.evaluator.ahead.reads
        outputs = {name for one in needed_for(grader.rules.measures, read) for name in one.outputs}
        return cls(grader, read, read & outputs)

    def whole(self, record: Mapping[str, Reading]) -> Mapping[str, Reading]:
        """A record with what follows from it, as every fish is graded. Raises RecordError like `measured_record`."""
        if self.derived <= record.keys():
            # What is written counts, so that nothing changes where all is.
            return record
        return measured_record(self.grader.measurer, Record("", 0, record)).readings

    def by(self, name: str) -> Hashable:
        """By what a trait follows: equal where it follows from the same in the same way."""
        return _worked_out_by(self.grader, needed_for(self.grader.rules.measures, [name]), [name])

    def from_what(self, names: Iterable[str]) -> frozenset[str]:
        """All traits that some follow from, directly or by way of others."""
        measures = needed_for(self.grader.rules.measures, names)
        return frozenset(name for one in measures for name in inputs_of(one))

    def from_what_raw(self, names: Iterable[str]) -> frozenset[str]:
        """Those of them that follow from nothing themselves."""
        measures = needed_for(self.grader.rules.measures, names)
        return self.from_what(names).difference(*(one.outputs for one in measures))


def own_of_each(old: Follows, new: Follows) -> frozenset[str]:
    """The traits read by both editions that follow from others in each in its own way."""
    return frozenset(name for name in old.read & new.read if old.by(name) != new.by(name))


def grown_by(follows: Follows, own: frozenset[str], mark: str) -> dict[tuple[str, str], Hashable]:
    """By what each grown trait is worked out, by the mark of the edition and its key; own: as `own_of_each` has it."""
    grader, ahead = follows.grader, follows.grader.evaluator.ahead
    found: dict[tuple[str, str], Hashable] = {}
    for one in ahead.wanted:
        its_own = mark if own & {one.trait.name, ahead.grows_by} else ""
        found[mark, one.key] = ("figure", one.trait.name, one.trait.kind, one.grower, ahead.any_length, its_own)
    for measured in ahead.derived:
        for name, keys in measured.keys.items():
            measures = needed_for(grader.rules.measures, [name])
            inputs = {read for one in measures for read in inputs_of(one)}
            raw = [read for read in measured.inputs if read in inputs]
            its_own = mark if own.intersection([*raw, ahead.grows_by]) else ""
            by = _worked_out_by(grader, measures, [name])
            growth = _growth(grader, raw, by_eye=name in measured.by_eye)
            for key in keys:
                found[mark, key] = ("measured", name, measured.target, by, growth, ahead.any_length, its_own)
    return found


def _growth(grader: Grader, raw: Collection[str], *, by_eye: bool) -> Hashable:
    """By which growth the inputs of a measured trait change. by_eye: whether it is known without a map too."""
    model, rules = model_of(grader.settings), grader.rules
    growers: dict[str, Hashable] = {}
    for name in raw:
        trait = rules.traits[name]
        if follows_length(trait) and trait.allometry is not None and isinstance(trait.kind, Number | Count):
            growers[name] = Grower.of(trait.kind, trait.allometry, 1.0, model, is_length=name == rules.subject.grows_by)
    pattern = by_eye or any(isinstance(rules.traits[name].kind, Patches) for name in raw)
    white = (model.sides, model.exponent if model.by_share else None, model.white if model.by_share else None)
    return (frozenset(raw), frozenset(growers.items()), white if pattern else None)


def _worked_out_by(grader: Grader, measures: Iterable[TypedMeasure], wanted: Iterable[str]) -> Hashable:
    rules = grader.rules
    constants = constant_settings(rules.constants, grader.settings)
    said: list[Hashable] = []
    names = set(wanted)
    for one in measures:
        names.update((*inputs_of(one), *one.outputs))
        by: Hashable = one
        used: Iterable[str] = constants  # a function may go by any of them
        if isinstance(one, TypedFormula):
            by = (one.trait.name, one.expression)
            used = {node.name for node in walk(one.node) if isinstance(node, SettingRead)}
        said.append((by, frozenset((name, constants[name].value) for name in used)))
    kinds = frozenset((name, rules.traits[name].kind) for name in names if name in rules.traits)
    return (tuple(said), kinds) if said else ()


def settings_by_name(*editions: Rules) -> frozenset[str]:
    """The names by which settings count without being read: coefficients of growth, and constants that measures go by."""
    return frozenset(COEFFICIENTS).union(one.name for rules in editions for one in rules.constants)
