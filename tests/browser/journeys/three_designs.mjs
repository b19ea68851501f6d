import assert from "node:assert/strict";
import { goTo } from "../kit/house.mjs";

export const title = "three designs: with nothing wrong every room gets what was planned";

// Rooms with supply and with extract, counted on the plans of the houses.
const HOUSES = [
  { name: "Larkfield", runs: [5, 4] },
  { name: "Five bedrooms", runs: [7, 5] },
  { name: "A hard case", runs: [6, 3] },
];

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  for (const house of HOUSES) await designed(person, page, house);
}

async function designed(person, page, { name, runs }) {
  await person.presses("Menu");
  await person.presses(`Open the example ${name}`);
  await goTo(person, "Tubes");
  await opens(person, page, "What if …");
  const tables = page.locator("table.codes").filter({ has: page.locator("caption", { hasText: "What if" }) });
  for (const [at, rooms] of runs.entries()) {
    const changes = await tables.nth(at).locator("tbody td:nth-of-type(3)").allInnerTexts();
    assert.equal(changes.length, rooms, `${name}: rooms of side ${at + 1}`);
    for (const change of changes) assert.match(change, /^0\s%$/, `${name}: a room gets ${change} more or less`);
  }
  await person.sees("As much comes in as is drawn out.");
  assert.equal(await page.locator(".is-off").count(), 0, `${name}: nothing is off`);

  const tubes = Number(await page.locator(".tallied b").first().innerText());
  await goTo(person, "Parts");
  await person.sees("What does it take, and cost?");
  // A tube has two ends, and a ring at each.
  const rings = await page.getByRole("button", { name: /^Sealing ring with lock: / }).getAttribute("aria-label");
  assert.equal(Number(rings.match(/\d+/)[0]), 2 * tubes, `${name}: rings`);
}

/** Opens a part unless it stands open already. */
async function opens(person, page, words) {
  const button = person.button(words);
  if ((await button.getAttribute("aria-expanded")) !== "true") await button.click();
}
