"""How sorters speak of the skin, of the whole fish and of the look itself. Common practice, no source; wordings from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_SKIN: tuple[Saying, ...] = (
    Spoken(
        "lustre",
        "lustre, tsuya, shine, gloss, sheen, skin, skin shine, skin lustre, skin quality, skin gloss, 艶, ツヤ, 照り",
        levels={
            "dull": "dull, matt, flat, poor, weak, no, bad, dead, ない",
            "fair": "fair, average, ordinary, some, little",
            "good": "good, shiny, nice, shining, glossy, bright, fine, strong, well, 良い",
            "superb": "superb, excellent, super, brilliant, outstanding, perfect, fantastic, great, amazing, "
            "wonderful, exceptional, like porcelain, "
            "very good, like varnish, top, tops, first class, 極上",
        },
        alone={
            "is dull": "hardly any shine, hardly any lustre, hardly any gloss, hardly shines, little shine, "
            "dull and flat, flat and dull, dull, dull skin, no shine, no shine at all, no lustre, "
            "without lustre, no gloss, dull as paper, "
            "matt, 艶なし",
            "is good": "high gloss, good gloss, shiny, shining, glossy, good shine, shines nicely, shines, shines well",
            "is superb": "skin like glass, like glass, skin like silk, like varnish, shiny like lacquer, like "
            "lacquer, varnished, skin like porcelain, "
            "porcelain skin, like porcelain, silky, like silk, gleams like silk, shines like silk, "
            "gleams like glass, shines like "
            "glass, shines like a mirror, "
            "superb skin",
        },
    ),
    Spoken(
        "skin_clean",
        "skin, cleanness of the skin, 肌",
        levels={
            "dirty": "dirty, stained, cloudy, blotchy, unclean, spotty, not clean, 汚い",
            "fair": "fairly clean",
            "clean": "clean, clear, smooth, spotless, pure, unmarked, flawless, without a mark, 綺麗, きれい",
        },
        alone={
            "is dirty": "stained, stained skin, stains, stains on the skin, a stain, dirty, cloudy spots, cloudy skin",
            "is clean": "clean skin, spotless, no stains",
        },
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
            "is strong": "impressive, very impressive, impressive fish, impact, has impact, what a beauty, a beauty, beauty, "
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
            "at least marked": "pretty pattern, this 1 is pretty, pretty fish, attractive fish, interesting pattern, pattern "
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
            "is finished": "finished, very finished, already finished, fully finished, finished already, very finished already",
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
            "left and right balanced, same on both sides, left and right the same, even on both sides, sides alike, sides even",
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
