"""Results as a page: what stands on it, and that no text of a stranger is ever more than text."""

import base64
import hashlib
import html
import re
from collections import Counter
from decimal import Decimal
from html.parser import HTMLParser

import pytest
from attrs import evolve
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from koirules.explain.score_lines import GradeLine
from koirules.languages import tongue_of
from koirules.report.page_markup import Markup, element, escaped
from koirules.report.result_files import About, write_results
from koirules.report.results_page import MOST_FISH
from koirules.report.score_bins import bins
from koirules.results.course import AlertShown, Fate, RoundCourse, Step, Tied
from koirules.results.decisions import Decision
from tests.formats.test_results import ABOUT, OPEN, SETTLED, result, section

VOID = {"meta", "link", "input", "br", "img"}
WHOLE = evolve(
    ABOUT,
    grades=(
        GradeLine("keep", "keep", Decimal(75)),
        GradeLine("hold", "hold", Decimal(60)),
        GradeLine("cull", "out", None),
    ),
    records="lot.csv",
)


class Read(HTMLParser):
    """A page read back by the parser of the standard library: its elements, and its text with and without the head."""

    def __init__(self, text):
        super().__init__(convert_charrefs=True)
        self.elements = []
        self.texts = []
        self.open = []
        self.feed(text)
        self.close()

    def handle_starttag(self, tag, attrs):
        self.elements.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        if not {"script", "style"} & set(self.open):
            self.texts.append(data)

    @property
    def text(self):
        return " ".join("".join(self.texts).split())

    @property
    def shape(self):
        """Each element with the names of its attributes."""
        return [(tag, sorted(attrs)) for tag, attrs in self.elements]


def page(tmp_path, results=(SETTLED, OPEN), about=WHOLE):
    path = tmp_path / "results.html"
    assert write_results(path, list(results), about) is None
    return Read(path.read_text(encoding="utf-8"))


def test_a_page_has_the_standard_the_totals_every_fish_and_the_cautions(tmp_path):
    read = page(tmp_path)
    assert read.open == []
    for told in (
        "Lantern Bay house standard",
        "edition 2026-1 · kohaku · tosai",
        "2 fish · lot.csv",
        "Changed for this run: grown_length = 70 cm",
        "Handle each fish briefly.",
        "not settled150 %",
        "could be keep or hold150 %",
        "71.5 of 100",
        "71.5 to 80",
        "30 of 50",
        "pond3",
        "A grade is one look by one standard.",
        "Before you act on one",
    ):
        assert told in read.text, told
    cards = [attrs["id"] for tag, attrs in read.elements if (attrs.get("class") or "").split()[:1] == ["fish"]]
    assert sorted(cards) == ["fish-0", "fish-1"]
    title, *_ = re.findall("<title>(.*)</title>", (tmp_path / "results.html").read_text(encoding="utf-8"))
    assert title == "lot.csv by Lantern Bay house standard"


def test_a_page_names_what_a_picture_shows(tmp_path):
    labels = [attrs["aria-label"] for tag, attrs in page(tmp_path).elements if tag == "svg" and "aria-label" in attrs]
    assert labels == [
        "keep 0, hold 1, out 0, not settled 1",
        "Scores of 2 fish. Grade lines: keep from 75; hold from 60.",
    ]


def test_a_page_allows_its_own_style_and_script_and_nothing_from_outside(tmp_path):
    page(tmp_path)
    text = (tmp_path / "results.html").read_text(encoding="utf-8")
    (policy,) = re.findall('http-equiv="Content-Security-Policy" content="([^"]*)"', text)
    rules = dict(rule.split(" ", 1) for rule in html.unescape(policy).split("; "))
    assert rules["default-src"] == rules["base-uri"] == rules["form-action"] == "'none'"
    assert rules["img-src"] == "data:"
    for name, tag in (("style-src", "style"), ("script-src", "script")):
        (inside,) = re.findall(f"<{tag}>(.*?)</{tag}>", text, re.DOTALL)
        assert rules[name] == f"'sha256-{base64.b64encode(hashlib.sha256(inside.encode()).digest()).decode()}'"
    assert not re.search(r"https?:|//[a-z]|@import|url\((?!#)", text)
    assert " style=" not in text and not re.search(r"<[^>]+ on\w+=", text)


def test_titles_in_another_language_say_which_it_is(tmp_path):
    about = evolve(
        WHOLE, tongue=tongue_of("ko"), grades=(GradeLine("keep", "보관", None), GradeLine("hold", "hold", None))
    )
    found = [(attrs["lang"], tag) for tag, attrs in page(tmp_path, about=about).elements if "lang" in attrs]
    assert found[0] == ("en", "html")
    assert set(found[1:]) and {language for language, _ in found[1:]} == {"ko"}


def test_a_page_without_sections_or_without_fish_is_a_page(tmp_path):
    plain = {"sections": {}, "score_low": Decimal(0), "score_high": Decimal(0)}
    assert "gains" not in page(tmp_path, [result(**plain)]).text
    assert "0 fish" in page(tmp_path, []).text
    assert "hold1100 %" in page(tmp_path, [SETTLED], About("t", "1", None, "r.koi")).text


def test_a_page_goes_to_so_many_fish_and_says_so(tmp_path):
    problem = write_results(tmp_path / "results.html", [SETTLED] * (MOST_FISH + 1), WHOLE)
    assert problem.code == "too-many-fish"
    assert "2,001 records" in problem.cause and ".csv" in problem.mend
    assert list(tmp_path.iterdir()) == []


ACTING = [
    "<script>alert(1)</script>",
    '" onmouseover="alert(1)',
    "' onfocus='alert(1)' autofocus x='",
    "</style></title><img src=x onerror=alert(1)>",
    "<!-- fish -->",
    "</script><svg/onload=alert(1)>",
    "&lt;b&gt; &amp;",
    "$policy ${script} $$",
    "javascript:alert(1)",
    "`${alert(1)}`",
    "\x00\x1b[2J\x9b\u202e\ud800",
]


def everywhere(text):
    """Results in which a text of a stranger stands wherever one can."""
    by_hand = Decision(text, "keep", text, text, text)
    one = result(
        text,
        words=text,
        labels={text: text},
        sections={"body": evolve(section("body", "30.00", "31.00"), title=text)},
        possible=("keep", "cull"),
        decision=by_hand,
        by_rules=("cull",),
        course=(Step(text, text, Fate.TIED, open=True, sent=text, tell=lambda: text),),
    )
    grades = (GradeLine("keep", text, Decimal(75)), GradeLine("cull", text, None))
    about = About(
        title=text,
        edition=text,
        variety=text,
        file=text,
        settings={text: text},
        stage=text,
        cautions=(text,),
        alerts=(AlertShown(text, text, False, None),),
        rounds=(
            RoundCourse(text, text, text, (text,), (), (), (Tied((text,), 1),), 1, (text,), (by_hand,), text, None),
        ),
        grades=grades,
        records=f"{text}.csv",
    )
    return [one], about


def test_no_text_changes_what_a_page_is_made_of(tmp_path):
    plain = page(tmp_path, *everywhere("x")).shape
    for text in ACTING:
        read = page(tmp_path, *everywhere(text))
        assert read.shape == plain, text


@given(text=st.text(min_size=1))
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None, max_examples=200)
def test_any_text_comes_back_from_a_page_as_it_was_but_for_what_steers(tmp_path, text):
    read = page(tmp_path, *everywhere(text))
    assert read.shape == page(tmp_path, *everywhere("x")).shape
    kept = html.unescape(escaped(text))
    assert any(kept in one for one in read.texts)
    assert not re.search("[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069\ud800-\udfff]", kept)


@given(text=st.text())
def test_an_element_holds_any_text_and_gives_it_back(text):
    read = Read(element("p", text, title=text).text)
    expected = html.unescape(escaped(text))
    assert read.elements == [("p", {"title": expected})]
    assert "".join(read.texts) == expected


@given(text=st.text(alphabet=st.characters(exclude_categories=["Cc", "Cs", "Cf"])))
def test_what_is_printable_is_never_changed(text):
    assert html.unescape(escaped(text)) == text


def test_markup_is_made_of_elements_and_attributes_that_are_asked_for():
    made = element("input", type="checkbox", checked=True, hidden=False, title=None, aria_label='a "b"', class_="c")
    assert made == Markup('<input type="checkbox" checked aria-label="a &quot;b&quot;" class="c">')
    assert element("li", "1 < 2", Markup("<b></b>")).text == "<li>1 &lt; 2<b></b></li>"


def scored(low, high=None, grade="hold", worth="100"):
    sections = {"body": evolve(section("body", low, high or low), worth=Decimal(worth))}
    return result(sections=sections, score_low=Decimal(low), score_high=Decimal(high or low), possible=(grade,))


def test_scores_are_counted_in_even_steps_up_to_all_that_could_be_had():
    found = bins([scored("0"), scored("4.99"), scored("5"), scored("100", grade="keep"), scored("99", "100")])
    assert [(one.low, one.high) for one in found] == [(i * 5, i * 5 + 5) for i in range(20)]
    assert [one.fish for one in found] == [2, 1, *[0] * 17, 2]
    # A grade is settled where the score is not.
    assert (found[-1].settled, found[-1].unsettled) == (Counter(keep=1, hold=1), 0)
    assert bins([scored("10", "90")])[2].fish == 0  # set aside early: it could lie anywhere


@given(
    worth=st.decimals(1, 5000, places=2),
    shares=st.lists(st.integers(0, 100), min_size=1, max_size=20),
)
def test_every_fish_is_counted_once_where_its_score_lies(worth, shares):
    scores = [(worth * share / 100).quantize(Decimal("0.01")) for share in shares]
    found = bins([scored(str(score), worth=str(worth)) for score in scores])
    assert sum(one.fish for one in found) == len(scores)
    assert len(found) <= 26
    for one in found[:-1]:
        assert one.fish == sum(one.low <= score < one.high for score in scores)


@pytest.mark.parametrize("count", [1, 2, 3, 9])
def test_every_grade_has_a_shade_and_the_last_one_its_own(tmp_path, count):
    grades = tuple(GradeLine(f"g{i}", f"g{i}", None) for i in range(count))
    read = page(tmp_path, [result(possible=("g0",))], evolve(WHOLE, grades=grades))
    shades = [attrs["class"] for tag, attrs in read.elements if (attrs.get("class") or "").startswith("badge shade")]
    assert shades[0] == "badge shade-0"
    assert shades[count - 1] == ("badge shade-4" if count > 1 else "badge shade-0")
