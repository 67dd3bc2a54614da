"""The sentences that people build around a statement: `you can see from here that …`, `… when you look from the side`.

Common English usage, no source; wordings from memory. A frame is left out only where a remark is not understood with it, and
none of them doubts, denies, wishes or foretells what stands inside of it: `I thought that`, `I can't say that`, `if` and
`I'd like to see that` are no frames.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from koirules.notes.tree import words_of_line

_IT = r"(?:it|she|he|her|him|this|that|this 1|that 1|this fish|that fish|the fish|them|they|these)"
_WHO = r"(?:i|you|we|1|anyone|anybody|everyone|everybody)"
_NOW = r"(?:(?:now|just|only|also|alway|still|really|do|clearly|plainly|certainly|immediately|already|straight away) )*"
_HERE = (
    r"(?: (?:(?:(?:straight|right|quite|very|from) )*(?:from|at|in|on|to) (?:up |over |down )?(?:here|there|above|the side|the "
    r"front|the top|top|a glance|once|the light|your eye|the door|where (?:i|you|we) (?:am|are) (?:standing|sitting|kneeling))|"
    r"clearly|plainly|easily|straight away|right away|immediately|already|yourself|for yourself|here|there|now))*"
)
_LOOKED = (
    rf"(?:look|looking|looked|watch|see|hold|holding|tip|turn|lift|pick|view)(?: (?:{_IT}|closely|close|carefully|hard|"
    r"properly|again|at|down|along|across|up|on|over|into|in|round|like this|from|the (?:side|front|top|back|light|hand|"
    r"bowl|water|net|tub|pond)|above|behind|below|on top|long enough|my hand|your hand|(?:its|her|his) (?:back|head|side|"
    r"face|mouth|tail|fin|eye|skin|body)))+"
)
_MOVES = (
    r"(?:swim|swimming|slow down|move|moving|turn|stop|rest|come up|come round|go round|goe round|goe by|swim by|swim "
    r"past|swim off|swim away|come past|breathe|cruise|hang still|lie still|stand still|is (?:swimming|moving|resting|"
    r"still|at rest))"
)
_TOLD = r"(?:say|said|point out|pointed out|tell me|told me|is telling me|keep telling me|is saying|alway say)"
_FOLK = (
    r"(?:(?:my|the|our|his|her) )?(?:old |young )?(?:dad|mum|father|mother|boss|wife|husband|missus|brother|sister|uncle|aunt|"
    r"partner|mate|helper|lad|girl|dealer|breeder|judge|vet|neighbour|friend|man|grandad|son|daughter)"
)
_FEELING = r"(?:bother|worry|please|annoy|trouble|surprise|strike|disappoint|concern|delight|puzzle|upset|irritate|amaze|get|put)"
_MIND = (
    r"(?:glad|happy|pleased|sorry|delighted|relieved|surprised|disappointed|afraid|sad|worried|annoyed|thrilled|impressed|"
    r"amazed|not surprised)"
)
_THING = (
    r"(?:thing|worry|complaint|problem|trouble|concern|criticism|fault|flaw|snag|weakness|weak point|weak spot|gripe|niggle|"
    r"quibble|regret|drawback|downside|plus|strength|strong point|good point|bad point|point|surprise|reason|bit|part|feature|"
    r"saving grace|let down|objection|issue|catch)"
)
_OF_THING = (
    r"(?: (?:wrong|i would say|i can say|i have to say|i see|i notice|i noticed|i like|i love|i do not like|i dislike|i hate|"
    rf"i would change|i can find|that {_FEELING} me|against {_IT}|about {_IT}|with {_IT}|for me|here|for {_IT}|really|though|"
    rf"in (?:its|her|his) (?:favour|disfavour)|to (?:say|mention|note|notice|point out)|worth (?:saying|mentioning)|"
    r"i (?:have|would have)(?: got)?|of (?:its|hers|his)))*"
)
_BE = r"(?:is|are|was|(?:would|must|has to) be(?= that))"
_THAT = r"(?: (?:that )?(?:there is|there are|(?:it|she|he) (?:is|has)(?: got)?)| that| how)?"
_NOUN = (
    r"(?:(?:the|her|his|its|this|that) )?(?:body|shape|frame|build|head|face|mouth|skin|white|shiroji|shine|lustre|tail "
    r"stem|tail|shoulder|spine|back|belly|fin|pectoral|pec|dorsal|health|swimming|eye|gill|pattern|red|kiwa|edge|size|"
    r"impression|quality|conformation|outline|balance|colour)"
)
_OPENERS = (
    # Seen by whoever is there.
    rf"{_WHO} (?:can |could |do |will )?{_NOW}(?:see|notice|spot|tell){_HERE}(?: that| how| there is| there are)?",
    rf"{_WHO} (?:have )?(?:only )?(?:just|now) (?:noticed|spotted|seen)(?: that| how| there is| there are)?",
    (
        rf"(?:from|at|on|in) (?:up |over )?(?:here|above|the side|where i (?:am|is) (?:standing|sitting|kneeling)|this angle) "
        rf"{_WHO} (?:can )?{_NOW}(?:see|notice|tell)(?: that| how)?"
    ),
    r"(?:from|on) (?:where i am (?:standing|sitting|kneeling)|closer (?:inspection|look)|a (?:closer|second|proper) look)",
    (
        rf"(?:(?:if|when|whenever|once|as soon as|the moment|every time) {_WHO} )?{_LOOKED} (?:and )?(?:then )?{_WHO} "
        rf"(?:can |will ){_NOW}(?:see|notice|spot|tell|find)(?: that| how)?"
    ),
    (
        rf"(?:if|when|whenever|once|as soon as|the moment|every time) (?:it|she|he) {_MOVES} {_WHO} (?:can |will )?{_NOW}"
        r"(?:see|notice|tell)(?: that| how)?"
    ),
    rf"(?:if|when|whenever|once|now|now that|as soon as) {_WHO} {_LOOKED}",
    (
        rf"now(?: that)? (?:i|we) have (?:got )?{_IT} (?:in|on|out|under|here|up)(?: (?:my|the|a|of|front|me|hand|bowl|tub|water|"
        r"board|light|net|here))*"
    ),
    (
        r"now(?: that)? (?:it|she|he) is (?:in|on|out|under|lying|resting|still|here|up)(?: (?:my|the|a|of|still|hand|"
        r"bowl|tub|water|board|light|net|here))*"
    ),
    rf"take (?:a|another) (?:close |closer |good |proper )?look at {_IT}(?: from (?:above|the (?:side|front|top)))? and",
    r"(?:do|can|have|did) you (?:see|notice|noticed|seen|spot)(?: that| how)",
    # What it is among the things that there are to say.
    (
        r"(?:(?:and|but|so|well|right|okay|then|now|also) )*(?:(?:my|the|a|1|another|1 of the) )?(?:(?:only|1|main|big|"
        r"biggest|real|first|second|third|next|last|other|great|small|little|single|best|worst|good|bad) "
        rf")*{_THING}{_OF_THING} {_BE}{_THAT}"
    ),
    (
        rf"what (?:i|we|you) (?:do |really |alway |also |do not |do not really |can not )*(?:like|love|hate|dislike|mind|notice|"
        rf"noticed|see|appreciate|admire|care for|stand|enjoy)(?: (?:most|best|least|about {_IT}|in {_IT}|here|"
        rf"first|with {_IT}))* {_BE}{_THAT}"
    ),
    (
        rf"(?:what|the (?:only )?thing that) (?:really |also |alway )*(?:{_FEELING}(?: me| you)|spoil {_IT}|let {_IT} down|ruin "
        rf"{_IT}|make {_IT}|save {_IT}|sell {_IT}|catch my eye|stand out)(?: (?:most|about {_IT}|with {_IT}|here|for me|first|"
        rf"off))* {_BE}{_THAT}"
    ),
    rf"(?:it|that) (?:really |alway |do |doe )?{_FEELING} me (?:a bit |a little )?that",
    rf"i (?:am|was) (?:so |very |quite |really |a bit )*{_MIND} (?:to (?:see|say|note|find)|that)(?: that| there is)?",
    (
        r"(?:(?:and|but) )?(?:there is )?no (?:getting away from|denying|hiding|doubting|escaping|arguing with|getting "
        r"round)(?: the fact| it)?(?: that)?"
    ),
    r"(?:(?:and|but) )?(?:then )?(?:there is )?the fact (?:is )?(?:that)?",
    r"i can not (?:help (?:but )?(?:noticing|seeing|notice|see)|ignore|overlook|get past|deny|hide)(?: the fact)? that",
    r"(?:i|we|you) (?:would |will |must |do )?have to (?:say|admit|confess|note|tell you)(?: that)?",
    r"(?:it|that) (?:has to|must|should) be (?:said|noted|admitted|mentioned)(?: that)?",
    r"(?:as|like|the way) (?:i|we) see it",
    r"to my way of (?:thinking|seeing)",
    r"at first (?:i|we) did not (?:notice|see)(?: it| that)? but",
    r"i had not (?:noticed|seen)(?: it| that)?(?: before| at first| till now)? but",
    (
        r"i (?:know|see|understand|realise) (?:it|she|he) is (?:only |still |just )*(?:a )?(?:young|small|little|tosai|"
        r"baby|early)(?: yet)? but"
    ),
    r"say what you (?:like|will|want)(?: but| about (?:it|her|him)(?: but)?)?",
    r"(?:do not (?:ask me|know) why but|for (?:all|whatever) (?:the|its|her|his) good points?)",
    r"(?:pretty|nice|good|lovely|fine|young|small|big|handsome) as (?:it|she|he) (?:is|may be)",
    r"(?:he|she|they) (?:alway )?(?:say|tell me|is saying|are saying|is telling me|keep telling me|point out)(?: that)?",
    rf"{_FOLK} {_NOW}(?:{_TOLD}(?: to me)?(?: that)?|(?:noticed|notice|spot|spotted) that)",
    (
        r"(?:(?:well|right|okay|so|and|now) )*(?:to (?:start|begin|kick) (?:off )?with|to start off(?: with)?|first "
        r"(?:thing|off|up|of all)|for a start|for starters|second(?:ly)?|next thing|same as (?:i said )?before|like i "
        r"said before|also worth (?:saying|noting|mentioning)(?: that| is)?)"
    ),
    r"not only that but",
    (
        r"(?:also )?(?:i (?:would|will|should|might as well|want to|have to) )?(?:just |also |only )*(?:add|mention|"
        r"note|point out|write|put|record|stress|remark|observe)(?: (?:down|here|it down))?(?: the fact)? that"
    ),
    r"(?:please )?(?:write|put|note|jot|get|mark)(?: (?:it|this))? down(?: that)?",
    r"(?:make|take) a note(?: here)?(?: that)?",
    r"just so (?:you|we) (?:know|are clear)",
    (
        r"(?:it|that) is (?:true|a fact|plain|clear|obvious|a pity|a shame|good|nice|lovely|sad|great|too bad|"
        r"unfortunate|a relief)(?: to see)?(?: that| how)"
    ),
    r"too bad(?: that| about)?",
    (
        r"(?:it|she|he|this|that|this 1|that 1) is (?:just |really |simply )*(?:a|1|1 of those|the sort of|the kind of|such a) ?"
        r"(?:(?:nice|lovely|good|fine|poor|young|little|pretty|big|proper|real) )*(?:fish|girl|boy|lady|female|male|thing|koi|"
        r"tosai|1) (?:that|which|who)(?: is| has)?"
    ),
    r"(?:in|on) (?:good|strong|poor|bright|this|that) light",
    rf"(?:when|whenever|while|as|once) (?:it|she|he) {_MOVES}",
    (
        r"for (?:such )?an? (?:(?:such|so|very|really|big|small|young|little|large|long|heavy|fat|slim|nice|good) )+(?:a "
        r")?(?:fish|tosai|koi|girl|boy|lady|lad|1)(?: (?:of|like) (?:that|this|its|her|his)(?: (?:age|size|length))?)?"
    ),
    rf"(?:as far as (?:{_NOUN}) (?:goe|go|is concerned)|when it come to (?:{_NOUN})|in terms of (?:{_NOUN}))",
    r"i (?:do |really |do not |do not really |must say i )*(?:like|love|hate|dislike|enjoy|admire) (?:the way|how)",
    r"(?:judging|going|to go|to judge) (?:by|from) (?:the|that|her|his|its|this) \w+",
    r"(?:now|right|okay|so|well)(?: then)?(?: now)? (?:where were we|let us see|let me see|let me think|what have we got)",
)
"""What may stand before a statement."""
_JUDGED = (
    r"(?:a (?:real |bit of a |great |big |small |serious |shame )*(?:fault|shame|pity|worry|problem|plus|relief|bonus|"
    r"joy|nuisance|blow|surprise|concern|pain|minus|treat|good thing|bad thing|good sign|bad sign|disappointment)|"
    r"(?:never|alway) (?:good|a (?:good|bad) sign)(?: to see)?|(?:not )?(?:good|great|nice|bad|fine|ideal|lovely|sad|"
    r"unusual|rare|annoying|unfortunate|worrying|promising|encouraging|disappointing|pleasing)(?: (?:news|enough|at all|"
    r"to see|for (?:a|its) (?:tosai|age)))?|the (?:trouble|problem|truth|worry|main thing|shame|pity|fault|snag|catch|"
    r"case)(?: with (?:it|her|him))?|all (?:there is to it|right with me)|what (?:i|we|you) (?:want|like|look for|pay "
    rf"for|are after|am after|do not want|do not like|hate|love)(?: to see)?|what (?:really )?{_FEELING} me|why i "
    r"(?:like|love) (?:it|her|him)|my (?:problem|worry|trouble|only worry|concern)(?: with (?:it|her|him))?|no (?:big "
    r"deal|bad thing|good|disaster|surprise)|how it is|the way it is|life|that)"
)
_CLOSERS = (
    # `when you look at it from above`
    rf"(?:when|whenever|if|once|every time|each time|the moment|as soon as|as) {_WHO} {_LOOKED}",
    (
        rf"(?:when|whenever|while|as|every time|each time) (?:it|she|he) {_MOVES}(?: (?:about|around|round|off|away|past|"
        r"by|along|up|slowly|gently|like that|like this|in the bowl|in the tub))*"
    ),
    (
        r"(?:however|whichever way|no matter how|any way|from whichever side) (?:long |hard |often |close |closely |much )?"
        rf"{_WHO} (?:look|watch|turn|hold|see|view)(?: (?:at|on|{_IT}|round|about))*"
    ),
    rf"(?:(?:and|but|so) {_IT}|which|{_IT}) (?:is|was) {_JUDGED}",
    (
        rf"(?:and|which|that|and that) (?:do |doe |did |really |alway |rather |alway )*(?:{_FEELING} me(?: (?:a bit|a "
        r"lot|a little|no end|off))?|please the eye)"
    ),
    (
        r"(?:and |which |that |but )(?:i|we|you) (?:do not |do |really |alway |never |rather |can not |could |certainly |quite )*"
        r"(?:like|love|hate|mind|care for|want|wanted|enjoy|appreciate|admire|look for|like to see|want to see|love to see|"
        r"live with|forgive|fault|stand|dislike|trust)(?: (?:it|that|at all|much|to see))*"
    ),
    (
        r"(?:and )?(?:i|you|we) (?:can |could |had |have )*(?:not )?(?:see|saw|seen|noticed|notice|spotted|spot|said)(?: (?:it|"
        r"that))?(?: (?:before|right away|straight away|at once|from here|coming|till now|until now|first time round|earlier|"
        r"already))+"
    ),
    (
        r"(?:that )?(?:i|we) (?:had not|did not|have only just|have just|only just|just) (?:notice|noticed|spotted|spot|seen|saw)"
        r"(?: (?:before|at first|until now|till now|earlier|first time))*"
    ),
    (
        r"(?:as|like) (?:you|anyone|anybody|everyone|everybody|we all|i|we) (?:can |could |will )?(?:see|tell|thought|expected|"
        r"suspected|feared|hoped|said)(?: (?:before|from here|already|for yourself))?"
    ),
    r"as far as i (?:am|is) concerned",
    (
        r"(?:and|which) (?:i |that is )?(?:mean|meant)(?: that| it)? (?:kindly|nicely|as a compliment|well)|"
        r"from where i (?:am|stand|sit|kneel)(?: (?:standing|sitting|kneeling))?"
    ),
    r"(?:in|of|from|out of) (?:the|this|that|our) (?:batch|lot|spawning|family)",
    r"for (?:this|that|the|our) (?:spawning|line|family|batch|pair|breeder|show)",
    r"since (?:we|i|they|the boss) (?:[a-z]+)(?: (?:it|her|him|here|in|over|out|up|back|from|the|pond|mud|tub|bag))*",
    r"but (?:no|nothing|not) more(?: than that)?|but that is (?:all|about it|as far as it goe)",
    (
        r"but (?:it|they|that) will (?:be back|come back|grow back|be fine|be all right|mend|"
        r"heal|grow again|be gone)(?: (?:by|in|"
        r"before|next|within|after) .*| soon| again| over)?"
    ),
    (
        r"but (?:they|it|most|these|those) (?:all |alway |usually |often )*(?:do|are|is|does|doe|start like that|look like that)"
        r"(?: (?:at (?:this|that) (?:age|size|stage)|at first|when (?:young|small|they are (?:young|small))|like that))*"
    ),
    r"(?:for|to) (?:my|our|his|her|your|the boss) (?:liking|taste|mind)",
    r"when(?:ever)? the (?:sun|light|lamp) (?:catch|hit|come out|fall on|is on|get on|strike)(?: (?:it|her|him|them|the skin))?",
    r"if i (?:tried|wanted to)|at some point",
    r"(?:and )?(?:i )?(?:do not know|can not say|could not say|can not tell you|do not ask me) why",
    r"(?:am i|are we) right|okay then",
    r"if (?:that|it) make any sense",
    r"if (?:you|they) (?:want|ask for|like) (?:my|an honest|an) (?:honest )?opinion|in my (?:humble|honest) opinion",
    r"let me put it (?:that way|like that|this way)",
    r"(?:and )?(?:nobody|no 1|you) can (?:not )?(?:deny|argue with|fault|complain about) (?:that|it)",
    (
        r"(?:so|and|but) (?:i am|we are) (?:very |quite |really |not |not very )*(?:happy|pleased|delighted|content|sorry|sad|"
        r"worried|disappointed|glad|relieved)(?: (?:with|about) (?:it|that))?"
    ),
    (
        r"(?:so|and) (?:full|top|high) marks (?:there|for that)|(?:so|and) (?:no|i have no) (?:complaints?|worries|"
        r"trouble|problem)(?: (?:there|about that|on that score|from me))?"
    ),
    (
        r"but (?:i|we|you) can (?:live with|forgive|overlook|put up with|work with) (?:that|it)|but (?:it|that) is (?:no big "
        r"deal|not the end of the world|nothing serious|how it is|life|nothing to worry about)|but what can (?:you|1) do|but "
        r"there you (?:are|go)|but nobody is perfect|but (?:you|i|we) can not have everything"
    ),
    (
        r"at this (?:moment|stage|point|time of (?:the )?year)|even (?:now|so|at this (?:age|size|stage)|today|still)|right now|"
        r"just now|this minute|as we speak"
    ),
    (
        r"(?:(?:just |exactly |much |same )*(?:like|as) )(?:all|most|the rest|so many) of (?:them|this line|this batch|these|"
        r"this lot)|(?:just |exactly )?like (?:its|her|his) (?:mother|father|parents?|mum|dad)(?: was| is| had| has)?"
    ),
    r"for (?:what|the price|what) (?:i am after|i want|you are after|we want|i need|you pay)",
    r"(?:given|seeing|considering) (?:how|that) (?:young|small|little|early|big|old) (?:it|she|he) is",
    r"i (?:am|is) (?:afraid|sorry|happy|glad|pleased|delighted) to (?:say|see|report|admit|tell you)",
    (
        r"(?:really |just |a bit |rather |quite )*(?:spoil|ruin|kill|mar|let) (?:it|her|him|the (?:fish|whole thing|"
        r"look|lot|whole fish|picture))(?: down)?(?: (?:for me|a bit|a little|completely|rather))*"
    ),
    (
        r"(?:and )?(?:that|which) (?:really |just |a bit |rather |quite )*(?:spoil|ruin|kill|mar|let) (?:it|her|him|the (?:fish|"
        r"whole thing|look|lot|whole fish|picture))(?: down)?(?: (?:for me|a bit|a little|completely|rather))*"
    ),
    r"(?:that|which) i (?:never|do not|really) (?:like|care|want|enjoy|love)(?: to see| for| much)*",
    r"(?:on|about|with) (?:this|that) (?:1|fish|girl|boy|lady|fellow|young lady|lad)",
    r"(?:without|with) (?:any|no|the slightest|hardly any) (?:effort|trouble|bother|problem|difficulty)(?: at all)?",
    r"(?:for|to) (?:its|her|his|this|my|our|your) (?:credit|shame)",
    r"(?:since|from) (?:the )?(?:last|first) (?:time|look)(?: (?:i|we) (?:looked|saw|had) (?:it|her|him))?",
)
"""What may stand behind a statement."""
_TOPIC = re.compile(
    rf"(?:as far as (?P<a>{_NOUN}) (?:goe|go|is concerned)|when it come to (?P<b>{_NOUN})|in terms of (?P<c>{_NOUN})|"
    rf"(?P<d>{_NOUN}) wise) (?:(?:it|she|he|this 1|that 1) (?:is|look|seem) |(?:it|she|he|this 1|that 1) has got |i "
    r"(?:would )?(?:call|find) (?:it|her|him) )?"
    r"(?P<rest>(?!(?:there|i|you|we|no|she|he|it|has|nothing)\b)\S+(?: \S+)?(?: \S+)?(?: \S+)?)\Z"
)
_DOES_NOT_LOOK = re.compile(
    r"(?:just |really |simply )*(?:do|doe) not (?:quite |really |even |exactly )?(?:look|seem|"
    r"appear)(?: to be)? (?!at|like|for|as|good in)"
)
_MORE_OF = re.compile(
    r"(?:i )?would (?:have )?(?:like|liked|love|loved|prefer|want|wish)(?: to (?:see|have))? (?:(?:a bit|a little|a lot|"
    r"much|some) )?more (?=\S)"
)
_PUT_OTHERWISE = (
    (
        re.compile(
            r"^(?!.*\b(?:not|no|never|hardly|nothing|none|without)\b)(.*?)\b(?:perfectly|completely|absolutely|"
            r"totally) "
        ),
        r"\1",
    ),
    (re.compile(r"\bhas not been (?=\w+ing\b)"), "is not "),
    (re.compile(r"\b(?:all )?present and correct\b"), "all there"),
    (re.compile(r"\bput together like an?(?: little| small| proper| real)*\b"), "built like a"),
    (
        re.compile(
            r" and (?:it|they) (?:is|are|sit|lie)(?: right| just| all)* (?=(?:on|at|by|near|behind|under|over|in|before|above)\b)"
        ),
        " ",
    ),
)
"""What is said in one way and in another."""
_BENDING = words_of_line(
    "bend bends bent curve curved fold folded flat clamp clamped open close closed wide move moves stop if would were"
)
"""What a sound fish does with its body, its fins or its mouth as it swims or turns."""
_STRUGGLING = _BENDING | words_of_line(
    "stiff curl curls breathe breathes breathing gasp gasps pant pants struggle jump limp"
)
"""What it does in the hand."""
_OPENER = re.compile(rf"(?:(?:{'|'.join(f'(?:{each})' for each in _OPENERS)}) )(?=\S)")
_CLOSER = re.compile(rf"(?<=\S) (?:{'|'.join(f'(?:{each})' for each in _CLOSERS)})\Z")
_OF_HOLDING = re.compile(
    rf" (?:when|whenever|while|as|once|if|every time|each time|the moment|as soon as) {_WHO} (?:hold|holding|tip|turn|lift|pick)"
)
_OF_MOVING = re.compile(rf" (?:when|whenever|while|as|every time|each time) (?:it|she|he) {_MOVES}")
_NO_STATEMENTS = words_of_line("if whether wish thought wonder unless might would")


def past_frame(tokens: Sequence[str]) -> int:
    """The place behind the frame that tokens begin with; 0 where they begin with none."""
    found = _OPENER.match(" ".join(tokens))
    size = 0 if found is None else len(found.group().split())
    if found is not None and _OF_MOVING.match(f" {found.group()}") and not _BENDING.isdisjoint(tokens[size:]):
        return 0
    return size if size < len(tokens) and tokens[size] not in _NO_STATEMENTS else 0


def before_frame(tokens: Sequence[str]) -> int:
    """The place before the frame that tokens end with; 0 where they end with none."""
    text = " ".join(tokens)
    found = _CLOSER.search(text)
    if found is None:
        return 0
    size, frame = len(text[: found.start()].split()), text[found.start() :]
    moving = (_OF_MOVING.match(frame), _BENDING), (_OF_HOLDING.match(frame), _STRUGGLING)
    return 0 if any(form and not words.isdisjoint(tokens[:size]) for form, words in moving) else size


def reworded(tokens: Sequence[str]) -> Iterator[tuple[str, ...]]:
    """What says the same in fewer or plainer words: `as far as the skin goes she's dull`, `doesn't look straight`."""
    text = " ".join(tokens)
    for form, instead in _PUT_OTHERWISE:
        if (said := form.sub(instead, text, count=1)) != text:
            yield tuple(said.split())
    topic = _TOPIC.match(text)
    if topic is not None:
        noun = next(topic[name] for name in "abcd" if topic[name])
        yield (*noun.split(), "is", *topic["rest"].split())
    if (seen := _DOES_NOT_LOOK.search(text)) is not None and seen.start():
        yield tuple(f"{text[: seen.start()]}is not {text[seen.end() :]}".split())
    if (more := _MORE_OF.match(text)) is not None:
        yield ("could", "do", "with", "more", *text[more.end() :].split())
