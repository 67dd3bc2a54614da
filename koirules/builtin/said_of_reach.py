"""How sorters say where red (hi) begins, how far it runs and what it leaves white, by the parts of the fish that it meets.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.builtin.red_pattern import DETAILS, PATTERN
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_OF_HEAD = ("maruten", *(one.name for one in DETAILS if one.name.startswith("head_") and one.name != "head_windows"))
_OF_PATTERN = tuple(trait.name for trait in PATTERN)
_OF_THE_END = ("hi_places", "odome", "odome_gap", "bongiri", "hi_front_share", "steps")

_DORSAL = "(dorsal|dorsal fin|back fin|top fin)"
_PEC = "(pectoral|pec|chest fin|breast fin|front fin|side fin|pectoral fin|pec fin)"
_CRUMB = (
    "((small|little|tiny|loose|stray|fine|) red (crumb|pinprick|grain)|(crumb|grain|pinprick) of red|loose red dot)"
)
_FIELD = "(patch|field|step|block|island|plate|1|red)"
_SUCH = "(small|big|large|little|good|clear|clean|)"
_IN_ALL = (
    "(in all|all told|altogether|in total|otherwise|counting the head|head included|front and (back|rear)|1 behind "
    "the other|)"
)
_FIRST = f"(red|colour|pattern|(first|front|head) {_FIELD}|{_FIELD} 1|(1|a) (long|big|) (patch|field|band|stripe))"
_GOES = "(goes|runs|reaches|comes|is|lies|going|running|)"
_TO = "(to|till|until|up to|back to|down to|as far as|right to|all the way to)"
_ENDS = "(stops|ends|finishes|quits|is over|stopping|ending)"
_LAST = f"(red|colour|pattern|(last|rear|back|final) {_FIELD}|all red|everything)"
_JUST = "(exactly|right|just|bang|short|well|about|a bit|)"
_LINE = "(lateral line|side line|sideline|line of dots|dotted line|row of dots|line of holes|line on the side)"
_BOTH = "(on both sides|both sides|left and right|on either side|each side|on each side|on the left and the right)"
_SIDES = (("left", "right"), ("right", "left"))

FINGERS = {
    "is 0.6 cm to 1.1 cm": "(half a finger|half a thumb)",
    "is 1 cm to 1.6 cm": "(a|1) fingernail (width|wide|)",
    "is 1.3 cm to 2.1 cm": "(a|1|1 good|a good) finger (width|wide|)",
    "is 1.7 cm to 2.6 cm": "(a|1) thumb (width|wide|)",
    "is 2.5 cm to 4.2 cm": "2 (good|) fingers (wide|)",
    "is 3.8 cm to 6.3 cm": "3 (good|) fingers (wide|)",
    "is 5 cm to 8.4 cm": "4 (good|) fingers (wide|)",
}
"""How wide fingers are."""

_ROWS = {
    "is 1 % to 3.5 %": "(a|1) (scale|row|row of scales)",
    "is 3 % to 7 %": "2 (scales|rows|rows of scales)",
    "is 5 % to 10 %": "3 (scales|rows|rows of scales)",
    "is 7 % to 13 %": "4 (scales|rows|rows of scales)",
}
"""How much of the length rows of scales take: some 35 stand between gill and tail."""

_TAIL = "(tail|tail fin|tail root|tail joint|tail base)"


def _white_at_the_tail(wide: str) -> str:
    """What is said for white of a width between the last red and the tail."""
    return (
        f"{wide} (of|) white (left|) (at the end|before the {_TAIL}|to the {_TAIL}|at the {_TAIL}|in front of the {_TAIL}), "
        f"white (at the end|tail end|end|before the {_TAIL}|in front of the {_TAIL}|at the {_TAIL}) (is|of|) (only|just|about|"
        f") {wide}, white (for|) {wide} (to|before) the {_TAIL}, {_LAST} {_ENDS} (only|just|about|) {wide} (before|short of|"
        f"off|from|in front of) the {_TAIL}, {wide} (between the (red|last patch|last field) and the tail|to go to the tail), "
        f"(odome|ojime|tail stop|(white|) gap (at|before) the tail) (is|of|) (only|just|about|) {wide}"
    )


SAID_OF_REACH: tuple[Saying, ...] = (
    Spoken(
        "head_hi_front",
        alone={
            "is behind_eyes": f"{_FIRST} {_ENDS} {_JUST} behind the eyes",
            "is eye_line or nostrils": f"{_FIRST} ((starts|begins|ends|stops|is|lies|) between the (nostrils and the eyes|"
            "eyes and the nostrils|nostrils and eyes|eyes and nostrils)|(ends|stops) (just|a bit|half a finger|a hair|short|"
            ") (before|short of|behind) the nostrils)",
        },
    ),
    Spoken(
        "head_hi_front",
        after=_OF_HEAD,
        alone={
            "is eye_line or nostrils": "(ends|stops) (just|a bit|half a finger|a hair|) (before|behind|short of) the nostrils"
        },
    ),
    Spoken(
        "head_hi",
        alone={
            "at least small": "(there is|has|with|) (1|some|) (red|) (patch|field|block) on the head (for sure|too|also|), "
            "red on the head (for sure|too|also), (there is|has|with) red on the head",
            "is u_shape": "(u|u shape|horseshoe) (on the head|) (open|opens|opening) (to|towards) the (nose|front)",
        },
    ),
    SpokenTogether(
        "(all|everything|whole fish) (is|) white (but|except|apart from|bar|save) (for|) (the|a bit on the|a patch on the) "
        "(shoulder|back|dorsal|tail|tail end|rear)",
        "head_hi is none and step_count is 1",
    ),
    SpokenTogether("(opens|open) (to|towards) the (nose|front)", "nothing"),
    Spoken(
        "maruten",
        alone={
            "is yes": "(head (patch|spot|field|mark)|(patch|spot|field|mark) on the head) (and|is|) (then|) (white|touches "
            "nothing|not touching anything|does not touch anything|does not touch the (body|shoulder|rest)|free of the body|"
            "not connected|sits free (from the body red|from the body|of the body|))"
        },
    ),
    Spoken(
        "maruten",
        alone={"is no": "head and shoulder (are|) (1 piece|in 1 piece|1 field|1 patch)"},
    ),
    Spoken(
        "maruten",
        after=_OF_HEAD,
        alone={
            "is yes": "(spot|patch|field|) (is|sits|) (not touching anything|touches nothing|does not touch anything|free "
            "from the body red|free from the body|not connected to anything|not joined to anything)"
        },
    ),
    *(
        Spoken(
            "hi_on_eyes",
            alone={
                f"includes {side}_eye": f"(red|) ring (of red|) (round|around|about) the {side} eye, red ring (round|around) "
                f"the {side} (eye|1|), (head (patch|field|red|spot)|cap|hood) (leans|hangs|slips|slides|comes|laps|sits) (a "
                f"bit|a touch|) (over|into|onto|on) the {side} eye (a bit|a touch|), (white head|head (is|) white) (but|"
                f"except) (for|) a (red|) (stripe|spot|line|dab|bit|patch|dot|bit of red) (over|on|at) the {side} eye, {side} "
                "eye (has|with) (a|) (red|) (ring|rim|edge) (of red|) (round it|around it)"
            },
        )
        for side, _ in _SIDES
    ),
    *(
        Spoken(
            "hi_on_eyes",
            after=_OF_HEAD,
            alone={
                f"includes {side}_eye": "(it|) (hangs|slips|slides|comes|laps|goes) (a bit|a touch|just|) (over|into|onto) "
                f"the {side} eye (a bit|a touch|), (it|) (touches|clips|catches|covers|reaches|takes in) the {side} eye (a "
                "bit|a touch|)"
            },
        )
        for side, _ in _SIDES
    ),
    Spoken(
        "kuchibeni",
        alone={
            "is yes": "red on both lips, both lips (are|) red, lips red (both|) (top and bottom|upper and lower), red on "
            "(the|) (upper|top|lower|bottom) lip, (upper|top|lower|bottom) lip (is|) red, lip (is|) red (on|) (the|) (left|"
            "right|both) (half|side|corner|sides|corners) (only|), red on (the|) (left|right) (half|side) of the (lip|lips|"
            "mouth)"
        },
    ),
    SpokenTogether(
        f"{_LAST} {_ENDS} {_JUST} (before|in front of|short of|at the (front|start|beginning|first ray) of|where) (the|) "
        f"{_DORSAL} (begins|starts|), (red|colour|pattern) only (to|as far as|up to) the (front|start) of the {_DORSAL}",
        "bongiri is yes and odome above 40 %",
    ),
    SpokenTogether(
        f"{_LAST} {_ENDS} {_JUST} (half way|half way (down|along) (the|) (back|body|{_DORSAL})|(at|in|under) the middle of "
        f"the (back|{_DORSAL})|at mid dorsal), (long|all|) white (backside|rear end|back end|rear half|back half), (rear|"
        "back|hind|last) (half|third) (of the (fish|body|back)|) (is|) (all|completely|) (white|bare|empty|without red), "
        f"(all|) white from the (middle|{_DORSAL}|middle of the {_DORSAL}|front of the {_DORSAL}) (on|back|to the tail|down) "
        f"(to the tail|), (from|behind|after|past) the {_DORSAL} (on|) (all|only|nothing but|bare|) (white|nothing|bare|"
        "empty)",
        "bongiri is yes",
    ),
    Spoken(
        "odome",
        alone={
            "is 8 % to 25 %": f"{_LAST} {_ENDS} {_JUST} (at|with|level with|by|on|behind) (the|) ((end|back|rear|last ray|"
            f"back end|tail end) of the {_DORSAL}|last (dorsal|) ray|last ray of the {_DORSAL}|rear edge of the {_DORSAL}), "
            f"{_LAST} {_ENDS} {_JUST} where the {_DORSAL} (ends|stops), white from the (end|rear|back) of the {_DORSAL} to "
            "the tail",
            "below 1 %": f"last field (right|just|) (touches|reaches|runs into|goes into|goes to|runs to) the {_TAIL}, (last|"
            f"rear|tail) (patch|field|step) (sits|lies) (right|just|bang|) (on|against|up against) the {_TAIL}, {_LAST} "
            "(runs|goes|) to the very (edge|end|tail)",
            **{rows: _white_at_the_tail(wide) for rows, wide in _ROWS.items()},
        },
    ),
    Spoken(
        "odome",
        after=_OF_THE_END,
        alone={
            "at least 4 %": "(from there|behind that|behind it|after that|after it|then) (on|) (it is|) (all|bare|just|only|"
            "nothing but|clean|) (white|nothing|empty) (right|all the way|) (to the tail|back to the tail|down to the tail|"
            "), (all|just|) white (from there|behind that|behind it|after that) (on|back|to the tail|), nothing (after|"
            "behind|past) (that|it)",
            "below 1 %": "no white (behind|after|past) (it|that|the last (patch|field|1)), (right|) to the very (edge|end), "
            "(tip|point|end of it) (just|) (touches|reaches) the tail",
        },
    ),
    Spoken("odome_gap", alone={width: _white_at_the_tail(wide) for width, wide in FINGERS.items()}),
    Spoken("odome_gap", "white end, last (patch|field|step|1) (stops|ends), white tail end of"),
    Spoken(
        "hi_below_line",
        alone={
            "is 0 %": "(red|colour|pattern|it) ((goes|runs|reaches|comes|hangs) (down|) (to|as far as)|(ends|stops) at) the "
            f"{_LINE} {_BOTH}, (red|colour|pattern|it) (goes|runs|reaches|comes|hangs) down both sides (to|as far as) the "
            f"{_LINE}, (sides|flanks|both sides) (are|) (clean|white|clear|bare) (below|under) the ({_LINE}|line), no red "
            f"(below|under) the {_LINE}, (red|colour|pattern) (stays|keeps|is) (well|) above the {_LINE} {_BOTH}",
            "above 0 %": "(red|colour|pattern|it) (goes|runs|reaches|comes|hangs) (down|) (past|below|under|beyond) the "
            f"{_LINE} (on the (left|right)|{_BOTH}|), (1|2|3|4|5|a few) (scales|rows|scale|row|rows of scales) (below|under|"
            f"past) the {_LINE}",
        },
    ),
    Spoken(
        "makibara",
        alone={
            "is yes": "(red|colour) (goes|runs|reaches|comes|hangs|wraps) (right|all the way|) down (the|her|his|) (left|"
            "right|both|) (side|sides|flank|flanks) (right|all the way|) (to|onto|into|on) the (belly|underside)"
        },
    ),
    *(
        SpokenTogether(
            f"all (of|) (the|) red (is|lies|sits|) {side} of the ({_DORSAL}|spine|middle|middle line|centre line|midline|"
            f"back line|ridge), {other} side (is|) (all|completely|) (white|bare|empty|clean) from (gill|head|gills|nose) to "
            f"tail, (nothing|no red) on the {other} (side|) from (gill|head|gills|nose) to tail, (all|) (red|pattern) (is|) "
            f"only {side} of the ({_DORSAL}|spine|middle)",
            f"one_sided is yes and hi_left_share {share}",
        )
        for (side, other), share in zip(_SIDES, ("above 85 %", "below 15 %"), strict=True)
    ),
    Spoken(
        "hi_front_share",
        alone={
            "above 70 %": "(heavy|full|busy) (in|) front (and|) (light|empty) (at the|) (back|rear|behind), (so|) (the|) "
            "front (half|end|) (is|) (full|heavy|loaded|busy) and (the|) (back|rear|tail end) (half|end|) (is|) (empty|bare|"
            "light|white|thin)"
        },
    ),
    Spoken(
        "steps",
        alone={
            **{
                f"is {name}": f"(pattern|otherwise|i count|pattern is|) {number} {_SUCH} (red|separate|) (fields|bands|fields "
                f"of red|bands of red) {_IN_ALL}, (pattern|otherwise|i count) {number} {_SUCH} (red|) (patches|steps) "
                f"{_IN_ALL}, {number} (red|) (patches|steps) (otherwise|front and (back|rear)|1 behind the other), (patches|"
                f"fields|steps) {number}, pattern to the tail in {number}"
                for name, number in (
                    ("nidan", "2"),
                    ("sandan", "3"),
                    ("yondan", "4"),
                    ("godan", "5"),
                    ("many", "(6|7|8)"),
                )
            },
            "is ippon or inazuma": "never (stops|breaks) (until|till) the (tail|end)",
            "is ippon": "(1|a single) (field|block|band) (from head to tail|from the head to the tail|all the way|without a "
            "break|from nose to tail), red all along the back (with|and) (no|without a) (gap|break), red (from|) (head to "
            "tail|the head to the tail|nose to tail) (in 1 piece|without a break|with no break|in 1 go)",
            "is inazuma": "(red|pattern|it) (goes|runs|swings|sits) (first|) (left|right) then (left|right) then (left|"
            "right) (again|)",
        },
    ),
    Spoken(
        "tobihi",
        f"{_CRUMB}",
        of_parts="all",
    ),
    Spoken(
        "tobihi_places",
        f"{_CRUMB}",
    ),
    *(
        Spoken(
            "hi_on_fins",
            alone={
                f"includes {fin}": "(front|back|tip|edge|top|middle|lower half|upper half|upper lobe|lower lobe|first rays) "
                f"of (the|) {names} (has|have|with|is) (some|a bit of|a touch of|) red (in it|on it|in them|), {names} (has|"
                "with) (a|1|2|3|some|a few) red (ray|rays|streak|streaks|edge|spot|tip)"
            },
        )
        for fin, names in (
            ("dorsal", _DORSAL),
            ("tail", "(tail fin|tail)"),
            ("left_pectoral", f"left {_PEC}"),
            ("right_pectoral", f"right {_PEC}"),
            ("pelvic", "(belly fin|pelvic|pelvic fin)"),
            ("anal", "(anal fin|anal)"),
        )
    ),
    Spoken(
        "steps",
        alone={
            **{
                f"is {name}": f"(has|have|) {number} red (on (the|) (body|back)|step by step|piece|and between clean|and clean "
                f"between|and white between), red (is|) (simple|) {number} (piece|place|part), red piece (is|are|) {number}, "
                f"{number} {_FIELD} (and|) (all|) (different sizes|of different sizes|uneven), (a|) (fair|average|good average|"
                f"honest) {number} step, {name} (loose|textbook|weak|average|high on (the|) back|and textbook)"
                for name, number in (("nidan", "2"), ("sandan", "3"), ("yondan", "4"), ("godan", "5"))
            },
            "is nidan or sandan": "(then|and|) (2|nidan) (steps|patches|) (behind|after)",
            "is sandan or yondan": "(then|and|) (3|sandan) (steps|patches|) (behind|after)",
            "is nidan or sandan or yondan or godan or many": "danmoyo (textbook|clear|clean|good|)",
            "is ippon": "(1|a|single|1 single) long (red|) (blanket|carpet|ribbon|runner) (from head to tail|down the back|), "
            "(red|) from (the|) head (goes|go|runs|) to (the|) tail (with|) no (stop|break|gap), (is|) (a|) long stripe (only|"
            "and nothing else), ippon (to|down to|with|over) (the|) (tail|nose), ippon (with|) (1|a) notch",
            "is ippon or inazuma": "(red|it|pattern|) (runs|flows) like a river (down|along) the back",
            "is sandan or inazuma": "(sandan inazuma|inazuma sandan) (mix|mixed|mixture)",
        },
    ),
    Spoken(
        "white_gap",
        alone={
            "at most short": "(could do with|needs|wants|need) a (break|gap) (somewhere|in it|)",
            "is none": "no (break|gap) no (nothing|gap|break)",
            "is long": "(then|) (a|) long white (nothing|gap|stretch|space)",
        },
    ),
    Spoken(
        "odome",
        alone={
            "at least 1 %": "(here|there is|has|have|) (have|) (a|some|) white (place|spot|space|area|bit) before (the|) tail",
            "below 1 %": "(odome|ojime|ondome) (none|missing|gone)",
            "is 3 % to 12 %": "what a (perfect|lovely|good|beautiful|nice) (ending|finish|stop) (at|before) the tail",
        },
    ),
    Spoken(
        "odome_gap",
        alone={width: f"(odome|ojime|ondome|tail stop) (of|is|about|) {wide}" for width, wide in FINGERS.items()},
    ),
    Spoken(
        "one_sided",
        alone={
            "is yes": "kata moyo, katamoyo, (red|colour|pattern) (is|) (more on|on) 1 side more, (red|colour|pattern) on 1 side, "
            "from the other side (you would (think|say)|one would think) (it is|it was|she was|he was) a white fish"
        },
    ),
    *(
        Spoken(
            "hi_left_share",
            alone={
                share: f"all the (red|colour|pattern) (has|) (slid|slipped|fell|fallen|slides|went|goes) to the {side}, "
                f"(red|colour|pattern) on {side} (side|) only"
            },
        )
        for (side, _), share in zip(_SIDES, ("above 75 %", "below 25 %"), strict=True)
    ),
    Spoken(
        "hi_front_share", alone={"above 70 %": "front (is|) red (and|) (back|rear|behind) (nothing|white|empty|bare)"}
    ),
    Spoken(
        "hi_below_line",
        alone={
            "above 0 %": "makikomi (on|) (the|) (left|right|both|both sides|), (red|colour) (goes|go) down (nice|"
            "nicely|well) on (both|2|the 2) sides"
        },
    ),
    Spoken(
        "interest",
        alone={"is plain": "pattern (is|) nothing, nothing of a pattern"},
    ),
    Spoken("niban_hi", "nibani, nibanhi"),
    Spoken(
        "pattern_type",
        alone={"is gotenzakura": "goten type, goten", "is komoyo": "(steps|patches) (are|) (all|) (small|little)"},
    ),
    Spoken("maruten", alone={"is yes": "(a|) separate (crown|cap|spot|patch) on the head"}),
    Spoken(
        "maruten",
        after=_OF_HEAD,
        alone={"is yes": "(it|) (does|do|) not touch (the|any|) other red"},
    ),
    Spoken(
        "head_hi_front",
        alone={
            "is behind_eyes": "(head (red|hi|patch|pattern)|red on the head) (stops|ends|is|) (well|just|a bit|) short of "
            "the eyes",
            "is eye_line or nostrils": "(head (red|hi|patch|pattern)|red on the head|red|hi) (stops|ends) (right|just|well|"
            "nicely|) (above|short of) the (nostrils|nose holes)",
            "at least nostrils": "(head (red|hi|patch|pattern)|red on the head) (comes|goes|runs|is|reaches) (down|forward|"
            ") (a bit|a touch|rather|much|) too far (down|) (for my (liking|taste)|), head (red|hi|pattern) too far down",
            "at most nostrils": "nose (is|) (clean|white|clear|free) and (clean|white|clear|free|tidy)",
        },
    ),
    Spoken(
        "head_hi_front",
        after=_OF_HEAD,
        alone={
            "is behind_eyes": "(stops|ends|) (well|just|) short of the eyes",
            "is eye_line or nostrils": "(stops|ends) (right|just|well|) above the (nostrils|nose)",
            "is nostrils": "(down|runs|goes|comes) (right|just|) (to|on) the (nose line|nostril line|line of the nostrils)",
            "at least nostrils": "(comes|goes|runs|reaches) (down|forward) (a bit|a touch|) too far",
        },
    ),
    SpokenTogether(
        "only (a|the|) (bit of|) white nose left, only the nose (is|) (still|) white, (just|only) (a|) white (tip of "
        "the|) nose left",
        "head_hi at least large and head_hi_front at most nostrils",
    ),
    Spoken(
        "head_hi",
        alone={
            "is none": "(head (is|) bald|bald (head|headed)|bozu|bozu head|bald as an egg (this 1|))",
            "is u_shape": "kutsubera (head|hi|shape|pattern), shoehorn (shape|shaped|head|) (head|red|), (head (red|hi) (is|) "
            "|)(like|) a shoe horn",
            "at least large": "(head (red|hi|patch|pattern)|red on the head) (comes|hangs) (down|) (very|too|far) (low|"
            "down) (on both sides|), too much (red|hi|colour) on the head, head (is|) (too red|overloaded)",
        },
    ),
    Spoken(
        "head_hi",
        after=_OF_HEAD,
        alone={"is u_shape": "(open in front|opens in front|opens at the front|open at the front)"},
    ),
    Spoken("head_hi", alone={"is u_shape": "u shape (open|opens) (front|in front|at the front)"}),
    Spoken(
        "maruten",
        after=_OF_HEAD,
        alone={
            "is yes": "(clean|clear|good|nice) neck, (all|) by itself, (well|nicely|clearly|) parted from the "
            "(body|rest|shoulder), (stands|sits) (all|) alone"
        },
    ),
    Spoken(
        "maruten",
        alone={
            "is yes": "(a|) (little|small|neat|round|red|) (red|round|) (cap|spot|patch|button) on the head (all|) (by itself|on "
            "its own|alone), head (spot|patch) (stands|sits) free"
        },
    ),
    Spoken(
        "head_patch_place",
        alone={
            "is off_left or off_right": "(head (red|patch|spot|hi)|(red|patch|spot) on the head) (is|sits|) (a bit|a touch|"
            "slightly|just|a little|) (lopsided|off the (axis|middle|centre line)|skewed)",
            **{
                f"is off_{side}": "(ten|head spot|head patch|cap|tancho|maruten|head red|head hi) (sits|is|slid|slipped|) "
                f"(over|a bit|a touch|slightly|) off (to (the|its|her)|) {side}, (ten|head spot|head patch|cap|tancho|"
                f"maruten) (sits|is|) (a bit|a touch|slightly|) {side} of (centre|the middle)"
                for side, _ in _SIDES
            },
            "is centred": "(head spot|head patch|spot|cap|ten|tancho) (sits|is|) (dead|bang|right|exactly|nicely|well|"
            "perfectly|) (centred|central|in the centre|in the middle)",
            "is off_rear": "(head spot|head patch|spot|cap|ten|tancho) (sits|is|) (set|) (a bit|a little|slightly|too|) "
            "(far|) back, sits (set|) (a bit|a little|slightly|too) (far|) back",
            "is off_front": "(head spot|head patch|spot|cap|ten|tancho) (sits|is|) (set|) (a bit|a little|slightly|too|) "
            "(far|) forward",
        },
    ),
    Spoken(
        "head_patch_place",
        after=_OF_HEAD,
        alone={
            "is centred": "(dead|bang|exactly|perfectly) (centre|centred|in the centre|in the middle) (which you hardly ever "
            "get|)",
            "is off_left or off_right": "(just|a bit|a touch|slightly|a little) (off centre|off the (axis|middle|line)|to "
            "(1|one) side), not (quite|) (centred|central)",
            **{
                f"is off_{side}": f"(a bit|a touch|slightly|) off (to the|) {side}, (spot|patch|) sits off (to the|) {side}"
                for side, _ in _SIDES
            },
        },
    ),
    Spoken(
        "head_patch_shape",
        alone={
            "is oval": "(head (red|patch|spot)|spot on the head|ten) (is|) (more|) (like an egg|egg "
            "shaped|oval|oblong|longish|egg)",
            "is straight_edged": "(head (red|patch|hi)|red on the head) (stops|ends|is cut|cut) (off|) (square|straight|dead "
            "straight|straight across|in a straight line)",
            "is ragged": "(head (red|patch|hi)|red on the head) (is|) (ragged|frayed|jagged|torn|fringed|rough) (at the "
            "(front|edge|edges)|in front|)",
        },
    ),
    Spoken(
        "head_patch_shape",
        after=_OF_HEAD,
        alone={
            "is oval": "(not quite round|) (more|) like an egg, egg shaped, more of an (oval|egg)",
            "is straight_edged": "(stops|ends|cut off|is cut off) (square|straight across|dead straight)",
        },
    ),
    *(
        Spoken(
            "hi_on_eyes",
            alone={
                f"includes {side}_eye": "(red|) (touches|clips|catches|kisses|creeps over|creeps into|covers half) (half|) "
                f"(of|) the {side} eye (on top|from above|at the top|in front|at the back|a bit|), (1|a) red eyebrow (over|"
                f"on) the {side} (eye|), red eyebrow {side}"
            },
        )
        for side, _ in _SIDES
    ),
    Spoken("hi_on_eyes", alone={"count at least 1": "(1|a) red eyebrow"}),
    Spoken("head_patch_shape", alone={"is heart": "head (red|patch|spot|) (is|) like (a|) heart"}),
    Spoken("head_patch_shape", after=_OF_HEAD, alone={"is oval": "(is|a bit|) oval"}),
    Spoken(
        "head_patch_place",
        alone={
            f"is centred or off_{side}": f"ten (a hair|a bit|slightly|a touch) (to the|) {side}" for side, _ in _SIDES
        },
    ),
    Spoken("head_hi", alone={"is hood": "mask (right|all|) over the (face|head)"}),
    Spoken(
        "head_hi_front",
        alone={
            "at most nostrils": "(big|large|small|) (head patch|head red|head hi|red on the head) (stops|ends|is|) (well|a "
            "good way|far) short of the nose",
            "at least nose": "nose (is|) red (right|) to the (end|tip)",
        },
    ),
    Spoken(
        "hi_on_eyes",
        alone={
            "is (left_eye, right_eye)": "(this fish|it|she|he|) (has|wears|wearing|with|has got) (its|her|his|red|) "
            "(glasses|spectacles) (on|), eye hi (both|on both)",
            **{f"includes {side}_eye": f"eye hi {side}, hi (on|) eye {side}" for side, _ in _SIDES},
        },
    ),
    Spoken(
        "kuchibeni",
        alone={
            "is yes": "kissed on the lips, (pale|light|bright|) (pink|red) lips, kuchibeni (on|) (1|the left|the right) side"
        },
    ),
    Spoken("windows", alone={"at least 1": "(red|hi|patch) (has|have|with) (a|) hole (inside|in it|in the middle)"}),
    Spoken(
        "head_windows",
        alone={
            "at least 1": "white (patch|spot|hole|dot) (right|) in the middle of (the|) (head red|head patch|head hi|"
            "red on the head)"
        },
    ),
    Spoken("kiwa", "line of red, line of the red"),
    Spoken(
        "kiwa",
        alone={
            "is razor": "line of (the|) red (is|) sharp (like|as) (cut|a knife)",
            "at most fair": "(line of (the|) red|edge|kiwa) (is|are|) not (clean|sharp|clear)",
        },
    ),
    Spoken(
        "kiwa",
        after=("kiwa", "kiwa_style", "sashi_depth"),
        alone={"is blurred": "like (water|wet ink|ink) on (wet|) paper"},
    ),
    Spoken("sashi_depth", alone={"at least 2": "sashi (all over|everywhere)"}),
    Spoken(
        "shiroji",
        alone={
            "is snow": "(white|skin|) (is|) like (new|fresh|fallen|fresh fallen) snow, that is (snow|what i call snow)"
        },
    ),
    Spoken("white_head", alone={"is yellow": "head (is|) (yellow|yellowish) (colour|color|coloured)"}),
    Spoken("hi_strength", alone={"is fair": "(middle|middling|average) (colour|red)"}),
    Spoken(
        "hi_tone",
        alone={
            "is orange": "(red|hi|colour|beni) (is|) (still|) baby orange",
            "is orange_red": "(beni|red|hi) (is|) brick",
        },
    ),
    Spoken(
        "hi_thick",
        alone={
            "is thin": "(you|) (could|can) (read a (newspaper|paper|book)|see) (right|straight|) through (the|that|"
            "this) (red|hi|colour)",
            "at most fair": "(red|hi|beni|colour) (could|should|might) be (a touch|a bit|a little|) (thicker|deeper laid)",
        },
    ),
    Spoken(
        "hi_on_fins",
        alone={"count at least 1": f"(1|a) {_PEC} (has|with) (a|) (stripe|streak|bit|touch|spot) of red"},
    ),
    # ---- At the tail
    Spoken(
        "bongiri",
        alone={
            "is yes": "(nothing|not a thing|no red|no more red) (past|behind|after) the (top fin|fin|fin on top), (behind|"
            "past|after) the (top fin|fin|fin on top) (it is|is|) (all|) (empty|white|bare|nothing|blank), red from (head|"
            "crown|nose|neck|shoulder) to (dorsal|the top fin|fin) then (zero|nothing|none|white|nothing more|no more), (rear|"
            "back|last|hind|tail) third (is|) (all|) (blank|bare|empty|white|without red|nothing), (then|and then) (it is|) "
            "(all|just|only|) (a|) white fish, (red|pattern) (ends|stops) (before|in front of) the (top fin|fin) (even|) "
            "(starts|begins)"
        },
    ),
    Spoken(
        "odome",
        alone={
            "is 15 % to 40 %": "(last|rear|back|hind) quarter (is|) (all|) (white|bare|empty|blank)",
            "below 1 %": "red touching the tail, (red|pattern) (right|straight|) into the (o|caudal root|caudal|tail root), "
            "(runs|red runs|goes|red goes) (right|straight|) into the (o|caudal root|caudal), tail (is|) all red at the (root|"
            "base|joint), (gap|white) (to|before|at) the tail (fin|) (is|) (zero|nothing|nil|none), no white before it, (red|"
            "pattern|it) (stops|ends) (only|) where the tail (begins|starts), no (breath|breathing space|air|rest) (at the "
            "(back|rear|tail)|before the tail)",
            "at least 1 %": "(ends|finishes|stops) (with|on|in) (a bit of|some|clean|) "
            "white, clear again before the tail, (white|clean) again before the tail, white left before the tail",
            "is 3 % to 12 %": "(white before the tail|tail stop|odome|tail gap) (does it|makes it|finishes it|rounds it off|"
            "lovely|very good), tail joint (is|) (nice|nicely|lovely|good|and) (and|) white",
            "is 1 % to 12 %": "(red|pattern|it|last patch) (ends|stops) (just|only just|right) before the tail",
            **{
                rows: f"about {wide} (of|) white before the tail, reaching {wide} (from|short of) the tail, {wide} (of "
                "white|) (left|) to the tail"
                for rows, wide in _ROWS.items()
            },
        },
    ),
    Spoken(
        "odome",
        after=_OF_THE_END,
        alone={"below 1 %": "(and|) (goes|runs|carries on) (right|straight|) to the tail, (touches|touching) the tail"},
    ),
    # ---- Down the sides
    Spoken(
        "hi_below_line",
        alone={
            "is 0 %": "(hi|red|pattern|colour) (stops|ends) at (the|) (lateral|lateral line|side line|line of dots) (both "
            "flanks|both sides|on both flanks|flat|), (lateral|lateral line|side line) hi both sides (then flat bottom edge|)",
            "at most 5 %": "(red|pattern|it|the red on the back|red on the back|) (comes|goes|reaches|runs|hangs) (down|) "
            "(nicely|just|only|) (down|) (to|) (about|) (the|) (middle of the (side|flank)|half way down the (side|flank)), "
            "(comes|goes|reaches) (down|) (nicely|) to (about|) the (side line|lateral line|line of dots), (red|it|) (comes|"
            "goes|runs) down the (side|sides|flank) (as far as|to|until) the (line of dots|side line|lateral line|line)",
            "at most 10 %": "no depth (down|on|over) the (flank|flanks|side|sides), (hi|red|patch|hi patch|red patch|pattern|"
            "it|) (rides|sits|lies|is set|stays) (a touch|a bit|rather|too|very|) high (on (the|) (back|shoulder|shoulders|"
            "top)|up|), (hi|red) (a touch|a bit|rather|too) high on the (shoulder|shoulders|back), (sits|lies) on (the back|"
            "top) like a (lid|cap|hat|blanket), (red|it|pattern|) (does not|never) (get|reach|come|go) (down|) (to|) the "
            "(sides|flanks), (white|clean|clean white) (sides|flanks), (shallow|flat) (on|over|down) the (sides|flanks)",
            "above 0 %": "goes down the (left|right) side nearly to the belly, (ends|hangs) low (down|) on the (sides|flank), "
            "(runs|goes|comes|hangs) down both (flanks|sides)",
        },
    ),
    Spoken(
        "makibara",
        alone={
            "is yes": "(second|first|third|last|saddle|shoulder) (step|patch|plate|) (wraps|wrapped|wraps down|wraps round) "
            "(nicely|well|), (red|it) wraps (right|all the way|) round (at|in|on) the (middle|shoulder|dorsal), (maki|wraps|"
            "wrap) left then right, (good|nice|deep) wrap (on|at|to) the (second|first|last|shoulder)"
        },
    ),
    *(
        Spoken(
            "wrap_sides",
            alone={
                f"is lower_{side}": "(hi|red|pattern|step|patch|it|the step over the dorsal) (hangs|comes|reaches|drops|goes) "
                f"(lower|further|further down|deeper|down further|down more) on the {side} (side|) (than the other|)"
            },
        )
        for side, _ in _SIDES
    ),
    Spoken(
        "wrap_sides",
        alone={
            "is even": "red on both sides (the|at the) same height, (red|pattern|wrap|both sides) (ends|stops|is) (at|) (the|"
            ") same height (on both sides|left and right|both sides|), (both sides|left and right) (down|) (to|) (the|) same "
            "(height|depth|line)"
        },
    ),
    Spoken(
        "wrap_sides",
        after=("wrap_sides",),
        alone={
            "is lower_left or lower_right": "(other|the other) side (is|) (kept|) (up|) high (and tidy|), (left|right) (side|"
            ") (is|) (kept|) high, (about|) (1|2|3|4) rows of scales lower"
        },
    ),
    SpokenTogether(
        "(i see|i can see|i find|) nothing bad (here|on it|at all|), (rest|other|others|everything else|the rest) (is|) (okay|ok|"
        "passes|fine|acceptable), (first|second|third|last) (step|patch) (is|) (a|) saddle, (nice|good|deep|) (nice|good|deep|) "
        "saddle (at|on|over) the dorsal",
        "nothing",
    ),
    Spoken(
        "hi_below_line",
        alone={
            "is 0 %": "(red|colour|it) (stops|ends|finishes|quits) (just|right|dead|exactly|neatly|bang|) (on|at|above|"
            f"short of) (the|) ({_LINE}|lateral) ({_BOTH}|both flanks|on both flanks|on either flank|left and right|), (red|"
            "colour|it) (comes|goes|runs|reaches|hangs) (nicely|just|) down (the side|the sides|both sides|the flanks|) "
            f"(about|just|nicely|) (to|as far as) (about|just about|roughly|) (the|) ({_LINE}|lateral) ({_BOTH}|and stops|"
            "and no further|), nothing (over|down|on) the (sides|flanks), (red|hi|it) (is|) (confined|kept|"
            "restricted|limited) to the back, (no|nothing) (red|hi|) (down|on) (either|the) (flank|flanks|side|sides)",
            "at most 10 %": "(red|it|hi|pattern|hi patch|patches) (rides|sits|lies|carried|is|stays|sit|lie) (nice and|good "
            "and|rather|very|) (high|high up) (on the (back|shoulders)|), (sits|lies|rests) on the back like a (lid|saddle|"
            "blanket|cloak|rug|hat|cap|shawl|cape|roof), (high|) on the back like a (lid|saddle|blanket|cloak|rug|shawl|"
            "cape), no depth down the (flank|flanks|side|sides), (red|hi) (does|) not (come|reach|go) (far|very far|much|"
            "deep) down the (sides|flanks)",
            "above 0 %": f"(red|it|hi) (goes|comes|runs|reaches|hangs|dips) (past|below|under|beyond) the {_LINE} ({_BOTH}|"
            "(on|) (left|right)|) by (a|1|2|3|4|5) (scale|scales|row|rows|finger|fingers), (red|it|hi) (drips|drops|"
            f"laps|pours|slides) (down|over) (both|the|either|each) (flank|flanks|side|sides) (past the {_LINE}|), (red|hi) "
            f"(just|) (past|below|under|beyond) the (line|lateral) ({_BOTH}|), (red|it) (just|) (crosses|passes|clears|goes "
            f"beyond) the ({_LINE}|lateral)",
            "above 5 %": "(red|it|hi) (goes|comes|runs|reaches|spills|drips|hangs|drops) (down|) (the|) (left|right|left "
            "side|right side|left flank|right flank|both sides|sides|side|both|1 side|) (nearly|almost|practically|just "
            "about|close) to the (belly|tummy|stomach|vent), (nearly|almost|practically|just about) to the (belly|tummy|"
            "stomach) (on (both|the left|the right|1 side|both sides)|both sides|), (red|hi|it) (hangs|sits|lies|reaches|"
            "comes) (very|too|rather|) (low|deep) on (the left|the right|both sides|1 side|the sides|the flanks), (red|hi) "
            "(a bit|too|rather|very|) (low|far down) (on|at) the (sides|flanks|left|right|shoulders)",
        },
    ),
    Spoken(
        "makibara",
        alone={
            "is yes": "(red|it|hi) (wraps|goes|runs|comes) (right|all the way|clean|clear|) (round|around) (the body|the "
            "waist|the middle|at the middle|underneath|in the middle|it|her), (makikomi|maki) (good|nice|strong|yoi|deep|"
            "ii), (good|nice|strong|deep) makikomi, (meets|joins|nearly meets|almost meets) (underneath|under the belly|on "
            "the belly)",
            "is no": "maki (nashi|none), no (wrap|maki|makikomi|makibara) (at all|to speak of|)",
        },
    ),
    Spoken(
        "wrap_sides",
        alone={
            **{
                f"is lower_{side}": f"(red|hi) on the {side} (side|flank|) (is|comes|goes|hangs|reaches|lies) "
                "(lower|deeper|further down|low) than (on|) "
                f"the {other} (side|flank|1|), (red|hi) (is|comes|goes|hangs|reaches|lies) (down|) (lower|deeper|further "
                f"down) on the {side} (side|flank|) "
                f"than (on|) the {other} (side|flank|1|)"
                for side, other in _SIDES
            },
            "is even": "(red|hi|it) (comes|goes|hangs|reaches|runs) down (on|) both (sides|flanks) (about|roughly|pretty "
            "much|exactly|just|) (the same|"
            "alike|equally|evenly|the same amount|as far), (red|hi|it) (on|) (both|the 2|either) (sides|flanks) (the "
            "same|same|at the same|to the same|at 1) "
            "(height|level|depth) (down|), (same|equal) (height|depth|level) (on|) (both|either) (side|sides|flank|flanks), "
            "equal on both sides",
        },
    ),
    SpokenTogether(
        "(red|hi|colour) (on|) both (sides|flanks) (is|) (even|equal|alike|equally|balanced|the same|same|about equal|about "
        "the same), (red|hi|colour) (even|equal|equally|the same|balanced|shared) (on|over|between) (the 2|both|either) "
        "(sides|flanks|side)",
        "hi_left_share is 40 % to 60 %",
    ),
    Spoken(
        "hi_cover",
        alone={
            "above 90 %": "aka muji, (a|nearly a|almost a|practically a) red fish (with (a|) white (trim|edging|trimmings)|"
            "), (practically|nearly|almost|all|) tomato from (end to end|top to toe|tip to tip), benigoi, (a|nearly a|"
            "almost a|would call it a) benigoi",
            "below 20 %": "(just|only|) (a|) (whisper|hint|trace|dash|scrap|smidgen|lick|dab|sprinkle|suggestion|wisp|"
            "ghost) of (red|hi|colour) on (the back|the body|it|her|him|this 1)",
            "at most 30 %": "(not|never) (so|very|that|too) much of (it|the red), red (not|never) (so|very|that) much (of "
            "it|), (wants|needs|could do with|could use) (more|a bit more|a lot more|some more) (on (it|her|him|the fish)|"
            "red on (it|her|him)), (only|just|) (a|) (modest|small|stingy|mean|frugal) (amount|helping|share|dose) of red, "
            "(modest|scanty|scarce|sparing) (red|hi), (red|hi) (is|) (modest|scanty|scarce|sparing|in short supply)",
            "at least 50 %": "(lots|a lot|masses|loads|heaps|tons) of (red|hi) (above|on top|here), (heavy|loaded|laden) "
            "with red, (generous|heavy|greedy) (amount|helping|share|dose|covering|with the) (of|) red",
            **{
                reading: f"(about|roughly|say|around|maybe|) {said} (red|coloured|covered)"
                for reading, said in (("is 17 % to 23 %", "(a|1) fifth"), ("is 20 % to 30 %", "(a|1) quarter"))
            },
        },
    ),
    Spoken(
        "hi_cover", alone={"at least 50 %": "(the|) (whole|entire) (fish|thing|body|back) (is|) more red than white"}
    ),
    Spoken("hi_below_line", after=("hi_below_line",), bare={"is 0 %": "no lower, no further down, not lower"}),
    *(
        Spoken(
            "hi_cover",
            alone={reading: f"(about|roughly|say|around|maybe|) {said} of (the|this|) (fish|body)"},
            after=(*_OF_PATTERN, "hi_even", "hi_strength", "hi_tone", "hi_thick"),
        )
        for reading, said in (
            ("is 17 % to 23 %", "(a|1) fifth"),
            ("is 20 % to 30 %", "(a|1) quarter"),
            ("is 30 % to 36 %", "(a|1) third"),
            ("is 62 % to 71 %", "2 thirds"),
            ("is 70 % to 80 %", "3 quarters"),
        )
    ),
    Spoken(
        "hi_front_share",
        alone={
            "above 70 %": "(hardly any|very little|next to no|not much|barely any|scarcely any) (red|hi|colour) (to speak "
            "of|) (past|behind|after|beyond) "
            "the (dorsal|dorsal fin|back fin|top fin|middle|shoulder), too hot (up|in) front, too much (colour|weight) (up "
            "front|in front|at the front|in the front "
            "half), (red|hi|colour|weight) (is|) (bunched|crowded|stacked|mostly|mainly) (up|) (front|in front|at the front|"
            "at the head end)",
            "below 40 %": "all (its weight|its weight of colour|the weight|the weight of colour) (is|sits|lies|) (at|in|on|"
            "over) the (back|back end|rear|rear end|tail end|back half|rear half), (light|bare|short of red|not much red|"
            "little red) (in front|up front|at the front)",
        },
    ),
)
"""What is said of how far red reaches."""
