"""The class table and the prizes of a show, in words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from koirules.classes.placing import GROUP, SIZE
from koirules.classes.table import ClassTable, Group
from koirules.languages import Tongue, to_say
from koirules.prizes.occasion import Occasion, Prize, Ties, Winners
from koirules.prizes.wording import PrizeWords
from koirules.report.handbook.blocks import Block, Column, Facts, Heading, Line, Paragraph, Row, Table, line

_PARTS = {GROUP: to_say("class group"), SIZE: to_say("class size")}


def classes(table: ClassTable, tongue: Tongue) -> Iterator[Block]:
    """The sizes and the groups of a class table, with its title and edition."""
    yield Heading(2, line(tongue("The classes")), "classes")
    about = tongue("{title}, edition {edition}", title=tongue.of(table.title), edition=table.edition)
    yield Paragraph(line(tongue.sentence(about)))
    for note in table.notes:
        yield Paragraph(line(tongue.of(note)))
    if table.sizes is not None:
        yield Heading(3, line(tongue("Sizes")))
        measure = tongue.of(table.sizes.trait.replace("_", " "))
        yield Paragraph(
            line(tongue("By {measure}, {rounded}.", measure=measure, rounded=table.sizes.told_rounding(tongue)))
        )
        rows = tuple(
            Row((line(tongue.of(size.title)), line(table.sizes.told(size, tongue)))) for size in table.sizes.sizes
        )
        yield Table(line(tongue("Sizes")), (Column(tongue("size")), Column(measure)), rows, "conditions")
    if table.groups:
        yield Heading(3, line(tongue("Groups")))
        rows = tuple(Row((line(tongue.of(one.title)), line(_judged_in(one, tongue)))) for one in table.groups)
        columns = (Column(tongue("group")), Column(tongue("judged in it")))
        yield Table(line(tongue("Groups")), columns, rows, "conditions")


def _judged_in(group: Group, tongue: Tongue) -> str:
    found = [tongue.of(name.replace("_", " ")) for name in group.varieties]
    found += [tongue("any other with {skin}", skin=tongue.of(skin.replace("_", " "))) for skin in group.skins]
    found += [tongue("whatever no group names")] if group.others else []
    return tongue.joined(found)


def prizes(occasion: Occasion, words: PrizeWords, grades: Mapping[str, str]) -> Iterator[Block]:
    """Each prize: how many places it has, who can win it, and what decides. grades: the title of each grade by its name."""
    tongue = words.tongue
    yield Heading(2, line(tongue("The prizes")), "prizes")
    told = tongue("They are given in this order. A tie is never broken by the order of the entries.")
    yield Paragraph(line(told))
    titles = {prize.name: prize.title for prize in occasion.prizes}
    for prize in occasion.prizes:
        yield Heading(3, line(tongue.of(prize.title)), f"prize-{prize.name}")
        yield Facts(tuple(_facts(prize, words, titles, grades)))


def _facts(
    prize: Prize, words: PrizeWords, titles: Mapping[str, str], grades: Mapping[str, str]
) -> Iterator[tuple[str, Line]]:
    tongue = words.tongue
    places = "1" if prize.places == 1 else tongue.stretch("1", tongue.whole(prize.places))
    if prize.for_each:
        labels = (tongue.of(_PARTS.get(label, label).replace("_", " ")) for label in prize.for_each)
        parted = tongue.joined(labels, " and ", "reasons")
        places = tongue("{places}, in each {parts} by itself", places=places, parts=parted)
    yield tongue("places given"), line(places)
    yield tongue("who can win"), line(tongue.joined(_who(prize, words, titles, grades), "; "))
    if prize.not_with:
        yield tongue("not together with"), line(_winners(prize.not_with, tongue, titles, ", "))
    yield tongue("decided by"), line(words.decided_by(prize))
    if prize.fewest:
        given = tongue.of(prize.if_fewer.value)
        yield tongue("with fewer than {number}", number=tongue.whole(prize.fewest)), line(given)
    shared = tongue("those that are tied share the place")
    decided = tongue("those that are tied wait for a person to decide")
    yield tongue("ties"), line(shared if prize.ties is Ties.SHARE else decided)


def _who(prize: Prize, words: PrizeWords, titles: Mapping[str, str], grades: Mapping[str, str]) -> Iterator[str]:
    tongue = words.tongue
    if prize.among:
        yield tongue("a winner of {prizes}", prizes=_winners(prize.among, tongue, titles, " or "))
    named = words.titles
    for names, known, text in (
        (prize.groups, named[GROUP], to_say("of group {names}")),
        (prize.sizes, named[SIZE], to_say("of size {names}")),
        (prize.grades, grades, to_say("with the grade {names}")),
    ):
        if names:
            yield tongue(text, names=tongue.joined((tongue.of(known.get(one, one)) for one in names), " or "))
    for label, values in prize.labels.items():
        shown = tongue.of(label.replace("_", " "))
        yield tongue("{label} {name}", label=shown, name=tongue.joined(values, " or "))
    if not (prize.among or prize.groups or prize.sizes or prize.grades or prize.labels):
        yield tongue("every entry") if prize.outside or words.table is None else tongue("every entry in a class")
    if words.table is not None and prize.outside:
        yield tongue("also outside every class")


def _winners(found: tuple[Winners, ...], tongue: Tongue, titles: Mapping[str, str], joint: str) -> str:
    return tongue.joined((_winner(one, tongue, tongue.of(titles.get(one.prize, one.prize))) for one in found), joint)


def _winner(one: Winners, tongue: Tongue, title: str) -> str:
    if one.places is None:
        return tongue("“{prize}”", prize=title)
    if one.places == 1:
        return tongue("“{prize}”, place 1", prize=title)
    return tongue("“{prize}”, places 1 to {number}", prize=title, number=tongue.whole(one.places))
