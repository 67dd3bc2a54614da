"""What an editor asks, and what it is answered."""

from __future__ import annotations

from typing import Protocol

from attrs import frozen
from lsprotocol import types as lsp
from pygls.exceptions import JsonRpcException
from pygls.lsp.server import LanguageServer

from koirules import Place
from koirules.editing import (
    Desk,
    Lines,
    Page,
    base_at,
    can_rename,
    folds,
    mends,
    offers_at,
    outline,
    places_of,
    problems_now,
    renamed,
    told_at,
)
from koirules_editor.changing import FIX_ALL, code_actions, workspace_edit
from koirules_editor.session import Session
from koirules_editor.turning import completions_of, flat_symbols_of, fold_of, line_edits, range_of, symbols_of

REQUEST_FAILED = -32803
"""The protocol's code for a request that was understood and cannot be done."""


def register(server: LanguageServer, session: Session) -> None:
    """Let a server answer."""
    _answer_at_once(server, session)
    _answer_about_names(server, session)
    _answer_about_pages(server, session)


class _About(Protocol):
    """A question about a place of a page."""

    text_document: lsp.TextDocumentIdentifier
    position: lsp.Position


@frozen
class _Asked:
    """What a question is about: a page, and our line and column in it. lines: its text then."""

    desk: Desk
    uri: str
    page: Page
    lines: Lines
    line: int
    column: int


async def _asked(session: Session, params: _About) -> _Asked | None:
    """What a question is about, once the page has been looked at for the first time; None of a page that is not open."""
    uri, desk = params.text_document.uri, session.desk
    if uri in desk.pages and desk.last_look(uri) is None:
        await session.looked_at(uri)
    page = desk.pages.get(uri)
    if page is None:
        return None
    at = page.lines.from_editor(params.position.line, params.position.character, session.encoding)
    return _Asked(desk, uri, page, page.lines, *at)


async def _asked_now(session: Session, params: _About) -> _Asked:
    """As `_asked`, once the page has been looked at as it stands. Refuses where it is not open."""
    await session.looked_at(params.text_document.uri)
    asked = await _asked(session, params)
    if asked is None:
        raise JsonRpcException("This page is not open.", code=REQUEST_FAILED)
    return asked


def _answer_at_once(server: LanguageServer, session: Session) -> None:
    """While somebody types: from the words before the place, and from what the last look told."""
    options = lsp.CompletionOptions(trigger_characters=[" ", "(", "{", '"'], resolve_provider=True)

    @server.feature(lsp.TEXT_DOCUMENT_COMPLETION, options)
    async def completion(params: lsp.CompletionParams) -> lsp.CompletionList | None:
        asked = await _asked(session, params)
        if asked is None:
            return None
        offers = offers_at(asked.desk, asked.uri, asked.line, asked.column)
        place = Place("", asked.line, asked.column - offers.replaces, asked.line, asked.column)
        at = range_of(place, asked.lines, session.encoding)
        spot: list[str | int] = [asked.uri, asked.line, asked.column]
        return completions_of(offers, at, spot, shared_range=_takes_shared(server))

    @server.feature(lsp.COMPLETION_ITEM_RESOLVE)
    async def told_more(item: lsp.CompletionItem) -> lsp.CompletionItem:
        uri, line, column = item.data or ("", 0, 0)
        desk = session.desk
        if uri in desk.pages and line <= len(desk.pages[uri].lines.counted):
            offers = offers_at(desk, uri, line, column).offers
            item.documentation = next((each.about for each in offers if each.text == item.label), "") or None
        return item

    @server.feature(lsp.TEXT_DOCUMENT_HOVER)
    async def hover(params: lsp.HoverParams) -> lsp.Hover | None:
        asked = await _asked(session, params)
        told = None if asked is None else told_at(asked.desk, asked.uri, asked.line, asked.column)
        if asked is None or told is None:
            return None
        text, place = told
        # Plain text: a label is a stranger's, and must not become a link or a picture.
        content = lsp.MarkupContent(lsp.MarkupKind.PlainText, text)
        return lsp.Hover(content, range_of(place, asked.lines, session.encoding))


def _answer_about_names(server: LanguageServer, session: Session) -> None:
    async def places(params: _About, *, given: bool) -> list[Place]:
        asked = await _asked(session, params)
        if asked is None:
            return []
        return await session.in_thread(lambda: places_of(asked.desk, asked.uri, asked.line, asked.column, given=given))

    @server.feature(lsp.TEXT_DOCUMENT_DEFINITION)
    async def definition(params: lsp.DefinitionParams) -> list[lsp.Location]:
        asked = await _asked(session, params)
        if asked is None:
            return []
        base = await session.in_thread(lambda: base_at(asked.desk, asked.uri, asked.line, asked.column))
        if base is not None:
            return [session.location(Place(str(base), 1, 1, 1, 1))]
        return session.locations(await places(params, given=True))

    @server.feature(lsp.TEXT_DOCUMENT_REFERENCES)
    async def references(params: lsp.ReferenceParams) -> list[lsp.Location]:
        found = await places(params, given=False)
        if not params.context.include_declaration:
            given = await places(params, given=True)
            found = [place for place in found if place not in given]
        return session.locations(found)

    @server.feature(lsp.TEXT_DOCUMENT_DOCUMENT_HIGHLIGHT)
    async def highlight(params: lsp.DocumentHighlightParams) -> list[lsp.DocumentHighlight]:
        page = session.page(params.text_document.uri)
        found = await places(params, given=False)
        if page is None:
            return []
        own = [place for place in found if place.file == page.file]
        return [lsp.DocumentHighlight(range_of(place, page.lines, session.encoding)) for place in own]

    @server.feature(lsp.TEXT_DOCUMENT_PREPARE_RENAME)
    async def prepare_rename(params: lsp.PrepareRenameParams) -> lsp.PrepareRenamePlaceholder:
        asked = await _asked_now(session, params)
        use = await session.in_thread(lambda: can_rename(asked.desk, asked.uri, asked.line, asked.column))
        if isinstance(use, str):
            raise JsonRpcException(use, code=REQUEST_FAILED)
        return lsp.PrepareRenamePlaceholder(range_of(use.place, asked.lines, session.encoding), use.name)

    @server.feature(lsp.TEXT_DOCUMENT_RENAME, lsp.RenameOptions(prepare_provider=True))
    async def rename(params: lsp.RenameParams) -> lsp.WorkspaceEdit:
        asked, folders, new = await _asked_now(session, params), session.folders, params.new_name
        changes = await session.in_thread(
            lambda: renamed(asked.desk, asked.uri, asked.line, asked.column, new, folders)
        )
        if isinstance(changes, str):
            raise JsonRpcException(changes, code=REQUEST_FAILED)
        if asked.page.lines is not asked.lines:
            raise JsonRpcException("The text has changed meanwhile.", code=REQUEST_FAILED)
        return workspace_edit(session, changes, asked.uri)


def _answer_about_pages(server: LanguageServer, session: Session) -> None:
    @server.feature(lsp.TEXT_DOCUMENT_DOCUMENT_SYMBOL)
    async def symbols(
        params: lsp.DocumentSymbolParams,
    ) -> list[lsp.DocumentSymbol] | list[lsp.SymbolInformation] | None:
        uri = params.text_document.uri
        page = session.page(uri)
        if page is None:
            return None
        lines = page.lines
        entries = await session.in_thread(lambda: outline(page.read_of(lines)))
        if _takes_trees(server):
            return symbols_of(entries, lines, session.encoding)
        return flat_symbols_of(entries, uri, lines, session.encoding)

    @server.feature(lsp.TEXT_DOCUMENT_FOLDING_RANGE)
    async def folding(params: lsp.FoldingRangeParams) -> list[lsp.FoldingRange] | None:
        page = session.page(params.text_document.uri)
        if page is None:
            return None
        lines = page.lines
        return [fold_of(fold) for fold in await session.in_thread(lambda: folds(page.read_of(lines)))]

    @server.feature(lsp.TEXT_DOCUMENT_FORMATTING)
    async def formatting(params: lsp.DocumentFormattingParams) -> list[lsp.TextEdit] | None:
        uri = params.text_document.uri
        look, page, desk = await session.looked_at(uri), session.page(uri), session.desk
        if look is None or page is None:
            return None
        lines = page.lines
        tidied = await session.in_thread(lambda: desk.tidied(uri))
        if page.lines is not lines:
            return None
        if tidied.text is None:
            raise JsonRpcException("Mend the problems first: then it can be laid out.", code=REQUEST_FAILED)
        return line_edits(lines, tidied.text, session.encoding)

    @server.feature(
        lsp.TEXT_DOCUMENT_CODE_ACTION,
        lsp.CodeActionOptions(code_action_kinds=[lsp.CodeActionKind.QuickFix, FIX_ALL]),
    )
    async def actions(params: lsp.CodeActionParams) -> list[lsp.CodeAction]:
        uri = params.text_document.uri
        look, page = session.desk.last_look(uri), session.page(uri)
        look = look or await session.looked_at(uri)
        if look is None or page is None:
            return []
        lines = page.lines
        problems = problems_now(look, lines)
        told = session.diagnostics(problems, page, lines)
        return code_actions(session, lines, params, mends(problems, page.file), told)


def _takes_trees(server: LanguageServer) -> bool:
    document = server.client_capabilities.text_document
    symbol = None if document is None else document.document_symbol
    return bool(symbol is not None and symbol.hierarchical_document_symbol_support)


def _takes_shared(server: LanguageServer) -> bool:
    document = server.client_capabilities.text_document
    completion = None if document is None else document.completion
    takes = None if completion is None else completion.completion_list
    shared = [] if takes is None else list(takes.item_defaults or ())
    return "editRange" in shared and "data" in shared
