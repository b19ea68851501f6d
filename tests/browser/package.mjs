// Checks the package for other pages and for Node as it would be published: node package.mjs FOLDER BUDGET [NAME…].
import { execFileSync } from "node:child_process";
import { mkdir, readdir, rm } from "node:fs/promises";
import { join, resolve } from "node:path";
import { launch } from "./kit/browser.mjs";

const [folder, budget, ...wanted] = process.argv.slice(2);
const yard = await unpacked();
const checks = await load(wanted);
const browser = await launch();
let failed = 0;
for (const { default: check, title } of checks) {
  const began = Date.now();
  const wrong = await check({ ...yard, budget: Number(budget), browser }).then(() => null, (error) => error);
  failed += wrong ? 1 : 0;
  console.log(`${wrong ? "  FAIL" : "  ok  "} ${title} (${Date.now() - began} ms)`);
  if (wrong) console.log(`       ${String(wrong.stack ?? wrong).replaceAll("\n", "\n       ")}`);
}
await browser.close();
console.log(`package: ${checks.length - failed} passed, ${failed} failed`);
process.exitCode = failed > 0 || checks.length === 0 ? 1 : 0;

/** A yard of a program that uses the package: packed as npm publishes it, and unpacked where Node and bundlers look. */
async function unpacked() {
  const yard = resolve(folder, "..", "airtally-js-used");
  const installed = join(yard, "node_modules", "airtally-js");
  await rm(yard, { recursive: true, force: true });
  await mkdir(installed, { recursive: true });
  const said = execFileSync("npm", ["pack", "--json", "--pack-destination", yard], { cwd: folder, encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] });
  const packed = join(yard, JSON.parse(said)[0].filename);
  execFileSync("tar", ["-xzf", packed, "-C", installed, "--strip-components", "1"]);
  return { yard, installed, packed };
}

/** A check is a module: `default` does it, `title` says what it proves. */
async function load(names) {
  const place = new URL("package/", import.meta.url);
  const files = (await readdir(place)).filter((file) => file.endsWith(".mjs")).sort();
  const chosen = files.filter((file) => names.length === 0 || names.some((name) => file.includes(name)));
  return Promise.all(chosen.map((file) => import(new URL(file, place))));
}
