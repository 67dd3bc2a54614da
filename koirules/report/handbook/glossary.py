"""The words of a standard: its settings, its terms, and the traits that it reads."""

from __future__ import annotations

from collections.abc import Iterator

from koirules.language.statements import HouseTrait, Phrase
from koirules.report.handbook.blocks import Block, Column, Heading, Line, Paragraph, Row, Table, line
from koirules.report.handbook.voice import Voice, anchor
from koirules.standard.parts import Setting
from koirules.standard.types import Numeric
from koirules.standard.wording import number_words
from koirules.vocabulary.expected import COLOURS_EXAMPLE, MAP_EXAMPLE, range_of
from koirules.vocabulary.kinds import Choice, Colours, Count, Kind, Label, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.readings import show_reading
from koirules.vocabulary.traits import Better, Growth, Trait


def settings(voice: Voice) -> Iterator[Block]:
    """The numbers that may be changed for one batch."""
    found = voice.plain.settings.values()
    if not found:
        return
    yield Heading(2, line("Numbers that may be changed"), "settings")
    yield Paragraph(
        line(
            "For one batch, and within these limits; results then name what was changed. This page shows them as they stand."
        )
    )
    rows = tuple(
        Row(
            (line(voice.title(one.title)), line(voice.plain.setting(one)), line(_limits(one))),
            anchor("setting", one.name),
        )
        for one in found
    )
    columns = (Column("what"), Column("stands at", number=True), Column("may be"))
    yield voice.remarked(Table(line("Settings"), columns, rows, "settings"), [one.place for one in found])


def phrases(voice: Voice) -> Iterator[Block]:
    """The words that the page itself gives a meaning in notes."""
    found = [one for one in voice.rules.source.statements if isinstance(one, Phrase)]
    if not found:
        return
    yield Heading(2, line(voice.rules.subject.at_work), "phrases")
    yield Paragraph(
        line("Words of this page, and what they mean in notes. The words of the variety are understood too.")
    )
    rows = tuple(Row((line(_wordings(one)), _means(voice, one)), "") for one in found)
    table = Table(line("Phrases"), (Column("said"), Column("means")), rows, "conditions")
    yield voice.remarked(table, [one.place for one in found])


def _wordings(phrase: Phrase) -> str:
    said = [text for title in phrase.wordings for text in (title.text, *title.others.values())]
    return ", ".join(f"“{text}”" for text in said)


def _means(voice: Voice, phrase: Phrase) -> Line:
    if not phrase.stated:
        return line(f"nothing about the {voice.rules.subject.one}")
    return voice.told(phrase.stated[0].place.to(phrase.stated[-1].place))


def silence(voice: Voice) -> Iterator[Block]:
    """What it means where nobody mentions a trait."""
    found = voice.rules.silence.values()
    if not found:
        return
    yield Heading(2, line("What silence means"), "silence")
    yield Paragraph(
        line(
            f"Of {voice.rules.subject.with_article} that was looked at, what nobody mentioned is taken to be as follows; "
            "a recorded value goes before."
        )
    )
    rows = tuple(
        Row(
            (
                line(voice.plain.trait(one.trait)),
                line(show_reading(one.trait.kind, one.reading).replace("_", " ")),
                line("") if one.unless is None else voice.told(one.unless.place),
            )
        )
        for one in found
    )
    columns = (Column("trait"), Column("not mentioned, it is"), Column("unless"))
    table = Table(line("What silence means"), columns, rows, "conditions")
    yield voice.remarked(table, [one.place for one in found])


def _limits(setting: Setting) -> str:
    if not setting.changeable:
        return "nothing else"
    kind = Numeric(None if setting.unit is None else setting.unit.dimension)
    low, high = (number_words(float(end), kind, setting.unit) for end in (setting.low, setting.high))
    return f"{low} to {high}"


def glossary(voice: Voice) -> Iterator[Block]:
    """What the words of this page mean."""
    read = voice.grader.traits_to_record()
    plain = voice.plain
    traits = [trait for name, trait in voice.rules.traits.items() if name in read]
    traits.sort(key=lambda trait: plain.trait(trait).casefold())
    terms = sorted(voice.rules.terms.values(), key=lambda term: plain.of(term.title).casefold())
    if not traits and not terms:
        return
    yield Heading(2, line("What the words mean"), "glossary")
    if terms:
        yield Heading(3, line("Terms of this standard"), "terms")
        rows = tuple(
            Row((line(voice.title(term.title)), voice.told(term.node.place)), anchor("term", term.name))
            for term in terms
        )
        table = Table(line("Terms"), (Column("term"), Column("means")), rows, "conditions")
        yield voice.remarked(table, [term.place for term in terms])
    if traits:
        yield Heading(3, line("What is looked at and written down"), "traits")
        rows = tuple(_trait(voice, trait) for trait in traits)
        columns = (Column("trait"), Column("name on a record sheet"), Column("what it is"), Column("written as"))
        own = {one.name.text: one.place for one in voice.rules.source.statements if isinstance(one, HouseTrait)}
        yield voice.remarked(Table(line("Traits"), columns, rows, "traits"), [own.get(trait.name) for trait in traits])


def _trait(voice: Voice, trait: Trait) -> Row:
    own = trait.name in voice.rules.house_traits
    said = [] if not trait.describe else [trait.describe]
    if trait.better is not Better.NEITHER:
        said.append(f"{trait.better.value.capitalize()}.")
    if own:
        said.append("A trait of this standard's own.")
    elif trait.growth is not Growth.VARIES:
        said.append(f"{trait.growth.value.capitalize()} as the {voice.rules.subject.one} grows.")
    raw = [name for one in voice.rules.measures if trait.name in one.outputs for name in one.inputs]
    if raw:
        titles = [voice.plain.trait(voice.rules.traits[name]) for name in raw if name in voice.rules.traits]
        said.append(f"Where it is not written down it is worked out from: {', '.join(titles)}.")
    cells = (
        line(voice.trait(trait, linked=False)),
        line(trait.name),
        line(" ".join(said)),
        line(written_as(trait.kind)),
    )
    return Row(cells, anchor("trait", trait.name))


def written_as(kind: Kind) -> str:
    """What can be written down of a trait, with its unit."""
    match kind:
        case YesNo():
            return "yes or no"
        case Scale(words):
            return f"from the lowest: {_listed(words)}"
        case Choice(words):
            return f"one of: {_listed(words)}"
        case Places(words):
            return f"none, or any of: {_listed(words)}"
        case Count():
            return f"a whole number, {range_of(kind)}"
        case Number():
            return range_of(kind) if kind.unit is not None else f"a number, {range_of(kind)}"
        case Label():
            return "any text"
        case Patches():
            return f'the patches, such as "{MAP_EXAMPLE}", or none'
        case Colours():
            return f'L*, a* and b* of each reading, such as "{COLOURS_EXAMPLE}"'


def _listed(words: tuple[str, ...]) -> str:
    return ", ".join(word.replace("_", " ") for word in words)
