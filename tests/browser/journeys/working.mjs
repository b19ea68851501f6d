import assert from "node:assert/strict";
import { goTo } from "../kit/house.mjs";

export const title = "every number opens its working, and a value can be set by the person";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  await goTo(person, "Air");
  await page.locator(".answer .figure, .figure-big").first().click();
  const sheet = page.getByRole("dialog");
  await sheet.waitFor();
  await person.sees(/largest/i, sheet);
  await sheet.locator(".terms .figure").first().click();
  await person.sees(/Approved Document F/, sheet);
  await person.sees("published", sheet);
  await page.keyboard.press("Escape");
  await sheet.waitFor({ state: "hidden" });

  // A slower tube is a tube more: 60 m³/h at 1.2 m/s in a bore of 63 mm, 13.5 m³/h each, is 4.46, five tubes.
  await goTo(person, "Tubes");
  const living = page.locator(".row").filter({ has: page.getByRole("heading", { name: "Living room", exact: true }) });
  const tubes = living.locator(".row-figure .figure, .row-tally .figure").first();
  await tubes.click();
  await sheet.waitFor();
  assert.ok(await sheet.getByText(/common practice/).count(), "the speed limit has its mark");
  await sheet.locator(".term", { hasText: "most air for one tube at normal" }).locator(".figure").click();
  await sheet.locator(".term", { hasText: "largest speed" }).locator(".figure").click();
  await sheet.getByRole("textbox").fill("1.2");
  await person.sees("your setting", sheet);
  await page.keyboard.press("Escape");
  await sheet.waitFor({ state: "hidden" });
  assert.match(await tubes.textContent(), /5/, "the count follows the setting");
  await person.reloads();
  await goTo(person, "Tubes");
  assert.match(await tubes.textContent(), /5/, "the setting is kept");
}
