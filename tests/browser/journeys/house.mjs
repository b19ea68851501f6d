import assert from "node:assert/strict";
import { addRoom, goTo, row } from "../kit/house.mjs";

export const title = "a house is entered from empty and gets air, tubes and steps";

// Approved Document F 2021, worked example with 3 bedrooms, 90 m², kitchen, bathroom, WC: 31 L/s; supply by volume
// 45, 32, 26 and 17 m³ is 11.63, 8.27, 6.72 and 4.39 L/s, extract 14.93, 9.19 and 6.89 L/s before rounding.
const ROOMS = [
  ["Living room", { "Floor area": "18" }],
  ["Main bedroom", { "Floor area": "12.8" }],
  ["Bedroom", { "Floor area": "10,4" }],
  ["Bedroom", { "Floor area": "6.8 m2" }],
  ["Kitchen", { "Floor area": "11" }],
  ["Bathroom", { "Floor area": "5" }],
  ["WC", { "Floor area": "2" }],
];
const SUPPLY = { "Living room": "12", "Main bedroom": "8", "Bedroom 1": "7", "Bedroom 2": "4" };
const EXTRACT = { Kitchen: "15", Bathroom: "9", WC: "7" };

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Start my house");
  await page.getByRole("radio", { name: "L/s and metres" }).check();
  for (const [kind, typed] of ROOMS) await addRoom(person, kind, typed);
  await person.types("Floor area of the house", "90");
  assert.equal(await person.field("Rule set").inputValue() !== "", true);

  await goTo(person, "Air");
  await person.sees(/^31$/);
  for (const [name, flow] of Object.entries(SUPPLY)) await insists(row(person, "Supply", name), flow);
  for (const [name, flow] of Object.entries(EXTRACT)) await insists(row(person, "Extract", name), flow);
  const balance = page.locator(".balance-sum");
  assert.match((await balance.textContent()).replaceAll(/\s/g, ""), /31\D+31/, "as much comes in as goes out");

  await goTo(person, "Tubes");
  await person.sees("Supply ports");
  await goTo(person, "Steps");
  await person.sees(/Pull/);
}

async function insists(row, flow) {
  assert.equal((await row.locator("b").first().textContent()).trim(), flow, await row.textContent());
}
