"""Words around a statement that make it less sure, milder or a mere opinion, and how to read it without them.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import lru_cache

from koirules.notes.wishes import COMPARATIVES
from koirules.values import frozen
from koirules.vocabulary.phrases import spread
from koirules.vocabulary.wordings import tokens_of


@frozen(eq=False)
class Phrases:
    """Phrases in tokens; begins: those that begin with a word."""

    each: tuple[tuple[str, ...], ...]
    begins: Mapping[str, tuple[tuple[str, ...], ...]]

    @classmethod
    def of(cls, phrases: Iterable[tuple[str, ...]]) -> Phrases:
        """Phrases as tokens."""
        each = tuple(phrases)
        begins: dict[str, list[tuple[str, ...]]] = {}
        for words in each:
            begins.setdefault(words[0], []).append(words)
        return cls(each, {word: tuple(begun) for word, begun in begins.items()})


HEDGES = Phrases.of(
    spread(
        """
            i (think|guess|suppose|believe|reckon|suspect|expect|fancy|bet|would bet|would guess|would say|would still say|
            would think), it
            seems, seems, seem, (seems|seem|appears|looks|appear|look) to be, perhaps, maybe, probably, possibly, likely,
            nearly, almost, not quite, more or less,
            presumably, apparently, all but, i am not sure but, hard to say but, sort of, kind of, a touch,
            (might|may|could)( well|)
            be, (might|may|could) just be, close to, just about, just under, barely, as far as i can (see|tell), if i squint,
            if i see (right|it right), my guess( is|), at a guess, near enough, arguably, verging on, bordering on, by the
            look of it, to my eye, looks to me, i could be wrong but, i would (bet|put) (my |good |)money( on it|)( that|),
            (has|have) got to be, if (that|the) (last|little|small) (one|bit|patch|step)
            counts, unless i am mistaken, if i am not mistaken, must be, i should not wonder, i want to say, some would call
            (it|that|this), if you (count|look) kindly, being kind, (do not|i would not|i could not|can not) (quote me on
            (it|that)|hold me to (it|that)|swear to (it|that)|swear to it on oath|bet on (it|that)|put money on (it|that))(
            but| though|), (and |but |)(i |)(may|might|could) (well |)be (wrong|mistaken)( there| though| but| about that| on
            that|), (but |)i am no expert( but|), if i (had to|have to|must) (say|guess|bet|choose|call
            it|pick|decide|commit|put a name to it), if (pushed|pressed), if you (push|press) me, not certain but, i am not
            (certain|positive) but, hard to (be sure|tell|know)( but|), difficult to (say|tell)( but|), i am
            (inclined|tempted) to (say|call it|think|call that), i would be (inclined|tempted) to (say|call it|think), i would
            lean (to|towards), leaning (to|towards), (as |)far as i can (make out|judge|work out|tell|see)( from here|), from
            what i can (see|tell|make out), by the looks( of (it|her|him|things)|), from the looks of (it|her|him), (at|on)
            first (sight|look|glance), at a glance, i (would |)imagine, i (should|would) (think|say|imagine|guess|have
            said|have thought|hazard), i dare say, i daresay, i (am|feel) (fairly|pretty|almost|nearly|reasonably|quite)
            (sure|certain)( that|), (pretty|fairly|almost) (sure|certain), something like, practically, virtually, as good as,
            near as makes no difference, near as i can (tell|see|judge), what looks (to me |)like, (what |)(you|one|some)
            (might|may|could) (call|say)( it| that|), in a manner of speaking, if i am any judge, if my eyes are( not|)
            (right|deceiving me|lying), unless my eyes deceive me, unless the light (fools|is fooling|deceives) me, (for|in)
            the (most|main) part, by and large, or so it (seems|looks), so it (seems|looks|would seem), it would
            (seem|appear), it appears, appears, (it |that |)(looks|seems|appears) to me( like| that|), on the face of it, (for
            all|as far as) i know, or near enough, or close to it, or as good as, unless i (have
            |)(miscounted|miscount|misread it|misjudged it), unless i am wrong, if i (have |)(counted|count|read it|see it)
            right, i take it, i presume, i gather, i assume, i am guessing, i am thinking, if i had to
        """
    )
)
"""Words of somebody who is not sure."""

OPINIONS = Phrases.of(
    spread(
        """
            i (think|guess|suppose|believe|reckon|suspect|expect|fancy|bet|would bet|would guess|would say|would still say|
            would think),
            it seems, seems, seem, probably, likely, presumably, i want to say, must be, to my eye, looks to me
        """
    )
)
"""Those of them with which a verdict is still that verdict: `keep I suppose`."""

SOFTENERS = Phrases.of(
    spread("a tad, a shade, fairly, a trifle, a bit, a little bit, slightly, somewhat, a little, a touch")
)
"""Words that make a level a little less."""

_ISH = {
    f"{word}{word[-1] if word in {'big', 'thin', 'fat', 'slim', 'flat'} else ''}ish": word
    for word in tokens_of(
        "short long small big large broad wide narrow thick thin fat slim flat deep high low soft sharp weak strong "
        "plump heavy light dull round tall stiff"
    )
}
"""Words that say a level and make it a little less: `shortish`."""

ASIDES = Phrases.of(
    spread(
        """
            i mean, mind you, this time( for real|), for real, as a matter of fact, if you ask me, would you look at that,
            look at that, would you believe( it|), to be (fair|honest),
            i must say, i have to say, (though |)i will give (it|her|him) that, for once, for a change, i have to admit,
            (when |)(seen|viewed|looking|looked at|look|) from (on top|above|the top),
            (like|as) (it|they|she|he) should( be|)( at (this|that|its|her|his) (age|size|stage)|), for (its|her|his|this)
            (age|size),
            (compared to|considering|given) (its|her|his|the|this) (age|size|length|line),
            at this (age|size), at (its|her|his) (age|size), for a (baby|tosai|young fish|young one),
            in (this|that) light, (as|like) in the (book|books), i would call the, ha, haha, thanks god,
            (just |)where (you|i) want (it|them), which i (like|love), on (it|her|him|this one|that one|this fish|that fish),
            with (it|her|him), thank (god|goodness), no (question|doubt|mistake)( about it|), no two ways about it,
            bless (it|her|him), there is no denying, if you look( close| closely|), as (you|we) say,
            so far( as i can see|),
            i see, i can see, what (i|you) would call,
            i make it, call it, i would call it, i call it, what i call, shall we say, let us say,
            more or less everywhere, as you would expect, as i like (it|them), the way i like (it|them),
            (and |)that is (it|all|your lot|the lot), as they come, as you (like|please), and no more,
            if ever (i saw|there was) one, no complaints, anyhow, let us be honest, by half, and nothing messy,
            (from |)edge to edge,
            (that |which |)i do not (care for|trust|much like), (now |)(this|that) (one|fish) i would call,
            this fellow is,
            for (a|an) (spring|summer|autumn|winter|june|july|august|september|october|november|december)
            (fish|tosai|one),
            but it is (only |)(june|july|august|september|october|november|december)( yet| now|),
            surprisingly, (quite |)prettily, (where|as) you would (draw|put|want|have|like) it, fair and square,
            if you count (that|the) (thing|bit|spot|scrap|dot) (by|at|near|on) the (tail|head|shoulder),
            is (it not|not it), does (it not|not it), they call (that|it), that makes it,
            to me, looks like( to me|), on top of that, otherwise, apart from that,
            as it (happens|goes), by the way, in my book, to speak of, at all, whatsoever, to be seen, in sight,
            that i can (see|find), as such, worth (mentioning|a mention), for those who count, when you count,
            once it calms( down|) you see,
            but (it|she|he) is (only|just|still) (a baby|young|small|little), with a bit of give, to balance the head,
            (as |because |)(it|she|he) would not lie still, (as |because |)(it|she|he) (slid|slipped|moved|jumped) so,
            i (held|had|read|put) it wrong( way round|), this time for real, (the |)last one( is| was|), all the same,
            when (it|she|he) (stops|rests),
            (that is |which is |)the end of (my|the)( short| long|) board,
            (when |if |)(you |)(seen|looked at|look at (it|her|him)|look) from (the side|in front|the front|behind|below)
        """
    )
)
"""What may stand beside of a reading and says nothing of the fish."""


@lru_cache(maxsize=20_000)
def without(tokens: tuple[str, ...], phrases: Phrases) -> tuple[tuple[str, ...], bool]:
    """Tokens without some phrases, and whether there were any."""
    if phrases.begins.keys().isdisjoint(tokens):
        return tokens, False
    at, kept, found = 0, [], False
    while at < len(tokens):
        begun = phrases.begins.get(tokens[at], ())
        size = max((len(words) for words in begun if tokens[at : at + len(words)] == words), default=0)
        if size:
            found = True
            at += size
        else:
            kept.append(tokens[at])
            at += 1
    return tuple(kept), found


def softened(tokens: tuple[str, ...]) -> tuple[tuple[str, ...], bool]:
    """Tokens without what makes a level a little less, and whether there was any."""
    rest, soft = without(tokens, SOFTENERS)
    if _ISH.keys().isdisjoint(rest):
        return rest, soft
    return tuple(_ISH.get(token, token) for token in rest), True


_KINDS = frozenset({"sort", "kind", "type"})
_OF_A_KIND = frozenset(
    tokens_of(
        "colour red hi beni tone shade white orange edge kiwa sashi body shape head pattern skin finish shine lustre line "
        "fin build"
    )
)
_POINTING = frozenset(
    {"a", "an", "the", "this", "that", "some", "is", "are", "it", "what", "which", "same", "my", "no", "any"}
)
_ASKED_IN_PRAISE = frozenset({"is", "are", "do", "does", "doe", "has", "have"})
_SUBJECTS = frozenset({"the", "her", "his", "its", "she", "he", "they"})
_NO_PRAISE = frozenset(
    {
        "best",
        "worst",
        "most",
        "sort",
        "kind",
        "type",
        "1",
        "one",
        "way",
        "same",
        "only",
        "what",
        "case",
        "enough",
        "too",
        "quite",
        "yet",
        "very",
        "exactly",
    }
)

_MORE = frozenset(COMPARATIVES.values()) - {"whiter"}
_ROUNDABOUT = tuple(
    (words, ("not",))
    for words in spread("(not|hardly|scarcely) what (i|you|one) (would|could|should) (really |)(call|describe as|term)")
)


_CALLED = tuple(
    sorted(
        spread("i (would|will) (call|describe as|rate|rate as|put down as|say is|say are|say looks)( really| quite|)"),
        key=len,
        reverse=True,
    )
)
_NOT_CALLED = frozenset({"not", "what", "that", "which", "than", "and", "but", "if", "as", "or"})
_FAR_FROM = tuple(
    spread(
        "anything but, far from, nowhere near, not anywhere near, by no means, not by any means, (a |)long way (from|off)"
    )
)
_TOO = dict.fromkeys(
    spread(
        "(far|much|way|altogether|all|miles|lot|decidedly|a (good|fair|great) (bit|deal)|a lot|quite a bit) too, (far|way) "
        "far too"
    ),
    ("too",),
)
_DOUBTING = frozenset({"think", "believe", "reckon", "suppose", "imagine", "fancy"})
_VERBS = frozenset({"is", "are", "has", "have", "can"})
_FURTHEST = 8
_SEEMING = frozenset({"seem", "appear", "look"})
_LOOKS_LIKE = frozenset({("look", "like"), ("sound", "like"), ("seem", "like")})
_SHE = frozenset({("she",), ("he",), ("it",), ("they",)})
_IS = frozenset({("is",), ("are",), ("has",), ("have",)})
_TURNED = frozenset(
    {("gone", "missing"), ("went", "missing")}
    | {
        ("grown", word)
        for word in tokens_of(
            "crooked bent twisted short skew askew kinked deformed stunted lopsided uneven wonky too a"
        )
    }
)


def _as_it_is(tokens: tuple[str, ...]) -> tuple[str, ...]:
    """`seems to have a kink` as `seems has a kink`, and `has gone missing` as `has missing`."""
    kept: list[str] = []
    at = 0
    while at < len(tokens):
        if (
            tokens[at] in _SEEMING
            and tokens[at + 1 : at + 2] == ("to",)
            and tokens[at + 2 : at + 3] in {("be",), ("have",)}
        ):
            kept += ["seem", "is" if tokens[at + 2] == "be" else "has"]
            at += 3
        elif tokens[at : at + 4] == ("can", "not", "seem", "to"):
            kept += ["can", "not"]
            at += 4
        elif (
            tokens[at : at + 2] in _LOOKS_LIKE
            and tokens[at + 2 : at + 3] in _SHE
            and tokens[at + 3 : at + 4] in _IS
            and tokens[at + 4 : at + 5] != ("been",)  # `looks like she's been waxed` is a likeness
        ):
            kept += ["seem", *tokens[at + 2 : at + 4]]
            at += 4
        elif tokens[at + 1 : at + 2] and (tokens[at], tokens[at + 1]) in _TURNED:
            at += 1
        else:
            kept.append(tokens[at])
            at += 1
    return tuple(kept)


def _of_one_who_doubts(tokens: tuple[str, ...]) -> tuple[str, ...]:
    """`I don't think she is straight` as `I think she is not straight`."""
    if tokens[:3] != ("i", "do", "not") or tokens[3:4] == () or tokens[3] not in _DOUBTING:
        return tokens
    rest = tokens[4 + (tokens[4:5] == ("that",) and tokens[5:6] not in {("is",), ("was",)}) :]
    at = next((at for at, token in enumerate(rest[:_FURTHEST]) if token in _VERBS), 0)
    return ("i", "think", *rest[: at + 1], "not", *rest[at + 1 :]) if at and rest[at + 1 :] else tokens


def _roundly_denied(tokens: tuple[str, ...]) -> tuple[str, ...]:
    """`anything but straight` as `not straight`, and `far too thin` as `too thin`; `far from the head` says where."""
    for words in _FAR_FROM:
        if tokens[-1 - len(words) : -1] == words:
            return (*tokens[: -1 - len(words)], "not", tokens[-1])
    for words, instead in _TOO.items():
        at = next((at for at in range(len(tokens) - len(words)) if tokens[at : at + len(words)] == words), -1)
        if at >= 0:
            return (*tokens[:at], *instead, *tokens[at + len(words) :])
    return tokens


def plainly_told(tokens: tuple[str, ...]) -> tuple[str, ...]:
    """Tokens without what makes a plain statement sound like a doubt or a denial.

    `a persimmon sort of colour` is a persimmon colour; `isn't the kiwa sharp` says that it is, `isn't sharp` that it is not.
    """
    if tokens[1:2] == ("not",) and tokens[0] in _ASKED_IN_PRAISE and tokens[2:3] and tokens[2] in _SUBJECTS:
        rest = tokens[2:]
        superlative = any(token in _NO_PRAISE or (len(token) > 5 and token.endswith("est")) for token in rest)
        if len(rest) > 1 and not superlative:
            tokens = (*rest[:1], tokens[0], *rest[1:]) if rest[0] in {"she", "he", "they"} else rest
    for at in range(len(tokens) - 2):
        if (
            tokens[at] in {"could", "might"}
            and tokens[at + 1] == "be"
            and not _MORE.isdisjoint(tokens[at + 2 : at + 5])
        ):
            tokens = (*tokens[:at], "should", *tokens[at + 1 :])  # `could be sharper` is no doubt
    for words in _CALLED:
        at = next((at for at in range(1, len(tokens) - len(words)) if tokens[at : at + len(words)] == words), 0)
        if at and tokens[at - 1] not in _ASKED_IN_PRAISE and tokens[at - 1] not in _NOT_CALLED:
            tokens = (*tokens[:at], *tokens[at + len(words) :])  # `the pattern I'd call decent`
    tokens = _roundly_denied(_of_one_who_doubts(_as_it_is(tokens)))
    for said, instead in _ROUNDABOUT:
        at = next((at for at in range(len(tokens)) if tokens[at : at + len(said)] == said), -1)
        if at >= 0:
            tokens = (*tokens[:at], *instead, *tokens[at + len(said) :])
    at = next((at for at in range(1, len(tokens) - 3) if tokens[at] == "as" == tokens[at + 2]), -1)
    if at >= 0 and tokens[at + 3] in {"a", "an"}:
        tokens = (*tokens[:at], *tokens[at + 1 :])
    if _KINDS.isdisjoint(tokens):
        return tokens
    kept: list[str] = []
    at = 0
    while at < len(tokens):
        told = tokens[at] in _KINDS and tokens[at + 1 : at + 2] == ("of",) and tokens[at + 2 : at + 3]
        if told and tokens[at + 2] in _OF_A_KIND and kept and kept[-1] not in _POINTING:
            at += 2
            continue
        kept.append(tokens[at])
        at += 1
    return tuple(kept)
