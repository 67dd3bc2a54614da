"""How sorters say where the weight of a pattern of red (hi) lies, whether it balances, and how it pleases.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_SIDES = (("left", "right"), ("right", "left"))

SAID_OF_BALANCE: tuple[Saying, ...] = (
    # ---- To one side, to the front or to the rear
    Spoken(
        "one_sided",
        alone={
            "is yes": "red (has|is|) (jumped|slid|gone|slipped|wandered) over to (1|one) side, (leaning|leany) (hi|red|"
            "pattern), no (red|pattern|colour) (at all|) on this side, (all|everything|red|pattern) (tipped|leaning|slid) "
            "(away from me|to 1 side|over to 1 side), (seen|looked at) from 1 side (it is|) (all|) white, half (of it|the "
            "fish|the back|) (is|) bare (on|down) 1 side, kata moyo, 1 (side|flank) (is|) (white|bare|empty) (and|) (1|the "
            "other|other) (side|) (is|) (all|) red"
        },
    ),
    *(
        Spoken(
            "hi_left_share",
            alone={
                f"{most} %": f"all (to|) {ship}, {ship} (side|) (carries|has) (it all|everything|all of it), {other_ship} side "
                f"(is|) (blank|bare|empty|white), {side} all, all red {side}, {other} (side|flank) (is|) (naked|blank|"
                f"nothing), {side} (side|flank|) (does|has|carries) all the work, {other} (side|flank|) without red",
                f"{more} %": f"{side} side (has|carries|gets|shows) (far|much|a lot|a bit|) more (red|pattern|colour) (than "
                f"(the|) {other} (side|)|), (far|much|a lot|a bit) more (red|pattern|colour) (on|to) the {side}, (red|pattern) "
                f"(keeps|stays|lies|sits) (mostly|mainly|more) (on|to) the {side}, less red on (the|) {other}",
            },
        )
        for side, other, ship, other_ship, most, more in (
            ("left", "right", "port", "starboard", "above 85", "above 60"),
            ("right", "left", "starboard", "port", "below 15", "below 40"),
        )
    ),
    *(
        Spoken(
            "hi_left_share",
            after=("one_sided", "hi_left_share"),
            alone={
                share: f"(the|) {other} (is|) (quite|all|completely|left|) (bare|naked|blank|empty|nothing|white), (the|) "
                f"{side} (is|) all (red|of it)"
            },
        )
        for (side, other), share in zip(_SIDES, ("above 75 %", "below 25 %"), strict=True)
    ),
    Spoken(
        "hi_left_share",
        alone={
            "is 40 % to 60 %": "(red|pattern) (is|) (equal|"
            "even|alike|the same) (left and right|on both sides|either side), both (sides|flanks|wings) (are|) (match|level), "
            "(symmetrical|symmetric) (pattern|to boredom|left and right), (left and right|both sides) mirror (each other|1 "
            "another)",
        },
    ),
    Spoken(
        "hi_front_share",
        alone={
            "above 60 %": "(a bit|rather|very|) (hot|full) (up front|in front|at the front|on the shoulder), too much "
            "(going on|happening) (up front|in front|at the front) (for me|), tail light, (pattern|it) (is|) (a bit|) tail "
            "light, (nose|head) heavy (and tail light|), fish in a waistcoat, (wears|wearing) a waistcoat, all of it up front "
            "on the (left|right), (runs|thins|fades) (rather|) out (of (ideas|steam|puff|red)|) (behind|at the (rear|back|"
            "tail)|towards the tail)",
            "below 40 %": "(all|most|) (its|of its|the) weight (of (colour|red)|) (sits|lies|hangs) (at|on|in) the (back end|"
            "rear|tail end|back half), (tail|rear) weighted (pattern|), (nose|front|head) light (and (tail|rear) heavy|), "
            "tail heavy and (nose|front|head) light, light (in front|up front), (red|pattern) lies (mostly|mainly) (past|"
            "after) the (dorsal|top fin|fin), all happens (behind|at the back|at the rear), weight slides (back|towards the "
            "tail)",
        },
    ),
    # ---- Balance, interest and cover
    Spoken(
        "balance",
        alone={
            "is good": "(everything|it|red|all) (is|) (where|just where) you would (sort of|rather|) (want|like|put) it, (it "
            "is|) (ever so|very|really|) (well|nicely|prettily|beautifully) (placed|balanced|laid out|arranged), "
            "red (is|) in the right places, patches (fine|well placed|in the right places), (steps|patches) (add up|work "
            "together|hang together), nothing (out of place|misplaced) in the pattern",
            "at least fair": "nagare, pattern (moves|has life|is alive), (pattern|it) (flows|has movement|has flow), "
            "(makes|gives) it (a|) (swing|"
            "twist|movement|flow|life|some life), (good|nice|some) movement in the pattern, yet it moves, pattern (is|) "
            "(elegant|elegant rather than strong)",
            "at most fair": "(half a fish|half a pattern), (it|pattern|red|hi) leans, (pattern|red) (is|) (scattered about|"
            "all over the shop), scattered, (pattern|it) (tips|leans) (over|forward|back|), (pattern|) (unbalanced|lopsided|"
            "out of balance) (towards|to) the (rear|front|tail|head|left|right|back)",
        },
    ),
    Spoken(
        "interest",
        alone={
            "at most mild": "(bit of a|a bit of a|rather a|quite a|a|) plain (1|one|sort), pattern (is|) (a bit|rather|very|"
            "quite|) (conservative|predictable|safe|schoolbook|stiff|tame|wooden), (a bit|rather|quite|very) (boring|plain|"
            "dull) (in layout|in pattern|as a pattern|to look at), like a school uniform",
            "at least mild": "(has|got|with) (aji|ajiwai|a charm of its own), ajiwai, aji (ga aru|there|"
            "good), pattern (has|is full of) charm, pattern (is|) (cute|quirky|sweet|amusing)",
            "at least marked": "pattern (is|) (first class|top class|superb|outstanding|a winner|excellent)",
        },
    ),
    Spoken(
        "hi_cover",
        alone={
            "above 75 %": "(it is|) (nearly|practically|almost|as good as) (a|) (all red|benigoi) (with white trim|"
            "), (you|i|) (lose|can not see|can not see any) "
            "(the|) white (altogether|) (from above|from on top), white only (on|at) (the|) (nose|belly|tail|tail stem|tummy) "
            "(and (the|) (nose|belly|tail|tail stem|tummy)|) (and (the|) (nose|belly|tail|tail stem|tummy)|), (only|the only) "
            "white (is|) (along|on|at) the (tummy|belly|nose|tail), red swallows (it|the white|everything)",
            "at most 40 %": "(thin|sparse|light) on pattern, not a lot (of pattern|of red) on it, nothing much on it",
            "is 70 % to 80 %": "3 quarters (of the way|of it|) (it is|is|) red",
        },
    ),
    Spoken(
        "pattern_type",
        alone={
            "is komoyo": "(lots of|many|all) (little|small|tiny) (islands|crumbs|scraps|blots) (of red|), "
            "(red|pattern) (is|) in (little|small|tiny) (bits|crumbs|scraps)",
            "is omoyo or mixed": "omoyo (in|at) (the|) front, omoyo (behind|at the rear|on the back half)",
            "is komoyo or mixed": "komoyo (in|at) (the|) front, komoyo (behind|at the rear|on the (back|rear) half)",
        },
    ),
    Spoken(
        "shoulder_cut",
        alone={
            "is no": "(gap|notch) at the shoulder (is|) (shut|closed|gone|filled)",
            "is yes": "(bite|notch|bay|tongue|wedge) (out of|of white in|taken out of|in) the (red|pattern|patch) (at|on|by) "
            "the (left|right|) (shoulder|neck)",
        },
    ),
    SpokenTogether(
        "(deep|nice|good|lovely|little|white|) (bay|tongue|notch|bite|wedge) (of white|) (out of the red|into the red|in the "
        "red|in it|pokes in|cuts in|runs in|comes in|taken out|) (from|on) the (left|right) (side|), (bite|notch|bay) (out of|"
        "taken out of|in) the (red|patch|saddle|step), bite taken out, (split|divided|sewn|parted|cut) (down|along) the "
        "(middle|spine|back) (with|by|in|) (white|a white line|), (white line|white stripe|white strip) (down|along) the "
        "(middle|spine|dorsal|back) (all the way|), dorsal stripe of white, looks bitten",
        "nothing",
    ),
)
"""What is said of the weight of a pattern and of how it pleases."""
