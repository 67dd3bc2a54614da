"""A server of the tub, and phones that look at it: a real Chromium under a made-up name, so that there is no secure context."""

from __future__ import annotations

import shutil
import socket
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import httpx
import pytest
import uvicorn
from attrs import define
from koirules_tub.access import key_of
from koirules_tub.server import application
from koirules_tub.store import Store
from playwright.sync_api import Browser, BrowserContext, sync_playwright

import koirules

NAME = "shed.test"
PHONE = {"width": 360, "height": 740}


@define
class Shed:
    """A running server. stop and start keep its port, as after a restart of the laptop."""

    path: Path
    port: int
    key: str
    standard: koirules.Standard
    server: uvicorn.Server | None = None
    thread: threading.Thread | None = None

    @property
    def address(self) -> str:
        return f"http://{NAME}:{self.port}"

    @property
    def door(self) -> str:
        return f"{self.address}/in/{self.key}"

    def start(self) -> None:
        store = Store(self.path)
        hosts = frozenset({f"{NAME}:{self.port}", f"127.0.0.1:{self.port}"})
        made = application(self.standard, store, self.key, hosts)
        config = uvicorn.Config(made, host="127.0.0.1", port=self.port, log_level="error", lifespan="off")
        self.server = uvicorn.Server(config)
        self.thread = threading.Thread(target=self.server.run, daemon=True)
        self.thread.start()
        for _ in range(800):
            if self.server.started:
                return
            time.sleep(0.025)
        raise TimeoutError

    def stop(self) -> None:
        assert self.server is not None
        assert self.thread is not None
        self.server.should_exit = True
        self.server.force_exit = True
        self.thread.join(20)

    @contextmanager
    def client(self) -> Iterator[httpx.Client]:
        """A client that has the key."""
        address = f"http://127.0.0.1:{self.port}"
        with httpx.Client(base_url=address, headers={"origin": address}, timeout=30) as made:
            assert made.get(f"/in/{self.key}").status_code == 200
            yield made


def free_port() -> int:
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        return int(found.getsockname()[1])


@pytest.fixture(scope="session")
def standard() -> koirules.Standard:
    return koirules.load_standard("tosai_kohaku")


@pytest.fixture
def shed(tmp_path: Path, standard: koirules.Standard) -> Iterator[Shed]:
    made = Shed(tmp_path / "autumn.tub", free_port(), key_of(tmp_path / "autumn.tub"), standard)
    made.start()
    yield made
    made.stop()


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    chromium = shutil.which("chromium") or shutil.which("google-chrome")
    if chromium is None:
        pytest.skip("Chromium is not installed")
    quiet = ("gpu", "background-networking", "component-update", "sync")
    args = ["--no-sandbox", "--no-first-run", *(f"--disable-{one}" for one in quiet)]
    with sync_playwright() as playwright:
        rule = f"--host-resolver-rules=MAP {NAME} 127.0.0.1"
        made = playwright.chromium.launch(executable_path=chromium, args=[*args, rule])
        yield made
        made.close()


NewPhone = Callable[..., BrowserContext]


@pytest.fixture
def phone(browser: Browser) -> Iterator[NewPhone]:
    opened: list[BrowserContext] = []

    def made(viewport: dict[str, int] | None = None) -> BrowserContext:
        one = browser.new_context(viewport=viewport or PHONE, has_touch=True, is_mobile=True, device_scale_factor=2)
        opened.append(one)
        return one

    yield made
    for one in opened:
        one.close()
