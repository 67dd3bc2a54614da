"""How an extra is installed, as a mend says it."""

from __future__ import annotations


def to_install(extra: str) -> str:
    """What to type for an extra, by its name; koirules may come from an index or from its own folder."""
    return f'pip install "koirules[{extra}]", or in the folder of koirules: .venv/bin/pip install ".[{extra}]"'
