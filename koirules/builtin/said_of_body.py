"""How sorters speak of the frame of a fish, of its measures, health and swimming. Common practice, no source; from memory."""

from __future__ import annotations

from koirules.builtin.said_in_sentences import SAID_IN_SENTENCES
from koirules.builtin.said_of_fins import SAID_OF_FINS
from koirules.builtin.said_of_frame import BODY, ON_IT, SAID_OF_FRAME, STEM
from koirules.builtin.said_of_health import SAID_OF_HEALTH
from koirules.builtin.said_of_parts import SAID_OF_PARTS
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.praise import NOT_BAD

_LIKE_A_POST = (
    "(pencil|stick|matchstick|match|rake|needle|knitting needle|straw|wire|string|thread|reed|whip|twig|lath)"
)
LIKE_A_BULL = "(bus|ox|bull|barn door|tank|truck|house|wrestler|boxer|tree trunk|table|bulldog|carthorse)"
_GOOD = "good, fine, nice, right, sound, well made, lovely, よい, 良い"
_FAIR = "fair, average, moderate, middling, passable, acceptable, ordinary, so so, ok, okay, usual, normal, 普通"
_DECENT = f"{NOT_BAD}, all right, alright, reasonable, respectable, quite good, fairly good, pretty good, not bad"
_SPLENDID = "excellent, perfect, superb, very good, great, faultless, cracking, to die for, like a dream, 抜群, 極上"
_STOUT = "(stocky|bulky|chunky|plump|chubby|fat|heavy|stout|stumpy|stubby|tubby|dumpy|podgy)"
_SHORT = (
    "(a bit|rather|too|on the|very|a touch|little|bit|quite|) short (side|ish|), shortish, not long, not long enough, "
    "wants length, lacks length, lacking length, short on length, foreshortened, squashed up, squat, (ever so|terribly) short"
)
"""What is said of a body of little length, and not of its girth."""
_LEAN = "(slim|slender|skinny|thin|lean)"
_SIDE = "(left|right|one side|1 side)"
_OF_THE_FRAME = (
    *("outline", "build", "size_by_eye", "shoulders", "tail_stem", "back_line", "belly_shape", "body_symmetry"),
    *("spine", "head_shape", "length", "weight", "sex"),
)
_SHOULDER = "(shoulder|kata|shoulder line|shouldered)"


def _lacking(noun: str) -> str:
    """What says that there is little of something: `no shoulders to speak of`, `could do with more shoulder`."""
    little = "(no|not much|hardly any|hardly a|not a lot of|little|barely any|too little|not enough|no real)"
    wanted = (
        "((i would|i should|would) (like|want) more|lacks|lacking|lacking in|short on|light on|"
        "(could do with|could use|needs|wants) (|more|a bit more))"
    )
    return f"{little} {noun} {ON_IT}, {wanted} {noun}"


def _falling_short(noun: str, as_wanted: str, more: str) -> str:
    """What says that something is not as it should be, and not how far: `the shoulders could be broader`."""
    wish = "(i would like|i like|it should be|it could be|it might be|they should be|they could be|i want|hoped)"
    return (
        f"{noun} (could|should|might|ought to) be (|a bit|a little|a touch|much|lot) {more}, {noun} not as "
        f"{as_wanted} as {wish}, not as {as_wanted} (in|at|across) {noun} as {wish}, could be (|a bit|a "
        f"little|much|lot) {more} (in|at|across) {noun}, not the {as_wanted} {noun}"
    )


SAID_OF_BODY: tuple[Saying, ...] = (
    Spoken(
        "length",
        "l, tl, long, in length, tall of, total length, overall length, length overall, size, measures, on the "
        "board, from nose to the end of the tail, nose to the end of the tail, 全長, 体長",
    ),
    Spoken(
        "length",
        alone={
            "is 15 cm to 21 cm": "(about|nearly|almost|roughly|just about|) (hand length|hand long|a hand long|(the length|"
            "length) of (my|a|your) "
            "hand|(as|) long as (my|a|your) hand|a hand in length|the size of my hand|hand sized|one hand long), (about|"
            "roughly|) (pencil "
            "length|a pencil long|as long as a pencil|the length of a pencil)",
            "is 13 cm to 16.5 cm": "(somewhere |)in the (mid|middle) teens, (the|) (mid|middle) teens",
            "is 16.5 cm to 19.9 cm": "(somewhere |)in the (high|upper|late) teens, (the|) (high|upper|late) teens",
            "is 20 cm to 23 cm": "(somewhere |)in the (low|early) twenties, (the|) (low|early) twenties",
            "is 6 cm to 10 cm": "(about|roughly|) (finger length|(as|) long as (my|a) finger|finger long|a finger long fish)",
            "is 16 cm to 30 cm": "(a bit|a little|slightly|just|) (longer|bigger) than (my|a) hand",
            "is 8 cm to 18 cm": "(a bit|a little|slightly|just|not quite|) (shorter|smaller) than (my|a) hand",
        },
    ),
    Spoken(
        "size_by_eye",
        alone={
            "is runt or small": "runty, runtish, a bit runty, rather runty, stunted "
            "looking, dwarfish, a poor grower, small fry, a titch, titch, half the size of (the|its) (others|rest|"
            "sisters)",
            "is small": "one of the (small|smaller|little) ones, among the (small|smaller) ones, "
            "in the small half, "
            "small end of the lot, below average (in|) size, below average length",
            "is usual": "medium size, medium sized, mid size, mid sized, middle sized, middling size, middling in size, "
            "size middling, "
            "size average, size about average, about average (in|for) size, size as expected, "
            ""
            "size ok for (the|its) age,  about the right size, right size for (the|its) age",
            "is big": "one of the (big|bigger|large|larger|biggest|largest) ones, among the (big|bigger|biggest|largest) "
            "ones, in the big half, "
            "a proper lump, (some|quite a) size on (it|her|him), a lot of fish (there|here|"
            "for the age), "
            "what a size, size to burn, no shortage of size, not short of size, (outgrown|outgrowing) (the others|them all|"
            "its sisters|the rest), "
            "well grown, well grown for (the|its|her) age, twice the size of (the|its) (others|rest|sisters)",
        },
    ),
    Spoken(
        "sex",
        alone={
            "is female": "female by (the|her|its) (belly|width|shape|size|build|look|body|girth|tummy) (of (her|it)|), "
            "female (going|judging) by "
            "(the|her|its) (belly|width|shape|size|build|look|body|girth|tummy)",
            "is male": "male by (the|his|its) (fins|shape|size|build|look|body|head) (of (him|it)|), male (going|judging) "
            "by (the|his|its) "
            "(fins|shape|size|build|look|body|head)",
        },
    ),
    Spoken(
        "impression",
        alone={
            "is fair": "(medium|middling|average|ordinary|so so) (everything|all round|throughout|in everything|across the "
            "board|in every way), "
            "neither one thing nor the other, jack of all trades, fish like a thousand others, thirteen to the dozen, ten "
            "a penny, two a penny, "
            "seen a hundred like it, seen plenty like it, nothing wrong and nothing special, does not stand out either way",
            "at most fair": "not the (prettiest|nicest|finest|best) (fish|one|) (in here|of the lot|of them|here|today|), "
            "no oil painting, no beauty, not much to look at, "
            "not much of a fish, not a lot to like, little to like, hard to love, hard to like, plain jane",
            "at least good": "(all|everything) (is|) (there|in place), ticks (all the|"
            "every|most) (boxes|box), "
            "(the|) real (thing|deal), class act, a class act, (as|) good as they come, hard to fault, hard to find fault "
            "with (it|her|him|), "
            "cannot find fault with (it|her|him), does not put a foot wrong, (puts|put) no foot wrong, (a|) complete fish, "
            "the complete article, "
            "(a|) proper fish, (now|) (that is|there is|this is) a fish",
        },
    ),
    Spoken(
        "standard_length",
        "sl, length without the tail, without the tail, without the tail fin, to the last scale, to the tail root, "
        "body length without the tail, without tail, not counting the tail, to the root of the tail",
    ),
    Spoken("fork_length", "fl, to the fork, to the fork of the tail, length to the fork"),
    Spoken(
        "weight",
        "w, weighs, weighs in at, heavy, grams, in weight, on the scale, weighed, comes in at, scale says, scale "
        "reads, on the balance, wet weight, weighing, 体重",
    ),
    Spoken(
        "depth",
        "deep, high, height, body height, depth of body, in depth, at the deepest, at its deepest, at the deepest "
        "point, deepest point, in height, 体高",
    ),
    Spoken(
        "width",
        "w, wide, broad, breadth, body breadth, at the widest, at its widest, at the widest point, at the widest "
        "part, widest point, widest part, in width, 体幅",
    ),
    Spoken(
        "girth",
        "(round|around), girth, in girth, (round|around) the (middle|belly|body|waist|thickest part|thickest), with "
        "the tape, tape says, at the thickest",
    ),
    Spoken("head_length", "length of the head, head is, head long"),
    Spoken("pectoral_length", "length of the pectoral, (pectoral|pec|chest fin) (|fin) long, (pectoral|pec) is"),
    Spoken(
        "sex",
        "sex, 性別",
        levels={"female": "female, hen, lady, girl", "male": "male, cock, boy"},
        alone={
            "is female": "female, (nice|gentle|nice gentle|definite) (female|girl|lady) (|this one|fish), proper "
            "(female|girl|lady), hen fish, (she|it|this|that) is a (female|girl|hen|lady), (|proper) (female|hen) "
            "(|body) shape, (female|girl) (all day|by the shape|for sure|by the look of it|written all over it), "
            "(|definitely a|clearly|clearly a|obviously) female, (full of|carries|carrying|has) (eggs|roe), "
            "(eggs|roe) in her, egg bound, (shape|body) of a (female|hen), メス, 雌",
            "is male": "male, (definite|proper|young|nice) (male|lad) (|this one|fish), cock fish, "
            "(he|it|this|that) is a (male|boy|lad|buck), male (|body) shape, (male|boy) (all day|by the head|by the "
            "shape|for sure|by the look of it|written all over it), (|definitely a|clearly|clearly a|obviously) "
            "male, (gives|runs|running|giving|full of) milt, milting, milt, rough (cheeks|pectorals|pecs), "
            "(|breeding|spawning) tubercles (|on the cheeks|on the pectorals|on the gill covers), オス, 雄",
        },
        bare={"is female": "girl, lady, lass, girl this one, hen", "is male": "boy, lad, buck, cock, boy this one"},
    ),
    Spoken(
        "outline",
        "outline, body, body shape, shape, frame, figure, conformation, body line, body lines, shape of the body, "
        "lines, taper, bone, bones, bone structure, proportion, 体型, 体形",
        levels={
            "poor": "poor, bad, ugly, weak, off, wrong, clumsy, not right, all wrong, nothing like right, awful, "
            "terrible, horrible, no good, 悪い",
            "fair": f"{_FAIR}, nothing special",
            "is fair or good": f"{_DECENT}, not a bad, nice enough",
            "good": f"{_GOOD}, elegant, strong, powerful, solid, pleasing, handsome, shapely, good solid, just so",
            "excellent": _SPLENDID,
        },
        alone={
            "at most poor": f"no (|real) {BODY} {ON_IT}, nothing of a {BODY}, hardly a body, "
            f"(ugly|weak|poor|nothing special) "
            "(in the body|bodywise), nothing on it of a "
            "body",
            "at most fair": f"not happy with the {BODY}, {BODY} (is|) (below|under) par, (shame|pity) about the {BODY}, "
            f"{BODY} lets (it|her|him|the fish) down, let down by "
            f"(its|the|her|his) {BODY}, {BODY} does nothing for me, wish (it|she|he) had a better {BODY}, {BODY} "
            f"(is|are) the problem, could have a better {BODY}, {BODY} (could|should) be better, not much of a "
            f"{BODY}, not the best {BODY}, {BODY} not the best",
            "at least fair": f"nothing wrong with (the|its|her|his) {BODY}, no complaints about the {BODY}, "
            f"{BODY} passes",
            "is excellent": "textbook torpedo, ideal torpedo, body of a champion, what a (body|shape|frame), "
            f"{BODY} (like|of) a dream, dream of a body, best body (|you could want|i have seen|you will see), (can "
            f"not|could not|hard to) fault the {BODY}, nothing to fault in the {BODY}, could not ask for a better "
            f"{BODY}, could not want a better {BODY}, {BODY} you would pay for",
            "is good": "(|very|really|nice and) (well|nicely|beautifully) "
            "(built|made|shaped|put together|filled out|filled) (|fish|body), "
            "(well|nicely|beautifully) proportioned (fish|body), (body|shape) "
            "(is|) (well|nicely|beautifully) (shaped|filled|filled out|proportioned|balanced|built), shapely, "
            "(good|nice|decent|fine) build, body in (|good) proportion, (i|) (like|love) (the|her|his) (body|"
            "shape|shape of her|shape of him|shape of it), (good|strong|nice) (hone|bone|bones), "
            "(happy|pleased) with the (body|shape), body runs nicely into the tail, "
            "promising body, (nice|good|lovely) clean body, tapers (|off|away) "
            f"(nicely|evenly|well|right|beautifully), (good|nice) {BODY} (on|to|about) (it|her|him|this one), "
            f"{BODY} is coming on (nicely|well|), {BODY} looks right, (good|nice|lovely|even) taper (|at the "
            "tail|to the tail|towards the tail|behind), taper (at|to|towards) the tail (is|) (good|nice|even|just "
            "so|right|smooth), (|good|nice) torpedo lines, (clean|smooth|good|nice) lines",
            "is poor": "thin as a snake, like a snake, snake, (snakey|snaky), like an eel, badly "
            "(built|shaped|made|put together), misshapen, shapeless, out of shape, something wrong with the body, "
            "body like a potato, (a|) (|bit of a) potato (in the body|of a body|bodied)",
        },
        bare={"is poor": "balloon, like a balloon, round as a ball, like a ball, like a potato"},
    ),
    Spoken(
        "outline",
        after=_OF_THE_FRAME,
        alone={"is good": "(|very|really|nice and) (well|nicely|beautifully) proportioned"},
    ),
    Spoken(
        "build",
        "build, bauart",
        beside="body, frame, figure, bodied",
        levels={
            "slim": "slender, thin, lean, skinny, narrow, slim, slight, spindly, bony, weedy, (|as) thin as "
            f"{_LIKE_A_POST}, like {_LIKE_A_POST}, (thin|slim|slender|narrow|lean|skinny) in, slightly built",
            "trim": "neat, nice and trim",
            "torpedo": "like a (torpedo|cigar|missile|submarine|bullet|spindle), "
            "(torpedo|cigar|bullet|spindle|submarine|missile) (|shaped|shape)",
            "heavy": "stocky, stout, bulky, fat, plump, heavy, chunky, "
            "chubby, compact, tubby, stumpy, stubby, dumpy, barrel shaped, like a barrel, "
            f"like {LIKE_A_BULL}, (fat|heavy|stocky) in",
            "is torpedo or heavy or thick_front": "big, large, solid, massive, huge, thick, wide, broad, full, thick in",
            "is trim or torpedo or heavy or thick_front": f"{_SHORT}, short in",
            "thick_front": "like a (tadpole|carrot|wedge), (tadpole|carrot|wedge) (shaped|shape|)",
        },
        alone={
            "is slim": "(narrow|slim|thin) (gutted|waisted), thin (through|round) the middle, long thin streak, (|bit of a) "
            "(beanpole|bean pole), not carrying much, needs more body, (lightly|finely|delicately) built, fine "
            "boned, slight (little|) (fish|one|thing), slim, (slim|slender|thin|skinny|narrow) (fish|one|thing|"
            "look|build), slender, (a|the|) "
            "(skinny|thin|slim) (little|old) (fish|one|thing), slim as they come, narrow all over, skinny minnie, "
            "(skinny|narrow|thin) in the body, too slim, on the (slim|lean|thin|skinny|narrow) side, lean "
            "(fish|one|thing|look), skinny, slightly built, too thin, thin (all|) (over|through), underfed, ribby, "
            "willowy, light in the body, hollow looking, (a slip of a|slip of a) (thing|fish), (bit|) on the "
            "(slim|thin|skinny|narrow|light) side this one, could (do with|use) (|some|a bit of|a bit more) "
            "(weight|meat|filling out), (needs|wants) to fill out, nothing in the way of (bulk|body|width), built "
            "like a (whippet|stick|rake|pencil), not much meat on (it|her|him), (needs|wants|could do with) feeding "
            f"(|up), (|as) (thin|skinny) as {_LIKE_A_POST}, "
            + _lacking("(bulk|meat|volume|width|weight|flesh|substance|girth)")
            + f", no (bulk|volume|width|meat|flesh) to (it|her|him), (nothing|not much) (of|to) (her|him|it) "
            f"{ON_IT}, (slim|slender) with it, (skin and bone|skin and bones), 細い, 細身",
            "is trim": "trim (fish|one|little fish|little one), in trim, nice and trim, neat little body",
            "is torpedo": "torpedo build, (|real|proper|little|proper little) torpedo (|body|this|this one), "
            "(|nice|good) (torpedo|cigar|bullet|spindle|submarine|missile) (shaped|shape), (|proper|real) cigar "
            "(|of a body|of a fish), built like a (torpedo|cigar|missile|submarine)",
            "is torpedo or heavy or thick_front": "(|good|nice|lovely) (broad|wide|big|fat|thick|great|good "
            "broad|good wide|nice broad|good fat) (back|across the back|in the back), back is (|nice and|good and) "
            "(broad|wide), (broad|wide) (backed|right across the back), (|good|plenty of|lots of|nice|great) width "
            "(to|across|in) the back, could (park|land) a (bus|plane) on that back, back like a (barn "
            "door|bus|door), back like a table, back you could (eat off|sit on), (broad|wide) (across|in) the back, "
            "(deep|good deep|nice deep) (body|bodied|in the body), (|good|nice|fair|plenty of|lots of) depth "
            "(of|to|in) (the|) body, plenty of depth, good depth, body is deep, depth to (it|her|him), "
            "(big|large|jumbo|huge|massive|heavy|good "
            "heavy|solid|huge) (bone|bones|boned|frame|framed|skeleton|structure), (frame|bone|bones|skeleton) of a (jumbo|big "
            "fish|giant), (jumbo|big fish) (type|material|bone|structure|build|potential in the (frame|body|bone)), (frame|"
            "bones|bone) to (carry|grow|make|take) (a|) (jumbo|80|90|big fish|big body|size), "
            "(huge|massive|broad|thick|big|wide|solid|full) (bodied|built), solid body, (thick|broad|wide|full|big) (in "
            "the|through the|through) body, (good|lots of|plenty of|lots "
            "of "
            "good|great) (volume|bulk) (|already|on it|on her|on him), (broad|wide) fish",
            "is trim or torpedo or heavy or thick_front": f"(short|shorter) (bodied|coupled|backed|in the (body|back|frame|"
            f"barrel)), (body|frame|barrel|trunk|middle) (is|) {_SHORT} (for its (depth|width|girth|age|size)|), (lacks|"
            "lacking|wants|short of|short on|not enough|could do with more|needs more) length (in (the|) (body|frame|back)|"
            "of (body|frame|back)), (could|should) be longer in the (body|back|frame|barrel), (would like|wants|needs) a "
            "longer (body|"
            "back|frame)",
            "is slim or trim or torpedo": "long (in the|) (body|frame), (|nice|lovely|good|lovely nice) long "
            "(|lean|slim|slender) (body|bodied|frame|look|in the body), (body|frame) is long, long and "
            "(lean|slim|slender), long fish, (body|frame) (long and level|long)",
            "is heavy": "(thick|fat|broad|bulky) round the middle, (broad|wide|thick|fat) and (short|stocky), "
            "bulky for (its|his|her) length, carrying (a lot of|plenty of) body, good and bulky, well rounded "
            "body, (she|he) is (fat|stocky|stout|plump|chunky|"
            "bulky), stocky, stout, barrel "
            "shaped, (stocky|bulky|chunky|plump|chubby|fat|heavy|stout|stumpy|stubby|tubby|dumpy|podgy) "
            "(|little|old) (fish|one|thing|build), (|too) (plump|chubby|heavyset|thickset|podgy|overfed), "
            "heavy (set|bodied|build), heavily built, too fat, "
            "thick set, well covered, carrying weight, on the "
            "(stocky|heavy|fat|plump|chunky|stout|tubby|big) side, (a|) big solid (|lump of a) fish, bit of a "
            "(porker|barrel|lump|tub), roly poly, compact (body|build), short and (thick|fat|stocky|round), (|a bit "
            "of a) barrel of a fish, fat little barrel, (robust|sturdy|beefy|hefty|husky|burly) "
            "(fish|body|build|one|frame|girl|lad), (robustly|sturdily|solidly) built, built like a "
            "(barrel|tank|bus|ox|bull|house), (|a|great|big) (lump|chunk) of a fish, lot of fish, little football, 太い, 太め",
            "is thick_front": "(thick|big|broad) shoulders (with|and) (a|) thin (stem|tail|tail stem), thick in "
            "front and thin behind, front heavy body, all (shoulder|head|front) and no (tail|body|stem|rear), big "
            "shoulders thin stem, falls (off|away) (|too fast|too quickly|fast|quickly) (behind|behind the "
            "dorsal|behind the shoulder|after the shoulder|towards the tail), tapers (|off|away) too "
            "(fast|quickly|soon) (|behind|behind the dorsal|behind the shoulder|towards the tail), thin behind, big "
            "head and (nothing|not much) behind, (|bit of a|like a) tadpole, (tadpole|wedge|carrot) shaped, "
            "too heavy in front for (its|the) tail, (all|) (shoulders|front) and nothing behind",
        },
    ),
    Spoken(
        "build",
        after=_OF_THE_FRAME,
        bare={"is thick_front": "(like|shaped like|a bit like) a carrot", "is trim": "trim, neat and trim"},
    ),
    SpokenTogether(f"{_STOUT} (|little|old) (girl|lady|lass|female|hen)", "build is heavy and sex is female"),
    SpokenTogether(f"{_STOUT} (|little|old) (boy|lad|male|buck)", "build is heavy and sex is male"),
    SpokenTogether(f"{_LEAN} (|little|old) (girl|lady|lass|female|hen)", "build is slim and sex is female"),
    SpokenTogether(f"{_LEAN} (|little|old) (boy|lad|male|buck)", "build is slim and sex is male"),
    SpokenTogether(
        "(football|balloon|ball) with fins, round as a football, like a football", "build is heavy and outline is poor"
    ),
    SpokenTogether("potbellied, pot bellied", "outline is poor and belly_shape at most full"),
    SpokenTogether("tubby", "outline is poor and build is heavy"),
    SpokenTogether("perfect torpedo, a perfect torpedo", "outline is excellent"),
    SpokenTogether("(nice|good) torpedo, nice cigar of a body, good torpedo shape", "outline is good"),
    Spoken(
        "size_by_eye",
        "size for its age, size for the batch, size, growth",
        levels={
            "runt": "tiny, stunted, runt",
            "small": "small, behind, below average, poor, on the small side, disappointing, slow",
            "usual": "usual, average, normal, ordinary, fair, ok, okay, all right, middling, standard, as expected, as it "
            "should be",
            "big": "big, large, good, great, ahead, above average, excellent, super, very good, strong, on the big side",
        },
        alone={
            "is runt": "(|a) dwarf, (|a|real|right|the|little|poor|poor little) runt (|of the (lot|batch|litter|tub)|this "
            "one), (poor|"
            "tiny) little "
            "(scrap|thing), (little|poor) scrap, (a|) (scrap|mite|tiddler) of a fish, tiddler, (tiny|minute|"
            "titchy) (fish|one|thing), "
            "stunted, stunted fish, has not grown (at all), not grown at all",
            "at most small": "(small|tiny|little) for (its|the|her|his) (age|batch|lot|line|time of year), (small|undersized|"
            "little) (fish|"
            "one) (|this|this one), undersized, (a|) small one, (bit|rather|very|too) small for (its|the|her|"
            "his) (age|batch|lot), behind "
            "in (growth|size), (lags|lagging|left|slow) behind the (others|rest), slow grower, poor grower, "
            "smaller than it should be, behind (the|) (others|rest) in (growth|size), has not grown, slow to "
            "grow, has "
            "not grown much, "
            "not grown much, short for (its|the|her|his) (age|batch|lot), small fry",
            "is usual": "(average|usual|normal|ordinary) (size|sized) (|for its age|for the batch|for the lot|fish), "
            "middling size",
            "is big": "big for a (tosai|nisai|baby|youngster), (|a) monster (|of a fish|already), ahead of the (others|"
            "rest), (big|large|huge|long) for (its|the|her|his) (age|batch|lot|time of year), (big|large|great "
            "big) "
            "(fish|one) (|this|this one), "
            "(|just) look at the size of (it|her|him), what a size, "
            "(good|great|nice|super) size (|for its age|for the age|for the batch|already), well grown (|fish), "
            "(good|fast|strong) grower, has grown "
            "(well|fast|on well), (ahead|far ahead) of the (others|rest) in (size|growth), (a|) big one",
        },
    ),
    Spoken(
        "shoulders",
        f"{_SHOULDER}, pair of shoulders, 肩",
        levels={
            "weak": "weak, narrow, thin, pinched, pinched in, slim, small, poor, hollow, sloping, feeble, bad, "
            "(narrow|thin|weak|pinched|slim) (in|at|across), need filling, not filled, not there, 弱い",
            "fair": _FAIR,
            "at least fair": _DECENT,
            "strong": "strong, broad, wide, big, thick, powerful, full, good, heavy, massive, nice, solid, great, "
            f"well filled, filled, meaty, there, already there, there already, all there, "
            f"(broad|wide|deep|tall|high|full|big) (in|at|across), like {LIKE_A_BULL}, "
            "plenty of, lots of, lot of, well developed, the widest bit, the widest part, lovely, fine, huge, "
            "built, excellent, 太い, 張りのある",
        },
        alone={
            "is weak": "hollow (|just) behind the (head|gills), "
            "(slight|) (pinch|pinching) (behind|at) the (gill|head|neck|shoulder), "
            "(drops|falls|dips) "
            "(away|off|in) behind the (head|gills), weak front end, front end (is|) weak, (weak|thin|narrow) "
            "(across|in|at|through) the front, pinched (|in) (|just) behind the (gill|gills|gill covers|head|gill "
            "plates), narrow behind the (head|gills), (pinched|thin|narrow) (neck|in the neck|at the neck), step "
            "behind the head, neck pinched, (thin|waist|dip in) behind the (head|gills), " + _lacking(_SHOULDER),
            "at most fair": _falling_short(
                _SHOULDER, "(broad|wide|strong|full|thick)", "(broader|wider|stronger|fuller|thicker|bigger|better)"
            ),
            "is strong": f"{_SHOULDER} (on|to) (it|her|him|this|that|this 1|that 1), has (got|) {_SHOULDER}, got {_SHOULDER}, "
            "plenty up front, "
            f" (solid|"
            "powerful|strong|broad|full|thick|"
            "heavy|meaty) through the "
            f"{_SHOULDER}, good girth at the {_SHOULDER}, (broad|full|thick|wide|deep|solid|strong|meaty) behind the "
            "(head|gills), (thick|bull) neck, (strong|powerful|broad|heavy|solid) front end, front end (is|) "
            f"(strong|powerful|broad|solid), fills out (|well|nicely) at the {_SHOULDER}",
        },
    ),
    Spoken(
        "tail_stem",
        f"{STEM}, stalk, wrist, 尾筒",
        levels={
            "thin": "thin, weak, narrow, slim, slender, poor, skinny, feeble, too thin, mean, spindly, bad, "
            f"(thin|weak|narrow|skinny) (in|at), like {_LIKE_A_POST}, (|as) thin as {_LIKE_A_POST}, 細い",
            "fair": _FAIR,
            "at least fair": _DECENT,
            "strong": "strong, thick, powerful, good, broad, heavy, stout, wide, solid, fat, chunky, beefy, meaty, "
            "full, great, nice, nice and thick, good and thick, excellent, massive, thick as a thumb, "
            "(fat|thick|strong|broad|heavy|full) (in|at), like a (thumb|broomstick|fist|tree trunk|wrist|broom "
            "handle|branch|log), lovely, fine, well filled, 太い",
        },
        alone={
            "is thin": "(thin|pinched|narrow|weak|skinny|falls away to nothing|falls off to nothing) (|in|just) "
            "behind the dorsal, (thin|narrow|skinny) (at|in|towards) the tail (|end), "
            "(thin|weak|skinny|spindly|narrow|mean) (tail|tail end|back end|rear end), (tail end|back end|rear end) "
            "(is|) (weak|thin|skinny|narrow|a bit thin), thin wristed, (spindly|skinny) behind, no thickness "
            "(behind|at the tail), (narrow|weak|thin|skinny) at the (back end|rear end), (gets|goes) thin "
            "(behind|behind the dorsal|at the tail|towards the tail), narrows (|too) (quickly|fast|soon) (|to the "
            "tail|towards the tail), (tapers|runs|falls) (|off|away|out) to nothing, runs out thin, bit thin "
            "(behind|at the tail),  (tail|tail end) (|is|a bit|too) thin, rat (tail|tailed), (tail|tail end) (|is) "
            f"(like|thin as) a {_LIKE_A_POST}, falls (off|away) to nothing (at|towards) the tail, " + _lacking(STEM),
            "at most fair": _falling_short(
                f"({STEM}|tail)", "(thick|strong|broad|full|stout)", "(thicker|stronger|broader|fuller|stouter)"
            ),
            "is strong": "(thick|strong|stout|powerful|solid|chunky|beefy|good solid) (tail|tail end|rear end|back "
            "end), (tail end|back end|rear end) (is|) (strong|thick|solid|powerful|stout), "
            "(strong|solid|stout|chunky) (|at|in|towards|through) the tail, chunky behind, good thickness (at the "
            "tail|behind|behind the dorsal), (keeps|carries) its thickness (|right) to the tail, thick (|right) "
            "(|down|through|back) to the tail, (thick|good and thick|nice and thick|stout) behind, (thick|good "
            "and thick|nice and thick|strong|stout) "
            f"(behind the dorsal|towards the tail|at the tail|in the tail), plenty of {STEM}, (carries|holds) its "
            "(width|weight|bulk|thickness|volume) (right|well|all the way|) (back|to the tail|into the tail|behind)",
        },
    ),
    Spoken(
        "back_line",
        "back, back line, backline, top line, topline, line of the back, back from the side, back seen from the side",
        levels={
            "at most uneven": "hollow, sunken, dipped",
            "humped": "humped, hunched, arched, bowed, sway, roach, camel, saddle shaped",
            "uneven": "uneven, wavy, bumpy, lumpy, not (smooth|level|even|clean)",
            "smooth": "smooth, good, even, level, nice, flat, fine, gently arched",
        },
        alone={
            "at most uneven": "dip (|just) (behind|before|in front of) the (head|shoulder|dorsal), (hollow|sunken) back",
            "is humped": "(hump|bump) (|just) (behind|before|in front of) the (head|shoulder|dorsal), hump at "
            "the shoulder, humped, hunched, hunchback, hunchbacked, hunch back, hump, (hump|lump) (on|in) "
            "(the|its|her|his) (back|back line|backline), (a bit of a|) hump on (her|him|it), humpy back, "
            "lump on its back, humpback, humpbacked, (swayback|sway back|swaybacked), "
            "(roach|camel|hunched|arched) back, like a camel, (big|deep|bad) (dip|hollow) in the back",
            "is uneven": "(slight|little|small|bit of a|shallow|hint of a|touch of a) (dip|hump|bump) (|in the "
            "back|on the back|in the topline|in the back line|behind the head|behind the shoulder|behind the "
            "dorsal|before the dorsal), (back|top) line not (quite|) (smooth|level), (bump|bumps) (in|on) the back, "
            "(dip|hollow) in the (topline|top line|back line|backline)",
            "is smooth": "(level|flat|smooth|even) (back|topline|top line|back line), nice arch to the back, no "
            "(dip|hump|hollow|bump) in the back, back level as a table",
        },
    ),
    Spoken(
        "belly_shape",
        "belly, belly line, stomach, tummy, gut, line of the belly, underside, 腹",
        levels={
            "hanging": "hanging, sagging, drooping, pot, hangs, hangs down, hanging down, sags, droops, saggy, "
            "droopy, beer",
            "full": "full, fat, round, big, swollen, thick, rounded, well rounded, bulging, bulges, full of food, "
            "just food, (full|fat|thick|round|big) in, stuffed, tight",
            "level": "level, flat, good, smooth, normal, fine, ok, nice, straight, tucked up nicely",
            "hollow": "hollow, empty, sunken, drawn in, pinched, thin, concave, sunk, sunk in, caved in, tucked up, "
            "pinched in",
        },
        alone={
            "is hanging": "(potbelly|pot belly|beer belly)",
            "is hollow": "no belly, (hollow|thin|empty|pinched) in the belly, hollow "
            "(underneath|below|under), half starved, starved, looks starved, drawn in at the belly, knife bellied, "
            "empty looking",
            "is full": "(big round|nice round|well filled|nice full) belly, (|bit of a|quite a|fair) belly on (it|her|him), "
            "got a bit of a belly, (she|he) has got a belly,  bit of a belly, full of food, (just|well) been fed, "
            "well stuffed",
        },
        bare={"is hollow": "hollow, tucked up"},
    ),
    Spoken(
        "spine",
        "spine, backbone, back, back bone, vertebrae, 背骨, 背",
        anywhere=True,
        levels={
            "bent": "(bent|bends|curves|curved|kinked|goes off|bending|twisted|off|bowed|crooked) (|to the|to|off "
            f"to the) {_SIDE}, bent, crooked, curved, kinked, twisted, malformed, deformed, s shaped, off, wrong, "
            "not straight, wonky, misshapen, out of line, curves, bends, deformity, deformation, curvature, "
            "not right, doglegged, bent up, bent down, 曲がり",
            "slight": "(slightly|a little|little) (bent|crooked|kinked|off|curved|twisted), a bit "
            "(off|bent|crooked), not (quite|entirely|perfectly|completely|dead) straight, slight, out a touch",
            "straight": "straight, good, fine, sound, ok, okay, in order, true, perfect, dead straight, all right, "
            "straight as an arrow, まっすぐ",
        },
        alone={
            "is bent": "(bent|crooked|twisted|kinked|wonky|curved) (fish|body|back|spine|backbone|tail stem), "
            "(body|fish|tail stem|tail end|back end|rear end) (|is) (bent|crooked|twisted|kinked|wonky|not "
            "straight|bends|curves|curved), (body|back|back end|tail|rear end|tail end|backbone|spine) (|just) "
            f"(bends|goes off|curves|swings off|bent|veers off|pulls off|kicks off) (|off) (to|to the|) {_SIDE}, "
            f"bent (to|to the|) {_SIDE}, bent (up|down|) (behind|near|at|before|by) the "
            "(dorsal|tail|head|shoulder|dorsal fin|tail fin), (|a|bad|clear|definite|big|there is a|nasty|real) "
            "(|obvious|definite|bad) (kink|bend|twist|kick|dogleg|dog leg) (behind the "
            "(dorsal|head|shoulder)|(near|at|before|by|towards) the (tail|dorsal|head|tail stem)|you can see (|from "
            "above)|in it|in there|in the (spine|back|body|tail|backbone|tail stem)|somewhere|in there somewhere|in "
            "(her|him)), (|a|bad|clear|nasty) kink, (definitely|clearly|badly|plainly|really) "
            "(bent|crooked|twisted), like a banana, (bent|crooked) (like|as) a (banana|dog "
            "leg|boomerang|corkscrew), (s|s shaped|s curve|s bend) (in the|) (spine|body|back), (s bend|s "
            "curve), (spine|back|backbone|body) (has|with|got) a (kink|bend|twist|curve), bends off (behind|near|"
            "at|before) the (dorsal|tail), (|a) (definite|clear|obvious) (bend|twist), tail (bends|bent|kinks|"
            "turns) (up|down|to one side), (spinal|spine) (deformity|deformation|curvature), "
            "scoliosis, (lies|lie|grown) (crooked|bent), (does not|will not) (lie|run) straight, (crooked|bent) "
            "(tail end|tail stem|back end|from above|near the tail|before the tail|behind the dorsal), "
            "(goes|gone|runs) crooked (|(near|behind|before|at) the (tail|dorsal)), (bent|curved) like a "
            "(bow|banana|boomerang|dog leg), (spine|backbone|back) (|just) (kinks|bends|curves) (|just) "
            "(before|behind|near|at|by) the (tail|dorsal|head), (spine|backbone) (goes off|is out|out), boomerang, "
            "dogleg, dog leg, banana, not straight (from (above|on top|the top)|when you look down on it|when it "
            "swims), not straight, (body|back|fish|she|he|it) (|is|does|lie) not (|lie) straight, s shaped, 背曲がり",
            "is slight": "(slight|small|little|tiny|bit of a|a bit of a|hint of a|a hint of a|touch of a|suspicion "
            "of a|very slight|ever so slight|very small|faint|shadow of a|mild) "
            "(kink|bend|twist|curvature|dogleg|kick), (slight|small|little|hint of a) curve (in|to) the "
            "(spine|body|back), (slight|bit of a|slight little) (bend|curve) to (the|) (left|right), "
            "(bit|touch|shade|fraction) off straight, off straight, a (bit|touch|hair|little|fraction) "
            "(bent|crooked|kinked|twisted), (slightly|little|bit|marginally) (bent|crooked|kinked|twisted|curved), "
            "(|body|back|fish|spine|she|he|it) (is|) not (quite|entirely|perfectly|completely) straight, (spine|"
            "back|body) (a touch|a hair|slightly|a bit|a "
            "fraction|bit) (off|out|crooked|bent)",
            "is straight": "not bent, no bent spine, straight (body|back|fish|spine|backbone), body "
            "(|is|dead|perfectly|nice and) straight, straight as (an arrow|a die|a ruler|a rod|a line|you like|a "
            "string|a plumb line|they come) (|from above|from on top|from the top), (dead|perfectly|nice "
            "and|ruler|arrow|completely|absolutely) straight (|back|body|spine|from above), true as a die, straight "
            "(from (above|on top|the top)|when it swims|and true), lies straight, no (|hint of a|sign of a|trace of "
            "a) (kink|bend|twist|curvature|kink or bend|bend or kink|bends or kinks|kinks or bends) (|anywhere|in "
            "it|in (her|him)|in the (spine|back|body|tail)|to see), runs (|dead) straight, straight from "
            "(head|nose) to tail, (body|back|spine) runs (|dead) straight, straight as a gun barrel, straight as "
            "(i|you) would want, straight all the way (|down|through|along), not a (kink|bend|twist) (|in it|"
            "anywhere|to see), nothing "
            "(bent|crooked|kinked), nothing wrong with the (spine|back|backbone), (spine|back|backbone|body) "
            "(straight|true) as (an arrow|a die|a ruler|a rod)",
        },
        bare={
            "is bent": "bent, crooked, kinked, twisted, wonky, bent fish",
            "is straight": "straight, straight fish, straight as (a|an) (rule|ruler|die|arrow|rod)",
        },
    ),
    Spoken(
        "body_symmetry",
        "symmetry, body symmetry, both sides of the body, sides of the body, symmetry of the body, sides of it",
        anywhere=True,
        levels={
            "poor": "poor, uneven, unequal, bad, different, not alike, not the same, asymmetrical, lopsided, not "
            "symmetrical, not even",
            "fair": "fair",
            "good": "good, even, equal, alike, the same, symmetrical, even on both sides, even left and right",
        },
        alone={
            "is poor": "(lopsided|asymmetrical|uneven) body, body (|is|a bit) (lopsided|asymmetrical|uneven|not "
            "symmetrical), (one|1) sided belly, belly (one|1) sided, (lump|bulge|swelling) (on|in) (|one|1|the) "
            "(|left|right) side, (bulges|swollen|lumpy) on (one|1|the|) (side|left|right|left side|right side), "
            "(fatter|fuller|thicker) on (one|1|the) (side|left|right|left side|right side), (one|1) side (is|) "
            "(fatter|fuller|thicker) (|than the other)",
            "is good": "(nicely|perfectly|) symmetrical body, body (nicely|perfectly|) symmetrical, mirror image "
            "left and right",
        },
    ),
    Spoken(
        "head_shape",
        "head, head shape, shape of the head, head form, face shape, (face|forehead|snout|nose) shape, skull, 頭, 頭の形",
        beside="nose, snout, forehead, headed",
        levels={
            "poor": "poor, bad, pointed, pointy, narrow, dished, dented, square, squared, squared off, ugly, too "
            "small, too big, too long, too pointed, too narrow, misshapen, malformed, deformed, lumpy, sunken, "
            "pushed in, squashed, odd shaped, funny shaped, hollow, like a "
            "(pike|rat|needle|pin|mouse|parrot|wedge|bulldog), (bump|bumps|lump|dent|dip) (on|in), 悪い",
            "fair": _FAIR,
            "at least fair": _DECENT,
            "good": "good, broad, wide, well shaped, well rounded, rounded, strong, nicely rounded, in proportion, "
            "good broad, nice wide, big broad, good size, a good size, nicely shaped, blunt rounded, 良い",
        },
        alone={
            "is good": "(nice|good) (big|broad) head, (nice|good) round (nose|snout), head (|well|nicely) proportioned, "
            "(good|nice) "
            "head on its shoulders, (good|nice) broad face, (good|nice|fine) head for (the|its) size, (|nice and|"
            "nice|good|nice broad|"
            "good and|lovely and) (broad|wide) "
            "(between|across) the (eyes|forehead|head), (good|nice) width between the eyes, (good|nice) head "
            "(on|to) (it|her|him), (nice|lovely|fine|good) (head|head shape), (good|nice) broad (forehead|head)",
            "is poor": "(thin|narrow|pointed|mean|long|too pointed) face, face (|is|too|a bit) (narrow|pointed|thin|pinched|"
            "dished|pointy), pointed nose, sharp nose, (dished|pug|bulldog|rat|pike|parrot|"
            "squashed|pushed in|pointy "
            "little|pointy) face, (pike|pin|rat) (head|nose|face|headed), pinhead, pinheaded, all head, too much "
            "head, (mean|mean little|sharp little|pinched|narrow little) (head|face), (pointed|long|narrow) in "
            "the (nose|face), head too (big|small) for (the|its) body, dip between the eyes, "
            "(snub|pug) (nosed|nose), nose like a (shovel|pencil|pike), too big a head, (small|tiny|little) head, "
            "head (|too|a bit) (small|tiny), (long|pug|pike|pointed|pointy) (nose|snout), (nose|snout) (is|too) "
            "(long|pointed|pointy), (pushed|squashed) in (nose|snout|face), (bump|lump|dent|dip) (on|in) (|the|its) "
            "(forehead|head), hollow forehead, narrow between the eyes, beaky, (eyes|eye) (|a bit|too|very) close "
            "(|together), (snout|nose|face|head) like a (pike|rat|needle)",
        },
    ),
    *SAID_OF_HEALTH,
    Spoken(
        "tobi",
        "tobi, runaway, runaway grower, shooter, cannibal, トビ",
        alone={
            "is yes": "a runaway, a shooter, far bigger than (the rest|its brothers|its sisters|its siblings|the "
            "others), ate its (brothers|siblings)"
        },
    ),
    Spoken(
        "scalation",
        "scales, scalation, scaling, 鱗",
        levels={
            "wagoi": "full, scaled, normal, ordinary, usual, full set of",
            "kagami": "mirror",
            "kawa": "leather",
            "ginrin": "sparkling, shiny",
        },
        alone={
            "is ginrin": "ginrin, gin rin, kin gin rin, 銀鱗",
            "is kagami": "mirror scaled, mirror carp scaling",
            "is kawa": "leather (|skin|skinned|carp), kawagoi, no scales at all",
            "is wagoi": "(fully|full|normally) scaled, scaled all over",
        },
    ),
    *SAID_OF_PARTS,
    *SAID_OF_FINS,
    *SAID_OF_FRAME,
    *SAID_IN_SENTENCES,
)
"""What is said of the frame, the parts and the measures of a body."""
