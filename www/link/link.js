// A house in the address: `#h1.` and, in the letters of base64url, a checksum and the deflated short form of its file. What
// stands after the `#` is never sent to a server. Loaded only when somebody makes or follows a link.
import { code } from "./code.js";
import { lengthen, shorten } from "./short.js";

/** Before everything, with the version of what follows. No stage has such a name. */
const SIGN = "#h1.";
/** Most letters of a link; longer ones are cut by some that carry them. */
const MOST_LETTERS = 8192;
/** Most bytes that come out of it, in all and for each that went in: a small link must not fill the memory. */
const MOST_BYTES = 1 << 18;
const MOST_TIMES = 100;

/** What the page asks for by a word: texts in, texts out. */
export function ask(word, text) {
  return { pack, open, code: codeOf, copy, share, hand }[word](text);
}

/** The link of a house file, its code (side and path, empty where it is too long) and whether this device can share it, in a line
 * each; or one word that says why there is none. */
async function pack(json) {
  if (location.protocol === "file:") return "here";
  try {
    const link = location.href.replace(/[?#].*$/s, "") + (await fragment(json));
    return [link, codeOf(link), navigator.share ? "share" : ""].join("\n");
  } catch (error) {
    return wordOf(error);
  }
}

async function fragment(json) {
  const short = shorten(json);
  const small = await through(new CompressionStream("deflate-raw"), short, MOST_BYTES);
  const letters = SIGN + lettersOf(joined([checksum(short), small]));
  if (letters.length > MOST_LETTERS || short.length > most(small)) throw new Error("large");
  return letters;
}

/** The house file of what stands after the `#`, or one word that says what is wrong with it. */
async function open(hash) {
  try {
    return await opened(mended(hash));
  } catch (error) {
    return wordOf(error);
  }
}

/** Without what mail programs put between its letters, where they break lines, and behind them. The checksum holds against all else. */
function mended(hash) {
  const letters = hash.replace(/%2E/i, ".").replace(/=?(%0D|%0A|%09|%20|\s|\+)+/gi, "");
  return /^#h\d+\.[\w-]+/.exec(letters)?.[0] ?? letters;
}

function wordOf({ message }) {
  if (!globalThis.DecompressionStream) return "old";
  return ["large", "newer"].includes(message) ? message : "damaged";
}

async function opened(hash) {
  if (!hash.startsWith(SIGN)) throw new Error("newer");
  if (hash.length > MOST_LETTERS) throw new Error("large");
  const bytes = bytesOf(hash.slice(SIGN.length));
  const [sum, small] = [bytes.subarray(0, 4), bytes.subarray(4)];
  const short = await through(new DecompressionStream("deflate-raw"), small, most(small));
  if (checksum(short).some((byte, at) => byte !== sum[at])) throw new Error("damaged");
  const json = lengthen(short);
  if (!json.startsWith("{")) throw new Error("damaged");
  return json;
}

function most(small) {
  return Math.min(MOST_BYTES, MOST_TIMES * small.length);
}

/** What a stream makes of some bytes; it is left as soon as it has made too many. */
async function through(stream, bytes, most) {
  const writer = stream.writable.getWriter();
  // What goes wrong here goes wrong at the other end too, and is told there.
  writer.write(bytes).catch(() => {});
  writer.close().catch(() => {});
  const parts = [];
  let length = 0;
  const reader = stream.readable.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    parts.push(part.value);
    length += part.value.length;
    if (length > most) {
      reader.cancel().catch(() => {});
      throw new Error("large");
    }
  }
  return joined(parts);
}

function joined(parts) {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  parts.reduce((at, part) => (whole.set(part, at), at + part.length), 0);
  return whole;
}

/** CRC-32 as in ISO/IEC 3309, highest byte first. */
function checksum(bytes) {
  let sum = -1;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return [24, 16, 8, 0].map((shift) => (~sum >>> shift) & 255);
}

function lettersOf(bytes) {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return btoa(text).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

function bytesOf(letters) {
  if (!/^[\w-]+$/.test(letters)) throw new Error("damaged");
  const text = atob(letters.replace(/-/g, "+").replace(/_/g, "/"));
  return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
}

function codeOf(link) {
  const drawn = code(link);
  return drawn ? `${drawn.side} ${drawn.path}` : "";
}

/** Puts a link where it can be pasted from; throws where a device forbids it. */
async function copy(link) {
  await navigator.clipboard.writeText(link);
  return "";
}

/** Hands a link to what the device shares with. That a person thought better of it is no trouble. */
async function share(link) {
  await navigator.share({ title: document.title, url: link }).catch(() => {});
  return "";
}

/** Hands a house file to what the device shares with: its name, then its text. As a plain text, since few devices let other kinds
 * through. */
async function hand(text) {
  const end = text.indexOf("\n");
  const files = [new File([text.slice(end + 1)], text.slice(0, end), { type: "text/plain" })];
  if (navigator.canShare?.({ files })) await navigator.share({ files, title: document.title }).catch(() => {});
  return "";
}
