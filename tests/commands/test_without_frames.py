"""Without the extra `frames`, whatever needs it says how to install it; nothing is written."""

import subprocess
import sys

import pytest

HOUSE = """standard "house (invented)" edition 1
trait length "length" as number in cm from 0 to 90
section s worth 100
points p by length: 0 cm gives 0, 90 cm gives 100
grade keep otherwise
"""
BLOCKED = "import sys; sys.modules['polars'] = sys.modules['narwhals'] = sys.modules['pyarrow'] = None\n"
COMMAND = "from koirules.commands import main; main(sys.argv[1:])"
LIBRARY = """
import koirules
standard = koirules.load_standard("house.koi")
try:
    standard.grade_frame({"length": [14]})
except koirules.EngineError as error:
    sys.exit(str(error))
"""


@pytest.fixture
def house(tmp_path):
    (tmp_path / "house.koi").write_text(HOUSE, encoding="utf-8")
    for name in ("one.csv", "two.csv"):
        (tmp_path / name).write_text("fish,length (cm)\nA1,14\n", encoding="utf-8")
    return tmp_path


@pytest.mark.parametrize(
    ("code", "words", "status"),
    [
        (COMMAND, ["grade", "house.koi", "one.csv", "--out", "x.parquet"], 2),
        (COMMAND, ["grade", "house.koi", "one.csv", "two.csv"], 2),
        (COMMAND, ["check", "--engines", "house.koi"], 2),
        (LIBRARY, [], 1),
    ],
)
def test_what_needs_frames_says_how_to_install_them(house, code, words, status):
    done = subprocess.run(
        [sys.executable, "-c", BLOCKED + code, *words], cwd=house, capture_output=True, text=True, check=False
    )
    assert done.returncode == status, done.stderr
    assert "Traceback" not in done.stderr
    assert 'pip install "koirules[frames]"' in done.stderr
    assert not (house / "x.parquet").exists()


def test_records_are_graded_without_frames(house):
    command = [sys.executable, "-c", BLOCKED + COMMAND, "grade", "house.koi", "one.csv"]
    done = subprocess.run(command, cwd=house, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
