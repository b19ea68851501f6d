import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { require } from "../kit/browser.mjs";
import { examples, page, shows } from "../kit/reader.mjs";
import { serve } from "../kit/server.mjs";

export const title = "the examples of the README run: under Node, on a page under its policy, through a bundler, in one script";

const run = promisify(execFile);

/** What each example must print, in the order of the README. Rates: Approved Document F 2021, 0.3 L/s for each m². */
const PRINTS = [
  [/^162\u00a0m³\/h$/m, /^Living room: \d+\u00a0m³\/h through \d × 75 mm tube$/m],
  [/^not-a-house house\.name \S/],
  [/: .+ = 162\u00a0m³\/h/],
];

export default async function ({ yard, installed, browser }) {
  const its = await examples(installed);
  assert.deepEqual(Object.keys(its).sort(), ["bundle", "frame", "inline", "node", "page", "policy", "sizer", "store", "vite", "vite.config"], "vite.mjs and a journey run the rest");
  await underNode(yard, its.node);
  const policy = its.policy[0].trim();
  for (const kind of ["page", "sizer", "store"]) await writeFile(join(yard, `${kind}.html`), await strict(yard, kind, its[kind][0], policy));
  await bundled(yard, "bundle", its.bundle[0], policy);
  await bundled(yard, "inline", its.inline[0], policy.replace("connect-src 'self'", "connect-src 'none'"));
  const site = await serve(yard);
  try {
    // IRC 2021, table M1505.4.3(1): 1 501 to 3 000 ft² and 0 to 1 bedrooms, 45 cfm.
    await shows(browser, `${site.url}page.html`, /^Normal: 45\u00a0cfm$/);
    await shows(browser, `${site.url}bundle/index.html`, /^\d+ rule sets$/);
    await shows(browser, `${site.url}sizer.html`, /^Your house\n.*Ask us for an offer/s);
    await comesBack(browser, `${site.url}store.html`);
    const asked = await shows(browser, `${site.url}inline/index.html`, /^\d+ tubes\n.*Floor area/s);
    assert.deepEqual(asked, ["/inline/index.html", "/inline/inline.js"], "no second file");
  } finally {
    await site.stop();
  }
}

async function underNode(yard, codes) {
  assert.equal(codes.length, PRINTS.length);
  for (const [at, code] of codes.entries()) {
    const file = join(yard, `example-${at}.mjs`);
    await writeFile(file, code);
    const { stdout } = await run("node", [file], { cwd: yard });
    for (const line of PRINTS[at]) assert.match(stdout, line);
  }
}

/** The example as a page under the policy, with the package where a page would have it and what stands in its script beside it. */
async function strict(yard, kind, code, policy) {
  const placed = code.replace("./airtally-js/", "./node_modules/airtally-js/");
  const [whole, script] = placed.match(/<script type="module">\n(.*?)<\/script>/s) ?? [];
  if (!whole) return page(placed, policy);
  await writeFile(join(yard, `${kind}.js`), script);
  return page(placed.replace(whole, `<script type="module" src="./${kind}.js"></script>`), policy);
}

/** What was typed is there again on the next visit. */
async function comesBack(browser, url) {
  const tab = await browser.newPage();
  await tab.goto(url);
  const field = tab.locator("airtally-sizer").getByLabel("Floor area").first();
  await field.fill("31,5");
  await tab.waitForFunction(() => localStorage.length === 1);
  await tab.reload();
  assert.equal(await field.inputValue(), "31,5");
  await tab.close();
}

async function bundled(yard, name, code, policy) {
  const { build } = require("esbuild");
  await writeFile(join(yard, `${name}.js`), code);
  await build({
    entryPoints: [join(yard, `${name}.js`)], outdir: join(yard, name), absWorkingDir: yard,
    bundle: true, format: "esm", minify: true, loader: { ".wasm": "file" }, logLevel: "silent",
  });
  await writeFile(join(yard, name, "index.html"), page(`<script type="module" src="./${name}.js"></script>`, policy));
}
