// What follows from the house: the air by room, the tubes by room, and what to check.
import { el, figure, letter, strokes } from "./el.js";
import { WORDS } from "./words.js";

/** How much air, level by level and room by room. */
export function airLeaf({ levels: { away, normal, boost }, rules, rooms, issues }) {
  if (normal.total.value === 0) return [el("p", {}, WORDS.none)];
  const bare = issues.filter(({ code }) => code === "area-missing").length;
  return [
    el("p", { class: "answer" }, el("span", { class: "soft" }, WORDS.everyDay), figure(normal.total, "big"), el("span", {}, WORDS.alike)),
    el("p", { class: "soft small" }, WORDS.asks(rules.name, normal.required.text)),
    bare > 0 && el("p", { class: "doubt" }, WORDS.bare(bare)),
    el("dl", { class: "totals" }, total(WORDS.boost, boost.total), total(WORDS.away, away.total)),
    ...["supply", "extract"].map((way) => ledger(way, rooms, airRow)),
  ].filter(Boolean);
}

/** How many tubes, room by room. */
export function tubesLeaf({ levels: { normal }, tubes, rooms }) {
  if (normal.total.value === 0) return [el("p", {}, WORDS.none)];
  return [
    el("p", { class: "answer" }, el("span", { class: "soft" }, WORDS.inAll), figure({ text: String(tubes.count) }, "big")),
    el("p", { class: "soft small" }, WORDS.ports(tubes.name, tubes.supplyPorts, tubes.extractPorts)),
    ...["supply", "extract"].map((way) => ledger(way, rooms, tubesRow)),
  ];
}

/** What is doubtful, worst first. */
export function checks({ issues }, open = false) {
  if (issues.length === 0) return el("p", { class: "soft" }, WORDS.nothing);
  return el("details", { open }, el("summary", {}, WORDS.check(issues.length)),
    el("ul", {}, issues.map(({ severity, text, hint }) =>
      el("li", { class: severity }, text, hint && [" ", el("span", { class: "soft" }, hint)]))));
}

function total(words, quantity) {
  return el("div", {}, el("dt", {}, words), el("dd", {}, figure(quantity)));
}

function ledger(way, rooms, row) {
  const served = rooms.filter((room) => room[way]);
  return el("ul", { class: "ledger", "aria-label": WORDS[way] }, served.map((room) => row(way, room)));
}

function airRow(way, { name, gap, morning, [way]: air }) {
  const notes = [gap && WORDS.gap(gap.height.text), way === "supply" && morning && WORDS.morning(morning.text)].filter(Boolean);
  return line(way, name, notes, [figure(air.normal), el("small", { class: "soft" }, WORDS.boosted(air.boost.text))]);
}

function tubesRow(way, { name, [way]: { run } }) {
  return line(way, name, [`${run.mark} · ${run.reason}`], [el("span", { class: "count" }, strokes(run.tubes), figure({ text: String(run.tubes) }))]);
}

function line(way, name, notes, figures) {
  return el("li", {}, letter(way),
    el("span", { class: "name" }, el("span", {}, name), notes.map((note) => el("small", { class: "soft" }, note))),
    el("span", { class: "figures" }, figures));
}
