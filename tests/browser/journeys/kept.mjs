import assert from "node:assert/strict";
import { addRoom } from "../kit/house.mjs";

export const title = "a kept house that cannot be read is moved aside, said, and never overwritten";

const BROKEN = [
  ['{"airtally":9,"house":{}}', /version 9/],
  ['{"airtally":1,"house":{"name":7}}', /house\.name/],
  ["<house/>", /./],
];

/** More than half of what a browser keeps for a page: there is no room for it twice. */
const HUGE = `<${"x".repeat(3_000_000)}`;

/** Letters of three bytes each: in all more than a text from elsewhere may have. */
const LONG = 360_000;

export default async function ({ person, page }) {
  await person.opens();
  await longTextsComeBack(person, page);
  for (const [text, says] of BROKEN) {
    await finds(person, page, text);
    const remark = page.getByRole("status");
    await remark.getByText(/aside/i).waitFor();
    assert.match(await remark.textContent(), says);
    const aside = await page.evaluate(() =>
      Object.keys(localStorage).filter((key) => key.startsWith("airtally.aside.")).map((key) => localStorage.getItem(key)));
    assert.deepEqual(aside, [text], "the text is kept to the letter");
    await person.sees("Start my house");
  }

  await finds(person, page, HUGE);
  await person.sees(/no room to put it aside/);
  await person.presses("Understood");
  await person.presses("Start my house");
  await addRoom(person, "Kitchen", { "Floor area": "12" });
  await page.waitForTimeout(600);
  const length = await page.evaluate(() => localStorage.getItem("airtally.house")?.length);
  assert.equal(length, HUGE.length, "what cannot be put aside is not overwritten");
}

/** Loads the page with this text kept. */
async function finds(person, page, text) {
  await page.evaluate((kept) => {
    localStorage.clear();
    window.addEventListener("pagehide", () => localStorage.setItem("airtally.house", kept));
  }, text);
  await person.reloads();
}

/** A house of one's own is never refused for being large. */
async function longTextsComeBack(person, page) {
  await person.presses("Start my house");
  await addRoom(person, "Kitchen", { "Floor area": "12" });
  await person.types("Name of the house", "家".repeat(LONG));
  await page.waitForFunction((long) => localStorage.getItem("airtally.house").length > long, LONG);
  await person.reloads();
  assert.equal((await person.field("Name of the house").inputValue()).length, LONG);
  await person.types("Name of the house", "Larkfield");
}
