import assert from "node:assert/strict";
import { readFile, readdir } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { require } from "../kit/browser.mjs";

export const title = "the schema takes and refuses the files that the program takes and refuses";

const FIXTURES = new URL("../../fixtures/", import.meta.url);

export default async function ({ installed }) {
  const { start, tally } = await import(pathToFileURL(join(installed, "node.js")));
  await start();
  const schema = JSON.parse(await readFile(join(installed, "schema.json"), "utf8"));
  const { default: Ajv } = require("ajv/dist/2020.js");
  const fits = new Ajv({ strict: true, strictTypes: false, strictRequired: false }).compile(schema);
  const reads = (file) => {
    try {
      return Boolean(tally(file));
    } catch (refusal) {
      assert.equal(refusal.name, "HouseError", refusal);
      return false;
    }
  };
  const counts = { taken: 0, refused: 0 };
  const agree = (file, about) => {
    const [schema, program] = [fits(file), reads(file)];
    assert.equal(schema, program, `${about}: the schema says ${schema}, the program ${program}; ${JSON.stringify(fits.errors)}`);
    counts[program ? "taken" : "refused"] += 1;
  };

  const files = await fixtures();
  for (const [name, file] of files) {
    assert.ok(fits(file), `${name}: ${JSON.stringify(fits.errors)}`);
    for (const [about, changed] of changes(file)) agree(changed, `${name}, ${about}`);
  }
  for (const [about, file] of everyId(schema, files.get("every_id.json"))) agree(file, about);
  for (const [name, file] of await refused(files.get("empty.json"))) {
    assert.ok(!reads(file), `${name} is read`);
    if (!BEYOND_A_SCHEMA.test(name)) assert.ok(!fits(file), `${name} fits the schema`);
  }
  console.log(`       both take ${counts.taken} files and refuse ${counts.refused}`);
  assert.ok(counts.taken > 300 && counts.refused > 1000, "enough files of both kinds");
}

/** What the schema's own description says that it cannot say. */
const BEYOND_A_SCHEMA = /given twice|of one number|may be given again/;

/** JavaScript's own JSON reads it, as U+FFFD. */
const READ_ALL_THE_SAME = "half of a letter";

async function fixtures() {
  const folder = new URL("v1/", FIXTURES);
  const names = (await readdir(folder)).sort();
  const read = async (name) => [name, JSON.parse(await readFile(new URL(name, folder), "utf8"))];
  return new Map(await Promise.all(names.map(read)));
}

/** The file with each of its values, one at a time, left out or of another kind; with one more name in each map. */
function* changes(file) {
  for (const path of paths(file)) {
    const about = path.join(".");
    if (!Array.isArray(inside(file, path.slice(0, -1)))) yield [`without ${about}`, changed(file, path)];
    for (const other of OTHERS) {
      const value = inside(file, path);
      if (typeof value === "string" && typeof other === "string" && isFree(path)) continue;
      yield [`${about} = ${JSON.stringify(other)}`, changed(file, path, other)];
    }
    const value = inside(file, path);
    if (value && typeof value === "object" && !Array.isArray(value)) {
      yield [`one more in ${about}`, changed(file, path, { ...value, colour: "red" })];
    }
  }
}

const OTHERS = [null, true, -1, 0.5, 4294967296, "furlong", [], {}];

/** Texts that may say anything. */
function isFree(path) {
  return ["name", "text"].includes(path.at(-1));
}

/** Every place in a file, of long lists the first two only. */
function* paths(value, path = []) {
  if (path.length > 0) yield path;
  if (!value || typeof value !== "object") return;
  const keys = Array.isArray(value) ? [...value.keys()].slice(0, 2) : Object.keys(value);
  for (const key of keys) yield* paths(value[key], [...path, key]);
}

function inside(file, path) {
  return path.reduce((value, key) => value[key], file);
}

function changed(file, path, value) {
  const copy = structuredClone(file);
  const holder = inside(copy, path.slice(0, -1));
  if (value === undefined) delete holder[path.at(-1)];
  else holder[path.at(-1)] = value;
  // Rooms and their next number go together, and the schema knows of one at a time.
  const { house } = copy;
  const ids = Array.isArray(house?.rooms) ? house.rooms.map((room) => room?.id) : [];
  if (path.at(-1) === "next_room" && house.next_room === 0 && ids.length > 0) house.next_room = -1;
  return copy;
}

/** A file for every id that the schema knows: the program must know it too. */
function* everyId({ $defs }, file) {
  const one = (list, item) => ({ ...file, house: { ...file.house, [list]: [item] } });
  const entry = (field) => ({ field, text: "1", unit: "m" });
  for (const [choice, { enum: ids }] of Object.entries($defs.choices.properties)) {
    for (const id of ids) yield [`${choice} ${id}`, { ...file, house: { ...file.house, choices: { ...file.house.choices, [choice]: id } } }];
  }
  for (const field of $defs.houseEntry.properties.field.enum) yield [field, one("entries", entry(field))];
  for (const field of $defs.setting.properties.field.enum) yield [field, one("settings", entry(field))];
  for (const field of $defs.price.properties.field.enum) yield [field, one("prices", entry(field))];
  for (const unit of $defs.unit.enum) yield [unit, one("entries", { ...entry("ceiling"), unit })];
  for (const step of $defs.tick.properties.step.enum) yield [step, one("ticks", { step })];
  for (const item of $defs.tick.properties.item.enum) {
    yield [item, one("ticks", { step: "ask-open-flues", item })];
    yield [`${item} of a storey`, one("ticks", { step: "ask-open-flues", item, storey: -1 })];
  }
  const room = { ...file.house.rooms[0], entries: [] };
  for (const kind of $defs.room.properties.kind.enum) yield [kind, one("rooms", { ...room, kind })];
  for (const field of $defs.roomEntry.properties.field.enum) yield [field, one("rooms", { ...room, entries: [entry(field)] })];
}

/** The files of refused.toml that JSON can hold. */
async function refused(smallest) {
  const text = JSON.stringify(smallest);
  const list = await readFile(new URL("refused.toml", FIXTURES), "utf8");
  const rows = [...list.matchAll(/^name = "(.*)"\nfrom = '(.*)'\nto = '(.*)'$/gm)];
  assert.ok(rows.length > 30, "the list of refusals is read");
  return rows.filter(([, name]) => name !== READ_ALL_THE_SAME).flatMap(([, name, from, to]) => {
    try {
      return [[name, JSON.parse(text.replace(from, to))]].filter(([, file]) => JSON.stringify(file) !== text);
    } catch {
      return [];
    }
  });
}
