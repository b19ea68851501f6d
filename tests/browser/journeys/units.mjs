import assert from "node:assert/strict";
import { addRoom, goTo, inRoom, openRoom } from "../kit/house.mjs";

export const title = "any unit may be typed, and what is typed stays as typed";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Start my house");
  await addRoom(person, "Bedroom", { Length: "12 ft 6 in", Width: "3,2 m" });
  await addRoom(person, "Kitchen", { "Floor area": "150 sq ft" });
  await addRoom(person, "Living room", { "Floor area": "30" });

  await page.getByRole("radio", { name: "cfm and feet" }).check();
  await openRoom(person, "Bedroom");
  const length = inRoom(person).getByLabel("Length", { exact: true });
  assert.equal(await length.inputValue(), "12 ft 6 in");
  assert.equal(await inRoom(person).getByLabel("Width", { exact: true }).inputValue(), "3,2 m");
  await goTo(person, "Air");
  await person.sees("cfm");

  // IRC, table M1505.4.3(1): 1 500 ft² and 1 bedroom stand in the first row, 30 cfm, whatever unit they were typed in.
  await goTo(person, "House");
  await person.chooses("Rule set", "USA · IRC 2021");
  await person.chooses("Exhaust of the kitchen", "A hood of its own to outdoors");
  for (const area of ["1,500.0 sq ft", "139.35456 m2", "1 500 ft2"]) {
    await person.types("Floor area of the house", area);
    await person.reads("Floor area of the house", area);
    await goTo(person, "Air");
    await person.sees(/^30$/);
    await goTo(person, "House");
  }
  await person.types("Floor area of the house", "1501 ft2");
  await goTo(person, "Air");
  await person.sees(/^45$/);
}
