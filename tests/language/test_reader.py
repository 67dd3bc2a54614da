"""What the reader takes for a statement of its own."""

import pytest

import koirules
from koirules.meaning.expressions import Comparison


def test_a_step_called_like_a_head_word_goes_on_with_its_table():
    text = """standard "Trial (an invented house)" edition 1
trait steps_seen as scale points < bonus < term
section a worth 100
points p by steps_seen:
  points gives 1,
  bonus gives 2,
  term gives 3
grade good if score at least 50
grade poor otherwise
"""
    assert koirules.read_standard(text).grade({"steps_seen": "term"}).grade == "good"


@pytest.mark.parametrize(
    ("words", "operands"),
    [
        ("at least", "12 cm"),
        ("at most", "12 cm"),
        ("above", "12 cm"),
        ("below", "12 cm"),
        ("between", "12 cm and 14 cm"),
        ("includes", "head"),
    ],
)
def test_no_not_may_stand_within_a_comparison_that_does_not_begin_with_is(words, operands):
    assert words in {one.value.words for one in Comparison}
    trait = "places of (head, tail)" if words == "includes" else "number in cm from 0 to 90"
    text = (
        f'standard "Trial (an invented house)" edition 1\ntrait seen as {trait}\n'
        f"grade good if seen {words}{{}} {operands}\ngrade poor otherwise\n"
    )
    assert koirules.read_standard(text.format("")).grade({}).possible == ("good", "poor")
    first, *others = words.split()
    for said in (text.format(" not"), text.format("").replace(f" {words} ", " ".join(["", first, "not", *others, ""]))):
        with pytest.raises(koirules.StandardError):
            koirules.read_standard(said)
