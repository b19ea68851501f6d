import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { cp, rm } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";

export const title = "the program comes from beside the script, from a named place, as bytes or from inside a script; a failure can be tried again";

const run = promisify(execFile);

export default async function ({ yard, installed }) {
  const program = join(installed, "airtally_bg.wasm");
  const ways = {
    beside: `import { sketch, start, tally } from "airtally-js"; await start();`,
    named: `import { sketch, start, tally } from "airtally-js"; await start("${pathToFileURL(program)}");`,
    bytes: `import { sketch, start, tally } from "airtally-js"; import { readFile } from "node:fs/promises"; await start(readFile(${JSON.stringify(program)}));`,
    twice: `import { sketch, start, tally } from "airtally-js"; await start("file:///nowhere").catch(({ code }) => { if (code !== "not-loaded") throw code; }); await start();`,
  };
  for (const [way, code] of Object.entries(ways)) await says(yard, way, code);

  const bare = join(yard, "bare");
  await cp(installed, join(bare, "node_modules", "airtally-js"), { recursive: true });
  await rm(join(bare, "node_modules", "airtally-js", "airtally_bg.wasm"));
  await says(bare, "inside", `import { sketch, start, tally } from "airtally-js/inline"; await start();`);
  await says(bare, "carried", `import "airtally-js/inline"; import { sketch, start, tally } from "airtally-js"; await start();`);
  await assert.rejects(says(bare, "without", ways.beside), /not-loaded/);
}

/** Approved Document F 2021: 0.3 L/s for each of 150 m². */
async function says(cwd, way, code) {
  const asks = `${code} console.log(tally(sketch({ rules: "adf-2021", floorArea: 150 })).levels.normal.required.text);`;
  const { stdout } = await run("node", ["--input-type=module", "--eval", asks], { cwd });
  assert.equal(stdout, "162\u00a0m³/h\n", way);
}
