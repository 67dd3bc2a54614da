"use strict";
// The page at the tub. Every entry gets its name here, goes into IndexedDB first and leaves it when the shed has saved it, so
// that it is there exactly once whatever the network does.

let words = {}, about = null, me = {}, fishOpen = [], now = "", room = "fish", last = 0, batch = new Map(), details = new Map();
let waiting = [], reachable = true, refused = "", retry = 2000, timer = 0, question = null, untold = {}, store = null;

const $ = (id) => document.getElementById(id);
const say = (key, values = {}) => Object.entries(values).reduce((text, [name, value]) => text.replace(`{${name}}`, value), words[key] ?? key);

function el(tag, attributes = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name === "on") for (const [event, act] of Object.entries(value)) made.addEventListener(event, act);
    else if (value === true) made.setAttribute(name, "");
    else if (value !== false && value !== null && value !== undefined) made.setAttribute(name, value);
  }
  made.append(...children.filter((child) => child !== null && child !== undefined && child !== false));
  return made;
}
const svg = (tag, attributes) => {
  const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  return made;
};
const tap = (text, act, attributes = {}) => el("button", { type: "button", on: { click: act }, ...attributes }, text);

function newName() {
  // crypto.randomUUID is missing where the page has no secure context, as on a plain http address.
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

// --- what stays on this phone ----------------------------------------------------------------------------------------

function openStore() {
  return new Promise((good, bad) => {
    const asked = indexedDB.open("tub", 1);
    asked.onupgradeneeded = () => { asked.result.createObjectStore("entries", { keyPath: "id" }); asked.result.createObjectStore("me"); };
    asked.onsuccess = () => good(asked.result);
    asked.onerror = () => bad(asked.error);
  });
}
function inStore(kind, mode, act) {
  return new Promise((good, bad) => {
    const transaction = store.transaction(kind, mode, mode === "readwrite" ? { durability: "strict" } : undefined);
    const asked = act(transaction.objectStore(kind));
    transaction.oncomplete = () => good(asked.result);
    transaction.onerror = transaction.onabort = () => bad(transaction.error);
  });
}
const remember = () => inStore("me", "readwrite", (kept) => kept.put({ me, fishOpen, now }, "me"));

let putting = 0; // what is on its way into the phone: until it is there, nothing is called saved
async function keepHere(entry) {
  putting += 1;
  renderSafe();
  await inStore("entries", "readwrite", (kept) => kept.put(entry)).finally(() => { putting -= 1; });
  waiting.push(entry);
  render();
  flush();
  return entry;
}
async function enter(kind, body, fish = now) {
  const entry = { id: newName(), order: Date.now(), kind, fish: kind === "lot" ? "" : fish, sorter: me.sorter, look: lookOf(fish), body, entered: new Date().toISOString() };
  return keepHere(entry);
}
async function keepPhoto(file, fish = now) {
  const entry = { id: newName(), order: Date.now(), kind: "photograph", fish, sorter: me.sorter, look: lookOf(fish), body: {}, file };
  return keepHere(entry);
}
function lookOf(fish) { return me.looks?.[fish] ?? 1; }

let flushing = false;
async function flush() {
  if (flushing || refused || !waiting.length) return;
  flushing = true;
  clearTimeout(timer);
  try {
    while (waiting.length) {
      const first = waiting[0];
      const some = first.kind === "photograph" ? [first] : waiting.slice(0, waiting.findIndex((one) => one.kind === "photograph") + 1 || 100).filter((one) => one.kind !== "photograph").slice(0, 100);
      const answer = first.kind === "photograph"
        ? await fetch(`/photographs/${first.id}?${new URLSearchParams({ fish: first.fish, sorter: first.sorter, look: first.look })}`, { method: "PUT", body: first.file })
        : await fetch("/enter", { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify({ entries: some.map(({ file, order, ...entry }) => entry) }) });
      if (answer.status === 429 || answer.status >= 500) throw new Error("busy");
      const told = await answer.json().catch(() => ({}));
      if (!answer.ok) {
        refused = told.problem ?? answer.statusText;
        if (answer.status === 403) throw new Error("locked");
        reachable = true; flushing = false; render();
        return;
      }
      refused = "";
      const saved = new Set(told.saved);
      for (const id of saved) await inStore("entries", "readwrite", (kept) => kept.delete(id));
      waiting = waiting.filter((one) => !saved.has(one.id));
      for (const fish of told.fish ?? []) details.set(fish.fish, fish);
      reachable = true; retry = 2000;
      render();
    }
  } catch {
    reachable = false;
    timer = setTimeout(flush, retry);
    retry = Math.min(retry * 1.6, 20000);
    render();
  }
  flushing = false;
}

async function look() {
  try {
    const answer = await fetch(`/batch?since=${last}`);
    if (!answer.ok) throw new Error();
    const told = await answer.json();
    const wasAway = !reachable;
    reachable = true;
    if (told.last !== last) {
      last = told.last;
      for (const row of told.fish) {
        batch.set(`${row[0]}\n${row[1]}\n${row[2]}`, row);
        if (row[0] === now && row[1] !== me.sorter) fetchFish(now);
      }
      if (room !== "fish") render();
    }
    if (wasAway) render();
    flush();
  } catch { if (reachable) { reachable = false; render(); } }
  setTimeout(look, document.hidden ? 15000 : 3000);
}
async function fetchFish(name) {
  try {
    const answer = await fetch(`/fish/${encodeURIComponent(name)}`);
    if (answer.ok) { details.set(name, await answer.json()); render(); }
  } catch { /* the line about the shed says so */ }
}

// --- rendering -------------------------------------------------------------------------------------------------------

const gradeOf = (titles) => titles.length > 2 ? say("to", { best: titles[0], worst: titles.at(-1) }) : titles.join(" or ");
const mine = (name = now) => details.get(name)?.by.filter((one) => one.sorter === me.sorter).sort((a, b) => b.look - a.look)[0];

const placed = new WeakMap();
function place(target, nodes) {
  // What looks the same stays, so that no button goes away under a thumb.
  const made = el("div", {}, ...nodes), text = made.innerHTML;
  if (placed.get(target) === text) return;
  placed.set(target, text);
  target.replaceChildren(...made.childNodes);
}
function render() {
  const held = document.activeElement?.id;
  place($("rooms"), ["fish", "second", "shed"].map((key) => tap(say(key), () => { room = key; if (key !== "fish") loadSelection(); render(); }, { "aria-pressed": String(room === key) })));
  $("line-form").hidden = room !== "fish" || !now || !me.sorter;
  document.querySelector("label[for=line]").textContent = say("line");
  $("line").placeholder = say("line");
  $("say").textContent = say("say");
  renderSafe();
  renderTabs();
  renderGrade();
  const main = $("main");
  if (!me.sorter) place(main, startPage());
  else if (room === "fish") place(main, now ? fishPage() : pickPage());
  else if (room === "second") place(main, secondPage());
  else place(main, shedPage());
  if (held && $(held) && document.activeElement?.id !== held) $(held).focus({ preventScroll: true });
}
function renderSafe() {
  const line = $("safe"), n = waiting.length;
  line.className = n || putting || !reachable ? "only-here" : "";
  if (putting) { line.textContent = "…"; return; }
  line.textContent = n ? say("only-here", { n }) : reachable ? (me.sorter ? say("saved") : "") : say("only-here", { n: 0 });
}
function renderTabs() {
  $("fish-tabs").hidden = !me.sorter || room !== "fish";
  place($("fish-tabs"), [...fishOpen.map((name) => tap(name, () => show(name), { "aria-pressed": String(name === now) })), tap("+", () => { now = ""; question = null; render(); $("name")?.focus(); }, { "aria-label": say("next") })]);
}
function renderGrade() {
  const top = $("grade"), fish = mine();
  if (!me.sorter || room !== "fish" || !now) { top.replaceChildren(about ? about.title : ""); return; }
  if (!fish) { top.replaceChildren(now, el("span", { class: "more" }, waiting.some((one) => one.fish === now) ? say("only-here", { n: waiting.length }) : "")); return; }
  const [low, high] = (fish.score ?? [0, 100]).map(Math.round);
  const points = low === high ? say("point", { low }) : say("points", { low, high });
  top.replaceChildren(`${now}: ${gradeOf(fish.grades)}`, el("span", { class: "more" }, [points, fish.hangs.length ? say("hangs", { what: fish.hangs.join(", ") }) : "", fish.verdict ? say("verdict", { what: fish.verdict }) : ""].filter(Boolean).join(". ")), ...fish.faults.slice(0, 2).map((fault) => el("span", { class: "fault" }, fault)));
}
function startPage() {
  return [el("h1", {}, about?.title ?? ""), el("p", { class: "warn" }, say("caution")), el("form", { on: { submit: begin } }, el("label", { for: "who" }, say("who")), el("input", { id: "who", required: true, maxlength: 60, autocomplete: "off", value: me.sorter ?? "" }), el("h2", {}, say("lot")), el("label", { for: "lot" }, say("lot-line")), el("input", { id: "lot", maxlength: 400, autocapitalize: "none" }), el("p", {}, el("button", { class: "act", type: "submit" }, say("start"))))];
}
async function begin(event) {
  event.preventDefault();
  me.sorter = $("who").value.trim().slice(0, 60);
  if (!me.sorter) return;
  await remember();
  const lot = $("lot").value.trim();
  if (lot) await enter("lot", { text: lot }, "");
  render();
  $("name")?.focus();
}
function pickPage() {
  const numbers = [...batch.values()].map((row) => +row[0]).concat(fishOpen.map(Number)).filter(Number.isFinite);
  const next = String(Math.max(0, ...numbers) + 1);
  return [el("h1", {}, say("next")), el("form", { on: { submit: (event) => { event.preventDefault(); const name = $("name").value.trim(); if (name) show(name.slice(0, 80)); } } }, el("label", { for: "name" }, say("name")), el("input", { id: "name", value: next, maxlength: 80, required: true, autocapitalize: "none", enterkeyhint: "go" }), el("p", {}, el("button", { class: "act", type: "submit" }, say("open")))), el("p", { class: "note" }, about.lot.join("; "))];
}
async function show(name) {
  now = name; question = null; room = "fish";
  if (!fishOpen.includes(name)) fishOpen.push(name);
  fishOpen = fishOpen.slice(-6);
  await remember();
  render();
  if (!details.has(name)) fetchFish(name);
  window.scrollTo(0, 0);
}
function fishPage() {
  const fish = mine(), parts = [];
  const others = details.get(now)?.by.filter((one) => one.sorter !== me.sorter) ?? [];
  if (refused) parts.push(el("p", { class: "warn", role: "alert" }, say("problem", { what: refused }), " ", tap(say("skip"), dropFirst)));
  if (!reachable || (waiting.length && refused)) parts.push(el("p", { class: "warn" }, say("why-only")));
  parts.push(el("h1", { class: "hidden" }, now));
  parts.push(chipsOf(fish));
  for (const wrong of fish?.wrong ?? []) parts.push(el("p", { class: "warn", role: "alert" }, wrong));
  parts.push(el("p", { class: "row" }, tap(say("draw"), openBoard, { hidden: !about.map, id: "draw" }), photoButton(), tap(say("matters"), askNext, { id: "matters" }), tap(say(fish?.done ? "again" : "done"), () => finish(fish), { class: "act", id: "done" })));
  if (question) parts.push(buttonsOf(question, fish, true));
  const pictures = details.get(now)?.photographs ?? [];
  if (pictures.length) parts.push(el("div", { class: "photos" }, ...pictures.map(([id]) => el("img", { src: `/photographs/${id}`, alt: now }))));
  parts.push(el("h2", {}, say("buttons")), ...about.buttons.map((one) => buttonsOf(one, fish)));
  if (others.length) parts.push(el("p", { class: "note" }, say("two-say")), el("div", { class: "two" }, ...others.map((one) => el("section", {}, el("h2", {}, say("other", { who: one.sorter })), el("p", {}, gradeOf(one.grades)), el("p", { class: "note" }, Object.entries(one.record).map(([name, value]) => `${name} ${value}`).join("; "))))));
  return parts;
}
function chipsOf(fish) {
  const chips = (fish?.chips ?? []).map((chip) => el("li", {}, el("button", { type: "button", class: chip.sort === "not understood" ? "unread" : "", on: { click: () => enter("strike", { entry: chip.entry, at: chip.at }) }, "aria-label": `${chip.text}: ×` }, el("span", {}, chip.text, el("small", {}, chip.sort === "not understood" ? say("unread") : chip.words)))));
  const set = Object.entries(fish?.values ?? {}).filter(([, value]) => value).map(([name, value]) => el("li", {}, el("button", { type: "button", on: { click: () => enter("set", { trait: name, value: "" }) } }, el("span", {}, value.length > 40 ? say("draw") : value, el("small", {}, titleOf(name))))));
  const still = waiting.filter((one) => one.fish === now && one.kind === "line").map((one) => el("li", {}, el("button", { type: "button", class: "waiting", disabled: true }, one.body.text)));
  return el("ul", { class: "chips" }, ...chips, ...set, ...still);
}
const titleOf = (name) => about.buttons.find((one) => one.trait === name)?.title ?? name;
async function dropFirst() {
  const first = waiting.shift();
  if (first) await inStore("entries", "readwrite", (kept) => kept.delete(first.id));
  refused = "";
  render();
  flush();
}
function pendingValue(name) {
  return waiting.filter((one) => one.fish === now && one.kind === "set" && one.body.trait === name).at(-1)?.body.value;
}
function buttonsOf(trait, fish, asked = false) {
  const has = pendingValue(trait.trait) ?? fish?.record[trait.trait] ?? "";
  const chosen = new Set(trait.several ? has.split(" ").filter(Boolean) : [has]);
  const put = (value) => { if (asked) { question = null; } enter("set", { trait: trait.trait, value }).then(() => asked && setTimeout(askNext, 0)); };
  const pick = (word) => {
    if (!trait.several || word === "none") return put(has === word ? "" : word);
    chosen.delete("none");
    chosen.has(word) ? chosen.delete(word) : chosen.add(word);
    return put(trait.words.filter((one) => chosen.has(one)).join(" "));
  };
  const parts = trait.words.map((word) => tap(word.replaceAll("_", " "), () => pick(word), { "aria-pressed": String(chosen.has(word)) }));
  if (!trait.words.length && asked) parts.push(el("form", { class: "row", on: { submit: (event) => { event.preventDefault(); put($("answer").value.trim()); } } }, el("label", { class: "hidden", for: "answer" }, say("number")), el("input", { id: "answer", inputmode: trait.number ? "decimal" : "text", placeholder: trait.unit || say("number") }), el("button", { type: "submit" }, say("enter"))));
  if (asked) parts.push(tap(say("cannot"), () => { (untold[now] ??= []).push(trait.trait); question = null; askNext(); }));
  return el("fieldset", asked ? { id: "asked" } : {}, el("legend", {}, trait.title, asked ? el("span", { class: "note" }, ` ${trait.about}`) : ""), el("div", { class: "words" }, ...parts));
}
async function askNext() {
  try {
    const answer = await fetch("/next", { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify({ fish: now, sorter: me.sorter, untold: untold[now] ?? [] }) });
    question = (await answer.json()).question ?? null;
  } catch { reachable = false; }
  render();
  $("asked")?.scrollIntoView({ block: "nearest" });
}
async function finish(fish) {
  if (fish?.done) {
    me.looks = { ...me.looks, [now]: lookOf(now) + 1 };
    await remember();
    await enter("look", {});
    return;
  }
  await enter("done", {});
  fishOpen = fishOpen.filter((name) => name !== now);
  now = "";
  await remember();
  render();
  $("name")?.focus();
}
function photoButton() {
  const input = el("input", { type: "file", accept: "image/*", capture: "environment", class: "hidden", id: "photo", on: { change: (event) => { if (event.target.files[0]) keepPhoto(event.target.files[0]); } } });
  return el("span", {}, tap(say("photo"), () => input.click()), el("label", { class: "hidden", for: "photo" }, say("photo")), input);
}

// --- drawing ---------------------------------------------------------------------------------------------------------

const WIDE = 640, TALL = 1000;
function openBoard() {
  const sheet = $("sheet"), plain = { nose: [WIDE / 2, 60], tail: [WIDE / 2, 940] };
  const half = about.stoutness * 0.9 * 880; // broader than life, so that a finger finds room
  plain.left = [WIDE / 2 - half, 60 + 8.8 * 36]; plain.right = [WIDE / 2 + half, 60 + 8.8 * 36];
  const photos = details.get(now)?.photographs ?? [];
  let frame = { ...plain }, rings = [], ring = null, taps = 4, picture = null, pending = 0;
  const board = svg("svg", { viewBox: `0 0 ${WIDE} ${TALL}`, class: "board", role: "img", "aria-label": say("draw") });
  const told = el("p", { class: "note", role: "status" }), figures = el("ul", {}), grown = el("div", {});
  const order = ["nose", "tail", "left", "right"];
  const edge = [...about.outline.map(([u, w]) => [WIDE / 2 - half * w, 60 + 8.8 * u]), ...about.outline.toReversed().map(([u, w]) => [WIDE / 2 + half * w, 60 + 8.8 * u])];
  const path = (points) => points.map(([x, y], at) => `${at ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join("") + "z";
  function draw() {
    board.replaceChildren();
    if (picture) { const image = svg("image", { width: WIDE, height: TALL, preserveAspectRatio: "xMidYMid meet" }); image.setAttribute("href", picture); board.append(image); }
    else board.append(svg("path", { d: path(edge), class: "body", "stroke-width": 4 }));
    for (const one of ring ? [...rings, ring] : rings) board.append(svg("path", { d: path(one), class: "patch", "stroke-width": 3 }));
    if (picture) for (const name of order.slice(0, taps)) board.append(svg("circle", { cx: frame[name][0], cy: frame[name][1], r: 12, class: "tap", "stroke-width": 4 }));
    told.textContent = taps < 4 ? say(`tap-${order[taps]}`) : say("ring");
  }
  const at = (event) => { const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(board.getScreenCTM().inverse()); return [point.x, point.y]; };
  board.addEventListener("pointerdown", (event) => {
    event.preventDefault();
    if (taps < 4) { frame[order[taps]] = at(event); taps += 1; draw(); return; }
    board.setPointerCapture(event.pointerId);
    ring = [at(event)];
  });
  board.addEventListener("pointermove", (event) => {
    if (!ring) return;
    const point = at(event), before = ring.at(-1);
    if (Math.hypot(point[0] - before[0], point[1] - before[1]) > 4) { ring.push(point); draw(); }
  });
  const stop = () => { if (ring && ring.length > 3) rings.push(ring); ring = null; draw(); measure(); };
  board.addEventListener("pointerup", stop);
  board.addEventListener("pointercancel", stop);
  let map = "none";
  async function measure() {
    const turn = ++pending;
    try {
      const answer = await fetch("/traced", { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify({ ...frame, patches: rings, length: mine()?.record.length ?? "" }) });
      const found = await answer.json();
      if (turn !== pending) return;
      if (!answer.ok) { told.textContent = found.problem; return; }
      map = found.map;
      figures.replaceChildren(...found.figures.slice(0, 8).map(([title, value]) => el("li", {}, `${title}: ${value}`)));
      grown.replaceChildren();
      if (found.drawing) grown.append(el("p", { class: "note" }, say("grown")), el("img", { alt: say("grown"), src: URL.createObjectURL(new Blob([found.drawing], { type: "image/svg+xml" })) }));
    } catch { told.textContent = say("why-only"); map = null; }
  }
  const use = (source) => { picture = source; rings = []; taps = source ? 0 : 4; frame = source ? {} : { ...plain }; draw(); };
  const keep = async () => {
    if (map === null) await measure();
    if (map === null) return;
    sheet.close();
    await enter("set", { trait: "hi_patches", value: rings.length ? map : "none" });
  };
  sheet.replaceChildren(el("h2", {}, say("draw")), told, board, el("p", { class: "row" }, tap(say("undo"), () => { if (taps < 4) { taps = Math.max(0, taps - 1); } else rings.pop(); draw(); measure(); }), ...photos.slice(-1).map(([id]) => tap(say("on-photo"), () => use(`/photographs/${id}`))), tap(say("clear"), () => { rings = []; draw(); measure(); }), tap(say("keep-map"), keep, { class: "act", id: "keep-map" }), tap(say("close"), () => sheet.close())), el("h2", {}, say("figures")), figures, grown);
  draw();
  sheet.showModal();
}

// --- second look and shed --------------------------------------------------------------------------------------------

let selection = [], showing = 0;
async function loadSelection() {
  try { const answer = await fetch("/selection"); if (answer.ok) selection = (await answer.json()).rounds; } catch { /* said above */ }
  render();
}
function latest() {
  const found = new Map();
  for (const row of batch.values()) { const before = found.get(row[0]); if (!before || row[2] > before[2]) found.set(row[0], row); }
  return [...found.values()];
}
const rank = (row) => { const at = about.grades.findIndex(([name]) => name === row[3][0]); return [row[3].length > 1 ? 1 : 0, at, -row[4]]; };
const inOrder = (rows) => rows.toSorted((a, b) => { const x = rank(a), y = rank(b); return x[1] - y[1] || x[0] - y[0] || x[2] - y[2] || a[0].localeCompare(b[0], undefined, { numeric: true }); });
const gradeWords = (row) => gradeOf(row[3].map((name) => about.grades.find(([one]) => one === name)?.[1] ?? name));

function secondPage() {
  const kept = inOrder(latest().filter((row) => row[3].includes(about.grades[0][0]) || row[3].includes(about.grades[1]?.[0]))), some = kept.slice(showing, showing + 3);
  const first = about.rounds[0]?.[0] ?? "";
  for (const [name] of some) if (!details.has(name)) fetchFish(name);
  const parts = [el("h1", {}, say("kept-fish"))];
  if (!kept.length) parts.push(el("p", {}, say("none-kept")));
  parts.push(el("div", { class: "pair" }, ...some.map((row) => {
    const fish = details.get(row[0]), decided = fish?.decisions?.[0];
    const picture = fish?.photographs.length ? `/photographs/${fish.photographs.at(-1)[0]}` : `/drawings/${encodeURIComponent(row[0])}`;
    return el("article", {}, el("h2", {}, row[0]), el("img", { src: picture, alt: row[0], on: { error: (event) => event.target.remove() } }), el("p", {}, gradeWords(row)), decided ? el("p", { class: "note" }, `${decided[0] || decided[1]}: ${decided[3]} (${decided[2]})`) : "", el("p", { class: "row" }, tap(say("keep"), () => decide(row[0], first, about.grades[0][0])), tap(say("pass"), () => decide(row[0], "", about.grades.at(-2)?.[0] ?? about.grades.at(-1)[0])), decided ? tap(say("back"), () => enter("decision", { round: decided[0], grade: decided[1], reason: "" }, row[0])) : "", tap(say("again"), () => reopen(row[0]))));
  })));
  if (kept.length > 3) parts.push(el("p", { class: "row" }, tap("←", () => { showing = Math.max(0, showing - 2); render(); }, { "aria-label": "before" }), tap("→", () => { showing = Math.min(kept.length - 2, showing + 2); render(); }, { "aria-label": "after" })));
  parts.push(...roundParts());
  return parts;
}
async function reopen(name) {
  me.looks = { ...me.looks, [name]: Math.max(lookOf(name), ...[...batch.values()].filter((row) => row[0] === name).map((row) => row[2])) + 1 };
  await remember();
  await show(name);
  await enter("look", {}, name);
}
function decide(fish, round, grade) {
  const sheet = $("sheet");
  const reason = el("input", { id: "reason", required: true, maxlength: 200 });
  sheet.replaceChildren(el("form", { on: { submit: async (event) => { event.preventDefault(); if (!reason.value.trim()) return; sheet.close(); await enter("decision", { round, grade: round ? "" : grade, reason: reason.value.trim() }, fish); setTimeout(loadSelection, 300); } } }, el("h2", {}, fish), el("label", { for: "reason" }, say("reason")), reason, el("p", { class: "row" }, el("button", { class: "act", type: "submit" }, say("enter")), tap(say("close"), () => sheet.close()))));
  sheet.showModal();
}
function roundParts() {
  if (!selection.length) return [];
  return [el("h2", {}, say("in-rounds")), ...selection.map((one) => one.problem ? el("p", { class: "warn" }, one.problem) : el("p", {}, `${one.title}: ${one.kept.length} ${say("kept")}${one.kept.length ? ` (${one.kept.slice(0, 30).join(", ")})` : ""}${one.tied.length ? `; ${say("tied")}: ${one.tied.join(", ")}` : ""}${one.places > 0 ? `; ${say("left", { n: one.places })}` : ""}`))];
}
function shedPage() {
  const rows = inOrder(latest()), counts = new Map();
  for (const row of rows) { const key = row[3].length === 1 ? gradeWords(row) : say("not-settled"); counts.set(key, (counts.get(key) ?? 0) + 1); }
  return [el("h1", {}, about.title), el("h2", {}, say("totals")), el("p", {}, `${rows.length} ${say("fish").toLowerCase()}. ${[...counts].map(([name, n]) => `${name} ${n}`).join(", ")}`), ...roundParts(), el("p", { class: "row" }, el("a", { class: "button", href: "/results.html" }, say("page")), el("a", { class: "button", href: "/records.csv" }, say("csv")), el("a", { class: "button", href: "/records.xlsx" }, say("xlsx"))), el("h2", {}, say("order")), el("div", { class: "scroll", tabindex: 0, role: "region", "aria-label": say("order") }, el("table", {}, el("tbody", {}, ...rows.slice(0, 300).map((row) => el("tr", {}, el("th", { scope: "row" }, row[0]), el("td", {}, gradeWords(row)), el("td", {}, row[4] === row[5] ? Math.round(row[4] / 100) : `${Math.round(row[4] / 100)}–${Math.round(row[5] / 100)}`), el("td", {}, row[1]))))))];
}

// --- start -----------------------------------------------------------------------------------------------------------

async function start() {
  words = await (await fetch("/words.json")).json();
  store = await openStore();
  const kept = await inStore("me", "readonly", (all) => all.get("me"));
  if (kept) ({ me, fishOpen, now } = kept);
  waiting = (await inStore("entries", "readonly", (all) => all.getAll())).sort((a, b) => a.order - b.order);
  about = await (await fetch("/about")).json();
  $("line-form").addEventListener("submit", async (event) => {
    event.preventDefault();
    const text = $("line").value.trim();
    if (!text) return;
    $("line").value = "";
    await enter("line", { text });
  });
  addEventListener("online", flush);
  document.addEventListener("visibilitychange", () => { if (!document.hidden) flush(); });
  render();
  if (now) fetchFish(now);
  flush();
  look();
}
start();
