"""What the reader takes for a statement of its own."""

import koirules


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
