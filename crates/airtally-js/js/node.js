// The package under Node: the program is read from beside this file.
import { readFile } from "node:fs/promises";
import { begin } from "./api.js";

export { HouseError, choices, sketch, tally } from "./api.js";

const BESIDE = new URL("./airtally_bg.wasm", import.meta.url);

export function start(program = BESIDE) {
  const file = program instanceof URL && program.protocol === "file:";
  return begin(file ? readFile(program) : program);
}
