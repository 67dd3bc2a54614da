"""A catalogue: a `.po` file as the manual of GNU gettext describes it (The Format of PO Files), read as it is, uncompiled."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path

from attrs import field

from koirules.values import frozen

_LINE = re.compile(r'(?:(msgctxt|msgid_plural|msgid|msgstr)(?:\[(\d+)\])?\s+)?"((?:[^"\\]|\\.)*)"\s*$')
_ESCAPED = {"n": "\n", "t": "\t", '"': '"', "\\": "\\"}
_WIDTH = 110


class CatalogueError(Exception):
    """A file that is no catalogue. line: where, from 1; 0 where the file could not be opened."""

    def __init__(self, path: Path, line: int, cause: str) -> None:
        super().__init__(f"{path}:{line}: {cause}" if line else f"{path}: {cause}")
        self.path, self.line, self.cause = path, line, cause


@frozen
class Catalogue:
    """Translations. texts: by context ("" for none) and English text, the forms of its translation: one, or one a plural form."""

    texts: Mapping[tuple[str, str], tuple[str, ...]] = field(factory=dict, hash=False)

    def __or__(self, other: Catalogue) -> Catalogue:
        """Both; where both translate a text, the other one counts."""
        return Catalogue({**self.texts, **other.texts})


def read_catalogue(path: Path, *, untranslated: bool = False) -> Catalogue:
    """Read a catalogue; what has no translation yet, or only a doubtful one (`fuzzy`), is left out. Raises CatalogueError.

    untranslated: whether what has none is read too.
    """
    try:
        lines = path.read_text(encoding="utf-8-sig").splitlines()
    except UnicodeDecodeError:
        raise CatalogueError(path, 0, "it is not in UTF-8. Save it in UTF-8") from None
    except OSError as error:
        raise CatalogueError(path, 0, (error.strerror or "it cannot be opened").lower()) from None
    found: dict[tuple[str, str], tuple[str, ...]] = {}
    for entry in _entries(path, lines):
        forms = tuple(text for key, text in sorted(entry.items()) if key.startswith("msgstr"))
        if "fuzzy" not in entry and forms and (all(forms) or untranslated) and entry.get("msgid"):
            found[entry.get("msgctxt", ""), entry["msgid"]] = forms
    return Catalogue(found)


def _entries(path: Path, lines: Iterable[str]) -> Iterator[dict[str, str]]:
    """Each entry by its keywords, `msgstr0`, `msgstr1` … for plural forms."""
    entry: dict[str, str] = {}
    key = ""
    for number, line in enumerate(lines, 1):
        if not line.strip() or line.startswith("#"):
            if any(one.startswith("msgstr") for one in entry):
                yield entry
                entry, key = {}, ""
            if line.startswith("#,") and "fuzzy" in line:
                entry["fuzzy"] = "yes"
            continue
        found = _LINE.match(line.strip())
        if found is None:
            raise CatalogueError(
                path, number, 'this is no line of a catalogue. Write msgid "…" or msgstr "…", with \\" for " inside'
            )
        word, form, text = found.groups()
        if word in {"msgctxt", "msgid"} and any(one.startswith("msgstr") for one in entry):
            yield entry
            entry = {}
        if word is not None:
            key = f"{word}{form or ''}"
            if key in entry:
                raise CatalogueError(path, number, f"a second {word} of one entry. Begin the next entry with msgid")
            entry[key] = ""
        elif not key:
            raise CatalogueError(path, number, "a text before any msgid. Write msgid before it")
        entry[key] += re.sub(r"\\(.)", lambda one: _ESCAPED.get(one.group(1), one.group(0)), text)
    if entry:
        yield entry


def written_catalogue(language: str, texts: Iterable[tuple[str, str, str, str]]) -> str:
    """The text of a catalogue. texts: where a text stands (or ""), its context, itself, its translation ("": none)."""
    head = [
        'msgid ""',
        'msgstr ""',
        f'"Language: {language}\\n"',
        '"Content-Type: text/plain; charset=UTF-8\\n"',
    ]
    parts = ["\n".join(head)]
    for where, context, text, translated in texts:
        lines = [f"#: {where}"] if where else []
        lines += [f"msgctxt {_quoted(context)}"] if context else []
        parts.append("\n".join([*lines, f"msgid {_quoted(text)}", f"msgstr {_quoted(translated)}"]))
    return "\n\n".join(parts) + "\n"


def _quoted(text: str) -> str:
    escaped = text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n").replace("\t", "\\t")
    return f'"{escaped}"'
