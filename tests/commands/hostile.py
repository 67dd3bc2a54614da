"""Commands with drawn words and broken files: what nobody would type, and what slips in all the same.

Each trial makes a folder of rule files, records and other tables, broken in ways that a word processor, a spreadsheet, a
careless hand or somebody hostile would break them, and runs one command over it with drawn options and drawn lines at the
keyboard.
"""

from __future__ import annotations

import json
import random
from contextlib import chdir
from pathlib import Path
from time import process_time

import click
from attrs import frozen
from click.testing import CliRunner

from koirules.commands import COMMANDS, main

ROOT = Path(__file__).parents[2]
RULES = tuple(
    path.read_text(encoding="utf-8", errors="replace")
    for path in (
        *sorted((ROOT / "tests/cases/problems").glob("*.koi")),
        *sorted((ROOT / "rulesets").glob("*/standard.koi")),
    )
)
SMALL = """standard "Tin Bucket (an invented house)" edition 1
trait spine as scale bent < slight < straight
trait length as number in cm from 0 to 90
trait cover as number in % from 0 to 100
trait marks as places of (tail, dorsal, head)
trait specks as count up to 20
trait lips as yes or no
trait pond as label
setting line = 50 from 10 to 90
section body worth 100
points long by length: 5 cm gives 0, 20 cm gives 10
points straight by spine: bent gives 0, slight gives 4, straight gives 10
fault bent if spine is bent: no better than cull
grade keep if score at least line
grade hold if score at least batch median of score
grade cull otherwise
alert bent "many are bent" if batch share of (spine is bent) above 30 %
round house pick 2 by highest score no more than 1 of the same pond send to "pond 1" again in 2 weeks
sample "good" with length 20 cm, spine straight scores from 0 to 100
"""
CELLS = (
    "", " ", "0", "-1", "14", "14 cm", "1,450", "1.45", "ca. 14", "12-16", "16-12", "> 3", "1e400", "nan", "inf", "9" * 400, "½",
    "straight", "bent or slight", "strait", "yes", "x", "?", "-", "#REF!", "=1+1", "=cmd|' /C calc'!A0", "tail dorsal", "none",
    "2026-11-30", "30.11.2026", "\u202eabc", "\x00", "\x1b[31m", "\ufeff", "鯉", "a" * 5000, '"', "'", "{length}", "<script>",
    "8 to 26 left 60 right 55", "pond 1", "45 %", "0.45", "12 kg", "\ud800",
)  # fmt: skip
"""Cells of a table, some as they should be."""
WORDS = (
    "", "-", "--", "x", "1", "-1", "0", "1e9", "nan", "kohaku", "showa", "tosai_kohaku", "no-such-code",
    "unknown-trait", "length", "line=60", "line", "=", "line=", "line=abc", "line=1e400", "ja", "de", "xx", "pond", "a",
    "b", "fish", "dask:", "../up", "a/b", "a" * 300, "\x00", "\x1b[2J", "\udcff", "鯉", "*", "[", "~", "%s", "{}", "A4",
    "csv", ".csv", "grade", "spine", "show",
)  # fmt: skip
"""Words that options and arguments are given."""
NAMES = (
    "a.koi",
    "b.koi",
    "lot.csv",
    "lot.xlsx",
    "lot.json",
    "lot.jsonl",
    "notes.txt",
    "table.csv",
    "folder",
    "missing.csv",
)
OUT_OF = {"print": "out.html", "sheet": "out.html", "handbook": "out.html", "ask": "out.csv", "note": "out.csv"}
"""The one kind of file that a command writes."""
OUTS = (
    "out.csv",
    "out.json",
    "out.html",
    "out.xlsx",
    "out.parquet",
    "out.svg",
    "out.png",
    "out",
    "folder",
    "nowhere/out.csv",
)
LEFT_OUT = {"on"}
"""A cluster is no part of one process."""

MOST_SECONDS = 45.0
"""Of processor time, for one command over small files on a slow machine."""


@frozen
class Trial:
    """What was run, how it ended, what it printed, and how many seconds of processor time it took."""

    words: tuple[str, ...]
    status: int
    printed: str
    error: str
    seconds: float

    @property
    def wrong(self) -> str:
        """What is wrong with how it ended, in words; "" where nothing is."""
        if self.error:
            return f"ended in {self.error}"
        if self.status not in {0, 1, 2}:
            return f"ended with status {self.status}"
        if "Traceback (most recent call last)" in self.printed:
            return "printed a traceback"
        return f"took {self.seconds:.0f} s" if self.seconds > MOST_SECONDS else ""


def trial(number: int, folder: Path) -> Trial:
    """One run of one command; the same number gives the same run."""
    draw = random.Random(number)
    name = [*COMMANDS][number % len(COMMANDS)]
    with chdir(folder):
        _lay_out(draw)
        words = (name, *_words(draw, name))
        typed = "\n".join(
            draw.choice((*CELLS, *WORDS, "q", "u", "1", "2", "0", "y", "n")) for _ in range(draw.randrange(30))
        )
        began = process_time()
        done = CliRunner().invoke(main, words, input=typed.encode("utf-8", "replace") + b"\n")
        seconds = process_time() - began
    fault = done.exception
    error = "" if fault is None or isinstance(fault, SystemExit) else f"{type(fault).__name__}: {fault}"
    return Trial(words, done.exit_code, done.output, error, seconds)


def _words(draw: random.Random, name: str) -> list[str]:
    """The words after the name of a command: its arguments and some of its options."""
    command = main.get_command(click.Context(main), name)
    assert command is not None
    given: list[str] = ["--seconds", "1"] if name == "prove" else []
    for option in command.params:
        if isinstance(option, click.Argument):
            count = (
                1
                if option.required and option.nargs == 1
                else draw.choice((1, 1, 1, 1, 2, 0) if option.nargs == -1 else (0, 0, 1))
            )
            given += [_value(draw, option, name) for _ in range(count)]
        elif (
            draw.random()
            < (0.95 if option.required or option.name == "out" else 0.4 if "broken" in str(option.name) else 0.08)
            and option.name not in LEFT_OUT
        ):
            given += (
                [option.opts[-1]]
                if getattr(option, "is_flag", False)
                else [option.opts[-1], _value(draw, option, name)]
            )
    return given


def _value(draw: random.Random, option: click.Parameter, name: str) -> str:
    """A word for an option or argument of a command: mostly of the kind that it takes."""
    drawn = draw.random()
    if drawn < 0.05:
        return draw.choice(WORDS)
    if isinstance(option.type, click.Choice) and drawn < 0.9:
        return str(draw.choice(list(option.type.choices)))
    if isinstance(option.type, click.types.IntParamType | click.types.FloatParamType):
        return draw.choice(("1", "3", "0", "-1", "1000000", "x"))
    if option.name in {"mark", "by", "label"}:
        return draw.choice(("pond", "spine", "table.csv", *WORDS))
    if name == "new" and option.name == "rules" and drawn < 0.8:
        return "new.koi"
    if name == "explain" and drawn < 0.6:
        return draw.choice(("unused", "no-such-file", "value-misread"))
    if option.name in {"rules", "old", "new"}:
        return draw.choice(("a.koi", "a.koi", "a.koi", "a.koi", "a.koi", "b.koi", "tosai_kohaku"))
    if option.name in {"out", "outs", "plot", "plots", "drawing", "certificates", "into"}:
        own = (OUT_OF[name],) if name in OUT_OF else OUTS[:4]
        return draw.choice(own if drawn < 0.8 else OUTS)
    if option.name == "variety":
        return draw.choice(("kohaku", "kohaku", "kohakuu", "a.koi"))
    if option.name in {"records", "files", "notes", "table", "decisions", "votes", "occasion", "classes", "serious"}:
        likely = {
            "notes": "notes.txt",
            "table": "young_koi",
            "classes": "young_koi",
            "occasion": "table.csv",
            "decisions": "table.csv",
        }
        return likely.get(option.name, "lot.csv") if drawn < 0.75 else draw.choice(NAMES)
    if option.name == "fish":
        return draw.choice(("A0", "A0", "A1", "nobody"))
    if option.name == "changes":
        return draw.choice(("line=60", "line=1", "line"))
    return draw.choice((*WORDS, *NAMES))


def _lay_out(draw: random.Random) -> None:
    """The files of a trial: all of them whole, or some of them broken."""
    often = draw.choice((0.0, 0.0, 0.2, 0.2, 0.8))
    whole = draw.random() < 0.5

    def write(name: str, text: str) -> None:
        slips = draw.choice((1, 1, 2, 5)) if draw.random() < often else 0
        Path(name).write_bytes(_broken(draw, text, slips))

    write("a.koi", SMALL)
    write("b.koi", draw.choice((SMALL.replace("at least line", "at least 55"), *RULES)))
    table = _table(draw, whole=whole)
    write("lot.csv", table)
    of_others = (
        "class,above,up to\nsmall,0,15\nlarge,15,\n",
        "fish,grade,by,reason\nA1,keep,me,so\n",
        "prize,for,places\nbest,all,1\n",
    )
    write("table.csv", draw.choice((table, *of_others)))
    write("lot.jsonl", "".join(f"{json.dumps(_object(draw))}\n" for _ in range(4)))
    write("lot.json", json.dumps([_object(draw) for _ in range(3)]))
    write("lot.xlsx", "PK\x03\x04 no workbook")
    write("notes.txt", "1. spine straight, 14 cm\n2: bent\n\n3 " + draw.choice(CELLS) + "\n")
    Path("folder").mkdir()
    write("folder/c.koi", SMALL)
    write("folder/d.csv", table)


def _object(draw: random.Random) -> dict[str, object]:
    values: tuple[object, ...] = (*CELLS, 14, 14.5, True, None, [], {}, ["tail"], {"low": 1, "high": 2}, 1e308, -0.0)
    names = ("fish", "spine", "length", "cover", "marks", "specks", "lips", "pond", "variety", "stage", "")
    return {draw.choice(names): draw.choice(values) for _ in range(draw.randrange(8))}


def _table(draw: random.Random, *, whole: bool) -> str:
    of_traits, others = (
        ["spine", "length (cm)", "cover", "marks", "specks", "lips", "pond"],
        ["variety", "date", "notes", "cull"],
    )
    headings = ["fish", *draw.sample(of_traits, 4), *(() if whole else draw.sample(others, 1))]
    good = {
        "spine": "straight",
        "length (cm)": "14",
        "cover": "45 %",
        "marks": "tail",
        "specks": "2",
        "lips": "yes",
        "pond": "1",
    }
    odd = 0.0 if whole else draw.choice((0.03, 0.1, 0.8))
    rows = [",".join(headings)]
    for number in range(draw.choice((0, 1, 3, 12))):
        cells = [draw.choice(CELLS) if draw.random() < odd else good.get(one, "") for one in headings[1:]]
        rows.append(",".join([f"A{number}", *cells]))
    return "\n".join(rows) + "\n"


def _broken(draw: random.Random, text: str, slips: int) -> bytes:
    """A text with some slips in it, in one encoding or another."""
    if not slips:
        return text.encode("utf-8", "replace")
    for _ in range(slips):
        lines = text.split("\n")
        at = draw.randrange(len(lines))
        match draw.randrange(8):
            case 0:
                del lines[at]
            case 1:
                lines.insert(at, lines[draw.randrange(len(lines))] if lines else "")
            case 2:
                lines[at] = " ".join(draw.sample(words := lines[at].split(), len(words)))
            case 3:
                cut = draw.randrange(len(lines[at]) + 1)
                lines[at] = lines[at][:cut] + draw.choice(CELLS) + lines[at][cut:]
            case 4:
                lines[at] = lines[at] * draw.choice((2, 50))
            case 5:
                lines = lines[: at + 1]
            case 6:
                lines[at] = draw.choice(("\t", "  ", "# ", "(", ")")) + lines[at]
            case _:
                words = lines[at].split(" ")
                words[draw.randrange(len(words))] = draw.choice(WORDS)
                lines[at] = " ".join(words)
        text = "\n".join(lines)
    encoding = draw.choice(("utf-8", "utf-8", "utf-8", "utf-8-sig", "utf-16", "cp1252", "shift_jis"))
    made = text.encode(encoding, "replace")
    return made[: draw.randrange(len(made) + 1)] if draw.random() < 0.05 else made


def tried(numbers: range, into: Path, *, every: bool = False) -> list[tuple[int, Trial]]:
    """The trials of these numbers that ended badly, or every one, each in a new folder."""
    found = []
    for number in numbers:
        folder = into / str(number)
        folder.mkdir()
        done = trial(number, folder)
        if every or done.wrong:
            found.append((number, done))
        for path in sorted(folder.rglob("*"), reverse=True):
            path.rmdir() if path.is_dir() else path.unlink()
        folder.rmdir()
    return found
