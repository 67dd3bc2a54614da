"""Small changes to the rules that no sample notices: the samples of a file are only as good as that.

Each change is made to the checked rules, one at a time, and every sample is run again; a change after which each still
holds goes unnoticed. Known elsewhere as mutation analysis (DeMillo, Lipton, Sayward, Hints on test data selection, 1978;
from memory).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from decimal import Decimal

from attrs import evolve

from koirules.grading.sample_runs import run_samples
from koirules.grading.single import Grader
from koirules.meaning.curves import Curve, Table
from koirules.meaning.expressions import BY_WORDS
from koirules.meaning.operators import NUMBER_ABOVE, NUMBER_AT_LEAST, STEP_ABOVE, STEP_AT_LEAST, Operation
from koirules.problems import Place
from koirules.standard.parts import Extra, Limit, Points, Rules, Section
from koirules.standard.tree import Apply, Constant, Node
from koirules.standard.types import Numeric, Steps
from koirules.standard.wording import number_words
from koirules.values import frozen
from koirules.vocabulary.kinds import shortest
from koirules.vocabulary.readings import Span

_FLIPPED = {
    NUMBER_AT_LEAST.name: NUMBER_ABOVE,
    NUMBER_ABOVE.name: NUMBER_AT_LEAST,
    STEP_AT_LEAST.name: STEP_ABOVE,
    STEP_ABOVE.name: STEP_AT_LEAST,
}


@frozen
class Change:
    """One small change: what was changed, in words, and the rules with it."""

    words: str
    rules: Rules


def unnoticed(grader: Grader, progress: Callable[[int], None] = lambda _: None) -> tuple[str, ...]:
    """The changes that no sample of a standard notices, in words; progress is told how many were tried so far.

    A sample that fails without any change notices none.
    """
    found = []
    holding = [not run.failures for run in run_samples(grader)]
    for number, change in enumerate(changes(grader.rules), 1):
        runs = run_samples(Grader.of(change.rules, change.rules.settings))
        if not any(run.failures for run, held in zip(runs, holding, strict=True) if held):
            found.append(change.words)
        progress(number)
    return tuple(found)


def changes(rules: Rules) -> Iterator[Change]:
    """Every small change of a standard: conditions, points, weights, extras, caps, and parts left out."""
    for i, limit in enumerate(rules.limits):
        told = f"{limit.head} {limit.name}"
        for words, changed in _of_limit(limit, len(rules.grades)):
            limits = [changed if k == i else one for k, one in enumerate(rules.limits)]
            yield Change(f"{told} {words}", _with_limits(rules, [one for one in limits if one is not None]))
    for name, term in rules.terms.items():
        for words, node in _of_condition(term.node):
            terms = {**rules.terms, name: evolve(term, node=node)}
            order = tuple(terms[name] if part is term else part for part in rules.order)
            yield Change(f"term {name} {words}", evolve(rules, terms=terms, order=order))
    for i, grade in enumerate(rules.grades):
        if grade.condition is not None:
            for words, node in _of_condition(grade.condition):
                grades = tuple(evolve(one, condition=node) if k == i else one for k, one in enumerate(rules.grades))
                yield Change(f"grade {grade.name} {words}", evolve(rules, grades=grades))
    for i, section in enumerate(rules.sections):
        for words, changed_section in _of_section(section):
            sections = tuple(changed_section if k == i else one for k, one in enumerate(rules.sections))
            yield Change(words, evolve(rules, sections=sections))


def _with_limits(rules: Rules, limits: list[Limit]) -> Rules:
    kept = {(limit.head, limit.name): limit for limit in limits}
    order = tuple(
        kept[part.head, part.name] if isinstance(part, Limit) else part
        for part in rules.order
        if not isinstance(part, Limit) or (part.head, part.name) in kept
    )
    return evolve(rules, limits=tuple(limits), order=order)


def _of_limit(limit: Limit, grades: int) -> Iterator[tuple[str, Limit | None]]:
    yield "left out", None
    if limit.exception is not None:
        yield "without its except", evolve(limit, exception=None)
    for by in (limit.lowers - 1, limit.lowers + 1) if limit.lowers else ():
        if 1 <= by < grades:
            yield f"lowering by {by}", evolve(limit, lowers=by)
    for place in () if limit.lowers else (limit.grade - 1, limit.grade + 1):
        if 0 <= place < grades:
            yield f"with the grade {'above' if place < limit.grade else 'below'}", evolve(limit, grade=place)
    for words, node in _of_condition(limit.condition):
        yield words, evolve(limit, condition=node)
    if limit.exception is not None:
        for words, node in _of_condition(limit.exception):
            yield f"(its except) {words}", evolve(limit, exception=node)


def _of_section(section: Section) -> Iterator[tuple[str, Section]]:
    for i, part in enumerate(section.points):
        for words, changed in _of_points(part):
            points = tuple(changed if k == i else one for k, one in enumerate(section.points))
            made = evolve(section, points=points)
            if made.divisor > 0:
                yield f"points {part.name} {words}", made
    for i, extra in enumerate(section.extras):
        for words, changed_extra in _of_extra(extra):
            extras = tuple(changed_extra if k == i else one for k, one in enumerate(section.extras))
            yield f"{extra.head} {extra.name} {words}", evolve(section, extras=extras)


def _of_points(part: Points) -> Iterator[tuple[str, Points]]:
    for weight in (part.weight - 100, part.weight + 100):
        if weight >= 0:
            yield f"with weight {shortest(Decimal(weight) / 100)}", evolve(part, weight=weight)
    for i, gives in enumerate(part.shape.gives):
        for other in (gives - 1000, gives + 1000):
            if other >= 0:
                row = tuple(other if k == i else one for k, one in enumerate(part.shape.gives))
                shape = Curve(part.shape.at, row) if isinstance(part.shape, Curve) else Table(row)
                words = f"giving {shortest(Decimal(other) / 1000)} for {shortest(Decimal(gives) / 1000)} in row {i + 1}"
                yield words, evolve(part, shape=shape)


def _of_extra(extra: Extra) -> Iterator[tuple[str, Extra]]:
    yield "left out", evolve(extra, amount=0)
    yield "with 1 more", evolve(extra, amount=extra.amount + 100)
    for words, node in _of_condition(extra.condition):
        yield words, evolve(extra, condition=node)


@frozen
class _Link:
    """Where an operand stands: in which operation, at which place, and where that one stands."""

    operation: Apply
    index: int
    above: _Link | None


def _of_condition(root: Node) -> Iterator[tuple[str, Node]]:
    """Every small change of a condition: a number or step moved, `at least` for `above` and the other way round.

    Without recursion, since sums can be long.
    """
    waiting: list[tuple[Node, _Link | None]] = [(root, None)]
    while waiting:
        node, link = waiting.pop()
        if isinstance(node, Constant) and link is not None:
            for words, moved in _moved(node):
                yield words, _within(moved, link)
        elif isinstance(node, Apply):
            flipped = _FLIPPED.get(node.operation.name)
            if flipped is not None:
                words = f"with “{_written(flipped, node)}” for “{_written(node.operation, node)}” {_at(node.place)}"
                yield words, _within(evolve(node, operation=flipped), link)
            operands = [(operand, _Link(node, i, link)) for i, operand in enumerate(node.operands)]
            waiting.extend(reversed(operands))


def _within(node: Node, link: _Link | None) -> Node:
    """The whole condition with a node put where the link says."""
    while link is not None:
        before, after = link.operation.operands[: link.index], link.operation.operands[link.index + 1 :]
        node, link = evolve(link.operation, operands=(*before, node, *after)), link.above
    return node


def _moved(constant: Constant) -> Iterator[tuple[str, Node]]:
    match constant.type:
        case Numeric():
            exact = Decimal(repr(constant.range[0]))
            step = Decimal(1).scaleb(min(0, int(exact.normalize().as_tuple().exponent)))
            for other in (exact - step, exact + step):
                span = Span(float(other), float(other))
                new, old = (number_words(float(value), constant.type) for value in (other, exact))
                yield f"with {new} for {old} {_at(constant.place)}", evolve(constant, range=span)
        case Steps(words) if constant.range.bit_count() == 1:
            here = constant.range.bit_length() - 1
            for place in (here - 1, here + 1):
                if 0 <= place < len(words):
                    told = f"with {words[place]} for {words[here]} {_at(constant.place)}"
                    yield told, evolve(constant, range=1 << place)
        case _:
            return


def _written(operation: Operation, node: Apply) -> str:
    """The words of a comparison as the file has them: `at most` is `at least` with its sides turned round."""
    left, right = (operand.place for operand in node.operands)
    turned = (left.line, left.column) > (right.line, right.column)
    return BY_WORDS[operation.words].value.opposite if turned else operation.words


def _at(place: Place) -> str:
    return f"(line {place.line})"
