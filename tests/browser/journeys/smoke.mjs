import assert from "node:assert/strict";

export const title = "the page starts, answers to typing, and lets nothing else run";

/** The complaint that this journey provokes on purpose. */
export const provokes = /TrustedHTML|trusted-types/;

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Start my house");
  await person.types("Name of the house", "Larkfield");
  await person.sees("Larkfield");

  const markup = await page.evaluate(() => {
    try {
      document.createElement("p").innerHTML = "<b>bold</b>";
      return "made from text";
    } catch (refused) {
      return refused.name;
    }
  });
  assert.equal(markup, "TypeError", "trusted types must refuse markup made from text");
}
