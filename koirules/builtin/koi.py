"""What records of koi are about: the words for fish, and the cautions for those who sort or show them."""

from __future__ import annotations

from koirules.vocabulary.subject import FISH_FROM_ABOVE, SHOW, SORTING, Cautions, Subject

_SORTING = Cautions(
    deciding=(
        (
            "A grade is a sorting result, not an instruction to kill. Fish that are not kept are sold, rehomed or, where there "
            "is no other way, killed humanely by trained people, by methods lawful in your country; ask a fish vet."
        ),
    ),
    handling=(
        (
            "Handle each fish briefly, with wet hands, in calm aerated water; do not sort sick fish or in heat. Switch off and "
            "unplug pumps, heaters and lights before hands or nets go in."
        ),
    ),
    moving=(
        (
            "Where fish move, to a show, a buyer or another pond, ask for quarantine and nets of their own; some diseases must "
            "be reported by law."
        ),
    ),
    short="A grade is no instruction to kill: sell or rehome first; else only trained people, humanely and lawfully. Handle "
    "fish briefly, with wet hands; none that are sick, and none in heat.",
)

_SHOW = Cautions(
    deciding=(
        (
            "A placing is what the judges of one day saw by one standard, and no verdict on the fish elsewhere. Fish come before "
            "the programme: one that is ill, hurt or exhausted is taken out of judging and looked after, ask a fish vet."
        ),
    ),
    handling=(
        (
            "Water: judge fish in clean, calm, aerated water, each owner's apart; watch temperature, oxygen and ammonia all day. "
            "Unplug what runs on mains power before hands go into the water."
        ),
        (
            "Stress: handle each fish briefly and with wet hands, shade it, keep noise and knocks away. One that gasps, rolls or "
            "clamps its fins goes back to rest."
        ),
    ),
    moving=(
        (
            "Transport: bring only healthy, rested fish with an empty gut, in cool, dark water with oxygen, and let the "
            "temperatures become equal slowly before a fish changes water. The transport rules of your country hold."
        ),
        (
            "Quarantine: each owner's fish have nets, bowls and water of their own, disinfected between owners. Fish that come "
            "home stay apart from all others for some weeks."
        ),
        (
            "Notifiable disease (koi herpesvirus among them in many countries): where it is suspected, no fish or water "
            "leaves, and the veterinary authority is told at once. Local law goes before this page."
        ),
    ),
    short="Fish before programme: clean aerated water, wet hands, little time; nets, bowls and water apart by owner; "
    "quarantine at home; suspected notifiable disease: move nothing, tell the authority.",
)
"""Common practice, no source: what shows ask of those who bring, handle and judge fish."""

KOI = Subject(
    one="fish",
    many="fish",
    cautions={SORTING: _SORTING, SHOW: _SHOW},
    in_hand="Before a fish is in your hands",
    on_paper="Wet hands, wet board, ruler and tape; seconds out of the water, head and belly supported. Unplug pumps, heaters "
    "and lights before hands go in. No sick fish, none in heat.",
    at_work="What is said at the tub",
    place="pond",
    places="Ponds and tubs",
    grows_by="length",
    drawing=FISH_FROM_ABOVE,
)
"""Koi of any variety."""
