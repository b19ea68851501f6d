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
  await goesBackAndForth(context, site);
}

/** A tab that comes back to its house, by undo or by the list, finds what another tab has made of it, and writes over nothing. */
async function goesBackAndForth(context, site) {
  const guest = await context.browser().newContext({ serviceWorkers: "block", viewport: { width: 1280, height: 720 } });
  const [first, second] = [new Person(await guest.newPage(), site), new Person(await guest.newPage(), site)];
  await first.opens();
  await first.presses("Start my house");
  await first.types("Name of the house", "Common");
  await isKept(first.page, "Common");
  await opensExample(first);
  await first.sees("An invented example is open.");

  await second.opens();
  await fromTheList(second, "Common");
  await second.reads("Name of the house", "Common");
  await second.types("Name of the house", "Common, newer");
  await isKept(second.page, "Common, newer");
  await first.page.bringToFront();
  await first.presses("Undo", first.page.locator(".top"));
  await first.reads("Name of the house", "Common, newer");
  await first.sees(/^This house is open in another tab/);
  await fromTheList(first, "Larkfield");
  await first.reads("Name of the house", "Larkfield");
  await first.misses(/^This house is open in another tab/);

  await second.page.bringToFront();
  await opensExample(second);
  await second.page.waitForTimeout(500);
  await first.page.bringToFront();
  await fromTheList(first, "Common, newer");
  await first.reads("Name of the house", "Common, newer");
  await first.types("Name of the house", "Common, newest");
  await isKept(first.page, "Common, newest");
  await opensExample(first);
  await first.page.waitForTimeout(500);
  await second.page.bringToFront();
  await second.presses("Undo", second.page.locator(".top"));
  await second.reads("Name of the house", "Common, newest");
  await second.sees(/^This house was changed in another tab meanwhile/);
  await guest.close();
}

/** The screen is that of a small laptop: the menu is longer than it. */
async function opensExample(person) {
  await person.presses("Menu");
  await person.presses("Open the example Larkfield");
  await person.reads("Name of the house", "Larkfield");
}

async function fromTheList(person, name) {
  await person.presses("Menu");
  await person.presses("Houses", person.page.locator("#menu"));
  // What the list knew before is shown until the store has told it anew.
  await person.page.waitForTimeout(300);
  await person.page.getByRole("dialog").locator(".shelf").getByRole("button", { name, exact: true }).first().click();
}

/** The quick copy holds this text. */
async function isKept(page, text, key = /^airtally\.house$/) {
  await page.waitForFunction(([text, key]) =>
    Object.keys(localStorage).some((own) => new RegExp(key).test(own) && localStorage.getItem(own).includes(text)), [text, key.source], { polling: 50 });
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
