import assert from "node:assert/strict";
import { readFile, readdir } from "node:fs/promises";
import { WIDE } from "../kit/browser.mjs";
import { carried, readPath } from "../kit/link.mjs";
import { lengthen, shorten } from "../../../www/link/short.js";
import { WORDS } from "../../../www/link/words.js";

export const title = "every house comes back from its link to the letter, 14 rooms fit into 700 letters, and codes of all sizes are read";
export const sizes = [WIDE];

/** Letters of a link of 14 rooms, and what stands before it on a web host with a long name. */
const MOST = 700;
const EXAMPLES = ["Larkfield", "Five bedrooms", "One-bedroom flat", "A hard case"];
const FIXTURES = new URL("../../fixtures/v1/", import.meta.url);

export default async function ({ person, page }) {
  await person.opens();
  const ask = (word, text) => page.evaluate(([word, text]) => document.getElementById("page").link(word, text), [word, text]);
  for (const name of EXAMPLES) {
    const { link, json } = await comesBack(ask, await example(person, page, name));
    const rooms = JSON.parse(json).house.rooms.length;
    assert.ok(link.length <= MOST, `${name}: ${link.length} letters for ${rooms} rooms`);
  }
  for (const name of await readdir(FIXTURES)) {
    const { link } = await comesBack(ask, await readFile(new URL(name, FIXTURES), "utf8"));
    // A finished house is about as long behind the address, which comes on top; packers differ by some letters.
    const letters = link.length - link.indexOf("#");
    if (name === "all_ticked.json") assert.ok(letters <= MOST + 20, `14 rooms with all 85 steps ticked make ${letters} letters`);
  }

  assert.ok(WORDS.length <= 192 + 4 * 256, "there is no room for so many words");
  const { link, drawn } = await comesBack(ask, fourteenRooms());
  assert.ok(link.length <= MOST, `14 rooms make ${link.length} letters`);
  assert.equal(readPath(drawn), link);

  await tooLarge(ask);
  await everySize(ask);
  anyJson();
}

/** Packs a file and opens it again; others agree on what is in the link. */
async function comesBack(ask, json) {
  const [link, drawn] = (await ask("pack", json)).split("\n");
  const back = await ask("open", link.slice(link.indexOf("#")));
  assert.deepEqual(JSON.parse(back), JSON.parse(json));
  const { short, whole } = carried(link);
  assert.ok(whole);
  assert.equal(lengthen(short), back);
  return { link, drawn, json };
}

async function example(person, page, name) {
  await person.presses("Menu");
  await person.presses(`Open the example ${name}`);
  await person.presses("Menu");
  const comes = page.waitForEvent("download");
  await person.presses("Save as a file");
  return readFile(await (await comes).path(), "utf8");
}

/** A house as it is typed on site: names, areas, ways of tubes, what was pulled, and some steps done. */
function fourteenRooms() {
  const names = ["Living room", "Kitchen-dining", "Snug", "WC", "Utility", "Hall", "Main bedroom", "Ella", "Guest room", "Box room",
    "Bathroom", "En suite", "Study", "Landing"];
  const kinds = ["living", "kitchen", "living", "wc", "utility", "hall", "main-bedroom", "bedroom", "bedroom", "bedroom", "bathroom",
    "bathroom", "study", "hall"];
  const rooms = names.map((name, id) => {
    const side = ["kitchen", "wc", "utility", "bathroom"].includes(kinds[id]) ? "extract" : "supply";
    const entries = [{ field: "area", text: `${(id * 37 + 61) % 24 + 3}.${(id * 7) % 10}`, unit: "m2" }];
    if (kinds[id] !== "hall") {
      entries.push({ field: `${side}-run`, text: `2.7 + ${(id * 13) % 60 / 10 + 1} + ${(id * 29) % 40 / 10}, ${id % 4 + 2} bends`, unit: "m" });
      entries.push({ field: `${side}-built`, text: `${(id * 31) % 90 / 10 + 5}`, unit: "m" });
    }
    return { id, kind: kinds[id], name, storey: id < 6 ? 0 : 1, entries };
  });
  const choices = { rules: "adf-2021", display: "m3h", credit: "without", print: "si", tube: "od75" };
  const entries = [{ field: "floor-area", text: "184", unit: "m2" }, { field: "ceiling", text: "2.4", unit: "m" }];
  const ticks = ["ask-open-flues", "check-structure", "list-crossings", "place-unit", "place-manifolds"].map((step) => ({ step }));
  return JSON.stringify({ airtally: 1, house: { name: "Orchard end, plot 3", choices, entries, rooms, next_room: 14, settings: [], ticks } });
}

/** A house whose link would be refused makes none; one that is too long for a code has a link all the same. */
async function tooLarge(ask) {
  const named = (name) => JSON.stringify({ airtally: 1, house: { name } });
  assert.equal(await ask("pack", named("x".repeat(200_000))), "large");
  assert.equal(await ask("pack", named(Array.from({ length: 20_000 }, (_, at) => (at * 7919) % 9973).join())), "large");
  const [link, drawn] = (await ask("pack", named(Array.from({ length: 400 }, (_, at) => (at * 7919) % 9973).join()))).split("\n");
  assert.ok(link.length > 1003 && drawn === "", `${link.length} letters, no code`);
}

/** A code of every size, read by another program. */
async function everySize(ask) {
  const seen = new Set();
  for (let length = 1; length <= 1003; length += length < 40 ? 10 : 27) {
    const text = Array.from({ length }, (_, at) => String.fromCharCode(33 + ((at * at + at * length) % 94))).join("");
    const drawn = await ask("code", text);
    seen.add(Number.parseInt(drawn));
    assert.equal(readPath(drawn), text, `a text of ${length} letters`);
  }
  assert.equal(seen.size, 22, "all sizes were tried");
}

/** Whatever JSON there is goes through the short form unchanged. */
function anyJson() {
  let state = 7;
  const dice = (sides) => (state = (state * 48271) % 2147483647) % sides;
  const text = () => ["", "area", "__proto__", "\u0000\u0001\u0002", "é屋🏡", "field", "name", "a\"b\\"][dice(8)] + ["", "x"][dice(2)];
  const value = (depth) => {
    const kind = dice(depth > 5 ? 5 : 8);
    if (kind < 2) return JSON.stringify(text());
    if (kind === 2) return String([0, 1, 31, 32, -1, 0.1, 1e300, -2.5e-7, 4294967295][dice(9)]);
    if (kind < 5) return ["null", "true", "false"][dice(3)];
    const some = Array.from({ length: dice(5) }, () => value(depth + 1));
    return kind === 5 ? `[${some}]` : `{${some.map((one, at) => `${JSON.stringify(text() + at)}:${one}`)}}`;
  };
  for (let round = 0; round < 2000; round += 1) {
    const json = value(0);
    assert.deepEqual(JSON.parse(lengthen(shorten(json))), JSON.parse(json), json);
  }
}
