"""Records with derived and grown traits get the answer of the function for any record, by every way in."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from functools import cache

import pytest
from attrs import evolve
from hypothesis import given, note
from hypothesis import strategies as st

import koirules
from koirules.plugins import Registry, registry_with
from koirules.problems import Problem, RecordError
from koirules.results.record import Record
from koirules.results.result import Result
from koirules.search.nearest_changes import ChangeFinder
from koirules.vocabulary.kinds import Count, Number, Scale, YesNo
from koirules.vocabulary.measures import Computed, Formula, Found, Given
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import Trait, Vocabulary
from tests.judge.growing import registry_that_grows
from tests.judge.strategies import completions, records, standards_that_grow, to_mapping
from tests.judge.text import to_text
from tests.plugins.invented import Gives
from tests.properties.test_complete_records import as_sure, may_open, moderate, read

ODD = 13
FAILING = 7

Told = tuple[Result, list[tuple[object, str, str]], str] | tuple[Problem, ...]


def _doubled(given: Given) -> Found:
    rows = given.readings["knots"]
    if Span(FAILING, FAILING) in rows:
        raise ValueError("seven knots")
    wrong = {
        number: Misread("value-odd", "An odd number of knots.", "Count again.")
        for number, each in enumerate(rows)
        if each == Span(ODD, ODD)
    }
    doubled = [None if each is None else Span(each.low * 2, each.high * 2) for each in rows]  # type: ignore[union-attr]
    return Found({"loops": doubled}, {"knots": wrong})


TRAITS = (
    Trait("rows_along", "rows along", Count(60)),
    Trait("rows_across", "rows across", Count(60)),
    Trait("row_ratio", "ratio", Number(None, Decimal(0), Decimal(60))),
    Trait("fine_net", "fine net", YesNo()),
    Trait("net_grade", "net", Scale(("coarse", "fair", "fine"))),
    Trait("knots", "knots", Count(60)),
    Trait("loops", "loops", Count(120)),
)
MEASURES = (
    Formula("row_ratio", "rows_along / rows_across"),
    Formula("fine_net", "row_ratio above 2"),
    Formula("net_grade", "(fine if fine_net otherwise fair)"),
    Computed("the doubled knots", ("knots",), ("loops",), _doubled, helped_by=("rows_along",)),
)
RULES = (
    "points ratio by row_ratio: 0 gives 0, 3 gives 10, 60 gives 5",
    "points looped by loops: 0 gives 0, 120 gives 10",
    "points long weight 2 by length: 10 cm gives 0, 60 cm gives 10",
    "points stout by girth_ratio grown to 65 cm: 0.18 gives 0, 0.24 gives 10",
    "bonus heavy 2 if weight grown to 60 cm above 4 kg",
    "penalty netted 3 if fine_net",
    "fault coarse if net_grade is coarse: no better than b",
    "fault measured if row_ratio is recorded: no better than b",
    "fault counted if knots is recorded and loops is recorded: no better than b",
    'fault many if rows_along above 50: no better than c say "{net_grade}, {loops}"',
    'fault short if length below 12 cm: no better than b say "{girth_ratio}"',
    "fault plump if condition above 1.9: no better than b",
)
VALUES: Mapping[str, st.SearchStrategy[object]] = {
    "rows_along": st.sampled_from([40, 10, 51, 60, "10 to 12"]),
    "rows_across": st.sampled_from([10, 20, 5, 0]),
    "row_ratio": st.sampled_from([4.0, 0.5, 2.0, "1 to 3", 61.0]),
    "fine_net": st.sampled_from([True, False, "yes or no"]),
    "net_grade": st.sampled_from(["coarse", "fair", "fine", "fair or fine"]),
    "knots": st.sampled_from([1, 30, ODD, FAILING]),
    "loops": st.sampled_from([2, 60, 61]),
    "length": st.sampled_from([11.0, 24.0, 64.5, 70.0, "20 cm to 30 cm"]),
    "girth": st.sampled_from([12.0, 6.0]),
    "girth_ratio": st.sampled_from([0.2, 0.5]),
    "weight": st.sampled_from([150.0, 4000.0]),
    "condition": st.sampled_from([1.5, 2.0]),
}


@cache
def registry() -> Registry:
    made = registry_with(Gives(Vocabulary("lace", "lace", TRAITS, ("shared",), measures=MEASURES)))
    assert not made.problems
    return made


@cache
def standard_of(*rules: str) -> koirules.Standard:
    head = (
        'standard "lace" edition 1 variety lace\nsection net worth 100\npoints plain by knots: 0 gives 0, 60 gives 10\n'
    )
    tail = "\ngrade a if score at least 50\ngrade b if score at least 20\ngrade c otherwise\n"
    if any("knots" in rule or "loops" in rule for rule in rules):
        head = head.replace("knots", "girth").replace("0 gives 0, 60", "1 cm gives 0, 60 cm")
    return koirules.read_standard(head + "\n".join(rules) + tail, registry=registry())


def told(result: Result) -> Told:
    return result, [(one.given, one.words, one.read) for one in result.reasons], result.why


def by_the_function_for_any(standard: koirules.Standard, mapping: dict[str, object]) -> Told:
    """What the function for any record makes of a mapping that was read, measured and grown, in that order."""
    grader = standard.grader
    made = standard.reader.read(mapping, "")
    if not isinstance(made, Record):
        return made
    try:
        record = grader.measured(made)
    except RecordError as error:
        return error.problems
    whole = evolve(record, readings=grader.evaluator.ahead.whole(record.readings))
    return told(grader.result(whole, grader.evaluator.run_whole(whole.readings)))


def by_grade(standard: koirules.Standard, mapping: dict[str, object]) -> Told:
    try:
        return told(standard.grade(mapping))
    except RecordError as error:
        return error.problems


@moderate
@given(st.data())
def test_what_follows_is_the_same_for_complete_records(data: st.DataObject) -> None:
    rules = data.draw(st.lists(st.sampled_from(RULES), unique=True, max_size=5))
    standard = standard_of(*(rule for rule in RULES if rule in rules))
    needed = standard.grader.needed
    for _ in range(4):
        full = data.draw(st.booleans())
        names = [name for name in VALUES if (full and name in needed) or data.draw(st.booleans())]
        mapping = {name: data.draw(VALUES[name]) for name in names}
        note(f"{rules} {mapping}")
        assert by_grade(standard, mapping) == by_the_function_for_any(standard, mapping)
        found = standard.reader.read(mapping, "")
        if isinstance(found, Record) and not isinstance(by_grade(standard, mapping), tuple):
            assert (
                standard.grade(mapping)
                == standard.grade_record(found)
                == standard.grade_record(standard.measured([found], "tub.csv").records[0])
            )


@moderate
@given(st.data())
def test_grown_fish_are_graded_by_the_function_for_complete_records(data: st.DataObject) -> None:
    standard = data.draw(standards_that_grow())
    note(to_text(standard))
    loaded = koirules.read_standard(to_text(standard), registry=registry_that_grows())
    grader = loaded.grader
    for _ in range(4):
        record = data.draw(completions(standard, data.draw(records(standard))))
        mapping = to_mapping(standard, record)
        note(repr(mapping))
        whole = grader.evaluator.ahead.whole(read(loaded, mapping).readings)
        found = grader.complete.run(whole)
        still_open = [
            one.key for one in grader.complete.inputs if one.key not in whole or one.value(whole[one.key]) is None
        ]
        if found is None:
            assert still_open or may_open(loaded.rules)
        else:
            assert not still_open
            assert found[:4] == as_sure(grader.evaluator.run_whole(whole))
        assert grader.evaluator.ahead.nothing or loaded._at_once.grade(mapping, "") is None
        assert by_grade(loaded, mapping) == by_the_function_for_any(loaded, mapping)


FORMULAS = standard_of(RULES[0], RULES[2], RULES[5])
WRITTEN: dict[str, object] = {"girth": 12.0, "knots": 30, "length": 24.0, "row_ratio": 4.0, "fine_net": True}
LOOPED = standard_of(RULES[1])


@pytest.mark.parametrize(
    "more",
    [
        {},
        {"fish": "K1", "weight": 150.0},
        {"rows_along": 40},
        # A doubt: 40 / 40 is not the 4 that is written, which counts.
        {"rows_along": 40, "rows_across": 40},
    ],
)
def test_where_all_is_written_a_record_is_graded_at_once(more: dict[str, object]) -> None:
    mapping = WRITTEN | more
    at_once = FORMULAS._at_once.grade(mapping, "")
    assert at_once is not None
    assert told(at_once) == by_the_function_for_any(FORMULAS, mapping) == by_grade(FORMULAS, mapping)


def test_a_doubt_about_what_is_written_is_still_told_where_doubts_are() -> None:
    mapping = WRITTEN | {"rows_along": 40, "rows_across": 40}
    (doubt,) = FORMULAS.measured([read(FORMULAS, mapping)], "tub.csv").problems
    assert (doubt.code, doubt.warning) == ("derived-differs", True)
    with pytest.warns(UserWarning, match="row_ratio"):
        FORMULAS.grade_frame(_frame(mapping))


def _frame(mapping: dict[str, object]) -> object:
    import polars as pl

    return pl.DataFrame([mapping])


def test_what_is_left_to_follow_is_derived_first() -> None:
    mapping = {name: value for name, value in WRITTEN.items() if name != "fine_net"}
    assert FORMULAS._at_once.grade(mapping, "") is None
    assert "fine_net yes" in [one.read for one in FORMULAS.grade(mapping).reasons]
    asked = standard_of(RULES[7])
    assert asked._at_once.grade({"knots": 1, "rows_across": 10}, "") is None
    assert asked.grade({"knots": 1, "rows_along": 20, "rows_across": 10}).faults == ("measured",)
    said = standard_of(RULES[10])
    short = {"knots": 1, "length": 11.0, "girth": 5.5}
    assert said._at_once.grade(short, "") is None
    assert "0.5" in by_words(said.grade(short), "short")


def by_words(result: Result, name: str) -> str:
    return next(one.words for one in result.reasons if one.name == name)


@pytest.mark.parametrize(("knots", "cause"), [(ODD, "odd number"), (FAILING, "seven knots")])
def test_what_shows_only_when_it_is_measured_is_refused_though_all_that_is_read_was_written(
    knots: int, cause: str
) -> None:
    whole: dict[str, object] = {"girth": 12.0, "loops": 26}
    assert LOOPED._at_once.grade(whole, "") is not None
    assert LOOPED._at_once.grade(whole | {"knots": knots}, "") is None
    with pytest.raises(RecordError, match=cause):
        LOOPED.grade(whole | {"knots": knots})


def test_a_complete_record_of_a_fish_that_grows_is_graded_by_that_function() -> None:
    growing = standard_of(RULES[3], RULES[4])
    mapping: dict[str, object] = {"knots": 30, "length": 20.0, "girth_ratio": 0.22, "weight": 150.0}
    record = read(growing, mapping)
    assert growing.grader.complete.run(record.readings) is None
    sure = growing.grader.complete.run(growing.grader.evaluator.ahead.whole(record.readings))
    assert sure is not None
    result = growing.grade(mapping)
    assert result._behind._trace is None, "the function for any record was not asked"  # type: ignore[union-attr]
    assert by_grade(growing, mapping) == by_the_function_for_any(growing, mapping)
    rules, settings = growing.rules, growing.settings
    finder = ChangeFinder.of(rules, settings, lambda readings: growing.grader.evaluator.run(readings).possible)
    assert result.nearest_changes().single
    assert result.nearest_changes() == finder.nearest(record.readings)
    assert by_words(result, "heavy").endswith("(grown to 60 cm, by a model)")
