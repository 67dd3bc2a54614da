"""Reads a pattern map as a person writes it in a cell, or as a program traces it.

The short form says of a patch where it starts and ends along the body and how far it reaches to each side:
`8 to 26 left 60 right 55`. `left 60` alone reaches from the line of the back to 60, `left 20 to 70` leaves the back free,
`both 60` is the same on both sides, and without sides it is the whole back between the lateral lines. `sashi 2` and `thin`
may follow. The full form is a polygon or multipolygon of WKT (Open Geospatial Consortium, Simple Feature Access, part 1) in
(u, v); the rings after the first are windows.
"""

from __future__ import annotations

import re

from koirules.vocabulary import map_misreads as wrong
from koirules.vocabulary.maps import BELLY, DECIMALS, LENGTH, Patch, PatchMap, Ring, boxed, decimal, doubled_area
from koirules.vocabulary.misreads import Misread

MOST_LETTERS = 32_767
"""So much a cell of a spreadsheet can hold."""
MOST_CORNERS = 2_000

_NUMBER = r"[+-]?[0-9]+(?:[.,][0-9]+)?"
_REACH = re.compile(rf"({_NUMBER})\s*%?\s*(?:to|-)\s*({_NUMBER})\s*%?(?![\w.])\s*(.*)", re.IGNORECASE)
_SIDE = re.compile(
    rf"[,\s]*(left|right|both|l|r|sashi|thin)(?![a-z])\s*(?:({_NUMBER})\s*%?(?:\s*(?:to|-)\s*({_NUMBER})\s*%?)?)?",
    re.IGNORECASE,
)
_POLYGON = re.compile(r"\s*(MULTI)?POLYGON\s*(EMPTY|\()", re.IGNORECASE)
_CORNER = re.compile(
    r"\s*([+-]?[0-9]*\.?[0-9]+(?:e[+-]?[0-9]+)?)\s+([+-]?[0-9]*\.?[0-9]+(?:e[+-]?[0-9]+)?)\s*", re.IGNORECASE
)
_WHOLE_NAME = {"l": "left", "r": "right"}


class _WrongError(Exception):
    """Carries what is wrong out of the depth of a map."""

    def __init__(self, misread: Misread) -> None:
        super().__init__(misread.cause)
        self.misread = misread


def read_map(text: str) -> PatchMap | Misread:
    """The map of a plain text that is not blank; whether outlines cross themselves is for the measuring to tell."""
    if text.casefold() == "none":
        return PatchMap()
    if re.search(r"\sor\s", text, re.IGNORECASE):
        return wrong.several_maps()
    patches: list[Patch] = []
    pieces = [piece.strip() for piece in text.split(";")]
    try:
        for piece in pieces:
            if piece:
                patches += _patches(piece, len(patches) + 1)
    except _WrongError as error:
        return error.misread
    if sum(len(ring) for patch in patches for ring in (patch.outline, *patch.windows)) > MOST_CORNERS:
        return wrong.too_many_corners(MOST_CORNERS)
    if not patches and not _POLYGON.match(text):
        return wrong.not_a_map(1, text)
    return PatchMap(patches)


def _patches(piece: str, number: int) -> list[Patch]:
    polygon = _POLYGON.match(piece)
    if polygon is not None:
        return _traced(piece, polygon, number)
    reach = _REACH.fullmatch(piece)
    if reach is None:
        raise _WrongError(wrong.not_a_map(number, piece))
    start, end = (_along(number, text) for text in reach.groups()[:2])
    if start >= end:
        better = f"{decimal(end)} to {decimal(start)} {reach[3]}".strip()
        raise _WrongError(wrong.swapped(number, piece, better) if start > end else wrong.not_a_map(number, piece))
    left, right, sashi, thin = _sides(piece, reach[3], number)
    return [boxed(start, end, left, right, sashi, thin=thin)]


def _sides(piece: str, text: str, number: int) -> tuple[float, float, float, bool]:
    """How far a patch reaches to the left (below 0) and to the right, its sashi, and whether it is thin."""
    said = _said(piece, text, number)
    if not said.keys() & {"left", "right", "both"}:
        said["both"] = "100", None  # the whole back, from one lateral line to the other
    if "both" in said and said.keys() & {"left", "right"}:
        raise _WrongError(wrong.sides_said_twice(number, piece))
    sashi, thin = _marks(said)
    ends: dict[str, tuple[float, float]] = {}
    for side in said.keys() & {"left", "right", "both"}:
        first, second = said[side]
        near, far = (0.0, _across(number, first)) if second is None else (_across(number, t) for t in (first, second))
        if near >= far:
            swapped = piece.replace(f"{first}", "\0").replace(f"{second}", f"{first}").replace("\0", f"{second}")
            raise _WrongError(wrong.swapped(number, piece, swapped) if near > far else wrong.not_a_map(number, piece))
        if near and (side == "both" or len(said.keys() & {"left", "right"}) > 1):
            raise _WrongError(wrong.side_in_part(number, piece))
        ends[side] = near, far
    if "both" in ends:
        return -ends["both"][1], ends["both"][1], sashi, thin
    if len(ends) == 2:
        return -ends["left"][1], ends["right"][1], sashi, thin
    ((side, (near, far)),) = ends.items()
    return (-far, -near, sashi, thin) if side == "left" else (near, far, sashi, thin)


def _said(piece: str, text: str, number: int) -> dict[str, tuple[str, str | None]]:
    """What a patch says after where it starts and ends, by the word it stands behind."""
    said: dict[str, tuple[str, str | None]] = {}
    at = 0
    while at < len(text):
        match = _SIDE.match(text, at)
        if match is None:
            raise _WrongError(wrong.not_a_map(number, piece))
        word = _WHOLE_NAME.get(match[1].lower(), match[1].lower())
        if word in said:
            raise _WrongError(wrong.sides_said_twice(number, piece))
        if (match[2] is None) != (word == "thin") or (word == "sashi" and match[3] is not None):
            raise _WrongError(wrong.not_a_map(number, piece))
        said[word] = match[2] or "", match[3]
        at = match.end()
    return said


def _marks(said: dict[str, tuple[str, str | None]]) -> tuple[float, bool]:
    return (_number(said["sashi"][0]) if "sashi" in said else 0.0), "thin" in said


def _along(number: int, text: str) -> float:
    value = _number(text)
    if not 0 <= value <= LENGTH:
        raise _WrongError(wrong.outside(number, text, "along it, 0 is the nose and 100 the end of the tail stem"))
    return value


def _across(number: int, text: str, low: float = 0.0) -> float:
    value = _number(text)
    if not low <= value <= BELLY:
        raise _WrongError(
            wrong.outside(number, text, "across it, 0 is the back, 100 the lateral line and 200 the belly")
        )
    return value


def _number(text: str) -> float:
    return round(float(text.replace(",", ".")), DECIMALS) + 0.0


def _traced(piece: str, polygon: re.Match[str], number: int) -> list[Patch]:
    """The patches of a polygon or multipolygon, with the marks that stand behind it."""
    if polygon[2].upper() == "EMPTY":
        return []
    start = polygon.end() - 1
    end = _closing(piece, start, number)
    said = _said(piece, piece[end + 1 :].strip(), number)
    if said.keys() & {"left", "right", "both"}:
        raise _WrongError(wrong.not_a_map(number, piece))
    sashi, thin = _marks(said)
    inner = piece[start + 1 : end]
    bodies = _bracketed(inner, number) if polygon[1] else [inner]
    found: list[Patch] = []
    for body in bodies:
        rings = [_ring(ring, number + len(found)) for ring in _bracketed(body, number + len(found))]
        found.append(Patch(rings[0], tuple(rings[1:]), sashi, thin))
    return found


def _closing(text: str, start: int, number: int) -> int:
    """Where the bracket that opens at `start` is closed."""
    depth = 0
    for bracket in re.finditer(r"[()]", text[start:]):
        depth += 1 if bracket[0] == "(" else -1
        if depth == 0:
            return start + bracket.start()
    raise _WrongError(wrong.outline_broken(number, "a bracket is not closed"))


def _bracketed(text: str, number: int) -> list[str]:
    """The insides of the brackets that stand side by side in a text, parted by commas."""
    found: list[str] = []
    at = 0
    while True:
        opened = re.compile(r"\s*\(").match(text, at)
        if opened is None:
            raise _WrongError(wrong.outline_broken(number, "a bracket is missing"))
        end = _closing(text, opened.end() - 1, number)
        found.append(text[opened.end() : end])
        rest = text[end + 1 :].lstrip()
        if not rest:
            return found
        if not rest.startswith(","):
            raise _WrongError(wrong.outline_broken(number, "two of its brackets are not parted by a comma"))
        at = len(text) - len(rest) + 1


def _ring(text: str, number: int) -> Ring:
    points: list[tuple[float, float]] = []
    for corner in text.split(","):
        match = _CORNER.fullmatch(corner)
        if match is None:
            raise _WrongError(wrong.outline_broken(number, f'"{corner.strip()[:20]}" is not a pair of two numbers'))
        points.append((_along(number, match[1]), _across(number, match[2], -BELLY)))
    if points[0] != points[-1] or len(points) < 2:
        raise _WrongError(wrong.outline_broken(number, "it does not end where it begins"))
    if len(set(points)) < 3 or not doubled_area(points[:-1]):
        raise _WrongError(wrong.outline_broken(number, "it encloses nothing"))
    return tuple(points[:-1])
