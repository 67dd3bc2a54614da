"""Traits of the body that are measured with board, tape, calliper and scale, and the ratios that follow from them.

Meanings are common practice, no source. Ranges are from memory: limits for what is written down, from fry to the
largest koi known (about 125 cm and 45 kg), not limits of quality; those of the ratios leave room for a sick or a
malformed fish. Usual values are multiples of the total length, from memory, with room on both sides: what lies outside is
looked at again, and nothing else comes of it. How measures follow the length of a growing fish is that of a fish which keeps
its outline: lengths along the body as the length, everything across it as the girth, and the weight as W = a L^b.
"""

from __future__ import annotations

from decimal import Decimal

from koirules.vocabulary.shorthand import FULTON, PRACTICE, YES_NO, number, share
from koirules.vocabulary.traits import (
    AS_GIRTH,
    AS_LENGTH,
    AS_WEIGHT,
    GIRTH_OVER_LENGTH,
    LENGTH_OVER_GIRTH,
    UNCHANGED,
    WEIGHT_OVER_LENGTH_CUBED,
    Better,
    Growth,
    Trait,
)

_LENGTHS = {
    stage: (Decimal(low), Decimal(high))
    for stage, low, high in (
        ("", "3", "100"),
        ("fry", "0.5", "15"),
        ("tosai", "4", "40"),
        ("nisai", "12", "65"),
        ("sansai", "25", "80"),
        ("yonsai", "30", "90"),
    )
}
"""Total lengths of fry and of fish in their first to fourth year, with room for slow and fast ones (from memory)."""


def _usual(low: str, high: str, power: int = 1) -> dict[str, tuple[Decimal, Decimal]]:
    """By stage what is usual of a measure that lies between two multiples of a power of the total length, to two digits."""
    return {
        stage: (_two_digits(Decimal(low) * least**power), _two_digits(Decimal(high) * most**power))
        for stage, (least, most) in _LENGTHS.items()
    }


def _two_digits(value: Decimal) -> Decimal:
    return Decimal(f"{value:.2g}")


MEASURES_OF_BODY = (
    Trait(
        "length",
        "total length",
        number("0.5", "125", "cm"),
        Better.MORE,
        Growth.RISES,
        "On the wet board, seconds out of water: from the nose to the end of the tail, pressed together.",
        {"ja": "全長"},
        allometry=AS_LENGTH,
        usual=_LENGTHS,
        source=PRACTICE,
    ),
    Trait(
        "standard_length",
        "standard length",
        number("0.4", "105", "cm"),
        Better.MORE,
        Growth.RISES,
        "On the wet board, from the nose to the end of the spine, where the last scale sits.",
        {"ja": "標準体長"},
        allometry=AS_LENGTH,
        usual=_usual("0.74", "0.9"),
        source=PRACTICE,
    ),
    Trait(
        "fork_length",
        "fork length",
        number("0.45", "115", "cm"),
        Better.MORE,
        Growth.RISES,
        "On the wet board, from the nose to the bottom of the fork of the tail.",
        {"ja": "尾叉長"},
        allometry=AS_LENGTH,
        usual=_usual("0.83", "0.97"),
        source=PRACTICE,
    ),
    Trait(
        "weight",
        "weight",
        number("0.01", "45000", "g"),
        Better.MORE,
        Growth.RISES,
        "Weigh the fish in a wet sock or bowl and take off the weight of the sock or bowl.",
        {"ja": "体重"},
        allometry=AS_WEIGHT,
        usual=_usual("0.006", "0.04", power=3),
        source=PRACTICE,
    ),
    Trait(
        "depth",
        "body depth",
        number("0.1", "40", "cm"),
        Better.TARGET,
        Growth.RISES,
        "From the side, the greatest height from back to belly, fins left out.",
        {"ja": "体高"},
        allometry=AS_GIRTH,
        usual=_usual("0.15", "0.45"),
        source=PRACTICE,
    ),
    Trait(
        "width",
        "body width",
        number("0.1", "30", "cm"),
        Better.TARGET,
        Growth.RISES,
        "From above, the greatest breadth of the body, fins left out.",
        {"ja": "体幅"},
        allometry=AS_GIRTH,
        usual=_usual("0.08", "0.4"),
        source=PRACTICE,
    ),
    Trait(
        "girth",
        "girth",
        number("0.3", "110", "cm"),
        Better.TARGET,
        Growth.RISES,
        "A wet soft tape once round the thickest part, in front of the dorsal fin, seconds out of water.",
        {"ja": "胴回り"},
        allometry=AS_GIRTH,
        usual=_usual("0.35", "0.95"),
        source=PRACTICE,
    ),
    Trait(
        "gill_width",
        "width at the gills",
        number("0.03", "30", "cm"),
        Better.NEITHER,
        Growth.RISES,
        "From above, the breadth of the body at the rear edge of the gill covers.",
        allometry=AS_GIRTH,
        usual=_usual("0.06", "0.35"),
        source=PRACTICE,
    ),
    Trait(
        "stem_width",
        "width of the tail stem",
        number("0.01", "20", "cm"),
        Better.MORE,
        Growth.RISES,
        "From above, the breadth of the tail stem (ozutsu) half way between the anal fin and the tail.",
        allometry=AS_GIRTH,
        usual=_usual("0.02", "0.15"),
        source=PRACTICE,
    ),
    Trait(
        "stem_depth",
        "depth of the tail stem",
        number("0.01", "20", "cm"),
        Better.MORE,
        Growth.RISES,
        "From the side, the least height of the tail stem (ozutsu).",
        allometry=AS_GIRTH,
        usual=_usual("0.06", "0.2"),
        source=PRACTICE,
    ),
    Trait(
        "head_length",
        "head length",
        number("0.05", "35", "cm"),
        Better.TARGET,
        Growth.RISES,
        "From the nose to the rear edge of the gill cover.",
        {"ja": "頭長"},
        usual=_usual("0.14", "0.35"),
        source=PRACTICE,
    ),
    Trait(
        "pectoral_length",
        "length of the pectoral fin",
        number("0.02", "30", "cm"),
        Better.MORE,
        Growth.RISES,
        "Along the first ray of the longer pectoral fin, from the joint to the tip.",
        usual=_usual("0.08", "0.3"),
        source=PRACTICE,
    ),
    Trait(
        "girth_ratio",
        "girth for its length",
        number("0.1", "1.2"),
        Better.TARGET,
        Growth.RISES,
        "Girth divided by total length: how stout the fish is.",
        allometry=GIRTH_OVER_LENGTH,
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "fineness",
        "fineness",
        number("1", "12"),
        Better.TARGET,
        Growth.FALLS,
        "Total length divided by the greatest depth: high is slim, low is stout.",
        allometry=LENGTH_OVER_GIRTH,
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "condition",
        "condition factor on total length",
        number("0.1", "6"),
        Better.TARGET,
        Growth.VARIES,
        "Weight in g times 100, divided three times by total length in cm: low is thin, high is fat or full of eggs.",
        {"ja": "肥満度"},
        allometry=WEIGHT_OVER_LENGTH_CUBED,
        by_eye=False,
        source=FULTON,
    ),
    Trait(
        "condition_standard",
        "condition factor on standard length",
        number("0.1", "9"),
        Better.TARGET,
        Growth.VARIES,
        "The same with standard length; it is about three quarters higher, so never set one beside the other.",
        allometry=WEIGHT_OVER_LENGTH_CUBED,
        by_eye=False,
        source=FULTON,
    ),
    Trait(
        "condition_fork",
        "condition factor on fork length",
        number("0.1", "8"),
        Better.TARGET,
        Growth.VARIES,
        "The same with fork length; it is about a third higher, so never set one beside the other.",
        allometry=WEIGHT_OVER_LENGTH_CUBED,
        by_eye=False,
        source=FULTON,
    ),
    Trait(
        "stem_ratio",
        "tail stem for its width",
        number("0.05", "1"),
        Better.MORE,
        Growth.VARIES,
        "Width of the tail stem divided by the greatest width: strength behind.",
        allometry=UNCHANGED,
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "shoulder_share",
        "width at the gills for its width",
        number("0.2", "1"),
        Better.TARGET,
        Growth.VARIES,
        "Width at the gills divided by the greatest width: near 1 is heavy just behind the head.",
        allometry=UNCHANGED,
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "growth_standing",
        "standing in growth",
        share(),
        Better.MORE,
        Growth.VARIES,
        "The share of the fish of its own batch that are shorter than this one.",
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "tobi",
        "tobi (runaway grower)",
        YES_NO,
        Better.NEITHER,
        Growth.FIXED,
        "Yes if in its first two months the fish is far longer than its siblings, and likely to have eaten some.",
        {"ja": "トビ"},
        source=PRACTICE,
    ),
)
"""The measured traits of the body."""
