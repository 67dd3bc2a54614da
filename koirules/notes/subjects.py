"""What a remark is said of where it does not name it: `stops at the eyes`, `tiny`, `like a carrot`, `thin, the red`.

Common English usage, no source. What may be said of the fish as well as of what was just spoken of is not read.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from koirules.notes.found import OF_THE_FISH
from koirules.notes.hedges import HEDGES, SOFTENERS, without
from koirules.notes.lexicon import Lexicon
from koirules.notes.remarks import Remark, Sort
from koirules.notes.tree import SKIPPED, words_of_line
from koirules.vocabulary.wordings import tokens_of

_SIZED = OF_THE_FISH - {"swimming"}
_MEASURES = frozenset({"length", "depth", "width"})
_OF_A_PLACE = words_of_line(
    "health scars eye_film eye_clarity fin_damage fin_faults mouth gill_cover_faults barbels_missing scale_loss windows "
    "head_windows shimi_count shimi_places shimi_size dorsal_fin pectoral_size motoaka hi_on_fins hi_on_eyes hi_on_cheeks "
    "kuchibeni tobihi tobihi_places niban_hi"
)
"""Traits of a wound, a fin, a mark or the like, which may have a colour of its own."""
_OF_COLOUR = words_of_line("hi_strength hi_tone hi_even hi_thick hi_cover shiroji white_head lustre skin_clean")
_SIZES = frozenset(
    tokens_of(
        "thin thick tiny small big large little long short deep shallow heavy light narrow wide broad straight crooked bent "
        "high low flat huge minute wee massive tall slim weak strong even uneven curved twisted"
    )
)
_COLOURS = frozenset(
    tokens_of("pink red white pale dark yellow orange grey bright dull faded light pinkish yellowish greyish")
)
_DRAWING = (
    "draws the eye",
    "draw the eye",
    "catches the eye",
    "catches my eye",
    "stands out",
    "jumps out",
    "eye catcher",
)
_NOTICED = frozenset(tuple(token for token in tokens_of(words) if token not in SKIPPED) for words in _DRAWING)
"""What is said of a flaw as well as of a fine fish."""
_A_FISH = frozenset(tokens_of("she he her him fish girl boy lady lad one fellow body koi thing baby chap"))
_WHOLE = frozenset(tokens_of("everything everywhere all over throughout whole"))
_HOW = frozenset(
    tokens_of("not no too very much more less even than for a bit sat sit look run so rather almost nearly but and")
)
_MEASURED = re.compile(r"\b(?:long|wide|across|deep|broad|high)\b", re.IGNORECASE)
_PIECE = re.compile(
    r"\b(?:patch|step|field|stripe|gap|break|band|plate|saddle|piece|blob|island|strip|window|hole|scratch|tear|one|bit)\b",
    re.IGNORECASE,
)
"""`11 cm long` behind one of these is as likely its length."""
_MARK = re.compile(
    r"\b(?:sore|wound|ulcer|spot|scratch|hole|nick|scale|mark|speck|cut|graze|lump|bump|blister|worm|louse)s?\b",
    re.IGNORECASE,
)
"""`small` behind one of these is as likely its size."""
_OWNERS = frozenset({"the", "its", "her", "his", "that", "those", "these", "this"})
_PASSED_BY = frozenset({Sort.NOTHING, Sort.VERDICT})


def goes_on(remark: Remark, before: Sequence[Remark], lexicon: Lexicon) -> bool:
    """Whether a remark that does not name what it speaks of follows one on the same thing, or can be of nothing else."""
    return _follows(remark, before) and not _may_be_of_another(remark, before, lexicon)


def _follows(remark: Remark, before: Sequence[Remark]) -> bool:
    """Whether a remark such as `stops at the eyes` follows one on the same thing."""
    leaning = [found for found in remark.found if found.after]
    if not leaning:
        return True
    told_something = (one for one in reversed(before) if one.found or one.sort is Sort.UNKNOWN)
    last = next(told_something, None)
    within = {found.trait for found in remark.found if not found.after}
    told = within or (set() if last is None else {*last.named, *(found.trait for found in last.found)})
    if not told:
        return last is None  # behind a remark of which nobody can tell what it speaks of, neither can this be told
    return all(told & {*found.after} for found in leaning)


def _may_be_of_another(remark: Remark, before: Sequence[Remark], lexicon: Lexicon) -> bool:
    """Whether a word for anything stands behind something else that it may be said of: `tiny` behind a speck."""
    last = next((one for one in reversed(before) if one.sort not in _PASSED_BY), None)
    if last is None or not remark.found:
        return False
    traits = {found.trait for found in remark.found}
    spoken = {*last.named, *(found.trait for found in last.found)}
    if not last.found:
        spoken -= _MEASURES  # `fins long`: of the word long alone nobody speaks of the length of the fish
    words = _words(remark.text)
    if traits == {"length"}:
        return _MEASURED.search(remark.text) is not None and _PIECE.search(last.text) is not None
    of_what_was_named = False
    if not last.found:
        named = {trait for names in lexicon.names_in(tokens_of(last.text)) for trait in names} - _MEASURES
        of_what_was_named = bool(named) and named.isdisjoint(traits)
    if traits <= OF_THE_FISH:
        fits = words <= _SIZES or _is_simile(remark.text) or _noticed(remark.text)
        of_the_fish = (
            spoken
            and spoken <= _SIZED
            and not of_what_was_named
            and not any(_MARK.search(one.text) for one in before[-2:])
        )
        return fits and not _names(remark.text, lexicon) and not of_the_fish
    if not traits <= _OF_COLOUR or not words <= _COLOURS:
        return False
    return of_what_was_named or not spoken.isdisjoint(_OF_A_PLACE)


def named_behind(text: str, before: Sequence[Remark], lexicon: Lexicon) -> str | None:
    """A remark that was said before what it is said of, in the usual order: `the red thin` for `thin, the red`."""
    tokens = tokens_of(text)
    if not before or len(tokens) < 2 or tokens[0] not in _OWNERS or tokens[1] in SKIPPED:
        return None
    ahead = before[-1]
    if _noticed(ahead.text):
        return f"{text} {ahead.text}"  # `catches my eye, that dot on the cheek`
    is_name = any(hit.names and hit.end == len(tokens) for hit in lexicon.hits(tokens, 1))
    unnamed = ahead.sort in {Sort.TRAITS, Sort.UNKNOWN} and not _names(ahead.text, lexicon)
    levels = lexicon.levels_of(tuple(token for token in _plainly(ahead.text) if token not in SKIPPED))
    return f"{text} {ahead.text}" if is_name and unnamed and levels else None


def is_hedge(text: str) -> bool:
    """Whether a remark is nothing but a word of doubt on what was said before it: `female, I think`."""
    rest, hedged = without(tokens_of(text), HEDGES)
    return hedged and all(token in SKIPPED for token in rest)


def _plainly(text: str) -> tuple[str, ...]:
    return without(without(tokens_of(text), HEDGES)[0], SOFTENERS)[0]


def _words(text: str) -> set[str]:
    """The words of a remark that say how something is; a word for a fish among them, where one is named."""
    tokens = _plainly(text)
    if not _A_FISH.isdisjoint(tokens) or not _WHOLE.isdisjoint(tokens):
        return {*tokens}
    return {token for token in tokens if token not in SKIPPED and token not in _HOW} or {""}


def _is_simile(text: str) -> bool:
    tokens = _plainly(text)
    return tokens[:1] == ("like",) or "as" in tokens[1:-1]


def _noticed(text: str) -> bool:
    return tuple(token for token in _plainly(text) if token not in SKIPPED) in _NOTICED


def _names(text: str, lexicon: Lexicon) -> bool:
    """Whether a remark names what it speaks of."""
    return bool(lexicon.names_in(tokens_of(text)))
