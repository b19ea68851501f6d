import assert from "node:assert/strict";
import { carried, read } from "../kit/link.mjs";
import { Person } from "../kit/person.mjs";

export const title = "a house goes to another device by its link or its code, and opens there as a copy when asked";

const NAME = `Larkfield <script>alert(1)</script> "é" 屋 & more`;

export default async function ({ person, page, context, size, site }) {
  await page.addInitScript(sharing);
  await context.grantPermissions(["clipboard-read", "clipboard-write"], { origin: site.origin });
  await person.opens();
  await person.presses("Open the example house");
  await person.types("Name of the house", NAME);
  const link = await takes(person);
  assert.ok(link.startsWith(`${site.url}#h1.`), "the link is that of the page");
  assert.ok(link.length <= 700, `a link of ${link.length} letters`);
  assert.ok(carried(link).whole, "the checksum is that of others");
  assert.equal(await read(context, page.locator(".code")), link, "a camera reads the link");
  await person.presses("Copy the link");
  await person.sees("The link is copied.");
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), link);
  await shares(person, page, link);
  await person.presses("Close");
  assert.equal(await onPaper(person, context), link, "a camera reads it from paper");

  const other = await elsewhere(context, size, site);
  await other.opens();
  await other.presses("Start my house");
  await other.types("Name of the house", "Mine");
  await follows(other, link);
  const sheet = other.region("A house by link", "dialog");
  for (const told of [NAME, "11", "148 m²", "England · Approved Document F 2021"]) await other.sees(told, sheet);
  await other.presses("Leave it");
  await other.reads("Name of the house", "Mine");
  assert.equal(new URL(other.page.url()).hash, "#house", "the address is that of the stage again");

  await follows(other, link);
  await other.presses("Open a copy");
  await other.reads("Name of the house", NAME);
  assert.equal(await takes(other), link, "what came is what was sent, to the letter");
  await other.presses("Close");
  await other.presses("Undo", other.page.locator(".top"));
  await other.reads("Name of the house", "Mine");
  await other.page.context().close();

  await besideAnOpenHouse(context, size, site, link);
  const fresh = await elsewhere(context, size, site);
  await fresh.page.goto(link);
  await fresh.sees(NAME, fresh.region("A house by link", "dialog"));
  await fresh.page.keyboard.press("Escape");
  await fresh.sees("Start my house");
  await fresh.page.context().close();
  await person.presses("Menu");
  await person.presses("To another device");
  await page.locator(".code").waitFor();
}

/** What a mail program did to a link is undone. A copy beside a house that another tab has is no change of that house. */
async function besideAnOpenHouse(context, size, site, link) {
  const first = await elsewhere(context, size, site);
  await first.opens();
  await first.presses("Open the example house");
  await first.page.waitForFunction(() => localStorage.getItem("airtally.house"));
  const wrapped = link.replace(/(?<=#.{60})(.{70})/gs, "$1%0D%0A").replace(/$/, "%3E.");
  const second = new Person(await first.page.context().newPage(), site);
  await second.page.goto(wrapped);
  await second.sees(/^This house is open in another tab/);
  await second.presses("Open a copy");
  await second.reads("Name of the house", NAME);
  const remark = second.page.locator(".toast");
  await remark.getByText("A copy of the house by link is open.").waitFor();
  assert.equal(await remark.getByRole("button", { name: "Undo" }).count(), 0, "there is nothing to undo");
  await first.page.context().close();
}

/** A device that hands on what it is given: here to a list. */
function sharing() {
  window.shared = [];
  navigator.canShare = () => true;
  navigator.share = async ({ url, files }) => {
    const [file] = files ?? [];
    window.shared.push(file ? [file.name, file.type, await file.text()] : [url]);
  };
}

async function shares(person, page, link) {
  await person.presses("Share the link");
  await person.presses("Share as a file");
  await page.waitForFunction(() => window.shared.length === 2);
  const [[url], [name, type, text]] = await page.evaluate(() => window.shared);
  assert.equal(url, link);
  assert.match(name, /^larkfield.*\.json\.txt$/);
  assert.equal(type, "text/plain");
  assert.equal(JSON.parse(text).house.name, NAME);
}

/** The link of the house, from the sheet that stays open. */
async function takes(person) {
  await person.presses("Menu");
  await person.presses("To another device");
  await person.page.locator(".code").waitFor();
  return person.field("Link").inputValue();
}

/** What a camera reads from the paper that the menu prints. The paper lies there until it has been read. */
async function onPaper(person, context) {
  const { page } = person;
  const event = (name) => page.evaluate((name) => window.dispatchEvent(new Event(name)), name);
  await page.evaluate(() => (window.print = () => window.dispatchEvent(new Event("beforeprint"))));
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => document.querySelector("[aria-label=Menu]").click());
  await page.evaluate(() => [...document.querySelectorAll("#menu button")].find((it) => it.textContent === "Print this page").click());
  const code = page.locator(".on-paper .code");
  await code.waitFor();
  const seen = await read(context, code);
  await page.emulateMedia({ media: "screen" });
  assert.equal(await code.isVisible(), false, "on paper only");
  await event("afterprint");
  return seen;
}

async function follows(person, link) {
  await person.page.evaluate((link) => location.assign(link), link);
  await person.region("A house by link", "dialog").waitFor();
}

/** A person at another device: nothing of this one is kept there. */
async function elsewhere(context, { width, height }, site) {
  const other = await context.browser().newContext({ serviceWorkers: "block", viewport: { width, height } });
  const page = await other.newPage();
  page.setDefaultTimeout(15_000);
  page.on("dialog", () => assert.fail("a name was run as a script"));
  return new Person(page, site);
}
