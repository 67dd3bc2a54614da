"""Photographs beside the records: small enough for a page, with nothing in them but what is to be seen."""

import importlib.util
import re
from base64 import b64decode
from io import BytesIO

import pytest
from click.testing import CliRunner
from PIL import Image, ImageCms

from koirules.commands import main
from koirules.report import photographs
from koirules.report.photographs import read_photographs
from koirules.results.record import Record
from tests.formats.browser import Page, running_browser

RED, BLUE = (200, 40, 30), (20, 40, 200)


@pytest.fixture
def tub(tmp_path):
    folder = tmp_path / "tub"
    (folder / "photos").mkdir(parents=True)
    return folder


def picture(path, size=(1200, 900), *, kind="JPEG", mode="RGB", **more):
    made = Image.new(mode, size, RED if mode == "RGB" else (0, 0, 0, 0))
    if mode == "RGB":
        made.paste(BLUE, (0, 0, size[0] // 2, size[1] // 2))  # the upper left quarter
    made.save(path, kind, **more)
    return path


def read(tub, *names):
    records = [Record(f"K{i:02}", i + 2, {}, {"photo": name}) for i, name in enumerate(names)]
    return read_photographs(tub / "lot.csv", records)


def only(tub, name):
    found, problems = read(tub, name)
    assert problems == ()
    return Image.open(BytesIO(found["K00"].jpeg)), found["K00"]


def near(pixel, colour):
    return all(abs(one - other) < 25 for one, other in zip(pixel, colour, strict=True))


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP"])
def test_a_photograph_becomes_a_small_jpeg(tub, kind):
    picture(tub / "photos" / "a.x", kind=kind)
    made, photograph = only(tub, "photos/a.x")
    assert (made.format, made.size) == ("JPEG", (800, 600)) == ("JPEG", (photograph.width, photograph.height))
    assert near(made.getpixel((100, 100)), BLUE) and near(made.getpixel((700, 500)), RED)
    assert photograph.source.startswith("data:image/jpeg;base64,")
    assert b64decode(photograph.source.split(",")[1]) == photograph.jpeg


def test_a_small_picture_stays_as_it_is_and_what_is_clear_is_white(tub):
    picture(tub / "a.png", (40, 30), kind="PNG", mode="RGBA")
    made, _ = only(tub, "a.png")
    assert made.size == (40, 30)
    assert near(made.getpixel((5, 5)), (255, 255, 255))


def test_a_photograph_is_turned_as_the_camera_was_held_and_says_nothing_of_where_or_whose(tub):
    # Exif 2.3: orientation 6 is turned a quarter to the right; 0x8825 is where it was taken; 0x013B the photographer.
    exif = Image.Exif()
    exif[0x0112], exif[0x013B] = 6, "SECRET NAME"
    exif.get_ifd(0x8825)[1] = "N"
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    picture(tub / "a.jpg", exif=exif, comment=b"SECRET COMMENT", icc_profile=profile)
    assert b"SECRET" in (tub / "a.jpg").read_bytes()
    made, photograph = only(tub, "a.jpg")
    assert made.size == (600, 800)
    assert near(made.getpixel((500, 100)), BLUE)  # upper left has become upper right
    assert b"SECRET" not in photograph.jpeg and b"Exif" not in photograph.jpeg
    assert not made.getexif()
    assert made.info["icc_profile"] == profile


@pytest.mark.parametrize(
    ("name", "code"),
    [
        ("../secret.jpg", "photo-outside"),
        ("/etc/hostname", "photo-outside"),
        ("link.jpg", "photo-outside"),
        ("https://example.org/a.jpg", "no-such-photo"),
        ("photos", "no-such-photo"),
        ("b.jpg", "no-such-photo"),
        ("x\0.jpg", "photo-unreadable"),
        ("x" * 3000, "photo-unreadable"),
        ("text.jpg", "photo-unreadable"),
        ("half.jpg", "photo-unreadable"),
        ("picture.gif", "photo-unreadable"),
        ("huge.jpg", "photo-unreadable"),
        ("bomb.png", "photo-unreadable"),
    ],
)
def test_what_cannot_be_shown_is_a_warning_with_its_cell(tub, name, code):
    picture(tub.parent / "secret.jpg")
    (tub / "link.jpg").symlink_to(tub.parent / "secret.jpg")
    (tub / "text.jpg").write_text("no picture", encoding="utf-8")
    (tub / "half.jpg").write_bytes(picture(tub / "a.jpg").read_bytes()[:2000])
    picture(tub / "picture.gif", (9, 9), kind="GIF")
    with (tub / "huge.jpg").open("wb") as file:
        file.truncate(photographs.MOST_FILE_BYTES + 1)
    if name == "bomb.png":
        Image.new("1", (20_000, 20_000)).save(tub / name)
    found, (problem,) = read(tub, name)
    assert found == {}
    assert (problem.code, problem.warning, problem.site.row, problem.site.column) == (code, True, 2, "photo")


def test_a_name_that_is_nearly_there_is_guessed_and_a_backslash_parts_folders(tub):
    picture(tub / "photos" / "K01.jpg")
    _, (problem,) = read(tub, "photos/K01.jpeg")
    assert 'Did you mean "K01.jpg"?' in problem.mend
    assert only(tub, r"photos\K01.jpg")[0].size == (800, 600)


@pytest.mark.parametrize(("number", "longer"), [(100, 800), (101, 560), (401, 320)])
def test_many_photographs_are_smaller_each(tub, number, longer):
    picture(tub / "a.jpg")
    found, problems = read(tub, *["a.jpg"] * number)
    assert (len(found), problems) == (number, ())
    assert {one.width for one in found.values()} == {longer}


def test_more_photographs_than_a_page_holds_are_left_out_and_counted(tub, monkeypatch):
    picture(tub / "a.jpg")
    one = len(read(tub, "a.jpg")[0]["K00"].jpeg)
    monkeypatch.setattr(photographs, "MOST_BYTES", 2 * one)
    found, (problem,) = read(tub, *["a.jpg"] * 5)
    assert list(found) == ["K00", "K01"]
    assert problem.code == "photos-left-out" and "the last 3 are left out" in problem.cause


def test_without_the_library_the_page_is_written_and_says_what_to_install(tub, monkeypatch):
    picture(tub / "a.jpg")
    monkeypatch.setattr(importlib.util, "find_spec", lambda _: None)
    found, (problem,) = read(tub, "a.jpg")
    assert (found, problem.code, problem.warning) == ({}, "extra-missing", True)
    assert 'pip install "koirules[pictures]"' in problem.mend
    assert read(tub) == ({}, ())


@pytest.fixture
def page(tub):
    picture(tub / "photos" / "a.jpg")
    (tub / "lot.csv").write_text(
        'fish,spine,photo\nK01,straight,photos/a.jpg\nK02,bent,photos/none.jpg\n"K03""><script>",straight,\n',
        encoding="utf-8",
    )
    run = CliRunner().invoke(main, ["grade", "tosai_kohaku", str(tub / "lot.csv"), "--out", str(tub / "page.html")])
    assert run.exit_code == 0, run.output
    assert "[no-such-photo]" in run.stderr
    return tub / "page.html"


def test_a_page_carries_the_photographs_that_are_there_and_names_the_others(page):
    text = page.read_text(encoding="utf-8")
    (shown,) = re.findall("<img[^>]*>", text)
    assert 'alt="Photograph of K01"' in shown and 'width="800"' in shown
    assert "photos/a.jpg" not in text
    assert "photos/none.jpg" in text


def test_a_photograph_is_seen_on_the_card_side_by_side_and_on_paper(page, tmp_path):
    with running_browser() as browser:
        shown = Page(browser, 390, 844, script=True, touch=True).open(page)
        assert shown.run("document.querySelector('.panel img').decode().then(() => true)")
        shown.run("document.querySelectorAll('.chosen')[0].click(); document.querySelectorAll('.chosen')[1].click()")
        shown.run("document.getElementById('compare').click()")
        assert shown.run("document.querySelectorAll('#side img').length") == 1
        assert shown.run("document.documentElement.scrollWidth") == 390
        assert b"/DCTDecode" in shown.printed(tmp_path / "page.pdf").read_bytes()
        assert (shown.told, shown.requests) == ([], [])


def test_a_small_file_of_very_many_pixels_is_decided_by_its_size_before_it_is_decoded(tmp_path, monkeypatch):
    Image.new("1", (9_000, 9_000)).save(tmp_path / "wide.png")
    assert (tmp_path / "wide.png").stat().st_size < 100_000

    def load(_):
        raise AssertionError("decoded")

    monkeypatch.setattr("PIL.PngImagePlugin.PngImageFile.load", load)
    with pytest.raises(photographs._TooManyPixelsError):
        photographs._smaller(tmp_path / "wide.png", 200)
