"""A long comparison of koirules with the slow judge: `python tests/benchmarks/agreement.py [STANDARDS]`.

Draws standards and three records for each, and stops at the first pair on which the two differ; prints how many agreed.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

import koirules
from tests.judge.judge import judge
from tests.judge.strategies import layouts, records, standards, to_mapping
from tests.judge.text import to_text
from tests.properties.test_agreement import by_judge, by_koirules


def main(count: int) -> None:
    pairs = 0

    @settings(
        max_examples=count,
        deadline=None,
        database=None,
        suppress_health_check=list(HealthCheck),
        phases=(Phase.generate,),
    )
    @given(st.data())
    def compare(data: st.DataObject) -> None:
        nonlocal pairs
        standard = data.draw(standards())
        text = to_text(standard, data.draw(layouts()))
        loaded = koirules.read_standard(text)
        for _ in range(3):
            record = data.draw(records(standard))
            mine = by_koirules(loaded.grade(to_mapping(standard, record)))
            theirs = by_judge(judge(standard, record))
            if mine != theirs:
                raise SystemExit(f"{text}\n{record}\nkoirules {mine}\njudge    {theirs}")
            pairs += 1

    compare()
    print(f"{pairs:,} pairs of {count:,} standards agree")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000)
