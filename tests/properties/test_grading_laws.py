"""What holds for every standard and every fish: more bonus is never worse, a fault never helps, order does not matter."""

from hypothesis import given, settings
from hypothesis import strategies as st

import koirules
from koirules.testing import registry_with

BOX = registry_with()
HEAD = ['standard "Teal Yard house standard" edition 2026-1 variety kohaku']
ANYWHERE = [
    "setting least_white = 3 % from 1 % to 6 %",
    "trait belly_mark as scale none < faint < strong, less is better",
    "term tail_closed means odome at least least_white",
    "term plump means girth_ratio at least 0.26 or belly_mark is strong",
    "fault bent if spine is bent: no better than cull",
    "fault specks if shimi_count at least 1 except shimi_size below 0.5 mm: no better than sell",
    "fault open_tail if not tail_closed and not fault specks: no better than hold",
    "lift quality if section body at least 30 and not fault bent: no worse than sell",
    "lift edge if kiwa at least sharp and score above 50: no worse than hold",
]
BODY = [
    "section body worth 40",
    "points outline weight 2 by girth_ratio: 0.18 gives 0, 0.24 gives 10, 0.32 gives 4",
    "points stem by tail_stem: thin gives 0, fair gives 6.5, strong gives 10",
    "bonus straight 1.5 if spine is straight and not plump",
    "penalty marked 4 if belly_mark above none",
]
LOOK = [
    "section look worth 60",
    "points cover weight 3 by hi_cover: 20 % gives 0, 45 % gives 10, 70 % gives 4",
    "points edge by kiwa: blurred gives 0, fair gives 3, sharp gives 7, razor gives 10",
    "bonus lips 2 if kuchibeni is yes",
    "penalty small_things 3 if count of (tail_closed, count of hi_on_fins at least 1, shimi_count above 2) at least 2",
]
GRADES = [
    "grade keep if score at least 75 and section body at least 25",
    "grade hold if score at least 50",
    "grade sell if score at least 30 or kuchibeni is yes",
    "grade cull otherwise",
]
NAMES = [line.split()[1] for line in GRADES]
CONDITIONS = [
    "spine is bent",
    "spine is not straight",
    "kiwa at least sharp",
    "not (tail_closed or plump)",
    "shimi_count between 1 and 3",
    "hi_on_fins includes tail",
    "hi_cover above 30 % + odome",
    "length above 12 cm",
    "weight is recorded",
    "kuchibeni is yes and weight is not recorded",
]
VALUES = {
    "girth_ratio": st.integers(10, 40).map(lambda n: n / 100),
    "tail_stem": st.sampled_from(["thin", "fair", "strong"]),
    "spine": st.sampled_from(["bent", "slight", "straight"]),
    "belly_mark": st.sampled_from(["none", "faint", "strong"]),
    "hi_cover": st.integers(0, 200).map(lambda n: f"{n / 2} %"),
    "odome": st.integers(0, 10).map(lambda n: f"{n} %"),
    "kiwa": st.sampled_from(["blurred", "fair", "sharp", "razor"]),
    "kuchibeni": st.booleans(),
    "shimi_count": st.integers(0, 5),
    "shimi_size": st.integers(0, 20).map(lambda n: n / 10),
    "hi_on_fins": st.sets(st.sampled_from(["left_pectoral", "dorsal", "tail"])),
    "length": st.integers(5, 20),
    "weight": st.integers(20, 200),
}
whole_records = st.fixed_dictionaries(VALUES)
records = st.fixed_dictionaries({}, optional=VALUES)


def standard_of(*parts):
    return koirules.read_standard("\n".join(line for part in parts for line in part), registry=BOX)


BASE = standard_of(HEAD, ANYWHERE, BODY, LOOK, GRADES)


def ends(result):
    """The best and the worst grade still possible, 0 for the best of all."""
    places = [NAMES.index(grade) for grade in result.possible]
    return min(places), max(places)


def what_came(result):
    sections = {name: (section.low, section.high) for name, section in result.sections.items()}
    return result.possible, result.score_low, result.score_high, sections, set(result.faults), set(result.lifts)


amounts = st.integers(0, 2_000).map(lambda n: f"{n / 100:.2f}")


@settings(deadline=None)
@given(records, st.sampled_from(CONDITIONS), amounts)
def test_a_further_bonus_never_lowers_a_score(record, condition, amount):
    before = BASE.grade(record)
    after = standard_of(HEAD, ANYWHERE, BODY, [f"bonus further {amount} if {condition}"], LOOK, GRADES).grade(record)
    assert after.score_low >= before.score_low
    assert after.score_high >= before.score_high


@settings(deadline=None)
@given(records, st.sampled_from(CONDITIONS), amounts)
def test_a_further_penalty_never_raises_a_score(record, condition, amount):
    before = BASE.grade(record)
    after = standard_of(HEAD, ANYWHERE, BODY, LOOK, [f"penalty further {amount} if {condition}"], GRADES).grade(record)
    assert after.score_low <= before.score_low
    assert after.score_high <= before.score_high


@settings(deadline=None)
@given(records, st.sampled_from(CONDITIONS), st.sampled_from(CONDITIONS), st.sampled_from(NAMES))
def test_a_further_fault_never_raises_a_grade(record, condition, exception, grade):
    fault = f"fault further if {condition} except {exception}: no better than {grade}"
    (best, worst), after = (
        ends(BASE.grade(record)),
        standard_of(HEAD, ANYWHERE, [fault], BODY, LOOK, GRADES).grade(record),
    )
    assert ends(after)[0] >= best
    assert ends(after)[1] >= worst


@settings(deadline=None)
@given(records, st.sampled_from(CONDITIONS), st.sampled_from(NAMES))
def test_a_further_lift_never_lowers_a_grade(record, condition, grade):
    lift = f"lift further if {condition}: no worse than {grade}"
    (best, worst), after = (
        ends(BASE.grade(record)),
        standard_of(HEAD, ANYWHERE, [lift], BODY, LOOK, GRADES).grade(record),
    )
    assert ends(after)[0] <= best
    assert ends(after)[1] <= worst


@settings(deadline=None)
@given(records, st.permutations(ANYWHERE), st.permutations(BODY[1:]), st.permutations(LOOK[1:]), st.booleans())
def test_the_order_of_statements_changes_nothing(record, anywhere, body, look, turned):
    sections = [[BODY[0], *body], [LOOK[0], *look]]
    shuffled = standard_of(HEAD, anywhere, *(reversed(sections) if turned else sections), GRADES)
    also = standard_of(HEAD, *sections, GRADES, anywhere)
    assert what_came(shuffled.grade(record)) == what_came(BASE.grade(record)) == what_came(also.grade(record))


@settings(max_examples=300, deadline=None)
@given(whole_records, st.sets(st.sampled_from(sorted(VALUES))))
def test_the_true_grade_is_among_those_named_whatever_is_missing(whole, missing):
    true = BASE.grade(whole)
    told = BASE.grade({name: value for name, value in whole.items() if name not in missing})
    assert true.grade is not None
    assert true.grade in told.possible
    assert told.score_low <= true.score <= told.score_high
    assert set(told.faults) <= set(true.faults)
    assert set(told.lifts) <= set(true.lifts)
    for name, section in told.sections.items():
        assert section.low <= true.sections[name].low <= section.high


@settings(max_examples=200, deadline=None)
@given(whole_records, st.sets(st.sampled_from(sorted(VALUES))), st.sampled_from(sorted(VALUES)))
def test_writing_one_more_trait_down_never_opens_more(whole, missing, found):
    less = BASE.grade({name: value for name, value in whole.items() if name not in missing})
    more = BASE.grade({name: value for name, value in whole.items() if name not in missing - {found}})
    assert set(more.possible) <= set(less.possible)
    assert less.score_low <= more.score_low <= more.score_high <= less.score_high


@settings(max_examples=200, deadline=None)
@given(whole_records, st.integers(0, 60), st.integers(0, 60), st.sampled_from(["fair or sharp", "razor or blurred"]))
def test_the_true_grade_is_among_those_of_a_record_that_says_what_may_be(whole, below, above, edges):
    cover = float(whole["hi_cover"].split()[0])
    low, high = max(0, cover - below), min(100, cover + above)
    unsure = whole | {"hi_cover": f"{low} % to {high} %", "kiwa": edges}
    told = BASE.grade(unsure)
    for edge in edges.split(" or "):
        true = BASE.grade(whole | {"kiwa": edge})
        assert true.grade in told.possible
        assert told.score_low <= true.score <= told.score_high
