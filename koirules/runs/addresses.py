"""Addresses of clusters: which ones can be meant, and whether anything answers there."""

from __future__ import annotations

import re
import socket
from collections.abc import Iterator
from time import monotonic, sleep

_HOST = r"(?:[\w.-]+|\[[0-9A-Fa-f:.]+\]):\d{1,5}"
_FORMS = {
    "dask": (re.compile(rf"(?:(?:tcp|tls|ws|wss|ucx)://)?{_HOST}"),),
    "spark": (
        re.compile(r"local|local\[(?:\d+|\*)(?:,\s*\d+)?\]"),
        re.compile(r"local-cluster\[\s*\d+\s*,\s*\d+\s*,\s*\d+\s*\]"),
        re.compile(rf"spark://{_HOST}(?:,{_HOST})*"),
        re.compile(r"yarn|k8s://\S+"),
    ),
}
LIKE = {"dask": "dask:tcp://HOST:8786", "spark": "spark:spark://HOST:7077"}
"""What to write for an address, by the kind of cluster."""


def is_address(kind: str, address: str) -> bool:
    """Whether this can be the address of a cluster of this kind."""
    hosts = list(_hosts(address))
    return any(form.fullmatch(address) for form in _FORMS[kind]) and all(0 < port < 65536 for _, port in hosts)


def why_silent(address: str, seconds: float) -> str:
    """Why no host of an address takes a connection, however often it is tried for some seconds; "" where one does."""
    hosts, until = list(_hosts(address)), monotonic() + seconds
    while hosts:
        for host in hosts:
            try:
                socket.create_connection(host, timeout=max(until - monotonic(), 0.1) / len(hosts)).close()
            except OSError as error:
                why = error.strerror or str(error) or type(error).__name__
            else:
                return ""
        if monotonic() + 0.5 > until:
            return why
        sleep(0.5)
    return ""


def _hosts(address: str) -> Iterator[tuple[str, int]]:
    scheme, parted, rest = address.rpartition("://")
    if re.fullmatch(rf"{_HOST}(?:,{_HOST})*", rest) and (parted or not scheme) and scheme != "k8s":
        for one in rest.split(","):
            host, _, port = one.rpartition(":")
            yield host.strip("[]"), int(port)
