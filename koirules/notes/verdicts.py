"""What sorters say that becomes of a fish: it stays, it goes, or they are not sure.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from functools import lru_cache
from itertools import pairwise

from koirules.notes.tree import SKIPPED, bare
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
        (it|she|he) is not staying, no good to me, no use to me, (i will |i )pass( on this one| on that one|),
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
        i (can|could) not (shift|move|place) ({_IT}), (a |)shop (fish|quality|grade|stock), shop,
        (not a|no) (show fish|tategoi), not me,
        i (will|would|am going to) sell ({_IT})( as (a|an) (character|oddity|pet)|), ハネ, はね, 除外
    """,
    "unsure": f"""
        unsure, could go either way, either way, not sure( yet| about ({_IT})|), i am not sure( yet| about ({_IT})|),
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
_JOINED = _BOUND | _AS_LONG | {"on", "with", "that"}
_OPEN_ENDED = frozenset({"out", "bin", "chuck", "cull", "keep", "hold", "reject"})
_NEVER_ALONE = frozenset(spread("leave it, take it, in, open, later, maybe, perhaps, can go, it goes, goes"))
WHOLE_VERDICTS = frozenset(spread("mine, open, later, goes, staying, shop, bin, chuck, hold, take, hesitate"))
"""Verdicts of one word that stand for something else beside other words: `mine has red lips`, `fins open`."""
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
_HELD_ON = frozenset({("hold", "on"), ("keep", "on")})
VERDICTS = _by_words()
"""Whole remarks that are a verdict, and the word that the column `verdict` takes."""


# ---- Verdicts by their form: where a fish is put, what is done with it, who has decided

_FISH = r"(?:it|her|him|this|that|them|these|those|(?:this|that)\s(?:1|fish|girl|boy|lady|lad|baby|little\s1))"
_I = r"(?:i|we)"
_WOULD = (
    rf"(?:{_I}\s)?(?:would\s|will\s|could\s|must\s|have\sto\s|am\sgoing\sto\s|are\sgoing\sto\s|want\sto\s|"
    r"let\sus\s)?(?:still\s|just\s|rather\s|happily\s|gladly\s)?"
)
_WOULD_NOT = (
    rf"(?:{_I}\s)?(?:(?:would|will|do|can|could|am)\snot|never|would\snever|am\snot\sgoing\sto)\s(?:want\sto\s)?"
)
_SEASONS = (
    r"(?:(?:a|an|1|another|1\smore|2|2\smore)\s(?:full\s|whole\s|good\s)?(?:season|summer|winter|year|spring|"
    r"autumn|go|chance|try|shot)(?:\s(?:more|in\s(?:the\s)?mud|at\sleast))?)"
)
_PUT = rf"""
    (?:(?:(?:{_WOULD}(?:put|drop|throw|chuck|stick|pop|move|bring|send|take)\s{_FISH}\s)|
      (?:(?:it|she|he|this\s1|that\s1)\s)?(?:goe|go|off|straight|back|put|move|stay|is)\s)?
      (?:straight\s|back\s)?(?:in|into|to|on|onto|with|for|among|by)\s)?(?:the\s|my\s|our\s|a\s)?
"""
_INTO = r"(?:pile|tub|box|tank|bin|basin|bowl|vat|bucket|pond|shelf|crate|heap|bag|bath|system|stack|group)"
_AMONG = r"(?:1|fish|lot|bunch|other)"
_KEPT = r"(?:keep|keeper|kept|keeping|stay|yes|top|best|good|grow\son|growing\son|grow\sout|growing|tategoi|show|select|selected)"
_LEFT = r"""
    (?:out|cull|reject|bad|sale|selling|sell|for\ssale|shop|cheap|cheaper|bargain|budget|mixed|go|going|10\sfor|5\sfor|dealer|
    pet|garden|goodbye|discard|waste|throw\sout|give\saway|rubbish|auction|trade|no(?=\s(?:pile|tub|box|bin|basin|bowl|vat)))
"""
_OPEN = r"""
    (?:maybe|perhaps|hospital|isolation|quarantine|second(?=\s(?:tub|pile|box|group|lot))|waiting|unsure|not\ssure|undecided|doubtful|
    holding|question|question\smark|treatment|sick|look\sagain|second\slook|thinking|in\sbetween|boss)
"""
_PLACES = {
    verdict: rf"""
        {_PUT}{which}\s{_INTO}(?:\s(?:please|then|for\snow|first|again|with\s(?:it|her|him)))* |
        (?:(?:put|goe|go|stay|belong)\s(?:{_FISH}\s)?)?(?:in\s)?(?:with|among)\sthe\s(?:{which}\s{_AMONG}|{plural})
    """
    for verdict, which, plural in (("in", _KEPT, "keeper"), ("out", _LEFT, "reject|cull"), ("unsure", _OPEN, "maybe"))
}
_REASONS = (
    r"(?:body|bone|frame|pattern|red|hi|beni|white|shiroji|colour|skin|head|size|shape|quality|balance|kiwa|edge|"
    r"fin|mouth|eye|health|length|volume|bulk|depth|spine|back|sashi|odome|sex|price|condition|potential|growth|"
    r"belly|tail|nose|face)"
)
_ONLY = r"(?:\s(?:alone|only|really|itself|i\ssay|i\ssuppose|i\sguess|though))?"
_WHO_DECIDES = r"(?:(?:the\s|my\s)?(?:boss|chief|old\sman|master|father|dad|wife|husband|missus|chef)|he|she)"
_OUTCOMES = (
    r"(?:in|out|keep|stay|stays|sell|sale|cull|bin|go|goes|hospital|quarantine|yes|no|wait|second|maybe|pass|not)"
)
_BACK_THEN = (
    r"(?:again|later|tomorrow|then|next\s(?:week|month|year)|when\s(?:it|she|he)\s(?:is|ha|"
    r"stop|settle|calm|heal|grow)\b.*|in\s(?:a|2|3|the|january|february|march|april|may|june|july|august|"
    r"september|october|november|december|spring|summer|autumn|winter)\b.*|at\s(?:the\s)?(?:end|nisai|second)\b.*|"
    r"on\s(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday))"
)
_FORMS: Mapping[str, str] = {
    "in": rf"""
        {_WOULD}(?:keep|take|have|buy|grow|hold|risk|gamble\son|bet\son|try|feed|raise|back|save|choose|pick|
          select)\s{_FISH}(?:\s(?:on|out|up|myself|anyway|all\sthe\ssame|any\sday|for\s(?:me|myself|us|now|{_SEASONS})|
          {_SEASONS}|home))*
        | (?:let\sus\s|{_I}\s(?:would\s|will\s))give\s(?:it|her|him|this\s1|that\s1|them)\s{_SEASONS}
        | (?:(?:oh\s|now\s)?(?:this|that)\s1\s{_I}\s(?:really\s|do\s|quite\s|also\s)*(?:like|love|want|keep|take|fancy)|
          {_I}\s(?:really\s|do\s|quite\s|also\s)*(?:like|love|fancy)\sthis\s1)(?:\s(?:a\slot|very\smuch|best))?
        | leave\s(?:her|him)(?:\s(?:be|here|alone|where\s(?:it|she|he)\sis))?
        | (?:it\sis\s|she\sis\s|he\sis\s)?worth\s(?:a|an|1|another|its|her|his|the)\s(?:proper\s|good\s|decent\s|
          nice\s)*(?:photo|picture|photograph|video|food|feed|space|room|place|water|pellet|chance|gamble|try|
          wait)(?:\s(?:in\smy\spond|here|in\sthe\stub))?
        | (?:not\sto\s(?:lose|be\slost|be\ssold|sell)|(?:do\snot|never)\s(?:lose|sell|let\sgo\sof|part\swith)\s{_FISH})
        | (?:back\s)?(?:in|to|into)?\s?(?:the\s)?mud(?:\spond)?\s(?:again|for\s{_SEASONS}|next\s(?:year|season|spring|
          summer))|back\s(?:in|to|into)\s(?:the\s)?mud(?:\spond)?(?:\sagain)?
        | (?:it|she|he|this\s1)\sgoe\sback\s(?:in|to|into)\sthe\smud|
          (?:1|another)\smore\s(?:season|summer|year|winter)(?:\sfor\s(?:it|her|him|this\s1))?|another\s(?:season|summer|year|winter)|
          once\smore\sin\s(?:the\s)?mud
        | (?:keep|in|take|stay)\s(?:at|for)\sa\s(?:friendly|good|fair|low|high|small|nice|reasonable)\s(?:price|sum|money)
        | (?:in|keep|keeper|stay)\s(?:just\s|only\s)?(?:on|for|because\sof|by|from)\s(?:the\s|it\s|its\s|her\s|
          his\s)?{_REASONS}(?:\sand\s{_REASONS})?{_ONLY}
        | (?:it|she|he|this\s1|that\s1)\s(?:can|may|must|should|ha\sto)\sstay(?:\shere|\son)?|can\sstay|(?:let|
          have)\s(?:it|her|him)\sstay|(?:ha\sto|must)\sstay
        | (?:(?:a|the|that\sis\sa|it\sis\sa|she\sis\sa|he\sis\sa|big|clear|definite|definitely|easy|firm|for\sme|from\sme|
          of\scourse|absolute|absolutely)\s)+(?:yes|keep|keeper|in)(?:\s(?:from|for)\s(?:me|us))?|yes\s(?:from\sme|
          of\scourse|for\sme|definitely|absolutely|in|this\s1|that\s1|her|him|go\son|keep(?:er)?)|keep\s(?:of\scourse|yes|
          naturally|obviously|surely|absolutely|no\squestion)|go\son\s(?:then\s)?(?:keep|yes|in)
        | (?:for\s)?(?:me\sthis\s1|myself|my\sown\s(?:pond|tank)|straight\s(?:to|into)\smy\s(?:pond|tank))|for\smyself
        | (?:first|top|number\s1|my)\s(?:pick|choice)(?:\s(?:today|of\sthe\s(?:day|lot|tub|batch|morning)))?
        | {_WHO_DECIDES}\s(?:say|said|want|like|take|took)\s(?:to\s)?(?:keep|in|yes|stay|it\sstay)(?:\s(?:it|her|him|
          anyway|small\sor\snot|all\sthe\ssame|for\snow|though))*
        | retained|save(?:\s(?:it|her|him|this\s1))?|(?:for\s)?my\spond
        | not\sgoing\sanywhere|nobody\s(?:get|is\shaving|take|buy)\s(?:this\s1|that\s1|her|him)|(?:i\s)?must\shave\s(?:it|
          her|him|this\s1)
    """,
    "out": rf"""
        (?:gone|cut|goodbye|bye(?:\sbye)?|bye\sthen|removed|ditch|sell|to\ssell|
          for\ssale|quick\ssale|fast\ssale|cheap\ssale|straight\sout|first\sout|out\s(?:first|straight|quick|fast|now|
          at\slast)|nope(?:\s(?:out|sorry))?|sorry\s(?:nope|out)|(?:clear|big|easy|hard|definite|definitely|a|a\sclear|
          that\sis\sa|it\sis\sa)\s(?:no|out)|no\s(?:from|for)\s(?:me|us)|no\sno\sno|no\snot\s(?:this|that)\s1)
        | (?:lose|drop|strike|ditch|remove|sell|cut|cull|swap|return|dump)\s{_FISH}(?:\s(?:on|quick|quickly|cheap|now|
          first|soon|off|straight\saway))?
        | (?:get|be)\srid(?:\sof\s{_FISH})?|(?:get|fish|take|pull|net)\s{_FISH}\sout(?:\sof\s(?:here|there|the\s\w+))?|
          (?:cross|strike|rule|send|ship|move)\s{_FISH}\s(?:off|out|back|on)|let\s(?:it|her|him)\sgoe?
        | (?:so\s|then\s|but\s)+(?:i\s)?(?:(?:probably|maybe|perhaps|rather|better|think|suppose|guess|am\safraid|fear)\snot|
          do\snot\sthink\sso|not\sthis\stime|not\stoday|not\sthis\syear)
        | {_WOULD_NOT}(?:grow|raise|feed|bother|breed|waste|spend|keep|take|want|buy|
          risk|hold|back|choose|pick|show)\s(?:with\s)?{_FISH}(?:\s(?:on|out|up|further|longer|any\slonger|myself|anyway|food\son\s(?:it|her|
          him)|time\son\s(?:it|her|him)))*
        | (?:that\sis\s|it\sis\s)?(?:a\s)?return\sto\ssender|(?:send|take)\s{_FISH}\sback(?:\s(?:where\s(?:it|she|
          he)\scame\sfrom|to\sthe\s\w+))?|back\s(?:where\s(?:it|she|he)\scame\sfrom|to\sthe\s(?:shop|dealer|farm|breeder|
          seller|wholesaler))
        | (?:no\s)?(?:{_I}\s)?(?:can|could|would)\snot\s(?:sell|stand\sbehind|show|offer|put\smy\sname\s(?:to|on)|
          sign\sfor|use|justify|defend)\s{_FISH}(?:\s(?:to\s(?:anybody|anyone|somebody|people)|like\sthis|with\s(?:a|
          that)\s\w+))?
        | (?:for\s(?:the\s)?|let\sthe\s|to\sthe\s)?(?:dealer|trade|wholesaler)(?:\s(?:get|have|can\shave|take)\s(?:it|her|
          him|this\s1|that\s1))?
        | (?:(?:that\sis\s|it\sis\s)?a\s)?waste\sof\s(?:food|space|time|water|feed|money|room)|
          (?:there\sis\s)?no\s(?:place|room|space|use|need)\sfor\s(?:it|her|him|this\s1|that\s1|that)(?:\shere)?
        | not\sworth\s(?:feeding|growing|raising|the\sfeed|the\swinter|another\s(?:season|winter|year))|
          (?:get|for)\sthe\s(?:chop|axe)|the\schop|heron\s(?:food|bait)|food\sfor\sthe\sheron|for\sthe\sheron|
          for\sthe\scat
        | (?:it|she|he|this\s1|that\s1)\s(?:ha\sto|must|can|will\shave\sto)\s(?:go|leave)|time\sto\sgo|
          ha\sgot\sto\sgo
        | (?:for|to)\s(?:somebody|someone)\selse(?:\s(?:pond|to\s(?:enjoy|keep|grow)))?|(?:somebody|
          someone)\selse\sproblem|(?:free\s)?to\sa\sgood\shome
        | (?:out|cull|reject|gone|off|no)\s(?:just\s|only\s)?(?:on|for|because\sof|by)\s(?:the\s|it\s|its\s|her\s|
          his\s)?{_REASONS}(?:\sand\s{_REASONS})?{_ONLY}
        | (?:(?:first|second|my\s(?:first|second))\sthought\sout|{_WHO_DECIDES}\s(?:say|said|want)\s(?:it\s|her\s|
          him\s)?(?:out|no|sell|cull|gone)(?:\s(?:it|her|him|anyway))?)
        | (?:hane|haneru|thrown\sout|tip\s(?:it|her|him)|over\sthe\sside|(?:to\s)?auction|not\swanted|put\sdown|quick\smoney|
          private\ssale)(?:\swithout\slooking|\si\sthink)?|(?:dealer|trade|sale|cull|cheap|reject|mixed)\slot|
          not\s(?:even\s)?for\sthe\s(?:pet\strade|shop|pond)|sell\s(?:before|while|by|soon|now)(?:\s\w+){0, 3}
        | (?:pet|garden|pond|hobby|shop)\s(?:quality|grade|stock)(?:\s(?:only|at\s(?:best|most)))?
        | (?:you\sare|it\sis|she\sis|he\sis|this\s1\sis|that\s1\sis|is)\s(?:a\sgoner|for\sthe\schop|going|leaving|
          gone\sthen|for\ssale)
        | that\sis\sa\sdisqualification(?:\s.*)?|straight\sdisqualification|disqualification
    """,
    "unsure": rf"""
        {_WHO_DECIDES}\s(?:say|said|want)\s(?:to\s)?(?:wait|hold|leave\sit|look\sagain|see)(?:\s.*)?|shelve(?:\s{_FISH})?|lay\sby|
          (?:(?:treat|scrape|salt|wash|feed|cure|heal|measure)\s(?:{_FISH}\s)?(?:first\s|then\s|and\s))?(?:then\s)?
          (?:judge|decide|look)\s(?:later|again|tomorrow|monday|tuesday|wednesday|thursday|friday|saturday|sunday|then)|
          treat\s(?:{_FISH}\s)?then\sdecide|second\s(?:quality|choice|class)|bin\sor\snot(?:\s.*)?
        | (?:{_WHO_DECIDES}\s(?:is\s)?|{_I}\s(?:am\s|are\s)?)(?:still\s|just\s|also\s)*(?:thinking|undecided|not\ssure|
          unsure|in\s2\smind|hesitating|looking|scratching\s(?:his|her|my)\shead|weighing\sit\sup)(?:\s(?:about\s{_FISH}|
          it\sover|on\s{_FISH}|yet|still|so\sam\si))*|(?:still\s)?thinking(?:\sabout\s{_FISH}|\sit\sover)?|(?:let\sme|
          need\sto|have\sto|must|want\sto|{_I}\swill)\sthink(?:\s(?:about|on)\s{_FISH}|\sit\sover|\sagain)?
        | (?:i\s)?(?:dunno|do\snot\sknow|no\sidea|not\ssure|not\ssold\son\s(?:it|her|him)|
          needs?\s(?:another|a\ssecond|1\smore)\slook|can\snot\s(?:say|tell|
          decide))(?:\s(?:really|yet|at\sall|on\s(?:this|that)\s1|
          honestly|with\s(?:this|that)\s1|about\s(?:this|that)\s1|here))*(?:\s(?:so\s|better\s)?(?:ask|let)\s(?:him|her|
          me|the\sboss|boss)(?:\s(?:decide|look|see|say|later|again))?)?
        | (?:(?:you\s|better\s|must\s|we\s|i\s|let\sus\s|i\swill\s|have\sto\s|need\sto\s)*ask\s(?:him|her|the\sboss|boss|
          {_WHO_DECIDES})(?:\s(?:again|later|first|tomorrow|about\s{_FISH}|what\she\sthink))*|ask\s(?:me\s)?{_BACK_THEN})
        | (?:look|see|check|decide|judge|come\sback|talk|sort)\s(?:at\s{_FISH}\s|to\s{_FISH}\s)?{_BACK_THEN}
        | (?:to\s(?:the\s)?|the\s)?hospital(?:\s(?:first|then|please|for\snow|tub|tank|maybe))*|(?:salt|treat|medicate|
          heal|cure)(?:\s{_FISH})?\s(?:first|and\s(?:then\s)?(?:{_I}\s)?(?:will\s)?(?:look|see|check|decide)(?:\s(?:again|
          later|then))?)
        | (?:he\s(?:say|said)\s)?{_OUTCOMES}\sor\s(?:to\s|the\s)?{_OUTCOMES}(?:\s(?:i\sdo\snot\sknow|do\snot\sknow|
          not\ssure|who\sknow|hard\sto\ssay|you\sdecide|he\sdecide))?
        | (?:{_I}\s)?would\snot\ssay\s(?:no|yes)\s(?:and\s|but\s|or\s)?(?:{_I}\s)?(?:would\snot\s(?:say\s)?)?(?:yes|
          no)(?:\seither)?|(?:not|neither)\s(?:a\s)?(?:yes|in|keep)\s(?:and\s|nor\s|or\s)?(?:not\s)?(?:a\s)?(?:no|out)|
          yes\sand\sno|no\sand\syes
        | (?:let\sme\s|let\sus\s|{_I}\s(?:would\s|will\s))?(?:put|set|lay|leave|keep)\s{_FISH}\s(?:aside|apart|by|back|
          on\s(?:1|the)\sside|to\s(?:1|the)\sside|separate|for\s(?:later|now))(?:\s(?:for\s(?:now|later|the\sboss)|first|
          please|to\slook\sagain))*
        | keep\s(?:an|1)\seye(?:\son\s{_FISH})?|keep\swatching(?:\s{_FISH})?|(?:to\s)?watch(?:\s{_FISH})?(?:\s(?:a\swhile|
          for\snow|closely))?
        | (?:put|leave|keep)\s{_FISH}\s(?:in|into)\s(?:the\s)?(?:salt|hospital|quarantine|isolation|treatment|
          medicine)(?:\s(?:tub|tank|bath|vat|basin))?\sand\s(?:then\s)?(?:{_I}\s)?(?:will\s)?(?:look|see|check|
          decide)(?:\s(?:again|later|then))?
        | (?:i\s)?can\snot\smake\s(?:up\s)?my\smind(?:\sup)?(?:\s(?:at\sall|yet|about\s(?:it|her|him|this\s1|that\s1)))*
        | (?:(?:he|she|you|i|they)\scan\s)?take\s(?:it|her|him)\sor\sleave\s(?:it|her|him)
        | (?:it\sis\s|a\s)*(?:50\s50|half\shalf|half\sand\shalf|close\scall|coin\sflip|flip\sa\scoin|open\squestion|
          lottery|doubt|doubtful|doubtful\s1|doubtful\scase)
    """,
}


@lru_cache(maxsize=4096)
def _by_form(tokens: tuple[str, ...]) -> str | None:
    """The verdict that tokens are by their form: `put it in the maybe tub`, `boss says keep`, `out or hospital`."""
    if tokens[:2] == ("yes", "bin"):
        return None  # not a bin for those that stay
    text = " ".join(tokens)
    found = next((verdict for verdict, form in _FORM_PATTERNS if form.fullmatch(text)), None)
    return "unsure" if found == "in" and _HELD.match(text) else found


_HELD = re.compile(r"(?:i\s\w+\s)?hold\s(?!on)")
"""`hold that for now` puts it off."""
_FORM_PATTERNS = tuple(
    (verdict, re.compile(form, re.VERBOSE)) for verdict in _FORMS for form in (_PLACES[verdict], _FORMS[verdict])
)


def verdict_of(tokens: tuple[str, ...], verdicts: Mapping[tuple[str, ...], str]) -> str | None:
    """The verdict that a whole remark is, with what may stand before and behind it."""
    while tokens:
        found = verdicts.get(tokens)
        if found is None and tokens[-1:] in _ITS and tokens[:-1] not in VERDICTS:
            found = verdicts.get(tokens[:-1])  # `sell it`, where `sell` is a grade of the page
        found = found or _by_form(tokens)
        if found is None and not _means_more(tokens):
            found = verdicts.get(tuple(token for token in tokens if token not in SKIPPED)) or verdicts.get(bare(tokens))
        if found is not None:
            return found
        rest = _without_ends(tokens)
        if rest == tokens:
            return None
        if tokens[0] == "no" and (found := verdict_of(rest, verdicts)) is not None:
            return found if found == "out" else None  # `no out you go`, but not `no keep`
        tokens = rest
    return None


def _means_more(tokens: tuple[str, ...]) -> bool:
    """Whether words that say nothing elsewhere make another thing of a verdict: `keep the net`, `look out`, `sells well`."""
    if tokens[:1] in _ASKING and tokens[1:2] in _ASKED:
        return True
    if (tokens[:1] in _OTHERS and tokens[1:2] == ("would",)) or "enough" in tokens:
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
            if (begins[-1], tokens[at]) in _HELD_ON:
                continue
            if begins[0] in _OPEN_ENDED or (bound and (at > 1 or verdict == "unsure")):
                yield verdict, rest
        if tokens[at] == "but" and rest == ("no",):
            yield "out", begins
        if tokens[at] in {"so", "but", "then", "and"} and rest and _IRREAL.isdisjoint(tokens[:at]):
            verdict = verdict_of(rest, verdicts)
            if verdict is not None and (tokens[at] != "and" or verdict == "unsure"):
                yield verdict, tokens[:at]
