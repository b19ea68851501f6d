// Published in place of sw.js, this takes every kept version off the devices that ask for it: for a release that must not
// stay. What a person typed is not touched.
addEventListener("install", () => skipWaiting());
addEventListener("activate", (event) => event.waitUntil(withdraw()));

async function withdraw() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith("airtally-")).map((name) => caches.delete(name)));
  await registration.unregister();
  for (const page of await clients.matchAll()) page.navigate(page.url);
}
