"""How sorters say how large the first and the last step are, how steps are parted, and how far red reaches down either side.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.builtin.red_pattern import PATTERN
from koirules.builtin.said_of_reach import FINGERS
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_OF_PATTERN = tuple(trait.name for trait in PATTERN)
_NOUN = "((red|) (patch|step|dan|field|piece|block|saddle|1)|red)"
_FIRST = f"(first {_NOUN}|front (patch|step|field|piece|block|1))"
_LAST = f"((last|final|rear|hind|hindmost) {_NOUN}|(tail|tail end) (patch|step|field|piece|block|saddle|1))"
_SMALL = (
    "(small|tiny|little|undersized|short|stunted|on the small side|"
    "minute|no bigger than a (coin|thumbnail|fingernail|pea|bean)|coin size)"
)
_LARGE = "(large|big|huge|heavy|massive|hefty|long|oversized|great|enormous|dominant|on the large side|on the big side)"
_FAIR = (
    "(right|the right size|a good size|decent size|well sized|medium|middling|of a fair size|a fair size|just right)"
)
_VERY = "(nice and|very|rather|a bit|a touch|too|only|quite|so|really|pretty|fairly|far too|much too|)"
_OF_A_TAIL = "(near|by|at|close to|just before|before) (the|) tail"

_AGAINST = (
    "((compared with|against|next to|beside|for) (the|) (rest|others|fish|other patches|other steps|her|it|him|size)|)"
)
_ORDER = "(first|second|third|fourth|last|next|front|rear|middle|head|shoulder|tail|back|1|2|3|4)"
_STEPS = "(patch|step|red|1|saddle|field|dan|)"
_TWO = (
    f"({_ORDER} {_STEPS} and (the|) {_ORDER} {_STEPS}|(the|) (first|last|front|rear|back) 2 (patches|steps|reds|)|2 (of the|) "
    "(patches|steps)|(patches|steps) (1|2|3) and (2|3|4)|patches|steps|(the|) (patches|steps))"
)
_JOINED = (
    "(touch|are touching|touching|joined|are joined|meet|connected|linked|bridged|"
    "hang together|grown together|stuck together|not parted|not separated|do not part)"
)
_WHERE = (
    "((only|just|) (by (a|1|2|3|a few) (scale|scales|row|rows|thread|thin bridge|bridge)|at 1 point|on 1 side|on the "
    "(left|right)|(left|right)|in the middle|at the (left|right|edge|top))|)"
)
_BRIDGE = (
    "((red|thin|narrow|small|little|thick|wide|broad|tiny|) (red|) bridge (of red|) (between (them|the "
    "(steps|patches|2)|the first 2)|joins (them|the steps)|left|1|2|3|) (scale|scales|row|rows|) (wide|thick|)|bridge "
    "(is|) (1|2|3|4|a|a few) "
    "(scale|scales|row|rows) (wide|thick|))"
)
_SIDES = (("left", "right"), ("right", "left"))
_OF_A_WRAP = tuple(
    trait for trait in _OF_PATTERN if not trait.startswith(("white_gap", "maruten", "hi_places", "longest"))
)
"""A gap that lies higher on one side is slanted."""
_DOWN = "(red|wrap|colour|hi|it|pattern|)"
_COMES = "(hangs|goes|comes|reaches|runs|is|wraps|sits|drops|ends|stops)"
_LOWER = "(a bit|a touch|a little|slightly|much|clearly|) (lower|further down|lower down)"
_HIGHER = "(a bit|a touch|a little|slightly|much|clearly|) (higher|further up|shorter|higher up)"
_BY = "(by (a|1|2|3|4|a couple of|half a|) (scale|scales|row|rows|finger|rows of scales|row of scales|scale rows)|)"
_THAN = "(than (on|) (the|) (left|right|other side|other)|)"


def _lower(side: str, other: str) -> str:
    """What is said where red hangs lower on a side."""
    on = f"(on|at) (the|) {side} (side|flank|)"
    off = f"(on|at) (the|) {other} (side|flank|)"
    return (
        f"{_DOWN} {_COMES} {_LOWER} {on} {_THAN} {_BY}, {_LOWER} {on} {_THAN} {_BY}, {on} {_LOWER} {_THAN} {_BY}, "
        f"(the|) {side} (side|flank|) (red|wrap|) {_COMES} {_LOWER} {_THAN} {_BY}, "
        f"(the|) {other} (side|flank|) (red|wrap|) {_COMES} {_HIGHER} {_THAN} {_BY}, "
        f"{_DOWN} {_COMES} {_HIGHER} {off} {_THAN} {_BY}, {_HIGHER} {off} {_THAN} {_BY}"
    )


_PIECES = (
    "(patches|steps|blocks|plates|islands|saddles|pieces|bands|markings|fields|blobs|spots of red|red (patches|blocks|pieces|"
    "islands|spots|bits))"
)
_LAID = (
    "((going|running|laid|lying|set|) (down|along) (the back|) (like stepping stones|)|like stepping stones|in a (row|line)|"
    "give or take|)"
)
_OF_A_GAP = ("white_gap", "white_gap_width", "white_gap_place", "longest_white_gap")
_SINGLE = (
    "((first|second|third|fourth|last|next|middle|other|front|rear|shoulder|back|saddle) (red|) (patch|step|1|plate|block|dan|"
    "marking|bit|bend)|first|second|third|fourth|last|next)"
)
_SHAPE = (
    "(square|squarish|triangle|triangular|round|roundish|oval|heart|diamond|leaf|saddle|shapeless|wedge|crescent|half moon|"
    "long and thin|rectangle|rectangular|boxy|blocky|lopsided|butterfly|bow tie|hourglass|star|cross|arrow|blob)"
)
_LEANS = "(slips|slides|leans|sits|lies|goes|hangs|swings|tilts|shifts|is set|set|runs|drifts|pulls)"
_SIDEWAYS = "(out|off|over|) (to|on|) (the|) (left|right|1 side|opposite|other side|left side|right side)"
_GAP = (
    "(gap|break|cut|white gap|white break|white cut|white strip|strip of white|band of white|white band|white|space|white "
    "space)"
)
_AFTER_IT = (
    f"(between (the|) {_ORDER} {_STEPS} and (the|) {_ORDER} {_STEPS}|(behind|after|between) (it|that|them|the head|the "
    "(first|head|shoulder) (patch|step|1|spot)|the "
    "(patches|steps|2))|in between|on the back|at the (shoulder|dorsal|neck)|)"
)


def _wide(width: str) -> str:
    """What is said of a white gap between steps that is so wide."""
    return (
        f"(then|and then|) {_GAP} {_AFTER_IT} (of|for|is|about|only|just|is only|is just|for about|of about|good|) "
        f"{width} (wide|long|), {width} (of|) "
        f"(white|gap) (after|behind|between) (it|that|them|the (patches|steps)), then {width} (of|) (white|gap) "
        f"(then|and then|), {width} (of|) (gap|white) between"
    )


SAID_OF_STEPS: tuple[Saying, ...] = (
    SpokenTogether(
        f"{_FIRST} (is|) {_VERY} {_SMALL} {_AGAINST}, (small|tiny|little|short) {_FIRST}, (small|tiny|little|short|weak) "
        f"{_FIRST} (and|but) (a|) "
        f"(big|large|huge|long) (second|last|next|rear) (step|patch|1|)",
        "small_patches is few and first_step_size is small",
    ),
    SpokenTogether(
        f"{_LAST} (is|) {_VERY} {_SMALL} {_AGAINST}, (small|tiny|little|short) {_LAST}, (a|the|) (small|tiny|little|short) "
        f"(red|) (patch|step|1|piece|bit|block) {_OF_A_TAIL}, (big|large|huge|long) first (step|patch|1|) (and|but) "
        "(a|) (small|tiny|little) "
        "(last|rear|tail) (step|patch|1)",
        "small_patches is few and last_step_size is small",
    ),
    Spoken(
        "first_step_size",
        alone={
            "is large": f"{_FIRST} (is|) {_VERY} {_LARGE} {_AGAINST}, (big|large|huge|heavy|massive|long) {_FIRST}",
            "is fair": f"{_FIRST} (is|) {_FAIR}",
        },
    ),
    Spoken(
        "last_step_size",
        alone={
            "is large": f"{_LAST} (is|) {_VERY} {_LARGE} {_AGAINST}, (big|large|huge|heavy|massive|long) {_LAST}, last (is|) "
            f"{_VERY} "
            "(large|big|heavy)",
            "is fair": f"{_LAST} (is|) {_FAIR}",
        },
    ),
    Spoken(
        "small_patches",
        alone={"is many": "(small|tiny|little) (steps|patches) all of them, all of the (steps|patches) small"},
    ),
    Spoken(
        "small_patches",
        alone={
            "is few": "(second|third|fourth) (step|patch|1|dan|red|) (is|) (a bit|a touch|rather|very|too|) (light|tiny), "
            "light "
            "(second|third|fourth) (step|patch|1|dan)"
        },
    ),
    Spoken(
        "first_step_size",
        bare={
            "is small": "first is tiny, first is small, first tiny, first small, first very small, first is very small"
        },
    ),
    Spoken(
        "last_step_size",
        bare={"is small": "last is tiny, last is small, last tiny, last small, last very small, last is very small"},
    ),
    Spoken(
        "white_gap",
        alone={
            "is fair": "with (a|) (good|proper|clean|nice|clear|decent|real|lovely|neat|tidy|crisp) (white|) (break|gap), "
            "(good|proper|clean|clear|decent|neat|crisp) (white|) breaks (in (it|the red|the pattern)|)",
            "is long": "(with|) (a|) (big|wide|huge|open|large|great|massive) (open|wide|white|) (gap|break), (break|gap) (is|) "
            "(wide|big|open|long) and "
            "(white|open|clean), (a lot of|lots of|plenty of|much|too much|loads of|very much) white between "
            f"({_ORDER} {_STEPS} and {_ORDER} {_STEPS}|them|(the|) (steps|patches)), (too|very|really) (far|wide) apart",
        },
    ),
    Spoken(
        "white_gap",
        "gap, break, gap in the red, break in the red",
        levels={
            "short": "short, narrow, tight, thin, mean, small",
            "fair": "fair, right, good, clean, clear, decent, just right",
            "long": "long, large, big, wide, huge, too long, too wide, open",
        },
        apart=True,
    ),
    Spoken(
        "white_gap_place",
        beside="gap, break",
        levels={
            "front": "behind the shoulder, behind the head",
            "middle": "at the dorsal, under the dorsal, at mid dorsal, in the middle",
            "rear": "behind the dorsal, at the rear",
        },
        alone={
            "is front": "breaks (once|only|only once|) (at|behind) the shoulder",
            "is middle": "breaks (once|only|only once|) (at|under) the dorsal",
            "is rear": "breaks (once|only|only once|) behind the dorsal",
        },
    ),
    SpokenTogether(
        "gap (is|) (long|wide|big|large) (at|under) the dorsal, (long|wide|big|large) gap (at|under) the dorsal",
        "white_gap is long and white_gap_place is middle",
    ),
    Spoken(
        "joined_steps",
        alone={
            "is touching": f"{_ORDER} {_STEPS} (joins|touches|meets|runs into|hangs on to|runs over into|connects with) (on "
            "to|with|up "
            "with|) (the|) "
            f"{_ORDER} {_STEPS} {_WHERE}"
        },
    ),
    SpokenTogether(
        "(first|last|front|rear) 2 (patches|steps|) (nearly|almost|all but) (run into each other|run together), "
        "(second|first) and (third|second) "
        "(nearly|almost|all but) (run into each other|run together)",
        "joined_steps is near and white_gap at most short",
    ),
    Spoken(
        "balance",
        alone={
            "at most fair": "(pattern|it) (is|) (a bit|a touch|rather|very|quite|) (messy|untidy|muddled|a muddle|a "
            "jumble|chaotic|confused|confusing|"
            "unclear|not clear|not clean|not tidy|scruffy|scrappy) (in the middle|in places|at the "
            "(rear|back|front)|behind|), middle (is|) (a|) (muddle|mess|jumble), messy pattern, "
            "untidy pattern, pattern (is|) (a bit|a touch|slightly|rather|) crowded, (crowded|cramped) pattern, "
            "slightly backwards (pattern|)",
            "is good": "(nice|good|real|lovely|proper|great|fine) rhythm (to (it|them|the pattern|the steps)|in (it|the "
            "pattern)|), with (a|some|real|good|nice|lovely) "
            "(good|nice|) rhythm, so it evens out, (it|) evens (itself|) out, (steps|patches) (nicely|evenly|well) "
            "weighted, evenly weighted, balanced (either|each) side of the dorsal, "
            "balanced on (both sides|either side) of the (dorsal|spine|back)",
            "at least fair": "pattern (is|) (clean|tidy|neat|orderly|clear|clean and simple|simple and clean|simple but "
            "good|in order), "
            "(clean|tidy|neat|orderly) pattern",
        },
    ),
    *(
        Spoken(
            "hi_left_share",
            alone={
                f"{most} %": "(everything|the lot|it all|all of it|all (2|3|4|5) (patches|steps|reds|)) "
                f"(sits|lies|hangs|sit|lie) (on|to|over on|over to) the {side} (side|flank|), "
                f"all (2|3|4|5) (patches|steps|reds|) on the {side} (side|flank|), {other} flank (is|) "
                f"(bare|naked|empty|white|blank|all white|without red), {other} (side|flank) (is|) (a|) white wall",
                f"{more} %": f"pattern (is|) (a bit|a touch|slightly|rather|a little|) {side} (handed|heavy|sided), {side} "
                "(handed|heavy|sided) (pattern|)",
            },
        )
        for side, other, most, more in (
            ("left", "right", "above 85", "above 60"),
            ("right", "left", "below 15", "below 40"),
        )
    ),
    Spoken(
        "hi_front_share",
        alone={
            "above 60 %": "(could do with|needs|wants|could use) (a bit|a little|) more (red|pattern|colour|hi) (at|in|on) the "
            "(rear|back|back end|rear half|back half|tail end), "
            "(rear|back end|back half|rear half) (is|) (a bit|a touch|rather|too|) (light|sparse|unfinished), light "
            "(at|in|behind) the (rear|back|back end), light behind, "
            "pattern (is|) unfinished (behind|at the (rear|back))",
            "below 40 %": "(could do with|needs|wants|could use) (a bit|a little|) more (red|pattern|colour|hi) (at|in|on) the "
            "(front|shoulder|front half|front end), "
            "front (half|end|) (is|) (a bit|a touch|rather|too|) (light|sparse|empty), then everything (is|) crowded "
            "at the (back|rear), everything (is|) crowded at the (back|rear)",
        },
    ),
    Spoken(
        "makibara",
        "hara hi, harahi",
        alone={
            "is yes": "(wrap|wraps|maki|makibara) (is|) (good|nice|ok|fine|lovely|strong|there|present|decent|well done), "
            "(wrap|maki|wraps) (on|) (the|) "
            "(left|right) only, both sides (down|wrapped), wraps both sides, wrapped both sides"
        },
    ),
    Spoken("makibara", after=("makibara",), alone={"is yes": "(on|) both sides"}),
    Spoken(
        "hi_below_line",
        alone={
            "at most 5 %": "(red|colour|hi|it) (goes|comes|runs|reaches|) (down|) (both sides|) to (the middle of the "
            "(side|sides|flank|flanks)|the line in the middle|mid flank)",
            "above 5 %": "(look|) how (deep|low|far) the red (goes|comes|runs|hangs) (round|down|over) the (side|sides), "
            "(red|colour) (goes|comes|runs|hangs) (deep|low) (round|down|over) the (side|sides)",
        },
    ),
    Spoken("hi_on_cheeks", alone={"count at least 1": "hoaka, ho aka, hoo aka, 頬赤"}),
    Spoken(
        "hi_cover",
        alone={
            "above 90 %": "(nearly|almost|practically|as good as) (akamuji|aka muji), (akamuji|aka muji) "
            "(nearly|almost|practically|as good as), only red only red, where is white"
        },
    ),
    Spoken(
        "windows",
        alone={
            "at least 1": "(red|hi|patch|saddle|plate|step|first step|second step|third step|last step|first patch|second "
            "patch|last "
            "patch) (has|have|with) holes, "
            "(window|mado|hole) (first|second|third|last|front|shoulder) (step|patch)"
        },
    ),
    Spoken("tobihi", "crumb, crumb of red, red crumb, stray freckle"),
    Spoken("tobihi_places", "crumb, crumb of red, red crumb, stray freckle"),
    Spoken(
        "odome",
        alone={
            "below 1 %": "no white (at|on|left at) the (back end|tail end|end|very end), (red|colour|pattern) (goes|runs|comes) "
            "(slap|bang|smack|right|straight|clean) into the (tail|tail fin)",
            "is 3 % to 12 %": "tail end (stops|ends|finishes) (just|right|exactly|) where it should, (stops|ends|finishes) "
            "(just|right|exactly|) where it should (at|before) the tail",
        },
    ),
    Spoken(
        "odome",
        after=_OF_PATTERN,
        alone={
            "below 1 %": "(stops|ends|finishes) (only|just|) (at|in) the (very|) tail, (runs|goes|out) (out|) (to|into) the fork "
            "(of the tail|)"
        },
    ),
    *(
        Spoken(
            "odome_gap",
            after=_OF_PATTERN,
            alone={
                width: f"(stops|ends|finishes|is over) (only|just|about|) {said} (before|short of|off|from|in front of) the "
                "(tail|tail root|tail joint|tail base|tail fin)"
                for width, said in FINGERS.items()
            },
        )
        for _ in (0,)
    ),
    Spoken(
        "shoulder_cut",
        alone={
            "is yes": "white (v|wedge|bay|notch) (on|at|behind|in) the (left|right|) (shoulder|shoulders|neck), white on the "
            "shoulders (in the shape of a|like a|as a) v, white (v|wedge) behind the head, "
            "(1|a|with 1|with a) white bay at the (left|right|) shoulder, shoulder break (only|) partial"
        },
    ),
    Spoken(
        "kuchibeni",
        alone={
            "is yes": "red (spot|dot|dab|mark|stripe|smudge|fleck) on (the|1|) (upper|lower|top|bottom|left|right|) "
            "(lip|lips|mouth) (only|)"
        },
    ),
    Spoken(
        "pattern_type",
        alone={"is gotenzakura or komoyo": "(like|) (flower|cherry|blossom) petals (sort of|) (pattern|)"},
    ),
    Spoken(
        "steps",
        bare={
            "is nidan": "2 reds",
            "is sandan": "3 reds",
            "is yondan": "4 reds",
            "is godan": "5 reds",
            "is ippon": "1 long red with no gap, nose to tail in 1 piece, red without a gap",
            "is nidan or sandan": "red 2 piece and 1 small near tail",
        },
        alone={
            "is nidan or sandan or yondan or godan or many": "(classic|proper|nice|good|lovely|real|typical|traditional|) "
            "stepped pattern, (classic|proper) "
            "step pattern",
            "is ippon": "no break in the red from (top|head|nose|end) to (tail|end|toe), (1|a) (great|) slab of red from "
            "(head|nose) to tail, "
            "(red|it) runs through",
            "is inazuma": "zigzaggy (sort of thing|sort of|thing|pattern|red|), lightning (stripe|bolt|flash) (or near enough|), "
            "(zigzag|zigzags) from (the|) "
            "(left|right) (shoulder|side|) (over|across|) to (the|) (left|right) (shoulder|side|) (and back "
            "(again|)|), inazuma (and|) (good|nice|strong|clear|"
            "lazy|weak|sharp), (lazy|weak|sharp) inazuma",
            **{
                f"is {name}": f"{name} (and|) (clean|clear|neat|tidy|good|nice|well spaced|even|regular|ordinary|decent|classic)"
                for name in ("nidan", "sandan", "yondan", "godan")
            },
        },
    ),
    SpokenTogether(
        "(head spot|head patch|round spot|spot on the head|cap|maruten) (and|plus|then|with) (then|) 2 "
        "(steps|patches|) (behind|more|on the (body|back)|after it)",
        "maruten is yes and steps is nidan or sandan",
    ),
    Spoken(
        "interest",
        alone={
            "at least striking": "(a|what a|but a|) (jewel|gem|stunner|cracker|dream|peach|masterpiece|picture) of a pattern, "
            "pattern (is|) (a|) (jewel|gem|"
            "stunner|cracker|dream), (what a|such a) (lovely|beautiful|great|) pattern",
            "at most mild": "plain but honest, pattern (after that|otherwise|) (is|) (fairly|rather|quite|pretty|only|) (so "
            "so|ordinary|everyday), pattern like a "
            "(child|kid) drawing",
        },
    ),
    Spoken(
        "joined_steps",
        alone={
            "is touching": f"{_TWO} (are|) {_JOINED} {_WHERE}, {_BRIDGE}, no white between {_ORDER} and {_ORDER}, {_TWO} (are|) "
            "not (quite|fully|really|) "
            f"(parted|separated|apart|separate) {_WHERE}",
            "is apart": "white (goes|runs) (right|all the way) (across|through) between (them|the steps|the patches), (none|no) "
            "of the (steps|patches) touch, (steps|patches) do not touch",
        },
    ),
    SpokenTogether(
        "(steps|patches) (all|) (nicely|well|cleanly|clearly|clean|fully|properly) (parted|separated|apart|cut)",
        "white_gap is fair and joined_steps is apart",
    ),
    SpokenTogether(
        f"{_TWO} (are|) (nearly|almost|all but|just about|very nearly|practically|as good as) "
        "(touch|touching|joined|joining|meet|joined up|run together)",
        "joined_steps is near and white_gap at most short",
    ),
    *(
        Spoken("wrap_sides", alone={f"is lower_{side}": _lower(side, other)}, after=(*_OF_A_WRAP, "hi_on_cheeks"))
        for side, other in _SIDES
    ),
    *(
        Spoken(
            "wrap_sides",
            alone={
                f"is lower_{side}": f"(red|wrap|colour|hi) (on the {side}|{side} (side|flank)) {_COMES} {_LOWER} {_THAN} {_BY}, "
                f"{side} (flank|side) (red|wrap) "
                f"{_COMES} {_LOWER} {_THAN} {_BY}, {other} (flank|side) (red|wrap) {_COMES} {_HIGHER} {_THAN} {_BY}, "
                f"(red|wrap|wraps|colour|hi) {_COMES} "
                f"{_LOWER} on the {side} {_THAN} {_BY}, (wrap|wraps) {_LOWER} on the {side} {_THAN}, (red|wrap|colour) "
                f"{_COMES} {_HIGHER} on the {other} {_THAN} {_BY}"
            },
        )
        for side, other in _SIDES
    ),
    Spoken(
        "wrap_sides",
        alone={
            "is even": "(wrap|wraps|maki|red wraps|red wrap) (is|) (equal|even|evenly|the "
            "same|equally|alike|level|matched|matching) (on|) (both|each|the 2|either) "
            "(side|sides), (wrap|maki) (is|) (even|equal|level), (red|colour) (comes|goes|runs|hangs|reaches) down "
            "(equally|evenly|the same|as far|equally far|just as far) (on|) (both|each) "
            "(side|sides), (red|colour) (comes|goes|hangs|reaches) (as far|equally far|the same) down (on|) both "
            "sides, (draping|draped|wrapped) evenly, even wrap",
            "is lower_left or lower_right": "(wrap|wraps|maki|red) (is|) (uneven|unequal|different|not the same|not even|not "
            "equal) (on|) (both|the 2|the) (side|sides), "
            "(wrap|maki) (is|) (uneven|unequal), (wraps|hangs) (lower|deeper|further down) on 1 side (than the "
            f"other|), {_DOWN} {_COMES} (lower|deeper|further down) on 1 side (than the other|)",
        },
    ),
    Spoken(
        "wrap_sides",
        after=_OF_PATTERN,
        alone={
            "is lower_left or lower_right": "(1|2|3|4) (rows|row|scales|scale) (of scales|) difference (between the sides|), "
            "(1|2|3|4) (rows|scales) of difference",
            "is even": "equally (on|) both sides",
        },
    ),
    Spoken("shoulder_cut", alone={"is yes": "(kata nuki|katanuki) (on the|) (left|right|both|both sides)"}),
    Spoken("kuchibeni", alone={"is yes": "(red|hi|colour) (on|) both lips"}),
    Spoken(
        "white_gap",
        alone={
            "at most short": "(hardly|barely|scarcely) (a|any) (break|gap|white) between (them|the (steps|patches|first "
            "2|last 2|2)|"
            f"{_ORDER} and {_ORDER})"
        },
    ),
    Spoken(
        "hi_front_share",
        alone={
            "above 70 %": "(carries|wears|has) all (her|his|the|its|) (red|colour|pattern) (up front|in front|at the front)"
        },
    ),
    Spoken(
        "wrap_sides",
        alone={"is even": "(red|colour) (goes|comes|wraps|runs) (round|down|around) both sides (equally|evenly)"},
    ),
    *(
        Spoken(
            "wrap_sides",
            after=_OF_PATTERN,
            alone={
                f"is lower_{side}": f"{side} (side|flank) (a|1|2|3|half a) (row|rows|scale|scales|finger|fingers) "
                "(lower|deeper)"
            },
        )
        for side, _ in _SIDES
    ),
    Spoken(
        "windows",
        alone={
            "at least 1": "(red|hi|patch|saddle|plate) (got|has got) (a|some|a few|a couple of) (hole|holes) (in it|)"
        },
    ),
    Spoken(
        "interest",
        alone={
            "at most mild": "not (a|) (very|particularly|that|so|terribly) (exciting|thrilling|inspiring|interesting) "
            "pattern"
        },
    ),
    SpokenTogether(
        "(red|colour) (all|) along the (whole|entire) back, whole back (is|) red",
        "hi_places includes shoulder and hi_places includes front_back and hi_places includes middle_back and hi_places includes "
        "rear_back",
    ),
    Spoken("first_step_size", alone={"is large": f"(step|patch) 1 (is|) {_VERY} (big|large|huge|heavy)"}),
    Spoken("white_gap_width", alone={width: _wide(said) for width, said in FINGERS.items()}, greatest=True),
    Spoken(
        "white_gap_width",
        "(white|) (gap|break) (behind|after) (it|the head|the head spot|the head patch), (then|and then) (a|) "
        "(gap|break), (then|and then) white (for|), (then|and then) clean white for, "
        "gap, white break, gap on the back, gap between, white between, (of|) white (after|behind|between) "
        "(it|them|that), (of|) gap, of white then, white for, gap at the shoulder, "
        "gap at the dorsal, gap at the neck, gap behind it of, (first|second|third|middle|next|biggest|widest|one) "
        "(gap|break), (gap|break) between (the|) (steps|patches|them)",
    ),
    # ---- How many, and in what order
    SpokenTogether(
        "no kire (anywhere|at all|in it|) (that i can see|), no (break|gap) in it anywhere that i can see, kire none, (red|it|"
        "pattern|) (goes|runs) (straight|right|) back without (stopping|a stop|stops), red (goes|runs) along without "
        "stopping, (joined|unbroken) (all the way|all along|from end to end|end to end), (it|) (never|does not) (let go|lets "
        "go) (till|until) the tail",
        "steps is ippon or inazuma",
    ),
    Spoken(
        "steps",
        alone={
            "is nidan or sandan": "(then|and then|and|plus|) 2 (more|) (decent|good|nice|clean|neat|big|small|little|) "
            f"{_PIECES} ((on|down|along) (the|) (back|body)|behind|after|behind it|follow|following), "
            f"back has got 2 {_PIECES}, back (has|with) 2 {_PIECES}, (red on the back|back) in 2, (red|) (pattern|step|steps) 2 "
            "and a (bit|half|little|crumb), (then|and then|and) nidan (behind|after|on the back|on the body)",
            "is sandan or yondan": "(then|and then|and|plus|) 3 (more|) (decent|good|nice|clean|neat|big|small|little|) "
            f"{_PIECES} ((on|down|along) (the|) (back|body)|behind|after|behind it|follow|following), back has got 3 "
            f"{_PIECES}, back (has|with) 3 {_PIECES}, (red on the back|back) in 3, back sandan, (red|) (pattern|step|steps) 3 "
            "and a (bit|half|little|crumb), (then|and then|and) sandan (behind|after|on the back|on the body)",
            **{
                f"is {name}": f"(red|) {_PIECES} {number}, {number} (clean|clear|neat|nice|good|bold|solid|big|) (bands|markings|"
                f"blocks|plates|islands) (of red|) {_LAID}, red in {number} (places|pieces|parts|bits|blocks), {number} "
                "(nice|good|neat|clean|red|) (patches|ones|pieces|blocks) (evenly|well|nicely) (apart|lined up|in a row), "
                f"{number} (patches|steps|blocks|pieces) lined up (nicely|), (real|true|orthodox|honest|proper|straight|rough|"
                f"loose|plain) {name}, {name} (stands|all the same|real|in order|orthodox|of sorts|for the record), {red}, "
                f"{name} (and|with|but) nothing (against|wrong with) it"
                for name, number, red in (
                    ("nidan", "2", "red white red (white|)"),
                    ("sandan", "3", "red white red white red (white|)"),
                    ("yondan", "4", "red white red white red white red (white|)"),
                    ("godan", "5", "red white red white red white red white red (white|)"),
                )
            },
            "is ippon": "(1|a) (long|thin|wide|broad|single|continuous|narrow|straight|) (red|) (stripe|line|ribbon|run) (of "
            "red|) (along|down) the (back|top|middle), (1|a) long red (stripe|ribbon|line), carpet runner, red (like|is like) a "
            "(carpet|runner), (all|red is) 1 solid (piece|patch|block), 1 (long|solid) piece from (head|nose|neck|eyes) to (tail|"
            "stem), red (goes|runs) from cap to tail (in 1|unbroken|without stopping), red (goes|runs) (nose|head) to tail "
            "(without a|with no|no) (break|stop|gap)",
            "is ippon or inazuma": "(head|crown|nose|neck) to (peduncle|tail|stem|ozutsu) unbroken, unbroken (from|) (crown|"
            "neck|eyes) (back|to (tail|peduncle|stem|ozutsu|the end)), (ippon|straight hi|1 patch) with a (bit of a|slight|"
            "bit|little|gentle|) (wave|wobble|bend|wiggle|swing|kink) (in it|) (to it|), wavy ippon, ippon (that|) (waves|"
            "wobbles|wavers|swings), (a|) squiggle (from|) (nose|head) to tail",
            "is inazuma": "(zigzag|zig zag|s|snake) (shape|form|like), pattern (goes|runs) zig (and|) zag, "
            "(red|hi|pattern|zigzag) (goes|"
            "runs) (from|) side to side (down the back|) (like a snake|), (shaped like|like|in) (a|the|an|) (letter|"
            ") s, (real|true|proper|textbook) inazuma (not the catalogue sort|), (swing|zigzag|bends) (is|are|) (even|"
            "regular)",
        },
    ),
    Spoken(
        "steps",
        after=("maruten", "head_hi", "head_patch_place", "head_patch_shape"),
        alone={
            "is tancho": "(that is|and that is) the only red (on it|on her|), (the|) rest (of it|of her|) (is|) (plain|all|"
            "pure|clean) white, nothing else red, otherwise (all|pure|plain) white",
        },
    ),
    Spoken(
        "steps",
        alone={
            "is tancho": "(a|just a|only a|) (red|round|round red|) (cap|hat|head spot|head patch|spot on the head|patch on "
            "the head|dot on the head) and (nothing else|that is it|no more|that is all|nothing more|nothing behind)"
        },
    ),
    SpokenTogether(
        "(ten|head spot|maruten|cap|head patch) (then|and|plus|and then) (a|) nidan",
        "maruten is yes and steps is nidan or sandan",
    ),
    SpokenTogether(
        "(ten|head spot|maruten|cap|head patch) (then|and|plus|and then) (a|) sandan",
        "maruten is yes and steps is sandan or yondan",
    ),
    SpokenTogether(
        "nidan (with|and|) (a|the|) (kire|gap|break|cut) (dead|right|) (in the|at the|) (centre|middle)",
        "steps is nidan and white_gap_place is middle",
    ),
    # ---- What parts them
    Spoken(
        "white_gap",
        "kire, dangire, white between steps",
        alone={
            "is fair": "kire (is|) (clean|good|neat|sharp|in place|there|well placed|cut clean) (to the white|), (good|clean|"
            "neat|clear|nice) kire, (gaps|widths|spacing|gaps between) (are|is|all|) (about|more or less|) (equal|even|the "
            "same|match|matching|regular), spaced like beads, evenly (apart|parted), (white|gaps) between the "
            "(steps|patches) (is|are|) (about|more or less|) (equal|even|the same), (nice|good|clean|white|clear) white (in|) "
            "between, dangire (clean|good|)",
            "is none or short": "(gap|white|break|space) (is|of|) (only|just|) (a|1|half a) (scale|row) (wide|) (at most|if "
            "that|), (you|) (could|can) (hardly|barely|just|only just|) (fit|get|push) a (match|matchstick|hair|needle|"
            "fingernail|toothpick) (in|between|in between|through|in the (white|gap)) (it|them|there|), (patches|steps|blocks|"
            "plates|all) (too|very|all|) (squeezed|squashed|crammed|pushed|packed|jammed|bunched) (together|up), (hardly|"
            "barely|no) room between (them|the patches|the steps), (only|just) a (thread|hair|line|sliver) of white between "
            "(them|the (patches|steps))",
            "is long": "(lots|plenty|too much|a lot) of (air|room|space|daylight) (between them|between|in it|in between|), 2 "
            "blocks and air, (then|and then|) (a|) (lovely|very|great|far too|rather|nice|) long (white|empty back|white back|"
            "stretch of white|white stretch), (whole|entire) middle (third|part|bit|section|) (is|) (all|) (white|bare|empty|"
            "blank), middle third (is|) (all|) (white|bare|empty|blank), (sits|falls|lies) in 2 (camps|halves|parts), "
            "(pattern|it) (sits|falls|lies|breaks) (in|into) 2 (camps|halves), nakasuke, nakanuke, naka suke",
            "at least short": "(then|and then|) (a bit of|some|a little|a strip of|a band of|a ring of|a collar of) white "
            "(between|in between|after that|behind it|behind that|then), (then|and then) (a bit of|some|a little|a strip of|a "
            "band of) white, white (in|) between (them|), (then|and then|) (a|) kire (then|), empty between, nothing between, "
            "(none|no) (of them|) (touch|touching|touches) (each other|)",
        },
    ),
    Spoken(
        "white_gap",
        after=_OF_A_GAP,
        alone={
            "is long": "(a bit|too|rather|very|bit|far too) long (that|) (stretch|gap|white|break|)",
            "is fair": "(widths|sizes|they) match, (all|both) (the same|even|equal) width",
            "is none or short": "(only|just) (a|1) (scale|row|hair|thread|sliver) (wide|) (at most|if that|)",
        },
    ),
    Spoken(
        "white_gap_place",
        beside="kire, white stripe, white band, white break",
        levels={
            "front": "(a|at a|1|at 1) third of the way (along|down|back|), a third (along|down|back), at the neck, in front "
            "of the (dorsal|top fin|fin), before the (dorsal|top fin|fin)",
            "middle": "half way (along|down|back|), halfway (along|down|back|), dead centre, in the exact middle, in the "
            "middle of the fish, under the (top fin|fin), at the (top fin|fin), at mid body, by the dorsal",
            "rear": "(2 thirds|at 2 thirds) (of the way|) (along|down|back|), 3 quarters of the way (along|down|back|), "
            "behind the (top fin|fin), near the tail",
        },
        alone={
            "is front": "(gap|break|kire) (again|also|) (at|) (a|1) third of the way (along|down|)",
            "is rear": "(gap|break|kire) (again|also|) (at|) 2 thirds (of the way|) (along|down|)",
        },
    ),
    Spoken(
        "white_gap_place",
        after=_OF_A_GAP,
        alone={
            "is front": "(just|right|) (in front of|before|ahead of) the (top fin|dorsal|dorsal fin|fin), (just|right|) "
            "behind the (head|shoulder)",
            "is middle": "(just|right|) (under|by|at|beside) the (top fin|dorsal|dorsal fin|fin), in the middle of the (fish|"
            "back|body)",
            "is rear": "(just|right|) behind the (top fin|dorsal|dorsal fin|fin)",
        },
    ),
    Spoken(
        "joined_steps",
        alone={
            "is touching": f"{_TWO} (are|) (hang|hanging|held|hold|held together|joined|linked) (together|) by a (thin|narrow|"
            "red|fine|thin red|) (thread|line|hair|strip|bridge|scale), (they are|it is|) joined by a (thin|narrow|red|fine|"
            "thin red|) (thread|line|hair|strip|bridge|scale), (thin|narrow|fine|) (red|) (line|thread|bridge|strip) (of red|"
            f") (joins|links|connects) {_TWO} (to (the|) ({_ORDER} {_STEPS}|body|shoulder)|) {_WHERE}, {_ORDER} {_STEPS} (is|) "
            f"(joined|linked|connected|tied|hangs|stuck) (on|) to (the|) {_ORDER} {_STEPS} (by a (thread|line|hair|thin bridge|"
            "bridge)|), (patches|steps|all) (all|big and|) joined at the (neck|shoulder|dorsal|side|edge), (it|they|patches|"
            "steps|red|pattern) (all|) (run|runs) together (round|at|by|around|under) the (top fin|dorsal|fin|shoulder|neck|"
            "tail), joined up like",
            "is apart": "no (thread|link) (between|between them|anywhere|left)",
        },
    ),
    Spoken(
        "joined_steps",
        after=("joined_steps",),
        alone={"is touching": "(bridge|thread|join|link) (is|) (on|at) (the|) (left|right|top|neck|middle|edge)"},
    ),
    Spoken(
        "maruten",
        alone={
            "is no": "no (gap|break|white|cut|kire) between (the|) head and (the|) (shoulder|body|back), (head|head patch|"
            "head red) and (shoulder|back|body) (are|is|) all joined, (line|thread|bridge) (of red|) joins the head to the "
            "(next|first|shoulder) (patch|step|1), (thin|narrow|) red line joins the head to the (next|first|shoulder) (patch|"
            "step|1)",
            "is yes": "(white|clean white|clear white) ring (round|around|at) the neck, (ten|head spot|maruten|cap) (clear of|"
            "well clear of|broken away from) the (body|shoulder|rest), (maruten|ten) (broken away|parted|separated) (nicely|"
            "cleanly|well|)",
        },
    ),
    Spoken(
        "maruten",
        after=("head_hi", "head_patch_place", "head_patch_shape", "head_hi_front", "maruten"),
        alone={
            "is yes": "(does|) not touch anything (else|), touches nothing (else|), (it is|) (well|) separate from the (rest|"
            "body)",
            "is no": "(joined|connected|joined on|linked) (on|) to the (shoulder|body|back|first|next) (bit|patch|step|red|1|"
            "), (runs|goes|carries) (straight|) on into the (shoulder|body)",
        },
    ),
    # ---- Size of single steps
    SpokenTogether(
        "((first|second|third|fourth|last|next|rear|tail) (patch|step|1|plate|block|bit|)|that last bit) (is|was|looks|just|"
        "only|really|) (only|just|) (a|) (crumb|dab|smudge|scrap|dot|comma|speck|freckle|postage stamp) (really|if that|), "
        "(then|and|) (a|) little (comma|dab|scrap|smudge|finish) (by|near|at|before) the tail, (small|tiny|little) finish at "
        "the tail, dab near the tail",
        "small_patches is few",
    ),
    Spoken(
        "small_patches",
        alone={
            "is few": "(shoulder|middle|neck|dorsal|saddle|back|tail|rear) (patch|step|plate|block) (is|) (a bit|a touch|"
            "rather|very|too|) (small|tiny|little|short), 1 of (them|the (steps|patches)) (is|) (very|rather|a bit|too|) "
            "(small|tiny)",
            "is many": "(all|only) (small|tiny|little) plates, plates (are|) (all|) (very|rather|a bit|too|) (small|tiny|little)",
        },
    ),
    Spoken(
        "first_step_size",
        alone={
            "is large": "(big|great|large|huge|massive|heavy) (bold|red|wide|) (first|front|shoulder) (patch|step|block|"
            "plate), first (patch|step|block|plate) (is|) (a|) (big|large|huge|heavy) (1|and bold|and wide), first (patch|"
            "step|) (is|) (much|far|) (bigger|larger|longer|heavier) than the (second|rest|others|other)"
        },
    ),
    Spoken(
        "last_step_size",
        alone={
            "is large": "(longest|biggest|largest) (is|) (the|) last, last (is|) the (longest|biggest|largest), last (patch|"
            "step|) (is|) (much|far|) (bigger|larger|longer|heavier) than the (first|rest|others|other)"
        },
    ),
    # ---- What no trait holds: the shape of a patch, how one lies on the back, and how two compare
    SpokenTogether(
        f"(the|) {_SINGLE} (is|looks|) (a bit|rather|quite|a hair|a touch|too|) (a|) {_SHAPE}, {_SINGLE} (is|) {_LEANS} "
        f"(a bit|) {_SIDEWAYS}, {_SINGLE} (is|sits|lies|) (dead|right|nicely|well|exactly|) (centred|central|square|straight|"
        "in the centre|sideways|crooked|aslant), (first|last|other) 2 (are|) (dead|) (centre|centred), (first|last|other) 2 "
        f"(dead|right|) in the centre, {_SINGLE} (and|) {_SINGLE} (match|alike|the same|equal), (middle|second|first|third) (1|"
        "patch|step|) (is|) (the|) (biggest|largest|longest|widest|smallest), (first|second) (is|) (twice|half) as (long|big|"
        "wide) as (the|) (second|first), (others|other ones|the rest) (are|) (all|) (about|) as (big|long|wide) as each "
        "other, (2|3) (patches|steps) (long|big|1 long) and (short|small|1 short), (patches|steps|they) (are|) (all|) (of|) "
        f"(kind of|) different (sizes|size), {_SHAPE} (shape|shaped) (patch|step|saddle)",
        "nothing",
    ),
)
"""What is said of single steps, of what parts them, and of the two sides."""
