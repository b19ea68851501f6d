// A text as a QR code after ISO/IEC 18004: bytes, error correction L or M, as small as it goes.
import { Grid } from "./grid.js";

/** The largest code that a phone reads from another screen or from paper without patience: 105 by 105 modules. */
const LARGEST = 22;
/** Light modules around a code. */
const QUIET = 4;

/** By version: bytes for correction in each block, and how many blocks, after table 9 of the standard. */
const LEVELS = [
  {
    bits: 1,
    correction: [7, 10, 15, 20, 26, 18, 20, 24, 30, 18, 20, 24, 26, 30, 22, 24, 28, 30, 28, 28, 28, 28],
    blocks: [1, 1, 1, 1, 1, 2, 2, 2, 2, 4, 4, 4, 4, 4, 6, 6, 6, 6, 7, 8, 8, 9],
  },
  {
    bits: 0,
    correction: [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26, 26, 28],
    blocks: [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16, 17, 17],
  },
];

/** The code of a text: its side in modules with the quiet border, and its dark parts as a path; nothing where it is too long. */
export function code(text) {
  const bytes = new TextEncoder().encode(text);
  const version = smallest(bytes.length, LEVELS[0]);
  if (version > LARGEST) return undefined;
  const level = smallest(bytes.length, LEVELS[1]) === version ? LEVELS[1] : LEVELS[0];
  const grid = new Grid(version);
  grid.fill(interleaved(packed(bytes, version, level), version, level));
  return { side: grid.side + 2 * QUIET, path: path(grid.best(level)) };
}

/** Bytes of data that a code of this version holds. */
function room(version, { correction, blocks }) {
  return Math.floor(modules(version) / 8) - correction[version - 1] * blocks[version - 1];
}

/** Modules for data and correction: all without finders, timing, alignment, format and version. */
function modules(version) {
  const all = (16 * version + 128) * version + 64;
  if (version < 2) return all;
  const marks = Math.floor(version / 7) + 2;
  return all - (25 * marks - 10) * marks + 55 - (version >= 7 ? 36 : 0);
}

function smallest(length, level) {
  let version = 1;
  while (version <= LARGEST && room(version, level) * 8 < 4 + lengthBits(version) + 8 * length) version += 1;
  return version;
}

function lengthBits(version) {
  return version < 10 ? 8 : 16;
}

/** The bytes of data: mode, length, text, an end, and filling. */
function packed(bytes, version, level) {
  const bits = [];
  const put = (value, length) => {
    for (let at = length - 1; at >= 0; at -= 1) bits.push((value >> at) & 1);
  };
  put(4, 4);
  put(bytes.length, lengthBits(version));
  for (const byte of bytes) put(byte, 8);
  const most = room(version, level) * 8;
  put(0, Math.min(4, most - bits.length));
  put(0, -bits.length & 7);
  for (let filler = 0xec; bits.length < most; filler ^= 0xec ^ 0x11) put(filler, 8);
  return Array.from({ length: most / 8 }, (_, at) => bits.slice(at * 8, at * 8 + 8).reduce((byte, bit) => byte * 2 + bit, 0));
}

/** Data cut into blocks, each with its correction, dealt byte by byte. */
function interleaved(data, version, { correction, blocks }) {
  const [own, count] = [correction[version - 1], blocks[version - 1]];
  const short = Math.floor(data.length / count);
  const longer = data.length % count;
  const divisor = generator(own);
  let from = 0;
  const cut = Array.from({ length: count }, (_, at) => {
    const part = data.slice(from, (from += short + (at >= count - longer ? 1 : 0)));
    return { part, check: remainder(part, divisor) };
  });
  const dealt = [];
  for (let at = 0; at <= short; at += 1) for (const { part } of cut) if (at < part.length) dealt.push(part[at]);
  for (let at = 0; at < own; at += 1) for (const { check } of cut) dealt.push(check[at]);
  return dealt;
}

/** Product in the field of 256 elements by x⁸ + x⁴ + x³ + x² + 1. */
function times(a, b) {
  let product = 0;
  for (let at = 7; at >= 0; at -= 1) product = (product << 1) ^ ((product >> 7) * 0x11d) ^ (((b >> at) & 1) * a);
  return product;
}

/** The polynomial with the roots 2⁰ … 2ⁿ⁻¹, highest power left away. */
function generator(degree) {
  const polynomial = [...Array(degree - 1).fill(0), 1];
  let root = 1;
  for (let at = 0; at < degree; at += 1) {
    for (let place = 0; place < degree; place += 1) {
      polynomial[place] = times(polynomial[place], root) ^ (polynomial[place + 1] ?? 0);
    }
    root = times(root, 2);
  }
  return polynomial;
}

function remainder(data, divisor) {
  const rest = divisor.map(() => 0);
  for (const byte of data) {
    const factor = byte ^ rest.shift();
    rest.push(0);
    divisor.forEach((value, at) => (rest[at] ^= times(value, factor)));
  }
  return rest;
}

/** Dark modules as one path, run by run. */
function path(grid) {
  let way = "";
  for (let y = 0; y < grid.side; y += 1) {
    for (let x = 0; x < grid.side; x += 1) {
      const from = x;
      while (x < grid.side && grid.dark(x, y)) x += 1;
      if (x > from) way += `M${from + QUIET} ${y + QUIET}h${x - from}v1h${from - x}z`;
    }
  }
  return way;
}
