import assert from "node:assert/strict";
import { PHONE } from "../kit/browser.mjs";
import { fillsAreas, sizers } from "../kit/sizer.mjs";

export const title = "one sizer on paper and nothing of the page around it, under the page's strict policy";

export default async function ({ page, site, size }) {
  await page.goto(`${site.url}contractor.html`);
  const [homes] = await sizers(page, ["#homes", "#trades"]);
  await fillsAreas(homes, ["60", "40 m2", "30", "20"]);
  // The browser's own window for printing never comes here.
  await page.evaluate(() => (window.print = () => (window.wished = (window.wished ?? 0) + 1)));
  const whole = await pages(page);
  await prints(page, "#homes", size);
  const alone = await pages(page);
  assert.ok(alone < whole && alone <= 3, `${alone} pages instead of ${whole}`);
  await isOver(page);

  // In the dark on the screen; on paper black on white.
  await prints(page, "#trades", size);
  await isOver(page);
  await deepInside(page);
  await prints(page, "#homes", size);
  await isOver(page);
  assert.equal(await page.evaluate(() => window.wished), 3);
}

async function prints(page, place, size) {
  await page.evaluate((place) => document.querySelector(place).print(), place);
  await page.emulateMedia({ media: "print" });
  const { around, inside, ink, box } = await page.evaluate(seen, place);
  const doubts = await page.evaluate((place) => document.querySelector(place).check(), place);
  assert.deepEqual(around, [], "nothing of the page");
  for (const words of ["Fresh air every day", "Tubes in all", "An aid that approves nothing"]) assert.ok(inside.some((text) => text.startsWith(words)), words);
  assert.ok(doubts.length > 0 && doubts.every(({ text }) => inside.includes(text)), "what is to be checked is unfolded");
  for (const words of ["Next: the air", "Save as a file", "Add a room"]) assert.ok(!inside.includes(words), words);
  assert.equal(ink, "rgb(0, 0, 0)");
  assert.ok(box.x === 0 && box.y === 0 && box.width > size.width - 20 && box.height > 600, JSON.stringify(box));
  await page.emulateMedia({ media: null });
}

/** The window is closed: everything is as it was. */
async function isOver(page) {
  const left = await page.evaluate(() => {
    window.dispatchEvent(new Event("afterprint"));
    const open = [...document.querySelectorAll("airtally-sizer")].filter((sizer) => sizer.shadowRoot.querySelector("details[open]"));
    return [document.querySelectorAll("[data-airtally-paper]").length, document.adoptedStyleSheets.length, open.length];
  });
  assert.deepEqual(left, [0, 0, 0]);
  await page.emulateMedia({ media: "print" });
  assert.ok(await page.getByText("Fresh air, worked out before anybody climbs a ladder").isVisible(), "the page prints itself whole again");
  await page.emulateMedia({ media: null });
}

/** Puts the sizer into an element with a tree of its own, where it is cut off and tilted. */
function deepInside(page) {
  return page.evaluate(() => {
    const made = (name, ...inside) => {
      const node = document.createElement(name);
      node.append(...inside);
      return node;
    };
    const [shell, frame] = [document.createElement("div"), made("div", made("p", "above"), made("slot"))];
    frame.style.cssText = "height: 90px; overflow: hidden; rotate: 3deg; padding: 40px; display: flex";
    const beside = made("p", "beside");
    beside.style.cssText = "visibility: visible; font-size: 20px";
    shell.attachShadow({ mode: "open" }).append("loose", beside, frame);
    const homes = document.querySelector("#homes");
    homes.replaceWith(shell);
    shell.append(made("p", "other"), homes);
  });
}

async function pages(page) {
  const pdf = await page.pdf({ format: "A4" });
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b/g).length;
}

/** Runs inside the page: the texts that are drawn, around the sizer and in it, its ink and its place. */
function seen(place) {
  const nodes = (tree) => [...tree.querySelectorAll("*")].flatMap((node) => [node, ...(node.shadowRoot ? nodes(node.shadowRoot) : [])]);
  const own = (node) => [...node.childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE).map(({ data }) => data.trim()).join("");
  const texts = (list) => list.filter((node) => node.checkVisibility({ visibilityProperty: true })).map(own).filter(Boolean);
  const sizer = document.querySelector(place);
  const inside = nodes(sizer.shadowRoot);
  const { left, top, width, height } = sizer.getBoundingClientRect();
  return {
    around: texts(nodes(document).filter((node) => !inside.includes(node))),
    inside: texts(inside),
    ink: getComputedStyle(sizer.shadowRoot.querySelector(".sheet")).color,
    box: { x: left + scrollX, y: top + scrollY, width, height },
  };
}
