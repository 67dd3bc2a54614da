"""Several looks at a fish, drawn: koirules and the judge know the same of it at the last, with what silence means."""

from __future__ import annotations

from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.vocabulary.kinds import Label
from tests.judge.looks import Row, judge_rows
from tests.judge.strategies import records, standards_with_silence, to_mapping
from tests.judge.text import to_text
from tests.properties.test_agreement import by_judge, by_koirules


@settings(
    max_examples=40,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)
@given(st.data())
def test_koirules_and_the_judge_know_the_same_after_several_looks(data: st.DataObject) -> None:
    standard = data.draw(standards_with_silence())
    names = [trait.name for trait in standard.traits]
    carry = data.draw(st.lists(st.sampled_from(names), unique=True, max_size=2)) if names else []
    text = to_text(standard) + (f"carry forward {', '.join(carry)}\n" if carry else "")
    note(text)
    loaded = koirules.read_standard(text)
    for _ in range(3):
        rows: list[Row] = []
        mappings: list[dict[str, object]] = []
        for sorting in range(data.draw(st.integers(1, 3))):
            step = data.draw(st.sampled_from((0, 1)))  # whether its looks are on one day or on one after another
            for number in range(1, data.draw(st.integers(1, 3)) + 1):
                record = data.draw(records(standard))
                blank = [
                    name for name in names if name not in record and not isinstance(loaded.traits[name].kind, Label)
                ]
                untold = data.draw(st.frozensets(st.sampled_from(blank), max_size=2)) if blank else frozenset()
                look = None if number == 1 and data.draw(st.booleans()) else number
                rows.append(Row(look, record, untold))
                day = f"2026-0{sorting + 1}-{10 + step * number}"
                mapping = to_mapping(standard, record) | dict.fromkeys(untold, "?") | {"fish": "x", "date": day}
                mappings.append(mapping if look is None else mapping | {"look": look})
        note(repr(mappings))
        (result,) = loaded.grade_batch(mappings).results
        assert by_koirules(result) == by_judge(judge_rows(standard, rows, carry))
