"""What stands behind a reading and leaves it as it is: `for a tosai`, `since spring`, `from the bag`, `across the lot`.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from koirules.notes.tree import words_of_line

_A = r"(?:(?:an?|the|this|that|its|her|his|my|such|so|only|just) )*"
_FISH = (
    r"(?:tosai|nisai|sansai|fish|koi|kohaku|baby|youngster|fry|male|female|boy|girl|thing|little 1|year old|yearling)"
)
_FOR = (
    rf"(?:for|at|in|considering|given) {_A}(?:(?:small|young|little|big|large|spring|summer|autumn|winter|late|early|jumbo|"
    rf"1|2|year|old|first|second|tiny|mere|pond|mud|cheap|dear|good|usual) )*"
    rf"(?:{_FISH}|age|size|stage|season|price|length|month|week|time of (?:the )?year)"
    rf"(?: (?:of|at|in) {_A}(?:age|size|year|length|{_FISH}))?|of (?:this|that|its|her|his) (?:age|size)"
)
_SINCE = (
    r"since (?:the )?(?:last |this )?(?:spring|summer|autumn|winter|month|week|year|time|look|sorting|senbetsu|move|"
    r"january|february|march|april|may|june|july|august|september|october|november|december)"
)
_CAUSE = (
    rf"(?:from|after|off|because of|due to|thanks to) {_A}(?:long |cold |short |first |last )?(?:mud|pond|bag|trip|net|"
    r"netting|travel|travelling|transport|move|moving|handling|stress|cold|winter|water|salt|heron|cat|bird|fight|stone|"
    r"rock|wall|lid|spawning|otter|catching|sorting|drive|journey|ride|van|feed|food|sun|algae)(?: (?:ride|pond|water|"
    r"bag|here|over|journey))?"
)
_LIGHT = (
    r"(?:even )?(?:under|in|by) (?:the |this |that |a |these )?(?:bad |good |strong |low |morning )?"
    r"(?:lamp|light|sun|sunlight|sunshine|shade|daylight|lamplight|shadow)"
)
_WEATHER = r"(?:even )?on (?:a|the) (?:grey|dull|dark|cloudy|rainy|bright|sunny) (?:day|morning)"
_SEEN = (
    r"(?:(?:that|which|and) )?(?:you|1|i|we) (?:can |could )?(?:see|notice|spot|tell) (?:it |that |her |him )?"
    r"(?:from (?:here|there|the door|over there|across the (?:yard|tub|room|pond)|a (?:mile|yard)(?: off| away)?)|a mile off|"
    r"at once|at a glance|straight away|right away)"
)
_LOT = (
    r"(?:on|across|over|throughout|with|in|all through) (?:all of (?:them|these)|(?:the|this) (?:whole |entire )?"
    r"(?:lot|batch|line)|all\Z|(?:most|nearly all|almost all|half) of (?:them|these|the lot)|nearly all|the board|every 1 of "
    r"(?:them|these))"
)
_WANTED = (
    r"(?:(?:that|which|as|the way|just as|just how|how|like) )?(?:you|i|we) (?:would |do |really |always )?"
    r"(?:want|like|wish|hope for|look for)(?: (?:it|them|to see|to be|for|to have))*"
)
_THIS = r"this (?:year|spring|summer|autumn|winter|time|morning|week|tub|lot|batch|1|early)"
_LIKE = (
    r"(?:like|as) (?:(?:an?|some|the|my|your|old|fresh|new|wet|dry|cheap) (?:(?!FISH)[a-z]+ ){0,3}(?!FISH)[a-z]+|"
    r"(?!FISH)[a-z]{3,})\Z"
).replace(
    "FISH",
    r"(?:it|them|this|that|these|those|other|rest|before|last|first|second|1|fish|mother|father|but|and|not|head)\b",
)
_JUDGED = (
    r"(?:going|judging|to judge|to go) (?:by|from|on) (?:the |her |his |its |that )?\w+(?: of (?:it|her|him|that|the \w+))?|"
    r"if you ask (?:the boss|him|her|my \w+|anyone|anybody|me)|which (?:some|most|many|few) (?:folk|people|buyers?|judges?|"
    r"of them)?"
    r" ?(?:can not stand|like|love|hate|dislike|do not (?:like|mind)|want|pay extra for|pay for|go for|prefer)"
)
_SHAPED = (
    r"(?:(?:sort of |a bit |just |almost )?(?:shaped|formed|cut) like|in (?:the )?(?:shape|form) of|(?:with )?the shape of)"
    r" (?:(?:an?|the|my|some) )?(?:(?!and|but|with)[a-z]+ ){0,2}[a-z]+\Z"
)
_SIZE_OF = r"(?:(?:about|roughly|some|nearly|almost|not) )?(?:the )?size of (?:an?|my|your|the) [a-z]+(?: [a-z]+)?\Z"
_ADJUNCT = re.compile(
    rf"(?:{_JUDGED}|{_SHAPED}|{_SIZE_OF}|{_FOR}|{_SINCE}|{_CAUSE}|{_LIGHT}|{_WEATHER}|{_SEEN}|{_LOT}|{_WANTED}|{_THIS}|"
    rf"{_LIKE})(?!\S)"
)
_OF_THE_LOT = re.compile(
    r"(?:all|most|nearly all|almost all|every 1|each) of (?:them|these|the lot|this lot|the batch|the tub)"
    r"(?: (?:have|has|are|is|with|show|got|look|come))*(?!\S)"
)
_EXCEPT = re.compile(
    r"(?:apart from|aside from|except(?:ing)?(?: for)?|but for|save(?: for)?|other than) "
    r"(?:[a-z0-9]+ ){0,4}(?:scale|step|patch|1|2|second|third|first|last|tail|tail end|shoulder|head|side|left|right|rear|back|"
    r"stem|edge|middle|dorsal|gill|end|front|nose|place|bit|spot|belly)\Z"
)
_BEGINS = words_of_line(
    "for at in considering given since from after off because due thanks under by that which and you 1 i we on across over "
    "throughout with all as the just how like this of going judging to if shaped formed cut sort a almost "
    "even size about roughly some nearly not"
)


def past_adjunct(tokens: Sequence[str], at: int) -> int:
    """The place behind such words that begin at a place; the place itself where none do."""
    if tokens[at] not in _BEGINS:
        return at
    found = _ADJUNCT.match(" ".join(tokens[at:]))
    return at if found is None else at + len(found.group().split())


def past_the_lot(tokens: Sequence[str]) -> int:
    """The place behind words at the start that say of how many fish or parts the rest is said: `most of them are | creamy`."""
    found = _OF_THE_LOT.match(" ".join(tokens))
    return 0 if found is None else len(found.group().split())


def is_exception(tokens: Sequence[str], at: int) -> bool:
    """Whether the rest says where what was said does not hold: `even | apart from the tail`."""
    return _EXCEPT.match(" ".join(tokens[at:])) is not None
