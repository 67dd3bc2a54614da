"""Rule files that read today read the same tomorrow: ten pages, frozen with their seals and results.

The pages, records and results were copied on 2026-11-30, before what silence means, phrases and looks came into the language.
Nothing refreshes the results. A change of the model of growth may move what `grown to` gives: the pages that read it, and their
figures that changed, are listed below with the reason. What a person is told (`why`, the words of a reason) is not frozen.
"""

import json
from pathlib import Path

import pytest

from koirules import load_standard
from koirules.records.decision_files import read_decisions
from koirules.records.records import read_records
from koirules.testing import registry_with

FOLDER = Path(__file__).resolve().parents[1] / "cases" / "frozen"
PAGES = sorted(path.parent for path in FOLDER.glob("*/page.koi"))
REGROWN: dict[tuple[str, str], tuple[str, frozenset[str]]] = {}
"""By page and fish: why a figure that reads `grown to` is another one than on the day of the copy, and which are."""


def results_of(folder: Path) -> list[str]:
    """What comes of a page, a line of JSON each: its seal and warnings, then every fish."""
    standard = load_standard(folder / "page.koi", registry_with())
    batch = read_records(folder / "records.csv", standard.traits)
    assert batch.problems == ()
    decided = read_decisions(folder / "decisions.csv")[0] if (folder / "decisions.csv").exists() else ()
    outcome = standard.grade_records(batch.records, decided)
    lines = [{"seal": standard.seal, "warnings": [one.code for one in standard.warnings]}]
    lines += [
        {
            "fish": one.fish,
            "possible": one.possible,
            "score": [str(one.score_low), str(one.score_high)],
            "sections": {name: [str(part.low), str(part.high)] for name, part in one.sections.items()},
            "faults": one.faults,
            "lifts": one.lifts,
            "by_rules": one.by_rules,
            "course": [[step.round, step.fate.value, step.place, step.open, step.sent] for step in one.course],
            "reasons": [
                [
                    reason.kind,
                    reason.name,
                    None if reason.state is None else reason.state.value,
                    reason.outcome,
                    None if reason.points_low is None else [str(reason.points_low), str(reason.points_high)],
                ]
                for reason in one.reasons
            ],
        }
        for one in outcome.results
    ]
    return [json.dumps(line, ensure_ascii=False) for line in lines]


def test_there_are_ten():
    assert len(PAGES) == 10


@pytest.mark.parametrize("folder", PAGES, ids=lambda folder: folder.name)
def test_a_frozen_page_reads_and_grades_as_on_the_day_of_its_copy(folder):
    expected = (folder / "results.jsonl").read_text(encoding="utf-8").splitlines()
    found = results_of(folder)
    assert found[0] == expected[0]
    assert len(found) == len(expected) > 1
    for line, frozen in zip(found[1:], expected[1:], strict=True):
        if line != frozen:
            now, then = json.loads(line), json.loads(frozen)
            changed = {key for key in then if now[key] != then[key]}
            assert (folder.name, now["fish"]) in REGROWN, changed
            assert changed == REGROWN[folder.name, now["fish"]][1]


def test_only_what_grows_may_have_moved():
    for (page, _), (reason, _) in REGROWN.items():
        assert reason
        assert " grown to " in (FOLDER / page / "page.koi").read_text(encoding="utf-8")
