"""Every figure that measures and analyses go by says where it comes from, in the docstring below it."""

import ast
from pathlib import Path

import pytest

from koirules.measures.landmarks import LANDMARKS, LIMITS

KOIRULES = Path(__file__).parents[2] / "koirules"
ROOMS = [*sorted((KOIRULES / "measures").glob("*.py")), *sorted((KOIRULES / "builtin").glob("*.py"))]
FILES = [*ROOMS, KOIRULES / "analysis" / "judges.py", KOIRULES / "vocabulary" / "outlines.py"]
MARKS = ("from memory", "common practice", "no source", "IEC ", "NIST", "Froese", "a bound of computing")
NO_FIGURE = {"KOIRULES_API", "_SEED"}
"""The version of an interface, and the seed of a draw."""


def figures(text: str) -> dict[str, str]:
    """The names that a module gives to numbers, with the docstring below each; "" where there is none."""
    found = {}
    body = ast.parse(text).body
    for one, after in zip(body, [*body[1:], ast.Pass()], strict=True):
        if not isinstance(one, ast.Assign) or not any(numbers(one.value)):
            continue
        told = isinstance(after, ast.Expr) and isinstance(after.value, ast.Constant) and str(after.value.value)
        for target in one.targets:
            found[ast.unparse(target)] = " ".join(told.split()) if told else ""
    return found


def numbers(value: ast.expr) -> list[ast.Constant]:
    """The numbers of a value that is made of numbers alone, in brackets or without."""
    match value:
        case ast.Constant(value=int() | float()) if not isinstance(value.value, bool):
            return [value]
        case ast.Tuple(elts=several):
            return [one for each in several for one in numbers(each)]
        case ast.Call(func=ast.Name(id="Span"), args=several):
            return [one for each in several for one in numbers(each)]
        case _:
            return []


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}-{path.stem}")
def test_a_figure_says_where_it_comes_from(path: Path) -> None:
    found = figures(path.read_text(encoding="utf-8"))
    assert [
        name for name, told in found.items() if name not in NO_FIGURE and not any(mark in told for mark in MARKS)
    ] == []


def test_a_figure_without_a_source_is_found() -> None:
    text = '_A = 3.0\nB, C = 1, 2\n"""Two limits."""\nD = Span(0.1, 0.2)\n"""From 0.1 to 0.2 (from memory)."""\n'
    assert figures(text) == {"_A": "", "(B, C)": "Two limits.", "D": "From 0.1 to 0.2 (from memory)."}


def test_a_landmark_says_where_it_comes_from_to_whoever_reads_the_list() -> None:
    for one in (*LANDMARKS, *LIMITS):
        assert any(mark in one.describe for mark in MARKS), one.name
