"""`koirules note` at a terminal of 60 columns and 20 rows: whatever is said, the answer fits under it."""

import pytest

from tests.benchmarks.notes import lines
from tests.commands.noted_terminal import Noting

pytest.importorskip("pty")


def rows_of(text, columns=60):
    """How many rows of a terminal a text takes."""
    return sum(max(1, -(-len(line) // columns)) for line in text.splitlines())


def test_a_terminal_of_60_by_20_suffices(tmp_path):
    out = tmp_path / "lot.csv"
    session = Noting(["tosai_kohaku", "--out", out], columns=60, rows=20)
    assert rows_of(session.opening) <= 19
    assert session.says("all: health well, whole").startswith("all: health well")
    first = session.says("big white: hi on one eye, 14 cm, out")
    assert first.startswith("big white: hi on eyes 1 of them, length 14 cm, verdict out | ")
    assert session.says("flibbert").startswith('big white: not understood: "flibbert" | ')
    assert session.says("back") == "taken back: flibbert\n"
    asked = session.says("?")
    assert asked.startswith("big white hangs on:\n")
    assert rows_of(asked) <= 19
    for line in lines(12):
        shown = session.says(line)
        assert shown.startswith(f"{line.partition(':')[0]}: ")
        # The line itself and the next prompt stand on the screen too.
        assert rows_of(shown) + rows_of(line) + 1 <= 20, shown
    assert session.ends() in {0, 1}
    assert "1 of them" in out.read_text(encoding="utf-8")


def test_a_second_session_on_the_same_sheet_is_refused(tmp_path):
    out = tmp_path / "lot.csv"
    session = Noting(["tosai_kohaku", "--out", out])
    session.says("1: sandan")
    second = Noting(["tosai_kohaku", "--out", out])
    assert second.child.wait(30) == 2
    assert "lot.csv" in second.opening
    assert session.ends() == 0
