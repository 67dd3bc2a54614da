"""How sorters speak of the black of a taisho sanke. Common practice, no source; wordings from memory."""

from koirules.vocabulary.phrases import Saying, Spoken

SAID_OF_SANKE: tuple[Saying, ...] = (
    Spoken(
        "sumi_on_white",
        "tsubo sumi, sumi on white, black on white, sumi on the white, black on the white",
        alone={
            "above 80 %": "(nice|good|lovely|proper|all|pure|) tsubo (sumi|zumi), "
            "(sumi|black) (sits|lies|stands|falls|is|) (all|nicely|) (on|in) the white, "
            "sumi all on white, black all on white, all sumi on the white, tsubosumi, つぼ墨",
        },
    ),
    Spoken(
        "sumi_on_red",
        "kasane sumi, sumi on red, black on red, sumi on the red, black on the red",
        alone={
            "above 60 %": "(mostly|mainly|all|) kasane (sumi|zumi), "
            "(sumi|black) (sits|lies|stands|falls|is|) (mostly|mainly|all|right|) on (the|top of the) red, "
            "sumi mostly on red, black mostly on red, 重ね墨",
            "above 0 %": "(sumi|black) on (top of the|each|every) (red|patch|step), "
            "kasane (sumi|zumi) (right|) (on|on top of) the (first|second|third|last|middle) (hi|red|patch|step)",
        },
    ),
    Spoken(
        "key_black_on_white",
        "key black on white, shoulder black on white, kata sumi on white, key sumi on white",
    ),
)
