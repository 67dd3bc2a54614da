"""Several judges, drawn: koirules and the slow judge put them together alike, and what is still open holds the truth."""

from __future__ import annotations

from attrs import evolve
from hypothesis import given, note, settings
from hypothesis import strategies as st

import koirules
from tests.judge import model as m
from tests.judge.batch import Looked, judge_batch
from tests.judge.panels import judge_panel, needed, panel_record
from tests.judge.silence import filled
from tests.judge.strategies import (
    completions,
    layouts,
    records,
    standards,
    standards_that_compare,
    standards_with_silence,
    to_mapping,
)
from tests.judge.text import to_text
from tests.properties.test_agreement import by_judge, by_koirules, moderate
from tests.properties.test_whole_batch_agreement import said_by_judge, said_by_koirules

WAYS = (
    "trait by trait",
    "by mean of score",
    "by mean of score without the highest and the lowest",
    "by median of score",
    "by votes",
)
Judges = list[dict[str, object]]


@st.composite
def panels(draw: st.DrawFn, ways: tuple[str, ...] = WAYS) -> m.Panel:
    way = draw(st.sampled_from(ways))
    named_by = draw(st.sampled_from((None, None, 1, 2, 3)))
    least = needed(m.Panel(way, None, named_by))
    judges = draw(st.sampled_from((None, None, max(2, least), least + 1)))
    return m.Panel(way, judges, named_by, draw(st.sampled_from(("", "", "lower", "higher"))))


@st.composite
def judged(draw: st.DrawFn, standard: m.Standard) -> tuple[dict[str, object], Judges]:
    """What is recorded without a judge, and by each of one to five judges, who often say the same."""
    shared = draw(st.just({}) | records(standard))
    models = [draw(records(standard)) for _ in range(draw(st.integers(1, 3)))]
    return shared, [dict(draw(st.sampled_from(models) | records(standard))) for _ in range(draw(st.integers(1, 5)))]


def rows(standard: m.Standard, fish: str, shared: dict[str, object], judges: Judges) -> list[dict[str, object]]:
    found = [{"fish": fish, **to_mapping(standard, shared)}] if shared else []
    return found + [{"fish": fish, "judge": f"J{n}", **to_mapping(standard, own)} for n, own in enumerate(judges)]


@settings(moderate, max_examples=60)
@given(st.data())
def test_koirules_and_the_judge_put_judges_together_alike(data: st.DataObject) -> None:
    drawn = data.draw(standards() | standards_with_silence())
    standard = evolve(drawn, panel=data.draw(panels()))
    text = to_text(standard, data.draw(layouts()))
    note(text)
    loaded = koirules.read_standard(text)
    for _ in range(3):
        shared, judges = data.draw(judged(standard))
        given_rows = rows(standard, "F", shared, judges)
        note(repr(given_rows))
        (result,) = loaded.grade_batch(given_rows).results
        assert by_koirules(result) == by_judge(judge_panel(standard, shared, judges))
        assert result.panel is not None
        assert result.panel.missing == max(0, needed(standard.panel) - len(judges))


@settings(moderate, max_examples=40)
@given(st.data())
def test_whatever_judges_left_open_the_truth_lies_inside(data: st.DataObject) -> None:
    standard = evolve(data.draw(standards()), panel=data.draw(panels()))
    note(to_text(standard))
    loaded = koirules.read_standard(to_text(standard))
    shared, judges = data.draw(judged(standard))
    note(repr((shared, judges)))
    (said,) = loaded.grade_batch(rows(standard, "F", shared, judges)).results
    records = [{**shared, **each} for each in judges]
    records += [shared] * (needed(standard.panel) - len(judges))
    whole = [data.draw(completions(standard, each)) for each in records]
    if any(trait.name not in each for each in records for trait in standard.traits if asks_of(standard, trait)):
        return  # `is recorded` is answered as the record stands, that of a missing judge too
    (true,) = loaded.grade_batch(rows(standard, "F", {}, whole)).results
    assert set(true.possible) <= set(said.possible)
    assert said.score_low <= true.score_low <= true.score_high <= said.score_high


def asks_of(standard: m.Standard, trait: m.Trait) -> bool:
    return f"{trait.name} is recorded" in to_text(standard) or f"{trait.name} is not recorded" in to_text(standard)


@settings(moderate, max_examples=30)
@given(st.data())
def test_batches_figures_and_rounds_read_what_the_panel_came_to(data: st.DataObject) -> None:
    standard = evolve(data.draw(standards_that_compare()), panel=data.draw(panels(("trait by trait",))))
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    fish = [data.draw(judged(standard)) for _ in range(data.draw(st.integers(1, 5)))]
    given_rows = [row for n, (shared, own) in enumerate(fish) for row in rows(standard, f"F{n}", shared, own)]
    note(repr(given_rows))
    seats = [
        [{**shared, **each} for each in own] + [shared] * max(0, needed(standard.panel) - len(own))
        for shared, own in fish
    ]
    verdict = judge_batch(standard, [Looked(panel_record(standard, standard.panel, each)) for each in seats])
    found = loaded.grade_batch(given_rows)
    assert said_by_koirules(found) == said_by_judge(verdict, [each.name for each in standard.rounds])


@settings(moderate, max_examples=25)
@given(st.data())
def test_a_panel_of_one_judge_and_of_judges_who_agree_is_that_judge(data: st.DataObject) -> None:
    standard = data.draw(standards_with_silence())
    record = data.draw(records(standard))
    alone = koirules.read_standard(to_text(standard)).grade(to_mapping(standard, record), "F")
    settled = all(not isinstance(said, tuple | frozenset) and said != "unsure" for said in record.values())
    whole = len(filled(standard, record)) == len(standard.traits)
    for way in WAYS:
        judges = 3 if "without" in way else data.draw(st.sampled_from((1, 3)))
        loaded = koirules.read_standard(to_text(evolve(standard, panel=m.Panel(way))))
        (found,) = loaded.grade_batch(rows(standard, "F", {}, [record] * judges)).results
        assert set(alone.possible) <= set(found.possible)
        if judges == 1 or (settled and whole):
            assert by_koirules(found) == by_koirules(alone)
