"""How sorters say where along the body red (hi) and white begin and end: `red from the eyes to the shoulder`.

Red that begins at a place lies on the stretch behind it, red that ends at one on the stretch before it. White from one place to
another leaves the stretches that are wholly between them without red.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from attrs import frozen

from koirules.builtin.red_pattern import ALONG, DETAILS, PATTERN
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_OF_RED = tuple(trait.name for trait in (*PATTERN, *DETAILS))
"""Traits behind which `starts at the shoulder` is said of red."""

_OF_SPANS = ("hi_places", "head_hi_front", "steps", "head_hi")
"""Traits behind which `back to the shoulder` is said of red."""

_DORSAL = "(dorsal|dorsal fin|back fin|top fin)"
_GILLS = "(gill|gills|gill (line|edge|cover|plate|lid)|(edge|end) of the (gill|gill cover|gill plate))"
_ROOT = "(tail (root|joint|base|stem|tube|end)|(root|base) of the tail|ozutsu|peduncle)"
_AT = "(level with|exactly|right|just|) (at|on|)"


@frozen
class _Place:
    """A place along the body. front: what red that begins there says of the head.

    said: what it is called. first, last: the stretch behind it and the one before it, as numbers in ALONG. bare_from, bare_to:
    from which and up to which one nothing is red where white begins or ends there.
    """

    said: str
    first: int
    last: int
    bare_from: int = 8
    bare_to: int = -1
    front: str = ""


_ON_HEAD = (
    _Place("(lips|lip|mouth|upper lip|top lip)", 0, -1, front="is lips"),
    _Place("((very|) (tip|end|top|) of the nose|nose|nose tip|snout)", 0, -1, front="is nose"),
    _Place(f"({_AT} (nostril|nose hole|nostril line|nose line)|between the nostrils)", 0, -1, front="is nostrils"),
    _Place(f"({_AT} (eyes|eye|eye line|line of the eyes)|(in|) between the eyes)", 1, 0, front="is eye_line"),
    _Place("(just|right|) (behind|after|past) the eyes", 1, 0, front="is behind_eyes"),
    _Place("(forehead|top of the head|crown)", 1, 0, front="is behind_eyes or eye_line"),
    _Place("(the|) head", 1, 0),
)
_ON_BODY = (
    _Place(
        f"({_AT} {_GILLS}|(just|right|) behind the (gill|gill cover|gill plate|head)|(end|back|rear) of the head|neck|nape|"
        "where the head (ends|stops))",
        2,
        1,
        2,
        1,
    ),
    _Place(
        f"({_AT} ((left|right|) shoulder|shoulder line|pec|pectoral|pectoral fin|(first|second|third|fourth) "
        "(scale|row|scale row) behind the (head|gill)))",
        3,
        2,
        4,
        2,
    ),
    _Place("(just|right|a bit|) (behind|past|after) the (shoulder|pec|pectoral)", 4, 3, 4, 2),
    _Place(
        f"({_AT} (the|) (front|start|beginning|first ray|front end|front edge|front ray) of the {_DORSAL}|(just|right|) "
        f"(in front of|before) the {_DORSAL}|where the {_DORSAL} (starts|begins)|under the (front|start) of the {_DORSAL})",
        5,
        4,
        5,
        4,
    ),
    _Place(
        f"((level with|right|just|) (at|on|under|below|) (the|) ({_DORSAL}|mid dorsal|middorsal|(middle|mid|half) of the "
        f"({_DORSAL}|back|body)|mid (back|body))|half way (down|along|) (the|) (back|body|)|halfway (down|along|) (the|) "
        "(back|body|))",
        5,
        4,
        6,
        4,
    ),
    _Place(
        f"({_AT} (the|) (end|back|rear|last ray|rear end|back end|rear edge) of the {_DORSAL}|(just|right|a bit|well|) "
        f"(behind|after|past) the {_DORSAL})",
        6,
        5,
        6,
        5,
    ),
    _Place(
        f"({_AT} {_ROOT}|(near|just before|just short of|close to|almost at|before) (the|) (tail|{_ROOT}))", 7, 6, 7, 6
    ),
)
_TAIL = _Place("(very|) (tail|tail fin|caudal|caudal fin|end)", 7, 7, 7, 7)

_NOUN = "((red|) (patch|step|dan|field|piece|block|saddle|plate|island|band)|1|red|red 1)"
_SIZE = "(big|large|long|small|little|short|tiny|broad|wide|single|solid|round|)"
_LARGE = "(big|large|long|broad|wide|single|solid|round|)"
_ORDER = "(first|second|third|fourth|next|middle|other|last|back|rear|front|final|hind|head|tail|shoulder)"
_PATCH = "(patch|step|field|piece|block|saddle|plate|island|band|slab|sheet|strip|stretch|run)"
_REST = (
    f"|(a|1|another|) {_SIZE} (red|) {_PATCH} (of red|)|{_PATCH} (1|2|3|4|5)|"
    "(big|long|1 long|1 big|all|solid|) (red|red again)|colour|pattern)"
)
_ONE = f"({_ORDER} {_SIZE} {_NOUN}{_REST}"
_LATER = _ORDER.replace("first|", "").replace("front|", "")
_LATER_ONE = f"({_LATER} {_SIZE} {_NOUN}|(a|1|another) {_SIZE} (red|) {_PATCH} (of red|)|{_PATCH} (2|3|4|5))"
_EARLY = f"(first|second|third|next|middle|other|front|head|shoulder) {_SIZE} {_NOUN}"
"""What may end at the dorsal fin and leaves no bare rear: the last red does."""
_THEN = "(then|and then|and|then there is|there is|)"
_GOES = "(goes|runs|reaches|comes|is|lies|going|running|stretches|extends|)"
_FROM = "(right|all the way|just|only|straight|)"
_TO = "(back|down|right|up|all the way|straight|) (to|till|until|as far as|up to)"
_STARTS = "(starts|begins|start|begin|starting|sets in) (only|just|right|again|)"
_STOPS = "(stops|ends|finishes|quits|stopping|ending) (just|right|exactly|)"
_WHOLE = "(in 1 (piece|go|run)|(without a|with no|no|without any) (break|gap|stop|cut|breaks|gaps|stops|cuts)|unbroken|solid)"


def _includes(stretch: int) -> str:
    return f"includes {ALONG[stretch]}"


def _white() -> tuple[SpokenTogether, ...]:
    """White from one place to another."""
    found = []
    for start in _ON_BODY:
        for end in (*_ON_BODY, _TAIL):
            if start.bare_from > end.bare_to or (end is _TAIL and start.bare_from > 5 and start is not _ON_BODY[4]):
                continue
            rest = [name for number, name in enumerate(ALONG) if not start.bare_from <= number <= end.bare_to]
            means = f"hi_places is at least 0 of ({', '.join(rest)})"
            if end is _TAIL and 4 <= start.bare_from <= 5:
                means = f"{means} and bongiri is yes"
            found.append(
                SpokenTogether(
                    f"(all white|clean white|white|bare|no red|nothing) (from {start.said} {_TO}|between {start.said} and) "
                    f"{end.said}",
                    means,
                )
            )
    return tuple(found)


def _begun() -> tuple[Saying, ...]:
    """Where red begins and lies."""
    found: list[Saying] = []
    for place in (*_ON_HEAD, *_ON_BODY):
        trait, reading = ("head_hi_front", place.front) if place.front else ("hi_places", _includes(place.first))
        near = place in _ON_BODY[:3]
        said: tuple[str, ...] = (
            f"{_THEN} {_ONE} {_GOES} {_FROM} from {place.said}",
            f"{_THEN} {_LATER_ONE if near else _ONE} {_STARTS} {place.said}",
            f"{_LATER if near else _ORDER} {_STARTS} {place.said}",
        )
        if near:
            found.append(
                SpokenTogether(
                    f"(first|front) {_SIZE} {_NOUN} {_STARTS} {place.said}, first {_STARTS} {place.said}",
                    f"head_hi is none and hi_places {_includes(place.first)}",
                )
            )
        if place.front in {"is nose", "is eye_line"}:
            said = (*said, f"(first|front) {_NOUN} {place.said}")
        found += [
            Spoken(trait, alone={reading: ", ".join(said)}),
            Spoken(trait, after=_OF_RED, alone={reading: f"{_THEN} {_STARTS} {place.said}"}),
        ]
    return tuple(found)


def _from_to() -> tuple[Saying, ...]:
    """`shoulder to dorsal`, `runs shoulder to tail no stop`, without `from`."""
    found: list[Saying] = []
    for place in (*_ON_HEAD[2:-1], *_ON_BODY[:3]):
        front = f"head_hi_front {place.front} and " if place.front else ""
        every = " and ".join(f"hi_places {_includes(stretch)}" for stretch in range(place.first, 8))
        found.append(
            SpokenTogether(
                f"({_THEN} {_ONE} {_GOES} {_FROM}|goes|runs) (from|) {place.said} {_TO} (the|) tail {_WHOLE}",
                f"{front}steps is ippon or inazuma and {every}",
            )
        )
    return tuple(found)


def _ended() -> tuple[Saying, ...]:
    """Where red ends, and at which places of the body a patch sits."""
    found: list[Saying] = []
    for place in _ON_BODY:
        # No patch of the shoulder ends in front of it.
        one = _ONE.replace("|shoulder", "") if place in _ON_BODY[:2] else _ONE
        said = (
            f"{_THEN} {one} {_GOES} {_TO} {place.said} ({_WHOLE}|)",
            f"{_THEN} {_EARLY if place in _ON_BODY[3:6] else one} {_STOPS} {place.said}",
            f"(first|second|third|next|middle|head) {_STOPS} {place.said}",
        )
        sits = (
            f"{_ORDER} {_NOUN} (is|sits|lies|covers|) {place.said}",
            f"{_THEN} (a|1|another|) {_LARGE if place is _ON_BODY[-1] else _SIZE} (red|) {_PATCH} (sits|lies|is|) {place.said}",
        )
        ends = _includes(place.last)
        found += [
            Spoken("hi_places", alone={_includes(place.first): ", ".join(sits)}),
            Spoken(
                "hi_places",
                after=_OF_RED,
                alone={
                    _includes(
                        place.first
                    ): f"{_THEN} (a|another) (big|large|small|little|tiny|short|long) 1 (sits|lies|) {place.said}"
                },
            ),
            Spoken("hi_places", after=_OF_SPANS, alone={ends: f"({_GOES}|) {_TO} {place.said} (only|{_WHOLE}|)"}),
        ]
        if place is _ON_BODY[-1]:  # what stops there leaves white before the tail
            found.append(Spoken("hi_places", alone={ends: f"{_THEN} {_ONE} {_GOES} {_TO} {place.said}"}))
            continue
        found += [
            Spoken("hi_places", alone={ends: ", ".join(said)}),
            Spoken("hi_places", after=_OF_RED, alone={ends: f"only {_TO} {place.said}"}),
        ]
        if place is not _ON_BODY[3]:  # what stops before the dorsal fin may leave a bare rear
            found.append(Spoken("hi_places", after=_OF_RED, alone={ends: f"{_STOPS} {place.said}"}))
    return tuple(found)


SAID_OF_SPANS: tuple[Saying, ...] = (
    *_white(),
    *_from_to(),
    *_begun(),
    *_ended(),
    Spoken("hi_places", after=_OF_SPANS, alone={"includes stem": f"{_TO} the tail (only|)"}),
)
"""What is said of where red and white begin and end."""
