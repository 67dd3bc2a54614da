"""How sorters speak of the form of a showa. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

SAID_OF_SHOWA: tuple[Saying, ...] = (
    SpokenTogether(
        "head (is|) (well|nicely|) (split|divided) (nicely|well|) (by (sumi|black)|), (sumi|black) splits the head",
        "head_sumi is menware or hachiware or v_shape",
    ),
    Spoken(
        "showa_style",
        "style, showa style",
        levels={
            "hi_showa": "hi, red",
            "mukashi": "old, old style, classic",
            "kindai": "modern, white",
            "boke": "blurred, grey",
        },
        alone={
            "is hi_showa": "hi showa, red dominates, (red|hi) showa, mostly red showa, 緋昭和",
            "is mukashi": "mukashi, (old|classic|traditional) (style|type) (showa|), old style showa, old style",
            "is kindai": "(good|nice|proper|real|decent|) kindai, a (decent|good|nice) (sort|kind) of kindai, "
            "kindai (showa|style|type), modern showa, much white, 近代昭和",
            "is boke": "boke, boke showa, ぼけ昭和",
        },
    ),
    # Of a showa the white is told of by itself: what there is little of may have gone to black as well as to red.
    SpokenTogether(
        "little white, too little white, very little white, not much white, not enough white, hardly any "
        "white, no white to speak of, "
        "could do with more white, needs more white",
        "shiro_cover below 20 %",
    ),
    SpokenTogether(
        "much white, lots of white, plenty of white, a lot of white, loads of white, mostly white, very white",
        "shiro_cover above 40 %",
    ),
    SpokenTogether("half white, about half white", "shiro_cover is 45 % to 55 %"),
    Spoken(
        "shiro_cover",
        "white, shiroji, white share, share of white, white on the back",
        alone={
            "below 20 %": "(too|very|) little white, not enough white, short (of|on) white, "
            "could (do with|use) (a bit|) more white, needs more white, "
            "hardly any white (left|at all|), scarcely any white, next to no white, "
            "(white is|) swamped, hardly any white, very little white, not much white",
            "above 40 %": "(very|) much white, (loads|a good deal) of white, mostly white, "
            "more white than (black|anything|sumi), lots of white, plenty of white, a lot of white",
            "is 45 % to 55 %": "half white, about half white",
            "is 28 % to 38 %": "a third white, about a third white",
        },
    ),
    Spoken(
        "head_colours",
        "colours on the head, colour on the head, head colours",
        alone={
            "is 3": "all three colours on the head, three coloured head, three colours in the face",
            "is 2": "only two colours on the head, two coloured head",
            "is 1": "head of one colour, one colour on the head",
        },
    ),
    Spoken(
        "third_balance",
        alone={
            "is 3": "all three colours (everywhere|all along|the whole way), "
            "(three|all) colours (well|nicely|evenly) (spread|mixed|balanced), "
            "three colours from head to tail, all colours well spread, "
            "colours well spread",
            "at most 1": "colours badly spread, colours in one place",
        },
    ),
)
