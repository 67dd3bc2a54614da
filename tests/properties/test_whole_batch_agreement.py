"""A whole batch: record by record, row by row, by columns and by the slow judge, every fish comes to the same."""

from __future__ import annotations

from datetime import date, timedelta
from random import Random
from typing import Any

import narwhals.stable.v2 as nw
import polars as pl
import pytest
from hypothesis import given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.grading import frames
from tests.judge import model as m
from tests.judge.batch import BatchVerdict, judge_batch
from tests.judge.drawn_batches import Batch
from tests.judge.rounds import EntangledError, RefusedError
from tests.judge.strategies import (
    batches,
    layouts,
    standards_that_compare,
    standards_that_compare_in_silence,
    to_mapping,
)
from tests.judge.text import to_text
from tests.properties.test_agreement import by_judge, by_koirules, moderate
from tests.properties.test_batch_agreement import as_frame

DAY = date(2026, 11, 1)
Answer = dict[str, Any]


def name(fish: int) -> str:
    return f"F{fish}"


def rows_of(standard: m.Standard, batch: Batch, seed: int) -> list[dict[str, object]]:
    """The looks at all fish, the latest of each in the order of the batch, earlier ones anywhere."""
    chance = Random(seed)
    rows: list[dict[str, object]] = []
    for number, fish in enumerate(batch.fish):
        rows.append({"fish": name(number), "date": str(DAY), **to_mapping(standard, fish.record)})
    for number, fish in enumerate(batch.fish):
        looks = [] if fish.before is None else [(7, fish.before)]
        if looks and chance.random() < 0.3:
            looks.append((30, {}))  # a look before that one, which nobody asks for
        for days, record in looks:
            row = {"fish": name(number), "date": str(DAY - timedelta(days)), **to_mapping(standard, record)}
            rows.insert(chance.randint(0, len(rows)), row)
    return rows


def decisions_of(batch: Batch) -> list[koirules.Decision]:
    grades = [koirules.Decision(name(n), grade, "", "Y.", "seen") for n, grade in batch.grades_by_hand.items()]
    kept = [(n, each) for each, fish in batch.kept_by_hand.items() for n in sorted(fish)]
    return grades + [koirules.Decision(name(n), "", each, "Y.", "seen") for n, each in kept]


# ---- What each says ----------------------------------------------------------------------------------------------


def said_by_judge(verdict: BatchVerdict, rounds: list[str]) -> Answer:
    fish = {}
    for number, one in enumerate(verdict.fish):
        possible = verdict.possible[number]
        answer = by_judge(one) | {"possible": possible, "grade": possible[0] if len(possible) == 1 else None}
        fish[name(number)] = answer
    courses = {
        each: {
            "looked at": names(course.looked_at),
            "kept": names(course.kept),
            "tied": names(course.tied),
            "places": {name(fish): place for fish, place in course.places.items()},
        }
        for each, course in zip(rounds, verdict.rounds, strict=True)
    }
    return {"fish": fish, "alerts": verdict.alerts, "rounds": courses}


def said_by_koirules(found: koirules.BatchResult) -> Answer:
    rounds = {}
    for each in found.rounds:
        steps = {one.fish: step for one in found.results for step in one.course if step.round == each.name}
        assert steps.keys() == set(each.looked_at)
        assert {fish for fish, step in steps.items() if step.kept} == set(each.kept)
        rounds[each.name] = {
            "looked at": set(each.looked_at),
            "kept": set(each.kept),
            "tied": {fish for tie in each.ties for fish in tie.fish},
            "places": {fish: step.place for fish, step in steps.items() if step.place is not None},
        }
        assert rounds[each.name]["tied"] == {fish for fish, step in steps.items() if step.fate.value == "tied"}
    return {
        "fish": {one.fish: by_koirules(one) for one in found.results},
        "alerts": {one.name: one.so_far is True for one in found.alerts if one.so_far is not False},
        "rounds": rounds,
    }


def names(fish: frozenset[int]) -> set[str]:
    return {name(each) for each in fish}


def said_by_frames(answer: Answer) -> dict[str, dict[str, object]]:
    """What a frame says of each fish, from what is known of it."""
    told = {}
    for fish, one in answer["fish"].items():
        seen = [(each, course) for each, course in answer["rounds"].items() if fish in course["looked at"]]
        tied = [each for each, course in seen if fish in course["tied"]]
        kept = [each for each, course in seen if fish in course["kept"]]
        left = seen[-1][0] if seen and seen[-1][0] not in {*kept, *tied} else None
        told[fish] = {
            "possible": "|".join(one["possible"]),
            "score_low": float(one["score"][0]),
            "score_high": float(one["score"][1]),
            **{f"{part}_low": float(low) for part, (low, _) in one["sections"].items()},
            **{f"{part}_high": float(high) for part, (_, high) in one["sections"].items()},
        }
        if answer["rounds"]:
            told[fish] |= {
                "kept_by": "|".join(kept) or None,
                "left_in": left,
                "tied_in": tied[0] if tied else None,
            }
    return told


def graded_frames(loaded: koirules.Standard, rows: list[dict[str, object]]) -> tuple[pl.DataFrame, pl.DataFrame]:
    """By row and by column."""
    grader = loaded.batch(faults=True)
    frame = as_frame(rows)
    sources = frames.matched(frame.columns, grader)
    read = grader.reader(sources).read(frame.select([source.column for source in sources.values()]))
    assert not read.wrong
    looks = frames._looks(nw.from_native(frame), grader)
    read = grader.filled(read, frame.height, looks)
    by_row = grader.by_row(read, frame.height, looks)
    return by_row, grader.by_column(read, frame.height, looks)


# ---- The law -----------------------------------------------------------------------------------------------------


@settings(moderate, max_examples=60)
@given(st.data())
def test_one_by_one_by_row_by_column_and_by_the_judge_a_batch_comes_to_the_same(data: st.DataObject) -> None:
    standard = data.draw(standards_that_compare())
    text = to_text(standard, data.draw(layouts()))
    note(text)
    loaded = koirules.read_standard(text)
    for _ in range(2):
        batch = data.draw(batches(standard))
        agrees(loaded, standard, batch, data.draw(st.integers(0, 1000)))


@settings(moderate, max_examples=60)
@given(st.data())
def test_a_batch_comes_to_the_same_where_silence_means_something(data: st.DataObject) -> None:
    standard = data.draw(standards_that_compare_in_silence())
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    for _ in range(2):
        batch = data.draw(batches(standard))
        agrees(loaded, standard, batch, data.draw(st.integers(0, 1000)))


def agrees(loaded: koirules.Standard, standard: m.Standard, batch: Batch, seed: int) -> str:
    """Assert that all agree; says whether columns were compared, rows alone, or neither, and why."""
    rows, decisions = rows_of(standard, batch, seed), decisions_of(batch)
    note(repr(rows))
    note(repr(decisions))
    rounds = [each.name for each in standard.rounds]
    try:
        judged = judge_batch(standard, batch.fish, batch.grades_by_hand, batch.kept_by_hand)
        by_rules = judge_batch(standard, batch.fish) if decisions else judged
    except EntangledError:
        return "entangled"
    except RefusedError:
        with pytest.raises(koirules.RecordError) as caught:
            loaded.grade_batch(rows, decisions)
        assert {problem.code for problem in caught.value.problems} <= {"too-many-rescues", "tie-half-settled"}
        return "refused"
    assert said_by_koirules(loaded.grade_batch(rows, decisions)) == said_by_judge(judged, rounds)
    if not rows:
        return "rows"
    by_row, by_column = graded_frames(loaded, rows)
    assert by_column.equals(by_row, null_equal=True)
    latest = [row["date"] == str(DAY) for row in rows]
    results = by_row.filter(pl.Series(latest)).iter_rows(named=True)
    found = dict(zip([row["fish"] for row in rows if row["date"] == str(DAY)], results, strict=True))
    for fish, told in said_by_frames(said_by_judge(by_rules, rounds)).items():
        assert {each: found[fish][each] or None for each in told} == {each: said or None for each, said in told.items()}
    return "columns"
