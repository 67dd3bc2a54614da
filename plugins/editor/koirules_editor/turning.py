"""Our values as those of the protocol: places as ranges in the units that were agreed on, problems as diagnostics."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from difflib import SequenceMatcher

from lsprotocol import types as lsp

from koirules import Place, Problem
from koirules.editing import Entry, Fold, Lines, Offers, Sort, units

OURS = "koirules"

_KINDS = {
    Sort.STEP: lsp.CompletionItemKind.EnumMember,
    Sort.UNIT: lsp.CompletionItemKind.Unit,
    Sort.TERM: lsp.CompletionItemKind.Function,
    Sort.SETTING: lsp.CompletionItemKind.Constant,
    Sort.TRAIT: lsp.CompletionItemKind.Variable,
    Sort.PART: lsp.CompletionItemKind.Reference,
    Sort.WORD: lsp.CompletionItemKind.Keyword,
    Sort.FILE: lsp.CompletionItemKind.File,
}
_ORDER = list(Sort)
_SYMBOLS = {
    "standard": lsp.SymbolKind.Module,
    "section": lsp.SymbolKind.Namespace,
    "setting": lsp.SymbolKind.Constant,
    "trait": lsp.SymbolKind.Variable,
    "term": lsp.SymbolKind.Function,
    "grade": lsp.SymbolKind.EnumMember,
    "fault": lsp.SymbolKind.Event,
    "lift": lsp.SymbolKind.Event,
    "sample": lsp.SymbolKind.Object,
}


def range_of(place: Place, lines: Lines, encoding: str) -> lsp.Range:
    """A place of a text as a range."""
    return lsp.Range(
        lsp.Position(*lines.to_editor(place.line, place.column, encoding)),
        lsp.Position(*lines.to_editor(place.end_line, place.end_column, encoding)),
    )


def diagnostics_of(
    problems: Iterable[Problem], file: str, lines: Lines, encoding: str, location: Callable[[Place], lsp.Location]
) -> list[lsp.Diagnostic]:
    """The problems of a page. One that lies in a base is told where the page names its base, with the place beside it.

    location: of a place in another file.
    """
    found = []
    for problem in problems:
        site = problem.site
        at = lsp.Range(lsp.Position(0, 0), lsp.Position(0, 0))
        beside = list(problem.beside)
        if isinstance(site, Place) and site.file == file:
            at = range_of(site, lines, encoding)
        elif isinstance(site, Place):
            at = _of_base(lines, encoding)
            beside.insert(0, (site, problem.cause))
        found.append(
            lsp.Diagnostic(
                at,
                f"{problem.cause} {problem.mend}",
                lsp.DiagnosticSeverity.Warning if problem.warning else lsp.DiagnosticSeverity.Error,
                problem.code,
                source=OURS,
                related_information=[
                    lsp.DiagnosticRelatedInformation(location(place), words) for place, words in beside
                ]
                or None,
            )
        )
    return found


def _of_base(lines: Lines, encoding: str) -> lsp.Range:
    """Where a page says what it is based on, else its beginning."""
    for number, line in enumerate(lines.counted, 1):
        begin = line.find("based on")
        if begin >= 0 and "#" not in line[:begin]:
            end = len(line.rstrip())
            return lsp.Range(
                lsp.Position(*lines.to_editor(number, begin + 1, encoding)),
                lsp.Position(*lines.to_editor(number, end + 1, encoding)),
            )
    return lsp.Range(lsp.Position(0, 0), lsp.Position(0, 0))


def completions_of(offers: Offers, at: lsp.Range, spot: list[str | int], *, shared_range: bool) -> lsp.CompletionList:
    """What could stand at a place, to be put where `at` is; what there is to tell about each comes when it is asked for.

    spot: the page and our line and column, by which to find an offer again. shared_range: whether the editor takes one
    range for all of them, which spares much of the message.
    """
    items = [
        lsp.CompletionItem(
            label=offer.text,
            kind=_KINDS[offer.sort],
            detail=offer.detail or None,
            sort_text=f"{_ORDER.index(offer.sort)}{number:04}",
            text_edit=None if shared_range else lsp.TextEdit(at, offer.text),
            data=None if shared_range else spot,
        )
        for number, offer in enumerate(offers.offers)
    ]
    defaults = lsp.CompletionItemDefaults(edit_range=at, data=spot) if shared_range else None
    return lsp.CompletionList(is_incomplete=False, items=items, item_defaults=defaults)


def symbols_of(entries: Sequence[Entry], lines: Lines, encoding: str) -> list[lsp.DocumentSymbol]:
    """The outline of a page."""
    return [
        lsp.DocumentSymbol(
            name=entry.name or entry.head,
            detail=f"{entry.head} {entry.title}".strip(),
            kind=_SYMBOLS.get(entry.head, lsp.SymbolKind.Field),
            range=range_of(entry.place, lines, encoding),
            selection_range=range_of(entry.named, lines, encoding),
            children=symbols_of(entry.inside, lines, encoding) or None,
        )
        for entry in entries
    ]


def flat_symbols_of(
    entries: Sequence[Entry], uri: str, lines: Lines, encoding: str, inside: str | None = None
) -> list[lsp.SymbolInformation]:
    """The outline for an editor that takes no tree."""
    found = []
    for entry in entries:
        location = lsp.Location(uri, range_of(entry.place, lines, encoding))
        kind = _SYMBOLS.get(entry.head, lsp.SymbolKind.Field)
        found.append(lsp.SymbolInformation(location, entry.name or entry.head, kind, container_name=inside))
        found += flat_symbols_of(entry.inside, uri, lines, encoding, entry.name)
    return found


def fold_of(fold: Fold) -> lsp.FoldingRange:
    """What can be folded away."""
    kind = lsp.FoldingRangeKind.Comment if fold.remark else lsp.FoldingRangeKind.Region
    return lsp.FoldingRange(fold.first - 1, fold.last - 1, kind=kind)


def line_edits(lines: Lines, after: str, encoding: str) -> list[lsp.TextEdit]:
    """The changes that make a text another one, by whole lines, so that what stays keeps its place under the cursor."""
    old, new = lines.own, after.split("\n")
    edits = []
    for kind, begin, end, first, last in SequenceMatcher(None, old, new).get_opcodes():
        if kind == "equal":
            continue
        text = "".join(f"{line}\n" for line in new[first:last])
        start, stop = lsp.Position(begin, 0), lsp.Position(end, 0)
        if end == len(old):  # the last line has no end of its own
            text = text.removesuffix("\n")
            stop = lsp.Position(end - 1, units(old[-1], encoding))
            if begin == end or first == last:
                start = lsp.Position(begin - 1, units(old[begin - 1], encoding))
                text = f"\n{text}" if text or first != last else ""
        edits.append(lsp.TextEdit(lsp.Range(start, stop), text))
    return edits
