"""Files of decisions: what is read of them, and what is answered."""

from koirules.records.decision_files import read_decisions
from koirules.results.decisions import Decision


def written(tmp_path, text):
    path = tmp_path / "decisions.csv"
    path.write_text(text, encoding="utf-8")
    return read_decisions(path)


def test_decisions_are_read_with_their_rows(tmp_path):
    decided, problems = written(
        tmp_path, "fish,grade,round,by,reason\nA1,keep,,Y.,firm skin\n,,,,\nA2,,house,Y.,kept\n"
    )
    assert not problems
    assert decided == (
        Decision("A1", "keep", "", "Y.", "firm skin", 2),
        Decision("A2", "", "house", "Y.", "kept", 4),
    )


def test_missing_and_unknown_columns_are_answered_all_at_once(tmp_path):
    decided, problems = written(tmp_path, "fish,verdict,by\nA1,keep,Y.\n")
    assert not decided
    assert [problem.code for problem in problems] == ["decision-columns", "decision-columns"]
    assert "grade or round" in problems[1].cause
    assert "reason" in problems[1].cause


def test_a_file_that_is_not_there_is_a_problem(tmp_path):
    decided, problems = read_decisions(tmp_path / "gone.csv")
    assert not decided
    assert [problem.code for problem in problems] == ["no-such-file"]
