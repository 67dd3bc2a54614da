"""What sorters say of the body and its parts: a table of wordings, and the means by which others are read."""

from pathlib import Path

import pytest

import koirules
from koirules.notes.reader import NotesReader, cells
from koirules.notes.remarks import Sort
from koirules.testing import registry_with
from tests.notes.noted_pages import fits

PAGE = 'standard "Tin Bucket (invented)" edition 1 variety kohaku\ngrade keep if kiwa at least sharp\ngrade out otherwise\n'
RULES = koirules.read_standard(PAGE, registry=registry_with()).rules
READER = NotesReader.of(RULES)
TABLE = Path(__file__).parent / "said_of_the_body.txt"


def said(text):
    """What a line of remarks says as cells; None where any of it was not understood."""
    (fish,) = READER.read(f"1: {text}").fish
    return None if fish.unread else cells(fish, RULES.traits)


def test_what_sorters_say_of_the_body_is_read_as_they_mean_it():
    """Wordings from memory, as a breeder, a dealer or a helper says them."""
    tried, unread, otherwise = 0, [], []
    for line in TABLE.read_text(encoding="utf-8").splitlines():
        meaning, parted, wordings = line.partition(" = ")
        alternatives = [each.split("+") for each in meaning.split("|")]
        for wording in wordings.split("; ") if parted else ():
            remark = READER.remarks.read(wording)
            tried += 1
            if remark.sort is Sort.UNKNOWN:
                unread.append(wording)
            elif not any(fits(remark, each, RULES, False) for each in alternatives):
                otherwise.append(wording)
    assert tried > 3_000
    assert otherwise == []
    assert len(unread) <= tried / 50, unread


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        # A word that is also said of patches and edges is of the fish where it is all that is said.
        ("straight", {"spine": "straight"}),
        ("a bit crooked", {"spine": "slight"}),
        ("straight ippon", {"steps": "ippon"}),
        ("crooked patch", None),
        ("a flash of red", None),
        ("flashes", {"health": "sick or doubtful"}),
        # A fault is one wherever it is; what is good in one place may be bad in another.
        ("a kink near the tail", {"spine": "bent"}),
        ("three scales gone on the left flank under the dorsal", {"scale_loss": "3"}),
        ("sore on the belly", {"health": "sick"}),
        ("spine straight near the tail", None),
        ("no kink near the tail", None),
        ("a kink in the red", None),
        # Two words for one level are one; two that differ are none.
        ("pectorals big and round", {"pectoral_size": "large"}),
        ("good strong shoulders", {"shoulders": "strong"}),
        ("big small pectorals", None),
        # `on her` is of the fish.
        ("nice broad back on her", {"build": "torpedo or heavy or thick_front"}),
        ("long body with a thin tail", {"build": "slim or trim or torpedo", "tail_stem": "thin"}),
        ("bulky girl", {"build": "heavy", "sex": "female"}),
        ("head patch a little to the right", {"head_patch_place": "off_right"}),
        ("the ulcer has healed", {"scars": "at least 1 of them"}),
    ],
)
def test_how_remarks_on_the_body_are_read(text, cells):
    assert said(text) == cells
