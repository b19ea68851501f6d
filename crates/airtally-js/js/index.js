// The package on the web: the program is fetched from beside this file.
import { begin, carried } from "./api.js";

export { HouseError, choices, sketch, tally } from "./api.js";

const BESIDE = new URL("./airtally_bg.wasm", import.meta.url);

export function start(program) {
  return begin(() => program ?? carried() ?? BESIDE);
}
