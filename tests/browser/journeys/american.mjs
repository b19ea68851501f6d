import assert from "node:assert/strict";
import { goTo } from "../kit/house.mjs";

export const title = "an American house is judged by its own code: balance, timber, fans beside a flue, places outside";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  await under(page, "USA · IRC 2021");
  await page.getByLabel("What burns fuel in the house", { exact: true }).selectOption({ label: "Gas or oil with an open flue" });

  await goTo(person, "Air");
  await person.sees("Balanced, 2021: extract within 10 % of supply");
  await person.sees("Balanced, 2021 and 2024: both within 10 % of their average");
  await page.getByRole("button", { name: /^Balanced, 2021: extract/ }).click();
  const sheet = page.getByRole("heading", { name: "Extract off supply" });
  await sheet.waitFor();
  await page.keyboard.press("Escape");

  await goTo(person, "Steps");
  // Larkfield has 148 m² or about 1593 ft²: 15 cfm for each 100 ft² are 239 cfm.
  const fuel = step(page, /^Ask what burns fuel/);
  await open(page, /^Ask what burns fuel/);
  await fuel.getByLabel("The two largest of them", { exact: true }).fill("250 cfm");
  assert.match(await fuel.textContent(), /The two largest exhaust fans draw/);
  await fuel.getByLabel("The two largest of them", { exact: true }).fill("200 cfm");
  assert.doesNotMatch(await fuel.textContent(), /The two largest exhaust fans draw/);

  // IRC R502.8.1: a sixth of 12 in is 2 in, 3 ft off a bearing of 12 ft; R602.6: 60 % of 5.5 in is 84 mm.
  const timber = step(page, /^Find out what the joists are/);
  await open(page, /^Find out what the joists are/);
  const type = (label, text) => timber.getByLabel(label, { exact: true }).fill(text);
  await type("Depth of the joists", "12 in");
  await type("Free span of the joists", "12 ft");
  await type("Notch from the nearest bearing", "3 ft");
  await type("Depth of a notch in a joist", "2.5 in");
  assert.match(await timber.textContent(), /does not fit there/);
  assert.equal(await timber.locator("input.tick").count(), 0, "a notch that is too deep cannot be ticked away");
  await type("Depth of a notch in a joist", "2 in");
  assert.doesNotMatch(await timber.textContent(), /does not fit there/);
  await type("Depth of the studs", "5.5 in");
  assert.match(await timber.textContent(), /Choose what the studs are/);
  await timber.getByLabel("The studs that tubes cross", { exact: true }).selectOption({ label: "Bearing, or in an outside wall" });
  assert.match(await timber.textContent(), /these studs bear up to 56\s*mm/);

  await goTo(person, "House");
  await under(page, "USA · IMC");
  await goTo(person, "Steps");
  const intake = step(page, /^Place the intake/);
  await open(page, /^Place the intake/);
  await intake.getByLabel("Intake to the boundary", { exact: true }).fill("9 ft");
  assert.match(await intake.textContent(), /from the intake to the boundary or to another building on the plot: 3\.05\s*m are asked for/);
}

async function under(page, rules) {
  await page.getByLabel("Rule set", { exact: true }).selectOption({ label: rules });
}

function step(page, title) {
  return page.locator(".step", { has: page.getByRole("button", { name: title }) }).first();
}

async function open(page, title) {
  const button = page.getByRole("button", { name: title }).first();
  if ((await button.getAttribute("aria-expanded")) === "false") await button.click();
}
