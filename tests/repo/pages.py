"""The pages that people read, taken apart: blocks of code, files that they name, commands with what these print."""

import re
from pathlib import Path

from attrs import frozen

ROOT = Path(__file__).parents[2]
GUIDE = ROOT / "examples" / "guide"
REFERENCE = GUIDE / "reference"
PAGES = [ROOT / "README.md", *sorted(GUIDE.rglob("*.md"))]
DOCUMENTS = [*PAGES, ROOT / "DEVELOPERS.md", ROOT / "rulesets" / "README.md"]

_BLOCK = re.compile(r"^```(\w+)(?: (\S+))?\n(.*?)^```$", re.DOTALL | re.MULTILINE)


@frozen
class Block:
    """A fenced block. kind: its language. name: the file that a reader saves it as, or None. line: where it begins."""

    kind: str
    name: str | None
    text: str
    line: int


@frozen
class Run:
    """A command with what the page says that it prints."""

    command: str
    prints: str


def blocks_of(page: str) -> list[Block]:
    return [
        Block(found[1], found[2], found[3], page[: found.start()].count("\n") + 1) for found in _BLOCK.finditer(page)
    ]


def runs_of(console: str) -> list[Run]:
    """The commands of a block of kind console; each begins with `$ `, and goes on behind a `\\` at the end of a line."""
    pieces = re.split(r"^\$ ", console.replace("\\\n", ""), flags=re.MULTILINE)
    assert not pieces[0], f"output before the first command: {pieces[0]!r}"
    return [Run(*piece.partition("\n")[::2]) for piece in pieces[1:]]


def agrees(shown: str, printed: str) -> bool:
    """Whether a page shows what was printed. A line `…` stands for any lines."""
    parts = [re.escape(part) for part in re.split(r"^…\n", shown, flags=re.MULTILINE)]
    return re.fullmatch(".*".join(parts), printed, re.DOTALL) is not None


def shortened(printed: str, shown: str) -> str:
    """What was printed, with as many lines before and after a line `…` as the page shows."""
    if "…\n" not in shown.splitlines(keepends=True):
        return printed
    before, _, after = (
        part.count("\n") for part in re.split(r"(^…\n(?:.*^…\n)?)", shown, maxsplit=1, flags=re.DOTALL | re.MULTILINE)
    )
    lines = printed.splitlines(keepends=True)
    return "".join([*lines[:before], "…\n", *lines[len(lines) - after :]])
