"""What holds but is likely a slip: unused names, flat criteria, worths that are not 100, picks that take fish with faults."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from decimal import Decimal

from koirules.language import round_parts as rp
from koirules.language import statements as st
from koirules.meaning import operators as ops
from koirules.meaning.curves import Curve
from koirules.problems import Place, Problem, parts
from koirules.standard.parts import Rules
from koirules.standard.tree import (
    Apply,
    Constant,
    FaultRead,
    GradeRead,
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
from koirules.vocabulary.kinds import Scale, shortest
from koirules.vocabulary.traits import Better, Trait


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
    found += _left_out(rules)
    found += _picked_with_faults(rules)
    return found


def _picked_with_faults(rules: Rules) -> Iterator[Problem]:
    """Each round that picks among fish that no round asked anything of, where a fault puts fish to the last grade.

    A round that looks at those of a warned one is not told again.
    """
    last = len(rules.grades) - 1
    fault = next((one for one in rules.limits if one.head == "fault" and not one.lowers and one.grade == last), None)
    if fault is None or last < 1:
        return
    above = rules.grades[last - 1].name
    keeping = f"keep those with grade {'is' if last == 1 else 'at least'} {above}"
    picks = {
        one.name.text: part.place
        for one in rules.source.statements
        if isinstance(one, st.Round)
        for part in one.parts
        if isinstance(part, rp.Pick)
    }
    asked: set[str] = set()
    for one in rules.rounds:
        by_grade = any(isinstance(node, GradeRead | FaultRead) for root in one.roots for node in walk(root))
        if one.keep is not None or by_grade or (one.pool == "kept" and one.pool_of in asked):
            asked.add(one.name)
        elif one.ordered and (one.amount is not None or one.quotas):
            asked.add(one.name)
            yield parts.picks_the_faulty(picks[one.name], rules.grades[last].name, fault.name, keeping)


def _left_out(rules: Rules) -> Iterator[Problem]:
    """`grade keep if kiwa is sharp`, by which a fish with a better edge is not kept; of a fault, what is worse than it names.

    Where another condition of the same sort reads the trait, the other words are taken to be seen to there.
    """
    grades = [grade.condition for grade in rules.grades if grade.condition is not None]
    lifts, faults = ([one.condition for one in rules.limits if one.head == head] for head in ("lift", "fault"))
    for roots, best in ((grades, True), (lifts, True), (faults, False)):
        read = [Counter(one.trait.name for one in walk(root) if isinstance(one, TraitRead)) for root in roots]
        for place, root in enumerate(roots):
            others = read[:place] if roots is grades else [*read[:place], *read[place + 1 :]]
            for leaf, trait, steps, step in _steps_named(root):
                above = best == (trait.better is Better.MORE)
                left = steps[step + 1 :] if above else steps[:step]
                if left and read[place][trait.name] == 1 and not any(trait.name in one for one in others):
                    yield parts.steps_left_out(leaf.place, trait.name, steps[step], left, better=best, above=above)


def _steps_named(root: Node) -> Iterator[tuple[Node, Trait, Sequence[str], int]]:
    """Each `T is STEP` by which a condition holds, of a scale with a better end: where it is, T, its steps, and which one."""
    waiting = [root]
    while waiting:
        match waiting.pop():
            case Apply(operation=ops.ALL_OF | ops.ANY_OF, operands=operands):
                waiting.extend(operands)
            case (
                Apply(
                    operation=ops.STEP_IS,
                    operands=(TraitRead(trait=Trait(kind=Scale(steps)) as trait), Constant(range=bits)),
                ) as leaf
            ) if trait.better in {Better.MORE, Better.LESS} and bits.bit_count() == 1:
                yield leaf, trait, steps, bits.bit_length() - 1
            case _:
                pass


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
                case TermRead(name=name, key=key, node=inner):
                    used.add(name)
                    if key not in seen:
                        seen.add(key)
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
