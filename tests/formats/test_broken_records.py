"""Broken files of records, each with its problems beside it, as a person reads them."""

from pathlib import Path

import pytest

from koirules.problems import is_refused
from koirules.records.records import read_records

CASES = Path(__file__).parents[1] / "cases" / "records"
NAMES = sorted(path.name for path in CASES.iterdir() if path.suffix != ".expected")
ONLY_WARNINGS = {"fractions.csv"}


def problems_of(name, traits, monkeypatch):
    monkeypatch.chdir(CASES)
    return read_records(Path(name), traits).problems


@pytest.mark.parametrize("name", NAMES)
def test_a_broken_file_is_answered_with_every_problem_and_its_mend(name, traits, monkeypatch, refresh_cases):
    found = "".join(f"{problem}\n" for problem in problems_of(name, traits, monkeypatch))
    expected = CASES / f"{name}.expected"
    if refresh_cases:
        expected.write_text(found, encoding="utf-8")
    assert found == expected.read_text(encoding="utf-8")


@pytest.mark.parametrize("name", NAMES)
def test_a_broken_file_is_refused_unless_it_only_asks_for_a_second_look(name, traits, monkeypatch):
    assert is_refused(problems_of(name, traits, monkeypatch)) == (name not in ONLY_WARNINGS)


@pytest.mark.parametrize("name", NAMES)
def test_no_message_holds_what_could_steer_a_terminal(name, traits, monkeypatch):
    for problem in problems_of(name, traits, monkeypatch):
        assert str(problem).isprintable()


def test_there_are_cases_and_each_has_an_expectation():
    assert len(NAMES) >= 10
    assert {path.name for path in CASES.glob("*.expected")} == {f"{name}.expected" for name in NAMES}
