"""Places along a fish and lengths in a remark, with a mark for each: `from the neck to a thumb off the tail`.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

import re
from functools import lru_cache

from koirules.values import frozen

STRETCHES = ("nose", "crown", "nape", "shoulder", "front back", "middle back", "rear back", "stem")
"""The stretches of a body from head to tail, as phrases call them."""

END = len(STRETCHES)


@frozen
class Place:
    """A place along the body. said: what it is called.

    first, last: the stretch behind it and the one before it. bare_from, bare_to: from which and up to which one nothing is red
    where white begins or ends there. front: the clause for red on the head that begins there. white: for white up to there.
    """

    said: str
    first: int
    last: int
    bare_from: int = END
    bare_to: int = -1
    front: str = ""
    white: str = ""


ITS = r"(?:(?:the|its|her|his|both) )?"
_JUST = (
    r"(?:(?:just|right|exactly|level with|in line with|about|roughly|bang|straight|close|near|by|well|a bit|a little|"
    r"only|dead) )*"
)
_ON_TOP = r"(?:dorsal fin|dorsal|top fin|back fin|fin on (?:the )?(?:top|back))"
_DORSAL = rf"{ITS}{_ON_TOP}"
_GILL = r"(?:gill (?:cover|plate|edge|line|lid|slit)|gill)"
_PECTORAL = r"(?:pectoral fin|pectoral|pec fin|pec|side fin)"
BODY = r"(?:back|body|fish)"
_TAIL = r"(?:tail (?:fin|root|joint|base|stem|tube|end)|tail)"

PLACES = (
    Place(rf"{ITS}(?:upper |top )?(?:lip|mouth)", 0, -1, front="red up to the lip", white="white lip"),
    Place(
        rf"{_JUST}(?:{ITS}(?:very )?(?:tip|end) of {ITS}nose|{ITS}(?:nose tip|nose|snout)(?! hole))",
        0,
        -1,
        front="red up to the nose",
        white="white nose",
    ),
    Place(
        rf"{_JUST}(?:between |past |behind )?{ITS}(?:nostril|nose hole)",
        0,
        -1,
        front="red up to the nostril",
        white="white up to the nostril",
    ),
    Place(
        rf"{_JUST}(?:behind|past|after) {ITS}eye|{_JUST}{ITS}(?:back|rear) of {ITS}eye|{ITS}crown|{ITS}top of {ITS}head|"
        rf"{ITS}forehead",
        1,
        0,
        front="head red stop behind the eye",
        white="white up to behind the eye",
    ),
    Place(
        rf"{_JUST}(?:between |in front of |front of )?{ITS}(?:eye line|line of the eye|eye)",
        1,
        0,
        front="red up to the eye",
        white="white up to the eye",
    ),
    Place(
        rf"{_JUST}(?:behind|past|after) {ITS}(?:{_GILL}|head|skull)|{_JUST}{ITS}(?:back|end|rear|base|edge) of "
        rf"{ITS}(?:head|skull|"
        rf"{_GILL})|{_JUST}{ITS}{_GILL}|{_JUST}(?:behind )?{ITS}(?:neck|nape)|where {ITS}head (?:end|stop)",
        2,
        1,
        2,
        1,
    ),
    Place(rf"{_JUST}(?:behind|past|after) {ITS}(?:shoulder|{_PECTORAL})", 4, 3, 4, 2),
    Place(rf"{_JUST}{ITS}(?:shoulder line|shoulder|{_PECTORAL})", 3, 2, 4, 2),
    Place(
        rf"{_JUST}(?:in front of|before|ahead of|short of) {_DORSAL}|{_JUST}(?:under )?{ITS}(?:front edge|front end|front|start|"
        rf"beginning|head|first ray) of {_DORSAL}|where {_DORSAL} (?:start|begin)|{_DORSAL} (?:start|begin|front|line)",
        5,
        4,
        5,
        4,
    ),
    Place(
        rf"{_JUST}(?:behind|past|after) {_DORSAL}|{_JUST}(?:under )?{ITS}(?:back edge|rear edge|back end|rear end|back|end|rear|"
        rf"last ray) of {_DORSAL}|where {_DORSAL} (?:end|stop)|{_DORSAL} (?:end|stop)",
        6,
        5,
        6,
        5,
    ),
    Place(
        rf"{_JUST}(?:under |below |beside |alongside |halfway along |half way along |halfway down |mid |{ITS}(?:middle|"
        rf"half) of )?"
        rf"{_DORSAL}|mid ?dorsal|{_JUST}(?:mid ?{BODY}|{ITS}middle of {ITS}{BODY}|half ?way (?:down|along)(?: "
        rf"{ITS}{BODY})?|in the middle(?! of))",
        5,
        4,
        6,
        4,
    ),
    Place(
        rf"{_JUST}(?:before|short of|off|in front of|shy of|nearly|almost) {ITS}(?:{_TAIL}|end)|near {ITS}{_TAIL}|"
        rf"{_JUST}{ITS}(?:tail (?:root|joint|base|stem|tube|end)|(?:root|base|start) of {ITS}tail|peduncle|ozutsu|stem)|"
        rf"where {ITS}tail (?:start|begin)",
        7,
        6,
        7,
        6,
    ),
    Place(rf"{_JUST}{ITS}(?:very )?(?:tail(?! fin)|end of {ITS}(?:{BODY}|tail))", 7, 7, 7, 7),
    Place(rf"{ITS}head", 1, 0, front="red on the head"),
)
"""From head to tail, and the head as a whole; of two that begin at one word, the longer name stands first."""

STEM, THE_TAIL, HEAD = (PLACES[at] for at in (-3, -2, -1))

ABOUT = (
    r"(?:(?:about|roughly|nearly|almost|just|only|maybe|perhap|around|barely|not quite|at most|at least|up to|over|"
    r"under|more than|"
    r"less than|no more than|exactly|some|easily|round|hardly|well over|just over|just under|all of) )*"
)
_UNIT = (
    r"(?:cm|mm|scale row|row of scale|scale|row|finger width|finger|thumb width|thumb|hand width|eye width|head length|"
    r"inch|pencil|"
    r"fingernail|knuckle|matchstick)"
)
_NUMBER = (
    r"(?:\d+(?:\.\d+)?(?: (?:to|or) \d+(?:\.\d+)?)?(?: and a half)?|half an?|an?|a couple of|a few|several|(?:3|a) "
    r"quarter of an?|my|"
    r"a good|a full|a bare|a clear|a scant)"
)
_LENGTH = re.compile(
    rf"(?<!\S)(?:{ABOUT}{_NUMBER} (?:good |bare |full |scant |clear |little |single )?{_UNIT}(?: width| length)?(?: and "
    rf"a half)?|"
    r"half (?:a|an|my) (?:eye|head|hand|fin|finger|thumb|body)|the width of (?:my|a|an) \w+|a \w+ width)"
    r"(?: or so| or 2| maybe| if that| at most| at least| maybe less| maybe more| less| more)?(?!\S)"
)
_PLACE = re.compile("|".join(f"(?P<p{at}>(?<!\\S)(?:{place.said})(?!\\S))" for at, place in enumerate(PLACES)))


@lru_cache(maxsize=64)
def form_of(text: str) -> re.Pattern[str]:
    """A form as a regular expression: few of them are ever asked for."""
    return re.compile(text)


@frozen
class Marked:
    """A remark with a mark for each place (`@05`, its number in `PLACES`) and each length (`#0`) in it."""

    words: str
    lengths: tuple[str, ...]

    def match(self, form: str) -> dict[str, str | None] | None:
        """What a form names in the whole remark; None where it is of another form."""
        found = form_of(form).fullmatch(self.words)
        return None if found is None else found.groupdict()


@lru_cache(maxsize=2_000)
def marked(words: str) -> Marked:
    """A remark with its places and lengths marked. words: its tokens with one space between them."""
    lengths: list[str] = []

    def kept(found: re.Match[str]) -> str:
        lengths.append(found[0])
        return f"#{len(lengths) - 1}"

    parted = _LENGTH.sub(kept, words)
    return Marked(_PLACE.sub(lambda found: f"@{int(str(found.lastgroup)[1:]):02}", parted), tuple(lengths[:10]))
