"""The example of notes: what was said, the records and the results that stand beside it are what the commands make of it."""

import csv
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
    assert 'phrase "knocks on the door" means …' in noted.output
    graded = CliRunner().invoke(main, ["grade", "standard.koi", "lot.csv", "--out", "results.csv"])
    assert graded.exit_code == 1
    assert "39: knocks on the door" in graded.output
    # After a change that was meant: run the two commands of the README, then read what changed.
    assert records(Path("lot.csv")) == records(FOLDER / "lot.csv")
    assert grades(Path("results.csv")) == grades(FOLDER / "results.csv")
    rows = {row["fish"]: row for row in grades(Path("results.csv"))}
    assert rows["2"]["possible"] == "hold"  # red over one eye, whichever: two would have been no better than sell
    assert (rows["7"]["grade"], rows["40"]["grade"]) == ("keep", "pond")  # the second look counts; bent


def records(path):
    """What stands in a file of records, without the mark of the phrases that it was read by."""
    rows = csv.DictReader(path.read_text(encoding="utf-8").splitlines())
    return [{name: cell for name, cell in row.items() if name != "read_by"} for row in rows]


def grades(path):
    """What stands in a file of results, without the words of its reasons."""
    kept = ("fish", "grade", "possible", "score", "score_low", "score_high", "verdict", "unread")
    rows = csv.DictReader(path.read_text(encoding="utf-8").splitlines())
    return [{name: row[name] for name in kept} for row in rows]
