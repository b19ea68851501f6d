import assert from "node:assert/strict";
import { goTo } from "../kit/house.mjs";

export const title = "the pocket answers without a house, shows its working, and never changes what is typed";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Pocket");
  const pocket = page.getByRole("dialog");
  await pocket.waitFor();
  const figure = async (name) => {
    const total = pocket.locator(".total").filter({ has: page.getByText(name, { exact: true }) });
    return (await total.locator(".figure").textContent()).replace(/\s/gu, " ");
  };

  // 30 m³/h: 30 / 11.2 m/s in a tube of 63 mm, and 2.2 Pa for each metre.
  await person.types("Air in the tube", "30");
  assert.match(await figure("Speed of the air"), /^2\.6[78] m\/s$/);
  assert.equal(await figure("Pressure of each metre"), "2.2 Pa");
  // 50 cfm in that tube are 7.6 m/s; at 3 m/s they need three.
  await person.types("Air in the tube", "50 cfm");
  assert.match(await figure("Speed of the air"), /^7\.5[78] m\/s$/);
  assert.equal((await figure("Tubes side by side, at most 3\u{a0}m/s")).trim(), "3");
  await pocket.getByText("How it is worked out").click();
  await person.sees("50 cfm / (π·(63 mm)² / 4)".replace(" cfm", "\u{a0}cfm").replace(" mm", "\u{a0}mm"), pocket);
  await person.sees("arithmetic", pocket);

  // What cannot be read stays, and the field says why.
  for (const [text, says] of [["quick", /cannot be read as an air flow/], ["-3", /must be between/]]) {
    await person.types("Air in the tube", text);
    await person.sees(says, pocket);
    await person.reads("Air in the tube", text);
    assert.equal(await person.field("Air in the tube").getAttribute("aria-invalid"), "true");
    assert.equal(await pocket.locator(".total").count(), 0, "no answer from a text that cannot be read");
  }

  // 36 m³/h are 10 L/s and 21.2 cfm: exact, and the international foot.
  await pocket.getByRole("radio", { name: "Units", exact: true }).check();
  await person.types("Air flow", "36");
  await person.sees("10", pocket);
  await person.sees("21.2", pocket);

  // 160 mm carry 181 m³/h at 2.5 m/s, 150 mm carry 191 at 3.
  await pocket.getByRole("radio", { name: "Main", exact: true }).check();
  await person.types("Air in the main", "180");
  assert.equal(await figure("Narrowest bore, at most 2.5\u{a0}m/s"), "160 mm");
  assert.equal(await figure("Narrowest bore, at most 3\u{a0}m/s"), "150 mm");

  // A joist of 225 mm bears 75 mm by the American third and 56 mm by the British quarter, 1 to 1.6 m off a bearing.
  await pocket.getByRole("radio", { name: "Joist", exact: true }).check();
  await person.types("Depth of the joist", "225");
  assert.equal(await figure("Largest hole the timber bears, America"), "75 mm");
  assert.equal(await figure("Largest hole the timber bears, Britain"), "56 mm");
  assert.equal(await pocket.locator(".total").count(), 3, "no zone without a span, no tubes without a clear width");
  await person.types("Span of the joist", "4");
  await person.types("Clear between two joists", "400");
  assert.equal(await figure("British zone of holes off a bearing, at 0.4"), "1.6 m");
  assert.equal((await figure("Tubes between two joists")).trim(), "4");
  await pocket.getByRole("radio", { name: "Main", exact: true }).check();

  // Put away and opened again it still holds its texts; the house is as it was.
  await page.keyboard.press("Escape");
  await pocket.waitFor({ state: "hidden" });
  await goTo(person, "Air");
  await person.presses("Pocket");
  await person.reads("Air in the main", "180");
  await pocket.getByRole("radio", { name: "Speed", exact: true }).check();
  await person.reads("Air in the tube", "-3");
}
