"""Traits of the colour of red (hi): its tone, its thickness and its edges, by eye and by instrument.

Meanings by eye are common practice, no source; steps and ranges are from memory. The measured colours are CIELAB under
D65 and 10 degrees unless the sheet says otherwise (ISO/CIE 11664-4), differences are CIEDE2000 (ISO/CIE 11664-6); their
ranges, what skin can reach at all, are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import EVERYWHERE, YES_NO, choice, number, places, scale
from koirules.vocabulary.traits import Better, Growth, Trait

RED_COLOUR = (
    Trait(
        "kiwa",
        "rear and side edge of the red (kiwa)",
        scale("blurred", "fair", "sharp", "razor"),
        Better.MORE,
        Growth.RISES,
        "Look at the edges behind and beside the red: razor is cut as with a knife, blurred runs into the white.",
        {"ja": "キワ"},
    ),
    Trait(
        "kiwa_style",
        "style of the edge (kiwa)",
        choice("kamisori", "maruzome", "mixed"),
        Better.NEITHER,
        Growth.FIXED,
        "Kamisori cuts straight across the scales, maruzome follows their round edges, mixed has both.",
    ),
    Trait(
        "sashi_depth",
        "depth of the front edge (sashi)",
        number("0", "8"),
        Better.TARGET,
        Growth.FALLS,
        "Count how many rows of scales lie pink over the red at its front edge: half a scale is best.",
        {"ja": "サシ"},
    ),
    Trait(
        "sashi_even",
        "evenness of the front edge (sashi)",
        scale("rough", "fair", "even"),
        Better.MORE,
        Growth.RISES,
        "Even is the same depth of pink along the whole front edge, rough jumps from scale to scale.",
    ),
    Trait(
        "hi_tone",
        "tone of the red (hi)",
        choice("yellow", "orange", "orange_red", "red", "purple_red"),
        Better.TARGET,
        Growth.VARIES,
        "Hold the fish beside the reference fish or the colour card and name the nearest tone.",
    ),
    Trait(
        "hi_even",
        "evenness of the red (hi)",
        scale("patchy", "fair", "even"),
        Better.MORE,
        Growth.RISES,
        "Compare head, shoulder and rear: even is one tone everywhere, patchy changes from patch to patch.",
    ),
    Trait(
        "hi_thick",
        "thickness of the red (hi)",
        scale("thin", "fair", "thick"),
        Better.MORE,
        Growth.VARIES,
        "Thick hides the single scales, thin lets them show through (kokesuki).",
    ),
    Trait(
        "hi_strength",
        "strength of the red, by eye",
        scale("pale", "fair", "strong", "deep"),
        Better.MORE,
        Growth.VARIES,
        "How strong the red is, whatever its tone: pale is washed out or pink, deep is as strong as it can be.",
    ),
    Trait(
        "fading",
        "fading red",
        scale("strong", "marked", "slight", "none"),
        Better.MORE,
        Growth.VARIES,
        "Red that is going: slight is a thin rim, marked shows white through it, strong is nearly gone.",
    ),
    Trait(
        "fading_places",
        "places of fading red",
        places(*EVERYWHERE),
        Better.LESS,
        Growth.VARIES,
        "Where red is going; the last patch before the tail is written as stem, the head patch as crown.",
    ),
    Trait(
        "niban_hi",
        "late thin red (niban hi)",
        YES_NO,
        Better.LESS,
        Growth.RISES,
        "Yes if a second, thinner red has come up in the white.",
        {"ja": "二番緋"},
    ),
    Trait(
        "hi_lightness",
        "lightness of the red (hi), L*",
        number("0", "100"),
        Better.NEITHER,
        Growth.VARIES,
        "Lightness of the mean colour reading of the red, wet skin, no glare: 0 is black, 100 is white.",
        {"ja": "緋の明度"},
        by_eye=False,
    ),
    Trait(
        "hi_hue",
        "hue of the red (hi)",
        number("0", "360", "deg"),
        Better.TARGET,
        Growth.VARIES,
        "Hue angle of the mean colour reading: low is purple-red, near 40 orange-red, near 90 yellow; none below chroma 8.",
        {"ja": "緋の色相"},
    ),
    Trait(
        "hi_chroma",
        "strength of the red (hi), chroma",
        number("0", "150"),
        Better.MORE,
        Growth.VARIES,
        "Chroma of the mean colour reading: 0 is grey, higher is more colourful.",
        {"ja": "緋の彩度"},
        by_eye=False,
    ),
    Trait(
        "hi_evenness",
        "largest colour difference along the red (hi)",
        number("0", "120"),
        Better.LESS,
        Growth.VARIES,
        "The largest CIEDE2000 difference between readings from head to tail: under 3 even, over 6 patchy (from memory).",
        by_eye=False,
    ),
    Trait(
        "hi_contrast",
        "colour difference of red and white",
        number("0", "120"),
        Better.MORE,
        Growth.VARIES,
        "The CIEDE2000 difference between the mean readings of the red and of the white.",
        by_eye=False,
    ),
)
"""The traits of the colour of red."""
