"""One generated function that grades a record: the rules, written out as Python.

The function takes readings by trait name and gives a trace: everything that was worked out on the way, of which the
result and its reasons are views. Points are whole thousandths, sections and the score whole hundredths.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from math import gcd
from typing import Any, NamedTuple

from attrs import frozen

from koirules.engines.scalar.emitter import Constants, Emitter, RecordedAs
from koirules.engines.scalar.late_parts import late_parts, order_key, reading_grade
from koirules.measures.grown_traits import Ahead
from koirules.standard.operations import Ends
from koirules.standard.parts import Limit, Points, Rules, Section, Setting, Term
from koirules.vocabulary.readings import Reading

_MOST_ADDED = 50
_MOST_NESTED = 20


class Trace(NamedTuple):
    """What one evaluation worked out; each of the parts in the order of the rules.

    possible: bits of the grades still possible, bit 0 the best. by_points: the same before lifts and faults. score and
    sections: lowest and highest hundredths. points: what was read (both ends; the second None for steps), then the least
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


def raised(possible: int, floor: int) -> int:
    """The grades that a floor makes of the possible ones: each that is worse becomes the floor."""
    kept = possible & ((2 << floor) - 1)
    return kept | (1 << floor) if possible >> (floor + 1) else kept


def worst_first(possible: int, grades: int) -> int:
    """The bits of the grades still possible, bit 0 the worst: as steps of the scale that `grade` is."""
    return sum(1 << (grades - 1 - i) for i in range(grades) if possible >> i & 1)


def capped(possible: int, cap: int) -> int:
    """The grades that a cap makes of the possible ones: each that is better becomes the cap."""
    kept = possible >> cap << cap
    return kept | (1 << cap) if possible & ((1 << cap) - 1) else kept


@frozen
class Evaluator:
    """A compiled standard: `run` grades the readings of a record.

    `run` also takes which traits are said to be recorded, which matters where the standard was compiled to be asked about.
    ahead: what the traits of a fish will be when it is grown. run_whole: `run` for readings that have these already.
    lines: how long the function is: what it costs, roughly.
    """

    run: Callable[..., Trace]
    said_terms: tuple[str, ...]
    ahead: Ahead
    run_whole: Callable[..., Trace]
    lines: int


def compile_rules(rules: Rules, settings: Mapping[str, Setting], recorded: RecordedAs = RecordedAs.STANDS) -> Evaluator:
    """Generate the function that grades one record. settings: those of the rules, with the values of this run.

    recorded: how `is recorded` is answered; `run` takes what is said for it, truths by name, as its second argument.
    """
    return RuleWriter(rules, Emitter(settings, recorded)).evaluator(Ahead.of(rules, settings))


def _running(run: Callable[..., Trace], ahead: Ahead) -> Callable[..., Trace]:
    """A function that grades records, with the grown traits put beside them first where rules ask for any."""
    if ahead.nothing:
        return run

    def run_ahead(record: Mapping[str, Reading], names: Mapping[str, bool] | tuple[()] = ()) -> Trace:
        return run(ahead.whole(record), names)

    return run_ahead


class WrittenSection(NamedTuple):
    """A section that was written out: its ends; of each `points` the ends and the source for the trace; of extras the ends."""

    ends: Ends
    points: list[tuple[Ends, str]]
    extras: list[Ends]


class RuleWriter:
    """Writes the rules out as lines of one function."""

    def __init__(self, rules: Rules, emit: Emitter) -> None:
        self.rules = rules
        self.emit = emit
        self.limits: dict[tuple[str, str], tuple[Ends, Ends, Ends]] = {}
        self.emit.constants |= {"raised": raised, "capped": capped, "Trace": Trace}

    def evaluator(self, ahead: Ahead) -> Evaluator:
        """The function that grades a record."""
        score, sections, grades = self.outcome()
        said = self._said()
        terms = [self.emit.told(self.rules.terms[name]) for name in said]
        result = ", ".join(
            [
                "G",
                "P",
                f"({score.first}, {score.second})",
                tupled(f"({one.ends.first}, {one.ends.second})" for one in sections),
                tupled(text for one in sections for _, text in one.points),
                tupled(f"({ends.first}, {ends.second})" for one in sections for ends in one.extras),
                tupled(_all_ends(self.limits[limit.head, limit.name]) for limit in self.rules.limits),
                tupled(f"({end.first}, {end.second})" for end in grades),
                tupled(f"({end.first}, {end.second or None})" for end in terms),
            ]
        )
        run = self.function(f"Trace({result})")
        return Evaluator(_running(run, ahead), tuple(said), ahead, run, len(self.emit.lines))

    def outcome(self) -> tuple[Ends, list[WrittenSection], list[Ends]]:
        """Work out everything, the grade at last: the ends of the score, the sections, the conditions of the grades."""
        late, after = late_parts(self.rules), reading_grade(self.rules)
        order = [part for part in self.rules.order if order_key(part) not in after]
        self.work_out([part for part in order if order_key(part) not in late])
        score, sections = self.score()
        self.work_out([part for part in order if order_key(part) in late])
        grades = self._grades()
        self._limit_grades()
        return score, sections, grades

    def function(self, result: str) -> Callable[..., Any]:
        """The lines so far as a function that gives a result."""
        gets = ["get = record.get", *(["said = names.get"] if self.emit.recorded_as is RecordedAs.SAID else [])]
        body = "\n ".join([*gets, *self.emit.lines, f"return {result}"])
        source = f"def run(record, names=()):\n {body}\n"
        return self.made(source, self.emit.constants)

    def made(self, source: str, constants: Constants) -> Callable[..., Any]:
        """The function `run` of a source that was written here."""
        scope: dict[str, Any] = dict(constants)
        # Only templates of the operations table, numbers and generated names stand in the source: texts and names of a
        # rule file are passed as constants beside it.
        exec(compile(source, f"<{self.rules.file}>", "exec"), scope)  # noqa: S102
        run: Callable[..., Any] = scope["run"]
        return run

    def score(self) -> tuple[Ends, list[WrittenSection]]:
        """Work out the score: its ends, and the sections."""
        sections = [self._section(section) for section in self.rules.sections]
        score = Ends(summed(one.ends.first for one in sections), summed(one.ends.second for one in sections))
        score = self.emit.line(score.first, score.second)
        self.emit.points("", score)
        return score, sections

    def work_out(self, parts: Iterable[Term | Limit]) -> None:
        """Work out terms and limits, each after what it needs."""
        for part in parts:
            if isinstance(part, Term):
                self.emit.term(part)
            else:
                self._limit(part)

    def _limit(self, limit: Limit) -> None:
        condition = self.emit.node(limit.condition)
        if limit.exception is None:
            bites, exception = condition, Ends("False", "False")
        else:
            exception = self.emit.node(limit.exception)
            bites = self.emit.line(
                f"({condition.first} and not {exception.second})", f"({condition.second} and not {exception.first})"
            )
        if limit.head == "fault":
            self.emit.fault(limit.name, bites)
        self.limits[limit.head, limit.name] = condition, exception, bites

    def _section(self, section: Section) -> WrittenSection:
        points = [self.given(part) for part in section.points]
        extras = [self.emit.node(part.condition) for part in section.extras]
        shared = gcd(section.worth, section.divisor)
        worth, divisor = section.worth // shared, section.divisor // shared
        low, high = self.weighted([(part.weight, ends) for part, (ends, _) in zip(section.points, points, strict=True)])
        least, most = [f"{worth} * ({low})"], [f"{worth} * ({high})"]
        for part, ends in zip(section.extras, extras, strict=True):
            amount = part.sign * part.amount * divisor
            fewest, fullest = (ends.first, ends.second) if part.sign > 0 else (ends.second, ends.first)
            least.append(f"{amount} * {fewest}")
            most.append(f"{amount} * {fullest}")
        # Without extras no sum of points leaves what the section is worth.
        within = section.worth if section.extras else None
        low_end, high_end = (_hundredths(summed(end), divisor, within) for end in (least, most))
        total = self.emit.line(low_end, high_end)
        self.emit.points(section.name, total)
        return WrittenSection(total, points, extras)

    def weighted(self, given: Sequence[tuple[int, Ends]]) -> tuple[str, str]:
        """Both ends of the sum of the points that criteria give, each with its weight."""
        return (
            summed(f"{weight} * {ends.first}" for weight, ends in given),
            summed(f"{weight} * {ends.second}" for weight, ends in given),
        )

    def given(self, part: Points) -> tuple[Ends, str]:
        """What a criterion gives, and the source of what it read and gave."""
        read = self.emit.node(part.by)
        scaled = self.emit.node(part.reads)
        span = self.emit.constant(part.shape.span)
        both = scaled.first if not scaled.second else f"{scaled.first}, {scaled.second}"
        given = self.emit.line(f"{span}({both})")
        ends = self.emit.line(f"{given.first}[0]", f"{given.first}[1]")
        return ends, f"({read.first}, {read.second or None}, {ends.first}, {ends.second})"

    def _grades(self) -> list[Ends]:
        conditions = [grade.condition for grade in self.rules.grades]
        found = [Ends("True", "True") if one is None else self.emit.node(one) for one in conditions]
        if conditions[-1] is None and len(found) <= _MOST_NESTED and all(ends.first == ends.second for ends in found):
            # One and only one is possible: the first that holds.
            chain = "".join(f"{1 << i} if {ends.first} else " for i, ends in enumerate(found[:-1]))
            self.emit.lines.append(f"G = P = {chain}{1 << len(found) - 1}")
            return found
        lines = ["P = 0; S = False"]
        for i, ends in enumerate(found):
            lines.append(f"P |= {1 << i} if {ends.second} and not S else 0; S = S or {ends.first}")
        self.emit.lines.extend([*lines, "G = P"])
        return found

    def _limit_grades(self) -> None:
        for head, change in (("lift", "raised"), ("fault", "capped")):
            for number, limit in enumerate(self.rules.limits):
                if limit.head == head:
                    *_, bites = self.limits[head, limit.name]
                    made = f"{change}(G, {limit.grade})"
                    if bites.first != bites.second:
                        made = f"{made} | (0 if {bites.first} else G)"
                    self.emit.lines.append(f"if {bites.second}: G = {made}{self.bitten(number)}")

    def bitten(self, number: int) -> str:  # noqa: ARG002
        """More to be done where a limit bites."""
        return ""

    def _said(self) -> list[str]:
        names = self.rules.said_names
        after = reading_grade(self.rules)
        return [name for name in self.rules.terms if name in names and f"term {name}" not in after]


def _hundredths(parts: str, divisor: int, within: int | None) -> str:
    # floor(n / d + 1/2) in whole numbers, held within 0 and the worth.
    made = f"(2 * ({parts}) + {divisor}) // {2 * divisor}"
    return made if within is None else f"min({within}, max(0, {made}))"


def summed(parts: Iterable[str]) -> str:
    """The source of a sum."""
    listed = list(parts)
    # Each `+` is one level of the syntax tree, of which Python's compiler takes some thousand.
    return f"sum(({', '.join(listed)},))" if len(listed) > _MOST_ADDED else " + ".join(listed) or "0"


def _all_ends(pairs: Iterable[Ends]) -> str:
    return tupled(end for pair in pairs for end in (pair.first, pair.second))


def tupled(parts: Iterable[str]) -> str:
    """The source of a tuple."""
    listed = list(parts)
    return f"({', '.join(listed)}{',' if len(listed) == 1 else ''})"
