import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { visit } from "../kit/browser.mjs";
import { goTo } from "../kit/house.mjs";
import { Person } from "../kit/person.mjs";
import { serve } from "../kit/server.mjs";

export const title = "without a network every stage starts and keeps what is typed; a newer version waits until it is taken";
export const kept = true;

const FOLDER = process.argv[2];

export default async function ({ person, page, context, size }) {
  await person.opens();
  await isKept(person);
  await person.presses("Open the example house");
  await person.types("Name of the house", "Cellar without signal");
  await everyStageStarts(page, context, person);

  const folder = await mkdtemp(join(tmpdir(), "versions-"));
  await cp(FOLDER, folder, { recursive: true });
  const site = await serve(folder, { base: "/some/path/" });
  const guest = await visit(context.browser(), site, { size, kept: true });
  try {
    await aNewVersionWaits(new Person(guest.page, site), folder);
    await halfAVersionIsRefused(new Person(guest.page, site), folder, guest.context);
    await theWayOutKeepsTheHouse(new Person(guest.page, site));
    // What half a version provokes, and nothing else.
    const unasked = guest.complaints.filter((complaint) => !/integrity/.test(complaint));
    assert.deepEqual(unasked, []);
  } finally {
    await guest.context.close();
    await site.stop();
    await rm(folder, { recursive: true });
  }
}

async function isKept(person) {
  await person.sees("Works offline now.");
  await person.presses("Fine", person.page.locator("#newer"));
}

async function everyStageStarts(page, context, person) {
  await page.waitForFunction(() => localStorage.getItem("airtally.house")?.includes("Cellar without signal"));
  await context.setOffline(true);
  for (const stage of ["house", "air", "tubes", "parts", "steps"]) {
    await page.goto("about:blank");
    await person.opens(`#${stage}`);
    await page.locator("h1").waitFor();
  }
  await person.sees("Ask what burns fuel");
  await goTo(person, "House");
  await person.reads("Name of the house", "Cellar without signal");
  await person.types("Name of the house", "Typed without signal");
  await page.waitForFunction(() => localStorage.getItem("airtally.house")?.includes("Typed without signal"));
  await person.reloads();
  await person.reads("Name of the house", "Typed without signal");
  await context.setOffline(false);
}

async function aNewVersionWaits(person, folder) {
  await person.opens();
  await isKept(person);
  await person.presses("Open the example house");
  await person.types("Name of the house", "Before the new version");
  await publish(folder, "second");
  await person.page.waitForFunction(() => localStorage.getItem("airtally.house")?.includes("Before the new"));
  await person.reloads();
  await person.sees("A newer version is ready.");
  assert.equal(await version(person.page), undefined, "it waits until it is taken");
  await person.types("Name of the house", "While it waits");
  const second = new Person(await person.page.context().newPage(), person.site);
  await second.opens();
  await person.presses("Take it");
  await person.page.waitForFunction(() => document.documentElement.dataset.published === "second");
  await person.page.locator("#page[data-ready]").waitFor();
  await person.reads("Name of the house", "While it waits");
  await second.sees("A newer version was taken in another tab.");
  await second.presses("Load it here too");
  await second.page.waitForFunction(() => document.documentElement.dataset.published === "second");
  await second.page.close();
}

/** A server that gives the new list and an old file: the version that works stays, also without a network. */
async function halfAVersionIsRefused(person, folder, context) {
  await publish(folder, "third", { whole: false });
  await person.reloads();
  await person.page.waitForTimeout(1500);
  await context.setOffline(true);
  await person.reloads();
  assert.equal(await version(person.page), "second");
  await context.setOffline(false);
  await publish(folder, "fourth");
}

async function theWayOutKeepsTheHouse(person) {
  await person.page.goto(`${person.site.url}?reset`);
  await person.page.waitForURL(person.site.url);
  await person.page.locator("#page[data-ready]").waitFor();
  assert.equal(await version(person.page), "fourth");
  await person.reads("Name of the house", "While it waits");
}

const version = (page) => page.evaluate(() => document.documentElement.dataset.published);

/** The same page under another name in its head, with its list; `whole` is whether the server has it already. */
async function publish(folder, name, { whole = true } = {}) {
  const [page, worker] = [join(folder, "index.html"), join(folder, "sw.js")];
  const [old, list] = [await readFile(page, "utf8"), await readFile(worker, "utf8")];
  const next = old.replace(/<html[^>]*>/, `<html lang="en" data-published="${name}">`);
  if (whole) await writeFile(page, next);
  const hash = createHash("sha256").update(next).digest("base64");
  const row = list.replace(/\["\.\/","[^"]*"\]/, `["./","sha256-${hash}"]`);
  await writeFile(worker, row.replace(/VERSION = "[^"]*"/, `VERSION = "${name}"`));
}
