"""What sorters say beside the fish: what may have caused it, whom it suits, what they thought at first, how they handle it.

Common English usage, no source; wordings from memory.
"""

from __future__ import annotations

import re
from collections.abc import Callable

_IT = r"(?:it|her|him|them|this|that|this 1|that 1|the fish|this fish|that fish|these|those)"
_WELL = r"(?:(?:oh|ah|ooh|and|but|well|so|though|still|mind you|to be fair|honestly|i mean|then|now|also|or|no|yes) )*"
_SURELY = re.compile(
    rf"{_WELL}(?:"
    r"(?:it |that )?(?:could|might|may|must) (?:just |only |well )?be on purpose|"
    # Buyers and other people at large.
    r"(?:i|we) (?:always|alway|never|usually|often|could|can|will|would) (?:easily |always |alway )?(?:sell|shift|move|"
    r"flog) (?:a|an|the|them|those|these|any) .*|"
    r"(?:the |my )?boss will (?:want to |like to |need to )?(?:know|hear|laugh|ask|smile|decide|choose)(?: (?:about|of|if) .*)?|"
    # What somebody thought at first.
    rf"(?:for a (?:second|moment|minute) )?i (?:first |at first |nearly |almost |really |honestly )*thought (?:for a "
    rf"(?:second|moment|minute) )?(?:{_IT}|there) (?:was|were|had) .*|"
    # How the fish is handled, and what cannot be told by that.
    rf"(?:i will |i would |i |we will |let me |just |better |must )*(?:dab|swab|wipe|rinse|rub|salt|treat|dip) (?:{_IT}|"
    rf"{_IT} off|off|down)(?: (?:off|down|later|first|tonight|in salt|with salt))*|"
    r"(?:i |we )?(?:have |had )?(?:not |did not |could not )?measured? (?:it|that|her|him|twice)(?: (?:twice|again|3 "
    r"time|properly|yet))?|"
    r"(?:i |we )?(?:did|could|have|had) not (?:measure|measured|weigh|weighed|time|mark|count|counted) (?:it|that|her|"
    r"him|them|this 1)(?: (?:yet|properly|again))?|"
    r"(?:you|i) (?:can )?(?:feel|felt|notice) (?:it|that) (?:with|under|in) (?:a |the |your |my )?(?:finger|thumb|hand|net)|"
    r"(?:it |she |he |this 1 )?(?:has |have )?(?:jumped|leapt|hopped|splashed) (?:out |about |around |over |up )?(?:of "
    r"the (?:bowl|tub|net) )?(?:once|twice|again|\d time|already|on me)|"
    r"(?:it |she |he |this 1 )?(?:will|would|doe|can|could) not (?:keep|hold|stay|sit|stand) still(?: for .*)?|"
    r"(?:it |she |he |this 1 )?still eat(?:ing)?(?: well| fine| though)?|"
    r"(?:a )?(?:wriggly|slippery|jumpy|lively|restless|feisty) (?:1|one|fish|thing|customer|beggar|devil)(?: (?:hang on|"
    r"hold on|hold still|this|isn|you are|this 1))*|"
    # Sayings that decide nothing.
    r"(?:it |that |this )?(?:all )?depend(?:s|ing)? (?:on )?(?:how|what|where|which|who|whether|the (?:day|mood|buyer|"
    r"customer|price|light)).*|"
    r"(?:i )?(?:do not|did not|would not|will not) (?:want|mean|like|wish) to (?:oversell|overstate|undersell|jinx|"
    r"curse|be (?:rude|unkind|harsh|mean|greedy)|sound \w+)(?: .*)?|"
    r"(?:i |we )?(?:have )?never (?:ever )?(?:saw|seen|had|met) (?:that|this|it|1 like (?:it|that)|the like)(?: "
    r"(?:before|on a \w+|in \d+ year))?|"
    r"(?:the )?(?:last|first|next|final) (?:1|one|fish) in (?:the|this) (?:bowl|tub|net|bag|vat|tank|lot|batch)|"
    r"(?:they|we|it|you) (?:have )?(?:had|did|got) (?:a |an )?(?:long|hard|rough|bumpy|cold|bad) (?:trip|drive|journey|"
    r"day|night|week|ride|time of it)|"
    r"(?:right then|right|okay|ok|now|well|so)? ?(?:here|off|away) we go(?: again| then)?|"
    r"(?:half time|tea time|break time|time for tea|kettle on|lunch)|"
    r"(?:ooh|oh|ah|well)? ?hello(?: (?:you|there|again|hello|what is this|what have we here|gorgeous|sunshine|beautiful))?|"
    r"(?:i )?(?:do not|did not) look (?:any )?further|(?:i am )?not joking|"
    r"worms? or no (?:feed|food)|customer say (?:it is|they are) \w+"
    r")\Z"
)
_UNLESS_A_TRAIT = re.compile(
    rf"{_WELL}(?:"
    r"(?:my |our |the )?(?:boss|customer|buyer|people|folk|wife|dealer|kid|judge|lad|girl|he|she|they) (?:would |will |"
    r"alway |all |just )*(?:call|calls|say|said|name) "
    rf"{_IT} (?:a |an |the )?\w+|"
    rf"(?:it |that |which )?(?:make|made|making)s? (?:{_IT}|me|you|\w+) (?:look like|feel|think|smile|laugh|grin|"
    rf"wonder|happy|sad)\b.*|"
    rf"(?:it |that |which )?(?:give|gave)s? {_IT} (?:a|an|that) (?:\w+ ){{0,2}}(?:look|wink|smile|air|face|expression|"
    rf"charm|character)|"
    r"(?:i |we )?(?:have )?(?:lost|losing) (?:count|track|my place)(?: .*)?|"
    r"(?:i )?(?:want|wanted|tried|try|would love) to (?:like|love|hate) (?:you|it|her|him|this 1|that 1|this|that)(?: .*)?"
    r")\Z"
)


def is_digression(tokens: tuple[str, ...], speaks: Callable[[], bool]) -> bool:
    """Whether a remark that nothing reads says nothing of the fish. speaks: whether it has words of a trait."""
    text = " ".join(tokens)
    return _SURELY.match(text) is not None or (_UNLESS_A_TRAIT.match(text) is not None and not speaks())
