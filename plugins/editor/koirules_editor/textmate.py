"""The TextMate grammar, made of the rules of `highlighting.py`: `python -m koirules_editor.textmate` writes it anew."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

from koirules_editor.highlighting import CLASSES, FILLED, RULES

FILE = Path(__file__).with_name("koirules.tmLanguage.json")


def _scope(kind: str) -> str:
    return f"{CLASSES[kind][1]}.koirules"


def _rule(pattern: str, kinds: tuple[str | None, ...]) -> dict[str, Any]:
    if re.compile(pattern).groups == 0:
        return {"match": pattern, "name": _scope(kinds[0] or "name")}
    captures = {str(group): {"name": _scope(kind)} for group, kind in enumerate(kinds, 1) if kind is not None}
    return {"match": pattern, "captures": captures}


def grammar() -> dict[str, Any]:
    """The grammar as an editor reads it."""
    text = {
        "begin": r'"(?=[^"\n]*")',
        "end": r'"|$',
        "name": _scope("text"),
        "patterns": [{"match": FILLED, "name": _scope("filled")}],
    }
    return {
        "$schema": "https://json.schemastore.org/tmlanguage.json",
        "name": "koirules",
        "scopeName": "source.koirules",
        "fileTypes": ["koi"],
        "patterns": [text, *(_rule(pattern, kinds) for pattern, kinds in RULES)],
    }


def written() -> str:
    """The grammar as its file has it."""
    return json.dumps(grammar(), indent=2, ensure_ascii=True) + "\n"


if __name__ == "__main__":
    FILE.write_text(written(), encoding="utf-8")
