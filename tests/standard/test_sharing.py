"""A standard on top of another one: what holds, where it stands, and what is refused."""

import os
from pathlib import Path

import pytest

import koirules
from koirules.grading.sample_runs import run_samples
from koirules.testing import registry_with

BOX = registry_with()
CLUB = """standard "Thornwick Open (invented)" edition 2026-1 variety kohaku stage tosai
  valid from 2026-01-01 until 2026-12-31 note "the committee's note"
setting line = 75 from 70 to 90
fault bent "bent spine" if spine is bent: no better than cull
fault specks if shimi_count at least 3: no better than sell
section body worth 40
points outline by outline: poor gives 0, anything else gives 10
section skin worth 60
points white by shiroji: snow gives 10, anything else gives 2
bonus lips 2 if kuchibeni is yes
grade keep if score at least line
grade sell if score at least 40
grade cull otherwise
sample "bent" with spine bent comes out cull
"""
HEAD = 'standard "Reed Pool (invented)" edition 7 based on "club.koi" edition 2026-1\n'


@pytest.fixture(autouse=True)
def farm(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("club.koi").write_text(CLUB, encoding="utf-8")


def loaded(changes="", head=HEAD, file="farm.koi"):
    Path(file).write_text(head + changes, encoding="utf-8")
    return koirules.load_standard(file, BOX)


def problems(changes="", head=HEAD, file="farm.koi"):
    with pytest.raises(koirules.StandardError) as found:
        loaded(changes, head, file)
    return found.value.problems


def codes(*given, **more):
    return [(problem.site.file, problem.site.line, problem.code) for problem in problems(*given, **more)]


def named(parts):
    return [part.name for part in parts]


def test_everything_of_the_base_holds():
    farm, club = loaded(), koirules.load_standard("club.koi", BOX)
    assert (farm.title, farm.edition, farm.rules.file) == ("Reed Pool (invented)", "7", "farm.koi")
    assert (farm.variety, farm.rules.stage, farm.rules.valid_until) == ("kohaku", "tosai", club.rules.valid_until)
    record = {"spine": "straight", "shimi_count": 4, "outline": "good", "shiroji": "snow", "kuchibeni": "yes"}
    one, other = farm.grade(record), club.grade(record)
    assert [reason.words for reason in one.reasons] == [reason.words for reason in other.reasons]
    assert [run.failures for run in run_samples(farm.grader)] == [()]
    assert farm.warnings == ()


def test_the_head_of_the_page_says_what_differs():
    own = HEAD.rstrip() + ' stage nisai valid from 2027-02-01 note "ours"\n'
    rules = loaded(head=own).rules
    assert (rules.stage, str(rules.valid_from), rules.valid_until) == ("nisai", "2027-02-01", None)
    assert rules.notes == ("the committee's note", "ours")
    assert loaded(head=HEAD.rstrip() + " variety kohaku\n").variety == "kohaku"


def test_a_replacement_stands_where_the_original_stood():
    farm = loaded("""replace fault bent if spine at most slight: no better than sell
replace grade sell otherwise
drop grade cull
drop sample "bent"
""")
    assert named(farm.rules.limits) == ["bent", "specks"]
    assert farm.grades == ("keep", "sell")
    assert farm.grade({"spine": "slight", "outline": "good", "shiroji": "snow", "shimi_count": 0}).grade == "sell"


def test_replacing_a_section_changes_its_line_only_and_dropping_one_takes_its_criteria_along():
    body, skin = loaded('replace section body "frame" worth 30').rules.sections
    assert (body.title.text, body.worth, named(body.points)) == ("frame", 3000, ["outline"])
    assert named(skin.extras) == ["lips"]
    farm = loaded("drop section skin\nreplace grade keep if score at least 30")
    assert named(farm.rules.sections) == ["body"]
    assert farm.rules.extras == ()


def test_a_bare_section_reopens_one_of_the_base():
    farm = loaded("""section body
bonus big 1 if length at least 14 cm
section new worth 5
points long by length: 5 cm gives 0, 20 cm gives 10
section body
penalty slim 1 if length below 8 cm
""")
    body, skin, new = farm.rules.sections
    assert (named(body.points), named(body.extras)) == (["outline"], ["big", "slim"])
    assert (named(skin.extras), named(new.points)) == (["lips"], ["long"])


def test_criteria_below_a_replaced_section_belong_to_it():
    body, _ = loaded("replace section body worth 40\nbonus big 1 if length at least 14 cm").rules.sections
    assert named(body.extras) == ["big"]


@pytest.mark.parametrize(
    ("changes", "grades"),
    [
        ("grade hold if score at least 60 after keep", "keep hold sell cull"),
        ("grade b if score at least 60 after a\ngrade a if score at least 65 after keep", "keep a b sell cull"),
        ("grade a if score at least 65 after keep\ngrade b if score at least 60 after keep", "keep a b sell cull"),
        ("grade out otherwise after cull\nreplace grade cull if score at least 20", "keep sell cull out"),
        ("drop grade keep\ngrade show if score at least 60 after sell", "sell show cull"),
        (
            """drop grade keep
drop grade sell
drop grade cull
grade best if score at least line
grade sell if score at least 9
grade cull otherwise""",
            "best sell cull",
        ),
    ],
)
def test_new_grades_stand_where_after_says(changes, grades):
    assert loaded(changes).grades == tuple(grades.split())


def test_what_is_dropped_may_be_written_anew_behind_the_others():
    farm = loaded(
        "drop fault bent\nfault bent if spine is slight: no better than cull\ndrop setting line\nterm line means 75\n"
        'drop sample "bent"'
    )
    assert named(farm.rules.limits) == ["specks", "bent"]
    assert "line" in farm.rules.terms


def test_a_base_may_have_a_base_and_words_are_shown_from_the_file_that_holds_them():
    Path("region").mkdir()
    middle = CLUB.split("\n", 1)
    Path("region/page.koi").write_text(
        'standard "Region" edition 3 based on "../club.koi" edition 2026-1\n'
        "replace fault specks if shimi_count at least 2: no better than sell\n",
        encoding="utf-8",
    )
    assert middle
    farm = loaded(
        "\n\nfault big if shimi_size above 2 mm: no better than sell",
        HEAD.replace("club.koi", "region/page.koi").replace("2026-1", "3"),
    )
    said = {limit.name: farm.rules.words_at(limit.condition.place) for limit in farm.rules.limits}
    assert said == {"bent": "spine is bent", "specks": "shimi_count at least 2", "big": "shimi_size above 2 mm"}
    files = {limit.name: limit.place.file for limit in farm.rules.limits}
    assert files == {"bent": "region/../club.koi", "specks": "region/page.koi", "big": "farm.koi"}


def test_a_problem_of_the_base_is_shown_with_its_own_file_and_line():
    Path("club.koi").write_text(CLUB.replace("spine is bent", "spine is bentt"), encoding="utf-8")
    assert codes("fault odd if nothing: no better than cull") == [
        ("farm.koi", 1, "base-has-problems"),
        ("club.koi", 4, "unknown-step"),
    ]


def test_what_the_changes_break_in_the_base_is_shown_there_and_says_so():
    (problem,) = problems("drop setting line")[1:]
    assert (problem.site.file, problem.site.line, problem.code) == ("club.koi", 11, "unknown-name")
    assert "this comes of what farm.koi changes in it" in problem.mend
    assert problem.edit is None


def test_warnings_of_the_base_are_its_keepers_and_those_of_the_changes_are_told():
    spare = CLUB.replace("section body", "term spare means length above 3 cm\nsection body")
    Path("club.koi").write_text(spare, encoding="utf-8")
    assert loaded().warnings == ()
    assert loaded(head=HEAD.replace("club.koi", "farm.koi").replace("2026-1", "7"), file="shed.koi").warnings == ()
    seal = koirules.load_standard("club.koi", BOX).seal
    sealed = HEAD.rstrip() + f" seal {seal}\n"
    assert [w.code for w in loaded("replace section body worth 30", sealed).warnings] == ["worths-not-100"]


def test_changes_of_an_unsealed_base_are_a_warning_and_the_seal_mends_it():
    (warning,) = loaded("drop fault specks").warnings
    assert (warning.code, warning.site.line) == ("unsealed-base", 1)
    assert loaded("fault more if length below 3 cm: no better than sell").warnings == ()
    seal = koirules.load_standard("club.koi", BOX).seal
    assert seal in warning.mend
    assert loaded("drop fault specks", HEAD.rstrip() + f" seal {seal}\n").warnings == ()


def test_a_base_with_another_seal_is_refused_however_small_the_change():
    seal = koirules.load_standard("club.koi", BOX).seal
    sealed = HEAD.rstrip() + f" seal {seal}\n"
    Path("club.koi").write_text(
        f"# a remark\n{CLUB}".replace("score at least line", "(score  at least line)"), encoding="utf-8"
    )
    assert loaded(head=sealed).edition == "7"
    Path("club.koi").write_text(CLUB.replace("least 3:", "least 4:"), encoding="utf-8")
    assert codes(head=sealed) == [("farm.koi", 1, "other-seal")]


# ---- Which files are opened ---------------------------------------------------------------------------------------


def based_on(file):
    return HEAD.replace("club.koi", file)


def test_a_base_lies_in_the_folder_tree_of_the_file_that_is_loaded(tmp_path):
    inner = tmp_path / "inner"
    inner.mkdir()
    assert codes(head=based_on("../club.koi"), file="inner/farm.koi") == [("inner/farm.koi", 1, "base-outside")]
    (inner / "link.koi").symlink_to(tmp_path / "club.koi")
    assert codes(head=based_on("link.koi"), file="inner/farm.koi") == [("inner/farm.koi", 1, "base-outside")]
    (inner / "way").symlink_to(tmp_path)
    assert codes(head=based_on("way/club.koi"), file="inner/farm.koi") == [("inner/farm.koi", 1, "base-outside")]
    (inner / "club.koi").write_text(CLUB, encoding="utf-8")
    (inner / "link.koi").unlink()
    (inner / "link.koi").symlink_to("club.koi")
    assert loaded(head=based_on("link.koi"), file="inner/farm.koi").variety == "kohaku"
    assert loaded(head=based_on("inner/../club.koi")).variety == "kohaku"


def test_a_base_of_a_base_does_not_lead_outside_either(tmp_path):
    inner = tmp_path / "inner"
    inner.mkdir()
    (inner / "page.koi").write_text(based_on("../club.koi"), encoding="utf-8")
    head = based_on("page.koi").replace("2026-1", "7")
    assert codes(head=head, file="inner/farm.koi") == [
        ("inner/farm.koi", 1, "base-has-problems"),
        ("inner/page.koi", 1, "base-outside"),
    ]


@pytest.mark.parametrize("file", ["x" * 5000, "none.koi", "", " ", "\x00", "a\x1bb"])
def test_a_name_that_no_file_has_is_a_problem(file):
    ((_, _, code),) = codes(head=based_on(file))
    assert code in {"no-base-file", "base-path"}


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes with names")
def test_a_pipe_is_no_base():
    os.mkfifo("pipe.koi")
    assert codes(head=based_on("pipe.koi")) == [("farm.koi", 1, "no-base-file")]


def test_a_loop_of_links_is_a_problem(tmp_path):
    (tmp_path / "a.koi").symlink_to("b.koi")
    (tmp_path / "b.koi").symlink_to("a.koi")
    assert codes(head=based_on("a.koi")) == [("farm.koi", 1, "no-base-file")]


def test_a_circle_of_bases_names_its_links():
    Path("other.koi").write_text(based_on("farm.koi").replace("2026-1", "7"), encoding="utf-8")
    found = problems(head=based_on("other.koi").replace("2026-1", "7"))
    assert [problem.code for problem in found] == ["base-has-problems", "base-circle"]
    assert "farm.koi is based on other.koi is based on farm.koi" in found[1].cause
    assert codes(head=based_on("farm.koi")) == [("farm.koi", 1, "base-circle")]


def test_a_chain_of_bases_is_bounded():
    for number in range(1, 12):
        Path(f"p{number}.koi").write_text(
            HEAD.replace("club.koi", f"p{number - 1}.koi" if number > 1 else "club.koi").replace(
                "2026-1", "7" if number > 1 else "2026-1"
            ),
            encoding="utf-8",
        )
    assert koirules.load_standard("p8.koi", BOX).variety == "kohaku"
    with pytest.raises(koirules.StandardError) as found:
        koirules.load_standard("p9.koi", BOX)
    assert "too-many-bases" in {problem.code for problem in found.value.problems}


def test_a_base_and_its_changes_are_bounded_together():
    faults = "".join(f"fault f{{0}}{number} if length below 3 cm: no better than cull\n" for number in range(1200))
    Path("club.koi").write_text(CLUB + faults.format("a"), encoding="utf-8")
    assert [problem.code for problem in problems(faults.format("b"))] == ["too-many-together"]


def test_a_text_alone_opens_no_file(tmp_path):
    with pytest.raises(koirules.StandardError) as found:
        koirules.read_standard(HEAD, registry=BOX)
    assert [problem.code for problem in found.value.problems] == ["base-without-folder"]
    assert koirules.read_standard(HEAD, registry=BOX, folder=tmp_path).variety == "kohaku"


# ---- The whole as one text ----------------------------------------------------------------------------------------

CHANGES = """replace fault specks if shimi_count at least 1
  except shimi_size below 0.5 mm
  : no better than sell
drop fault bent
grade hold if score at least 60 after keep
section skin
bonus lustre 3 if lustre is superb
drop sample "bent"
"""


def test_the_whole_is_one_text_of_the_same_standard():
    farm = loaded(CHANGES)
    whole = koirules.read_standard(farm.whole_text, registry=BOX)
    assert whole.seal == farm.seal
    record = {"shimi_count": 2, "shimi_size": "1 mm", "outline": "good", "shiroji": "white", "lustre": "superb"}
    assert [r.words for r in whole.grade(record).reasons] == [r.words for r in farm.grade(record).reasons]
    assert koirules.load_standard("club.koi", BOX).whole_text == CLUB


def test_a_tidy_page_says_the_same_of_its_base():
    loaded(CHANGES)
    written = koirules.tidy(HEAD + CHANGES, registry=BOX, folder=".")
    assert koirules.read_standard(written, registry=BOX, folder=".").seal == loaded(CHANGES).seal
    assert written.startswith(
        'standard "Reed Pool (invented)"\n  edition 7\n  based on "club.koi" edition 2026-1\nreplace'
    )


SAID = 'phrase "soft edge", "edge soft" ja "キワぼけ" means kiwa at most fair\n'


def said(standard):
    return {wording: phrase.stated for phrase in standard.rules.phrases for _, wording in phrase.wordings}


def test_a_phrase_of_the_base_is_replaced_or_dropped_by_one_wording():
    Path("club.koi").write_text(CLUB + SAID, encoding="utf-8")
    assert set(said(loaded())) == {"soft edge", "edge soft", "キワぼけ"}
    farm = loaded('replace phrase "Edge-soft", "edge woolly" means kiwa is blurred\n')
    assert set(said(farm)) == {"soft edge", "Edge-soft", "edge woolly"}
    (stated,) = said(farm)["Edge-soft"]
    assert stated.said == 1  # blurred alone
    assert farm.seal == loaded().seal  # a phrase changes no record's grade
    assert set(said(loaded('drop phrase "キワぼけ"\n'))) == {"soft edge", "edge soft"}
    assert said(loaded('drop phrase "soft edge"\ndrop phrase "edge soft"\n')) == {}
    assert codes('phrase "soft edge" means kiwa is fair\n') == [("farm.koi", 2, "already-in-base")]
    (twice,) = (p for p in problems('drop phrase "soft edges"\ndrop phrase "soft edge"\n') if not p.warning)
    assert (twice.code, twice.site.line) == ("changed-twice", 3)
    (problem,) = (p for p in problems('drop phrase "sofd edge"\n') if not p.warning)
    assert problem.code == "not-in-base"
    assert problem.edit.text == '"soft edge"'


def test_what_a_phrase_says_stops_a_millionth_short():
    rules = koirules.read_standard(
        'standard "x" edition 1 variety kohaku\n'
        'phrase "a" means odome below 1 % and shimi_count above 2 and kiwa below sharp and count of hi_on_eyes is 1\n'
        "grade keep otherwise\n",
        registry=BOX,
    ).rules
    found = {stated.trait: stated.said for stated in rules.phrases[0].stated}
    assert found["odome"] == (0.0, 0.999999)
    assert found["shimi_count"] == (3.0, 200.0)
    assert found["kiwa"] == 0b0011
    eyes = found["hi_on_eyes"]
    assert (eyes.sure, eyes.possible, eyes.least, eyes.most) == (0, 0b11, 1, 1)


RENAMED = """term standing means grade
term firmly means (grade if kiwa at least fair otherwise grade)
alert few "few" if batch share of (grade is keep) below 10 %
round first keep those with grade at least sell and standing is one of (keep,sell) and firmly between sell and keep
round second keep those with not grade is cull and kiwa is not blurred
sample "sold" with spine bent stays open
"""


def test_a_renamed_grade_is_meant_wherever_it_was_named():
    Path("club.koi").write_text(CLUB + RENAMED, encoding="utf-8")
    farm = loaded(
        'rename grade keep to first\nrename grade sell to second "second class"\nfault f if odome is 0 %: no better than second\n'
    )
    assert [(grade.name, grade.title.text) for grade in farm.rules.grades] == [
        ("first", "first"),
        ("second", "second class"),
        ("cull", "cull"),
    ]
    text = farm.canonical_text
    assert "keep if" not in text
    assert " sell" not in text
    assert "standing is one of (first, second) and firmly between second and first" in text
    assert "fault specks if shimi_count at least 3: no better than second" in text
    asked = [one.asks for one in farm.grade_batch([{"fish": "a", "kiwa": "fair"}]).rounds]
    assert asked[0] == (
        "those with grade at least second class and standing is one of (first,second) and firmly between second and first"
    )
    whole = koirules.read_standard(farm.whole_text, registry=BOX)
    assert whole.seal == farm.seal
    assert "unsealed-base" in {problem.code for problem in farm.warnings}


def test_what_a_page_says_of_silence_breaks_no_sample_of_its_base():
    club = (
        CLUB
        + """sample "clean" with spine straight, shimi_count 0, outline excellent, shiroji snow, kuchibeni yes comes out keep
sample "of a clean one nobody says how white" with spine straight, shimi_count 0, outline excellent, kuchibeni yes stays open
"""
    )
    Path("club.koi").write_text(club, encoding="utf-8")
    # The club reads shiroji and says nothing of its silence; of the lustre, that it does not read, the page speaks for all.
    farm = loaded("""silence means shiroji is snow, lustre is good
fault dull if lustre at most fair: no better than cull
sample "as the page says" with spine straight, shimi_count 0, outline excellent, kuchibeni yes comes out keep
""")
    assert [run.failures for run in run_samples(farm.grader)] == [()] * 4
    # Without the line about lustre the fault of the page would leave the clean fish open.
    bare = loaded("fault dull if lustre at most fair: no better than cull\n")
    assert [bool(run.failures) for run in run_samples(bare.grader)] == [False, True, False]
