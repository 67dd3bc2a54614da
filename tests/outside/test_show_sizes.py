"""Sizes of shows as published reports give them, against the tables that are shipped as invented examples.

Sources, by what they are: The young-koi show explained, 2017, and a magazine report of a young-koi show (sizes of young
koi); a report of the 40th national show, 2009 (93 cm in 90; sizes by 5 cm from memory); show categories of a US club,
2025. They say: at the Japanese show of young koi the sizes are 12, 15, 18, then 23, 28 … 63, each number is the largest
length of its size in cm (53 is over 48 to 53), and none is above 63; at the Japanese main show sizes go by 5 cm and the
largest is open, so that a fish of 93 cm won in 90; a club of the east coast of the United States (2025) judges 8 sizes,
10.0 to 19.9, 20.0 to 29.9 … 70.0 to 79.9, and 80 and more, and none under 10 cm.
"""

from decimal import Decimal

import pytest

from koirules.classes.reading import read_table, read_table_text

YOUNG = (12, 15, 18, *range(23, 64, 5))
MAIN = "".join(f'{{name="{end}", to={end}}},\n' for end in range(15, 90, 5)) + '{name="90"}'


def size(table, value):
    found = table.sizes.of(Decimal(value))
    return None if found is None else found.name


def test_a_size_of_the_young_show_is_called_by_its_largest_fish():
    table = read_table("lantern_bay_young")
    assert [int(each.name) for each in table.sizes.sizes] == list(YOUNG)
    for smaller, largest in zip((0, *YOUNG), YOUNG, strict=False):
        assert size(table, largest) == str(largest)
        # The board is read down to half centimetres.
        assert size(table, Decimal(smaller) + Decimal("0.5")) == str(largest)
    assert size(table, "48") == "48"
    assert size(table, "48.5") == "53"
    assert size(table, "53") == "53"
    assert size(table, "63.5") is None


def test_the_largest_size_of_the_main_show_is_open():
    head = 'title="Main show (invented)"\nedition="1"\n[sizes]\ntrait="length"\nunit="cm"\nclosed="upper"\nrounding="none"\n'
    table = read_table_text(f"{head}sizes=[{MAIN}]", "main.toml")
    assert size(table, "93") == "90"
    assert size(table, "85") == "85"
    assert size(table, "85.1") == "90"


@pytest.mark.parametrize(
    ("shortest", "longest", "name"),
    [*((f"{ten}0.0", f"{ten}9.9", str(ten)) for ten in range(1, 8)), ("80.0", "125", "8")],
)
def test_a_size_of_the_club_begins_at_its_line(shortest, longest, name):
    table = read_table("tin_bucket_club")
    assert size(table, shortest) == name
    assert size(table, longest) == name


def test_under_ten_centimetres_the_club_does_not_judge():
    table = read_table("tin_bucket_club")
    assert size(table, "9.9") is None
    assert size(table, "9.94") is None
    assert len(table.sizes.sizes) == 8
