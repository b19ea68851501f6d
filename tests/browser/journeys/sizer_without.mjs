import assert from "node:assert/strict";
import { PHONE } from "../kit/browser.mjs";

export const title = "a sizer without its program says so to people and to the page, and can try again";

export const sizes = [PHONE];

/** The complaint that this journey provokes on purpose. */
export const provokes = /503/;

export default async function ({ page, site }) {
  const program = `${site.url}embed/airtally_bg.wasm`;
  await page.route(program, (route) => route.fulfill({ status: 503, body: "" }));
  await page.goto(`${site.url}embed.html`);
  const sizer = page.locator("airtally-sizer");
  await sizer.getByRole("alert").getByText("The sizer could not start here.").waitFor();
  const put = () => page.evaluate(async () => {
    const sizer = document.querySelector("airtally-sizer");
    const house = { airtally: 1, house: { name: "", choices: { rules: "adf-2021", display: "m3h", credit: "without", print: "inch-pound", tube: "od75" }, entries: [], rooms: [], next_room: 0, settings: [], ticks: [] } };
    return sizer.put(house).then(({ shape }) => shape, ({ code }) => code);
  });
  assert.equal(await put(), "not-loaded");
  await page.unroute(program);
  assert.equal(await put(), 1);
  await sizer.getByText("No air can be shared out yet").first().waitFor({ state: "attached" });
}
