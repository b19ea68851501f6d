// The rooms of the house: a ruled line each, with what can be typed about it.
import { choices } from "../index.js";
import { el, svg } from "./el.js";
import { add, become, entry, putBack, remove, type } from "./house.js";
import { COMMON, SYMBOLS, WORDS } from "./words.js";

export class Rooms {
  #list = el("ol", { class: "rooms" });
  #undo = el("p", { class: "undo", role: "status" });
  #rows = new Map();
  #readonly;
  #change;

  /** `change` takes a function from a house file to the next one. */
  constructor({ readonly }, change) {
    this.#readonly = readonly;
    this.#change = change;
    this.node = el("div", {}, this.#list, readonly ? null : [this.#undo, this.#adders()]);
  }

  show({ house }, { rooms, issues }) {
    const { area } = choices().displays.find(({ id }) => id === house.choices.display);
    for (const [id, row] of this.#rows) {
      if (!house.rooms.some((room) => room.id === id)) {
        row.node.remove();
        this.#rows.delete(id);
      }
    }
    house.rooms.forEach((room, at) => {
      const row = this.#rows.get(room.id) ?? this.#row(room.id);
      if (this.#list.children[at] !== row.node) this.#list.insertBefore(row.node, this.#list.children[at] ?? null);
      fill(row, room, { name: rooms[at].name, area, issues: issues.filter((issue) => issue.room === room.id) });
    });
  }

  #row(id) {
    const typed = (field) => ({ target }) => this.#change((house) => type(house, id, field, target.value, target.dataset.unit));
    const input = (field) => el("input", {
      id: `${field}-${id}`, part: "field", type: "text", inputmode: "decimal", autocomplete: "off", readonly: this.#readonly,
      "aria-describedby": `unit-${field}-${id} wrong-${field}-${id}`, input: typed(field),
    });
    const kind = el("select", {
      id: `kind-${id}`, part: "field", disabled: this.#readonly,
      change: ({ target }) => this.#change((house) => become(house, id, target.value)),
    }, choices().kinds.map(({ id, name }) => el("option", { value: id }, name)));
    const row = {
      kind, legend: el("legend", { class: "aloud" }), inputs: { area: input("area"), sleepers: input("sleepers") },
      unit: el("span", { id: `unit-area-${id}` }), usual: el("span", { id: `unit-sleepers-${id}`, class: "aloud" }),
      wrong: { area: el("p", { id: `wrong-area-${id}`, class: "wrong" }), sleepers: el("p", { id: `wrong-sleepers-${id}`, class: "wrong" }) },
      away: el("button", { type: "button", class: "away", click: () => this.#takeAway(id) }, cross()),
    };
    row.people = el("div", { class: "people" }, el("label", { for: `sleepers-${id}` }, WORDS.sleepers), row.inputs.sleepers, row.usual);
    row.node = el("li", {}, el("fieldset", {}, row.legend,
      el("div", { class: "kind" }, el("label", { for: `kind-${id}`, class: "aloud" }, WORDS.kind), kind),
      el("div", { class: "area" }, el("label", { for: `area-${id}` }, WORDS.area), el("span", { class: "entry" }, row.inputs.area, row.unit)),
      row.people, this.#readonly ? null : row.away, row.wrong.area, row.wrong.sleepers));
    this.#rows.set(id, row);
    return row;
  }

  #adders() {
    const press = (kind) => {
      this.#change((house) => add(house, kind));
      const row = [...this.#rows.values()].at(-1);
      row.inputs.area.focus();
    };
    const named = (kind) => choices().kinds.find(({ id }) => id === kind).name;
    const other = choices().kinds.filter(({ id }) => !COMMON.includes(id));
    const more = el("select", { "aria-label": WORDS.more, class: "more", change: ({ target }) => {
      press(target.value);
      target.value = "";
    } }, el("option", { value: "" }, WORDS.more), other.map(({ id, name }) => el("option", { value: id }, name)));
    return el("div", { class: "adders", role: "group", "aria-label": WORDS.add },
      COMMON.map((kind) => el("button", { type: "button", class: "add", click: () => press(kind) }, plus(), named(kind))), more);
  }

  /** Takes a room away; the way back stands below the rooms. */
  #takeAway(id) {
    const name = this.#rows.get(id).legend.textContent;
    let before;
    this.#change((house) => remove((before = house), id));
    const back = () => {
      this.#change((house) => putBack(house, before, id));
      this.#undo.replaceChildren();
      this.#rows.get(id)?.kind.focus();
    };
    const button = el("button", { type: "button", class: "quiet", click: back }, WORDS.undo);
    this.#undo.replaceChildren(WORDS.removed(name), " ", button);
    button.focus();
  }
}

function fill(row, room, { name, area, issues }) {
  const sleeps = choices().kinds.find(({ id }) => id === room.kind).sleeps;
  row.legend.textContent = name;
  row.kind.value = room.kind;
  row.away.setAttribute("aria-label", WORDS.remove(name));
  row.people.hidden = !sleeps;
  row.usual.textContent = WORDS.usual(room.kind === "main-bedroom" ? 2 : 1);
  row.inputs.sleepers.placeholder = room.kind === "main-bedroom" ? "2" : "1";
  for (const [field, unit] of [["area", area], ["sleepers", "count"]]) {
    const [typed, input] = [entry(room, field), row.inputs[field]];
    if (input.value !== (typed?.text ?? "") && input.value.trim() !== (typed?.text ?? "")) input.value = typed?.text ?? "";
    input.dataset.unit = typed?.unit ?? unit;
    const wrong = issues.find((issue) => issue.field === field);
    if (wrong) input.setAttribute("aria-invalid", "true");
    else input.removeAttribute("aria-invalid");
    row.wrong[field].textContent = wrong ? [wrong.text, wrong.hint].filter(Boolean).join(" ") : "";
  }
  row.unit.textContent = SYMBOLS[row.inputs.area.dataset.unit] ?? row.inputs.area.dataset.unit;
}

function cross() {
  return svg("svg", { viewBox: "0 0 24 24", class: "icon", "aria-hidden": "true" }, svg("path", { d: "M6 6L18 18M18 6L6 18" }));
}

function plus() {
  return svg("svg", { viewBox: "0 0 24 24", class: "icon", "aria-hidden": "true" }, svg("path", { d: "M12 5V19M5 12H19" }));
}
