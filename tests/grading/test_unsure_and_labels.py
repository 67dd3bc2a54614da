"""Places that are not sure are told, and labels are the same on every machine."""

import unicodedata

import koirules

TEXT = """standard "Trial (an invented house)" edition 1
trait fins as places of (tail, dorsal, anal)
trait line as label
fault marked if count of fins at least 2: no better than low
fault cafe if line is "Café": no better than low
grade high if line is recorded
grade low otherwise
"""


def test_places_that_are_not_sure_are_told():
    result = koirules.read_standard(TEXT).grade({"fins": "tail or dorsal", "line": "x"})
    (reason,) = [reason for reason in result.reasons if reason.name == "marked"]
    assert reason.read == "fins 1 of (tail, dorsal)"


def test_a_label_typed_on_another_machine_is_the_same_label():
    typed = unicodedata.normalize("NFD", "Café")
    assert koirules.read_standard(TEXT).grade({"line": typed}).faults == ("cafe",)
