// What a page or Node may call. The types and their meaning are in index.d.ts.
import load, { choices as offered, tally as asked } from "./airtally.js";

export { sketch } from "./sketch.js";

/** Why a house was not taken in, or nothing could be asked. */
export class HouseError extends Error {
  name = "HouseError";

  constructor({ code, path = "", message, hint = "" }) {
    super(message);
    Object.assign(this, { code, path, hint });
  }
}

let beginning;
let begun = false;
let inside;

/** From now on the program is what this gives, where none is named: a script has it inside. */
export function carry(gives) {
  inside = gives;
}

export function carried() {
  return inside?.();
}

/** Loads the program once, however often it is asked; a failure can be tried again. `gives` is asked for it only when it is needed. */
export function begin(gives) {
  beginning ??= loaded(gives).catch((reason) => {
    beginning = undefined;
    throw new HouseError({
      code: "not-loaded",
      message: `The program could not be loaded: ${reason?.message ?? reason}`,
      hint: "Serve airtally_bg.wasm beside the script, or give its address or bytes to start(). A content security policy must allow 'wasm-unsafe-eval', and its address in connect-src.",
    });
  });
  return beginning;
}

async function loaded(gives) {
  await load({ module_or_path: await gives() });
  begun = true;
}

export function tally(house, { working = false } = {}) {
  insist();
  const text = typeof house === "string" ? house : written(house);
  try {
    return asked(text, working);
  } catch (refusal) {
    throw refusal?.code ? new HouseError(refusal) : refusal;
  }
}

export function choices() {
  insist();
  return offered();
}

function insist() {
  if (begun) return;
  throw new HouseError({
    code: "not-started",
    message: "The program is not there yet.",
    hint: "Wait for start() before anything else is asked.",
  });
}

/** The text of a house that came as an object; what JSON has no form for is refused here. */
function written(house) {
  try {
    return JSON.stringify(house) ?? "";
  } catch (reason) {
    throw new HouseError({
      code: "not-json",
      message: `The house has no form in JSON: ${reason.message}`,
      hint: "Give the text of a file, or the object that JSON.parse makes of it.",
    });
  }
}
