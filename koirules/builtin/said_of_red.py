"""How sorters speak of the colour of red (hi): its tone and strength, and whether it holds.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.builtin.said_of_layers import COLOUR_ITSELF, FURTHER, OF_COLOUR, RED, WISHING
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.praise import DISAPPOINTING, NOT_BAD, short_of, wished

_TOO = "(too|far too|much too|a bit too|a touch too|a little too|rather too|way too|a shade too|all too)"
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
    "prawn|shrimp|pumpkin|persimmon|tangerine|mandarin|satsuma|orange squash|egg "
    "yolk|yolk|curry|saffron|sunset|mango|rust|clementine|carrot soup|pumpkin soup|"
    "orange juice|papaya|nectarine|sweet potato|tiger lily|robin|kumquat|salmon steak|cheddar)"
)
_LIKE_BRIGHT_RED = (
    "(tomato soup|tomato ketchup|ketchup|tomato sauce|tomato paste|chilli|chilli powder|red pepper|pepper|paprika|poppy|"
    "strawberry|post box|phone box|red lacquer|lacquer box|sealing wax|cherry tomato|brick dust|geranium|ladybird|"
    "ripe tomato|tomato juice|tomato puree|letter box|pillar box|fire engine|telephone box|stop sign|holly berry|rowan "
    "berry|rose hip|radish|chilli pepper|paprika powder|london bus)"
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
    "flamingo|bubble gum|bubblegum|pink rose|blusher|boiled ham|ham|sugar mouse|prawn cocktail|pink chalk|pink paper|"
    "washed out sock|dishwater|watered down (ink|paint|wine|soup|juice|tomato soup)|"
    "weak juice|squash|faded (shirt|jeans|curtain|jumper|brick|photo|photograph)|old (curtain|shirt|photograph|photo|"
    "jumper)|washed out (shirt|jumper))"
)
_MIDDLING = (
    "(fair|average|ok|okay|medium|so so|passable|reasonable|nothing special|normal|ordinary|acceptable|middling|alright|all "
    "right|mediocre|unremarkable|moderate)"
)

SAID_OF_RED: tuple[Saying, ...] = (
    Spoken(
        "hi_tone",
        f"{RED.replace(' plate, hiban', ' hiban')}, tone, shade, hue, red tone, colour of the red, colour tone, shade of "
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
        "hi_strength",
        f"{RED}, strength of the red, strength, red colour, red quality, hi quality, beni quality, colour quality, quality "
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
            "colour, superb red, superb colour, red to die for, some red on it, proper red, "
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
            "is fair": f"{COLOUR_ITSELF} {_MIDDLING}, {_MIDDLING} {COLOUR_ITSELF}",
            "at least strong": f"{COLOUR_ITSELF} (hits|smacks) you (in|between) the "
            f"eyes, {COLOUR_ITSELF} hits you in the eye, (koi|tsuyoi|yoi) (beni|hi), (red|colour|beni) (comes|shines) "
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
            "at least strong": "(what a|some|look at (that|the|this)|just look at (that|the)|would you look at (that|the)) "
            "(red|colour|beni|hi), that is some (red|colour), vivid, fiery, "
            "blazing, very red, really red, so red, nice and red, good and red, properly red",
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
    Spoken(
        "hi_tone",
        after=OF_COLOUR,
        bare={
            "is orange": "like (persimmon|marmalade|salmon|a tangerine|a pumpkin|orange peel|apricot jam|smoked salmon|a "
            "boiled prawn|cooked prawns)",
            "is orange_red or red": "like (tomato soup|a tomato|ketchup|tomato ketchup|a chilli|red lacquer|a poppy|a "
            "strawberry)",
            "is purple_red": "like (wine|red wine|beetroot|raw liver|blackcurrant|plums)",
        },
    ),
    Spoken(
        "hi_strength",
        after=OF_COLOUR,
        bare={
            "at least strong": "like (fire|flames|a traffic light|neon|a stop light)",
            "is pale": "like (weak soup|pink lemonade|rose wine|strawberry milk|a faded shirt|faded jeans)",
        },
    ),
    Spoken(
        "hi_tone",
        levels={
            "orange_red": f"{_TOO} (brown|brownish|rusty|brick), "
            "(brown|brownish|browny|rusty|brick|rust|ginger|coppery|terracotta|clay) "
            "(shade|tone|hue|look|cast|tint|colour|sort), like (a|an|) (old roof|tiled roof|roof), bricky, brick "
            "coloured, brick like, brown, browny, ginger, gingery, foxy, coppery, copper, "
            "rust brown, like (a|an|) (brick|old brick|brick wall|flower pot|wet clay|clay|terracotta|rust|rusty nail|rusty "
            "gate|conker|fox|cocoa|copper|penny|old penny|chestnut|tea|leather|old leather), terracotta, with brown in it, "
            "brown looking, fox red, wet clay, wet clay colour, clay coloured",
            "is orange_red or red": "tomatoey, tomato coloured, ketchup coloured, rich tomatoey, poppy coloured, chilli coloured",
            "is red or purple_red": "like (a|) (cherry|cherries|ruby|rubies|garnet|cranberry|raspberry|raspberries)",
            "orange": f"{_TOO} (orange|orangey|carroty|salmon), {_LIKE_ORANGE} (coloured|colour), {_ORANGE} "
            "(shade|tone|hue|look|cast|tint), with too much "
            "orange in it, ginger orange, pale orange, washed out orange, tinned salmon, more orange, rather orange, "
            "apricotty, peachy orange",
            "purple_red": f"{_TOO} (purple|blue|cold|dark and purple), {_LIKE_PURPLE} (coloured|colour), with purple in it, "
            "with blue in it, with a blue "
            "undertone, bordeaux, mulberry, raisin",
            "red": "neither orange nor purple, neither too orange nor too dark",
        },
        alone={
            "is orange_red": "(hi|colour|tone|it) (is|looks|) (really|rather|) brick, brown in the red, brown "
            "(tinge|tint|cast|touch|look) (to|in) the red, (brick|browny|coppery|"
            "rusty|foxy|gingery) (red|hi|beni)",
            "is purple_red": "(blue|purple|violet) in the red, (red|hi) has (blue|purple) in it, cherry (colour|tone|shade)",
            "is orange": f"more (like|of|) (a|an|) {_LIKE_ORANGE}, more (of|) (a|an|) (salmon|peach|{_ORANGE}) than (a|an|) "
            "(red|hi), (more|rather) (salmon|peach) "
            "than red, orange (as|like) (it should be|they should be|you want it|wanted|it should), orange in the red, "
            "orange (not|more than|rather than|instead of) red, (red|hi) has (too much|a lot "
            "of|plenty of) orange in it, (red|hi|colour) (is|) (really|rather|just|) (an|) orange",
        },
        bare={
            "is orange_red": "like an old roof, like old bricks, like rust, like a rusty nail, "
            "like a flower pot, like wet clay, "
            "rusty, rust, terracotta, foxy, brownish, a bit brown, brown",
            "is red or purple_red": "cherry red, like a cherry",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_strength",
        levels={
            "pale": f"{_TOO} (pink|pinkish|pale|light|weak|faint|washed out|dull|flat|watery|milky), more (of|) (a|) pink "
            "than (a|) red, wishy washy, wishywashy, half hearted, thin and pale, peely wally, washy, weedy, pallid, pasty, "
            "sad, wan, sickly pink, (baby|candy|shrimp|piggy|salmon|bubblegum|flamingo|raspberry|sugar|shell|flesh) pink, "
            "flesh coloured, (like|as if|as though) (it|) (was|were|has been|had been|is|) washed (too (often|hot|much|many "
            "times)|out), left (out|) in the (sun|rain), no (go|guts|zip|oomph|kick|pep|sparkle|depth of tone) (in it|), "
            "without (oomph|guts|kick|sparkle), (not|never) much of a red, hardly red, barely red, scarcely red, hardly a "
            "red",
            "at least strong": "of (real|great|good|top|high|excellent) quality, of quality, the right (colour|red), a "
            "proper red, with some go in it, (with|of) real (strength|depth|fire|oomph), serious, ripe, full blooded, red "
            "blooded, something special, special, rich without being dark, deep without being dark, the best thing here, "
            "what you pay for, to be proud of, to envy",
            "strong": "zingy, zinging, sings, singing, shines out, stands out, leaps out, leaps out at you, smacks you in the "
            "eye, crackling, cracking, sizzling, electric, flaming, flame like",
            "deep": "deep right through, deep all through, deep and warm, velvety deep",
        },
        alone={
            "at most fair": f"{WISHING} (a bit|a little|a touch|some|a lot|) more "
            "(strength|punch|fire|life|intensity|red|colour) (in|to) (the|that|"
            "her|his|this|) (red|colour|hi)",
            "is pale": "pink (on it|) instead of red, (red|hi) (is|) (hardly|barely|scarcely) red (at all|), hardly (a|) red, "
            "barely red, no (guts|oomph|kick|zip) in the red, (red|hi) (like|as if) (it|) (has "
            "been|was|) washed (too often|too hot|out), (baby|candy|shrimp|piggy|flamingo|bubblegum) pink (not red|)",
            "at least strong": "(good|nice|lovely|real|proper|fine|great|really) "
            "(deep|strong|dark|rich|bright|intense|fiery|hot) (colour|red|hi), "
            "(red|colour|hi|beni) (can not|could not|hard to|not to) be (faulted|"
            "bettered|beaten), rich (but not|not|without being) (dark|too dark), (deep|strong) patches, good deep patches, "
            "patches (are|) (deep|strong|rich) in (colour|red), red of (real|great|top|high|the best) (class|quality), "
            "(little|bit of red|red) there is (is|) (good|super|lovely|strong|deep|rich)",
        },
        bare={
            "is pale": "wishy washy, washy, baby pink, candy pink, shrimp pink, hardly red",
            "at least strong": "(now|) that is beni, what a (red|colour|beni)",
        },
        of_parts="all",
    ),
    Spoken(
        "hi_strength",
        after=OF_COLOUR,
        alone={
            "is pale": "(like|as if|as though) (it|) (was|were|has been|had been|is|) washed (too (often|hot|much|many times)|"
            "out), (like|as if|as though) (somebody|someone) (had|has|) (watered it down|left it in the (sun|rain)|washed it "
            "(out|too hot|too often))",
        },
    ),
    Spoken(
        "fading",
        alone={
            "at most slight": f"(fades|breaking up|breaks up|crumbling|crumbles|giving way) "
            f"(already|) {FURTHER}, (hi|beni) (kuzure|kuzurete), hi kuzure, {COLOUR_ITSELF} (crumbling|crumbles|fraying|"
            f"giving way), {COLOUR_ITSELF} (has|) (started|starting|begun|beginning) "
            f"to (go|fade|break up|drop|crumble|slip)",
            "is none": f"{COLOUR_ITSELF} (has|) (kept|keeps) (pace|up) with (the growth|growth|the body|the size), "
            f"{COLOUR_ITSELF} (solid|tight|firm) and (holding|stable)",
        },
        of_parts="all",
    ),
    Spoken(
        "lustre",
        alone={
            "at least good": "(glossy|shiny|wet looking|gleaming|glistening|polished|lacquered|varnished|shining) (red|hi), "
            "(red|hi) (is|) (glossy|shiny|gleaming|glistening|wet looking|gleams|glistens|polished|lacquered|varnished|has "
            "a (gloss|shine|sheen|gleam|polish)|with a (gloss|shine|sheen|gleam|polish)) (to it|on it|), (gloss|shine|sheen|"
            "gleam|polish) (on|to|in) the (red|hi)",
            "at most fair": "(matt|matte|dry|dry looking|lustreless) (red|hi), (red|hi) (is|) (matt|matte|dry|dry looking|"
            "without (gloss|shine|lustre|sheen)|lacks (gloss|shine|lustre|sheen)), (red|hi) (has|with) (a|) (dry|matt|matte|"
            "dusty) look, no (gloss|shine|sheen|gleam|polish) (on|to|in) the (red|hi)",
        },
    ),
    Spoken(
        "finish",
        beside="hi, beni",
        levels={
            "is early or middle": "soft, still soft, softish, soft yet, on the soft side, not risen, not risen yet, late, late "
            "coming, slow, slow coming, too young, too young to call, too young to judge, green, unripe, not ripe, not ripe "
            "yet, not settled, not set, not hard, not hard yet, not firm, not firm yet, yawarakai, still to come, not come "
            "yet, not in yet, not up, not up yet, half ready, not ready",
            "at least near": "hard, katai, set hard, hard set, hard already, firm, set, settled, ripe already, ripened, "
            "baked, cooked, done early",
        },
        alone={
            "is early or middle": "(red|colour|beni|hi) (is|) (late|slow) (on (it|her|him|these|this 1|them)|), (soft|unripe) "
            "(beni|hi), yawarakai beni, (red|hi|colour) (has|) not (come up|come in|risen|ripened|settled|set|hardened) "
            "(yet|fully|), (red|hi) (is|) still (forming|opening|ripening|moving)",
            "at least near": "(hard|katai|hard set|baked) (beni|hi)",
        },
    ),
)
"""What is said of the colour of red."""
