import assert from "node:assert/strict";
import { PHONE } from "../kit/browser.mjs";
import { fillsAreas, goesTo, settles, sizers } from "../kit/sizer.mjs";

export const title = "two sizers and a frame on a strict page of somebody else: each its own house and look, nothing kept, nothing sent";

export default async function ({ page, site, size }) {
  const asked = [];
  page.on("request", (request) => asked.push(request.method()));
  await page.goto(`${site.url}contractor.html`);
  const [homes, trades] = await sizers(page, ["#homes", "#trades"]);

  // Approved Document F 2021: 0.3 L/s for each of 150 m² is 162 m³/h. IRC 2021, table M1505.4.4: a kitchen
  // 25 cfm and a bathroom 20 cfm all day, together 45 cfm; table M1505.4.3(1) has 30 cfm for up to 1 500 ft² and one bedroom.
  await fillsAreas(homes, ["60", "40 m2", "30", "20"]);
  await fillsAreas(trades, ["600", "400", "200", "100"]);
  await goesTo(homes, size, "the air");
  await goesTo(trades, size, "the air");
  await homes.getByText("England · Approved Document F 2021 asks for 162\u00a0m³/h of this house.").waitFor();
  await trades.getByText("USA · IRC 2021 asks for 45\u00a0cfm of this house.").waitFor();
  await goesTo(homes, size, "the tubes");
  await homes.getByText("Tubes in all").waitFor();

  const grounds = await page.evaluate(() => [...document.querySelectorAll("airtally-sizer")].map((sizer) =>
    getComputedStyle(sizer.shadowRoot.querySelector(".sheet")).backgroundColor));
  assert.deepEqual(grounds, ["rgb(251, 243, 232)", "rgb(19, 24, 27)"], "each in its own look");

  await homes.getByRole("button", { name: "Ask us for an offer" }).click();
  await page.locator("#asked").getByText("a house of 4 rooms").waitFor();
  await inFrame(page, size);

  const left = await page.evaluate(() => [localStorage.length, sessionStorage.length, document.cookie,
    performance.getEntriesByType("resource").filter(({ name }) => name.endsWith(".wasm")).length]);
  assert.deepEqual(left, [0, 0, "", 1], "nothing kept, and one program for both");
  assert.ok(asked.every((method) => method === "GET"), "nothing sent");
}

async function inFrame(page, size) {
  const frame = page.locator("iframe");
  await frame.scrollIntoViewIfNeeded();
  const [inner] = await sizers(page.frameLocator("iframe"), ["airtally-sizer"]);
  const before = await settles(page, frame);
  await fillsAreas(inner, ["20", "x"]);
  await inner.getByText("cannot be read as an area").first().waitFor();
  const after = await settles(page, frame);
  assert.ok(after > before, "a complaint more makes it higher");
  await fillsAreas(inner, ["20", "10"]);
  assert.ok((await settles(page, frame)) < after, "and mended, it is lower again");
  if (size === PHONE) await inner.getByRole("button", { name: "Next: the air" }).click();
  await inner.getByRole("button", { name: "Ask us" }).click();
  await page.locator("#framed-asked").getByText("a house of 4 rooms").waitFor();

  const height = await settles(page, frame);
  const said = await page.evaluate(async () => {
    const frame = document.querySelector("iframe");
    // Not from the frame: must not be heard.
    postMessage({ ns: "airtally", v: 1, type: "height", id: null, payload: { px: 3000 } }, location.origin);
    const { SizerFrame } = await import(new URL("./embed/frame.js", document.baseURI));
    const sizer = new SizerFrame(frame);
    const house = await sizer.take();
    const refused = await sizer.put({ airtally: 9 }).catch(({ code }) => code);
    const issues = await sizer.check();
    const printed = new Promise((done) => (frame.contentWindow.print = () => done(frame.contentDocument.querySelectorAll("[data-airtally-paper]").length)));
    await sizer.print();
    const marked = await printed;
    frame.contentWindow.dispatchEvent(new Event("afterprint"));
    sizer.close();
    return { rooms: house.house.rooms.length, refused, issues: issues.length > 0, marked };
  });
  assert.deepEqual(said, { rooms: 4, refused: "not-a-house", issues: true, marked: 4 }, "printed: the sizer, and around it main, body and html");
  assert.equal(await settles(page, frame), height, "a message from elsewhere changes nothing");

  // Not from the page around it: must not be heard either.
  const rooms = await page.frame({ url: /embed\.html/ }).evaluate(async () => {
    const empty = { airtally: 1, house: { ...document.querySelector("airtally-sizer").house.house, rooms: [] } };
    postMessage({ ns: "airtally", v: 1, type: "put", id: "1", payload: empty }, location.origin);
    await new Promise((done) => setTimeout(done, 200));
    return document.querySelector("airtally-sizer").house.house.rooms.length;
  });
  assert.equal(rooms, 4);
}
