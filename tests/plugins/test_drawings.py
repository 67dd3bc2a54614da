"""Drawings of plugins: glazed pots that are invented, on every page, and what becomes of a drawing that fails."""

import re
from decimal import Decimal
from html.parser import HTMLParser
from threading import Event
from warnings import catch_warnings
from xml.etree import ElementTree

import pytest
from click.testing import CliRunner
from hypothesis import given, settings
from hypothesis import strategies as st

from koirules.api import load_standard, read_standard
from koirules.commands import main
from koirules.hooks import Drawing, Recorded, Sketch
from koirules.plugins import registry_with
from koirules.problems import RecordWarning
from koirules.report.drawer import Drawer, values_of
from koirules.report.plugged_drawings import PluggedDrawing
from koirules.report.sketch_markup import ATTRIBUTES, ELEMENTS, SketchError, sound
from koirules.testing.conformance import findings
from koirules.vocabulary.kinds import Choice, Count, Label, Number, Patches, Places, Scale, YesNo
from koirules.vocabulary.map_text import read_map
from koirules.vocabulary.readings import PlaceSet, Span
from koirules.vocabulary.subject import Subject
from koirules.vocabulary.traits import Trait
from koirules.vocabulary.units import UNITS
from tests.plugins.installing import installer
from tests.plugins.invented import Gives, lace, only_problem
from tests.plugins.test_pots import CODE, PRIZES, RECORDS, SIZES, STANDARD, WORD, sentences

DRAWN = """

from koirules.hooks import Drawing, Sketch


def draw(recorded):
    if recorded.title == "P3":
        raise ValueError("no such glaze")
    glaze = {"dull": "#8a8378", "soft": "#a39a80", "bright": "#c9b458"}.get(recorded.values.get("gloss"), "none")
    tall = recorded.values.get("height", 20) * 4
    return Sketch(
        f'<linearGradient id="glow"><stop stop-color="{glaze}"/><stop offset="1" stop-color="#fff"/></linearGradient>'
        f'<rect id="pot" x="20" y="20" width="80" height="{tall}" fill="url(#glow)"/><use href="#pot" x="4"/>'
        f"<text x='20' y='15'>{recorded.values.get('gloss', '?')} &amp; {recorded.language or 'plain'}</text>",
        120,
        tall + 40,
        f"A pot, {recorded.values.get('gloss', 'gloss not recorded')} <glaze>.",
    )


@hookimpl
def koirules_drawings():
    return [Drawing("pot", draw)]
"""


@pytest.fixture
def kiln(tmp_path, monkeypatch):
    made = installer(tmp_path, monkeypatch)
    next(made)(
        "alder-pots", CODE.replace('grows_by="height",', 'grows_by="height", drawing="pot",') + DRAWN, "pots", "1.0"
    )
    texts = {
        "standard.koi": STANDARD.format(occasion=""),
        "records.csv": RECORDS,
        "sizes.toml": SIZES,
        "prizes.toml": PRIZES,
    }
    for name, text in texts.items():
        (tmp_path / name).write_text(text, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    yield tmp_path
    next(made, None)


def run(*words):
    done = CliRunner().invoke(main, list(words))
    assert done.exception is None or isinstance(done.exception, SystemExit), words
    return done


class Ids(HTMLParser):
    """The ids of a page, and where its links and cuts lead."""

    def __init__(self, text):
        super().__init__()
        self.ids, self.to = [], set()
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        for name, value in attrs:
            self.ids += [value] if name == "id" else []
            self.to |= set(re.findall(r"url\(#([^)]*)\)", value or ""))
            self.to |= {value[1:]} if name == "href" and value.startswith("#") else set()


PAGES = (
    ("grade", "standard.koi", "records.csv", "--out", "page.html"),
    ("print", "certificate", "standard.koi", "records.csv", "--fish", "P1", "--out", "page.html"),
    ("print", "ponds", "standard.koi", "records.csv", "--out", "page.html"),
    ("prizes", "prizes.toml", "records.csv", "--rules", "standard.koi", "--out", "page.html"),
    ("prizes", "prizes.toml", "records.csv", "--rules", "standard.koi", "--certificates", "page.html"),
    ("handbook", "standard.koi", "--out", "page.html"),
)


@pytest.mark.parametrize("words", PAGES, ids=lambda words: " ".join(words[:2]))
def test_every_page_shows_the_drawing_of_a_plugin(kiln, words):
    done = run(*words)
    assert "Wrote page.html" in done.output, done.output
    page = (kiln / "page.html").read_text(encoding="utf-8")
    assert "glow" in page and 'viewBox="0 0 120 120"' in page
    assert "Drawing of" in page
    found = Ids(page)
    assert len(found.ids) == len(set(found.ids))
    assert found.to <= set(found.ids)
    assert not [one.group() for one in WORD.finditer(sentences(page))]
    # P3, whose drawing fails, wins no prize, and stands in no handbook.
    assert ("[plugin-drawing-failed]" in done.stderr) == (words[0] in {"grade", "print"}), done.stderr


def test_a_page_tells_what_its_drawings_are_and_names_the_plugin_of_one_that_fails(kiln):
    done = run("grade", "standard.koi", "records.csv", "--out", "page.html")
    assert "warning: plugin pots of alder-pots 1.0" in done.stderr
    assert 'The drawing "pot" failed for P3 (ValueError: no such glaze, in ' in done.stderr
    page = (kiln / "page.html").read_text(encoding="utf-8")
    assert "Drawings show what was recorded. They are no photographs." in page
    assert "mapped" not in sentences(page)
    assert page.count("A pot, bright &lt;glaze&gt;.") == 1  # P1; P3 failed
    assert "bright &amp; plain" in page
    run("grade", "standard.koi", "records.csv", "--out", "seite.html", "--language", "de")
    german = (kiln / "seite.html").read_text(encoding="utf-8")
    assert "bright &amp; de" in german and "Es sind keine Fotos." in german
    run("print", "certificate", "standard.koi", "records.csv", "--fish", "P1", "--out", "paper.html")
    assert "Drawn from the record of the pot. It is no photograph." in (kiln / "paper.html").read_text(encoding="utf-8")
    run("handbook", "standard.koi", "--out", "book.md")
    assert "A pot, bright \\<glaze\\>." in (kiln / "book.md").read_text(encoding="utf-8")


def test_one_record_is_drawn_into_a_file_of_its_own(kiln):
    assert "Wrote p1.svg" in run("why", "standard.koi", "records.csv", "P1", "--drawing", "p1.svg").output
    picture = ElementTree.fromstring((kiln / "p1.svg").read_text(encoding="utf-8"))  # noqa: S314
    assert picture.get("viewBox") == "0 0 120 120"
    assert picture.findtext("{http://www.w3.org/2000/svg}desc") == "A pot, bright <glaze>."
    failed = run("why", "standard.koi", "records.csv", "P3", "--drawing", "p3.svg")
    assert failed.exit_code == 2
    assert "[plugin-drawing-failed]" in failed.stderr and "Nothing was written." in failed.stderr
    assert not (kiln / "p3.svg").exists()


def test_the_library_draws_and_warns(kiln):
    standard = load_standard("standard.koi")
    assert standard.drawing({"height": "20 cm"}, "P1").startswith("<svg")
    assert "gloss not recorded" in standard.drawing({}, "P1", grown=False)
    with pytest.warns(RecordWarning, match="no such glaze"):
        assert standard.drawing({}, "P3") == ""
    batch = standard.grade_batch([{"fish": name, "height": "20 cm", "gloss": "bright"} for name in ("P1", "P3")])
    with pytest.warns(RecordWarning, match="failed for P3"):
        standard.write_results("page.html", batch)
    with catch_warnings():
        standard.write_handbook("book.html")
    assert "glow" in (kiln / "book.html").read_text(encoding="utf-8")


@pytest.mark.usefixtures("kiln")
def test_the_plugins_command_lists_the_drawing():
    listed = [line.split() for line in run("plugins").stdout.splitlines()]
    assert ["drawing", "pot", "draws", "pots", "alder-pots", "1.0"] in listed


def test_what_nothing_draws_has_no_drawing():
    pots = registry_with(Gives(lace(subject=Subject("pot", "pots"))))
    standard = read_standard('standard "x" edition 1 variety lace\ngrade all otherwise\n', "x.koi", pots)
    assert standard.drawing({"net": "clear"}, "P1") == ""
    assert standard.drawing({"net": "clear"}, "P1", grown=False) == ""


POT = lace(subject=Subject("pot", "pots", drawing="pot"))


def drawing(draw, name="pot"):
    return Drawing(name, draw)


def test_a_drawing_that_nobody_brings_is_told_and_nothing_is_drawn():
    registry = registry_with(Gives(POT))
    problem = only_problem(registry)
    assert (problem.code, problem.warning) == ("no-drawing", True)
    assert '"lace" names the drawing "pot"' in problem.cause
    assert registry.varieties["lace"].subject.drawing == ""
    one = Gives(drawings=[drawing(lambda _: None, "pots")], name="two")
    assert '"pots"' in registry_with(Gives(POT), one).problems[0].mend


def test_a_drawing_may_come_from_another_plugin():
    registry = registry_with(Gives(POT), Gives(drawings=[drawing(lambda _: None)], name="two"))
    assert registry.problems == ()
    assert registry.varieties["lace"].subject.drawing == "pot"
    assert registry.drawings["pot"].plugin == "two"


@pytest.mark.parametrize("name", ["pot", "fish from above"])
def test_a_name_that_is_taken_leaves_the_drawing_out_alone(name):
    first = Gives(drawings=[drawing(lambda _: None)], name="one")
    registry = registry_with(first, Gives(lace(), drawings=[drawing(lambda _: None, name)], name="two"))
    problem = only_problem(registry)
    assert (problem.code, str(problem.site)) == ("plugin-name-taken", "plugin two")
    assert "lace" in registry.varieties and set(registry.drawings) == {"pot"}


@pytest.mark.parametrize(
    "given",
    [
        Drawing("", lambda _: None),
        Drawing("a\nb", lambda _: None),
        Drawing(3, lambda _: None),
        Drawing("pot", None),
        "pot",
    ],
)
def test_what_is_no_drawing_leaves_the_plugin_out(given):
    assert only_problem(registry_with(Gives(drawings=[given]))).code == "plugin-wrong-type"


RECT = '<rect width="9" height="9"/>'


def drawer(draw, patience=5.0):
    registry = registry_with(Gives(POT, drawings=[drawing(draw)]))
    standard = read_standard('standard "x" edition 1 variety lace\ngrade all otherwise\n', "x.koi", registry)
    return Drawer(
        standard.rules, drawings={"pot": PluggedDrawing(registry.drawings["pot"].what, "invented")}, patience=patience
    )


def test_failures_are_told_once_for_each_way_with_some_of_the_records():
    def draw(recorded):
        if recorded.title == "A":
            return "a picture"
        if recorded.title == "B":
            return Sketch(RECT, 9, 9, "a pot")
        raise KeyError("rim")

    one = drawer(draw)
    assert [len(one.views_of({}, title)) for title in "ABCDEFG"] == [0, 1, 0, 0, 0, 0, 0]
    bad, failed = one.take_problems()
    assert (bad.code, failed.code) == ("bad-drawing", "plugin-drawing-failed")
    assert "for A: it gives a str, and no Sketch." in bad.cause
    assert "failed for C, D, E and 2 more (KeyError: 'rim', in " in failed.cause
    assert {str(one.site) for one in (bad, failed)} == {"plugin invented"}
    assert one.take_problems() == ()


def test_a_drawing_that_hangs_is_left_behind_and_not_asked_again():
    hung = Event()
    one = drawer(lambda _: hung.wait(60), patience=0.05)
    assert [one.views_of({}, str(number)) for number in range(1000)] == [()] * 1000
    (problem,) = one.take_problems()
    hung.set()
    assert problem.code == "plugin-drawing-failed"
    assert "no answer within 0.05 seconds" in problem.cause


def test_what_a_drawing_prints_is_no_data(capsys):
    def draw(_):
        print("drawing")
        return Sketch(RECT, 9, 9, "a pot")

    assert len(drawer(draw).views_of({}, "P1")) == 1
    assert capsys.readouterr() == ("", "drawing\n")


def test_a_drawing_sees_what_was_surely_recorded():
    kinds = {
        "gloss": (Scale(("dull", "bright")), 2, "bright"),
        "shape": (Choice(("jug", "bowl")), 3, None),
        "lid": (YesNo(), 2, True),
        "foot": (YesNo(), 3, None),
        "crawl": (Count(9), Span(3.0, 3.0), 3),
        "height": (Number(UNITS["m"], Decimal(0), Decimal(9)), Span(25.0, 25.0), 0.25),
        "rim": (Number(UNITS["cm"], Decimal(0), Decimal(9)), Span(2.0, 3.0), None),
        "chips": (Places(("rim", "foot")), PlaceSet(1, 1), ("rim",)),
        "maker": (Label(), "a house", "a house"),
    }
    pattern = read_map("8 to 21 left 55")
    traits = {name: Trait(name, name, kind) for name, (kind, _, _) in kinds.items()} | {
        "glaze": Trait("glaze", "", Patches())
    }
    readings = {name: reading for name, (_, reading, _) in kinds.items()} | {"glaze": pattern, "unknown": 3}
    expected = {name: value for name, (_, _, value) in kinds.items() if value is not None} | {"glaze": pattern}
    assert values_of(traits, readings) == expected
    with pytest.raises(TypeError):
        Recorded("P1", expected, 1, 1).values["lid"] = False


def told(svg="<g/>", wide=9.0, tall=9.0, words="a pot"):
    with pytest.raises(SketchError) as caught:
        sound(Sketch(svg, wide, tall, words))
    return str(caught.value)


@pytest.mark.parametrize(
    ("svg", "why"),
    [
        ("<script>alert(1)</script>", '"script"'),
        ("<SCRIPT/>", '"SCRIPT"'),
        ("<style>p { color: red }</style>", '"style"'),
        ('<image href="#a"/>', '"image"'),
        ("<foreignObject/>", '"foreignObject"'),
        ('<a href="#x"><path/></a>', '"a"'),
        ("<animate/>", '"animate"'),
        ("<svg/>", "give what stands inside"),
        ('<x:script xmlns:x="http://www.w3.org/1999/xhtml"/>', "script"),
        ('<script xmlns="http://www.w3.org/1999/xhtml"/>', "script"),
        ('<path onload="go()"/>', '"onload"'),
        ('<path style="fill: red"/>', '"style"'),
        ('<path class="panel"/>', '"class"'),
        ('<use xmlns:xlink="http://www.w3.org/1999/xlink" xlink:href="#a"/>', "xlink"),
        ('<use href="https://example.org/a.svg#b"/>', '"https://example.org/a.svg#b" as the href'),
        ('<use href="other.svg#b"/>', "href"),
        ('<path fill="url(https://example.org)"/>', "fill"),
        ('<path fill="url(other.svg#b)"/>', "fill"),
        ('<path fill="url(#a) red"/>', "fill"),
        ('<path fill="u\\72l(#a)"/>', "fill"),
        ('<path fill="URL(//example.org)"/>', "fill"),
        ('<path id="a b"/>', "id"),
        ('<path id="a"/><path id="a"/>', "twice"),
        ('<use href="#a"/>', 'the id "a", which it has not'),
        ('<path fill="url(#a)"/>', 'the id "a", which it has not'),
        ('<g id="a"><use href="#a"/></g>', "leads to itself"),
        ('<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>', "leads to itself"),
        ("<path>", "not well formed"),
        ("</svg><svg>", "not well formed"),
        ("<!DOCTYPE svg><g/>", "not well formed"),
        ("&pot;", "not well formed"),
        ("<path d='\x00'/>", "not well formed"),
        ("a pot", "text outside"),
        ("<g>a pot</g>", "text outside"),
        ("<g><path/>a pot</g>", "text outside"),
        ("<path/>a pot", "text outside"),
        ("<g>" * 61 + "</g>" * 61, "more than 60 deep"),
        ("<path/>" * 20_001, "more than 20,000 elements"),
        (" " * 200_001, "200,001 letters"),
        (3, "as a int"),
    ],
)
def test_a_sketch_holds_nothing_that_acts_or_is_fetched(svg, why):
    assert why in told(svg)


PIECES = r"""
<g>
</g>
<path d='M0 0'/>
<text>
</text>
<use href='#a'/>
<g id='a'>
<defs>
</defs>
<clipPath id='b'>
</clipPath>
<rect fill='url(#b)'/>
<rect fill='url(#a) url(x)'/>
<script>
</script>
<style>
</style>
a < b
<![CDATA[
]]>
<!--
-->
<?xml?>
<!ENTITY x 'y'>
&x;
&lt;script&gt;
<a href='javascript:x'>
</a>
words
<rect style='x'/>
<rect onclick='x'/>
<rect xmlns:h='http://www.w3.org/1999/xhtml' h:src='x'/>
<h:img xmlns:h='y'/>
<rect fill='\75rl(x)'/>
<use href='data:x'/>
<svg>
</svg>
<rect fill='&#117;rl(x)'/>
<tspan lang='ja'>赤</tspan>
""".strip().split("\n")


LEAVES = st.sampled_from([one for one in PIECES if one.endswith("/>") or not one.startswith("<")])
TREES = st.recursive(
    LEAVES | st.sampled_from(PIECES),
    lambda inner: st.tuples(
        st.sampled_from(("g", "g id='a'", "clipPath id='b'", "text", "script")), st.lists(inner, max_size=3)
    ).map(lambda one: f"<{one[0]}>{''.join(one[1])}</{one[0].partition(' ')[0]}>"),
    max_leaves=5,
)


@settings(max_examples=400, deadline=None)
@given(st.lists(TREES, max_size=3).map("".join))
def test_what_passes_is_harmless_and_reads_the_same_again(svg):
    try:
        made = sound(Sketch(svg, 9, 9, "a pot"))
    except SketchError:
        return
    root = ElementTree.fromstring(f"<svg>{made.group('k-')}</svg>")  # noqa: S314
    for one in root.iter():
        assert one is root or one.tag in ELEMENTS
        for name, value in one.attrib.items():
            assert name in ATTRIBUTES
            assert name in {"id", "href"} or "url" not in value or re.fullmatch(r"url\(#k-[a-z]\)", value)
            assert name != "href" or value.startswith("#k-")
    again = sound(Sketch(made.group(""), 9, 9, "a pot"))
    assert again.group("k-") == made.group("k-")


def test_a_few_links_cannot_draw_a_million_shapes():
    twice = ['<path id="a0"/>', *(f'<g id="a{n + 1}"><use href="#a{n}"/><use href="#a{n}"/></g>' for n in range(30))]
    assert "more than 20,000 elements" in told("".join(twice))


@pytest.mark.parametrize(
    ("more", "why"),
    [
        ({"wide": 0}, '"0" wide'),
        ({"tall": float("nan")}, '"nan" tall'),
        ({"tall": "9"}, '"9" tall'),
        ({"wide": True}, '"True" wide'),
        ({"wide": 91}, "more than ten times"),
        ({"wide": 1e6}, "wide"),
        ({"words": " "}, "in words"),
        ({"words": 4}, "in words"),
        ({"words": "a" * 2001}, "in words"),
    ],
)
def test_a_sketch_has_a_size_and_words(more, why):
    assert why in told(**more)


def test_what_is_sound_is_written_anew_with_ids_of_its_own():
    made = sound(
        Sketch(
            '<g clip-path="url(#cut)" font-family="system-ui, sans-serif"><text x="1">a <tspan>b</tspan> c &lt; d</text></g>'
            '<clipPath id="cut"><rect width="9" height="9"/></clipPath><use href="#cut"/><!-- aside -->',
            9,
            9,
            "two\nlines",
        )
    )
    assert made.group("p1-") == (
        '<g clip-path="url(#p1-cut)" font-family="system-ui, sans-serif"><text x="1">a <tspan>b</tspan> c &lt; d</text></g>'
        '<clipPath id="p1-cut"><rect width="9" height="9"/></clipPath><use href="#p1-cut"/>'
    )
    assert made.words == "two lines"
    alone = ElementTree.fromstring(made.alone('a "title" <b>', "one").text)  # noqa: S314
    assert alone.findtext("{http://www.w3.org/2000/svg}title") == 'a "title" <b>'


def test_a_plugin_with_a_drawing_is_tried_out():
    def half(recorded):
        return Sketch(RECT, 9, 9, recorded.values["net"])

    counted = iter(range(10_000))
    bad = findings(Gives(POT, drawings=[drawing(half)]))
    assert any("KeyError: 'net'" in one for one in bad), bad
    other = findings(Gives(POT, drawings=[drawing(lambda _: Sketch(RECT, 9, 9, f"number {next(counted)}"))]))
    assert any("another sketch for the same record" in one for one in other), other
    idle = findings(Gives(lace(), drawings=[drawing(lambda _: Sketch(RECT, 9, 9, "a pot"))]))
    assert any('no subject names the drawing "pot"' in one for one in idle), idle
    sound_one = findings(Gives(POT, drawings=[drawing(lambda _: Sketch(RECT, 9, 9, "a pot"))]))
    assert not any("drawing" in one for one in sound_one), sound_one


def test_a_sketch_is_shown_by_its_words():
    assert RECT not in repr(Sketch(RECT, 9, 9, "a pot")) and "a pot" in repr(Sketch(RECT, 9, 9, "a pot"))
