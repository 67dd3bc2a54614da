"""Types `E grown to L`: every trait in E becomes what it will be when the fish is as long as L.

A grown trait is a value that is worked out beside the record (tree.Supplied), by the model of measures/growth.py, one for
each trait and length. The coefficients of the model are settings of the standard with fixed names, where it has them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from decimal import Decimal
from typing import TYPE_CHECKING, Any, assert_never

from koirules.meaning import operators as ops
from koirules.problems import Edit, Place, Problem, growing, values
from koirules.standard.derivations import TypedMeasure
from koirules.standard.folding import folded
from koirules.standard.numbers import written
from koirules.standard.parts import Setting
from koirules.standard.tree import (
    Apply,
    Constant,
    Earlier,
    FaultRead,
    Figure,
    GradeRead,
    Grown,
    Node,
    Recorded,
    ScoreRead,
    SectionRead,
    SettingRead,
    Source,
    Supplied,
    TermRead,
    TraitRead,
    Written,
    apply,
    walk,
)
from koirules.standard.types import Numeric, Truth, type_of_kind
from koirules.standard.wording import number_words
from koirules.values import frozen
from koirules.vocabulary.kinds import Count, Number, Patches
from koirules.vocabulary.readings import Span, anything
from koirules.vocabulary.traits import Growth, Trait
from koirules.vocabulary.units import Dimension

if TYPE_CHECKING:
    from koirules.language import syntax
    from koirules.standard.check.typer import Typing

EXPONENT = "growth_exponent"
WHITE = "growth_white_share"
SIDES = "growth_white_sides"
COEFFICIENTS: Mapping[str, tuple[Decimal, Decimal, str]] = {
    EXPONENT: (Decimal(2), Decimal(4), "b of W = a L^b, by which weight grows"),
    WHITE: (Decimal(0), Decimal(1), "the share of new skin across the body that stays white"),
    SIDES: (Decimal(0), Decimal(1), "w, by which a pattern becomes narrower as white grows in from the sides"),
}
"""The settings that are coefficients of growth: the least and the most that they can be, and what they are."""


@frozen
class Growing:
    """Knows what is known of the growth of traits: of a variety, with how some of them are derived."""

    traits: Mapping[str, Trait]
    measures: Sequence[TypedMeasure]

    def is_known(self, trait: Trait) -> bool:
        """Whether it is known what a trait becomes."""
        return trait.growth is Growth.FIXED or self.inputs(trait) is not None

    def inputs(self, trait: Trait) -> tuple[Trait, ...] | None:
        """What a trait is worked out from when grown: itself where it follows the length, else what it is derived from."""
        if follows_length(trait):
            return (trait,)
        measure = next((one for one in self.measures if trait.name in one.outputs), None)
        by_eye = (trait,) if trait.white_from_sides else None
        if measure is None:
            return by_eye
        found: dict[str, Trait] = {}
        for name in measure.inputs:
            needed = self.traits[name]
            grown = (needed,) if is_raw(needed) else self.inputs(needed)
            if grown is None:
                return by_eye
            found.update((one.name, one) for one in grown)
        return (*found.values(), *(by_eye or ()))


def follows_length(trait: Trait) -> bool:
    """Whether a trait is a figure that goes as a power of the length."""
    return trait.allometry is not None and isinstance(trait.kind, Number | Count)


def is_raw(trait: Trait) -> bool:
    """Whether the model says by itself what a trait becomes: it follows the length, stays, or is a map that grows."""
    return follows_length(trait) or trait.growth is Growth.FIXED or isinstance(trait.kind, Patches)


_BESIDE: Mapping[type[Source], str] = {
    Grown: "a grown trait",
    Figure: "a figure of the batch",
    Earlier: "the look before this one",
    Written: "whether a trait was written down",
}


def grown(typer: Typing, expression: syntax.GrownTo) -> Node | None:
    """The node of what an expression becomes as the fish grows."""
    operand = typer.node(expression.operand)
    target = _target(typer, expression.target)
    if operand is None or target is None:
        return None
    length = typer.traits.get(typer.grows_by)
    if length is None or not _is_length(length):
        typer.problems.append(growing.no_length_trait(expression.place, typer.grows_by))
        return None
    growth = Growing(typer.traits, typer.measures)
    wrong = list(dict.fromkeys(_wrong(operand, expression.place, growth)))
    if wrong:
        typer.problems.extend(wrong)
        return None
    place = expression.place
    now = TraitRead(length, Numeric(Dimension.LENGTH), anything(length.kind), place)
    terms = tuple(dict.fromkeys(node.name for node in walk(operand) if isinstance(node, TermRead)))
    # Where a page says w, the share of the new skin that stays white is not read.
    unread = {WHITE} if SIDES in typer.settings else set()
    coefficients = tuple(
        _setting(typer.settings[name], place) for name in COEFFICIENTS if name in typer.settings and name not in unread
    )

    def source(of: TraitRead) -> Grown:
        inputs = tuple(
            TraitRead(trait, type_of_kind(trait.kind), anything(trait.kind), place)
            for trait in growth.inputs(of.trait) or ()
        )
        return Grown(of, inputs, now, target, coefficients, terms)

    made = _ahead(operand, source, place)
    if isinstance(made.type, Truth) and made.range in {(True, True), (False, False)}:
        typer.problems.append(values.always_or_never(place, made.range[0], "it holds for every length"))
        return None
    return made


def _target(typer: Typing, expression: syntax.Expression) -> Node | None:
    """The node of the length that a fish shall grow to."""
    from koirules.language.syntax import Quantity
    from koirules.standard.check.arithmetic import type_shown

    node = typer.node(expression)
    if node is None:
        return None
    if not isinstance(node.type, Numeric) or node.type.dimension is not Dimension.LENGTH:
        edit = None
        if isinstance(expression, Quantity) and expression.unit is None:
            edit = Edit(expression.place, f"{written(expression)} cm")
        typer.problems.append(growing.not_a_length(expression.place, type_shown(node), edit))
        return None
    for inner in walk(node):
        what = _of_the_fish(inner)
        if what:
            typer.problems.append(growing.length_of_the_fish(_seen(inner, expression.place), what))
            return None
    low, high = node.range
    if low <= 0 or high >= ops.LIMIT:
        typer.problems.append(growing.length_not_above_0(expression.place, number_words(low, node.type)))
        return None
    return node


def _of_the_fish(node: Node) -> str:
    """What a node reads of a fish or a batch, in words; "" where it reads nothing of them."""
    match node:
        case TraitRead(trait=trait):
            return f'the trait "{trait.name}"'
        case Recorded(of=of):
            return f'whether "{of.key}" was recorded'
        case ScoreRead():
            return "the score"
        case SectionRead(name=name):
            return f'the section "{name}"'
        case GradeRead():
            return "the grade"
        case FaultRead(name=name):
            return f'the fault "{name}"'
        case Supplied(source=source):
            return _BESIDE[type(source)]
        case Constant() | SettingRead() | TermRead() | Apply():
            return ""
        case _:
            assert_never(node)


def _seen(node: Node, around: Place) -> Place:
    """Where a person looks for a node: where it stands, or what it is around where it comes from a term."""
    place = node.place
    starts = (around.line, around.column) <= (place.line, place.column)
    return place if starts and (place.end_line, place.end_column) <= (around.end_line, around.end_column) else around


def _wrong(root: Node, around: Place, growth: Growing) -> Iterator[Problem]:
    """What in an expression cannot grow."""
    for node in walk(root):
        place = _seen(node, around)
        match node:
            case TraitRead(trait=trait) if not growth.is_known(trait):
                yield growing.no_model(place, trait.name)
            case ScoreRead() | SectionRead() | FaultRead() | GradeRead():
                yield growing.not_of_this_fish(place, _of_the_fish(node))
            case Supplied(source=Grown()):
                yield growing.grown_twice(place)
            case Supplied():
                yield growing.not_of_this_fish(place, _of_the_fish(node))
            case _:
                pass


def _is_length(trait: Trait) -> bool:
    kind = trait.kind
    return isinstance(kind, Number) and kind.dimension is Dimension.LENGTH and kind.held_low > 0


def _setting(setting: Setting, place: Place) -> SettingRead:
    return SettingRead(setting.name, Numeric(None), Span(float(setting.low), float(setting.high)), place)


def _ahead(root: Node, grown_of: Callable[[TraitRead], Grown], place: Place) -> Node:
    """An expression with every trait in it as it will be; terms are put in place of their names."""

    def leaf(node: Node) -> Node | None:
        match node:
            case TraitRead(trait=trait) if trait.growth is not Growth.FIXED:
                source = grown_of(node)
                key = f"{trait.name} grown to {_words(source.target)}"
                return Supplied(key, source, node.type, _reach(trait, source), place)
            case Apply() | TermRead():
                return None
            case _:
                return node

    def joined(node: Apply | TermRead, inner: list[Node]) -> Node:
        if isinstance(node, TermRead):
            return node if inner[0] is node.node else inner[0]
        if all(one is other for one, other in zip(inner, node.operands, strict=True)):
            return node
        return apply(node.operation, tuple(inner), node.type, node.place)

    return folded(root, leaf, joined)


def _reach(trait: Trait, source: Grown) -> Any:
    """The range of a grown trait: that of the trait, and for the length itself nothing below what it grows to."""
    reach = anything(trait.kind)
    if trait.name == source.length.trait.name and isinstance(reach, Span):
        return Span(max(reach.low, min(source.target.range[0], reach.high)), reach.high)
    return reach


def _words(root: Node) -> str:
    """A length of constants and settings in words: `65 cm`, `grown_length`, `(grown_length - 5 cm)`."""

    def leaf(node: Node) -> str | None:
        match node:
            case Constant(type=Numeric() as kind, range=(low, _)):
                return number_words(low, kind)
            case SettingRead(name=name) | TermRead(name=name):
                return name
            case Constant(range=value):
                return str(value)
            case _:
                return None

    def joined(node: Apply | TermRead, inner: list[str]) -> str:
        if isinstance(node, TermRead):
            return inner[0]
        sign = node.operation.words
        if sign in {"+", "-", "*", "/"}:
            return f"({f' {sign} '.join(inner)})" if len(inner) > 1 else f"{sign}{inner[0]}"
        return f"({sign} ({', '.join(inner)}))" if sign else inner[0]

    return folded(root, leaf, joined)
