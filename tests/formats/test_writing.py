"""Files are written whole or not at all."""

import os
from pathlib import Path

import pytest

from koirules.records.writing import write_beside


def put(text):
    return lambda path: path.write_text(text, encoding="utf-8")


def test_a_file_is_written_and_nothing_else_is_left(tmp_path):
    assert write_beside(tmp_path / "a.csv", put("new")) is None
    assert [path.name for path in tmp_path.iterdir()] == ["a.csv"]
    assert (tmp_path / "a.csv").read_text(encoding="utf-8") == "new"


def test_a_new_file_has_the_permissions_of_any_new_file(tmp_path):
    (tmp_path / "other").touch()
    write_beside(tmp_path / "a.csv", put("new"))
    assert (tmp_path / "a.csv").stat().st_mode == (tmp_path / "other").stat().st_mode


def test_a_file_that_is_replaced_keeps_its_permissions(tmp_path):
    target = tmp_path / "a.csv"
    target.touch(mode=0o640)
    target.chmod(0o640)
    write_beside(target, put("new"))
    assert target.stat().st_mode & 0o777 == 0o640


def test_a_link_stays_a_link_to_the_file_that_is_replaced(tmp_path):
    (tmp_path / "real.csv").write_text("old", encoding="utf-8")
    (tmp_path / "a.csv").symlink_to(tmp_path / "real.csv")
    assert write_beside(tmp_path / "a.csv", put("new")) is None
    assert (tmp_path / "a.csv").is_symlink()
    assert (tmp_path / "real.csv").read_text(encoding="utf-8") == "new"


@pytest.mark.parametrize("error", [OSError(28, "No space left on device"), PermissionError(13, "Permission denied")])
def test_what_stood_there_stays_when_writing_fails_half_way(tmp_path, error):
    target = tmp_path / "a.csv"
    target.write_text("old", encoding="utf-8")

    def produce(path):
        path.write_text("half", encoding="utf-8")
        raise error

    problem = write_beside(target, produce)
    assert problem.code == "unwritable"
    assert target.read_text(encoding="utf-8") == "old"
    assert [path.name for path in tmp_path.iterdir()] == ["a.csv"]


def test_nothing_is_left_when_a_bug_stops_the_writing(tmp_path):
    def produce(path):
        path.write_text("half", encoding="utf-8")
        raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        write_beside(tmp_path / "a.csv", produce)
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_is_not_there_is_a_problem(tmp_path):
    problem = write_beside(tmp_path / "none" / "a.csv", put(""))
    assert (problem.code, str(tmp_path / "none") in problem.cause) == ("no-such-folder", True)


def test_a_folder_of_the_same_name_is_a_problem(tmp_path):
    (tmp_path / "a.csv").mkdir()
    assert write_beside(tmp_path / "a.csv", put("")).code == "unwritable"


def test_a_folder_that_may_not_be_written_to_is_a_problem(tmp_path, monkeypatch):
    def refuse(*_):
        raise PermissionError(13, "Permission denied")

    # Whoever runs as root may write anywhere, so the system's answer is put in its place.
    monkeypatch.setattr(os, "open", refuse)
    problem = write_beside(tmp_path / "a.csv", put(""))
    assert (problem.code, "not allowed" in problem.cause) == ("unwritable", True)


def test_a_name_that_no_system_takes_is_a_problem(tmp_path):
    assert write_beside(Path(f"{tmp_path}/a\0.csv"), put("")).code == "unwritable"
    assert write_beside(tmp_path / ("x" * 300 + ".csv"), put("")).code == "unwritable"
