"""What people read of a selection: the alerts first, round by round who stays and why, and all of it of one fish."""

from pathlib import Path

import pytest
from click.testing import CliRunner

from koirules.commands import main

RULES = """standard "Tin Bucket, places (an invented house)" edition 1 variety kohaku
setting places = 1 from 1 to 5
setting asked = 10 cm from 5 cm to 20 cm
term middle means batch median of length
alert small "many small ones" if middle below asked
  say "half are {middle} or less, and {asked} is asked"
fault runt "a runt of this batch" if length below batch percentile 20 of length: no better than sell
grade keep if kiwa at least sharp
grade sell otherwise
round first "first look" keep those possibly with grade is keep
  say "edge {kiwa}"
round house "the house" pick places by highest kiwa, then highest length
  send to "house" again in 2 weeks
  rescues 1
"""
RECORDS = """fish,date,length,kiwa
a,2026-11-01,9,razor
b,2026-11-01,9,razor
c,2026-11-01,8,sharp
d,2026-11-01,9.5,fair
e,2026-11-01,9,
"""
DECISIONS = "fish,grade,round,by,reason\nd,,house,Y.,the owner likes it\nc,keep,,Y.,it is no runt\n"


@pytest.fixture(autouse=True)
def farm(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("rules.koi").write_text(RULES, encoding="utf-8")
    Path("lot.csv").write_text(RECORDS, encoding="utf-8")
    Path("decisions.csv").write_text(DECISIONS, encoding="utf-8")


def output(*given):
    result = CliRunner().invoke(main, given)
    assert result.exception is None, result.output
    return " ".join(result.output.split())


def test_the_alerts_come_first_and_say_what_the_batch_is_like():
    assert output("grade", "rules.koi", "lot.csv").startswith("! half are 9 cm or less, and 10 cm is asked")


def test_each_round_says_who_stays_who_leaves_and_who_is_tied():
    told = output("grade", "rules.koi", "lot.csv", "--all")
    assert "Round 1, first look: those possibly with grade is keep 5 fish, 3 stay, 2 leave" in told
    assert "leaves d edge fair: grade is sell, not keep" in told
    assert "2 fish, 0 stay" not in told
    assert "tied for 1 place, for a person to choose: a, b" in told
    assert "leaves e 1 place, all of them held for those that are tied above it [still open]" in told


def test_a_persons_word_is_counted_apart_with_its_reason():
    told = output("grade", "rules.koi", "lot.csv", "--all", "--decisions", "decisions.csv")
    assert "decided by hand, and counted above: 1 c: keep, by the rules sell; Y.: it is no runt" in told
    assert "1 of those that stay kept by hand; to house" in told
    assert "stays d kept by Y.: the owner likes it" in told


def test_why_sees_a_fish_in_its_batch_and_in_each_round():
    told = output("why", "rules.koi", "lot.csv", "c", "--decisions", "decisions.csv")
    assert "Fish c: keep" in told
    assert "Decided by Y.: it is no runt (by the rules: sell)" in told
    assert "a runt of this batch: no better than sell" in told
    assert "Rounds first look: stays the house: leaves" in told
    assert "Rounds first look: leaves, edge fair: grade is sell, not keep" in output("why", "rules.koi", "lot.csv", "d")
    assert "the house: tied, tied with b for 1 place; a person decides" in output("why", "rules.koi", "lot.csv", "a")


def test_decisions_that_cannot_stand_end_the_command_with_nothing_written():
    Path("decisions.csv").write_text("fish,grade,round,by,reason\nz,keep,,Y.,\n", encoding="utf-8")
    result = CliRunner().invoke(
        main, ["grade", "rules.koi", "lot.csv", "--decisions", "decisions.csv", "--out", "results.csv"]
    )
    assert result.exit_code == 2
    assert "decision-of-nobody" in result.output
    assert "decision-without" in result.output
    assert not Path("results.csv").exists()


TUB = """standard "Tub (an invented house)" edition 1 variety kohaku
fault bent if spine is bent: no better than leave
grade keep if length at least 10 cm
grade leave otherwise
round clean "no faults" keep those possibly with grade is keep
round best "best of the tub" pick 2 by highest length
"""
TUB_RECORDS = "fish,length,spine\n1,12,straight\n2,15,straight\n3,9,straight\n4,14,\n5,,straight\n"


def test_the_short_list_names_who_stays_and_who_is_open_apart():
    Path("tub.koi").write_text(TUB, encoding="utf-8")
    Path("tub.csv").write_text(TUB_RECORDS, encoding="utf-8")
    told = output("grade", "tub.koi", "tub.csv")
    assert "Round 1, no faults: 4 stay, 1 leaves; stay: 1, 2, 4, 5; still open: 4, 5" in told


def test_a_fish_named_by_a_number_has_its_noun_and_a_length_that_nobody_wrote_is_not_recorded():
    Path("tub.koi").write_text(TUB, encoding="utf-8")
    Path("tub.csv").write_text(TUB_RECORDS, encoding="utf-8")
    told = output("grade", "tub.koi", "tub.csv", "--all")
    assert "leaves 1 2 places; fish 4 stood above it by total length: 14 cm against 12 cm" in told
    assert "leaves 5 2 places; fish 4 stood above it by total length: 14 cm against not recorded" in told
    assert "0.5 cm" not in told


def test_the_best_of_a_page_are_those_that_a_pick_kept_not_those_with_the_best_score():
    text = TUB.replace("pick 2 by highest", "pick 1 by lowest")
    Path("tub.koi").write_text(text, encoding="utf-8")
    Path("tub.csv").write_text(TUB_RECORDS.rpartition("4,")[0], encoding="utf-8")
    output("grade", "tub.koi", "tub.csv", "--out", "tub.html")
    page = Path("tub.html").read_text(encoding="utf-8")
    best = page.partition('<section class="best"')[2].partition("</section>")[0]
    assert "Best fish" in best
    assert best.count('class="fish large"') == 1
