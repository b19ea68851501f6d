// How long a key takes until its result is painted, on a processor slowed down four times. For people to read, no gate.
// node pace.mjs FOLDER
import { PHONE, launch, visit } from "./kit/browser.mjs";
import { Person } from "./kit/person.mjs";
import { serve } from "./kit/server.mjs";

const SLOWER = 4;
const KEYS = 40;
const HOUSES = [
  { name: "the example house, 11 rooms", more: 0, field: aFloorArea },
  { name: "40 rooms", more: 29, field: aFloorArea },
  { name: "the length of a run, 40 tubes", more: 22, field: aRunLength },
  { name: "its checklist", more: 0, field: aFoundLength },
];

const site = await serve(process.argv[2], { base: "/some/path/" });
const browser = await launch();
console.log(`From a key to the painted result, processor ${SLOWER} times slower, ${KEYS} keys:`);
for (const house of HOUSES) console.log(`  ${house.name}: ${describe(await pace(house))}`);
await browser.close();
await site.stop();

async function pace({ more, field: opened }) {
  const { context, page } = await visit(browser, site, { size: PHONE });
  const person = new Person(page, site);
  await person.opens();
  await person.presses("Open the example house");
  for (let added = 0; added < more; added += 1) await person.presses(/^Bedroom/, page.locator(".adders"));
  const field = await opened(page);
  await field.fill("2");
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  await page.evaluate(watchKeys);
  for (let key = 0; key < KEYS; key += 1) {
    await field.press(key % 2 === 0 ? "8" : "Backspace");
    await page.waitForTimeout(120);
  }
  const times = await page.evaluate(() => window.painted);
  await context.close();
  return times.sort((a, b) => a - b);
}

async function aFloorArea(page) {
  await page.getByRole("button", { name: /Living room/ }).first().click();
  return page.getByLabel("Floor area", { exact: true }).first();
}

async function aRunLength(page) {
  await page.getByRole("link", { name: "Tubes" }).click();
  await page.locator(".row-run .row-open").first().click();
  return page.locator(".row-run.is-open input").first();
}

async function aFoundLength(page) {
  await page.getByRole("link", { name: "Steps" }).click();
  await page.locator(".step").filter({ hasText: "Place the intake" }).getByRole("button").first().click();
  return page.locator(".step.is-open .step-found input").first();
}

// Runs inside the page: from the key's own time to the first moment after the frame that shows its result.
function watchKeys() {
  window.painted = [];
  document.addEventListener("input", (event) => {
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => window.painted.push(performance.now() - event.timeStamp);
      port2.postMessage(0);
    });
  }, { capture: true });
}

function describe(times) {
  const at = (share) => `${times[Math.min(times.length - 1, Math.floor(share * times.length))].toFixed(1)} ms`;
  return `median ${at(0.5)}, 95 in 100 below ${at(0.95)}`;
}
