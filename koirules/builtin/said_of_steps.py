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
_OF_A_WRAP = tuple(trait for trait in _OF_PATTERN if not trait.startswith(("white_gap", "maruten")))
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
)
"""What is said of single steps, of what parts them, and of the two sides."""
