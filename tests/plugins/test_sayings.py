"""How sorters speak of the traits of every variety: each table fits its traits, and some fish of each variety are read."""

import importlib
import sys
from pathlib import Path

import pytest

import koirules
from koirules.notes.reader import NotesReader, cells
from koirules.problems import Cell
from koirules.standard.check.phrasing import read_alone, sayings_left_out
from koirules.testing import registry_with
from koirules.vocabulary.kinds import words_of
from koirules.vocabulary.phrases import Spoken

PLUGINS = Path(__file__).parents[2] / "plugins"
NAMES = ("showa", "taisho_sanke", "tancho", "utsurimono", "asagi", "koromo", "hikari", "kawarimono", "skins", "ranchu")


@pytest.fixture(scope="module")
def box():
    paths = [str(PLUGINS / name) for name in NAMES]
    sys.path[:0] = paths
    try:
        return registry_with(*(importlib.import_module(f"koirules_{name}") for name in NAMES))
    finally:
        sys.path[:] = [path for path in sys.path if path not in paths]


def rules_of(variety, box):
    return koirules.read_standard(
        f'standard "x" edition 1 variety {variety}\ngrade all otherwise\n', registry=box
    ).rules


def test_every_table_fits_the_traits_of_its_variety(box):
    for variety in [*box.varieties, "kohaku with (ginrin, doitsu)"]:
        rules = rules_of(variety, box)
        for saying in rules.sayings:
            if isinstance(saying, Spoken):
                words = words_of(rules.traits[saying.trait].kind)
                unread = [level for level in saying.levels if level not in words]
                unread = [level for level in unread if read_alone(saying.trait, level, rules.traits) is None]
                assert unread == [], (variety, saying.trait)
        assert not list(sayings_left_out(Cell(variety), rules.sayings, rules.traits)), variety


@pytest.mark.parametrize(
    ("variety", "text", "wanted"),
    [
        (
            "showa",
            "menware, motoguro good, two black bands",
            {"head_sumi": "menware", "motoguro": "base", "sumi_bands": "2"},
        ),
        ("taisho_sanke", "kata sumi, 3 black spots", {"kata_sumi": "yes", "sumi_spots": "3"}),
        ("tancho", "spot round, no other red", {"spot_shape": "round", "other_red": "0"}),
        ("bekko", "shiro bekko, head clear", {"ground": "shiro", "head_clear": "clear"}),
        ("utsurimono", "head split, snow white ground", {"head_split": "split", "ground_quality": "snow"}),
        ("asagi", "net crisp, light blue", {"net_clarity": "crisp", "blue_tone": "light"}),
        ("shusui", "hana shusui, three stray scales", {"red_back": "hana", "stray_scales": "3"}),
        ("koromo", "ai goromo, net only on the red", {"koromo_type": "ai", "net_on_white": "none"}),
        ("goshiki", "net heavy, red clean", {"net_weight": "heavy", "hi_clean": "clean"}),
        (
            "hikari_muji",
            "yamabuki, even shine, helmet",
            {"metal_colour": "yamabuki", "lustre_even": "even", "helmet": "yes"},
        ),
        ("hikari_moyo", "kujaku, face clean", {"moyo_kind": "kujaku", "kujaku_face": "clean"}),
        ("hikari_utsuri", "kin showa", {"utsuri_kind": "kin_showa"}),
        ("kawarimono", "chagoi, tame, 45 cm", {"kawari_kind": "chagoi", "tameness": "tame", "length": "45 cm"}),
        ("kohaku with ginrin", "diamond ginrin, sandan", {"gin_type": "diamond", "steps": "sandan"}),
    ],
)
def test_a_fish_of_each_variety(box, variety, text, wanted):
    """Common practice, no source."""
    reader = NotesReader.of(rules_of(variety, box))
    (fish,) = reader.read(f"1: {text}").fish
    assert fish.unread == ()
    assert cells(fish, reader.lexicon.traits) == wanted


def test_every_trait_says_where_it_comes_from(box):
    silent = [trait.name for one in box.vocabularies.values() for trait in one.traits if not trait.source]
    assert silent == []
