"""How sorters speak of small marks: white windows in the red, and stray red in the white.

Common practice, no source; wordings from memory.
"""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken

_RED = "(red|hi|beni)"
_WHICH = "(first|second|third|fourth|last|middle|front|rear|back|shoulder|tail|big|small|left|right)"
_PATCH = f"({_WHICH} (step|patch|plate|red|piece|block)|(hi|red) plate|plate of hi|step (1|2|3|4)|saddle|patch|plate|pattern)"
_HEAD_RED = "(head red|head patch|head hi|red on the head|red of the head|head spot|cap|maruten|hood|hachi)"
_HOLE = (
    "(window|hole|mado|pinprick|white pinprick|white nick|white pinhead|porthole|peephole|keyhole|white hole|white "
    "window|white spot|white dot|white scale|white speck|white "
    "fleck|white patch|pinhole|white pinhole|bald spot|gap|white gap|white eye|island of white|white island|bit of white|"
    "spot of white|speck of white|patch of white|scale of white)"
)
_AMID = (
    "((in|at|inside|near) (the|) (middle|centre|front|back|rear|left|right|side|edge|left side|right side|top|front end|"
    "heart) of|right in the middle of|slap in the middle of|plumb in|inside|within)"
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
        f"{_SMALL} {_HOLE} (in|on|{_AMID}) (the|that|this|) {_PATCH}, (window|hole|mado) (the|) ({_WHICH} (step|"
        f"patch|plate)|step (1|2|3|4)|saddle), {_SMALL} (island of white|white island|white eye|bit of white|spot of white) "
        f"(in|inside|within) the {_RED}, mado ari, porthole, peephole, moth hole, bald scale in the red, white scale "
        "(in|among|amid|amongst) "
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
        f"{_SMALL} {_HOLE} (in|on|above|near|{_AMID}) (the|that|) {_HEAD_RED}",
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
    Spoken(
        "windows",
        "(white|bit of white|pale fleck|pale speck|bare scale|bare spot|light fleck|"
        f"scrap of white|chink of white|blink of white|peep of white|pale eye) (inside|within|in) (the|that|this) {_PATCH}, "
        "(window|mado|hole) (is|) (stuck|sitting|sits|parked|set|plumb|right|slap bang|just|placed|open) (in|at|on|inside) "
        f"(the (middle|centre) of|) {_PATCH}, white (in|inside|within) the {_RED} (on|at|by|near|under|beside|behind)",
        alone={
            "at least 1": f"(mado|window|hole) (is|) not (a|) (kire|real break|gap|proper break|true gap), {_PATCH} (with|"
            "has|got) (a|) (windows|window|holes|mado), (white|skin|bare skin) (peeping|poking|grinning|winking|showing) "
            f"out of the middle of the (red|saddle|patch), {_PATCH} (has|with|got) (a|1) {_SMALL} (white|bare|pale) (scale|"
            "spot|eye|speck|fleck|dot|patch|bit) (in it|inside|inside it|in the middle|in the middle of it|)",
            "at least 2": f"{_PATCH} (full of|riddled with|peppered with|shot through with) (windows|holes|white scales|mado|"
            "white specks|white), (riddled with|full of|peppered with) (windows|holes|mado|white scales)",
            "is 0": f"{_PATCH} (is|) (all|) (whole|intact|complete|without a (window|hole)|without (windows|holes)), not a "
            "(window|hole|white scale|white spot) in (it|the red|any of them|the lot|sight), (no|not a) (holes|white scales|"
            "white spots|bare scales|bare spots) (in|inside) (the red|it|any of the (steps|patches)|the plate|the plates)",
        },
        of_parts="patches",
    ),
    Spoken(
        "head_windows",
        alone={
            "at least 1": f"(hole|window|mado|white spot|white bit|white patch|white dot) right in the middle of {_HEAD_RED}"
            f", {_HEAD_RED} (is|) (a ring|like a doughnut|a doughnut|like a ring|ring shaped) (with (a|) white (in the "
            f"middle|inside|centre)|), {_HEAD_RED} (has|with|got) (a|1|some|) white (in|inside) it",
        },
    ),
    Spoken(
        "tobihi",
        "straggler, stray, stray flake, orphan scale, odd red scale, red straggler, (little|small|tiny|single|odd|lone|"
        "loose|stray|a few|some) red (bits|bit|scales|scale|flakes|flake|chips|chip|drops|drop|dabs|dab|spots|spot|dots|dot|"
        "specks|speck) (out|away|sitting out|sitting|left|lost|lying|lying about|scattered|dotted|strewn|floating) (in|on|"
        f"about|over|across|along) {_PLACE}",
        alone={
            "at least 2": "(scatter|sprinkle|scattering|sprinkling|dusting|splatter|handful|shower|smattering|swarm|trail|"
            "string|few) of (little|small|tiny|loose|stray|odd|) red (bits|scales|spots|dots|specks|flakes|flecks|marks|"
            f"drops|chips) (round|on|along|over|down|in|at|about|across|) ({_PLACE}|), (stragglers|strays|loose dots|loose "
            "scales|loose bits|odd bits of red|odd scales|stray scales|red stragglers|loose spots|stray dots|stray bits|"
            "flying scales) (about|all over|everywhere|here and there|round about|(on|along|over|down|in|round|about|at) "
            f"{_PLACE}), (a lot of|lots of|many|several|plenty of|loads of|masses of) (loose|stray|flying|odd) (dots|scales|"
            f"bits|spots|flakes|specks) (on|along|over|down|in|round|about|at|) ({_PLACE}|)",
            "at least 1": "(slight|small|little|tiny|single|lone|) (stray|straggler|red stray|splash of red|dab of red|"
            "scrap of red|chip of red|flake of red|drop of red|crumb of red|smudge of red) (on|at|by|behind|near|in|over|"
            f"under|below|above) {_PLACE}",
            "is 0": "no (stray|strays|stragglers|stray flake|stray flakes|stray scale|stray scales|flying scales|loose dots|"
            "loose bits|red crumbs) (anywhere|at all|in the white|to be seen|about|on the white|), (not a|never a) (stray|"
            "straggler|stray flake|loose flake|stray dot) (anywhere|in sight|to be seen|about|in the white|), (you|) (do "
            "not|can not|will not) (get|find|see) (a|any|1|a single) (stray|straggler|stray flake|stray scale|stray dot|"
            "stray spot|loose scale|loose dot|stray red) (anywhere|at all|in the white|on it|), white (free|clean|clear) of "
            "(strays|stragglers|stray scales|red dots|red specks)",
        },
        of_parts="all",
    ),
)
"""What is said of small marks."""
