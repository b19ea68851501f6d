// Where houses are kept: the browser's own database. Knows nothing of tabs, or of what stands in the text of a house.
import { forget, stored } from "./quick.js";

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

/** One version more; the last ones only stay. Behind those that are there, also after a clock was set back. */
export async function keepVersion(versions, { id, changed, name, rooms, text }) {
  const keys = await asked(versions.getAllKeys(within(id)));
  const last = keys.at(-1)?.[1] ?? 0;
  versions.put({ id, at: Math.max(changed, last + 1), when: changed, name, rooms, text });
  for (const key of keys.slice(0, Math.max(0, keys.length + 1 - VERSIONS))) versions.delete(key);
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
