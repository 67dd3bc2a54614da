"""What sorters say of white, red, its edges, small marks and the skin, and what may stand behind it."""

from pathlib import Path

import pytest

import koirules
from koirules.notes.reader import NotesReader, cells
from koirules.testing import registry_with
from tests.notes.noted_pages import tabled

PAGE = 'standard "Tin Bucket (invented)" edition 1 variety kohaku\ngrade keep if kiwa at least sharp\ngrade out otherwise\n'
RULES = koirules.read_standard(PAGE, registry=registry_with()).rules
READER = NotesReader.of(RULES)
TABLE = Path(__file__).parent / "said_of_colour_and_skin.txt"


def said(text):
    """What a line of remarks says as cells; None where any of it was not understood."""
    (fish,) = READER.read(f"1: {text}").fish
    return None if fish.unread else cells(fish, RULES.traits)


def test_what_sorters_say_of_colour_and_skin_is_read_as_they_mean_it():
    """Wordings from memory, as a breeder, a dealer or a helper says them."""
    right, unread, otherwise = tabled(TABLE, READER, RULES)
    assert len(right) > 2_000
    assert (unread, otherwise) == ([], [])


@pytest.mark.parametrize(
    ("behind", "same"),
    [
        ("for a tosai", True),
        ("for such a small fish", True),
        ("for a fish of this age", True),
        ("since last spring", True),
        ("from the mud pond", True),
        ("from the long trip", True),
        ("in this light", True),
        ("under the lamp", True),
        ("across the whole lot", True),
        ("on most of them", True),
        ("as I like it", True),
        ("the way you want it", True),
        ("this year", True),
        ("right to the end", True),
        ("down the left side", True),
        ("like an old tree", True),
        ("as a drum", True),
        ("for the left eye", False),
        ("since it fell", False),
        ("from the shoulder patch of another", False),
        ("like the head", False),
        ("like seven", False),
        ("like this one but not that one", False),
        ("as if somebody", False),
        ("you can see nothing", False),
    ],
)
def test_what_stands_behind_a_reading_leaves_it_as_it_is_or_all_unread(behind, same):
    for remark, reading in (("kiwa soft", {"kiwa": "blurred"}), ("red strong", {"hi_strength": "strong"})):
        assert said(remark) == reading
        assert said(f"{remark} {behind}") == (reading if same else None) or said(f"{remark} {behind}") == {
            "comparison": f"{remark} {behind}"
        }


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("kiwa soft apart from the second", {"kiwa": "blurred or fair"}),
        ("white good except at the tail", {"shiroji": "cream or white or snow"}),
        ("red even but for one scale", {"hi_even": "fair or even"}),
        ("no shimi except on the head", None),
        ("orange hi except on the head", None),
        ("most of them have soft edges", {"kiwa": "blurred"}),
        ("all of these are creamy in the white", {"shiroji": "yellow or cream"}),
        ("all of them have good skin", {"lustre": "good"}),
        ("some of them have soft edges", None),
        ("half of them have soft edges", None),
        ("none of them has soft edges", {"kiwa": "fair or sharp or razor"}),
    ],
)
def test_an_exception_widens_and_only_most_of_a_lot_stands_for_it(text, reading):
    assert said(text) == reading


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("white going creamy, like old ivory", {"shiroji": "cream"}),
        ("nidan, like old ivory", None),
        ("a few red flecks, like measles", {"tobihi": "2 to 20"}),
        ("sandan, like measles", None),
        ("body heavy, like butter", None),
        ("kiwa soft, like cotton wool", {"kiwa": "blurred"}),
        ("fins torn, like cotton wool", None),
    ],
)
def test_a_likeness_by_itself_is_read_behind_what_it_is_like_alone(text, reading):
    assert said(text) == reading


@pytest.mark.parametrize(
    "text",
    ["to be honest", "for a change", "as you would expect", "for her age"],
)
def test_an_aside_by_itself_says_nothing(text):
    assert said(f"kiwa sharp, {text}") == {"kiwa": "sharp"}


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("kiwa soft second step", {"kiwa": "blurred"}),
        ("kiwa sharp on step two", {"kiwa": "sharp"}),
        ("sashi on step 2 two scales", None),
        ("sashi deep only second step", None),
        ("sandan second step small", {"steps": "sandan", "small_patches": "few"}),
        ("not a strong red", {"hi_strength": "pale or fair"}),
        ("not a beauty", {"presence": "plain or nice"}),
        ("slightly cooler red this one", {"hi_tone": "purple_red"}),
        ("kiwa soft this one", {"kiwa": "blurred"}),
        ("sashi nashi", {"sashi_depth": "0"}),
        ("shimi nashi", {"shimi_count": "0"}),
        ("mado nashi", {"windows": "0"}),
        ("the white could be whiter", {"shiroji": "yellow or cream or white"}),
        ("I'd want the edges crisper", {"kiwa": "blurred or fair"}),
        ("red finished early", {"finish": "finished or past"}),
        ("head red has a hole", {"head_windows": "1 to 20"}),
    ],
)
def test_other_means(text, reading):
    assert said(text) == reading
