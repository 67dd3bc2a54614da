"""The samples of a standard, run: does each fish come out as the file says it must?"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from attrs import evolve

from koirules.grading.single import Grader
from koirules.grading.whole_batch import WholeBatch
from koirules.language.statements import Outcome
from koirules.problems import RecordError
from koirules.results.reason import State
from koirules.results.record import Record
from koirules.results.result import Result
from koirules.standard.derivations import TypedFormula
from koirules.standard.parts import Rules, Sample
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.measures import Computed


@frozen
class SampleRun:
    """A sample with what came of it; failures: each outcome that does not hold, in words."""

    sample: Sample
    result: Result
    failures: tuple[str, ...]


def run_samples(grader: Grader) -> tuple[SampleRun, ...]:
    """Run every sample of a standard. Raises RecordError, with the line of the sample, where one cannot be measured."""
    batch = WholeBatch(grader)
    return tuple(_run(batch, sample) for sample in grader.rules.samples)


def calls_functions(grader: Grader) -> bool:
    """Whether a sample is measured by a function, of a plugin or of ours: what that goes by is not all in the standard."""
    measures = grader.measurer.measures
    worked_out = {one.trait.name for one in measures if isinstance(one, TypedFormula)}
    functions = [one for one in measures if isinstance(one, Computed)]
    return any(
        worked_out.union(sample.record).issuperset(one.inputs) for one in functions for sample in grader.rules.samples
    )


def record_of(sample: Sample, rules: Rules) -> Record:
    """The fish of a sample.

    Of a fish of its base a page leaves unsaid what the base reads and gives no silence a meaning for: no sample of the base
    comes out otherwise by what silence means on the page.
    """
    unsaid = rules.source.unsaid.get(sample.place.file, frozenset())
    untold = sample.cannot_tell | (unsaid - sample.record.keys())
    return Record(sample.title, sample.place.line, sample.record, cannot_tell=untold)


def _run(batch: WholeBatch, sample: Sample) -> SampleRun:
    record = record_of(sample, batch.grader.rules)
    try:
        result = batch.alone(record)
    except RecordError as error:
        raise RecordError([evolve(problem, site=sample.place) for problem in error.problems]) from error
    failures = [words for outcome in sample.outcomes if (words := _failure(outcome, result)) is not None]
    return SampleRun(sample, result, tuple(failures))


def _failure(outcome: Outcome, result: Result) -> str | None:
    """What is wrong with an outcome, None where it holds."""
    name = "" if outcome.name is None else outcome.name.text
    match outcome.what:
        case "comes out":
            return None if result.grade == name else f"should come out {name}, {_came(result)}"
        case "stays open":
            return None if len(result.possible) > 1 else f"should stay open, {_came(result)}"
        case "scores from":
            return _between(outcome, "should score", "scores", result.score_low, result.score_high)
        case "section from":
            came = result.sections[name]
            return _between(outcome, f"section {name} should give", "gives", came.low, came.high)
        case "shows fault":
            return None if name in result.faults else f"should show the fault {name}, {_shows(result.faults)}"
        case "shows lift":
            return None if name in result.lifts else f"should show the lift {name}, {_shows(result.lifts)}"
        case "shows bonus" | "shows penalty":
            return _extra_failure(outcome.names, name, result)
        case "shows no fault":
            still = [r.name for r in result.reasons if r.kind == "fault" and r.state in {State.YES, State.OPEN}]
            return f"should show no fault, but could show {_listed(still)}" if still else None
        case "leaves in":
            return None if result.left_in == name else f"should leave in round {name}, {_left(result)}"
        case "kept in":
            return None if name in result.kept_by else f"should be kept in round {name}, {_left(result)}"
        case what:
            raise AssertionError(f"an outcome that the checker lets pass and nobody runs: {what}")


def _between(outcome: Outcome, should: str, does: str, came_low: Decimal, came_high: Decimal) -> str | None:
    low, high = outcome.low or Decimal(0), outcome.high or Decimal(0)
    if low <= came_low and came_high <= high:
        return None
    came = shortest(came_low) if came_low == came_high else f"{shortest(came_low)} to {shortest(came_high)}"
    return f"{should} from {shortest(low)} to {shortest(high)}, but {does} {came}"


def _extra_failure(head: str, name: str, result: Result) -> str | None:
    state = next(reason.state for reason in result.reasons if (reason.kind, reason.name) == (head, name))
    if state is State.YES:
        return None
    came = "it stays open" if state is State.OPEN else "its condition does not hold"
    return f"should show the {head} {name}, but {came}"


def _came(result: Result) -> str:
    if result.grade is not None:
        return f"but comes out {result.grade}"
    return f"but could still be {_listed(result.possible)}"


def _left(result: Result) -> str:
    if result.tied_in is not None:
        return f"but is tied in round {result.tied_in}"
    return f"but leaves in round {result.left_in}" if result.left_in is not None else "but leaves in none"


def _shows(names: Sequence[str]) -> str:
    return f"but surely shows {_listed(names)}" if names else "but surely shows none"


def _listed(names: Sequence[str]) -> str:
    return ", ".join(names)
