// <airtally-sizer>: from rooms to airflow to tubes, inside any page. Attributes, events and methods are in sizer.d.ts.
import { start, tally } from "./index.js";
import { cells } from "./sizer/csv.js";
import { begin, choose } from "./sizer/house.js";
import { forget, kept, keep } from "./sizer/kept.js";
import { look } from "./sizer/look.js";
import { Sheet } from "./sizer/sheet.js";

/** How long after the last key the host hears of a change. */
const SETTLED = 150;

/** Without a page, as on a server, there is a class and no element. */
const Element = globalThis.HTMLElement ?? class {};

export class Sizer extends Element {
  static observedAttributes = ["rules", "display", "readonly", "fixed", "ask", "heading", "heading-level", "src"];

  #house = null;
  #result = null;
  #sheet = null;
  #later = 0;
  #done;
  #ready = new Promise((done) => (this.#done = done));

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
    this.#open().catch((reason) => this.#fault(reason));
  }

  disconnectedCallback() {
    clearTimeout(this.#later);
    this.#store();
  }

  attributeChangedCallback(name, before, after) {
    if (!this.#result || before === after) return;
    if (name === "src") this.#fetched(after).then((house) => this.#take(house)).catch((reason) => this.#fault(reason));
    else this.#take(this.#house);
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
      this.#take(typeof house === "string" ? JSON.parse(house) : structuredClone(house));
      clearTimeout(this.#later);
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

  async #open() {
    await start();
    if (this.#result) return;
    const [name, source] = [this.getAttribute("keep"), this.getAttribute("src")];
    const own = kept(name);
    for (const house of [this.#house, own, source && this.#fetched(source), begin()]) {
      if (await this.#opens(house, () => house === own && forget(name))) return;
    }
  }

  /** Whether this is a house; one that is none is told of. */
  async #opens(house, otherwise) {
    try {
      const opened = await house;
      if (opened) this.#take(opened);
      return Boolean(opened);
    } catch (reason) {
      otherwise();
      this.#fault(reason);
      return false;
    }
  }

  async #fetched(source) {
    const answer = await fetch(new URL(source, document.baseURI), { credentials: "omit" });
    if (!answer.ok) throw new Error(`${answer.status} for ${source}`);
    return answer.json();
  }

  /** Shows a house of somebody's, with what the host has settled by attributes. */
  #take(house) {
    tally(house);
    const settled = ["rules", "display"].filter((name) => this.hasAttribute(name));
    this.#show(settled.reduce((house, name) => choose(house, name, this.getAttribute(name)), house));
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
    });
    if (!first) return;
    this.#done();
    this.#tell("ready", {});
  }

  /** A person changed the house. */
  #changed(house) {
    this.#show(house);
    clearTimeout(this.#later);
    this.#later = setTimeout(() => {
      this.#store();
      this.#tell("change", this.#now());
    }, SETTLED);
  }

  #store() {
    if (this.#house) keep(this.getAttribute("keep"), this.#house);
  }

  #now() {
    return { house: this.house, result: this.result };
  }

  #fault(reason) {
    const { code = "not-loaded", message, path = "", hint = "" } = reason;
    if (!this.#result) this.#sheet.fails();
    this.#tell("fault", { code, message, path, hint });
  }

  #tell(what, detail) {
    this.dispatchEvent(new CustomEvent(`airtally-${what}`, { bubbles: true, composed: true, detail }));
  }
}

if (globalThis.customElements && !customElements.get("airtally-sizer")) customElements.define("airtally-sizer", Sizer);
