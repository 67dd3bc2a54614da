"""How sorters speak of the edges of red (hi): behind and beside it (kiwa), and in front (sashi).

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether, each_of
from koirules.vocabulary.praise import LACKING, NOT_BAD, short_of, wished

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
    "blurred|soft|fuzzy|woolly|blurry|ragged|smudged|smudgy|bleeding|smeared|indistinct|unclear|washed out|frayed|untidy|"
    "messy|feathered"
)
_LIKE_CUT = (
    "(like|as if|as though|) (cut|cut out|snipped|punched) (of|from|out of|with|) (a|) (paper|card|scissors|stencil|"
    "cardboard|cookie cutter)"
)
_STUCK_ON = (
    "(sticker|stencil|paper cut out|cut out|transfer|decal|jigsaw piece|jigsaw|stuck on|glued on|with a stencil)"
)
_SPILT = (
    "((spilt|spilled) (ink|wine|paint|tea|juice|coffee)|wine stain|tea stain|ink stain|ink blot|ink on blotting paper|"
    "blotting paper|smudged lipstick|lipstick after a kiss|wet brush|wet paintbrush|candy floss|cotton wool|sponge|wet "
    "watercolour)"
)
_CRISP = "(sharp|crisp|clean|neat|tidy|hard|tight|well cut|clear|clean cut|cut clean)"
_FUZZY = (
    "(soft|fuzzy|woolly|blurred|blurry|ragged|messy|untidy|frayed|loose|bleeding|smudgy|smudged|furry|rough|pink|pinkish|"
    "softish|hazy|unclear)"
)
_EDGES = "(edges|edge|borders|border|rims|rim|kiwa|outline|outlines)"
_WHICH_PATCH = "(the|) (first|second|third|fourth|last|middle|rear|back|shoulder|tail) (step|patch|plate)"
_FRONT = (
    "(front edge|front edges|leading edge|leading edges|front|edge at the front) (of|on|) (the|each|every|all|) (first|"
    "second|third|last|) (step|patch|plate|red|1|)"
)
_SHADED = "(blurry|blurred|soft|fuzzy|woolly|pink|pinkish|shaded|shady|smoky|hazy|unclear|soft pink)"
_DONE = "(done|cut|made|snipped|trimmed|drawn|sliced|cut out|ruled|finished)"
_LIKE_HAZE = (
    "(a|) (fog|mist|smoke|haze|pink paper|blotting paper|tissue|gauze|veil|cloud|steam|breath on glass|pink smoke|watercolour|"
    "wet paper|blush|blusher|face powder)"
)
_SOFTLY = (
    "(soft|softly|gently|gradually|slowly|blurred|blurry|fuzzy|like (mist|fog|smoke)|with a blush|with a blur|hazily)"
)
_FRONT_EDGE = (
    "((edge|edges|border|borders|rim|rims|outline|outlines|line|lines) (in front|at the front|on the front|front|towards the "
    "head|facing the head|on the head side|at the front end|on the front side)|front (edge|edges|side|borders|border|line|lines|"
    "rim|rims)|leading (edge|edges)|fronts) (of (the|each|every|all the) (red|patch|patches|step|steps|1|plate|second|third|last)"
    "|all round|everywhere|)"
)
_AT_THE_FRONT = (
    "(at the front|in front|on the front|front|on the front side|on the head side|towards the head) (of (each|every|the|all|all "
    "the) (first|second|third|last|) (step|patch|plate|red|patches|steps|1)|)"
)
_ALONG_AN_EDGE = (
    "(along|on|down|at|round) (the|) (left|right|lower|upper|top|bottom|rear|back|outer|side|left hand|right hand|trailing|"
    "hind|tail side) (edge|side edge|edges)"
)

SAID_OF_EDGES: tuple[Saying, ...] = (
    Spoken(
        "kiwa",
        "kiwa, edge, edges, all edges, edges all, edges everywhere, rear edge, rear edges, side edge, back edge, hind edge, "
        "trailing edge, lower edge, bottom edge, top edge, upper edge, outer edge, left edge, right edge, edge to the red, "
        "edge of the red, edges of the red, edge of the patch, edges of the patches, edge of the second patch, rear edge of "
        "the first patch, rear edge of the second patch, rear edge of the last patch, edge of the hi, border, outline of "
        "the red, outline of the patches, borders, kiwa edge, red edge, patch edge, line between red and white, border "
        "between red and white, edge between red and white, boundary between red and white, boundary of the red, boundary, "
        "border of the red, where red meets white, where the red meets the white, where the red stops, where the red ends, "
        "キワ, 際",
        levels={
            "blurred": f"{_BLURRED.replace('|', ', ')}, not there, faded, dull, fade, fade out, fade away, dissolve, "
            "dissolving, open, loose, very soft, bleed, bleed out, smear, smeary, run, running, wishy washy, feathery, "
            "mushy, muddy, uneven, jagged, all over the place, all over the shop, out of focus, goes fuzzy, fuzz, goes "
            "soft, goes woolly, run out, breaking up, coming apart, in pieces, like cotton wool, like a sponge, like a "
            "blanket, like felt, like wool, like watercolour, like a watercolour, like wet ink, like ink on wet paper, "
            "(like|as) torn (paper|cloth), torn, motheaten, moth eaten, soft as butter, like butter, lack definition, "
            "without definition, undefined, ill defined, badly defined, badly cut, poor, bad, weak, ぼけ, 甘い",
            "fair": "fair, average, moderate, medium, 普通",
            "is fair or sharp": NOT_BAD,
            "at most fair": f"{LACKING}, "
            + short_of(
                "sharp|crisp|clean|tight|clear|neat|finished|set|ready", "sharper|crisper|cleaner|tighter|clearer"
            )
            + ", coming, coming on, on its way, on the way, not finished, unfinished, not set, not there, not quite there, "
            "not ready, not closed, just starting, starting, beginning, beginning to show, starting to show, getting "
            "there, half finished, half way there, on the way in, still open, still loose, still soft, half there, "
            "forming, still forming, not formed, want tightening, need tightening, want tightening up, need tightening "
            "up, need sharpening, want sharpening, not quite sharp, not fully there, not through",
            "sharp": f"{_SHARP.replace('|', ', ')}, strong, in already, already cut, cut already, already there, now there, "
            "well formed, formed, closed, all closed, set, there, all there, fully there, in place, visible, "
            "pronounced, clearly visible, tidily cut, firm, clear as day, clear and sharp, you can see, you can see "
            "clearly, plain to see, good, great, 良い, シャープ",
            "razor": f"{_CUT}, {_DRAWN}, razor, razor sharp, like a razor, knife sharp, knife edge, like a knife, sharp as "
            "a knife, sharp as a razor, sharp as anything, sharp as you like, sharp as glass, sharp as you please, as "
            "sharp as they come, as sharp as it gets, sharp enough to cut yourself, you could cut yourself on, that you "
            "could cut yourself on, like glass, like cut paper, cut like paper, very sharp, super sharp, ultra sharp, "
            "extremely sharp, dead sharp, needle sharp, pin sharp, sharpest, the sharpest, incredibly sharp, superb, 抜群",
        },
        alone={
            "at most fair": short_of("sharp|crisp", "sharper|crisper")
            + ", kiwa not there yet, kiwa not yet there, kiwa not ready, edges not there yet, kiwa still coming, "
            + each_of(
                "{soft} {at} the edges",
                soft="bit soft|little soft|touch soft|bit fuzzy|bit woolly|slightly soft|bit blurred|bit ragged",
                at="at|on|round|around",
            ),
            "is razor": "razor cut, razor edge, razor edges, cut with a knife, cut as with a knife, sharp as a knife, like "
            "cut with scissors, like cut with a knife, as cut with a knife, razor sharp, like painted on, painted on, "
            "painted edges, knife edges, like cut out with scissors, cut out with scissors",
            "is sharp": "sharp edges all round, sharp edges everywhere, edges sharp all round, crisp all round, edges sharp "
            "everywhere, sharp edged, crisp edged, clean edged, tidy edged, hard edged, sharp edged patches, crisp "
            "edged patches, cleanly cut, clean cut patches, well cut patches, cleanly cut patches, cleanly cut red, "
            "sharply cut, red sharply cut, red cut clean, red cut sharp, sharply defined, sharply defined red, red "
            "sharply defined, red well defined, well defined patches, patches well defined, patches sharply defined, "
            "patches sharp edged, red and white cut clean, between red and white cut clean, "
            + each_of(
                "{red} {ends} {sharp}",
                red="red|patches|patch",
                ends="ends|stops|finishes",
                sharp="sharp|crisp|dead sharp",
            )
            + ", red stops dead at the white, red stops dead where the white starts",
            "is blurred": "red bleeding at the edges, red bleeds at the edges, edges bleeding, edges run, red runs into the "
            "white, red bleeds into the white, kiwa bokeh, no kiwa, kiwa none, without kiwa, kiwa missing, kiwa gone, "
            "no edges, "
            + each_of(
                "{red} {bleeds} into the white",
                red="red|colour|patches|patch|last patch|it|edges|edge|hi",
                bleeds="blurs|blur|bleed|bleeds|bleeding|bleeds out|bleeds over|runs|runs out|running|fades|fades out|"
                "fading out|melts|melting|blends|seeps|smears|dissolves|washes|washes out|spills|goes",
            )
            + ", "
            + each_of(
                "{no} {kiwa}",
                no="hardly any|hardly|no real|no proper|no clear|no clean|no true|not much|little|very little|next to no|"
                "not any|no decent|barely any|without a|without any|without a clear|not a sharp|no visible",
                kiwa="kiwa|edge|border|edge anywhere|edge to the red|edge on the red|edge to it|kiwa anywhere",
            )
            + ", no kiwa to speak, no edge to speak, no kiwa at all, no edge at all, no edge, no edge to the red, no edge "
            "to it, no edge on it, no edges to speak, no kiwa anywhere, no edge anywhere, no sign of kiwa, red has no "
            "edge, no definition, no definition to the red, no definition at the edges, colour bleeds, red bleeds, red "
            "bleeds out, red bleeding, red peters out, red runs out to nothing, red fades to nothing, "
            + each_of(
                "{you} where the {red} {stops}",
                you="can not see|you can not see|can not tell|you can not tell|can not say|hard to see|hard to tell",
                red="red|hi|patch|last patch",
                stops="stops|ends|finishes|begins and the white ends",
            )
            + ", like watercolour, like a watercolour, like a watercolour on wet paper, like spilled ink, like spilt ink, "
            "soft all round, blurred all round, woolly all round, fuzzy all round, soft edged, woolly edged, fuzzy "
            "edged, ragged edged, "
            + each_of(
                "{smear} {on} the {patch}",
                smear="smear|smudge|blur|red smear",
                on="on|behind",
                patch="first|second|third|last|first patch|second patch|third patch|last patch|shoulder patch|rear patch|"
                "edge",
            )
            + ", キワぼけ",
        },
        of_parts="all",
    ),
    Spoken(
        "kiwa",
        each_of("{at} {end}", at="at the|", end=_ENDS.replace(", ", "|"))
        + ", on edge, at edge, round edge, around edge, along edge, all round edge, at all edge, on all edge, round rim, at "
        "border",
        levels={
            "razor": f"{_CUT}, {_DRAWN}, razor sharp, sharp as a knife, sharp as a razor, like a knife, like a razor, very "
            "sharp",
            "sharp": "sharp, crisp, clean, ever so clean, neat, tidy, hard, tight, clear, cut clean, clean cut, well cut, "
            "well defined, sharply cut, cleanly cut",
            "at most fair": short_of("sharp|crisp", "sharper|crisper"),
            "blurred": "blurred, soft, fuzzy, woolly, blurry, ragged, smudged, bleeding, smeared, frayed, feathered, loose, "
            "messy, untidy, furry, rough, pinkish, hazy, goes fuzzy, goes soft, goes woolly, all fuzzy, all blurry, "
            "smudgy",
        },
        apart=True,
    ),
    Spoken(
        "kiwa_style",
        "kiwa style, kiwa, edge, edges, style of the edge",
        levels={
            "kamisori": "straight, kamisori, cut straight, straight cut, straight across the scales, across the scales, cut "
            "straight across the scales, in a straight line, dead straight, straight as a ruler",
            "maruzome": "round, scalloped, maruzome, following the scales, follow the scales, rounded, scale shaped, along "
            "the scales, follow each scale, scale by scale, in scallops, rounded off, lobed, wavy",
            "mixed": "mixed, part straight part round",
        },
        alone={
            "is kamisori": "kamisori, kamisori kiwa, straight cut kiwa, kamisori style, kamisori type, kamisori cut, cuts "
            "straight across the scales, cut straight across the scales, straight cut",
            "is maruzome": "maruzome, maruzome kiwa, maruzome style, maruzome type, follows the scales, scalloped, (edge|"
            "edges|kiwa) (runs|run|goes|go) along the scales (neatly|nicely|), (kiwa|edges) round and even, red follows "
            "the scales",
        },
        of_parts="all",
    ),
    Spoken(
        "sashi_depth",
        "sashi, scale deep, scale of sashi, front edge, front edges, sashi depth, rows of sashi, sashi scale, row of "
        "scales, row of sashi, front edge of the patch, front edge of the red, scale sashi, row sashi, scale deep sashi, "
        "row of scales of sashi, leading edge, leading edges, row deep, scale deep of sashi, row of scales showing, row of "
        "scales showing pink, row of scales showing pink through white, sashi runs, sashi goes, sashi goes back, scale of "
        "pink, row of scales over the red, scale row, サシ, 差し, " + _FRONTS,
        alone={
            "at least 2": "deep sashi, sashi deep, wide sashi, sashi wide, long sashi, sashi long, sashi too deep, too much "
            "sashi, sashi too wide, heavy sashi, broad sashi, sashi broad, big sashi, lots of sashi",
            "is 0.5": "half a scale, sashi half a scale, half scale sashi, half a scale of sashi, front edges half a scale, "
            "front edge half a scale, half a scale deep, sashi half a scale deep, half a scale deep sashi, sashi half a "
            "row, half a row of sashi, sashi of half a scale, half a scale wide, sashi half a scale wide, half scale of "
            "sashi",
            "is 1.5": "scale and a half, sashi (|about|of|around) (scale|row) and a half, (scale|row) and a half of sashi",
            "is 1": each_of(
                "{sashi} {is_one}", sashi="sashi|front edge|front edges", is_one="a scale deep|a scale wide|a scale"
            )
            + ", scale of sashi, single scale of sashi, single row of sashi, single scale sashi, sashi a single scale, "
            "sashi a single row, sashi one single row, a scale of sashi, sashi about a scale, about a scale of sashi, "
            "whole scale of sashi, sashi a whole scale, whole row of sashi, full scale of sashi, sashi a full scale, "
            "whole scale row shadowed at the front",
            "at most 1": "sashi nearly gone, sashi almost gone, hardly any sashi, sashi almost finished, short sashi, sashi "
            "short, narrow sashi, sashi narrow, little sashi, tight sashi, sashi tight, sashi good, good sashi, sashi "
            "fine, fine sashi, nice sashi, sharp sashi, sashi sharp, sashi small, small sashi, sashi neat, no sashi to "
            "speak, sashi nothing to speak, sashi next to nothing",
            "is 0": "no sashi, sashi none, without sashi, sashi gone, sashi finished, no sashi at all, no sashi left, no "
            "sashi anywhere, not a trace of sashi, no trace of sashi, no sign of sashi, sashi closed, sashi closed up, "
            "sashi all gone, sashi all closed, sashi already gone, sashi has gone, no more sashi, not a bit of sashi, "
            "no sashi whatsoever, sashi completely gone, サシなし",
        },
        of_parts="all",
    ),
    Spoken(
        "sashi_depth",
        "sashi",
        levels={
            "at least 2": "deep, wide, long, too long, too wide, too deep, far too deep, far too much, very deep, very "
            "wide, huge, enormous, broad, heavy, big, plenty of, a lot of, lots of, loads of, masses of, too much, so "
            "much, much, still a lot of, everywhere, goes back a long way, goes a long way back, goes deep, runs deep, "
            "goes on forever",
            "at most 1": "neat, tiny, not much, next to no, barely any, hint of, trace of, touch of, bit of, very little, "
            "little, only a little, beautiful, lovely, perfect, excellent, great, crisp, clear, shallow, no real, less "
            "than a scale of, under a scale of, less than a scale, under a scale, scarcely any, thin, thin line of, a "
            "whisker of, no great, no deep, nearly closed, almost closed, nearly finished, almost through, nearly "
            "through, closing, closing up, coming in, barely there, hardly there, ok, okay, as it should be, not deep, "
            "minimal, nearly nothing, just right, spot on, where it should be, nothing to worry about, not too deep, "
            "half closed, almost gone, nearly gone, disappearing, almost disappeared, nearly disappeared, going, on its "
            "way out, tightening, tightening up, drawing in, short, narrow, tight, small",
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
            "rough": "rough, uneven, messy, ragged, irregular, untidy, jagged, unclean, jump about, jumps, jumpy, different "
            "on every patch, different on each patch, different left and right, different on both sides, not even, not "
            "the same everywhere, in and out, up and down, patchy, all over the place, frayed, torn, stepped, wavy, "
            "poor, bad, ugly, a mess, messy everywhere, not clean, not tidy, not regular",
            "fair": "fair, average, fairly even",
            "even": "even, regular, smooth, uniform, nice and even, the same all along, the same everywhere, the same on "
            "every patch, the same on all patches, the same on each patch, same on every patch, same all round, same "
            "everywhere, clean and even, even all along, tidy, equal, straight, consistent, equally deep, the same "
            "depth everywhere, the same depth all along, in one line",
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
        "kiwa",
        "line to the white, line where the red meets the white, line of the red, rims, rim of the red, red rim, kiwas, "
        "(edge|edges) (at the back|behind|at the rear|at the tail|on the last step|on the last patch|all over|all the way "
        "round), edge nearest the tail, edge towards the tail, edge facing the tail, edge on the tail side, edge work, edge "
        "sharpness, kiwa work, edge definition, sharpness of the edges, sharpness of the edge, quality of the edges, edging",
        levels={
            "sharp": "hard, hard and crisp, hard cut, shimari, already in, cut dead straight, like a ruler, as good as they "
            "come, just as they should be",
            "razor": f"{_LIKE_CUT}, very hard, razor like, hard as nails, cut out, like a {_STUCK_ON}, like (they|it) "
            "(were|was|is|are) (painted|drawn|cut|printed|cut out|painted on), like (they|it) had been (painted|drawn|"
            "cut|printed|cut out|painted on)",
            "blurred": "boke, bokete, bokashi, amai, nashi, jaggedy, melting, melt, oozing, ooze, wobbly, vague, cloudy, "
            "hazy, faint, watery, uncertain, all fuzz, bitty, spongy, fluffy, furry, furry looking, like (a|an|) "
            f"{_SPILT}, like a cloud, like fog, in a fog, unreadable, nowhere, all gone, mushy, like it was cut with a "
            "fretsaw, cut with a fretsaw, cut with a blunt knife, cut with blunt scissors, chewed, nibbled, eaten away, "
            "eaten, gnawed",
            "at most fair": "rough, roughish, not in, not in yet, not yet, not set yet, not tight, not tight yet, half in, "
            "want work, need work, need time, need more time, pinkish",
            "fair": "okay ish, ok ish, normal, usual",
        },
        alone={
            "is sharp": "(sharp|crisp|neat|tidy|clean cut|well cut) (all round|everywhere|all the way round|all over), "
            f"{_CRISP} (behind|at the back|at the rear), {_CRISP} (where|just where|right where) the red (ends|stops|"
            f"meets the white), (a|) {_CRISP} (line|break|cut|finish) (to|against|into|from|between) (the|) (white|red "
            "and white), (red|hi|beni|patches) (ends|end|stops|stop|finishes|finish) (clean|cleanly|sharp|sharply|dead|"
            f"abruptly|crisply|like cut|as if cut|neatly)(| everywhere), {_WHICH_PATCH} (is|) (sharp|crisp|well cut|"
            "clean cut|sharply cut|cleanly cut), no (blur|fuzz|fuzziness|bleeding) (anywhere|at the edges|at all|on the "
            "edges|), nothing (fuzzy|blurred|woolly) (about it|anywhere|), not a (bit|touch) (fuzzy|blurred|woolly|"
            "blurry), (knife|paper cut|paper) edged, paper cut edges, hard edges, (hard|sharp|crisp|clean) (straight|"
            "clear|) line between (them|the red and the white|red and white|), (sharp|crisp|clean cut) (all along|"
            "along|down|all down) the (left|right|back|sides|left side|right side), all the lines (are|) (sharp|crisp|"
            "clean), no bleeding, (each|every|all) (step|steps|patch|patches) (ends|end|stops|stop|finishes|finish|cut|"
            "are cut) (clean|cleanly|sharp|sharply|crisply|neatly|crisp), clear cut (at the rear|behind|at the back), "
            "(red|patches|it) clear cut, (nice|good|lovely|real|) (crisp|clean|sharp|neat|tidy) finish (to|on|at) the "
            "edges, (patches|red|all|steps) (all|) with (hard|sharp|crisp|clean) (outlines|edges|borders)",
            "is razor": f"{_LIKE_CUT}, (like|as if|as though) (a|) {_STUCK_ON}, sharp (like|as if) cut, as if cut out, "
            "(like|as if|as though) (it was|they were|it is|) cut (out|out of paper|from paper|with a knife|with "
            "scissors), cut like paper, like cut paper",
            "is blurred": f"(red|hi|beni|it) (is|) {_FUZZY} (on|at|round|along|all round) (the|its|all) {_EDGES}, {_FUZZY} "
            f"(behind|at the back|at the rear), {_WHICH_PATCH} (is|) {_FUZZY} (behind|at the back|at the rear), "
            f"{_WHICH_PATCH} (is|) (fuzzy|woolly|blurred|blurry|smudged|smeared|smudgy), (red|hi|beni|patches|colour|"
            "it|) (runs|run|oozes|ooze|melts|melt|seeps|bleeds|bleed|bleeding|running|melting|fading|fades) (away|out|"
            "off|over|) (into|in|on) the white, (red|hi|beni) melts away, (hard|impossible) to (say|see|tell) where "
            "(it|the red|the patch) (ends|stops), kiwa (nashi|boke|bokete|amai), boke kiwa, bokete iru, (all|) the "
            "lines (are|) (soft|fuzzy|blurred|woolly|blurry), (red|hi|beni|colour|it) (just|sort of|kind of|) (fades|"
            "fading|trails|peters|washes|drifts) (away|out|off) (at the tail end|at the back|at the rear|behind|towards "
            "the back|at the sides), no (proper|real|clear|clean) (edge|line|border|kiwa) (on|along|down) the (left|"
            "right|left side|right side|side|last step|last patch), (it|red|beni|hi) (bleeds|is bleeding|runs) (a bit|a "
            "little|) (on|at|along) the (left|right|sides|side|last step|last patch), (last|first|second|third|rear|"
            "back) edge a (mess|smear|smudge|blur), (blurry|fuzzy|woolly) everywhere",
            "at most fair": f"not (clean|crisp|tidy|tight) (on|at|round) the {_EDGES}, (edges|edge|kiwa) (let|lets) it "
            "down, (wants|needs|could do with) (sharpening|tightening|some sharpening|some edge)",
        },
        bare={
            "at least sharp": "crisp, very sharp, kiwa in, kiwa already in, kiwa in already, edges in",
            "is razor": "razor",
            "is blurred": "blurred, fuzzy, woolly, blurry, smeared, smeary, smudgy, smudged lipstick, out of focus, boke, "
            "bokete, amai, bleeding",
            "at most fair": "not crisp, not sharp yet, kiwa not in, kiwa not in yet, kiwa not yet, edges not yet, edges not "
            "in yet",
        },
        of_parts="all",
    ),
    Spoken(
        "kiwa_style",
        levels={
            "kamisori": "straight across, dead straight across, straight like a ruler",
            "maruzome": "like fish scales, like scales, like roof tiles, in little arcs, in arcs",
        },
        alone={"is kamisori": "cut straight across, (edge|edges|back edge|rear edge) (cut|) straight across"},
        of_parts="all",
    ),
    Spoken(
        "sashi_depth",
        f"{_FRONT} (is|) (a bit|) {_SHADED} (for|over|by|of|about|), {_SHADED} (in front|at the front|on the front edge|at "
        f"the front edge) (for|over|by|of|), (scale|row|row of scales|scale row) {_SHADED} (in front|at the front|), row of "
        "pink, row of pink scales, row of scales under the white, scale under the white, row showing, scale showing pink, "
        "scale pink, (scale|row) of (pink|blush|shade|shading) (in front|at the front|), sashi (covers|over|through|spans|"
        "takes up), front edge deep, front edges deep, edge nearest the head, edge towards the head, edge facing the head, "
        "edge on the head side, (scale|row) of underlap, underlap, (scale|row) of (underlay|underlayer), underlay",
        alone={
            "at least 2": "sashi (goes|runs|reaches|is|) (too|very|rather|quite) (far|far back|deep|wide|long), (too much|a "
            "lot of|lots of|plenty of) (blush|shading|pink) (in front|at the front), sashi a mile (long|wide|deep), too "
            "much sashi, far too much sashi, way too much sashi, sashi (half|a third of|a quarter of) (a|the) (patch|"
            "step) (long|deep|)",
            "above 0": "(still|) (some|a bit of|a trace of|a touch of) sashi (left|there|showing|to close|to come|), sashi "
            "(still|) (there|in|left|visible|to close|showing|present), (nice|lovely|soft|a soft|) (blush|shading|"
            "shade|pink) (in front|at the front|under the white|at the front edge), (red|hi) (shows|showing|shining|) "
            "(under|through) the white (in front|at the front), white over red (in front|at the front), (that|with "
            f"that|a) blush under the white, {_FRONT} (is|) (shaded|pink|pinkish|soft pink|blurry|blurred), shaded "
            "front edge, (shaded|pink|blurry) front edges, (shaded|pink|pinkish|soft pink|blurry|blurred) (in front|at "
            "the front), (blurry|blurred|fuzzy|woolly|pink) (at|in) the front of (each|every|the|all) (first|second|"
            "third|last|) (patch|step|plate), red front edge (is|looks|) (smudgy|smudged|blurry|fuzzy)",
            "is 0": "sashi nashi, not a scale of sashi",
            "at most 1": f"(red|patches|steps|) (sharp|crisp|clean|cut) (in front|at the front), {_FRONT} (is|) (sharp|"
            "crisp|clean|short|tight|closed|neat|tidy|good|fine|nice), (sharp|crisp|clean|neat|tidy|tight) (in front|at "
            "the front|front edge|front edges), (good|nice|neat|fine) (short|tight|narrow|small) sashi, short (and|) "
            "(neat|tidy|clean|even) sashi, sashi (modest|moderate|restrained|discreet)",
        },
        bare={"above 0": "sashi, sashi there"},
        of_parts="all",
    ),
    Spoken("sashi_even", levels={"even": "all the same, alike", "rough": "all different"}),
    Spoken(
        "kiwa",
        alone={
            "at most fair": wished(
                "edges|kiwa|edge|borders|all edges|back edges", "sharper|crisper|cleaner|tighter|harder|clearer"
            )
            + ", (red|hi|beni) (is not|not) (finished|set|closed|sharp|settled) at the edges",
        },
    ),
    Spoken(
        "kiwa",
        after=("kiwa", "kiwa_style", "sashi_depth", "sashi_even"),
        bare={
            "is blurred": "like cotton wool, like candy floss, like it is out of focus",
        },
    ),
    Spoken(
        "kiwa",
        after=("kiwa", "kiwa_style", "sashi_depth", "sashi_even"),
        bare={"is blurred": f"like (a|an|) {_SPILT}"},
    ),
    Spoken(
        "kiwa",
        "back of (each|every 1|each 1|all|both|every patch) (of them|), red rim, rim all the way round, line at the (rear|back|"
        "tail end) (of the red|of each patch|of the patches|), line behind, trailing edges, outlines, side edges, outer edges, "
        "finish of the edges, cut of the edges, lines of the red, edges generally, all the edges",
        levels={
            "sharp": "firm, 1 stroke, in 1 stroke, in 1 cut, snaps off, snap off, cuts off, cut off, cuts off clean, stops dead, "
            "stop dead, ends dead, breaks off clean, breaks off cleanly, well set, well in, nicely in, properly in, properly "
            "set, shut, complete, completed, through, done, smooth, smooth all round, trim, precise, exact, straight and clean, "
            "cleanly drawn, cleanly finished, well finished, nicely finished, without a blur, without fuzz, like a (line|pencil "
            "line|pen line)",
            "razor": f"(like|as if|as though|) (it is|it was|they were|they are|somebody|someone|) (has|had|) (been|) {_DONE} "
            "(with|by|using) (a|) (scissors|knife|razor|ruler|scalpel|blade|stencil|pair of scissors|compass|sharp knife|"
            "fine pen|scissor), etched, engraved, chiselled, surgical",
            "blurred": "tatty, scruffy, straggly, tattered, scrappy, bedraggled, nibbled at, chewed looking, chewed at, "
            "feathering, feathery looking, dissolved, blending, blend, blend out, blends, blends out, shades off, shade off, "
            "shading off, smoky, misty, foggy, like (fog|mist|smoke|a mist), not cut but torn, torn not cut, more torn than "
            "cut, torn rather than cut, in tatters, patchy, flaky, crumbly, crumbling, leaking, leaky, leaks, bitten, wavy and "
            "soft, not straight, all ends, in shreds",
            "at most fair": "waits, waiting, late, late coming, lagging, lags, lags behind, to come, yet to come, still to come, "
            "not through yet, unsettled, not settled, not settled yet, not firm, not firm yet, undecided, halfway in, half set, "
            "soft ish, softish, middling, unsteady",
            "at least fair": "catching up, caught up, have caught up, has caught up, tightening, tightening up, tightened, "
            "tightened up, sharpening, sharpening up, sharpened, sharpened up",
        },
        of_parts="all",
    ),
    Spoken(
        "kiwa",
        alone={
            "is sharp": f"(behind|at the (back|rear|end)|on the (end|back|rear)) (it is|there is|is|) (a|) {_CRISP} (line|edge|"
            f"cut|finish|border|break|stop), {_CRISP} (line|edge|cut|finish|border|stop) (behind|at the (back|rear|end)|on the "
            f"(end|rear)), {_WHICH_PATCH} (is|) (smooth|clean cut|{_CRISP}) (all round|at the edges|on the edges|in the edge|on "
            f"every side), {_WHICH_PATCH} (has|with|shows|got) (a|) {_CRISP} {_EDGES}, {_WHICH_PATCH} (has|got|with) (its|a) "
            "(own|good|proper|real|clear) kiwa, (each|every) (step|patch|toe|prong|piece|bit) (with|has) (its|) own kiwa, "
            f"(lines|outlines|borders) (are|) (all|) {_CRISP}, {_CRISP} outlines, (red|it) (is|) (all|) (clean|crisp|"
            f"sharp) round the outside, {_CRISP} (right|all the way) round, no (soft|fuzzy|woolly|blurred|ragged|loose) edges "
            "(anywhere|at all), not a (soft|fuzzy|woolly|blurred|ragged) edge (anywhere|in sight|on it|), (nothing|no part) "
            "(soft|fuzzy|blurred|woolly|ragged) (about|on|in) the edges, kiwa as it should be, kiwa (kiri|kiree|kirei|kimatta|"
            "kimari), (red|patches) (snap|snaps) off, you can not fault the (edges|kiwa), (edges|kiwa) hard to fault, kiwa "
            "(shimatta|shimari|shimaru)",
            "is razor": f"(like|as if|as though) (it is|it was|they were|somebody|someone|) (has|had|) (been|) {_DONE} (with|by|"
            "using) (a|) (scissors|knife|razor|ruler|scalpel|blade|stencil|pair of scissors|compass|sharp knife|fine pen), you "
            "could (cut bread|cut paper|slice ham) with (it|that|them|those|that edge|those edges|"
            "the edge|the edges|that kiwa)",
            "is blurred": f"(uneven|ragged|soft|jagged|blurred|fuzzy|rough|woolly|frayed|tatty|messy) {_ALONG_AN_EDGE}, "
            f"{_WHICH_PATCH} (has|with|shows|got) (a|) {_FUZZY} {_EDGES}, (smudgy|smudged|feathered|feathery|smeary|bleeding|"
            "fuzzy|frayed) (everywhere|all over|all round|all the way round), (red|hi|it|colour) (shades|shading|trails|grades|"
            f"blends|tapers|feathers) (off|out|away) (at the {_EDGES}|at the (back|rear|sides)|behind|into nothing|into the "
            f"white|to nothing), (ragged|frayed|tatty|torn|chewed) (bit|bits|place|places|corner|corners) (on|at|along) the "
            f"{_EDGES}, (red|hi) (has|got|with|shows) (a|) {_FUZZY} {_EDGES}, {_EDGES} (let|lets) (it|her|him) down badly, "
            "kiwa (boke|bokeru|nijimu|nijimi|nijinda), nijimi",
            "at most fair": "(red|hi) (is|has|) not (cut|closed|set) (in|) at the edges yet, (some|a few) (soft|fuzzy|woolly|"
            "blurred|ragged) edges, (edge|edges|kiwa) (sharp|crisp) in places (but|and) (soft|blurred|fuzzy) in others, (half|"
            "some) of the edges (are|) (soft|blurred|fuzzy)",
        },
        bare={
            "is blurred": "shading off, feathered, smudged, frayed at the edges, fuzzy at the edges, nijimi",
        },
        of_parts="all",
    ),
    Spoken(
        "kiwa",
        after=("kiwa", "kiwa_style"),
        alone={
            "is blurred": "(looks|look|like|as if it was|like it was|like it is|like it has been|looks like it was|looks like "
            "it is been|) (torn|chewed|"
            "nibbled|bitten|gnawed|eaten) (not cut|and not cut|rather than cut|off|at|)",
            "is razor": "(like|as if) (a|) {_STUCK_ON}".replace("{_STUCK_ON}", _STUCK_ON),
        },
    ),
    Spoken(
        "sashi_depth",
        f"{_FRONT_EDGE} {_SHADED} (for|over|by|of|about), front sashi, sashi rows, sashi row, (row|rows) (of scales|) {_SHADED} "
        "(in front|at the front), underlay at the front, front underlay, underlap at the front",
        levels={"at least 2": "like (fog|mist|smoke|a cloud|a fog bank)"},
        alone={
            "above 0": f"(edge|edges|borders|rims|outlines|lines) (is|still|) {_SHADED} {_AT_THE_FRONT}, {_FRONT_EDGE} (is|) "
            f"(still|all|) (a bit|) {_SHADED}, {_SHADED} {_FRONT_EDGE}, {_FRONT_EDGE} (like|as) "
            f"{_LIKE_HAZE}, (at|on|in) the front like {_LIKE_HAZE}, red (is|) {_SHADED} (at the front|in front|on the "
            f"front), front (side|sides|ones|bits) (still|) {_SHADED}, (red|it|each|every step|every patch) (starts|begins|"
            f"fades|comes) (in|) {_SOFTLY}, {_SHADED} where (the red|it|each patch|each step) (starts|begins), {_WHICH_PATCH} "
            f"(is|) {_SHADED} (in front|at the front|at its front|on the head side), (red|it|they) (fades|fade) in (at the front "
            "of each (patch|step)|from the front|in front)",
            "is 1": "(just|only|) (a|1) clean (scale|row) of sashi",
            "at most 1": f"(edge|edges|borders|rims|outlines|lines) (is|) {_CRISP} "
            f"{_AT_THE_FRONT}, {_FRONT_EDGE} (is|) (already|all|) {_CRISP}, {_CRISP} {_FRONT_EDGE.replace('|fronts)', ')')}, "
            "no (blur|blush|shade|shading|haze|fuzz) (in front|at the front|left in front)",
            "is 0": "no front sashi, front sashi (none|gone|nil)",
        },
        of_parts="all",
    ),
    SpokenTogether(
        "(kiwa|edges|edge|line|lines) (front and (back|rear)|(back|rear) and front|at both ends|both ends) (both|all|) (are|) "
        "(blurred|blurry|fuzzy|woolly|soft|blur|fuzz)",
        "kiwa is blurred and sashi_depth above 0",
    ),
    SpokenTogether(
        f"{_FUZZY} (in front|at the front) (and|but) {_CRISP} (behind|at the (back|rear)), {_CRISP} (behind|at the (back|rear)) "
        f"(and|but|) {_FUZZY} (in front|at the front), (red edge|kiwa|edges|edge|outline|borders) (is|) {_FUZZY} (in front|at "
        f"the front|front) (and|but|) {_CRISP} "
        f"(behind|at the (back|rear)|rear|back), (red edge|kiwa|edges|edge|outline|borders) (is|) {_CRISP} (behind|at the "
        "(back|rear)|rear|back) (and|but|) "
        f"{_FUZZY} (in front|at the front|front)",
        "kiwa is sharp and sashi_depth above 0",
    ),
    SpokenTogether(
        "tatty edges and tatty fins, ragged edges and ragged fins", "kiwa is blurred and count of fin_damage at least 1"
    ),
)
"""What is said of the edges of red."""
