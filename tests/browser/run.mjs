// Walks every journey, one after the other, on a phone and on a wide screen, and says how each one ended.
// node run.mjs FOLDER [NAME…]: FOLDER is the page as it ships; names narrow the journeys.
import { readdir } from "node:fs/promises";
import { PHONE, WIDE, launch, visit } from "./kit/browser.mjs";
import { faults } from "./kit/checks.mjs";
import { Person } from "./kit/person.mjs";
import { serve } from "./kit/server.mjs";

const LONGEST = 15_000;
const [folder, ...wanted] = process.argv.slice(2);

const journeys = await load(wanted);
const site = await serve(folder, { base: "/some/path/" });
const browser = await launch();
const results = [];
for (const journey of journeys) {
  for (const size of journey.sizes ?? [PHONE, WIDE]) results.push(await walk(journey, size));
}
await browser.close();
await site.stop();

const failed = results.filter((went) => !went).length;
console.log(`journeys: ${results.length - failed} passed, ${failed} failed`);
process.exitCode = failed > 0 || results.length === 0 ? 1 : 0;

/**
 * A journey is a module: `default` walks it, `title` says what it proves, `sizes` may narrow the screens,
 * `provokes` may name complaints of the page that it asks for, `kept` lets the page keep itself on the device.
 */
async function load(names) {
  const folder = new URL("journeys/", import.meta.url);
  const files = (await readdir(folder)).filter((file) => file.endsWith(".mjs")).sort();
  const chosen = files.filter((file) => names.length === 0 || names.some((name) => file.includes(name)));
  return Promise.all(chosen.map(async (file) => {
    const { default: steps, title, sizes, provokes, kept } = await import(new URL(file, folder));
    return { steps, title: title ?? file, sizes, provokes, kept };
  }));
}

async function walk({ steps, title, provokes, kept }, size) {
  const began = Date.now();
  const { context, page, complaints } = await visit(browser, site, { size, kept });
  page.setDefaultTimeout(LONGEST);
  const wrong = [];
  try {
    await steps({ person: new Person(page, site), page, context, size, site });
  } catch (error) {
    wrong.push(String(error.stack ?? error));
  }
  const unasked = () => complaints.filter((complaint) => !provokes?.test(complaint));
  wrong.push(...(await faults(page, unasked).catch((error) => [String(error)])));
  await context.close();
  console.log(`${wrong.length === 0 ? "  ok  " : "  FAIL"} ${title} (${size.name}, ${Date.now() - began} ms)`);
  for (const fault of wrong) console.log(`       ${fault.replaceAll("\n", "\n       ")}`);
  return wrong.length === 0;
}
