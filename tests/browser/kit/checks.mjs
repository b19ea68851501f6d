// What must hold at the end of every journey, whatever it was about.
import { require } from "./browser.mjs";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** Everything that is wrong with the page as it stands, in words; nothing wrong gives an empty list. */
export async function faults(page, complaints) {
  const heard = complaints.map((complaint) => `the page ${complaint}`);
  return [...heard, ...(await sideways(page)), ...(await barriers(page))];
}

async function sideways(page) {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  return over > 0 ? [`the page scrolls sideways by ${over} px`] : [];
}

/** Barriers for people with disabilities, found by axe. */
export async function barriers(page) {
  await page.evaluate(require("axe-core").source);
  const { violations } = await page.evaluate(
    (rules) => globalThis.axe.run(document, { runOnly: rules, resultTypes: ["violations"] }),
    RULES,
  );
  return violations.map(({ id, help, nodes }) => {
    const places = nodes.slice(0, 3).map(({ target, failureSummary }) => `${target} (${oneLine(failureSummary)})`);
    return `axe ${id}: ${help}: ${places.join("; ")}${nodes.length > 3 ? ` and ${nodes.length - 3} more` : ""}`;
  });
}

function oneLine(text) {
  return (text ?? "").replace(/\s+/g, " ").trim();
}
