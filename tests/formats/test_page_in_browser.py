"""The page of results in a real Chromium: by keyboard, without a script, on paper, and full of texts that would act."""

import json
import re
import unicodedata
from importlib.resources import files
from pathlib import Path

import pypdf
import pytest
from click.testing import CliRunner

from koirules import load_standard
from koirules.commands import main
from koirules.report.result_files import write_results
from koirules.report.results_page import footed
from tests.formats.browser import Page, running_browser
from tests.formats.test_html_results import ACTING, everywhere

ROOT = Path(__file__).parents[2]
LOT = ROOT / "examples" / "01-autumn-lot" / "records.csv"
FISH = 72
A4 = (210 / 25.4 * 72, 297 / 25.4 * 72)
SHOWN = "[...document.querySelectorAll('.fish:not([hidden])')]"


@pytest.fixture(scope="module")
def browser():
    with running_browser() as running:
        yield running


@pytest.fixture(scope="module")
def lot(tmp_path_factory):
    path = tmp_path_factory.mktemp("lot") / "results.html"
    run = CliRunner().invoke(main, ["grade", "tosai_kohaku", str(LOT), "--out", str(path)])
    assert run.exit_code == 0, run.output
    return path


@pytest.fixture
def phone(browser, lot):
    return Page(browser, 390, 844, script=True, touch=True).open(lot)


@pytest.fixture
def desk(browser, lot):
    return Page(browser, 1280, 900, script=True, touch=False).open(lot)


def names(page):
    return page.run(f"{SHOWN}.map((card) => card.querySelector('.name').textContent)")


def open_tools(page):
    page.run("document.querySelector('.tools').open = true")


def test_the_page_opens_without_a_word_and_without_a_request(phone):
    assert (phone.told, phone.requests) == ([], [])
    assert len(names(phone)) == FISH
    assert phone.run("document.getElementById('shown').textContent") == "72 of 72 fish shown"
    phone.run("fetch('https://example.org/').catch(() => 0)")
    assert any("Content Security Policy" in told for told in phone.told)


@pytest.mark.parametrize("page", ["phone", "desk"])
def test_nothing_is_wider_than_the_screen(page, request):
    page = request.getfixturevalue(page)
    page.run("document.getElementById('unfold').click()")
    assert page.run("document.documentElement.scrollWidth <= document.documentElement.clientWidth")


def test_whatever_is_touched_is_large_enough_for_a_wet_finger(phone):
    small = phone.run(
        """[...document.querySelectorAll('button, select, input[type=search], summary, label:has([type=checkbox]), a')]
        .filter((one) => one.checkVisibility()).map((one) => [one.textContent, one.getBoundingClientRect().height])
        .filter(([, height]) => height < 44)"""
    )
    assert small == []


def test_grades_are_chosen_by_keyboard(desk):
    open_tools(desk)
    desk.tab_to("[name=grade]")
    desk.press("Space")
    assert len(names(desk)) == 13  # 10 are kept for sure, 3 may be
    assert desk.run("document.getElementById('shown').textContent") == "13 of 72 fish shown"
    desk.press("Tab", "Space")
    assert len(names(desk)) == 34
    desk.press("Space")
    desk.tab_to("button[type=reset]")
    desk.press("Enter")
    assert len(names(desk)) == FISH


def test_a_fish_is_found_by_its_name_and_by_words_of_its_reasons(desk):
    open_tools(desk)
    desk.tab_to("#find")
    desk.press("m14")
    assert names(desk) == ["M14"]
    desk.run("document.getElementById('find').select()")
    desk.press("bent spine: no better")
    assert set(names(desk)) == {"L04", "M09", "M24", "U15"}
    desk.run("document.getElementById('find').select()")
    desk.press("nothing of this kind")
    assert names(desk) == []


ROWS = "[...document.querySelectorAll('.list tbody tr')]"


def test_the_table_is_put_in_order_by_keyboard(desk):
    fish = f"{ROWS}.map((row) => row.cells[1].textContent)"
    best = desk.run(fish)
    assert len(best) == FISH and best[:3] == ["L09", "M17", "M13"]
    desk.tab_to(".list th:nth-child(2) button")
    desk.press("Enter")
    assert desk.run(fish) == sorted(best)
    assert desk.run("document.querySelector('.list th[aria-sort]').textContent") == "fish"
    desk.press("Enter")
    assert desk.run(fish) == sorted(best, reverse=True)
    desk.tab_to(".list th:nth-child(3) button")
    desk.press("Enter")
    score = "Number(document.getElementById(row.dataset.fish).dataset.score.split(' ')[0])"
    scores = desk.run(f"{ROWS}.map((row) => {score})")
    assert scores == sorted(scores, reverse=True)
    desk.press("Tab", "Tab", "Enter")
    points = desk.run(f"{ROWS}.map((row) => Number.parseFloat(row.cells[4].textContent))")
    assert points == sorted(points, reverse=True)
    desk.run("document.querySelector('.list th button').click()")
    assert desk.run(fish) == best


def test_a_row_leads_to_its_fish_even_where_that_is_folded_away(desk):
    folded = desk.run("document.querySelector('.rest .fish').id")
    assert not desk.run(f"document.getElementById('{folded}').checkVisibility()")
    desk.run(f"document.querySelector('.list a[href=\"#{folded}\"]').click()")
    desk.run("new Promise((done) => setTimeout(done, 50))")
    assert desk.run(f"document.getElementById('{folded}').checkVisibility()")


def test_three_fish_are_set_side_by_side_by_keyboard(desk):
    for name in ("M17", "M14", "L17"):
        card = desk.run(f"{SHOWN}.find((card) => card.querySelector('.name').textContent === '{name}').id")
        desk.run(
            f"document.getElementById('{card}').closest('.rest')?.setAttribute('open', '');"
            f"document.querySelector('#{card} .why').open = true"
        )
        desk.tab_to(f"#{card} .chosen", most=900)
        desk.press("Space")
    desk.tab_to("#compare")
    desk.press("Enter")
    assert desk.run("document.getElementById('beside').open")
    assert desk.run("document.activeElement.closest('dialog') !== null")
    heads = desk.run("[...document.querySelectorAll('#side thead th')].map((one) => one.textContent)")
    assert heads == ["M17", "M14", "L17"]
    rows = desk.run(
        """Object.fromEntries([...document.querySelectorAll('#side .title')].map((row) =>
        [row.textContent, [...row.nextElementSibling.children].map((one) => one.textContent)]))"""
    )
    assert rows["Grade"] == ["keep", "hold", "pond grade"]
    assert rows["tail stem (at most 7.14)"][0] == "strong, 10 of 107.14"
    assert rows["many black specks, or one on the head"][1].startswith("does not count")
    everything = desk.run("document.querySelectorAll('#side tr:not([hidden])').length")
    desk.tab_to("#differing")
    desk.press("Space")
    assert desk.run("document.querySelectorAll('#side tr:not([hidden])').length") < everything
    desk.press("Escape")
    assert not desk.run("document.getElementById('beside').open")
    assert desk.run("document.activeElement.id") == "compare"
    assert desk.told == []


@pytest.mark.parametrize("page", ["phone", "desk"])
def test_what_is_chosen_stands_where_it_was_chosen_and_no_bar_over_the_content(page, request):
    page = request.getfixturevalue(page)
    page.run("document.getElementById('unfold').click()")
    page.run("[0, 3].forEach((i) => document.querySelectorAll('.chosen')[i].click())")
    assert "L09, U06" in page.run("document.getElementById('tray').innerText")
    assert page.run("document.getElementById('tray').closest('.fish').querySelector('.name').textContent") == "U06"
    bars = "['fixed', 'sticky'].includes(getComputedStyle(one).position)"
    over = f"[...document.querySelectorAll('body *')].filter((one) => {bars})"
    assert page.run(f"{over}.filter((one) => !one.matches('dialog')).length") == 0


def test_a_fourth_fish_is_refused_in_words_and_all_are_taken_out_again(phone):
    phone.run("document.getElementById('unfold').click()")
    phone.run("[0, 1, 2, 3].forEach((i) => document.querySelectorAll('.chosen')[i].click())")
    assert phone.run("document.querySelectorAll('.chosen:checked').length") == 3
    assert "Three at most" in phone.run("document.getElementById('chosen').textContent")
    phone.tab_to("#clear", most=900)
    phone.press("Enter")
    assert phone.run("document.querySelectorAll('.chosen:checked').length") == 0
    assert phone.run("document.activeElement.className") == "chosen"


def test_two_fish_are_needed(phone):
    phone.run("document.querySelector('.chosen').click(); document.getElementById('compare').click()")
    assert "choose one or two more" in phone.run("document.getElementById('chosen').textContent")
    assert not phone.run("document.getElementById('beside').open")


def test_everything_is_there_to_read_without_a_script(browser, lot):
    page = Page(browser, 390, 844, script=False, touch=True).open(lot)
    seen = page.call("Accessibility.getFullAXTree")["nodes"]
    told = " ".join(str(node.get("name", {}).get("value", "")) for node in seen if not node.get("ignored"))
    for words in ("Cold Sluice", "Before you act on a grade", "L09", "99.8", "More", "U18", "Show the other"):
        assert words in told, words
    assert "Put side by side" not in told and "Show only" not in told


@pytest.fixture(scope="module")
def few(tmp_path_factory):
    """Six fish of the lot: settled, not settled, held back by a fault, hardly recorded."""
    folder = tmp_path_factory.mktemp("few")
    lines = LOT.read_text(encoding="utf-8").splitlines()
    wanted = ("fish,", "L09,", "M14,", "L17,", "L25,", "M19,", "U12,")
    (folder / "few.csv").write_text("\n".join(line for line in lines if line.startswith(wanted)), encoding="utf-8")
    run = CliRunner().invoke(
        main, ["grade", "tosai_kohaku", str(folder / "few.csv"), "--out", str(folder / "few.html")]
    )
    assert run.exit_code == 0, run.output
    return folder / "few.html"


@pytest.mark.parametrize("page", ["few", "selection"])
def test_nothing_stands_in_the_way_of_a_screen_reader_or_weak_eyes(browser, page, request):
    # axe-core is a public checker of the Web Content Accessibility Guidelines, here with the contrast of level AAA.
    phone = Page(browser, 390, 844, script=True, touch=True).open(request.getfixturevalue(page))
    phone.run(files("axe_core_python").joinpath("axe.min.js").read_text(encoding="utf-8") + ";0")
    phone.run("document.querySelectorAll('.chosen')[0].click(); document.querySelectorAll('details')[3].open = true")
    for step in ("0", "document.querySelectorAll('.chosen')[3].click(), document.getElementById('compare').click()"):
        phone.run(step)
        answer = phone.run(
            "axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'best-practice']})"
            ".then((found) => JSON.stringify({wrong: found.violations, right: found.passes.length}))"
        )
        found = json.loads(answer)
        assert [(one["id"], one["nodes"][0]["html"][:200]) for one in found["wrong"]] == []
        assert found["right"] > 20


def printed(page, path):
    return pypdf.PdfReader(page.printed(path))


def closed_up(text):
    """A text without its spaces and ligatures, which a reader of PDF finds where it likes."""
    return "".join(unicodedata.normalize("NFKC", text).split())


def test_on_paper_it_is_a4_and_no_fish_is_cut(desk, tmp_path):
    pages = printed(desk, tmp_path / "lot.pdf").pages
    assert all(
        float(size) == pytest.approx(a4, abs=1) for one in pages for size, a4 in zip(one.mediabox[2:], A4, strict=True)
    )
    cards = desk.run(
        f"{SHOWN}.map((card) => [card.querySelector('.name'), ...card.querySelectorAll('.sentence, .line, .points li')]"
        ".map((one) => one.textContent))"
    )
    assert len(cards) == FISH
    texts = [closed_up(one.extract_text()) for one in pages]
    for name, *told in cards:
        # A card that is cut has its name on one sheet and the last of its words on another.
        last = closed_up(told[-1])
        assert any(name in text and last in text[text.index(name) :] for text in texts), name
    whole = "".join(texts)
    assert "notaninstructiontokill" in whole
    assert "Putsidebyside" not in whole and "Showonly" not in whole and "Allreasons" not in whole
    assert len(pages) <= FISH / 5
    assert f"{len(pages)}/{len(pages)}" in texts[-1]


def test_only_what_is_shown_is_printed_and_open_reasons_with_it(desk, tmp_path):
    desk.run(
        "document.getElementById('find').value = 'M14'; document.querySelector('form').dispatchEvent(new Event('input'))"
    )
    desk.run("document.getElementById('unfold').click()")
    text = "".join(one.extract_text() for one in printed(desk, tmp_path / "one.pdf").pages)
    assert "M14" in text and "M17" not in text
    assert "outline from above" in text and "at most" in text


def test_the_side_by_side_is_printed_alone(desk, tmp_path):
    desk.run("[0, 1].forEach((i) => document.querySelectorAll('.chosen')[i].click())")
    desk.run("document.getElementById('compare').click()")
    text = "".join(one.extract_text() for one in printed(desk, tmp_path / "two.pdf").pages)
    assert "Side by side" in text and "outline from above" in text
    assert "Before you act" not in text


@pytest.mark.parametrize("text", ACTING)
def test_a_text_that_would_act_does_nothing(browser, tmp_path, text):
    path = tmp_path / "results.html"
    results, about = everywhere(text)
    assert write_results(path, [*results, *results], about) is None
    page = Page(browser, 390, 844, script=True, touch=True).open(path)
    page.run("document.querySelectorAll('.chosen').forEach((one) => one.click())")
    page.run("document.getElementById('compare').click()")
    page.run("document.querySelectorAll('#side *').forEach((one) => one.dispatchEvent(new Event('mouseover')))")
    assert (page.told, page.requests) == ([], [])
    assert page.run("document.querySelectorAll('script').length") == 1
    assert page.run("document.querySelectorAll('img, [onload], [onerror], [onmouseover], [onfocus]').length") == 0
    assert page.run("document.querySelectorAll('#side th').length") > 3


def test_the_page_in_the_language_of_the_titles(browser, tmp_path):
    path = tmp_path / "results.html"
    run = CliRunner().invoke(main, ["grade", "tosai_kohaku", str(LOT), "--out", str(path), "--language", "ja"])
    assert run.exit_code == 0, run.output
    page = Page(browser, 390, 844, script=True, touch=True).open(path)
    titles = page.run(
        "[...document.querySelectorAll('.totals tbody tr:not(.detail) th')].map((one) => one.textContent)"
    )
    assert titles[:5] == ["立て鯉", "保留", "販売", "池用", "選外"]
    assert page.run("document.documentElement.lang") == "ja"
    page.run(
        "document.querySelector('#find').value = '丹頂'; document.querySelector('.controls').dispatchEvent(new Event('input'))"
    )
    assert re.fullmatch(r"72尾中\d+尾の鯉を表示", page.run("document.querySelector('#shown').textContent"))
    page.run("document.querySelector('#unfold').click()")
    assert page.run("document.querySelector('#unfold').textContent") == "理由をすべて閉じる"
    page.run("document.querySelector('.by-score button').click()")
    assert page.run("document.querySelector('.by-score').getAttribute('aria-sort')") == "descending"
    page.run("[...document.querySelectorAll('.chosen')].slice(0, 2).forEach((box) => box.click())")
    page.run("document.querySelector('#compare').click()")
    assert page.run("document.querySelector('#side th[scope=rowgroup]').textContent") == "等級"


ROUNDS = """standard "Tin Bucket, places" edition 1 variety kohaku
fault bent "bent spine" if spine is bent: no better than sell
section body "body" worth 100
points stem "tail stem" by tail_stem: thin gives 0, fair gives 6, strong gives 10
grade keep if score at least 60
grade sell otherwise
alert many_bent "many bent spines" if batch share of (fault bent) above 10 %
round look "first look" keep those with grade is keep
round places "places in the house" pick 1 by highest length
  send to "pond 2"
  rescues 1
"""
TUB = """fish,spine,tail_stem,length
a,straight,strong,14 cm
b,straight,fair,13 cm
c,straight,thin,16 cm
d,bent,strong,15 cm
"""
DECISIONS = """fish,grade,round,by,reason
b,,places,Y.,better in the hand
c,keep,,Y.,the stem was held badly
"""


@pytest.fixture(scope="module")
def selection(tmp_path_factory):
    folder = tmp_path_factory.mktemp("selection")
    for name, text in (("rules.koi", ROUNDS), ("tub.csv", TUB), ("decisions.csv", DECISIONS)):
        (folder / name).write_text(text, encoding="utf-8")
    words = ["grade", str(folder / "rules.koi"), str(folder / "tub.csv"), "--out", str(folder / "page.html")]
    run = CliRunner().invoke(main, [*words, "--decisions", str(folder / "decisions.csv")])
    assert run.exit_code == 0, run.output
    return folder / "page.html"


def test_fish_are_shown_by_what_a_round_made_of_them(browser, selection):
    page = Page(browser, 390, 844, script=True, touch=True).open(selection)
    options = page.run("[...document.getElementById('round').options].map((one) => one.textContent)")
    assert options == [
        "every fish",
        "first look: stays",
        "first look: leaves",
        "places in the house: stays",
        "places in the house: leaves",
    ]
    open_tools(page)
    page.tab_to("#round")
    page.press("ArrowDown")
    assert set(names(page)) == {"a", "b", "c"}
    page.press("ArrowDown")
    assert names(page) == ["d"]
    page.press("ArrowDown")
    assert set(names(page)) == {"c", "b"}
    page.press("ArrowDown")
    assert names(page) == ["a"]
    assert page.told == []


def test_a_fish_says_where_it_left_who_stood_above_it_and_what_a_person_decided(browser, selection):
    page = Page(browser, 390, 844, script=True, touch=True).open(selection)
    told = page.run(
        "Object.fromEntries([...document.querySelectorAll('.fish')].map((card) =>"
        "[card.querySelector('.name').textContent, card.querySelector('.course').innerText]))"
    )
    assert "places in the house, leaves" in told["a"] and "c" in told["a"].split("leaves")[1]
    assert "kept by Y.: better in the hand; to pond 2" in told["b"]
    assert "Decided by hand: the stem was held badly (Y.); by the rules: sell" in told["c"]
    assert "first look, leaves" in told["d"]
    above = page.run("document.body.innerText")
    assert "many bent spines" in above
    assert "1 of those that stay kept by hand; to pond 2" in above


MAPPED = """fish,spine,length (cm),hi_patches
"K01""><script>alert(1)</script>",straight,,5-22 L60 R50; 30-60 L60 R80
K02,straight,14.5,10-30 L60 R50 sashi 2; 45-70 L50 R50 thin
K03,straight,,
"""


def test_a_fish_whose_pattern_was_mapped_is_drawn_on_its_card_side_by_side_and_on_paper(browser, tmp_path):
    (tmp_path / "lot.csv").write_text(MAPPED, encoding="utf-8")
    run = CliRunner().invoke(
        main, ["grade", "tosai_kohaku", str(tmp_path / "lot.csv"), "--out", str(tmp_path / "page.html")]
    )
    assert run.exit_code == 0, run.output
    page = Page(browser, 390, 844, script=True, touch=True).open(tmp_path / "page.html")
    titles = page.run("[...document.querySelectorAll('.fish svg title')].map((one) => one.textContent)")
    assert sorted(titles) == [
        'K01"><script>alert(1)</script> from above',
        "K02 from above, grown to 60 cm, by a model",
        "K02 from above, now, 14.5 cm",
        "K03 from above",
    ]
    assert page.run("document.querySelectorAll('.fish .unmapped').length") == 1
    captions = page.run("[...document.querySelectorAll('.views figcaption')].map((one) => one.textContent)")
    assert captions == ["grown to 60 cm, by a model; broken edge: thin, may go"]
    told = page.run("[...document.querySelectorAll('.why p.quiet')].map((one) => one.textContent)")
    assert "Drawn now, 14.5 cm; pale: under white scales; broken edge: thin, may go" in told
    assert "an estimate, not a promise" in page.run("document.querySelector('.cautions').textContent")
    ids = page.run("[...document.querySelectorAll('[id]')].map((one) => one.id)")
    assert len(ids) == len(set(ids))
    page.run("document.querySelectorAll('.chosen').forEach((one) => one.click())")
    page.run("document.getElementById('compare').click()")
    assert page.run("document.querySelectorAll('#side .panel svg.lying').length") == 3
    ids = page.run("[...document.querySelectorAll('[id]')].map((one) => one.id)")
    assert len(ids) == len(set(ids))
    wide = page.run(
        "[...document.querySelectorAll('#side .panel svg.lying')].map((one) => one.getBoundingClientRect().width)"
    )
    assert all(80 < one < 390 for one in wide)
    assert (page.told, page.requests) == ([], [])


def test_every_sheet_names_edition_and_seal_and_no_example_is_torn(browser, tmp_path):
    standard = load_standard("tosai_kohaku")
    path = tmp_path / "handbook.html"
    assert CliRunner().invoke(main, ["handbook", "tosai_kohaku", "--out", str(path)]).exit_code == 0
    page = Page(browser, 1000, 900, script=True, touch=False).open(path)
    # Marks at both ends of each example tell on which sheet they come out.
    page.run(
        "document.querySelectorAll('.example').forEach((one, i) => {"
        " one.querySelector('h3').append(` begins${i}.`);"
        " one.querySelector(':scope > ul > li:last-child').append(` ends${i}.`); })"
    )
    sheets = printed(page, tmp_path / "handbook.pdf").pages
    texts = ["".join(sheet.extract_text().split()) for sheet in sheets]
    assert all(f"edition{standard.edition},seal{standard.seal[:14]}" in text for text in texts)
    number = page.run("document.querySelectorAll('.example').length")
    found = {
        mark: next(place for place, text in enumerate(texts) if mark in text)
        for i in range(number)
        for mark in (f"begins{i}.", f"ends{i}.")
    }
    assert number == len(standard.rules.samples)
    assert [i for i in range(number) if found[f"begins{i}."] != found[f"ends{i}."]] == []


def test_words_of_a_stranger_at_the_foot_stay_words():
    made = footed("", 'a"; } </style><script>alert(1)</script> { \\ \n b')
    assert made.count("{") == 2 and not set("<>\\") & set(re.sub(r"\\[0-9a-f]+ ", "", made)) and "\n b" not in made
