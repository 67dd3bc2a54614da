"""The book: what goes in comes out, once; what is put right keeps what stood there; what is forgotten is gone."""

import json
import os
import signal
import sqlite3
import subprocess
import sys
import time
from datetime import date
from pathlib import Path

import pytest
from click.testing import CliRunner
from koirules_book.adding import Names, add_events, add_looks
from koirules_book.book import Book
from koirules_book.commands import book as command
from koirules_book.exporting import export, rescue
from koirules_book.histories import fish_history, year_history
from koirules_book.layout import APPLICATION, MIGRATIONS, VERSION
from koirules_book.pages import album_page, fish_page, year_page
from koirules_book.problems import BookError, stop_at_judges

import koirules
from koirules import Record

RULES = """
standard "Three Weirs, short" edition 1 variety kohaku
fault bent "bent spine" if spine is bent: no better than sell
section body worth 100
points outline by outline: poor gives 0, fair gives 4, good gives 8, excellent gives 10
points kiwa by kiwa: blurred gives 0, fair gives 5, sharp gives 9, razor gives 10
grade keep if score at least 60
grade sell otherwise
"""


@pytest.fixture(scope="module")
def standard():
    return koirules.read_standard(RULES)


@pytest.fixture
def opened(tmp_path):
    with Book.start(tmp_path / "farm.book") as made:
        yield made


def written(folder, name, text):
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return path


FIRST = (
    "fish,pond,spawning,sorter,outline,kiwa,spine\n"
    "A1,north,12 May,Mika,good,sharp,straight\n"
    "A2,north,12 May,Mika,poor,fair,bent\n"
)


def entered(book, standard, path, day=date(2024, 10, 5), names=None):
    return add_looks(book, standard, standard.read_records(path), path, day, names)


def test_a_file_entered_twice_is_there_once(opened, standard, tmp_path):
    path = written(tmp_path, "a.csv", FIRST)
    assert entered(opened, standard, path).looks == 2
    again = entered(opened, standard, path)
    assert (again.looks, again.known, again.fish) == (0, 2, 0)
    assert opened.db.execute("SELECT count(*) FROM grades").fetchone() == (2,)


def test_a_look_that_says_something_else_corrects_and_keeps_what_stood_there(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST))
    added = entered(opened, standard, written(tmp_path, "b.csv", FIRST.replace("good,sharp", "good,razor")))
    assert (added.looks, added.known, added.corrected) == (0, 1, 1)
    (look,) = opened.looks(opened.one_named("A1").id)
    assert look.record["kiwa"] == "razor"
    assert opened.db.execute("SELECT trait, before, after FROM corrections").fetchall() == [("kiwa", "sharp", "razor")]
    assert entered(opened, standard, written(tmp_path, "c.csv", FIRST)).looks == 0


def test_a_name_that_two_ponds_use_is_asked_about(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST))
    other = written(tmp_path, "b.csv", FIRST.replace("north", "south").replace("A2", "B2"))
    with pytest.raises(BookError) as caught:
        entered(opened, standard, other)
    assert [problem.code for problem in caught.value.problems] == ["name-of-two-ponds"]
    assert opened.db.execute("SELECT count(*) FROM looks").fetchone() == (2,)
    later = date(2025, 10, 5)
    entered(opened, standard, other, later, Names(other=frozenset({"A1"})))
    assert len(opened.named("A1")) == 2
    with pytest.raises(BookError, match="which-fish"):
        opened.one_named("A1")
    assert opened.one_named("A1", "south").pond == "south"


def test_a_fish_that_was_moved_stays_one_fish(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST))
    entered(
        opened,
        standard,
        written(tmp_path, "b.csv", FIRST.replace("north", "south")),
        date(2025, 10, 5),
        Names(same=frozenset({"A1", "A2"})),
    )
    assert len(opened.looks(opened.one_named("A1").id)) == 2


def test_grades_can_be_derived_again_from_the_book_alone(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST))
    ((_, seal, _, text),) = opened.standard_texts()
    again = koirules.read_standard(text)
    assert again.seal == seal
    for look in opened.all_looks():
        possible, low = opened.db.execute(
            "SELECT possible, score_low FROM grades WHERE look = ?", (look.id,)
        ).fetchone()
        result = again.grade({name: value for name, value in look.record.items() if name in again.traits})
        assert (list(result.possible), int(result.score_low * 100)) == (json.loads(possible), low)


def test_events_are_noted_once_and_buyers_only_on_request(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST))
    sales = written(tmp_path, "s.csv", "fish,day,price,to,buyer\nA1,2026-11-02,450,hobby,Somebody\n")
    assert add_events(opened, "sold", sales) == 1
    assert add_events(opened, "sold", sales) == 0
    (event,) = opened.events(opened.one_named("A1").id)
    assert (event.amount, event.what, event.who) == (450.0, "hobby", "")
    assert (
        add_events(opened, "sold", written(tmp_path, "t.csv", "fish,price,buyer\nA2,90,Somebody\n"), people=True) == 1
    )
    assert opened.forget_person("Somebody") == 1
    opened.db.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    assert b"Somebody" not in Path(opened.file).read_bytes()


def test_every_problem_of_a_table_of_events_is_told_and_nothing_is_kept(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST))
    table = written(tmp_path, "s.csv", 'fish,day,price\nA1,2.11.26,450\nX9,,1\nA2,,"4,50"\n')
    with pytest.raises(BookError) as caught:
        add_events(opened, "sold", table)
    told = [(problem.code, problem.site.row) for problem in caught.value.problems]
    assert told == [("event-cell", 2), ("event-of-nobody", 3), ("event-cell", 4)]
    assert not list(opened.all_events())


def test_a_fish_is_removed_for_good(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST.replace("A1", "Kestrel")))
    opened.forget_fish(opened.one_named("Kestrel").id)
    assert opened.damage() == ()
    assert not opened.named("Kestrel")
    assert b"Kestrel" not in Path(opened.file).read_bytes()


@pytest.mark.parametrize("version", range(1, VERSION))
def test_books_of_every_earlier_version_become_books_of_today(version, tmp_path, standard):
    path = tmp_path / "old.book"
    db = sqlite3.connect(path)
    for statements in MIGRATIONS[:version]:
        db.executescript(statements)
    db.execute(f"PRAGMA user_version = {version}")
    db.execute(f"PRAGMA application_id = {APPLICATION}")
    db.execute("INSERT INTO fish (name, pond) VALUES ('A1', 'north')")
    db.execute("INSERT INTO looks (fish, day, record, hash) VALUES (1, '2020-10-01', '{\"outline\":\"good\"}', 'x')")
    db.commit()
    db.close()
    with Book.open(path) as now, Book.start(tmp_path / "new.book") as new:
        tables = [
            sorted(row) for row in (one.db.execute("SELECT name FROM sqlite_schema").fetchall() for one in (now, new))
        ]
        assert tables[0] == tables[1]
        assert now.looks(1)[0].record == {"outline": "good"}
        entered(now, standard, written(tmp_path, "a.csv", FIRST))
        now.correct(1, "outline", "fair", "looked again")
        assert now.damage() == ()


@pytest.mark.parametrize("content", [b"", b"fish,pond\n", b"SQLite format 3\x00" + bytes(50)])
def test_what_is_no_book_is_told(tmp_path, content):
    path = tmp_path / "x.book"
    path.write_bytes(content)
    if not content:
        Book.open(path).close()  # an empty file is an empty book
        return
    with pytest.raises(BookError, match="not-a-book"):
        Book.open(path)


def test_another_programs_database_and_a_later_book_are_refused(tmp_path):
    other = sqlite3.connect(tmp_path / "other.db")
    other.execute("CREATE TABLE notes (text)")
    other.commit()
    with pytest.raises(BookError, match="another program"):
        Book.open(tmp_path / "other.db")
    later = Book.start(tmp_path / "later.book")
    later.db.execute(f"PRAGMA user_version = {VERSION + 1}")
    later.close()
    with pytest.raises(BookError, match="later-book"):
        Book.open(tmp_path / "later.book")


def test_pages_show_what_the_book_has_and_escape_it(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST.replace("A1", "<b>A1</b>")))
    history = fish_history(opened, opened.one_named("<b>A1</b>"), [standard])
    page = fish_page(history)
    assert "<b>A1" not in page
    assert "&lt;b&gt;A1" in page
    assert "sharp" in page
    year = year_history(opened, 2024)
    assert year.fish == 2
    assert {row.name: row.fish for row in year.by_grade} == {"keep": 1, "sell": 1}
    assert "12 May" in year_page(year)
    assert "album" in album_page([(history.fish, history.looks[0].look)], {})


def test_an_export_leaves_people_and_notes_out(opened, standard, tmp_path):
    entered(
        opened,
        standard,
        written(
            tmp_path,
            "a.csv",
            FIRST.replace("spine\n", "spine,note\n")
            .replace("straight\n", "straight,=secret()\n")
            .replace("bent\n", "bent,\n"),
        ),
    )
    export(opened, tmp_path / "out")
    told = "".join(path.read_text() for path in (tmp_path / "out").iterdir())
    assert "secret" not in told
    assert "Mika" not in told
    export(opened, tmp_path / "all", people=True, notes=True)
    assert "Mika" in (tmp_path / "all" / "looks.csv").read_text()


def test_what_can_be_read_of_a_damaged_book_is_saved(tmp_path, standard):
    path = tmp_path / "farm.book"
    rows = "".join(f"F{at},north,12 May,Mika,good,sharp,straight\n" for at in range(3000))
    with Book.start(path) as made:
        entered(made, standard, written(tmp_path, "many.csv", FIRST.split("\n", maxsplit=1)[0] + "\n" + rows))
        made.db.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    data = bytearray(path.read_bytes())
    middle = len(data) // 2 // 4096 * 4096
    data[middle : middle + 4096] = os.urandom(4096)
    path.write_bytes(data)
    counts = rescue(path, tmp_path / "saved")
    assert counts["fish"] + counts["looks"] > 3000
    with pytest.raises(BookError):
        rescue(tmp_path / "many.csv", tmp_path / "nothing")
    assert not (tmp_path / "nothing").exists()


def test_two_processes_enter_into_one_book(tmp_path):
    path = tmp_path / "farm.book"
    Book.start(path).close()
    rules = written(tmp_path, "rules.koi", RULES)
    started = []
    for number in range(2):
        rows = "".join(f"P{number}-{at},north,12 May,Mika,good,sharp,straight\n" for at in range(500))
        file = written(tmp_path, f"{number}.csv", FIRST.split("\n", maxsplit=1)[0] + "\n" + rows)
        started.append(
            subprocess.Popen(
                [sys.executable, "-m", "koirules", "book", "enter", rules, path, file, "--day", "2024-10-05"]
            )
        )
    assert [one.wait(60) for one in started] == [0, 0]
    with Book.open(path) as made:
        assert made.db.execute("SELECT count(*) FROM looks").fetchone() == (1000,)


def test_a_kill_while_adding_leaves_all_or_nothing(tmp_path):
    # A twentieth of tests/benchmarks/book/kills.py.
    path = tmp_path / "farm.book"
    Book.start(path).close()
    rules = written(tmp_path, "rules.koi", RULES)
    files = []
    for number in range(10):
        rows = "".join(f"K{number}-{at},north,12 May,Mika,good,sharp,straight\n" for at in range(400))
        files.append(written(tmp_path, f"{number}.csv", FIRST.split("\n", maxsplit=1)[0] + "\n" + rows))
        one = subprocess.Popen(
            [sys.executable, "-m", "koirules", "book", "enter", rules, path, files[-1], "--day", "2024-10-05"]
        )
        log = path.with_name("farm.book-wal")
        while one.poll() is None and not (log.exists() and log.stat().st_size):
            time.sleep(0.005)  # it writes
        time.sleep(0.02 * number)
        one.send_signal(signal.SIGKILL)
        one.wait()
        with Book.open(path) as made:
            assert made.damage() == ()
            looks = made.db.execute("SELECT count(*) FROM looks").fetchone()[0]
            assert looks % 400 == 0
            assert made.db.execute("SELECT count(*) FROM grades").fetchone()[0] == looks
    standard = koirules.load_standard(rules)
    with Book.open(path) as made:
        for file in files:
            entered(made, standard, file)
        assert made.db.execute("SELECT count(*) FROM looks").fetchone() == (4000,)


def test_the_commands_from_start_to_a_page(tmp_path):
    rules = written(tmp_path, "rules.koi", RULES)
    records = written(tmp_path, "a.csv", FIRST)
    run = CliRunner()
    farm, page = str(tmp_path / "farm.book"), tmp_path / "a1.html"
    for words in (
        ["start", farm],
        ["enter", str(rules), farm, str(records), "--day", "2024-10-05"],
        ["correct", farm, "A1", "kiwa", "razor", "--because", "looked again"],
        ["regrade", str(rules), farm],
        ["fish", farm, "A1", "--rules", str(rules), "--out", str(page)],
        ["year", farm, "2024"],
        ["list", farm],
        ["test", farm],
        ["sorters", farm],
    ):
        done = run.invoke(command, words)
        assert done.exit_code == 0, (words, done.output)
    assert "razor" in page.read_text()
    refused = run.invoke(command, ["fish", farm, "A11"])
    assert refused.exit_code == 2
    assert 'Did you mean "A' in refused.output
    assert run.invoke(command, ["start", farm]).exit_code == 2
    assert run.invoke(command, ["fish", farm, "A1", "--out", str(page)]).exit_code == 2
    answered = run.invoke(command, ["train", str(rules), farm, "--sorter", "Mika", "--fish", "2"], input="keep\nkeep\n")
    assert answered.exit_code == 0, answered.output
    assert "1 of 2 alike" in answered.output


def test_a_book_is_a_file_of_records(opened, standard, tmp_path):
    entered(opened, standard, written(tmp_path, "a.csv", FIRST))
    entered(opened, standard, written(tmp_path, "b.csv", FIRST.replace("good", "poor")), date(2025, 10, 5))
    records = standard.read_records(opened.file)
    assert [(record.fish, record.date.year) for record in records] == [
        ("A1", 2024),
        ("A1", 2025),
        ("A2", 2024),
        ("A2", 2025),
    ]
    rules = written(tmp_path, "rules.koi", RULES)
    told = subprocess.run(
        [sys.executable, "-m", "koirules", "grade", rules, opened.file], capture_output=True, text=True, check=False
    )
    assert told.returncode == 0, told.stderr
    assert "A1" in told.stdout


def test_growth_is_fitted_from_a_book(opened, tmp_path):
    standard = koirules.read_standard('standard "lengths" edition 1 variety kohaku\ngrade all otherwise')
    for year, cm in ((2024, 14), (2025, 30), (2026, 45)):
        rows = "".join(f"G{at},{cm + at % 3} cm,{round(0.012 * (cm + at % 3) ** 3.1, 2)} g\n" for at in range(12))
        path = written(tmp_path, f"{year}.csv", f"fish,length,weight\n{rows}")
        entered(opened, standard, path, date(year, 10, 1))
    rules = written(tmp_path, "rules.koi", standard.whole_text)
    told = subprocess.run(
        [sys.executable, "-m", "koirules", "growth", rules, opened.file], capture_output=True, text=True, check=False
    )
    assert told.returncode == 0, told.stdout + told.stderr
    assert "3.1" in told.stdout


def test_the_album_draws_what_was_mapped_and_nothing_else(opened, tmp_path):
    standard = koirules.read_standard('standard "maps" edition 1 variety kohaku\ngrade all otherwise')
    path = written(tmp_path, "m.csv", "fish,length,hi_patches\nA,14 cm,10 to 30 both 60\nB,14 cm,\n")
    entered(opened, standard, path)
    run = CliRunner().invoke(
        command, ["album", opened.file, "--rules", "tosai_kohaku", "--out", str(tmp_path / "a.html")]
    )
    assert run.exit_code == 0, run.output
    page = (tmp_path / "a.html").read_text()
    assert page.count("<svg") == 1
    assert page.count("No picture and no map") == 1
    assert "grown" not in page


def test_what_was_foreseen_stands_beside_what_came(opened, tmp_path):
    standard = koirules.load_standard("tosai_kohaku")
    map_then = "10 to 30 both 60; 40 to 60 both 50"
    entered(opened, standard, written(tmp_path, "a.csv", f"fish,length,hi_patches,hi_cover\nA,14 cm,{map_then},45 %\n"))
    later = written(tmp_path, "b.csv", "fish,length,hi_cover,steps\nA,60 cm,38 %,nidan\n")
    entered(opened, standard, later, date(2027, 10, 1))
    (cover,) = fish_history(opened, opened.one_named("A"), [standard]).foreseen
    assert (cover.trait, cover.came) == ("hi_cover", "38 %")
    assert 20 < float(cover.foreseen.split()[0]) < 45


def test_records_of_judges_are_refused():
    with pytest.raises(BookError, match="one-recorder"):
        stop_at_judges("judged.csv", [Record("A", 2, {}), Record("A", 3, {}, judge="judge A")])
