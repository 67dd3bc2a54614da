"""How fast an entry is answered where the batch has 5,000 fish: `python tests/benchmarks/tub/speed.py [FISH]`. Median of 100."""

from __future__ import annotations

import secrets
import sys
import tempfile
import time
from pathlib import Path
from statistics import median

ROOT = Path(__file__).parents[3]
sys.path.insert(0, str(ROOT / "plugins" / "tub"))

from koirules_tub.server import application
from koirules_tub.store import Entry, Store
from starlette.testclient import TestClient

import koirules


def main(count: int) -> None:
    with tempfile.TemporaryDirectory() as folder:
        store = Store(Path(folder) / "autumn.tub")
        app = application(koirules.load_standard("tosai_kohaku"), store, "key", frozenset({"testserver"}))
        lines = ("nidan, outline good, 14 cm", "sandan, kiwa sharp, 2 shimi", "ippon, odome 5 %, lustre good")
        with store.change() as db:
            store.add(
                Entry(secrets.token_hex(12), str(at), "Mika", 1, "line", {"text": lines[at % 3]})
                for at in range(1, count + 1)
            )
            db.executemany(
                "INSERT INTO looks VALUES (?, 'Mika', 1, '{}', '', '[]', '[\"keep\"]', 0, 10000, '[]', 1)",
                ((str(at),) for at in range(1, count + 1)),
            )
        client = TestClient(app, headers={"origin": "http://testserver"})
        client.get("/in/key")
        times = []
        for at in range(101):
            entry = {"id": secrets.token_hex(12), "fish": str(at + 1), "sorter": "Mika", "look": 1, "kind": "line"}
            start = time.perf_counter()
            answer = client.post(
                "/enter", json={"entries": [{**entry, "body": {"text": "tail stem strong, white good"}}]}
            )
            times.append(time.perf_counter() - start)
            if answer.status_code != 200:
                sys.exit(answer.text)
        print(
            f"{count} fish: an entry is answered in {median(times[1:]) * 1000:.0f} ms (slowest {max(times[1:]) * 1000:.0f})"
        )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 5000)
