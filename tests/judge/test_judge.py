"""Points, sections and grades worked out by hand; the arithmetic stands beside each."""

from __future__ import annotations

from decimal import Decimal

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.by_hand import curve, ends, graded, plain, points, score_at_least, scored, section
from tests.judge.judge import judge

# ---- Points ------------------------------------------------------------------------------------------------------


def test_a_curve_is_exact_and_then_half_up_to_a_thousandth() -> None:
    # From 0 to 8 it gives 0 to 1: at 0.1, 0.0125 is 12.5 thousandths: 13. Falling from 1 at 0 to 0 at 8: at 0.1,
    # 0.9875 is 987.5: 988. From 0 to 3: at 1, a third, 333.33: 333.
    x = plain("x", "0", "9")
    rising = points("rising", "x", curve(("0", "0"), ("8", "1")))
    falling = points("falling", "x", curve(("0", "1"), ("8", "0")))
    third = points("third", "x", curve(("0", "0"), ("3", "1")))
    at_a_tenth = judge(scored((x,), rising, falling), {"x": "0.1"})
    assert ends(at_a_tenth, "rising") == (13, 13)
    assert ends(at_a_tenth, "falling") == (988, 988)
    assert ends(judge(scored((x,), third), {"x": "1"}), "third") == (333, 333)


def test_a_curve_over_a_span_looks_at_its_ends_and_the_knots_between() -> None:
    # Peak of 10 at 4 between 0 at 0 and 2 at 8: from 1 to 7 it gives 2.5 at 1, 10 at the peak, 4 at 7: 2.5 to 10.
    # Left of the first knot it is flat: -3 gives 0.
    peak = points("peak", "x", curve(("0", "0"), ("4", "10"), ("8", "2")))
    standard = scored((plain("x", "-5", "9"),), peak)
    assert ends(judge(standard, {"x": ("span", "1", "7")}), "peak") == (2500, 10000)
    assert ends(judge(standard, {"x": -3.0}), "peak") == (0, 0)
    assert ends(judge(standard, {"x": ("span", "8", "9")}), "peak") == (2000, 2000)


def test_a_table_gives_the_least_and_the_most_of_its_possible_steps() -> None:
    # thin 4, fair 0, anything else 10: thin or fair is 0 to 4, not recorded 0 to 10; 10 is the largest `gives`,
    # so thin is worth 10 x 4 / 10 = 4 points.
    kiwa = m.Trait("kiwa", m.ScaleKind(("thin", "fair", "strong")))
    table = m.Table((("thin", Decimal(4)), ("fair", Decimal(0))), anything_else=Decimal(10))
    standard = scored((kiwa,), points("edge", "kiwa", table))
    assert ends(judge(standard, {"kiwa": frozenset({"thin", "fair"})}), "edge") == (0, 4000)
    assert ends(judge(standard, {}), "edge") == (0, 10000)
    assert judge(standard, {"kiwa": "thin"}).score_low == 400


def test_a_section_rounds_its_exact_points_half_up_to_a_hundredth() -> None:
    # 1 of at most 8, worth 1: 0.125 is 12.5 hundredths: 13. With weights 1 and 2, points 1 of 8 and 3 of 8, worth 10:
    # 10 x (1 + 6) / (8 + 16) = 70/24 = 2.9166..: 292.
    traits = (plain("x", "0", "8"), plain("y", "0", "8"))
    line = curve(("0", "0"), ("8", "8"))
    assert judge(scored(traits, points("a", "x", line), worth="1"), {"x": 1.0}).score_low == 13
    two = scored(traits, points("a", "x", line), points("b", "y", line, "2"))
    assert judge(two, {"x": 1.0, "y": 3.0}).score_low == 292


def test_a_section_never_leaves_nothing_and_its_worth() -> None:
    # 10 x 9/10 + 4 = 13 is held at 10; 10 x 1/10 - 4 = -3 is held at 0. With both at once, 9 + 4 - 4 = 9: the sum is
    # held, not each step on the way.
    traits = (plain("x", "0", "10"), m.Trait("more", m.YesNoKind()), m.Trait("less", m.YesNoKind()))
    line = points("a", "x", curve(("0", "0"), ("10", "10")))
    bonus = m.Bonus("b", Decimal(4), e.Name("more"))
    penalty = m.Penalty("c", Decimal(4), e.Name("less"))
    standard = scored(traits, line, bonus, penalty)
    assert judge(standard, {"x": 9.0, "more": True, "less": False}).sections == {"body": (1000, 1000)}
    assert judge(standard, {"x": 1.0, "more": False, "less": True}).sections == {"body": (0, 0)}
    assert judge(standard, {"x": 9.0, "more": True, "less": True}).sections == {"body": (900, 900)}
    # Both open: 5 - 4 = 1 to 5 + 4 = 9.
    assert judge(standard, {"x": 5.0}).sections == {"body": (100, 900)}


def test_a_score_is_the_sum_of_the_rounded_sections() -> None:
    # Each section is 0.125, shown as 0.13: the score is 0.26, not 0.25; what is shown is what is compared.
    line = points("a", "x", curve(("0", "0"), ("8", "8")))
    standard = m.Standard(
        traits=(plain("x", "0", "8"),),
        sections=(section("1", line), section("1", line, name="colour")),
        grades=graded(score_at_least("0.26")),
    )
    verdict = judge(standard, {"x": 1.0})
    assert (verdict.score_low, verdict.grade) == (26, "keep")


# ---- Grades ------------------------------------------------------------------------------------------------------

BENT, SHARP, LARGE = (e.Name(name) for name in ("bent", "sharp", "large"))
FISH = tuple(m.Trait(name, m.YesNoKind()) for name in ("bent", "sharp", "large"))


def capped(*faults: m.Fault, lifts: tuple[m.Lift, ...] = ()) -> m.Standard:
    """keep if large, hold if sharp, sell if not bent, cull otherwise; then the lifts, then the faults."""
    return m.Standard(traits=FISH, faults=faults, lifts=lifts, grades=graded(LARGE, SHARP, e.Not(BENT)))


def test_a_better_grade_that_is_sure_shuts_the_rest_out() -> None:
    standard = capped()
    assert judge(standard, {"large": True}).possible == ("keep",)
    assert judge(standard, {"large": False}).possible == ("hold", "sell", "cull")
    assert judge(standard, {"sharp": True}).possible == ("keep", "hold")
    assert judge(standard, {"sharp": False, "bent": True}).possible == ("keep", "cull")


def test_a_fault_has_the_last_word_over_a_lift() -> None:
    # By points hold; the lift raises it to keep; the fault caps that at sell. Both are said to bite.
    fault = m.Fault("spine", BENT, "sell")
    lift = m.Lift("quality", SHARP, "keep")
    verdict = judge(capped(fault, lifts=(lift,)), {"large": False, "bent": True, "sharp": True})
    assert (verdict.grade, verdict.faults, verdict.lifts) == ("sell", ("spine",), ("quality",))


def test_of_two_faults_the_lower_cap_holds_and_of_two_lifts_the_higher_floor() -> None:
    faults = (m.Fault("a", BENT, "sell"), m.Fault("b", BENT, "hold"))
    assert judge(capped(*faults), {"large": True, "bent": True}).grade == "sell"
    lifts = (m.Lift("a", BENT, "hold"), m.Lift("b", BENT, "sell"))
    assert judge(capped(lifts=lifts), {"large": False, "sharp": False, "bent": True}).grade == "hold"


def test_an_open_fault_adds_its_outcome_and_keeps_the_other() -> None:
    # keep by points; capped at cull if bent, which nobody wrote down: keep or cull, and nothing between.
    verdict = judge(capped(m.Fault("spine", BENT, "cull")), {"large": True})
    assert (verdict.possible, verdict.faults, verdict.open_faults) == (("keep", "cull"), (), ("spine",))


def test_a_fault_is_held_back_only_where_its_exception_is_sure() -> None:
    standard = capped(m.Fault("spine", BENT, "cull", excepted=SHARP))
    assert judge(standard, {"large": True, "bent": True, "sharp": True}).possible == ("keep",)
    assert judge(standard, {"large": True, "bent": True, "sharp": False}).possible == ("cull",)
    assert judge(standard, {"large": True, "bent": True}).possible == ("keep", "cull")


def test_a_fault_read_as_a_condition_is_after_its_exception() -> None:
    first = m.Fault("spine", BENT, "cull", excepted=SHARP)
    second = m.Fault("shape", e.FaultBit("spine"), "sell")
    verdict = judge(capped(second, first), {"large": True, "bent": True, "sharp": True})
    assert (verdict.grade, verdict.faults) == ("keep", ())
    assert judge(capped(second, first), {"large": True, "bent": True, "sharp": False}).faults == ("shape", "spine")
