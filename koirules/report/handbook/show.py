"""One handbook for a whole show: what its standards share is told once, then how each one differs from it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import assert_never

from attrs import evolve

from koirules.classes.table import ClassTable
from koirules.languages import Tongue
from koirules.prizes.occasion import Occasion
from koirules.prizes.wording import PrizeWords
from koirules.report.handbook.blocks import (
    Block,
    Column,
    Drawing,
    Facts,
    Group,
    Heading,
    Line,
    Listed,
    Paragraph,
    Piece,
    Portrait,
    Row,
    Table,
    line,
)
from koirules.report.handbook.glossary import terms, trait_rows, trait_table
from koirules.report.handbook.page import Subject, cautions, opening, parts
from koirules.report.handbook.show_tables import classes, prizes
from koirules.report.handbook.voice import Voice
from koirules.standard.parts import Rules
from koirules.values import frozen


@frozen
class Chapter:
    """A standard of a show. base: the one that it is based on, told before it; None where it is told whole."""

    subject: Subject
    base: Rules | None = None


@frozen
class Show:
    """What a handbook of a show is about.

    chapters: a base comes before those that are based on it. words: in which prizes are told; their table is the class table.
    cautions: of all its standards, and of the occasion.
    """

    chapters: tuple[Chapter, ...]
    words: PrizeWords
    occasion: Occasion | None = None
    cautions: tuple[str, ...] = ()

    @property
    def tongue(self) -> Tongue:
        """The language of the book."""
        return self.words.tongue

    @property
    def table(self) -> ClassTable | None:
        """The class table."""
        return self.words.table

    @property
    def title(self) -> str:
        """What the book is called: as its occasion, its class table, or the first of its standards."""
        if self.occasion is not None:
            return self.tongue.of(self.occasion.title)
        if self.table is not None:
            return self.tongue.of(self.table.title)
        voice = self.chapters[0].subject.voice()
        return voice.plain.of(voice.rules.title)


def show_blocks(show: Show) -> tuple[Block, ...]:
    """The whole book."""
    voices = [one.subject.voice(one.base) for one in show.chapters]
    first = voices[0]
    told = [tuple(_chapter(voice, one.subject)) for voice, one in zip(voices, show.chapters, strict=True)]
    named = [(f"s{number}-", frozenset(_anchors(blocks))) for number, blocks in enumerate(told, 1)]
    words = tuple(_words(first, voices, [key for key, _ in named]))
    common = frozenset(_anchors(words))
    where = {voice.rules.file: own for voice, own in zip(voices, named, strict=True)}

    def way(voice: Voice, own: tuple[str, frozenset[str]]) -> Callable[[str], str]:
        """How an anchor is called in the book: in this chapter, else in that of its base, else among the words of all."""
        before = [where[file] for file in reversed(tuple(voice.rules.source.bases)) if file in where]

        def named_as(to: str) -> str:
            found = (f"{key}{to}" for key, names in (own, *before) if to in names)
            return next(found, f"{own[0]}{to}" if f"{own[0]}{to}" in common else to)

        return named_as

    return (
        Heading(1, line(show.title)),
        Facts(tuple(_facts(show))),
        *(Paragraph(line(show.tongue.of(note))) for note in (show.occasion.notes if show.occasion else ())),
        *cautions(first, show.cautions),
        *(classes(show.table, show.tongue) if show.table is not None else ()),
        *(prizes(show.occasion, show.words, _grades(voices)) if show.occasion is not None else ()),
        *(
            _moved(block, way(voice, own))
            for voice, own, blocks in zip(voices, named, told, strict=True)
            for block in blocks
        ),
        *words,
        *_standards(show, voices),
    )


def _facts(show: Show) -> Iterator[tuple[str, Line]]:
    tongue = show.tongue
    if show.occasion is not None:
        day = show.occasion.day
        yield tongue("date"), line(tongue.of(day) if isinstance(day, str) else tongue.day(day))
    if show.table is not None:
        title = tongue.of(show.table.title)
        yield (
            tongue("classes"),
            line(tongue("{title}, edition {edition}", title=title, edition=show.table.edition)),
        )
    told = tongue.plural("{number} standard", "{number} standards", len(show.chapters))
    yield tongue("judged by"), line(tongue("{standards}, with the seals at the end", standards=told))


def _grades(voices: Sequence[Voice]) -> Mapping[str, str]:
    return {grade.name: voice.plain.of(grade.title) for voice in reversed(voices) for grade in voice.rules.grades}


def _chapter(voice: Voice, subject: Subject) -> Iterator[Block]:
    """A standard, its headings a level below those of a page of its own."""
    yield Heading(2, line(voice.title(voice.rules.title)), "chapter")
    yield from opening(voice, subject.seal)
    for block in (*parts(voice, subject.runs), *terms(voice, 2)):
        yield _lower(block)


def _lower(block: Block) -> Block:
    if isinstance(block, Heading):
        return evolve(block, level=block.level + 1)
    return evolve(block, blocks=tuple(map(_lower, block.blocks))) if isinstance(block, Group) else block


def _words(first: Voice, voices: Sequence[Voice], keys: Sequence[str]) -> Iterator[Block]:
    """The traits of every standard, each once; one that standards mean differently once for each meaning."""
    found: dict[str, dict[tuple[Line, ...], list[int]]] = {}
    for number, voice in enumerate(voices):
        for row in trait_rows(evolve(voice, base=None)):
            cells = (tuple(piece for piece in row.cells[0] if not piece.mark and piece.text.strip()), *row.cells[1:])
            found.setdefault(row.anchor, {}).setdefault(cells, []).append(number)
    rows: list[Row] = []
    for anchor, meanings in found.items():
        for place, (cells, numbers) in enumerate(meanings.items()):
            head = cells[0]
            if len(meanings) > 1:
                titles = (voices[number].plain.of(voices[number].rules.title) for number in numbers)
                head = line(head, Piece(" "), Piece(first.tongue.joined(titles, "; "), mark=True))
            rows.append(Row((head, *cells[1:]), anchor if place == 0 else f"{keys[numbers[0]]}{anchor}"))
    if rows:
        rows.sort(key=lambda row: row.cells[0][0].text.casefold())
        yield Heading(2, line(first.say("What is looked at and written down")), "traits")
        yield trait_table(first, rows)


def _standards(show: Show, voices: Sequence[Voice]) -> Iterator[Block]:
    """Each standard with its edition and seal."""
    tongue = show.tongue
    yield Heading(2, line(tongue("The standards and their seals")), "seals")
    rows = tuple(
        Row(
            (line(voice.title(voice.rules.title, "chapter")), line(voice.rules.edition), line(one.subject.seal)),
        )
        for voice, one in zip(voices, show.chapters, strict=True)
    )
    rows = tuple(_to(row, f"s{number}-") for number, row in enumerate(rows, 1))
    columns = (Column(tongue("standard")), Column(tongue("edition")), Column(tongue("seal")))
    yield Table(line(tongue("The standards and their seals")), columns, rows, "seals")


def _to(row: Row, key: str) -> Row:
    return evolve(row, cells=tuple(_relined(cell, lambda to: f"{key}{to}") for cell in row.cells))


def _relined(told: Line, named_as: Callable[[str], str]) -> Line:
    return tuple(evolve(piece, to=named_as(piece.to)) if piece.to else piece for piece in told)


def _moved(block: Block, named_as: Callable[[str], str]) -> Block:
    """A block whose anchors, and ways to anchors, are those of the book."""

    def relined(told: Line) -> Line:
        return _relined(told, named_as)

    def renamed(anchor: str) -> str:
        return named_as(anchor) if anchor else ""

    match block:
        case Heading():
            return evolve(block, line=relined(block.line), anchor=renamed(block.anchor))
        case Paragraph():
            return evolve(block, line=relined(block.line))
        case Listed():
            return evolve(block, items=tuple(map(relined, block.items)))
        case Facts():
            return evolve(block, pairs=tuple((word, relined(told)) for word, told in block.pairs))
        case Table():
            rows = (evolve(row, cells=tuple(map(relined, row.cells)), anchor=renamed(row.anchor)) for row in block.rows)
            return evolve(block, rows=tuple(rows))
        case Drawing():
            return evolve(block, anchor=renamed(block.anchor), axis=relined(block.axis))
        case Portrait():
            return evolve(block, anchor=renamed(block.anchor))
        case Group():
            return evolve(block, blocks=tuple(_moved(one, named_as) for one in block.blocks))
        case _:
            assert_never(block)


def _anchors(blocks: Sequence[Block]) -> Iterator[str]:
    for block in blocks:
        match block:
            case Heading(anchor=anchor) | Drawing(anchor=anchor) | Portrait(anchor=anchor):
                yield from filter(None, (anchor,))
            case Table(rows=rows):
                yield from (row.anchor for row in rows if row.anchor)
            case Group(blocks=inner):
                yield from _anchors(inner)
            case Paragraph() | Listed() | Facts():
                pass
            case _:
                assert_never(block)
