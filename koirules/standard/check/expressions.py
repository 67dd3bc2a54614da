"""Types an expression: from syntax to the typed tree, with every problem on the way."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from typing import assert_never

from attrs import field

from koirules.classes.placing import CLASS_TRAITS
from koirules.language import syntax
from koirules.language.syntax import Expression, Quantity, Word
from koirules.meaning import operators as ops
from koirules.problems import Place, Problem, naming, reading, values
from koirules.standard.check.arithmetic import calculated
from koirules.standard.check.branches import conditional
from koirules.standard.check.comparisons import compared
from koirules.standard.check.figures import earlier_of, figure_of
from koirules.standard.check.growing import grown
from koirules.standard.check.guesses import loose_steps, meant_by
from koirules.standard.derivations import TypedMeasure
from koirules.standard.numbers import constant_of
from koirules.standard.parts import Setting, Term
from koirules.standard.reading_nodes import read_trait
from koirules.standard.tree import (
    Constant,
    FaultRead,
    GradeRead,
    Node,
    ScoreRead,
    SectionRead,
    SettingRead,
    TermRead,
    apply,
)
from koirules.standard.types import (
    Numeric,
    PlaceWords,
    Steps,
    TextLabel,
    Truth,
    Type,
    type_words,
)
from koirules.values import define
from koirules.vocabulary.nearness import near
from koirules.vocabulary.phrases import Saying
from koirules.vocabulary.readings import Span
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.words import is_name

MOST_GUESSES = 50

_OfTraits = (
    Word
    | Quantity
    | syntax.Text
    | syntax.Negative
    | syntax.Arithmetic
    | syntax.Extreme
    | syntax.AllOf
    | syntax.AnyOf
    | syntax.Negated
    | syntax.Comparison
    | syntax.CountConditions
    | syntax.CountPlaces
    | syntax.Conditional
)


@define
class Typer:
    """What expressions of a file can name, and the problems found in them so far.

    score_most: the most that a score can be, in hundredths. grades: their names, best first.
    terms holds the terms that are typed already, None for one that has problems of its own. elsewhere: who has a trait, by
    its name, for traits that only other varieties have. unread: names of statements that could not be read, which nobody
    misses. vocabulary_known: False where the file names a variety that is not there, so that no trait can be missed.
    measures: how some of the traits are derived. in_section: what is typed now gives points, and so cannot read what is
    worked out from them. silent: the names of the traits of which silence means something.
    sayings: how people speak of the traits. grows_by: the trait, a length, that growth goes by.
    """

    traits: Mapping[str, Trait]
    settings: Mapping[str, Setting]
    term_names: Iterable[str]
    sections: Mapping[str, int]
    faults: Iterable[str]
    elsewhere: Mapping[str, naming.Elsewhere]
    score_most: int = 0
    grades: Sequence[str] = ()
    unread: frozenset[str] = frozenset()
    vocabulary_known: bool = True
    measures: Sequence[TypedMeasure] = ()
    silent: frozenset[str] = frozenset()
    sayings: Collection[Saying] = ()
    grows_by: str = "length"
    terms: dict[str, Term | None] = field(factory=dict)
    problems: list[Problem] = field(factory=list)
    in_section: bool = False
    _guessed: int = 0

    def node(self, expression: Expression, expected: Steps | None = None) -> Node | None:
        """The typed node of an expression, None where it has problems; `expected`: steps that a bare word may be."""
        match expression:
            case syntax.BatchFigure():
                return figure_of(self, expression)
            case syntax.Earlier():
                return earlier_of(self, expression)
            case syntax.ScoreRead() | syntax.SectionRead() | syntax.FaultRead() | syntax.GradeRead():
                return self._outcome(expression)
            case syntax.GrownTo():
                return grown(self, expression)
            case _:
                return self._of_traits(expression, expected)

    def _outcome(
        self, expression: syntax.ScoreRead | syntax.SectionRead | syntax.FaultRead | syntax.GradeRead
    ) -> Node | None:
        match expression:
            case syntax.ScoreRead(place):
                return ScoreRead(Numeric(None), Span(0.0, self.score_most / 100), place)
            case syntax.SectionRead(name, place):
                return self._section(name, place)
            case syntax.FaultRead(name, place):
                return self._fault(name, place)
            case syntax.GradeRead(place):
                worst_first = tuple(reversed(self.grades))
                return GradeRead(Steps(worst_first, ordered=True), (1 << len(worst_first)) - 1, place)

    def _of_traits(self, expression: _OfTraits, expected: Steps | None) -> Node | None:
        match expression:
            case Word():
                return self._word(expression, expected)
            case Quantity():
                return constant_of(expression, self.problems)
            case syntax.Text(text, place):
                return Constant(TextLabel(), text, place)
            case syntax.Negative() | syntax.Arithmetic() | syntax.Extreme():
                return calculated(self, expression)
            case syntax.AllOf(parts, place):
                return self._joined(ops.ALL_OF, parts, place)
            case syntax.AnyOf(parts, place):
                return self._joined(ops.ANY_OF, parts, place)
            case syntax.Negated(operand, place):
                return self._joined(ops.NOT, (operand,), place)
            case syntax.Comparison():
                return compared(self, expression)
            case syntax.CountConditions():
                return self._count_conditions(expression)
            case syntax.CountPlaces(operand, place):
                return self._count_places(operand, place)
            case syntax.Conditional():
                return conditional(self, expression, expected)
            case _:
                assert_never(expression)

    def condition(self, expression: Expression) -> Node | None:
        """The node of an expression that must be a condition."""
        node = self.node(expression)
        inside = node
        while isinstance(inside, TermRead):
            inside = inside.node
        if isinstance(inside, Constant) and isinstance(inside.type, Truth):
            why = "it reads nothing of the record"
            self.problems.append(values.always_or_never(expression.place, inside.range[0], why))
            return None
        if node is None or isinstance(node.type, Truth):
            return node
        self.problems.append(values.not_a_condition(expression.place, type_words(node.type)))
        return None

    def number(self, expression: Expression, word: str) -> Node | None:
        """The node of an expression that must be a number or a count."""
        node = self.node(expression)
        if node is None or isinstance(node.type, Numeric):
            return node
        self.problems.append(values.not_a_number_here(expression.place, type_words(node.type), word))
        return None

    def _word(self, word: Word, expected: Steps | None) -> Node | None:
        if word.text in {"yes", "no"}:
            truth = word.text == "yes"
            return Constant(Truth(), (truth, truth), word.place)
        kind = self.kind_of_name(word.text)
        if expected is not None and word.text in expected.words:
            if kind is not None:
                self.problems.append(naming.step_named_like(word.place, word.text, f"this {_shape(expected)}", kind))
                return None
            return Constant(expected, 1 << expected.words.index(word.text), word.place)
        match kind:
            case "trait":
                return read_trait(self.traits[word.text], word)
            case "setting":
                setting = self.settings[word.text]
                dimension = None if setting.unit is None else setting.unit.dimension
                reach = Span(float(setting.low), float(setting.high))
                return SettingRead(word.text, Numeric(dimension), reach, word.place)
            case "term":
                term = self.terms.get(word.text)
                if term is None:
                    return None
                return TermRead(word.text, term.node.type, term.node.range, word.place, term.node)
            case _:
                pass
        if expected is not None and word.text not in self.unread:
            guess = near(word.text, [*expected.words, *self.names()]) if self._may_guess() else None
            self.problems.append(
                naming.unknown_step(word.place, word.text, f"this {_shape(expected)}", expected.words, guess)
            )
            return None
        self.unknown(word)
        return None

    def unknown(self, word: Word, *, common: bool = False) -> None:
        """Report a name that nothing has, unless what has it could not be read. common: see `naming.unknown_name`."""
        if word.text in self.unread or not self.vocabulary_known:
            return
        if not is_name(word.text):
            self.problems.append(reading.not_a_number(word.place, word.text))
            return
        guess = None
        if self._may_guess():
            sections, faults = ([], []) if self.in_section else (list(self.sections), list(self.faults))
            names = [*self.names(), *CLASS_TRAITS]
            guess = meant_by(word.text, self.traits, self.sayings, sections, faults, names)
        there = self.elsewhere.get(word.text)
        self.problems.append(naming.unknown_name(word.place, word.text, guess, there, common=common))

    def _may_guess(self) -> bool:
        """Whether to look for what was meant by one more name: a file full of unknown ones is not mended by guesses."""
        self._guessed += 1
        return self._guessed <= MOST_GUESSES

    def names(self) -> list[str]:
        """Every name that an expression can read."""
        return [*self.traits, *self.settings, *self.term_names]

    def kind_of_name(self, name: str) -> str | None:
        """What a name belongs to: trait, setting or term."""
        if name in self.traits:
            return "trait"
        if name in self.settings:
            return "setting"
        return "term" if name in self.term_names else None

    def _joined(self, operation: ops.Operation, parts: tuple[Expression, ...], place: Place) -> Node | None:
        loose = loose_steps(parts, "or" if operation is ops.ANY_OF else "and", self.traits, self.names())
        if loose is not None:
            self.problems.append(loose)
            return None
        nodes = [self.condition(part) for part in parts]
        return self.built(operation, nodes, Truth(), place)

    def built(self, operation: ops.Operation, nodes: Sequence[Node | None], kind: Type, place: Place) -> Node | None:
        """An operation over nodes, None where one of them is."""
        good = tuple(node for node in nodes if node is not None)
        return apply(operation, good, kind, place) if len(good) == len(nodes) else None

    def _count_conditions(self, expression: syntax.CountConditions) -> Node | None:
        if len(expression.items) == 1:
            node = self.node(expression.items[0])
            if node is not None and isinstance(node.type, PlaceWords):
                return apply(ops.COUNT_PLACES, (node,), Numeric(None, whole=True), expression.place)
            if node is None:
                return None
        nodes = [self.condition(item) for item in expression.items]
        return self.built(ops.COUNT_CONDITIONS, nodes, Numeric(None, whole=True), expression.place)

    def _count_places(self, operand: Expression, place: Place) -> Node | None:
        node = self.node(operand)
        if node is None:
            return None
        if isinstance(node.type, PlaceWords):
            return apply(ops.COUNT_PLACES, (node,), Numeric(None, whole=True), place)
        self.problems.append(values.includes_needs_places(operand.place, type_words(node.type), "count of"))
        return None

    def _section(self, name: Word, place: Place) -> Node | None:
        worth = self.sections.get(name.text)
        if worth is None and name.text in self.unread:
            return None
        if worth is None:
            known = list(self.sections)
            self._unknown_part(name, "section", known)
            return None
        return SectionRead(name.text, Numeric(None), Span(0.0, worth / 100), place)

    def _fault(self, name: Word, place: Place) -> Node | None:
        known = list(self.faults)
        if name.text not in known and name.text in self.unread:
            return None
        if name.text not in known:
            self._unknown_part(name, "fault", known)
            return None
        return FaultRead(name.text, Truth(), (False, True), place)

    def _unknown_part(self, name: Word, kind: str, known: Sequence[str]) -> None:
        guess = near(name.text, known) if self._may_guess() else None
        self.problems.append(naming.unknown_part(name.place, kind, name.text, guess, known))


def _shape(steps: Steps) -> str:
    return "scale" if steps.ordered else "choice"
