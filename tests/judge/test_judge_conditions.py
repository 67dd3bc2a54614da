"""Numbers and conditions worked out by hand; the arithmetic stands beside each."""

from __future__ import annotations

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.by_hand import graded, number, on_condition, plain
from tests.judge.judge import judge

# ---- Numbers -----------------------------------------------------------------------------------------------------


def test_a_tenth_and_two_tenths_are_three_tenths() -> None:
    # 0.1 + 0.2 = 0.30000000000000004; floor(300000.00000000006 + 0.5) = 300000 = floor(300000 + 0.5): the same.
    sum_is = e.Compare("is", e.Arithmetic("+", e.Name("x"), number("0.2")), number("0.3"))
    assert judge(on_condition(sum_is, plain("x", "0", "1")), {"x": 0.1}).grade == "keep"


def test_half_a_millionth_counts_up_on_either_side_of_zero() -> None:
    # 12.5 millionths rounds to 13, -12.5 millionths to -12: both towards the larger number (dyadic, so exact).
    standard = on_condition(e.Compare("at least", e.Name("x"), number("0.000013")), plain("x", "-1", "1"))
    assert judge(standard, {"x": "0.0000125"}).grade == "keep"
    below = e.Compare("at least", e.Name("x"), e.Negative(number("0.000012")))
    assert judge(on_condition(below, plain("x", "-1", "1")), {"x": "-0.0000125"}).grade == "keep"
    assert judge(on_condition(below, plain("x", "-1", "1")), {"x": "-0.0000126"}).grade == "hold"


def test_units_of_one_dimension_are_one_quantity() -> None:
    # 125 mm is 12.5 cm; 2 months are 2 x 365.25 / 12 = 60.875 days.
    longer = e.Compare("is", e.Name("length"), number("125", "mm"))
    assert judge(on_condition(longer, plain("length", "0", "90", "cm")), {"length": 12.5}).grade == "keep"
    age = e.Compare("is", e.Name("age"), number("60.875", "days"))
    assert judge(on_condition(age, plain("age", "0", "36", "months")), {"age": "2"}).grade == "keep"


def test_a_quotient_by_nothing_is_any_number_at_all() -> None:
    # 3 / 0 is any number from -1,000,000 to 1,000,000, so "at least 2" stays open though all is recorded.
    quotient = e.Arithmetic("/", e.Name("a"), e.Name("b"))
    traits = (plain("a", "0", "10"), plain("b", "0", "10"))
    standard = on_condition(e.Compare("at least", quotient, number("2")), *traits)
    assert judge(standard, {"a": 3.0, "b": 0.0}).possible == ("keep", "hold")
    assert judge(standard, {"a": 3.0, "b": ("span", "0", "1")}).possible == ("keep", "hold")
    assert judge(standard, {"a": 3.0, "b": ("span", "0.5", "1.5")}).grade == "keep"  # 3/1.5 = 2 to 3/0.5 = 6
    # Nothing is above the highest number there is: 1,000,000 is not above 1,000,000.
    never = on_condition(e.Compare("above", quotient, number("1000000")), *traits)
    assert judge(never, {"a": 3.0, "b": 0.0}).grade == "hold"


def test_a_product_takes_the_outermost_of_its_four_corners() -> None:
    # (-2 .. 3) x (-5 .. 4): corners 10, -8, -15, 12: from -15 to 12.
    traits = (plain("a", "-2", "3"), plain("b", "-5", "4"))
    product = e.Arithmetic("*", e.Name("a"), e.Name("b"))
    for text, expected in (("12", ("keep", "hold")), ("12.1", ("hold",))):
        standard = on_condition(e.Compare("at least", product, number(text)), *traits)
        assert judge(standard, {}).possible == expected
    standard = on_condition(e.Compare("at least", product, e.Negative(number("15"))), *traits)
    assert judge(standard, {}).grade == "keep"


def test_a_value_beyond_a_million_is_any_number_at_all() -> None:
    # 1000 x 1001 = 1,001,000 leaves the limit: not recorded, so even "below 0" stays open; 1000 x 1000 does not.
    product = e.Arithmetic("*", e.Name("a"), number("1000"))
    standard = on_condition(e.Compare("below", product, number("0")), plain("a", "0", "2000"))
    assert judge(standard, {"a": 1001.0}).possible == ("keep", "hold")
    assert judge(standard, {"a": 1000.0}).grade == "hold"
    # The limit holds at each step, not only at the end: anything at all / 1000 is -1000 to 1000, never 1001 again.
    back = e.Arithmetic("/", product, number("1000"))
    standard = on_condition(e.Compare("at most", back, number("1000")), plain("a", "0", "2000"))
    assert judge(standard, {"a": 1001.0}).grade == "keep"


# ---- Conditions --------------------------------------------------------------------------------------------------


def test_how_many_hold_is_an_interval_while_some_are_open() -> None:
    # a is yes (1), b is no (0), c is not recorded (0 to 1): 1 to 2 of three.
    traits = tuple(m.Trait(name, m.YesNoKind()) for name in "abc")
    count = e.CountOf(tuple(e.Name(name) for name in "abc"))
    record = {"a": True, "b": False}
    for text, expected in (("1", ("keep",)), ("2", ("keep", "hold")), ("3", ("hold",))):
        assert judge(on_condition(e.Compare("at least", count, number(text)), *traits), record).possible == expected


def test_an_open_choice_between_two_numbers_is_anything_from_one_to_the_other() -> None:
    # (a if c otherwise b) with a = 2, b = 5 and c open: 2 to 5; with c it is 2, without it 5.
    traits = (plain("a", "0", "9"), plain("b", "0", "9"), m.Trait("c", m.YesNoKind()))
    either = e.Either(e.Name("a"), e.Name("c"), e.Name("b"))
    record = {"a": 2.0, "b": 5.0}
    for text, expected in (("2", ("keep",)), ("3", ("keep", "hold")), ("5", ("keep", "hold")), ("5.1", ("hold",))):
        assert judge(on_condition(e.Compare("at least", either, number(text)), *traits), record).possible == expected
    standard = on_condition(e.Compare("at least", either, number("3")), *traits)
    assert judge(standard, {**record, "c": True}).grade == "hold"
    assert judge(standard, {**record, "c": False}).grade == "keep"


def test_an_open_choice_between_two_scales_may_be_a_step_of_either() -> None:
    # thin or strong, never fair: "is fair" is a sure no, "at least fair" is open.
    scale = m.ScaleKind(("thin", "fair", "strong"))
    traits = (m.Trait("a", scale), m.Trait("b", scale), m.Trait("c", m.YesNoKind()))
    either = e.Either(e.Name("a"), e.Name("c"), e.Name("b"))
    record = {"a": "thin", "b": "strong"}
    assert judge(on_condition(e.Compare("is", either, e.Step("fair")), *traits), record).grade == "hold"
    at_least = e.Compare("at least", either, e.Step("fair"))
    assert judge(on_condition(at_least, *traits), record).possible == ("keep", "hold")


def test_steps_are_compared_by_every_pair_that_is_possible() -> None:
    # fair or strong: at least fair for sure, above fair perhaps, is one of (fair, strong) for sure, is fair perhaps.
    kiwa = m.Trait("kiwa", m.ScaleKind(("thin", "fair", "strong")))
    record = {"kiwa": frozenset({"fair", "strong"})}

    def possible(condition: e.Expression) -> tuple[str, ...]:
        return judge(on_condition(condition, kiwa), record).possible

    assert possible(e.Compare("at least", e.Name("kiwa"), e.Step("fair"))) == ("keep",)
    assert possible(e.Compare("above", e.Name("kiwa"), e.Step("fair"))) == ("keep", "hold")
    assert possible(e.IsOneOf(e.Name("kiwa"), (e.Step("fair"), e.Step("strong")))) == ("keep",)
    assert possible(e.Compare("is", e.Name("kiwa"), e.Step("fair"))) == ("keep", "hold")
    assert possible(e.Compare("is not", e.Name("kiwa"), e.Step("thin"))) == ("keep",)
    assert possible(e.Between(e.Name("kiwa"), e.Step("thin"), e.Step("fair"))) == ("keep", "hold")


def test_a_number_is_a_value_surely_only_when_all_four_ends_are_one() -> None:
    # 3 to 5 is 4 perhaps, is 6 never; 4 is 4.
    x = plain("x", "0", "9")
    for said, text, expected in (
        (("span", "3", "5"), "4", ("keep", "hold")),
        (("span", "3", "5"), "6", ("hold",)),
        ("4", "4", ("keep",)),
    ):
        standard = on_condition(e.Compare("is", e.Name("x"), number(text)), x)
        assert judge(standard, {"x": said}).possible == expected


def test_what_is_recorded_is_never_open() -> None:
    # A span is recorded; a hole is not; a term that is nothing but a trait asks of the trait.
    x = plain("x", "0", "9")
    standard = m.Standard(
        traits=(x,), terms=(m.Term("y", e.Name("x")),), grades=graded(e.IsRecorded(e.Name("y"), negated=True))
    )
    assert judge(standard, {}).grade == "keep"
    assert judge(standard, {"x": ("span", "1", "2")}).grade == "hold"


def test_places_that_were_not_written_down_may_all_be_touched_or_none() -> None:
    # Two places: not recorded, 0 to 2 of them; recorded as the tail alone, exactly 1.
    fins = m.Trait("fins", m.PlacesKind(("tail", "dorsal")))
    at_least_one = on_condition(e.Compare("at least", e.CountPlaces(e.Name("fins")), number("1")), fins)
    assert judge(at_least_one, {}).possible == ("keep", "hold")
    assert judge(at_least_one, {"fins": frozenset({"tail"})}).grade == "keep"
    dorsal = on_condition(e.Includes(e.Name("fins"), "dorsal"), fins)
    assert judge(dorsal, {}).possible == ("keep", "hold")
    assert judge(dorsal, {"fins": frozenset({"tail"})}).grade == "hold"


def test_a_label_that_was_not_written_down_may_be_any_text() -> None:
    line = m.Trait("line", m.LabelKind())
    standard = on_condition(e.IsOneOf(e.Name("line"), (e.Words("A"), e.Words("C")), negated=True), line)
    assert judge(standard, {}).possible == ("keep", "hold")
    assert judge(standard, {"line": "C"}).grade == "hold"
    assert judge(standard, {"line": "B"}).grade == "keep"


def test_is_within_has_both_ends_in_and_is_open_where_either_end_is() -> None:
    x = plain("x", "0", "9")

    def possible(read: object, distance: str, *, negated: bool = False) -> tuple[str, ...]:
        near = e.IsWithin(e.Name("x"), number(distance), number("4"), negated)
        return judge(on_condition(near, x), {"x": read}).possible

    assert possible("5", "1") == possible("3", "1") == ("keep",)
    assert possible("5.000001", "1") == possible("2.999999", "1") == ("hold",)
    assert possible(("span", "4.5", "5.5"), "1") == ("keep", "hold")
    assert possible(("span", "4.5", "5.5"), "2") == ("keep",)
    assert possible(("span", "7", "8"), "1", negated=True) == ("keep",)
