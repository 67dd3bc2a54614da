"""Verdicts by their form: where a fish is put, what is done with it, who has decided, and what stands round a verdict.

Common practice, no source; wordings from memory. Words stand as notes are compared: without the `s` of a plural.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache

SOLD = "sold"
"""What becomes of a fish that leaves for money, before it is known how the page calls that."""

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
_INTO = (
    r"(?:pile|row|ring|rack|pen|tray|stall|table|list|team|tub|box|tank|bin|basin|bowl|vat|bucket|pond|shelf|crate|"
    r"heap|bag|bath|system|stack|group)"
)
_AMONG = r"(?:1|one|fish|lot|bunch|other)"
_KEPT = r"(?:keep|keeper|kept|keeping|stay|yes|top|best|good|grow\son|growing\son|grow\sout|growing|tategoi|show|select|selected)"
_LEFT = r"""
    (?:out|cull|reject|bad|go|going|goodbye|discard|waste|throw\sout|give\saway|rubbish|
    no(?=\s(?:pile|tub|box|bin|basin|bowl|vat)))
"""
SALE = re.compile(
    r"(?!not\s|my\s|own\s|no\s)(?:\w+\s)*(?:sell|sold|sale|shop|trade|dealer|market|auction|pond|garden|hobby|pet)(?:\s\w+)*"
)
"""What a page calls a grade of fish that are sold."""
_SOLD = r"""
    (?:sale|selling|sell|for\ssale|shop|cheap|cheaper|bargain|budget|mixed|10\sfor|5\sfor|dealer|pet|garden|auction|trade|
    market|
    pond(?=\s(?:tub|box|bin|crate|pile|fish|lot|1))|patio|hobby|hobbyist|customer|order|export|novelty|raffle|discount|oddment|
    middle\sprice|low\sprice|sold|ready\sto\sgo)
"""
_OPEN = r"""
    (?:maybe|perhap|hospital|isolation|quarantine|
    second(?=\s(?:tub|tank|vat|basin|bowl|bucket|bin|ring|team|pile|box|group|lot))|waiting|unsure|not\ssure|undecided|doubtful|
    holding|question|question\smark|treatment|sick|look\sagain|second\slook|thinking|in\sbetween|boss)
"""
_PLACES = {
    verdict: rf"""
        {_PUT}{which}\s{_INTO}(?:\s(?:please|then|for\snow|first|again|with\s(?:it|her|him)))* |
        (?:(?:put|goe|go|stay|belong)\s(?:{_FISH}\s)?)?(?:in\s)?(?:with|among)\sthe\s(?:{which}\s{_AMONG}|{plural})
    """
    for verdict, which, plural in (
        ("in", _KEPT, "keeper"),
        ("out", _LEFT, "reject|cull"),
        (SOLD, _SOLD, "cheapy|cheapie"),
        ("unsure", _OPEN, "maybe"),
    )
}
_REASONS = (
    r"(?:body|bone|frame|pattern|red|hi|beni|white|shiroji|colour|skin|head|size|shape|quality|balance|kiwa|edge|"
    r"fin|mouth|eye|health|length|volume|bulk|depth|spine|back|sashi|odome|sex|price|condition|potential|growth|"
    r"belly|tail|nose|face)"
)
_ONLY = r"(?:\s(?:alone|only|really|itself|i\ssay|i\ssuppose|i\sguess|though))?"
_WHO_DECIDES = r"(?:(?:the\s|my\s)?(?:boss|chief|old\sman|master|father|dad|wife|husband|missus|chef)|he|she)"
_OUTCOMES = r"(?:in|out|keep|stay|sell|sale|cull|bin|go|goe|hospital|quarantine|yes|no|wait|second|maybe|pass|not)"
_BACK_THEN = (
    r"(?:again|later|tomorrow|then|next\s(?:week|month|year)|when\s(?:it|she|he)\s(?:is|has|"
    r"stop|settle|calm|heal|grow)\b.*|in\s(?:a|2|3|the|january|february|march|april|may|june|july|august|"
    r"september|october|november|december|spring|summer|autumn|winter)\b.*|at\s(?:the\s)?(?:end|nisai|second)\b.*|"
    r"on\s(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday))"
)
_ALREADY = r"(?:(?:has|have|just|also|already|now)\s)*"
_TIME = r"""
    (?:(?:the|next|this|late|early|mid|end\sof|after|coming|following)\s)*
    (?:(?:spring|summer|autumn|fall|winter|year|month|week|season|nisai|sansai|january|february|march|april|may|june|july|
    august|
    september|october|november|december|monday|tuesday|wednesday|thursday|friday|saturday|sunday|weekend|tomorrow|
    later|new\syear|christmas|easter|harvest|thaw|(?:second|third|next|last|final)\s(?:look|cut|sort|sorting|
    selection|round|harvest))(?:\s(?:look|cut|sort|sorting|selection|harvest))?|
    (?:a|1|2|3|4|another|1\smore|a\sfew(?:\smore)?|a\scouple\sof|2\smore|3\smore)\s(?:full\s|whole\s)?(?:hour|day|week|month|
    season|year|summer|winter|spring|autumn)(?:\smore)?|a\s(?:while|bit)(?:\slonger)?|
    (?:it|she|he)\s(?:is|has)\s(?:a\sbit\s)?(?:bigger|grown|older|settled|calmed\sdown|nisai|2|3|clear|better|well))
"""
_ON = (
    r"(?:(?:just|only|purely|mainly|mostly|simply|solely|even|entirely)\s)*(?:on|for|because\sof|by|from|given|over|due\sto|"
    r"thanks\sto|based\son|on\saccount\sof|on\sthe\sstrength\sof|for\sthe\ssake\sof|going\sby)\s"
)
_THE = r"(?:(?:the|its|her|his|it|that|those|this|such\sa)\s)*"
_LOOKS = (
    r"(?:(?:take|have|give\s(?:it|her|him))\s(?:another|a\ssecond|1\smore)\slook|(?:look|see|check|decide|judge|"
    r"talk|think)(?:\sagain|\sthen)?)"
)
_SAYING = r"(?:say|said|reckon|think|thought|decided|want|wanted|wrote|told\sme|shouted|call)"
_BOSS = r"(?:he|she|they|(?:the\s|my\s|our\s)?(?:boss|chief|old\sman|master|dad|father|wife|husband|missus|oyakata))"
HEADS = re.compile(
    rf"""
        (?:and\s|so\s|then\s|but\s|well\s)*(?:
          {_BOSS}\s(?:(?:just|also|only|then|still|already|now)\s)*{_SAYING}\s(?:(?:to|it\sis|it\swas|put|we|let\sus|mark\s
          it)\s)?|
          (?:{_I}\s(?:was|am|are|were)\s)?told\s(?:me\s)?to\s|
          (?:the\s|my\s|our\s|his\s|her\s)?(?:verdict|vote|call|decision|ruling|note|answer)\s(?:is\s|was\s)?(?:a\s|for\s)?|
          (?:that|this|which)\s(?:make|mean)\s(?:it\s|her\s|him\s)?(?:a\s)?|
          {_I}\s(?:am|are|would\sbe|feel)\s(?:inclined|minded|happy|glad|going|ready|willing|prepared|content|pleased)\s
          to\s|
          {_I}\s(?:think|say|reckon|would\ssay|suppose|guess)\s(?:(?:we|i)\s(?:(?:would|will|shall|should)\s)?|let\sus\s)|
          {_I}\s(?:(?:would|will|shall|must|have\sto|had\sbetter|may\sas\swell|might\sas\swell)\s)(?:(?:definitely|certainly|
          surely|happily|gladly|still|just|simply|rather|sooner|absolutely|also|even|say|call\s{_FISH}|call\sthat|vote|
          mark\s{_FISH}|
          put\s{_FISH}\sdown\sas|class\s{_FISH}\sas|book\s{_FISH}\s(?:in\s)?as)\s)*(?:a\s)?|
          (?:mark|book|class|call|count|note|down)\s{_FISH}\s(?:down\s)?(?:as\s)?(?:a\s)?|mark\s|marked\s(?:as\s)?|
          (?:best|better|time|got|may\sas\swell|might\sas\swell|i\ssay|please|let\sus|for\snow|on\sbalance|on\sreflection|in\s
          the\send|
          all\sthings\sconsidered|after\sall|at\sa\spush|at\sa\spinch|all\sin\sall|on\s(?:second|third)\s(?:thought|look)|
          (?:i\s)?changed\smy\smind|second\slook|at\ssecond\slook)\s(?:to\s|for\s)?
        )
    """,
    re.VERBOSE,
)
"""Who says a verdict, and how: `the boss says`, `I'd be inclined to`, `on reflection`."""
ADVERBIALS = re.compile(
    rf"""
        \s(?:
          (?P<till>(?:till|until|to|through|into|over|for)\s{_TIME})|
          (?P<see>(?:and|then)\s(?:then\s)?(?:{_I}\s(?:will\s|shall\s|can\s|have\sto\s)?)?{_LOOKS}(?:\s(?:in\s|at\s|on\s
          )?{_TIME})?)|
          {_ON}{_THE}{_REASONS}(?:\sand\s(?:the\s)?{_REASONS})?{_ONLY}|with\s(?:that|those|such\sa|such)\s{_REASONS}|
          with\sa\s{_REASONS}\slike\sthat|
          (?:no\smatter|regardless\sof|whatever|despite|in\sspite\sof|never\smind|ignore|forget)\s(?:what\s
          )?{_THE}(?:{_REASONS}|rest)
          (?:\ssay|\sis)?|regardless|whatever\s(?:happen|they\ssay|he\ssay|it\sis|come)|
          {_BOSS}\s{_SAYING}(?:\sso)?|say\s(?:he|she|i|the\sboss)|by\sorder|boss\sorder|on\s(?:the\s)?boss\sorder|i\s(?:was|
          am)\stold|
          without\s(?:(?:a|any|much|even|further|more|another)\s)*(?:second\s)?(?:looking|thinking|regret|look|glance|
          blinking|thought|
          hesitation|discussion|doubt|question|tear|ado|fuss)(?:\stwice)?|
          with\s(?:no|some|a\sfew|great|small|big)?\s?(?:regret|reservation|hesitation|doubt|pleasure|sigh|a\ssigh|capital\s\w|
          a\scapital\s\w)|
          no\s(?:regret|argument|discussion|question|hesitation|contest|debate|second\sthought)(?:\sasked)?|
          (?:right|straight|any\sday|any\sday\sof\sthe\sweek|hand\sdown|in\sa\sheartbeat|in\s1\ssecond|by\sa\s(?:whisker|hair|
          mile|
          hair\sbreadth|small\smargin|thin\smargin|wide\smargin)|(?:thin|narrow|slim|small|fine)\smargin|marginally|marginal|
          narrowly|
          by\sthe\sskin\sof\sits\steeth|if\sonly\sjust|at\sa\s(?:push|pinch|stretch)|reluctantly|grudgingly|regretfully|sadly|
          gladly|happily|
          on\sbalance|all\sthings\sconsidered|in\sthe\send|no\s2\sways\sabout\sit|a\s(?:it|she|he)\sis|as\s(?:it|she|he)\sis|
          as\s(?:it|she|he)\sstand|on\s(?:second|closer)\s(?:thought|look)|on\sreflection|provisionally|for\sthe\s(?:time\s
          being|moment)|
          at\s(?:this\sstage|least|present|best|most|last|first\ssight)|of\scourse|naturally|obviously|definitely|certainly|
          if\syou\sask\sme|in\smy\s(?:book|mind|head)|from\sme|for\sus|for\sthis\shouse|for\s(?:the|this|our)\sfarm|to\smy\smind|full\sstop|
          period|
          simple\sas\sthat|just\slike\sthat|first\stime|only|mate|dear|my\sdear|old\s(?:girl|boy|thing)|sunshine|sweetie|pet|
          my\sfriend|little\s(?:1|fish|girl|boy|fellow|lady)|it\sis|it\smust\sbe|it\swill\sbe|too\si\sthink)|
          and\s(?:move\son|next|on\swe\sgoe?|be\sdone(?:\swith\sit)?|quick|quickly|fast|soon|gladly|happily|smile|no\smistake|
          done|that\sis\sfinal|forget\s(?:it|her|him)|do\snot\sargue|good\sriddance|not\ssorry|no\sregret|never\slook\sback)
        )\Z
    """,
    re.VERBOSE,
)
"""Why, until when and how something is done with a fish: `till autumn`, `on the frame alone`, `without looking`."""
_MONEY = (
    r"(?:(?:for|at)\s(?:a\s|the\s)?(?:(?:very|really|quite)\s)?(?:good|decent|fair|low|middle|middling|mid|medium|"
    r"high|top|nice|friendly|full|"
    r"proper|small|bit|half|reduced|cheap|cost|little|not\smuch|song|penny|tenner|fiver|few\s\w+|"
    r"\d+(?:\s\w+)?)(?:\s(?:price|money|sum|of\smoney|"
    r"end\sprice|cash))?|cheap|cheaply|dear|dearly|low|high|but\snot\s(?:for\s(?:much|a\slot)|cheap|dear|high|well)|"
    r"for\swhat\s(?:it|she|he)\s(?:fetch|bring|make|is\sworth|get)|at\sthe\sgoing\srate|to\sthe\s\w+|to\s(?:a|some|"
    r"somebody|someone|"
    r"my|our)\s?\w*|in\s(?:a|the)\s(?:\w+\s)?(?:lot|batch|sale|shop|auction))"
)
_SELL = r"(?:sell|flog|shift|offload|trade|auction|price|export|ship)"
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
          (?:1|another)\smore\s(?:season|summer|year|winter)(?:\sfor\s(?:it|her|him|this\s1))?|another\s(?:season|summer|year|
          winter)|
          once\smore\sin\s(?:the\s)?mud
        | (?:keep|in|take|stay)\s(?:at|for)\sa\s(?:friendly|good|fair|low|high|small|nice|reasonable)\s(?:price|sum|money)
        | (?:in|keep|keeper|stay)\s(?:just\s|only\s)?(?:on|for|because\sof|by|from)\s(?:the\s|it\s|its\s|her\s|
          his\s)?{_REASONS}(?:\sand\s{_REASONS})?{_ONLY}
        | (?:it|she|he|this\s1|that\s1)\s(?:can|may|must|should|has\sto)\sstay(?:\shere|\son)?|can\sstay|(?:let|
          have)\s(?:it|her|him)\sstay|(?:has\sto|must)\sstay
        | (?:(?:a|the|that\sis\sa|it\sis\sa|she\sis\sa|he\sis\sa|big|clear|definite|definitely|easy|firm|for\sme|from\sme|
          of\scourse|absolute|absolutely)\s)+(?:yes|keep|keeper|in)(?:\s(?:from|for)\s(?:me|us))?|yes\s(?:from\sme|
          of\scourse|for\sme|definitely|absolutely|in|this\s1|that\s1|her|him|go\son|keep(?:er)?)|keep\s(?:of\scourse|yes|
          naturally|obviously|surely|absolutely|no\squestion)|go\son\s(?:then\s)?(?:keep|yes|in)
        | (?:for\s)?(?:me\sthis\s1|myself|my\sown\s(?:pond|tank)|straight\s(?:to|into)\smy\s(?:pond|tank))|for\smyself
        | (?:first|top|number\s1|my)\s(?:pick|choice)(?:\s(?:today|of\sthe\s(?:day|lot|tub|batch|morning)))?
        | {_WHO_DECIDES}\s(?:say|said|want|like|take|took)\s(?:to\s)?(?:keep|in|yes|stay|it\sstay)(?:\s(?:it|her|him|
          anyway|small\sor\snot|all\sthe\ssame|for\snow|though))*
        | (?:pond|mud)\s{_FISH}(?:\s(?:for\s)?{_SEASONS})?|i\sam\sa\syes
        | {_WHO_DECIDES}\swill\s(?:want|keep|take)\s{_FISH}
        | retained|save(?:\s(?:it|her|him|this\s1))?|(?:for\s)?my\spond
        | (?:(?:a|the|big|small|1|2|3|double|two|green|clear|firm|thick)\s)*(?:tick|check\smark)(?:\s(?:from\s(?:me|him|her|
          us|the\sboss|
          both|both\sof\sus)|for\s(?:it|her|him|this\s1|that\s1)|in\sthe\sbook|on\sthe\slist|here|again|there))?
        | (?:{_BOSS}|i|we)\s{_ALREADY}(?:(?:put|gave|give|made|drew|left)\s(?:{_FISH}\s)?(?:a|an|2|1|3|its|his|her)\s(?:big\s|
          clear\s|double\s)?(?:tick|ok|okay|
          thumb\sup|yes|nod)(?:\s(?:on|by|next\sto|beside|at|for|to)\s{_FISH})?|(?:kept|took|saved|ticked|approved|passed|
          wanted|chose|picked)\s{_FISH}|
          (?:nodded|nod|approved|approve|ticked\sit))
        | (?:it|she|he|this\s1)\s(?:get|got|has)\s(?:a|2|1|its)\s(?:big\s)?tick(?:\s(?:from\s(?:me|him|us)|too))?|ticked|
          thumb\sup|
          (?:a\s|boss\s)?nod(?:\sfrom\s(?:him|the\sboss))?
        | front\srank|first\s(?:rank|tier|choice|team|eleven)|(?:grade|class)\sa
        | (?:(?:it|she|he|this\s1)\s(?:is\s|goe\s)?)?through(?:\sto\sthe\snext\s(?:round|cut|sort|1|look))|{_WOULD}(?:let|put|
          wave)\s
          {_FISH}\sthrough|(?:it\s|she\s|he\s|this\s1\s)?(?:make|made|survive|survived|pas)\s(?:the|this|it|her|his)\s(?:cut|
          selection|sort|
          sorting)
        | {_WOULD}?(?:put|keep|leave|move|stick)\s{_FISH}\s(?:where\s(?:i|we)\scan\ssee\s{_FISH}|(?:with|among|beside)\s
          (?:the\s|my\s|our\s)?
          (?:best|good|top|better|keeper|favourite|show|kept|finest)(?:\s(?:1|fish|lot|few|of\sthem))?)
        | {_WOULD}(?:keep|pond|leave|grow|run|hold\son\sto|feed)\s{_FISH}(?:\son)?(?:\sin)?\s{_SEASONS}
        | (?:(?:straight|off|goe|go|goe|it\sgoe|she\sgoe|he\sgoe|put\s{_FISH}|back|move\s{_FISH})\s)+(?:in|into|to)\s(?:the\s
          )?mud(?:\spond)?
        | (?:(?:go|goe|goe|going|it\sgoe|she\sgoe|he\sgoe|it\sis\sgoing|she\sis\sgoing|straight|this\s1\sgoe|this\s1\sis\s
          going)\s)*(?:in|into|to)\s
          my\s(?:own\s)?(?:pond|tank|garden\spond|garden)|(?:(?:this\s1\sis\s|that\s1\sis\s|it\sis\s|she\sis\s|he\sis\s
          )?(?:1\s)?for\s)?
          my\sown\s(?:pond|tank|use|collection)|(?:kept|keep|keeping)(?:\s{_FISH})?\s(?:for|back\sfor)\s(?:me|myself|us|
          ourselves|the\sfarm|the\shouse|
          my\sown\s(?:pond|use)|breeding|my\spond)|(?:this\s1\s|that\s1\s|it\s|she\s|he\s)(?:come|go|goe|is\scoming|is\s
          going)\shome(?:\swith\sme)?
        | (?:a\s|1\s|keep\s|for\s|as\s|future\s|possible\s)*(?:brood|breeding|parent)\s(?:fish|stock)|1\sto\sbreed\s(?:from|
          with)|keep\s(?:for|as)\s
          (?:breeding|a\sparent|oya)
        | not\sgoing\sanywhere|nobody\s(?:get|is\shaving|take|buy)\s(?:this\s1|that\s1|her|him)|(?:i\s)?must\shave\s(?:it|
          her|him|this\s1)
    """,
    "out": rf"""
        (?:gone|cut|goodbye|bye(?:\sbye)?|bye\sthen|removed|ditch|strike|straight\sout|first\sout|out\s(?:first|straight|
        quick|fast|
        now|
          at\slast)|nope(?:\s(?:out|sorry))?|sorry\s(?:nope|out)|(?:clear|big|easy|hard|definite|definitely|a|a\sclear|
          that\sis\sa|it\sis\sa)\s(?:no|out)|no\s(?:from|for)\s(?:me|us)|no\sno\sno|no\snot\s(?:this|that)\s1)
        | (?:lose|drop|strike|ditch|remove|cut|cull|swap|return|dump)\s{_FISH}(?:\s(?:on|quick|quickly|cheap|now|
          first|soon|off|straight\saway))?
        | (?:get|be)\srid(?:\sof\s{_FISH})?|(?:get|fish|take|pull|net)\s{_FISH}\sout(?:\sof\s(?:here|there|the\s(?:tub|tank|
          lot|batch|running|pond|group)))?|
          (?:cross|strike|rule|send|ship|move)\s{_FISH}\s(?:off|out|back|on)|let\s(?:it|her|him)\sgoe?
        | (?:so\s|then\s|but\s)+(?:i\s)?(?:(?:probably|maybe|perhap|rather|better|think|suppose|guess|am\safraid|fear)\snot|
          do\snot\sthink\sso|not\sthis\stime|not\stoday|not\sthis\syear)
        | {_WOULD_NOT}(?:grow|raise|feed|bother|breed|waste|spend|keep|take|want|buy|
          risk|hold|back|choose|pick|show)\s(?:with\s)?{_FISH}(?:\s(?:on|out|up|further|longer|any\slonger|myself|anyway|
          food\son\s(?:it|her|
          him)|time\son\s(?:it|her|him)))*
        | (?:that\sis\s|it\sis\s)?(?:a\s)?return\sto\ssender|(?:send|take)\s{_FISH}\sback(?:\s(?:where\s(?:it|she|
          he)\scame\sfrom|to\sthe\s\w+))?|back\s(?:where\s(?:it|she|he)\scame\sfrom|to\sthe\s(?:shop|dealer|farm|breeder|
          seller|wholesaler))
        | (?:no\s)?(?:{_I}\s)?(?:can|could|would)\snot\s(?:sell|stand\sbehind|show|offer|put\smy\sname\s(?:to|on)|
          sign\sfor|use|justify|defend)\s{_FISH}(?:\s(?:to\s(?:anybody|anyone|somebody|people)|like\sthis|with\s(?:a|
          that)\s\w+))?
        | (?:(?:that\sis\s|it\sis\s)?a\s)?waste\sof\s(?:food|space|time|water|feed|money|room)|
          (?:there\sis\s)?no\s(?:place|room|space|use|need)\sfor\s(?:it|her|him|this\s1|that\s1|that)(?:\shere)?
        | not\sworth\s(?:feeding|growing|raising|the\sfeed|the\swinter|another\s(?:season|winter|year))|
          (?:get|for)\sthe\s(?:chop|axe)|the\schop|heron\s(?:food|bait)|food\sfor\sthe\sheron|for\sthe\sheron|
          for\sthe\scat
        | (?:it|she|he|this\s1|that\s1)\s(?:has\sto|must|can|will\shave\sto)\s(?:go|leave)|time\sto\sgo|
          has\sgot\sto\sgo
        | (?:for|to)\s(?:somebody|someone)\selse(?:\s(?:pond|to\s(?:enjoy|keep|grow)))?|(?:somebody|
          someone)\selse\sproblem|(?:free\s)?to\sa\sgood\shome
        | (?:out|cull|reject|(?:gone|off|no)(?=\s(?:just\s|only\s)?(?:for|because)))\s(?:just\s|only\s)?(?:on|for|because\sof|
          by)\s(?:the\s|it\s|its\s|her\s|
          his\s)?{_REASONS}(?:\sand\s{_REASONS})?{_ONLY}
        | (?:(?:first|second|my\s(?:first|second))\sthought\sout|{_WHO_DECIDES}\s(?:say|said|want)\s(?:it\s|her\s|
          him\s)?(?:out|no|cull|gone)(?:\s(?:it|her|him|anyway))?)
        | (?:hane|haneru|thrown\sout|tip\s(?:it|her|him)|over\sthe\sside|not\swanted|put\sdown)|(?:cull|reject)\slot|
          not\s(?:even\s)?for\sthe\s(?:pet\strade|shop|pond)
        | (?:you\sare|it\sis|she\sis|he\sis|this\s1\sis|that\s1\sis|is)\s(?:a\sgoner|for\sthe\schop|going|leaving|
          gone\sthen)
        | (?:(?:a|the|big|small|red|1|2)\s)*cross(?:\s(?:for|against|next\sto|by|on|through|in)\s(?:it|her|him|this\s1|that\s
          1|the\sbook))|
          (?:(?:a|big|red)\s)*cross|(?:{_BOSS}|i|we)\s(?:(?:has|have|just|also|already)\s)*(?:put\sa\s(?:big\s|red\s)?cross|
          crossed|culled|binned|threw|chucked|
          rejected|refused|shook\s(?:his|her|my)\shead|shake\s(?:his|her)\shead|was\sshaking\s(?:his|her)\shead|turned\s(?:it|
          her|him)\sdown|
          passed\son)(?:\s(?:it|her|him|this\s1|that\s1))?(?:\s(?:out|off|away|on\s(?:it|her|him)|by\sit|back))?|crossed\s
          (?:out|off)|struck\s(?:out|off)|
          (?:a\s)?(?:red\s)?line\sthrough\s(?:it|her|him|this\s1|that\s1)|thumb\sdown|{_WOULD}put\sa\s(?:red\s)?line\s
          through\s{_FISH}
        | (?:it|she|he|this\s1|that\s1|that|this)\s(?:will\shave\sto|have\sto|has\sto|has\sgot\sto|need\sto|is\sto|ought\sto|
          had\sbetter|should|
          may\sas\swell|might\sas\swell|just\sha\sto|really\sha\sto|will\shave\sgot\sto)\s(?:goe?|leave|be\sout)|
          will\shave\sto\sgoe?|(?:it|she|he|this\s1|that\s1)\s(?:is\snot|will\snot\sbe)\s(?:staying|making\sit|getting\sthrough)
        | (?:it|she|he|this\s1|that\s1)?\s?(?:doe\snot|did\snot|will\snot|would\snot|never)\s(?:make|survive|pas|get\s
          through)\s(?:the|this|my|our)\s
          (?:cut|selection|sort|sorting|grade|bar|round)|fail\s(?:the|this)\s(?:cut|selection|sort|sorting)
        | not\sfor\s(?:us|our\s(?:tub|pond|farm|lot)|this\s(?:house|farm|pond|tub)|here|keeping)|not\s(?:at\sall\s)?(?:what\s
          (?:i|we)\s(?:want|keep|need|are\safter))
        | not\sworth\s(?:a|its|her|his|the|my|another|any|1\smore)\s?(?:place|space|room|spot|food|feed|water|time|trouble|
          bother|effort|winter|summer|season|year|
          pellet|tub\sspace|tank\sspace|pond\sspace|oxygen|net|price|money|second\slook|keep|it|candle|the\scandle)(?:\s
          (?:in\s(?:the|my|our|this)\s\w+|here|
          on\s(?:it|her|him)|it\stake\sup|it\stake))?|not\sworth\s(?:it|keeping|growing|feeding|raising|the\s\w+|
          bothering(?:\swith)?)(?:\s(?:on|it|her|him|this\s1))?
        | (?:sent|send|(?:goe|go|going)(?=\sback\sto))\s(?:back|home|away)(?:\sto\s(?:the\s)?(?:shop|dealer|seller|breeder|
          farm|sender|owner|
          wholesaler))?
        | (?:(?:it\sis|that\sis|she\sis|he\sis)\s)?(?:(?:just|simply|really)\s)*(?:unsaleable|unsellable|not\ssaleable|
          beyond\ssaving|past\ssaving|
          a\slost\scause|unkeepable)
        | (?:the\s)?(?:{_REASONS}|nothing|that|it\s{_REASONS})\s(?:can|could|will|would)\snot\s(?:save|rescue|carry)\s(?:it|
          her|him)(?:\snow)?|
          nothing\s(?:can|will|could|would)\s(?:save|rescue)\s(?:it|her|him|this\s1)
        | no\s(?:i\s)?do\snot\sthink\s(?:(?:i|we)\s(?:will|would|shall|can)|so)|(?:so\s)?that\sis\sthat\si\sam\safraid
        | (?:{_I}\s)?(?:could|would|can|will)\snot\s(?:in\s(?:all\s|good\s)*conscience\s)?(?:send|show|enter|bench|take|bring|
          put)\s{_FISH}\s(?:to|in|at|on)\s
          (?:a|the|any)\s(?:show|bench|competition)
        | that\sis\sa\sdisqualification(?:\s.*)?|straight\sdisqualification|disqualification
    """,
    SOLD: rf"""
        (?:quick|fast|cheap|private|early)\ssale|(?:sale|auction|trade)\s(?:fish|lot)|(?:straight\s(?:to\s)?)?(?:auction|trade)|
          (?:dealer|sale|cheap|mixed|bulk|batch|bargain)\slot|quick\smoney|(?:that\sis\s|it\sis\s)?ready\s(?:to\ssell|for\s
          (?:sale|market))
        | {_WOULD}{_SELL}\s{_FISH}(?:\s(?:on|off|away|quick|
          quickly|soon|young|early|now|first|today|this\s(?:week|month|year|season|spring|summer|autumn)|{_MONEY}))*
        | {_WOULD}let\s{_FISH}\sgoe?\s(?:cheap|cheaply|(?=for|at|but){_MONEY}|in\sa\s(?:mixed|cheap|job)\s(?:lot|batch|bag|box))
        | sell\sor\s(?:swap|trade|give\saway)|sold\sin\smy\s(?:mind|head)
        | (?:to\s)?(?:sell|flog|offload|auction|export|ship)(?:\s(?:soon|young|early|now|first|today|on|off|{_MONEY}))+
        | {_WOULD}sell(?:\s{_FISH})?(?:\syoung|\searly)?\s(?:(?:before|by|in|this|next|at)\s{_TIME}|(?:now\s)?while\s(?:it|
        she|he)\s(?:is\s)?
          \w+(?:\s\w+)?|
          as\s(?:a\s|an\s)?\w+(?:\s\w+)?)
        | (?:it|she|he|this\s1|that\s1)\s(?:will|would|should|can|could)\s(?:still\s|just\s|always\s)?(?:be\ssold|sell|goe?)\s
          {_MONEY}
        | (?:it|she|he|this\s1|that\s1)\s(?:can|must|will|should|could|has\sto)\sbe\ssold(?:\s{_MONEY})?|sellable|saleable
        | (?:(?:it|she|he|this\s1|that\s1)\s)?(?:goe?|go|is|off|straight|send\s{_FISH}|take\s{_FISH}|put\s{_FISH})?\s?(?:to|
          for|in|on|into)\s
          (?:the\s|a\s|my\s|some\s)?(?:shop|market(?:\sstall)?|garden\s(?:centre|pond|trade)|garden|trade|dealer|wholesaler|
          auction|raffle|
          tombola|pet\s(?:trade|shop|fish\strade)|stall|sale|patio(?:\spond)?|hobby(?:\spond|\strade)?|hobbyist|export|
          weekend\smarket|
          (?:spring|summer|autumn|october|november|march|april|may)\ssale|online\sshop|web\sshop|price\slist)(?:\s{_MONEY})?
        | (?:let\sthe\s)?(?:dealer|trade|wholesaler)(?:\s(?:get|have|can\shave|take)\s(?:it|her|him|this\s1|that\s1))?
        | (?:(?:nice|fine|good|okay|enough|good\senough|alright|1|pretty|a\snice\s1|will\sdo|only|just|at\sbest|lovely|it\s
          will\sdo|
          she\swill\sdo|he\swill\sdo)\s)+for\s(?:a\s|the\s|some\s|any\s)?
          (?:garden|patio|back\sgarden|hobby|backyard|customer|beginner|family|friend|kid|child|neighbour|small|normal|
          ordinary|mixed|shop|
          market|raffle|trade|pet\sshop|garden\scentre|hobbyist)(?:\spond|\stank)?(?:\s(?:not\s(?:a|the|for\sa)\sshow|i\s
          should\sthink|
          no\smore|only|somewhere|not\smore))?|1\sfor\sa\spond\snot\sa\sshow
        | (?:(?:a|an|nice|decent|good|cheap|ordinary|typical|just\sa|only\sa|better|standard|pure)\s)*(?:pond|garden|shop|
          hobby|hobbyist|market|patio|beginner|pet|
          pet\sshop|garden\scentre|dealer|sale|trade|bargain|commercial|raffle)\s(?:fish|quality|grade|stock|class|material|
          level|1|koi)
          (?:\s(?:only|at\s(?:best|most)|no\smore|not\smore|really|then|i\s\w+))?
        | (?:feed|feeder|shop|trade|bargain|cheap|give\saway|basement|bottom|garden\scentre|sale|low\send)\sprice
        | (?:pet|garden|pond|hobby|shop)\s(?:quality|grade|stock)
        | (?:you\sare|it\sis|she\sis|he\sis|this\s1\sis|that\s1\sis|is)\s(?:for\ssale|to\sbe\ssold)|(?:third|3rd)\s(?:box|
          grade|class|
          rank|tier|choice|quality)(?:\s(?:good|fish|stuff|stock))?
        | (?:a\s|an\s)?(?:(?:garden|patio|back\sgarden|hobby|garden\scentre|customer|somebody|someone|beginner|neighbour)\spond)
          (?:\sat\s(?:best|most)|\sonly|\sfish|\sfor\s(?:it|her|him|this\s1|that\s1))?
        | (?:good|fine|nice|enough)\sfor\s(?:the\s|a\s)?(?:shop|market|trade|raffle|customer)
    """,
    "unsure": rf"""
        {_WHO_DECIDES}\s(?:say|said|want)\s(?:to\s)?(?:wait|hold|leave\sit|look\sagain|see)(?:\s.*)?|shelve(?:\s{_FISH})?|
        lay\sby|
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
        | (?:let\sme\s|let\sus\s|{_I}\s(?:would\s|will\s))?(?:put|set|lay|leave|keep)\s{_FISH}\s(?:aside|apart|by|
          on\s(?:1|the)\sside|to\s(?:1|the)\sside|separate|for\s(?:later|now))(?:\s(?:for\s(?:now|later|the\sboss)|first|
          please|to\slook\sagain))*
        | keep\s(?:an|1)\seye(?:\son\s{_FISH})?|keep\swatching(?:\s{_FISH})?|(?:to\s)?watch(?:\s{_FISH})?(?:\s(?:a\swhile|
          for\snow|closely))?
        | (?:put|leave|keep)\s{_FISH}\s(?:in|into)\s(?:the\s)?(?:salt|hospital|quarantine|isolation|treatment|
          medicine)(?:\s(?:tub|tank|bath|vat|basin))?\sand\s(?:then\s)?(?:{_I}\s)?(?:will\s)?(?:look|see|check|
          decide)(?:\s(?:again|later|then))?
        | (?:i\s)?can\snot\smake\s(?:up\s)?my\smind(?:\sup)?(?:\s(?:at\sall|yet|about\s(?:it|her|him|this\s1|that\s1)))*
        | (?:(?:he|she|you|i|they)\scan\s)?take\s(?:it|her|him)\sor\sleave\s(?:it|her|him)
        | (?:{_I}\s)?(?:would|will|can|could|do)\snot\s(?:want\sto\s)?(?:judge|call|decide|grade|place)(?:\s(?:on\s
          )?{_FISH})?(?:\s(?:today|yet|now|here|
          so\searly|this\searly|at\sthis\s(?:size|age)|in\sthis\slight|till\s{_TIME}|until\s{_TIME}))+|no\s(?:call|verdict|
          decision|vote|ruling)\s(?:yet|today|now|
          till\s{_TIME}|until\s{_TIME}|from\sme(?:\syet)?)|(?:verdict|decision|call)\s(?:later|pending|open|deferred|
          postponed|to\scome|{_BACK_THEN})
        | (?:re\s?check|re\s?look|re\s?asses|re\s?sort|review|look\sagain|look|see|again|another\slook|check|judge|decide|
          sort|second\slook|revisit)(?:\s{_FISH})?(?:\sagain)?\s
          (?:in\s|at\s|on\s|by\s|after\s)?{_TIME}(?:\sagain)?
        | (?:{_I}\s(?:would|will)\s)?(?:leave|allow)\s{_FISH}\s(?:another\s)?{_TIME}|(?:recheck|revisit|reasses|resort|
          relook)(?:\s{_FISH})?
        | (?:that\sis\s|it\sis\s)?(?:call\s(?:it|her|him)\s)?(?:a\s)?(?:maybe|perhap)\s(?:plus|minus|at\s(?:best|most)|for\s
          now|then|still|fish|1)|(?:a|another)\smaybe
        | not\s(?:this\s1|it|her|his)\s(?:year|day|season)(?:\syet)?|maybe\snext\s(?:year|time|season|spring)|not\sthis\s
          (?:year|time|spring|autumn)\smaybe
        | isolate(?:\s{_FISH})?|(?:{_WOULD})?(?:put|pop|stick|leave|keep|set|move|drop)\s{_FISH}\s(?:back\s)?(?:in|into|to|
          with|on|under)\s(?:the\s|a\s|my\s)?
          \w+(?:\s\w+)?\sand\s(?:then\s)?(?:{_I}\s(?:will\s|shall\s|can\s)?)?{_LOOKS}(?:\s.*)?
        | (?:put|set|laid|kept|lay|left|placed|moved)\s(?:it\s|her\s|him\s|this\s1\s)?(?:aside|apart|by|to\s(?:1|the)\sside|
          on\s(?:1|the)\sside)(?:\s(?:for\s(?:now|later|him|her|me|
          the\sboss|a\ssecond\slook|another\slook)|too|again|first|please))*
        | (?:{_I}\s(?:am|was)\s)?(?:half\s|very\s|sorely\s|a\sbit\s|quite\s|really\s)*tempted(?:\sto\s(?:keep|take|buy|hold|
          save)(?:\son\sto)?(?:\s{_FISH})?)?|{_I}\s(?:waver|dither|go\sback\sand\sforth|
          am\storn|can\snot\schoose|keep\schanging\smy\smind|am\sstuck)|torn(?:\son\s{_FISH})?|half\sa\stick|tick\swith\sa\s
          question\smark
        | second\s(?:rank|grade|tier|rate|string|rung|place|best)|(?:grade|class)\sb|b\s(?:grade|class|list|team|stock|quality)
        | do\snot\s(?:throw|lose|dump|give\sup\son|discard|kill|let\sgo\sof)\s{_FISH}\s(?:out\s|away\s)?(?:just\s)?yet|not\s
          out\sof\sit\syet
        | hold|hold\s{_FISH}(?:\s(?:over|back))?|(?:{_I}\s(?:would|will)\s)?reserve\s(?:judgement|judgment)(?:\son\s{_FISH})?|
          judgement\sreserved
        | (?:it\sis\s|a\s)*(?:50\s50|half\shalf|half\sand\shalf|close\scall|coin\sflip|flip\sa\scoin|open\squestion|
          lottery|doubt|doubtful|doubtful\s1|doubtful\scase)
    """,
}


@lru_cache(maxsize=4096)
def by_form(tokens: tuple[str, ...]) -> str | None:
    """The verdict that tokens are by their form: `put it in the maybe tub`, `boss says keep`, `out or hospital`."""
    if tokens[:2] == ("yes", "bin"):
        return None  # not a bin for those that stay
    text = " ".join(tokens)
    if _HELD_UP.match(text):
        return None
    found = next((verdict for verdict, form in _FORM_PATTERNS if form.fullmatch(text)), None)
    return "unsure" if found == "in" and _HELD.match(text) else found


_HELD_UP = re.compile(r"(?:i\s\w+\s)?hold\s(?:it|her|him|that|this)\s(?:up|out)")
_HELD = re.compile(r"(?:i\s\w+\s)?hold\s(?!on)")
"""`hold that for now` puts it off."""
_FORM_PATTERNS = tuple(
    (verdict, re.compile(form, re.VERBOSE)) for verdict in _FORMS for form in (_PLACES[verdict], _FORMS[verdict])
)
