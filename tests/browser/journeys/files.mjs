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

  const hostile = [
    "", "{", "[[[[[[[[", `{"airtally":99,"house":{}}`, `{"airtally":1,"house":{"name":{"__proto__":1}}}`,
    text.replace(/"rooms":\s*\[/, '"rooms":[7,'), text.slice(0, 900), "\u0000".repeat(3_000_000),
    `{"airtally":1,"house":${"[".repeat(100_000)}`,
  ];
  for (const wrong of hostile) {
    await opens(page, person, wrong);
    await page.getByText(/This file is no house of this page/).waitFor();
    await person.presses("Understood");
    await person.reads("Name of the house", "Another");
  }
  await drops(page, "no house");
  await page.getByText(/This file is no house of this page/).waitFor();
  await person.presses("Understood");
  await drops(page, text);
  await person.reads("Name of the house", "Café No. 7 / rear");
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

async function opens(page, person, text) {
  if (!(await page.locator("#menu").count())) await person.presses("Menu");
  const file = { name: "house.json", mimeType: "application/json", buffer: Buffer.from(text) };
  await page.locator("#menu input[type=file]").setInputFiles(file);
}
