import assert from "node:assert/strict";
import { goTo } from "../kit/house.mjs";

export const title = "paper shows every step whole, whoever asked to print; the screen draws only the open one";

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Open the example house");
  await goTo(person, "Steps");
  await onScreen(page);

  await page.evaluate(countsOnPaper);
  const pdf = await page.pdf({ format: "A4" });
  assert.ok(pdf.length > 50_000, `a list on paper of ${pdf.length} bytes`);
  await seenOnPaper(page, "asked for by the browser");
  await onScreen(page);

  await person.presses("Menu");
  await person.presses("Print this page");
  await seenOnPaper(page, "asked for by the menu");
  await onScreen(page);
}

/** One step drawn whole, and a list that is worth folding. */
async function onScreen(page) {
  await page.waitForFunction(() => document.querySelectorAll(".step-more").length === 1);
  assert.ok((await page.locator(".step").count()) > 40);
}

async function seenOnPaper(page, how) {
  await page.waitForFunction(() => window.onPaper !== undefined);
  const { steps, whole } = await page.evaluate(() => window.onPaper);
  assert.equal(whole, steps, `steps drawn whole on paper, ${how}`);
  await page.evaluate(() => delete window.onPaper);
}

/** Runs inside the page. What is drawn when the page has heard that it goes to paper, before the browser lays it out; when it has
 * printed, the page may have folded its steps already. The browser's own window never comes. */
function countsOnPaper() {
  const count = () => {
    const all = (of) => document.querySelectorAll(of).length;
    window.onPaper = { steps: all(".step"), whole: all(".step-more") };
  };
  window.addEventListener("beforeprint", count);
  window.print = () => {
    for (const event of ["beforeprint", "afterprint"]) window.dispatchEvent(new Event(event));
  };
}
