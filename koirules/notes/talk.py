"""What sorters say that is no reading of today: verdicts, forecasts, comparisons with another fish, and mere talk.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from functools import lru_cache
from itertools import pairwise

from koirules.notes.numbers import number_at
from koirules.notes.tree import SKIPPED
from koirules.vocabulary.phrases import examples_of, sequel_of, wordings_in
from koirules.vocabulary.wordings import tokens_of


def spread(wordings: str) -> Iterator[tuple[str, ...]]:
    """The tokens of every wording of a list of patterns with commas."""
    for pattern in wordings_in(wordings):
        for text in examples_of(sequel_of(pattern)):
            if tokens := tokens_of(text):
                yield tokens


CORRECTIONS = frozenset(
    spread(
        """
            (no |oh |)wait( no|), correction, correct that, rather, sorry( no|), no sorry, scratch that,
            (no |)i (mean|meant), make that, on second (look|thought), oops, wrong, let me correct( that|), strike that,
            (no |)hang on, (no |)hold on, my mistake, i tell a lie, (no |)that is wrong, i was wrong, forget that
        """
    )
)
"""Words that take back what was said before them."""

CORRECTS_AHEAD = (
    *spread(
        "no that is, no it is, no she is, no he is, no they are, no there are, well actually, no actually, or rather"
    ),
    *CORRECTIONS,
)
"""Words that take back what was said before them by what follows in the same remark."""

MILD_CORRECTIONS = frozenset(spread("(no |oh |)wait, sorry, oops, hang on, hold on, well actually"))
"""Those of them that are said as well where there is nothing to take back."""

CORRECTS_BEHIND = tuple(spread("actually, i mean, i meant, rather, sorry, that is, it was, i should say"))
"""The same, behind what holds instead: `only the left actually`."""

CORRECTS_BETWEEN = tuple(
    spread("no, no sorry, sorry, sorry no, no wait, i mean, or rather, make that, no make that, correction, no it is")
)
"""The same, between what does not hold and what does: `nidan sorry sandan`."""

HEDGES = tuple(
    spread(
        """
            i (think|guess|suppose|believe|reckon|suspect|expect|fancy|bet|would bet|would guess|would say|would think),
            it seems, seems, seem, perhaps, maybe, probably, possibly, likely, nearly, almost, not quite, more or less,
            presumably, apparently, i am not sure but, hard to say but, sort of, kind of, a touch,
            (might|may|could)( well|) be, (might|may|could) just be, close to, just about, just under, barely,
            as far as i can (see|tell), if i squint, if i see (right|it right), my guess( is|), at a guess, near enough,
            arguably, verging on, bordering on, by the look of it, to my eye, looks to me, i could be wrong but,
            if (that|the) (last|little|small) (one|bit|patch|step) counts,
            unless i am mistaken, if i am not mistaken, must be, i should not wonder, i want to say,
            some would call (it|that|this),
            if you (count|look) kindly, being kind
        """
    )
)
"""Words of somebody who is not sure."""

SOFTENERS = tuple(
    spread("a tad, a shade, fairly, a trifle, a bit, a little bit, slightly, somewhat, a little, a touch")
)
"""Words that make a level a little less."""

ASIDES = tuple(
    spread(
        """
            mind you, this time( for real|), for real, as a matter of fact, if you ask me, would you look at that,
            look at that, would you believe( it|), to be (fair|honest),
            i must say, i have to say, (though |)i will give (it|her|him) that, for once, for a change, i have to admit,
            (when |)(seen|viewed|looking|looked at|look|) from (on top|above|the top),
            (like|as) (it|they|she|he) should( be|)( at this (age|size)|), for (its|her|his|this) (age|size),
            at this (age|size), at (its|her|his) (age|size), for a (baby|tosai|young fish|young one),
            in (this|that) light, (as|like) in the (book|books), i would call the, ha, haha, thanks god,
            (just |)where (you|i) want (it|them), which i (like|love), on (it|her|him|this one|that one|this fish|that fish),
            with (it|her|him), thank (god|goodness), no (question|doubt|mistake)( about it|), no two ways about it,
            bless (it|her|him), there is no denying, if you look( close| closely|), as (you|we) say,
            so far( as i can see|),
            i see, i can see, i make it, call it, i would call it, i call it, what i call, shall we say, let us say,
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


def without(tokens: tuple[str, ...], phrases: tuple[tuple[str, ...], ...]) -> tuple[tuple[str, ...], bool]:
    """Tokens without some phrases, and whether there were any."""
    begins = _by_first_word(phrases)
    if begins.keys().isdisjoint(tokens):
        return tokens, False
    at, kept, found = 0, [], False
    while at < len(tokens):
        size = max(
            (len(words) for words in begins.get(tokens[at], ()) if tokens[at : at + len(words)] == words), default=0
        )
        if size:
            found = True
            at += size
        else:
            kept.append(tokens[at])
            at += 1
    return tuple(kept), found


@lru_cache(maxsize=8)
def _by_first_word(phrases: tuple[tuple[str, ...], ...]) -> dict[str, list[tuple[str, ...]]]:
    found: dict[str, list[tuple[str, ...]]] = {}
    for words in phrases:
        found.setdefault(words[0], []).append(words)
    return found


# ---- Verdicts

_IT = "it|her|him|this one|that one|this|that|this fish|that fish|them"
_VERDICTS: Mapping[str, str] = {
    "in": f"""
        in, keep, (a |)keeper( for sure|), for sure in, a sure keeper, in but only just, just in, in after all, is in,
        goes in,
        definitely in, surely in, in please, take ({_IT}), take in, stays( in|), yes in, in for me,
        in (it|she|he) (goes|stays),
        i (want|would take|would have|would buy|would keep|will keep|will take|keep|take|am keeping) ({_IT}),
        would (take|have|keep)( it|), buy it, mine( all mine|), that is mine, no doubt in, without doubt in,
        certainly in,
        definitely a keeper, one to keep, worth keeping,
        (it|she|he|this one|that one) (stays|is staying|is a keeper|is mine|stays with me|stays here),
        (it|she|he|this one|that one) is staying( with me| here| with us), staying, keep ({_IT}), keep keep( keep|),
        keeping( {_IT.replace("|", "| ")}), of course i am keeping (it|that|this), leave ({_IT}) in,
        (let us |i will |)hold on to ({_IT}), hang on to ({_IT}), top (box|drawer|shelf|tank|row),
        the top (box|drawer|shelf|tank|row), (into |in |)the good (box|tub|tank|row), (into |in |)the keepers,
        risk it, i would risk it, worth the risk, keep (them |)both, good enough,
        stays for (a|one|another) (season|summer|winter|year),
        keep ({_IT}) for (a|one|another) (season|summer|winter|year),
        give (it|her|him) (a|one|another) (summer|season|winter),
        (as a grower |)(it would be |it is |)worth it( as a grower|), give ({_IT}) a second look and keep,
        keep ({_IT}|it) (just |only |)for the (red|body|head|skin|pattern|white|colour|bone|frame)( alone| for once),
        keep (just |only |)for the (red|body|head|skin|pattern|white|colour|bone|frame)( alone| for once),
        keep (it |her |him |)whatever( (colour|pattern|size) (it|she|he) is|),
        one for (me|us|the keepers), i would gamble, worth a gamble, worth growing( on|), one to grow( on|), grow ({_IT}) on,
        to grow on, to keep, straight in, no i like it, not letting ({_IT}) go, i am not letting ({_IT}) go,
        not selling ({_IT}), not for sale, i am having ({_IT}), i will have ({_IT}), (that is |)coming home with me,
        (i |)take( take|), i buy, do not (you |)dare sell ({_IT}), (i would |)hold on to ({_IT}), comfortable keeper,
        (in |)with the (good|kept) (ones|fish|lot), do not let anyone( else|) see this one, yes alright, yes all right,
        treat and keep,
        (into |in |to |)(the |)(good|keep|keeper|keepers) (basin|bowl|vat|tub|bucket|net|pond),
        (the |)boss (said|says|wants) (in|keep|yes|it|to keep (it|her|him)), (he|she|they) (said|says) (in|keep),
        (in|keep) (he|she|they|the boss) (said|says), (in|keep) i was told, i would (hang|hold) on to ({_IT}),
        feed ({_IT}),
        (i would |i will |let us |)grow ({_IT}) (anyway|all the same|out), i would risk ({_IT}), risk ({_IT}),
        worth the risk,
        i would (put|bet) (real |good |my |)money on ({_IT}), (definitely |)(into |)the growing (pond|tub|tank|vat),
        keep fine,
        let us be (generous|kind)( with ({_IT})|), worth (a|another|one more) (winter|season|summer|year)( of food| of
        feed| food| feed|),
        worth (its|her|his) (food|feed|keep), fine keep, キープ, 残す, 残し
    """,
    "out": f"""
        out, throw out, throw it out, eliminate( ({_IT})|), eliminated, disqualify( ({_IT})|), disqualified,
        a disqualification,
        (that is |)a disqualification, not showable, not for the (show|bench|table|show bench), not on my (table|bench),
        no (fish|kohaku|sanke|showa|koi) for the (table|bench|show), (would get|gets|will get) no votes,
        would not get a vote, i would sell ({_IT}), away, take ({_IT}) away, leave it( out|), let (it|her|him) go, cull,
        culled, cull it, out (it|she|he|you) goes,
        out (you|they) go, no use, of no use, useless, (i |)can not sell ({_IT}), ({_IT}) i can not sell, nobody buys that,
        rubbish, out after all, is out, goes out, definitely out, surely out, take (it |her |him |)out, no good( out|),
        so out, not for me, no thanks( you|), goes, it goes, can go, has to go, must go, away with (it|her|him),
        not good enough, i would not keep ({_IT}), would not keep, not a keeper,
        not worth (keeping|the food|the space|the room|the feed|growing on), no keeper, not keeping( it| her| him|),
        reject,
        rejected, reject it, do not keep, out with ({_IT}), bin, (in |into |for |)the bin, bin ({_IT}), chuck,
        chuck ({_IT}),
        chuck ({_IT}) out, (go |)on then out, (go |)on out,
        (put (it|her|him) |goes |go |)(with|to|in with) the (cheap|cheaper|pond|garden|shop|others to go)
        (ones|fish|lot|box),
        (the |)cheap (box|ones|and cheerful table|table|tub|tank),
        off to the (garden centre|pond|cheap|shop|sale) (box|ones|tub|), (the |)garden centre( box| fish|), pond fish,
        (a |)(pond|pet shop|hobby|hobby tank|garden pond|garden) fish, sell (it|her|him) on, not here, not mine,
        not staying,
        (it|she|he) is not staying, no good to me, no use to me, (i will |i |)pass( on this one| on that one|),
        i do not want ({_IT}), do not want ({_IT}), no sale, no chance, no way, forget (it|this one|that one),
        off (you|it|she|he) (go|goes), give (it|her|him) away, not this one, not that one, not a chance,
        (can|could) not (keep|use) ({_IT}), i can not (keep|use) ({_IT}), nobody wants that, nobody will buy that,
        (can|could) not show ({_IT}), it is out, it is a no, it is a no from me, a no from me, i would say no, i say no,
        has to be out, must be out, i would put it out, i would put (it|her|him) out, put (it|her|him) out,
        (i |)(not|no|do not|will not|would not) (take|buy)( {_IT.replace("|", "| ")}), i would not, (a |)dealer fish,
        (goes |)(in |into |to |)(the |)(budget|bargain|sale) (tank|tub|bin|box|vat|shelf|table),
        out of (the lot|the batch|here|this (tub|tank|basin|lot)), (out|goes out|it goes out) for that( alone|),
        (into |in |to |)(the |)(out|cull|reject|bad|sale|shop) (basin|bowl|vat|tub|bucket|net|tank|box|pond),
        (the |)boss (said|says|wants (it|her|him)) (out|no), (he|she|they) (said|says) out,
        out (he|she|they|the boss) (said|says),
        out i was told, (i |)(can|could) not sell (that|it|this) to (anybody|anyone|somebody|people),
        i would pass( on ({_IT})|),
        (so |)no (i am |)afraid( not|), i am afraid not, i would not (gamble|risk it|bother|take the risk),
        out (it|she|he) must go,
        (it |she |he |)must go out, (goes |)(in|into|to) the (mixed|cheap|shop) (box|tub|lot), no i do not see it,
        i do not see it, (i |)would not want ({_IT}) (in |)(with|among|near) (the |my |)(others|rest|good ones),
        i (can|could) not (shift|move|place) ({_IT}), (a |)shop (fish|quality|grade|stock), shop, ハネ, はね, 除外
    """,
    "unsure": f"""
        unsure, could go either way, either way, not sure( yet| about ({_IT})|), i am not sure( yet| about ({_IT})|),
        undecided, second group, we wait, wait( a bit| a while|), (we |)feed and (see|look again),
        feed ({_IT}) and (see|look again), treat and (look|bench|see) again, maybe in, maybe out, perhaps in, perhaps out,
        do not know( yet|), (oh |)i do not know( yet|),
        i do not know i do not know, second look,
        look again( later| in spring| in autumn| tomorrow| next week| in a week| another day| another time|),
        (have a |take a |)look at (it|her|him) again, to look again,
        (can not|could not|i can not) (decide|say|tell)( yet|),
        in or out, on the fence, open, maybe, perhaps, (let us |)wait and see, let us (wait|see)( again|),
        keep an eye on ({_IT}), who knows, no idea, let us see again, needs a second look, second look please,
        borderline,
        fifty fifty, (we|i) will (see|look again)( later|), (and |)(then |)we (talk|will talk),
        (we|i) will (see|look) when (it|she|he) is settled, look again when (it|she|he) is settled,
        (i am |)in two minds,
        two minds, of two minds, leave (it|her|him) to one side,
        (put|set) (it|her|him) (to one side|aside|by)( for now|),
        leave (it|her|him) (a|another) (minute|moment|while|day|week|month|bit)( longer|),
        leave (it|her|him) for (now|later|a minute|a moment|a while), hold ({_IT})( over| back|), hold (over|back),
        let me (think|sleep|think about it|sleep on it), (i will |)sleep on (it|that),
        let me sleep on (it|that|this one),
        try again( later| tomorrow|), (a |)bit of a gamble, a gamble, tough (one|call), hard (one|call),
        difficult (one|call), watch (it|her|him|this one), one to watch, needs watching a while,
        (i |)can not make up my mind, the jury is out, jury is out, toss up, a toss up, coin toss, toss a coin,
        (a |)question mark, do not (chuck|bin|cull|throw out|sell|write off) (it|her|him) (yet|off yet|just yet),
        ask me (again|later|tomorrow|next week|again later|again tomorrow),
        i would ask (the boss|him|her|somebody|someone)( about ({_IT})| on that one|),
        ask the boss( about ({_IT})| on that one|), (can not|can not quite) tell yet, on hold, hold for now, wait for now,
        (put |set |)(back|aside) for the boss( to (see|look at|decide)|), for the boss( to (see|look at|decide)|),
        boss to decide,
        (the |)boss (wants|has|needs) to (see|look|decide|look at (it|her|him))( later| himself| herself| tomorrow| first|),
        (the |)boss (decides|looks|will decide|will look|will see)( later| himself| herself| tomorrow| again|),
        let the boss (see|decide|look)( at (it|her|him)|), the boss can (decide|look)( later|), boss decide,
        (do not know |not sure |)(so |)put (it|her|him) (aside|to one side|to the side|on the side), aside,
        (not sure |unsure |)(so |)(the |)(back|side) of the (tub|basin|tank), quarantine( first|), (into |in |to |)quarantine,
        i wait, (i |)hesitate, (i |)ask (a |my |the |)(friend|wife|husband|brother|father|son), (i |)think about ({_IT}),
        (i will |i |)think about, no decision( yet| today| till (it|she|he) is better|), (check|see) again,
        (somewhat|rather) doubtful,
        (let us |i would |)say maybe, let us say maybe, put ({_IT}) with the (maybe|perhaps|doubtful)( ones| lot| box|),
        with the maybe( lot| ones|), (the |)maybe (box|tub|lot|pile),
        (i would |i will |let us |)(give|leave) ({_IT}) (till|until)
        (spring|autumn|summer|winter|next year|next month|next week),
        wait (till|until|for) (spring|autumn|summer|winter|next year|next month),
        wash and look( again|), (wash|clean|rinse) ({_IT}) and look( again|),
        feed (it|her|him) up( first|)( and( then|) see|), decide later, later, come back to ({_IT}),
        i will come back to ({_IT}), back to that one later, 保留, 迷う
    """,
}
_LEADS = frozenset(
    spread(
        """
            sure, oh, well, right, fine, ok, okay, so, yes, yeah, yep, sigh, sorry, anyway, anyhow, then, and, but, of course,
            definite, definitely, absolutely, certainly, surely, clear, clearly, easy, i say, i would say, for me, hm, hmm, ah,
            um, er, now, still, a, an, it is, it is a, that is, that is a, she is, he is, she is a, he is a, this one is,
            this one is a, go on, alright, all right
        """
    )
)
_TAILS = frozenset(
    spread(
        """
            then, though, anyway, anyhow, for me, for now, please, thanks, now, all the same, after all, still,
            for sure,
            sadly, no (doubt|question|contest|discussion), with (tears|regret|pleasure|joy|a heavy heart), i am afraid,
            and that is that, straight away, at once, every time, any day, any time, all day( long|),
            without (a |)(doubt|question|hesitation), sweetheart, darling, my love, my girl, my boy, mate, lads, boss, i say,
            i would say, today, again, too, also, for cheap, end of story,
            for my (big |small |own |)(tank|pond|customer|shop), i am sorry, sorry, on the spot, right away
        """
    )
)
_BOUND = frozenset({"and", "but", "because", "so", "though", "as", "since"})
_AS_LONG = frozenset({"till", "until", "and", "for"})
_JOINED = _BOUND | _AS_LONG | {"on", "with", "that"}
_OPEN_ENDED = frozenset({"out", "bin", "chuck", "cull", "keep", "hold", "reject"})
_NEVER_ALONE = frozenset(spread("leave it, take it, in, open, later, maybe, perhaps, can go, it goes, goes"))
WHOLE_VERDICTS = frozenset(spread("mine, open, later, goes, pass, staying, shop, bin, chuck, hold, take, hesitate"))
"""Verdicts of one word that stand for something else beside other words: `mine has red lips`, `fins open`."""
_IRREAL = frozenset(tokens_of("if unless when not never would could should no or than once until maybe"))
_NAMED = frozenset({"it", "she", "he", "her", "him", "them", "this", "that"})


def _bare(tokens: tuple[str, ...]) -> tuple[str, ...]:
    """Tokens without the fish and without words that say nothing."""
    pairs = zip(("", *tokens), tokens, strict=False)
    return tuple(
        token
        for before, token in pairs
        if token not in SKIPPED and token not in _NAMED and not (token in {"1", "one"} and before in {"this", "that"})
    )


def _by_words() -> dict[tuple[str, ...], str]:
    found = {words: verdict for verdict, wordings in _VERDICTS.items() for words in spread(wordings)}
    bare: dict[tuple[str, ...], set[str]] = {}
    for words, verdict in found.items():
        bare.setdefault(_bare(words), set()).add(verdict)
    return found | {
        words: next(iter(each))
        for words, each in bare.items()
        if len(words) > 1 and len(each) == 1 and words not in found
    }


VERDICTS = _by_words()
"""Whole remarks that are a verdict, and the word that the column `verdict` takes."""


def verdict_of(tokens: tuple[str, ...], verdicts: Mapping[tuple[str, ...], str]) -> str | None:
    """The verdict that a whole remark is, with what may stand before and behind it."""
    while tokens:
        found = verdicts.get(tokens) or verdicts.get(tuple(token for token in tokens if token not in SKIPPED))
        found = found or verdicts.get(_bare(tokens))
        if found is not None:
            return found
        rest = _without_ends(tokens)
        if rest == tokens:
            return None
        if tokens[0] == "no" and (found := verdict_of(rest, verdicts)) is not None:
            return found if found == "out" else None  # `no out you go`, but not `no keep`
        tokens = rest
    return None


def _without_ends(tokens: tuple[str, ...]) -> tuple[str, ...]:
    for size in range(min(4, len(tokens) - 1), 0, -1):
        if tokens[:size] in _LEADS or (size == 1 and tokens[0] == "no"):
            return tokens[size:]
    for size in range(min(4, len(tokens) - 1), 0, -1):
        if tokens[-size:] in _TAILS:
            return tokens[:-size]
    return tokens


def verdict_beside(
    tokens: tuple[str, ...], verdicts: Mapping[tuple[str, ...], str]
) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Verdicts that a remark begins or ends with, each with the rest of it: `out and I'll regret it`, `a pity but out`."""
    while tokens[0] != "no" and (rest := _without_ends(tokens)) != tokens and tokens[-len(rest) :] == rest:
        tokens = rest
    for at in range(1, len(tokens)):
        begins, rest = tokens[:at], tokens[at + 1 :]
        twice = begins == rest[: len(begins)]  # `an out and out beauty`
        verdict = verdicts.get(begins) if tokens[at] in _JOINED and rest and not twice else None
        if verdict is not None and begins not in _NEVER_ALONE:
            bound = tokens[at] in _BOUND or (tokens[at] in _AS_LONG and verdict == "unsure")
            if begins[0] in _OPEN_ENDED or (bound and (at > 1 or verdict == "unsure")):
                yield verdict, rest
        if tokens[at] in {"so", "but", "then", "and"} and rest and _IRREAL.isdisjoint(tokens[:at]):
            verdict = verdict_of(rest, verdicts)
            if verdict is not None and (tokens[at] != "and" or verdict == "unsure"):
                yield verdict, tokens[:at]


# ---- Forecasts

_MAY_COME = frozenset({"will", "may", "might", "shall", "later", "tomorrow", "eventually", "someday"})
_MENDS = (
    "heal|mend|knit|ripen|improve|grow (back|out|in)|fill (in|out|up)|wash out|even out|colour up|catch up|come (good|right)|"
    "wear off|go away|grow (apart|together)|come back"
)
_CHANGES = (
    f"{_MENDS}|fade|deepen|thicken|settle|sharpen|tighten|brighten|shrink|disappear|vanish|clear|darken|lighten|pull back|"
    "break up|open up|close up|tidy up|clean up|firm up|dry up|get (better|worse|there)|come right|move up|"
    "peel off|rub off|die off|"
    "drop off|fall off|come (back|up|through|and go|later)|recover"
)
_MOVES = (
    f"{_CHANGES}|close|spread|split up|drop|go|come (in|on|out)|grow (together|into it|on)|break down|"
    "turn (out|into|white|black|red)|get (bigger|smaller)|move (back|on)|sink|rise|develop|come away|slip|change|look like|"
    "stay|stretch|last|hold|set|finish|open|pull|tidy|fill|throw"
)
_SOON = (
    "usually|often|mostly|always|normally|generally|sometimes|never|rarely|seldom|hardly ever|as a rule|more often than not|"
    "9 time out of 10|in time|with (age|time|growth|size|the water)|by (spring|summer|autumn|winter|nisai|sansai|then|itself)|"
    "at (2|3|4|5|nisai|sansai)|in (2|3|4|5|a few|a) (year|month|week|fortnight|season)|"
    "in (a|the) (fortnight|mud|pond|spring|summer|autumn|winter)|in (spring|summer|autumn|winter)|"
    "next (year|spring|summer|autumn|season|month|week)|over (winter|summer)|after (a|the) (while|winter|summer)|in the end|"
    "one day|1 day|soon|once it (grow|settle)|when (grown|bigger|older|the water \\w+)|"
    "when (it|she|he|they) (grow|get|settle|slow|fill)"
)


def _pattern(text: str) -> str:
    return "(?:" + text.replace("(", "(?:").replace(" ", r"\s") + ")"


_MEND, _CHANGE, _MOVE, _WHEN = map(_pattern, (_MENDS, _CHANGES, _MOVES, _SOON))
_OF_IT = (
    r"(?:that|it|they|those|these|this|she|he)(?:\sis)?"
    r"(?:\s(?:the|a)\s(?:1|one|sort|kind|type|red|white|black|fish)\s(?:that|which|to))?\s(?:can\s|do\s|doe\s|just\s|all\s|also\s)*"
)
_OR_NOT = (
    r"(?:\s(?:fine|well|nicely|quick|quickly|slow|slowly|again|too|you\sknow|by\sitself|and\sstay|or\sit\sdoe\snot|"
    rf"or\sdoe\snot|or\sthey\sdo\snot|or\snot|(?:on|in)\s(?:the\s)?\w+|{_WHEN}))*\Z"
)
_FORECASTS = re.compile(rf"(?:{_OF_IT}(?:{_WHEN}\s)?{_CHANGE}|{_MEND}){_OR_NOT}")
_USUALLY = re.compile(rf"(?:(?:that|it|they|those|these|this|she|he)\s(?:\w+\s){{0,8}}?)?{_MOVE}(?!\w)")
_IN_TIME = re.compile(rf"(?<!\w){_WHEN}(?!\w)")
_CAN_CHANGE = re.compile(rf"(?:can|could|should)\s(?:not\s|still\s|well\s|easily\s|just\s|all\s)*{_MOVE}(?!\w)")
_ALSO_NOT = re.compile(rf"{_MOVE}\s(?:\w+\s)?or\s(?:it|they|that)?\s?(?:doe|do)\snot\Z")
_SHOULD_COME = re.compile(r"should\s(?:still\s|well\s)?come(?:\s(?:on|along|good|in|right|i think|i would say))?\Z")
_FORETOLD = tuple(
    spread(
        """
            going to, in time, when it grows, when grown, next year, expected to, give it a year, give it time,
            needs time,
            needs a year, in a year, in spring, next spring, next season, grow back, grow out, grow in, go away,
            come in later, fill in, that clears, it clears, clear up, usually clears, usually closes, promise, tategoi,
            tateshita, going nowhere, (is|are) still coming, the best (you will|it will|you) get,
            as good as (it|she|he) gets, what you see is what you get, one for the future,
            once it (grows|settles|is grown|has grown), when it is (grown|bigger|older),
            when (she|he) is (grown|bigger|older), in (two|three|four|five|a few) years, show fish, one for the shows,
            (long term|long time) (fish|project), (an |)easy sale, only youth, late (type|developer), still coming, slow growth,
            (becomes|become|becoming) (a |)(monster|giant|jumbo), never seen (that|it|one|those) (fill|close|heal|go),
            comes with (age|time|size|growth|the years), never (turns|becomes) (to|into), all (its|her|his) life,
            there is your jumbo, future jumbo, (can|will) follow, (this|that) one grows,
            i have seen (it|them|that|those) (vanish|disappear|go|clear|mend|come back),
            when (it is |)(big|full grown|grown up),
            future, potential, hardly ever catch up, keep it heals,
            (gone|finished|over) by (spring|summer|autumn|winter|two|three|four)( years|),
            stays small, too early (to say|to tell|that),
            (and |)then it is a (proper|real|true|good|fine) (nidan|sandan|yondan|(two|three|four)( step|-step|
            stepper)),
            mostly (goes|that goes|clears), clears by (two|three|spring|autumn|summer),
            leaves (ippon|nidan|sandan|yondan), comes and goes, wait till (it|she|he)
        """
    )
)


def is_forecast(tokens: tuple[str, ...]) -> bool:
    """Whether a remark is about what will come of a fish, and not about what it is."""
    tokens = without(tokens, ASIDES)[0]
    text = " ".join(tokens)
    grown = "when" in tokens  # `could be powerful when big`
    if not grown and any(first in {"could", "should", "can"} and second == "be" for first, second in pairwise(tokens)):
        return False  # `could be sharper` is said of today
    if _MAY_COME.intersection(tokens) or _CAN_CHANGE.search(text):
        return True
    if any(tokens[i : i + len(words)] == words for words in _FORETOLD for i in range(len(tokens))):
        return True
    if _FORECASTS.match(text) or _SHOULD_COME.search(text) or _ALSO_NOT.search(text):
        return True
    return _USUALLY.match(text) is not None and _IN_TIME.search(text) is not None


# ---- Comparisons

_COMPARATIVE = re.compile(
    r"(?:better|worse|longer|shorter|bigger|smaller|slimmer|heavier|lighter|darker|redder|whiter|wider|narrower|thicker|thinner|"
    r"sharper|softer|cleaner|stronger|weaker|finer|broader|deeper|paler|higher|lower|nicer|fuller|rounder|smoother|poorer|"
    r"duller|[a-z]{3,}ier|more|less|le)\Z"
)
_ANOTHER = (
    r"(?:(?:fish|number|no)\s\d+|\d+(?=\Z|\s(?:but|and|though|only|if|without|with|too|again|was|is|in|at|"
    r"from|less|minus|plus)\b)|"
    r"(?:(?:the|that|this|any|every|all|most|half|some)\s)?(?:of\s)?(?:the\s)?"
    r"(?:last|other|previous|(?:first|second|third|next)\s(?:fish|1|one)|lot|winner|"
    r"rest of (?:them|the lot|the tub|the batch)|"
    r"mother|father|parent|brother|sister|twin|average|tub|batch|bunch|(?:1|one) before)(?!\w)|"
    r"(?:the|that|this|any|every)\s1(?!\w))"
)
_LIKE = r"(?:^|look |just |much |bit |lot )like "
_COMPARES = re.compile(
    rf"\bthan\s(?:in\s|on\s|with\s|for\s)?{_ANOTHER}|\b(?:compared\s(?:to|with)|"
    rf"same\s(?:\w+\s)?(?:as|like)|similar\sto|reminds?\sme\sof|"
    rf"(?:twin|sister|brother|copy|double|image|spit)\s(?:of|to))"
    rf"\s{_ANOTHER}|\b(?:as|so)\s\w+\s(?:\w+\s)?as\s{_ANOTHER}|{_LIKE}{_ANOTHER}|"
    rf"^(?:nearly |almost |just )?(?:good|nice|clean|strong|long|big|sharp|white|broad) as {_ANOTHER}|"
    rf"{_LIKE}(?:that|this|the (?:big|small)) (?:one|1|fish)|"
    r"\b(?:had|saw|seen|kept|sold|bred) (?:a |an )?(?:one|1|another|fish) (?:just |exactly )?like (?:this|that|it|her|him)\b|"
    r"^as \d+ (?:but|only|with|without)\b|^no (?:better|worse) (?:and|or|nor) (?:no )?(?:worse|better)\Z|"
    r"^\w{3,}er from (?:the )?(?:other|rest)"
)
"""What one fish is compared with: another one, and not what its colour is like."""
_MOST = re.compile(
    r"(?:^|\b(?:the|is|of|so)\s)(?:\w{3,}est|best|worst|nicest|most \w+|least \w+)"
    r"(?:\s(?:1|one|fish|head|skin|body|red|white|black|pattern))?\s"
    r"(?:so\sfar|yet|(?:till|until|up\sto)\s(?:now|here|today)|to\sdate|today|this\smorning|of\stoday|"
    r"(?:(?:of|in|among)\s(?:the|this|all|my)\s(?:lot|tub|batch|bunch|tank|bowl|them|others|pond|row|year|vat|other))|"
    r"of\sthem\sall|of\sall|here|i\s(?:have\s)?seen(?:\stoday|\sso\sfar|\syet)?)(?!\w)"
)
_MOST_OF_ALL = re.compile(
    r"(?:and |so |now |this is |that is |it is |she is |he is |by far )*(?:the )?"
    r"(?:longest|shortest|smallest|biggest|largest|heaviest|lightest|slimmest)(?: (?:1|one|fish))?\Z"
)
_OF_ANOTHER = re.compile(
    r"(?:fish |number )?(?:[5-9]|\d\d+) (?:was|is|had|looked) (?:much |a bit |even |a lot )*(?:longer|shorter|bigger|smaller|"
    r"better|worse|thicker|thinner|wider|deeper|heavier|lighter|redder|whiter|rounder|nicer)\Z|"
    r"(?:everything else|the rest|rest|otherwise) (?:is )?(?:just )?like (?:fish |number )?\d+\Z"
)
_THAN_ALL = re.compile(
    r"(?:(?:it|she|he|this 1|that) is |really |much |far |a lot |a bit |lot |bit |even |clearly )*\w{3,}er than "
    r"(?:the )?(?:rest|other|most)(?: of them)?\Z"
)
"""What is said of the whole fish beside all the others: `really much smaller than the rest`."""
_PAIRED = frozenset(
    tokens_of("left right one eye pec pectoral side cheek fin gill pelvic flank lobe half patch step spot edge")
)


def is_comparison(tokens: tuple[str, ...], *, after: bool) -> bool:
    """Whether a remark speaks of another fish. after: whether it stands behind one that does."""
    text = " ".join(tokens)
    if number_at(tokens, 0) is None and (found := _COMPARES.search(text)) is not None:
        before = frozenset(text[: found.start()].split())
        # Of a pair: `left eye smaller than the other`.
        return not (re.search(r"\b(?:other|1)", found.group()) and before & _PAIRED)
    if _MOST.search(text) or _THAN_ALL.match(text) or _MOST_OF_ALL.match(text) or _OF_ANOTHER.match(text):
        return True
    led = tokens[0] in {"but", "only", "just", "and"} and len(tokens) > 1
    return after and (led or _COMPARATIVE.match(tokens[0]) is not None) and any(map(_COMPARATIVE.match, tokens))


# ---- Talk

_TALK = frozenset(
    spread(
        """
            ooh, oho, oh, ah, aha, ha, haha, ahem, mm, mmm, hmm, phew, gosh, blimey, crikey, dear me, oh dear( me|),
            (my |)goodness( me|), my my, well well( well|), right then, here we go, (now |)let us see( now|), now then,
            now we are talking, (would you |)look at (that|you|her|him|it),
            (oh |)(hello|hey) (you|there|again|gorgeous|beautiful|handsome), come here( you|), hold still( you|),
            stop (wriggling|jumping|splashing|it|that), there (we are|we go|you are|you go), what a (pity|shame),
            (a |)(pity|shame)( that| about that| really|), such a (pity|shame),
            poor (thing|little thing|old thing|girl|boy|love|soul), never mind( that|),
            doesn't (bother|worry) me( much| at all|)( that|), that doesn't (bother|worry) me( much|),
            not the end of the world, i (do not|can) mind( that|), no matter, that is all( for this one| there is|),
            that is it( really|), nothing (else|more)( to say| to report| to note| to add|),
            nothing (you|i|we) can do about (it|that), (the |)last one, (the |)last fish, (the |)next one( please|),
            next please, (the |)first one, (we are |)half way( through|)( now|), halfway( through|)( now|),
            halfway (there|through the (tank|tub|lot|batch))( now|),
            (one|two|three|four|five|ten|a few) (to go|left to go|more to go), (nearly|almost) (there|done|finished),
            clever (fish|girl|boy), who is a pretty (fish|girl|boy), bless (her|him|it|its heart|her heart|his heart),
            you know (that|the) (sort|kind|type), you know what i mean, you know how it is, if you know what i mean,
            what can (you|i|we) (do|say), what else, anything else, where was i, moving on, on we go, on to the next,
            they always (slip|put|get) one in, (that is|it is|that|) (not|no) a fault, (that is|it is) no fault,
            minor, a minor (thing|point|matter), hard to place, (the |)last entry, quality over pattern, you learn to see it,
            nothing else to look at, that is how it should be, how it should be, they go together, rare at this age,
            poorly bred,
            they all (have|get) (it|that|them)( off the mud| from the mud| in (spring|autumn)|), just no,
            put (it|her|him) gently,
            put (it|her|him) (back|down|out) gently, nothing pulls me, spreads them like a lady,
            (but |)forget the (pattern|patterns|red|colour|white|head|body|size)( for now| for once| for a moment|),
            (red|colour|pattern|white|size) i do not care about( yet| now|),
            i do not care about (the |)(red|colour|pattern|size)( yet|),
            (i |)do not (even |)tell me the (pattern|price|colour|parents), so it goes, that is life, such is life,
            there is always one, always something, (it is |)always the same,
            (i am |)in no hurry, no hurry, take your time, easy now, easy does it, gently( now|), careful( now|),
            (a bit |)(too |)(early|late) for my liking, not to my (taste|liking), to my (taste|liking), (a |)matter of taste,
            (goes |)((into|in|to) (the|a) |)salt (basin|tub|bath|bucket|tank|bowl)( for a (day|week|few days)| first| tonight|),
            salt (basin|tub|bath|bucket|tank|bowl) (till|until) (somebody|someone|the boss) (looks|has a look|has looked),
            i held (it|her|him) wrong, (it|she|he) (slid|slipped|moved|jumped)( back|)( before i measured| again|), half done,
            nothing to (say|add|report|note|see), (this one|it|she|he) took (a while|ages|some time) to catch,
            (one|you) can not have everything, i (do not|did not) hate (it|her|him|this|that|this one|that one),
            oh hello, (not bad |neither good )(not|nor) (good|bad),
            not good not bad, neither (good nor bad|one nor the other),
            (that is |)(usually|mostly|normally) a no (with|from|for) me,
            (it |she |he |)(looks|look) like a frog, (and |)(the last|the next|last|next|another) little
            (devil|beast|rascal|madam|thing),
            (the |)(mud|muck) (is |)still on (it|her|him), (it|she|he) jumps about( so i can barely see| too much|),
            comical( really|),
            (rather |quite |really |)(comical|funny)( really| looking| little thing|), no more to say,
            nothing more to say, enough said,
            (i |)(can|could) not see( it| it well| that| properly|), it went under the others,
            that is the (first|second|third|fourth|fifth|sixth)
            (out|in|keeper)( in this tub| in this lot| so far| today|), i call them,
            (spent|had) (its|a|her|his) (bad summer|summer badly|hard summer),
            each to (his|their) own, give (it|her|him) to the (kids|children|neighbours), takes all sorts, wet hands,
            my (pencil|pen) (broke|is broken|has gone|ran out),
            sorry (one|a) moment, one moment( please|), just a (moment|minute|second), give me a (moment|minute|second),
            what have we here, what is this, what do we have here, where did you come from,
            who put this one in( here|), next, last,
            why do they do this( to me|), hello, come on( then|), come on you, or (doesn't|does not|not|so they say),
            or it doesn't, so they say, net did (that|it)( this morning| i reckon| yesterday| today| i think|),
            (that is |that was |)(from |)the net, net damage i (reckon|think|guess),
            that is (blood|stress|water|the light|the water|the stress) from the (move|trip|bag|bags|net),
            that is just the (light|water|bag|trip|move|camera), but that is the trip, might be the light,
            trick of the light,
            (some|plenty|they|most) (like|love|want|hate|prefer) (it|that|this|those|these|them|a bit of that),
            the (kids|children|wife|buyers|customers|boss|shop) (will|would) (like|love|want) (it|that|this|this
            one|that one),
            not my (fault|problem), not everybody's cup of tea, not everyone's cup of tea, not my cup of tea, would you,
            is it not, does it not, you see, you know, i know( i know|), i said so, i told you, as usual, same as ever,
            price is price, (mid|middle|low|high|top|fair|good) price, price (good|fair|low|high|ok|okay), middle shelf,
            very important (for|to) me, (very |)(funny|fun|nice) for (children|the children|kids|the kids),
            let me wipe( it| her| him|), i find (it|her|him) (charming|funny|sweet|cute|pretty), no harm( in it| done|),
            (an |)oddity, (boss|my boss|the boss) (does not|do not) (like|want) (it|this|that)( one|),
            (it |that |)(look|looks|looking) (angry|grumpy|cross|surprised),
            (it |that |)gives (it|her|him) (a|an) (angry|grumpy|cross|surprised|funny) (look|face),
            (from |)(travel|transport) stress( i know this| i know that|),
            (then|until) i saw (it|her|him) from (behind|the front|the side|above),
            as always, (fifty|sixty|seventy|forty|thirty|twenty) (already|done), (i am |)getting (tired|cold|hungry)
        """
    )
)
_OF_PEOPLE = re.compile(
    r"(?:but |and |though )?(?:some|other|most|many|all|few|not all)?\s?"
    r"(?:(?:young |old )?(?:people|folk|men|women)|buyer|(?:girl |boy |my |our )?customer|(?:the )?(?:child|children|kid)|"
    r"(?:my |the )?(?:wife|husband)|"
    r"my \w*(?:son|daughter|father|mother|uncle|brother)|"
    r"some|other|everybody|everyone|nobody|somebody|someone|"
    r"they all|(?:the )?judge)\s"
    r"(?:(?:really|do|do not|just|always|also|even|would|will) )?(?:love|like|hate|pay|want|go for|prefer|ask|buy|mind|take|"
    r"forgive|notice|collect|see that)"
    r"(?!\w)(?! than)"
)
_ELSEWHERE = frozenset(
    tokens_of(
        "pencil pen phone tea coffee lunch dinner breakfast sandwich glasses boots towel radio rain heron cat dog paperwork "
        "clipboard battery torch camera pump hose bucket"
    )
)
_ASKING = frozenset({"who", "why", "where", "how", "whose"})
_IF_ONLY = re.compile(
    r"(?:(?:but )?(?:if|otherwise|or else) .*\b(?:would|had|have been|were)\b|(?:i|it|she|he|that) would have )"
)


def is_talk(tokens: tuple[str, ...]) -> bool:
    """Whether a remark is one of those that say nothing of a fish."""
    return tokens in _TALK or _bare(tokens) in _BARE_TALK or _OF_PEOPLE.match(" ".join(tokens)) is not None


def is_aside(tokens: tuple[str, ...], speaks: Callable[[], bool]) -> bool:
    """Whether a remark that nothing reads is talk: of people and things at the tub, a question, what might have been.

    speaks: whether it speaks of some trait; then somebody should read it again.
    """
    text = " ".join(tokens)
    of_others = not _ELSEWHERE.isdisjoint(tokens) or tokens[0] in _ASKING or _IF_ONLY.match(text) is not None
    return of_others and not speaks()


_BARE_TALK = (
    frozenset(_bare(words) for words in _TALK) - {()} - {words for words in map(_bare, _TALK) if len(words) < 2}
)
