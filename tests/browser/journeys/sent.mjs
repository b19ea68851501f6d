import assert from "node:assert/strict";
import { readFile, writeFile } from "node:fs/promises";
import { alone } from "../kit/alone.mjs";
import { faults } from "../kit/checks.mjs";
import { openRoom, inRoom } from "../kit/house.mjs";

export const title = "a house that was sent is a report without scripts and a copy of the house with them; names in it stay text";

/** Each would do something if it were markup, and the last turns what follows it. */
const HOSTILE = `<script>document.title="was here"</script>"'><img src="https://elsewhere.invalid/x" onerror="alert(1)"></main>`;
const ROOM = `</script><!--<b>\u202eroom`;

export default async function ({ person, page, context, size }) {
  await person.opens();
  await person.presses("Open the example house");
  await person.types("Name of the house", HOSTILE);
  await openRoom(person, "Main bedroom");
  await inRoom(person).getByLabel(/^Name/).fill(ROOM);
  const sent = await sends(person, page);
  const text = await readFile(sent, "utf8");
  assert.ok(!text.includes("<img"), "no element is made of a name");

  const browser = context.browser();
  assert.deepEqual(await alone(sent, browser, { size, scripts: false }, readsTheReport), []);
  // Nothing can be asked of a page without scripts: barriers are looked for in the same report without its own script.
  const still = `${sent}-still`;
  await writeFile(still, text.slice(0, text.lastIndexOf("<script>")));
  assert.deepEqual(await alone(still, browser, { size }, isOpenToAll), []);
  let again;
  assert.deepEqual(await alone(sent, browser, { size }, async (guest) => (again = await opensTheHouse(guest))), []);
  assert.ok(again.includes("<h1>Sent back</h1>") && !again.includes("was here"), "a copy goes out in its own file");
}

async function sends(person, page) {
  await person.presses("Menu");
  const comes = page.waitForEvent("download");
  await person.presses("Send this house as one file");
  const file = await comes;
  assert.match(file.suggestedFilename(), /^[a-z0-9-]+\.html$/);
  await person.sees(/A preview in a mail or on a phone shows the finished report/);
  await person.presses("Understood");
  return file.path();
}

async function readsTheReport({ person, page }) {
  await page.goto(person.site.url);
  assert.equal(await page.locator("h1").textContent(), HOSTILE);
  assert.equal(await page.title(), HOSTILE);
  await person.sees(`${ROOM.replace("\u202e", "")}`);
  for (const part of ["Rooms", "Air", "Tubes", "The riser", "The unit must give", "Parts", "Cut from coils", "Steps"]) {
    await page.getByRole("heading", { name: part, exact: true }).waitFor();
  }
  await page.getByRole("img", { name: /^Drawing: the unit at the foot/ }).waitFor();
  // Approved Document F 2021, 1.24: 148 m² at 0.3 L/s are 44.4 L/s, 159.8 m³/h.
  await page.getByRole("row", { name: /^Normal 159.8/ }).waitFor();
}

async function isOpenToAll({ person, page }) {
  await page.goto(person.site.url);
  await page.getByRole("heading", { name: "Tubes", exact: true }).waitFor();
  assert.deepEqual(await faults(page, () => []), []);
}

/** Opens the copy, changes it, finds it changed, and sends it back; the text of that file. */
async function opensTheHouse({ person, page }) {
  await person.opens();
  await person.sees(/A copy that was sent to you/);
  await person.presses("Understood");
  await person.reads("Name of the house", HOSTILE);
  const kept = await page.evaluate(() => Object.values(localStorage).filter((text) => text.includes('"house"')));
  assert.deepEqual(kept, [], "no house is kept before a change");
  await person.types("Name of the house", "Sent back");
  await page.waitForFunction(() => Object.values(localStorage).some((text) => text.includes("Sent back")));
  assert.equal(await page.evaluate(() => localStorage.getItem("airtally.house")), null, "the person's own house has its own place");
  await person.reloads();
  await person.sees(/as you left it/);
  await person.presses("Understood");
  await person.reads("Name of the house", "Sent back");
  const text = await readFile(await sends(person, page), "utf8");
  assert.deepEqual(await faults(page, () => []), []);
  return text;
}
