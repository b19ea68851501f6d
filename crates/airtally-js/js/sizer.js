// <airtally-sizer>: from rooms to airflow to tubes, inside any page. Attributes, events and methods are in sizer.d.ts.
import { start, tally } from "./index.js";
import { cells } from "./sizer/csv.js";
import { begin, choose } from "./sizer/house.js";
import { forget, kept, keep } from "./sizer/kept.js";
import { look } from "./sizer/look.js";
import { alone } from "./sizer/paper.js";
import { Sheet } from "./sizer/sheet.js";

/** How long after the last key the host hears of a change. */
const SETTLED = 150;

/** What attributes choose in a house. */
const CHOICES = ["rules", "display"];

/** Without a page, as on a server, there is a class and no element. */
const Element = globalThis.HTMLElement ?? class {};

export class Sizer extends Element {
  static observedAttributes = [...CHOICES, "readonly", "fixed", "ask", "heading", "heading-level", "lang", "src"];

  #house = null;
  #result = null;
  #sheet = null;
  #later = 0;
  #done;
  #ready = new Promise((done) => (this.#done = done));
  #hidden = () => document.hidden && this.#settle();

  constructor() {
    super();
    const root = this.attachShadow({ mode: "open" });
    root.adoptedStyleSheets = [look()];
    this.#sheet = new Sheet(root, { changes: (house) => this.#changed(house), asks: () => this.#tell("ask", this.#now()) });
  }

  connectedCallback() {
    // Set before the element was known to the page: its own setter has not run yet.
    if (Object.hasOwn(this, "house")) {
      const { house } = this;
      delete this.house;
      this.house = house;
    }
    document.addEventListener("visibilitychange", this.#hidden);
    this.#open().catch((reason) => {
      this.#sheet.fails();
      this.#fault(reason);
    });
  }

  disconnectedCallback() {
    document.removeEventListener("visibilitychange", this.#hidden);
    this.#settle();
  }

  attributeChangedCallback(name, before, after) {
    if (!this.#result || before === after) return;
    if (name === "src") this.#follow(after).catch((reason) => this.#fault(reason));
    else this.#again(name === "fixed" ? CHOICES : [name]);
  }

  /** The house as a file; what was typed stands in it as it was typed. */
  get house() {
    return this.#house && structuredClone(this.#house);
  }

  set house(house) {
    if (this.#result) this.put(house).catch(() => {});
    else this.#house = structuredClone(house);
  }

  /** What follows from it; `null` until the program is there. */
  get result() {
    return this.#result && structuredClone(this.#result);
  }

  async take() {
    await this.#ready;
    return this.house;
  }

  async put(house) {
    await start();
    try {
      this.#take(house);
      this.#later = clearTimeout(this.#later);
    } catch (reason) {
      this.#fault(reason);
      throw reason;
    }
    await this.#ready;
    return this.result;
  }

  async check() {
    await this.#ready;
    return this.result.issues;
  }

  async csv() {
    await this.#ready;
    return cells(this.#result);
  }

  async print() {
    await this.#ready;
    addEventListener("afterprint", alone(this), { once: true });
    globalThis.print();
  }

  async #open() {
    await start();
    if (this.#result) return;
    const [name, source] = [this.getAttribute("keep"), this.getAttribute("src")];
    const ways = [
      [() => this.#house],
      [() => kept(name), () => forget(name)],
      [() => source && this.#fetched(source)],
      [() => this.#chosen(begin(), CHOICES)],
    ];
    for (const way of ways) if (await this.#opens(...way)) return;
    this.#sheet.fails();
  }

  /** Whether there is a house this way; one that is none is told of. What the page gave in the meantime goes first. */
  async #opens(give, otherwise) {
    try {
      const house = await give();
      if (house && !this.#result) this.#take(this.#house ?? house);
      return Boolean(house);
    } catch (reason) {
      this.#house = null;
      otherwise?.();
      this.#fault(reason);
      return false;
    }
  }

  /** Shows the house of another address, unless there is yet another by then. */
  async #follow(source) {
    const house = source && (await this.#fetched(source));
    if (house && source === this.getAttribute("src")) this.#take(house);
  }

  async #fetched(source) {
    const answer = await fetch(new URL(source, document.baseURI), { credentials: "omit" });
    if (!answer.ok) throw new Error(`${answer.status} for ${source}`);
    return this.#chosen(read(await answer.text()), CHOICES);
  }

  /** The house with what these attributes choose. */
  #chosen(house, names) {
    const settled = CHOICES.filter((name) => names.includes(name) && this.hasAttribute(name));
    return settled.reduce((house, name) => choose(house, name, this.getAttribute(name)), house);
  }

  /** Shows a house of somebody's. */
  #take(given) {
    const house = read(given);
    this.#show(this.hasAttribute("fixed") ? this.#chosen(house, CHOICES) : house);
  }

  /** Shows the same house once more, as the page wishes it now. */
  #again(names) {
    try {
      this.#show(this.#chosen(this.#house, names));
    } catch (reason) {
      this.#fault(reason);
    }
  }

  #show(house) {
    const first = !this.#result;
    this.#result = tally(house);
    this.#house = house;
    this.#sheet.show(house, this.#result, {
      asks: this.getAttribute("ask"),
      heading: this.getAttribute("heading"),
      level: Math.min(5, Math.max(1, Number(this.getAttribute("heading-level")) || 2)),
      fixed: this.hasAttribute("fixed"),
      readonly: this.hasAttribute("readonly"),
      around: { lang: this.closest("[lang]")?.lang ?? document.documentElement.lang, dir: "auto" },
    });
    if (!first) return;
    this.#done();
    this.#tell("ready", {});
  }

  /** A person changed the house. */
  #changed(house) {
    this.#show(house);
    clearTimeout(this.#later);
    this.#later = setTimeout(() => this.#settle(), SETTLED);
  }

  /** Keeps and tells what was typed last, if that waits. */
  #settle() {
    if (!this.#later) return;
    this.#later = clearTimeout(this.#later);
    this.#store();
    this.#tell("change", this.#now());
  }

  #store() {
    if (keep(this.getAttribute("keep"), this.#house)) return;
    this.#fault({
      code: "not-kept",
      message: "The house could not be kept on this device.",
      hint: "Storage is full or forbidden here. Offer another way to keep it: airtally-change has the house.",
    });
  }

  #now() {
    return { house: this.house, result: this.result };
  }

  #fault(reason) {
    const { code = "not-loaded", message, path = "", hint = "" } = reason;
    this.#tell("fault", { code, message, path, hint });
  }

  #tell(what, detail) {
    this.dispatchEvent(new CustomEvent(`airtally-${what}`, { bubbles: true, composed: true, detail }));
  }
}

/** A copy of a house, given as an object or as text. */
function read(given) {
  tally(given);
  return JSON.parse(typeof given === "string" ? given : JSON.stringify(given));
}

if (globalThis.customElements && !customElements.get("airtally-sizer")) customElements.define("airtally-sizer", Sizer);
