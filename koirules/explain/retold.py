"""What a rule says, put together anew in another language: the order of its words is that of the language."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import cached_property
from typing import TYPE_CHECKING

from koirules.explain.pieces import Said
from koirules.language import statements as st
from koirules.language import syntax
from koirules.language.round_parts import Quota
from koirules.language.syntax import Expression, Quantity, Word
from koirules.languages import to_say
from koirules.problems import Place
from koirules.standard.check.needs import expressions_of
from koirules.standard.check.ordering import parts_of
from koirules.values import define
from koirules.vocabulary.kinds import shortest

if TYPE_CHECKING:
    from koirules.explain.plain_words import PlainWords


_COMPARED = {
    "at least": to_say("{left} at least {value}"),
    "at most": to_say("{left} at most {value}"),
    "above": to_say("{left} above {value}"),
    "below": to_say("{left} below {value}"),
    "between": to_say("{left} between {value} and {other}"),
    "is": to_say("{left} is {value}"),
    "is one of": to_say("{left} is one of ({value})"),
    "is within": to_say("{left} is within {value} of {other}"),
    "is recorded": to_say("{left} is recorded"),
    "includes": to_say("{left} includes {value}"),
}
_COMPARED_NOT = {
    "is": to_say("{left} is not {value}"),
    "is one of": to_say("{left} is not one of ({value})"),
    "is within": to_say("{left} is not within {value} of {other}"),
    "is recorded": to_say("{left} is not recorded"),
}
_LESSER = {"lesser": to_say("lesser of ({items})"), "greater": to_say("greater of ({items})")}
_FIGURES = {
    "median": to_say("median of {value} in the batch"),
    "mean": to_say("mean of {value} in the batch"),
    "lowest": to_say("lowest {value} in the batch"),
    "highest": to_say("highest {value} in the batch"),
    "percentile": to_say("percentile {percent} of {value} in the batch"),
    "spread": to_say("spread of {value} in the batch"),
    "standing": to_say("standing of {value} in the batch"),
    "share": to_say("share with {value} in the batch"),
}
_AND, _OR = " and (of conditions)", " or (of conditions)"
_TIGHT = (syntax.AllOf, syntax.AnyOf, syntax.Negated)

Pieces = Sequence[Said]


@define(slots=False, frozen=True)
class Retold:
    """Tells the expressions of a standard."""

    plain: PlainWords

    @cached_property
    def _expressions(self) -> Mapping[Place, Expression | Quota]:
        """Every expression by its place, the whole before its parts."""
        found: dict[Place, Expression | Quota] = {}
        for statement in self.plain.rules.source.statements:
            for expression in expressions_of(statement):
                for part in parts_of(expression):
                    found.setdefault(part.place, part)
            if isinstance(statement, st.Round):
                found.update({part.place: part for part in statement.parts if isinstance(part, Quota)})
        return found

    def pieces(self, place: Place) -> tuple[Said, ...] | None:
        """What stands at a place; None where that is no expression, or where the tool does not speak the language."""
        found = self._expressions.get(place) if self.plain.tongue.speaks else None
        return None if found is None else tuple(self._quota(found) if isinstance(found, Quota) else self._told(found))

    def _told(self, one: Expression, of: str = "") -> Iterator[Said]:
        """An expression. of: the name of what it is compared with, whose words it may be."""
        match one:
            case Word():
                yield from self._word(one, of)
            case Quantity(value, unit, _):
                yield Said(self.plain.tongue.quantity(f"{shortest(value)} {unit}" if unit else shortest(value)))
            case syntax.Text(text, _):
                yield Said(f"“{self.plain.tongue.of(text)}”")
            case syntax.Negative(operand, _):
                yield Said("−")
                yield from self._inside(operand, of)
            case syntax.Arithmetic(first, rest, _):
                yield from self._inside(first, of)
                for sign, operand in rest:
                    yield Said(f" {sign} ")
                    yield from self._inside(operand, of)
            case syntax.AllOf(parts, _) | syntax.AnyOf(parts, _):
                joint = _AND if isinstance(one, syntax.AllOf) else _OR
                yield from self._between([tuple(self._inside(part)) for part in parts], joint)
            case syntax.Negated(operand, _):
                yield from self._say(to_say("not {condition}"), condition=tuple(self._inside(operand)))
            case syntax.Comparison(left, tails, _):
                for tail in tails:
                    yield from self._comparison(left, tail)
            case _:
                yield from self._told_form(one, of)

    def _told_form(self, one: Expression, of: str) -> Iterator[Said]:
        """An expression that begins with words of its own."""
        match one:
            case syntax.CountConditions(items, _):
                yield from self._say(to_say("count of ({items})"), items=self._items(items))
            case syntax.CountPlaces(operand, _):
                yield from self._say(to_say("count of {places}"), places=tuple(self._told(operand)))
            case syntax.Extreme(operator, items, _):
                yield from self._say(_LESSER[operator.split()[0]], items=self._items(items))
            case syntax.Conditional(value, condition, otherwise, _):
                yield from self._say(
                    to_say("({value} if {condition} otherwise {other})"),
                    value=tuple(self._told(value, of)),
                    condition=tuple(self._told(condition)),
                    other=tuple(self._told(otherwise, of)),
                )
            case syntax.ScoreRead(_):
                yield Said(self.plain.tongue("score"))
            case syntax.GradeRead(_):
                yield Said(self.plain.tongue("grade"))
            case syntax.SectionRead(name, _):
                yield from self.plain.named("section", name.text)
            case syntax.FaultRead(name, _):
                yield from self.plain.named("fault", name.text)
            case syntax.GrownTo(operand, target, _):
                yield from self._say(
                    to_say("{value} grown to {length}"),
                    value=tuple(self._told(operand)),
                    length=tuple(self._told(target)),
                )
            case syntax.Earlier(operand, _):
                yield from self._say(to_say("earlier {value}"), value=tuple(self._told(operand)))
            case syntax.BatchFigure():
                yield from self._figure(one)
            case _:
                raise AssertionError(f"an expression that nothing tells: {one}")

    def _word(self, word: Word, of: str) -> Iterator[Said]:
        rules = self.plain.rules
        trait = rules.traits.get(of)
        if of == "grade" and any(grade.name == word.text for grade in rules.grades):
            yield from self.plain.named("grade", word.text)
        elif (trait is not None and word.text in self.plain.words_of(trait)) or not self.plain.is_named(word.text):
            yield Said(self.plain.word(word.text, of))
        else:
            yield from self.plain.named("", word.text)

    def _inside(self, one: Expression, of: str = "") -> Iterator[Said]:
        """A part, in brackets where it would be torn apart without."""
        if isinstance(one, (*_TIGHT, syntax.Arithmetic)):
            yield from self._say(to_say("({inside})"), inside=tuple(self._told(one, of)))
        else:
            yield from self._told(one, of)

    def _comparison(self, left: Expression, tail: syntax.Tail) -> Iterator[Said]:
        of = left.text if isinstance(left, Word) else "grade" if isinstance(left, syntax.GradeRead) else ""
        if isinstance(left, syntax.Earlier | syntax.GrownTo) and isinstance(left.operand, Word):
            of = left.operand.text
        told = [tuple(self._told(operand, of)) for operand in tail.operands]
        if tail.operator == "is one of":
            told = [tuple(self._between(told, ", "))]
        patterns = _COMPARED_NOT if tail.negated else _COMPARED
        value, other = (*told, (), ())[:2]
        yield from self._say(patterns[tail.operator], left=tuple(self._told(left)), value=value, other=other)

    def _figure(self, one: syntax.BatchFigure) -> Iterator[Said]:
        percent = "" if one.percent is None else self.plain.tongue.quantity(f"{shortest(one.percent)} %")
        yield from self._say(
            _FIGURES[one.figure],
            value=tuple(self._inside(one.operand)),
            percent=(Said(percent),),
        )
        if one.among_same:
            yield from self._say(to_say(" (among the same {labels})"), labels=self._items(one.among_same))
        if one.among_kept is not None:
            kept = tuple(self.plain.named("round", one.among_kept.text))
            yield from self._say(to_say(" (among those kept by {round})"), round=kept)
        if one.recorded_at_least is not None:
            number = self.plain.tongue.whole(one.recorded_at_least)
            yield from self._say(to_say(" (where at least {number} are recorded)"), number=(Said(number),))

    def _quota(self, one: Quota) -> Iterator[Said]:
        amount = tuple(self._told(one.amount))
        if one.condition is None:
            yield from self._say(
                to_say("no more than {number} of the same ({labels})"), number=amount, labels=self._items(one.same)
            )
        else:
            condition = tuple(self._told(one.condition))
            yield from self._say(to_say("no more than {number} with {condition}"), number=amount, condition=condition)

    def _items(self, items: Sequence[Expression]) -> Pieces:
        return tuple(self._between([tuple(self._told(item)) for item in items], ", "))

    def _between(self, parts: Sequence[Pieces], joint: str) -> Iterator[Said]:
        between = self.plain.tongue.of(joint).replace(" (of conditions)", "")
        for place, part in enumerate(parts):
            if place:
                yield Said(between)
            yield from part

    def _say(self, pattern: str, **values: Pieces) -> Iterator[Said]:
        for piece in self.plain.tongue.pieces(pattern, **values):
            if isinstance(piece, str):
                yield Said(piece)
            else:
                yield from piece
