// A reader of the package's README, who runs its examples as they stand.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { join } from "node:path";

/** The examples of the README by the word behind their language, each a list in the order of the README. */
export async function examples(installed) {
  const text = await readFile(join(installed, "README.md"), "utf8");
  const found = [...text.matchAll(/^```\w+ (\S+)\n(.*?)^```$/gms)];
  assert.equal(found.length * 2, text.match(/^```/gm).length, "every example has a word that says what it is for");
  return grouped(found);
}

function grouped(found) {
  const by = {};
  for (const [, kind, code] of found) (by[kind] ??= []).push(code);
  return by;
}

/** A page with this in its body, under a policy where one is given: nothing else is allowed then but an icon that is none. */
export function page(body, policy = "") {
  const meta = policy && `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; ${policy}">`;
  return `<!doctype html><html lang="en"><head><meta charset="utf-8">${meta}<title>x</title><link rel="icon" href="data:,"></head><body>${body}</body></html>`;
}

/** Opens a page, waits until it says this, and gives back what it asked for; an error on the way is a fault. */
export async function shows(browser, url, words) {
  const tab = await browser.newPage();
  const [wrong, asked] = [[], []];
  tab.on("pageerror", (error) => wrong.push(String(error)));
  tab.on("console", (message) => message.type() === "error" && wrong.push(message.text()));
  tab.on("request", (request) => asked.push(new URL(request.url()).pathname));
  await tab.goto(url);
  const said = () => tab.evaluate(() => {
    const sizer = document.querySelector("airtally-sizer")?.shadowRoot.querySelector(".sheet");
    return [document.body.innerText, sizer?.innerText].filter(Boolean).join("\n").trim();
  });
  for (let wait = 0; wait < 50 && !words.test(await said()) && wrong.length === 0; wait += 1) await tab.waitForTimeout(100);
  assert.deepEqual(wrong, [], url);
  assert.match(await said(), words);
  await tab.close();
  return asked;
}
