"""Weights from picks: what was put in is found, what cannot be told is refused, and the proposal reads."""

import csv
from pathlib import Path

import numpy as np
import pytest
from koirules_book.from_picks import Asked, learnt_from
from koirules_book.learning import How, Picks, learn_pairs, learn_verdicts
from koirules_book.parts_of_score import Parts, parts_of, present_weights
from koirules_book.problems import BookError
from koirules_book.proposal import proposal

import koirules

EXAMPLE = Path(__file__).parents[3] / "examples" / "15-three-years"
TRUE = np.array([30, 25, 18, 12, 9, 6.0])


def made(seed, n=400, noise=6.0):
    """Picks by known weights and known noise, the lines at 40 and 58 points."""
    rng = np.random.default_rng(seed)
    shares = rng.integers(0, 5, (n, len(TRUE))) / 4
    felt = shares @ TRUE + rng.logistic(0, noise, n)
    names = tuple("abcdef")
    none = np.zeros((n, 0), dtype=bool)
    parts = Parts(names, names, shares, np.zeros(n), (), none, shares @ TRUE, np.zeros(n, int), np.zeros(n, int))
    fish = [str(at) for at in range(n)]
    verdict = np.searchsorted([40.0, 58.0], felt, side="right")
    return parts, felt, Picks(fish, verdict, ["cull", "hold", "keep"], np.full(n, 2), np.zeros(n, int))


def test_intervals_hold_the_truth():
    # 25 of the 500 runs of tests/benchmarks/book/coverage.py, which counts them all.
    hits = []
    for seed in range(25):
        parts, _, picks = made(seed)
        found = learn_verdicts(parts, np.full(6, 100 / 6), picks, How(prior=None, rounds=100, seed=seed))
        hits += [weight.low <= true <= weight.high for weight, true in zip(found.weights, TRUE, strict=True)]
        assert sum(weight.learnt for weight in found.weights) == pytest.approx(100)
    assert 0.88 <= np.mean(hits) <= 1.0


def test_pairs_find_the_weights_too():
    parts, felt, picks = made(3, n=800)
    rng = np.random.default_rng(1)
    pairs = [
        (int(a), int(b)) if felt[a] > felt[b] else (int(b), int(a))
        for a, b in rng.integers(0, 800, (1500, 2))
        if a != b
    ]
    found = learn_pairs(parts, np.full(6, 100 / 6), picks.fish, pairs, How(prior=None, rounds=50))
    assert [weight.learnt for weight in found.weights] == pytest.approx(TRUE, abs=5)
    assert found.agreed_after > 0.7


def test_a_strong_prior_leaves_everything_as_it_was():
    parts, _, picks = made(2)
    gives = np.array([10, 20, 30, 20, 10, 10.0])
    found = learn_verdicts(parts, gives, picks, How(prior=0.001, rounds=10))
    assert [weight.learnt for weight in found.weights] == pytest.approx(gives, abs=0.5)


def test_what_picks_cannot_tell_is_refused_in_words():
    parts, _, picks = made(1, n=40)
    with pytest.raises(BookError, match="too few for 6 weights"):
        learn_verdicts(parts, np.full(6, 100 / 6), picks, How())
    parts, _, picks = made(1, noise=1e-9)
    with pytest.raises(BookError, match="without a mistake"):
        learn_verdicts(parts, np.full(6, 100 / 6), picks, How(prior=None))
    parts, _, picks = made(1)
    same = Picks(picks.fish, picks.verdict * 0, picks.verdicts, picks.allowed, picks.floor)
    with pytest.raises(BookError, match="the same verdict"):
        learn_verdicts(parts, np.full(6, 100 / 6), same, How())
    flat = Parts(
        parts.criteria,
        parts.titles,
        parts.shares * 0,
        parts.extras,
        (),
        parts.bites,
        parts.scores,
        parts.caps,
        parts.floors,
    )
    with pytest.raises(BookError, match="Fewer than two criteria"):
        learn_verdicts(flat, np.full(6, 100 / 6), picks, How())


def test_a_criterion_that_never_varied_keeps_its_weight():
    parts, _, picks = made(4)
    parts.shares[:, 2] = 0.5
    found = learn_verdicts(parts, np.full(6, 100 / 6), picks, How(rounds=20))
    assert [weight.held for weight in found.weights] == [False, False, True, False, False, False]
    assert found.weights[2].learnt == pytest.approx(100 / 6)


def test_parts_add_up_to_the_score():
    standard = koirules.load_standard(EXAMPLE / "sluice.koi")
    results = [standard.grade_record(record) for record in standard.read_records(EXAMPLE / "picks.csv", ["verdict"])]
    parts = parts_of(standard, results)
    assert present_weights(standard).sum() == pytest.approx(100)
    assert parts.shares @ present_weights(standard) + parts.extras == pytest.approx(parts.scores, abs=0.02)


@pytest.fixture(scope="module")
def learnt():
    standard = koirules.load_standard(EXAMPLE / "sluice.koi")
    return standard, learnt_from(standard, Asked(EXAMPLE / "picks.csv", best=("keep",)), How(rounds=60))


def test_the_owners_eye_is_found(learnt):
    _, found = learnt
    by_name = {weight.name: weight for weight in found.weights}
    # simulate.py: the owner goes by outline, tail stem, white and kiwa, and does not look at cover and odome.
    assert by_name["cover"].learnt < by_name["cover"].before / 2
    assert by_name["odome"].learnt < by_name["odome"].before
    assert by_name["kiwa"].learnt > by_name["kiwa"].before
    assert found.agreed_after > found.agreed_before
    assert {one.fish for one in found.contradictions} <= {
        record.fish for record in learnt[0].read_records(EXAMPLE / "picks.csv", ["verdict"])
    }


def test_the_proposal_reads_is_tidy_and_leaves_faults_alone(learnt):
    standard, found = learnt
    made = proposal(standard, found, "2027-1")
    new = koirules.read_standard(made.text)
    assert new.edition == "2027-1"
    assert koirules.tidy(made.text) == made.text
    assert sum(section.worth for section in new.rules.sections) == sum(
        section.worth for section in standard.rules.sections
    )
    old, now = (koirules.read_standard(text) for text in (standard.whole_text, made.text))
    faults = [[one.rules.words_at(limit.place) for limit in one.rules.limits] for one in (old, now)]
    assert faults[0] == faults[1]
    assert faults[0]
    assert "# Learnt: gives" in made.text


def test_the_proposal_agrees_better_with_the_picks(learnt):
    standard, found = learnt
    new = koirules.read_standard(proposal(standard, found, "2027-1").text)
    with (EXAMPLE / "picks.csv").open(encoding="utf-8") as file:
        verdicts = {
            row["fish"]: row["verdict"] for row in csv.DictReader(line for line in file if not line.startswith("#"))
        }

    def agreed(by):
        records = by.read_records(EXAMPLE / "picks.csv", ["verdict"])
        return sum((by.grade_record(record).grade == "keep") == (verdicts[record.fish] == "in") for record in records)

    assert agreed(new) > agreed(standard)


def test_wrong_picks_are_told_whole(tmp_path):
    standard = koirules.load_standard(EXAMPLE / "sluice.koi")
    path = tmp_path / "picks.csv"
    path.write_text("fish,outline,verdict\nA,good,yes\nB,good,in\nC,poor,keep\n", encoding="utf-8")
    with pytest.raises(BookError) as caught:
        learnt_from(standard, Asked(path), How())
    assert [problem.code for problem in caught.value.problems] == ["event-cell", "picks-cannot-tell"]
    pairs = tmp_path / "pairs.csv"
    pairs.write_text("better,worse\nA,Z\n", encoding="utf-8")
    with pytest.raises(BookError, match="hold no records"):
        learnt_from(standard, Asked(pairs), How())
    path.write_text("fish,outline\nA,good\n", encoding="utf-8")
    with pytest.raises(BookError, match='"Z"'):
        learnt_from(standard, Asked(pairs, path), How())
