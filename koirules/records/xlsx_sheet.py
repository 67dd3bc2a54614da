"""Blank record sheets as workbooks: drop-downs, checks of numbers, notes, and a sheet that explains each trait."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from koirules.records.safe_text import for_workbook
from koirules.records.sheet_headings import heading_of
from koirules.records.table import FISH, letters_of
from koirules.records.workbook import (
    Styles,
    close_workbook,
    open_workbook,
    print_across,
    styles_of,
    width_for,
    write_texts,
)
from koirules.records.xlsx_records import SHEET
from koirules.values import frozen
from koirules.vocabulary.expected import COLOURS_EXAMPLE, MAP_EXAMPLE, range_of, stretch_of
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
    describe_kind,
    words_of,
)
from koirules.vocabulary.traits import Better, Trait, Variety
from koirules.vocabulary.units import Dimension

if TYPE_CHECKING:
    from xlsxwriter.format import Format  # type: ignore[import-untyped]
    from xlsxwriter.workbook import Workbook  # type: ignore[import-untyped]
    from xlsxwriter.worksheet import Worksheet  # type: ignore[import-untyped]

_LISTS = "lists"
_LONGEST_LIST = 255
"""How long the list of a drop-down may be; a longer one is kept in a sheet of its own."""

_FISH_NOTE = "A name or number for each row, no two the same. Leave a cell blank where nothing was recorded."
_HEADINGS = ("column", "title", "what to write", "which is better", "what it means")
_ROWS_ON_PAPER = 24


@frozen
class _Page:
    """The sheet of records with what its columns need; `last` is its last prepared row, counted from 0."""

    sheet: Worksheet
    lists: Worksheet | None
    last: int
    text: Format
    share: Format
    phrases: Mapping[str, Sequence[str]]


def write_xlsx_sheet(
    path: Path, variety: Variety, traits: Sequence[Trait], fish: int, phrases: Mapping[str, Sequence[str]]
) -> None:
    """Write a workbook with the sheets `records`, blank, and `traits`, which explains each column.

    phrases: by trait the words of the page that may stand in its cells; drop-downs offer them behind its own words.
    """
    workbook = open_workbook(path)
    styles = styles_of(workbook)
    records = workbook.add_worksheet(SHEET)
    _explain(workbook.add_worksheet("traits"), variety, traits, styles)
    page = _Page(
        sheet=records,
        lists=_add_lists(workbook, traits, phrases),
        last=max(fish, 1),
        text=styles.text,
        # A cell that is General turns a typed 45% into 0.45; this one shows what it then holds.
        share=workbook.add_format({"num_format": 'General" %"'}),
        phrases=phrases,
    )
    records.freeze_panes(1, 1)
    records.set_column(0, 0, 14, styles.text)
    _write_heading(records, 0, FISH, _FISH_NOTE, styles)
    for column, trait in enumerate(traits, 1):
        records.set_column(column, column, width_for([heading_of(trait)]), _format_of(page, trait.kind))
        _write_heading(records, column, heading_of(trait), _note(trait, phrases.get(trait.name, ())), styles)
        _check(page, column, trait)
    _print_blank(records, page.last, len(traits), variety.subject.on_paper)
    records.activate()
    close_workbook(workbook)


def _print_blank(sheet: Worksheet, last: int, columns: int, caution: str) -> None:
    """Let the first rows print as a form with lines, for those who write on paper at the tub."""
    print_across(sheet)
    _set_footer(sheet, caution)
    sheet.hide_gridlines(0)
    sheet.print_area(0, 0, min(last, _ROWS_ON_PAPER), columns)


def _set_footer(sheet: Worksheet, caution: str) -> None:
    """Let each printed page say how what is recorded is handled."""
    if caution:
        sheet.set_footer(f"&L&8{caution.replace('&', '&&')}")


def _write_heading(sheet: Worksheet, column: int, heading: str, note: str, styles: Styles) -> None:
    sheet.write_string(0, column, for_workbook(heading), styles.header)
    lines = sum(1 + len(line) // 38 for line in note.split("\n"))
    sheet.write_comment(0, column, for_workbook(note), {"author": "", "width": 260, "height": 20 + 17 * lines})


def _note(trait: Trait, phrases: Sequence[str]) -> str:
    own = f"Your own words may stand here too: {', '.join(phrases)}." if phrases else ""
    lines = [trait.title, trait.describe, _what_to_write(trait.kind), own, "Leave it blank if it was not recorded."]
    return "\n".join(line for line in lines if line)


def _format_of(page: _Page, kind: Kind) -> Format | None:
    """Words and names are kept as text, so that no program makes a date or a number of them."""
    match kind:
        case Number():
            return page.share if kind.dimension is Dimension.SHARE else None
        case Count():
            return None
        case _:
            return page.text


def _check(page: _Page, column: int, trait: Trait) -> None:
    """Add the drop-down or the check of a column; what is not sure may still be written, after a question."""
    kind = trait.kind
    match kind:
        case Number(_, low, high):
            rule = {"validate": "decimal", "criteria": "between", "minimum": float(low), "maximum": float(high)}
        case Count(high):
            rule = {"validate": "integer", "criteria": "between", "minimum": 0, "maximum": high}
        case Scale() | Choice() | YesNo() | Places():
            rule = {"validate": "list", "source": _source(page, column, _offered(trait, page.phrases))}
        case Label() | Patches() | Colours():
            return
    rule |= {"error_type": "warning", "error_title": "Is this what you mean?", "error_message": _question(kind)}
    if isinstance(kind, Places):
        # A drop-down picks one place; several are typed, and that is nothing to be asked about.
        rule["show_error"] = False
    page.sheet.data_validation(1, column, page.last, column, rule)


def _offered(trait: Trait, phrases: Mapping[str, Sequence[str]]) -> tuple[str, ...]:
    """The words of a drop-down, those of the page at the end."""
    return (*words_offered(trait.kind), *phrases.get(trait.name, ()))


def words_offered(kind: Kind) -> tuple[str, ...]:
    """The words of a drop-down: yes before no, the lowest step first, no place before the places."""
    match kind:
        case YesNo():
            return ("yes", "no")
        case Places(places):
            return ("none", *places)
        case _:
            return words_of(kind)


def _source(page: _Page, column: int, words: Sequence[str]) -> list[str] | str:
    if page.lists is None or len(",".join(words)) <= _LONGEST_LIST:
        return list(words)
    letters = letters_of(column)
    return f"={_LISTS}!${letters}$1:${letters}${len(words)}"


def _add_lists(workbook: Workbook, traits: Sequence[Trait], phrases: Mapping[str, Sequence[str]]) -> Worksheet | None:
    """Add a hidden sheet with the words of the drop-downs that are too long, each in the column of its trait."""
    long = {
        column: words
        for column, trait in enumerate(traits, 1)
        if words_of(trait.kind) and len(",".join(words := _offered(trait, phrases))) > _LONGEST_LIST
    }
    if not long:
        return None
    sheet = workbook.add_worksheet(_LISTS)
    sheet.hide()
    for column, words in long.items():
        for row, word in enumerate(words):
            sheet.write_string(row, column, for_workbook(word))
    return sheet


def _question(kind: Kind) -> str:
    """The words of the question that a spreadsheet program asks; it shows 255 letters at most."""
    match kind:
        case Number() | Count():
            expected = f'A number from {range_of(kind)} belongs here. If it is not sure, write "{stretch_of(kind)}".'
        case _:
            expected = 'One of the words in the list belongs here. If it is not sure, join words by "or".'
    return f"{expected} Keep what you wrote?"[:_LONGEST_LIST]


def _what_to_write(kind: Kind) -> str:
    match kind:
        case Number() | Count():
            return f'A number from {range_of(kind)}; if it is not sure, write what it could be: "{stretch_of(kind)}".'
        case YesNo():
            return 'yes or no; if it is not sure, leave it blank or write "yes or no".'
        case Scale(steps):
            return f'One of, from low to high: {", ".join(steps)}; if it is not sure: "{" or ".join(steps[:2])}".'
        case Choice(options):
            return f'One of: {", ".join(options)}; if it is not sure: "{" or ".join(options[:2])}".'
        case Places(places):
            return f'"none", or any of these with spaces between: {", ".join(places)}.'
        case Label():
            return "Any text."
        case Colours():
            return f'L*, a* and b* from head to tail: "{COLOURS_EXAMPLE}"; of a photograph: "srgb 200 60 30; …".'
        case Patches():
            return f'Where each patch starts, ends and reaches to, in %: "{MAP_EXAMPLE}"; or "none".'


def _explain(sheet: Worksheet, variety: Variety, traits: Sequence[Trait], styles: Styles) -> None:
    """Fill the sheet that explains each trait, under the title of the variety."""
    title = f"{variety.title}: what the columns of the sheet “{SHEET}” mean"
    sheet.write_string(0, 0, for_workbook(title), styles.header)
    _set_footer(sheet, variety.subject.on_paper)
    write_texts(sheet, 1, _HEADINGS, styles.header)
    for row, trait in enumerate(traits, 2):
        better = "" if trait.better is Better.NEITHER else trait.better.value
        lines = (heading_of(trait), trait.title, describe_kind(trait.kind), better, trait.describe)
        write_texts(sheet, row, lines, styles.wrapped)
    for column, width in enumerate((24, 30, 50, 16, 70)):
        sheet.set_column(column, column, width)
    sheet.freeze_panes(2, 1)
