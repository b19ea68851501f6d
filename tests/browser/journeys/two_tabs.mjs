import assert from "node:assert/strict";
import { Person } from "../kit/person.mjs";

export const title = "of two tabs with one house only one writes; the other says so, takes over or makes a copy";

export default async function ({ person, page, context, site }) {
  await person.opens();
  await person.presses("Open the example house");
  await person.types("Name of the house", "Typed in the first");
  await isKept(page, "Typed in the first");

  const second = new Person(await context.newPage(), site);
  await second.opens();
  await second.sees(/^This house is open in another tab/);
  await second.types("Name of the house", "Typed in the second");
  await second.reads("Name of the house", "Typed in the first");

  await person.types("Name of the house", "Typed last of all");
  await second.presses("Take over here");
  await second.reads("Name of the house", "Typed last of all");
  await person.sees(/^This house is open in another tab/);
  await second.types("Name of the house", "Now the second");
  await isKept(second.page, "Now the second");
  await person.types("Name of the house", "Too late");
  await person.reads("Name of the house", "Typed last of all");

  await person.presses("Make a copy");
  await person.reads("Name of the house", "Now the second (copy)");
  await person.types("Name of the house", "The copy");
  await isKept(page, "The copy", /^airtally\.house\.\d+$/);
  await second.reloads();
  await second.reads("Name of the house", "Now the second");
  await person.reloads();
  await person.reads("Name of the house", "The copy");
  await aSleepingTabWritesNothing(person, second);
}

/** The quick copy holds this text. */
async function isKept(page, text, key = /^airtally\.house$/) {
  await page.waitForFunction(([text, key]) =>
    Object.keys(localStorage).some((own) => new RegExp(key).test(own) && localStorage.getItem(own).includes(text)), [text, key.source]);
}

/** A tab that did not hear that another one has taken its house finds out when it writes. */
async function aSleepingTabWritesNothing(person, second) {
  await person.page.evaluate(() => {
    BroadcastChannel.prototype.postMessage = () => {};
    window.addEventListener("message", (event) => event.stopImmediatePropagation(), true);
  });
  const id = await person.page.evaluate(() => sessionStorage.getItem("airtally.open"));
  await second.page.evaluate((id) => sessionStorage.setItem("airtally.open", id), id);
  await second.page.reload();
  await second.page.locator("#page[data-ready]").waitFor();
  await second.reads("Name of the house", "The copy");
  await second.types("Name of the house", "Written awake");
  await isKept(second.page, "Written awake", /^airtally\.house\.\d+$/);
  await person.types("Name of the house", "Written asleep");
  await person.sees(/^This house is open in another tab/);
  await second.page.waitForTimeout(600);
  await second.reloads();
  await second.reads("Name of the house", "Written awake");
  const names = await second.page.evaluate(() => Object.values(localStorage).filter((text) => text.includes("Written asleep")));
  assert.deepEqual(names, []);
}
