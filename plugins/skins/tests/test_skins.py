"""The skins: their vocabularies hold, by themselves and over a variety."""

from __future__ import annotations

from types import SimpleNamespace

import koirules_skins
import pytest

from koirules import hookimpl
from koirules.testing import registry_with
from koirules.vocabulary.traits import Vocabulary


def test_the_plugin_has_no_problem() -> None:
    assert registry_with(koirules_skins).problems == ()


@pytest.mark.parametrize("skins", [("ginrin",), ("doitsu",), ("ginrin", "doitsu")])
def test_a_skin_lies_over_a_variety_without_a_clash(skins: tuple[str, ...]) -> None:
    worn = Vocabulary("worn", "worn", (), includes=("kohaku", *skins))
    registry = registry_with(koirules_skins, SimpleNamespace(koirules_vocabularies=hookimpl(lambda: [worn])))
    assert registry.problems == ()
    traits = registry.varieties["worn"].traits
    for skin in skins:
        assert {trait.name for trait in registry.vocabularies[skin].traits} <= set(traits)
    assert "hi_cover" in traits
