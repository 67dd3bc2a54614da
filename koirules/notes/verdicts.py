"""What sorters say that becomes of a fish: it stays, it goes, or they are not sure.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise

from koirules.notes.tree import SKIPPED, bare
from koirules.notes.verdict_clauses import by_clause
from koirules.notes.verdict_forms import ADVERBIALS, HEADS, SALE, SOLD, by_form
from koirules.values import frozen
from koirules.vocabulary.phrases import spread
from koirules.vocabulary.wordings import tokens_of

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
        worth (its|her|his) (food|feed|keep), fine keep, tategoi( surely| for sure|),
        ((that is |it is |she is |he is |i see |)(a |)|surely a )show fish( this one| for sure|), yes please, キープ, 残す, 残し
    """,
    "out": f"""
        out, throw out, throw it out, good riddance, eliminate( ({_IT})|), eliminated, disqualify( ({_IT})|), disqualified,
        a disqualification,
        (that is |)a disqualification, not showable, not for the (show|bench|table|show bench), not on my (table|bench),
        no (fish|kohaku|sanke|showa|koi) for the (table|bench|show), (would get|gets|will get) no votes,
        would not get a vote, away, take ({_IT}) away, leave it out, let (it|her|him) go, cull,
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
        (put (it|her|him) |goes |go |)(with|to|in with) the others to go, not here, not mine,
        not staying,
        (it|she|he) is not staying, no good to me, no use to me, (i will |i )pass( on this one| on that one|),
        i do not want ({_IT}), do not want ({_IT}), no sale, no chance, no way, forget (it|this one|that one),
        off (you|it|she|he) (go|goes), give (it|her|him) away, not this one, not that one, not a chance,
        (can|could) not (keep|use) ({_IT}), i can not (keep|use) ({_IT}), nobody wants that, nobody will buy that,
        (can|could) not show ({_IT}), it is out, it is a no, it is a no from me, a no from me, i would say no, i say no,
        has to be out, must be out, i would put it out, i would put (it|her|him) out, put (it|her|him) out,
        (i |)(not|no|do not|will not|would not) (take|buy)( {_IT.replace("|", "| ")}), i would not,
        out of (the lot|the batch|here|this (tub|tank|basin|lot)), (out|goes out|it goes out) for that( alone|),
        (into |in |to |)(the |)(out|cull|reject|bad) (basin|bowl|vat|tub|bucket|net|tank|box|pond),
        (the |)boss (said|says|wants (it|her|him)) (out|no), (he|she|they) (said|says) out,
        out (he|she|they|the boss) (said|says),
        out i was told, (i |)(can|could) not sell (that|it|this) to (anybody|anyone|somebody|people),
        i would pass( on ({_IT})|),
        (so |)no (i am |)afraid( not|), i am afraid not, i would not (gamble|risk it|bother|take the risk),
        out (it|she|he) must go,
        (it |she |he |)must go out, no i do not see it,
        i do not see it, (i |)would not want ({_IT}) (in |)(with|among|near) (the |my |)(others|rest|good ones),
        i (can|could) not (shift|move|place) ({_IT}),
        (not a|no) (show fish|tategoi), not me, ハネ, はね, 除外
    """,
    SOLD: f"""
        sell, for sale, to sell, sell ({_IT})( on|), i (will|would|am going to) sell ({_IT})( as (a|an) (character|oddity|pet)|),
        pond fish, (a |)(pond|pet shop|hobby|hobby tank|garden pond|garden|patio pond|dealer|shop|market|bargain) fish,
        (put (it|her|him) |goes |go |)(with|to|in with) the (cheap|cheaper|pond|garden|shop) (ones|fish|lot|box),
        (the |)cheap (ones|and cheerful table), off to the (garden centre|pond|cheap|shop|sale) (box|ones|tub|),
        (the |)garden centre( box| fish|), (a |)(shop|pond|hobby|garden|market) (quality|grade|stock), shop, garden,
        ship( ({_IT})|), 販売
    """,
    "unsure": f"""
        unsure, keep (as|for) a (maybe|perhaps), keep ({_IT}) (as|for) a (maybe|perhaps),
        could go either way, either way, not sure( yet| about ({_IT})|), i am not sure( yet| about ({_IT})|),
        undecided, second group, we wait, wait( a bit| a while|), (we |)feed and (see|look again),
        feed and look,
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
            sure, oh, ooh, oof, ugh, argh, meh, eh, erm, mm, mmm, gosh, goodness, oh dear, alas, well, right,
            fine, ok, okay, so, yes, yeah, yep, sigh, sorry, anyway, anyhow, then, and, but, of course,
            definite, definitely, absolutely, certainly, surely, clear, clearly, easy, i say, i would say, for me, hm, hmm, ah,
            um, er, now, still, a, an, it is, it is a, that is, that is a, she is, he is, she is a, he is a, this one is,
            this one is a, go on, alright, all right
        """
    )
)
_TAILS = frozenset(
    spread(
        """
            then, though, anyway, anyhow, for me, for now, please, thanks, now, all the same, after all,
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
_MAY_END = frozenset(spread("in, hold, take, tick, bin, chuck, ship"))
_JOINED = _BOUND | _AS_LONG | {"on", "with", "that"}
_OPEN_ENDED = frozenset({"out", "bin", "chuck", "cull", "keep", "hold", "reject"})
_NEVER_ALONE = frozenset(spread("leave it, take it, in, open, later, maybe, perhaps, can go, it goes, goes"))
WHOLE_VERDICTS = frozenset(
    spread(
        "mine, open, later, goes, staying, shop, garden, ship, bin, chuck, hold, take, hesitate, tick, cross, pass, bet, line,"
        "market, trade, auction"
    )
)
"""Verdicts of one word that stand for something else beside other words: `mine has red lips`, `fins open`."""
_OF_TWO_SENSES = frozenset(spread("cut, gone, down, back, up"))
"""`like 8 but cut`: the red is."""
_IRREAL = frozenset(tokens_of("if unless when not never would could should no or than once until maybe"))


def _by_words() -> dict[tuple[str, ...], str]:
    found = {words: verdict for verdict, wordings in _VERDICTS.items() for words in spread(wordings)}
    without_fish: dict[tuple[str, ...], set[str]] = {}
    for words, verdict in found.items():
        without_fish.setdefault(bare(words), set()).add(verdict)
    return found | {
        words: next(iter(each))
        for words, each in without_fish.items()
        if len(words) > 1 and len(each) == 1 and words not in found
    }


_ASKING = frozenset(spread("would, should, could, shall, do, did, can, why, who, must"))
_ASKED = frozenset(spread("i, you, we, they, he, she, anyone, anybody"))
_OTHERS = frozenset(spread("he, she, they"))
_OF_THINGS = frozenset(tokens_of("keep hold take leave open pass bin chuck sell feed put watch"))
_ARTICLES = frozenset(tokens_of("the a an my your our their"))
_OF_ANOTHER_SENSE = frozenset(
    spread(
        """
            look out, watch out, see out, come out, come in, sell well, keep still, hold still, keep well, hold there, on me,
            on you, on us, keep quiet, keep there
        """
    )
)
_ITS = frozenset({("it",), ("her",), ("him",)})
_INTO = frozenset(tokens_of("in into on up back down over to with out off away"))
_HELD_ON = frozenset({("hold", "on"), ("keep", "on")})
VERDICTS = _by_words()
"""Whole remarks that are a verdict: `in`, `out`, `unsure`, or `sold` of a fish that leaves for money."""


@frozen
class Verdicts:
    """Verdicts as a page says them. words: whole remarks, with what the column `verdict` takes.

    sales: the words of each of the page's own grades that are a sale. A fish that is sold has that grade; it is out where the
    page has none.
    """

    words: Mapping[tuple[str, ...], str]
    sales: Mapping[str, frozenset[str]]

    @classmethod
    def of(cls, grades: Mapping[str, str]) -> Verdicts:
        """Those of a page. grades: each grade's name, by its name and its title."""
        sales: dict[str, frozenset[str]] = {}
        for words, grade in grades.items():
            if SALE.fullmatch(" ".join(tokens_of(words))) or _kind_of(tokens_of(words), VERDICTS) == SOLD:
                sales[grade] = sales.get(grade, frozenset()) | {*tokens_of(words)}
        named = {tokens_of(words): grade for words, grade in grades.items()}
        return cls({**VERDICTS, **named}, sales)

    def told(self, verdict: str | None, tokens: tuple[str, ...]) -> str | None:
        """A verdict in these words as the page calls it; None where it has several grades of sales that they may mean."""
        if verdict != SOLD:
            return verdict
        meant = [grade for grade, words in self.sales.items() if not words.isdisjoint(tokens)] or list(self.sales)
        if len(meant) > 1:
            return None
        return meant[0] if meant else "out"


_AT_LARGE = frozenset({"wife", "husband", "customer", "buyer", "people", "folk"})
"""Who does not decide at the tub."""
_UNDECIDED = frozenset(
    {("better", "cut"), ("not", "mind"), ("keep", "still"), ("hold", "still"), ("stay", "still"), ("sit", "still")}
)


def _is_undecided(tokens: tuple[str, ...]) -> bool:
    """Whether nobody at the tub decides anything: who does not mind, of what does not keep still, what others would say."""
    return not _UNDECIDED.isdisjoint(pairwise(tokens)) or tokens[:1] == ("they",) or not _AT_LARGE.isdisjoint(tokens)


def verdict_of(tokens: tuple[str, ...], verdicts: Verdicts) -> str | None:
    """The verdict that a whole remark is, with what may stand before and behind it."""
    return None if _is_undecided(tokens) else verdicts.told(_kind_of(tokens, verdicts.words), tokens)


def verdict_in_words(tokens: tuple[str, ...], verdicts: Verdicts) -> str | None:
    """The verdict that a whole sentence is, all of whose words are those of verdicts."""
    return None if _is_undecided(tokens) else verdicts.told(by_clause(tokens), tokens)


def _kind_of(tokens: tuple[str, ...], verdicts: Mapping[tuple[str, ...], str]) -> str | None:
    so_far = ""
    while tokens:
        found = verdicts.get(tokens)
        if found is None and tokens[-1:] in _ITS and tokens[:-1] not in VERDICTS:
            found = verdicts.get(tokens[:-1])  # `sell it`, where `sell` is a grade of the page
        found = found or by_form(tokens)
        if found is None and not _means_more(tokens):
            found = verdicts.get(tuple(token for token in tokens if token not in SKIPPED)) or verdicts.get(bare(tokens))
        if found is not None:
            return _with_ends(found, so_far, tokens)
        rest = _without_ends(tokens)
        if rest == tokens:
            rest, end = _shorter(tokens)
            so_far = so_far or end
        elif tokens[0] == "no":
            found = _kind_of(rest, verdicts)
            return found if found in {"out", SOLD} else None  # `no out you go`, but not `no keep`
        if rest == tokens:
            return None
        tokens = rest
    return None


def _with_ends(found: str, end: str, tokens: tuple[str, ...]) -> str | None:
    """A verdict with what stood behind it. end: of which kind that was, `till` a time or `see` again."""
    if not end:
        return found
    if tokens == ("gone",) or (tokens in WHOLE_VERDICTS | _NEVER_ALONE and tokens not in _MAY_END):
        return None  # `goes for the nose`
    if found in {"out", SOLD}:
        return None if end in {"till", "see"} else found
    return "unsure" if end == "see" else found


def _shorter(tokens: tuple[str, ...]) -> tuple[tuple[str, ...], str]:
    """Tokens without who says a verdict, or without why, until when and how it is said; with the kind of what was left out."""
    text = " ".join(tokens)
    head = HEADS.match(text)
    if head is not None and head.end() < len(text):
        return tuple(text[head.end() :].split()), ""
    tail = ADVERBIALS.search(text)
    if tail is not None and tail.start():
        return tuple(text[: tail.start()].split()), tail.lastgroup or "how"
    return tokens, ""


def _means_more(tokens: tuple[str, ...]) -> bool:
    """Whether words that say nothing elsewhere make another thing of a verdict: `keep the net`, `look out`, `sells well`."""
    if tokens == ("i", "do", "not") or (tokens[:1] in _ASKING and tokens[1:2] in _ASKED):
        return True
    if (
        (tokens[:1] in _OTHERS and tokens[1:2] == ("would",))
        or "enough" in tokens
        or tokens[:2] in {("that", "goe"), ("gone", "on")}
    ):
        return True
    if (tokens[:1] == ("hold",) and "still" in tokens) or (tokens[:1] in _ASKED and tokens[-1:] == ("go",)):
        return True
    return any(
        (first in _OF_THINGS and second in _ARTICLES) or (first, second) in _OF_ANOTHER_SENSE
        for first, second in pairwise(tokens)
    )


def _without_ends(tokens: tuple[str, ...]) -> tuple[str, ...]:
    for size in range(min(4, len(tokens) - 1), 0, -1):
        if tokens[:size] in _LEADS or (size == 1 and tokens[0] == "no"):
            return tokens[size:]
    for size in range(min(4, len(tokens) - 1), 0, -1):
        if tokens[-size:] in _TAILS:
            return tokens[:-size]
    return tokens


def verdict_beside(tokens: tuple[str, ...], verdicts: Verdicts) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Verdicts that a remark begins or ends with, each with the rest of it: `out and I'll regret it`, `a pity but out`."""
    while tokens[0] != "no" and (rest := _without_ends(tokens)) != tokens and tokens[-len(rest) :] == rest:
        tokens = rest
    for at in range(1, len(tokens)):
        begins, rest = tokens[:at], tokens[at + 1 :]
        twice = begins == rest[: len(begins)]  # `an out and out beauty`
        verdict = verdicts.words.get(begins) if tokens[at] in _JOINED and rest and not twice else None
        if verdict is not None and begins not in _NEVER_ALONE:
            bound = tokens[at] in _BOUND or (tokens[at] in _AS_LONG and verdict == "unsure")
            if tokens[at] == "that" and rest[0] in _INTO:
                continue  # `chuck that in with the cheap ones`
            if (begins[-1], tokens[at]) in _HELD_ON or (begins[0] == "ask" and tokens[at] == "for"):
                continue
            told = verdicts.told(verdict, begins)
            if told is not None and (begins[0] in _OPEN_ENDED or (bound and (at > 1 or verdict == "unsure"))):
                yield told, rest
        if tokens[at] == "but" and rest == ("no",):
            yield "out", begins
        if tokens[at] in {"so", "but", "then", "and"} and rest and rest != ("cut",) and _IRREAL.isdisjoint(tokens[:at]):
            verdict = verdict_of(rest, verdicts)
            of_two_senses = rest in _OF_TWO_SENSES
            if verdict is not None and not of_two_senses and (tokens[at] != "and" or verdict == "unsure"):
                yield verdict, tokens[:at]
