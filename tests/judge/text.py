"""Prints a standard as legal rule text: tidy without a seed, in a layout of its own with one (sections 1 and 2)."""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise
from random import Random

from tests.judge import expressions as e
from tests.judge import model as m

# How tightly each form binds, loosest first (section 3, Operators).
OR, AND, NOT, COMPARISON, SUM, PRODUCT, UNARY, GROWN, PRIMARY = range(9)


def to_text(standard: m.Standard, seed: int | None = None) -> str:
    """Rule text that reads as `standard`.

    With a seed, statements stand in another legal order, and blanks, line breaks and comments in other places.
    """
    random = Random(seed)
    header = ["standard", quoted(standard.title), "edition", "2026-1"]
    header += ["variety", standard.variety] if standard.variety else []
    statements = [header, *in_some_order(standard, None if seed is None else random)]
    if seed is None:
        return "\n".join(tidy(each) for each in statements) + "\n"
    return "".join(comment_or_blank(random) + loose(each, random) for each in statements)


# ---- Order of statements -----------------------------------------------------------------------------------------


def in_some_order(standard: m.Standard, random: Random | None) -> list[list[str]]:
    """Section 2: any order, save that criteria follow their section and grades run best first."""
    runs = [[setting(each)] for each in standard.settings]
    runs += [[trait(each)] for each in standard.traits if not each.given]
    runs += [[term(each)] for each in standard.terms]
    runs += [[cap(each)] for each in standard.faults]
    runs.append([line for each in standard.sections for line in section(each)])
    runs += [[cap(each)] for each in standard.lifts]
    runs.append([grade(each) for each in standard.grades])
    if random is None:
        return [line for run in runs for line in run]
    left = [run for run in runs if run]
    lines = []
    while left:
        run = random.choice(left)
        lines.append(run.pop(0))
        left = [each for each in left if each]
    return lines


# ---- Statements --------------------------------------------------------------------------------------------------


def setting(of: m.Setting) -> list[str]:
    parts = ["setting", of.name, "=", *quantity(of.amount, of.unit)]
    if of.low is not None and of.high is not None:
        parts += ["from", *quantity(of.low, of.unit), "to", *quantity(of.high, of.unit)]
    return parts + label(of.label)


def trait(of: m.Trait) -> list[str]:
    better = [",", of.direction, "is", "better"] if of.direction else []
    return ["trait", of.name, *label(of.label), "as", *kind(of.kind), *better]


def kind(of: m.Kind) -> list[str]:
    match of:
        case m.YesNoKind():
            return ["yes", "or", "no"]
        case m.CountKind(up_to):
            return ["count", "up", "to", str(up_to)]
        case m.NumberKind("", low, high):
            return ["number", "from", plain(low), "to", plain(high)]
        case m.NumberKind(unit, low, high):
            return ["number", "in", unit, "from", plain(low), "to", plain(high)]
        case m.ScaleKind(steps):
            return ["scale", *between_each(steps, "<")]
        case m.ChoiceKind(steps):
            return ["choice", "of", "(", *between_each(steps, ","), ")"]
        case m.PlacesKind(places):
            return ["places", "of", "(", *between_each(places, ","), ")"]
        case m.LabelKind():
            return ["label"]


def term(of: m.Term) -> list[str]:
    return ["term", of.name, *label(of.label), "means", *written(of.means)]


def section(of: m.Section) -> list[list[str]]:
    head = ["section", of.name, *label(of.label), "worth", plain(of.worth)]
    return [head, *(criterion(each) for each in of.criteria)]


def criterion(of: m.Points | m.Bonus | m.Penalty) -> list[str]:
    match of:
        case m.Points(name, by, gives, weight):
            weighs = [] if weight is None else ["weight", plain(weight)]
            return ["points", name, *label(of.label), *weighs, "by", *written(by), ":", *pieces(gives)]
        case m.Bonus(name, amount, condition):
            return ["bonus", name, *label(of.label), plain(amount), "if", *written(condition)]
        case m.Penalty(name, amount, condition):
            return ["penalty", name, *label(of.label), plain(amount), "if", *written(condition)]


def pieces(of: m.Curve | m.Table) -> list[str]:
    match of:
        case m.Curve(knots):
            each = [[*quantity(knot.at, knot.unit), "gives", plain(knot.gives)] for knot in knots]
        case m.Table(gives, anything_else):
            each = [[step, "gives", plain(amount)] for step, amount in gives]
            if anything_else is not None:
                each.append(["anything", "else", "gives", plain(anything_else)])
    return joined(each)


def cap(of: m.Fault | m.Lift) -> list[str]:
    if isinstance(of, m.Fault):
        head, end = "fault", ["no", "better", "than", of.no_better_than]
    else:
        head, end = "lift", ["no", "worse", "than", of.no_worse_than]
    excepted = [] if of.excepted is None else ["except", *written(of.excepted)]
    say = ["say", quoted(of.say)] if of.say else []
    return [head, of.name, *label(of.label), "if", *written(of.condition), *excepted, ":", *end, *say]


def grade(of: m.Grade) -> list[str]:
    end = ["otherwise"] if of.condition is None else ["if", *written(of.condition)]
    return ["grade", of.name, *label(of.label), *end]


# ---- Expressions -------------------------------------------------------------------------------------------------


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
        case e.IsOneOf(inner, options, negated):
            listed = joined([written(each, SUM) for each in options])
            return COMPARISON, [*written(inner, SUM), *no_or_yes(negated), "one", "of", "(", *listed, ")"]
        case e.IsRecorded(inner, negated):
            return COMPARISON, [inner.name, *no_or_yes(negated), "recorded"]
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
            return ["count", "of", places.name]
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
        case _:
            raise AssertionError(of)


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


def joined(each: list[list[str]]) -> list[str]:
    words = each[0]
    for more in each[1:]:
        words = [*words, ",", *more]
    return words


def between_each(words: tuple[str, ...], sign: str) -> list[str]:
    return [part for word in words for part in (word, sign)][:-1]


# ---- Layout ------------------------------------------------------------------------------------------------------


def closed_up(before: str, after: str) -> bool:
    """No blank stands inside brackets and before commas and colons."""
    return before.endswith("(") or after in {")", ",", ":"}


def tidy(words: list[str]) -> str:
    line = words[0]
    for before, after in pairwise(words):
        line += after if closed_up(before, after) else " " + after
    return line


COMMENTS = (
    "# a comment",
    "#",
    "# fault if above: no better than",
    '# "half a string',
    "# 錦鯉, e.g. 12 cm",
    "## score # 3",
)


def loose(words: list[str], random: Random) -> str:
    line = words[0]
    breaks = random.choice((0.0, 0.1, 0.3))
    for before, after in pairwise(words):
        if random.random() < breaks:
            line += line_break(random) + after
        elif closed_up(before, after):
            line += random.choice(("", "", "", " ")) + after
        else:
            line += random.choice((" ", " ", " ", "  ", "   ")) + after
    return line + random.choice(("\n", "\n", "  \n", f" {random.choice(COMMENTS)}\n"))


def line_break(random: Random) -> str:
    comment = random.choice(("", "", f" {random.choice(COMMENTS)}", f"\n  {random.choice(COMMENTS)}"))
    return comment + "\n" + " " * random.randint(1, 6)


def comment_or_blank(random: Random) -> str:
    return random.choice(("", "", "", "\n", f"{random.choice(COMMENTS)}\n", f"\n  {random.choice(COMMENTS)}\n"))
