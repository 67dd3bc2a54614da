"""Several judges of one fish: by every way in, with looks, earlier sortings, rounds, and what is refused."""

from __future__ import annotations

import json
from datetime import date
from decimal import Decimal

import pandas as pd
import polars as pl
import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.meaning.panels import PanelWay, in_the_middle, points_together
from koirules.problems import RecordError

HEAD = 'standard "Thornwick Open"\n  edition 2026-1\n  variety kohaku\n'
BODY = """
fault specks "black specks" if shimi_count at least 1: no better than out
section body "body" worth 100
points outline "outline" by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10
grade first if score at least 60
grade out otherwise
round best "best" pick 1 by highest score
"""
MEANS = "panel show by mean of score\n"
VOTES = "panel show by votes\n"
TRAITS = "panel show trait by trait\n"


def standard(panel, body=BODY):
    return koirules.read_standard(HEAD + panel + body)


def judged(*outlines, fish="1", **more):
    return [{"fish": fish, "judge": f"J{n}", "outline": one, **more} for n, one in enumerate(outlines) if one]


def graded(panel, rows, body=BODY):
    return standard(panel, body).grade_batch(rows).results


def test_what_the_judges_say_comes_first_in_the_reasons():
    (found,) = graded(MEANS, judged("good", "good", "excellent", "good", "fair", shimi_count=0))
    assert found.why.startswith("5 judges; 4 say first, 1 says out; scores 50 to 100, together 78; ")
    assert [(one.judge, one.result.grade) for one in found.panel.judges][-1] == ("J4", "out")
    assert found.score == Decimal(78)


def test_a_tie_of_votes_stays_open_and_is_told():
    (found,) = graded(VOTES, judged("good", "fair", shimi_count=0))
    assert found.possible == ("first", "out")
    assert "tied between first and out" in found.why


def test_a_tie_of_a_trait_stays_open_and_is_told():
    (found,) = graded(TRAITS, judged("good", "fair", shimi_count=0))
    assert found.possible == ("first", "out")
    assert "tied on outline from above (fair or good)" in found.why
    (settled,) = graded(TRAITS.rstrip() + " of two in the middle the lower\n", judged("good", "fair", shimi_count=0))
    assert settled.grade == "out"


def test_a_fault_that_few_judges_find_does_not_bite_and_is_told():
    rows = judged("good", "good", "good", shimi_count=0)
    rows[0]["shimi_count"] = 2
    for panel in (MEANS, TRAITS):
        (found,) = graded(panel, rows)
        assert (found.grade, found.faults) == ("first", ())
        assert "1 finds black specks" in found.why
    rows[1]["shimi_count"] = 1
    assert [graded(panel, rows)[0].faults for panel in (MEANS, TRAITS, VOTES)] == [("specks",)] * 3


def test_a_judge_who_is_missing_could_still_say_anything():
    panel = MEANS.rstrip() + " at least 3 judges\n"
    (found,) = graded(panel, judged("good", "good", shimi_count=0))
    assert (found.score_low, found.score_high) == (Decimal("53.33"), Decimal("86.67"))
    assert found.possible == ("first", "out")
    assert found.panel.missing == 1
    assert found.why.startswith("2 judges, 1 more is needed; 2 say first")


def test_the_row_without_a_judge_holds_for_all_who_say_nothing_else():
    rows = [
        {"fish": "1", "shimi_count": 0, "outline": "poor"},
        *judged("good", "good", None),
        {"fish": "1", "judge": "C"},
    ]
    (found,) = graded(TRAITS, rows)
    assert found.grade == "first"
    assert [one.result.score for one in found.panel.judges] == [80, 80, 0]


def test_a_fish_with_one_record_is_graded_as_ever():
    (found,) = graded(TRAITS.rstrip() + " at least 3 judges\n", [{"fish": "1", "shimi_count": 0, "outline": "good"}])
    assert (found.grade, found.panel) == ("first", None)


def test_rounds_pick_by_what_the_panel_came_to():
    rows = judged("good", "excellent", "good", shimi_count=0) + judged(
        "fair", "excellent", "excellent", fish="2", shimi_count=0
    )
    by_mean = standard(MEANS).grade_batch(rows)
    by_trait = standard(TRAITS).grade_batch(rows)
    assert [one.score for one in by_mean.results] == [Decimal("86.67"), Decimal("83.33")]
    assert by_mean.rounds[0].kept == ("1",)
    assert by_trait.rounds[0].kept == ("2",)


def test_a_later_look_of_a_judge_corrects_that_judge_alone():
    body = BODY.replace("round best", 'round early "early" at look 1 keep those with grade is first\nround best')
    rows = judged("good", "good", "fair", shimi_count=0)
    rows += [{"fish": "1", "judge": "J0", "look": 2, "outline": "fair"}]
    found = standard(TRAITS, body).grade_batch(rows)
    assert found.results[0].grade == "out"
    assert found.rounds[0].kept == ("1",)


def test_judges_of_an_earlier_day_are_the_look_before():
    body = BODY.replace("grade first if", "grade first if earlier outline is good and")
    rows = [{**row, "date": date(2026, 5, 1)} for row in judged("good", "good", "good", shimi_count=0)]
    rows += [{**row, "date": date(2026, 10, 1)} for row in judged("excellent", "good", shimi_count=0)]
    (found,) = graded(TRAITS, rows, body)
    assert (found.grade, len(found.panel.judges)) == ("first", 2)


def test_capital_letters_make_no_other_judge():
    rows = [{"fish": "1", "judge": "judge A", "outline": "good"}, {"fish": "1", "judge": "Judge A", "outline": "fair"}]
    with pytest.raises(RecordError, match="doubled-judge"):
        graded(TRAITS, rows)


def test_the_page_without_a_panel_is_named(tmp_path):
    page = tmp_path / "other_page.koi"
    page.write_text('standard "own" edition 1 variety kohaku\ngrade any otherwise\n', encoding="utf-8")
    with pytest.raises(RecordError, match="other_page"):
        koirules.load_standard(str(page)).grade_batch(judged("poor", "good"))


def test_without_a_panel_several_judges_are_refused_and_one_is_not():
    with pytest.raises(RecordError, match="no-panel"):
        graded("", judged("good", "good"))
    (found,) = graded("", judged("good", shimi_count=0))
    assert (found.grade, found.panel) == ("first", None)


def test_a_trait_called_judge_is_a_trait():
    body = 'trait judge as label\ngrade first if judge is "J0"\ngrade out otherwise\n'
    assert graded("", judged("good"), body)[0].grade == "first"


@pytest.mark.parametrize("kind", ["polars", "pandas"])
def test_a_frame_gives_every_row_what_the_panel_came_to(kind):
    rows = judged("good", "good", "fair", shimi_count=0) + judged("fair", fish="2", shimi_count=0)
    rows += [{"fish": "3", "judge": None, "outline": "good", "shimi_count": 0}]
    frame = pl.DataFrame(rows) if kind == "polars" else pd.DataFrame(rows)
    made = standard(MEANS).grade_frame(frame)
    found = standard(MEANS).grade_batch(rows)
    scores = {one.fish: float(one.score) for one in found.results}
    assert list(made["score"]) == [scores[name] for name in made["fish"]]
    assert list(made["grade"]) == ["first"] * 3 + ["out", "first"]
    kept = {one.fish: "|".join(one.kept_by) or None for one in found.results}
    assert [one or None for one in made["kept_by"]] == [kept[name] for name in made["fish"]]


def test_a_frame_leaves_rows_of_earlier_days_alone():
    rows = [{**row, "date": "2026-05-01"} for row in judged("poor", shimi_count=0)]
    rows += [{**row, "date": "2026-10-01"} for row in judged("good", "good", shimi_count=0)]
    made = standard(MEANS).grade_frame(pl.DataFrame(rows))
    assert made["grade"].to_list() == [None, "first", "first"]


def test_a_frame_is_refused_where_judges_cannot_be_told_apart():
    grade_frame = standard(MEANS).grade_frame
    with pytest.raises(RecordError, match="judges-without-fish"):
        grade_frame(pl.DataFrame(judged("good")).drop("fish"))
    with pytest.raises(RecordError, match="doubled-judge"):
        grade_frame(pl.DataFrame(judged("good") * 2))


def run(*words):
    return CliRunner().invoke(main, [str(word) for word in words])


@pytest.fixture
def files(tmp_path):
    rules = tmp_path / "open.koi"
    rules.write_text(HEAD + MEANS + BODY, encoding="utf-8")
    records = tmp_path / "judged.csv"
    records.write_text(
        "fish,judge,outline,shimi_count\n1,,,0\n1,A,good,\n1,B,excellent,\n1,C,fair,\n2,,good,0\n", encoding="utf-8"
    )
    return rules, records


def test_files_of_results_tell_what_each_judge_came_to(files, tmp_path):
    rules, records = files
    done = run(
        "grade", rules, records, "--out", tmp_path / "r.json", "--out", tmp_path / "r.csv", "--out", tmp_path / "r.html"
    )
    assert done.exit_code == 0, done.output
    first, second = json.loads((tmp_path / "r.json").read_text(encoding="utf-8"))["results"]
    assert [(one["judge"], one["grade"], one["score_low"]) for one in first["panel"]["judges"]] == [
        ("A", "first", 80),
        ("B", "first", 100),
        ("C", "out", 50),
    ]
    assert "panel" not in second
    assert "3 judges; 2 say first, 1 says out" in (tmp_path / "r.csv").read_text(encoding="utf-8")
    assert "3 judges; 2 say first, 1 says out" in (tmp_path / "r.html").read_text(encoding="utf-8")
    told = run("why", rules, records, "1").output
    assert "A: first, 80" in told
    assert "C: out, 50" in told


def test_whole_files_cannot_have_judges(files, tmp_path):
    rules, records = files
    (tmp_path / "lots").mkdir()
    records.rename(tmp_path / "lots" / "judged.csv")
    done = run("grade", rules, tmp_path / "lots")
    assert done.exit_code == 2
    assert "panel-of-whole-files" in done.output


def test_judges_need_not_write_the_variety_of_a_fish_in_a_mixed_batch(files, tmp_path):
    rules, records = files
    records.write_text(
        "fish,variety,judge,outline,shimi_count\n1,kohaku,,,0\n1,,A,good,\n1,,B,good,\n9,unheard of,,good,\n9,,A,good,\n",
        encoding="utf-8",
    )
    other = tmp_path / "other.koi"
    other.write_text((HEAD + MEANS + BODY).replace("variety kohaku", "variety kohaku\n  stage tosai"), encoding="utf-8")
    done = run("grade", rules, records, "--all")
    assert done.exit_code == 0, done.output
    done = run("grade", tmp_path, records, "--all")
    assert "no standard for unheard of" in done.output
    assert done.output.count("unheard of") == 1


def test_lines_of_a_score_add_up_where_judges_are_put_together():
    body = (
        BODY.replace("worth 100", "worth 50")
        + """
section skin "skin" worth 50
points lustre "lustre" by lustre: dull gives 0, fair gives 3, good gives 7, superb gives 10
bonus lips "red lips" 5 if kuchibeni is yes
"""
    )
    rows = judged("good", "excellent", "fair", shimi_count=0)
    words = ("superb", "dull", "good")
    for row, lustre in zip(rows, words, strict=True):
        row |= {"lustre": lustre, "kuchibeni": lustre == "superb"}
    for panel in (MEANS, "panel show by median of score\n", VOTES, TRAITS):
        (found,) = graded(panel, rows, body)
        assert sum(line.points for line in found.contributions) == found.score_low
    (found,) = graded("panel show by median of score\n", rows, body)
    assert sum(one.low for one in found.sections.values()) != found.score  # 40, 35 and 75
    assert found.nearest_changes() == koirules.candidates.changes.NearestChanges()


def test_a_page_changes_or_drops_the_panel_of_its_base(tmp_path):
    (tmp_path / "base.koi").write_text(HEAD + MEANS + BODY, encoding="utf-8")
    own = 'standard "own"\n  edition 1\n  based on "base.koi" edition 2026-1\n'
    rows = judged("poor", "excellent", "excellent", shimi_count=0)
    for change, score in (("", "66.67"), ("replace panel show by median of score", "100")):
        made = koirules.read_standard(own + change + "\n", folder=tmp_path)
        assert made.grade_batch(rows).results[0].score == Decimal(score)
    dropped = koirules.read_standard(own + "drop panel show\n", folder=tmp_path)
    with pytest.raises(RecordError, match="no-panel"):
        dropped.grade_batch(rows)
    with pytest.raises(koirules.StandardError, match=r'"show" stands on line 4 of base\.koi already'):
        koirules.read_standard(own + "panel mine by votes\n", folder=tmp_path)


def test_editions_that_put_judges_together_otherwise_are_compared_by_what_judges_recorded():
    rows = judged("poor", "excellent", "excellent", shimi_count=0) + judged("good", "good", fish="2", shimi_count=0)
    found = standard(MEANS).compare(standard("panel show by median of score\n"), rows)
    assert found.of_judges
    assert [change.about for change in found.counting] == ["panel show"]
    assert found.moves.rescored == 1
    assert standard(MEANS).compare(standard(MEANS), rows).moves.rescored == 0
    moved = standard(MEANS).compare(standard("panel show by votes at least 4 judges\n"), rows)
    assert [move.fish for move in moved.moves.moves] == ["1", "2"]


def test_the_seal_of_a_page_without_a_panel_does_not_change():
    assert standard("").seal.startswith("1-")
    assert standard(MEANS).seal.startswith("3-")
    assert (
        len({standard(panel).seal for panel in (MEANS, VOTES, TRAITS, TRAITS.rstrip() + " at least 3 judges\n")}) == 4
    )
    assert (
        "panel show trait by trait at least 3 judges"
        in standard(TRAITS.rstrip() + " at least 3 judges\n").canonical_text
    )


def test_a_session_at_the_tub_takes_no_records_of_judges(files, tmp_path):
    rules, records = files
    done = run("ask", rules, "--records", records, "--out", tmp_path / "asked.csv")
    assert done.exit_code == 2
    assert "one-recorder" in done.output
    assert not (tmp_path / "asked.csv").exists()


def test_the_class_of_a_fish_is_that_of_the_row_without_a_judge(tmp_path):
    records = tmp_path / "judged.csv"
    records.write_text(
        "fish,variety,judge,length (cm)\n1,kohaku,,14\n1,,A,90\n2,kohaku,A,14\n2,kohaku,B,14\n3,kohaku,A,14\n3,kohaku,B,30\n",
        encoding="utf-8",
    )
    done = run("classes", "lantern_bay_young", records, "--json")
    assert done.exit_code == 0, done.output
    told = json.loads(done.stdout)["fish"]
    assert [one["fish"] for one in told] == ["1", "2", "3"]
    assert told[0]["class_sizes"] == told[1]["class_sizes"] != told[2]["class_sizes"]


def test_customers_see_no_judges(files, tmp_path):
    rules, records = files
    done = run("grade", rules, records, "--out", tmp_path / "c.html", "--for", "customer")
    assert done.exit_code == 0, done.output
    assert "judges" not in (tmp_path / "c.html").read_text(encoding="utf-8")


# ---- Numbers from outside ----------------------------------------------------------------------------------------


def test_means_and_medians_of_seven_judges():
    """Seven judges 70 74 75 78 79 86 95: mean 79.571429, median 78, without highest and lowest 78.4 (NumPy and SciPy)."""
    points = [7000, 7400, 7500, 7800, 7900, 8600, 9500]
    assert points_together(PanelWay.MEAN, points, None) == 7957
    assert points_together(PanelWay.MEDIAN, points, None) == 7800
    assert points_together(PanelWay.TRIMMED, points, None) == 7840


def test_halfway_is_exact_in_decimals():
    """A double sum would give 12.149999999999999 (IEEE 754): the number halfway is that of the decimals as they are written."""
    assert in_the_middle([(12.1, 12.1), (12.2, 12.2)], None, halfway=True) == (12.15, 12.15)
    assert in_the_middle([(0.1, 0.1), (0.2, 0.2)], None, halfway=True) == (0.15, 0.15)
