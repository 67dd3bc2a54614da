"""How people praise and find fault, whatever of: words for the levels of traits. Common practice, no source."""

from __future__ import annotations

from koirules.vocabulary.phrases import each_of

SUPERB = (
    "superb, excellent, outstanding, perfect, fantastic, amazing, wonderful, exceptional, incredible, unbelievable, "
    "out of this world, second to none, as good as it gets, could not be better, can not be better, top drawer, top notch, "
    "top class, top quality, first class, first rate, world class, to die for, magnificent, very good, super, top, tops, "
    "extraordinary, sublime, spectacular, stunning, gorgeous, impeccable, faultless, brilliant, "
    "exquisite, splendid, phenomenal, as good as you will see, something else"
)
"""Words for the best level of a trait."""

GOOD = (
    "good, nice, fine, lovely, great, beautiful, pleasing, spot on, very nice, really good, decent and good, quite good, "
    "pretty good, no complaint about, no complaint with, "
    "nothing to complain about, can not complain about, can not fault, hard to fault, no fault with, "
    "happy with, pleased with, i like, i love, "
    "i do like, i really like, to my liking, good as gold, a joy, a treat, a plus, very pleasing, in order, "
    "as it should be, where it should be, just right, the way i like it, how i like it, what i like, as i like it"
)
"""Words for a good level of a trait."""

NOT_BAD = (
    "not bad, not bad at all, not too bad, not so bad, not half bad, not too shabby, nothing wrong with, "
    "not much wrong with, not a lot wrong with, no problem with, no trouble with, could be worse, not the worst, "
    "i have seen worse, better than average, above average, decent, decent enough, good enough, passable"
)
"""Words for a level that is fair or good."""

FAIR = (
    "fair, average, middling, ok, okay, ordinary, acceptable, reasonable, so so, all right, alright, "
    "mediocre, run of the mill, tolerable, adequate, neither here nor there, unremarkable, fair to middling, half decent, "
    "nothing special, middle of the road, good enough for a pond fish, you could find on a thousand, "
    "fair enough, moderate, medium"
)
"""Words for a level in the middle."""

LACKING = (
    "could be better, should be better, might be better, not great, not the best, not the greatest, not wonderful, "
    "not brilliant, not up to much, not up to scratch, not up to standard, not good enough, not enough, lacking, lack, "
    "short of, short on, wanting, leaves something to be desired, leave something to be desired, "
    "leaves a lot to be desired, "
    "lets it down, let it down, lets her down, lets him down, let down by, disappointing, disappointed with, below par, "
    "under par, below average, not what it should be, not convincing, unconvincing, nothing to write home about, "
    "nothing to shout about, could do with more, could do with better, could do with a bit more, could use more, "
    "could use better, need more, need better, want more, want better, could have more, could have better, not much, "
    "too little, not really there, a weak point, weak point, weak spot, not its strong point, not her strong point, "
    "wish it had more, wish it had better, wish there was more, would like more, i would like more, i would like better, "
    "not as good as i would like, not as good as it should be, not my favourite, no great, not impressive, "
    "not impressed with, not happy with, not keen on, not in love with, i do not like, do not like, not to my liking, "
    "a letdown, needs work, not quite right, not right, not quite what i want, hardly good, less than perfect, "
    "not so good, not so great, not that good, not that great, not so hot, on the weak side"
)
"""What says that a trait is at most fair."""

POOR = (
    "poor, bad, weak, terrible, awful, dreadful, rubbish, shocking, hopeless, horrible, no good, a mess, mess, a disaster, "
    "disaster, pathetic, dire, very poor, useless, ugly, abysmal, a joke, shot, no good at all, worthless, "
    "not good at all, appalling"
)
"""Words for the lowest level of a trait."""


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
            each_of("{far} {level}", level=level, far="none too|far from|less than|no longer"),
            each_of("i would like {it} {more}", it="it|them|that|", more=more),
            each_of("could do with {more}", more=more),
        )
    )
