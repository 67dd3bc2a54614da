"""Traits of the skin, and of the fish seen as a whole.

Meanings are common practice, no source; ranges and the steps of the scales are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import EVERYWHERE, PRACTICE, YES_NO, count, number, places, scale
from koirules.vocabulary.traits import Better, Growth, Trait

SKIN = (
    Trait(
        "lustre",
        "lustre (tsuya)",
        scale("dull", "fair", "good", "superb"),
        Better.MORE,
        Growth.VARIES,
        "Wet, in even light: superb looks varnished over every colour, dull looks like paper.",
        {"ja": "艶"},
        source=PRACTICE,
    ),
    Trait(
        "skin_clean",
        "cleanness of the skin",
        scale("dirty", "fair", "clean"),
        Better.MORE,
        Growth.RISES,
        "Look for stains, a yellow or pink cast and cloudy spots; clean has none of them.",
        source=PRACTICE,
    ),
    Trait(
        "shimi_count",
        "black specks (shimi)",
        count(200),
        Better.LESS,
        Growth.VARIES,
        "Count the fine black specks on red and white, over the whole fish; black of the pattern does not count.",
        {"ja": "シミ"},
        source=PRACTICE,
    ),
    Trait(
        "shimi_size",
        "largest black speck (shimi)",
        number("0", "30", "mm", usual=("0", "8")),
        Better.LESS,
        Growth.VARIES,
        "Hold a ruler beside the largest speck and read its width; 0 if there is none.",
        source=PRACTICE,
    ),
    Trait(
        "shimi_places",
        "places of black specks (shimi)",
        places(*EVERYWHERE),
        Better.LESS,
        Growth.VARIES,
        "Where the specks are; those on the head stay, those on scales may go.",
        source=PRACTICE,
    ),
    Trait(
        "hikui",
        "raised patch in the red (hikui)",
        YES_NO,
        Better.LESS,
        Growth.RISES,
        "Yes if a yellowish patch stands up from the red when you look along the skin.",
        {"ja": "ヒクイ"},
        source=PRACTICE,
    ),
    Trait(
        "ginrin_scales",
        "stray shiny scales",
        count(50),
        Better.LESS,
        Growth.FIXED,
        "Count single sparkling scales on a fish that is not a ginrin.",
        source=PRACTICE,
    ),
)
"""Traits of the skin."""

WHOLE = (
    Trait(
        "balance_left_right",
        "balance of left and right",
        number("0", "1"),
        Better.MORE,
        Growth.VARIES,
        "How alike the left and right half of the pattern weigh, from above: 1 is equal, 0 is all on one side.",
        source=PRACTICE,
    ),
    Trait(
        "balance_front_rear",
        "balance of front and rear",
        number("0", "1"),
        Better.MORE,
        Growth.VARIES,
        "How alike the front and rear half of the pattern weigh, from above: 1 is equal, 0 is all at one end.",
        source=PRACTICE,
    ),
    Trait(
        "balance",
        "balance of the pattern, by eye",
        scale("poor", "fair", "good"),
        Better.MORE,
        Growth.VARIES,
        "From above: does the pattern weigh alike in front and behind, on the left and on the right?",
        {"ja": "バランス"},
        source=PRACTICE,
    ),
    Trait(
        "contrast",
        "contrast of the colours",
        scale("weak", "fair", "strong"),
        Better.MORE,
        Growth.VARIES,
        "From two steps away: strong parts the colours at once, weak lets them run together; leave it out with one colour.",
        source=PRACTICE,
    ),
    Trait(
        "presence",
        "presence",
        scale("plain", "nice", "strong", "imposing"),
        Better.MORE,
        Growth.RISES,
        "Step back from the bowl: does the fish draw the eye before you look for anything?",
        source=PRACTICE,
    ),
    Trait(
        "impression",
        "overall impression",
        scale("poor", "fair", "good", "excellent"),
        Better.MORE,
        Growth.VARIES,
        "All in all, at first sight, before you look for anything: how good is this fish?",
        {"ja": "総合"},
        source=PRACTICE,
    ),
    Trait(
        "interest",
        "interest of the design",
        scale("plain", "mild", "marked", "striking", "unique"),
        Better.MORE,
        Growth.VARIES,
        "How far the pattern stands apart from all others of the batch.",
        source=PRACTICE,
    ),
    Trait(
        "finish",
        "finish",
        scale("early", "middle", "near", "finished", "past"),
        Better.TARGET,
        Growth.RISES,
        "How far skin and colour have come: early is still opening, finished is at its best, past is going over.",
        {"ja": "仕上がり"},
        source=PRACTICE,
    ),
    Trait(
        "stability",
        "expected to hold",
        scale("poor", "fair", "good"),
        Better.MORE,
        Growth.VARIES,
        "Will colour and edges still be there next year? Good for thick, even colour from a line that holds.",
        source=PRACTICE,
    ),
)
"""Traits of the fish as a whole."""
