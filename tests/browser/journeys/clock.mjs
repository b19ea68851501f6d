import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { WIDE } from "../kit/browser.mjs";
import { Person } from "../kit/person.mjs";

export const title = "20 versions stay, five minutes apart, also when the clock is set back; removed houses stay 30 days; days are told";
export const sizes = [WIDE];

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

export default async function ({ person, page, context, site }) {
  await page.clock.install({ time: new Date("2026-05-02T10:00:00") });
  await opens(person);
  await person.presses("Start my house");
  await tooManyVersions(person, page);
  await theClockIsSetBack(person, page);
  await daysAreTold(person, page);
  await removedAndGone(person, page);
  await theDayIsThatOfThePlace(context, site);
}

/** Lets this much time go by, for timers too, and the database do its work. */
async function passes(page, time) {
  await page.clock.runFor(time);
  await page.evaluate(() => new Promise((done) => (indexedDB.open("airtally").onsuccess = ({ target }) => done(target.result.close()))));
}

async function opens(person) {
  await person.opens();
  await passes(person.page, 2_000);
}

async function names(person, name) {
  await person.types("Name of the house", name);
  await passes(person.page, 1_000);
  await isQuickly(person.page, name);
}

/** The quick copy holds this name. The page's own frames stand still with its clock, so nothing in it can wait for that. */
async function isQuickly(page, name) {
  for (let left = 100; left > 0; left -= 1) {
    if (await page.evaluate((name) => Object.values(localStorage).some((text) => text.includes(name)), name)) return;
    await passes(page, 20);
  }
  assert.fail(`“${name}” is not kept`);
}

/** What the list tells of the versions, the youngest first. */
async function versions(person, name) {
  const { page } = person;
  await shelf(person);
  await person.presses(`More about ${name}`);
  await page.getByRole("heading", { name: "How it was" }).waitFor();
  await passes(page, 500);
  const rows = await page.getByRole("dialog").locator(".shelf li").allTextContents();
  await person.presses("Close the list of houses");
  return rows;
}

async function shelf(person) {
  await person.presses("Menu");
  await person.presses("Houses", person.page.locator("#menu"));
  await passes(person.page, 500);
  await person.page.getByRole("dialog").getByText(/· copy sent/).waitFor();
}

async function tooManyVersions(person, page) {
  await names(person, "First");
  await names(person, "In the same five minutes");
  for (let round = 1; round <= 23; round += 1) {
    await passes(page, 5 * MINUTE);
    await names(person, `Round ${round}`);
  }
  const rows = await versions(person, "Round 23");
  assert.equal(rows.length, 20);
  assert.match(rows[0], /Round 22$/);
  assert.match(rows[19], /Round 3$/);
}

async function theClockIsSetBack(person, page) {
  await page.clock.setSystemTime(new Date("2026-04-01T08:00:00"));
  for (const name of ["Back one", "Back two"]) {
    await names(person, name);
    await passes(page, 6 * MINUTE);
  }
  const rows = await versions(person, "Back two");
  assert.equal(rows.length, 20);
  assert.match(rows[0], /^08:0\d.*Back one$/, "a version of today, told with the time of its clock");
  assert.match(rows[1], /^May 2, 1\d:\d\d.*Round 23$/);
}

/** A page that lies open over midnight, and over years. */
async function daysAreTold(person, page) {
  await names(person, "Night");
  await page.clock.setSystemTime(new Date("2026-05-03T09:00:00"));
  await passes(page, 11 * MINUTE);
  await person.presses("Menu");
  await person.sees("Saved on this device Apr 1, 08:12 · copy sent never");
  await person.presses("Menu");
  await page.clock.setSystemTime(new Date("2027-09-04T09:00:00"));
  await shelf(person);
  await person.sees("Saved on this device Apr 1, 2026, 08:12 · copy sent never");
  await person.presses("Close the list of houses");
}

async function removedAndGone(person, page) {
  await shelf(person);
  await person.presses("More about Night");
  await person.presses("Remove", page.getByRole("dialog"));
  await passes(page, 1_000);
  await person.sees("Removed. It stays under Houses for 30 days.");
  await page.clock.setSystemTime(new Date(Date.parse("2027-09-04T09:00:00") + 29 * DAY));
  await opens(person);
  await shelf(person);
  await page.getByRole("heading", { name: "Removed" }).waitFor();
  await page.clock.setSystemTime(new Date(Date.parse("2027-09-04T09:30:00") + 30 * DAY));
  await person.reloads();
  await passes(page, 2_000);
  await shelf(person);
  await person.sees(/^No house is kept here yet/);
  assert.equal(await page.getByRole("heading", { name: "Removed" }).count(), 0);
  await person.presses("Close the list of houses");
}

/** Ten in the evening in New York is the next day in Greenwich. */
async function theDayIsThatOfThePlace(context, site) {
  const there = await context.browser().newContext({ timezoneId: "America/New_York", serviceWorkers: "block" });
  const person = new Person(await there.newPage(), site);
  await person.page.clock.setFixedTime(new Date("2026-05-03T02:00:00Z"));
  await person.opens();
  await person.presses("Open the example house");
  await person.presses("Menu");
  const comes = person.page.waitForEvent("download");
  await person.presses("Send this house as one file");
  const file = await readFile(await (await comes).path(), "utf8");
  assert.match(file, />2026-05-02\. A finished report/);
  await there.close();
}
