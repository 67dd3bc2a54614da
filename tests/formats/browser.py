"""A real headless Chromium for tests, driven through its DevTools protocol over two pipes: no driver, no port."""

from __future__ import annotations

import base64
import json
import os
import select
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest

NAMES = ("chromium", "chromium-browser", "google-chrome", "chrome")
KEYS = {
    "Tab": ("Tab", 9, ""),
    "Enter": ("Enter", 13, "\r"),
    "Space": ("Space", 32, " "),
    "Escape": ("Escape", 27, ""),
    "ArrowDown": ("ArrowDown", 40, ""),
    "End": ("End", 35, ""),
    "Home": ("Home", 36, ""),
}
PATIENCE = 120
"""After how many seconds without a word something is wrong: a test then fails and does not hang."""

QUIET = (
    "--headless=new",
    "--remote-debugging-pipe",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-extensions",
    "--disable-component-update",
    "--disable-background-networking",
    "--no-first-run",
    "--no-default-browser-check",
)


class Browser:
    """One browser, and what it says on its own accord."""

    def __init__(self, write: int, read: int) -> None:
        self._out = os.fdopen(write, "wb", buffering=0)
        self._in = os.fdopen(read, "rb")
        self._last = 0
        self._rest = b""
        self.events: list[dict[str, Any]] = []
        self.contexts: list[str] = []

    def close_pages(self) -> None:
        """Close every page, and forget what it told."""
        while self.contexts:
            self.call("Target.disposeBrowserContext", browserContextId=self.contexts.pop())
        self.events.clear()

    def call(self, method: str, session: str | None = None, **params: Any) -> dict[str, Any]:
        """Ask for something and wait for the answer; what is told in between is kept."""
        self._last += 1
        asked = {"id": self._last, "method": method, "params": params}
        if session:
            asked["sessionId"] = session
        self._out.write(json.dumps(asked).encode() + b"\0")
        while True:
            message = self._next()
            if message.get("id") == self._last:
                assert "error" not in message, (method, message["error"])
                return message["result"]
            self.events.append(message)

    def close(self) -> None:
        """Let go of the pipes."""
        self._out.close()
        self._in.close()

    def wait(self, method: str, session: str) -> dict[str, Any]:
        """The next thing of a kind that a page tells."""
        while True:
            for place, event in enumerate(self.events):
                if event.get("method") == method and event.get("sessionId") == session:
                    return self.events.pop(place)
            self.events.append(self._next())

    def _next(self) -> dict[str, Any]:
        while b"\0" not in self._rest:
            ready, _, _ = select.select([self._in], [], [], PATIENCE)
            assert ready, f"the browser has said nothing for {PATIENCE} s"
            read = os.read(self._in.fileno(), 1 << 16)
            assert read, "the browser has ended"
            self._rest += read
        message, _, self._rest = self._rest.partition(b"\0")
        return json.loads(message)


class Page:
    """The one open page: every request, console message, error and dialog of it is remembered."""

    def __init__(self, browser: Browser, width: int, height: int, *, script: bool, touch: bool) -> None:
        self.browser = browser
        browser.close_pages()
        context = browser.call("Target.createBrowserContext")["browserContextId"]
        browser.contexts.append(context)
        target = browser.call("Target.createTarget", url="about:blank", browserContextId=context)["targetId"]
        self.session = browser.call("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
        for domain in ("Page", "Runtime", "Log", "Network", "Audits"):
            self.call(f"{domain}.enable")
        self.call(
            "Emulation.setDeviceMetricsOverride",
            width=width,
            height=height,
            deviceScaleFactor=2 if touch else 1,
            mobile=touch,
        )
        self.call("Emulation.setScriptExecutionDisabled", value=not script)

    def call(self, method: str, **params: Any) -> dict[str, Any]:
        return self.browser.call(method, self.session, **params)

    def open(self, path: Path) -> Page:
        self.call("Page.navigate", url=path.resolve().as_uri())
        self.browser.wait("Page.loadEventFired", self.session)
        return self

    def run(self, source: str) -> Any:
        """What an expression comes to in the page."""
        answer = self.call("Runtime.evaluate", expression=source, returnByValue=True, awaitPromise=True)
        assert "exceptionDetails" not in answer, answer["exceptionDetails"]
        return answer["result"].get("value")

    def press(self, *keys: str) -> None:
        """Press keys one after the other: names of keys, or letters to be typed."""
        for key in keys:
            if key in KEYS:
                code, number, text = KEYS[key]
                name = " " if key == "Space" else key
                parts = {"key": name, "code": code, "windowsVirtualKeyCode": number}
                self.call("Input.dispatchKeyEvent", type="keyDown", text=text, **parts)
                self.call("Input.dispatchKeyEvent", type="keyUp", **parts)
            else:
                self.call("Input.insertText", text=key)
        self.run("new Promise((done) => setTimeout(done))")

    def tab_to(self, selector: str, most: int = 400) -> None:
        """Press Tab until something has the focus."""
        for _ in range(most):
            if self.run(f"document.activeElement.matches({json.dumps(selector)})"):
                return
            self.press("Tab")
        raise AssertionError(f"Tab never comes to {selector}")

    def picture(self, path: Path, *, whole: bool = True) -> None:
        shot = self.call("Page.captureScreenshot", format="png", captureBeyondViewport=whole)
        path.write_bytes(base64.b64decode(shot["data"]))

    def printed(self, path: Path) -> Path:
        made = self.call("Page.printToPDF", preferCSSPageSize=True, printBackground=False)
        path.write_bytes(base64.b64decode(made["data"]))
        return path

    @property
    def told(self) -> list[str]:
        """Every error, warning, message of the console and dialog so far."""
        self.run("1")
        found = []
        for event in self.browser.events:
            if event.get("sessionId") == self.session and event["method"] in {
                "Runtime.exceptionThrown",
                "Runtime.consoleAPICalled",
                "Log.entryAdded",
                "Audits.issueAdded",
                "Page.javascriptDialogOpening",
            }:
                found.append(json.dumps(event["params"]))
        return found

    @property
    def requests(self) -> list[str]:
        """Whatever the page asked for, itself and what it carries in it left out."""
        asked = [e for e in self.browser.events if e.get("sessionId") == self.session]
        urls = [e["params"]["request"]["url"] for e in asked if e["method"] == "Network.requestWillBeSent"]
        return [url for url in urls[1:] if not url.startswith("data:")]


@contextmanager
def running_browser() -> Iterator[Browser]:
    """Start Chromium with an empty profile and no network of its own; skips where there is none on this machine."""
    program = next((found for name in NAMES if (found := shutil.which(name))), None)
    if program is None:
        pytest.skip("pages are tested in Chromium, which is not installed")
    to_browser, from_us = os.pipe()
    from_browser, to_us = os.pipe()
    # A browser that runs as root, as in a container, refuses its sandbox.
    words = [*QUIET, *(["--no-sandbox"] if os.geteuid() == 0 else [])]
    with tempfile.TemporaryDirectory() as profile:
        # The protocol is spoken on descriptors 3 and 4, whatever numbers ours have.
        start = f'exec "$0" "$@" 3<&{to_browser} 4>&{to_us}'
        process = subprocess.Popen(
            ["bash", "-c", start, program, *words, f"--user-data-dir={profile}", "about:blank"],
            pass_fds=(to_browser, to_us),
            stdin=subprocess.DEVNULL,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        os.close(to_browser)
        os.close(to_us)
        browser = Browser(from_us, from_browser)
        try:
            yield browser
        finally:
            try:
                browser.call("Browser.close")
                process.wait(20)
            except (AssertionError, OSError, subprocess.TimeoutExpired):
                process.kill()
                process.wait()
            browser.close()
