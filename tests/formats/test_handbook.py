"""The page of a standard: whole, well-formed, escaped, and true to the evaluator."""

from __future__ import annotations

import re
import subprocess
import sys
from decimal import Decimal
from itertools import pairwise
from pathlib import Path

import html5lib
import pytest
from attrs import evolve
from markdown_it import MarkdownIt

from koirules import load_standard, read_standard
from koirules.grading.sample_runs import run_samples
from koirules.meaning.curves import Curve
from koirules.report.handbook import Subject, blocks_of, check_handbook_path, write_handbook
from koirules.report.handbook.as_html import html_of
from koirules.report.handbook.as_markdown import markdown_of
from koirules.standard.reading_nodes import trait_of, unit_shown
from koirules.vocabulary.kinds import Number
from tests.rulesets import shipped

ROOT = Path(__file__).parents[2]
RULE_FILES = sorted([*ROOT.glob("rulesets/*/*.koi"), *ROOT.glob("examples/**/*.koi")])
ROUNDS = """standard "Tin Bucket, rounds (invented)" edition 1 variety kohaku valid from 2026-09-01 until 2026-11-30
setting places = 3 from 1 to 9 "places in the house"
term fit "fit to travel" means spine is straight and health is well
section body "body" worth 100
points stem "tail stem" by tail_stem: thin gives 0, fair gives 6, strong gives 10
grade first_class "first class" if score at least 75
grade rest "the rest" otherwise
alert many "many are thin" if batch share of (tail_stem is thin) above 33 %
round sound "sound fish" keep those possibly with fit and grade is first_class
round house "the house"
  from all
  pick places by those with fit, then highest score, then lowest shimi_count
  no more than 2 with batch standing of score among those kept by sound below 50 %
  ties by first recorded
  send to "heated <house>" again in 8 weeks
  rescues 1
round left "left over" from those passed over by house
  pick all by lowest length
  ties all in
round late "late look" from those kept by house
  pick 1 by highest length
"""


def subject(standard):
    return Subject(standard.grader, run_samples(standard.grader), standard.seal, ("Handle fish <gently>.",))


def html(standard):
    return html_of(blocks_of(subject(standard)), standard.tongue)


def markdown(standard):
    return markdown_of(blocks_of(subject(standard)), standard.tongue)


def parsed(text):
    """The tree of a page, which must be without a single mistake."""
    return html5lib.HTMLParser(strict=True, namespaceHTMLElements=False).parse(text)


def text_of(node):
    return " ".join("".join(node.itertext()).split())


def tokens(text):
    return MarkdownIt("commonmark").enable("table").parse(text)


def shown(text):
    """What a reader of a Markdown page sees."""
    found = []
    for token in tokens(text):
        if token.type == "inline":
            found.append("".join(child.content for child in token.children))
    return "\n".join(found)


@pytest.fixture(params=RULE_FILES, ids=lambda path: f"{path.parent.name}/{path.name}")
def standard(request):
    return load_standard(request.param, shipped.registry())


def parts_of(standard):
    """Every part that has a title of its own, by the anchor under which the page must have it."""
    rules = standard.rules
    for head, parts in (
        ("section", rules.sections),
        ("points", rules.points),
        ("grade", rules.grades),
        ("alert", rules.alerts),
        ("round", rules.rounds),
        ("term", rules.terms.values()),
        ("setting", rules.settings.values()),
    ):
        yield from ((f"{head}-{part.name}", part) for part in parts)
    yield from ((f"{part.head}-{part.name}", part) for part in (*rules.extras, *rules.limits))


def test_the_page_is_well_formed_and_asks_nothing_of_anybody(standard):
    text = html(standard)
    tree = parsed(text)
    assert tree.get("lang") == "en"
    assert tree.find("head/title").text == standard.title
    ids = [node.get("id") for node in tree.iter() if node.get("id")]
    assert len(ids) == len(set(ids))
    links = {node.get("href") for node in tree.iter("a")}
    assert links
    assert {link.removeprefix("#") for link in links} <= set(ids)
    assert not list(tree.iter("script"))
    assert {link.get("href") for link in tree.iter("link")} == {"data:,"}
    assert not [node for node in tree.iter() if any(name in node.attrib for name in ("src", "style", "onclick"))]
    assert "url(" not in text
    assert "@import" not in text


def test_it_can_be_read_out(standard):
    tree = parsed(html(standard))
    levels = [int(node.tag[1]) for node in tree.iter() if re.fullmatch(r"h[1-6]", str(node.tag))]
    assert levels.count(1) == 1 and levels[0] == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))
    for table in tree.iter("table"):
        assert text_of(table.find("caption"))
        assert {th.get("scope") for th in table.iter("th")} == {"col", "row"}
        width = len(table.findall("thead/tr/th"))
        assert all(len(row) == width for row in table.findall("tbody/tr"))
    for svg in tree.iter("{http://www.w3.org/2000/svg}svg"):
        title = svg.find("{http://www.w3.org/2000/svg}title")
        assert svg.get("role") == "img"
        assert svg.get("aria-labelledby") == title.get("id")
        assert "gives" in title.text


def test_every_part_and_every_trait_that_it_reads_is_on_the_page(standard):
    tree = parsed(html(standard))
    by_id = {node.get("id"): node for node in tree.iter() if node.get("id")}
    seen = shown(markdown(standard))
    for anchor, part in parts_of(standard):
        assert part.title.text in text_of(by_id[anchor]), anchor
        assert part.title.text in seen, anchor
    for name in standard.grader.traits_read():
        row = text_of(by_id[f"trait-{name}"])
        trait = standard.traits[name]
        assert trait.title in row and name in row and trait.describe in row
        assert trait.title in seen and trait.describe in seen
    whole = text_of(tree)
    for text in (standard.title, standard.edition, standard.seal, "Handle fish <gently>."):
        assert text in whole and text in seen
    for sample in standard.rules.samples:
        assert sample.title in whole and sample.title in seen
    for note in standard.rules.notes:
        assert note in whole and note in seen


def test_the_tables_of_markdown_are_tables(standard):
    text = markdown(standard)
    found = tokens(text)
    assert not [token for token in found if token.type in {"html_block", "code_block", "fence", "hr"}]
    inline = [child for token in found if token.type == "inline" for child in token.children]
    assert {child.type for child in inline} <= {
        "text",
        "text_special",
        "strong_open",
        "strong_close",
        "em_open",
        "em_close",
    }
    heads = [token for token in found if token.type == "heading_open"]
    levels = [int(token.tag[1]) for token in heads]
    assert levels[0] == 1 and levels.count(1) == 1
    tree = parsed(html(standard))
    assert sum(token.type == "table_open" for token in found) == len(list(tree.iter("table")))
    # A row that is too short would be filled up in silence, one that is too long cut: both are counted in the text.
    rows = [line for line in text.split("\n") if line.startswith("| ")]
    assert sum(token.type == "tr_open" for token in found) + len(list(tree.iter("table"))) == len(rows)
    widths = [len(re.findall(r"(?<!\\)\|", row)) for row in rows]
    rules = [i for i, row in enumerate(rows) if re.fullmatch(r"\| (-+:? \| )*-+:? \|", row)]
    for begin, end in pairwise([*(i - 1 for i in rules), len(rows)]):
        assert len(set(widths[begin:end])) == 1


def test_a_page_is_the_same_to_the_byte(tmp_path):
    run = (
        "import sys; from pathlib import Path; from koirules.commands import main; "
        "main(['handbook', 'tosai_kohaku', '--out', sys.argv[1]], standalone_mode=False)"
    )
    for ending in ("html", "md"):
        pages = []
        for seed in ("1", "2"):
            out = tmp_path / f"{seed}.{ending}"
            subprocess.run([sys.executable, "-c", run, str(out)], cwd=ROOT, env={"PYTHONHASHSEED": seed}, check=True)
            pages.append(out.read_bytes())
        assert pages[0] == pages[1]
        assert pages[0].endswith(b"\n") and b"\r" not in pages[0]


def curves(standard):
    return [part for part in standard.rules.points if isinstance(part.shape, Curve) and trait_of(part.by) is not None]


def points_given(standard, part, value):
    """What the evaluator gives a fish of which only this is recorded."""
    result = standard.grade({trait_of(part.by).name: value})
    (reason,) = [one for one in result.reasons if (one.kind, one.name) == ("points", part.name)]
    assert reason.points_low == reason.points_high
    return reason.points_low


def test_the_knots_on_the_page_are_what_the_evaluator_gives(standard):
    tree = parsed(html(standard))
    parents = {child: parent for parent in tree.iter() for child in parent}
    for part in curves(standard):
        heading = next(node for node in tree.iter() if node.get("id") == f"points-{part.name}")
        rows = parents[heading].findall(".//table/tbody/tr")
        assert len(rows) == len(part.shape.at)
        for row in rows:
            seen, given, of_score = (text_of(cell) for cell in row)
            result = standard.grade({trait_of(part.by).name: seen})
            (reason,) = [one for one in result.reasons if (one.kind, one.name) == ("points", part.name)]
            assert (reason.points_low, reason.score_low) == (Decimal(given), Decimal(of_score))


def test_the_line_that_is_drawn_is_what_the_evaluator_gives(standard):
    svg = "{http://www.w3.org/2000/svg}"
    tree = parsed(html(standard))
    for part in curves(standard):
        title = next(node for node in tree.iter(f"{svg}title") if node.get("id") == f"curve-{part.name}-title")
        picture = next(node for node in tree.iter(f"{svg}svg") if title in list(node))
        rings = [(float(ring.get("cx")), float(ring.get("cy"))) for ring in picture.iter(f"{svg}circle")]
        (line,) = picture.iter(f"{svg}polyline")
        ends = [tuple(float(one) for one in pair.split(",")) for pair in line.get("points").split()]
        assert ends[1:-1] == rings
        axis = [node for node in picture.iter(f"{svg}line") if node.get("class") == "axis"]
        foot, top = float(axis[0].get("y1")), float(axis[1].get("y1"))
        unit = unit_shown(part.by)
        at = [Decimal(one).scaleb(-6) for one in part.shape.at]
        at = [float(one if unit is None else unit.from_held(one)) for one in at]
        most = part.shape.most / 1000

        def drawn(x, ends=ends, foot=foot, top=top, most=most):
            (x1, y1), (x2, y2) = next(
                both for both in pairwise(ends) if both[0][0] <= x <= both[1][0] and both[0] != both[1]
            )
            y = y1 + (y2 - y1) * (x - x1) / (x2 - x1)
            return (foot - y) / (foot - top) * most

        scale = (rings[-1][0] - rings[0][0]) / (at[-1] - at[0])
        for left, right in pairwise(at):
            middle = (left + right) / 2
            x = rings[0][0] + (middle - at[0]) * scale
            if isinstance(trait_of(part.by).kind, Number) or middle.is_integer():
                given = points_given(standard, part, middle)
                assert drawn(x) == pytest.approx(float(given), abs=0.02 * most)
        for value, (x, _) in zip(at, rings, strict=True):
            assert drawn(x) == pytest.approx(float(points_given(standard, part, value)), abs=0.001 * most)


def test_the_points_of_every_example_add_up(standard):
    tree = parsed(html(standard))
    runs = run_samples(standard.grader)
    examples = [node for node in tree.iter("div") if node.get("class") == "example"]
    assert len(examples) == len(runs)
    for example, run in zip(examples, runs, strict=True):
        came = text_of(example.find("p"))
        for name in run.result.possible:
            assert standard.grade_titles[name] in came
        sums, inside = [], []
        for row in example.findall("table/tbody/tr"):
            points = Decimal(text_of(row[1]).split(" to ")[0])
            if row.get("class") == "sums":
                sums.append(points)
                inside.append([])
            else:
                inside[-1].append(points)
        assert sum(sums) == run.result.score_low
        if run.result.score is not None:
            assert [sum(points) for points in inside] == sums


HOSTILE = [
    "<script>alert(1)</script>",
    "&lt;b&gt; &amp; 'quotes' `code`",
    "a | b || c",
    "[here](http://example.org) ![x](y) <http://example.org>",
    "*star* _line_ ~~gone~~ **two** \\ end\\",
    "1. one - two + three # four",
    "- dash",
    "--- | ---",
    "{name} ${name} %s",
    "]]> --> <!-- </style></title>",
]


@pytest.mark.parametrize("title", HOSTILE)
def test_titles_of_strangers_are_shown_and_never_act(title):
    said = title.replace('"', "'")
    standard = read_standard(
        f'standard "{said}" edition 1 variety kohaku note "{said}"\n'
        f'setting line = 3 from 1 to 9 "{said}"\n'
        f'trait mark "{said}" as number in cm from 0 to 9\n'
        f'term marked "{said}" means mark above 2 cm\n'
        f'fault bad "{said}" if marked or label_x is "{said}": no better than last\n'
        f'trait label_x "{said}" as label\n'
        f'section s "{said}" worth 100\n'
        f'points p "{said}" by mark: 0 cm gives 0, 4 cm gives 10\n'
        f'bonus b "{said}" 1 if marked\n'
        f'grade good "{said}" if score at least line\n'
        "grade last otherwise\n"
        f'round r "{said}" pick line by highest score\n send to "{said}"\n'
        f'sample "{said}" with mark 1 cm, label_x "{said}"\n comes out last\n'
    )
    page = html(standard)
    tree = parsed(page)
    assert tree.find("head/title").text == said
    assert not list(tree.iter("script")) and len(list(tree.iter("style"))) == 1
    assert not [link for link in tree.iter("a") if not link.get("href").startswith("#")]
    for anchor in ("points-p", "fault-bad", "setting-line", "term-marked", "trait-mark", "grade-good", "round-r"):
        node = next(node for node in tree.iter() if node.get("id") == anchor)
        assert " ".join(said.split()) in text_of(node), anchor
    text = markdown(standard)
    inline = [child for token in tokens(text) if token.type == "inline" for child in token.children]
    assert {child.type for child in inline} <= {
        "text",
        "text_special",
        "strong_open",
        "strong_close",
        "em_open",
        "em_close",
    }
    assert shown(text).count(" ".join(said.split())) >= 12
    assert not [token for token in tokens(text) if token.type in {"html_block", "code_block", "fence", "hr"}]


REMARKED = """# On the page <b>.
standard "Remarked" edition 1
# On the setting | x.
setting line = 3 from 1 to 9
# On the trait.
trait mark as number in cm from 0 to 9
# On the term.
term marked means mark above 2 cm
# On the fault.
fault bad if marked: no better than last
# On the lift.
lift up if mark above 8 cm: no worse than good
# On the section.
section s worth 100
# On the points.
points p by mark: 0 cm gives 0, 4 cm gives 10
# On the bonus.
bonus b 1 if marked
# On the grade.
grade good if score at least line
grade last otherwise
# On the alert.
alert all "all" if batch share of (marked) above 50 %
# On the round.
round r pick line by highest score
# On the sample.
sample "a" with mark 1 cm
  comes out good
"""


def test_remarks_are_shown_where_they_are_asked_for_and_only_then():
    standard = read_standard(REMARKED)
    remarks = [line.removeprefix("# ") for line in REMARKED.split("\n") if line.startswith("# ")]
    assert len(remarks) == 13
    for make in (html_of, markdown_of):
        without = make(blocks_of(subject(standard)))
        text = make(blocks_of(evolve(subject(standard), remarks=True)))
        seen = text_of(parsed(text)) if make is html_of else shown(text)
        for remark in remarks:
            assert seen.count(remark) == 1, remark
            assert remark.split("<")[0].split("|")[0] not in without


def test_letters_that_steer_do_not_come_onto_the_page():
    standard = read_standard('standard "turn \u202e round \x85 \u2066 here" edition 1\ngrade a otherwise\n')
    for text in (html(standard), markdown(standard)):
        assert not set(text) & {"\u202e", "\x85", "\u2066"}
        assert "turn" in text and "here" in text


def test_titles_come_in_the_language_that_is_asked_for():
    standard = load_standard("tosai_kohaku").in_language("ja")
    tree = parsed(html(standard))
    by_id = {node.get("id"): node for node in tree.iter() if node.get("id")}
    heading = by_id["points-white"]
    assert text_of(heading) == "白地"
    assert "立て鯉" in text_of(by_id["grade-keep"])
    # What the file itself has in no other language comes from the catalogue beside it.
    assert text_of(by_id["term-breadth"][0]) == "長さに対する幅"
    assert [node.tag for node in tree.iter() if node.get("lang") == "ja"] == ["html"]
    assert "白地" in shown(markdown(standard))
    assert "lang=" not in html(load_standard("tosai_kohaku")).replace('<html lang="en">', "")


def test_what_a_standard_is_based_on_is_named():
    base = load_standard(ROOT / "examples/03-a-shared-page/club/open_kohaku.koi")
    standard = load_standard(ROOT / "examples/03-a-shared-page/standard.koi")
    facts = text_of(parsed(html(standard)).find(".//header"))
    assert f"based on {base.title} (club/open_kohaku.koi), edition {base.edition}, seal {base.seal}" in facts
    assert standard.seal in facts


def test_a_base_below_a_base_is_named_too(tmp_path):
    (tmp_path / "one.koi").write_text('standard "One" edition 1\ngrade a otherwise\n', encoding="utf-8")
    (tmp_path / "two.koi").write_text('standard "Two" edition 2 based on "one.koi" edition 1\n', encoding="utf-8")
    (tmp_path / "three.koi").write_text('standard "Three" edition 3 based on "two.koi" edition 2\n', encoding="utf-8")
    facts = text_of(parsed(html(load_standard(tmp_path / "three.koi"))).find(".//header"))
    assert "based on Two (two.koi), edition 2, not held by a seal" in facts
    assert "which is based on One (one.koi), edition 1, not held by a seal" in facts


def test_rounds_say_whom_they_look_at_what_they_go_by_and_what_becomes_of_ties():
    tree = parsed(html(read_standard(ROUNDS)))
    main = text_of(tree.find(".//main"))
    for words in (
        "1. sound fish looks at all fish keeps those possibly with fit to travel and grade is first class",
        "what was not recorded does not send a fish away here",
        "2. the house looks at all fish picks the first 3 (places in the house)",
        "no more than 2 with batch standing of score among those kept by sound fish below 50 %",
        "heated <house>, to be looked at again after 56 days",
        "a person may keep up to 1 more, and says why",
        "those with fit to travel highest score lowest black specks (shimi)",
        "of those that are alike in all of this, the one that was recorded first stands first.",
        "3. left over looks at those passed over by the house picks all, in order",
        "those that are alike in all of this at the last place all stay.",
        "4. late look looks at those kept by the house picks the first 1",
        "those alike in all of this at the last place stay tied and are in no later round: a person decides between them.",
        "many are thin batch share of (tail stem (ozutsu) is thin) above 33 %",
    ):
        assert words in main, words
    assert "valid from 2026-09-01 until 2026-11-30" in text_of(tree.find(".//header"))


def test_the_cautions_come_before_anything_that_is_done_with_fish(standard):
    headings = [text_of(node) for node in parsed(html(standard)).iter("h2")]
    assert headings[0] == standard.subject.in_hand


def test_colours_can_be_told_apart():
    # Relative luminance and contrast as WCAG 2.2 defines them (W3C Recommendation, "relative luminance", "contrast ratio").
    css = (ROOT / "koirules/report/handbook/handbook.css").read_text(encoding="utf-8")
    colours = dict(re.findall(r"--(\w+): #(\w{6});", css))

    def luminance(colour):
        parts = [int(colour[i : i + 2], 16) / 255 for i in (0, 2, 4)]
        red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue

    def contrast(one, other):
        high, low = sorted((luminance(one), luminance(other)), reverse=True)
        return (high + 0.05) / (low + 0.05)

    for ground in ("ground", "shore"):
        for text in ("ink", "quiet", "water"):
            assert contrast(colours[text], colours[ground]) >= 7
    assert contrast(colours["edge"], colours["ground"]) >= 3


def test_other_endings_and_places_are_refused(tmp_path):
    standard = read_standard(ROUNDS)
    for name, code in (("page.pdf", "unknown-ending"), ("page", "unknown-ending"), ("no/page.html", "no-such-folder")):
        assert check_handbook_path(tmp_path / name).code == code
        assert write_handbook(tmp_path / name, subject(standard)).code == code
    assert not list(tmp_path.iterdir())
    assert write_handbook(tmp_path / "PAGE.HTML", subject(standard)) is None
    assert [path.name for path in tmp_path.iterdir()] == ["PAGE.HTML"]


def test_the_page_of_the_example_is_the_file_beside_it():
    # After a change that was meant: `koirules handbook …/standard.koi --out …/handbook.md`, then read what changed.
    folder = ROOT / "examples" / "12-a-handbook"
    standard = load_standard(folder / "standard.koi")
    text = markdown_of(
        blocks_of(Subject(standard.grader, run_samples(standard.grader), standard.seal, standard.cautions.all))
    )
    assert text == (folder / "handbook.md").read_text(encoding="utf-8")


def test_what_a_base_left_out_is_no_change_of_the_page_built_on_it(tmp_path):
    pages = {
        "ground": 'standard "ground" edition 1 variety kohaku\nsection body worth 60\npoints outline by outline: poor gives 0, '
        "anything else gives 10\nsection general worth 40\npoints shiroji by shiroji: yellow gives 0, anything else gives 10\n"
        "grade keep if score at least 50\ngrade sell otherwise\n",
        "middle": 'standard "middle" edition 1 based on "ground.koi" edition 1\ndrop points shiroji\ndrop section general\n',
        "own": 'standard "own" edition 1 based on "middle.koi" edition 1\nreplace grade keep if score at least 40\n',
    }
    for name, text in pages.items():
        (tmp_path / f"{name}.koi").write_text(text, encoding="utf-8")
    told = {name: html(load_standard(tmp_path / f"{name}.koi")) for name in ("middle", "own")}
    assert "left out" in told["middle"]
    assert "left out" not in told["own"]


def test_a_page_built_on_another_lists_and_marks_what_it_changes():
    standard = load_standard(ROOT / "examples/03-a-shared-page/standard.koi")
    tree = parsed(html(standard))
    by_id = {node.get("id"): node for node in tree.iter() if node.get("id")}
    facts = text_of(next(node for node in tree.iter("dl") if "left out" in text_of(node)))
    assert "black specks" in facts and "superb lustre" in facts and "no red on the head" in facts
    assert text_of(by_id["fault-specks"]).count("changed here") == 1
    assert text_of(by_id["bonus-lustre"]).count("added here") == 1
    assert [text_of(node) for node in tree.iter("small")] == ["added here", "added here", "changed here"]
    # A page of its own on a common ground marks what it takes from there.
    whole = text_of(parsed(html(load_standard("tosai_kohaku"))))
    assert "from the base" in whole and "added here" not in whole and "changed here" in whole
    assert "What this page changes" not in text_of(parsed(html(load_standard("tosai_any_variety"))))
