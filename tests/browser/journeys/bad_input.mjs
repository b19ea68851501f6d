import assert from "node:assert/strict";
import { addRoom, goTo, inRoom, openRoom } from "../kit/house.mjs";

export const title = "what cannot be read stays as typed, and its field says what would be accepted";

const TYPED = [
  ["-5", /must be between/],
  ["1e308", /must be between/],
  ["NaN", /cannot be read/],
  ["🚿🚿", /cannot be read/],
  ["12 furlongs", /no unit/],
  ["10 000", /must be between/],
  ["20 cfm", /an area is asked for/],
];

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Start my house");
  await addRoom(person, "Main bedroom", { "Floor area": "14" });
  await addRoom(person, "Kitchen", { "Floor area": "12" });
  await openRoom(person, "Main bedroom");
  const area = inRoom(person).getByLabel("Floor area", { exact: true });
  for (const [text, says] of TYPED) {
    await area.fill(text);
    await person.sees(says, inRoom(person));
    assert.equal(await area.inputValue(), text, "kept as typed");
    assert.equal(await area.getAttribute("aria-invalid"), "true");
  }

  await area.fill("1,234");
  await person.sees(/Which one/, inRoom(person));
  await inRoom(person).getByRole("button", { name: /1\.234/ }).click();
  assert.equal(await area.inputValue(), "1.234");

  // The unit stays: 1 234 ft² must never become 1 234 m².
  await area.fill("1,234 sq ft");
  await inRoom(person).getByRole("button", { name: "I mean 1234 sq ft" }).click();
  assert.equal(await area.inputValue(), "1234 sq ft");

  await area.fill("10 furlongs");
  await person.reloads();
  await goTo(person, "House");
  await openRoom(person, "Main bedroom");
  assert.equal(await area.inputValue(), "10 furlongs", "kept over a reload");
  await inRoom(person).getByLabel(/^Name/).fill("x".repeat(5000));
  await goTo(person, "Air");
  await person.sees(/look at/);
  await page.locator(".to-look-at").click();
  await person.sees(/furlongs/);
}
