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

  await goTo(person, "Tubes");
  await page.locator(".row .figure").first().click();
  await sheet.waitFor();
  assert.ok(await sheet.getByText(/common practice/).count(), "the speed limit has its mark");
  for (let depth = 0; depth < 3 && (await sheet.getByRole("textbox").count()) === 0; depth += 1) {
    await sheet.locator(".terms .figure").first().click();
  }
}
