"""The values of each trait of a fish of two editions that are tried."""

from __future__ import annotations

from decimal import Decimal

from koirules.analysis.diff.joint import Joint
from koirules.candidates.maps_to_try import MAPS, map_between, maps_of_samples
from koirules.candidates.ordinary import SOME_MAP, telling_values
from koirules.candidates.places_to_move import range_in_notches
from koirules.standard.cuts import Cuts
from koirules.vocabulary.kinds import Count, Kind, Number, Patches
from koirules.vocabulary.maps import PatchMap
from koirules.vocabulary.readings import Reading, Span


def values_of(joint: Joint) -> dict[str, tuple[Reading | None, ...]]:
    """Those at which something turns; None: not recorded.

    Where rules ask what grows, the lengths too at which it stops. What each edition works out in its own way can be left
    out, and what it follows from written.
    """
    measured = {name for ahead in joint.aheads for one in ahead.derived for name in one.inputs} | joint.beneath.keys()
    found: dict[str, tuple[Reading | None, ...]] = {}
    for name, cut in {**joint.cuts, **joint.beneath}.items():
        values: tuple[Reading | None, ...] = _telling(joint, name, cut, measured=name in measured)
        left_out = name in joint.optional or name in joint.own or name in joint.beneath
        found[name] = (*values, None) if left_out else values
    return found


def _telling(joint: Joint, name: str, cut: Cuts, *, measured: bool) -> tuple[Reading, ...]:
    trait = joint.traits[name]
    values = telling_values(trait, cut)
    if isinstance(trait.kind, Patches) and measured:
        samples = [one for grader in (joint.old, joint.new) for one in maps_of_samples(grader.rules, name)]
        return tuple(dict.fromkeys([SOME_MAP, *MAPS, *samples]))
    if any(name == ahead.grows_by for ahead in joint.aheads) and isinstance(trait.kind, Number):
        low, high, notch = range_in_notches(trait.kind)
        ends = (round(target * notch) - off for target in _targets(joint) for off in (0, notch))
        inside = (float(Decimal(end) / notch) for end in ends if low <= end <= high)
        return tuple(dict.fromkeys([*values, *(Span(value, value) for value in inside)]))
    return values


def between(kind: Kind, one: Reading, other: Reading) -> Reading | None:
    """The middle of two values of a number or map; None where there is none between them."""
    if isinstance(one, PatchMap) and isinstance(other, PatchMap):
        return map_between(one, other)
    if not isinstance(kind, Number | Count) or not isinstance(one, Span) or not isinstance(other, Span):
        return None
    notch = range_in_notches(kind)[2]
    low, high = (round(each.low * notch) for each in (one, other))
    if abs(high - low) <= 1:
        return None
    value = float(Decimal((low + high) // 2) / notch)
    return Span(value, value)


def _targets(joint: Joint) -> list[float]:
    """The lengths in cm that either edition asks a fish to grow to."""
    targets = {one.grower.target for ahead in joint.aheads for one in ahead.wanted}
    return sorted(targets | {one.target for ahead in joint.aheads for one in ahead.derived})
