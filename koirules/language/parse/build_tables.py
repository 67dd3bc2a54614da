"""Makes the tables of the grammar when the wheel is built (a build hook of hatchling).

Of koirules only what the grammar is made of is imported: the build knows Lark, attrs and hatchling alone.
"""

from __future__ import annotations

import sys
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface

_ROOM = "koirules/language/parse"


class GrammarTables(BuildHookInterface):  # type: ignore[type-arg]
    """Puts `grammar.tables` into the wheel; the checkout stays as it is."""

    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        """Make the tables and name them as a file of the wheel. An editable wheel has none: its grammar may change."""
        if self.target_name != "wheel" or version == "editable":
            return
        self._folder = TemporaryDirectory()
        made = Path(self._folder.name, "grammar.tables")
        made.write_bytes(_tables(self.root))
        build_data["force_include"][str(made)] = f"{_ROOM}/grammar.tables"

    def finalize(self, version: str, build_data: dict[str, Any], artifact_path: str) -> None:  # noqa: ARG002
        """Remove what was made beside the wheel."""
        if hasattr(self, "_folder"):
            self._folder.cleanup()


def _tables(root: str) -> bytes:
    # The checkout is imported as it is: the build knows Lark, attrs and hatchling alone, and nothing more is needed.
    sys.path.insert(0, root)
    try:
        from koirules.language.parse.tables import packed_tables
    finally:
        sys.path.remove(root)
    return packed_tables()
