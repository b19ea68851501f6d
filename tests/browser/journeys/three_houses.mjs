import assert from "node:assert/strict";
import { LEFT_EMPTY, worksThrough } from "../kit/checklist.mjs";
import { addRoom, goTo } from "../kit/house.mjs";

export const title = "three houses under three codes go from an empty start to the last tick";

// Expected air flows are sums by hand from the printed rules, written beside each.
const HOUSES = [
  {
    name: "Alder Rise",
    units: "L/s and metres",
    rules: "England · Approved Document F 2021",
    // Tables 1.2 and 1.3, 2021: 4 bedrooms 37 L/s, 0.3 × 150 m² = 45 L/s; kitchen 13 + utility 8 + two baths 2 × 8 + WC 6 = 43 L/s.
    asked: { Normal: "45", Boost: "45" },
    rooms: [
      ["Living room", { "Floor area": "22", "Supply tube": "3.2 + 1.4 + 2.6" }],
      ["Dining room", { "Floor area": "12" }],
      ["Kitchen", { "Floor area": "14", "Extract tube": "2.4 + 3.1" }],
      ["Utility room", { "Floor area": "5" }],
      ["WC", { "Floor area": "2" }],
      ["Main bedroom", { "Floor area": "16" }, "One floor up"],
      ["Bedroom", { "Floor area": "12" }],
      ["Bedroom", { "Floor area": "10" }],
      ["Bedroom", { "Floor area": "8" }],
      ["Bathroom", { "Floor area": "6" }],
      ["Bathroom", { "Floor area": "4" }],
    ],
    house: { "Floor area of the house": "150" },
    found: {
      "What burns fuel in the house": "Nothing",
      "The joists": "Solid timber",
      "Depth of the joists": "400",
      "Clear between two joists": "400",
      "Free span of the joists": "4.2",
      "Depth of a notch in a joist": LEFT_EMPTY,
      "Notch from the nearest bearing": LEFT_EMPTY,
      "Intake above ground": "2.5",
      "Intake to the nearest foul air": "9",
      "It ran": "9.5",
      "Tubes pulled": LEFT_EMPTY,
      "Pressure of the test": "100",
      "Leak, supply side": "2",
      "Leak, extract side": "2.5",
    },
  },
  {
    name: "Cedar Hollow",
    units: "cfm and feet",
    rules: "USA · IRC 2021",
    // Table M1505.4.3(1): 1 501 to 3 000 ft², 4 bedrooms, 75 cfm; two baths 2 × 20 + kitchen 25 = 65 cfm all day.
    asked: { Normal: "75" },
    rooms: [
      ["Living room", { "Floor area": "300" }],
      ["Kitchen", { "Floor area": "180" }],
      ["Main bedroom", { "Floor area": "220" }],
      ["Bedroom", { "Floor area": "150" }],
      ["Bedroom", { "Floor area": "140" }],
      ["Bathroom", { "Floor area": "60" }],
      ["Garage", {}],
      ["Basement", { "Floor area": "900" }, "Basement"],
      ["Bedroom", { "Floor area": "160" }],
      ["Bathroom", { "Floor area": "50" }],
    ],
    house: { "Floor area of the house": "2450" },
    found: {
      "What burns fuel in the house": "Only what takes its air from outdoors",
      "The joists": "Solid timber",
      // Actual depth of a 2×12: a third of it is 3.75 in, and 75 mm with 10 mm to pull are 3.35 in.
      "Depth of the joists": "11.25",
      "Free span of the joists": "14 ft 3 in",
      "Clear between two joists": "14.5",
      // At the end of the joist a quarter of its depth, 2.8 in, a third of it long, 3.75 in.
      "Depth of a notch in a joist": "2.5",
      "Notch from the nearest bearing": "0",
      "Length of the notch": "3.5",
      "The studs that tubes cross": "Bearing nothing",
      // 60 % of a 2×6 are 3.3 in: too little for 75 mm with 10 mm to pull; of a 2×8, 7.25 in, 4.35 in.
      "Depth of the studs": "7.25",
      "Depth of a notch in a stud": LEFT_EMPTY,
      "Outside terminals": "Two, apart",
      "Intake above ground": "6",
      "Intake to the nearest foul air": "8 ft",
      "Intake below that": "4",
      "Intake to own exhaust": "12",
      "Exhaust to a window or door": "5.4",
      "Exhaust to the boundary": "10",
      "Exhaust above intake": LEFT_EMPTY,
      "Dryer outlet to an opening": "4",
      "It ran": "32 ft 6 in",
      "Tubes pulled": LEFT_EMPTY,
      "Pressure of the test": "50",
      "Leak, supply side": "3",
      "Leak, extract side": "2",
    },
  },
  {
    name: "Orchard Mews 3",
    units: "m³/h and metres",
    rules: "Passive house criteria",
    // 30 m³/h × 4 people = 120; kitchen 60 + two baths 2 × 40 + WC 20 = 160 m³/h at most; every day 0.77 × 160 = 123.2 m³/h,
    // which is 0.352 of 140 m² × 2.5 m an hour, more than 0.3; with nobody at home 0.54 × 160 = 86.4 m³/h.
    asked: { Normal: "123.2", Boost: "160", Away: "86.4" },
    rooms: [
      ["Living room", { "Floor area": "30" }],
      ["Kitchen", { "Floor area": "15" }],
      ["WC", { "Floor area": "2" }],
      ["Main bedroom", { "Floor area": "16" }, "One floor up"],
      ["Bedroom", { "Floor area": "12" }],
      ["Bedroom", { "Floor area": "12" }],
      ["Bathroom", { "Floor area": "6" }],
      ["Bathroom", { "Floor area": "5" }],
      ["Hall", { "Floor area": "12" }],
    ],
    house: { "Floor area of the house": "140" },
    chosen: { "The building": "Lived in", "What burns fuel in the house": "Gas or oil with an open flue" },
    found: {
      "When one fan of the unit stops": "Both fans stop",
      "Other fans together": "0",
      "Air changes at 50 Pa": "0.6",
      "What burns fuel in the house": "Gas or oil with an open flue",
      "The joists": "Concrete, no joists",
      "Depth of the joists": LEFT_EMPTY,
      "Free span of the joists": LEFT_EMPTY,
      "Clear between two joists": LEFT_EMPTY,
      "Depth of a notch in a joist": LEFT_EMPTY,
      "Notch from the nearest bearing": LEFT_EMPTY,
      "Intake above ground": "3",
      "Intake to the nearest foul air": "8.5",
      "It ran": "11,5",
      "Tubes pulled": LEFT_EMPTY,
      "Pressure of the test": "150",
      "Leak, supply side": "11",
      "Leak, extract side": "10",
    },
  },
];

export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Start my house");
  for (const [at, house] of HOUSES.entries()) {
    if (at > 0) await beginsAnew(person);
    await enters(person, house);
    await asksForAir(person, house);
    await goTo(person, "Steps");
    await page.locator(".answer").getByRole("button").click();
    // The first house by thumb, tick by tick; the others type what they found and tick the rest quickly.
    const went = await worksThrough(person, house.found, { quickly: at > 0 });
    await everyStepIsTicked(page, house, went);
  }
}

async function beginsAnew(person) {
  await person.presses("Menu");
  await person.presses("Start a new house");
}

async function enters(person, { name, units, rules, rooms, house, chosen = {} }) {
  await person.page.getByRole("radio", { name: units }).check();
  await person.types("Name of the house", name);
  await person.chooses("Rule set", rules);
  for (const [kind, typed, storey] of rooms) await addRoom(person, kind, typed, storey);
  for (const [label, text] of Object.entries(house)) await person.types(label, text);
  for (const [label, option] of Object.entries(chosen)) await person.chooses(label, option);
}

async function asksForAir(person, { asked }) {
  await goTo(person, "Air");
  for (const [level, flow] of Object.entries(asked)) {
    await person.page.getByRole("radio", { name: level, exact: true }).check();
    const answer = person.page.locator(".answer .figure-big b");
    assert.equal((await answer.textContent()).trim(), flow, `${level} by hand`);
  }
}

async function everyStepIsTicked(page, { name }, { titles, taps, keys, searched }) {
  await page.getByText("Every step is ticked.").waitFor();
  assert.equal(await page.locator(".step").count(), titles.length, "each step was the next one once");
  assert.equal(await page.locator(".step.is-done").count(), titles.length, "every step of every phase is done");
  assert.deepEqual(searched, [], "steps whose tick had to be looked for");
  console.log(`  ${name}: ${titles.length} steps, ${taps} taps, ${keys} keys`);
}
