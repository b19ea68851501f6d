// Quick copies of single houses, in localStorage: there at once at the next start. Each has a mark: how often it was written, and
// by whom.

const place = (what, id) => `airtally.${what}${id ? `.${id}` : ""}`;

/** The quick copy of a house; null where there is none. */
export function quickCopy(id) {
  return stored(() => localStorage.getItem(place("house", id)));
}

/** All quick copies: id and text. */
export function quickCopies() {
  const keys = stored(() => Object.keys(localStorage)) ?? [];
  const ids = keys.map((key) => /^airtally\.house(?:\.(\d+))?$/.exec(key)).filter(Boolean).map(([, id]) => Number(id ?? 0));
  return ids.map((id) => [id, quickCopy(id)]);
}

/** Writes a quick copy; whether it can be read back. Where it does not fit, the old one goes: it must not pass for the newest. */
export function copyQuickly(id, text, count, by) {
  const done = stored(() => {
    localStorage.setItem(place("house", id), text);
    mark(id, count, by);
    return quickCopy(id) === text;
  });
  if (!done) forget(id);
  return done === true;
}

/** Says who writes the quick copy from here on. */
export function mark(id, count, by) {
  stored(() => localStorage.setItem(place("mark", id), `${count} ${by}`));
}

/** Who wrote it. */
export function writerOf(id) {
  return markOf(id)?.split(" ")[1];
}

/** How often it was written. */
export function countOf(id, without) {
  return Number.parseInt(markOf(id) ?? without, 10);
}

function markOf(id) {
  return stored(() => localStorage.getItem(place("mark", id)));
}

/** Forgets a quick copy. */
export function forget(id) {
  stored(() => ["house", "mark"].forEach((what) => localStorage.removeItem(place(what, id))));
}

/** The house that this tab opens next time, and a new tab too. */
export function remember(id) {
  stored(() => [sessionStorage, localStorage].forEach((kept) => kept.setItem("airtally.open", id)));
}

/** Storage may be full or forbidden: then nothing comes of it. */
export function stored(work) {
  try {
    return work();
  } catch {
    return null;
  }
}
