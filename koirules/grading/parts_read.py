"""The parts of a standard that give reasons, and what each of them reads."""

from __future__ import annotations

from koirules.standard.parts import Extra, Grade, Limit, Points, Rules
from koirules.standard.tree import Node, Recorded, ScoreRead, SectionRead, TraitRead, walk
from koirules.vocabulary.traits import Trait

Part = Points | Extra | Limit | Grade


def part_key(part: Part) -> str:
    """The key of a part: its head word and its name."""
    match part:
        case Points():
            return f"points {part.name}"
        case Grade():
            return f"grade {part.name}"
        case _:
            return f"{part.head} {part.name}"


def parts_of(rules: Rules) -> list[Part]:
    """Every part that gives a reason."""
    found: list[Part] = [*rules.limits, *rules.grades]
    for section in rules.sections:
        found.extend(section.points)
        found.extend(section.extras)
    return found


def traits_in(part: Part) -> tuple[Trait, ...]:
    """The traits that a part reads, through terms too, in the order they stand."""
    found: dict[str, Trait] = {}
    for root in _roots(part):
        for node in walk(root):
            if isinstance(node, TraitRead | Recorded):
                found.setdefault(node.trait.name, node.trait)
    return tuple(found.values())


def points_in(part: Part) -> tuple[str, ...]:
    """The sections that a part reads, "" for the score."""
    found: dict[str, None] = {}
    for root in _roots(part):
        for node in walk(root):
            match node:
                case ScoreRead():
                    found[""] = None
                case SectionRead(name=name):
                    found[name] = None
                case _:
                    pass
    return tuple(found)


def _roots(part: Part) -> list[Node]:
    match part:
        case Points(by=by):
            return [by]
        case Extra(condition=condition):
            return [condition]
        case Limit(condition=condition, exception=exception):
            return [condition] if exception is None else [condition, exception]
        case Grade(condition=condition):
            return [] if condition is None else [condition]
