"""The units are what the law of 1891 makes them, and rule files, records, notes and frames read them."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

import koirules_shakkan
import pytest
from koirules_shakkan import koirules_units

from koirules import read_standard
from koirules.testing import check_plugin, registry_with
from koirules.vocabulary.units import added_units, use_units

TO_KEEP = """standard "Old measures" edition 1 variety kohaku
grade keep if length at least 5 sun and weight at most 20 momme
grade cull otherwise
"""


@pytest.fixture(autouse=True)
def units() -> Iterator[None]:
    before = added_units()
    yield
    use_units(before)


def test_the_plugin_is_sound() -> None:
    check_plugin(koirules_shakkan)


def test_the_factors_are_those_of_the_law() -> None:
    # Weights and Measures Act, 1891, from memory: shaku = 10/33 m, kan = 15/4 kg; sun and momme are their parts.
    shaku, kan = Fraction(10, 33) * 100, Fraction(15, 4) * 1000
    expected = {"shaku": shaku, "sun": shaku / 10, "momme": kan / 1000, "kan": kan}
    assert {unit.symbol: unit.exact for unit in koirules_units()} == expected
    assert all("1891" in unit.source for unit in koirules_units())


@pytest.mark.parametrize(
    ("length", "weight", "grade"),
    [
        ("5 sun", "20 momme", "keep"),
        ("5寸", "20匁", "keep"),
        ("0.5 shaku", "0.02 kan", "keep"),
        ("15.151515 cm", "75 g", "keep"),  # to a millionth the same
        ("15.151514 cm", "75 g", "cull"),
        ("4.99 sun", "75 g", "cull"),
        ("1尺", "20.01 monme", "cull"),
    ],
)
def test_rules_and_records_say_them(length: str, weight: str, grade: str) -> None:
    standard = read_standard(TO_KEEP, "old.koi", registry_with(koirules_shakkan))
    assert standard.grade({"length": length, "weight": weight}).grade == grade


def test_notes_say_them() -> None:
    standard = read_standard(TO_KEEP, "old.koi", registry_with(koirules_shakkan))
    notes = standard.read_notes("P1: 5 sun, 10 momme\nP2: length 4,5寸\nP3: 1貫\n")
    assert [one.unread for one in notes.fish] == [(), (), ()]
    results = [standard.grade(record) for record in notes.records]
    assert [result.possible for result in results] == [("keep",), ("cull",), ("cull",)]
