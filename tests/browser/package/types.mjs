import assert from "node:assert/strict";
import { readFile, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { require } from "../kit/browser.mjs";

export const title = "the types are those of what the program gives, and of the files";

const FIXTURES = new URL("../../fixtures/v1/", import.meta.url);

export default async function ({ yard, installed }) {
  const { choices, sketch, start, tally } = await import(pathToFileURL(join(installed, "node.js")));
  await start();
  const { $defs } = JSON.parse(await readFile(join(installed, "schema.json"), "utf8"));
  const files = await fixtures();
  const offered = choices();
  const rooms = offered.kinds.flatMap(({ id: kind }) => [{ kind, area: 12 }, { kind, area: "twelve" }]);
  const houses = [...files, ...offered.displays.map(({ id }) => sketch({ display: id, floorArea: 150, rooms }))];
  const given = houses.map((house) => oneOfAKind(tally(house, { working: true })));
  assert.ok(given.every(({ working, issues }) => working.length > 0 && issues.length > 0), "something to hold types against");

  const lines = [
    `import { HouseError, choices, sketch, start, tally } from "airtally-js";`,
    `import type { HouseFile, Offered, Tally } from "airtally-js";`,
    `import { SizerFrame } from "airtally-js/frame";`,
    `import * as inline from "airtally-js/inline";`,
    `import "airtally-js/sizer";`,
    `import type { Display, HouseField, RoomField, RoomKind, RuleSetId, TubeSize, UnitId } from "airtally-js";`,
    `type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;`,
    ...Object.entries({
      RuleSetId: ids(offered.rules), RoomKind: ids(offered.kinds), Display: ids(offered.displays), TubeSize: ids(offered.tubes),
      UnitId: $defs.unit.enum, HouseField: $defs.houseEntry.properties.field.enum, RoomField: $defs.roomEntry.properties.field.enum,
    }).map(([type, all]) => `export const same${type}: Same<${type}, ${all.map((id) => JSON.stringify(id)).join(" | ")}> = true;`),
    `export const offered: Offered = ${JSON.stringify(offered)};`,
    ...files.map((file, at) => `export const file${at}: HouseFile = ${JSON.stringify(file)};`),
    ...given.map((said, at) => `export const given${at}: Tally = ${JSON.stringify(said)};`),
    ...USED,
  ];
  await writeFile(join(yard, "types.ts"), `${lines.join("\n")}\n`);
  assert.deepEqual(complaints(join(yard, "types.ts")), []);
  await writeFile(join(yard, "node.mts"), `${IN_NODE.join("\n")}\n`);
  assert.deepEqual(complaints(join(yard, "node.mts"), ["lib.es2022.d.ts"]), []);
  await writeFile(join(yard, "wrong.ts"), `${WRONG.join("\n")}\n`);
  assert.deepEqual(complaints(join(yard, "wrong.ts")).map(([line]) => line), WRONG.map((_, at) => at + 1).slice(1), "each line but the first is wrong");
}

/** Calls as a person writes them. */
const USED = [
  `export async function used(): Promise<string> {`,
  `  await start();`,
  `  await start(new URL("file:///x"));`,
  `  const { levels, rooms } = tally(sketch({ rooms: [{ kind: "wc", area: "2 m2" }] }), { working: true });`,
  `  try { tally("{}"); } catch (error) { if (error instanceof HouseError && error.code === "not-json") return error.hint; }`,
  `  await inline.start(fetch("x").then((answer) => answer.arrayBuffer()));`,
  `  const sizer = document.createElement("airtally-sizer");`,
  `  sizer.addEventListener("airtally-ask", ({ detail }) => detail.result.levels.boost.total.value.toFixed(1));`,
  `  document.addEventListener("airtally-fault", ({ detail }) => detail.hint.trim());`,
  `  const frame = new SizerFrame(document.createElement("iframe"));`,
  `  frame.addEventListener("ask", ({ detail }) => detail.house.house.rooms.length.toFixed());`,
  `  frame.addEventListener("ready", { handleEvent() {} }, { once: true });`,
  `  const taken: HouseFile = await frame.take();`,
  `  const { tubes }: Tally = await sizer.put(taken);`,
  `  sizer.house = sketch({ name: String(tubes.count) });`,
  `  await sizer.print();`,
  `  const facts = { rooms: [{ kind: "wc", area: 2 }] } as const;`,
  `  sizer.house = inline.sketch(facts);`,
  `  return levels.normal.required.text + (rooms[0]?.supply?.run.mark ?? choices().rules[0]?.name);`,
  `}`,
];

/** Under Node: nothing of a page, and not one type of it is known. */
const IN_NODE = [
  `import { HouseError, sketch, start, tally } from "airtally-js";`,
  `await start("file:///x");`,
  `await start(new Uint8Array(8));`,
  `export const count: number = tally(sketch({ floorArea: 150 })).tubes.count;`,
  `export const isOurs = (error: unknown): boolean => error instanceof HouseError && error.code === "not-json";`,
];

const WRONG = [
  `import { HouseError, sketch, start, tally } from "airtally-js";`,
  `tally({ airtally: 2 });`,
  `sketch({ rooms: [{ kind: "ballroom" }] });`,
  `export const supply: string = tally("").rooms[0]!.supply.normal.text;`,
  `export const value: bigint = tally("").step.value;`,
  `start(7);`,
  `new HouseError();`,
];

/** Of lines and rooms alike in shape one stands for all: a compiler reads slowly. */
function oneOfAKind(said) {
  const first = (list) => [...new Map(list.map((item) => [shape(item), item]).reverse()).values()];
  return { ...said, rooms: first(said.rooms), working: first(said.working), issues: first(said.issues) };
}

/** Names and kinds of values, and every short text that may be an id. */
function shape(value) {
  if (Array.isArray(value)) return `[${[...new Set(value.map(shape))].sort()}]`;
  if (value === null || typeof value !== "object") return typeof value === "string" && /^[a-z-]{1,20}$/.test(value) ? value : typeof value;
  return `{${Object.entries(value).map(([name, inner]) => `${name}:${name === "text" || name === "name" ? typeof inner : shape(inner)}`)}}`;
}

async function fixtures() {
  const names = (await readdir(FIXTURES)).sort();
  return Promise.all(names.map(async (name) => JSON.parse(await readFile(new URL(name, FIXTURES), "utf8"))));
}

function ids(list) {
  return list.map(({ id }) => id);
}

/** What the compiler says, with the line; it reads our own types as closely as the file. */
function complaints(file, lib = ["lib.es2022.d.ts", "lib.dom.d.ts"]) {
  const ts = require("typescript");
  const options = {
    strict: true, noEmit: true, skipDefaultLibCheck: true, exactOptionalPropertyTypes: true, noUncheckedIndexedAccess: true,
    target: ts.ScriptTarget.ES2022, lib,
    module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext, types: [],
  };
  const program = ts.createProgram([file], options);
  return ts.getPreEmitDiagnostics(program).map(({ file, start, messageText }) => [
    file ? file.getLineAndCharacterOfPosition(start).line + 1 : 0,
    ts.flattenDiagnosticMessageText(messageText, " "),
  ]);
}
