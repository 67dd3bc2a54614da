"""How sorters speak of small marks: white windows in the red, and stray red in the white.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken

_RED = "(red|hi|beni)"
_WHICH = "(first|second|third|fourth|last|middle|front|rear|back|shoulder|tail|big|small|left|right)"
_PATCH = f"({_WHICH} (step|patch|plate|red|piece|block)|step (1|2|3|4)|saddle|patch|plate|pattern)"
_HEAD_RED = "(head red|head patch|head hi|red on the head|red of the head|head spot|cap|maruten|hood|hachi)"
_HOLE = (
    "(window|hole|mado|white hole|white window|white spot|white dot|white scale|white speck|white fleck|white patch|"
    "pinhole|white pinhole|bald spot|gap|white gap|white eye|island of white|white island|bit of white|spot of white|speck "
    "of white|patch of white|scale of white)"
)
_SMALL = "(small|tiny|little|single|lone|big|large|round|sort of|)"
_STRAY_SCALE = (
    "((loose|stray|lone|odd|single|isolated|flying|scattered|extra) (scale|spot|dot|fleck|speck|bit) of (red|hi|beni|"
    "colour)|(loose|stray|lone|isolated|flying) (red|) (scale|spot|dot|fleck|speck|freckle)|odd red "
    "(scale|spot|dot|fleck|speck|freckle)|red (fleck|freckle|speckle|"
    "pimple|crumb|confetti|splatter|spatter)|(fleck|freckle|speckle|splatter|spatter|drop|blob|crumb) of (red|hi|beni|"
    "colour))"
)
_PLACE = (
    "(the|) (left|right|left side|right side|left flank|right flank|side|back|shoulder|belly|cheek|gill|dorsal|tail|head|"
    "nape|neck|nose|white|flank|stem|anal fin|vent|gills|sides|flanks)"
)
_LIKE_POX = (
    "(measles|chicken pox|a rash|confetti|paprika|freckles|red pepper|chilli flakes|a teenager|a spotty teenager)"
)

SAID_OF_MARKS: tuple[Saying, ...] = (
    Spoken(
        "windows",
        f"{_SMALL} {_HOLE} (in|inside|within|on) (the|that|this|) {_PATCH}, (window|hole|mado) (the|) ({_WHICH} (step|"
        f"patch|plate)|step (1|2|3|4)|saddle), {_SMALL} (island of white|white island|white eye|bit of white|spot of white) "
        f"(in|inside|within) the {_RED}, mado ari, moth hole, bald scale in the red, white scale (in|among|amid|amongst) "
        "the (red|hi|beni)",
        alone={
            "at least 1": f"{_PATCH} (has|have|with|shows|got) (a|1) {_SMALL} (hole|window|mado|gap) (in|inside|in it|"
            f"through it|in the middle|), {_PATCH} holed, holed (saddle|patch|step|plate), {_RED} (missing|gone) (in|"
            "from) the middle (of the (saddle|patch|last step|second step)|), (piece|bit|chunk|scale|scales) missing "
            "(in|from|out of) the (red|hi|saddle|plate|patch|last step|second step), white (grinning|peeping|poking) "
            "through in the middle",
            "at least 2": f"{_PATCH} (has|have|with|shows|got) (some|several|a few|2) (small|little|tiny|) (holes|windows|"
            "gaps) (in|in it|), (some|a few|several) (moth holes|holes|windows), moth holes (in|all over|through) the "
            "(red|hi|saddle|plate|last step|second step), like (a|) (cheese|swiss cheese|colander|sieve|moth eaten "
            "jumper with holes), like (a moth has|moths have) been at it, (moth eaten|motheaten) (red|saddle|plate)",
            "is 0": "(not a|no) (window|hole|mado) (in|inside) (the|any|either) (red|patch|step|plate|of them), mado nashi, "
            "(red|steps|patches|plates) (all|) (closed|full|unbroken) (no|without|not a) (windows|window|holes|hole)",
            "is 1": "(a|1|single) white scale (sits|lies|is|right|) in the middle of the (first|second|third|last|) (step|"
            "patch|plate|saddle|red)",
        },
        bare={"at least 2": "moth holes"},
        of_parts="patches",
    ),
    Spoken(
        "head_windows",
        f"{_SMALL} {_HOLE} (in|inside|within|on|above|near) (the|that|) {_HEAD_RED}",
        alone={
            "at least 1": f"{_HEAD_RED} (has|with|shows|got) (a|1|) {_SMALL} {_HOLE} (in it|in the middle|), {_HEAD_RED} "
            "(broken|pierced|interrupted) by (a|1) white (scale|spot)",
        },
    ),
    Spoken(
        "tobihi",
        f"{_STRAY_SCALE}, tobi hi",
        alone={
            "at least 2": "(red|orange) (freckles|speckles|flecks|splashes|splatter|crumbs|confetti|pimples|measles|rash), "
            "(peppered|sprinkled|freckled|speckled|flecked|spattered|splashed|dotted) with (red|red dots|red scales|"
            "paprika), (sprinkling|dusting|scattering|peppering|spatter|rash|handful|shower) of (red|red scales|red "
            "dots|red spots), (some|a few|lots of|several|many|plenty of|) (loose|stray|scattered|odd|flying) (red|) "
            "(scales|spots|dots|flecks|bits) (of red|of hi|of beni|) (all over|everywhere|around the edge|round the "
            "edge|around the edges|along the edge|about|here and there), (like|as if|as though|looks like) (somebody|"
            "someone|they) (sneezed|flicked|dropped|spilled|threw) (paprika|red paint|ketchup|chilli|red pepper) (at "
            "it|on it|over it|), (spots like|spots look like) "
            + _LIKE_POX
            + ", (speckles|specks|spots|dots|flecks) like (paprika|measles|red pepper|chicken pox)",
            "is 0": "tobihi nashi, no (red dots|dots|spots|flecks|splashes) in the white, white (clear|clean|free) of (red|"
            "stray red|dots|tobihi|red scales), nothing stray, no (loose|stray|odd|flying) (bits|dots|spots|scales|red) "
            "(anywhere|at all|in the white|), not a (stray|loose|red) (dot|scale|spot|fleck) (in the white|anywhere|)",
        },
        bare={"at least 2": "measles, chicken pox, red rash, red freckles"},
        of_parts="all",
    ),
    Spoken("tobihi_places", f"{_STRAY_SCALE}, tobi hi", of_parts="all"),
    Spoken(
        "tobihi",
        alone={
            "is 1": f"(a|1|single|just a|just 1) {_SMALL} red (spot|dot|scale|fleck) (on|at|by|behind|near|in) the (white|"
            "flank|side)",
            "at least 1": "(single|1|a|another) red (spot|dot|fleck) (on the|) (left|right) (side|flank), red (spot|dot) "
            "(by|behind|below|above|near|next to) the (gill|gills|pectoral|dorsal|lateral line)",
        },
    ),
    Spoken(
        "windows",
        after=("tobihi", "tobihi_places", "niban_hi", "windows", "shimi_count"),
        bare={
            "at least 2": "like a colander, like cheese",
        },
    ),
    Spoken(
        "tobihi",
        after=("tobihi", "tobihi_places", "niban_hi", "windows", "shimi_count"),
        bare={
            "at least 2": "like paprika, like confetti, like measles",
        },
    ),
    Spoken(
        "tobihi",
        after=("tobihi", "tobihi_places", "niban_hi", "shimi_count"),
        bare={"at least 2": f"(like|looks like) {_LIKE_POX}"},
    ),
)
"""What is said of small marks."""
