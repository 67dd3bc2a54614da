"""A fish from above as SVG: its outline, its patches and colours as they were recorded, and nothing that was not.

It loads nothing, runs no script and needs no filter. Several drawings on one page share what they have in common (`Shared`).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from itertools import count

from attrs import Factory

from koirules.report.appearance import Appearance, described
from koirules.report.fish_body import FIN, FIN_RAYS, FIN_ROOT, LONG, ORDINARY, REACH, TOP, Form, n
from koirules.report.fish_patches import patch_path
from koirules.report.templating import plain, rendered
from koirules.values import define, frozen
from koirules.vocabulary.maps import Patch

SKINS: Mapping[str, str] = {"snow": "#ffffff", "white": "#fffdf8", "cream": "#fbf4e2", "yellow": "#f7ebc6"}
"""How each white ground (shiroji) is painted."""
REDS: Mapping[str, str] = {
    "yellow": "#e8973a",
    "orange": "#e0662c",
    "orange_red": "#d84a26",
    "red": "#c5301f",
    "purple_red": "#a8261f",
}
"""How each tone of the red (hi) is painted."""
PLAIN_RED = "#cf4a2c"
"""What stands for a red whose tone was not recorded."""
BLACKS: Mapping[str, str] = {"grey": "#565b63", "dull": "#383c43", "black": "#22252b", "lacquer": "#16181c"}
_BLACK = "#22252b"
_SLATE = "#6f8296"
"""Any other colour of a pattern."""
_METALS: Mapping[str, tuple[str, str, str]] = {
    "yamabuki": ("#c2a548", "#f9ecb8", "#e3cb74"),
    "platinum": ("#b9bfc2", "#fdfefe", "#dfe3e5"),
    "orenji": ("#c9712f", "#f9d2a6", "#eba564"),
    "nezu": ("#7f888e", "#d3d9dd", "#a9b1b7"),
    "gin_matsuba": ("#a5adb2", "#f5f7f8", "#cfd5d8"),
    "kin_matsuba": ("#a98a30", "#f1dd94", "#d0b458"),
}
"""Shade, light and middle of each colour of metal."""
_BLUES: Mapping[str, str] = {"black_blue": "#3d4f63", "dark": "#56718b", "mid": "#6d89a3", "light": "#8fa9c0"}
_NETS: Mapping[str, float] = {"none": 0.0, "faint": 0.3, "clear": 0.6, "crisp": 0.8}
_GROUNDS: Mapping[str, str] = {
    "chagoi": "#94704a",
    "soragoi": "#98a2aa",
    "karasugoi": "#2b2e34",
    "benigoi": "#c23a22",
    "kigoi": "#ecc75a",
    "midorigoi": "#8f9a5c",
}
"""Fish of one colour from nose to tail."""
_LUSTRES: Mapping[str, float] = {"dull": 0.13, "fair": 0.205, "good": 0.28, "superb": 0.4}
_EDGES: Mapping[str, int] = {"fair": 7, "blurred": 18}
"""Weight of the soft edge of a patch by its kiwa."""

_HEAD_ENDS, _SCALE = 21.8, 20.0
"""Where the scales begin (u), and how long one is in units of the drawing."""
_NET_TO = 88.0

_SPOTS: Mapping[str, tuple[float, float]] = {
    "nose": (4, 0),
    "lips": (1.2, 0),
    "left_cheek": (13, -62),
    "right_cheek": (13, 62),
    "left_eye": (8.4, -48),
    "right_eye": (8.4, 48),
    "left_gill": (21, -68),
    "right_gill": (21, 68),
    "crown": (14, 0),
    "nape": (20.5, 0),
    "shoulder": (28, 0),
    "front_back": (38, 0),
    "middle_back": (53, 12),
    "rear_back": (74, 10),
    "left_flank": (50, -72),
    "right_flank": (50, 72),
    "stem": (93, 0),
    "dorsal": (66, -4),
    "tail": (108, 0),
}
"""Where a mark is drawn of which only the part of the body was recorded: (u, v). A side that was not recorded is none."""

_SHOWN_AT = ("shimi_places", "scars", "fin_damage", "fin_faults")


@frozen
class _Painted:
    """A patch as the template paints it."""

    key: str
    path: str
    paint: str
    thin: bool
    windowed: bool
    edge: int
    sashi: tuple[tuple[int, float], ...]


@frozen
class _Mark:
    """A speck, or the cross of a scar or of damage."""

    x: int
    y: int
    size: int
    speck: bool


@frozen
class _Fin:
    """A fin that is coloured. part: which of its shapes. at: where it is rooted, turned and sized; side: -1 for the left one."""

    part: str
    side: int
    at: tuple[int, int, int, float]
    paint: str
    opacity: float


@frozen
class _Eye:
    x: int
    y: int
    turn: int
    red: bool
    missing: bool


_ORDINARY = Form(ORDINARY, 1.0, 1.0, 1.0, 1.45, card=True)


@define
class Shared:
    """What the drawings of one page have in common: outlines, fins, scales and blends of colour, each once.

    before: what its ids begin with, so that they meet no others.
    """

    before: str = "k"
    _forms: dict[Form, str] = Factory(dict)
    _blends: dict[tuple[str, str], str] = Factory(dict)
    _nets: dict[Form, str] = Factory(dict)
    _scaled: set[Form] = Factory(set)
    _signs: set[Form] = Factory(set)
    _numbers: Iterator[int] = Factory(count)

    def form(self, form: Form) -> str:
        """The id of a form."""
        return self._forms.setdefault(form, f"{self.before}{len(self._forms)}")

    def tail(self, colour: str) -> str:
        """The id of the blend of a tail fin, clear at its root."""
        return self._blends.setdefault(("tail", colour), f"{self.before}b{len(self._blends)}")

    def metal(self, name: str) -> str:
        """The id of a blend across a metallic body."""
        return self._blends.setdefault(("metal", name), f"{self.before}b{len(self._blends)}")

    def net(self, form: Form) -> str:
        """The id of the edges of the scales out to where a net reaches."""
        return self._nets.setdefault(form, f"{self.form(form)}n")

    def scales(self, form: Form) -> str:
        """The id of the edges of the scales as a fish without a net shows them."""
        self._scaled.add(form)
        return f"{self.form(form)}k"

    def sign(self, form: Form) -> str:
        """The id of the broken outline that stands for a fish whose pattern was not mapped."""
        self._signs.add(form)
        return f"{self.form(form)}u"

    def next_key(self) -> str:
        """A fresh id for what belongs to one drawing."""
        return f"{self.before}p{next(self._numbers)}"

    @property
    def definitions(self) -> str:
        """All of it as definitions of SVG."""
        return _tight(
            rendered(
                "shared.svg",
                before=self.before,
                forms=[
                    (key, form, self._nets.get(form), form in self._scaled, form in self._signs)
                    for form, key in self._forms.items()
                ],
                tails=[(key, colour) for (kind, colour), key in self._blends.items() if kind == "tail"],
                metals=[(key, *_METALS[name]) for (kind, name), key in self._blends.items() if kind == "metal"],
                ordinary=_ORDINARY if any(form.card for form in self._forms) else None,
                fin_sizes=sorted({form.pectorals for form in self._forms if form.card}),
                fin=FIN,
                fin_rays="".join(FIN_RAYS),
                fin_root=FIN_ROOT,
                net_to=_NET_TO,
            )
        )


def fish_group(look: Appearance, shared: Shared, *, card: bool = False) -> str:
    """The fish as a group of SVG, nose up, in units of `fish_body`; needs the definitions of `shared` in the same document."""
    if not look.is_mapped:
        # Every fish that was not mapped is the same outline: it is a sign, and no likeness.
        form = Form(ORDINARY, 1.0, 1.0, 1.0, 1.45, card=card)
        return f'<use href="#{shared.sign(form)}"/>'
    form = Form.of(look, card=card)
    key = shared.form(form)
    words = look.words
    red = REDS.get(words.get("hi_tone", ""), PLAIN_RED)
    black = BLACKS.get(words.get("sumi_quality", ""), _BLACK)
    metal = words.get("metal_colour")
    skin = _GROUNDS.get(words.get("kawari_kind", ""), SKINS.get(words.get("shiroji", ""), SKINS["white"]))
    netted = words.get("net_clarity") not in {None, "none"} or "blue_tone" in words
    tail = skin if metal is None else _METALS[metal][1]
    return _tight(
        rendered(
            "fish.svg",
            key=key,
            before=shared.before,
            form=form,
            skin=f"url(#{shared.metal(metal)})" if metal else skin,
            fins=tail,
            tail=shared.tail(tail),
            coloured=list(_coloured_fins(look, form, red, black)),
            patches=[
                _painted(look, form, patch, {"hi": red, "sumi": black}.get(colour, _SLATE), colour, shared)
                for colour, pattern in look.maps.items()
                for patch in pattern.patches
            ],
            back=_back(form) if netted else None,
            back_paint=_BLUES.get(words.get("blue_tone", ""), _BLUES["mid"]),
            net=shared.net(form) if netted else None,
            net_opacity=_NETS.get(words.get("net_clarity", ""), _NETS["clear"]),
            flanks=bool(look.flank_red) and netted,
            cheeks=[-1 if place == "left_cheek" else 1 for place in look.places.get("cheek_hi", ())],
            red=red,
            lips=round(form.width(1.5) * 0.62) if words.get("kuchibeni") == "yes" else None,
            lustre=_LUSTRES.get(words.get("lustre", "")),
            doitsu=form.large_scales() if _is_doitsu(look) else None,
            scales=shared.scales(form) if _shows_scales(look, form) and not netted else None,
            eyes=list(_eyes(look, form)) if any(look.places.get(name) for name in _EYES_DIFFER) else None,
            marks=list(_marks(look, form)),
        )
    )


def fish_drawing(
    look: Appearance,
    *,
    title: str,
    describe: str = "",
    key: str = "fish",
    upright: bool = False,
    card: bool = False,
    at: tuple[float, float, float, float] | None = None,
) -> str:
    """One `<svg>` element that stands alone.

    title: what it shows, such as the name of the fish; any text. describe: read out after the title; by default what is drawn,
    in words. key: begins the ids inside, and must differ between drawings of one document. upright: nose up, the fish's own left
    to the left; else nose to the left. at: left, top, width and height in a picture around it; else it has a viewBox and no size.
    """
    key = re.sub(r"[^A-Za-z0-9_-]", "-", key)
    shared = Shared(f"{key}-")
    group = fish_group(look, shared, card=card)
    return _tight(
        rendered(
            "alone.svg",
            view=view_box(upright=upright),
            at=at,
            key=key,
            title=_one_line(title),
            describe=_one_line(describe or described(look)),
            turned=not upright,
            definitions=shared.definitions,
            group=group,
        )
    )


def view_box(*, upright: bool) -> str:
    """The part of the plane in which a drawing lies."""
    return f"{-REACH} {TOP} {2 * REACH} {LONG}" if upright else f"{TOP} {-REACH} {LONG} {2 * REACH}"


def _painted(look: Appearance, form: Form, patch: Patch, paint: str, colour: str, shared: Shared) -> _Painted:
    kiwa = look.words.get("kiwa" if colour == "hi" else f"{colour}_kiwa", "")
    depth = patch.sashi * 10 if patch.sashi else (look.sashi_scales or 0) * _SCALE if colour == "hi" else 0
    front = min(u for u, _ in patch.outline)
    if front < _HEAD_ENDS:
        depth = 0
    layers = () if not round(depth) else (*((round(depth * part), 0.4) for part in (0, 0.35, 0.7)), (round(depth), 1.0))
    return _Painted(
        shared.next_key(), patch_path(form, patch), paint, patch.thin, bool(patch.windows), _EDGES.get(kiwa, 0), layers
    )


def _is_doitsu(look: Appearance) -> bool:
    rows = {"dorsal_rows", "lateral_row"} & look.words.keys()
    return bool(rows) or look.words.get("scalation") in {"kagami", "yoroi"}


def _shows_scales(look: Appearance, form: Form) -> bool:
    return not form.card and not _is_doitsu(look) and look.words.get("scalation") != "kawa"


def _back(form: Form) -> str:
    """The back of an asagi, behind the head and as far as the net reaches."""
    front = [(20.2, 0), (20.6, 22), (22, 46), (24.4, 70)]
    right = [(form.x(u, v), 10 * u) for u, v in (*front, *((u, _NET_TO) for u in (*range(27, 99, 4), 99)))]
    ring = [*right, *((-x, y) for x, y in reversed(right[1:]))]
    return "M" + "L".join(f"{n(x)} {n(y)}" for x, y in ring) + "z"


def _coloured_fins(look: Appearance, form: Form, red: str, black: str) -> Iterator[_Fin]:
    words = look.words
    sides = {"left_pectoral": -1, "right_pectoral": 1}
    roots = {place for trait in ("hi_on_fins", "motoaka") for place in look.places.get(trait, ())}
    for place, side in sides.items():
        if place in roots:
            yield _Fin("root", side, form.pectoral, red, 0.85)
    if "pelvic" in roots:
        for side in (-1, 1):
            yield _Fin("root", side, form.pelvic, red, 0.85)
    for side in (-1, 1):
        match words.get("pectoral_red"):
            case "base":
                yield _Fin("root", side, form.pectoral, red, 0.85)
            case "half" | "full_fin":
                yield _Fin("fin", side, form.pectoral, red, 0.5 if words["pectoral_red"] == "half" else 0.8)
            case _:
                pass
        match words.get("motoguro"):
            case "base":
                yield _Fin("root", side, form.pectoral, black, 0.85)
            case "whole_fin":
                yield _Fin("fin", side, form.pectoral, black, 0.85)
            case "stripes":
                yield _Fin("rays", side, form.pectoral, black, 0.85)
            case _:
                pass


_EYES_DIFFER = ("hi_on_eyes", "eyes_missing")


def _eyes(look: Appearance, form: Form) -> Iterator[_Eye]:
    for (x, y), name in zip(form.eyes_at, ("left_eye", "right_eye"), strict=True):
        yield _Eye(
            x,
            y,
            13 if x < 0 else -13,
            name in look.places.get("hi_on_eyes", ()),
            name in look.places.get("eyes_missing", ()),
        )


def _marks(look: Appearance, form: Form) -> Iterator[_Mark]:
    body = None if not look.length else look.length / 1.229
    known = None if look.speck_size is None or not body else look.speck_size / body * 500
    least = 9 if form.card else 6
    speck = round(min(max(known if known is not None else least, least), 24))
    for trait in _SHOWN_AT:
        for place in look.places.get(trait, ()):
            for x, y in _spots(form, place):
                yield _Mark(x, y, speck if trait == "shimi_places" else 14, trait == "shimi_places")


def _spots(form: Form, place: str) -> Iterator[tuple[int, int]]:
    if place in _SPOTS:
        u, v = _SPOTS[place]
        yield round(form.x(min(u, 100), v)), round(10 * u)
    elif place in {"left_pectoral", "right_pectoral"}:
        x, y, _, size = form.pectoral
        side = -1 if place == "left_pectoral" else 1
        yield side * round(x + 75 * size), round(y + 84 * size)
    elif place == "pelvic":
        # Which of the two was not recorded: the mark stands between them, on the body.
        yield 0, 575


def _one_line(text: str) -> str:
    return " ".join(plain(text).split())


def _tight(text: str) -> str:
    """Markup of which each line is an element, without the ends of lines."""
    return "".join(line.strip() for line in text.split("\n"))
