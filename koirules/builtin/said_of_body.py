"""How sorters speak of the frame of a fish, of its measures, health and swimming. Common practice, no source; from memory."""

from __future__ import annotations

from koirules.builtin.said_of_parts import SAID_OF_PARTS
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.praise import NOT_BAD

_ON_IT = "(|on it|on her|on him|on this one|to it|to her|to him|to speak|at all|whatsoever)"
_LIKE_A_POST = (
    "(pencil|stick|matchstick|match|rake|needle|knitting needle|straw|wire|string|thread|reed|whip|twig|lath)"
)
_LIKE_A_BULL = "(bus|ox|bull|barn door|tank|truck|house|wrestler|boxer|tree trunk|table|bulldog|carthorse)"
_GOOD = "good, fine, nice, right, sound, well made, lovely, よい, 良い"
_FAIR = "fair, average, moderate, middling, passable, acceptable, ordinary, so so, ok, okay, usual, normal, 普通"
_DECENT = f"{NOT_BAD}, all right, alright, reasonable, respectable, quite good, fairly good, pretty good, not bad"
_SPLENDID = "excellent, perfect, superb, very good, great, faultless, cracking, to die for, like a dream, 抜群, 極上"
_STOUT = "(stocky|bulky|chunky|plump|chubby|fat|heavy|stout|stumpy|stubby|tubby|dumpy|podgy)"
_LEAN = "(slim|slender|skinny|thin|lean)"
_SIDE = "(left|right|one side|1 side)"
_BODY = "(body|body shape|shape|frame|figure|conformation|outline)"
_SHOULDER = "(shoulder|kata|shoulder line|shouldered)"
_STEM = "(tail stem|tail tube|tail root|tail stalk|ozutsu|peduncle|caudal peduncle|wrist of the tail|stem|tail base)"


def _lacking(noun: str) -> str:
    """What says that there is little of something: `no shoulders to speak of`, `could do with more shoulder`."""
    little = "(no|not much|hardly any|hardly a|not a lot of|little|barely any|too little|not enough|no real)"
    wanted = (
        "((i would|i should|would) (like|want) more|lacks|lacking|lacking in|short on|light on|"
        "(could do with|could use|needs|wants) (|more|a bit more))"
    )
    return f"{little} {noun} {_ON_IT}, {wanted} {noun}"


def _falling_short(noun: str, as_wanted: str, more: str) -> str:
    """What says that something is not as it should be, and not how far: `the shoulders could be broader`."""
    wish = "(i would like|i like|it should be|it could be|it might be|they should be|they could be|i want|hoped)"
    return (
        f"{noun} (could|should|might|ought to) be (|a bit|a little|a touch|much|lot) {more}, {noun} not as "
        f"{as_wanted} as {wish}, not as {as_wanted} (in|at|across) {noun} as {wish}, could be (|a bit|a "
        f"little|much|lot) {more} (in|at|across) {noun}, not the {as_wanted} {noun}"
    )


_OF_FRAME: tuple[Saying, ...] = (
    Spoken(
        "outline",
        alone={
            "at least good": "(elegant|clean|good|flowing|smooth|fine|nice|lovely) (body|) (line|lines) from (nose|head) to "
            f"tail, {_BODY} says yes, (no|not a) (fault|flaw|faults|weakness) in (the|) (conformation|body|bone|bones|frame), "
            "(frame|body) (under it|) looks honest, honest (frame|body), (belly line and back line|back line and belly "
            "line) mirror each other",
            "at most fair": f"{_BODY} nothing special either, proportion head to body wrong, (head|body) out of "
            "proportion, long in front (and|) short behind, short in front (and|) long behind",
            "is poor": "half a body",
        },
    ),
    Spoken(
        "build",
        alone={
            "is slim": "high and narrow, (narrow|thin) all the (way|length), (thin|narrow) as a (knife|blade|ruler), like a "
            "herring, (bone|bones|body) like a (herring|sprat|sardine), no back to speak, hardly any back, "
            "(lacks|lacking) back",
            "is torpedo": "(body|) (tube like|tubular|cylindrical|like a tube) (and (even|straight)|body|), evenly cylindrical",
            "is torpedo or heavy or thick_front": "(deep|broad|big|full) (chest|chested), (chest|) (deep|broad) in the chest, "
            "(impressive|huge|real|big) (volume|girth), there is thickness, (round|rounded) "
            "(on|over|across|in) the back, (strong|powerful) (back|in the back), broad (and|) thick (and calm|), thick and "
            "broad, (width|breadth|thickness|volume|depth|bulk|girth) (carries|holds|goes|runs|carried) (on|right|) "
            "(past|behind|beyond) (the|) (dorsal|dorsal fin), long barrel",
            "is heavy": "(bit|) too fat too (soon|early), fat too (soon|early)",
            "is thick_front": "(it|body|she|he|) (drops|falls) (off|away) behind (the|) (dorsal|dorsal fin|shoulder|shoulders), "
            "(body|it) (stops|ends|gives out) (at|behind) the dorsal",
        },
    ),
    Spoken(
        "tail_stem",
        alone={
            "is strong": f"(|{_STEM}) (thick|solid|strong) as (a|) (rope|wrist|arm|cable)",
            "at most fair": "no (engine|motor|power|drive) (at the back|behind|at the rear|in the tail|back there)",
            "is thin": "pinched tail, tail pinched",
        },
    ),
    Spoken(
        "spine",
        alone={
            "at most slight": f"(spine|spinal|back) deviation {_ON_IT} (near|at|by|before|behind|) (the|) "
            "(peduncle|tail|dorsal|tail stem|shoulder|), deviation of the (spine|back)",
            "is straight": "straight line (from|) (nose|head) to tail",
        },
    ),
    Spoken(
        "head_shape",
        alone={
            "is good": "(broad|full|good|round|strong) cheeks (and (a|) straight nose|and (gills|gill covers) flat|), cheeks "
            "(full|broad|good) (and (gills|gill covers) flat|), head like a (good|) loaf, (broad|wide|good gap|good "
            "width|nice and wide|good and wide) between the eyes",
            "at most fair": "(narrow|pointed|pointy) in the (snout|muzzle), muzzle (narrow|pointed|pointy), "
            "(narrow|pointed|pointy) muzzle, "
            "snout narrow, narrow snout, head (too|) small on top of it, (cheek|cheeks) (hollow|sunken), hollow (cheek|cheeks), "
            "head too large for the body",
        },
    ),
    Spoken(
        "body_symmetry",
        alone={
            "at most fair": "body (asymmetry|asymmetric) (left|right|on the left|on the right|), (a|) bulge behind the gill, "
            "(lines|line) along the "
            "belly (not even|uneven)",
        },
    ),
    Spoken(
        "belly_shape",
        alone={"at most full": "(belly|gut|stomach) like a (frog|toad|balloon|football|drum)"},
    ),
    Spoken(
        "size_by_eye",
        alone={
            "at most usual": "(it|she|he|fish) not (that|very|so) big",
            "is big": "big for (january|february|march|april|may|june|july|august|september|october|november|december|autumn|"
            "spring|summer)",
        },
    ),
    Spoken(
        "fin_faults",
        alone={
            "includes dorsal": "dorsal (set|placed|grown) wrong, (missing|no) (first|front|leading) dorsal "
            "ray, (first|front|leading) (dorsal ray|ray of the dorsal) missing"
        },
    ),
    Spoken("fin_damage", alone={"count at least 1": "finnage (ragged|torn|frayed|split)"}),
    SpokenTogether("(body|frame) (plain|ordinary|average) but straight", "outline at most fair and spine is straight"),
)

SAID_OF_BODY: tuple[Saying, ...] = (
    Spoken(
        "length",
        "l, tl, long, in length, tall of, total length, overall length, length overall, size, measures, on the "
        "board, from nose to the end of the tail, nose to the end of the tail, 全長, 体長",
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
            "at most poor": f"no (|real) {_BODY} {_ON_IT}, nothing of a {_BODY}, hardly a body, "
            f"(ugly|weak|poor|nothing special) "
            "(in the body|bodywise), nothing on it of a "
            "body",
            "at most fair": f"not happy with the {_BODY}, {_BODY} (is|) (below|under) par, (shame|pity) about the {_BODY}, "
            f"{_BODY} lets (it|her|him|the fish) down, let down by "
            f"(its|the|her|his) {_BODY}, {_BODY} does nothing for me, wish (it|she|he) had a better {_BODY}, {_BODY} "
            f"(is|are) the problem, could have a better {_BODY}, {_BODY} (could|should) be better, not much of a "
            f"{_BODY}, not the best {_BODY}, {_BODY} not the best",
            "at least fair": f"nothing wrong with (the|its|her|his) {_BODY}, no complaints about the {_BODY}, "
            f"{_BODY} passes",
            "is excellent": "textbook torpedo, ideal torpedo, body of a champion, what a (body|shape|frame), "
            f"{_BODY} (like|of) a dream, dream of a body, best body (|you could want|i have seen|you will see), (can "
            f"not|could not|hard to) fault the {_BODY}, nothing to fault in the {_BODY}, could not ask for a better "
            f"{_BODY}, could not want a better {_BODY}, {_BODY} you would pay for",
            "is good": "elegant fish, (|very|really|nice and) (well|nicely|beautifully) "
            "(built|made|shaped|proportioned|put together|filled out|filled) (|fish|body), (body|shape) "
            "(is|) (well|nicely|beautifully) (shaped|filled|filled out|proportioned|balanced|built), shapely, "
            "(good|nice|decent|fine) build, body in (|good) proportion, (i|) (like|love) (the|her|his) (body|"
            "shape|shape of her|shape of him|shape of it), (good|strong|nice) (hone|bone|bones), "
            "(happy|pleased) with the (body|shape), body runs nicely into the tail, (nice|good) line to the body, "
            "promising body, (nice|good|lovely) clean body, elegant, tapers (|off|away) "
            f"(nicely|evenly|well|right|beautifully), (good|nice) {_BODY} (on|to|about) (it|her|him|this one), "
            f"{_BODY} is coming on (nicely|well|), {_BODY} looks right, (good|nice|lovely|even) taper (|at the "
            "tail|to the tail|towards the tail|behind), taper (at|to|towards) the tail (is|) (good|nice|even|just "
            "so|right|smooth), (|good|nice) torpedo lines, (clean|smooth|good|nice) lines",
            "is poor": "thin as a snake, like a snake, snake, (snakey|snaky), like an eel, badly "
            "(built|shaped|made|put together), misshapen, shapeless, out of shape, something wrong with the body, "
            "body like a potato, (a|) (|bit of a) potato (in the body|of a body|bodied)",
        },
        bare={"is poor": "balloon, like a balloon, round as a ball, like a ball, like a potato"},
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
            "heavy": "stocky, stout, bulky, fat, plump, thick, short, heavy, big, large, solid, massive, chunky, "
            "chubby, compact, wide, broad, too short, tubby, stumpy, stubby, dumpy, barrel shaped, like a barrel, "
            f"big boned, full, like {_LIKE_A_BULL}, (short|fat|thick|heavy|stocky) in",
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
            f"{_ON_IT}, (slim|slender) with it, (skin and bone|skin and bones), 細い, 細身",
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
            "(of|to|in) (the|) body, plenty of depth, good depth, body is deep, depth to (it|her|him)",
            "is slim or trim or torpedo": "long (in the|) (body|frame), (|nice|lovely|good|lovely nice) long "
            "(|lean|slim|slender) (body|bodied|frame|look|in the body), (body|frame) is long, long and "
            "(lean|slim|slender), long fish, (body|frame) (long and level|long)",
            "is heavy": "(thick|fat|broad|bulky) round the middle, (broad|wide|thick|fat) and (short|stocky), short coupled, "
            "bulky for (its|his|her) length, carrying (a lot of|plenty of) body, good and bulky, well rounded "
            "body, (massive|huge bodied) body, big in the body, (she|he) is (fat|stocky|stout|plump|chunky|"
            "bulky), stocky, stout, solid body, barrel "
            "shaped, (stocky|bulky|chunky|plump|chubby|fat|heavy|stout|stumpy|stubby|tubby|dumpy|podgy) "
            "(|little|old) (fish|one|thing|build), (|too) (plump|chubby|heavyset|thickset|podgy|overfed), big "
            "(boned|framed), big (bones|frame|bone), large frame, heavy (set|bodied|build), heavily built, too fat, "
            "thick set, thick bodied, broad built, well covered, (good|lots of|plenty of|lots of good|great) "
            "(volume|bulk) (|already|on it|on her|on him), full bodied, carrying weight, on the "
            "(stocky|heavy|fat|plump|chunky|stout|tubby|big) side, (a|) big solid (|lump of a) fish, bit of a "
            "(porker|barrel|lump|tub), roly poly, compact (body|build), short and (thick|fat|stocky|round), (|a bit "
            "of a) barrel of a fish, fat little barrel, (robust|sturdy|beefy|hefty|husky|burly) "
            "(fish|body|build|one|frame|girl|lad), (robustly|sturdily|solidly) built, built like a "
            "(barrel|tank|bus|ox|bull|house), (|a|great|big) (lump|chunk) of a fish, lot of fish, (broad|wide) "
            "fish, little football, 太い, 太め",
            "is thick_front": "(thick|big|broad) shoulders (with|and) (a|) thin (stem|tail|tail stem), thick in "
            "front and thin behind, front heavy body, all (shoulder|head|front) and no (tail|body|stem|rear), big "
            "shoulders thin stem, falls (off|away) (|too fast|too quickly|fast|quickly) (behind|behind the "
            "dorsal|behind the shoulder|after the shoulder|towards the tail), tapers (|off|away) too "
            "(fast|quickly|soon) (|behind|behind the dorsal|behind the shoulder|towards the tail), thin behind, big "
            "head and (nothing|not much) behind, (|bit of a|like a) tadpole, (tadpole|wedge|carrot) shaped, like a "
            "carrot, too heavy in front for (its|the) tail, (all|) (shoulders|front) and nothing behind",
        },
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
            "smaller than it should be, behind (the|) (others|rest) (in (growth|size)|), has not grown, slow to "
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
            f"(broad|wide|deep|tall|high|full|big) (in|at|across), like {_LIKE_A_BULL}, "
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
            "is strong": f"{_SHOULDER} (on|to) (it|her|him), has (got|) {_SHOULDER}, got {_SHOULDER}, plenty up front, "
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
        f"{_STEM}, stalk, wrist, 尾筒",
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
            f"(like|thin as) a {_LIKE_A_POST}, falls (off|away) to nothing (at|towards) the tail, " + _lacking(_STEM),
            "at most fair": _falling_short(
                f"({_STEM}|tail)", "(thick|strong|broad|full|stout)", "(thicker|stronger|broader|fuller|stouter)"
            ),
            "is strong": "(thick|strong|stout|powerful|solid|chunky|beefy|good solid) (tail|tail end|rear end|back "
            "end), (tail end|back end|rear end) (is|) (strong|thick|solid|powerful|stout), "
            "(strong|solid|stout|chunky) (|at|in|towards|through) the tail, chunky behind, good thickness (at the "
            "tail|behind|behind the dorsal), (keeps|carries) its thickness (|right) to the tail, thick (|right) "
            "(|down|through|back) to the tail, (thick|good and thick|nice and thick|stout) behind, (thick|good "
            "and thick|nice and thick|strong|stout) "
            f"(behind the dorsal|towards the tail|at the tail|in the tail), plenty of {_STEM}, (carries|holds) its "
            "(width|weight|bulk|thickness|volume) (right|well|all the way|) (back|to the tail|into the tail|behind)",
        },
    ),
    Spoken(
        "back_line",
        "back, back line, backline, top line, topline, line of the back, back from the side, back seen from the side",
        levels={
            "humped": "humped, hollow, hunched, arched, sunken, bowed, sway, roach, camel, saddle shaped, dipped",
            "uneven": "uneven, wavy, bumpy, lumpy, not (smooth|level|even|clean)",
            "smooth": "smooth, good, clean, even, level, nice, flat, fine, gently arched",
        },
        alone={
            "is humped": "(hump|bump|dip) (|just) (behind|before|in front of) the (head|shoulder|dorsal), hump at "
            "the shoulder, humped, hunched, hunchback, hunchbacked, hunch back, hump, (hump|lump) (on|in) "
            "(the|its|her|his) (back|back line|backline), (a bit of a|) hump on (her|him|it), humpy back, "
            "lump on its back, humpback, humpbacked, (swayback|sway back|swaybacked), "
            "(roach|camel|hunched|arched|hollow|sunken) back, like a camel, (big|deep|bad) (dip|hollow) in the back",
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
        bare={"is hollow": "hollow, empty, tucked up"},
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
            "(|obvious|definite|clear|bad) (kink|bend|twist|kick|dogleg|dog leg) (behind the "
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
    Spoken(
        "health",
        "health, condition, fish, state, lot, whole lot, all of them, every one of them, all fish, 健康",
        levels={
            "sick": "sick, ill, diseased, bad, poorly, very sick, infected",
            "doubtful": "doubtful, questionable, unsure, suspicious, off colour, not quite right",
            "well": "well, good, fine, healthy, sound, lively, fit, active, all right",
        },
        anywhere=True,
        alone={
            "is well": "healthy looking, full of go, (good|great|healthy) appetite, fish are well, all well, (|strong and|"
            "looks|looking|all|nice and|seems) healthy, fish well, "
            "(|bright and|nice and) lively, (|looks|looking|all|fish are all|all of them) fit, (|in) good "
            "(health|condition|nick), fit and (well|lively|active), fit as a fiddle, (strong|bright) and "
            "(lively|active), perfectly healthy, fighting fit, (|no) health (problems|issues) none, no health "
            "(problems|issues), nothing ill about it, clean bill of health, looks the picture of health, in good "
            "shape healthwise, fish are healthy, fish are fine, (in|) (fine|good) fettle, health (good|fine), all "
            "are well, no sick (fish|ones), none sick, nothing sick (|about it), nobody (|is) (sick|ill), no (|sign "
            "of|signs of|hint of|trace of) (disease|sickness|illness|ill health|parasites) (|in the lot|on them|on "
            "it|at all|anywhere), (bursting|bouncing) with health, full of (life|beans), nothing wrong "
            "(healthwise|with its health), active, (eats|eating|feeds|feeding) (well|fine|good|properly|nicely|like "
            "a horse), 健康",
            "is sick": "(fin rot|finrot) (starting|beginning|on the tail|in the fins), (|looks|very|really|properly) (sick|"
            "ill) (|fish|one), diseased, (finrot|fin rot|tail "
            "rot|mouth rot|gill rot|body rot), (|an|nasty|small|open|red) (ulcer|ulcers), (|an|) open (wound|sore), "
            "(raw|infected|bleeding|fresh) (wound|sore), (parasite|parasites), "
            "(|a|red|small|little|inflamed|nasty|raw) sore, hole in the (side|flank|body), (dropsy|dropsical|dropsy "
            "look), dropsy look about it, wound (on|in) (the|its) (side|back|flank|belly|head), (pine "
            "cone|pinecone|pineconed|pine coned|pinecone scales), (mouth|tail|fin|skin) fungus, (|bad|nasty|big) "
            "ulcer on (it|her|him), (|bad|big|small|nasty|red) ulcer, ulcerated, raw patch (|on (the|its) "
            "(side|flank|belly|back|head)), (whitespot|white spots all over like salt), (gill|skin) (fluke|flukes), "
            "rot in the (tail|fins|mouth|tail fin), (|a) (|white|little) (fungus|fluff|cotton wool|cottony "
            "tuft|tuft of fungus|white fluff), (fish lice|louse|lice|anchor worm|anchor worms|a worm on it|worm on "
            "it|fluke|flukes|leech|leeches), white spot disease, (|got a|a) bug on (it|her|him), got (a "
            "bug|bugs|worms|lice|flukes|fungus|parasites|dropsy|fin rot), (|carp|koi) pox, bleeding from the gills, "
            "infected, (|an) infection, gill disease, inflamed, inflammation, (|on|) (|its) last legs, half dead, "
            "dying",
            "at most doubtful": "(clamps|clamping|clamped|holds in|tucks in|holding in) (|its|her|his) (fin|fins), "
            "(|all) fins (clamped|held in|held close|tucked in|folded in|closed|clamped up|clamped to the "
            "body|pressed in|held tight), (hangs|hanging) back, "
            "(stays|sits|lies|hangs) (at|on) the bottom (since|for) (half an hour|an hour|hours|a while|ages), "
            "(hangs|hanging|sits|sitting|lies|lying|stays|standing|stands|quiet one hanging) (about|around|) "
            "(in|on|at|by|near) (|the) (corner|surface|top|inlet|bottom|outlet|filter|airstone|air stone|pump|edge) "
            "(|of the bowl|of the tub|by the inlet) (|on its own|alone|all the time), (off|not on) its food, not "
            "eating (|well), (does|has) not (eat|eaten|eating), listless, sluggish, lethargic, (not|off its) "
            "(feeding|feed), will not (eat|feed), (gulps|gulping) (|air|at the surface), (holds|holding) its fins "
            "(in|tight), fins clamped tight, hanging (head|tail) (down|up) (|in the corner), "
            "(flicks|flicking|rubs|scrapes) (on|against) the (bottom|side|wall), jumpy and flashing, (red|blood) "
            "(streaks|veins) in the (fins|tail|skin), veins in the (tail|fins), (reddened|bloodshot) (fins|tail), "
            "red fins from (stress|the bag|the trip), (excess|too much) slime, scales (sticking out|on end|sticking "
            "up), bloated, looks (bloated|swollen|miserable|sickly|weak|off colour), (does|do) not look (happy|good "
            "in itself|right), not looking (happy|well|right), something wrong with it, not right in itself, sickly "
            "(looking|), sickly, weakly, sulky, looks tired, fins (clamped|folded) (shut|down), hanging in the "
            "(current|flow), sits on its own, on its own in the corner, not (very|particularly|so) lively, "
            "poorly looking, (flashing|flashes) (a lot|a bit|all the time), (swollen|bloated) body, (stays|keeps|"
            "hangs|hanging) (on its own|by itself|to "
            "itself|apart|away from the others), sulking (|in the corner), off colour, under the weather, "
            "(flashes|flashing) (against the bottom|on the bottom|on the bottom of the bowl|on the bottom of the "
            "tub|against the side), (rubs|rubbing|scratches|scratching) (|itself) (on the bottom|on the "
            "side|against the side|itself), gasps (|at the surface), gasping (|at the surface), breathing "
            "(fast|hard|heavily), breathes (fast|hard|heavily), gills (going|pumping|beating) (fast|hard), "
            "(pop|bulging|bulgy|popping|protruding) (eye|eyes|eyed), popeye, popeyed, eyes (bulge|bulging|a bit "
            "bulgy|bulgy|stick out|popping|protrude), (sunken|sunk in|hollow) eyes, eyes (sunken|sunk|sunk "
            "in|hollow|too deep), bloodshot fins, fins bloodshot, (blood|red veins|veins|stress marks) in the fins, "
            "(veins|veins are) showing (|in the fins|in the skin), scales (lifted|lifting|raised|standing up|stand "
            "up|sticking up|up|standing off) (|a bit), (lifted|raised|standing) scales, (slimy|too much slime|slime "
            "on it|slimy skin), looks (poorly|unwell|stressed), (does|do) not look (well|healthy|right in itself), "
            "not (|a|quite|feeling|looking|looking too) (well|fit|healthy) (|fish), (|a bit|very|looks) stressed, "
            "not (|quite) itself, unwell, peaky, poorly, ailing, (sits|lies) on the bottom, clamping, clamps up",
        },
        bare={
            "is well": "well, looks well, very well",
            "at most doubtful": "hanging, hanging a bit, hangs a bit, quiet one, flashing, flashes, clamped, "
            "clamped up, scratching, rubbing, swollen, weak fish",
        },
    ),
    Spoken(
        "swimming",
        "swimming, swim, swims, movement, moves, moving, action, way of swimming, swimmer, (moves|swims|turns) in "
        "the water",
        levels={
            "off": "off, all wrong, poorly, crookedly, off balance, with a lean, at a tilt, tilted over, like a cork, a "
            "bit funny, (floating|) (belly up|upside down), in loops, crooked, badly, "
            "wrong, sideways, rolling, lopsided, odd, oddly, funny, strange, strangely, wobbly, wobbles, unsteady, "
            "unsteadily, jerkily, jerky, tilted, tilting, drunk, drunkenly, on its side, on one side, (|round) in "
            "circles, round and round, (head|nose|tail) (down|up), with (the|its) (head|nose|tail) (down|up), like "
            "(a drunk|it is drunk|she is drunk|he is drunk), like (it|she|he) (has|is) (had a drink|had a "
            "few|drunk|had 1 too many), at an angle, not right, not straight, upside down, belly up, in spirals, "
            "backwards",
            "stiff": "stiff, stiffly, slowly, slow, woodenly, wooden, like a (plank|board|stick|log|piece of wood), "
            "hardly bends, stiff as a board",
            "smooth": "just fine, perfectly, evenly, with power, powerfully, nice and (straight|smooth|even|level), "
            "smooth, smoothly, well, good, straight, "
            "fine, easily, nicely, normal, normally, level, with ease, strongly, strong, like a dream, gracefully, "
            "graceful, properly, beautifully, freely, fast, quick, quickly, lively, as it should, all right, ok, "
            "like a fish should",
        },
        alone={
            "is off": "hangs in the water, (rolls|rolling) (about|when it swims|on its side|to one side), keeps "
            "(rolling|tipping) (|over), lists (to one side|to the left|to the right), (heels|tilts) (over|to one "
            "side|to the left|to the right), leans (to one side|when it swims|over when it swims), "
            "(hangs|stands|rests) (head|tail|nose) (down|up), (head|nose) down (|tail up|when it stops|when it "
            "rests|a little when it stops), head down tail up, (can not|does not|cannot) (hold|stay|keep) (itself|) "
            "(level|upright|straight), (floats|floating) (|up|to the top|on its side|upside down), sinks to the "
            "bottom, (goes|turns) (|round) in circles, goes round and round, (wobbles|wobbling|bobs|bobbing) "
            "(about|when it swims|up and down), (can not|does not) keep its balance, (|balance) (is|) off when it "
            "swims, (|is) unbalanced in the water, (floats|sinks|tips|rolls) when it (stops|swims|rests), rolls "
            "as it swims, listing (to the left|to the right|to one side), struggles to stay (down|up|upright|"
            "level), swims upside down, "
            "staggers, swim bladder (|trouble|problem), (lies|lying) on its side, does not swim "
            "(right|straight|properly|well), something wrong with how it swims, wobbly (in the water|swimmer), "
            "unsteady (in the water|swimmer), off balance in the water",
            "is stiff": "stiff when it (turns|swims|moves), (stiff|stiffness) (in|at) the (tail|back|rear|back end|body|rear "
            "end), (rear end|back "
            "end|rear|body|tail end|tail) (|is|a bit) stiff, stiff (behind|body|fish|as a board|as a plank), like a "
            "plank, (moves only (its|the) tail|only the tail moves|only moves its tail|all tail), tail does all the "
            "work, (hardly|barely) bends (|when it swims|at all), (body|it) (does not|hardly) bend (|much), "
            "(stiff|wooden) (mover|in the water), (swims|moves) (only|) (with|from) (only|) (its|the) tail (|only), "
            "(slow|stiff|sluggish) swimmer",
            "is smooth": "(good|nice|smooth|strong|quick|lively|lovely|fast|easy) (swimmer|mover), turns "
            "(fine|well|nicely|easily), nothing wrong with the (swimming|way it swims), glides (along|through the "
            "water), moves like silk, (powerful|graceful|lovely) swimmer, nothing wrong with how it swims, quick in "
            "the water, (he|she|it) is quick, like a fish should swim",
        },
        bare={
            "is stiff": "stiff, wooden, rigid",
            "is smooth": "glides",
            "is off": "rolls, rolls over, rolling, lists, tumbles, turns over, spirals, spins, spinning round, corkscrews, "
            "wobbles, wobbly, wobbling, unsteady, staggers, floats, tilts, bobs about, upside down",
        },
    ),
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
    *_OF_FRAME,
    SpokenTogether(
        "fins (ok|okay|in order|undamaged|all ok|all good|complete|all complete|all there|all whole|clean and "
        "whole), all fins (ok|there|complete), nothing wrong with the fins",
        "fin_damage is none and fin_faults is none",
    ),
    SpokenTogether(
        "no faults, no fault, no faults at all, nothing wrong at all, clean fish no faults, without fault, too "
        "small, too bad really, one for the lot, well, as before, still the same, good fish, clean fish, nothing "
        "wrong with it, nothing wrong, otherwise fine, otherwise good, otherwise clean, fine otherwise, clean "
        "otherwise, good otherwise, nothing else, that is all, no problem, a pity, pity, shame, a shame, what a "
        "shame, sorry, lovely, lovely fish, nice fish, pretty, cute, charming, i like it, i like that, i like this, "
        "i like this one, do not like it, do not like that, i do not like that, i do not like it, does not bother "
        "me, do not mind, i do not mind, i do not mind that, never mind, no matter, fine, it is fine, is fine, the "
        "children will love it, comes from good parents, good parents, let me look again later, let me see, let us "
        "see, well well, interesting, hovering gently, i would say, hard to say, what else, healed, all healed, no "
        "wound, rest is fine, the rest is fine, the rest good, rest good, the rest ok, poor thing, needs watching, "
        "those bother me, that bothers me, it bothers me, does not matter, that does not matter, it does not "
        "matter, matters little, that is how i like it, how i like it, just how i like it, not too bad, not so bad, "
        "well fed, nicely fed, sweet, else clean, else fine, else good, rest clean, the rest clean, rest is clean, "
        "people like that, people pay for that, there you go, good to see, too bad, oh dear, good one, a good one, "
        "nice one, a nice one, ok, fine fish, as expected, as usual, (good|sorry|old|oh) (girl|boy|lad), sorry "
        "(sweetheart|old boy|old girl), oh boy, (|that|it) (|was) (net|heron|bag|trip|move|journey|transport|tub) "
        "(|must have|has) (did|done|does) (that|it|this|those), (net|bag|heron|transport|travel|handling) "
        "(mark|damage), (|that is|just) from the (net|bag|trip|move|journey|transport|bags|van), (probably|must "
        "have) knocked it (|in the bag|in the net|on the way|in the tub), closed up, (|all|well|nicely) closed "
        "over,  you only see it from (the front|the side|above)",
        "nothing",
    ),
)
"""What is said of the frame, the parts and the measures of a body."""
