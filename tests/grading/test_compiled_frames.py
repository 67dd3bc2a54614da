"""The compiled engine: the same as the columnar one over every kind of column, and what it refuses goes to that one."""

from __future__ import annotations

import random
from collections.abc import Callable
from fractions import Fraction
from math import floor, isnan
from pathlib import Path

import polars as pl
import pyarrow as pa
import pytest
from attrs import evolve
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.engines.columnar import glances as columnar_glances
from koirules.engines.columnar.glances import glances
from koirules.engines.columnar.reading import ReadFrame, Source
from koirules.engines.compiled import engine, glancing, objects, running
from koirules.engines.compiled.curves import Hinges, Lines, Steps, exact_form
from koirules.engines.compiled.layout import Layout, Target
from koirules.engines.compiled.lowering import LANES, lowered
from koirules.grading.batch import BatchGrader, engines_told
from koirules.meaning.curves import Curve
from koirules.program.profiles import Profile, row_program

RULES = """standard "Lantern Bay trial" edition 1
trait length "length" as number in cm from 0 to 90
trait size "size of a speck" as number in mm from 0 to 20
trait specks "specks" as count up to 9
trait edge "edge" as scale blurred < fair < sharp
trait lips "lips" as yes or no
trait gills "gills" as yes or no
trait fins "fins" as places of (left, right, tail)
trait pond "pond" as label
fault specked "specked" if specks at least 3 and size above 0.5 mm: no better than sell
fault gilled "gilled" if gills is recorded and not gills: no better than sell
lift kept "kept" if length at least 80 cm except edge is blurred: no worse than hold
section body worth 100
points long weight 2 by length: 10 cm gives 0, 20 cm gives 10
points slim by length / (1 cm + 1 cm * specks): 1 gives 10, 9 gives 0
points clean by edge: blurred gives 0, fair gives 5, sharp gives 10
bonus red 2 if lips is yes
penalty finned 3 if count of fins at least 2
penalty far 1 if pond is "far"
section rest worth 12.5
points sized by (3 mm if edge is sharp otherwise size): 0 mm gives 10, 20 mm gives 1
grade keep if score at least 50
grade hold if score at least 20
grade sell otherwise
"""


@pytest.fixture(scope="module")
def standard() -> koirules.Standard:
    return koirules.read_standard(RULES)


def drawn(rows: int, seed: int, *, holes: bool) -> pl.DataFrame:
    draw = random.Random(seed)

    def some(values: Callable[[], object]) -> list[object]:
        return [None if holes and draw.random() < 0.2 else values() for _ in range(rows)]

    return pl.DataFrame(
        {
            "length": pl.Series(some(lambda: draw.randint(0, 900) / 10), dtype=pl.Float64),
            "size": pl.Series(some(lambda: draw.choice([0.5, 0.500001, draw.randint(0, 200) / 10])), dtype=pl.Float64),
            "specks": pl.Series(some(lambda: draw.randint(0, 9)), dtype=pl.Int64),
            "edge": pl.Series(some(lambda: draw.choice(["blurred", "fair", "sharp"])), dtype=pl.String),
            "lips": pl.Series(some(lambda: draw.random() < 0.5), dtype=pl.Boolean),
            "gills": pl.Series(some(lambda: draw.random() < 0.5), dtype=pl.Boolean),
            "fins": pl.Series(
                some(lambda: draw.choice(["none", "left", "left tail", "tail or right"])), dtype=pl.String
            ),
            "pond": pl.Series(some(lambda: draw.choice(["far", "near", "mid"])), dtype=pl.String),
        }
    )


def both(standard: koirules.Standard, frame: pl.DataFrame) -> pl.DataFrame:
    """What both engines make of a frame, which is the same."""
    columnar = standard.grade_frame(frame, faults=True, engine="columnar")
    compiled = standard.grade_frame(frame, faults=True, engine="compiled")
    assert list(compiled.schema.items()) == list(columnar.schema.items())
    assert compiled.equals(columnar)
    return compiled


@pytest.mark.parametrize("holes", [False, True])
@pytest.mark.parametrize("rows", [0, 1, LANES - 1, LANES, LANES + 1, 500, running.CHUNK + 7])
def test_frames_of_any_length_come_to_the_same(standard: koirules.Standard, rows: int, *, holes: bool) -> None:
    assert both(standard, drawn(rows, rows, holes=holes)).height == rows


@pytest.mark.parametrize("holes", [False, True])
def test_slices_that_begin_within_a_byte_come_to_the_same(standard: koirules.Standard, *, holes: bool) -> None:
    frame = drawn(400, 1, holes=holes).with_columns(pl.col("edge").cast(pl.Enum(["blurred", "fair", "sharp"])))
    whole = both(standard, frame)
    for first in (1, 3, 8, 13, 64):
        for length in (1, 15, 16, 33, 200):
            assert both(standard, frame.slice(first, length)).equals(whole.slice(first, length))


def test_chunks_dictionaries_and_other_codes_come_to_the_same(standard: koirules.Standard) -> None:
    frame = drawn(300, 2, holes=True)
    whole = both(standard, frame)
    results = whole.columns[frame.width :]
    chunked = pl.concat([frame.slice(0, 101), frame.slice(101, 30), frame.slice(131)], rechunk=False)
    assert chunked.n_chunks() > 1
    assert both(standard, chunked).equals(whole)
    turned = pl.Enum(["sharp", "blurred", "fair"])
    for kind in (turned, pl.Categorical):
        assert both(standard, frame.with_columns(pl.col("edge").cast(kind)))[results].equals(whole[results])
    words = pl.when("lips").then(pl.lit("yes")).when(~pl.col("lips")).then(pl.lit("no"))
    assert both(standard, frame.with_columns(lips=words))[results].equals(whole[results])
    table = pa.table({name: frame[name].to_arrow() for name in frame.columns})
    table = table.set_column(3, "edge", table["edge"].dictionary_encode())
    graded = standard.grade_frame(table.slice(5), faults=True, engine="compiled")
    assert pl.DataFrame(graded)[results].rows() == whole[results][5:].rows()


def test_what_is_there_and_open_comes_to_the_same(standard: koirules.Standard) -> None:
    frame = drawn(60, 3, holes=True)
    odd = frame.with_columns(
        length=pl.Series(["12 to 40 cm", "?", None, "7 cm"] * 15),
        edge=pl.Series(["fair or sharp", "sharp", None, "?"] * 15),
        lips=pl.Series(["yes or no", "yes", None, "?"] * 15),
        gills=pl.Series(["yes or no", None, "no", "?"] * 15),
    )
    both(standard, odd)
    both(standard, odd.drop("size", "fins", "gills"))
    both(standard, frame.with_columns(pond=pl.Series([f"pond {row}" for row in range(59)] + ["far"])))
    many = drawn(400, 4, holes=False).with_columns(pond=pl.Series([f"pond {row}" for row in range(399)] + ["far"]))
    both(standard, many)


def test_wrong_cells_give_the_same_problems(standard: koirules.Standard) -> None:
    frame = pl.DataFrame({"length": [12.0, 120.0], "edge": ["sharpp", "fair"], "specks": [1.5, float("nan")]})
    told = []
    for one in ("columnar", "compiled"):
        with pytest.raises(koirules.RecordError) as caught:
            standard.grade_frame(frame, engine=one)
        told.append(caught.value.problems)
    assert told[0] == told[1]
    assert len(told[0]) == 3


def test_a_processor_without_wide_instructions_comes_to_the_same(standard: koirules.Standard) -> None:
    grader = standard.batch(faults=True)
    frame = drawn(333, 5, holes=True)
    read = read_of(grader, frame)
    host = objects.host()
    plain = Target(host.triple, "" if "x86" not in host.triple else "x86-64", "")
    assert not plain.fused
    assert not plain.permutes
    layout = Layout.of(
        row_program(standard.rules, standard.settings, Profile(complete=False)), 3, sections=True, faults=True
    )
    loaded = objects.Loaded(objects.object_of(lowered(layout, plain), plain))
    code = running.Code(layout, loaded, running.Results(standard.rules, sections=True, faults=True))
    assert code.run(read.columns, read.held, 333).equals(grader.by_column(read, 333))


def read_of(grader: BatchGrader, frame: pl.DataFrame) -> ReadFrame:
    return grader.reader({name: Source(name) for name in frame.columns}).read(frame)


CURVES = {
    "hinges": (Curve((10_000_000, 25_000_000, 40_000_000), (0, 4_000, 330)), Hinges),
    "steps": (Curve((0, 1_000_000, 500_001_000_000), (0, 10_000, 5_000)), Steps),
    "lines": (Curve((1, 89_999_999, 999_999_999_999), (0, 10_000, 70)), Lines),
}


@pytest.mark.parametrize("name", CURVES)
def test_each_form_of_a_curve_gives_exact_points_at_its_ties(name: str) -> None:
    curve, form = CURVES[name]
    assert isinstance(exact_form(curve), form)
    knots = ", ".join(
        f"{at // 10**6}.{at % 10**6:06} gives {gives / 1000}" for at, gives in zip(curve.at, curve.gives, strict=True)
    )
    standard = koirules.read_standard(
        f'standard "s" edition 1\ntrait x "x" as number from 0 to 1000000\nsection s worth 100\npoints p by x: {knots}\n'
        "grade keep otherwise\n"
    )
    found = set(curve.at) | {max(0, at + step) for at in curve.at for step in (-1, 1)}
    for (left, gives), (right, after) in zip(
        zip(curve.at, curve.gives, strict=True), list(zip(curve.at, curve.gives, strict=True))[1:], strict=False
    ):
        # Where the line is nearest to half a thousandth: the millionths on both sides of it.
        for thousandth in range(0, abs(after - gives), max(1, abs(after - gives) // 400)):
            at = left + Fraction(2 * thousandth + 1, 2) * (right - left) / abs(after - gives)
            found |= {floor(at) + step for step in (-1, 0, 1, 2)}
    millionths = sorted(one for one in found if 0 <= one <= 10**12)
    frame = pl.DataFrame({"x": [one / 1e6 for one in millionths]})
    graded = standard.grade_frame(frame, engine="compiled")
    most = max(curve.gives)
    wanted = [floor(Fraction(10_000 * curve.point(one), most) + Fraction(1, 2)) / 100 for one in millionths]
    assert graded["score"].to_list() == wanted


def test_ties_of_a_section_are_rounded_half_up() -> None:
    standard = koirules.read_standard(
        'standard "s" edition 1\ntrait x "x" as number from 0 to 100\ntrait y "y" as number from 0 to 100\n'
        "section s worth 12.5\npoints p weight 3 by x: 0 gives 0, 100 gives 10\n"
        "points q weight 1 by y: 0 gives 0, 100 gives 10\nbonus b 0.25 if x at least y\npenalty c 1.75 if y above 50\n"
        "grade keep if score at least 6.25\ngrade sell otherwise\n"
    )
    values = [step / 100 for step in range(0, 10_001, 37)]
    frame = pl.DataFrame({"x": [x for x in values for _ in values], "y": [y for _ in values for y in values]})
    graded = standard.grade_frame(frame, engine="compiled")
    ties = 0
    for x, y, score in graded.select("x", "y", "score").gather_every(97).iter_rows():
        # Points of 100 X and 100 Y hundredths are 1000 X / 1000 thousandths of a point each, exactly.
        given = 3 * Fraction(round(100 * x)) + Fraction(round(100 * y))
        worth = given * 1250 / 40_000 + (25 if x >= y else 0) - (175 if y > 50 else 0)
        ties += (worth * 2).denominator == 1 and worth.denominator == 2
        assert round(score * 100) == min(1250, max(0, floor(worth + Fraction(1, 2))))
    assert ties
    assert graded.equals(standard.grade_frame(frame, engine="columnar"))


def test_the_engine_that_is_asked_for_is_taken_or_refused(
    standard: koirules.Standard, monkeypatch: pytest.MonkeyPatch
) -> None:
    compares = koirules.read_standard(
        'standard "s" edition 1\ntrait x "x" as number from 0 to 9\n'
        "grade keep if x at least batch median of x\ngrade sell otherwise\n"
    )
    frame = pl.DataFrame({"x": [1.0, 2.0]})
    with pytest.raises(koirules.EngineError, match="compares fish"):
        compares.grade_frame(frame, engine="compiled")
    assert engines_told(compares.batch())[0].startswith("columnar: all frames; it compares fish")
    assert engines_told(standard.batch()) == ["compiled: all frames"]
    told = CliRunner().invoke(main, ["check", "--engines", "tests/benchmarks/batch/neutral.koi"])
    assert told.stdout.splitlines()[1:] == ["  compiled: all frames"]
    monkeypatch.setattr("koirules.grading.batch.is_installed", lambda: False)
    (told,) = engines_told(standard.batch())
    assert told.startswith("columnar: all frames; the compiled engine is not installed: ")
    assert "koirules[compiled]" in told
    with pytest.raises(koirules.EngineError, match=r"koirules\[compiled\]"):
        standard.grade_frame(frame.rename({"x": "length"}), engine="compiled")


def test_what_doubles_do_not_hold_is_refused_and_graded_by_columns() -> None:
    standard = koirules.read_standard(
        'standard "s" edition 1\ntrait x "x" as number from 0 to 100\ntrait y "y" as number from 0 to 100\n'
        "section s worth 1.01\npoints p weight 999.99 by x: 0 gives 0, 100 gives 99.97\n"
        "bonus b 999.99 if y above 50\nbonus c 999.99 if x above 50\ngrade keep otherwise\n"
    )
    told = engines_told(standard.batch())
    assert told[0].startswith("columnar: all frames; points or weights so large")
    frame = pl.DataFrame({"x": [1.0, 2.0], "y": [0.0, 50.0]})
    with pytest.raises(koirules.EngineError, match="points or weights so large"):
        standard.grade_frame(frame, engine="compiled")
    assert standard.grade_frame(frame).height == 2


@pytest.fixture
def at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Small frames are worth compiling."""
    monkeypatch.setattr(engine, "READY_FROM", 10)
    monkeypatch.setattr(engine, "WORTH_FROM", 500)


@pytest.mark.usefixtures("at_once")
def test_the_columnar_engine_answers_while_code_is_made(
    standard: koirules.Standard, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("KOIRULES_CACHE", str(tmp_path))
    frame = drawn(500, 6, holes=True)
    ran = count_runs(monkeypatch)
    grader = standard.batch(faults=True)
    read = read_of(grader, frame)
    wanted = grader.by_column(read, 500)
    assert grader.grade(read, 500).equals(wanted)
    grader.compiled.wait()
    assert not ran
    assert grader.grade(read, 500).equals(wanted)
    assert ran == [500]
    # Another process finds the object in the folder.
    again = standard.batch(faults=True)
    monkeypatch.setattr(engine, "object_of", never)
    assert again.grade(read, 500).equals(wanted)
    assert again.grade(read, 500).equals(wanted)
    assert ran == [500, 500, 500]


@pytest.mark.parametrize("rows", [0, 1, LANES, 5 * LANES + 3])
@pytest.mark.parametrize("odd", [None, float("nan"), 1e-21, -1e-22, float("inf"), 0.5, -0.0])
def test_a_glance_by_code_sees_what_a_glance_by_columns_sees(rows: int, odd: float | None) -> None:
    draw = random.Random(rows)
    for nulls in (False, True):
        for first in range(3):
            values: list[float | None] = [float(draw.randint(-3, 90)) for _ in range(rows + first)]
            if values:
                values[draw.randrange(len(values))] = odd
            if nulls:
                values = [None if draw.random() < 0.3 else value for value in values]
            column = pl.Series(values, dtype=pl.Float64)[first:]
            for whole in (False, True):
                by_columns, by_code = glances([(column, whole)])[0], glancing.glances([(column, whole)])[0]
                assert by_code.nans == by_columns.nans
                assert by_code.shares == any(value is not None and 0 < value <= 1 for value in column)
                # By columns it is only said that there are none where somebody looked.
                assert by_columns.shares or not by_code.shares
                if not by_code.nans:
                    assert evolve(by_code, shares=by_columns.shares) == by_columns


@pytest.mark.parametrize("odd", [None, float("nan"), 1e-21, -1e-22, float("inf"), -float("inf"), 0.5, -0.0, 7.0])
@pytest.mark.parametrize("least", [-3.0, 0.0, 2.0])
def test_a_long_column_is_seen_alike_with_numpy_and_without(
    monkeypatch: pytest.MonkeyPatch, odd: float | None, least: float
) -> None:
    import numpy as np

    values: list[float | None] = [least, *np.random.default_rng(1).integers(2, 90, 60_000).astype(float)]
    values[40_000] = odd
    column = pl.Series(values, dtype=pl.Float64)
    given = [(column, False), (column, True), (pl.concat([column[:9], column[9:]], rechunk=False), False)]
    monkeypatch.setattr(columnar_glances, "_PIECE", 9_000)  # several pieces, of which the last is short
    found = glances(given)
    assert len(columnar_glances._quick_ends(given[:1])) == (odd is not None and not isnan(odd))
    monkeypatch.setattr(columnar_glances, "_quick_ends", lambda _given: {})
    assert glances(given) == found
    assert found[0].nans == (odd is not None and isnan(odd))
    assert found[0].tiny == (odd in {1e-21, -1e-22})
    assert found[0].shares or not any(value is not None and 0 < value <= 1 for value in values)


def test_memory_of_results_is_used_again_once_they_are_gone(standard: koirules.Standard) -> None:
    frame = drawn(1 << 17, 7, holes=False)
    frame = pl.concat([frame] * 2)
    names = ["score_low", "score_high", "body_low", "rest_low"]
    results = standard.grade_frame(frame, engine="compiled")
    kept = results["score_low"]
    wanted, held, gone = kept.to_list(), address(kept), {address(results[name]) for name in names}
    del results
    again = standard.grade_frame(frame, engine="compiled")
    found = {address(again[name]) for name in names}
    assert found & gone
    assert held not in found
    assert kept.to_list() == wanted == again["score_low"].to_list()


def address(series: pl.Series) -> int:
    return int(series.to_arrow().buffers()[1].address)


def test_an_object_is_read_only_whole_and_from_a_folder_of_ours_alone(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("KOIRULES_CACHE", str(tmp_path))
    name = objects.name_of("a program")
    objects.keep_object(name, b"code")
    assert objects.kept_object(name) == b"code"
    folder = tmp_path / "compiled"
    assert [each.name for each in folder.iterdir()] == [name]
    for mode in (0o777, 0o755, 0o750):
        folder.chmod(mode)
        assert objects.kept_object(name) is None
    folder.chmod(0o700)
    whole = (folder / name).read_bytes()
    for damaged in (whole[:-1], whole[:10], whole[:-1] + b"x", b""):
        (folder / name).write_bytes(damaged)
        assert objects.kept_object(name) is None
    objects.keep_object(name, b"code")
    (folder / objects.name_of("another")).write_bytes((folder / name).read_bytes())
    assert objects.kept_object(objects.name_of("another")) is None
    monkeypatch.setenv("KOIRULES_CACHE", "off")
    assert objects.kept_object(name) is None


def count_runs(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    ran: list[int] = []
    run = running.Code.run

    def counted(code: running.Code, frame: pl.DataFrame, held: object, rows: int) -> pl.DataFrame:
        ran.append(rows)
        return run(code, frame, held, rows)  # type: ignore[arg-type]

    monkeypatch.setattr(running.Code, "run", counted)
    return ran


def never(*_: object) -> bytes:
    raise AssertionError("made again")


def test_an_engine_that_does_not_exist_is_refused_and_the_two_are_named() -> None:
    standard = koirules.load_standard("tosai_kohaku")
    with pytest.raises(koirules.EngineError, match=r'no engine "gpu". Choose "columnar" or "compiled"'):
        standard.grade_frame(pl.DataFrame({"length": [14.0]}), engine="gpu")


def test_a_score_and_a_fault_that_are_never_one_value_are_open_in_every_row() -> None:
    standard = koirules.read_standard(
        'standard "never one" edition 1\ntrait edge as scale low < high\ntrait size as number from 0 to 10\n'
        "fault huge if 2 * 1000000 above 700000: no better than sell\nsection body worth 100\n"
        "points far by 2 * 1000000: 0 gives 10, 700000 gives 5\npoints clean by edge: low gives 0, high gives 10\n"
        "grade keep if score at least 50\ngrade sell otherwise\n"
    )
    frame = pl.DataFrame({"edge": ["low", "high", None], "size": [1.0, None, 3.0]})
    graded = both(standard, frame)
    assert graded["score"].null_count() == graded["fault huge"].null_count() == 3
