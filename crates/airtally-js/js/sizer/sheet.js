// What a person sees: three leaves beside each other where there is room, one at a time where there is not.
import { choices } from "../index.js";
import { airLeaf, checks, tubesLeaf } from "./answers.js";
import { el } from "./el.js";
import { Rooms } from "./rooms.js";
import { choose } from "./house.js";
import { WORDS } from "./words.js";

const LEAVES = ["house", "air", "tubes"];
/** How long a screen reader is left in peace while somebody types. */
const QUIET = 900;
/** The page around may be in another language. */
const ENGLISH = { lang: "en", dir: "ltr" };

export class Sheet {
  #root;
  #hands;
  #drawn = null;
  #house = null;
  #said;
  #waits = 0;

  constructor(root, hands) {
    this.#root = root;
    this.#hands = hands;
  }

  /** Shows a house and what follows from it. The fields stay the same nodes, so that nothing is lost under the fingers. */
  show(house, result, wishes) {
    this.#house = house;
    const asked = JSON.stringify(wishes);
    if (this.#drawn?.asked !== asked) this.#draw(wishes, asked);
    const { rooms, selects, leaves, checks: place, status } = this.#drawn;
    for (const [choice, select] of Object.entries(selects)) select.value = house.house.choices[choice];
    rooms.show(house, result);
    leaves.air.replaceChildren(...airLeaf(result));
    leaves.tubes.replaceChildren(...tubesLeaf(result));
    const open = place.querySelector("details")?.open;
    place.replaceChildren(checks(result, open));
    this.#say(status, WORDS.status(result.levels.normal.total.text, result.tubes.count));
  }

  /** Says that there will be nothing. */
  fails() {
    this.#root.replaceChildren(el("p", { class: "sheet", role: "alert", ...ENGLISH }, WORDS.fails));
  }

  #draw(wishes, asked) {
    const step = this.#drawn?.sheet.dataset.step ?? "house";
    const rooms = new Rooms(wishes, (change) => this.#hands.changes(change(this.#house)));
    const selects = { rules: this.#select("rules", wishes), display: this.#select("display", wishes) };
    const leaves = { house: el("div", { class: "fields" }, this.#choices(selects, wishes), rooms.node), air: el("div"), tubes: el("div") };
    const place = el("div", { class: "checks" });
    const status = el("p", { class: "aloud", role: "status" });
    const sheet = el("div", { class: "sheet", part: "sheet", ...ENGLISH },
      heading(wishes.level, { class: "title", part: "heading", ...(wishes.heading !== null && wishes.around) }, wishes.heading ?? WORDS.heading),
      el("p", { class: "soft lead" }, WORDS.lead),
      this.#bar(),
      el("div", { class: "leaves" }, LEAVES.map((leaf) => this.#leaf(leaf, leaves[leaf], wishes))),
      place, this.#foot(wishes), status);
    this.#drawn = { asked, sheet, rooms, selects, leaves, checks: place, status };
    this.#root.replaceChildren(sheet);
    this.#goTo(step);
  }

  #leaf(leaf, content, { level }) {
    const [next, words] = { house: ["air", WORDS.toAir], air: ["tubes", WORDS.toTubes] }[leaf] ?? [];
    return el("div", { class: `leaf leaf-${leaf}`, "data-leaf": leaf },
      heading(level + 1, { class: "head", tabindex: -1 }, WORDS[leaf]), content,
      next && el("button", { type: "button", class: "main next", part: "button", click: () => this.#goTo(next, true) }, words));
  }

  #bar() {
    const button = (leaf, at) => el("button", { type: "button", class: "step", "data-to": leaf, click: () => this.#goTo(leaf, true) },
      el("span", { "aria-hidden": "true" }, String(at + 1)), ` ${WORDS[leaf]}`);
    return el("div", { class: "bar", role: "group", "aria-label": WORDS.steps }, LEAVES.map(button));
  }

  #goTo(step, moves = false) {
    const { sheet } = this.#drawn;
    sheet.dataset.step = step;
    for (const button of sheet.querySelectorAll("[data-to]")) {
      if (button.dataset.to === step) button.setAttribute("aria-current", "step");
      else button.removeAttribute("aria-current");
    }
    if (!moves) return;
    const head = sheet.querySelector(`[data-leaf=${step}] .head`);
    head.focus({ preventScroll: true });
    sheet.querySelector(".bar").scrollIntoView({ block: "nearest" });
  }

  #select(choice, { readonly }) {
    const all = { rules: choices().rules, display: choices().displays }[choice];
    return el("select", {
      id: choice, part: "field", disabled: readonly,
      change: ({ target }) => this.#hands.changes(choose(this.#house, choice, target.value)),
    }, all.map(({ id, name }) => el("option", { value: id }, name)));
  }

  #choices(selects, { fixed }) {
    if (fixed) return null;
    const field = (choice) => el("div", {}, el("label", { for: choice }, WORDS[choice]), selects[choice]);
    return el("div", { class: "pair" }, field("rules"), field("display"));
  }

  #foot({ asks, around }) {
    const ask = asks && el("button", { type: "button", class: "main", part: "button", ...around, click: () => this.#hands.asks() }, asks);
    const save = el("button", { type: "button", class: "quiet", click: () => this.#save() }, WORDS.save);
    return el("div", { class: "foot" }, el("div", { class: "buttons" }, ask, save), el("p", { class: "soft small" }, WORDS.aid));
  }

  #save() {
    const address = URL.createObjectURL(new Blob([JSON.stringify(this.#house)], { type: "application/json" }));
    el("a", { href: address, download: "house.json" }).click();
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
  }

  /** What changed, for those who cannot see it; the first time there is nothing to say. */
  #say(status, words) {
    clearTimeout(this.#waits);
    this.#said ??= words;
    if (words !== this.#said) this.#waits = setTimeout(() => (status.textContent = this.#said = words), QUIET);
  }
}

function heading(level, attributes, words) {
  return level > 6 ? el("p", { ...attributes, role: "heading", "aria-level": level }, words) : el(`h${level}`, attributes, words);
}
