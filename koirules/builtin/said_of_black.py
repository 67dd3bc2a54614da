"""How sorters speak of black (sumi), of a net and of a clear head. Common practice, no source; wordings from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_BLACK: tuple[Saying, ...] = (
    Spoken(
        "sumi_quality",
        "sumi, black, sumi quality, black quality, ink, depth of the black, 墨, 墨質",
        levels={
            "grey": "grey, greyish, pale, thin, not up, not through, weak, light, faint",
            "dull": "dull, flat, matt, brownish, without depth, poor",
            "black": "deep, good, strong, solid, thick, nice, dark, fine, 良い",
            "lacquer": "lacquer, like lacquer, jet, jet black, very deep, excellent, superb, like ink, shiny, glossy, 漆黒",
        },
        alone={
            "is lacquer": "lacquer black, jet black, deep shiny black",
            "is grey": "sumi not up yet, grey sumi, sumi still grey",
        },
    ),
    Spoken(
        "sumi_kiwa",
        "sumi kiwa, sumi edge, edge of the black, edges of the black, black edge, edge of the sumi, sumi, black, 墨のキワ",
        levels={
            "blurred": "blurred, soft, fuzzy, unclear, ragged, woolly, washed out",
            "fair": "fair, average",
            "sharp": "sharp, crisp, clean, clear, well cut, tight",
        },
    ),
    Spoken(
        "sumi_rising",
        "black under the skin, sumi under the skin, sumi underneath, ato sumi, rising sumi, "
        "hidden sumi, sumi coming, black coming, "
        "shadow under the skin, sumi below the skin, 後墨, 沈み墨",
        levels={
            "none": "no, without",
            "some": "some, a little, a bit of, slight",
            "much": "much, lots of, a lot of, plenty of",
        },
        alone={
            "at least some": "sumi coming up, sumi is coming up, black coming up, sumi underneath, sumi still under "
            "the skin, blue shadows, "
            "sumi rising, black rising, sumi sunken, sumi under the white",
            "is none": "all sumi is up, no sumi to come, nothing under the skin",
        },
    ),
    Spoken(
        "sumi_cover",
        "black, sumi, black share, share of black, sumi share",
        alone={
            "is 28 % to 38 %": "a third black, about a third black, one third black",
            "is 45 % to 55 %": "half black, about half black",
            "below 10 %": "hardly any black, hardly any sumi, very little sumi, little black, little sumi, very "
            "little black, not much sumi",
            "above 60 %": "too much black, too much sumi, mostly black, heavy sumi, lots of black, lots of sumi, "
            "sumi heavy, a lot of black",
            "is 0 %": "no black, no sumi, no black at all, without sumi, no sumi at all, 墨なし",
        },
    ),
    Spoken(
        "sumi_front_share",
        "black in front, sumi in front",
        alone={
            "above 70 %": "black mostly in front, sumi mostly in front, more black in front, sumi heavy in front",
            "below 30 %": "black mostly behind, sumi mostly behind, more black behind, sumi heavy behind",
        },
    ),
    Spoken(
        "sumi_left_share",
        "black on the left side, sumi on the left side",
        alone={
            "above 65 %": "black mostly on the left, sumi mostly on the left, more black on the left, more sumi on the left",
            "below 35 %": "black mostly on the right, sumi mostly on the right, more black on the right, more sumi "
            "on the right",
        },
    ),
    Spoken(
        "sumi_balance",
        "sumi balance, black balance, balance of the black, spread of the black",
        alone={
            "at least 0.7": "sumi balanced, black balanced, sumi well balanced, sumi well spread, black well spread, "
            "sumi well placed, "
            "black evenly spread, sumi evenly spread, good sumi balance",
            "at most 0.3": "sumi all in one place, black all in one place, sumi badly placed, sumi bunched, black bunched",
        },
    ),
    Spoken(
        "black_as_larva",
        "black in its first days, black fry, black larva",
        alone={"is yes": "was black as a fry, was black after hatching", "is no": "was yellow after hatching"},
    ),
)
"""What is said of black whatever its form."""

SAID_OF_SPOTS: tuple[Saying, ...] = (
    Spoken(
        "sumi_spots",
        "black spot, sumi, sumi spot, black patch, sumi patch, spot of black, spot of sumi, black stone, stepping stone",
        alone={
            "is 0": "no black spots, no sumi, no sumi spots, without sumi, no black, no sumi yet",
            "at least 4": "many black spots, lots of black spots, many sumi spots, lots of sumi",
        },
    ),
    Spoken(
        "sumi_size",
        "black spots, sumi, sumi spots, black, spots, size of the sumi, sumi patches",
        levels={
            "pepper": "pepper, peppery, tiny, like pepper, very small, scattered fine",
            "small": "small, little, fine",
            "medium": "medium, middle sized, medium sized",
            "bold": "bold, large, big, broad, strong and large",
        },
        alone={"is pepper": "peppered, pepper, pepper sumi, jari, jari sumi, gravel"},
    ),
    Spoken(
        "sumi_places",
        "black spot, sumi, sumi spot, black, black patch, sumi patch, spot of black, another, another one",
    ),
    Spoken(
        "kata_sumi",
        "kata sumi, shoulder black, shoulder sumi, black at the shoulder, black on the shoulder, "
        "sumi on the shoulder, key black, "
        "sumi at the shoulder, key sumi, key black at the shoulder, 肩墨",
    ),
    Spoken(
        "sumi_on_head",
        "black on the head, sumi on the head, head sumi, head black, black spot on the head, "
        "sumi in the face, black on the face",
        alone={"is no": "head free of black, head free of sumi, clean of black on the head, no black in the face"},
    ),
    Spoken(
        "sumi_below_line",
        "black below the lateral line, sumi below the lateral line, black under the lateral "
        "line, black on the belly, sumi on the belly, "
        "black down the sides, sumi under the lateral line",
        alone={
            "is no": "sumi stays on the back, black stays on the back, sumi above the lateral line, black "
            "above the lateral line"
        },
    ),
    Spoken(
        "tejima",
        "tejima, stripe on the pectoral, stripe in the pectoral, pectoral stripe, fin stripe, "
        "stripe on the pectorals, stripe, 手縞",
        alone={
            "is 0": "no stripes, no stripes in the pectorals, clean pectorals, no tejima, pectorals white, pectorals clean"
        },
    ),
    Spoken(
        "ojima",
        "ojima, stripe in the tail, stripes in the tail, stripe on the tail, tail stripes, black "
        "in the tail, striped tail, 尾縞",
    ),
)
"""What is said of black in spots."""

SAID_OF_BANDS: tuple[Saying, ...] = (
    Spoken("sumi_bands", "black band, band, sumi band, band of black, wrap, wrap of black, band of sumi, black wrap"),
    Spoken(
        "sumi_linked",
        "sumi, black, bands, sumi bands, black bands",
        levels={
            "spots": "in spots, separate, like a sanke, apart, spotty, broken",
            "partly": "partly linked, half linked, partly joined",
            "linked": "linked, joined, joined up, continuous, running on, connected, wrapping",
        },
        alone={
            "is linked": "sumi runs on, sumi wraps round, sumi wraps around, wrapping sumi, black wraps round the "
            "body, makisumi",
            "is spots": "sumi in spots, sanke like sumi, sumi like a sanke",
        },
    ),
    Spoken(
        "small_sumi",
        "small black spot, small sumi, small spot of black, little black spot, small sumi spot, "
        "stray sumi, stray black spot",
    ),
    Spoken(
        "head_sumi",
        "head sumi, head black, black on the head, sumi on the head, head, head pattern, face",
        levels={
            "clear": "clear, clean, free, none, white, no",
            "stain": "stain, stained, shapeless, blotchy, blot",
            "v_shape": "v, v shaped, v shape",
            "menware": "split face, lightning",
            "hachiware": "hachiware, split crown",
            "solid": "solid, all black, full, hood, black hood, completely black",
        },
        alone={
            "is menware": "menware, men ware, split face, face split, face split by black, lightning on the head, 面割れ",
            "is hachiware": "hachiware, crown split, 鉢割れ",
            "is clear": "no black on the head, no sumi on the head, head without black, head without sumi",
            "is solid": "head all black, black head, black hood, all black head, whole head black",
            "is v_shape": "v shape on the head, v on the head",
        },
    ),
    Spoken(
        "nose_sumi",
        "black at the nose, black on the nose, hana sumi, black nose, nose black, sumi on the "
        "nose, sumi at the nose, black lips, "
        "sumi on the lips, 鼻墨",
    ),
    Spoken(
        "head_sumi_share",
        "head black, black on the head, share of black on the head",
        alone={
            "is 45 % to 55 %": "head half black, half the head black",
            "below 15 %": "little black on the head, little sumi on the head",
            "above 75 %": "head mostly black, head nearly all black",
        },
    ),
    Spoken(
        "head_yellow",
        "yellow on the head, yellow cast on the head, head yellow, yellow head, yellow of the head",
        levels={
            "strong": "strong, plain, clear, much, very",
            "slight": "slight, a little, a bit of, light",
            "none": "no, without",
        },
        alone={
            "at most slight": "yellow head, head still yellow, yellow on the head, head is yellow, yellowish head, "
            "head yellowish",
            "is none": "head white, white head, head snow white",
        },
    ),
    Spoken("motoguro_left", "black of the left pectoral, share of the left pectoral under black"),
    Spoken("motoguro_right", "black of the right pectoral, share of the right pectoral under black"),
    Spoken(
        "motoguro",
        "motoguro, moto guro, black in the pectorals, pectoral black, black at the base of the "
        "pectorals, fin bases, pectorals, pectoral base, 元黒",
        levels={
            "none": "no, without, none, white",
            "stripes": "striped, in stripes, stripes",
            "whole_fin": "all black, full, completely black, black fins, black",
            "base": "good, clean, at the base, round, nice, perfect, well formed, even, both sides",
        },
        alone={
            "is base": "good motoguro, clean motoguro, nice motoguro, motoguro both sides, motoguro on both sides",
            "is whole_fin": "pectorals all black, black pectorals, black pectoral fins",
            "is stripes": "stripes in the pectorals, striped pectorals",
            "is none": "no motoguro, pectorals white, no black in the pectorals",
        },
    ),
    Spoken(
        "motoguro_even",
        "motoguro, both motoguro, motoguro left and right",
        levels={
            "poor": "uneven, unequal, different, one sided, on one side only",
            "fair": "nearly alike",
            "even": "alike, equal, the same, matching",
        },
    ),
)
"""What is said of black in bands."""

SAID_OF_HEADS: tuple[Saying, ...] = (
    Spoken(
        "head_clear",
        "head, clearness of the head, forehead, crown, 頭",
        levels={
            "stained": "stained, dirty, spotty, spotted, blotchy, cloudy, specked, speckled, marked, not clear",
            "skull_shows": "dark bone, skull shows, bone shows, dark, dark boned",
            "fair": "fair, fairly clear, average",
            "clear": "clear, clean, spotless, pure, white, bright, unmarked, without a mark, 綺麗",
        },
        alone={
            "is skull_shows": "skull shows, skull shows through, dark bone on the head, bone shows on the head",
            "is clear": "clear head, clean head",
        },
    ),
    Spoken(
        "jami",
        "jami, dark speck, dark dot, dark spot, speck on the head, ジャミ",
        alone={"is 0": "no jami, no dark specks, without jami"},
    ),
)
"""What is said of a clear head."""

SAID_OF_NETS: tuple[Saying, ...] = (
    Spoken(
        "net_clarity",
        "net, netting, reticulation, mesh, scale pattern, ami me, amime, pine cone, matsuba, scales, 網目",
        levels={
            "none": "no, without, none",
            "faint": "faint, weak, unclear, hazy, thin, blurred, poor, soft",
            "clear": "clear, good, visible, nice, distinct, fine, 良い",
            "crisp": "crisp, sharp, excellent, very clear, perfect, superb, every scale clear",
        },
    ),
    Spoken(
        "net_even",
        "net, netting, reticulation, mesh, evenness of the net, scales, scale pattern, 網目",
        levels={
            "patchy": "patchy, uneven, irregular, broken, gaps, with gaps, incomplete",
            "fair": "fairly even",
            "even": "even, regular, complete, uniform, the same everywhere",
        },
    ),
    Spoken("net_front", "net on the shoulder, shoulder net, net in front"),
    Spoken("net_middle", "net beside the dorsal, net in the middle"),
    Spoken("net_rear", "net behind the dorsal, net at the rear, net behind"),
)
"""What is said of a net."""
