// The loader. Its own name never changes; the names inside it are rewritten by content for a release.
start().catch(tell);

async function start() {
  look();
  const page = await import("./airtally-app.js");
  await page.default();
  document.getElementById("page").dataset.ready = "";
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

function tell(reason) {
  console.error(reason);
  const place = document.getElementById("trouble");
  place.textContent =
    "The page could not start. Load it again; if that does not help, try a browser from the last two years.";
  place.hidden = false;
}
