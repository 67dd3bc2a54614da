"""Changes that change nothing change nothing; the whole says what base and changes say; looks never reach the seal."""

from pathlib import Path

from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.language import statements
from koirules.language.reader import read_text
from koirules.language.tidy import tidy_statement
from koirules.standard.inheritance import head_of, name_of
from koirules.testing import registry_with
from tests.judge.strategies import layouts, records, standards, to_mapping
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
