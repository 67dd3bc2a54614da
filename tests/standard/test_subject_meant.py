"""What a standard without a variety is about: a house that sorts koi by its own traits is given the cautions for koi."""

import pytest

import koirules
from koirules.builtin.koi import KOI
from koirules.vocabulary.subject import ITEM

HEADER = 'standard "Tin Bucket (an invented house)" edition 1\n'
GRADES = "grade keep if {0}\ngrade cull otherwise\n"


POTTERY = tuple(f"{name} as yes or no" for name in ("lid", "lip", "rim"))


def subject(*traits, reads):
    text = "".join(f"trait {trait}\n" for trait in traits)
    return koirules.read_standard(f"{HEADER}{text}{GRADES.format(reads)}").subject


def test_a_house_with_traits_of_koi_is_told_how_to_handle_fish():
    found = subject(
        "spine as scale bent < slight < straight",
        "kiwa as scale blurred < sharp",
        "bonus_mark as yes or no",
        "length as number in cm from 1 to 90",
        reads="spine is straight and kiwa is sharp",
    )
    assert found.one == "fish"
    assert found.cautions == KOI.cautions
    assert found.drawing == ""


@pytest.mark.parametrize(
    ("traits", "reads"),
    [
        # What anything has: a length, a weight, an age, a place.
        (("length as number in cm from 1 to 90", "weight as number in g from 1 to 9000", "pond as label"), "length above 3 cm"),
        # One word in common with koi may be chance, and so may two of many.
        (("health as scale sick < well", "glaze as yes or no"), "health is well"),
        (("health as scale sick < well", "lustre as scale dull < good", *POTTERY), "lid"),
        # The same word for something of another kind.
        (("spine as count up to 9", "kiwa as yes or no"), "kiwa"),
    ],
)  # fmt: skip
def test_a_house_about_anything_else_is_told_nothing_about_fish(traits, reads):
    assert subject(*traits, reads=reads) == ITEM
