// Working through the checklist as a person on site does: the next step, what it asks, its tick.
import assert from "node:assert/strict";

/** What is not there, or is as planned. */
export const LEFT_EMPTY = null;

/**
 * Does every step that is left, the next one first. `found` says by the label of each field what is typed or chosen
 * there. `quickly` types in one go and ticks what asks nothing without looking. Gives the titles in order, what it took,
 * and which steps had to be looked for because their tick lay out of sight.
 */
export async function worksThrough({ page }, found, { quickly = false } = {}) {
  const went = { titles: [], taps: 0, keys: 0, searched: [] };
  for (let next = await looksAtNext(page); next; next = await looksAtNext(page)) {
    const { title, asks } = next;
    assert.ok(!went.titles.includes(title), `“${title}” is next once more after it was done`);
    went.titles.push(title);
    const turn = page.getByRole("button", { name: title, exact: true });
    const step = page.getByRole("listitem").filter({ has: turn });
    for (const label of asks) await answers(step, label, { title, found, quickly, went });
    went.taps += await ticksTheList(step);
    const { ticked, at } = asks.length > 0 ? await looksAtNext(page, title) : next;
    if (!at) went.searched.push(title);
    if (ticked && at && !quickly) await page.mouse.click(at.x, at.y);
    else if (ticked) await step.getByRole("checkbox", { name: title, exact: true }).check();
    else await step.getByRole("button", { name: "To the next step" }).click();
    went.taps += 1;
    if (quickly) went.titles.push(...(await ticksOn(page)));
  }
  return went;
}

/**
 * The next step, or that of a title, opened by its title where it is not open: what it asks, whether a tick makes it
 * done, and where its tick is, if it can be pressed where the page stands. Nothing when no step is left.
 */
function looksAtNext(page, title) {
  return page.evaluate(async (wanted) => {
    const drawn = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    await drawn();
    const next = [...document.querySelectorAll(".answer p")].find((line) => line.textContent.startsWith("Next:"));
    const title = wanted ?? next?.querySelector("button").textContent;
    if (!title) return null;
    const turn = [...document.querySelectorAll(".step-turn")].find((turn) => turn.textContent === title);
    if (turn.ariaExpanded === "false") {
      turn.click();
      await drawn();
    }
    const row = turn.closest("li");
    const tick = row.querySelector(".step-tick");
    // A thumb waits until the page stands still.
    for (let was = NaN; was !== tick.getBoundingClientRect().y; await drawn()) was = tick.getBoundingClientRect().y;
    const { x, y, width, height } = tick.getBoundingClientRect();
    const at = { x: x + width / 2, y: y + height / 2 };
    return {
      title,
      asks: [...row.querySelectorAll("input[type=text], select")].map((field) => field.labels[0].textContent),
      ticked: Boolean(row.querySelector(":scope > label > input.tick:not(:checked)")),
      at: tick.contains(document.elementFromPoint(at.x, at.y)) ? at : null,
    };
  }, title);
}

/** Ticks what a step works through, thing by thing; how many that were. */
async function ticksTheList(step) {
  const boxes = await step.locator(".step-list input:not(:checked)").all();
  for (const box of boxes.reverse()) await box.check();
  return boxes.length;
}

/** Types or chooses what was found, and insists that it stands there. */
async function answers(step, label, { title, found, quickly, went }) {
  assert.ok(label in found, `nobody has found “${label}” for “${title}”`);
  const [field, wanted] = [step.getByLabel(label, { exact: true }), found[label]];
  const shown = () => field.evaluate((it) => (it.tagName === "SELECT" ? it.selectedOptions[0].textContent : it.value));
  if (wanted === LEFT_EMPTY || (await shown()) === wanted) return;
  if (await field.evaluate((it) => it.tagName === "SELECT")) await field.selectOption({ label: wanted });
  else await (quickly ? field.fill(wanted) : field.pressSequentially(wanted));
  assert.equal(await shown(), wanted, `typed into “${label}”`);
  went.taps += 1;
  went.keys += wanted.length;
}

/** Ticks on until a step asks something; the titles of what was ticked. */
function ticksOn(page) {
  return page.evaluate(async () => {
    const done = [];
    for (;;) {
      await new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)));
      const row = document.querySelector(".step.is-open");
      const tick = row?.querySelector(":scope > label > input.tick:not(:checked)");
      const title = row?.querySelector(".step-turn").textContent;
      if (!tick || done.includes(title) || row.querySelector("input[type=text], select")) return done;
      tick.click();
      done.push(title);
    }
  });
}
