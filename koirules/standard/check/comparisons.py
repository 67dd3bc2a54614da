"""Types comparisons, and finds those that are always or never true."""

from __future__ import annotations

from attrs import evolve

from koirules.language import syntax
from koirules.language.syntax import Expression, Quantity, Word
from koirules.meaning import operators as ops
from koirules.meaning.expressions import BY_WORDS, Comparison
from koirules.problems import Edit, Place, Problem, misfits, naming, reading, values
from koirules.standard.check.arithmetic import held_within, mismatch, type_shown
from koirules.standard.check.guesses import not_of_type, recorded_meant
from koirules.standard.check.typer import Typing
from koirules.standard.numbers import written
from koirules.standard.reading_nodes import as_written, recordable_of, recorded, trait_of
from koirules.standard.tree import (
    Apply,
    Constant,
    Grown,
    Node,
    ScoreRead,
    Supplied,
    TermRead,
    TraitRead,
    apply,
)
from koirules.standard.types import ColourList, Numeric, PatternMap, PlaceWords, Steps, TextLabel, Truth, type_words
from koirules.standard.wording import range_words
from koirules.vocabulary.kinds import words_of
from koirules.vocabulary.nearness import near


def compared(typer: Typing, expression: syntax.Comparison) -> Node | None:
    """The node of a comparison."""
    left = typer.node(expression.left)
    if len(expression.tails) > 1:
        typer.problems.append(reading.chained_comparison(expression.place))
        return None
    tail = expression.tails[0]
    if isinstance(expression.left, syntax.Text):
        typer.problems.append(misfits.name_in_quotes(expression.left.place, f'"{expression.left.text}"'))
        return None
    if left is None:
        return None
    counted = _counted(left, tail)
    if counted is not None:
        typer.problems.append(counted)
        return None
    if isinstance(left.type, PatternMap) and tail.operator != "is recorded":
        typer.problems.append(misfits.map_compared(left.place))
        return None
    if isinstance(left.type, ColourList) and tail.operator != "is recorded":
        typer.problems.append(misfits.colours_compared(left.place))
        return None
    node = _tail(typer, left, tail, expression)
    if node is None:
        return None
    if tail.negated:
        node = apply(ops.NOT, (node,), Truth(), expression.place)
    surely, possibly = node.range
    if surely or not possibly:
        typer.problems.append(values.always_or_never(expression.place, surely, _why_known(left)))
        return None
    return node


def _why_known(left: Node) -> str:
    if isinstance(left, ScoreRead) and left.range == (0.0, 0.0):
        return "there is no section that gives points, so the score is 0"
    return f"the left side {range_words(left)}"


def _tail(typer: Typing, left: Node, tail: syntax.Tail, expression: syntax.Comparison) -> Node | None:
    match BY_WORDS[tail.operator]:
        case Comparison.IS_RECORDED:
            what = recordable_of(left)
            if what is None or (isinstance(what, Supplied) and isinstance(what.source, Grown)):
                typer.problems.append(values.not_recordable(expression.left.place))
                return None
            if isinstance(what, TraitRead) and what.trait.name in typer.silent:
                what = as_written(what)
            return recorded(what, left, expression.place)
        case Comparison.INCLUDES:
            return _includes(typer, left, tail.operands[0], expression.place)
        case Comparison.IS | Comparison.IS_ONE_OF:
            return _same(typer, left, tail, expression)
        case Comparison.BETWEEN:
            low = _ordered(typer, left, "at least", tail.operands[0], expression.place, "between")
            high = _ordered(typer, left, "at most", tail.operands[1], expression.place, "between")
            if low is not None and high is not None and _above(low, high):
                typer.problems.append(values.ends_swapped(expression.place))
                return None
            return typer.built(ops.ALL_OF, (low, high), Truth(), expression.place)
        case Comparison.IS_WITHIN:
            return _within(typer, left, tail, expression.place)
        case Comparison.AT_LEAST | Comparison.AT_MOST | Comparison.ABOVE | Comparison.BELOW:
            return _ordered(typer, left, tail.operator, tail.operands[0], expression.place)


def _within(typer: Typing, left: Node, tail: syntax.Tail, place: Place) -> Node | None:
    """`is within A of B`: at least B - A and at most B + A."""
    words = tail.operator
    if not isinstance(left.type, Numeric):
        instead = (
            "`between … and …`" if isinstance(left.type, Steps) and left.type.ordered else "`is` or `is one of (…)`"
        )
        typer.problems.append(values.needs_a_number(place, type_words(left.type), words, instead))
        return None
    distance, middle = (typer.number(operand, words) for operand in tail.operands)
    if distance is None or middle is None:
        return None
    for node, operand in ((distance, tail.operands[0]), (middle, tail.operands[1])):
        if not isinstance(node.type, Numeric) or node.type.dimension != left.type.dimension:
            typer.problems.append(mismatch(left, node, words, operand))
            return None
    kind, at = Numeric(left.type.dimension), distance.place.to(middle.place)
    low = held_within(apply(ops.SUBTRACT, (middle, distance), kind, at))
    high = held_within(apply(ops.ADD, (middle, distance), kind, at))
    inside = (
        apply(ops.NUMBER_AT_LEAST, (_millionths(left), _millionths(low)), Truth(), place),
        apply(ops.NUMBER_AT_LEAST, (_millionths(high), _millionths(left)), Truth(), place),
    )
    return apply(ops.ALL_OF, inside, Truth(), place)


def _above(low: Node, high: Node) -> bool:
    """Whether the lower end of a `between` surely lies above the higher one."""
    if not isinstance(low, Apply) or not isinstance(high, Apply):
        return False
    least, most = low.operands[1].range, high.operands[0].range
    if isinstance(least, tuple) and isinstance(most, tuple):
        return bool(least[0] > most[1])
    return bool(ops.STEP_ABOVE.range_of(least, most)[0])


def _ordered(
    typer: Typing, left: Node, word: str, operand: Expression, place: Place, said: str | None = None
) -> Node | None:
    # said: the word of the rule file, where it is another one than that of the operation.
    said = said or word
    if isinstance(left.type, TextLabel | Truth):
        typer.problems.append(values.no_order(place, type_words(left.type), said))
        return None
    expected = left.type if isinstance(left.type, Steps) else None
    wrong = not_of_type(left.type, operand, is_name=True)
    if wrong is not None:
        typer.problems.append(wrong)
        return None
    right = typer.node(operand, expected)
    if right is None:
        return None
    order = BY_WORDS[word].value.order
    if order is None:
        raise AssertionError(f"{word} puts nothing in order")
    match left.type, right.type:
        case Numeric(one), Numeric(other):
            if one != other:
                typer.problems.append(mismatch(left, right, said, operand))
                return None
            pair = (_millionths(left), _millionths(right))
            return apply(order.numbers, pair[::-1] if order.turned else pair, Truth(), place)
        case Steps(words, ordered), Steps(others) if words == others:
            if not ordered:
                typer.problems.append(values.no_order(place, type_words(left.type), said))
                return None
            return apply(order.levels, (right, left) if order.turned else (left, right), Truth(), place)
    typer.problems.append(values.cannot_compare(place, type_shown(left), type_shown(right), said))
    return None


def _same(typer: Typing, left: Node, tail: syntax.Tail, expression: syntax.Comparison) -> Node | None:
    stretch = _stretch_meant(left, tail)
    if stretch is not None:
        typer.problems.append(stretch)
        return None
    unknown = recorded_meant(tail) if trait_of(left) is not None and not _names_something(typer, left, tail) else None
    if unknown is not None:
        typer.problems.append(unknown)
        return None
    if isinstance(left.type, PlaceWords):
        name = expression.left.text if isinstance(expression.left, Word) else "P"
        typer.problems.append(values.places_compared(expression.place, name, _any_or_none(name, tail, expression)))
        return None
    owner = _of_another_trait(typer, left, tail, expression)
    if owner is not None:
        typer.problems.append(owner)
        return None
    expected = left.type if isinstance(left.type, Steps) else None
    wrong = [not_of_type(left.type, o, isinstance(o, Word) and o.text in typer.names()) for o in tail.operands]
    typer.problems.extend(problem for problem in wrong if problem is not None)
    if any(problem is not None for problem in wrong):
        return None
    rights = [typer.node(operand, expected) for operand in tail.operands]
    found: list[Node] = []
    for operand, right in zip(tail.operands, rights, strict=True):
        one = None if right is None else _is(typer, left, right, operand, expression.place)
        if one is not None:
            found.append(one)
    if len(found) != len(rights):
        return None
    if tail.operator == "is one of":
        for node in found:
            if not node.range[1]:
                typer.problems.append(values.always_or_never(node.place, False, f"the left side {range_words(left)}"))
                return None
    if len(found) == 1:
        return found[0]
    if expected is not None and all(isinstance(right, Constant) for right in rights):
        bits = 0
        for right in rights:
            bits |= right.range if right is not None else 0
        steps = Constant(expected, bits, expression.place)
        return apply(ops.STEP_IN, (left, steps), Truth(), expression.place)
    return apply(ops.ANY_OF, tuple(found), Truth(), expression.place)


def _of_another_trait(typer: Typing, left: Node, tail: syntax.Tail, expression: syntax.Comparison) -> Problem | None:
    """The problem of `outline is bent`, where the word is a value of one other trait alone."""
    said, kind, name = tail.operands[0], left.type, expression.left
    if not isinstance(said, Word) or not isinstance(name, Word) or not isinstance(kind, Steps):
        return None
    if tail.operator != "is" or trait_of(left) is None or said.text in {*kind.words, *typer.names()}:
        return None
    owners = [owner for owner, trait in typer.traits.items() if said.text in words_of(trait.kind)]
    if len(owners) != 1 or near(said.text, kind.words):
        return None
    return naming.value_of_another_trait(said.place, name.place, name.text, said.text, owners[0])


def _any_or_none(name: str, tail: syntax.Tail, expression: syntax.Comparison) -> str | None:
    """What `is yes`, `is no` and `is none` ask of a set of places."""
    said = tail.operands[0]
    if not isinstance(said, Word) or said.text not in {"yes", "no", "none"} or not isinstance(expression.left, Word):
        return None
    if len(tail.operands) > 1:
        return None
    some = (said.text == "yes") != tail.negated
    return f"count of {name} {'at least 1' if some else 'is 0'}"


def _stretch_meant(left: Node, tail: syntax.Tail) -> Problem | None:
    """The problem of `score is 88-100`, which reads as a difference of two numbers."""
    operand = tail.operands[0]
    if tail.operator != "is" or not isinstance(left.type, Numeric) or not isinstance(operand, syntax.Arithmetic):
        return None
    low, rest = operand.first, operand.rest
    if len(rest) != 1 or rest[0][0] != "-" or not isinstance(low, Quantity) or not isinstance(rest[0][1], Quantity):
        return None
    high = rest[0][1]
    if high.value <= low.value or low.unit not in {None, high.unit}:
        return None
    meant = f"between {written(evolve(low, unit=high.unit))} and {written(high)}"
    return values.stretch_by_sign(
        tail.place, written(low), written(high), f"not {meant}" if tail.negated else meant, tail.negated
    )


def _names_something(typer: Typing, left: Node, tail: syntax.Tail) -> bool:
    words = left.type.words if isinstance(left.type, Steps | PlaceWords) else ()
    return any(isinstance(o, Word) and (o.text in words or o.text in typer.names()) for o in tail.operands)


def _counted(left: Node, tail: syntax.Tail) -> Problem | None:
    """The problem of a set of places compared with a number."""
    numbers = [written(operand) for operand in tail.operands if isinstance(operand, syntax.Quantity)]
    if not numbers or not isinstance(left, TraitRead | TermRead) or not isinstance(left.type, PlaceWords):
        return None
    name = left.trait.name if isinstance(left, TraitRead) else left.name
    edit = Edit(left.place, f"count of {name}")
    word = tail.operator.replace("is", "is not") if tail.negated else tail.operator
    shown = f"({', '.join(numbers)})" if tail.operator == "is one of" else " and ".join(numbers)
    return values.places_have_no_order(left.place, name, f"{edit.text} {word} {shown}", edit)


def _is(typer: Typing, left: Node, right: Node, operand: Expression, place: Place) -> Node | None:
    match left.type, right.type:
        case Numeric(one), Numeric(other):
            if one != other:
                typer.problems.append(mismatch(left, right, "is", operand))
                return None
            return apply(ops.NUMBER_IS, (_millionths(left), _millionths(right)), Truth(), place)
        case Steps() as one_steps, other_steps if one_steps == other_steps:
            return apply(ops.STEP_IS, (left, right), Truth(), place)
        case Truth(), Truth():
            return apply(ops.TRUTH_IS, (left, right), Truth(), place)
        case TextLabel(), TextLabel() if isinstance(right, Constant) and not isinstance(left, Constant):
            return apply(ops.TEXT_IS, (left, right), Truth(), place)
    typer.problems.append(values.cannot_compare(place, type_shown(left), type_shown(right), "is"))
    return None


def _includes(typer: Typing, left: Node, operand: Expression, place: Place) -> Node | None:
    if not isinstance(left.type, PlaceWords):
        typer.problems.append(values.includes_needs_places(left.place, type_words(left.type)))
        return None
    words = left.type.words
    if isinstance(operand, Word) and operand.text == "none" and isinstance(left, TraitRead | TermRead):
        name = left.trait.name if isinstance(left, TraitRead) else left.name
        typer.problems.append(values.includes_none(place, name))
        return None
    if not isinstance(operand, Word) or operand.text not in words:
        text = operand.text if isinstance(operand, Word | syntax.Text) else "this"
        guess = near(text, words)
        typer.problems.append(naming.unknown_step(operand.place, text, "this set of places", words, guess))
        return None
    bit = Constant(left.type, 1 << words.index(operand.text), operand.place)
    return apply(ops.INCLUDES, (left, bit), Truth(), place)


def _millionths(node: Node) -> Node:
    return apply(ops.MILLIONTHS, (node,), node.type, node.place)
