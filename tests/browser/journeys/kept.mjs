import assert from "node:assert/strict";

export const title = "a kept house that cannot be read is moved aside, said, and never overwritten";

const BROKEN = [
  ['{"airtally":9,"house":{}}', /version 9/],
  ['{"airtally":1,"house":{"name":7}}', /house\.name/],
  ["<house/>", /./],
];

export default async function ({ person, page }) {
  await person.opens();
  for (const [text, says] of BROKEN) {
    await page.evaluate((kept) => {
      localStorage.clear();
      window.addEventListener("pagehide", () => localStorage.setItem("airtally.house", kept));
    }, text);
    await person.reloads();
    const remark = page.getByRole("status");
    await remark.getByText(/aside/i).waitFor();
    assert.match(await remark.textContent(), says);
    const aside = await page.evaluate(() =>
      Object.keys(localStorage).filter((key) => key.startsWith("airtally.aside.")).map((key) => localStorage.getItem(key)));
    assert.deepEqual(aside, [text], "the text is kept to the letter");
    await person.sees("Start my house");
  }
}
