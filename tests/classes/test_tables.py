"""Tables of classes: read with every problem at once, and every fish in one class, on the right side of each line."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from koirules.classes.placing import NONE, check_measure, counted, place, understood
from koirules.classes.reading import MOST_BYTES, TABLES, read_table, read_table_text
from koirules.classes.table import ClassTable, Sizes
from koirules.plugins import registry_with
from koirules.problems import Cell, Place
from koirules.vocabulary.readings import Span
from koirules.vocabulary.spoken import Said, said
from koirules.vocabulary.traits import Vocabulary
from tests.plugins.invented import NET, Gives

HEAD = 'title = "Trial (invented)"\nedition = "1"\n'


def table(text: str) -> ClassTable:
    found = read_table_text(HEAD + text, "trial.toml")
    assert isinstance(found, ClassTable), found
    return found


def sizes(closed: str, rounding: str, rows: str, more: str = "") -> Sizes:
    found = table(
        f'[sizes]\ntrait = "length"\nunit = "cm"\nclosed = "{closed}"\nrounding = "{rounding}"\n{more}\nsizes = [{rows}]\n'
    ).sizes
    assert found is not None
    return found


def name_of(found: Sizes, value: str) -> str | None:
    size = found.of(Decimal(value))
    return None if size is None else size.name


UPPER = '{name="s", over=5, to=10}, {name="m", to=20}, {name="l"}'
LOWER = '{name="s", from=10}, {name="m", from=20}, {name="l", from=30, below=40}'


@pytest.mark.parametrize(
    ("value", "name"),
    [("5", None), ("5.01", "s"), ("10", "s"), ("10.000001", "m"), ("20", "m"), ("20.1", "l"), ("99", "l")],
)
def test_a_size_that_is_closed_above_holds_its_upper_end(value: str, name: str | None) -> None:
    assert name_of(sizes("upper", "none", UPPER), value) == name


@pytest.mark.parametrize(
    ("value", "name"), [("9.99", None), ("10", "s"), ("19.999999", "s"), ("20", "m"), ("39.9", "l"), ("40", None)]
)
def test_a_size_that_is_closed_below_holds_its_lower_end(value: str, name: str | None) -> None:
    assert name_of(sizes("lower", "none", LOWER), value) == name


@pytest.mark.parametrize(
    ("rounding", "value", "name"),
    [
        ("down", "10.49", "s"),
        ("down", "10.5", "m"),
        ("up", "10.01", "m"),
        ("up", "9.51", "s"),
        ("half up", "10.24", "s"),
        ("half up", "10.25", "m"),
        ("half up", "9.76", "s"),
    ],
)
def test_a_measure_is_rounded_before_it_is_looked_up(rounding: str, value: str, name: str) -> None:
    assert name_of(sizes("upper", rounding, UPPER, "step = 0.5"), value) == name


@pytest.mark.parametrize(
    ("low", "high", "names"),
    [
        (12.0, 12.0, ["m"]),
        (9.0, 12.0, ["s", "m"]),
        (9.0, 90.0, ["s", "m", "l"]),
        (1.0, 12.0, ["s", "m", None]),
        (1.0, 90.0, ["s", "m", "l", None]),
        (1.0, 2.0, [None]),
    ],
)
def test_a_measure_that_is_not_sure_may_fall_into_several_sizes(
    low: float, high: float, names: list[str | None]
) -> None:
    could_be = sizes("upper", "none", UPPER).could_be(Span(low, high))
    assert [None if size is None else size.name for size in could_be] == names


def test_a_measure_in_doubles_is_looked_up_as_it_was_written() -> None:
    found = sizes("upper", "none", '{name="s", to=0.3}, {name="l"}')
    assert [size.name for size in found.could_be(Span(0.1 + 0.2, 0.1 + 0.2)) if size] == ["s"]


lengths = st.decimals(0, 130, places=3)


@pytest.mark.parametrize("name", TABLES)
@given(low=lengths, width=lengths)
def test_what_a_measure_could_be_is_what_each_of_its_values_is(name: str, low: Decimal, width: Decimal) -> None:
    found = read_table(name)
    assert isinstance(found, ClassTable) and found.sizes is not None
    could_be = found.sizes.could_be(Span(float(low), float(low + width)))
    inside = {found.sizes.of(low + width * part / 40) for part in range(41)}
    assert inside <= set(could_be)
    assert len(could_be) == len(set(could_be))


@pytest.mark.parametrize("name", TABLES)
@given(one=lengths, other=lengths)
def test_a_longer_fish_is_never_in_a_smaller_size(name: str, one: Decimal, other: Decimal) -> None:
    found = read_table(name)
    assert isinstance(found, ClassTable) and found.sizes is not None
    both = [found.sizes.of(value) for value in sorted((one, other))]
    places = [found.sizes.sizes.index(size) for size in both if size is not None]
    assert places == sorted(places)


def test_a_size_says_what_it_holds() -> None:
    upper, lower = sizes("upper", "none", UPPER), sizes("lower", "half up", LOWER, "step = 0.1")
    assert [upper.told(size) for size in upper.sizes] == [
        "over 5 cm up to 10 cm",
        "over 10 cm up to 20 cm",
        "over 20 cm",
    ]
    assert [lower.told(size) for size in lower.sizes] == [
        "from 10 cm to below 20 cm",
        "from 20 cm to below 30 cm",
        "from 30 cm to below 40 cm",
    ]
    assert (upper.told_rounding(), lower.told_rounding()) == ("as measured", "rounded half up to 0.1 cm")


GROUPS = """
[[groups]]
name = "a"
varieties = ["kohaku", "showa with ginrin"]
[[groups]]
name = "g"
skins = ["ginrin"]
"""


@pytest.mark.parametrize(
    ("variety", "skins", "group"),
    [
        ("kohaku", (), "a"),
        ("showa", ("ginrin",), "a"),
        ("kohaku", ("ginrin",), "g"),
        ("kohaku", ("doitsu", "ginrin"), "g"),
        ("showa", (), None),
        ("kohaku", ("doitsu",), None),
    ],
)
def test_a_group_that_names_a_variety_comes_before_one_for_its_skin(
    variety: str, skins: tuple[str, ...], group: str | None
) -> None:
    fish = Said(variety, frozenset(skins))
    assert place(table(GROUPS), fish, None).group == (group or NONE)
    others = table(GROUPS + '[[groups]]\nname = "o"\nothers = true\n')
    assert place(others, fish, None).group == (group or "o")


def test_a_variety_that_is_not_installed_is_found_as_the_table_writes_it() -> None:
    assert place(table(GROUPS), "Kohaku", None).group == "a"
    assert place(table(GROUPS), "chagoi", None).group == NONE
    assert place(table(GROUPS), None, None).group == ""


def test_a_table_is_read_in_the_words_that_cells_are_read_in() -> None:
    sanke = Vocabulary("sanke", "taisho sanke", (NET,), also=("sanshoku",), forms=("aka sanke", "hi sanke"))
    varieties = registry_with(Gives(sanke, Vocabulary("glitter", "gin rin", (NET,), is_skin=True))).varieties
    rows = ('"Taisho Sanke", "Gin Rin Kohaku"', '"Aka-sanke"')
    text = "".join(f'[[groups]]\nname = "{name}"\nvarieties = [{row}]\n' for name, row in zip("ab", rows, strict=True))
    found, problems = understood(table(f'{text}[[groups]]\nname = "g"\nskins = ["gin rin"]\n'), varieties)
    assert problems == ()
    words = ("sanshoku", "hi sanke", "AKA SANKE", "kohaku gin rin", "sanke gin rin", "kohaku")
    assert [place(found, said(one, varieties), None).group for one in words] == ["a", "a", "b", "a", "g", NONE]


def test_what_a_table_names_twice_in_other_words_or_nobody_knows_is_told() -> None:
    varieties = registry_with().varieties
    rows = '"kohaku", "紅白", "kohakku", "chagoi"'
    _, problems = understood(table(f'[[groups]]\nname = "a"\nvarieties = [{rows}]\nskins = ["glitter"]\n'), varieties)
    assert [(problem.code, problem.warning) for problem in problems] == [
        ("class-named-twice", False),
        ("class-variety-unknown", True),
        ("class-variety-unknown", True),
    ]
    assert 'Did you mean "kohaku"?' in problems[1].mend
    assert '"chagoi", "glitter"' in problems[2].cause


def test_what_was_not_measured_has_no_size() -> None:
    assert place(table(GROUPS), Said("kohaku"), Span(5.0, 5.0)).labels == {"class_group": "a"}
    found = read_table("tin_bucket_club")
    assert isinstance(found, ClassTable)
    assert place(found, None, Span(9.0, 21.0)).labels == {"class_size": "1 or 2 or none"}
    assert place(found, None, None).sizes == ()


def test_fish_are_counted_by_class() -> None:
    placed = [place(table(GROUPS), Said(name), None) for name in ("kohaku", "showa", "kohaku")]
    assert counted(placed) == {("a", ""): 2, (NONE, ""): 1}


@pytest.mark.parametrize(
    ("trait", "unit", "told"),
    [
        ("lenght", "cm", 'Did you mean "length"'),
        ("spine", "cm", "cannot be measured in cm"),
        ("length", "kg", "in kg"),
    ],
)
def test_what_sizes_go_by_is_a_trait_in_that_unit(trait: str, unit: str, told: str) -> None:
    rows = 'closed = "upper"\nrounding = "none"\nsizes = [{name="s", to=1}]'
    found = table(f'[sizes]\ntrait = "{trait}"\nunit = "{unit}"\n{rows}')
    problem = check_measure(found, registry_with().varieties["kohaku"].traits)
    assert problem is not None and problem.code == "class-trait-wrong"
    assert told in f"{problem.cause} {problem.mend}"
    assert check_measure(table(GROUPS), {}) is None


SIZES = '[sizes]\ntrait = "length"\nunit = "cm"\nclosed = "upper"\nrounding = "none"\n'


@pytest.mark.parametrize(
    ("text", "codes"),
    [
        ("", ["class-key-missing"]),
        ("colour = 3\n" + GROUPS, ["class-key-unknown"]),
        ("[sizes]\nx = 1", ["class-key-unknown", *["class-key-missing"] * 5]),
        (SIZES.replace("upper", "uper") + "sizes = [{name='s', to=1}]", ["class-value-wrong"]),
        (SIZES + "step = 1\nsizes = [{name='s', to=1}]", ["step-without-rounding"]),
        (SIZES.replace("none", "down") + "sizes = [{name='s', to=1}]", ["class-key-missing"]),
        (SIZES.replace("none", "down") + "step = 0\nsizes = [{name='s', to=1}]", ["class-value-wrong"]),
        (SIZES.replace("none", "down") + "step = nan\nsizes = [{name='s', to=1}]", ["class-value-wrong"]),
        (SIZES + "sizes = [1]", ["class-value-wrong"]),
        (SIZES + 'sizes = [{name="a", to="x"}]', ["class-value-wrong"]),
        (SIZES + 'sizes = [{name="a", to=2}, {name="b", to=1}]', ["sizes-not-rising"]),
        (SIZES.replace("upper", "lower") + 'sizes = [{name="a", from=2}, {name="b", from=1}]', ["sizes-not-rising"]),
        (SIZES + 'sizes = [{name="a", to=2}, {name="a", to=3}]', ["class-named-twice"]),
        (SIZES + 'sizes = [{name="a"}, {name="b", to=3}]', ["class-key-missing"]),
        (SIZES + 'sizes = [{name="a", to=2}, {name="b", over=2, to=3}]', ["size-end-misplaced"]),
        (
            SIZES.replace("upper", "lower") + 'sizes = [{name="a", from=2, below=3}, {name="b", from=3}]',
            ["size-end-misplaced"],
        ),
        (SIZES + "sizes = [{to=2}]", ["class-key-missing"]),
        ("[[groups]]\nname = 3\nothers = true", ["class-value-wrong"]),
        ('[[groups]]\nname = "a"', ["class-key-missing"]),
        ('[[groups]]\nname = "a"\nvarieties = "kohaku"', ["class-value-wrong", "class-key-missing"]),
        (GROUPS + '[[groups]]\nname = "b"\nvarieties = ["kohaku"]', ["class-named-twice"]),
        ("groups = [1]", ["class-value-wrong"]),
        ("groups = 1979-05-27", ["class-value-wrong", "class-key-missing"]),
        ("note = true\n" + GROUPS, ["class-value-wrong"]),
        ("note = {}\n" + GROUPS, ["class-value-wrong"]),
        (SIZES + "sizes = []", ["class-key-missing"]),
        (SIZES + "sizes = [{name='s', over=2, to=1}]", ["sizes-not-rising"]),
        (SIZES + "sizes = [{name=' ', to=1}, {name='None', to=2}]", ["class-value-wrong"] * 2),
        ('[[groups]]\nname = "none"\nothers = true', ["class-value-wrong"]),
        ("x = ", ["class-table-unread"]),
    ],
)
def test_everything_wrong_with_a_table_is_told(text: str, codes: list[str]) -> None:
    found = read_table_text(HEAD + text, "trial.toml")
    assert isinstance(found, tuple)
    assert [problem.code for problem in found] == codes, [str(problem) for problem in found]


def test_a_table_that_is_no_toml_is_told_with_its_place() -> None:
    (problem,) = read_table_text('title = "a"\nedition = = 2\n', "trial.toml")
    assert isinstance(problem.site, Place) and (problem.site.line, problem.site.column) == (2, 11)


@given(st.text(max_size=60) | st.sampled_from(["[" * 2000, "a=" + "1" * 5000, "a." * 900 + "b=1"]))
def test_any_text_is_a_table_or_has_problems(text: str) -> None:
    assert isinstance(read_table_text(text, "any.toml"), ClassTable | tuple)


def test_a_table_is_found_by_its_path_or_its_name(tmp_path: Path) -> None:
    path = tmp_path / "ours.toml"
    path.write_text(HEAD + GROUPS, encoding="utf-8")
    assert isinstance(read_table(str(path)), ClassTable)
    (problem,) = read_table("lantern_bay_yuong")
    assert problem.code == "no-class-table" and "lantern_bay_young" in problem.mend
    path.write_bytes(b"#" * (MOST_BYTES + 1))
    (problem,) = read_table(str(path))
    assert problem.code == "unreadable-file"
    (problem,) = read_table("\0")
    assert problem.code == "no-class-table" and isinstance(problem.site, Cell)


@pytest.mark.parametrize("name", TABLES)
def test_every_shipped_table_reads_and_says_that_it_is_invented(name: str) -> None:
    found = read_table(name)
    assert isinstance(found, ClassTable)
    assert "invented" in found.title
    assert check_measure(found, registry_with().varieties["kohaku"].traits) is None
