"""How sorters speak of the pattern of red (hi) as a whole: its steps and gaps, how much of it there is, and where it lies.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.builtin.red_pattern import PATTERN
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_OF_STEPS = {"hi_places", "white_gap_width", "joined_steps", "first_step_size", "last_step_size", "wrap_sides"}
"""Of single steps and places: behind them `only on the left` is not said of all red."""
_OF_PATTERN = tuple(trait.name for trait in PATTERN if trait.name not in _OF_STEPS)
_RED = "(red|colour)"
_IT = "(red|pattern|colour|patches|all the patches|it all)"
_AT_ALL = "(at all|whatever|whatsoever|anywhere|to speak of|on this 1|to be seen|)"
_PATCHES = (
    "(steps|patches|dan|red bits|lumps of red|chunks of red|lots of red|bits of pattern|step pattern|dan pattern|"
    "islands|blobs|saddles|splodges|blocks|pieces|stepper|steps of red|steps of colour|(red|separate) (patches|steps|"
    "areas|islands|blobs|blocks)|(patches|blobs|islands|spots|areas|pieces|bits|blocks|saddles|splodges|splashes) of "
    "(red|colour))"
)
_SUCH = (
    "(clean|clear|big|large|good|bold|strong|separate|neat|distinct|well placed|well spaced|well shaped|hefty|tidy|"
    "chunky|decent|fat|solid|proper|equal|heavy|even|round|bright|perfect|great|fine|simple|classic|true|plain|honest|"
    "textbook|ordinary|standard|small|little|tiny|wee|broad|wide|tall|long|short|thick|crisp|handsome|smart|attractive|"
    "typical|everyday|straightforward|straight|regular|even sized|equal sized|busy|weak|loose|rough|ragged|lazy|nicely "
    "spaced|nicely placed|well made|well cut|well parted|old|good old|clean cut|separated|)"
)
_ALONG = (
    "((down|along|all down|all along) (the|her|his|) (back|body|fish|length|middle|middle of the back|spine)|in a (row|"
    "line) (down the middle|down the back|along the back|)|from head to tail|head to tail|counting the head|with the "
    "head (patch|) (included|)|head included|including the head|if you count the head|parted by white|with white "
    "between|clean apart|well apart|nicely apart|like stepping stones|all (decent|good|nice|fine|ok|clean|clear)|with (a bit "
    "of|a|some) swing (to (them|it)|)|on white|on the white|no more|and no more|all in 1 line|end to "
    "end|nose to tail|(down|along) the back like stepping stones|all the way down|altogether|all told|in all|in total|)"
)


def _counted(number: str) -> str:
    """What is said for so many steps."""
    parted = "(in|cut in|cut into|broken into|broken up into|split into|made of|parted into|divided into|falls into)"
    return (
        f"(pattern is|hi is|it is|) {number} {_SUCH} {_SUCH} {_PATCHES} {_ALONG}, (red|pattern|hi|) (is|) {parted} "
        f"{number} {_SUCH} {_PATCHES}, (red|pattern) (is|) {parted} {number}, {number} step (type|kind|thing|1)"
    )


_BETWEEN = (
    "((in between|between|apart) (them|the steps|the patches|each|each of them|each 1|all of them|steps|patches|)|in "
    "the (middle|pattern|red)|on the (saddle|back)|at the dorsal|in the middle of the back)"
)
_GAP = (
    "(gap|white gap|break|white break|cut|white cut|space|white space|white|stretch of white|white stretch|strip of "
    "white|band of white)"
)

_GOES = (
    "(goes|runs|comes|reaches|extends|carries on|carries|continues|drops|drips|slides|spills|hangs|dips|falls|slips|"
    "pours|bleeds|spreads|gets|creeps|washes|laps|wraps|curls|turns|going|running|coming|wrapping|spilling)"
)
_HOW = "(right|all the way|straight|well|just|only just|clean|a good way|far|a bit|nicely|deep|well and truly|)"
_STOPS = "(stops|ends|finishes|pulls up|quits|halts|is cut off|cut off|dies out|breaks off|stopping|ending|terminates)"
_LAST = (
    "((last|rear|back|tail|end|second|third|fourth|hind|final|hindmost) (patch|step|red|1|piece|block|saddle|red patch)|"
    "red|pattern|colour)"
)
_TAIL = "(tail|tail fin|tail joint|tail root|tail base|caudal|caudal fin|root of the tail|base of the tail|tail tube|tail stem)"
_NO_TAIL = "(does|did|do|) (not|never) (stop|end|finish|pull up) (before|short of|in front of) the tail"
_ODOME = (
    "(odome|ondome|ojime|tail stop|stop at the tail|gap (before|at) the tail|white gap (before|at) the tail|tail gap|"
    "white (before|at) the tail)"
)
_GOOD = (
    "(good|perfect|excellent|ok|okay|present|very good|fine|nice|right|clean|clear|proper|correct|lovely|just right|"
    "spot on|decent|all right|alright|tidy|textbook|ideal|where it (belongs|should be)|where (you|i) (want|like) it|as "
    "it should be|the right (length|size)|about right|there|well placed|sits right|neat|in place|sound)"
)

_MOST = (
    "(mostly|mainly|mostly all|more|too much|heavier|heavy|most|concentrated|more of it|loaded|more weight|bunched up|"
    "bunched|crowded|piled up|busy|all crowded|all bunched up|packed|weighted|most of it)"
)
_ALL = "(all|only|completely|everything|nothing but|all of it|entirely|just)"


def _side(most: str, side: str) -> str:
    """What is said for red that lies more, or only, at one end or on one side."""
    red = "(red|pattern|colour|patches)"
    return (
        f"{red} (is|lies|sits|) {most} {side}, {most} (the|of the|of its|of her|) (red|pattern|colour|patches) (is|lies|"
        f"sits|) {side}"
    )


_FRONT = (
    "(in front|up front|out front|(on|at|in) the (front|front half|front end|front part)|towards the front|towards the "
    "head|on the shoulder side|in front of the (dorsal|dorsal fin|back fin|middle)|forward|(on|over|at|round) the "
    "shoulder|(on|over|at) the shoulders)"
)
_REAR = (
    "(behind|at the rear|at the back end|on the rear half|on the rear|in the rear half|in the back half|towards the "
    "tail|behind the (dorsal|dorsal fin|back fin)|at the tail end|towards the back|down the back end|in the tail half)"
)
_LINE = "(lateral line|side line|sideline|line)"
_BELOW = "(below|under|past|over|beneath|beyond)"
_SCALES = (
    "((a|1|2|3|4|5|6|a few|a couple of|several) (scale|scales|rows|scale rows|)|a bit|a touch|a little|slightly|a long "
    "way|a fair way|well|)"
)
_SIDED = (
    "((on|down|) (both sides|the left|the right|1 side|left|right|the left side|the right side|each side|either side)|"
    "both sides|equally|equal|)"
)
_BELLY = "(belly|tummy|underside|stomach)"
_WHOLE = "(the fish|it|her|him|the back|the body|the skin|)"
_SHARES = (
    ("is 45 % to 55 %", "(half|1 half|about half)"),
    ("is 30 % to 36 %", "(a third|1 third|third)"),
    ("is 62 % to 71 %", "(2 thirds)"),
    ("is 70 % to 80 %", "(3 quarters)"),
    ("is 20 % to 30 %", "(a quarter|1 quarter|quarter)"),
    ("is 17 % to 23 %", "(a fifth|1 fifth|fifth)"),
)


def _sides(side: str, most: str, only: str) -> dict[str, str]:
    """What is said for red that lies more, or only, on one side, by readings of the share of the left."""
    there = f"((on|to|over on|over to|down|towards|over) (the|her|his|) {side} (side|flank|half|))"
    heavy = (
        f"{side} heavy, (pattern|red) leans {side}, (pattern|red) (leans|hangs|falls|pulls|slides) to the {side}, more "
        f"(red|) on the {side} than (on|) (the|) (left|right)"
    )
    weight = f"(all|all the|) weight (is|) (all|mostly|) (on|to) the {side}"
    return {most: f"{_side(_MOST, f'({there}|{side})')}, {heavy}, {weight}", only: _side(_ALL, there)}


_STRAY = (
    "(tobihi|odd (red spot|red scale|scale of red|red fleck|red dot|bit of "
    "red)|(stray|isolated|loose|lone|lonely|solitary|flying|orphan|single stray) (red spot|red scale|scale of "
    "red|red|hi|red fleck|red dot|bit of red|scale|spot)|red scale (on its own|by itself|all alone|out on its own)|"
    "(speck|fleck|dot|splash|freckle|dab|drop|crumb|spatter|spot) of red|scale of red (all alone|on its own|by itself)|"
    "tiny red (spot|dot|fleck|speck)|scattered red scale|stray)"
)

SAID_OF_PATTERN: tuple[Saying, ...] = (
    Spoken(
        "hi_cover",
        alone={
            reading: f"(about|roughly|around|some|) {share} (of|) {_WHOLE} (red|is red|in red|covered|covered in red), "
            f"red (covers|on|over) (about|roughly|around|) {share} (of|) (the back|it|the fish|the body|), covers "
            f"(about|roughly|around|) {share} (of|) (the back|it|the fish|the body|), (the|) fish (is|) (about|roughly|) "
            f"{share} red, "
            f"(the|) back (is|) (about|roughly|) {share.replace('third|1 third|third', 'third of it')} red"
            for reading, share in _SHARES
        },
    ),
    Spoken(
        "hi_cover",
        "cover, hi cover, red cover, red, hi, beni, covered, red share, share of red, red on the back, 緋の割合",
        alone={
            "at most 25 %": "(a|) quarter red (not more|at most|no more|if that), (not|) (barely|not even) a quarter red",
            "at most 50 %": "(not|less than|under|not quite|not even) half (red|of it red|the back red), more white than red",
            "at least 50 %": "(more than|over|well over) half (red|of it red|the back red), more red than white",
            "is 45 % to 55 %": "half red half white, red on half of the back, half and half, half white half red, "
            "(about|roughly|) half red half white, red and white half and half, 50 50 red (to|and) white, fifty fifty "
            "red to white, half and half red and white, as much red as white, equal red and white, fifty fifty red and "
            "white",
            "below 20 %": "hardly any (red|pattern|hi|colour), precious little (red|pattern), (just|only) (a few|a "
            "couple of|1 or 2|a handful of) (bits|spots|dabs|patches|touches) of red, (hardly|barely) a mark on (it|her|"
            "him), (mostly|nearly all|almost all|mainly|largely) white (this 1|fish|), (very|too) little (red|pattern|"
            "colour), nearly all white, almost all white, not much (red|colour) (on (it|her|him|the back|this 1)|to it|"
            "), little red, little hi, sparse, red is sparse, mostly white, mainly white, (barely|scarcely) any (red|"
            "pattern|colour), (next to|as good as) no red, (a|just a|only a) (bit|touch|splash|lick|dab|smudge) of red "
            "(here and there|), all white bar a (spot|dab|smudge|patch) of red, far too little red, next to nothing on "
            "(it|her|him), thin on red",
            "at most 40 %": "(not|never) enough red, could do with (more|a bit more) (red|pattern), wants more (red|"
            "pattern), needs more (red|pattern), short of red, light on red, a bit (little|thin on) red, plenty of "
            "white, lots of white, a lot of white",
            "is 0 %": "all white, no (red|hi|colour) (on it|on her|on this 1|) (at all|anywhere|whatsoever|), pure "
            "white fish, plain white, white all over, shiromuji, plain white fish, white as a sheet all over, not a "
            "(scale|speck|spot) of red (on it|on her|anywhere|), 白無地",
            "above 60 %": "(not|never) enough white, short of white, (could do with|wants|needs) (more|a bit more) white",
            "above 75 %": "(almost|nearly) (completely|all|entirely) red, red (almost|nearly) (all over|everywhere), "
            "(barely|hardly) any white (on (it|her|him)|left|), (far|way|much) too (much red|red), heavy on the red, "
            "(mostly|mainly|largely) red (this 1|fish|), too much red, too red, heavy red, heavy hi, a lot of red, lots "
            "of red, loads of red, all hi no white, all red no white, red all over like a boiled lobster, drowned in "
            "red, (hardly|barely) any white (until|till) the tail, hardly any white, very little white, "
            "not much white, no white to speak of, too little white, red "
            "nearly from head to tail, swamped (in|with) red, too heavy with red",
            "above 97 %": "completely red, all red, red all over, red everywhere, red from (head|top|nose|end) to (tail|"
            "toe|end), akamuji, no white at all, no white left, not a scale of white, 赤無地",
        },
    ),
    Spoken(
        "steps",
        "steps, dan, pattern, 段",
        levels={"none": "no", "many": "many, lots of, a lot of, very many"},
        alone={
            **{
                f"is {name}": f"{name}, {name} kohaku, {name} pattern, {_SUCH} {_SUCH} {name} (pattern|) ((neat|clean|"
                "regular|tidy|even) as (stairs|steps|stepping stones|a ladder)|like (stairs|a ladder|steps|stepping "
                f"stones)|), {_SUCH} {_SUCH} {number} step (fish|kohaku|koi|hi|pattern|) (if you include the head|with "
                f"the head|), {_SUCH} {number} stepper, {kanji}, {_counted(number)}"
                for name, number, kanji in (
                    ("nidan", "2", "二段"),
                    ("sandan", "3", "三段"),
                    ("yondan", "4", "四段"),
                    ("godan", "5", "五段"),
                )
            },
            "is many": f"(many|lots of|a lot of|loads of|plenty of) {_PATCHES}, {_counted('6')}, {_counted('7')}, more "
            "than 5 (steps|patches)",
            "is none or ippon or inazuma": "stepless, without steps, "
            "no (clear|proper|real|) (steps|step pattern|stepping) (to it|to her|in it|"
            "at all|to speak of)",
            "is nidan or sandan": f"(2|two) (or|to) 3 {_PATCHES}, (2.5|2 and a (half|bit|crumb|smudge|dab|spot)) "
            f"{_PATCHES}, 2 and a (half|bit|crumb|smudge|dab), (nidan|2 patches) and a (half|bit|crumb), "
            f"(then|and then) 2 (red|) (patches|steps) behind (it|), 2 more (red|) "
            "(patches|steps|) behind (it|the head|the head patch|the head spot), nidan behind (the head|the maruten|it|"
            "), (then|) 2 more behind (it|)",
            "is sandan or yondan": f"3 (or|to) 4 {_PATCHES}, (3.5|3 and a (half|bit|crumb|smudge|dab|spot)) {_PATCHES}, "
            "3 and a (half|bit|crumb|smudge|dab|spot|scrap), (sandan|3 patches) and a (half|bit|crumb|scrap|bit of a "
            "fourth), 3 more (red|) (patches|steps|) behind (it|the head|the head patch|the head spot), (the|) (rest|"
            f"body) (is|) 3 {_SUCH} {_PATCHES}, sandan behind (the head|the maruten|it|)",
            "is yondan or godan": f"4 (or|to) 5 {_PATCHES}, (4.5|4 and a (half|bit|crumb|smudge)) {_PATCHES}, 4 and a "
            "(half|bit|crumb|scrap)",
            "is tancho": "tancho, a tancho, a real tancho, true tancho, tancho kohaku, tancho pattern, proper tancho, "
            "(only|just) (a|the|) (red|) (head patch|patch on the head|spot on the head|head spot) (and (nothing|no "
            "red) else|and that is it|), head patch only, (red|) (patch|spot) on the head (only|and nothing else|and "
            "that is it|and nothing (behind|on the body)), red on the head only, only red on the head, all (the|) red "
            "on the head, (red|) (spot|patch|cap|mark) on (the|her|his|its) head and (nothing|nowhere|no red) (else|"
            "more), all white (apart from|bar|but for|except for|except) the (head|head spot|head patch|cap), (just|"
            "only|nothing but) a (red|) (cap|hat|head spot|head patch) (and (nothing (else|more)|that is it)|), only "
            "has the (head spot|head patch|cap), (red|colour) (only|just|nowhere but) on the head, (nothing|no red) but "
            "the head patch, 丹頂",
            "is ippon": "(straight|plain|simple|clean|proper|long|good|classic|typical|) (ippon|ippon hi) (straight "
            "down the back|with no break|), ippon hi pattern, 1 (long|single|solid|continuous|unbroken|straight|great|"
            "great long|single long|long solid) (long|unbroken|straight|) (red|patch|band|stripe|strip|red patch|"
            "stripe of red|band of red|block of red|sheet of red|saddle) (from head to tail|head to tail|down the back|"
            "all the way (down|)|without a break|no breaks|with no break|), (no|without|not a|without a|not a single) "
            "(breaks|break|cut|cuts) (nowhere|anywhere|in (it|the red|the pattern)|at all|to be seen|), no (gap|gaps|"
            f"step) in the (red|pattern), {_IT} (is|) (unbroken|in 1 piece|in one piece|without a break|all 1 piece|"
            "never breaks|not broken|not cut|in 1 run), unbroken (red|pattern|from head to tail|), single long (patch|"
            f"red), {_IT} (runs|goes|comes) (straight|right|all|) (down|through|along|in 1 piece|in one piece) (in 1 "
            "piece|the back|(from|) (head|the head|nose|the nose) to (tail|the tail|the tail stem)|all the way|) (with|"
            f"without|and) (no|a|never a|any) (break|breaks|gap|step|cut) (at all|anywhere|), {_IT} runs in 1 piece "
            "(from the head to the tail stem|from head to tail|), straight (red|hi), 1 piece, 1 step, red in 1 piece, "
            "one step, straight down the back (in 1 piece|with no break|without a break), like a (carpet|runner|red "
            "carpet) (down the back|), all (in|) 1 piece, 一本緋, (1|just 1|only 1) (long|solid|straight|big|great|) "
            "(slab|sheet|strip|streak|stripe|run|line|block|plate|carpet|band) (of red|) (down the back|from (head|"
            "nose) to tail|head to tail|nose to tail|all the way (down|)|), (1|a) patch from (nose|head) to tail, (red|"
            ") carpet from (end to end|nose to tail|head to tail), 1 (strip|stripe|band|run|line|piece) (right|"
            "straight|all the way|) (down|through|along), (pattern|red) (is|) (just|) a stripe, "
            "(not|never) (broken|broken up|cut|cut up|parted) (at all|"
            f"anywhere|), 1 (continuous|long|unbroken|solid) (stretch|piece|run) of red, {_IT} (is|) all in 1, all in 1 "
            "(piece|run), no (steps|breaks) just 1 long (red|patch|stripe),  (continuous|unbroken|uninterrupted) (red|"
            "hi|pattern|plate) (down the back|from (head|nose) to tail|all the way|), (straight|solid|unbroken|long|"
            "continuous) (run|strip|stretch|line|sheet|band|stripe|slab) of red (down the back|from (head|nose) to "
            f"tail|all the way (down|)|), solid red (down the back|all the way (down|)|from (head|nose) to tail), {_IT} "
            "(never|does not) (lets up|let up|stops|stop|break|breaks|breaks up) (from (head|nose) to tail|till the "
            f"tail|all the way|anywhere|), no white (breaks it up|in between|between) (at all|anywhere|), {_IT} (all|"
            "right|straight) the way down (the back|) (with|without) (no|a|any) (break|cut|gap), nothing (breaks|parts|"
            "cuts) (it|the red|it up|the pattern)",
            "is ippon or inazuma": "(red|pattern|) unbroken from (head|nose|shoulder) to (hip|dorsal), "
            "patches (all|) (run|join|joined|run|running) (together|into each other|up), (all|) "
            "joined (up|together|up all the way), steps (run|joined|run) (together|up|into each other), never (breaks|"
            "breaks up|lets go), does not break (anywhere|at all|)",
            "is inazuma": "(pattern|red|it|) (swings|goes|runs|jumps|zigzags) (left right left|right left right) "
            "(right|left|) (nicely|well|), (got a|a|) lightning (sort of|kind of|) thing (going|going on|), "
            "(a|nice|good|proper|lovely|real|clear|bit of|weak|lazy|strong|sharp|jagged like|a bit of a|"
            "textbook|fine|decent|great|) (inazuma|lightning|zigzag|zig zag|lightning bolt) (pattern|stripe|band|red|"
            "hi|strike|flash|bolt|) (all the way (down|)|(all|right|) (down|up|along|over) the back|from head to tail|"
            f"to the tail|on her|), 1 long zigzag, like lightning, red zigzags, {_IT} (zigzags|zig zags|snakes|winds|"
            "swings|wiggles|wanders|weaves|meanders|jumps) (nicely|well|) (down|along|all down|from side to side|left "
            "and right|) (the back|the body|the spine|from side to side|), (runs|goes) (down|) (the back|) in (a|) "
            "(zigzag|zigzags), (2|3|two|a couple of|good|nice|lovely|clear|strong) "
            "(good|nice|clear|clean|) (turns|swings) in (it|the red|the pattern), "
            "(2|3|two|a couple of) bends in (the red|the pattern), "
            "(red|pattern|) (goes|runs|swings|jumps) (from|) left (to|then|"
            f"and|) right (to|then|and|) (then|) left (again|), s shaped red, {_IT} swings (from|) side to side, swings "
            "(from|) side to side (down the back|), (nice|good|lovely|clear|strong) swing (to|in) (it|the red|the "
            "pattern), 稲妻",
        },
    ),
    Spoken(
        "step_count",
        "",
        alone={
            "is 1": "(only|just|) (1|a single|a lone) (red|) (patch|saddle|blob|island) (only|and that is it|on the "
            "whole fish|on (it|her|him)|)"
        },
    ),
    Spoken(
        "pattern_type",
        "pattern type, type of pattern",
        levels={"omoyo": "large, big, bold", "komoyo": "small, fine, busy"},
        alone={
            "is omoyo": "omoyo, (nice|good|lovely|) (big|large|bold|great big|hefty|chunky|big bold|large bold|huge|"
            "massive|generous|great) (clean|clear|bold|solid|separate|neat|) (patches|steps|blocks of red|islands|"
            "saddles|areas of red), (nice|good|) (big|large|bold|large bold|big bold) pattern, patches (big|large|bold|"
            "huge|hefty|generous|chunky), big blocks, big old patches, 大模様",
            "is komoyo": "komoyo, (lots of|many|all|) (small|little|tiny|wee|fiddly|bitty) (patches|bits|bits of red|"
            "pieces|blobs|islands), small pattern, fine pattern, busy, busy pattern, (pattern|it) (is|) (too|rather|a "
            "bit|very|) busy, (chopped up|cut up|choppy|fragmented|scrappy|scattered) pattern, pattern (is|) (all|) "
            "(chopped up|cut up|choppy|fragmented|scattered|in bits), red in (little|small|tiny) bits (all over|), "
            "bitty, bitty pattern, fussy, fussy pattern, bits and pieces, patches (all|) (small|tiny|bitty|fiddly|"
            "little) (for (the|her|his) (size|frame|body) (she will (get to|be|make)|he will (get to|be|make)|it will "
            "(get to|be|make)|)|for her|), patches (a bit|a touch|rather|on the) (small|small side|little) (for (the|"
            "her|his) (size|frame|body) (she will (get to|be|make)|he will (get to|be|make)|it will (get to|be|make)|)|"
            "), broken up (pattern|into little bits), 小模様",
            "is gotenzakura": "gotenzakura, goten zakura, grape clusters, like cherry blossom, like bunches of grapes, 御殿桜",
            "is kanoko": "kanoko, dappled, single red scales, fawn pattern, dapple, like a fawn, 鹿の子",
        },
    ),
    Spoken(
        "maruten",
        "maruten, separate head patch, round head patch, round patch on the head, round spot on the head, round mark on "
        "the head, head patch separate, separate (spot|patch|mark) on the head, separate head spot, 丸点",
        alone={
            "is yes": "(head patch|head spot|cap|patch on the head|spot on the head|head mark|crown patch) (is|sits|"
            "stands|) (apart|alone|on its own|all by itself|by itself|all on its own|free|separate|all alone|parted "
            "from the body|clear of the (body|shoulder|rest)|not joined (to anything|)|cut off from the body|free (from|"
            "of) the body (red|)), round (head spot|head patch|spot on the head|patch on the head|mark on the head) "
            "(all|) (by itself|on its own|alone|all alone|apart), round head spot, round patch on head, round spot on "
            "the head like a coin, crown patch, round crown patch, a coin on the head, coin on the head, round (red|) "
            "(ball|button|coin) on (the|her|his) head, (clean|clear|nice|good|) (break|cut|gap) (at|behind|on) the "
            "neck, white (at|behind|round) the neck, (head patch|head spot|cap|red cap|head mark|head red) (is|) (clean|"
            "well|nicely|clearly|cleanly|) (separated|cut off|parted|away|apart|clear|separate|split off|detached) "
            "(nicely|cleanly|clean|well|) (from (the|) (body|rest|shoulder|red|first step|first patch|body red|others)|"
            "), a round patch sits by itself on the head, white between (the|) head and (the|) (shoulder|body|first "
            "step), (nice|good|lovely|big|small|neat|tidy|perfect|proper|textbook|clean|fine) maruten, head (is|) (cut "
            "off|parted|separate|apart) from the (body|shoulder)",
            "is no": "head (runs|goes) into the shoulder, (head patch|head spot|cap) (joined|joined on|joined to the "
            "body|joined to the shoulder|connected|runs into the shoulder|runs into the body|runs back into the "
            "shoulder), (head|head red|head patch|red|cap) (runs|flows|goes|carries on|carries|comes) (from the head|"
            "back|) (straight|right|back|) into the (shoulder|body|first step|first patch|back), (head|head red) and "
            "shoulder (run together|joined|all in 1), head joined (to the shoulder|to the body|), no maruten, head "
            "patch not separate, no (break|cut|gap|step|white) (at|behind|on|after) the (neck|head|nape), (step|break|"
            "cut|gap) (on|at) the neck (is|) (missing|gone|closed|not there), (head|head red|head patch) (and|to) "
            "shoulder (in 1 piece|joined|run together)",
        },
    ),
    Spoken(
        "hi_start",
        "red begins, red starts, hi starts, hi begins, start of the red, beginning of the red, from the nose to the red",
        alone={
            "above 10 %": f"{_RED} (starts|begins) (a bit|a touch|rather|too|quite|very|a long way|) (far back|late|too "
            "far back|well back), (starts|begins) (too|rather|a bit) far back"
        },
    ),
    Spoken(
        "odome",
        "odome, ojime, ondome, white before the tail, white at the tail, gap before the tail, gap at the tail, white "
        "gap at the tail, white gap before the tail, tail stop, space before the tail, white behind the last red, 尾止め, "
        "尾どめ",
        alone={
            "below 1 %": f"{_LAST} ({_GOES}|) {_HOW} (into|in to|to|up to|up into|down to|down into|out into|as far as) "
            f"the {_TAIL} {_AT_ALL}, {_LAST} (reaches|touches|meets|hits|ends (at|in)) the {_TAIL}, no ({_GAP}|odome|"
            "ondome|stop|tail stop|white joint|white ring|white band|white left|white) (before|at|left at|in front of|"
            f"round|left before) the {_TAIL} {_AT_ALL}, no (odome|ondome|ojime|tail stop|stop|white joint|tail gap) "
            f"{_AT_ALL}, (odome|ondome|ojime|tail stop) (is|) (none|missing|gone|not there|nil|zero|absent), without "
            f"odome, no (finish|end|clean "
            "end|clean finish|end to it) at the tail, (tail joint|tail root|tail base) (is|) (all|) red, red (tail "
            f"joint|tail root|tail base), {_LAST} {_GOES} {_HOW} to the (very|) end, no (clean|proper) (end|stop) at "
            f"the tail, {_LAST} {_NO_TAIL}, {_NO_TAIL}, tail (is|) (joined|not cut off|not free), 尾止めなし, 尾止め無し",
            "is 3 % to 12 %": f"{_GOOD} {_ODOME}, {_ODOME} (is|) (really|all|) {_GOOD}, tail stop, has (a|an|) "
            f"{_ODOME}, {_LAST} {_STOPS} (well|nicely|cleanly|neatly|properly|in good time|clean|) (before|short of|in "
            f"front of|off|clear of) the {_TAIL} (just|) (where (you|i) (want|like) it|as it should|), (nice|good|clean|"
            "clear|neat|proper|lovely|decent) (white|) (joint|ring|collar|band|break|stop|cut|finish|gap|end) (before|"
            f"at|round|in front of) the {_TAIL}, (good|nice|clean|lovely|clear|neat|tidy|) (clean|white) (tail joint|"
            "tail root|tail base), (good|nice|lovely|tidy|neat) (clean|) (finish|end|ending) (at|before) the tail, "
            "(ends|stops|finishes) (just right|right|nicely|clean|well|beautifully|where it should) (before|at|short "
            "of) the tail, tail (is|) (clean|free|cut off clean) with an (odome|ondome), (tail joint|tail root|tail "
            "base) (is|) (white|clean|free), clean at the tail, tail end (finishes|ends|is|stops) (clean|cleanly|"
            "nicely|well), (clean|neat|tidy|nice|good) ending, (nice|good|clean|proper|clear|lovely) white (tail stop|"
            f"odome), odome (there|present) and (good|fine|clean|right), {_LAST} ends in the right place, (well|nicely|"
            ") clear of the tail, (a|) (nice|good|decent|clear|proper|tidy) (bit|strip|stretch|band) of white (before|"
            "at) the tail, white (joint|ring|collar|band) (at|before|round) the tail, (with|has) a (clean|nice|good|"
            f"proper) (odome|ondome), {_ODOME} (is|) clean past that, 尾止め良し",
            "above 1 %": "white tail end, tail end (is|) white, no (red|hi|colour) (on|at|in) the tail end",
            "is 0.5 % to 4 %": f"{_LAST} (nearly|almost|all but|just about|very nearly) (reaches|touches|runs into|gets "
            f"to|goes to|into) the {_TAIL}, (almost|nearly|next to|as good as) no (odome|ondome|ojime|tail stop|white "
            "before the tail|gap before the tail)",
            "is 1 % to 12 %": f"{_LAST} {_STOPS} (just|a hair|a touch|only just|a bit) (before|short of|in front of|"
            f"off) the {_TAIL} (where (you|i) (want|like) it|)",
            "is 1 % to 4 %": f"(short|weak|narrow|small|tight|thin|mean|little|tiny|skimpy) {_ODOME}, {_ODOME} (is|) "
            "(only|) (a bit|a touch|a hair|a shade|a tad|rather|on the|too|) (short|weak|narrow|small|tight|thin|mean|"
            "little|short side|skimpy), little white before the tail, (hardly|barely|not|scarcely) (any|a lot of|much|"
            f"enough) white (before|at) the tail, only just (a|an) {_ODOME}, (a bit|) more (odome|white at the tail|"
            f"white before the tail) (would be nice|would help|needed|wanted|), hardly (a|an|any) {_ODOME}, not much "
            f"(odome|white before the tail|of an odome|of a gap before the tail|room before the tail), {_ODOME} could "
            "be (longer|wider|bigger), only a (sliver|scale|thread|hair|strip) of white before the tail",
            "above 12 %": f"(long|wide|big|too long|large|overlong|huge) {_ODOME}, {_ODOME} (is|) (a bit|a touch|rather|"
            "much|too|far too|very|) (long|wide|big|too long|too wide), much white before the tail, long white before "
            "the tail, (too much|a lot of) (white|odome) before the tail, too much odome",
        },
    ),
    Spoken(
        "odome",
        after=_OF_PATTERN,
        alone={
            "below 1 %": f"{_GOES} {_HOW} (into|up into|down into|out into) the {_TAIL} (on top|at the top|at the "
            f"bottom|on 1 side|), {_HOW} into the {_TAIL}, runs to the tail, runs into the tail",
            "is 3 % to 12 %": f"{_STOPS} (well|nicely|cleanly|neatly|properly|in good time|clean|) (before|short of|in "
            f"front of|off|clear of) the {_TAIL} (just|) (where (you|i) (want|like) it|), has a tail stop, ends nicely "
            "before the tail, (ends|stops|finishes) clean, (ends|stops|finishes) on a (clean|neat|nice|) (white|) "
            "(ankle|joint|stem|collar|tail joint|tail tube)",
            "is 1 % to 12 %": f"{_STOPS} (just|a hair|a touch|only just|a bit) (before|short of|in front of|off) the "
            f"{_TAIL} (where (you|i) (want|like) it|)",
        },
    ),
    Spoken(
        "odome_gap",
        "odome, ojime, ondome, white before the tail, white at the tail, gap before the tail, gap at the tail, white "
        "gap at the tail, white gap before the tail, tail stop, white behind the last red, before the tail, ends "
        "before the tail, red ends before the tail, to the tail, ends, red ends, stops, red stops, end of the red, "
        f"{_LAST} {_STOPS}, (short of|off|from|in front of|before) the {_TAIL}, of white (before|at) the tail, goes to, "
        f"{_LAST} goes to, tail gap, tail stem (is|) white (all round|) for (the last|), white for the last",
    ),
    Spoken(
        "bongiri",
        "bongiri, bon giri, ボンギリ",
        alone={
            "is yes": f"{_LAST} (stops|ends|pulls up|quits|is cut off|gives up|runs out|gives out|peters out|dies|fades "
            "out) (far|way|miles|much|a bit|rather|a lot|) (too|) (early|soon|before the (dorsal|dorsal fin|back fin)|"
            "short|short at the back|far forward|at the dorsal|under the dorsal|behind the dorsal|half way|halfway), "
            "long white (rear|tail|tail end|back end|behind|stretch before the tail|stretch at the back), (rear|back "
            "end|back half|rear half|rear end) (is|) (all|quite|left|completely|) (white|bare|empty|blank|"
            "nothing), tail end (is|) (all|quite|left|completely|) (bare|empty|blank|nothing), (white|bare|empty|blank) "
            "(rear|back end|back half|rear half|rear end), (bare|empty|blank) tail end, (nothing|no "
            "(red|hi|colour|pattern)) (at all|) (past|behind|after|beyond|from) the (dorsal|dorsal fin|back fin|"
            f"shoulder|middle) (back|on|) {_AT_ALL}, nothing (behind|on the rear|at the rear|at the back end|in the "
            "back half), no (red|hi|colour) (on|at|in) the (rear|back end|rear half|back half), empty behind, "
            "bare behind, (whole|all|all the) (back end|rear|back half|tail half) (is|) (all|) (white|bare|empty), no "
            "pattern (at|on|in) the (rear|back end|back half|tail half), (empty|bare|blank|nothing) (at|in|on) the "
            "(rear|back end|back half), white (tail end|rear) (is|) too long, no (red|pattern|hi) from the (dorsal|"
            "middle|shoulder) (back|on), (rear|back end|back half) (is|) (naked|nothing|bald), (rear|back end|"
            "back half|rear end) (is|) (naked|nothing|bald|all white), all white at the (rear|back end|tail "
            "end), (runs|ran) out of (pattern|red) (at the (rear|back)|behind the dorsal|half way|), no (red|pattern|"
            "hi) from the (dorsal|middle|shoulder) (back|on), (half|a third of) (a|the) (tail|body|fish) of white, "
            "half (the|a) (back|fish) (is|) white at the (back|rear|tail), all white (behind|from the dorsal back|"
            "behind the dorsal), white from the dorsal (back|to the tail)",
        },
    ),
    Spoken(
        "bongiri",
        after=_OF_PATTERN,
        alone={
            "is yes": "(stops|ends|pulls up|quits|is cut off|gives up|runs out|gives out|peters out|dies|fades out) "
            "(far|way|miles|much|a bit|rather|a lot|) (too|) (early|soon|before the (dorsal|dorsal fin|back fin)|short "
            "at the back|far forward) (with half a tail of white|), pulls up short at the back so you have half a tail "
            "of white, runs out of red, stops short, pulls up short"
        },
    ),
    Spoken(
        "longest_white_gap",
        "white gap, longest white gap, largest white gap, biggest white gap, longest white stretch, white stretch, "
        "white between the steps, white between the patches",
    ),
    Spoken(
        "white_gap",
        "white gap, largest white gap, white stretch, (gap|gaps|white|break|space) between the (steps|patches)",
        levels={
            "none": "no",
            "short": "short, small, narrow, little, tight, thin, mean",
            "fair": "fair, right, good, nice, clean, clear, even, decent",
            "long": "long, large, big, wide, huge, too long, too big, too wide",
        },
        alone={
            "is long": "(long|large|big|huge|great|wide|great big|massive) (white|) (stretch|hole|gap|space|break) "
            f"{_BETWEEN}, long white stretch, (large|big|long|huge|wide) white gap, too much white {_BETWEEN}, patches "
            "(too|miles|a long way|) far apart, patches (miles|too wide) apart, (steps|patches) too far apart, (then|"
            "and then|) nothing (till|until) the (tail|tail end|last patch|rear), big white hole where the middle "
            "should be, (the|) (middle|middle of the back) (is|) (all|) (white|bare|empty|missing), nothing in the "
            "middle, (big|great|) (empty|bare|white|blank) middle",
            "is fair": "(nice|good|clean|clear|decent|fair|proper|even|right|lovely|neat) (clean|clear|) (white|) (gap|"
            f"break|cut|space|gaps|breaks) {_BETWEEN}, "
            f"(clear|clean|good|nice) white {_BETWEEN}",
            "is none or short": "(steps|patches) (too|very|rather|) (close|close together|tight|near each other|crowded|on top "
            "of each other), (narrow|tight|short|small|thin) (white|) (gap|break|cut|gaps|breaks) between (them|the patches|the "
            "steps|)",
        },
    ),
    Spoken(
        "white_gap_place",
        "white gap, largest white gap, longest white gap, biggest white gap, white stretch, long white stretch, large "
        "white gap, long white gap, big white hole, big white gap",
        levels={
            "front": "in front, at the front, at the shoulder, behind the shoulder, behind the head, on the shoulder, "
            "at the neck",
            "middle": "in the middle, in the middle of the back, at the dorsal, under the dorsal, below the dorsal, on "
            "the back, where the middle should be",
            "rear": "at the rear, behind the dorsal, at the back end",
        },
    ),
    Spoken(
        "small_patches",
        "small patches, little patches",
        levels={"none": "no, without", "few": "few, a few, some, one or two", "many": "many, lots of, too many, all"},
        alone={
            "is few": "one small patch, (last|second|first|third|tail|rear|back|end|fourth) (patch|step|1|red|piece) "
            "(is|) (very|rather|a bit|too|only|on the|quite|so|) (small|tiny|little|undersized|(a|) (crumb|dab|dot|"
            "smudge|scrap|speck)|small side), small (last|second|first|third|rear|tail) (patch|step), the third very "
            "small, (1|one) patch (is|) (very|) small, (a|) (small|little|tiny) (patch|step|1) at the (end|tail|rear|"
            "back), (1|one) (is|) (small|tiny) and (1|one) (is|) big",
        },
    ),
    Spoken("smallest_patch", "smallest patch, smallest red patch, smallest step"),
    Spoken(
        "hi_front_share",
        "red in front, share in front, red in the front half, in front",
        alone={
            "above 70 %": f"{_side(_MOST, _FRONT)}, (front|bow|top) (heavy|loaded) (pattern|red|), heavy front, "
            "(pattern|red) (is|) (front heavy|heavy front|front loaded), front end (is|) (heavy|too heavy|overloaded|"
            "crowded|overdone), all up (at|in|on) the front, top heavy pattern,  weight (is|) (all|mostly|) (in front|"
            "up front|at the front), more red in front than behind, more in front than behind, (head|front) end (too|) "
            "heavy",
            "above 92 %": f"{_side(_ALL, _FRONT)}, only the front is red, all (of it|of the red|) (in front of|before) "
            "the (dorsal|back fin|dorsal fin)",
            "below 30 %": f"{_side(_MOST, _REAR)}, (pattern|red|) (is|) (tail|rear|back) (heavy|loaded), heavy rear, "
            "back end (is|) heavy, weight (is|) (all|mostly|) (behind|at the rear|at the back end), more red behind "
            "than in front, more behind than in front",
            "below 8 %": f"{_side(_ALL, _REAR)}, only the rear is red",
        },
    ),
    Spoken(
        "hi_front_share",
        after=_OF_PATTERN,
        alone={
            "above 70 %": f"{_MOST} {_FRONT}, (weight|heaviest) {_FRONT}",
            "above 92 %": f"{_ALL} {_FRONT}, all front",
            "below 30 %": f"{_MOST} {_REAR}, weight {_REAR}",
            "below 8 %": f"{_ALL} {_REAR}, all rear",
        },
    ),
    SpokenTogether(
        "(all|) (busy|heavy|red|loaded|crowded|everything|it is all|all) (in front|up front|at the front) (and|but|"
        "with) (nothing|empty|bare|white|all white) (behind|at the back|at the rear|at the back end), front half full "
        "and nothing behind",
        "hi_front_share above 70 % and bongiri is yes",
    ),
    Spoken(
        "hi_left_share",
        "red on the left side, share on the left, red left of the spine",
        alone={
            **_sides("left", "above 60 %", "above 90 %"),
            **_sides("right", "below 40 %", "below 10 %"),
            **{
                f"{reading} %": f"{side} side (is|) (all|completely|drowned in|solid|full of) red (and|but|with) (the|) "
                f"{other} (side|) (has|with|is|) (nothing|got nothing|bare|white|empty|none), nothing on the {other} "
                f"side, {side} side (carries|has|gets) (all|nearly all) (the red|it|of it|the pattern), the {side} has "
                f"it all, {other} side (is|) (bare|empty|white|blank|all white|has nothing|has no (red|pattern)|without "
                f"(red|pattern)), (no|nothing) (red|pattern|) on the {other} (side|flank) at all"
                for reading, side, other in (("above 85", "left", "right"), ("below 15", "right", "left"))
            },
            "is 40 % to 60 %": "left and right balanced, even left and right red, (red|pattern|it) (is|) (nice|nicely|"
            "nice and|well|) (even|balanced|equal|the same|spread) (left (to|and) right|on both sides|both sides|right "
            "and left|each side|left and right), (equal|even|same|alike) both sides, balanced (left (and|to) right|both "
            "sides), as much (on the|) left as (on the|) right, both sides (even|match|answer each other|balance each "
            "other|balance|match each other|answer)",
        },
    ),
    Spoken(
        "hi_left_share",
        after=_OF_PATTERN,
        alone={
            "above 60 %": f"(both|all|) {_MOST} (on|to) the left (side|), mostly left, leans (to the|) left",
            "below 40 %": f"(both|all|) {_MOST} (on|to) the right (side|), mostly right, leans (to the|) right",
            "above 90 %": f"{_ALL} (on|to) the left (side|)",
            "below 10 %": f"{_ALL} (on|to) the right (side|)",
        },
    ),
    Spoken(
        "one_sided",
        "all on (the|) 1 (flank|side), one-sided, one sided, pattern one sided, one sided pattern, "
        "(red|pattern|it|weight) (is|) (all|only|) (down|"
        "on) (1|one) side (only|), all on 1 side, all down 1 side, 1 side (empty|white|bare|blank|has nothing|without "
        "red|without pattern), nothing on 1 side, all the (red|weight|pattern) (is|) (on|down) 1 side, no red on 1 "
        "side, 片側",
    ),
    Spoken(
        "one_sided",
        after=_OF_PATTERN,
        alone={"is yes": "only on 1 side, 1 side only, down 1 side only"},
    ),
    Spoken(
        "balance",
        "balance, pattern balance, balance of the pattern, バランス",
        levels={
            "poor": "poor, bad, off, no, weak, lacking, wrong, missing, not there, 悪い",
            "fair": "fair, average, ok, acceptable, so so",
            "good": "good, nice, fine, well, perfect, excellent, great, right, very good, lovely, spot on, 良い",
        },
        alone={
            "is good": "balanced, (well|nicely|beautifully|perfectly|nice and|quite) (balanced|spread|spaced|"
            "distributed|laid out|arranged|composed|placed) (pattern|all over|along the back|), balanced pattern, "
            "balanced front and (back|rear), (pattern|red|patches|steps|it) (is|are|) (all|) (well|nicely|beautifully|"
            "perfectly|evenly|nice and|quite|) (balanced|spread|spaced|distributed|laid out|arranged|placed|well "
            "placed), evenly (spread|distributed|spaced), (good|well|nicely|lovely) balanced (pattern|red), pattern "
            "balanced front to back, even spread, (good|nice|lovely|even) spread (of red|of patches|to (it|the pattern)|"
            "), (good|nice|lovely|even) spacing, (pattern|red|patches) (sits|sit|lies|lie|fits|hangs|falls) (really|) "
            "(nice|nicely|well|right|good|pretty|beautifully|where it should|where (you|i) (want|like) it) (on (her|him|"
            "the fish|the back|the body)|), pattern (hangs together|works|is right|in the right place), everything "
            "(sits|is|) (in the right place|where it should be|where you want it), (pattern|red) (flows|runs) (well|"
            "nicely|beautifully), good flow (to the pattern|to it|), (nice|nicely|well) (flowing|proportioned) pattern, "
            "(good|nice|lovely|perfect|great) balance (to (it|the pattern)|front (to|and) back|in the pattern|all round|"
            "), (well placed|well spaced|nicely placed|well laid out) (patches|steps), patches (where (you|i) (want|"
            "like) them|in the right places)",
            "at most fair": "not (very|that|so|too|really|particularly|quite|all that|) (well|nicely|evenly|) (balanced|"
            "spread|spaced|placed|laid out), balance (is|) not (there|right|great|the best|perfect|what it could be|"
            "quite there|quite right|good), balance could be better, (pattern|red) could be (better balanced|better "
            "spread), pattern (is|) not (very|that|so|quite|really|) (well|) balanced",
            "is poor": "unbalanced, badly spaced, pattern (is|) all wrong, out of balance (at|in|on) the (rear|back end|"
            "front|tail), (badly|poorly) placed (patches|steps), out of balance, off balance, (badly|poorly) (balanced|"
            "spread|placed|distributed|laid out), no balance (to it|at all|in it|), lopsided, lopsided pattern, pattern "
            "(is|) (lopsided|unbalanced|out of balance|off), does not balance, (tips|falls) over (just looking at it|to "
            "(one|1) side|sideways), out of kilter, (pattern|it|red|) does not (work|hang together|sit right|sit well|"
            "balance), (red|pattern|) (all|falls|all falls) (to|over to) 1 side, pattern (is|) (off|wrong|in the wrong "
            "place), heavy on 1 side",
        },
    ),
    Spoken(
        "balance",
        after=(
            "steps",
            "step_count",
            "balance",
            "interest",
            "pattern_type",
            "hi_front_share",
            "hi_left_share",
            "one_sided",
        ),
        alone={"is good": "sits (nice|nicely|well|right|lovely) (on (her|him|it|the fish|the back)|)"},
    ),
    Spoken(
        "hi_below_line",
        f"red below the {_LINE}, red under the {_LINE}, below the lateral line, under the lateral line, hi below the line",
        alone={
            "is 0 %": f"{_IT} (all|) (stays|keeps|lies|is|sits|all|ends|stops) (well|) (above|over|at) the {_LINE}, "
            f"{_IT} (above|over) the {_LINE}, (nothing|no red|no hi) (below|under|past|beneath) the {_LINE} (anywhere|"
            f"), above the lateral line, no red on the (sides|flanks), "
            f"{_IT} (does|) (not|never) {_GOES.replace('|goes|', '|')} "
            f"(down|) {_BELOW} the {_LINE} (anywhere|on either side|), {_IT} (does|) (not|never) (go|run|come|spill|"
            f"reach|drop|hang|fall) (down|) {_BELOW} the {_LINE} (anywhere|on either side|)",
            "at most 10 %": f"{_IT} ((stays|keeps|all|is all|sits all|sit all) (right|) (on|high on|up on)|(sits|sit|"
            f"lies|is) (right|all|) (high on|up on|high up on)) (the back|top), {_IT} (sits|sit) on top, {_IT} (high|"
            "high up|up) on the back, all (the|) (patches|red) (sit|sits|is|lie|are|) (up|high|) on (top|the back) "
            "(where (you|i) (want|like) (them|it)|), red (does not|never) (come|go|run) down the sides, sides (are|) "
            "(clean|white|clear)",
            "above 5 %": f"({_RED}|) (goes|runs|spills|hangs) (well|a long way|far) down the (sides|flanks), {_RED} "
            f"(well|far|a long way|all|right|) down the (sides|flanks), {_RED} (goes|runs|spills|comes|hangs|drops) (a "
            f"long way|far|well|right|all|) down (over|) (the|both) (sides|flanks), {_RED} (far|well|a long way|right) "
            f"(below|under|past|beneath|beyond) the {_LINE} {_SIDED}",
            "above 0 %": f"({_IT}|{_IT} (on the (left|right))) {_GOES} {_SCALES} (down|) (to|) {_SCALES} {_BELOW} the "
            f"{_LINE} {_SIDED}, {_IT} below the line, {_IT} (comes|goes|reaches) to the (sides|flanks) {_SIDED}",
        },
    ),
    Spoken(
        "hi_below_line",
        after=_OF_PATTERN,
        alone={
            "is 0 %": f"(stays|keeps) (well|) above the {_LINE}, (does|) (not|never) (go|run|come|spill|reach|drop|hang|"
            f"fall) (down|) {_BELOW} the {_LINE} (anywhere|on either side|)",
            "at most 10 %": "(stays|sits) (up|high) on (top|the back), (all|both|each) (high|up|) on the back, all on top",
            "above 0 %": f"{_GOES} {_SCALES} (down|) {_BELOW} the {_LINE} {_SIDED}, (comes|goes|reaches|spills|runs|"
            "hangs) down (over|onto|to|) the (sides|flanks)",
        },
    ),
    Spoken(
        "makibara",
        f"makibara, maki, maki hi, {_RED} (around|round|on|under) the {_BELLY}, {_BELLY} red, 巻腹",
        alone={
            "is yes": f"{_RED} ({_GOES}|) {_HOW} (down|round|around|under|) (to|over|on|onto|under|round|around) (to|) "
            f"the {_BELLY} {_SIDED}, {_RED} (wraps|wrapped|reaches) (right|well|deep|) (down|under|round|around|) (to|) "
            f"(the|) ({_BELLY}|) {_SIDED}, wrapped, (wraps|wrap) (right|well|deep|a long way|) (down|under|round|"
            f"around) {_SIDED}, {_BELLY} wrapped, (good|nice|strong|deep|heavy|clear|proper|full|bit of|big|huge|great|"
            "massive|small|slight|little|nice deep) (makibara|maki|wrap), "
            "(makibara|maki) (good|nice|strong|deep|heavy|"
            "down both sides|on both sides|both sides|on the left|on the right|down 1 side), (wraps|wraps round|wraps "
            f"under) the {_BELLY}, {_RED} goes under, {_RED} (comes|goes|runs) (right|all the way|) (round|under) "
            f"(underneath|) {_SIDED}, (wraps|it wraps) (well|nicely|deep|far), {_RED} (hugs|covers|wraps|circles) the "
            f"{_BELLY}, hi wraps, {_RED} goes (right|all the way) (round|under), red {_BELLY}",
            "is no": f"(clean|white|clear|bare|pure white) {_BELLY}, {_BELLY} (is|) (all|) (clean|white|clear|bare|free "
            f"of red|without red), no {_RED} (on|under|down on|near|round) the {_BELLY} {_AT_ALL}, no (maki|makibara|"
            f"wrap) {_AT_ALL}, does not (wrap|reach the belly|go under|go round), {_RED} does not (reach|touch|get to|"
            f"wrap round|come down to) the {_BELLY}, nothing on the belly",
        },
    ),
    Spoken(
        "makibara",
        after=_OF_PATTERN,
        alone={
            "is yes": f"wraps down, wraps under, ({_GOES}) {_HOW} (down|round|around|under) (to|) the {_BELLY} (even|"
            f"{_SIDED}), down to the {_BELLY} {_SIDED}"
        },
    ),
    Spoken(
        "shoulder_cut",
        "kata nuki, kata-nuki, katanuki, shoulder cut, "
        "(nice|good|deep|clean|small|little|wee|slight|1|) (white|) (cut|notch|bite|nick) (at|in|on|"
        "behind) the (shoulder|head), (nice|good|clean) (kata nuki|katanuki), white at the shoulder, white gap at the "
        "shoulder, notch (at|in|on) the shoulder, cut at the shoulder, white on the shoulder, cut behind the head, "
        "white notch behind the head, (shoulder white|white at the shoulder) opens (nicely|well|), "
        "(white|) (gap|notch|cut) at the shoulder (only|) (on|) (the|) (left|right|1) (side|) (only|), open shoulder, "
        "shoulder open, shoulder notch, step at the shoulder, 肩抜き",
        alone={
            "is no": "no (notch|cut|bite) (at|in|on) the shoulder, shoulder (closed|solid red|all red), no white at the "
            "shoulder"
        },
    ),
    Spoken(
        "windows",
        "window, mado, scale window, white window, white hole, hole, pinhole, white pinhole, (window|mado|white window|"
        "white hole|hole|pinhole) in (the|that|this|) (red|hi|plate|patch|step), (white|bald|bare) (spot|island|fleck|"
        "scale|dot|eye|patch|speck|hole|gap|bit) (in|inside|through|all through) (the (first|second|third|last|shoulder|"
        "rear|front|) (patch|step|red|hi|plate|saddle)|it|that red), (gap|bald spot) in the (red|hi|plate), 窓",
        alone={
            "is 0": "no windows, no window, no holes, no holes in the red, red without holes, closed red, red closed, "
            "solid red, (red|plate|hi|patches) without (a|any|) (windows|window|holes|hole), no (windows|holes) in it, "
            "(plate|red|patches) (closed|all closed|solid and closed), not a (window|hole|mado) (in it|anywhere|in the "
            "red|to be seen|), no (windows|holes|mado) (anywhere|at all|in the plate|in the red|in it), 窓なし",
            "at least 2": "full of holes, several windows, (red|hi|plate|patch|it|) (full of|riddled with|nothing but) "
            "(holes|windows), holes all over the red, like swiss cheese, like a swiss cheese, like a sieve, (little|"
            "small|tiny|) white (flecks|specks|scales|dots|spots) (all through|all over) (the red|it|the (second|last|"
            "shoulder|first|) patch)",
        },
        of_parts="patches",
    ),
    Spoken(
        "head_windows",
        "mado in the head patch, mado in the head, mado on the head, window in the head, window on the head, hole in "
        "the head patch, window in the head patch, head window, hole in the head red, hole on the head, white hole in "
        "the head patch, white window in the head patch, white window on the head, white spot in the head patch",
    ),
    Spoken(
        "tobihi",
        f"{_STRAY}, splash, red dot, little red dot, small red dot, small red spot, little red spot, red splash, red "
        "freckle, red fleck, freckle of red, red speck, red scale, 飛び緋",
        alone={
            "is 0": "no tobihi, no splashes, no stray spots, no stray red, no stray red spots, no red dots, no strays, "
            "no stray scales, (not a|not a single|without|free of|clear of|no) (tobihi|stray|stray scale|loose red "
            "scale|stray red|stray red scale|loose red|loose scale of red|splash of red) (anywhere|at all|in sight|to "
            "be seen|)",
            "is 1": "(a|one|single|lone|) (red scale|scale of red) (all alone|on its own|by itself|all by itself|out on "
            "its own|away from the rest|out in the white|that does not belong), a crumb of red, one crumb of red",
        },
        of_parts="all",
    ),
    Spoken(
        "tobihi_places",
        f"{_STRAY}, splash, red dot, little red dot, small red dot, small red spot, little red spot, red splash, red "
        "freckle, red fleck, freckle of red, red speck, red scale",
        levels={
            "left_flank": "left side of the body, left side",
            "right_flank": "right side of the body, right side",
            "shoulder": "left shoulder, right shoulder",
        },
        of_parts="all",
    ),
)
"""What is said of the pattern of red as a whole."""
