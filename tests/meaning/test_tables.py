"""Every row of the tables of the language, on every engine, against the independent judge (tests/judge).

A row that is added to a table and nowhere else fails here: an operation that no condition below uses, a comparison or figure
that the judge does not know, a unit without a factor, an example that cannot be read.
"""

from __future__ import annotations

import inspect
import pickle

import polars as pl
import pytest
import z3
from hypothesis import given, settings
from hypothesis import strategies as st

import koirules
from koirules.engines.columnar.reading import Source
from koirules.engines.symbolic.standing import Standing
from koirules.engines.symbolic.universe import Universe, fish_of
from koirules.grading.batch import BatchGrader
from koirules.language.format.writer import tidy
from koirules.language.parse.reader import read_text
from koirules.meaning.aggregates import AGGREGATES
from koirules.meaning.algebra import PLAIN
from koirules.meaning.curves import Curve, Table
from koirules.meaning.expressions import BY_WORDS, FORMS, Comparison
from koirules.meaning.operators import OPERATIONS
from koirules.standard.tree import Apply, walk
from koirules.vocabulary.units import UNITS
from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.batch import Looked
from tests.judge.by_hand import curve, number
from tests.judge.drawn_batches import Batch
from tests.judge.judge import judge
from tests.judge.look import HELD_IN
from tests.judge.strategies import to_mapping
from tests.judge.text import to_text
from tests.properties.test_agreement import by_judge, by_koirules
from tests.properties.test_batch_agreement import as_frame, expected
from tests.properties.test_solver_agreement import as_graded, on_notches, that_fish
from tests.properties.test_whole_batch_agreement import agrees, moderate

X, N, Y, C, P, L = (e.Name(name) for name in ("x", "n", "yes_no", "line", "fins", "pond"))
EDGE, LUSTRE = e.Name("edge"), e.Name("lustre")
ORDER = ("blurred", "fair", "sharp")
TRAITS = (
    m.Trait("x", m.NumberKind("cm", number("0").amount, number("90").amount)),
    m.Trait("n", m.CountKind(9)),
    m.Trait("yes_no", m.YesNoKind()),
    m.Trait("edge", m.ScaleKind(ORDER)),
    m.Trait("lustre", m.ScaleKind(ORDER)),
    m.Trait("line", m.ChoiceKind(("old", "mill", "new"))),
    m.Trait("fins", m.PlacesKind(("left", "right", "tail"))),
    m.Trait("pond", m.LabelKind()),
)


def cm(text: str) -> e.Literal:
    return number(text, "cm")


def at_least(left: e.Expression, right: e.Expression) -> e.Expression:
    return e.Compare("at least", left, right)


def plus(left: e.Expression, sign: str, right: e.Expression) -> e.Expression:
    return e.Arithmetic(sign, left, right)


EITHER = e.Either(EDGE, Y, LUSTRE)
CONDITIONS = [
    *(e.Compare(operator, X, cm("12.5")) for operator in (*e.ORDERS, *e.SAMENESS)),
    *(e.Compare(operator, N, number("3")) for operator in (*e.ORDERS, *e.SAMENESS)),
    *(e.Compare(operator, EDGE, e.Step("fair")) for operator in (*e.ORDERS, *e.SAMENESS)),
    *(e.Compare(operator, EDGE, LUSTRE) for operator in (*e.ORDERS, *e.SAMENESS)),
    e.Compare("is", C, e.Step("mill")),
    e.Compare("is", Y, e.Compare("above", X, cm("20"))),
    e.Compare("is", L, e.Words("far")),
    e.Compare("is", Y, e.YesNo(yes=False)),
    e.Between(X, cm("10"), cm("20")),
    e.Between(EDGE, e.Step("blurred"), e.Step("fair")),
    e.IsOneOf(X, (cm("10"), cm("12.5"))),
    e.IsOneOf(EDGE, (e.Step("blurred"), e.Step("sharp"))),
    e.IsOneOf(C, (e.Step("old"), e.Step("new")), negated=True),
    e.IsOneOf(L, (e.Words("far"), e.Words("near"))),
    e.IsWithin(X, cm("2.5"), cm("12.5")),
    e.IsWithin(N, number("1"), number("3"), negated=True),
    e.IsWithin(X, plus(X, "/", number("10")), plus(number("5"), "*", e.Arithmetic("*", cm("1"), N))),
    *(e.IsRecorded(of) for of in (X, N, Y, EDGE, C, P, L)),
    e.IsRecorded(X, negated=True),
    e.Includes(P, "tail"),
    e.Or((Y, at_least(X, cm("30")))),
    e.And((Y, at_least(X, cm("5")))),
    e.Not(at_least(EDGE, e.Step("fair"))),
    e.Either(at_least(X, cm("9")), Y, at_least(N, number("4"))),
    at_least(plus(X, "+", cm("0.1")), cm("12.6")),
    at_least(plus(X, "-", plus(cm("1"), "*", N)), cm("8")),
    at_least(plus(X, "*", N), cm("40")),
    at_least(plus(X, "/", plus(cm("1"), "*", N)), number("4")),
    at_least(e.Negative(X), e.Negative(cm("12.5"))),
    at_least(e.Lesser((X, cm("30"), plus(X, "/", number("2")))), cm("6")),
    at_least(e.Greater((X, cm("11"))), cm("12")),
    at_least(e.Median((X, cm("12"), e.Arithmetic("*", cm("3"), N))), cm("12")),
    at_least(e.Median((X, cm("12"), cm("9.3"), e.Arithmetic("*", cm("3"), N))), cm("10.65")),
    at_least(e.Either(X, Y, cm("11")), cm("12")),
    at_least(EITHER, e.Step("fair")),
    e.Compare("is", EITHER, e.Step("sharp")),
    e.IsOneOf(EITHER, (e.Step("blurred"), e.Step("sharp"))),
    at_least(e.CountOf((Y, at_least(X, cm("12")), e.Includes(P, "left"))), number("2")),
    at_least(e.CountPlaces(P), number("2")),
]
CRITERIA = (
    m.Points("grows", X, curve(("10", "0"), ("12.5", "4"), ("20", "10"), ("40", "3"), unit="cm")),
    m.Points("sharp", EITHER, m.Table(tuple((step, number(str(3 * at)).amount) for at, step in enumerate(ORDER)))),
    m.Points("long", at_least(X, cm("12")), m.Table((("no", number("0").amount), ("yes", number("7").amount)))),
    m.Bonus("b", number("3").amount, Y),
    m.Penalty("q", number("2").amount, e.Includes(P, "right")),
)
STANDARD = m.Standard(
    traits=TRAITS,
    sections=(m.Section("body", number("40").amount, CRITERIA),),
    faults=(
        *(m.Fault(f"low{at}", one, "", lowers=at) for at, one in enumerate((Y, at_least(X, cm("12.5"))), 1)),
        *(m.Fault(f"f{at}", one, "hold", Y if at % 3 == 2 else None) for at, one in enumerate(CONDITIONS)),
    ),
    # More than one lowers and more than one caps, so that they add up and come in turn.
    lifts=(m.Lift("raised", e.And((Y, at_least(e.SectionPoints("body"), number("30")))), "hold"),),
    grades=(
        m.Grade("keep", at_least(e.Score(), number("20"))),
        m.Grade("hold", e.FaultBit("f0")),
        m.Grade("sell", None),
    ),
)
WHOLE = [
    {"x": "12.5", "n": 3, "yes_no": True, "edge": "fair", "lustre": "sharp", "line": "mill", "pond": "far"},
    {"x": "15", "n": 4, "yes_no": False, "edge": "sharp", "lustre": "sharp", "line": "old", "pond": "near"},
    {"x": "9.999999", "n": 1, "yes_no": False, "edge": "blurred", "lustre": "fair", "line": "new", "pond": "mid"},
    {"x": "90", "n": 9, "yes_no": True, "edge": "sharp", "lustre": "blurred", "line": "old", "pond": "far"},
]
PLACES = [frozenset({"tail"}), frozenset(), frozenset({"left", "right", "tail"}), frozenset({"left"})]
COMPLETE: list[dict[str, object]] = [{**record, "fins": places} for record, places in zip(WHOLE, PLACES, strict=True)]
OPEN: list[dict[str, object]] = [
    {},
    {"x": ("span", "12.4", "12.6"), "edge": frozenset({"fair", "sharp"}), "yes_no": "unsure"},
    {"x": ("span", "1", "80"), "n": 3, "lustre": frozenset({"blurred", "fair"}), "line": frozenset({"old", "mill"})},
    {"n": ("span", "2", "3"), "yes_no": False, "pond": "far", "fins": frozenset({"tail"})},
]


@pytest.fixture(scope="module")
def loaded() -> koirules.Standard:
    return koirules.read_standard(to_text(STANDARD))


def nodes_of(loaded: koirules.Standard) -> list[object]:
    rules = loaded.rules
    roots = [*rules.roots, *(part.reads for part in rules.points)]
    return [node for root in roots for node in walk(root)]


def test_the_standard_of_this_file_uses_every_row(loaded: koirules.Standard) -> None:
    used = {node.operation.name for node in nodes_of(loaded) if isinstance(node, Apply)}
    assert used == set(OPERATIONS)
    text = to_text(STANDARD)
    assert all(all(word in text for word in words.split()) for words in BY_WORDS)
    assert {type(part.shape) for part in loaded.rules.points} == {Curve, Table}
    assert set(AGGREGATES) == set(e.FIGURES)
    assert set(UNITS) == set(HELD_IN) - {""}


@pytest.mark.parametrize("record", [*COMPLETE, *OPEN], ids=range(len(COMPLETE) + len(OPEN)))
def test_one_record_comes_to_what_the_judge_says(loaded: koirules.Standard, record: dict[str, object]) -> None:
    found = loaded.grade(to_mapping(STANDARD, record))
    assert by_koirules(found) == by_judge(judge(STANDARD, record))


@pytest.mark.parametrize("record", COMPLETE, ids=range(len(COMPLETE)))
def test_a_complete_record_comes_to_the_same_by_both_functions(
    loaded: koirules.Standard, record: dict[str, object]
) -> None:
    readings = loaded.reader.read(to_mapping(STANDARD, record), "").readings
    sure, trace = loaded.grader.complete.run(readings), loaded.grader.trace(readings)
    assert sure is not None
    bits = sum(1 << place for place, states in enumerate(trace.limits) if states[4])
    assert sure[:4] == (trace.possible, trace.score[0], tuple(low for low, _ in trace.sections), bits)


def test_generated_source_can_be_shown_and_holds_no_text_of_the_rule_file(loaded: koirules.Standard) -> None:
    for run in (loaded.grader.evaluator.run_whole, loaded.grader.complete.run):
        source = inspect.getsource(run)
        assert source.startswith("def run(record")
        assert "'" not in source
        assert '"' not in source


def test_rows_are_pickled_as_what_they_are() -> None:
    for row in (*OPERATIONS.values(), *AGGREGATES.values()):
        assert pickle.loads(pickle.dumps(row)) is row


@pytest.mark.parametrize("records", [COMPLETE, OPEN, [*COMPLETE, *OPEN]], ids=["complete", "open", "both"])
def test_columns_and_machine_code_come_to_what_rows_come_to(
    loaded: koirules.Standard, records: list[dict[str, object]]
) -> None:
    mappings = [to_mapping(STANDARD, record) for record in records]
    frame = as_frame(mappings, frozenset({"x", "n"}))
    grader = BatchGrader(loaded.rules, loaded.settings, loaded.grader, faults=True)
    read = grader.reader({name: Source(name) for name in frame.columns}).read(frame)
    assert not read.wrong
    for graded in (grader.by_column(read, len(records)), grader.by_code(read, len(records))):
        for mapping, row in zip(mappings, graded.iter_rows(named=True), strict=True):
            assert row == expected(loaded.grade(mapping))


@pytest.mark.parametrize("record", COMPLETE, ids=range(len(COMPLETE)))
def test_the_solver_allows_the_outcome_of_a_record(loaded: koirules.Standard, record: dict[str, object]) -> None:
    universe = Universe.made()
    fish = fish_of(loaded.rules, loaded.settings, universe)
    standing = Standing.of(loaded.rules, loaded.settings, universe, fish)
    readings = on_notches(standing, loaded.reader.read(to_mapping(STANDARD, record), "").readings)
    said = as_graded(standing, loaded.grader.trace(readings))
    solver = z3.SimpleSolver(ctx=universe.context)
    solver.add(*universe.facts, *universe.giving.exact, *that_fish(standing, readings), *(one for _, one in said))
    assert solver.check() == z3.sat


@pytest.mark.parametrize("name", AGGREGATES)
@settings(moderate, max_examples=2)
@given(seed=st.integers(0, 1000))
def test_a_figure_comes_to_the_same_by_rows_by_columns_and_by_the_judge(name: str, seed: int) -> None:
    one = AGGREGATES[name]
    is_share = one.gives.value == "share"
    of = at_least(X, cm("12")) if one.over.value == "a condition" else X
    cut = number("40", "%") if is_share else cm("2.5")
    figures = [
        e.Figure(name, of, number("12.5").amount if one.percent else None, same, "", least)
        for same, least in (((), None), (("pond",), None), ((), 3))
    ]
    faults = [
        m.Fault(f"f{at}", at_least(e.Arithmetic("*", figure, number("0.75")), cut), "sell")
        for at, figure in enumerate(figures)
    ]
    standard = m.Standard(traits=TRAITS, faults=tuple(faults), grades=(m.Grade("keep", Y), m.Grade("sell", None)))
    fish = tuple(Looked(record) for record in [*COMPLETE, *OPEN, *COMPLETE[:2]])
    loaded = koirules.read_standard(to_text(standard))
    assert agrees(loaded, standard, Batch(fish, {}, {}), seed) == "columns"
    assert agrees(loaded, standard, Batch(fish[:1], {}, {}), seed) in {"columns", "rows"}


EXAMPLES = [one.value.example for one in Comparison] + [
    form.example if form.words in {"or", "and", "not"} else f"{form.example} at least 1"
    for form in FORMS.values()
    if form.words not in {"fault", "grade", "earlier", "grown to"}
]


@pytest.mark.parametrize("example", EXAMPLES)
def test_every_example_reads_and_is_tidy(example: str) -> None:
    text = f'standard "s" edition 1\ngrade keep if {example}\ngrade sell otherwise\n'
    read = read_text(text, "s.koi")
    assert not read.problems
    assert example in tidy(read.rules)


def test_a_frame_in_inches_is_one_in_centimetres() -> None:
    standard = koirules.read_standard(
        'standard "s" edition 1\ntrait x "x" as number in cm from 0 to 90\n'
        "grade keep if x is within 1 inch of 10 inch\ngrade sell otherwise\n"
    )
    assert [standard.grade({"x": said}).grade for said in ("9 inch", "11 inches", "27.95 cm")] == [
        "keep",
        "keep",
        "sell",
    ]
    frame = pl.DataFrame({"x": ["9 inch", "11 in", "11.01 inches"]})
    assert standard.grade_frame(frame)["grade"].to_list() == ["keep", "keep", "sell"]


@pytest.mark.parametrize("name", AGGREGATES)
def test_an_alert_reads_every_figure_but_one_that_each_fish_has_of_its_own(name: str) -> None:
    percent = " 10" if AGGREGATES[name].percent else ""
    of, bound = ("(long)", "50 %") if name == "share" else ("length", "50 %" if name == "standing" else "5 cm")
    text = (
        'standard "Trial" edition 1\ntrait length as number in cm from 0 to 90\nterm long means length above 20 cm\n'
        "grade keep if long\ngrade sell otherwise\n"
        f'alert much "much" if batch {name}{percent} of {of} above {bound}\n'
    )
    if name == "standing":
        with pytest.raises(koirules.StandardError, match="a standing"):
            koirules.read_standard(text)
    else:
        (found,) = (
            koirules.read_standard(text).grade_batch([{"fish": "a", "length": 30}, {"fish": "b", "length": 50}]).alerts
        )
        assert found.surely


def test_the_plain_algebra_divides_down():
    assert [PLAIN.divide_down(number, 4) for number in (-9, -8, 7, 8)] == [-3, -2, 1, 2]
