// The page reads without this. It adds: show only some fish, order them, find one, set two or three side by side.
"use strict";
(() => {
  const at = (id) => document.getElementById(id);
  const MOST = 3;
  const list = at("fish");
  const cards = [...list.children];
  const name = (card) => card.querySelector("h3").textContent;
  const plain = (text) => text.normalize("NFKC").toLowerCase();
  const texts = new Map();
  const make = (tag, text = "", className = "") => {
    const made = document.createElement(tag);
    made.textContent = text;
    made.className = className;
    return made;
  };

  // Show only, find, order
  const form = document.querySelector(".controls");
  const boxes = [...form.querySelectorAll("[name=grade]")];

  const textOf = (card) => {
    if (!texts.has(card)) {
      const parts = [...card.querySelectorAll("h3, .grade, .by, .course, .why, .labels, details")];
      texts.set(card, plain(parts.map((part) => part.textContent).join("\n")));
    }
    return texts.get(card);
  };
  const hasGrade = (card, wanted) => {
    const grades = card.dataset.grades.split(" ");
    return !wanted.length || wanted.some((one) => (one === "open" ? grades.length > 1 : grades.includes(one)));
  };
  const isAt = (card, stop) => !stop || (card.dataset.stops || "").split(" ").includes(stop);
  const show = () => {
    const stop = at("round") ? at("round").value : "";
    const standard = at("standard") ? at("standard").value : "";
    const wanted = boxes.filter((box) => box.checked).map((box) => box.value);
    const words = plain(at("find").value).split(/\s+/).filter(Boolean);
    let count = 0;
    for (const card of cards) {
      const there = !standard || card.dataset.standard === standard;
      card.hidden = !there || !hasGrade(card, wanted) || !isAt(card, stop) || !words.every((word) => textOf(card).includes(word));
      count += !card.hidden;
    }
    at("shown").textContent = `${count.toLocaleString("en")} of ${cards.length.toLocaleString("en")} fish shown`;
  };

  const numbers = (card, key) => (card.dataset[key] || "").split(" ").map(Number);
  const inOrder = (one, other) => Number(one.dataset.best) - Number(other.dataset.best);
  // Points of several standards are not to be compared: their fish stay apart.
  const apart = (one, other) => Number(one.dataset.standard || 0) - Number(other.dataset.standard || 0);
  const byName = new Intl.Collator("en", { numeric: true });
  const orders = {
    best: inOrder,
    recorded: (one, other) => Number(one.dataset.recorded) - Number(other.dataset.recorded),
    name: (one, other) => byName.compare(name(one), name(other)),
    score: (one, other) => apart(one, other) || numbers(other, "score")[0] - numbers(one, "score")[0],
    "-score": (one, other) => apart(one, other) || numbers(one, "score")[0] - numbers(other, "score")[0],
  };
  const sort = () => {
    const [order, place] = at("order").value.split(" ");
    const points = (one, other) => numbers(other, "sections")[place] - numbers(one, "sections")[place];
    const first = orders[order] || ((one, other) => apart(one, other) || points(one, other));
    cards.sort((one, other) => first(one, other) || inOrder(one, other));
    list.append(...cards);
  };

  const fold = (open) => {
    for (const card of cards) card.querySelector("details").open = open;
    at("unfold").setAttribute("aria-pressed", open);
    at("unfold").textContent = open ? "Close all reasons" : "Open all reasons";
  };

  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", show);
  at("order").addEventListener("change", sort);
  form.addEventListener("reset", () => setTimeout(() => { sort(); show(); }));
  at("unfold").addEventListener("click", () => fold(at("unfold").getAttribute("aria-pressed") !== "true"));
  at("print").addEventListener("click", () => window.print());

  // Side by side
  let chosen = [];
  const tell = (more = "") => {
    const ask = chosen.length === 1 ? "; choose one or two more" : "";
    at("chosen").textContent = `${more}${chosen.map(name).join(", ")}${ask}`;
    at("compare").hidden = at("clear").hidden = !chosen.length;
    at("compare").setAttribute("aria-disabled", chosen.length < 2);
  };
  const choose = (box) => {
    const card = box.closest(".fish");
    chosen = chosen.filter((one) => one !== card);
    if (box.checked && chosen.length === MOST) {
      box.checked = false;
      tell("Three at most: take one out first. ");
      return;
    }
    if (box.checked) chosen.push(card);
    tell();
  };
  const clear = () => {
    for (const card of chosen) card.querySelector(".chosen").checked = false;
    const last = chosen[chosen.length - 1];
    chosen = [];
    tell();
    if (last) last.querySelector(".chosen").focus();
  };

  const rowOf = (card, key) => [...card.querySelectorAll("[data-row]")].find((one) => one.dataset.row === key);
  // What a row says of one fish: its words without the title that stands above them, and its points.
  const cell = (row, title) => {
    const made = make("td");
    if (!row) return made;
    const parts = row.matches("tr") ? [...row.children].map((part) => part.textContent) : [row.textContent];
    if (row.dataset.row.startsWith("section ")) {
      made.append(row.querySelector("svg").cloneNode(true), make("span", parts[2]));
    } else if (row.matches("div")) {
      made.append(row.querySelector("dd").textContent);
    } else {
      const words = parts[0].startsWith(`${title}: `) ? parts[0].slice(title.length + 2) : parts[0];
      if (words !== title) made.append(words);
      if (parts[1]) made.append(make("span", parts[1], "points"));
    }
    return made;
  };
  // Drawings refer to parts of themselves by id: those of the card serve its copy too.
  const pictures = (card) => {
    const made = make("td");
    const shown = card.querySelector(".pictures");
    if (shown) made.append(shown.cloneNode(true));
    for (const part of made.querySelectorAll("[id]")) part.removeAttribute("id");
    return made;
  };
  const addRow = (body, title, cells) => {
    const texts = cells.map((one) => one.textContent);
    const seen = cells.some((one) => one.querySelector(".pictures"));
    if (!texts.some(Boolean) && !seen) return;
    const same = !seen && texts.every((text) => text === texts[0]);
    const heading = make("th", title);
    heading.colSpan = cells.length;
    heading.scope = "rowgroup";
    const rows = [make("tr", "", "title"), make("tr")];
    rows[0].append(heading);
    rows[1].append(...cells);
    for (const row of rows) row.classList.toggle("same", same);
    body.append(...rows);
  };
  const compare = () => {
    if (chosen.length < 2) {
      tell();
      return;
    }
    const table = make("table");
    const head = make("tr");
    for (const card of chosen) {
      const heading = make("th", name(card));
      heading.scope = "col";
      head.append(heading);
    }
    table.createTHead().append(head);
    const body = table.createTBody();
    addRow(body, "Grade", chosen.map((card) => make("td", card.querySelector(".grade").textContent)));
    addRow(body, "Standard", chosen.map((card) => make("td", (card.querySelector(".by") || make("p")).textContent)));
    addRow(body, "Pictures", chosen.map(pictures));
    addRow(body, "Score", chosen.map((card) => make("td", (card.querySelector(".score") || make("p")).textContent)));
    for (const row of at("rows").children) {
      const rows = chosen.map((card) => rowOf(card, row.dataset.row));
      const most = rows.map((one) => one && one.matches(".criteria tr") && one.children[2].textContent).find(Boolean);
      const title = row.textContent;
      addRow(body, most ? `${title} (at most ${most})` : title, rows.map((one) => cell(one, title)));
    }
    at("side").replaceChildren(table);
    differ();
    at("beside").showModal();
  };
  const differ = () => {
    for (const row of at("side").querySelectorAll(".same")) row.hidden = at("differing").checked;
  };

  list.addEventListener("change", (event) => event.target.matches(".chosen") && choose(event.target));
  at("compare").addEventListener("click", compare);
  at("clear").addEventListener("click", clear);
  at("close").addEventListener("click", () => at("beside").close());
  at("differing").addEventListener("change", differ);

  // A browser that goes back to the page may have kept what was ticked.
  form.reset();
  for (const box of list.querySelectorAll(".chosen")) box.checked = false;
  for (const part of document.querySelectorAll(".scripted")) part.hidden = false;
  show();
})();
