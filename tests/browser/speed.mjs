// How soon the page is there, on a middling phone: a processor four times slower, 1.6 Mbit/s, 150 ms to the server. For people
// to read, no gate: the load of the machine stands below the table.
// node speed.mjs FOLDER
import { cpus, loadavg } from "node:os";
import { PHONE, launch, visit } from "./kit/browser.mjs";
import { serve } from "./kit/server.mjs";

const SLOWER = 4;
const LINE = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 200_000 };
const VISITS = 5;
const ROWS = [
  ["static shell painted, first visit", "painted", 1000, "ms"],
  ["ready to type, first visit", "ready", 2000, "ms"],
  ["ready to type, kept, without a network", "offline", 1000, "ms"],
  ["layout shift, all of them together", "shift", 0.02, ""],
];

const site = await serve(process.argv[2], { base: "/some/path/", packed: true });
const browser = await launch();
await once(); // What the server packs, it packs now.
const visits = [];
for (let made = 0; made < VISITS; made += 1) visits.push(await once());
await browser.close();
await site.stop();

console.log(`Processor ${SLOWER} times slower, 1.6 Mbit/s, 150 ms; ${VISITS} visits: median (least to most), budget`);
for (const [name, what, budget, unit] of ROWS) console.log(`  ${name.padEnd(42)}${spoken(visits.map((visit) => visit[what]), unit).padEnd(32)}of ${budget} ${unit}`);
console.log(`  load of this machine of ${cpus().length} processors: ${loadavg().map((load) => load.toFixed(1)).join(", ")}`);

async function once() {
  const { context, page } = await visit(browser, site, { size: PHONE, kept: true });
  await slow(context, page, LINE);
  const first = await opens(page);
  await page.getByText("Works offline now.").waitFor({ timeout: 60_000 });
  await page.close();
  await context.setOffline(true);
  const again = await context.newPage();
  await slow(context, again);
  const kept = await opens(again);
  await context.close();
  return { ...first, offline: kept.ready, shift: Math.max(first.shift, kept.shift) };
}

async function slow(context, page, line) {
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  if (line) {
    await session.send("Network.enable");
    await session.send("Network.emulateNetworkConditions", line);
  }
  await page.addInitScript(watch);
}

async function opens(page) {
  await page.goto(site.url);
  await page.waitForFunction(() => window.speed.ready > 0, null, { timeout: 60_000 });
  return page.evaluate(() => ({ ...window.speed, painted: performance.getEntriesByName("first-contentful-paint")[0]?.startTime }));
}

// Runs inside the page, before its own scripts.
function watch() {
  window.speed = { ready: 0, shift: 0 };
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (!entry.hadRecentInput) window.speed.shift += entry.value;
  }).observe({ type: "layout-shift", buffered: true });
  const isThere = () => {
    if (window.speed.ready > 0 || document.getElementById("page")?.dataset.ready === undefined) return;
    requestAnimationFrame(() => setTimeout(() => (window.speed.ready = performance.now())));
  };
  new MutationObserver(isThere).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-ready"] });
}

function spoken(values, unit) {
  const sorted = values.toSorted((a, b) => a - b);
  const [least, median, most] = [sorted[0], sorted[sorted.length >> 1], sorted.at(-1)];
  const shown = (value) => (unit ? value.toFixed(0) : value.toFixed(3));
  return `${shown(median)} ${unit} (${shown(least)} to ${shown(most)})`;
}
