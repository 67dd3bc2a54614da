"""What else sorters say of the frame of a fish: of its back, belly, head and tail stem, by likeness and in a word or two.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether, wordings_in
from koirules.vocabulary.praise import DISAPPOINTING, LACKING, NOT_BAD, short_of

ON_IT = "(|on it|on her|on him|on this one|to it|to her|to him|to speak|at all|whatsoever)"
BODY = "(body|body shape|shape|frame|figure|conformation|outline)"
STEM = "(tail stem|tail tube|tail root|tail stalk|ozutsu|peduncle|caudal peduncle|wrist of the tail|stem|tail base)"

_LACKING = LACKING.replace("nothing to write home about, nothing to shout about, ", "").replace(", not great", "")
_HE = "(she|he|fish|koi)"
_WHOLE_FISH = wordings_in(
    "length, standard_length, weight, age, sex, outline, build, size_by_eye, body_symmetry, spine, belly_shape, health, "
    "swimming, lustre, skin_clean, impression, future"
)
"""What is said of the whole fish: behind it `long` is said of the fish too, and behind red it is said of red."""

_BROAD = "(broad|wide|full|thick|strong|heavy|deep)"
_NARROW = "(narrow|thin|slim|weak|pinched|skinny)"
_WELL = "good, fine, nice, lovely, excellent, great, superb, perfect, ok, okay, sound, right, as they should be, there"


SAID_OF_FRAME: tuple[Saying, ...] = (
    Spoken(
        "outline",
        alone={
            "at least good": "(elegant|clean|good|flowing|smooth|fine|nice|lovely) (body|) (line|lines) from (nose|head) to "
            f"tail, {BODY} says yes, (no|not a) (fault|flaw|faults|weakness) in (the|) (conformation|body|bone|bones|frame), "
            "(frame|body) (under it|) looks honest, honest (frame|body), (belly line and back line|back line and belly "
            "line) mirror each other",
            "at most fair": f"{BODY} nothing special either, proportion head to body wrong, (head|body) out of "
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
            "is strong": f"(|{STEM}) (thick|solid|strong) as (a|) (rope|wrist|arm|cable)",
            "at most fair": "no (engine|motor|power|drive) (at the back|behind|at the rear|in the tail|back there)",
            "is thin": "pinched tail, tail pinched",
        },
    ),
    Spoken(
        "spine",
        alone={
            "at most slight": f"(spine|spinal|back) deviation {ON_IT} (near|at|by|before|behind|) (the|) "
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
    SpokenTogether("(body|shape|frame) plain (good|fine|ok|right)", "outline at least fair"),
    # ---- Head and face
    Spoken(
        "head_shape",
        "nose, snout, muzzle, nose tip, nose end, front of the face",
        apart=True,
        levels={
            "good": "round, rounded, nicely rounded, well rounded, nice and round, broad, wide, full, big round, straight, "
            f"{_WELL}, well shaped, nicely shaped, 丸い",
            "at least fair": NOT_BAD,
            "fair": "fair, average, so so, ordinary, middling",
            "at most fair": f"short, too short, stubby, thin, narrow, skinny, mean, pinched, turned up, turned down, hooked, "
            f"snub, snubby, dished, flat, flattened, {DISAPPOINTING}, {short_of('round|broad', 'rounder|broader')}",
        },
    ),
    Spoken(
        "head_shape",
        "head, head shape, skull, atama",
        apart=True,
        levels={
            "good": "full, deep, solid, powerful, round, robust, massive, broad and full, big and broad, big and wide, large "
            "and broad, wide and full, large and wide, broad and strong, nice and broad, good and broad, nice and wide, well "
            "proportioned, well made, there, a good shape, like a (bullet|bull|loaf), bull, 丸い, 大きい",
            "at most fair": "short, too short, stubby, dumpy, long, thin, too thin, skinny, slim, lean, mean, weak, pinched, "
            f"flat, flattened, too light, light, too heavy, not right for the body, too fine, {DISAPPOINTING}, "
            f"{short_of('broad|wide|full|round', 'broader|wider|fuller|rounder|bigger')}",
        },
    ),
    Spoken(
        "head_shape",
        "cheek, cheek line, jowl, face, hoho",
        apart=True,
        levels={
            "good": "full, fat, big, broad, round, rounded, plump, chubby, well filled, filled, filled out, wide, strong, "
            f"{_WELL}, full and round, big round, nice and full, good and full",
            "at least fair": NOT_BAD,
            "at most fair": "hollow, sunken, thin, narrow, skinny, pinched, drawn in, drawn, sucked in, fallen in, not "
            f"full, flat, lean, empty, short, {DISAPPOINTING}, {short_of('full|broad|fat', 'fuller|broader|fatter')}",
        },
    ),
    Spoken(
        "head_shape",
        "forehead, brow, top of the head, crown, gap between the eyes, width between the eyes, space between the eyes",
        apart=True,
        levels={
            "good": "broad, wide, full, high, round, rounded, good, nice, lovely, big, generous",
            "at most fair": "flat, narrow, low, sloping, dished, small, mean, too (narrow|small|flat)",
        },
    ),
    Spoken(
        "head_shape",
        alone={
            "at most fair": "bit of a (snub|snub nose|pug|pug nose|pinhead|bulldog), snubby, (short|long|thin|skinny|narrow|flat|"
            "small|stubby) headed, head (does not (fit|match|suit|go with)) the body, (head and body|body and head) "
            "(do not match|do not go together|do not fit), eyes (too|very|rather|a bit|) close set, no "
            "(cheek|nose), (not much|hardly any|lacks|lacking) (head|cheek|nose), (head|cheek) (lacking|missing "
            "width), not much (head|nose) on (it|her|him), head could be (|a bit) (broader|wider|bigger|fuller|shorter)",
            "is good": "(broad|big broad|good broad|wide|round|full|strong|good) headed, (well|nicely) (shaped|made|"
            "proportioned) head, (eyes|eye) (are|set|well|) (wide|well) (apart|spaced), (broad|wide|full) in the cheeks, "
            "head (fits|matches|suits|goes with|goes well with) the body, (gap|width|room|space) between the eyes, (good|"
            "nice|plenty of|lots of) (room|space) between the eyes, head of a (champion|jumbo|big fish), (it|she|he) has (a|"
            ") (good|proper|real) head",
        },
    ),
    # ---- Outline and build
    Spoken(
        "outline",
        alone={
            "is fair": "(body|shape|frame|figure) (only plain|medium|middling|standard|nothing special|nothing much|nothing "
            "to shout about|will do|does the job|is what it is), (plain|medium|middling|standard) (body|shape|figure), body "
            "plain",
            "at most fair": f"{BODY} nothing, no bone, no bones, (lacks|lacking) (bone|frame|shape), bone (weak|light|fine|"
            f"thin), (weak|light|thin) (bone|bones), {BODY} (lacking|is missing|not there|not there yet), not much (bone|"
            f"bones|frame|shape) (to it|to her|to him|on it|), {BODY} (does not follow|lags|lags behind|behind), not a "
            f"{BODY} (fish|koi), pattern better than {BODY}",
            "at least good": f"{BODY} follows, {BODY} carries (it|the pattern|the red|everything|it all), {BODY} (there|is "
            "there|all there|is all there|coming|to match), (bone|bones) (there|are there|is there|all there), (has|got|"
            f"with) (bone|bones|frame), (just|) look at (that|the|this) {BODY}, but look at (that|the|this) {BODY}, a {BODY} "
            f"fish, (real|proper) {BODY} (fish|on it|on her|on him|), {BODY} (is|) (the|its|her|his) (strong point|best "
            f"point|strength|thing|selling point), all {BODY}, {BODY} (sells it|sells her|is what sells it|pulls it through|"
            f"saves it|saves her), (i|) (want|take|buy|keep) (that|this|the) {BODY}, (it|she|he) has (the|) {BODY}, as "
            f"a {BODY} (she|he|it) is fine",
        },
    ),
    Spoken(
        "build",
        "body build, trunk, barrel, waist, ribs, rib cage, 体つき",
        apart=True,
        levels={
            "is slim or trim or torpedo": "long, longish, long and low, long and even",
            "is slim or trim": "small, light, fine, delicate",
            "is trim or torpedo": "medium, average, middling, normal, usual, standard, in between, ordinary",
            "slim": "slim, thin, narrow, lean, skinny, pinched, drawn in, tucked in, hollow, not filled",
            "is trim or torpedo or heavy or thick_front": "short, too short, a bit short, rather short",
            "is torpedo or heavy or thick_front": "thick, massive, huge, wide, big, broad",
            "heavy": "fat, heavy, plump, stout, round, stocky, chunky",
        },
    ),
    Spoken(
        "build",
        "body, frame, figure, build",
        apart=True,
        levels={
            "is slim or trim or torpedo": "longish, long and low, long and even, stretched, long and straight",
            "is slim or trim": "small, light, fine, delicate, petite, small and neat, light and fine, little",
            "slim": "eel like, snaky, stick like, dainty, drawn out, weedy, gaunt, wasted, starved, lanky, drawn, shallow, "
            f"lightweight, {short_of('full|thick|broad|deep', 'fuller|thicker|broader|deeper|more volume')}",
            "heavy": "rotund, portly, bulging, well fed, beefy, meaty, overfed, obese, gross, thickset, burly, brawny, hefty, "
            "like a (sausage|loaf|loaf of bread|pig|hippo|submarine with fins|cushion|pillow), short and "
            "(deep|wide|high|round), blocky, square",
            "is torpedo or heavy or thick_front": "deep, full in front, deep in front, broad in front, jumbo, large and heavy, "
            "gigantic, enormous, very large, very big, really big, impressive in size, full and broad",
        },
    ),
    Spoken(
        "build",
        alone={
            "is heavy": f"(bit|a bit|bit of|rather|quite|a|proper|real|little|right|looks|looks like|like|) (a|) "
            "(sausage|fatty|fatso|dumpling|butterball|pudding|bruiser|heavyweight|bulldozer|pig|piglet|hippo|loaf|blimp|cushion|"
            f"lump of lard), {_HE} (is|looks|has got|getting|has gone|) (a bit|rather|quite|very|too|really|) "
            "(fat|stout|plump|chunky|chubby|stocky|tubby|round|well fed|heavy), (she|he) (likes|loves) (her|his) (food|dinner), "
            "(needs|wants|could do with) (a diet|slimming|less food|to lose weight), (on|wants) a diet, (eaten|eating) too "
            "(much|well), overweight, (plenty|lots|lot) of (body|meat|girth|beef) (on it|on her|on him|there|), (carries|"
            "carrying) (a bit of|some|too much|good|) (weight|fat|timber|condition), (dumpy|stumpy|stubby) (fish|one|koi), "
            f"short for (its|her|his) (width|depth|girth), deep and short, "
            "(fat|plump|thick) (all|) (over|through|round), (fat|plump|round) (thing|lump), fattie, fatty",
            "is slim": "(bit of|a|an|a bit of|like|looks like|proper|real|long|) (a|an|) (pencil|stick|beanpole|string bean|"
            "noodle|shoelace|bootlace|streak|rake|whippet|stickleback|matchstick|spaghetti), eely, eel like, (bit of|a bit "
            f"of|proper|real|long) (a|an|) eel, {_HE} (is|looks|has got|getting|has gone|) (a bit|rather|quite|very|too|"
            "really|) (thin|slim|lean|skinny|narrow|slender|lanky|bony|gaunt), (fish|fishes|all|most|they) (are|) (a bit|"
            "rather|quite|very|too|) (thin|slim|lean|skinny), (needs|wants|could do with) (food|a feed|a good meal|"
            "fattening|fattening up|building up|more feed|feed), needs a good (meal|feed|summer|feeding), (no|not much|"
            "little|hardly any) (meat|flesh|fat|girth) (on it|on her|on him|on the bones|there|), (thin|slim|skinny|narrow) "
            "(thing|streak|creature), (fell|fallen|lost) (off|away|weight|condition), (has|) lost (weight|condition), (thin|"
            "slim|narrow) from above, you (can|could) (count|see) (its|the|her|his) ribs, ribs (show|showing), (thin|slim|"
            "narrow) (the whole way|head to tail|from head to tail)",
            "is trim or torpedo or heavy or thick_front": f"short (fish|one|koi), {_HE} (is|) (a bit|rather|too|very|) short",
            "is slim or trim or torpedo": f"{_HE} (is|looks|) (nice and|nicely|rather|quite|very|good and|) (long|longish), long "
            "(one|one this|koi|body fish|in shape|shape|lines), (good|nice) length (to|of|in) (the|) (body|frame|it|her|him), "
            "long (and|but) (straight|level|even)",
            "is trim or torpedo": "(medium|average|middling|normal) (build|built), neither (fat|thick) nor (thin|slim), not "
            "(too|) (fat|thick) (and|) not (too|) (thin|slim), in between fat and thin, just the right (weight|thickness)",
            "is torpedo": "torpedo (fish|one|koi), (nice|good) (and|) (tubular|cylindrical), shaped like a (torpedo|cigar|"
            "bullet), (like|) (a|) (little|proper|real|) (bullet|cigar|torpedo|submarine|missile)",
            "is torpedo or heavy or thick_front": "(big|good|nice|huge|great|real|lots of|plenty of|lot of) body volume "
            "(for its age|there), volume (good|there|already|big|is good|is there), (thick|broad|wide) (from (gills|"
            "shoulder|head) to (dorsal|tail|dorsal fin)|through the middle|across the middle|at the dorsal|round the dorsal|"
            "from above|across here), (a|) thick (one|fish|koi), (good|nice) (thick|broad|wide|deep) (one|fish), (a|) (deep|"
            "big) (chest|belly and back), back (thick|full|good and broad|like a table|well filled), (thick|heavy|full|"
            "powerful|meaty) back, (broad|wide|thick) (on|over) top, (high|tall|deep) back, back (high|tall|deep|is high), "
            "high bodied, deep (bodied|in the back)",
            "is slim or trim": f"(small|light) (frame|framed), {BODY} (small|light|fine), (on the|) light side in the "
            "body, (light|dainty|delicate|petite) (fish|one|thing|girl|lady)",
            "is thick_front": "(big|heavy|thick|broad|strong) in front (thin|weak|slim|narrow|nothing|little) (behind|at "
            "the rear|at the tail), (strong|good|thick|broad|big) (front|shoulders|shoulder) (weak|thin|narrow|poor|slim) "
            "(behind|tail|stem|tail stem|rear|back end|ozutsu), (thin|weak|slim|narrow) (behind|at the tail|at the rear) "
            "for (the|those|that|such) (shoulders|front|head), (thick|broad|wide) (up|in) front but (thin|narrow|nothing) "
            "behind",
        },
        bare={
            "is heavy": "(sausage|dumpling|pudding|fatty), (gone|getting|looks|it is|it looks|bit|too|a bit|) fat, fat (one|"
            "fish) this",
            "is slim": "eel, pencil, noodle, string bean, rake, whippet",
        },
    ),
    Spoken(
        "build",
        after=_WHOLE_FISH,
        bare={
            "is slim": "thin, narrow, (it|this 1|this one) (is|looks) thin, lean, skinny, slender, weedy, thin looking, "
            "thin already",
            "is slim or trim or torpedo": "long, long one, (it|this 1) (is|looks) long, long already",
            "is heavy": "fat, stubby, heavy, dumpy, bulky, deep and short, short and deep",
            "is trim or torpedo or heavy or thick_front": "short, a bit short, shortish, rather short, too short",
            "is torpedo or heavy or thick_front": "deep, thick, broad, wide, big and broad, thick and wide",
        },
    ),
    # ---- Shoulders, tail stem, back and belly
    Spoken(
        "shoulders",
        levels={
            "at most fair": f"{_LACKING}, {short_of('broad|wide|strong|full|thick', 'broader|wider|stronger|fuller|thicker')}",
            "weak": "like a (bottle|hanger|pencil|matchstick), missing, absent, lacking, skinny, bony, mean, flat, drooping, "
            "caved in, sunken",
            "strong": "like a (rugby player|wrestler|weightlifter|boxer|prop forward|docker|swimmer|wardrobe|door|barn|bull|"
            "buffalo|carthorse|fridge), coming, coming on, coming already, on the way, square, padded, impressive, imposing, "
            "deep, fat, bulky, beefy, chunky, muscular, burly, rugby player, you could (sit on|park on|ride), something to see, "
            "to die for, well built, well made, there for all to see, a yard wide",
        },
        alone={
            "is strong": "(broad|wide|thick) (up|in) front, (built|made) like a (rugby player|wrestler|weightlifter|boxer) "
            "(up front|in front|), bull (necked|shouldered), (thick|strong|broad|full) necked, (broad|wide|thick|full|"
            "strong) (round|behind|by|just behind) the (gills|gill covers|head|neck), (broad|wide|thick|full) at the (gills|"
            "gill covers|neck), (it|she|he|this one) has (the|some|proper|real) shoulders, kata (there|already|ari)",
            "is weak": "(thin|narrow|weak|pinched|bottle) necked, no "
            "(neck|front), (thin|narrow|weak|pinched) (round|behind|by|just behind) the (gills|gill covers|head|neck), "
            "(falls in|goes in|nips in|dips in|drawn in|caves in|sunken) (just|) behind the (head|gills|gill covers), no "
            "kata, kata nashi",
        },
        bare={"is strong": "kata, (big|good|some) shoulders, what shoulders"},
    ),
    Spoken(
        "tail_stem",
        "tail joint, tail end of the body, root of the tail, base of the tail, ozutsu, odutsu, stalk of the tail, "
        "(back|rear) end of the body, tail section, last bit before the tail, bit before the tail, hind part, hindquarters, 尾柄",
        levels={
            "at most fair": f"{_LACKING}, {short_of('thick|strong|broad|full|stout', 'thicker|stronger|broader|fuller|stouter')}",
            "thin": "like a (rat|mouse|eel|reed|twig|broken pencil), bony, lean, pinched, pinched in, drawn in, drawn, gone, "
            "scrawny, meagre, flimsy, no thickness, nothing, like nothing, light",
            "strong": "lovely and thick, thick enough, deep, muscular, round, powerful, well made, there, there already, coming, "
            "thick and strong, strong and thick, like a (leg of lamb|my wrist|my thumb|rope|cable|handle|bottle neck|ham|bat), "
            "as thick as a (thumb|wrist|finger), thick like a (thumb|wrist|finger), good and strong, robust, sturdy, impressive",
        },
        alone={
            "is strong": "(big|good|strong|powerful|real) (engine|motor) (at the rear|at the back|behind|back there|in the "
            "tail|), (thick|strong|full|good|powerful|broad|solid) (at|in|round|through) the (tail joint|tail root|base of "
            "the tail|root of the tail|stem), (stays|keeps|holds|still|nice and|) (thick|broad|strong|full|wide) (right|all "
            "the way|) (down|back|through|) (to|into|at|up to|before|until) the tail (joint|root|fin|end|), tail end (too|) "
            "(is|) (thick|strong) (too|as well|also|), (thick|strong) (rear|hind) (end|part|quarters), (thick|strong|good|"
            "solid) (tail|rear) (section|part|joint), plenty (behind|at the tail|at the rear), ozutsu (ari|there|already)",
            "is thin": "(thin|narrow|slim|skinny|pinched|mean) (at|in|round|through|before|just before) the (tail joint|"
            "tail root|base of the tail|root of the tail|stem|tail fin), no thickness back there, (gets|goes|runs|too|a bit|"
            "very|) (thin|narrow|weak|skinny) (to|towards|near|by|behind|before) the (tail|dorsal|tail fin), (thin|weak|"
            "narrow) (rear|hind) (end|part|quarters), (thin|weak|narrow|poor) (tail|rear) (section|part|joint), (drops|"
            "tapers|thins) (off|away|down|out) (sharply|too much|a lot) (behind|after|past|from|at) the (dorsal|"
            "dorsal fin), no ozutsu, ozutsu nashi",
        },
        bare={"is strong": "ozutsu, (good|nice) ozutsu"},
    ),
    Spoken(
        "back_line",
        "back line, topline, back profile, line of the back, arch of the back, ridge of the back, senaka",
        levels={
            "at least uneven": NOT_BAD,
            "uneven": "a bit (lumpy|wavy|bumpy|uneven|hollow|humped|high), not smooth, with a (small|little|slight) (bump|"
            "dip|hump), rough, up and down",
            "humped": "like a (camel|whale|bridge|hill|roach|bream), with a (hump|big hump), like a saddle",
            "smooth": "like a (table|ruler), flowing, an even arch, nicely curved, nicely arched, well arched, clean and even, "
            "smooth and even, without a bump, ok, okay, fine, in order, straight from the side, straight and level",
        },
        alone={
            "is humped": "(hump|humps) (on it|on her|on him|there|in the middle|on the shoulder|at the neck|near the dorsal|), "
            "(has|with|got|a) (a|) (hump|hump on it|humped back|camel back), (high|humped) (like a|as a) (camel|bream), "
            "(bream|carp|camel) (backed|back), (it|she|he) (is|) (humped|hunched|humpbacked)",
        },
    ),
    Spoken(
        "belly_shape",
        "hara, underline, underbelly, bottom line, abdomen, paunch, belly profile, 腹部",
        levels={
            "at most full": "low, heavy, huge, too big, too full, too round, too fat, enormous, like a (ball|barrel|sack|bag|pig|"
            "pregnant fish), out, sticking out, sticks out, bulgy, distended, bloated looking",
            "full": "already, showing, there, showing already, round already, coming, plump, chubby, good and full, nice "
            "and full, nice and round, a bit (round|full|big|fat), rounded already, well fed, bit full, egg shaped, with "
            "eggs, firm and full",
            "level": "ok, okay, alright, all right, in order, in line, tidy, neat, not too full, firm, tight and flat, flat "
            "and firm, clean line, gently curved, as it should be, smooth and level, even",
            "hollow": "pulled in, sucked in, fallen in, drawn up, gone, missing, skinny, too thin, shrunken, shrunk, pulled up, "
            "empty as well, not filled, tucked in, concave, flat as a board",
            "hanging": "down, low slung, low hanging, hanging low, on the floor, dragging, drags, like a (sack|bag|hammock)",
        },
        alone={
            "is full": "(bit of|a bit of|got|has got|has|with|quite|some|she has|he has|already) (a|) (belly|"
            "tummy|paunch|gut) (on it|on her|on him|already|showing|), (belly|tummy|hara) (is|) (out|already|on it|on her|"
            "on him), (full|round|fat|plump) (in|round|at) the (belly|tummy) (already|), (swollen|full) with (eggs|"
            "roe|food), (round|big|fat|nice|good) (belly|tummy) (on it|on her|on him|already|this one|)",
            "is hollow": "(sunken|hollow|empty|sunk in|caved in|drawn in|pinched|thin) (at|in|round|under|on) the (belly|"
            "tummy|gut|stomach|underside), no food in (the|its|her|his) (belly|stomach|gut), (belly|stomach) (goes|curves|"
            "pulls|pulled) in, empty (belly|stomach|gut), (looks|a bit) (hungry|starving), starving",
            "is hanging": "(droopy|saggy|low|hanging|low hanging|low slung) (belly|tummy|gut|underside), (belly|tummy|gut) (is|) "
            "(droopy|saggy|low|on the floor|low slung|down)",
            "is level": "(flat|level|firm|tidy|neat|tight) (belly|tummy|underside)",
        },
        bare={"is full": "(belly|tummy|hara) (already|), (bit of|got|with|has) belly, tummy, pot"},
    ),
    Spoken(
        "spine",
        "sebone, line of the spine, back bone line, vertebra, spinal column, column",
        levels={
            "bent": "bad, broken, deformed looking, with a (kink|bend|twist|curve), like a (banana|bow|corkscrew|question "
            "mark|snake), has a (kink|bend|twist|curve), magari, kinky, curly, doubtful and bent, damaged",
            "slight": "not perfect, a (hair|touch|shade|fraction|tiny bit|little bit) (off|out|bent), off a touch, out by a "
            "hair, almost straight, nearly straight, slightly out, slightly wavy, doubtful, questionable",
            "straight": "like an arrow, like a (ruler|rod|die|plumb line|string), ok from above, without a kink, without fault, "
            "clean, faultless, healthy, not bent, not crooked, as it should be",
        },
        alone={
            "is bent": "(spine|back|body|tail end|rear|rear end|tail stem|fish|she|he|it) (is|) (bends|bent|curves|curved|"
            "kinks|kinked|twists|twisted|goes|swings|pulls|leans|veers) (off|away|over|) (to|) (the|) (left|right|1 side) "
            "(a bit|a little|behind the dorsal|at the tail|near the tail|before the tail|after the dorsal|from the dorsal|"
            "), (back|spine|body) (like|as) a (banana|bow|corkscrew|question mark|boomerang), sebone (magari|bent|crooked), "
            "(has|got|with) (a|) (bent|crooked|kinked|twisted) (back|spine|body|tail stem), body not (in line|in a line), "
            "(tail|rear|tail end) (is|) (not in line|out of line|off line), (lies|rests) (bent|crooked|in a curve|in "
            "a bow)",
            "is straight": "(back|spine|body|everything|all|fish|koi|she|he|it) (is|looks|all|) (straight|dead straight|"
            "straight enough|nice and straight|perfectly straight), straight (as anything|all over|all round|from end to "
            "end|top to bottom|in the (back|body|spine)|when (it|she|he) (stops|rests|lies still)), (no|without) (bend|kink|"
            "twist|crook|wobble) (in (the|its|her|his) (back|spine|body|line)|at all|anywhere|that i can see|), sebone "
            "(good|straight|ok), (nice|good) straight (body|fish|one|back|line)",
        },
    ),
    Spoken(
        "body_symmetry",
        "left and right, two halves, halves of the body, two sides of the body, left and right of the body",
        levels={
            "poor": "out of balance, not matching, off, wrong",
            "good": "match, matching, balanced, mirrored, fine",
        },
        apart=True,
    ),
    # ---- Size
    Spoken(
        "size_by_eye",
        "size of it, size of her, size of him, its size, stature, growth so far, growth rate, growth this (year|season|summer)",
        levels={
            "at most small": "behind the rest, behind the others, not what it should be, not what was promised, not what i "
            f"was promised, lagging, too small, a bit small, {DISAPPOINTING}",
            "runt": "very small, minute, tiny, pathetic",
            "at least usual": NOT_BAD,
            "usual": "medium, mid, in the middle, in between, about right, right, right for its age",
            "big": "impressive, massive, huge, enormous, excellent, up, well up, well ahead, ahead of the rest, very big, "
            "outstanding, over average, jumbo, really good, there",
        },
        alone={
            "is runt": f"{_HE} (is|) (a|) (tiny|minute|teeny|titchy|stunted|dwarf|mini|runt), (very|ever so|really|so|extremely|"
            "terribly) (tiny|tiny little thing|tiny one), teeny, titchy, (a|) (tiny|weeny|teeny) (thing|little one|little fish|"
            "little thing|tosai|koi), (smallest|tiniest) (of the (lot|batch|tub|litter)|in the tub|here), not growing at all, "
            "stopped growing, (a|) peanut",
            "at most small": f"{_HE} (is|looks|) (a bit|rather|quite|very|too|really|pretty|awfully) (small|undersized), "
            "(very|too|so|really|ever so|awfully|terribly|rather|quite|a bit|bit|still|fairly|a touch|) (small|little) "
            "(fish|koi|1|tosai), (very|too|really|so) (small|little) thing, (small|little) (this|that) one, this one (is|) "
            "(very|rather|quite|too|a bit|) (small|little|tiny), (a|) (small|little) (koi|chap|fellow), growing slowly, "
            "(slow|poor|bad) growth, grows (slow|slowly|badly|poorly), (small|little) "
            "for (a|) (tosai|autumn|spring|this time of year|october|november|its line|the year|the season), (not|has not) "
            "(grown|done) much, (under|below) size, needs (to grow|growing), (on the|the) small side (this one|for size|for "
            "its age), not much of a size, no size, no growth, (lacks|lacking|short on) size, size (is|) (small|lacking|"
            "missing)",
            "at most usual": "(it|she|he|fish|this one) (is|) not (that|very|so|too|particularly|exactly|really) (big|large), "
            "nothing big, not a big (fish|one), not the biggest, could be bigger, (i would|would) like (it|her|him) bigger, "
            "bigger would be better, hoped for bigger",
            "is usual": "(size|growth) (is|) (ok|okay|fine|all right|about right|as it should be|normal|right), (medium|"
            "middle|average|normal|usual) (sized fish|size fish), neither big nor small, not big not small, (about|) (the|) "
            "(same|right) size (as the rest|for its age|for the age|for the batch|), in the middle for size, (of|) (average|"
            "medium|middling|normal) (size|growth)",
            "is big": f"{_HE} (is|looks|has got|getting|) (a|) (bit|rather|quite|very|really|pretty|nice and|) (big|large|"
            "huge|massive|enormous|big one|big girl|big boy|big lady|big lad), (very|really|pretty|quite|nice|good|real|"
            "proper|great|such a|what a|a|) (big|large|huge|massive|enormous|giant) (1|fish|koi|tosai|thing|girl|boy|lady|"
            "lad|lass|lump|unit|fellow|chap) (for a tosai|for its age|for her age|for his age|for the age|already|this|), "
            "this one (is|) (very|rather|quite|really|) (big|large|huge), (big|huge|massive) (this|that) one, (a|) (whopper|"
            "whale|giant|jumbo|jumbo tosai|brute|biggie|big unit|lump|monster tosai|beast), (fast|good|strong|great|"
            "excellent|amazing) growth, (grows|growing|grew) (fast|well|quickly|strongly|like a weed|nicely), (grown|"
            "growing) like a weed, (good|great|big|nice|decent|proper) size (on it|on her|on him|to it|to her|already|this "
            "one|for october|for november|for autumn), size (is|) (there|already there|there already), (it|she|he) has "
            "(size|grown)",
        },
        bare={
            "is runt": "titchy, runt, peanut",
            "is big": "giant, jumbo, monster",
        },
    ),
    Spoken(
        "size_by_eye",
        after=_WHOLE_FISH,
        bare={
            "is runt": "tiny, minute",
            "at most small": "(it is|this is|it looks|bit|a bit|very|so|quite|still|) (small|little), on the "
            "small side, small yet, small still",
            "is big": "(it is|this is|it looks|very|so|rather|quite|already|) (big|large), big already, huge, massive, enormous",
            "is usual": "(middle|medium|average|normal) size",
            "at most usual": "(it is|this is|) not (big|very big|so big|that big)",
        },
    ),
    # ---- Sex
    Spoken(
        "sex",
        levels={
            "female": "mesu, f, she, a girl, girlie, mum, queen",
            "male": "osu, m, he, a boy, dad",
        },
        alone={
            "is female": "(mesu|female|hen|girl|lady) (clearly|no doubt|no question|without doubt|without question|certain|"
            "sure|100 percent|by the belly|by the body|by the shape|by the fins|shape|looking|written all over her|through "
            "and through|i am sure), (a|) (strong|young|proper|real) (mesu|female|hen|girl|lady|lass|girlie), (shape|body|"
            "belly|build|frame|lines|head) (is|) (female|of a girl|of a lady|like a female|like a girl|like a hen), (looks "
            "like|looks|feels|built like|shaped like) (a|) (mesu|female|hen|girl|lady), (she|it|this|that|this one|this 1) "
            "is (mesu|female|definitely a girl|surely a girl|a lady|definitely female|all girl), (egg|eggs) (in her|inside|"
            "in the belly|in there|showing), (spawned|spawning) female, (definitely|surely|certainly|clearly|no doubt) (a|) "
            "(mesu|female|girl|hen|lady), (girl|female) (i|) (would bet|bet) (my|the) (van|house|hat|life|farm|shirt) on "
            "it, (she|it|this) is (a|) (girl|female|hen|lady) (i|) (would bet|bet) (my|the) (van|house|hat|life|farm|shirt) "
            "on (it|that)",
            "is male": "(osu|male|cock|boy|lad) (clearly|no doubt|no question|without doubt|without question|certain|sure|"
            "100 percent|by the body|by the shape|by the fins|by the pecs|by the pectorals|shape|looking|written all over "
            "him|through and through|i am sure), (a|) (strong|young|proper|real) (osu|male|cock|boy|lad), "
            "(shape|body|build|frame|lines|head) (is|) (male|of a boy|of a male|like a male|like a boy), (looks like|looks|"
            "feels|built like|shaped like) (a|) (osu|male|cock|boy|lad), (he|it|this|that|this one|this 1) is (osu|male|"
            "definitely a boy|surely a boy|a lad|definitely male|all boy), (spawned|spawning) male, (definitely|surely|"
            "certainly|clearly|no doubt) (a|) (osu|male|boy|cock|lad), (pectorals|pecs|front fins) (are|) (rough|pointed "
            "and rough|rough to the touch), (rough|sandpapery) (to the touch on the (pecs|pectorals|cheeks)|on the (pecs|"
            "pectorals|cheeks|gill covers|gill plates)), (cheeks|gill covers|gill plates) (are|feel|) (rough|sandpapery|"
            "like sandpaper), (white|breeding|spawning|little|small) (pimples|spots|bumps|tubercles) on the (cheeks|gill "
            "covers|gill plates|pectorals|pecs), (boy|male) (i|) (would bet|bet) (my|the) (van|house|hat|life|farm|shirt) "
            "on (it|that)",
        },
        bare={
            "is female": "(mesu|female|hen|girl|lady|lass) (i say|i would say|for sure|already|), girlie",
            "is male": "(osu|male|cock|boy|lad) (for sure|already|), young male",
        },
    ),
    SpokenTogether(
        "sex (is|) (unclear|unknown|not clear|open|not sure|undecided|not known|hard to tell|not visible|not visible yet), "
        "(can not|could not|hard to|impossible to|too early to|too soon to|too young to|not old "
        "enough to) (tell|say|see|know) (the sex|if it is a (boy|girl|male|female)|whether it is a (boy|girl|male|"
        "female)|boy or girl|male or female|if (male|female|boy|girl)), (boy or girl|girl or boy|male or female|female "
        "or male) (i|) (do not know|can not tell|could not say|can not say|who knows|no idea|hard to say|unclear|not "
        "sure), no idea (if|whether) (it is a|a|) (boy|girl|male|female) (or (a|) (girl|boy|female|male)|), (can not|"
        "could not|hard to) sex (it|her|him|this one|), sex not (clear|sure|known|visible|told|yet), not sexed (yet|)",
        "nothing",
    ),
    # ---- A word or two
    Spoken(
        "build",
        levels={"slim": "hungry, half starved, undernourished, underfed, wasted away, in need of food"},
        alone={
            "is heavy": "(ox|bull|tank|bus|lump|barrel|tub|beast|brute) of a (fish|koi|tosai|girl|lady|boy|body), (right|"
            "proper|real|little|right little|proper little|bit of a|a bit of a|absolute) (porker|porky|barrel|tub|"
            "chunk|tank|fatty|fatso), (well fed|overfed) (fish|one|looking|already), (too much|rich) (food|feeding) "
            "(showing|on it|), (feeding|food) shows, (chunky|hefty|sturdy|solid) (all over|all round|build|built|girl|boy|"
            "lady|lad)",
            "is slim": "slim as a (barbel|eel|reed|dace|needle|pencil|knife), (slim|slender|lean|thin|lanky) (all over|all "
            "round|girl|boy|lady|lad|all the way|all along|and long), (thin|lean) (in|about) the (body|middle|flanks|"
            "sides), (flanks|sides) (are|) (sunken|hollow|drawn in|pinched|thin|fallen in), (hollow|sunken|pinched) (flanks|"
            "sides|in the flanks), not (filled out|filled out yet|well fed|well covered), (still|) (has|needs|needs still|"
            "still|) to fill (out|up), body not (filled|full|filled out) (yet|)",
            "is slim or trim or torpedo": "(good|nice|great|lovely|decent) length (in|to|of) (the|) (body|frame|fish|back), "
            "(long|stretched) (type|model|made|build|built|frame), length over (width|"
            "depth|girth)",
            "is torpedo": "(gorgeous|lovely|beautiful|classic|perfect little|proper|nice|good|real|little|proper little) "
            "torpedo of a (fish|body|koi), (classic|lovely|beautiful|gorgeous) torpedo",
        },
        bare={
            "is heavy": "chunky, chubby, podgy, portly, rotund, hefty, sturdy, beefy, burly, stocky, plump, well fed, overfed, "
            "overweight, porky, porker, thickset, heavyset, roly poly, (bit|a bit) (chunky|chubby|podgy|plump|stocky)",
            "is slim": "lanky, scrawny, weedy, spindly, bony, gaunt, emaciated, wiry, underfed, half starved, skin and bone",
        },
    ),
    Spoken(
        "outline",
        "karada, taikei, body line from above, top view of the body, body from above, contour, contours, silhouette",
        levels={
            "at most fair": f"{DISAPPOINTING}, pinched, unbalanced, not balanced, out of balance, lumpy, angular, uneven, a bit "
            "(lumpy|pinched|odd|angular), nothing to look at, not much to look at, too (long|short) for its (width|depth|height)",
            "good": "even, balanced, well balanced, harmonious, flowing, well tapered, nicely tapered, clean cut, athletic, "
            "streamlined, in balance, in good proportion, like a (young fish|fish) should, of a good (fish|koi), right from "
            "nose to tail",
            "excellent": "of a champion, of a jumbo, like a champion, of a carp twice the price, out of the book, as good "
            "as they come, as it comes, hard to fault, you rarely see",
        },
        alone={
            "at least good": "(good|nice|great|lovely|strong) (bodied|framed|boned) (fish|one|koi|), all there in the "
            "(body|frame|bone), body (all|is all) there, (body|frame|bone) (is|) first, body and bone (good|there), "
            "everything (is|) right in the body, (koshi|hips|loins|loin) (strong|thick|good) and shoulders (strong|thick|"
            "good)",
        },
        bare={
            "at most fair": "pinched, pinched all over, out of proportion, badly proportioned",
            "at least good": "well made, well built",
        },
    ),
    Spoken(
        "tail_stem",
        "koshi, loin, hips, hip, loins",
        apart=True,
        levels={
            "strong": "strong, thick, broad, wide, good, powerful, full, fat, solid, heavy",
            "thin": "thin, weak, narrow, slim, poor, pinched, skinny, light",
        },
    ),
    Spoken(
        "shoulders",
        alone={
            "is weak": "(shoulder|kata) (drop|drops|dropped|dip|dips|drops off|falls off|falls away|gone|drop behind the "
            "head), (sloping|dropped|drooping) (shoulder|shoulders), (shoulders|shoulder) (have not|has not|not) (come|"
            "filled|filled out|filled in|developed) (yet|), waiting for (the|) shoulders",
            "is strong": "(shoulders|shoulder) (has|have|) (filled out|filled in|come on|come|developed) (well|nicely|already|), "
            "(thick|broad|wide|strong) in the shoulders (already|), (well|nicely) (shouldered|filled shoulders)",
        },
    ),
    Spoken(
        "head_shape",
        alone={
            "is good": "(fat|full|big broad|good solid) (head|face), (broad|wide|full) (at|round|in|across) the (nose|face|"
            "snout|forehead)",
            "at most fair": "(big|large|huge|heavy|small|tiny|little|short|long) head for (the|its|that|such a) (body|size|"
            "fish), head (is|) (big|large|huge|heavy|small|tiny|short|long) for (the|its|that|such a) (body|size|fish), "
            "(nose|snout) too (short|blunt|thin|narrow|small|flat)",
        },
    ),
    Spoken(
        "spine",
        alone={
            "is bent": "(bends|bent|curves|kinks|kinked|curved) (to the|) (left|right|down|up) (at|near|behind|before|after|"
            "by|from) the (peduncle|tail stem|tail joint|tail root|ozutsu|stem), (tail|rear end|back end|stem|peduncle|tail "
            "stem) (is|) (crooked|bent|kinked|not straight|off line|twisted) (seen|when seen|looked at|) (from (behind|"
            "above|on top|the top)|when it (swims|rests|stops)), body (kinks|kinked|curved|curves) (near|at|behind|before|"
            "after|by) the (dorsal|tail|tail stem|shoulder|head)",
            "at most slight": "(spine|backbone|back) (fault|issue|problem|trouble|suspect|suspicious|doubtful|a worry|"
            "worries me|wave|wavy|wobbly|has a wave|has a wobble|is wavy), (fault|wave|wobble|something|something wrong) "
            "(in|with|on) the (spine|backbone), (wavy|wobbly) (spine|backbone)",
        },
        bare={"at most slight": "spine, the spine, backbone, sebone"},
    ),
    Spoken(
        "spine",
        after=("spine", "swimming", "body_symmetry"),
        alone={
            "is bent": "(bends|curves|kinks|goes) (to the|) (left|right) (at|near|behind|before|after|by|under) the (dorsal|"
            "tail|dorsal fin|shoulder|head)"
        },
    ),
    Spoken(
        "belly_shape",
        alone={
            "at most full": "belly (is|) (swollen|blown up|bulging|bloated|puffed up|like a drum|tight as a drum) (a bit|), "
            "(swollen|bulging|puffed up) belly",
            "is full": "(good|nice) (round|full) in the belly, (round|full) (underneath|below), (carries|carrying) a (bit "
            "of a|) belly",
        },
    ),
    Spoken(
        "size_by_eye",
        alone={
            "at most small": "(the lot is|whole lot is|fish are|most of the fish are|all fish are) (a bit|rather|quite|very|"
            ") (small|smallish|on the small side|behind|undersized|little), (small|little) (ones|lot|batch) (this|these|"
            "this time|this year|all of them|all|mostly)",
            "is big": "(the lot is|whole lot is|fish are|most of the fish are|all fish are) (a bit|rather|quite|very|) (big|"
            "large|well grown|ahead|a good size|good sized), (big|large) (ones|lot|batch) (this|these|this time|this year|"
            "all of them|all|mostly)",
            "is usual": "(all|all of them|they are|they are all|mostly|most are|most of them|the lot is|fish are) (about|of|"
            ") (usual|normal|average|ordinary|middling) (size|in size), (size|growth) as (usual|ever|always|last year)",
        },
    ),
    Spoken(
        "sex",
        alone={
            "is male": "(male|boy|cock) (fins|pectorals|pecs|head|fins too) (too|), (male|boy) (worse luck|sadly|"
            "unfortunately|i am afraid|what a pity|pity|shame|alas)",
            "is female": "(female|girl|hen) (fins|belly|lines) (too|), (female|girl) (thankfully|luckily|fortunately|at "
            "least|too|good|and that counts)",
        },
    ),
    Spoken(
        "build",
        alone={
            "is heavy": "(a bit|a little|bit|rather|quite|too|very|) (thick|fat|wide|round|broad) (round|in|at|about) the "
            "(waist|girth), (carrying|carries|has|with) (a few|some|a couple of) (extra|too many|spare) (pounds|grams|"
            "ounces|kilos), (could do with|needs|wants) (losing|to lose) (a bit|some|a little|weight|a few grams) (weight|"
            "), (tosai|one) and fat, (thick|fat|stout) for (its|a|the) (age|length|size|tosai|male|boy)",
            "is slim": "(i would|i|would) (want|like|love|prefer) (to see|) (a bit|a little|some|) more (volume|body|meat|"
            "weight|width|girth|bulk|flesh|depth) (on|to) (it|her|him|this one|that|the body), (on the|the|) (petite|dainty|"
            "delicate|lean) side, (thin|slim|narrow|lean) for (its|a|the) (age|length|size|tosai|female|girl)",
            "is torpedo or heavy or thick_front": "(good|nice|full|strong|great|big|broad) (chest|rib cage|ribs|barrel) (on "
            "it|on her|on him|already|), chest (good|full|strong|broad|deep|there), (deep|thick|broad) (in|through|at) the "
            "(chest|body|middle)",
        },
    ),
    Spoken(
        "outline",
        alone={
            "at least good": "(head and body|body and head) (match|go together|in proportion|fit), (perfectly|beautifully|"
            "nicely|well) formed, (turn|turns) heads with (that|this) (body|frame|shape), (everything|all) in (proportion|"
            "the right place) in the body, (hang|put) a pattern on (that|this) (body|frame)",
        },
    ),
    Spoken(
        "size_by_eye",
        alone={
            "is runt": "(runt|dwarf|baby|smallest) (of|in) (the|this|that) (bowl|tub|tank|net|bunch|lot|batch|family|box|"
            "bag|brood|litter)",
            "at most small": "(disappointing|poor|modest|unimpressive) (size|growth) (this one|so far|), (smaller|shorter) "
            "than (i (hoped|expected|like|would like)|promised|expected|it should be|they should be)",
            "is big": "(bigger|larger|longer) than (i (hoped|expected)|expected|it should be), (it|she|he) is "
            "(enormous|massive|huge|gigantic) (this one|for a tosai|for its age|)",
        },
    ),
    Spoken(
        "head_shape",
        alone={
            "is good": "(such a|a|what a|) (pretty|lovely|beautiful|handsome|nice|sweet|noble) (face|head) (on (her|it|him|"
            "this one)|), (pretty|handsome|noble) in the (face|head), (face|head) (is|) (pretty|handsome|noble|full and "
            "broad)",
            "at most fair": "(it|he|she) is all head, all head (and nothing else|poor lad|poor thing), (nose|snout|head) a "
            "bit (sharp|narrow|short), no (forehead|cheeks|width in the head|breadth in the head|width to the head|width "
            "between the eyes), (odd|funny|strange) (head|face|shaped head|head shape)",
        },
    ),
    Spoken(
        "belly_shape",
        alone={
            "at most full": "too much (belly|tummy|gut), (belly|tummy) (is|) (round|full|fat|big) and (hard|tight|heavy|"
            "low), (huge|heavy) (belly|tummy) (on it|on her|on him|), belly (takes over|first)",
        },
    ),
    Spoken(
        "back_line",
        alone={
            "at most uneven": "(bump|hump|lump|dip|hollow|step|kink) (on|in|along) the (back|topline|back line|spine line) "
            "(before|behind|in front of|at|near|by|just before|just behind) the (dorsal|head|shoulder|tail|dorsal fin|neck|"
            "gills), (has|with|got|there is) (a|) (small|little|slight|big|) (bump|hump|lump|dip|hollow) on (the|its|her|"
            "his) back",
        },
    ),
    Spoken(
        "spine",
        alone={
            "is bent": "(tail|rear|rear end) (kinked|bent|twisted|crooked) (to the|) (left|right|up|down|1 side), (fish|it|"
            "she|he) (is|lies|) (bent|crooked|curved) (in|into|like) (a|an|the) (c|s|bow|middle|curve|arc)"
        },
    ),
    Spoken(
        "build",
        alone={
            "is torpedo or heavy or thick_front": "(bone|bones|frame) (is|are|) (heavy|big|massive|thick|huge|strong), "
            "(bags|loads|"
            "oodles|tons|buckets) of (volume|bulk|body|beef|meat|girth)"
        },
    ),
    Spoken(
        "outline",
        alone={
            "at least good": f"{BODY} (is|) (coming along|shaping up|developing|filling out) (nicely|well|beautifully|just "
            f"right|as it should|), (nice|good|lovely|beautiful) (lines|shape) (on|to) (that|this|the) {BODY}"
        },
    ),
    Spoken(
        "tail_stem",
        alone={
            "is thin": "(thin|narrow|skinny|pinched|weak) behind the (fin on the back|back fin|top fin|fin on top|dorsal "
            "fin), (gets|goes|is) (thin|narrow|skinny) (behind|after) the (fin on the back|back fin|top fin|fin on top|"
            "dorsal fin)"
        },
    ),
)
"""What else is said of a frame."""
