// Links and their codes, taken apart by others: Node's zlib, and a reader of codes.
import { deflateRawSync, gzipSync, inflateRawSync } from "node:zlib";
import { require } from "./browser.mjs";
import { shorten } from "../../../www/link/short.js";

/** What a link carries: the short form, and whether its checksum is that of gzip. */
export function carried(link) {
  const bytes = Buffer.from(link.slice(link.indexOf("#h1.") + 4), "base64url");
  const short = inflateRawSync(bytes.subarray(4));
  return { short, whole: bytes.readUInt32BE(0) === checksum(short) };
}

/** What stands after the `#` for a short form, whatever is in it. */
export function hashOf(short) {
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(checksum(short));
  return `#h1.${Buffer.concat([sum, deflateRawSync(short, { level: 9 })]).toString("base64url")}`;
}

/** The same for a file. */
export function hashOfFile(json) {
  return hashOf(shorten(json));
}

/** CRC-32, out of the end of a gzip file (RFC 1952). */
function checksum(bytes) {
  const packed = gzipSync(bytes);
  return packed.readUInt32LE(packed.length - 8);
}

/** What a camera reads from a picture of an element. */
export async function read(context, element) {
  const picture = (await element.screenshot()).toString("base64");
  const dark = await context.newPage();
  const { data, width, height } = await dark.evaluate(async (picture) => {
    const image = new Image();
    image.src = `data:image/png;base64,${picture}`;
    await image.decode();
    const { width, height } = image;
    const canvas = new OffscreenCanvas(width, height).getContext("2d");
    canvas.drawImage(image, 0, 0);
    return { data: [...canvas.getImageData(0, 0, width, height).data], width, height };
  }, picture);
  await dark.close();
  return decode(Uint8ClampedArray.from(data), width, height);
}

/** The text of a code that was drawn as a side and a path. */
export function readPath(drawn, scale = 3) {
  const [side, ...path] = drawn.split(" ");
  const width = Number(side) * scale;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y, run] of path.join(" ").matchAll(/M(\d+) (\d+)h(\d+)/g)) {
    for (let line = y * scale; line < (Number(y) + 1) * scale; line += 1) {
      const from = (line * width + x * scale) * 4;
      for (let at = from; at < from + run * scale * 4; at += 4) data.fill(0, at, at + 3);
    }
  }
  return decode(data, width, width);
}

function decode(data, width, height) {
  return require("jsqr")(data, width, height)?.data;
}
