"""How sorters say where along the body red (hi) and white begin and end: `red from the eyes to the shoulder`.

Red that begins at a place lies on the stretch behind it, red that ends at one on the stretch before it. White from one place to
another leaves the stretches that are wholly between them without red.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.builtin.red_pattern import ALONG, DETAILS, PATTERN
from koirules.values import frozen
from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether

_OF_RED = tuple(trait.name for trait in (*PATTERN, *DETAILS))
"""Traits behind which `starts at the shoulder` is said of red."""

_OF_SPANS = ("hi_places", "head_hi_front", "steps", "head_hi")
"""Traits behind which `back to the shoulder` is said of red."""

_ON_TOP = "(dorsal|dorsal fin|back fin|top fin|fin on (the|) (top|back))"
_DORSAL = f"({_ON_TOP}|fin)"
_GILLS = "(gill|gills|gill (line|edge|cover|plate|lid)|(edge|end) of the (gill|gill cover|gill plate))"
_ROOT = (
    "(tail (root|joint|base|stem|tube|end)|(root|base|start|beginning) of the tail|ozutsu|peduncle|where the tail "
    "(begins|starts|joins on|joins|gets narrow))"
)
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
        f"({_AT} {_GILLS}|(just|right|) behind the (gill|gill cover|gill plate|head|skull)|(end|back|rear) of the "
        "(head|skull)|(by|near|round|around|) (the|) (neck|nape)|where the head (ends|stops))",
        2,
        1,
        2,
        1,
    ),
    _Place(
        f"({_AT} ((both|left|right|) shoulder|shoulder line|pec|pectoral|pectoral fin|(first|second|third|fourth) "
        "(scale|row|scale row) behind the (head|gill))|(by|near|round|around|between) (the|) (shoulder|pec|pectoral))",
        3,
        2,
        4,
        2,
    ),
    _Place("(just|right|a bit|) (behind|past|after) the (shoulder|pec|pectoral)", 4, 3, 4, 2),
    _Place(
        f"({_AT} (the|) (front|start|beginning|first ray|front end|front edge|front ray) of the {_ON_TOP}|(just|right|) "
        f"(in front of the {_ON_TOP}|(before|ahead of) the {_DORSAL})|where the {_DORSAL} (starts|begins)|under the (front|"
        f"start) of the {_ON_TOP})",
        5,
        4,
        5,
        4,
    ),
    _Place(
        f"((level with|right|just|) (at|on|under|below|by|around|round|beside|) (the|) ({_ON_TOP}|mid dorsal|middorsal|"
        f"(middle|mid|half) of the ({_ON_TOP}|back|body|fish)|mid (back|body))|(level with|under|below|by|around|round|"
        "beside|) (the|) fin|(half way|halfway) (down|along|) (the|) (back|body|))",
        5,
        4,
        6,
        4,
    ),
    _Place(
        f"({_AT} (the|) (end|back|rear|last ray|rear end|back end|rear edge) of the {_ON_TOP}|(just|right|a bit|well|) "
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

_BIT = "(patch|step|dan|field|piece|block|saddle|plate|island|band|blob|splodge|blotch|chunk|lump|marking|slab)"
_NOUN = f"((red|) {_BIT}|1|red|red 1)"
_SIZE = "(big|large|long|small|little|short|tiny|broad|wide|single|solid|round|thin|narrow|bold|great|nice|good|neat|)"
_ORDER = "(first|second|third|fourth|next|middle|other|last|back|rear|front|final|hind|head|tail|shoulder)"
_PATCH = f"({_BIT}|sheet|strip|stretch|run|stripe|bar|smear)"
_A = "(only|just|) (a|1|another|2|) (great|) (big|large|small|little|tiny|)"
_REST = (
    f"|{_A} {_SIZE} (red|) {_PATCH} (of red|)|{_PATCH} (1|2|3|4|5)|"
    "(big|long|1 long|1 big|all|solid|) (red|red again)|colour|pattern)"
)
_ONE = f"({_ORDER} {_SIZE} {_NOUN}{_REST}"
_LATER = _ORDER.replace("first|", "").replace("front|", "")
_LATER_ONE = f"({_LATER} {_SIZE} {_NOUN}|(a|1|another) {_SIZE} (red|) {_PATCH} (of red|)|{_PATCH} (2|3|4|5))"
_EARLY = f"(first|second|third|next|middle|other|front|head|shoulder) {_SIZE} {_NOUN}"
"""What may end at the dorsal fin and leaves no bare rear: the last red does."""
_THEN = "(then|and then|and|then there is|there is|)"
_GOES = "(goes|runs|reaches|comes|is|lies|going|running|stretches|extends|carries|flows|carries on|goes on|)"
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
        # `shoulders red to the pecs` runs down, and not back.
        back_to = place.said.replace("|pec|pectoral|pectoral fin|", "|") if place is _ON_BODY[1] else place.said
        said = (
            f"{_THEN} {one} {_GOES} {_TO} {place.said} ({_WHOLE}|)",
            f"{_THEN} {_EARLY if place in _ON_BODY[3:6] else one} {_STOPS} {place.said}",
            f"(first|second|third|next|middle|head) {_STOPS} {place.said}",
        )
        ends = _includes(place.last)
        found += [
            Spoken(
                "hi_places",
                after=_OF_RED,
                alone={
                    _includes(
                        place.first
                    ): f"{_THEN} (a|another) (big|large|small|little|tiny|short|long) 1 (sits|lies|) {place.said}"
                },
            ),
            Spoken("hi_places", after=_OF_SPANS, alone={ends: f"({_GOES}|) {_TO} {back_to} (only|{_WHOLE}|)"}),
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


_ADJECTIVE = (
    "(big|large|long|small|little|tiny|short|broad|wide|single|solid|round|thin|narrow|bold|great|nice|good|neat|clean|fat|"
    "huge|lovely|separate|another|heavy|strong|thick|square|oval|clear|decent|proper|other)"
)
_LYING = "(right|just|exactly|lies|)"
_PLACED = (
    f"((1|just 1|only 1|) ({_ADJECTIVE} ({_ADJECTIVE}|)|) (red|) ({_PATCH} (of red|)|(bit|area|spot|dab) of red|red bit|"
    f"red area)|red) {_LYING}"
)
_ORDERED = (
    f"(first|second|third|fourth|last|next|final|middle|front|rear|other) ({_ADJECTIVE}|) ((red|) {_PATCH}|1|red) {_LYING}, "
    f"({_ADJECTIVE}|) (red|) (heart|butterfly|triangle|square|oval|diamond|wedge|crescent) (of red|) {_LYING}"
)
_SUCH_A = f"((1|just 1|only 1|) ({_ADJECTIVE} ({_ADJECTIVE}|)|) (red|) {_PATCH} (of red|))"
_HEAD = "(the|its|her|his) (head|forehead|skull|crown|top of the head)"
_BARE = "(all|all just|completely|totally|quite|left|just|only|) (white|bare|empty|blank|naked|clean|clear|free|without red)"
_WHITE = "(white|clean white|pure white|bare|empty|naked|free)"
_NONE = "(no|no more|not a scale of|hardly any) (red|colour|pattern|patch|patches)"


_STRETCHES = {
    "count at least 1": "back, (along|down) the back, rear, rear half, back half, back end, rear end, back third, rear "
    "third, last third, front, front end, front third",
    "includes nape": "(round|around|by|near) the neck, behind the gills, behind the head, back of the head",
    "includes shoulder": "shoulder line, (level with|behind|by|near) the (pec|pectoral), both shoulders, "
    "(round|around|between) the shoulders",
    "includes front_back": f"(just|right|) (in front of the {_ON_TOP}|(before|ahead of) the {_DORSAL}), (just|right|a "
    "bit|) (behind|after|past) the (shoulder|pec|pectoral)",
    "includes middle_back": f"mid, (on|under|level with|at) the (front|start|beginning) of the {_ON_TOP}, (level with|"
    f"under|below|by|around|round|beside) the (fin|{_ON_TOP}), mid body, mid back, middle of the (fish|body), half way "
    "(down|along|) (the|) (back|body|), halfway (down|along|) (the|) (back|body|)",
    "includes rear_back": f"(just|right|a bit|well|) (behind|after|past) the {_DORSAL}, hips, hip, (at|) the (end|"
    f"rear) of the {_ON_TOP}",
    "includes stem": "end, near the end, towards the end, by the end, close to the end, where the tail starts, in "
    "front of the tail, tail end, tail joint, before the tail fin, just before the tail, right by the tail",
}
"""What is said of where a patch lies, by the stretch of the back."""
_NAMES = {
    "includes nape": "neck, nape",
    "includes shoulder": "(left|right|) shoulder",
    "includes middle_back": "middle",
    "includes stem": "tail stem, stem, near the tail, by the tail, close to the tail, tail root, tail base, peduncle, ozutsu",
}


def _without(*stretches: str) -> str:
    """That red lies on none of some stretches."""
    return f"hi_places is at least 0 of ({', '.join(name for name in ALONG if name not in stretches)})"


def _bare(place: str) -> str:
    """What says that a place has no red."""
    return f"(the|) {place} (is|was|) {_BARE}, {_WHITE} {place}, {_NONE} (on|at|in|round|around|near|by) the {place}"


def _stretches() -> tuple[Saying, ...]:
    """That red lies on a stretch, or does not: in the words that longer remarks are told again in."""
    return tuple(
        said
        for name in ALONG
        for said in (
            Spoken("hi_places", alone={f"includes {name}": f"red along the {name.replace('_', ' ')}"}),
            SpokenTogether(f"no red along the {name.replace('_', ' ')}", _without(name)),
        )
    )


SAID_OF_SPANS: tuple[Saying, ...] = (
    *_stretches(),
    Spoken(
        "head_hi_front",
        alone={
            "at most nostrils": "white (up|down|back|) to the (nostrils|nose holes)",
            "at most eye_line": "white (up|back|) to the eyes",
            "is behind_eyes": "white (up|back|) to behind the eyes",
        },
    ),
    Spoken(
        "hi_places",
        beside=_PLACED,
        levels={
            **_STRETCHES,
            "includes crown": "forehead, skull, on top of the head, between the eyes, above the eyes",
        },
    ),
    Spoken(
        "hi_places",
        _ORDERED,
        apart=True,  # `first patch on the head` says no more than that it is the first
        levels={
            reading: f"{said}, {_NAMES[reading]}" if reading in _NAMES else said for reading, said in _STRETCHES.items()
        },
    ),
    Spoken(
        "hi_places",
        alone={
            "includes stem": f"{_SUCH_A} (lies|sits|) (on|by|near|against) the tail",
            "includes middle_back": f"{_SUCH_A} (lies|sits|) (right|just|exactly|) on the {_ON_TOP}",
        },
    ),
    Spoken(
        "maruten",
        alone={
            "is yes": "(red|) (perfectly|neat|nice|small|big|little|) round (red|) (spot|dot|patch|mark|blob|cap|circle|ball|"
            f"field) on {_HEAD}"
        },
    ),
    Spoken(
        "head_hi",
        alone={
            "at least small": f"((1|just 1|only 1|) ({_ADJECTIVE} ({_ADJECTIVE}|)|) (red|) ({_BIT}|stripe|bar|spot|dot|mark|cap|"
            f"hat|blotch|blob|bit of red)|red) on {_HEAD}"
        },
    ),
    Spoken("hi_places", alone={"includes middle_back": "red (in|at|round|around) the middle (of (it|the back)|)"}),
    SpokenTogether(_bare("(neck|nape|kubi)"), _without("nape")),
    SpokenTogether(
        f"{_NONE} on the (back|body), (the|) back itself (is|) {_BARE}, (nothing|no red) on the back (at all|)",
        _without("shoulder", "front_back", "middle_back", "rear_back"),
    ),
    SpokenTogether(_bare("(tail stem|stem|ozutsu|peduncle|tail tube)"), _without("stem")),
    SpokenTogether(
        "(white|bare|empty|clean|clean white|all white|no red) (all the way|right|) (to|up to|till|until) (the|) "
        f"({_DORSAL}|(front|start) of the {_ON_TOP}), back (is|) {_BARE} (to|up to|till|until) the {_DORSAL}",
        _without("shoulder", "front_back"),
    ),
    Spoken(
        "hi_places",
        alone={
            "count at least 1": "(front|first|back|rear|last|hind) (third|quarter) (is|) (all|) red (again|too|as well|)"
        },
    ),
    SpokenTogether("(middle|centre) third (is|) (all|) red", "hi_places includes middle_back"),
    *_white(),
    *_from_to(),
    *_begun(),
    *_ended(),
    Spoken("hi_places", after=_OF_SPANS, alone={"includes stem": f"{_TO} the tail (only|)"}),
)
"""What is said of where red and white begin and end."""
