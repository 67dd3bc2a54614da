"""How sorters speak of metallic koi. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_METAL: tuple[Saying, ...] = (
    Spoken(
        "lustre_even",
        "shine, hikari, lustre, evenness of the shine, metal, 光り",
        levels={
            "patchy": "patchy, uneven, blotchy, irregular",
            "fair": "fairly even",
            "even": "even, the same everywhere, uniform, from head to tail, all over",
        },
        alone={
            "is even": "even shine, shines evenly, even hikari, shine from nose to tail",
        },
    ),
    Spoken(
        "shine_head",
        "shine on the head, head shine",
    ),
    Spoken(
        "shine_shoulder",
        "shine on the shoulder, shoulder shine",
    ),
    Spoken(
        "shine_rear",
        "shine behind, rear shine, shine at the rear",
    ),
    Spoken(
        "shine_cover",
        "full shine, shine cover, share of full shine",
    ),
    Spoken(
        "pectoral_shine",
        "pectorals, pectoral fins, pectoral shine, shine of the pectorals, fins, fin shine",
        levels={
            "dull": "dull, matt, without shine",
            "fair": "fair, average",
            "bright": "bright, shiny, shining, metallic, brilliant, glittering",
        },
        alone={
            "is bright": "shiny pectorals, pectorals shine, metallic fins, shine in the fins",
            "is dull": "no shine in the fins, pectorals without shine",
        },
    ),
    Spoken(
        "discolour",
        "darkening, stain in warm water, discolouring, discolouration",
        levels={
            "strong": "strong, much, heavy",
            "some": "some, slight, a little",
            "none": "no, without",
        },
        alone={
            "at most some": "darkens in warm water, goes dark in the warm, stained by warmth",
        },
    ),
    Spoken(
        "helmet",
        "helmet, skull marks, skull mark, helmet on the head, skull shows, helmet marks",
        alone={
            "is no": "no helmet, no skull marks, head free of skull marks",
        },
    ),
)

SAID_OF_MUJI: tuple[Saying, ...] = (
    Spoken(
        "metal_colour",
        "colour, metal, metal colour",
        levels={
            "yamabuki": "yellow, gold, golden",
            "platinum": "white, silver",
            "orenji": "orange",
            "nezu": "grey",
        },
        alone={
            "is yamabuki": "yamabuki, yamabuki ogon, 山吹",
            "is platinum": "platinum, purachina, platinum ogon, プラチナ",
            "is orenji": "orenji, orenji ogon, orange ogon, オレンジ",
            "is nezu": "nezu, nezu ogon, grey ogon",
            "is gin_matsuba": "gin matsuba, silver matsuba",
            "is kin_matsuba": "kin matsuba, gold matsuba, matsuba ogon",
        },
    ),
    Spoken(
        "tone_even",
        "tone, colour tone, evenness of the tone, colour",
        levels={
            "patchy": "patchy, uneven, blotchy",
            "fair": "fairly even",
            "even": "even, uniform, the same everywhere",
        },
    ),
    Spoken(
        "fukurin",
        "fukurin, bright rims, rims round the scales, rim, rims, 覆輪",
        levels={
            "none": "no, without",
            "some": "some, partly, a little, slight",
            "full": "full, strong, good, complete, all over",
        },
        alone={
            "at least some": "has fukurin, fukurin shows",
        },
    ),
    Spoken(
        "rows_neat",
        "scale rows, rows, scales, rows of scales",
        levels={
            "rough": "rough, untidy, uneven, irregular",
            "fair": "fair",
            "neat": "neat, even, tidy, regular, straight, clean",
        },
    ),
)

SAID_OF_MOYO: tuple[Saying, ...] = (
    Spoken(
        "moyo_kind",
        "kind",
        alone={
            "is hariwake": "hariwake, 張分",
            "is kikusui": "kikusui, 菊水",
            "is kujaku": "kujaku, 孔雀",
            "is yamato_nishiki": "yamato nishiki, yamatonishiki, 大和錦",
            "is sakura_ogon": "sakura ogon, 桜黄金",
            "is kikokuryu": "kikokuryu, 輝黒竜",
            "is kinsui": "kinsui, 錦水",
            "is ginsui": "ginsui, 銀水",
        },
    ),
    Spoken(
        "moyo_cover",
        "second colour, moyo, pattern cover, share of the second colour",
    ),
    Spoken(
        "moyo_balance",
        "balance of the moyo, moyo balance",
        alone={
            "at least 0.7": "moyo balanced, moyo well balanced",
            "at most 0.4": "moyo unbalanced, moyo badly balanced",
        },
    ),
    Spoken(
        "moyo_edge",
        "edge, edges, moyo edge, edge of the pattern, edge of the moyo, kiwa, pattern edge",
        levels={
            "blurred": "blurred, soft, fuzzy, unclear, washed out",
            "fair": "fair, average",
            "sharp": "sharp, crisp, clean, clear, good",
        },
    ),
    Spoken(
        "kujaku_face",
        "face, kujaku face, head",
        levels={
            "dirty": "dirty, stained, dark",
            "fair": "fair",
            "clean": "clean, clear, bright",
        },
    ),
    Spoken(
        "wave",
        "wavy flank, wave, wave on the flank, waves on the flank",
    ),
)

SAID_OF_HIKARI_UTSURI: tuple[Saying, ...] = (
    Spoken(
        "utsuri_kind",
        "kind",
        alone={
            "is kin_showa": "kin showa, kinshowa, 金昭和",
            "is gin_shiro": "gin shiro, gin shiro utsuri, 銀白写り",
            "is kin_hi": "kin hi utsuri, kin hi",
            "is kin_ki": "kin ki utsuri, kin ki utsurimono, 金黄写り",
        },
    ),
    Spoken(
        "hi_under_metal",
        "red, hi, red under the metal",
        levels={
            "brown": "brown, brownish, muddy, rusty",
            "orange": "orange",
            "red": "true red, real red, good",
        },
    ),
    Spoken(
        "ground_bright",
        "ground, ground under the metal, brightness of the ground",
        levels={
            "dull": "dull, dark, matt",
            "fair": "fair",
            "bright": "bright, shiny, brilliant, light",
        },
    ),
    Spoken(
        "metal_lost",
        "shine lost, shine lost where black grows, metal lost, shine dies in the black, shine gone in the black",
    ),
)
