"""What commands import the second time: neither what only notes need, nor what reads rule files, nor what measures maps."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
UNNEEDED = ("numpy", "shapely", "lark", "polars", "rich.console", "koirules.notes", "koirules.builtin.said")
OF_PAGES = ("koirules.language.statements", "koirules.language.syntax", "koirules.language.parse.reader")
OF_STANDARDS = ("koirules.standard", "koirules.grading", "koirules.engines", "koirules.api")
RUN = """
import atexit, sys
from koirules.commands import main
atexit.register(lambda: print("imported", *sys.modules, file=sys.stderr))
main(sys.argv[1:])
"""


@pytest.mark.parametrize(
    ("words", "unneeded"),
    [
        (["check", "tosai_kohaku"], (*UNNEEDED, *OF_PAGES, *OF_STANDARDS)),
        (["grade", "tosai_kohaku", "examples/01-autumn-lot/records.csv"], (*UNNEEDED, *OF_PAGES)),
    ],
    ids=["check", "grade"],
)
def test_the_second_time_little_is_imported(tmp_path: Path, words: list[str], unneeded: tuple[str, ...]) -> None:
    told = [
        subprocess.run(
            [sys.executable, "-c", RUN, *words],
            cwd=ROOT,
            env={**os.environ, "KOIRULES_CACHE": str(tmp_path / "kept"), "PYTHONPATH": str(ROOT)},
            capture_output=True,
            text=True,
            check=True,
        )
        for _ in range(2)
    ]
    assert told[0].stdout == told[1].stdout
    (imported,) = (line.split()[1:] for line in told[1].stderr.splitlines() if line.startswith("imported "))
    assert [name for name in imported if name.startswith(unneeded)] == []
