import { PHONE } from "../kit/browser.mjs";

export const title = "a page whose program does not come says so and shows a way out, which needs no line for addresses";
export const sizes = [PHONE];
export const provokes = /Failed to load resource|TypeError|Failed to fetch|^got 404|^logged an error/;

export default async function ({ person, page, context }) {
  const program = (url) => /airtally-app-\w+\.js$/.test(url.pathname);
  await context.route(program, (route) => route.abort());
  await page.goto(person.site.url);
  await person.sees(/The page could not start/);
  await context.unroute(program);
  await person.follows(/fetch it anew/);
  await page.waitForURL(person.site.url);
  await page.locator("#page[data-ready]").waitFor();
}
