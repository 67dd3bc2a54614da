"""What `grade` shows on a terminal of 24 lines, and how exact `why` is."""

from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main

LOT = Path(__file__).parents[2] / "examples" / "01-autumn-lot" / "records.csv"
LINES, COLUMNS = 24, 80


def output(monkeypatch, *given):
    monkeypatch.setenv("COLUMNS", str(COLUMNS))
    result = CliRunner().invoke(main, [str(word) for word in given])
    assert result.exit_code == 0, result.output
    return result.stdout


def test_the_best_fish_are_on_the_last_screen(monkeypatch):
    last = output(monkeypatch, "grade", "tosai_kohaku", LOT).splitlines()[-(LINES - 1) :]
    best = [line.split()[0] for line in last if "  keep  " in line]
    assert best == ["L09", "M17", "M13", "U06", "M26", "L01", "U12", "L05", "L16", "M15"]
    assert all(len(line) <= COLUMNS for line in last if line.split()[0] in best)
    assert "keep 10, hold 15, sell 22" in "\n".join(last)
    assert "is no instruction to kill" in " ".join(" ".join(last).split())


def test_all_lists_every_fish_and_the_whole_of_the_cautions(monkeypatch):
    told = output(monkeypatch, "grade", "tosai_kohaku", LOT, "--all")
    listed = [line.split()[0] for line in told.splitlines() if line[1:4].strip() and line[1] in "LMU"]
    assert len(listed) == 72
    assert "lawful in your country" in " ".join(told.split())


def test_a_small_batch_is_listed_in_full(monkeypatch, tmp_path):
    few = tmp_path / "few.csv"
    few.write_text("fish,length,kiwa\nA,14,sharp\nB,13,fair\n", encoding="utf-8")
    assert "--all" not in output(monkeypatch, "grade", "tosai_kohaku", few)


@pytest.mark.parametrize(
    ("options", "shown", "hidden"),
    [((), "today 65 %, when grown: 39.4 % to 59.8 %", "64.996734"), (("--exact",), "64.996734 %", "today 65 %")],
)
def test_numbers_are_rounded_for_people_unless_all_digits_are_asked_for(monkeypatch, options, shown, hidden):
    told = " ".join(output(monkeypatch, "why", "tosai_kohaku", LOT, "L22", *options).split())
    assert shown in told
    assert hidden not in told
