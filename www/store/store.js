// Houses kept on this device: each with its last versions, also those removed, and which tab may write. Loaded after the first
// paint. The page asks by one word; what comes of it is told by the event "airtally.told" as one text: a word, then lines, and
// what a line holds parted by tabs. The event "airtally.flush" asks the page to write now what waits.
//
// The quick copy of the house on screen is there at once at the next start, also after a tab that was killed; the database comes
// after it. Both say how often they were written, and the higher count is the newer text. Only the owner writes: the other tabs
// are asked who that is, and the database refuses everybody else.
import { all, asked, change, during, erase, keepVersion, reached, read, versionsOf, wiped } from "./base.js";
import { about, byChange, moment, plain, promised, quickHouses, sought, whenOf } from "./list.js";
import { copyQuickly, countOf, forget, mark, quickCopy, remember, writerOf } from "./quick.js";

const APART = 5 * 60_000; // Between two versions of one sitting.
const LARGEST = 2e6; // More bytes of a file are never read.
const REMOVED = 30 * 24 * 60 * 60_000;
const AGAIN = 10 * 60_000; // What was told with a time of today is told again: a page may lie open over midnight.

const me = String(crypto.getRandomValues(new Uint32Array(1))[0]);
const tabs = window.BroadcastChannel ? new BroadcastChannel("airtally") : null;
let own = null; // The house that this tab may write.
let count = 0; // How often it was written.
let cut = true; // What is written over next becomes a version, however young.
let line = Promise.resolve(); // Writing, one after the other.
let turns = Promise.resolve(); // Changing the shelf, one after the other.
const names = new Map(); // New names that wait for their turn.
let wanted = ""; // What is looked for in the list.
let opening = null; // It is not decided yet who may write.
let keptAs = "kept"; // How the house on screen is kept.
const had = new Set(); // Houses that this tab has let go: the page may come back to them, but another tab may have them by now.

const answers = { open, put, find, more, look, copy, rename, remove, restore, purge, sent };
const AT_ONCE = ["open", "put", "look", "rename"]; // All others one after the other.

document.getElementById("page").store = { ask };
addEventListener("dragover", (event) => holdsFile(event) && event.preventDefault());
addEventListener("drop", dropped);
addEventListener("visibilitychange", tellAgain);
setInterval(tellAgain, AGAIN);
tell("comes");

/** What the page asks: a word, the id of a house, a text. */
function ask(word, id, text) {
  const answer = () => answers[word](id, text);
  (AT_ONCE.includes(word) ? answer() : inTurn(answer)).catch((error) => tell("kept", failed(error)));
}

/** A file let fall on the page: its text is told, and the page says whether it is a house. */
async function dropped(event) {
  const [file] = event.dataTransfer?.files ?? [];
  if (!file || !holdsFile(event)) return;
  event.preventDefault();
  tell("dropped", await file.slice(0, LARGEST).text());
}

/** A file held over a field for files goes into that field. */
function holdsFile(event) {
  return Array.from(event.dataTransfer?.items ?? []).some(({ kind }) => kind === "file") && !event.target.closest?.("input[type=file]");
}

function inTurn(answer) {
  turns = turns.then(answer, answer);
  return turns;
}

function tell(...lines) {
  document.getElementById("page").told = lines.join("\n");
  dispatchEvent(new Event("airtally.told"));
}

/** What kind of trouble it is. */
function failed(error) {
  return error?.name === "QuotaExceededError" ? "Full" : "Quick";
}

/**
 * Opens a house. How: at the "start" its quick copy is on screen already; a "new" one is on screen and no other tab has it, unless
 * it is not new but comes "back"; "take" takes it from another tab. Tells who may write it, and its text unless that is on screen.
 */
async function open(id, how) {
  if (how === "" && own === id) return tell("now", id, ""), tell("arrive");
  const before = own;
  if (how === "new" && had.has(id)) how = "back";
  if (how === "new") own = id;
  else if (how !== "start") dispatchEvent(new Event("airtally.flush"));
  const turn = Promise.resolve(opening).then(() => decide(id, how, before));
  opening = turn;
  await turn.finally(() => (opening = opening === turn ? null : opening));
}

/** Whether another text than that on screen was told. */
async function decide(id, how, before) {
  await line;
  await turns;
  const there = await reached().catch(() => false);
  const shown = id;
  if (how === "start") {
    await clear();
    if (quickCopy(id) === null && (await read("houses", id))?.removed !== 0) id = (await lastUsed())?.id ?? id;
  } else if (before !== null && before !== id) await letGo(before);
  remember(id);
  const mine = how === "new" || !(await otherOwner(id, how === "take"));
  const kept = await newest(id);
  const text = id === shown && (await onScreen(id, how, mine, kept)) ? "" : kept;
  if (mine) await becomeOwner(id, kept);
  if (how !== "new") tell(mine ? "now" : "elsewhere", id, text);
  if (how === "back" && mine && text) tell("say", "Newer");
  if (how === "" || how === "take") tell("arrive");
  // That nothing can be kept is told when there is something to keep.
  await tellKept(id, !there ? (writerOf(id) ? "Quick" : "kept") : wiped && how === "start" ? "Wiped" : "kept");
  return text !== "";
}

/** Whether this text, the newest of a house, is on screen. One that comes back may have been written by another tab meanwhile. */
async function onScreen(id, how, mine, text) {
  if (how === "start") return text === quickCopy(id);
  const by = (await read("houses", id))?.by ?? writerOf(id) ?? me;
  return how === "new" || (how === "back" && mine && by === me);
}

async function tellKept(id, how) {
  keptAs = how;
  const { changed, sent } = (await read("houses", id)) ?? {};
  tell("kept", how, moment(changed), moment(sent));
}

async function tellAgain() {
  if (own !== null && !document.hidden) await tellKept(own, keptAs);
}

/** From here on the database takes this house from this tab alone, and the newest text stands in both places. */
async function becomeOwner(id, text) {
  const kept = await change(id, { by: me });
  [own, cut] = [id, true];
  count = Math.max(kept?.n ?? 0, countOf(id, 0));
  mark(id, count, me);
  if (text && (text !== kept?.text || text !== quickCopy(id))) await keep(id, text);
}

/** The newer of the two texts of a house. A quick copy without a mark is from before there was a database. */
async function newest(id) {
  const [kept, quick] = [await read("houses", id), quickCopy(id)];
  return quick !== null && (!writerOf(id) || countOf(id) >= (kept?.n ?? 0)) ? quick : (kept?.text ?? "");
}

/** The quick copy of a house that is not on screen any more is needed as long as the database does not hold it. */
async function letGo(id) {
  had.add(id);
  if (own === id) own = null;
  const [kept, quick] = [await read("houses", id), quickCopy(id)];
  if (quick !== null && (kept ? kept.text === quick : about(quick).blank)) forget(id);
}

/** Writes a house, and tells how it went. */
async function put(id, text) {
  if (opening && own !== id && (await opening)) return;
  if (own !== id || (writerOf(id) ?? me) !== me) return lost();
  const state = await keep(id, text);
  if (state && own === id) await tellKept(id, state);
}

/** At once the quick copy, then the database; both are read back. Nothing comes of it where another tab has the house. */
async function keep(id, text) {
  count += 1;
  const [n, quick] = [count, copyQuickly(id, text, count, me)];
  line = line.then(() => write(id, text, n)).catch(failed);
  const state = await line;
  return quick || !state || state === "kept" ? state : state === "Full" ? "FullNothing" : "Nothing";
}

async function write(id, text, n) {
  await reached();
  const { name, rooms, blank } = about(text);
  const now = Date.now();
  const taken = await during(["houses", "versions"], async (houses, versions) => {
    const kept = await asked(houses.get(id));
    if (kept ? kept.by !== me : blank) return !kept;
    const same = kept?.text === text;
    // A clock may have been set back since.
    const old = kept && !same && (cut || Math.abs(now - kept.cut) > APART);
    if (old) await keepVersion(versions, kept);
    if (!same) cut = false;
    if (kept?.name !== name) inTurn(list);
    const times = { changed: same ? kept.changed : now, cut: old || !kept ? now : kept.cut };
    houses.put({ sent: 0, ...kept, ...times, id, n, by: me, name, rooms, text, removed: 0 });
    return true;
  });
  if (!taken) return lost();
  const back = await read("houses", id);
  return back ? (back.text === text ? "kept" : "Quick") : blank ? "kept" : "Quick";
}

/** This tab may write no more. */
function lost() {
  own = null;
  tell("lost");
}

/** The list of those whose names hold some words, from now on. */
async function find(_id, words) {
  wanted = sought(words);
  await tellAgain();
  await list();
}

/** What the browser promises, then all houses, the youngest change first: id, when, removed or not, rooms, name. */
async function list() {
  await line;
  const there = await reached().catch(() => false);
  const kept = there ? await all("houses") : quickHouses();
  const found = kept.filter(({ name }) => sought(name).includes(wanted));
  const lines = found.sort(byChange).map(({ id, changed, removed, rooms, name }) =>
    [id, moment(removed || changed), removed ? "removed" : "", rooms, plain(name)].join("\t"));
  tell("list", there ? await promised() : "", ...lines);
}

/** Versions of a house, the youngest first: at, when, nothing, rooms, name. */
async function more(id) {
  await line;
  const found = (await versionsOf(id)).reverse();
  tell("versions", ...found.map((one) => [one.at, moment(whenOf(one)), "", one.rooms, plain(one.name)].join("\t")));
  tell("more", id);
}

/** A version to look at. What it may replace becomes a version itself. */
async function look(id, at) {
  if (own !== id) await open(id, "");
  cut = true;
  const version = await read("versions", [id, Number(at)]);
  tell("past", moment(whenOf(version)), version.text);
  tell("arrive");
}

/** Another house like this one, its name with something after it. */
async function copy(id, after) {
  await line;
  tell("copy", renamed(await newest(id), (name) => name + after));
}

function renamed(text, name) {
  const file = JSON.parse(text);
  file.house.name = name(file.house.name);
  return JSON.stringify(file);
}

/** Names a house; of many names in a short time the last one counts. */
async function rename(id, name) {
  if (own === id) return tell("name", name);
  const waits = names.has(id);
  names.set(id, name);
  return waits ? turns : inTurn(() => named(id));
}

async function named(id) {
  const text = await newest(id);
  const name = names.get(id);
  names.delete(id);
  await changeAlone(id, { name, text: renamed(text, () => name), changed: Date.now() });
}

/** Puts a house among the removed ones, where it stays for 30 days. */
async function remove(id) {
  const here = own === id;
  if (here) dispatchEvent(new Event("airtally.flush"));
  await line;
  const done = await changeAlone(id, { text: await newest(id), removed: Date.now(), by: me });
  if (!done || !here) return tell("shelf");
  own = null;
  tell("gone");
}

async function changeAlone(id, what) {
  const there = await reached().catch(() => false);
  const busy = !there || (await otherOwner(id, false));
  if (busy) tell("say", there ? "Busy" : "Quick");
  else {
    await change(id, what);
    forget(id);
  }
  await list();
  return !busy;
}

async function restore(id) {
  await change(id, { removed: 0, changed: Date.now() });
  await list();
  tell("shelf");
}

/** Away for good. */
async function purge(id) {
  await erase(id);
  await list();
  tell("shelf");
}

/** A copy of a house has gone out as a file, now. */
async function sent(id) {
  await line;
  await change(id, { sent: Date.now() });
  await tellKept(id, "kept");
}

/** Those removed too long ago go. */
async function clear() {
  const gone = (await all("houses")).filter(({ removed }) => removed && Date.now() - removed > REMOVED);
  for (const { id } of gone) await erase(id);
}

async function lastUsed() {
  return (await all("houses")).filter(({ removed }) => !removed).sort(byChange)[0];
}

/** Whether another tab owns a house; with `take` it writes what waits and lets go. One that does not answer is asleep or gone. */
function otherOwner(id, take) {
  if (!tabs || own === id) return Promise.resolve(false);
  return new Promise((done) => {
    const end = (answer) => [clearTimeout(timer), tabs.removeEventListener("message", heard), done(answer && !take)];
    const heard = ({ data }) => data.to === me && data.id === id && end(true);
    const timer = setTimeout(() => end(false), take ? 1_500 : 200);
    tabs.addEventListener("message", heard);
    tabs.postMessage({ from: me, id, take });
  });
}

tabs?.addEventListener("message", async ({ data: { from, id, take } }) => {
  if (!from || own !== id) return;
  if (take) {
    dispatchEvent(new Event("airtally.flush"));
    await line;
    lost();
  }
  tabs.postMessage({ to: from, id });
});
