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
  const packed = Uint8Array.from(atob(document.getElementById(id).textContent), (letter) => letter.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Response(stream).arrayBuffer();
}

// An address within this page.
function named(parts) {
  return URL.createObjectURL(new Blob(parts));
}
