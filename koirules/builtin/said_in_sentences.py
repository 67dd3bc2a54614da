"""What is said of a body and of the whole fish in whole sentences. Common practice, no source; wordings from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken

_IT = "(it|her|him|this one|that one|this fish|that fish)"
_SHE = "(she|he|it|this one|that one|this fish|that fish|fish|)"
_SISTERS = (
    "(compared (to|with)|beside|next to|against|among|amongst|alongside) (all of |all |)(its|his|her|the) (brothers|"
    "sisters|siblings|others|rest|rest of them|batch|lot|mates|brothers and sisters)"
)
_RIGHT_TO_THE_TAIL = "(right|all the way|straight|well|nicely) (through|down|back|along|) (to|into|up to) the tail"
_SOMEBODY = "(somebody|someone|something|the others|another fish|they) (has|have|) (been|)"
_EATEN = "(nibbling|nipping|biting|chewing|pecking|picking) (at|on)"
_VARNISHED = "(varnished|lacquered|polished|waxed|oiled|enamelled|glazed)"
_LOOK = (
    "(every time|whenever|each time|when|) (i|you|we|) (look|walk past|come past|lift the net|pass) (in|into|at|) (the|"
    "that|) (tub|bowl|net|pond|tank|)"
)
_COOL = "(do|does) not"
_BREATHING = "(breathing|breathes|gasping|pumping its gills)"

_FINS = {
    "tail": "(tail|tail fin)",
    "dorsal": "(dorsal|dorsal fin|back fin)",
    "anal": "anal fin",
    "left_pectoral": "left (pec|pectoral|pectoral fin|pec fin)",
    "right_pectoral": "right (pec|pectoral|pectoral fin|pec fin)",
}

SAID_IN_SENTENCES: tuple[Saying, ...] = (
    Spoken(
        "size_by_eye",
        alone={
            "is runt or small": f"(a bit of a|a real|a proper|the|a|) (runt|titch|tiddler) {_SISTERS}, (small|tiny|little|"
            f"undersized|behind|stunted|on the small side) {_SISTERS}, (lagging|lags|trailing|trails) (well|a bit|a long "
            "way|far|) behind (the|its|his|her) (others|rest|brothers|sisters|siblings|batch), (has|have|) not (grown|"
            "grown on) (like|as) (the|its) (others|rest|brothers|sisters) (have|did|)",
            "is big": f"(big|large|huge|enormous|massive|a giant|a whopper) {_SISTERS}",
        },
    ),
    Spoken(
        "mouth",
        alone={
            "is good": "mouth (opens and closes|closes and opens|opens and shuts|works) (fine|well|properly|nicely|"
            "normally|straight|as it should|all right|evenly|), nothing (the matter|amiss|to fault) (with|about|in) "
            "(the|its) mouth"
        },
    ),
    Spoken("swimming", "moves through the water, swims through the water, goes through the water"),
    Spoken(
        "health",
        alone={
            "at most doubtful": "(keeps|sticks) (to|in) (the|its) corner (with (the|its) fins (folded|clamped|closed|"
            "in)|all the time|), flicking itself, (flicking|flicks|rubs|rubbing|scraping) itself (against|on|off) the "
            "(side|bottom|wall|bowl)"
        },
    ),
    Spoken(
        "belly_shape",
        alone={
            "is full or level": "belly (is|) (nicely|well) (filled|rounded|filled out), nicely (filled|rounded) belly"
        },
    ),
    Spoken(
        "tail_stem",
        alone={
            "is strong": "(body|frame|shape|volume|width|bulk|thickness|power) (carries|runs|goes|continues|stays|holds|is "
            f"carried) (on|) {_RIGHT_TO_THE_TAIL}, (stays|keeps) (thick|strong|wide|broad|full) {_RIGHT_TO_THE_TAIL}",
        },
    ),
    Spoken(
        "lustre",
        alone={
            "is superb": f"(shines|gleams|looks|glows|shining|gleaming) (like|as if|as though) {_SHE} (somebody|someone|) "
            f"(has been|is|was|had been|has|had|) (just been|freshly|just|) {_VARNISHED} (it|her|him|)",
        },
    ),
    Spoken(
        "fin_damage",
        alone={
            f"includes {fin}": f"{_SOMEBODY} {_EATEN} (the|its|) {words}, (the|its|) {words} (has|have|) (been|) (nibbled|"
            "nipped|chewed|bitten|pecked) (at|on|away|a bit|), (had|has|lost|missing) a (bite|chunk|nip|nibble) (taken|) "
            f"(out of|from|off) (the|its) {words}"
            for fin, words in _FINS.items()
        },
    ),
    Spoken(
        "barbels_missing",
        alone={
            "at least 1": "(i|) (can not|could not) (find|see) (the|its|1) (left|right|) (barbel|whisker), 1 (barbel|"
            "whisker) (i|) can not (find|see), (a|the|) (barbel|whisker) (has|is|) (gone missing|went missing|got lost|"
            "broken off|come off)"
        },
    ),
    Spoken(
        "dorsal_fin",
        alone={
            "is folded": "dorsal (fin|) (will not|does not|never|hardly ever|can not) (come|stand|go) (up|upright) "
            "(properly|fully|right|all the way|straight|at all|), dorsal (fin|) (flops|falls|lies|lays|leans) over (to one "
            "side|), (can not|does not|will not|never) (put|get|raise|lift|hold) (the|its) dorsal (fin|) (up|) (properly|"
            "fully|right|all the way|at all|)",
            "is upright": "(puts|holds|carries|keeps) (the|its) dorsal (fin|) (right|nice and|nicely|well|straight|) (up|high|"
            "upright|erect|proud)",
        },
    ),
    Spoken(
        "head_shape",
        alone={
            "is good": "(plenty of|good|lots of|a lot of|nice|lovely|a good) width between (the|its) eyes",
            "is poor": "not (much|a lot of|enough) width between (the|its) eyes",
        },
    ),
    Spoken(
        "swimming",
        alone={
            "is smooth": "(moves|swims|goes|shoots) (through the water|along|) like a (torpedo|dart|rocket|seal|fish "
            "should|dream), (turns|moves|swims|goes|comes round|bends) (as|all as|in|like) 1 (piece|), (turns|moves|"
            "swims) (all|) of a piece, (whole body|everything) (moves|works|goes) (together|as 1|as 1 piece|in 1), "
            "(glides|slips|cuts|slides|sails|cruises) (along|through the water|through the bowl|round the bowl|about|"
            "around) (like (a dream|a (boat|ship|swan|submarine)|silk)|effortlessly|without effort|with ease|), no "
            "(trouble|problem|effort) (with|in) (its|the) swimming, nothing wrong with the (way (it|she|he) swims|"
            "swimming)",
            "is stiff": "only the tail (is|) (moving|moves|works|working|goes|going|doing the work|does the work), (rest "
            "of (it|him|her)|body|front half|front) (stays|is|keeps|remains) (stiff|rigid|wooden|still) (when it swims|), "
            "swims (only|just|) (with|from) (the|its) tail (only|alone), (moves|swims) (as if|like) (it|she|he) (is made|"
            "were made|was made|made) of wood, no (give|flex) (in|to) (the|its) body (when it swims|)",
            "is off": "(leans|tips) (over|) (a bit|a little|slightly|badly|) (to|to the|on) (left|right|1 side|its "
            "side) when (it|she|he) (stops|rests|swims|slows down|turns), (lists|heels|rolls|tilts) (over|) (a bit|a "
            "little|slightly|badly|) (over|) (to|to the|on) (left|right|1 side|its side) (when (it|she|he) (stops|"
            "rests|swims|slows down|turns)|), (never|does not|can not) (quite|) (stay|keep|sit|hang|hold) (level|"
            "upright|on an even keel)",
        },
    ),
    Spoken(
        "health",
        alone={
            "at most doubtful": f"{_BREATHING} (far|much|way|) too (fast|hard|heavily|quickly), {_BREATHING} (fast|hard|"
            "heavily|quickly), (hanging|hangs|hung|was hanging) (about|around|) (at|near|by|under|on|in) (the|) (surface|"
            "top|inlet|outlet|corner|bottom|air stone|airstone|filter) (all (day|morning|night|week)|again|), (keeps|stays|"
            "has kept|has stayed) (itself|) to (itself|himself|herself) (all (day|morning|week)|), (has gone|gone|went|is|"
            ") off (the|its) (food|feed|pellets), (has|have|) not touched (the|its) food, (does|did) not (come up|come) "
            "(to eat|to feed|for food|for (the|its) (food|feed)|with the others)",
            "is well": "keen (on|for) (its|the|) (food|feed|pellets), lively and keen on (its|the) (food|feed), (eats|"
            "eating|feeds|feeding) like (a pig|a horse|there is no tomorrow|a good one), (first|always first) (to|at) "
            "(the food|feed|the feed|feeding), (nothing|not a thing|not much) wrong with (its|the) (health|appetite), "
            "(right|fit|sound|healthy) as (rain|a fiddle|a bell|a trout|can be|you like)",
            "is sick": "(red|raw|open|nasty|small|little|sore|) (sore|ulcer|wound) (just|) (starting|developing|coming|"
            "forming|breaking out) (behind|by|on|near|under|at|in) (the|its|) (left|right|) (gill|gill cover|dorsal|dorsal "
            "fin|belly|flank|side|shoulder|tail|vent|head|mouth|back|pectoral)",
        },
    ),
    Spoken(
        "impression",
        alone={
            "at most fair": "(just|only) (a|another) (fish|kohaku|koi) (like (any other|all the others|a (1000|100) "
            f"others|all the rest)|), {_COOL} (say|do|mean|give me) (anything|a thing|much|a lot|very much) (to|for|) "
            "(me|), (says|means) (nothing|not a thing|little|very little) (to|for) me, (i|) (can not|could not) "
            f"(warm to|get excited about|get on with|fall in love with|take to) {_IT}, (i|) (have|) seen (much|far|a "
            "lot|plenty) better",
            "at least good": f"(a lot|lots|plenty|so much|much|a great deal) to like (about|in|on) {_IT}, (i have|i|) "
            f"(have|) (nothing|not a) bad (word|) to say (about|of|against) {_IT}, (could not|can not) fault {_IT} (if "
            "(i|you) (tried|wanted to)|), (i|) (can not|could not|hard to|impossible to) (find|see) (a|any|) (thing|"
            f"fault|faults|much|anything) wrong (with|about|in) {_IT}, (nothing|not a thing) (i|you) would (change|want "
            "to change|alter), (as|) (nice|good|lovely|fine) a fish as you (will|could) (see|find|want|wish for|ask "
            f"for), (i|) (really|do|very much|just|) (love|like) (everything|all) about {_IT}",
        },
    ),
    Spoken(
        "presence",
        alone={
            "is plain": "(you|one|i|anybody|people) (would|could|will) (just|) (walk|go|look|swim) (straight|right|) past "
            f"{_IT} (in|at|on|) (the|a|) (show|tub|bowl|pond|vat|), (would|do|does) not (look twice|give it a second look|"
            f"notice it|turn (your|my) head|stop for {_IT}), (easy|easily) (to overlook|overlooked|to miss|missed) (in (a|"
            "the) (tub|bowl|pond|crowd)|), (gets|is|) lost in the (tub|crowd|bowl|pond|lot)",
            "at least strong": "(my|the|your|every) eye (always|keeps|just|) (goes|go|going|comes|is drawn|is pulled|"
            f"wanders|jumps|returns) (straight|right|always|back|first|) to {_IT} (first|) ({_LOOK}|), (i|you) (keep|"
            f"can not help|can not stop) (looking|going back|coming back|staring) (at|to) {_IT}, (i|you) (can not|could "
            f"not) (take|keep) (my|your) eyes off {_IT}, (would|will) stand out (in|at) any (tub|show|pond|crowd|bowl), "
            "(one of those fish|fish|a fish|1 of those fish) (that|) you can not stop looking at, first (one|fish) "
            "(you|i) (see|look at|notice|saw|noticed) (in (the|that) (tub|bowl|pond|net)|)",
        },
    ),
    Spoken(
        "interest",
        alone={
            "at least striking": "(pattern|design|markings|) (is|are|) (quite|completely|totally|) unlike (anything|"
            "any other|all the others|anything else) (else|) (we have (got|)|in the (tub|batch|lot)|i have seen|here|"
            "), (i|we|) (have|) never (ever|) seen (a|any|) (pattern|design|marking|one|anything) (quite|at all|) "
            "(like|as) (that|this|it) (1|) (before|in my life|)",
            "is plain": "(there is|) not (a lot|much|a great deal|anything) (going on|happening) (with|in) the "
            "(pattern|design|markings), (pattern|design) (does not|fails to) (say|do) (much|anything|a lot) (for me|to "
            "me|)",
            "at least marked": "(very|really|ever so|such a|rather|quite|awfully|) (pretty|attractive|handsome|charming|"
            "appealing|cute) little (fish|thing|1|koi|girl|lady|lad|chap|kohaku)",
        },
    ),
)
"""What is said of the frame, the parts and the manner of a fish."""
