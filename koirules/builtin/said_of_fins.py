"""How sorters speak of fins: their size, how they are held, what is malformed or torn. Common practice, from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.praise import LACKING, NOT_BAD, short_of

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
_PEC = "(paddle|mune bire|munabire|pectoral|pec|chest fin|breast fin|front fin|side fin|pectoral fin|pec fin)"
_FINS = {
    "left_pectoral": f"(left {_PEC}|{_PEC} on the left|{_PEC} left)",
    "right_pectoral": f"(right {_PEC}|{_PEC} on the right|{_PEC} right)",
    "dorsal": "(dorsal|dorsal fin|back fin|top fin|fin on top|se bire)",
    "tail": "(tail fin|caudal fin|caudal|tail lobe|(upper|lower|top|bottom|1|1 of the) (|tail) lobe (|of the "
    "tail)|lobe of the tail)",
    "pelvic": "(|left|right|1|1 of the|both) (pelvic|ventral|pelvic fin|ventral fin|belly fin) (|on the left|on the "
    "right)",
    "anal": "(anal fin|anal|shiri bire|shiribire)",
}
_SOME_EDGE = (
    "(tip|end|corner|edge|edges|top|bottom|piece|part|bit|(back|rear|outer|front|upper|lower|top|bottom|trailing|leading) "
    "(edge|corner|tip|half|end|part))"
)
_TORN_OFF = (
    "(missing|gone|torn|split|frayed|ragged|nicked|nipped|bitten|bitten off|torn off|broken|broken off|worn|"
    "damaged|chewed|off)"
)
_BATTERED = (
    "(in the wars|through the wringer|through the mill|seen better days|taken a knock|had a knock|had a bashing|knocked "
    "about|taken a beating|in a "
    "sorry state|in rags|in tatters|in shreds|in ribbons|tatty|shabby|battered)"
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


SAID_OF_FINS: tuple[Saying, ...] = (
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
    Spoken(
        "fin_faults",
        alone={
            "count at least 1": f"({_PEC}|fin) ray (is|a|) (stub|short|missing|bent|kinked|crooked), (stub|stump) of a (pec|"
            f"pectoral|fin), (pec|pectoral|fin) (is|) (only|just|) a (stub|stump), (stunted|crooked|bent|kinked) {_PEC}, 1 "
            "fin (too|is|grows|) (short|shorter|crooked|smaller|stunted)"
        },
    ),
    Spoken(
        "fin_damage",
        alone={
            "count at least 1": "(bits|bit|pieces|piece|bites|bite|chunks|chunk) (out of|missing from|off|gone from) (the|"
            "some|its|her|a|1 of the) (fin|fins), (a few|some|several|many) (have|with|show) (bits|bites|pieces|splits|"
            "tears|nicks) (out of|in|from) (the|their) fins, (had|has had|been) a (nibble|bite) (at|of|out of) (the|its|"
            "that|a|1) (fin|fins), (fins|fin) (nibbled|chewed|bitten)",
            "includes tail": "(had|has had|has been|somebody has had|something has had|someone has had) a (nibble|bite|go) "
            "(at|of|out of) (the|its|that) tail, tail (nibbled|chewed|bitten|shredded|in shreds|in tatters)",
        },
    ),
    Spoken(
        "pectoral_size",
        levels={
            "at most fair": "pointed, pointy, narrow and pointed, a bit (pointed|pointy|narrow|short|small), not (round|"
            "rounded|big|large), thin and pointed, sharp"
        },
        alone={
            "at most fair": "(pointy|pointed|narrow) (fins|finnage), fins (are|) (a bit|rather|) (pointy|pointed|narrow)"
        },
    ),
    Spoken(
        "dorsal_fin",
        levels={
            "upright": "like a mast, up like a (mast|flag|sail), stands (up|) like a (mast|flag|fence|board), straight like "
            "a sail",
            "folded": "lies (flat|over|down) (on|to) (the|) (left|right) (side|), lies on its side, always down, never fully up",
        },
    ),
    Spoken(
        "dorsal_fin",
        after=("dorsal_fin", "fin_damage", "fin_faults"),
        alone={
            "is folded": "(does not|will not|can not|never) (stand|come|go|stay) up (fully|properly|straight|), (lies|falls|"
            "flops|folds|leans) (over|down|flat) (to the (left|right)|)"
        },
    ),
    Spoken(
        "pectoral_size",
        levels={
            "large": "like a butterfly, like butterfly wings, like wings, like a bird, like hands, like frying pans, "
            "like spades"
        },
        alone={
            "is large": "fins like (a|) (butterfly|butterfly wings|bird|wings|fans|fan|paddles|plates|sails|oars|dinner "
            "plates), (what a|that is a|look at that|look at those|what i call a|now that is what i call a|what) (|lovely|"
            f"nice|proper|real) (pair of|set of|) ({_PEC}|paddles|fins)"
        },
    ),
    Spoken(
        "fin_faults",
        anywhere=True,
        alone={
            "count at least 1": "(1|left|right|) fin in front (is|) (too|) (short|shorter|smaller|bent|crooked|missing|"
            "deformed) (than the other|than the other 1|), 1 (fin|pec|pectoral|front fin|side fin) (is|looks|) (shorter|"
            "smaller|longer|bigger) than the (other|other 1|left|right|other side), fins (uneven|not the same|not even|"
            "different|not matching|do not match), (odd|uneven) (fins|pecs|pectorals)"
        },
    ),
    Spoken(
        "fin_damage",
        anywhere=True,
        alone={
            "count at least 1": "(smidge|bit|touch|trace|hint|spot|little bit|tiny bit) of (fin damage|fraying|wear|damage) "
            "(on|at|in|to|) (the|) (fins|fin edges|edges|tips|), (fin|fins) (is|are|has|have|) (seen better days|had a bite|"
            "had a nibble|in tatters|in shreds|in a state|a mess)"
        },
    ),
    Spoken(
        "fin_damage",
        anywhere=True,
        alone={
            "includes tail": "tail (has|had|has had|with) (a|) (bit of a|little|small|) (chew|nibble|bite|knock|tear|nick|"
            "split|rip) (at|in|on|near|) (the (top|bottom|tip|edge|end)|), (a|) (small|little|big|slight|tiny|clean|) (tear|"
            "split|nick|rip|notch|bite) (in|at|on) the (tail|tail fin) (at|in|on|near) the (top|bottom|tip|edge|end|"
            "middle), (a|) (small|little|big|slight|tiny|clean|) (tear|split|nick|rip|notch|bite) (at|in|on) the (top|"
            "bottom|tip|end) of the (tail|tail fin)"
        },
    ),
    Spoken(
        "pectoral_size",
        alone={
            "at least fair": "fins (out|spread|spread out|held out|open|wide open) like (a|) "
            "(wings|wing|fans|fan|butterfly|bird|sails)"
        },
    ),
    Spoken(
        "fin_faults",
        anywhere=True,
        alone={
            "count at least 1": f"(1|1 of the|1 of its|1 of her|1 of his) ({_PEC}|paddle|fin|front fin) (never|did not|has "
            "not|has never) "
            "(grow|grew|grown|developed|develop|grown out|form|formed) (properly|right|fully|out|), (1|1 of the|1 of its|1 of "
            "her|1 of "
            f"his) ({_PEC}|paddle|fin) (stopped growing|stayed small|stayed short|is half grown|half grown|is stunted|came out "
            "wrong)"
        },
    ),
    Spoken(
        "dorsal_fin",
        levels={
            "folded": "(never|hardly ever|rarely|seldom) (lifts|lift|lifted|rises|opens|goes up|comes up|stands|stands "
            "up|up|raised|open), "
            "(lies|lay|lays|leans|hangs|falls) (down|over|flat) to (1|the|) (side|left|right)",
        },
    ),
    Spoken(
        "fin_damage",
        anywhere=True,
        alone={
            "includes tail": "(tail|tail fin) (looks|looking|) (like|as if|as though) (the|a|something|somebody|someone|) "
            "(cat|heron|rat|dog|moth|moths|"
            "mice|mouse|pike|) (has|have|is|) (been at it|had it|had a go at it|chewed it|got at it|eaten it|nibbled it)",
            "count at least 1": "(fin|fins) (looks|look|looking|) (like|as if|as though) (the|a|something|somebody|someone|) "
            "(cat|heron|rat|dog|moth|moths|"
            "mice|mouse|pike|) (has|have|is|) (been at (it|them)|had (it|them)|had a go at (it|them)|chewed (it|them)|got at "
            "(it|them)|eaten "
            "(it|them)|nibbled (it|them))",
        },
    ),
    Spoken(
        "fin_faults",
        anywhere=True,
        alone={
            "count at least 1": f"(te|paddles|hands|side fins|front fins|{_PEC}) (uneven|odd|unequal|not "
            "matching|different|not the same|not the same "
            "(size|length|shape)|do not match|of different (size|length|shape))"
        },
    ),
    Spoken(
        "dorsal_fin",
        alone={
            "is folded": "(never|not once|hardly ever|not) (seen|saw|see) (the|its|her|his|that) (dorsal|dorsal fin|top "
            "fin|back fin|fin on top) (up|raised|"
            "open|standing) (all (morning|day)|yet|once|)"
        },
    ),
    Spoken(
        "fin_damage",
        anywhere=True,
        alone={
            **{
                f"includes {fin}": f"({_SOME_EDGE}) of (the|its|her|his|) {words} (is|are|) (a bit|a little|slightly|badly|"
                f") {_TORN_OFF}, {words} (is|has|"
                f"has been|been|was|looks|) (a bit|a little|) {_BATTERED}"
                for fin, words in _FINS.items()
            },
            "includes tail": f"({_SOME_EDGE}) of (the|its|her|his|) (tail|tail fin) (is|are|) (a bit|a little|slightly|"
            f"badly|) {_TORN_OFF}, (tail|o bire) "
            f"(is|has|has been|been|was|looks|) (a bit|a little|) {_BATTERED}",
            "count at least 1": "(fin|fins|finnage) (is|have|has|has been|have been|been|was|look|looks|) (a bit|a little|) "
            f"{_BATTERED}",
            "is none": "(hire|all fins|fins) (all|) (sound|whole|present and correct|in one piece|unharmed|unscathed)",
        },
    ),
    Spoken("pectoral_size", "both (front fins|pectorals|pecs|paddles|side fins), mune bire, munabire"),
)
"""What is said of fins."""
