// For a page that cannot run the sizer itself: the host's side of an <iframe> that shows embed.html. The types are in frame.d.ts.
// Only messages of that frame, from where it was loaded, are heard; it gets as high as what it shows, within bounds.

export const NAME = "airtally";
export const VERSION = 1;
/** Most bytes of a message. */
export const MOST = 256 * 1024;

const [LEAST_HEIGHT, MOST_HEIGHT] = [120, 8000];
/** Two heights that take turns within this time are one: the larger. */
const FLICKER = 500;
const PATIENCE = 10_000;
/** A frame that says nothing for so long has said what it had to before we listened. */
const PAUSE = 1500;
const EVENTS = ["ready", "change", "ask", "fault"];

/** A message as it travels. */
export function message(type, payload = null, id = null) {
  return { ns: NAME, v: VERSION, type, id, payload };
}

/** Whether something that came is a message of ours and not too large. */
export function isMessage(data) {
  const ours = data !== null && typeof data === "object" && data.ns === NAME && data.v === VERSION && typeof data.type === "string";
  return ours && JSON.stringify(data).length <= MOST;
}

export class SizerFrame extends EventTarget {
  #frame;
  #origin;
  #asked = new Map();
  #count = 0;
  #heights = [];
  #arrived;
  #there = new Promise((arrived) => (this.#arrived = arrived));
  #hear = (event) => this.#heard(event);

  constructor(frame) {
    super();
    this.#frame = frame;
    this.#origin = new URL(frame.src, document.baseURI).origin;
    addEventListener("message", this.#hear);
  }

  /** The house as a file. */
  take() {
    return this.#ask("take");
  }

  /** Shows another house; what follows from it comes back. */
  put(house) {
    return this.#ask("put", house);
  }

  /** What is doubtful. */
  check() {
    return this.#ask("check");
  }

  /** Prints what the frame shows. */
  print() {
    return this.#ask("print");
  }

  /** Stops listening. */
  close() {
    removeEventListener("message", this.#hear);
  }

  #ask(type, payload) {
    const id = String((this.#count += 1));
    return new Promise((done, failed) => {
      const late = setTimeout(() => this.#answered(id, { error: { code: "no-answer", message: "The frame does not answer." } }), PATIENCE);
      this.#asked.set(id, { done, failed, late });
      Promise.race([this.#there, sleep(PAUSE)]).then(() => this.#send(message(type, payload, id)));
    });
  }

  #send(what) {
    this.#frame.contentWindow?.postMessage(what, this.#origin);
  }

  #heard({ source, origin, data }) {
    if (source !== this.#frame.contentWindow || origin !== this.#origin || !isMessage(data)) return;
    const { type, id, payload } = data;
    this.#arrived();
    if (type === "height") this.#fit(payload?.px);
    else if (type === "answer") this.#answered(id, payload);
    else if (EVENTS.includes(type)) this.dispatchEvent(new CustomEvent(type, { detail: payload }));
  }

  #answered(id, payload) {
    const asked = this.#asked.get(id);
    if (!asked) return;
    clearTimeout(asked.late);
    this.#asked.delete(id);
    if (payload?.error) asked.failed(Object.assign(new Error(payload.error.message), { code: payload.error.code }));
    else asked.done(payload?.result ?? null);
  }

  #fit(px) {
    if (!Number.isFinite(px)) return;
    const [now, height] = [performance.now(), Math.min(MOST_HEIGHT, Math.max(LEAST_HEIGHT, Math.ceil(px)))];
    const recent = this.#heights.filter(({ at }) => now - at < FLICKER);
    const back = recent.some((other) => other.px === height) && recent.at(-1)?.px !== height;
    const chosen = back ? Math.max(...recent.map((other) => other.px)) : height;
    this.#heights = [...recent, { px: height, at: now }];
    const border = getComputedStyle(this.#frame).boxSizing === "border-box" ? this.#frame.offsetHeight - this.#frame.clientHeight : 0;
    this.#frame.style.height = `${chosen + border}px`;
    this.#send(message("fitted", { whole: chosen >= px }));
  }
}

function sleep(milliseconds) {
  return new Promise((done) => setTimeout(done, milliseconds));
}
