"""The record of one fish from a mapping: what is read at a glance is what a close look reads."""

import math
from decimal import Decimal
from fractions import Fraction

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from koirules.results.mapping_record import RecordReader
from koirules.results.record import Record
from koirules.vocabulary.cells import CANNOT_TELL, Misread, read_cell
from koirules.vocabulary.kinds import Choice, Count, Label, Number, Places, Scale, YesNo, words_of
from koirules.vocabulary.readings import PlaceSet, Span
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import UNITS, Dimension, Unit


class Odd(float):
    """A double that writes itself in its own way, as those of other libraries do."""

    def __repr__(self):
        return f"Odd({float(self)})"


def number(unit, low, high):
    return Number(UNITS[unit] if unit else None, Decimal(low), Decimal(high))


KINDS = {
    "length": number("cm", "0.5", "125"),
    "short": number("mm", "0", "30"),
    "age": number("months", "0", "240"),
    "water": number("degC", "-5", "40"),
    "ratio": number(None, "-0.1", "0.6"),
    # Ends that are no doubles: the nearest double to each lies outside.
    "narrow": number(None, "0.1000000000000000000001", "0.59999999999999999999"),
    "wide": number(None, "-1E+20", "1E+20"),
    "minute": number(None, "0", "4E-25"),
    "odd unit": Number(Unit("third", Dimension.LENGTH, Decimal("0.3333333333333333333333333")), Decimal(0), Decimal(9)),
    "specks": Count(50),
    "scales": Count(10**20),
    "kiwa": Scale(("blurred", "fair", "sharp")),
    "true": Choice(("true", "none", "true_red")),
    "lips": YesNo(),
    "fins": Places(("left_pectoral", "dorsal", "tail")),
    "line": Label(),
}
READER = RecordReader.of({name: Trait(name, name, kind) for name, kind in KINDS.items()})

NUMBERS = st.one_of(
    st.floats(),
    st.floats(-10, 60),
    st.integers(),
    st.integers(-10, 60),
    st.integers(2**53 - 2, 2**53 + 2),
    st.decimals(),
    st.fractions(),
)
WORDS = st.sampled_from([word for kind in KINDS.values() for word in (*words_of(kind), "none", "True", "yes", " fair")])
THINGS = st.one_of(
    NUMBERS,
    NUMBERS.map(str),
    WORDS,
    st.text(max_size=9),
    st.booleans(),
    st.none(),
    st.complex_numbers(),
    st.dates(),
    st.lists(WORDS, max_size=3),
    st.frozensets(WORDS, max_size=3),
    st.floats(-10, 60).map(Odd),
    st.floats(-10, 60).map(np.float64),
    st.floats(-10, 60, width=32).map(np.float32),
    st.integers(-10, 60).map(np.int64),
    st.booleans().map(np.bool_),
    st.sampled_from(
        [end for kind in KINDS.values() if isinstance(kind, Number) for end in (kind.low, kind.high)]
    ).flatmap(
        lambda end: st.sampled_from(
            [float(end), math.nextafter(float(end), math.inf), math.nextafter(float(end), -math.inf)]
        )
    ),
)


@pytest.mark.parametrize("name", KINDS)
@given(value=THINGS)
@example(value=True)
@example(value=math.nan)
@example(value=math.inf)
@example(value=-0.0)
@example(value=5e-324)
@example(value=1e-25)
@example(value=2**53 + 1)
@example(value=10**400)
@example(value=Decimal("2.5"))
@example(value=Decimal("sNaN"))
@example(value=Fraction(1, 3))
@example(value=Odd(2.0))
@example(value=np.float64(2.5))
@example(value=np.array([1.0]))
@example(value=" ? ")
def test_a_glance_reads_what_a_close_look_reads(name, value):
    closely = read_cell(KINDS[name], value)
    came = READER.read({name: value}, "K01")
    if closely is CANNOT_TELL:
        assert isinstance(came, Record)
        assert (name in came.cannot_tell, name in came.readings) == (True, False)
    elif isinstance(closely, Misread):
        (problem,) = came
        assert (problem.code, problem.cause, problem.mend) == (closely.code, closely.cause, closely.mend)
    else:
        assert isinstance(came, Record)
        # As text, so that 0.0 differs from -0.0, a double from an integer, and a Span from a tuple.
        assert repr(came.readings.get(name)) == repr(closely)


def test_a_record_holds_what_was_recorded_and_its_labels():
    made = READER.read({"fish": 7, "length": 14, "short": 2.5, "fins": {"tail"}, "kiwa": None, "line": " old "}, "")
    assert made == Record(
        "7",
        0,
        {"length": Span(14.0, 14.0), "short": Span(0.25, 0.25), "fins": PlaceSet(4, 4), "line": "old"},
        {"line": "old"},
    )


def test_every_problem_of_a_record_is_told():
    found = READER.read({"lenght": None, "kiwa": "shap", "specks": 1.5, "lips": True}, "K01")
    assert [problem.code for problem in found] == ["unknown-column", "value-unknown-word", "value-not-whole"]
    assert '"length"' in found[0].mend


@pytest.mark.parametrize(("name", "fish"), [(0, "0"), (7, "7"), ("K01", "K01"), ("", ""), (None, "")])
def test_the_name_of_a_fish_is_taken_from_its_record(name, fish):
    assert READER.read({"fish": name}, "").fish == fish


def test_a_label_is_read_in_one_form_at_a_glance_too():
    assert READER.read({"line": "Caf\u0065\u0301"}, "A").labels == {"line": "Caf\u00e9"}
