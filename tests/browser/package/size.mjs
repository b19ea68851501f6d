import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { brotliCompressSync, constants } from "node:zlib";

export const title = "the program is small";

export default async function ({ installed, budget }) {
  const bytes = await readFile(join(installed, "airtally_bg.wasm"));
  const params = { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
  const size = brotliCompressSync(bytes, { params }).length;
  console.log(`       ${size} bytes after Brotli, of ${budget}`);
  assert.ok(size <= budget, `${size} bytes, and ${budget} are the most`);
}
