import assert from "node:assert/strict";
import { carried, hashOf, hashOfFile } from "../kit/link.mjs";

export const title = "a link that is cut, changed, newer, hostile or too large is refused with a reason, and the house stays";

const PLAIN = `{"airtally":1,"house":{"name":"","choices":{"rules":"adf-2021","display":"m3h","credit":"without","print":"si","tube":"od75"},"entries":[],"rooms":[],"next_room":0,"settings":[],"ticks":[]}}`;
const file = (from, to) => hashOfFile(PLAIN.replace(from, to));
const room = (id) => `{"id":${id},"kind":"hall","name":"","storey":0,"entries":[]}`;
const many = `"rooms":[${Array.from({ length: 1001 }, (_, id) => room(id))}],"next_room":1001`;
const whole = hashOfFile(PLAIN);
/** Words that cannot be deflated, so that what follows does not look like a bomb. */
const noise = (count) => Array.from({ length: count }, (_, at) => 64 + ((at * at * 31 + (at * at * at) % 1009) % 192));

const HOSTILE = [
  ["nothing", "#h1.", /damaged/],
  ["no letters of a link", "#h1.%3Cscript%3E", /damaged/],
  ["cut", whole.slice(0, -7), /damaged/],
  ["something behind it", `${whole}AAAAAAAA`, /damaged/],
  ["a newer form", whole.replace("#h1.", "#h2."), /newer/],
  ["the same step before any", hashOf(Uint8Array.of(5, 14, 0)), /damaged/],
  ["a room for a name", hashOf(Uint8Array.of(6, 13, 2, 0)), /damaged/],
  ["a word of the future", hashOf(Uint8Array.of(11, 255)), /newer/],
  ["a shape of the future", hashOf(Uint8Array.of(31, 0)), /newer/],
  ["a newer file", file(`"airtally":1`, `"airtally":9`), /version 9/],
  ["a bomb", hashOf(Buffer.alloc(5_000_000)), /larger/],
  ["long words in few bytes", hashOf(Buffer.from([5, ...noise(5200), ...Array(230_000).fill(64 + 12), 0])), /larger/],
  ["more letters than a link has", `#h1.${"A".repeat(9000)}`, /larger/],
  ["too deep", hashOf(Buffer.from([...Array(40).fill(5), ...Array(40).fill(0)])), /damaged/],
  ["no end", hashOf(Uint8Array.of(7, 65, 66)), /damaged/],
  ["a number that is none", hashOf(Buffer.from([8, ...Buffer.from("1e999e9"), 0])), /damaged/],
  ["letters that are none", hashOf(Uint8Array.of(7, 0xff, 0xfe, 0)), /damaged/],
  ["a number without end", hashOf(Buffer.from([8, ...Buffer.from("1e999"), 0])), /damaged/],
  ["no file", hashOfFile("[]"), /damaged/],
  ["a name of a prototype", file(`"house":{`, `"house":{"__proto__":{"name":"x"},`), /__proto__/],
  ["a name of a constructor", file(`"name":""`, `"name":"","constructor":{"prototype":1}`), /constructor/],
  ["a name that is none", file(`"name":""`, `"name":7`), /house\.name/],
  ["too many rooms", file(`"rooms":[],"next_room":0`, many), /more than 1 000 rooms/],
];

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Start my house");
  await person.types("Name of the house", "Mine");
  for (const [what, hash, says] of HOSTILE) {
    await page.evaluate((hash) => (location.hash = hash), hash);
    const remark = page.locator(".toast");
    await remark.waitFor().catch(() => assert.fail(`${what}: nothing is said`));
    const words = await remark.textContent();
    assert.match(words, says, `${what}: ${words}`);
    assert.match(words, /Nothing was changed/, what);
    await person.presses("Understood");
    await person.reads("Name of the house", "Mine");
    assert.equal(await page.locator("dialog[open]").count(), 0, what);
    assert.equal(new URL(page.url()).hash, "#house", `${what}: the address`);
  }
  assert.equal(await page.evaluate(() => ({}).name), undefined, "no prototype was touched");
  await flips(page);
}

/** One letter changed anywhere: refused, or the same house, never another one. */
async function flips(page) {
  const hash = hashOfFile(PLAIN.replace(`"name":""`, `"name":"Larkfield, the old part"`));
  const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
  const others = [...hash].flatMap((letter, at) => at < 4 ? [] : [1, 17, 32].map((by) => {
    const other = letters[(letters.indexOf(letter) + by) % 64];
    return hash.slice(0, at) + other + hash.slice(at + 1);
  }));
  const ask = (hashes) => page.evaluate((hashes) => Promise.all(hashes.map((hash) => document.getElementById("page").link("open", hash))), hashes);
  const [right] = await ask([hash]);
  assert.equal(JSON.parse(right).house.name, "Larkfield, the old part");
  const answers = await ask(others);
  const wrong = answers.filter((answer) => answer !== right && !["damaged", "large", "newer"].includes(answer));
  assert.deepEqual(wrong, []);
  assert.ok(answers.filter((answer) => answer === "damaged").length > others.length * 0.95, "nearly every change is noticed");
  assert.ok(carried(hash).whole);
}
