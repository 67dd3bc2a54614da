"""Brackets, `not` and signs are bounded together."""

import pytest

import koirules


@pytest.mark.parametrize(
    ("levels", "sign", "inner"), [(11, "-" * 31, "length"), (8, "not " * 31, "length above 5 cm"), (40, "", "length")]
)
def test_brackets_and_signs_together_are_bounded(levels, sign, inner):
    for _ in range(levels):
        inner = f"{sign}({inner})"
    condition = inner if "not" in sign else f"{inner} above 5 cm"
    text = (
        f'standard "t" edition 1\ntrait length as number in cm from 0 to 90\ngrade a if {condition}\ngrade b otherwise'
    )
    with pytest.raises(koirules.StandardError) as caught:
        koirules.read_standard(text)
    assert "nested-too-deep" in {problem.code for problem in caught.value.problems}
