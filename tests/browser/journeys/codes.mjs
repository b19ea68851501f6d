import assert from "node:assert/strict";
import { goTo } from "../kit/house.mjs";

export const title = "other rule sets say why they differ and are looked at without being chosen; doors have both verdicts";

// The example house has 148 m²: England 0.3 × 148 = 44.4 L/s or 159.8 m³/h; DIN 2009 −0.001 × 148² + 1.15 × 148 + 20 = 168.3 m³/h.
export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  await goTo(person, "Air");

  const others = page.locator(".codes-others");
  if (!(await others.evaluate((it) => it.open))) await others.locator("summary").click();
  const row = (name) => page.locator(".codes tr").filter({ has: page.getByRole("rowheader", { name, exact: true }) });
  assert.equal(await page.locator(".codes tbody tr").count(), 19, "every rule set is there");
  assert.match(await page.locator(".codes tbody tr").first().textContent(), /England.*yours.*0\.3·148 = 44\.4/s, "the chosen one is first");

  const din = row("Germany · DIN 1946-6, 2009");
  assert.match(await din.textContent(), /\+8\.5.m³\/h · Nominal air flow by floor area: −0\.001·\(?148\)?² \+ 1\.15·148 \+ 20 = 168\.3/);
  assert.match(await row("USA · ASHRAE 62.2, 2016 to 2022").textContent(), /No credit for leaks: it needs/);
  assert.match(await row("USA · IRC 2021").textContent(), /The sum of the extract rooms: 42\.5 \+ 34 \+ 34/, "a sum is written out");

  // Looked at: down to the equation, while the house stays under its own rule set.
  await page.getByRole("button", { name: /^Normal under Germany · DIN 1946-6, 2009/ }).click();
  const sheet = page.getByRole("dialog");
  await sheet.waitFor();
  await person.sees("Germany · DIN 1946-6, 2009", sheet);
  await sheet.locator(".terms .figure").first().click();
  await person.sees("DIN 1946-6, 2009-05, table 5", sheet);
  await person.sees(/Your house is under England/, sheet);
  await person.presses("Choose this rule set", sheet);
  await sheet.waitFor({ state: "hidden" });
  await person.sees(/Now under Germany/);
  assert.match(await page.locator(".answer .figure-big").textContent(), /168\.3/);
  await person.presses("Undo", page.locator(".toast"));
  assert.match(await page.locator(".answer .figure-big").textContent(), /159\.8/, "one press takes it back");

  // England: 60 m³/h through 7 600 mm² of a living-room door take 8 Pa, 20 m³/h of the study less than 1 Pa.
  const door = (name) => page.getByRole("button", { name: `Pressure across the door of ${name} with that gap` });
  const verdict = (name) => page.locator(".row").filter({ has: door(name) });
  assert.match(await door("Living room").textContent(), /^8 ?Pa|^8\.0 ?Pa/);
  assert.match(await verdict("Living room").textContent(), /Rule: enough · 1.Pa: needs 27.mm/);
  assert.match(await verdict("Study").textContent(), /Rule: enough · 1.Pa: enough/);
  await door("Study").click();
  await person.sees(/orifice practice/, sheet);
  await sheet.locator(".term", { hasText: "free area" }).locator(".figure").click();
  await person.sees(/7 600 mm² free area/, sheet);
}
