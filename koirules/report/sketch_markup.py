"""The markup of a sketch, held to what can stand on any page: shapes, text and colours, and nothing that acts or is fetched.

A sketch comes from a stranger's code. It is read as XML, each element and attribute is looked up in a list of those that are
harmless, and it is written anew from what was read.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from math import isfinite
from typing import TYPE_CHECKING

from attrs import field

from koirules.problems.quoting import quoted
from koirules.report.page_markup import Markup, element, escaped
from koirules.values import frozen
from koirules.vocabulary.drawings import Sketch

if TYPE_CHECKING:
    from xml.etree.ElementTree import Element

_NAMESPACE = "http://www.w3.org/2000/svg"

_ELEMENTS = """
circle clipPath defs desc ellipse g line linearGradient mask path pattern polygon polyline radialGradient rect stop symbol
text title tspan use
"""
ELEMENTS = frozenset(_ELEMENTS.split())
"""The elements that a sketch may have."""

_ATTRIBUTES = """
clip-path clip-rule clipPathUnits cx cy d dominant-baseline dx dy fill fill-opacity fill-rule font-family font-size font-style
font-weight fr fx fy gradientTransform gradientUnits height href id lang letter-spacing mask maskContentUnits maskUnits offset
opacity paint-order pathLength patternContentUnits patternTransform patternUnits points preserveAspectRatio r refX refY
rotate rx ry spreadMethod stop-color stop-opacity stroke stroke-dasharray stroke-dashoffset stroke-linecap stroke-linejoin
stroke-miterlimit stroke-opacity stroke-width text-anchor textLength transform vector-effect viewBox visibility width
x x1 x2 y y1 y2
"""
ATTRIBUTES = frozenset(_ATTRIBUTES.split())
"""The attributes that an element may have; `style`, `class` and what begins with `on` are none of them."""

LONGEST, DEEPEST, MOST_DRAWN = 200_000, 60, 20_000
"""How many letters a sketch may have, how deep its elements may stand in one another, and how many are drawn in the end."""
_LONGEST_WORDS = 2_000
_WIDEST, _STEEPEST = 100_000, 10
"""The largest side of a sketch, and the greatest ratio between its sides."""

_ID = re.compile(r"[A-Za-z_][A-Za-z0-9_-]*")
# No quotation mark, colon, semicolon, slash or backslash: nothing that an address or an escape of a style needs.
_VALUE = re.compile(r"[A-Za-z0-9_#(),.%+\- \t\r\n]*")
_LINK = re.compile(r"url\(#([A-Za-z_][A-Za-z0-9_-]*)\)")
_WITH_TEXT = frozenset({"desc", "text", "title", "tspan"})


class SketchError(Exception):
    """What is wrong with a sketch, as the end of a sentence that begins with the drawing."""


@frozen
class SoundSketch:
    """A sketch that can stand on a page."""

    wide: float
    tall: float
    words: str
    _root: Element = field(repr=False, eq=False, hash=False)

    @property
    def view_box(self) -> str:
        """The part of the plane in which it lies."""
        return f"0 0 {self.wide:g} {self.tall:g}"

    def group(self, key: str) -> str:
        """What stands inside of its `<svg>` element. key: begins its ids, so that they meet no others of the page."""
        return "".join(_written(child, key) for child in self._root)

    def alone(self, title: str, key: str) -> Markup:
        """One `<svg>` element that stands alone. title: any text."""
        return element(
            "svg",
            element("title", " ".join(title.split()), id=f"{key}-title"),
            element("desc", self.words, id=f"{key}-desc"),
            Markup(self.group(f"{key}-")),
            xmlns=_NAMESPACE,
            viewBox=self.view_box,
            role="img",
            aria_labelledby=f"{key}-title {key}-desc",
        )


def sound(given: object) -> SoundSketch:
    """What a drawing gave, looked through. Raises SketchError."""
    if not isinstance(given, Sketch):
        raise SketchError(f"gives a {type(given).__name__}, and no Sketch")
    for name in ("wide", "tall"):
        side = getattr(given, name)
        if isinstance(side, bool) or not isinstance(side, int | float) or not isfinite(side) or not 0 < side <= _WIDEST:
            raise SketchError(f"says that it is {quoted(str(side))} {name}, and a side is a number above 0")
    if max(given.wide, given.tall) > _STEEPEST * min(given.wide, given.tall):
        raise SketchError(f"is {given.wide:g} wide and {given.tall:g} tall: one side is more than ten times the other")
    words: object = given.words
    if not isinstance(words, str) or not words.strip() or len(words) > _LONGEST_WORDS:
        raise SketchError("does not say in words what is to be seen (1 to 2,000 letters)")
    svg: object = given.svg
    if not isinstance(svg, str):
        raise SketchError(f"gives its svg as a {type(svg).__name__}, and not as text")
    if len(svg) > LONGEST:
        raise SketchError(f"has {len(svg):,} letters of SVG, and {LONGEST:,} are the most")
    root = _read(svg)
    _check_elements(root)
    _check_links(root)
    return SoundSketch(float(given.wide), float(given.tall), " ".join(words.split()), root)


def _read(svg: str) -> Element:
    from xml.etree.ElementTree import ParseError, fromstring

    try:
        # What stands inside an element can bring no document type, and so no entities of its own.
        return fromstring(f'<svg xmlns="{_NAMESPACE}">{svg}</svg>')  # noqa: S314
    except (ParseError, ValueError) as error:
        raise SketchError(f"gives SVG that is not well formed ({error})") from None


def _name(one: Element) -> str:
    """The name of an element of SVG; that of another language with its namespace."""
    return one.tag.removeprefix(f"{{{_NAMESPACE}}}")


def _inside(root: Element) -> Iterator[tuple[Element, int]]:
    """Every element with how deep it stands."""
    left = [(child, 1) for child in reversed(root)]
    while left:
        one, deep = left.pop()
        yield one, deep
        left.extend((child, deep + 1) for child in reversed(one))


def _check_elements(root: Element) -> None:
    _check_text(root)
    for one, deep in _inside(root):
        name = _name(one)
        if name not in ELEMENTS:
            inside = "; give what stands inside of it" if name == "svg" else ""
            raise SketchError(f"has the element {quoted(name)}, which a sketch may not have{inside}")
        if deep > DEEPEST:
            raise SketchError(f"has elements that stand more than {DEEPEST} deep in one another")
        for attribute, value in one.attrib.items():
            _check_attribute(name, attribute, value)
        if name not in _WITH_TEXT:
            _check_text(one)


def _check_text(one: Element) -> None:
    """Whether an element that shows no text has none."""
    if any((text or "").strip() for text in (one.text, *(child.tail for child in one))):
        raise SketchError("has text outside of a `text` element")


def _check_attribute(name: str, attribute: str, value: str) -> None:
    if attribute not in ATTRIBUTES:
        raise SketchError(f"has the attribute {quoted(attribute)} on {quoted(name)}, which a sketch may not have")
    if attribute == "id":
        fits = bool(_ID.fullmatch(value))
    elif attribute == "href":
        fits = value.startswith("#") and bool(_ID.fullmatch(value[1:]))
    else:
        fits = bool(_VALUE.fullmatch(value)) and ("url" not in value.lower() or bool(_LINK.fullmatch(value)))
    if not fits:
        raise SketchError(f"has {quoted(value[:60])} as the {attribute} of {quoted(name)}, which a sketch may not have")


def _links(one: Element) -> Iterator[str]:
    """The ids that an element points to."""
    for attribute, value in one.attrib.items():
        if attribute == "href":
            yield value[1:]
        elif (found := _LINK.fullmatch(value)) is not None:
            yield found[1]


def _check_links(root: Element) -> None:
    """Whether each id stands once, each link leads to one, and what is drawn in the end stays within bounds."""
    named: dict[str, Element] = {}
    for one, _ in _inside(root):
        name = one.attrib.get("id")
        if name in named:
            raise SketchError(f"has the id {quoted(name)} twice")
        if name is not None:
            named[name] = one
    drawn: dict[Element, int] = {}

    def count(one: Element, chain: int) -> int:
        if drawn.get(one) == 0:
            raise SketchError(f"has the element {quoted(_name(one))} that leads to itself")
        if chain > 2 * DEEPEST:
            raise SketchError("has links that lead too far from one to the next")
        if one not in drawn:
            drawn[one] = 0
            number = 1 + sum(count(child, chain + 1) for child in one)
            for name in _links(one):
                if name not in named:
                    raise SketchError(f"points to the id {quoted(name)}, which it has not")
                number += count(named[name], chain + 1)
            drawn[one] = number
        return drawn[one]

    if sum(count(child, 1) for child in root) > MOST_DRAWN:
        raise SketchError(f"draws more than {MOST_DRAWN:,} elements")


def _written(one: Element, key: str) -> str:
    name = _name(one)
    parts = [f"<{name}"]
    for attribute, value in one.attrib.items():
        parts.append(f' {attribute}="{escaped(_renamed(attribute, value, key))}"')
    if len(one) == 0 and not (one.text or "").strip():
        return "".join([*parts, "/>"])
    text = name in _WITH_TEXT
    parts.append(f">{escaped(one.text) if text and one.text else ''}")
    for child in one:
        parts.append(_written(child, key) + (escaped(child.tail) if text and child.tail else ""))
    return "".join([*parts, f"</{name}>"])


def _renamed(attribute: str, value: str, key: str) -> str:
    if attribute == "id":
        return f"{key}{value}"
    if attribute == "href":
        return f"#{key}{value[1:]}"
    return _LINK.sub(lambda found: f"url(#{key}{found[1]})", value)
