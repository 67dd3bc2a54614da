"""How sorters speak of mouth, barbels, gill covers, eyes, fins, scales and old wounds. Common practice, from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_MISSING = "(missing|gone|lost|off|come off|absent|torn off|broken off|broken|knocked off|rubbed off|not there)"
_BARBEL = "(barbel|whisker|feeler|beard)"
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


def _of_a_side(nouns: str, side: str, faults: str) -> str:
    """What is said of something that is wrong on one side: `left gill plate curled`, `gill plate on the left is curled`."""
    return (
        f"{side} {nouns} {faults}, {nouns} (|on) {side} (|side) {faults}, {nouns} {faults} (|on) {side} (|side), "
        f"{faults} (|on) {side} (|side) {nouns}, {faults} {nouns} (|on) {side} (|side)"
    )


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
        "old (wound|injury|knock|damage|mark), scarred, 傷",
        anywhere=True,
        alone={
            "includes nose": "dent (in|on) the (nose|snout)",
            "is none": "no (|old) (scar|scars|scarring) (|anywhere|at all), no old wounds, not a scar (|on "
            "it|anywhere), free of scars, without scars, unscarred",
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
            "(is|) (short|round|fat) like (ball|barrel|balloon)",
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
            "is none": "(no|not a|without|free of) (scars|scar|marks or scars|injuries|injury|old wounds|old injuries) "
            "(anywhere|on it|on her|on him|at all|that i can see|to be seen|), unmarked by nets, kizu nashi",
        },
    ),
    SpokenTogether(
        "clean and no blood, clean no blood, (wound|sore|spot) (clean|dry|closed|healing) and no blood, no blood, not "
        "bleeding, does not bleed, no inflammation, (clean|dry) wound, (wound|it|spot) (is|) (clean|dry|closed|"
        "healing|not bleeding|not open), (pea|coin|lentil|pinhead|fingernail|thumbnail|match head) (size|sized) (both|each|)",
        "nothing",
    ),
    Spoken(
        "mouth",
        levels={
            "malformed": "underslung, juts out, jutting, receding, recedes, cleft, caved in, pushed in, misshapen, pinched"
        },
        alone={
            "is malformed": "(underslung|jutting|receding|cleft) (jaw|mouth|lip), (breathes|gulps) (crooked|crookedly), "
            "harelip, hare lip"
        },
    ),
    Spoken(
        "barbels_missing",
        alone={
            "is 1": f"{_BARBEL} 1 (short|missing|gone|off|too few), 1 {_BARBEL} (too few|torn|cut|bitten off), 3 {_BARBEL} only",
            "is 2": f"2 {_BARBEL} (short|too few|only), {_BARBEL} 2 (short|missing|gone)",
        },
    ),
    Spoken(
        "gill_cover_faults",
        alone={
            f"includes {side}_gill": f"{_GILL} {side} (side|) (short|curled|bad|open|fault|faulty|damaged|bent|notched|"
            f"folded|wrong), {side} (side|) {_GILL} (fault|trouble|problem|issue)"
            for side in ("left", "right")
        },
    ),
    Spoken(
        "scars",
        alone={
            "count at least 1": "(cut|wound|sore|bite|scratch|scrape|hole|ulcer) (on|near|behind|by|above|below) (the|"
            "its|her|) (left|right|) (belly|flank|side|back|head|shoulder|tail|stem|cheek|gill|gill cover|dorsal) (is|has|) "
            "(healed|closed|healed up|healed over|long healed), (healed|old healed) (cut|wound|sore|bite|scratch|scrape|"
            "hole|ulcer)"
        },
    ),
    Spoken(
        "mouth",
        alone={
            "is malformed": "(mouth|jaw|lip|lips) (is|has been|was|) (torn|ripped|split|damaged|injured|caught|scarred|cut) "
            "(from|by|with) (the|a) (hook|net|fall|knock|bag|rim), (squint|twist|kink|bend|lean|slant) (in|to|at|on) (the|"
            "its|that|this) (mouth|jaw), (it|she|he) (cannot|can not|does not) (close|shut) (it|the mouth) (properly|fully|"
            "), (mouth|jaw) (hangs|hanging|leans|slants|squints|wanders|drifts|goes off) (to the (left|right)|to 1 side|"
            "down|open|a bit|)"
        },
    ),
    Spoken(
        "barbels_missing",
        anywhere=True,
        alone={
            "is 1": f"1 (of the|of its|of her|of his|) {_BARBEL} (is|has|has gone|gone|went) {_MISSING} (somewhere|for some "
            "reason|too|at the front|at the rear|)",
            "at least 1": f"(no|without) {_BARBEL} (on|at) (the|) (left|right) (side|), (some|a few) {_BARBEL} (is|are|) "
            f"{_MISSING}, {_BARBEL} (incomplete|not complete|damaged|torn|bitten off|bitten|nibbled)",
            "at least 2": f"(no|without|lost all|has no) {_BARBEL} (at all|left|)",
        },
    ),
    Spoken(
        "gill_cover_faults",
        anywhere=True,
        alone={
            **{
                f"includes {side}_gill": f"{_GILL} (is|) (flapping|lifting|gaping|flaring|sticking|standing|loose|open) (a "
                f"bit|a little|up|out|slightly|) (on|at) (the|) {side} (side|), {side} {_GILL} (is|) (flapping|lifting|"
                f"gaping|flaring) (a bit|a little|up|out|slightly|), (flap|lift|gape) (in|at|on|to) the {side} {_GILL}"
                for side in ("left", "right")
            },
            "count at least 1": f"{_GILL} (is|) (flapping|lifting|gaping|flaring) (a bit|a little|up|out|slightly|)",
        },
    ),
    Spoken(
        "scale_loss",
        anywhere=True,
        alone={
            "at least 1": "(a|1|) scale (is|) (hanging|hangs|coming|comes|half|nearly) (loose|off), loose scale, (a|1|) "
            "scale (is|) loose"
        },
    ),
    Spoken(
        "scars",
        alone={
            "is none": "not a (scratch|scar|mark|blemish) (on the body|on the flanks|on her body|on its body) (anywhere|), "
            "(unscathed|no old damage)"
        },
    ),
    Spoken(
        "gill_cover_faults",
        anywhere=True,
        alone={
            "count is 1": f"1 of the {_GILL} (does not|not) (sit|lie|lying|sitting) (flat|right|tight|straight|properly), 1 "
            f"of the {_GILL} (is|) (short|curled|bent|open|folded|lifting|sticking out|a bit short|a bit curled|a bit open)",
            "count at least 1": f"{_GILL} (does not|not) (sit|lying|sitting) (flat|right|tight|straight|properly)",
        },
    ),
    Spoken(
        "scale_loss",
        anywhere=True,
        alone={
            "is 1": "(took|knocked|rubbed|tore|lifted|had) 1 scale off (it|her|him|), 1 scale (short|gone missing|went "
            "missing|has gone "
            "missing), (minus|less) 1 scale",
            "at least 1": "(took|knocked|rubbed|tore|lifted|had) (a|) scale off (it|her|him|), lost (a|) scale (somewhere|on "
            "the way|in "
            "the net|in the bag|here), scale (gone missing|went missing|has gone missing)",
            "at least 2": "(took|knocked|rubbed|tore) (some|a few|several|a couple of) scales off (it|her|him|)",
        },
    ),
    Spoken(
        "ginrin_scales",
        "scale that (shines|glitters|glints|sparkles) (|like glass|like a mirror|like silver|like foil), scale "
        "(shines|glitters|glints) "
        "like (glass|a mirror|silver|foil), (glass|glassy|foil|tinfoil|mirror like) scale, ginrin "
        "(scale|spot|nonsense|rubbish|bit|stuff)",
        of_parts="all",
    ),
    Spoken(
        "gill_cover_faults",
        anywhere=True,
        alone={
            "count at least 1": f"(gill|gills|{_GILL}) (flare|flares|curl|gape|gapes|lift|lifts|trouble|damage), "
            "(flare|flaring) (to|in|"
            f"of|at) (the|a|1) {_GILL}"
        },
    ),
    Spoken(
        "mouth",
        levels={
            "malformed": "(sits|hangs|grows|grown|lies) (skew|askew|crooked|wrong|to one side|to the left|to the right)",
            "at most slight": "(shame|pity) about, (is|) what (lets it down|spoils it|lets her down|lets him down|spoils "
            "her|spoils him), "
            "spoils it, spoils her, spoils him, the (only|one|main) (trouble|problem|snag|letdown|fault) is",
        },
    ),
    Spoken(
        "barbels_missing",
        anywhere=True,
        alone={"is 0": f"{_BARBEL} (all 4|4|all) (there|on|present|good|ok|complete|)"},
    ),
    Spoken(
        "scale_loss",
        anywhere=True,
        alone={f"is {n}": f"(uroko|scale) {n} {_MISSING}, {n} (uroko|scales) {_MISSING}" for n in range(2, 9)},
    ),
    Spoken(
        "eye_film",
        anywhere=True,
        alone={
            f"includes {side}_eye": f"{side} {_EYE} (has|with|got|shows|there is) (a|some|) "
            "(white|grey|milky|cloudy|whitish|pale|foggy|bluish) (spot|dot|"
            f"patch|bit|ring|skin|something|mark|stuff|film|look) (in|on|over|across|) (it|)"
            for side in ("left", "right")
        },
    ),
    Spoken(
        "barbels_missing",
        anywhere=True,
        alone={
            "at least 1": f"{_BARBEL} on the (left|right) (side|) (is|) {_MISSING}, {_BARBEL} (on the|) "
            "(left|right|front|rear|back|upper|lower) (side|left|"
            "right|) (is|) (torn|bitten|damaged|half gone|half missing|a stump|shortened), (torn|damaged|bitten|half a|a "
            f"stump of a) {_BARBEL}"
        },
    ),
    Spoken(
        "gill_cover_faults",
        anywhere=True,
        alone={
            **{
                f"includes {side}_gill": f"({_GILL} on the {side} (side|)|{side} {_GILL}) (has|with|got|shows) (a|) "
                "(small|little|slight|tiny|big|bit of "
                f"a|nasty|) (notch|hole|curl|bend|fold|kink|dent|gap|nick|lip|flare|step), ({_GILL} on the {side} "
                f"(side|)|{side} {_GILL}) (does not|not|"
                "will not) (quite|really|fully|) (tuck|tucks|tucked|tucking|sit|sitting|lie|lying) "
                "(in|down|flat|properly|tight|close|flush)"
                for side in ("left", "right")
            },
            "count is 1": f"(1|1 of the) {_GILL} (does not|not|will not) (quite|really|fully|) (tuck|tucks|tucked|tucking) "
            "(in|down|flat|properly|tight|"
            "flush)",
            "is none": f"{_GILL} (tight|closed|flat|good|fine|ok|sound|shut|clean) (both|both sides|on both sides|left and "
            "right|all round)",
        },
    ),
    Spoken(
        "mouth",
        alone={
            "is malformed": "(lower|upper|bottom|top) (jaw|lip) (is|) (much|a bit|a little|slightly|) (longer|shorter|"
            "bigger|smaller|further out|further "
            "forward|further back) (than the (other|upper|lower|top|bottom) (jaw|lip|1|)|), (mouth|lips|jaw) (has|have|has "
            "been|have been|been|is|) (in the "
            "wars|knocked about|in a sorry state|a mess|battered)",
        },
    ),
    Spoken(
        "barbels_missing",
        alone={
            "is 0": f"{_BARBEL} (present and correct|accounted for|all accounted for|in place|all in place|in one piece)"
        },
    ),
    Spoken(
        "gill_cover_faults",
        alone={
            "is none": f"(both|all|) {_GILL} (is|are|) (nice and|good and|) (snug|flush|neat|snug and flat|tight and flat)",
            "count at least 1": "(has|with|) (a|) (nick|notch|tear|cut|dent|bite|chip) (in|out of) (the|its|his|her|a|1) (gill|"
            "gill cover|gill plate)",
        },
    ),
    Spoken("scars", "(old|) (battle|war) (scar|wound)"),
    Spoken(
        "health",
        anywhere=True,
        alone={
            "at most doubtful": "(1|2|3|4|5|6|some|a few|several|a couple of|a row of|) (scale|scales) (is|are|) (standing|"
            "stand|stands|stick|sticks|sticking|lifted|lift|lifting|raised|poking|poke) (up|out|proud)"
        },
    ),
    Spoken(
        "eye_clarity",
        levels={
            "clear": "(clear|bright|good|fine) (both|both sides|left and right)",
            "cloudy": "(cloudy|milky|dull) (both|both sides|left and right)",
        },
    ),
)
"""What is said of the parts of a fish, and of what is wrong with them."""
