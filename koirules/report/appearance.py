"""What a fish looks like, as far as it was recorded: the part of a record that a drawing shows, and the part it can only tell."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import log

from attrs import evolve, field

from koirules.languages import ENGLISH, Tongue, to_say
from koirules.values import frozen
from koirules.vocabulary.kinds import Choice, Count, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.maps import PatchMap, decimal
from koirules.vocabulary.readings import PlaceSet, Reading, Span, is_sure, words_in
from koirules.vocabulary.traits import Trait

LENGTH_OVER_BODY = 1.229
"""Total length over the length from the nose to the end of the stem; from memory."""

_OUTLINES = {"poor": 0.215, "fair": 0.228, "good": 0.24, "excellent": 0.25}
"""Greatest width over the length of the body by the word for the outline from above; from memory."""

_YOUNG, _GROWN = (15.0, 0.215), (60.0, 0.27)
"""Total length in cm and greatest width over the length of the body of a young fish and of a grown one; from memory."""

_SHOULDERS = {"weak": 0.95, "strong": 1.03}
_STEMS = {"thin": 0.86, "strong": 1.12}
_PECTORALS = {"small": 0.86, "large": 1.12}
_GILL_SHARE, _STEM_SHARE = 0.93, 0.36
"""Width at the gill covers and at the stem over the greatest width, in the outline that is drawn where neither is recorded."""


@frozen
class Appearance:
    """What is to be seen of a fish.

    maps: by the word of their colour (`hi`, `sumi`). length: total, in cm. breadth: greatest width over the length of the body.
    shoulders, stem, pectorals: as multiples of the ordinary ones. sashi_scales: depth of the front edge of the red, in scales.
    specks: how many there are. speck_size: in cm. flank_red: height of the red on the flanks, in %. words: what was recorded
    in one word, by trait. places: where something was recorded, by trait. told: what a drawing cannot place, as short phrases.
    A trait that was not recorded, or not surely, is in none of them.
    """

    maps: Mapping[str, PatchMap] = field(factory=dict, hash=False)
    length: float | None = None
    breadth: float = 0.24
    shoulders: float = 1.0
    stem: float = 1.0
    pectorals: float = 1.0
    sashi_scales: float | None = None
    specks: int = 0
    speck_size: float | None = None
    flank_red: float | None = None
    words: Mapping[str, str] = field(factory=dict, hash=False)
    places: Mapping[str, tuple[str, ...]] = field(factory=dict, hash=False)
    told: tuple[str, ...] = ()

    @property
    def is_mapped(self) -> bool:
        """Whether there is enough to draw more than an outline: a map, a net, or one colour from nose to tail."""
        return bool(self.maps) or any(name in self.words for name in _WHOLE_BODY)

    def grown(self, length: float, stouter: float, maps: Mapping[str, PatchMap]) -> Appearance:
        """The same fish at a greater length, as a model has it: what a model does not reach is left out.

        stouter: by how much its girth over its length changes. The colours stay as they are, since nothing says how they change.
        """
        return evolve(
            self,
            maps=maps,
            length=length,
            breadth=self.breadth * stouter,
            sashi_scales=0.0,
            places=_lasting(self.places),
            told=(),
        )


_WHOLE_BODY = ("metal_colour", "kawari_kind", "net_clarity", "blue_tone")
_LASTING = ("hi_on_eyes", "hi_on_fins", "motoaka", "cheek_hi", "eyes_missing")


def _lasting(places: Mapping[str, tuple[str, ...]]) -> Mapping[str, tuple[str, ...]]:
    return {name: where for name, where in places.items() if name in _LASTING}


def appearance_of(traits: Mapping[str, Trait], readings: Mapping[str, Reading], tongue: Tongue = ENGLISH) -> Appearance:
    """What a record says about the looks of its fish. tongue: the language of what is told of it."""
    words: dict[str, str] = {}
    places: dict[str, tuple[str, ...]] = {}
    numbers: dict[str, float] = {}
    maps: dict[str, PatchMap] = {}
    for name, reading in readings.items():
        trait = traits.get(name)
        if trait is None or not is_sure(trait.kind, reading):
            continue
        match trait.kind, reading:
            case (Patches(), PatchMap()):
                maps[colour_of(name)] = reading
            case (Scale() | Choice() | YesNo(), int(bits)):
                words[name] = words_in(trait.kind, bits)[0]
            case (Places(), PlaceSet(sure, _)):
                places[name] = words_in(trait.kind, sure)
            case (Number() | Count(), Span(low, _)):
                numbers[name] = low
            case _:
                pass
    return _seen(words, places, numbers, maps, tongue)


def colour_of(trait: str) -> str:
    """The word of the colour that a map shows: `hi` of the trait `hi_patches`."""
    return trait.removesuffix("_patches")


def _seen(
    words: Mapping[str, str],
    places: Mapping[str, tuple[str, ...]],
    numbers: Mapping[str, float],
    maps: Mapping[str, PatchMap],
    tongue: Tongue,
) -> Appearance:
    length, width = numbers.get("length"), numbers.get("width")
    body = numbers.get("standard_length") or (None if length is None else length / LENGTH_OVER_BODY)
    measured = None if width is None or not body else width / body
    shoulders = _SHOULDERS.get(words.get("shoulders", ""), 1.0)
    stem = _STEMS.get(words.get("tail_stem", ""), 1.0)
    if width:
        if "gill_width" in numbers:
            shoulders = _held(numbers["gill_width"] / width / _GILL_SHARE, 0.85, 1.07)
        if "stem_width" in numbers:
            stem = _held(numbers["stem_width"] / width / _STEM_SHARE, 0.6, 1.6)
    return Appearance(
        maps=maps,
        length=length,
        breadth=_held(measured if measured is not None else _breadth(words, length), 0.12, 0.4),
        shoulders=shoulders,
        stem=stem,
        pectorals=_PECTORALS.get(words.get("pectoral_size", ""), 1.0),
        sashi_scales=numbers.get("sashi_depth"),
        specks=int(numbers.get("shimi_count", 0)),
        speck_size=numbers.get("shimi_size"),
        flank_red=numbers.get("hi_height"),
        words=words,
        places=places,
        told=tuple(_untold(words, places, numbers, maps, tongue)),
    )


def _held(value: float, low: float, high: float) -> float:
    return min(max(value, low), high)


def _breadth(words: Mapping[str, str], length: float | None) -> float:
    """How broad a body is drawn that nobody measured: by the word for its outline, else by its length."""
    if words.get("outline") in _OUTLINES:
        return _OUTLINES[words["outline"]]
    if length is None:
        return _OUTLINES["good"]
    part = _held(log(length / _YOUNG[0]) / log(_GROWN[0] / _YOUNG[0]), 0.0, 1.0) if length > 0 else 0.0
    return _YOUNG[1] + part * (_GROWN[1] - _YOUNG[1])


def _untold(
    words: Mapping[str, str],
    places: Mapping[str, tuple[str, ...]],
    numbers: Mapping[str, float],
    maps: Mapping[str, PatchMap],
    tongue: Tongue,
) -> Iterator[str]:
    """What was recorded without its place, or lies where nobody sees it from above."""
    specks = int(numbers.get("shimi_count", 0))
    shown = [place for place in places.get("shimi_places", ()) if place not in _BELOW]
    rest = specks - len(shown)
    if rest > 0 and shown:
        yield tongue.plural("{number} more speck, place not recorded", "{number} more specks, place not recorded", rest)
    elif rest > 0:
        yield tongue.plural("{number} speck, place not recorded", "{number} specks, place not recorded", rest)
    drawn = any(patch.windows for pattern in maps.values() for patch in pattern.patches)
    windows, head_windows, splashes, lost, barbels = (
        int(numbers.get(name, 0)) for name in ("windows", "head_windows", "tobihi", "scale_loss", "barbels_missing")
    )
    if windows and not drawn:
        yield tongue.plural(
            "{number} white window, place not recorded", "{number} white windows, place not recorded", windows
        )
    if head_windows and not drawn:
        yield tongue("{number} white window on the head", number=head_windows)
    if splashes:
        yield tongue.plural(
            "{number} red splash, place not recorded", "{number} red splashes, place not recorded", splashes
        )
    if words.get("hikui") == "yes":
        yield tongue("fading red (hikui), place not recorded")
    if lost:
        yield tongue.plural("{number} lost scale, place not recorded", "{number} lost scales, place not recorded", lost)
    if barbels:
        yield tongue.plural(
            "{number} barbel missing, which is not recorded", "{number} barbels missing, which is not recorded", barbels
        )
    for trait, what in (
        ("shimi_places", to_say("speck below: {place}")),
        ("scars", to_say("scar below: {place}")),
        ("fin_damage", to_say("torn fin below: {place}")),
        ("fin_faults", to_say("faulty fin below: {place}")),
    ):
        for place in places.get(trait, ()):
            if place in _BELOW:
                yield tongue(what, place=tongue.of(place, trait))


_BELOW = ("belly", "anal")
"""Places that are not seen from above."""


def described(look: Appearance, tongue: Tongue = ENGLISH) -> str:
    """Where the patches of each colour lie, and what else is drawn, in words for those who do not see the drawing."""
    told = [tongue("A koi seen from above.")]
    if not look.is_mapped:
        told = [tongue("The outline of a koi from above; its pattern was not mapped.")]
    for colour, pattern in look.maps.items():
        name = tongue.of(colour, "colour of a map")
        if not pattern.patches:
            told.append(tongue("No {colour}.", colour=name))
            continue
        told.append(
            tongue.plural(
                "{colour}: {number} patch, along the body from nose to tail at {reach}.",
                "{colour}: {number} patches, along the body from nose to tail at {reach}.",
                len(pattern.patches),
                colour=name,
                reach=tongue.joined(_reach(pattern, tongue)),
            )
        )
    if look.maps.get("hi", PatchMap()).patches and "hi_tone" not in look.words:
        told.append(tongue("The tone of the red was not recorded; a plain red stands for it."))
    for trait, what in (
        ("hi_on_eyes", to_say("red on: {places}.")),
        ("hi_on_fins", to_say("red on fins: {places}.")),
        ("motoaka", to_say("red fin roots: {places}.")),
        ("shimi_places", to_say("specks at: {places}.")),
        ("scars", to_say("scars at: {places}.")),
        ("fin_damage", to_say("torn fins: {places}.")),
    ):
        if look.places.get(trait):
            named = (tongue.of(place.replace("_", " "), trait) for place in look.places[trait])
            told.append(tongue(what, places=tongue.joined(named)))
    if look.told:
        told.append(tongue("Not drawn: {what}.", what=tongue.joined(look.told, "; ")))
    return tongue.joined(told, " ")


def _reach(pattern: PatchMap, tongue: Tongue) -> Iterator[str]:
    """From where to where each patch lies along the body."""
    for patch in pattern.patches:
        along = [u for u, _ in patch.outline]
        if along:
            ends = tongue.stretch(decimal(min(along)), tongue.quantity(f"{decimal(max(along))} %"))
            yield tongue("{ends} (thin)", ends=ends) if patch.thin else ends
