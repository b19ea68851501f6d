// The browser, its sizes and looks, and a page that is watched from the first byte.
import { createRequire } from "node:module";
import { join } from "node:path";

/** Packages live in the per-user cache; the workshop says where. */
export const require = createRequire(join(setting("AIRTALLY_NODE_MODULES"), "here.js"));

export const PHONE = { name: "360x740", width: 360, height: 740 };
export const TABLET = { name: "768x1024", width: 768, height: 1024 };
export const WIDE = { name: "1440x900", width: 1440, height: 900 };
export const LOOKS = ["light", "dark", "sun"];

/** Starts the browser once for a whole run. */
export function launch() {
  const { chromium } = require("playwright-core");
  return chromium.launch({
    executablePath: setting("AIRTALLY_CHROMIUM"),
    args: setting("AIRTALLY_CHROMIUM_FLAGS").split(" "),
  });
}

/**
 * A fresh visitor: nothing stored, one page, every complaint of the page kept. With `kept` the page may keep itself on the
 * device; without `scripts` it is only read.
 */
export async function visit(browser, site, { size, look, kept = false, scripts = true }) {
  const context = await browser.newContext({
    javaScriptEnabled: scripts,
    serviceWorkers: kept ? "allow" : "block",
    viewport: { width: size.width, height: size.height },
    colorScheme: look === "dark" ? "dark" : "light",
    hasTouch: size === PHONE,
    locale: "en-GB",
  });
  const complaints = [];
  await context.route("**", (route) => {
    const url = route.request().url();
    if (url.startsWith(site.origin) || url.startsWith("data:") || url.startsWith("blob:")) return route.continue();
    complaints.push(`asked another origin for ${url}`);
    return route.abort();
  });
  context.on("page", (page) => listen(page, complaints));
  const page = await context.newPage();
  await page.addInitScript(reportViolations);
  if (look) await page.addInitScript(setLook, look);
  return { context, page, complaints };
}

function listen(page, complaints) {
  page.on("pageerror", (error) => complaints.push(`threw ${error}`));
  page.on("crash", () => complaints.push("crashed"));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(`logged an error: ${message.text()}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`got ${response.status()} for ${response.url()}`);
  });
}

// Runs inside the page. Chromium also logs most violations itself; this catches the silent ones.
function reportViolations() {
  document.addEventListener("securitypolicyviolation", (event) => {
    console.error(`content security policy: ${event.violatedDirective} ${event.blockedURI} ${event.sample}`);
  });
}

// Runs inside the page, before the page's own scripts: as if the person had chosen this look before.
function setLook(look) {
  localStorage.setItem("airtally.look", look);
}

function setting(name) {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set: run this through \`cargo xtask journeys\` or \`cargo xtask shots\`.`);
  return value;
}
