"""The skin doitsu: koi with a few rows of large scales, or none, over any variety.

Meanings are common practice, no source; ranges and the steps of the scales are from memory. Which of the three forms it
is (kagami, kawa, yoroi) stands in `scalation`, which every variety has. Whether a show has a class for doitsu is not said
of a fish, and so is no trait.
"""

from __future__ import annotations

from koirules.vocabulary.measures import Formula
from koirules.vocabulary.shorthand import PRACTICE, count, number, scale
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_skins.said import SAID_OF_DOITSU

ROWS = (
    Trait(
        "dorsal_rows",
        "rows of scales along the back",
        scale("broken", "fair", "straight"),
        Better.MORE,
        Growth.FIXED,
        "From above, left and right of the back fin: straight runs from the head to the tail without a gap or a kink.",
        {"ja": "背の鱗並び"},
        source=PRACTICE,
    ),
    Trait(
        "lateral_row",
        "row of scales along the flank",
        scale("uneven", "none", "fair", "even"),
        Better.MORE,
        Growth.FIXED,
        "Along the lateral line: even is one straight row, fair hardly broken, none bare skin, uneven has gaps or mixed sizes.",
        {"ja": "側線の鱗並び"},
        source=PRACTICE,
    ),
    Trait(
        "row_scales_left",
        "scales in the left row of the back",
        count(40),
        Better.NEITHER,
        Growth.FIXED,
        "Count the scales of the row left of the back fin, from behind the head to the tail; the fish's own left.",
        source=PRACTICE,
    ),
    Trait(
        "row_scales_right",
        "scales in the right row of the back",
        count(40),
        Better.NEITHER,
        Growth.FIXED,
        "Count the scales of the row right of the back fin, from behind the head to the tail.",
        source=PRACTICE,
    ),
    Trait(
        "row_symmetry",
        "likeness of the left and right row",
        number("0", "1"),
        Better.MORE,
        Growth.FIXED,
        "The shorter row of the back in scales, divided by the longer one: 1 is a mirror, 0 has a row on one side only.",
        source=PRACTICE,
    ),
    Trait(
        "scale_size_even",
        "size of the scales in a row",
        scale("mixed", "fair", "even"),
        Better.MORE,
        Growth.FIXED,
        "Even grows slowly smaller from head to tail, mixed has large and small scales beside each other.",
        source=PRACTICE,
    ),
    Trait(
        "stray_scales",
        "stray scales",
        count(100),
        Better.LESS,
        Growth.FIXED,
        "Count the scales on skin that should be bare, away from the rows of back and flank.",
        {"ja": "無駄鱗"},
        source=PRACTICE,
    ),
)
"""Where the scales sit."""

BARE_SKIN = (
    Trait(
        "bare_skin_lustre",
        "lustre of the bare skin",
        scale("dull", "fair", "good"),
        Better.MORE,
        Growth.VARIES,
        "Wet, in even light, between the rows: good shines like lacquer, dull looks like leather.",
        {"ja": "地肌の艶"},
        source=PRACTICE,
    ),
    Trait(
        "edge_on_skin",
        "edge of the pattern on bare skin",
        scale("soft", "fair", "sharp"),
        Better.MORE,
        Growth.RISES,
        "Where two colours meet on bare skin: sharp is cut as with a knife, soft runs over; leave it out without a pattern.",
        source=PRACTICE,
    ),
    Trait(
        "skin_marks",
        "marks on the bare skin",
        count(20),
        Better.LESS,
        Growth.FALLS,
        "Count the scars, scratches and spots that show because no scale hides them.",
        never_silent=True,
        source=PRACTICE,
    ),
)
"""What is seen where no scale is."""

DOITSU = Vocabulary(
    name="doitsu",
    title="doitsu",
    traits=(*ROWS, *BARE_SKIN),
    describe="A skin over any variety: rows of large scales, or none at all, and bare skin between.",
    is_skin=True,
    measures=(
        Formula(
            "row_symmetry",
            "lesser of (row_scales_left, row_scales_right) / greater of (row_scales_left, row_scales_right)",
        ),
    ),
    also=("ドイツ", "ドイツ鯉"),
    sayings=SAID_OF_DOITSU,
)
"""The traits of doitsu, to lie over those of a variety."""
