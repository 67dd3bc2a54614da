"""The words of a standard: its settings, its terms, and the traits that it reads."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import assert_never

from koirules.explain.plain_words import PlainWords
from koirules.language.statements import HouseTrait, Phrase
from koirules.meaning.panels import LOWER, PanelWay
from koirules.report.handbook.blocks import Block, Column, Facts, Heading, Line, Paragraph, Row, Table, line
from koirules.report.handbook.voice import Voice, anchor
from koirules.standard.parts import Panel, Setting
from koirules.standard.types import Numeric
from koirules.vocabulary.expected import COLOURS_EXAMPLE, MAP_EXAMPLE
from koirules.vocabulary.kinds import (
    Choice,
    Colours,
    Count,
    Kind,
    Label,
    Number,
    Patches,
    Places,
    Scale,
    YesNo,
    shortest,
)
from koirules.vocabulary.traits import Better, Growth, Trait


def settings(voice: Voice) -> Iterator[Block]:
    """The numbers that may be changed for one batch."""
    found = voice.told_here(voice.plain.settings.values())
    if not found:
        return
    yield Heading(2, line(voice.say("Numbers that may be changed")), "settings")
    yield Paragraph(
        line(
            voice.say(
                "For one batch, and within these limits; results then name what was changed. This page shows them as they "
                "stand."
            )
        )
    )
    rows = tuple(
        Row(
            (line(voice.title(one.title)), line(voice.plain.setting(one)), line(_limits(voice, one))),
            anchor("setting", one.name),
        )
        for one in found
    )
    columns = (Column(voice.say("what")), Column(voice.say("stands at"), number=True), Column(voice.say("may be")))
    yield voice.remarked(Table(line(voice.say("Settings")), columns, rows, "settings"), [one.place for one in found])


def phrases(voice: Voice) -> Iterator[Block]:
    """The words that the page itself gives a meaning in notes."""
    found = voice.told_here(one for one in voice.rules.source.statements if isinstance(one, Phrase))
    if not found:
        return
    yield Heading(2, line(voice.tongue.of(voice.rules.subject.at_work)), "phrases")
    yield Paragraph(
        line(voice.say("Words of this page, and what they mean in notes. The words of the variety are understood too."))
    )
    rows = tuple(Row((line(_wordings(voice, one)), _means(voice, one)), "") for one in found)
    table = Table(
        line(voice.say("Phrases")), (Column(voice.say("said")), Column(voice.say("means"))), rows, "conditions"
    )
    yield voice.remarked(table, [one.place for one in found])


def _wordings(voice: Voice, phrase: Phrase) -> str:
    said = [text for title in phrase.wordings for text in (title.text, *title.others.values())]
    return voice.tongue.joined(f"“{text}”" for text in said)


def _means(voice: Voice, phrase: Phrase) -> Line:
    if not phrase.stated:
        return line(voice.say("nothing about the {fish}", fish=voice.fish))
    return voice.told(phrase.stated[0].place.to(phrase.stated[-1].place))


def silence(voice: Voice) -> Iterator[Block]:
    """What it means where nobody mentions a trait."""
    found = voice.told_here(voice.rules.silence.values())
    if not found:
        return
    yield Heading(2, line(voice.say("What silence means")), "silence")
    yield Paragraph(
        line(
            voice.say(
                "Of {a_fish} that was looked at, what nobody mentioned is taken to be as follows; a recorded value goes "
                "before.",
                a_fish=voice.a_fish,
            )
        )
    )
    rows = tuple(
        Row(
            (
                line(voice.plain.trait(one.trait)),
                line(voice.plain.as_read(one.trait, {one.trait.name: one.reading})),
                line("") if one.unless is None else voice.told(one.unless.place),
            )
        )
        for one in found
    )
    columns = (Column(voice.say("trait")), Column(voice.say("not mentioned, it is")), Column(voice.say("unless")))
    table = Table(line(voice.say("What silence means")), columns, rows, "conditions")
    yield voice.remarked(table, [one.place for one in found])


def panel(voice: Voice) -> Iterator[Block]:
    """How the records of several judges are put together."""
    found = voice.rules.panel
    if found is None or not voice.told_here([found]):
        return
    titled = found.title.text != found.name
    yield Heading(2, line(voice.title(found.title) if titled else voice.say("Several judges")), "panel")
    yield Paragraph(line(_of_way(voice, found.way)))
    yield Facts(tuple((what, line(words)) for what, words in _of_panel(voice, found)))
    yield from voice.remarks_on(found.place)


def _of_way(voice: Voice, way: PanelWay) -> str:
    match way:
        case PanelWay.TRAITS:
            return voice.say(
                "What the judges recorded is put together trait by trait, and then graded as one record: the median of "
                "numbers, counts and scales, the option that is named most often, yes or no by more than half."
            )
        case PanelWay.VOTES:
            return voice.say(
                "Each judge’s record is graded by itself. The grade that most of them come to is that of the panel; the "
                "score is their mean and decides nothing."
            )
        case PanelWay.MEAN:
            which = voice.say("the mean of theirs")
        case PanelWay.MEDIAN:
            which = voice.say("the median of theirs")
        case PanelWay.TRIMMED:
            which = voice.say("the mean of theirs without the highest and the lowest")
        case _:
            assert_never(way)
    return voice.say(
        "Each judge’s record is graded by itself. The panel’s score is {which}, and so is each section. A fault or lift "
        "counts where more than half of them find it.",
        which=which,
    )


def _of_panel(voice: Voice, found: Panel) -> Iterator[tuple[str, str]]:
    if found.needed > 1:
        needed = voice.tongue.whole(found.needed)
        yield (
            voice.say("judges"),
            voice.say("at least {number}; a judge who is missing could still say anything", number=needed),
        )
    if found.named_by is not None:
        least = voice.tongue.whole(found.named_by)
        yield voice.say("places"), voice.say("named by at least {number}", number=least)
    elif found.way is PanelWay.TRAITS:
        yield voice.say("places"), voice.say("named by more than half")
    if found.middle is not None or found.way in {PanelWay.TRAITS, PanelWay.MEDIAN}:
        yield voice.say("middle"), _of_two(voice, found.middle)
    yield voice.say("ties"), voice.say("stay open, and results tell them: a person decides")


def _of_two(voice: Voice, takes: str | None) -> str:
    if takes is None:
        return voice.say("of two numbers halfway; of two steps or counts both stay possible")
    return voice.say("the lower of two counts") if takes == LOWER else voice.say("the higher of two counts")


def _limits(voice: Voice, setting: Setting) -> str:
    if not setting.changeable:
        return voice.say("nothing else")
    kind = Numeric(None if setting.unit is None else setting.unit.dimension)
    return voice.tongue.stretch(
        *(voice.plain.exactly(float(end), kind, setting.unit) for end in (setting.low, setting.high))
    )


def glossary(voice: Voice) -> Iterator[Block]:
    """What the words of this page mean."""
    about = tuple(terms(voice))
    rows = trait_rows(voice)
    if not rows and not about:
        return
    yield Heading(2, line(voice.say("What the words mean")), "glossary")
    yield from about
    if rows:
        yield Heading(3, line(voice.say("What is looked at and written down")), "traits")
        yield trait_table(voice, rows)
        yield from sources(voice)


def sources(voice: Voice) -> Iterator[Block]:
    """Where the meanings, ranges and words of the traits come from, which are no rules of this page."""
    read = voice.grader.traits_to_record()
    together: dict[str, list[str]] = {}
    for name, trait in voice.rules.traits.items():
        if name in read and trait.source:
            together.setdefault(trait.source, []).append(voice.plain.trait(trait))
    if together:
        yield Paragraph(line(voice.say("Where the traits come from, which are not this page’s own:")))
    for source, traits in together.items():
        told = voice.tongue.joined(sorted(traits, key=str.casefold))
        yield Paragraph(line(voice.say("{source} ({traits})", source=voice.tongue.of(source), traits=told)))


def terms(voice: Voice, level: int = 3) -> Iterator[Block]:
    """The words that the standard itself explains. level: of the heading."""
    found = sorted(voice.told_here(voice.rules.terms.values()), key=lambda term: voice.plain.of(term.title).casefold())
    if not found:
        return
    yield Heading(level, line(voice.say("Terms of this standard")), "terms")
    rows = tuple(
        Row((line(voice.title(term.title)), voice.told(term.node.place)), anchor("term", term.name)) for term in found
    )
    table = Table(line(voice.say("Terms")), (Column(voice.say("term")), Column(voice.say("means"))), rows, "conditions")
    yield voice.remarked(table, [term.place for term in found])


def trait_rows(voice: Voice) -> tuple[Row, ...]:
    """The traits that are to be recorded, by their titles."""
    read = voice.grader.traits_to_record()
    traits = [trait for name, trait in voice.rules.traits.items() if name in read]
    traits.sort(key=lambda trait: voice.plain.trait(trait).casefold())
    own = {one.name.text: one.place for one in voice.rules.source.statements if isinstance(one, HouseTrait)}
    table = trait_table(voice, [_trait(voice, trait) for trait in traits])
    return voice.remarked(table, [own.get(trait.name) for trait in traits]).rows


def trait_table(voice: Voice, rows: Iterable[Row]) -> Table:
    """The table of such rows."""
    columns = (
        Column(voice.say("trait")),
        Column(voice.say("name on a record sheet")),
        Column(voice.say("what it is")),
        Column(voice.say("written as")),
    )
    return Table(line(voice.say("Traits")), columns, tuple(rows), "traits")


def _trait(voice: Voice, trait: Trait) -> Row:
    own = trait.name in voice.rules.house_traits
    tongue = voice.tongue
    said = [] if not trait.describe else [tongue.of(trait.describe)]
    if trait.better is not Better.NEITHER:
        said.append(tongue.of(f"{trait.better.value.capitalize()}."))
    if own:
        said.append(voice.say("A trait of this standard's own."))
    elif trait.growth is not Growth.VARIES:
        growing = tongue.of(f"{trait.growth.value.capitalize()} as the {{fish}} grows.")
        said.append(tongue(growing, fish=voice.fish))
    raw = [name for one in voice.rules.measures if trait.name in one.outputs for name in one.inputs]
    if raw:
        titles = [voice.plain.trait(voice.rules.traits[name]) for name in raw if name in voice.rules.traits]
        said.append(
            voice.say("Where it is not written down it is worked out from: {traits}.", traits=tongue.joined(titles))
        )
    cells = (
        line(voice.trait(trait, linked=False)),
        line(trait.name),
        line(tongue.joined(said, " ")),
        line(written_as(trait.kind, voice.plain, trait.name)),
    )
    return Row(cells, anchor("trait", trait.name))


def written_as(kind: Kind, plain: PlainWords, name: str = "") -> str:
    """What can be written down of a trait, with its unit. name: of the trait."""
    tongue = plain.tongue

    def listed(words: tuple[str, ...]) -> str:
        return tongue.joined(plain.word(word, name) for word in words)

    match kind:
        case YesNo():
            return tongue.joined((plain.word("yes", name), plain.word("no", name)), " or ")
        case Scale(words):
            return tongue("from the lowest: {words}", words=listed(words))
        case Choice(words):
            return tongue("one of: {words}", words=listed(words))
        case Places(words):
            return tongue("none, or any of: {words}", words=listed(words))
        case Count(high):
            return tongue("a whole number, {range}", range=tongue.stretch("0", tongue.figure(str(high))))
        case Number(unit, low, high):
            symbol = f" {unit.symbol}" if unit else ""
            ends = tongue.stretch(*(tongue.quantity(f"{shortest(end)}{symbol}") for end in (low, high)))
            return ends if unit is not None else tongue("a number, {range}", range=ends)
        case Label():
            return tongue("any text")
        case Patches():
            return tongue('the patches, such as "{example}", or none', example=MAP_EXAMPLE)
        case Colours():
            return tongue('L*, a* and b* of each reading, such as "{example}"', example=COLOURS_EXAMPLE)
