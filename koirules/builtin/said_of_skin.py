"""How sorters speak of the skin, of the whole fish and of the look itself. Common practice, no source; from memory."""

from __future__ import annotations

from koirules.builtin.praise import FAIR, GOOD, LACKING, NOT_BAD, POOR, SUPERB, short_of
from koirules.vocabulary.phrases import Saying, Spoken

_SHINE = "(shine|lustre|gloss|sheen|glow|teri|tsuya|gleam|polish|shimmer|life in the skin|life to the skin|skin shine)"
_BODY = "(skin|white|it|she|he|this one|whole fish|fish)"
_GLASSY = (
    "(glass|silk|porcelain|lacquer|varnish|a mirror|mirror|satin|wet paint|china|pearl|polished stone|wet silk|enamel|"
    "polished glass|wet glass|fresh paint|a new car|new paint|a polished apple|marble|a wet stone|glaze|ice|crystal)"
)

SAID_OF_SKIN: tuple[Saying, ...] = (
    Spoken(
        "lustre",
        "lustre, tsuya, shine, gloss, sheen, skin, skin shine, skin lustre, skin quality, skin gloss, teri, "
        "glow, polish, gleam, "
        "quality of the skin, quality of skin, shine on it, shine of the skin, 艶, ツヤ, 照り",
        levels={
            "dull": f"dull, matt, flat, weak, dead, lifeless, gone, missing, dull and flat, dull all over, "
            "like paper, like cardboard, like chalk, like felt, like sandpaper, tired, dry, asleep, without life, "
            f"dull as ditchwater, chalky, {POOR}, ない",
            "fair": f"some, little, {FAIR}",
            "is fair or good": NOT_BAD,
            "at most fair": f"{LACKING}, "
            + short_of("shiny|glossy|bright|lively", "shinier|glossier|brighter|livelier")
            + ", not shiny, not the shiniest, not much",
            "good": "shiny, shining, glossy, bright, strong, well, healthy, glowing, alive, lively, polished, gleaming, "
            f"has life, full of life, plenty of, lots of, a lot of, loads of, with life, {GOOD}, 良い",
            "superb": f"brilliant, like {_GLASSY}, like wet {_GLASSY}, smooth as (glass|silk), very shiny, dazzling, "
            f"very glossy, really shiny, mirror like, like it is (varnished|lacquered|wet|polished), sparkling, sparkle, "
            f"{SUPERB}, 極上",
        },
        alone={
            "is dull": "hardly any shine, hardly any lustre, hardly any gloss, hardly shines, little shine, "
            "dull and flat, flat and dull, dull, dull skin, no shine, no shine at all, no lustre, "
            "without lustre, no gloss, dull as paper, "
            f"({_BODY} (has|have|got|has got|with|) |)(no|not any|without|without any|hardly any|no real|barely any|not a bit of|"
            f"little|very little|zero|lacks|lacking|lack) {_SHINE} (at all|to speak|to it|whatsoever|on it|left|in it|), "
            f"{_SHINE} (gone|missing|absent|none), skin (does not|hardly|do not) (shine|glow|gleam), "
            f"does not (shine|glow|gleam), "
            "skin without life, no life to the skin, skin has no life, "
            "matt, 艶なし",
            "at most fair": f"not (much|a lot of|enough|a great deal of) {_SHINE}, "
            f"could do with (more|some|a bit more) {_SHINE}, "
            f"not shiny",
            "is good": "high gloss, good gloss, shiny, shining, glossy, good shine, shines nicely, shines, shines well, "
            f"({_BODY} |)(has|got|has got|have|with) (a|some|that|a good|a nice|a lovely|good|nice|real|plenty of|) {_SHINE} "
            "(on it|to it|about it|), "
            f"(good|nice|lovely|fine|great|a|some|healthy|) {_SHINE} (on|to) (it|her|him|this one|the skin|the white|that skin), "
            f"(plenty|lots|loads|a lot) of {_SHINE}, {_BODY} (shines|glows|gleams), glows, glowing, polished, "
            f"shiny all over, "
            "shines all over, skin has life, life in the skin",
            "is superb": "skin like glass, like glass, skin like silk, like varnish, shiny like lacquer, like "
            "lacquer, varnished, skin like porcelain, "
            "porcelain skin, like porcelain, silky, like silk, gleams like silk, shines like silk, "
            "gleams like glass, shines like "
            "glass, shines like a mirror, "
            f"superb skin, ({_BODY} |)(shines|gleams|glows|looks|shining) like {_GLASSY}, wet porcelain, "
            f"(like|) {_GLASSY} skin, "
            "like (a mirror|wet paint|polished glass|satin|enamel|fresh paint|wet glass), gleaming, gleams, mirror finish, "
            f"what a (skin|{_SHINE}), what skin, skin sparkles, "
            f"(superb|fantastic|amazing|brilliant|dazzling|incredible|wonderful|excellent|terrific) {_SHINE}",
        },
        of_parts=True,
    ),
    Spoken(
        "skin_clean",
        "skin, cleanness of the skin, 肌",
        levels={
            "dirty": "dirty, stained, cloudy, blotchy, unclean, spotty, not clean, grubby, messy, blemished, "
            "marked, smudgy, "
            "full of marks, full of stains, covered in marks, 汚い",
            "at most fair": "pinkish, pink, a bit pink, flushed, reddish, pink tinged, patchy, a bit dirty, not spotless",
            "fair": "fairly clean",
            "clean": "clean, clear, smooth, spotless, pure, unmarked, flawless, without a mark, without marks, unblemished, "
            "without a blemish, without a stain, without stains, immaculate, you could eat off, that you could eat off, "
            "i could eat off, free of marks, free of stains, clean all over, clean everywhere, clean as a whistle, "
            "綺麗, きれい",
        },
        alone={
            "is dirty": "stained, stained skin, stains, stains on the skin, a stain, dirty, cloudy spots, cloudy skin, "
            "(brown|dirty|grey|yellow|dark|) (stain|stains|smudge|blemish) (in|on) "
            "the (white|skin|back|body|shoulder|head|flank), "
            "(cloudy|dirty|brown|grey) (patch|spot|mark|area|bit|smear) (on the skin|in the white|on the white|on it|), "
            "blemishes, a blemish, blotches on the skin, dirty look, looks grubby, film on the skin, film over the skin, "
            "a film on it",
            "is clean": "clean skin, spotless, no stains, unblemished, "
            "(no|not a|not a single|without a|without any|without|free of) (mark|blemish|stain|smudge|flaw) "
            "(on it|on her|on him|on the skin|anywhere|at all|on this one|), no (spots|marks) or stains, "
            "nothing on the skin, "
            "clean as a whistle, not a blemish, unmarked, "
            "you could eat off (it|her|him|that|that skin)",
            "at most fair": "(pink|pinkish|reddish|blood) (flush|cast|tinge|tint|bloom|wash|) (in|on|over|to) the (white|skin), "
            "pinkish cast, pink cast, pink tinge, pink flush",
        },
        of_parts=True,
    ),
    Spoken(
        "skin_clean",
        "white, shiroji, white ground, ground, white skin",
        levels={
            "dirty": "(gone|going|all|rather|) (dirty|dingy|grubby|muddy|murky|stained|blotchy|smudgy|spotty|cloudy), "
            "has stains, "
            "full of stains, has marks, has dirty marks, looks dirty, dirty looking, grubby looking",
            "at most fair": "(gone|going|all|turning|turned|has gone) (pink|pinkish|reddish), pink, reddish, flushed, blushing, "
            "a bit pink, (has|got|with) a pink (tinge|cast|flush)",
        },
        apart=True,
    ),
    Spoken(
        "shimi_count",
        "shimi, sumi speck, black speck, speck, small tiny little "
        "small fleck, black fleck, "
        "freckle, fine black speck, fine speck, シミ, しみ",
        alone={
            "at least 4": "many shimi, lots of shimi, full of shimi, many specks, lots of specks, many black specks, lots "
            "of black specks, peppered, "
            "full of specks, specks all over, shimi all over, covered in specks, peppered with specks",
            "is 0": "no shimi, not a shimi anywhere, not a shimi, not a speck anywhere, no speck anywhere, "
            "not a single speck, no specks, no black specks, without specks, not 1 speck, no "
            "specks at all, free of shimi, free of specks, "
            "no black spots, clean of specks, not a speck, シミなし",
        },
    ),
    Spoken(
        "shimi_size",
        "largest speck, biggest speck, largest shimi, biggest shimi, biggest, largest, largest black speck, speck size",
    ),
    Spoken(
        "shimi_places",
        "shimi, black speck, speck, small tiny little "
        "small fleck, black fleck, "
        "another, another speck, another black speck, another 1, specks, freckle, シミ",
    ),
    Spoken("hikui", "hikui, raised patch, yellowish patch in the red, raised red, hi kui, red disease, ヒクイ"),
    Spoken(
        "ginrin_scales",
        "stray ginrin, shiny scale, sparkling scale, stray shiny scale, ginrin scale, stray ginrin scale",
    ),
    Spoken(
        "contrast",
        "contrast, contrast of red and white, contrast of the colours",
        levels={
            "weak": "weak, poor, low, little, bad, no",
            "fair": "fair, average, some",
            "strong": "strong, good, high, great, clear, nice, excellent, sharp",
        },
    ),
    Spoken(
        "presence",
        "presence, power, impact, 迫力",
        levels={
            "plain": "plain, little, no, weak",
            "nice": "nice, some, fair",
            "strong": "strong, good, great, lots of, much",
            "imposing": "imposing, huge, enormous, massive, overwhelming",
        },
        alone={
            "is strong": "impressive, very impressive, impressive fish, impact, has impact, what a beauty, "
            "a beauty, beauty, "
            "a real beauty, what a fish, head turner, magnificent, power, lots of power, has power, "
            "draws the eye, catches the eye, eye catcher, stands out, "
            "strong presence, jumps out at you",
            "is imposing": "imposing, imposing fish, majestic, 迫力あり",
            "is plain": "no presence, you would not look twice, does not stand out",
        },
    ),
    Spoken(
        "impression",
        "overall impression, overall, impression overall, whole, on the whole, all in all, general impression, 総合",
        levels={
            "poor": "poor, weak, bad, disappointing",
            "fair": "fair, average, ordinary, middling, ok, okay, so so",
            "good": "good, nice, fine, pleasing",
            "excellent": "excellent, outstanding, superb, great, very good, top",
        },
        alone={
            "is excellent": "favourite, my favourite, top fish, super fish, fantastic fish, outstanding fish",
            "is poor": "poor fish, nothing to like, bad fish",
            "is fair": "average fish, ordinary fish, average, an average fish",
        },
    ),
    Spoken(
        "interest",
        "pattern, interest, design, interest of the pattern, pattern appeal, appeal, marking, markings, 模様",
        levels={
            "plain": "plain, dull, boring, simple, poor, uninteresting, nothing special, no, weak, 平凡",
            "mild": "everyday, ordinary, average, mild, common, usual, standard, so so",
            "marked": "interesting, good, appealing, pretty, attractive, nice, pleasing, lovely, marked, fine, 面白い",
            "striking": "striking, eye catching, very interesting, stunning, exciting, bold, unusual, remarkable, "
            "special, beautiful, very good, great",
            "unique": "unique, one of a kind, never seen, unseen, 独特",
        },
        alone={
            "is plain": "plain, boring, dull pattern, nothing special, nothing special pattern, plain as can be, "
            "not the best pattern, nothing remarkable, nothing to remember",
            "at most mild": "not interesting, uninteresting, not an interesting pattern, everyday pattern, hardly a "
            "pattern, not much of a pattern, no design",
            "is unique": "really special, very special, something special, unique, one of a kind, "
            "never seen 1 like it, never seen one like it, never seen anything like "
            "it, unlike any other",
            "is striking": "striking, eye catching, stunning pattern, a stunner",
            "at least marked": "pretty pattern, this 1 is pretty, pretty fish, attractive fish, "
            "interesting pattern, pattern "
            "interesting, nice pattern, "
            "good interest, interest good",
        },
    ),
    Spoken(
        "finish",
        "finish, skin finish, 仕上がり",
        beside="hi, colour",
        levels={
            "early": "early, unfinished, not finished",
            "finished": "finished, complete, done",
            "past": "past, past its best",
        },
        alone={
            "is finished": "finished, very finished, already finished, fully finished, finished already, "
            "very finished already",
            "is early": "unfinished, not finished, not yet finished, far from finished, still early, tategoi type",
            "is past": "past its best, going over, over the top, past it",
            "is near": "nearly finished, almost finished",
        },
    ),
    Spoken(
        "stability",
        "stability, hold, holding",
        levels={"poor": "poor, doubtful", "fair": "fair", "good": "good, sure"},
    ),
    Spoken(
        "balance_left_right",
        "left right balance, balance of left and right, balance left to right",
        alone={
            "at least 0.8": "both sides the same, both sides alike, both sides equal, left and right alike, left and right "
            "equal, even left and right, "
            "left and right balanced, same on both sides, left and right the same, even on both sides, "
            "sides alike, sides even",
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
    Spoken("pond", "pond, from pond, out of pond, 池"),
    Spoken("bloodline", "bloodline, from the line, 血統"),
    Spoken("spawning", "spawning"),
    Spoken("batch_name", "batch"),
    Spoken("sorter", "sorter, sorted by, looked at by"),
    Spoken("water_temperature", "water, water temperature, temperature, 水温"),
    Spoken("age", "age, old"),
)
"""What is said of the skin, of the whole, and of the look."""
