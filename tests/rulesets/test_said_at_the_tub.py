"""The example of notes: what was said, the records and the results that stand beside it are what the commands make of it."""

import shutil
from pathlib import Path

from click.testing import CliRunner

from koirules.commands import main

FOLDER = Path(__file__).resolve().parents[2] / "examples" / "13-said-at-the-tub"


def test_the_notes_come_to_the_records_and_results_beside_them(tmp_path, monkeypatch):
    for name in ("standard.koi", "notes.txt"):
        shutil.copy(FOLDER / name, tmp_path)
    monkeypatch.chdir(tmp_path)
    noted = CliRunner().invoke(main, ["note", "standard.koi", "notes.txt", "--out", "lot.csv"])
    assert noted.exit_code == 1  # one remark is left for the reader to teach
    assert 'phrase "quite splendid" means …' in noted.output
    graded = CliRunner().invoke(main, ["grade", "standard.koi", "lot.csv", "--out", "results.csv"])
    assert graded.exit_code == 1
    assert "39: quite splendid" in graded.output
    for name in ("lot.csv", "results.csv"):
        # After a change that was meant: run the two commands of the README, then read what changed.
        assert Path(name).read_text(encoding="utf-8") == (FOLDER / name).read_text(encoding="utf-8")
