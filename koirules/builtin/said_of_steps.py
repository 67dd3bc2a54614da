"""How sorters say how large the first and the last step are, how steps are parted, and how far red reaches down either side.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.builtin.red_pattern import PATTERN
from koirules.builtin.said_of_reach import FINGERS
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_OF_PATTERN = tuple(trait.name for trait in PATTERN)
_NOUN = "((red|) (patch|step|field|piece|block|saddle|1)|red)"
_FIRST = f"(first {_NOUN}|front (patch|step|field|piece|block|1))"
_LAST = f"((last|final|rear|hind|hindmost) {_NOUN}|(tail|tail end) (patch|step|field|piece|block|saddle|1))"
_SMALL = (
    "(small|tiny|little|undersized|weak|short|stunted|on the small side|"
    "minute|no bigger than a (coin|thumbnail|fingernail|pea|bean)|coin size)"
)
_LARGE = "(large|big|huge|heavy|massive|hefty|long|oversized|great|enormous|dominant|on the large side|on the big side)"
_FAIR = (
    "(right|the right size|a good size|decent size|well sized|medium|middling|of a fair size|a fair size|just right)"
)
_VERY = "(very|rather|a bit|a touch|too|only|quite|so|really|pretty|fairly|far too|much too|)"
_OF_A_TAIL = "(near|by|at|close to|just before|before) (the|) tail"

_ORDER = "(first|second|third|fourth|last|next|front|rear|middle|head|shoulder|tail|back|1|2|3|4)"
_STEPS = "(patch|step|red|1|saddle|field|dan|)"
_TWO = (
    f"({_ORDER} {_STEPS} and (the|) {_ORDER} {_STEPS}|(the|) (first|last|front|rear|back) 2 (patches|steps|reds|)|2 (of the|) "
    "(patches|steps)|(patches|steps) (1|2|3) and (2|3|4)|patches|steps|(the|) (patches|steps))"
)
_JOINED = (
    "(touch|are touching|touching|joined|are joined|joined up|meet|connected|linked|bridged|"
    "hang together|grown together|stuck together|not parted|not separated|do not part)"
)
_WHERE = (
    "((only|just|) (at 1 point|on 1 side|on the (left|right)|(left|right)|in the middle|at the (left|right|edge|top))|)"
)
_BRIDGE = (
    "((red|thin|narrow|small|little|thick|wide|broad|tiny|) (red|) bridge (of red|) (between (them|the "
    "(steps|patches|2)|the first 2)|joins (them|the steps)|left|1|2|3|) (scale|scales|row|rows|) (wide|thick|)|bridge "
    "(is|) (1|2|3|4|a|a few) "
    "(scale|scales|row|rows) (wide|thick|))"
)
_SIDES = (("left", "right"), ("right", "left"))
_DOWN = "(red|wrap|colour|hi|it|pattern|)"
_COMES = "(hangs|goes|comes|reaches|runs|is|wraps|sits|drops|ends|stops)"
_LOWER = "(a bit|a touch|a little|slightly|much|clearly|) (lower|further down|deeper|longer|lower down)"
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
    "((behind|after|between) (it|that|them|the head|the (first|head|shoulder) (patch|step|1|spot)|the "
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
        f"{_FIRST} (is|) {_VERY} {_SMALL}, (small|tiny|little|short|weak) {_FIRST}, (small|tiny|little|short|weak) "
        f"{_FIRST} (and|but) (a|) "
        f"(big|large|huge|long) (second|last|next|rear) (step|patch|1|)",
        "small_patches is few and first_step_size is small",
    ),
    SpokenTogether(
        f"{_LAST} (is|) {_VERY} {_SMALL}, (small|tiny|little|short|weak) {_LAST}, (a|the|) (small|tiny|little|short) "
        f"(red|) (patch|step|1|piece|bit|block) {_OF_A_TAIL}, (big|large|huge|long) first (step|patch|1|) (and|but) "
        "(a|) (small|tiny|little) "
        "(last|rear|tail) (step|patch|1)",
        "small_patches is few and last_step_size is small",
    ),
    Spoken(
        "first_step_size",
        alone={
            "is large": f"{_FIRST} (is|) {_VERY} {_LARGE}, (big|large|huge|heavy|massive|long) {_FIRST}",
            "is fair": f"{_FIRST} (is|) {_FAIR}",
        },
    ),
    Spoken(
        "last_step_size",
        alone={
            "is large": f"{_LAST} (is|) {_VERY} {_LARGE}, (big|large|huge|heavy|massive|long) {_LAST}, last (is|) {_VERY} "
            "(large|big|heavy)",
            "is fair": f"{_LAST} (is|) {_FAIR}",
        },
    ),
    Spoken(
        "small_patches",
        alone={"is many": "(small|tiny|little) (steps|patches) all of them, all of the (steps|patches) small"},
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
        Spoken("wrap_sides", alone={f"is lower_{side}": _lower(side, other)}, after=(*_OF_PATTERN, "hi_on_cheeks"))
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
