// Types of <airtally-sizer>. Importing the module defines the element.
import type { HouseFile, Issue, Tally } from "./index.js";

export interface Change {
  house: HouseFile;
  result: Tally;
}

export interface Fault {
  /** That of a `HouseError`, or `not-kept` where `keep` could not. */
  code: string;
  message: string;
  path: string;
  hint: string;
}

/**
 * From rooms to airflow to tubes, inside any page.
 *
 * It begins with the house that the page set, or else the one that was kept, or else that of `src`, or else four empty rooms.
 *
 * Attributes, all optional:
 * - `rules`, `display`: rule set and units that a new house and that of `src` begin with; set later they change the house. With `fixed`
 *   they hold for every house, and a person cannot choose others
 * - `look`: `light`, `dark` or `auto`; absent: as the page around it. Paper is white
 * - `heading`, `heading-level`: what stands above it, and on which level of the page
 * - `ask`: the words on a button that gives the house to the page (`airtally-ask`); absent: no button
 * - `lang`: the language of `heading` and `ask`; absent: that of the page around it. All else is English and says so to screen readers
 * - `keep`: a name under which the house is kept on the device; absent: nothing is kept
 * - `src`: the address of a house file to begin with, asked for without credentials
 * - `readonly`: nothing can be changed
 *
 * Twelve custom properties make it look like the page: `--airtally-paper`, `-raised`, `-ink`, `-soft`, `-rule`, `-edge`, `-accent`, `-on-accent`,
 * `-bad`, `-radius`, `-font`, `-size`; `::part(sheet)`, `::part(heading)`, `::part(field)` and `::part(button)` do the rest.
 */
export class Sizer extends HTMLElement {
  /** The house as a file; what was typed stands in it as it was typed. */
  get house(): HouseFile | null;
  /** May be set at any time, also before it is on the page; what is no house is told of by `airtally-fault`. */
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
  /**
   * Opens the browser's window for printing with this sizer alone: all three leaves and what is to be checked, in black on white.
   * The page around it is left out, and comes back when the window closes.
   */
  print(): Promise<void>;
}

/** All bubble and cross the shadow root. Nothing else leaves the element. */
export interface SizerEvents {
  /** The first result is there. */
  "airtally-ready": CustomEvent<Record<string, never>>;
  /**
   * A person changed the house; not what the page itself set. Told 150 ms after the last key, and at once when the page is hidden or
   * the sizer is taken off it.
   */
  "airtally-change": CustomEvent<Change>;
  /** A person pressed the button of `ask`. */
  "airtally-ask": CustomEvent<Change>;
  /** Something that was given is no house, or could not be loaded or kept. */
  "airtally-fault": CustomEvent<Fault>;
}

declare global {
  interface HTMLElementTagNameMap {
    "airtally-sizer": Sizer;
  }
  interface GlobalEventHandlersEventMap extends SizerEvents {}
}
