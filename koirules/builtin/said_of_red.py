"""How sorters speak of the colour and the edges of red (hi), and of white (shiroji).

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, each_of
from koirules.vocabulary.praise import DISAPPOINTING, LACKING, NOT_BAD, short_of

_RED = "hi, red, beni, orange, colour, beni plate, hi plate, red plate, plate, hiban, red colour, hi colour, 緋, 緋盤"

_ENDS = each_of(
    "{back} of {every} {patch}",
    back="back|rear|hind end|rear end|tail side|end|back end",
    every="every|each|all|both|first|second|third|last|",
    patch="patch|step|red|plate|one",
)
"""Where an edge behind the red is, without the word for it: `the back of every patch`."""

_FRONTS = each_of(
    "front of {every} {patch}", every="every|each|all|both|first|second|third|last|", patch="patch|step|one|red"
)

_CUT = each_of(
    "{like} {cut} with {tool}",
    like="like|as|as if|as though|",
    cut="cut|cut out|sliced",
    tool="a knife|a razor|a razor blade|scissors|a scalpel|a blade|a sharp knife",
)
_DRAWN = each_of(
    "{like} {drawn} {on}",
    like="like|as if|as though|",
    drawn="drawn|painted|inked|printed",
    on="with a pen|with a ruler|with a brush|on|by hand",
)
_SHARP = "sharp|crisp|clean|tight|neat|clear cut|clean cut|well cut|well defined|tidy|distinct|cut clean|clear"
_BLURRED = (
    "blurred|soft|fuzzy|woolly|blurry|ragged|smudged|smudgy|bleeding|smeared|indistinct|unclear|washed out|frayed|"
    "untidy|messy|feathered"
)
_LOSING = (
    "(red|hi|beni|colour|patch|it) (going|fading|breaking up|on its way out|on the way out|leaving|disappearing|letting go|"
    "coming apart|washing out|thinning out|dissolving|dropping|dropping off|falling apart|retreating|starting to go|"
    "drops off|falling off|falls off|tails off|tailing off|starting to fade|"
    "starting to break up|vanishing|melting away|giving up|wearing off|wearing thin)|"
    "losing (its|the|her|his|) (red|hi|colour|beni)"
)
"""Red that goes."""

SAID_OF_RED: tuple[Saying, ...] = (
    Spoken(
        "kiwa",
        "kiwa, edge, edges, all edges, edges all, edges everywhere, rear edge, rear edges, side edge, back edge, hind edge, "
        "trailing edge, lower edge, bottom edge, top edge, upper edge, outer edge, left edge, right edge, edge to the red, "
        "edge of the red, edges of the red, edge of "
        "the patch, edges of the patches, edge of the second patch, "
        "rear edge of the first patch, rear edge of the second patch, rear edge of the last patch, edge "
        "of the hi, border, outline of the red, outline of the patches, borders, kiwa edge, red edge, patch edge, "
        "line between red and white, border between red and white, edge between red and white, "
        "boundary between red and white, boundary of the red, boundary, border of the red, "
        "where red meets white, where the red meets the white, where the red stops, where the red ends, キワ, 際",
        levels={
            "blurred": f"{_BLURRED.replace('|', ', ')}, not there, faded, dull, fade, fade out, fade away, "
            f"dissolve, dissolving, "
            "open, loose, very soft, bleed, bleed out, smear, smeary, run, running, wishy washy, "
            "feathery, mushy, muddy, uneven, jagged, all over the place, all over the shop, out of focus, goes fuzzy, fuzz, "
            "goes soft, goes woolly, run out, breaking up, coming apart, in pieces, like cotton wool, like a sponge, "
            "like a blanket, like felt, like wool, like watercolour, like a watercolour, like wet ink, "
            "like ink on wet paper, (like|as) torn (paper|cloth), torn, motheaten, moth eaten, "
            "soft as butter, like butter, lack definition, without definition, undefined, ill defined, badly defined, "
            f"badly cut, poor, bad, weak, ぼけ, 甘い",
            "fair": "fair, average, moderate, medium, 普通",
            "is fair or sharp": NOT_BAD,
            "at most fair": f"{LACKING}, "
            + short_of(
                "sharp|crisp|clean|tight|clear|neat|finished|set|ready", "sharper|crisper|cleaner|tighter|clearer"
            )
            + ", coming, coming on, on its way, on the way, not finished, unfinished, not set, not there, not quite there, "
            "not ready, not closed, just starting, starting, beginning, beginning to show, starting to show, "
            "getting there, half finished, "
            "half way there, on the way in, still open, still loose, still soft, half there, forming, "
            "still forming, not formed, "
            "want tightening, need tightening, want tightening up, need tightening up, need sharpening, want sharpening, "
            "not quite sharp, not fully there, not through",
            "sharp": f"{_SHARP.replace('|', ', ')}, strong, in already, already cut, cut already, already there, "
            f"now there, well formed, "
            f"formed, closed, all closed, "
            "set, there, all there, fully there, in place, visible, pronounced, clearly visible, "
            "tidily cut, firm, clear as day, clear and sharp, you can see, you can see clearly, "
            f"plain to see, good, great, 良い, シャープ",
            "razor": f"{_CUT}, {_DRAWN}, razor, razor sharp, like a razor, knife sharp, knife edge, like a knife, "
            "sharp as a knife, sharp as a razor, sharp as anything, sharp as you like, sharp as glass, sharp as you please, "
            "as sharp as they come, as sharp as it gets, sharp enough to cut yourself, "
            "you could cut yourself on, that you could cut yourself on, like glass, like cut paper, cut like paper, "
            "very sharp, super sharp, ultra sharp, extremely sharp, dead sharp, needle sharp, pin sharp, sharpest, "
            f"the sharpest, incredibly sharp, superb, 抜群",
        },
        alone={
            "at most fair": short_of("sharp|crisp", "sharper|crisper") + ", kiwa not there yet, "
            "kiwa not yet there, kiwa not ready, edges not there yet, kiwa still coming, "
            + each_of(
                "{soft} {at} the edges",
                soft="bit soft|little soft|touch soft|bit fuzzy|bit woolly|slightly soft|bit blurred|bit ragged",
                at="at|on|round|around",
            ),
            "is razor": "razor cut, razor edge, razor edges, cut with a knife, cut as with a knife, sharp as a knife, "
            "like cut with scissors, like cut with a knife, as cut with a knife, razor sharp, like painted on, "
            "painted on, painted edges, knife edges, like cut out with scissors, cut out with scissors",
            "is sharp": "sharp edges all round, sharp edges everywhere, edges sharp all round, crisp all round, edges "
            "sharp everywhere, sharp edged, crisp edged, clean edged, tidy edged, hard edged, sharp edged patches, "
            "crisp edged patches, cleanly cut, clean cut patches, well cut patches, "
            "cleanly cut patches, cleanly cut red, sharply cut, red sharply cut, red cut clean, red cut sharp, "
            "sharply defined, sharply defined red, red sharply defined, red well defined, well defined patches, "
            "patches well defined, patches sharply defined, patches sharp edged, red and white cut clean, "
            "between red and white cut clean, "
            + each_of(
                "{red} {ends} {sharp}",
                red="red|patches|patch",
                ends="ends|stops|finishes",
                sharp="sharp|crisp|dead sharp",
            )
            + ", red stops dead at the white, red stops dead where the white starts",
            "is blurred": "red bleeding at the edges, red bleeds at the edges, edges bleeding, edges run, red runs "
            "into the white, red bleeds into the white, kiwa bokeh, no kiwa, kiwa none, without kiwa, "
            "kiwa missing, kiwa gone, "
            "no edges, "
            + each_of(
                "{red} {bleeds} into the white",
                red="red|colour|patches|patch|last patch|it|edges|edge|hi",
                bleeds="blurs|blur|bleed|bleeds|bleeding|bleeds out|bleeds over|runs|runs out|"
                "running|fades|fades out|fading out|melts|"
                "melting|blends|seeps|smears|dissolves|washes|washes out|spills|goes",
            )
            + ", "
            + each_of(
                "{no} {kiwa}",
                no="hardly any|hardly|no real|no proper|no clear|no clean|no true|not much|little|very little|"
                "next to no|not any|no decent|barely any|without a|without any|without a clear|not a sharp|no visible",
                kiwa="kiwa|edge|border|edge anywhere|edge to the red|edge on the red|edge to it|kiwa anywhere",
            )
            + ", no kiwa to speak, no edge to speak, no kiwa at all, no edge at all, no edge, no edge to the red, "
            "no edge to it, no edge on it, no edges to speak, no kiwa anywhere, no edge anywhere, no sign of kiwa, "
            "red has no edge, no definition, no definition to the red, no definition at the edges, "
            "colour bleeds, red bleeds, red bleeds out, red bleeding, "
            "red peters out, red runs out to nothing, red fades to nothing, "
            + each_of(
                "{you} where the {red} {stops}",
                you="can not see|you can not see|can not tell|you can not tell|can not say|hard to see|hard to tell",
                red="red|hi|patch|last patch",
                stops="stops|ends|finishes|begins and the white ends",
            )
            + ", like watercolour, like a watercolour, like a watercolour on wet paper, like spilled ink, like spilt ink, "
            "soft all round, blurred all round, woolly all round, fuzzy all round, soft edged, woolly edged, fuzzy edged, "
            "ragged edged, "
            + each_of(
                "{smear} {on} the {patch}",
                smear="smear|smudge|blur|red smear",
                on="on|behind",
                patch="first|second|third|last|first patch|second patch|third patch|last patch|shoulder patch|rear "
                "patch|edge",
            )
            + ", キワぼけ",
        },
        of_parts="all",
    ),
    Spoken(
        "kiwa",
        each_of("{at} {end}", at="at the|", end=_ENDS.replace(", ", "|"))
        + ", on edge, at edge, round edge, around edge",
        levels={
            "razor": f"{_CUT}, {_DRAWN}, razor sharp, sharp as a knife, sharp as a razor, like a knife, "
            f"like a razor, very sharp",
            "sharp": "sharp, crisp, cut clean, clean cut, well cut, well defined, sharply cut, cleanly cut",
            "at most fair": short_of("sharp|crisp", "sharper|crisper"),
            "blurred": "blurred, soft, fuzzy, woolly, blurry, ragged, smudged, bleeding, smeared, frayed, "
            "feathered, goes fuzzy, "
            "goes soft, goes woolly, all fuzzy, all blurry, smudgy",
        },
        apart=True,
    ),
    Spoken(
        "kiwa_style",
        "kiwa style, kiwa, edge, edges, style of the edge",
        levels={
            "kamisori": "straight, kamisori, cut straight, straight cut, straight across the scales, across the scales, "
            "cut straight across the scales, in a straight line, dead straight, straight as a ruler",
            "maruzome": "round, scalloped, maruzome, following the scales, follow the scales, rounded, scale shaped, "
            "along the scales, follow each scale, scale by scale, in scallops, rounded off, lobed, wavy",
            "mixed": "mixed, part straight part round",
        },
        alone={
            "is kamisori": "kamisori, kamisori kiwa, straight cut kiwa, kamisori style, kamisori type, kamisori cut, "
            "cuts straight across the scales, cut straight across the scales, straight cut",
            "is maruzome": "maruzome, maruzome kiwa, maruzome style, maruzome type, follows the scales, scalloped, "
            "(edge|edges|kiwa) (runs|run|goes|go) along the scales (neatly|nicely|), "
            "(kiwa|edges) round and even, "
            "red follows the scales",
        },
        of_parts="all",
    ),
    Spoken(
        "sashi_depth",
        "sashi, scale deep, scale of sashi, front edge, front edges, sashi depth, rows of sashi, "
        "sashi scale, row of scales, row of sashi, front edge of the patch, front edge of the red, scale sashi, row sashi, "
        "scale deep sashi, row of scales of sashi, leading edge, leading edges, row deep, scale deep of sashi, "
        "row of scales showing, row of scales showing pink, row of scales showing pink through white, "
        "sashi runs, sashi goes, sashi goes back, scale of pink, "
        "row of scales over the red, scale row, サシ, 差し, " + _FRONTS,
        alone={
            "at least 2": "deep sashi, sashi deep, wide sashi, sashi wide, long sashi, sashi long, sashi too deep, too "
            "much sashi, sashi too wide, heavy sashi, broad sashi, sashi broad, big sashi, lots of sashi",
            "is 0.5": "half a scale, sashi half a scale, half scale sashi, half a scale of sashi, front edges half a "
            "scale, front edge half a scale, half a scale deep, sashi half a scale deep, half a scale deep sashi, "
            "sashi half a row, half a row of sashi, sashi of half a scale, half a scale wide, sashi half a scale wide, "
            "half scale of sashi",
            "is 1.5": "scale and a half, sashi (|about|of|around) (scale|row) and a half, (scale|row) and a half of sashi",
            "is 1": each_of(
                "{sashi} {is_one}", sashi="sashi|front edge|front edges", is_one="a scale deep|a scale wide|a scale"
            )
            + ", scale of sashi, single scale of sashi, single row of sashi, single scale sashi, sashi a single scale, "
            "sashi a single row, sashi one single row, a scale of sashi, sashi about a scale, about a scale of sashi, "
            "whole scale of sashi, sashi a whole scale, whole row of sashi, full scale of sashi, sashi a full scale, "
            "whole scale row shadowed at the front",
            "at most 1": "sashi nearly gone, sashi almost gone, hardly any sashi, sashi almost finished, short "
            "sashi, sashi short, narrow sashi, sashi narrow, little sashi, tight sashi, sashi tight, "
            "sashi good, good sashi, sashi fine, fine sashi, "
            "nice sashi, sharp sashi, sashi sharp, sashi small, small sashi, sashi neat, "
            "no sashi to speak, sashi nothing to speak, sashi next to nothing",
            "is 0": "no sashi, sashi none, without sashi, sashi gone, sashi finished, no sashi at all, no sashi left, "
            "no sashi anywhere, not a trace of sashi, no trace of sashi, no sign of sashi, sashi closed, sashi closed up, "
            "sashi all gone, sashi all closed, sashi already gone, sashi has gone, no more sashi, not a bit of sashi, "
            "no sashi whatsoever, sashi completely gone, サシなし",
        },
        of_parts="all",
    ),
    Spoken(
        "sashi_depth",
        "sashi",
        levels={
            "at least 2": "deep, wide, long, too long, too wide, too deep, far too deep, far too much, "
            "very deep, very wide, "
            "huge, enormous, broad, heavy, big, plenty of, a lot of, lots of, loads of, masses of, too much, so much, much, "
            "still a lot of, everywhere, goes back a long way, goes a long way back, goes deep, runs deep, goes on forever",
            "at most 1": "neat, tiny, not much, next to no, barely any, hint of, trace of, touch of, bit of, very little, "
            "little, only a little, beautiful, lovely, perfect, excellent, great, crisp, clear, shallow, no real, "
            "less than a scale of, under a scale of, less than a scale, under a scale, scarcely any, thin, thin line of, "
            "a whisker of, no great, no deep, nearly closed, almost closed, nearly finished, almost through, "
            "nearly through, "
            "closing, closing up, coming in, barely there, hardly there, ok, okay, as it should be, not deep, minimal, "
            "nearly nothing, just right, spot on, where it should be, nothing to worry about, not too deep, "
            "half closed, almost gone, nearly gone, disappearing, almost disappeared, nearly disappeared, "
            "going, on its way out, tightening, tightening up, drawing in, short, narrow, tight, small",
        },
        apart=True,
    ),
    Spoken(
        "sashi_depth",
        "front edge, front edges, leading edge, leading edges, "
        + each_of(
            "front of {every} {patch}", every="every|each|all|both|first|second|third|last|", patch="patch|step|red"
        ),
        levels={
            "at least 2": "deep, too deep, wide, very deep, too wide, very wide",
        },
        apart=True,
    ),
    Spoken(
        "sashi_even",
        "sashi, front edge, front edges, evenness of the sashi, leading edge, leading edges, サシ",
        levels={
            "rough": "rough, uneven, messy, ragged, irregular, untidy, jagged, unclean, jump about, jumps, jumpy, "
            "different on every patch, different on each patch, different left and right, different on both sides, "
            "not even, not the same everywhere, in and out, up and down, patchy, all over the place, frayed, torn, "
            "stepped, wavy, poor, bad, ugly, a mess, messy everywhere, not clean, not tidy, not regular",
            "fair": "fair, average, fairly even",
            "even": "even, regular, smooth, uniform, nice and even, the same all along, the same everywhere, "
            "the same on every patch, the same on all patches, the same on each patch, same on every patch, "
            "same all round, same everywhere, clean and even, even all along, tidy, equal, straight, consistent, "
            "equally deep, the same depth everywhere, the same depth all along, in one line",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_tone",
        f"{_RED}, tone, shade, hue, red tone, colour of the red, colour tone, shade of red, tone of red, 緋の色",
        levels={
            "yellow": "yellow, yellowish",
            "orange": "orange, orangey, light orange, persimmon, orangy, orange based, on the orange side, carrot, carroty, "
            "like a carrot, like carrot, like orange juice, like an orange, tangerine, amber, apricot, pumpkin, "
            "like persimmon, soft like persimmon, like a persimmon, persimmon colour, more orange than red, "
            "orange rather than red, orange not red, salmon orange, marmalade, like marmalade, goldfish orange, "
            "goldfish colour, like a goldfish, leaning to orange, towards orange, all orange, kaki, 橙",
            "orange_red": "orange red, orangered, orange-red, orangy red, warm red, brownish red, yellow red, "
            "soft orange red, "
            "orangey red, reddish orange, red orange, tomato, tomato red, like a tomato, vermilion, scarlet, warm, "
            "warm tone, warm in tone, between orange and red, brownish, rusty, rust, rust red, rust coloured, brown",
            "red": "pure red, true red, blood red, proper red, real red, like blood, red as blood, fire engine red, "
            "pure, true",
            "purple_red": "purple, purple red, purplish, dark red, violet, bluish, wine red, cold, crimson, "
            "claret, burgundy, "
            "maroon, cold red, blue red, bluish red, cherry, cherry red, magenta, like wine, beetroot, like beetroot, "
            "deep wine red, on the purple side, purple based, cold in tone, cool, leaning to purple, 紫",
        },
        alone={
            "is orange": "orange rather than red, more orange than red, orange hi, orange red tone, persimmon, "
            "kaki, beni kaki, "
            "kaki beni, kaki hi, bright orange, clear orange, light orange, strong orange, nice orange, orange colour, "
            "persimmon red, soft orange, (too|very|a bit too|rather too) orange, more of an orange than a red, "
            "orange patches, orangey, carroty, kaki type, 柿色",
            "is purple_red": "(too|very|a bit too) purple, purple hi, purple based, murasaki hi, purple type, "
            "purplish, wine red, crimson",
            "is orange_red": "brownish, rusty, "
            "(warm|soft|lovely|nice) (orange red|orangey red|reddish orange), warm red, tomato red, "
            "scarlet, vermilion, brick orange",
            "is red": "(proper|real|lovely|good|true|) (blood red|fire engine red)",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_even",
        f"{_RED}, red tone, tone of the red, evenness, evenness of the red, hi tone, colour of the red, tone, shade",
        levels={
            "patchy": "patchy, uneven, blotchy, mottled, spotty, cloudy, irregular, varied, not even, mixed, not the "
            "same everywhere, streaky, streaked, smudgy, two tone, two toned, two tones, in two tones, "
            "different from patch to patch, different on every patch, different front and back, different front to back, "
            "different on the head, comes and goes, not uniform, not the same, not consistent, inconsistent, "
            "not matching, does not match, do not match, varies, vary, changes from patch to patch, marbled, "
            "moth eaten, flecked, speckled, all shades, tiger striped, in clouds, darker in places, lighter in places, "
            "paler in places, weaker in places, faded in places, stronger in places, deeper in places, "
            "rough, ムラ",
            "at most fair": short_of("even|uniform|consistent", "more even|evener|more uniform|smoother"),
            "fair": "fairly even, nearly even, almost even",
            "even": "even, uniform, the same everywhere, same everywhere, even from head to tail, consistent, one "
            "tone, even all over, smooth, same all over, even throughout, the same on every patch, the same on all patches, "
            "the same from head to tail, same from head to tail, same from front to back, same front to back, "
            "the same front to back, the same throughout, same throughout, all one tone, all one shade, all one colour, "
            "one shade, in one tone, all the same, the same shade throughout, the same tone throughout, "
            "one tone throughout, level, flat and even, homogeneous, matches, matching, matches from head to tail, "
            "same on every patch, even as paint, laid on evenly, evenly laid on, evenly spread, the same all over, 均一",
        },
        alone={
            "is even": "(red|hi|colour) the same (all the way through|all the way|throughout|all "
            "over|everywhere|front to back|"
            "from nose to tail|from head to tail|head to tail|on every patch), same (red|colour|shade) (from nose to tail|"
            "head to tail|nose to tail|all the way|all the way through|on every patch|on all patches), "
            "evenly coloured, one tone of red, one tone from head to tail, even red, same red everywhere, "
            "same red front to back, same red from head to tail, same red all over, same red throughout, "
            "same shade of red throughout, same shade front to back, same shade all over, same shade from head to tail, "
            "all patches the same red, patches all the same red, patches match, patches all match, one red throughout, "
            "no patchiness, nothing patchy, not patchy anywhere, all one red, ムラなし",
            "is patchy": each_of(
                "{it} {darker} {at} the {here} than {on} the {there}",
                it="|red|colour|hi|red is|colour is",
                darker="darker|lighter|paler|stronger|weaker|deeper|thinner|thicker|redder",
                at="at|on",
                here="back|rear|tail|head|front|shoulder",
                on="at|on",
                there="back|rear|tail|head|front|shoulder|body",
            )
            + ", "
            + each_of(
                "{red} {lighter} {at} the {place}",
                red="red|colour|hi|beni",
                lighter="lighter|paler|darker|deeper|weaker|thinner|strongest|weakest|palest|deepest|lightest|darkest|brightest",
                at="at|on|towards",
                place="tail|rear|head|shoulder|front|back|last patch|first patch|tail end|second patch|middle",
            )
            + ", "
            + each_of(
                "{part} {shade} {lighter}",
                part="last patch|rear patch|tail patch|second patch|head patch|first patch|shoulder patch|head "
                "red|tail end|head|"
                "head patch red|tail red|shoulder red|body red",
                shade="a shade|a touch|a bit|much|slightly|somewhat|a little|",
                lighter="a different red|a different colour|a different tone|another shade|another "
                "colour|lighter|paler|darker|"
                "weaker|deeper|lighter than the rest|paler than the rest|darker than the rest|"
                "weaker than the rest|a different red|a different shade|another red",
            )
            + ", "
            + each_of(
                "{two} {tones} {of}",
                two="two|three|different|several|various|all sorts of|two different|three different",
                tones="tones|shades|colours|different reds",
                of="|of red|of hi|on the red|in that red|in the red|in it",
            )
            + ", "
            + each_of(
                "{front} {orange} {then} {back} {red}",
                front="front|head|front patch|head patch|back|rear|tail",
                orange="orange|pale|light",
                then="|and|but",
                back="back|rear|tail|body|front|head",
                red="red|dark|deep|proper red",
            )
            + ", patchy, lighter on the head, lighter on the head than on the body, paler on the head, "
            "head paler than the body, head paler, darker on the head, "
            "red darker on the head, red lighter on the head, red paler on the head, red lighter at the "
            "rear, red paler at the rear, red lighter at the tail, red paler at the tail, "
            "head lighter than the body, head darker than the body, colour differs from patch to patch, red "
            "differs, different reds, different shades of red, red blotchy, blotchy, blotches in the red, "
            "two tones, two shades of red, two tone red, patchy red, patchy colour, ムラあり",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_thick",
        f"{_RED}, thickness, thickness of the red, red thickness, depth of the red, depth of red, density, 緋の厚み",
        levels={
            "thin": "thin, weak, transparent, see through, shallow, watery, thin at the rear, thin at the tail, thin "
            "on the head, thin on the shoulder, thin at the edges, too thin, thin as paper, paper thin, like tissue paper, "
            "like tissue, like a wash, like a wash of paint, like watercolour, like thin paint, like a cheap shirt, "
            "like a veil, like gauze, thin as tissue, kokesuki, kokesuke, koke suki, stretched, stretched thin, "
            "stretched out, "
            "translucent, half transparent, without depth, without body, no depth, no body, lacks depth, lack depth, "
            "lacks body, lack body, lacking depth, lacking body, no substance, no depth at all, thin all over, flimsy, "
            "only on the surface, on the surface, skin deep, like weak tea, see the scales through, 薄い",
            "fair": "fair, average, medium, ok, ordinary, reasonably thick, fairly thick, thick enough",
            "at most fair": short_of("thick|dense|solid", "thicker|denser|more solid")
            + ", not much depth, could do with more thickness, could do with more depth, could do with more body",
            "thick": "thick, dense, solid, heavy, rich, strong thick, full, very thick, opaque, like paint, "
            "like thick paint, thick as paint, laid on thick, painted on thick, like enamel, like velvet, velvety, "
            "like oil paint, with depth, with body, good and thick, thick as you like, thick as jam, like jam, "
            "good depth, has depth, poured on, like icing,  has body, has good depth, lots of depth, has substance, "
            "oily, oily depth, compact, concentrated, saturated, packed, tightly packed, closed, fat, meaty, "
            "built up, layered, in layers, several layers, 厚い",
        },
        alone={
            "is thin": "(red|hi|colour) (thins|thins out|thinning) (at|on|towards|behind|) (the|) "
            "(tail|tail end|dorsal|rear|back|"
            "shoulder|head|last patch|edges|), kokesuki, kokesuke, koke suki, koke suke, scales show through, "
            "scales show through the red, you can see the scales, you can see "
            "the scales through it, scales visible, scales visible in the red, scales show in the red, "
            "scales can be seen, thin at the rear, "
            "can see the scales through the red, you can see the scales through the red, scales visible "
            "through the red, single scales show, scales shine through, thin in places, "
            + each_of(
                "{little} {depth}",
                little="no|little|not much|hardly any|no real|no great|not enough|lacks|lacking|without|short of|short on",
                depth="thickness|depth to the red|depth in the red|thickness in the red|body to the red|depth of red|"
                "depth of colour|thickness to the red|thickness of red",
            )
            + ", no thickness, red lacks depth, red lacks body, red lacks thickness, kokesuki all over, koke visible, "
            "red without depth, thin red, コケ透き",
            "is thick": "good thickness, good thickness of red, plenty of thickness, thick plate, no scales "
            "visible, no kokesuki, scales hidden, "
            + each_of(
                "{good} {depth}",
                good="good|great|nice|lovely|plenty of|lots of|real|excellent|fine|wonderful|superb|proper|a lot of|loads of",
                depth="thickness|depth to the red|depth in the red|depth of red|depth of colour|thickness to the red|"
                "thickness in the red|body to the red|body in the red|depth to that red|depth to the colour",
            )
            + ", "
            + ", can not see a scale, you can not see a scale, you can not see a scale through it, can not see the scales, "
            "you can not see the scales, you can not see a single scale, red hides the scales, red covers the scales, "
            "red has depth, red has body, red has thickness, plenty of red in it, red full and thick",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_thick",
        "scales, scale edges, every scale, each scale, single scales, each single scale, every single scale, "
        "individual scales, scale outlines, all the scales, koke",
        levels={
            "thin": each_of(
                "{show} {through}",
                show="show|show up|come|coming|shine|shining|visible|can be seen|peep|poke|grin|glint|shimmer|seen|see|count",
                through="through|through it|through the red|in the red|under the red|through the colour|through that red|"
                "through this red|in it",
            )
            + ", see, can see, you can see, i can see, can count, you can count, i can count, stand out, "
            "can be seen, can be counted, easy to see",
            "thick": "not see, can not see, you can not see, i can not see, no, do not show, not visible, can not be seen, "
            "do not show through, hidden, covered",
        },
        of_parts="all",
        apart=True,
    ),
    Spoken(
        "hi_thick",
        "thickness, depth of the red, depth of red, depth of colour, depth in the red, depth to the red, "
        "thickness of the red, "
        "body in the red, body to the red, density of the red",
        levels={
            "thick": "good, great, nice, lovely, excellent, superb, fantastic, amazing, wonderful, outstanding, "
            "plenty of, real, "
            "lots of, proper, very good, fine, impressive, brilliant",
            "fair": "fair, average, ok, okay, so so, reasonable, decent, not bad",
            "at most fair": LACKING,
            "thin": "poor, bad, no, little, hardly any, weak, missing, without, terrible, awful",
        },
        apart=True,
    ),
    Spoken(
        "hi_strength",
        f"{_RED}, strength of the red, strength, red colour, red quality, hi quality, beni quality, colour quality, "
        "quality of the red, quality of the hi, quality of the beni, quality of the colour, red itself, beni itself, "
        "colour strength, depth of colour, intensity, saturation",
        levels={
            "pale": "pale, faint, pink, pinkish, washed out, light, weak, faded, almost pink, bleached, very light, dull, "
            "all washed out, anaemic, insipid, lifeless, without life, no life, pastel, salmon, salmon pink, rose, "
            "milky, on the pale side, pale as anything, too pale, very pale, too light, on the light side, "
            "gone pale, chalky, flat, dead, tired, sickly, like a faded shirt, like old jeans, like weak tea, "
            "like pink lemonade, feeble, no colour, without colour, lacks colour, lacks life, lacks punch, "
            "no punch, without punch, poor, bad, weak",
            "fair": "fair, average, moderate, medium, so so, ordinary, okay, ok, middling, run of the mill, "
            "nothing special, "
            "acceptable, passable, reasonable, unremarkable, you could find on a thousand",
            "is fair or strong": NOT_BAD,
            "at most fair": f"{DISAPPOINTING}, "
            + short_of(
                "strong|deep|bright|red|vivid|intense|dark",
                "stronger|deeper|brighter|redder|more intense|darker|livelier|more vivid",
            ),
            "at least strong": "superb, lovely stuff, good stuff, high, very high, quality stuff, "
            "the real thing, the real deal, quality, "
            "high quality, good quality, great quality, very good quality, top quality stuff, luscious, "
            "glorious, delicious, "
            "rich and even, dark, very dark, too dark, nearly too dark, almost too dark",
            "strong": "strong, bright, vivid, lively, brilliant, clear, intense, "
            "fiery, glowing, glow, on fire, like fire, like flames, luminous, fluorescent, bright as a postbox, "
            "as bright as a postbox, like a postbox, like a pillar box, bright as anything, very bright, hot, radiant, "
            "punchy, full of life, alive, fresh, shining, burning, strong and clear, loud, sparkling, "
            "jumps out, jumps at you, pops, hits you, saturated, powerful, good, great, 鮮やか",
            "deep": "deep, very strong, very deep, dark and strong, very intense, deep and rich, "
            "deep and strong, deep as wine, "
            "dark and deep, deep as blood, ever so deep, deep as anything, really deep, deep and dark, "
            "as deep as it gets, 濃い",
        },
        alone={
            "is pale": "pale, almost pink, washed out, faded colour, washed out colour, washed out red, "
            "pale red, pink red, more pink than red, pink rather than red, pink not red, no colour to speak, "
            "no strength in the red, no strength in the colour, no life in the red, no life in the colour, "
            "all washed out, on the pale side",
            "is deep": "lovely deep red, a deep red, deep colour, deep red",
            "at least strong": "dark red, red dark, good red, nice red, lovely red, good colour, love the red, gorgeous "
            "colour, beautiful red, dark hi, colour good, rich red, rich colour, intense colour, great red, great colour, "
            "what a red, what a colour, superb red, superb colour, red to die for, some red on it, proper red, "
            "good strong red, "
            "lovely colour, beautiful colour, i love that red, love that (red|colour|beni), "
            "what lovely (red|colour), i like the red, i like that red, i like the colour, "
            "gorgeous red, wonderful red, fantastic red, fantastic colour, wonderful colour, amazing red, amazing colour, "
            "excellent red, excellent colour, first class red, first class colour, quality red, top red, stunning red, "
            "stunning colour, good hi, good beni, super red, super colour",
            "is strong": "strong colour, a strong red, bright red, bright colour, vivid red, vivid colour, "
            "lively red, fire red, "
            "fiery red, pillar box red, postbox red, glowing red, red glows, colour glows, red is on fire, "
            "plenty of colour, plenty of strength in the red",
        },
        of_parts="all",
    ),
    Spoken(
        "sashi_depth",
        "(blurry|blurred|soft|fuzzy|pink) (zone|strip|band|edge) (in front of|at the front of) (each|every|the|all) (patch|"
        "field|step)",
    ),
    Spoken("kiwa", beside="edge at the (back|rear) (of each|of every patch|of each patch|of the last patch|)"),
    Spoken(
        "fading",
        "fading, fading red, fading of the red, red fading",
        levels={
            "none": "no, without, no sign of, no trace of",
            "slight": "slight, slightly, little, a little, some, a bit of",
            "marked": "clear, clearly, marked, much, a lot of",
            "strong": "strong, strongly, badly, heavy, severe",
        },
        alone={
            "at most slight": "red fading, the red is fading, red is going, hi fading, red fades, "
            "red is breaking up, "
            "red breaking up, red going, that red is going, red fades out, hi is breaking up, "
            "red is fading out, red fading at the edges, "
            f"({_LOSING}) (in places|already|a bit|slowly|everywhere|all over|)",
            "is strong": "red nearly gone, red almost gone, hi nearly gone, "
            "(red|colour) (nearly|almost|as good as|practically) gone",
            "is none": "no fading, nothing fading, red holds, stable red, "
            "(red|hi|colour|it) (holds|holding|stable|is stable|"
            "holding on|holding well|holds well|holding up|not fading|not going anywhere|staying put|holds its own), "
            "holds its (red|colour)",
        },
        bare={"at most slight": "fading, fades, fading a bit, fading already"},
    ),
    Spoken(
        "fading_places",
        "fading, red fading, fading red, the red is fading, red fades, red is going, hi fading, hi breaking, red breaking, "
        "hi breaking up, red gone pale, red going pale, red turned pink, red washed out, red "
        "thinning, red breaking up, thinning red",
        levels={
            "stem": "at the last patch, last patch, on the last patch, on the last step, at the last step, tail end, "
            "at the tail end, towards the tail, at the tail, last step, in the last patch, rear patch",
            "shoulder": "first patch, shoulder patch, on the first patch",
            "crown": "head patch, on the head patch",
        },
        alone={
            "includes stem": f"({_LOSING}) (at|on|towards|near) the (tail|tail end|back end|last patch|last step|rear patch|"
            "stem|end), "
            "(last patch|rear patch|tail patch|last step|tail end) (fading|going|breaking up|on its way out|thinning|"
            "thinning out|disappearing|dissolving|washing out), "
            "red (on|at) the (last patch|tail end|tail|last step|rear patch|"
            "back end) (going|fading|breaking up|thinning out|on its way out|disappearing), "
            "tail end pink, tail end is pink, last patch pink, last step pink, rear patch pink, "
            "pink at the tail end, pink at the tail, the red on the tail end is fading, "
            "red on the tail end fading, last patch fading, last patch is "
            "fading, the last step is fading, last step fading, rear patch fading, "
            "last patch going, red at the tail is fading, red at the tail end is fading, last step going, "
            "last patch fades, last step breaking up, last patch breaking up",
            "includes crown": "head patch fading, head patch is fading, the red on the head is fading, "
            "head red fading, red on "
            "the head fading, head hi fading",
            "includes shoulder": "the red on the shoulder is fading, shoulder patch fading, first patch fading, red on the "
            "shoulder fading",
        },
    ),
    Spoken(
        "niban_hi",
        "niban hi, nibanhi, secondary red, late red, second red, secondary hi, thin second red, niban, "
        "(niban|second red|secondary red|second hi|secondary hi|late red|late hi) "
        "(coming|coming up|coming through|starting|showing), "
        "(late|thin|faint|new|second|pale|weak|ghost of|hint of) red "
        "(coming|coming up|coming through|showing|rising|) in the white, "
        "red (coming|coming up|coming through|rising) in the white, second lot of red, 二番緋",
        of_parts="all",
    ),
)
"""What is said of the colour and the edges of red."""

_WHITE = "(white|shiroji|skin|white ground|ground|white skin)"
_GONE = "(gone|going|goes|turned|turning|got|has got|still|a bit|a little|a touch|slightly|all|rather|)"
_YELLOW = (
    "(some yellow|still yellow|dirty yellow|bit of yellow|yellow|yellowish|yellowy|yellowed|yellowing|cream|creamy|buttery|"
    "yellow (cast|tinge|tint)|yellowish (cast|tinge|tint)|"
    "(cast|tinge|tint|touch|hint|bit|trace) of (yellow|cream))"
)
_FACE = "(head|nose|face|snout|forehead|cheeks|crown|top of the head|front of the head)"
_ON = "(left on|left at|along|near|by|towards|on|at|in|round|around|up round|up at|down to|over|about|behind|between)"
_BACK = (
    "(back|whole back|dorsal|shoulder|tail|tail end|flank|side|belly|rear|body|left|right|"
    "left side|right side|stem|back end|rear end|fins)"
)
_THROUGHOUT = "(all over|everywhere|throughout|all the way|from head to tail|head to tail|on (this one|her|him|it)|)"

SAID_OF_WHITE: tuple[Saying, ...] = (
    Spoken(
        "shiroji",
        "shiroji, white, white ground, ground, white skin, skin, the white, whiteness, skin colour, white colour, "
        "white quality, quality of the white, white of the body, body white, white of the back, 白地, 白質, 地肌",
        levels={
            "yellow": f"yellow, very yellow, dirty yellow, yellowed, yellow {_THROUGHOUT}, "
            f"yellow {_ON} the {_BACK}, "
            "like butter, buttery, butter yellow, like old ivory, like old piano keys, like old paper, tea stained, "
            "like weak tea, 黄色い",
            "at most cream": f"(yellowish|yellowy|yellowing) {_THROUGHOUT}, "
            f"(yellowish|yellowing) {_ON} the {_BACK}, "
            f"yellow side, yellow based, poor, bad, weak",
            "cream": "cream, creamy, ivory, off white, slightly yellow, a bit yellow, a little yellow, yellowish, "
            "fair, average, milky, somewhat yellow, slight yellow, slightly creamy, like cream, eggshell, vanilla, beige, "
            "a touch yellow, fair, average, moderate, medium",
            "is cream or white": NOT_BAD,
            "at most white": f"{DISAPPOINTING}, grey, greyish, off, smoky, like dishwater, dishwater, off colour, "
            f"dull, grey wash, "
            "that grey wash, grey tinge, grey cast, grey tint, bluish, blueish, not pure, impure, lacks purity, "
            "without purity, not clean, not bright, not the whitest, not the cleanest, not the purest, a bit off, "
            + short_of("white|clean|pure|bright", "whiter|cleaner|purer|brighter"),
            "white": f"white, good, clean, nice, clear, fine, bright, pure, fresh, crisp, clean and white, nice and white, "
            f"(nice|good|clean|fine|white|lovely|clear) {_THROUGHOUT}, good, great, 白い",
            "at least white": "thick, dense, opaque, solid, thick and white, dense and white, lovely and thick, "
            "thick and even, very good, very clean, spotless, so good, so clean, really clean, really good",
            "snow": "snow, snow white, snowy, like fresh snow, fresh snow, as snow, like milk, like paper, "
            "like chalk, milk white, like snow, pure white, dazzling, very white, porcelain, paper white, like porcelain, "
            "(white|clean|pure|bright) as (snow|paper|milk|a sheet|chalk), like a sheet, like a clean sheet, "
            "like (fresh|clean) (linen|sheets|washing), (white|clean) as (a wall|linen|a bone|bone|a fridge|a plate),  "
            "as white as snow, "
            "clean as paper, (gleaming|brilliant|radiant|blinding), like cotton, like marble, like alabaster, "
            "immaculate, flawless, superb, 雪白, 真っ白",
        },
        alone={
            "is snow": "snow white skin, white as snow, snow white, skin snow white, "
            "snow on (her|him|it|this one), like snow, "
            "like fresh snow, as white as snow, milk white, white as milk, white as paper",
            "at least white": "pure white skin, pure white, white pure, very white skin, lovely white, good white "
            "skin, good white, the rest white, rest white, body white, white body, rest of the body "
            "white, body is white, rest of the white is white, rest of the white (clean|good|fine|clear|pure), "
            "(no|without|not a trace of|no trace of|no sign of|not a hint of|no hint of|free of|clear of|not a bit of) "
            "(yellow|yellowing|yellow cast|yellow tinge) (in the white|anywhere|at all|on it|in it|in the skin|on the "
            "skin|), "
            "no cast in the white, no cast, white free of yellow, white (free of|without) (any|a|) (yellow|cast|tinge)",
            "at most cream": "yellow cast, yellow tinge, yellow tint, yellowish tint, yellowish cast, yellowish tinge, "
            "yellow tint all over, yellowish tint all over, yellowish all over, yellow all over, yellow skin, "
            "yellow in the white, yellow, yellowish, yellow in the skin, yellowing, gone yellow, going yellow, "
            f"{_YELLOW} (in|on|over) the (white|skin|shiroji|ground|body), "
            "(yellow|yellowish|creamy) (cast|tinge|tint) (to|in|on|over) (the|) (white|skin|it|everything), "
            "(tinge|touch|hint|trace|cast|tint) of (yellow|cream), like old ivory, "
            f"{_WHITE} (has|got|has got|with|shows) (a|some|a slight|a bit of|) {_YELLOW}, "
            f"yellow {_ON} the {_BACK}",
            "at most white": "(asagi|bluish|blue) (grey|) (cast|tinge|tint), (grey|greyish) (cast|tinge|tint), "
            "white greyish, white grey, greyish white, grey white, white a bit grey, "
            "dull white, white dull, "
            f"{_WHITE} (has|got|has got|with|shows) (a|some|that|) (grey|greyish|dull) (cast|tinge|wash|tint|tone|look), "
            "(grey|greyish) (cast|tinge|wash|tint|tone) (in|to|on|over) (the|) (white|skin|it), "
            "white not white, not pure white, "
            "(slightly|a bit|a little|) off white",
        },
    ),
    Spoken(
        "white_head",
        "head white, white of the head, white on the head, head skin, skin on the head, skin of the head, nose white",
        levels={
            "yellow": "yellow, very yellow",
            "cream": "cream, creamy, slightly yellow, a bit yellow, yellowish, a touch yellow",
            "at most cream": "not clear, not white, not clean, not clear yet, not white yet, poor, bad, dirty, dull, off",
            "clear": "clear, white, clean, good, pure, nice, bright, fine, snow white, like snow, perfect, spotless",
        },
        alone={
            "at most cream": "yellow head, yellow on the head, head yellow, slight yellow on the head, head a bit yellow, "
            "yellow at the head, yellowish head, head yellowish, "
            "head slightly yellow, yellow nose, nose yellow, a bit of yellow on the head, a little yellow on "
            "the head, cream on the head, shiroji cream on the head, "
            "head still yellow, yellow face, face yellow, shiroji yellow on the head, white yellow on the head, "
            "head is yellow, "
            f"{_YELLOW} {_ON} (its|her|his|the|) {_FACE}, {_YELLOW} from (the|) (nose|lips) to (the|) eyes, "
            f"{_FACE} (has not|not|is not|not yet) (cleared|cleaned up|whitened) (yet|), "
            f"{_YELLOW} (on|in) (his|her) {_FACE}, {_YELLOW} {_FACE}, "
            f"{_FACE} {_GONE} {_YELLOW}, {_FACE} (has|with|shows|got) (a|some|a bit of|a slight|) {_YELLOW}, "
            f"{_FACE} not (clear|white) yet, head skin {_GONE} {_YELLOW}, "
            f"{_WHITE} {_GONE} {_YELLOW} {_ON} the {_FACE}, {_WHITE} {_ON} the {_FACE} {_GONE} {_YELLOW}",
            "is clear": f"no (yellow|yellowing|cream) {_ON} the {_FACE}, {_FACE} (clear|free) of yellow, "
            f"not a trace of yellow {_ON} the {_FACE}, {_WHITE} (clean|clear|pure|white) {_ON} the {_FACE}",
        },
    ),
)
"""What is said of white."""
