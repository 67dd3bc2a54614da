"""Remarks that set a fish beside another one: `better than 12`, `like the one before`, `longest so far`.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re

from koirules.notes.numbers import number_at
from koirules.vocabulary.wordings import tokens_of

_COMPARATIVE = re.compile(
    r"(?:better|worse|longer|shorter|bigger|smaller|slimmer|heavier|lighter|darker|redder|whiter|wider|narrower|thicker|thinner|"
    r"sharper|softer|cleaner|stronger|weaker|finer|broader|deeper|paler|higher|lower|nicer|fuller|rounder|smoother|poorer|"
    r"duller|fatter|plumper|brighter|neater|richer|straighter|younger|older|plainer|flatter|rougher|squarer|"
    r"[a-z]{3,}ier|more|less|le)\Z"
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
_ONE_OF_THE_BEST = re.compile(
    r"(?:(?:it|she|he|this 1|that 1) (?:is )?)?1 of the (?:very )?(?:best|better|worst|worse|nicest|nicer|poorer|poorest)"
    r"(?: (?:1|one|fish|so far|here|today|in here|of the (?:lot|tub|day|batch)|of (?:them|these|those)))*"
)
_COMPARES = re.compile(
    rf"\bthan\s(?:in\s|on\s|with\s|for\s)?{_ANOTHER}|\b(?:compared\s(?:to|with)|"
    rf"same\s(?:\w+\s)?(?:as|like)|similar\sto|reminds?\sme\sof|"
    rf"(?:twin|sister|brother|copy|double|image|spit)\s(?:of|to))"
    rf"\s{_ANOTHER}|\b(?:as|so)\s\w+\s(?:\w+\s)?as\s{_ANOTHER}|{_LIKE}{_ANOTHER}|"
    rf"^(?:nearly |almost |just )?(?:good|nice|clean|strong|long|big|sharp|white|broad) as {_ANOTHER}|"
    rf"{_LIKE}(?:that|this|the (?:big|small)) (?:one|1|fish)|"
    r"\b(?:had|saw|seen|kept|sold|bred) (?:a |an )?(?:one|1|another|fish) (?:just |exactly )?like (?:this|that|it|her|him)\b|"
    r"^as \d+ (?:but|only|with|without)\b|^no (?:better|worse) (?:and|or|nor) (?:no )?(?:worse|better)\Z|"
    r"^\w{3,}er from (?:the )?(?:other|rest)|"
    r"\b(?:like|as) (?:\d+|all (?:the )?|(?:so )?many|most|every|dozen of|hundred of|load of|half the) ?(?:of )?(?:the "
    r")?(?:other|rest|them)\b|"
    r"^\w+ (?:is |are )?(?:\w+ )?\w{3,}er than (?:this|that)\Z|"
    r"^(?:\w+ ){0,4}the (?:twin|double|spit|spitting image|copy|image|match) of\b|"
    r"^(?:you|we|i) (?:do not|never|hardly ever|rarely) (?:get|see|find) (?:many|a lot|too many|1)(?: of (?:them|those|"
    r"these|that))?(?: like (?:that|this|it))?(?: these day)?\Z|"
    r"^(?:the |almost the |nearly the )?same (?:(?:\d+|patch|step|pattern|spot|colour|tone|head|red|white|shape|edge|"
    r"big|small) ){1,3}(?:in the same (?:place|spot|way)|as before)\b"
)
"""What one fish is compared with: another one, and not what its colour is like."""
_MOST = re.compile(
    r"(?:^|\b(?:the|is|of|so)\s)(?:\w{3,}est|best|worst|nicest|most \w+|least \w+)"
    r"(?:\s(?:1|one|fish|head|skin|body|red|white|black|pattern))?\s"
    r"(?:so\sfar|yet|(?:till|until|up\sto)\s(?:now|here|today)|to\sdate|today|this\smorning|of\stoday|"
    r"(?:(?:of|in|among)\s(?:the|this|all|my)\s(?:lot|tub|batch|bunch|tank|bowl|net|bag|box|delivery|load|crop|them|"
    r"others|pond|row|year|vat|other))|"
    r"of\sthem\sall|of\sall|(?:in\s)?here|now|after\s(?:fish\s|number\s)?\d+|(?:that\s)?(?:i|we)\s(?:have\s)?(?:seen|had|"
    r"done|caught|netted|measured|held)"
    r"(?:\stoday|\sso\sfar|\syet|\sthis\s(?:morning|year|week))?|"
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


_PAID = frozenset(tokens_of("charge pay ask spend fetch cost quid"))

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


_N = (
    r"(?:(?:fish |number |no )?\d+(?! (?:cm|mm|g|kg|%|scale|finger|row|step|patch|spot|dot|speck|place))|(?:the )?(?:last|"
    r"first|second|third|previous) (?:1|2|3|fish)|the last|the first|the 1 before|the others?|(?:its|her|his) (?:sister|brother|"
    r"sibling|mate)|the (?:rest|pack|crowd|bunch|lot|herd)|(?:the )?number \d+)"
)
_A_FISH = (
    r"(?:(?:fish |number |no )\d+|(?:[5-9]|\d\d+)(?! (?:cm|mm|g|kg|%|scale|finger|row))|(?:its|her|his) (?:sister|brother|"
    r"sibling|mate)|the (?:rest|pack|crowd|bunch|lot|herd|others?))"
)
_BESIDE_ANOTHER = re.compile(
    rf"(?:(?:and|but|so|well|now|then|between you and me|honestly) )*(?:"
    rf"(?:i )?(?:would |will |do )?(?:rather |much |sooner )*(?:take|have|pick|choose|prefer|keep|want|buy|put|rank|rate|place) "
    rf"(?:this|that|it|her|him|this 1|that 1)? ?(?:over|above|before|ahead of|instead of|to|below|behind|under|with|next to|"
    rf"beside|among) {_N}(?: (?:and|or) {_N})*(?: (?:any day|every time|i think|please))?|"
    rf"(?:i )?(?:do |still |much |rather |really )*(?:prefer|preferred|liked) {_N}(?: (?:better|more|though|best))*|"
    rf"(?:(?:quite|just|exactly|almost|nearly|more or less|pretty much|rather|very much|it is|this is) )*the (?:opposite|"
    rf"reverse|mirror image|twin|spit|image|double|equal|match) (?:of|to) {_N}|"
    rf"(?:(?:just|only|well|a bit|a good bit|a long way|far|way|way|somewhat|not far|1|2|3|a notch|a touch|a step|street|"
    rf"mile|still|it is|she is|he is) )*"
    rf"(?:behind|ahead of|up there with|on a par with|second to|next to|closest to) {_A_FISH}(?: (?:by .*|for \w+|in \w+|i "
    rf"think|it shows?))?|"
    rf"(?:(?:it|she|he|this|this 1|that|easily|nearly|almost|will|would|could|just|really|probably) )*(?:beat|edge|outdo|"
    rf"outshine|match|rival|top|run|equal)s? {_N}(?: (?:close|easily|by .*|for \w+|on \w+|hollow|hand down|any day))?|"
    rf"(?:(?:not|just|only|nearly|almost) )*(?:in the same (?:league|class) as|in a different (?:league|class) (?:to|from|"
    rf"than)) {_N}|(?:but |and )?next to {_N} (?:it|she|he) (?:shows?|look? \w+|is \w+)|"
    rf"(?:not (?:a patch|as good) (?:on|as)|nothing (?:on|like)|no match for|no (?:better|worse) than|unlike|nowhere near) {_N}|"
    rf"(?:(?:could|might|may|must|it|is|this|she|he|be|look like|almost|nearly) )*{_N} (?:sister|brother|twin|double|all "
    rf"over again)(?: (?:but|only) .*)?|"
    rf"(?:a|an) (?:bit |little |slightly |much )?(?:smaller|bigger|better|worse|poor man|cheaper|longer|shorter|paler|redder|"
    rf"stronger|weaker|slimmer|heavier|lighter|whiter|blurred|clean|tidier|neater|poorer|finer) {_N}|"
    rf"(?:the )?(?:smaller|bigger|better|worse|longer|shorter|paler|redder|stronger|weaker) (?:brother|sister|twin) of {_N}|"
    rf"(?:swap|trade) (?:it|her|him|this|this 1) for {_N}|(?:put|leave|keep|place|set|goes?|go|sort) (?:it |her |him |this 1 "
    rf"|this )?(?:in )?(?:with|beside|next to|alongside|near) {_N}(?: (?:and|or) {_N})*|"
    rf"(?:half ?way|something) between {_A_FISH} and {_A_FISH}|"
    rf"(?:(?:same|about the same|the same|exactly the same|much the same|more of the same|same again|same story|ditto|the "
    rf"very same|as before|as above|another 1 like (?:it|that|the last|the 1 before)|another like (?:it|that|the last))"
    rf"(?: (?:size|length|build|look|type|sort|story|thing|fish|pattern|picture|again|really|here|just|too|more or less|as "
    rf"before))*)"
    rf"(?: (?:but|only|just|though|and|with) .*)?|"
    rf"(?:only|there are only|just|not|hardly any|few|very few|none|no) ?(?:\d+|a few|a couple|a handful|many)? ?(?:of the "
    rf")?other(?: fish)? (?:.* )?(?:that|this|as|so|up) .*|"
    rf"(?:the |probably the |that is probably the |that is the |easily the |maybe the |my |this is the |it is the |this is "
    rf"my )*(?:pick|star|winner|pride|runt|baby|giant|champion|leader|front runner)(?: of (?:the|this) (?:bunch|lot|tub|"
    rf"litter|batch|day|morning|net|tank|crop|bowl)| so far| today| yet| to date)+|"
    rf"(?:(?:a|the|it is|could be|may be|this is|must be|she is|he is) )*(?:sister|brother|twin|double|cousin) (?:to|of) "
    rf"(?:the|that|this) (?:big|small|little|last|first|other|long|nice|good|red|pale) (?:1|fish)|"
    rf"(?:it |she |he |this 1 |this |that )?(?:make|made|leave|left|put)s? (?:the |all the |all |most of the )?(?:rest|other|"
    rf"last 1|1 before)(?: of them)? (?:look (?:\w+ ?){{1,3}}|in the shade|behind|standing|to shame)|"
    rf"(?:the )?same (?:litter|tub|net|pond|type|build|mould|cloth|stamp|stock|blood) as {_N}(?: .*)?|"
    rf"(?:put|leave)s? {_N} (?:to shame|in the shade|standing|behind|for dead)|(?:all )?take after (?:its|her|his|the) "
    rf"(?:mother|father|"
    rf"parent|aunt|uncle|grandmother|line)|typical (?:of|for) (?:that|the|this|its|her|his) (?:father|mother|line|pair|"
    rf"parent|family|spawning)|"
    rf"\w+er than (?:any|all|everything|anything)(?: (?:of them|fish|1|other|else|so far|yet|today|in here|in (?:the|"
    rf"this) (?:tub|bowl|net|"
    rf"batch|tank|bag|lot)|this (?:year|morning)|i have (?:seen|had)))*|"
    rf"(?:head and shoulder|a cut|a class|a notch|street|mile) (?:above|ahead of|below) {_N}"
    rf")\Z"
)
_NEARER = re.compile(r"nearer (?:to )?\d+(?:\.\d+)?(?: cm)? than \d")
"""`nearer 18 than 17` is a length."""
_SUPERLATIVE = re.compile(
    r"(?:and |but |by far |easily |maybe |perhap |probably |the |my |this |that is |it is )*"
    r"(?:best|worst|nicest|finest|strongest|weakest|cleanest|sharpest|broadest|deepest|whitest|reddest|poorest|prettiest|ugliest)"
    r" (?:bone|frame|body|head|pattern|skin|white|red|hi|beni|shiroji|kiwa|fish|1|colour|shape|build|lustre|edge|outline)\Z"
)
"""`best bone, worst pattern`: of all in the tub."""
_GOES_ON_BARELY = re.compile(
    r"(?:(?:and|but|only|just|though) )*(?:(?:the |exactly the |much the |about the )?same \w+(?: \w+)?(?: (?:though|too|"
    r"again|here))*|"
    r"mirrored|mirror image|(?:the )?other way (?:about|round|around)|back to front|"
    r"turned round|reversed|"
    r"(?:all the |much |the )?(?:better|worse|nicer|poorer|prettier|stronger|weaker) (?:for it|off|overall|in every way|all "
    r"round)|"
    r"(?:not|nowhere near|hardly|nearly|almost|every bit) (?:quite |nearly |half |so |just )*as \w+(?: \w+)?|"
    r"\w+ (?:not |is not |are not )(?:quite |nearly )?as \w+|better|worse|the better 1|the better fish|the worse 1|"
    r"(?:a bit |a little |much |even |slightly |somewhat |a fraction |a shade |a hair |a tad |a touch |quite a bit |a "
    r"lot |a good bit |"
    r"a size )*(?:shorter|longer|smaller|bigger|better|worse|slimmer|heavier|fatter|plumper|chubbier|wider|deeper|"
    r"brighter|darker|"
    r"whiter|cleaner|paler|redder|neater|tidier)"
    r"(?: (?:overall|though|too|again|in the body|all round|still|fish|1|in every way))*)\Z"
)
"""What goes on about another fish with no word of a part: `mirrored`, `and shorter`, `better for it`."""
_SIMILE = re.compile(
    r"(?:(?:and|but|sort of|kind of|just|almost|nearly|a bit|bit|rather|very much|exactly|it is|all|quite|something|"
    r"look(?=s? like an? )"
    r"|look(?= like an? )) )*like "
    r"(?!(?:it|that|this|these|those|them|the last|the 1|the other|the rest|her|his|he|she|i|you|we|all|most|any)\b)"
    r"(?:(?:an?|some|the|my|your|old|fresh|somebody|someone|spilled|wet|dry) )?\w{3,}(?: \w+){0,6}\Z"
)
_OF_KOI = frozenset(
    tokens_of(
        "tosai nisai koi kohaku sanke showa tancho fish girl boy female male hen buck runt head tail skin eye fin mouth "
        "scale belly "
        "red hi white beni patch pattern window sick ill dead dying bent broken torn wound mother father sister brother parent "
        "ogon asagi goldfish wild carp doitsu ginrin number bloodshot good bad nice fine poor clean net "
        "chalk paper silk satin pearl snow milk cream butter glass velvet rust brick ink blood jam tissue cardboard "
        "plaster marble ivory "
        "china porcelain varnish lacquer leather cherry tomato carrot orange plum rose peach salmon coral rag water smoke mud"
    )
)


def is_simile(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says only what something looks like, in words of no fish: `like a belt`, `like measles`."""
    if any(word.isdigit() and word != "1" for word in tokens):
        return False  # `like 12`
    return _OF_KOI.isdisjoint(tokens) and _SIMILE.match(" ".join(tokens)) is not None


def is_comparison(tokens: tuple[str, ...], *, after: bool) -> bool:
    """Whether a remark speaks of another fish. after: whether it stands behind one that does."""
    text = " ".join(tokens)
    if _ONE_OF_THE_BEST.fullmatch(text) is not None:
        return True
    if number_at(tokens, 0) is None and _NEARER.match(text) is None and (found := _COMPARES.search(text)) is not None:
        before = frozenset(text[: found.start()].split())
        if before & _PAID:
            return False  # `I could not charge more than twenty`
        # Of a pair: `left eye smaller than the other`.
        return not (re.search(r"\b(?:other|1)\b", found.group()) and before & _PAIRED)
    if (
        _FAVOURITE.match(text)
        or _MOST.search(text)
        or _THAN_ALL.match(text)
        or _MOST_OF_ALL.match(text)
        or _OF_ANOTHER.match(text)
        or _BESIDE_ANOTHER.match(text)
        or _SUPERLATIVE.match(text)
    ):
        return True
    if not after:
        return False
    led = tokens[0] in {"but", "only", "just", "and"} and len(tokens) > 1
    begun = (led or _COMPARATIVE.match(tokens[0]) is not None) and len(tokens) < 8
    return (begun and any(map(_COMPARATIVE.match, tokens))) or (
        _GOES_ON_COMPARING.match(text) or _GOES_ON_BARELY.match(text)
    ) is not None
