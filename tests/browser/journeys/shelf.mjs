import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { addRoom } from "../kit/house.mjs";

export const title = "houses are listed, found, copied, named, removed and brought back; each can be seen as it was";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Start my house");
  await person.types("Name of the house", "Mill Lane");
  await addRoom(person, "Kitchen", { "Floor area": "12" });
  await isSaved(person);

  await startsAnother(person, page);
  await opensFromTheList(person, page);
  await namesAndRemoves(person, page);
  await seesHowItWas(person, page);
  await aFileIsAHouseOfItsOwn(person, page);
  await person.reloads();
  await person.reads("Name of the house", "Mill Lane");
  await shelf(person);
}

/** The list, open. */
async function shelf(person) {
  await person.presses("Menu");
  await person.presses("Houses", person.page.locator("#menu"));
  const list = person.page.getByRole("dialog", { name: "Houses" });
  await list.getByText(/· copy sent/).waitFor();
  return list;
}

async function isSaved(person) {
  await person.presses("Menu");
  await person.sees(/^Saved on this device \d\d:\d\d · copy sent never$/);
  await person.presses("Menu");
}

async function names(list) {
  await list.locator(".shelf li").first().waitFor();
  return list.locator(".shelf .as-link").allTextContents();
}

async function startsAnother(person, page) {
  const list = await shelf(person);
  await person.presses("Start a new house", list);
  await person.sees("A new house. The one before is under Houses.");
  await person.types("Name of the house", "Orchard Row");
  await addRoom(person, "Bathroom", { "Floor area": "5" });
  await page.waitForTimeout(600);
  assert.deepEqual(await names(await shelf(person)), ["Orchard Row", "Mill Lane"]);
  await person.types("Find by name", "mÍLL");
  await page.locator(".shelf li").nth(1).waitFor({ state: "detached" });
  assert.deepEqual(await names(page.getByRole("dialog")), ["Mill Lane"]);
  await person.types("Find by name", "nowhere");
  await person.sees("None of that name.");
  await person.presses("Close the list of houses");
}

async function opensFromTheList(person) {
  await person.presses("Mill Lane", await shelf(person));
  await person.reads("Name of the house", "Mill Lane");
  await person.reloads();
  await person.reads("Name of the house", "Mill Lane");
}

async function more(person, name) {
  const list = await shelf(person);
  await person.presses(`More about ${name}`, list);
  await list.getByRole("heading", { name: "How it was" }).waitFor();
  return list;
}

async function namesAndRemoves(person, page) {
  let list = await more(person, "Orchard Row");
  await person.types("Name of this house", "Orchard Row 2");
  await person.presses("Make a copy", list);
  await person.reads("Name of the house", "Orchard Row 2 (copy)");
  list = await more(person, "Orchard Row 2 (copy)");
  await person.presses("Remove", list);
  await person.sees("Removed. It stays under Houses for 30 days.");
  await person.presses("Understood");
  list = await shelf(person);
  assert.deepEqual(await names(list), ["Orchard Row 2", "Mill Lane"]);
  await list.getByRole("heading", { name: "Removed" }).waitFor();
  await person.presses("More about Orchard Row 2 (copy)", list);
  await person.presses("Bring back", list);
  await list.getByRole("button", { name: "Orchard Row 2 (copy)", exact: true }).waitFor();
  await person.presses("More about Orchard Row 2 (copy)", list);
  await person.presses("Remove", list);
  await list.getByRole("heading", { name: "Removed" }).waitFor();
  await person.presses("More about Orchard Row 2 (copy)", list);
  await person.presses("Remove for good", list);
  await list.getByRole("heading", { name: "Removed" }).waitFor({ state: "detached" });
  await person.presses("Mill Lane", list);
  await person.reads("Name of the house", "Mill Lane");
}

async function seesHowItWas(person, page) {
  await person.reloads();
  await addRoom(person, "Hall", { "Floor area": "8" });
  await page.waitForTimeout(600);
  const list = await more(person, "Mill Lane");
  const versions = list.locator(".shelf li");
  assert.match(await versions.first().textContent(), /1 room · Mill Lane/);
  await versions.first().getByRole("button").click();
  await person.sees(/^As it was: \d\d:\d\d/);
  await triesToChange(person, page);
  await person.presses("Back to now");
  await person.sees("2 rooms");

  await versionOf(person, "Mill Lane");
  await person.presses("Bring this back");
  await person.sees(/^The old version is back/);
  await person.sees(/^1 room\b.*\d/);
  await page.waitForTimeout(600);
  const again = await more(person, "Mill Lane");
  assert.match(await again.locator(".shelf li").first().textContent(), /2 rooms/, "what was replaced is a version now");
  await person.presses("Close the list of houses");
}

async function versionOf(person, name) {
  const list = await more(person, name);
  await list.locator(".shelf li").last().getByRole("button").click();
  await person.sees(/^As it was/);
}

/** What is only looked at stays as it is, and says so. */
async function triesToChange(person, page) {
  await person.types("Name of the house", "Changed");
  await person.reads("Name of the house", "Mill Lane");
  await page.locator("#banner:focus").waitFor();
}

async function aFileIsAHouseOfItsOwn(person, page) {
  await person.presses("Menu");
  const comes = page.waitForEvent("download");
  await person.presses("Save as a file");
  const path = await (await comes).path();
  const list = await shelf(person);
  await list.getByText(/copy sent \d\d:\d\d$/).waitFor();
  const file = { name: "house.json", mimeType: "application/json", buffer: await readFile(path) };
  await list.locator("input[type=file]").setInputFiles(file);
  await person.sees(/The house of the file is open/);
  await page.waitForTimeout(600);
  assert.deepEqual(await names(await shelf(person)), ["Mill Lane", "Mill Lane", "Orchard Row 2"]);
  await person.presses("Close the list of houses");
}
