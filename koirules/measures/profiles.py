"""The girth of a fish along its body: an outline, drawn through the widths that were measured."""

from __future__ import annotations

from typing import TYPE_CHECKING

from koirules.measures.skin import Skin
from koirules.vocabulary.measures import Column, Given
from koirules.vocabulary.outlines import Outline
from koirules.vocabulary.readings import Span

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

WIDTHS = ("gill_width", "width", "stem_width")
"""The widths that the outline of a fish is drawn through, where all of them were measured."""
FOR_GIRTH = ("girth", "standard_length")
_STEM = 92.0
"""Where the width of the tail stem is measured: half way between the anal fin and the tail (from memory)."""


def skin_of(given: Given, outline: Outline) -> Skin:
    """The skin of each fish. Between the places where it was measured, an outline is stretched by what lies beside it."""
    import numpy as np

    along, plain = np.array(outline.knots).T
    gill, widest, stem = (values(given.readings.get(name), given.fish) for name in WIDTHS)
    edge = given.constants["gill_edge"]
    with np.errstate(invalid="ignore", divide="ignore"):
        at_gill = gill / widest / outline.width(edge)
        at_stem = stem / widest / outline.width(_STEM)
    known = ~np.isnan(at_gill + at_stem)
    profile = np.zeros(given.fish, dtype=np.intp)
    rows = [plain]
    broadest = float(along[np.argmax(plain)])
    places = np.array([0.0, min(edge, broadest - 1), broadest, max(_STEM, broadest + 1), 101.0])
    for fish in known.nonzero()[0]:
        by = np.array([at_gill[fish], at_gill[fish], 1.0, at_stem[fish], at_stem[fish]])
        profile[fish] = len(rows)
        rows.append(plain * np.interp(along, places, by))
    return Skin.of(along, np.array(rows), profile)


def girths_of(given: Given) -> Floats:
    """The greatest girth of each fish for the length of its body: measured, or as the constant has it."""
    import numpy as np

    girth, length = (values(given.readings.get(name), given.fish) for name in FOR_GIRTH)
    return np.where(np.isnan(girth / length), given.constants["girth_of_length"], girth / length)


def values(column: Column | None, fish: int) -> Floats:
    """The numbers of a column that are sure; NaN for the others."""
    import numpy as np

    found = np.full(fish, np.nan)
    for i, reading in enumerate(column or ()):
        if isinstance(reading, Span) and reading.low == reading.high:
            found[i] = reading.low
    return found
