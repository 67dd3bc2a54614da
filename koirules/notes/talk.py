"""What sorters say that is no reading: comparisons with another fish, and mere talk.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import lru_cache

from koirules.notes.numbers import number_at
from koirules.notes.tree import bare
from koirules.vocabulary.phrases import spread
from koirules.vocabulary.wordings import tokens_of

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

_CORRECTING = re.compile(
    r"""
        i\s(?:said|say|thought|had\sthought|wrote|called\sit|took\sit)\s.+\s(?:but|before|until|till)\s.+|
        i\s(?:liked|hated|had)\s(?:it|her|him)\suntil\s.+|(?:no\s)?(?:it|that|this)\s(?:is|was)\s(?:only\s|just\s|
        all\s)*(?:a\sbit\sof\s|a\spiece\sof\s|some\s)?(?:dirt|weed|mud|muck|slime|food|light|shadow|algae|leaf|
        a\sbubble|a\sleaf|a\sshadow|the\slight)|said\snobody(?:\sever)?|(?:yeah|aye|yes)\sright|as\sif|in\smy\sdreams|i\swish|(?:only\s|just\s)?(?:joking|kidding)|
        (?:maybe\s|perhaps\s)not|i\s(?:do\snot|did\snot)\sthink|(?:no\s)?(?:hang\son\s|wait\s)?(?:.*\s)?swap\s(?:those|them|
        it)(?:\sround|\saround)?
    """,
    re.VERBOSE,
)


def is_correction(tokens: tuple[str, ...]) -> bool:
    """Whether a remark takes back what was said, in a sentence of its own: `it's dirt`, `I said out before I looked`."""
    return _CORRECTING.fullmatch(" ".join(tokens)) is not None


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

OPINIONS = tuple(
    spread(
        """
            i (think|guess|suppose|believe|reckon|suspect|expect|fancy|bet|would bet|would guess|would say|would think),
            it seems, seems, seem, probably, likely, presumably, i want to say, must be, to my eye, looks to me
        """
    )
)
"""Those of them with which a verdict is still that verdict: `keep I suppose`."""

SOFTENERS = tuple(
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


def softened(tokens: tuple[str, ...]) -> tuple[tuple[str, ...], bool]:
    """Tokens without what makes a level a little less, and whether there was any."""
    rest, soft = without(tokens, SOFTENERS)
    if _ISH.keys().isdisjoint(rest):
        return rest, soft
    return tuple(_ISH.get(token, token) for token in rest), True


@lru_cache(maxsize=8)
def _by_first_word(phrases: tuple[tuple[str, ...], ...]) -> dict[str, list[tuple[str, ...]]]:
    found: dict[str, list[tuple[str, ...]]] = {}
    for words in phrases:
        found.setdefault(words[0], []).append(words)
    return found


# ---- Comparisons

_COMPARATIVE = re.compile(
    r"(?:better|worse|longer|shorter|bigger|smaller|slimmer|heavier|lighter|darker|redder|whiter|wider|narrower|thicker|thinner|"
    r"sharper|softer|cleaner|stronger|weaker|finer|broader|deeper|paler|higher|lower|nicer|fuller|rounder|smoother|poorer|"
    r"duller|[a-z]{3,}ier|more|less|le)\Z"
)
_ANOTHER = (
    r"(?:(?:fish|number|no)\s\d+|\d+(?=\Z|\s(?:but|and|though|only|if|without|with|too|again|nearly|almost|about|really|just|"
    r"for|was|is|in|at|"
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
    r"of\sthem\sall|of\sall|(?:in\s)?here|now|after\s(?:fish\s|number\s)?\d+|i\s(?:have\s)?seen(?:\stoday|\sso\sfar|\syet)?|"
    r"of\sthe\s(?:morning|afternoon|week|year|season|month|net|harvest))(?!\w)"
)
_MOST_OF_ALL = re.compile(
    r"(?:and |so |now |this is |that is |it is |she is |he is |by far )*(?:the )?"
    r"(?:longest|shortest|smallest|biggest|largest|heaviest|lightest|slimmest)(?: (?:1|one|fish))?\Z"
)
_OF_ANOTHER = re.compile(
    r"""
        (?:fish\s|number\s)?(?:[5-9]|\d\d+)\s(?:was|is|had|looked)\s(?:much\s|a\sbit\s|even\s|a\slot\s)*(?:longer|
        shorter|bigger|smaller|better|worse|thicker|thinner|wider|deeper|heavier|lighter|redder|whiter|rounder|
        nicer)\Z|(?:everything\selse|the\srest|rest|otherwise)\s(?:is\s)?(?:just\s)?like\s(?:fish\s|number\s)?\d+\Z|
        \w{3,}er\sthan\s\d+\s(?:but|and|though)\s\w{3,}er\Z|(?:it\sis\s|that\sis\s|
        this\sis\s)?an?\s\w+er\sversion\sof\s(?:fish\s|number\s|no\s)?\d+\Z|(?:the\s)?same\s(?:mother|father|parent|
        line|pair|batch|family|spawning|brood|class)\s(?:as|like)\s(?:fish\s|number\s)?\d+(?:\s.*)?\Z|
        (?:the\s)?same\s(?:sort|kind|type)\sof\s\w+\Z|(?:a\s)?(?:sort\sof\s|kind\sof\s)?(?:a\s)?similar\s(?:family|
        line|type|fish|sort)(?:\si\s\w+)?\Z|(?:the\s|her\s|his\s|its\s)?(?:oya|mother|father|parent|sister|brother|
        grandmother|grandfather)\s(?:was|were|had|is|has|ha|are)\s(?:just\s)?(?:the\ssame|(?:it|that|this|
        them)\stoo|like\s(?:that|this|it))\Z|(?:usual|typical|normal)\s(?:for|of|in)\s(?:the|this|that)\s(?:line|
        pair|family|spawning|batch)\Z|(?:a\s)?late\s1\Z|(?:.*\s)?(?:saw|seen|had|sold|kept)\s(?:this\s1|her|his|its|
        a)\s(?:sister|brother|twin|copy|double)(?:\s.*)?\Z
    """,
    re.VERBOSE,
)
_FAVOURITE = re.compile(
    r"(?:(?:this|that|it|she|he) is )?(?:my |the |a )?(?:new )?favourite(?: 1| one| fish)?(?: so far| yet| today)?\Z"
)
_THAN_ALL = re.compile(
    r"(?:(?:it|she|he|this 1|that) is |really |much |far |a lot |a bit |lot |bit |even |clearly )*\w{3,}er than "
    r"(?:the )?(?:rest|other|most)(?: of them)?\Z"
)
"""What is said of the whole fish beside all the others: `really much smaller than the rest`."""
_PAIRED = frozenset(
    tokens_of("left right one eye pec pectoral side cheek fin gill pelvic flank lobe half patch step spot edge")
)


_GOES_ON_COMPARING = re.compile(
    r"""
        (?:\w+\s){1,4}(?:is\s|are\s)?(?:a\sbit\s|much\s|even\s|a\slittle\s|a\stouch\s)?(?:better|worse|wider|longer|
        shorter|bigger|smaller|deeper|thicker|thinner|whiter|redder|sharper|softer|weaker|stronger|paler|darker|
        higher|lower|narrower|cleaner|nicer)(?:\sthough|\stoo|\salso|\sas\swell|\shere|\sby\s(?:a|half\sa|
        \d+(?:\.\d+)?)\s(?:cm|mm|scale|finger))?\Z|(?:\w+\s){1,2}(?:is\s|are\s)?(?:not\sas|equally|just\sas|
        as)\s\w+(?:\sthough|\stoo)?\Z|(?:and\s)?(?:it|that|she|he)\s(?:sit|lie|reach|goe|start|end|
        stop)s?\s(?:a\sbit\s|much\s)?(?:further|lower|higher|deeper)(?:\s\w+)?\Z
    """,
    re.VERBOSE,
)
"""What goes on about another fish, behind a remark on it: `white better though`, `gap is wider by half a cm`."""


def is_comparison(tokens: tuple[str, ...], *, after: bool) -> bool:
    """Whether a remark speaks of another fish. after: whether it stands behind one that does."""
    text = " ".join(tokens)
    if number_at(tokens, 0) is None and (found := _COMPARES.search(text)) is not None:
        before = frozenset(text[: found.start()].split())
        # Of a pair: `left eye smaller than the other`.
        return not (re.search(r"\b(?:other|1)", found.group()) and before & _PAIRED)
    if (
        _FAVOURITE.match(text)
        or _MOST.search(text)
        or _THAN_ALL.match(text)
        or _MOST_OF_ALL.match(text)
        or _OF_ANOTHER.match(text)
    ):
        return True
    if not after:
        return False
    led = tokens[0] in {"but", "only", "just", "and"} and len(tokens) > 1
    begun = (led or _COMPARATIVE.match(tokens[0]) is not None) and len(tokens) < 8
    return (begun and any(map(_COMPARATIVE.match, tokens))) or _GOES_ON_COMPARING.match(text) is not None


# ---- Talk

_TALK = frozenset(
    spread(
        """
            short and sweet, plain sailing, good grief, fat chance, thin ice, thick and fast, dead easy, dead right, light work,
            heavy going, clean slate, sharp practice, tight fit, hard luck, soft spot for (it|her|him|this one), in good time,
            even money, in the dark, a dark horse, in a good light,
            high time, long story, long time no see, big deal, small world, small mercies, thank heaven for small mercies,
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
    r"forgive|notice|collect|see that|goe? mad for|goe? crazy for|fall for|queue for|fight over|laugh at)"
    r"(?!\w)(?! than)"
)
_ELSEWHERE = frozenset(
    tokens_of(
        "pencil pen phone tea coffee lunch dinner breakfast sandwich glasses boots towel radio rain heron cat dog paperwork "
        "clipboard battery torch camera pump hose bucket"
    )
)
_ASKING = frozenset({"who", "why", "where", "how", "whose"})
_WELL = r"(?:(?:oh|and|but|well|so|mind\syou|now|wait)\s)*"
_OF_THE_TUB = re.compile(
    rf"""
        {_WELL}(?:
          (?:could|may|might|must|that\swill|it\swill)\sbe\s(?:just\s|only\s)?(?:the|my|a)\s(?:light|water|journey|
          trip|bag|net|stress|transport|camera|lamp|reflection|shadow|move|move\stoday)|(?:just\s|that\sis\s|
          that\sis\sjust\s|it\sis\s|only\s|just\s|probably\s)*(?:the|a)\s(?:bag|light|lamp|reflection|shadow|trip|
          journey|bubble)(?:\si\s(?:think|guess|suppose|should\sthink))?|(?:look\sat|view|turn|show\sme|
          check)\s(?:it|her|him|this\s1)\s(?:from\s(?:above|below|the\sside|the\stop|the\sfront|behind|up)|again|
          over)|(?:it|she|he)\s(?:was|lay|sat|jumped|slid|turned|moved)\s(?:askew|about|off|
          over|round|around|straight\sout|away|wrong)|(?:it|she|he)\s(?:was|is|lay|sat|lie|slid|turned|moved)\s(?:crooked|
          bent|askew|off|wrong)\son\s(?:the|my)\s(?:ruler|board|tape|hand)|it\s(?:is|
          was)\s(?:turning|moving|jumping|wriggling|out\sof\smy\shand|under\sthe\sother|behind\sthe\sother|hiding|
          asleep)|(?:i\s|we\s|you\s)?(?:can|can\snot|could\snot|could)\s(?:not\s)?(?:only\s|hardly\s|barely\s|
          just\s)?(?:see|measure|tell|count|catch|hold|reach)(?:\s(?:it|her|him|this\s1|well|properly|that|still|
          now|much))*(?:\s(?:when|until|till|while|since|as|because)?\s?(?:it|she|he)\s(?:is|was|stop|stay|went|
          keep|turn|jump)(?:\s(?:still|under\sthe\sother|stop|away|down|moving|turning|jumping|to\sthe\sbottom))*)?|
          (?:i\s|he\s|she\s|we\s)?(?:held|hold|put|turned|lifted|wiped|rubbed|scratched|poked|
          looked)\s(?:at\s)?(?:it|her|him|this\s1)(?:\s(?:up|over|round|again|down|to|the|light|back|wrong|water|at|
          in|out|for|a|long|time))*|my\s(?:hand|finger|foot|feet|back|knee|eye|glasses)\s(?:is|are)\s(?:freezing|
          cold|wet|numb|tired|dry|dirty|full|sore)|wash\s(?:my\s|your\s)?hand|(?:that\sis\s|this\sis\s|
          now\s)?(?:the\s)?(?:last|final)\s(?:1|fish)(?:\s(?:thank|thanks|now|at\slast|god|heaven|goodness|finally|
          for\stoday|good))*|(?:we\sare\s|are\swe\s|that\sis\s|it\sis\s)?(?:no\smore\sthan\s|about\s|
          nearly\s)?half\s?way(?:\s(?:already|now|there|through|goodness|actually|done|only|good|god))*|
          lid\son(?:\swe\sare\sdone)?|(?:we\sare\s)?(?:done|finished)(?:\sfor\stoday|\shere|\swith\sthis\stub)?|
          break(?:\stime|\snow)?|(?:i\shave\s|he\shas\s|we\shave\s|i\swas\s)?been\sburned(?:\sbefore|\sonce|
          \sby\sthat)*|(?:i\s|you\s|we\s)?can\slive\swith\s(?:it|that|this)|(?:which\s|
          that\s)?i\s(?:can\s)?never\s(?:quite\s|really\s)*trust(?:\sthat|\sit)?|i\sam\sin\slove(?:\sa\s(?:little|
          bit))?|you\scan\snot\stake\sthat\sback|that\schanges?\s(?:thing|everything)|(?:it\sis\s)?always\sthe\sway|
          (?:i\shave\s)?never\s(?:seen|had)\s(?:that|this|1\slike\s(?:it|that))(?:\sbefore)?|
          (?:now\s)?i\swant\sto\slike\s(?:this\s1|it|her|him)|(?:what|how)\sshall\si\s(?:say|put\sit)|
          what\scan\si\ssay|(?:that\sis\s|it\sis\s)?a\sbit\sof\sa\skiller|(?:it\s|that\s)?mak(?:e|ing)\s(?:it|her|
          him)\slook\s(?:a\sbit\s)?(?:cross|grumpy|angry|surprised|sad|silly|funny|tired|cheeky)|(?:ooh\s|oh\s|
          well\s)?hello\s(?:you|there|again|beautiful|love|darling)|nothing\selse\scaught\smy\seye|
          (?:then\s)?i\slook\sagain
        )
    """,
    re.VERBOSE,
)
"""What is said of the water, the light, the hand that holds the fish and the people at the tub, and of no fish."""
_MAYBE_OF_THE_TUB = re.compile(
    rf"""
        {_WELL}(?:
          (?:the\s|this\s|my\s)?(?:water|vat|tub|light|lid|sun|net|bag|board|ruler|floor|room)\s(?:is|are|was|were|
          ha)\s.*|(?:do|did|shall|can|will|have)\s(?:i|we|you)\s(?:count|write|measure|note|do|wipe|rub|turn|check|
          net|have|say|put)\s.*|i\sdo\snot\smind\s(?:it|that)(?:\s(?:and|but)\sthe\s.*)?|i\s(?:do\snot|
          did\snot)\sknow\swhat\sto\ssay(?:\s(?:about|to)\s.*)?
        )
    """,
    re.VERBOSE,
)
"""The same, where what follows does not speak of a trait."""
_THIS = r"(?:it|this|that|her|him|them|(?:this|that)\s(?:1|fish|girl|boy|fellow|lady))"
_CASH = r"(?:quid|(?<=\d\d\s)pound|(?<=few\s)pound|euro|dollar|yen|buck|note|tenner|fiver|grand|hundred|thousand|k)"
_HOW_MUCH = r"""
    (?:(?:a|the|some|good|real|proper|serious|decent|fair|reasonable|low|lower|mid|middle|middling|medium|high|higher|top|
    modest|small|
    big|full|silly|stupid|nice|not\smuch|much|more|less|little|bit|of|few|lot|half|average|normal|usual|honest|friendly|cheap|
    premium|
    extra|what|double|no|great|fancy|fat|steep|round|sensible|any|that|this|kind)\s)*
    (?:price|money|sum|ticket|price\s(?:tag|label|bracket)|bracket|cash|offer|discount|market\svalue|money\svalue)
"""
_OF_WORTH = re.compile(
    rf"""
        {_WELL}(?:
          (?:(?:it|she|he|this\s1|that\s1|that|this)\s)?(?:(?:is|would\sbe|will\sbe|will|would|should|could|might|must|can|
          just|not|also|only|
          still|never|i|we|you|do|a|in|at|for|on|somewhere|around|about)\s)*(?:(?:put|ask|asking|get|fetch|bring|make|cost|
          pay|give|go|goe|stick|
          want|take|worth|price|charge|hang|slap|write|need|deserve|earn|quote|expect|find|see|have|set)\s)?(?:{_THIS}\s
          )?(?:(?:it|at|for|in|on|to|with|
          down|up|not|about|around|somewhere|near)\s)*(?:{_HOW_MUCH}|\d+(?:\s\d+)*(?:\s{_CASH})?(?=\s(?:on|for|
          {_CASH}))(?:\s{_CASH})?|
          \d+\s{_CASH}|a\s{_CASH}|a\s(?:few|couple\sof|lot\sof)\s{_CASH})
          (?:\s(?:on|for|at|with|of|to|from)\s(?:{_THIS}|me|(?:the\s|my\s)?(?:shop|market|customer|dealer|auction|buyer|trade|
          show)))?
          (?:\s(?:i\s\w+|ish|really|though|too|easily|easy|no\smore|at\smost|at\sleast|maybe|perhaps|or\sso|tops|these\sdays|
          price\swise|then|now|today))*|
          (?:{_THIS}\s(?:is\s|are\s)?|it\sis\s|she\sis\s|he\sis\s)?(?:(?:not|very|quite|too|rather|a\sbit|dirt|fairly|pretty|
          so)\s)*
          (?:cheap|dear|expensive|pricey|costly|affordable|a\sbargain|a\ssteal|overpriced)|
          (?:worth\s(?:a\s(?:lot|bit|fair\sbit|good\sbit|few|fortune|mint)|plenty|something|money|nothing|little|not\smuch)|
          not\sworth\smuch|
          that\sis\smoney|money\sin\s{_THIS}|no\smoney\sin\s{_THIS})|
          (?:i\s)?(?:would\s|will\s|could\s|must\s|have\sto\s)?(?:knock|take)\s(?:something|a\s(?:bit|little|few)|some|\d+|a\s
          {_CASH})\soff(?:\s(?:for\s)?{_THIS}|\sthe\sprice)*|
          (?:i\s)?(?:would\s|will\s)?(?:not\s)?(?:mark|move|bump|push|put|pull|price|drop|take)\s{_THIS}\s(?:up|down)(?:\s
          (?:a|1|2|half)\s(?:bit|little|box|grade|notch|class|
          step|tub|rank|touch|peg|place))*|(?:up|down)\s(?:a|1|2|half\sa)\s(?:bit|box|grade|notch|class|step|tub|rank|peg|
          place)|
          (?:i\s)?(?:would\s)?not\spay\s(?:up|much|a\slot|extra|more|that|full|for\sit)(?:\sfor\s{_THIS})?|no\sdiscount(?:\s
          on\s{_THIS})?
        )
    """,
    re.VERBOSE,
)
"""What a fish is worth, which decides nothing: `middling ticket`, `forty quid`, `I'd be asking proper money`."""
_OF_LIKING = re.compile(
    rf"""
        {_WELL}(?:
          {_THIS}?\s?(?:i\s)?(?:am\s|was\s)?(?:(?:sort\sof|kind\sof|quite|rather|really|very|so|a\sbit|secretly|always|also|
          do|must\ssay|have\sto\ssay|still|
          just)\s)*(?:fond\sof|partial\sto|taken\swith|sold\son|smitten\swith|drawn\sto|keen\son|in\stwo\sminds\sno\smore\s
          about)(?:\s{_THIS})|
          i\s(?:sort\sof|kind\sof|really|quite|do|rather|still|always|secretly)\s(?:do|like\s{_THIS})|(?:i\s
          )?(?:really\s|quite\s|do\s|rather\s)*like\s(?:it|that|
          this)(?:\s(?:a\slot|a\sbit|very\smuch|though|too|more\sand\smore|less\sand\sless))?|
          (?:i\s)?keep\s(?:coming|going|looking)\sback\s(?:to|at)\s{_THIS}|(?:i\s)?keep\slooking(?:\sat\s{_THIS})?|(?:i\s
          )?(?:have\s)?(?:gone\soff|warmed\sto|cooled\son)\s{_THIS}(?:\s.*)?|
          (?:{_THIS}\s)?(?:(?:is|ha)\s)?(?:grow|growing|grown)\son\s(?:me|you|us)(?:\s\w+)?|(?:i\s)?(?:can|could)\snot\s
          (?:get\s(?:very\s|too\s|that\s)?excited|warm\sto\s{_THIS}|
          help\s(?:liking|loving)\s{_THIS}|take\smy\seye\soff\s{_THIS}|stop\slooking|get\sworked\sup)(?:\s
          (?:about|over)\s{_THIS})?|
          (?:it\s|that\s|she\s|he\s)?will\snot\s(?:offend|hurt|frighten|upset|set\sthe\sworld\son\sfire|win\sany\sbeauty\s
          contest|change\sthe\sworld)(?:\s\w+)?|
          (?:a\s)?(?:funny|odd|strange|curious|silly|dear|cute|charming|likeable|honest|friendly|cheeky|sweet)\s(?:old\s|
          little\s)?(?:fish|thing|1|creature|fellow|devil|customer)|
          (?:oddly|strangely|surprisingly|somehow|curiously)\s(?:good|nice|pleasing|likeable|charming)|(?:neat|nice|lovely|
          clever|sweet|pretty|funny)\sthat|
          meh(?:\smeh)?|(?:it\s|she\s|he\s|that\s)?(?:leave|left)\sme\scold|(?:it\s|she\s|he\s|that\s)?(?:doe\snot|did\snot)\s
          (?:grab|move|excite|thrill|speak\sto|do\smuch\sfor|
          do\sanything\sfor|do\sit\sfor)\s(?:me|you|us)(?:\s\w+)?|not\sfor\s(?:everyone|everybody)|(?:saved|kept)\s(?:a\s
          decent|the\sbest|a\sgood)\s1(?:\s\w+)*|
          you\scould\s(?:hang|frame|put)\s{_THIS}(?:\son\s(?:a|the)\swall|\sin\sa\s\w+)?|i\s(?:would\s)?not\s(?:kick|
          say)\s{_THIS}\sout\sof\s.*|
          (?:he|she|boss|the\sboss|they)\s(?:just\s|only\s)?(?:smiled|smile|whistled|whistle|sighed|sigh|shrugged|shrug|
          laughed|laugh|grinned|frowned|grunted|
          said\snothing|say\snothing|walked\son|hummed|winked)(?:\s(?:at\s{_THIS}|again|only))?
        )
    """,
    re.VERBOSE,
)
"""That somebody likes a fish or does not, which decides nothing: `I'm fond of this one`, `can't get excited`."""
_OF_THE_PAST = re.compile(
    rf"""
        {_WELL}(?:
          i\s(?:was\s(?:going|about|ready|set)\sto|nearly|almost|very\snearly|so\snearly|had\shalf\sa\smind\sto|wanted\sto|
          meant\sto|should\shave|could\shave)\s(?:chuck|cull|bin|
          throw|threw|chucked|culled|binned|sell|sold|pass|passed|keep|kept|miss|missed|overlook|overlooked|put|skip|skipped|
          let|lose|lost)(?:ed)?(?:\sout|\saway|\son|\sover)?(?:\s{_THIS})?(?:\s(?:out|away|back|
          on|over|goe?|earlier|before|at\sfirst|last\s\w+|in\s\w+|by|aside|when\s.*|once))*|(?:\w+\s)?time\si\snearly\s
          \w+\s{_THIS}|
          (?:my\s|the\s|our\s|old\s)?(?:father|dad|grandfather|mother|brother|uncle|old\sman|old\sboss|boss|wife|teacher|
          master)\s(?:would|might|could)\s(?:have|never\shave|not\shave)\s
          (?:kept|taken|liked|loved|sold|culled|chucked|thrown|bought|hated)\s{_THIS}(?:\s\w+)?|(?:then\s|so\s|and\s)?i\s
          (?:turned|looked|saw|picked|netted|lifted)\s{_THIS}(?:\s(?:round|around|again|over|up|out|twice|once|
          from\s\w+(?:\s\w+)?|properly|better|in\sthe\s\w+))*|turn\s{_THIS}(?:\s(?:round|over|again|please))?
        )
    """,
    re.VERBOSE,
)
"""What was once meant to be done with a fish: `I was going to chuck this one`."""
_ASKED_ALOUD = re.compile(
    r"(?:(?:oh|and|but|well|so|now|wait|hm)\s)*(?:have (?:i|we) (?:done|had|seen|measured|got|written)|do (?:i|you|"
    r"we) (?:like|want|need|see|know|think)|"
    r"can (?:you|i|we) (?:see|rub|wipe|hold|turn|pass|get|tell|measure|show)|did (?:i|you|we) (?:say|write|do|count|"
    r"measure|see|note)|"
    r"(?:was|wasn|was not|were) (?:he|she|it|that|this)|what (?:do|would|did|was|about|have|can|could|should|shall|else|next)|"
    r"could (?:you|we) (?:hold|pass|turn|get)|shall (?:i|we)|would you|should (?:i|we|you)|are (?:we|you)|am i|"
    r"is (?:he|she|anyone|that all|there)|"
    r"will (?:you|he|she|somebody)|don you|do not you)(?:\s.*)?"
)
"""Questions, where they do not name a trait."""
_IF_ONLY = re.compile(
    r"(?:(?:but )?(?:if|otherwise|or else) .*\b(?:would|had|have been|were)\b|(?:i|it|she|he|that) would have )"
)


def is_talk(tokens: tuple[str, ...], speaks: Callable[[tuple[str, ...]], bool]) -> bool:
    """Whether a remark is one of those that say nothing of a fish.

    speaks: whether words say something of a trait: `people pay for a sharp edge` says of this fish what people pay for.
    """
    if tokens in _TALK or bare(tokens) in _BARE_TALK:
        return True
    of_people = _OF_PEOPLE.match(text := " ".join(tokens))
    return of_people is not None and not speaks(tuple(text[of_people.end() :].split()))


def is_aside(tokens: tuple[str, ...], speaks: Callable[[], bool]) -> bool:
    """Whether a remark that nothing reads is talk: of people and things at the tub, a question, what might have been.

    speaks: whether it speaks of some trait; then somebody should read it again.
    """
    text = " ".join(tokens)
    if _OF_THE_TUB.fullmatch(text) is not None or (_MAYBE_OF_THE_TUB.fullmatch(text) is not None and not speaks()):
        return True
    if any(pattern.fullmatch(text) is not None for pattern in (_OF_WORTH, _OF_LIKING, _OF_THE_PAST)):
        return True
    of_others = (
        _ASKED_ALOUD.fullmatch(text) is not None
        or not _ELSEWHERE.isdisjoint(tokens)
        or tokens[0] in _ASKING
        or _IF_ONLY.match(text) is not None
    )
    return of_others and not speaks()


_BARE_TALK = frozenset(bare(words) for words in _TALK) - {()} - {words for words in map(bare, _TALK) if len(words) < 2}
