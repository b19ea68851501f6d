// The package under Node: the program is read from beside this file.
import { readFile } from "node:fs/promises";
import { begin, carried } from "./api.js";

export { HouseError, choices, sketch, tally } from "./api.js";

const BESIDE = new URL("./airtally_bg.wasm", import.meta.url);

export function start(program) {
  return begin(async () => read(await (program ?? carried() ?? BESIDE)));
}

/** Node's own fetch reads no files. */
function read(program) {
  const named = typeof program === "string" || program instanceof URL;
  return named && String(program).startsWith("file:") ? readFile(new URL(program)) : program;
}
