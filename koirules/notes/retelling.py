"""Whole sentences told again in fewer words: `a bit of red has crept into the tail fin` as `red in the tail fin`.

Whole sentences say where red went and what has it; notes name the red and the place alone. A sentence is told again only where
nothing else reads it. Its numbers, hedges and denials are kept.

Common English usage, no source.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

_RED = r"(?:red|hi|beni|colour)"
_SIDE = r"(?:left|right|both|1|top|back|front|upper|lower)"
_PAIRED = r"(?:gill (?:plate|cover)|cheek|pectoral fin|pectoral|pec fin|pec|pelvic fin|pelvic|ventral fin|ventral|eye)"
_FIN = (
    r"(?:(?:left |right |both )?(?:pectoral|pec|pelvic|ventral|anal|dorsal|tail)(?: fin)?|(?:top|back) fin|nose|snout|lip|"
    r"(?:left |right |both )?(?:cheek|gill plate|gill cover|eye))"
)
_INTO = (
    rf"(?:(?:the|its|her|his) )?(?:{_SIDE} )?{_PAIRED}|(?:the|its|her|his) (?:tail|anal|dorsal|top|back) fin|"
    r"(?:the|its|her|his) dorsal"
)
_STEP = r"(?:step|patch|dan|field|block|red|saddle|plate|marking|1)"
_ORDINAL = r"(?:first|second|third|fourth|fifth|last|next|front|rear|middle|shoulder|1|2|3|4)"
_NOT = r"(?!(?:not|no|never|nearly|almost|hardly|barely)\b)"

_RETOLD = tuple(
    (re.compile(form), told)
    for form, told in (
        # Where red went is where it is.
        (
            (
                rf"\b({_RED}) (?:has |have |is |that has )?(?:just |also |even |now "
                rf")?(?:crept|strayed|wandered|spilled|spilt|leaked|"
                rf"leaking|creeping|spilling|straying|bled|slipped|slopped|found its way|made its way|worked its "
                rf"way|got|gotten) "
                rf"(?:up |down |out |over |back )?(?:into|onto|in|on|over) ({_INTO})(?!\S)"
            ),
            r"\1 on \2",
        ),
        # What has red in it.
        (
            (
                rf"^(?:the |and |but )*({_FIN}) (?:has|have|has got|have got|ha|with|show|shows) ((?:[a-z]+ ){{0,4}}{_RED}) "
                rf"(?:in|on|to|"
                r"running through|through) (?:it|them)(?!\S)"
            ),
            r"\2 on the \1",
        ),
        # Where red does not go, none is.
        (
            (
                rf"\b{_RED} (?:do|doe|did|has|have|is) not "
                rf"(?:come|reach|go|run|get|got|gone|touch|stray|spill|creep|crept|strayed|carry|"
                rf"run|extend|stretch) ?(?:down |up |out |over |round )?(?:as far as |into |onto |in |on |over |to )?"
                rf"(?=(?:(?:the|its|her|his|either) )?(?:{_FIN}|fin|eye)(?!\S))(?!(?:(?:the|its|her|his) )?tail(?! fin))"
            ),
            r"no red on ",
        ),
        # What came up somewhere is there; who found it there saw it.
        (
            (
                r"\b(shimi|speck|spot|dot|mark|window|hole|splash|crumb|scale|pepper|hi|red) (?:that |which )?(?:has |have "
                r"|just |also )*(?:come "
                r"up|appeared|turned up|shown up|popped up|cropped up|sprung up) "
                r"(?=(?:on|in|at|by|near|behind|under|beside|next to) )"
            ),
            r"\1 ",
        ),
        (
            (
                r"^(?:and |but |so )*(?:i |we )?(?:have |just |also )*(?:found|spotted|measured|picked out|made out) "
                r"(?=\S+ \S)"
            ),
            r"",
        ),
        (
            (
                r" (?:all )?(?:by itself|on its own|by themselves|on their own|all alone|on it own)(?= "
                r"(?:on|in|at|by|near|behind) )"
            ),
            r"",
        ),
        (r" that (?:i|we|you) (?:can|could) (?:find|see|make out|spot)(?: at all| anywhere)?", r""),
        (
            (
                r" (?:and|but|though) (?:i|we) (?:have )?(?:look|looked|checked|searched|turned it over|been over it|went "
                r"over it)"
                r"(?: (?:twice|everywhere|hard|all over|properly|carefully|well|at both sides|3 time|2 time|close|closely))?$"
            ),
            r"",
        ),
        # One more of what was told is one more place of it.
        (
            (
                rf"\b((?:a |1 )?(?:red )?{_STEP}(?: of red)? (?:on|at|by|over|behind|near) .+?) (?:and|then) (?:another|1 "
                rf"more|a second|a third|"
                rf"a further|1)(?: 1| {_STEP})? (?=(?:on|at|by|over|behind|near|in) )"
            ),
            r"\1 and ",
        ),
        # A side before what is there.
        (r"\b(left|right) hand side\b", r"\1 side"),
        (
            (
                r"^(?:and |but )*(on|at|down|over) (?:the |her |his |its )(left|right)(?: side| flank)? (?:the |there is "
                r")?(hi .+|red .+)$"
            ),
            r"\3 on the \2",
        ),
        (
            (
                r"^compared (?:with|to) the (\w+(?: \w+)?) (?:the |its )(\w+) (?:is|look|are) (?:(?:a lot|much|rather|a "
                r"bit|far|quite a bit) )?"
                r"(\w+er)$"
            ),
            r"\2 \3 than the \1",
        ),
        # What somebody adds about it.
        (
            (
                r" (?:and|but|so|though|which) (?:that|it|this|which) (?:is|might be|could be) (?:just |only |always |really "
                r"|rather |a bit of )*(?:a |an )?"
                r"(?:worry|shame|pity|problem|nuisance|bother|bonus|plus|relief|concern|snag|"
                r"disappointment|(?:good|bad|great|nice) (?:sign|thing|start))$"
            ),
            r"",
        ),
        (
            (
                r" (?:and|but|though|although|because|as) (?:it|she|he|this|the fish|they) (?:is|are) (?:still |only |just "
                r"|very |so )*(?:young|small|a baby|"
                r"growing|a tosai|a youngster|early days|early yet)(?: yet| still)?$"
            ),
            r"",
        ),
        (
            (
                r" (?:and|but|though) (?:even so |all the same |still )?(?:it|that|she|he) will (?:be|come|do) (?:just "
                r")?(?:fine|all right|ok|okay|good|right|nice)?"
                r"(?: in time| later| one day)?$"
            ),
            r"",
        ),
        (
            (
                r"\b(?:gap|white|break|space) of ((?:(?:about|nearly|over|almost|around|just under|just over) )?[0-9.]+ "
                r"(?:cm|mm)) (?:wide |long )?between "
                r"(?:the )?(?:them|2|step|patch|red|first 2|last 2)$"
            ),
            r"gap between the patch \1",
        ),
        (
            (
                r" which (?:is|are) (?:just |about |exactly |quite |all )?(?:right|perfect|fine|good|nice|plenty|enough|as it "
                r"should be|"
                r"how i like it|what i like)$"
            ),
            r"",
        ),
        (
            (
                r" which (?:i|we|you|not everybody|some people|my boss) (?:happen to |do |really |always |would "
                r")?(?:like|love|hate|prefer|want|dislike)$"
            ),
            r"",
        ),
        (
            (
                r" (?:when|if|once) you (?:hold|lift|turn|tilt|see|get|have) (?:it|her|him) (?:up |over |out "
                r")?(?:to|in|into|under|against) the "
                r"(?:light|sun|lamp|bowl|net|hand)$"
            ),
            r"",
        ),
        (r" with the (?:cold |warm |new |bad |late )?(?:water|winter|weather|food|feed|move|trip|salt|cold)$", r""),
        (
            (
                rf" if you count (?:the|that) (?:\w+ ){{0,2}}(?:{_STEP}|bit|spot|dot|crumb|scrap)(?: (?:by|at|near|on|behind) "
                rf"the \w+)?$"
            ),
            r"",
        ),
        # What is to be written down, and what something is not called.
        (
            (
                r"^(?:so |and |now |just )*(?:(?:put|mark|book|enter|write) (?:it|her|him|this 1|that)(?: down)? as|put "
                r"down|write down|note down|"
                r"jot down|mark down) (?:an? )?(?=\w)"
            ),
            r"",
        ),
        (
            (
                r"^(?:but |and )?(?:you|i|1|nobody) (?:can not|could not|would not) (?:really |ever )?call "
                r"(?:that|it|this|her|him) (?:an? )?"
            ),
            r"not ",
        ),
        (r"^(?:and |but |so )*(?:you|we) get (?=about |half |nearly |some |just |only |roughly )", r""),
        (
            (
                r"^i would have (?:like|liked|loved|preferred|wanted)(?: to (?:see|have))? (?=more|a bit more|a little more|some "
                r"more)"
            ),
            r"could do with ",
        ),
        # A patch by where it lies; red that is little.
        (r"\b(?:1|patch|piece|bit|spot) on (?:the |its |her |his )?head (?=is |look |has )", r"head patch "),
        (
            (
                rf"^(?:and |but )*what little {_RED} (?:there is|it has|she has|he has) |^(?:and |but )*what {_RED} (?:there "
                rf"is|it has|she has|he has) "
            ),
            r"red ",
        ),
        (
            rf"\b(white|gap|space|break|distance) between (?:the )?(?:first|last|front|rear|other) 2(?: {_STEP})?(?!\S)",
            r"\1 between the step",
        ),
        # Who wavers between two counts.
        (
            (
                r"^i can not (?:make up my mind|decide|make out|work out|settle)(?: on| about)? (?:whether|if) "
                r"(?:(?:that|it|this|she|he) is |"
                rf"they are |there are |to (?:call|count) it )?(?:a )?(?=[1-5] {_STEP} or [1-5](?: {_STEP})?$)"
            ),
            r"maybe ",
        ),
        # A side told behind what has two of them.
        (
            (
                rf"\b(on|in|over|of) (?:the |its |her |his )?({_PAIRED}) (?:(?:down |over )?on (?:the |its |her |his "
                rf")?)(left|right)"
                r"(?: side| hand side)?(?!\S)"
            ),
            r"\1 the \3 \2",
        ),
        # Two steps that follow each other are steps.
        (
            (
                rf"\b(white|gap|space|break|distance|room|strip|cut|stretch) (?:at all |there is |there |we have )?between "
                rf"(?:the )?{_ORDINAL} "
                rf"(?:red )?(?:{_STEP} )?and (?:the )?{_ORDINAL}(?: {_STEP})?(?!\S)"
            ),
            r"\1 between the step",
        ),
        (
            (
                rf"\b(white|gap|space|break|distance|room|strip|cut|stretch) between (?:the )?{_STEP} {_ORDINAL} and "
                rf"{_ORDINAL}(?!\S)"
            ),
            r"\1 between the step",
        ),
        (r"(?<!half )(?<!\d )\b(?:a|one) (cm|mm)(?!\S)", r"1 \1"),
        # Who would have kept it but for one thing, does not.
        (
            (
                r"^(?:if (?:it|this|that) (?:was|were|is) not for|but for|were it not for|without) (?!the fact )(.+?)(?: "
                r"then)? (?:i|we) would "
                r"(?:have )?(?:keep|kept|take|taken|hold|held|put|bought|buy) (?:it|her|him|this 1|that 1)(?: in)?$"
            ),
            r"\1 so out",
        ),
        # What somebody likes or dislikes, and of which fish.
        (
            (
                r"^(?:and |but |so )*(?:what|the thing|1 thing|the 1 thing|the only thing|all) (?:that )?(?:i|we) (?:do |do "
                r"not |really |always )?"
                r"(?:like|love|notice|dislike|hate|mind|miss|regret|see) (?:about|with|in|on|of) "
                r"(?:it|her|him|this|that|(?:this|that) (?:1|fish|girl|boy)) (?:is|was) (?:that )?"
            ),
            r"",
        ),
        (
            (
                r"^(?:and |but |so )*(?:what|the thing that|1 thing that|the only thing that) "
                r"(?:bother|trouble|annoy|worry|worrie|please|strike|spoil|hurt|sell|make|save|kill|ruin|let down|put me "
                r"off|catches|get)s? "
                r"(?:me|it|her|him|you|us)?(?: (?:about|with|in|on) (?:it|her|him|this|that|(?:this|that) (?:1|fish)))? "
                r"(?:is|was) (?:that )?"
            ),
            r"",
        ),
        (
            r" (?:if|when) you (?:look|see it|see her|look at it|look at her|look down) (?:from|on) (?:above|top|the top)$",
            r"",
        ),
    )
)
"""What is said at length, and what it comes to; over the tokens of a remark with one space between them."""


def retold(tokens: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    """The tokens of a remark in fewer words; none where it cannot be told otherwise."""
    said = text = " ".join(tokens)
    for form, told in _RETOLD:
        text = form.sub(told, text)
    if text != said:
        yield tuple(text.split())
