// A person at the sizer on somebody else's page.
import assert from "node:assert/strict";
import { PHONE } from "./browser.mjs";

/** The sizers at these places, once their first result is there. */
export function sizers(page, places) {
  return Promise.all(places.map(async (place) => {
    const sizer = page.locator(place);
    await sizer.getByText("What to check").waitFor();
    return sizer;
  }));
}

/** Types the floor areas of the first rooms. */
export async function fillsAreas(sizer, texts) {
  for (const [at, text] of texts.entries()) await sizer.getByLabel("Floor area").nth(at).fill(text);
}

/** Goes on to a leaf, where they lie one behind the other. */
export async function goesTo(sizer, size, leaf) {
  if (size === PHONE) await sizer.getByRole("button", { name: `Next: ${leaf}` }).click();
}

/** The height of a frame once it has been the same for a second; what it shows must fit into it. */
export async function settles(page, frame) {
  const height = () => frame.evaluate((it) => it.getBoundingClientRect().height);
  let [last, since] = [await height(), Date.now()];
  const began = Date.now();
  while (Date.now() - since < 1000) {
    await page.waitForTimeout(100);
    const now = await height();
    if (now !== last) [last, since] = [now, Date.now()];
    assert.ok(Date.now() - began < 8000, "the frame does not come to rest");
  }
  const inside = await frame.evaluate(({ contentDocument: { documentElement } }) => [documentElement.scrollHeight, documentElement.clientHeight]);
  assert.equal(inside[0], inside[1], "what is shown fits into the frame");
  assert.ok(Math.abs(last - inside[0]) < 2, `a frame of ${last} px shows ${inside[0]} px`);
  return last;
}
