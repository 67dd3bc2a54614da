"""How sorters speak of the colour and the edges of red (hi), and of white (shiroji).

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, each_of

_RED = "hi, red, beni, orange, colour, beni plate, hi plate, red plate, plate, hiban, 緋, 緋盤"

SAID_OF_RED: tuple[Saying, ...] = (
    Spoken(
        "kiwa",
        "kiwa, edge, edges, all edges, edges all, edges everywhere, rear edge, rear edges, side edge, "
        "edge of the red, edges of the red, edge of "
        "the patch, edges of the patches, edge of the second patch, "
        "rear edge of the first patch, rear edge of the second patch, rear edge of the last patch, edge "
        "of the hi, border, outline of the red, borders, kiwa edge, キワ, 際",
        levels={
            "blurred": "blurred, soft, fuzzy, woolly, blurry, unclear, ragged, washed out, weak, poor, bad, not there, "
            "faded, dull, bleeding, smudged, indistinct, ぼけ, 甘い",
            "fair": "fair, average, middling, ok, okay, passable, ordinary, acceptable, decent, reasonable, so so, 普通",
            "sharp": "sharp, crisp, clean, clear, good, cut clean, tight, nice, neat, fine, well cut, well defined, "
            "defined, strong, 良い, シャープ",
            "razor": "like cut with a knife, as cut with a knife, razor, razor sharp, like a razor, "
            "cut with a knife, knife sharp, very sharp, perfect, "
            "excellent, superb, extremely sharp, outstanding, 抜群",
        },
        alone={
            "at most fair": "kiwa not there yet, "
            "kiwa not yet there, kiwa not ready, edges not there yet, kiwa still coming",
            "is razor": "razor cut, razor edge, razor edges, cut with a knife, cut as with a knife, sharp as a knife, "
            "like cut with scissors, like cut with a knife, as cut with a knife",
            "is sharp": "sharp edges all round, sharp edges everywhere, edges sharp all round, crisp all round, edges "
            "sharp everywhere",
            "is blurred": "red bleeding at the edges, red bleeds at the edges, edges bleeding, edges run, red runs "
            "into the white, red bleeds into the white, kiwa bokeh, no kiwa, kiwa none, without kiwa, kiwa missing, kiwa gone, "
            "no edges, キワぼけ",
        },
    ),
    Spoken(
        "kiwa_style",
        "kiwa style, kiwa, edge, edges, style of the edge",
        levels={
            "kamisori": "straight, kamisori, cut straight",
            "maruzome": "round, scalloped, maruzome, following the scales",
            "mixed": "mixed",
        },
        alone={"is kamisori": "kamisori, kamisori kiwa, straight cut kiwa", "is maruzome": "maruzome, maruzome kiwa"},
    ),
    Spoken(
        "sashi_depth",
        "sashi, scale, scale deep, scale of sashi, front edge, front edges, sashi depth, rows of sashi, "
        "sashi scale, row of scales, row, サシ, 差し",
        alone={
            "at least 2": "deep sashi, sashi deep, wide sashi, sashi wide, long sashi, sashi long, sashi too deep, too "
            "much sashi, sashi too wide, heavy sashi, broad sashi, sashi broad, "
            "big sashi, lots of sashi",
            "is 0.5": "half a scale, sashi half a scale, half scale sashi, half a scale of sashi, front edges half a "
            "scale, front edge half a scale, half a scale deep",
            "at most 1": "sashi nearly gone, sashi almost gone, hardly any sashi, sashi almost finished, short "
            "sashi, sashi short, narrow sashi, sashi narrow, little sashi, tight sashi, sashi tight, "
            "sashi good, good sashi, sashi fine, fine sashi, "
            "nice sashi, sharp sashi, sashi sharp, sashi small, small sashi, sashi neat",
            "is 0": "no sashi, sashi none, without sashi, sashi gone, sashi finished, サシなし",
        },
    ),
    Spoken(
        "sashi_even",
        "sashi, front edge, front edges, evenness of the sashi, サシ",
        levels={
            "rough": "rough, uneven, messy, ragged, irregular, untidy, jagged, unclean",
            "fair": "fair, average",
            "even": "even, regular, smooth, uniform",
        },
    ),
    Spoken(
        "hi_tone",
        f"{_RED}, tone, shade, hue, red tone, colour of the red, 緋の色",
        levels={
            "yellow": "yellow, yellowish",
            "orange": "orange, orangey, light orange, persimmon, 橙",
            "orange_red": "orange red, orangered, orange-red, orangy red, warm red, brownish red, yellow red",
            "red": "pure red, true red, blood red",
            "purple_red": "purple, purple red, purplish, dark red, violet, bluish, wine red, cold, crimson, 紫",
        },
        alone={
            "is orange": "orange rather than red, more orange than red, orange hi, orange red tone, persimmon, kaki, beni kaki, "
            "kaki beni, kaki hi, bright orange, clear orange, light orange, strong orange, nice orange, orange colour, 柿色",
            "is purple_red": "purple hi, purple based, murasaki hi",
        },
    ),
    Spoken(
        "hi_even",
        f"{_RED}, red tone, tone of the red, evenness, evenness of the red, hi tone, colour of the red",
        levels={
            "patchy": "patchy, uneven, blotchy, mottled, spotty, cloudy, irregular, varied, not even, mixed, not the "
            "same everywhere, ムラ",
            "fair": "fairly even",
            "even": "even, uniform, the same everywhere, same everywhere, even from head to tail, consistent, one "
            "tone, even all over, smooth, same all over, even throughout, "
            "the same from head to tail, 均一",
        },
        alone={
            "is even": "evenly coloured, one tone of red, one tone from head to tail, ムラなし",
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
                lighter="lighter|paler|darker|deeper|weaker|thinner",
                at="at|on|towards",
                place="tail|rear|head|shoulder|front|back|last patch|first patch",
            )
            + ", patchy, lighter on the head, lighter on the head than on the body, paler on the head, "
            "head paler than the body, head paler, darker on the head, "
            "red darker on the head, red lighter on the head, red paler on the head, red lighter at the "
            "rear, red paler at the rear, red lighter at the tail, red paler at the tail, "
            "head lighter than the body, head darker than the body, colour differs from patch to patch, red "
            "differs, different reds, different shades of red, "
            "two tones, two shades of red, ムラあり",
        },
    ),
    Spoken(
        "hi_thick",
        f"{_RED}, thickness, thickness of the red, red thickness, 緋の厚み",
        levels={
            "thin": "thin, weak, transparent, see through, shallow, watery, thin at the rear, thin at the tail, thin "
            "on the head, thin on the shoulder, thin at the edges, too thin, 薄い",
            "fair": "fair, average, medium, ok, ordinary",
            "thick": "thick, dense, solid, heavy, rich, strong thick, full, very thick, opaque, 厚い",
        },
        alone={
            "is thin": "kokesuki, kokesuke, koke suki, koke suke, scales show through, "
            "scales show through the red, you can see the scales, you can see "
            "the scales through it, scales visible, scales visible in the red, scales show in the red, "
            "scales can be seen, thin at the rear, "
            "can see the scales through the red, you can see the scales through the red, scales visible "
            "through the red, single scales show, scales shine through, thin in places, コケ透き",
            "is thick": "good thickness, good thickness of red, plenty of thickness, thick plate, no scales "
            "visible, no kokesuki, scales hidden",
        },
    ),
    Spoken(
        "hi_strength",
        f"{_RED}, strength of the red, strength, red colour",
        levels={
            "pale": "pale, faint, pink, pinkish, washed out, light, weak, faded, almost pink, bleached, very light, dull",
            "fair": "fair, average, medium, moderate",
            "strong": "strong, bright, good, vivid, nice, lively, brilliant, clear, lovely, intense, fine, beautiful, "
            "fiery, 鮮やか",
            "deep": "deep, very strong, very deep, dark and strong, very intense, 濃い",
        },
        alone={
            "is pale": "pale, almost pink, pink, pinkish, washed out, faded colour",
            "is deep": "lovely deep red, a deep red",
            "at least strong": "dark red, red dark, good red, nice red, lovely red, good colour, love the red, gorgeous "
            "colour, beautiful red, dark hi, colour good, rich red, rich colour, intense colour",
            "is strong": "strong colour, a strong red, bright red",
        },
    ),
    Spoken(
        "fading",
        "fading, fading red, fading of the red",
        levels={
            "none": "no, without",
            "slight": "slight, slightly, little, a little, some",
            "marked": "clear, clearly, marked, much",
            "strong": "strong, strongly, badly, heavy, severe",
        },
        alone={
            "at most slight": "red fading, the red is fading, fading, red is going, hi fading, red fades, red is breaking up, "
            "red breaking up, red going, that red is going, fades, red fades out, hi is breaking up, "
            "red is fading out, red fading at the edges",
            "is strong": "red nearly gone, red almost gone, hi nearly gone",
            "is none": "no fading, nothing fading, red holds, stable red",
        },
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
            "includes stem": "tail end pink, tail end is pink, last patch pink, last step pink, rear patch pink, "
            "pink at the tail end, pink at the tail, the red on the tail end is fading, "
            "red on the tail end fading, last patch fading, last patch is "
            "fading, the last step is fading, last step fading, rear patch fading, "
            "last patch going, red at the tail is fading, red at the tail end is fading, last step going, "
            "last patch fades, last step breaking up, last patch breaking up",
            "includes crown": "head patch fading, head patch is fading, the red on the head is fading, head red fading, red on "
            "the head fading, head hi fading",
            "includes shoulder": "the red on the shoulder is fading, shoulder patch fading, first patch fading, red on the "
            "shoulder fading",
        },
    ),
    Spoken("niban_hi", "niban hi, nibanhi, secondary red, late red, second red, secondary hi, thin second red, 二番緋"),
)
"""What is said of the colour and the edges of red."""

SAID_OF_WHITE: tuple[Saying, ...] = (
    Spoken(
        "shiroji",
        "shiroji, white, white ground, ground, white skin, skin, the white, whiteness, skin colour, 白地, 白質, 地肌",
        levels={
            "yellow": "yellow, very yellow, dirty yellow, yellowed, 黄色い",
            "cream": "cream, creamy, ivory, off white, slightly yellow, a bit yellow, a little yellow, yellowish, "
            "fair, average, milky, somewhat yellow, slight yellow, slightly creamy",
            "white": "white, good, clean, nice, clear, fine, bright, pure, 白い",
            "snow": "snow, snow white, snowy, like fresh snow, fresh snow, as snow, like milk, like paper, "
            "like chalk, perfect, excellent, superb, milk white, like snow, pure white, "
            "brilliant, dazzling, very white, porcelain, paper white, 雪白, 真っ白",
        },
        alone={
            "is snow": "snow white skin, white as snow, snow white, skin snow white",
            "at least white": "pure white skin, pure white, white pure, very white skin, lovely white, good white "
            "skin, good white, the rest white, rest white, body white, white body, rest of the body "
            "white, body is white",
            "at most cream": "yellow cast, yellow tinge, yellow tint, yellowish tint, yellowish cast, yellowish tinge, "
            "yellow tint all over, yellowish tint all over, yellowish all over, yellow all over, yellow skin, "
            "yellow in the white",
            "at most white": "white greyish, white grey, greyish white, grey white, white a bit grey, dull white, white dull",
        },
    ),
    Spoken(
        "white_head",
        "head white, white of the head, white on the head",
        levels={"yellow": "yellow", "cream": "cream, creamy, slightly yellow", "clear": "clear, white, clean"},
        alone={
            "at most cream": "yellow head, yellow on the head, head yellow, slight yellow on the head, head a bit yellow, "
            "yellow at the head, yellowish head, head yellowish, "
            "head slightly yellow, yellow nose, nose yellow, a bit of yellow on the head, a little yellow on "
            "the head, cream on the head, shiroji cream on the head, "
            "head still yellow, yellow face, face yellow, shiroji yellow on the head, white yellow on the head, head is yellow",
        },
    ),
)
"""What is said of white."""
