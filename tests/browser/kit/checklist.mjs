// Working through the checklist as a person on site does: the next step, what it asks, its tick.
import assert from "node:assert/strict";

/**
 * Does every step that is left, the next one first. `found` maps the label of a field to what is typed or chosen there.
 * `quickly` types in one go and ticks what asks nothing without looking. Gives the titles in order, what it took, and how often the next
 * tick lay out of sight.
 */
export async function worksThrough(person, found, { quickly = false } = {}) {
  const went = { titles: [], taps: 0, keys: 0, searched: [] };
  for (let title = await next(person); title; title = await next(person)) {
    assert.ok(!went.titles.includes(title), `“${title}” is next once more after it was done`);
    went.titles.push(title);
    const step = await opens(person, title, went);
    const { asks, inSight, ticked } = await looksAt(step);
    if (!quickly && !inSight) went.searched.push(title);
    for (const label of asks.filter((label) => label in found)) {
      await puts(step.getByLabel(label, { exact: true }), found[label], went, quickly);
    }
    if (ticked) await ticks(step, title, went);
    if (quickly) went.titles.push(...(await ticksOn(person.page)));
  }
  return went;
}

/** The title of the next step; nothing when there is none. */
async function next({ page }) {
  const [title] = await page.locator(".answer p").filter({ hasText: /^Next:/ }).getByRole("button").allTextContents();
  return title;
}

/** The row of a step, opened by its title where it is not open already. */
async function opens(person, title, went) {
  const step = person.page.getByRole("listitem").filter({ has: person.page.getByRole("button", { name: title, exact: true }) });
  const turn = step.getByRole("button", { name: title, exact: true });
  if ((await turn.getAttribute("aria-expanded")) === "false") {
    await turn.click();
    went.taps += 1;
  }
  return step;
}

/** The labels of what it asks, whether it is done by a tick, and whether its tick can be pressed where the page stands. */
function looksAt(step) {
  return step.evaluate((row) => {
    const { x, y, width, height } = row.querySelector(".step-tick").getBoundingClientRect();
    const there = document.elementFromPoint(x + width / 2, y + height / 2);
    return {
      asks: [...row.querySelectorAll("input[type=text], select")].map((field) => field.labels[0].textContent),
      ticked: Boolean(row.querySelector("input.tick")),
      inSight: row.querySelector(".step-tick").contains(there),
    };
  });
}

/** Types or chooses what was found, and insists that it stands there. */
async function puts(field, text, went, quickly) {
  const shown = () => field.evaluate((it) => (it.tagName === "SELECT" ? it.selectedOptions[0].textContent : it.value));
  if ((await shown()) === text) return;
  if (await field.evaluate((it) => it.tagName === "SELECT")) {
    await field.selectOption({ label: text });
    went.taps += 2;
  } else {
    await (quickly ? field.fill(text) : field.pressSequentially(text));
    went.taps += 1;
    went.keys += text.length;
  }
  assert.equal(await shown(), text, "what was typed");
}

async function ticks(step, title, went) {
  await step.getByRole("checkbox", { name: title, exact: true }).check();
  went.taps += 1;
}

/** Ticks on until a step asks something; the titles of what was ticked. */
function ticksOn(page) {
  return page.evaluate(async () => {
    const done = [];
    for (;;) {
      await new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)));
      const row = document.querySelector(".step.is-open");
      const tick = row?.querySelector("input.tick:not(:checked)");
      const title = row?.querySelector(".step-turn").textContent;
      if (!tick || done.includes(title) || row.querySelector("input[type=text], select")) return done;
      tick.click();
      done.push(title);
    }
  });
}
