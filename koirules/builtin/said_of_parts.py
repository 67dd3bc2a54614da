"""How sorters speak of mouth, barbels, gill covers, eyes, fins, scales and old wounds. Common practice, from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.praise import NOT_BAD

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
)
"""What is said of the parts of a fish, and of what is wrong with them."""
