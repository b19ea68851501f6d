// Types of airtally-js, written by hand. A test holds them against what the program really gives.

/** A rule set in one edition. */
export type RuleSetId =
  | "adf-2021" | "ireland-tgd-f-2019" | "netherlands-2012" | "france-1982" | "din-1946-6-2019" | "din-1946-6-2009"
  | "en-16798-1-2019" | "passive-house" | "ashrae-62.2-2016" | "ashrae-62.2-2013" | "ashrae-62.2-2010" | "irc-2024"
  | "irc-2021" | "irc-2018" | "irc-2015" | "washington-irc-2021" | "imc-403" | "canada-room-count" | "canada-nbc";

/** What a room is used for. */
export type RoomKind =
  | "living" | "dining" | "kitchen" | "living-kitchen" | "main-bedroom" | "bedroom" | "study" | "bathroom" | "wc"
  | "utility" | "store" | "hall" | "basement" | "garage";

/** The units that numbers are shown and set in: m³/h and metres, L/s and metres, cfm and feet. */
export type Display = "m3h" | "ls" | "cfm";

/** The tube the runs are made of, by its outside diameter in mm. */
export type TubeSize = "od63" | "od75" | "od90" | "oval";

/** A unit, as the file has it. */
export type UnitId =
  | "m3/h" | "L/s" | "cfm" | "L/h" | "m2" | "ft2" | "cm2" | "mm2" | "in2" | "m" | "cm" | "mm" | "ft" | "in" | "m3"
  | "ft3" | "m/s" | "ft/min" | "Pa" | "inwc" | "degC" | "degF" | "1/h" | "ppm" | "h" | "min" | "s" | "d" | "deg"
  | "count" | "ratio" | "%" | "m3/(h.m2)" | "L/(s.m2)" | "cfm/ft2" | "W" | "money" | "dBA" | "dB";

/** A value about the whole house that can be typed. */
export type HouseField =
  | "floor-area" | "ceiling" | "ach50" | "envelope-height" | "weather-factor" | "run-time" | "people" | "joist-depth"
  | "joist-span" | "joist-clear" | "joist-notch" | "joist-notch-at" | "joist-notch-length" | "stud-depth"
  | "stud-notch" | "other-fans" | "largest-fans" | "intake-ground" | "intake-source" | "intake-below"
  | "intake-exhaust" | "exhaust-above" | "exhaust-opening" | "exhaust-over" | "exhaust-boundary" | "exhaust-ground"
  | "intake-boundary" | "intake-street" | "dryer-opening" | "leak-pressure" | "leak-supply" | "leak-extract";

/** A value about one room that can be typed. */
export type RoomField =
  | "area" | "length" | "width" | "height" | "sleepers" | "supply-run" | "extract-run" | "supply-built"
  | "extract-built" | "supply-tubes" | "extract-tubes";

/** Something that was typed, exactly as it was typed: `"12 ft 6 in"`, `"3,2 m"`. */
export interface Entry<Field extends string = string> {
  field: Field;
  text: string;
  /** The unit of a bare number; a unit in the text itself wins. */
  unit: UnitId;
}

/** A house file. `schema.json` says the same for programs that are not written in TypeScript. */
export interface HouseFile {
  airtally: 1;
  house: House;
}

export interface House {
  name: string;
  choices: Choices;
  entries: Entry<HouseField>[];
  rooms: Room[];
  /** The id of the next room: larger than every room's. */
  next_room: number;
  /** Own values in place of registered ones; the keys are in `schema.json`. */
  settings: Entry[];
  ticks: Tick[];
  /** Own prices by part. */
  prices?: Entry[];
  /** Own curves, points apart by semicolons: `"0: 300; 150: 240"`. */
  curves?: Entry<"fan" | "tube" | "valve" | "setting">[];
}

/** Absent or `null`: as the rule set has it, or not known yet. */
export interface Choices {
  rules: RuleSetId;
  display: Display;
  credit: "without" | "claimed";
  print: "inch-pound" | "si";
  tube: TubeSize;
  wet?: "continuous" | "on-demand" | null;
  kitchen?: "system" | "hood" | null;
  table?: "table" | "equation" | null;
  building?: "new" | "old" | null;
  joist?: "solid" | "engineered" | "truss" | "steel" | "concrete" | null;
  stud?: "bearing" | "doubled" | "partition" | null;
  fuel?: "nothing" | "sealed" | "gas" | "solid" | null;
  outlets?: "apart" | "combined" | "sides" | null;
  failing?: "not-known" | "both-stop" | null;
  fans?: "flow" | "speed" | null;
  manifolds?: "one" | "storeys" | null;
}

export interface Room {
  /** Its own for ever: never given to another room of the house. */
  id: number;
  kind: RoomKind;
  /** Empty: called by its kind. */
  name: string;
  /** 0 is the ground floor, -1 the basement. */
  storey: number;
  /** A kitchen that is open to a living space. */
  open?: boolean | null;
  entries: Entry<RoomField>[];
}

/** A step of the checklist that is done. */
export interface Tick {
  step: string;
  room?: number | null;
  air?: Air | null;
  item?: string | null;
  storey?: number;
}

export type Air = "supply" | "extract";

export type Level = "away" | "normal" | "boost";

/** What the air does in a room. */
export type Role = "supply" | "extract" | "both" | "transfer" | "never";

/** What decides the number of tubes. */
export type Why = "one-is-enough" | "speed-at-normal" | "speed-at-boost" | "kitchen" | "fewest";

/** What asks for a total. */
export type Asks = "whole-dwelling" | "supply-rooms" | "extract-rooms" | "share-of-normal" | "lower-level";

/** How much an issue matters, worst first. */
export type Severity = "stops" | "outside-rule" | "unusual" | "note";

/** How sure a source is. */
export type Mark = "published" | "practice" | "memory" | "yours" | "arithmetic";

/** A number in its unit, and the same for people to read: `"162 m³/h"`, rounded, with a no-break space before the unit. */
export interface Measure {
  /** Not rounded; always finite. */
  value: number;
  unit: UnitId;
  text: string;
}

/** A result in the unit that the house shows. */
export interface Quantity extends Measure {
  /** Its place in `working`, where there is a line for it. */
  line: number | null;
}

/** What follows from a house. Plain values only: it survives `JSON.stringify` unchanged. */
export interface Tally {
  /** The version of this shape: fields may be added without a new one. */
  shape: 1;
  name: string;
  rules: Named<RuleSetId>;
  display: Display;
  /** The step that terminals are set in. */
  step: Quantity;
  levels: Record<Level, LevelTotal>;
  /** In the order of the file. */
  rooms: RoomTally[];
  tubes: Tubes;
  /** Worst first. */
  issues: Issue[];
  /** The lines behind the numbers, when they were asked for; else empty. */
  working: Line[];
}

export interface Named<Id extends string> {
  id: Id;
  name: string;
}

export interface LevelTotal {
  /** What the rules ask for. */
  required: Quantity;
  /** What is set, in whole steps, the same for supply and extract; nought while one side has no room. */
  total: Quantity;
  governs: Asks | null;
}

export interface RoomTally {
  id: number;
  name: string;
  kind: RoomKind;
  storey: number;
  role: Role;
  supply: RoomAir | null;
  extract: RoomAir | null;
  /** What must stay open while its door is closed. */
  gap: Gap | null;
  /** CO₂ by morning, in a bedroom. */
  morning: Quantity | null;
}

/** The air of one direction in one room. */
export interface RoomAir extends Record<Level, Quantity> {
  /** The least that the rules allow at normal. */
  least: Quantity;
  run: Run;
}

/** The tubes between a manifold and a room. */
export interface Run {
  /** What is written on them: `S1`, `E2`. */
  mark: string;
  tubes: number;
  /** The line behind their number. */
  line: number;
  why: Why;
  /** The same in words. */
  reason: string;
  /** Speed in each at normal. */
  speed: Quantity;
}

export interface Gap {
  /** Of a gap under the door. */
  height: Quantity;
  area: Quantity;
}

export interface Tubes {
  size: TubeSize;
  name: string;
  count: number;
  /** Spares included. */
  supplyPorts: number;
  extractPorts: number;
}

/** Something that is wrong or doubtful. It never stops the rest from being worked out. */
export interface Issue {
  /** Stable; new ones may come. */
  code: string;
  severity: Severity;
  room: number | null;
  field: string | null;
  /** Where in the file: `house.rooms[3].entries[0]`. */
  path: string;
  text: string;
  hint: string | null;
}

/** One line of the working. */
export interface Line {
  title: string;
  /** A subscript follows `_`. */
  equation: string;
  room: number | null;
  result: Measure;
  terms: Term[];
  source: string;
  mark: Mark;
  /** One of the values that should be checked before it is relied on. */
  leastSure: boolean;
}

/** A number that was put into an equation. */
export interface Term {
  symbol: string;
  meaning: string;
  is: Measure;
  from: From;
}

export type From =
  | { kind: "line"; line: number }
  | { kind: "setting"; key: string }
  | { kind: "typed"; field: string | null; room: number | null }
  | { kind: "counted" }
  | { kind: "printed"; source: string };

/** Everything that can be chosen, with English names. */
export interface Offered {
  rules: Named<RuleSetId>[];
  kinds: Kind[];
  displays: Shown[];
  tubes: Named<TubeSize>[];
}

export interface Kind extends Named<RoomKind> {
  hint: string;
  role: Role;
  /** People sleep there. */
  sleeps: boolean;
}

export interface Shown extends Named<Display> {
  flow: UnitId;
  area: UnitId;
  length: UnitId;
}

/** A few facts about a house. Numbers count in the units of `display`; a text may carry its own unit. */
export interface Sketch {
  name?: string;
  rules?: RuleSetId;
  display?: Display;
  tube?: TubeSize;
  /** Inside the air barrier; absent: the rooms together. */
  floorArea?: number | string | null;
  ceiling?: number | string | null;
  people?: number | string | null;
  /** Air changes per hour at 50 Pa. */
  ach50?: number | string | null;
  rooms?: readonly SketchedRoom[];
}

export interface SketchedRoom {
  kind: RoomKind;
  name?: string;
  storey?: number;
  open?: boolean | null;
  area?: number | string | null;
  height?: number | string | null;
  sleepers?: number | string | null;
  /** Length of one tube from the manifold, as legs: `"3.2 + 1.4 + 2.6"`. */
  supplyRun?: number | string | null;
  extractRun?: number | string | null;
}

export type ErrorCode =
  | "too-long"
  | "not-json"
  | "not-a-house"
  | "too-many-rooms"
  | "not-written"
  | "not-started"
  | "not-loaded";

/** Why a house was not taken in, or nothing could be asked. */
export class HouseError extends Error {
  readonly name: "HouseError";
  readonly code: ErrorCode;
  /** Where in the file: `house.rooms[3].name`; empty for the whole of it. */
  readonly path: string;
  /** What to do about it. */
  readonly hint: string;
  private constructor();
}

/** A class of the surroundings, where these have it: no types of a page are needed under Node. */
type Native<Name extends string> = typeof globalThis extends Record<Name, { prototype: infer Its }> ? Its : never;

/** The program: where it is, its bytes, or compiled. */
export type Program =
  | string | ArrayBuffer | ArrayBufferView | Native<"URL"> | Native<"Request"> | Native<"Response">
  | (typeof globalThis extends { WebAssembly: { Module: { prototype: infer Its } } } ? Its & object : never);

/**
 * Loads the program; once, however often it is called. Without an argument it is taken from beside the script.
 *
 * @throws {HouseError} `not-loaded`; the next call tries again.
 */
export function start(program?: Program | Promise<Program>): Promise<void>;

/**
 * What follows from a house file, given as an object or as text. Nothing is kept and nothing is sent.
 *
 * @throws {HouseError} when it is no house file of a version that is known; a house that is doubtful gives issues instead.
 */
export function tally(house: HouseFile | string, options?: { working?: boolean }): Tally;

/** What can be chosen in a house file. */
export function choices(): Offered;

/** A house file from a few facts. It does not check them: `tally` does. */
export function sketch(facts?: Sketch): HouseFile;
