"""What is said of what will come of a fish, and not of what it is.

Common practice, no source; wordings from memory. A remark is a forecast only where its words say what becomes of something on
the fish: of "will", "next year" or "usually" alone nobody can tell whether they are not said of people, of the water or of the
sale.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from itertools import pairwise

from koirules.notes.hedges import ASIDES, without
from koirules.notes.tree import SKIPPED
from koirules.vocabulary.phrases import spread
from koirules.vocabulary.wordings import tokens_of


def _either(text: str) -> str:
    """A pattern of words as a regular expression; of goes and does the tokens have goe and doe."""
    return "(?:" + re.sub(r"\bgo\b", "goe?", re.sub(r"\((?!\?)", "(?:", text).replace(" ", r"\s")) + ")"


_MENDS = (
    "heal|mend|knit|ripen|improve|grow (back|out|in)|fill (in|out|up)|wash out|even out|colour up|catch up|come (good|right)|"
    "wear off|go away|grow (apart|together)|come back"
)
_CHANGES = (
    f"{_MENDS}|fade|deepen|thicken|settle|sharpen|tighten|brighten|shrink|disappear|vanish|clear|darken|lighten|pull back|"
    "break up|open up|close up|tidy up|clean up|firm up|dry up|get (better|worse|there)|come right|move up|"
    "peel off|rub off|die off|"
    "drop off|fall off|come (back|up|through|and go|later)|recover|"
    "shrink back|build|build up|lift|thin out|give way|soften|even up|colour in|grow in|whiten|redden|fill|heal up|weaken|"
    "strengthen|bleach|straighten"
)
_TURNS = (
    f"{_CHANGES}|close|spread|split( up|)|drop|go( away|)|come( in| on| out)|grow( together| into it| on)|break down|"
    "turn (out|into|white|black|red)|get (bigger|smaller)|move (back|on)|sink|rise|develop|come away|slip|change|look like|"
    "stay|stretch|last|hold|set|open|pull|tidy|throw|carry|live|snap|shut|match|balance|amount to|age|cover|"
    "cover over|even|firm|dull|mature|finish|"
    "come away|part|crack|tear|ripple|let go|peel|push (through|up)|creep (up|down|over|back|in)|work out"
)
_BECOMES = (
    f"{_TURNS}|grow|come|get|turn|move|look|break|wash|even|colour|catch|wear|firm|dry|clean|peel|rub|die|fall|cut|lose|"
    "become|reach|join|meet|melt|bulk|put on|lift|soften|harden|run|creep|fail|follow|leave|end|bleed|gain|flatten|smooth|"
    "straighten|blur|widen|lengthen|shorten|separate|merge|remain|weaken|strengthen|whiten|redden|swell|sag|appear|emerge|win|"
    "keep (it|her|his|the|on|\\w+ing)|gleam|shine|shine up|glow|show|suit|stand|please|balance|improve|impress|"
    "disappoint|line up|sit|"
    "reward|make (a|an|size|length|bulk|\\d+|nidan|sandan|yondan|good|fine)|take (a|2|3|4|5|some|time|year|long)|"
    "be (?!the (?:bag|light|lamp|net|trip|journey|water|stress|move)|"
    "cold|warm|hot|dark|late|lunch|tea|dinner|rain|sick of|sorry|glad|fun|back|there|all\\Z|it\\Z|me|you|my|fine\\Z|ok)\\w+"
)
"""What becomes of something on a fish, behind a word that says that it is still to come."""
_SOON = (
    "usually|often|mostly|alway|normally|generally|sometime|never|rarely|seldom|hardly ever|as a rule|more often than not|"
    "9 time out of 10|in time|with (age|time|growth|size|the water)|by (spring|summer|autumn|winter|nisai|sansai|then|itself)|"
    "at (2|3|4|5|nisai|sansai)|in (2|3|4|5|a few|a) (year|month|week|fortnight|season)|"
    "in (a|the) (fortnight|mud|pond|spring|summer|autumn|winter)|in (spring|summer|autumn|winter|mud)|"
    "next (year|spring|summer|autumn|season|month|week)|over (winter|summer)|after (a|the) (while|winter|summer)|in the end|"
    "one day|1 day|soon|once it (grow|settle)|when (grown|bigger|older|the water \\w+)|with (cooler|warmer|colder|softer|harder) "
    "water|when (it|she|he|they) (grow|get|settle|slow|fill)|as (it|she|he|they) (grow|age|stretch|mature|get|fill|put|lengthen)|"
    "(by|before|after|through) (the )?(next |this |second |third |first )?(nisai|sansai|yonsai|year|season|winter|"
    "spring|summer|autumn|month|"
    "june|july|august|september|october|november|december|january|february|march|april|may)"
)
_MEND, _CHANGE, _TURN, _BECOME, _WHEN = map(_either, (_MENDS, _CHANGES, _TURNS, _BECOMES, _SOON))

_PEOPLE = frozenset(
    tokens_of("""i we you who what how why where people somebody someone everybody everyone nobody anybody anyone boss wife
    husband customer buyer judge kid child children friend neighbour man men woman women folk am dealer shop price water pump net
    light sun rain weather tub bowl bucket van lid lamp camera""")
)
"""Of whom or what a forecast says nothing of a fish."""
_SALE = frozenset(tokens_of("price priced sell selling money buyer cheap cheaply auction offer discount"))
"""`priced right it'll go`: out of the door."""
_OVER = frozenset(
    tokens_of(
        "was were had sold bought spawned hatched came saw kept took used went turned been born moved ago yesterday"
    )
)
"""Words of what is over."""
_BETWEEN = (
    r"(?:(?:well|still|not|also|just|never|even|soon|probably|slowly|alway|yet|easily|perhap|all|only|really|ever)\s)*"
)
_OF_TODAY = r"(?:run|look|be|sit|lie|have|show)\b"
"""`patterns tend to run heavy` is said of what they are."""
_TO_COME = re.compile(
    rf"(?:(?<!\w)(?P<who>\w+)\s)?{_BETWEEN}(?:will|may|might|shall|(?:going|tend(?!\sto\s{_OF_TODAY})|"
    rf"expected)\sto)\s{_BETWEEN}{_BECOME}(?!\w)"
)
_END = rf"(?:\s(?:a\sbit|again|too|yet|though|i\sthink|you\sknow|by\sitself|fine|well|nicely|with\s\w+|or\snot|{_WHEN}))*\Z"
_CAN_CHANGE = re.compile(
    rf"(?:(?<!\w)(?P<who>\w+)\s)?(?:can|could|should)\s{_BETWEEN}"
    rf"(?:{_CHANGE}|(?:split|spread|develop|follow|close|hold|change|drop|sink|grow|fill){_END}|goe?\sto\s\d+)(?!\w)"
)
_OF_IT = (
    r"(?:that|it|they|those|these|this|she|he)(?:\sis)?"
    r"(?:\s(?:the|a)\s(?:1|one|sort|kind|type|red|white|black|fish)\s(?:that|which|to))?\s(?:can\s|do\s|doe\s|"
    r"just\s|all\s|also\s)*"
)
_OR_NOT = (
    r"(?:\s(?:fine|well|nicely|quick|quickly|slow|slowly|again|too|you\sknow|by\sitself|and\sstay|or\sit\sdoe\snot|"
    rf"or\sdoe\snot|or\sthey\sdo\snot|or\snot|in\smost\sof\sthem|(?:on|in)\s(?:the\s)?\w+|{_WHEN}))*\Z"
)
_AND_IT_CHANGES = re.compile(rf"\sand\s(?:it|that|they)\s{_CHANGE}\Z")
_IT_CHANGES = re.compile(rf"(?:{_OF_IT}(?:{_WHEN}\s)?{_CHANGE}|{_MEND}){_OR_NOT}")
_TURNS_ALONE = _TURN.replace("goe?(?:\\saway|)", rf"goe?(?:(?=\Z|\s{_WHEN})|\s(?:away|over|deep))")
_USUALLY = re.compile(rf"(?:(?:that|it|they|those|these|this|she|he)\s(?:\w+\s){{0,8}}?)?{_TURNS_ALONE}(?!\w)")
_IN_TIME = re.compile(rf"(?<!\w){_WHEN}(?!\w)")
_MOSTLY = re.compile(
    r"(?:(?:it|that|they|this|those|these)\s)?(?:mostly|usually|often|normally)\s(?:that\s|it\s|they\s)?"
    rf"(?:goe?|clear|close|heal|fade|drop|{_CHANGE})\Z"
)
_ALSO_NOT = re.compile(rf"{_TURN}\s(?:\w+\s)?or\s(?:it|they|that)?\s?(?:doe|do)\snot\Z")
_SHOULD_COME = re.compile(r"should\s(?:still\s|well\s)?come(?:\s(?:on|along|good|in|right|i think|i would say))?\Z")
_LATER = re.compile(
    rf"(?:(?<!\w)(?P<who>\w+)\s)?(?:{_TURNS_ALONE}|come|grow)\s(?:\w+\s){{0,3}}?(?:later|tomorrow|eventually|someday)(?!\w)|"
    r"^later\s(?:\w{3,}er|better|worse)\Z|(?:\w{3,}er|better|worse)\slater\Z|(?:winner|champion)\s(?:tomorrow|later)\Z"
)
_WHEN_GROWN = re.compile(
    r"(?<!\w)when\s(?:(?:it|she|he|they)\s(?:is|are)\s|it\s)?(?:big|grown|full\sgrown|grown\sup|bigger|older|[3-9]0)\Z"
)
_STILL_COMING = re.compile(r"(?:(?P<who>\w+)\s)?(?:is\s|are\s)?still\scoming(?:\son|\sin|\sup|\sthough)*\Z")
_STEPS = r"(?:ippon|nidan|sandan|yondan|(?:2|3|4)(?:\sor\s(?:3|4))?\s?(?:step|stepper|patch)?)"
_FISH_TO_BE = (
    r"(?:show\sfish|mother\sfish|brood\sfish|oya|parent|jumbo|monster|giant|champion|winner|stunner|beauty|star|"
    r"(?:great|big|good|proper|lovely|fine|"
    r"real|special|different|"
    r"serious|top|huge|stunning|brilliant|decent)\s(?:\w+\s)?(?:fish|1|koi|female|girl|lady|show\sfish|thing|sandan|"
    r"nidan|kohaku))"
)
_MORE = re.compile(
    rf"""
        (?:might|may|could|might\sdo|may\sdo|could\sdo|might\syet|may\syet|could\syet)(?:\snot)?(?:\syet|\stoo|\s{_WHEN})?|
        (?:(?:\w+\s){{0,3}}?(?P<who>\w+)\s)?(?:will|might|may)\snot(?:\sthough|\si\s\w+|\sever|\s{_WHEN})?|
        (?:(?:{_OF_IT}))?never\s(?:seem\sto\s|really\s|quite\s|will\s|ever\s)*{_TURN}(?:\s.*)?|
        too\s\w+\sto\s(?:ever\s)?{_TURN}(?:\s.*)?|
        (?:(?:\w+\s){{0,2}}(?P<who2>\w+)\s)?(?:that|which|of\sthe\s(?:sort|kind)\sthat)\s(?:usually\s|often\s|alway\s|do\s
        )?{_CHANGE}|
        (?:can\sbe|that\sis|this\sis|it\sis|1\sof)\s(?:the|a)\s(?:sort|kind|type)\s(?:that|which|to)\s{_TURN}.*|
        (?:it|she|he|that|this)?\s?(?:want|need)\s(?:more\s|some\s)?(?:size|length|bulk|growth|growing|a\s(?:big|bigger|
        longer|larger)\s
        (?:body|frame))\s(?:to|for)\s(?:carry|balance|stretch|fill|hold|suit|open|show|make).*|
        (?:i\s)?(?:want|like|love)\sto\ssee\s(?:it|her|him|this\s1|that|what)\s(?:at|when|in|become|turn\sinto|does)\s.+|
        then\s(?:a\s|it\sis\s(?:a\s)?|you\shave\s(?:a\s)?)?{_STEPS}|(?:left\swith|leave|leaving|end\sup\swith|end\sup)\s(?:a\s
        )?(?:good\s|nice\s|clean\s)?
        {_STEPS}|if\s(?:it|that|the\s\w+|they)\s(?:\w+\s)?(?:opened|closed|broke|split|cleared|faded|went|filled|healed|grew|
        came|
        open|close|break|clear|fade|goe?|fill|heal|grow|come|hold|held|stay|stayed)(?:\s\w+){{0,2}}\s(?:you|it|she|he|we|
        then)\s(?:would|will|have|get|is|are)\s.*|
        (?:\d+|a\sfew|a\scouple\sof)\s(?:more\s)?(?:year|summer|season|winter)\s(?:in|left\sin|work\sin)\s(?:it|that|this|her|
        him|that\s1|this\s1)|
        (?:a\s|quite\sa\s|another\s|there\sis\sa\s)?(?:late\sbloomer|sleeper|dark\shorse|slow\sburner|slow\sstarter|work\sin\s
        progress|
        project|{_FISH_TO_BE}\s(?:in\sthe\smaking|to\sbe|to\scome|there|1\sday|in\s(?:it|her|him|there|time)))|(?:the\s
        making\sof|
        material\sfor|future)\s(?:a\s)?{_FISH_TO_BE}|(?:could|should)\s(?:well\s|yet\s|still\s)?(?:make|become|turn\sinto)\s.+|
        (?:(?:a|quite\sa)\s)?(?:different|another|new)\sfish\s(?:{_WHEN}|later).*|you\swill\snot\s(?:know|recognise|
        recognize)\s(?:it|her|him)\s.*|
        (?:(?:there\sis|plenty|lot|a\slot|much|lots)\s)*(?:more|length|size|colour|body|bulk|red|thickness|depth|width|
        shoulder|volume)\s(?:still\s|yet\s)?(?:to\scome|coming)
        (?:\syet|\sfrom\s\w+)?|(?:still|yet|all)\sto\scome|(?:(?:it|she|he)\s(?:is\s)?)?(?:will\s)?only\sget\s(?:better|
        worse)(?:\s.*)?|
        (?:it\sis\s|all\s|that\sis\s)*downhill\s(?:from\shere|for\s(?:that|the)\s\w+)(?:\si\s\w+(?:\s\w+)?)?|
        (?:\w+\s){{0,3}}?(?:will|might|may)\snot\sbe\s(?:there|here|left|around)\s(?:at|by|in|next|come|after)\s.*|(?:it\s|
        she\s|he\s)?(?:is\s)?(?:not\s)?(?:finished\s)?(?:growing|
        developing|colouring)\syet|
        (?:i\s)?(?:would\s|will\s)?(?:do\s)?not\s(?:hold\s(?:my|your)\sbreath|(?:bet|bank|count)\son\s(?:it|that))(?:\s.*)?|
        time\swill\stell|
        (?:i\s)?can\snot\ssee\s(?:it|that|how|where|them|her|him)\s.*(?<!\w){_TURN}(?:\s.*)?|(?:grow|come|closing|filling|
        fill)\s(?:in|into\sit|up\s(?:from|through)\s\w+)(?:\s(?:
        white|red|clean|again|maybe|perhaps|i\sthink|or|with|but|who|time|in|slowly|later)(?:\s.*)?)?|
        (?:the\s|that\s|this\s|its\s|her\s|his\s)?(?:\w+\s)?(?P<who3>\w+)\s(?:{_TURN}|come|colour|ripen)\s(?:last|first|late|
        slowly|eventually|early)(?:\sin\s(?:this|that|the)\s(?:line|family|blood))?|
        (?:\w+\s){{1,2}}(?:come|improve|settle|grow)\swith\s(?:age|time|size|growth|the\syears?)|
        (?:\w+\s)?(?P<who5>\w+)\s{_CHANGE}\s(?:every\stime|in\s(?:this|that)\sline|nine\stimes|as\sa\srule|in\smost\sof\s
        them)(?:\s.*)?|
        (?:there\s(?:is|will\sbe)\s)?nothing\s(?:will\sbe\s)?left(?:\sof\s(?:it|that|them))?(?:\s.*)?|(?:there\sis\s)?no\s
        (?:more\s)?growth\s(?:left|in\s(?:it|her|him))(?:\sin\s(?:it|her|him))?|
        when\s(?:that|the)\s\w+\sgoe?(?:\saway)?|
        (?:pattern|red|beni|hi|colour|kiwa|white)?\s?(?:is\s)?unstable(?:\s(?:red|beni|hi|pattern|colour))?|
        (?:it\sis\s|is\s)?on\s(?:the|its|her|his)\sway\s(?:up|out|down|back|in)|(?!(?:.*\s)?(?:to|i|we|you)\s)(?:(?:the|that|
        this|its|her)\s)?
        (?:\w+\s){{0,3}}(?P<who4>\w+)\s{_TURN}\s
        (?:\w+\s){{0,2}}?{_WHEN}(?:\s.*)?
    """,
    re.VERBOSE,
)
"""Of what will come, in sentences of their own: `might not`, `too big to close`, `beni gives way by nisai`."""
_TO_BE = re.compile(
    rf"(?:(?:it|she|he|this 1|that 1|that|this|which) )?(?:could|might|may|should|will) (?:well |yet |still |easily |1 day )*"
    rf"(?:be|make|become|turn into) (?:something|anything|special|(?:quite )?(?:a|an) {_FISH_TO_BE})"
    rf"(?: (?:special|else|yet|too|later|1 day|if .*|{_WHEN}(?: .*)?|with .*|though|i \w+))*"
)
_AT_REST = re.compile(r"\bnot (?:sit|keep|stay|hold|stand|lie) still\b")
_PICTURED = re.compile(
    r"(?:i |you |1 )?(?:can|could|can not|could not|do not|did not) (?:well |easily |just |really |quite )*(?:see|"
    r"imagine|picture) (?:that|it|this|her|him|them|"
    r"those|these|the \w+|that \w+)(?: \w+)? (?:ever )?(?!being\b|having\b|looking\b|paying\b|buying\b)\w{3,}ing(?: "
    r"(?:up|out|in|off|away|on|back|down|together))?(?: .*)?"
)
"""`I could see that tightening up`."""
_LET_IT = re.compile(
    rf"(?:let us |we will |i will |i want to |i would like to )(?:just )?(?:see|watch) (?:it|her|him|this|that|them|the "
    rf"\w+) (?:{_BECOME}|fatten|plump|bulk|thicken|\w+ (?:up|out|in)\b)(?: .*)?"
)
_THEY_DO = re.compile(
    r"(?:they|those|these|that sort|that kind|this sort) (?:do|usually|often|alway|mostly|all|never|rarely|tend to|"
    r"can)(?: do)? (?:go|goe|turn|get|come|close|fill|fade|"
    r"break|split|clear|lose|settle|heal|grow)\b(?!.*\b(?:mad|crazy|for it|for that|down well|when|if)\b).*"
)
_USUALLY_NOT = re.compile(
    r"(?:(?:it|that|they|this) )?(?:usually|mostly|normally|often|generally|rarely|hardly ever) (?:do|doe|will|would)(?: not)?"
)
_IS_YOUNG = re.compile(
    r"(?:(?:it|she|he|this|that|they) (?:is|are) )?(?:still |only |just |but |very |so )*(?:a baby|young yet|early day|"
    r"early yet|young still|still young|a youngster|only young|"
    r"too young to (?:say|tell|judge|know))(?: yet| still| though)?"
)
_BY_THEN = re.compile(
    r"(?:(?!\d+ cm)\w+ ){1,4}(?:by (?:next )?(?:spring|summer|autumn|winter|nisai|year)|in (?:a|1|2|3|another) year|by "
    r"this time next year|next (?:year|spring|summer|autumn))"
)
_DECIDES = frozenset(
    tokens_of(
        "again at see check try back keep hold sell decide come bring put take wait show want need call hope give leave ask pond "
        "grow judge"
    )
)
"""With these words the time is that of somebody who decides: `look again in a year`."""
_GONE = re.compile(rf"(?:is\s|are\s|be\s)?(?:gone|better|ready|clear|closed|lost)\s{_WHEN}\Z")
_LEADS = re.compile(
    r"(?:(?:they say|he say|she say|the boss say|i am told|so they say|and|but|then again|then|well|oh|though|either|or|so|also|"
    r"whether|hopefully|with (?:any |some |a bit of )?luck|i hope|finger crossed|touch wood|give it time and)\s)+"
)
_WHOLE = tuple(
    spread(
        """
            give it (a year|time)( to settle|), needs (more |some |a bit more |)time,
            needs (a|another) (year|season|summer|winter),
            (a lot of |lots of |some |shows |full of |with |)promise, tateshita, going nowhere,
            (tight|sharp|tight and|finished and) going nowhere,
            one for the future, one for the shows, (a |)(long term|long time) (fish|project), (an |)easy sale,
            (a |)late (type|developer|starter|finisher|grower), (kiwa|edge|edges|beni|red|white|body) late
            (type|developer), (means |)slow growth,
            usually means slow growth, there is your jumbo, future jumbo,
            (becomes|become|becoming) (a |)(monster|giant|jumbo), (that |it |)comes with (age|time|size|growth|the years),
            (this|that) one grows, hardly ever catch up, they hardly ever catch up, keep it heals,
            (gone|finished|over|clears) by (spring|summer|autumn|winter|two|three|four)( years|), stays small,
            leaves (ippon|nidan|sandan|yondan), comes and goes( with the (water|food|season|weather)|),
            wait till (it|she|he) grows,
            (no|some|real|good|great|big|plenty of|lots of|a lot of|has|has got|shows|with|full of|)(a |) (future|potential),
            room to grow( in (it|her|him)|), not finished growing, (could be |might be |)(the |)best it will get
        """
    )
)
_EXACT = frozenset(
    spread(
        """
            it is a (proper|real|true|good|fine) (nidan|sandan|yondan|(two|three|four)( step|-step| stepper)),
            (that is |it is |)only youth, (it is |)too early (that|to say|to tell), (that is |)the best (you|you will) get
        """
    )
)
_ANYWHERE = tuple(
    spread(
        """
            what you see is what you get, what you see is the best (you will|it will) get, as good as (it|she|he) gets,
            as good as (it|she|he) ever gets, never (turns|becomes) (to|into), all (its|her|his) life,
            never seen (that|it|one|those) (fill|close|heal|go)( away|),
            seen (it|them|that|those) (vanish|disappear|go|clear|mend|come back), going nowhere
        """
    )
)


def _bare(tokens: Iterable[str]) -> tuple[str, ...]:
    return tuple(token for token in tokens if token not in SKIPPED)


_BARE_WHOLE = frozenset(
    words
    for words in map(_bare, _WHOLE)
    if len(words) > 1 or words in {("tateshita",), ("promise",), ("future",), ("potential",)}
)


def _found(pattern: re.Pattern[str], text: str) -> bool:
    """Whether what a pattern says is in a text, and not said of people or of things at the tub."""
    return any(found["who"] not in _PEOPLE for found in pattern.finditer(text))


def may_become(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says what a fish may be one day: `could be anything in two years`."""
    return _TO_BE.fullmatch(" ".join(without(tokens, ASIDES)[0])) is not None


def is_forecast(tokens: tuple[str, ...]) -> bool:
    """Whether a remark is about what will come of a fish, and not about what it is."""
    tokens = without(tokens, ASIDES)[0]
    text = _LEADS.sub("", " ".join(tokens), count=1) if _LEADS.match(" ".join(tokens)) else " ".join(tokens)
    if _TO_BE.fullmatch(text):
        return True
    if _AT_REST.search(text):
        return False
    if any(each.fullmatch(text) for each in (_PICTURED, _LET_IT, _THEY_DO, _USUALLY_NOT, _IS_YOUNG)):
        return True
    if (
        _BY_THEN.fullmatch(text)
        and _PEOPLE.isdisjoint(tokens)
        and _SALE.isdisjoint(tokens)
        and _DECIDES.isdisjoint(tokens)
    ):
        return _OVER.isdisjoint(tokens)
    grown = _WHEN_GROWN.search(text) is not None and _OVER.isdisjoint(tokens)
    if not grown and any(first in {"could", "should", "can"} and second == "be" for first, second in pairwise(tokens)):
        return False  # `could be sharper` is said of today
    if grown or (_found(_TO_COME, text) and _SALE.isdisjoint(tokens)):
        return True
    if any(tokens[i : i + len(words)] == words for words in _ANYWHERE for i in range(len(tokens))):
        return True
    if tuple(text.split()) in _EXACT or (_PEOPLE.isdisjoint(tokens) and _bare(text.split()) in _BARE_WHOLE):
        return True
    if not _OVER.isdisjoint(tokens):
        return False
    if _found(_CAN_CHANGE, text) or _found(_LATER, text) or _found(_STILL_COMING, text):
        return True
    if any(pattern.match(text) for pattern in (_IT_CHANGES, _MOSTLY, _GONE)):
        return True
    if (more := _MORE.fullmatch(text)) is not None and _PEOPLE.isdisjoint(more.groupdict().values()):
        return True
    if _AND_IT_CHANGES.search(text) or _SHOULD_COME.search(text) or _ALSO_NOT.search(text):
        return True
    return _USUALLY.match(text) is not None and _IN_TIME.search(text) is not None
