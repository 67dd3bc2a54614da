"""Batches worked out by hand; the arithmetic stands beside each."""

from __future__ import annotations

from decimal import Decimal

import pytest

from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.batch import BatchVerdict, Looked, judge_batch
from tests.judge.by_hand import graded, number, plain
from tests.judge.rounds import RefusedError

X = plain("x", "0", "10")
POND = m.Trait("pond", m.LabelKind())
RED = m.Trait("red", m.YesNoKind())
KIWA = m.Trait("kiwa", m.ScaleKind(("thin", "fair", "strong")))
TRAITS = (X, POND, RED, KIWA)
NAME = e.Name("x")


def over(*amounts: object) -> list[Looked]:
    return [Looked({} if amount is None else {"x": amount}) for amount in amounts]


def kept(verdict: BatchVerdict, place: int = 0) -> list[int]:
    return sorted(verdict.rounds[place].kept)


def keeps(condition: e.Expression, fish: list[Looked]) -> list[int]:
    """Which fish a round keeps for this."""
    standard = m.Standard(traits=TRAITS, rounds=(m.Round("r", keep=condition),))
    return kept(judge_batch(standard, fish))


def equal(figure: e.Expression, text: str, unit: str = "") -> e.Expression:
    return e.Compare("is", figure, number(text, unit))


# ---- Figures -----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("kind", "percent", "text"),
    [
        ("lowest", None, "1"),
        ("highest", None, "6"),
        ("mean", None, "3"),  # (1 + 1 + 4 + 6) / 4
        ("median", None, "2.5"),  # half way from 1 to 4
        ("spread", None, "2.12132"),  # 1 1 4 6 lie 2 2 1 3 from 3: the root of (4 + 4 + 1 + 9) / 4 = 4.5 is 2.1213203
        ("percentile", "25", "1"),  # place 1 + 3 x 0.25 = 1.75 of 1 1 4 6: between 1 and 1
        ("percentile", "50", "2.5"),
        ("percentile", "90", "5.4"),  # place 1 + 3 x 0.9 = 3.7: 4 + 0.7 x 2
        ("percentile", "12.5", "1"),
        ("percentile", "100", "6"),
    ],
)
def test_figures_of_numbers(kind: str, percent: str | None, text: str) -> None:
    # 2 to 3 and the fish without x count in none of them, and yet the figure is theirs too.
    fish = over(4.0, 1.0, None, 6.0, ("span", "2", "3"), 1.0)
    figure = e.Figure(kind, NAME, None if percent is None else Decimal(percent))
    assert keeps(equal(figure, text), fish) == [0, 1, 2, 3, 4, 5]


def test_a_figure_is_a_whole_millionth_half_up() -> None:
    # (1 + 1 + 2) / 3 = 1.3333333: 1.333333. (0 + 0.000001) / 2 is half a millionth: one.
    mean = e.Figure("mean", NAME)
    assert keeps(equal(mean, "1.333333"), over(1.0, 1.0, 2.0)) == [0, 1, 2]
    assert keeps(equal(mean, "0.000001"), over(0.0, "0.000001")) == [0, 1]


def test_a_standing_is_the_share_below_and_half_the_share_equal() -> None:
    # Of 1, 1, 4, 6: 4 has two of four below and itself equal, (2 + 1/2) / 4 = 62.5 %; each 1 has (0 + 1) / 4 = 25 %.
    standing = e.Figure("standing", NAME)
    fish = over(4.0, 1.0, None, 6.0, 1.0)
    assert keeps(equal(standing, "62.5", "%"), fish) == [0]
    assert keeps(equal(standing, "25", "%"), fish) == [1, 4]
    assert keeps(e.IsRecorded(standing, negated=True), fish) == [2]


def test_a_share_is_of_those_for_whom_it_is_not_open() -> None:
    # Two of three are red, of the fourth nobody knows: 66.666667 %.
    fish = [Looked({"red": red}) for red in (True, True, False)] + [Looked({})]
    assert keeps(equal(e.Figure("share", e.Name("red")), "66.666667", "%"), fish) == [0, 1, 2, 3]


def test_a_figure_among_the_same_leaves_out_who_has_no_group() -> None:
    fish = [
        Looked({"x": x} | ({"pond": pond} if pond else {})) for x, pond in ((1, "a"), (3, "a"), (9, "b"), (5, None))
    ]
    among = e.Figure("mean", NAME, same=("pond",))
    assert keeps(equal(among, "2"), fish) == [0, 1]
    assert keeps(e.IsRecorded(among), fish) == [0, 1, 2]
    assert keeps(e.IsRecorded(e.Figure("mean", NAME, same=("pond",), at_least=2)), fish) == [0, 1]


def test_a_figure_that_is_not_recorded_is_any_value_of_its_range() -> None:
    # x is 0 to 10, so the median of nobody is at most 10 for sure, and at most 9 perhaps.
    median = e.Figure("median", NAME)
    for text, possible in (("10", ("keep",)), ("9", ("keep", "hold"))):
        standard = m.Standard(traits=TRAITS, grades=graded(e.Compare("at most", median, number(text))))
        assert judge_batch(standard, over(None, None)).possible == (possible, possible)


def test_inside_a_round_a_figure_is_of_those_still_in_and_what_was_graded_stays() -> None:
    # The mean of 1, 3, 8 is 4, so 8 alone is graded keep. The second round looks at 3 and 8: their mean is 5.5. The
    # grade of 3 is what it was.
    above = e.Compare("above", NAME, e.Figure("mean", NAME))
    first = m.Round("first", keep=e.Compare("above", NAME, number("2")))
    second = m.Round("second", keep=equal(e.Figure("mean", NAME), "5.5"))
    third = m.Round("third", keep=e.Compare("is", e.GradeNow(), e.Step("hold")))
    standard = m.Standard(traits=TRAITS, grades=graded(above), rounds=(first, second, third))
    verdict = judge_batch(standard, over(1.0, 3.0, 8.0))
    assert verdict.possible == (("hold",), ("hold",), ("keep",))
    assert [kept(verdict, place) for place in range(3)] == [[1, 2], [1, 2], [1]]


def test_an_alert_is_shown_where_it_may_hold() -> None:
    share = e.Figure("share", e.Name("red"))
    alerts = tuple(m.Alert(f"over_{t}", e.Compare("above", share, number(t, "%"))) for t in ("40", "60"))
    standard = m.Standard(traits=TRAITS, alerts=alerts)
    assert judge_batch(standard, [Looked({"red": True}), Looked({"red": False})]).alerts == {"over_40": True}
    assert judge_batch(standard, [Looked({})]).alerts == {"over_40": False, "over_60": False}


def test_the_look_before_is_read_as_it_was_written() -> None:
    before = e.Earlier(NAME)
    fish = [Looked({"x": 3}, {"x": 1}), Looked({"x": 3}, {}), Looked({"x": 3}), Looked({}, {"x": ("span", "0", "10")})]
    assert keeps(e.Compare("above", NAME, before), fish) == [0]
    assert keeps(e.IsRecorded(before), fish) == [0, 3]


# ---- Picks -------------------------------------------------------------------------------------------------------


def picked(fish: list[Looked], *quotas: m.Quota, many: int | None = 2, ties: str = "", word: str = "highest") -> object:
    of_round = m.Round("r", many=many, keys=(m.Key(word, NAME),), quotas=quotas, ties=ties)
    (verdict,) = judge_batch(m.Standard(traits=TRAITS, rounds=(of_round,)), fish).rounds
    return sorted(verdict.kept), sorted(verdict.tied)


def test_a_pick_goes_by_the_end_that_is_sure() -> None:
    # Under highest 3 to 9 counts as 3 and a blank as 0; under lowest as 9 and 10.
    fish = over(5.0, ("span", "3", "9"), 4.0, None)
    assert picked(fish) == ([0, 2], [])
    assert picked(fish, word="lowest") == ([0, 2], [])


def test_a_tie_at_the_cut_is_left_to_a_person() -> None:
    fish = over(5.0, 4.0, 4.0, 3.0)
    assert picked(fish) == ([0], [1, 2])
    assert picked(fish, many=3) == ([0, 1, 2], [])
    assert picked(fish, ties="all in") == ([0, 1, 2], [])
    assert picked(fish, ties="by first recorded") == ([0, 1], [])


def test_a_quota_passes_over_and_counts_whoever_is_no_sure_no() -> None:
    # Three may be picked, one of them red: the third may be red, so it counts and is passed over for the fourth.
    fish = [Looked({"x": 10 - n} | red) for n, red in enumerate(({"red": True}, {"red": False}, {}, {"red": False}))]
    assert picked(fish, m.Quota(1, e.Name("red")), many=3) == ([0, 1, 3], [])


def test_what_is_not_sure_is_one_group_of_a_quota() -> None:
    ponds = ({"pond": "a"}, {}, {}, {"pond": "a"}, {"pond": "b"})
    fish = [Looked({"x": 10 - n} | pond) for n, pond in enumerate(ponds)]
    assert picked(fish, m.Quota(1, None, ("pond",)), many=4) == ([0, 1, 4], [])


def test_two_that_are_equal_compete_for_the_last_place_of_a_quota_and_hold_it() -> None:
    # Two equal fish of pond a for one place of it: one of them is in, so a third of pond a is passed over, and of the
    # three places one is left for b.
    ponds = ("a", "a", "b", "a", "b", "b")
    amounts = (9, 9, 9, 8, 7, 6)
    fish = [Looked({"x": x, "pond": pond}) for x, pond in zip(amounts, ponds, strict=True)]
    assert picked(fish, m.Quota(1, None, ("pond",)), many=3) == ([2], [0, 1])
    assert picked(fish, m.Quota(2, None, ("pond",)), many=4) == ([0, 1, 2, 4], [])


def test_who_is_tied_is_in_no_later_round_until_a_person_keeps_it() -> None:
    first = m.Round("first", many=1, keys=(m.Key("highest", NAME),))
    rounds = (first, m.Round("second", pool="all"), m.Round("third"))
    standard = m.Standard(traits=TRAITS, rounds=rounds)
    verdict = judge_batch(standard, over(5.0, 5.0, 1.0))
    assert [kept(verdict, place) for place in range(3)] == [[], [2], [2]]
    rounds = (first, m.Round("second", pool="all", rescues=1), m.Round("third"))
    standard = m.Standard(traits=TRAITS, rounds=rounds)
    verdict = judge_batch(standard, over(5.0, 5.0, 1.0), kept_by_hand={"second": frozenset({0})})
    assert [kept(verdict, place) for place in range(3)] == [[], [0, 2], [0, 2]]


def test_a_fish_that_is_rescued_takes_no_place() -> None:
    first = m.Round("first", many=1, keys=(m.Key("highest", NAME),), rescues=1)
    standard = m.Standard(traits=TRAITS, rounds=(first,))
    verdict = judge_batch(standard, over(5.0, 4.0, 3.0), kept_by_hand={"first": frozenset({2})})
    assert kept(verdict) == [0, 2]


def test_keeping_what_the_rules_keep_makes_no_room_for_another() -> None:
    first = m.Round("first", many=1, keys=(m.Key("highest", NAME),))
    standard = m.Standard(traits=TRAITS, rounds=(first,))
    verdict = judge_batch(standard, over(5.0, 4.0, 3.0), kept_by_hand={"first": frozenset({0})})
    assert kept(verdict) == [0]


def settled(chosen: set[int], many: int = 2, rescues: int = 0) -> tuple[list[int], list[int]]:
    """Kept and tied among 9, 5, 5, 5, 1 when a person chose some."""
    first = m.Round("first", many=many, keys=(m.Key("highest", NAME),), rescues=rescues)
    standard = m.Standard(traits=TRAITS, rounds=(first,))
    verdict = judge_batch(standard, over(9.0, 5.0, 5.0, 5.0, 1.0), kept_by_hand={"first": frozenset(chosen)})
    return kept(verdict), sorted(verdict.rounds[0].tied)


def test_a_decision_on_tied_fish_settles_the_tie() -> None:
    # Section 6: the chosen take the places among them, the others of the tie leave, and no rescue is used up.
    assert settled({2}) == ([0, 2], [])
    assert settled({1, 3}, many=3) == ([0, 1, 3], [])
    # A third one has no place left and is a rescue.
    assert settled({1, 2, 3}, many=3, rescues=1) == ([0, 1, 2, 3], [])


@pytest.mark.parametrize(("chosen", "many"), [({2}, 3), ({1, 2}, 2), ({4}, 2)])
def test_a_decision_that_does_not_come_out_even_is_refused(chosen: set[int], many: int) -> None:
    with pytest.raises(RefusedError):
        settled(chosen, many)


def test_whom_a_round_looks_at() -> None:
    above = [
        m.Round("a", keep=e.Compare("above", NAME, number("2"))),
        m.Round("b", many=1, keys=(m.Key("highest", NAME),)),
    ]
    pools = [m.Round("c"), m.Round("d", "kept by", "a"), m.Round("e", "passed over by", "a"), m.Round("f", "all")]
    standard = m.Standard(traits=TRAITS, rounds=(*above, *pools))
    verdict = judge_batch(standard, over(1.0, 3.0, 5.0))
    assert [kept(verdict, place) for place in range(6)] == [[1, 2], [2], [2], [1, 2], [0], [0, 1, 2]]


def test_a_grade_by_hand_counts_in_rounds_and_alerts() -> None:
    keep = e.Compare("is", e.GradeNow(), e.Step("keep"))
    alert = m.Alert("all", e.Compare("is", e.Figure("share", keep), number("100", "%")))
    grades = graded(e.Compare("above", NAME, number("2")))
    standard = m.Standard(traits=TRAITS, grades=grades, alerts=(alert,), rounds=(m.Round("r", keep=keep),))
    verdict = judge_batch(standard, over(1.0, 3.0), grades_by_hand={0: "keep"})
    assert verdict.fish[0].possible == ("hold",)
    assert (verdict.alerts, kept(verdict)) == ({"all": True}, [0, 1])
