"""Writes expressions and quantities as the words of the rule language (sections 2 and 3)."""

from __future__ import annotations

from decimal import Decimal

from tests.judge import expressions as e

# How tightly each form binds, loosest first (section 3, Operators).
OR, AND, NOT, COMPARISON, SUM, PRODUCT, UNARY, GROWN, PRIMARY = range(9)


def written(of: e.Expression, at_least: int = OR) -> list[str]:
    """The words of an expression, in brackets if it binds looser than its surroundings need."""
    binds, words = form(of)
    return ["(", *words, ")"] if binds < at_least else words


def form(of: e.Expression) -> tuple[int, list[str]]:
    match of:
        case e.Or(parts):
            return OR, chain(parts, "or", OR)
        case e.And(parts):
            return AND, chain(parts, "and", AND)
        case e.Not(inner):
            return NOT, ["not", *written(inner, NOT)]
        case e.Compare(operator, left, right):
            return COMPARISON, [*written(left, SUM), *operator.split(), *written(right, SUM)]
        case e.Between(inner, low, high):
            return COMPARISON, [*written(inner, SUM), "between", *written(low, SUM), "and", *written(high, SUM)]
        case e.IsWithin(inner, distance, middle, negated):
            ends = [*written(distance, SUM), "of", *written(middle, SUM)]
            return COMPARISON, [*written(inner, SUM), *no_or_yes(negated), "within", *ends]
        case e.IsOneOf(inner, options, negated):
            listed = joined([written(each, SUM) for each in options])
            return COMPARISON, [*written(inner, SUM), *no_or_yes(negated), "one", "of", "(", *listed, ")"]
        case e.IsRecorded(inner, negated):
            return COMPARISON, [*written(inner, SUM), *no_or_yes(negated), "recorded"]
        case e.Includes(inner, place):
            return COMPARISON, [*written(inner, SUM), "includes", place]
        case e.Arithmetic(sign, left, right):
            binds = SUM if sign in "+-" else PRODUCT
            return binds, [*written(left, binds), sign, *written(right, binds + 1)]
        case e.Negative(inner):
            first, *others = written(inner, PRIMARY)
            return UNARY, ["-" + first, *others]
        case e.GrownTo(inner, target):
            return GROWN, [*written(inner, PRIMARY), "grown", "to", *written(target, PRIMARY)]
        case _:
            return PRIMARY, primary(of)


def primary(of: e.Expression) -> list[str]:
    match of:
        case e.Literal(amount, unit):
            return quantity(amount, unit)
        case e.YesNo(yes):
            return ["yes" if yes else "no"]
        case e.Step(name) | e.Name(name):
            return [name]
        case e.Words(text):
            return [quoted(text)]
        case e.CountOf(conditions):
            return ["count", "of", "(", *joined([written(each) for each in conditions]), ")"]
        case e.CountPlaces(places):
            return ["count", "of", *written(places)]
        case e.Median(parts):
            return ["median", "of", "(", *joined([written(each, SUM) for each in parts]), ")"]
        case e.Lesser(parts):
            return ["lesser", "of", "(", *joined([written(each, SUM) for each in parts]), ")"]
        case e.Greater(parts):
            return ["greater", "of", "(", *joined([written(each, SUM) for each in parts]), ")"]
        case e.Either(then, condition, otherwise):
            return ["(", *written(then), "if", *written(condition), "otherwise", *written(otherwise), ")"]
        case e.Score():
            return ["score"]
        case e.SectionPoints(name):
            return ["section", name]
        case e.FaultBit(name):
            return ["fault", name]
        case e.GradeNow():
            return ["grade"]
        case e.Earlier(inner):
            return ["earlier", *behind(inner)]
        case e.Figure():
            return figure(of)
        case _:
            raise AssertionError(of)


def behind(of: e.Expression) -> list[str]:
    """Section 3: behind `of` and `earlier` stands one name, `score`, `section NAME`, or a bracket."""
    alone = isinstance(of, e.Name | e.Score | e.SectionPoints | e.Either)
    return written(of) if alone else ["(", *written(of), ")"]


def figure(of: e.Figure) -> list[str]:
    percent = [] if of.percent is None else [plain(of.percent)]
    same = ["among", "the", "same", *names(of.same)] if of.same else []
    kept = ["among", "those", "kept", "by", of.kept_by] if of.kept_by else []
    at_least = [] if of.at_least is None else ["with", str(of.at_least), "or", "more", "recorded"]
    return ["batch", of.kind, *percent, "of", *behind(of.of), *same, *kept, *at_least]


def chain(parts: tuple[e.Expression, ...], word: str, binds: int) -> list[str]:
    words = written(parts[0], binds)
    for part in parts[1:]:
        words += [word, *written(part, binds + 1)]
    return words


def no_or_yes(negated: bool) -> list[str]:
    return ["is", "not"] if negated else ["is"]


# ---- Words -------------------------------------------------------------------------------------------------------


def quantity(amount: Decimal, unit: str) -> list[str]:
    return [plain(amount), unit] if unit else [plain(amount)]


def plain(amount: Decimal | int) -> str:
    return format(Decimal(amount), "f")


def quoted(text: str) -> str:
    return f'"{text}"'


def label(text: str) -> list[str]:
    return [quoted(text)] if text else []


def names(of: tuple[str, ...]) -> list[str]:
    return [*of] if len(of) == 1 else ["(", *between_each(of, ","), ")"]


def joined(each: list[list[str]]) -> list[str]:
    words = each[0]
    for more in each[1:]:
        words = [*words, ",", *more]
    return words


def between_each(words: tuple[str, ...], sign: str) -> list[str]:
    return [part for word in words for part in (word, sign)][:-1]
