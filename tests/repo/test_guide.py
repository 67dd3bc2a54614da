"""README and the guide: every command is run, and prints what the page shows; every link leads somewhere."""

import re
import shlex
import sys
from importlib import import_module
from importlib.metadata import version
from pathlib import Path

import click
import pytest
from click.testing import CliRunner

from koirules.commands import COMMANDS, main
from koirules.plugins.registry import load_registry
from tests.repo.command_pages import reference
from tests.repo.pages import GUIDE, PAGES, REFERENCE, ROOT, agrees, blocks_of, runs_of, shortened

OF_PLUGINS = {"book": "book", "learn": "book", "tub": "tub"}
"""Which distribution each command of a plugin comes from."""


@pytest.fixture
def koirules_alone(monkeypatch):
    """The pages show what koirules prints by itself: a plugin that is installed here would add its varieties."""
    monkeypatch.setattr("koirules.plugins.registry.find_installed", list)
    load_registry.cache_clear()
    yield
    load_registry.cache_clear()


def page_name(path):
    return str(path.relative_to(ROOT))


def text_of(path):
    return path.read_text(encoding="utf-8")


def command_named(name):
    """A command of a plugin, whether it is installed or not."""
    plugin = OF_PLUGINS[name]
    folder = str(ROOT / "plugins" / plugin)
    if folder not in sys.path:
        sys.path.append(folder)
    return getattr(import_module(f"koirules_{plugin}.commands"), name)


def printed_by(words):
    """What a command prints. `< FILE` gives it lines to read."""
    said = None
    if "<" in words:
        at = words.index("<")
        said = Path(words[at + 1]).read_text(encoding="utf-8")
        words = words[:at] + words[at + 2 :]
    name, *rest = words
    if name in OF_PLUGINS:
        done = CliRunner().invoke(command_named(name), rest, input=said, prog_name=f"koirules {name}")
    else:
        done = CliRunner().invoke(main, words, input=said, prog_name="koirules")
    assert done.exception is None or isinstance(done.exception, SystemExit), done.exc_info
    assert done.exit_code == ENDS_WITH.get(" ".join(words), 0), done.output
    return done.output


ENDS_WITH = {
    "check slip.koi": 2,
    "check words.koi": 2,
    "agree examples/guide/house.koi sorted.csv": 1,
    "agree examples/guide/house.koi five.csv": 1,
    "note examples/guide/house.koi notes.txt --out lot.csv": 1,
    "grade examples/guide/house.koi lot.csv": 1,
    "prizes day.toml entries.csv --rules examples/guide/house.koi": 1,
}
"""How the commands end that show a mistake, a difference, a tie, or what was not understood; every other one ends with 0."""


@pytest.mark.usefixtures("koirules_alone")
@pytest.mark.parametrize("path", PAGES, ids=page_name)
def test_every_command_prints_what_its_page_shows(path, tmp_path, monkeypatch, refresh_cases):
    page = text_of(path)
    for folder in ("examples", "rulesets", "plugins"):
        (tmp_path / folder).symlink_to(ROOT / folder)
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("COLUMNS", "100")
    fresh = page
    for block in blocks_of(page):
        if block.name is not None and (ROOT / block.name).exists():
            assert block.text == text_of(ROOT / block.name), block.name
        elif block.name is not None:
            Path(block.name).write_text(block.text, encoding="utf-8")
        if block.kind != "console":
            continue
        for run in runs_of(block.text):
            program, *words = shlex.split(run.command)
            assert program == "koirules", run.command
            printed = printed_by(words)
            printed = "\n".join(line.rstrip() for line in printed.splitlines()) + "\n" if printed else ""
            if refresh_cases and not agrees(run.prints, printed):
                fresh = fresh.replace(
                    f"{run.command}\n{run.prints}", f"{run.command}\n{shortened(printed, run.prints)}", 1
                )
            else:
                assert agrees(run.prints, printed), f"{path.name}:{block.line} {run.command}\n{printed}"
    if fresh != page:
        path.write_text(fresh, encoding="utf-8")


@pytest.mark.parametrize("path", PAGES, ids=page_name)
def test_what_is_not_run_here_is_run_elsewhere(path):
    """Blocks of kind sh install something or serve until they are stopped: `.ci/run` has the one, the command takes the other."""
    ci = text_of(ROOT / ".ci" / "run")
    for block in blocks_of(text_of(path)):
        if block.kind not in {"sh", "powershell"}:
            continue
        for line in block.text.splitlines():
            words = shlex.split(line, comments=True)
            program = words[0].rpartition("/")[2] if words else ""
            if program == "koirules":
                parsed(words[1:])
            elif block.kind == "sh" and path.name == "README.md":
                assert line in ci, line
            else:
                assert words == [] or program in INSTALLERS, line


def parsed(words):
    """A command line that is not run: the command and its options are there. A file that it reads need not be."""
    name, *rest = words
    command = command_named(name) if name in OF_PLUGINS else main.get_command(click.Context(main), name)
    command.make_context(name, rest)


INSTALLERS = {"sudo", "winget", "py", "python", "python3", "python3.11", "pipx", "cd", "pip"}
"""What a reader's own machine installs with: lines that begin so are for that machine, and are not run by a test."""


@pytest.mark.parametrize("path", PAGES, ids=page_name)
def test_every_link_leads_to_a_file_and_a_heading(path):
    for target in re.findall(r"\]\(([^)\s]+)\)", text_of(path)):
        if target.startswith("http"):
            continue
        file, _, anchor = target.partition("#")
        found = (path.parent / file) if file else path
        assert found.exists(), target
        if anchor:
            headings = re.findall(r"^#+ (.+)$", text_of(found), re.MULTILINE)
            assert anchor in {anchor_of(heading) for heading in headings}, target


def anchor_of(heading):
    return re.sub(r"[^\w\- ]", "", heading.lower()).replace(" ", "-")


def test_the_readme_is_short_and_shows_the_pictures():
    readme = text_of(ROOT / "README.md")
    assert len(readme.split()) <= 700
    for picture in ("results", "rules"):
        assert f"(examples/guide/pictures/{picture}.svg)" in readme


def test_the_pictures_are_what_their_script_makes(tmp_path, monkeypatch, refresh_cases):
    folder = GUIDE / "pictures"
    monkeypatch.syspath_prepend(str(folder))
    import_module("make").make(folder if refresh_cases else tmp_path)
    for name in ("results.svg", "rules.svg", "where.svg"):
        assert refresh_cases or text_of(tmp_path / name) == text_of(folder / name), name


def test_the_reference_of_commands_is_what_their_help_says(refresh_cases):
    made = reference(main, COMMANDS)
    if refresh_cases:
        (REFERENCE / "commands.md").write_text(made, encoding="utf-8")
    assert text_of(REFERENCE / "commands.md") == made


def test_every_page_of_the_guide_is_in_its_list():
    listed = re.findall(r"\]\(([^)#]+\.md)\)", text_of(GUIDE / "README.md"))
    pages = {str(path.relative_to(GUIDE)) for path in GUIDE.rglob("*.md")} - {"README.md"}
    assert set(listed) >= pages


def test_the_snippets_of_the_library_run(capsys, tmp_path, monkeypatch):
    (tmp_path / "examples").symlink_to(ROOT / "examples")
    monkeypatch.chdir(tmp_path)
    scope = {}
    for block in blocks_of(text_of(REFERENCE / "library.md")):
        if block.kind == "python":
            exec(block.text, scope)  # noqa: S102
    assert scope["result"].grade is None
    assert "kiwa" in capsys.readouterr().out
    assert scope["graded"].shape[0] == 2
    assert scope["question"] is not None
    written = {"results.xlsx", "offer.html", "certificate.html", "labels.html", "points.svg"}
    assert written <= {path.name for path in tmp_path.iterdir()}


def test_ci_installs_the_wheel_as_the_guide_says():
    line = f"pipx install koirules-{version('koirules')}-py3-none-any.whl"
    assert line in text_of(GUIDE / "install.md")
    assert line in text_of(ROOT / ".ci" / "run")
