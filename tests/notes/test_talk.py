"""What is said at the tub that is no reading: verdicts, forecasts, comparisons, talk, and remarks that lean on others."""

import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

import koirules
from koirules.notes.comparisons import is_comparison
from koirules.notes.ends import OPENERS, TAGS
from koirules.notes.forecasts import is_forecast
from koirules.notes.hedges import ASIDES, HEDGES, without
from koirules.notes.numbers import number_at, plain_numbers
from koirules.notes.reader import NotesReader, cells
from koirules.notes.remarks import Sort
from koirules.notes.verdicts import VERDICTS
from koirules.testing import registry_with
from koirules.vocabulary.phrases import spread
from koirules.vocabulary.wordings import tokens_of
from tests.notes.noted_pages import _MEANT, fresh

PAGE = """standard "Tin Bucket, talk at the tub (invented)" edition 1 variety kohaku
grade kept otherwise
"""
READER = NotesReader.of(koirules.read_standard(PAGE, registry=registry_with()).rules)


def fish_of(text):
    (fish,) = READER.read(f"1: {text}").fish
    return fish


def said(text):
    return cells(fish_of(text), READER.lexicon.traits)


IN_MANY_WORDS = {
    "in": """she stays; I'm keeping that; hold on to it; top drawer; no I like it; keep and don't tell
        anyone what it cost; into the good basin; fine keep; boss said keep; in I was told;
        oh well, yes keep it for now; keep but not for the show yet; of course I'm keeping this;
        take; I take also; sure take; take for my tank; don't you dare sell it; comfortable keeper""",
    "out": """out with him; no out you go; out and we're done; bin; chuck it; goes with the cheap ones; I'll pass;
        out all the same; out for that; out basin; out he said; boss said out;
        I don't want it; sell him on; a pity but out; can't sell that; not take; don't take; no take; I wouldn't; bargain bin""",
    "unsure": """I'm in two minds; let me sleep on it; look again tomorrow; put it by for now; don't know yet; tough one;
        salt bath and we'll see; don't chuck it yet; boss wants to see; put back for the boss; aside; quarantine;
        let the boss decide; can't tell yet; I wait; I hesitate; ask a friend; check again; feed it up and then see""",
}


IN_OTHER_FORMS = {
    "in": """I'd give her a season; of course keep; keep of course; leave her; this one I like; I like this one; worth a photo;
        worth a proper photo; not to lose; don't lose this one; back in the mud; mud again; one more summer; in on body;
        keep for the bone alone; keep at a friendly price; boss wants to keep; she can stay another year;
        I'd keep her for another season; let's give him another year; a clear yes; yes from me; into the growing tub;
        put it with the keepers; with the good ones; first pick; I'd gamble on her;
        she goes back in the mud; one more season for her""",
    "out": """out pile; put her in the sale tub; goes in the ten-for tank; gone; cut; goodbye; quick sale; so probably not;
        that's a return to sender; send it back; I can't stand behind that; no I can't sell that to anybody;
        I'd not grow it on; I won't grow her on; with the cheap ones; out on pattern; get rid of it; get it out of here;
        waste of food; for the herons; it has to go; for somebody else; first thought out; he says out; sell him now;
        not worth feeding; hane; thrown out""",
    "unsure": """hospital; hospital tub; to the hospital tub; put in the maybe tub; second tub; he's thinking;
        boss is still thinking; still thinking; dunno; don't know ask him; ask him; ask me in April; look again in spring;
        out or hospital; keep or cull; in or out; I wouldn't say no I wouldn't say yes; yes and no; keep an eye;
        let me put that one aside; put it in the salt and we'll look again; I can't make my mind up at all;
        he can take it or leave it; ooh maybe; salt first""",
}


@pytest.mark.parametrize("verdict", IN_OTHER_FORMS)
def test_verdicts_by_their_form(verdict):
    texts = [" ".join(text.split()) for text in IN_OTHER_FORMS[verdict].split(";")]
    assert {text: fish_of(text).verdict for text in texts} == dict.fromkeys(texts, verdict)


@pytest.mark.parametrize(
    "text",
    [
        "first tub",
        "second row",
        "good side",
        "bad side",
        "top one",
        "middle shelf",
        "her side",
        "look after",
        "won't hold",
        "easy sale",
        "it may go",
        "that can grow",
        "cut behind the dorsal",
        "red gone",
        "out at the shoulder",
        "keep the red",
        "hospital green",
        "put the light on",
        "probably not",
        "give it a year",
        "sandan, probably not",
        "take the net",
        "I like that",
        "sorry love",
        "worth a lot",
    ],
)
def test_what_only_has_the_form_of_a_verdict(text):
    assert fish_of(text).verdict == ""


@pytest.mark.parametrize("verdict", IN_MANY_WORDS)
def test_verdicts_in_many_words(verdict):
    texts = [" ".join(text.split()) for text in IN_MANY_WORDS[verdict].split(";")]
    assert {text: fish_of(text).verdict for text in texts} == dict.fromkeys(texts, verdict)


@pytest.mark.parametrize(
    "text",
    [
        "no keep",
        "an out and out beauty",
        "yes yes",
        "keep if the eye clears",
        "not out",
        "sandan, out, kiwa sharp",
    ],
)
def test_what_only_sounds_like_a_verdict(text):
    fish = fish_of(text)
    assert (fish.verdict, bool(fish.unread)) == ("", True)


@pytest.mark.parametrize(
    "text", ["mine has red on the lips", "kuchibeni on the lips later", "pass me the red on the lips"]
)
def test_a_word_that_is_a_verdict_alone_is_none_beside_a_reading(text):
    assert fish_of(text).verdict == ""


def test_a_verdict_is_last_where_only_talk_follows():
    for text in ("nidan, out, pity", "nidan, out, that'll heal", "nidan, keep, better than 9", "nidan, out, 14 cm"):
        assert fish_of(text).verdict
        assert not fish_of(text).unread


def test_a_verdict_with_a_reading_beside_it():
    for text, verdict in (
        ("keep because kiwa sharp", "in"),
        ("out with kiwa sharp", "out"),
        ("kiwa sharp so keep", "in"),
    ):
        fish = fish_of(text)
        assert (fish.verdict, cells(fish, READER.lexicon.traits)) == (verdict, {"kiwa": "sharp"}), fish


@pytest.mark.parametrize(
    "text",
    [
        "that heals",
        "that'll come up in two years",
        "those usually drop off when the water's softer",
        "they fade nine times out of ten",
        "fills out or it doesn't",
        "mends fine",
        "what you see is the best you'll get",
        "it never tidies up when it's like that",
        "that can clear you know",
        "that comes with age",
        "could be powerful when big",
    ],
)
def test_forecasts(text):
    assert READER.remarks.read(text).sort is Sort.FORECAST


@pytest.mark.parametrize(
    "text",
    [
        "red fades at the back",
        "hi comes down over the eye",
        "clear",
        "pulls to the right",
        "spreads over the eye",
        "could be sharper",
        "it goes red",
    ],
)
def test_what_is_so_today_is_no_forecast(text):
    assert not is_forecast(tokens_of(text))


@pytest.mark.parametrize(
    "text",
    [
        "biggest so far",
        "best in the tub",
        "not as bad as six",
        "sister to five",
        "same story as eleven",
        "skin's better than the last one",
        "smallest till now",
        "now this is the longest",
        "shortest",
        "twenty-nine was longer",
        "everything else like thirty-three",
    ],
)
def test_comparisons(text):
    assert READER.remarks.read(text).sort is Sort.COMPARISON


@pytest.mark.parametrize(
    "text",
    [
        "left eye smaller than the other",
        "longer than it is deep",
        "more red on the left than on the right",
        "smaller than one mil",
        "as deep as two scales",
        "first patch bigger than the second",
        "like two fish glued together",
        "deeper than I like",
    ],
)
def test_what_is_within_the_fish_is_no_comparison(text):
    assert not is_comparison(tokens_of(text), after=False)


@pytest.mark.parametrize(
    "text",
    [
        "some people love that",
        "last one",
        "my pencil broke",
        "not the end of the world",
        "who put this one in",
        "net did that",
        "otherwise I'd have it",
        "salt basin",
        "it slipped back before I measured",
    ],
)
def test_talk_says_nothing(text):
    fish = fish_of(text)
    assert (fish.said, fish.verdict, fish.unread, fish.forecasts) == ({}, "", (), ())


def test_talk_of_a_trait_is_read_again():
    """What nobody understood and speaks of a trait is never taken for talk."""
    for text in ("who painted the kiwa", "if the kiwa had been cut", "the camera hates her kiwa"):
        assert fish_of(text).unread, text


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("13.4", {"length": "13.4 cm"}),
        ("14 flat", {"length": "14 cm"}),
        ("thirteen and a half", {"length": "13.5 cm"}),
        ("fourteen and a bit", {"length": "14 cm to 15.4 cm"}),
        ("a good 14", {"length": "14 cm to 15.4 cm"}),
        ("seventeen easy", {"length": "17 cm to 125 cm"}),
        ("twelve centimetres if that", {"length": "10.8 cm to 12 cm"}),
        ("call it twenty-two", {"length": "22 cm"}),
        ("everybody's between fifteen and twenty", {"length": "15 cm to 20 cm"}),
        ("fifty-four and a half grams", {"weight": "54.5 g"}),
        ("seventy eighty percent red", {"hi_cover": "70 % to 80 %"}),
        ("eighty per cent easy", {"hi_cover": "80 % to 100 %"}),
        ("two three shimi", {"shimi_count": "2 to 3"}),
        ("13.4 so the shortest yet", {"length": "13.4 cm"}),
        ("mostly red I'd call it 75 %", {"hi_cover": "75 %"}),
    ],
)
def test_numbers_as_they_are_said(text, cells):
    assert said(text) == cells


@pytest.mark.parametrize("text", ["three and a half", "fifty-four and a half", "14", "two or so", "12 by 18"])
def test_bare_numbers_that_may_be_anything(text):
    assert fish_of(text).unread == (text if text[0].isdigit() else plain_numbers(text),)


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("motoaka, both sides", {"motoaka": "left_pectoral right_pectoral"}),
        ("motoaka on the left, same on the right", {"motoaka": "left_pectoral right_pectoral"}),
        ("motoaka on both pectorals, only the left actually", {"motoaka": "left_pectoral"}),
        ("motoaka on the left, no the right", {"motoaka": "right_pectoral"}),
        ("red on the left eye, the other one clean", {"hi_on_eyes": "left_eye"}),
        ("one shimi, two more", {"shimi_count": "3"}),
        ("shimi on the shoulder, two of them actually", {"shimi_count": "2"}),
        ("shimi, five or six", {"shimi_count": "5 to 6"}),
        ("shimi, about three", {"shimi_count": "2 to 4"}),
        ("one shimi, two of them actually", {"shimi_count": "2"}),
        ("nidan, no wait there's three patches", {"steps": "sandan"}),
        ("nidan sorry sandan", {"steps": "sandan"}),
        ("kiwa sharp, make that kiwa fair", {"kiwa": "fair"}),
        ("sandan but the gap may close", {"steps": "sandan"}),
        ("kiwa sharp though better than nine", {"kiwa": "sharp"}),
    ],
)
def test_remarks_that_lean_on_others(text, cells):
    assert said(text) == {**said(text), **cells}
    assert not fish_of(text).unread


def test_a_clause_that_foretells_is_kept_beside_the_reading():
    fish = fish_of("sandan but the gap may close")
    assert fish.forecasts == ("sandan but the gap may close",)
    assert fish_of("will get a sharp kiwa and thick red").said == {}


def test_the_owner_of_a_part_is_the_part():
    assert said("kiwa's sharp") == said("kiwa sharp")
    assert said("hi's thick") == said("hi thick")
    assert said("beni's thick") == said("beni thick")


@pytest.mark.parametrize(
    "text", ["sandan, two of them", "two shimi, three", "kiwa sharp, about three", "14 cm, five or six"]
)
def test_a_number_by_itself_is_of_nothing_that_was_not_counted(text):
    assert fish_of(text).unread


def test_more_are_never_fewer():
    for first, more in ((1, 2), (2, 1), (3, 4)):
        assert said(f"{first} shimi, {more} more")["shimi_count"] == str(first + more)
    assert said("shimi on the shoulder, two more by the dorsal")["shimi_count"] == "3 to 200"


@pytest.mark.parametrize("reading", ["kiwa sharp", "sandan", "no kuchibeni", "14 cm"])
def test_an_aside_never_makes_another_reading(reading):
    """What stands beside a reading widens it, leaves it unread or says nothing of it; it never says something else."""
    plain = {found.trait for found in READER.remarks.read(reading).found}
    beside = (READER.remarks.read(f"{reading} {' '.join(aside)}") for aside in (*ASIDES.each, *HEDGES.each))
    assert [remark for remark in beside if not {found.trait for found in remark.found} <= plain] == []


@given(
    st.sampled_from(sorted(VERDICTS)),
    st.sampled_from(["oh", "well", "anyway", "yes"]),
    st.sampled_from(["then", "for now", "please"]),
)
def test_what_stands_round_a_verdict_does_not_turn_it(words, lead, tail):
    def read(tokens):
        return READER.remarks.read(" ".join(tokens)).verdict

    assert read((lead, *words, tail)) in {read(words), "unsure", ""}


@given(st.integers(8, 35), st.sampled_from(["and a bit", "or so", "easy", "if that", "flat", "give or take"]))
def test_what_stands_behind_a_number_keeps_it_possible(number, behind):
    found = number_at(tokens_of(f"{number} {behind}"), 0)
    held = found.within(READER.lexicon.traits["length"].kind)
    assert held.low <= number * 10 <= held.high or held.low <= number <= held.high


def test_choices_in_wordings_may_stand_in_one_another():
    assert set(spread("a (b( c|)|d)")) == {("a", "b"), ("a", "b", "c"), ("a", "d")}
    assert without(tokens_of("kiwa sharp mind you"), ASIDES) == (("kiwa", "sharp"), True)


def test_a_denied_word_says_the_same_with_its_trait_and_without():
    """`spine not bent` is `not bent`: of every level that is denied by itself."""
    tried = 0
    for trait in READER.lexicon.traits.values():
        for word in getattr(trait.kind, "steps", ()):
            alone = READER.remarks.read(f"not {word.replace('_', ' ')}")
            if [found.trait for found in alone.found] != [trait.name]:
                continue
            named = READER.remarks.read(f"{trait.name.replace('_', ' ')} not {word.replace('_', ' ')}")
            assert [(found.trait, found.said) for found in named.found] == [
                (found.trait, found.said) for found in alone.found
            ]
            tried += 1
    assert tried
    assert said("spine not bent") == said("not bent") == said("the spine is not bent") == {"spine": "straight"}


def test_another_is_counted_only_behind_what_can_be_counted():
    assert said("shimi on the head, another one by the dorsal")["shimi_count"] == "2 to 200"
    assert said("one shimi, another") == {"shimi_count": "2"}
    fish = fish_of("sandan, and another")
    assert fish.unread == ("and another",)


@pytest.mark.parametrize("text", ["sandan, only on the left", "14 cm, only the right"])
def test_only_one_side_of_what_has_no_sides_is_not_understood(text):
    assert fish_of(text).unread


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("14 on the board", {"length": "14 cm"}),
        ("scale says 29", {"weight": "29 g"}),
        ("sixteen near enough", {"length": "14.4 cm to 17.6 cm"}),
        ("11.0", {"length": "11 cm"}),
        ("motoaka, left", {"motoaka": "left_pectoral"}),
        ("motoaka, both", {"motoaka": "left_pectoral right_pectoral"}),
    ],
)
def test_numbers_with_what_they_were_read_from_and_sides_alone(text, cells):
    assert said(text) == cells


FREE = Path(__file__).parent / "free_pages"
_NO_READINGS = {"forecast": Sort.FORECAST, "comparison": Sort.COMPARISON, "nothing": Sort.NOTHING}


def told_and_meant(page):
    """Of each remark of a page its words, what it was meant to be and what it was read as: a reading, or which kind of talk."""
    text = (FREE / f"{page}.txt").read_text(encoding="utf-8")
    meant = [re.findall(_MEANT, line) if not line.startswith("#") else [] for line in text.split("\n")]
    cutter = READER.cutter()
    for line in (line for raw in _MEANT.sub("", text).split("\n") for line in cutter.cut(raw)):
        for remark, meaning in zip(READER.read_each(line), meant[line.number - 1], strict=True):
            kind = (
                "verdict" if "verdict " in meaning else meaning if meaning in {*_NO_READINGS, "unclear"} else "reading"
            )
            yield remark, "correction" if meaning.startswith("correction") else kind


@pytest.mark.parametrize(
    ("page", "least", "otherwise"),
    [
        (
            "dealer",
            0.70,
            {
                "probably knocked it in the bag",
                "everyone'll think of the flag",
                "sorry sweetheart",
                "net did that I reckon",
            },
        ),
        ("helper", 0.68, {"you only see it from the front", "closed up"}),
        (
            "breeder",
            0.70,
            {
                "I like a bit of that",
                "so so",
                "nothing wrong",
                "rest is fine",
                "doesn't bother me",
                "net did that",
                "lovely",
            },
        ),
    ],
)
def test_talk_is_told_from_readings_on_pages_in_free_speech(page, least, otherwise):
    """Three pages whose writers spoke as they like; their first opening was understood at 16 %, 15 % and 36 %.

    otherwise: what is read as a reading though it is talk, or as talk though it is one; the list becomes shorter only.
    """
    sorts = {Sort.VERDICT: "verdict", Sort.TRAITS: "reading"} | {sort: kind for kind, sort in _NO_READINGS.items()}
    found = [(remark, kind) for remark, kind in told_and_meant(page) if kind not in {"unclear", "correction"}]
    crossed = {
        remark.text
        for remark, kind in found
        if remark.sort in sorts and sorts[remark.sort] != kind and not remark.verdict
    }
    assert crossed <= otherwise
    assert sum(remark.sort is not Sort.UNKNOWN for remark, _ in found) >= least * len(found)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("three red step by step", {"steps": "sandan"}),
        ("red piece is four", {"steps": "yondan"}),
        ("ippon to the tail", {"steps": "ippon"}),
        ("kissed on the lips", {"kuchibeni": "yes"}),
        ("fat and healthy", {"build": "heavy", "health": "well"}),
        ("kiwa sharp, like ink on paper", None),
        ("kiwa fair, like ink on wet paper", None),
        ("ojime a finger", {"odome_gap": "1.3 cm to 2.1 cm"}),
        ("you could read a newspaper through that red", {"hi_thick": "thin"}),
        ("must be 14 cm", {"length": "12.6 cm to 15.4 cm"}),
        ("skin like paper", {"lustre": "dull"}),
        # The same words denied, or of something else.
        ("fat but not healthy", {"build": "heavy", "health": "sick or doubtful"}),
        ("has two red on the head", None),
        ("two behind the dorsal", None),
        ("black skin like paper", None),
        ("edges not like cut", None),
        ("take the left one", None),
    ],
)
def test_short_words_of_the_market(text, read):
    fish = fish_of(text)
    assert (None if fish.unread else {name: cell for name, cell in said(text).items() if name != "looked"}) == read


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("I'd hang on to it", "in"),
        ("worth another summer's feed", "in"),
        ("can't sell it to anyone", "out"),
        ("I would not gamble", "out"),
        ("I'd leave it till autumn", "unsure"),
        ("rinse it and look again", "unsure"),
    ],
)
def test_more_verdicts_as_people_say_them(said, meant):
    assert READER.remarks.read(said).verdict == meant


@pytest.mark.parametrize(
    ("said", "sort"),
    [
        ("much bigger than the others", Sort.COMPARISON),
        ("last patch smaller than the rest", Sort.UNKNOWN),
        ("the stem should come on", Sort.FORECAST),
        ("the red should come further forward", Sort.UNKNOWN),
        ("grows apart", Sort.FORECAST),
        ("no more to say", Sort.NOTHING),
    ],
)
def test_what_is_told_of_others_and_of_later_is_told_from_today(said, sort):
    assert READER.remarks.read(said).sort is sort


@pytest.mark.parametrize(("page", "least"), [("breeder", 0.55), ("dealer", 0.35), ("helper", 0.44)])
def test_so_much_is_understood_of_pages_that_no_phrase_was_taught_on(page, least):
    found = [remark for remark, _ in fresh(FREE.parent / "fresh_pages" / f"{page}.txt", koirules.read_standard(PAGE))]
    assert sum(remark.sort is not Sort.UNKNOWN for remark in found) >= least * len(found)


@pytest.mark.parametrize(
    ("text", "unread"),
    [
        ("specks along the left belly, ten or more", "ten or more"),
        ("deep one", "deep one"),
        ("four reds on the left", "four reds on the left"),
        ("red over the left eye, right eye clear", "right eye clear"),
    ],
)
def test_numbers_and_sides_that_may_be_of_something_else(text, unread):
    assert fish_of(text).unread == (unread,)


@pytest.mark.parametrize(
    "text",
    [
        "I'll sell her as a character",
        "you may laugh",
        "which won't do",
        "what shall I say",
        "came in May",
        "may fish",
        "spawned in spring",
        "in spring she was orange",
        "I sold one in spring",
        "small fish with big patterns look silly later",
        "going to lunch",
        "they often go pink when they're stressed",
        "belly stays small",
        "mostly goes left",
        "we were gone by two",
        "potential buyer waiting",
        "it grows on you",
        "can hold it in one hand",
        "could hold more red",
        "the water will clear",
        "my wife will drop the lid",
        "somebody will say the head is too heavy",
        "head is elegant I'll grant",
    ],
)
def test_what_is_said_of_people_and_of_the_past_is_no_forecast(text):
    """`will`, `may`, `in spring` foretell only where they stand with what becomes of something on the fish."""
    assert fish_of(text).forecasts == ()


@pytest.mark.parametrize(
    ("text", "verdict"),
    [
        ("nidan, no", "out"),
        ("nidan, mouth crooked, sorry no", "out"),
        ("nidan, wait", "unsure"),
        ("nidan, hmm", "unsure"),
        ("nidan, okay", "in"),
        ("nidan, yes", "in"),
        ("nidan, tategoi", "in"),
        ("keep I suppose", "keep"),
        ("probably out", "out"),
        ("maybe out", "unsure"),
        ("no show fish", "out"),
        ("I might regret it but no", "out"),
        # The same words of other things, or before something else.
        ("nidan, no, sandan", ""),
        ("nidan, keep, no", ""),
        ("no", ""),
        ("keep the net still", ""),
        ("keep still", ""),
        ("look out", ""),
        ("sells well", ""),
        ("would you keep it", ""),
        ("he'd keep it", ""),
        ("this one grows on me", ""),
        ("hold on tight", ""),
        ("pass", ""),
    ],
)
def test_short_verdicts_at_the_end_and_words_of_verdicts_in_another_sense(text, verdict):
    page = PAGE.replace("grade kept", "grade keep if kiwa is sharp\ngrade kept")
    (fish,) = koirules.read_standard(page, registry=registry_with()).read_notes(f"1: {text}").fish
    assert fish.verdict == verdict


@pytest.mark.parametrize(
    "text",
    [
        "customers love a big white gap like that",
        "people ask for that sharp edge",
        "nobody will notice the missing scale",
    ],
)
def test_what_people_like_of_a_fish_is_no_mere_talk(text):
    assert fish_of(text).unread == (text,)


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("look at the bent spine", {"spine": "bent"}),
        ("goodness, the kiwa is sharp isn't it", {"kiwa": "sharp"}),
        ("hmm kiwa sharp I must say", {"kiwa": "sharp"}),
        ("you see how the mouth is bent", {"mouth": "malformed"}),
        ("shame about the bent mouth", {"mouth": "malformed"}),
        ("ever so sharp kiwa", {"kiwa": "sharp"}),
        ("what I like is the sharp kiwa", {"kiwa": "sharp"}),
        ("no kuchibeni as well", {"kuchibeni": "no"}),
        ("length 14 such as it is", {"length": "14 cm"}),
        ("three steps all decent", {"steps": "sandan"}),
        ("sandan clean", {"steps": "sandan"}),
        ("inazuma and good", {"steps": "inazuma"}),
        ("four reds", {"steps": "yondan"}),
        ("three steps evenly weighted", {"steps": "sandan", "balance": "good"}),
        ("rest is nidan", {"steps": "nidan"}),
    ],
)
def test_a_part_of_a_remark_is_read_where_the_rest_says_nothing(text, cells):
    assert said(text) == cells
    assert not fish_of(text).unread


@pytest.mark.parametrize(
    "text",
    [
        "then two patches",
        "next white starts at the shoulder",
        "sandan no",
        "not sandan as well",
        "sandan or nidan",
        "kiwa sharp before",
        "kiwa sharp last year",
        "shimi fine",
        "size two for sure",
        "like the sharp kiwa",
        "three steps in the last one",
    ],
)
def test_what_stands_at_an_end_and_may_say_something_is_not_left_out(text):
    assert fish_of(text).unread == (text,)
    assert all(each is None for each in fish_of(text).said.values())


@pytest.mark.parametrize("reading", ["kiwa sharp", "sandan", "no kuchibeni"])
def test_openers_and_tags_never_make_another_reading(reading):
    plain = {(found.trait, found.said) for found in READER.remarks.read(reading).found}
    begun = [f"{' '.join(opener)} {reading}" for opener in OPENERS]
    ended = [f"{reading} {' '.join(tag)}" for tag in TAGS]
    read = {text: READER.remarks.read(text) for text in begun + ended}
    assert {
        text: remark.found
        for text, remark in read.items()
        if not {(found.trait, found.said) for found in remark.found if not found.hedged} <= plain
    } == {}
    assert sum(remark.sort is Sort.TRAITS for remark in read.values()) >= len(read) - 5


LENGTHS = "1: 15 cm\n2: "


def of_second(text):
    fish = READER.read(LENGTHS + text).fish[1]
    return cells(fish, READER.lexicon.traits), fish.unread


@pytest.mark.parametrize(
    ("text", "length"),
    [
        ("seventeen point two", "17.2 cm"),
        ("seventeen and three quarters", "17.75 cm"),
        ("eleven and a quarter", "11.25 cm"),
        ("twelve point nought", "12 cm"),
        ("eleven nine", "11.9 cm"),
        ("twelve six in all", "12.6 cm"),
        ("body eighteen", "18 cm"),
        ("fish 16", "16 cm"),
        ("kiwa sharp, 20", "20 cm"),
        ("sandan, nineteen", "19 cm"),
        ("what the cover hides, well, twenty", "20 cm"),
        ("window in the first step, two scales big, on the left, eighteen", "18 cm"),
    ],
)
def test_lengths_as_they_are_told_on_a_page_of_lengths(text, length):
    assert of_second(text)[0]["length"] == length


@pytest.mark.parametrize(
    "text",
    ["shimi, 15", "shimi on the shoulder, fifteen", "cover, 20", "girth, 20", "thirty by then", "six four", "40"],
)
def test_a_number_that_may_be_of_something_else_is_no_length(text):
    read, unread = of_second(text)
    assert "length" not in read
    assert unread


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("shimi three, all on the shoulder", {"shimi_count": "3"}),
        ("hikui, shoulder", {"hikui": "yes"}),
        ("niban, behind dorsal", {"niban_hi": "yes"}),
        ("round spot on the head, one centimetre across, a bit to the right", {"maruten": "yes"}),
        ("window in the first step, two scales big", {"windows": "1 to 20"}),
        ("tail fin torn, upper half, half a cm missing", {"fin_damage": "tail"}),
        ("shiroji yellow, mostly on the head and shoulders", {"shiroji": "yellow"}),
    ],
)
def test_a_place_or_a_size_behind_what_is_there_adds_no_other_reading(text, cells):
    assert not fish_of(text).unread
    assert said(text).keys() == cells.keys()
    assert {trait: read.partition(",")[0] for trait, read in said(text).items()} == cells


@pytest.mark.parametrize(
    ("text", "unread"),
    [
        ("one shimi on the cheek, one by the tail", "one by the tail"),
        ("red ring round the left eye, and round the right", "and round the right"),
        ("sandan, left eye", "left eye"),
        ("sandan, on the back", "on the back"),
        ("no windows, two scales big", "two scales big"),
        ("odome 2 cm, 1 cm across", "1 cm across"),
        ("gizmo, two scales big", "two scales big"),
    ],
)
def test_a_place_or_a_size_that_may_be_of_something_else_is_not_understood(text, unread):
    assert unread in fish_of(text).unread


def test_some_of_a_count_that_nobody_told_are_so_many_at_least():
    assert said("shimi, two on the cheek")["shimi_count"] == "2 to 200"


@pytest.mark.parametrize(
    "text",
    [
        "that's the biggest now",
        "best of the morning",
        "biggest in here",
        "same as twenty-two nearly",
        "same mother as nineteen you see it",
        "same sort of saddle",
        "oya was the same",
        "late one",
        "shorter than eleven but chunkier",
        "it's a slimmer version of number twenty",
        "white's about the best after nineteen",
        "usual for the line",
    ],
)
def test_more_comparisons(text):
    assert fish_of(text).comparisons == (text,)


@pytest.mark.parametrize(
    "text",
    [
        "white better though",
        "gap is wider by half a centimetre",
        "and it sits further back",
        "skin not as clean",
        "weaker skin",
    ],
)
def test_what_goes_on_comparing_does_so_only_behind_a_comparison(text):
    assert fish_of(f"same as 22, {text}").comparisons == ("same as 22", text)
    assert fish_of(text).comparisons == ()


@pytest.mark.parametrize(
    "text",
    [
        "can live with that",
        "I've been burned before",
        "could be just the light",
        "my customers go mad for that",
        "wait it's turning",
        "it was crooked on the ruler",
        "can't see it's under the others",
        "halfway already",
        "no more than halfway goodness",
        "last one thank heavens",
        "my hands are freezing",
        "he held it up to the light",
        "did you write down fifty",
    ],
)
def test_more_talk_says_nothing(text):
    fish = fish_of(text)
    assert (fish.said, fish.verdict, fish.unread, fish.forecasts, fish.comparisons) == ({}, "", (), (), ())


@pytest.mark.parametrize(
    "text",
    [
        "the light is on the kiwa",
        "see it from the side with the bent spine",
        "can't see the bent mouth",
        "do I count the fourth shimi",
        "half of it",
        "I can live with the spine",
        "makes it look yellow",
    ],
)
def test_talk_that_names_a_trait_is_no_mere_talk(text):
    fish = fish_of(text)
    assert fish.unread or fish.said


def test_a_sentence_that_takes_back_is_a_correction():
    for text in (
        "it's dirt",
        "I said out before I looked properly",
        "I thought the back was bent but it was only turning",
    ):
        assert READER.remarks.read(text).sort is Sort.CORRECTION, text
    assert said("2 shimi, it's dirt, kiwa sharp") == {"shimi_count": "?", "kiwa": "sharp"}
    assert fish_of("out, I said out before I looked properly, kiwa sharp").unread
    read, unread = of_second("nineteen, no eighteen")
    assert (read, unread) == ({"length": "18 cm"}, ())


TRAPS = FREE.parent / "traps.txt"


def trapped(fish, forbidden):
    """What of the words that name a reading, or a kind of talk, a fish was read to be."""
    told = {name: cell for name, cell in cells(fish, READER.lexicon.traits).items() if cell != "?" and name != "looked"}
    talk = {
        "verdict": fish.verdict,
        "forecast": " ".join(fish.forecasts),
        "comparison": " ".join(fish.comparisons),
        "*": " ".join(told),
        "nothing": "" if fish.unread or fish.said or fish.verdict or fish.forecasts or fish.comparisons else "talk",
    }
    for each in forbidden:
        name, _, value = each.partition(":")
        found = talk.get(name, told.get(name, ""))
        if found and value in {"", found}:
            yield each


def test_words_of_the_vocabulary_that_mean_something_else_are_not_read_as_it():
    """Of other fish, of the water, of people, of another part, denied, doubted, asked, wished for, or of last year."""
    found, tried = {}, 0
    for line in TRAPS.read_text(encoding="utf-8").splitlines():
        text, parted, forbidden = line.partition(" | ")
        if parted and not line.startswith("#"):
            tried += 1
            if read := [*trapped(fish_of(text), forbidden.split())]:
                found[text] = read
    assert found == {}
    assert tried > 400


@pytest.mark.parametrize(
    "text",
    [
        "red eyes",
        "belly red",
        "empty",
        "elegant",
        "lopsided head patch",
        "two centimetres deep",
        "pattern simple and good",
        "red on the nose right to the lip",
        "a lot of them have red down to the eyes",
        "here red is good and here is weak",
        "without the head patch a good nidan",
        "just a little dent at the shoulder",
        "hi plate",
    ],
)
def test_what_may_be_of_another_part_of_other_fish_or_of_blood_is_not_understood(text):
    assert fish_of(text).unread == (text,)


def test_a_hedged_number_behind_what_is_counted_is_no_length():
    assert fish_of("dots like pepper along the side, maybe eight").unread == ("maybe eight",)
    assert said("nidan, maybe 14") == {"steps": "nidan", "length": "12.6 cm to 15.4 cm"}


def test_what_is_said_in_general_holds_no_more_than_it_says():
    assert said("cheeks red") == {"hi_on_cheeks": "at least 1 of them"}
    assert said("both cheeks red") == {"hi_on_cheeks": "left_cheek right_cheek"}
    assert said("dip behind the head") == {"back_line": "humped or uneven"}
    assert said("maybe an open wound") == {"health": "?"}
    assert fish_of("sick of this").said == fish_of("my back is bent from this").said == {}
    assert fish_of("this is my favourite so far").comparisons


SALES = """standard "Tin Bucket, what is sold (invented)" edition 1 variety kohaku
grade keep if kiwa at least sharp
{sales}
grade out otherwise
"""


def verdict_on(sales, text):
    standard = koirules.read_standard(SALES.format(sales=sales), registry=registry_with())
    return standard.notes_reader.read(f"1: {text}").fish[0].verdict


@pytest.mark.parametrize(
    "text",
    [
        "shop fish",
        "pond fish",
        "cheap tank",
        "boss says sell",
        "sell it young",
        "sell at a good price",
        "I'd let it go cheap",
        "off to the auction",
        "nice for a patio pond",
        "goes in the ten-for tank",
    ],
)
def test_a_fish_that_is_sold_has_the_grade_that_the_page_has_for_sales(text):
    assert verdict_on("grade sell if kiwa is fair", text) == "sell"
    assert verdict_on('grade third "for the shop" if kiwa is fair', text) == "third"
    assert verdict_on('grade third "not for sale" if kiwa is fair', text) == "out"
    assert verdict_on("grade hold if kiwa is fair", text) == "out"


def test_of_two_grades_for_sales_the_one_is_meant_whose_word_is_said():
    both = 'grade shop if kiwa is fair\ngrade pond "pond grade" if kiwa is blurred and length above 10 cm'
    found = {text: verdict_on(both, text) for text in ("shop fish", "pond fish", "sell cheap", "sell it", "cull")}
    assert found == {"shop fish": "shop", "pond fish": "pond", "sell cheap": "", "sell it": "", "cull": "out"}


def test_no_word_said_many_times_takes_long():
    for word in ("no", "and", "boss said", "till autumn"):
        assert fish_of(f"{f'{word} ' * 40}zebra").unread


SENTENCES = {
    "in": """nobody touches this one; it is going home with me; boss looked twice and said keep; he put two ticks against it
        in the
        book; we moved it into the growing-on pond; kept it back for his own pond; she can come with me; holds another winter
        with me;
        that's earned itself another year; he waved it through; not leaving my sight that one; survived two cuts""",
    "out": """not having that in the tub with my good ones; he put it in the left basin with the others to go; it went
        straight into the
        reject bucket; crossed off the list; boss turned it round and shook his head; taken out of the keepers; we both said no;
        not to go in with the good ones; it's down as a reject; no good for stock; both of them said out; went with the
        rejects""",
    "sold": """between you and me I'd let it go for a song; that's one for the young lad with his first pond; it'll make
        somebody very
        happy in a garden pond somewhere; she told me that one goes to the shop on Friday; marked for the auction in October;
        moved from keep to sell; he told me to note it for the autumn sale; I've a lady who'll have that off me tomorrow;
        put to the left with the sold ones; chuck that in with the cheap ones""",
    "unsure": """let's pop it to one side and come back to it; I was told to set this one aside till he comes back; written
        down as maybe;
        leave till nisai; give me another look at that in a week; left it in the small tank for now; it's not a yes and it's
        not a no;
        sent to the back room for treatment; left to decide at the end; boss can't decide""",
}


@pytest.mark.parametrize("verdict", SENTENCES)
def test_verdicts_in_whole_sentences(verdict):
    sales = "grade sold if kiwa is fair"
    standard = koirules.read_standard(SALES.format(sales=sales), registry=registry_with())
    texts = [" ".join(text.split()) for text in SENTENCES[verdict].split(";")]
    found = {text: standard.notes_reader.read(f"1: {text}").fish[0] for text in texts}
    assert {text: (fish.verdict, fish.unread) for text, fish in found.items()} == dict.fromkeys(texts, (verdict, ()))


@pytest.mark.parametrize(
    ("text", "verdict"),
    [
        ("in, no wait, out", "out"),
        ("nidan, out, I've changed my mind, keep it", "in"),
        ("keep, no, out", "out"),
        ("kiwa sharp, out, on second thoughts, in", "in"),
        ("no sorry, out after all", "out"),
    ],
)
def test_a_verdict_takes_back_the_one_before_it(text, verdict):
    fish = fish_of(text)
    assert (fish.verdict, fish.unread) == (verdict, ())


def test_a_correction_before_a_verdict_may_take_back_a_reading_and_is_read_again():
    assert fish_of("nidan, no wait, out").unread
    assert fish_of("out, no wait, kiwa sharp").unread


@pytest.mark.parametrize(
    "text",
    [
        "might not",
        "tail won't though",
        "too big to close",
        "never lifts",
        "three years in that one",
        "beni gives way by nisai",
        "evens by summer",
        "if it opened you'd have a three-stepper",
        "jumbo in the making",
        "left with a good sandan",
        "could be anything in two years",
        "wants size to carry it",
        "I'd not hold my breath",
        "then again they do shrink back a bit as they stretch",
        "kiwa comes with age",
        "it's downhill from here",
        "that won't be there at Christmas",
        "length to come",
        "I could see that tightening up",
        "can't see it catching up",
        "let's see it fatten up",
        "I reckon he'll make size",
        "menkaburi by spring",
        "looks bald in a year",
        "they do go yellow and then it goes",
        "usually doesn't",
        "it's only a baby",
        "young yet",
    ],
)
def test_more_forecasts(text):
    assert READER.remarks.read(text).sort is Sort.FORECAST


@pytest.mark.parametrize(
    "text",
    [
        "forty quid",
        "I'd put a middling ticket on it",
        "I'd be asking proper money",
        "hand on heart I couldn't charge more than twenty",
        "up a box",
        "price by size",
        "I'd not pay up for it",
        "I'm fond of this one",
        "can't get excited",
        "oddly good",
        "he whistled",
        "I was going to chuck this one",
        "my father would have kept it",
        "have I done this one",
        "what do you make of that",
        "wait a minute, kiwa sharp",
    ],
)
def test_what_a_fish_is_worth_and_whether_it_is_liked_decides_nothing(text):
    fish = fish_of(text)
    assert (fish.verdict, fish.unread, fish.forecasts, fish.comparisons) == ("", (), (), ())
    assert fish.said.keys() <= {"kiwa"}


def test_a_word_for_a_fish_in_what_is_not_understood_leaves_no_trait_unclear():
    assert READER.remarks.read("a Sunday fish").named == ()
    assert READER.remarks.read("kiwa like Sunday").named == ("kiwa", "kiwa_style")


@pytest.mark.parametrize(
    ("text", "sort"),
    [
        ("would sell for a good price", Sort.NOTHING),
        ("would sell to the shop", Sort.VERDICT),
        ("one of the best", Sort.COMPARISON),
        ("one of the better ones so far", Sort.COMPARISON),
        ("tail stop missing", Sort.TRAITS),
        ("kohaku", Sort.NOTHING),
        ("showa", Sort.UNKNOWN),
    ],
)
def test_prices_ranks_and_the_variety_of_the_page_are_no_readings(text, sort):
    assert READER.remarks.read(text).sort is sort


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("the pattern I'd call decent", said("pattern decent")),
        ("the red I would say is even", {"hi_even": "even"}),
        ("seems to be hanging at the top", {"health": "sick or doubtful or well"}),
        ("hi on one eye, left eye", {"hi_on_eyes": "left_eye"}),
        ("careful there's a sore", {"health": "sick"}),
        ("sore on the side, small", {"health": "sick"}),
        ("it's got presence hasn't it", {"presence": "strong"}),
        ("four little steps if I count the head", {"steps": "yondan"}),
        ("he has a nick in his gill", {"gill_cover_faults": "at least 1 of them"}),
        ("lightning up the back", {"steps": "inazuma"}),
        ("somebody's dipped the whole face in paint", {"head_hi": "hood"}),
    ],
)
def test_what_is_said_in_a_roundabout_way_is_read_as_what_it_says(text, reading):
    assert {trait: cell for trait, cell in said(text).items() if trait in reading} == reading
