import assert from "node:assert/strict";
import { PHONE } from "../kit/browser.mjs";
import { sizers } from "../kit/sizer.mjs";

export const title = "a page keeps houses itself, in its own language, and hears of what is wrong";

export const sizes = [PHONE];

export default async function ({ page, site }) {
  await page.goto(`${site.url}embed.html`);
  await sizers(page, ["airtally-sizer"]);
  await page.evaluate(helpers);
  await keepsItself(page);
  await hearsInTime(page);
  await setEarly(page, site);
  await asChosen(page);
  await isHeard(page, site);
  await speaks(page, site);
}

/** By the event and the property: what was typed and chosen comes back, whatever a new house would begin with. */
async function keepsItself(page) {
  const back = await page.evaluate(async () => {
    const store = [];
    const one = await begun({ rules: "irc-2021" });
    one.addEventListener("airtally-change", ({ detail }) => store.push(JSON.stringify(detail.house)));
    types(one, "input", "33,3");
    types(one, "#display", "cfm", "change");
    await later(300);
    one.remove();
    const two = await begun({ rules: "irc-2021", display: "m3h" }, (sizer) => (sizer.house = JSON.parse(store.at(-1))));
    const { value } = two.shadowRoot.querySelector("input");
    const said = { value, display: two.result.display, told: store.length, kept: localStorage.length };
    two.remove();
    return said;
  });
  assert.deepEqual(back, { value: "33,3", display: "cfm", told: 1, kept: 0 });
}

/** The last letter is told of before the page hides, and before the sizer is taken off it. */
async function hearsInTime(page) {
  const told = await page.evaluate(async () => {
    const sizer = await begun({});
    const told = [];
    sizer.addEventListener("airtally-change", ({ detail }) => told.push(detail.house.house.rooms[0].entries[0].text));
    types(sizer, "input", "1");
    Object.defineProperty(document, "hidden", { value: true, configurable: true });
    document.dispatchEvent(new Event("visibilitychange"));
    delete document.hidden;
    types(sizer, "input", "12");
    sizer.remove();
    const atOnce = [...told];
    await later(300);
    return { atOnce, told };
  });
  assert.deepEqual(told, { atOnce: ["1", "12"], told: ["1", "12"] }, "each once");
}

/** A house that is set while another is on its way goes first. */
async function setEarly(page, site) {
  const address = `${site.url}slow.json`;
  let arrives;
  const waits = new Promise((done) => (arrives = done));
  await page.route(address, async (route) => {
    await waits;
    await route.fulfill({ json: await page.evaluate(() => named("slow")) });
  });
  const asked = page.waitForRequest(address);
  const shown = page.evaluate(async (src) => {
    const sizer = await begun({ src }, (sizer) => setTimeout(() => (sizer.house = named("early")), 200));
    const { name } = sizer.result;
    sizer.remove();
    return name;
  }, address);
  await asked;
  await page.waitForTimeout(400);
  arrives();
  assert.equal(await shown, "early");
}

/** Attributes begin a house; what a person chose stays until the page says `fixed`. */
async function asChosen(page) {
  const said = await page.evaluate(async () => {
    const sizer = await begun({ rules: "irc-2021", display: "cfm" });
    const seen = () => `${sizer.result.rules.id} ${sizer.result.display}`;
    const all = [seen()];
    types(sizer, "#rules", "adf-2021", "change");
    sizer.setAttribute("ask", "Ask");
    all.push(seen());
    sizer.setAttribute("display", "ls");
    all.push(seen());
    sizer.setAttribute("fixed", "");
    all.push(seen());
    sizer.remove();
    return all;
  });
  assert.deepEqual(said, ["irc-2021 cfm", "adf-2021 cfm", "adf-2021 ls", "irc-2021 ls"]);
}

/** Every refusal has its own code; what was on the screen stays. */
async function isHeard(page, site) {
  await page.route(`${site.url}broken.json`, (route) => route.fulfill({ body: "{" }));
  const heard = await page.evaluate(async (src) => {
    const faults = [];
    let alarms = 0;
    const hears = (sizer) => sizer.addEventListener("airtally-fault", ({ detail }) => {
      faults.push(detail.code);
      alarms += sizer.shadowRoot.querySelectorAll("[role=alert]").length;
    });
    const sizer = await begun({ src }, hears);
    const thrown = await Promise.all(["{", () => 1, { airtally: 9 }].map((house) => sizer.put(house).catch(({ name, code }) => `${name} ${code}`)));
    sizer.setAttribute("rules", "nonsense");
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); };
    sizer.setAttribute("keep", "mine");
    types(sizer, "input", "5");
    await later(300);
    Storage.prototype.setItem = setItem;
    const rooms = sizer.shadowRoot.querySelectorAll(".rooms li").length;
    sizer.remove();
    return { faults, thrown, rooms, alarms };
  }, `${site.url}broken.json`);
  assert.deepEqual(heard, {
    faults: ["not-json", "not-json", "not-json", "not-a-house", "not-a-house", "not-kept"],
    thrown: ["HouseError not-json", "HouseError not-json", "HouseError not-a-house"],
    rooms: 4,
    alarms: 0,
  });
}

/** English says that it is English; the page's own words are in the page's language. */
async function speaks(page, site) {
  const said = await page.evaluate(async () => {
    document.documentElement.lang = "de";
    const sizer = await begun({ heading: "Ihr Haus", ask: "Angebot holen" });
    const read = (what) => sizer.shadowRoot.querySelector(what).closest("[lang]").lang;
    const first = [".title", ".foot .main", ".lead", "input"].map(read);
    sizer.setAttribute("lang", "fr");
    const own = read(".title");
    sizer.removeAttribute("heading");
    const ours = read(".title");
    sizer.remove();
    document.documentElement.lang = "en";
    return { first, own, ours };
  });
  assert.deepEqual(said, { first: ["de", "de", "en", "en"], own: "fr", ours: "en" });
  await page.goto(`${site.url}embed.html?heading=Ihr%20Haus&lang=de`);
  assert.equal(await page.getByRole("heading", { name: "Ihr Haus" }).getAttribute("lang"), "de");
}

/** Goes into the page: a sizer with these attributes once its first result is there, and hands to type into it. */
function helpers() {
  window.later = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));
  window.begun = async (attributes, meanwhile = () => {}) => {
    const sizer = document.createElement("airtally-sizer");
    for (const [name, value] of Object.entries(attributes)) sizer.setAttribute(name, value);
    const ready = new Promise((done) => sizer.addEventListener("airtally-ready", done, { once: true }));
    document.querySelector("main").append(sizer);
    meanwhile(sizer);
    await ready;
    return sizer;
  };
  window.types = (sizer, what, text, event = "input") => {
    const field = sizer.shadowRoot.querySelector(what);
    field.value = text;
    field.dispatchEvent(new Event(event, { bubbles: true }));
  };
  window.named = (name) => {
    const { house, airtally } = document.querySelector("airtally-sizer").house;
    return { airtally, house: { ...house, name } };
  };
}
