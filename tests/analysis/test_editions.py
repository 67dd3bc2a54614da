"""What comparing two editions of small standards says: the changes in words, and the fish on which they part."""

from itertools import combinations, permutations, product

import pytest

import koirules
from koirules.analysis.diff.changes import Kind
from koirules.analysis.diff.moves import Because
from koirules.analysis.diff.parting import Verdict
from koirules.analysis.diff.reordering import moved
from koirules.candidates.ordinary import telling_values
from koirules.standard.cuts import cuts_of
from koirules.testing import registry_with

BOX = registry_with()
HEAD = 'standard "s" edition 1\n'
TRAITS = """trait edge as scale poor < fair < good, more is better
trait size as number in cm from 0 to 50, more is better
trait specks as count up to 9, less is better
trait bent as yes or no
"""
BODY = """term small means size below 12 cm
fault crooked "crooked" if bent: no better than c
fault many "many specks" if specks at least 3: no better than b
section look worth 100
points edge weight 2 by edge: poor gives 0, fair gives 5, good gives 10
points size by size: 10 cm gives 0, 30 cm gives 10
bonus clean 3 if specks is 0
grade a if score at least 70
grade b if score at least 40
grade c otherwise
"""


def standard(text, traits=TRAITS):
    return koirules.read_standard(HEAD + traits + text, registry=BOX)


def compared(old, new, traits=TRAITS):
    return standard(old).compare(standard(new, traits))


def changed(old, new):
    assert old in BODY
    return compared(BODY, BODY.replace(old, new))


def words(found):
    return [change.words for change in found.changes]


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("score at least 70", "score at least 72", "grade a: if score at least 72, was score at least 70"),
        ("weight 2 by", "weight 3 by", "points edge: weight 3, was 2"),
        ("fair gives 5", "fair gives 6", "points edge: fair gives 6, was 5"),
        ("30 cm gives 10", "28 cm gives 10", "points size: 28 cm gives 10 (new); 30 cm gives 10 (gone)"),
        ("if bent: no better than c", "if bent: no better than b", "fault crooked: no better than b, was c"),
        ("if bent:", "if bent except edge is good:", "fault crooked: except edge is good (new)"),
        ("clean 3 if", "clean 4 if", "bonus clean: points 4, was 3"),
        ("below 12 cm", "below 11 cm", "term small: means size below 11 cm, was size below 12 cm"),
        ("bonus clean 3 if specks is 0\n", "", "bonus clean: removed"),
        ("grade c otherwise", 'grade c otherwise\nalert x "x" if batch share of (bent) above 5 %', "alert x: added"),
        ('"crooked"', '"a bent back"', 'fault crooked: label "a bent back", was "crooked"'),
    ],
)
def test_a_change_is_told_by_its_statement_with_the_old_and_the_new_value(old, new, told):
    assert words(changed(old, new)) == [told]


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("below 12 cm", "below 120 mm"),
        ("weight 2 by", "weight 2.0 by"),
        ("poor gives 0, fair gives 5, good gives 10", "poor gives 0, good gives 10, anything else gives 5"),
        ("10 cm gives 0, 30 cm", "100 mm gives 0, 0.3 m"),
        ("specks at least 3", "(specks at least 3)"),
        ("size below 12 cm", "12 cm above size"),
    ],
)
def test_other_words_that_mean_the_same_are_no_change_of_meaning(old, new):
    found = changed(old, new)
    assert {change.kind for change in found.changes} <= {Kind.REWORDED}
    assert not found.counting
    assert found.parting.verdict is Verdict.NEVER


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("bent and specks at least 3", "specks at least 3 and bent"),
        ("size + 2 * size above 60 cm", "size * 2 + size above 60 cm"),
        ("count of (bent, specks is 1) at least 1", "count of (specks is 1, bent) at least 1"),
    ],
)
def test_the_order_of_what_is_joined_is_no_change(one, other):
    found = compared(BODY.replace("if bent", f"if {one}"), BODY.replace("if bent", f"if {other}"))
    assert [change.kind for change in found.changes] == [Kind.REWORDED]
    assert found.parting.verdict is Verdict.NEVER


def test_a_renamed_term_is_told_once_and_what_reads_it_is_no_change():
    old = BODY + "fault little if small: no better than b\n"
    new = old.replace("term small", "term tiny").replace("if small", "if tiny")
    found = compared(old, new)
    assert words(found) == ["term tiny: was term small"]
    assert not found.counting
    assert found.parting.verdict is Verdict.NEVER


def test_a_renamed_grade_is_the_same_grade():
    new = BODY.replace("grade b if", "grade hold if").replace("than b", "than hold")
    found = compared(BODY, new)
    assert words(found) == ["grade hold: was grade b"]
    assert found.renamed == {"hold": "b"}
    assert found.parting.verdict is Verdict.NEVER


def test_a_statement_with_its_label_kept_is_renamed_and_changed():
    found = changed('fault many "many specks" if specks at least 3', 'fault specked "many specks" if specks at least 4')
    assert words(found) == ["fault specked: was fault many; if specks at least 4, was specks at least 3"]


def test_grades_in_another_order_are_moved_and_other_statements_only_stand_elsewhere():
    old = "grade a if bent\ngrade b if size above 20 cm\ngrade c otherwise\n"
    found = compared(old, "grade b if size above 20 cm\ngrade a if bent\ngrade c otherwise\n")
    assert [(change.kind, change.counts) for change in found.changes] == [(Kind.MOVED, True)]
    assert found.parting.verdict is Verdict.DIFFER
    lines = BODY.splitlines(keepends=True)
    swapped = "".join([lines[0], lines[2], lines[1], *lines[3:]])
    moved = compared(BODY, swapped)
    assert [(change.kind, change.counts) for change in moved.changes] == [(Kind.MOVED, False)]
    assert moved.parting.verdict is Verdict.NEVER


def test_a_criterion_that_went_to_another_section_says_so():
    split = BODY.replace("points size", "section more worth 10\npoints size").replace("look worth 100", "look worth 90")
    found = compared(BODY, split)
    assert "points size: section more, was look" in words(found)
    assert "section look: worth 90, was 100" in words(found)


def test_a_change_of_a_trait_is_told_and_fish_have_what_both_can_read():
    traits = TRAITS.replace("poor < fair < good", "bad < poor < fair < good").replace("from 0 to 50", "from 5 to 45")
    new = BODY.replace("poor gives 0", "bad gives 0, poor gives 0").replace("fair gives 5", "fair gives 8")
    found = compared(BODY, new, traits)
    assert "trait edge: as scale bad < poor < fair < good, was scale poor < fair < good" in words(found)
    parting = found.parting
    assert parting.verdict is Verdict.DIFFER
    assert koirules.vocabulary.readings.write_reading(parting.traits["edge"].kind, parting.fish["edge"]) == "fair"


def test_a_trait_of_another_kind_leaves_no_record_for_both():
    traits = TRAITS.replace("bent as yes or no", "bent as count up to 3")
    found = compared(BODY, BODY.replace("if bent", "if bent above 0"), traits)
    assert found.parting.verdict is Verdict.APART
    assert found.parting.apart == ("bent",)


DIFFERENT = [
    ("score at least 70", "score at least 71"),
    ("weight 2 by", "weight 2.5 by"),
    ("30 cm gives 10", "29 cm gives 10"),
    ("if bent: no better than c", "if bent and size above 20 cm: no better than c"),
    ("specks at least 3", "specks at least 3 and edge at most fair and not bent"),
    ("clean 3 if specks is 0", "clean 3 if specks is 0 or edge is fair"),
]


@pytest.mark.parametrize(("old", "new"), DIFFERENT)
def test_the_fish_that_is_told_is_graded_differently_and_none_that_is_tried_has_fewer_traits_changed(old, new):
    one, other = standard(BODY), standard(BODY.replace(old, new))
    parting = one.compare(other).parting
    assert parting.verdict is Verdict.DIFFER
    graded = [each.grader.named(each.grader.trace(parting.fish).possible) for each in (one, other)]
    assert graded == [parting.old.possible, parting.new.possible]
    assert graded[0] != graded[1]

    def away(record):
        return sum(record[name] != parting.ordinary[name] for name in parting.ordinary)

    assert away(parting.fish) == parting.away
    assert parting.fewest
    cuts = [cuts_of(each.rules, each.settings) for each in (one, other)]
    values = {
        name: {value for cut in cuts for value in telling_values(one.traits[name], cut[name])}
        | {parting.ordinary[name]}
        for name in parting.ordinary
    }
    tried = [dict(zip(values, each, strict=True)) for each in product(*values.values())]
    assert len(tried) > 100
    differ = [r for r in tried if one.grader.trace(r).possible != other.grader.trace(r).possible]
    assert min(map(away, differ), default=9) >= parting.away


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("grade a if score at least 70", "grade a if score at least 70 and (bent or not bent)"),
        ("bonus clean 3", "bonus never 5 if specks is 0 and specks above 1 + specks\nbonus clean 3"),
        ("grade b if score at least 40", "grade b if score at least 40 and score above 39.99"),
        ("10 cm gives 0, 30 cm gives 10", "10 cm gives 0, 20 cm gives 5, 30 cm gives 10"),
        ("clean 3 if specks is 0", "clean 3 if specks is 0 or bent"),  # whoever is bent gets c
        ("fault many", "fault lot if specks at least 4: no better than b\nfault many"),
    ],
)
def test_changes_that_change_no_grade_are_proved_to(old, new):
    found = changed(old, new)
    assert found.counting
    assert found.parting.verdict is Verdict.NEVER


def test_a_figure_of_the_batch_that_is_worked_out_otherwise_is_another_value():
    figure = BODY + "fault slim if size below batch median of span: no better than b\nterm span means size + 1 cm\n"
    found = compared(figure, figure.replace("size + 1 cm", "size + 2 cm"))
    assert found.parting.verdict is Verdict.DIFFER
    same = compared(figure, figure.replace("clean 3", "clean 3.00"))
    assert same.parting.verdict is Verdict.NEVER


def test_settings_count_by_their_value():
    old = 'setting bar = 70 from 50 to 90 "the bar"\n' + BODY.replace("at least 70", "at least bar")
    new = old.replace("= 70", "= 72")
    one, other = standard(old), standard(new)
    assert one.compare(other).parting.verdict is Verdict.DIFFER
    assert one.compare(other.with_settings({"bar": 70})).parting.verdict is Verdict.NEVER


def test_without_the_solver_fish_are_only_tried(monkeypatch):
    monkeypatch.setattr("koirules.analysis.diff.comparison.has_solver", lambda: False)
    assert changed("score at least 70", "score at least 71").parting.verdict is Verdict.DIFFER
    found = changed("grade a if score at least 70", "grade a if score at least 70 and (bent or not bent)")
    assert found.parting.verdict is Verdict.NOT_ASKED
    assert found.parting.solver_missing


def test_the_same_is_said_in_every_run():
    one, other = standard(BODY), standard(BODY.replace("weight 2", "weight 3"))
    assert one.compare(other).parting.fish == one.compare(other).parting.fish


def test_samples_that_the_other_edition_cannot_read_make_no_ordinary_fish():
    sample = 'sample "s" with edge good, size 48 cm, specks 0, bent no\n  comes out a\n'
    traits = TRAITS.replace("from 0 to 50", "from 0 to 45")
    found = compared(BODY + sample, BODY.replace("score at least 70", "score at least 71"), traits)
    assert found.parting.verdict is Verdict.DIFFER
    assert found.parting.ordinary["size"].high <= 45
    assert found.parting.fish["size"].high <= 45


def test_any_text_that_no_rule_names_is_as_ordinary_as_that_of_a_sample():
    text = TRAITS + "trait line as label\n"
    sample = 'sample "s" with line "north", bent no, specks 0, edge good, size 40 cm\n  comes out a\n'
    old = BODY + 'fault other if line is "east": no better than b\n' + sample
    new = old.replace("score at least 70", "score at least 71 and bent or score at least 70")
    one, other = (
        standard(old, text),
        standard(new.replace("no better than b\nsample", "no better than c\nsample"), text),
    )
    parting = one.compare(other).parting
    assert (parting.verdict, parting.away, parting.fewest) == (Verdict.DIFFER, 1, True)
    assert parting.fish["line"] == "east"


@pytest.mark.parametrize("size", range(6))
def test_the_fewest_are_moved(size):
    for row in permutations(range(size)):
        # By hand: the longest part of the row that rises, of all its parts.
        rising = max(len(part) for n in range(size + 1) for part in combinations(row, n) if list(part) == sorted(part))
        taken = moved(range(size), row)
        assert len(taken) == size - rising
        rest = [one for one in row if one not in taken]
        assert rest == sorted(rest)


def test_records_give_moves_in_the_library_too():
    one, other = standard(BODY), standard(BODY.replace("fault many", "fault lot").replace("at least 3", "at least 2"))
    fish = {"fish": "K1", "edge": "good", "size": 40, "specks": 2, "bent": "no"}
    moves = one.compare(other, [fish, {**fish, "fish": "K2", "specks": 0}]).moves
    assert [(move.fish, move.old.possible, move.new.possible, move.by) for move in moves.moves] == [
        ("K1", ("a",), ("b",), ("fault lot",))
    ]
    with pytest.raises(koirules.RecordError):
        one.compare(other, [{**fish, "edge": "gone"}])


def test_a_new_section_comes_with_its_criteria_and_a_figure_of_the_batch_is_worked_out_for_each_edition():
    section = "section extra worth 28\npoints specks by specks: 0 gives 10, 9 gives 0\n"
    old = BODY.replace("look worth 100", "look worth 72")
    new = old.replace("grade a if", f"{section}grade a if", 1).replace(
        "fault many", "fault slim if size below batch median of size: no better than c\nfault many"
    )
    fish = [{"fish": str(i), "edge": "good", "size": 20 + i, "specks": 0, "bent": "no"} for i in range(3)]
    found = standard(old).compare(standard(new), fish)
    moves = {move.fish: (move.old.possible, move.new.possible, move.because, move.by) for move in found.moves.moves}
    assert moves["1"] == (("b",), ("a",), Because.ALONE, ("section extra",))
    assert moves["0"] == (("b",), ("c",), Because.ALONE, ("fault slim",))
