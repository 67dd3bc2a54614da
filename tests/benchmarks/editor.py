"""How long the language server takes to answer in a 2,000-line file: `python tests/benchmarks/editor.py`.

Prints a table; asserts nothing. The server is a process of its own, asked over the real protocol: once it has looked at the
text, right after a letter was typed, and right after a line was put in at the top.
"""

import asyncio
import os
import platform
import statistics
import sys
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT), str(ROOT / "plugins" / "editor")]

from lsprotocol import types as lsp
from pygls.lsp.client import LanguageClient

RULES = ROOT / "rulesets" / "tosai_kohaku" / "standard.koi"
LINES = 2_000
RUNS = 15
URI = "file:///benchmark/standard.koi"
DOCUMENT = lsp.TextDocumentIdentifier(URI)


def long_file() -> str:
    """The richest rule set, made 2,000 lines long with further criteria and faults that read as many traits."""
    lines = RULES.read_text(encoding="utf-8").rstrip("\n").split("\n")
    number = 0
    while len(lines) < LINES - 1:
        number += 1
        lines += [
            f'term further_{number} "further {number}"',
            f"  means (length above {number % 40 + 5} cm or kiwa at least fair) and not (shimi_count at least {number % 9 + 1})",
            f'fault further_{number} "further fault {number}"',
            f"  if further_{number} and hi_cover below {number % 60 + 1} % except spine is straight: no better than sell",
            '  say "{length}, {hi_cover}"',
            "",
        ]
    return "\n".join(lines[: LINES - 1]).rstrip() + "\nfault last if kiwa is fair and "


class Session:
    """One session with a server."""

    def __init__(self) -> None:
        self.client = LanguageClient("benchmark", "1")
        self.told = asyncio.Event()
        self.version = 1
        self.told_version = 0

    async def begin(self, text: str) -> None:
        def take(params: lsp.PublishDiagnosticsParams) -> None:
            self.told_version = params.version or 0
            self.told.set()

        self.client.feature(lsp.TEXT_DOCUMENT_PUBLISH_DIAGNOSTICS)(take)
        path = os.pathsep.join(sys.path[:2])
        env = {**os.environ, "PYTHONPATH": path}
        await self.client.start_io(sys.executable, "-m", "koirules_editor", env=env)
        lists = lsp.CompletionListCapabilities(item_defaults=["editRange", "data"])
        completion = lsp.CompletionClientCapabilities(completion_list=lists)
        document = lsp.TextDocumentClientCapabilities(completion=completion)
        await self.client.initialize_async(lsp.InitializeParams(lsp.ClientCapabilities(text_document=document)))
        self.client.initialized(lsp.InitializedParams())
        item = lsp.TextDocumentItem(URI, "koirules", 1, text)
        self.client.text_document_did_open(lsp.DidOpenTextDocumentParams(item))
        await self.looked()

    async def looked(self) -> None:
        while self.told_version != self.version:
            self.told.clear()
            await self.told.wait()

    def type(self, text: str) -> None:
        self.version += 1
        document = lsp.VersionedTextDocumentIdentifier(self.version, URI)
        change = [lsp.TextDocumentContentChangeWholeDocument(text)]
        self.client.text_document_did_change(lsp.DidChangeTextDocumentParams(document, change))

    async def end(self) -> None:
        await self.client.shutdown_async(None)
        self.client.exit(None)
        await self.client.stop()


def questions(text: str):
    """Each question by its name: something to await."""
    lines = text.split("\n")
    end = lsp.Position(len(lines) - 1, len(lines[-1]))
    at = next(i for i, line in enumerate(lines) if line.startswith("  if further_200 "))
    name = lsp.Position(at, 7)
    everywhere = lsp.Range(lsp.Position(0, 0), end)
    within = lsp.ReferenceContext(include_declaration=True)
    return {
        "completion": lambda c: c.text_document_completion_async(lsp.CompletionParams(DOCUMENT, end)),
        "hover": lambda c: c.text_document_hover_async(lsp.HoverParams(DOCUMENT, name)),
        "definition": lambda c: c.text_document_definition_async(lsp.DefinitionParams(DOCUMENT, name)),
        "references": lambda c: c.text_document_references_async(lsp.ReferenceParams(within, DOCUMENT, name)),
        "outline": lambda c: c.text_document_document_symbol_async(lsp.DocumentSymbolParams(DOCUMENT)),
        "folding": lambda c: c.text_document_folding_range_async(lsp.FoldingRangeParams(DOCUMENT)),
        "code actions": lambda c: c.text_document_code_action_async(
            lsp.CodeActionParams(DOCUMENT, everywhere, lsp.CodeActionContext([]))
        ),
        "rename": lambda c: c.text_document_rename_async(lsp.RenameParams(DOCUMENT, name, "another_name")),
        "formatting": lambda c: c.text_document_formatting_async(
            lsp.DocumentFormattingParams(DOCUMENT, lsp.FormattingOptions(2, insert_spaces=True))
        ),
    }


async def timed(work) -> float:
    begin = time.perf_counter()
    await work
    return (time.perf_counter() - begin) * 1_000


async def measure() -> None:
    broken = long_file()
    whole = broken.rpartition("\n")[0] + "\nfault last if kiwa is fair and spine is bent: no better than sell"
    session = Session()
    begin = time.perf_counter()
    await session.begin(broken)
    print(f"opened and told: {time.perf_counter() - begin:.1f} s, from the start of the process")
    print(f"{'':14}{'looked at':>22}{'a letter typed':>22}{'a line put in at the top':>26}   (median, worst; ms)")
    for name in questions(broken):
        text = whole if name in {"rename", "formatting"} else broken
        cells = []
        for change in ("", "letter", "line"):
            found = []
            for run in range(RUNS):
                if change == "line":
                    text = f"# {run}\n{text}"
                elif change == "letter":
                    text = text.replace("further fault 150", f"further fault 150{run}", 1)
                session.type(text)
                if not change:
                    await session.looked()
                found.append(await timed(questions(text)[name](session.client)))
                await session.looked()
            cells.append(f"{statistics.median(found):.0f}, {max(found):.0f}")
        print(f"{name:14}{cells[0]:>22}{cells[1]:>22}{cells[2]:>26}", flush=True)
    found = []
    for run in range(RUNS):
        session.type(whole + f" # {run}")
        found.append(await timed(session.looked()))
    print(
        f"problems told after a letter: {statistics.median(found):.0f} ms, at most {max(found):.0f}, the pause included"
    )
    await session.end()


if __name__ == "__main__":
    print(f"{platform.machine()}, Python {platform.python_version()}, {os.cpu_count()} processors, {LINES} lines")
    asyncio.run(measure())
