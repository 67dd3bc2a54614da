"""The library behaves as a Python person expects: short reprs, copies, pickles, equality, frozen results, plain text out."""

from __future__ import annotations

import copy
import pickle
import subprocess
import sys
from importlib.metadata import version
from pathlib import Path

import pytest
from attrs.exceptions import FrozenInstanceError

import koirules
from tests.repo.snippets import whole

ROOT = Path(__file__).parents[2]
BATCH = [
    {"fish": "K1", "length": "14 cm", "spine": "straight", "hi_patches": "8 to 26 left 60 right 55"},
    {"fish": "K2", "length": "13 cm to 15 cm"},
    {"fish": "K3", "length": "12 cm", "spine": "bent"},
]


@pytest.fixture(scope="module")
def standard() -> koirules.Standard:
    return koirules.load_standard(ROOT / "rulesets" / "tosai_kohaku")


@pytest.fixture(scope="module")
def batch(standard: koirules.Standard) -> koirules.BatchResult:
    return standard.grade_batch(BATCH)


def test_the_module_says_what_it_has_and_its_version() -> None:
    assert set(koirules.__all__) < set(dir(koirules))
    assert all(getattr(koirules, name) is not None for name in dir(koirules))
    assert koirules.__version__ == version("koirules")
    with pytest.raises(AttributeError, match="no attribute 'nothing'"):
        _ = koirules.nothing


def test_reprs_are_one_short_line(standard: koirules.Standard, batch: koirules.BatchResult) -> None:
    assert repr(standard).startswith(
        f"Standard('{standard.title}', edition='{standard.edition}', seal='{standard.seal[:6]}"
    )
    assert "keep_line=80" in repr(standard.with_settings({"keep_line": 80}))
    notes = standard.read_notes("7: sharp, mumble\n8: sharp")
    questions = standard.questions({})
    changed = standard.compare(standard.with_settings({"keep_line": 80}), BATCH)
    assert questions
    things = [standard, batch, *batch.results, batch.results[1].reasons, *batch.results[1].reasons]
    things += [notes, *notes.fish, *questions, changed]
    for thing in things:
        assert len(repr(thing)) < 400
        assert "\n" not in repr(thing)


def test_a_standard_is_copied_and_pickled_as_what_it_says(standard: koirules.Standard) -> None:
    changed = standard.with_settings({"keep_line": 80})
    for one in (standard, changed):
        one.grade(BATCH[0])  # what was compiled stays behind
        for twin in (pickle.loads(pickle.dumps(one)), copy.deepcopy(one), copy.copy(one)):
            assert twin == one
            assert hash(twin) == hash(one)
            assert twin.grade(BATCH[1]) == one.grade(BATCH[1])
    assert standard != changed


def test_a_standard_goes_to_another_process(standard: koirules.Standard, tmp_path: Path) -> None:
    file = tmp_path / "standard.pickle"
    file.write_bytes(pickle.dumps(standard))
    code = "import pickle, sys; print(pickle.load(open(sys.argv[1], 'rb')).grade({'length': '14 cm'}).score_high)"
    told = subprocess.run([sys.executable, "-c", code, str(file)], cwd=ROOT, capture_output=True, text=True, check=True)
    assert told.stdout.strip() == str(standard.grade({"length": "14 cm"}).score_high)


def test_results_are_frozen_and_hashable_and_equal_to_their_copies(batch: koirules.BatchResult) -> None:
    result = batch.results[1]
    with pytest.raises(FrozenInstanceError):
        result.fish = "K9"  # type: ignore[misc]
    with pytest.raises(TypeError):
        result.sections["body"] = None  # type: ignore[index]
    for twin in (pickle.loads(pickle.dumps(batch)), copy.deepcopy(batch)):
        assert twin == batch
        assert hash(twin) == hash(batch)
        for one, other in zip(twin.results, batch.results, strict=True):
            assert one.reasons == other.reasons
            assert one.why == other.why
            assert one.nearest_changes() == other.nearest_changes()


def test_rounds_are_pickled_with_their_words() -> None:
    made = koirules.read_standard(whole('round first "first look"\n  keep those with length at least 13 cm'))
    batch = made.grade_batch(BATCH)
    assert any(result.course for result in batch.results)
    twin = pickle.loads(pickle.dumps(batch))
    assert [[step.why for step in one.course] for one in twin.results] == [
        [step.why for step in one.course] for one in batch.results
    ]
