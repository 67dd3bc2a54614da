"""A standard from the cache is the one that the checker gives, and anything that has changed is read anew."""

from __future__ import annotations

import pickle
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from attrs import evolve

from koirules import cache, read_standard
from koirules.later import known_of
from koirules.loading import files, kept
from koirules.loading.files import load
from koirules.plugins import Registry, load_registry, registry_with
from koirules.standard.checked import Checked
from tests.repo.snippets import whole

ROOT = Path(__file__).parents[2]
PAGES = [*ROOT.glob("rulesets/*/*.koi"), *ROOT.glob("examples/**/*.koi")]
REGISTRY = registry_with()

Load = Callable[..., Checked]


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv(cache.VARIABLE, str(tmp_path / "kept"))
    return tmp_path / "kept" / "standards"


@pytest.fixture
def read(monkeypatch: pytest.MonkeyPatch) -> list[Path]:
    """The files that are read and checked from now on."""
    seen: list[Path] = []
    real = files._checked

    def checked(path: Path, *rest: object) -> Checked:
        seen.append(path)
        return real(path, *rest)  # type: ignore[arg-type]

    monkeypatch.setattr(files, "_checked", checked)
    return seen


def loaded(path: Path, key: str = "a", registry: Registry = REGISTRY) -> Checked:
    return load(str(path), registry.varieties, registry.rulesets, key)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: f"{page.parent.name}-{page.stem}")
def test_the_kept_standard_is_equal_and_its_traits_are_those_of_the_plugins(page: Path, read: list[Path]) -> None:
    first, again = loaded(page), loaded(page)
    assert again == first
    if first.rules is not None:
        assert read == [page]
        assert again.rules is not None
        for name, trait in again.rules.traits.items():
            if trait == REGISTRY.varieties["kohaku"].traits.get(name):
                assert trait is REGISTRY.varieties["kohaku"].traits[name]


def base_and_page(folder: Path) -> tuple[Path, Path]:
    base, page = folder / "base.koi", folder / "page.koi"
    base.write_text(whole("fault short if length below 8 cm: no better than cull"), encoding="utf-8")
    seal = read_standard(base.read_text(encoding="utf-8"), registry=REGISTRY).seal
    edition = read_standard(base.read_text(encoding="utf-8"), registry=REGISTRY).edition
    page.write_text(
        f'standard "Changed" edition 2026-2\n  based on "base.koi" edition {edition} seal {seal}\n', encoding="utf-8"
    )
    return base, page


@pytest.mark.parametrize("change", ["page", "base", "path", "key", "nothing"])
def test_what_has_changed_is_read_anew(tmp_path: Path, read: list[Path], change: str) -> None:
    base, page = base_and_page(tmp_path)
    assert loaded(page).rules is not None
    key = "a"
    match change:
        case "page":
            page.write_text(page.read_text(encoding="utf-8") + "\n", encoding="utf-8")
        case "base":
            base.write_text(base.read_text(encoding="utf-8").replace("8 cm", "9 cm"), encoding="utf-8")
        case "path":
            page = page.rename(tmp_path / "other.koi")
        case "key":
            key = "b"
    changed = loaded(page, key)
    assert len(read) == (1 if change == "nothing" else 2)
    assert (changed.rules is None) == (change == "base")  # its seal is another one now


def test_a_base_that_another_file_now_stands_for_is_read_anew(tmp_path: Path, read: list[Path]) -> None:
    base, page = base_and_page(tmp_path)
    real = base.rename(tmp_path / "real.koi")
    base.symlink_to(real)
    assert loaded(page).rules is not None
    base.unlink()
    base.write_bytes(real.read_bytes())
    assert loaded(page).rules is not None
    assert len(read) == 2


def test_an_earlier_edition_that_is_put_beside_an_installed_base_is_read(tmp_path: Path, read: list[Path]) -> None:
    base, page = base_and_page(tmp_path)
    installed = tmp_path / "installed" / "house" / "standard.koi"
    installed.parent.mkdir(parents=True)
    base.rename(installed)
    page.write_text(page.read_text(encoding="utf-8").replace("base.koi", "house"), encoding="utf-8")
    registry = evolve(REGISTRY, rulesets={"house": installed})
    edition = load("house", registry.varieties, registry.rulesets).rules
    assert edition is not None
    first = loaded(page, registry=registry)
    assert first.rules is not None
    kept = installed.parent / "earlier" / f"house-{edition.edition}.koi"
    kept.parent.mkdir()
    kept.write_bytes(installed.read_bytes())
    assert loaded(page, registry=registry) != first  # the same rules, at other places
    assert read.count(page) == 2
    assert loaded(page, registry=registry).rules is not None
    assert read.count(page) == 2


def test_a_file_with_problems_is_not_kept(tmp_path: Path, folder: Path) -> None:
    page = tmp_path / "page.koi"
    page.write_text("grade a otherwise\n", encoding="utf-8")
    assert loaded(page).rules is None
    assert not folder.exists()


def test_off_means_off(tmp_path: Path, read: list[Path], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv(cache.VARIABLE, "off")
    _, page = base_and_page(tmp_path)
    loaded(page)
    loaded(page)
    assert len(read) == 2


class Bad:
    def __reduce__(self) -> tuple[object, tuple[str]]:
        return print, ("code was run",)


@pytest.mark.parametrize(
    "body",
    [
        b"",
        b"no pickle",
        pickle.dumps(Bad()),
        pickle.dumps(subprocess.Popen),
        b"ckoirules.standard.check.checker\ncheck\n.",
        b"ckoirules.vocabulary.units\nattrs.frozen\n.",
        b"ckoirules.commands\nmain\n.",
    ],
)
def test_what_is_no_data_of_a_standard_is_refused_and_read_anew(
    tmp_path: Path, folder: Path, read: list[Path], capsys: pytest.CaptureFixture[str], body: bytes
) -> None:
    _, page = base_and_page(tmp_path)
    first = loaded(page)
    (file,) = folder.iterdir()
    from hashlib import sha256

    file.write_bytes(f'{{"body": "{sha256(body).hexdigest()}", "bases": []}}\n'.encode() + body)
    assert loaded(page) == first
    assert len(read) == 2
    assert capsys.readouterr().out == ""


def test_a_folder_that_others_may_write_to_is_left_alone(tmp_path: Path, folder: Path, read: list[Path]) -> None:
    _, page = base_and_page(tmp_path)
    loaded(page)
    folder.chmod(0o777)
    loaded(page)
    assert len(read) == 2


def test_two_processes_at_once_find_whole_files(tmp_path: Path, folder: Path) -> None:
    _, page = base_and_page(tmp_path)
    code = (
        "import sys; from pathlib import Path; from koirules.loading.files import load\n"
        "from koirules.plugins import registry_with\n"
        "from koirules.cache import keep\n"
        "r = registry_with()\n"
        "for i in range(60):\n"
        "    assert load(sys.argv[1], r.varieties, r.rulesets, str(i % 3)).rules is not None\n"
        "    keep('standards', str(i % 3), bytes(100_000))\n"
    )
    running = [subprocess.Popen([sys.executable, "-c", code, str(page)], cwd=ROOT) for _ in range(2)]
    assert [one.wait() for one in running] == [0, 0]
    assert not [path for path in folder.iterdir() if path.suffix == ".part"]


def test_the_key_of_the_installed_plugins_is_another_one_when_code_is_touched(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from koirules.plugins.code_key import code_key

    package = tmp_path / "invented_key_plugin"
    package.mkdir()
    (package / "__init__.py").write_text("", encoding="utf-8")
    (package / "traits.py").write_text("A = 1\n", encoding="utf-8")
    monkeypatch.syspath_prepend(tmp_path)
    __import__("invented_key_plugin")
    first = code_key(["invented 1"], ["invented_key_plugin"])
    assert code_key(["invented 1"], ["invented_key_plugin"]) == first
    assert code_key(["invented 2"], ["invented_key_plugin"]) != first
    (package / "traits.py").write_text("A = 22\n", encoding="utf-8")
    assert code_key(["invented 1"], ["invented_key_plugin"]) != first
    assert load_registry().key
    assert registry_with().key == ""


def test_a_standard_that_holds_code_is_not_kept(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    # Without the names of the plugins' measures their functions would have to be written.
    monkeypatch.setattr(kept, "_shared", lambda _: iter(()))
    checked = loaded(ROOT / "rulesets" / "tosai_kohaku" / "standard.koi")
    assert checked.rules is not None
    assert any(hasattr(measure, "compute") for measure in checked.rules.measures)
    assert not folder.exists()


def test_what_no_grade_needs_is_read_when_somebody_asks() -> None:
    page = ROOT / "rulesets" / "tosai_kohaku" / "standard.koi"
    first, again = loaded(page), loaded(page)
    assert first.rules is not None
    assert again.rules is not None
    positions = again.rules.positions
    assert known_of(again.rules.source, "statements") == tuple(positions)
    assert positions == first.rules.positions
    assert again.rules.sayings == first.rules.sayings
    known = set(map(id, REGISTRY.varieties["kohaku"].sayings))
    assert any(id(one) in known for one in again.rules.sayings)
    assert again.rules.samples == first.rules.samples
    assert again.rules.source == first.rules.source
    assert pickle.loads(pickle.dumps(loaded(page))) == first
