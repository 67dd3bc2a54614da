"""`koirules-editor`: the language server, over standard input and output."""

from __future__ import annotations

import argparse
import sys

from koirules_editor import __version__
from koirules_editor.server import make_server


def main() -> None:
    """Serve an editor until it says that it is done."""
    parser = argparse.ArgumentParser(
        "koirules-editor",
        description="A language server for rule files of koirules. An editor starts it and speaks to it over standard input "
        "and output; how to set one up is in its README.",
    )
    parser.add_argument("--version", action="version", version=__version__)
    parser.add_argument("--stdio", action="store_true", help="Accepted and not needed: some editors always say it.")
    parser.parse_args()
    spoken_to = sys.stdout.buffer
    sys.stdout = sys.stderr  # what a plugin prints must not run into the protocol
    # A request that comes while a page is looked at shall not wait for a long turn of the other thread.
    sys.setswitchinterval(0.001)
    make_server().start_io(sys.stdin.buffer, spoken_to)


if __name__ == "__main__":
    main()
