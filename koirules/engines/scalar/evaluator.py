"""A standard over any record: both ends of whatever the record leaves open, from one generated function."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import cached_property
from math import floor
from typing import Any, NamedTuple

from koirules.engines.scalar.source import Constants, Source, made, tupled
from koirules.meaning.algebra import Ends
from koirules.measures.grown_traits import Ahead
from koirules.program.evaluation import Evaluation
from koirules.program.evaluation_order import reading_grade
from koirules.program.graph import Op, Part, Read, Tracer, Value
from koirules.program.passes import live
from koirules.program.records import OF_A_TUPLE, AnyRecord, RecordedAs
from koirules.standard.parts import Rules, Setting
from koirules.standard.types import Numeric, PlaceWords, Truth, Type
from koirules.values import frozen
from koirules.vocabulary.readings import Reading


class Trace(NamedTuple):
    """What one evaluation worked out; each of the parts in the order of the rules.

    possible: bits of the grades still possible, bit 0 the best. by_points: the same before lifts and faults. score and
    sections: lowest and highest hundredths. points: what was read (both ends; the second None for levels), then the least
    and most thousandths. extras: surely, possibly. limits: condition surely and possibly, exception surely and possibly,
    bites surely and possibly. grades: condition surely and possibly. terms: both ends of the terms that a `say` names.
    """

    possible: int
    by_points: int
    score: tuple[int, int]
    sections: tuple[tuple[int, int], ...]
    points: tuple[tuple[Any, Any, int, int], ...]
    extras: tuple[tuple[bool, bool], ...]
    limits: tuple[tuple[bool, bool, bool, bool, bool, bool], ...]
    grades: tuple[tuple[bool, bool], ...]
    terms: tuple[tuple[Any, Any], ...]


class Function(NamedTuple):
    """A generated function over records, and how many statements it has: what it costs, roughly."""

    run: Callable[..., Any]
    statements: int


def terms_said(rules: Rules) -> tuple[str, ...]:
    """The names of the terms in a Trace: those that a `say` names, as far as they do not read the grade."""
    names, after = rules.said_names, reading_grade(rules)
    return tuple(name for name in rules.terms if name in names and f"term {name}" not in after)


def compiled(rules: Rules, settings: Mapping[str, Setting], recorded: RecordedAs) -> Function:
    """The function that gives the Trace of a record."""
    tracer = Tracer()
    evaluation = Evaluation(settings, tracer, AnyRecord(tracer, recorded), rules=rules)
    outcome = evaluation.outcome()
    said = terms_said(rules)
    parts: list[list[list[Value | None]]] = [
        [_both(ends) for ends in outcome.sections],
        [
            [*ends_shown(read, part.by.type), *_both(given)]
            for part, read, given in zip(rules.points, outcome.reads, outcome.points, strict=True)
        ],
        [_both(ends) for ends in outcome.extras],
        [[end for ends in states for end in _both(ends)] for states in outcome.limits],
        [_both(ends) for ends in outcome.grades],
        [ends_shown(evaluation.terms[name], rules.terms[name].node.type) for name in said],
    ]
    score = _both(outcome.score)
    outputs = [
        outcome.possible,
        outcome.by_points,
        *_values(score),
        *(v for part in parts for row in part for v in _values(row)),
    ]

    def result(spell: Callable[[Value | None], str]) -> str:
        rows = (tupled(tupled(map(spell, row)) for row in part) for part in parts)
        return f"Trace({spell(outcome.possible)}, {spell(outcome.by_points)}, {tupled(map(spell, score))}, {', '.join(rows)})"

    return function(rules.file, outputs, result, recorded, labels=labels(evaluation))


def _both(ends: Ends[Value]) -> list[Value | None]:
    return [ends.first, ends.second]


def ends_shown(ends: Ends[Value], kind: Type) -> list[Value | None]:
    """Both ends of a value of a type; levels and texts have one."""
    return [ends.first, ends.second if isinstance(kind, Numeric | Truth | PlaceWords) else None]


def _values(row: Iterable[Value | None]) -> list[Value]:
    return [value for value in row if value is not None]


def labels(evaluation: Evaluation[Value]) -> dict[Value, str]:
    """Names for the variables of what has a name in a standard: by its place there, since names are texts of a rule file."""
    named: dict[Value, str] = {}

    def name(ends: Ends[Value], what: str) -> None:
        for value, end in ((ends.second, "_high"), (ends.first, "")):
            if value is not None and value.op not in {Op.CONSTANT, Op.INPUT, Op.TABLE}:
                named.setdefault(value, f"{what}{end}")

    for number, ends in enumerate(evaluation.terms.values()):
        name(ends, f"term{number}")
    for number, (condition, _, bites) in enumerate(evaluation.limits.values()):
        name(bites, f"limit{number}")
        name(condition, f"condition{number}")
    for number, (key, ends) in enumerate(evaluation.hundredths.items()):
        name(ends, f"section{number}" if key else "score")
    for number, ends in enumerate(evaluation.points.values()):
        name(ends, f"points{number}")
    return named


def function(
    name: str,
    outputs: Sequence[Value],
    result: Callable[[Callable[[Value | None], str]], str],
    recorded: RecordedAs = RecordedAs.STANDS,
    labels: Mapping[Value, str] | None = None,
) -> Function:
    """A function over the readings of a record. result: the source of what it gives, from what spells a value."""
    constants = Constants()
    constants |= {"floor": floor, "Trace": Trace}
    inputs, reading = _taken(outputs, constants)
    source = Source(outputs, inputs, constants, labels=labels)

    def spell(value: Value | None) -> str:
        return "None" if value is None else source.spell(value)

    gets = ["get = record.get", *(["said = names.get"] if recorded is RecordedAs.SAID else [])]
    statements = [*gets, *reading, *source.statements, f"return {result(spell)}"]
    return Function(made(name, "record, names=()", statements, constants), len(statements))


def _taken(outputs: Sequence[Value], constants: Constants) -> tuple[dict[Value, str], list[str]]:
    """The variables of inputs, and the statements that take them of a record."""
    found = {value.data: value for value in live(outputs) if value.op is Op.INPUT}
    names: dict[Value, str] = {}
    statements: list[str] = []
    by_key: dict[str, dict[Part, tuple[Value, Read]]] = {}
    for read, value in found.items():
        by_key.setdefault(read.key, {})[read.part] = (value, read)
    for number, (key, parts) in enumerate(by_key.items()):
        spelled = constants.named(key)
        ends_of = dict(zip(OF_A_TUPLE, (f"t{number}", f"u{number}", f"l{number}", f"m{number}"), strict=True))
        taken = {part: name for part, name in ends_of.items() if part in parts}
        if taken:
            _, read = next(parts[part] for part in taken)
            ends = ", ".join(taken.get(part, "_") for part in OF_A_TUPLE[: len(read.otherwise)])
            statements.append(f"{ends} = get({spelled}, {constants.named(read.otherwise)})")
        for part, (value, read) in parts.items():
            match part:
                case Part.FIRST | Part.SECOND | Part.LEAST | Part.MOST:
                    names[value] = ends_of[part]
                case Part.WHOLE:
                    names[value] = f"t{number}"
                    otherwise = "" if read.otherwise is None else f", {read.otherwise!r}"
                    statements.append(f"t{number} = get({spelled}{otherwise})")
                case Part.RECORDED:
                    names[value] = f"q{number}"
                    statements.append(f"q{number} = {spelled} in record")
                case Part.SURELY | Part.POSSIBLY:
                    names[value] = name = f"{'s' if part is Part.SURELY else 'p'}{number}"
                    statements.append(f"{name} = said({spelled}, {part is Part.POSSIBLY})")
                case Part.ONE | Part.CODE:
                    raise AssertionError("an input of a complete record")
    return names, statements


@frozen
class Evaluator:
    """A compiled standard: `run` grades the readings of a record.

    said_terms: the terms in its traces. ahead: what the traits of a fish will be when it is grown. Its functions are
    generated when they are first asked for.
    """

    rules: Rules
    settings: Mapping[str, Setting]
    recorded: RecordedAs
    said_terms: tuple[str, ...]
    ahead: Ahead

    @cached_property
    def _function(self) -> Function:
        return compiled(self.rules, self.settings, self.recorded)

    @property
    def lines(self) -> int:
        """How long the function is: what it costs, roughly."""
        return self._function.statements

    @cached_property
    def run_whole(self) -> Callable[..., Trace]:
        """`run` for readings that have the grown traits already."""
        return self._function.run

    @cached_property
    def run(self) -> Callable[..., Trace]:
        """The trace of the readings of a record.

        Also takes which traits are said to be recorded, which matters where the standard was compiled to be asked about.
        """
        run, ahead = self.run_whole, self.ahead
        if ahead.nothing:
            return run

        def run_ahead(record: Mapping[str, Reading], names: Mapping[str, bool] | tuple[()] = ()) -> Trace:
            return run(ahead.whole(record), names)

        return run_ahead


def compile_rules(rules: Rules, settings: Mapping[str, Setting], recorded: RecordedAs = RecordedAs.STANDS) -> Evaluator:
    """The function that grades one record. settings: those of the rules, with the values of this run.

    recorded: how `is recorded` is answered; `run` takes what is said for it, truths by name, as its second argument.
    """
    return Evaluator(rules, settings, recorded, terms_said(rules), Ahead.of(rules, settings))
