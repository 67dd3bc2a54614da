"""The language server: what the editor tells goes to the desk, what it asks is answered from there."""

from __future__ import annotations

import logging

from lsprotocol import types as lsp
from pygls.exceptions import JsonRpcException
from pygls.lsp.server import LanguageServer

from koirules_editor import __version__, answers
from koirules_editor.session import Session


def make_server() -> LanguageServer:
    """A server with nothing open yet."""
    # Whole texts: they are small, and no editor and server disagree about where a line ends.
    logging.getLogger("pygls.protocol.json_rpc").addFilter(_in_one_line)
    server = LanguageServer("koirules-editor", __version__, lsp.TextDocumentSyncKind.Full)
    session = Session(server)
    _hear(server, session)
    answers.register(server, session)
    return server


def _in_one_line(record: logging.LogRecord) -> bool:
    """Let a refusal that is told to the editor in words be logged as these words; what else fails keeps its traceback."""
    error = record.exc_info[1] if isinstance(record.exc_info, tuple) else None
    if isinstance(error, JsonRpcException) and error.code == answers.REQUEST_FAILED:
        record.msg, record.args, record.exc_info = "Refused: %s", (error.message,), None
        record.levelno, record.levelname = logging.WARNING, logging.getLevelName(logging.WARNING)
    return True


def _hear(server: LanguageServer, session: Session) -> None:
    """What the editor tells without asking."""

    @server.feature(lsp.INITIALIZED)
    async def initialized(params: lsp.InitializedParams) -> None:
        del params
        capabilities = server.client_capabilities.workspace
        watched = None if capabilities is None else capabilities.did_change_watched_files
        if watched is not None and watched.dynamic_registration:
            options = lsp.DidChangeWatchedFilesRegistrationOptions([lsp.FileSystemWatcher("**/*.koi")])
            registration = lsp.Registration("koirules-files", lsp.WORKSPACE_DID_CHANGE_WATCHED_FILES, options)
            await server.client_register_capability_async(lsp.RegistrationParams([registration]))

    @server.feature(lsp.TEXT_DOCUMENT_DID_OPEN)
    def opened(params: lsp.DidOpenTextDocumentParams) -> None:
        item = params.text_document
        session.opened(item.uri, item.text, item.version)

    @server.feature(lsp.TEXT_DOCUMENT_DID_CHANGE)
    def changed(params: lsp.DidChangeTextDocumentParams) -> None:
        document = params.text_document
        session.changed(document.uri, params.content_changes[-1].text, document.version)

    @server.feature(lsp.TEXT_DOCUMENT_DID_CLOSE)
    def closed(params: lsp.DidCloseTextDocumentParams) -> None:
        session.closed(params.text_document.uri)

    @server.feature(lsp.WORKSPACE_DID_CHANGE_WATCHED_FILES)
    def files_changed(params: lsp.DidChangeWatchedFilesParams) -> None:
        for change in params.changes:
            session.file_changed(change.uri)

    @server.feature(lsp.SHUTDOWN)
    def shut_down(params: None) -> None:
        del params
        session.end()
