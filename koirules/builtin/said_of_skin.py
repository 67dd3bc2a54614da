"""How sorters speak of the skin, of the whole fish and of the look itself. Common practice, no source; from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.praise import LACKING, NOT_BAD, short_of, wished

_SHINE = "(shine|lustre|gloss|sheen|glow|teri|tsuya|gleam|polish|shimmer|life in the skin|life to the skin|skin shine)"
_BODY = "(skin|white|it|she|he|this one|whole fish|fish)"
_GLASSY = (
    "(glass|silk|porcelain|lacquer|varnish|a mirror|mirror|satin|wet paint|china|pearl|polished stone|wet silk|enamel|"
    "polished glass|wet glass|fresh paint|a new car|new paint|a polished apple|marble|a wet stone|glaze|ice|crystal)"
)
_SPECKS = (
    "(shimi|(black|dark|fine black|tiny black|little black) (speck|fleck|freckle|pinprick|pinhead|pinpoint|pepper|"
    "peppercorn)|speck|pinprick|pinhead|pepper|peppercorn|(speck|fleck|sprinkling|sprinkle|dusting|pinprick) of (black|"
    "pepper|shimi))"
)

_SIZES = (
    ("(pin prick|pinprick|needle point|needle prick)", "0.2", "1"),
    ("poppy seed", "0.7", "1.5"),
    ("(pin head|pinhead|head of a pin)", "1", "2.5"),
    ("mustard seed", "1.2", "2.6"),
    ("(sesame seed|match head)", "1.8", "3.6"),
    ("peppercorn", "3", "5.5"),
    ("lentil", "3.5", "7"),
    ("(rice grain|grain of rice)", "4.5", "8"),
    ("pea", "6", "10"),
)
"""How large in mm things are that sorters compare specks with."""

_LIKE_GLASS = (
    "(glass|wet glass|silk|porcelain|lacquer|wet lacquer|varnish|mirror|satin|wet paint|china|pearl|mother of pearl|"
    "polished stone|enamel|new car|new penny|polished (apple|conker|shoe|table|glass|marble|boot)|conker|marble|wet stone|"
    "wet pebble|glaze|ice|crystal|lamp|lantern|light bulb|diamond|jewel|buttered (glass|plate)|oil on water|ballroom floor|"
    "dance floor|waxed floor|bowling ball|snooker ball|seal|candle|lighthouse)"
)
_COATED = (
    "(varnished|lacquered|waxed|polished|oiled|glazed|enamelled|buttered|wet|dipped in (oil|varnish|lacquer|glass|wax))"
)
_LIKE_LEATHER = (
    "(old leather|leather|old boot|boot|old sock|sandpaper|flour|felt|blotting paper|old glove|dry leaf|orange peel|"
    "elephant|elephant hide|rhino|plaster|brick|wall|concrete|cork|bark|flannel|old towel|towel|cardboard box|packing "
    "paper|parchment)"
)
_LIKE_DIRT = (
    "(coal cellar|mechanic's hands|doorstep|muddy boot|dirty (plate|window|windscreen|bath|floor)|pavement|chimney|old "
    "doormat|mud bath)"
)
_DIRTY = (
    "(a bit|a little|a touch|rather|slightly|very|quite|) (grubby|dirty|muddy|stained|murky|messy|smudgy|blotchy|cloudy|"
    "grimy|dingy)"
)
_PINK = "(a bit|a little|a touch|slightly|rather|quite|all|) (pink|pinkish|reddish|flushed|reddened|red|blushed|blushing|rosy)"
_FLUSHED = _PINK.replace("|red|", "|")  # `red on the tail root` is said of the pattern
_TRIP = "(trip|bag|bags|net|netting|move|travel|transport|journey|stress|handling|sorting|drive|van|box|tub|catching)"

SAID_OF_SKIN: tuple[Saying, ...] = (
    Spoken(
        "lustre",
        "lustre, tsuya, shine, gloss, sheen, skin, skin shine, skin lustre, skin quality, skin gloss, teri, glow, polish, "
        "gleam, quality of the skin, quality of skin, shine on it, shine of the skin, 艶, ツヤ, 照り",
        levels={
            "dull": "dull, matt, flat, weak, dead, lifeless, gone, missing, lacks life, lost its shine, dull and flat, no "
            "sparkle, without sparkle, dull all over, like paper, like cardboard, like chalk, like felt, like "
            "sandpaper, tired, dry, asleep, without life, dull as (ditchwater|dishwater), chalky, poor, bad, weak, ない",
            "fair": "some, little, fair, average, moderate, medium",
            "is fair or good": NOT_BAD,
            "at most fair": f"{LACKING}, "
            + short_of("shiny|glossy|bright|lively", "shinier|glossier|brighter|livelier")
            + ", not shiny, not the shiniest, not much",
            "good": "shiny, shining, glossy, bright, strong, well, healthy, glowing, alive, lively, polished, gleaming, has "
            "life, full of life, plenty of, lots of, a lot of, loads of, with life, good, great, 良い",
            "superb": f"brilliant, like {_GLASSY}, like wet {_GLASSY}, smooth as (glass|silk), very shiny, dazzling, very "
            "glossy, really shiny, mirror like, like it is (varnished|lacquered|wet|polished), sparkling, sparkle, "
            "superb, 極上",
        },
        alone={
            "is dull": "hardly any shine, hardly any lustre, hardly any gloss, hardly shines, little shine, dull and flat, "
            "flat and dull, dull, dull skin, no shine, no shine at all, no lustre, without lustre, no gloss, dull as "
            f"paper, ({_BODY} (has|have|got|has got|with|) |)(no|not any|without|without any|hardly any|no real|barely "
            f"any|not a bit of|little|very little|zero|lacks|lacking|lack) {_SHINE} (at all|to speak|to it|whatsoever|"
            f"on it|left|in it|), {_SHINE} (gone|missing|absent|none), skin (does not|hardly|do not) (shine|glow|"
            "gleam), does not (shine|glow|gleam), skin without life, no life to the skin, skin has no life, matt, 艶なし",
            "at most fair": f"not (much|a lot of|enough|a great deal of) {_SHINE}, could do with (more|some|a bit more) "
            f"{_SHINE}, not shiny",
            "is good": "(you can see it|can see it) (glow|shine|gleam) from (here|across the tub|a mile off|over there), "
            f"high gloss, good gloss, shiny, shining, glossy, good shine, shines nicely, shines, shines well, ({_BODY} "
            f"|)(has|got|has got|have|with) (a|some|that|a good|a nice|a lovely|good|nice|real|plenty of|) {_SHINE} (on "
            f"it|to it|about it|), (good|nice|lovely|fine|great|a|some|healthy|) {_SHINE} (on|to) (it|her|him|this one|"
            f"the skin|the white|that skin), (plenty|lots|loads|a lot) of {_SHINE}, {_BODY} (shines|glows|gleams), "
            "glows, glowing, polished, shiny all over, shines all over, skin has life, life in the skin, (she|he|it|"
            "this one) (really|) (shines|gleams|glows), (skin|skins) (is|are|) good (across the board|all round|on the "
            "whole), (real|good|nice|lovely|proper|) wet look (skin|to it|to her), nice quality of skin, good quality "
            "of skin, (soft|) skin with a (sheen|shine|glow|gloss|lustre|gleam) (to it|on it|)",
            "is superb": "skin like glass, like glass, skin like silk, like varnish, shiny like lacquer, like lacquer, "
            "varnished, skin like porcelain, porcelain skin, like porcelain, silky, like silk, gleams like silk, shines "
            f"like silk, gleams like glass, shines like glass, shines like a mirror, superb skin, ({_BODY} |)(shines|"
            f"gleams|glows|looks|shining) like {_GLASSY}, wet porcelain, (like|) {_GLASSY} skin, like (wet paint|"
            "polished glass|satin|enamel|fresh paint|wet glass), gleaming, gleams, mirror finish, what a (skin|"
            f"{_SHINE}), what skin, skin sparkles, (superb|fantastic|amazing|brilliant|dazzling|incredible|wonderful|"
            f"excellent|terrific) {_SHINE}",
        },
        of_parts="all",
    ),
    Spoken(
        "skin_clean",
        "skin, cleanness of the skin, 肌",
        levels={
            "dirty": "dirty, stained, cloudy, blotchy, unclean, spotty, not clean, grubby, messy, blemished, marked, "
            "smudgy, full of marks, full of stains, covered in marks, 汚い",
            "at most fair": "pinkish, pink, a bit pink, flushed, reddish, pink tinged, patchy, a bit dirty, not spotless",
            "fair": "fairly clean",
            "clean": "clean, clear, smooth, spotless, pure, unmarked, flawless, without a mark, without marks, unblemished, "
            "without a blemish, without a stain, without stains, immaculate, you could eat off, that you could eat off, "
            "i could eat off, free of marks, free of stains, clean all over, clean everywhere, clean as a whistle, 綺麗, "
            "きれい",
        },
        alone={
            "is dirty": "stained, stained skin, stains, stains on the skin, a stain, dirty, cloudy spots, cloudy skin, "
            "(brown|dirty|grey|yellow|dark|) (stain|stains|smudge|blemish) (in|on) the (white|skin|back|body|shoulder|"
            "head|flank), (cloudy|dirty|brown|grey) (patch|spot|mark|area|bit|smear) (on the skin|in the white|on the "
            "white|on it|), blemishes, a blemish, blotches on the skin, dirty look, looks grubby, film on the skin, "
            "film over the skin, a film on it",
            "is clean": "skin (lovely|nice|beautiful|good|great|smooth|fine) and clean (all over|everywhere|), clean skin, "
            "spotless, no stains, unblemished, (no|not a|not a single|without a|without any|without|free of) (mark|blemish|"
            "stain|smudge|flaw) (on it|on her|on him|on the skin|anywhere|at all|on this one|), no (spots|marks) or "
            "stains, nothing on the skin, clean as a whistle, not a blemish, unmarked, you could eat off (it|her|him|that|"
            "that skin)",
            "at most fair": "(pink|pinkish|reddish|blood) (flush|cast|tinge|tint|bloom|wash|) (in|on|over|to) the (white|"
            "skin), pinkish cast, pink cast, pink tinge, pink flush",
        },
        of_parts="all",
    ),
    Spoken(
        "skin_clean",
        "white, shiroji, white ground, ground, white skin",
        levels={
            "dirty": "(gone|going|all|rather|) (dirty|dingy|grubby|muddy|murky|stained|blotchy|smudgy|spotty|cloudy), has "
            "stains, full of stains, has marks, has dirty marks, looks dirty, dirty looking, grubby looking",
            "clean": "all clear, clear of everything, all clean, clean of specks, without a speck",
            "at most fair": "(gone|going|all|turning|turned|has gone) (pink|pinkish|reddish), pink, reddish, flushed, "
            "blushing, a bit pink, (has|got|with) a pink (tinge|cast|flush)",
        },
        apart=True,
    ),
    Spoken(
        "shimi_count",
        f"{_SPECKS}, sumi speck, black speck, speck, small tiny little small fleck, black fleck, freckle, fine black speck, "
        "fine speck, シミ, しみ",
        alone={
            "at least 4": "many shimi, lots of shimi, full of shimi, many specks, lots of specks, many black specks, lots "
            "of black specks, peppered, full of specks, specks all over, shimi all over, covered in specks, peppered "
            "with specks, (covered|peppered|riddled|full|dusted|plastered|dotted|dirty|spotted) (in|with|of) "
            f"({_SPECKS}|pepper), (peppered|freckled|speckled) (with black|with black all over|all over|everywhere|from "
            "head to tail), (whole|all the) (back|fish|body) (peppered|speckled|freckled), like somebody used the "
            "pepper mill, like the pepper mill went over it, like a pepper pot",
            "at least 2": "dots like pepper, peppery, a bit peppery, bits of pepper, pepper on it",
            "is 0": "no shimi, not a shimi anywhere, not a shimi, not a speck anywhere, no speck anywhere, not a single "
            "speck, no specks, no black specks, without specks, not 1 speck, no specks at all, free of shimi, free of "
            "specks, no black spots, clean of specks, not a speck, no pepper, shimi free, speck free, シミなし",
        },
        of_parts="all",
    ),
    Spoken(
        "shimi_size",
        after=("shimi_count", "shimi_places"),
        alone={
            **{
                f"is {low} mm to {high} mm": "(all|both|each|small|little|tiny|) (about|) (size of|like|(as|) (big|small|"
                f"large) as) (a|) {thing}"
                for thing, low, high in _SIZES
            },
            **{
                f"at most {high} mm": f"(all|both|each|) (no|not|none) (bigger|larger) than (a|) {thing}, (all|both|each|) "
                f"smaller than (a|) {thing}"
                for thing, _, high in _SIZES
            },
            "below 1 mm": "(all|both|each|all of them|) (smaller than|less than|finer than) 1 mm (each|)",
            "below 2 mm": "(all|both|each|all of them|) (smaller than|less than|finer than) 2 mm (each|)",
        },
    ),
    Spoken(
        "shimi_size",
        "largest speck, biggest speck, largest shimi, biggest shimi, biggest, largest, largest black speck, speck size, "
        "size of the specks, size of the largest speck, biggest of the specks, largest of them, biggest of them",
    ),
    Spoken(
        "shimi_places",
        f"{_SPECKS}, shimi, black speck, speck, small tiny little small fleck, black fleck, another speck, another black "
        "speck, specks, freckle, シミ",
        levels={
            "left_flank": "left side, down the left side, all down the left side, left side of the body",
            "right_flank": "right side, down the right side, all down the right side, right side of the body",
            "shoulder": "left shoulder, right shoulder, left of the shoulder, right of the shoulder",
        },
        of_parts="all",
    ),
    Spoken(
        "hikui",
        "hikui, raised patch, yellowish patch in the red, raised red, hi kui, red disease, (early|young|old|small|little|"
        "new) hikui, hikui (starting|started|just starting|coming|beginning|spot|patch|growing|forming|there), (bit|patch|"
        "spot|start|beginning|beginnings|touch|lump) of hikui, (raised|raised up|lifted|swollen) (red|hi) , (raised|lifted|"
        "swollen|proud) (bit|patch|spot|area|place) (in|on) the red, (yellow|yellowish) (patch|spot|bit) in the red, ヒクイ",
        alone={
            "is yes": "(red|hi) (raised|lifted|swollen|standing up|stands up|stands proud) (in places|in one place|in a "
            "spot|there)",
            "is no": "no hikui, no sign of hikui, not a trace of hikui, free of hikui",
        },
        of_parts="all",
    ),
    Spoken(
        "ginrin_scales",
        "stray ginrin, shiny scale, sparkling scale, stray shiny scale, ginrin scale, stray ginrin scale, ginrin, "
        "(glittering|glittery|sparkly|glinting|metallic|silver|silvery) scale, scale with a sparkle, scale that sparkles, "
        "scale sparkles",
        alone={"is 0": "no ginrin, no ginrin scales, no stray ginrin, no shiny scales"},
        of_parts="all",
    ),
    Spoken(
        "contrast",
        "contrast, contrast of red and white, contrast of the colours, contrast between red and white, contrast between the "
        "colours",
        levels={
            "weak": "weak, low, little, no, hardly any, without, no real, barely any, flat, poor, bad, weak",
            "at most fair": LACKING,
            "fair": "some, fair, average, moderate, medium",
            "is fair or strong": NOT_BAD,
            "strong": "strong, high, clear, excellent, sharp, jumps out, plenty of, lots of, striking, bright, clean, good, "
            "great, superb",
        },
        alone={
            "is strong": "(red and white|colours) contrast (well|nicely|beautifully|strongly), (red|colours) (stands out|"
            "jumps out) (from|against) the white",
            "is weak": "no contrast to speak, colours run together, (red and white|colours) (do not|hardly|barely|does not) "
            "contrast (much|at all|enough|), (not much|little|hardly any|no real|no) contrast (between|of) (red and "
            "white|the colours)",
        },
    ),
    Spoken(
        "presence",
        "presence, power, impact, 迫力",
        levels={
            "plain": "plain, little, no, weak, hardly any, not much, lacks, lacking",
            "nice": "nice, some, fair",
            "strong": "strong, good, great, lots of, much, loads of, plenty of, real, has, has real, got, a lot of, such",
            "imposing": "imposing, huge, enormous, massive, overwhelming",
        },
        alone={
            "is strong": "powerful, powerful fish, it has something, it has got something, presence, has presence, it has "
            "real presence, you can not miss it, grabs you, it grabs you, impressive, very impressive, impressive fish, "
            "impact, has impact, what a beauty, a beauty, beauty, a real beauty, what a fish, head turner, magnificent, "
            "lots of power, has power, draws the eye, catches the eye, eye catcher, stands out, strong presence, "
            "jumps out at you",
            "is imposing": "imposing, imposing fish, majestic, 迫力あり",
            "is plain": "no presence, you would not look twice, does not stand out",
        },
        bare={"is strong": "power"},
    ),
    Spoken(
        "impression",
        "overall impression, overall, impression overall, whole, on the whole, all in all, general impression, all round, "
        "impression, overall quality, quality overall, total impression, 総合",
        levels={
            "poor": "disappointing, poor, bad, weak",
            "fair": "fair, average, moderate, medium",
            "is fair or good": NOT_BAD,
            "at most fair": LACKING,
            "good": "good, great, a good fish, a nice fish, a good 1",
            "excellent": "superb",
        },
        alone={
            "is excellent": "top fish, super fish, fantastic fish, outstanding fish, (excellent|superb|wonderful|amazing|"
            "magnificent|incredible|exceptional|top class|first class|world class|terrific|brilliant|stunning|gorgeous|"
            "perfect) (fish|koi|kohaku|animal)",
            "at least good": "(great|cracking|quality|smashing|belting|class|proper|high class|very good|really good|"
            "splendid) (fish|koi|kohaku|animal), belter, a belter, a corker, corker, a cracker, cracker, a peach, a "
            "plum, plum, a gem, gem, a jewel, a stunner of a fish, (rest|everything else|all the rest) (is a peach|is a "
            "plum|spot on|is perfect|is lovely|is very good|is top), everything on it, has everything, has it all, it "
            "has everything, got it all, got everything, the whole package, the full package",
            "is poor": "poor fish, nothing to like, bad fish, (terrible|awful|dreadful|horrible|hopeless|ugly|pathetic) "
            "(fish|koi|kohaku)",
            "is fair": "average fish, ordinary fish, average, an average fish, (middling|run of the mill|mediocre|bog "
            "standard|middle of the road|everyday) (fish|koi|kohaku|), an average sort of fish",
        },
    ),
    Spoken(
        "interest",
        "pattern, interest, design, interest of the pattern, pattern appeal, appeal, marking, markings, 模様",
        levels={
            "plain": "plain, dull, boring, simple, poor, uninteresting, nothing special, no, weak, 平凡",
            "mild": "everyday, ordinary, average, mild, common, usual, standard, so so",
            "marked": "interesting, good, appealing, pretty, attractive, nice, pleasing, lovely, marked, fine, 面白い",
            "striking": "striking, eye catching, very interesting, stunning, exciting, bold, unusual, remarkable, special, "
            "beautiful, very good, great",
            "unique": "unique, one of a kind, never seen, unseen, 独特",
        },
        alone={
            "is plain": "plain, boring, dull pattern, nothing special, nothing special pattern, plain as can be, not the "
            "best pattern, nothing remarkable, nothing to remember, (boring|plain|dull pattern|dull) (as (a carpet|a "
            "bus|a brick|a post|mud|a board|can be|dishwater|ditchwater|a wall|a brick|they come)|to look at), (no|"
            "nothing of a|without) (spark|charm|life|interest|appeal|character) (in it|to it|in the pattern|to the "
            "pattern|) (at all|), leaves me cold, nothing to (look at|write home about), nothing (happening|going on) "
            "in (it|the pattern|that pattern), (pattern|it|) does nothing for me, (flat|lifeless|tired|sleepy|samey) "
            "pattern, pattern leaves me cold, pattern (is|) (flat|lifeless|sleepy|samey|dull|boring|plain|nothing "
            "special)",
            "at most mild": "not interesting, uninteresting, not an interesting pattern, everyday pattern, hardly a "
            "pattern, not much of a pattern, no design, (everyday|ordinary|common|standard|average|run of the mill|bog "
            "standard|middle of the road|usual|plain sort of) (pattern|design), (i have|have|we "
            "have|) (seen|had) (a 100|100|a 1000|1000|hundreds|plenty|lots|dozens) (of (those|them|these)|like (it|"
            "that)), common as (muck|mud|they come), pattern i have seen (before|a 100 times)",
            "is unique": "really special, very special, something special, unique, one of a kind, never seen 1 like it, "
            "never seen one like it, never seen anything like it, unlike any other, nothing like it (in the tub|here|), "
            "1 in a (1000|100|million)",
            "is striking": "striking, eye catching, (stunning|amazing|gorgeous|cracking|terrific|wonderful|superb|"
            "brilliant|fantastic|show stopping) (pattern|design|markings), (a|real|a real|proper|) (stunner|show "
            "stopper|showstopper|knockout|jaw dropper), stops (you|me) (dead|in your tracks|)",
            "at least marked": "(pretty|nice|interesting|attractive|smart|handsome|appealing|lively|elegant|pleasing|sweet|"
            "charming|good looking) (pattern|design|markings) (for a (lad|boy|girl|tub|pond)|otherwise|that|), this 1 "
            "is (pretty|a pretty 1), (pretty|attractive|handsome|fun|good looking|appealing|eye catching) (fish|thing|"
            "little fish|little thing|koi|looking fish|1) (otherwise|apart from that|all the same|), handsome "
            "otherwise, (pattern|design) (is|) (a good 1|a nice 1|interesting|pretty|attractive|appealing|fun|lively|a "
            "pretty 1|easy on the eye), good interest, interest good, (catches|draws|pulls) (your|my) eye, easy on the "
            "eye, (a|bit of a|real|) (looker|charmer|beauty of a pattern|crowd pleaser), (i|) (love|like) (the|this|"
            "that) pattern, (full of|has) (character|charm), has something (about it|), (something|a something) about "
            "(it|her|him), gives (it|her|him) (a face|character|charm|some character), pleasing to look at, pretty to "
            "look at",
        },
    ),
    Spoken(
        "finish",
        "finish, skin finish, 仕上がり",
        beside="hi, colour, beni, red",
        levels={
            "early": "early, unfinished, not finished, not finished yet, far from finished, a long way from finished, not "
            "finished by a long way, nowhere near finished, still opening, still unfinished, not done, not done yet",
            "near": "nearly finished, almost finished, nearly done, almost done, close to finished",
            "finished": "finished, complete, done, already finished, fully finished, all finished, fully developed, all "
            "there now, all there, all done, as finished as it gets",
            "past": "past, past its best, going over, gone over",
        },
        alone={
            "is finished": "very finished, fully finished, very finished already, finished fish, a finished fish, (finished "
            "already|already finished) (that|the|this) (red|colour|hi|beni)",
            "is early": "unfinished, not finished, not yet finished, far from finished, still early, tategoi type, still "
            "unfinished, nowhere near finished, a long way from finished, not finished by a long way, still opening up, "
            "still opening",
            "is past": "past its best, going over, past it",
            "is near": "nearly finished, almost finished",
        },
        bare={"is finished": "finished, already finished, finished already"},
    ),
    Spoken(
        "stability",
        "stability, hold, holding, holding power",
        levels={"poor": "poor, doubtful, bad, questionable", "fair": "fair", "good": "good, sure, safe"},
    ),
    Spoken(
        "balance_left_right",
        "left right balance, balance of left and right, balance left to right",
        alone={
            "at least 0.8": "both sides the same, both sides alike, both sides equal, left and right alike, left and right "
            "equal, even left and right, left and right balanced, same on both sides, left and right the same, even on "
            "both sides, sides alike, sides even",
        },
    ),
    Spoken(
        "balance_front_rear",
        "front rear balance, balance of front and rear",
        alone={
            "at least 0.8": "front and rear balanced, front and rear alike, even front to back, balanced front to back, "
            "front and rear even"
        },
    ),
    Spoken(
        "lustre",
        alone={
            "is dull": "skin (is|) like (paper|cardboard|chalk) (not like (a|) (pearl|silk)|)",
            "at least good": "skin (looks|is|) (all|quite|really|) wet",
        },
        bare={"at least good": "teri, has teri, teri there, good teri"},
    ),
    Spoken("shimi_places", "black point, small black point", of_parts="all"),
    Spoken("shimi_count", "black point, small black point", of_parts="all"),
    Spoken(
        "impression",
        alone={
            "is fair": "(all|everything) (is|) (middle|middling|average)",
            "at least good": "very good (this|this 1|that 1), (top|high|good|very good|best|excellent) quality (fish|koi|"
            "kohaku)",
            "at most fair": "nothing right with (it|her|him) (either|)",
        },
        bare={"is excellent": "first class, world class, top class"},
    ),
    Spoken("presence", alone={"at least strong": "(very|rather|really|quite|) powerful (effect|impact|impression)"}),
    Spoken(
        "balance",
        alone={
            "is good": "(red|patches|pattern|steps) (sit|sits|lie|lies) (good|well|nice|nicely) on (the|her|his|) back, "
            "(they|it|all|patches|steps) (all|) (sit|sits|lie|lies) (nicely|well|beautifully|) in balance, (steps|"
            "patches) (are|) (even|evenly spaced|evenly placed)",
            "at most fair": "(first|second|third|last) (1|patch|step) (sits|lies|is) too far (back|forward|down)",
        },
    ),
    Spoken(
        "finish",
        alone={"is finished": "finished (like|as) a (supper|dinner|) plate (already|)"},
    ),
    Spoken("pond", "pond, from pond, out of pond, 池"),
    Spoken("bloodline", "bloodline, from the line, 血統"),
    Spoken("spawning", "spawning"),
    Spoken("batch_name", "batch"),
    Spoken("sorter", "sorter, sorted by, looked at by"),
    Spoken("water_temperature", "water, water temperature, temperature, 水温"),
    Spoken("age", "age, old"),
    Spoken(
        "lustre",
        alone={
            "at least good": "now that is (what i call|) skin, (look at|) that (wet|) (light|glow) on it, wet (light|look) "
            "on it, "
            "(glow|shine|light|lustre) (comes|coming) from (underneath|within|inside|below|deep down), skin (looks|) "
            "moist (looking|), moist (looking|) skin, (gleam|shine|glow|gleams|shines|glows) like (a|) shell",
            "at most fair": f"(skin|white|) (a little|a bit|bit|slightly|rather|somewhat|) (lacking in|short of) {_SHINE}, "
            f"(shiny but|) (thin|superficial|shallow|cheap) {_SHINE}, coarse (in the|) skin, skin coarse, coarse scales "
            "coarse skin",
        },
    ),
    Spoken(
        "shimi_count", alone={"at least 2": "(black|) pepper on (good|nice|clean|fine|lovely|the|that) (skin|white)"}
    ),
    Spoken(
        "shimi_count",
        after=("shimi_count", "shimi_places"),
        alone={"is 1": "(just|only|) a single 1, only 1, just 1, just the 1, only the 1, 1 only"},
    ),
    Spoken(
        "interest",
        alone={
            "at most mild": "nothing in the way of pattern, (nothing|not a thing) (excites|exciting|to excite me), nothing "
            "exciting about (it|the pattern), (fine|good|nice) quality (and|but) no interest",
            "at least marked": "pattern tempting, tempting pattern",
        },
    ),
    Spoken(
        "finish",
        alone={
            "is finished": "already at (his|her|its) best, finished at (1|2) (year|years), (already|) finished (already|"
            "early|as a tosai|as a nisai)"
        },
    ),
    Spoken("impression", bare={"is fair or good": "decent, decent fish, a decent fish"}),
    SpokenTogether("no (fault|faults) to find, nothing offends, nothing to fault, no fault i can find", "nothing"),
    Spoken(
        "lustre",
        "hada, skin texture, texture, texture of the skin, surface, coat, skin on (it|her|him|this|this 1), skin "
        "underneath, shine of it",
        levels={
            "superb": "very strong, very high, varnished, lacquered, as if (varnished|lacquered|polished|waxed), blinding, "
            f"out of this world, unbelievable, like (a|an|) {_LIKE_GLASS}, as {_LIKE_GLASS}, smooth as {_LIKE_GLASS}",
            "good": "right, there, quality, glistening, glistens, sparkles, silky, satiny, satin, pearly, wet looking, "
            "moist, oily, fine grained, fine and shiny, thin and shiny, thin shiny, thin and fine, fine and thin, "
            "smooth and shiny, soft and shiny, waxy, creamy smooth, velvety, supple, healthy looking, the best thing "
            "about (it|her|him), its best point, her best point, his best point, tight, fresh, living, young, nicely "
            "there, well there, there already",
            "fair": "normal, usual, ordinary, okay ish, ok ish",
            "at most fair": "rough, rough looking, roughish, coarse, coarse looking, grainy, gritty, bumpy, sandpapery, "
            "arai, dry looking, on the rough side, on the dull side, on the dry side, on the coarse side, could be "
            "(shinier|better), needs polish, dullish, thick and dull, could do with a bit more life, could do with more "
            "life, wants more life, needs more life, needs some life, could do with some life, washed, washed out, a "
            "bit washed",
            "dull": "matte, leathery, dusty, dusty looking, floury, nashi, flattish, dried out, papery, like (a|an|) "
            f"{_LIKE_LEATHER}, as (paper|cardboard|leather|sandpaper), like (it is|it has been|it was) dusted with "
            "flour",
        },
        alone={
            "is superb": "(almost|nearly|) (like|as if|as though|looks as if|looks like|looks) (it|she|he|) (is|has|had|"
            f"was|) (just|) (been|) (freshly|newly|) {_COATED}, skin as if {_COATED}, (freshly|newly|just) {_COATED}, "
            "(skin|it|she|he|) (shines|gleams|glows|glitters|shining|shine|shine on it|gloss|glow) like (a|an|) "
            f"{_LIKE_GLASS}, (gloss|lustre|teri|tsuya) (on it|) like (a|an|) {_LIKE_GLASS}, shine on it like (a|an|) "
            f"{_LIKE_GLASS}, (you can|you could|could|can|i could) (shave|see your face|see yourself|see myself|see my "
            "face|see your reflection|do your hair) in (it|that|that skin|the skin|her|him), like oil on water, "
            "(positively|absolutely|simply|truly|really) (gleams|gleaming|glows|glowing|shines), (shines|gleams|glows) "
            "(even|) in the (shade|dark), (blinding|dazzling|unbelievable|tremendous|very high|very strong|"
            f"extraordinary) {_SHINE}, {_SHINE} (is|) (unbelievable|blinding|dazzling|out of this world|tremendous), "
            "(silk|satin|pearl|porcelain) skin, (you|i) could (comb|do) your hair in (it|that|that skin), like looking "
            "(in|into) (a|the) mirror, (you would|you|would) think (somebody|someone|they) (had|) (oiled|varnished|"
            "polished|waxed|lacquered|buttered) (it|her|him|this 1)",
            "at least good": f"(look at|just look at|would you look at|see) (the|that|this) (skin|{_SHINE}) (on (that|it|"
            f"her|him|this)|), the {_SHINE} on (this|that), (what a|what) {_SHINE} (on|to) (it|her|him|this one), "
            f"quality skin, (glossy|shiny) coat, (lovely|nice|good) wet look, glistens, {_BODY} glistens, sparkles (in "
            "the (sun|light)|), (oily|soft|satin|silky|pearly|pearl|deep|wet|warm|gentle|subtle|quiet|mother of pearl) "
            f"{_SHINE}, silky skin, smooth and shiny, (fine|thin) (and|) (fine|shiny|glossy|smooth) skin, skin (is|) "
            "(fine|smooth|thin) (and|) (shiny|glossy|fine), fine skin, skin fine, (love|like|i love|i like|i do like) "
            "(the|that|this|her|his|its) skin, skin is (the best thing|the best part|the best point|its best point|what "
            "i like) (about (it|her|him)|on (it|her|him)|), skin underneath is (good|fine|nice), good skin (under|"
            "underneath) (it|that|), (glows|gleams|shines|glitters) (under|in) the (lamp|light|sun), (you can see|see) "
            f"(the|that|its) {_SHINE} from (the door|here|over there|across the yard), (nice|good|lovely|real) "
            "(lacquer|varnish|glaze) (on|to) (it|her|him|this one|the skin), (1 of|among) the (better|best|nicer|finer) "
            "skins, (a|) (shiny|glossy|gleaming) (1|little thing|little fish), (teri|tsuya) (comes|coming) from "
            "(underneath|within|inside|below|deep down), (gleam|gleams|glow|glows|shine|shines) like (a|) (wet|) shell",
            "at most fair": "(rough|coarse|grainy|gritty|sandpapery|arai) (looking|) (skin|hada), hada arai, (skin|hada|"
            "texture) (is|) (a bit|a touch|a little|rather|slightly|) (rough|coarse|grainy|gritty) (looking|to look at|"
            "), (lacks|short of|wants|needs) (some|a bit of|) sparkle",
            "is dull": "(matte|matt) (skin|finish|all over|), (tsuya|teri) (nashi|none|no), leathery (skin|), dusty (skin|"
            "looking), floury skin, (skin|) like (it is|it has been|it was) dusted with flour, lost (its|her|his|all "
            f"its|all) {_SHINE}, (no|without|not a) sparkle (to it|in it|in the skin|at all|), (dry|papery|dried out) "
            "(skin|looking skin), (no|not any|without) life in (the|that|its) skin, (somebody|someone|they) forgot to "
            "polish (this one|it|her|him), (could do with|needs|wants) (a polish|polishing|a good polish), dull as (a|) "
            "(doormat|lead), (looks|looking) (a bit|rather|quite|) dry, skin (without|with no|with hardly any) (any|) "
            "(life|shine|lustre|sparkle)",
        },
        bare={
            "at least good": "wet looking, pearly, satiny, silky, smooth and shiny, quality skin",
            "is dull": "matte, leathery, dusty, dusty looking, lost its shine",
            "at most fair": "dullish, on the dull side, could be shinier, a little flat",
        },
        of_parts="all",
    ),
    Spoken(
        "skin_clean",
        levels={
            "dirty": "discoloured, muddied, murky, grimy, grubby looking, dirty looking, filthy, sooty, smeared, dingy, "
            f"streaked, like (a|an|) {_LIKE_DIRT}",
            "at most fair": "reddened, bloodshot, red looking, flushed pink, blushed, hazy, a bit grubby, unclean, could be "
            "cleaner, not clean, marked a bit, blotched",
            "clean": "perfectly clean, without fault, without a fault, without faults, very clean, so clean, really clean, "
            "free of blemishes, without blemishes",
        },
        alone={
            "is dirty": f"{_DIRTY} (in|on) the (white|skin|shiroji), (small|) (dark|brown|dirty) (shadow|smudge|cloud|"
            "smear|blotch) (on|over|behind|in|along) the (back|shoulder|head|side|white|flank|left|right|left side|"
            "right side), a shadow on the white, discoloured (patch|spot|area|bit) (on|behind|along) the (back|"
            "shoulder|head|side|flank|belly|tail), (brown|dirty|grey|yellow|dark) (stain|smudge) on the (side|left "
            "side|right side), like it (is|has been) in (coal|the coal|soot|the mud), (some|a bit of|a little|) (brown|"
            "grey|yellow|dark|green) (staining|stains|smudging|discolouration) (on|in|over|along) the (flanks|flank|"
            "sides|side|back|shoulders|shoulder|white|skin|belly|head), (brownish|greyish|yellowish|dirty) (smear|"
            "smudge|stain|blotch|patch) (on|over|along|across) the (left|right|) (shoulder|side|flank|back|head|white), "
            "(some|a bit of|a little|) (dirt|muck|grime) (in|on) the (white|skin|shiroji)",
            "at most fair": f"{_FLUSHED} (on|at|along|round|under|near|by|all over|all along) the (belly|underside|vent|tail "
            f"root|root of the tail|body|chin|throat|fin roots|fin joints|gills), {_PINK} (from|after|off) (the|) "
            f"{_TRIP}, skin {_PINK} (from|after|off) (the|) {_TRIP}, skin (is|) (flushed|blushed), stress pink, stress "
            "(red|redness), pink underneath, (small|tiny|little|slight|minor|) (mark|flaw|scuff) (on|in) the (skin|"
            "white|back|side|shoulder|flank), (skin marks|skin mark), marks on (the|its) skin, (red|pink|pinkish) "
            "(blotches|marks|patches|streaks|flush|tinge|spots) (on|along|over) the (belly|flank|flanks|sides|skin|"
            f"white) from (the|) {_TRIP}, (green|greenish|brown|brownish) (tinge|cast|tint|film|look) from the (mud|mud "
            f"pond|pond|algae|water), {_PINK} from (the|) {_TRIP} (ride|trip), (flushed|blushed) (pink|red|) (all|) "
            "(underneath|along the belly|on the belly), (faint|slight|small|light|tiny) (brown|grey|yellow|dirty) "
            "(mark|spot) (on|behind|near) the (left|right|) (flank|side|back|shoulder|head|cheek|belly), (a few|some|"
            "several|odd|the odd|1 or 2|a couple of) (blemishes|blemish), (a|) couple of (little|small|tiny|) marks "
            "(on|along|behind) the (shoulder|side|flank|back|head|left|right)",
            "is clean": "(clean|spotless|immaculate) (all over|everywhere|from head to tail|from nose to tail), no (dirt|"
            "grime|muck) (on it|in it|in the white|anywhere|), no (blemish|blemishes) (anywhere|at all|to be seen|), "
            "nothing (to see|wrong) (on|with) the skin, (immaculate|flawless|spotless|unmarked) skin, skin (perfectly|"
            "spotlessly|absolutely) clean, no spots no stains, no (stains|marks|blemishes) (to speak of|at all|that i "
            "can see)",
        },
        bare={
            "is dirty": "grubby, grubby looking, muddy, muddy looking, dirty looking",
            "at most fair": "flushed, pink from stress, unclean, a small blemish, small blemish",
            "is clean": "immaculate",
        },
        of_parts="all",
    ),
    Spoken(
        "shimi_count",
        "(ink spot|ink dot|ink splash|ink splatter|speck of (ink|soot|dirt|coal)|soot speck|fly speck|coal speck|mole|"
        "beauty spot|(dark|black) (speckle|scale|fleck|freckle|pinprick|point)|pinprick of black|black pinprick|(bit|spot|"
        "dot|touch) of black)",
        alone={
            "at least 2": "(sprinkled|flecked) with (black|pepper|ink|soot), ink (spots|splashes|flicks), (some|a few|"
            "little|tiny|odd|) bits of black (in the white|on the back|on it|), (like|looks like|as if) (somebody|"
            "someone|you|they|i) (flicked|splashed|spilled|dropped) (ink|pepper|soot|coal dust) (at it|on it|over it|at "
            "her|all over it|all over|), (like|looks like|as if) (somebody|someone|they) peppered (it|her|him), "
            "(somebody|someone) (is|has been|was) at the pepper (pot|mill|), like (fly (dirt|specks|muck)|soot|pepper) "
            "(on it|all over it|on the white|on the back), (black|fine black) (pepper|dust|soot) (on|all over|over|"
            "along) the (back|white|shoulder|head|side), (a|some|) (peppering|dusting|sprinkling|speckling) of (black|"
            "pepper|shimi|sumi) (round|around|on|over|along|behind) the (gills|head|back|shoulders|shoulder|cheeks|"
            "nose|tail|sides), (a bit|bit|rather|slightly|) peppery (round|around|on|over|along|behind|about) the "
            "(shoulders|shoulder|head|gills|back|cheeks|nose), (freckled|speckled|sprinkled|spotted) (all over|"
            "everywhere) with black",
            "is 0": "(shimi|speck) nashi, speckless, not 1 shimi, no (shimi|specks|speck) (yet|to be seen|that i can see)",
        },
        of_parts="all",
    ),
    Spoken(
        "shimi_places",
        "(ink spot|ink dot|ink splash|ink splatter|speck of (ink|soot|dirt|coal)|soot speck|mole|beauty spot|(dark|black) "
        "(speckle|scale|fleck|freckle|pinprick|point)|pinprick of black|black pinprick|(bit|spot|dot|touch) of black)",
        of_parts="all",
    ),
    Spoken("ginrin_scales", "(kin|glitter|glittering) scale, single ginrin scale"),
    Spoken(
        "finish",
        "ripeness, maturity, shiage",
        levels={
            "finished": "mature, ripe, fully ripe, fully mature, well finished, nicely finished, properly finished, "
            "beautifully finished, baked, cooked, baked already",
            "early": "immature, unripe, raw, still raw, nowhere near, young",
        },
        alone={
            "at least finished": "(red|hi|beni|colour|kiwa|it|she|he|) (finished|finishes|done|ripe|mature|in|closed) (far "
            "|much |way |a bit |)too (early|soon|quick|fast|quickly), (red|hi|beni|colour|kiwa|finish) (far |much |a "
            "bit |)too early, too early (kiwa|finish|finished), (red|hi|beni|colour) (finished|done|ripe|closed) early, "
            "(an|) early (finisher|developer), hayajiage, (mature|ripe) (red|beni|hi|colour), (the|) (deep|) (red|beni|"
            "hi) (is|) (sort of|kind of|already|all|very|) (mature|ripe|fully developed) (for (its|her|his) age|), (as|"
            ") good as (it|she|he) will ever be, finished at (1|2|a year)",
            "at most middle": "(red|hi|beni|colour) not (tight|set|closed|firm|there|through|in) (yet|at all), (red|hi|"
            "beni|colour) (is|) (still|) (raw|immature|unripe|green|young), (young|raw|unripe|immature) (red|beni|hi|"
            "colour), half finished, (red|hi|beni|colour) (still|) (opening|developing|half done|half there|loose), "
            "slow (finisher|to finish), (colour|red|beni|hi) not (yet there|yet through|yet tight), (beni|red|hi|"
            "colour) (is|) (still|yet) soft, (beni|red|hi|colour) not (hard|firm|hardened) (yet|), (red|beni|hi|colour|"
            "it|this one) (needs|wants) (another|one more|a|a few more|more) (year|years|season|summer|time|winter) (to "
            "finish|), not (nearly|anywhere near|anything like|remotely|close to) finished",
            "at least near": "(red|hi|beni|colour) (is|) (tight|tightened|tightened up|all tight|nice and tight|set|firm), "
            "(tight|firm) (red|hi|beni)",
        },
        bare={
            "at most middle": "half finished, immature, still raw, beni not yet, red not yet, colour not yet",
            "at least finished": "ripe, finished too early, finished early, too early finished",
        },
    ),
    Spoken(
        "contrast",
        levels={"strong": "crisp, good and strong, terrific, powerful, vivid"},
        alone={
            "is strong": "colours stand out, (crisp|clean|sharp|good|strong) contrast, (red|it) (jumps|leaps|pops|stands) "
            "(off|out of|out from|out on) the white, red (against|on) (the|) white (is|) (good|strong|striking|lovely|"
            "works)",
        },
    ),
    Spoken("lustre", alone={"at most good": wished("skin|shine|lustre", "shinier|glossier|brighter|better|livelier")}),
    Spoken(
        "lustre",
        after=("lustre", "skin_clean", "shiroji"),
        bare={
            "is dull": "like (an old boot|sandpaper|cardboard|old leather)",
        },
    ),
    Spoken(
        "skin_clean",
        after=("skin_clean", "lustre", "shiroji"),
        bare={"is dirty": f"(looks|) like (a|an|) {_LIKE_DIRT}"},
    ),
    Spoken(
        "lustre",
        "skin grain, grain, grain of the skin",
        levels={"good": "fine, very fine, close, tight, silky", "at most fair": "coarse, rough, open"},
        apart=True,
    ),
    Spoken(
        "lustre",
        alone={
            "at least good": "wet looking (even|) (out of|out) (the|) water, (luminous|radiant|lustrous|gleaming) "
            "(skin|fish|1|all over|"
            "this 1|body)"
        },
        bare={"at least good": "luminous, radiant, lustrous"},
    ),
    Spoken(
        "shimi_count",
        "(pepper|ink|soot) (spot|dot|speck|mark), (grey|greyish|faint|weak) (shimi|speck|speckle)",
        of_parts="all",
    ),
    Spoken(
        "shimi_places",
        "(pepper|ink|soot) (spot|dot|speck|mark), (grey|greyish|faint|weak) (shimi|speck|speckle)",
        of_parts="all",
    ),
    Spoken(
        "shimi_count",
        alone={
            "at least 4": "(crop|field|load|mass|heap|constellation|army|plague|rash|whole lot|swarm|cloud|galaxy|host) of "
            "(shimi|specks|"
            "black specks|pepper|black dots), shimi (crop|galore|field|party|everywhere|all over the place)"
        },
    ),
    Spoken(
        "shimi_size",
        after=("shimi_count", "shimi_places"),
        bare={
            "below 2 mm": "tiny, very small, minute, (pin|pinhead|pinprick|pin prick|pepper|dust|grain of sand|poppy seed) "
            "(size|sized), "
            "really tiny, ever so tiny, tiny ones, only tiny"
        },
    ),
    Spoken(
        "lustre",
        alone={
            "at least good": f"(gives|throws|giving) off (a|) (good|nice|lovely|real|strong|) {_SHINE}, skin (on "
            "(it|her|him|this) |)you could (ice a "
            "cake with|eat off|frame|bottle|sell by the yard|write home about)",
            "at most fair": "(skin|it|she|he|white|) (does not|do not|hardly|barely) (shine|glow|gleam|sparkle) (much|a "
            "lot|very much|enough|as it "
            "should|like it should|at the moment|yet)",
        },
    ),
    Spoken(
        "skin_clean",
        alone={
            "at most fair": f"{_BODY} (has|with|shows|got) (a|) (slight|faint|little|bit of a|bit of|pink|rosy|) "
            "(blush|flush|rosy tint|rosiness|pinkness|"
            f"redness|rosy glow) (to it|in it|on it|), {_BODY} (blushes|blushing|flushes|went pink|went red|gone rosy)",
        },
    ),
    Spoken(
        "shimi_count",
        alone={
            "at least 4": "(peppered|speckled|freckled|spattered|dotted|flecked) (round|around|on|along|over|behind|about|all "
            "over|across) the (collar|"
            "neck|shoulder|shoulders|head|back|nose|cheeks|flanks|sides|gills|tail|white)",
        },
    ),
    Spoken(
        "lustre",
        levels={
            "is fair or good": "starting, just starting, coming, coming up, coming on, on its way, beginning, building, "
            "waking up, soft, soft but good"
        },
    ),
    Spoken(
        "skin_clean",
        alone={
            "is clean": "(not a|no|not 1|not a single|without a) (mark|blemish|stain|flaw) (on|in) the (white|shiroji) "
            "(anywhere|from end to "
            "end|from head to tail|from nose to tail|)"
        },
    ),
    Spoken("shimi_count", "(kuro|kuroi) shimi", of_parts="all"),
    Spoken("shimi_places", "(kuro|kuroi) shimi", of_parts="all"),
    Spoken("lustre", alone={"is dull": "dull as (dishwater|ditchwater|mud|a brick|an old boot) (that|this|the|) skin"}),
    Spoken("shimi_count", "(grey|dark grey|greyish) (dot|spot|point|dots)", of_parts="all"),
    Spoken("shimi_places", "(grey|dark grey|greyish) (dot|spot|point|dots)", of_parts="all"),
)
"""What is said of the skin, of the whole, and of the look."""
