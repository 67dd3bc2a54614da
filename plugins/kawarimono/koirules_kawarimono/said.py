"""How sorters speak of kawarimono. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_KAWARIMONO: tuple[Saying, ...] = (
    Spoken(
        "kawari_kind",
        "kind",
        alone={
            "is chagoi": "chagoi, a chagoi, 茶鯉",
            "is soragoi": "soragoi, 空鯉",
            "is ochiba": "ochiba, ochiba shigure, 落葉",
            "is karasugoi": "karasugoi, karasu, 烏鯉",
            "is hajiro": "hajiro, 羽白",
            "is kumonryu": "kumonryu, 九紋竜",
            "is beni_kumonryu": "beni kumonryu, 紅九紋竜",
            "is benigoi": "benigoi, 紅鯉",
            "is kigoi": "kigoi, 黄鯉",
            "is ki_matsuba": "ki matsuba, 黄松葉",
            "is shiro_matsuba": "shiro matsuba, 白松葉",
        },
    ),
    Spoken(
        "colour_even",
        "colour, body colour, evenness of the colour, tone, brown, grey",
        levels={
            "patchy": "patchy, uneven, blotchy, spotty",
            "fair": "fairly even",
            "even": "even, uniform, the same everywhere, clean",
        },
    ),
    Spoken(
        "white_edges",
        "white tips, white edges, white edge",
        beside="white, white tip, white edge",
        alone={
            "is none": "no white edges, all black",
            "is (nose, left_pectoral, right_pectoral, tail)": "white on nose and all fins",
        },
    ),
    Spoken(
        "tameness",
        "tameness, temper",
        levels={
            "shy": "shy, nervous, wild, timid",
            "fair": "fair",
            "tame": "tame, friendly, calm, trusting",
        },
        alone={
            "is tame": "tame, friendly, comes to the hand, eats from the hand",
            "is shy": "shy, nervous, hides",
        },
    ),
    Spoken(
        "rarity",
        "rarity",
        levels={
            "common": "common, ordinary",
            "uncommon": "uncommon, unusual",
            "rare": "rare",
            "very_rare": "very rare, extremely rare",
        },
        alone={
            "is rare": "rare, a rarity, rare fish",
            "is very_rare": "very rare, seldom seen",
            "is common": "common",
        },
    ),
)
