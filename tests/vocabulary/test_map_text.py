"""A pattern map is read as a sorter writes it and as a program traces it, and is written in one form."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Patches
from koirules.vocabulary.maps import Patch, PatchMap, boxed, write_map
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.readings import write_reading

MAP = Patches()


@pytest.mark.parametrize(
    ("written", "canonical"),
    [
        ("8 to 26 left 60 right 55", "8 to 26 left 60 right 55"),
        (" 8-26 L60R55 ", "8 to 26 left 60 right 55"),
        ("8 – 26 % left 60 % right 55 %", "8 to 26 left 60 right 55"),
        ("8 to 26 right 55, left 60", "8 to 26 left 60 right 55"),
        ("8 to 26 both 60", "8 to 26 left 60 right 60"),
        ("8 to 26", "8 to 26 left 100 right 100"),
        ("8 to 26 thin; 40-52", "8 to 26 left 100 right 100 thin; 40 to 52 left 100 right 100"),
        ("8,5 to 26 left 60", "8.5 to 26 left 60"),
        ("60 to 80 right 20 to 70 thin", "60 to 80 right 20 to 70 thin"),
        ("34 to 52 left 95 right 40 sashi 1.5 thin", "34 to 52 left 95 right 40 sashi 1.5 thin"),
        ("34 to 52 left 9; 8 to 26 left 60;", "8 to 26 left 60; 34 to 52 left 9"),
        ("none", "none"),
        ("None", "none"),
        ("POLYGON EMPTY", "none"),
        ("POLYGON ((8 -60, 8 55, 26 55, 26 -60, 8 -60))", "8 to 26 left 60 right 55"),
        ("polygon((26 0, 8 50, 8 -60, 26 0)) thin", "POLYGON ((8 -60, 26 0, 8 50, 8 -60)) thin"),
        (
            "MULTIPOLYGON (((8 -60, 26 0, 8 50, 8 -60), (9 0, 9.5 0, 9 5, 9 0))); POLYGON ((40 0, 50 0, 45 9, 40 0)) thin",
            "POLYGON ((8 -60, 26 0, 8 50, 8 -60), (9 0, 9 5, 9.5 0, 9 0)); POLYGON ((40 0, 50 0, 45 9, 40 0)) thin",
        ),
    ],
)
def test_a_map_is_read_and_written_in_one_form(written: str, canonical: str) -> None:
    read = read_value(MAP, written)
    assert isinstance(read, PatchMap), read
    assert write_reading(MAP, read) == canonical
    assert read_value(MAP, canonical) == read


@pytest.mark.parametrize(
    ("written", "code", "told"),
    [
        ("two big ones", "value-not-a-map", "Patch 1"),
        ("8 to 26 left", "value-not-a-map", "Patch 1"),
        ("8 to 26 left 60 round", "value-not-a-map", "Patch 1"),
        ("8 to 8 left 60", "value-not-a-map", "Patch 1"),
        (";", "value-not-a-map", "Patch 1"),
        (0.45, "value-not-a-map", "A number"),
        ("8 to 26 left 60 left 50", "value-map-said-twice", "Patch 1"),
        ("8 to 26 both 60 left 50", "value-map-said-twice", "Patch 1"),
        ("8 to 26 left 20 to 60 right 50", "value-map-side-in-part", "Patch 1"),
        ("26 to 8 left 60", "value-map-ends-swapped", '"8 to 26 left 60"'),
        ("8 to 26 left 60 to 20", "value-map-ends-swapped", '"8 to 26 left 20 to 60"'),
        ("8 to 126 left 60", "value-map-outside", "126 in patch 1"),
        ("8 to 26 left 60; 30 to 40 right 201", "value-map-outside", "201 in patch 2"),
        ("POLYGON ((8 -60, 26 0, 8 250, 8 -60))", "value-map-outside", "250 in patch 1"),
        ("8 to 26 left 60 or none", "value-map-or-map", "one look"),
        ("POLYGON ((8 -60, 26 0, 8 50))", "value-map-outline", "end where it begins"),
        ("POLYGON ((8 -60, 26 0, 8 50, 8 -60)", "value-map-outline", "not closed"),
        ("POLYGON (8 -60, 26 0, 8 50, 8 -60)", "value-map-outline", "bracket is missing"),
        ("POLYGON ((8 -60, 26 0, 8 50, 8 -60) (9 0, 9 1, 10 0, 9 0))", "value-map-outline", "comma"),
        ("POLYGON ((8 -60 1, 26 0 1, 8 50 1, 8 -60 1))", "value-map-outline", "pair of two numbers"),
        ("POLYGON ((8 -60, 26 0, 8 -60))", "value-map-outline", "encloses nothing"),
        ("POLYGON ((8 -60, 26 0, 8 50, 8 -60)) left 5", "value-not-a-map", "Patch 1"),
        (
            f"POLYGON ((0 90, {', '.join(f'{i / 100} {i % 2}' for i in range(2200))}, 0 90))",
            "value-map-too-fine",
            "2,000",
        ),
        ("?", "value-mark-for-unknown", "empty the cell"),
    ],
)
def test_what_is_wrong_with_a_map_is_told_with_the_patch(written: object, code: str, told: str) -> None:
    misread = read_value(MAP, written)
    assert isinstance(misread, Misread), misread
    assert misread.code == code
    assert told in f"{misread.cause} {misread.mend}"


def test_what_is_mended_as_told_is_read() -> None:
    assert isinstance(read_value(MAP, "8 to 26 left 20 to 60"), PatchMap)
    assert isinstance(read_value(MAP, "5 to 20 left 60 right 55"), PatchMap)


def test_a_gap_in_an_outline_is_the_same_with_and_without_a_space_before_it() -> None:
    whole, gap = "(10 -60, 40 -60, 40 60, 10 60, 10 -60)", "(20 -20, 30 -20, 30 20, 20 20, 20 -20)"
    apart = [read_value(Patches(), f"POLYGON ({whole}{comma}{gap})") for comma in (",", ", ", " , ")]
    assert isinstance(apart[0], PatchMap)
    assert apart[0] == apart[1] == apart[2]


def test_a_map_does_not_depend_on_how_its_rings_were_begun() -> None:
    ring = ((8.0, -60.0), (26.0, 0.0), (8.0, 50.0))
    turned = {PatchMap((Patch(ring[i:] + ring[:i]),)) for i in range(3)}
    assert turned == {PatchMap((Patch(ring[::-1]),))}


_U = st.integers(0, 100_000).map(lambda n: n / 1000)
_V = st.integers(-200_000, 200_000).map(lambda n: n / 1000)
_MARKS = {"sashi": st.sampled_from([0.0, 1.5, 4.0]), "thin": st.booleans()}


@st.composite
def _boxes(draw: st.DrawFn) -> Patch:
    front, rear = sorted(draw(st.lists(_U, min_size=2, max_size=2, unique=True)))
    left, right = sorted(draw(st.lists(_V, min_size=2, max_size=2, unique=True)))
    return boxed(front, rear, left, right, draw(_MARKS["sashi"]), thin=draw(_MARKS["thin"]))


_TRIANGLES = st.lists(st.tuples(_U, _V), min_size=3, max_size=3, unique=True).filter(
    lambda p: abs((p[1][0] - p[0][0]) * (p[2][1] - p[0][1]) - (p[2][0] - p[0][0]) * (p[1][1] - p[0][1])) > 1e-6
)


@given(st.lists(_boxes() | st.builds(Patch, _TRIANGLES, **_MARKS), max_size=5))
def test_what_is_written_is_read_again(patches: list[Patch]) -> None:
    whole = PatchMap(patches)
    assert read_value(MAP, write_map(whole)) == whole


@given(st.text(alphabet="0123456789 ;,.()-%toleftrightPOLYGONMULTIsashithinboth\n", max_size=80) | st.text(max_size=40))
def test_any_text_is_read_or_told(text: str) -> None:
    assert read_value(MAP, text) is None or isinstance(read_value(MAP, text), PatchMap | Misread)


def test_zero_in_a_map_has_no_sign():
    patch = Patch(((0.0, -0.0), (20.0, -0.0), (20.0, 30.0)))
    assert all(math.copysign(1, number) == 1 for corner in patch.outline for number in corner)
