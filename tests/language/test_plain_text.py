"""Every text in a checked standard is a plain `str`: no token of the parser reaches those who use it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Set
from pathlib import Path

import attrs
import pytest

import koirules
from koirules.cache import VARIABLE

ROOT = Path(__file__).parents[2]
PAGES = [*ROOT.glob("rulesets/*/*.koi"), *ROOT.glob("tests/cases/tidy/*.koi"), *ROOT.glob("examples/*/standard.koi")]


def texts(value: object, seen: set[int], where: str = "") -> Iterator[tuple[str, str]]:
    if isinstance(value, str):
        yield where, type(value).__name__
    elif id(value) in seen:
        return
    elif attrs.has(type(value)):
        seen.add(id(value))
        for one in attrs.fields(type(value)):
            if not one.name.startswith("_"):
                yield from texts(getattr(value, one.name), seen, f"{type(value).__name__}.{one.name}")
    elif isinstance(value, Mapping):
        seen.add(id(value))
        for pair in value.items():
            yield from texts(pair, seen, where)
    elif isinstance(value, tuple | list | Set):
        seen.add(id(value))
        for part in value:
            yield from texts(part, seen, where)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: f"{page.parent.name}-{page.stem}")
def test_no_text_is_a_token(page: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv(VARIABLE, "off")
    try:
        standard = koirules.load_standard(page)
    except koirules.StandardError as error:
        found = {*texts(error.problems, set())}
    else:
        result = standard.grade({"length": "14 cm"})
        found = {*texts((standard.rules, standard.warnings, result, result.reasons), set())}
        assert len(found) > 30
    assert [one for one in found if one[1] != "str"] == []
