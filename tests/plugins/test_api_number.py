"""A plugin says which version of the hooks it was written for, and is used only where that is understood."""

from __future__ import annotations

from typing import Any

import pytest

from koirules import builtin
from koirules.hooks import API, OLDEST_API
from koirules.plugins import registry_with
from tests.plugins.invented import Gives, assert_left_out, lace, only_problem


def written_for(number: Any) -> Gives:
    plugin = Gives(lace())
    plugin.KOIRULES_API = number
    return plugin


@pytest.mark.parametrize("number", range(OLDEST_API, API + 1))
def test_a_plugin_for_a_version_that_is_known_is_used(number: int) -> None:
    assert "lace" in registry_with(written_for(number)).varieties


@pytest.mark.parametrize(
    ("number", "code", "told"),
    [
        (API + 1, "plugin-too-new", f"version {API + 1} of the hooks, and this koirules knows version {API}"),
        (OLDEST_API - 1, "plugin-too-old", f"none before {OLDEST_API}"),
        (None, "plugin-without-api", "for which version"),
        ("1", "plugin-wrong-type", "of type str"),
        (True, "plugin-wrong-type", "of type bool"),
    ],
)
def test_any_other_is_left_out_and_told_what_to_do(number: Any, code: str, told: str) -> None:
    registry = registry_with(written_for(number))
    assert_left_out(registry)
    assert only_problem(registry).code == code
    assert told in only_problem(registry).cause


def test_a_plugin_that_is_too_new_is_not_blamed_for_hooks_that_come_later() -> None:
    class Later(Gives):
        KOIRULES_API = API + 1

        def koirules_moon_phases(self) -> list[str]:
            return []

    assert only_problem(registry_with(Later(lace()))).code == "plugin-too-new"


def test_the_box_is_written_for_the_latest_version() -> None:
    assert builtin.KOIRULES_API == API
