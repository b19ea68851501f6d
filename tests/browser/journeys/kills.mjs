import assert from "node:assert/strict";
import { PHONE } from "../kit/browser.mjs";
import { Person } from "../kit/person.mjs";

export const title = "a tab that is killed while a person types loses at most what was typed in the last half second";
export const sizes = [PHONE];
export const provokes = /^crashed$/;

/** AIRTALLY_KILLS=200 kills more often, in about five minutes. */
const KILLS = Number(process.env.AIRTALLY_KILLS ?? 8);
const LOST_AT_MOST = 500;

export default async function ({ person, context, site }) {
  let [typed, most] = [[], 0];
  for (let round = 0; round <= KILLS; round += 1) {
    const guest = new Person(await context.newPage(), site);
    await guest.opens();
    if (round === 0) await guest.presses("Open the example house");
    else most = Math.max(most, await lost(guest, typed));
    if (round < KILLS) typed = await typesUntilKilled(guest, context, round);
    else await guest.page.close();
  }
  console.log(`  ${KILLS} kills, at most ${most} ms of typing lost`);
  await person.opens();
}

/** Types on and on, and kills the tab at some moment. What was typed, and how long before the end. */
async function typesUntilKilled(guest, context, round) {
  const typed = [];
  const end = Date.now() + 300 + Math.random() * 1_200;
  while (Date.now() < end) {
    const name = `House ${round}, key ${typed.length}`;
    await guest.types("Name of the house", name);
    typed.push({ name, at: Date.now() });
  }
  const session = await context.newCDPSession(guest.page);
  const crashed = guest.page.waitForEvent("crash");
  const killed = Date.now();
  session.send("Page.crash").catch(() => {});
  await crashed;
  await guest.page.close();
  return typed.map(({ name, at }) => ({ name, before: killed - at }));
}

/** How old the oldest thing is that was typed and did not come back. */
async function lost(guest, typed) {
  const due = typed.filter(({ before }) => before > LOST_AT_MOST).length;
  const found = await guest.field("Name of the house").inputValue();
  const place = typed.findIndex(({ name }) => name === found);
  assert.ok(place >= due - 1, `“${found}” came back, and ${typed[due - 1]?.name} was typed ${typed[due - 1]?.before} ms before the end`);
  return typed[place + 1]?.before ?? 0;
}
