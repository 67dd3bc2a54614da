"""Words that no trait may have for its name, and labels in the one form in which they are compared."""

import pytest

import koirules
from koirules.vocabulary.cells import read_value
from koirules.vocabulary.kinds import Label, YesNo
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.wellformed import check_trait


@pytest.mark.parametrize("name", ["fish", "none", "grade"])
def test_no_trait_of_a_plugin_is_named_by_a_word_that_records_or_rules_keep(name):
    assert check_trait(Trait(name, name, YesNo()), "a plugin")


def test_no_trait_of_a_house_takes_the_column_of_names():
    with pytest.raises(koirules.StandardError) as caught:
        koirules.read_standard('standard "Trial" edition 1\ntrait fish as label\ngrade high otherwise\n')
    assert any("fish" in str(problem) for problem in caught.value.problems)


def test_a_label_is_the_same_whichever_way_its_letters_were_typed():
    assert read_value(Label(), " Cafe\u0301 ") == read_value(Label(), "Caf\u00e9") == "Caf\u00e9"
