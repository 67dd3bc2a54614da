"""The figures of maps from the cache are those that measuring finds, and what they follow from makes them anew."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest

from koirules import cache, load_standard
from koirules.measures import kept_figures, pattern
from koirules.measures.kept_figures import keeping_figures
from koirules.plugins import registry_with
from koirules.results.record import Record
from koirules.vocabulary.maps import Patch, PatchMap, boxed

STANDARD = load_standard("tosai_kohaku", registry_with())
SOUND = PatchMap((boxed(10, 30, -56, 96), boxed(36, 60, -118, 38, 0.5)))
OTHER = PatchMap((boxed(10, 30, -56, 96, thin=True),))


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv(cache.VARIABLE, str(tmp_path / "kept"))
    return tmp_path / "kept" / "figures"


@pytest.fixture(autouse=True)
def measured(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """Of how many maps each call that measured was."""
    calls: list[int] = []
    real = pattern._found

    def found(maps: str, outputs: Any, outline: Any, given: Any) -> Any:
        calls.append(given.fish)
        return real(maps, outputs, outline, given)

    monkeypatch.setattr(pattern, "_found", found)
    return calls


def records(*maps: PatchMap | None, **more: Any) -> list[Record]:
    made = enumerate(maps)
    return [Record(str(i), i, {**more, **({} if one is None else {"hi_patches": one})}) for i, one in made]


def readings_of(asked: list[Record]) -> list[Mapping[str, Any]]:
    with keeping_figures():
        batch = STANDARD.measured(asked, "lot.csv")
    return [record.readings for record in batch.records]


def test_they_are_measured_once_and_read_again_to_the_last_digit(measured: list[int]) -> None:
    asked = records(SOUND, None, OTHER, PatchMap(), SOUND)
    first, again = readings_of(asked), readings_of(asked)
    assert measured == [4]
    assert again == first == [one.readings for one in STANDARD.measured(asked, "lot.csv").records]
    for one, other in zip(first, again, strict=True):
        assert {name: type(value) for name, value in one.items()} == {
            name: type(value) for name, value in other.items()
        }
        assert repr(one) == repr(other)


def test_another_map_or_another_width_is_measured(measured: list[int]) -> None:
    readings_of(records(SOUND))
    readings_of(records(OTHER))
    readings_of(records(SOUND, girth=STANDARD.reader.read({"girth": 9}, "1").readings["girth"]))  # type: ignore[union-attr]
    assert measured == [1, 1, 1]


@pytest.mark.parametrize("changed", ["koirules", "library", "constants"])
def test_what_they_follow_from_makes_them_anew(
    measured: list[int], changed: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    readings_of(records(SOUND))
    match changed:
        case "koirules":
            monkeypatch.setattr(kept_figures, "code_stamps", lambda: ("another",))
        case "library":
            monkeypatch.setattr(kept_figures, "_stamps", lambda package: [f"another {package}"])
        case "constants":
            real = pattern.found_or_kept

            def with_another_edge(*given: Any) -> Any:
                given[3].constants["gill_edge"] += 1
                return real(*given)

            monkeypatch.setattr(pattern, "found_or_kept", with_another_edge)
    readings_of(records(SOUND))
    assert measured == [1, 1]


def test_nothing_is_kept_unless_it_is_asked_for(measured: list[int], folder: Path) -> None:
    for _ in range(2):
        STANDARD.measured(records(SOUND), "lot.csv")
    assert measured == [1, 1]
    assert not folder.exists()


def test_without_the_libraries_it_is_as_if_nothing_had_been_kept(
    measured: list[int], monkeypatch: pytest.MonkeyPatch
) -> None:
    readings_of(records(SOUND))
    monkeypatch.setattr(kept_figures, "find_spec", lambda _: None)
    readings_of(records(SOUND))
    assert measured == [1, 1]


def test_so_many_entries_are_written_for_one_file(folder: Path) -> None:
    with keeping_figures():
        for front in range(20):
            STANDARD.measured(records(PatchMap((boxed(front, 40, -50, 50),))), "lot.csv")
    assert len(list(folder.iterdir())) == kept_figures._MOST_ENTRIES


@pytest.mark.parametrize("damage", [b"", b"[]", b'{"hi_cover": [null, null]}', b'{"hi_cover": 1}'])
def test_an_entry_that_was_cut_off_is_made_again(measured: list[int], folder: Path, damage: bytes) -> None:
    first = readings_of(records(SOUND))
    (entry,) = folder.iterdir()
    entry.write_bytes(damage)
    assert readings_of(records(SOUND)) == first
    assert readings_of(records(SOUND)) == first
    assert measured == [1, 1]


def test_a_map_that_is_none_is_told_each_time(measured: list[int], folder: Path) -> None:
    crossed = PatchMap((Patch(((10, 0), (30, 40), (30, 0), (10, 40))),))
    for _ in range(2):
        with keeping_figures():
            assert STANDARD.measured(records(crossed), "lot.csv").problems
    assert measured == [1, 1]
    assert not folder.exists()
