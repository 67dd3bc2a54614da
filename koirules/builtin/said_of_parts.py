"""How sorters speak of mouth, barbels, gill covers, eyes, fins, scales and old wounds. Common practice, from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.praise import LACKING, NOT_BAD, short_of

_MISSING = "(missing|gone|lost|off|come off|absent|torn off|broken off|broken|knocked off|rubbed off|not there)"
_BARBEL = "(barbel|whisker|feeler)"
_ONE_BARBEL = f"(|left|right) (|front|rear|back|lower|upper|corner) (|left|right) {_BARBEL}"
_LACKS = "(missing|lost|lacks|lacking|down|minus|has lost|is missing)"
_GILL = "(gill cover|gill plate|gill|operculum|gill lid|gill flap)"
_GILL_FAULT = (
    "(|too|a bit|slightly) "
    "(short|curled|bent|folded|missing|gone|bad|faulty|deformed|malformed|misshapen|open|damaged|rolled|"
    "notched|exposed|showing|crooked|warped|incomplete|stunted|lifted|wrong|curling|curls|curls "
    "out|curls outward|curled outward|curls outwards|curled outwards|turned up at the edge|does not close "
    "properly|curls up|curls over|curls in|curled out|curled up|curled over|curled in|rolled in|rolled up|turned "
    "out|turned in|turned up|turns out|turns in|bent out|bent in|sticks out|stands out|stands open|stands "
    "off|sticking out|standing out|standing open|has a notch|has a hole|not right|does not close|does not "
    "cover|does not shut|not closing|missing a piece|curled at the edge|curled at the back edge|curls at "
    "the edge|is missing a piece)"
)
_EYE = "(eye|eyeball)"
_FILMED = (
    "(|gone|gone a bit|going|a bit|slightly|all) (cloudy|milky|clouded|clouded over|grey|dim|filmed|filmed over|fogged|"
    "hazy|misty|opaque|dull|dull and cloudy|not clear|has a film|has a haze|with a film|with a haze)"
)
_FILM = (
    "(|a|white|milky|grey|bit of a) (film|haze|cloud|cataract|clouding|cloudiness|milkiness|veil|milky film|white film|"
    "slight film)"
)
_BLIND = "(|is) (missing|gone|blind|lost|dead|damaged|not there|no use|no good)"
_FIN_FAULT = "(deformed|malformed|crooked|twisted|stunted|missing|half missing|misshapen|wonky|curled|out of joint|"
_FIN_FAULT += "grown crooked|not right|is a stump)"
_BENT = "(bent|kinked|short|too short|folded|shorter|half length|smaller)"
_HALF = (
    "(half as (long|big) (|as the (other|left|right) (|1|fin))|(half|only half) (the|) (length|size) (|of the "
    "(other|left|right) "
    "(|1|fin))|half length|half size|(shorter|smaller) than the (other|left|right) (|1|fin))"
)
_TORN = "(torn|split|nicked|frayed|ragged|damaged|nipped|bitten)"
_WHICH = "(upper|lower|top|bottom)"
_PEC = "(pectoral|pec|chest fin|breast fin|front fin|side fin|pectoral fin|pec fin)"
_FINS = {
    "left_pectoral": f"(left {_PEC}|{_PEC} on the left|{_PEC} left)",
    "right_pectoral": f"(right {_PEC}|{_PEC} on the right|{_PEC} right)",
    "dorsal": "(dorsal|dorsal fin|back fin|top fin)",
    "tail": "(tail fin|caudal fin|caudal|tail lobe|(upper|lower|top|bottom|1|1 of the) (|tail) lobe (|of the "
    "tail)|lobe of the tail)",
    "pelvic": "(|left|right|1|1 of the|both) (pelvic|ventral|pelvic fin|ventral fin|belly fin) (|on the left|on the "
    "right)",
    "anal": "(anal fin|anal)",
}


def _of_a_side(nouns: str, side: str, faults: str) -> str:
    """What is said of something that is wrong on one side: `left gill plate curled`, `gill plate on the left is curled`."""
    return (
        f"{side} {nouns} {faults}, {nouns} (|on) {side} (|side) {faults}, {nouns} {faults} (|on) {side} (|side), "
        f"{faults} (|on) {side} (|side) {nouns}, {faults} {nouns} (|on) {side} (|side)"
    )


def _of_a_fin(fin: str) -> str:
    """What says that a fin is malformed."""
    words = _FINS[fin]
    faults = "(bent|kinked|short)" if fin == "dorsal" else _BENT
    ray = "(|ray|fin ray)" if fin == "dorsal" else ""
    base = "(|at the base|at the joint|at the root|at its base)"
    said = f"{words} {ray} {_FIN_FAULT} {base}, {_FIN_FAULT} {words}, {words} {faults} {base}, {faults} {words}"
    if fin.endswith("pectoral"):
        other = "left" if fin.startswith("right") else "right"
        said += f", {words} (shorter|smaller) than the (other|{other}) (|one), no {words}"
        said += f", {words} (sticks out|does not open|has a bent ray)"
    if fin == "dorsal":
        said += ", no dorsal, dorsal rays (|are|all) (bunched|all bunched|crooked|missing|bunched up|stuck together)"
    if fin == "tail":
        said += ", (tail|tail fin|tail lobes|lobes of the tail|lobes) (deformed|malformed|lopsided), "
        said += "(tail lobes|lobes of the tail|lobes) (uneven|not even|not the same|different), deformed tail"
    return said


SAID_OF_PARTS: tuple[Saying, ...] = (
    Spoken(
        "mouth",
        "mouth, jaw, lips form, lower jaw, upper jaw, 口",
        anywhere=True,
        levels={
            "malformed": "(hanging|hangs|stays|stuck) open, (deformed|bent|crooked|twisted) (on|to) (the|) (left|right), "
            "malformed, deformed, bent, crooked, twisted, off, bad, undershot, overshot, wrong, stuck, "
            "not straight, out of shape, odd, funny, strange, skewed, weird, wonky, lopsided, broken, torn, "
            "damaged, stuck open, out, skew, (to|off to|pulls to|pulled to|hangs to|sits to|goes to|bent to|twisted "
            "to|pulls|drawn to) (one side|1 side|the left|the right|left|right), (does|do) not (close|shut), open "
            "all the time, hangs open, not right, not closing, crooked as anything, deformity, fault, can not "
            "close, will not (close|shut), askew, too short, short",
            "slight": "(slightly|a touch|a hair|a fraction|a shade|just) "
            "(off|crooked|bent|twisted|skewed|skew|wonky|to one side|to the left|to the right), a (bit|little) "
            "(off|crooked|twisted|bent|wonky|to one side|to the left|to the right), not (quite|entirely|perfectly) "
            "straight, (pulls|drawn|hangs|goes) (|slightly) to (the left|the right|one side|left|right) a "
            "(touch|bit|little|fraction|hair), (pulls|drawn|hangs|goes) (slightly|a touch|a bit|a little) to (the "
            "left|the right|one side|left|right)",
            "good": "good, straight, fine, sound, normal, ok, closes well, closes, closes properly, all right, in "
            "order, perfect, nice, clean and straight, okay, shuts",
        },
        alone={
            "is malformed": "(crooked|bent|wonky|twisted|skew|torn) (mouth|jaw|lip), (undershot|overshot) (|jaw), "
            "(underbite|overbite), lip torn, can not (close|shut) (its|the|her|his) mouth, something wrong with the "
            "mouth, (upper|lower|top|bottom) lip (missing|short|torn|split), lip split, (lower|bottom) jaw "
            "(sticks|sticking) out, hook jaw, pulls to the (left|right) when (she|he|it) "
            "(gulps|breathes|eats), (short|shortened) (lower|upper) jaw, 口曲がり",
            "is slight": "slight (pull|twist|kink) (in|of|to) the mouth, (slightly|a bit|a touch) off in the mouth, "
            "slightly crooked mouth",
            "is good": "nothing wrong with the (mouth|jaw)",
        },
    ),
    Spoken(
        "barbels_missing",
        f"{_ONE_BARBEL} (|is|are) {_MISSING}, (missing|lost|broken) {_ONE_BARBEL}",
        anywhere=True,
        alone={
            "is 0": f"(all|all 4|all the|both) (|its|pairs of) {_BARBEL} (|complete|there|present|all "
            f"there|good|fine), {_BARBEL} (|are|all|all 4|both|all of them) "
            f"(complete|there|present|good|fine|ok|okay|whole|intact|in order), no {_BARBEL} missing, 4 {_BARBEL}, "
            f"(has|got) all (its|4|four) {_BARBEL}, none of the {_BARBEL} missing",
            "is 1": f"{_LACKS} 1 {_BARBEL} (|on the left|on the right), 1 {_BARBEL} {_MISSING} (|on the left|on the "
            f"right), 1 {_BARBEL} short, (|only|just) 3 {_BARBEL} (|left), 1 {_BARBEL} down",
            "is 2": f"{_LACKS} 2 {_BARBEL}, 2 {_BARBEL} {_MISSING}, (only|just) 2 {_BARBEL} (|left), both "
            f"(left|right) {_BARBEL} {_MISSING}, (both|2) {_BARBEL} {_MISSING} on (the|) (left|right)",
            "is 3": f"{_LACKS} 3 {_BARBEL}, (only|just) 1 {_BARBEL} (|left)",
            "at least 1": f"{_BARBEL} not (complete|all there), {_LACKS} (a|) {_BARBEL}, no {_BARBEL} on the "
            f"(left|right), no (left|right) {_BARBEL}, (not all|not all the) {_BARBEL} (|are) there",
        },
    ),
    Spoken(
        "gill_cover_faults",
        "faulty gill cover, bad gill cover, gill (cover|plate|) (fault|deformity|deformation|problem), deformed gill",
        anywhere=True,
        alone={
            **{
                f"includes {side}_gill": _of_a_side(_GILL, side, _GILL_FAULT)
                + f", (hole|notch|piece missing) (in|from|of) the {side} {_GILL}, {side} {_GILL} (hole|notch)"
                for side in ("left", "right")
            },
            "count is 1": f"(1|1 of the) {_GILL} {_GILL_FAULT}, 1 {_GILL_FAULT} {_GILL}, {_GILL} {_GILL_FAULT} on "
            f"(one|1) side, (one|1) side {_GILL} {_GILL_FAULT}",
            "count at least 1": f"{_GILL} (|is|are) {_GILL_FAULT}, {_GILL_FAULT} {_GILL}",
            "is (left_gill, right_gill)": f"both {_GILL} (|are) {_GILL_FAULT}, {_GILL} {_GILL_FAULT} on both sides, "
            f"{_GILL_FAULT} {_GILL} on both sides",
            "is none": f"(|both) {_GILL} (|are|all) (fine|good|ok|okay|sound|whole|in "
            "order|straight|complete|all right|lie flat|close well|close properly|perfect|intact|flat), no "
            f"{_GILL} (fault|faults|problem), nothing wrong with the {_GILL}",
        },
    ),
    Spoken(
        "eye_film",
        "film on the eye, eye film, film over the eye, cataract, cataracts",
        anywhere=True,
        alone={
            **{
                f"includes {side}_eye": _of_a_side(_EYE, side, _FILMED)
                + f", {_FILM} (on|over|in) (the|its|) {side} {_EYE}, {side} {_EYE} (|has|got) {_FILM}, cloudy in the "
                f"{side} {_EYE}, {_FILMED} in the {side} {_EYE}"
                for side in ("left", "right")
            },
            "count is 1": f"1 {_EYE} (|is) {_FILMED}, 1 {_FILMED} {_EYE}, {_FILM} (on|over|in) 1 {_EYE}, 1 {_EYE} "
            f"(|has|got) {_FILM}",
            "is (left_eye, right_eye)": f"both {_EYE} (|are) {_FILMED}, {_FILM} (on|over|in) both {_EYE}",
        },
    ),
    Spoken(
        "eye_clarity",
        "eyes, eye, clarity of the eyes",
        levels={
            "cloudy": "cloudy, dim, milky, dull, clouded, clouded over, hazy, misty, not clear, gone (cloudy|milky)",
            "fair": "fair, so so",
            "clear": "clear, bright, good, clean, shiny, sound, fine, ok, okay, bright and clear, clear and bright, "
            "all right, perfect",
        },
        alone={
            "is clear": "(clear|bright) eyes, (bright|clear) eyed, eyes (sparkle|healthy|spotless), "
            "(good|nice|lovely) (bright|clear) eyes, both eyes (|are) "
            "(clear|good|fine|ok|bright|sound|perfect|bright and clear), nothing wrong with the eyes, eyes (both|) "
            "(fine|good|clear)",
            "is cloudy": "cloudy eyes, eyes cloudy",
        },
    ),
    Spoken(
        "eyes_missing",
        f"eye (missing|gone|lost|blind), (missing|blind|lost) {_EYE}, {_LACKS} an eye, lost its eye, blind",
        alone={
            **{
                f"includes {side}_eye": _of_a_side(_EYE, side, _BLIND)
                + f", blind (in|on) (|the|its|her|his) {side} (|side|{_EYE}), no {side} {_EYE}, {_LACKS} "
                f"(|its|the|her|his) {side} {_EYE}, (does not|can not) see (|anything) (on|with) (the|its) {side} "
                f"(|side|{_EYE}), (has not got|without) a {side} {_EYE}, {side} (|{_EYE}) socket empty, no sight "
                f"(in|on) the {side} (|side|{_EYE}), can not see (out of|from|with) the {side} {_EYE}, nothing where "
                f"the {side} {_EYE} (was|should be)"
                for side in ("left", "right")
            },
            "count is 1": f"(1|1 of the|an) {_EYE} {_BLIND}, (1|one) eyed (|fish), (|has|got) only 1 {_EYE}, blind "
            f"(in|on) 1 ({_EYE}|side), {_LACKS} 1 {_EYE}",
            "is (left_eye, right_eye)": f"both {_EYE} {_BLIND}, blind (in|on) both ({_EYE}|sides), "
            "(stone|completely|totally) blind, blind as a bat",
        },
    ),
    Spoken(
        "fin_faults",
        "malformed fin, deformed fin, fin (|is) (malformed|deformed|kinked|missing|fault|bent|crooked), "
        "(kinked|missing|bent|crooked) fin, missing a fin",
        anywhere=True,
        alone={
            **{f"includes {fin}": _of_a_fin(fin) for fin in _FINS},
            "count at least 1": f"1 (of the|) {_PEC} (|is|a bit) "
            "(short|shorter|smaller|bent|crooked|deformed|malformed|missing|stunted|kinked) (|than the other|than "
            f"the other one), {_PEC} (uneven|not the same size|not the same length|not even|not equal|different), 1 "
            "fin (deformed|malformed|crooked|short|missing|bent)",
        },
    ),
    Spoken(
        "fin_damage",
        "(damaged|split|frayed|torn|ragged|nipped|broken|bitten|nicked|nibbled|ripped|worn) fin, fin (|is|are|a "
        "bit) (split|torn|frayed|damaged|nipped|ragged|bitten|nicked|nibbled|ripped|broken|worn), fin damage, "
        "(tear|split|nick|rip|bite) in (a|one|1) fin",
        anywhere=True,
        beside="(|bit|little|small|clean|bad|nasty|big|slight|old) "
        "(split|tear|nick|rip|notch|nip|hole|slit|damage|fray), split, torn, frayed, ragged, nipped, nicked, "
        "damaged, ripped, bitten, chewed, nibbled, broken, worn, notched, frayed edge, edge frayed, "
        "(|first|front|1|2|3) ray (broken|split|snapped), broken ray, (|small|little) (piece|bit|bite|chunk) (out "
        "of|missing from|off|gone from), missing a piece, has a piece missing, piece missing, "
        "(split|frayed|torn|ragged|nicked|worn) (at|on|along|up|round) (the|) "
        "(tip|edge|edges|end|ends|back|front|middle|top|bottom), (nick|nip|bite|bit|piece|chunk|notch) out "
        "of, (split|torn) down the middle, (nipped|nicked|frayed|ragged) at the (back|edge|tip|end), edge "
        "(ragged|frayed|torn|nipped), (a couple of|a few|two|2|several) (splits|tears|nicks), "
        "(split|broken|bent) ray, (|has) lost its tip, (split|torn|nicked) in (2|two|several|a few|places) "
        "(|places), (a|small|slight|little|) (tear|split|rip|nick) (along|up|down|on|off), (tear|split|nick|rip) at "
        "the (back|front|top|tip|edge|base) of, front ray, tip (missing|broken|gone|frayed|split), tips "
        "(worn|frayed), split end, split (1|2|3|4) rays in, (1|2|3|4) rays (split|broken), damage to, torn on both "
        "sides",
        alone={
            "is none": "fins (|are|all|all of them) (whole|good|intact|perfect|sound|fine), all fins "
            "(whole|sound|good|intact|fine|perfect), no (|fin) damage (|to the fins|on the fins), fins in good "
            "(shape|order|nick|condition), nothing torn, no (splits|tears|torn fins|split fins) (|in the fins|in "
            "any fin|anywhere)",
            "includes dorsal": "(first|front) (|dorsal) ray (broken|split|snapped)",
            "includes tail": "(upper|lower|top|bottom) (|half) of the tail "
            "(split|torn|nicked|frayed|ragged|damaged|nipped), (upper|lower|top|bottom) tail "
            "(split|torn|nicked|frayed), (upper|lower|top|bottom) lobe "
            "(split|torn|nicked|frayed|ragged|damaged|nipped), (split|tear|nick) in the (upper|lower|top|bottom) "
            "lobe",
        },
    ),
    Spoken(
        "pectoral_size",
        f"(|pair of) {_PEC}, te, pectoral size, paddles, 胸鰭",
        levels={
            "small": "small round, skimpy, undersized, small pointed, short stubby, mean, (small|short) for (its|the) "
            "body, small, short, pointed, "
            "little, tiny, narrow, poor, stubby, mean little, too small, on the small side, rather short, too "
            "short, 小さい",
            "fair": "fair, average, medium, ordinary, ok, okay, normal, so so, usual",
            "at least fair": f"{NOT_BAD}, all right, alright, decent",
            "large": "wide and round, big and wide, large, big, rounded, broad, wide, good, long, great, huge, nice big, "
            "round, big round, big "
            "and round, well rounded, nice and big, good sized, (|a) good size, well developed, long rounded, "
            "impressive, lovely big, generous, oversized, nice, lovely, fine, like (paddles|fans|dinner "
            "plates|plates|wings), big and rounded, large and rounded, excellent, superb, 大きい",
        },
        alone={
            "is large": "(|nice|lovely|great|good) (big|large|huge) fins, fins (|are|nice and) (big|large), big "
            "paddles",
            "is small": "(|too|rather) (small|tiny|little) fins, fins (|are|a bit|too) (small|tiny)",
            "at most fair": f"{_PEC} could be (|a bit) (bigger|larger|longer|rounder|broader), not much in the way "
            f"of {_PEC}, {_PEC} could do with being (bigger|larger), could do with (bigger|larger) {_PEC}",
        },
    ),
    Spoken(
        "dorsal_fin",
        "dorsal, dorsal fin, back fin, top fin, 背鰭",
        levels={
            "folded": "flopped over, droopy, laid over, down all the time, not standing, (bends|folds|hangs|flops|flopped|"
            "lies) (|over|down) (|to (one side|the "
            "left|the right|left|right)), folded, folded over, bent over, lying over, flat, drooping, down, "
            "collapsed, lies (over|flat), droops, hangs over, flops, flops over, floppy, leans, leans over, "
            "leaning, leans to (one side|the left|the right), clamped, held down, falls over, tipped over, tips "
            "over, lying flat, lying down, laid flat, not up, does not stand (|up), does not come up, will not "
            "stand (|up), never comes up, never up, keeps (|its) (down|flat)",
            "fair": "fair, average, so so, half up, a bit low, low, middling",
            "upright": "big upright, good and high, upright, up, good, standing, erect, straight, stands up, stands, stands "
            "(up|) like a sail, "
            "like a sail, standing up, well up, held up, held high, high, tall, proud, stands proud, stands "
            "(nicely|straight|well|tall), nice and upright, straight up, nice, fine, ok, holds (|its) up, carries "
            "(|its) high",
        },
        alone={
            "is upright": "(holds|carries|keeps) (its|the|her|his) (dorsal|dorsal fin|back fin) (up|high|upright|well), "
            "(dorsal|dorsal fin) (always|well|never down) up",
            "is folded": "(holds|carries|keeps) (its|the|her|his) (dorsal|dorsal fin|back fin) (down|flat|folded|low), never "
            "(raises|lifts|puts up) its dorsal",
        },
    ),
    Spoken(
        "scale_loss",
        "(|single) scale (|has|have|is|are|was|been) (missing|gone|lost|off|come off|lifted off|knocked off|torn "
        "off|torn out|rubbed off|scraped off|not there), (missing|lost) scale, bare spot, bald spot, bald patch, "
        "bare patch",
        anywhere=True,
        alone={
            "at least 1": f"{_LACKS} (a|) scale, got a scale off, (has|with) a scale off",
            "at least 2": "(some|a few|several|few|many|lots of|a number of|a row of|a patch of|a handful of) "
            f"(scales {_MISSING}|missing scales|lost scales), {_LACKS} (some|a few|several|many|lots of) scales",
            "is 1 to 2": f"(a|) scale or (two|2) (|is|are) {_MISSING}, {_LACKS} a scale or (two|2)",
            "is 2 to 3": f"{_LACKS} (a couple of|couple of|2 or 3) scales",
            "is 1": f"{_LACKS} 1 scale, 1 scale (short|down)",
            "is 2": f"{_LACKS} 2 scales",
            "is 3": f"{_LACKS} 3 scales",
            "is 4": f"{_LACKS} 4 scales",
            "is 5": f"{_LACKS} 5 scales",
            "is 0": "scales (|are|all) (all there|complete|whole|intact|all present), no (missing|lost) scales, no "
            "scales (missing|gone|lost|off), (all|all the) scales (|are) there, not a scale (missing|out of "
            "place|gone), scaling complete, no bare spots, (full|complete) set of scales",
        },
    ),
    Spoken(
        "scars",
        "(|old|bite|heron|net) (scar|scarring) (|behind|near|by|under|below|down|along|from) (|the|a) (|gill|"
        "dorsal|eye|tail|heron|bird|net|side|flank|belly|fin), old (heron|bite|net) (wound|mark), healed "
        "bite, (|old|little|small|healed|faint|big|long) (scratch that healed|scar|scarring|scar tissue|"
        "wound that "
        "healed), (|old) healed (wound|cut|scrape|sore|injury|scratch|knock|ulcer), mark of an old (wound|injury), "
        "(ulcer|sore|wound|cut|injury) (|is|has|all|nicely) (|now) healed (|up|over|well), "
        "dent, old (wound|injury|knock|damage|mark), scarred, 傷",
        anywhere=True,
        alone={
            "is none": "no (|old) (scar|scars|scarring) (|anywhere|at all), no old wounds, not a scar (|on "
            "it|anywhere), free of scars, without scars, unscarred"
        },
    ),
    Spoken(
        "fin_faults",
        alone={
            **{f"includes {fin}": f"{_FINS[fin]} {_HALF}" for fin in ("left_pectoral", "right_pectoral", "pelvic")},
            "count at least 1": f"1 {_PEC} {_HALF}",
        },
    ),
    Spoken(
        "fin_damage",
        alone={
            "includes tail": f"(tail|tail fin|caudal) {_TORN} (|at the|on the|in the) {_WHICH} "
            f"(lobe|end|half|tip|edge), tail "
            f"(tip|tips|edge) (|is|are) ({_TORN}|missing), tail fin {_WHICH} (lobe|end) {_TORN}"
        },
    ),
    Spoken(
        "gill_cover_faults",
        alone={
            f"includes {side}_gill": f"({_GILL} on the {side}|{side} {_GILL}) (curls|curled|bent|rolled|turned|turns) "
            "(out|up|in|over) at the (back|rear|lower|front|bottom|top) edge"
            for side in ("left", "right")
        },
    ),
    Spoken(
        "eye_film",
        alone={f"includes {side}_eye": f"{_EYE} on the {side} (has|got|with) {_FILM}" for side in ("left", "right")},
    ),
    Spoken(
        "body_symmetry",
        alone={
            "is poor": "(belly|side|flank) (sticks out|bulges|pushes out|is fatter|is thicker|is bigger) on (one "
            "side|1 side|the "
            "left|the right)",
            "at most fair": "(side|sides|body) not even (when|) (seen|looked at) from (above|on top|the top)",
        },
    ),
    Spoken(
        "build",
        alone={
            "is thick_front": "(thick|fat|heavy|broad|big) in front and (thin|slim|weak|narrow) (behind|at the back|at the "
            "tail|in "
            "the tail)"
        },
    ),
    Spoken(
        "tail_stem",
        alone={
            "is strong": "(thick|strong|stout) (before|in front of) the tail, (tail base|tail root|tail joint) (as thick as "
            "(a|my) "
            "thumb|thick|strong)"
        },
    ),
    Spoken(
        "build",
        alone={
            "is heavy": "(body (is|)|) (short|round|fat) (and (fat|round|thick)|) like a (ball|barrel|balloon|football), body "
            "(is|) (short|round|fat) like (ball|barrel|balloon), (jumbo|huge|massive|giant) (bone|bones|frame)",
            "is torpedo": "(shape|body|built) (is|) like (a|) (torpedo|cigar|spindle|bullet)",
            "is slim": "(body (is|)|) (slim|thin|slender|lean) as an eel, (body (is|)|) (a bit|a little bit|little bit|bit|"
            "slightly|rather|) (thin|slim|slender|lean) but long, long (fish|body|one) and (thin|slim|slender|lean)",
        },
    ),
    SpokenTogether("(fat|plump|stout|chubby) (and|but) healthy", "build is heavy and health is well"),
    Spoken(
        "size_by_eye",
        alone={
            "is big": "(big|great big|huge|massive) (ugly|old|fat|lovely|handsome|heavy|) (brute|beast|monster)",
            "is small": "(a bit|a little|slightly|rather|somewhat|) on the (small|little) side",
            "is usual": "(middle|medium|average|middling) (size|sized|length)",
        },
    ),
    Spoken(
        "shoulders",
        alone={"is strong": "(just|) look at (those|the|these) shoulders, what (a pair of|) shoulders"},
    ),
    Spoken(
        "spine",
        alone={
            "is bent": "(back|spine|body) (goes|go|runs|turns) (left then right|right then left)",
            "at most slight": "(a|) (wobble|wave) in the (spine|backbone|back line)",
        },
    ),
    Spoken("tail_stem", "odutsu"),
    Spoken(
        "barbels_missing",
        alone={
            "is 1": "(beard|barbel|whisker) (is|) missing 1, 1 (beard|barbel|whisker) (is|) (away|gone|off|missing)"
        },
    ),
    Spoken("scale_loss", alone={"is 1": "1 scale (is|) (away|gone|lost|off)"}),
    Spoken("eye_clarity", alone={"is cloudy": "(eye|eyes) (is|are|) (white|milky|grey) (like milk|as milk)"}),
    Spoken("pectoral_size", alone={"is small": "(fin front|fins front|front fin) (is|are|) (too|) small"}),
    Spoken(
        "health",
        alone={
            "at most doubtful": "(fin|all fin) (is|are|) (close|tight|flat) (to|on|against) (the|its|her|his|) body, "
            "(stays|stay|lies|lie|sits) down and (does not|do not) move, (stays|stay|lies|lie|sits) (down|on the bottom|"
            "at the bottom) (and|) (does|do) not move"
        },
    ),
    Spoken("swimming", alone={"is off": "(floats|floating|rides|riding) (a bit|a little|too|) high (in the water|)"}),
    Spoken(
        "body_symmetry",
        alone={"at most fair": "belly (goes|go|comes) out (on|to|) (1|the left|the right) side"},
    ),
    Spoken("belly_shape", alone={"at most full": "belly (is|) (much|far|) (too full|overfull|over full)"}),
    Spoken(
        "head_shape",
        alone={"at most fair": "head (is|) (too|much too|far too) (big|large) body (is|) too (small|little)"},
    ),
    # ---- Mouth and barbels
    Spoken(
        "mouth",
        "kuchi, lips, gape, jaws, mouth shape, shape of the mouth, jaw line, 口元",
        apart=True,
        levels={
            "malformed": "magari, crooked, bent, twisted, malformed, deformed, skew, askew, lopsided, open, stuck, torn, "
            "undershot, overshot, wonky, to one side, off centre, off to (the|) (left|right|one side)",
            "good": "straight, closed, closing, closes, shut, shuts",
        },
    ),
    Spoken(
        "mouth",
        levels={
            "malformed": "magari, off centre, (goes|runs|turns|points|sits|hangs|leans|pulled|sits off|is off|off) (off|) "
            "(to|) (the|) (left|right|one side|1 side), (hangs|stays|always|stands|stuck|standing|a bit|is|) open, does not "
            "close (well|properly|fully|all the way|), not closed, not centred, not even, to (the|) (left|right), uneven, "
            "on one side, injured, hurt, ripped, hooked, like a (hook|parrot), sticks out, stuck out, does not (open|work|"
            "fit|meet|line up), injury, poor, ugly",
            "slight": "not (quite|entirely|perfectly|completely|exactly) (right|straight|centred|even|closed), (almost|nearly) "
            "straight, a (hair|touch|bit|fraction|shade|tad) (off|out|to one side|to the left|to the right|crooked|open), "
            "slightly (off|out|open|off centre|uneven), doubtful, suspicious, out a touch",
            "good": "closed, shut, closing, closes tight, shuts well, shuts tight, in line, centred, even, complete, "
            "healthy, whole, neat, as it should be, without fault, not bent, not crooked, undamaged, clean",
        },
        alone={
            "is malformed": "(oh dear|) what (is|has) happened to (your|its|her|his|the) (mouth|jaw|lip), (kuchi magari|"
            "kuchimagari), (mouth|jaw) (is|) (about|) (1|2|3|4|5) mm (off|off centre|to the (left|right|side)), (lower|"
            "upper|bottom|top) (jaw|lip) (too|is|is too|) (short|long|bent|crooked|missing|shorter|longer|pushed in), (lip|"
            "lips) (is|are|) (torn|split|damaged|missing|ripped|bent|crooked), (torn|damaged|split) (lip|lips|jaw), (hook|"
            "net|old) (damage|injury) (to|on|at) the (mouth|lip|jaw), (mouth|jaw) (injury|damage|deformity|fault), parrot "
            "(mouth|beak|jaw), (can not|does not|will not|unable to) (close|shut) (its|her|his|the) mouth (properly|fully|"
            "completely|)",
            "is good": "no (fault|faults|damage|problem) (at|on|with|in) the mouth, mouth (has no|without) (fault|damage|"
            "kink|twist)",
        },
    ),
    Spoken(
        "barbels_missing",
        anywhere=True,
        alone={
            "is 0": f"(all|every) (of the|) {_BARBEL} (is|are|) (there|on|present|ok|fine|complete), {_BARBEL} (is|are|) "
            "(present|right|nice|long|all right|all present|all there and straight|undamaged|not missing|complete on both "
            "sides), hige (ok|good|complete|all there)",
            "is 1": f"1 {_BARBEL} (is|) (too|) {_MISSING} (at the (left|right|front|rear)|on the (left|right)|), (left|"
            f"right) {_BARBEL} (is|) {_MISSING}, (no|without|has no) (front left|front right|rear left|rear right) "
            f"{_BARBEL}, 1 (less|fewer) {_BARBEL}, {_BARBEL} (is|) {_MISSING} on the (left|right)",
        },
    ),
    # ---- Gill covers
    Spoken(
        "gill_cover_faults",
        alone={
            **{
                f"includes {side}_gill": f"{side} {_GILL} (is|a bit|) (too|very|slightly|a touch|) (short|curled|open|lifted|"
                "bent|folded|flared|loose|gaping|standing off|standing open|sticking out|up|not shut|not closed|not flat|"
                "not tight) (by (1|2|3|4|a few) mm|(1|2|3|4) mm|at the (edge|bottom|top|back|rear)|at the (bottom|top|rear|"
                f"lower|upper) edge|), {_GILL} (on the|at the) {side} (is|a bit|) (too|very|slightly|a touch|) (short|curled|"
                "open|lifted|bent|folded|flared|loose|gaping|not shut|not closed|not flat) (at the (edge|bottom|top)|), you "
                f"(can|) see (the|) (pink|red|gill|gills|flesh|inside) (of the gill|under it|) on the {side}, (see|seeing) "
                f"(the|into the|) (gill|gills|pink|inside) on the {side}, {side} {_GILL} (does not|not) (close|cover|reach|"
                "fit|shut|lie flat) (fully|completely|properly|), (curl|bend|fold|notch|kink|gap|dent) (in|at|on|"
                f"under) the {side} {_GILL}, {side} (side|) {_GILL} (has|with|got) a (curl|bend|fold|notch|kink|gap|dent)"
                for side in ("left", "right")
            },
            "count at least 1": f"{_GILL} (is|a bit|) (too|very|slightly|a touch|) (lifted|flared|loose|gaping|"
            "standing off|sticking out|not shut|not closed|not flat|not tight), you can see (the pink|the gill|the gills|"
            "the flesh|into the gill|into the gills|red under the gill), (gill|gills) (visible|shows|exposed|showing|to be "
            f"seen), {_GILL} (does not|not) (close|cover|reach|fit|lie flat) (fully|completely|properly|), era magari, "
            f"(something|not|) (wrong|right) with (the|1|a) {_GILL}, (curl|bend|fold|notch|kink) (in|at|on) (the|a|1) "
            f"{_GILL}, (short|curled|open) (gilled|at the gill)",
            "is none": f"(both|all|) {_GILL} (is|are|both|) (closed|shut|tight|even|clean|normal|healthy|right|fit|fits well|"
            "closes|lie flat|flat and even|in place|undamaged|without fault|nice and flat|well shaped|smooth|present), "
            f"(flat|good|sound|straight|tight|closed|fine|normal|healthy) {_GILL}, (nothing|not a thing) wrong (at|on|with|"
            f"about) the {_GILL}",
        },
    ),
    # ---- Eyes
    Spoken(
        "eye_film",
        alone={
            **{
                f"includes {side}_eye": f"{side} {_EYE} (is|has gone|looks|) (white|whitish|a bit white|slightly white|all "
                "white|white over|with a white (spot|dot|cast|ring)|a bit (grey|cloudy|milky|dull|hazy)), (white|grey|milky|"
                f"whitish|cloudy) (spot|dot|bit|patch|something|stuff|skin) (on|in|over) (the|its|her|his|) {side} {_EYE}, "
                f"{_EYE} (white|cloudy|milky|grey) (on the|at the|) {side}, (bad|sick|dim|foggy) {side} {_EYE}, {side} "
                f"{_EYE} (is|) (bad|sick|foggy|blurred|infected)"
                for side in ("left", "right")
            },
            "count is 1": f"1 {_EYE} (is|) (white|a bit white|whitish|foggy|blurred), 1 (white|milky|cloudy|foggy) {_EYE}, "
            f"{_EYE} (1|one) side cloudy",
        },
    ),
    Spoken(
        "eye_clarity",
        "me, 目, pupils, both eyes",
        apart=True,
        levels={
            "cloudy": "cloudy, milky, dull, foggy, clouded, hazy, dim",
            "clear": "clear, bright, shiny, clean, fine, good, ok",
        },
    ),
    Spoken(
        "eye_clarity",
        levels={
            "cloudy": "foggy, blurred, a bit (cloudy|dull|milky|hazy|dim), white, whitish, matt, glazed, glassy, blind looking",
            "clear": "sparkling, normal, healthy, lively, alert, in order, perfect both, black and bright, both clear, both "
            "good, both fine, nice, nice and clear, nice and bright, undamaged, both there",
        },
        alone={
            "is clear": "eyes (are|) (both|all|) (there|normal|healthy|in order|undamaged|nice), (bright|clear|lively|alert|"
            "good|healthy) (little|) (eyes|eyed|look), both eyes (are|) (there|healthy|clear and bright|normal|in order), "
            "(no|without) (film|cataract|clouding) (on|in) (the|either|her|its) (eye|eyes)",
        },
    ),
    Spoken(
        "eyes_missing",
        alone={
            **{
                f"includes {side}_eye": f"blind (on the|) {side} (side|eye|), {side} (side|) blind, {side} {_EYE} (is|) (not "
                "there|absent|empty|sunken and blind|damaged|injured|destroyed|out|white and blind|useless), only (a|the|"
                f"has a) {'right' if side == 'left' else 'left'} {_EYE}, empty {side} (eye|eye socket|socket), {side} {_EYE} "
                "socket (is|) empty"
                for side in ("left", "right")
            },
            "count is 1": f"only 1 {_EYE} (left|there|works|), (1|one) {_EYE} (is|) (damaged|destroyed|injured|out|empty|"
            "useless), 1 eyed (fish|koi|bandit|pirate|), cyclops, pirate, an empty (eye socket|socket)",
        },
    ),
    # ---- Fins
    Spoken(
        "pectoral_size",
        "paddle, hand, side paddles, sculls, rowing fins, fins for the body, 手鰭, tebire",
        levels={
            "small": "puny, weedy, too small for the body, (small|tiny|short|little) for (the|its|her|his|that|such a) "
            "(body|size|fish|length|frame), (rather|quite|very|bit|a bit|really|on the|ever so|terribly) (small|tiny|short|"
            "little), short and (small|stubby|round|pointed), small and (round|pointed|short), undersize, like a (baby|"
            "fry), stumpy, stumps, thin, not big, not large, on the short side, childish",
            "at most fair": f"{LACKING}, {short_of('big|large|round|long|broad', 'bigger|larger|rounder|longer|broader')}, "
            "modest, nothing special, a bit pointed",
            "large": "enormous, massive, gigantic, very (big|large|broad|round|long), really (big|large), big for (the|its|"
            "her|his) (body|size), big already, large already, there already, nicely rounded, nice and (round|large|broad|"
            "long), good and (big|round|broad|long), full, full and round, spread well, well spread, wide open, like (a|) "
            "(fan|plate|paddle|dinner plate|tennis rackets|sails|oars|spades|shovels|butterfly), broad and round, long and "
            "(round|broad|rounded), strong, round and (big|large|full|broad), well shaped, in proportion, lovely and (big|"
            "round|large), splendid, magnificent, beautiful",
        },
        alone={
            "is large": "(nice|lovely|good|great|proper|real|) (big|large|huge|broad|round|massive) (paddles|hands|fins|"
            "fans) (on (it|her|him)|as well|too|already|), fins (are|) (very|really|nice and|good and|lovely and|) (big|"
            "large|huge|broad|round|long and round|generous), (big|large|good|great) (finned|finnage), finnage (is|) (big|"
            "large|good and big|generous)",
            "is small": "(tiny|small|little|short|puny|stubby) (paddles|hands|finnage), fins (are|) (very|really|rather|too|"
            "a bit|quite|) (small|tiny|short|stubby|puny|little) (for (the|its|her|his|that|such a) (body|size|fish|length|"
            "frame)|), (tiny|small|short|little|puny) fins for (the|its|her|his|that|such a) (body|size|fish|length|frame), "
            "(small|tiny|short) finned, (not much|no|hardly any) (fin|paddle|paddles|pectoral) (on it|to speak of|there|)",
        },
    ),
    Spoken(
        "dorsal_fin",
        "sebire, dorsal sail, sail, fin on the back, fin on top, back sail",
        levels={
            "folded": "(goes|falls|tips|lies|bends|hangs|leans|folds|flops|flopping) (over|down|flat|) (to (the|) (left|"
            "right|side|one side)|on one side|a bit|all the time|sideways), (always|mostly|held|kept|stays|lying|never|"
            "tucked) (down|flat|closed|folded|up straight), not (up|raised|upright|straight|erect|opened|opening), clamped "
            "down, closed, shut, tucked in, lazy, limp, weak, soft, tired, does not (open|rise|go up|stand straight|hold), "
            "does not come up (fully|properly|), a bit (floppy|limp|folded|low|down), crumpled, stays down, sagging, sags, "
            "bent to (one side|the left|the right)",
            "fair": "half (up|down|open|raised), not fully (up|open|raised|upright), not quite (up|upright|straight|right), "
            "so so, low, a bit low, up now and then, goes up and down",
            "upright": "up nicely, up well, up and straight, up all the time, always up, stays up, nice and (high|straight|"
            "tall), high and (straight|proud), complete, whole, raised, open, opens well, opens nicely, well carried, "
            "carried well, carried high, firm, strong, in order, okay, like a flag, well formed, well set, in the right "
            "place, sits right, perfect, straight and (high|tall|whole|complete), good size, full, excellent",
        },
        alone={
            "is upright": "(good|nice|fine|lovely|great|high|tall|straight|upright|proud) (little|) (dorsal|sail|back fin|"
            "dorsal fin) (on (it|her|him)|carriage|), (puts|keeps|holds|carries|has) (its|the|her|his) (dorsal|dorsal fin|"
            "back fin|sail) (up|high|upright|well|straight|proudly|nicely)",
            "is folded": "(puts|keeps|holds|carries|has|lays) (its|the|her|his) (dorsal|dorsal fin|back fin|sail) (down|"
            "flat|folded|low|closed|tucked in|clamped), (does not|will not|never) (put|raise|lift|hold|hoist|carry) (up|) "
            "(its|the|her|his) (dorsal|dorsal fin|back fin|sail) (up|), (floppy|limp|droopy|drooping|folded|clamped|flat|"
            "lazy) (dorsal|dorsal fin|back fin|sail)",
        },
    ),
    Spoken(
        "fin_faults",
        alone={
            "includes dorsal": "(dorsal|back fin|dorsal fin) (ray|rays|front ray|first ray|front rays|first rays|spine) (is|"
            "are|) (bent|crooked|kinked|missing|twisted|deformed|short|gone|wavy), (1|2|3|a|the|first|front|some|few|a few|"
            "several) (|of the) (dorsal|back fin|dorsal fin) (ray|rays) (is|are|) (bent|crooked|kinked|missing|twisted|"
            "deformed|short|gone), (bent|crooked|kinked|missing|deformed|twisted|short) (front|first|) ray (in|of|on|at) "
            "the (dorsal|back fin), (bent|crooked|kinked|missing|deformed|twisted) dorsal (ray|rays), (gap|notch) in the "
            "dorsal rays, (kink|bend) in the (back fin|dorsal fin|first dorsal ray|front dorsal ray)",
            "includes tail": "(tail|tail fin|caudal) (is|) (too|) (short|stunted|uneven|lopsided|crumpled|folded|curled|out "
            "of shape|odd|grown together|not even), (1|upper|lower|top|bottom) (tail lobe|lobe|half of the tail) (is|too|) "
            "(short|shorter|stunted|missing|curled|bent|folded|crooked|smaller|longer|thin|half missing)",
            **{
                f"includes {side}_pectoral": f"{_FINS[f'{side}_pectoral']} (is|grows|sits|set|looks|) (a bit|slightly|too|) "
                "(bent|crooked|kinked|twisted|curled|folded|deformed|stunted|malformed|short|wrong|set wrong|stuck|stiff) "
                "(at the (tip|end|base|root|joint|edge)|under|up|down|over|), (bend|kink|twist|curl|fold|crook) (in|at|on) "
                f"(the|its|her|his|) {side} {_PEC}, last (bit|part|cm) of the {side} {_PEC} (bends|curls|folds|turns) (under|"
                "up|down|over)"
                for side in ("left", "right")
            },
            "is none": "(no|not a|without) (fin|fins|) (faults|fault|deformity|malformed fin|deformed fin|bent ray|bent "
            "rays) (in|on|at) (the|any|its|) (fin|fins), all fins (straight|well formed|properly formed|formed right|in "
            "place), no (bent|crooked|deformed|missing) (fin|fins|ray|rays)",
        },
    ),
    Spoken(
        "fin_damage",
        alone={
            "includes tail": f"(tail|tail fin|caudal|tail lobe|lobe|{_WHICH} lobe|{_WHICH} tail lobe|{_WHICH} half of the "
            f"tail|tail tip|tip of the tail|tail edge|fork of the tail|{_WHICH} tail|{_WHICH} tip of the tail) (is|has been|"
            "a bit|slightly|badly|) (torn|split|nicked|frayed|ragged|damaged|nipped|bitten|ripped|worn|chewed|broken) (a "
            "bit|a little|slightly|badly|at the (tip|top|bottom|edge|end|fork|corner)|in the middle|on the (left|right)|in "
            "2 places|1 cm|0.5 cm|by 1 cm|), (torn|split|ragged|frayed|nipped|damaged) (tail lobe|lobe|tail tip|tail edge|"
            "tail fin)",
            "includes dorsal": "(dorsal|back fin|dorsal fin) (has|with|got) (a|a small|a little|) (nick|split|tear|notch|"
            "bite|cut|rip) (at|in|near|on|) (the|) (front|back|rear|top|tip|edge|middle|(1|2|3|4|5|6|first|second|third|"
            "fourth|fifth) ray|), (nick|split|tear|notch|bite|cut|rip) (at|in|near|on) the (front|back|rear|top|edge|tip) "
            "of the (dorsal|back fin)",
            "count at least 1": "(some|a bit of|bit of|slight|a little|little|a few|few|minor|small|) (fin|) (damage|tears|"
            "splits|nicks|fraying|tear|split|nick|rips|wear) (to|in|on|at) (the|a|1|1 of the|some|) (fin|fins|edges of the "
            "fins), fins (are|) (a bit|a little|slightly|rather|all|) (ragged|frayed|split|torn|nipped|worn|tatty|tattered|"
            "chewed|damaged|shabby), (ragged|frayed|split|torn|nipped|tatty|tattered|chewed|damaged|shabby) (fins|finnage|"
            "fin edges), fin edges (are|) (ragged|frayed|torn|worn|white and frayed)",
            "is none": "(all|the|) fins (are|all|) (undamaged|unhurt|untorn|healthy|complete|intact|tidy|neat|without "
            "damage|without a tear|in order|not torn|not split|not frayed), (intact|undamaged|whole|sound|healthy|tidy) "
            "(fins|finnage), finnage (is|) (good|fine|whole|intact|perfect|complete|ok|in order|undamaged)",
        },
    ),
    SpokenTogether(
        "(fins|all fins|finnage|all the fins) (is|are|) (all|) (normal|right|as they should be|fine and whole|straight and "
        "whole|perfect and complete|good and complete|there and whole), (no|not a) (problem|problems|fault) with (the|any|"
        "its|her|his|) fins",
        "fin_damage is none and fin_faults is none",
    ),
    # ---- Scales and old wounds
    Spoken(
        "scale_loss",
        "scale damage, damaged scale, scale (out|loss|knocked out), scales (out|missing), lost (a|) scale, hole in the scaling, "
        "gap in the (scales|scaling|scale row|row of scales), scaleless spot, naked spot, naked patch, raw scale",
        anywhere=True,
        alone={
            "is 0": "(all|every|each) (of the|the|its|her|his|) (scales|scale) (is|are|) (there|on|in place|in order|intact|"
            "present|whole|complete), scales (are|all|) (ok|okay|fine|good|in order|in place|undamaged|all good|all fine|"
            "perfect), (no|not a|not 1) (single|) (scale|scales) (is|are|) (missing|lost|gone|off|damaged|out) (anywhere|"
            "that i can see|), (scaling|scalation) (is|) (intact|whole|undamaged|perfect|in order), (no|without) (scale "
            "damage|scale loss|bare spots|bald spots|gaps in the scales)",
            "is 1 to 2": "(1|a) (or|maybe|perhaps) 2 (scales|scale) (is|are|) (missing|gone|lost|off)",
            "at least 2": f"(row|whole row|line|patch|bunch|strip) of scales {_MISSING}, {_LACKS} (a row|a patch|a line|a "
            "strip|a bunch|quite a few|too many) (of|) scales, scales (are|) (missing|gone|lost|off) (in several places|"
            "here and there|in places|all over), several scales (are|) (gone|missing|off|lost)",
        },
    ),
    Spoken(
        "scars",
        "old (injury|wound|sore|cut|scratch|bite|scrape) (mark|), scratch mark, healed (patch|spot|mark|area), kizu, wound "
        "(mark|scar), scar line, (old|healed) (net|heron|bird|cat|hook) (mark|injury|wound|bite|peck), peck mark, beak "
        "mark, claw mark, healed over (wound|sore|cut|ulcer), (white|pale) scar, scar tissue",
        alone={
            "is none": "(no|not a|without|free of) (scars|scar|marks or scars|injuries|injury|old wounds|old injuries|"
            "wounds) (anywhere|on it|on her|on him|at all|that i can see|to be seen|), unmarked by nets, kizu nashi",
        },
    ),
    SpokenTogether(
        "clean and no blood, clean no blood, (wound|sore|spot) (clean|dry|closed|healing) and no blood, no blood, not "
        "bleeding, does not bleed, no inflammation, (clean|dry) wound, (wound|it|spot) (is|) (clean|dry|closed|"
        "healing|not bleeding|not open), (pea|coin|lentil|pinhead|fingernail|thumbnail|match head) (size|sized) (both|each|)",
        "nothing",
    ),
)
"""What is said of the parts of a fish, and of what is wrong with them."""
