// A house file from a few facts, for those who do not want to write one by hand.

const AREA = { m3h: "m2", ls: "m2", cfm: "ft2" };
const LENGTH = { m3h: "m", ls: "m", cfm: "ft" };

export function sketch({ name = "", rules = "adf-2021", display = "m3h", tube = "od75", rooms = [], ...about } = {}) {
  const units = { area: AREA[display], length: LENGTH[display] };
  return {
    airtally: 1,
    house: {
      name,
      choices: { rules, display, credit: "without", print: "inch-pound", tube },
      entries: typed([
        ["floor-area", about.floorArea, units.area],
        ["ceiling", about.ceiling, units.length],
        ["people", about.people, "count"],
        ["ach50", about.ach50, "1/h"],
      ]),
      rooms: rooms.map((room, id) => sketched(room, id, units)),
      next_room: rooms.length,
      settings: [],
      ticks: [],
    },
  };
}

function sketched({ kind, name = "", storey = 0, open = null, ...about }, id, units) {
  return {
    id, kind, name, storey, open,
    entries: typed([
      ["area", about.area, units.area],
      ["height", about.height, units.length],
      ["sleepers", about.sleepers, "count"],
      ["supply-run", about.supplyRun, units.length],
      ["extract-run", about.extractRun, units.length],
    ]),
  };
}

/** An entry for everything that was said; nothing and an empty text are no entry. */
function typed(facts) {
  const said = facts.filter(([, text]) => text !== undefined && text !== null && String(text).trim() !== "");
  return said.map(([field, text, unit]) => ({ field, text: String(text), unit }));
}
