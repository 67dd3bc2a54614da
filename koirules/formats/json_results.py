"""Results as a JSON file, with every reason as an object."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from pathlib import Path

from koirules.formats.about import About
from koirules.grading.results import Reason, Result

# JSON itself escapes what is below a space; these steer terminals too, or cannot be written as UTF-8 alone.
_ESCAPED = {code: f"\\u{code:04x}" for code in (*range(0x7F, 0xA0), *range(0xD800, 0xE000))}


def write_json(path: Path, results: Sequence[Result], about: About) -> None:
    """Write one object: `standard`, `stage`, `settings`, `cautions`, and `results` with one result on each line."""
    with path.open("w", encoding="utf-8", newline="\n") as file:
        for piece in _pieces(results, about):
            file.write(piece)


def _pieces(results: Sequence[Result], about: About) -> Iterator[str]:
    standard = {"title": about.title, "edition": about.edition, "variety": about.variety, "file": about.file}
    yield f'{{\n"standard": {_dumped(standard)},\n'
    yield f'"stage": {_dumped(about.stage)},\n'
    yield f'"settings": {_dumped(dict(about.settings))},\n'
    yield f'"cautions": {_dumped(about.cautions)},\n'
    yield '"results": ['
    for i, result in enumerate(results):
        yield ("," if i else "") + "\n" + _dumped(_result(result))
    yield "\n]\n}\n"


def _dumped(value: object) -> str:
    import json

    return json.dumps(value, ensure_ascii=False, allow_nan=False).translate(_ESCAPED)


def _result(result: Result) -> dict[str, object]:
    sections: dict[str, float | None] = {}
    for name, section in result.sections.items():
        sections |= {f"{name}_low": _number(section.low), f"{name}_high": _number(section.high)}
    return {
        "fish": result.fish,
        "grade": result.grade,
        "possible": result.possible,
        "score": _number(result.score),
        "score_low": _number(result.score_low),
        "score_high": _number(result.score_high),
        **sections,
        "faults": result.faults,
        "lifts": result.lifts,
        "hangs_on": result.hangs_on,
        "why": result.why,
        "labels": dict(result.labels),
        "reasons": [_reason(reason) for reason in result.reasons],
    }


def _reason(reason: Reason) -> dict[str, object]:
    return {
        "kind": reason.kind,
        "name": reason.name,
        "title": reason.title,
        "section": reason.section or None,
        "line": reason.line,
        "words": reason.words,
        "read": reason.read,
        "state": None if reason.state is None else reason.state.value,
        "outcome": reason.outcome or None,
        "points_low": _number(reason.points_low),
        "points_high": _number(reason.points_high),
        "points_most": _number(reason.points_most),
        "score_low": _number(reason.score_low),
        "score_high": _number(reason.score_high),
        "score_most": _number(reason.score_most),
        "left_on_table": _number(reason.left_on_table),
    }


def _number(value: Decimal | None) -> float | None:
    return None if value is None else float(value)
