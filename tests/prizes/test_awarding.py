"""Prizes awarded, held against a recalculation that tries every world: every value within its ends, every order of ties."""

from __future__ import annotations

import random
from decimal import Decimal
from itertools import permutations, product

import pytest

from koirules.prizes.awarding import Ballot, Entrant, Ruling, Why, award, check_named
from koirules.prizes.reading import read_occasion_text

HEAD = 'title = "Trial (invented)"\ndate = 2026-04-18\n'


def occasion(text):
    found = read_occasion_text(HEAD + text, "trial.toml")
    assert not isinstance(found, tuple), found
    return found


def fish(name, score=0, body=0, grades=("keep",), outside="", **labels):
    def ends(value):
        low, high = value if isinstance(value, tuple) else (value, value)
        return Decimal(low), Decimal(high)

    return Entrant(name, outside, labels, tuple(grades), ends(score), {"body": ends(body)})


def by_hand(table, entrants, rank, ballots=()):
    """What a clerk makes of it, for values that are known: {(prize, part): [(place, fish), …]}.

    rank: in which order a person would put tied fish of a prize.
    """
    given, won = {}, {}
    for prize in table.prizes:
        won[prize.name] = {}
        parts = {}
        for one in entrants:
            kept = all(one.labels.get(label) in names for label, names in prize.labels.items())
            kept &= not prize.grades or one.grades[0] in prize.grades
            kept &= prize.outside or not one.outside
            if prize.among:
                kept &= any(won[w.prize].get(one.fish, 999) <= (w.places or 998) for w in prize.among)
            kept &= not any(won[w.prize].get(one.fish, 999) <= (w.places or 998) for w in prize.not_with)
            if kept:
                parts.setdefault(tuple(one.labels[label] for label in prize.for_each), []).append(one)
        for names, mine in parts.items():
            places = prize.places
            if len(mine) < prize.fewest:
                places = {"no prize": 0, "first place only": 1, "all places": places}[prize.if_fewer.value]

            def value(one, prize=prize):
                votes = sum(b.fish == one.fish and b.prize in ("", prize.name) for b in ballots)
                known = {"score": one.score[0], "votes": votes, "section body": one.sections["body"][0]}
                return [known[key] for key in prize.by]

            voted = [one for one in mine if prize.by[0] != "votes" or value(one)[0]]
            told = []
            for one in voted:
                before = sum(value(other) > value(one) for other in voted)
                if prize.ties.value == "decide":
                    before += sum(
                        value(other) == value(one) and rank[prize.name, other.fish] < rank[prize.name, one.fish]
                        for other in voted
                    )
                if before < places:
                    told.append((before + 1, one.fish))
                    won[prize.name][one.fish] = before + 1
            given[prize.name, names] = sorted(told)
    return given


def given(placings):
    return {
        (one.prize.name, part.names): sorted((each.place, each.fish) for each in part.awards)
        for one in placings
        for part in one.parts
    }


def worlds(entrants):
    """Every way in which open values can turn out, in whole points."""
    choices = []
    for one in entrants:
        ends = [one.score, one.sections["body"]]
        choices.append([[*range(int(low), int(high) + 1)] for low, high in ends] + [one.grades])
    for chosen in product(*(product(*each) for each in choices)):
        yield [
            fish(one.fish, score, body, (grade,), one.outside, **one.labels)
            for one, (score, body, grade) in zip(entrants, chosen, strict=True)
        ]


def drawn_prizes(rng):
    text, names = "", []
    for name in rng.sample(["cup", "dish", "rosette", "ribbon"], rng.randint(1, 4)):
        text += f'[[prize]]\nname = "{name}"\nplaces = {rng.randint(1, 3)}\n'
        text += f"by = {rng.choice([['score'], ['section body', 'score'], ['section body'], ['votes', 'score']])}\n"
        text += f"for_each = {rng.choice([[], ['tub'], ['tub', 'line']])}\n"
        text += f'ties = "{rng.choice(["share", "decide"])}"\n'
        if rng.random() < 0.4:
            text += f'fewest = {rng.randint(1, 3)}\nif_fewer = "{rng.choice(["no prize", "first place only", "all places"])}"\n'
        if rng.random() < 0.3:
            text += f"where = {{ {rng.choice(['tub', 'line'])} = ['1', '2'] }}\n"
        if rng.random() < 0.2:
            text += "outside = true\n"
        for key in ("among", "not_with"):
            if names and rng.random() < 0.4:
                places = rng.choice(["", f", places = {rng.randint(1, 2)}"])
                text += f'{key} = {{ prize = "{rng.choice(names)}"{places} }}\n'
        names.append(name)
    return occasion(text)


def drawn_fish(rng, most, is_open):
    def value():
        low = rng.randint(0, 3)
        return (low, low + rng.randint(1, 2)) if is_open and rng.random() < 0.25 else low

    return [
        fish(
            f"f{i}",
            value(),
            value(),
            outside="no size" if rng.random() < 0.1 else "",
            tub=rng.choice("123"),
            line=rng.choice("12"),
        )
        for i in range(rng.randint(1, most))
    ]


def drawn_ballots(rng, entrants):
    return [Ballot(f"judge {i}", rng.choice(entrants).fish, "", i + 2) for i in range(rng.randint(0, 5))]


@pytest.mark.parametrize("seed", range(300))
def test_settled_fish_win_what_a_clerk_gives_them_once_every_tie_is_decided(seed):
    rng = random.Random(seed)
    table, entrants = drawn_prizes(rng), drawn_fish(rng, 12, is_open=False)
    ballots = drawn_ballots(rng, entrants)
    rank = {(prize.name, one.fish): rng.random() for prize in table.prizes for one in entrants}
    rulings = []
    for _ in range(60):
        placings, problems = award(table, None, entrants, ballots, rulings)
        assert not [one for one in problems if not one.warning and one.code != "prize-voted-twice"]
        ties = [
            (one.prize.name, name)
            for one in placings
            for part in one.parts
            for wait in part.waiting
            if wait.why is Why.TIE
            for name in wait.fish
        ]
        if not ties:
            break
        # One decision at a time, so that what is half decided is tried too; the first of the tied fish of a prize.
        first = min((key for key in ties if key[0] == ties[0][0]), key=rank.get)
        rulings.append(Ruling(*first, "Clerk", "seen again", len(rulings) + 2))
    waiting = [wait.why for one in placings for part in one.parts for wait in part.waiting]
    assert set(waiting) <= {Why.VOTES, Why.EARLIER}
    wanted = by_hand(table, entrants, rank, ballots)
    if Why.VOTES not in waiting:
        assert not waiting
        assert given(placings) == wanted
    for key, told in given(placings).items():
        assert set(told) <= set(wanted.get(key, []))


@pytest.mark.parametrize("seed", range(120))
def test_a_place_is_given_only_if_it_is_so_in_every_world(seed):
    rng = random.Random(seed)
    table, entrants = drawn_prizes(rng), drawn_fish(rng, 7, is_open=True)
    ballots = drawn_ballots(rng, entrants)
    placings, _ = award(table, None, entrants, ballots)
    every = list(worlds(entrants))
    for world in rng.sample(every, min(40, len(every))):
        rank = {(prize.name, one.fish): rng.random() for prize in table.prizes for one in entrants}
        wanted = by_hand(table, world, rank, ballots)
        for key, told in given(placings).items():
            assert set(told) <= set(wanted.get(key, []))


@pytest.mark.parametrize("seed", range(150))
def test_a_place_of_a_single_prize_waits_only_if_worlds_differ_in_it(seed):
    rng = random.Random(seed)
    ties = rng.choice(["share", "decide"])
    table = occasion(
        f'[[prize]]\nname = "cup"\nplaces = {rng.randint(1, 3)}\nby = ["section body", "score"]\nties = "{ties}"\n'
    )
    entrants = [fish(one.fish, one.score, one.sections["body"]) for one in drawn_fish(rng, 4, is_open=True)]
    placings, _ = award(table, None, entrants)
    (part,) = placings[0].parts
    seen = []
    for world in worlds(entrants):
        for order in permutations(range(len(entrants))):
            rank = {("cup", one.fish): place for one, place in zip(entrants, order, strict=True)}
            seen.append(by_hand(table, world, rank)["cup", ()])
    in_all = set(seen[0]).intersection(*map(set, seen))
    awarded = {(each.place, each.fish) for each in part.awards}
    # Where ties are shared, a fish that is surely first waits as long as it is open who shares its place.
    assert awarded <= in_all if ties == "share" else awarded == in_all
    for wait in part.waiting:
        for place in range(wait.first, wait.last + 1):
            assert len({tuple(name for at, name in told if at == place) for told in seen}) > 1


def test_nobody_wins_by_the_order_of_the_file():
    table = occasion('[[prize]]\nname = "cup"\nby = "score"\n')
    entrants = [fish("a", 3), fish("b", 3), fish("c", 2)]
    for order in permutations(entrants):
        placings, _ = award(table, None, order)
        (part,) = placings[0].parts
        assert not part.awards
        assert [(wait.why, set(wait.fish), wait.words) for wait in part.waiting] == [
            (Why.TIE, {"a", "b"}, "Place 1 waits for a decision: these are tied (score 3.00).")
        ]


def test_a_later_prize_says_which_one_it_waits_for():
    table = occasion(
        '[[prize]]\nname = "tub"\ntitle = "Best of the tub"\nfor_each = "tub"\nby = "score"\n'
        '[[prize]]\nname = "show"\nby = "score"\namong = "tub"\n'
    )
    entrants = [fish("a", 3, tub="1"), fish("b", 3, tub="1"), fish("c", 2, tub="2")]
    (_, show), _ = award(table, None, entrants)
    (wait,) = show.parts[0].waiting
    assert wait.why is Why.EARLIER
    assert wait.upon == ("Best of the tub, tub 1",)
    # A fish that stands before all that is still tied need not wait.
    (_, show), _ = award(table, None, [*entrants[:2], fish("c", 5, tub="2")])
    assert [each.fish for each in show.parts[0].awards] == ["c"]


def test_an_open_grade_leaves_a_prize_waiting_that_asks_for_the_grade():
    table = occasion('[[prize]]\nname = "cup"\nby = "score"\nwhere = { grades = ["keep"] }\n')
    placings, _ = award(table, None, [fish("a", 5, grades=("keep", "sell")), fish("b", 4)])
    assert placings[0].parts[0].waiting[0].upon == ("the grade of a",)
    placings, _ = award(table, None, [fish("a", 5, grades=("sell",)), fish("b", 4)])
    assert [each.fish for each in placings[0].parts[0].awards] == ["b"]


def codes(table, entrants, ballots=(), rulings=()):
    named = [*check_named(table, entrants, ballots, "v"), *check_named(table, entrants, rulings, "d")]
    return [one.code for one in named] or [one.code for one in award(table, None, entrants, ballots, rulings)[1]]


def test_votes_and_decisions_that_mean_nothing_are_told():
    table = occasion(
        '[[prize]]\nname = "cup"\nby = ["votes"]\nwhere = { tub = "1" }\n[[prize]]\nname = "dish"\nby = "score"\n'
    )
    entrants = [fish("a", 3, tub="1"), fish("b", 2, tub="2")]
    vote, twice = Ballot("K", "a", "cup", 2), Ballot("K", "a", "", 3)
    assert codes(table, entrants, [vote]) == []
    assert codes(table, entrants, [vote, twice]) == ["prize-voted-twice"]
    assert codes(table, entrants, [vote, Ballot("L", "b", "", 3)]) == ["prize-vote-idle"]
    assert codes(table, entrants, [Ballot("K", "x", "dish", 2)]) == ["prize-fish-unknown", "prize-name-unknown"]
    ruling = Ruling("dish", "a", "K", "why", 2)
    assert codes(table, entrants, [vote], [ruling]) == ["prize-decision-idle"]
    assert codes(table, entrants, [vote], [ruling, Ruling("dish", "a", "L", "why", 3)]) == ["prize-decided-twice"]
    assert codes(table, entrants, [vote], [Ruling("dis", "a", "K", "why", 2)]) == ["prize-name-unknown"]


def test_a_decision_that_waits_for_an_open_grade_is_told_and_kept():
    table = occasion('[[prize]]\nname = "cup"\nby = "score"\nwhere = { grades = ["good"] }\n')
    entrants = [fish("a", 3, grades=("good", "plain")), fish("b", 3, grades=("good",))]
    ruling = Ruling("cup", "b", "K", "why", 2)
    (problem,) = award(table, None, entrants, (), [ruling])[1]
    assert (problem.code, problem.warning) == ("prize-decision-waits", True)
    settled = [fish(name, 3, grades=("good",)) for name in "ab"]
    placings, problems = award(table, None, settled, (), [ruling])
    assert problems == () and placings[0].parts[0].awards[0].fish == "b"
