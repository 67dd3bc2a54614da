"""How sorters speak of the health of a fish and of how it swims. Common practice, no source; wordings from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, wordings_in

_IT_SWIMS = (
    "(she|he|it|fish|this 1|you see how he|you see how she|see how it|look how it|the way it) (swims|moves|goes)"
)
_OFF = (
    "(wonky|crooked|odd|oddly|funny|strange|strangely|badly|poorly|unevenly|lopsided|sideways|wobbly|drunk|like a drunk|in "
    "circles|not right|wrong|not straight|off|weird|weirdly|off balance|on (1|its|her|his) side|on the side|head down|"
    "tail down|head up|nose down|at an angle|tilted|leaning|rolling)"
)
_SMOOTH = (
    "(well|fine|good|nicely|straight|normally|smoothly|strongly|properly|like a dream|beautifully|as it should|all right|"
    "alright|ok|okay|easily|freely|powerfully|gracefully|with power|perfectly|evenly|normal|very well)"
)
_AT = "(on|at|near|behind|by|under|above|below|along|over|in)"
_PART = (
    "(the|its|her|his) (left|right|upper|lower|) (nose|snout|lip|mouth|head|cheek|gill|gill "
    "cover|shoulder|back|side|flank|belly|vent|tail|tail fin|"
    "tail stem|stem|dorsal|dorsal fin|pectoral|pec|pelvic fin|anal fin|fin|eye|chin|throat|neck)"
)
_OF_THE_FISH = wordings_in(
    "health, swimming, size_by_eye, build, sex, length, weight, outline, spine, eye_clarity, eye_film, fin_damage, fin_faults, "
    "dorsal_fin, belly_shape, shoulders, tail_stem, head_shape, mouth, barbels_missing, gill_cover_faults, scale_loss, "
    "skin_clean, "
    "lustre, impression"
)
"""What is said of the fish: behind its pattern `lively` is said of that."""

SAID_OF_HEALTH: tuple[Saying, ...] = (
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
            "(bright and|nice and) lively, lively fish, (all|they are|fish are|she is|he is) lively, "
            "(|looks|looking|all|fish are all|all of them) fit, (|in) good "
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
            "(stiff|sluggish) swimmer, (too|very|a bit) slow (a|) swimmer",
            "is smooth": "(lovely|nice|beautiful|graceful|calm) slow (swimmer|mover), "
            "(good|nice|smooth|strong|quick|lively|lovely|fast|easy) (swimmer|mover), turns "
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
        "swimming",
        "way it moves, way it swims, how it swims, how it moves, way she swims, way he swims, movement in the water, tail "
        "beat, 泳ぎ",
        levels={
            "off": "wonky, weird, weirdly, (a bit|bit|slightly|a little|rather) (wonky|odd|funny|crooked|off|strange|lopsided|"
            "wobbly|uneven|one sided), uneven, unevenly, in a curve, in a circle, like a corkscrew, like a leaf, like a cripple, "
            "with a (roll|list|wobble|tilt|limp), with (its|the) (head|tail|nose) (hanging|low|high), leaning, "
            "not level, not even, as if drunk, tail first, heavily to one side, out of balance, unbalanced, 変",
            "stiff": "(a bit|bit|slightly|a little|rather) (stiff|stiffly|slow|slowly|wooden), like a robot, lazily, lazy, "
            "sluggish, sluggishly, tired, heavily, with effort, laboured, only with the tail, from the tail only, rigid, rigidly",
            "smooth": "happily, happy, calmly, calm, nice and easy, without effort, effortlessly, in a straight line, like silk, "
            "as one, even, elegant, elegantly, without a wobble, very well, alright, okay, faultless, faultlessly, relaxed, "
            "steadily, steady, cleanly, clean, upright, true, perfect, correctly, 良い",
        },
        alone={
            "is off": f"{_IT_SWIMS} (a bit|a little|rather|slightly|very|so|quite|) {_OFF}, (leans|leaning|lists|tilts|rolls|"
            "tips|heels) (a bit|a little|slightly|) (to|to the|over to the|on the) (left|right|1 side) (when (it|she|he) "
            "(swims|stops|rests)|in the water), (can not|does not|will not|could not) (stay|stand|keep|hold) (level|upright|"
            "straight|its balance) (in the water|), (swims|hangs|floats) on (its|her|his|1) side, (hangs|stands) "
            "(head|nose|tail) (down|up|low), (bad|poor|odd|strange|crooked|wobbly|funny|uneven) (swimmer|swimming|mover), "
            "swimming (is|) (bad|poor|odd|strange|wrong|off), (swim bladder|bladder) (trouble|problem|gone|off|damaged|"
            "fault|), (drifts|pulls|veers|goes|swims) (off|away|) to (1 side|the left|the right) when (it|she|he) swims, "
            "(spins|spinning|corkscrewing|tumbling|swims in circles|going round in circles), (no|not much|poor) balance (in "
            "the water|when it swims), (sinks|sinking) (when (it|she|he) (stops|rests)|like a stone|to the bottom|all the "
            "time), (bobs|bobbing) (like a cork|on the surface|at the top), tail (hangs|hanging) down (when (it|she|he) "
            "(stops|swims|rests)|)",
            "is stiff": f"{_IT_SWIMS} (a bit|a little|rather|slightly|very|so|quite|) (stiff|stiffly|slow|slowly|wooden|"
            "woodenly|like a board|like a plank|like a stick|with the tail only|only with the tail), (stiff|slow|wooden|"
            "heavy) (swimmer|mover|in the back|when swimming), (back half|rear half|front|front half|middle) (is|) stiff, "
            "no (swing|wave) in (it|the body|the tail), body (is|) stiff when it swims",
            "is smooth": f"{_IT_SWIMS} (quite|very|really|so|) {_SMOOTH}, (good|nice|fine|strong|great|lovely|smooth|normal|"
            "straight) (swimming|movement|action|swimmer), nothing wrong (with|in) (how|the way) (it|she|he) (swims|moves), "
            "(glides|cruises|sails) (along|about|well|nicely|like a dream|), moves (well|nicely|beautifully|like a big fish|"
            "like a torpedo), (good|strong|full) (tail|) (stroke|beat)",
        },
    ),
    Spoken(
        "health",
        "(general|) condition, state of health, constitution, feeding, appetite",
        anywhere=True,
        levels={
            "well": "tip top, top, great, perfect, excellent, super, very good, ok, okay, fine so far, no problem, not a "
            "problem, in order, alright, strong, eating, eating well, feeding, bright, first class, without fault",
            "doubtful": "a bit off, not great, so so, not the best, poor looking, iffy, dodgy, under par, a worry, weak, low, "
            "not good, not so good, not convincing, down, uncertain, shaky",
            "sick": "very bad, really bad, terrible, gone, failing, awful",
        },
        alone={
            "is well": "(all|fish|lot|they|everything|every 1|everyone|whole lot|all of them) (is|are|look|looks|seem|) "
            "(all|) (healthy|well|fine and healthy|fit|lively|in good health|healthy and lively|active|eating|eating well|"
            "feeding|feeding well|bright and active|in good condition|in good nick|in good shape), (no|not a) (sores|sore|"
            "parasites|parasite|disease|illness|fungus|ulcers|ulcer|signs of disease|sign of disease|red spots on the belly|"
            "fin rot|lice|worms) (seen|anywhere|on it|on any|on them|to be seen|that i can see|at all|), (they|it|she|he|"
            "all|fish) travelled (well|nicely|fine), (she|he|it|they) (eats|eat|feeds|feed) (well|fine|good|like a horse|"
            "like a pig|like mad|from the hand), (she|he|it|they) (is|are|looks|look|seems|) (healthy|fit|lively|full of "
            "life|full of beans|in good health|in good condition|bright), (healthy|fit|lively) (fish|one|koi|lot|batch|"
            "looking|and lively|enough), nothing (sick|ill|wrong) (with (it|her|him|them)|) healthwise, (comes|came|comes "
            "up|rushes) (up|) (for|to) food, (first|always first) (at|to) the food, genki, 元気",
            "is sick": "(it|she|he|this one|this 1) (is|looks|seems|) (very|really|properly|quite|) (sick|ill|diseased|"
            "dying), (a|an|the|with|has|got|) (small|little|big|red|raw|open|bad|nasty|fresh|deep|bloody|) (sore|ulcer|"
            "wound|abscess|boil|bleeding spot) (on|at|near|under|behind|by|above|below) (the|its|her|his|) (left|right|) "
            "(gill|gill cover|flank|side|belly|back|head|tail|stem|tail stem|dorsal|pectoral|nose|mouth|cheek|vent|"
            "shoulder), (worm|worms|leech|leeches|louse|fluke|parasite|argulus|lernea) (on it|on her|on him|hanging|"
            "sticking out|there|on the (left|right|back|belly|flank|side|fin|tail)|), (a|) worm, anchor worm (on|in) (the|) "
            "(back|flank|side|tail|fin|belly|gill|dorsal), (got|has|with) (a|) (worm|worms|fungus|parasites|lice|ulcer|sore|"
            "ulcers|fin rot), (white|grey|cotton|woolly|fluffy) (fuzz|fluff|wool|cotton|tuft|growth|mould) (on (it|her|him|"
            "the (fin|tail|back|head|mouth|side|nose|wound))|), (white|grey) spot fuzz, (spot|patch) of (fungus|fuzz|fluff|"
            "mould), mould on (it|her|him|the (fin|tail|back|head|mouth|side)), (fin|fins|tail|mouth) (is|are|) (rotting|"
            "rotten|rotted), (columnaris|dropsy|costia|ich|white spot|koi pox|carp pox|khv|sleeping sickness), dropsical, "
            "scales (like a pine cone|like a pinecone|pineconing), (hospital|quarantine|sick) case, (red|blood) (hole|"
            "crater) in the (side|flank|belly|skin), hole (in|on) (it|her|him|the skin), raw (flesh|"
            "skin|spot), bleeding",
            "at most doubtful": "(she|he|this one|this 1) (is|looks|seems|) (a bit|a little|rather|very|quite|) off, "
            "it (looks|seems) (a bit|a little|rather|very|quite|) off, "
            "(it|she|he|this one|this 1) (is|looks|seems|) (a bit|a little|rather|very|quite|) ("
            "poorly|weak|tired|listless|quiet|unwell|sluggish|lethargic|dull and listless|peaky|stressed|off colour|unhappy|"
            "clamped|bloated|swollen|under the weather), (off|not on|refusing|ignoring|not touching|not interested in) (its|"
            "her|his|the|) (food|feed|pellets), (does not|do not|will not|not) (come|coming) (up|) (for|to) (the|) food, "
            "(no|lost|without) appetite, (slime|mucus) (on it|coming off|on the skin|or something|peeling|all over|on the "
            "(head|back|side|flank|gills)|), (extra|heavy|thick|lots of|a lot of|too much|white|grey) (slime|mucus) (on it|"
            "coming off|on the skin|on the (head|back|side|flank|gills)|), (bit of|a bit of|some|slight|) (bloodshot|"
            "bloodshot veins|red veins|red streaks|redness|reddening|stress marks|stress|blood lines|pink veins|pink "
            "streaks|pinkish streaks|inflammation) (in|on) the (fins|fin|tail|tail fin|pecs|pectorals|dorsal), (veins|blood "
            "vessels) (in|on|visible in) the (fins|fin|tail|skin), (fins|fin|tail) (is|are|) (bloodshot|reddened|red veined|"
            "inflamed|red with stress|pink with stress), (fins|fin) (held|kept|tight) (tight|close|in|down|to the body|"
            "against the body), (stays|keeps|hangs|sits|lies|stands|hanging|sitting|lying|standing) (in|at|on|near|by|"
            "under) the (corner|bottom|surface|top|inlet|outlet|airstone|pump|edge|side) (all the time|a lot|on its own|"
            "alone|and does nothing|), (apart|away) from the (others|group), (stays|keeps|hangs|swims|sits|lies|stands) "
            "(apart|away) from the rest, (separate|separated) from the others, "
            "(breathing|breathes|gills) (too|very|) (fast|hard|heavy|heavily|quickly), (gasping|gulping) (for air|at the "
            "top|), (jumps|jumping) and (rubs|rubbing|flashes|flashing), (rubs|scratches|flicks|flashes|scrapes) (itself|"
            "herself|himself|) (against|on|along) (the|) (wall|side|bottom|net|floor|tub|bowl|stones), (itching|itches|"
            "itchy), scales (stand|standing|stick|sticking|stood) (up|out|off|) (a bit|a little|slightly|), (swollen|"
            "bloated) (all over|round the middle|and (scales|eyes) out), (has been|was|been) (ill|sick|treated|in the "
            "hospital tank), (recovering|convalescent), (worth|needs|wants) (treating|treatment|a salt bath|a dip|watching "
            "for parasites), (could be|may be|might be|maybe|possibly|perhaps) (worms|parasites|flukes|costia|fungus|"
            "bullying|something catching), something (wrong|up|not right) with (it|her|him), (does not|not) (like|seem|"
            "look) (well|itself|herself|himself|happy|healthy), (thin|skinny) and (weak|listless|poorly), (weak|poorly|"
            "tired|listless|sickly) (fish|one)",
        },
        bare={
            "is sick": "(worm|parasite|louse|ulcer|sore|fungus|fuzz|fluff)",
            "at most doubtful": "off food, weak, listless, tired, bloodshot, gasping, hangs, apathetic, "
            "(clamped|closed) fins, fins (clamped|closed)",
            "is well": "fit, genki, eating, (strong|healthy) fish",
        },
    ),
    Spoken(
        "health",
        anywhere=True,
        alone={
            "at most doubtful": "(1|left|right|both|) (pec|pectoral|pectorals|pecs|front fin|front fins) (is|are|) (clamped|"
            "held in|tucked in|tucked up|closed|held close|kept in|pressed in), (needs|wants|could do with) (the|some|a|) "
            "(medicine|salt|bath|salt bath|treatment|hospital|quarantine), (sorry|sad|miserable|forlorn|unhappy) looking, "
            "(looks|feels) (a bit|rather|very|) (sorry for (itself|herself|himself)|sad|miserable|unhappy|forlorn), (has "
            "not|not|did not) (eaten|eating|eat|fed) (for|since|all|today|yet|in) (a|1|2|3|days|week|two|the|morning|"
            "yesterday|), (stays|keeps|sits|lies|hangs) (on|at) the bottom (in the corner|all day|a lot|alone|on its own|"
            "all morning), (little|some|bit of|a bit of|a little) blood (under|on|in|at) (it|the (scale|scales|fin|fins|"
            "tail|gill|gills))",
            "is sick": "(small|little|big|deep|open|fresh|raw|) (wound|sore|cut|bite|hole) (behind|on|at|near|by|under|"
            "above|below) the (left|right|) (pectoral|pec|gill|gill cover|dorsal|tail|eye|mouth|flank|side|belly) (still|is "
            "still|is|) (red|raw|open|bleeding|not healed|not closed), (cotton|cottony|fluffy|woolly|furry) (stuff|thing|"
            "bit|growth|spot|patch) (on|in) (it|her|him|the (fin|fins|tail|mouth|head|side|back|gill|nose|eye|dorsal)), "
            "(something|stuff) (fluffy|cottony|woolly|like cotton|like cotton wool) on (it|the (fin|fins|tail|mouth|head|"
            "side|back|nose)), (wound|sore|spot|cut) (is|) (still|) (red|raw|open|bleeding|infected|not healed|not closed), "
            "(nose|mouth|belly|side|flank|head) (is|) (rubbed|scraped|scratched|skinned) (red|raw|open|bloody|sore)",
        },
        bare={"at most doubtful": "listless, droopy, poorly, off its food, off her food, off his food"},
    ),
    Spoken(
        "swimming",
        alone={
            "is smooth": "(glides|moves|swims) like a (swan|fish should|big fish|torpedo|dream), (quick|lively|fast|nimble) "
            "(in the tub|in the bowl|in the net|in the water), (quick|nimble) (one|fish|little fish)",
        },
    ),
    Spoken(
        "health",
        alone={
            "is well": "(healthy|fit|strong|lively) (looking|) (animal|specimen|creature|little thing|fish|one), (picture|"
            "image|bloom) of health, (well|healthy) and (happy|strong|lively|hungry|active), (always|very|really) (hungry|"
            "eating|active|lively), (good|strong) (eater|feeder), (no|not any) (ailments|complaints|issues) healthwise",
            "at most doubtful": "(clamped|clamping|hanging|listless|off food|off its food|off colour|poorly|weak|not eating|"
            "on the bottom|flashing|quiet|hiding) (since|for|all) (yesterday|days|a day|a few days|two days|2 days|3 days|a "
            "week|this morning|morning|day|monday|the move|the journey|it came|she came|it arrived|some time)",
            "is sick": "(small|little|fresh|deep|bad|nasty|open|) (cut|graze|wound|sore|scrape) (on|near|by|behind|under) "
            "the (nose|mouth|lip|lips|head|side|flank|belly|tail|shoulder|gill|gill cover|cheek|stem|pectoral)",
        },
    ),
    Spoken(
        "swimming",
        alone={
            "is off": "(swims|moves|goes) (as if|as though|like) (it|she|he) (has|had|is|was|have) (had a drink|had a few|"
            "drunk|dizzy|lost|broken|ill|hurt), (head|nose|tail) (goes|drops|sinks|tips|dips|hangs) (down|up) (when (it|she|"
            "he) (stops|rests|stands|stands still)|at rest|all the time|a bit|), (keeps|stays) (tipping|rolling|falling) "
            "(over|to (the|) (left|right)|to 1 side)",
        },
    ),
    Spoken(
        "health",
        after=_OF_THE_FISH,
        bare={"is well": "lively, active, lively 1, lively fellow, lively thing, bright and lively"},
    ),
    Spoken(
        "health",
        alone={
            "is well": "not (ill|sick|unwell|poorly|diseased) (at all|), (nobody|no 1|none|none of them|nothing|no fish) (in "
            "here|here|) "
            "(looks|is|seems) (poorly|ill|sick|off|unwell|sickly|off colour)",
            "at most doubtful": "(sulks|sulking|skulks|skulking|mopes|moping|hides|hiding|cowers|cowering|broods) "
            "(at|on|in|near|by|under|"
            "behind) the (bottom|corner|rear|net|edge|side|outlet|pipe|others|floor), (raw|sore|angry|inflamed) look "
            "(to|about) it, "
            "(fin|fins|all fins) (is|are|) (shut|shut tight|closed up|closed tight|pinned|pinned down|pinned back), "
            "(fin|fins|tail|tail "
            "fin|pec|pecs|pectoral|pectorals|dorsal) (has|have|with|shows|show|got) (some|a few|a bit of|) "
            "(pink|pinkish|"
            "blood|bloody) (streaks|veins|lines|streak|threads), (side|flank|back|shoulder|head|belly|tail stem|stem|nose) (of "
            "the body|) "
            "(has|with|got) (a|some) (graze|scrape|scratch|rub|chafe|raw rub)",
        },
    ),
    Spoken(
        "swimming",
        alone={
            "is smooth": "(lovely|nice|calm|beautiful|steady|graceful|majestic|stately|easy|gentle|quiet|relaxed) "
            "(slow|calm|steady|lazy) "
            "(swimmer|mover), (calm|steady|stately|easy|gentle|quiet|relaxed|unhurried|placid) (swimmer|mover), "
            "(quick|nimble|swift) (little|) (thing|1|swimmer|beggar|devil)",
        },
    ),
    Spoken(
        "health",
        alone={
            "at most doubtful": "(not|not quite|not really|not altogether) (itself|herself|himself) (today|this morning|this "
            "week|lately|), (not "
            "sure|do not think) (it|she|he) is (well|all right|itself|herself|himself|ok|healthy|right) (today|this morning|)",
        },
    ),
    Spoken(
        "swimming",
        alone={
            "is smooth": "(goes|shoots|zooms|races|tears|zips|charges|rockets) (round|around|about|across|through|along|off) "
            "(the (bowl|tub|net|tank|"
            "vat|water|basin|pond)|) like a (rocket|bullet|torpedo|train|dart|arrow|race car|racing car|motorboat)",
        },
    ),
    Spoken(
        "health",
        alone={
            "at most doubtful": f"(scuffed|grazed|scraped|chafed|skinned|bruised) {_AT} {_PART}, "
            "(red|raw|fresh|angry|bloody|bleeding|pink) (scratch|scuff|"
            f"abrasion|bruise|rub|chafe|scratches) {_AT} {_PART}, "
            "(hangs|hanging|mooches|drifts|drifting|loiters|hovers) (about|"
            "around|off|) (on (its|her|his) own|alone|by (itself|herself|himself)|away from the (others|rest))",
            "is sick": f"(white|grey|cotton|woolly|fluffy|) (fuzz|fluff|wool|tuft|mould|fungus) {_AT} {_PART}",
        },
    ),
    Spoken(
        "swimming",
        alone={
            "is off": "(wobbly|unsteady|shaky|lopsided) (on|in|at|round) the (turns|turn|corners|corner|bends), "
            "(wobbly|unsteady|shaky) when (it|she|he) "
            "(turns|swims|stops)",
            "is stiff": "stiff (on|in|at|round) the (turns|turn|corners|corner|bends)",
        },
    ),
    Spoken(
        "swimming",
        anywhere=True,
        levels={
            "off": "like (it|she|he) (has|is|) (had) (a couple|one too many|a drop|a pint|a few pints), tipsy, tipsily, "
            "like a (sailor|drunken sailor)"
        },
    ),
)
"""What is said of health and swimming."""
