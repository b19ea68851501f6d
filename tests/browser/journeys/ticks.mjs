import assert from "node:assert/strict";
import { goTo, inRoom, openRoom, seesRoom } from "../kit/house.mjs";

export const title = "ticks survive a closed tab and every edit; locked steps say what they wait for";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  await goTo(person, "Steps");
  const boxes = page.locator(".step:not(.is-locked) input.tick");
  await boxes.first().check();
  await boxes.nth(1).check();
  const done = () => page.locator(".step.is-done").count();
  assert.equal(await done(), 2);
  const locked = page.locator(".step.is-locked").first();
  await locked.getByRole("button").first().click();
  await locked.getByText(/^Locked until/).waitFor();
  assert.equal(await locked.locator("input.tick:enabled").count(), 0, "a locked step cannot be ticked");

  await person.reloads();
  await goTo(person, "Steps");
  assert.equal(await done(), 2, "ticks are there after a reload");

  await goTo(person, "House");
  await openRoom(person, "Study");
  await inRoom(person).getByLabel(/^Name/).fill("Sewing room");
  await inRoom(person).getByLabel("Floor area", { exact: true }).fill("8.5");
  await person.presses(/^Remove room/, inRoom(person));
  await page.locator(".toast").getByRole("button", { name: "Undo" }).click();
  await seesRoom(person, "Sewing room");

  // The way back leads back from the removal only: after another change it is gone.
  await openRoom(person, "Sewing room");
  await person.presses(/^Remove room/, inRoom(person));
  await person.types("Name of the house", "Larkfield again");
  assert.equal(await page.locator(".toast").count(), 0, "the way back of an older change");
  await person.presses("Undo");
  await person.presses("Undo");
  await seesRoom(person, "Sewing room");
  await goTo(person, "Steps");
  assert.equal(await done(), 2, "ticks are there after edits");
}
