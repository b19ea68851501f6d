import assert from "node:assert/strict";
import { visit } from "../kit/browser.mjs";
import { Person } from "../kit/person.mjs";

export const title = "where the browser keeps little, nothing or forgets, the page says so and what to do; all that can be kept is";

export default async function ({ person, page, context, size, site }) {
  await person.opens();
  await person.presses("Open the example house");
  await person.types("Name of the house", "Kept from before");
  await isQuickly(page, "Kept from before");
  await fromBefore(person, page);
  await wiped(person, page);
  await quickCopyGone(person, page);

  const others = [
    [full, /This device is full: only the last state/, "Typed when full"],
    [noBase, /gives the page little room: houses are kept without older versions/, "Typed without a list"],
    [nothing, /does not keep what you type: its storage is switched off/, null],
  ];
  for (const [trouble, says, kept] of others) {
    const guest = await visit(context.browser(), site, { size });
    await guest.page.addInitScript(trouble);
    const other = new Person(guest.page, site);
    await other.opens();
    await other.presses("Open the example house");
    await other.types("Name of the house", kept ?? "Typed for nothing");
    await guest.page.getByRole("status").getByText(says).waitFor();
    if (kept) {
      await other.reloads();
      await other.reads("Name of the house", kept);
    }
    if (trouble === noBase) await listsQuickCopies(other, guest.page);
    assert.deepEqual(guest.complaints, []);
    await guest.context.close();
  }
}

/** Without a database there is a list all the same, which opens houses and neither names nor removes them. */
async function listsQuickCopies(person, page) {
  await person.presses("Menu");
  await person.presses("Start a new house");
  await person.presses("Start my house");
  await person.types("Name of the house", "A second one");
  await page.waitForTimeout(400);
  await person.presses("Menu");
  await person.presses("Houses", page.locator("#menu"));
  const list = page.getByRole("dialog").locator(".shelf");
  await list.getByText("A second one").waitFor();
  await person.misses(/No house is kept|Houses stay in this browser/);
  await person.presses("More about Typed without a list", page.getByRole("dialog"));
  await person.presses("Remove", page.getByRole("dialog"));
  await person.sees(/the list can only open them/);
  await person.presses("Typed without a list", page.getByRole("dialog"));
  await person.reads("Name of the house", "Typed without a list");
}

async function isQuickly(page, text) {
  await page.waitForFunction((text) => localStorage.getItem("airtally.house")?.includes(text), text);
  await page.waitForTimeout(400);
}

/** A house kept before there was a list moves in. */
async function fromBefore(person, page) {
  await erases(page, ["airtally.mark", "airtally.open", "airtally.base"], true);
  await person.reloads();
  await person.reads("Name of the house", "Kept from before");
  await person.presses("Menu");
  await person.sees(/^Saved on this device \d\d:\d\d/);
  await person.presses("Houses");
  await page.locator(".shelf").getByText("Kept from before").waitFor();
  await person.presses("Close the list of houses");
}

/** The database was cleared and the quick copy is still there. */
async function wiped(person, page) {
  await erases(page, [], true);
  await person.reloads();
  await person.sees(/^The browser has cleared the houses kept here/);
  await person.presses("Understood");
  await person.reads("Name of the house", "Kept from before");
}

/** The quick copy is gone and the database is still there. */
async function quickCopyGone(person, page) {
  await page.waitForTimeout(600);
  await erases(page, ["airtally.house", "airtally.mark", "airtally.open"], false);
  await person.reloads();
  await person.reads("Name of the house", "Kept from before");
}

/** Takes keys, and the database, once the page has said its last word. */
async function erases(page, keys, base) {
  if (base) await page.evaluate(() => new Promise((done) => (indexedDB.deleteDatabase("airtally").onsuccess = done)));
  await page.evaluate((keys) => addEventListener("pagehide", () => keys.forEach((key) => localStorage.removeItem(key))), keys);
}

function full() {
  IDBObjectStore.prototype.put = function () {
    throw new DOMException("no room", "QuotaExceededError");
  };
}

function noBase() {
  Object.defineProperty(window, "indexedDB", { get: () => undefined });
}

function nothing() {
  Object.defineProperty(window, "indexedDB", { get: () => undefined });
  for (const name of ["localStorage", "sessionStorage"]) {
    Object.defineProperty(window, name, { get: () => { throw new DOMException("no", "SecurityError"); } });
  }
}
