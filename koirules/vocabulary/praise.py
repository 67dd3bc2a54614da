"""Words of praise and blame that people use of anything, from bad to excellent. Common English usage, no source.

A vocabulary says which level of a trait `good` or `poor` is, beside its name. Who says so may as well say `decent` or `awful`.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import each_of, wordings_in

_CLASSES = {
    "excellent": "superb, saikou, outstanding, perfect, exceptional, magnificent, splendid, wonderful, fantastic, "
    "terrific, brilliant, "
    "gorgeous, stunning, marvellous, marvelous, amazing, incredible, flawless, faultless, spotless, impeccable, "
    "first class, class one, first rate, top class, top drawer, top notch, top, tip top, world class, show class, show "
    "quality, "
    "high class, high quality, top quality, best quality, super, spot on, textbook, ideal, immaculate, second to none, "
    "as good as it gets, hard to better, hard to beat, could not be better, could not ask for better, could not ask for more, "
    "nothing to improve, unbelievable, cracking, smashing, out of this world, can not be better, to die for, "
    "very good, extraordinary, sublime, "
    "spectacular, exquisite, phenomenal, as good as you will see, something else",
    "good": "fine, nice, yoi, yoshi, ii, decent, proper, sound, correct, pleasant, pleasing, lovely, beautiful, "
    "attractive, handsome, "
    "respectable, commendable, satisfying, to my liking, "
    "all right, alright, in order, in good order, as it should be, as they should be, the way it should be, "
    "where it should be, up to standard, up to scratch, up to the mark, nothing wrong with it, nothing wrong, no complaints, "
    "no complaint, well done, well made, quite good, pretty good, rather good, fairly good, more than decent, "
    "above average, better than average, good quality, of good quality, not bad at all, very nice, really good, "
    "no complaint about, no complaint with, nothing to complain about, can not complain about, can not fault, hard to fault, "
    "no fault with, happy with, pleased with, i like, i love, i do like, i really like, good as gold, a joy, a treat, a plus, "
    "very pleasing, just right, the way i like it, how i like it, what i like, as i like it",
    "fair": "average, ordinary, middling, so so, okay, ok, passable, acceptable, mediocre, reasonable, tolerable, "
    "unremarkable, indifferent, nothing special, nothing much, nothing great, not great, nothing to shout about, "
    "nothing to write home about, run of the mill, middle of the road, neither good nor bad, neither here nor there, "
    "half decent, fair enough, good enough, will do, that will do, does the job, "
    "not bad, adequate, fair to middling, only fair, only average, only ok, just ok, just average, "
    "good enough for a pond fish, you could find on a thousand",
    "poor": "bad, warui, dame, ugly, awful, terrible, horrible, dreadful, lousy, inferior, miserable, rubbish, hopeless, "
    "disappointing, "
    "unattractive, wrong, off, no good, not good, not nice, not right, not up to much, not much good, not up to scratch, "
    "not up to standard, nothing to look at, leaves much to be desired, lets it down, a let down, a disappointment, "
    "below average, substandard, second rate, third rate, low quality, poor quality, bad quality, "
    "shocking, a mess, mess, a disaster, disaster, pathetic, dire, very poor, useless, abysmal, a joke, worthless, "
    "no good at all, not good at all, appalling",
}
_SEEDS = {"excellent": ("excellent", "superb"), "good": ("good",), "fair": ("fair", "average"), "poor": ("poor", "bad")}

NOT_BAD = (
    "not bad, not bad at all, not too bad, not so bad, not half bad, not too shabby, nothing wrong with, "
    "not much wrong with, not a lot wrong with, no problem with, no trouble with, could be worse, not the worst, "
    "i have seen worse, better than average, above average, decent, decent enough, good enough, passable"
)
"""Words for a level that is fair or good."""

DISAPPOINTING = (
    "could be better, should be better, might be better, not great, not the best, not the greatest, not wonderful, "
    "not brilliant, not up to much, not up to scratch, not up to standard, not good enough, "
    "leaves something to be desired, leave something to be desired, leaves a lot to be desired, lets it down, "
    "let it down, lets her down, lets him down, let down by, disappointing, disappointed with, below par, under par, "
    "below average, not what it should be, not convincing, unconvincing, nothing to write home about, "
    "nothing to shout about, could do with better, could use better, need better, want better, could have better, "
    "not really there, a weak point, weak point, weak spot, not its strong point, not her strong point, "
    "wish it had better, i would like better, not as good as i would like, not as good as it should be, "
    "not my favourite, not impressive, not impressed with, not happy with, not keen on, not in love with, "
    "i do not like, do not like, not to my liking, a letdown, needs work, not quite right, not right, "
    "not quite what i want, hardly good, less than perfect, not so good, not so great, not that good, "
    "not that great, not so hot, on the weak side"
)
"""What says that how a trait is is at most fair."""

TOO_LITTLE = (
    "not enough, lacking, lack, short on, wanting, could do with more, could do with a bit more, "
    "could use more, need more, want more, could have more, not much, too little, wish it had more, "
    "wish there was more, would like more, i would like more, no great"
)
"""What says that there is too little of something: of a colour that it covers too little, and not that it is weak."""

LACKING = f"{DISAPPOINTING}, {TOO_LITTLE}"
"""What says that a trait is at most fair."""


def as_praised(wordings: frozenset[str]) -> tuple[str, ...]:
    """What else says the same as one of some wordings: `decent` where `good` is one of them."""
    found = (name for name, seeds in _SEEDS.items() if not wordings.isdisjoint(seeds))
    return tuple(word for name in found for word in (name, *wordings_in(_CLASSES[name])))


def short_of(level: str, more: str) -> str:
    """What says that a trait falls short of a level: `not sharp enough`. more: the same by comparison, `sharper`."""
    return ", ".join(
        (
            each_of("not {level} {enough}", level=level, enough="enough|yet|enough yet"),
            each_of(
                "not as {level} as {wanted}",
                level=level,
                wanted="i would like|it should be|it could be|they should be|they could be|it might be|i like|i want|i hoped",
            ),
            each_of(
                "not {so} {level}",
                level=level,
                so="particularly|especially|exactly|overly|terribly|exceptionally|all that|that|so|too|very|really",
            ),
            each_of(
                "{far} {level}",
                level=level,
                far="none too|far from|less than|no longer|nowhere near|not nearly|not anywhere near",
            ),
            each_of("i would like {it} {more}", it="it|them|that|", more=more),
            each_of("could do with {more}", more=more),
        )
    )


def wished(nouns: str, more: str) -> str:
    """What says, with the name of a trait, that there could be more of it: `i would want the edges crisper`."""
    return each_of(
        "{wish} {nouns} {a_bit} {more}",
        wish="i would want|i would like|i would love|i would prefer|i want|i would have liked|i wish|would like|would love|"
        "would want|would prefer|would have liked",
        nouns="|".join(f"{the}{noun}" for noun in nouns.split("|") for the in ("", "the ")),
        a_bit="|a bit|a little|a touch|a shade|to be|were|was|to be a bit|was a bit|were a bit",
        more=more,
    )
