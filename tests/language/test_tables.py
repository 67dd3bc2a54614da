"""The parser is the same, whether its tables were made before or now, and whatever is wrong with those made before."""

from __future__ import annotations

import pickle
from collections.abc import Iterator
from pathlib import Path

import lark
import pytest
from lark import Lark
from lark import lexer as lark_lexer

from koirules.cache import VARIABLE
from koirules.language.parse import tables
from koirules.language.parse.cleaning import clean
from koirules.language.parse.reader import _pieces
from koirules.language.parse.tables import grammar, grammar_text, packed_tables

ROOT = Path(__file__).parents[2]
PAGES = [
    *ROOT.glob("rulesets/*/*.koi"),
    *ROOT.glob("plugins/*/*/rulesets/*/*.koi"),
    *ROOT.glob("tests/cases/tidy/*.koi"),
]


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    monkeypatch.setenv(VARIABLE, str(tmp_path / "kept"))
    tables._grammar.cache_clear()
    yield tmp_path / "kept" / "grammar"
    tables._grammar.cache_clear()


def built_anew(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Every grammar that is built from now on."""
    built: list[str] = []
    real = tables._built

    def build(text: str) -> Lark:
        built.append(text)
        return real(text)

    monkeypatch.setattr(tables, "_built", build)
    return built


def test_tables_made_before_read_every_statement_as_those_made_now() -> None:
    text = grammar_text()
    before = tables._unpacked(tables._digest(text), packed_tables())
    assert before is not None
    now = tables._built(text)
    count = 0
    for page in PAGES:
        for piece in _pieces(clean(page.read_text(encoding="utf-8"), page.name), page.name, []):
            count += 1
            assert _tree(before, piece.text) == _tree(now, piece.text)
    assert count > 500


def _tree(parser: Lark, text: str) -> object:
    try:
        return parser.parse(text)
    except lark.UnexpectedInput as error:
        return type(error), error.pos_in_stream


def test_they_are_made_once_for_a_user(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    built = built_anew(monkeypatch)
    grammar()
    tables._grammar.cache_clear()
    grammar()
    assert len(built) == 1
    assert len([*folder.iterdir()]) == 1


@pytest.mark.parametrize("what", ["cut off", "another grammar", "a pickle", "not a table"])
def test_tables_that_do_not_fit_are_made_again(folder: Path, monkeypatch: pytest.MonkeyPatch, what: str) -> None:
    grammar()
    (file,) = folder.iterdir()
    good = file.read_bytes()
    match what:
        case "cut off":
            file.write_bytes(good[:-100])
        case "another grammar":
            file.write_bytes(b"0" * 64 + good[64:])
        case "a pickle":
            file.write_bytes(good[:64] + pickle.dumps(print))
        case "not a table":
            file.write_bytes(good[:64] + b"N")
    tables._grammar.cache_clear()
    built = built_anew(monkeypatch)
    assert grammar().parse("grade a otherwise")
    assert len(built) == 1
    assert tables._unpacked(file.name, file.read_bytes()) is not None


@pytest.mark.usefixtures("folder")
def test_tables_of_another_lark_are_not_used(monkeypatch: pytest.MonkeyPatch) -> None:
    grammar()
    tables._grammar.cache_clear()
    built = built_anew(monkeypatch)
    monkeypatch.setattr(lark, "__version__", "1.3.999")
    grammar()
    assert len(built) == 1


def test_tables_in_the_wheel_go_before_those_of_the_user(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    shipped = tmp_path / "grammar.tables"
    shipped.write_bytes(packed_tables())
    monkeypatch.setattr(tables, "TABLES", shipped)
    built = built_anew(monkeypatch)
    grammar()
    assert built == []
    assert not folder.exists() or not [*folder.iterdir()]


def test_building_compares_no_terminals_although_interegular_is_there(folder: Path) -> None:
    assert lark_lexer.has_interegular, "the test group brings interegular along"
    told: list[str] = []
    real = lark_lexer.interegular.Comparator.from_regexes
    lark_lexer.interegular.Comparator.from_regexes = lambda *given: told.append("compared") or real(*given)
    try:
        grammar()
    finally:
        lark_lexer.interegular.Comparator.from_regexes = real
    assert told == []
    assert lark_lexer.has_interegular
    assert folder.exists()


def test_what_is_no_plain_data_is_not_written() -> None:
    with pytest.raises(TypeError, match="hold a builtin_function"):
        tables._check({"callbacks": [print]})
