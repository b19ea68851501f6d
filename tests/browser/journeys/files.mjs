import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";

export const title = "a house goes out as a file and comes in again; a file that is none changes nothing";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  await person.types("Name of the house", "Café No. 7 / rear");
  await person.presses("Menu");
  const comes = page.waitForEvent("download");
  await person.presses("Save as a file");
  const file = await comes;
  assert.equal(file.suggestedFilename(), "caf-no-7-rear.json");
  const text = await readFile(await file.path(), "utf8");
  assert.equal(JSON.parse(text).house.name, "Café No. 7 / rear");

  await person.types("Name of the house", "Another");
  await opens(page, person, text);
  await person.reads("Name of the house", "Café No. 7 / rear");
  await page.locator(".toast").getByRole("button", { name: "Undo" }).click();
  await person.reads("Name of the house", "Another");

  for (const [wrong, says] of REASONS) {
    await opens(page, person, wrong);
    await page.getByText(says).waitFor();
    await person.presses("Understood");
  }
  const hostile = [
    "", "{", "[[[[[[[[", `{"airtally":99,"house":{}}`, `{"airtally":1,"house":{"name":{"__proto__":1}}}`,
    text.replace(/"rooms":\s*\[/, '"rooms":[7,'), text.slice(0, 900), "\u0000".repeat(3_000_000),
    `{"airtally":1,"house":${"[".repeat(100_000)}`,
  ];
  for (const wrong of hostile) {
    await opens(page, person, wrong);
    await page.getByText(/This file was not opened/).waitFor();
    await person.presses("Understood");
    await person.reads("Name of the house", "Another");
  }
  await drops(page, "no house");
  await page.getByText(/This file was not opened/).waitFor();
  await person.presses("Understood");
  await drops(page, text);
  await person.reads("Name of the house", "Café No. 7 / rear");
  await ofAFileThatWasSent(page, person);
}

/** What a person can understand and do something about. */
const REASONS = [
  ["part,price\ntube,3", /^This file was not opened\. Nothing was changed\. Why: it was cut off on its way, or airtally did not write it/],
  ["x".repeat(1_100_000), /Why: it is longer than any house/],
  [JSON.stringify({ airtally: 1, house: houseOf(1001) }), /Why: it has more than 1 000 rooms/],
];

function houseOf(count) {
  const choices = { rules: "adf-2021", display: "m3h", credit: "without", print: "si", tube: "od75" };
  const rooms = Array.from({ length: count }, (_, id) => ({ id, kind: "hall", name: "", storey: 0, entries: [] }));
  return { name: "", choices, entries: [], rooms, next_room: count, settings: [], ticks: [] };
}

/** The house of a page that was sent as one file comes in as well. */
async function ofAFileThatWasSent(page, person) {
  await person.types("Name of the house", "</script><b>Sent");
  await person.presses("Menu");
  const comes = page.waitForEvent("download");
  await person.presses("Send this house as one file");
  const sent = await readFile(await (await comes).path(), "utf8");
  await person.types("Name of the house", "Mine");
  await opens(page, person, sent, "house.html");
  await person.reads("Name of the house", "</script><b>Sent");
  await page.locator(".toast").getByRole("button", { name: "Undo" }).click();
  await person.reads("Name of the house", "Mine");
  await drops(page, sent);
  await person.reads("Name of the house", "</script><b>Sent");
}

/** A file let fall anywhere on the page. */
async function drops(page, text) {
  const held = await page.evaluateHandle((text) => {
    const held = new DataTransfer();
    held.items.add(new File([text], "house.json", { type: "application/json" }));
    return held;
  }, text);
  await page.locator("main").dispatchEvent("drop", { dataTransfer: held });
}

async function opens(page, person, text, name = "house.json") {
  if (!(await page.locator("#menu").count())) await person.presses("Menu");
  const mimeType = name.endsWith("html") ? "text/html" : "application/json";
  const file = { name, mimeType, buffer: Buffer.from(text) };
  await page.locator("#menu input[type=file]").setInputFiles(file);
}
