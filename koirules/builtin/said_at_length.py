"""How those who describe a fish in whole sentences speak of its red (hi): of its steps, its ends, its edges and its colour.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_THEM = "(them|the steps|the patches|the red|the pattern|the reds|it)"
_STEPS = "(they|all of them|all 3|all 2|both|both of them|steps|patches|the 2|the 3|reds|)"
_OF_STEPS = ("steps", "step_count", "joined_steps", "white_gap", "small_patches", "first_step_size", "last_step_size")
"""Traits behind which `they` are steps."""
_LOWER = "(down|) (a bit|a touch|a little|slightly|much|clearly|) (lower|further|further down)"
_HIGHER = "(up|) (a bit|a touch|a little|slightly|much|clearly|) (higher|further up|shorter)"
_PART = (
    "(head|body|shoulder|back|rear|tail end|front|front half|rear half|back "
    "half|(first|second|third|last|head|shoulder|middle|rear|"
    "front) (step|patch))"
)
_OF_HEAD = ("head_hi", "head_patch_shape", "head_hi_front", "head_patch_place", "maruten")
"""Traits behind which `it` is the red on the head."""
_NTH = "(first|second|third|fourth|last|1|2|3|4)"
_NEARLY = "(nearly|almost|all but|just about) (touch|meet|join|join up)"
_WHERE = (
    "((at|by|under|behind|beside) the (dorsal|shoulder|neck|tail)|(down|on|at) (the|) (left|right) (side|)|on 1 side|in "
    "the middle|)"
)
_LITTLE = "(hardly|barely|scarcely|next to|almost|practically|virtually|as good as|not)"
_BEHIND = (
    "(behind|behind it|behind that|behind the dorsal|behind the shoulder|at the (back|rear|tail end)|on the (back|rear) "
    "half|further back|"
    "from the dorsal (back|on)|after that|after the dorsal)"
)
_AHEAD = "(in front|up front|at the front|on the front half|on the shoulder|in front of the dorsal|ahead of the dorsal)"
_LAST = "(last|rear|hind|third|tail) (step|patch|1|bit|block|piece)"
_FIRST = "(first|front|shoulder) (step|patch|1|block)"
_OTHER = "(first|others|other 2|other|rest|second|front 1|1 before|1 in front|1 before it|1 in front of it)"
_EDGES = "(kiwa|edges|edge|rear edge|rear edges|back edges|side edges|lines|edge of it)"
_COME = "(come in|closed|closed up|set|tightened|tightened up|sharpened|sharpened up|come up|firmed up|come through)"
_FADES = (
    "(falling apart|breaking up|breaking apart|coming apart|going to pieces|falling to pieces|dissolving|crumbling)"
)
_SCALES = "(into|in) (single|separate|loose|odd) scales"
_TOP = "(paint|lacquer|icing|plaster|butter|jam)"

SAID_AT_LENGTH: tuple[Saying, ...] = (
    Spoken(
        "joined_steps",
        alone={
            "is apart": f"{_STEPS} (are|stand|sit|lie|) (all|) (well|clearly|cleanly|nicely|properly|fully|completely) "
            "(apart|separate|clear of each other) (from (each other|1 another)|of each other|by white|), "
            f"{_STEPS} (do|) not touch (each other|1 another|anywhere)",
            "is touching": "(they|first 2|last 2|2 of them|steps|patches) (are|) (joined|connected|linked) (by a "
            "(thin|narrow|wide|small|red|) (bridge|thread|strip)"
            f" (of red|)|) {_WHERE}, {_STEPS} (just|only just|) (run|flow|merge|melt|blend|go) into (each other|1 "
            f"another)",
        },
    ),
    SpokenTogether(
        f"(steps|patches|first 2|last 2|2 of them|2) {_NEARLY} {_WHERE}, {_NEARLY} each other {_WHERE}",
        "joined_steps is near and white_gap at most short",
    ),
    Spoken("joined_steps", after=_OF_STEPS, alone={"is near": f"they {_NEARLY} {_WHERE}"}),
    Spoken(
        "white_gap",
        alone={
            "is long": f"(white|gap|space|distance|stretch) between {_THEM} (is|looks|) (a bit|a touch|far|much|rather|) too "
            f"(wide|big|long|large|much|great), (too|far too|much too) (wide|big|long|large) a (gap|white|break|space) "
            f"between {_THEM}",
            "is none or short": f"(white|gap|space|distance) between {_THEM} (is|looks|) (a bit|a touch|far|much|rather|) too "
            f"(narrow|small|short|tight|little|thin), (hardly|barely|next to|almost) (no|any|) (white|gap|space) (at "
            f"all|) between {_THEM}",
            "is none": f"no (white|gap|space) at all between {_THEM}",
        },
    ),
    Spoken(
        "hi_front_share",
        alone={
            "above 60 %": f"{_LITTLE} (anything|nothing|any red|any pattern|no red|much) {_BEHIND}, not (a lot|much) "
            f"(going on|there|"
            f"left|) {_BEHIND}, (goes|gets|is|looks|) (a bit|rather|very|) (empty|bare|quiet) {_BEHIND}",
            "below 40 %": f"{_LITTLE} (anything|nothing|any red|any pattern|no red) {_AHEAD}",
        },
    ),
    Spoken(
        "hi_left_share",
        alone={
            "above 60 %": "(pattern|red|hi|weight of (it|the red)) (sits|lies|hangs|is|leans|pulls|falls|goes) (a bit|a "
            "touch|a little|rather|) (too|"
            ") (far|much|) (over|out|across|off|) (on|to|towards) the left, (more|most) of (it|the (red|pattern)) "
            "(is|sits|lies|hangs|) (on|over "
            "on|to|over to) the left",
            "below 40 %": "(pattern|red|hi|weight of (it|the red)) (sits|lies|hangs|is|leans|pulls|falls|goes) (a bit|a "
            "touch|a little|rather|) (too|"
            ") (far|much|) (over|out|across|off|) (on|to|towards) the right, (more|most) of (it|the (red|pattern)) "
            "(is|sits|lies|hangs|) "
            "(on|over on|to|over to) the right",
        },
    ),
    Spoken(
        "balance",
        alone={
            "is good": "(pattern|red|it|steps|patches) (is|are|) (nicely|well|evenly|beautifully) "
            "(spread|spaced|set|shared|laid|placed|spread "
            "out|laid out|spaced out|distributed) (out|) (from (head|nose) to (tail|stem)|(down|over|along|across) the "
            "(whole|) "
            "(back|body|fish|length))",
            "at most fair": "pattern (is|gets|goes|looks|turns into) (a bit of|something of|rather|) (a mess|a muddle|a "
            "jumble|messy|muddled|"
            "untidy) (from the dorsal (back|on)|behind the dorsal|at the (rear|back|tail end|front)|in the middle|towards "
            "the tail)",
        },
    ),
    Spoken(
        "makibara",
        alone={
            "is yes": "(red|hi|it|patch|second (step|patch)|first (step|patch)|third (step|patch)|last "
            "(step|patch)|shoulder (step|patch)) "
            "(wraps|wrap|goes|runs|curls|carries|comes|reaches) (all the way|right|clean|) (round|around|under) (like a "
            "(belt|sash|girdle|cummerbund)|underneath|under the belly|under her|under it|the belly) (on (the|) "
            "(left|right|both sides)|both sides|)"
        },
    ),
    Spoken(
        "head_patch_place",
        alone={
            "is off_left": "(red on the head|head red|head patch|head spot|cap) (is|looks|) (a bit|) "
            "(lopsided|uneven|crooked|off centre) (with|) "
            "(more|more of it|more red|) (on|to) the left",
            "is off_right": "(red on the head|head red|head patch|head spot|cap) (is|looks|) (a bit|) "
            "(lopsided|uneven|crooked|off centre) (with|) "
            "(more|more of it|more red|) (on|to) the right",
        },
    ),
    Spoken(
        "steps",
        alone={
            "is inazuma": "(a|nice|lovely|) lightning shape (to (it|the (red|pattern|hi))|), (shape|look|run) of (a|) "
            "lightning (to it|)",
            "is sandan or yondan": "(whether|if|) (that is|it is|they are|) 3 (steps|patches|) or 4 (steps|patches|)",
            "is nidan or sandan": "(whether|if|) (that is|it is|they are|) 2 (steps|patches|) or 3 (steps|patches|)",
            "is yondan or godan": "(whether|if|) (that is|it is|they are|) 4 (steps|patches|) or 5 (steps|patches|)",
        },
    ),
    SpokenTogether(
        f"{_LAST} (is|looks|) (only|just|) (about|roughly|maybe|not|) (half|a third|a quarter) (of|) (the size|as "
        f"(big|large|long)) (of|as) the {_OTHER}"
        f", {_LAST} (is|looks|) (much|far|a lot|way) (smaller|shorter) than the {_OTHER}",
        "small_patches is few and last_step_size is small",
    ),
    SpokenTogether(
        f"{_FIRST} (is|looks|) (only|just|) (about|roughly|maybe|not|) (half|a third|a quarter) (of|) (the size|as "
        f"(big|large|long)) (of|as) the "
        "(second|others|other|rest|1 behind|1 behind it|last)",
        "small_patches is few and first_step_size is small",
    ),
    Spoken(
        "windows",
        alone={
            "at least 1": "(somebody|someone) (has|) (punched|cut|bitten|burnt|burned|poked) a hole (in|through) (the|) "
            "(second|first|third|last|"
            "shoulder|front|rear|middle|) (patch|step|red|saddle|1), (white|) scale (missing|without|that lost|that has "
            "lost) (its|the|) red "
            "(in (the middle of|) the (saddle|patch|step|red|(first|second|third|last|shoulder) (patch|step|1))|)"
        },
    ),
    Spoken(
        "kiwa",
        alone={
            "at most fair": f"{_EDGES} (has|have|is|are|) not (really|quite|fully|yet|properly|) {_COME} (yet|) (on the "
            f"(rear|back) edges|at "
            f"the (back|rear|sides)|behind|on the {_LAST}|on any of them|anywhere|), "
            f"{_EDGES} (still|) (has|have|is|are|) (still|) to (come in|close|close up|sharpen|sharpen up|tighten up|firm "
            f"up|set)",
        },
    ),
    Spoken(
        "hi_thick",
        alone={
            "is thick": "(laid|put|painted|spread|slapped) on so thick (that|) you could "
            "(scrape|cut|peel|spoon|shave|dig|chip) (it|a bit|some) (off|) "
            "(with a (knife|spoon|spade|blade|trowel|fingernail)|), so thick you could "
            "(scrape|cut|peel|spoon|shave|dig|chip) (it|a bit|some) (off|) "
            f"(with a (knife|spoon|spade|blade|trowel|fingernail)|), as thick as {_TOP}",
            "is thin": "(red|hi|colour) (has|is|) (gone|going|worn|wearing|getting|got) (a bit|rather|very|) thin "
            "(on|over|at) (the|) (top of the head|head|"
            "crown|shoulder|dorsal|last (patch|step|1)|tail|rear|back|sides|top|middle of the back)",
        },
    ),
    Spoken(
        "hi_even",
        alone={
            "is even": "(red|colour|tone|shade|hi) (is|stays|keeps|runs|holds) (exactly|much|just|all|) (the same|even) "
            "(all the way|right|) "
            "(from (the|) (head|nose|front)|) (right|all the way|) (down|back|through|) to (the|) (tail|tail "
            "stem|stem|peduncle|end|very end)",
        },
    ),
    Spoken(
        "fading",
        alone={
            "at most slight": f"(red|hi|colour|{_LAST}) (is|) (starting to|beginning to|) (fall apart|break up|falling "
            f"apart|breaking up|{_FADES}) {_SCALES}"
        },
    ),
    Spoken(
        "sashi_depth",
        alone={
            "at least 1": "(a|1|whole|full|) row of pink scales (in front of|along the front of|at the front of) "
            "(every|each|all the|the|both|first|second|third|last|) (patch|patches|step|steps|red|1)"
        },
    ),
    Spoken(
        "odome",
        alone={
            "below 5 %": "(needs|wants|could do with|could use|i would like|short of) (a bit|a little|a touch|some|a "
            "scale|) (more|of|) "
            "white (at|before|by|in front of) the (tail|tail end|tail stem|stem|peduncle)"
        },
    ),
    Spoken(
        "kiwa_style",
        alone={
            "is maruzome": "(each|every|) (edge|edges|kiwa) (follow|follows|goes round|runs round|run round) "
            "(the|each|every|) (scales|scale|"
            "round of the scales|line of the scales|round of each scale)"
        },
    ),
    Spoken(
        "hi_even",
        alone={
            "is patchy": f"{_PART} (is|looks|) (a bit|a touch|a shade|a little|a lot|much|rather|clearly|slightly|far|) "
            f"(darker|lighter|paler|redder|brighter|duller) (in (colour|tone)|) than (on|) "
            f"{_PART}",
            "at most fair": "2 (different|) (pots|tins|tubes|batches|buckets) of (paint|red|colour), (red|tone|colour) "
            "(does|) not match "
            "(from (1|patch|step) to (the next|another|patch|step)|across the (steps|patches)|front to back)",
        },
    ),
    Spoken(
        "hi_thick",
        alone={
            "at most fair": "(red|hi) (has|have|has got) not (got|) (the|much|enough|any|all the|a lot of) "
            "(depth|thickness|body) (yet|in it|)"
        },
    ),
    Spoken(
        "balance",
        alone={
            "is good": "(pattern|red|it) (flows|runs|moves|travels) (nicely|well|beautifully|properly) (down|along|over) "
            "(the|) (whole|) "
            "(back|body|length)",
            "at most fair": "(balance|pattern|it|she|he) would (be|look) (a lot|much|far|so much|) "
            "(better|nicer|perfect|more balanced|balanced) with "
            "(another|a|1 more|1 extra|a bit more|more|a bit of) (red|small|big|little|) (step|patch|red|hi|pattern|dab "
            "of red) (at|by|near|on|behind|"
            "in) (the|) (tail|dorsal|shoulder|rear|back|front|head|tail end|middle|left|right)",
        },
    ),
    Spoken(
        "steps",
        alone={
            "is inazuma": "(red|pattern|hi|colour) (swings|goes|runs|weaves|snakes|wanders|moves) (from|) (left to "
            "right|right to left|1 side to "
            "the other) and back (again|)"
        },
    ),
    Spoken(
        "hi_left_share",
        alone={
            f"{share} %": "(all|all 2|all 3|all of the|both|all the|most of the) (steps|patches|of them|red) "
            "(lean|pull|fall|slip|drift|swing) "
            f"(over|out|) (to|on|over to|over on|towards) the {side} (side|)"
            for share, side in (("above 60", "left"), ("below 40", "right"))
        },
    ),
    Spoken(
        "wrap_sides",
        alone={
            f"is lower_{side}": f"red on the (flank|flanks|side|sides) (hangs|comes|goes|reaches|is) {_LOWER} on the "
            f"{side}, (wrap|red) (hangs|comes|"
            f"goes|reaches) {_HIGHER} on the {other}"
            for side, other in (("left", "right"), ("right", "left"))
        },
    ),
    Spoken(
        "shoulder_cut",
        alone={
            "is yes": "(notch|wedge|cut|bay|slice|tongue|bite) of white "
            "(cutting|cuts|going|goes|biting|bites|coming|comes|reaching|running|) (in|into it|into "
            "the red|up|) (behind the head|at the shoulder|on the shoulder|by the shoulder|over the shoulder)"
        },
    ),
    Spoken(
        "tobihi",
        alone={
            "at least 2": "(few|several|couple of|handful of|some) (loose|odd|stray|single|) (red scales|scales of red) "
            "(have|that have|) (broken|come|split|got) "
            "(away|loose) ((from|behind) (the|it|) (first|second|third|last|) (step|patch|red|)|)"
        },
    ),
    Spoken(
        "fading",
        alone={
            "at most slight": f"({_LAST}|{_FIRST}|second (step|patch|1)|red|hi) (is|) (fading|wearing|melting|shrinking) "
            f"(away|back|off) (from the (back|rear|"
            "front|edge|back edge|rear edge|sides|outside|edges)|at the (back|rear|edges|edge)|)"
        },
    ),
    Spoken(
        "head_patch_place",
        after=_OF_HEAD,
        alone={
            f"is off_{side}": f"(it|) (is|) (sitting|sits|lies|lying) (a touch|a bit|a little|a shade|slightly|) "
            f"(over|off|out) (to|towards|on) "
            f"the {side}"
            for side in ("left", "right")
        },
    ),
    Spoken(
        "head_hi",
        alone={
            "is none": "head (is|) (plain|all|pure|completely|quite|clean|) white (from (the|) (nose|lips|mouth) to "
            "(the|) (neck|shoulder|gills)|right "
            "(back|down) to the (shoulder|gills|neck))"
        },
    ),
    Spoken(
        "hi_front_share",
        alone={
            "above 60 %": "(could do with|needs|wants|could use) (a bit|a little|some|) more (red|pattern|colour|hi) "
            "(behind|behind the (dorsal|shoulder|"
            "fin)|from the dorsal back|further back|towards the tail)"
        },
    ),
    Spoken(
        "bongiri",
        alone={
            "is yes": "(red|pattern|hi) (stops|ends) (far|much|way|a lot|) too (soon|early) (and leaves (a|) "
            "(long|big|great) (white|empty|bare) "
            "(tail|rear|back end|behind)|and leaves the (tail|rear) (white|bare|empty)|)"
        },
    ),
    Spoken(
        "kiwa",
        alone={
            "at most fair": "(has|have|has got|have got) not (got|) (a|any|1) (proper|real|clean|sharp|clear|decent) "
            "(edge|kiwa|edges) (anywhere|to it|to the "
            "red|on it|) (yet|)"
        },
    ),
    Spoken(
        "hi_even",
        alone={
            "is patchy": f"{_PART} (is|has) (a|) (different|slightly different|totally different|completely "
            f"different|quite different) "
            "(red|colour|shade|tone) (from|to|than) (the|) (other|others|rest|other 2|first|last|second|1 before|front 1)"
        },
    ),
    Spoken(
        "hi_strength",
        alone={
            "at most fair": "(very|) (ordinary|plain|flat|dull|average|common) (red|colour|hi) with no "
            "(life|fire|punch|depth|go|sparkle) (in it|to it|)"
        },
    ),
    Spoken(
        "joined_steps",
        alone={
            "is touching": f"({_NTH} (step|patch|1|) and {_NTH} (step|patch|steps|patches|1|)|steps|patches|first 2|last "
            f"2|2 of them) (have|are|) "
            f"(grown|flowed|melted|fused) together {_WHERE}"
        },
    ),
    Spoken(
        "white_gap_place",
        beside="biggest gap, widest gap, largest gap, longest gap, main gap, biggest white, widest white, biggest break, "
        "widest break",
    ),
    Spoken(
        "one_sided",
        alone={
            "is yes": "(red|pattern|it|hi) (is|sits|lies) all on 1 side of (the|) (back|spine|dorsal), "
            "all the red (is|) on 1 side of (the|) back"
        },
    ),
    Spoken(
        "niban_hi",
        alone={
            "is yes": "(thin late|late thin|late|second) (red|hi) (is|) (coming|comes|come|came) (through|up|in) "
            "(on|over|in|at|between) (the|) "
            "(flank|flanks|side|sides|back|shoulder|white|belly|tail|steps|patches)"
        },
    ),
    SpokenTogether(
        "(fin|blade|rest of the fin|rest of it) itself (is|) (all|) (white|clean|clear|snow white)", "nothing"
    ),
)
"""What is said of red in whole sentences."""
