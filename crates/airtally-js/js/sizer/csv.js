// The rooms as CSV (RFC 4180), for a spreadsheet. Numbers go out plain.

const HEADS = ["room", "air", "normal", "boost", "unit", "tubes", "gap under the door", "unit of the gap"];

export function cells({ rooms }) {
  const rows = rooms.flatMap(({ name, supply, extract, gap }) =>
    [["supply", supply], ["extract", extract]].filter(([, air]) => air).map(([way, { normal, boost, run }]) => [
      name, way, figure(normal), figure(boost), normal.unit, run.tubes, gap ? figure(gap.height) : "", gap?.height.unit ?? "",
    ]));
  return [HEADS, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

function figure({ value }) {
  return Math.round(value * 1000) / 1000;
}

/** A text that a spreadsheet would take for a formula gets an apostrophe in front. */
function cell(value) {
  if (typeof value === "number") return String(value);
  const text = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",;\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
