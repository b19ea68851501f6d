// Nodes without markup: a host page may forbid markup made from text, and what is typed never becomes any.

/** An element. Of its attributes functions are listeners, `true` is an empty one, and nothing is left out. */
export function el(name, attributes = {}, ...children) {
  return fill(document.createElement(name), attributes, children);
}

/** An element of a drawing. */
export function svg(name, attributes = {}, ...children) {
  return fill(document.createElementNS("http://www.w3.org/2000/svg", name), attributes, children);
}

function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") node.addEventListener(name, value);
    else if (value !== undefined && value !== null && value !== false) node.setAttribute(name, value === true ? "" : value);
  }
  node.append(...children.flat().filter((child) => child !== null && child !== undefined && child !== false));
  return node;
}

/** A figure as people read it: number large, unit small. */
export function figure({ text }, kind = "") {
  const [number, unit = ""] = text.split("\u00a0");
  return el("span", { class: `figure ${kind}` }, el("b", {}, number), unit && ["\u00a0", el("small", {}, unit)]);
}

/** Four strokes and a slash for every five. */
export function strokes(count) {
  const fives = Array.from({ length: Math.ceil(count / 5) }, (_, at) => Math.min(5, count - 5 * at));
  return el("span", { class: "tally", "aria-hidden": "true" }, fives.map(five));
}

const STROKES = ["M4 4L3.4 20", "M10 3.6L9.6 20.2", "M15.8 4.2L16 20", "M21.8 3.8L21.4 20.2", "M0 17.5L26 6.5"];

function five(count) {
  const width = count === 5 ? 27 : 6 * count + 1;
  return svg("svg", { viewBox: `0 0 ${width} 24`, width, height: 24 }, svg("path", { d: STROKES.slice(0, count).join("") }));
}

/** The letter of the air, in its colour, pointing into the room or out of it. */
export function letter(air) {
  const shape = air === "supply" ? "M1 1H23L31 13L23 25H1Z" : "M31 1H9L1 13L9 25H31Z";
  return el("span", { class: `air air-${air}` },
    svg("svg", { viewBox: "0 0 32 26", "aria-hidden": "true" }, svg("path", { d: shape })),
    el("abbr", { title: air === "supply" ? "Supply" : "Extract" }, air === "supply" ? "S" : "E"));
}
