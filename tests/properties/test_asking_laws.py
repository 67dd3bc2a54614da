"""Asking at the tub is sound: nothing that may still be told changes a grade that it calls settled."""

from hypothesis import HealthCheck, Phase, given, note, settings
from hypothesis import strategies as st

import koirules
from koirules.grading.next_look import Asker, Noting
from koirules.grading.questions import Known
from tests.judge.judge import judge
from tests.judge.strategies import completions, records, standards, to_mapping
from tests.judge.text import to_text

moderate = settings(
    max_examples=60,
    deadline=None,
    suppress_health_check=list(HealthCheck),
    phases=(Phase.explicit, Phase.reuse, Phase.generate),
)


def asked_until_done(asker, seen, *, thorough):
    """What is known of a fish at the end, where the sorter sees what is in `seen` and nothing else."""
    known, noted = Known(), thorough
    for _ in range(len(asker.questioner.answers) + 2):
        question = asker.next_one(known) if noted else asker.next_asked(known)
        if question is None:
            return known
        if isinstance(question, Noting):
            known, noted = known.noted(question.traits, seen), True
        else:
            assert question.trait.name not in known.untold
            known = known.told(question.trait, seen.get(question.trait.name))
    raise AssertionError("asked more often than there are traits")


@moderate
@given(st.data())
def test_no_completion_changes_a_grade_that_was_settled_by_asking(data):
    standard = data.draw(standards())
    text = to_text(standard)
    note(text)
    loaded = koirules.read_standard(text)
    asker = Asker.of(loaded.questioner)
    record = data.draw(records(standard))
    seen = loaded.reader.read(to_mapping(standard, record), "").readings
    known = asked_until_done(asker, seen, thorough=data.draw(st.booleans()))
    assert known.readings.items() <= seen.items()
    told = {name: said for name, said in record.items() if name in known.readings}
    note(repr((told, known.untold, known.unnoted)))
    result = loaded.grade(to_mapping(standard, told))
    if not loaded.questioner.is_settled(known):
        return
    # As the record stands it has the grade that was called settled: the file that is written is graded the same.
    assert result.grade is not None
    # The full record has it too, as long as it holds only what could be told.
    assert loaded.grade(to_mapping(standard, record)).grade == result.grade
    never = known.untold | known.unnoted
    free = sorted({each.name for each in standard.traits} - told.keys() - never)
    later = frozenset(data.draw(st.sets(st.sampled_from(free)))) if free else frozenset()
    full = data.draw(completions(standard, told))
    note(repr((full, later)))
    assert judge(standard, full, frozenset(told) | later).grade == result.grade


@moderate
@given(st.data())
def test_a_fish_is_called_not_settled_only_where_all_that_can_be_told_was_asked(data):
    standard = data.draw(standards())
    loaded = koirules.read_standard(to_text(standard))
    record = data.draw(records(standard))
    seen = loaded.reader.read(to_mapping(standard, record), "").readings
    known = asked_until_done(Asker.of(loaded.questioner), seen, thorough=data.draw(st.booleans()))
    assert loaded.questioner.is_settled(known) or not loaded.questioner.questions(known)
