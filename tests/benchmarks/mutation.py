"""Plants small faults in the code and counts what tests see: `python tests/benchmarks/mutation.py [COUNT [SEED [FOLDER]]]`.

Comparison, arithmetic, constant, and/or, negation and deletion mutants of the rooms below, COUNT of them drawn by the seed (500
and 1 by default). A change of the code draws few others: each place has its own lot, from its file, its function and its text.
The tests run once with coverage, each test as a context. Each mutant is then tried in a copy of the checkout by the tests that
reach its line: the quickest first, then those of the file that is named after its module and of ASKED_FIRST, then others drawn
by the seed, as many as take a minute. A line that runs at import is tried by the tests of its room, those in the file that is
named after its module before all others. What is called killed was seen by a test; what survives may still be seen by a test
that was not drawn.
Prints the survivors; those that change nothing that can be seen are listed in EQUIVALENT, each with the reason.

FOLDER keeps what the tests reach, and which mutants were killed and which not: a second run with it goes on where the first one
ended. Delete `reached.json` and `survived.jsonl` in it where there are new tests, so that these are asked too.
"""

from __future__ import annotations

import ast
import hashlib
import json
import os
import random
import shutil
import subprocess
import sys
import tempfile
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from importlib.util import cache_from_source
from pathlib import Path
from queue import Queue

import coverage
from attrs import frozen
from defusedxml import ElementTree

ROOT = Path(__file__).parents[2]

ROOMS = {
    "koirules/meaning": ("tests/meaning", "tests/judge", "tests/grading"),
    "koirules/rounds": ("tests/grading", "tests/commands/test_rounds.py", "tests/rulesets"),
    "koirules/vocabulary": ("tests/vocabulary", "tests/formats", "tests/measures", "tests/notes"),
}
"""Each room with the tests that are asked about a line that runs at import."""

TESTS = (
    (
        "tests/meaning",
        "tests/judge",
        "tests/grading",
        "tests/measures",
        "tests/notes",
        "tests/commands",
        "tests/outside",
        "tests/properties/test_agreement.py",
        "tests/properties/test_batch_agreement.py",
        "tests/properties/test_looks_agreement.py",
        "tests/properties/test_map_laws.py",
        "tests/properties/test_open_rounds_laws.py",
        "tests/properties/test_panel_agreement.py",
        "tests/properties/test_selection_agreement.py",
        "tests/properties/test_whole_batch_agreement.py",
    ),
    (
        "tests/language",
        "tests/vocabulary",
        "tests/formats",
        "tests/rulesets",
        "tests/analysis",
        "tests/builtin",
        "tests/classes",
        "tests/editing",
        "tests/loading",
        "tests/prizes",
        "tests/report",
        "tests/standard",
        "tests/properties/test_reader_laws.py",
        "tests/program",
        "tests/plugins/test_measures.py",
        "tests/plugins/test_sayings.py",
        "tests/plugins/test_skins.py",
        "tests/plugins/test_units.py",
        "tests/plugins/test_wellformed.py",
    ),
)
"""The tests that are asked at all, in two halves that run beside each other."""

QUICKEST, DRAWN = 40, 200
"""How many tests try a mutant first, and at most how many more where none of these sees it."""

SECONDS = 60
"""How long those drawn may take together, as they took under coverage."""

NEVER_ENDS = 600
"""Seconds after which a mutant counts as seen: its tests do not end."""

EQUIVALENT: dict[str, str] = {
    "koirules/meaning/planes.py, PlaneSets.where: True: constant True to False": "both sets have as many members",
    "koirules/rounds/columnar/earlier.py, _with_codes: True: constant True to False": "codes may stand in any order",
    "koirules/rounds/columnar/figures.py, _Valued.lacks: self.values.null_count() > 0: Gt to GtE": "asks for ends that are one",
    "koirules/rounds/columnar/of_nodes.py, NodePlans.get: len(self._made) >= _MOST_PLANS: GtE to Gt": "one plan more is kept",
    "koirules/rounds/figure_ends.py, Members: False: constant False to True": "cached properties work with slots and without",
    "koirules/rounds/looks.py, _sortings: 1 (5): constant 1 to 2": "sorting is stable: the first stands first in any case",
    "koirules/rounds/node_values.py, _give_outcome: 1: constant 1 to 2": "the grade of a fish in a round is always known",
    "koirules/vocabulary/conditions.py, _end: abs(value - near) <= _SHORT: LtE to Lt": "values have six decimals at most",
    "koirules/vocabulary/conditions.py, opposite_of: 1 (5): constant 1 to 2": "bits beyond the places are not looked at",
    "koirules/vocabulary/conditions.py, _with_worse: 1 (11): constant 1 to 2": "the lowest bit is not set in any case",
    "koirules/vocabulary/conditions.py, _with_worse: 1 (15): constant 1 to 2": "bits beyond the steps are not looked at",
    "koirules/vocabulary/conditions.py, _with_worse: 1 (6): constant 1 to 2": "the lowest bit is not set in any case",
    "koirules/vocabulary/plain_text.py, numbers_of_a_date: 0: constant 0 to 1": "the first two are the same, and sorted",
    "koirules/vocabulary/conditions.py, _with_worse: 1 (9): constant 1 to 2": "bits beyond the steps are not looked at",
    "koirules/vocabulary/wordings.py, _same: 32768: constant 32768 to 32769": "a memory is bounded",
    "koirules/vocabulary/nearness.py, _near: 10000: constant 10000 to 10001": "no distance is as large",
    "koirules/rounds/columnar/of_nodes.py, NodeColumns.without_rows: 0: constant 0 to 1": "rows are put in before they are read",
    "koirules/vocabulary/maps.py, _ring: 0 (2): constant 0 to 1": "a ring without corners begins nowhere",
    "koirules/vocabulary/maps.py, _rings: 1: constant 1 to 2": "of -1 the sign alone is read",
    "koirules/vocabulary/phrases.py, Choices: True: constant True to False": "a hash that is kept is the same",
    "koirules/rounds/tallies.py, FigureTable.ends: standing and own: And to Or": "a finer key of a memory",
    "koirules/meaning/planes.py, PlaneSets.common: True: constant True to False": "both sets have as many members",
    "koirules/meaning/planes.py, PlaneSets.either: True: constant True to False": "both sets have as many members",
    "koirules/rounds/columnar/figures.py, _Ordered.squares: True: constant True to False": "all three are told of each group",
    "koirules/rounds/columnar/picks.py, : 4096: constant 4096 to 4097": "rows are walked in pieces, of whatever size",
    "koirules/rounds/columnar/picks.py, _crowded_in: len(hopes) > quota: Gt to GtE": "so many others stand above none of so many",
    "koirules/rounds/tallies.py, Counts: False: constant False to True": "cached properties work with slots and without",
    "koirules/vocabulary/rounding.py, round_to: 1: constant 1 to 2": "of the number the exponent alone is read",
    "koirules/vocabulary/words.py, scripts_in: 1: constant 1 to 2": "the first word of a name is read alone",
    "koirules/rounds/columnar/figures.py, _Ordered.of: 0: constant 0 to 1": "nothing is known there",
    "koirules/rounds/node_values.py, one_value: value.bit_length() - 1: Sub to Add": "steps are compared with steps alone",
}
"""Mutants that nobody can see, as `file, function: text of the place: what`, with the reason."""

ASKED_FIRST: dict[str, str] = {
    "koirules/meaning/expressions.py": "tests/language/test_reader.py",
    "koirules/rounds/columnar/kept_rows.py": "tests/runs/test_selection.py",
    "koirules/rounds/columnar/picks.py": "tests/grading/test_picks.py",
    "koirules/rounds/course_words.py": "tests/grading/test_looks.py",
    "koirules/rounds/looks.py": "tests/grading/test_looks.py",
    "koirules/vocabulary/colour_readings.py": "tests/measures/test_colour.py",
    "koirules/vocabulary/maps.py": "tests/vocabulary/test_outlines.py",
    "koirules/vocabulary/measures.py": "tests/plugins/test_measures.py",
    "koirules/vocabulary/quantities.py": "tests/vocabulary/test_share_or_part.py",
    "koirules/vocabulary/readings.py": "tests/vocabulary/test_shorthand.py",
    "koirules/vocabulary/traits.py": "tests/grading/test_growth.py",
    "koirules/meaning/aggregates.py": "tests/meaning/test_figure_ends.py",
    "koirules/meaning/algebra.py": "tests/meaning/test_tables.py",
    "koirules/rounds/columnar/figures.py": "tests/grading/test_figures_in_rounds.py",
    "koirules/vocabulary/drawings.py": "tests/plugins/test_drawings.py",
    "koirules/vocabulary/wellformed.py": "tests/plugins/test_wellformed.py",
    "koirules/vocabulary/wordings.py": "tests/language/test_problem_cases.py",
}
"""The tests of a module whose name is another one: they and those of its name are asked before those drawn."""

_COMPARISONS = {
    ast.Lt: ast.LtE,
    ast.LtE: ast.Lt,
    ast.Gt: ast.GtE,
    ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
}
_ARITHMETIC = {ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.FloorDiv, ast.FloorDiv: ast.Mult, ast.Div: ast.Mult}


@frozen
class Site:
    """A place that can be mutated. at: the number of its node; run: the lines that run it; name: the same after other changes.

    text: of the whole file, as it was when the run began.
    """

    room: str
    path: Path
    text: str
    at: int
    line: int
    run: range
    name: str

    def lot(self, seed: int) -> bytes:
        """What decides whether it is drawn: the smallest are."""
        return hashlib.sha256(f"{seed} {self.name}".encode()).digest()


def sites(room: str, path: Path) -> Iterator[Site]:
    """The places of a file that can be mutated."""
    text = path.read_text(encoding="utf-8")
    tree = ast.parse(text)
    within: dict[ast.AST, str] = {}
    counted: Counter[str] = Counter()
    for at, node in enumerate(ast.walk(tree)):
        inside = within.get(node, "")
        if isinstance(node, ast.FunctionDef | ast.ClassDef):
            inside = f"{inside}.{node.name}".strip(".")
        for child in ast.iter_child_nodes(node):
            within[child] = inside
        if not _is_site(node):
            continue
        is_function = isinstance(node, ast.FunctionDef)
        run = node.body[-1] if is_function else node
        lines = range(getattr(run, "lineno", 0), (getattr(run, "end_lineno", 0) or 0) + 1)
        name = f"{path.relative_to(ROOT)}, {inside}: {'its end' if is_function else ast.unparse(node)}"
        counted[name] += 1
        name += f" ({counted[name]})" if counted[name] > 1 else ""
        yield Site(room, path, text, at, getattr(node, "lineno", 0), lines, name)


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


def mutated(text: str, at: int) -> tuple[str, str]:
    """What is done to a node, and the whole text afterwards."""
    tree = ast.parse(text)
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


def reached(folders: Sequence[Path]) -> tuple[dict[str, dict[int, set[str]]], dict[str, float]]:
    """Which tests reach each line of each file, and how many seconds each test takes. folders: copies, one for each half."""
    lines: dict[str, dict[int, set[str]]] = {}
    seconds: dict[str, float] = {}
    with ThreadPoolExecutor(len(TESTS)) as pool:
        for by_file, took in pool.map(_reached, folders, TESTS):
            seconds |= took
            for file, by_line in by_file.items():
                for line, tests in by_line.items():
                    lines.setdefault(file, {}).setdefault(line, set()).update(tests)
    return lines, seconds


def _reached(folder: Path, tests: Sequence[str]) -> tuple[dict[str, dict[int, set[str]]], dict[str, float]]:
    report, data = folder / "tests.xml", folder / ".coverage"
    asked = [test for test in tests if (folder / test).exists()]
    words = ["--cov=koirules", "--cov-context=test", "--cov-report=", f"--junitxml={report}", *asked]
    _pytest(folder, *words, timeout=7200)
    seconds, failing = {}, set()
    for case in ElementTree.parse(report).iter("testcase"):
        test = f"{case.get('classname', '').replace('.', '/')}.py::{case.get('name', '')}"
        seconds[test] = float(case.get("time", 0))
        if case.find("failure") is not None or case.find("error") is not None:
            failing.add(test)
    for test in sorted(failing):
        del seconds[test]
        print(f"{test} fails without a mutant, and is not asked", file=sys.stderr, flush=True)
    found = coverage.CoverageData(str(data))
    found.read()
    assert len(found.measured_contexts()) > 1, "coverage did not tell the tests apart"
    rooms = tuple(str(folder / room) for room in ROOMS)
    lines = {}
    for file in found.measured_files():
        if file.startswith(rooms):
            by_line = found.contexts_by_lineno(file).items()
            reaching = {
                line: {one.partition("|")[0] for one in contexts if one} - failing for line, contexts in by_line
            }
            lines[str(Path(file).relative_to(folder))] = reaching
    return lines, seconds


def _pytest(folder: Path, *words: str, timeout: int = NEVER_ENDS) -> subprocess.CompletedProcess[bytes]:
    clean = {**os.environ, "PYTHONPATH": str(folder), "KOIRULES_CACHE": "off", "OMP_NUM_THREADS": "1"}
    clean.pop("PYTHONDONTWRITEBYTECODE", None)
    # One process: with others, coverage does not know which test runs.
    options = [
        "-o",
        "addopts=--import-mode=importlib",
        "-p",
        "no:cacheprovider",
        "--hypothesis-seed=1",
        "--hypothesis-profile=unshrunk",
    ]
    command = [sys.executable, "-m", "pytest", "-q", *options, *words]
    return subprocess.run(command, cwd=folder, env=clean, capture_output=True, check=False, timeout=timeout)


def tried(path: Path, text: str, folder: Path, batches: list[list[str]]) -> bool:
    """Whether a test fails with a file of another text."""
    target = folder / path.relative_to(ROOT)
    before = target.read_text(encoding="utf-8")
    compiled = Path(
        cache_from_source(str(target))
    )  # known by second and size alone: a mutant may have those of another
    compiled.unlink(missing_ok=True)
    target.write_text(text, encoding="utf-8")
    try:
        return any(_pytest(folder, "-x", *batch).returncode != 0 for batch in batches if batch)
    except subprocess.TimeoutExpired:
        return True
    finally:
        compiled.unlink(missing_ok=True)
        target.write_text(before, encoding="utf-8")


def _batches(site: Site, reaching: set[str], seconds: Mapping[str, float], seed: int) -> list[list[str]]:
    tests = reaching or {test for test in seconds if test.startswith(ROOMS[site.room])}
    own = () if reaching else tuple(test for test in tests if f"/test_{site.path.stem}.py::" in test)
    quickest = sorted(sorted(tests), key=lambda test: (test not in own, seconds.get(test, 1.0)))
    first, rest = quickest[:QUICKEST], quickest[QUICKEST:]
    drawn, left = [], float(SECONDS)
    for test in random.Random(seed).sample(rest, min(DRAWN, len(rest))):
        if seconds.get(test, 1.0) <= left:
            drawn.append(test)
            left -= seconds.get(test, 1.0)
    named = sorted(str(path.relative_to(ROOT)) for path in (ROOT / "tests").rglob(f"test_{site.path.stem}.py"))
    also = ASKED_FIRST.get(str(site.path.relative_to(ROOT)))
    return [first, [test for test in dict.fromkeys((also, *named)) if test is not None], drawn]


class Kept:
    """What a folder keeps from run to run."""

    def __init__(self, folder: Path) -> None:
        folder.mkdir(parents=True, exist_ok=True)
        self._reached = folder / "reached.json"
        self._files = {seen: folder / f"{'killed' if seen else 'survived'}.jsonl" for seen in (True, False)}
        self._tried: dict[tuple[str, str], bool] = {}
        for seen in (False, True):
            written = self._files[seen].read_text(encoding="utf-8") if self._files[seen].exists() else ""
            for line in written.splitlines():
                name, digest = json.loads(line)
                self._tried[name, digest] = seen

    def reached(self, folders: Sequence[Path]) -> tuple[dict[str, dict[int, set[str]]], dict[str, float]]:
        if not self._reached.exists():
            lines, seconds = reached(folders)
            as_lists = {file: {str(at): sorted(tests) for at, tests in of.items()} for file, of in lines.items()}
            self._reached.write_text(json.dumps([as_lists, seconds]), encoding="utf-8")
        lines, seconds = json.loads(self._reached.read_text(encoding="utf-8"))
        return {file: {int(at): set(tests) for at, tests in of.items()} for file, of in lines.items()}, seconds

    def was_seen(self, name: str, text: str) -> bool | None:
        """Whether tests saw a mutant in an earlier run, None where it was not tried."""
        return self._tried.get((name, _digest(text)))

    def keep(self, name: str, text: str, *, seen: bool) -> None:
        with self._files[seen].open("a", encoding="utf-8") as file:
            file.write(json.dumps([name, _digest(text)]) + "\n")


def _digest(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()


def main(count: int, seed: int, kept: Kept) -> None:
    assert all((ROOT / test).exists() for test in ASKED_FIRST.values())
    every = [site for room in ROOMS for path in sorted((ROOT / room).rglob("*.py")) for site in sites(room, path)]
    chosen = sorted(every, key=lambda site: site.lot(seed))[:count]
    free: Queue[Path] = Queue()
    unseen = shutil.ignore_patterns(".git", ".venv", "__pycache__", ".hypothesis", ".mypy_cache", ".pytest_cache")
    with tempfile.TemporaryDirectory() as top:
        folders = [Path(top) / str(number) for number in range(len(TESTS))]
        for folder in folders:
            shutil.copytree(ROOT, folder, ignore=unseen)
            free.put(folder)
        lines, seconds = kept.reached(folders)

        def one(site: Site) -> tuple[Site, str, bool]:
            what, text = mutated(site.text, site.at)
            name = f"{site.name}: {what}"
            if (known := kept.was_seen(name, text)) is not None:
                return site, name, known
            by_line = lines.get(str(site.path.relative_to(ROOT)), {})
            reaching = set().union(*(by_line.get(one, set()) for one in (*site.run, site.line)))
            folder = free.get()
            try:
                seen = tried(site.path, text, folder, _batches(site, reaching, seconds, seed))
            finally:
                free.put(folder)
            kept.keep(name, text, seen=seen)
            return site, name, seen

        survivors = []
        with ThreadPoolExecutor(len(TESTS)) as pool:
            for done, (site, name, seen) in enumerate(pool.map(one, chosen), 1):
                if not seen:
                    survivors.append(name)
                    why = f"  (equivalent: {EQUIVALENT[name]})" if name in EQUIVALENT else ""
                    print(f"line {site.line} of {name}{why}", flush=True)
                print(f"\r{done} of {len(chosen)}, {len(survivors)} survive ", end="", file=sys.stderr, flush=True)
    killed = len(chosen) - len(survivors)
    counted = len(chosen) - sum(name in EQUIVALENT for name in survivors)
    print(f"{killed} of {counted} mutants killed ({killed / max(counted, 1):.1%}), of {len(every)} that there are")


if __name__ == "__main__":
    asked = [int(word) for word in sys.argv[1:3]]
    with tempfile.TemporaryDirectory() as passing:
        main(*asked, *(500, 1)[len(asked) :], Kept(Path((sys.argv[3:] or [passing])[0])))
