"""Changes that change nothing change nothing; the whole says what base and changes say; looks never reach the seal."""

from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, example, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.language import statements
from koirules.language.format.writer import tidy_statement
from koirules.language.parse.reader import read_text
from koirules.standard.inherit.merging import head_of, name_of
from koirules.testing import registry_with
from tests.judge.strategies import layouts, records, standards, standards_that_compare, to_mapping
from tests.judge.text import to_text

BOX = registry_with()
moderate = settings(
    max_examples=30,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)
HEADER = 'standard "Reed Pool (invented)" edition 7 based on "club.koi" edition 2026-1 seal {seal}\n'


def statements_of(text):
    return [one for one in read_text(text, "club.koi").rules.statements if not isinstance(one, statements.Header)]


def told(standard, record):
    result = standard.grade(record)
    words = [(reason.kind, reason.name, reason.words, reason.state) for reason in result.reasons]
    return result.possible, result.score_low, result.score_high, words


def on_top_of(base, changes, folder):
    Path(folder, "club.koi").write_text(base, encoding="utf-8")
    seal = koirules.read_standard(base, registry=BOX).seal
    text = HEADER.format(seal=seal) + changes
    note(text)
    return koirules.read_standard(text, registry=BOX, folder=folder)


def without_head(standard):
    return standard.canonical_text.split("\n", 2)[2]


@moderate
@given(st.data())
def test_replacing_statements_by_themselves_changes_nothing(tmp_path_factory, data):
    drawn = data.draw(standards())
    # Tidy, since reasons show conditions as they are written.
    base = koirules.tidy(to_text(drawn, data.draw(layouts())), registry=BOX)
    note(base)
    parts = statements_of(base)
    chosen = data.draw(st.lists(st.sampled_from(parts), unique_by=lambda one: one.place.line)) if parts else []
    changes = "".join(f"replace {tidy_statement(one)}\n" for one in chosen)
    farm = on_top_of(base, changes, tmp_path_factory.mktemp("farm"))
    club = koirules.read_standard(base, registry=BOX)
    assert {warning.code for warning in farm.warnings} <= {warning.code for warning in club.warnings}
    assert without_head(farm) == without_head(club)
    record = to_mapping(drawn, data.draw(records(drawn)))
    assert told(farm, record) == told(club, record)


@moderate
@given(st.data())
def test_what_is_dropped_and_written_anew_grades_the_same_and_the_whole_is_one_text_of_it(tmp_path_factory, data):
    drawn = data.draw(standards())
    # Tidy, since reasons show conditions as they are written.
    base = koirules.tidy(to_text(drawn, data.draw(layouts())), registry=BOX)
    note(base)
    kinds = (statements.Setting, statements.HouseTrait, statements.Term, statements.Limit)
    parts = [one for one in statements_of(base) if isinstance(one, kinds)]
    chosen = data.draw(st.lists(st.sampled_from(parts), unique_by=lambda one: one.place.line)) if parts else []
    changes = "".join(f"drop {head_of(one)} {name_of(one)}\n{tidy_statement(one)}\n" for one in chosen)
    farm = on_top_of(base, changes, tmp_path_factory.mktemp("farm"))
    whole = koirules.read_standard(farm.whole_text, registry=BOX)
    assert (whole.seal, whole.canonical_text) == (farm.seal, farm.canonical_text)
    record = to_mapping(drawn, data.draw(records(drawn)))
    assert told(whole, record) == told(farm, record)
    possible, low, high, words = told(farm, record)
    club = told(koirules.read_standard(base, registry=BOX), record)
    assert (possible, low, high, sorted(map(str, words))) == (*club[:3], sorted(map(str, club[3])))


@moderate
@given(st.data())
def test_renaming_grades_changes_nothing_but_their_names_and_can_be_taken_back(tmp_path_factory, data):
    drawn = data.draw(standards_that_compare())
    base = koirules.tidy(to_text(drawn, data.draw(layouts())), registry=BOX)
    note(base)
    grades = [grade.name for grade in drawn.grades]
    chosen = data.draw(st.lists(st.sampled_from(grades), unique=True))
    # Now and then all change places, so that each new name was the old one of another.
    turned = data.draw(st.booleans())
    new = chosen[1:] + chosen[:1] if turned and len(chosen) > 1 else [f"{name}_here" for name in chosen]
    names = dict(zip(chosen, new, strict=True))
    there = "".join(f"rename grade {old} to {name}\n" for old, name in names.items())
    back = "".join(f"rename grade {name} to {old}\n" for old, name in names.items())
    club = koirules.read_standard(base, registry=BOX)
    farm = on_top_of(base, there, tmp_path_factory.mktemp("farm"))
    whole = koirules.read_standard(farm.whole_text, registry=BOX)
    assert (whole.seal, whole.canonical_text) == (farm.seal, farm.canonical_text)
    record = to_mapping(drawn, data.draw(records(drawn)))
    ours, theirs = told(farm, record), told(club, record)
    assert ours[0] == tuple(names.get(name, name) for name in theirs[0])
    assert ours[1:3] == theirs[1:3]
    lot = [{"fish": str(n), **record} for n in range(2)]
    kept, also = (one.grade_batch(lot).rounds for one in (farm, club))
    assert [each.kept for each in kept] == [each.kept for each in also]
    # What the rounds ask is said in the names of now, as the whole text has them.
    assert [each.asks for each in kept] == [each.asks for each in whole.grade_batch(lot).rounds]
    again = Path(tmp_path_factory.mktemp("again"))
    (again / "farm.koi").write_text(farm.whole_text, encoding="utf-8")
    head = 'standard "Back (invented)" edition 8 based on "farm.koi" edition 7\n'
    returned = koirules.read_standard(head + back, registry=BOX, folder=again)
    assert without_head(returned) == without_head(club)


@moderate
@given(st.data())
def test_no_layout_reaches_the_seal(data):
    drawn = data.draw(standards())
    bare = koirules.read_standard(to_text(drawn, None), registry=BOX)
    tidied = koirules.read_standard(koirules.tidy(to_text(drawn, None), registry=BOX), registry=BOX)
    assert bare.seal == tidied.seal
    loose = koirules.read_standard(to_text(drawn, data.draw(st.integers(0, 1000))), registry=BOX)
    assert sorted(loose.canonical_text.split("\n")) == sorted(bare.canonical_text.split("\n"))
    assert (
        koirules.read_standard(bare.canonical_text.split("reads ")[0].split("\n", 1)[1], registry=BOX).seal == bare.seal
    )


# ---- Whatever the changes -----------------------------------------------------------------------------------------

CLUB = """standard "Thornwick Open (invented)" edition 2026-1 variety kohaku
setting line = 75 from 70 to 90
setting places = 3
trait bridge as scale none < thin < broad
term long means length at least 10 cm
fault bent if spine is bent: no better than cull
lift fine if section body at least 50: no worse than keep
section body worth 60
points stem by tail_stem: thin gives 0, fair gives 6, strong gives 10
bonus lips 2 if kuchibeni is yes
section skin worth 40
points white by shiroji: snow gives 10, anything else gives 2
penalty thin_bridge 1 if bridge is thin
grade keep if score at least line and long
grade sell if score at least 40
grade cull otherwise
alert many "many bent" if batch share of (fault bent) above 33 %
round first keep those with grade at least sell
round last pick places by highest score no more than 2 of the same (pond, spawning)
phrase "soft edge", "edge soft" means kiwa at most fair
sample "bent" with spine bent comes out cull
"""
CHANGES = """replace setting line = 80 from 75 to 85
drop term long
term long means length at least 12 cm
replace fault bent if spine at most slight: no better than sell
drop lift fine
section body
points width by width: 1 cm gives 0, 3 cm gives 10
bonus big 1 if length above 14 cm
replace section skin "skin" worth 35
drop penalty thin_bridge
section growth worth 5
points long by length: 5 cm gives 0, 20 cm gives 10
grade hold if score at least 60 after kept
replace grade sell if score at least 45
drop grade cull
grade out otherwise after sell
replace round last pick places by highest section skin, then highest score
drop round first
drop alert many
replace phrase "edge soft" means kiwa is blurred
phrase "cut clean" means kiwa is razor
replace sample "bent" with spine bent comes out sell
rename grade keep to kept "kept on"
"""
LINES = [*CHANGES.splitlines(), *CLUB.splitlines(), 'drop sample "bent"', "drop section body", "section body"]


@st.composite
def changed_pages(draw):
    """Lines of changes and of the base in any order, now and then with a stretch taken out or doubled."""
    lines = draw(st.lists(st.sampled_from(LINES), max_size=14))
    text = "\n".join(lines)
    for _ in range(draw(st.integers(0, 2))):
        begin = draw(st.integers(0, len(text)))
        end = draw(st.integers(begin, min(len(text), begin + 20)))
        text = (
            text[:begin]
            + draw(
                st.sampled_from(
                    (
                        "",
                        text[begin:end] * 2,
                        "replace ",
                        "drop ",
                        "after keep",
                        "\nrename grade cull to out\n",
                        "\nrename grade keep to sell\n",
                    )
                )
            )
            + text[end:]
        )
    return text


def tried(text, folder):
    """The standard of a text, None where it is refused, with its problems or warnings."""
    try:
        made = koirules.read_standard(text, registry=BOX, folder=folder)
    except koirules.StandardError as error:
        return None, error.problems
    return made, made.warnings


def inside(place, texts):
    lines = texts[place.file].split("\n")
    return 1 <= place.line <= len(lines) and place.column <= len(lines[place.line - 1]) + 1


@settings(moderate, max_examples=150)
@given(changed_pages())
@example(CHANGES)
def test_whatever_the_changes_there_is_a_standard_or_problems_that_lie_in_either_file(tmp_path_factory, text):
    folder = tmp_path_factory.mktemp("farm")
    (folder / "club.koi").write_text(CLUB, encoding="utf-8")
    head = 'standard "Reed Pool (invented)" edition 7 based on "club.koi" edition 2026-1\n'
    texts = {"standard.koi": head + text, str(folder / "club.koi"): CLUB}
    farm, problems = tried(head + text, folder)
    for problem in problems:
        assert inside(problem.site, texts), problem
    if farm is not None:
        whole = koirules.read_standard(farm.whole_text, registry=BOX)
        assert whole.seal == farm.seal
        assert koirules.read_standard(koirules.tidy(farm.whole_text, registry=BOX), registry=BOX).seal == farm.seal
    else:
        assert problems


def test_changes_of_every_kind_hold_together(tmp_path):
    (tmp_path / "club.koi").write_text(CLUB, encoding="utf-8")
    farm, warnings = tried(HEADER.replace(" seal {seal}", "") + CHANGES, tmp_path)
    assert {warning.code for warning in warnings} == {"unsealed-base", "unused"}
    assert [part.name for part in farm.rules.rounds] == ["last"]
    assert [part.name for part in farm.rules.points] == ["stem", "width", "white", "long"]
    assert [part.name for part in farm.rules.extras] == ["lips", "big"]
    assert (farm.grades, farm.rules.alerts, len(farm.rules.limits)) == (("kept", "hold", "sell", "out"), (), 1)


@pytest.mark.parametrize("number", range(len(CLUB.splitlines()) - 1))
def test_each_kind_of_statement_can_be_replaced_and_dropped(tmp_path, number):
    (tmp_path / "club.koi").write_text(CLUB, encoding="utf-8")
    head = 'standard "Reed Pool (invented)" edition 7 based on "club.koi" edition 2026-1\n'
    line = CLUB.splitlines()[number + 1]
    farm = koirules.read_standard(f"{head}replace {line}", registry=BOX, folder=tmp_path)
    assert without_head(farm) == without_head(koirules.read_standard(CLUB, registry=BOX))
    (one,) = statements_of(line)
    name = f'"{name_of(one)}"' if isinstance(one, statements.Sample | statements.Phrase) else name_of(one)
    dropped, problems = tried(f"{head}drop {head_of(one)} {name}\n", tmp_path)
    if dropped is None:
        # What needs it is in the base, and says why it does not hold any more.
        assert all("this comes of what" in problem.mend for problem in problems if not problem.warning)
    else:
        assert line.split(" if ")[0] not in dropped.canonical_text
