import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { require } from "../kit/browser.mjs";
import { serve } from "../kit/server.mjs";

export const title = "the examples of the README run: under Node, on a page, through a bundler";

const run = promisify(execFile);

/** What each example must print, in the order of the README. Rates: Approved Document F 2021, 0.3 L/s for each m². */
const PRINTS = [
  [/^162\u00a0m³\/h$/m, /^Living room: \d+\u00a0m³\/h through \d × 75 mm tube$/m],
  [/^not-a-house house\.name \S/],
  [/: .+ = 162\u00a0m³\/h/],
];

export default async function ({ yard, installed, browser }) {
  const text = await readFile(join(installed, "README.md"), "utf8");
  const examples = [...text.matchAll(/^```\w+ (node|page|bundle|sizer)\n(.*?)^```$/gms)];
  const of = (kind) => examples.filter(([, its]) => its === kind).map(([, , code]) => code);
  assert.deepEqual(["node", "page", "bundle", "sizer"].map((kind) => of(kind).length), [PRINTS.length, 1, 1, 1]);
  for (const [at, code] of of("node").entries()) {
    const file = join(yard, `example-${at}.mjs`);
    await writeFile(file, code);
    const { stdout } = await run("node", [file], { cwd: yard });
    for (const line of PRINTS[at]) assert.match(stdout, line);
  }
  for (const kind of ["page", "sizer"]) await writeFile(join(yard, `${kind}.html`), html(of(kind)[0]));
  await bundled(yard, of("bundle")[0]);
  const site = await serve(yard);
  try {
    // IRC 2021, table M1505.4.3(1): 1 501 to 3 000 ft² and 0 to 1 bedrooms, 45 cfm.
    await shows(browser, `${site.url}page.html`, /^Normal: 45\u00a0cfm$/);
    await shows(browser, `${site.url}bundle/index.html`, /^\d+ rule sets$/);
    await shows(browser, `${site.url}sizer.html`, /^Your house\n.*Ask us for an offer/s);
  } finally {
    await site.stop();
  }
}

/** The example as a page, with the package where a page would have it. */
function html(code) {
  return page(code.replace("./airtally-js/", "./node_modules/airtally-js/"));
}

function page(body) {
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>x</title><link rel="icon" href="data:,"><body>${body}</body></html>`;
}

async function bundled(yard, code) {
  const { build } = require("esbuild");
  await writeFile(join(yard, "bundle.js"), code);
  await build({
    entryPoints: [join(yard, "bundle.js")], outdir: join(yard, "bundle"), absWorkingDir: yard,
    bundle: true, format: "esm", minify: true, loader: { ".wasm": "file" }, logLevel: "silent",
  });
  await writeFile(join(yard, "bundle", "index.html"), page(`<script type="module" src="./bundle.js"></script>`));
}

async function shows(browser, url, words) {
  const tab = await browser.newPage();
  const wrong = [];
  tab.on("pageerror", (error) => wrong.push(String(error)));
  tab.on("console", (message) => message.type() === "error" && wrong.push(message.text()));
  await tab.goto(url);
  const said = () => tab.evaluate(() => (document.querySelector("airtally-sizer")?.shadowRoot.querySelector(".sheet") ?? document.body).innerText.trim());
  for (let wait = 0; wait < 50 && !words.test(await said()) && wrong.length === 0; wait += 1) await tab.waitForTimeout(100);
  assert.deepEqual(wrong, [], url);
  assert.match(await said(), words);
  await tab.close();
}
