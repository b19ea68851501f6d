// A house file as few bytes, before they are deflated. Any JSON goes through unchanged; what a house file often holds
// is short. The file comes out as text and never as an object, so no name in it can touch one of this page.
import { NEXT_ROOM, NEXT_STEP, Row, SAME_STEP } from "./row.js";
import { SHAPES, WORDS } from "./words.js";

/** Most letters of a text that is made: a house file may not be longer. */
const LONGEST = 1 << 20;
/** Deepest nesting that is read. A house needs five. */
const DEEPEST = 16;

const [END, ABSENT, NULL, FALSE, TRUE, LIST, MAP, TEXT, NUMBER, PAGES] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
const SHAPED = 16;
const WHOLE = 32;
const WORD = 64;
const FIRST_PAGE = 256 - WORD;

/** The bytes of a JSON text. */
export function shorten(json) {
  const bytes = Object.assign([], { row: new Row() });
  write(JSON.parse(json), bytes);
  return Uint8Array.from(bytes);
}

function write(value, into) {
  if (typeof value === "string") return writeText(value, into);
  if (typeof value === "number") return writeNumber(value, into);
  if (Array.isArray(value)) {
    into.push(LIST);
    for (const item of value) write(item, into);
    return into.push(END);
  }
  if (value === null || typeof value === "boolean") return into.push(value === null ? NULL : value ? TRUE : FALSE);
  return writeMap(Object.entries(value), into);
}

function writeText(text, into) {
  const at = WORDS.indexOf(text);
  if (at < 0) return into.push(TEXT), spell(text, into);
  const sign = into.row.sign(at);
  if (sign) return into.push(sign);
  if (at < FIRST_PAGE) return into.push(WORD + at);
  into.push(PAGES + ((at - FIRST_PAGE) >> 8), (at - FIRST_PAGE) & 255);
}

function writeNumber(number, into) {
  if (Number.isInteger(number) && number >= 0 && number < WORD - WHOLE && !Object.is(number, -0)) return into.push(WHOLE + number);
  into.push(NUMBER);
  spell(JSON.stringify(number), into);
}

/** The bytes of a text up to its end; a byte that means an end is written as two. */
function spell(text, into) {
  for (const byte of new TextEncoder().encode(text)) {
    if (byte > 1) into.push(byte);
    else into.push(1, byte + 1);
  }
  into.push(END);
}

/** A map whose fields are those of a shape, or some of them, in its order is written without their names. */
function writeMap(fields, into) {
  const shape = SHAPES.findIndex((names) => fields.length > 0 && names[0] === fields[0][0] && inOrder(fields, names));
  if (shape < 0) {
    into.push(MAP);
    for (const [name, value] of fields) writeText(name, into), write(value, into);
    return into.push(END);
  }
  into.push(SHAPED + shape);
  const names = SHAPES[shape];
  let next = 0;
  for (const name of names) {
    if (next === fields.length) return into.push(END);
    if (fields[next][0] === name) writeField(name, fields[next++][1], into);
    else into.push(ABSENT);
  }
}

function writeField(name, value, into) {
  if (name === "room" && into.row.isNextRoom(value)) into.push(NEXT_ROOM);
  else write(value, into);
}

function inOrder(fields, names) {
  let from = 0;
  return fields.every(([name]) => (from = names.indexOf(name, from) + 1) > 0);
}

/** The JSON text of bytes. Throws `newer` at what a later page wrote, `damaged` at what none did, `large` at too much. */
export function lengthen(bytes) {
  const from = { bytes, at: 0, left: LONGEST, row: new Row() };
  const json = read(from, next(from), DEEPEST);
  if (from.at !== bytes.length) throw new Error("damaged");
  return json;
}

function next(from) {
  if (from.at >= from.bytes.length) throw new Error("damaged");
  return from.bytes[from.at++];
}

/** Counts what is made, so that little can never become much: two bytes may stand for a long word. */
function made(from, text) {
  from.left -= text.length + 1;
  if (from.left < 0) throw new Error("large");
  return text;
}

function read(from, sign, deeper) {
  if (sign >= WORD) return word(from, sign - WORD);
  if (sign >= WHOLE) return made(from, String(sign - WHOLE));
  switch (sign) {
    case NULL: return made(from, "null");
    case FALSE: return made(from, "false");
    case TRUE: return made(from, "true");
    case TEXT: return made(from, JSON.stringify(spelled(from)));
    case NUMBER: return number(from);
    case NEXT_ROOM: return made(from, String(from.row.nextRoom()));
    case SAME_STEP:
    case NEXT_STEP: return word(from, from.row.word(sign));
  }
  if (sign >= PAGES && sign < SHAPED) return word(from, FIRST_PAGE + ((sign - PAGES) << 8) + next(from));
  if (deeper === 0) throw new Error("damaged");
  if (sign >= SHAPED) return shaped(from, SHAPES[sign - SHAPED], deeper - 1);
  if (sign === LIST) return `[${until(from, (item) => read(from, item, deeper - 1))}]`;
  if (sign === MAP) {
    return `{${until(from, (first) => `${name(from, first)}:${read(from, next(from), deeper - 1)}`)}}`;
  }
  throw new Error("damaged");
}

function word(from, at) {
  if (at >= WORDS.length) throw new Error("newer");
  from.row.saw(at);
  return made(from, JSON.stringify(WORDS[at]));
}

function name(from, sign) {
  const json = read(from, sign, 0);
  if (json[0] !== '"') throw new Error("damaged");
  return json;
}

function number(from) {
  const text = spelled(from);
  if (!/^-?(0|[1-9]\d{0,20})(\.\d{1,20})?(e[+-]?\d{1,3})?$/.test(text)) throw new Error("damaged");
  return made(from, text);
}

function until(from, one) {
  const items = [];
  for (let sign = next(from); sign !== END; sign = next(from)) items.push(one(sign));
  return items.join(",");
}

function shaped(from, names, deeper) {
  if (!names) throw new Error("newer");
  const fields = [];
  for (const name of names) {
    const sign = next(from);
    if (sign === END) break;
    if (sign !== ABSENT) fields.push(`${made(from, JSON.stringify(name))}:${readField(name, from, sign, deeper)}`);
  }
  return `{${fields.join(",")}}`;
}

function readField(name, from, sign, deeper) {
  const json = read(from, sign, deeper);
  if (name === "room" && /^\d+$/.test(json)) from.row.sawRoom(Number(json));
  return json;
}

function spelled(from) {
  const bytes = [];
  for (let byte = next(from); byte !== END; byte = next(from)) {
    const plain = byte === 1 ? next(from) - 1 : byte;
    if (byte === 1 && plain !== 0 && plain !== 1) throw new Error("damaged");
    bytes.push(plain);
  }
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(Uint8Array.from(bytes));
  } catch {
    throw new Error("damaged");
  }
}
