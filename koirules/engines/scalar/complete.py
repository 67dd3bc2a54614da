"""The functions that evaluate a standard for complete records: the program in which the low end is the high end.

A record is complete where all that the rules read was recorded, as one value. Where a record is not complete, or a value
that is worked out is open all the same, a function gives None, and the one for any record is asked.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from math import floor
from operator import itemgetter
from typing import Any

from attrs import field

from koirules.engines.scalar.source import Constants, Source, made, tupled
from koirules.program.evaluation import Outcome
from koirules.program.evaluation_order import needed_for, order_key
from koirules.program.graph import Op, Tracer, Value
from koirules.program.passes import carried
from koirules.program.records import CompleteEvaluation, CompleteRecord, Input, OpenToEveryFishError
from koirules.standard.parts import Limit, Rules, Setting
from koirules.values import frozen

Sure = tuple[int, int, tuple[int, ...], int, tuple[Any, ...]]
"""What came of a complete record: the bit of its grade, hundredths of the score and of each section, bits of the limits
that bite, in the order of the rules, and what was worked out for them, of which its reasons are told."""

_MOST_TOGETHER = 20
_DEAR = frozenset({Op.MILLIONTHS, Op.LEAST_POINTS, Op.DIVIDE_DOWN})
"""What is not evaluated again for the reasons of a record."""


@frozen
class Key:
    """What a reason is told by: a value, and by what of it where it is not told by the value itself."""

    value: Value
    by: Mapping[Any, Any] | None = None

    def told(self, said: Mapping[Any, Any]) -> Mapping[Any, Any]:
        """What is said of each value."""
        return said if self.by is None else {value: said[key] for value, key in self.by.items()}


@frozen
class _Program:
    """The program over complete records, and what its reasons are told by."""

    file: str
    outputs: tuple[Value, Value, tuple[Value, ...], Value]
    demands: tuple[Value, ...]
    kept: frozenset[Value]
    keys: tuple[Key, ...]
    names: Mapping[Value, str]

    @cached_property
    def carried(self) -> tuple[Value, ...]:
        """What is evaluated with the outcome and is needed again for the reasons."""
        return carried([key.value for key in self.keys], lambda value: value.op in _DEAR or value in self.kept)


@frozen
class Complete:
    """The rules over complete records, compiled in several ways.

    inputs: what is read of a record. asked: the keys of which it matters only whether something stands under them.
    """

    _program: _Program | None = field(repr=False)
    inputs: tuple[Input, ...]
    asked: tuple[str, ...]

    @classmethod
    def of(cls, rules: Rules, settings: Mapping[str, Setting]) -> Complete:
        """Trace a standard, with the settings of this run."""
        tracer = Tracer()
        record = CompleteRecord(tracer)
        evaluation = CompleteEvaluation(settings, tracer, record, rules=rules)
        needed = needed_for(rules, [root for part in rules.parts for root in part.roots])
        try:
            outcome = evaluation.outcome(lambda part: isinstance(part, Limit) or order_key(part) in needed)
        except OpenToEveryFishError:
            return cls(None, (), ())
        bits = evaluation.bits or tracer.bits(0)
        sections = tuple(ends.first for ends in outcome.sections)
        names = {value: f"t{number}" for number, (_, value) in enumerate(record.inputs.values())}
        names |= {value: f"q{number}" for number, value in enumerate(record.asked.values())}
        program = _Program(
            rules.file,
            (outcome.possible, outcome.score.first, sections, bits),
            tuple(evaluation.demands),
            frozenset([outcome.score.first, *sections, *evaluation.stepwise]),
            tuple(_keys(tracer, outcome, rules)),
            names,
        )
        return cls(program, tuple(one for one, _ in record.inputs.values()), tuple(record.asked))

    @cached_property
    def run(self) -> Callable[[Mapping[str, Any]], Sure | None]:
        """Grades the readings of a record; None where it is not complete."""
        constants = Constants()
        lookups = taken(self.inputs, [f"r{number}" for number in range(len(self.inputs))], constants)
        lines = [f"q{number} = {constants.named(key)} in record" for number, key in enumerate(self.asked)]
        unsure: list[str] = []
        for number, one in enumerate(self.inputs):
            if one.steps:
                lookups.append(f"t{number} = {constants.named(one.codes)}[r{number}]")
            elif one.paired:
                lines.append(f"t{number} = r{number}[0]")
                unsure.append(f"t{number} != r{number}[1]")
            else:
                lines.append(f"t{number} = r{number}")
                unsure.append(f"t{number} is None")
        for first in range(0, len(unsure), _MOST_TOGETHER):
            lines.append(f"if {' or '.join(unsure[first : first + _MOST_TOGETHER])}: return None")
        return self.made(lookups, lines, constants)

    @cached_property
    def run_values(self) -> Callable[[Sequence[Any]], Sure | None]:
        """Grades a row of values (`Input.value`): of all inputs, and then the truths of what is asked."""
        names = [*(f"t{n}" for n in range(len(self.inputs))), *(f"q{n}" for n in range(len(self.asked)))]
        return self.made([], [f"{', '.join(names)}, = record"] if names else [], Constants())

    def told_by(self, said: Sequence[Mapping[Any, Any]], order: Sequence[int]) -> Callable[[tuple[Any, ...]], Any]:
        """What gives, of what was worked out of a record, what each of its reasons says.

        said: of each reason, by its key; order: of the reasons among these.
        """
        program = self._program
        if program is None:
            return _never
        names = {value: f"w{number}" for number, value in enumerate(program.carried)}
        constants = Constants(floor=floor)
        source = Source([program.keys[i].value for i in order], names, constants)
        told = [_looked_up(program.keys[i], said[i], source) for i in order]
        lines = [f"{', '.join(names.values())}, = record"] if names else []
        return made(
            f"{program.file} reasons", "record", [*lines, *source.statements, f"return {tupled(told)}"], constants
        )

    def made(self, lookups: Sequence[str], lines: Sequence[str], constants: Constants) -> Callable[[Any], Sure | None]:
        """The function that first takes its values by some lines.

        lookups: nothing but lookups in mappings; one that fails says that a record is not complete.
        """
        program = self._program
        if program is None:
            return _never
        constants["floor"] = floor
        grade, score, sections, bits = program.outputs
        outputs = [grade, score, *sections, bits, *program.carried]
        source = Source(outputs, program.names, constants, kept=program.kept, demands=program.demands)
        told = [
            source.spell(grade),
            source.spell(score),
            tupled(map(source.spell, sections)),
            source.spell(bits),
            tupled(map(source.spell, program.carried)),
        ]
        taking = (
            # A value without a hash is in no mapping.
            ["try:", *(f" {line}" for line in lookups), "except (KeyError, TypeError): return None"] if lookups else []
        )
        body = [*taking, *lines, *source.statements, f"return ({', '.join(told)})"]
        return made(f"{program.file} complete", "record", body, constants)


def _keys(tracer: Tracer, outcome: Outcome[Value], rules: Rules) -> list[Key]:
    """What each reason is told by: criteria section by section, then limits, then grades.

    Thousandths; a pair of truths; bits (1 where the condition of a limit holds, 2 where its exception does, 4 where it
    bites); a truth.
    """
    keys: list[Key] = []
    points, extras = iter(outcome.points), iter(outcome.extras)
    for section in rules.sections:
        keys += [Key(next(points).first) for _ in section.points]
        keys += [Key(next(extras).first, {False: (False, False), True: (True, True)}) for _ in section.extras]
    for limit, states in zip(rules.limits, outcome.limits, strict=True):
        condition, exception, bites = (ends.first for ends in states)
        if limit.exception is None:
            keys.append(Key(condition, {False: 0, True: 1 + 4}))
        else:
            weights = zip((condition, exception, bites), (1, 2, 4), strict=True)
            nothing = tracer.constant(0)
            keys.append(Key(tracer.total(*(tracer.where(one, tracer.constant(n), nothing) for one, n in weights))))
    return [*keys, *(Key(ends.first, {False: False, True: True}) for ends in outcome.grades)]


def _looked_up(key: Key, said: Mapping[Any, Any], source: Source) -> str:
    """The source of what is said of the value of a key."""
    value, by_value, constants = key.value, key.told(said), source.constants
    if value.constant:
        return constants.named(by_value[value.data])
    if value.op is Op.TABLE:
        (code,) = value.operands
        known = [by_value[each] for each in value.data]
        if len(known) == len((False, True)):
            return f"({constants.named(known[1])} if {source.spell(code)} else {constants.named(known[0])})"
        return f"{constants.named(tuple(known))}[{source.spell(code)}]"
    if set(by_value) == {False, True} and key.by is not None:
        return f"({constants.named(by_value[True])} if {source.spell(value)} else {constants.named(by_value[False])})"
    return f"{constants.named(by_value)}[{source.spell(value)}]"


def taken(inputs: Sequence[Input], names: Sequence[str], constants: Constants) -> list[str]:
    """The lines that take what stands under the keys of inputs."""
    keys = [one.key for one in inputs]
    if not keys:
        return []
    # A getter of one key gives what stands there, of several a tuple.
    return [f"{', '.join(names)} = {constants.named(itemgetter(*keys))}(record)"]


def _never(_: object) -> None:
    return None
