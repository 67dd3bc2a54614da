"""One value as a person, a spreadsheet, a JSON file or Python gives it."""

import datetime
import math
from decimal import Decimal
from unicodedata import normalize

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from koirules.rounds.looks import day_of
from koirules.vocabulary.cells import Misread, read_value
from koirules.vocabulary.kinds import Choice, Count, Label, Number, Places, Scale, YesNo
from koirules.vocabulary.plain_text import numbers_of_a_date
from koirules.vocabulary.readings import NO, NO_OR_YES, YES, PlaceSet, Span, write_reading
from koirules.vocabulary.units import UNITS

LENGTH = Number(UNITS["cm"], Decimal(0), Decimal(90))
WEIGHT = Number(UNITS["g"], Decimal(0), Decimal(25_000))
COVER = Number(UNITS["%"], Decimal(0), Decimal(100))
AGE = Number(UNITS["months"], Decimal(0), Decimal(240))
RATIO = Number(None, Decimal(-1), Decimal(1))
SPECKS = Count(50)
EDGE = Scale(("blurred", "fair", "sharp", "razor"))
STEPS = Choice(("ippon", "nidan", "three_steps"))
FINS = Places(("left_pectoral", "right_pectoral", "dorsal", "tail"))
KINDS = [LENGTH, COVER, AGE, RATIO, SPECKS, EDGE, STEPS, FINS, YesNo(), Label()]


def one(value):
    return Span(value, value)


@pytest.mark.parametrize(
    ("kind", "raw", "reading"),
    [
        (LENGTH, "12.5", one(12.5)),
        (LENGTH, "12.5cm", one(12.5)),
        (LENGTH, " 125 mm ", one(12.5)),
        (LENGTH, "12,5", one(12.5)),
        (LENGTH, "0,125 m", one(12.5)),
        (LENGTH, "１２．５\N{NO-BREAK SPACE}ｃｍ", one(12.5)),
        (LENGTH, "12.5 Centimetres", one(12.5)),
        (LENGTH, "1.25E+01", one(12.5)),
        (LENGTH, "9.99E-07 cm", one(9.99e-07)),
        (LENGTH, "1,25e+002mm", one(12.5)),
        (LENGTH, "1,2E1", one(12.0)),
        (LENGTH, "1E-02 m to 2E+01 mm", Span(1.0, 2.0)),
        (RATIO, "9.99E-07", one(9.99e-07)),
        (SPECKS, "1.2e1", one(12.0)),
        (LENGTH, 9.99e-07, one(9.99e-07)),
        (LENGTH, 12.5, one(12.5)),
        (LENGTH, 12, one(12.0)),
        (LENGTH, Decimal("12.50"), one(12.5)),
        (LENGTH, "-0", one(0.0)),
        (LENGTH, "12 cm to 130 mm", Span(12.0, 13.0)),
        (COVER, "40 % to 50 %", Span(40.0, 50.0)),
        (COVER, "40 to 50 %", Span(40.0, 50.0)),
        (COVER, "40 TO 50", Span(40.0, 50.0)),
        (COVER, "45％", one(45.0)),
        (RATIO, "\N{MINUS SIGN}0.5", one(-0.5)),
        (SPECKS, 2.0, one(2.0)),
        (SPECKS, "2.0", one(2.0)),
        (SPECKS, "2 to 3", Span(2.0, 3.0)),
        (EDGE, "fair", 0b0010),
        (EDGE, "FAIR", 0b0010),
        (EDGE, "fair or razor", 0b1010),
        (EDGE, "fair to razor", 0b1110),
        (EDGE, "blurred or sharp to razor", 0b1101),
        (STEPS, "three steps", 0b100),
        (STEPS, "Three-Steps or nidan", 0b110),
        (YesNo(), "yes", YES),
        (YesNo(), "No", NO),
        (YesNo(), "TRUE", YES),
        (YesNo(), False, NO),
        (YesNo(), "yes or no", NO_OR_YES),
        (FINS, "none", PlaceSet(0, 0)),
        (FINS, "left pectoral tail", PlaceSet(0b1001, 0b1001)),
        (FINS, "left_pectoral, tail", PlaceSet(0b1001, 0b1001)),
        (FINS, "dorsal+tail;left-pectoral", PlaceSet(0b1101, 0b1101)),
        (FINS, "tail or none", PlaceSet(0, 0b1000)),
        (FINS, ["left pectoral", "tail"], PlaceSet(0b1001, 0b1001)),
        (FINS, frozenset({"tail"}), PlaceSet(0b1000, 0b1000)),
        (FINS, (), PlaceSet(0, 0)),
        (Label(), "  line A ", "line A"),
        (Label(), 7.0, "7"),
        (Label(), 12.5, "12.5"),
        (Label(), datetime.datetime(2026, 5, 12, 0, 0), "2026-05-12"),
        *((kind, blank, None) for kind in KINDS for blank in (None, "", " \t\N{NO-BREAK SPACE}", math.nan)),
    ],
)
def test_a_value_is_read_as_it_was_meant(kind, raw, reading):
    assert read_value(kind, raw) == reading


@pytest.mark.parametrize(
    ("raw", "reading"),
    [("125", 12.5), (125, 12.5), ("12.5 cm", 12.5), ("125 to 125", 12.5), ("0.125 m", 12.5)],
)
def test_a_number_without_a_unit_is_in_the_unit_of_its_column(raw, reading):
    assert read_value(LENGTH, raw, UNITS["mm"]) == one(reading)


def test_a_number_without_any_unit_is_in_the_unit_of_its_trait():
    assert read_value(AGE, 12) == one(365.25)


def test_a_conversion_is_exact_before_it_becomes_a_double():
    # 0.1 cm + 0.2 cm style errors would give 0.30000000000000004.
    assert read_value(LENGTH, "3 mm") == one(0.3)
    assert read_value(LENGTH, 0.003, UNITS["m"]) == one(0.3)


@pytest.mark.parametrize(
    ("kind", "raw", "code", "words"),
    [
        (WEIGHT, "1,250", "value-comma", ['"1.250"', '"1250"']),
        (LENGTH, "1,250", "value-comma", ['Write "1.250".']),  # 1250 cm is no length of a koi
        (WEIGHT, "1 250 g", "value-grouped-digits", ['"1250 g"']),
        (WEIGHT, "1.250,5 g", "value-grouped-digits", ['"1250.5 g"']),
        (LENGTH, "1 250 mm", "value-grouped-digits", ["from 0 cm to 90 cm"]),
        (LENGTH, "140", "value-out-of-range", ["0 cm to 90 cm", '"140 mm"']),
        (LENGTH, 1400, "value-out-of-range", ["0 cm to 90 cm"]),
        (LENGTH, "5 ft", "value-unknown-unit", ["mm, cm, m or inch"]),
        (LENGTH, "12 kg", "value-wrong-unit", ["kg", "length", "mm, cm, m or inch"]),
        (LENGTH, "50 to 40", "value-ends-swapped", ['"40 to 50"']),
        (LENGTH, "40 cm to 50 cm to 60 cm", "value-not-a-number", ["0 cm to 90 cm"]),
        (LENGTH, "40–50", "value-joined-by-sign", ['"40 to 50"']),
        (LENGTH, "12 or 13", "value-either-number", ['"12 to 13"']),
        (LENGTH, "40-50 cm?", "value-joined-by-sign", ['"40 to 50 cm"']),
        (LENGTH, "1E-01-2E-01", "value-joined-by-sign", ['"1E-01 to 2E-01"']),
        (LENGTH, "1 250E-2 mm", "value-grouped-digits", ['"1250E-2 mm"']),
        (LENGTH, "1E31", "value-too-many-digits", ["digits"]),
        (LENGTH, "0E-31", "value-too-many-digits", ["digits"]),
        (LENGTH, f"1E{'9' * 900}", "value-too-many-digits", ["digits"]),
        (LENGTH, 1e-31, "value-too-many-digits", ["digits"]),
        (LENGTH, "n/a", "value-mark-for-unknown", ["empty the cell"]),
        (LENGTH, "long", "value-not-a-number", ["0 cm to 90 cm"]),
        (LENGTH, "3-Apr", "value-date", ['"Text"', '"3 to 4"']),
        (LENGTH, datetime.date(2026, 4, 3), "value-date", ["2026-04-03", '"Text"', '"3 to 4"']),
        (SPECKS, datetime.datetime(2026, 3, 4), "value-date", ["2026-03-04", '"3 to 4"']),
        (SPECKS, datetime.time(4, 3), "value-date", ['"3 to 4"']),
        (SPECKS, datetime.timedelta(days=4, hours=3), "value-date", ['"20 to 25"']),
        (SPECKS, "Apr-45", "value-date", ['"4 to 45"']),
        (SPECKS, "2026-04-03 00:00", "value-date", ['"3 to 4"']),
        (SPECKS, "4.3.26", "value-date", ['"3 to 4"']),
        (SPECKS, "3-Mar", "value-date", ['"3"']),
        (SPECKS, "Apr-2026", "value-date", ['"20 to 25"']),
        (RATIO, "3-Apr", "value-date", ['"-0.2 to 0"']),
        (EDGE, datetime.date(2026, 4, 3), "value-date", ['"blurred"']),
        (LENGTH, math.inf, "value-infinite", ["infinite"]),
        (LENGTH, "9" * 60, "value-too-many-digits", ["digits"]),
        (LENGTH, "x" * 1001, "value-too-long", ["1,001"]),
        (LENGTH, True, "value-truth", ["TRUE"]),
        (LENGTH, [12], "value-list", ["list"]),
        (LENGTH, object(), "value-of-no-kind", ["object"]),
        (RATIO, "24 %", "value-unit-not-wanted", ['"0.24"']),
        (RATIO, "0.24 cm", "value-unit-not-wanted", ['"0.24"']),
        (SPECKS, 2.5, "value-not-whole", ["whole number"]),
        (SPECKS, "3 specks", "value-unit-not-wanted", ['"3"']),
        (SPECKS, 51, "value-out-of-range", ["0 to 50"]),
        (SPECKS, "-", "value-mark-for-unknown", ['"0"']),
        (EDGE, "shap", "value-unknown-word", ['"sharp"', "blurred, fair, sharp or razor"]),
        (EDGE, 3, "value-number-for-word", ["blurred, fair, sharp or razor"]),
        (EDGE, "razor to fair", "value-ends-swapped", ['"fair to razor"']),
        (EDGE, "fair/sharp", "value-joined-by-sign", ['"fair or sharp"']),
        (STEPS, "ippon to nidan", "value-no-order", ['"ippon or nidan"']),
        (YesNo(), 1, "value-number-for-word", ['"yes" or "no"']),
        (FINS, "none tail", "value-none-with-places", ['"none"']),
        (FINS, "left pectral", "value-unknown-word", ['"left_pectoral"']),
        (FINS, ["tail", 3], "value-number-for-word", ["dorsal"]),
        (FINS, "tail and dorsal", "value-unknown-word", ['Leave out "and": write "tail dorsal"']),
        (FINS, "tail&dorsal", "value-unknown-word", ['Leave out "&": write "tail dorsal"']),
        (FINS, "tail, dorsal And left pectoral", "value-unknown-word", ['write "tail, dorsal left pectoral"']),
        (FINS, "tail and dorsl", "value-unknown-word", ['"dorsl" in "tail and dorsl"', '"dorsal"']),
        (FINS, "tail and none", "value-none-with-places", ['"tail and none"']),
        (FINS, "and", "value-unknown-word", ['Write "none"']),
        (FINS, "yes", "value-places-not-named", ['Write "at least 1 of them"']),
        (FINS, True, "value-places-not-named", ['Write "at least 1 of them"']),
        (FINS, "x", "value-mark-for-unknown", ['"none"', '"at least 1 of them"']),
    ],
)
def test_a_value_that_cannot_be_read_says_what_to_write(kind, raw, code, words):
    misread = read_value(kind, raw)
    assert isinstance(misread, Misread)
    assert misread.code == code
    for word in words:
        assert word in f"{misread.cause} {misread.mend}"


@pytest.mark.parametrize(
    ("kind", "mend"),
    [(LENGTH, '"36 cm to 45 cm"'), (Count(1), '"0 to 1"'), (Count(4), '"1 to 2"'), (RATIO, '"-0.2 to 0"')],
)
def test_the_example_of_an_unsure_value_is_one_that_the_trait_can_have(kind, mend):
    misread = read_value(kind, "about right")
    assert mend in misread.mend
    assert isinstance(read_value(kind, mend.strip('"')), Span)


@pytest.mark.parametrize(
    ("kind", "raw", "unit", "mend"),
    [
        (LENGTH, "120?", "mm", "115 to 125"),
        (LENGTH, "roughly 1.2E+02 ??", "mm", "115 to 125"),
        (LENGTH, "120+", "mm", "120 to 130"),
        (LENGTH, "about 12-13 cm", "mm", "12 to 13 cm"),
        (LENGTH, "about 12 to 13 cm", "mm", "12 to 13 cm"),
        (LENGTH, "~0", "mm", "0 to 20"),
        (SPECKS, "~0", None, "0 to 1"),
        (SPECKS, "48?", None, "46 to 50"),
    ],
)
def test_a_rough_number_is_answered_with_what_it_may_have_meant(kind, raw, unit, mend):
    misread = read_value(kind, raw, UNITS[unit] if unit else None)
    assert misread.code == "value-roughly"
    assert misread.mend == f'Write the lowest and the highest that it could be, such as "{mend}".'


@pytest.mark.parametrize(
    ("kind", "raw", "unit", "low", "high"),
    [
        # said.md: `about N` is N less and more a twentieth, counts rounded outward; `over` stops a millionth beside N.
        (LENGTH, "about 14 cm", None, 13.3, 14.7),
        (LENGTH, "ca. 120", "mm", 11.4, 12.6),
        (LENGTH, "~120", "mm", 11.4, 12.6),
        (LENGTH, "ca. 12,5", None, 11.875, 13.125),
        (LENGTH, "~ 890", "mm", 84.55, 90.0),
        (LENGTH, "over 120", "mm", 12.000001, 90.0),
        (LENGTH, ">=120", "mm", 12.0, 90.0),
        (LENGTH, "120 or more", "mm", 12.0, 90.0),
        (LENGTH, "<120", "mm", 0.0, 11.999999),
        (LENGTH, "up to 120", "mm", 0.0, 12.0),
        (COVER, "at least 3 %", None, 3.0, 100.0),
        (COVER, "over 0", None, 0.000001, 100.0),
        (COVER, "under 20 %", None, 0.0, 19.999999),
        (SPECKS, "about 3", None, 2.0, 4.0),
        (SPECKS, "over 3", None, 4.0, 50.0),
        (SPECKS, "fewer than 3", None, None, None),
        (SPECKS, "less than 3", None, 0.0, 2.0),
        (RATIO, "~-0.24", None, -0.252, -0.228),
    ],
)
def test_an_open_ended_number_is_every_number_that_it_could_be(kind, raw, unit, low, high):
    read = read_value(kind, raw, UNITS[unit] if unit else None)
    assert (read == Span(low, high)) if low is not None else isinstance(read, Misread)


@pytest.mark.parametrize(
    ("raw", "code"),
    [
        ("over 90 cm", "value-out-of-range"),
        ("about 1400", "value-out-of-range"),
        ("ca. 12 kg", "value-wrong-unit"),
        ("over 5 ft", "value-unknown-unit"),
    ],
)
def test_an_open_ended_number_that_cannot_be_is_told(raw, code):
    assert read_value(LENGTH, raw).code == code


def test_an_open_ended_bare_share_of_at_most_one_is_refused_with_both_mends():
    misread = read_value(COVER, "over 0.4")
    assert misread.mend.split('"')[1::2] == ["over 40 %", "over 0.4 %"]


@pytest.mark.parametrize("word", ["WAHR", "Oui", "ja", "はい", "x", "✓", "sí", "Y", "sim"])
def test_yes_is_read_as_people_of_several_countries_write_it(word):
    assert read_value(YesNo(), word) == YES


@pytest.mark.parametrize("word", ["FALSCH", "nein", "non", "いいえ", "n"])
def test_no_is_read_as_people_of_several_countries_write_it(word):
    assert read_value(YesNo(), word) == NO


ROUGH = ("ca. {}", "~{}", "about {}", "{}?", "{}+", "< {}", "ca. {}-{}", "~{} to {}", "{}-Apr", "Apr-{}", "{}:30")
NUMBERS_AS_WRITTEN = st.one_of(
    st.integers(0, 130).map(str), st.floats(-1, 1e5).map(str), st.decimals(-9, 9, places=3).map(str)
)


@pytest.mark.parametrize("kind", [LENGTH, COVER, AGE, RATIO, SPECKS])
@given(form=st.sampled_from(ROUGH), one=NUMBERS_AS_WRITTEN, other=NUMBERS_AS_WRITTEN, data=st.data())
def test_a_mend_of_a_rough_number_or_a_date_is_read_without_a_problem(kind, form, one, other, data):
    units = [unit for unit in UNITS.values() if isinstance(kind, Number) and unit.dimension is kind.dimension]
    unit = data.draw(st.sampled_from([None, *units]))
    misread = read_value(kind, form.format(one, other), unit)
    if isinstance(misread, Misread) and misread.code in {"value-roughly", "value-date"}:
        better = misread.mend.rpartition(' "')[2].rstrip('".')
        assert isinstance(read_value(kind, better, unit), Span)


def test_a_number_of_thousands_of_digits_is_told_as_such():
    # Python refuses to write such a number out as text.
    assert read_value(LENGTH, 10**5000).code == "value-too-many-digits"


def test_a_unit_of_the_column_on_a_plain_number_is_told():
    assert read_value(RATIO, "0.5", UNITS["cm"]).code == "column-unit-not-wanted"


UNITS_OR_NONE = st.none() | st.sampled_from(list(UNITS.values()))
TEXTS = st.text() | st.text("0123456789.,-+eE%~/ tocrmkgn'\"", max_size=30)
THINGS = st.one_of(
    st.integers(),
    st.floats(),
    st.decimals(),
    st.fractions(),
    st.complex_numbers(),
    st.booleans(),
    st.binary(),
    st.datetimes(),
    st.dates(),
    st.times(),
    st.timedeltas(),
    st.dictionaries(st.text(max_size=3), st.integers(), max_size=2),
    st.lists(st.text() | st.integers() | st.none() | st.decimals(), max_size=4),
    st.frozensets(st.sampled_from(FINS.places)),
    st.builds(object),
)


@pytest.mark.parametrize("kind", KINDS)
@given(raw=TEXTS | THINGS, unit=UNITS_OR_NONE)
@example(raw="1E-99", unit=None)
@example(raw=Decimal("1E+999999"), unit=UNITS["kg"])
@example(raw=Decimal("sNaN"), unit=None)
@example(raw=["none", "\ud800"], unit=None)
def test_no_value_makes_reading_raise(kind, raw, unit):
    read_value(kind, raw, unit)


def decimals_in(kind):
    return st.decimals(kind.low, kind.high, places=6)


def spans(kind):
    def held(value):
        return float(value if kind.unit is None else kind.unit.to_held(value))

    return st.tuples(decimals_in(kind), decimals_in(kind)).map(lambda ends: Span(held(min(ends)), held(max(ends))))


READINGS = st.one_of(
    *(st.tuples(st.just(kind), spans(kind)) for kind in (LENGTH, COVER, AGE, RATIO)),
    st.tuples(st.just(SPECKS), st.tuples(st.integers(0, 50), st.integers(0, 50)).map(lambda ends: Span(*sorted(ends)))),
    st.tuples(st.just(EDGE), st.integers(1, 15)),
    st.tuples(st.just(STEPS), st.integers(1, 7)),
    st.tuples(st.just(YesNo()), st.integers(1, 3)),
    st.tuples(st.just(FINS), st.integers(0, 15).map(lambda bits: PlaceSet(bits, bits))),
    st.tuples(st.just(Label()), st.text(min_size=1).map(lambda text: normalize("NFC", text.strip())).filter(bool)),
)


@given(READINGS)
def test_what_is_written_is_read_again_as_the_same(pair):
    kind, reading = pair
    assert read_value(kind, write_reading(kind, reading)) == reading


@pytest.mark.parametrize("written", ["2026-11-03", "03.11.2026", "3. 11. 2026", "2026/11/03", "2026年11月3日"])
def test_a_day_is_read_as_spreadsheets_of_several_countries_write_it(written):
    assert day_of(written) == datetime.date(2026, 11, 3)


def test_a_day_with_slashes_is_read_only_where_it_can_be_one_day():
    assert day_of("25/11/2026") == day_of("11/25/2026") == datetime.date(2026, 11, 25)
    assert day_of("11/11/2026") == datetime.date(2026, 11, 11)
    assert day_of("03/11/2026") is None
    assert day_of("31.02.2026") is None


@pytest.mark.parametrize("raw", ["no", "No", "nein", "FALSE", False])
def test_no_in_a_cell_of_places_is_none_of_them(raw):
    assert read_value(FINS, raw) == read_value(FINS, "none")


def test_yes_and_no_are_places_where_a_trait_has_places_of_that_name():
    kind = Places(("yes", "no"))
    assert read_value(kind, "no") == PlaceSet(2, 2)


@pytest.mark.parametrize("text", ["-0", "at least -0", "at most -0", "-0 to -0", -0.0])
def test_zero_has_no_sign(text):
    reading = read_value(RATIO, text)
    assert isinstance(reading, Span)
    for end in (reading.low, reading.high):
        assert end or math.copysign(1, end) == 1


def test_the_unit_that_may_have_been_meant_is_the_nearest_that_fits():
    def mend(kind, text):
        misread = read_value(kind, text)
        assert isinstance(misread, Misread)
        return misread.mend

    assert "95 mm" in mend(LENGTH, "95")
    assert "300 weeks" in mend(AGE, "300")
    assert "30000 mg" in mend(WEIGHT, "30000")
    assert mend(LENGTH, "130 cm") == "Check the number."


@pytest.mark.parametrize(
    ("raw", "meant"),
    [
        ("left pectorl", "left_pectoral"),
        ("left pectorl tail", "left_pectoral"),
        ("tail right pectorl dorsal", "right_pectoral"),
        ("tail dorsl", "dorsal"),
        ("dorsl tail", "dorsal"),
    ],
)
def test_a_misspelt_place_is_guessed_whatever_stands_beside_it(raw, meant):
    misread = read_value(FINS, raw)
    assert isinstance(misread, Misread)
    assert f'Did you mean "{meant}"?' in misread.mend


def test_a_misspelt_place_of_two_words_is_guessed_by_both():
    # Its first word alone is nearest to another place, and three words are near to none.
    misread = read_value(Places(("left_eye", "left_pectoral", "tail")), "left pectorl tail")
    assert isinstance(misread, Misread)
    assert 'Did you mean "left_pectoral"?' in misread.mend


@pytest.mark.parametrize(
    ("raw", "least", "most"),
    [
        ("1 of them", 1, 1),
        ("3 of them", 3, 3),
        ("1 to 3 of them", 1, 3),
        ("at least 2 of them", 2, 4),
        ("over 2 of them", 3, 4),
        ("at most 2 of them", 0, 2),
        ("under 2 of them", 0, 1),
        ("at most 1 of them", 0, 1),
    ],
)
def test_so_many_places_are_as_many_as_the_words_say(raw, least, most):
    assert read_value(FINS, raw) == PlaceSet(0, 0b1111, least, most)


@pytest.mark.parametrize("raw", ["0 of them", "at most 0 of them", "under 1 of them"])
def test_a_number_of_places_that_leaves_none_is_none(raw):
    assert read_value(FINS, raw) == PlaceSet(0, 0)


@pytest.mark.parametrize("raw", ["4 of them", "at least 4 of them", "over 3 of them"])
def test_a_number_of_places_that_takes_all_is_all(raw):
    assert read_value(FINS, raw) == PlaceSet(0b1111, 0b1111)


@pytest.mark.parametrize(
    "raw", ["5 of them", "at least 5 of them", "over 4 of them", "under 0 of them", "3 to 1 of them", "1 to 5 of them"]
)
def test_more_places_than_there_are_or_fewer_than_none_is_misread(raw):
    assert isinstance(read_value(FINS, raw), Misread)


@pytest.mark.parametrize(
    ("written", "numbers"),
    [
        ("3-Apr", ("3", "4")),
        ("4-Mar", ("3", "4")),
        ("Jan-2", ("1", "2")),
        ("12-Dec", ("12", "12")),
        ("2026-04-03", ("3", "4")),
        ("2026-12-31", ("12", "31")),
        ("03.04.2026", ("3", "4")),
        ("3/4/26", ("3", "4")),
        ("3:40", ("3", "40")),
        ("Apr-2026", None),
        ("Apr-202", None),
        ("3 to 4", None),
    ],
)
def test_the_numbers_that_a_spreadsheet_made_a_date_of_are_told_the_lower_first(written, numbers):
    assert numbers_of_a_date(written) == numbers
