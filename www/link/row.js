// Ticks mostly come in the order of the work: a step is the one after the last or that one again, a room the next one. Said so, they
// are the same bytes over and over, of which deflate makes few.
import { WORDS } from "./words.js";

/** How that is said. Pages from before take it for words of a newer page, and say so. */
export const [NEXT_ROOM, SAME_STEP, NEXT_STEP] = [13, 14, 15];

/** The words of steps: first those in the order of the work, then those that came later and stand somewhere between. */
const [FIRST, LATER, END] = ["ask-open-flues", "survey-old-fans", "outdoor-duct"].map((word) => WORDS.indexOf(word));

/** What came last, for who writes and for who reads. */
export class Row {
  #last = -1;
  #next = FIRST;
  #room = -1;

  /** The sign for a word; 0 where it has none. */
  sign(at) {
    const sign = at === this.#last ? SAME_STEP : at === this.#next ? NEXT_STEP : 0;
    this.saw(at);
    return sign;
  }

  /** The word of a sign. */
  word(sign) {
    const at = sign === SAME_STEP ? this.#last : this.#next;
    if (at < 0) throw new Error("damaged");
    this.saw(at);
    return at;
  }

  /** A word came. */
  saw(at) {
    if (at < FIRST || at >= END) return;
    this.#last = at;
    if (at < LATER) this.#next = at + 1;
  }

  /** Whether a room is the next one. */
  isNextRoom(room) {
    const is = room === this.#room + 1;
    this.sawRoom(room);
    return is;
  }

  nextRoom() {
    this.#room += 1;
    return this.#room;
  }

  /** The room of a tick came. */
  sawRoom(room) {
    if (Number.isSafeInteger(room) && room >= 0) this.#room = room;
  }
}
