"""What the tool says, gathered from its source into `koirules/languages/texts.pot`: `python -m tests.repo.catalogues`.

`koirules untranslated LANGUAGE` then lists what a catalogue lacks.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator, Set
from pathlib import Path

from jinja2 import Environment, nodes

from koirules.languages import written_catalogue

ROOT = Path(__file__).resolve().parents[2]
ROOMS = (
    "classes",
    "commands",
    "explain",
    "grading",
    "measures",
    "prizes",
    "records",
    "report",
    "results",
    "rounds",
    "languages",
)
_CALLS = {"tongue", "say", "to_say", "pieces", "joined", "listed", "of", "line", "plural", "self"}
"""The names by which the source asks for a text: `tongue("…")`, `voice.say("…")`."""


_OF_PAGES = frozenset({"say", "self", "line"})
"""Those of them that mean something else in commands: they speak to a terminal in many ways."""


def said_in(folder: Path) -> Iterator[tuple[str, str]]:
    """The texts of a folder of the source, each behind its context."""
    calls = _CALLS - _OF_PAGES if folder.name == "commands" else _CALLS
    for path in sorted(folder.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call):
                yield from _called(node, calls)
    environment = Environment()  # noqa: S701 (nothing is rendered)
    for path in sorted(folder.rglob("*.html")):
        tree = environment.parse(path.read_text(encoding="utf-8"))
        for call in tree.find_all(nodes.Call):
            target = call.node
            plural = isinstance(target, nodes.Getattr) and target.attr == "plural"
            if plural or (isinstance(target, nodes.Name) and target.name == "_"):
                first = call.args[0]
                if isinstance(first, nodes.Const):
                    yield "", first.value


def _called(node: ast.Call, calls: Set[str] = frozenset(_CALLS)) -> Iterator[tuple[str, str]]:
    name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
    owner = getattr(node.func, "value", None)
    asked = getattr(owner, "attr", getattr(owner, "id", ""))  # `tongue` of `plain.tongue.of("…")`
    if name in {"of", "joined", "listed", "plural", "pieces"} and asked not in {"tongue", "self"}:
        return
    texts = [one.value if isinstance(one, ast.Constant) and isinstance(one.value, str) else None for one in node.args]
    if name not in calls or not texts:
        return
    if name in {"joined", "listed"}:
        if len(texts) > 1 and texts[1] is not None:
            yield "", texts[1]
    elif name == "of":
        if texts[0] is not None:
            yield (texts[1] or "" if len(texts) > 1 else ""), texts[0]
    elif name == "line":
        if texts[0] is not None and len(node.args) == 1 and "{" in texts[0]:
            yield "", texts[0]
    elif texts[0] is not None:
        yield "", texts[0]


def said() -> dict[tuple[str, str], None]:
    """Every text of the tool, without those of vocabularies, which have catalogues of their own."""
    return dict.fromkeys(
        (context, text) for room in ROOMS for context, text in said_in(ROOT / "koirules" / room) if text.strip()
    )


TEMPLATE = ROOT / "koirules" / "languages" / "texts.pot"


def template() -> str:
    """What stands in the template of catalogues."""
    return written_catalogue(
        "", (("", context, text, "") for context, text in sorted(said(), key=lambda one: one[::-1]))
    )


if __name__ == "__main__":
    TEMPLATE.write_text(template(), encoding="utf-8", newline="\n")
