// What must hold at the end of every journey, whatever it was about.
import { LOOKS, require } from "./browser.mjs";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** Everything that is wrong with the page as it stands, in words; nothing wrong gives an empty list. */
export async function faults(page, complaints) {
  const wrong = await sideways(page);
  await unroll(page);
  wrong.push(...(await barriers(page)), ...(await pale(page)));
  return [...complaints().map((complaint) => `the page ${complaint}`), ...wrong];
}

async function sideways(page) {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  return over > 0 ? [`the page scrolls sideways by ${over} px`] : [];
}

/**
 * Makes the screen as high as the page. Otherwise a bar that stays in place covers half of some field, which a
 * person scrolls away and axe takes for a target that is too small.
 */
async function unroll(page) {
  const { width, height } = page.viewportSize();
  const whole = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: Math.max(height, whole) });
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/** Barriers for people with disabilities, found by axe. */
async function barriers(page) {
  return axe(page, { type: "tag", values: RULES }, { "color-contrast": { enabled: false } });
}

/** Text too pale for its ground, in each look. */
async function pale(page) {
  const found = [];
  for (const look of LOOKS) {
    await page.evaluate((look) => document.documentElement.setAttribute("data-look", look), look);
    const here = await axe(page, { type: "rule", values: ["color-contrast"] });
    found.push(...here.map((fault) => `in the ${look} look: ${fault}`));
  }
  return found;
}

async function axe(page, runOnly, rules = {}) {
  const loaded = await page.evaluate(() => Boolean(globalThis.axe));
  if (!loaded) await page.evaluate(require("axe-core").source);
  const { violations } = await page.evaluate(
    (wish) => globalThis.axe.run(document, { ...wish, resultTypes: ["violations"] }),
    { runOnly, rules },
  );
  return violations.map(({ id, help, nodes }) => {
    const places = nodes.slice(0, 3).map(({ target, failureSummary }) => `${target} (${oneLine(failureSummary)})`);
    return `axe ${id}: ${help}: ${places.join("; ")}${nodes.length > 3 ? ` and ${nodes.length - 3} more` : ""}`;
  });
}

function oneLine(text) {
  return (text ?? "").replace(/\s+/g, " ").trim();
}
