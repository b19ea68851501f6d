// One sizer on paper, and nothing of the page around it. A page may forbid styles in its markup: what does it is a constructed
// sheet in every tree that the sizer stands in. It says nothing to the screen and goes when the printing is over.

const MARK = "data-airtally-paper";
const TEXT = `@media print {
  [${MARK}] > :not([${MARK}]), :host > :not([${MARK}]) { display: none !important; }
  [${MARK}] { all: unset !important; display: block !important; }
  [${MARK}="around"] { visibility: hidden !important; font: 0/0 serif !important; }
  [${MARK}="around"]::before, [${MARK}="around"]::after { content: none !important; }
  [${MARK}="sizer"] { visibility: visible !important; font-size: medium !important; }
}`;

let sheet;

/** From now on printing gives this sizer alone, with all that is to be checked; what comes back ends that. */
export function alone(sizer) {
  const around = [...ancestors(sizer)];
  const trees = new Set([sizer, ...around].map((node) => node.getRootNode()));
  const folded = sizer.shadowRoot.querySelectorAll("details:not([open])");
  sheet ??= made();
  for (const tree of trees) tree.adoptedStyleSheets = [...without(tree), sheet];
  for (const node of around) node.setAttribute(MARK, "around");
  sizer.setAttribute(MARK, "sizer");
  for (const details of folded) details.open = true;
  return () => {
    for (const tree of trees) tree.adoptedStyleSheets = without(tree);
    for (const node of [sizer, ...around]) node.removeAttribute(MARK);
    for (const details of folded) details.open = false;
  };
}

/** All that it is drawn in, also where it stands in elements with trees of their own. */
function* ancestors(node) {
  const above = node.assignedSlot ?? node.parentElement ?? node.getRootNode().host;
  if (!above) return;
  yield above;
  yield* ancestors(above);
}

function without(tree) {
  return tree.adoptedStyleSheets.filter((other) => other !== sheet);
}

function made() {
  const made = new CSSStyleSheet();
  made.replaceSync(TEXT);
  return made;
}
