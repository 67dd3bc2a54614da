"""The example of three years says what its page says, and its files are what its simulation makes."""

import re
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner
from koirules_book.commands import book, learn

EXAMPLE = Path(__file__).parents[3] / "examples" / "15-three-years"


@pytest.fixture(scope="module")
def weirs(tmp_path_factory):
    farm = str(tmp_path_factory.mktemp("weirs") / "weirs.book")
    for words in (
        ["start", farm],
        ["enter", str(EXAMPLE / "sluice.koi"), farm, str(EXAMPLE / "autumn-2024.csv")],
        ["enter", str(EXAMPLE / "sluice.koi"), farm, str(EXAMPLE / "autumn-2025.csv")],
        ["note", farm, "sold", str(EXAMPLE / "sales-2026.csv")],
        ["note", farm, "died", str(EXAMPLE / "deaths.csv")],
    ):
        done = CliRunner().invoke(book, words)
        assert done.exit_code == 0, done.output
    return farm


def shown():
    return re.findall(r"```text\n(.*?)```", (EXAMPLE / "README.md").read_text(encoding="utf-8"), re.DOTALL)


def test_the_files_are_what_the_simulation_makes(tmp_path):
    sys.path.insert(0, str(EXAMPLE))
    import simulate

    simulate.write(tmp_path, 1)
    for path in tmp_path.iterdir():
        assert path.read_bytes() == (EXAMPLE / path.name).read_bytes(), path.name


def test_foresight_finds_what_was_put_in(weirs):
    done = CliRunner().invoke(book, ["foresight", str(EXAMPLE / "sluice.koi"), weirs, "--outcome", "price"])
    assert done.exit_code == 0, done.output
    assert shown()[0] in done.output


def test_learning_finds_the_owners_eye():
    done = CliRunner().invoke(learn, [str(EXAMPLE / "sluice.koi"), str(EXAMPLE / "picks.csv"), "--in", "keep"])
    assert done.exit_code == 0, done.output
    assert shown()[1] in done.output


def test_an_outcome_that_nobody_has_is_told(weirs):
    done = CliRunner().invoke(book, ["foresight", str(EXAMPLE / "sluice.koi"), weirs, "--outcome", "prize"])
    assert done.exit_code == 2
    assert "price, sold, died" in done.output
