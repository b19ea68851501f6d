import { execFile } from "node:child_process";
import { join } from "node:path";
import { promisify } from "node:util";

export const title = "publint and are-the-types-wrong find nothing; all of it may be imported where there is no page";

const run = promisify(execFile);

export default async function ({ yard, installed, packed }) {
  const imports = ["airtally-js/inline", "airtally-js", "airtally-js/sizer", "airtally-js/frame"].map((path) => `import "${path}";`).join("");
  await run("node", ["--input-type=module", "--eval", imports], { cwd: yard });
  await says("publint/src/cli.js", ["run", installed, "--strict", "--pack", "false"]);
  // There is no CommonJS of it, on purpose.
  await says("@arethetypeswrong/cli/dist/index.js", [packed, "--profile", "esm-only", "--no-emoji", "--no-color", ...LEFT_OUT]);
}

/** What is no script has no types. */
const LEFT_OUT = ["--exclude-entrypoints", "./airtally_bg.wasm", "./schema.json", "./package.json"];

async function says(tool, wishes) {
  const path = join(process.env.AIRTALLY_NODE_MODULES, tool);
  await run("node", [path, ...wishes]).catch(({ stdout, stderr }) => {
    throw new Error(`${tool} says:\n${stdout}${stderr}`);
  });
}
