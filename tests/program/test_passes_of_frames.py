"""The passes over the program of a frame, against that program itself in plain Python: no engine takes part."""

from __future__ import annotations

from math import inf, nextafter
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

import koirules
from koirules.meaning.algebra import PLAIN
from koirules.program.bounds import Bounds
from koirules.program.frames import FrameProgram
from koirules.program.graph import Kind, Op, Part, Read, Value, plain
from koirules.program.held import CodeColumn, Held, NoColumn, NumberColumn
from koirules.program.holes import HoleTracer
from koirules.program.passes import live
from koirules.program.sums import Sums
from koirules.program.unrounded import least_double
from koirules.vocabulary.kinds import Kind as TraitKind
from koirules.vocabulary.kinds import Places, YesNo, words_of
from koirules.vocabulary.readings import PlaceSet
from tests.judge.text import to_text
from tests.meaning.test_tables import STANDARD

DRAWN = settings(max_examples=60, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
LOADED = koirules.read_standard(to_text(STANDARD))
MILLION = 1_000_000


def worked_out(outputs: list[Value], row: dict[str, Any]) -> dict[Value, Any]:
    """Every value that some outputs need, for one row of a frame."""
    found: dict[Value, Any] = {}
    for value in live(outputs):
        operands = [found[operand] for operand in value.operands]
        match value.op:
            case Op.CONSTANT:
                found[value] = value.data
            case Op.INPUT:
                read = value.data
                there = row[read.key]
                if read.part is Part.RECORDED:
                    found[value] = there is not None
                else:
                    found[value] = read.otherwise if there is None else there
            case Op.TABLE:
                found[value] = value.data[int(operands[0])]
            case Op.PACK:
                code = 0
                for size, digit in zip(value.data, operands, strict=True):
                    code = code * size + int(digit)
                found[value] = code
            case _:
                found[value] = plain(value.op, value.data)(*operands)
    return found


def readings(kind: TraitKind) -> tuple[Any, ...]:
    """Readings of a trait in words: one level each, two that could be, and one that is blank."""
    words = words_of(kind)
    if isinstance(kind, Places):
        return PlaceSet(0, 0), PlaceSet(1, 1), PlaceSet(1, 6 | 1), PlaceSet(0, 7, 1, 2), None
    if not words:
        return "far", "near", None
    return (*(1 << place for place in range(len(words))), 3, None)


@st.composite
def frames_of_one_row(draw: st.DrawFn) -> tuple[dict[str, Held], dict[str, Any]]:
    """How a frame holds each trait, and one row of it."""
    held: dict[str, Held] = {}
    row: dict[str, Any] = {}
    for name, trait in LOADED.traits.items():
        how = draw(st.sampled_from(["none", "whole", "holes", "stretches"]))
        holes, column = how != "whole", f"column {name}"
        lacks = holes and draw(st.booleans())
        if how == "none":
            held[name] = NoColumn()
        elif name in {"x", "n"}:
            most = 90 * 8 if name == "x" else 9 * 8
            ends = sorted(draw(st.tuples(st.integers(0, most), st.integers(0, most))))
            stretched = how == "stretches"
            held[name] = NumberColumn(column, holes, f"{column} high" if stretched else "")
            row[column] = None if lacks else ends[0] / 8
            row[f"{column} high"] = None if lacks else ends[1] / 8
        elif isinstance(trait.kind, YesNo) and draw(st.booleans()):
            held[name] = CodeColumn(column, (1, 2), holes, truth=True)
            row[column] = 2 if lacks else draw(st.booleans())
        else:
            held[name] = CodeColumn(column, readings(trait.kind), holes)
            row[column] = draw(st.integers(0, len(readings(trait.kind)) - 1))
            if lacks:
                row[column] = None
    return held, row


@DRAWN
@given(frames_of_one_row())
def test_rewritten_sums_come_to_the_same_and_every_number_lies_within_its_bounds(
    drawn: tuple[dict[str, Held], dict[str, Any]],
) -> None:
    held, row = drawn
    program = FrameProgram.of(LOADED.rules, LOADED.settings, held)
    evaluation, outputs = program.evaluation, list(program.outputs.values())
    sums = Sums.of(evaluation.tracer, evaluation.bounds, outputs)
    rewritten = [sums.rewritten(output) for output in outputs]
    before, after = worked_out(outputs, row), worked_out(rewritten, row)
    assert [before[output] for output in outputs] == [after[output] for output in rewritten]
    for value, number in (before | after).items():
        if value.kind in {Kind.NUMBER, Kind.WHOLE, Kind.SET}:
            low, high = evaluation.bounds.of(value)
            assert low <= number <= high, value.op


@DRAWN
@given(st.integers(-(10**13), 10**13))
def test_the_least_double_with_so_many_millionths_is_the_least(bound: int) -> None:
    least = least_double(bound)
    assert PLAIN.millionths(least) >= bound
    assert PLAIN.millionths(nextafter(least, -inf)) < bound


def test_what_reads_one_column_with_holes_is_worked_out_once_for_both_ends() -> None:
    held: dict[str, Held] = {"x": NumberColumn("x", holes=True)}
    program = FrameProgram.of(LOADED.rules, LOADED.settings, held)
    curve = next(part.shape for part in LOADED.rules.points if part.name == "grows")
    points = [value for value in live(program.outputs.values()) if value.data is curve]
    assert [value.op for value in points] == [Op.LEAST_POINTS]
    assert points[0].operands[0] is points[0].operands[-1]


def test_no_comparison_with_a_known_number_rounds_a_column() -> None:
    tracer = HoleTracer()
    one, most = tracer.number_with_holes("x", 0.0, 9.0)
    for end in (one, most):
        for compare in (tracer.at_least, tracer.above, tracer.equal):
            made = compare(tracer.millionths(end), tracer.constant(5 * MILLION))
            assert not [value for value in live([made]) if value.op is Op.MILLIONTHS]


def test_tables_of_several_codes_are_looked_up_as_one() -> None:
    tracer = HoleTracer()
    codes = [tracer.input(Kind.WHOLE, Read(name, Part.CODE)) for name in "abc"]
    total = tracer.total(*(tracer.table(code, Kind.WHOLE, (0, 10**place, 5)) for place, code in enumerate(codes)))
    made = Sums.of(tracer, Bounds(), [total]).rewritten(total)
    assert made.op is Op.TABLE
    assert len(made.data) == 3**3
    row = {"a": 1, "b": 2, "c": 1}
    assert worked_out([made], row)[made] == worked_out([total], row)[total] == 1 + 5 + 100


@pytest.mark.parametrize("most", [2.0**52, 2.0**54])
def test_bounds_of_a_product_and_a_sum_tell_what_doubles_hold(most: float) -> None:
    tracer, bounds = HoleTracer(), Bounds()
    number = tracer.input(Kind.WHOLE, Read("x", Part.ONE))
    bounds.note(number, -1, most)
    made = tracer.total(tracer.multiply(tracer.constant(-2), number), tracer.constant(3))
    assert bounds.of(made) == (3 - 2 * most, 5)
