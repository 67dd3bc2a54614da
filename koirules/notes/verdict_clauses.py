"""Verdicts in whole sentences: every word of them is one of those with which people say what is done with a fish.

Common practice, no source; wordings from memory. A sentence is cut into pieces from left to right. Some of them decide
(`keep it`, `in the sale tub`, `two ticks`), the others say who does so, where, when and how. A sentence with any other word is no
verdict here. Neither is one in which two pieces decide differently, a condition, or what somebody else would have done.
"""

from __future__ import annotations

import re
from functools import lru_cache

from koirules.notes.verdict_forms import SOLD

_IT = (
    r"(?:(?:this|that|the)\s(?:little\s|old\s|poor\s|big\s)?(?:1|fish|girl|boy|lady|lad|fellow|thing|beast|chap)|"
    r"it|her|him|them|this|that|these|those|you)"
)
_THE = r"(?:(?:the|my|our|his|her|its|your|their|a|an|that|this|some|any|1|no)\s)"
_WHO = r"""
    (?:(?:(?:my|the|our|his|her|some|a|an|any|1|another|that)\s)?(?:(?:old|young|good|new|first|small|little|local|regular|
    poor|nice)\s)*
    (?:boss|chief|wife|husband|missus|father|dad|mother|son|daughter|brother|uncle|master|lad|girl|boy|kid|child|man|lady|
    woman|friend|
    neighbour|customer|buyer|beginner|novice|shop|dealer|trade|market|auction|hobbyist|hobby|family|school|punter|client|
    collector|breeder|
    colleague|apprentice|helper|partner|owner)|somebody|someone|anybody|anyone|people|everybody|nobody|him|her|me|us|you|them|
    myself|ourselves)
"""
_POND = (
    r"(?:(?:garden|patio|back\sgarden|backyard|front\sgarden|small|little|own|first|mixed|ordinary|normal|new|"
    r"hobby|big|home|family|school)\s)*(?:pond|tank|pool|garden|aquarium|water\sfeature|water\sgarden)"
)
_BOX = (
    r"(?:tub|tank|vat|basin|bowl|bucket|bin|box|crate|pile|pond|shelf|table|row|ring|rack|pen|tray|list|lot|heap|"
    r"bag|pool|batch|group|1|one|fish|trough|cage|team)"
)
_PLACE = r"(?:tub|tank|vat|basin|bucket|bin|box|crate|pile|pond|shelf|row|ring|rack|pen|tray|list|lot|batch|book|page)"
_WHICH = (
    r"(?:(?:left|right|other|blue|green|red|white|black|yellow|big|small|first|next|old|new|same|long|round|near|"
    r"far|little|wooden|plastic|middle|back|front|outside|inside|own)\s)"
)
_TIME = r"""
    (?:(?:(?:the|next|this|late|early|mid|end\sof|last|coming|following|all|1|another|a|an|at\sleast|full|whole|more|first|
    second|2|3|few|couple\sof)\s)*
    (?:spring|summer|autumn|winter|year|month|week|season|day|hour|minute|moment|while|bit|nisai|sansai|yonsai|january|
    february|march|april|may|june|
    july|august|september|october|november|december|monday|tuesday|wednesday|thursday|friday|saturday|sunday|weekend|tomorrow|
    tonight|today|
    morning|evening|afternoon|now|christmas|easter|harvest|lunch|tea|break|look|cut|sort|sorting|selection|round)(?:\smore|\s
    longer|\sor\s(?:so|2))?)
"""
_REASON = (
    r"(?:body|bone|frame|pattern|red|hi|beni|white|shiroji|colour|skin|head|size|shape|quality|balance|kiwa|edge|"
    r"fin|mouth|eye|health|length|volume|bulk|"
    r"depth|spine|back|sashi|odome|sex|price|condition|potential|growth|belly|tail|nose|face|line|look|money|"
    r"stock|breeding|fun|reference|character)"
)

_BOSS = r"""
    (?:(?:(?:my|the|our)\s)?(?:(?:old|young)\s)?(?:boss|chief|wife|husband|missus|father|dad|master|man|oyakata|owner))
"""

_KEEPS = rf"""
    (?:keep|keeping|kept|save|saving|saved|retain|retained|raise|raising|grow|growing|grew|have|having|take|taking|took|buy|
    buying|bought|
    want|hold\son\sto|holding\son\sto|hang\son\sto|hanging\son\sto|feed|feeding|stick\swith|sticking\swith|back|backing|
    gamble\son|
    bet\son|risk|risking|try|give\sroom\sto|find\sroom\sfor|make\sroom\sfor|run)\s(?:{_IT}|both|back\s{_IT}|{_IT}\sback)(?:\s
    (?:on|back|along)(?!\s(?:the|its|her|his|a)(?!\w)))?
"""
_DROPS = rf"""
    (?:throw|throwing|threw|chuck|chucking|chucked|cross|crossing|crossed|strike|striking|struck|rule|ruling|ruled|write|
    writing|wrote|tip|tipping|tipped)\s{_IT}\s
    (?:out|away|off)|(?:cull|culling|culled|bin|binning|binned|drop|dropping|dropped|reject|rejecting|rejected|lose|losing|
    dump|dumping|dumped|ditch|ditching|ditched|discard|discarding|discarded|
    get\srid\sof|getting\srid\sof|give\sup\son|giving\sup\son|gave\sup\son|turn\sdown|turned\sdown|pass\son|passing\son|
    passed\son|part\swith|parting\swith)\s{_IT}(?!\s(?:in|into|to|on|down|over|back)(?!\w))(?:\s(?:out|away|off))?
"""
_SELLS = rf"""
    (?:sell|selling|sold|offload|offloading|flog|flogging|auction|auctioning|ship|shipping|shift|shifting|list|listing|
    advertise)\s{_IT}(?:\s(?:on|off|away))?
"""
_PIECES = {
    "stop": rf"""
        (?:would|could|might|may|should)\ssell\s(?:for|at)|look\sout|(?:would|do)\snot\sbet|\A(?:in|by|next)\s{_TIME}\si(?!\w)|\Ano\s(?:keep|sell|
        sold|in)(?!\w)|(?:even|fill|wash|peel|turn|stand|stick|work|point|grow)\sout|feed(?:ing)?\s{_IT}\s(?:later|{_TIME})\Z|
        \Ayou(?!\scan\shave\s(?:it|her|him|this|that)(?!\w))(?=\s(?:can|could|will|would|do|have|get|are|should|must))|look\s
        cross|if|unless|whether|would\shave|could\shave|should\shave|might\shave|had|was\sgoing\sto|were\sgoing\sto|nearly|
        almost|hardly|wish|wished|why|who|
        what|how|when|where|which|would\s(?:you(?!\Z)|he|she|they|anyone|anybody)|should\s(?:i|we|you)|(?:do|did|can|could|
        shall|will|doe|is|are)\s(?:you|i|we|he|
        she|they|it)|(?:(?:the|my|our|old)\s)*(?:he|she|they|boss|you|wife|husband|father|dad|customer|other|people|nobody|
        somebody|someone|
        everybody)\s(?:would|might|could|may)(?!\ssay|\slike\sto\ssee)|
        (?:no|every|some|any)\s(?:1|one)|used\sto|than|is\s(?:better|worse|best|full|empty|ready|open|here|cold|warm)|came\s
        (?:from|out)|come\sfrom|bought\s(?:it|her|him)\s(?:at|from|in)|last\s(?:year|spring|summer|autumn|winter|week)|
        yesterday|ago|once|sister|brother
    """,
    "unsure": rf"""
        not\sa\s(?:yes|no)(?!\w)|(?:look|see|check|judge|decide)(?:\s{_IT})?(?:\sagain)?\sat\s\d+(?:\scm)?|then\s(?:see|look|
        decide|judge)(?:\sagain)?|
        to\s(?:decide|judge|sort|look\sat|see)(?:\s{_IT})?(?:\sagain)?\s(?:at\sthe\send|later|last|tomorrow|next)|(?:sort\sof|
        kind\sof|bit\sof|definite|big|clear|a)(?:\s(?:a|of|definite|big|clear|bit))*\smaybe|i\sam\storn|torn\s(?:on|over|
        about)\s{_IT}|
        (?:left|leave|put|keep)\s{_IT}\sin\s{_THE}(?:{_WHICH})*{_PLACE}\sfor\s(?:now|the\smoment|the\stime\sbeing)|for\s
        (?:treatment|observation|medication|salt|
        a\s(?:salt\s)?bath|scraping|the\svet)|(?:to|in|into)\sthe\s(?:sick|back|fish|quarantine|treatment)\sroom|(?:to|as)\s
        (?:a\s)?(?:hold|maybe)(?=\Z|\s)|
        leave(?:\s{_IT})?\s(?:(?:till|until|for|through)\s)?{_TIME}|
        (?:put|putting|set|setting|leave|leaving|left|lay|laid|move|moved|pop|popped|keep|kept|place|placed|stand|moving)\s
        (?:{_IT}\s)?(?:aside|apart|by|to\s(?:1|the)\sside|
        on\s(?:1|the)\sside|separate|separately|for\slater|on\shold|on\sthe\sback\sburner|in\slimbo)|on\shold|on\sthe\sfence|
        in\s(?:2|two)\sminds|undecided|unsure|not\ssure|
        (?:come|coming|go|get|came)\sback\sto\s{_IT}|(?:look|see|check|judge|decide|have\sa\slook|take\sa\slook|see\s{_IT}|
        look\sat\s{_IT}|check\s{_IT}|have\s{_IT})\s
        (?:again|later|afterwards?|another\s(?:day|time)|once\smore)|(?:another|a\ssecond|1\smore|a\sthird)\slook|
        think(?:ing)?\s(?:about|on|over)\s{_IT}|think\s(?:again|it\sover)|
        sleep\son\s{_IT}|do\snot\sknow|don\sknow|can\snot\s(?:decide|say|tell|choose|make\smy\smind\sup|make\sup\smy\smind)|
        wait(?:ing)?(?:\s(?:and\ssee|a\s(?:bit|while)|for\s{_TIME}|to\ssee|on\s{_IT}))?|
        (?:a\s)?(?:maybe|perhap)(?=\s(?:tub|box|pile|list|lot|then|for\snow|basin|bowl)|\Z)|(?:till|until)\s(?:he|she|i|we|
        the\sboss|boss|somebody|someone)\s(?:come|get|has|have|decide|look|see|know|can\ssee|say)
        (?:\s(?:back|again|it|her|him|home|in|another\slook|a\slook|seen\s{_IT}|looked|more|better|well))*|(?:to|can|should|
        must|wants?\sto|need\sto|has\sto)\s(?:see|look\sat|decide\son|judge)\s{_IT}(?:\s(?:again|first|himself|
        herself|too))*|(?:in|into|to)\s{_THE}?(?:hospital|quarantine|isolation|treatment|sick|maybe|holding|waiting|question|
        second)\s{_BOX}|wait\sand\ssee|jury\sis\sout|keep\san\seye\son\s{_IT}|
        watch(?:ing)?\s{_IT}|let\s{_IT}\s(?:settle|rest|grow\sa\sbit)|ask\s(?:me|him|her|the\sboss)\s(?:again|later|
        in\s{_TIME}|about\s{_IT})|no\sdecision|(?:hold|holding)\s{_IT}(?=\Z|\s(?:back|over|for\s(?:now|the\sboss|him|her|me|
        another)|till|until)(?!\w))|shelve\s{_IT}
    """,
    "in": rf"""
        (?:not|never|do\snot|nobody|no\s1)\s(?:(?:is|am|are|be|even|think\sof|dream\sof|going\sto|to|get\sto|get|going|
        touch)\s)*(?:{_SELLS}|{_DROPS}|letting\s{_IT}\sgoe?|let\s{_IT}\sgoe?|going\sanywhere|leaving(?:\s(?:my\ssight|here|
        this\sfarm|the\sfarm))?|for\ssale|touch(?:es|ing)?\s{_IT})|
        nobody\stouch\s{_IT}|(?:the\s)?benefit\sof\sthe\sdoubt|(?:come|coming|leave|leaving)\swith\s(?:me|us)|
        (?:stud|brood|oya)\s(?:fish|candidate|material|quality|stock)|(?:return|returned)\sto\s(?:the\s)?(?:mud|growing\s
        pond)(?:\spond)?|(?:to|as)\s(?:a\s)?(?:keep|keeper)(?=\Z|\s(?:for|on|with)(?!\w))|
(?:over\smy\sdead\sbody)|{_KEEPS}|(?:waved|wave|let|put|get|got)\s{_IT}\sthrough|keep(?=\Z|\s(?:\d|for|on|till|until|because|
as|back|at|another|1|with|anyway|and|but|though|please|then|1\smore|a|over|just|only|to\sgrow|i|we|he|she)(?!\w))|
        (?:hold|stay|staying|stayed|remain|live|living)\s(?:on\s)?(?:here|with\s(?:me|us)|in|put|where\s(?:it|she|he)\sis|
        another\s{_TIME}|(?:1|a)\s(?:more\s)?{_TIME})|
        (?:stay|staying)(?=\Z|\s(?:for|with|here|put|in|because|till|until|then|now|though|and|but|i|please|another|1|at|he|
        she|my|by)(?!\w))|
        (?:a\s)?keeper|(?:a\s)?tategoi|tateshita|kept(?=\Z|\s(?:for|on|back|in|with|by|as|at|till|until|because)(?!\w))|
        mine(?=\Z|\s
        (?:till|until|for|all|now|and|then|thank|for|please))|
        (?:in|into|to|with|among|beside|back\swith)\s{_THE}?(?:(?:growing\son|growing|grow\son|growing\sout|grow\sout|keep|
        keeper|good|best|top|better|kept|show|tategoi|select|selected|mud|favourite|
        brood|breeding|next\syear|special|a)\s)+(?:{_BOX}|pond)|(?:with|among|beside|to)\s{_THE}?(?:keeper|best|good\s1|
        select|favourite)|(?:in|into|to)\s(?:the\s)?mud|
        (?:in|into|to|for)\s(?:my|his|her|our)\s(?:own\s)?(?:pond|tank|garden|collection|house|garden\spond)|(?:for|to)\s
        (?:myself|ourselves|himself|herself)|
        (?:take|taking|have|having|send)\s{_IT}\shome(?:\swith\s(?:me|us))?|(?:come|coming|go|goe|going)\shome\swith\s(?:me|
        us)|my\sname\s(?:is\s)?on\s{_IT}|(?:2|3|1|a|big|double|another|half\sa\sdozen)\stick|ticked|(?:a\s|the\s)?(?:thumb\s
        up|nod)|not\sfor\ssale|
        (?:make|made|making|survive|survived|through|get\sthrough|got\sthrough|pass|passed)\s(?:the|this|it|to\sthe|both|2|3|
        all\sthe|every|the\s\w+)\s(?:cut|selection|sort|sorting|next\s(?:round|cut|sort|look|stage|1))|
        (?:earn|earned|deserve|deserved|get|got|worth)\s(?:itself\s|herself\s|himself\s)?(?:a|its|her|his|another|1\smore|
        the)\s(?:(?:few|good|proper|decent|more)\s)*(?:place|space|spot|winter|summer|season|year|chance|pellet|food|feed|
        keep|room)|
        worth\s(?:keeping|growing(?:\son)?|feeding|a\s(?:gamble|punt|try|go)|the\s(?:risk|wait|food|space|feed))|(?:brood|
        breeding)\s(?:stock|fish)|said\syes|say\syes|(?:yes|yeah|yep)(?=\Z)|gave\s{_IT}\sthe\snod|nodded
    """,
    "out": rf"""
        (?:not|never|no\slonger)\s(?:(?:be|to|even|going\sto|want\sto|worth|bother|bothering)\s)*(?:{_KEEPS}(?:\s(?:in|
        among)\s{_THE}?(?:{_WHICH})*{_BOX})?(?:\swith\s{_THE}?(?:good|other|best)\s{_BOX})?|keep|keeping|stay|staying|a\s
        keeper|feeding(?:\s{_IT})?|growing(?:\s{_IT})?(?:\son)?)|
        (?:not|never)\s(?:to\s)?(?:goe?|be|going|put\s{_IT}|belong)\s(?:in\s)?(?:with|among|into|in)\s{_THE}?(?:good|keeper|
        best|kept|top)(?:\s(?:{_BOX}))?|
        (?:take|taken|took|move|moved|taking)\s(?:{_IT}\s)?(?:out|away|back\sout)\s(?:of|from)\s{_THE}?(?:good|keeper|best|
        kept|top|keep)(?:\s(?:{_BOX}))?|
        you\scan\shave\s{_IT}(?:\s(?:for\s(?:free|nothing)|free))?|(?:are\s)?welcome\sto\s{_IT}|free\sto\s(?:{_WHO}|a\sgood\s
        home)|(?:ashamed|embarrassed)\sto\s(?:sell|show|keep)\s{_IT}|
        (?:out|cull|culled)\s(?:at|in|on)?\s?(?:the\s)?(?:first|second|third|1st|2nd|next)\s(?:cut|sort|look|sorting|
        selection|round)|to\sout(?=\Z)|
        no\skeeper|{_DROPS}|(?:others?|1|lot|fish)\sto\sgo|to\sgo(?=\Z|\swith)|(?:has|have|had\sbetter|must|will\shave|ought|
        need|got)\s(?:got\s)?(?:to\s)?(?:goe?|leave)(?=\Z|\s(?:then|now|i|sorry|too|out|back|for|at|in|with|by|before)(?!\w))|
        (?:in|into|to|with|among|on)\s{_THE}?(?:{_WHICH})*(?:(?:reject|cull|out|discard|waste|rubbish|bad|goodbye|culled)\s
        )(?:{_BOX})|(?:in|into)\sthe\sbin|
        (?:a\s)?(?:cull|culled|reject|rejected|discard|discarded|thrown\s(?:out|away)|binned|chucked|crossed\s(?:off|out)|
        struck\s(?:off|out)|ruled\sout|written\soff|let\sgo|turned\saway|sorted\sout|haneru|hane)(?!\s(?:a|the)\s(?!list|book|
        page|sheet))|
        (?:is\s|goe\s|go\s|going\s|it\s|stay\s|straight\s)?out(?=\Z|\s(?:it|she|he|you|then|with|on|for|because|after|now|i|
        we|again|goe|and|by|at|too|this|that|please|go|anyway)(?!\w))|
        no\s(?:good|use)(?:\s(?:for|to|as)\s(?:{_WHO}|stock|breeding|anything|show|the\sshow|this\sfarm|our\sline|here))?|
        not\s(?:for|up\sto)\s(?:me|us|{_THE}(?:line|farm|tub|pond|house|taste|standard|stock|programme))|
        (?:not|never)\s(?:having|want|take|taking)\s{_IT}(?:\s(?:in|with|among)\s{_THE}?(?:{_WHICH})*{_BOX}(?:\s
        with\s{_THE}?(?:good|other|best)\s{_BOX})?)?|not\sworth\s(?:it|a|the|its|her|his|my)(?:\s(?:\w+))?(?:\s(?:in|on|of)\s
        \w+\s\w+)?|
        (?:can|could)\snot\s(?:live\swith|keep|use|justify|stand\sbehind|defend)\s{_IT}|shook\s(?:his|her|my)\shead|shake\s
        (?:his|her|my)\shead|(?:a\s|the\s)?thumb\sdown|(?:a|another|clear|firm)\sno(?=\Z|\s(?:from|for|i|sorry|love|then|
        again)(?!\w))|with\s{_THE}?(?:{_WHICH})*(?:reject|cull|discard)|said\sno(?=\Z)|say\sno(?=\Z)|
        (?:a\s|big\s|red\s)+cross(?=\Z|\s(?:by|next|on|against|for|through)(?!\w))|(?:a\s)?line\sthrough\s{_IT}|(?:waste|
        no\sroom|
        no\splace|no\sspace)\s(?:of|for)\s(?:space|food|time|money|feed|water|room|{_IT})|away\swith\s{_IT}|
        (?:no|not\sany)\svalue|unsaleable|fail(?:ed)?\s(?:the|this)\s(?:cut|selection|sort)|(?:do|doe|did|will)\snot\s(?:make|
        pass|survive)\s(?:the|this)\s(?:cut|selection|sort)
    """,
    SOLD: rf"""
        {_SELLS}|(?:have|got|know)\s{_WHO}\s(?:who|that)\s(?:will|would|want|can)\s(?:have|take|buy|want|love|like|pay\sfor)\s
        {_IT}(?:\soff\sme)?|
        (?:somebody|someone|{_WHO})\swill\s(?:buy|take|have)\s{_IT}(?:\soff\sme)?|(?:bargain|cheap)\send(?:\sof\sthe\s\w+)?|
        to\s(?:sell|sale)(?=\Z|\s(?:at|for|in|before)(?!\w))|(?:chuck|put|pop|drop|throw|stick)\s{_IT}\sin\swith\sthe\s(?:cheap|
        cheaper|shop|sale|pond|garden)\s(?:{_BOX})|
        (?:will|would|should)\slook\s(?:nice|good|lovely|pretty|fine|great)\sin\s(?:a\s|some\s|the\s|any\s|{_WHO}\s)?{_POND}|
        sold(?=\s(?:as|for|to|in|at|by|before|with))|sell(?=\Z|\s(?:for|to|as|at|in|on|before|by|cheap|cheaply|now|soon|while|
        young|early|with|next|this|that|and|because|then|please|i|we|he|nothing)(?!\w))|
        (?:let|letting)\s{_IT}\sgoe?(?=\s(?:for|cheap|at|to\s(?!the\swater)))|(?:in|into|to|for|on|with|at|
        through)\s{_THE}?(?:{_WHICH})*(?:(?:sale|shop|market|auction|cheap|cheaper|bargain|budget|mixed|pet|dealer|trade|
        garden|raffle|hobby|export|selling|
        discount|customer|novelty|sold|for\ssale)\s)+(?:{_BOX}|stall|price|fish|man|people|trade|centre|shop)|
        (?:in|into|to|for|at|on)\s(?:the\s|a\s)?(?:shop|market|auction|sale|trade|dealer|wholesaler|garden\scentre|raffle|
        stall|export|web\sshop|online\sshop|price\slist|tombola|window)|for\ssale|
        for\s(?:a\s|some\s|the\s|any\s|an\s|{_WHO}\s)?{_POND}|(?:to|in|into)\s(?:a\s|some\s|the\s|any\s|an\s)?(?:{_WHO}\s|
        (?=(?:garden|patio|back|hobby|family|school|home|front)\s)){_POND}|(?:for|to)\s(?!(?:me|us|you|him|her|them|myself|
        ourselves|anybody|nobody)(?!\w)){_WHO}(?:\s(?:with|who|that|in)\s(?:(?:has|have|a|an|his|her|their|first|small|new|
        garden|little)\s)*{_POND})?|
        (?:make|making)\s{_WHO}\s(?:very\s|really\s|quite\s)?happy|(?:shop|pond|garden|hobby|market|pet|dealer|trade|
        bargain)\s(?:fish|quality|grade|stock|material|class)|fit\sto\ssell|fit\sfor\ssale|(?:cheap|quick|private|early|
        fast)\ssale|
        money\sin\shand|(?:will|would|should|might|can)\ssell(?=\s(?:to|in|as)(?!\w))|saleable|sellable
    """,
    "plain": rf"""
        (?:in|into|to|on|onto|from|at|by|against|next\sto|beside|off)\s(?:{_THE})?(?:{_WHICH})*{_PLACE}(?:\s\d+)?|with\s
        (?:the|my|our)\s(?:other|rest)|(?:in|at|on|before|by|from|over|for|till|until|through|to|after|since|of)\s{_TIME}(?:\s
        {_TIME})?|{_TIME}|
        (?:(?:just|only|purely|mainly|mostly)\s)*(?:on|for|because\sof|from|given|over|due\sto|thanks\sto|on\saccount\sof|
        with|despite|in\sspite\sof|no\smatter|never\smind|whatever|as|apart\sfrom|regardless\sof|forget|ignore)\s(?:{_THE})?
        (?:good|bad|poor|nice|lovely|fine)?\s?{_REASON}(?:\s(?:alone|only|itself|sake|like\sthat|like\sthis))?|
        (?:for|at)\s(?:(?:a|the|some|any|good|decent|fair|low|middle|middling|mid|high|top|nice|proper|small|bit|of|half|
        reduced|cheap|cost|little|not|much|few|real|silly|big|going|whatever|best|full|friendly)\s)*(?:price|money|song|penny|
        tenner|fiver|quid|cash|rate|profit|loss|peanut|sum|cost|it\sbring|it\sfetch)|for\s\d+|cheap|cheaply|dear|dearly|not\s
        for\s(?:money|much|a\slot)|but\snot\sfor\smuch|
        (?:oh|ooh|ah|well|now|nah|no|yes|yeah|yep|right|okay|ok|alright|so|then|and|but|or\srather|go\son|come\son|look|
        listen|sorry|anyway|though|after\sall|honestly|frankly|really|just|simply|only|also|too|again|still|even|
        actually|definitely|certainly|surely|of\scourse|for\ssure|at\sleast|for\sonce|in\sthe\send|on\sbalance|all\sin\sall|
        straight|straight\saway|right\saway|today|already|back|along|please|thank\syou|thanks|gladly|happily|
        sadly|with\s(?:regret|pleasure|a\ssmile|a\ssigh)|between\syou\sand\sme|if\syou\sask\sme|to\sbe\s(?:honest|fair)|you\s
        know|you\ssee|you\swatch|mind\syou|if\si\sam\shonest|i\sthink|i\sreckon|i\ssuppose|i\sguess|i\sfear|i\sbelieve|i\sam\s
        afraid|
        i\ssay|i\smust\ssay|(?:i\s|have\s|has\s|we\s)*changed\s(?:my|his|her|our)\smind|second\sthought|on\s(?:second|closer|
        third)\s(?:thought|look)|on\sreflection|love|darling|dear|mate|sunshine|sweetheart|my\sdear|poor\s(?:thing|girl|boy|
        love)|
        and\sthat\sis\sthat|that\sis\sthat|no\s(?:doubt|question|hurry|more|regret|argument)|without\s(?:a\sdoubt|looking|
        thinking|hesitation|regret)|nothing\smore|nothing\selse|if\s(?:only\s)?just|at\sa\spush|marginal|marginally|barely|
        just\sabout|reluctantly|grudgingly|somewhere|for\sgood|at\sonce|twice|once\smore|in\sthere|there|here|with\s(?:you|it|
        her|him|them|me|us)|long\sterm|late|together|as\s(?:an?\s)?(?:tosai|nisai|pair|single|grower|pet|character|reference)|
        as\swell|either|instead|rather|though|as\susual|by\shand|all\sthe\ssame)|
        (?:i|we|he|she|they|boss)\s(?:think|thought)|be\s(?:kind|generous|ruthless|brave|honest|strict|hard|bold|nice|fair|
        realistic|greedy|lenient|tough|careful)(?:\sand|\s(?:with|to)\s{_IT})?|
        at\s{_IT}|at\s(?:first\s)?sight|a\s(?:place|space|spot|home)|at\sthe\send|both\sof\sthem|to\sthe\s(?:left|right|side)|
        come\sand\ssee\sme|down\sas|as\sa|both|i\sreally\s(?:am|do)|from\s(?:keep|hold|sell|out|in|maybe|keeper|the\skeeper|
        the\sgood\s{_BOX}|the\smaybe)|would\syou|will\syou|hand\son\sheart|on\sto|(?:on|by|against|beside|next\sto|behind|for|
        with)\s{_IT}|the\s(?:list|book|page|sheet)|(?:written|put|noted|marked|wrote\s{_IT}|put\s{_IT})\sdown|
        (?:turned|turn|looked|look|lifted|held|put|putting|wrote|write|written|marked|mark|booked|noted|drew|move|moved|
        moving|went|go|goe|going|gone|come|came|coming|send|sent|sending|pop|popped|stick|stuck|drop|dropped|get|
        gets|got|give|gave|given|let|letting|bring|brought|tipped|carried|took|take|taken|end\sup|ended\sup|(?:turned|turn|
        looked)\s(?:it|her|him|this\s1|that\s1)\s(?:over|round|around|up\sand\sdown)|belong|join|joined|land|landed|carry|
        walk|throw|threw|slip|slid|tell|told|say|said|saying|call|called|reckon|decided|
        decide|want|like|need|asked|shout|shouted|point|pointed|sort|sorted|grade|graded|count|class|rank|vote|voted|set|lay|
        leave|left|stay|make|made|be|been|being)|
        (?:i|we|you|he|she|they|{_IT}|me|us|1|both\sof\sus)|{_BOSS}|(?:am|is|are|was|were|be|will|shall|can|would|should|must|
        may|might|has|have|do|doe|did|to|not\syet|going\sto|want\sto|let\sus|(?:had\s)?better(?=\s(?:to|keep|sell|let|put|
        wait|leave|not|take|off|out|in|with|go))|best(?=\s(?:to|keep|sell|let|put|wait|leave))|ready|happy|glad|inclined|
        tempted|afraid|minded)|(?:as|for|with)(?=\s(?:a\s)?(?:keeper|maybe|tategoi|reject|cull|out|sale|sold|unsure|undecided))
    """,
}
_PIECE = re.compile(
    r"\s?(?:" + "|".join(f"(?P<{kind}>{pieces})" for kind, pieces in _PIECES.items()) + r")(?!\w)", re.VERBOSE
)
_GOES = re.compile(
    r"\s?(?:in|into|to|for|on|with|among|out|go|goe|come|home|has|have|must|will|ought|need|got|at|through|is|"
    r"going|beside|back|straight|take|taking)(?!\w)"
)
_FEW = 2
_DENYING = frozenset({"no", "nah", "nope"})
_PEOPLE = re.compile(rf"(?:\A|\s)(?:i|we|you|they|he|she|{_BOSS.strip()})\s", re.VERBOSE)
_MOVED = re.compile(
    rf"""
        (?:put|putting|move|moved|moving|send|sent|sending|pop|popped|stick|stuck|drop|dropped|get|got|let|bring|brought|take|
        took|taking|taken|carried|tipped|
        chuck|chucked|throw|threw|slip|want|have|see|put\sback|call|mark|marked|give|gave|book|class|count|with|on|
        for)\s{_IT}(?!\w)|
        (?:\A|\s)(?:it|this|that|(?:this|that)\s(?:1|fish|girl|boy))\s(?!out)|(?:\A|\s)(?:she|he)\s(?:is|will|can|must|has|
        goe)\s(?!out)|
        (?:i|we)\s(?:say|said|vote|call|think|reckon)\s|(?:he|she|boss)\s(?:say|said|tell|told)\s
    """,
    re.VERBOSE,
)
"""That it is the fish that goes somewhere, and not who sorts it."""


@lru_cache(maxsize=4096)
def by_clause(tokens: tuple[str, ...]) -> str | None:
    """The verdict of a sentence all of whose pieces are those of verdicts: `he put it in the basin with the others to go`."""
    if len(tokens) < _FEW:
        return None
    text, at = " ".join(tokens), 0
    said: list[str] = []
    denied = False
    while at < len(text):
        found = _PIECE.match(text, at)
        if found is None or found.end() == at or found.lastgroup == "stop":
            return None
        kind = str(found.lastgroup)
        denied = denied or found.group().strip() in _DENYING
        if kind != "plain":
            said.append(kind)
            if _GOES.match(found.group()) and _PEOPLE.search(text[: found.end()]) and not _MOVED.search(text):
                return None
        at = found.end()
    verdict = _together(said)
    return None if denied and verdict == "in" else verdict  # `no buy her then`


def _together(said: list[str]) -> str | None:
    """What pieces come to that decide; None where they decide differently."""
    kinds = set(said)
    if len(kinds) == 1:
        return said[0]
    if kinds == {"out", SOLD}:
        return SOLD
    if kinds == {"in", "unsure"}:
        return "unsure"
    return None
