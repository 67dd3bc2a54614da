"""What an editor has open: each page looked at a moment after its text has changed, and its problems told."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Iterable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import TypeVar

from lsprotocol import types as lsp
from pygls.lsp.server import LanguageServer
from pygls.uris import to_fs_path

from koirules import Place, Problem
from koirules.editing import Desk, Lines, Look, Page
from koirules_editor.turning import diagnostics_of, range_of

PAUSE = 0.15
"""So many seconds without a change make a page worth a look."""

_T = TypeVar("_T")


class Session:
    """The pages of one editor.

    Looks run one after another on a thread of their own, and questions that need the whole text on others, so that the
    editor is listened to all the time.
    """

    def __init__(self, server: LanguageServer) -> None:
        self.server = server
        self.desk = Desk()
        self._waiting: dict[str, asyncio.Task[None]] = {}
        self._pausing: set[str] = set()
        self._versions: dict[str, tuple[Lines, int | None]] = {}
        self._looking = ThreadPoolExecutor(max_workers=1, thread_name_prefix="look")
        self._answering = ThreadPoolExecutor(max_workers=2, thread_name_prefix="answer")
        self._has_told_plugins = False

    @property
    def encoding(self) -> str:
        """How the editor counts the characters of a line."""
        return str(getattr(self.server.workspace.position_encoding, "value", self.server.workspace.position_encoding))

    def end(self) -> None:
        """Stop looking."""
        for task in self._waiting.values():
            task.cancel()
        self._looking.shutdown(wait=False, cancel_futures=True)
        self._answering.shutdown(wait=False, cancel_futures=True)

    async def in_thread(self, work: Callable[[], _T]) -> _T:
        """What some work comes to that takes longer than an editor can wait for."""
        return await asyncio.get_running_loop().run_in_executor(self._answering, work)

    # ---- What the editor tells

    def opened(self, uri: str, text: str, version: int | None) -> None:
        """A page is opened."""
        page = self.desk.open(uri, _path(uri), text)
        self._versions[uri] = (page.lines, version)
        self._look_soon(uri, 0)
        self._look_at_leaning(page)

    def changed(self, uri: str, text: str, version: int | None) -> None:
        """The text of a page has changed."""
        page = self.page(uri)
        if page is None:
            return
        page.put(text)
        self._versions[uri] = (page.lines, version)
        self._look_soon(uri, PAUSE)
        self._look_at_leaning(page)

    def closed(self, uri: str) -> None:
        """A page is closed; what is based on it reads the file again."""
        page = self.page(uri)
        if page is None:
            return
        self.desk.close(uri)
        self._versions.pop(uri, None)
        waiting = self._waiting.pop(uri, None)
        if waiting is not None:
            waiting.cancel()
        self.server.text_document_publish_diagnostics(lsp.PublishDiagnosticsParams(uri, []))
        self._look_at_leaning(page)

    def file_changed(self, uri: str) -> None:
        """A file has changed on the disk."""
        path = _path(uri)
        if path is not None:
            for key in self.desk.leaning_on(path.resolve()):
                self._look_soon(key, PAUSE)

    def _look_at_leaning(self, page: Page) -> None:
        if page.path is not None:
            for key in self.desk.leaning_on(page.path):
                self._look_soon(key, PAUSE)

    def version(self, uri: str) -> int | None:
        """The version of the text of a page, None where it is not open."""
        return self._versions[uri][1] if uri in self._versions else None

    # ---- Looks

    def page(self, uri: str) -> Page | None:
        """An open page."""
        return self.desk.pages.get(uri)

    async def looked_at(self, uri: str) -> Look | None:
        """The look at a page as it stands now, which may have to be waited for."""
        while True:
            page = self.page(uri)
            if page is None:
                return None
            look = self.desk.last_look(uri)
            if look is not None and look.lines is page.lines:
                return look
            waiting = self._waiting.get(uri)
            if waiting is None or waiting.done() or uri in self._pausing:
                self._look_soon(uri, 0)
            looking = self._waiting[uri]
            await asyncio.wait([looking])
            if not looking.cancelled() and looking.exception() is not None:
                return None

    def _look_soon(self, uri: str, pause: float) -> None:
        waiting = self._waiting.get(uri)
        if waiting is not None:
            waiting.cancel()
        self._waiting[uri] = asyncio.ensure_future(self._look(uri, pause))

    async def _look(self, uri: str, pause: float) -> None:
        self._pausing.add(uri)
        await asyncio.sleep(pause)
        self._pausing.discard(uri)
        desk, page = self.desk, self.page(uri)
        if page is None:
            return
        try:
            look = await asyncio.get_running_loop().run_in_executor(self._looking, lambda: _looked(desk, uri, page))
        except Exception as error:  # a defect of ours, or of a plugin: the editor goes on, and somebody can tell us
            self.server.window_log_message(lsp.LogMessageParams(lsp.MessageType.Error, repr(error)))
            raise
        self._tell_plugins()
        lines, version = self._versions.get(uri, (None, None))
        if look is None or lines is not look.lines:
            return  # the text has changed meanwhile, and another look is on its way
        found = self.diagnostics(look.checked.problems, page, look.lines)
        self.server.text_document_publish_diagnostics(lsp.PublishDiagnosticsParams(uri, found, version))

    def _tell_plugins(self) -> None:
        """What is wrong with the plugins that were left out, once."""
        if not self._has_told_plugins:
            self._has_told_plugins = True
            for problem in self.desk.registry.problems:
                self.server.window_log_message(lsp.LogMessageParams(lsp.MessageType.Warning, str(problem)))

    def diagnostics(self, problems: Iterable[Problem], page: Page, lines: Lines) -> list[lsp.Diagnostic]:
        """The problems of a page as its editor takes them."""
        return diagnostics_of(problems, page.file, lines, self.encoding, self.location)

    # ---- Places in other files

    def location(self, place: Place) -> lsp.Location:
        """A place in any file, as it is open or else as it lies on the disk."""
        return self.locations([place])[0]

    def locations(self, places: Iterable[Place]) -> list[lsp.Location]:
        """Places in any files."""
        known: dict[str, tuple[str, Lines]] = {}
        found: list[lsp.Location] = []
        for place in places:
            if place.file not in known:
                known[place.file] = self._file(place.file)
            uri, lines = known[place.file]
            found.append(lsp.Location(uri, range_of(place, lines, self.encoding)))
        return found

    def _file(self, file: str) -> tuple[str, Lines]:
        """The address of a file, and its text."""
        for uri, page in self.desk.pages.items():
            if page.file == file or page.path == Path(file).resolve():
                return uri, page.lines
        path = Path(file).resolve()
        try:
            return path.as_uri(), Lines(path.read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return path.as_uri(), Lines("")

    @property
    def folders(self) -> list[Path]:
        """The folders that the editor works in."""
        found = [_path(uri) for uri in self.server.workspace.folders]
        return [path for path in found if path is not None]


def _looked(desk: Desk, uri: str, page: Page) -> Look | None:
    if desk.pages.get(uri) is not page:
        return None
    look = desk.look(uri)
    _ = page.uses  # worked out here, so that nobody waits for it
    return look


def _path(uri: str) -> Path | None:
    found = to_fs_path(uri)
    return Path(found) if found else None
