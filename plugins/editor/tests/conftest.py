"""An editor without a window: it starts the server as a program and speaks the protocol with it."""

from __future__ import annotations

import asyncio
import os
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from lsprotocol import types as lsp
from pygls.lsp.client import LanguageClient

RICH = lsp.ClientCapabilities(
    workspace=lsp.WorkspaceClientCapabilities(
        workspace_edit=lsp.WorkspaceEditClientCapabilities(document_changes=True)
    ),
    text_document=lsp.TextDocumentClientCapabilities(
        completion=lsp.CompletionClientCapabilities(
            completion_list=lsp.CompletionListCapabilities(item_defaults=["editRange", "data"])
        ),
        document_symbol=lsp.DocumentSymbolClientCapabilities(hierarchical_document_symbol_support=True),
    ),
)
LONG = 60


class Editor:
    """One session with a server of its own. Its answers are plain values of the protocol."""

    def __init__(self, capabilities: lsp.ClientCapabilities, folder: Path) -> None:
        self.folder = folder
        self.told: dict[str, lsp.PublishDiagnosticsParams] = {}
        self.messages: list[str] = []
        self._versions: dict[str, int] = {}
        self._runner = asyncio.Runner()
        self._client = LanguageClient("test", "1")
        self._client.feature(lsp.TEXT_DOCUMENT_PUBLISH_DIAGNOSTICS)(self._taker())
        self._client.feature(lsp.WINDOW_LOG_MESSAGE)(lambda params: self.messages.append(params.message))
        self._client.feature(lsp.WINDOW_SHOW_MESSAGE)(lambda params: self.messages.append(params.message))
        self.server = self._run(self._start(capabilities))

    def _run(self, work: Any) -> Any:
        return self._runner.run(asyncio.wait_for(work, LONG))

    async def _start(self, capabilities: lsp.ClientCapabilities) -> lsp.InitializeResult:
        await self._client.start_io(sys.executable, "-m", "koirules_editor", env=dict(os.environ))
        folders = [lsp.WorkspaceFolder(self.folder.as_uri(), "rules")]
        asked = lsp.InitializeParams(capabilities, workspace_folders=folders)
        result = await self._client.initialize_async(asked)
        self._client.initialized(lsp.InitializedParams())
        return result

    def _taker(self) -> Callable[[lsp.PublishDiagnosticsParams], None]:
        def take(params: lsp.PublishDiagnosticsParams) -> None:
            self.told[params.uri] = params

        return take  # pygls marks functions, which a method does not let it do

    def close_all(self) -> None:
        """End the session as an editor does."""

        async def end() -> int | None:
            await self._client.shutdown_async(None)
            self._client.exit(None)
            process = self._client._server
            code = None if process is None else await process.wait()
            await self._client.stop()
            return code

        code = self._run(end())
        self._runner.close()
        assert code == 0

    def uri(self, name: str) -> str:
        """The address of a file in the folder."""
        return (self.folder / name).as_uri()

    def open(self, name: str, text: str) -> str:
        """Open a file with a text that need not be on the disk."""
        uri = self.uri(name) if ":" not in name else name
        self._versions[uri] = 1
        item = lsp.TextDocumentItem(uri, "koirules", 1, text)
        self._notify(lambda: self._client.text_document_did_open(lsp.DidOpenTextDocumentParams(item)))
        return uri

    def type(self, uri: str, text: str) -> None:
        """Change the text of a file that is open."""
        self._versions[uri] += 1
        document = lsp.VersionedTextDocumentIdentifier(self._versions[uri], uri)
        changes = [lsp.TextDocumentContentChangeWholeDocument(text)]
        change = lsp.DidChangeTextDocumentParams(document, changes)
        self._notify(lambda: self._client.text_document_did_change(change))

    def close(self, uri: str) -> None:
        """Close a file."""
        closed = lsp.DidCloseTextDocumentParams(lsp.TextDocumentIdentifier(uri))
        self._notify(lambda: self._client.text_document_did_close(closed))

    def _notify(self, tell: Callable[[], None]) -> None:
        async def told() -> None:
            tell()

        self._run(told())

    def problems(self, uri: str, until: Callable[[lsp.PublishDiagnosticsParams], bool] | None = None) -> Any:
        """The problems of the text as it stands, once they are told; or the first that are as wanted."""

        async def wait() -> list[lsp.Diagnostic]:
            while True:
                told = self.told.get(uri)
                if told is not None and (until(told) if until else told.version == self._versions[uri]):
                    return list(told.diagnostics)
                await asyncio.sleep(0.01)

        return self._run(wait())

    def tell_more(self, found: lsp.CompletionList, label: str) -> lsp.CompletionItem:
        """All that the server has to tell about an offer."""
        (item,) = [each for each in found.items if each.label == label]
        if found.item_defaults is not None:
            item.data = found.item_defaults.data
        return self._run(self._client.completion_item_resolve_async(item))

    def ask(self, method: str, uri: str, **more: Any) -> Any:
        """An answer of the server. method: as the client has it, such as `text_document_hover`."""
        params = PARAMS[method](text_document=lsp.TextDocumentIdentifier(uri), **more)
        return self._run(getattr(self._client, f"text_document_{method}_async")(params))


PARAMS = {
    "completion": lsp.CompletionParams,
    "hover": lsp.HoverParams,
    "definition": lsp.DefinitionParams,
    "references": lsp.ReferenceParams,
    "document_highlight": lsp.DocumentHighlightParams,
    "prepare_rename": lsp.PrepareRenameParams,
    "rename": lsp.RenameParams,
    "document_symbol": lsp.DocumentSymbolParams,
    "folding_range": lsp.FoldingRangeParams,
    "formatting": lsp.DocumentFormattingParams,
    "code_action": lsp.CodeActionParams,
}


@pytest.fixture(scope="session")
def editors() -> Iterator[Callable[..., Editor]]:
    """Starts editors, and ends them."""
    started: list[Editor] = []

    def start(folder: Path, capabilities: lsp.ClientCapabilities = RICH) -> Editor:
        started.append(Editor(capabilities, folder))
        return started[-1]

    yield start
    for editor in started:
        editor.close_all()


@pytest.fixture(scope="session")
def shared(editors: Callable[..., Editor], tmp_path_factory: pytest.TempPathFactory) -> Editor:
    """An editor for all tests that open files of their own."""
    return editors(tmp_path_factory.mktemp("rules"))
