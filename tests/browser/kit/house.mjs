// Entering a house as a person does: press a kind of room, type its floor area, press Done.

/** Adds a room. `typed` maps the labels of its fields to texts; `storey` is chosen where it differs from the room before. */
export async function addRoom(person, kind, typed = {}, storey) {
  await person.presses(kind, person.region("Add a room", "group"));
  if (storey) await inRoom(person).getByLabel("Storey", { exact: true }).selectOption({ label: storey });
  for (const [label, text] of Object.entries(typed)) await inRoom(person).getByLabel(label, { exact: true }).fill(text);
  await person.presses("Done", inRoom(person));
}

/** The editor of the room that is open. */
export function inRoom(person) {
  return person.page.locator(".row-edit");
}

/** Opens a room by its name. */
export async function openRoom(person, name) {
  await person.page.locator(".row-open").filter({ hasText: name }).first().click();
  await inRoom(person).waitFor();
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
