"""What the system refuses, a full disk or a name that no file can have, is told with what was and what was not written."""

from __future__ import annotations

import resource
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main

RULES = (
    'standard "Teal Yard house standard" edition 1 variety kohaku\ngrade a if length above 3 cm\ngrade b otherwise\n'
)


@pytest.fixture(autouse=True)
def _files(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    Path("r.koi").write_text(RULES, encoding="utf-8")
    Path("f.csv").write_text("fish,length\na,4\n", encoding="utf-8")


def nearly_full() -> None:
    """No file may grow beyond a kibibyte, which the system says as it says that a disk is full."""
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (1024, 1024))


def on_a_full_disk(*words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "koirules", *words],
        capture_output=True,
        text=True,
        check=False,
        preexec_fn=nearly_full,
    )


def test_a_full_disk_is_told_with_what_was_written_and_what_was_not() -> None:
    Path("page.html").write_text("as it was", encoding="utf-8")
    told = on_a_full_disk("grade", "r.koi", "f.csv", "--out", "page.html", "--out", "small.csv", "--replace")
    assert told.returncode == 2
    assert "Wrote small.csv." in told.stdout + told.stderr
    assert "problem: page.html\n  It was not written: there is no room" in told.stderr
    assert "Not everything was written." in told.stderr
    assert Path("page.html").read_text(encoding="utf-8") == "as it was"
    assert sorted(path.name for path in Path().iterdir()) == ["f.csv", "page.html", "r.koi", "small.csv"]


@pytest.mark.parametrize("words", [("sheet", "kohaku", "--out", "s.xlsx"), ("handbook", "r.koi", "--out", "h.html")])
def test_nothing_half_written_is_left_on_a_full_disk(words: tuple[str, ...]) -> None:
    told = on_a_full_disk(*words)
    assert told.returncode == 2
    assert "Make room on the disk" in told.stderr
    assert "Nothing was written." in told.stderr
    assert sorted(path.name for path in Path().iterdir()) == ["f.csv", "r.koi"]


@pytest.mark.parametrize("words", [("check", "r.koi"), ("--help",), ("grade", "r.koi", "f.csv"), ("explain",)])
def test_what_cannot_be_printed_is_told_in_one_line(words: tuple[str, ...]) -> None:
    with Path("/dev/full").open("w", encoding="utf-8") as full:  # full(4) of Linux: each write fails with ENOSPC
        told = subprocess.run(
            [sys.executable, "-m", "koirules", *words], stdout=full, stderr=subprocess.PIPE, text=True, check=False
        )
    assert told.returncode == 2
    assert "The system refused what the command prints: no space left on device." in told.stderr
    assert "Traceback" not in told.stderr
    assert "Exception ignored" not in told.stderr


@pytest.mark.parametrize(
    "words",
    [
        ("tidy", "a\0b.koi"),
        ("handbook", "r.koi", "--out", "a\0b.html"),
        ("sheet", "kohaku", "--out", "a\0b.csv"),
        ("grade", "r.koi", "a\0b.csv"),
        ("grade", "r.koi", "f.csv", "--out", "a\0b.csv"),
    ],
)
def test_a_name_with_the_character_nul_is_told(words: tuple[str, ...]) -> None:
    told = CliRunner().invoke(main, words)
    assert told.exit_code == 2
    assert "NUL" in told.stderr
