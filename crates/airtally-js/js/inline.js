// The package with its program inside, where a second file is trouble. Whatever else of the package is imported after it takes
// the program from here as well.
import { begin, carry } from "./api.js";
import packed from "./packed.js";

export { HouseError, choices, sketch, tally } from "./api.js";

carry(unpacked);

export function start(program) {
  return begin(() => program ?? unpacked());
}

function unpacked() {
  const bytes = Uint8Array.from(atob(packed), (letter) => letter.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"))).arrayBuffer();
}
