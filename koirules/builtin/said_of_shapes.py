"""How sorters speak of frames and sizes in a few words. Common practice, no source; from memory."""

from __future__ import annotations

from koirules.builtin.said_of_body import LIKE_A_BULL
from koirules.builtin.said_of_frame import BODY
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_UNDONE = (
    "(lack|short on|light on|wants|needs|without|with no|too little|not enough|no) "
    "(power|width|breadth|depth|volume|bulk|strength|"
    "substance|weight|thickness|girth), (shame|pity) about, the (only|one|main) (trouble|problem|snag|letdown|let "
    "down|weakness) is, "
    "(is|) what (lets it down|spoils it|lets her down|lets him down|spoils her|spoils him), spoils it, spoils her, spoils him, "
    "spoils the (fish|picture|whole thing)"
)
"""What says that a part of the frame is not as it should be."""
_YOU_COULD = (
    "you could (rest|stand|put|balance|park|land|set|serve|ride|lean|hang) (a|your|the) (pint|cup of tea|cup|tray|teapot|tea "
    "tray|plate|"
    "glass|beer|dinner|bus|car|plane|coat|hat|bucket|brick) on"
)
_THICK_AS = (
    "(rope|wrist|thumb|table leg|chair leg|fence post|post|bedpost|oak|brick|broom|broom handle|arm|cable|fist|tree|log|"
    "finger|hawser)"
)

SAID_OF_SHAPES: tuple[Saying, ...] = (
    Spoken(
        "outline",
        alone={
            "at least good": "(i would|i|would|) (only|just|) (buy|take|keep|want|pay for|have) (it|her|him|this 1) "
            "(just|only|alone|purely|) (for|because of) "
            "the "
            f"{BODY}, (body|shape|frame|it|she|he) tapers (ever so|) (smooth|smoothly|well|nicely|evenly|beautifully) "
            f"(to|towards|into|) (the|) (tail|), the {BODY} (does it|makes it|wins me over|makes up for it|sells me)",
        },
    ),
    Spoken(
        "build",
        alone={
            "is torpedo or heavy or thick_front": "(wide|broad|thick) (across|) (when you look down|looking down|seen from above|"
            "from above), (nice|good|great|broad|wide) (breadth|girth|width) (on|to) (it|her|him|this 1), "
            "(breadth|width) (is|) (good|great|there|excellent)",
            "is slim": "(minnow|sprat|dace|bleak|whitebait|sardine) (look|like|shaped|about it|of a fish), (looks|built|bit) "
            "like a "
            "(minnow|sprat|dace|bleak|sardine)",
            "is trim": "trim (all round|all over|and fit|build|built|figure)",
        },
    ),
    Spoken(
        "tail_stem",
        alone={
            "is strong": "(good|strong|thick|nice|powerful|good strong|fine) neck (of|to|on|at|before) (a|the) tail, "
            "(good|strong|thick|"
            "nice|powerful|proper|real) (wrist|handle) (of|to|on|at|before) (a|the) tail",
            "is thin": "(thin|weak|poor|pencil|skinny) (neck|wrist) (of|to|on|at|before) (a|the) tail",
        },
    ),
    Spoken(
        "body_symmetry",
        alone={
            "at most fair": "(belly|side|flank|body) (is|) (a bit|a little|rather|slightly|) (fat|full|big|thick|round|swollen|"
            "bulging|puffed|lumpy|heavy|hollow|sunken) on (1|the left|the right) (side|)"
        },
    ),
    Spoken(
        "size_by_eye",
        alone={
            "at most small": "size (is|) the only (let down|letdown|drawback|snag|fault|problem|complaint|pity), size wise "
            "(forget it|"
            "no|nothing|poor|behind|weak|disappointing|a let down), (small|little|tiny) (fish|body|frame) for so much "
            "(pattern|red|colour), "
            "(held back|let down) by (its|her|his|the) size, not (the|) size (it|she|he) should be",
        },
    ),
    Spoken(
        "sex",
        alone={
            "is male": "(proper|real|right|regular|) (little|young|) (gentleman|gent|bloke|laddie), (osu|male) (all over|to me)",
            "is female": "(proper|real|right|regular|) (little|young|) (madam|ladyship|maiden), (mesu|female) (all over|to me)",
        },
    ),
    Spoken("scalation", alone={"is kagami or kawa": "doitsu (throwback|type|scaling|scaled|blood in it|blood)"}),
    SpokenTogether(
        "kokenami (is|) (good|fine|straight|even|regular|neat|tidy|straight as tatami|in order), (scale rows|rows of scales|"
        "scale lines) (are|in|) (neat|straight|even|regular|tidy|nice|good|lovely|perfect) (rows|lines|order|), fukurin "
        "(starting|"
        "there|already|coming|beginning|good|strong|nice|clear|showing|), (some|good|nice|a bit of|hint of|touch of) fukurin, "
        "no (fault|faults|flaw|flaws) in it, hardly a scale out of (place|line)",
        "nothing",
    ),
    Spoken(
        "outline",
        levels={"at most fair": _UNDONE},
    ),
    Spoken(
        "head_shape",
        levels={"at most fair": _UNDONE, "is fair or good": "blunt, bluntish, blunt enough, bullet, stubby but broad"},
    ),
    Spoken(
        "shoulders",
        levels={
            "at most fair": _UNDONE,
            "strong": f"{_YOU_COULD}, rounded and full, like a (shelf|mantelpiece|ledge|sideboard|sofa)",
        },
    ),
    Spoken(
        "tail_stem",
        "(backside|rear end|back end|rear|rump|stern|behind|tail end|hind end|bum)",
        levels={
            "at most fair": _UNDONE,
            "strong": f"{_THICK_AS} (thick|fat|sized), like a {LIKE_A_BULL}, (thick|fat|stout|solid) like a {_THICK_AS}",
            "thin": "(pencil|matchstick|straw|finger bone|twig|needle) (thin|thick|sized)",
        },
        apart=True,
    ),
    Spoken(
        "tail_stem",
        levels={
            "at most fair": _UNDONE,
            "strong": f"{_THICK_AS} (thick|fat|sized), (thick|fat|stout|solid) like a {_THICK_AS}",
            "thin": "(pencil|matchstick|straw|finger bone|twig|needle) (thin|thick|sized)",
        },
    ),
    Spoken(
        "build",
        levels={
            "is slim or trim or torpedo": "(wants|needs|could do with|still) (filling|filling out|filling up|to fill out)"
        },
        alone={
            "is heavy": "(been|has been|is been|always|) at the (biscuits|cakes|pies|pellets|buns|trough|cake|biscuit tin), "
            "(likes|loves|"
            "enjoys|knows) (her|his|its) (grub|pellets|dinners|pies|cake|tea), (never|not) missed a (meal|feed|dinner)",
            "is torpedo or heavy or thick_front": f"back {_YOU_COULD}",
            "is slim or trim or torpedo": "(chest|flanks|ribs) (is|) not (yet|) (filled|filled out) (yet|)",
            "is thick_front": "(body|frame|it|she|he|fish|) (thick|fat|broad|big|wide) (at|in|up) (the|) front "
            "(and|but|then) "
            "(thin|slim|weak|narrow|"
            "pinched) (at the|in the|to the|) (rear|back|tail|tail end|behind|end|stem)",
        },
    ),
    Spoken(
        "head_shape",
        alone={
            "at most fair": "(too|rather too|a bit too|a shade too|a little too|) "
            "(dainty|delicate|fine|small|narrow|slim|short|long|big|light|"
            "heavy) in the head for (that|the|its|her|his|this) (body|frame|shoulders), head (is|) (too|rather too|a bit too|a "
            "shade too|a little too|) "
            "(dainty|delicate|fine|narrow|slim|light|heavy) for (that|the|its|her|his|this|such a) (body|frame|fish|shoulders)",
        },
    ),
    Spoken(
        "back_line",
        alone={
            "at most uneven": "back (has|with|shows|got) (a|) (small|little|slight|big|bit of a|) "
            "(hump|bump|lump|dip|hollow|step) (over|at|by|"
            "near|behind|before|in front of|under) the (dorsal|dorsal fin|shoulder|head|neck|gills|tail)",
        },
    ),
    Spoken(
        "tail_stem",
        "(tail|) (part|bit|piece|section|stretch) (before|in front of|just before|ahead of) the (tail fin|fin|tail), tail part",
    ),
    Spoken(
        "tail_stem",
        "back end, tail end, rear end, peduncle, tail stem, ozutsu, wrist",
        levels={
            "strong": f"as (thick|solid|strong|fat|stout) as (a|my|your|) {_THICK_AS}, (solid|stout) as a {_THICK_AS}"
        },
        apart=True,
    ),
    Spoken(
        "outline",
        alone={
            "at least good": "(nice|good|lovely|beautiful|elegant|great|smooth|clean|graceful) "
            "(sweep|flow|curve|line|taper|lines|curves) (to|in|of|on) "
            f"(that|this|the|its|her|his) {BODY} (from (top|head|nose|end) to (tail|end)|all the way|)"
        },
    ),
    Spoken(
        "build",
        alone={
            "is thick_front": "(carries|has|wears|got) (it|everything|its weight|her weight|his weight|all its weight|all her "
            "weight|all his "
            "weight|its bulk|all the weight|the weight) (all|) (in|at|on|up) (the|) (front|shoulders|shoulder)"
        },
    ),
    Spoken(
        "body_symmetry",
        alone={
            "is poor": "(left|right|left hand|right hand) side (is|) (fatter|thicker|fuller|bigger|wider|rounder) (than the "
            "(other|left|right|other side)|)"
        },
    ),
    Spoken(
        "back_line",
        alone={
            "at most uneven": "(dent|ridge|knob) (on|in|along) the back, (dent|ridge|knob|notch) (just|) (behind|before|in "
            "front of) the (dorsal|shoulder|neck|head|dorsal fin|nape) (on top|)"
        },
    ),
    SpokenTogether(
        "(nervous|nervy|shy|flighty|skittish|timid|bold|cheeky|calm|placid|tame|friendly|greedy|curious|cocky|cheerful|"
        "nosy|feisty) (little|old|) (fish|"
        "thing|1|girl|boy|lad|lady|character|creature|fellow|chap|beggar|devil|soul), (a|quite a|bit of a|real|) "
        "(character|personality|charmer of a fish|rascal|beggar|scamp), (fins|pecs|pectorals|te|paddles) (carried|held) "
        "(open|wide|out|well|wide open), "
        "(carried|held) (open|wide open|well out)",
        "nothing",
    ),
    Spoken(
        "tail_stem",
        alone={
            "is thin": "no (real|) (koshi|ozutsu|peduncle|tail tube|stem) (on it|on her|on him|at all|), (body|it|she|he|"
            "fish|) (gets|goes|runs|is|"
            "tapers|narrows) (too|very|a bit|rather|) (thin|narrow|weak|skinny) (just|) behind the (dorsal|dorsal fin|back fin|"
            "top fin|fin on top)"
        },
    ),
    Spoken(
        "head_shape",
        "hana",
        levels={
            "good": "(broad|wide|good|full) between the eyes",
            "at most fair": "(flat|narrow|hollow|dished|sunken|pinched) between the eyes, chinless, weak chinned",
        },
    ),
    Spoken(
        "build",
        alone={
            "is slim or trim or torpedo": "(not an ounce|not a bit|not a scrap|not a gram|not any|no) (of|) (spare|) (fat|"
            "flab|flesh to spare) (on it|on her|on "
            "him|anywhere|)"
        },
    ),
    Spoken(
        "outline",
        alone={
            "at least good": "(frame|body|bones|bone|shape) (to|you can|you could|that you could) (hang a (coat|pattern|"
            "hat) on|build on|work with|die "
            "for|be proud of|write home about)"
        },
    ),
    SpokenTogether(
        "fukurin (weak|poor|none|not yet|fair|thin|faint|all over|on the (back|shoulder|shoulders|head|flanks)), no "
        "fukurin (yet|), (weak|poor|clear|strong) "
        "fukurin",
        "nothing",
    ),
    SpokenTogether(
        "fins (ok|okay|in order|undamaged|all ok|all good|complete|all complete|all there|all whole|clean and "
        "whole), all fins (ok|there|complete), nothing wrong with the fins",
        "fin_damage is none and fin_faults is none",
    ),
    SpokenTogether(
        "no faults, no fault, no faults at all, nothing wrong at all, clean fish no faults, without fault, too "
        "small, too bad really, one for the lot, well, as before, still the same, good fish, clean fish, nothing wrong with it, "
        "nothing wrong, otherwise fine, otherwise good, otherwise clean, fine otherwise, clean otherwise, good otherwise, "
        "nothing else, that is all, no problem, a pity, pity, shame, a shame, what a shame, sorry, lovely, lovely fish, "
        "nice fish, pretty, cute, charming, i like it, i like that, i like this, i like this one, do not like it, do not "
        "like that, i do not like that, i do not like it, does not bother me, do not mind, i do not mind, i do not mind "
        "that, never mind, no matter, fine, it is fine, is fine, the children will love it, comes from good parents, good "
        "parents, let me look again later, let me see, let us see, well well, interesting, hovering gently, i would say, "
        "hard to say, what else, healed, all healed, no wound, rest is fine, the rest is fine, the rest good, rest good, "
        "the rest ok, poor thing, needs watching, those bother me, that bothers me, it bothers me, does not matter, that "
        "does not matter, it does not matter, matters little, that is how i like it, how i like it, just how i like it, not "
        "too bad, not so bad, well fed, nicely fed, sweet, else clean, else fine, else good, rest clean, the rest clean, "
        "rest is clean, people like that, people pay for that, there you go, good to see, too bad, oh dear, good one, a "
        "good one, nice one, a nice one, ok, fine fish, as expected, as usual, (good|sorry|old|oh) (girl|boy|lad), sorry "
        "(sweetheart|old boy|old girl), oh boy, (|that|it) (|was) (net|heron|bag|trip|move|journey|transport|tub) (|must "
        "have|has) (did|done|does) (that|it|this|those), (net|bag|heron|transport|travel|handling) (mark|damage), (|that is|"
        "just) from the (net|bag|trip|move|journey|transport|bags|van), (probably|must have) knocked it (|in the bag|in the "
        "net|on the way|in the tub), closed up, (|all|well|nicely) closed over,  you only see it from (the front|the side|"
        "above)",
        "nothing",
    ),
)
"""What is said of frames and sizes in a few words."""
