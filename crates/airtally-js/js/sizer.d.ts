// Types of <airtally-sizer>. Importing the module defines the element.
import type { HouseFile, Issue, Tally } from "./index.js";

export interface Change {
  house: HouseFile;
  result: Tally;
}

export interface Fault {
  code: string;
  message: string;
  path: string;
  hint: string;
}

/**
 * From rooms to airflow to tubes, inside any page.
 *
 * Attributes, all optional:
 * - `rules`, `display`: rule set and units to begin with; with `fixed` a person cannot choose others
 * - `look`: `light`, `dark` or `auto`; absent: as the page around it
 * - `heading`, `heading-level`: what stands above it, and on which level of the page
 * - `ask`: the words on a button that gives the house to the page (`airtally-ask`); absent: no button
 * - `keep`: a name under which the house is kept on the device; absent: nothing is kept
 * - `src`: the address of a house file to begin with
 * - `readonly`: nothing can be changed
 *
 * Twelve custom properties make it look like the page: `--airtally-paper`, `-raised`, `-ink`, `-soft`, `-rule`, `-edge`, `-accent`, `-on-accent`,
 * `-bad`, `-radius`, `-font`, `-size`; `::part(sheet)`, `::part(heading)`, `::part(field)` and `::part(button)` do the rest.
 */
export class Sizer extends HTMLElement {
  /** The house as a file; what was typed stands in it as it was typed. */
  get house(): HouseFile | null;
  set house(house: HouseFile);
  /** What follows from it; `null` until the program is there. */
  readonly result: Tally | null;
  /** The house, once there is one. */
  take(): Promise<HouseFile>;
  /**
   * Shows another house and gives what follows from it.
   *
   * @throws {HouseError} when it is none; the one on screen stays.
   */
  put(house: HouseFile | string): Promise<Tally>;
  /** What is doubtful, worst first. */
  check(): Promise<Issue[]>;
  /** The rooms as CSV, for a spreadsheet. */
  csv(): Promise<string>;
}

/** All bubble and cross the shadow root. Nothing else leaves the element. */
export interface SizerEvents {
  /** The first result is there. */
  "airtally-ready": CustomEvent<Record<string, never>>;
  /** A person changed the house; not what the page itself set. */
  "airtally-change": CustomEvent<Change>;
  /** A person pressed the button of `ask`. */
  "airtally-ask": CustomEvent<Change>;
  /** Something that was given is no house, or the program could not be loaded. */
  "airtally-fault": CustomEvent<Fault>;
}

declare global {
  interface HTMLElementTagNameMap {
    "airtally-sizer": Sizer;
  }
  interface HTMLElementEventMap extends SizerEvents {}
}
