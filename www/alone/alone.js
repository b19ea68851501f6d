// The page in one file. Its program and its words lie packed in it. A plain script, since browsers refuse modules from a file;
// it starts the same loader as the page, which then asks for nothing.
const place = document.getElementById("page");
// Itself as it came, before anything changes: what a house is sent in.
place.dataset.shell = named(["<!doctype html>\n", document.documentElement.outerHTML]);

// Where it cannot be unpacked, the loader says that the page could not start.
unpack().catch(console.error).then(() => import("./start.js"));

async function unpack() {
  place.dataset.book = named([await unpacked("book")]);
  place.program = await unpacked("program");
}

async function unpacked(id) {
  const stream = new Blob([bytes(document.getElementById(id).textContent)]).stream();
  return new Response(stream.pipeThrough(new DecompressionStream("deflate-raw"))).arrayBuffer();
}

// How many bytes, a space, then pairs of letters: two of 91 are 13 bits, the lowest first. The letters are those from ! to ~
// without quotation mark, & and <.
function bytes(packed) {
  const [count, letters] = packed.split(" ");
  const found = new Uint8Array(Number(count));
  let [held, bits, at] = [0, 0, 0];
  for (let place = 0; place < letters.length; place += 2) {
    held |= (digit(letters.charCodeAt(place)) + 91 * digit(letters.charCodeAt(place + 1))) << bits;
    for (bits += 13; bits > 7; bits -= 8, held >>= 8) found[at++] = held & 255;
  }
  return found;
}

function digit(code) {
  return code - 33 - (code > 34) - (code > 38) - (code > 60);
}

// An address within this page.
function named(parts) {
  return URL.createObjectURL(new Blob(parts));
}
