"""Traits about the look itself: which fish from where, who looked, when, and how far the record can be trusted.

Meanings are common practice, no source; ranges and steps are from memory.
"""

from __future__ import annotations

from decimal import Decimal

from koirules.vocabulary.kinds import Label
from koirules.vocabulary.shorthand import PRACTICE, YES_NO, choice, count, number, scale
from koirules.vocabulary.traits import Better, Growth, Trait

_AGES = {
    stage: (Decimal(low), Decimal(high))
    for stage, low, high in (
        ("", 0, 7500),
        ("fry", 0, 150),
        ("tosai", 60, 550),
        ("nisai", 330, 950),
        ("sansai", 690, 1350),
        ("yonsai", 1000, 1750),
    )
}
"""Ages in days of fry and of fish called tosai to yonsai, whichever way a farm counts them (from memory)."""

LOOK = (
    Trait(
        "batch_name",
        "batch",
        Label(),
        Better.NEITHER,
        Growth.FIXED,
        "The name of the batch that the fish was sorted with, as it stands on the tub.",
        source=PRACTICE,
    ),
    Trait(
        "pond",
        "pond",
        Label(),
        Better.NEITHER,
        Growth.VARIES,
        "The pond, house or vat that the fish came out of.",
        {"ja": "池"},
        source=PRACTICE,
    ),
    Trait(
        "spawning",
        "spawning",
        Label(),
        Better.NEITHER,
        Growth.FIXED,
        "The spawning that the fish comes from: a date, or the number in the spawning book.",
        source=PRACTICE,
    ),
    Trait(
        "bloodline",
        "bloodline",
        Label(),
        Better.NEITHER,
        Growth.FIXED,
        "The line or the pair of parents, by the name that the house uses.",
        {"ja": "血統"},
        source=PRACTICE,
    ),
    Trait(
        "sorter",
        "sorter",
        Label(),
        Better.NEITHER,
        Growth.VARIES,
        "Who looked at the fish.",
        {"ja": "選別者"},
        source=PRACTICE,
    ),
    Trait(
        "look_date",
        "date of the look",
        Label(),
        Better.NEITHER,
        Growth.VARIES,
        "The day of the look as year-month-day, such as 2026-10-03.",
        {"ja": "選別日"},
        source=PRACTICE,
    ),
    Trait(
        "look_number",
        "number of the look",
        count(60),
        Better.NEITHER,
        Growth.RISES,
        "Which look at this fish it is: 1 for the first selection, 2 for the second, and so on.",
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "note",
        "note",
        Label(),
        Better.NEITHER,
        Growth.VARIES,
        "Anything else that the next person at the tub should know.",
        {"ja": "備考"},
        source=PRACTICE,
    ),
    Trait(
        "photo",
        "photograph",
        Label(),
        Better.NEITHER,
        Growth.VARIES,
        "A picture file beside the records, named from there, such as photos/K01.jpg: pages of results show it.",
        {"ja": "写真"},
        source=PRACTICE,
    ),
    Trait(
        "sureness",
        "how sure the record is",
        scale("guess", "fair", "sure"),
        Better.MORE,
        Growth.VARIES,
        "Guess after a glance into the net, fair after a look in the bowl, sure after a close look at both sides.",
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "photo_usable",
        "usable photo",
        YES_NO,
        Better.MORE,
        Growth.VARIES,
        "Yes if there is a photo from above, sharp, in even light and without glare on the water.",
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "season",
        "season",
        choice("spring", "summer", "autumn", "winter"),
        Better.NEITHER,
        Growth.VARIES,
        "The season of the look, by what the water does and not by the calendar.",
        {"ja": "季節"},
        by_eye=False,
        source=PRACTICE,
    ),
    Trait(
        "water_temperature",
        "water temperature",
        number("2", "32", "degC"),
        Better.NEITHER,
        Growth.VARIES,
        "Read the thermometer in the bowl or the pond at the look: black and net change with the warmth of the water.",
        {"ja": "水温"},
        source=PRACTICE,
    ),
    Trait(
        "age",
        "age",
        number("0", "9000", "days"),
        Better.NEITHER,
        Growth.RISES,
        "The time since the fish hatched; write it in days, weeks, months or years.",
        {"ja": "年齢"},
        usual=_AGES,
        source=PRACTICE,
    ),
    Trait(
        "growing_seasons",
        "growing seasons",
        count(25),
        Better.NEITHER,
        Growth.RISES,
        "How many summers the fish has grown in: 1 for a tosai, 2 for a nisai, 3 for a sansai.",
        by_eye=False,
        source=PRACTICE,
    ),
)
"""The traits of the look, in the order that a record sheet takes them."""
