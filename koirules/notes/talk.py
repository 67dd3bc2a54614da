"""What sorters say that is no reading: hedges, asides, corrections and mere talk.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import lru_cache
from itertools import pairwise

from koirules.notes.tree import SKIPPED, bare
from koirules.notes.wishes import COMPARATIVES
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


_NOT_OF_THE_FISH = re.compile(
    r"(?:(?:no|oh|ah|wait|hang on|hold on|sorry|well|ha|and|but|phew|actually|i think) )*"
    r"(?:(?:it|that|this|1 of them|they) (?:is|was|are|were|turned out to be|may be|must be) )?(?:(?:only|just|all|a bit of|"
    r"a piece of|bit of|"
    r"some|a|the|my|an|probably) )*"
    r"(?:dirt|dirty water|weed|mud|muck|slime|food|pellet|algae|leaf|bubble|shadow|reflection|light|drop|drip|grit|sand|fly|"
    r"crumb|hair|"
    r"stain|moss)(?: (?:on (?:it|her|him|the (?:water|net|board|len))|after all|that is all|in the water|again|only|i think|"
    r"stuck on|there))*\Z|"
    r"(?:(?:no|oh|ah|wait|and|but|phew|well) )*(?:(?:it|that|they) |(?=gone |came off|rubbed off|wiped off|washed "
    r"off))(?:came|come|come|wiped|rubbed|wipe|rub|wipe|rub|washed|"
    r"wash|wash|brushed|"
    r"fell|floated|swam|is|was|are|has|ha) (?:straight |right |now |all )?(?:off|away|gone)(?: (?:when|after|with|as|now|"
    r"again|already|"
    r"i|he|wiped|rubbed|washed|it|her|a|wipe|rub|easily|my|thumb|finger|look))*\Z"
)
"""That what was spoken of last is not of the fish: `hang on that was dirt`, `it came off`."""


_HOW_IT_LAY = re.compile(
    r"(?:(?:no|oh|ah|wait|hang on|hold on|sorry|well|yes|and|but|actually|i think) )*(?:(?:it|that|she|he) (?:is|was) "
    r")?(?:just|only|all) "
    r"(?:the )?(?:way (?:it|she|he|i) (?:is|was|lay|lie|held|hold|sit|sat|turn|turned|bend|bent)(?: .*)?|turning|bending|"
    r"lying(?: crooked| bent)?|"
    r"moving|twisting|swimming|bent round|wriggling|curling up|flexing|the bend of (?:it|her|him))(?: (?:round|about|away|"
    r"in the (?:net|bowl)|then))*\Z"
)
"""That what was spoken of last came of how the fish lay: `no, it's only turning`."""


def is_how_it_lay(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says that what was seen last came of how the fish lay or moved."""
    return _HOW_IT_LAY.match(" ".join(tokens)) is not None


def is_not_of_the_fish(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says that what was seen last was dirt, or the light."""
    return _NOT_OF_THE_FISH.match(" ".join(tokens)) is not None


_DOUBTING = re.compile(
    r"(?:(?:and|but|or|so|though|mind you|then again|well) )*(?:"
    r"(?:i|my eye) (?:may|might|could) (?:just |only )?be (?:seeing thing|imagining it|imagining thing|playing trick|dreaming|"
    r"mistaken|wrong)(?: about that| there)?|(?:or )?(?:am i|are my eye) (?:seeing thing|imagining it|imagining thing|"
    r"dreaming|playing trick)|"
    r"(?:or )?(?:it )?(?:may|might|could) (?:just |only |well )*be (?:the|my|a trick of the) (?:light|eye|water|angle|lamp|"
    r"shadow|bag|wet)|"
    r"(?:or )?(?:maybe |perhap |it may be |it might be |could be |is it |may be )?(?:just |only )?(?:the way|how) (?:it|she|"
    r"he|i) (?:is|am|lie|lay|hold|held|sit|turn|bend|twist|move)(?: .*)?|"
    r"(?:or )?(?:maybe|perhap|possibly|probably) (?:just |only )?(?:the|my|a) (?:light|eye|shadow|reflection|lamp|angle)|"
    r"(?:i am )?not (?:so |quite |too |entirely |completely |at all )*(?:sure|certain|convinced)(?: (?:about|of) (?:it|"
    r"that)| either| mind)?|"
    r"(?:i )?(?:would not|can not|could not|will not) (?:swear|swear to it|be sure|be certain|bet on it|bet on that|swear "
    r"to that|say for sure|say for certain|stake my life on it)"
    r"(?: though| mind)?|do not (?:quote|hold) me (?:on|to) (?:that|it)|(?:it is |that is )?(?:only |just )?(?:a|my|my "
    r"best) (?:guess|hunch|impression)|"
    r"(?:i am )?(?:only |just )?guessing|hard to (?:say|tell|be sure|see)(?: (?:for sure|for certain|really|from here|in "
    r"this light|wet|though))*|"
    r"(?:it is )?difficult to (?:say|tell|see)(?: (?:for sure|really|from here|in this light|though))*|unless (?:it is |"
    r"that is )?(?:the|my) (?:light|eye|water|lamp)|"
    r"or so it (?:look|seem|look|seem)|(?:i )?could be wrong|if (?:it|that) is not (?:the light|the water|a shadow)|check "
    r"that(?: again| later| dry)?|"
    r"(?:must|better|should|i will|need to) (?:check|look)(?: at)? (?:that|it)(?: again| later| in (?:better|good|day) light)*)\Z"
)
"""That what was said last is not sure: `I may be seeing things`, `not sure mind`."""
_SLIGHTLY = re.compile(
    r"(?:(?:but|and|though|it is|that is|well|not) )*(?:not (?:badly|much|a lot|by much|very|seriously|terribly|too bad|so "
    r"bad|too badly|strongly)|"
    r"(?:just|only|but only) (?:a bit|a little|a touch|a tad|slightly|a trace|a shade|barely|a hair|a fraction)|ever so slightly|"
    r"(?:just |only )?barely|hardly|(?:very |only |just )slightly|(?:a|just a|only a) (?:wee|tiny|little) bit)(?: (?:though|"
    r"mind|mind you|so|really|anyway|yet))*\Z"
)
"""That what was said last is so only a little: `not badly`, `just a touch`."""


def is_doubt(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says that who speaks is not sure of what he said last."""
    return _DOUBTING.match(" ".join(tokens)) is not None


def is_little(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says that what was said last is so only a little."""
    return _SLIGHTLY.match(" ".join(tokens)) is not None


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
            i (think|guess|suppose|believe|reckon|suspect|expect|fancy|bet|would bet|would guess|would say|would think), it
            seems, seems, seem, perhaps, maybe, probably, possibly, likely, nearly, almost, not quite, more or less,
            presumably, apparently, all but, i am not sure but, hard to say but, sort of, kind of, a touch, (might|may|could)( well|)
            be, (might|may|could) just be, close to, just about, just under, barely, as far as i can (see|tell), if i squint,
            if i see (right|it right), my guess( is|), at a guess, near enough, arguably, verging on, bordering on, by the
            look of it, to my eye, looks to me, i could be wrong but, if (that|the) (last|little|small) (one|bit|patch|step)
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
            (like|as) (it|they|she|he) should( be|)( at (this|that|its|her|his) (age|size|stage)|), for (its|her|his|this) (age|size),
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


@lru_cache(maxsize=8)
def _by_first_word(phrases: tuple[tuple[str, ...], ...]) -> dict[str, list[tuple[str, ...]]]:
    found: dict[str, list[tuple[str, ...]]] = {}
    for words in phrases:
        found.setdefault(words[0], []).append(words)
    return found


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
          in|out|for|a|long|time))*|(?:my\s)?(?:hand|finger|foot|feet|toe|knee|glasse|sleeve)\s(?:is|are)\s(?:freezing|numb|frozen|blue|going\snumb|soaked|
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


_OF_A_FISH = frozenset(
    tokens_of(
        "hole scale spot dot speck fleck patch line edge stripe band tail nose eye gill fin mouth lip belly flank neck shoulder "
        "cheek skin bone spine head body dark pale thin thick fat slim big bigger small smaller long longer short shorter wide "
        "narrow crooked bent torn missing blood wound sore sick ill dead dying cloudy dirty red hi beni white black sumi orange "
        "yellow pink grey colour pattern step stepper gap window kiwa sashi edge shine lustre scar bump lump hump kink bruise "
        "male female fungus parasite worm lice fluke ulcer rot swollen bloated heavy sparse plump round broad deep flat sharp "
        "blurred ragged faint strong weak faded bitten bite breathing gasping limp sinking floating fade fading break breaking "
        "harden sharpen deepen spread grow growing fill heal close shrink stretch settle clear thicken lighten darken whiten"
    )
)
"""With these words a sentence on people may say something of the fish as well, whatever phrases know of them."""

_PLACES = frozenset(("left", "right", "back", "front", "end", "side", "top", "middle", "rear"))


def _one_of(words: str) -> str:
    """An expression that matches one of some words, with commas between them."""
    return f"(?:{'|'.join(' '.join(each.split()) for each in words.split(','))})"


_KIN = _one_of(
    """wife, husband, son, daughter, father, dad, mother, mum, uncle, brother, sister, neighbour, friend, mate, helper, teacher,
    customer, buyer, lad, kid, child, children, grandfather, grandson, vet, boss, judge"""
)
_WE = _one_of(
    "i, we, you, they, somebody, someone, nobody, no 1, everybody, everyone, people, folk, mum, dad, granny, boss"
)
_SOMEBODY = rf"(?:{_WE}|(?:my|the|your|his|her) (?:old )?{_KIN})"
_HE = rf"(?:{_SOMEBODY}|he|she)"
_ALREADY = (
    _one_of(
        """really, just, also, only, alway, never, still, almost, nearly, sort of, kind of, rather, quite, do, did, do not, did
        not, would, would not, will, could, could not, can, can not, should, should not, might, have, ha, had, have not, am,
        are, is, was, were, been, going to, used to, honestly, very much, ever, must, even, once, probably, secretly, simply,
        too, already, not"""
    )
    + " "
)
_DID = _one_of(
    """(?:chuck|throw|toss|bin|miss|pas|overlook|drop)(?:ed|s)?, threw, thrown,
        (?:forget|forgot|remember|recall|wonder)(?:ed|ten)?, tell, told, ask(?:ed)?, learn(?:ed|t)?, regret, sulk, cry,
        (?:laugh|smile|grin|whistle|nod|sigh|shrug|wink|frown|clap|cough)e?d?, nodded, shrugged, grinned, come back, came
        back, coming back, keep coming back, keep going back, go back, look twice, liked, loved, hated, fancied, enjoy(?:ed)?,
        admire, wanted, prefer, pay, paid, buy, bought, won, slip(?:ped)?, spill(?:ed)?, splash(?:ed)?, get excited, excited,
        rang, ring, argue, agree, agreed, disagree, mind, care, complain, worry, rush, hurry, drink, eat, sleep, turn, turned,
        weigh(?:ed)?, write, wrote, note, noted, go past, been wrong, been here, been there, lucky, tired, cold, hungry, busy,
        late, lost, afraid, sorry, happy, glad, pleased, proud, sad, fond of, partial to, keen on, tempted, intrigued,
        puzzled, curious, impressed, not impressed, delighted, surprised, biased, warming to, gone off, going off, smitten,
        sold on, in love, had (?:worse|better|this|1 like)"""
)
_SAID = _one_of(
    "think, thought, say, said, know, knew, guess, believe, wish, hope, bet, call, wait, waited, start, started, stop, stopped"
)
_NO_MORE = _one_of(
    """so, not, that, it, why, how, who, where, what, much, better, as much, nothing, to, me, you, about, him, her, this 1,
        this, really, though, at all, either, a bit, too, just, now, then, yet, before, again, over, for, long, earlier,
        later, counting, laughing, writing, looking, there, here, yes, no, hello, goodbye, a word, anything, 1 day, was, my,
        luck, never, and, i, do, should, would"""
)
_PEOPLE_AT_THE_TUB = re.compile(
    rf"{_WELL}(?:then |because |since |when |that is what |first |today |tonight |maybe |perhap |sometime |fry time )?"
    rf"(?:(?:{_SOMEBODY} (?:{_ALREADY})*{_DID}(?: .*)?|{_SOMEBODY} (?:{_ALREADY})*{_SAID}(?: {_NO_MORE})*)|"
    r"(?:can|do|could|did|would|will) not (?:get excited|complain|grumble|tell you why|help it|win|argue|think so|ask me|know|"
    r"mind|care|blame (?:me|it|her|him)|ask|believe (?:it|that|my eye)|say fairer)(?: .*)?)\Z"
)
"""What people did and felt: `I nearly threw this`, `I'm fond of this one`."""
_GESTURES = re.compile(
    rf"{_WELL}{_HE} (?:just |only )?(?:smile|smiled|grin|grinned|laugh|laughed|whistle|whistled|nod|nodded|sigh|sighed|shrug|"
    r"shrugged|wink|winked|frown|frowned|swore|clapped|coughed|stared|hummed|groaned|hesitated|beamed|"
    r"wa (?:not )?(?:pleased|impressed|happy|delighted)|(?:shook|shake|nodded|scratched|raised|lifted|tilted|held up|put up|gave|"
    r"pulled|made|rolled|rubbed|clicked|bit|sucked|pursed) (?:(?:his|her|their|an?|the|1|both|my|it|him|me|up) )?"
    r"(?:head|eyebrow|brow|eye|thumb|finger|hand|face|shoulder|chin|beard|teeth|tongue|lip|nose|look|nod|sigh|laugh|smile|wink|"
    r"grunt))(?: up| down| a lot| again| at (?:it|that|this 1|me|her|him)| over (?:it|this 1)| when (?:he|she) saw (?:it|"
    r"her|him))?\Z"
)
"""`he shook his head`: of the head of him who looks, not of the fish."""
_STOP_IT = re.compile(
    rf"{_WELL}(?:please )?(?:stop|quit|enough|no more) \w+ing(?: (?:about|around|now|please|it|me|you|so much|for a "
    rf"(?:second|moment|minute)))*\Z|"
    rf"{_WELL}(?:did|do) not (?:see|expect|think|know|hear) (?:that|it|this|so)(?: (?:coming|at all|was coming|at first|one|"
    rf"1))*\Z|"
    r"(?:funny|odd|strange|amazing|nice|interesting) how (?:they|it|that|some|you|these) (?:all )?(?:do|work|go|happen|turn "
    r"out|end up)\b.*\Z|"
    r"(?:size|length|colour|pattern|look|head|body|skin|price|age) (?:is|are) not everything(?: (?:though|mind|they say))*\Z|"
    r"(?:(?:it|she|he|this 1) )?(?:do not|doe not|never)? ?photograph (?:well|badly|nicely|poorly)(?: (?:though|mind|either))*\Z|"
    r"(?:need|ha|have|deserve|want) to be seen (?:moving|swimming|in the (?:water|flesh|sun)|from above|in (?:the "
    r")?(?:daylight|person))\Z|"
    r"(?:it |she |he |they |alway |all )*look (?:bigger|smaller|longer|better|worse|different|shorter|nicer|redder) (?:in|"
    r"out of|under|from|on) (?:the|a) "
    r"(?:water|light|bowl|net|air|sun|board|pond|photo)(?: (?:though|mind|alway|you know))*\Z|"
    r"good (?:morning|evening|afternoon|day|night)(?: (?:madam|sir|lady|gentleman|all|everyone|my dear|sunshine|you|to you|"
    r"your majesty))*\Z|"
    r"(?:skip|ignore|forget|never mind|scrap|delete) (?:this|that|it|the)(?: (?:bit|1|part|last bit|last 1|line|note))?\Z|"
    r"(?:where|who|what) (?:is|are|ha|have) (?:my|the|that) (?:pen|pencil|net|ruler|board|towel|list|sheet|bucket|lid|lamp|"
    r"glasse|phone|tea|coffee|tape)"
    r"(?: (?:gone|got to|now|again|then))*\Z|"
    r"(?:can|could) not all be \w+\Z|(?:i )?could (?:stare at|look at|watch|sit and watch) (?:it|her|him|this|that|this 1) "
    r"all (?:day|night|week|morning)(?: long)?\Z|"
    r"(?:a )?(?:touch|bit|dash|whiff) of (?:class|style|magic|quality|something)(?: (?:about|in|to) (?:it|her|him))?\Z"
)
"""What is said to a fish that does not lie still, and what else says nothing of it."""
_ASKED_AT_THE_TUB = re.compile(
    rf"{_WELL}(?:(?:what|which 1|who|why|where|how|whose|when|which way) )?"
    r"(?:did|do|doe|have|ha|had|shall|should|can|could|would|will|was|were|is|are|am)(?: not)? "
    rf"(?:{_SOMEBODY}|he|it|this|that|this 1|that 1|there|anybody|anyone|the (?:heron|net|light|water|cat|lamp))(?: .*)?\Z"
)
"""`have I done this one`, `can you rub it off`, `what do you make of that`."""
_OBJECT = _one_of(
    """it, her, him, me, us, them, that, this, this 1, that 1, that 1 again, again, once more, the next, the other, another,
        the last, (?:the |a |my |your |some |more |that
        )?(?:bowl|net|towel|light|lamp|lid|water|ruler|board|tape|pen|pencil|sheet|page|list|tub|
        bucket|tank|basin|hose|pump|air|air
        stone|camera|phone|photo|picture|glove|glasse|tea|coffee|break|moment|minute|second|list|
        hand|number|name|radio|door|window blind)"""
).replace("\n", "")
_TOLD_TO = re.compile(
    rf"{_WELL}(?:(?:please|just|can you|could you|let us|let me|now|quick|quickly|somebody|do not|better|i will|we will|i must|"
    r"you had better|i should) )*"
    + _one_of(
        """turn, pass, hold, check, wash, wipe, rinse, look at, count, hand, give, get, fetch, bring, write, move, watch, show,
        let, take, lift, tip, pour, top up, turn off, turn on, switch off, switch on, shut, mind, measure, weigh, scoop,
        catch, try, change, refill, warm, remind, tell, read, find, note down, do not let"""
    )
    + rf"(?: {_OBJECT})+(?: "
    + _one_of(
        """over, round, around, up, out, down, off, on, in, away, now, please, once more, again, here, there, then, i think,
        will you, can you,
        love, dear, darling, sweetheart, calm, gently, slowly, carefully, first, quick, quickly, properly, touch, go, jump,
        swim, to me, for me, a bit, a moment, a second, the other way, this way, that way, would you, back in, back"""
    )
    + r")*\Z"
)
"""What one says to him who helps: `turn her`, `check the water I think`, `pass me the bowl`."""
_OF_THE_DAY = re.compile(
    rf"{_WELL}(?:(?:it is|it was|that is|there is|still|alway|more|the|this|my|getting|too|so|a bit|bit|very|rather|quite|no|not|"
    r"about|nearly|almost|time for|a long|it has been a long|some) )*"
    + _one_of(
        """rain, raining, rainy, windy, drizzle, drizzling, sunny, freezing, chilly, cold
        (?:this|today|in|out|for|here|morning|day).*, hot (?:this|today|out|for|here|day).*, boiling, draughty, snowing,
        thunder, storm, frost, frosty, foggy, fog, weather, tea, coffee, lunch, lunchtime, dinner, supper, cake, biscuit,
        soup, midday, noon, evening, morning, afternoon, dusk, monday, tuesday, wednesday, thursday, friday, saturday, sunday,
        weekend, backache, hungry, thirsty, home time"""
    )
    + r"(?: "
    + _one_of(
        """again, now, today, here, out here, in here, outside, this morning, this afternoon, tonight, already, soon,
        is over, first,
        next, enough, time, then, at last, please, anyone, is it not, in a minute, after this, after this 1, yet, break,
        for (?:the time of year|may|april|june|september|october|november|december|march)"""
    )
    + r")*\Z"
)
"""`rain again`, `cold this morning`, `tea now`."""
_AS_A_RULE = re.compile(
    rf"{_WELL}(?:(?:1|fish|those|these|tosai|they|the 1|(?:that|this) (?:sort|kind|line|pond)|thing)"
    r"(?: (?:like (?:that|this|these|her|him|it)|from (?:there|that pond|this line|this pair)))? )"
    r"(?:(?:do|can|will|all|just|so) )?(?:usually|often|alway|sometime|never|mostly|generally|normally|rarely)"
    r"(?: (?:do|are|is|doe|will|happen|work|that way|like that|the case|so|the way|not))+\Z"
)
_WHAT_IT_DOES = re.compile(
    rf"{_WELL}(?:which |that |it |this |what |still it |at least it |(?=doe not ))"
    r"(?:(?:is|really|also|rather|just|only|alway|sort of|kind of|certainly|doe|do|do not|doe not|can|can not|could|"
    r"will|would|may|might|what|never|more|less|or|than|the thing that) )*"
    r"(?:help|hurt|count|matter|put me off|bother|worry|annoy|please|bug|irritate|haunt|excite|surprise|puzzle|cost|spoil|"
    r"save|make|sell|"
    r"change|decide|tip it|swing it|clinch it|earn it)"
    r"(?: "
    + _one_of(
        """me, it, her, him, us, the fish, this 1, that 1, this fish, for me, everything, thing, nothing, a lot, a bit,
        a little, no
        end, every time, more than it should, less than it should, here, in my book, to me, to anybody, to anyone,

        now, then, at all, much, the day, at this age, itself, a point, a grade, if you follow me, if you ask me, i think"""
    )
    + r")*\Z"
)
"""`which helps`, `it bothers me more than it should`, `it's what makes the fish if you follow me`."""
_SEE = _one_of("see, saw, seen, notice, noticed, spot, spotted, mind, minded, find")
_SLIGHT = re.compile(
    rf"{_WELL}(?:(?:just|only|very|such|it is|that is|a|really|quite|so|but|nothing more than|may be|might be|could be) )*"
    r"(?:"
    + _one_of(
        """small thing, tiny thing, little thing, detail, trifle, nothing, nothing serious, nothing dramatic, forgivable,
        forgiven, negligible, no disaster, no big deal, no tragedy, no drama, no crime, not a crime, no sin, nothing to worry
        about, nothing to get excited about, nothing to shout about, nothing to dislike, nothing to hate, nothing to lose
        sleep over, not serious, not a problem, no problem, no bother, no worry, small fault, tiny fault, minor fault, little
        fault, small flaw, tiny flaw, minor flaw, hardly noticeable, hardly visible, hardly worth (?:saying|noting), hardly
        seen, a blemish, doe not hurt, doe not (?:harm|matter), (?:i am )?(?:being )?(?:picky|fussy|nitpicking|strict|harsh)"""
    )
    + r"|(?:no 1|nobody|you|1|i|hardly anyone|hardly anybody|few|a buyer|a judge) "
    rf"(?:(?:ever|will|would|do|did|can|could|have|hardly|barely|only|scarcely) )*"
    rf"(?:(?<=nobody ){_SEE}|(?<=no 1 ){_SEE}|(?:not|never|hardly|barely|scarcely) (?:have |ever )*{_SEE}|"
    rf"(?<=hardly ){_SEE}|(?<=barely ){_SEE}|(?<=would ){_SEE}(?= unless))"
    r"(?: (?:it|that|them|this|those|from (?:the top|above|here|a distance|afar|over there)|in the pond|if i had not said|"
    r"unless you look|unless i told you|when (?:it|she|he) (?:move|swim)|at a show))*)\Z"
)
"""What says of a fault only that it is slight: `small thing`, `you'd hardly see it from the top`."""
_LIKED = re.compile(
    rf"{_WELL}(?:"
    + _one_of(
        """it is, it, that is, this is, she is, he is, is, a, an, quite, rather, really, very, so, what a, such a, just, simply,
        absolutely, utterly, truly, oddly, strangely, totally, completely, ever so, how, oh, ooh, wow, my, i find
        (?:it|her|him), kind of, sort of, slightly, a bit, a bit of a, bit of a, 1, you, some, proper, real, that, otherwise,
        little, good, nice, lovely"""
    )
    + " )*"
    + _one_of(
        """gorgeous, stunning, stunner, lovely, beautiful, beauty, pretty, handsome, cute, sweet, adorable, charming, delightful,
        fetching, breathtaking, wonderful, marvellous, super, superb, splendid, terrific, fantastic, brilliant, amazing,
        incredible, fabulous, magic, magical, heavenly, divine, classy, lush, smashing, cracking, tasty, delicious, dream,
        treat, joy, delight, pleasure, treasure, poem, good, great, excellent, nice, fine, neat, decent, respectable, neat
        that, fancy that, lovely that, nice that, well well, well i never, oh my, my word, bravo, hat off, precious, lucky,
        funny, odd, strange, weird, curious, easy on the eye, pleasing, pleasing to (?:see|look at), nice to (?:see|look at),
        good to see, meh, hm, whatever"""
    )
    + "(?: "
    + _one_of(
        """this, that, 1, this 1, that 1, thing, little thing, fish, little fish, koi, old, animal, sight, indeed, really, too,
        altogether, all round, otherwise, though, at that, enough, then, i think, i must say, to me, in (?:its|her|his) way,
        in a way, of (?:its|her|his) kind, to look at, to see, is (?:it|she|he) not, as they come, good, very, for (?:me|us|a
        tosai|a young 1|its age|her age|his age), now, again, already, here, hm"""
    )
    + r")*\Z"
)
"""Praise that is not said of any trait: `gorgeous`, `quite fetching really`, `neat that`."""
_PRAISED_ONE = frozenset(spread("good, it is odd, bit odd, a bit odd, good thing, fine thing, nice old"))
_OF_ALL_FISH = re.compile(
    rf"{_WELL}(?:(?:spring|summer|autumn|winter|mud|pond|late|early) (?:fish|tosai|harvest|lot) )?(?:(?:they|these|all|we|"
    rf"it) (?:are|is|were|have|had|have all|are all|all come|came|all came|come) )?"
    r"(?:(?:all|tosai|nisai|everything|every 1|1|still|just|a|an|the|this|these|our|year|my|mostly|nearly|of them|of these|young|"
    r"fish|lot|whole lot|kohaku) )*"
    r"(?:(?:from|out of|of|off) (?:"
    + _one_of(
        """the, a, 1, same, 1 and the same, single, this, that, last, my, our, 2, 3, his, her, year, old, big, small, mud,
        back, second,
        first, third, upper, lower, spring, different, several"""
    )
    + r" )*(?:pair|spawn|spawning|line|mother|female|parent|brood|batch|pond|greenhouse|tank|mud pond|pond \d+|tank \d+|tub "
    r"\d+|net|vat|family|set|"
    r"harvest|hatch)"
    r"(?: (?:as far as i know|i think|i believe|this time|since \w+|last \w+|this \w+|again|apparently|too|then|pond))*|"
    r"(?:first|second|third|fourth|fifth|final|last|early|late|autumn|spring|winter) "
    r"(?:senbetsu|time through|time round|time|selection|sorting|sort|cull|culling|round|look|pas|pass|go|grading|"
    r"harvest)(?: (?:of|for|this|in) (?:the "
    r")?\w+)?|"
    r"(?:mixed|motley|odd|funny|good|decent|nice|fair|poor|average|ordinary|usual|uneven) "
    r"(?:bag|lot|bunch|batch|crew|crop|harvest)(?: (?:this|of|last|so|all|again|on|in|for|to) (?:\w+ ?){0,3})?|"
    r"(?:growth|size)(?: is| are)? (?:uneven|all over(?: the (?:place|shop))?|mixed|very mixed|varied|vary|a bit mixed|up "
    r"and down))\Z"
)
"""What is said of all fish of a tub at once, and of no trait of one: `all from the one spawn`, `third selection`, `mixed bag`."""
_CAUSES = re.compile(
    rf"{_WELL}(?:"
    + _one_of(
        """it is, that is, this is, was, that was, could, can, may, might, must, will, would, be, have, been, just, only, maybe,
        perhap, probably, likely, possibly, all, down to, because of, from, due to, blame, i blame, (?:i )?put (?:it|that)
        down to, thank to, too much, too little, not enough, the, that, a, bit of, some, its, her, his, last, this, year, lack
        of, hard, soft, cold, warm, old, new, bad, poor, rich, cheap, wrong"""
    )
    + r" )*(?:"
    + _one_of(
        """water, food, feed, feeding, diet, pellet, net, bag, trip, transport, travel, journey, handling, light, lamp,
        stress, winter,
        summer, heat, temperature, genetic, mother, father, family, pond, mud, algae, filter, move, weather, season, heron,
        overfeeding, underfeeding, colour food, greenhouse"""
    )
    + r")(?: "
    + _one_of(
        """doe, did, will do, can do, would do, that, this, it, side, on, the, mother, father, pond, line, food, water, i, think,
        guess, suppose, bet, reckon, expect, maybe, perhap, probably, likely, again, to them, to us, too, rich, cold, warm,
        hard, soft, for, rough, ride, mark, damage, year, not, most likely, over here, bag, here, last, now"""
    )
    + r")*\Z"
)
"""What something comes from: `stress maybe`, `water does that`, `hard water pond`."""


_PEOPLE = frozenset(
    spread(
        """
            i, we, you, me, my, mine, us, our, your, yours, myself, yourself, ourselves, somebody, someone, anybody, anyone,
            nobody, everybody, everyone, people, folk, folks, customer, customers, buyer, buyers, boss, wife, husband, kids,
            children, neighbour, neighbours, colleague, boyfriend, girlfriend, who, whoever
        """
    )
)
_MAY_SAY = frozenset(
    tokens_of(
        "through count counted any none more less enough better best worse worst yes in out keep kept keeping sell sold "
        "take took taken "
        "have had buy give gave show grow feed leave let put send throw want bin chuck cull save pick choose stay go gone "
        "going pass "
        "wait treat salt dip scrape isolate ill improve develop fill last hold turn turned change become colour rest other "
        "others half "
        "between across along over under around most least all every whole few several couple lots pair two three call called "
        "describe see find found notice spot like than finger fingernail thumb thumbnail palm nail fist sister brother "
        "twin late gamble risk "
        "tomorrow later would price cheap money worth sale quid pounds euros"
    )
)
"""Words of remarks on people that may say what becomes of the fish, of how much of something there is, or how it compares."""
_ORDINARY = frozenset(
    tokens_of(
        "back up down off right hand mean sorry done note much some such same coming water cold tired hungry summer winter "
        "autumn "
        "dad mum quick quickly photo photograph stand joke pity shame worry guess run old finish finished happy proud lad "
        "measure "
        "nothing no measured tea lamp net bucket towel"
    )
)
"""Words that a phrase has and that everybody uses of other things as well."""


def is_of_people(tokens: tuple[str, ...], knows: Callable[[str], bool]) -> bool:
    """Whether a remark speaks of people, and no word of it is one that is said of a fish: `that took me by surprise`.

    knows: whether a phrase or a name has a word by itself.
    """
    tokens = without(without(tokens, HEDGES)[0], OPINIONS)[0]
    if len(tokens) < 3 or _PEOPLE.isdisjoint((word,) for word in tokens) or ("my", "hand") in pairwise(tokens):
        return False
    if not _MAY_SAY.isdisjoint(tokens) and ("used", "to") not in pairwise(tokens):
        return False
    if any(word.isdigit() and word != "1" for word in tokens) or _speaks_of_a_fish(tokens):
        return False
    return not any(knows(word) for word in tokens if word not in _ORDINARY and word not in SKIPPED and word != "1")


def is_small_talk(tokens: tuple[str, ...], speaks: Callable[[], bool]) -> bool:
    """Whether a remark that nothing reads says nothing of a trait by its form: what people do, ask and feel, and mere praise."""
    text = " ".join(tokens)
    if _OF_ALL_FISH.match(text) is not None:
        return True
    if any(word.isdigit() and word != "1" for word in tokens):
        return False
    if any(form.match(text) for form in (_GESTURES, _SLIGHT, _OF_THE_DAY, _STOP_IT)):
        return True
    if _LIKED.match(text) is not None and tokens not in _PRAISED_ONE:
        return True
    if _speaks_of_a_fish(tokens):
        return False
    if any(form.match(text) for form in (_CAUSES, _AS_A_RULE, _WHAT_IT_DOES, _TOLD_TO)):
        return True
    return (_PEOPLE_AT_THE_TUB.match(text) or _ASKED_AT_THE_TUB.match(text)) is not None and not speaks()


def _speaks_of_a_fish(tokens: tuple[str, ...]) -> bool:
    """Whether there is a word of a fish's parts and looks, or a place on it: `the left`."""
    if not _OF_A_FISH.isdisjoint(tokens):
        return True
    return any(first in {"the", "its", "her", "his"} and then in _PLACES for first, then in pairwise(tokens))


_BARE_TALK = frozenset(bare(words) for words in _TALK) - {()} - {words for words in map(bare, _TALK) if len(words) < 2}
