"""What stands at either end of a remark and says nothing of the fish: how it begins, how it ends, how well it is.

Common English usage, no source. Such words are left out only where a remark is not understood with them. Negations, hedges,
comparisons, other parts of the fish and questions are never among them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from enum import Enum

from koirules.notes.framing import before_frame, past_frame, reworded
from koirules.notes.tree import words_of_line
from koirules.vocabulary.phrases import spread

OPENERS = frozenset(
    spread(
        """
            careful, steady, watch out, careful (now|mind), poor (old
            |)(lamb|love|thing|mite|dear|soul|lad|girl|boy|darling)( has| is|),
            (when|if) you look( at (it|her|him)|)( down|)( from (above|the (top|side|front)|behind)|)
            ( the| it is| she is| he is|),
            (seen|looked at|viewed) from (the (side|front|top)|above|behind|below|on top),
            from the (side|top) (the|its|her|his|it|she|he)( is| has|),
            oh, ooh, hm, hmm, goodness( me|), gosh, blimey, wow, my word, well, and, now, but, actually, otherwise, else,
            still, here, there, yes, yeah, sure, sadly, luckily, thankfully, happily, sorry( but|), of course, (just |)look at
            (the|that|those|her|his|its|this), would you look at (the|that|those), (just |)look how, (you |)see how, (you
            |)notice how, notice (the|that), (you |)(see|notice) that, you can see( that| how|), you (will |)see, (i |we ) (do
            |)(like|love|notice|count|find|get|have|spot)( that|), i would call (it|that|this), what (a|an),
            (ever |)such (a|an), ever such, (it|she|he|this one|that one) (is|has) got( a|), one of (those|these), ever so,
            nice to see, good to see, lovely to see, what i (like|see|notice) is, (a |such a |what a |)(shame|pity)(
            about| with| for| because| that| but|), the (main|first|only|good|bad) thing is( that|), (main|first|only) thing
            is( that|), the (trouble|problem|fault|snag|point) is( that|), (trouble|problem|fault|snag) is( that|), the
            (best|worst) (thing|part) is( that|), (for the record|by the way|in general|all in all|on the whole|overall),
            (this|that) (one|fish|fellow)( here| now|)( has| is|), he says( that|), she says( that|), boss says( that|), the
            boss says( that|), they say( that|), i am told( that|), i was told( that|), must say, i must say, i have to say, i
            will say, to be honest, honestly, if i am honest, i admit, admittedly, granted, funny, strange, for some reason,
            (on|at) the other hand, on the plus side, on the minus side, on the good side, on the bad side, (good|bad) news,
            first of all, put it this way, let me put it this way, to begin with, to start with, finally, fish, what is
            (that|this|it)( then|), how long is (that|it|she|he|this)( then|), ok, okay, right so, right then, now then, so,
            ah, oh dear, er, erm, um, mm, mmm, ha, aha, blimey, crikey, whoops, oops, anyway, anyhow, alright, all right,
            whereas, although, though, because, even so, mind, mind you, bless (it|her|him), (and |but |)at least, in
            (any|that) case, either way, at any rate, all things considered, in fairness, to be fair, (okay |right |so |now
            |and |)first up( is|), (okay |right |so |now |and |)next up( is|), (and |so |)to finish, (and |)lastly, what
            (we|you) (have|have got|got) (here |)is( a| an|), what (we|you|i) are (looking at|seeing) (here |)is( a| an|),
            here (we|you) have (a|an), (we|you|i) have (got |)(here |)(a|an) (case|bit|touch|hint) of, (ooh |oh |ah |well
            |)now (that|this|there) is( what i call| what you call|)( a| an|), (ooh |oh |ah |well |)(that|this) is what
            (i|you) (call|would call)( a| an|), (that|this|it|she|he) is (one|another) of those( with|), (and |but |so |)i am
            (seeing|looking at|getting), (i|you|we) (can |)(do |)(see|notice)( there is| there are| it is| that|), the first
            thing (you|i) (see|notice)( is|), what (strikes|gets|catches|bothers|pleases|worries|impresses) (me|you|my eye)(
            first| most|)( is|), what i (do |)like is, i would (describe|put) (it|that|this|her|him) as( a| an|), i have got
            to say, i must (admit|confess)( that|), i will admit( that|), i (am happy|am glad|am pleased|am sorry|regret) to
            say( that|), happily, sad to say, sorry to say, strange to say, oddly( enough|), (it|she|he|this one|that
            one|this|that) (has |is |)got that (sort|kind|type) of, (it|she|he|this one|that one|this|that) has that
            (sort|kind|type) of, (my |the
            |)(wife|husband|son|daughter|father|mother|uncle|brother|helper|partner|mate|colleague) (says|said|calls
            it|thinks|reckons)( that|), (i|you) have to (say|admit|like|love|laugh)( that|), do not get me wrong( but|), i
            will grant you( that|), let me (say|tell you)( that|), as you can (see|tell), as i (said|say), like i say, between
            you and me, between ourselves, if you ask me, in my (view|book|opinion), to my mind, for (me|my money),
            personally, for what it is worth, truth be told, to tell (you |)the truth, if i am being
            (honest|picky|fussy|strict|hard), to be (picky|fussy|strict|blunt|exact|precise|frank), being
            (picky|fussy|strict|blunt), not to be (rude|unkind|picky|fussy) but, fair (enough|play)( but|)
        """
    )
)
"""What a remark may begin with before what it says."""

_OF_THE_REST = frozenset(spread("(the |)rest( of it|)( is|), apart from that( it is|), other than that( it is|)"))
"""What begins a remark on all that was not yet spoken of: a pattern is that of the whole fish all the same."""

_GOING_ON = frozenset(spread("(and |)then, (and |)also, plus, (and |)again"))
"""What goes on about the same fish: `then two patches` are two more, `then the body is thin` is all of it."""

TAGS = frozenset(
    spread(
        """
            for sure, basically, essentially, i fear, alas, (if (you|i|we) |)(count|counting) the (head|cap), (with the|including
            the|the) (head|cap) included, head included, to be fair, would not you (say|think|agree), do not you think, if i
            (am|was|want to be) (being
            |)(fussy|picky|strict|harsh|critical|honest), which i (like|love|do not like), something
            (terrible|awful|dreadful|rotten|shocking), i must say, i have to say, i will say, if i am honest, to be honest,
            honestly, i admit, admittedly, such
            as it is, such as they are, as well, too, then, there, here, again, this time, this year, (this|that) (one|fish),
            this fellow, mind, mind you, though, indeed, you know, you see, i tell you, i would say, i say, he says, she says,
            he said, she said, boss says, the boss says, boss said, the boss said, they say, i feel, i find, i see, you will
            see, thank heavens, thank goodness, thankfully, sadly, luckily, as usual, as always, as ever, of course, like i
            said, like always, in general, overall, all in all, on the whole, from here, (still |)from the
            (mud|pond|journey|trip|transport|move|bag), right now, at the moment, for now, so far, already, this early, at
            this stage, today, as it stands, as it should( be|), as they should( be|), as you would
            (want|expect|like|wish|hope), as wanted, as ordered, and all, and so on, and everything, or so they say, if you
            like, in fairness, in my opinion, to my eyes, bless her, bless him, no doubt, no question, without doubt, without
            (a |)question, if anything, for once, see, look, eh, huh, there you go, and no mistake, for the record, by the
            way, funnily enough, strangely enough, oddly enough, sure enough, for certain, no less, if you please, what more
            do you want, what more could you want, that is for sure, that is certain, sort of thing, type of thing, kind of
            thing, sort of pattern, type, innit, er, erm, um, ha, ha ha, bless, bless it, bless them, mark you, i grant you, i
            will grant you( that|), i will (give|grant) (it|her|him|you) that, would you (believe|credit)( it| that|), believe
            it or not, if you (follow|see|get|catch) (me|what i mean|my drift|my meaning), if (it|that) makes sense, pretty
            much, more or less, unfortunately, fortunately, regrettably, alas, i notice, i (must|have to) (admit|confess), at
            last, at least, at any rate, in any case, either way, all things considered, all told, when all is said and done,
            thank god, thank heaven, for a change, from (here|up here|where i (am|stand|sit)|this angle|this side), in my
            hand, for my money, to my mind, personally, so to speak, as (they|we) (say|call it|used to say), to put it
            (mildly|kindly|politely|nicely|gently), if i (may|can) say (so|that), if i do say so, (which|and that) is
            (nice|good|something|rare|lovely|handy|promising|fine|encouraging|a plus|a bonus|a good sign|a nice touch|no bad
            thing| what (i|you|we) (want|like|look for|are after)|how (i|you|we) (like|want) it|unusual|a relief|a shame|a
            pity|rare for a tosai|rare at this age|the main thing|not nothing), which (they|it|she|he|you|i|we)
            (do|does|like|likes|want|wants), which (counts|helps)( for a lot| a lot| no end|), which (always |)pleases me,
            which i (am pleased about|appreciate|like to see|always like), as (it|they) (often|usually|sometimes|always)
            (is|are|do|does), like (it|they) (does|do)( at this age|), at this (end|point), (as|like) you do, to be
            (exact|precise|honest with you|frank|blunt), i am (pleased|happy|glad|sorry) to (say|see|report), sorry to
            (say|see|report), glad to (say|see), good to see, nice to see, lovely to see, for (my|your) (sins|trouble), full
            stop, end of, and there it is, (i|you) (can not|could not) (complain|grumble)( about that|), no (two|2) ways about
            it, (there is|with) no (doubt|question|denying|arguing)( about (it|that)|), i am afraid, i am sorry, i am glad to
            say, i am sorry to say, happy to say, sorry to say, to look at, if you look, when you look, in the hand, in the
            bowl, on the board, for what it is worth, from day one, every time, each time, as i (like|want) it, as we like it,
            how it should be, how i like it, like it should be, the way it should be, right enough, all right, to finish, at
            the end of the day, lovely, beautiful, is the (kind|polite|right|only|best) word( for it|), which is something,
            somewhere( along the way| on the way| or
            other|), on the way here, where (it|they) should not( be|), where (it|they) should be
        """
    )
)
"""What a remark may end with behind what it says."""

_QUESTION = re.compile(
    r" (?:is|are|do|doe|did|has|have|was|were|would|can|will) not (?:it|they|she|he|you|we|that|this)\Z"
)
"""`isn't it`, `don't they`."""

_MOST = max(len(words) for words in OPENERS | TAGS)

_WORTH = words_of_line(
    "good nice fine lovely decent neat tidy proper clean clear bold strong pretty typical textbook classic perfect "
    "real true honest great beautiful handsome elegant simple plain ordinary average usual everyday correct right "
    "super excellent impressive attractive interesting modest standard regular well beautifully perfectly "
    "wonderfully prettily properly nicely neatly cleanly clearly evenly spaced balanced placed laid set arranged "
    "shaped weighted distributed spread graded flowing rhythm swing flow step"
)
_BETWEEN = words_of_line(
    "and all with a an the of it them each is are bit lot real some very quite rather pretty really so to as in "
    "good shape order"
)
_LEFT_OVER = _WORTH | _BETWEEN


class Bound(Enum):
    """What the rest of a remark may say, by what stands before it."""

    ANYTHING = "anything"
    CHOICE = "which of several it is"
    MEASURE = "how something is or where, and not how many there are"


def without_ends(tokens: tuple[str, ...]) -> Iterator[tuple[tuple[str, ...], Bound]]:
    """Tokens with less and less of what stands at either end, and what they may say then."""
    seen = {tokens}
    waiting = [(tokens, Bound.ANYTHING)]
    while waiting:
        words, bound = waiting.pop(0)
        for shorter, next_bound in _shorter(words):
            if shorter not in seen and Bound.ANYTHING in {bound, next_bound}:
                seen.add(shorter)
                both = bound if next_bound is Bound.ANYTHING else next_bound
                waiting.append((shorter, both))
                yield shorter, both


def _shorter(tokens: tuple[str, ...]) -> Iterator[tuple[tuple[str, ...], Bound]]:
    asked = _QUESTION.search(" ".join(tokens))
    if asked is not None:
        yield tokens[: -len(asked.group().split())], Bound.ANYTHING
    sizes = range(min(_MOST, len(tokens) - 1), 0, -1)
    if size := next((size for size in sizes if tokens[-size:] in TAGS), 0):
        yield tokens[:-size], Bound.ANYTHING
    if end := before_frame(tokens):
        yield tokens[:end], Bound.ANYTHING
    if start := past_frame(tokens):
        yield tokens[start:], Bound.ANYTHING
    for words in reworded(tokens):
        yield words, Bound.ANYTHING
    bounds = ((Bound.ANYTHING, OPENERS), (Bound.CHOICE, _OF_THE_REST), (Bound.MEASURE, _GOING_ON))
    for bound, openers in bounds:
        if size := next((size for size in sizes if tokens[:size] in openers), 0):
            yield tokens[size:], bound


def praised(tokens: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    """Tokens without words at the end that say how well it is: `three steps | all decent`, `inazuma | and good`."""
    at = len(tokens)
    while at > 1 and tokens[at - 1] in _LEFT_OVER:
        at -= 1
        if not _WORTH.isdisjoint(tokens[at:]):
            yield tokens[:at]
