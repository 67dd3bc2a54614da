"""Looks: those of one sorting are put together, rounds judge at a look, and a new sorting takes over what the page says."""

import polars as pl
import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.results.course import Fate
from koirules.results.decisions import Decision
from koirules.testing import registry_with

BOX = registry_with()
PAGE = """standard "Stillwater (invented)" edition 1 variety kohaku
silence means outline is fair
carry forward shiroji
section body worth 100
points outline by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10
points kiwa by kiwa: blurred gives 0, fair gives 5, sharp gives 9, razor gives 10
bonus white 4 if shiroji is recorded and shiroji is snow
bonus better 1 if kiwa at least sharp and earlier kiwa is recorded and earlier kiwa at most fair
grade keep if score at least 70
grade sell otherwise
round first "first look" at look 1 keep those with grade is keep
round second "second look" at look 2 from all keep those with grade is keep rescues 1
round last "everything known" from all pick 1 by highest score
"""
STANDARD = koirules.read_standard(PAGE, registry=BOX)
ROWS = [
    {"fish": "1", "look": 1, "outline": "good", "kiwa": "sharp", "lustre": "good"},
    {"fish": "2", "look": 1, "kiwa": "sharp"},
    {"fish": "3", "outline": "good", "kiwa": "sharp"},
    {"fish": "1", "look": 2, "kiwa": "blurred"},
    {"fish": "2", "look": "2", "outline": "excellent", "kiwa": "?"},
    {"fish": "1", "look": 3, "kiwa": "fair", "outline": "excellent"},
]


def graded(rows, decisions=()):
    return STANDARD.grade_batch(rows, decisions)


def test_a_later_look_adds_to_the_earlier_ones_and_corrects_them():
    one, two, three = graded(ROWS).results
    assert [(look.number, look.possible, float(look.score_low), float(look.score_high)) for look in one.looks] == [
        (1, ("keep",), 85.0, 85.0),
        (2, ("sell",), 40.0, 40.0),
        (3, ("keep",), 75.0, 75.0),
    ]
    assert [look.changes for look in one.looks] == [
        (),
        ("rear and side edge of the red (kiwa): blurred instead of sharp",),
        (
            "outline from above: excellent instead of good",
            "rear and side edge of the red (kiwa): fair instead of blurred",
        ),
    ]
    # What cannot be told any more is open, and what nobody mentioned at the first look was silent then.
    assert [(look.possible, float(look.score_low)) for look in two.looks] == [
        (("keep",), 70.0),
        (("keep", "sell"), 50.0),
    ]
    assert two.looks[1].changes == ("rear and side edge of the red (kiwa): nobody can tell instead of sharp",)
    assert (one.carried, two.carried, three.looks) == (("lustre",), (), ())


def test_rounds_judge_at_a_look_or_by_everything_known():
    outcome = graded(ROWS)
    fates = {one.fish: {step.round: step.fate for step in one.course} for one in outcome.results}
    assert fates["1"] == {"first": Fate.KEPT, "second": Fate.LEFT, "last": Fate.OVER}
    assert fates["2"] == {"first": Fate.KEPT, "second": Fate.LEFT, "last": Fate.OVER}
    # A fish without that look is judged at its latest before it.
    assert fates["3"] == {"first": Fate.KEPT, "second": Fate.KEPT, "last": Fate.KEPT}
    step = next(step for step in outcome.results[0].course if step.round == "second")
    assert step.why == "grade is sell, not keep"


def test_hand_decisions_hold_per_round():
    kept = Decision("1", "", "second", "S. Orter", "it was the light")
    outcome = graded(ROWS, [kept])
    (one, *_) = outcome.results
    assert {step.round: step.fate for step in one.course}["second"] is Fate.KEPT
    assert {step.round: step.fate for step in one.course}["last"] is Fate.OVER


def test_a_new_sorting_carries_nothing_but_what_the_page_says():
    rows = [
        {"fish": "1", "date": "2026-05-01", "look": 1, "kiwa": "fair", "shiroji": "snow", "outline": "good"},
        {"fish": "1", "date": "2026-05-02", "look": 2, "kiwa": "blurred"},
        {"fish": "1", "date": "2026-09-01", "kiwa": "razor"},
        {"fish": "1", "date": "2026-09-03", "look": 2, "lustre": "good"},
    ]
    (one,) = graded(rows).results
    # kiwa razor 50, outline open since May saw it good (0 to 50), snow carried 4, better than in May 1.
    assert (float(one.score_low), float(one.score_high)) == (55.0, 100.0)
    assert one.carried == ("kiwa", "shiroji")
    assert one.assumed == ()


@pytest.mark.parametrize(
    ("rows", "code"),
    [
        ([{"fish": "1", "look": "first", "kiwa": "fair"}], "not-a-look"),
        ([{"fish": "1", "look": 0, "kiwa": "fair"}], "not-a-look"),
        ([{"fish": "1", "look": 1}, {"fish": "1", "look": 2}, {"fish": "1", "look": 2}], "doubled-number"),
        ([{"fish": "1", "look": 1}, {"fish": "1"}], "doubled-fish"),
    ],
)
def test_looks_that_cannot_be_put_together(rows, code, tmp_path):
    with pytest.raises(koirules.RecordError) as found:
        graded(rows)
    assert [problem.code for problem in found.value.problems] == [code]
    lines = "".join(f"{row['fish']},{row.get('look', '')},{row.get('kiwa', '')}\n" for row in rows)
    (tmp_path / "looks.csv").write_text("fish,look,kiwa\n" + lines, encoding="utf-8")
    (tmp_path / "page.koi").write_text(PAGE, encoding="utf-8")
    told = CliRunner().invoke(main, ["grade", str(tmp_path / "page.koi"), str(tmp_path / "looks.csv")])
    assert told.exit_code == 2 and f"[{code}]" in told.output


def test_files_tell_of_looks(tmp_path):
    (tmp_path / "page.koi").write_text(PAGE, encoding="utf-8")
    names = ["fish", "look", "outline", "kiwa", "lustre"]
    lines = [",".join(str(row.get(name, "")) for name in names) for row in ROWS]
    (tmp_path / "looks.csv").write_text("\n".join([",".join(names), *lines]) + "\n", encoding="utf-8")
    page, records = str(tmp_path / "page.koi"), str(tmp_path / "looks.csv")
    for ending in ("csv", "json", "html"):
        told = CliRunner().invoke(main, ["grade", page, records, "--out", str(tmp_path / f"out.{ending}")])
        assert told.exit_code == 0, told.output
    rows = (tmp_path / "out.csv").read_text(encoding="utf-8").splitlines()
    assert ",looks,changed,carried," in rows[0]
    assert any('"look 1: keep, 85; look 2: sell, 40; look 3: keep, 75"' in row for row in rows)
    assert '"look": 2' in (tmp_path / "out.json").read_text(encoding="utf-8")
    assert "Look 2: " in (tmp_path / "out.html").read_text(encoding="utf-8")
    why = CliRunner().invoke(main, ["why", page, records, "1"]).output
    assert "look 2: sell, score 40; rear and side edge of the red (kiwa): blurred instead of sharp" in " ".join(
        why.split()
    )


def test_frames_and_whole_files_refuse_numbered_looks(tmp_path):
    with pytest.raises(koirules.RecordError) as found:
        STANDARD.grade_frame(pl.DataFrame(ROWS[:1]))
    assert [problem.code for problem in found.value.problems] == ["looks-in-frame"]
    (tmp_path / "page.koi").write_text(PAGE, encoding="utf-8")
    lines = [line for line in PAGE.splitlines() if not line.startswith(("round", "carry")) and "earlier" not in line]
    (tmp_path / "plain.koi").write_text("\n".join(lines), encoding="utf-8")
    for name in ("a", "b"):
        (tmp_path / f"{name}.csv").write_text("fish,look,kiwa\n1,1,fair\n", encoding="utf-8")
    for page in ("page", "plain"):
        files = [str(tmp_path / f"{name}.csv") for name in ("a", "b")]
        told = CliRunner().invoke(main, ["grade", str(tmp_path / f"{page}.koi"), *files])
        assert told.exit_code == 2
        assert "[no-looks]" in told.output


def test_a_look_without_a_day_beside_one_with_a_day_is_a_problem():
    with pytest.raises(koirules.RecordError) as caught:
        graded([{"fish": "1", "kiwa": "sharp"}, {"fish": "1", "date": "2026-11-02", "kiwa": "fair"}])
    assert [problem.code for problem in caught.value.problems] == ["undated-look"]
    later = {"fish": "1", "date": "2026-11-02", "look": 2, "kiwa": "fair"}
    (one,) = graded([{"fish": "1", "kiwa": "sharp"}, later]).results
    assert len(one.looks) == 2


def test_a_fish_that_was_passed_over_is_told_which_one_stood_above_it_and_one_that_was_picked_is_not():
    page = PAGE.split("round first", maxsplit=1)[0] + 'round only "pick" from all pick 1 by highest score\n'
    best, other = (
        koirules.read_standard(page, registry=BOX)
        .grade_batch(
            [{"fish": "1", "outline": "good", "kiwa": "sharp"}, {"fish": "2", "outline": "fair", "kiwa": "fair"}]
        )
        .results
    )
    assert [step.above for step in best.course] == [()]
    assert [step.above for step in other.course] == [("1",)]
