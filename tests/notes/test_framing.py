"""Frames that speakers build around a statement, and sentences that only look like one."""

import pytest

from tests.notes.test_talk import fish_of, said

STATEMENT = "the tail stem is thin"
AHEAD = """you can see from here that; from here you can see; look down on her and you'll see; if you look down on her you'll see
    that; what I don't like is that; what bothers me about her is that; the only thing wrong is that; my only worry is that; my
    one complaint would be that; it bothers me that; I'm sorry to see that; I can't help noticing that; there's no getting away
    from the fact that; I'd have to say; to my way of thinking; as I see it; on closer inspection; now I've got her in my hand;
    now that she's in the bowl; do you see how; have you noticed that; I've just noticed; it has to be said; Dad says; the boss
    always says; another thing is that; not only that but; note that; I'd just add that; it's a pity
    that; when she swims you can see"""
BEHIND = """when you see her from the side; when she swims; if you look closely; however you look at it; and I don't like it;
    and that's a fault; which is a shame; which bothers me; that's my problem with her; I noticed that right away; that I hadn't
    noticed; as you can see; as I thought; I don't know why; if you want my opinion; so I'm not happy; but I can live with that;
    but there you go; just like her mother; like all of this line; even at this age; given how young she is;
    and that spoils her"""
NO_FRAMES = """if you get a sharp kiwa; when you see a broad head; what I want is a sharp kiwa; what you look for is broad
    shoulders; I'd like to see that the tail stem is thick; I thought the tail stem was thin; I can't say that the tail stem is
    thin; nobody could say the tail stem is thin; make sure the tail stem is thin; have you ever seen a broad head; I've seen a
    bent spine; it's not that the tail stem is thin; the only thing that matters is a straight spine; once you see a bent spine
    you know; the trouble was a bent spine last year; what bothers me is whether she's female; they always say a good fish has a
    broad head; the body bends when she turns; the dorsal is folded when she rests; she's stiff when you hold her; clamps her fins
    when you pick her up; mouth is open when she breathes; my worry is that the red will fade"""


def each_of(texts):
    return [" ".join(text.split()) for text in texts.split(";")]


@pytest.mark.parametrize("frame", each_of(AHEAD))
def test_a_statement_behind_a_frame_is_read(frame):
    assert said(f"{frame} {STATEMENT}") == {"tail_stem": "thin"}


@pytest.mark.parametrize("frame", each_of(BEHIND))
def test_a_statement_before_a_frame_is_read(frame):
    assert said(f"{STATEMENT} {frame}") == {"tail_stem": "thin"}


@pytest.mark.parametrize("text", each_of(NO_FRAMES))
def test_what_only_has_the_form_of_a_frame_says_nothing(text):
    assert {key: cell for key, cell in said(text).items() if cell != "?"} == {}


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("I don't think she's straight", {"spine": "bent or slight"}),
        ("I don't think that's a kink", {"spine": "slight or straight"}),
        ("I don't think I'd keep her", {}),
        ("the head is anything but broad", {"head_shape": "poor or fair"}),
        ("shoulders nowhere near broad", {"shoulders": "weak or fair"}),
        ("red starts far from the head", {}),
        ("the tail stem is far too thin", {"tail_stem": "thin"}),
        ("the tail stem is noticeably thin", {"tail_stem": "thin"}),
        ("the shoulders aren't terribly broad", {"shoulders": "weak or fair"}),
        ("one of her whiskers seems to have gone missing", {"barbels_missing": "0 to 2"}),
        ("as far as the skin goes she's dull", {"lustre": "dull"}),
        ("body wise she's good", {"outline": "good"}),
        ("the white just doesn't look pure", {"shiroji": "yellow or cream or white"}),
        ("I'd like to see more shine", {"lustre": "dull or fair"}),
        ("the spine is true from head to tail", {"spine": "straight"}),
        ("when she stops the dorsal stays up", {"dorsal_fin": "upright"}),
        ("when she stops the dorsal lies flat", {}),
        ("one of the pectorals has grown crooked", {"fin_faults": "at least 1 of them"}),
        ("a window that will close", {"windows": "at least 1"}),
        ("the left pectoral has a split that'll grow back", {"fin_damage": "left_pectoral, perhaps right_pectoral"}),
        ("the shoulders will not be broad", {}),
    ],
)
def test_what_is_denied_or_foretold_in_a_sentence(text, cells):
    found = {key: cell for key, cell in said(text).items() if cell != "?"}
    assert found.keys() == cells.keys()
    assert all(
        found[key].startswith(cell.split(",")[0]) or key in {"windows", "barbels_missing"}
        for key, cell in cells.items()
    )


def test_a_forecast_in_a_relative_clause_is_kept_beside_the_reading():
    text = "the left pectoral has a split that'll grow back"
    assert fish_of(text).forecasts == (text,)
