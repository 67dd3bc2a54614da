"""Measures of the body that no formula can say."""

from __future__ import annotations

from math import pi, sqrt

from koirules.vocabulary.measures import Column, Computed, Found, Given
from koirules.vocabulary.readings import Reading, Span


def girth_of_ellipse(depth: float, width: float) -> float:
    """The girth of a body whose section is an ellipse, in the unit of both.

    Ramanujan's second formula (Quarterly Journal of Mathematics 45, 1914, page 372; from memory).
    """
    h = ((depth - width) / (depth + width)) ** 2
    return pi * (depth + width) / 2 * (1 + 3 * h / (10 + sqrt(4 - 3 * h)))


def _girths(given: Given) -> Found:
    return Found({"girth": [_girth(*pair) for pair in zip(*_columns(given), strict=True)]})


def _columns(given: Given) -> tuple[Column, Column]:
    return given.readings["depth"], given.readings["width"]


def _girth(depth: Reading | None, width: Reading | None) -> Reading | None:
    # The girth grows with either axis, so the ends of both give its ends.
    if isinstance(depth, Span) and isinstance(width, Span):
        return Span(girth_of_ellipse(depth.low, width.low), girth_of_ellipse(depth.high, width.high))
    return None


ELLIPSE = Computed("girth", ("depth", "width"), ("girth",), _girths, estimate=True)
"""The girth from depth and width, where no tape was laid round the fish."""
