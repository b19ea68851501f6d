// The frame's side of embed.html. What a person typed goes only to the page that the address names, and only that page is heard.
import { MOST, isMessage, message } from "./frame.js";

const SETTLED = ["rules", "display", "heading", "ask", "look", "lang", "fixed", "readonly"];
const COLOURS = ["paper", "raised", "ink", "soft", "rule", "edge", "accent", "on-accent", "bad"];
/** A change smaller than this is none. */
const NOTHING = 2;

const wishes = new URLSearchParams(location.search);
const host = origin(wishes.get("host"));
const sizer = document.querySelector("airtally-sizer");
const whole = document.querySelector("main");
// The window for printing holds everything up: the answer goes first.
const print = async () => void setTimeout(() => sizer.print());
const hands = { take: () => sizer.take(), put: (house) => sizer.put(house), check: () => sizer.check(), print };

settle();
if (parent !== window) talk();

function settle() {
  for (const name of SETTLED) if (wishes.has(name)) sizer.setAttribute(name, wishes.get(name));
  if (wishes.has("look")) document.documentElement.dataset.look = wishes.get("look");
  for (const name of COLOURS) {
    const colour = wishes.get(name);
    if (colour && CSS.supports("color", colour)) document.documentElement.style.setProperty(`--airtally-${name}`, colour);
  }
}

function talk() {
  for (const type of ["ready", "change", "ask", "fault"]) {
    sizer.addEventListener(`airtally-${type}`, ({ detail }) => host && send(message(type, detail)));
  }
  addEventListener("message", ({ source, origin, data }) => {
    if (source !== parent || (host && origin !== host) || !isMessage(data)) return;
    if (data.type === "fitted") fitted(data.payload);
    else if (host && Object.hasOwn(hands, data.type)) answer(data);
  });
  tellHeight();
}

async function answer({ type, id, payload }) {
  const said = await hands[type](payload).then((result) => ({ result }), ({ code = "fault", message }) => ({ error: { code, message } }));
  send(message("answer", said, id));
}

/** The height of what is shown, never that of the frame: nothing here is as high as the frame, so that it cannot run away. */
function tellHeight() {
  let [told, waiting] = [0, false];
  const tell = () => {
    waiting = false;
    const px = Math.ceil(whole.getBoundingClientRect().height);
    if (Math.abs(px - told) < NOTHING) return;
    told = px;
    send(message("height", { px }));
  };
  new ResizeObserver(() => {
    if (!waiting) requestAnimationFrame(tell);
    waiting = true;
  }).observe(whole);
  // Until the page around hears: it may begin to listen after us.
  const again = setInterval(() => {
    if (document.documentElement.classList.contains("fitted")) clearInterval(again);
    else if (told) send(message("height", { px: told }));
  }, 500);
}

/** The page has made the frame as high as asked, and no bar is needed; or it has not, and one is. */
function fitted(payload) {
  document.documentElement.classList.add("fitted");
  document.documentElement.classList.toggle("whole", payload?.whole === true);
}

/** A height may be known to anybody; everything else goes to the named page only. */
function send(what) {
  if (JSON.stringify(what).length > MOST) return;
  parent.postMessage(what, host ?? "*");
}

function origin(text) {
  return text && URL.canParse(text) ? new URL(text).origin : null;
}
