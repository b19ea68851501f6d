import assert from "node:assert/strict";
import { addRoom, inTable } from "../kit/house.mjs";

export const title = "rows of rooms are copied, moved and removed by keys; Escape and long remarks leave the way free";

/** A house as it is kept, that has used up its numbers for rooms. */
const USED_UP = JSON.stringify({
  airtally: 1,
  house: {
    name: "", entries: [], next_room: 4294967295, settings: [], ticks: [],
    choices: { rules: "adf-2021", display: "m3h", credit: "without", print: "inch-pound", tube: "od75" },
    rooms: [{ id: 0, kind: "hall", name: "", storey: 0, entries: [] }],
  },
});

export default async function ({ person, page }) {
  await aLongRemarkLeavesTheWayFree(person, page);
  await person.presses("Start my house");
  await person.types("Name of the house", "Named first");
  await page.waitForFunction(() => localStorage.getItem("airtally.house")?.includes("Named first"));
  await person.reloads();
  await person.reads("Name of the house", "Named first");

  for (const kind of ["Bathroom", "Kitchen", "Hall"]) await addRoom(person, kind, { "Floor area": "6" });
  if (await inTable(person)) {
    await rowsFollowKeys(page);
    await wrongCellSaysSo(page);
    await escapeClosesBeside(page);
  }
  await usedUpNumbersAreSaid(person, page);
}

async function aLongRemarkLeavesTheWayFree(person, page) {
  await person.opens();
  await keeps(page, `{"airtally":1,"house":{"name":7}}`);
  await person.reloads();
  await page.getByRole("status").getByText(/aside/).waitFor();
  const free = await page.getByRole("button", { name: "Start my house" }).evaluate((it) => {
    it.scrollIntoView({ block: "center" });
    const { x, y, width, height } = it.getBoundingClientRect();
    return it.contains(document.elementFromPoint(x + width / 2, y + height / 2));
  });
  assert.ok(free, "the remark lies over the first button");
  await person.presses("Understood");
}

/** The next load of the page finds this text kept. */
function keeps(page, text) {
  return page.evaluate((kept) => {
    window.addEventListener("pagehide", () => localStorage.setItem("airtally.house", kept));
  }, text);
}

async function rowsFollowKeys(page) {
  const area = (room) => page.getByRole("textbox", { name: `Floor area of ${room}`, exact: true });
  // The row of the last room was closed: the focus is on its way back to it.
  await page.locator("#room-2:focus").waitFor();
  await area("Kitchen").focus();
  await page.keyboard.press("Alt+ArrowUp");
  await follows(page, ["Kitchen", "Bathroom", "Hall"], area("Kitchen"));
  await page.keyboard.press("Alt+ArrowDown");
  await follows(page, ["Bathroom", "Kitchen", "Hall"], area("Kitchen"));
  await page.keyboard.press("Alt+Enter");
  await follows(page, ["Bathroom", "Kitchen 1", "Kitchen 2", "Hall"], area("Kitchen 2"));
  await page.keyboard.press("Enter");
  await area("Hall").and(page.locator(":focus")).waitFor();
  await area("Kitchen 2").focus();
  await page.keyboard.press("Alt+Delete");
  const name = page.getByRole("textbox", { name: "Name of Hall", exact: true });
  await follows(page, ["Bathroom", "Kitchen", "Hall"], name);
  await page.locator(".toast").getByRole("button", { name: "Undo" }).click();
  await page.locator(".cells").getByRole("button", { name: "More about Kitchen 2" }).waitFor();
}

/** The rows stand in this order, and the focus is where it should be. */
async function follows(page, rooms, focused) {
  await focused.and(page.locator(":focus")).waitFor();
  const names = await page.getByRole("button", { name: /^More about / }).evaluateAll((all) => all.map((it) => it.ariaLabel));
  assert.deepEqual(names, rooms.map((room) => `More about ${room}`));
}

async function wrongCellSaysSo(page) {
  const area = page.getByRole("textbox", { name: "Floor area of Hall", exact: true });
  await area.fill("6 furlongs");
  const said = await area.evaluate((it) =>
    it.getAttribute("aria-describedby").split(" ").map((id) => document.getElementById(id).textContent).join(" "));
  assert.match(said, /no unit/);
  assert.equal(await area.getAttribute("aria-invalid"), "true");
  await area.fill("6");
}

async function escapeClosesBeside(page) {
  await page.locator(".to-look-at").click();
  await page.getByRole("dialog").waitFor();
  await page.getByRole("textbox", { name: "Name of Hall", exact: true }).focus();
  await page.keyboard.press("Escape");
  await page.getByRole("dialog").waitFor({ state: "hidden" });
}

async function usedUpNumbersAreSaid(person, page) {
  await keeps(page, USED_UP);
  await person.reloads();
  await person.sees(/used up its numbers/);
}
