"""What sorters say of the body and its parts: a table of wordings, and the means by which others are read."""

from pathlib import Path

import pytest

import koirules
from koirules.notes.reader import NotesReader, cells
from koirules.testing import registry_with
from tests.notes.noted_pages import tabled

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
    right, unread, otherwise = tabled(TABLE, READER, RULES)
    assert len(right) > 3_000
    assert otherwise == []
    assert len(unread) <= len(right) / 50, unread


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


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("short head", {"head_shape": "poor or fair"}),
        ("it's short in the head", {"head_shape": "poor or fair"}),
        ("head on the short side", {"head_shape": "poor or fair"}),
        ("shortish head", {"head_shape": "poor or fair or good"}),
        ("a broad head on this young lady", {"head_shape": "good"}),
        ("mesu for sure", {"sex": "female"}),
        ("mesu maybe", {"sex": "?"}),
        # Words that are said of patches and edges as well are of the fish where nothing else was spoken of.
        ("small", {"size_by_eye": "runt or small"}),
        ("17 cm, long", {"length": "17 cm", "build": "slim or trim or torpedo"}),
        ("sandan, small", None),
        ("tail stem, thin", None),
        ("kiwa sharp, thick", None),
        ("not small", None),
    ],
)
def test_short_words_of_the_whole_fish(text, cells):
    assert said(text) == cells


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("the kiwa could be sharper", {"kiwa": "blurred or fair"}),
        ("I do wish the head were a touch wider", {"head_shape": "poor or fair"}),
        ("I'd like broader shoulders", {"shoulders": "weak or fair"}),
        ("shoulders should be a bit fuller", {"shoulders": "weak or fair"}),
        ("shoulders broader", None),
        ("the tail stem will be thicker", {}),
        ("the tail stem couldn't be thicker", None),
        ("I wish it were 14 cm", None),
    ],
)
def test_who_wishes_for_more_says_that_it_falls_short(text, cells):
    assert said(text) == cells


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("scale missing right side", {"scale_loss": "1 to 50"}),
        ("scale missing, right shoulder", {"scale_loss": "1 to 50"}),
        ("mouth crooked about 2 mm", {"mouth": "malformed"}),
        ("mouth crooked, about two millimetres off", {"mouth": "malformed"}),
        ("dorsal split near the base", {"fin_damage": "dorsal, perhaps left_pectoral right_pectoral pelvic anal tail"}),
        ("right gill cover curled at the lower edge only", {"gill_cover_faults": "right_gill"}),
        # A place behind a torn fin may be another one that is torn.
        ("dorsal torn, at the tail", None),
        ("mouth good on the left", None),
        ("dorsal not split near the base", None),
    ],
)
def test_where_a_fault_is_and_how_large_says_no_more_than_that_there_is_one(text, cells):
    assert said(text) == cells


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        # What a word says by itself hangs on what was spoken of before it, if anything was.
        ("tiny", {"size_by_eye": "runt"}),
        ("two shimi, tiny", {"shimi_count": "2", "shimi_size": "0 mm to 1.99999 mm"}),
        ("like a carrot", {"build": "thick_front"}),
        ("shoulders broad, like a carrot", {"shoulders": "strong", "build": "thick_front"}),
        ("beni orange, like a carrot", None),
        ("quite lively", {"health": "well"}),
        ("16 cm, quite lively", {"length": "16 cm", "health": "well"}),
        ("inazuma, quite lively", None),
        ("trim for its age", {"build": "trim"}),
        # A short body may be a slim one, and a large frame is not fat.
        ("short body", {"build": "trim or torpedo or heavy or thick_front"}),
        ("jumbo frame", {"build": "torpedo or heavy or thick_front"}),
        ("not the broadest head", {"head_shape": "poor or fair"}),
        ("yellow belly", {"shiroji": "yellow or cream or white"}),
    ],
)
def test_what_a_word_says_hangs_on_what_was_spoken_of_before_it(text, cells):
    assert said(text) == cells
