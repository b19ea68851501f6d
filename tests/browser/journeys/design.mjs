import assert from "node:assert/strict";
import { addRoom, goTo, inRoom, openRoom } from "../kit/house.mjs";

export const title = "a house is laid out, its unit chosen, faults tried, and ways compared";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  await goTo(person, "Tubes");
  await legsWithBends(person, page);
  await theUnit(person, page);
  await faults(person, page);
  await ways(person, page);
  await laid(person, page);
}

/** A longer run with more bends takes more, and its field says what cannot be read. */
async function legsWithBends(person, page) {
  await person.presses("Main bedroom", page.locator(".row"));
  const row = page.locator(".row.is-open");
  const takes = async () => (await row.getByRole("button", { name: /^Pressure of the run of/ }).textContent()).trim();
  const field = row.getByLabel("Supply tube", { exact: true });
  await field.fill("9.4, 1 bend");
  const few = await takes();
  await field.fill("9.4, 8 bends");
  assert.notEqual(await takes(), few);
  await field.fill("9.4, many bends");
  await row.getByText(/cannot be read/).waitFor();
  await field.fill("9.4, 3 bends");
}

async function theUnit(person, page) {
  await person.presses("Your unit");
  await person.types("Fan curve", "0: 60; 100: 80");
  await person.sees(/at point 2 the pressure is higher/);
  await person.types("Fan curve", "0: 40; 200: 10");
  await person.sees(/the unit gives .* outside itself, and the ducts take/);
  await person.types("Fan curve", "0: 400; 200: 330; 400: 120");
  await person.sees(/^Turns at [\d.]+.%/);
  assert.equal(await page.locator("#curve-fan-error").count(), 0);
}

async function faults(person, page) {
  await person.presses("What if …");
  await person.sees("As much comes in as is drawn out.");
  assert.equal(await page.locator(".is-off").count(), 0);
  await person.ticks("Filter of the supply is dirty");
  await person.sees("As much comes in as is drawn out.");
  await person.chooses("The unit holds", "The speed of its fans");
  await person.sees(/more is drawn out than comes in/);
  await person.chooses("In one room", "A tube crushed shut");
  await person.sees("Too little comes in.");
  assert.ok((await page.locator(".is-off").count()) > 0);
}

async function ways(person, page) {
  await person.presses("Side by side");
  const tubes = async () => (await page.locator(".tallied").textContent()).trim();
  const before = await tubes();
  await person.presses("Two at least");
  assert.notEqual(await tubes(), before);
  await person.presses("As many as its air needs");
  assert.equal(await tubes(), before);
  await person.presses("flat oval tube, 138 × 52 mm");
  await person.sees(/Each tube is one run/);
  await person.presses("75 mm tube");
}

async function laid(person, page) {
  await person.presses("What is laid");
  const unit = page.getByRole("button", { name: /^Supply at boost/ });
  const before = await unit.textContent();
  await person.types("Bore of mains and outside ducts", "125");
  assert.notEqual(await unit.textContent(), before);
  await person.chooses("Manifolds", "One for each air on every storey");
  await person.types("Valve, open", "20; 30: 9");
  await person.sees(/point 1 cannot be read/);
}
