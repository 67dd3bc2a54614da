"""What is said to take back or to doubt what was said before: `no, sorry`, `it was dirt`, `not sure mind`.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re

from koirules.vocabulary.phrases import spread

CHANGES_OF_MIND = frozenset(
    spread(
        """
            (no |)(i have |i |he has |boss has |the boss has |)changed (my|his|her) mind( again|), (no |)on second thoughts,
            (no |)second thoughts, actually no, no actually, (no |)on reflection, no after all, no sorry
        """
    )
)
"""Words that take back what was decided, whether or not it was said."""

CORRECTIONS = CHANGES_OF_MIND | frozenset(
    spread(
        """
            (no |oh |)wait( no|), (wait|hang on|hold on) (a|one) (minute|moment|second|
            bit), correction, correct that, rather, sorry( no|), no sorry, scratch that,
            (no |)i (mean|meant), make that, on second (look|thought), oops, wrong, let me correct( that|), strike that,
            (no |)hang on, (no |)hold on, my mistake, i tell a lie, (no |)that is wrong, i was wrong, forget that
        """
    )
)
"""Words that take back what was said before them."""

CORRECTS_AHEAD = (
    *spread(
        "no that is, no it is, no she is, no he is, no they are, no there are, well actually, no actually, or rather"
    ),
    *CORRECTIONS,
)
"""Words that take back what was said before them by what follows in the same remark."""

_CORRECTING = re.compile(
    r"""
        i\s(?:said|say|thought|had\sthought|wrote|called\sit|took\sit)\s.+\s(?:but|before|until|till)\s.+|
        i\s(?:liked|hated|had)\s(?:it|her|him)\suntil\s.+|(?:no\s)?(?:it|that|this)\s(?:is|was)\s(?:only\s|just\s|
        all\s)*(?:a\sbit\sof\s|a\spiece\sof\s|some\s)?(?:dirt|weed|mud|muck|slime|food|light|shadow|algae|leaf|
        a\sbubble|a\sleaf|a\sshadow|the\slight)|said\snobody(?:\sever)?|(?:yeah|aye|yes)\sright|as\sif|in\smy\sdreams|i\swish|(?:only\s|just\s)?(?:joking|kidding)|
        (?:maybe\s|perhaps\s)not|i\s(?:do\snot|did\snot)\sthink|(?:no\s)?(?:hang\son\s|wait\s)?(?:.*\s)?swap\s(?:those|them|
        it)(?:\sround|\saround)?
    """,
    re.VERBOSE,
)


_NOT_OF_THE_FISH = re.compile(
    r"(?:(?:no|oh|ah|wait|hang on|hold on|sorry|well|ha|and|but|phew|actually|i think) )*"
    r"(?:(?:it|that|this|1 of them|they) (?:is|was|are|were|turned out to be|may be|must be) )?(?:(?:only|just|all|a bit of|"
    r"a piece of|bit of|"
    r"some|a|the|my|an|probably) )*"
    r"(?:dirt|dirty water|weed|mud|muck|slime|food|pellet|algae|leaf|bubble|shadow|reflection|light|sun|glare|drop|drip|"
    r"grit|sand|fly|"
    r"crumb|hair|"
    r"stain|moss)(?: (?:on (?:it|her|him|the (?:water|net|board|len))|after all|that is all|in the water|again|only|i think|"
    r"stuck on|there))*\Z|"
    r"(?:(?:no|oh|ah|wait|and|but|phew|well) )*(?:(?:it|that|they) |(?=gone |came off|rubbed off|wiped off|washed "
    r"off))(?:came|come|come|wiped|rubbed|wipe|rub|wipe|rub|washed|"
    r"wash|wash|brushed|"
    r"fell|floated|swam|is|was|are|has|ha) (?:straight |right |now |all )?(?:off|away|gone)(?: (?:when|after|with|as|now|"
    r"again|already|"
    r"i|he|wiped|rubbed|washed|it|her|a|wipe|rub|easily|my|thumb|finger|look))*\Z"
)
"""That what was spoken of last is not of the fish: `hang on that was dirt`, `it came off`."""


_HOW_IT_LAY = re.compile(
    r"(?:(?:no|oh|ah|wait|hang on|hold on|sorry|well|yes|and|but|actually|i think) )*(?:(?:it|that|she|he) (?:is|was) "
    r")?(?:just|only|all) "
    r"(?:the )?(?:way (?:it|she|he|i) (?:is|was|lay|lie|held|hold|sit|sat|turn|turned|bend|bent)(?: .*)?|turning|bending|"
    r"lying(?: crooked| bent)?|"
    r"moving|twisting|swimming|bent round|wriggling|curling up|flexing|the bend of (?:it|her|him))(?: (?:round|about|away|"
    r"in the (?:net|bowl)|then))*\Z"
)
"""That what was spoken of last came of how the fish lay: `no, it's only turning`."""


def is_how_it_lay(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says that what was seen last came of how the fish lay or moved."""
    return _HOW_IT_LAY.match(" ".join(tokens)) is not None


def is_not_of_the_fish(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says that what was seen last was dirt, or the light."""
    return _NOT_OF_THE_FISH.match(" ".join(tokens)) is not None


_DOUBTING = re.compile(
    r"(?:(?:and|but|or|so|though|mind you|then again|well) )*(?:"
    r"(?:i|my eye) (?:may|might|could) (?:just |only )?be (?:seeing thing|imagining it|imagining thing|playing trick|dreaming|"
    r"mistaken|wrong)(?: about that| there)?|(?:or )?(?:am i|are my eye) (?:seeing thing|imagining it|imagining thing|"
    r"dreaming|playing trick)|"
    r"(?:or )?(?:it )?(?:may|might|could) (?:just |only |well )*be (?:(?:the|my|a|some|a trick of the|just) )*(?:light|"
    r"eye|water|angle|lamp|"
    r"sun|glare|net|camera|stress|trip|journey|drive|move|transport|travel|cold|food|shadow|bag|wet)(?: (?:in here|in "
    r"there|today|though|i think|"
    r"i reckon|from the \w+|on it|again))*|"
    r"(?:or )?(?:maybe |perhap |it may be |it might be |could be |is it |may be )?(?:just |only )?(?:the way|how) (?:it|she|"
    r"he|i) (?:is|am|lie|lay|hold|held|sit|turn|bend|twist|move)(?: .*)?|"
    r"(?:or )?(?:maybe|perhap|possibly|probably) (?:just |only )?(?:the|my|a) (?:light|eye|shadow|reflection|lamp|angle)|"
    r"(?:i am )?not (?:so |quite |too |entirely |completely |at all )*(?:sure|certain|convinced)(?: (?:about|of) (?:it|"
    r"that)| either| mind)?|"
    r"(?:i )?(?:would not|can not|could not|will not) (?:swear|swear to it|be sure|be certain|bet on it|bet on that|swear "
    r"to that|say for sure|say for certain|stake my life on it)"
    r"(?: though| mind)?|do not (?:quote|hold) me (?:on|to) (?:that|it)|(?:it is |that is )?(?:only |just )?(?:a|my|my "
    r"best) (?:guess|hunch|impression)|"
    r"(?:i am )?(?:only |just )?guessing|hard to (?:say|tell|be sure|see)(?: (?:for sure|for certain|really|from here|in "
    r"this light|wet|though))*|"
    r"(?:it is )?difficult to (?:say|tell|see)(?: (?:for sure|really|from here|in this light|though))*|unless (?:it is |"
    r"that is )?(?:the|my) (?:light|eye|water|lamp)|"
    r"or so it (?:look|seem|look|seem)|(?:i )?could be wrong|if (?:it|that) is not (?:the light|the water|a shadow)|check "
    r"that(?: again| later| dry)?|"
    r"(?:must|better|should|i will|need to) (?:check|look)(?: at)? (?:that|it)(?: again| later| in (?:better|good|day) light)*)\Z"
)
"""That what was said last is not sure: `I may be seeing things`, `not sure mind`."""
_SLIGHTLY = re.compile(
    r"(?:(?:but|and|though|it is|that is|well|not) )*(?:not (?:badly|much|a lot|by much|very|seriously|terribly|too bad|so "
    r"bad|too badly|strongly)|"
    r"(?:just|only|but only) (?:a bit|a little|a touch|a tad|slightly|a trace|a shade|barely|a hair|a fraction)|ever so slightly|"
    r"(?:just |only )?barely|hardly|(?:very |only |just )slightly|(?:a|just a|only a) (?:wee|tiny|little) bit)(?: (?:though|"
    r"mind|mind you|so|really|anyway|yet))*\Z"
)
"""That what was said last is so only a little: `not badly`, `just a touch`."""


def is_doubt(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says that who speaks is not sure of what he said last."""
    return _DOUBTING.match(" ".join(tokens)) is not None


def is_little(tokens: tuple[str, ...]) -> bool:
    """Whether a remark says that what was said last is so only a little."""
    return _SLIGHTLY.match(" ".join(tokens)) is not None


def is_correction(tokens: tuple[str, ...]) -> bool:
    """Whether a remark takes back what was said, in a sentence of its own: `it's dirt`, `I said out before I looked`."""
    return _CORRECTING.fullmatch(" ".join(tokens)) is not None


MILD_CORRECTIONS = frozenset(
    spread(
        "(no |oh |)wait, (wait|hang on|hold on) (a|one) (minute|moment|second|bit), sorry, oops, hang on, hold on, well actually"
    )
)
"""Those of them that are said as well where there is nothing to take back."""

CORRECTS_BEHIND = tuple(spread("actually, i mean, i meant, rather, sorry, that is, it was, i should say"))
"""The same, behind what holds instead: `only the left actually`."""

CORRECTS_BETWEEN = tuple(
    spread("no, no sorry, sorry, sorry no, no wait, i mean, or rather, make that, no make that, correction, no it is")
)
"""The same, between what does not hold and what does: `nidan sorry sandan`."""
