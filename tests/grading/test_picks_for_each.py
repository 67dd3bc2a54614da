"""A pick for each group beside a second way to pick, written for this test alone, over every way to fill in what is open."""

from __future__ import annotations

from fractions import Fraction
from itertools import product
from math import ceil

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

import koirules

SIZES, MOST = ("15", "25"), 3
PICKS = ("pick 1", "pick 2", "pick 50 %", "pick 30 %", "pick all")
Fish = dict[str, object]


def page(pick: str, ties: str, quota: str, keep: str = "") -> koirules.Standard:
    return koirules.read_standard(
        f"""standard "Each (invented)" edition 1
trait n as count up to {MOST}
trait red as yes or no
grade all otherwise
round best {keep} {pick} for each class_size by highest n {quota} {ties}
"""
    )


def by_hand(fish: list[Fish], pick: str, ties: str, quota: str, keep: str) -> dict[str, str]:
    """What becomes of each fish, all of whose values are known: kept, left, tied, or out."""
    fates: dict[str, str] = {}
    for size in {one["class_size"] for one in fish}:
        group = [one for one in fish if one["class_size"] == size]
        candidates = [one for one in group if not keep or one["n"] >= 1]
        fates |= {one["fish"]: "left" for one in group if one not in candidates}
        share = pick.removesuffix(" %").split()[-1]
        places = len(group) if share == "all" else int(share)
        if pick.endswith("%"):
            places = ceil(Fraction(int(share), 100) * len(group))
        reds = 1 if quota else len(group)
        for n in range(MOST, -1, -1):
            block = [one for one in candidates if one["n"] == n]
            for together in [[one] for one in block] if ties == "ties by first recorded" else [block]:
                ways = in_ways(together, places, reds)
                if ties == "ties all in":
                    taken = [one["fish"] for one in together if any(one["fish"] in way for way in ways)]
                    fates |= {one["fish"]: "kept" if one["fish"] in taken else "out" for one in together}
                else:
                    for one in together:
                        there = {one["fish"] in way for way in ways}
                        fates[one["fish"]] = "tied" if len(there) == 2 else "kept" if True in there else "out"
                    taken = list(max(ways, key=len))
                places = max(0, places - len(taken))
                reds -= max(
                    (sum(bool(one["red"]) for one in together if one["fish"] in way) for way in ways), default=0
                )
    return fates


def in_ways(block: list[Fish], places: int, reds: int) -> list[frozenset[object]]:
    """Every set of fish that could be in, walked in some order until none fits any more."""
    fits = [
        chosen
        for bits in product((False, True), repeat=len(block))
        if len(chosen := frozenset(one["fish"] for one, taken in zip(block, bits, strict=True) if taken)) <= places
        and sum(bool(one["red"]) for one in block if one["fish"] in chosen) <= reds
    ]
    return [one for one in fits if not any(one < other for other in fits)]


def by_koirules(standard: koirules.Standard, fish: list[Fish]) -> tuple[dict[str, str], set[str]]:
    found = standard.grade_batch(fish)
    words = {"kept": "kept", "left": "left", "passed over": "out", "over a quota": "out", "tied": "tied"}
    return {one.fish: words[one.course[0].fate.value] for one in found.results}, set(found.rounds[0].open)


def drawn(most: int, *, holes: bool) -> st.SearchStrategy[list[Fish]]:
    blank = [None] if holes else []
    one = st.fixed_dictionaries(
        {
            "class_size": st.sampled_from([*SIZES, *SIZES, *blank]),
            "n": st.sampled_from([*range(MOST + 1), *blank]),
            "red": st.sampled_from(["no", "yes", *blank]),
        }
    )
    return st.lists(one, min_size=1, max_size=most).map(
        lambda some: [
            {"fish": f"F{i}", **{k: v for k, v in each.items() if v is not None}} for i, each in enumerate(some)
        ]
    )


def filled(fish: list[Fish]) -> list[list[Fish]]:
    """Every batch that it could turn out to be. A class that nobody knows may also be one of its own."""
    ways = [
        [
            {"fish": one["fish"], "class_size": size, "n": n, "red": red}
            for size in ([one["class_size"]] if "class_size" in one else [*SIZES, "35"])
            for n in ([one["n"]] if "n" in one else range(MOST + 1))
            for red in ([one["red"]] if "red" in one else ["no", "yes"])
        ]
        for one in fish
    ]
    return [[*some] for some in product(*ways)]


def known(fish: list[Fish]) -> list[Fish]:
    return [{**one, "red": one["red"] == "yes"} for one in fish]


PAGES = st.tuples(
    st.sampled_from(PICKS),
    st.sampled_from(("", "ties all in", "ties by first recorded")),
    st.sampled_from(("", "no more than 1 with red")),
    st.sampled_from(("", "keep those with n at least 1")),
)


@settings(max_examples=120, deadline=None, derandomize=True)
@given(PAGES, drawn(6, holes=False))
def test_whole_records_come_to_what_is_picked_by_hand(parts: tuple[str, str, str, str], fish: list[Fish]) -> None:
    pick, ties, quota, keep = parts
    fates, is_open = by_koirules(page(pick, ties, quota, keep), fish)
    assert fates == by_hand(known(fish), pick, ties, quota, keep)
    assert not is_open


@settings(max_examples=120, deadline=None, derandomize=True)
@given(PAGES, drawn(4, holes=True).filter(lambda fish: len(filled(fish)) <= 250))
@example(("pick 1", "", "", ""), [{"fish": "a", "n": 2}, {"fish": "b", "class_size": "15", "n": 1, "red": "no"}])
def test_a_fate_that_is_not_open_is_the_same_whatever_is_recorded_later(
    parts: tuple[str, str, str, str], fish: list[Fish]
) -> None:
    pick, ties, quota, keep = parts
    fates, is_open = by_koirules(page(pick, ties, quota, keep), fish)
    for whole in filled(fish):
        later = by_hand(known(whole), pick, ties, quota, keep)
        assert {name: later[name] for name in fates if name not in is_open} == {
            name: fate for name, fate in fates.items() if name not in is_open
        }


LOT = [
    {"fish": name, "n": n, "class_group": group, "class_size": size}
    for name, n, group, size in (
        ("a", 3, "kohaku", "15"),
        ("b", 2, "kohaku", "15"),
        ("c", 2, "kohaku", "15"),
        ("d", 1, "kohaku", "25"),
        ("e", 3, "showa", "15"),
        ("f", 0, "kohaku", "15"),
    )
]
CLASSES = page("pick 2", "", "", "").rules.source.text.replace(
    "for each class_size", "for each (class_group, class_size)"
)


def test_the_reason_says_the_standing_within_the_class() -> None:
    found = koirules.read_standard(CLASSES).grade_batch(LOT)
    why = {one.fish: one.course[0].why for one in found.results}
    assert why == {
        "a": "stands 1st of 4 in kohaku 15",
        "b": "tied with c for 1 place in kohaku 15; a person decides",
        "c": "tied with b for 1 place in kohaku 15; a person decides",
        "d": "stands 1st of 1 in kohaku 25",
        "e": "stands 1st of 1 in showa 15",
        "f": "2 places in kohaku 15; a stood above it by n: 3 against 0",
    }
    (course,) = found.rounds
    assert course.asks == "the first 2 for each class group and class size by highest n"
    assert (course.kept, course.left, course.places) == (("a", "d", "e"), ("f",), 6)


def test_a_person_settles_the_tie_of_a_class_and_rescues_count_over_all_classes() -> None:
    decided = [koirules.Decision("c", "", "best", "Y.", "the deeper red")]
    found = koirules.read_standard(CLASSES).grade_batch(LOT, decided)
    assert found.rounds[0].kept == ("a", "c", "d", "e")
    assert found.results[1].course[0].why == "tied for 1 place; a person chose c"
    rescued = koirules.read_standard(f"{CLASSES.rstrip()} rescues 1\n")
    more = [*decided, koirules.Decision("f", "", "best", "Y.", "the only one of its line")]
    assert rescued.grade_batch(LOT, more).rounds[0].kept == ("a", "c", "d", "e", "f")
    with pytest.raises(koirules.RecordError):
        koirules.read_standard(CLASSES).grade_batch(LOT, more)


def test_frames_pick_the_same() -> None:
    pl = pytest.importorskip("polars")
    standard = koirules.read_standard(f"{CLASSES.rstrip()} ties by first recorded\n")
    rows = [{**one, "fish": f"{one['fish']}{i}", "n": (one["n"] + i) % 4} for i in range(80) for one in LOT]
    kept = set(standard.grade_batch(rows).rounds[0].kept)
    frame = standard.grade_frame(pl.DataFrame(rows))
    by_frame = {name for name, rounds in zip(frame["fish"], frame["kept_by"], strict=True) if rounds}
    assert kept
    assert by_frame == kept
