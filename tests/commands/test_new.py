"""`koirules new`: what it writes reads well, is tidy, holds its samples and grades at once."""

from pathlib import Path
from types import SimpleNamespace

import pytest
from click.testing import CliRunner

import koirules
from koirules.commands import main
from koirules.commands.new import text_of
from koirules.hooks import hookimpl
from koirules.testing import registry_with, sample_runs
from koirules.vocabulary.kinds import Scale
from koirules.vocabulary.traits import Trait, Vocabulary

OWN = Trait("plain_tone", "tone", Scale(("pale", "deep")), describe="How deep it is.")
TEMPLATES = ("minimal", "house", "show")
FISH = """fish,health,spine,eyes_missing,outline,tail_stem,shiroji,kiwa,lustre,hi_cover,shoulders,skin_clean,presence,\
swimming,mouth
1,well,straight,none,excellent,strong,snow,razor,superb,45 %,strong,clean,imposing,smooth,good
2,well,bent,none,excellent,strong,snow,razor,superb,45 %,strong,clean,imposing,smooth,good
3,well,straight,none,poor,thin,cream,blurred,dull,10 %,weak,dirty,plain,stiff,good
"""


def run(*words):
    result = CliRunner().invoke(main, [str(word) for word in words])
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    return result


@pytest.fixture(autouse=True)
def folder(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    Path("fish.csv").write_text(FISH, encoding="utf-8")


@pytest.mark.parametrize("template", TEMPLATES)
def test_what_is_written_reads_well_is_tidy_and_grades_at_once(template):
    assert run("new", "mine.koi", "--variety", "kohaku", "--from", template).exit_code == 0
    assert run("check", "mine.koi").exit_code == 0
    assert run("tidy", "--check", "mine.koi").exit_code == 0
    runs = sample_runs("mine.koi")
    assert runs
    assert not [one.failures for one in runs if one.failures]
    standard = koirules.load_standard("mine.koi")
    graded = standard.grade_records(standard.read_records("fish.csv")).results
    best, bent, worst = (one.grade for one in graded)
    assert best == standard.grades[0]
    assert bent == worst == standard.grades[-1]


@pytest.mark.parametrize("template", TEMPLATES)
def test_a_variety_without_red_and_white_gets_what_every_koi_has(template):
    plain = Vocabulary(
        name="plain", title="Plain koi (invented)", describe="One colour.", includes=("shared",), traits=(OWN,)
    )
    registry = registry_with(SimpleNamespace(KOIRULES_API=1, koirules_vocabularies=hookimpl(lambda: [plain])))
    text = text_of(template, Path("mine.koi"), registry.varieties["plain"], registry)
    assert "kiwa" not in text
    assert "@" not in text
    assert koirules.read_standard(text, registry=registry).grades


def test_it_writes_over_nothing_unless_asked():
    Path("mine.koi").write_text("mine", encoding="utf-8")
    refused = run("new", "mine.koi", "--variety", "kohaku")
    assert refused.exit_code == 2
    assert Path("mine.koi").read_text(encoding="utf-8") == "mine"
    assert run("new", "mine.koi", "--variety", "kohaku", "--replace").exit_code == 0


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("mine.txt", "--variety", "kohaku"), "try mine.koi"),
        (("mine.koi", "--variety", "kohakku"), 'Did you mean "kohaku"?'),
        (("no/mine.koi", "--variety", "kohaku"), "Nothing was written"),
    ],
)
def test_what_cannot_be_is_said_and_nothing_is_written(words, told):
    result = run("new", *words)
    assert result.exit_code == 2
    assert told in result.output
    assert [path.name for path in Path.cwd().iterdir()] == ["fish.csv"]
