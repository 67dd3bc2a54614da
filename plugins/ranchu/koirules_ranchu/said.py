"""How sorters speak of ranchu. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_RANCHU: tuple[Saying, ...] = (
    Spoken(
        "head_growth",
        "head growth, head, hood, wen, nikuryu, 肉瘤",
        levels={
            "none": "bare, no, flat, none",
            "slight": "little, slight, weak, small, just beginning",
            "fair": "fair, average",
            "full": "full, large, strong, heavy, well grown, good",
        },
    ),
    Spoken(
        "back",
        "back, line of the back, back line, topline, 背なり",
        levels={
            "broken": "broken, with a step, with a dent, dented",
            "uneven": "uneven, rough, not smooth",
            "smooth": "smooth, clean, even, fine, good",
        },
    ),
    Spoken(
        "fin_remnants",
        "fin remnants, remnants of a fin, spines on the back, bumps on the back",
        alone={"at least 1": "a spine on the back, a bump on the back, a fin on the back"},
    ),
    Spoken(
        "tail_kind",
        "tail, kind of tail",
        levels={
            "four_lobes": "four lobed, with four lobes, split",
            "cherry": "cherry, cherry blossom, notched",
            "three_lobes": "three lobed, with three lobes",
            "pinched": "pinched, grown together",
            "single": "single",
        },
        alone={"is four_lobes": "四つ尾", "is cherry": "桜尾", "is three_lobes": "三つ尾", "is pinched": "つまみ"},
    ),
    Spoken(
        "tail_spread",
        "tail spread, spread of the tail, tail opens, 尾張り",
        levels={
            "closed": "closed, narrow, poor",
            "half_open": "half open, half",
            "open": "open, wide, well open, full",
        },
        alone={"is open": "tail well spread, tail wide open", "is closed": "tail shut"},
    ),
    Spoken(
        "tail_even",
        "halves of the tail, tail halves",
        levels={"uneven": "uneven, unlike", "nearly_even": "nearly even, nearly alike", "even": "even, alike"},
    ),
    Spoken(
        "colour",
        "colour, color, 色",
        levels={
            "red": "red, all red",
            "red_and_white": "red and white, sarasa, 更紗",
            "white": "white, all white",
            "dark": "dark, not turned, not yet turned",
        },
        alone={"is red_and_white": "sarasa, 更紗", "is dark": "not turned yet, still dark"},
    ),
    Spoken("red_cover", "red cover, cover of red, red covers"),
    Spoken(
        "red_on",
        "red",
        levels={
            "head": "on the head",
            "front_back": "on the front of the back",
            "rear_back": "on the rear of the back",
            "left_pectoral": "on the left pectoral",
            "right_pectoral": "on the right pectoral",
            "tail": "on the tail",
        },
    ),
    Spoken(
        "swimming",
        "swimming, swims, swim",
        levels={
            "tips_over": "head down, on its side, tipping over",
            "sways": "swaying, unsteady, wobbly",
            "steady": "steady, straight, well",
        },
        alone={"is tips_over": "tips over, stands on its head", "is sways": "sways, wobbles"},
    ),
    Spoken(
        "health",
        "health",
        levels={"sick": "sick, ill", "doubtful": "doubtful, not sure", "well": "well, good"},
        alone={"is sick": "is sick, is ill, looks sick", "is well": "healthy"},
    ),
)
