"""How sorters speak of koromo and goshiki. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_KOROMO: tuple[Saying, ...] = (
    Spoken(
        "koromo_type",
        "type, koromo, koromo type",
        levels={
            "ai": "indigo, ai",
            "sumi": "black, sumi",
            "budo": "grape, budo",
        },
        alone={
            "is ai": "ai goromo, aigoromo, indigo robe, 藍衣",
            "is sumi": "sumi goromo, sumigoromo, 墨衣",
            "is budo": "budo goromo, budogoromo, 葡萄衣",
        },
    ),
    Spoken(
        "net_on_white",
        "net on the white, net on white, net spilling onto the white, robe on the white",
        levels={
            "much": "much, lots of, a lot of, plenty of",
            "some": "some, a little, a bit of, slight",
            "none": "no, without",
        },
        alone={
            "is none": "white clean of net, white free of the net, net only on the red, net stays on the red",
            "is some": "net spills onto the white, some net in the white",
        },
    ),
    Spoken(
        "head_net",
        "net on the head, net on the red of the head, robe on the head, black on the red of the head",
        alone={
            "is no": "head red clean, no net on the head, head free of the net",
        },
    ),
    Spoken(
        "budo_clusters",
        "grape clusters, clusters, grapes",
        levels={
            "poor": "poor, weak, unclear",
            "fair": "fair",
            "clear": "clear, good, distinct, nice",
        },
    ),
    Spoken(
        "dark_sashi",
        "dark sashi, blue sashi, black sashi, blue front edge, dark front edge",
    ),
    Spoken(
        "hi_hidden",
        "red lost under black, red hidden, hidden red, red covered by black",
        alone={
            "above 50 %": "red mostly hidden, net too heavy, red lost under the net",
            "below 10 %": "red not hidden, red shows clearly",
        },
    ),
)

SAID_OF_GOSHIKI: tuple[Saying, ...] = (
    Spoken(
        "goshiki_style",
        "style, goshiki style",
        levels={
            "modern": "modern, kindai, light",
            "kuro": "dark, black, kuro",
        },
        alone={
            "is modern": "kindai goshiki, modern goshiki, modern style",
            "is kuro": "kuro goshiki, black goshiki, dark style",
        },
    ),
    Spoken(
        "net_weight",
        "net, darkness of the net, net weight, netting",
        levels={
            "light": "light, pale, thin",
            "middle": "medium, middle",
            "heavy": "heavy, dark, strong, thick",
            "solid": "solid, black, nearly solid, too heavy",
        },
    ),
    Spoken(
        "hi_clean",
        "red, hi, beni, red free of the net",
        levels={
            "covered": "covered, netted, net covered, under the net",
            "some": "slightly netted, partly netted",
            "clean": "clean, clear, free of net, unnetted, free of the net",
        },
        alone={
            "is clean": "no net on the red, red clean of net, net stays off the red",
            "is some": "some net on the red, a little net on the red",
        },
    ),
    Spoken(
        "hi_brightness",
        "red, hi, beni, red against the net",
        levels={
            "dull": "dull, brownish, muddy, dark",
            "fair": "fair, average",
            "bright": "bright, glowing, strong, brilliant, clear, stands out",
        },
        alone={
            "is bright": "red stands out, red glows, red jumps out",
        },
    ),
    Spoken(
        "head_white_clear",
        "white of the head, head white, head, white on the head",
        levels={
            "dark": "dark, netted, dirty, stained",
            "fair": "fair",
            "clear": "clear, clean, white, free",
        },
    ),
)
