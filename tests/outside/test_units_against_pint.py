"""Conversions of units against the library pint, whose definitions are those of the SI and of the BIPM's tables.

pint's month is a twelfth of its year of 365.25 days (the Julian year), as the rule language says.
"""

import itertools
from decimal import Decimal

import pint
import pytest

from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Number
from koirules.vocabulary.readings import Span, write_number
from koirules.vocabulary.units import UNITS

IN_PINT = {
    "mm": "millimeter",
    "cm": "centimeter",
    "m": "meter",
    "inch": "inch",
    "mg": "milligram",
    "g": "gram",
    "kg": "kilogram",
    "days": "day",
    "weeks": "week",
    "months": "month",
    "years": "year",
    "deg": "degree",
    "degC": "degree_Celsius",
    "%": "percent",
}
PAIRS = [(one, other) for one, other in itertools.product(UNITS.values(), repeat=2) if one.dimension is other.dimension]
VALUES = ["1", "2.5", "0.001", "37", "123.456"]


@pytest.fixture(scope="module")
def pint_units():
    return pint.UnitRegistry(non_int_type=Decimal)


def test_every_unit_has_its_counterpart():
    assert IN_PINT.keys() == UNITS.keys()


@pytest.mark.parametrize("value", VALUES)
@pytest.mark.parametrize(("written", "own"), PAIRS, ids=lambda unit: unit.symbol)
def test_a_value_in_one_unit_is_what_pint_says_it_is_in_another(written, own, value, pint_units):
    kind = Number(own, Decimal(-(10**9)), Decimal(10**9))
    held = next(unit for unit in UNITS.values() if unit.symbol == own.dimension.value)
    # The source of the expected value: pint 0.24 or later, with exact decimals.
    expected = pint_units.Quantity(Decimal(value), IN_PINT[written.symbol]).to(IN_PINT[held.symbol]).magnitude
    in_own = pint_units.Quantity(Decimal(value), IN_PINT[written.symbol]).to(IN_PINT[own.symbol]).magnitude
    for raw, unit in ((f"{value} {written.symbol}", None), (value, written), (float(value), written)):
        reading = read_value(kind, raw, unit)
        assert isinstance(reading, Span)
        assert reading.low == reading.high == pytest.approx(float(expected), rel=1e-15)
        shown = write_number(reading.low, kind).split(" ")[0]
        assert float(shown) == pytest.approx(float(in_own), abs=5.1e-7)
