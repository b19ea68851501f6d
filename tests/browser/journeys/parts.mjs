import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { goTo, openRoom, inRoom } from "../kit/house.mjs";

export const title = "parts are counted and priced, a list goes out and in, and a longer run costs more at once";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  await goTo(person, "Parts");
  await prices(page, { unit: "2140", tube: "2.45", "setting-out": "62" });
  const before = await toPay(page);
  assert.ok(before > 2140);
  await page.getByText(/lines have no price yet/).waitFor();

  await onPaper(page, before);

  await prices(page, { bend: "a few" });
  await page.locator("#price-bend-error").getByText(/cannot be read as a price/).waitFor();
  await prices(page, { bend: "" });

  await aListGoesOutAndIn(person, page, before);
  await aLongerRunCostsMore(person, page, before);
}

/** The quotation: every line, the sum of the screen, nothing to type into. */
async function onPaper(page, toPay) {
  const lines = await page.locator(".priced > .row").count();
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
  await page.getByRole("heading", { name: "Quotation" }).waitFor();
  assert.equal(await page.locator("main :is(input, button)").count(), 0);
  assert.equal(await page.locator(".quoted tbody:not(.quoted-sums) tr:has(td)").count(), lines);
  const sum = await page.locator(".quoted-sums tr").last().locator("td").textContent();
  assert.equal(Number(sum.replace(/\s/g, "")), toPay);
  await page.getByText(/^Larkfield · \d{4}-\d\d-\d\d$/).waitFor();
  await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
  await page.locator("#price-tube").waitFor();
}

async function prices(page, all) {
  for (const [part, text] of Object.entries(all)) await page.locator(`#price-${part}`).fill(text);
}

/** The last sum, as a number. */
async function toPay(page) {
  const text = await page.locator(".sum").last().locator("dd").textContent();
  return Number(text.replace(/\s/g, ""));
}

async function aListGoesOutAndIn(person, page, before) {
  const comes = page.waitForEvent("download");
  await person.presses("Save the list");
  const list = await readFile(await (await comes).path(), "utf8");
  assert.match(list, /^part,description,unit,price\r\n/);
  assert.match(list, /\r\ntube,Tube,m,2\.45\r\n/);

  await opens(page, list.replaceAll(",", ";").replace(";m;2.45", ";m;4,90").replace("strap;", "=cmd;"));
  await page.getByText("The prices of the list are in. 1 line names no part of ours and was left out.").waitFor();
  assert.equal(await page.locator("#price-tube").inputValue(), "4,90");
  assert.ok((await toPay(page)) > before);
  await page.locator(".toast").getByRole("button", { name: "Undo" }).click();
  await page.waitForFunction(() => document.querySelector("#price-tube").value === "2.45");
  assert.equal(await toPay(page), before);

  await opens(page, "\u0000\u0001 no list at all");
  await page.getByText(/must name the columns/).waitFor();
  await person.presses("Understood");
  assert.equal(await toPay(page), before);
}

async function opens(page, text) {
  const file = { name: "list.csv", mimeType: "text/csv", buffer: Buffer.from(text) };
  await page.locator("input[type=file]").setInputFiles(file);
}

async function aLongerRunCostsMore(person, page, before) {
  await goTo(person, "House");
  await openRoom(person, "Study");
  await inRoom(person).getByLabel(/^Supply tube/).fill("30");
  await goTo(person, "Parts");
  assert.ok((await toPay(page)) > before + 2.45 * 10);
  await page.getByText(/^Coil 4/).waitFor();
}
