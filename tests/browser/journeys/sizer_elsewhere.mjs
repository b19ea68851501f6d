import assert from "node:assert/strict";
import { copyFile, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PHONE } from "../kit/browser.mjs";
import { serve } from "../kit/server.mjs";
import { fillsAreas, sizers } from "../kit/sizer.mjs";

export const title = "a frame from another origin gets its height, and tells what was typed only to the page that its address names";

export const sizes = [PHONE];

/** Complaints that this journey provokes on purpose: the browser itself keeps a message from a page that it is not for. */
export const provokes = /Failed to execute 'postMessage'.*https:\/\/elsewhere\.example/;

export default async function ({ page, site }) {
  const folder = await mkdtemp(join(tmpdir(), "airtally-host-"));
  const host = await serve(folder);
  try {
    await copyFile(join(process.argv[2], "embed", "frame.js"), join(folder, "frame.js"));
    await page.route(`${host.origin}/**`, (route) => route.continue());
    const named = await framed({ page, site, host, folder }, host.origin);
    assert.deepEqual(named, { fits: true, heard: ["change"], typed: "31" });
    const unnamed = await framed({ page, site, host, folder }, "");
    assert.deepEqual(unnamed, { fits: true, heard: [], typed: null }, "the height only");
    const astray = await framed({ page, site, host, folder }, "https://elsewhere.example");
    assert.deepEqual(astray, { fits: false, heard: [], typed: null }, "nothing at all");
  } finally {
    await host.stop();
    await rm(folder, { recursive: true });
  }
}

/** Shows a page of another origin with the frame, types into it, and gives what the page came to know. */
async function framed({ page, site, host, folder }, named) {
  await writeFile(join(folder, "host.html"), `<!doctype html><html lang="en"><meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; img-src data:; frame-src ${site.origin}">
    <title>Host</title><link rel="icon" href="data:,"><main><h1>Host</h1><iframe title="Sizer" width="320" height="150"
    src="${site.url}embed.html?host=${encodeURIComponent(named)}" sandbox="allow-scripts allow-same-origin allow-downloads"></iframe></main></html>`);
  await page.goto(`${host.url}host.html`);
  await page.evaluate(async () => {
    const { SizerFrame } = await import("./frame.js");
    globalThis.sizer = new SizerFrame(document.querySelector("iframe"));
    globalThis.heard = [];
    for (const what of ["change", "ask", "fault"]) sizer.addEventListener(what, () => heard.push(what));
  });
  const [inner] = await sizers(page.frameLocator("iframe"), ["airtally-sizer"]);
  await fillsAreas(inner, ["31"]);
  await page.waitForTimeout(1500);
  const typed = named === host.origin ? await page.evaluate(async () => (await sizer.take()).house.rooms[0].entries[0].text) : null;
  const wanted = await page.frames()[1].evaluate(() => document.querySelector("main").getBoundingClientRect().height);
  const { height, heard } = await page.evaluate(() => ({ heard, height: document.querySelector("iframe").clientHeight }));
  return { fits: Math.abs(height - wanted) < 3, heard, typed };
}
