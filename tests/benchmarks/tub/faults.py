"""Kills the server and cuts the network while two phones sort: `python tests/benchmarks/tub/faults.py [KILLS LOSSES]`, 200 each.

Two real browsers enter line after line. Nothing that a screen called saved may be lost, and nothing may be there twice.
Needs Chromium and playwright's library.
"""

from __future__ import annotations

import json
import random
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parents[3]
sys.path.insert(0, str(ROOT / "plugins" / "tub"))

import httpx
from koirules_tub.access import key_of
from koirules_tub.store import Store
from playwright.sync_api import Page, sync_playwright

NAME = "shed.test"


class Server:
    """The command in a process of its own, on one port for all its lives."""

    def __init__(self, path: Path) -> None:
        self.path = path
        with socket.socket() as found:
            found.bind(("127.0.0.1", 0))
            self.port = found.getsockname()[1]
        self.key = key_of(path)
        self.process: subprocess.Popen[bytes] | None = None

    def start(self) -> None:
        words = [sys.executable, "-m", "koirules", "tub", "tosai_kohaku", "--out", self.path]
        words += ["--host", "127.0.0.1", "--port", str(self.port), "--name", NAME]
        self.process = subprocess.Popen(words, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        for _ in range(600):
            try:
                httpx.get(f"http://127.0.0.1:{self.port}/", timeout=1)
            except httpx.HTTPError:
                time.sleep(0.05)
            else:
                return
        raise TimeoutError

    def kill(self) -> None:
        assert self.process is not None
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()


def saved_on_screen(page: Page) -> set[str]:
    """The texts of lines that the page shows as saved: understood, or as not understood by the shed."""
    return set(page.evaluate("[...details.values()].flatMap(f => f.by.flatMap(one => one.chips.map(c => c.text)))"))


def main(kills: int, losses: int) -> None:
    drawn = random.Random(3)
    chromium = shutil.which("chromium") or "chromium"
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        server = Server(Path(folder) / "autumn.tub")
        server.start()
        args = [
            "--no-sandbox",
            "--disable-gpu",
            "--disable-background-networking",
            f"--host-resolver-rules=MAP {NAME} 127.0.0.1",
        ]
        browser = playwright.chromium.launch(executable_path=chromium, args=args)
        phones = []
        for sorter in ("Mika", "Ren"):
            page = browser.new_context(viewport={"width": 360, "height": 740}).new_page()
            page.goto(f"http://{NAME}:{server.port}/in/{server.key}")
            page.fill("#who", sorter)
            page.press("#who", "Enter")
            page.fill("#name", "1")
            page.press("#name", "Enter")
            page.wait_for_selector("#line:visible")
            phones.append(page)
        events = ["kill"] * kills + ["loss"] * losses
        drawn.shuffle(events)
        entered: list[set[str]] = [set(), set()]
        acknowledged: list[set[str]] = [set(), set()]
        count = 0
        for event in events:
            for at, page in enumerate(phones):
                count += 1
                text = f"mark {count} of phone {at}"
                entered[at].add(text)
                page.evaluate(f"enter('line', {{text: {json.dumps(text)}}}, '{count // 40 + 1}')")
            time.sleep(drawn.random() * 0.2)
            for at, page in enumerate(phones):
                acknowledged[at] |= saved_on_screen(page)
            if event == "kill":
                server.kill()
                server.start()
            else:
                page = drawn.choice(phones)
                page.context.set_offline(True)
                time.sleep(drawn.random() * 0.2)
                page.context.set_offline(False)
        for page in phones:
            until = time.monotonic() + 120
            while page.evaluate("waiting.length") and time.monotonic() < until:
                time.sleep(0.1)
        browser.close()
        server.kill()
        rows = Store(server.path).read("SELECT sorter, body FROM entries WHERE kind = 'line'")
        there = [str(json.loads(str(body))["text"]) for _, body in rows]
        lost = (entered[0] | entered[1]) - set(there)
        broken = (acknowledged[0] | acknowledged[1]) - set(there)
        twice = len(there) - len(set(there))
        print(
            f"{kills} kills, {losses} losses of network: {count} lines by two phones, {len(lost)} lost, {twice} twice"
        )
        if lost or twice or broken:
            sys.exit(f"acknowledged and lost: {sorted(broken)[:5]}")


if __name__ == "__main__":
    main(*(int(word) for word in sys.argv[1:3]) if len(sys.argv) > 2 else (200, 200))
