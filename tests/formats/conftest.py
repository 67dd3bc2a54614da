"""Traits for the tests of records, one or more of each kind."""

from decimal import Decimal

import pytest

from koirules.vocabulary.kinds import Choice, Count, Label, Number, Places, Scale, YesNo
from koirules.vocabulary.traits import Better, Trait, Variety
from koirules.vocabulary.units import UNITS

PLACES = ("left_pectoral", "right_pectoral", "dorsal", "tail")
ALL = (
    Trait("length", "length from nose to tail", Number(UNITS["cm"], Decimal(0), Decimal(90)), titles={"ja": "全長"}),
    Trait("weight", "weight", Number(UNITS["g"], Decimal(0), Decimal(20_000))),
    Trait("age", "age since hatching", Number(UNITS["days"], Decimal(0), Decimal(9000))),
    Trait("girth_ratio", "girth by length", Number(None, Decimal(0), Decimal("0.6"))),
    Trait("hi_cover", "hi cover", Number(UNITS["%"], Decimal(0), Decimal(100)), describe="Share of the back under hi."),
    Trait("kiwa", "edge of the hi", Scale(("blurred", "fair", "sharp", "razor")), Better.MORE, titles={"ja": "切れ"}),
    Trait("steps", "steps of the pattern", Choice(("ippon", "nidan", "sandan"))),
    Trait("kuchibeni", "red lips", YesNo()),
    Trait("shimi_count", "specks", Count(50)),
    Trait("hi_on_fins", "hi on the fins", Places(PLACES)),
    Trait("bloodline", "bloodline", Label()),
)


@pytest.fixture(scope="session")
def traits():
    return {trait.name: trait for trait in ALL}


@pytest.fixture(scope="session")
def variety(traits):
    return Variety("kohaku", "kohaku", traits)
