"""Where red and white begin and end along a fish, and how long they are: `the main patch runs from the neck to mid-dorsal`.

Places and lengths are found first, and the words around them tell what is said of them. Such a remark is told again in short
clauses that phrases read: one for each stretch of the body that surely has red (`red along the shoulder`) or surely has none
(`no red along the shoulder`), one for the front end of the red on the head, one for the white before the tail. What a length
says of one patch alone is understood, and no clause holds it.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from enum import Enum
from functools import lru_cache

from koirules.notes.places_and_lengths import (
    ABOUT,
    BODY,
    END,
    HEAD,
    PLACES,
    STEM,
    STRETCHES,
    THE_TAIL,
    Marked,
    Place,
    form_of,
    marked,
)
from koirules.notes.tree import words_of_line

Clauses = tuple[str, ...]
"""What phrases read; empty where a remark says something that none of them holds."""


class Topic(Enum):
    """What the last remarks on a fish were about."""

    RED = "red"
    GAP = "gap"
    MARK = "mark"
    OTHER = "other"


_P, _Q, _L = r"@(?P<p>\d\d)", r"@(?P<q>\d\d)", r"#(?P<n>\d)"
_ANY_P, _ANY_L = r"@\d\d", r"#\d"

_PART = (
    r"(?:patch|step|block|piece|saddle|band|field|blanket|half|sheet|dan|strip|stretch|marking|run|plate|island|slab|"
    r"blob|splodge|chunk)"
)
_OF_RED = (
    rf"(?:(?:bit|dab|splash|touch|lick|area|lot|{_PART}) of (?:red|hi|colour)|red (?:bit|part|area)|red|hi|colour|"
    rf"pattern|{_PART}|1)"
)
_WHICH = (
    r"(?:big|large|long|small|little|tiny|short|main|first|second|third|fourth|last|next|front|back|rear|middle|top|"
    r"bottom|head|shoulder|"
    r"neck|body|tail|other|single|solid|wide|narrow|broad|round|deep|strong|nice|good|clean|heavy|thin|same|bold|lovely|"
    r"neat|decent|"
    r"proper|whole|rest of the|1|@\d\d|red|hi|final|hind|square|oval|lone|separate|extra|odd|great|huge)"
)
_THEN = (
    r"(?:(?:then|and|but|so|also|there is|there are|it is|it has|it|i see|we have|has|got|with|the|a|an|its|her|his|"
    r"another|again|after that|"
    r"this|that|only|just|all|she has|he has) )*"
)
_ON_A_SIDE = r"(?:on|down|along|over to|of) (?:the |its |her |his )?(?:left|right|1|that|this|other)(?: side| flank)?"
_SUBJECT = (
    rf"{_THEN}(?:(?:{_WHICH} )*{_OF_RED}(?: (?:of red|of hi|on top|underneath|under it|itself|on the back|on the body|on "
    rf"its back|on @13|"
    rf"again|1|2|3|4|as well|too|{_ON_A_SIDE}))*|first|second|third|fourth|last|(?:step|patch|dan|block) [1-4])"
)
_GOES = (
    r"(?:(?:is|go|goe|going|run|running|reach|reaching|come|coming|stretch|stretching|extend|extending|carry|cover|"
    r"covering|lie|lying|sit|"
    r"sitting|start|begin|take up|taking up|span|spanning|fill|get|continue|flow|sweep|straddle|carry on|keep going|"
    r"keep|take|have|back|"
    r"down|on|straight|along|all the way|right|over|across|just|only|nearly|almost|about|from there|from it|from that|"
    r"in 1 piece|unbroken|"
    r"without (?:a (?:gap|break|stop)|stopping)|and|then|well|mostly|mainly|more or less) )*"
)
_STARTS = (
    r"(?:start|begin|starting|beginning|set in|come in|kick in|kick off|pick up|start off|start again|begin again|start "
    r"up|start back)"
)
_STOPS = (
    r"(?:stop|end|finish|quit|stopping|ending|finishing|run out|end up|give out|peter out|die out|come to an end|cut "
    r"off|break off|"
    r"fade out|stop dead|pinch in|pinch out|pinch in to nothing|pull up|stop short|stop off)"
)
_TO = (
    r"(?:(?:back|down|up|right|all the way|straight|on|only|just|as far|nearly|almost|and|stop|end|stopping|ending|"
    r"through|along|well|"
    r"going|run|reaching|on down|about) )*(?:to|until|till|up to|as far as|into|at|towards)(?: about| nearly| almost| roughly)?"
)
_TAILS = (
    rf"(?: (?:(?:more |mostly |only |just |all )?{_ON_A_SIDE}(?: only)?|on both side|both side|on the back|on top|along "
    rf"the back|in 1 "
    r"(?:piece|go|run)|without (?:a|any) (?:gap|break|stop|cut)|without stopping|with no (?:gap|break|stop)|unbroken|no "
    r"gap|no break|solid|"
    r"again|i think|i would say|or so|exactly|too|as well|nearly|already|properly|in the middle|across the back|over "
    r"the back|this time|"
    rf"back|straight|though|as far as i can see|(?:for |by )?{_ANY_L}(?: long| wide| across)?))*"
)
_LED = r"(?:(?:then|and|but|so|again|it|that|this|which|she|he|they|from there|after that|there|also) )*"
_WHITE = (
    r"(?:(?:then|and|but|so|also|there is|it is|the|a|an|its|her|his|all|clean|pure|just|only|big|long|clear|empty|good|"
    r"bright|rest is|"
    r"rest|again|nice|plain|after that|bit of|that is|with) )*(?:white|bare|nothing|no red|no hi|no colour|no pattern|"
    r"empty|blank|not a scale of red|"
    r"no more red)(?: (?:at all|again|there|all the way|is|run|start|go|goe|back|of any kind|on the back|skin|ground))*"
)
_GAP = (
    r"(?:@0[5-9] )?(?:(?:then|and|but|so|also|there is|it is|the|a|an|its|her|his|white|clean|clear|good|nice|decent|"
    r"big|small|short|long|narrow|wide|"
    r"proper|bare|little|another|with|neck|first|second|front|back|rear|middle|only|just|tiny) )*(?:gap|white|space|"
    r"break|kiri|(?:strip|bit|band|ring|stripe) "
    r"of white|white (?:gap|bit|band|ring|part|neck|piece|stretch|strip|break|space))"
)
_STEPS = r"(?:patch|step|block|red|piece)"
_BEFORE_THE_TAIL = (
    r"(?:@11|(?:before|in front of|at|by|near|ahead of|up to|till|to) @1[12]|to finish|to end with|left at the (?:end|"
    r"rear)|at the (?:end|rear)|tail end|behind the last (?:patch|step|1))"
)
_BETWEEN = (
    rf"(?:(?:in )?between(?: (?:them|the 2|the {_STEPS}|each|the 2 {_STEPS}|{_STEPS}))?|after(?: (?:that|it))?|again|"
    rf"there|in the middle|then|"
    rf"(?:at|behind|on|by|across|near|round|over) {_ANY_P}|{_ANY_P})"
)
_WIDE = (
    r"(?: (?:wide|long|deep|across|high|thick|broad|in length|in width|square|of it|open|round|each|apart|either way|"
    r"tall|back))?"
)

_RED_WORDS = frozenset(
    [
        "red",
        "hi",
        "beni",
        "patch",
        "step",
        "block",
        "piece",
        "saddle",
        "band",
        "field",
        "nidan",
        "sandan",
        "ippon",
        "yondan",
        "godan",
        "pattern",
        "dan",
        "blanket",
        "inazuma",
    ]
)
_GAP_WORDS = frozenset(["gap", "white", "space", "break", "kiri", "bare", "nothing"])
_MARKS = frozenset(
    [
        "spot",
        "dot",
        "speck",
        "mark",
        "hole",
        "window",
        "notch",
        "bite",
        "tear",
        "split",
        "scale",
        "shimi",
        "fleck",
        "scrape",
        "lump",
        "bump",
        "wound",
        "sore",
        "stump",
        "edge",
        "kiwa",
        "link",
        "ring",
        "barbel",
        "collar",
        "freckle",
        "bruise",
        "scratch",
        "tobihi",
        "line",
        "streak",
        "thread",
        "bridge",
        "sashi",
        "cap",
        "dab",
        "stripe",
        "smudge",
        "cut",
        "graze",
    ]
)
_THINGS = (
    r"(?:pea|lentil|pinhead|pin|pencil|matchstick|match|coin|button|thumbnail|fingernail|nail|grain of rice|rice grain|"
    r"grain|finger tip|"
    r"fingertip|finger|thumb|thread|hair|penny|peppercorn|bean|seed|needle|pellet|scale|poppy seed|sesame seed|eye|"
    r"stamp|bead|straw|"
    r"freckle|crumb|raindrop|drop|cent|knuckle)"
)


_FROM_TO = (
    rf"{_LED}(?P<s>{_SUBJECT} )?{_GOES}(?:from )?{_P} {_TO} (?:{_Q}|{_L} @11){_TAILS}",
    rf"{_LED}(?P<s>{_SUBJECT} )?{_GOES}(?:from )?{_P} and {_STOPS} (?:at )?(?:{_Q}|{_L} @11){_TAILS}",
    rf"{_LED}(?P<s>{_SUBJECT} )?{_GOES}between {_P} and {_Q}{_TAILS}",
)
_BEGUN = (
    (
        rf"{_LED}(?P<s>{_SUBJECT} )?(?:only |just |really |then )*{_STARTS} (?:only |just |right |again |further back )*(?:from |"
        rf"on |at )?{_P}{_TAILS}"
    ),
    rf"(?P<s>{_SUBJECT}) {_GOES}from {_P}(?: (?:on|onward|down|backward))?{_TAILS}",
)
_SHIFTED = (
    rf"{_LED}(?P<s>{_SUBJECT} )?(?:only |just )*{_STARTS} (?:only |just )*(?:{_ANY_L}|a way|well|some way|further) (?:behind |"
    rf"after |past |back from |below |"
    r"down from |on from |further back than )?(?:@(?P<p>\d\d)|it|them|that)"
)
_ENDED = (
    (
        rf"{_LED}(?P<s>{_SUBJECT} )?(?:only |just |then |and |but )*{_STOPS} (?:just |right |exactly |only |short |clean "
        rf"|neatly |"
        rf"square |in a point |in a "
        rf"curve |round |dead |nicely )*(?:at |on |by )?(?:{_Q}|{_L} @11){_TAILS}"
    ),
    rf"{_LED}(?P<s>{_SUBJECT} )?{_GOES}{_TO} (?:{_Q}|{_L} @11)(?: and (?:then )?stop)?{_TAILS}",
    rf"(?P<s>{_SUBJECT}) {_GOES}{_L} (?:from |away from )?@1[12]{_TAILS}",
)
_LIES = (
    (
        rf"(?P<s>{_SUBJECT} )(?:is |sit |lie |there |right |just |bang |dead |all |only |placed )*(?:on |at |in |over |"
        rf"across |round |around |under |by |covering |"
        rf"behind |along |near |(?:like )?an? (?:{_WHICH} )*(?:square|triangle|saddle|block|heart|diamond|circle|wedge|"
        rf"butterfly|band|bar|stripe|blob) )*{_P}{_TAILS}(?: (?:is |and |it is )?(?:{_ANY_L}|{ABOUT}\d+){_WIDE})?"
    ),
    rf"(?P<s>{_SUBJECT} )(?:nearly |almost |just |only )*(?:touch|reach|meet|hit|touching|reaching) {_P}{_TAILS}",
)
_LISTED = (
    r"(?:(?:and|then|1|another|a|also|the other|last|next|1 more|third|second|first|fourth|is|sit|lie|small|big|little|"
    r"third in the middle) )*"
    rf"(?:(?:on|at|in|over|across|by|near|behind|under|along|round|just) )*{_P}"
)
_FROM_AND_TO = (
    rf"{_WHITE} (?:from )?(?:{_P}|(?P<there>there|here|it|that)) {_TO} {_Q}{_TAILS}",
    rf"{_WHITE} between {_P} and {_Q}{_TAILS}",
    (
        rf"from (?:{_P}|(?P<there>there|here|it|that)) {_TO} {_Q}(?: (?:is|it is|all|there is|just|clean|only))* (?:white|"
        rf"nothing|bare|empty|no red)"
    ),
)
_UP_TO = rf"{_WHITE} (?:{_TO} |before )?{_Q}{_TAILS}"
_ALL_BEHIND = (
    rf"{_WHITE} (?:from there|after that|after|behind it|behind that|from there on|from there back|further back|behind "
    rf"there|beyond that|the rest of the way|"
    r"after it|behind)(?: on| back)?"
)
_BARE_AT = (
    rf"{_WHITE} (?:on |at |along |over |in |across |round )+(?:{_P}|(?:the |its )?(?P<part>(?:front|middle|back|rear|"
    rf"last) (?:third|half))(?: of (?:the |its )?{BODY})?)"
)
_WIDTH = (
    (
        rf"{_GAP}(?: is| of| about| there| behind| at| on| for)*(?: {_BETWEEN})?(?: is| of)* {_L}{_WIDE}(?: "
        rf"(?P<place>{_BEFORE_THE_TAIL}))?(?: {_BETWEEN})?"
    ),
    rf"{_GAP} (?P<place>{_BEFORE_THE_TAIL}) (?:is |of |about )*{_L}{_WIDE}",
    (
        rf"(?:(?:then|and|with|but|there is|only|just|there are|it is|you get|you see|you have|i see|we have|it leave|"
        rf"leave|leaving|that leave|which leave|exactly|it has) )*{_L} (?:of |wide |clean |clear |plain |pure )*(?:white|"
        rf"gap|bare|"
        rf"nothing|white gap|space|clean white)(?: again| there)?(?: (?P<place>{_BEFORE_THE_TAIL}))?(?: {_BETWEEN})?"
    ),
    (
        rf"{_GAP}(?: is| about| just| only)* (?:as wide as|wide as|the size of|the breadth of|big as) {_L}(?: "
        rf"(?P<place>{_BEFORE_THE_TAIL}))?(?: {_BETWEEN})?"
    ),
    rf"{_WHITE} for {_L}(?: (?P<place>{_BEFORE_THE_TAIL}))?(?: {_BETWEEN})?",
    rf"{_L}{_WIDE} between(?: (?:them|the 2|the {_STEPS}|each|the 2 {_STEPS}))?",
)
_MERE_WHITE = rf"(?:white (?:for |of |about )*{_ANY_L}|{_ANY_L} (?:of )?(?:clean )?white){_WIDE}"
_RED_OF = (
    rf"{_THEN}{_ANY_L} (?:of )?(?:solid |clean |good )?(?:red|hi)(?: again| too)?(?: (?:on |at |behind |over |in |across "
    rf"|along |after )?(?:{_P}|that|it))?|{_THEN}(?:red|hi) for {_ANY_L}(?: (?:on |at |over )?@(?P<r>\d\d))?"
)
_APART = (
    rf"(?:pattern |it is |there are |we have |just |only )*(?P<c>\d (?:red )?(?:patch|step|block|piece)) (?:with |all |"
    rf"and )*(?:{_L} (?:apart|of white between(?: them| each)?|between(?: them| each)?)|a? ?gap (?:of )?#(?P<m>\d)(?: "
    rf"between(?: them)?)?)"
)
_GAP_AT = (
    rf"(?:(?P<c>\d (?:red )?(?:patch|step|block|piece)) (?:with |and )*)?{_GAP}(?: (?:is|lie|sit|right|just|come|fall|"
    rf"exactly))* (?:at |by |on |under |over |near |round |right |just )*{_P}"
)
_ONTO_TAIL = (
    rf"{_LED}(?P<s>{_SUBJECT} )?(?:(?:just|also|and|then|it|has|have|a bit|even) )*(?:spill|creep|bleed|run|go|goe|leak|carry|"
    rf"stray|come|slip|extend|reach|spilling|creeping|"
    rf"bleeding|running|going|carry on)(?: (?:over|out|right|just|a bit|slightly|well))* (?:onto|over onto|out "
    rf"onto) (?:@12|(?:the |its )?tail fin){_TAILS}"
)
_HEAD_RED = (
    rf"(?P<s>{_SUBJECT} )(?:is |take |take up |cover |fill |cap |covering |taking )+(?P<how>all|most of|nearly all of|"
    rf"nearly all|all of|almost all of|half|half of)? ?"
    r"(?:the whole |the whole of )?(?:@13|head)(?: and .*)?"
)
_TOUCHING = (
    rf"{_THEN}(?:(?:first|last|front|back|2|both|all|{_OF_RED}|of them|they|nearly|almost|just|sort of|kind of|are) "
    rf")*(?:touch|touching|join|meet|kiss|kissing|run "
    r"together|run into each other|joined|grow together|hang together|connected|merge|flow together|join up)(?: (?:each "
    r"other|up|together|1 another|at @\d\d|by (?:a|1|"
    rf"2|an?) (?:scale|thread|hair)|by {_ANY_L}|just|nearly|there|in the middle))*"
)
_JOINS = (
    rf"(?:{_THEN}(?:thin |narrow |small |little |fine |red |wide |1 )*(?:band|bridge|strip|stripe|line|thread|link|neck|"
    rf"bit|1)(?: of red)? )?(?:(?:that|which|just|nearly) )*"
    r"(?:join|link|connect|bridge)(?:ing)? (?:them|the 2|it|both|the (?:patch|step|2 patch|2 step|first 2|last 2)|it to "
    r"@\d\d|@\d\d to @\d\d|it to the (?:next|"
    r"first|second) (?:1|patch|step))(?: together| up)?"
)
_SIZES = (
    (
        rf"(?:(?:then|and|but|only|just|that is|it is|the|its|they are|all|each|with|is|length are|width are|a) "
        rf")*(?:{_ANY_L}|\d+ (?:by|and) \d+(?: and \d+)?(?: (?:mm|cm|"
        rf"scale))?|{_ANY_L} by (?:\d+|{_ANY_L})){_WIDE}(?: (?:by {_ANY_L}|each|or so|i think|at most|all of them|no more|at "
        rf"a guess|{_ANY_L}{_WIDE}))*"
    ),
    (
        r"(?:(?:about|roughly|maybe|nearly|just|only|not quite|it is|they are|is|all|each|no bigger than|hardly|barely|"
        r"around|perhap|well) )*(?:(?:as )?(?:big|wide|long|"
        r"large|thick|small|deep) as|(?:the )?(?:size|width|length) of|no (?:bigger|wider|longer|larger) than|bigger than|"
        r"smaller than|wider than|longer than)? ?(?:a|an|"
        rf"the|my|1|half a|half an|2)? ?(?:little |small )?{_THINGS}(?: head)?(?: each| wide| long| across| in size| maybe)?"
    ),
    (
        r"(?:(?:about|roughly|maybe|nearly|just) )*(?:twice|half|3 time|a third of|a quarter of) (?:that|as (?:long|wide|"
        r"big)|the (?:size|length|width)|it)(?: again)?"
    ),
    rf"(?:go|goe|run|reach|carry on|keep going|stretch)(?: back| on| down)*(?: for| about| on)* (?:\d|{_ANY_L}){_TAILS}",
    rf"(?:about |roughly |just |nearly )*as (?:wide|long|big) as (?:between )?{_ANY_P}(?: is (?:wide|long))?",
)
_SIZED = (
    rf"(?:(?:the|its|that|this|and|but|it|then) )*(?:{_WHICH} )*(?P<thing>{_PART}|stripe|line|spot|dot|speck|mark|hole|"
    rf"window|bite|notch|split|tear|bridge|link|collar|"
    rf"cap|gap|scrape|lump|bump|stump|ring|1|bar)(?: (?:is|are|about|only|just|of|maybe|got|roughly))* "
    rf"(?:{_ANY_L}{_WIDE}|(?:as )?(?:wide|long|big) as (?:a|an|my|the|@\d\d) ?\w*|"
    rf"(?:the )?size of (?:a|an|my|the) \w+|(?:the )?(?:size of|as (?:wide|long|big) as|wide as|long as) {_ANY_L}|"
    rf"(?:twice|half) (?:that|as (?:long|wide|big)))(?: (?:by {_ANY_L}|each|or so))*"
)


_WHERE = (
    r"(?:(?:on|in|at|of|the|its|her|his|near|nearer|close|closer|just|about|a bit|a hair|a little|slightly|exactly|"
    r"right|roughly|above|below|"
    r"under|underneath|behind|before|between|beside|next|inside|outside|over|and|from|to|toward|towards|along|down|up|"
    r"by|that|this|other|"
    r"left|side|middle|centre|center|edge|half|third|quarter|upper|lower|top|bottom|front|rear|back|end|corner|halfway|"
    r"half way|away|"
    r"high|low|higher|lower|up|further|forward|flank|belly|cheek|lobe|ray|fin|line|midline|spine|eye|gill|jaw|chin|throat|root|"
    r"patch|piece|step|block|one|1|2|first|second|last|both|each|@\d\d|#\d|where it join|as well|too|again|mostly|mainly) )*"
)
"""Words that say where something is, and nothing else: `left of the middle`, `under the front of the top fin`."""
_SIDES_AND_PLACES = frozenset(
    words_of_line(
        "left right side middle centre edge upper lower top bottom front rear corner halfway flank belly lobe end"
    )
)


def topic_of(remarks: Sequence[str]) -> Topic:
    """What the last of some remarks is about: what says no more than where or how long goes on about the one before it."""
    for words in reversed(remarks):
        topic = _topic(words)
        if topic is not Topic.OTHER:
            return topic
        if not _goes_on_about_red(words):
            return Topic.OTHER
    return Topic.OTHER


@lru_cache(maxsize=10_000)
def _goes_on_about_red(words: str) -> bool:
    return next(along(words, Topic.RED), None) is not None


@lru_cache(maxsize=10_000)
def _topic(words: str) -> Topic:
    for word in words.split():
        for topic, each in ((Topic.GAP, _GAP_WORDS), (Topic.RED, _RED_WORDS), (Topic.MARK, _MARKS)):
            if word in each:
                return topic
    return Topic.OTHER


def last_place(remarks: Sequence[str]) -> int | None:
    """The number of the place that is named last in some remarks."""
    return next((place for words in reversed(remarks) if (place := _last_in(words)) is not None), None)


@lru_cache(maxsize=10_000)
def _last_in(words: str) -> int | None:
    found = re.findall(r"@(\d\d)", marked(words).words)
    return int(found[-1]) if found else None


def along(words: str, topic: Topic = Topic.OTHER, last: int | None = None) -> Iterator[Clauses]:
    """How a remark may be told in clauses: the first ones that are all read are meant.

    words: its tokens with one space between them. topic: what the remark before it is about. last: the place that was named last.
    """
    if " of it" in words:
        for part in ("dorsal", "top fin", "back fin", "head"):
            if part in words:
                words = words.replace(" of it", f" of the {part}")
                break
    told = marked(words)
    if not ("@" in told.words or "#" in told.words or "tail fin" in told.words or topic is not Topic.OTHER):
        return
    yield from _of_white(told, topic, last)
    yield from _of_red(told, topic is Topic.RED, words)
    if (topic in {Topic.RED, Topic.GAP} or _names_red(words)) and told.match(_TOUCHING) is not None:
        yield ("step touching",)
    if topic is not Topic.OTHER and told.match(_JOINS) is not None:
        yield ("step touching",)
    if topic is Topic.GAP and told.match(_SIZES[0]) is not None:
        yield (f"gap {words}",)
    if topic is not Topic.OTHER and any(told.match(form) is not None for form in _SIZES):
        yield ()
    where = {"@" in told.words, not _SIDES_AND_PLACES.isdisjoint(told.words.split())}
    if any(where) and form_of(_WHERE).fullmatch(f"{told.words} ") is not None and _goes_on(told.words, topic):
        yield ()
    if (sized := told.match(_SIZED)) is not None and (topic is not Topic.OTHER or _names_red(sized["thing"])):
        yield ()


def _goes_on(words: str, topic: Topic) -> bool:
    """Whether a place is of what was spoken of, and not of another mark or of red on a part that was not named yet."""
    if (
        re.match(r"(?:and |then )*(?:1|2|3|a bit|a little|another|both|each)\b", words) is not None
        and topic is Topic.MARK
    ):
        return False
    if topic is Topic.RED:
        return re.search(r"@0[0-4]|\b(?:eye|cheek|fin|gill|lobe|belly|a bit|both|jaw|chin)\b", words) is None
    return topic is Topic.MARK


def _of_white(told: Marked, topic: Topic, last: int | None) -> Iterator[Clauses]:
    for form in _WIDTH:
        if (found := told.match(form)) is not None:
            between = (
                topic is Topic.RED and not told.words.startswith("white") and (last is None or PLACES[last].first < 7)
            )
            if not between and told.match(_MERE_WHITE) is not None:
                continue  # `white two centimetres`: between patches, before the tail or on the nose
            length = told.lengths[int(found["n"] or 0)]
            if found.get("place"):
                yield (_before_the_tail(length),)
                continue
            places = [PLACES[int(at)] for at in re.findall(r"@(\d\d)", told.words)]
            where = [_gap_at(place) for place in places if 2 <= place.first < END - 1]
            yield (f"gap {length}", *where)
            few = re.match(r"(?:about |just |only |exactly )*([1-3]|a) (?:scale|row)\b", length)
            yield ("short gap", *where) if few else ()
    for form in _FROM_AND_TO:
        if (found := told.match(form)) is not None:
            start = last if found.get("there") else int(found["p"] or 0)
            if start is not None and (bare := _bare(PLACES[start], PLACES[int(found["q"] or 0)])):
                yield bare
    if (found := told.match(_UP_TO)) is not None:
        to, begun = (
            PLACES[int(found["q"] or 0)],
            told.words.startswith(("then ", "and then ", "after that ", "from there ")),
        )
        if not begun and topic is Topic.OTHER:
            yield from filter(None, [_bare_up_to(to)])
        elif last is not None:  # what was red before it is not white
            yield from filter(None, [_bare(PLACES[last], to)])
    if last is not None and told.match(_ALL_BEHIND) is not None and (bare := _bare(PLACES[last], THE_TAIL)):
        yield bare
    if (found := told.match(_BARE_AT)) is not None:
        stretches = _PARTS.get(found["part"] or "") or _stretches_at(found["p"])
        if stretches:
            yield tuple(f"no red along the {STRETCHES[at]}" for at in stretches)
    if (found := told.match(_APART)) is not None:
        yield (str(found["c"]), f"gap {told.lengths[int(found['n'] or found['m'] or 0)]}")
    if (found := told.match(_GAP_AT)) is not None and 2 <= PLACES[int(found["p"] or 0)].first < END - 1:
        yield (*((found["c"],) if found["c"] else ()), _gap_at(PLACES[int(found["p"] or 0)]))


def _gap_at(place: Place) -> str:
    """The clause for where a gap lies."""
    where = "at the front" if place.first < 4 else "in the middle" if place.first < 6 else "at the rear"
    return f"white gap {where}"


_PARTS = {
    f"{name} {share}": stretches
    for share, named in (
        ("half", {"front": (2, 3, 4), "rear": (5, 6, 7)}),
        ("third", {"middle": (4, 5), "rear": (6, 7)}),
    )
    for part, stretches in named.items()
    for name in ((part, "back", "last") if part == "rear" else (part,))
}
"""The stretches that are surely within a part of the back."""


def _meant(told: Marked, red: bool, *forms: str) -> Iterator[dict[str, str | None]]:
    """What matches forms that are said of the red. red: whether the remark before speaks of it, so that this one need not."""
    for form in forms:
        found = told.match(form)
        if found is not None and (red or _names_red(found["s"])):
            yield found


def _of_red(told: Marked, red: bool, words: str) -> Iterator[Clauses]:
    if any(True for _ in _meant(told, red, _ONTO_TAIL)):
        yield ("red on the tail fin",)
    for found in _meant(told, red, _HEAD_RED):
        if _names_red(found["s"]):
            yield ("large patch on the head" if found["how"] not in {"half", "half of"} else "red on the head",)
    yield from filter(None, _of_its_ends(told, red))
    for found in _meant(told, red, _SHIFTED):
        if found["p"] is not None and PLACES[int(found["p"])].first == 2 and _is_first(found["s"] or ""):
            yield ("no red on the head",)
        yield ()
    for found in _meant(told, red, *_LIES):
        at = PLACES[int(found["p"] or 0)]
        subject = found["s"] or ""
        if ("first" in subject and at is HEAD) or ("@" in subject and "in the middle" in words):
            yield ()  # the first one lies on the head whatever it is, and the middle of a patch's place is its midline
        elif _names_red(found["s"]) or told.match(_LIES[1]) is not None:
            yield from filter(None, [_lying(at)])
    if (of := told.match(_RED_OF)) is not None:
        number = of["p"] or of["r"]
        yield () if number is None else _lying(PLACES[int(number)])
    parts = [form_of(_LISTED).fullmatch(part) for part in re.split(r" and (?=1 |another |a |then |@)", told.words)]
    if red and told.match(r"(?:(?:and |then )*@\d\d ?){2,}(?:too|again)?") is not None:
        yield tuple(clause for at in re.findall(r"@(\d\d)", told.words) for clause in _lying(PLACES[int(at)]))
    if (red or (len(parts) > 1 and _names_red(told.words))) and all(part is not None for part in parts):
        each = [_lying(PLACES[int(part["p"])]) for part in parts if part is not None]
        if all(each):
            yield tuple(clause for clauses in each for clause in clauses)


def _of_its_ends(told: Marked, red: bool) -> Iterator[Clauses]:
    for found in _meant(told, red, *_FROM_TO):
        end = None if found.get("q") is None else PLACES[int(found["q"] or 0)]
        off = "" if found.get("n") is None else told.lengths[int(found["n"] or 0)]
        yield _from_to(PLACES[int(found["p"] or 0)], end, off, told.words)
    for found in _meant(told, red, *_BEGUN):
        yield _begun(PLACES[int(found["p"] or 0)], found["s"] or "")
    for found in _meant(told, red, *_ENDED):
        if found.get("n") is not None:
            yield (_before_the_tail(told.lengths[int(found["n"] or 0)]),)
        elif found.get("q") is not None:
            yield _ended(PLACES[int(found["q"] or 0)], found["s"] or "")


def _names_red(subject: str | None) -> bool:
    """Whether a subject is of the red, and not only `1` or `first`."""
    return subject is not None and not _RED_WORDS.isdisjoint(subject.split())


def _is_first(subject: str) -> bool:
    """Whether no red lies in front of what a subject names."""
    return {"second", "third", "fourth", "last", "next", "other", "back", "rear", "tail", "patch"}.isdisjoint(
        subject.split()
    )


def _red_on(stretches: Sequence[int]) -> Clauses:
    return tuple("red on the head" if at == 1 else f"red along the {STRETCHES[at]}" for at in stretches if at != 0)


def _stretches_at(number: str | None) -> tuple[int, ...]:
    place = None if number is None else PLACES[int(number)]
    return () if place is None or place.first < 2 or place is THE_TAIL else (place.first,)


def _before_the_tail(length: str) -> str:
    """The clause for white before the tail. length: as it was said."""
    plain = re.sub(r"\b(?:a )*(?:good|full|bare|clear|scant|single|little) (?=\w)", "a ", length)
    plain = re.sub(
        r"^(?:about|roughly|around|just|only|some|nearly|almost) (?=(?:a|my|half a|\d) (?:finger|thumb))", "", plain
    )
    return f"{plain} of white before the tail"


def _bare_up_to(to: Place) -> Clauses:
    """White up to a place begins at the nose."""
    if to.white:
        return (to.white,)
    if to in {HEAD, STEM, THE_TAIL}:
        return ()
    return ("no red on the head", *(f"no red along the {STRETCHES[at]}" for at in range(2, to.bare_to + 1)))


def _bare(start: Place, to: Place) -> Clauses:
    if start.first < 2 and to.first < 2:
        return (to.white,) if to.white and start is not to else ()
    bare = tuple(
        f"no red along the {STRETCHES[at]}"
        for at in range(min(start.bare_from, 2 if start.first < 2 else END), to.bare_to + 1)
    )
    return ("no red on the head", *bare) if start.front and start.first == 0 else bare


def _from_to(start: Place, to: Place | None, off: str, words: str) -> Clauses:
    front = (start.front,) if start.front else ()
    if to is None:
        if start.first > 5:
            return ()
        return (*front, *_red_on(range(max(start.first, 1), 6)), _before_the_tail(off))
    if start.front and to.front:
        # `red on the nose right to the lip` may be blood.
        # Both on the head: red reaches the one that is further forward.
        return (min(start, to, key=PLACES.index).front,) if start is not HEAD is not to and "from" in words else ()
    if to.front:
        # Told from behind forwards: `from the shoulder to the nose`.
        return (to.front, *_red_on(range(1, start.last + 1)))
    if start.last > to.first:
        start, to = to, start
    return (*front, *_red_on(range(start.first, to.last + 1)))


def _begun(start: Place, subject: str) -> Clauses:
    if start is THE_TAIL:
        return ()
    if start.front:
        return (start.front,)
    headless = ("no red on the head",) if _is_first(subject) and start.first <= 4 else ()
    return (*headless, *_red_on([start.first]))


def _ended(to: Place, subject: str) -> Clauses:
    of_parts = [PLACES[int(at)].first for at in re.findall(r"@(\d\d)", subject)]
    if to is HEAD or any(2 <= to.first <= first for first in of_parts):
        return ()  # `shoulders red to the pecs` runs down, and not back
    return (to.front,) if to.front else _red_on([to.last])


def _lying(at: Place) -> Clauses:
    if at.first == 1:
        return ("red on the head",)
    return (at.front,) if at.first == 0 else _red_on([at.first])
