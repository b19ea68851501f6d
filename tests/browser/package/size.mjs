import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { brotliCompressSync, constants } from "node:zlib";

export const title = "the program is small, and the README says what it weighs inside a script";

export default async function ({ installed, budget }) {
  const [program, inside] = await Promise.all(["airtally_bg.wasm", "packed.js"].map((name) => weighed(join(installed, name))));
  console.log(`       ${program.sent} bytes after Brotli, of ${budget}; inside a script ${inside.sent}, which is ${inside.lies} as it lies`);
  assert.ok(program.sent <= budget, `${program.sent} bytes, and ${budget} are the most`);
  const readme = await readFile(join(installed, "README.md"), "utf8");
  const said = readme.match(/about (\d+) kB instead of (\d+) kB beside it, and on the wire, after\s+Brotli, (\d+) kB instead of (\d+) kB/);
  const weighs = [inside.lies, program.lies, inside.sent, program.sent];
  assert.ok(said?.slice(1).every((kB, at) => Math.abs(kB * 1000 - weighs[at]) < 3000), `the README says ${said?.slice(1)} kB of ${weighs} bytes`);
}

async function weighed(path) {
  const bytes = await readFile(path);
  const params = { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
  return { lies: bytes.length, sent: brotliCompressSync(bytes, { params }).length };
}
