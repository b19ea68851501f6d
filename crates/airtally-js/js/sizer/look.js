// How the sizer looks: a leaf of a site notebook. One sheet for all of them on a page, made without markup, so that a strict
// content security policy holds. A page changes it by the twelve properties of THEME and by `::part()`.

const THEME = {
  paper: "light-dark(#f6f7f3, #13181b)",
  raised: "light-dark(#fdfdfb, #1b2226)",
  ink: "light-dark(#17212b, #e9ece8)",
  soft: "light-dark(#3c4853, #bcc5c7)",
  rule: "light-dark(#c5ced2, #38444a)",
  edge: "light-dark(#5f6d77, #8b999f)",
  accent: "light-dark(#56277f, #d0b5f3)",
  "on-accent": "light-dark(#ffffff, #1d0f2c)",
  bad: "light-dark(#951b1b, #ffb9ad)",
  radius: "3px",
  font: 'system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Helvetica Neue", sans-serif',
  size: "1.0625em",
};

const properties = Object.entries(THEME).map(([name, value]) => `--${name}: var(--airtally-${name}, ${value});`).join(" ");

const TEXT = `
:host { display: block; font-size: 16px; ${properties} }
:host([hidden]), [hidden] { display: none !important; }
:host([look="light"]) { color-scheme: light; }
:host([look="dark"]) { color-scheme: dark; }
:host([look="auto"]) { color-scheme: light dark; }
*, *::before, *::after { box-sizing: border-box; }
.sheet { container-type: inline-size; position: relative; padding: 1.25em 1em; background: var(--paper); color: var(--ink); border-radius: var(--radius); font: 400 var(--size)/1.45 var(--font); font-variant-numeric: tabular-nums; overflow-wrap: break-word; text-align: start; -webkit-tap-highlight-color: transparent; }
h1, h2, h3, h4, h5, h6, p, ol, ul, dl, dd, fieldset { margin: 0; padding: 0; }
ol, ul { list-style: none; }
fieldset { border: 0; min-inline-size: 0; }
.title { font-size: 1.5em; font-weight: 600; line-height: 1.2; text-wrap: balance; }
.head { font-size: 1.2em; font-weight: 600; line-height: 1.2; }
.head:focus { outline: none; }
.lead { margin-block-start: 0.4em; }
.soft { color: var(--soft); }
small, .small { font-size: 0.875em; line-height: 1.4; }
.aloud { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.icon { display: block; inline-size: 20px; block-size: 20px; fill: none; stroke: currentColor; stroke-width: 2; stroke-linecap: round; }

button, input, select { font: inherit; font-size: max(1em, 16px); color: inherit; border-radius: var(--radius); }
button { cursor: pointer; touch-action: manipulation; min-block-size: 48px; min-inline-size: 48px; line-height: 1.2; }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
.main { padding: 0.25em 1.5em; min-block-size: 56px; border: 1px solid var(--accent); background: var(--accent); color: var(--on-accent); font-weight: 600; }
.quiet, .add, .away { border: 1px solid transparent; background: none; color: var(--accent); }
.quiet { padding: 0 0.4em; margin-inline-start: -0.4em; text-decoration: underline; text-underline-offset: 0.25em; }
.next { margin-block-start: 1.25em; inline-size: 100%; }

.bar { display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; margin-block-start: 1em; }
.step { padding: 0 0.25em; border: 0; border-block-end: 3px solid var(--rule); border-radius: 0; background: none; color: var(--soft); }
.step span { color: var(--accent); }
.step[aria-current] { border-color: var(--accent); color: var(--accent); font-weight: 600; }
.leaf { display: none; padding-block-start: 1.25em; min-inline-size: 0; }
${["house", "air", "tubes"].map((step) => `[data-step="${step}"] .leaf-${step}`).join(", ")} { display: block; }

label { display: block; margin-block-end: 0.25em; font-size: 0.875em; color: var(--soft); }
select, input { min-block-size: 48px; inline-size: 100%; min-inline-size: 0; padding: 0.25em 0.6em; border: 1px solid var(--edge); background: var(--raised); text-overflow: ellipsis; }
input::placeholder { color: var(--soft); opacity: 1; font-style: italic; }
input[aria-invalid] { border: 2px solid var(--bad); }
select:disabled, input:read-only { border-color: var(--rule); opacity: 1; }
.fields, .pair { display: grid; gap: 0.75em; margin-block-start: 0.75em; }
.entry { display: flex; align-items: center; gap: 0.4em; }
.rooms { border-block-start: 2px solid var(--ink); }
.rooms li { border-block-end: 1px solid var(--rule); padding-block: 0.6em 0.75em; }
.rooms fieldset { display: grid; grid-template-columns: minmax(0, 5fr) minmax(0, 3fr) 48px; gap: 0.4em 0.6em; align-items: end; }
.kind { grid-column: 1 / 3; }
.area { grid-column: 1; grid-row: 2; }
.people { grid-column: 2; grid-row: 2; }
.away { grid-column: 3; grid-row: 1; display: grid; place-items: center; padding: 0; color: var(--soft); }
.away:hover { color: var(--bad); }
.wrong { grid-column: 1 / -1; padding-inline-start: 0.6em; border-inline-start: 4px solid var(--bad); color: var(--bad); font-weight: 600; line-height: 1.35; }
.wrong:empty { display: none; }
.undo:not(:empty) { padding-block-start: 0.5em; }
.adders { display: flex; flex-wrap: wrap; gap: 8px; margin-block-start: 0.9em; }
.add { display: inline-flex; align-items: center; gap: 0.25em; padding: 0 0.75em 0 0.5em; border-color: var(--rule); color: var(--ink); }
.add .icon { color: var(--accent); }
.add:hover { border-color: var(--accent); }
.more { inline-size: auto; max-inline-size: 100%; border-color: var(--rule); background: none; }

.figure { display: inline-flex; align-items: baseline; line-height: 1.15; white-space: nowrap; }
.figure b { font-size: 1.3em; font-weight: 500; letter-spacing: -0.01em; }
.figure small { color: var(--soft); }
.answer { display: grid; margin-block-start: 0.6em; }
.big b { font-size: 3em; letter-spacing: -0.03em; }
.big small { font-size: 1.2em; }
.answer + .small { margin-block-start: 0.4em; }
.doubt { margin-block-start: 0.75em; padding-inline-start: 0.75em; border-inline-start: 4px solid var(--edge); }
.totals { display: flex; flex-wrap: wrap; gap: 0.5em 2em; margin-block-start: 0.9em; }
.totals dt { color: var(--soft); font-size: 0.875em; }
.ledger { position: relative; margin-block-start: 1.1em; border-block-start: 2px solid var(--ink); }
.ledger::before { content: ""; position: absolute; inset-block: 0; inset-inline-start: 42px; border-inline-start: 1px solid var(--accent); opacity: 0.45; }
.ledger li { display: grid; grid-template-columns: 42px minmax(0, 1fr) auto; align-items: center; min-block-size: 56px; padding-block: 0.35em; border-block-end: 1px solid var(--rule); }
.name { display: grid; padding-inline: 0.75em 0.5em; line-height: 1.25; }
.figures { display: grid; justify-items: end; }
.count { display: inline-flex; align-items: center; gap: 0.75em; }
.tally { display: inline-flex; flex-wrap: wrap; gap: 2px 5px; }
.tally svg { fill: none; stroke: currentColor; stroke-width: 2.4; stroke-linecap: round; overflow: visible; }
.air { position: relative; display: inline-grid; place-items: center; inline-size: 32px; block-size: 26px; font-size: 16px; font-weight: 700; line-height: 1; color: light-dark(#fff, #13181b); }
.air svg { position: absolute; inset: 0; stroke: var(--ink); stroke-width: 1; }
.air abbr { position: relative; text-decoration: none; }
.air-supply svg { fill: light-dark(#1a559c, #8cbcf5); }
.air-extract { color: light-dark(#17212b, #13181b); }
.air-extract svg { fill: light-dark(#f3c614, #f3cf4e); }

.checks { margin-block-start: 1.25em; }
summary { min-block-size: 48px; padding-block: 0.7em; color: var(--accent); cursor: pointer; }
.checks li { padding: 0.3em 0 0.3em 0.75em; margin-block-end: 0.5em; border-inline-start: 4px solid var(--rule); line-height: 1.4; }
.checks .stops, .checks .outside-rule { border-color: var(--bad); }
.foot { margin-block-start: 1em; padding-block-start: 1em; border-block-start: 1px solid var(--rule); }
.foot .small { margin-block-start: 0.75em; }
.buttons { display: flex; flex-wrap: wrap; gap: 8px 16px; align-items: center; }

/* One filled button a screen: while there is a next leaf it is the one. */
@container (max-width: 53.99em) {
  [data-step]:not([data-step="tubes"]) .foot .main { background: none; color: var(--accent); }
}
@container (min-width: 30em) {
  .pair { grid-template-columns: minmax(0, 8fr) minmax(0, 5fr); }
  .rooms fieldset { grid-template-columns: minmax(0, 11fr) minmax(0, 7fr) minmax(0, 4fr) 48px; }
  .kind { grid-column: 1; }
  .area { grid-column: 2; grid-row: 1; }
  .people { grid-column: 3; grid-row: 1; }
  .away { grid-column: 4; }
}
@container (min-width: 54em) {
  .bar, .next { display: none; }
  .leaves { display: grid; grid-template-columns: minmax(0, 6fr) minmax(0, 4fr) minmax(0, 4fr); gap: 2em; margin-block-start: 0.5em; }
  .leaves .leaf { display: block; }
}
@media (forced-colors: active) {
  .main { border: 3px solid ButtonText; }
  .air { color: CanvasText; }
  .air svg { fill: Canvas; stroke: CanvasText; }
  .step[aria-current] { border-color: Highlight; }
}
/* Paper is white, whatever the page is. */
@media print {
  :host { color-scheme: light !important; --paper: #fff; --raised: #fff; --ink: #000; --soft: #333; --rule: #999; --edge: #555; --accent: #000; --bad: #000; }
  .sheet { padding: 0; }
  .air { print-color-adjust: exact; }
  .rooms li, .ledger li, .checks li { break-inside: avoid; }
  .leaves .leaf { display: block; }
  .bar, .lead, .next, .adders, .away, .buttons, .undo { display: none; }
  select, input { appearance: none; min-block-size: 0; padding-inline: 0; border-color: transparent; }
  :focus-visible { outline: none; }
}
`;

let sheet;

/** The one style sheet. */
export function look() {
  if (!sheet) {
    sheet = new CSSStyleSheet();
    sheet.replaceSync(TEXT);
  }
  return sheet;
}
