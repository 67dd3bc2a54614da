"""How sorters speak of the white ground (shiroji).

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken
from koirules.vocabulary.praise import DISAPPOINTING, NOT_BAD, short_of

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
