"""Units of plugins: an invented ell and others, in every place where units of koirules stand, and what keeps one out."""

import re
from decimal import Decimal
from fractions import Fraction

import polars as pl
import pytest
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.editing import Desk, offers_at
from koirules.hooks import Unit
from koirules.language.parse import tables
from koirules.plugins import registry_with
from koirules.standard.canonical import canonical_text
from koirules.vocabulary.units import OWN_UNITS, UNITS, Dimension, added_units, unit_words, use_units
from tests.judge.judge import judge
from tests.judge.look import HELD_IN
from tests.judge.strategies import layouts, records, standards, to_mapping
from tests.judge.text import to_text
from tests.plugins.invented import Gives, assert_left_out, lace, only_problem
from tests.properties.test_agreement import by_judge, by_koirules

ELL = Unit("ell", Dimension.LENGTH, Decimal(400), ("Elle", "ells", "尋"), 7, "invented")
GRAIN = Unit("grain", Dimension.MASS, Decimal("0.0625"), (), 1, "invented")
HALF = Unit("half", Dimension.SHARE, Decimal(50), (), 1, "invented")


@pytest.fixture(autouse=True)
def _as_before():
    before = added_units()
    yield
    use_units(before)


def plugin(*units, name="invented", **more):
    return Gives(units=units, name=name, **more)


@pytest.fixture
def registry():
    return registry_with(plugin(ELL, GRAIN))


HOUSE = 'standard "x" edition 1\ntrait {}\ngrade a if {}\ngrade b otherwise\n'
RULES = """standard "Ells" edition 1 variety kohaku
setting long = 0.25 ell from 1 cm to 1 ell
section size "size" worth 100
points length "length" by length: 0.1 ell gives 0, 12 cm gives 4, 0.5 ell gives 10
grade keep if length at least long and weight below 500 grain
grade cull otherwise
sample "a" with length 0.3 ell, weight 1 grain comes out keep
"""


def test_a_rule_file_reads_them_exactly(registry):
    standard = koirules.read_standard(RULES, "ells.koi", registry)
    # 0.25 ell is 100/7 cm, to a millionth 14.285714 cm.
    assert standard.grade({"length": "14.285714 cm", "weight": "1 g"}).grade == "keep"
    assert standard.grade({"length": "14.285713 cm", "weight": "1 g"}).grade == "cull"
    assert standard.grade({"length": "0.25 Elle", "weight": "499 grain"}).grade == "keep"
    assert standard.grade({"length": "0.2 ells to 0.3尋", "weight": "1 grain"}).possible == ("keep", "cull")
    assert not [run for run in standard.sample_runs() if run.failures]


@pytest.mark.usefixtures("registry")
def test_without_the_plugin_they_are_no_units():
    use_units(())
    with pytest.raises(koirules.StandardError) as caught:
        koirules.read_standard(RULES, "ells.koi", registry_with())
    assert {problem.code for problem in caught.value.problems} == {"unknown-unit"}
    assert dict(OWN_UNITS) == UNITS


def test_tidy_lays_them_out(registry):
    read = koirules.read_standard(RULES, "ells.koi", registry)
    untidy = RULES.replace("0.25 ell", "0.250ell").replace("below 500 grain", "< 500grain")
    tidied = koirules.tidy(untidy, "ells.koi")
    assert "0.25 ell from" in tidied and "below 500 grain" in tidied
    assert koirules.read_standard(tidied, "ells.koi", registry).seal == read.seal


def test_a_seal_states_the_factor_of_each_and_no_other_seal_changes(registry):
    standard = koirules.read_standard(RULES, "ells.koi", registry)
    text = canonical_text(standard.rules)
    assert text.startswith("koirules canonical form 3\n")
    assert text.endswith("unit ell is 400/7 cm\nunit grain is 0.0625 g\n")
    plain = re.sub(r"([\d.]+) ell", lambda found: f"{float(found[1]) * 50:g} cm", RULES).replace("grain", "g")
    seals = {koirules.read_standard(plain, "plain.koi", registry).seal}
    use_units(())
    seals.add(koirules.read_standard(plain, "plain.koi", registry_with()).seal)
    assert len(seals) == 1
    said = plain.replace('"size"', '"5 ell"')
    here = koirules.read_standard(said, "said.koi", registry_with(plugin(ELL))).seal
    use_units(())
    assert koirules.read_standard(said, "said.koi", registry_with()).seal == here


def test_a_seal_changes_with_the_factor(registry):
    first = koirules.read_standard(RULES, "ells.koi", registry).seal
    use_units(())
    other = registry_with(plugin(Unit("ell", Dimension.LENGTH, Decimal(57), (), 1, "invented"), GRAIN))
    assert koirules.read_standard(RULES, "ells.koi", other).seal != first


def test_a_standard_with_them_pickles(registry):
    import pickle

    standard = koirules.read_standard(RULES, "ells.koi", registry)
    again = pickle.loads(pickle.dumps(standard))
    assert again.seal == standard.seal
    assert again.grade({"length": "1 ell"}).possible == standard.grade({"length": "1 ell"}).possible
    # A unit that nobody knows any more is still what it was.
    packed = pickle.dumps(UNITS["ell"])
    assert pickle.loads(packed) is UNITS["ell"]
    use_units(())
    assert pickle.loads(pickle.dumps(ELL)) == ELL


def test_a_frame_with_a_heading_in_them_is_graded_as_its_rows(registry):
    standard = koirules.read_standard(RULES, "ells.koi", registry)
    lengths = [0.05 * number for number in range(2, 13)]
    rows = [{"length": f"{length!r} ell", "weight": "20 grain"} for length in lengths]
    frame = pl.DataFrame({"length (ell)": lengths, "weight": ["20 grain"] * len(lengths)})
    graded = standard.grade_frame(frame)
    assert graded["grade"].to_list() == [standard.grade(row).grade for row in rows]
    assert {"keep", "cull"} <= set(graded["grade"].to_list())


def test_a_trait_is_declared_in_one_that_a_decimal_says(registry):
    text = HOUSE.format("load as number in grain from 1 to 1600", "load at least 16 grain")
    standard = koirules.read_standard(text, "x.koi", registry)
    assert [standard.grade({"load": load}).grade for load in (16, "1 g", "15.9 grain")] == ["a", "a", "b"]


def test_a_trait_in_thirds_of_the_held_unit_is_told_with_a_mend_that_holds(registry):
    text = HOUSE.format("reach as number in ell from 0.1 to 2", "reach at least 1 ell")
    with pytest.raises(koirules.StandardError) as caught:
        koirules.read_standard(text, "x.koi", registry)
    (problem,) = [one for one in caught.value.problems if one.code == "range-not-held"]
    assert "number in cm from 5 to 115" in problem.mend
    mended = text.replace("number in ell from 0.1 to 2", problem.edit.text)
    assert koirules.read_standard(mended, "x.koi", registry).grade({"reach": "1 ell"}).grade == "a"
    # 7 ells are 400 cm.
    whole = text.replace("from 0.1 to 2", "from 0 to 7")
    assert koirules.read_standard(whole, "x.koi", registry).grade({"reach": "0.9 ell"}).grade == "b"


def test_the_editor_offers_them(registry):
    desk = Desk(registry)
    line = "grade keep if length at least 5 "
    desk.open("page", None, f'standard "x" edition 1 variety kohaku\n{line}\ngrade cull otherwise\n')
    desk.look("page")
    offered = {offer.text for offer in offers_at(desk, "page", 2, len(line) + 1).offers}
    assert {"cm", "ell"} <= offered


def test_the_grammar_is_the_shipped_one_again_without_them():
    use_units(())
    before = tables.grammar_text()
    use_units((ELL,))
    assert "ell" in unit_words() and tables.grammar_text() != before
    use_units(())
    assert tables.grammar_text() == before


@pytest.mark.parametrize(
    ("unit", "why"),
    [
        (Unit("to", Dimension.LENGTH, Decimal(1), (), 1, "x"), "a word of the rule language"),
        (Unit("silence", Dimension.LENGTH, Decimal(1), (), 1, "x"), "a word of the rule language"),
        (Unit("none", Dimension.LENGTH, Decimal(1), (), 1, "x"), "a word of the rule language"),
        (Unit("5ell", Dimension.LENGTH, Decimal(1), (), 1, "x"), "not one word of letters"),
        (Unit("long_ell", Dimension.LENGTH, Decimal(1), (), 1, "x"), "not one word of letters"),
        (Unit("el l", Dimension.LENGTH, Decimal(1), (), 1, "x"), "not one word of letters"),
        (Unit("ell", Dimension.LENGTH, Decimal(1), ("an ell",), 1, "x"), 'cannot write "an ell"'),
        (Unit("ell", Dimension.LENGTH, Decimal(1), ("e5",), 1, "x"), 'cannot write "e5"'),
        (Unit("ell", Dimension.LENGTH, Decimal(0), (), 1, "x"), "outside of a millionth"),
        (Unit("ell", Dimension.LENGTH, Decimal(-1), (), 1, "x"), "outside of a millionth"),
        (Unit("ell", Dimension.LENGTH, Decimal("nan"), (), 1, "x"), "outside of a millionth"),
        (Unit("ell", Dimension.LENGTH, Decimal(1), (), 0, "x"), "outside of a millionth"),
        (Unit("ell", Dimension.LENGTH, Decimal("1.0000000000001"), (), 1, "x"), "more than 12 digits"),
        (Unit("degF", Dimension.TEMPERATURE, Decimal(5), (), 9, "x"), "the same nought"),
        (Unit("ell", Dimension.LENGTH, Decimal(1)), "where its factor is from"),
    ],
)
def test_a_unit_that_cannot_be_used_leaves_the_plugin_out(unit, why):
    registry = registry_with(Gives(lace(), units=[unit]))
    assert_left_out(registry)
    assert {problem.code for problem in registry.problems} == {"plugin-bad-unit"}
    assert any(why in problem.cause for problem in registry.problems)
    assert unit.symbol not in UNITS


@pytest.mark.parametrize(
    "unit",
    [
        "ell",
        Unit(3, Dimension.LENGTH, Decimal(1), (), 1, "x"),
        Unit("ell", "length", Decimal(1), (), 1, "x"),
        Unit("ell", Dimension.LENGTH, 1.5, (), 1, "x"),
        Unit("ell", Dimension.LENGTH, Decimal(1), "Elle", 1, "x"),
        Unit("ell", Dimension.LENGTH, Decimal(1), (3,), 1, "x"),
        Unit("ell", Dimension.LENGTH, Decimal(1), (), True, "x"),
    ],
)
def test_what_is_no_unit_leaves_the_plugin_out(unit):
    assert only_problem(registry_with(plugin(unit))).code == "plugin-wrong-type"


@pytest.mark.parametrize(
    ("unit", "other"),
    [
        (Unit("cm", Dimension.LENGTH, Decimal(1), (), 1, "x"), "koirules"),
        (Unit("gram", Dimension.MASS, Decimal(1), (), 1, "x"), "koirules"),
        (Unit("rod", Dimension.LENGTH, Decimal(1), ("metre",), 1, "x"), "koirules"),
        (Unit("ell", Dimension.LENGTH, Decimal(2), (), 1, "x"), "one"),
        (Unit("Elle", Dimension.LENGTH, Decimal(2), (), 1, "x"), "one"),
        (Unit("rod", Dimension.LENGTH, Decimal(2), ("ell",), 1, "x"), "one"),
    ],
)
def test_a_name_that_is_taken_leaves_the_unit_out_alone(unit, other):
    registry = registry_with(plugin(ELL, name="one"), Gives(lace(), units=[unit], name="two"))
    problem = only_problem(registry)
    assert (problem.code, str(problem.site)) == ("plugin-name-taken", "plugin two")
    assert f"from {other}." in problem.cause
    assert UNITS["ell"] is ELL and "lace" in registry.varieties


def test_a_unit_knows_its_factor_exactly():
    assert (ELL.exact, ELL.told, HALF.told) == (Fraction(400, 7), "400/7 cm", "50 %")
    assert not ELL.is_held and OWN_UNITS["cm"].is_held
    for value in ("0.1", "7", "0.000001", "123456.654321"):
        assert float(ELL.to_held(Decimal(value))) == float(Fraction(value) * Fraction(400, 7))
    assert ELL.from_held(Decimal(400)) == 7


moderate = settings(
    max_examples=40,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)


@moderate
@given(st.data())
def test_koirules_and_the_judge_give_one_answer_with_them(data):
    known = {"ell": ("cm", Fraction(400, 7)), "grain": ("g", Fraction(1, 16)), "half": ("%", Fraction(50))}
    use_units((ELL, GRAIN, HALF))
    HELD_IN.update(known)
    try:
        standard = data.draw(standards())
        text = to_text(standard, data.draw(layouts()))
        note(text)
        loaded = koirules.read_standard(text)
        for _ in range(3):
            record = data.draw(records(standard))
            mapping = to_mapping(standard, record)
            note(repr(mapping))
            assert by_koirules(loaded.grade(mapping)) == by_judge(judge(standard, record))
    finally:
        for symbol in known:
            del HELD_IN[symbol]
