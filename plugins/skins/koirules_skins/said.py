"""How sorters speak of ginrin and doitsu. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_GINRIN: tuple[Saying, ...] = (
    Spoken(
        "gin_type",
        "ginrin, gin, sparkle, type of ginrin, type of the sparkle",
        levels={
            "diamond": "diamond",
            "beta": "beta, flat",
            "pearl": "pearl",
            "kado": "edge, kado",
            "sudare": "sudare, striped",
        },
        alone={
            "is diamond": "diamond ginrin, diamond, daiya, ダイヤ",
            "is beta": "beta gin, beta ginrin, ベタ銀",
            "is pearl": "pearl ginrin, pearl, tsubu gin, パール",
            "is kado": "kado gin, kado ginrin",
            "is sudare": "sudare gin, sudare",
        },
    ),
    Spoken(
        "gin_rows",
        "rows of ginrin, row of ginrin, ginrin row, row of sparkling scales, sparkling row, rows of sparkle",
    ),
    Spoken(
        "gin_cover",
        "ginrin, gin, sparkling scales, ginrin cover, share of ginrin",
        alone={
            "above 90 %": "ginrin all over, sparkles all over, full ginrin, ginrin complete",
            "below 30 %": "little ginrin, hardly any ginrin, ginrin sparse, few sparkling scales",
        },
    ),
    Spoken("gin_cover_left", "ginrin of the left side, ginrin on the left side"),
    Spoken("gin_cover_right", "ginrin of the right side, ginrin on the right side"),
    Spoken(
        "gin_balance",
        "balance of the ginrin, ginrin balance",
        alone={
            "at least 0.8": "ginrin even on both sides, ginrin the same on both sides, sparkle on both sides alike",
            "at most 0.5": "ginrin on one side only, more ginrin on the left, more ginrin on the right",
        },
    ),
    Spoken(
        "gin_even",
        "ginrin, gin, sparkle, evenness of the sparkle",
        levels={
            "scattered": "scattered, patchy, uneven, irregular, with gaps",
            "fair": "fairly even",
            "even": "even, complete, regular, uniform",
        },
    ),
    Spoken(
        "gin_strength",
        "ginrin, gin, sparkle, glitter, strength of the sparkle",
        levels={
            "dull": "dull, weak, faint, poor",
            "fair": "fair, average",
            "bright": "bright, strong, brilliant, glittering, good, excellent, dazzling",
        },
        alone={
            "is bright": "glitters, sparkles strongly, strong sparkle",
        },
    ),
    Spoken(
        "gin_blur",
        "edges lost in the sparkle, blur by the sparkle",
        levels={
            "strong": "strong, much",
            "some": "some, slight",
            "none": "no, without",
        },
        alone={
            "is none": "edges clear through the ginrin",
            "at most some": "ginrin blurs the edges, edges lost in the ginrin",
        },
    ),
)

SAID_OF_DOITSU: tuple[Saying, ...] = (
    Spoken(
        "dorsal_rows",
        "dorsal rows, dorsal scales, rows along the back, back rows, scales along the back, doitsu rows, dorsal row",
        levels={
            "broken": "broken, with gaps, incomplete, missing scales, irregular",
            "fair": "fair",
            "straight": "straight, complete, neat, even, good, regular",
        },
    ),
    Spoken(
        "lateral_row",
        "lateral row, row along the flank, side row, scales along the flank",
        levels={
            "uneven": "uneven, irregular, broken",
            "none": "no, without",
            "fair": "fair",
            "even": "even, neat, straight, complete",
        },
    ),
    Spoken("row_scales_left", "scale in the left row, scale of the left row, left row"),
    Spoken("row_scales_right", "scale in the right row, scale of the right row, right row"),
    Spoken(
        "row_symmetry",
        "symmetry of the rows, row symmetry",
        alone={
            "at least 0.85": "rows alike on both sides, rows symmetrical, both rows alike",
            "at most 0.6": "rows different, rows not symmetrical",
        },
    ),
    Spoken(
        "scale_size_even",
        "scale size, size of the scales, scales in the row",
        levels={
            "mixed": "mixed, uneven, different, of all sizes",
            "fair": "fair",
            "even": "even, the same, alike, uniform",
        },
    ),
    Spoken(
        "stray_scales",
        "stray scale, loose scale, scale out of place, stray scales on the flank, scale on the flank, single scale",
        alone={
            "is 0": "no stray scales, skin free of scales, without stray scales",
            "at least 4": "many stray scales, lots of stray scales, full of stray scales",
        },
    ),
    Spoken(
        "bare_skin_lustre",
        "bare skin, skin lustre, lustre of the bare skin, skin shine",
        levels={
            "dull": "dull, matt, without shine",
            "fair": "fair",
            "good": "good, shiny, glossy, shining",
        },
    ),
    Spoken(
        "edge_on_skin",
        "edge on the skin, pattern edge, edge on bare skin, edges on the skin",
        levels={
            "soft": "soft, blurred, fuzzy",
            "fair": "fair",
            "sharp": "sharp, crisp, clean, clear",
        },
    ),
    Spoken(
        "skin_marks",
        "mark on the bare skin, mark on the skin, skin mark, stain on the bare skin",
        alone={
            "is 0": "no marks on the skin, skin unmarked, bare skin clean",
        },
    ),
)
