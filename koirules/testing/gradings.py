"""Standards at work on invented records: does every one of them grade, alone as in a frame?"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from importlib.util import find_spec
from warnings import catch_warnings, simplefilter

from koirules.api import Standard, load_standard, read_standard
from koirules.grading.sample_runs import run_samples
from koirules.loading.opening import earlier_editions
from koirules.plugins import Registry
from koirules.problems import RecordError, RecordWarning, StandardError
from koirules.results.result import Result
from koirules.testing.made_records import made_records
from koirules.testing.pages import of_pages
from koirules.testing.whole_rules import whole_rules
from koirules.vocabulary.traits import Variety

Records = Sequence[Mapping[str, str]]


def of_whole_rules(variety: Variety, records: Records, registry: Registry) -> Iterator[str]:
    """What is wrong with a rule file that names all that a variety has, a sentence each."""
    rules = whole_rules(variety)
    try:
        standard = read_standard(rules.text, "everything.koi", registry)
    except StandardError as error:
        for problem in error.problems:
            about = rules.lines.get(getattr(problem.site, "line", 0), "its variety")
            yield f"a rule file cannot speak of {about}: {problem.cause}"
        return
    yield from of_grading(standard, records, f"a rule file that names all traits of {variety.name}")


def of_ruleset(name: str, registry: Registry, number: int) -> Iterator[str]:
    """What is wrong with a rule set that a plugin ships, a sentence each. number: how many invented fish to grade."""
    what = f'the rule set "{name}"'
    try:
        standard = load_standard(name, registry)
    except StandardError as error:
        yield from (f"{what}, {problem.site}: {problem.cause}" for problem in error.problems)
        return
    yield from (f"{what}, {warning.site}: {warning.cause}" for warning in standard.warnings)
    try:
        runs = run_samples(standard.grader)
    except RecordError as error:
        yield from (f"{what}, {problem.site}: {problem.cause}" for problem in error.problems)
        return
    if not runs:
        yield f"{what} has no sample: add a fish or two that it must get right"
    for run in runs:
        yield from (f"the sample {run.sample.title!r} of {what} {failure}" for failure in run.failures)
    if standard.variety is None:
        yield f"{what} names no variety, so `koirules grade` cannot pick it for a fish"
    for edition in earlier_editions(name, registry.rulesets):
        yield from _of_earlier(name, edition, standard.edition, registry)
    yield from of_grading(standard, made_records(standard.traits.values(), number), what)


def _of_earlier(name: str, edition: str, now: str, registry: Registry) -> Iterator[str]:
    what = f'the rule set "{name}", its earlier edition {edition}'
    try:
        earlier = load_standard(f"{name}-{edition}", registry)
    except StandardError as error:
        yield from (f"{what}, {problem.site}: {problem.cause}" for problem in error.problems)
        return
    if earlier.edition != edition:
        yield f"{what}, says that it is edition {earlier.edition}"
    if edition == now:
        yield f"{what}, is the edition that it has now: a page based on it would get the text that is kept"


def of_grading(standard: Standard, records: Records, what: str) -> Iterator[str]:
    """What goes wrong when invented records are graded, one by one and as a frame, a sentence each."""
    results: list[Result] = []
    for record in records:
        try:
            results.append(standard.grade(record))
            _ = results[-1].reasons
        except RecordError as error:
            yield f"{what} cannot read an invented record: {error.problems[0]}"
            return
        except Exception as error:  # a plugin's code may raise anything
            yield f"{what} cannot grade an invented record ({type(error).__name__}: {error}): {dict(record)}"
            return
    yield from of_pages(standard, results, what)
    if find_spec("polars") is not None and find_spec("narwhals") is not None:
        yield from _of_frame(standard, records, results, what)


def _of_frame(standard: Standard, records: Records, results: Sequence[Result], what: str) -> Iterator[str]:
    import polars as pl

    names = list(standard.traits)
    columns = {name: pl.Series(name, [record.get(name) for record in records], pl.String) for name in names}
    try:
        with catch_warnings():
            # Invented records are full of what is written in one way and follows in another.
            simplefilter("ignore", RecordWarning)
            graded = standard.grade_frame(pl.DataFrame(columns), sections=False)
    except Exception as error:  # a plugin's code may raise anything
        yield f"{what} cannot grade a frame of invented records ({type(error).__name__}: {error})"
        return
    for number, (row, result) in enumerate(zip(graded.iter_rows(named=True), results, strict=True)):
        in_frame = (row["possible"], row["score_low"], row["score_high"])
        alone = ("|".join(result.possible), float(result.score_low), float(result.score_high))
        if in_frame != alone:
            yield f"{what} gives {alone} for a record alone and {in_frame} in a frame: {dict(records[number])}"
            return
