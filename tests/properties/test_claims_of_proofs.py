"""Whatever is proved of standards with grown traits, derived ones and maps holds of drawn records, graded as users grade."""

from __future__ import annotations

from decimal import Decimal
from functools import cache
from typing import Any

import pytest
from attrs import frozen
from hypothesis import HealthCheck, assume, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.analysis.proofs.every import proofs
from koirules.analysis.proofs.prover import Prover
from koirules.analysis.proofs.statements import Outcome, Statement
from koirules.analysis.proofs.two_fish import is_better
from koirules.plugins import registry_with
from koirules.results.record import Record
from koirules.vocabulary.readings import Span, is_sure

BOX = registry_with()
HEAD = 'standard "Claims (an invented house)" edition 1 variety kohaku\n'
GRADES = "grade keep if score at least 50\ngrade hold if score at least 30\ngrade cull otherwise\n"

STANDARDS = (
    """section body worth 60
points stout by girth_ratio grown to 65 cm: 0.3 gives 0, 0.45 gives 10
points long by length grown to 40 cm: 40 cm gives 0, 80 cm gives 10
points heavy by weight grown to 50 cm: 500 g gives 0, 3 kg gives 10
section pattern worth 40
points cover by hi_cover grown to 65 cm: 10 % gives 0, 45 % gives 10, 80 % gives 2
bonus mapped 5 if hi_patches is recorded
bonus girthed 5 if girth is recorded and girth above 20 cm
fault slim if girth_ratio grown to 60 cm below 0.2 and girth_ratio above 0.3: no better than cull
fault gap if odome_gap grown to 60 cm below 1 cm: no better than hold
fault never if length grown to 60 cm above 70 cm and length below 65 cm: no better than cull
fault stays if girth_ratio grown to 40 cm above 0.35 and length above 45 cm and girth_ratio below 0.34: no better than cull
fault always if length grown to 60 cm above 70 cm or length below 71 cm: no better than keep
""",
    """section body worth 100
points slim by girth_ratio: 0.2 gives 0, 0.4 gives 10
points long by length: 10 cm gives 0, 40 cm gives 10
points white by shiroji_lightness: 60 gives 0, 90 gives 10
bonus read 3 if shiroji_readings is recorded and hi_readings is not recorded
fault thin if condition below 0.8 except length is not recorded: no better than cull
fault steps if steps grown to 60 cm is nidan: no better than hold
penalty unknown 3 if condition is not recorded and girth_ratio above 0.3
penalty both 3 if girth_ratio above 0.5 and girth_ratio below 0.45
""",
    """section body worth 100
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
points ahead by length grown to 60 cm: 60 cm gives 0, 80 cm gives 10
points slim by fineness grown to 55 cm: 2 gives 0, 4 gives 10
bonus mapped 5 if hi_patches is recorded and length is recorded
fault wide if girth_ratio grown to 60 cm above 0.3: no better than cull
fault grows if girth_ratio grown to 60 cm below girth_ratio and length is recorded: no better than cull
""",
)

MAPS = (
    "none",
    "8 to 26 left 60 right 55; 40 to 70 both 80",
    "5 to 90 both 150",
    "8 to 40 left 80 right 70; 60 to 92 both 75 thin",
    "10 to 30 left 20 to 60 sashi 2; 50 to 99 right 140",
)


def numbers(low: float, high: float, *telling: float) -> st.SearchStrategy[float]:
    """Numbers as people write them, often those at which something turns."""
    written = st.floats(low, high).map(lambda x: min(max(round(x, 3), low), high))
    return st.sampled_from(telling) | written if telling else written


READINGS: dict[str, st.SearchStrategy[object]] = {
    "length": numbers(0.5, 125, 40, 60, 65, 71, 59.999, 64.999),
    "standard_length": numbers(0.4, 105, 30, 50),
    "girth": numbers(0.3, 110, 20, 20.001),
    "depth": numbers(0.1, 40),
    "width": numbers(0.1, 30),
    "weight": numbers(0.01, 45_000, 500, 3000),
    "girth_ratio": numbers(0.1, 1.2, 0.2, 0.3, 0.34, 0.35, 0.45),
    "fineness": numbers(1, 12, 2, 4),
    "condition": numbers(0.1, 6, 0.8, 0.799),
    "hi_patches": st.sampled_from(MAPS),
    # With their unit: a bare 1 would be refused, since it may stand for all of it or for one of a hundred.
    "hi_cover": numbers(0, 100, 10, 45).map("{:.6f} %".format),
    "odome": numbers(0, 100).map("{:.6f} %".format),
    "steps": st.sampled_from(("ippon", "nidan", "sandan")),
    "tail_stem": st.sampled_from(("thin", "fair", "strong")),
    "shiroji_lightness": numbers(0, 100, 60, 90),
    "shiroji_readings": st.sampled_from(("85 1 4", "92 0 2; 90 1 3")),
    "hi_readings": st.sampled_from(("45 42 38", "50 40 30")),
}


@frozen
class Proved:
    """A standard with what was proved of it."""

    made: Any
    prover: Prover
    whole: Prover
    statements: tuple[Statement, ...]


@cache
def proved(text: str) -> Proved:
    made = koirules.read_standard(HEAD + text + GRADES, registry=BOX)
    grader = made.grader
    return Proved(made, Prover.of(grader), Prover.of(grader, whole=True), proofs(grader).statements)


def without(text: str, name: str) -> Any:
    lines = [line for line in (HEAD + text + GRADES).splitlines() if not line.startswith(f"fault {name} ")]
    return koirules.read_standard("\n".join(lines), registry=BOX)


@st.composite
def written(draw: st.DrawFn) -> dict[str, object]:
    """What somebody wrote of a fish: a few traits are left out, and follow from others or do not."""
    left_out = draw(st.sets(st.sampled_from(sorted(READINGS)), max_size=8))
    return {name: draw(readings) for name, readings in READINGS.items() if name not in left_out}


def known(of: Proved, prover: Prover, record: Record) -> bool:
    """Whether every trait that the rules read is known as one value, but for those that may be missing."""
    readings = of.made.grader.measured(record).readings
    return all(
        is_sure(of.made.rules.traits[name].kind, readings[name])
        if name in readings
        else name in prover.standing.fish.optional
        for name in prover.values
    )


def contradicts(statement: Statement, text: str, of: Proved, record: Record) -> bool:
    """Whether a fish, as it is graded, shows that something proved does not hold."""
    result = of.made.grader.grade(record)
    kind, words, name = statement.kind, statement.words, statement.about.partition(" ")[2]
    if kind == "grade" and words.startswith("no fish can get"):
        return name in result.possible
    if kind == "score":
        return result.score_low > by_hundredths(of, "highest") or result.score_high < by_hundredths(of, "lowest")
    readings = of.made.grader.measured(record).readings
    trace = of.made.grader.trace(readings)
    rules = of.made.rules
    if kind == "limit":
        states = trace.limits[[limit.name for limit in rules.limits].index(name)]
        if words.endswith("can never bite"):
            return bool(states[4])
        if words.endswith("always bites"):
            return not states[5]
        return bool(without(text, name).grader.grade(record).possible != result.possible)
    if kind == "extra":
        ends = trace.extras[[extra.name for extra in rules.extras].index(name)]
        return bool(ends[0]) if "never" in words else not ends[1]
    return False


def by_hundredths(of: Proved, word: str) -> Decimal:
    """Beyond which score no fish is said to be."""
    statement = next(one for one in of.statements if one.kind == "score" and one.about == word)
    if statement.outcome is Outcome.FOUND:
        return Decimal(statement.fish[0].score[0 if word == "highest" else 1]).scaleb(-2)
    side = "none above " if word == "highest" else "none below "
    return Decimal(statement.words.split(side)[1].split(";")[0])


slowly = settings(max_examples=120, deadline=None, suppress_health_check=list(HealthCheck))


@pytest.mark.parametrize("text", STANDARDS, ids=("grown", "derived", "through growth"))
@slowly
@given(mapping=written())
def test_what_is_proved_is_contradicted_by_no_record(text: str, mapping: dict[str, object]) -> None:
    of = proved(text)
    record = of.made.reader.read(mapping, "K1")
    assume(known(of, of.prover, record))
    note(repr(of.made.grader.measured(record).readings))
    told = [one for one in of.statements if one.outcome is Outcome.PROVED or one.kind == "score"]
    assert [one.words for one in told if contradicts(one, text, of, record)] == []


@pytest.mark.parametrize("text", STANDARDS, ids=("grown", "derived", "through growth"))
@slowly
@given(mapping=written(), data=st.data())
def test_better_that_is_proved_scores_worse_in_no_record(
    text: str, mapping: dict[str, object], data: st.DataObject
) -> None:
    of = proved(text)
    better = [one.about for one in of.statements if one.kind == "better" and one.outcome is Outcome.PROVED]
    name = data.draw(st.sampled_from(better))
    # Some have nothing written that can follow, some everything.
    readings = of.made.grader.measured(of.made.reader.read(mapping, "K1")).readings
    assume(known(of, of.whole, Record("K1", 0, readings)))
    trait = of.made.rules.traits[name]
    other = of.made.reader.read({name: data.draw(READINGS[name])}, "K1").readings[name]
    pair = [readings, {**readings, name: other}]
    if is_better(trait, other, readings[name]):
        pair.reverse()
    note(repr(pair))
    worse, best = (of.made.grader.grade(Record("K1", 0, one)) for one in pair)
    assert best.score_low >= worse.score_low
    assert best.score_high >= worse.score_high
    order = of.made.grader.grades
    assert not (order.index(best.possible[0]) > order.index(worse.possible[-1]))


@pytest.mark.parametrize("text", STANDARDS, ids=("grown", "derived", "through growth"))
def test_every_fish_that_is_shown_is_graded_as_told(text: str) -> None:
    of = proved(text)
    shown = [fish for one in of.statements for fish in one.fish]
    assert shown
    for fish in shown:
        assert not any("grown to" in name for name in fish.record)
        result = of.made.grader.grade(Record("K1", 0, fish.record))
        assert result.possible == fish.possible
        assert (round(result.score_low * 100), round(result.score_high * 100)) == fish.score


def test_there_is_something_to_contradict() -> None:
    words = {one.words for text in STANDARDS for one in proved(text).statements if one.outcome is Outcome.PROVED}
    assert {"fault never can never bite", "fault stays can never bite", "fault grows can never bite"} <= words
    assert {"fault always always bites", "penalty both can never hold"} <= words
    better = {one.about for text in STANDARDS for one in proved(text).statements if one.outcome is Outcome.PROVED}
    assert {"weight", "tail_stem", "shiroji_lightness"} <= better


def test_a_record_of_spans_is_none_of_the_fish_that_are_spoken_of() -> None:
    of = proved(STANDARDS[2])
    record = Record("K1", 0, {"length": Span(20.0, 90.0)})
    assert not known(of, of.prover, record)
