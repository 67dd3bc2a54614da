"""How sorters speak of black (sumi), of a net and of a clear head. Common practice, no source; wordings from memory."""

from __future__ import annotations

from koirules.vocabulary.phrases import Saying, Spoken, SpokenTogether
from koirules.vocabulary.praise import LACKING, NOT_BAD, short_of

_B = "(sumi|black|black pattern|black marking)"
_LACKING = LACKING.replace(", not quite right, not right,", ",")
"""`the black is not right` may be said of its place."""
_ON = "(on|in|at|over|across|up|down|round)"
_SPOT = (
    f"({_B}|{_B} (spot|patch|mark|stone|blot|dot|island)|(spot|patch|mark|stone|blot|"
    f"dot|splash|dab|bit|touch|lump|blob) of {_B})"
)
_SPOTS = f"({_SPOT}|(sumi|black) spots|{_B} bands)"
_SHARP = (
    "sharp, crisp, clean, clear, well cut, tight, clean cut, cut clean, (like|as if) cut (out|) (with (a knife|scissors)|), "
    "(sharp|clean|crisp) as a (knife|razor|line), knife sharp, razor sharp, well defined, neat, hard edged, "
    "sharp edged, clearly cut, "
    "stamped on, (like|as if) stamped (on|)"
)
_BLURRED = (
    "blurred, blurry, soft, fuzzy, unclear, ragged, woolly, washed out, smudged, smudgy, smeared, bleeding, running, "
    "frayed, feathery, hazy, not clean, (mucky|muddy), like (blotting paper|wet paper|smoke), "
    "bleeds (out|into the white|), spread out"
)
_SIDES = "(both sides|either side|left and right|on both sides|each side|in both fins|both fins|both)"
_PECS = "(pectoral|pec|pectoral fin|pec fin|front fin|side fin|chest fin)"
_AT_ALL = "(at all|whatever|anywhere|to speak of|yet|)"

SAID_OF_BLACK: tuple[Saying, ...] = (
    Spoken(
        "sumi_quality",
        "sumi, black, sumi quality, black quality, ink, depth of the black, "
        "(colour|quality|finish) of the (black|sumi), 墨, 墨質",
        levels={
            "lacquer": "superb, excellent, lacquer, deep lacquer, real lacquer, (like|as|) (wet|) lacquer, lacquered, "
            "jet, jet black, (deep|black) as night, very deep, "
            "like (ink|tar|piano black|a piano|polish|coal), like wet (ink|paint|tar), shiny, glossy, "
            "with a (shine|gloss), wet looking, "
            "so deep (it|they) shine, urushi, pitch black, (black|deep) and (glossy|shiny), 漆黒",
            "black": "good, nice, great, deep, strong, solid, thick, dark, dense, black enough, well in, fully in, through, "
            "fully (up|through|finished), "
            "(all|well|right) (up|through), finished, heavy and deep, intense, 良い",
            "dull": "dull, flat, matt, brownish, brown, without depth, no depth, lifeless, chalky, dusty, tired, rusty, dead",
            "grey": "grey, greyish, pale, thin, not up, not through, weak, light, faint, washed out, "
            "(like|as) (pencil|slate|a pencil|ash|smoke|"
            "graphite|soot), pencil grey, ashy, smoky, slate grey, transparent, watery, like watered (ink|down ink), "
            "hardly (started|there|up|begun), "
            "barely (started|there|up|begun), (just|only just) (starting|beginning|coming), "
            "still (asleep|half asleep|coming|grey|blue)",
            "at least black": NOT_BAD,
            "is dull or black": "fair, average",
            "at most dull": f"{_LACKING}, poor, bad, {short_of('deep', 'deeper')}, {short_of('black', 'blacker')}",
        },
        alone={
            "is lacquer": "lacquer black, jet black, deep shiny black, black like lacquer, black as (ink|tar|coal|night)",
            "is grey": "(sumi|black) not (up|through|out|in) yet, "
            "(sumi|black) (has|have) not (come|come up|come through) (yet|), grey (sumi|black), "
            "(sumi|black) still (grey|blue), "
            "pencil (sumi|black), (sumi|black) (half|still) asleep, (hardly|barely) any depth to the (sumi|black)",
            "at least black": f"{_B} (is|) (all|fully|well) (there|up|in|finished|through)",
        },
        of_parts="all",
    ),
    Spoken(
        "sumi_kiwa",
        f"sumi kiwa, kiwa of the (sumi|black), {_B} edge, "
        f"(edge|edges|outline|border) (of|on|to|round) (the|each|every|) {_B}, "
        f"edge between (black|sumi) and white, edge of the bands, (edge|edges) of the {_B} (spot|patch|mark)s, 墨のキワ",
        levels={
            "blurred": f"{_BLURRED}, poor, bad, rough",
            "fair": "fair, average",
            "sharp": f"{_SHARP}, good, nice, great, superb, excellent",
            "at least fair": NOT_BAD,
            "at most fair": f"{LACKING}, {short_of('sharp', 'sharper')}",
        },
        apart=True,
    ),
    Spoken(
        "sumi_kiwa",
        "sumi, black",
        levels={"blurred": _BLURRED, "sharp": _SHARP, "at most fair": short_of("sharp", "sharper")},
        alone={
            "is blurred": f"boke all over, {_B} (blurred|bleeding) all over, "
            f"{_SPOTS} (have|has|with|got) (soft|blurred|fuzzy|ragged|woolly) edges",
            "is sharp": f"{_SPOTS} (have|has|with|got) (sharp|clean|crisp|tight|neat|clear|good) edges",
        },
        apart=True,
        of_parts="all",
    ),
    Spoken(
        "sumi_rising",
        f"{_B} (under|below|beneath) the (skin|white|surface), {_B} underneath, ato (sumi|zumi), "
        "rising (sumi|black), hidden (sumi|black), "
        f"{_B} coming, (shadow|shadows|kage) under the skin, sunken (sumi|black), sinking (sumi|black), "
        f"{_B} to come, kage, 後墨, 沈み墨",
        levels={
            "none": "no, without, no more, no sign of",
            "some": "some, a little, a bit of, a touch of, slight, a hint of, traces of, signs of, a shadow of",
            "much": "much, lots of, a lot of, plenty of, loads of, so much, all over, everywhere",
        },
        alone={
            "at least some": f"{_B} (is|are|) (still|) (coming up|coming through|coming|"
            "rising|sunken|sinking|submerged|hidden|waiting) "
            "(still|yet|under the (skin|white)|underneath|through|), "
            f"{_B} (is|) still (under|below|beneath) (the|that|) (skin|white|surface), "
            "blue (shadow|shadows|patches) (under the skin|), (grey|blue) (under the skin|shadows under the white), "
            f"{_B} (is|) (unfinished|not finished|not ready|unripe|not ripe|immature|half up|half ready), "
            "head (is|) (all|still|) kage (still|), "
            f"{_B} (is|) (grey|weak|pale) but (coming|rising|on its way), "
            "(shadow|shadows) (showing|) under the (skin|white), "
            f"{_B} (is|) still (coming up|sinking|rising|lying) (under|below) (the|that) (white|skin) (on the back|on the "
            "head|), "
            ""
            "(some|a bit of|a little) (sumi|black) (still|) under the (skin|white) (on the (left|right|back|head|"
            "shoulder)|), "
            ""
            "more (sumi|black) (to come|coming|on the way|underneath|under the skin), "
            f"{_B} (not all|not fully) (up|through), "
            f"{_B} (is|) still half (up|under|asleep), blue still",
            "is none": f"all (sumi|black) is up, no {_B} to come, nothing (more|) under the skin, "
            "nothing (more|) to come up, "
            f"all the (sumi|black) is (up|there|out|through)",
            "is much": "kage (all over|everywhere|through the whole back|from head to tail)",
        },
    ),
    Spoken(
        "sumi_cover",
        f"{_B}, {_B} share, share of (black|sumi), amount of (black|sumi)",
        alone={
            "is 28 % to 38 %": f"(about|) (a|one) third (of it|) {_B}",
            "is 45 % to 55 %": f"(about|) half (of it|) {_B}",
            "below 10 %": f"(hardly|scarcely|barely) any {_B}, (very|too|) little {_B}, not (much|a lot of) {_B}, "
            f"(short|light) on {_B}, "
            f"light (sumi|black), {_B} is (sparse|thin on the ground|scarce), next to no {_B}, "
            f"could (do with|use) (a bit|) more {_B}, needs more {_B}",
            "above 60 %": f"(too|so|very) much {_B}, mostly {_B}, heavy (sumi|black), "
            f"(lots|loads|plenty) of (black|sumi), {_B} heavy, "
            f"a lot of {_B}, {_B} everywhere, nearly all {_B}, "
            f"{_B} (dominates|takes over|dominant|swamps the rest|swallows the white), "
            f"more {_B} than (white|anything|anything else)",
            "is 0 %": f"no {_B} {_AT_ALL}, without {_B}, not a (spot|speck|scale|trace) of {_B}, (sumi|black) free, 墨なし",
        },
    ),
    Spoken(
        "sumi_front_share",
        f"{_B} in front",
        alone={
            "above 70 %": f"(more|most of the|all the) {_B} (is|) (in|at the) front, "
            f"{_B} (mostly|all|heavy) (in|at the) front, {_B} is front heavy",
            "below 30 %": f"(more|most of the|all the) {_B} (is|) (behind|at the back|at the rear), "
            f"{_B} (mostly|all|heavy) (behind|at the back)",
        },
    ),
    Spoken(
        "sumi_left_share",
        f"{_B} on the left side",
        alone={
            "above 65 %": f"(more|most of the|all the) {_B} (is|) on the left (side|), "
            f"{_B} (mostly|all|only) (is|) on the left (side|), "
            f"{_B} down the left side only",
            "below 35 %": f"(more|most of the|all the) {_B} (is|) on the right (side|), "
            f"{_B} (mostly|all|only) (is|) on the right (side|), "
            f"{_B} down the right side only",
        },
    ),
    Spoken(
        "sumi_balance",
        f"{_B} balance, balance of the (black|sumi), spread of the (black|sumi), "
        "(placing|placement|position|distribution) of the (black|sumi), "
        f"{_B} (placement|placing|layout)",
        alone={
            "at least 0.7": f"{_B} (well|nicely|evenly|beautifully|good) (balanced|spread|"
            "placed|laid out|distributed|scattered), "
            f"{_B} balanced, "
            f"{_B} (is|) (well|nicely|evenly|) spread (shoulder middle and tail|from (shoulder|head) to tail|all along|"
            "over the back|along the back), "
            ""
            f"good (sumi|black) (balance|placement), (well|nicely|) (placed|balanced|spread) (sumi|black), "
            f"{_B} (is|) (just|right|) where (you|i) want it, {_B} in (all|) the right places",
            "at most 0.3": f"{_B} (is|) all in one (place|spot|lump|heap), "
            f"{_B} (is|) (badly|poorly) (placed|spread|balanced), {_B} (is|) bunched (up|), "
            f"{_B} (is|) in the wrong (place|places), {_B} (is|) all (bunched|piled|crowded) (up|together|)",
        },
    ),
    Spoken(
        "black_as_larva",
        "black in its first days, black fry, black larva",
        alone={"is yes": "was black as a fry, was black after hatching", "is no": "was yellow after hatching"},
    ),
    SpokenTogether(
        f"all (of|) the {_B} (is|) on one side, {_B} (down|on) one side only, {_B} (only|all) (on|down) one side",
        "sumi_balance at most 0.5",
    ),
    SpokenTogether(
        f"{_B} (is|) (sharp|crisp|clean cut) and (deep|black|dense|solid)",
        "sumi_kiwa is sharp and sumi_quality at least black",
    ),
    SpokenTogether(
        f"{_B} (is|) (deep|black|dense|solid) and (sharp|crisp|clean cut)",
        "sumi_kiwa is sharp and sumi_quality at least black",
    ),
    SpokenTogether(
        f"{_B} (is|) (grey|weak|pale) and (blurred|fuzzy|soft)", "sumi_kiwa is blurred and sumi_quality is grey"
    ),
)
"""What is said of black whatever its form."""

SAID_OF_SPOTS: tuple[Saying, ...] = (
    Spoken(
        "sumi_spots",
        "black spot, sumi, sumi spot, black patch, sumi patch, spot of (black|sumi), black stone, "
        f"stepping stone, black mark, {_B} island, "
        "patch of (black|sumi), dab of (black|sumi), tsubo (sumi|zumi), kasane (sumi|zumi)",
        alone={
            "is 0": f"no (black|sumi) (spot|spots|patch|patches) {_AT_ALL}, no {_B} {_AT_ALL}, without {_B}, no {_B} yet",
            "at least 4": "(many|lots of|loads of|plenty of|a lot of) (black spots|sumi spots|sumi|black patches), "
            "spotted all over, "
            "(sumi|black spots) all over (the place|)",
            "at most 3": f"(only|just) (a couple of|two or three|a few|a bit of) {_SPOT}, (sparse|scarce) (sumi|black)",
        },
    ),
    Spoken(
        "sumi_size",
        "black spots, sumi marks, sumi, sumi spots, black, spots, size of the sumi, sumi patches",
        levels={
            "pepper": "pepper, peppery, tiny, like (pepper|gravel|dust|poppy seeds|fly dirt|soot), very small, "
            "scattered fine, gravelly, in little specks, "
            "(broken|split) (up|) into (bits|specks|crumbs|gravel), sprinkled, peppered",
            "small": "small, small and (scattered|few|neat|round), little, fine, on the small side, dainty",
            "medium": "medium, middle sized, medium sized",
            "bold": "bold, big and bold, big bold, good big, nice big, large bold, large, big, broad, "
            "strong and large, in big (blocks|patches|lumps), blocky, chunky, "
            "big and (blocky|bold|strong), "
            "heavy and bold, like stepping stones",
        },
        alone={
            "is pepper": "peppered, pepper, pepper (sumi|black), jari, jari (sumi|zumi) (everywhere|all over|), "
            "gravel, gravel (sumi|black), "
            "(sumi|black) like (pepper|gravel), peppered (with|all over with) (sumi|black)",
        },
    ),
    Spoken(
        "sumi_places",
        f"{_SPOT}, black, another, another one",
    ),
    Spoken(
        "kata_sumi",
        f"kata (sumi|zumi), katasumi, katazumi, shoulder (black|sumi), {_SPOT} (on|at) the shoulder, key (black|sumi), "
        "key black at the shoulder, 肩墨",
        alone={
            "is yes": "(nice|good|strong|solid|lovely|clean|proper) (kata (sumi|zumi)|katasumi|katazumi|shoulder (black|sumi)) "
            "(on the (left|right) (shoulder|)|)"
        },
    ),
    Spoken(
        "sumi_on_head",
        f"{_B} {_ON} the (head|face|forehead|crown), head (sumi|black), "
        f"{_SPOT} {_ON} the (head|face|forehead|crown|cheek), hatsu (sumi|zumi), "
        f"{_B} (coming|) (up|) on the head",
        alone={
            "is no": "head free of (black|sumi), (clean|clear) (of black|of sumi) on the head, "
            f"no {_B} {_ON} the (head|face) {_AT_ALL}, "
            f"(head|face) (is|) (clean|clear|free) of {_B}, no {_B} (gets|comes) (up|) on (to|) the head, "
            f"{_B} (stays|keeps) off the (head|face)",
        },
    ),
    Spoken(
        "sumi_below_line",
        f"{_B} (below|under|past|beneath) the (lateral|side|) line, {_B} (on|round|under) the belly, {_B} down the sides, "
        f"{_B} (goes|runs|comes|wraps|drops) (down|round|) (below|under|past|beneath) the (lateral|side|) line, "
        f"{_B} (below|under|past) the (lateral|side|) line on (the|one) (left|right|side), "
        f"{_B} low down (on the (sides|flanks)|)",
        alone={
            "is no": f"{_B} (is|) (all|) (above|over) the (lateral|side|) line, "
            f"{_B} (stays|sits|keeps|lies) (up|) (on|along) (the|top of the) back, "
            f"{_B} (stays|keeps|sits) above the (lateral|side|) line, {_B} (is|) (all|only) on (the|top of the) back, "
            f"no {_B} (below|under) the (lateral|side|) line",
        },
    ),
    Spoken(
        "tejima",
        f"tejima, stripe (on|in) the {_PECS}, {_PECS} stripe, fin stripe, stripe, "
        f"(sumi|black) stripe in the {_PECS}, (line|lines) in the {_PECS}, 手縞",
        alone={
            "is 0": f"no stripes (in the fins|), no stripes in the {_PECS}, clean {_PECS}, no tejima {_AT_ALL}, "
            f"{_PECS} (white|clean|clear), no tejima yet",
            "at least 1": f"(stripes|lines) (in|on) (both|each|the (left|right)) {_PECS} (already|only|), "
            "tejima (on|in) (the|one) (left|right|side|fin) (only|), "
            f"tejima (already|) (in|on) ({_SIDES}|both {_PECS}) (already|), tejima {_SIDES}, "
            f"{_PECS} (striped|stripy|have stripes) (already|), "
            f"striped {_PECS}, nice tejima, good tejima, tejima (coming|showing|starting)",
            "is 3": f"three stripes in (the left|the right|each|both) {_PECS}, "
            "tejima three (lines|stripes|) (each side|per side|both sides|in each fin|)",
            "is 2": f"two stripes in (the left|the right|each|both) {_PECS}, "
            "tejima two (lines|stripes|) (each side|per side|both sides|in each fin)",
            "is 1": "tejima one (line|stripe) (each side|per side|both sides|in each fin), "
            "a single stripe (each side|in each fin)",
        },
    ),
    Spoken(
        "ojima",
        "ojima, (stripe|stripes) (in|on) the tail, tail stripes, (black|sumi) in the tail, striped tail, "
        "(stripy|striped) tail fin, 尾縞",
    ),
)
"""What is said of black in spots."""

SAID_OF_BANDS: tuple[Saying, ...] = (
    Spoken(
        "sumi_bands",
        "black band, band, (sumi|black) band, band of (black|sumi), wrap, wrap of (black|sumi), black wrap, "
        "(black|sumi) belt, belt of (black|sumi)",
    ),
    Spoken(
        "sumi_linked",
        f"{_B}, bands, {_B} bands",
        levels={
            "spots": "in spots, separate, like a sanke, apart, spotty, broken, broken up, (bitty|in bits), "
            "all in bits, in islands, scattered, "
            "sanke like, sanke style, dotted about",
            "partly": "partly linked, half linked, partly joined, partly joined up, nearly joined",
            "linked": "linked, linked up, joined, joined up, continuous, running on, connected, wrapping, "
            "(in|) one piece, flowing, laced (between|through), "
            "(runs|flows|winds) (right|all the way|) (through|from (head|nose) to tail|along)",
        },
        alone={
            "is linked": f"{_B} (is|) in bands, {_B} wraps (well|nicely|good|beautifully), "
            f"{_B} (wraps|goes|runs) (right|) (round|) (under|round|on|down to) the belly, "
            f"{_B} runs on, {_B} (wraps|winds|goes) (right|) (round|around) (the body|her|him|it|), "
            "wrapping (sumi|black), makisumi, "
            "maki sumi, (good|nice|strong) wrap",
            "is spots": f"{_B} in spots, sanke (like|style) (sumi|black), {_B} like a sanke",
        },
    ),
    Spoken(
        "small_sumi",
        "(small|little|stray|odd|tiny|loose|single) (black|sumi) (spot|mark|patch|dot), (small|stray) sumi, "
        "(small|little) spot of (black|sumi), "
        "stray bit of (black|sumi)",
    ),
    Spoken(
        "head_sumi",
        f"head (sumi|black), {_B} on the head, head, head pattern, face, pattern on the head",
        levels={
            "clear": "clear (of (black|sumi)|), clean (of (black|sumi)|), free (of (black|sumi)|), none, white, "
            "no, without (black|sumi)",
            "stain": "stain, stained, shapeless, blotchy, blot, a smudge, smudged, a mess, messy",
            "v_shape": "v, v shaped, v shape, a (clear|nice|clean|) v, in a v",
            "menware": "split face, lightning, menware, a lightning flash",
            "hachiware": "hachiware, split crown",
            "solid": "solid, all black, full, hood, black hood, completely black, nearly all black, "
            "a black hood, like a helmet",
        },
        alone={
            "is menware": "(good|nice|lovely|clean|clear|strong|proper|real|perfect|) (menware|men ware), "
            "split face, face split (by (black|sumi)|), "
            "(lightning|flash|bolt|line) (of (black|sumi)|) (on|across|through|down) the (head|face), "
            f"{_B} (splits|cuts|divides|halves) the (face|head), "
            "split across the face, 面割れ",
            "is hachiware": f"crown split, {_B} splits the crown, 鉢割れ",
            "is clear": f"no {_B} on the head {_AT_ALL}, head (without|free of|clean of) {_B}, nothing black on the head",
            "is solid": f"head (is|) all {_B}, black head, black hood, all black head, whole head (is|) black, "
            "head (is|) (completely|nearly all) black, face all black",
            "is v_shape": "(v|v shape) on the head, v shaped (head|pattern on the head)",
        },
    ),
    SpokenTogether(
        "hachiware, (good|nice|lovely|clean|clear|strong|proper|perfect|) hachiware (lovely|nice|clear|clean|) (clear|) (v|)",
        "head_sumi is hachiware",
    ),
    SpokenTogether(
        "menware (over|through|past|down over) the (left|right|) eye, "
        "(menware|lightning) from the nose (up|) over the (left|right|) eye",
        "head_sumi is menware",
    ),
    Spoken(
        "nose_sumi",
        f"{_B} (on|at|round) the (nose|lip|lips|mouth|chin|snout), hana (sumi|zumi), "
        "(black|sumi) (nose|lip|lips|chin|snout|mouth), (nose|lips|snout|chin) (is|are|) black, 鼻墨",
        alone={"is no": f"no {_B} on the (nose|lips|mouth|snout), (nose|snout) (free|clear|clean) of {_B}"},
    ),
    Spoken(
        "head_sumi_share",
        "head black, black on the head, share of black on the head",
        alone={
            "is 45 % to 55 %": f"head half {_B}, half the head (is|) {_B}",
            "below 15 %": f"(little|hardly any|not much|very little) {_B} on the head",
            "above 75 %": f"head (mostly|nearly all) {_B}, most of the head (is|) {_B}",
        },
    ),
    Spoken(
        "head_yellow",
        "yellow on the head, yellow cast on the head, head yellow, yellow head, yellow of the head, head is yellow",
        levels={
            "strong": "strong, plain, clear, much, very",
            "slight": "slight, a little, a bit of, light, a touch of, a hint of",
            "none": "no, without, no more",
        },
        alone={
            "at most slight": "yellow head, head (is|) still (a bit|) yellow, yellow on the head, "
            "head is yellow, yellowish head, head yellowish",
            "is none": "head (is|) white, white head, head (is|) snow white, head (is|) clean and white",
        },
    ),
    Spoken(
        "motoguro_left",
        "black of the left pectoral, share of the left pectoral under black, (black|sumi) in the left pectoral",
        alone={
            "is 0 %": f"no (sumi|black|motoguro) (in|on) the left {_PECS} {_AT_ALL}, left {_PECS} (is|) (white|clean)"
        },
    ),
    Spoken(
        "motoguro_right",
        "black of the right pectoral, share of the right pectoral under black, (black|sumi) in the right pectoral",
        alone={
            "is 0 %": f"no (sumi|black|motoguro) (in|on) the right {_PECS} {_AT_ALL}, right {_PECS} (is|) (white|clean)"
        },
    ),
    Spoken(
        "motoguro",
        f"motoguro, moto guro, (black|sumi) in the {_PECS}, {_PECS} (black|sumi), "
        f"(black|sumi) at the (base|root|joint) of the {_PECS}, "
        f"fin bases, {_PECS}, {_PECS} (base|joint), (black|sumi) in the (fin joints|joints), 元黒",
        levels={
            "none": f"no, without, none, white, clean white, pure white, {_AT_ALL} missing, missing",
            "stripes": "striped, in stripes, stripes, stripy, streaky, a stripe, only stripes, just stripes, "
            "streaked, like a zebra, (stripe|stripes) not a ball",
            "whole_fin": "all black, full, completely black, black fins, black, solid black, "
            "(black|full) (right|all the way|) (out|) to the (edge|edges|tip|tips), "
            "black all over, black (right|all the way|) through, entirely black",
            "base": "good, nice, great, clean, small and (round|neat), at the base, round, perfect, well formed, "
            "well rounded, even, both sides, nice and round, in both joints, like (thumbprints|"
            "thumb prints|two thumbs|balls|two balls|buttons|coins), thumbnail size, thumb sized, tidy, neat, (just|"
            "only) at the (joint|base), a (nice|) ball",
        },
        alone={
            "is base": f"(good|clean|nice|lovely|proper|round|perfect|tidy|neat) motoguro (in both fins|{_SIDES}|), "
            f"motoguro {_SIDES} (nice and round|nice|even|good|clean|round|), "
            f"motoguro (is|) (thumbnail|thumb|coin|button) (size|sized) {_SIDES}, "
            f"{_B} (just|only|) (at|in|round) the {_PECS} (joints|joint|base)",
            "is whole_fin": f"{_PECS} (are|) (all|completely|solid|) black (right|"
            "all the way|) (out to the edge|to the edge|to the tips|), "
            f"black {_PECS}",
            "is stripes": f"stripes in the {_PECS}, striped {_PECS}, "
            f"{_PECS} (are|) striped (instead of motoguro|not motoguro|though instead of motoguro|)",
            "is none": f"no motoguro {_AT_ALL}, {_PECS} (are|) (white|pure white|clean), "
            f"no {_B} in (the|either) {_PECS} {_AT_ALL}, white {_PECS}",
        },
    ),
    Spoken(
        "motoguro_even",
        "motoguro, both motoguro, motoguro left and right",
        levels={
            "poor": "uneven, unequal, different, one sided, on one side only, "
            "(on|in) (the|) (left|right) (only|pec only|fin only|side only), "
            "only (on|in) one (side|fin), "
            "not matching, odd, lopsided",
            "fair": "nearly alike, nearly even, almost even",
            "even": "alike, equal, the same, matching, matched, well matched, a pair, equal on both sides, "
            "same both sides, the same on both sides",
        },
        alone={
            "is poor": f"motoguro (only|just) (on|in) (the|one) (left|right|side|fin), "
            f"one {_PECS} black (and|) (the other|one) white",
        },
    ),
)
"""What is said of black in bands."""

SAID_OF_HEADS: tuple[Saying, ...] = (
    Spoken(
        "head_clear",
        "head, clearness of the head, forehead, crown, 頭",
        levels={
            "stained": "stained, dirty, spotty, spotted, blotchy, cloudy, specked, speckled, marked, not clear",
            "skull_shows": "dark bone, skull shows, bone shows, dark, dark boned",
            "fair": "fair, fairly clear, average",
            "clear": "clear, clean, spotless, pure, white, bright, unmarked, without a mark, 綺麗",
        },
        alone={
            "is skull_shows": "skull shows, skull shows through, dark bone on the head, bone shows on the head",
            "is clear": "clear head, clean head",
        },
    ),
    Spoken(
        "jami",
        "jami, dark speck, dark dot, dark spot, speck on the head, ジャミ",
        alone={"is 0": "no jami, no dark specks, without jami"},
    ),
)
"""What is said of a clear head."""

SAID_OF_NETS: tuple[Saying, ...] = (
    Spoken(
        "net_clarity",
        "net, netting, reticulation, mesh, scale pattern, ami me, amime, pine cone, matsuba, scales, 網目",
        levels={
            "none": "no, without, none",
            "faint": "faint, weak, unclear, hazy, thin, blurred, poor, soft",
            "clear": "clear, good, visible, nice, distinct, fine, 良い",
            "crisp": "crisp, sharp, excellent, very clear, perfect, superb, every scale clear",
        },
    ),
    Spoken(
        "net_even",
        "net, netting, reticulation, mesh, evenness of the net, scales, scale pattern, 網目",
        levels={
            "patchy": "patchy, uneven, irregular, broken, gaps, with gaps, incomplete",
            "fair": "fairly even",
            "even": "even, regular, complete, uniform, the same everywhere",
        },
    ),
    Spoken("net_front", "net on the shoulder, shoulder net, net in front"),
    Spoken("net_middle", "net beside the dorsal, net in the middle"),
    Spoken("net_rear", "net behind the dorsal, net at the rear, net behind"),
)
"""What is said of a net."""
