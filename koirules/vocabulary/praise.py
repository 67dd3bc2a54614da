"""Words of praise and blame that people use of anything, from bad to excellent. Common English usage, no source.

A vocabulary says which level of a trait `good` or `poor` is, beside its name. Who says so may as well say `decent` or `awful`.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import wordings_in

_CLASSES = {
    "excellent": "superb, outstanding, perfect, exceptional, magnificent, splendid, wonderful, fantastic, terrific, brilliant, "
    "gorgeous, stunning, marvellous, marvelous, amazing, incredible, flawless, faultless, spotless, impeccable, "
    "first class, class one, first rate, top class, top drawer, top notch, top, tip top, world class, show class, show quality, "
    "high class, high quality, top quality, best quality, super, spot on, textbook, ideal, immaculate, second to none, "
    "as good as it gets, hard to better, hard to beat, could not be better, could not ask for better, could not ask for more, "
    "nothing to improve",
    "good": "fine, nice, decent, proper, sound, correct, pleasant, pleasing, lovely, beautiful, attractive, handsome, "
    "respectable, commendable, satisfying, to my liking, "
    "all right, alright, in order, in good order, as it should be, as they should be, the way it should be, "
    "where it should be, up to standard, up to scratch, up to the mark, nothing wrong with it, nothing wrong, no complaints, "
    "no complaint, well done, well made, quite good, pretty good, rather good, fairly good, more than decent, "
    "above average, better than average, good quality, of good quality, not bad at all",
    "fair": "average, ordinary, middling, so so, okay, ok, passable, acceptable, mediocre, reasonable, tolerable, "
    "unremarkable, indifferent, nothing special, nothing much, nothing great, not great, nothing to shout about, "
    "nothing to write home about, run of the mill, middle of the road, neither good nor bad, neither here nor there, "
    "half decent, fair enough, good enough, will do, that will do, does the job, "
    "not bad",
    "poor": "bad, ugly, awful, terrible, horrible, dreadful, lousy, inferior, miserable, rubbish, hopeless, disappointing, "
    "unattractive, wrong, off, no good, not good, not nice, not right, not up to much, not much good, not up to scratch, "
    "not up to standard, nothing to look at, leaves much to be desired, lets it down, a let down, a disappointment, "
    "below average, substandard, second rate, third rate, low quality, poor quality, bad quality",
}
_SEEDS = {"excellent": ("excellent", "superb"), "good": ("good",), "fair": ("fair", "average"), "poor": ("poor", "bad")}


def as_praised(wordings: frozenset[str]) -> tuple[str, ...]:
    """What else says the same as one of some wordings: `decent` where `good` is one of them."""
    found = (name for name, seeds in _SEEDS.items() if not wordings.isdisjoint(seeds))
    return tuple(word for name in found for word in (name, *wordings_in(_CLASSES[name])))
