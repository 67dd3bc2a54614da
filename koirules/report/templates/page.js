// The page reads without this. It adds: show only some fish, find one, order the table, set two or three side by side.
"use strict";
(() => {
  const at = (id) => document.getElementById(id);
  const MOST = 3;
  const cards = [...document.querySelectorAll(".fish")];
  const rowsOfTable = [...document.querySelectorAll("[data-fish]")];
  const name = (card) => card.querySelector(".name").textContent;
  // What the script says stands on the page, in its language; what stands in braces is filled in.
  const say = (key, values = {}) => at("words").dataset[key].replace(/\{(\w+)\}/g, (_, part) => values[part]);
  const language = document.documentElement.lang;
  const plain = (text) => text.normalize("NFKC").toLowerCase();
  const texts = new Map();
  const make = (tag, text = "", className = "") => {
    const made = document.createElement(tag);
    made.textContent = text;
    made.className = className;
    return made;
  };

  // Show only, find
  const form = document.querySelector(".controls");
  const boxes = [...form.querySelectorAll("[name=grade]")];
  const folds = [...document.querySelectorAll(".rest")];

  const textOf = (card) => {
    if (!texts.has(card)) {
      const parts = [...card.querySelectorAll(".name, .grade, .sentence, .line, .course, .points, .why")];
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
    for (const row of rowsOfTable) row.hidden = at(row.dataset.fish).hidden;
    for (const group of document.querySelectorAll(".group, .best, .rest")) group.hidden = !group.querySelector(".fish:not([hidden])");
    const narrowed = count < cards.length;
    for (const fold of folds) {
      if (narrowed && !fold.open) { fold.open = true; fold.dataset.byUs = ""; }
      if (!narrowed && "byUs" in fold.dataset) { fold.open = false; delete fold.dataset.byUs; }
    }
    at("shown").textContent = say("shown", { count: count.toLocaleString(language), all: cards.length.toLocaleString(language) });
  };

  // A table is put in order by any of its columns.
  const byName = new Intl.Collator(language, { numeric: true });
  const key = (row, column) => {
    const card = at(row.dataset.fish);
    if (column.matches(".by-score")) return Number((card.dataset.score || "0").split(" ")[0]);
    if (column.matches(".by-grade")) return card.dataset.grades.split(" ").map(Number).reduce((sum, one) => sum + one) / card.dataset.grades.split(" ").length;
    const text = row.cells[column.cellIndex].textContent.trim();
    return column.classList.contains("section") || column.cellIndex === 0 ? Number.parseFloat(text.replace(",", ".")) : text;
  };
  const order = (column) => {
    const table = column.closest("table");
    const first = column.getAttribute("aria-sort");
    const best = column.matches(".section, .by-score") ? "descending" : "ascending";
    const turn = first ? (first === "ascending" ? "descending" : "ascending") : best;
    for (const one of table.tHead.rows[0].cells) one.removeAttribute("aria-sort");
    column.setAttribute("aria-sort", turn);
    const rows = [...table.tBodies[0].rows].map((row) => [key(row, column), row]);
    rows.sort(([one], [other]) => (typeof one === "number" ? one - other : byName.compare(one, other)) * (turn === "ascending" ? 1 : -1));
    table.tBodies[0].append(...rows.map(([, row]) => row));
  };
  for (const column of document.querySelectorAll(".list thead th")) {
    const button = make("button", "");
    button.type = "button";
    button.append(...column.childNodes);
    column.append(button);
    button.addEventListener("click", () => order(column));
  }

  const fold = (open) => {
    for (const card of cards) card.querySelector(".why").open = open;
    at("unfold").setAttribute("aria-pressed", open);
    at("unfold").textContent = say(open ? "close" : "open");
  };

  // A link to a fish that is folded away opens the fold.
  const arrive = () => {
    const card = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    const around = card && card.closest(".rest");
    if (around) around.open = true;
    if (card && card.matches(".cautions")) card.open = true;
    if (card) card.scrollIntoView();
  };

  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", show);
  form.addEventListener("reset", () => setTimeout(show));
  at("unfold").addEventListener("click", () => fold(at("unfold").getAttribute("aria-pressed") !== "true"));
  at("print").addEventListener("click", () => window.print());
  window.addEventListener("hashchange", arrive);

  // Side by side
  let chosen = [];
  const tell = (more = "") => {
    const ask = chosen.length === 1 ? say("more") : "";
    at("chosen").textContent = `${more}${chosen.map(name).join(say("joint"))}${ask}`;
    // What can be done with the chosen stands where the last one was chosen.
    if (chosen.length) chosen[chosen.length - 1].querySelector(".choice").after(at("tray"));
    at("compare").hidden = at("clear").hidden = !chosen.length;
    at("compare").setAttribute("aria-disabled", chosen.length < 2);
  };
  const choose = (box) => {
    const card = box.closest(".fish");
    chosen = chosen.filter((one) => one !== card);
    if (box.checked && chosen.length === MOST) {
      box.checked = false;
      tell(say("most"));
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

  const rowOf = (card, key) => [...card.querySelectorAll("[data-r]")].find((one) => one.dataset.r === key);
  // What a row says of one fish: its words without the title that stands above them, and its points.
  const cell = (row, title) => {
    const made = make("td");
    if (!row) return made;
    const parts = row.matches("tr") ? [...row.children].map((part) => part.textContent) : [row.textContent];
    if (row.closest(".sections")) {
      const bar = row.querySelector("svg");
      if (bar) made.append(bar.cloneNode(true));
      made.append(make("span", parts[parts.length - 1]));
    } else if (row.matches("div")) {
      made.append(row.querySelector("dd").textContent);
    } else {
      const head = `${title}${say("colon")}`;
      const words = parts[0].startsWith(head) ? parts[0].slice(head.length) : parts[0];
      if (words !== title) made.append(words);
      if (parts[1]) made.append(make("span", parts[1], "points"));
    }
    return made;
  };
  // Drawings refer to parts of themselves by id: those of the card serve its copy too.
  const pictures = (card) => {
    const made = make("td");
    const shown = card.querySelector(".panel");
    if (shown && shown.childElementCount) made.append(shown.cloneNode(true));
    // A drawing that lies refers to the one that stands, which the card keeps.
    for (const part of made.querySelectorAll("[id]")) part.removeAttribute("id");
    return made;
  };
  const addRow = (body, title, cells) => {
    const texts = cells.map((one) => one.textContent);
    const seen = cells.some((one) => one.querySelector(".panel"));
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
    addRow(body, say("grade"), chosen.map((card) => make("td", card.querySelector(".grade").textContent.trim())));
    const standards = at("standard") ? [...at("standard").options] : [];
    const by = (card) => (standards.find((one) => one.value === card.dataset.standard) || make("p")).textContent;
    if (standards.length) addRow(body, say("standard"), chosen.map((card) => make("td", by(card))));
    addRow(body, say("pictures"), chosen.map(pictures));
    addRow(body, say("score"), chosen.map((card) => make("td", (card.querySelector(".score") || make("p")).textContent.trim())));
    for (const row of at("rows").children) {
      const rows = chosen.map((card) => rowOf(card, row.dataset.r));
      const most = rows.map((one) => one && one.matches(".criteria tr") && one.children[2].textContent).find(Boolean);
      const title = row.textContent;
      addRow(body, most ? say("atMost", { title, points: most }) : title, rows.map((one) => cell(one, title)));
    }
    at("side").replaceChildren(table);
    differ();
    at("beside").showModal();
  };
  const differ = () => {
    for (const row of at("side").querySelectorAll(".same")) row.hidden = at("differing").checked;
  };

  document.addEventListener("change", (event) => event.target.matches(".chosen") && choose(event.target));
  at("compare").addEventListener("click", compare);
  at("clear").addEventListener("click", clear);
  at("close").addEventListener("click", () => at("beside").close());
  at("differing").addEventListener("change", differ);

  // A browser that goes back to the page may have kept what was ticked.
  form.reset();
  for (const box of document.querySelectorAll(".chosen")) box.checked = false;
  for (const part of document.querySelectorAll(".scripted")) part.hidden = false;
  show();
  arrive();
})();
