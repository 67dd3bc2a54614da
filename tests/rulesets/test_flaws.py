"""No serious flaw leaves an ideal fish at the best grade, in any standard that is shipped.

The rows of `serious.csv` come from what trade texts say. The list was drafted before any rule was changed by it, but it is no
blind test: some rows were dropped after results were seen. `dropped.csv` lists those rows, and what the standards make of each;
a second reader of the domain notes added what these name and no standard takes for serious.
Keys are those of the domain notes of this project: H numbers are texts, C is common practice without a single source. The
table of serious flaws stands in the NOTES.md of each rule set; `--refresh-cases` writes it anew.
"""

from __future__ import annotations

import csv
import re
from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.analysis.flaws import fish_with, flaw_table, flaws_for, read_flaws
from koirules.commands import main
from tests.rulesets.shipped import COMMON, FOLDERS, flaws, standard

SERIOUS = Path(__file__).with_name("serious.csv")
LISTED = read_flaws(SERIOUS)
DROPPED = read_flaws(SERIOUS.with_name("dropped.csv"))
BEGIN = "## An ideal fish, and each single serious flaw\n"
INTRODUCTION = (
    "Each row is an ideal fish of this page with one thing wrong. Made by `koirules flaws RULES --serious "
    "tests/rulesets/serious.csv`; the source is a key of the trade texts, C common practice.\n\n"
)


def section_of(name: str) -> str:
    """The section of NOTES.md as it should stand."""
    return f"{BEGIN}\n{INTRODUCTION}{flaw_table(flaws(name), flaws_for(standard(name).rules, LISTED))}"


def test_the_table_of_serious_flaws_reads() -> None:
    with SERIOUS.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert len(rows) == len({(row["trait"], row["value"], row["stages"], row["varieties"]) for row in rows})
    assert [row["trait"] for row in rows if not re.fullmatch(r"(C|H[0-9]+)( (C|H[0-9]+))*", row["key"])] == []
    # Each is met by some standard, so that none is misspelt.
    met = {flaw for name in FOLDERS for flaw in flaws_for(standard(name).rules, LISTED)}
    assert [flaw for flaw in LISTED if flaw not in met] == []


def test_a_dropped_row_is_met_by_some_standard_and_is_not_listed_as_serious() -> None:
    twice = []
    for name in FOLDERS:
        rules = standard(name).rules
        listed = {(flaw.trait, flaw.value) for flaw in flaws_for(rules, LISTED)}
        twice += [(name, flaw) for flaw in flaws_for(rules, DROPPED) if (flaw.trait, flaw.value) in listed]
    assert twice == []
    met = {flaw for name in FOLDERS for flaw in flaws_for(standard(name).rules, DROPPED)}
    assert [flaw for flaw in DROPPED if flaw not in met] == []


@pytest.mark.parametrize("name", FOLDERS)
def test_every_standard_builds_on_the_common_page_of_its_stage(name: str) -> None:
    rules = standard(name).rules
    common = COMMON[rules.stage or ""]
    if name == common:
        return
    named = [base.named for base in rules.source.chain]
    assert common in named
    # What the common page says no better than stays in force: the page may replace a fault, and drops none.
    of_base = {limit.name for limit in standard(common).rules.limits}
    assert of_base - {limit.name for limit in rules.limits} == set()


@pytest.mark.parametrize("name", FOLDERS)
def test_no_serious_flaw_leaves_an_ideal_fish_at_the_best_grade(name: str) -> None:
    found = flaws(name)
    best = standard(name).grades[0]
    assert found.ideal.result.possible == (best,)
    assert found.ideal.result.faults == ()
    graded = {flaw: fish_with(found, flaw)[1] for flaw in flaws_for(standard(name).rules, LISTED)}
    assert [f"{flaw.trait} {flaw.value}" for flaw, fish in graded.items() if fish.result.possible == (best,)] == []


@pytest.mark.parametrize("name", FOLDERS)
def test_a_dropped_row_still_leaves_the_best_grade(name: str) -> None:
    # A row that a standard has come to answer belongs in serious.csv again.
    found = flaws(name)
    graded = {flaw: fish_with(found, flaw)[1] for flaw in flaws_for(standard(name).rules, DROPPED)}
    best = (standard(name).grades[0],)
    assert [f"{flaw.trait} {flaw.value}" for flaw, fish in graded.items() if fish.result.possible != best] == []


@pytest.mark.parametrize("name", FOLDERS)
def test_the_notes_of_a_rule_set_hold_its_table(name: str, refresh_cases: bool) -> None:
    notes = FOLDERS[name] / "NOTES.md"
    text = notes.read_text(encoding="utf-8")
    before, found, rest = text.partition(BEGIN)
    after = rest[rest.find("\n## ") + 1 :] if "\n## " in rest else ""
    if refresh_cases:
        parts = [before.rstrip("\n"), section_of(name).rstrip("\n"), after.rstrip("\n")]
        notes.write_text("\n\n".join(part for part in parts if part) + "\n", encoding="utf-8")
        return
    assert found
    assert f"{found}{rest[: len(rest) - len(after)]}".rstrip("\n") == section_of(name).rstrip("\n")


def test_the_command_prints_the_table() -> None:
    arguments = ["flaws", str(FOLDERS["tosai_kohaku"]), "--serious", str(SERIOUS)]
    printed = CliRunner().invoke(main, arguments)
    assert printed.exit_code == 0
    assert printed.stdout in section_of("tosai_kohaku")
    every = CliRunner().invoke(main, ["flaws", str(FOLDERS["tosai_kohaku"]), "--ideal"])
    assert "spine straight" in every.stdout
    assert "| spine | bent | cull |" in every.stdout


def test_a_list_of_flaws_that_lacks_columns_is_refused_in_words(tmp_path: Path) -> None:
    (tmp_path / "lot.csv").write_text("fish,trait\n1,kiwa\n", encoding="utf-8")
    done = CliRunner().invoke(main, ["flaws", "tosai_kohaku", "--serious", str(tmp_path / "lot.csv")])
    assert done.exit_code == 2
    assert "it has no column value, stages, varieties, key" in " ".join(done.output.split())
