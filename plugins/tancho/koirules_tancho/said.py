"""How sorters speak of the mark of a tancho. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_TANCHO: tuple[Saying, ...] = (
    Spoken(
        "tancho_body",
        "body, body under the mark",
        levels={
            "kohaku": "plain white",
            "sanke": "sanke",
            "showa": "showa",
        },
        alone={
            "is kohaku": "tancho kohaku",
            "is sanke": "tancho sanke",
            "is showa": "tancho showa",
        },
    ),
    Spoken(
        "spot_shape",
        "spot, mark, tancho, tancho mark, tancho spot, patch, head patch, head spot, hi, shape of the spot, 丹頂",
        levels={
            "round": "round, perfectly round, circular, like a coin, very round, nicely round, like the sun",
            "oval": "oval, egg shaped, long",
            "heart": "heart shaped, heart, like a heart",
            "diamond": "diamond, diamond shaped, square, angular",
            "crown_like": "crown, crown like, like a crown",
            "irregular": "irregular, ragged, uneven, untidy, shapeless, crooked, not round",
        },
        alone={
            "is round": "perfect circle, perfect round spot, a perfect circle",
        },
    ),
    Spoken(
        "spot_roundness",
        "roundness of the spot, roundness",
    ),
    Spoken(
        "spot_symmetry",
        "symmetry of the spot, symmetry of the mark",
        alone={
            "at least 0.8": "spot symmetrical, mark symmetrical, both halves alike",
            "at most 0.6": "spot lopsided, mark lopsided, spot not symmetrical",
        },
    ),
    Spoken(
        "spot_off_centre",
        "spot off centre by, off centre by, mark off centre by",
        alone={
            "at most 5 %": "spot centred, mark centred, well centred, spot in the middle, mark in the middle, spot "
            "well placed, spot central, perfectly centred, centred",
            "above 10 %": "spot off centre, mark off centre, off centre, spot off to the left, spot off to the "
            "right, spot to the left, spot to the right, mark off to one side, spot off to one side, "
            "not centred",
        },
    ),
    Spoken(
        "spot_size",
        "spot size, size of the spot, spot covers, mark covers",
        alone={
            "below 15 %": "small spot, spot small, tiny spot, spot too small, mark small, little spot",
            "above 50 %": "big spot, spot big, large spot, spot too big, spot too large, mark too big",
        },
    ),
    Spoken(
        "spot_touches",
        "spot touches, mark touches, touches, spot reaches, mark reaches, reaches, spot runs into, red touches",
        alone={
            "is none": "spot touches nothing, mark free all round, spot free all round, touches nothing, spot "
            "clear of the eyes, clear of eyes and nose",
        },
    ),
    Spoken(
        "spot_windows",
        "window in the spot, hole in the spot, window in the mark, white hole in the spot, window",
        alone={
            "is 0": "no window in the spot, spot without holes, solid spot",
        },
    ),
    Spoken(
        "other_red",
        "other red, red elsewhere, other red spot, second red spot, red on the body, stray red, further red",
        alone={
            "is 0": "no other red, nothing else red, no red elsewhere, no red on the body, body clean of "
            "red, no more red, red nowhere else",
        },
    ),
)
