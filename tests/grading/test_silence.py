"""What silence means for a fish, one by one: which fish, which traits, what is said of it, and what is asked of it."""

import json
from datetime import date

import polars as pl
import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.problems import is_refused
from koirules.runs.run import here, run_files
from koirules.runs.work import Job
from koirules.testing import registry_with

BOX = registry_with()
PAGE = """standard "Stillwater (invented)" edition 1 variety kohaku
silence means outline is fair, kiwa is fair unless steps is tancho, hi_cover is 30 % to 40 %, shimi_count is 0, girth_held is 5
trait girth_held as number from 0 to 9
fault spots if shimi_count is recorded and shimi_count at least 1: no better than sell
fault unseen "nobody looked at the edge" if kiwa is not recorded: no better than hold
section body worth 100
points outline by outline: poor gives 0, fair gives 5, good gives 8, excellent gives 10
points kiwa by kiwa: blurred gives 0, fair gives 5, sharp gives 9, razor gives 10
grade keep if score at least 75
grade hold if score at least 60
grade sell otherwise
"""
PAGE_ALONE = koirules.read_standard(PAGE, registry=BOX)


def grade(**record):
    return PAGE_ALONE.grade(record)


@pytest.mark.parametrize(
    ("record", "assumed"),
    [
        ({}, ()),
        ({"pond": "a"}, ()),
        ({"length": 14}, ()),
        ({"hi_patches": "8 to 26 left 60 right 55"}, ()),
        ({"lustre": "good"}, ("outline", "kiwa", "shimi_count")),
        ({"outline": "?"}, ()),
        ({"outline": "?", "lustre": "good"}, ("kiwa", "shimi_count")),
        ({"steps": "tancho"}, ("outline", "shimi_count")),
        ({"steps": "tancho or ippon"}, ("outline", "kiwa", "shimi_count")),
        ({"pond": "a", "looked": "yes"}, ("outline", "kiwa", "shimi_count")),
        ({"lustre": "good", "looked": False}, ()),
        ({"outline": "poor or fair", "kiwa": "sharp"}, ("shimi_count",)),
    ],
)
def test_which_traits_are_silent(record, assumed):
    assert grade(**record).assumed == assumed


def test_what_was_recorded_is_never_narrowed_and_is_recorded_is_about_what_was_written():
    said = grade(outline="good or excellent")
    assert (said.score_low, said.score_high) == (65, 75)
    assert said.reasons[1].state is koirules.State.YES  # nobody looked at the edge, whatever silence means
    assert said.rests_on_silence
    assert grade(outline="excellent", kiwa="razor", shimi_count=0).assumed == ()


def test_a_reason_says_what_nobody_mentioned_and_what_was_seen_stands_first():
    said = grade(kiwa="sharp")
    words = [reason.words for reason in said.main_reasons]
    assert words[:2] == [
        "kiwa: sharp, 9 of 10",
        "outline: fair (not mentioned), 5 of 10",
    ]


def test_what_follows_from_other_traits_goes_before_silence_where_all_of_them_were_recorded():
    page = PAGE.replace(
        "points kiwa by kiwa: blurred gives 0, fair gives 5, sharp gives 9, razor gives 10",
        "points cover by hi_cover: 20 % gives 0, 40 % gives 10",
    )
    standard = koirules.read_standard(page, registry=BOX)
    mapped = standard.grade({"lustre": "good", "hi_patches": "8 to 26 left 60 right 55"})
    assert "hi_cover" not in mapped.assumed
    assert "hi_cover" in standard.grade({"lustre": "good"}).assumed


def test_an_earlier_look_that_saw_otherwise_keeps_a_trait_open():
    looks = [
        {"fish": "1", "date": "2026-05-01", "outline": "poor", "kiwa": "fair"},
        {"fish": "1", "date": "2026-09-01", "lustre": "good"},
        {"fish": "2", "date": "2026-05-01", "outline": "fair"},
        {"fish": "2", "date": "2026-09-01", "lustre": "good"},
    ]
    one, two = PAGE_ALONE.grade_batch(looks, day=date(2026, 9, 1)).results
    assert (one.assumed, two.assumed) == (("kiwa", "shimi_count"), ("outline", "kiwa", "shimi_count"))
    frame = PAGE_ALONE.grade_frame(pl.DataFrame(looks, infer_schema_length=None))
    assert frame["assumed"].to_list()[1::2] == ["kiwa|shimi_count", "outline|kiwa|shimi_count"]


def test_samples_are_looks_and_can_say_that_something_is_not_known():
    page = (
        PAGE + 'sample "a" with lustre good comes out sell\nsample "b" with lustre good, outline not known stays open\n'
    )
    standard = koirules.read_standard(page, registry=BOX)
    from koirules.grading.sample_runs import run_samples

    assert [run.failures for run in run_samples(standard.grader)] == [(), ()]


def test_questions_ignore_silence_until_the_look_is_done():
    record = {"kiwa": "sharp"}
    assert [each.trait.name for each in PAGE_ALONE.questions(record)] == ["shimi_count", "outline"]
    assert PAGE_ALONE.next_question(record).trait.name in {"outline", "shimi_count"}
    assert PAGE_ALONE.questions(record | {"looked": "yes"}) == ()
    assert PAGE_ALONE.next_question(record | {"looked": "yes"}) is None


def test_a_frame_may_list_what_could_not_be_told_and_refuses_names_that_no_trait_has():
    frame = pl.DataFrame({"hi_cover": [30.0, 30.0], "cannot_tell": ["kiwa, outline", None]})
    assert PAGE_ALONE.grade_frame(frame)["assumed"].to_list() == ["shimi_count", "outline|kiwa|shimi_count"]
    with pytest.raises(koirules.RecordError) as found:
        PAGE_ALONE.grade_frame(frame.with_columns(cannot_tell=pl.lit("kiwi")))
    assert "kiwi" in str(found.value)
    looked = pl.DataFrame({"pond": ["a", "b", "c"], "looked": ["yes", "no", None]})
    assert [bool(each) for each in PAGE_ALONE.grade_frame(looked)["assumed"]] == [True, False, False]


FIGURES = """standard "Stillwater (invented)" edition 1 variety kohaku
silence means outline is fair, steps is nidan
setting line = 50 % from 0 % to 100 %
penalty plain 5 if batch share of (outline at least good) above line
penalty few 3 if batch share of (outline is fair) among the same (steps) above line
section body worth 100
points kiwa by kiwa: blurred gives 0, fair gives 5, sharp gives 9, razor gives 10
grade keep if score at least 75
grade sell otherwise
"""


@pytest.mark.parametrize("common", ["steps", "a_term", "a_term_of_it"])
def test_figures_read_silence_and_the_same_does_not(common):
    text = FIGURES.replace("the same (steps)", f"the same ({common})").split("\n")
    terms = ["term a_term means steps", "term a_term_of_it means a_term is nidan"]
    text = "\n".join([*text[:3], *terms, text[5], text[6], *text[3:5], *text[7:]])
    standard = koirules.read_standard(text, registry=BOX)
    fish = [{"fish": str(i), "kiwa": "razor"} for i in range(4)] + [{"fish": "5", "kiwa": "razor", "steps": "nidan"}]
    results = standard.grade_batch(fish).results
    # The first four have no steps in common with anybody: nobody wrote any down.
    assert [str(one.score) for one in results] == ["None", "None", "None", "None", "97.00"]
    assert [(str(one.score_low), str(one.score_high)) for one in results[:1]] == [("97.00", "100.00")]
    frame = standard.grade_frame(pl.DataFrame(fish, infer_schema_length=None))
    assert frame["score_low"].to_list() == [97.0] * 5
    assert frame["score_high"].to_list() == [100.0] * 4 + [97.0]
    many = standard.grade_frame(
        pl.DataFrame(fish * 60, infer_schema_length=None).with_columns(fish=pl.int_range(300).cast(pl.String))
    )
    assert many["score_high"].to_list()[:5] == [100.0] * 4 + [97.0]


@pytest.mark.parametrize("common", ["steps", "a_term", "a_term_of_it"])
def test_a_quota_of_the_same_reads_what_was_recorded(common):
    text = (
        'standard "Stillwater (invented)" edition 1 variety kohaku\n'
        "silence means steps is nidan\n"
        "term a_term means steps\nterm a_term_of_it means a_term is nidan\n"
        "grade keep if kiwa is razor\ngrade sell otherwise\n"
        f"round best\n  pick 3 by highest length\n  no more than 1 of the same ({common})\n"
    )
    fish = [{"fish": str(n), "kiwa": "razor", "length": 20 - n} for n in range(4)]
    fish[2]["steps"], fish[3]["steps"] = "nidan", "sandan"
    (best,) = koirules.read_standard(text, registry=BOX).grade_batch(fish).rounds
    # Of 0 and 1 nobody wrote down the steps: they are one group, and 2 is in another.
    assert best.kept == ("0", "2", "3")


def test_terms_that_read_one_another_twice_are_put_together_once_where_silence_is_left_out():
    doubled = "".join(f"term t{n + 1} means (t{n} if tancho otherwise t{n} - 1)\n" for n in range(60))
    text = (
        'standard "Stillwater (invented)" edition 1\ntrait tancho as yes or no\ntrait specks as number from 0 to 10\n'
        f"silence means specks is 5\nterm t0 means specks\n{doubled}"
        "grade keep if batch median of t60 above 3\n"
        "grade hold if batch mean of specks among the same t60 above 3\ngrade sell otherwise\n"
    )
    standard = koirules.read_standard(text)
    fish = [{"fish": str(n), "tancho": True, "specks": 2 + 2 * n} for n in range(2)]
    assert [one.grade for one in standard.grade_batch(fish).results] == ["sell", "hold"]


ENOUGH = """standard "Stillwater (invented)" edition 1 variety kohaku
trait specks "specks" as count up to 50
silence means outline is fair, specks is 2
grade many if batch mean of specks with 2 or more recorded at least 3
grade fair if batch share of (outline at least fair) among the same pond with 2 or more recorded at least 50 %
grade open otherwise
alert speckled "speckled" if batch mean of specks with 2 or more recorded at least 3
"""


@pytest.mark.parametrize(
    ("written", "grade", "assumed"),
    [
        # Four fish, of which so many were told their specks: 9 each, and the others are assumed to have 2.
        (1, None, None),
        (2, "many", 2),
        (4, "many", None),
    ],
)
def test_a_figure_with_so_many_recorded_counts_what_was_written(written, grade, assumed):
    standard = koirules.read_standard(ENOUGH, registry=BOX)
    fish = [{"fish": str(n), "kiwa": "sharp", **({"specks": 9} if n < written else {})} for n in range(4)]
    found = standard.grade_batch(fish)
    assert [one.grade for one in found.results] == [grade] * 4
    assert [one.so_far for one in found.alerts] == [True if grade else None]
    reason = str(found.results[0].reasons[0])
    assert ("them assumed" in reason) == (assumed is not None)
    if assumed:
        assert f"batch mean over all 4 fish, {assumed} of them assumed" in reason
    for times in (1, 80):  # by row and by column
        frame = pl.DataFrame(fish * times, infer_schema_length=None).with_columns(
            fish=pl.int_range(4 * times).cast(pl.String), specks=pl.lit(9) if written == 4 else pl.col("specks")
        )
        many = written * times >= 2
        assert standard.grade_frame(frame)["possible"].to_list() == ["many" if many else "many|fair|open"] * (4 * times)


def test_a_figure_with_so_many_recorded_counts_what_was_written_of_each_group():
    standard = koirules.read_standard(ENOUGH.replace("of specks with 2", "of specks with 40"), registry=BOX)
    ponds = {"a": 2, "b": 1, "c": 0}  # so many of each pond were told their outline
    fish = [
        {"fish": f"{pond}{n}", "pond": pond, "kiwa": "sharp", **({"outline": "good"} if n < told else {})}
        for pond, told in ponds.items()
        for n in range(3)
    ]
    possible = [set(one.possible) for one in standard.grade_batch(fish).results]
    assert ["open" in one for one in possible] == [False] * 3 + [True] * 6
    frame = standard.grade_frame(pl.DataFrame(fish, infer_schema_length=None))
    assert [set(each.split("|")) for each in frame["possible"]] == possible


@pytest.mark.parametrize("written", [1, 2])
def test_files_in_pieces_count_what_was_written(tmp_path, written):
    standard = koirules.read_standard(ENOUGH, registry=BOX)
    fish = [{"fish": str(n), "kiwa": "sharp", "specks": 9 if n < written else None} for n in range(60)]
    records = pl.DataFrame(fish, infer_schema_length=None)
    folder = tmp_path / "records"
    folder.mkdir()
    records.slice(0, 20).write_csv(folder / "a.csv")
    records.slice(20).write_csv(folder / "b.csv")
    finished = run_files(Job(ENOUGH, "page.koi"), [str(folder)], here(), str(tmp_path / "out.csv"))
    assert not is_refused(finished.problems)
    found = pl.read_csv(tmp_path / "out.csv")["possible"].to_list()
    assert found == standard.grade_frame(records)["possible"].to_list()
    # A figure that a grade and an alert ask for is counted once. The mean is below 3; with one fish it is not recorded.
    one_by_one = standard.grade_batch([{k: v for k, v in row.items() if v is not None} for row in fish]).alerts
    assert finished.alerts == one_by_one
    assert found[0] == ("fair|open" if written == 2 else "many|fair|open")


def run(*arguments, code=0):
    result = CliRunner().invoke(main, [str(each) for each in arguments])
    assert result.exit_code == code, result.output
    return result.output


@pytest.fixture
def tub(tmp_path):
    (tmp_path / "page.koi").write_text(PAGE, encoding="utf-8")
    (tmp_path / "fish.csv").write_text(
        "fish,looked,kiwa,outline,length\n1,,sharp,,\n2,,,,14\n3,,?,excellent,\n4,yes,,,\n", encoding="utf-8"
    )
    return tmp_path


def test_files_of_results_tell_of_silence(tub):
    for ending in ("csv", "json", "html"):
        run("grade", tub / "page.koi", tub / "fish.csv", "--out", tub / f"out.{ending}", "--as-recorded")
    rows = (tub / "out.csv").read_text(encoding="utf-8").splitlines()
    assert ",assumed,rests_on_silence" in rows[0]
    assert [",outline|shimi_count,yes" in rows[1], ",,no" in rows[2], ",shimi_count,yes" in rows[3]] == [
        True,
        True,
        True,
    ]
    told = json.loads((tub / "out.json").read_text(encoding="utf-8"))["results"]
    assert [one["assumed"] for one in told] == [
        ["outline", "shimi_count"],
        [],
        ["shimi_count"],
        ["outline", "kiwa", "shimi_count"],
    ]
    assert [one["rests_on_silence"] for one in told] == [True, False, True, True]
    page = (tub / "out.html").read_text(encoding="utf-8")
    assert "Not mentioned, and taken as the page says: outline from above, black specks (shimi)" in page


def test_the_commands_tell_of_silence(tub):
    listed = run("grade", tub / "page.koi", tub / "fish.csv")
    assert "rest on what nobody mentioned: 3 of 4: most of the lot" in listed
    why = run("why", tub / "page.koi", tub / "fish.csv", "1")
    assert "Not mentioned, and taken as the page says\n  outline from above fair; black specks (shimi) 0\n" in why
    assert "without that: keep or hold or sell, score 45 to 95" in why
    assert "look at outline from above" in why


def test_whole_files_read_silence_too(tub):
    (tub / "again.csv").write_bytes((tub / "fish.csv").read_bytes())
    run("grade", tub / "page.koi", tub / "fish.csv", "--out", tub / "listed.csv", "--as-recorded")
    run("grade", tub / "page.koi", tub / "again.csv", tub / "fish.csv", "--out", tub / "whole.parquet")
    whole = pl.read_parquet(tub / "whole.parquet")
    listed = pl.read_csv(tub / "listed.csv", schema_overrides={"fish": pl.String})
    assert whole["assumed"].to_list() == [text or "" for text in listed["assumed"].to_list()] * 2
    assert whole["rests_on_silence"].to_list() == [word == "yes" for word in listed["rests_on_silence"].to_list()] * 2
    assert whole["score_low"].to_list() == listed["score_low"].to_list() * 2


def test_silence_answers_no_question_before_the_look_is_done():
    standard = koirules.read_standard(
        'standard "s" edition 1 variety kohaku\nsilence means kiwa is sharp\n'
        "grade keep if kiwa at least sharp and shiroji at least white\ngrade sell otherwise\n"
    )
    seen = {"shiroji": "white"}
    assert standard.grade(seen).grade == "keep"
    assert [one.trait.name for one in standard.questions(seen)] == ["kiwa"]
    assert standard.next_question(seen).trait.name == "kiwa"
    assert standard.next_question({**seen, "looked": True}) is None
    assert standard.questions({**seen, "looked": True}) == ()
