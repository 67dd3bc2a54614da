"""Plugins are found where distributions are installed, in the same order everywhere, and can break nothing."""

from __future__ import annotations

from pathlib import Path

import pytest

from koirules.plugins import Registry, load_registry
from tests.plugins.installing import Install, installer

GIVES = """
from koirules.hooks import hookimpl
from koirules.vocabulary.kinds import YesNo
from koirules.vocabulary.traits import Trait, Vocabulary


KOIRULES_API = 1


@hookimpl
def koirules_vocabularies():
    return [Vocabulary("{name}", "{name}", (Trait("{trait}", "{trait}", YesNo()),))]
"""


install = pytest.fixture(installer, name="install")


def problems_with(distribution: str, registry: Registry) -> list[tuple[str, str]]:
    """The problems that name a distribution; the machine may have plugins of its own."""
    return [(problem.code, problem.cause) for problem in registry.problems if distribution in str(problem.site)]


def test_an_installed_plugin_is_found_with_its_distribution_and_version(install: Install) -> None:
    install("invented-koi", GIVES.format(name="invented_lace", trait="net"))
    registry = load_registry()
    assert list(registry.varieties["invented_lace"].traits) == ["net"]
    assert registry.sources["invented_lace"] == "invented-koi 1.2"
    assert "kohaku" in registry.varieties


def test_the_registry_is_made_once(install: Install) -> None:
    install("invented-koi", GIVES.format(name="invented_lace", trait="net"))
    assert load_registry() is load_registry()


def test_a_plugin_that_raises_at_import_is_left_out(install: Install) -> None:
    file = install("invented-koi", "raise RuntimeError('out of paper')")
    registry = load_registry()
    why = f"RuntimeError: out of paper, in {file}, line 1"
    assert problems_with("invented-koi", registry) == [
        ("plugin-raises", f"The plugin was left out. It failed when it was imported ({why}).")
    ]
    assert "kohaku" in registry.varieties


def test_a_plugin_that_exits_at_import_is_left_out(install: Install) -> None:
    install("invented-koi", "raise SystemExit")
    assert [code for code, _ in problems_with("invented-koi", load_registry())] == ["plugin-raises"]


def test_a_plugin_with_a_mistake_in_its_code_is_left_out(install: Install) -> None:
    install("invented-koi", "def koirules_vocabularies(:\n")
    assert [code for code, _ in problems_with("invented-koi", load_registry())] == ["plugin-raises"]


def test_of_two_installed_plugins_with_the_same_name_the_first_by_distribution_stays(install: Install) -> None:
    install("invented-b", GIVES.format(name="invented_lace", trait="from_b"))
    install("invented-a", GIVES.format(name="invented_lace", trait="from_a"))
    registry = load_registry()
    assert list(registry.varieties["invented_lace"].traits) == ["from_a"]
    assert [code for code, _ in problems_with("invented-b", registry)] == ["plugin-clash"]
    assert "lace of invented-a 1.2" in problems_with("invented-b", registry)[0][1]


def test_the_box_is_asked_once_although_it_has_an_entry_point(install: Install, tmp_path: Path) -> None:
    install("koirules", "")
    points = tmp_path / "koirules-1.2.dist-info" / "entry_points.txt"
    points.write_text("[koirules]\nbuiltin = koirules.builtin\n", encoding="utf-8")
    registry = load_registry()
    assert problems_with("koirules 1.2", registry) == []
    assert registry.sources["kohaku"] == "koirules 1.2"


def test_a_half_removed_distribution_takes_nothing_down(install: Install) -> None:
    install("invented-koi", GIVES.format(name="invented_lace", trait="net"), version=None)
    registry = load_registry()
    # A finder of distributions that other libraries bring along leaves half of one out.
    assert registry.sources.get("invented_lace", "an unknown distribution") == "an unknown distribution"
    assert "kohaku" in registry.varieties


def test_an_unreadable_list_of_plugins_takes_nothing_down(install: Install, tmp_path: Path) -> None:
    install("invented-koi", "")
    (tmp_path / "invented_koi-1.2.dist-info" / "entry_points.txt").write_bytes(b"[koirules]\n\xff\xfe = \xff\n")
    registry = load_registry()
    assert "kohaku" in registry.varieties
    assert [problem.code for problem in registry.problems] == ["plugins-unlisted"]
