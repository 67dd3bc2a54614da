"""How sorters say how red (hi) lies: its thickness and its evenness, from front to rear.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether, each_of
from koirules.vocabulary.praise import LACKING, short_of, wished

RED = "hi, red, beni, colour, beni plate, hi plate, red plate, plate, hiban, red colour, hi colour, 緋, 緋盤"
_COLOUR = "(red|reds|hi|beni|colour|tone|shade|it|)"
WISHING = (
    "(i would (have|) (like|liked|love|loved|want|wanted|prefer|preferred)|would like|would love|could do with|could "
    "use|needs|wants|i want|"
    "i miss|missing|lacking|short of|could have)"
)
COLOUR_ITSELF = "(red|hi|beni|colour)"
OF_COLOUR = ("hi_tone", "hi_strength", "hi_thick", "hi_even", "hi_cover", "finish", "fading")
_LIKE_PAINT = "(thick paint|oil paint|gloss paint|paint|jam|gravy|treacle|icing|velvet|good coat|winter coat|wool coat)"
_LIKE_VEIL = (
    "(stocking|old stocking|net curtain|curtain|veil|tissue|tissue paper|tracing paper|thin soup|cheap paint|cheap paint job|"
    "gauze|muslin|film|coat of paint|single coat of paint|worn shirt|old shirt|old t shirt|onion skin|wet tissue|rice paper|"
    "cigarette paper)"
)
_WORN = (
    "((old|worn|threadbare|worn out|shabby) (carpet|rug|blanket|sofa|teddy|mat|doormat)|patchwork|patchwork quilt|moth "
    "eaten (jumper|coat|blanket|carpet|rug|sweater)|bad paint job|badly painted wall|camouflage|tie dye)"
)
_A_BIT = "(a bit|a touch|a little|a shade|much|slightly|somewhat|a lot|clearly|)"
_OTHER_SHADE = (
    "(lighter|darker|paler|weaker|stronger|deeper|redder|brighter|fainter|more orange|duller|more intense|less intense|less "
    "strong|less red|more faded)"
)
_SHADES = "(lighter|darker|paler|weaker|stronger|deeper|redder|brighter|fainter|light|dark|pale|orange|red)"
_AT = "(at|on|in|towards|behind|over|to|by|near|along|around)"
_PLACE = (
    "(the|) (front|back|rear|tail|tail end|head|shoulder|shoulders|last step|last patch|first step|first patch|second step|"
    "second patch|third step|middle|sides|side|belly|dorsal|stem|neck|nape|last one|first one|body|rear half|front half|"
    "saddle|head red|steps|rest|tail root|back end|left|right|left side|right side)"
)
_PATCH = (
    "(last step|last patch|rear patch|tail patch|second patch|second step|third step|third patch|head patch|first patch|"
    "first step|shoulder patch|head red|tail end|back patch|front patch|middle patch|middle step|saddle|last one|rear step|"
    "head)"
)
_ALL_THE_WAY = (
    "(all along|all through|right through|right along|throughout|everywhere|all over|all the way (along|through|back|"
    "down|to the (tail|end|back)|)|(from|) (nose|head|front|crown|top|start|one end|end) to (tail|peduncle|back|rear|stem|"
    "finish|the tail|the other|the end|end)|(in|on) (every|each) (step|patch|one|scale)|(in|on) all (the|) (steps|patches|"
    "3|2|of them)|the whole (length|way)|wherever you look)"
)
_IN_FRONT = (
    "(at the front|in front|up front|on the (head|front|first|shoulder|shoulders|first step|first patch)|(near|by|towards|round) "
    "the (head|front|shoulder|shoulders))"
)
_BEHIND = (
    "(behind|at the (back|rear|tail)|on the (rear|tail|last|back|body|last step|last patch|second|third|rest)|further back|"
    "(near|by|towards|round) the (tail|rear|back))"
)
_ENDS = "(ends|finishes|ends up|goes|turns|gets|fades to|is)"
_DEEPLY = (
    "(a|) (strong|good|deep|dark|red|cherry|intense|rich|proper red|cherry red|real red|more red|stronger|darker|deeper|"
    "bright)"
)
_WEAKLY = (
    "(a|) (weak|pale|poor|bad|light|orange|pink|pinkish|brick|brown|faint|faded|washed out|orangey|persimmon|brick red|"
    "more orange|weaker|paler|lighter|nothing much|watery|see through)"
)
_OF_SEVERAL = "(2|3|several|different|various|2 different|3 different|all sorts of|mixed)"
_PART = (
    "(front|back|rear|tail|tail end|shoulder|head|middle|rear half|front half|back half|last red|last 1|first 1|(first|second|"
    "third|last|rear|head|tail|shoulder|back|front|middle) (step|patch|bit|red)|saddle|left|right|left side|right side)"
)
FURTHER = (
    "(up front|up top|on top|underneath|further (back|along|down|up)|lower down|low down|behind|in front|down the (back|side|"
    "sides|flank|flanks)|(as|the further|the more) (you|it) (go|goes|get|gets) (further|) back|going back|by the (tail|head|"
    "shoulder|dorsal|end)|(at|on|in|towards|to|along|near|by|under|over|behind|after|past|beyond|before|around|below) (the|"
    "its|) (front|back|rear|tail|tail end|back end|rear end|head|crown|nape|neck|shoulder|shoulders|(last|first|second|third|"
    "rear|front|back) (step|patch|one|third|half|bit)|middle|centre|sides|side|flank|flanks|edges|edge|ends|belly|dorsal|"
    "dorsal fin|back fin|top fin|stem|saddle|left|right|left side|right side|lower edge|lateral line|spine|end|gills|gill|"
    "tail root)|both ends|either end)"
)

SAID_OF_LAYERS: tuple[Saying, ...] = (
    Spoken(
        "hi_even",
        f"{RED}, red tone, tone of the red, evenness, evenness of the red, hi tone, colour of the red, tone, shade",
        levels={
            "patchy": "patchy, uneven, blotchy, mottled, spotty, cloudy, irregular, varied, not even, mixed, not the same "
            "everywhere, streaky, streaked, smudgy, two tone, two toned, two tones, in two tones, different from patch "
            "to patch, different on every patch, different front and back, different front to back, different on the "
            "head, comes and goes, not uniform, not the same, not consistent, inconsistent, not matching, does not "
            "match, do not match, varies, vary, changes from patch to patch, marbled, moth eaten, flecked, speckled, "
            "all shades, tiger striped, in clouds, darker in places, lighter in places, paler in places, weaker in "
            "places, faded in places, stronger in places, deeper in places, rough, ムラ",
            "at most fair": short_of("even|uniform|consistent", "more even|evener|more uniform|smoother"),
            "fair": "fairly even, nearly even, almost even",
            "even": "even, uniform, the same everywhere, same everywhere, even from head to tail, consistent, one tone, "
            "even all over, smooth, same all over, even throughout, the same on every patch, the same on all patches, "
            "the same from head to tail, same from head to tail, same from front to back, same front to back, the same "
            "front to back, the same throughout, same throughout, all one tone, all one shade, all one colour, one "
            "shade, in one tone, all the same, the same shade throughout, the same tone throughout, one tone "
            "throughout, level, flat and even, homogeneous, matches, matching, matches from head to tail, same on every "
            "patch, even as paint, laid on evenly, evenly laid on, evenly spread, the same all over, 均一",
        },
        alone={
            "is even": "(red|hi|colour) the same (all the way through|all the way|throughout|all over|everywhere|front to "
            "back|from nose to tail|from head to tail|head to tail|on every patch), same (red|colour|shade) (from nose "
            "to tail|head to tail|nose to tail|all the way|all the way through|on every patch|on all patches), evenly "
            "coloured, one tone of red, one tone from head to tail, even red, same red everywhere, same red front to "
            "back, same red from head to tail, same red all over, same red throughout, same shade of red throughout, "
            "same shade front to back, same shade all over, same shade from head to tail, all patches the same red, "
            "patches all the same red, patches match, patches all match, one red throughout, no patchiness, nothing "
            "patchy, not patchy anywhere, all one red, ムラなし",
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
                lighter="lighter|paler|darker|deeper|weaker|thinner|strongest|weakest|palest|deepest|lightest|darkest|"
                "brightest",
                at="at|on|towards",
                place="tail|rear|head|shoulder|front|back|last patch|first patch|tail end|second patch|middle",
            )
            + ", "
            + each_of(
                "{part} {shade} {lighter}",
                part="last patch|rear patch|tail patch|second patch|head patch|first patch|shoulder patch|head red|tail "
                "end|head|head patch red|tail red|shoulder red|body red",
                shade="a shade|a touch|a bit|much|slightly|somewhat|a little|",
                lighter="a different red|a different colour|a different tone|another shade|another colour|lighter|paler|"
                "darker|weaker|deeper|lighter than the rest|paler than the rest|darker than the rest|weaker than the "
                "rest|a different red|a different shade|another red",
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
            + ", patchy, lighter on the head, lighter on the head than on the body, paler on the head, head paler than the "
            "body, head paler, darker on the head, red darker on the head, red lighter on the head, red paler on the "
            "head, red lighter at the rear, red paler at the rear, red lighter at the tail, red paler at the tail, head "
            "lighter than the body, head darker than the body, colour differs from patch to patch, red differs, "
            "different reds, different shades of red, red blotchy, blotchy, blotches in the red, two tones, two shades "
            "of red, two tone red, patchy red, patchy colour, ムラあり",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_thick",
        f"{RED}, thickness, thickness of the red, red thickness, depth of the red, depth of red, density, 緋の厚み",
        levels={
            "thin": "thin, transparent, see through, shallow, watery, thin at the rear, thin at the tail, thin on the head, "
            "thin on the shoulder, thin at the edges, too thin, thin as paper, paper thin, like tissue paper, like "
            "tissue, like a wash, like a wash of paint, like watercolour, like thin paint, like a cheap shirt, like a "
            "veil, like gauze, thin as tissue, kokesuki, kokesuke, koke suki, stretched, stretched thin, stretched out, "
            "translucent, half transparent, without depth, without body, no depth, no body, lacks depth, lack depth, "
            "lacks body, lack body, lacking depth, lacking body, no substance, no depth at all, thin all over, flimsy, "
            "only on the surface, on the surface, skin deep, like weak tea, see the scales through, 薄い",
            "fair": "reasonably thick, fairly thick, thick enough, of average thickness",
            "at most fair": short_of("thick|dense|solid", "thicker|denser|more solid")
            + ", not much depth, could do with more thickness, could do with more depth, could do with more body",
            "thick": "thick, dense, solid, heavy, rich, strong thick, full, very thick, opaque, like paint, like thick "
            "paint, thick as paint, laid on thick, painted on thick, like enamel, like velvet, velvety, like oil paint, "
            "with depth, with body, good and thick, thick as you like, thick as jam, like jam, good depth, has depth, "
            "poured on, like icing,  has body, has good depth, lots of depth, has substance, oily, oily depth, compact, "
            "concentrated, saturated, packed, tightly packed, closed, fat, meaty, built up, layered, in layers, several "
            "layers, 厚い",
        },
        alone={
            "is thin": "(red|hi|colour) (thins|thins out|thinning) (at|on|towards|behind|) (the|) (tail|tail end|dorsal|"
            "rear|back|shoulder|head|last patch|edges|), kokesuki, kokesuke, koke suki, koke suke, scales show through, "
            "scales show through the red, you can see the scales, you can see the scales through it, scales visible, "
            "scales visible in the red, scales show in the red, scales can be seen, thin at the rear, can see the "
            "scales through the red, you can see the scales through the red, scales visible through the red, single "
            "scales show, scales shine through, thin in places, "
            + each_of(
                "{little} {depth}",
                little="no|little|not much|hardly any|no real|no great|not enough|lacks|lacking|without|short of|short on",
                depth="thickness|depth to the red|depth in the red|thickness in the red|body to the red|depth of red|depth "
                "of colour|thickness to the red|thickness of red",
            )
            + ", no thickness, red lacks depth, red lacks body, red lacks thickness, kokesuki all over, koke visible, red "
            "without depth, thin red, コケ透き",
            "is thick": "good thickness, good thickness of red, plenty of thickness, thick plate, no scales visible, no "
            "kokesuki, scales hidden, "
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
        "scales, scale edges, every scale, each scale, single scales, each single scale, every single scale, individual "
        "scales, scale outlines, all the scales, koke",
        levels={
            "thin": each_of(
                "{show} {through}",
                show="show|show up|come|coming|shine|shining|visible|can be seen|peep|poke|grin|glint|shimmer|seen|see|count",
                through="through|through it|through the red|in the red|under the red|through the colour|through that red|"
                "through this red|in it",
            )
            + ", see, can see, you can see, i can see, can count, you can count, i can count, stand out, can be seen, can "
            "be counted, easy to see",
            "thick": "not see, can not see, you can not see, i can not see, no, do not show, not visible, can not be seen, "
            "do not show through, hidden, covered",
        },
        of_parts="all",
        apart=True,
    ),
    Spoken(
        "hi_thick",
        "thickness, depth of the red, depth of red, depth of colour, depth in the red, depth to the red, thickness of the "
        "red, body in the red, body to the red, density of the red",
        levels={
            "thick": "good, great, nice, lovely, excellent, superb, fantastic, amazing, wonderful, outstanding, plenty of, "
            "real, lots of, proper, very good, fine, impressive, brilliant",
            "fair": "fair, average, ok, okay, so so, reasonable, decent, not bad",
            "at most fair": LACKING,
            "thin": "poor, bad, no, little, hardly any, weak, missing, without, terrible, awful",
        },
        apart=True,
    ),
    Spoken(
        "hi_thick",
        "thickness, thickness of the red, red thickness, density, 緋の厚み",
        levels={"fair": "average, medium, ok, okay, ordinary, so so, middling, moderate", "thin": "weak, poor, bad"},
        apart=True,
    ),
    Spoken(
        "hi_even",
        levels={
            "patchy": f"like (a|an|) {_WORN}, mura, mura ari, flecky, blotched, in blotches, striped, in stripes, stripy, "
            "in patches, not level, all over the place, all over the place in tone, a patchwork, in two reds, varies "
            "from step to step, differs from step to step, varies step to step, not the same from step to step",
            "even": "like (it is|it was|) poured (on|), as if poured (on|), painted in 1 go, like (it is|it was|it had "
            "been|) painted (in 1 go|on|), evenly laid, evenly painted, mura nashi, without mura, alike, all alike, "
            "identical, all 1 piece, all 1 piece of colour, 1 piece of colour, of 1 piece, level all through, the same "
            "on all (2|3|4|of them), 1 even coat, in 1 coat",
            "at most fair": "could be more even, not (quite|entirely|perfectly|completely) even, nearly but not quite even",
        },
        alone={
            "is even": "no mura (anywhere|in the red|in the beni|at all|), mura nashi, without (any|) mura, not any mura, "
            "no unevenness, no blotches (in the red|anywhere|), no (weak|light|thin|pale|faint) (spots|spot|places|"
            "patches) (in the red|in the beni|in the colour|anywhere|at all|), (red|hi|beni|colour) (holds|keeps) its "
            "tone (from head to tail|all over|throughout|), evenly red, (all the|the|all|both|) (reds|patches|steps) "
            "(match|all match|are alike|all alike|the same (shade|tone|red|colour)|all the same (shade|tone|red|"
            "colour)), same (shade|tone|colour|red) (everywhere|front and back|all round|front to rear|on all of them|"
            "on all steps|on all three|on all 4), 1 (tone|colour|shade) (all over|throughout|all through|front to back|"
            "from head to tail|everywhere), even (all over|throughout|from head to tail), painted in 1 go, as if "
            "poured, like poured (paint|on), same (depth|strength|tone|shade|thickness) of (red|colour|beni) (on all "
            "(2|3|4|of them)|on all|everywhere|throughout|front and back|on every step), same red on (all|all 2|all 3|"
            "both|both steps|all steps), uniform from (head|nose|front) to (tail|peduncle|stem|back|rear)",
            "is patchy": f"{_COLOUR} (is|gets|goes|runs|) {_A_BIT} {_OTHER_SHADE} {_AT} {_PLACE} (than {_AT} {_PLACE}|than "
            f"(the rest|elsewhere|in front|behind|the others)|), {_SHADES} {_AT} {_PLACE} {_SHADES} {_AT} {_PLACE}, "
            "(good|deep|dark) (in front|at the front|on the head) (but|and|) (pale|light|poor) (behind|at the (back|"
            f"rear|tail)), {_PATCH} (is|looks|) {_A_BIT} {_OTHER_SHADE} (than (the rest|the others|the other|the first|"
            "the front|the last|the head)|), (colour|red|tone|shade) (changes|change|differs) (tone|shade|colour|) (on|"
            "from|between|in|towards|along|) (the|) (last step|last patch|back|shoulder|head|tail|steps|patches|gills|"
            "first step|one step to the next|middle|), (some|a bit of|a little|lots of|much|plenty of|) mura (in|on) "
            "the (red|beni|hi|back|shoulder|last step|last patch), (red|beni|hi|colour) (has|with|shows) (some|a bit "
            "of|a little|) mura, (some|a bit of|) mura (ari|there|showing), (clouds|stripes|streaks|shades|waves|"
            "blotches|flecks) in the (red|hi|beni|colour), two reds on one fish, two (kinds|sorts) of red, (red|colour) "
            f"like (a|an|) {_WORN}, {COLOUR_ITSELF} (is|) (stronger|weaker|darker|lighter|paler|deeper|thicker|"
            f"thinner) {_AT} {_PLACE} than (anywhere else|the rest of it|on the rest), (patchy|blotchy|uneven) (on top|"
            f"on the back|in places|behind|in front), mottled like a strawberry, {COLOUR_ITSELF} (comes|comes out|"
            f"turns|falls off|drops) {_A_BIT} {_OTHER_SHADE} {_AT} {_PLACE}, (darker|lighter|paler|stronger|weaker|"
            "deeper) on the (head|shoulder|shoulders|back|body|first step|first patch|last step|last patch) than the "
            "(head|shoulder|shoulders|back|body|first step|first patch|last step|last patch|rest), (head|shoulder|last|"
            f"first|second|rear) (patch|step) {_A_BIT} {_OTHER_SHADE} than the (back|body|head|shoulder|tail|last|"
            "first|next|others)",
            "at most fair": "(light|pale|weak|faded|washed out|pink|faint|paler|lighter|weaker) (spot|patch|place|bit|area|"
            "zone|cloud|scale) (in|on|within) (the|) (red|beni|hi|colour|plate|last step|last patch|second step|second "
            "patch|first step|first patch|shoulder patch|head patch|saddle), not (quite|perfectly) even in (tone|"
            "colour), (some|a few|odd|a couple of|several|) (light|pale|lighter|paler|weak|faded) scales in the (red|"
            "beni|hi|last step|last patch|second step|first step|saddle|middle)",
        },
        bare={
            "is patchy": "mottled, streaky, two tone, two toned, mura, some mura",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_thick",
        levels={
            "thin": "usui, threadbare, worn, worn thin, sheer, washed thin, thinnish, diluted, watered down, like (a|an|"
            f"one|) {_LIKE_VEIL}, with the white showing through, only skin deep, lacks substance, lacking substance, "
            "without substance, short on substance",
            "thick": f"atsui, laid on with a trowel, fat, like (a|an|) {_LIKE_PAINT}, plastered on",
            "at most fair": short_of("opaque|full", "more opaque|fuller"),
        },
        alone={
            "is thick": "(thick with it|so thick|thick enough|) (you|i|) (can not|could not) (see|find|make out) (a|the|"
            "any|1|a single|1 single|single) scale (through|under|in|beneath|) (it|that|the red|the beni|the colour|), "
            "not a (single|) scale (shows|showing|visible|to be seen) (through|through it|in the red|), no scale "
            "(shows|showing) (through|through it|), atsui (beni|hi|red), atsuhi, (red|beni|hi|) (laid|put|painted) on "
            "(thick|with a trowel), layers of red, thick like (a|) "
            + _LIKE_PAINT
            + f", thick as (a|) {_LIKE_PAINT}, (red|hi|beni) (with|has) (a lot of|good|real|) (meat|flesh|weight) (in it|to "
            "it|), (laid|put|spread) on like (butter|jam|plaster|cement|icing), (red|beni|hi|) spread on thick"
            + ", (beni|red|hi|colour) (sits|lies|is) thick, (really|well|properly|tightly) packed (red|beni), (depth|"
            "thickness) is there, no koke (showing|visible|anywhere|at all|), koke hidden",
            "is thin": "usui (beni|hi|red), usubeni, usu beni, usu hi, (only|just|like|needs|wants|could do with|missing|) "
            "(1|a second|another|a third) coat (of paint|of red|of colour|), (white|skin|ground) (shows|showing|coming|"
            "comes|shining|shines|shimmers|grins|peeps) through (the red|the beni|the hi|it|there|), thin (as|like) (a|"
            f") {_LIKE_VEIL}, (each|every|each single|every single) scale (visible|showing|shows|stands out|to be "
            "seen), (you|i|) (can|could) (see|count|make out) (all the|every|each|every single|the single|single|the) "
            "scale (through|in) (it|the red|that red|), (red|hi|beni) (gets|gone|going|goes) thin (behind|in front|on "
            "top|at the tail|towards the tail|at the back|on the back|), (red|hi|beni) thin (behind|in front|on top), "
            "scales showing (in|under) the (red|beni|hi), (you|i|) (can|could) (count|see|make out) (the|all the|every|"
            "each|single) scales (through|in|on) the (shoulder|last|second|first|third|head|red|saddle|rear) (patch|"
            "step|plate|red|), thin on the (last|first|second|third) (step|patch), (last|first|second|third|rear) "
            "(step|patch) (is|) (a bit|rather|very|too|) thin in (the red|colour|the beni), poor depth of (red|colour|"
            "beni), (red|beni) (a bit|rather|) see through, (skinny|stretched|flimsy|mean|thin) (red|beni|hi), (scales|"
            "scale edges|koke) (peep|peeps|show|shows|grin|come) through (on|in|along) the (edges|sides|edge|last step|"
            "last patch|back|shoulder|tail) (of each step|of each patch|), (you|i|) (can|could) see every scale edge, "
            "every scale edge (shows|showing|visible), scales (showing|coming|visible) through (on|in) the (last|first|"
            "second|third|rear|shoulder) (step|patch)",
            "at most fair": "(thin|bare|worn) (spot|place|patch|bit|area) (in|on) the (red|beni|hi|plate|saddle|last step|"
            "last patch), " + short_of("thick|dense", "thicker|denser"),
        },
        bare={
            "is thin": "usui, usu, see through, transparent, translucent, threadbare, scales showing, scales show, scales "
            "showing through, scales show through",
            "is thick": "atsui, opaque, velvety, thick as paint, thick like paint",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_thick",
        after=("hi_tone", "hi_strength", "hi_thick", "hi_even"),
        alone={"is thick": "like (thick|oil|) paint, like (jam|gravy|treacle|icing)"},
    ),
    Spoken("hi_thick", alone={"at most fair": wished("red|hi|beni|colour|plate", "thicker|denser")}),
    Spoken(
        "hi_even", alone={"at most fair": wished("red|hi|beni|colour|tone", "more even|evener|more uniform|smoother")}
    ),
    Spoken(
        "hi_even",
        after=OF_COLOUR,
        bare={
            "is patchy": f"like (a|an|) {_WORN}, like a patchwork",
        },
    ),
    Spoken(
        "hi_thick",
        after=OF_COLOUR,
        bare={
            "is thin": "like a (stocking|net curtain|veil), like tissue paper",
            "is thick": "like velvet",
        },
    ),
    Spoken(
        "hi_even",
        levels={
            "patchy": f"{_OF_SEVERAL} (colours|tones|shades|reds), in {_OF_SEVERAL} (colours|tones|shades), mixed in tone, "
            "changeable, anything but even, not one colour, dappled, in dapples, patched, "
            "spotted light and dark, light and dark",
            "even": f"(even|level|uniform|consistent|steady|the same|same) {_ALL_THE_WAY}, unbroken in tone, of one shade, "
            "solid in tone, even in (tone|colour|depth|strength), consistent in (tone|colour|depth|strength)",
        },
        alone={
            "is patchy": f"(({COLOUR_ITSELF}|) {_A_BIT} "
            f"{_OTHER_SHADE}|mura|cherry|brick|crimson|scarlet|tomato|brown|{COLOUR_ITSELF} (goes (pink|orange)|turns "
            "(pink|orange)|gets "
            f"{_OTHER_SHADE})|({COLOUR_ITSELF}|it) (fades (away|) to (nothing|almost nothing)|runs out|peters "
            "out|dwindles|gives out|"
            "wears out|dies away|goes|tails away|gives up) (away|to nothing|to almost nothing|)) "
            f"{FURTHER} (than (anywhere else|everywhere else|elsewhere|the rest|the rest of it|the others)|), "
            "(pale|faded|washed out|pink|pinkish|orange) (to|towards) the (tail|tail end|rear|back|end|back end), "
            f"({COLOUR_ITSELF}|tone|it) (starts|begins|sets out|comes in) ({_DEEPLY} (at the front|on the head|in "
            "front|) (and|"
            f"then|but|) {_ENDS} {_WEAKLY}|{_WEAKLY} (at the front|on the head|in front|) (and|then|but|) {_ENDS} {_DEEPLY}), "
            f"{COLOUR_ITSELF} (weakens|lightens|darkens), (washed "
            "out|weak|weaker|pale|paler|faded|pink|orange) by the "
            "(back|rear|tail|end|time (you|it|we) (gets|get|reach|reaches|come|comes) (to|) the (back|rear|tail|end)), "
            f"{COLOUR_ITSELF} (has|got|has got|with|shows|comes in|is in|is of|) {_OF_SEVERAL} "
            "(colours|tones|shades|sorts|kinds) (in it|), "
            f"red {_AT} {_PLACE} {_A_BIT} {_OTHER_SHADE} than (the red|that|the one|) {_AT} {_PLACE}, {_PART} {_A_BIT} "
            "(paler|redder|fainter|"
            "more orange|oranger|more faded|pinker|browner|more pink|more brown|less red) (than the rest|than in front|than "
            "the front|), "
            f"{COLOUR_ITSELF} ({_DEEPLY} {_IN_FRONT} (and|but|then|) {_WEAKLY} {_BEHIND}|{_WEAKLY} {_IN_FRONT} "
            f"(and|but|then|) {_DEEPLY} "
            f"{_BEHIND}), all over "
            "dapple, dappled all over, mura (from|) (front to back|head to tail)",
            "at most fair": "(like|as if|as though|looks like) (it|) (was|is|has been|had been|) (put|painted|brushed|"
            "dabbed|slapped|sprayed|rolled|daubed|laid) on (with a (dry brush|sponge|rag|rough brush|broom|worn brush|bad "
            "brush)|in a hurry|by a child|by kids|in 2 goes|twice)",
            "is even": f"(same|1) (red|orange|colour|tone|shade|depth|strength|thickness|beni) {_ALL_THE_WAY}, "
            f"{COLOUR_ITSELF} (does not|never|not) (change|vary|drop off|weaken|fall off|alter|lighten|pale|drop) (at all|"
            f"anywhere|{_ALL_THE_WAY}|), {COLOUR_ITSELF} (holds|keeps|carries) (its|the|same|the same|that|) (tone|depth|"
            f"strength|colour|shade|) {_ALL_THE_WAY}, no (weak|pale|thin|light|faded|dull|bad|lighter|paler) (spots|places|"
            "patches|bits|areas|scales|parts|ends|end) (anywhere|at all|in it|in the red|to be seen|), "
            "(1|same) colour front and rear, (not|never) a (weak|pale|light|faded) (spot|place|patch|bit|area|scale|end) "
            "(anywhere|in it|in the red|to be seen|)",
        },
        of_parts="all",
    ),
    SpokenTogether(
        "(evenly|uniformly) (weak|pale|washed out|faded|light|pink)", "hi_even is even and hi_strength is pale"
    ),
    Spoken("hi_thick", after=OF_COLOUR, bare={"is thin": "thin stuff, thin stuff though", "is thick": "thick stuff"}),
    Spoken("hi_even", after=OF_COLOUR, bare={"at most fair": "uneven, bit uneven, a bit uneven, slightly uneven"}),
    Spoken(
        "hi_thick",
        alone={
            "at most fair": f"{WISHING} (a bit|a little|a touch|some|a lot|) more (depth|body|thickness|substance) (in|to|of) "
            "(the|that|her|"
            "his|this|) (red|colour|hi)",
        },
    ),
    SpokenTogether("(evenly|uniformly) thin", "hi_even is even and hi_thick is thin"),
    SpokenTogether("(evenly|uniformly) (thick|dense)", "hi_even is even and hi_thick is thick"),
    SpokenTogether(
        "(evenly|uniformly) (strong|deep|intense|rich|bright)", "hi_even is even and hi_strength at least strong"
    ),
    *(
        SpokenTogether(f"(same|1) {words} {_ALL_THE_WAY}", f"hi_even is even and hi_tone is {tone}")
        for tone, words in (
            ("orange", "(orange|persimmon|kaki|tangerine|carrot colour)"),
            ("orange_red", "(brick|brick red|tomato|tomato red|scarlet|orange red|brown)"),
            ("purple_red", "(cherry|cherry red|crimson|wine red|purple|plum|dark cherry)"),
        )
    ),
    Spoken(
        "hi_even",
        after=OF_COLOUR,
        alone={
            "is patchy": f"((change|changeover|break|join|switch) (is|comes|right|just|exactly|)|changes) {FURTHER}",
        },
    ),
    Spoken(
        "hi_thick",
        levels={
            "thin": "skimpy, meagre, mean, gauzy, filmy, thinly laid, thinly spread, spread thin, spread too thin, barely "
            "there, only a (film|skin|wash|glaze|coat|layer), like a (film|glaze|tint|dye|stain), all surface, on top only, "
            "no base to it, without base, without foundation, (like|as) (chicken wire|a fishnet|netting|mesh|lace)",
            "thick": "(lovely|nice|good|beautifully|wonderfully|really) and (thick|dense|solid|heavy), like (a|) "
            "(lacquer|enamel|nail varnish|wax|candle wax|sealing wax|varnish|clotted cream|toffee), "
            "well covered, covering well, covers well, good and solid, substantial, with substance, stands proud, deep "
            "laid, (several|many|2|3|4|5|double|10) coats (thick|deep|of paint|), well laid, heavily laid, thickly laid",
        },
        alone={
            "is thin": "(you|i|1) (can|could) (almost|nearly|) (see|make out) the (white|skin|flesh|body|ground|scales|"
            "shape of the scales|outline of the scales|pattern of the scales|shape of each scale|scale edges|edges of the "
            "scales) (through|under|underneath|below|behind) (it|the red|that|there|), see (the|her|his|) (skin|white|"
            "ground) through (it|the red|), see the (white|skin|ground|flesh|scales|scale edges|shapes of the scales) "
            "(grinning|showing|peeping|coming|shining|winking|glinting|gleaming|) (through|underneath) (it|there|the red|), "
            "(white|skin) (visible|seen|glinting|winking|peeping) (through|under|underneath) (it|the red|), scales (look|) "
            "(like|as if|as though) (somebody|someone) (has|had|) (drawn|inked|traced|pencilled|gone) round (each|each 1|"
            "them|every 1|every single 1), (each|every) scale (is|) (outlined|rimmed|drawn|ringed|edged|picked out), scale "
            "(outlines|edges|rims) (all|) (show|showing|visible|clear|plain), (red|hi) (shows|with|has) (the|all the|) "
            "scale (outlines|edges|rims), (net|mesh|netting|fishnet) (pattern|look|effect) in the red, (red|hi) (is|) "
            "(spread|stretched|laid) (too|) thin, (red|hi) (is|sits|) (all|just|only) on the surface, (not|no) much (to|in|"
            "behind|under) the red, (no|without|lacks) (base|foundation|undercoat|backing) (to|in|under|behind|below) the "
            f"(red|hi|colour), red has no (base|foundation|undercoat|backing|substance), (threadbare|see through|usui) {FURTHER}",
            "is thick": "no scale (holes|outlines|edges|rims) (showing|visible|to be seen|in the red|), no sign of (koke|"
            "scales|scale holes|kokesuki|scale edges|single scales) (in it|in the red|), kokesuki (none|nashi|nil), (can "
            "not|could not) (see|make out) (the|any) (white|skin|scales|scale edges|ground) (through|under|underneath) (it|"
            "the red|), (nothing|no white|no skin) (shows|showing|shining|grinning|peeping|comes|coming|visible) through "
            "(it|the red|anywhere|), (red|hi) (with|has) (body|substance|backbone|base|a base) (to it|in it|), (good|great|"
            "excellent|full|solid) (cover|coverage|covering power) (of red|), (red|hi) (covers|hides) (the scales|"
            "everything|all the scales|every scale), (red|hi) (thick|dense|solid) (right|all the way|even|) (to|up to|out to) "
            "the "
            "(edge|edges)",
        },
        of_parts="all",
    ),
    SpokenTogether("(red|hi|beni) (like|as) (a|) (lacquer|varnish)", "hi_thick is thick"),
)
"""What is said of how red lies."""
