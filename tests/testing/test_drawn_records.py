"""Invented records of any vocabulary can be read, and the rule file that names everything leaves nothing out."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from koirules import read_standard
from koirules.plugins import registry_with
from koirules.testing import made_records
from koirules.testing.strategies import records, values
from koirules.testing.whole_rules import whole_rules
from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Choice, Count, Kind, Label, Number, Places, Scale, YesNo, words_of
from koirules.vocabulary.misreads import Misread
from koirules.vocabulary.readings import Span
from koirules.vocabulary.units import UNITS

KOHAKU = registry_with().varieties["kohaku"]
STANDARD = read_standard(whole_rules(KOHAKU).text, registry=registry_with())
KINDS: list[Kind] = [
    YesNo(),
    Count(1),
    Number(UNITS["weeks"], Decimal("0.5"), Decimal(52)),
    Number(None, Decimal("-0.000001"), Decimal("0.000001")),
    Number(UNITS["cm"], Decimal(-900_000), Decimal(900_000)),
    Scale(("dull", "fair", "good")),
    Choice(("left", "right")),
    Places(("nose", "tail")),
    Label(),
]


@settings(max_examples=60, deadline=None)
@given(records(KOHAKU.traits))
def test_a_drawn_record_of_a_whole_vocabulary_is_graded(record: dict[str, str]) -> None:
    result = STANDARD.grade(record)
    assert result.score_low <= result.score_high
    assert set(result.possible) <= {"keep", "cull"}


@settings(max_examples=40, deadline=None)
@given(records(STANDARD.traits, holes=False, unsure=False))
def test_a_record_without_holes_that_is_sure_of_all_is_settled(record: dict[str, str]) -> None:
    assert set(record) == set(KOHAKU.traits)
    assert STANDARD.grade(record).grade is not None


@pytest.mark.parametrize("kind", KINDS, ids=str)
@pytest.mark.parametrize("unsure", [True, False])
def test_drawn_values_can_be_read(kind: Kind, unsure: bool) -> None:
    @settings(max_examples=50, deadline=None)
    @given(values(kind, unsure=unsure))
    def each(cell: str) -> None:
        reading = read_value(kind, cell)
        assert reading is not None and not isinstance(reading, Misread), cell
        if not unsure and isinstance(reading, Span):
            assert reading.low == reading.high

    each()


@settings(max_examples=30, deadline=None)
@given(st.integers(0, 10_000))
def test_made_records_can_be_read_and_are_the_same_for_a_seed(seed: int) -> None:
    made = made_records(KOHAKU.traits.values(), 3, seed)
    assert made == made_records(KOHAKU.traits.values(), 3, seed)
    for record in made:
        STANDARD.grade(record)


def test_made_records_have_holes_values_that_are_not_sure_and_ends_of_ranges() -> None:
    made = made_records(KOHAKU.traits.values(), 60)
    shares = [len(record) / len(KOHAKU.traits) for record in made]
    assert 0.7 < sum(shares) / len(shares) < 0.9
    lengths = {record["length"] for record in made if "length" in record}
    kind = KOHAKU.traits["length"].kind
    assert isinstance(kind, Number)
    assert str(kind.low) in lengths and any(" to " in length for length in lengths)
    assert all(len(record) == len(KOHAKU.traits) for record in made_records(KOHAKU.traits.values(), 5, missing=0))


def test_the_rule_file_that_names_everything_names_every_trait_and_every_word() -> None:
    rules = whole_rules(KOHAKU)
    assert set(rules.lines.values()) == set(KOHAKU.traits)
    words = set(rules.text.replace(",", " ").split())
    for trait in KOHAKU.traits.values():
        assert set(words_of(trait.kind)) <= words, trait.name
