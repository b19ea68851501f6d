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
  `  const sizer = document.createElement("airtally-sizer");`,
  `  sizer.addEventListener("airtally-ask", ({ detail }) => detail.result.levels.boost.total.value.toFixed(1));`,
  `  const taken: HouseFile = await new SizerFrame(document.createElement("iframe")).take();`,
  `  const { tubes }: Tally = await sizer.put(taken);`,
  `  sizer.house = sketch({ name: String(tubes.count) });`,
  `  return levels.normal.required.text + (rooms[0]?.supply?.run.mark ?? choices().rules[0]?.name);`,
  `}`,
];

const WRONG = [
  `import { sketch, tally } from "airtally-js";`,
  `tally({ airtally: 2 });`,
  `sketch({ rooms: [{ kind: "ballroom" }] });`,
  `export const supply: string = tally("").rooms[0]!.supply.normal.text;`,
  `export const value: bigint = tally("").step.value;`,
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

/** What the compiler says, with the line. */
function complaints(file) {
  const ts = require("typescript");
  const options = {
    strict: true, noEmit: true, skipDefaultLibCheck: true, exactOptionalPropertyTypes: true, noUncheckedIndexedAccess: true,
    target: ts.ScriptTarget.ES2022, lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
    module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext, types: [],
  };
  const program = ts.createProgram([file], options);
  return ts.getPreEmitDiagnostics(program).map(({ file, start, messageText }) => [
    file ? file.getLineAndCharacterOfPosition(start).line + 1 : 0,
    ts.flattenDiagnosticMessageText(messageText, " "),
  ]);
}
