// What the list of houses shows of them, as texts and times for people.
import { quickCopies } from "./quick.js";

export const byChange = (a, b) => b.changed - a.changed;
export const whenOf = ({ at, when }) => when ?? at;
export const plain = (name) => name.replace(/\s+/g, " ").trim();
/** What is looked for finds names with other capitals and accents: strasse finds Straße. */
export const sought = (name) => plain(name).normalize("NFKD").replace(/\p{M}/gu, "").toUpperCase();

/** What the list shows of a house, and whether nothing has been typed. */
export function about(text) {
  const { name, rooms, entries } = JSON.parse(text).house;
  return { name, rooms: rooms.length, blank: !name && rooms.length + entries.length === 0 };
}

/** Without a database the quick copies are all houses there are. */
export function quickHouses() {
  return quickCopies().flatMap(([id, text]) => {
    try {
      const { blank, ...house } = about(text);
      return blank ? [] : { id, changed: 0, ...house };
    } catch {
      return [];
    }
  });
}

/** A time of today, or a day with its time, and with its year unless that is this one; nothing for never. */
export function moment(time) {
  if (!time) return "";
  const [then, now] = [new Date(time), new Date()];
  const today = then.toDateString() === now.toDateString();
  const year = then.getFullYear() === now.getFullYear() ? {} : { year: "numeric" };
  const day = today ? {} : { day: "numeric", month: "short", ...year };
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
