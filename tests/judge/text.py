"""Prints a standard as legal rule text: tidy without a seed, in a layout of its own with one (sections 1 and 2)."""

from __future__ import annotations

from decimal import Decimal
from random import Random

from tests.judge import model as m
from tests.judge.layout import comment_or_blank, loose, tidy
from tests.judge.written import OR, SUM, between_each, joined, label, names, plain, quantity, quoted, written


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
    runs += [[silent(standard, each)] for each in standard.silence]
    runs += [] if standard.panel is None else [[panel(standard.panel)]]
    runs += [[cap(each)] for each in standard.faults]
    runs.append([line for each in standard.sections for line in section(each)])
    runs += [[cap(each)] for each in standard.lifts]
    runs.append([grade(each) for each in standard.grades])
    runs += [[alert(each)] for each in standard.alerts]
    runs.append([a_round(each) for each in standard.rounds])
    if random is None:
        return [line for run in runs for line in run]
    left = [run for run in runs if run]
    lines = []
    while left:
        run = random.choice(left)
        lines.append(run.pop(0))
        left = [each for each in left if each]
    return lines


def panel(of: m.Panel) -> list[str]:
    words = ["panel", "judges", *label(of.label), *of.way.split()]
    words += [] if of.judges is None else ["at", "least", str(of.judges), "judges"]
    words += [] if of.named_by is None else ["places", "named", "by", "at", "least", str(of.named_by)]
    return words + (["of", "two", "in", "the", "middle", "the", of.middle] if of.middle else [])


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


def silent(standard: m.Standard, of: m.Silent) -> list[str]:
    kind = next(trait.kind for trait in standard.traits if trait.name == of.trait)
    unless = [] if of.unless is None else ["unless", *written(of.unless)]
    return ["silence", "means", of.trait, "is", *value(kind, of.means), *unless]


def value(kind: m.Kind, said: object) -> list[str]:
    """A value as samples and silence have it."""
    match kind, said:
        case m.NumberKind() | m.CountKind(), (_, low, high):
            unit = kind.unit if isinstance(kind, m.NumberKind) else ""
            first, last = ([end, *([unit] if unit else [])] for end in (str(low), str(high)))
            return first if low == high else [*first, "to", *last]
        case m.ScaleKind(steps) | m.ChoiceKind(steps), frozenset():
            return between_each([step for step in steps if step in said], "or")
        case m.YesNoKind(), bool():
            return ["yes" if said else "no"]
        case m.PlacesKind(places), frozenset():
            listed = [place for place in places if place in said]
            return ["(", *between_each(listed, ","), ")"] if listed else ["none"]
        case m.PlacesKind(places), (_, inside, among, least, most):
            listed = [place for place in places if place in inside]
            others = ["of", "(", *between_each([place for place in places if place in among], ","), ")"]
            if listed + [place for place in places if place in among] == list(places):
                others = ["of", "them"]
            counted = [str(least), *([] if least == most else ["to", str(most)]), *others]
            if least < most == len(among):
                counted = ["at", "least", str(least), *others]
            return ["(", *between_each(listed, ","), ",", *counted, ")"] if listed else counted
    raise AssertionError((kind, said))


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
        if of.lowers:
            end = ["lowers", "by", str(of.lowers), "grade" if of.lowers == 1 else "grades"]
    else:
        head, end = "lift", ["no", "worse", "than", of.no_worse_than]
    excepted = [] if of.excepted is None else ["except", *written(of.excepted)]
    say = ["say", quoted(of.say)] if of.say else []
    return [head, of.name, *label(of.label), "if", *written(of.condition), *excepted, ":", *end, *say]


def grade(of: m.Grade) -> list[str]:
    end = ["otherwise"] if of.condition is None else ["if", *written(of.condition)]
    return ["grade", of.name, *label(of.label), *end]


# ---- The batch ---------------------------------------------------------------------------------------------------


def alert(of: m.Alert) -> list[str]:
    return ["alert", of.name, *label(of.label), "if", *written(of.condition)]


def a_round(of: m.Round) -> list[str]:
    words = ["round", of.name, *label(of.label), *pool(of)]
    if of.keep is not None:
        words += ["keep", "those", *(["possibly"] if of.possibly else []), "with", *written(of.keep)]
    if of.keys:
        share = isinstance(of.many, Decimal)
        many = "all" if of.many is None else f"{plain(of.many)} %" if share else str(of.many)
        keys = [[*key.word.split(), *written(key.of, OR if key.word == "those with" else SUM)] for key in of.keys]
        first, *others = keys
        words += ["pick", many, *(["for", "each", *names(of.each)] if of.each else []), "by", *first]
        for each in others:
            words += [",", "then", *each]
    for quota in of.quotas:
        words += ["no", "more", "than", str(quota.amount)]
        words += ["with", *written(quota.condition)] if quota.condition else ["of", "the", "same", *names(quota.same)]
    words += ["ties", *of.ties.split()] if of.ties else []
    words += ["send", "to", quoted(of.send)] if of.send else []
    return words + (["rescues", str(of.rescues)] if of.rescues else [])


def pool(of: m.Round) -> list[str]:
    match of.pool:
        case "":
            return []
        case "all":
            return ["from", "all"]
        case word:
            return ["from", "those", *word.split(), of.pool_of]
