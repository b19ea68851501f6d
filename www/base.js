// Where houses are kept: the browser's own database, and quick copies of single houses in localStorage. Knows nothing of
// tabs, or of what stands in the text of a house.

const VERSIONS = 20;
const PATIENCE = 4_000; // With a database that never answers.

let base = null;

/** The database had to be made anew although something had been kept in it. */
export let wiped = false;

/** Reaches for the database; whether there is one. */
export async function reached() {
  base ??= await patiently(openBase());
  return true;
}

function openBase() {
  return new Promise((done, refused) => {
    const opening = indexedDB.open("airtally", 1);
    opening.onupgradeneeded = () => {
      wiped = stored(() => localStorage.getItem("airtally.base")) !== null;
      opening.result.createObjectStore("houses", { keyPath: "id" });
      opening.result.createObjectStore("versions", { keyPath: ["id", "at"] });
    };
    opening.onerror = () => refused(opening.error);
    opening.onsuccess = () => {
      const made = opening.result;
      made.onversionchange = () => [made.close(), (base = null)];
      made.onclose = () => (base = null);
      stored(() => localStorage.setItem("airtally.base", "made"));
      done(made);
    };
  });
}

function patiently(promise) {
  return Promise.race([promise, new Promise((_, refused) => setTimeout(refused, PATIENCE))]);
}

/** Works on some stores, and waits until what was done is kept. */
export function during(names, work) {
  return new Promise((done, refused) => {
    const turn = base.transaction(names, "readwrite");
    const worked = work(...names.map((name) => turn.objectStore(name)));
    worked.catch(() => turn.abort()).catch(() => {});
    turn.oncomplete = () => done(worked);
    turn.onabort = () => (turn.error ? refused(turn.error) : done(worked));
  });
}

/** One record; nothing where there is none, or no database. */
export async function read(name, key) {
  return base ? asked(base.transaction(name).objectStore(name).get(key)) : undefined;
}

/** All records, or those within a range. */
export async function all(name, range) {
  return base ? asked(base.transaction(name).objectStore(name).getAll(range)) : [];
}

/** The versions of a house, the oldest first. */
export function versionsOf(id) {
  return all("versions", within(id));
}

const within = (id) => IDBKeyRange.bound([id, 0], [id, Infinity]);

/** One version more; the last ones only stay. */
export async function keepVersion(versions, { id, changed, name, rooms, text }) {
  versions.put({ id, at: changed, name, rooms, text });
  const keys = await asked(versions.getAllKeys(within(id)));
  for (const key of keys.slice(0, Math.max(0, keys.length - VERSIONS))) versions.delete(key);
}

/** Changes a record, where there is one, and gives it back as it was. */
export async function change(id, what) {
  const kept = await read("houses", id);
  if (!kept) return undefined;
  return during(["houses"], async (houses) => {
    const kept = await asked(houses.get(id));
    houses.put({ ...kept, ...what });
    return kept;
  });
}

/** A house and its versions go for good. */
export async function erase(id) {
  forget(id);
  await during(["houses", "versions"], async (houses, versions) => {
    houses.delete(id);
    versions.delete(within(id));
  });
}

/** The answer to one request. */
export function asked(request) {
  return new Promise((done, refused) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => refused(request.error);
  });
}

// Quick copies. Each has a mark: how often it was written, and by whom.

const place = (what, id) => `airtally.${what}${id ? `.${id}` : ""}`;

/** The quick copy of a house; null where there is none. */
export function quickCopy(id) {
  return stored(() => localStorage.getItem(place("house", id)));
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
function stored(work) {
  try {
    return work();
  } catch {
    return null;
  }
}

/** A time of today, or a day with its time; nothing for never. */
export function moment(time) {
  if (!time) return "";
  const today = new Date(time).toDateString() === new Date().toDateString();
  const day = today ? {} : { day: "numeric", month: "short" };
  const form = { ...day, hour: "2-digit", minute: "2-digit", hourCycle: "h23" };
  return new Intl.DateTimeFormat(document.documentElement.lang, form).format(time);
}

/** What the browser promises; to look at the list asks it for more, and it may ask the person, which nothing waits for. */
export async function promised() {
  const storage = navigator.storage;
  if (await storage?.persisted?.()) return "Promised";
  storage?.persist?.().catch(() => {});
  const installed = navigator.standalone || matchMedia("(display-mode: standalone)").matches;
  return navigator.vendor?.startsWith("Apple") && !installed ? "Week" : "Maybe";
}
