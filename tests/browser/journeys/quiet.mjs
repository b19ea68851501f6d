import assert from "node:assert/strict";
import { read } from "../kit/link.mjs";

export const title = "what the browser itself prints carries the code of the house that lies still, and nothing is loaded for it that is not kept";
export const kept = true;

export default async function ({ person, page, context, size, site }) {
  await beforeAnythingIsKept(context, size, site);
  await person.opens();
  await person.sees("Works offline now.");
  await context.setOffline(true);
  await person.presses("Open the example house");
  await person.types("Name of the house", "On paper");
  await page.waitForTimeout(4_000);
  const first = await onPaper(page, context);
  await person.types("Name of the house", "On paper, later");
  await page.waitForTimeout(4_000);
  assert.notEqual(await onPaper(page, context), first, "the code is that of the house as it is now");
  await context.setOffline(false);
}

/** What a camera reads on the paper of the browser's own menu. */
async function onPaper(page, context) {
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
  await page.emulateMedia({ media: "print" });
  const code = page.locator(".on-paper .code");
  await code.waitFor({ timeout: 2_000 });
  const link = await read(context, code);
  assert.match(link, /#h1\./);
  await page.emulateMedia({ media: "screen" });
  await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
  return link;
}

/** A device that keeps nothing yet loads no scripts for links before somebody asks for one. */
async function beforeAnythingIsKept(context, { width, height }, site) {
  const guest = await context.browser().newContext({ serviceWorkers: "block", viewport: { width, height } });
  const page = await guest.newPage();
  const asked = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(site.url);
  await page.getByRole("button", { name: "Open the example house" }).click();
  await page.waitForTimeout(4_000);
  assert.deepEqual(asked.filter((url) => /link/.test(url)), []);
  await guest.close();
}
