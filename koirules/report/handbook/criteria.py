"""The sections: what each is worth, and what each criterion gives for what is seen."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from koirules.explain.reasons import share
from koirules.meaning.curves import Curve
from koirules.meaning.curves import Table as StepTable
from koirules.report.handbook.blocks import (
    Block,
    Column,
    Drawing,
    Group,
    Heading,
    Knot,
    Line,
    Paragraph,
    Row,
    Table,
    line,
    strong,
)
from koirules.report.handbook.voice import Voice, anchor
from koirules.standard.parts import Points, Section
from koirules.standard.reading_nodes import trait_of, unit_shown
from koirules.standard.types import Numeric, Steps
from koirules.vocabulary.kinds import shortest


def sections(voice: Voice) -> Iterator[Block]:
    """The sections with their worth, then each with its criteria."""
    rules = voice.rules
    changed = [section for section in rules.sections if _differs(voice, section)]
    if not changed:
        return
    yield Heading(2, line(voice.say("What gives points")), "points")
    if voice.base is None or list(map(_worth, rules.sections)) != list(map(_worth, voice.base.sections)):
        yield _worths(voice)
    for section in changed:
        yield from _section(voice, section)


def _worths(voice: Voice) -> Table:
    rows = [
        Row(
            (
                line(voice.title(section.title, anchor("section", section.name), named=True)),
                line(voice.points(section.worth)),
                line(str(len(section.points))),
                line(str(len(section.extras))),
            )
        )
        for section in voice.rules.sections
    ]
    rows.append(
        Row((line(strong(voice.say("Together"))), line(strong(voice.points(_whole(voice)))), (), ()), sums=True)
    )
    columns = (
        Column(voice.say("section")),
        Column(voice.say("worth"), number=True),
        Column(voice.say("criteria"), number=True),
        Column(voice.say("bonuses, penalties"), number=True),
    )
    return Table(line(voice.say("Sections and what they are worth")), columns, tuple(rows))


def _differs(voice: Voice, section: Section) -> bool:
    """Whether a section is told: where only differences are, one that has other parts or another worth than in the base."""
    if voice.base is None or len(voice.told_here(section.points)) or len(voice.told_here(section.extras)):
        return True
    return _made_of(section) not in map(_made_of, voice.base.sections)


def _made_of(section: Section) -> tuple[object, ...]:
    return (
        *_worth(section),
        section.title,
        tuple(one.name for one in section.points),
        tuple(one.name for one in section.extras),
    )


def _worth(section: Section) -> tuple[str, int]:
    return section.name, section.worth


def _whole(voice: Voice) -> int:
    return sum(section.worth for section in voice.rules.sections)


def _section(voice: Voice, section: Section) -> Iterator[Block]:
    heading = voice.line(
        "{section}: {worth} of {whole} points",
        section=voice.title(section.title),
        worth=voice.points(section.worth),
        whole=voice.points(_whole(voice)),
    )
    yield Heading(3, heading, anchor("section", section.name))
    yield from voice.remarks_on(section.place)
    here = voice.told_here(section.points)
    if len(here) < len(section.points):
        yield _shares(voice, section)
    for part in here:
        yield _criterion(voice, section, part)
    if voice.told_here(section.extras):
        yield _extras(voice, section)


def _shares(voice: Voice, section: Section) -> Table:
    """How much each criterion counts in a section: one from the base counts for less beside one that was added."""
    rows = tuple(
        Row((line(voice.title(part.title, anchor("points", part.name), named=True)), *_most(voice, section, part)))
        for part in section.points
    )
    columns = (
        Column(voice.say("criterion")),
        Column(voice.say("weight"), number=True),
        Column(voice.say("of the score, at most"), number=True),
    )
    table = Table(line(voice.say("What each criterion is worth here")), columns, rows, "steps")
    return voice.remarked(table, [part.place for part in section.points])


def _most(voice: Voice, section: Section, part: Points) -> tuple[Line, Line]:
    most = share(section.worth * part.weight, section.divisor, part.shape.most)
    return line(voice.points(part.weight)), line(voice.tongue.figure(f"{most:.2f}"))


def _criterion(voice: Voice, section: Section, part: Points) -> Group:
    most = share(section.worth * part.weight, section.divisor, part.shape.most)
    worth = voice.say(
        "Worth at most {points} of the score, with weight {weight}.",
        points=voice.tongue.figure(shortest(most)),
        weight=voice.points(part.weight),
    )
    if part.weight == 0:
        worth = voice.say("Told, but with weight 0: it counts for nothing.")
    trait = trait_of(part.by)
    looked: Line = voice.line("By {what}.", what=voice.told(part.by.place))
    if trait is not None and trait.describe:
        looked = line(looked, voice.tongue.of(" "), voice.tongue.of(trait.describe))
    shown = _curve(voice, section, part) if isinstance(part.shape, Curve) else (_table(voice, section, part),)
    blocks: tuple[Block, ...] = (
        Heading(4, line(voice.title(part.title), voice.origin(part.place)), anchor("points", part.name)),
        Paragraph(line(strong(worth), voice.tongue.of(" "), looked)),
        Group("shape", shown),
        *voice.remarks_on(part.place),
    )
    return Group("criterion", blocks)


def _gives(voice: Voice) -> tuple[Column, Column]:
    return Column(voice.say("points"), number=True), Column(voice.say("of the score"), number=True)


def _given(voice: Voice, section: Section, part: Points, thousandths: int) -> tuple[Line, Line]:
    of_score = share(section.worth * part.weight, section.divisor, thousandths)
    return line(voice.given(thousandths)), line(voice.tongue.figure(f"{of_score:.2f}"))


def _curve(voice: Voice, section: Section, part: Points) -> tuple[Block, ...]:
    """The drawing, and its knots as a table."""
    shape, kind, unit = part.shape, part.by.type, unit_shown(part.by)
    if not isinstance(shape, Curve) or not isinstance(kind, Numeric):
        raise AssertionError("a curve over something that is no number")

    def shown(held: Decimal) -> Decimal:
        return held if unit is None else round(unit.from_held(held), 6)

    symbol = unit.symbol if unit is not None else kind.dimension.value if kind.dimension is not None else ""
    knots = tuple(
        Knot(
            shown(Decimal(at).scaleb(-6)),
            Decimal(gives).scaleb(-3),
            voice.plain.exactly(float(Decimal(at).scaleb(-6)), kind, unit),
        )
        for at, gives in zip(shape.at, shape.gives, strict=True)
    )
    rows = tuple(
        Row((line(knot.words), *_given(voice, section, part, gives)))
        for knot, gives in zip(knots, shape.gives, strict=True)
    )
    low, high = (shown(Decimal(repr(float(end)))) for end in part.by.range)
    title = voice.plain.of(part.title)
    tongue = voice.tongue
    told = tongue.joined(
        voice.say("{seen} gives {points}", seen=knot.words, points=tongue.figure(shortest(knot.gives)))
        for knot in knots
    )
    about = voice.say("{title}: {knots}; straight in between", title=title, knots=told)
    symbol = tongue.of(symbol, "unit")
    axis = voice.told(part.by.place)
    if symbol:
        axis = voice.line("{what} ({unit})", what=axis, unit=symbol)
    drawing = Drawing(anchor("curve", part.name), about, axis, symbol, knots, low, high, tongue)
    words = voice.say("Knots of the curve; straight lines in between, flat beyond")
    return drawing, Table(line(words), (Column(voice.say("seen")), *_gives(voice)), rows, "steps")


def _table(voice: Voice, section: Section, part: Points) -> Table:
    """What each step gives."""
    shape, kind = part.shape, part.reads.type
    if not isinstance(shape, StepTable) or not isinstance(kind, Steps):
        raise AssertionError("a table over something without steps")
    trait = trait_of(part.reads)
    name = "" if trait is None else trait.name
    rows = tuple(
        Row((line(voice.plain.word(word, name)), *_given(voice, section, part, gives)))
        for word, gives in zip(kind.words, shape.gives, strict=True)
    )
    columns = (Column(voice.say("seen")), *_gives(voice))
    return Table(line(voice.say("What each of them gives")), columns, rows, "steps")


def _extras(voice: Voice, section: Section) -> Group:
    extras = voice.told_here(section.extras)
    rows = tuple(
        Row(
            (
                line(voice.title(extra.title)),
                line(f"{'+' if extra.sign > 0 else '−'}{voice.points(extra.amount)}"),
                voice.told(extra.condition.place),
            ),
            anchor(extra.head, extra.name),
        )
        for extra in extras
    )
    columns = (
        Column(voice.say("bonus or penalty")),
        Column(voice.say("of the score"), number=True),
        Column(voice.say("where")),
    )
    heading = Heading(4, voice.line("{section}: bonuses and penalties", section=voice.title(section.title)))
    table = Table(line(voice.say("Bonuses and penalties")), columns, rows, "conditions")
    return Group("extras", (heading, voice.remarked(table, [extra.place for extra in extras])))
