"""How sorters speak of the black of a taisho sanke. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_SANKE: tuple[Saying, ...] = (
    Spoken(
        "sumi_on_white",
        "tsubo sumi, sumi on white, black on white, sumi on the white, black on the white",
        alone={
            "above 80 %": "tsubo sumi, sumi all on white, black all on white, all sumi on the white, tsubosumi, つぼ墨",
        },
    ),
    Spoken(
        "sumi_on_red",
        "kasane sumi, sumi on red, black on red, sumi on the red, black on the red",
        alone={
            "above 60 %": "kasane sumi, sumi mostly on red, black mostly on red, 重ね墨",
        },
    ),
    Spoken(
        "key_black_on_white",
        "key black on white, shoulder black on white, kata sumi on white, key sumi on white",
    ),
)
