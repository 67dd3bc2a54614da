"""How sorters speak of where the red (hi) lies on the head, the face and the fins.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.builtin.red_colour import RED_COLOUR
from koirules.builtin.red_pattern import DETAILS, PATTERN
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_SPOTS = {"windows", "head_windows", "tobihi", "tobihi_places", "niban_hi", "fading_places"}
OF_RED = tuple(trait.name for trait in (*PATTERN, *DETAILS, *RED_COLOUR) if trait.name not in _SPOTS)
"""The traits of the red itself: what goes on about one of them is said of the red."""

_OF_HEAD = ("maruten", *(one.name for one in DETAILS if one.name.startswith("head_") and one.name != "head_windows"))
_SIDES = (("left", "right"), ("right", "left"))
_HEAD = "(the|its|her|his) (head|forehead|skull|crown|top of the head)"
_RED = "(red|colour)"
_AT_ALL = "(at all|whatever|whatsoever|anywhere|to speak of|on this 1|to be seen|)"
_HOW = "(right|all the way|straight|well|just|only just|even|clean|a good way|far|too far|a bit far|a long way|a bit|half way|)"
_HEAD_RED = (
    "((head|front|first|top|crown|red|head red|tancho|shoulder) (patch|spot|mark|step|1|piece|cap)|head red|red|colour|"
    "(red|patch|spot|mark|colour|pattern) (on|of|from) the head|(front|front edge|front end|edge) of the (red|head "
    "patch|head red|first patch)|patch|pattern|cap|hat|hood|spot|head pattern|tancho)"
)
"""What is called the red that lies on the head or reaches it."""
_SURELY_RED = _HEAD_RED.replace("|spot|head pattern", "|head pattern")
"""The same without `spot`, which may be a black one."""

_GOES = (
    "(goes|runs|comes|reaches|extends|stretches|drops|drips|slides|spills|creeps|hangs|sits|carries|carries on|"
    "continues|gets|pulls|falls|slips|dips|pours|bleeds|slops|washes|laps|climbs|going|running|coming|hanging|dripping)"
)
_DOWN = "(down|up|forward|out|along|on|)"
_TO = "(to|as far as|till|until)"
_UP_TO = f"(({_GOES}|) {_HOW} {_DOWN} {_HOW} {_TO}|reaches {_HOW}|makes it to)"
_REACHES = f"(({_GOES}|) {_HOW} {_DOWN} {_HOW} {_TO}|(reaches|touches) {_HOW}|meets|hits|kisses|makes it to)"
_ONTO = (
    f"({_GOES} {_HOW} {_DOWN} {_HOW} (on|past)|covers|takes in|swallows|(right|all the way|straight|) (down|up) on|"
    "(right|all the way) on)"
)
_STOPS = "(stops|ends|finishes|pulls up|quits|halts|is cut off|cut off|dies out|breaks off|stopping|ending)"
_STARTS = "(starts|begins|sets in|comes in|sits|lies|stays|starting)"
_SHORT = "(just|well|bang|dead|exactly|right|cleanly|neatly|nicely|short|only just|about|)"
_AT = "(on|level with|even with|in line with|along|with|by)"
_NOT_REACHING = (
    "(does|did|do|) (not|never) (quite|even|) (reach|touch|get to|get as far as|make it to|come to|come down to|go to|"
    "go down to|go as far as|come as far as|quite reach|run to|run down to|meet)"
)
_SHORT_OF = _NOT_REACHING.replace("|touch|", "|").replace("|meet)", ")")
_EYES = "(eyes|eye line|eyeline|line of the eyes)"
_NOSE = "(nose|snout|muzzle|nose tip|tip of the nose|end of the nose|point of the nose)"
_NOSTRILS = "(nostrils|nose holes)"
_LIPS = "(lips|mouth|upper lip|top lip|lip line|gob)"
_FREE = "(white|clean|clear|free|bare|spotless|empty|blank|open|unmarked)"
_AFTER = "(even|and stops|and stops there|and no further|and that is it|only|)"


def _front(place: str) -> str:
    """What is said for head red that runs as far as a place of the face, and stops there or not."""
    reached = f"{_UP_TO if place == _EYES else _REACHES} (the|her|his|) {place} {_AFTER}"
    return f"{_HEAD_RED} ({reached}|{_ending(place)}|level with the {place})"


def _ending(place: str) -> str:
    return f"{_STOPS} {_SHORT} {_AT} (the|her|his|) {place}"


def _front_of_it(place: str) -> str:
    """The same without what is called so: `right down to the nose`."""
    touches = "" if place == _EYES else "touches|"
    reached = f"({_GOES} {_HOW} {_DOWN} {_HOW} {_TO}|{touches}reaches|{_HOW} (down|up|) {_TO}) the {place} {_AFTER}"
    return f"{reached}, {_ending(place)}"


_MARK = (
    "(head patch|head spot|patch on the head|spot on the head|spot|head mark|head red|tancho spot|tancho patch|mark on "
    "the head|cap|hat|red on the head|crown patch|tancho|head pattern|round patch|round spot|maruten|coin|red cap|round "
    "mark)"
)
_HEAD_MARK = _MARK.replace("|spot|", "|").replace("|round patch|round spot|", "|").replace("|round mark)", ")")
"""The same but for what may lie elsewhere: a spot that is left of the middle is on the head where the head was spoken of."""
_A_LITTLE = (
    "(little|touch of|trace of|bit of|hint of|tiny bit of|streak of|spot of|tinge of|thin line of|splash of|slight|"
    "small|dab of|lick of|kiss of|scrap of|fleck of|drop of|smear of|wash of|flash of|dash of|speck of|dot of|smudge of|"
    "faint|whisper of|suggestion of|thread of|tiny|some little|very little)"
)
_TINT = "(touch|hint|trace|ring|rim|lick|dab|tinge|line|smear|spot|bit)"
_SOME_RED = "(bit|touch|lick|dab|streak|splash|trickle|little|a bit|a touch|a lick|some) (of|) (red|colour)"
_CREEPING = "(creeping|running|bleeding|leaking|spilling|going|getting|coming)"
_CLEAR_OF = "(clear of|free of|free from|away from|outside|off|out of|untouched by|not in|not touched by)"

SAID_OF_HEAD: tuple[Saying, ...] = (
    SpokenTogether(
        "menkaburi, hood, red hood, a hood, full hood, hood over the face, a hood right over the face, hooded, 面かぶり, "
        f"(whole|all|entire|complete) (face|head) (is|) (all|) {_RED}, (face|head) (is|) (all|completely|entirely|"
        f"totally|whole) {_RED}, (face|head) covered (in|with|by) {_RED}, {_RED} face, all red (head|face), {_RED} "
        "(covers|over|right over|all over|swallows|takes in|down over|comes over) the (whole|entire|full) (head|face), "
        f"{_RED} (all|right) (over|on) the (head|face), head (full of|drowned in|all in) red, hood (is|) (too|) (far "
        "down|deep|big|large|low), wears a hood, wearing a hood, looks like it wears a hood, like a balaclava, like "
        f"wearing a balaclava, (like|with) a (red|) mask, red mask, like a hood, {_RED} (comes|pulled|goes) down like a "
        "hood, hood over (the|) head",
        "head_hi is hood",
    ),
    SpokenTogether(
        f"{_RED} {_GOES} {_HOW} (down|down over|down across|over|on) the face, {_RED} {_HOW} (down|all down|right down) "
        f"the face, {_RED} (half way|halfway) (down|over) the face, red head, face (is|) (half|mostly|nearly all|"
        f"nearly) red, too much {_RED} on the (head|face), too much on the head, (head patch|cap|hat|head red) (is|) "
        f"too much, a lot of {_RED} on the (head|face), lots of {_RED} on the (head|face), plenty of {_RED} on the "
        "head, head (is|) heavy with red",
        "head_hi is large or hood",
    ),
    SpokenTogether(
        "bozu, bald, bald head, head bald, bald as (a coot|an egg), bald (on top|as they come|up top), (totally|dead|"
        "quite|stone) bald, white headed, bald headed, nothing on top, (missing|lacks|lacking|without|no) (its|her|his|"
        "the|a) (head patch|cap|hat|head spot|head mark), bald (1|fish|thing|lad|girl|little thing), red does not (get "
        "to|reach|come to|touch|get as far as|make it to) the head, baldy, baldie, 坊主, no (head pattern|head patch|"
        f"head red|head hi|head mark|hat|cap|red cap|red hat) {_AT_ALL}, hatless, capless, without a (hat|cap|head "
        "patch|head mark), head patch (missing|misses|absent|lacking), lacks a (hat|cap|head patch|head mark), no "
        f"(pattern|red|colour|patch|hi|mark|spot) {_AT_ALL} (on|up on|on top of) (the|her|his|) head {_AT_ALL}, nothing "
        f"(at all|whatever|whatsoever|red|) (on|up on|on top of) (the|her|his|) head {_AT_ALL}, no (red|colour|pattern) "
        "(up top|on top), nothing up top, head (is|) (all|completely|totally|plain|pure|just|entirely|quite|still|left|"
        "dead|) (white|bare|blank|empty|plain), (little|small|cold|poor|plain|) (little|) (plain white|white|bare|"
        "blank|empty|pure white|all white|naked) head, plain head (on (it|her|him)|), head (white|clean|bare|empty) as "
        "(paper|snow|milk|a sheet|chalk), (not|never) a (scrap|scale|spot|speck|trace|bit|hint) of (red|colour) on the "
        "head, head (is|has|with|) (no|without) (any|a speck of|) (red|pattern|patch|mark|colour) (on it|), head has "
        f"nothing on it, head (clean|bare|white|empty) as a (plate|slate|whistle|sheet), {_RED} (only|just|) (starts|"
        "begins) (only|just|right|first|) (on|from|behind) the (shoulder|neck|nape|gills|gill covers|gill plates|head) "
        "(only|), starts at the shoulder, begins at the shoulder, only starts at the shoulder, starts behind the head, "
        "begins behind the head, starts at the neck, first red (is|) (on|behind) the (shoulder|head)",
        "head_hi is none",
    ),
    Spoken(
        "head_hi",
        "head red, red on the head, head hi, hi on the head, head patch, head pattern, head mark, cap, hat, crown "
        "patch, red cap, red hat, patch on the head, 頭の緋",
        levels={
            "none": "no, without",
            "small": "(too|) (small|little|tiny|short|narrow|mean), wee, skimpy, mean, undersized, on the small side",
            "u_shape": "u shape, u shaped, good, nice, u, right size, right, fine, perfect, ideal, ok, well shaped, "
            "neat, textbook, lovely, proper, tidy, just right, rounded, well rounded, lovely rounded, smooth, nicely "
            "shaped, nicely rounded, (a|) (good|nice|lovely|right|proper) shape, well cut, a good size, good size",
            "large": "(too|) (large|big|wide|huge|heavy|oversized|broad|deep|much), on the big side, great big, "
            "massive, (comes|goes) (too far|too|) (far|a long way|) down the sides",
            "hood": "hood",
        },
        alone={
            "is u_shape": "(good|nice|clean|lovely|neat|perfect|clear|proper|tidy|classic|textbook|smooth|round|) (u|u "
            "shape|horseshoe) (on|at) the (head|crown|front), (good|nice|clean|lovely|neat|perfect|proper|tidy|classic|"
            "textbook) (u|u shape|horseshoe), u (shape|shaped) (head|on the head|head patch|cap), head (is|has|makes|"
            "ends in|forms) (a|) (nice|clean|good|neat|) (u|u shape), (red|head red|head hi|head patch|head pattern|cap|"
            "front edge|front) (on the head|of the head|of the head red|) (is|makes|forms|ends in|in|like|has|) (a|) "
            "(nice|clean|good|neat|clear|perfect|) (u|u shape|horseshoe), (nice|good|neat|lovely|smooth|clean) (rounded|"
            "round|u shaped) (front|edge|front edge|end) (to|on|of) the (head red|head patch|cap|red on the head), "
            "(neat|nice|good|tidy|lovely) (cap|hat) on (the head|her|him|it), good head patch, nice head patch, "
            "horseshoe, horseshoe on the head, neat as a horseshoe, like a horseshoe, nice cap, u shape on the head "
            "neat as a horseshoe, kutsubera, kutsu bera, shoehorn, shoehorn on the head, like a shoehorn, shoe horn, "
            "shoehorn shape",
            "at most small": f"(not much|hardly any|very little|too little|next to no|barely any|little) {_RED} (on|up "
            "on) the head, (not much|hardly anything|next to nothing|very little|too little|not enough) (on|up on) the "
            "head, (nearly|almost|bit|a bit|half) bald, bit bald looking, bald looking, thin on the head, only a "
            f"{_A_LITTLE} {_RED} (on|up on) the head, just a {_A_LITTLE} {_RED} (on|up on) the head",
            "at least large": "(big|large|wide|huge|massive|great big) (cap|hat|patch|mark) (on|over) the head",
            "is small": "(small|tiny|little|wee|mean|skimpy) (cap|hat|patch|mark) on the head",
        },
    ),
    Spoken(
        "head_hi_front",
        "head red front, front of the head red",
        alone={
            "is behind_eyes": f"{_HEAD_RED} ({_STOPS}|{_STARTS}|) {_SHORT} (behind|short of|back from) the {_EYES}, "
            f"{_HEAD_RED} {_SHORT_OF} the {_EYES}, {_HEAD_RED} ({_STARTS}|{_STOPS}) {_SHORT} behind the {_EYES} and "
            f"that is it (for the head|), {_HEAD_RED} (is|) set back (from|behind) the {_EYES}",
            "is eye_line": f"{_front(_EYES)}, {_HEAD_RED} ({_STOPS} {_SHORT}|{_REACHES}) between the eyes {_AFTER}, "
            f"{_HEAD_RED} {_STARTS} {_SHORT} {_AT} the {_EYES}, {_HEAD_RED} (is|) (on|over|touches) the (eye line|line "
            "of the eyes)",
            "at least eye_line": f"{_HEAD_RED} {_ONTO} the (eye line|line of the eyes), {_HEAD_RED} ({_GOES} {_HOW} "
            f"{_DOWN}|) {_HOW} (past|beyond|below) the {_EYES}",
            "is nostrils": f"{_front(_NOSTRILS)}, up to the nostrils, {_HEAD_RED} (just|) on the {_NOSTRILS}",
            "at least nostrils": f"{_HEAD_RED} ({_ONTO}|past|{_GOES} past) (both|) the {_NOSTRILS} (both of them|both|)",
            "is nose": f"hana zuki, hanazuki, hana tsuki, hanatsuki, 鼻つき, {_front(_NOSE)}, {_HEAD_RED} {_ONTO} the "
            f"{_NOSE}, (red|colour|head red|head patch|cap|hood) {_HOW} (on|over) (the|her|his|) {_NOSE}, red nose, "
            f"nose (is|) red, red (tip|end) (to|on|of) the {_NOSE}, red (all|right|) (down|over) the {_NOSE}, nose "
            f"(dipped|tipped|painted) (in|with) red, nose (has|with) red on it, (a|) {_A_LITTLE} (red|colour) on (the|"
            f"her|his|) {_NOSE}, (small|little|tiny|) red (spot|dot|drop|dab|mark|patch|fleck|blob|tip) on (the|her|his|"
            f") {_NOSE}, (spot|dot|drop|dab|mark|patch|fleck|blob|tip) of red on (the|her|his|) {_NOSE}",
            "is lips": f"{_front(_LIPS)}, {_HEAD_RED} {_ONTO} the {_LIPS}, (head red|head patch|head mark|patch|cap|"
            f"hood|front of the red|first patch|first step) over the {_LIPS}",
            "at most nostrils": f"face nice and clean, face all clean, free face, {_FREE} (face|nose|snout|front|"
            "muzzle), ((nose|snout|muzzle) (is|stays|stayed|kept|remains|)|face (is|stays|kept|) (all|left|still|kept|"
            f"nice and|good and)) {_FREE} (of red|), nose (all|left|still|kept) {_FREE}, face (clean|clear|free|bare|"
            "empty|open) (of red|), (face|nose|snout) without (any|) red, (clean|white|clear) (round|around|about) the "
            "(face|nose|snout), (white|clean|clear) in front of the eyes, (nothing|no red) (in front of|below|past|"
            f"beyond) the eyes, (keeps|kept) (its|her|his|the) face clean, no {_RED} (at all|) (on|in|down|down on|down "
            "over|near|anywhere on|over) (the|her|his|) (face|nose|snout) (at all|), (nothing|nothing red) (on|in|down|"
            f"near) (the|her|his|) (face|nose|snout), {_HEAD_RED} {_STOPS} {_SHORT} (before|short of|in front of|off) "
            f"the {_NOSE}, {_HEAD_RED} {_NOT_REACHING} the ({_NOSE}|{_LIPS}), {_HEAD_RED} (keeps|stays) (off|away from|"
            "clear of) the (nose|face|snout), (white|clean|clear) (nose|face|snout) in front (of it|), (leaves|"
            "leaving) the (nose|face|snout) (white|clean|clear|free)",
        },
    ),
    Spoken(
        "head_hi_front",
        after=OF_RED,
        alone={
            "is behind_eyes": f"({_STOPS}|{_STARTS}) {_SHORT} (behind|short of|back from) the {_EYES} {_AFTER}, "
            f"{_SHORT_OF} the {_EYES}",
            "is eye_line": f"{_front_of_it(_EYES)}, ({_STOPS} {_SHORT}|{_REACHES}) between the eyes {_AFTER}, {_STARTS} "
            f"{_SHORT} (level with|in line with) the {_EYES}, to the eye line, touches the (eye line|line of the eyes)",
            "at least eye_line": f"{_ONTO} the (eye line|line of the eyes), ({_GOES} {_HOW} {_DOWN}) (past|beyond|"
            f"below) the {_EYES}",
            "is nostrils": _front_of_it(_NOSTRILS),
            "at least nostrils": f"({_ONTO}|past|{_GOES} past) (both|) the {_NOSTRILS} (both of them|both|)",
            "is nose": f"{_front_of_it(_NOSE)}, {_ONTO} the {_NOSE}",
            "is lips": f"{_front_of_it(_LIPS)}, {_ONTO} the {_LIPS}",
            "at most nostrils": f"{_STOPS} {_SHORT} (before|short of|in front of|off) the {_NOSE}, {_NOT_REACHING} the "
            f"({_NOSE}|{_LIPS}), (keeps|stays) (off|away from|clear of) the (nose|face|snout)",
        },
    ),
    Spoken(
        "head_roundness",
        "roundness of the head patch, roundness",
    ),
    Spoken(
        "head_patch_shape",
        "shape of the head patch",
        beside=_MARK,
        levels={
            "round": "round, circular, perfectly round, like a coin, round (as|like) a (coin|penny|plate|button|ball), "
            "like the sun, nicely round, very round, a (perfect|true|nice|) (circle|disc), like a (ball|button|plate|"
            "rising sun|penny|full moon), (near|properly|dead) round",
            "oval": "oval, egg shaped, long, like an egg, egg shape, an egg, more oval than round, longish, stretched, "
            "elongated",
            "heart": "heart, heart shaped, heart-shaped, like a heart, a heart",
            "straight_edged": "square, squared, straight edged, cut straight, angular, cornered, diamond, diamond "
            "shaped, like a (brick|stamp|box), boxy, blocky, squared off, (a|) straight (edge|line) (in|at the) front, "
            "like a diamond",
            "ragged": "ragged, uneven, frayed, irregular, untidy, torn, messy, scruffy, jagged, all over the "
            "place, scrappy, no shape, shapeless, crooked, like a spilled cup, misshapen, wobbly, no (real|) shape (to "
            "it|)",
            "split": "split, split in two, in two parts, double, parted, divided, broken, cut in two, in two (halves|"
            "bits|pieces), cracked, broken up, (cut|split) (by|with) (a|) (white|) (line|gap|streak), split down the "
            "middle, in half",
        },
        alone={
            "is heart": "(a|) heart (shape|) on (its|her|his|the|) head",
            "is split": "split head, two spots on the head, hachiware, (red on the head|head red) (is|) (split|cut) by "
            "(a|) white (line|streak)",
            "is round": "spot perfectly round, perfect circle on the head, (perfect|nice|lovely|clean) (circle|disc|"
            "ball) on the head",
        },
    ),
    Spoken(
        "head_patch_place",
        beside=_HEAD_MARK,
        levels={
            "centred": "centred, central, in the middle, well placed, in the centre, sits well, well centred, dead "
            "centre, bang in the middle, right in the middle, dead in the middle, smack in the middle, just where (you|"
            "i) want it, in the right place, nicely placed",
            "off_left": "(off|slips|slipped|shifted|leaning|leans|pulls|sits|sitting|hangs|skewed|tips|slid|over|pushed|"
            "set|moved|) (off|over|a bit|a touch|) (to|towards) the left (eye|side|), (sits|is|) left of (the|) (centre|"
            "middle), shifted left, sits left, too far left, off left",
            "off_right": "(off|slips|slipped|shifted|leaning|leans|pulls|sits|sitting|hangs|skewed|tips|slid|over|"
            "pushed|set|moved|) (off|over|a bit|a touch|) (to|towards) the right (eye|side|), (sits|is|) right of (the|"
            ") (centre|middle), shifted right, sits right, too far right, off right",
            "off_front": "too far forward, too far in front, forward, too far down, too low, (sits|pushed) too far "
            "(forward|down)",
            "off_rear": "too far back, set back, too high, (sits|set|pushed) too far back",
        },
        alone={
            "is off_left or off_right or off_front or off_rear": "(spot|head patch|patch|cap|hat|head spot|tancho|it|"
            "maruten|coin) (is|sits|) (a bit|a touch|slightly|well|) (off centre|off to one side|to one side|over to "
            "one side|not in the middle|not central|not centred|not dead centre|askew|skew|crooked|on one side|out of "
            "true), off centre on the head, off centre head patch",
        },
    ),
    Spoken(
        "head_patch_place",
        after=("maruten", "head_hi"),
        alone={
            "is off_left": "(a bit|a touch|slightly|sits|well|) (off|over|off a bit) to the left (eye|side|), (a bit|a "
            "touch|sits|) left of centre",
            "is off_right": "(a bit|a touch|slightly|sits|well|) (off|over|off a bit) to the right (eye|side|), (a bit|"
            "a touch|sits|) right of centre",
            "is centred": "(sits|) (dead centre|bang in the middle|right in the middle|dead in the middle|nicely centred)",
        },
    ),
    Spoken(
        "kuchibeni",
        f"kuchibeni, red lips, lipstick, {_RED} (on|round|around) (the|her|his|its|) (lips|mouth), (lips|mouth) (is|) "
        f"{_RED}, {_RED} (lips|mouth), 口紅",
        alone={
            "is yes": "(faint|slight|good|nice|clear|strong|little|small|thin|tiny|neat) (kuchibeni|lipstick), "
            f"kuchibeni (faint|slight|good|nice|clear|strong|small|thin|only|there|present), (a|) {_A_LITTLE} ((red|"
            "colour|lipstick|kuchibeni) ((on|round|around|at|about) (the|her|his|its|) (lips|mouth) (only|)|at the "
            "lips)|lipstick|kuchibeni), (red|proper|nice|nice bit of|proper bit of|good|a bit of) lipstick, (lips|"
            "mouth) (just|only just|) (dipped in|touched with|tipped with|tipped|painted|edged with|edged in|edged|"
            "tinged|lined with|lined in|done in|rimmed|ringed) red, (lips|mouth) (painted|made up), (lip|mouth) (has|"
            f"with) (a|) ({_A_LITTLE}|) red (on it|on the (left|right) (corner|side) (only|)|in the corner|), (wears|"
            "wearing|has|with|got|been at the) lipstick (on|), red (at|in|on) (the|one|1|both) (corner|corners) of "
            "(the|her|) mouth, (top|upper|bottom|lower) lip (is|) red, red (top|upper|bottom|lower) lip, lip red on "
            "both sides, red lips on both sides, red kiss (mark|) on the lips, lips kissed (with|in) red",
            "is no": f"lips {_FREE} (of red|), {_FREE} lips, no (lipstick|kuchibeni), no {_RED} on (the|her|his|) (lips|"
            "mouth), mouth (white|clean), lips without red, nothing on the lips",
        },
    ),
    Spoken(
        "hi_on_eyes",
        beside="(red|colour|orange|red spot|some red|red patch|head patch|head red|first patch|patch|cap|hood), "
        f"{_SURELY_RED} ({_ONTO}|{_REACHES}|on|round|around|all round|right round|half over|through|partly over|near|"
        "catches|clips|nicks|grazes|brushes|just catches|just touches|only just touches|just covers|half covers|just "
        "on|just over), (covered|ringed|rimmed|surrounded|edged|framed) (with|in|by) (the|) red, (sits|lies|drowned|"
        "lost|buried|set|swims|sunk) in (the|) red, red rimmed, under the red, in the red, inside the red, (half|"
        "partly|) covered, (half|partly|just) under (the red|it|), half red, (half|partly) in (the|) red",
        alone={
            "is none": f"(no|without) {_RED} (at all|) (on|over|in|near|round|around|anywhere near|touching) (the|her|"
            "his|) (both|either|either of the|) (eyes|eyelids|eye|eye rims) (at all|), eyes (are|) (both|) (free|clean|"
            "white|untouched|bare|open|clear of red|clear of the red|free of red|outside the red|without red|well "
            "clear of the red|clear of any red), nothing (on|over|near) the eyes, both eyes (free|clean|white|clear of "
            "red|clear of the red|free of red|untouched), no red on either eye, (white|clean|free) (eyes|eyelids|eye "
            f"rims), (eyelids|eye rims) (white|clean), white eyelids no red on them, {_HEAD_RED} (keeps|stays|is|) (off|"
            "clear of|away from|outside|free of) the eyes, eyes left free, neither eye covered, (does|) not (touch|"
            f"catch|cover) (the|either|either of the) (eyes|eye), {_HEAD_RED} {_STOPS} {_SHORT} between the eyes "
            "without touching (them|)",
            "is (left_eye, right_eye)": "both eyes (covered|red|in the red|in red|under red|under the red|ringed in red|"
            "in it|are in it), eyes (in the red|sit in the red) both of them, (red|hood) (over|covers|on|goes over|"
            "takes in|down over) both eyes",
            "count is 1": "1 eye (covered|red|in the red|in red|under red|ringed in red), 1 eye (is|) (covered|red) "
            f"(the other (is|) (not|free|clear|clean|white)|), {_HEAD_RED} ({_ONTO}|{_REACHES}|over|on) the eye on 1 "
            f"side (only|), {_HEAD_RED} ({_ONTO}|{_REACHES}|over|on) 1 of the eyes",
            "count at least 1": f"patch (over|on) an eye, {_RED} (over|on) an eye, (red|head patch|hood) (touches|"
            "covers|swallows|takes in|down over|goes over) the eyes, eyes (covered|red|in the red|in red|sit in the "
            "red), red (round|around) the eyes, red (eyelids|eye rims), red rimmed eyes",
            **{
                f"is ({side}_eye)": f"{_HEAD_RED} ({_ONTO}|{_REACHES}|over|on) the {side} eye (but not|not|and not|"
                f"never) the {other} (eye|1|), only the {side} eye (is|) (covered|red|touched|in the red)"
                for side, other in (("left", "right"), ("right", "left"))
            },
        },
    ),
    Spoken(
        "hi_on_eyes",
        after=OF_RED,
        alone={
            **{
                f"includes {side}_eye": f"({_ONTO}|{_REACHES}|{_GOES} {_DOWN} {_HOW} on|over|right over|down over|round|"
                f"catches|clips|just touches) the ({side} eye|eye on the {side})"
                for side in ("left", "right")
            },
            "is (left_eye, right_eye)": f"({_ONTO}|{_REACHES}|over|right over|down over) both eyes",
            "count is 1": f"({_ONTO}|{_REACHES}|over|down over|catches|clips) 1 eye (only|)",
        },
    ),
    Spoken(
        "hi_on_cheeks",
        after=OF_RED,
        alone={
            **{
                f"includes {side}_cheek": f"({_ONTO}|{_REACHES}|{_GOES} {_DOWN} {_HOW} on|over|on) the {side} cheek"
                for side in ("left", "right")
            },
            "is (left_cheek, right_cheek)": f"({_ONTO}|{_REACHES}|over|on) both cheeks",
            "count at least 1": "((goes|runs|comes|reaches|drips|spills|) (down|) (to|on|as far as)|reaches|touches) "
            "the (cheek|cheeks)",
        },
    ),
    Spoken(
        "hi_on_cheeks",
        beside=f"(red|colour|orange|red spot|some red|red patch|blush|red blush), {_SURELY_RED} ({_ONTO}|{_REACHES}|"
        f"{_GOES} (down|up)|on|over|up|down|all over), red up, covered in red, has it, have it",
        alone={
            "is none": f"cheeks {_FREE} (of red|), {_FREE} cheeks, no {_RED} (on|in|down on|anywhere on) (the|either|) "
            "(cheek|cheeks), nothing on the cheeks, neither cheek (is|) red",
            "is (left_cheek, right_cheek)": "both cheeks (red|have it|covered|in red), cheeks (are|) both "
            "red, red on the cheeks both, red (on|down|over) both cheeks, cheeks both (have it|have red)",
            "count at least 1": "red cheeks, cheeks (are|) red, red on the (cheeks|cheek), (cheek|cheeks) hi",
            "count is 1": "1 cheek (is|) (red|covered), red (on|up|down|over) 1 cheek (only|)",
        },
    ),
    Spoken(
        "hi_on_fins",
        beside=f"{_RED}, orange, red in it, red in them, red on it, some red, red (streak|tinge|patch|stain|mark|spot|"
        "smudge|line|fleck|blot|ray|stripe|edge|tip|wash|flash|splash|bit|dot|speck), (splash|bit|touch|streak|dab|"
        f"lick|wash|tinge|flash|trace|hint|spot|mark|patch|tip|smear|fleck|ray|line) of (red|colour), {_RED} (into|up "
        "into|right into|out into|through|all through|goes into|runs into|runs up into|creeps into|bleeds into|spills "
        "into)",
        alone={
            "is none": "(all|) fins (are|) (all|both|nice and|good and|pure|quite|lovely and|) (white|clean|clear|bare|"
            "snow white|spotless|unmarked|free|plain) (all round|all of them|every one|), (all|) (white|clean|snow "
            "white|spotless|plain white) fins (all round|), no (red|hi|colour|orange) (at all|whatever|anywhere|) (in|"
            "on|anywhere in) (the|any|any of the|her|his|either of the|) (fin|fins) (at all|anywhere|), fins (without|"
            "free of|clear of|clean of) red, nothing in (the|any of the) fins, fins like (milk|snow|paper|chalk), clean "
            "in the fins, fins white as (snow|milk|paper|chalk), fins (without|with not) a (trace|spot|speck|hint|"
            "touch) of red, no red in the fins at all, fins (milk|paper) white, not a spot of red in the fins",
            "is (left_pectoral, right_pectoral, dorsal, pelvic, anal, tail)": "red (on|in) (all|every|each|all the|all "
            "of the) fins, all fins (are|have|) (red|red in them)",
            "count at least 1": f"{_RED} (in|on) (a|one of the|some of the|the|her|his|some|one) (fin|fins), (some|a "
            "little|a bit of|a touch of) (red|colour) (in|on) the fins, red fins, fins (are|) (red|reddish|not clean|"
            "not white|tinged red|streaked|streaked with red|touched with red), fins have (some|a bit of|a touch of|) "
            "red (in them|on them|)",
        },
    ),
    Spoken(
        "hi_on_fins",
        alone={
            f"includes {fin}": f"tip of the {names} (is|) red, {names} (tip|tips) red, red (tip|tips) (on|to) the "
            f"{names}, {names} tipped (in|with|) red"
            for fin, names in (
                ("left_pectoral", "left (pectoral|pectoral fin|pec|chest fin)"),
                ("right_pectoral", "right (pectoral|pectoral fin|pec|chest fin)"),
                ("dorsal", "(dorsal|dorsal fin|back fin)"),
                ("tail", "(tail|tail fin)"),
            )
        },
    ),
    Spoken(
        "hi_on_fins",
        alone={
            "includes tail": "(bottom|lower|upper|top) (tail fin|tail lobe|lobe of the tail|half of the tail) (has|"
            "with) (a|1|2|3|some|) (red|red in it|red ray|red rays|red streak|red edge), red (ray|rays|streak) in the "
            "(bottom|lower|upper|top) (tail fin|tail lobe|lobe|lobe of the tail)",
        },
    ),
    Spoken(
        "hi_on_fins",
        after=("motoaka", "hi_on_fins"),
        alone={
            "count at most 2": "(rest of the|other|all other|all the other) fins (is|are|all|) (clear|clean|white|free|"
            "free of red|without red|fine), (others|the others) (clean|clear|white|free of red)",
        },
    ),
    Spoken("hi_at_fins", beside="red skin at, red skin round"),
    Spoken(
        "motoaka",
        "motoaka, moto aka, base red, joint red, red (joint|root), red (on|in|at) the (joint|root|base) (of|), red "
        "round the root of, 元赤",
        alone={
            "is (left_pectoral, right_pectoral)": "red (at|in|on) the (base|root|joint) of both (pectorals|pectoral fins|"
            "pecs|front fins|chest fins) (about|) (a|) (fingernail|finger|scale) (wide|), motoaka (on|) both (sides|) (of "
            "them|), both joints red, red in both joints, motoaka left and right, red (at|in|on) the (base|root|joint) of "
            "(both|the) (pectorals|pectoral fins|pecs|front fins|chest fins) (both sides|on both sides), red (at|in|on) the "
            "base of both (pectorals|pectoral fins|pecs|front fins|chest fins), both (pecs|pectorals|front fins) red at the "
            "(base|root|joint)",
            **{
                f"includes {side}_pectoral": f"motoaka (on the|) {side} (side|), {side} motoaka, red in the {side} "
                f"joint, {side} joint red, {side} (pec|pectoral|pectoral fin|chest fin|front fin) (is|) red at the "
                f"(base|root|joint), red (on|in) the {side} (pec|pectoral|pectoral fin|chest fin|front fin) at the "
                "(root|base|joint) (only|)"
                for side in ("left", "right")
            },
            "count at least 1": "red (at|in|on) the (base|root|joint) of (a|the) (pectoral|pec|fin|pectorals|pecs|"
            "pectoral fins|front fins|chest fins), red (in|on|at) the (front|pectoral|pec|chest) fin (joints|roots|"
            "bases), red (in|on|at) the (pec|pectoral) (joints|roots|bases), (only|just) (at|in) the (base|joint|root), "
            "only the (joint|base|root), at the base, red at the pectoral base, fin joints red, red fin joints, (pecs|"
            "pectorals|front fins) red at the (base|root|joint|joints)",
            "is none": "joints (clean|white|clear|free), no motoaka, no red in the (joints|fin joints), clean joints, "
            "white joints",
        },
    ),
    SpokenTogether(
        "(both|) (pectorals|pectoral fins|pecs|chest fins|front fins|breast fins) (are|) (both|all|) (white|clean|clear|"
        "free|bare|plain|snow white|without red|free of red|spotless|unmarked), (white|clean|clear|snow white|plain "
        "white) (pectorals|pectoral fins|pecs|chest fins), nothing in the (pecs|pectorals|pectoral fins), no (red|"
        "colour) (in|on) (either|either of the) (pec|pecs|pectoral|pectorals|pectoral fin|pectoral fins|chest fins|"
        "front fins)",
        "hi_amount_left_pectoral is none and hi_amount_right_pectoral is none and count of hi_on_fins at most 4",
    ),
    SpokenTogether(
        f"(a|) {_A_LITTLE} (red|colour) (in|on) both (pectorals|pectoral fins|pecs|chest fins|front fins)",
        "hi_amount_left_pectoral is trace and hi_amount_right_pectoral is trace and hi_on_fins includes left_pectoral "
        "and hi_on_fins includes right_pectoral",
    ),
    *(
        SpokenTogether(
            f"tancho ({said}), ({said}) tancho",
            f"steps is tancho and head_patch_shape is {shape}",
        )
        for shape, said in (
            ("round", "round|perfectly round|circular"),
            ("oval", "oval|egg shaped"),
            ("heart", "heart|heart shaped"),
            ("ragged", "ragged|frayed|irregular|uneven"),
            ("straight_edged", "square|angular"),
        )
    ),
    SpokenTogether(
        "(nice|good|lovely|perfect|perfectly|big|small|neat|) round maruten, maruten (is|) (nice and|perfectly|good and|"
        "properly|) round, maruten round as a (coin|button|penny)",
        "maruten is yes and head_patch_shape is round",
    ),
    SpokenTogether(
        "no other red, no red elsewhere, no more red",
        "nothing",
    ),
    Spoken(
        "head_hi",
        alone={
            "is none": "(naked|bald|empty|blank) (crown|forehead|top), (no|without a) (crown|cap|head patch|head red) (at all|"
            "), head clear (of red|), (white|clean) up to the (shoulders|shoulder), (crown|top of the head|forehead) (is|) "
            "(naked|bare|bald|empty|white|clean)",
            "is hood": "hoodie, (the|its|her|his) (whole|entire) (face|head) (is|has been|) (dipped|dunked|stuck) in "
            "(red|) (paint|ink|jam), (somebody|someone) (has|) (dipped|dunked|stuck) (the|its|her|his) (whole|entire) "
            "(face|head) in (red|) (paint|ink|jam), (red|it|) (goes|is|comes|runs) (right|all|) over the whole "
            "(face|head), (the|) whole (face|"
            "head) (is|) (really|) (red|in red|covered) (really|), (like|) (it is|) wearing a (red|) (mask|hood), lantern "
            "face, (a|) (red|full) (mask|face mask), menkaburi (old style|full|proper|complete|really), covers the (whole|"
            "entire) (head|face) (up|down|) (to the (gills|gill covers|mouth|nose)|)",
            "at least large": "covers the head (up|right up|back|) to the (gills|gill|neck), (too much|a lot of) (of a|) (cap|"
            "hat|hood|red on the head)",
            "at least small": "head red, head hi, (this|it|she|he|) (has|wears|is wearing|with|then) (got|) (a|) "
            "(red|neat|little|small|) (cap|"
            "hat|beret|bonnet|skullcap|thumbprint|helmet), (a|) red (hat|cap|beret|bonnet|skullcap|thumbprint|helmet), head "
            "(has|with) (a|) red (thumbprint|mark|spot|patch|stripe|smudge|blob), (shoe|boot|sock|triangle|upside down "
            f"triangle|letter t|arrow|star|crescent|leaf|comma) on {_HEAD}, (head patch|head red|head hi|red on the head|head "
            "blotch|crown|head plate|head marking) (is|) (shaped|) (a bit|rather|sort of|) (like|) (a|an|) (boot|shoe|sock|"
            "hat|triangle|triangular|square|t|t shape|letter t|diamond|cross|arrow|leaf|wedge|crescent|comma|moon|shoe shape|"
            "kutsu shape|crown), (boot|shoe|t|kutsu|arrow|leaf) (shape|shaped) (head|on the head|head patch|head red|crown), "
            "kado on the head (plate|patch|)",
        },
    ),
    Spoken(
        "head_hi",
        after=_OF_HEAD,
        alone={
            "at least small": "(boot|shoe|kutsu) "
            "(shape|shaped) (goes (left|right)|), (wide|narrow|pointed) (side|tip) (to|towards) the (front|nose|back|tail), "
            "(tip|point|toe) (points|pointing) (to|at) the (nose|nostril|left|right|tail), asymmetric",
            "is hood": "(whole|entire) face (really|), (like|as if) (it is|) wearing a (mask|hood)",
        },
        bare={"at least small": "(a bit|) like a (boot|shoe|sock|hat|triangle|leaf|wedge|beret)"},
    ),
    Spoken(
        "head_patch_shape",
        alone={
            "is split": "(hachi|hachi moyo) (is|) (split|parted|divided), (split|divided|parted) "
            "(on|across|down|along) the (forehead|nose|head|middle of the head|"
            "crown), white (line|stripe|crack) (down|through|along) the (middle of the|) (cap|head patch|head red|hood|head)",
            "is heart": "(red|) (patch|spot|mark|red) on the head (is|) (shaped|) like a heart, (heart shape|heart shaped) "
            f"(patch|red|spot|) on {_HEAD}, heart on {_HEAD}",
            "is round": "(tancho spot|head patch|head spot|ten|cap) (is|) (true|truly|perfectly|properly|dead) round, (round|"
            "perfectly round) (ten|cap), ten round as a (coin|button|penny)",
            "is ragged": "(ragged|frayed|untidy) (cap|head patch|head red|crown patch|ten)",
        },
    ),
    Spoken(
        "head_patch_place",
        alone={
            "is off_left or off_right or off_front or off_rear": "(ten|crown patch|red patch on the head|patch on the head|"
            "red on the head) (sits|is|) (a bit|rather|slightly|) (crooked|askew|skew|on the slant|wonky)",
            **{
                f"is off_{side}": "(red on top of the head|red on the head|head patch|head red|cap|crown patch|patch on the "
                "head|head blotch) (slips|slides|leans|drifts|hangs|sits|lies|is set|shifts|goes off) (over|off|a bit|) (to|"
                f"towards|) (the|) {side} (side|), (patch on the head|head patch|cap|ten|tancho) (is|) (a bit|slightly|) "
                f"{side} of (the|) (centre|middle|line)"
                for side, _ in _SIDES
            },
        },
    ),
    Spoken(
        "head_patch_place",
        after=_OF_HEAD,
        alone={
            f"is off_{side}": f"(slightly|a bit|a touch|just|a hair|a little|) {side} of (the|) (centre|middle|line)"
            for side, _ in _SIDES
        },
    ),
    Spoken(
        "head_hi_front",
        alone={
            "is behind_eyes": "(ten|tancho|head spot) (is|sits|) (well|nicely|) (clear of|short of|behind) the eyes, (red|) "
            "cap (stops|ends) (well|just|) (before|short of|behind) the eyes",
            "is eye_line": "(comes|goes|down|runs|reaches|red comes|head red comes) (down|forward|) to level with the eyes "
            "(and no further|), (up|down|) to the eyes (yes|and no further)",
            "is behind_eyes or eye_line": "(stops|ends|) well (before|short of) the (nostrils|nose holes)",
            "at least nostrils": "(red|head red|cap|) comes forward (almost|nearly) to the (lip|lips|mouth|nose)",
            "at most nostrils": "head (is|) clear at the front, (crown patch|head patch|cap|head red) leaves the nose (free|"
            "clear|white)",
        },
    ),
    Spoken(
        "head_windows",
        alone={"at least 1": "white (bit|spot|hole|patch|dot|scale) in (the middle of|) the (head patch|cap|head red)"},
    ),
    Spoken(
        "hi_on_eyes",
        f"me aka, meaka, me-aka, red eye ring, red ring on the eye, eye ring of red, eye ring red, {_TINT} of red "
        "(on|round|by) the",
        alone={
            "is none": f"(eyes|eye|both eyes) (well|quite|completely|nicely|) {_CLEAR_OF} (it|the red|red|any red|the hi), "
            f"no {_TINT} of red (on|round|near) (the|either) (eye|eyes), (not|nothing) (touching|near|on|over) (an|either|"
            "any) eye, no me aka, me aka nashi, (red|hi|it) (misses|clears|avoids|skirts|goes round|keeps off|stays off) "
            "(both|both the|the|either) (eye|eyes)",
            "count at least 1": "(red|hi|it) (goes|runs|gets|comes|spills|creeps|bleeds) into (the|an) eye, (red|hi) "
            "(swallows|takes|eats|grabs) (an|the) eye, red (round|around) (an|the) eye, (an|the) eye (is|) (ringed|rimmed|"
            "circled|outlined) (in|with|by) red, eye (in|under|inside) the red",
            "is (left_eye, right_eye)": "me aka (both|both sides|left and right), (red|hi) (round|around|into|on) (both|2) "
            "eyes, both (eyes|) (ringed|rimmed|circled|outlined) (in|with|by|) red, (red|hi) (swallows|takes|grabs|reaches) "
            "both eyes",
            "count is 1": "(red|hi|it) (goes|runs|gets|comes|spills|creeps|bleeds) (into|on) 1 eye, (red|hi) (clips|catches|"
            "touches|reaches|grazes|nicks|takes) (1|only 1|just 1) eye (only|and not the other|and misses the other|), me "
            "aka 1 side",
            **{
                f"includes {side}_eye": f"me aka (on the|) {side} (side|eye|), (red|hi|it) (goes|runs|gets|comes|spills|"
                f"creeps|bleeds|spreads) into the {side} eye, {side} eye (is|) (ringed|rimmed|circled|outlined) (in|with|by) "
                f"red, {side} eye (is|) (in|under|inside) the red, (red|hi|it) (clips|catches|grazes|nicks|brushes|kisses) "
                f"the {side} eye"
                for side in ("left", "right")
            },
        },
    ),
    Spoken(
        "hi_on_cheeks",
        "cheek aka, hoaka, hoo aka",
        beside="red on, red spot on, red patch on, red dab on, red mark on, blush on, red smudge on, blob of red on, spot of "
        "red on",
        alone={
            "is none": f"cheeks (are|) (not (marked|red|touched|coloured)|unmarked|untouched|spotless|{_CLEAR_OF} (it|the "
            "red|red)), (no|not a) (red|blush|mark|dab|spot of red|trace of red|speck of red) on (the|either|any) (cheek|"
            "cheeks), cheek aka nashi, (neither|no) cheek (is|) (marked|touched|has any red|has red)",
            "is (left_cheek, right_cheek)": "cheek aka (both|both sides|left and right), (red|blush) on (both|2|the 2) "
            "cheeks, both cheeks (are|) (marked|blushed|rouged|red|coloured|painted), rouge on both cheeks",
            "count is 1": "(rouge|blush) on 1 cheek, 1 (red|rosy|rouged|painted) cheek",
            "count at least 1": "rouge on the (cheek|cheeks), rosy cheeks, rouged cheeks, cheek aka",
            **{
                f"includes {side}_cheek": f"cheek aka (on the|) {side} (side|), {side} cheek aka, {side} cheek (is|has|) (all|"
                ") (marked|blushed|rouged|coloured|painted|got red|red on it|a red spot|a red patch|a red mark|a red dab|"
                f"some red), (rouge|blush|red blotch|red blob) on the {side} cheek"
                for side in ("left", "right")
            },
            **{
                f"is ({side}_cheek)": f"red (on|over) the {side} cheek (only|alone|and not on the {other}|but not the {other}|"
                f"but not on the {other}), only the {side} cheek (is|) (red|marked|has red)"
                for side, other in (("left", "right"), ("right", "left"))
            },
        },
    ),
    Spoken(
        "kuchibeni",
        "lipstick mark, red lip line, red muzzle line, kuchi beni",
        alone={
            "is yes": "(a lot|rather a lot|lots|plenty|a bit|a touch|a dab|a smear|a lick|a trace|a line|a stripe|a hint|"
            "some) of red on the (top|upper|lower|bottom|) (lip|lips|mouth), kuchibeni (under|below|as well|too|also|there|"
            "in place|beneath) (it|that|the head patch|), red (smeared|dabbed|painted|lined) on the (lip|lips|mouth), "
            "(painted|rouged|coloured) (lips|mouth), (as if|like) (it|she|he) (has|had) (been|) (at the|kissed|eaten|"
            "drinking) (jam|lipstick|ketchup|cherries|beetroot|strawberries), (wears|wearing) (lipstick|red lipstick), "
            "mouth (is|) (painted|lined|ringed|rimmed) (in|with|) red, red (round|around|all round) the (mouth|lips)",
            "is no": "(lips|mouth) (has|have|are|is|) (no red|clear of red|free of red|not red|white), no red (near|on|at|"
            "anywhere near) the (mouth|lips), not a (trace|touch|lick|spot) of red on the (lips|mouth), no lipstick, "
            "kuchibeni nashi",
        },
    ),
    Spoken(
        "hi_on_fins",
        alone={
            "is none": "(all|every|each|) (fin|fins) (on|of) (this|it|her|him|this 1|this fish) (are|is|) (all|) (clean|"
            "white|clear|pure white|spotless|unmarked), (no|not a) (red|colour|red mark|red ray|red streak|spot of red|"
            "trace of red|speck of red|drop of red) (in|on|to be seen in) (any|the|any of the|her|his) (fin|fins), (nothing|"
            f"no red) (runs|goes|gets|spills) into the fins, fins (all|well|) {_CLEAR_OF} (red|the red|it|any red), red "
            "(stops|ends|stays) short of (the|all the) fins",
            "count at least 1": "(red|hi|it) (goes|runs|gets|creeps|spills|comes|bleeds) (a little way|a bit|slightly|some "
            "way|half way|all the way|right|) (up|into|out into|up into) (the|a|1) fin, red (rays|tips|edges) in the fins",
            **{
                f"includes {fin}": f"{_SOME_RED} {_CREEPING} (up|out|) (into|up|in|on) the {names}, {names} (has|with|shows) "
                "(red|pink|pinkish|reddish) (streak|streaks|ray|rays|spot|edge|tip|patch|blotch) (at|on|in|along|near) the "
                f"(front|rear|tip|base|edge|top|bottom|middle|leading edge|upper half|lower half|corner|end), {names} (has|"
                "with|shows) (pinkish|pink|reddish|red) (rays|stripes|flecks|marks|blotches|tinge), (a bit|a touch|"
                f"some|a trace|a dab|a lick|a splash|a streak) (of red|) (even|) (on|in|up) the {names}, red (even|) (on|in) "
                f"the {names}"
                for fin, names in (
                    ("left_pectoral", "left (pectoral|pectoral fin|pec|chest fin|front fin)"),
                    ("right_pectoral", "right (pectoral|pectoral fin|pec|chest fin|front fin)"),
                    ("dorsal", "(dorsal|dorsal fin|back fin|top fin)"),
                    ("tail", "(tail fin|caudal|caudal fin|tail lobe|fork of the tail)"),
                    ("anal", "anal fin"),
                )
            },
        },
    ),
    Spoken(
        "hi_on_fins",
        alone={
            f"includes {fin}": "(red|hi|it) (goes|runs|gets|creeps|spills|comes|bleeds) (a little way|a bit|slightly|some "
            f"way|half way|all the way|right|) (up|into|out into|up into) the {names}"
            for fin, names in (
                ("left_pectoral", "left (pectoral|pectoral fin|pec|chest fin|front fin)"),
                ("right_pectoral", "right (pectoral|pectoral fin|pec|chest fin|front fin)"),
                ("dorsal", "(dorsal|dorsal fin|back fin|top fin)"),
            )
        },
    ),
    SpokenTogether(
        "(both|) (pectorals|pectoral fins|pecs|chest fins|front fins|breast fins) (are|) (both|all|) (pure white|see "
        "through white|clear white|pure|whiter than white|white as (milk|snow|paper)|without a (mark|trace|speck|spot)), "
        "both (pure|snow) white (pectorals|pecs)",
        "hi_amount_left_pectoral is none and hi_amount_right_pectoral is none and count of hi_on_fins at most 4",
    ),
    SpokenTogether(
        "red (on|in) both (pectorals|pectoral fins|pecs|chest fins|front fins) (symmetrical|symmetrically|the same|alike|"
        "equal|evenly|to match|matching|the same amount)",
        "hi_on_fins includes left_pectoral and hi_on_fins includes right_pectoral",
    ),
    Spoken(
        "motoaka",
        "mune aka, muneaka, moto aka",
        alone={
            "is (left_pectoral, right_pectoral)": "mune aka (both|both sides|left and right), motoaka (both|both sides|left "
            "and right|pair|matching)",
            "count at least 1": "(bit|touch|some|little|a bit|a touch) of red (running|going|creeping|) (into|in|at|on) the "
            "fin (joint|joints|root|base), red (running|going|creeping) into the (pectoral|pec|fin|front fin) (joint|joints|"
            "root|base), (red|) (just|only) (at|in|on) the (ball|socket|armpit|armpits), red armpits",
            "is none": "mune aka nashi, no mune aka, motoaka nashi",
            **{
                f"includes {side}_pectoral": f"mune aka (on the|) {side} (side|), {side} (pectoral|pec|pectoral fin|front fin|"
                "chest fin) (is|) red (at|on) the (bottom|foot|body end), red (at|on) the (bottom|base|foot|root) of the "
                f"{side} (pectoral|pec|pectoral fin|front fin|chest fin|fin), {side} (pectoral|pec|front fin|chest fin) (is|) "
                "red "
                "(where it joins|where it joins on|where it meets the body|at the joint|at the body)"
                for side in ("left", "right")
            },
        },
    ),
    Spoken("hi_on_cheeks", alone={"is none": "both cheeks (are|) (white|clean|clear|bare|pure white|unmarked|plain)"}),
    SpokenTogether(
        "no head, no crown, no red crown, crown missing, head missing, atama nashi, no red head", "head_hi is none"
    ),
)
"""What is said of where red lies on the head and the fins."""

SAID_OF_AMOUNTS: tuple[Saying, ...] = tuple(
    Spoken(
        f"hi_amount_{place}",
        f"(red|orange|colour) (on|inside) (the|her|his|) {names}",
        levels={
            "trace": f"(a|) {_A_LITTLE}, only a {_A_LITTLE}, just a {_A_LITTLE}",
            "part": "some, half",
            "all": "full, solid, much, lots of, a lot of",
        },
        alone={
            "is all": f"{names} (is|) (all|completely|fully|entirely|solid|totally) red, (whole|entire) {names} (is|) "
            f"red, all red {names}",
            "is none": f"{names} (is|has|with|) ({clear}|without red|free of red|no red|not red|no red in it|no red on "
            f"it|clear of red), no red (in|on) (the|) {names} at all",
            "is part": f"{names} (half|partly|part) red, half the {names} red, half of the {names} (is|) red, red (in|"
            f"on) half (of|) the {names}",
            "is trace": f"{names} has (a|) {_A_LITTLE} (red|colour) (in it|on it|), {names} (slightly|a touch|a bit) red",
        },
        implies=f"{trait} includes {place}",
    )
    for trait, place, names, clear in (
        (
            "hi_on_fins",
            "left_pectoral",
            "left (pectoral|pectoral fin|pec|chest fin|pec fin)",
            "white|clean|clear|free|plain|bare|snow white|see through|see through no colour|transparent|colourless",
        ),
        (
            "hi_on_fins",
            "right_pectoral",
            "right (pectoral|pectoral fin|pec|chest fin|pec fin)",
            "white|clean|clear|free|plain|bare|snow white|see through|see through no colour|transparent|colourless",
        ),
        (
            "hi_on_fins",
            "dorsal",
            "(dorsal|dorsal fin|back fin|top fin)",
            "white|clean|clear|free|plain|bare|snow white|see through|see through no colour|transparent|colourless",
        ),
        (
            "hi_on_fins",
            "pelvic",
            "(pelvic fin|pelvic|ventral fin|belly fin)",
            "white|clean|clear|free|plain|bare|snow white|see through|see through no colour|transparent|colourless",
        ),
        (
            "hi_on_fins",
            "anal",
            "anal fin",
            "white|clean|clear|free|plain|bare|snow white|see through|see through no colour|transparent|colourless",
        ),
        (
            "hi_on_fins",
            "tail",
            "(tail|tail fin|caudal fin)",
            "white|clean|clear|free|plain|bare|snow white|see through|see through no colour|transparent|colourless",
        ),
        ("hi_on_eyes", "left_eye", "left eye", "clean|free"),
        ("hi_on_eyes", "right_eye", "right eye", "clean|free"),
    )
)
"""What is said of how much red a fin or an eye has."""
