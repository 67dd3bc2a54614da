"""The server in the shed: what phones ask and say."""

from __future__ import annotations

import csv
import io
import json
import re
import subprocess
import sys
from collections.abc import AsyncIterator, Mapping
from functools import partial
from importlib.resources import files
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import TYPE_CHECKING, cast

from anyio import to_thread
from starlette.applications import Starlette
from starlette.middleware import Middleware
from starlette.requests import ClientDisconnect, Request
from starlette.responses import FileResponse, HTMLResponse, JSONResponse, PlainTextResponse, Response
from starlette.routing import Route
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from koirules_tub.access import COOKIE, WEEKS, Rate, cookie_of, is_same
from koirules_tub.photographs import MOST_BYTES as MOST_OF_A_PHOTOGRAPH
from koirules_tub.photographs import PhotographError, keep
from koirules_tub.records import table_of
from koirules_tub.sorting import Judge, latest_of
from koirules_tub.store import KINDS, Entry, Store
from koirules_tub.tracing import Frame, TracingError, map_of

if TYPE_CHECKING:
    from koirules import Standard

MOST_OF_A_BODY = 1024 * 1024
MOST_ENTRIES = 500
_ID = re.compile(r"[0-9A-Za-z-]{8,64}")
_PAGE = {"tub.js": "text/javascript", "tub.css": "text/css", "words.json": "application/json"}

_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
_HEADERS = (
    (b"content-security-policy", _POLICY.encode()),
    (b"x-content-type-options", b"nosniff"),
    (b"referrer-policy", b"no-referrer"),
    (b"cache-control", b"no-store"),
)


class Refused(Exception):  # noqa: N818 - an answer, not an error of ours
    """A request that is answered with a status and one sentence."""

    def __init__(self, status: int, words: str) -> None:
        super().__init__(words)
        self.status = status
        self.words = words


class Gate:
    """Lets through only who has the key, asks under a name of ours, comes from our own page and not too often."""

    def __init__(self, app: ASGIApp, key: str, hosts: frozenset[str]) -> None:
        self.app = app
        self.key = key
        self.cookie = cookie_of(key)
        self.hosts = hosts
        self.asks = Rate(each_second=40, burst=200)
        self.guesses = Rate(each_second=0.2, burst=10)

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer a request."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return

        async def safely(message: Message) -> None:
            if message["type"] == "http.response.start":
                message["headers"] = [*message.get("headers", ()), *_HEADERS]
            await send(message)

        answer = self._answer(Request(scope))
        await (answer or self.app)(scope, receive, safely)

    def _answer(self, request: Request) -> Response | None:
        """What is answered instead of the page; None to go on."""
        address = request.client.host if request.client else ""
        if request.headers.get("host", "") not in self.hosts:
            return PlainTextResponse("This page answers only to the address that was printed in the shed.", 421)
        if not self.asks.allows(address):
            return PlainTextResponse("Too many requests. Wait a moment.", 429, {"retry-after": "2"})
        path = request.url.path
        if path.startswith("/in/"):
            return self._let_in(path.removeprefix("/in/"), address)
        if not is_same(request.cookies.get(COOKIE, ""), self.cookie):
            return HTMLResponse(_page("locked.html"), 403)
        if request.method not in {"GET", "HEAD"} and not self._is_own(request):
            return PlainTextResponse("Another page may not write here.", 403)
        return None

    def _let_in(self, key: str, address: str) -> Response:
        if not self.guesses.allows(address):
            return PlainTextResponse("Too many tries. Wait a minute.", 429, {"retry-after": "60"})
        if not is_same(key, self.key):
            return HTMLResponse(_page("locked.html"), 403)
        # A page of ours leads on: a cookie that is SameSite=Strict does not go along with a redirect from elsewhere.
        answer = HTMLResponse(_page("in.html"))
        answer.set_cookie(COOKIE, self.cookie, max_age=WEEKS, httponly=True, samesite="strict", path="/")
        return answer

    def _is_own(self, request: Request) -> bool:
        origin = request.headers.get("origin")
        return origin == f"{request.url.scheme}://{request.headers['host']}"


def _page(name: str) -> str:
    return files("koirules_tub").joinpath("page", name).read_text(encoding="utf-8")


class Tub:
    """The answers. Everything that takes long runs on a thread of its own."""

    def __init__(self, standard: Standard, store: Store) -> None:
        self.judge = Judge(standard)
        self.standard = standard
        self.store = store
        self.folder = store.path.with_name(f"{store.path.name}.photographs")
        self._rounds: tuple[int, list[dict[str, object]]] = (-1, [])

    async def start_page(self, _: Request) -> Response:
        """The page itself."""
        return HTMLResponse(_page("tub.html"))

    async def file(self, request: Request) -> Response:
        """A script, a style, the words."""
        name = request.path_params["name"]
        if name not in _PAGE:
            return PlainTextResponse("There is no such file.", 404)
        return Response(_page(name), media_type=_PAGE[name])

    async def about(self, _: Request) -> Response:
        """The standard, its buttons, what is drawn, and the outline of a fish."""
        return JSONResponse(await to_thread.run_sync(self._about))

    def _about(self) -> dict[str, object]:
        from koirules.vocabulary.outlines import TORPEDO

        widest = max(width for _, width in TORPEDO.knots)
        return {
            "title": self.standard.title,
            "edition": self.standard.edition,
            "grades": [[name, title] for name, title in self.standard.grade_titles.items()],
            "buttons": self.judge.buttons(),
            "map": self.judge.has_map(),
            "outline": [[u, round(width / widest, 4)] for u, width in TORPEDO.knots],
            "stoutness": TORPEDO.stoutness,
            "lot": [entry.body.get("text", "") for entry in self.store.entries_of("")],
            "rounds": [[one.name, one.title.within(None)] for one in self.standard.rules.rounds],
        }

    async def batch(self, request: Request) -> Response:
        """The fish that changed after an entry, and totals."""
        since = request.query_params.get("since", "0")
        return JSONResponse(await to_thread.run_sync(self._batch, int(since) if since.isdigit() else 0))

    def _batch(self, since: int) -> dict[str, object]:
        last = self.store.last
        if last == since:
            return {"last": last, "fish": []}
        looks = self.store.looks(since=since)
        return {"last": last, "fish": [_row(look) for look in looks]}

    async def selection(self, _: Request) -> Response:
        """What the rounds make of the batch; worked out anew where something changed."""
        return JSONResponse({"rounds": await to_thread.run_sync(self._selection)})

    def _selection(self) -> list[dict[str, object]]:
        last = self.store.last
        if self._rounds[0] != last:
            self._rounds = (last, self.judge.rounds(self.store))
        return self._rounds[1]

    async def fish(self, request: Request) -> Response:
        """One fish: what each sorter says of it."""
        return JSONResponse(await to_thread.run_sync(self._fish, request.path_params["name"]))

    def _fish(self, name: str) -> dict[str, object]:
        lot = self.store.entries_of("")
        entries = self.store.entries_of(name)
        found = {}
        for sorter, look in dict.fromkeys((entry.sorter, entry.look) for entry in entries):
            own = [entry for entry in entries if (entry.sorter, entry.look) == (sorter, look)]
            carried = [
                entry for entry in entries if entry.sorter == sorter and entry.look < look and entry.kind != "done"
            ]
            told = self.judge.told([*carried, *own], lot)
            found[f"{sorter} {look}"] = {"sorter": sorter, "look": look, **self.judge.shown(name, told)}
        photographs = self.store.read("SELECT id, look FROM photographs WHERE fish = ? ORDER BY look, id", (name,))
        decided = self.store.read("SELECT round, grade, sorter, reason FROM decisions WHERE fish = ?", (name,))
        return {
            "fish": name,
            "by": list(found.values()),
            "photographs": [list(row) for row in photographs],
            "decisions": [list(row) for row in decided],
        }

    async def enter(self, request: Request) -> Response:
        """Put entries down. What is answered as saved is on the disk."""
        body = await _json(request)
        entries = [_entry(one) for one in _list(body.get("entries"), MOST_ENTRIES)]
        return JSONResponse(await to_thread.run_sync(self._enter, entries))

    def _enter(self, entries: list[Entry]) -> dict[str, object]:
        with self.store.change():
            new = self.store.add(entries)
            for fish, sorter in dict.fromkeys((entry.fish, entry.sorter) for entry in new if entry.fish):
                self._keep_looks(fish, sorter)
            for entry in new:
                if entry.kind == "decision":
                    self._decide(entry)
            if any(entry.kind == "lot" for entry in new):
                for fish, sorter in self.store.read("SELECT DISTINCT fish, sorter FROM looks"):
                    self._keep_looks(str(fish), str(sorter))
        touched = list(dict.fromkeys(entry.fish for entry in entries if entry.fish))
        return {
            "saved": [entry.id for entry in entries],
            "last": self.store.last,
            "fish": [self._fish(name) for name in touched[:3]],
        }

    def _keep_looks(self, fish: str, sorter: str) -> None:
        lot = self.store.entries_of("")
        entries = [entry for entry in self.store.entries_of(fish) if entry.sorter == sorter]
        for look in dict.fromkeys(entry.look for entry in entries if entry.kind not in {"decision", "photograph"}):
            upto = [entry for entry in entries if entry.look == look or (entry.look < look and entry.kind != "done")]
            told = self.judge.told(upto, lot)
            self.store.keep_look(self.judge.look(fish, sorter, look, told))

    def _decide(self, entry: Entry) -> None:
        name, grade = str(entry.body.get("round", "")), str(entry.body.get("grade", ""))
        self.store.db.execute("DELETE FROM decisions WHERE fish = ? AND round = ?", (entry.fish, name))
        if entry.body.get("reason"):
            self.store.db.execute(
                "INSERT INTO decisions VALUES (?, ?, ?, ?, ?)",
                (entry.fish, name, grade, entry.sorter, str(entry.body["reason"])),
            )

    async def next_question(self, request: Request) -> Response:
        """What matters next of a fish."""
        body = await _json(request)
        return JSONResponse(await to_thread.run_sync(self._next, body))

    def _next(self, body: Mapping[str, object]) -> dict[str, object]:
        fish, sorter = str(body.get("fish", "")), str(body.get("sorter", ""))
        entries = [entry for entry in self.store.entries_of(fish) if entry.sorter == sorter]
        told = self.judge.told(entries, self.store.entries_of(""))
        untold = [str(name) for name in _list(body.get("untold"), 200)]
        return {"question": self.judge.next_question(told, [name for name in untold if name in self.standard.traits])}

    async def traced(self, request: Request) -> Response:
        """A map from taps and rings of pixels, with the figures that follow and a drawing."""
        body = await _json(request)
        return JSONResponse(await to_thread.run_sync(self._traced, body))

    def _traced(self, body: Mapping[str, object]) -> dict[str, object]:
        try:
            frame = Frame(*(_point(body.get(name)) for name in ("nose", "tail", "left", "right")))
            rings = [[_point(point) for point in _list(ring, 2000)] for ring in _list(body.get("patches"), 60)]
            traced = map_of(frame, rings)
        except TracingError as error:
            raise Refused(422, str(error)) from None
        record = {"hi_patches": traced}
        length = str(body.get("length", ""))
        if (
            length
            and self.judge.graded("", {"length": length})[0] is not None
            and not self.judge.graded("", {"length": length})[1]
        ):
            record["length"] = length
        return {"map": traced, "figures": self.judge.figures(record), "drawing": self.standard.drawing(record)}

    async def photograph(self, request: Request) -> Response:
        """Keep a photograph. Its name comes from the phone, so that one that is sent twice is there once."""
        name = request.path_params["id"]
        fish, sorter = request.query_params.get("fish", ""), request.query_params.get("sorter", "")
        look = request.query_params.get("look", "1")
        if not _ID.fullmatch(name) or not fish or not look.isdigit():
            raise Refused(422, "The photograph is of no fish.")
        data = await _body(request, MOST_OF_A_PHOTOGRAPH)
        return JSONResponse(await to_thread.run_sync(partial(self._keep, name, fish, sorter, int(look), data)))

    def _keep(self, name: str, fish: str, sorter: str, look: int, data: bytes) -> dict[str, object]:
        if not self.store.read("SELECT 1 FROM photographs WHERE id = ?", (name,)):
            self.folder.mkdir(exist_ok=True)
            try:
                width, height = keep(data, self.folder / f"{name}.jpg")
            except PhotographError as error:
                raise Refused(422, str(error)) from None
            entry = Entry(f"photo-{name}"[:64], fish, sorter, look, "photograph", {"photograph": name})
            with self.store.change() as db:
                self.store.add([entry])
                db.execute(
                    "INSERT OR IGNORE INTO photographs VALUES (?, ?, ?, ?, ?, ?, ?)",
                    (name, fish, sorter, look, f"{self.folder.name}/{name}.jpg", width, height),
                )
        return {"saved": [name], "fish": [self._fish(fish)]}

    async def picture(self, request: Request) -> Response:
        """A photograph."""
        path = self.folder / f"{request.path_params['id']}.jpg"
        if not _ID.fullmatch(request.path_params["id"]) or not path.is_file():
            return PlainTextResponse("There is no such photograph.", 404)
        return FileResponse(path, media_type="image/jpeg")

    async def drawing(self, request: Request) -> Response:
        """The drawing of a fish from its map, as it is."""
        return Response(
            await to_thread.run_sync(self._drawing, request.path_params["name"]), media_type="image/svg+xml"
        )

    def _drawing(self, name: str) -> str:
        look = latest_of(self.store.looks(name)).get(name)
        return "" if look is None else self.standard.drawing(look.record, name, grown=False)

    async def table(self, request: Request) -> Response:
        """Everything so far as CSV or XLSX."""
        if request.path_params["ending"] == "xlsx":
            made = await to_thread.run_sync(self._workbook)
            kind = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
            return Response(made, media_type=kind, headers={"content-disposition": 'attachment; filename="tub.xlsx"'})
        text = await to_thread.run_sync(self.csv_text)
        return Response(
            text,
            media_type="text/csv; charset=utf-8",
            headers={"content-disposition": 'attachment; filename="tub.csv"'},
        )

    async def results(self, _: Request) -> Response:
        """The page of results, as `koirules grade … --out` writes it."""
        page = await to_thread.run_sync(self._results)
        return Response(
            page, media_type="text/html", headers={"content-disposition": 'attachment; filename="results.html"'}
        )

    def _results(self) -> str:
        with TemporaryDirectory() as folder:
            out = Path(folder) / "results.html"
            words = [
                sys.executable,
                "-m",
                "koirules",
                "grade",
                self.standard.rules.file,
                str(self.store.path),
                "--out",
                str(out),
            ]
            subprocess.run(words, capture_output=True, check=False)  # noqa: S603 - our own command, words of ours
            if not out.is_file():
                raise Refused(422, "There is nothing to show yet.")
            return out.read_text(encoding="utf-8")

    def csv_text(self) -> str:
        """Everything so far as CSV; a cell that a spreadsheet would carry out is quoted."""
        out = io.StringIO()
        csv.writer(out, lineterminator="\n").writerows(
            [[_safe(cell) for cell in row] for row in table_of(self.store.looks())]
        )
        return out.getvalue()

    def _workbook(self) -> bytes:
        import xlsxwriter

        out = io.BytesIO()
        with xlsxwriter.Workbook(
            out, {"strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
        ) as book:
            sheet = book.add_worksheet("records")
            for row, cells in enumerate(table_of(self.store.looks())):
                for column, cell in enumerate(cells):
                    sheet.write_string(row, column, str(cell))
        return out.getvalue()


def _safe(cell: object) -> object:
    return f"'{cell}" if isinstance(cell, str) and cell[:1] in {"=", "+", "-", "@", "\t", "\r"} else cell


def _row(look: object) -> list[object]:
    return [
        look.fish,
        look.sorter,
        look.look,
        list(look.possible),
        look.score_low,
        look.score_high,
        len(look.unread),
        look.verdict,
    ]  # type: ignore[attr-defined]


async def _body(request: Request, most: int) -> bytes:
    """The body of a request; never more than `most` bytes of it are held."""
    told = request.headers.get("content-length", "0")
    if not told.isdigit() or int(told) > most:
        raise Refused(413, f"That is more than {most // 1024 // 1024} MB.")
    parts, size = [], 0
    stream: AsyncIterator[bytes] = request.stream()
    async for part in stream:
        size += len(part)
        if size > most:
            raise Refused(413, f"That is more than {most // 1024 // 1024} MB.")
        parts.append(part)
    return b"".join(parts)


async def _json(request: Request) -> Mapping[str, object]:
    try:
        body = json.loads(await _body(request, MOST_OF_A_BODY))
    except (ValueError, RecursionError):
        raise Refused(400, "That is no JSON.") from None
    if not isinstance(body, dict):
        raise Refused(400, "That is no JSON object.")
    return body


def _list(value: object, most: int) -> list[object]:
    if value is None:
        return []
    if not isinstance(value, list) or len(value) > most:
        raise Refused(400, f"A list of at most {most} is expected.")
    return value


def _point(value: object) -> tuple[float, float]:
    if (
        isinstance(value, list)
        and len(value) == 2
        and all(isinstance(one, int | float) and abs(one) < 1e6 for one in value)
    ):
        return float(value[0]), float(value[1])
    raise Refused(400, "A point of two numbers is expected.")


def _entry(value: object) -> Entry:
    if not isinstance(value, dict) or value.get("kind") not in KINDS:
        raise Refused(400, "That is no entry.")
    name, look = str(value.get("id", "")), value.get("look", 1)
    fish, sorter = _text(value.get("fish")), _text(value.get("sorter"))
    body = value.get("body")
    if not _ID.fullmatch(name) or not isinstance(look, int) or not 1 <= look <= 99 or not isinstance(body, dict):
        raise Refused(400, "That is no entry.")
    if value["kind"] != "lot" and not fish:
        raise Refused(400, "The entry is about no fish.")
    if len(json.dumps(body)) > 200_000:
        raise Refused(413, "The entry is too long.")
    return Entry(
        name,
        "" if value["kind"] == "lot" else fish,
        sorter,
        look,
        str(value["kind"]),
        body,
        _text(value.get("entered")),
    )


def _text(value: object) -> str:
    """A short text in one line, without control characters."""
    plain = "".join(letter for letter in str(value or "") if letter.isprintable())
    return " ".join(plain.split())[:80]


async def _refuse(_: Request, error: Exception) -> Response:
    refused = cast("Refused", error)
    return JSONResponse({"problem": refused.words}, refused.status)


async def _gone(_: Request, __: Exception) -> Response:
    return Response(status_code=499)


def application(standard: Standard, store: Store, key: str, hosts: frozenset[str]) -> Starlette:
    """The application. hosts: the names and ports under which it answers."""
    tub = Tub(standard, store)
    routes = [
        Route("/", tub.start_page),
        Route("/about", tub.about),
        Route("/batch", tub.batch),
        Route("/selection", tub.selection),
        Route("/fish/{name:path}", tub.fish),
        Route("/enter", tub.enter, methods=["POST"]),
        Route("/next", tub.next_question, methods=["POST"]),
        Route("/traced", tub.traced, methods=["POST"]),
        Route("/photographs/{id}", tub.photograph, methods=["PUT"]),
        Route("/photographs/{id}", tub.picture),
        Route("/drawings/{name:path}", tub.drawing),
        Route("/records.{ending}", tub.table),
        Route("/results.html", tub.results),
        Route("/favicon.ico", lambda _: Response(status_code=204)),
        Route("/{name}", tub.file),
    ]
    gate = Middleware(Gate, key=key, hosts=hosts)
    return Starlette(routes=routes, middleware=[gate], exception_handlers={Refused: _refuse, ClientDisconnect: _gone})
