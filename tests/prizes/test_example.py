"""The example of a show, recalculated from its files alone: nothing of koirules takes part in the recalculation."""

import csv
import json
import math
import re
import shutil
import subprocess
import sys
import tomllib
from collections import Counter, defaultdict
from decimal import ROUND_FLOOR, Decimal
from fractions import Fraction
from pathlib import Path

import krippendorff
import pytest
from click.testing import CliRunner

from koirules.commands import grade_mixed, inputs, main
from tests.rulesets.shipped import registry

FOLDER = Path(__file__).resolve().parents[2] / "examples" / "14-a-show"


def rows(path):
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def points(variety):
    """{section: (worth, {trait: {word: points}})} of the page of a variety and the common page, read with two patterns."""
    found, named = {}, {}
    for path in (FOLDER / "rules" / "common" / "open.koi", FOLDER / "rules" / f"{variety}.koi"):
        section = None
        for line in path.read_text(encoding="utf-8").splitlines():
            if begun := re.match(r'section (\w+) ".*" worth (\d+)', line):
                section = begun[1]
                found[section] = (Decimal(begun[2]), {})
            elif continued := re.fullmatch(r"section (\w+)", line):
                section = continued[1]
            elif dropped := re.fullmatch(r"drop points (\w+)", line):
                del found[section][1][named[dropped[1]]]
            elif given := re.match(r'points (\w+)(?: ".*")? by (\w+): (.+)', line):
                told = re.findall(r"(\w+) gives (\d+)", given[3])
                named[given[1]] = given[2]
                found[section][1][given[2]] = {word: Decimal(number) for word, number in told}
    return found


def ends(fish):
    """The lowest and highest points of each section, in hundredths; what is blank or a question can still be anything."""
    told = {}
    for section, (worth, criteria) in points(fish["variety"]).items():
        most = sum(max(table.values()) for table in criteria.values())
        low = sum(table.get(fish[trait], min(table.values())) for trait, table in criteria.items())
        high = sum(table.get(fish[trait], max(table.values())) for trait, table in criteria.items())
        told[section] = (half_up(worth * low / most), half_up(worth * high / most))
    told["score"] = tuple(map(sum, zip(*told.values(), strict=True)))
    return told


def half_up(points):
    return (points * 100 + Decimal("0.5")).to_integral_value(ROUND_FLOOR) / 100


def middle_mean(points):
    """The mean without the highest and the lowest, to a hundredth."""
    kept = sorted(points)[1:-1]
    exact = Fraction(sum(kept)) / len(kept)
    return Decimal((exact * 100 + Fraction(1, 2)).__floor__()) / 100


def by_judges(fish, judges):
    """The points of a fish that judges looked at: what a judge left blank is what was seen when the fish came in."""
    each = [ends(fish | {name: said for name, said in judge.items() if said}) for judge in judges]
    return {key: tuple(middle_mean([one[key][end] for one in each]) for end in (0, 1)) for key in each[0]}


def class_of(fish):
    table = tomllib.loads((FOLDER / "classes.toml").read_text(encoding="utf-8"))
    named = [one["name"] for one in table["groups"] if fish["variety"] in one.get("varieties", ())]
    group = named[0] if named else next(one["name"] for one in table["groups"] if one.get("others"))
    if not re.fullmatch(r"[0-9.]+", fish["length (cm)"]):
        return None
    half = Decimal("0.5")
    read = (Decimal(fish["length (cm)"]) / half).to_integral_value(ROUND_FLOOR) * half
    size = next((one["name"] for one in table["sizes"]["sizes"] if read <= one["to"]), None)
    return None if size is None else (group, size)


def entries():
    """The rows of the entry sheet that no judge wrote."""
    return [row for row in rows(FOLDER / "entries.csv") if not row["judge"]]


def recalculated():
    """{(prize, group, size): [fish of each place]} by hand, with what was voted and decided."""
    decided = {(row["prize"], row["fish"]): place for place, row in enumerate(rows(FOLDER / "decisions.csv"))}
    votes = Counter(row["fish"] for row in rows(FOLDER / "votes.csv"))
    fish = {}
    judges = defaultdict(list)
    for row in rows(FOLDER / "entries.csv"):
        if row["judge"]:
            judges[row["fish"]].append(row)
    for row in entries():
        told = by_judges(row, judges[row["fish"]]) if row["fish"] in judges else ends(row)
        low = told["score"][0]
        is_placed = row["spine"] != "bent" and low >= 50
        if (its := class_of(row)) is not None:
            fish[row["fish"]] = {
                **{key: both[0] for key, both in told.items()},
                "class": its,
                "placed": is_placed,
            }

    def best(prize, names, *keys):
        return sorted(names, key=lambda name: (*(-fish[name][key] for key in keys), decided.get((prize, name), 99)))

    found = {}
    classes = defaultdict(list)
    for name, one in fish.items():
        if one["placed"]:
            classes[one["class"]].append(name)
    for its, names in classes.items():
        found["class", *its] = best("class", names, "score", "body")[: 3 if len(names) >= 3 else 1]
    firsts = [told[0] for (prize, *_), told in found.items() if prize == "class"]
    for group in {fish[name]["class"][0] for name in firsts}:
        named = [name for name in firsts if fish[name]["class"][0] == group]
        found["group", group, ""] = best("group", named, "score", "body")[:1]
    for size in {fish[name]["class"][1] for name in firsts}:
        named = [name for name in firsts if fish[name]["class"][1] == size]
        found["size", "", size] = best("size", named, "body", "skin", "score")[:1]
    voted = {told[0] for (prize, *_), told in found.items() if prize in {"group", "size"} and votes[told[0]]}
    found["show", "", ""] = sorted(
        voted, key=lambda name: (-votes[name], -fish[name]["body"], decided.get(("show", name), 99))
    )[:1]
    young = [told[0] for (prize, _, size), told in found.items() if prize == "size" and size in {"15", "25"}]
    young = [name for name in young if name not in found["show", "", ""]]
    found["young", "", ""] = best("young", young, "body", "skin", "score")[:1]
    return found


@pytest.fixture
def run(tmp_path, monkeypatch):
    for module in (inputs, grade_mixed):
        monkeypatch.setattr(module, "load_registry", registry)
    monkeypatch.chdir(tmp_path)

    def told(*words):
        given = [str(FOLDER / name) for name in ("day.toml", "entries.csv", "rules", "votes.csv")]
        words = ["prizes", *given[:2], "--rules", given[2], "--votes", given[3], *words]
        result = CliRunner().invoke(main, words)
        assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
        return result

    return told


def test_every_place_is_the_one_that_a_recalculation_gives(run):
    result = run(
        "--decisions", str(FOLDER / "decisions.csv"), "--out", "prizes.csv", "--out", "p.html", "--for", "house"
    )
    assert result.exit_code == 0, result.output
    told = defaultdict(list)
    known = {row["fish"]: row for row in entries()}
    judged = {row["fish"] for row in rows(FOLDER / "entries.csv") if row["judge"]}
    for row in rows(Path("prizes.csv")):
        assert row["place"] == str(len(told[row["prize"], row["class group"], row["class size"]]) + 1)
        told[row["prize"], row["class group"], row["class size"]].append(row["fish"])
        assert row["grade"] == "fit to be placed"
        score = ends(known[row["fish"]])["score"] if row["fish"] not in judged else None
        shown = [f"{end:.2f}" for end in dict.fromkeys(score or ())]
        assert row["score"] == " to ".join(shown) or row["fish"] in judged
        # `body` and `score` are what decides, told again in words; the columns say the same.
        if "score" in row["by"]:
            assert f"score {row['score']}" in row["by"]
    assert told == recalculated()
    assert Path("prizes.csv").read_bytes() == (FOLDER / "prizes.csv").read_bytes()


def test_three_ties_wait_and_the_prize_that_hangs_on_one_of_them(run):
    result = run()
    assert result.exit_code == 1
    text = " ".join(result.stdout.split())
    assert "4 to settle" in text
    assert text.count("for a decision: these are tied") == 3
    assert "Best young koi: Place 1 waits for what is not settled: Best of the show." in text


def test_the_show_is_as_its_page_says():
    entered = entries()
    assert (len(entered), len({row["variety"] for row in entered})) == (240, 12)
    assert len({row["owner"] for row in entered}) == 31
    assert [row["fish"] for row in entered if class_of(row) is None] == ["017", "058", "102"]
    judged = [(row["fish"], row["judge"]) for row in rows(FOLDER / "entries.csv") if row["judge"]]
    assert (len(judged), len(set(judged)), len({fish for fish, _ in judged})) == (200, 200, 40)
    (blank,) = [row for row in entered if not row["lustre"]]
    # Its lustre was not recorded, and it is placed nowhere; that no lustre would place it, the command says by waiting for none.
    assert all(blank["fish"] not in told for told in recalculated().values())


def test_the_judges_are_those_that_the_script_draws(tmp_path):
    copied = tmp_path / "show"
    shutil.copytree(FOLDER, copied)
    subprocess.run([sys.executable, copied / "draw_judges.py"], check=True)
    assert (copied / "entries.csv").read_bytes() == (FOLDER / "entries.csv").read_bytes()


def test_agreement_is_that_of_the_records(monkeypatch):
    """Alpha of the lustre, recalculated by the library krippendorff; judge E stands apart, as the lot was drawn."""
    for module in (inputs, grade_mixed):
        monkeypatch.setattr(module, "load_registry", registry)
    done = CliRunner().invoke(main, ["agree", str(FOLDER / "rules"), str(FOLDER / "entries.csv"), "--json"])
    told = json.loads(done.stdout)
    assert (told["fish"], len(told["judges"])) == (40, 5)
    words = ("dull", "fair", "good", "superb")
    sheet = defaultdict(dict)
    for row in rows(FOLDER / "entries.csv"):
        if row["judge"] and row["lustre"] in words:
            sheet[row["judge"]][row["fish"]] = words.index(row["lustre"])
    fish = sorted({name for one in sheet.values() for name in one})
    data = [[sheet[judge].get(name, math.nan) for name in fish] for judge in sorted(sheet)]
    expected = krippendorff.alpha(reliability_data=data, level_of_measurement="ordinal")
    found = {one["name"]: one["alpha"] for one in told["traits"]}
    assert math.isclose(found["lustre"], expected, abs_tol=1e-12)
    most = max(told["apart"], key=lambda one: one["without"])
    assert most["judge"] == "judge E"
    assert min(told["apart"], key=lambda one: one["shift"])["judge"] == "judge E"


def test_the_call_back_is_the_three_best_of_each_class_by_body_and_skin(tmp_path, monkeypatch):
    """Recalculated from the sheet of the first look and the common page; fish that are alike at the cut all come back."""
    monkeypatch.setattr(inputs, "load_registry", registry)
    first = rows(FOLDER / "first_look.csv")
    entries = [row for row in rows(FOLDER / "entries.csv") if not row["judge"]]
    assert first == [{name: row[name] for name in first[0]} for row in entries]
    classes = defaultdict(list)
    for row, entry in zip(first, entries, strict=True):
        told = {name: each[0] for name, each in ends(entry).items() if name in {"body", "skin"}}
        if row["spine"] == "straight" and sum(told.values()) >= 30 and row["fish"] != "058":
            # 017 was not measured, and 102 could be of two sizes: each stands alone in its group.
            its = class_of(row) or (row["variety"], row["fish"])
            classes[its].append((sum(told.values()), told["body"], row["fish"]))
    back = set()
    for inside in classes.values():
        third = sorted((one[:2] for one in inside), reverse=True)[:3][-1]
        back |= {name for *keys, name in inside if tuple(keys) >= third}
    given = [str(FOLDER / name) for name in ("call_back.koi", "first_look.csv")]
    words = ["grade", *given, "--classes", str(FOLDER / "classes.toml"), "--out", str(tmp_path / "back.json")]
    result = CliRunner().invoke(main, words)
    assert result.exit_code == 0, result.output
    (called,) = json.loads((tmp_path / "back.json").read_text(encoding="utf-8"))["rounds"]
    assert set(called["kept"]) == back
    assert {"017", "102"} <= set(called["open"])
    assert "058" not in called["looked_at"]
