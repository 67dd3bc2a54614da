"""A plugin brings measures of its own: formulas and functions over columns; what does not hold leaves it out."""

from __future__ import annotations

import importlib
from decimal import Decimal
from pathlib import Path

import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.measures.pattern import pattern_measure
from koirules.plugins import Registry, registry_with
from koirules.plugins.finding import written_in
from koirules.problems import RecordError
from koirules.testing import findings
from koirules.vocabulary.kinds import Count, Number, Scale, YesNo
from koirules.vocabulary.measures import Computed, Constant, Formula, Found, Given, Measure
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import Trait, Vocabulary
from koirules.vocabulary.units import UNITS
from tests.plugins.installing import Install, installer
from tests.plugins.invented import Gives, only_problem

install = pytest.fixture(installer, name="install")

ALONG = Trait("rows_along", "rows along", Count(60))
ACROSS = Trait("rows_across", "rows across", Count(60))
RATIO = Trait("row_ratio", "ratio", Number(None, Decimal(0), Decimal(60)))
FINE = Trait("fine_net", "fine net", YesNo())
GRADE = Trait("net_grade", "net", Scale(("coarse", "fair", "fine")))
MANY = Constant("many_rows", "many rows", Number(None, Decimal(1), Decimal(60)), Decimal(30))
LONG = Constant("long_net", "long", Number(UNITS["mm"], Decimal(1), Decimal(600)), Decimal(150))


def registry(*measures: Measure, constants: tuple[Constant, ...] = (MANY, LONG)) -> Registry:
    traits = (ALONG, ACROSS, RATIO, FINE, GRADE)
    lace = Vocabulary("lace", "lace", traits, ("shared",), measures=measures, constants=constants)
    return registry_with(Gives(lace))


def graded(rules: str, record: dict[str, object], *measures: Measure) -> koirules.Result:
    found = registry(*measures)
    assert not found.problems, found.problems
    text = f'standard "try" edition 1 variety lace\n{rules}\ngrade a if length at least 1 cm\ngrade b otherwise'
    return koirules.read_standard(text, registry=found).grade(record)


FORMULAS = (
    Formula("row_ratio", "rows_along / rows_across"),
    Formula("fine_net", "rows_along at least many_rows and length above long_net"),
    Formula("net_grade", "(fine if row_ratio above 2 otherwise fair)"),
)


def test_formulas_give_numbers_truths_and_steps_and_read_constants() -> None:
    rules = """
fault narrow if row_ratio is 4: no better than b
fault fine if fine_net: no better than b
fault best if net_grade is fine: no better than b
"""
    record = {"rows_along": 40, "rows_across": 10, "length": 16}
    assert graded(rules, record, *FORMULAS).faults == ("narrow", "fine", "best")
    assert graded(rules, record | {"length": 14}, *FORMULAS).faults == ("narrow", "best")
    many = f"setting many_rows = 50 from 50 to 60\n{rules}"
    assert graded(many, record, *FORMULAS).faults == ("narrow", "best")


def test_frames_say_the_same_of_truths_and_steps() -> None:
    import polars as pl

    rules = "fault fine if fine_net: no better than b\nfault best if net_grade is fine: no better than b"
    text = f'standard "try" edition 1 variety lace\n{rules}\ngrade a if length at least 1 cm\ngrade b otherwise'
    standard = koirules.read_standard(text, registry=registry(*FORMULAS))
    rows = [
        {"rows_along": 40, "rows_across": 10, "length": 16.0},
        {"rows_along": 40, "rows_across": 30, "length": 14.0},
        {"rows_along": 40, "rows_across": None, "length": None},
        {"rows_along": None, "rows_across": None, "length": None},
    ]
    frame = standard.grade_frame(pl.DataFrame(rows), faults=True)
    for row, made in zip(rows, frame.to_dicts(), strict=True):
        result = standard.grade(row)
        assert made["possible"].split("|") == list(result.possible)
        assert [made["fault fine"], made["fault best"]].count(True) == len(result.faults)


def _doubled(given: Given) -> Found:
    rows = given.readings["rows_along"]
    if given.fish > 1:
        raise ValueError("too\nmany \x1b[31mfish")
    wrong = {0: Misread("value-odd", "An odd number of rows.", "Count again.")} if rows[0] == Span(13, 13) else {}
    return Found(
        {"row_ratio": [None if row is None else Span(row.low * 2, row.high * 2) for row in rows]}, {"rows_along": wrong}
    )


DOUBLED = Computed("the doubled rows", ("rows_along",), ("row_ratio",), _doubled)


def test_a_function_gives_readings_fish_by_fish() -> None:
    assert graded("fault x if row_ratio is 24: no better than b", {"rows_along": 12}, DOUBLED).faults == ("x",)
    assert graded("fault x if row_ratio is 24: no better than b", {}, DOUBLED).faults == ()


def test_a_function_may_find_a_reading_wrong() -> None:
    with pytest.raises(RecordError, match="An odd number of rows"):
        graded("fault x if row_ratio is 24: no better than b", {"rows_along": 13}, DOUBLED)


def test_a_function_that_fails_is_named_and_brings_nothing_down() -> None:
    text = (
        'standard "try" edition 1 variety lace\nfault x if row_ratio is 24: no better than b\n'
        "grade a if length at least 1 cm\ngrade b otherwise"
    )
    standard = koirules.read_standard(text, registry=registry(DOUBLED))
    records = [standard.reader.read({"rows_along": rows}, str(rows)) for rows in (1, 2)]
    measured = standard.measured(records, "tub.csv")  # type: ignore[arg-type]
    assert [problem.code for problem in measured.problems] == ["measure-failed"]
    said = "the doubled rows of the plugin invented failed (ValueError: too many \\u001b[31mfish, in "
    assert said in measured.problems[0].cause


@pytest.mark.parametrize(
    ("measures", "code"),
    [
        ((Formula("row_rate", "rows_along / 2"),), "measure-of-no-trait"),
        ((Computed("x", ("rows",), ("row_ratio",), _doubled),), "measure-of-no-trait"),
        ((DOUBLED, Formula("row_ratio", "rows_along / 2")), "measured-twice"),
    ],
)
def test_a_measure_that_names_what_is_not_there_leaves_the_plugin_out(measures: tuple[Measure, ...], code: str) -> None:
    found = registry(*measures)
    assert code in [problem.code for problem in found.problems]
    assert "lace" not in found.varieties


@pytest.mark.parametrize(
    ("formulas", "code"),
    [
        ((Formula("row_ratio", "rows_along / no_such_trait"),), "formula-does-not-hold"),
        ((Formula("row_ratio", "rows_along at least 3"),), "formula-does-not-hold"),
        ((Formula("row_ratio", "length / 2"),), "formula-does-not-hold"),
        ((Formula("rows_along", "rows_across / 2"),), "formula-does-not-hold"),
        ((Formula("row_ratio", "rows_along\nfault x"),), "formula-does-not-hold"),
        ((Formula("row_ratio", "score"),), "formula-does-not-hold"),
        ((Formula("rows_along", "rows_across * 2"), Formula("rows_across", "rows_along * 2")), "measures-in-a-circle"),
    ],
)
def test_a_formula_that_does_not_hold_is_one_problem_of_the_rule_files_of_its_variety(
    formulas: tuple[Measure, ...], code: str
) -> None:
    found = registry(*formulas)
    assert not found.problems
    with pytest.raises(koirules.StandardError) as error:
        koirules.read_standard(
            'standard "try" edition 1 variety lace\ngrade a if row_ratio above 1\ngrade b otherwise', registry=found
        )
    assert [problem.code for problem in error.value.problems] == [code]
    assert "The variety lace cannot be used" in error.value.problems[0].cause
    koirules.read_standard('standard "try" edition 1 variety kohaku\ngrade b otherwise', registry=found)


def test_a_formula_with_a_misspelt_name_says_which_is_near() -> None:
    found = registry(Formula("row_ratio", "rows_alonk / 2"))
    with pytest.raises(koirules.StandardError, match=r'called "rows_alonk"\. Did you mean "rows_along"'):
        koirules.read_standard('standard "try" edition 1 variety lace\ngrade b otherwise', registry=found)


def test_a_text_of_a_plugin_is_found_by_its_file_and_line(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    code = tmp_path / "invented_lace.py"
    code.write_text('ONE = "rows_along / 2"\nTWO = "rows_across / 2"\nTHREE = ("twice", "twice")\nFOUR = "twice"\n')
    monkeypatch.syspath_prepend(str(tmp_path))
    importlib.import_module("invented_lace")
    assert written_in("rows_across / 2", ["koirules.builtin", "invented_lace"]) == (str(code), 2)
    assert written_in("twice", ["invented_lace"]) is None
    assert written_in("rows_along / 3", ["invented_lace"]) is None


def test_a_formula_that_names_no_trait_is_left_out_of_the_measures() -> None:
    rule = "fault x if row_ratio is 24: no better than b"
    assert graded(rule, {"rows_along": 12}, Formula("row_ratio", "24")).faults == ()
    assert graded(rule, {"rows_along": 12, "row_ratio": "24"}, Formula("row_ratio", "24")).faults == ("x",)
    assert graded(rule, {"rows_along": 12}, Formula("row_ratio", "long_net / 1 cm")).faults == ()


@pytest.mark.parametrize(
    ("measure", "told"),
    [
        ("rows_along", "a Formula or Computed"),
        (Formula("row_ratio", 5), "str"),  # type: ignore[arg-type]
        (Computed("x", ["rows_along"], ("row_ratio",), _doubled), "tuple"),  # type: ignore[arg-type]
        (Computed("x", ("rows_along",), (7,), _doubled), "str"),  # type: ignore[arg-type]
        (Computed("x", ("rows_along",), ("row_ratio",), "no function"), "a function"),  # type: ignore[arg-type]
        (Computed("x", (), ("row_ratio",), _doubled), "inputs and outputs"),
    ],
)
def test_a_measure_of_the_wrong_type_leaves_the_plugin_out(measure: Measure, told: str) -> None:
    found = registry(measure)
    assert "plugin-wrong-type" in [problem.code for problem in found.problems]
    assert told in found.problems[0].mend


@pytest.mark.parametrize(
    ("constant", "code"),
    [
        (Constant("rows_along", "x", Number(None, Decimal(0), Decimal(1)), Decimal(1)), "constant-like-trait"),
        (Constant("many_rows", "x", Number(None, Decimal(0), Decimal(1)), Decimal(2)), "plugin-bad-range"),
        (Constant("many rows", "x", Number(None, Decimal(0), Decimal(1)), Decimal(1)), "plugin-bad-name"),
        (Constant("many_rows", "x", Count(5), Decimal(1)), "plugin-wrong-type"),  # type: ignore[arg-type]
    ],
)
def test_a_constant_that_does_not_hold_leaves_the_plugin_out(constant: Constant, code: str) -> None:
    assert only_problem(registry(constants=(constant,))).code == code


ODD = """standard "try" edition 1 variety lace
fault odd if row_ratio above 2: no better than b
grade a if length at least 1 cm
grade b otherwise
"""


@pytest.mark.parametrize(
    ("column", "said"),
    [
        ([Span(1.0, 1.0)], "1 readings of row_ratio for 2 fish"),
        ([1.5, None], "a reading of row_ratio is a float and not a Span"),
    ],
)
def test_a_measure_that_gives_what_is_no_column_of_readings_is_told(column: list[object], said: str) -> None:
    measure = Computed("odd", ("rows_along",), ("row_ratio",), lambda _: Found({"row_ratio": column}))  # type: ignore[dict-item]
    standard = koirules.read_standard(ODD, registry=registry(measure))
    read = [standard.reader.read({"rows_along": rows}, str(rows)) for rows in (1, 2)]
    (problem,) = standard.measured(read, "records").problems
    assert problem.code == "measure-failed"
    assert said in problem.cause


FAILING = """
from decimal import Decimal

from koirules.hooks import hookimpl
from koirules.vocabulary.kinds import Count, Number
from koirules.vocabulary.measures import Computed
from koirules.vocabulary.traits import Trait, Vocabulary

KOIRULES_API = 1


def halved(given):
    return 1 / 0


@hookimpl
def koirules_vocabularies():
    along = Trait("rows_along", "rows along", Count(60), describe="x")
    ratio = Trait("row_ratio", "ratio", Number(None, Decimal(0), Decimal(60)), describe="x")
    measure = Computed("the halved rows", ("rows_along",), ("row_ratio",), halved)
    return [Vocabulary("lace", "lace", (along, ratio), ("shared",), measures=(measure,))]
"""


@pytest.mark.parametrize("words", [("check",), ("check", "--reach"), ("handbook", "--out", "page.html"), ("flaws",)])
def test_a_measure_that_fails_in_a_sample_is_told_with_its_plugin_file_and_line(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, install: Install, words: tuple[str, ...]
) -> None:
    monkeypatch.setenv("KOIRULES_CACHE", "off")
    monkeypatch.delenv("KOIRULES_TRACEBACK", raising=False)
    monkeypatch.chdir(tmp_path)
    file = install("invented-koi", FAILING)
    sample = 'sample "one" with rows_along 12\n  comes out a\n'
    Path("lace.koi").write_text(ODD + sample, encoding="utf-8")
    told = CliRunner().invoke(main, [*words, "lace.koi"])
    line = FAILING.splitlines().index("    return 1 / 0") + 1
    assert isinstance(told.exception, SystemExit)
    assert told.exit_code == 2
    assert "of the plugin lace of invented-koi 1.2 failed (ZeroDivisionError" in told.stderr
    assert f"{file}, line {line})" in told.stderr
    assert "lace.koi, line 5" in told.stderr
    assert "Traceback" not in told.output
    assert "Traceback" in CliRunner().invoke(main, [*words, "lace.koi", "--debug"]).output
    assert "Traceback" not in CliRunner().invoke(main, [*words, "lace.koi"]).output
    assert not Path("page.html").exists()


def test_a_failing_measure_is_told_to_the_author_with_the_sample(tmp_path: Path) -> None:
    (tmp_path / "lace.koi").write_text(ODD + 'sample "one" with rows_along 13\n  comes out a\n', encoding="utf-8")

    def fails(_: Given) -> Found:
        raise OverflowError("rows")

    measure = Computed("the rows", ("rows_along",), ("row_ratio",), fails)
    lace = Vocabulary("lace", "lace", (ALONG, RATIO), ("shared",), measures=(measure,))
    found = findings(Gives(lace, rulesets={"lace": tmp_path / "lace.koi"}))
    assert any(
        'rule set "lace"' in told and "lace.koi:5:" in told and "OverflowError: rows" in told for told in found
    ), found


def test_a_pattern_is_measured_on_a_map_and_on_nothing_else() -> None:
    with pytest.raises(KeyError, match="no figure of a pattern is called covr"):
        pattern_measure("rows_along", {"covr": RATIO})
    standard = koirules.read_standard(ODD, registry=registry(pattern_measure("rows_along", {"cover": RATIO})))
    with pytest.raises(RecordError, match="is no map"):
        standard.grade({"rows_along": 3})


def test_a_measure_is_shown_and_compared_without_the_plugin_that_brought_it():
    one = Computed("rows", ("along",), ("rows_along",), dict, plugin="tin_bucket")
    assert "tin_bucket" not in repr(one) and "dict" not in repr(one)
    assert one == Computed("rows", ("along",), ("rows_along",), dict)
