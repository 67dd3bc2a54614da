"""How sorters speak of utsurimono and bekko. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_GROUND: tuple[Saying, ...] = (
    Spoken(
        "ground",
        "ground, ground colour, colour of the ground, base colour",
        levels={
            "shiro": "white, shiro",
            "hi": "red, hi",
            "ki": "yellow, ki",
        },
        alone={
            "is shiro": "shiro utsuri, shiro, shiro bekko, 白写り",
            "is hi": "hi utsuri, aka bekko, hi ground, 緋写り",
            "is ki": "ki utsuri, ki bekko, 黄写り",
        },
    ),
    Spoken(
        "ground_quality",
        "ground, ground quality, skin, quality of the ground, white, colour under the black",
        levels={
            "poor": "poor, bad, dirty, stained, yellow, dull",
            "fair": "fair, average, ordinary, cream, creamy",
            "clean": "clean, good, clear, nice, white, fine",
            "snow": "snow, snow white, excellent, superb, perfect, very white, brilliant",
        },
        alone={
            "is snow": "snow white skin, snow white ground",
        },
    ),
    Spoken(
        "ground_even",
        "ground, evenness of the ground, colour of the ground, ground colour",
        levels={
            "patchy": "patchy, uneven, blotchy",
            "fair": "fairly even",
            "even": "even, uniform, the same everywhere",
        },
    ),
    Spoken(
        "ground_in_fins",
        beside="red, yellow, hi, colour",
        alone={
            "is none": "fins clean of colour, no colour in the fins, no red in the fins, no yellow in the fins",
            "count at least 1": "red in the fins, yellow in the fins, colour in the fins",
        },
    ),
)

SAID_OF_UTSURI: tuple[Saying, ...] = (
    Spoken(
        "head_split",
        "head, split of the head, head split, face",
        levels={
            "one_colour": "one colour, of one colour, not split, unsplit",
            "weak": "weakly split, hardly split, half split, nearly split",
            "split": "split, well split, split by black, good, both colours",
        },
        alone={
            "is split": "split head, split face, both colours on the head, head well split, black and white head",
            "is one_colour": "head of one colour, one coloured head, only one colour on the head",
        },
    ),
    Spoken(
        "checker",
        "checker, alternation, checkerboard",
        alone={
            "at least 0.7": "checkered, checkerboard pattern, chequered, nicely checkered, black and white "
            "alternate, colours alternate well, good alternation",
            "at most 0.3": "no alternation, colours do not alternate, black all on one side",
        },
    ),
)
