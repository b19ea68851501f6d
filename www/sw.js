// Keeps one version of the page whole on the device: all of its files or none. The list is written after a build from what
// the build really gave. Its own name never changes. A newer version waits until a person takes it.
const VERSION = "none";
const FILES = [];

const OURS = "airtally-";

addEventListener("install", (event) => event.waitUntil(fill()));
addEventListener("activate", (event) => event.waitUntil(clear()));
addEventListener("message", (event) => {
  if (event.data === "take over") skipWaiting();
});
addEventListener("fetch", (event) => {
  const kept = keptAs(event.request);
  if (kept) event.respondWith(answer(kept, event.request));
});

/** Every file, held against its hash: a half-updated server gives nothing rather than a mixture. */
async function fill() {
  const cache = await caches.open(OURS + VERSION);
  await Promise.all(FILES.map(async ([name, integrity]) => {
    const answer = await fetch(name, { cache: "no-cache", integrity });
    if (!answer.ok) throw new Error(`${answer.status} for ${name}`);
    await cache.put(name, answer);
  }));
}

async function clear() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(OURS) && name !== OURS + VERSION);
  await Promise.all(old.map((name) => caches.delete(name)));
  await clients.claim();
}

/** The name under which a request is kept; none for another origin, another method, or the way out. */
function keptAs({ url, method }) {
  const { origin, pathname, search } = new URL(url);
  const base = new URL("./", location.href);
  if (method !== "GET" || origin !== base.origin || search === "?reset" || !pathname.startsWith(base.pathname)) return null;
  const name = pathname.slice(base.pathname.length).replace(/^index\.html$/, "");
  return FILES.find(([own]) => own === (name || "./"))?.[0];
}

async function answer(name, request) {
  const cache = await caches.open(OURS + VERSION);
  return (await cache.match(name)) ?? fetch(request);
}
