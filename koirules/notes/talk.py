"""What sorters say that is no reading: talk, asides, and what the people at the tub say and do.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import pairwise

from koirules.notes.hedges import HEDGES, OPINIONS, without
from koirules.notes.tree import SKIPPED, bare
from koirules.vocabulary.phrases import spread
from koirules.vocabulary.wordings import tokens_of

_TALK = frozenset(
    spread(
        """
            short and sweet, plain sailing, good grief, fat chance, thin ice, thick and fast, dead easy, dead right, light work,
            heavy going, clean slate, sharp practice, tight fit, hard luck, soft spot for (it|her|him|this one), in good time,
            even money, in the dark, a dark horse, in a good light,
            high time, long story, long time no see, big deal, small world, small mercies, thank heaven for small mercies,
            nah, (oh |ooh |)go on( then|), let us not (fool|kid) ourselves, you watch, you watch and see, mark my words,
            ooh, oho, oh, ah, aha, ha, haha, ahem, mm, mmm, hmm, phew, gosh, blimey, crikey, dear me, oh dear( me|),
            (my |)goodness( me|), my my, well well( well|), right then, here we go, (now |)let us see( now|), now then,
            now we are talking, (would you |)look at (that|you|her|him|it),
            (oh |)(hello|hey) (you|there|again|gorgeous|beautiful|handsome), come here( you|), hold still( you|),
            stop (wriggling|jumping|splashing|it|that), there (we are|we go|you are|you go), what a (pity|shame),
            (a |)(pity|shame)( that| about that| really|), such a (pity|shame),
            poor (thing|little thing|old thing|girl|boy|love|soul), never mind( that|),
            doesn't (bother|worry) me( much| at all|)( that|), that doesn't (bother|worry) me( much|),
            not the end of the world, i (do not|can) mind( that|), no matter, that is all( for this one| there is|),
            that is it( really|),
            (that is|it is|which is|all|) (perfectly |quite |only |)(normal|natural|usual|to be expected|as expected|par for
            the course)( at this age| for the age| at this stage|),
            nothing (else|more)( to say| to report| to note| to add|),
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
          (?:it\s|she\s|he\s|that\s(?:1\s)?|this\s(?:1\s)?)?(?:would|will|should|might|could|may)\s(?:easily\s|always\s|
          still\s|never\s)?sell\s(?:for|at)\s(?:a\s)?(?:good|fair|decent|high|low|top|silly|nice|proper|big|small|lot|lot\sof|
          great)\s?(?:price|money|sum)?|
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
          on\s{_THIS})?|
          (?:price|sell|priced)\s(?:it\s)?by\s(?:size|weight|length|the\s(?:cm|centimetre|inch|kilo|kg))|(?:a\s)?(?:bargain|
          steal|(?:good|easy|quick|steady|poor|slow)\sseller)|(?:that\sis\s|this\sis\s)?my\s(?:pension|holiday|retirement|
          fortune)
          (?:\s(?:in\sthere|right\sthere|that\sis|this\s1))*|(?:i\s)?would\s(?:happily\s|gladly\s)?(?:have|take)\s(?:\d+|a\s
          dozen|more|a\stub\sfull)\sof\s(?:those|these|them|that)|
          (?:that\sis\s|it\sis\s)?(?:a\s)?{_CASH}\sworth(?:\sof\s\w+)?|(?:hand\son\sheart\s)?(?:i\s)?(?:would|could|will|
          can)\s(?:not\s)?(?:want|ask|charge|pay|give|take)\s(?:(?:at\sleast|at\smost|no\smore\sthan|
          no\sless\sthan|more\sthan|less\sthan|up\sto|over|under|about|only)\s)*\d+(?:\s{_CASH})?(?:\sfor\s{_THIS})?|
          (?:i|you|we|it|that|she|he)\s(?:will|would)\snot\s(?:get|make\s(?:me|you|us|anyone|anybody))\srich(?:\s(?:on|with|
          from)\s{_THIS})?|
          (?:i\s)?(?:can\snot|do\snot|could\snot)\ssee\s(?:anybody|anyone|somebody|people|them)\s(?:paying|handing\sover|
          giving|parting\swith|spending)\s.*
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
    if _OF_THE_PAST.fullmatch(" ".join(tokens)) is not None:
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
    if any(pattern.fullmatch(text) is not None for pattern in (_OF_WORTH, _OF_LIKING)):
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
        "wait treat salt dip scrape heat ask scratch disease wound isolate ill improve develop fill last hold turn turned "
        "change become colour rest other "
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


_MANY = 40
"""So many words are no talk: nobody says them in one breath."""


def is_of_people(tokens: tuple[str, ...], knows: Callable[[str], bool]) -> bool:
    """Whether a remark speaks of people, and no word of it is one that is said of a fish: `that took me by surprise`.

    knows: whether a phrase or a name has a word by itself.
    """
    tokens = without(without(tokens, HEDGES)[0], OPINIONS)[0]
    people = {word for ahead, word in pairwise(("", *tokens)) if ahead not in {"for", "to"}}
    if (
        not 2 < len(tokens) < _MANY
        or _PEOPLE.isdisjoint((word,) for word in people)
        or ("my", "hand") in pairwise(tokens)
    ):
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
