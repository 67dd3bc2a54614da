"""Plants small faults in the code and counts how many the tests see: `python tests/benchmarks/mutation.py [COUNT [SEED]]`.

Comparison, arithmetic, constant, and/or, negation and deletion mutants of the rooms below, COUNT of them drawn by the seed (500
and 1 by default). Each is tried in a copy of the checkout, by the tests of its room, two at a time. Prints the survivors; those
that change nothing that can be seen are listed in EQUIVALENT, each with the reason.
"""

from __future__ import annotations

import ast
import os
import random
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from queue import Queue

ROOT = Path(__file__).parents[2]

ROOMS = {
    "koirules/meaning": (
        "tests/meaning",
        "tests/engines",
        "tests/judge",
        "tests/grading",
        "tests/properties/test_agreement.py",
        "tests/outside",
    ),
    "koirules/rounds": (
        "tests/rounds",
        "tests/grading",
        "tests/commands/test_rounds.py",
        "tests/rulesets",
        "tests/outside",
    ),
    "koirules/vocabulary": ("tests/vocabulary", "tests/formats", "tests/grading", "tests/outside", "tests/measures"),
}
"""Each room with the tests that are asked, in this order; a test that is not there is passed over."""

EQUIVALENT: dict[str, str] = {}
"""Mutants that nobody can see, as `file:line: what`, with the reason."""

_COMPARISONS = {
    ast.Lt: ast.LtE,
    ast.LtE: ast.Lt,
    ast.Gt: ast.GtE,
    ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
}
_ARITHMETIC = {ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.FloorDiv, ast.FloorDiv: ast.Mult, ast.Div: ast.Mult}


def sites(path: Path) -> Iterator[tuple[int, int]]:
    """The places of a file that can be mutated: the number of the node and its line."""
    for at, node in enumerate(ast.walk(ast.parse(path.read_text(encoding="utf-8")))):
        if _is_site(node):
            yield at, getattr(node, "lineno", 0)


def _is_site(node: ast.AST) -> bool:
    match node:
        case ast.Compare(ops=[op, *_]):
            return type(op) in _COMPARISONS
        case ast.BinOp(op=op):
            return type(op) in _ARITHMETIC
        case ast.BoolOp() | ast.UnaryOp(op=ast.Not()):
            return True
        case ast.Constant(value=value):
            return isinstance(value, bool | int | float)
        case ast.FunctionDef(body=[*_, last]):
            return len(node.body) > 1 and not isinstance(last, ast.Return)
    return False


def mutated(path: Path, at: int) -> tuple[str, str]:
    """What is done to a node, and the whole text afterwards."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    node = next(node for number, node in enumerate(ast.walk(tree)) if number == at)
    what = _change(node)
    return what, ast.unparse(ast.fix_missing_locations(tree))


def _change(node: ast.AST) -> str:
    match node:
        case ast.Compare(ops=[op, *_]):
            node.ops[0] = _COMPARISONS[type(op)]()
            return f"{type(op).__name__} to {type(node.ops[0]).__name__}"
        case ast.BinOp(op=op):
            node.op = _ARITHMETIC[type(op)]()
            return f"{type(op).__name__} to {type(node.op).__name__}"
        case ast.BoolOp(op=op):
            node.op = ast.Or() if isinstance(op, ast.And) else ast.And()
            return f"{type(op).__name__} to {type(node.op).__name__}"
        case ast.UnaryOp(op=ast.Not()):
            node.operand = ast.UnaryOp(ast.Not(), node.operand)
            return "not taken out"
        case ast.Constant(value=bool()):
            node.value = not node.value
            return f"constant {not node.value} to {node.value}"
        case ast.Constant(value=int() | float()):
            node.value = node.value + 1
            return f"constant {node.value - 1} to {node.value}"
        case ast.FunctionDef():
            node.body[-1] = ast.Pass()
            return f"last statement of {node.name} deleted"
    raise AssertionError(node)


def tried(room: str, path: Path, text: str, folder: Path) -> bool:
    """Whether a test fails with a file of another text."""
    target = folder / path.relative_to(ROOT)
    before = target.read_text(encoding="utf-8")
    target.write_text(text, encoding="utf-8")
    tests = [test for test in ROOMS[room] if (folder / test).exists()]
    clean = {**os.environ, "PYTHONPATH": str(folder), "KOIRULES_CACHE": "off", "PYTHONDONTWRITEBYTECODE": "1"}
    words = [sys.executable, "-m", "pytest", "-x", "-q", "-n0", "-p", "no:cacheprovider", "--hypothesis-seed=1", *tests]
    try:
        done = subprocess.run(words, cwd=folder, env=clean, capture_output=True, check=False, timeout=900)
    except subprocess.TimeoutExpired:
        return True
    finally:
        target.write_text(before, encoding="utf-8")
    return done.returncode != 0


def main(count: int, seed: int) -> None:
    every = [
        (room, path, at, line)
        for room in ROOMS
        for path in sorted((ROOT / room).rglob("*.py"))
        for at, line in sites(path)
    ]
    chosen = random.Random(seed).sample(every, min(count, len(every)))
    folders: Queue[Path] = Queue()
    unseen = shutil.ignore_patterns(".git", ".venv", "__pycache__", ".hypothesis", ".mypy_cache", ".pytest_cache")
    with tempfile.TemporaryDirectory() as top:
        for number in range(2):
            folder = Path(top) / str(number)
            shutil.copytree(ROOT, folder, ignore=unseen)
            folders.put(folder)

        def one(job: tuple[str, Path, int, int]) -> tuple[str, bool]:
            room, path, at, line = job
            what, text = mutated(path, at)
            folder = folders.get()
            try:
                return f"{path.relative_to(ROOT)}:{line}: {what}", tried(room, path, text, folder)
            finally:
                folders.put(folder)

        killed = 0
        survivors = []
        with ThreadPoolExecutor(2) as pool:
            for done, (name, seen) in enumerate(pool.map(one, chosen), 1):
                killed += seen
                if not seen:
                    survivors.append(name)
                    print(
                        f"{name}{'  (equivalent: ' + EQUIVALENT[name] + ')' if name in EQUIVALENT else ''}", flush=True
                    )
                if sys.stderr.isatty():
                    print(f"\r{done} of {len(chosen)}", end="", file=sys.stderr)
    counted = len(chosen) - sum(name in EQUIVALENT for name in survivors)
    print(f"{killed} of {counted} mutants killed ({killed / max(counted, 1):.0%}), of {len(every)} that there are")


if __name__ == "__main__":
    asked = [int(word) for word in sys.argv[1:3]]
    main(*asked, *(500, 1)[len(asked) :])
