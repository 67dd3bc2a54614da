"""What a round says a recording can no longer change, no recording changes, as long as it looks at the same fish."""

from __future__ import annotations

import polars as pl
from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.engines.columnar.reading import Source
from tests.judge import expressions as e
from tests.judge import model as m
from tests.judge.drawn_records import parts
from tests.judge.strategies import batches, completions, standards_that_compare, standards_that_select, to_mapping
from tests.judge.text import to_text

moderate = settings(
    max_examples=40,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)


def asked_after(standard: m.Standard) -> set[str]:
    """The traits whose being recorded is asked for, also through a figure: a recording of these may change anything."""
    means = {each.name: each.means for each in standard.terms}

    def names(of: object) -> set[str]:
        found = {part.name for part in parts(of) if isinstance(part, e.Name)}
        same = {name for part in parts(of) if isinstance(part, e.Figure) for name in part.same}
        return {inner for name in found | same for inner in (names(means[name]) if name in means else {name})}

    return {name for part in parts(standard) if isinstance(part, e.IsRecorded) for name in names(part.of)}


@moderate
@given(st.data())
def test_a_fish_whose_fate_is_not_open_keeps_it_whatever_is_recorded_later(data: st.DataObject) -> None:
    standard = data.draw(st.one_of(standards_that_select(), standards_that_compare()))
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    fish = data.draw(batches(standard, 7)).fish
    before = loaded.grade_batch([{"fish": f"F{n}", **to_mapping(standard, one.record)} for n, one in enumerate(fish)])
    asked = asked_after(standard)
    for _ in range(3):
        rows = []
        for n, one in enumerate(fish):
            later = data.draw(completions(standard, one.record))
            known = {name: said for name, said in later.items() if name in one.record or name not in asked}
            rows.append({"fish": f"F{n}", **to_mapping(standard, known)})
        note(repr(rows))
        after = loaded.grade_batch(rows)
        for first, last in zip(before.rounds, after.rounds, strict=True):
            if set(first.looked_at) != set(last.looked_at):
                continue
            for name in set(first.looked_at) - set(first.open):
                assert (name in first.kept) == (name in last.kept), (first, last, name)


@moderate
@given(st.data())
def test_what_is_sure_of_an_alert_stays_so_and_none_that_may_come_is_left_out(data: st.DataObject) -> None:
    standard = data.draw(standards_that_compare())
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    fish = data.draw(batches(standard, 7)).fish
    alerts = loaded.grade_batch(
        [{"fish": f"F{n}", **to_mapping(standard, one.record)} for n, one in enumerate(fish)]
    ).alerts
    sure, told = ({one.name for one in alerts if wanted(one)} for wanted in (lambda one: one.surely, lambda _: True))
    asked = asked_after(standard)
    for _ in range(3):
        rows = []
        for n, one in enumerate(fish):
            later = data.draw(completions(standard, one.record))
            # Whether something is recorded is answered as the records stand, of a figure too.
            known = {**one.record, **{name: said for name, said in later.items() if name not in asked}}
            rows.append({"fish": f"F{n}", **to_mapping(standard, known)})
        note(repr(rows))
        after = {one.name: one.so_far for one in loaded.grade_batch(rows).alerts}
        assert all(after.get(name) is True for name in sure)
        assert {name for name, so_far in after.items() if so_far is True} <= told


# ---- Found by the law --------------------------------------------------------------------------------------------

HEADER = """standard "Lantern Bay trial standard" edition 1
trait length as number in cm from 0 to 90
trait pond as label
trait red as yes or no
grade all otherwise
"""


def opened(rules: str, *fish: dict[str, object]) -> set[str]:
    """The fish in whose fate a recording could still change: one by one, and by columns."""
    named = [{"fish": name, **one} for name, one in zip("abcdef", fish, strict=False)]
    standard = koirules.read_standard(HEADER + rules)
    single = standard.grade_batch(named).rounds[0].open
    grader = standard.batch()
    schema = {"fish": pl.String, "length": pl.Float64, "pond": pl.String, "red": pl.Boolean}
    frame = pl.DataFrame(named, schema=schema)
    read = grader.reader({name: Source(name) for name in schema if name != "fish"}).read(frame)
    by_column = grader.by_column(read, len(named))["open_in"].to_list()
    assert {one["fish"] for one, rounds in zip(named, by_column, strict=True) if rounds} == set(single)
    return set(single)


def test_who_stands_below_a_fish_that_may_yet_leave_could_still_come_in() -> None:
    # If the first is not red, the second is in.
    rules = "round house keep those possibly with red pick 1 by highest length"
    assert opened(rules, {"length": 9, "pond": "1"}, {"length": 8, "red": True}) == {"a", "b"}
    assert opened(rules, {"length": 8, "red": True}, {"length": 7, "red": True}) == set()


def test_who_is_no_candidate_yet_takes_no_place_from_one_that_may_rise() -> None:
    # Of the first it is open whether it is looked at; the third may be longer than the second.
    rules = "round house keep those with red pick 1 by highest length"
    fish = ({"length": 9}, {"length": 8, "red": True}, {"red": True})
    assert opened(rules, *fish) == {"a", "b", "c"}


def test_a_pick_of_none_is_never_open() -> None:
    assert opened("round house pick 0 by highest length", {}, {"length": 8}) == set()


def test_a_pond_that_was_not_written_down_may_be_any_and_leave_or_fill_a_quota() -> None:
    # Nobody wrote down where the second is from: if from pond 1, it is over the quota and the third, from pond 2, is in.
    rules = "round house pick 2 by highest length no more than 1 of the same pond"
    ponds = [{"length": 9, "pond": "1"}, {"length": 8}, {"length": 7, "pond": "2"}]
    assert opened(rules, *ponds) == {"b", "c"}
    assert opened(rules, ponds[0], {"length": 8, "pond": "3"}, ponds[2]) == set()


def test_a_quota_that_a_fish_may_not_count_in_could_still_have_room() -> None:
    # The first may not be red; then the second, which is, is in.
    rules = "round house pick 3 by highest length no more than 1 with red"
    assert opened(rules, {"length": 9}, {"length": 8, "red": True}) == {"b"}


def test_who_may_come_to_stand_beside_the_last_one_in_is_open_where_ties_are_all_in() -> None:
    # If the second is 9 cm long, too, both are in.
    rules = "round house pick 1 by highest length ties all in"
    assert opened(rules, {"length": 9}, {}) == {"a", "b"}
    assert opened(rules, {"length": 90}, {}) == {"b"}


# ---- Figures of the batch ----------------------------------------------------------------------------------------


def test_whom_a_figure_may_yet_move_in_or_out_is_open() -> None:
    # The median of 4 and 3 is 3.5. With 8 and 9 it is 6, and with 0 and 0 it is 1.5.
    rules = "round house keep those with length at least batch median of length"
    assert opened(rules, {"length": 4}, {"length": 3}, {}, {}) == {"a", "b", "c", "d"}
    # Of 9, 1, 2 and what is yet to come the median lies between 1.5 and 5.5: 9 is above and 1 below it for sure.
    assert opened(rules, {"length": 9}, {"length": 1}, {"length": 2}, {}) == {"c", "d"}
    assert opened(rules, {"length": 4}, {"length": 3}) == set()


def test_a_grade_that_reads_a_figure_leaves_the_round_open_that_reads_the_grade() -> None:
    rules = (
        "fault short if length below batch mean of length: no better than all\n"
        "round house keep those with not fault short"
    )
    # The mean of 9, 5, 2 is 5.333; with a fourth fish between 0 and 90 it lies between 4 and 26.5.
    assert opened(rules, {"length": 9}, {"length": 5}, {"length": 2}, {}) == {"a", "b", "d"}


def alerts_of(rule: str, *fish: dict[str, object]) -> list[tuple[str, bool, bool | None]]:
    """The words of each alert that is told, whether it surely holds, and whether it holds of what was recorded."""
    named = [{"fish": name, **one} for name, one in zip("abcdef", fish, strict=False)]
    header = HEADER.replace("grade all otherwise\n", "")
    found = (
        koirules.read_standard(f"{header}grade all if length at least 1 cm\n{rule}grade none otherwise\n")
        .grade_batch(named)
        .alerts
    )
    return [(one.words, one.surely, one.so_far) for one in found]


def test_an_alert_that_a_recording_may_change_is_not_sure() -> None:
    rule = 'term reds means batch share of red\nalert red "red" if reds above 50 %\n  say "{reds} are red"\n'
    red, plain, blank = {"red": True}, {"red": False}, {"length": 4}
    assert alerts_of(rule, red, red, plain) == [("66.7 % are red", True, True)]
    # With the fourth it is 50 % or 75 %.
    assert alerts_of(rule, red, red, plain, blank) == [("66.7 % are red", False, True)]
    assert alerts_of(rule, red, red, red, plain, blank) == [("75 % are red", True, True)]
    # Now it is a third; with the fourth it may be half, and with two more 60 %.
    assert alerts_of(rule, red, plain, plain, blank) == []
    assert alerts_of(rule, red, plain, plain, blank, blank) == [("33.3 % are red", False, False)]
    assert alerts_of(rule, blank) == [("0 % to 100 % are red", False, None)]


def test_an_alert_over_grades_that_a_figure_may_yet_change_is_not_sure() -> None:
    rules = (
        "fault short if length below batch mean of length: no better than none\n"
        "alert short if batch share of (grade is none) above 50 %\n"
    )
    # The mean of 9, 5, 2 is 5.333, and with a fourth between 4 and 26.5.
    assert alerts_of(rules, {"length": 9}, {"length": 5}, {"length": 2}) == [("short", True, True)]
    assert alerts_of(rules, {"length": 9}, {"length": 5}, {"length": 2}, {}) == [("short", False, True)]


def test_the_order_of_a_pick_is_open_where_its_key_reads_a_figure_that_moves() -> None:
    rules = "round house pick 1 by highest batch standing of length"
    assert opened(rules, {"length": 4}, {"length": 3}, {"red": True}) == {"a", "b", "c"}
    assert opened(rules, {"length": 4}, {"length": 3}) == set()


def test_a_figure_among_those_kept_is_open_where_it_is_open_who_was_kept() -> None:
    rules = (
        "round red keep those with red\n"
        "round house from all keep those with length at least batch lowest of length among those kept by red"
    )
    fish = ({"length": 5, "red": True}, {"length": 3}, {"length": 4, "red": False}, {"length": 6, "red": False})
    named = [{"fish": name, **one} for name, one in zip("abcd", fish, strict=True)]
    house = koirules.read_standard(HEADER + rules).grade_batch(named).rounds[1]
    # If b is red, too, the lowest is 3 and no longer 5.
    assert (set(house.kept), set(house.open)) == ({"a", "d"}, {"b", "c"})
