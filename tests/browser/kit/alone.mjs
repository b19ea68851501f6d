// The page in one file, as a person has it from a mail: in a folder where nothing else lies.
import { copyFile, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { visit } from "./browser.mjs";
import { Person } from "./person.mjs";

/** Lays a file alone into a folder, lets a fresh visitor do something with it, and gives every complaint of the page. */
export async function alone(file, browser, options, walk) {
  const folder = await mkdtemp(join(tmpdir(), "alone-"));
  const path = join(folder, "house.html");
  await copyFile(file, path);
  const url = pathToFileURL(path).href;
  const { context, page, complaints } = await visit(browser, { origin: url }, options);
  try {
    await walk({ person: new Person(page, { url }), page, context });
  } finally {
    await context.close();
    await rm(folder, { recursive: true });
  }
  return complaints;
}
