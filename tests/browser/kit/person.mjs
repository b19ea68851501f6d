// A person at the page. Finds things as people do: by the words on and beside them.
import assert from "node:assert/strict";

export class Person {
  constructor(page, site) {
    this.page = page;
    this.site = site;
  }

  /** Opens the page, or a part of it, and waits until the app has taken the place of the painted shell. */
  async opens(part = "") {
    await this.page.goto(this.site.url + part);
    await this.page.locator("#page[data-ready]").waitFor();
  }

  /** Loads the page again, as after a tab was closed. */
  async reloads() {
    await this.page.reload();
    await this.page.locator("#page[data-ready]").waitFor();
  }

  /** The field with this label. */
  field(label) {
    return this.page.getByLabel(label, { exact: true });
  }

  /** The button with this text; `within` narrows it to one region, list item or dialog. */
  button(text, within = this.page) {
    return within.getByRole("button", { name: text, exact: typeof text === "string" });
  }

  /** The region (section with a heading, fieldset, dialog …) with this name. */
  region(name, role = "region") {
    return this.page.getByRole(role, { name });
  }

  async types(label, text) {
    await this.field(label).fill(text);
  }

  async chooses(label, option) {
    await this.field(label).selectOption({ label: option });
  }

  async ticks(label) {
    await this.field(label).check();
  }

  async presses(text, within) {
    await this.button(text, within).click();
  }

  async follows(text) {
    await this.page.getByRole("link", { name: text, exact: typeof text === "string" }).click();
  }

  /** Waits until this text can be seen. */
  async sees(text, within = this.page) {
    await within.getByText(text).filter({ visible: true }).first().waitFor();
  }

  /** Insists that this text cannot be seen. */
  async misses(text, within = this.page) {
    assert.equal(await within.getByText(text).filter({ visible: true }).count(), 0, `“${text}” can be seen`);
  }

  /** Waits until the field holds this text. */
  async reads(label, text) {
    // Asked anew each time: a change may draw the field again as another one.
    const held = () => this.field(label).inputValue();
    for (let tried = 0; tried < 100 && (await held()) !== text; tried += 1) await this.page.waitForTimeout(50);
    assert.equal(await held(), text, `field “${label}”`);
  }
}
