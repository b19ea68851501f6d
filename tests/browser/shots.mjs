// The states that screenshots are taken of. A state is a name and the steps of a person to reach it.
import { readFile } from "node:fs/promises";
import { fillsAreas, sizers } from "./kit/sizer.mjs";
import { addRoom, goTo, inRoom, openRoom } from "./kit/house.mjs";

export const states = [
  { name: "start", steps: (person) => person.opens() },
  { name: "sizer", steps: (person) => sizes(person, "embed.html") },
  { name: "sizer-air", steps: async (person) => {
    await sizes(person, "embed.html");
    const next = person.page.getByRole("button", { name: "Next: the air" });
    if (await next.isVisible()) await next.click();
  } },
  { name: "contractor", steps: (person) => sizes(person, "contractor.html") },
  { name: "letter", steps: (person) => letter(person) },
  { name: "empty-house", steps: async (person) => {
    await person.opens();
    await person.presses("Start my house");
  } },
  { name: "house", steps: (person) => example(person) },
  { name: "house-open-room", steps: async (person) => {
    await example(person);
    await openRoom(person, "Main bedroom");
  } },
  { name: "house-errors", steps: async (person) => {
    await example(person);
    await openRoom(person, "Main bedroom");
    await inRoom(person).getByLabel("Floor area", { exact: true }).fill("1,234");
    await inRoom(person).getByLabel("Length", { exact: true }).fill("12 furlongs");
    await inRoom(person).getByLabel("Floor area", { exact: true }).scrollIntoViewIfNeeded();
  } },
  { name: "house-thirty-rooms", steps: async (person) => {
    await person.opens();
    await person.presses("Start my house");
    for (let room = 0; room < 30; room += 1) await addRoom(person, room % 3 ? "Bedroom" : "Bathroom");
  } },
  { name: "house-long-names", steps: async (person) => {
    await example(person);
    await person.types("Name of the house", "The old coach house behind the orchard wall, second dwelling, upper part");
    await openRoom(person, "Living room");
    const name = "Living room with the reading corner beside the winter garden and the stove";
    await inRoom(person).getByLabel(/^Name/).fill(name);
  } },
  { name: "air", steps: (person) => example(person, "Air") },
  { name: "air-codes", steps: async (person) => {
    await example(person, "Air");
    const others = person.page.locator(".codes-others");
    if (!(await others.evaluate((it) => it.open))) await others.locator("summary").click();
    await others.scrollIntoViewIfNeeded();
  } },
  { name: "air-other-code", steps: async (person) => {
    await example(person, "Air");
    const others = person.page.locator(".codes-others");
    if (!(await others.evaluate((it) => it.open))) await others.locator("summary").click();
    await others.getByRole("button", { name: /^Normal under Germany · DIN 1946-6, 2019/ }).click();
  } },
  { name: "air-missing-area", steps: async (person) => {
    await example(person);
    await openRoom(person, "Main bedroom");
    await inRoom(person).getByLabel("Floor area", { exact: true }).fill("");
    await goTo(person, "Air");
  } },
  { name: "steps-list", steps: async (person) => {
    await example(person, "Steps");
    const close = person.page.locator(".step").filter({ hasText: "Close every crossing" });
    await close.getByRole("button").first().click();
    await close.getByText("Exhaust duct").click();
    await close.scrollIntoViewIfNeeded();
  } },
  { name: "tubes", steps: (person) => example(person, "Tubes") },
  { name: "tubes-run", steps: async (person) => {
    await example(person, "Parts");
    await person.page.locator("#price-tube").fill("2.45");
    await goTo(person, "Tubes");
    await person.page.locator(".row-run .row-open").nth(1).click();
    await person.page.locator(".row-run.is-open").scrollIntoViewIfNeeded();
  } },
  { name: "tubes-unit", steps: async (person) => {
    await example(person, "Tubes");
    await person.presses("Your unit");
    await person.types("Fan curve", "0: 320; 150: 260; 250: 190; 350: 60");
    await person.chooses("The unit holds", "The speed of its fans");
    await person.button("Your unit").scrollIntoViewIfNeeded();
  } },
  { name: "tubes-trial", steps: async (person) => {
    await example(person, "Tubes");
    await person.presses("What if …");
    await person.ticks("Ducts leak, as tested or as their class allows");
    await person.chooses("In one room", "A tube kinked to half bore");
    await person.button("What if …").scrollIntoViewIfNeeded();
  } },
  { name: "tubes-ways", steps: async (person) => {
    await example(person, "Tubes");
    await person.presses("Side by side");
    await person.button("Side by side").scrollIntoViewIfNeeded();
  } },
  { name: "tubes-layout", steps: async (person) => {
    await example(person, "Tubes");
    await person.presses("What is laid");
    await person.types("Tube, measured", "20: 1.1; 40");
    await person.button("What is laid").scrollIntoViewIfNeeded();
  } },
  { name: "tubes-storeys", steps: async (person) => {
    await example(person, "Tubes");
    await person.presses("What is laid");
    await person.chooses("Manifolds", "One for each air on every storey");
    await person.presses("What is laid");
    await person.presses("The riser");
    await person.button("The riser").scrollIntoViewIfNeeded();
  } },
  { name: "parts", steps: (person) => example(person, "Parts") },
  { name: "parts-priced", steps: async (person) => {
    await example(person, "Parts");
    const price = (part, text) => person.page.locator(`#price-${part}`).fill(text);
    for (const [part, text] of Object.entries({ unit: "2140", tube: "2.45", "seal-ring": "1.9", "setting-out": "62", bend: "a few", "supply-valve": "1,234" })) await price(part, text);
  } },
  { name: "working", steps: async (person) => {
    await example(person, "Tubes");
    await person.page.locator(".row .figure").first().click();
  } },
  { name: "to-another-device", steps: (person) => sends(person) },
  { name: "house-by-link", steps: async (person) => {
    await sends(person);
    const link = await person.field("Link").inputValue();
    await person.presses("Close");
    await person.page.evaluate((link) => location.assign(link), link);
    await person.region("A house by link", "dialog").waitFor();
  } },
  { name: "to-look-at", steps: async (person) => {
    await example(person, "Air");
    await person.page.locator(".to-look-at").click();
  } },
  { name: "menu", steps: async (person) => {
    await example(person);
    await person.page.waitForTimeout(600);
    await person.presses("Menu");
  } },
  { name: "houses", steps: async (person) => {
    await severalHouses(person);
    await listOfHouses(person);
  } },
  { name: "houses-none", steps: async (person) => {
    await person.opens();
    await listOfHouses(person);
  } },
  { name: "houses-one", steps: async (person) => {
    await severalHouses(person);
    await listOfHouses(person);
    await person.presses("More about Larkfield");
    await person.sees("How it was");
  } },
  { name: "house-as-it-was", steps: async (person) => {
    await severalHouses(person);
    await listOfHouses(person);
    await person.presses("More about Larkfield");
    await person.page.locator(".shelf .as-link").first().click();
    await person.sees(/^As it was/);
  } },
  { name: "house-elsewhere", steps: async (person) => {
    await example(person);
    await person.page.waitForTimeout(600);
    const other = await person.page.context().newPage();
    await other.goto(person.page.url());
    await other.getByRole("button", { name: "Take over here" }).click();
    await person.sees(/open in another tab/);
    await person.page.bringToFront();
  } },
  { name: "pocket", steps: async (person) => {
    await person.opens();
    await person.presses("Pocket");
    await person.types("Air in the tube", "50 cfm");
    await person.page.getByText("How it is worked out").click();
  } },
  { name: "pocket-main", steps: async (person) => {
    await example(person, "Air");
    await person.presses("Pocket");
    await person.page.getByRole("radio", { name: "Main", exact: true }).check();
    await person.types("Air in the main", "180");
  } },
  { name: "pocket-boost", steps: async (person) => {
    await person.opens();
    await person.presses("Pocket");
    await person.page.getByRole("radio", { name: "Boost", exact: true }).check();
    await person.types("Pressure at normal", "60");
    await person.types("Air at normal", "1,234");
    await person.types("Air at boost", "12 furlongs");
  } },
  { name: "steps", steps: async (person) => {
    await example(person, "Steps");
    const boxes = person.page.locator(".step:not(.is-locked) input.tick");
    await boxes.nth(0).check();
    await boxes.nth(1).check();
  } },
  { name: "steps-found", steps: async (person) => {
    await example(person, "Steps");
    await person.page.getByLabel("What burns fuel in the house").selectOption({ label: "A stove or an open fire" });
    await person.page.getByRole("button", { name: /^Find out what the joists are/ }).click();
    await person.page.getByLabel("Depth of the joists", { exact: true }).fill("225");
  } },
  { name: "steps-timber", steps: async (person) => {
    await american(person, "USA · IRC 2021", "Steps");
    await person.page.getByLabel("The studs that tubes cross", { exact: true }).selectOption({ label: "Bearing nothing" });
    const texts = [["Depth of the joists", "12 in"], ["Free span of the joists", "12 ft"], ["Depth of a notch in a joist", "3 in"],
      ["Notch from the nearest bearing", "3 ft"], ["Length of the notch", "4 in"], ["Depth of the studs", "5.5 in"]];
    for (const [label, text] of texts) await person.page.getByLabel(label, { exact: true }).fill(text);
  } },
  { name: "steps-outside-imc", steps: async (person) => {
    await american(person, "USA · IMC", "Steps");
    await person.page.getByRole("button", { name: /^Place the intake/ }).click();
    const texts = [["Intake to the boundary", "9 ft"], ["Intake to a street or parking", "6 ft"], ["Intake above ground", "25 ft"]];
    for (const [label, text] of texts) await person.page.getByLabel(label, { exact: true }).fill(text);
  } },
  { name: "air-irc", steps: (person) => american(person, "USA · IRC 2021", "Air") },
  { name: "pocket-joist", steps: async (person) => {
    await person.opens();
    await person.presses("Pocket");
    await person.page.getByRole("radio", { name: "Joist", exact: true }).check();
    const texts = [["Depth of the joist", "9.25 in"], ["Span of the joist", "4"], ["Clear between two joists", "400"]];
    for (const [label, text] of texts) await person.types(label, text);
  } },
  { name: "steps-outside", steps: async (person) => {
    await example(person, "Steps");
    await person.page.getByRole("button", { name: /^Place the intake/ }).click();
    await person.page.getByLabel("Intake to the nearest foul air", { exact: true }).fill("3");
  } },
];

/** The sheet with the link of the example. */
async function sends(person) {
  await example(person, "Air");
  await person.presses("Menu");
  await person.presses("To another device");
  await person.page.locator(".code").waitFor();
}

async function american(person, rules, stage) {
  await example(person);
  await person.page.getByLabel("Rule set", { exact: true }).selectOption({ label: rules });
  await goTo(person, stage);
  if (stage === "Steps") await person.page.getByRole("button", { name: /^Find out what the joists are/ }).click();
}

async function example(person, stage) {
  await person.opens();
  await person.presses("Open the example house");
  if (stage) await goTo(person, stage);
}

/** The sizer on a page of somebody else, filled in. */
async function sizes(person, page) {
  await person.page.goto(person.site.url + page);
  const [sizer] = await sizers(person.page, ["airtally-sizer >> nth=0"]);
  await fillsAreas(sizer, ["28", "14,5", "16 m2", "six"]);
  if (await person.page.locator("iframe").count()) {
    await person.page.locator("iframe").scrollIntoViewIfNeeded();
    await person.page.waitForTimeout(1000);
  }
}

async function listOfHouses(person) {
  await person.presses("Menu");
  await person.presses("Houses");
  await person.page.getByText(/· copy sent/).first().waitFor();
  await person.page.waitForTimeout(400);
}

/** Four houses, one of them removed, and one with an older version. */
async function severalHouses(person) {
  const { page } = person;
  await example(person);
  for (const name of ["Orchard Row 3, upper flat", "Mill Lane"]) {
    await page.waitForTimeout(600);
    await person.presses("Menu");
    await person.presses("Start a new house");
    if (name.startsWith("Orchard")) await person.presses("Start my house");
    await addRoom(person, "Kitchen", { "Floor area": "12" });
    await person.types("Name of the house", name);
  }
  await page.waitForTimeout(600);
  await listOfHouses(person);
  await person.presses("More about Mill Lane");
  await person.presses("Remove");
  await person.presses("Understood");
  await listOfHouses(person);
  await person.presses("Larkfield");
  await person.reads("Name of the house", "Larkfield");
  await addRoom(person, "Bathroom", { "Floor area": "4" });
  await page.waitForTimeout(600);
}

/** The report of a house that was sent, as it is where no script runs. */
async function letter(person) {
  const { page, site } = person;
  await example(person);
  await person.presses("Menu");
  const comes = page.waitForEvent("download");
  await person.presses("Send this house as one file");
  const text = await readFile(await (await comes).path(), "utf8");
  const body = text.slice(0, text.lastIndexOf("<script>"));
  await page.route(`${site.url}sent.html`, (route) => route.fulfill({ body, contentType: "text/html; charset=utf-8" }));
  await page.goto(`${site.url}sent.html`);
}
