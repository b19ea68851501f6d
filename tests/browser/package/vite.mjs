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
  const its = await examples(installed);
  const root = await site({ yard, installed }, its.vite[0], its["vite.config"][0]);
  const vite = await import(pathToFileURL(require.resolve("vite")));
  const settings = { root, base: "./", logLevel: "error", server: { host: "127.0.0.1", port: 0, hmr: false } };
  await built(vite, settings, browser);
  await developed(vite, settings, browser);
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

async function built(vite, settings, browser) {
  await vite.build(settings);
  const folder = join(settings.root, "dist");
  const programs = (await readdir(join(folder, "assets"))).filter((name) => name.endsWith(".wasm"));
  assert.equal(programs.length, 1, "the program is carried along once");
  const here = await serve(folder, { base: "/some/path/" });
  try {
    const asked = await shows(browser, `${here.url}index.html`, SAYS);
    assert.ok(asked.includes(`/some/path/assets/${programs[0]}`), String(asked));
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
