// A small static server for one folder, on this machine only.
import { createServer } from "node:http";
import { readFile } from "node:fs/promises";
import { brotliCompressSync } from "node:zlib";
import { extname, join, normalize, sep } from "node:path";

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".wasm": "application/wasm",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
};
const NAMED_BY_CONTENT = /-[0-9a-f]{10}\.\w+$/;

/** Serves `folder` under `base` ("/" or "/some/path/"); port 0 takes any free one; `packed` in Brotli, as a web host does. */
export async function serve(folder, { port = 0, base = "/", packed = false } = {}) {
  const made = new Map();
  const server = createServer(async (request, response) => {
    const path = pathOf(request.url, base);
    if (path === undefined) return refuse(response, 404);
    const file = join(folder, path);
    try {
      const bytes = await readFile(file);
      response.writeHead(200, {
        "content-type": TYPES[extname(file)] ?? "application/octet-stream",
        "cache-control": NAMED_BY_CONTENT.test(file) ? "public, max-age=31536000, immutable" : "no-cache",
        "x-content-type-options": "nosniff",
        ...(packed ? { "content-encoding": "br" } : {}),
      });
      if (packed && !made.has(file)) made.set(file, brotliCompressSync(bytes));
      response.end(request.method === "HEAD" ? undefined : (made.get(file) ?? bytes));
    } catch {
      refuse(response, 404);
    }
  });
  await new Promise((ready, failed) => server.once("error", failed).listen(port, "127.0.0.1", ready));
  const origin = `http://127.0.0.1:${server.address().port}`;
  return { origin, url: origin + base, stop: () => new Promise((done) => stop(server, done)) };
}

function pathOf(url, base) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, "http://127.0.0.1").pathname);
  } catch {
    return undefined;
  }
  if (!path.startsWith(base)) return undefined;
  const inside = normalize(path.slice(base.length) || "index.html");
  return inside.startsWith("..") || inside.includes(`${sep}..`) ? undefined : inside;
}

function refuse(response, status) {
  response.writeHead(status, { "content-type": "text/plain; charset=utf-8" });
  response.end("Not here.\n");
}

function stop(server, done) {
  server.closeAllConnections();
  server.close(done);
}
