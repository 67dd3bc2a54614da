"""How sorters speak of the colour of red (hi): its tone, strength, thickness and evenness.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether, each_of
from koirules.vocabulary.praise import DISAPPOINTING, LACKING, NOT_BAD, short_of, wished

_RED = "hi, red, beni, orange, colour, beni plate, hi plate, red plate, plate, hiban, red colour, hi colour, 緋, 緋盤"

_LOSING = (
    "(red|hi|beni|colour|patch|it) (going|fading|breaking up|on its way out|on the way out|leaving|disappearing|letting go|"
    "coming apart|washing out|thinning out|dissolving|dropping|dropping off|falling apart|retreating|starting to go|drops "
    "off|falling off|falls off|tails off|tailing off|starting to fade|starting to break up|vanishing|melting away|giving "
    "up|wearing off|wearing thin)|losing (its|the|her|his|) (red|hi|colour|beni)"
)
"""Red that goes."""

_ORANGE = "(orange|orangey|orangy|persimmon|kaki|tangerine|apricot|pumpkin)"
_LIKE_ORANGE = (
    "(orange|orange peel|carrot|goldfish|marmalade|apricot jam|apricot|peach|salmon|smoked salmon|prawn|boiled prawn|cooked "
    "prawn|shrimp|pumpkin|persimmon|tangerine|mandarin|satsuma|orange squash|egg yolk|yolk|curry|saffron|sunset|mango|rust)"
)
_LIKE_BRIGHT_RED = (
    "(tomato soup|tomato ketchup|ketchup|tomato sauce|tomato paste|chilli|chilli powder|red pepper|pepper|paprika|poppy|"
    "strawberry|post box|phone box|red lacquer|lacquer box|sealing wax|cherry tomato|brick dust|geranium|ladybird)"
)
_LIKE_PURPLE = (
    "(wine|red wine|plum|damson|beetroot|liver|raw liver|blackcurrant|bruise|aubergine|old wine|port|port wine|black "
    "cherry|claret|burgundy)"
)
_LIKE_FIRE = (
    "(fire|flame|traffic light|stop light|brake light|neon|neon sign|lamp|lantern|burning coal|hot coal|bonfire|torch|"
    "beacon)"
)
_LIKE_WEAK = (
    "(weak soup|thin soup|pink lemonade|lemonade|rose wine|raspberry milk|strawberry milk|strawberry yoghurt|diluted juice|"
    "weak juice|squash|faded (shirt|jeans|curtain|jumper|brick|photo|photograph)|old (curtain|shirt|photograph|photo|"
    "jumper)|washed out (shirt|jumper))"
)
_LIKE_PAINT = "(thick paint|oil paint|gloss paint|paint|jam|gravy|treacle|icing|velvet|good coat|winter coat|wool coat)"
_LIKE_VEIL = (
    "(stocking|old stocking|net curtain|curtain|veil|tissue|tissue paper|tracing paper|thin soup|cheap paint|cheap paint "
    "job|coat of paint|single coat of paint|worn shirt|old shirt|old t shirt|onion skin|wet tissue|rice paper|cigarette "
    "paper)"
)
_WORN = (
    "((old|worn|threadbare|worn out|shabby) (carpet|rug|blanket|sofa|teddy|mat|doormat)|patchwork|patchwork quilt|moth "
    "eaten (jumper|coat|blanket|carpet|rug|sweater)|bad paint job|badly painted wall|camouflage|tie dye)"
)
_COLOUR = "(red|reds|hi|beni|colour|tone|shade|it|)"
_COLOUR_ITSELF = "(red|hi|beni|colour)"
_MIDDLING = (
    "(fair|average|ok|okay|medium|so so|passable|reasonable|nothing special|normal|ordinary|acceptable|middling|alright|all "
    "right|mediocre|unremarkable|moderate)"
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

SAID_OF_RED: tuple[Saying, ...] = (
    Spoken(
        "hi_tone",
        f"{_RED.replace(' plate, hiban', ' hiban')}, tone, shade, hue, red tone, colour of the red, colour tone, shade of "
        "red, tone of red, 緋の色",
        levels={
            "yellow": "yellow, yellowish",
            "orange": "orange, orangey, light orange, persimmon, orangy, orange based, on the orange side, carrot, carroty, "
            "like a carrot, like carrot, like orange juice, like an orange, tangerine, amber, apricot, pumpkin, like "
            "persimmon, soft like persimmon, like a persimmon, persimmon colour, more orange than red, orange rather "
            "than red, orange not red, salmon orange, marmalade, like marmalade, goldfish orange, goldfish colour, like "
            "a goldfish, leaning to orange, towards orange, all orange, kaki, 橙",
            "orange_red": "orange red, orangered, orange-red, orangy red, warm red, brownish red, yellow red, soft orange "
            "red, orangey red, reddish orange, red orange, tomato, tomato red, like a tomato, vermilion, scarlet, warm, "
            "warm tone, warm in tone, between orange and red, brownish, rusty, rust, rust red, rust coloured, brown",
            "red": "pure red, true red, blood red, proper red, real red, like blood, red as blood, fire engine red, pure, "
            "true",
            "purple_red": "purple, purple red, purplish, dark red, violet, bluish, wine red, cold, crimson, claret, "
            "burgundy, maroon, cold red, blue red, bluish red, cherry, cherry red, magenta, like wine, beetroot, like "
            "beetroot, deep wine red, on the purple side, purple based, cold in tone, cool, leaning to purple, 紫",
        },
        alone={
            "is orange": "orange rather than red, more orange than red, orange hi, orange red tone, persimmon, kaki, beni "
            "kaki, kaki beni, kaki hi, bright orange, clear orange, light orange, strong orange, nice orange, orange "
            "colour, persimmon red, soft orange, (too|very|a bit too|rather too) orange, more of an orange than a red, "
            "orange patches, orangey, carroty, kaki type, 柿色",
            "is purple_red": "(too|very|a bit too) purple, purple hi, purple based, murasaki hi, purple type, purplish, "
            "wine red, crimson",
            "is orange_red": "brownish, rusty, (warm|soft|lovely|nice) (orange red|orangey red|reddish orange), warm red, "
            "tomato red, scarlet, vermilion, brick orange",
            "is red": "(proper|real|lovely|good|true|) (blood red|fire engine red)",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_even",
        f"{_RED}, red tone, tone of the red, evenness, evenness of the red, hi tone, colour of the red, tone, shade",
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
        f"{_RED}, thickness, thickness of the red, red thickness, depth of the red, depth of red, density, 緋の厚み",
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
        "hi_strength",
        f"{_RED}, strength of the red, strength, red colour, red quality, hi quality, beni quality, colour quality, quality "
        "of the red, quality of the hi, quality of the beni, quality of the colour, red itself, beni itself, colour "
        "strength, depth of colour, intensity, saturation",
        levels={
            "pale": "pale, faint, pink, pinkish, washed out, light, weak, faded, almost pink, bleached, very light, dull, "
            "all washed out, anaemic, insipid, lifeless, without life, no life, pastel, salmon, salmon pink, rose, "
            "milky, on the pale side, pale as anything, too pale, very pale, too light, on the light side, gone pale, "
            "chalky, flat, dead, tired, sickly, like a faded shirt, like old jeans, like weak tea, like pink lemonade, "
            "feeble, no colour, without colour, lacks colour, lacks life, lacks punch, no punch, without punch, poor, "
            "bad, weak",
            "fair": "fair, average, moderate, medium, so so, ordinary, okay, ok, middling, run of the mill, nothing "
            "special, acceptable, passable, reasonable, unremarkable, you could find on a thousand",
            "is fair or strong": NOT_BAD,
            "at most fair": f"{DISAPPOINTING}, "
            + short_of(
                "strong|deep|bright|red|vivid|intense|dark",
                "stronger|deeper|brighter|redder|more intense|darker|livelier|more vivid",
            ),
            "at least strong": "superb, lovely stuff, good stuff, quality stuff, the real thing, the real deal, quality, "
            "high quality, good quality, great quality, very good quality, top quality stuff, luscious, glorious, "
            "delicious, rich and even, dark, very dark, too dark, nearly too dark, almost too dark",
            "strong": "strong, bright, vivid, lively, brilliant, clear, intense, fiery, glowing, glow, on fire, like fire, "
            "like flames, luminous, fluorescent, bright as a postbox, as bright as a postbox, like a postbox, like a "
            "pillar box, bright as anything, very bright, hot, radiant, punchy, full of life, alive, fresh, shining, "
            "burning, strong and clear, loud, sparkling, jumps out, jumps at you, pops, hits you, saturated, powerful, "
            "good, great, 鮮やか",
            "deep": "deep, very strong, very deep, dark and strong, very intense, deep and rich, deep and strong, deep as "
            "wine, dark and deep, deep as blood, ever so deep, deep as anything, really deep, deep and dark, as deep as "
            "it gets, 濃い",
        },
        alone={
            "is pale": "pale, almost pink, washed out, faded colour, washed out colour, washed out red, pale red, pink red, "
            "more pink than red, pink rather than red, pink not red, no colour to speak, no strength in the red, no "
            "strength in the colour, no life in the red, no life in the colour, all washed out, on the pale side",
            "is deep": "lovely deep red, a deep red, deep colour, deep red, (red|beni|hi|) deep (not|but not|without being) "
            "dark",
            "at least strong": "dark red, red dark, good red, nice red, lovely red, good colour, love the red, gorgeous "
            "colour, beautiful red, dark hi, colour good, rich red, rich colour, intense colour, great red, great "
            "colour, what a red, what a colour, superb red, superb colour, red to die for, some red on it, proper red, "
            "good strong red, high colour, lovely colour, beautiful colour, i love that red, love that (red|colour|"
            "beni), what lovely (red|colour), i like the red, i like that red, i like the colour, gorgeous red, "
            "wonderful red, fantastic red, fantastic colour, wonderful colour, amazing red, amazing colour, excellent "
            "red, excellent colour, first class red, first class colour, quality red, top red, stunning red, stunning "
            "colour, good hi, good beni, super red, super colour",
            "is strong": "strong colour, a strong red, bright red, bright colour, vivid red, vivid colour, lively red, fire "
            "red, fiery red, pillar box red, postbox red, glowing red, red glows, colour glows, red is on fire, plenty "
            "of colour, plenty of strength in the red, (strong|good|rich|deep) in (the|) (colour|red|beni)",
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
            "at most slight": "red fading, the red is fading, red is going, hi fading, red fades, red is breaking up, red "
            "breaking up, red going, that red is going, red fades out, hi is breaking up, red is fading out, red fading "
            f"at the edges, ({_LOSING}) (in places|already|a bit|slowly|everywhere|all over|), (last step|last patch|"
            "rear patch|tail patch|second step|first step|head patch) (starting to (break up|go|fade|thin)|thinning and "
            "going), (red|hi|beni) (thinning|thin) and (on its way out|going|fading), (red|hi|beni|colour) (is|) "
            "slipping",
            "is strong": "red nearly gone, red almost gone, hi nearly gone, (red|colour) (nearly|almost|as good as|"
            "practically) gone",
            "is none": "no fading, nothing fading, red holds, stable red, (red|hi|colour|it) (holds|holding|stable|is "
            "stable|holding on|holding well|holds well|holding up|not fading|not going anywhere|staying put|holds its "
            "own), holds its (red|colour)",
        },
        bare={"at most slight": "fading, fades, fading a bit, fading already"},
    ),
    Spoken(
        "fading_places",
        "fading, red fading, fading red, the red is fading, red fades, red is going, hi fading, hi breaking, red breaking, "
        "hi breaking up, red gone pale, red going pale, red turned pink, red thinning, red breaking up, thinning red",
        levels={
            "stem": "at the last patch, last patch, on the last patch, on the last step, at the last step, tail end, at the "
            "tail end, towards the tail, at the tail, last step, in the last patch, rear patch",
            "shoulder": "first patch, shoulder patch, on the first patch",
            "crown": "head patch, on the head patch",
        },
        alone={
            "includes stem": f"({_LOSING}) (at|on|towards|near) the (tail|tail end|back end|last patch|last step|rear "
            "patch|stem|end), (last patch|rear patch|tail patch|last step|tail end) (fading|going|breaking up|on its "
            "way out|thinning|thinning out|disappearing|dissolving|washing out), red (on|at) the (last patch|tail end|"
            "tail|last step|rear patch|back end) (going|fading|breaking up|thinning out|on its way out|disappearing), "
            "tail end pink, tail end is pink, last patch pink, last step pink, rear patch pink, pink at the tail end, "
            "pink at the tail, the red on the tail end is fading, red on the tail end fading, last patch fading, last "
            "patch is fading, the last step is fading, last step fading, rear patch fading, last patch going, red at "
            "the tail is fading, red at the tail end is fading, last step going, last patch fades, last step breaking "
            "up, last patch breaking up",
            "includes crown": "head patch fading, head patch is fading, the red on the head is fading, head red fading, red "
            "on the head fading, head hi fading",
            "includes shoulder": "the red on the shoulder is fading, shoulder patch fading, first patch fading, red on the "
            "shoulder fading",
        },
    ),
    Spoken(
        "niban_hi",
        "niban hi, nibanhi, secondary red, late red, second red, secondary hi, thin second red, niban, (niban|second red|"
        "secondary red|second hi|secondary hi|late red|late hi) (coming|coming up|coming through|starting|showing), (late|"
        "thin|faint|new|second|pale|weak|ghost of|hint of) red (coming|coming up|coming through|showing|rising|) in the "
        "white, red (coming|coming up|coming through|rising) in the white, second lot of red, 二番緋",
        of_parts="all",
    ),
    Spoken(
        "hi_thick",
        "thickness, thickness of the red, red thickness, density, 緋の厚み",
        levels={"fair": "average, medium, ok, okay, ordinary, so so, middling, moderate", "thin": "weak, poor, bad"},
        apart=True,
    ),
    Spoken(
        "hi_tone",
        levels={
            "orange": f"{_ORANGE} (base|based|type|tone|toned|in tone|side|iro|tint|tinge|cast), like (an|a|) "
            f"{_LIKE_ORANGE}, salmon, salmon pink, peach, peachy, warm orange, dark orange, burnt orange, tends to "
            "orange, tending to orange, goes to orange, verging on orange",
            "is orange_red or red": f"like (a|) {_LIKE_BRIGHT_RED}, {_LIKE_BRIGHT_RED}, terracotta, lacquer, more lacquer "
            "than orange, like a roof tile, like roof tiles, with a brick look, with a brick look to it",
            "purple_red": f"like (a|) {_LIKE_PURPLE}, blackish, nearly black, purple (tinge|tint|cast|tone|toned), a purple "
            "(tinge|tint|cast) to it, on the cold side, cooler, coolish, plum, damson, ruby, liver, murasaki",
        },
        alone={
            "is orange": f"{_ORANGE} (base|based|type|iro|tinge) (red|hi|beni|), like {_LIKE_ORANGE} for colour, (colour|"
            f"red) (of|like) (a|an|) {_LIKE_ORANGE}, salmon red, salmon pink red, peach red, (warm|burnt|dark) orange, "
            "orange toned, (more|rather) orange than (red|true red|i like), goldfish (red|orange|colour), (bit|touch|"
            "shade|tad) (too|) orange, more (pumpkin|carrot|orange|goldfish) than (tomato|red|blood), more (kaki|"
            "persimmon) than red, (leaning|tending|verging|bordering) (to|towards|on) (orange|kaki|persimmon), (colour|"
            "red|hi|beni|tone) (is|) (more|rather|mostly) orange, orange base (coming|showing|shining) (up|) (through|"
            "), (red|beni|hi|colour) (leans|tends|goes|verges) (to|towards|on) (orange|kaki|persimmon)",
            "is orange_red": "orangey red, orangy red, (rust|rusty) (red|colour|coloured), (red|hi|beni|colour) with (a|"
            "some|) (hint|touch|bit|tinge|tint|trace|shade|dash) of (orange|yellow) (in it|), (red|hi|beni) with (some|"
            "a bit of) orange in it, (hint|touch|bit|tinge|trace) of orange in (the|that) (red|hi|beni), a bit brown, "
            "(red|it|beni) goes (a bit|) brown, (between|somewhere between) orange and red, between red and orange, "
            "neither orange nor red, (proper|real|good|nice|lovely|) (tomato) colour, (colour|red|hi|beni) (is|) more "
            "brick than (blood|red|tomato)",
            "is orange_red or red": f"{_LIKE_BRIGHT_RED} (red|hi|beni), terracotta red, (red|hi|beni|colour) (is|) (more|"
            "closer to) lacquer than (to|) orange, more lacquer than orange",
            "is red": "real red, true red, red red, a red red, red through and through",
            "is purple_red": f"{_LIKE_PURPLE} (red|hi|beni), (blackish|cooler|coolish|purplish) (red|hi|beni), (red|hi|"
            "beni) (with a|has a) (purple|blue|bluish) (tinge|tint|cast|tone), purple (tinge|tint|cast) (to|in) the "
            "red, (red|hi|beni) (going|leaning|turning|running) (to|towards) (purple|blue), (deep|dark|strong) "
            "(crimson|claret|burgundy|wine red), (purple|bluish|violet) (undertone|undertones|sheen), (leaning|tending|"
            "going|verging|turning) (to|towards|on) purple",
        },
        bare={
            "is orange": f"{_ORANGE}, salmon, salmon pink, tangerine, pumpkin",
            "is orange_red or red": "tomato, ketchup, post box red, post box",
            "is purple_red": "purple, murasaki, claret, burgundy",
        },
        of_parts="all",
    ),
    SpokenTogether("(pale|washed out) orange (red|hi|beni|patches|)", "hi_tone is orange and hi_strength is pale"),
    SpokenTogether(
        "(deep|dark|rich|intense) orange (red|hi|beni|patches|)",
        "hi_tone is orange and hi_strength at least strong",
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
            f"like (a|an|) {_WORN}, {_COLOUR_ITSELF} (is|) (stronger|weaker|darker|lighter|paler|deeper|thicker|"
            f"thinner) {_AT} {_PLACE} than (anywhere else|the rest of it|on the rest), (patchy|blotchy|uneven) (on top|"
            f"on the back|in places|behind|in front), mottled like a strawberry, {_COLOUR_ITSELF} (comes|comes out|"
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
    Spoken(
        "hi_strength",
        levels={
            "pale": f"weak, poorish, anaemic, watery, watered down, like (a|an|) {_LIKE_WEAK}, bleached, sun bleached, "
            "lifeless, dead, dull, flat, tired, tired looking, asleep, without life, dull looking, milky, chalky, "
            "warui, more pink than red, washed, rosy, rose, rosy pink, rosy rather than red, pinky, pinkish",
            "at most fair": short_of(
                "red|strong|deep|bright|intense|rich", "redder|stronger|deeper|brighter|more intense|richer"
            )
            + ", could do with more strength, could do with more colour, wants more colour, wants more strength, short of "
            "strength, lacks strength, lacks colour, lacks punch, lacks fire, lacks life, on the light side, could be "
            "more intense, a bit light, lightish, palish, not exciting, not very exciting, nothing exciting, "
            "unexciting, not special, nothing to get excited about, has no fire in it, without fire, has not got any "
            "fire, has no punch",
            "fair": "normal, usual, standard",
            "at least strong": "tsuyoi, yoi, ii, koi, tsuyoi desu, blazing, ripe looking, mature, the best thing about (it|"
            "her|him|this one), its best point, her best point, his best point, with punch, with real punch, with some "
            "punch, has punch, with fire, with life, as red as they come, that jumps out at you, that jumps at you, "
            "that pops, that hits you, that shouts, to write home about, on the strong side",
            "strong": f"like (a|an|) {_LIKE_FIRE}, blazing, glowing like a lamp, screaming, shouting",
        },
        alone={
            "is fair": f"{_COLOUR_ITSELF} {_MIDDLING}, {_MIDDLING} {_COLOUR_ITSELF}",
            "at least strong": "(what a|some|look at (that|the|this)|just look at (that|the)|would you look at (that|the)) "
            f"(red|colour|beni|hi), that is some (red|colour), {_COLOUR_ITSELF} (hits|smacks) you (in|between) the "
            f"eyes, {_COLOUR_ITSELF} hits you in the eye, (koi|tsuyoi|yoi) (beni|hi), (red|colour|beni) (comes|shines) "
            "through (strongly|strong|well), (red|colour) (you notice|you see) (from across|across) the (tub|yard|"
            "pond), good honest red, honest red, (strong|powerful|hot) stuff (this|that) (red|beni), as red as (they "
            "come|it gets|red can be|you will see), (1 of|among) the (better|best|stronger|deeper|nicer) reds",
            "is pale": f"(red|hi|beni|colour) like (a|an|) {_LIKE_WEAK}, (watery|washed out|faded|bleached) (pinkish|pink|) "
            "(red|hi|beni|colour), red washed out, weak (red|beni|hi|colour), red more pink than red, (rosy|pink|rose) "
            "rather than red, (red|colour|beni|hi) has faded",
            "at most fair": "(needs|wants|could do with|could use) (more|some|a bit more|a lot more) colour (in it|in the "
            "red|), (lacks|short of|lacking) (in|) (colour|strength|strength in the red|punch|fire), could be redder, "
            "could be (stronger|deeper) in (the red|colour), not red enough, (weak|pale|poor) in (the|) (colour|red|"
            "beni), light in (the|) colour",
            "at least fair": "(red|beni|colour|hi) has come on (a lot|well|nicely|a bit|)",
        },
        bare={
            "at least strong": "vivid, fiery, blazing, very red, really red, so red, nice and red, good and red, properly red",
            "is pale": "anaemic, washed out, faded, bleached, rosy, rosy rather than red, pale pink, pale pink everything, "
            "pale pink all over",
        },
        of_parts="all",
    ),
    Spoken(
        "fading",
        alone={
            "at most marked": "(red|hi|beni|patch) (half|partly|mostly) gone, (red|hi|beni) (peeling|flaking|worn|rubbed) "
            "(off|away|), (red|hi|beni) (coming|worn|peeling|flaking) off, like (flaking|peeling) paint, (red|hi|beni) "
            "not holding, (red|hi|beni) (does not|is not) (hold|holding), (red|hi|beni|colour) (is|) on (its|the) last "
            "legs",
            "is none": "(red|hi|beni) (safe|secure|here to stay|stable|fixed), stable (red|hi|beni), (beni|red|hi) holding",
        },
        of_parts="all",
    ),
    Spoken(
        "hikui",
        "hikui start, (lump|bump|swelling|scab|blister) (in|on) the (red|beni|hi), (red|beni|hi) (is being|being|is|) eaten "
        "(away|up|), something eating the red, (red|hi|beni) (swollen|scabby|lumpy), scabby red, lumpy red, (spot|patch|"
        "place|something) that looks like (the|) (beginning|beginnings|start) of hikui, looks like hikui, hikui by the look "
        "of it",
    ),
    Spoken(
        "niban_hi",
        "(secondary|niban|second) (stuff|hi|red|colour|) (coming|coming up|coming in|showing|starting|rising|there), (some|"
        "a bit of|a little|a touch of|lots of|) (secondary|niban) (stuff|on the (side|belly|flank|left|right|back|shoulder|"
        "left side|right side)|), (red|orange|reddish) (haze|mist|tinge|cast|wash|bloom|veil|cloud|dust|dusting|freckle|"
        "shadow|tint|stain|showing|coming|) (in|on|over|under|through|across) the (white|shiroji|skin), orange haze, red "
        "haze, (pale|faint|weak|thin|new|late|light) red scales (coming|coming up|coming in|coming through|showing|) (in "
        "the white|), red scales (coming|rising|showing) (up|in|through|) (in the white|), ghost red, ghost of red, second "
        "coat of red, new red (coming|showing|), (some|a bit of|a little|) (secondary|second|niban|late|new) (red|hi|"
        "colour|) (creeping in|creeping up|sneaking in|seeping in|on its way|starting) (on|at|behind|along|in|) (the|) "
        "(left|right|side|left side|right side|gill|gills|back|belly|flank|shoulder|tail|), (orange|red) (dust|dusting|"
        "freckling|speckling|blush) (in|on|over) the white, (late|second|secondary|new|thin) red (trying to come|trying to "
        "come through|wanting to come|breaking through|pushing through) (through|) (on|in|at) (the|) (flank|white|side|"
        "belly|back|left|right|shoulder), (faint|slight|weak|light|pale|thin) (secondary|niban|second) (red|hi|colour|), "
        "(secondary|niban|second) (hi|red|) along the (left|right|) (lateral line|flank|side|belly)",
        alone={
            "is no": "no (secondary|niban) (stuff|red|hi|colour|) (at all|anywhere|yet|in the white|), nothing secondary"
        },
        of_parts="all",
    ),
    Spoken(
        "hi_strength",
        alone={
            "at most strong": wished("red|hi|beni|colour", "stronger|deeper|redder|richer|more intense|brighter"),
        },
    ),
    Spoken("hi_thick", alone={"at most fair": wished("red|hi|beni|colour|plate", "thicker|denser")}),
    Spoken(
        "hi_even", alone={"at most fair": wished("red|hi|beni|colour|tone", "more even|evener|more uniform|smoother")}
    ),
    Spoken(
        "hi_tone",
        after=("hi_tone", "hi_strength", "hi_thick", "hi_even", "hi_cover", "finish", "fading"),
        bare={
            "is orange": "like (persimmon|marmalade|salmon|a tangerine|a pumpkin|orange peel|apricot jam|smoked salmon|a "
            "boiled prawn|cooked prawns)",
            "is orange_red or red": "like (tomato soup|a tomato|ketchup|tomato ketchup|a chilli|red lacquer|a poppy|a "
            "strawberry)",
            "is purple_red": "like (wine|red wine|beetroot|raw liver|blackcurrant|plums)",
        },
    ),
    Spoken(
        "hi_even",
        after=("hi_tone", "hi_strength", "hi_thick", "hi_even", "hi_cover", "finish", "fading"),
        bare={
            "is patchy": f"like (a|an|) {_WORN}, like a patchwork",
        },
    ),
    Spoken(
        "hi_thick",
        after=("hi_tone", "hi_strength", "hi_thick", "hi_even", "hi_cover", "finish", "fading"),
        bare={
            "is thin": "like a (stocking|net curtain|veil), like tissue paper",
            "is thick": "like velvet",
        },
    ),
    Spoken(
        "hi_strength",
        after=("hi_tone", "hi_strength", "hi_thick", "hi_even", "hi_cover", "finish", "fading"),
        bare={
            "at least strong": "like (fire|flames|a traffic light|neon|a stop light)",
            "is pale": "like (weak soup|pink lemonade|rose wine|strawberry milk|a faded shirt|faded jeans)",
        },
    ),
)
"""What is said of the colour of red."""
