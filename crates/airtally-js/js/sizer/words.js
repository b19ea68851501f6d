// Every word of the sizer that the program does not say itself.

export const WORDS = {
  heading: "How much air does the house need?",
  lead: "Fill in the rooms. Everything is worked out on this device; nothing is sent.",
  steps: "Steps",
  house: "House",
  air: "Air",
  tubes: "Tubes",
  rules: "Code",
  display: "Units",
  kind: "Room",
  area: "Floor area",
  sleepers: "People",
  add: "Add a room",
  more: "Another room…",
  toAir: "Next: the air",
  toTubes: "Next: the tubes",
  remove: (name) => `Take away: ${name}`,
  removed: (name) => `${name} was taken away.`,
  undo: "Put it back",
  usual: (sleepers) => `Usual: ${sleepers}`,
  everyDay: "Fresh air every day",
  alike: "comes in, and as much goes out",
  asks: (rules, flow) => `${rules} asks for ${flow} of this house.`,
  away: "Nobody at home",
  boost: "Cooking, bathing, guests",
  gap: (height) => `door gap ${height}`,
  morning: (ppm) => `CO₂ ${ppm} by morning`,
  boosted: (flow) => `boost ${flow}`,
  supply: "Air comes in",
  extract: "Air is drawn out",
  none: "No air can be shared out yet: add a room where air comes in and one where it is drawn out.",
  bare: (rooms) => `${rooms === 1 ? "One room has" : `${rooms} rooms have`} no floor area yet: until then this may be too low.`,
  inAll: "Tubes in all",
  ports: (name, supply, extract) => `${name}. Ports with spares: ${supply} on the supply manifold, ${extract} on the extract manifold.`,
  check: (count) => `What to check (${count})`,
  nothing: "Nothing to check.",
  save: "Save as a file",
  aid: "An aid that approves nothing: the local code, the authority and licensed trades have the last word.",
  fails: "The sizer could not start here. Load the page again, or ask the owner of this page.",
  status: (flow, tubes) => `${flow} every day, ${tubes} tubes.`,
};

/** Kinds of room that have a button of their own. */
export const COMMON = ["bedroom", "bathroom", "wc", "utility", "study", "hall"];

export const SYMBOLS = { m2: "m²", ft2: "ft²" };
