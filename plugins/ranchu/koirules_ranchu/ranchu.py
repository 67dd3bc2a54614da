"""The variety ranchu: what is looked at on a goldfish that is judged from above in a basin.

Meanings are common practice, no source; ranges, steps and Japanese names are from memory.
"""

from __future__ import annotations

from koirules.vocabulary.shorthand import PRACTICE, choice, count, number, places, scale, share
from koirules.vocabulary.subject import SHOW, SORTING, Cautions, Subject
from koirules.vocabulary.traits import AS_GIRTH, AS_LENGTH, Better, Growth, Trait, Vocabulary
from koirules_ranchu.drawing import DRAWING
from koirules_ranchu.said import SAID_OF_RANCHU

_DECIDING = (
    "A grade is a sorting result, not an instruction to kill. Fish that are not kept are sold or rehomed; where there is no "
    "other way, trained people kill humanely, by methods lawful in your country; ask a fish vet."
)
_HANDLING = (
    "Lift a fish with its water, in a bowl, and look at it in a basin: no net on the head, no fish in the air. Keep the water of "
    "basin and tub equally warm. Sick fish are left in peace. Unplug pumps, heaters and lights before hands go in."
)
_MOVING = (
    "Fish that come from elsewhere, or home from a show, stay apart for some weeks, with bowls of their own. No goldfish, alive "
    "or dead, goes into open water."
)

GOLDFISH = Subject(
    one="fish",
    many="fish",
    cautions={
        SORTING: Cautions(
            (_DECIDING,),
            (_HANDLING,),
            (_MOVING,),
            short="A grade is no instruction to kill: sell or rehome first; else only trained people, humanely and lawfully. "
            "Lift fish with their water; none that are sick.",
        ),
        SHOW: Cautions(
            (
                "A placing is what the judges of one day saw by one standard. A fish that is ill or exhausted is taken out.",
            ),
            (_HANDLING,),
            (_MOVING,),
            short="Fish before programme: clean water of equal warmth, bowls apart by owner; ill or exhausted fish rest.",
        ),
    },
    in_hand="Before a fish is in your basin",
    on_paper="Lift with a bowl, never into the air; water equally warm. No sick fish. Unplug pumps, heaters and lights first.",
    at_work="What is said at the basin",
    place="tub",
    places="Tubs",
    drawing=DRAWING.name,
)
"""Common practice, no source: what is asked of those who handle goldfish."""

RANCHU = Vocabulary(
    name="ranchu",
    title="ranchu",
    traits=(
        Trait(
            "length",
            "length",
            number("0.5", "30", "cm"),
            Better.NEITHER,
            Growth.RISES,
            "From the front of the head to the end of the tail, from above.",
            {"ja": "全長"},
            allometry=AS_LENGTH,
            source=PRACTICE,
        ),
        Trait(
            "breadth",
            "breadth of the body",
            number("0.2", "15", "cm"),
            Better.NEITHER,
            Growth.RISES,
            "The greatest breadth of the body from above, without the fins.",
            allometry=AS_GIRTH,
            source=PRACTICE,
        ),
        Trait(
            "head_growth",
            "growth on the head (nikuryu)",
            scale("none", "slight", "fair", "full"),
            Better.MORE,
            Growth.VARIES,
            "How much the skin of the head has thickened, from above: full hides the line of the skull.",
            {"ja": "肉瘤"},
            source=PRACTICE,
        ),
        Trait(
            "back",
            "line of the back",
            scale("broken", "uneven", "smooth"),
            Better.MORE,
            Growth.FIXED,
            "From the head to the tail: smooth bends down once, without a step or a bump.",
            {"ja": "背なり"},
            never_silent=True,
            source=PRACTICE,
        ),
        Trait(
            "fin_remnants",
            "remnants of a fin on the back",
            count(9),
            Better.LESS,
            Growth.FIXED,
            "Spines, bumps or rays where other goldfish have the fin of the back.",
            never_silent=True,
            source=PRACTICE,
        ),
        Trait(
            "tail_kind",
            "kind of tail",
            choice("four_lobes", "cherry", "three_lobes", "pinched", "single"),
            Better.NEITHER,
            Growth.FIXED,
            "Four lobes: split to its root; cherry: a notch; three lobes: none; pinched: the upper edges are grown together; "
            "single: one blade, as other fish have.",
            {"ja": "尾形"},
            source=PRACTICE,
        ),
        Trait(
            "tail_spread",
            "spread of the tail",
            scale("closed", "half_open", "open"),
            Better.MORE,
            Growth.VARIES,
            "How far the halves of the tail stand apart while the fish swims.",
            {"ja": "尾張り"},
            source=PRACTICE,
        ),
        Trait(
            "tail_even",
            "likeness of the halves of the tail",
            scale("uneven", "nearly_even", "even"),
            Better.MORE,
            Growth.FIXED,
            "Whether left and right are as large and stand as wide.",
            source=PRACTICE,
        ),
        Trait(
            "colour",
            "colour",
            choice("red", "red_and_white", "white", "dark"),
            Better.NEITHER,
            Growth.VARIES,
            "Dark are young fish before the colour turns.",
            {"ja": "色"},
            source=PRACTICE,
        ),
        Trait(
            "red_cover",
            "cover of red",
            share(),
            Better.NEITHER,
            Growth.VARIES,
            "Of a red and white fish: how much of body and head is red, from above.",
            source=PRACTICE,
        ),
        Trait(
            "red_on",
            "where it is red",
            places("head", "front_back", "rear_back", "left_pectoral", "right_pectoral", "tail"),
            Better.NEITHER,
            Growth.VARIES,
            "Of a red and white fish: the parts that are red, or for the most part so.",
            source=PRACTICE,
        ),
        Trait(
            "swimming",
            "how it swims",
            scale("tips_over", "sways", "steady"),
            Better.MORE,
            Growth.VARIES,
            "Over some metres in clear water; one that tips over when it rests may be ill.",
            never_silent=True,
            source=PRACTICE,
        ),
        Trait(
            "health",
            "health",
            scale("sick", "doubtful", "well"),
            Better.MORE,
            Growth.VARIES,
            "Spots, clamped fins, sores or gasping are not well: it is left in peace, ask a fish vet.",
            never_silent=True,
            source=PRACTICE,
        ),
    ),
    describe="Goldfish that are looked at from above: no fin on the back, a tail in two halves.",
    also=("らんちゅう", "蘭鋳"),
    sayings=SAID_OF_RANCHU,
    subject=GOLDFISH,
)
