"""What a standard is for: `for show` and `for sorting` change cautions and seals, and no grade."""

import pytest

import koirules
from koirules.builtin.koi import KOI
from koirules.plugins import registry_with
from koirules.standard.canonical import seal_of

BOX = registry_with()
PAGE = 'standard "Teal Yard" edition 2026-1 variety kohaku {}\ngrade keep if length above 10 cm\ngrade sell otherwise\n'


def standard(occasion: str) -> koirules.Standard:
    return koirules.read_standard(PAGE.format(occasion), registry=BOX)


@pytest.mark.parametrize(("said", "kind"), [("", "sorting"), ("for sorting", "sorting"), ("for show", "show")])
def test_the_cautions_are_those_of_the_occasion(said, kind):
    assert standard(said).cautions == KOI.cautions[kind]


def test_a_show_speaks_of_its_own_dangers_and_of_no_fish_that_is_not_kept():
    told = " ".join(standard("for show").cautions.all)
    for word in ("water", "Transport", "Quarantine", "nets", "Stress", "Notifiable disease", "authority", "vet"):
        assert word in told
    assert not {"kill", "cull", "rehomed"} & set(told.replace(",", " ").split())


def test_the_occasion_changes_no_grade_and_a_page_without_it_keeps_its_form():
    fish = {"length": "12 cm"}
    plain, show = standard(""), standard("for show")
    assert plain.grade(fish).grade == show.grade(fish).grade == "keep"
    assert plain.seal.startswith("1-")
    assert show.seal.startswith("2-")
    assert "for show" in show.canonical_text
    assert seal_of(plain.rules) != seal_of(show.rules)


def test_a_page_takes_the_occasion_of_its_base_unless_it_says_its_own(tmp_path):
    (tmp_path / "base.koi").write_text(PAGE.format("for show"), encoding="utf-8")
    for own, kind in (("", "show"), ("for sorting", "sorting")):
        page = tmp_path / "page.koi"
        page.write_text(f'standard "Own" edition 1 {own} based on "base.koi" edition 2026-1\n', encoding="utf-8")
        assert koirules.load_standard(page, registry=BOX).rules.occasion == kind
