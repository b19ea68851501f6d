import { addRoom, goTo } from "../kit/house.mjs";

export const title = "the rule set decides, and the others stand beside it";

// IRC worked example: 2 000 ft², 3 bedrooms: table 60 cfm, equation 50 cfm, equation with the 30 % credit 35 cfm.
export default async function ({ person, page }) {
  await person.opens();
  await person.presses("Start my house");
  await page.getByRole("radio", { name: "cfm and feet" }).check();
  for (const kind of ["Main bedroom", "Bedroom", "Bedroom", "Living room", "Bathroom"]) await addRoom(person, kind);
  await person.types("Floor area of the house", "2000");
  await person.chooses("Rule set", "USA · IRC 2021");
  await goTo(person, "Air");
  await person.sees(/^60$/);

  await goTo(person, "House");
  await person.chooses("Table or equation", "The equation");
  await goTo(person, "Air");
  await person.sees(/^50$/);

  await goTo(person, "House");
  await person.chooses("Credit the rule offers", "Claim the credit, if its conditions are met");
  await goTo(person, "Air");
  await person.sees(/^35$/);
  const others = page.locator(".codes-others");
  if (!(await others.evaluate((it) => it.open))) await others.locator("summary").click();
  await person.sees(/IRC 2024/);
  await person.sees(/DIN 1946-6, 2019/);

  // 2015 and 2018 print no credit: it is refused, and said.
  await goTo(person, "House");
  await person.chooses("Rule set", "USA · IRC 2018");
  await goTo(person, "Air");
  await person.sees(/^50$/);
  await page.locator(".to-look-at").click();
  await person.sees(/credit is not given/i);
}
