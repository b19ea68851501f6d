// Entering a house as a person does: press a kind of room, type its floor area, press Done.

/** Adds a room. `typed` maps the labels of its fields to texts; `storey` is chosen where it differs from the room before. */
export async function addRoom(person, kind, typed = {}, storey) {
  await person.presses(kind, person.region("Add a room", "group"));
  if (await inTable(person)) await person.page.locator(".cells tbody:focus-within").getByRole("button", { name: /^More about/ }).click();
  if (storey) await inRoom(person).getByLabel("Storey", { exact: true }).selectOption({ label: storey });
  for (const [label, text] of Object.entries(typed)) await inRoom(person).getByLabel(label, { exact: true }).fill(text);
  await person.presses("Done", inRoom(person));
}

/** The room that is open: its editor, or its row in the table with the editor below. */
export function inRoom(person) {
  return person.page.locator(".row-edit, .cells .is-open");
}

/** Opens a room by its name. */
export async function openRoom(person, name) {
  const opener = (await inTable(person))
    ? person.page.getByRole("button", { name: new RegExp(`^More about ${name}`) })
    : person.page.locator(".row-open").filter({ hasText: name });
  await opener.first().click();
  await inRoom(person).waitFor();
}

/** Whether the rooms stand in a table, as on a wide screen. */
export function inTable(person) {
  return person.page.evaluate(() => matchMedia("(min-width: 64rem)").matches);
}

/** Waits until a room of this name is there: as text in the list, as what is typed in the table. */
export async function seesRoom(person, name) {
  if (!(await inTable(person))) return person.sees(name);
  const typed = (name) => [...document.querySelectorAll(".cells input")].some((cell) => cell.value === name);
  await person.page.waitForFunction(typed, name);
}

/** Goes to a stage by its name on the bar. */
export async function goTo(person, stage) {
  await person.page.getByRole("navigation", { name: "Stages" }).getByRole("link", { name: stage }).click();
  await person.page.locator(`.stage[aria-current=page]`, { hasText: stage }).waitFor();
}

/** The row of a list that is about a room. */
export function row(person, list, room) {
  return person.page.locator("section.part, .part").filter({ has: person.page.getByRole("heading", { name: list, exact: true }) })
    .locator(".row").filter({ has: person.page.getByRole("heading", { name: room, exact: true }) });
}
