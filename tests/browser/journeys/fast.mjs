import assert from "node:assert/strict";
import { goTo } from "../kit/house.mjs";

export const title = "a house of three bedrooms is entered with at most 120 taps and keys";

const MOST = 120;

/** Kind, floor area, and the storey where it changes. */
const ROOMS = [
  ["Living room", "28"],
  ["Kitchen", "22"],
  ["WC", "2.2"],
  ["Utility room", "6"],
  ["Hall", "12"],
  ["Main bedroom", "16", "One floor up"],
  ["Bedroom", "12"],
  ["Bedroom", "10"],
  ["Bathroom", "7"],
  ["Study", "9"],
  ["Hall", "10"],
];

export default async function ({ person, page }) {
  await person.opens();
  let count = 0;
  const tap = async (button) => {
    await button.click();
    count += 1;
  };
  const keys = async (text) => {
    await page.keyboard.type(text);
    count += text.length;
  };
  await tap(page.getByRole("button", { name: "Start my house" }));
  for (const [kind, area, storey] of ROOMS) {
    await tap(person.region("Add a room", "group").getByRole("button", { name: kind, exact: true }));
    await page.locator(".row-edit input:focus").waitFor();
    await keys(area);
    if (storey) {
      await page.locator(".row-edit").getByLabel("Storey", { exact: true }).selectOption({ label: storey });
      count += 2;
    }
    await page.keyboard.press("Enter");
    count += 1;
  }
  assert.equal(await page.locator(".row-open").count(), ROOMS.length);
  const summary = await page.locator("main").textContent();
  assert.match(summary, /11 rooms · 134(\.2)?\sm²/);
  await goTo(person, "Air");
  count += 1;
  await person.sees("How much air does this house need?");
  assert.ok(count <= MOST, `${count} taps and keys`);
  console.log(`  ${count} taps and keys`);
}
