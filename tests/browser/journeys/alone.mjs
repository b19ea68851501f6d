import assert from "node:assert/strict";
import { join } from "node:path";
import { alone } from "../kit/alone.mjs";
import { faults } from "../kit/checks.mjs";
import { addRoom, goTo } from "../kit/house.mjs";

export const title = "the page in one file designs and keeps a house from a folder, asks for nothing, and says where it cannot keep";

const FILE = join(process.argv[2], "airtally.html");

export default async function ({ person, context, size }) {
  await person.opens();
  const browser = context.browser();
  const designed = await alone(FILE, browser, { size }, async ({ person, page }) => {
    await designs(person);
    await person.reloads();
    await goTo(person, "Air");
    await seesTheNumbers(person);
    await goTo(person, "Steps");
    await person.sees("Ask what burns fuel");
    assert.deepEqual(await faults(page, () => []), []);
  });
  assert.deepEqual(designed, []);

  const refused = await alone(FILE, browser, { size }, async ({ person, page }) => {
    await page.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
      IDBFactory.prototype.open = () => {
        throw new DOMException("denied", "SecurityError");
      };
    });
    await person.opens();
    await person.presses("Start my house");
    await addRoom(person, "Kitchen", { "Floor area": "12" });
    await person.sees(/does not keep what you type/);
  });
  assert.deepEqual(refused, []);
}

async function designs(person) {
  await person.opens();
  await person.presses("Start my house");
  await addRoom(person, "Living room", { "Floor area": "30" });
  await addRoom(person, "Kitchen", { "Floor area": "10" });
  await addRoom(person, "Bedroom", { "Floor area": "12" });
  await goTo(person, "Air");
  await seesTheNumbers(person);
  await person.page.waitForFunction(() => JSON.parse(localStorage.getItem("airtally.house")).house.rooms.length === 3);
}

/** Approved Document F 2021, table 1.3: one bedroom 19 L/s, 68.4 m³/h. */
async function seesTheNumbers(person) {
  await person.sees("68.4");
}
