"""Changes of texts as the protocol has them: of one file or several, and mends as actions that an editor offers."""

from __future__ import annotations

from pathlib import Path

from lsprotocol import types as lsp

from koirules.editing import Changed, Edit, Lines, Mend, together
from koirules_editor.session import Session
from koirules_editor.turning import range_of

FIX_ALL = f"{lsp.CodeActionKind.SourceFixAll.value}.koirules"
"""The kind of the action that makes all mends at once."""


def _text_edits(edits: list[Edit] | tuple[Edit, ...], lines: Lines, encoding: str) -> list[lsp.TextEdit]:
    return [lsp.TextEdit(range_of(edit.place, lines, encoding), edit.text) for edit in edits]


def workspace_edit(session: Session, changes: list[Changed], own: str) -> lsp.WorkspaceEdit:
    """Changes of several files. own: the page that was asked about."""
    keys = {page.path: uri for uri, page in session.desk.pages.items() if page.path is not None}
    edits: dict[str, list[lsp.TextEdit]] = {}
    for change in changes:
        uri = own if change.path is None else keys.get(change.path) or Path(change.path).as_uri()
        edits[uri] = _text_edits(change.edits, change.lines, session.encoding)
    return _edit(session, edits)


def _edit(session: Session, edits: dict[str, list[lsp.TextEdit]]) -> lsp.WorkspaceEdit:
    """Changes of files; of those that are open, of the version that was read, where the editor can tell."""
    workspace = session.server.client_capabilities.workspace
    can = None if workspace is None else workspace.workspace_edit
    if can is None or not can.document_changes:
        return lsp.WorkspaceEdit(changes=edits)
    return lsp.WorkspaceEdit(
        document_changes=[
            lsp.TextDocumentEdit(lsp.OptionalVersionedTextDocumentIdentifier(uri, session.version(uri)), changes)
            for uri, changes in edits.items()
        ]
    )


def code_actions(
    session: Session,
    lines: Lines,
    params: lsp.CodeActionParams,
    found: list[Mend],
    told: list[lsp.Diagnostic],
) -> list[lsp.CodeAction]:
    """The mends that lie in the stretch asked about, and all that can be made together. told: the problems as told."""
    uri, encoding = params.text_document.uri, session.encoding
    actions = []
    if _wants(params, lsp.CodeActionKind.QuickFix.value):
        for mend in found:
            at = range_of(mend.site, lines, encoding)
            if _touch(at, params.range):
                about = [each for each in told if each.range == at and each.code == mend.problem.code]
                edit = _edit(session, {uri: _text_edits([mend.edit], lines, encoding)})
                actions.append(
                    lsp.CodeAction(mend.words, lsp.CodeActionKind.QuickFix, about, is_preferred=True, edit=edit)
                )
    every = together(found)
    if len(every) > 1 and _wants(params, FIX_ALL):
        edit = _edit(session, {uri: _text_edits(every, lines, encoding)})
        actions.append(lsp.CodeAction(f"Make all {len(every)} mends that can be made", FIX_ALL, edit=edit))
    return actions


def _wants(params: lsp.CodeActionParams, kind: str) -> bool:
    if params.context.only is None:
        return True
    wanted = [str(getattr(each, "value", each)) for each in params.context.only]
    return any(kind == each or kind.startswith(f"{each}.") for each in wanted)


def _touch(one: lsp.Range, other: lsp.Range) -> bool:
    def begin(at: lsp.Range) -> tuple[int, int]:
        return at.start.line, at.start.character

    def end(at: lsp.Range) -> tuple[int, int]:
        return at.end.line, at.end.character

    return begin(one) <= end(other) and begin(other) <= end(one)
