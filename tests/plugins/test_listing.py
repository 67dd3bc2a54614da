"""The list of plugins from the cache is the one that Python gives, and an installation of any kind makes it anew."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from importlib.machinery import PathFinder
from importlib.metadata import MetadataPathFinder
from pathlib import Path
from typing import Any

import pytest

from koirules import cache
from koirules.plugins import listing
from tests.plugins.installing import Install, installer

CODE = "KOIRULES_API = 2\n"


@pytest.fixture
def install(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Install]:
    (tmp_path / "site").mkdir()
    monkeypatch.setenv(cache.VARIABLE, str(tmp_path / "kept"))
    finders = [one for one in sys.meta_path if one is PathFinder or not hasattr(one, "find_distributions")]
    monkeypatch.setattr(sys, "meta_path", finders)
    # Where a test before imported the backport `importlib_metadata`, that has put its own finder in the place of Python's.
    find = staticmethod(MetadataPathFinder.find_distributions)
    monkeypatch.setattr(PathFinder, "find_distributions", find, raising=False)
    yield from installer(tmp_path / "site", monkeypatch)


@pytest.fixture
def asked(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """A word for each time that Python was asked."""
    seen: list[str] = []
    real = listing._asked

    def ask() -> Any:
        seen.append("asked")
        return real()

    monkeypatch.setattr(listing, "_asked", ask)
    return seen


def names() -> list[str]:
    return [one.source for one in listing.box_and_plugins()[1] if one.source.startswith("invented")]


def test_it_is_asked_once(install: Install, asked: list[str]) -> None:
    install("invented-a", CODE)
    first = listing.box_and_plugins()
    assert listing.box_and_plugins() == first
    assert names() == ["invented-a 1.2"]
    assert listing.box_source() == first[0]
    assert asked == ["asked"]


def test_what_was_kept_is_loaded_like_any_other(install: Install) -> None:
    install("invented-a", CODE)
    for _ in range(2):
        (one,) = (each for each in listing.box_and_plugins()[1] if each.source == "invented-a 1.2")
        assert one.module == "invented_a_plugin"
        assert getattr(one.load(), "KOIRULES_API", None) == 2


@pytest.mark.parametrize("change", ["another", "removed", "points", "version"])
def test_a_change_to_what_is_installed_is_seen(install: Install, change: str, tmp_path: Path) -> None:
    install("invented-a", CODE)
    assert names() == ["invented-a 1.2"]
    info = tmp_path / "site" / "invented_a-1.2.dist-info"
    match change:
        case "another":
            install("invented-b", CODE)
            assert sorted(names()) == ["invented-a 1.2", "invented-b 1.2"]
        case "removed":
            info.rename(tmp_path / "elsewhere")
            assert names() == []
        case "points":
            (info / "entry_points.txt").write_text("[other]\nx = y\n", encoding="utf-8")
            assert names() == []
        case "version":
            (info / "METADATA").write_text("Metadata-Version: 2.1\nName: invented-a\nVersion: 1.10\n", encoding="utf-8")
            assert names() == ["invented-a 1.10"]


def test_broken_metadata_is_told_each_time(install: Install, tmp_path: Path) -> None:
    install("invented-a", CODE)
    (tmp_path / "site" / "invented_a-1.2.dist-info" / "entry_points.txt").write_bytes(b"[koirules]\n\xff\xfe = \xff\n")
    for _ in range(2):
        with pytest.raises(UnicodeDecodeError):
            listing.box_and_plugins()


@pytest.mark.parametrize("off", [True, False])
def test_it_is_asked_each_time_with_another_finder_or_without_a_cache(
    install: Install, asked: list[str], monkeypatch: pytest.MonkeyPatch, off: bool
) -> None:
    class Finder:
        @staticmethod
        def find_distributions(*_: object) -> Iterator[object]:
            return iter(())

        @staticmethod
        def find_spec(*_: object) -> None:
            return None

    install("invented-a", CODE)
    if off:
        monkeypatch.setenv(cache.VARIABLE, "off")
    else:
        monkeypatch.setattr(sys, "meta_path", [*sys.meta_path, Finder])
    assert names() == names() == ["invented-a 1.2"]
    assert len(asked) == 2


@pytest.mark.parametrize("damage", [b"", b"[]", b'["", [["a"]]]', b"{"])
def test_a_list_that_was_cut_off_is_made_again(
    install: Install, asked: list[str], tmp_path: Path, damage: bytes
) -> None:
    install("invented-a", CODE)
    names()
    (kept,) = (tmp_path / "kept" / "plugins").iterdir()
    kept.write_bytes(damage)
    assert names() == names() == ["invented-a 1.2"]
    assert len(asked) == 2
