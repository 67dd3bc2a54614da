"""The page in a real browser, as a phone has it: touch, a small screen, no secure context, a network that comes and goes."""

from __future__ import annotations

import math
import re
from importlib.resources import files
from pathlib import Path

import pytest
from axe_core_python.sync_playwright import Axe
from koirules_tub.server import _page
from koirules_tub.store import Store
from playwright.sync_api import Page, expect

SIZES = [{"width": 360, "height": 740}, {"width": 412, "height": 915}, {"width": 1280, "height": 800}]


def begun(shed, phone, sorter="Mika", fish="1", lot="") -> Page:
    page = phone().new_page()
    page.goto(shed.door)
    page.fill("#who", sorter)
    page.fill("#lot", lot)
    page.press("#who", "Enter")
    opened(page, fish)
    return page


def opened(page, fish):
    page.fill("#name", fish)
    page.press("#name", "Enter")
    expect(page.locator("#line")).to_be_visible()


def said(page, text):
    page.fill("#line", text)
    page.press("#line", "Enter")


def saved(page):
    expect(page.locator("#safe")).to_have_text("Saved", timeout=20000)


def test_a_fish_from_a_line_to_a_grade_without_a_secure_context(shed, phone):
    page = begun(shed, phone, lot="health well, whole")
    assert page.evaluate("isSecureContext") is False
    said(page, "nidan, clean face, hi on one eye, 14 cm, splendiferous")
    saved(page)
    expect(page.locator(".chips li")).to_have_count(5)
    expect(page.locator(".chips .unread")).to_contain_text("splendiferous")
    page.locator(".chips .unread").tap()
    expect(page.locator(".chips li")).to_have_count(4)
    expect(page.locator("#grade")).to_contain_text("points")
    good = page.locator("fieldset", has_text="outline from above").locator("button", has_text="good")
    good.tap()
    expect(good).to_have_attribute("aria-pressed", "true")
    saved(page)
    (look,) = Store(shed.path).looks("1")
    assert look.record["outline"] == "good"
    assert look.record["health"] == "well"
    assert look.unread == ()


def test_a_fault_that_bites_stands_at_the_top(shed, phone):
    page = begun(shed, phone)
    said(page, "spine bent")
    expect(page.locator("#grade .fault")).to_contain_text("spine")


def test_german_and_japanese_text_come_through_whole(shed, phone):
    page = begun(shed, phone, sorter="Jürgen Müßig", fish="緋盤三 ß")
    said(page, "きれいな頭, größer als ß")
    saved(page)
    (look,) = Store(shed.path).looks("緋盤三 ß")
    assert look.sorter == "Jürgen Müßig"
    rows = Store(shed.path).read("SELECT body FROM entries WHERE kind = 'line'")
    assert "größer als ß" in rows[0][0]


def test_text_that_would_act_is_text(shed, phone):
    page = begun(shed, phone, fish="<img src=x onerror=document.title='x'>")
    said(page, "<b onclick=alert(1)>nidan</b>")
    saved(page)
    assert page.locator("main img[src=x]").count() == 0
    assert page.title() == "Tub"


def test_what_is_entered_without_a_network_goes_out_once_when_it_is_back(shed, phone):
    page = begun(shed, phone)
    said(page, "nidan")
    saved(page)
    page.context.set_offline(True)
    said(page, "outline good")
    said(page, "14 cm")
    expect(page.locator("#safe")).to_have_text("On this phone only: 2")
    expect(page.locator("main")).to_contain_text("out of reach")
    page.context.set_offline(False)
    saved(page)
    (look,) = Store(shed.path).looks("1")
    assert look.record == {"steps": "nidan", "outline": "good", "length": "14 cm"}
    assert Store(shed.path).last == 3


def test_a_reload_and_a_restarted_shed_lose_nothing(shed, phone):
    page = begun(shed, phone)
    said(page, "nidan")
    saved(page)
    shed.stop()
    said(page, "outline good")
    expect(page.locator("#safe")).to_have_text("On this phone only: 1")
    context = page.context
    page.close()  # the browser is closed while the shed is away
    shed.start()
    again = context.new_page()
    again.goto(f"{shed.address}/")
    saved(again)
    expect(again.locator(".chips li")).to_have_count(2)
    assert Store(shed.path).last == 2


def test_an_entry_that_the_shed_does_not_take_is_said_and_can_be_dropped(shed, phone):
    page = begun(shed, phone)
    page.evaluate("enter('line', {text: 'x'.repeat(250000)})")
    expect(page.locator("[role=alert]")).to_contain_text("too long")
    page.locator("[role=alert] button").tap()
    said(page, "nidan")
    saved(page)


def test_two_phones_at_once_see_each_other(shed, phone):
    one, two = begun(shed, phone, "Mika", "5"), begun(shed, phone, "Ren", "5")
    said(one, "outline good")
    said(two, "outline fair")
    saved(one)
    saved(two)
    expect(one.locator("main")).to_contain_text("Said by Ren", timeout=15000)
    assert {look.sorter: look.record["outline"] for look in Store(shed.path).looks("5")} == {
        "Mika": "good",
        "Ren": "fair",
    }


def test_the_pattern_is_drawn_with_a_finger(shed, phone):
    page = begun(shed, phone)
    page.locator("#draw").tap()
    board = page.locator(".board")
    box = board.bounding_box()
    middle, top, tall = box["x"] + box["width"] / 2, box["y"], box["height"]
    page.mouse.move(middle - 20, top + tall * 0.25)
    page.mouse.down()
    for step in range(25):
        turn = 2 * math.pi * step / 24
        page.mouse.move(middle - 20 * math.cos(turn), top + tall * (0.25 + 0.08 * math.sin(turn)))
    page.mouse.up()
    expect(page.locator("#sheet ul")).to_contain_text("share of red")
    expect(page.locator("#sheet img")).to_be_visible()
    page.locator("#keep-map").tap()
    expect(page.locator(".chips li")).to_have_count(1)
    saved(page)
    (look,) = Store(shed.path).looks("1")
    assert look.record["hi_patches"].startswith("MULTIPOLYGON")


def test_what_matters_next_is_one_question_and_only_when_asked(shed, phone):
    page = begun(shed, phone, lot="health well, whole")
    assert page.locator("#asked").count() == 0
    page.locator("#matters").tap()
    first = page.locator("#asked legend").inner_text()
    page.locator("#asked button", has_text="I can't tell").tap()
    expect(page.locator("#asked legend")).not_to_have_text(first)


def test_a_photograph_goes_along(shed, phone, tmp_path):
    from PIL import Image

    Image.new("RGB", (800, 600), "#d84a26").save(tmp_path / "p.jpg")
    page = begun(shed, phone)
    page.set_input_files("#photo", tmp_path / "p.jpg")
    saved(page)
    expect(page.locator(".photos img")).to_have_count(1)


def test_fish_are_compared_kept_with_a_reason_and_taken_back(shed, phone):
    page = begun(shed, phone)
    said(page, "nidan, outline good")
    saved(page)
    page.locator("#rooms button", has_text="Compare").tap()
    page.locator("article button", has_text="Keep").tap()
    page.fill("#reason", "her mother")
    page.press("#reason", "Enter")
    expect(page.locator("article")).to_contain_text("her mother")
    page.locator("article button", has_text="Take back").tap()
    expect(page.locator("article")).not_to_contain_text("her mother")
    page.locator("#rooms button", has_text="Shed").tap()
    expect(page.locator("table")).to_contain_text("1")


@pytest.mark.parametrize("size", SIZES, ids=lambda size: str(size["width"]))
def test_nothing_stands_in_anybodys_way(shed, phone, size):
    page = phone(size).new_page()
    page.goto(shed.door)
    page.fill("#who", "Mika")
    rooms = []
    rooms.append(Axe().run(page))
    page.press("#who", "Enter")
    opened(page, "1")
    said(page, "nidan, outline good, wobbly, spine bent")
    saved(page)
    for room in ("Fish", "Compare", "Shed"):
        page.locator("#rooms button", has_text=room).tap()
        page.wait_for_timeout(300)
        rooms.append(Axe().run(page, options={"rules": {"color-contrast-enhanced": {"enabled": 1}}}))
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
        small = page.evaluate(
            "[...document.querySelectorAll('button,.button,input:not(.hidden)')].filter(e => e.offsetParent)"
            ".map(e => e.getBoundingClientRect()).filter(r => r.height < 55.5 || r.width < 55.5).length"
        )
        assert small == 0
        tiny = page.evaluate(
            "[...document.querySelectorAll('body *')].filter(e => e.offsetParent && e.textContent.trim())"
            ".filter(e => parseFloat(getComputedStyle(e).fontSize) < 18).length"
        )
        assert tiny == 0
    found = [(one["id"], one["nodes"][0]["html"][:200]) for room in rooms for one in room["violations"]]
    assert not found


def test_a_keyboard_is_enough(shed, phone):
    page = begun(shed, phone)
    page.locator("#line").focus()
    page.keyboard.type("nidan, outline good")
    page.keyboard.press("Enter")
    saved(page)
    for _ in range(60):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.id") == "done":
            break
    page.keyboard.press("Enter")
    expect(page.locator("#name")).to_be_visible()
    assert Store(shed.path).read("SELECT count(*) FROM entries WHERE kind = 'done'") == [(1,)]


def test_every_word_of_the_page_stands_in_its_list(shed):
    script = _page("tub.js")
    words = set(re.findall(r'"([\w-]+)":', _page("words.json")))
    asked = set(re.findall(r'say\("([\w-]+)"', script))
    assert asked <= words | {f"tap-{one}" for one in ("nose", "tail", "left", "right")}


def test_the_page_is_small_and_asks_nobody_else(shed):
    folder = Path(str(files("koirules_tub").joinpath("page")))
    assert sum(path.stat().st_size for path in folder.iterdir()) < 150_000
    text = "".join(path.read_text(encoding="utf-8") for path in folder.iterdir())
    assert set(re.findall(r"https?://[\w./]+", text)) <= {"http://www.w3.org/2000/svg"}
