"""What holds but is likely a slip: unused names, flat criteria, worths that are not 100."""

from __future__ import annotations

from decimal import Decimal

from koirules.meaning.curves import Curve
from koirules.problems import Place, Problem, parts
from koirules.standard.parts import Rules
from koirules.standard.tree import (
    Grown,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    SettingRead,
    Supplied,
    TermRead,
    TraitRead,
    walk,
)
from koirules.vocabulary.kinds import shortest


def warnings_of(rules: Rules, house_places: dict[str, Place]) -> list[Problem]:
    """The warnings about a checked standard. house_places: where each house trait is declared."""
    found: list[Problem] = []
    # A setting with the name of a constant of the variety is read by its measures.
    used = _used(rules) | {constant.name for constant in rules.constants}
    for name, place in house_places.items():
        if name not in used:
            found.append(parts.unused(place, "house trait", name))
    for setting in rules.settings.values():
        if setting.name not in used:
            found.append(parts.unused(setting.place, "setting", setting.name))
    for term in rules.terms.values():
        if term.name not in used:
            found.append(parts.unused(term.place, "term", term.name))
    for points in rules.points:
        always_same = len(set(points.shape.gives)) == 1
        if always_same or (isinstance(points.shape, Curve) and _flat(points.by, points.shape)):
            found.append(parts.flat_curve(points.place, points.name))
    total = sum(section.worth for section in rules.sections)
    if rules.sections and total != 10_000:
        found.append(parts.worths_not_100(rules.sections[0].place, shortest(Decimal(total) / 100)))
    if rules.sections and "score" not in used:
        found.append(parts.unused_section(rules.sections[0].place))
    return found


def _flat(by: Node, curve: Curve) -> bool:
    low, high = (round(end * 1_000_000) for end in by.range)
    least, most = curve.span(low, high)
    return least == most


def _used(rules: Rules) -> set[str]:
    used: set[str] = {name for round_ in rules.rounds for name in round_.amounts if isinstance(name, str)}
    seen: set[str] = set()
    waiting: list[Node] = list(rules.roots)
    for name in rules.said_names:
        used.add(name)
        if name in rules.terms:
            waiting.append(rules.terms[name].node)
            seen.add(name)
    for root in waiting:
        for node in walk(root, into_terms=False):
            match node:
                case TermRead(name=name, node=inner):
                    used.add(name)
                    if name not in seen:
                        seen.add(name)
                        waiting.append(inner)
                case SettingRead(name=name):
                    used.add(name)
                case Recorded(of=of, through=through):
                    used.add(through)
                    waiting.append(of)
                case Supplied(source=source):
                    waiting.extend(source.reads)
                    used.update(source.terms if isinstance(source, Grown) else ())
                case TraitRead(trait=trait):
                    used.add(trait.name)
                case ScoreRead() | SectionRead():
                    used.add("score")
                case _:
                    pass
    return used
