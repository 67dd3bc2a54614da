"""The seal: one digest for what a standard says, however it looks, and the same from a second program."""

import re
from hashlib import sha256
from pathlib import Path

import pytest

import koirules
from koirules.testing import registry_with

BOX = registry_with()
ROOT = Path(__file__).parents[2]
SPECIFICATION = (ROOT / "examples" / "guide" / "reference" / "seal.md").read_text(encoding="utf-8")
PAGE = """standard "Thornwick Open (invented)" edition 2026-1 variety kohaku stage tosai
setting line = 75 from 70 to 90
trait bridge "bridge" as scale none < thin < broad
term long means length at least 10 cm
section body worth 100
points stem weight 2 by tail_stem: thin gives 0, fair gives 6, strong gives 10
bonus lips 2.50 if kuchibeni
fault bent "bent spine" if spine is bent or bridge is thin: no better than cull say "spine {spine}, {shimi_size}"
lift good if section body at least 90: no worse than keep
grade keep if score at least line and long
grade cull otherwise
"""


def standard(text):
    return koirules.read_standard(text, registry=BOX)


def block(kind):
    return re.search(rf"```{kind}\n(.*?)```", SPECIFICATION, re.DOTALL)[1]


def test_the_vector_of_the_specification_holds_byte_for_byte():
    made = standard(block("koi"))
    assert made.canonical_text == block("canonical")
    assert made.seal == block("seal").strip()
    assert made.seal == f"1-{sha256(block('canonical').encode()).hexdigest()}"


LOOKS = [
    ("setting line", "# a remark\n\n\nsetting  line"),
    ("2.50", "2.5"),
    ("stage tosai", 'note "for people" stage tosai'),
    ("spine is bent or bridge is thin", "((spine is bent)\n  or (bridge is thin))"),
    ("grade cull otherwise", 'grade cull otherwise\nsample "s" with spine bent comes out cull'),
    ("edition 2026-1 variety kohaku", "variety kohaku edition 2026-1"),
    ("fault bent", "fault   bent"),
]
MEANINGS = [
    ("75 from", "76 from"),
    ("from 70", "from 71"),
    ("2026-1", "2026-2"),
    ("variety kohaku stage", "variety kohaku valid from 2026-01-01 stage"),
    ("tosai", "nisai"),
    ('"bent spine"', '"bent  spine"'),
    ("{spine}, {shimi_size}", "{spine}; {shimi_size}"),
    ("weight 2 ", ""),
    ("broad", "wide"),
    ('"bridge" as scale', '"bridge" ja "緋" as scale'),
    ("at least 10 cm", "at least 100 mm"),
    ("kuchibeni\n", "kuchibeni is yes\n"),
    ("lift good", "lift fine"),
]


@pytest.mark.parametrize(("was", "now"), LOOKS)
def test_looks_do_not_count(was, now):
    assert was in PAGE
    assert standard(PAGE.replace(was, now, 1)).seal == standard(PAGE).seal


@pytest.mark.parametrize(("was", "now"), MEANINGS)
def test_whatever_is_said_counts(was, now):
    assert was in PAGE
    assert standard(PAGE.replace(was, now, 1)).seal != standard(PAGE).seal


def test_the_order_of_kinds_does_not_count_and_that_of_their_statements_does():
    lines = PAGE.splitlines()
    head, setting, trait, term, *rest = lines
    assert standard("\n".join([head, term, trait, setting, *rest])).seal == standard(PAGE).seal
    more = PAGE.replace("term long", "term short means length below 5 cm\nterm long")
    moved = PAGE.replace("section body worth", "term short means length below 5 cm\nsection body worth")
    assert standard(more).seal != standard(moved).seal


def test_traits_are_listed_that_are_read_and_no_others():
    read = re.findall(r"^reads (\w+) as (.*)$", standard(PAGE).canonical_text, re.MULTILINE)
    assert [name for name, _ in read] == ["kuchibeni", "length", "shimi_size", "spine", "tail_stem"]
    assert dict(read)["spine"] == "scale bent < slight < straight"
    nothing = standard('standard "x" edition 1 variety kohaku\ngrade a otherwise')
    assert (
        nothing.canonical_text
        == 'koirules canonical form 1\nstandard "x" edition 1 variety kohaku\ngrade a otherwise\n'
    )


def test_alerts_and_rounds_count_and_what_they_read_is_listed():
    batch = (
        PAGE
        + """fault slim if length below batch percentile 10.0 of length among the same (pond, spawning): no better than cull
alert many "many" if batch share of (fault bent) above 33 %
round first
  pick 3 by highest score, then those with (head_hi is large)
  no more than 2 of the same bloodline
  ties all in
"""
    )
    text = standard(batch).canonical_text
    assert "below batch percentile 10 of length among the same (pond, spawning): no" in text
    assert (
        'alert many "many" if batch share of (fault bent) above 33 %\n'
        "round first pick 3 by highest score, then those with head_hi is large no more than 2 of the same bloodline "
        "ties all in\n"
    ) in text
    read = re.findall(r"^reads (\w+)", text, re.MULTILINE)
    assert {"pond", "spawning", "bloodline", "head_hi"} <= set(read)
    assert standard(batch.replace("pick 3", "pick 4")).seal != standard(batch).seal


def test_a_changed_setting_of_a_run_is_no_change_of_the_standard():
    assert standard(PAGE).with_settings({"line": "80"}).seal == standard(PAGE).seal


# ---- A second program, written from the specification, for pages whose brackets are needed as they are ---------------

HEADS = ("standard", "setting", "trait", "term", "section", "fault", "lift", "grade", "alert", "round")
KINDS = {
    "length": "number in cm from 0.5 to 125",
    "spine": "scale bent < slight < straight",
    "tail_stem": "scale thin < fair < strong",
    "kuchibeni": "yes or no",
    "shimi_size": "number in mm from 0 to 30",
}
WORD = re.compile(r'"[^"]*"|[0-9]*\.?[0-9]+(?![\w.-])|[\w][\w.\-]*|[^\s\w]')


def without_remark(line):
    return re.sub(r'("[^"]*")|#.*', lambda found: found[1] or "", line)


def number(word):
    whole, _, part = word.partition(".")
    part = part.rstrip("0")
    return (whole.lstrip("0") or "0") + (f".{part}" if part else "")


def spaced(words):
    line = ""
    for word in words:
        tight = not line or line.endswith("(") or word in {")", ",", ":"}
        line += word if tight else f" {word}"
    return line


def second_seal(text):
    statements = []
    for line in map(without_remark, text.splitlines()):
        if line.strip():
            if line[0] == " ":
                statements[-1] += line
            else:
                statements.append(line)
    groups = {head: [] for head in HEADS}
    names = set()
    for statement in statements:
        words = WORD.findall(statement)
        head = words[0]
        if head == "sample":
            continue
        labels = {i + 1 for i, word in enumerate(words) if word == "edition"}
        words = [number(w) if w[0] in ".0123456789" and i not in labels else w for i, w in enumerate(words)]
        if head == "standard":
            parts = {word: words[i + 1] for i, word in enumerate(words) if word in {"edition", "variety", "stage"}}
            words = [
                *words[:2],
                *(w for key in ("edition", "variety", "stage") if key in parts for w in (key, parts[key])),
            ]
        names |= {word for word in words[2:] if word in KINDS} if head != "standard" else set()
        names |= {name for name in re.findall(r"\{(\w+)\}", statement) if name in KINDS}
        groups[head if head in groups else "section"].append(spaced(words))
    lines = ["koirules canonical form 1"]
    for head in HEADS:
        lines += groups[head]
    lines += [f"reads {name} as {KINDS[name]}" for name in sorted(names)]
    canonical = "".join(line + "\n" for line in lines)
    return canonical, "1-" + sha256(canonical.encode("utf-8")).hexdigest()


@pytest.mark.parametrize("text", [PAGE, *(PAGE.replace(*change, 1) for change in LOOKS if "((" not in change[1])])
def test_a_second_program_comes_to_the_same_seal(text):
    made = standard(text)
    assert second_seal(text) == (made.canonical_text, made.seal)


@pytest.mark.parametrize(
    "line",
    [
        "term middle means median of (length, width, 3 cm)",
        "alert wide if batch median of (median of (length, width)) above 3 cm",
        "round first pick 10 % by highest score",
        "fault late if length below 5 cm: lowers by 1 grade",
        "round first pick 3 for each spawning by highest score",
        "silence means hi_on_eyes is 1 of them",
        'alert few "few" if batch share of (class_size is "35") below 5 %',
    ],
)
def test_what_came_into_the_language_later_has_the_third_form_and_leaves_other_seals_as_they_are(line):
    more = standard(f"{PAGE}{line}\n")
    assert more.seal.startswith("3-")
    assert more.canonical_text.startswith("koirules canonical form 3\n")
    assert standard(PAGE).seal.startswith("1-")
    assert standard(more.canonical_text.split("reads ")[0].split("\n", 1)[1]).seal == more.seal
