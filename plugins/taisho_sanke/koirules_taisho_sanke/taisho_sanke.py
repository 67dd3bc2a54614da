"""The variety taisho sanke: a kohaku with black (sumi) spots.

Meanings are common practice, no source; ranges are from memory. Red, white and black have the traits of every koi that has
them; what is said here is where the black lies on the two others. That black on white (tsubo sumi) is wanted and black on
red (kasane sumi) lowers is common practice, no source.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, YES_NO, share
from koirules.vocabulary.traits import Better, Growth, Trait, Vocabulary
from koirules_taisho_sanke.said import SAID_OF_SANKE

TAISHO_SANKE = Vocabulary(
    name="taisho_sanke",
    title="taisho sanke",
    traits=(
        Trait(
            "sumi_on_white",
            "share of the black that lies on white (tsubo sumi)",
            share(),
            Better.MORE,
            Growth.FIXED,
            "Of all black on the back, how much lies wholly on white; spots that touch red do not count.",
            {"ja": "壺墨"},
            source=PRACTICE,
        ),
        Trait(
            "sumi_on_red",
            "share of the black that lies on red (kasane sumi)",
            share(),
            Better.LESS,
            Growth.FIXED,
            "Of all black on the back, how much lies on red.",
            {"ja": "重ね墨"},
            source=PRACTICE,
        ),
        Trait(
            "key_black_on_white",
            "key black on the white of the shoulder",
            YES_NO,
            Better.MORE,
            Growth.VARIES,
            "Yes if the black at the shoulder (kata sumi) stands on white, parted from the red; leave it out if there is none.",
            source=PRACTICE,
        ),
    ),
    includes=("shared", "red_pattern", "red_on_white", "black", "black_spots"),
    describe="White koi with the red of a kohaku and a few bold black spots on the back.",
    also=("sanke", "taisho sanshoku", "taishosanke", "大正三色"),
    forms=("aka sanke",),
    sayings=SAID_OF_SANKE,
)
"""The traits of taisho sanke, with those of red, white and black."""
