import assert from "node:assert/strict";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

export const title = "what cannot be done is said with code, path and hint; what was given is not touched";

export default async function ({ installed }) {
  const { HouseError, choices, sketch, start, tally } = await import(`${pathToFileURL(join(installed, "node.js"))}?fresh`);
  const { tally: early } = await import(`${pathToFileURL(join(installed, "api.js"))}?early`);
  assert.equal(thrown(() => early("{}")).code, "not-started");

  await start();
  await Promise.all([start(), start("nowhere")]);
  const loop = {};
  loop.loop = loop;
  const cases = [
    ["", "not-json", ""], ["{", "not-json", ""], [undefined, "not-json", ""], [() => 1, "not-json", ""], [loop, "not-json", ""],
    [{ airtally: 1n }, "not-json", ""], [null, "not-a-house", ""], [[], "not-a-house", ""], [7, "not-a-house", ""],
    [{ airtally: 9 }, "not-a-house", ""], [new Map(), "not-a-house", ""],
    [{ airtally: 1, house: { name: 7 } }, "not-a-house", "house.name"],
    ["[".repeat(100_000), "not-json", ""], [`${"[".repeat(100_000)}${"]".repeat(100_000)}`, "not-a-house", ""],
    [" ".repeat((1 << 20) + 1), "too-long", ""],
    [sketch({ rooms: Array.from({ length: 1001 }, () => ({ kind: "wc" })) }), "too-many-rooms", ""],
  ];
  for (const [given, code, path] of cases) {
    const error = thrown(() => tally(given));
    const about = `${String(given).slice(0, 40)}: ${error}`;
    assert.ok(error instanceof HouseError && error instanceof Error, about);
    assert.equal(error.code, code, about);
    assert.ok(error.path.startsWith(path), about);
    assert.ok(error.message && error.hint, about);
  }

  const house = freeze(sketch({ name: "\ud83c </script>", rooms: [{ kind: "living", area: "1,234" }, { kind: "wc", area: 2 }] }));
  const said = tally(house, { working: true });
  assert.deepEqual(JSON.parse(JSON.stringify(said)), said, "plain values only");
  assert.deepEqual(JSON.parse(JSON.stringify(choices())), choices());
  assert.deepEqual(tally(JSON.stringify(house), { working: true }), said, "an object and its text are the same house");
  const unclear = said.issues.find(({ code }) => code === "unreadable");
  assert.equal(unclear.path, "house.rooms[0].entries[0]");
  assert.equal(house.house.rooms[0].entries[0].text, "1,234");
}

function thrown(call) {
  try {
    call();
  } catch (error) {
    return error;
  }
  return assert.fail("nothing was thrown");
}

function freeze(value) {
  if (value && typeof value === "object") Object.values(value).forEach(freeze);
  return Object.freeze(value);
}
