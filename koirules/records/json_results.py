"""Results as a JSON file, with every reason as an object."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from decimal import Decimal
from pathlib import Path

from koirules.records.about import About
from koirules.records.not_graded import NotGraded, Row
from koirules.results.course import AlertShown, RoundCourse, Step
from koirules.results.decisions import Decision
from koirules.results.reason import Reason
from koirules.results.result import JudgeResult, LookResult, Result

# JSON itself escapes what is below a space; these steer terminals too, or cannot be written as UTF-8 alone.
_ESCAPED = {code: f"\\u{code:04x}" for code in (*range(0x7F, 0xA0), *range(0xD800, 0xE000))}


def write_json(path: Path, results: Sequence[Row], about: About) -> None:
    """Write one object: `standard`, `stage`, `settings`, `cautions`, and `results` with one result on each line.

    Where several standards graded the batch, `standard` is null and `standards` lists them; each result names its own.
    """
    with path.open("w", encoding="utf-8", newline="\n") as file:
        for piece in _pieces(results, about):
            file.write(piece)


def _pieces(results: Sequence[Row], about: About) -> Iterator[str]:
    yield f'{{\n"standard": {dumped(None if about.parts else _standard(about))},\n'
    if about.parts:
        parts = [{**_standard(part), "stage": part.stage, "settings": dict(part.settings)} for part in about.parts]
        yield f'"standards": {dumped(parts)},\n'
    yield f'"stage": {dumped(about.stage)},\n'
    if about.classes:
        yield f'"class_table": {dumped(about.classes)},\n'
    yield f'"settings": {dumped(dict(about.settings))},\n'
    yield f'"cautions": {dumped(about.cautions)},\n'
    yield f'"alerts": {dumped([_alert(alert) for alert in about.alerts])},\n'
    yield f'"rounds": {dumped([_round(one) for one in about.rounds])},\n'
    yield '"results": ['
    silent = any(result.assumed for result in results if not isinstance(result, NotGraded))
    for i, result in enumerate(results):
        yield ("," if i else "") + "\n" + dumped(_row(result, silent=silent))
    yield "\n]\n}\n"


def _standard(about: About) -> dict[str, object]:
    return {
        "title": about.title,
        "edition": about.edition,
        "seal": about.seal or None,
        "variety": about.variety,
        "file": about.file,
    }


def dumped(value: object, indent: int | None = None) -> str:
    """A value as JSON in which nothing steers a terminal."""
    import json

    return json.dumps(value, ensure_ascii=False, allow_nan=False, indent=indent).translate(_ESCAPED)


def _row(row: Row, *, silent: bool) -> dict[str, object]:
    """silent: whether anything was assumed of any fish because nobody mentioned it."""
    if not isinstance(row, NotGraded):
        told: dict[str, object] = {"assumed": row.assumed, "rests_on_silence": row.rests_on_silence} if silent else {}
        if row.looks or row.carried:
            told |= {"looks": [_look(look) for look in row.looks], "carried": row.carried}
        if row.panel is not None:
            told["panel"] = {
                "words": row.panel.words,
                "missing": row.panel.missing,
                "tied_on": row.panel.split,
                "judges": [_judge(one) for one in row.panel.judges],
            }
        return {**_result(row), **told}
    blank: dict[str, object] = {"grade": None, "possible": [], "score": None, "score_low": None, "score_high": None}
    return {"fish": row.fish, **blank, "why": row.why, "labels": dict(row.labels), "reasons": []}


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
        "decided": [f"{kind} {name}" for kind, name in sorted(result.grounds.decided)],
        "forgiven": [reason.name for reason in result.grounds.forgiven],
        "losses": [reason.name for reason in result.grounds.losses],
        "gains": [reason.name for reason in result.grounds.gains],
        "outside": result.outside or None,
        "unread": result.unread or None,
        "look_again": [{"trait": one.trait, "value": one.value, "why": one.why} for one in result.look_again],
        "decision": None if result.decision is None else _decision(result.decision),
        "by_rules": result.by_rules,
        "kept_by": result.kept_by,
        "left_in": result.left_in,
        "tied_in": result.tied_in,
        "open_in": result.open_in,
        "sent_to": result.sent_to or None,
        "next_look": _day(result.next_look),
        "course": [_step(step) for step in result.course],
        "labels": dict(result.labels),
        "reasons": [_reason(reason) for reason in result.reasons],
    }


def _judge(one: JudgeResult) -> dict[str, object]:
    return {
        "judge": one.judge,
        "grade": one.result.grade,
        "possible": one.result.possible,
        "score_low": _number(one.result.score_low),
        "score_high": _number(one.result.score_high),
        "faults": one.result.faults,
        "why": one.result.why,
    }


def _look(look: LookResult) -> dict[str, object]:
    return {
        "look": look.number,
        "grade": look.grade,
        "possible": look.possible,
        "score_low": _number(look.score_low),
        "score_high": _number(look.score_high),
        "changes": look.changes,
    }


def _alert(alert: AlertShown) -> dict[str, object]:
    return {"name": alert.name, "words": alert.words, "surely": alert.surely, "so_far": alert.so_far}


def _round(one: RoundCourse) -> dict[str, object]:
    return {
        "name": one.name,
        "title": one.title,
        "asks": one.asks,
        "places": one.places,
        "looked_at": one.looked_at,
        "kept": one.kept,
        "left": one.left,
        "ties": [{"fish": tie.fish, "places": tie.places} for tie in one.ties],
        "open": one.open,
        "by_hand": [_decision(decision) for decision in one.by_hand],
        "sent_to": one.sent or None,
        "next_look": _day(one.again),
    }


def _decision(decision: Decision) -> dict[str, object]:
    return {
        "fish": decision.fish,
        "grade": decision.grade or None,
        "round": decision.round or None,
        "by": decision.by,
        "reason": decision.reason,
    }


def _step(step: Step) -> dict[str, object]:
    return {
        "round": step.round,
        "fate": step.fate.value,
        "place": step.place,
        "above": step.above,
        "open": step.open,
        "by_hand": None if step.by_hand is None else _decision(step.by_hand),
        "sent_to": step.sent or None,
        "next_look": _day(step.again),
        "why": step.why,
    }


def _day(day: date | None) -> str | None:
    return None if day is None else day.isoformat()


def _reason(reason: Reason) -> dict[str, object]:
    return {
        "kind": reason.kind,
        "name": reason.name,
        "title": reason.title,
        "section": reason.section or None,
        "file": reason.file or None,
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
