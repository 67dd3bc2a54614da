"""How sorters speak of the white ground (shiroji).

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken
from koirules.vocabulary.praise import DISAPPOINTING, NOT_BAD, short_of, wished

_WHITE = "(white|shiroji|skin|white ground|ground|white skin)"
_GONE = "(gone|going|goes|turned|turning|got|has got|still|a bit|a little|a touch|slightly|all|rather|)"
_YELLOW = (
    "(some yellow|still yellow|dirty yellow|bit of "
    "yellow|ki|kiiro|kiiroi|yellow|yellowish|yellowy|yellowed|yellowing|cream|creamy|buttery|"
    "yellow (cast|tinge|tint)|yellowish (cast|tinge|tint)|(cast|tinge|tint|touch|hint|bit|trace) of (yellow|cream))"
)
_FACE = "(head|nose|face|snout|forehead|cheeks|crown|top of the head|front of the head)"
_ON = "(left on|left at|along|near|by|towards|on|at|in|round|around|up round|up at|down to|over|about|behind|between)"
_BACK = (
    "(back|whole back|dorsal|shoulder|tail|tail end|flank|side|rear|body|left|right|left side|right side|stem|nape|neck|back "
    "end|rear end)"
)
_UNDERSIDE = "(belly|tummy|underside|stomach|chin|throat)"
_THROUGHOUT = "(all over|everywhere|throughout|all the way|from head to tail|head to tail|on (this one|her|him|it)|)"

_LIKE_SNOW = (
    "(snow|fresh snow|rice|boiled rice|cooked rice|rice cake|mochi|milk|fresh milk|cold milk|paper|cotton|chalk|egg|boiled "
    "egg|peeled egg|hard boiled egg|egg white|washing powder|toothpaste|tooth|sugar|flour|salt|hospital sheet|clean sheet|"
    "new sheet|fresh sheet|sheet|porcelain|china|new paint|fresh paint|swan|lily|marble|alabaster|ice|wedding dress|clean "
    "plate|new fridge|wet snow|tofu)"
)
_LIKE_CREAM = (
    "(cream|custard|vanilla|vanilla ice|vanilla ice cream|eggshell|old ivory|ivory|magnolia|magnolia paint|old piano keys|"
    "piano keys|old fridge|old teeth|tea with milk|milk tea|milky tea|weak tea|oatmeal|porridge|clotted cream|old lace|"
    "parchment|straw|old tooth|candle wax|candle|wax)"
)
_LIKE_YELLOW = (
    "(butter|old newspaper|old paper|lemon|custard|mustard|banana|smoker's (fingers|ceiling|teeth|curtains)|old wallpaper|"
    "cheese|old cheese|egg yolk|nicotine)"
)
_LIKE_GREY = (
    "(dishwater|old dishwater|skimmed milk|watered milk|thin milk|old sheet|old dishcloth|dishcloth|dirty shirt|dirty "
    "linen|dirty sheet|grey sock|old sock|old vest|concrete|putty|slush|dirty snow|old snow|fog|ash|newspaper|pavement|"
    "cement)"
)

SAID_OF_WHITE: tuple[Saying, ...] = (
    Spoken(
        "shiroji",
        "shiroji, white, white ground, ground, white skin, skin, the white, whiteness, skin colour, white colour, white "
        "quality, quality of the white, white of the body, body white, white of the back, 白地, 白質, 地肌",
        levels={
            "yellow": f"yellow, very yellow, dirty yellow, yellowed, yellow {_THROUGHOUT}, yellow {_ON} the {_BACK}, like "
            "butter, buttery, butter yellow, like old ivory, like old piano keys, like old paper, tea stained, like "
            "weak tea, 黄色い",
            "at most cream": f"(yellowish|yellowy|yellowing) {_THROUGHOUT}, (yellowish|yellowing) {_ON} the {_BACK}, yellow "
            "side, yellow based, poor, bad, weak, going creamy, going cream, gone creamy, yellowed",
            "cream": "cream, creamy, ivory, off white, slightly yellow, a bit yellow, a little yellow, yellowish, fair, "
            "average, milky, somewhat yellow, slight yellow, slightly creamy, like cream, eggshell, vanilla, beige, a "
            "touch yellow, fair, average, moderate, medium",
            "is cream or white": NOT_BAD,
            "at most white": f"{DISAPPOINTING}, grey, greyish, off, smoky, like dishwater, dishwater, off colour, dull, "
            "grey wash, that grey wash, grey tinge, grey cast, grey tint, bluish, blueish, not pure, impure, lacks "
            "purity, without purity, not clean, not bright, not the whitest, not the cleanest, not the purest, a bit "
            "off, " + short_of("white|clean|pure|bright", "whiter|cleaner|purer|brighter"),
            "white": "white, good, clean, nice, clear, fine, bright, pure, fresh, crisp, clean and white, nice and white, "
            f"(nice|good|clean|fine|white|lovely|clear) {_THROUGHOUT}, good, great, 白い",
            "at least white": "thick, dense, opaque, solid, thick and white, dense and white, lovely and thick, thick and "
            "even, very good, very clean, spotless, so good, so clean, really clean, really good",
            "snow": "snow, snow white, snowy, like fresh snow, fresh snow, as snow, like milk, like paper, like chalk, milk "
            "white, like snow, pure white, dazzling, very white, porcelain, paper white, like porcelain, (white|clean|"
            "pure|bright) as (snow|paper|milk|a sheet|chalk), like a sheet, like a clean sheet, like (fresh|clean) "
            "(linen|sheets|washing), (white|clean) as (a wall|linen|a bone|bone|a fridge|a plate),  as white as snow, "
            "clean as paper, (gleaming|brilliant|radiant|blinding), like cotton, like marble, like alabaster, "
            "immaculate, flawless, superb, 雪白, 真っ白",
        },
        alone={
            "is cream": "(white|white ground|ground|shiroji|skin) (is|) (a bit|a little|slightly|a touch) (yellow|yellowish|"
            "creamy)",
            "is snow": "snow white skin, white as snow, snow white, skin snow white, snow on (her|him|it|this one), like "
            "snow, like fresh snow, as white as snow, milk white, white as milk, white as paper",
            "at least white": "pure white skin, pure white, white pure, very white skin, lovely white, good white skin, "
            "good white, the rest white, rest white, body white, white body, rest of the body white, body is white, "
            "rest of the white is white, rest of the white (clean|good|fine|clear|pure), (no|without|not a trace of|no "
            "trace of|no sign of|not a hint of|no hint of|free of|clear of|not a bit of) (yellow|yellowing|yellow cast|"
            "yellow tinge) (in the white|anywhere|at all|on it|in it|in the skin|on the skin|), no cast in the white, "
            "no cast, white free of yellow, white (free of|without) (any|a|) (yellow|cast|tinge)",
            "at most cream": "yellow cast, yellow tinge, yellow tint, yellowish tint, yellowish cast, yellowish tinge, "
            "yellow tint all over, yellowish tint all over, yellowish all over, yellow all over, yellow skin, yellow in "
            f"the white, yellow, yellowish, yellow in the skin, yellowing, gone yellow, going yellow, {_YELLOW} (in|on|"
            "over) the (white|skin|shiroji|ground|body), (yellow|yellowish|creamy) (cast|tinge|tint) (to|in|on|over) "
            f"(the|) (white|skin|it|everything), (tinge|touch|hint|trace|cast|tint) of (yellow|cream), {_WHITE} (has|"
            f"got|has got|with|shows) (a|some|a slight|a bit of|) {_YELLOW}, yellow {_ON} the {_BACK}",
            "at most white": "(asagi|bluish|blue) (grey|) (cast|tinge|tint), (grey|greyish) (cast|tinge|tint), white "
            f"greyish, white grey, greyish white, grey white, white a bit grey, dull white, white dull, {_WHITE} (has|"
            "got|has got|with|shows) (a|some|that|) (grey|greyish|dull) (cast|tinge|wash|tint|tone|look), (grey|"
            "greyish) (cast|tinge|wash|tint|tone) (in|to|on|over) (the|) (white|skin|it), white not white, not pure "
            "white, (slightly|a bit|a little|) off white",
        },
        of_parts="all",
    ),
    Spoken(
        "white_head",
        "head white, white of the head, white on the head, head skin, skin on the head, skin of the head, nose white, crown "
        "white",
        levels={
            "yellow": "yellow, very yellow",
            "cream": "cream, creamy, slightly yellow, a bit yellow, yellowish, a touch yellow",
            "at most cream": "not clear, not white, not clean, not clear yet, not white yet, poor, bad, dirty, dull, off",
            "clear": "clear, white, clean, good, pure, nice, bright, fine, snow white, like snow, perfect, spotless",
        },
        alone={
            "at most cream": "yellow head, yellow on the head, head yellow, slight yellow on the head, head a bit yellow, "
            "yellow at the head, yellowish head, head yellowish, head slightly yellow, yellow nose, nose yellow, a bit "
            "of yellow on the head, a little yellow on the head, cream on the head, shiroji cream on the head, head "
            "still yellow, yellow face, face yellow, shiroji yellow on the head, white yellow on the head, head is "
            f"yellow, {_YELLOW} {_ON} (its|her|his|the|) {_FACE}, {_YELLOW} from (the|) (nose|lips) to (the|) eyes, "
            f"{_FACE} (has not|not|is not|not yet) (cleared|cleaned up|whitened) (yet|), {_YELLOW} (on|in) (his|her) "
            f"{_FACE}, {_YELLOW} {_FACE}, {_FACE} {_GONE} {_YELLOW}, {_FACE} (has|with|shows|got) (a|some|a bit of|a "
            f"slight|) {_YELLOW}, {_FACE} not (clear|white) yet, head skin {_GONE} {_YELLOW}, {_WHITE} {_GONE} "
            f"{_YELLOW} {_ON} the {_FACE}, {_WHITE} {_ON} the {_FACE} {_GONE} {_YELLOW}",
            "is clear": f"no (yellow|yellowing|cream) {_ON} the {_FACE}, {_FACE} (clear|free) of yellow, not a trace of "
            f"yellow {_ON} the {_FACE}, {_WHITE} (clean|clear|pure|white) {_ON} the {_FACE}",
        },
    ),
    Spoken(
        "shiroji",
        "background, whites, white bits, white parts, white areas, hada, ground colour, colour of the ground, colour of the "
        "white, base, base white",
        levels={
            "snow": f"like (a|an|) {_LIKE_SNOW}, as {_LIKE_SNOW}, white as (a|an|) {_LIKE_SNOW}, white like (a|an|) "
            f"{_LIKE_SNOW}, whiter than white, that hurts the eyes, pure snow, whitest, egg white, wet snow, snow like, "
            "rice white, very very white, brilliant white, milky deep, like fresh plaster, like plaster, like "
            "whitewash, like a plate, like a dinner plate, like a china plate",
            "cream": f"like (a|an|) {_LIKE_CREAM}, rather cream than white, more cream than white, cream rather than white, "
            "magnolia, tea coloured, milk tea, champagne, straw, oatmeal, usual, normal, reasonable",
            "yellow": f"kiiro, kiiroi, too yellow, yellow (like|as) (a|an|) {_LIKE_YELLOW}, like (a|an|) {_LIKE_YELLOW}, "
            "jaundiced, nicotine stained, mustard, straw yellow, very yellowish, ki",
            "at most white": f"like (a|an|) {_LIKE_GREY}, greyed, not really white, not there yet, not white yet, not "
            "special, not what i want, blueish tinge, blue tinge, sallow, weakish, could be whiter",
            "at least white": "kirei, evenly good, ok and clean, (clean|good|white) and thick, with no cast, has no cast, "
            "without a cast, free of any cast, good enough to eat off, the best thing about (it|her|him), milky depth, "
            "that milky depth, holds up, holds up all the way, holds, keeps, stays clean",
            "white": "white enough, okay ish, in order, white all over, clean all over",
        },
        alone={
            "is snow": "white white, really white white, whitest white (you ever saw|i have seen|in the tub|), whiter than "
            f"white, (yukihada|yuki hada), {_WHITE} (hurts|dazzles) the eyes, white that hurts the eyes, (snow|paper|"
            "milk|rice|egg|porcelain|brilliant|dazzling|gleaming) white, (white|shiroji|white ground|ground) like (a|"
            f"an|) {_LIKE_SNOW}, white (like|as) (a|an|) {_LIKE_SNOW}, (it|she|he) is (snow|snowy|paper white|snow "
            "white) (this one|), white that (dazzles|glows)",
            "at least white": "bright white (from the gills (back|on)|all over|throughout|), yellow free, (white|skin) "
            "yellow free, no (cast|tinge|tint|cream|grey) (in it|in the white|to it|to the white|anywhere|at all), "
            "white has no (cast|tinge), (no|not a bit of|not a trace of|hardly any) (yellow|cream) (in|on) (her|him|"
            "this one), hada (yoi|kirei), clean as snow, clear white, (lovely|good|nice|real|proper|true) porcelain "
            "(ground|white|skin), (1 of|among) the (better|best|cleaner|finer|whiter|nicer) (whites|white), (pretty|"
            "quite) white under (all|) (that|the) (red|pattern|all that red)",
            "is cream": "(sort of|kind of|) (more|) cream (rather than|more than) white, between white and cream, (not "
            "yellow|not quite yellow) but not white (either|), (magnolia|ivory|vanilla|cream) (white|skin|coloured)",
            "at most cream": "(white|skin|shiroji|ground|it|) (still|) (a touch|a bit|a little|slightly|rather|somewhat|"
            "quite|very|too) (yellow|yellowish|creamy|cream) (from the (mud|pond|mud pond)|off the mud|still|), shiroji "
            "(kiiro|kiiroi), (yellow|yellowish|creamy) (from|off) the mud, (white|skin) (looks|looking|is) jaundiced, "
            f"jaundiced (skin|white), (white|skin) (like|the colour of) (a|an|) {_LIKE_YELLOW}, yellow (like|as) (a|an|"
            f") {_LIKE_YELLOW}, yellowed (on|over|along|behind|towards) the (shoulders|back|tail|sides|flanks|dorsal|"
            "stem), (yellowish|creamy) (sort|kind|shade) of white, (yellowish|creamy) white, (a bit|bit|touch|hint|"
            "trace) of (a|) yellow (cast|tinge|tint) (still|), (cream|creamy|ivory) (on|at|over|along|towards|behind) "
            "the (shoulders|shoulder|tail|sides|side|flanks|flank|belly|stem), (shiroji|white) amai",
            "at most white": f"(white|skin) like (a|an|) {_LIKE_GREY}, not white enough, not really white, white (is not|"
            "not) (there|white) yet, (blue|bluish|grey|greyish|smoky) (tinge|cast|tint|shadow|haze) (to|in|on|over) the "
            "white, (could|should|might) be whiter, (thin|watery|flat|transparent|tired|lifeless|dusty|sallow) (white|"
            "shiroji), white with no (body|thickness|depth), no (body|thickness|depth) (in|to) the white, (bit|touch|"
            "hint|trace|shade|tinge|some|a little|a lot) of (grey|blue|smoke) in the (white|shiroji|skin), (some|) "
            "(grey|smoke) in the (white|shiroji), not the (cleanest|whitest|purest|brightest) white (of the lot|in the "
            "tub|i have seen|)",
        },
        bare={
            "is cream": "cream, creamy, ivory, eggshell, magnolia, cream rather than white",
            "at most cream": "yellowed, jaundiced, kiiro, kiiroi, yellow (like|as) butter, tea coloured, looks jaundiced",
            "is snow": "snow, snowy, pure snow, snow all over, egg white, paper white, yukihada",
            "at most white": "could be whiter",
        },
    ),
    Spoken(
        "shiroji",
        "shiroji, white, white ground, ground, whites, background",
        levels={
            "at most white": "thin, watery, transparent, see through, flat, translucent, tired, dead, lifeless, washed out, "
            "dusty, without body, without thickness, not thick",
            "at least white": "strong, right, even, full",
            "is cream or white": "ok, okay, alright, all right, ok ish, okay ish, acceptable",
        },
        apart=True,
    ),
    Spoken(
        "white_head",
        levels={
            "at most cream": f"like (a|an|) ({_LIKE_CREAM}|{_LIKE_YELLOW}), not pure, goes yellow, gone yellow, still "
            "yellow, could be (whiter|cleaner), not what it should be, greyish, grey",
        },
        alone={
            "at most cream": "yellow cap, yellow (round|around|between|behind|above|over|in front of) the eyes, head (is|) "
            "(dirty|dull|grey|greyish|ivory), (dirty|dull|greyish|ivory|cream|creamy) head, head (is|) not (clear|"
            f"clean|white|pure) (yet|at all), head like (a|an|) ({_LIKE_CREAM}|{_LIKE_YELLOW}), (yellow|yellowish|"
            "cream) from (the|) nose to (the|) eyes, from (the|) nose to (the|) eyes yellow, head not yet (clear|clean|"
            "white), (atama kiiro|kiiroi atama), (head|nose|face) (has|with) a yellow (tinge|cast|tint|cap), (yellow|"
            "yellowish|creamy|ivory) (skull|bonnet|helmet|forehead|top of the head|crown|face|snout), (top of the|) "
            "(head|skull|crown) has a (yellow|yellowish) (shine|tinge|cast|look|tint), (bonnet|skull|cap|forehead|face|"
            "snout) (is|) (still|) (a bit|) (yellow|yellowish|creamy|cream), yellow in the (face|head|forehead), "
            "(slight|faint|weak) (yellow|cream|yellowish) (cast|tinge|tint|tone) (on|in|over|at) the (crown|head|nose|"
            "face|forehead), head (is|) (whitening|clearing) (up|) (nicely|well|), (yellowish|creamy|cream) cap, (head|"
            "nose|face) a shade (yellow|yellowish|creamy)",
            "is clear": "(head|nose|face) (already|now|) (clear of yellow|free of yellow|clear in colour), no yellow (on|"
            "at|round|about) the (head|nose|face|eyes), head skin (clear|clean), head (is|) clean white (with no "
            "yellow|no yellow|without yellow)",
        },
    ),
    Spoken("shiroji", alone={"at most white": wished("white|shiroji|ground", "whiter|cleaner|purer|brighter|thicker")}),
    Spoken(
        "shiroji",
        after=("shiroji", "white_head", "skin_clean", "lustre"),
        bare={
            "is cream": "like (cream|custard|vanilla ice|eggshell|old ivory|magnolia paint|ivory)",
            "at most cream": "like (butter|old newspaper|old piano keys|old teeth|an old fridge|a smoker's fingers|weak "
            "tea|tea with milk), looks like weak tea",
            "is snow": "like (milk|fresh milk|rice|boiled rice|a peeled egg|a boiled egg|toothpaste|washing powder|a "
            "hospital sheet|a clean sheet)",
            "at most white": "like (dishwater|old dishwater|skimmed milk|an old sheet|an old dishcloth|a dirty shirt|dirty "
            "linen|a grey sock)",
        },
    ),
    Spoken(
        "shiroji",
        levels={
            "at most white": f"{_YELLOW} {_ON} the {_UNDERSIDE}, pinkish white, nezu, nezumi, nezumi iro, hai iro",
            "at least white": "urushi, (faultless|flawless|spotless|dazzling) white",
            "at least cream": "better than (i|we|) (had|would|) (feared|expected|thought|hoped)",
        },
        alone={
            "at most white": f"{_YELLOW} {_UNDERSIDE}, {_UNDERSIDE} {_GONE} {_YELLOW}, {_YELLOW} "
            "(on|at|along|round|under|in|underneath) "
            f"(the|its|her|his) {_UNDERSIDE}, nezu",
            "at least white": "(urushi|lacquer|enamel|faultless|flawless) white, now that is (a|what i call) white, that is "
            "what i call (a|) "
            "white, (ooh|oh|my|wow|blimey) (that is|what) (a|) white, what a white (ground|skin|on it|)",
        },
        bare={"at least white": "very white, ever so white, properly white, so white, really white"},
    ),
    Spoken(
        "white_head",
        alone={
            "at most cream": f"{_YELLOW} (bar|band|spot|patch|blotch|stripe|mark|blob|streak) (on|across|over|at|round) "
            f"(the|its|her|his) {_FACE}",
            "is clear": f"{_FACE} (is|) (faultless|flawless|perfect|spotless|dazzling|lovely|beautiful) (white|clear)",
        },
    ),
    Spoken(
        "shiroji",
        after=("shiroji", "white_head", "skin_clean", "lustre"),
        bare={
            "at most white": "like (old|sour|off|stale|yesterday's|thin|watery) milk, (a bit|bit|slightly|gone) off, off"
        },
    ),
    Spoken(
        "shiroji",
        levels={"snow": "chalk, paper, plaster, alabaster, marble, egg shell white, fresh plaster"},
        alone={
            "is cream": "(more|rather more) (your|of an|an|a|like|) (off white|cream|ivory|eggshell|magnolia) than (a|) "
            "(white|pure white|snow)",
        },
    ),
    Spoken("shiroji", alone={"at most cream": f"{_YELLOW} {_ON} (the|its|her|his) {_BACK}"}),
    Spoken(
        "shiroji",
        levels={"at most white": "wishy washy, insipid, anaemic, half hearted, so so at best"},
        alone={"at most white": "wishy washy white"},
    ),
    Spoken(
        "shiroji",
        alone={
            "is snow": "(as|) white as (you will (ever|) (see|get|find)|you could (wish for|want|hope for|ask for)|it "
            "(gets|comes|can be)|any i have seen|white can be|i have ever seen|they make it|i have seen)",
        },
    ),
)
"""What is said of white."""
