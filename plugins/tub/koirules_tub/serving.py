"""Starts the server, and prints where it is."""

from __future__ import annotations

import io
import socket
from pathlib import Path
from typing import TYPE_CHECKING

import click
import segno
import uvicorn

from koirules_tub.server import Tub, application
from koirules_tub.store import Store

if TYPE_CHECKING:
    from koirules import Standard

CAUTIONS = (
    "Unplug pumps, heaters and lights before hands go into the water, and keep this machine dry and away from the tub.",
    "Wet hands, a short look, shade and moving air for each fish.",
)


def serve(standard: Standard, store: Store, key: str, host: str, port: int, names: tuple[str, ...]) -> None:
    """Serve until somebody ends it. Ends with status 2 where the address cannot be had."""
    listening = socket.socket(socket.AF_INET6 if ":" in host else socket.AF_INET, socket.SOCK_STREAM)
    listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        listening.bind((host, port))
    except OSError as error:
        click.echo(f"{host}:{port} cannot be used: {error.strerror}. Give another --host or --port.", err=True)
        raise SystemExit(2) from None
    port = listening.getsockname()[1]
    shown = f"[{host}]" if ":" in host else host
    address = f"http://{shown}:{port}/in/{key}"
    hosts = frozenset(f"{name}:{port}" for name in (shown, "localhost", "127.0.0.1", *names))
    click.echo(f"{standard.title}, edition {standard.edition}\n")
    click.echo(code_of(address))
    click.echo(f"{address}\n")
    for caution in CAUTIONS:
        click.echo(caution)
    click.echo(f"\nEverything is kept in {store.path}. End with Ctrl+C.")
    config = uvicorn.Config(
        application(standard, store, key, hosts), log_level="warning", access_log=False, server_header=False
    )
    try:
        uvicorn.Server(config).run(sockets=[listening])
    finally:
        store.close()


def code_of(address: str) -> str:
    """An address as a code to scan, in half blocks that fit a terminal."""
    out = io.StringIO()
    segno.make(address, micro=False, error="l").terminal(out, compact=True, border=2)
    return out.getvalue()


def written_csv(standard: Standard, store: Store, path: Path) -> int:
    """Write the records so far; the exit status."""
    if path.exists():
        click.echo(f"{path} is there already. Give another name.", err=True)
        return 2
    path.write_text(Tub(standard, store).csv_text(), encoding="utf-8")
    store.close()
    click.echo(f"Wrote {path}.")
    return 0
