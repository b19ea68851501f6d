import assert from "node:assert/strict";
import { goTo, inTable } from "../kit/house.mjs";

export const title = "a house of three bedrooms is entered with at most 120 taps and keys";

const MOST = 120;
/** So many letters choose a kind in its list. */
const LETTERS = 3;

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

export default async function (walk) {
  const { person, page } = walk;
  await person.opens();
  const count = (await inTable(person)) ? await byKeys(page) : await byTaps(walk);
  const summary = await page.locator("main").textContent();
  assert.match(summary, /11 rooms · 134(\.2)?\sm²/);
  await goTo(person, "Air");
  await person.sees("How much air does this house need?");
  assert.ok(count + 1 <= MOST, `${count + 1} taps and keys`);
  console.log(`  ${count + 1} taps and keys`);
}

/** On a phone: a tap for each room, its area, and Enter. Gives the taps and keys. */
async function byTaps({ person, page }) {
  let count = 0;
  const tap = async (button) => {
    await button.click();
    count += 1;
  };
  await tap(page.getByRole("button", { name: "Start my house" }));
  for (const [kind, area, storey] of ROOMS) {
    await tap(person.region("Add a room", "group").getByRole("button", { name: kind, exact: true }));
    await page.locator(".row-edit input:focus").waitFor();
    await page.keyboard.type(area);
    if (storey) await page.locator(".row-edit").getByLabel("Storey", { exact: true }).selectOption({ label: storey });
    await page.keyboard.press("Enter");
    count += area.length + (storey ? 2 : 0) + 1;
  }
  assert.equal(await page.locator(".row-open").count(), ROOMS.length);
  return count;
}

/** At a desk: the rows of the table are filled without a mouse. Gives the keys. */
async function byKeys(page) {
  let count = 0;
  const press = async (key, times = 1) => {
    for (let time = 0; time < times; time += 1) await page.keyboard.press(key);
    count += times;
  };
  const types = async (text) => {
    await page.keyboard.type(text);
    count += text.length;
  };
  await press("Tab"); // the way past the top line
  await press("Enter");
  await press("Tab");
  await isAt(page, "Start my house");
  await press("Enter");
  await isAt(page, "Add a room");
  await press("Tab", 3);
  await isAt(page, "Living room");
  await press("Enter");
  for (const [row, [kind, area, storey]] of ROOMS.entries()) {
    if (row > 0) {
      await isAt(page, /^Kind of room of /);
      await types(kind.slice(0, LETTERS));
      const chosen = await page.evaluate(() => document.activeElement.selectedOptions[0].text);
      assert.equal(chosen, kind, "the first letters choose the kind");
      await press("Tab");
    }
    await isAt(page, /^Floor area of /);
    await types(area);
    if (storey) {
      await press("Tab", 2);
      await isAt(page, /^Storey of /);
      await press("ArrowDown");
      await isAt(page, /^Storey of /);
    }
    if (row + 1 < ROOMS.length) await press("Enter");
  }
  assert.equal(await page.locator(".cells tbody tr:not(.cells-storey, .cells-under)").count(), ROOMS.length);
  return count;
}

/** Waits until what has this name also has the focus. */
async function isAt(page, name) {
  const named = typeof name === "string" ? { name, exact: true } : { name };
  const roles = ["button", "textbox", "combobox", "heading"];
  const any = roles.slice(1).reduce((all, role) => all.or(page.getByRole(role, named)), page.getByRole(roles[0], named));
  await any.and(page.locator(":focus")).waitFor({ timeout: 5000 });
}
