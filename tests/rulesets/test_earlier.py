"""The earlier editions of rule sets that are shipped: they read, keep their seals, and are what a page based on them goes by."""

from __future__ import annotations

import pytest

from koirules import load_standard, read_standard
from koirules.records.records import read_records
from tests.rulesets import shipped

SEALS = {
    "fry_ginrin_kohaku-2026-1": "1-9791a37830671dfd0f94207ba341eb3b6b96d60f9ca6ad0c13454a8caad6c4c5",
    "fry_ginrin_kohaku-2026-2": "2-2e9f8dcadcecebaf08ae14fc2be423568f12036f88578afd34fb28ee35735906",
    "fry_kohaku-2026-1": "1-a7321a8785439516bbae235390d45f64c835a6d8b380e92ccbbb9c2706cbd165",
    "fry_taisho_sanke-2026-1": "1-e1f4c974efedeb7567dc095b0bdf6b79d975818118f82d98bfb61f26fe9c11b4",
    "fry_taisho_sanke-2026-2": "2-5f234349d874334879fc6f8f5ead51c4a29f3afdbd561182cb0ba197da8bb613",
    "tosai_goshiki-2026-1": "1-2b2979681de2950aa88fd820a77ce41c1f8e234edd1e774a652a6a497237c2a9",
    "tosai_goshiki-2026-2": "2-92028f5f9a5e10ee9c2fb29c361ff937f31fe1a57d8963ed37224307d76ad0fb",
}
"""The seal of each, as pages name it: from the time when it was the edition that was shipped."""


def test_each_file_is_the_earlier_edition_of_a_rule_set_and_has_its_seal_written_down() -> None:
    kept = {path.stem for folder in shipped.FOLDERS.values() for path in folder.glob("earlier/*")}
    assert kept == set(SEALS)


@pytest.mark.parametrize("name", SEALS)
def test_an_earlier_edition_reads_well_keeps_its_seal_and_its_samples(name: str) -> None:
    earlier = load_standard(name, shipped.registry())
    ruleset, _, edition = name.partition("-")
    assert (earlier.edition, earlier.seal, earlier.warnings) == (edition, SEALS[name], ())
    assert shipped.standard(ruleset).edition != edition


@pytest.mark.parametrize("name", SEALS)
def test_a_page_based_on_an_earlier_edition_goes_by_it(name: str) -> None:
    registry = shipped.registry()
    ruleset, _, edition = name.partition("-")
    page = read_standard(
        f'standard "Reed Pool (invented)" edition 1\n  based on "{ruleset}" edition {edition} seal {SEALS[name]}\n',
        registry=registry,
    )
    earlier = load_standard(name, registry)
    records = read_records(shipped.FOLDERS[ruleset] / "records.csv", earlier.traits).records
    assert records
    for record in records:
        assert page.grade_record(record).possible == earlier.grade_record(record).possible


def test_a_hooded_fry_stays_by_the_earlier_edition_alone() -> None:
    """The change of the edition 2026-2 of fry_kohaku, as its page says it."""
    hooded = {"length": "38 mm", "spine": "straight", "whole": "yes", "hi_cover": "60 %", "head_hi": "hood"}
    by = {
        edition: load_standard(name, shipped.registry()).grade(hooded).possible
        for edition, name in (("2026-1", "fry_kohaku-2026-1"), ("2026-2", "fry_kohaku"))
    }
    assert "stay" in by["2026-1"]
    assert "stay" not in by["2026-2"]
