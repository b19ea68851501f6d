import assert from "node:assert/strict";
import { cp, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { require } from "../kit/browser.mjs";
import { examples, page, shows } from "../kit/reader.mjs";
import { serve } from "../kit/server.mjs";

export const title = "a page through Vite, as the README says: built and served, and from the development server";

/** Approved Document F 2021: 0.3 L/s for each of 150 m². */
const SAYS = /^Normal: 162\u00a0m³\/h$/;

export default async function ({ yard, installed, browser }) {
  const { vite: [main], "vite.config": [config] } = await examples(installed);
  const root = await site({ yard, installed }, main, config);
  const vite = await import(pathToFileURL(require.resolve("vite")));
  const settings = { root, base: "./", logLevel: "error", server: { host: "127.0.0.1", port: 0, hmr: false } };
  assert.equal(await built(vite, settings, browser), 1, "the program is carried along once");
  await developed(vite, settings, browser);
  await writeFile(join(root, "main.js"), main.replace("airtally-js", "airtally-js/inline"));
  assert.equal(await built(vite, settings, browser), 0, "the program is in the script");
}

/** A site of somebody's: the package as it is installed, a page, and the script and the settings of the README. */
async function site({ yard, installed }, main, config) {
  const root = join(yard, "vite");
  await cp(installed, join(root, "node_modules", "airtally-js"), { recursive: true });
  await writeFile(join(root, "package.json"), JSON.stringify({ name: "site", private: true, type: "module" }));
  await writeFile(join(root, "vite.config.js"), config);
  await writeFile(join(root, "main.js"), main);
  await writeFile(join(root, "index.html"), page(`<script type="module" src="./main.js"></script>`));
  return root;
}

/** How many programs it carries along, once it has shown what it should. */
async function built(vite, settings, browser) {
  await vite.build(settings);
  const folder = join(settings.root, "dist");
  const programs = (await readdir(join(folder, "assets"))).filter((name) => name.endsWith(".wasm"));
  const here = await serve(folder, { base: "/some/path/" });
  try {
    const asked = await shows(browser, `${here.url}index.html`, SAYS);
    assert.ok(programs.every((name) => asked.includes(`/some/path/assets/${name}`)), String(asked));
    return programs.length;
  } finally {
    await here.stop();
  }
}

async function developed(vite, settings, browser) {
  const server = await vite.createServer(settings);
  try {
    await server.listen();
    const asked = await shows(browser, server.resolvedUrls.local[0], SAYS);
    assert.ok(asked.some((path) => path.endsWith("/node_modules/airtally-js/index.js")), `not where it lies: ${asked}`);
  } finally {
    await server.close();
  }
}
