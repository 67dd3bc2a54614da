"""The server: who gets in, what is taken, what is kept, and that everything is there once."""

from __future__ import annotations

import io
import json
import secrets
import sqlite3
import stat
import subprocess
import sys
from pathlib import Path

import httpx
import pytest
from koirules_tub.access import Rate, cookie_of, key_of
from koirules_tub.sorting import Judge
from koirules_tub.store import APPLICATION, Entry, Store, StoreError
from PIL import Image

import koirules


def entry(kind, body, fish="7", sorter="Mika", look=1, name=None):
    return {
        "id": name or secrets.token_hex(16),
        "fish": fish,
        "sorter": sorter,
        "look": look,
        "kind": kind,
        "body": body,
    }


def entered(client, *entries):
    answer = client.post("/enter", json={"entries": list(entries)})
    assert answer.status_code == 200, answer.text
    return answer.json()


def mine(told, fish="7", sorter="Mika"):
    return next(
        one for found in told["fish"] if found["fish"] == fish for one in found["by"] if one["sorter"] == sorter
    )


def test_only_who_has_the_key_gets_in(shed):
    address = f"http://127.0.0.1:{shed.port}"
    with httpx.Client(base_url=address, headers={"origin": address}) as stranger:
        for path in ("/", "/about", "/batch", "/fish/7", "/records.csv", "/tub.js", "/photographs/abcdefgh"):
            assert stranger.get(path).status_code == 403, path
        assert stranger.post("/enter", json={"entries": []}).status_code == 403
        assert stranger.get("/in/wrong").status_code == 403
        assert stranger.get("/in/" + cookie_of(shed.key)).status_code == 403
        answer = stranger.get(f"/in/{shed.key}")
        cookie = answer.headers["set-cookie"].lower()
        assert "httponly" in cookie
        assert "samesite=strict" in cookie
        assert shed.key.lower() not in cookie
        assert stranger.get("/about").status_code == 200


def test_guesses_at_the_key_are_slowed_down(shed):
    with httpx.Client(base_url=f"http://127.0.0.1:{shed.port}") as stranger:
        answers = [stranger.get("/in/guess").status_code for _ in range(14)]
    assert answers[0] == 403
    assert answers[-1] == 429


def test_a_rate_gives_back_with_time_and_forgets_the_quiet():
    rate = Rate(each_second=1, burst=2, most=2)
    assert [rate.allows("a", 0), rate.allows("a", 0), rate.allows("a", 0)] == [True, True, False]
    assert rate.allows("a", 1.1)
    assert all(rate.allows(str(number), 2) for number in range(5))


def test_other_pages_and_other_names_may_not_write(shed):
    with shed.client() as client:
        for origin in ("http://elsewhere.test", "null", f"https://127.0.0.1:{shed.port}"):
            assert client.post("/enter", json={"entries": []}, headers={"origin": origin}).status_code == 403
        assert client.get("/about", headers={"host": "elsewhere.test"}).status_code == 421
        assert client.get("/about", headers={"host": "127.0.0.1"}).status_code == 421


def test_every_answer_has_a_policy_without_inline_script(shed):
    with shed.client() as client:
        for path in ("/", "/about", "/records.csv", "/none"):
            policy = client.get(path).headers["content-security-policy"]
            assert "default-src 'none'" in policy
            assert "unsafe" not in policy
        for name in ("/", "/in/" + shed.key):
            assert "<script>" not in client.get(name).text
            assert " on" + "click" not in client.get(name).text


def test_a_line_is_understood_and_each_remark_can_be_taken_out(shed):
    with shed.client() as client:
        told = entered(client, entry("line", {"text": "nidan, outline good, 14 cm, wibbly"}, name="a" * 16))
        found = mine(told)
        assert found["record"] == {"steps": "nidan", "outline": "good", "length": "14 cm"}
        assert found["unread"] == ["wibbly"]
        told = entered(
            client, entry("strike", {"entry": "a" * 16, "at": 1}), entry("strike", {"entry": "a" * 16, "at": 3})
        )
        found = mine(told)
        assert found["record"] == {"steps": "nidan", "length": "14 cm"}
        assert found["unread"] == []
        assert [chip["text"] for chip in found["chips"]] == ["nidan", "14 cm"]


def test_a_line_says_the_same_as_the_library_does(shed, standard):
    line = "sandan, kiwa sharp, hi on one eye, 2 shimi, tail stem strong"
    with shed.client() as client:
        found = mine(entered(client, entry("line", {"text": line})))
    notes = standard.read_notes(f"7: {line}")
    record = {name: value for name, value in notes.records[0].items() if name != "fish"}
    assert found["record"] == record
    result = standard.grade(record)
    assert found["score"] == [float(result.score_low), float(result.score_high)]
    assert found["grades"] == [standard.grade_titles[name] for name in result.possible]


def test_what_holds_for_the_lot_holds_for_every_fish_and_a_fish_goes_before_it(shed):
    with shed.client() as client:
        entered(client, entry("line", {"text": "nidan"}), entry("set", {"trait": "health", "value": "sick"}, fish="8"))
        entered(client, entry("lot", {"text": "health well"}, fish=""))
        assert client.get("/fish/7").json()["by"][0]["record"]["health"] == "well"
        assert client.get("/fish/8").json()["by"][0]["record"]["health"] == "sick"
        rows = {row[0]: row for row in client.get("/batch?since=0").json()["fish"]}
        assert set(rows) == {"7", "8"}


def test_buttons_and_values_and_taking_them_back(shed):
    with shed.client() as client:
        assert mine(entered(client, entry("set", {"trait": "outline", "value": "good"})))["record"] == {
            "outline": "good"
        }
        assert mine(entered(client, entry("set", {"trait": "outline", "value": ""})))["record"] == {}
        about = client.get("/about").json()
        assert len(about["buttons"]) >= 8
        assert all(button["words"] for button in about["buttons"])
        found = mine(entered(client, entry("set", {"trait": "length", "value": "very long"})))
        assert found["wrong"]


def test_an_entry_sent_twice_is_there_once(shed):
    one = entry("line", {"text": "nidan"})
    with shed.client() as client:
        first, second = entered(client, one), entered(client, one, one)
        assert first["last"] == second["last"]
        assert second["saved"] == [one["id"], one["id"]]
    assert Store(shed.path).last == 1


def test_two_people_on_one_fish_stay_two_records(shed, standard):
    with shed.client() as client:
        entered(client, entry("line", {"text": "outline good"}), entry("line", {"text": "outline fair"}, sorter="Ren"))
        by = {one["sorter"]: one["record"] for one in client.get("/fish/7").json()["by"]}
        assert by == {"Mika": {"outline": "good"}, "Ren": {"outline": "fair"}}
        table = client.get("/records.csv").text.splitlines()
    assert [row.split(",")[0] for row in table] == ["fish", "7 (Mika)", "7 (Ren)"]
    assert [record.fish for record in standard.read_records(shed.path, ["verdict", "sorter"])] == [
        "7 (Mika)",
        "7 (Ren)",
    ]


def test_another_look_carries_on_and_corrects(shed):
    with shed.client() as client:
        entered(client, entry("line", {"text": "outline good, nidan"}), entry("done", {}))
        told = entered(client, entry("set", {"trait": "outline", "value": "fair"}, look=2))
        looks = {one["look"]: one["record"] for one in told["fish"][0]["by"]}
        assert looks[1] == {"steps": "nidan", "outline": "good"}
        assert looks[2] == {"steps": "nidan", "outline": "fair"}


ROUNDS = """
standard "rounds" edition 1 variety kohaku
section s worth 100
points o by outline: poor gives 0, fair gives 4, good gives 8, excellent gives 10
grade keep if score at least 50
grade sell otherwise
round first "heated house" pick 2 by highest score
"""


def test_rounds_show_who_is_kept_who_is_tied_and_the_places_left(tmp_path):
    judge = Judge(koirules.read_standard(ROUNDS))
    store = Store(tmp_path / "r.tub")
    with store.change():
        for fish, word in (("1", "excellent"), ("2", "good"), ("3", "good")):
            one = Entry(secrets.token_hex(8), fish, "Mika", 1, "set", {"trait": "outline", "value": word})
            store.add([one])
            store.keep_look(judge.look(fish, "Mika", 1, judge.told([one], [])))
    (course,) = judge.rounds(store)
    assert (course["title"], course["kept"], course["tied"], course["places"]) == ("heated house", ["1"], ["2", "3"], 1)
    store.db.execute("INSERT INTO decisions VALUES ('3', 'first', '', 'Mika', 'her mother')")
    (course,) = judge.rounds(store)
    assert (course["kept"], course["tied"], course["places"]) == (["1", "3"], [], 0)


def test_the_page_of_results_is_that_of_the_command(shed):
    with shed.client() as client:
        entered(client, entry("line", {"text": "nidan, outline good, 14 cm"}))
        answer = client.get("/results.html")
    assert answer.status_code == 200, answer.text
    assert "<html" in answer.text
    assert "Cold Sluice" in answer.text


def test_a_decision_needs_a_reason_and_can_be_taken_back(shed):
    with shed.client() as client:
        entered(client, entry("line", {"text": "nidan"}), entry("decision", {"grade": "keep", "reason": "her mother"}))
        assert client.get("/fish/7").json()["decisions"] == [["", "keep", "Mika", "her mother"]]
        entered(client, entry("decision", {"grade": "keep", "reason": ""}))
        assert client.get("/fish/7").json()["decisions"] == []


@pytest.mark.parametrize(
    "body",
    [
        b"{",
        b"[]",
        b'{"entries": 4}',
        b'{"entries": [{"id": "x"}]}',
        json.dumps({"entries": [entry("explode", {})]}).encode(),
        json.dumps({"entries": [entry("line", {"text": "x"}, fish="")]}).encode(),
        json.dumps({"entries": [entry("line", {"text": "x"}, look=0)]}).encode(),
        json.dumps({"entries": [entry("line", {"text": "x" * 250_000})]}).encode(),
        b'{"entries": ' + b"[" * 50_000,
        json.dumps({"entries": [entry("line", {"text": "x"})] * 501}).encode(),
    ],
)
def test_what_is_no_entry_is_refused_whole(shed, body):
    with shed.client() as client:
        answer = client.post("/enter", content=body)
        assert answer.status_code in {400, 413}
        assert answer.json()["problem"]
    assert Store(shed.path).last == 0


def test_bodies_are_bounded(shed):
    with shed.client() as client:
        assert client.post("/enter", content=b"x" * (1024 * 1024 + 1)).status_code == 413
        assert (
            client.put("/photographs/abcdefgh?fish=7&sorter=M", content=b"x" * (15 * 1024 * 1024 + 1)).status_code
            == 413
        )


def photograph(size=(900, 600), **more):
    out = io.BytesIO()
    picture = Image.new("RGB", size, "white")
    exif = picture.getexif()
    exif[0x0112] = 6  # turned
    exif[0x8825] = {1: "N", 2: (51.0, 30.0, 0.0)}
    exif[0x010F] = "Somebody's phone"
    picture.save(out, "JPEG", exif=exif, **more)
    return out.getvalue()


def test_a_photograph_is_kept_upright_without_place_and_maker(shed):
    with shed.client() as client:
        told = client.put("/photographs/photo-of-seven?fish=7&sorter=Mika", content=photograph())
        assert told.status_code == 200, told.text
        again = client.put("/photographs/photo-of-seven?fish=7&sorter=Mika", content=photograph())
        assert again.json()["saved"] == ["photo-of-seven"]
        data = client.get("/photographs/photo-of-seven").content
        assert [row[0] for row in client.get("/fish/7").json()["photographs"]] == ["photo-of-seven"]
    kept = Image.open(io.BytesIO(data))
    assert kept.size == (600, 900)
    assert not kept.getexif()
    assert b"phone" not in data


def test_pictures_that_are_none_or_too_large_are_refused(shed):
    bomb = io.BytesIO()
    Image.new("1", (9000, 9000)).save(bomb, "PNG")
    with shed.client() as client:
        for data in (b"GIF89a", b"", bomb.getvalue(), photograph()[:300]):
            answer = client.put("/photographs/abcdefgh?fish=7&sorter=M", content=data)
            assert answer.status_code == 422, answer.text
        assert client.get("/photographs/..%2f..%2fautumn.tub.key").status_code in {403, 404}
    assert not list(shed.path.parent.glob("*.photographs/*"))


def test_texts_are_cleaned_and_cells_cannot_act(shed):
    with shed.client() as client:
        entered(client, entry("line", {"text": "nidan"}, fish="=cmd()\x1b[2J", sorter="@sum\u202e"))
        table = client.get("/records.csv").text
        assert "'=cmd()[2J" in table
        assert "'@sum" in table
        assert client.get("/records.xlsx").content[:2] == b"PK"


def test_the_key_survives_a_restart_and_can_be_changed(tmp_path):
    path = tmp_path / "a.tub"
    key = key_of(path)
    assert key_of(path) == key
    assert stat.S_IMODE((tmp_path / "a.tub.key").stat().st_mode) == 0o600
    assert key_of(path, new=True) != key
    assert len(key) >= 20


def test_files_of_others_and_damaged_ones_are_refused(tmp_path):
    other = sqlite3.connect(tmp_path / "other.tub")
    other.execute("CREATE TABLE notes (text)")
    other.commit()
    with pytest.raises(StoreError, match="another program"):
        Store(tmp_path / "other.tub")
    (tmp_path / "broken.tub").write_bytes(b"fish,outline\n" * 100)
    with pytest.raises(StoreError, match="cannot be read"):
        Store(tmp_path / "broken.tub")
    later = Store(tmp_path / "later.tub")
    later.db.execute("PRAGMA user_version = 99")
    later.close()
    with pytest.raises(StoreError, match="layout 99"):
        Store(tmp_path / "later.tub")
    assert sqlite3.connect(tmp_path / "later.tub").execute("PRAGMA application_id").fetchone() == (APPLICATION,)


def test_the_command_grades_and_writes_what_was_entered(shed, tmp_path):
    with shed.client() as client:
        entered(client, entry("line", {"text": "nidan, outline good, 14 cm"}))
    shed.stop()
    run = [sys.executable, "-m", "koirules"]
    graded = subprocess.run([*run, "grade", "tosai_kohaku", shed.path], capture_output=True, text=True, check=False)
    assert graded.returncode == 0, graded.stderr
    assert "7" in graded.stdout
    out = tmp_path / "autumn.csv"
    written = subprocess.run(
        [*run, "tub", "tosai_kohaku", "--out", shed.path, "--csv", out], capture_output=True, text=True, check=False
    )
    assert written.returncode == 0, written.stderr
    assert "nidan" in out.read_text()
    again = subprocess.run(
        [*run, "tub", "tosai_kohaku", "--out", shed.path, "--csv", out], capture_output=True, text=True, check=False
    )
    assert again.returncode == 2
    wrong = subprocess.run(
        [*run, "tub", "tosai_kohaku", "--out", tmp_path / "no" / "such.tub"],
        capture_output=True,
        text=True,
        check=False,
    )
    assert wrong.returncode == 2
    assert "Traceback" not in wrong.stderr
    shed.start()
    assert isinstance(koirules.load_standard("tosai_kohaku"), koirules.Standard)


def test_kills_and_losses_lose_nothing():
    # A twentieth of tests/benchmarks/tub/faults.py.
    script = Path(__file__).parents[3] / "tests" / "benchmarks" / "tub" / "faults.py"
    done = subprocess.run([sys.executable, script, "10", "10"], capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    assert "0 lost, 0 twice" in done.stdout
