"""A page as HTML: one file that asks nothing of a network and runs no script, laid out for a screen and for A4 paper."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterator, Sequence
from hashlib import sha256
from importlib.resources import files
from typing import assert_never

from koirules.languages import ENGLISH, Tongue
from koirules.report.handbook.blocks import (
    Block,
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
)
from koirules.report.handbook.curve_svg import curve_svg
from koirules.report.page_markup import Inside, Markup, element, joined
from koirules.report.results_page import footed
from koirules.values import frozen


def html_of(blocks: Sequence[Block], tongue: Tongue = ENGLISH, foot: str = "") -> str:
    """The whole text of the file, in a language. foot: what stands at the foot of every sheet of paper."""
    style = files("koirules.report.handbook").joinpath("handbook.css").read_text(encoding="utf-8").replace("\r\n", "\n")
    style = footed(style, foot) if foot else style
    page = _Page(frozenset(_anchors(blocks)))
    begin = next((i for i, block in enumerate(blocks) if _opens(block)), len(blocks))
    opening, rest = blocks[:begin], blocks[begin:]
    title = next(_text(one.line) for one in opening if isinstance(one, Heading))
    head = (
        element("meta", charset="utf-8"),
        element("meta", http_equiv="Content-Security-Policy", content=_policy(style)),
        element("meta", name="viewport", content="width=device-width, initial-scale=1"),
        element("meta", name="referrer", content="no-referrer"),
        element("link", rel="icon", href="data:,"),
        element("title", title),
        element("style", Markup(style)),
    )
    body = (
        element("header", *_lines(page.block(block) for block in opening)),
        element("nav", page.contents(rest), aria_label=tongue("On this page")),
        element("main", *_lines(page.block(block) for block in rest)),
    )
    whole = element(
        "html", "\n", element("head", *_lines(head)), "\n", element("body", *_lines(body)), "\n", lang=tongue.page
    )
    return f"<!doctype html>\n{whole.text}\n"


def _opens(block: Block) -> bool:
    """Whether the page proper begins here."""
    return isinstance(block, Group) or (isinstance(block, Heading) and block.level > 1)


def _policy(style: str) -> str:
    """What the browser is to allow: this style, and nothing from outside, ever."""
    hashed = b64encode(sha256(style.encode()).digest()).decode()
    return f"default-src 'none'; style-src 'sha256-{hashed}'; img-src data:; base-uri 'none'; form-action 'none'"


def _lines(parts: Iterator[Markup] | Sequence[Markup]) -> Iterator[Inside]:
    """Parts with a line of the file for each."""
    yield "\n"
    for part in parts:
        yield part
        yield "\n"


def _text(line: Line) -> str:
    return "".join(piece.text for piece in line)


def _anchors(blocks: Sequence[Block]) -> Iterator[str]:
    """Every anchor of a page."""
    for block in blocks:
        match block:
            case Heading(anchor=anchor) | Drawing(anchor=anchor):
                yield anchor
            case Table(rows=rows):
                yield from (row.anchor for row in rows)
            case Group(blocks=inner):
                yield from _anchors(inner)
            case Paragraph() | Listed() | Facts() | Portrait():
                pass
            case _:
                assert_never(block)


@frozen
class _Page:
    """Writes the blocks of one page. anchors: what can be pointed to."""

    anchors: frozenset[str]

    def block(self, block: Block) -> Markup:
        """A block."""
        match block:
            case Heading(level, line, anchor):
                return element(f"h{level}", self.line(line), id=anchor or None)
            case Paragraph(line, quiet):
                return element("p", self.line(line), class_="quiet" if quiet else None)
            case Listed(items, numbered):
                told = (element("li", self.line(item)) for item in items)
                return element("ol" if numbered else "ul", *_lines(told))
            case Facts(pairs):
                return element("dl", *_lines(self._fact(word, line) for word, line in pairs))
            case Table():
                return self._table(block)
            case Drawing():
                return curve_svg(block)
            case Portrait(anchor, title, view, tongue):
                # The one picture that is not made of elements here: it escapes what it is given, and a test holds that.
                return element("div", Markup(view.alone(title, anchor, tongue)), class_="portrait")
            case Group(kind, inner):
                return element("div", *_lines(self.block(one) for one in inner), class_=kind)
            case _:
                assert_never(block)

    def line(self, line: Line) -> Markup:
        """A line of text."""
        return joined(self._piece(piece) for piece in line)

    def contents(self, blocks: Sequence[Block]) -> Markup:
        """The way to each part of the page."""
        return element("ul", *(self._way(block) for block in self._headings(blocks, 2)))

    def _headings(self, blocks: Sequence[Block], level: int) -> Iterator[Heading]:
        for block in blocks:
            if isinstance(block, Heading) and block.level == level and block.anchor:
                yield block
            elif isinstance(block, Group):
                yield from self._headings(block.blocks, level)

    def _way(self, heading: Heading) -> Markup:
        return element("li", element("a", _text(heading.line), href=f"#{heading.anchor}"))

    def _fact(self, word: str, line: Line) -> Markup:
        return element("div", element("dt", word), "\n", element("dd", self.line(line)))

    def _piece(self, piece: Piece) -> Inside:
        language = piece.language or None
        if piece.mark:
            return element("small", piece.text, class_="from")
        if piece.to in self.anchors and piece.to:
            class_ = "strong" if piece.strong else "named" if piece.named else None
            return element("a", piece.text, href=f"#{piece.to}", lang=language, class_=class_)
        if piece.strong:
            return element("b", piece.text, lang=language)
        if piece.named:
            return element("i", piece.text, lang=language)
        return piece.text if language is None else element("span", piece.text, lang=language)

    def _table(self, table: Table) -> Markup:
        head = (
            element("th", column.title, scope="col", class_="number" if column.number else None)
            for column in table.columns
        )
        return element(
            "table",
            element("caption", self.line(table.about), class_="unseen"),
            element("thead", element("tr", *_lines(head))),
            element("tbody", *_lines(self._row(table, row) for row in table.rows)),
            class_=table.kind or None,
        )

    def _row(self, table: Table, row: Row) -> Markup:
        cells = [element("th", self.line(row.cells[0]), scope="row")]
        last = len(table.columns) - 1
        for i in range(1, last + 1):
            remarks = [element("p", text, class_="quiet") for text in row.remarks] if i == last else []
            class_ = "number" if table.columns[i].number else None
            cells.append(element("td", self.line(row.cells[i]), *remarks, class_=class_))
        return element("tr", *_lines(cells), id=row.anchor or None, class_="sums" if row.sums else None)
