"""Which of several standards is the one for a fish."""

from __future__ import annotations

import pytest

from koirules.grading.purposes import Purpose, Wanted, fitting
from koirules.vocabulary.spoken import Said

KOHAKU, SHOWA = Said("kohaku"), Said("showa")
GINRIN = Said("kohaku", frozenset({"ginrin"}))
FOR = [
    Purpose((KOHAKU,), "tosai"),
    Purpose((KOHAKU,), None),
    Purpose((SHOWA,), None),
    Purpose((), "tosai"),
    Purpose((), None),
]


def wanted(variety: Said | None, stage: str | None, *, asked: tuple[bool, bool] = (True, True)) -> Wanted:
    return Wanted(variety, stage, *asked)


@pytest.mark.parametrize(
    ("variety", "stage", "place"),
    [
        (KOHAKU, "tosai", 0),
        (KOHAKU, "nisai", 1),
        (KOHAKU, None, 1),
        (SHOWA, "tosai", 2),
        (GINRIN, "tosai", 3),
        (GINRIN, "nisai", 4),
        (None, None, 4),
        (None, "tosai", 3),
    ],
)
def test_the_closest_standard_is_taken(variety: Said | None, stage: str | None, place: int) -> None:
    assert fitting(FOR, wanted(variety, stage)) == [place]


def test_a_fish_that_no_standard_is_for_has_none() -> None:
    assert fitting(FOR[:3], wanted(GINRIN, "tosai")) == []
    assert fitting(FOR[:1], wanted(KOHAKU, None)) == []


def test_between_two_standards_for_the_same_nothing_decides() -> None:
    assert fitting([*FOR[:2], Purpose((KOHAKU,), "tosai")], wanted(KOHAKU, "tosai")) == [0, 2]


def test_what_a_batch_has_no_column_for_is_not_asked() -> None:
    no_stage = (True, False)
    assert fitting(FOR[:1], wanted(KOHAKU, None, asked=no_stage)) == [0]
    assert fitting([FOR[0], FOR[2]], wanted(None, None, asked=(False, False))) == [0]
    assert fitting(
        [Purpose((KOHAKU,), "tosai"), Purpose((KOHAKU,), "nisai")], wanted(KOHAKU, None, asked=no_stage)
    ) == [0, 1]


def test_a_standard_for_several_varieties_stands_between_one_for_one_and_one_for_any():
    both, other, every = Purpose((KOHAKU, SHOWA), None), Purpose((SHOWA,), "tosai"), Purpose((), None)
    assert fitting([every, both], wanted(KOHAKU, None)) == [1]
    assert fitting([every, both, Purpose((KOHAKU,), None)], wanted(KOHAKU, None)) == [2]
    assert fitting([both, other], wanted(KOHAKU, None)) == [0]
    assert fitting([every, other], wanted(KOHAKU, None)) == [0]
