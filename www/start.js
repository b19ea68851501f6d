// The loader. Its own name never changes; the names inside it are rewritten by content for a release.
start().catch(tell);

async function start() {
  look();
  if (location.search === "?reset") return reset();
  const place = document.getElementById("page");
  // What makes and reads links comes when somebody does. The one file has none: its address leads nowhere else.
  place.link = place.program ? async (word) => (word === "open" ? "damaged" : "here") : links;
  const page = await import("./airtally-app.js");
  // In the one file the program is there already.
  await page.default({ module_or_path: place.program });
  place.dataset.ready = "";
  // Where houses are kept. Without it the page keeps one, as a quick copy.
  import("./store/store.js").catch(() => {
    place.told = "comes";
    dispatchEvent(new Event("airtally.told"));
  });
  await keep(place.dataset.offline).catch(() => {
    // Kept nowhere, as in a private window: with a network the page works all the same.
  });
}

async function links(word, text) {
  // For a code on paper that nobody has asked for yet nothing is loaded that this device does not keep.
  const quiet = word === "quiet";
  if (quiet && !navigator.serviceWorker?.controller) throw new Error("not kept");
  return (await import("./link/link.js")).ask(quiet ? "pack" : word, text);
}

// The look a person chose, before anything else is painted in another one.
function look() {
  try {
    const chosen = localStorage.getItem("airtally.look");
    if (["light", "dark", "sun"].includes(chosen)) document.documentElement.dataset.look = chosen;
  } catch {
    // Storage is forbidden here: the device's own look holds.
  }
}

// From the second visit on the page needs no network. A newer version waits until the person takes it.
async function keep(worker) {
  if (!worker || !navigator.serviceWorker) return;
  const policy = window.trustedTypes?.createPolicy("airtally", { createScriptURL: (url) => url });
  const first = !navigator.serviceWorker.controller;
  const kept = await navigator.serviceWorker.register(policy?.createScriptURL(worker) ?? worker, { updateViaCache: "none" });
  const offer = () => {
    if (kept.waiting && !first) remark("A newer version is ready.", "Take it", () => take(kept.waiting));
    if (kept.active && first) {
      remark("Works offline now.", "Fine", () => {});
      setTimeout(() => document.getElementById("newer")?.remove(), 10_000);
    }
  };
  // Taken in another tab, what this one has not loaded yet is gone. On a first visit the version that comes is its own.
  let own = first;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (!own) remark("A newer version was taken in another tab.", "Load it here too", () => location.reload());
    own = false;
  });
  kept.addEventListener("updatefound", () => kept.installing?.addEventListener("statechange", offer));
  if (!first) offer();
}

function take(worker) {
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  worker.postMessage("take over");
}

function remark(words, label, pressed) {
  document.getElementById("newer")?.remove();
  const [box, button] = ["p", "button"].map((name) => document.createElement(name));
  Object.assign(box, { id: "newer", className: "newer" });
  box.setAttribute("role", "status");
  Object.assign(button, { type: "button", className: "button", textContent: label, onclick: () => [box.remove(), pressed()] });
  box.append(words, button);
  document.body.append(box);
}

// The way out of a version that does not work: what keeps the page goes, what a person typed stays.
async function reset() {
  for (const kept of (await navigator.serviceWorker?.getRegistrations()) ?? []) await kept.unregister();
  for (const name of (await window.caches?.keys()) ?? []) if (name.startsWith("airtally-")) await caches.delete(name);
  location.replace(location.pathname + location.hash);
}

function tell(reason) {
  console.error(reason);
  const place = document.getElementById("trouble");
  place.textContent =
    "The page could not start. Load it again, or try a browser from the last two years. If that does not help, and with a network: ";
  const way = document.createElement("a");
  Object.assign(way, { href: "?reset", textContent: "fetch it anew; your houses stay." });
  place.append(way);
  place.hidden = false;
}
