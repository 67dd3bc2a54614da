"""The figures of the neutral standard, as plain data: what `neutral.koi` says, for the peers that are no koirules.

Written by hand beside `neutral.koi`; `agreement.py` checks that both say the same. An invented standard: its numbers are
made for measuring evaluators and say nothing about fish. Points, weights and knots have at most two decimals.
"""

from decimal import Decimal

NUMBERS = {
    "length": ("cm", 5, 30),
    "girth": ("cm", 3, 20),
    "mass": ("g", 0, 400),
    "stem_width": ("cm", 0.5, 6),
    "head_width": ("cm", 1, 8),
    "fin_spread": ("cm", 1, 16),
    "back_height": ("cm", 1, 9),
    "hi_cover": ("%", 0, 100),
    "front_cover": ("%", 0, 100),
    "rear_gap": ("%", 0, 40),
    "left_share": ("%", 0, 100),
    "gloss": ("", 0, 100),
    "speck_size": ("", 0, 10),
    "age": ("days", 60, 500),
    "warmth": ("degC", 4, 32),
}
"""Numbers: unit ("" for none), lowest and highest value."""

YES_NO = ("spine_bent", "eye_missing", "jaw_crooked", "gill_open", "fin_torn", "lips_red", "head_round", "parasites")

SCALES = {
    "kiwa": ("blurred", "fair", "sharp", "razor"),
    "shiroji": ("yellow", "cream", "white", "snow"),
    "outline": ("poor", "lean", "fair", "good", "excellent"),
    "luster": ("dull", "soft", "bright", "glowing", "brilliant"),
    "rhythm": ("broken", "uneven", "plain", "even", "striking"),
    "depth": ("faint", "pale", "medium", "full", "deep", "dense"),
    "skin": ("rough", "grainy", "dull", "smooth", "fine", "silken"),
}
"""Scales: the steps, the lowest first."""

SECTIONS = {"frame": 35, "colour": 25, "pattern": 25, "bearing": 15}
"""Sections and their worths."""

CURVES = (
    # section, criterion, weight, number, knots: at and points
    ("frame", "full_length", "2", "length", ((8, 0), (15, 5.5), (22, 9), (28, 10))),
    ("frame", "full_girth", "1.5", "girth", ((5, 0), (9, 6), (13, 10), (18, 4))),
    ("frame", "full_mass", "1", "mass", ((20, 0), (110, 4.5), (250, 10))),
    ("frame", "stem", "1.25", "stem_width", ((1, 0), (2.1, 5), (3.5, 10), (4.8, 8), (5.6, 3))),
    ("frame", "back", "0.75", "back_height", ((2, 0), (4.5, 10), (7.5, 2.5))),
    ("colour", "cover", "2", "hi_cover", ((15, 0), (42, 10), (65, 8), (92, 0))),
    ("colour", "front", "1.25", "front_cover", ((5, 0), (30, 7), (55, 10), (80, 6), (97, 1))),
    ("colour", "shine", "1.5", "gloss", ((10, 0), (45, 4.25), (88, 10))),
    ("colour", "clean", "1", "speck_size", ((0.3, 10), (1.9, 6), (4.6, 2), (8, 0))),
    ("colour", "warm_water", "0.5", "warmth", ((9, 2), (18, 8), (24, 10), (30, 3))),
    ("pattern", "gap", "1.75", "rear_gap", ((1, 0), (8, 8), (15, 10), (33, 2))),
    ("pattern", "balance", "2.25", "left_share", ((12, 0), (38, 8.5), (50, 10), (62, 8.5), (88, 0))),
    ("pattern", "cover_left", "1", "hi_cover", ((8, 1), (37, 9), (71, 10))),
    ("pattern", "front_left", "0.75", "front_cover", ((11, 0), (48, 10), (91, 4))),
    ("pattern", "headed", "1", "head_width", ((1.4, 0), (3.3, 7.5), (5.2, 10), (7.1, 6))),
    ("bearing", "fins", "1.5", "fin_spread", ((2, 0), (6.4, 6), (10.3, 10), (14, 9))),
    ("bearing", "slender", "1", "length", ((9, 3), (20, 10), (29, 7))),
    ("bearing", "youth", "1.25", "age", ((90, 10), (180, 8), (300, 5), (470, 0))),
    ("bearing", "clear_water", "0.5", "gloss", ((5, 1), (31, 5), (64, 8), (95, 10))),
    ("bearing", "broad_head", "0.25", "head_width", ((2, 0), (4.1, 10), (6.7, 5))),
)

TABLES = (
    # section, criterion, weight, scale, points of each step
    ("frame", "torpedo", "2.5", "outline", (0, 3, 5.5, 8, 10)),
    ("frame", "shoulder", "1", "outline", (1, 4, 6, 9, 10)),
    ("frame", "skin_held", "0.75", "skin", (0, 2, 4, 7, 9, 10)),
    ("frame", "flow", "0.5", "rhythm", (2, 3.5, 5, 8, 10)),
    ("frame", "firm", "0.25", "depth", (0, 2, 4, 6, 8, 10)),
    ("colour", "white", "2", "shiroji", (0, 4, 8.25, 10)),
    ("colour", "red", "2", "depth", (0, 1.5, 4, 7, 9.5, 10)),
    ("colour", "gleam", "1.25", "luster", (0, 3, 6, 8.5, 10)),
    ("colour", "edge", "0.75", "kiwa", (1, 4, 8, 10)),
    ("colour", "finish", "0.5", "skin", (0, 1, 3, 6, 8.75, 10)),
    ("pattern", "rear_edge", "2", "kiwa", (0, 5, 8.5, 10)),
    ("pattern", "beat", "2.5", "rhythm", (0, 2.5, 5, 8, 10)),
    ("pattern", "ground", "0.75", "shiroji", (1, 5, 9, 10)),
    ("pattern", "weight_of_red", "0.5", "depth", (0, 2, 6, 10, 8, 5)),
    ("pattern", "frame_of_it", "0.25", "outline", (2, 4, 6, 8, 10)),
    ("bearing", "presence", "2", "luster", (0, 2, 5, 8, 10)),
    ("bearing", "poise", "1.25", "outline", (0, 4, 7, 9, 10)),
    ("bearing", "edge_seen", "0.5", "kiwa", (2, 6, 8, 10)),
    ("bearing", "skin_seen", "0.75", "skin", (0, 3, 5, 7, 9, 10)),
    ("bearing", "glow", "0.25", "luster", (1, 4, 6, 9, 10)),
)

GRADES = (("keep", 62), ("hold", 55), ("sell", 46), ("cull", None))
"""Grades, best first, with the score that each asks for."""

FAULTS = (
    # what each says stands in neutral.koi, and by hand in each of the peers; here are the grades that they cap at
    ("crooked", "cull"),
    ("starved", "cull"),
    ("blind", "cull"),
    ("sick", "cull"),
    ("thin_stem", "sell"),
    ("one_sided", "sell"),
    ("washed", "sell"),
    ("torn", "sell"),
    ("specked", "sell"),
    ("loose_edge", "hold"),
    ("open_rear", "hold"),
    ("slow", "hold"),
)

HOLED = ("length", "mass", "hi_cover", "gloss", "age", "eye_missing", "gill_open", "kiwa", "depth", "skin")
"""The third of the traits that has holes in frames with holes."""


def whole(value: float | str, of: int) -> int:
    """A figure as a whole number of thousandths, millionths …, exactly."""
    return int(Decimal(str(value)) * of)
