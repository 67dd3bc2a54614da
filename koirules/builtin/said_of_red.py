"""How sorters speak of the colour of red (hi): its tone, strength, thickness and evenness.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, each_of
from koirules.vocabulary.praise import DISAPPOINTING, LACKING, NOT_BAD, short_of

_RED = "hi, red, beni, orange, colour, beni plate, hi plate, red plate, plate, hiban, red colour, hi colour, 緋, 緋盤"

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
"""What is said of the colour of red."""
