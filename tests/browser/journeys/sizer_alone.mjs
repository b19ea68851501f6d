import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { PHONE } from "../kit/browser.mjs";
import { fillsAreas, sizers } from "../kit/sizer.mjs";

export const title = "the sizer by keyboard, and what a page can ask of it";

export default async function ({ page, site, size }) {
  await page.goto(`${site.url}embed.html`);
  const [sizer] = await sizers(page, ["airtally-sizer"]);
  await byKeyboard(page, sizer, size);
  await whatIsWrong(sizer);
  await methods(page);
  await attributes(page, site);
  await keeping(page);
}

async function byKeyboard(page, sizer, size) {
  const focused = () => page.evaluate(() => {
    const { activeElement: now } = document.activeElement.shadowRoot;
    return now.getAttribute("aria-label") ?? now.labels?.[0]?.textContent ?? now.textContent;
  });
  await sizer.getByLabel("Floor area").nth(1).fill("14,5");
  await sizer.getByRole("button", { name: "Take away: Kitchen" }).focus();
  await page.keyboard.press("Enter");
  assert.equal(await focused(), "Put it back");
  assert.equal(await sizer.getByLabel("Floor area").count(), 3);
  await page.keyboard.press("Enter");
  assert.equal(await sizer.getByLabel("Floor area").nth(1).inputValue(), "14,5", "as it was typed, where it was");
  assert.equal(await focused(), "Room");
  await sizer.getByRole("button", { name: "Utility room", exact: true }).focus();
  await page.keyboard.press("Space");
  assert.equal(await focused(), "Floor area");
  await page.keyboard.type("6");
  assert.equal(await sizer.getByLabel("Floor area").nth(4).inputValue(), "6");
  if (size === PHONE) {
    await sizer.getByRole("button", { name: "Tubes", exact: true }).press("Enter");
    assert.equal(await focused(), "Tubes");
    await sizer.getByRole("button", { name: "House", exact: true }).press("Enter");
  }
  // Said aloud once somebody stops typing.
  await sizer.getByRole("status").filter({ hasText: /m³\/h every day, \d+ tubes\./ }).waitFor({ state: "attached" });
}

async function whatIsWrong(sizer) {
  const field = sizer.getByLabel("Floor area").first();
  await field.fill("1,234");
  assert.equal(await field.getAttribute("aria-invalid"), "true");
  const described = await field.evaluate((it) => it.getAttribute("aria-describedby").split(" ").map((id) => it.getRootNode().getElementById(id).textContent).join(" "));
  assert.match(described, /^m² Floor area of Living room: .*can mean 1.234 or/);
  assert.equal(await field.inputValue(), "1,234", "what was typed stays");
  await field.fill("28");
  assert.equal(await field.getAttribute("aria-invalid"), null);
}

async function methods(page) {
  const fixture = JSON.parse(await readFile(new URL("../../fixtures/v1/terrace.json", import.meta.url), "utf8"));
  const said = await page.evaluate(async (house) => {
    const sizer = document.querySelector("airtally-sizer");
    const heard = [];
    for (const what of ["change", "fault"]) document.addEventListener(`airtally-${what}`, ({ detail }) => heard.push(detail.code ?? what));
    const result = await sizer.put(house);
    const before = sizer.house;
    before.house.rooms.length = 0;
    const refusal = await sizer.put({ airtally: 1, house: {} }).catch(({ code, path }) => [code, path]);
    sizer.house = { ...house, house: { ...house.house, rooms: house.house.rooms.map((room) => ({ ...room, name: "=1+1" })) } };
    await new Promise((done) => setTimeout(done, 300));
    return { taken: await sizer.take(), name: result.name, refusal, heard, issues: (await sizer.check()).length, csv: await sizer.csv() };
  }, fixture);
  assert.equal(said.name, fixture.house.name);
  assert.deepEqual(said.taken.house.entries, fixture.house.entries, "a house comes back as it went in");
  assert.equal(said.taken.house.rooms.length, fixture.house.rooms.length, "a copy is nobody else's house");
  assert.equal(said.refusal[0], "not-a-house");
  assert.deepEqual(said.heard, ["not-a-house"], "a change of the page's own is no event");
  assert.ok(said.issues > 0);
  assert.match(said.csv, /^room,air,normal,[^\r\n]*\r\n'=1\+1,supply,[\d.]+,[\d.]+,L\/s,\d,/);
}

async function attributes(page, site) {
  const house = `${site.url}terrace.json`;
  const path = fileURLToPath(new URL("../../fixtures/v1/terrace.json", import.meta.url));
  await page.route(house, (route) => route.fulfill({ path, contentType: "application/json" }));
  const said = await page.evaluate(async (src) => {
    const sizer = document.createElement("airtally-sizer");
    for (const [name, value] of Object.entries({ src, display: "cfm", readonly: "", "heading-level": "2", heading: "Read only", ask: "Ask" })) sizer.setAttribute(name, value);
    const ready = new Promise((done) => sizer.addEventListener("airtally-ready", done, { once: true }));
    document.querySelector("main").append(sizer);
    await ready;
    const inside = (what) => sizer.shadowRoot.querySelectorAll(what).length;
    const first = { rooms: sizer.house.house.rooms.length, display: sizer.result.display, adders: inside(".adders"), editable: inside("input:not([readonly]), select:not([disabled])"), title: sizer.shadowRoot.querySelector("h2").textContent };
    sizer.setAttribute("rules", "irc-2021");
    sizer.removeAttribute("readonly");
    const then = { rules: sizer.result.rules.id, adders: inside(".adders") };
    sizer.remove();
    document.querySelector("main").append(sizer);
    const again = sizer.house.house.rooms.length;
    sizer.remove();
    return { first, then, again };
  }, house);
  assert.deepEqual(said, {
    first: { rooms: 5, display: "cfm", adders: 0, editable: 0, title: "Read only" },
    then: { rules: "irc-2021", adders: 1 },
    again: 5,
  });
}

async function keeping(page) {
  const kept = await page.evaluate(async () => {
    const begun = async () => {
      const sizer = document.createElement("airtally-sizer");
      sizer.setAttribute("keep", "mine");
      const ready = new Promise((done) => sizer.addEventListener("airtally-ready", done, { once: true }));
      document.querySelector("main").append(sizer);
      await ready;
      return sizer;
    };
    const before = localStorage.length;
    const one = await begun();
    const field = one.shadowRoot.querySelector("input");
    field.value = "33,3";
    field.dispatchEvent(new Event("input", { bubbles: true }));
    one.remove();
    const two = await begun();
    const came = two.shadowRoot.querySelector("input").value;
    two.remove();
    const aside = [];
    for (const unread of ["{\"airtally\":9}", "{\"airtally\":1,"]) {
      localStorage.setItem("airtally.sizer.mine", unread);
      const three = await begun();
      aside.push(three.house.house.rooms.length, ...Object.keys(localStorage).map((key) => key.replace(/aside\..*/, "aside")), ...Object.values(localStorage));
      three.remove();
      localStorage.clear();
    }
    return { before, came, aside };
  });
  const name = "airtally.sizer.mine.aside";
  assert.deepEqual(kept, { before: 0, came: "33,3", aside: [4, name, "{\"airtally\":9}", 4, name, "{\"airtally\":1,"] }, "only where it is asked, and nothing is written over");
}
