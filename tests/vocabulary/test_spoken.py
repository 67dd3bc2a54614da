"""Varieties as people write them into a cell."""

from __future__ import annotations

import pytest

from koirules.vocabulary.skins import Varieties
from koirules.vocabulary.spoken import Said, said
from koirules.vocabulary.traits import Variety

VARIETIES = Varieties(
    {
        "showa": Variety("showa", "showa sanshoku", {}, also=("昭和",), forms=("hi showa",)),
        "taisho_sanke": Variety("taisho_sanke", "Taisho sanke", {}),
        "doitsu_ogon": Variety("doitsu_ogon", "doitsu ogon", {}),
        "ogon": Variety("ogon", "ogon", {}, also=("kin", "showa"), forms=("yamabuki",)),
        "muji": Variety("muji", "muji", {}, also=("kin",)),
    },
    {"ginrin": Variety("ginrin", "kin gin rin", {}, also=("銀鱗",)), "doitsu": Variety("doitsu", "doitsu", {})},
)


@pytest.mark.parametrize(
    ("text", "variety", "skins"),
    [
        ("showa", "showa", ()),
        ("  Showa Sanshoku ", "showa", ()),
        ("TAISHO-SANKE", "taisho_sanke", ()),
        ("showa with ginrin", "showa", ("ginrin",)),
        ("ginrin showa", "showa", ("ginrin",)),
        ("Kin Gin Rin Taisho Sanke", "taisho_sanke", ("ginrin",)),
        ("taisho sanke doitsu", "taisho_sanke", ("doitsu",)),
        ("showa with (ginrin, doitsu)", "showa", ("ginrin", "doitsu")),
        ("doitsu showa with ginrin", "showa", ("ginrin", "doitsu")),
        ("showa, ginrin and doitsu", "showa", ("ginrin", "doitsu")),
        ("doitsu ogon", "doitsu_ogon", ()),
        ("ginrin ogon", "ogon", ("ginrin",)),
        ("kin-gin-rin Taisho_Sanke", "taisho_sanke", ("ginrin",)),
        ("Shōwa Sanshoku", "showa", ()),
        ("taishô-sanke", "taisho_sanke", ()),
        ("昭和", "showa", ()),
        ("銀鱗 昭和", "showa", ("ginrin",)),
    ],
)
def test_what_people_write_is_understood(text: str, variety: str, skins: tuple[str, ...]) -> None:
    assert said(text, VARIETIES) == Said(variety, frozenset(skins))


@pytest.mark.parametrize(
    "text", ["", "ginrin", "chagoi", "showa ogon", "showa with chagoi", "showa and ogon", "showa x", "kin", "x " * 200]
)
def test_what_names_no_variety_or_two_is_not_guessed(text: str) -> None:
    assert said(text, VARIETIES) is None


def test_a_form_is_its_variety_and_is_kept() -> None:
    found = said("ginrin Yamabuki", VARIETIES)
    assert found == Said("ogon", frozenset({"ginrin"})) and found is not None and found.form == "yamabuki"
    plain = said("showa", VARIETIES)
    assert plain is not None and plain.form == ""  # a name goes before what somebody else also calls so
    hi = said("Hi Showa", VARIETIES)
    assert hi == plain and hi is not None and hi.form == "hi_showa"


def test_a_variety_is_named_as_a_header_has_it() -> None:
    assert Said("showa", frozenset({"ginrin", "doitsu"})).name == "showa with (doitsu, ginrin)"
    assert Said("showa").name == "showa"
