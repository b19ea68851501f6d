// Screenshots of every state, at three sizes in three looks: node shoot.mjs FOLDER TARGET [NAME…].
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { LOOKS, PHONE, TABLET, WIDE, launch, visit } from "./kit/browser.mjs";
import { Person } from "./kit/person.mjs";
import { serve } from "./kit/server.mjs";
import { states } from "./shots.mjs";

const [folder, target, ...wanted] = process.argv.slice(2);

await mkdir(target, { recursive: true });
const site = await serve(folder);
const browser = await launch();
for (const state of states.filter(({ name }) => wanted.length === 0 || wanted.includes(name))) {
  for (const size of [PHONE, TABLET, WIDE]) {
    for (const look of LOOKS) await shoot(state, size, look);
  }
}
await browser.close();
await site.stop();

async function shoot({ name, steps }, size, look) {
  const { context, page, complaints } = await visit(browser, site, { size, look });
  await steps(new Person(page, site), { page, size, look });
  const path = join(target, `${name}-${size.name}-${look}.png`);
  await page.screenshot({ path, fullPage: true });
  await context.close();
  console.log(path);
  for (const complaint of complaints) console.log(`  the page ${complaint}`);
}
