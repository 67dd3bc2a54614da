"""How sorters speak of asagi and shusui. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_BOTH: tuple[Saying, ...] = (
    Spoken(
        "nose_clear",
        "clear nose, clean nose, nose clear, nose clean",
        alone={
            "is no": "dark nose, nose stained, nose not clear, dirty nose",
        },
    ),
    Spoken(
        "red_eyes",
        "red eyes, eyes red, red in the eyes",
    ),
    Spoken(
        "hi_height",
        "height of the red, red height, red up the flank, hi up the flank, height of the hi, red",
        alone={
            "at most 30 %": "red low on the flank, low red, hi low, red stays low, red low, hi low on the flank, low hi",
            "above 60 %": "red high on the flank, high red, hi high, red too high, red climbs high, red high, hi "
            "too high, red climbs too high",
            "is 30 % to 60 %": "red half way up, red half way up the flank, red to the middle of the flank",
        },
    ),
    Spoken(
        "hi_line_even",
        "upper edge of the red, edge of the red, red line, hi line, line of the red, red edge, upper edge",
        levels={
            "ragged": "ragged, uneven, wavy, irregular, jagged",
            "fair": "fair, fairly straight",
            "straight": "straight, even, clean, good, level, neat",
        },
    ),
    Spoken(
        "cheek_hi",
        beside="red, hi, orange",
        alone={
            "is (left_cheek, right_cheek)": "red cheeks, cheeks red, both cheeks red, red on both cheeks",
            "is none": "no red on the cheeks, cheeks without red, white cheeks, cheeks clean",
            "count is 1": "red on one cheek, only one cheek red, one cheek red",
        },
    ),
    Spoken(
        "pectoral_red",
        "red in the pectorals, pectoral red, pectorals, red fins, motoaka, red at the pectorals, red of the pectorals, 元赤",
        levels={
            "none": "no, without, white",
            "full_fin": "full, all red, completely red, fully red",
            "half": "half red, half",
            "base": "at the base, red at the base, base, good",
        },
        alone={
            "is base": "red at the base of the pectorals, red fin bases, red at the base, motoaka good, good motoaka",
            "is full_fin": "pectorals all red, red pectorals, full red pectorals",
        },
    ),
    Spoken(
        "stray_hi",
        "stray red, stray hi, stray red spot, red spot on the back, red speck on the back, stray red above the line",
        alone={
            "is 0": "no stray red, no red on the back, back clean of red",
        },
    ),
)

SAID_OF_ASAGI: tuple[Saying, ...] = (
    Spoken(
        "scale_rows",
        "rows of even scales, even rows, even scale row, row of even scales, even row",
    ),
    Spoken(
        "blue_tone",
        "blue, tone of the blue, blue tone, back, indigo, 浅黄",
        levels={
            "black_blue": "black, nearly black, blackish, too dark",
            "dark": "dark, deep",
            "mid": "middle, medium, mid",
            "light": "light, pale, clear, bright, sky",
        },
        alone={
            "is light": "light blue, sky blue",
            "is dark": "dark blue, deep blue",
        },
    ),
    Spoken(
        "white_line",
        "white line, white line between red and blue, white stripe between red and blue, white between red and blue",
    ),
    Spoken(
        "menkaburi",
        "menkaburi, red over the head, red head, red hood, hood, red on the head, 面かぶり",
        alone={
            "is no": "no red on the head, head free of red, white head, head white",
        },
    ),
)

SAID_OF_SHUSUI: tuple[Saying, ...] = (
    Spoken(
        "blue_skin",
        "blue, blue skin, bare blue, skin blue",
        levels={
            "grey": "grey, greyish, dull",
            "patchy": "patchy, uneven, blotchy",
            "even": "even, clear, clean, uniform, good",
        },
    ),
    Spoken(
        "blue_scales",
        "blue scales, scales, row scales, dorsal scales",
        levels={
            "pale": "pale, light, faint",
            "fair": "fair, medium",
            "deep": "deep, dark, strong",
        },
    ),
    Spoken(
        "red_back",
        "red above the flank, red on the back",
        levels={
            "none": "no, without",
            "hana": "in patches, patchy",
            "hi": "all over, all red",
        },
        alone={
            "is hana": "hana shusui, flowery red, red between belly and back",
            "is hi": "hi shusui, back all red, red all over the back",
            "is none": "no red above the flank",
        },
    ),
)
